# SPDX-License-Identifier: LGPL-2.1-or-later
"""Which sheets to buy and how to lay the pieces on them, in strips along the sheet's face grain.

A piece keeps its grain along the sheet and its faces: it is laid as it is or turned half round in the sheet's plane, so that
triangles and trapezia lie head to tail.  Between any two pieces a saw cut's width is left.  x runs along the sheet's grain,
y across; millimetres.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, field

Point = tuple[float, float]
Outline = tuple[Point, ...]
#: A placement is found to this (mm), and pieces this much larger than the sheet still fit it.
NEAR = 0.01
#: As many pieces before it in its strip are looked at for each new one.
BACK = 4


@dataclass(frozen=True)
class SheetPiece:
    """A piece to lay: what it is called, and its convex outline, which begins at x = 0 and y = 0."""

    mark: str
    outline: Outline

    @property
    def long(self) -> float:
        """Along the grain (mm)."""
        return max(x for x, _ in self.outline)

    @property
    def wide(self) -> float:
        """Across the grain (mm)."""
        return max(y for _, y in self.outline)


@dataclass(frozen=True)
class Laid:
    """A piece on its sheet: its outline where it lies, and whether it is turned half round."""

    mark: str
    outline: Outline
    turned: bool


@dataclass(frozen=True)
class Sheet:
    """What is cut from one sheet, and the strips (from y to y, mm) that it is ripped into first."""

    laid: tuple[Laid, ...]
    strips: tuple[tuple[float, float], ...]


@dataclass
class _Strip:
    y: float
    wide: float
    laid: list[Laid] = field(default_factory=list)


def hull(points: Sequence[Point]) -> Outline:
    """The convex outline of points, anticlockwise."""
    ordered = sorted(set(points))

    def chain(way: Sequence[Point]) -> list[Point]:
        out: list[Point] = []
        for p in way:
            while len(out) > 1 and _side(out[-2], out[-1], p) <= 1e-6:
                out.pop()
            out.append(p)
        return out[:-1]

    return (*chain(ordered), *chain(ordered[::-1]))


def area(outline: Outline) -> float:
    """The area of an outline (mm²)."""
    return 0.5 * abs(sum(a[0] * b[1] - b[0] * a[1] for a, b in zip(outline, (*outline[1:], outline[0]), strict=True)))


def apart(a: Outline, b: Outline) -> float:
    """The distance of two convex outlines (mm); 0 where they touch or overlap."""
    if not any(_parts(edge, b) for edge in _edges(a)) and not any(_parts(edge, a) for edge in _edges(b)):
        return 0.0
    return min(*(_to(p, edge) for p in a for edge in _edges(b)), *(_to(p, edge) for p in b for edge in _edges(a)))


def sheet_plan(pieces: Sequence[SheetPiece], long: float, wide: float, kerf: float) -> tuple[Sheet, ...]:
    """Sheets of ``long`` × ``wide`` with all pieces on them: the fewest of several ways to begin.

    Raises ValueError for a piece that is larger than a sheet.
    """
    for piece in pieces:
        if piece.long > long + NEAR or piece.wide > wide + NEAR:
            raise ValueError(f"{piece.mark} is larger than the sheet.")
    orders = (lambda p: (-p.wide, -p.long), lambda p: (-p.long, -p.wide), lambda p: (-p.long * p.wide, -p.wide))
    plans = [_laid(sorted(pieces, key=order), long, wide, kerf) for order in orders]
    return min(plans, key=len)


def _laid(pieces: Sequence[SheetPiece], long: float, wide: float, kerf: float) -> tuple[Sheet, ...]:
    sheets: list[list[_Strip]] = []
    for piece in pieces:
        strips = sorted((strip for sheet in sheets for strip in sheet if strip.wide > piece.wide - NEAR),
                        key=lambda strip: strip.wide)
        if not any(_add(strip, piece, long, kerf) for strip in strips):
            _add(_new_strip(sheets, piece.wide, wide, kerf), piece, long, kerf)
    return tuple(Sheet(tuple(each for strip in sheet for each in strip.laid),
                       tuple((strip.y, strip.y + strip.wide) for strip in sheet)) for sheet in sheets)


def _new_strip(sheets: list[list[_Strip]], need: float, wide: float, kerf: float) -> _Strip:
    """A strip on the first sheet that has room for it, else on a new one."""
    for sheet in sheets:
        y = sheet[-1].y + sheet[-1].wide + kerf
        if y + need <= wide + NEAR:
            sheet.append(_Strip(y, need))
            return sheet[-1]
    sheets.append([_Strip(0.0, need)])
    return sheets[-1][0]


def _add(strip: _Strip, piece: SheetPiece, long: float, kerf: float) -> bool:
    """Lays a piece behind the strip's last one, whichever way up takes less of it; False where there is no room."""
    ways = []
    for turned in (False, True):
        shape = tuple((piece.long - x, piece.wide - y) for x, y in piece.outline) if turned else piece.outline
        shape = _moved(shape, 0.0, strip.y)
        x = max((_clear(shape, other.outline, kerf) for other in strip.laid[-BACK:]), default=0.0)
        ways.append((round(max(x, 0.0), 3), turned, shape))
    x, turned, shape = min(ways, key=lambda way: (way[0], way[1]))
    if x + piece.long > long + NEAR:
        return False
    strip.laid.append(Laid(piece.mark, _moved(shape, x, 0.0), turned))
    return True


def _clear(shape: Outline, other: Outline, kerf: float) -> float:
    """How far to move a shape along x for it to lie a saw cut behind another."""
    high = max(x for x, _ in other) + kerf - min(x for x, _ in shape)
    low = _middle(other) - _middle(shape)
    if apart(_moved(shape, low, 0.0), other) >= kerf:
        return high
    while high - low > NEAR / 4.0:
        middle = (low + high) / 2.0
        if apart(_moved(shape, middle, 0.0), other) >= kerf:
            high = middle
        else:
            low = middle
    return high


def _middle(shape: Outline) -> float:
    return sum(x for x, _ in shape) / len(shape)


def _moved(shape: Outline, x: float, y: float) -> Outline:
    return tuple((a + x, b + y) for a, b in shape)


def _side(a: Point, b: Point, p: Point) -> float:
    return (b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0])


def _edges(shape: Outline) -> list[tuple[Point, Point]]:
    return list(zip(shape, (*shape[1:], shape[0]), strict=True))


def _parts(edge: tuple[Point, Point], other: Outline) -> bool:
    """Whether an edge of an anticlockwise outline has all of another beyond it."""
    return all(_side(*edge, p) <= 0.0 for p in other)


def _to(p: Point, edge: tuple[Point, Point]) -> float:
    """The distance of a point from an edge."""
    (ax, ay), (bx, by) = edge
    dx, dy = bx - ax, by - ay
    share = max(0.0, min(1.0, ((p[0] - ax) * dx + (p[1] - ay) * dy) / (dx * dx + dy * dy)))
    return math.hypot(p[0] - ax - share * dx, p[1] - ay - share * dy)
