# SPDX-License-Identifier: LGPL-2.1-or-later
"""What stock costs at the yard, as it is written down: '2x4: 8 ft = 4.20, 10 ft = 5.60; 1x6: 2.10 per m; plywood 1/2: 38'.

Prices belong to a job and not to the stock list: they change from week to week and change no vent.  Inside they are whole
hundredths of whatever money it is.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass, field
from types import MappingProxyType

from .saying import Text, say
from .units import ReadError, parse_length

#: Hundredths in one of the currency; a price above this many of it is a slip of the pen.
HUNDREDTHS, MOST = 100, 100_000.0
#: Lengths (mm) this near to each other are one.
_NEAR = 0.5
_FORM = re.compile(r"(?:(?P<length>[^=]+)=)?\s*(?P<price>[^\s=/]+)(?:\s*(?:per|/)\s*(?P<unit>m|ft))?\s*")
_UNITS = {"m": 1000.0, "ft": 304.8}


class PriceError(ValueError):
    """Prices that cannot be read: ``value`` is what was written, ``limit`` what is wrong with it, ``cure`` what to write."""

    def __init__(self, value: Text, limit: Text, cure: Text) -> None:
        super().__init__(say("{value}: {limit}. {cure}", value=value, limit=limit, cure=cure))
        self.value, self.limit, self.cure = value, limit, cure


@dataclass(frozen=True)
class Price:
    """One stock's price: by the length sold (mm → hundredths), for a millimetre, or for each piece whatever its length."""

    by_length: Mapping[float, int] = field(default_factory=dict)
    by_mm: float | None = None
    each: int | None = None

    def __post_init__(self) -> None:
        object.__setattr__(self, "by_length", MappingProxyType(dict(self.by_length)))

    def of(self, length: float) -> int | None:
        """What one of this length (mm) costs, in hundredths; None where that is not told."""
        for told, price in self.by_length.items():
            if abs(told - length) < _NEAR:
                return price
        return round(length * self.by_mm) if self.by_mm is not None else self.each


def read_prices(text: str) -> dict[str, Price]:
    """The prices by the name of the stock.  Raises PriceError."""
    found: dict[str, Price] = {}
    for entry in filter(None, (each.strip() for each in text.split(";"))):
        name, colon, told = entry.partition(":")
        if not colon or not name.strip() or not told.strip():
            raise PriceError(_quoted(entry), say("it is not a stock with its price"), _how())
        if name.strip() in found:
            raise PriceError(_quoted(name.strip()), say("it has prices in two places"), say("Give each stock once."))
        found[name.strip()] = _price(re.split(r",\s+", told.strip()))
    return found


def _price(items: list[str]) -> Price:
    by_length: dict[float, int] = {}
    by_mm: float | None = None
    each: int | None = None
    for item in items:
        form = _FORM.fullmatch(item.strip())
        if not form:
            raise PriceError(_quoted(item), say("it is not a price"), _how())
        money = _money(form["price"])
        if form["length"] and form["unit"]:
            raise PriceError(_quoted(item), say("it is a price for a length and per length at once"), _how())
        if form["length"]:
            by_length[_length(form["length"].strip())] = round(money * HUNDREDTHS)
        elif form["unit"]:
            by_mm = money * HUNDREDTHS / _UNITS[form["unit"]]
        else:
            each = round(money * HUNDREDTHS)
    return Price(by_length, by_mm, each)


def _how() -> Text:
    return say("Write 2x4: 8 ft = 4.20, 10 ft = 5.60; 1x6: 2.10 per m; plywood 1/2: 38.")


def _quoted(text: str) -> Text:
    return say("“{name}”", name=text[:40])


def _money(text: str) -> float:
    """A price above 0; a comma might be a decimal mark or part two prices, and is refused."""
    if "," in text:
        raise PriceError(_quoted(text), say("it can be read in two ways"), say(
            "Set a space behind the comma between prices, and write decimals with a point."))
    if not re.fullmatch(r"[0-9]+(\.[0-9]+)?", text) or not 0.01 <= float(text) <= MOST:
        raise PriceError(_quoted(text), say("it is not a price"),
                         say("Give a number above 0 and at most {most:g}, without the currency's sign.", most=MOST))
    return float(text)


def _length(text: str) -> float:
    try:
        return float(parse_length(text))
    except ReadError as error:
        raise PriceError(_quoted(text), say("it is not a length"),
                         say("Give figures and a unit: 1200 mm, 3 1/2 ft.")) from error
