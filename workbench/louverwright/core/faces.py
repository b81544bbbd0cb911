# SPDX-License-Identifier: LGPL-2.1-or-later
"""The faces of a solid made of cells: coplanar facets merged, inner walls gone, corners shared.

The result is what a modelling kernel wants to be given (no booleans needed) and
what a drawing is made from.
"""

from __future__ import annotations

import math
from bisect import bisect_left, bisect_right
from collections import Counter
from collections.abc import Mapping
from dataclasses import dataclass
from functools import cached_property
from itertools import pairwise, product
from typing import NamedTuple

from .geometry import Plane, Vec, cross, dot, length, newell, scale, sub, unit
from .solid import Facet, Solid

#: Corners nearer than this (mm) are one corner of the finished solid.
SAME_CORNER = 1e-4
#: Planes whose normals differ by less than this sine, and offsets by SAME_CORNER, are one plane.
SAME_NORMAL = 1e-7

Loop = tuple[int, ...]
Edge = tuple[int, int]


@dataclass(frozen=True)
class Face:
    """A plane face: outward plane, the name of what made it, and loops of corner numbers.

    The first loop is the outline, anticlockwise seen from outside; the others are holes, clockwise.
    """

    plane: Plane
    name: str
    loops: tuple[Loop, ...]


class Side(NamedTuple):
    """An edge from corner ``a`` to corner ``b`` as a border of a face: ``inward`` leads from it into the face, square to it
    (unit vector)."""

    a: int
    b: int
    face: Face
    inward: Vec


@dataclass(frozen=True)
class Shell:
    """A closed solid as its corners (mm) and faces."""

    points: tuple[Vec, ...]
    faces: tuple[Face, ...]

    def outline(self, face: Face) -> tuple[Vec, ...]:
        """The corners of a face's outline."""
        return tuple(self.points[i] for i in face.loops[0])

    @cached_property
    def edges(self) -> Mapping[Edge, tuple[int, ...]]:
        """Each edge (lower corner number first) with the numbers of the faces that meet in it."""
        found: dict[Edge, list[int]] = {}
        for number, face in enumerate(self.faces):
            for loop in face.loops:
                for a, b in pairwise((*loop, loop[0])):
                    found.setdefault((min(a, b), max(a, b)), []).append(number)
        return {edge: tuple(numbers) for edge, numbers in found.items()}

    @cached_property
    def sides(self) -> tuple[Side, ...]:
        """Each face's border, edge by edge, so that every edge comes twice."""
        return tuple(Side(a, b, face, unit(cross(face.plane.normal, sub(self.points[b], self.points[a]))))
                     for face in self.faces for loop in face.loops for a, b in pairwise((*loop, loop[0])))


def shell_of(solid: Solid) -> Shell:
    """The merged faces of a solid.  Raises ValueError for a solid whose faces do not close."""
    points, groups = _grouped(solid)
    loops_of = [_loops(plane, facets, points) for plane, facets in groups]
    kept = _true_corners([loop for loops in loops_of for loop in loops], points)
    numbers = {old: new for new, old in enumerate(sorted(kept))}
    faces: list[Face] = []
    for (plane, facets), loops in zip(groups, loops_of, strict=True):
        thinned = [tuple(i for i in loop if i in kept) for loop in loops]
        for face in _assembled(plane, facets, thinned, points):
            renumbered = tuple(tuple(numbers[i] for i in loop) for loop in face.loops)
            faces.append(Face(face.plane, face.name, renumbered))
    return Shell(tuple(points[i] for i in sorted(kept)), tuple(faces))


_Numbered = tuple[Facet, Loop]


def _grouped(solid: Solid) -> tuple[list[Vec], list[tuple[Plane, list[_Numbered]]]]:
    """All corners, and the facets by the plane they lie in, whichever way they face."""
    corners = _Corners()
    groups: list[tuple[Plane, list[_Numbered]]] = []
    for cell in solid:
        for facet in cell:
            loop = tuple(dict.fromkeys(map(corners.number, facet.points)))
            if len(loop) >= 3:
                _group(facet.plane, groups).append((facet, loop))
    return corners.points, groups


class _Corners:
    """Corners by their numbers; those nearer than SAME_CORNER to each other are one."""

    def __init__(self) -> None:
        self.points: list[Vec] = []
        self._seen: dict[Vec, int] = {}
        self._in_cell: dict[tuple[int, int, int], list[int]] = {}

    def number(self, p: Vec) -> int:
        """A corner's number, that of the first one that it is the same as."""
        found = self._seen.get(p)
        if found is None:
            found = self._seen[p] = self._near(p)
        return found

    def _near(self, p: Vec) -> int:
        xs, ys, zs = ({math.floor(x - SAME_CORNER), math.floor(x + SAME_CORNER)} for x in p)    # cells of 1 mm
        near = [i for cell in product(xs, ys, zs) for i in self._in_cell.get(cell, ())
                if max(abs(a - b) for a, b in zip(p, self.points[i], strict=True)) < SAME_CORNER]
        if near:
            return min(near)
        self.points.append(p)
        x, y, z = p
        self._in_cell.setdefault((math.floor(x), math.floor(y), math.floor(z)), []).append(len(self.points) - 1)
        return len(self.points) - 1


def _group(plane: Plane, groups: list[tuple[Plane, list[_Numbered]]]) -> list[_Numbered]:
    for known, facets in groups:
        way = dot(known.normal, plane.normal)
        near = abs(known.offset - math.copysign(plane.offset, plane.offset * way)) < SAME_CORNER
        if near and length(cross(known.normal, plane.normal)) < SAME_NORMAL:
            return facets
    groups.append((plane, []))
    return groups[-1][1]


def _loops(plane: Plane, facets: list[_Numbered], points: list[Vec]) -> list[Loop]:
    """The borders that are left when facets that touch in this plane are joined."""
    (nx, ny, nz), offset = plane.normal, plane.offset
    on_plane = [i for i, (x, y, z) in enumerate(points) if abs(nx * x + ny * y + nz * z - offset) < 2 * SAME_CORNER]
    in_order = [sorted((points[i][axis], i) for i in on_plane) for axis in range(3)]
    edges: Counter[Edge] = Counter()
    for _, loop in facets:
        for a, b in pairwise((*loop, loop[0])):
            for edge in _split(a, b, in_order, points):
                if edges[edge[1], edge[0]] > 0:
                    edges[edge[1], edge[0]] -= 1
                else:
                    edges[edge] += 1
    return _traced(list(edges.elements()), plane, points)


def _split(a: int, b: int, in_order: list[list[tuple[float, int]]], points: list[Vec]) -> list[Edge]:
    """The edge cut up at every corner that lies on it; the corners come in their order along each axis."""
    start, way = points[a], sub(points[b], points[a])
    axis = max((0, 1, 2), key=[abs(x) for x in way].__getitem__)    # the one along which fewest lie beside the edge
    low, high = sorted((points[a][axis], points[b][axis]))
    candidates = in_order[axis]
    first, last = bisect_left(candidates, (low - SAME_CORNER, 0)), bisect_right(candidates, (high + SAME_CORNER, 0))
    if last - first <= 2:
        return [(a, b)]
    whole = length(way)
    along = scale(way, 1.0 / whole)
    j, k = (axis + 1) % 3, (axis + 2) % 3
    from_axis, from_j, from_k, lean_j, lean_k = start[axis], start[j], start[k], way[j] / way[axis], way[k] / way[axis]
    stops: list[tuple[float, int]] = []
    for x, i in candidates[first:last]:
        p, ahead = points[i], x - from_axis
        beside = abs(p[j] - from_j - lean_j * ahead) > 2 * SAME_CORNER or abs(p[k] - from_k - lean_k * ahead) > 2 * SAME_CORNER
        if beside or i in (a, b):
            continue
        reach = sub(p, start)
        at = dot(reach, along)
        if 0.0 < at < whole and length(sub(reach, scale(along, at))) < SAME_CORNER:
            stops.append((at, i))
    chain = [a, *(i for _, i in sorted(stops)), b]
    return list(pairwise(chain))


def _traced(edges: list[Edge], plane: Plane, points: list[Vec]) -> list[Loop]:
    """Edges joined to loops; where two loops touch in a corner each keeps to itself."""
    leaving: dict[int, list[int]] = {}
    for a, b in edges:
        leaving.setdefault(a, []).append(b)
    loops: list[Loop] = []
    while leaving:
        start = next(iter(leaving))
        loop, here, came = [start], _take(leaving, start, None, plane, points), start
        while here != start:
            loop.append(here)
            if here not in leaving:
                raise ValueError("the faces of a solid do not close")
            here, came = _take(leaving, here, came, plane, points), here
        loops.append(tuple(loop))
    return loops


def _take(leaving: dict[int, list[int]], here: int, came: int | None, plane: Plane, points: list[Vec]) -> int:
    """The next corner: of several the one that turns most to the left, so that loops stay simple."""
    ways = leaving[here]
    best = ways[0]
    if len(ways) > 1 and came is not None:
        arrive = sub(points[here], points[came])
        best = max(ways, key=lambda i: _turn(arrive, sub(points[i], points[here]), plane.normal))
    ways.remove(best)
    if not ways:
        del leaving[here]
    return best


def _turn(arrive: Vec, leave: Vec, normal: Vec) -> float:
    return math.atan2(dot(cross(arrive, leave), normal), dot(arrive, leave))


def _true_corners(loops: list[Loop], points: list[Vec]) -> set[int]:
    """Corners at which some face's border really turns."""
    kept: set[int] = set()
    for loop in loops:
        for before, here, after in zip((loop[-1], *loop[:-1]), loop, (*loop[1:], loop[0]), strict=True):
            a, b = sub(points[here], points[before]), sub(points[after], points[here])
            if length(cross(unit(a), unit(b))) > 1e-6:
                kept.add(here)
    return kept


def _assembled(plane: Plane, facets: list[_Numbered], loops: list[Loop], points: list[Vec]) -> list[Face]:
    """Loops sorted into outlines and holes; an outline that turns clockwise faces the other way."""
    turning = {loop: dot(newell(tuple(points[i] for i in loop)), plane.normal) for loop in loops}
    outlines: list[tuple[Loop, list[Loop]]] = []
    for loop in sorted(loops, key=lambda each: -abs(turning[each])):
        holder = next(
            (holes for outline, holes in outlines
             if turning[outline] * turning[loop] < 0 and _inside(loop, outline, plane, points)), None)
        if holder is None:
            outlines.append((loop, []))
        else:
            holder.append(loop)
    faces: list[Face] = []
    for outline, holes in outlines:
        outward = plane if turning[outline] > 0 else plane.flipped()
        names = [f.name for f, _ in facets if dot(f.plane.normal, outward.normal) > 0]
        faces.append(Face(outward, names[0] if names else "", (outline, *holes)))
    return faces


def _inside(loop: Loop, outline: Loop, plane: Plane, points: list[Vec]) -> bool:
    """True when a loop lies within an outline that it does not share a side with."""
    if set(loop) & set(outline):
        return False
    p = points[loop[0]]
    inward = 0.0
    for a, b in pairwise((*outline, outline[0])):
        inward += _turn(sub(points[a], p), sub(points[b], p), plane.normal)
    return abs(inward) > math.pi
