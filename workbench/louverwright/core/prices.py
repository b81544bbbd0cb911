# SPDX-License-Identifier: LGPL-2.1-or-later
"""What the yard asks, as a buyer writes it down: '2x4: 8 ft = 4.20, 10 ft = 5.60; 1x6: 0.95/ft; plywood 1/2: 38 each'.

In any one currency.  Prices belong to a job, not to a stock list: the same wood costs something else next week, and no
vent is another one for it.  Inside they are whole hundredths.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass, field
from types import MappingProxyType

from .saying import Text, say
from .units import ReadError, parse_length

#: Millimetres in the lengths that prices are asked for; a price each is for a whole sheet or stick.
PER = {"/m": 1000.0, "/ft": 304.8}
#: Hundredths in one of the currency; a price above this many of it is a slip of the pen.
HUNDREDTHS, DEAREST = 100, 100_000.0
#: Lengths (mm) this near to each other are one.
_NEAR = 0.5
_ITEM = re.compile(r"(?:([^=]+)=\s*)?([0-9]+(?:\.[0-9]+)?)\s*(/m|/ft|each)?")


class PriceError(ValueError):
    """Prices that cannot be read: ``value`` is what was written, ``limit`` what is wrong with it, ``cure`` what to write."""

    def __init__(self, value: Text, limit: Text, cure: Text) -> None:
        super().__init__(say("{value}: {limit}. {cure}", value=value, limit=limit, cure=cure))
        self.value, self.limit, self.cure = value, limit, cure


@dataclass(frozen=True)
class Price:
    """One stock's price: of single lengths (mm → hundredths), and of all others for so many mm, or for a piece where ``per``
    is 0; ``amount`` is in the currency, None where only single lengths have a price."""

    by_length: Mapping[float, int] = field(default_factory=dict)
    amount: float | None = None
    per: float = 0.0

    def __post_init__(self) -> None:
        object.__setattr__(self, "by_length", MappingProxyType(dict(self.by_length)))

    def of(self, length: float) -> int | None:
        """What one of a length (mm) costs in hundredths; None where that is not told."""
        for told, price in self.by_length.items():
            if abs(told - length) < _NEAR:
                return price
        if self.amount is None:
            return None
        return round(HUNDREDTHS * self.amount * (length / self.per if self.per else 1.0))


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
        found[name.strip()] = _price(told)
    return found


def _price(told: str) -> Price:
    """A stock's prices, apart by commas with a space behind."""
    by_length: dict[float, int] = {}
    amount, per = None, 0.0
    for item in (each.strip() for each in re.split(r",\s", told.strip())):
        form = _ITEM.fullmatch(item)
        money = float(form[2]) if form else DEAREST + 1.0
        if form is None or bool(form[1]) == bool(form[3]) or money > DEAREST:
            raise PriceError(_quoted(item), say("it is not a price"), say(
                "Give a number, with a point for decimals, and what it is for: /m, /ft or each, or a length: 8 ft = 4.20."))
        length = _length(form[1].strip()) if form[1] else 0.0
        if (amount is not None and form[3]) or length in by_length:
            raise PriceError(_quoted(item), say("it has two prices"), say("Leave one of them."))
        if form[1]:
            by_length[length] = round(money * HUNDREDTHS)
        else:
            amount, per = money, PER.get(form[3], 0.0)
    return Price(by_length, amount, per)


def _quoted(text: str) -> Text:
    return say("“{name}”", name=text[:40])


def _length(text: str) -> float:
    try:
        return float(parse_length(text))
    except ReadError as error:
        raise PriceError(_quoted(text), say("it is not a length"),
                         say("Give figures and a unit: 1200 mm, 3 1/2 ft.")) from error
