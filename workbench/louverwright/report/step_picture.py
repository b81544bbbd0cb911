# SPDX-License-Identifier: LGPL-2.1-or-later
"""Pictures of a vent that goes together: pieces as they stand, seen from a corner, those that are new in grey.

Faces are painted from the back to the front.  Which lies before which is looked up on a grid of points on the paper, so
that boards that interlock come out right; a face that no point of the grid sees is left out.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import lru_cache
from itertools import pairwise

from ..core.assembly import Assembly, Part, Piece, board_shell, board_solid
from ..core.geometry import Vec, cross, dot, sub, unit
from .drawing import Area, Drawing, Item, Label, Line, Point
from .strokes import fitted

#: Between two points of the grid (mm on paper).
GRID = 0.8
#: Marks stand in a column beside the picture, at least so far apart (mm on paper), in this size (points).
LINE_HIGH, LETTERS = 4.2, 7.0


#: Stretches of an edge as shares of its length.
Stretches = tuple[tuple[float, float], ...]


@dataclass(frozen=True)
class Eye:
    """Where a picture is seen from: degrees anticlockwise from +X in plan, and degrees above the level."""

    round: float
    up: float

    @property
    def toward(self) -> Vec:
        """The unit vector to the eye."""
        a, e = math.radians(self.round), math.radians(self.up)
        return (math.cos(a) * math.cos(e), math.sin(a) * math.cos(e), math.sin(e))

    def axes(self) -> tuple[Vec, Vec]:
        """What runs right and up on paper."""
        right = unit(cross((0.0, 0.0, 1.0), self.toward))
        return right, cross(self.toward, right)


FROM_ABOVE, FROM_HIGH, FROM_BELOW = Eye(-35.0, 28.0), Eye(-35.0, 58.0), Eye(-35.0, -24.0)


@dataclass(frozen=True)
class _Face:
    """A face on paper (mm at full size): its outline, which stretches of its edges are the board's, and its depth as a plane
    of x, y."""

    piece: Piece
    points: tuple[Point, ...]
    drawn: tuple[Stretches, ...]
    depth: Vec

    def near(self, x: float, y: float) -> float:
        """How near to the eye the face's plane is at a point of the paper."""
        return self.depth[0] * x + self.depth[1] * y + self.depth[2]


@lru_cache(maxsize=1024)
def _true_edges(part: Part) -> tuple[tuple[Stretches, ...], ...]:
    """For each facet of a board's cells, for each of its edges, which stretches are edges of the finished board."""
    shell = board_shell(part.board)
    edges = [(shell.points[a], shell.points[b]) for a, b in shell.edges]
    return tuple(tuple(tuple(filter(None, (_shared(a, b, *edge) for edge in edges)))
                       for a, b in pairwise((*facet.points, facet.points[0])))
                 for cell in board_solid(part.board) for facet in cell)


def _shared(a: Vec, b: Vec, p: Vec, q: Vec) -> tuple[float, float] | None:
    """What two lines on each other have in common, as shares of the first from ``a``; None for nothing."""
    way, whole = sub(b, a), math.dist(a, b)
    shares = []
    for point in (p, q):
        share = dot(sub(point, a), way) / whole ** 2
        if math.dist(point, (a[0] + share * way[0], a[1] + share * way[1], a[2] + share * way[2])) > 1e-3:
            return None
        shares.append(min(1.0, max(0.0, share)))
    low, high = min(shares), max(shares)
    return (low, high) if (high - low) * whole > 1e-3 else None


def _faces(part: Part, piece: Piece, eye: Eye) -> Iterator[_Face]:
    """The faces of a piece that look towards the eye."""
    (right, up), toward = eye.axes(), eye.toward
    facets = [facet for cell in board_solid(part.board) for facet in cell]
    for facet, drawn in zip(facets, _true_edges(part), strict=True):
        normal = piece.placement.direction(facet.plane.normal)
        facing = dot(normal, toward)
        if facing > 1e-4:
            at = piece.placement.point(facet.points[0])
            points = tuple((dot(right, p), dot(up, p)) for p in map(piece.placement.point, facet.points))
            a, b = -dot(normal, right) / facing, -dot(normal, up) / facing
            yield _Face(piece, points, drawn, (a, b, dot(normal, at) / facing))


def picture(assembly: Assembly, there: Iterable[str], new: Iterable[str], eye: Eye, room: tuple[float, float],
            description: str) -> Drawing:
    """The pieces that are ``there`` and those that are ``new`` (ids), these in grey with their marks beside the picture.

    It fills ``room`` (width and height, mm on paper) as far as its shape lets it.
    """
    fresh = frozenset(new)
    faces = [face for name in dict.fromkeys((*there, *fresh)) for face in _of_piece(assembly, name, eye)]
    scale, x0, y0 = _frame(faces, room)
    placed = [_Face(face.piece, tuple(((x - x0) * scale, (y - y0) * scale) for x, y in face.points), face.drawn,
                    (face.depth[0] / scale, face.depth[1] / scale,
                     face.depth[0] * x0 + face.depth[1] * y0 + face.depth[2])) for face in faces]
    seen, order = _painted(placed)
    items: list[Item] = []
    for number in order:
        items += _paint(placed[number], placed[number].piece.id in fresh)
    right = max(x for face in placed for x, _ in face.points)
    items += _marks(assembly, [placed[n] for n in order if placed[n].piece.id in fresh],
                    {id(placed[n]): points for n, points in seen.items()}, right)
    return fitted(tuple(items), description=description)


@lru_cache(maxsize=2048)
def _of_piece_cached(part: Part, piece: Piece, eye: Eye) -> tuple[_Face, ...]:
    return tuple(_faces(part, piece, eye))


def _of_piece(assembly: Assembly, name: str, eye: Eye) -> tuple[_Face, ...]:
    part = assembly.part_of(name)
    return _of_piece_cached(part, next(piece for piece in part.pieces if piece.id == name), eye)


def _frame(faces: Sequence[_Face], room: tuple[float, float]) -> tuple[float, float, float]:
    """Scale on paper and the corner that is moved to the origin (mm at full size)."""
    xs, ys = zip(*(p for face in faces for p in face.points), strict=True)
    wide, high = max(xs) - min(xs), max(ys) - min(ys)
    return min(room[0] / wide, room[1] / high), min(xs), min(ys)


# ---- what lies before what


def _painted(faces: Sequence[_Face]) -> tuple[dict[int, list[Point]], list[int]]:
    """The points of the grid at which each face is seen, by its number, and those faces from the back to the front."""
    columns: dict[tuple[int, int], list[tuple[float, int]]] = {}
    for number, face in enumerate(faces):
        for i, j in _grid(face.points):
            columns.setdefault((i, j), []).append((face.near(i * GRID, j * GRID), number))
    seen: dict[int, list[Point]] = {}
    for (i, j), column in columns.items():
        column.sort()
        seen.setdefault(column[-1][1], []).append((i * GRID, j * GRID))
    behind: dict[int, set[int]] = {number: set() for number in seen}
    for column in columns.values():
        stack = [number for _, number in column if number in seen]
        for far, near in pairwise(stack):
            if far != near:
                behind[near].add(far)
    return seen, _sorted(behind, {number: min(faces[number].near(*p) for p in seen[number]) for number in seen})


def _grid(points: Sequence[Point]) -> Iterator[tuple[int, int]]:
    """The points of the grid within a convex outline, by their numbers."""
    low, high = min(y for _, y in points), max(y for _, y in points)
    for j in range(math.ceil(low / GRID), math.floor(high / GRID) + 1):
        level = j * GRID
        hits = [xa + (level - ya) / (yb - ya) * (xb - xa) for (xa, ya), (xb, yb) in pairwise((*points, points[0]))
                if (ya > level) != (yb > level)]
        if len(hits) > 1:
            yield from ((i, j) for i in range(math.ceil(min(hits) / GRID), math.floor(max(hits) / GRID) + 1))


def _sorted(behind: Mapping[int, set[int]], depth: Mapping[int, float]) -> list[int]:
    """Numbers so that each comes after all that lie behind it; of a ring of them the furthest first."""
    waiting = {number: set(others) for number, others in behind.items()}
    before: dict[int, list[int]] = {}
    for number, others in behind.items():
        for other in others:
            before.setdefault(other, []).append(number)
    free = [number for number, others in waiting.items() if not others]
    order: list[int] = []
    while waiting:
        if not free:
            free = [min(waiting, key=lambda n: (len(waiting[n]), depth[n]))]
        number = free.pop()
        if number not in waiting:
            continue
        del waiting[number]
        order.append(number)
        for other in before.get(number, ()):
            if other in waiting:
                waiting[other].discard(number)
                if not waiting[other]:
                    free.append(other)
    return order


# ---- paint and marks


def _paint(face: _Face, fresh: bool) -> Iterator[Item]:
    yield Area((face.points,), "shade" if fresh else "face", "")
    for (a, b), stretches in zip(pairwise((*face.points, face.points[0])), face.drawn, strict=True):
        for low, high in stretches:
            ends = tuple((a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1])) for share in (low, high))
            if ends[0] != ends[1]:
                yield Line(ends, "thin")


def _marks(assembly: Assembly, faces: Sequence[_Face], seen: Mapping[int, list[Point]], right: float) -> Iterator[Item]:
    """A line from each mark in the column on the right to the face of its pieces that is seen best."""
    best: dict[str, tuple[int, Point]] = {}
    for face in faces:
        points = seen[id(face)]
        mark = assembly.part_of(face.piece.id).mark
        if len(points) > best.get(mark, (0, (0.0, 0.0)))[0]:
            best[mark] = (len(points), points[len(points) // 2])
    column = sorted(((point[1], mark, point) for mark, (_, point) in best.items()), reverse=True)
    level = math.inf
    for y, mark, point in column:
        level = min(level - LINE_HIGH, y)
        yield Line((point, (right + 4.0, level)), "thin")
        yield Label(right + 5.0, level - 1.0, mark, LETTERS)
