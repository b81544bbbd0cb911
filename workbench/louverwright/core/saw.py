# SPDX-License-Identifier: LGPL-2.1-or-later
"""What to set on a saw for a cut, and where on the board it goes: the one place that turns planes into settings.

Mitre is measured from square across the board, bevel as the blade's tilt from upright, taper
from the length.  Signs: mitre > 0, the long point is on the reference edge; bevel > 0,
the marked face is the short one; taper > 0, the board grows narrower towards end B.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from functools import lru_cache

from .assembly import CORNER_CUT, CROSSCUT, RIP, SHAPED_EDGE, Board, Cut
from .geometry import Plane, Vec
from .solid import END_A, END_B, FAR_EDGE, HIDDEN_FACE, MARKED_FACE, REFERENCE_EDGE, Solid, clip

#: Angles below this (degrees) are square: a thousandth of what a saw's scale shows.
SQUARE = 1e-4


@dataclass(frozen=True)
class Setting:
    """A plane's angles in degrees, signed as above; ``mitre`` for cuts across, ``taper`` for rips."""

    mitre: float
    bevel: float
    taper: float

    @property
    def square(self) -> bool:
        """True for a plain square crosscut."""
        return abs(self.mitre) < SQUARE and abs(self.bevel) < SQUARE


def setting(plane: Plane) -> Setting:
    """The angles of a saw cut whose waste lies beyond ``plane`` (board frame)."""
    x, y, z = plane.normal
    mitre = math.degrees(math.atan2(y, abs(x)))
    taper = math.degrees(math.atan2(x, abs(y)))
    return Setting(_clean(mitre), _clean(math.degrees(math.asin(max(-1.0, min(1.0, z))))), _clean(taper))


def _clean(angle: float) -> float:
    return 0.0 if abs(angle) < 1e-9 else angle


def end_of(cut: Cut) -> str:
    """The end that a crosscut or a corner cut belongs to."""
    return END_B if cut.planes[0].normal[0] > 0.0 else END_A


def edge_of(cut: Cut) -> str:
    """The edge that a rip or a corner cut belongs to; a rip of a face belongs to the edge it leans to."""
    return FAR_EDGE if cut.planes[0].normal[1] > 0.0 else REFERENCE_EDGE


#: The four long arrises, as (edge, face).
ARRISES = ((REFERENCE_EDGE, MARKED_FACE), (REFERENCE_EDGE, HIDDEN_FACE), (FAR_EDGE, MARKED_FACE),
           (FAR_EDGE, HIDDEN_FACE))


@dataclass(frozen=True)
class EndSpan:
    """Where one end lies on the four arrises: distances (mm) from end A's long point, in ``ARRISES``' order.

    ``on_cut`` tells on which of them the cut itself lies: elsewhere it has run off the wood before it gets there.
    """

    positions: tuple[float, float, float, float]
    on_cut: tuple[bool, bool, bool, bool] = (True, True, True, True)

    def at(self, edge: str, face: str) -> float:
        """The distance on one arris."""
        return self.positions[ARRISES.index((edge, face))]

    def meets(self, edge: str, face: str) -> bool:
        """Whether the cut lies on one arris."""
        return self.on_cut[ARRISES.index((edge, face))]


@lru_cache(maxsize=1024)
def sawn(board: Board) -> Solid:
    """The board after its saw cuts, before any joint is cut."""
    return board.after(sum(1 for cut in board.cuts if cut.kind in (RIP, SHAPED_EDGE, CROSSCUT, CORNER_CUT)))


@lru_cache(maxsize=1024)
def end_spans(board: Board) -> tuple[EndSpan, EndSpan]:
    """Both ends of the sawn board (end A, end B)."""
    points = list(dict.fromkeys(p for cell in sawn(board) for facet in cell for p in facet.points))
    return _span(_ends(points, -1.0)), _span(_ends(points, 1.0))


@lru_cache(maxsize=1024)
def span_at(board: Board, cut: Cut) -> EndSpan:
    """The end that a crosscut makes, on the board as it stands once that cut is made: where to mark it."""
    done = board.after(board.cuts.index(cut) + 1)
    points = [p for cell in done for facet in cell for p in facet.points]
    found = _ends(points, 1.0 if end_of(cut) == END_B else -1.0)
    a, b, c, d = (abs(cut.planes[0].height(p)) < _ON_CUT for p in found)
    return replace(_span(found), on_cut=(a, b, c, d))


@lru_cache(maxsize=1024)
def line_of(board: Board, cut: Cut) -> float:
    """How long a saw cut's line is across the board as it stands when the cut's turn comes (mm)."""
    x, y, _ = cut.planes[0].normal
    solid = board.after(board.cuts.index(cut))
    reach = [(p[1] * x - p[0] * y) / math.hypot(x, y) for cell in solid
             for facet in clip(cell, cut.planes[0], "this cut") or () if facet.name == "this cut" for p in facet.points]
    return max(reach) - min(reach)


def _ends(points: list[Vec], way: float) -> list[Vec]:
    """The end of each arris: on its face, at the face's edge, the outermost along the length."""
    found = []
    for edge, face in ARRISES:
        out = -1.0 if edge == REFERENCE_EDGE else 1.0
        on_face = _extreme(points, 2, 1.0 if face == MARKED_FACE else -1.0)
        found.append(max(_extreme(on_face, 1, out), key=lambda p: way * p[0]))
    return found


def _span(ends: list[Vec]) -> EndSpan:
    a, b, c, d = (p[0] for p in ends)
    return EndSpan((a, b, c, d))


def _extreme(points: list[Vec], axis: int, sense: float) -> list[Vec]:
    """The points that lie furthest along an axis."""
    most = max(sense * p[axis] for p in points)
    return [p for p in points if sense * p[axis] > most - _LEVEL]


#: Corners this near (mm) lie at one level; and this near a cut's plane on it.
_LEVEL, _ON_CUT = 1e-3, 1e-2
