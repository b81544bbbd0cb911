# SPDX-License-Identifier: LGPL-2.1-or-later
"""A finished board seen square on: visible and hidden edges, from the same cells as the solid."""

from __future__ import annotations

import math
from dataclasses import dataclass
from itertools import pairwise

from ..core.assembly import Board, board_shell, board_solid
from ..core.geometry import Vec, add, dot, scale, sub
from ..core.solid import Solid

Point = tuple[float, float]
Segment = tuple[Point, Point]

#: A sight line must pass this deep through wood to be blocked by it (mm).
DEPTH = 1e-3


@dataclass(frozen=True)
class View:
    """A direction to look in: what runs right and up on paper, and where the eye is (unit vectors)."""

    right: Vec
    up: Vec
    eye: Vec

    def flat(self, p: Vec) -> Point:
        """A point of the board on paper (mm, full size)."""
        return (dot(p, self.right), dot(p, self.up))


#: On the marked face from above, on the reference edge from before it, on end B from beyond it.
ON_FACE = View((1.0, 0.0, 0.0), (0.0, 1.0, 0.0), (0.0, 0.0, 1.0))
ON_EDGE = View((1.0, 0.0, 0.0), (0.0, 0.0, 1.0), (0.0, -1.0, 0.0))
ON_END = View((0.0, 1.0, 0.0), (0.0, 0.0, 1.0), (1.0, 0.0, 0.0))


def edges_seen(board: Board, view: View) -> tuple[list[Segment], list[Segment]]:
    """Visible and hidden edges of the finished board on paper (mm, full size); edges seen end-on are left out."""
    shell = board_shell(board)
    solid = board_solid(board)
    lines = [(shell.points[a], shell.points[b]) for a, b in shell.edges()]
    flats = [(view.flat(a), view.flat(b)) for a, b in lines]
    visible: list[Segment] = []
    hidden: list[Segment] = []
    for (a, b), flat in zip(lines, flats, strict=True):
        if math.dist(*flat) < DEPTH:
            continue
        for start, stop in _stretches(flat, flats):
            middle = add(a, scale(sub(b, a), (start + stop) / 2.0))
            piece = (_at(flat, start), _at(flat, stop))
            (hidden if _blocked(middle, view.eye, solid) else visible).append(piece)
    return visible, [each for each in hidden if not _covered(each, visible)]


def _at(segment: Segment, share: float) -> Point:
    (x0, y0), (x1, y1) = segment
    return (x0 + share * (x1 - x0), y0 + share * (y1 - y0))


def _stretches(segment: Segment, others: list[Segment]) -> list[tuple[float, float]]:
    """The segment cut up wherever another crosses it on paper, as shares of its length."""
    cuts = {0.0, 1.0}
    for other in others:
        share = _crossing(segment, other)
        if share is not None and 1e-6 < share < 1.0 - 1e-6:
            cuts.add(share)
    stops = sorted(cuts)
    return [(a, b) for a, b in pairwise(stops) if b - a > 1e-6]


def _crossing(a: Segment, b: Segment) -> float | None:
    (x0, y0), (x1, y1) = a
    (u0, v0), (u1, v1) = b
    dx, dy, du, dv = x1 - x0, y1 - y0, u1 - u0, v1 - v0
    bottom = dx * dv - dy * du
    if abs(bottom) < 1e-9:
        return None
    along = ((u0 - x0) * dv - (v0 - y0) * du) / bottom
    other = ((u0 - x0) * dy - (v0 - y0) * dx) / bottom
    return along if -1e-9 <= other <= 1.0 + 1e-9 else None


def _blocked(p: Vec, eye: Vec, solid: Solid) -> bool:
    """True when wood lies between a point of the surface and the eye."""
    for cell in solid:
        near, far = 0.0, math.inf
        for facet in cell:
            toward = dot(facet.plane.normal, eye)
            above = facet.plane.height(p)
            if abs(toward) < 1e-12:
                if above > -DEPTH:
                    far = -1.0
                    break
            elif toward > 0.0:
                far = min(far, -above / toward)
            else:
                near = max(near, -above / toward)
        if far - near > DEPTH:
            return True
    return False


def _covered(segment: Segment, visible: list[Segment]) -> bool:
    """True when a hidden edge lies right behind a visible one."""
    return any(_on(segment[0], other) and _on(segment[1], other) for other in visible)


def _on(p: Point, segment: Segment) -> bool:
    whole = math.dist(*segment)
    return math.dist(p, segment[0]) + math.dist(p, segment[1]) < whole + 1e-6
