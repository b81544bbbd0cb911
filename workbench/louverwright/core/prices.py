# SPDX-License-Identifier: LGPL-2.1-or-later
"""What the yard asks, as a buyer writes it down: '2x4: 2.10/m; 1x6: 0.95/ft; plywood 1/2: 38 each'.

In any one currency.  Prices belong to a job, not to a stock list: the same wood costs something else next week, and no
vent is another one for it.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from .saying import Text, say

#: Millimetres in the lengths that prices are asked for; a price each is for a whole sheet or stick.
PER = {"/m": 1000.0, "/ft": 304.8}
EACH = "each"
#: A price above this is a slip of the pen.
DEAREST = 100_000.0


class PriceError(ValueError):
    """Prices that cannot be read: ``value`` is what was written, ``limit`` what is wrong with it, ``cure`` what to write."""

    def __init__(self, value: Text, limit: Text, cure: Text) -> None:
        super().__init__(say("{value}: {limit}. {cure}", value=value, limit=limit, cure=cure))
        self.value, self.limit, self.cure = value, limit, cure


@dataclass(frozen=True)
class Price:
    """An amount for so many mm of length, or for one piece where ``per`` is 0."""

    amount: float
    per: float

    def of(self, length: float, count: int) -> float:
        """What so many pieces of a length (mm) cost."""
        return self.amount * count * (length / self.per if self.per else 1.0)


def read_prices(text: str) -> dict[str, Price]:
    """The price of each stock by its name.  Raises PriceError."""
    found: dict[str, Price] = {}
    for entry in filter(None, (each.strip() for each in text.split(";"))):
        name, colon, told = entry.rpartition(":")
        if not colon or not name.strip() or not told.strip():
            raise PriceError(_quoted(entry), say("it is not a stock with its price"),
                             say("Give the stock, a colon and the price: 2x4: 2.10/m; plywood 1/2: 38 each."))
        if name.strip() in found:
            raise PriceError(_quoted(name.strip()), say("it has two prices"), say("Leave one of them."))
        found[name.strip()] = _price(told.strip())
    return found


def _price(told: str) -> Price:
    unit = next((each for each in (*PER, EACH) if told.endswith(each)), "")
    try:
        amount = float(told.removesuffix(unit).strip())
    except ValueError:
        amount = math.nan
    if not unit or not 0.0 <= amount <= DEAREST:
        raise PriceError(_quoted(told), say("it is not a price"), say(
            "Give a number, with a point for decimals, and what it is for: /m, /ft or each."))
    return Price(amount, PER.get(unit, 0.0))


def _quoted(text: str) -> Text:
    return say("“{name}”", name=text[:40])
