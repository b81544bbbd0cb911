# SPDX-License-Identifier: LGPL-2.1-or-later
"""How many sheets no plan can do without.

By area, and by lines: a piece wider than half the sheet crosses the line along its middle wherever it is laid, one wider than
a third crosses at least one of the lines at a third and two thirds, and so on.  What pieces take of such lines at least, a saw
cut between any two, must find room on the lines of all sheets; lines across the sheet count in the same way.
The lines lie alike from both sides of the sheet, so that a turned piece takes no less than one as it is: the bound holds for
every plan that keeps the grain along the sheet and saws pieces apart as their convex outlines.  Millimetres.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from itertools import pairwise

from .sheet_plan import NEAR, Outline, SheetPiece

#: So many lines are tried at once; more of them say little that the area does not.
MOST_LINES = 4
#: Rounding errors of sums that are compared with whole numbers of sheets.
_NOISE = 1e-6


def fewest_sheets(pieces: Sequence[SheetPiece], area: float, long: float, wide: float, kerf: float) -> int:
    """No plan lays the pieces, which cover ``area`` (mm²), on fewer sheets of ``long`` × ``wide``."""
    bounds = [area / (long * wide)]
    for lines in range(1, MOST_LINES + 1):
        for upper in (True, False):
            along = sum(least_taken(piece, upper, lines, wide + NEAR, kerf, 1) for piece in pieces)
            across = sum(least_taken(piece, upper, lines, long + NEAR, kerf, 0) for piece in pieces)
            bounds += [along / (lines * (long + kerf + NEAR)), across / (lines * (wide + kerf + NEAR))]
    return math.ceil(max(bounds) - _NOISE)


def least_taken(piece: SheetPiece, upper: bool, lines: int, room: float, kerf: float, axis: int) -> float:
    """What a piece takes at least, its saw cuts with it, of so many lines on the sheet's upper or lower side, at equal
    distances in its extent (``room``) along an axis: 0 for x, 1 for y."""
    way = piece.ways[0]
    faces = (way.upper, way.lower) if piece.either else (way.upper if upper else way.lower,)
    return min(_taken(face, lines, room, kerf, axis) for face in faces)


def _taken(face: Outline, lines: int, room: float, kerf: float, axis: int) -> float:
    """The least over all places of a face: where nothing changes but evenly between places in which a line meets a corner, the
    least is in one of these; there a line that only touches takes nothing."""
    low, high = min(p[axis] for p in face), max(p[axis] for p in face)
    free = max(0.0, room - (high - low))
    at = [room * number / (lines + 1) for number in range(1, lines + 1)]
    corners = {p[axis] - low for p in face}
    places = {0.0, free, *(line - corner for line in at for corner in corners if 0.0 <= line - corner <= free)}
    return min(sum(_chord(face, line - place + low, axis, kerf) for line in at) for place in places)


def _chord(face: Outline, level: float, axis: int, kerf: float) -> float:
    """What a face takes of a line at a level with its saw cut; 0 where the line does not go into it."""
    if not min(p[axis] for p in face) + NEAR < level < max(p[axis] for p in face) - NEAR:
        return 0.0
    crossings = [a[1 - axis] + (b[1 - axis] - a[1 - axis]) * (level - a[axis]) / (b[axis] - a[axis])
                 for a, b in pairwise((*face, face[0])) if min(a[axis], b[axis]) <= level <= max(a[axis], b[axis])
                 and a[axis] != b[axis]]
    return max(crossings) - min(crossings) + kerf
