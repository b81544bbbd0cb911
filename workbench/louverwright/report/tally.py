# SPDX-License-Identifier: LGPL-2.1-or-later
"""What of a part can be counted off as it is cut, and the digest that stands for one piece of it."""

from __future__ import annotations

import hashlib

from ..core.assembly import Cut, Part
from ..core.geometry import Vec
from ..core.kinds import STAGES
from ..core.measures import stock_text
from .job import Job
from .page import Tally
from .part_sheet import PartSheet

#: Digits of a millimetre that count: what ``core.marks`` takes for alike, and no float's last digit.
DIGITS = 3
#: Of a unit direction: 0.0001°, far below any saw.
DIRECTION_DIGITS = 6


def tally(sheet: PartSheet, job: Job) -> Tally:
    """A part's tally, the pieces of all vents together."""
    part = sheet.part
    return Tally(piece_digest(part), part.mark, sheet.name, job.count(part), STAGES[part.kind.stage][1], part.stock.name)


def piece_digest(part: Part) -> str:
    """Twelve hexadecimal digits that stand for one piece: kind, hand, stock, blank and cuts.

    The mark does not count, nor what is only said of the part.  Pieces that ``core.compare`` takes for alike only after a
    turn have digests of their own, so that what is counted as cut surely is.
    """
    board = part.board
    told = (part.kind.id, part.hand, stock_text(part.stock), _lengths(*board.size), tuple(map(_cut, board.cuts)))
    return hashlib.sha256(repr(told).encode("utf-8")).hexdigest()[:12]


def _cut(cut: Cut) -> tuple[object, ...]:
    planes = tuple((_direction(plane.normal), _lengths(plane.offset)) for plane in cut.planes)
    bore = cut.bore and (_lengths(*cut.bore.start, cut.bore.length, cut.bore.diameter), _direction(cut.bore.direction))
    return cut.kind, planes, bore


def _lengths(*values: float) -> tuple[float, ...]:
    return tuple(round(value, DIGITS) + 0.0 for value in values)    # no −0.0


def _direction(vector: Vec) -> tuple[float, ...]:
    return tuple(round(value, DIRECTION_DIGITS) + 0.0 for value in vector)
