# SPDX-License-Identifier: LGPL-2.1-or-later
"""What a straight line meets among pieces of wood as they stand: how much wood before and behind a seam, and whether a
driver is free.  All in mm, in the assembly frame; bores are not looked at."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from functools import lru_cache

from .assembly import Assembly, Piece
from .dry_fit import standing_cells
from .geometry import Vec, add, cross, dot, scale, sub, unit
from .solid import Cell

#: Wood behind wood with less than this between is one path (mm).
TOUCHING = 0.02
Stretch = tuple[float, float]


@dataclass(frozen=True)
class Body:
    """A piece with its cells where it stands and its box."""

    piece: Piece
    cells: tuple[Cell, ...]
    low: Vec
    high: Vec

    def near(self, start: Vec, stop: Vec, room: float) -> bool:
        """Whether the box comes within ``room`` of the box round a line."""
        return all(min(start[i], stop[i]) - room <= self.high[i] and self.low[i] <= max(start[i], stop[i]) + room
                   for i in range(3))


@lru_cache(maxsize=8)
def bodies(assembly: Assembly) -> dict[str, Body]:
    """Every piece that is made, by its id."""
    found = {}
    for piece in assembly.pieces:
        cells = standing_cells(assembly, piece)
        points = [p for cell in cells for facet in cell for p in facet.points]
        low = (min(p[0] for p in points), min(p[1] for p in points), min(p[2] for p in points))
        high = (max(p[0] for p in points), max(p[1] for p in points), max(p[2] for p in points))
        found[piece.id] = Body(piece, cells, low, high)
    return found


def stretch_in(cell: Cell, start: Vec, way: Vec) -> Stretch | None:
    """From where to where a line lies in a convex cell, as distances from ``start`` along the unit vector ``way``."""
    near, far = -math.inf, math.inf
    for facet in cell:
        toward, above = dot(facet.plane.normal, way), facet.plane.height(start)
        if abs(toward) < 1e-12:
            if above > -1e-9:
                return None
        elif toward > 0.0:
            far = min(far, -above / toward)
        else:
            near = max(near, -above / toward)
        if near >= far:
            return None
    return near, far


def stretches(body: Body, start: Vec, way: Vec) -> list[Stretch]:
    """A line's stretches within a piece, in order, those of cells that meet made one."""
    found = sorted(each for cell in body.cells if (each := stretch_in(cell, start, way)))
    joined: list[Stretch] = []
    for low, high in found:
        if joined and low <= joined[-1][1] + TOUCHING:
            joined[-1] = (joined[-1][0], max(high, joined[-1][1]))
        else:
            joined.append((low, high))
    return joined


def wood_ahead(start: Vec, way: Vec, ahead: Iterable[Body]) -> float:
    """How far a line from ``start`` stays in wood without a break, through any of the pieces (mm); 0 for none."""
    found = sorted(each for body in ahead for each in stretches(body, start, way) if each[1] > TOUCHING)
    reach = 0.0
    for low, high in found:
        if low > reach + TOUCHING:
            break
        reach = max(reach, high)
    return reach


def blocker(start: Vec, way: Vec, least: float, most: float, obstacles: Iterable[Body]) -> str:
    """The id of a piece that a line meets between two distances from ``start``; '' where it is free."""
    for body in obstacles:
        for cell in body.cells:
            stretch = stretch_in(cell, start, way)
            if stretch and min(stretch[1], most) - max(stretch[0], least) > TOUCHING:
                return body.piece.id
    return ""


def rim(start: Vec, way: Vec, radius: float, count: int) -> Iterator[Vec]:
    """Points evenly round a line's start, square to it."""
    side = unit(cross(way, (0.0, 0.0, 1.0) if abs(way[2]) < 0.9 else (1.0, 0.0, 0.0)))
    other = cross(way, side)
    for number in range(count):
        angle = 2.0 * math.pi * number / count
        yield add(start, add(scale(side, radius * math.cos(angle)), scale(other, radius * math.sin(angle))))


def between_lines(a: tuple[Vec, Vec], b: tuple[Vec, Vec]) -> float:
    """Least distance of two straight pieces of line, each from end to end (mm)."""
    u, v, w = sub(a[1], a[0]), sub(b[1], b[0]), sub(a[0], b[0])
    uu, uv, vv, uw, vw = dot(u, u), dot(u, v), dot(v, v), dot(u, w), dot(v, w)
    bottom = uu * vv - uv * uv
    s = min(1.0, max(0.0, (uv * vw - vv * uw) / bottom)) if bottom > 1e-9 else 0.0
    t = min(1.0, max(0.0, (uv * s + vw) / vv)) if vv > 1e-12 else 0.0
    s = min(1.0, max(0.0, (uv * t - uw) / uu)) if uu > 1e-12 else 0.0
    return math.dist(add(a[0], scale(u, s)), add(b[0], scale(v, t)))
