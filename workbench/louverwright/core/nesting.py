# SPDX-License-Identifier: LGPL-2.1-or-later
"""Which slanting ends of sticks can lie point to heel, so that one cut makes two ends, and how the pieces are turned for it.

Two ends meet where their planes are true opposites once one piece is turned in the stick: not at all, end for end (its
marked face stays up), or face down, which only parts of which either face may be outside allow.  A piece keeps the whole
width that the stick has, for a mitre cut before the rip would end elsewhere.  Lengths in mm, board frame.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache
from itertools import pairwise

from .assembly import CROSSCUT, Board, Part
from .geometry import Plane, Vec, scale

#: Ends that reach less far than this (mm) are as good as square; sizes agree to ``ALIKE`` (mm), directions to ``TRUE``.
LEAST, ALIKE, TRUE = 1.0, 0.05, 1e-5

#: How a piece lies in its stick against the board frame: as it is, turned end for end, face down about its length, face down
#: and end for end.  For each the signs of x, y and z.
AS_IT_IS, TURNED, FACE_DOWN, BOTH = "", "turned", "face down", "face down, turned"
TURNS: dict[str, Vec] = {AS_IT_IS: (1.0, 1.0, 1.0), TURNED: (-1.0, -1.0, 1.0), FACE_DOWN: (1.0, -1.0, -1.0),
                         BOTH: (-1.0, 1.0, -1.0)}


@dataclass(frozen=True)
class Slants:
    """What parts have in common that lie point to heel: a ``name``, how far their ends reach into each other (``reach``, mm)
    and how long the saw cut is along the stick per mm of kerf; ``pairs`` where only one end of each slants.
    """

    name: str
    reach: float
    steep: float
    pairs: bool

    def gain(self, kerf: float) -> float:
        """What a piece saves (mm) behind another, against two square ends with a saw cut between."""
        return self.reach + kerf - kerf * self.steep


def end_plane(board: Board, way: int) -> Plane | None:
    """The plane that cuts end A (``way`` −1) or B (+1) right through the blank, tip at the blank's end; None for any other."""
    for cut in board.cuts:
        if cut.kind == CROSSCUT and len(cut.planes) == 1 and cut.planes[0].normal[0] * way > 0.0:
            along = end_line(board, cut.planes[0])
            tip, reach = max(x * way for x in along), max(along) - min(along)
            if abs(tip - (board.length if way > 0 else 0.0)) < ALIKE and reach < board.length / 2.0:
                return cut.planes[0]
    return None


def end_line(board: Board, plane: Plane) -> tuple[float, ...]:
    """Where a plane crosses the blank's four arrises along its length."""
    x, y, z = plane.normal
    return tuple((plane.offset - y * at_y - z * at_z) / x for at_y in (0.0, board.width) for at_z in (0.0, board.thickness))


def _reach(board: Board, plane: Plane) -> float:
    along = end_line(board, plane)
    return max(along) - min(along)


@lru_cache(maxsize=1024)
def slants(part: Part) -> Slants | None:
    """How a part's blanks can lie point to heel with others of the same ``Slants.name``; None where they cannot."""
    first, second = (end_plane(part.board, way) for way in (-1, 1))
    if first and second and (chain := _chain(part, first.normal, second.normal)):
        return _made(part, chain, second, pairs=False)
    found = [_made(part, pair, plane, pairs=True) for plane in (first, second)
             if plane and (pair := _pair(part, plane.normal))]
    return max((each for each in found if each), key=lambda each: each.reach, default=None)


def _chain(part: Part, first: Vec, second: Vec) -> str:
    """How pieces follow each other end B to end A: as they are, turned or face down; '' where they do not."""
    b = second
    if _same(first, scale(b, -1.0)):
        return f"parallel {_signed(_either_hand(part, b))}"
    if _same(first, (-b[0], b[1], b[2])):
        if abs(b[2]) < TRUE:
            return f"head to tail {abs(b[1]):.5f}"
        if part.kind.either:
            return f"face up and down {_signed(b if (b[1], b[2]) > (0.0, 0.0) else (b[0], -b[1], -b[2]))}"
    return ""


def _pair(part: Part, end: Vec) -> str:
    """How two pieces meet with this end of each; '' where they do not."""
    if abs(end[2]) < TRUE:
        return f"pair {_signed(_either_hand(part, end if end[0] < 0.0 else (-end[0], -end[1], end[2])))}"
    return f"pair face up and down {abs(end[2]):.5f}" if part.kind.either and abs(end[1]) < TRUE else ""


def _made(part: Part, name: str, plane: Plane, pairs: bool) -> Slants | None:
    board, stock = part.board, part.stock
    x, y, z = plane.normal
    narrower = abs(board.width - stock.width) > ALIKE, abs(board.thickness - stock.thickness) > ALIKE
    if (abs(y) > TRUE and narrower[0]) or (abs(z) > TRUE and narrower[1]):
        return None
    reach = _reach(board, plane)
    return Slants(name, reach, 1.0 / abs(x), pairs) if reach > LEAST else None


def _either_hand(part: Part, n: Vec) -> Vec:
    """The direction, and that of the other hand as well for parts that may lie face down: then left lies against right."""
    return (n[0], abs(n[1]), n[2]) if part.kind.either and abs(n[2]) < TRUE else n


def _signed(n: Vec) -> str:
    return f"{n[1] + 0.0:.5f} {n[2] + 0.0:.5f}".replace("-0.00000", "0.00000")


def _same(a: Vec, b: Vec) -> bool:
    return all(abs(p - q) < TRUE for p, q in zip(a, b, strict=True))


def turned(normal: Vec, turn: str) -> Vec:
    """A direction of the board frame as it lies in the stick."""
    sx, sy, sz = TURNS[turn]
    return (sx * normal[0], sy * normal[1], sz * normal[2])


def turns_of(part: Part) -> tuple[str, ...]:
    """The ways a part may lie in its stick: its outside face up, unless either face may be outside."""
    return tuple(TURNS) if part.kind.either else (AS_IT_IS, TURNED)


def arranged(parts: Sequence[Part], pairs: bool) -> tuple[str, ...]:
    """A turn for each of the parts in a row, so that each lies against the one before, or each second where in ``pairs``.

    Raises ValueError where they cannot: their ``slants`` are not alike.
    """
    if pairs:
        return tuple(turn for at in range(0, len(parts), 2) for turn in _row(parts[at:at + 2]))
    return _row(parts)


def _row(parts: Sequence[Part]) -> tuple[str, ...]:
    for first in turns_of(parts[0]):
        found = [first]
        for before, part in pairwise(parts):
            found += [turn for turn in turns_of(part) if _meet(before, found[-1], part, turn)][:1]
        if len(found) == len(parts):
            return tuple(found)
    raise ValueError(f"The ends of {', '.join(part.mark for part in parts)} are no opposites.")


def _meet(left: Part, left_turn: str, right: Part, right_turn: str) -> bool:
    """Whether one cut makes the right end of one piece and the left end of the next."""
    ends = _end(left, left_turn, 1.0), _end(right, right_turn, -1.0)
    return ends[0] is not None and ends[1] is not None and _same(ends[0], scale(ends[1], -1.0))


def _end(part: Part, turn: str, way: float) -> Vec | None:
    """The direction of the plane at the left (−1) or right (+1) end of a piece as it lies; None where it is not the slant that
    the part is nested by."""
    plane, told = end_plane(part.board, int(way * TURNS[turn][0])), slants(part)
    return turned(plane.normal, turn) if plane and told and abs(_reach(part.board, plane) - told.reach) < ALIKE else None


def lying(board: Board, turn: str, upper: bool) -> tuple[tuple[float, float], ...]:
    """The blank's upper or lower side in the stick once its ends are cut: four corners (x, y), from (0, 0)."""
    sx, sy, sz = TURNS[turn]
    z = board.thickness if (sz > 0.0) == upper else 0.0
    corners = []
    for way, ys in ((-1, (board.width, 0.0)), (1, (0.0, board.width))):
        plane = end_plane(board, way)
        for y in ys:
            x = (plane.offset - plane.normal[1] * y - plane.normal[2] * z) / plane.normal[0] if plane else (
                board.length if way > 0 else 0.0)
            corners.append((x if sx > 0.0 else board.length - x, y if sy > 0.0 else board.width - y))
    return tuple(corners)
