# SPDX-License-Identifier: LGPL-2.1-or-later
"""Which edges of many pieces an eye far away sees: exact, by the shadows that convex cells cast.

Everything is turned into the view first: u to the right, v up, w towards the eye (mm).  What a convex cell hides is all
that lies behind its faces that look at the eye and inside its outline on paper: a convex space again, so that the hidden
stretch of an edge is found by clipping it with a few planes.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from ..core.geometry import Vec, add, dot, scale
from ..core.hull import hull
from ..core.solid import Cell
from .views import END_ON, Segment, Stretch, View, joined

#: How far inside a shadow a point must lie to be hidden by it (mm): pieces that touch do not hide each other's edges.
INSIDE = 1e-2
#: How far beside its edge a face is looked at (mm): not on the edge, where the shadows of two cells may meet.
BESIDE = 2.5 * INSIDE
#: Stretches shorter than this (mm) are not drawn.
SHORTEST = 0.05
#: All of an edge, and the difference of two shares that are one.
WHOLE: list[Stretch] = [(0.0, 1.0)]
SAME_SHARE = 1e-9


@dataclass(frozen=True)
class Edge:
    """An edge of a piece, and of the faces that meet in it the outward normals and the ways from the edge into them (unit
    vectors, assembly frame)."""

    start: Vec
    stop: Vec
    sides: tuple[tuple[Vec, Vec], ...]


@dataclass(frozen=True)
class Body:
    """A piece as it stands, under a name: its convex cells and its edges (mm, assembly frame)."""

    name: str
    cells: tuple[Cell, ...]
    edges: tuple[Edge, ...]


@dataclass(frozen=True)
class Shadow:
    """What one cell hides: the box of its outline and how near to the eye it comes, and planes (normal, offset) that a
    hidden point lies below."""

    box: tuple[float, float, float, float]
    nearest: float
    planes: tuple[tuple[Vec, float], ...]


def visible_edges(bodies: Sequence[Body], view: View) -> list[tuple[str, Segment]]:
    """The stretches of edges that are seen, each with its piece's name, on paper at full size (mm); each line once."""
    shadows = sorted((shadow for body in bodies for cell in body.cells for shadow in [shadow_of(cell, view)] if shadow),
                     key=lambda each: -each.nearest)
    found: dict[tuple[tuple[int, int], ...], tuple[str, Segment]] = {}
    for body in bodies:
        for edge in body.edges:
            for segment in _seen(edge, view, shadows):
                found.setdefault(_key(segment), (body.name, segment))
    return list(found.values())


def _key(segment: Segment) -> tuple[tuple[int, int], ...]:
    """The same for lines that lie on each other, whichever way they run."""
    return tuple(sorted((round(20.0 * x), round(20.0 * y)) for x, y in segment))


def shadow_of(cell: Cell, view: View) -> Shadow | None:
    """What a cell hides in a view; None for one that has no extent on paper."""
    points = {view.turned(p) for facet in cell for p in facet.points}
    outline = hull((p[0], p[1]) for p in points)
    if len(outline) < 3:
        return None
    planes: list[tuple[Vec, float]] = []
    for facet in cell:
        normal = view.turned(facet.plane.normal)
        if normal[2] > END_ON:
            planes.append((normal, dot(normal, view.turned(facet.points[0]))))
    for (x, y), (a, b) in zip(outline, (*outline[1:], outline[0]), strict=True):
        long = ((a - x) ** 2 + (b - y) ** 2) ** 0.5
        out = ((b - y) / long, (x - a) / long, 0.0)
        planes.append((out, out[0] * x + out[1] * y))
    us, vs = [p[0] for p in outline], [p[1] for p in outline]
    return Shadow((min(us), min(vs), max(us), max(vs)), max(p[2] for p in points), tuple(planes))


def _seen(edge: Edge, view: View, shadows: Sequence[Shadow]) -> list[Segment]:
    """What of an edge is seen, on paper: where a face that looks at the eye is seen right beside it."""
    a, b = view.turned(edge.start), view.turned(edge.stop)
    long = math.dist(a[:2], b[:2])
    if long < SHORTEST:
        return []
    seen: list[Stretch] = []
    for normal, inward in edge.sides:
        if dot(normal, view.eye) > END_ON and seen != WHOLE:
            step = scale(view.turned(inward), BESIDE)
            seen = joined([*seen, *_bare(add(a, step), add(b, step), shadows)], SAME_SHARE)
    return [((a[0] + s * (b[0] - a[0]), a[1] + s * (b[1] - a[1])), (a[0] + t * (b[0] - a[0]), a[1] + t * (b[1] - a[1])))
            for s, t in seen if (t - s) * long > SHORTEST]


def _bare(a: Vec, b: Vec, shadows: Sequence[Shadow]) -> list[Stretch]:
    """What of a line in the view no shadow covers, as shares of its length."""
    left, right = (a[0], b[0]) if a[0] < b[0] else (b[0], a[0])
    low, high = (a[1], b[1]) if a[1] < b[1] else (b[1], a[1])
    deepest = min(a[2], b[2])
    rest = WHOLE
    for shadow in shadows:
        if shadow.nearest <= deepest + INSIDE:
            break
        box = shadow.box
        if box[0] < right + INSIDE and box[2] > left - INSIDE and box[1] < high + INSIDE and box[3] > low - INSIDE:
            covered = _covered(a, b, shadow)
            if covered:
                rest = [part for each in rest for part in _without(each, covered)]
                if not rest:
                    return []
    return rest


def _covered(a: Vec, b: Vec, shadow: Shadow) -> Stretch | None:
    """The stretch of an edge inside a shadow, as shares of its length."""
    first, last = 0.0, 1.0
    for (x, y, z), offset in shadow.planes:
        start = x * a[0] + y * a[1] + z * a[2] - offset + INSIDE
        stop = x * b[0] + y * b[1] + z * b[2] - offset + INSIDE
        if start > 0.0 and stop > 0.0:
            return None
        if start > 0.0:
            first = max(first, start / (start - stop))
        elif stop > 0.0:
            last = min(last, start / (start - stop))
        if first >= last:
            return None
    return first, last


def _without(stretch: Stretch, covered: Stretch) -> list[Stretch]:
    parts = [(stretch[0], min(stretch[1], covered[0])), (max(stretch[0], covered[1]), stretch[1])]
    return [(s, t) for s, t in parts if t - s > SAME_SHARE]


def is_seen(p: Vec, view: View, shadows: Iterable[Shadow]) -> bool:
    """Whether nothing lies between a point (assembly frame) and the eye."""
    q = view.turned(p)
    return all(any(dot(normal, q) - offset > -INSIDE for normal, offset in shadow.planes) for shadow in shadows)
