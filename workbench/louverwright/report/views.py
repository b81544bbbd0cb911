# SPDX-License-Identifier: LGPL-2.1-or-later
"""A finished board seen square on: visible and hidden edges, from the same cells as the solid."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from itertools import pairwise

from ..core.assembly import Board, board_shell, board_solid
from ..core.geometry import Vec, dot, scale
from ..core.solid import Cell

Point = tuple[float, float]
Segment = tuple[Point, Point]
#: From where to where along a line.
Stretch = tuple[float, float]

#: A sight line must pass this deep through wood to be blocked by it (mm).
DEPTH = 1e-3
#: How far beside its edge a face is looked at (mm): not on the edge, where the cells of the wood before it may meet.
BESIDE = 1e-2
#: Faces that lie along the sight by less than this (sine) are seen end-on.
END_ON = 1e-6


@dataclass(frozen=True)
class View:
    """A direction to look in: what runs right and up on paper, and where the eye is (unit vectors)."""

    right: Vec
    up: Vec
    eye: Vec

    def flat(self, p: Vec) -> Point:
        """A point of the board on paper (mm, full size)."""
        return (dot(p, self.right), dot(p, self.up))

    def turned(self, p: Vec) -> Vec:
        """A point or a direction in the view's own axes: to the right, up, towards the eye."""
        return (dot(p, self.right), dot(p, self.up), dot(p, self.eye))


#: On the marked face from above, on the reference edge from before it, on end B from beyond it.
ON_FACE = View((1.0, 0.0, 0.0), (0.0, 1.0, 0.0), (0.0, 0.0, 1.0))
ON_EDGE = View((1.0, 0.0, 0.0), (0.0, 0.0, 1.0), (0.0, -1.0, 0.0))
ON_END = View((0.0, 1.0, 0.0), (0.0, 0.0, 1.0), (1.0, 0.0, 0.0))


@dataclass(frozen=True)
class _Side:
    """A face that looks at the eye and ends in an edge: the edge in the view's axes, and a step from it into the face (mm)."""

    start: Vec
    stop: Vec
    step: Vec

    def beside(self, share: float) -> Vec:
        """A point of the face right beside the edge, at a share of its length."""
        (u, v, w), (x, y, z), (a, b, c) = self.start, self.stop, self.step
        return (u + share * (x - u) + a, v + share * (y - v) + b, w + share * (z - w) + c)


def edges_seen(board: Board, view: View) -> tuple[list[Segment], list[Segment]]:
    """Visible and hidden edges of the finished board on paper (mm, full size).

    An edge is seen where a face that looks at the eye is seen right beside it.  Edges seen end-on are left out.  What lies on
    one another is drawn once, and dashed only where none of it is visible.
    """
    lines = _lines(board, view)
    flats = [flat for flat, _ in lines]
    nearest = max(max(side.start[2], side.stop[2]) for _, sides in lines for side in sides)
    blocks: list[_Block] = []
    visible, hidden = _Drawn(), _Drawn()
    for flat, sides in lines:
        if any(min(side.start[2], side.stop[2]) > nearest - DEPTH for side in sides):    # nothing is nearer to the eye
            visible.add(flat)
            continue
        blocks = blocks or [_block(cell, view) for cell in board_solid(board)]
        for start, stop in _stretches(flat, flats) if sides else [(0.0, 1.0)]:
            middle = (start + stop) / 2.0
            blocked = all(_blocked(side.beside(middle), blocks) for side in sides)
            (hidden if blocked else visible).add((_at(flat, start), _at(flat, stop)))
    return list(visible.segments()), list(hidden.segments(visible))


def _lines(board: Board, view: View) -> list[tuple[Segment, list[_Side]]]:
    """The lines on paper that the board's edges lie on, each with the faces that end there and look at the eye."""
    shell = board_shell(board)
    points = [view.turned(p) for p in shell.points]
    places = [(round(u, 4), round(v, 4)) for u, v, _ in points]
    found: dict[Segment, tuple[Segment, list[_Side]]] = {}
    for a, b, face, inward in shell.sides:
        if math.dist(places[a], places[b]) >= DEPTH:
            start, stop = (a, b) if places[a] < places[b] else (b, a)
            flat = (points[start][:2], points[stop][:2])
            _, sides = found.setdefault((places[start], places[stop]), (flat, []))
            if dot(face.plane.normal, view.eye) > END_ON:
                sides.append(_Side(points[start], points[stop], scale(view.turned(inward), BESIDE)))
    return list(found.values())


class _Drawn:
    """Segments by the line on paper that they lie on: its direction and its distance from the origin, rounded; each as the
    stretch along it (mm)."""

    def __init__(self) -> None:
        self._of_line: dict[tuple[float, float, float], list[Stretch]] = {}

    def add(self, segment: Segment) -> None:
        (x, y), (u, v) = segment
        long = math.hypot(u - x, v - y)
        way = (round((u - x) / long, 7) + 0.0, round((v - y) / long, 7) + 0.0)
        if way < (0.0, 0.0):
            (x, y), (u, v), way = (u, v), (x, y), (-way[0] + 0.0, -way[1] + 0.0)
        dx, dy = way
        along = x * dx + y * dy
        self._of_line.setdefault((dx, dy, round(x * dy - y * dx, 4) + 0.0), []).append((along, along + long))

    def segments(self, less: _Drawn | None = None) -> Iterator[Segment]:
        """Each stretch that is drawn, those that meet made one, without what ``less`` draws."""
        for line, stretches in self._of_line.items():
            taken = joined(less._of_line.get(line, []), DEPTH) if less else []
            for start, stop in joined(stretches, DEPTH):
                for low, high in [*taken, (stop, stop)]:
                    if min(low, stop) - start > DEPTH:
                        yield _on(line, start), _on(line, min(low, stop))
                    start = max(start, high)


def _on(line: tuple[float, float, float], along: float) -> Point:
    dx, dy, off = line
    return (along * dx + off * dy, along * dy - off * dx)


def joined(stretches: Iterable[Stretch], near: float) -> list[Stretch]:
    """Stretches in order, those that overlap, meet or come nearer than ``near`` made one."""
    found: list[Stretch] = []
    for start, stop in sorted(stretches):
        if found and start < found[-1][1] + near:
            found[-1] = (found[-1][0], max(stop, found[-1][1]))
        else:
            found.append((start, stop))
    return found


def _at(segment: Segment, share: float) -> Point:
    (x0, y0), (x1, y1) = segment
    return (x0 + share * (x1 - x0), y0 + share * (y1 - y0))


def _stretches(segment: Segment, others: Iterable[Segment]) -> list[Stretch]:
    """The segment cut up wherever another crosses or touches it on paper, as shares of its length."""
    (x0, y0), (x1, y1) = segment
    dx, dy = x1 - x0, y1 - y0
    touching = DEPTH * math.hypot(dx, dy)
    cuts = {0.0, 1.0}
    for (u0, v0), (u1, v1) in others:
        # Twice the areas that the other's ends span with the segment: of one sign where both lie on one side of it.
        first, second = (u0 - x0) * dy - (v0 - y0) * dx, (u1 - x0) * dy - (v1 - y0) * dx
        if min(first, second) > touching or max(first, second) < -touching or abs(first - second) < 1e-9:
            continue
        du, dv = u1 - u0, v1 - v0
        share = ((u0 - x0) * dv - (v0 - y0) * du) / (first - second)
        if 1e-6 < share < 1.0 - 1e-6:
            cuts.add(share)
    return [(a, b) for a, b in pairwise(sorted(cuts)) if b - a > 1e-6]


@dataclass(frozen=True)
class _Block:
    """What a convex cell blocks: its box on paper, how near to the eye it comes, and its faces in the view's axes as normal
    and offset, those that lie along the sight apart."""

    box: tuple[float, float, float, float]
    nearest: float
    along: tuple[tuple[Vec, float], ...]
    across: tuple[tuple[Vec, float], ...]


def _block(cell: Cell, view: View) -> _Block:
    points = [view.turned(p) for facet in cell for p in facet.points]
    us, vs, ws = ([p[i] for p in points] for i in range(3))
    faces = [(view.turned(facet.plane.normal), facet.plane.offset) for facet in cell]
    return _Block((min(us), min(vs), max(us), max(vs)), max(ws), tuple(f for f in faces if abs(f[0][2]) < 1e-12),
                  tuple(f for f in faces if abs(f[0][2]) >= 1e-12))


def _blocked(p: Vec, blocks: list[_Block]) -> bool:
    """True when wood lies between a point of the surface, in the view's axes, and the eye."""
    u, v, w = p
    for block in blocks:
        left, low, right, high = block.box
        if not (left < u < right and low < v < high and block.nearest > w + DEPTH):
            continue
        if any(x * u + y * v - offset > -DEPTH for (x, y, _), offset in block.along):
            continue
        near, far = 0.0, math.inf
        for (x, y, z), offset in block.across:
            reach = (offset - x * u - y * v - z * w) / z
            if z > 0.0:
                far = min(far, reach)
            else:
                near = max(near, reach)
        if far - near > DEPTH:
            return True
    return False
