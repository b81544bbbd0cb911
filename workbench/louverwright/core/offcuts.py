# SPDX-License-Identifier: LGPL-2.1-or-later
"""Offcuts that lie in the shop, as a joiner writes them: '2x4: 1200, 900; 1x6: 2 m'."""

from __future__ import annotations

import re

from .saying import Text, say
from .units import ReadError, parse_length

#: More offcuts of one stock than this, or one longer than this (mm), are a slip of the pen.
MOST, LONGEST = 60, 20_000.0


class OffcutError(ValueError):
    """Offcuts that cannot be read: ``value`` is what was written, ``limit`` what is wrong with it, ``cure`` what to write."""

    def __init__(self, value: Text, limit: Text, cure: Text) -> None:
        super().__init__(say("{value}: {limit}. {cure}", value=value, limit=limit, cure=cure))
        self.value, self.limit, self.cure = value, limit, cure


def read_offcuts(text: str) -> dict[str, tuple[float, ...]]:
    """The lengths (mm) of the offcuts by the name of their stock.  Raises OffcutError."""
    found: dict[str, tuple[float, ...]] = {}
    for entry in filter(None, (each.strip() for each in text.split(";"))):
        name, colon, lengths = entry.partition(":")
        if not colon or not name.strip() or not lengths.strip():
            raise OffcutError(_quoted(entry), say("it is not a stock with its lengths"),
                              say("Give the stock, a colon and the lengths: 2x4: 1200, 900; 1x6: 2 m."))
        read = tuple(_length(each.strip()) for each in re.split(r",\s+", lengths.strip()))
        found[name.strip()] = (*found.get(name.strip(), ()), *read)
    for name, read in found.items():
        if len(read) > MOST:
            raise OffcutError(_quoted(name), say("its {count} offcuts are more than {most}", count=len(read), most=MOST),
                              say("Take the shortest out."))
    return found


def _quoted(text: str) -> Text:
    return say("“{name}”", name=text[:40])


def _length(text: str) -> float:
    """One length.  A comma within it might part two lengths, or be a decimal mark: it is refused."""
    if "," in text:
        raise OffcutError(_quoted(text), say("it can be read in two ways"), say(
            "Set a space behind the comma between lengths, and write decimals with a point."))
    try:
        mm = parse_length(text)
    except ReadError as error:
        raise OffcutError(_quoted(text), say("it is not a length"),
                          say("Give figures and a unit: 1200 mm, 3 1/2 ft.")) from error
    if not 0.0 < mm <= LONGEST:
        raise OffcutError(_quoted(text), say("it is no offcut's length"),
                          say("Give lengths above 0 mm and at most {longest:g} mm.", longest=LONGEST))
    return float(mm)
