# SPDX-License-Identifier: LGPL-2.1-or-later
"""Which sheets to buy and how to lay the pieces on them, in strips along the sheet's face grain.

A piece keeps its grain along the sheet.  It is laid as it is or turned half round in the sheet's plane, and face down where
either face may be outside, so that triangles and trapezia lie head to tail.  Between two pieces runs a saw cut right through
the strip: a slab as thick as the kerf along the side of one of them, with all that is cut later beyond it.  Where it is the
side of both, one cut makes them: bevelled sides are opposites only face up beside face down, square ones also turned in the
plane.  x runs along the sheet's grain, y across, z up; millimetres.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from functools import cached_property

from .geometry import Vec, dot
from .hull import Point, hull
from .nesting import AS_IT_IS, TURNED, TURNS

Outline = tuple[Point, ...]
#: A plane that a piece lies behind: outward normal, offset, and whether it is one of the piece's own sides.
Side = tuple[Vec, float, bool]
#: Pieces this much (mm) larger than the sheet still fit it; sides are opposites to ``TRUE``.
NEAR, TRUE = 0.01, 1e-5


@dataclass(frozen=True)
class SheetPiece:
    """A piece to lay: its mark, the corners of its solid (from 0, 0, 0), its bevelled sides, and whether either face may be
    outside."""

    mark: str
    points: tuple[Vec, ...]
    bevels: tuple[Side, ...] = ()
    either: bool = False

    @cached_property
    def long(self) -> float:
        """Along the grain (mm)."""
        return max(p[0] for p in self.points)

    @cached_property
    def wide(self) -> float:
        """Across the grain (mm)."""
        return max(p[1] for p in self.points)

    @cached_property
    def thick(self) -> float:
        """Its thickness (mm)."""
        return max(p[2] for p in self.points)

    @cached_property
    def ways(self) -> tuple[Laid, ...]:
        """The piece at (0, 0) in every turn that it may have."""
        turns = TURNS if self.either else (AS_IT_IS, TURNED)
        return tuple(self._lying(turn) for turn in turns)

    def _lying(self, turn: str) -> Laid:
        signs, size = TURNS[turn], (self.long, self.wide, self.thick)

        def there(p: Vec) -> Vec:
            x, y, z = (c if s > 0.0 else end - c for c, s, end in zip(p, signs, size, strict=True))
            return (x, y, z)

        def side(of: Side) -> Side:
            (x, y, z), offset, own = of
            gone = sum(n * end for n, s, end in zip(of[0], signs, size, strict=True) if s < 0.0)
            return (x * signs[0], y * signs[1], z * signs[2]), offset - gone, own

        points = tuple(there(p) for p in self.points)
        return Laid(self.mark, turn, points, (*map(side, self.bevels), *_upright(points)))


@dataclass(frozen=True)
class Laid:
    """A piece on its sheet: how it is turned, its corners, the planes of its sides, whether the side towards the piece before
    it in its strip is made by the cut that makes that one's, and where its strip begins (y, mm)."""

    mark: str
    turn: str
    points: tuple[Vec, ...]
    sides: tuple[Side, ...]
    shared: bool = False
    strip: float = 0.0

    @property
    def upper(self) -> Outline:
        """The outline of the face that lies up."""
        return self._face(max(p[2] for p in self.points))

    @property
    def lower(self) -> Outline:
        """The outline of the face that lies down."""
        return self._face(min(p[2] for p in self.points))

    @property
    def end(self) -> float:
        """How far along the sheet it reaches (mm)."""
        return max(p[0] for p in self.points)

    def _face(self, z: float) -> Outline:
        return hull([(p[0], p[1]) for p in self.points if abs(p[2] - z) < NEAR])

    def moved(self, x: float, y: float, shared: bool) -> Laid:
        """The same piece further along and across."""
        points = tuple((p[0] + x, p[1] + y, p[2]) for p in self.points)
        sides = tuple((n, offset + n[0] * x + n[1] * y, own) for n, offset, own in self.sides)
        return Laid(self.mark, self.turn, points, sides, shared, self.strip + y)


@dataclass(frozen=True)
class Sheet:
    """What is cut from one sheet, and the strips (from y to y, mm) that it is ripped into first."""

    laid: tuple[Laid, ...]
    strips: tuple[tuple[float, float], ...]


@dataclass
class _Strip:
    """A strip while it is filled; every later piece lies beyond the ``cuts``, which run through the whole strip."""

    y: float
    wide: float
    laid: list[Laid] = field(default_factory=list)
    cuts: list[tuple[Vec, float]] = field(default_factory=list)


def _upright(points: Sequence[Vec]) -> tuple[Side, ...]:
    """The upright planes round a solid's shadow; those that hold an edge of both faces are its own sides."""
    outline, sides = hull([(p[0], p[1]) for p in points]), []
    top = max(p[2] for p in points)
    for (ax, ay), (bx, by) in zip(outline, (*outline[1:], outline[0]), strict=True):
        long = ((bx - ax) ** 2 + (by - ay) ** 2) ** 0.5
        normal = ((by - ay) / long, (ax - bx) / long, 0.0)
        offset = dot(normal, (ax, ay, 0.0))
        levels = [p[2] for p in points if abs(dot(normal, p) - offset) < NEAR]
        sides.append((normal, offset, min(levels) < NEAR and max(levels) > top - NEAR))
    return tuple(sides)


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
    for number, way in enumerate(piece.ways):
        shape = way.moved(0.0, strip.y, False)
        cut = min(_cuts(shape, strip.laid[-1], kerf), key=lambda cut: cut.need) if strip.laid else None
        x = max(0.0, cut.need if cut else 0.0, *(_beyond(normal, least, shape) for normal, least in strip.cuts))
        ways.append((round(x, 3), number, shape, cut))
    x, _, shape, cut = min(ways, key=lambda way: way[:2])
    if x + piece.long > long + NEAR:
        return False
    strip.laid.append(shape.moved(x, 0.0, cut is not None and cut.shared and x < cut.need + NEAR))
    if cut:
        strip.cuts.append((cut.normal, cut.least + (cut.normal[0] * x if cut.moves else 0.0)))
    return True


@dataclass(frozen=True)
class _Cut:
    """A saw cut between a strip's last piece and the next: how far that must be moved along x for it, the cut's direction (to
    the right) and how far along that all later pieces begin, whether it goes along with the next piece, and whether it makes
    a side of both."""

    need: float
    normal: Vec
    least: float
    moves: bool
    shared: bool


def _cuts(shape: Laid, last: Laid, kerf: float) -> Iterator[_Cut]:
    """The saw cuts along a side of the one or the other that part them."""
    for normal, offset, own in last.sides:
        if normal[0] > TRUE:
            least = offset + kerf
            yield _Cut(_beyond(normal, least, shape), normal, least, False, own and _has_opposite(normal, shape))
    for side, offset, own in shape.sides:
        normal = (-side[0], -side[1], -side[2])
        if normal[0] > TRUE:
            need = (max(dot(normal, p) for p in last.points) + kerf + offset) / normal[0]
            yield _Cut(need, normal, -offset, True, own and _has_opposite(side, last))


def _beyond(normal: Vec, least: float, shape: Laid) -> float:
    """How far along x (mm) to move a piece for all of it to lie beyond a plane."""
    return (least - min(dot(normal, p) for p in shape.points)) / normal[0]


def _has_opposite(normal: Vec, shape: Laid) -> bool:
    return any(own and all(abs(a + b) < TRUE for a, b in zip(normal, n, strict=True)) for n, _, own in shape.sides)
