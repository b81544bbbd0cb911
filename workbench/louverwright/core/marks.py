# SPDX-License-Identifier: LGPL-2.1-or-later
"""Which pieces are cut alike, which are left and right, and the marks they carry.

Two pieces have one mark if one can be turned into the other with its grain along its length
(half turns of the blank; quarter turns too where its section is square).  Two classes that are mirror
images are left and right.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from functools import lru_cache

from .assembly import Assembly, Board, Part, Piece, board_shell, board_volume_and_centre
from .cutting import Member
from .geometry import IDENTITY, Placement, Vec, add, dot, scale, sub
from .kinds import BY_ID, KINDS
from .solid import END_A, END_B, FAR_EDGE, HIDDEN_FACE, MARKED_FACE, REFERENCE_EDGE
from .stock import Stock

#: Corners of two boards that differ by less than this (mm) are alike: far below any saw, above float noise, and so little that
#: one that stands for the other leaves neither a gap nor shared wood (1 mm³) in its place.
ALIKE = 1e-4


@dataclass(frozen=True)
class Placed:
    """A member with the board that makes it, where that stands, and its side's direction to the right."""

    member: Member
    placement: Placement
    board: Board
    right: Vec


def turns(size: Vec) -> Iterator[Placement]:
    """The turns of a blank into its own box, the grain kept along X; the first is no turn."""
    ways = [(1.0, (0.0, 1.0, 0.0)), (1.0, (0.0, -1.0, 0.0)), (-1.0, (0.0, 1.0, 0.0)), (-1.0, (0.0, -1.0, 0.0))]
    if abs(size[1] - size[2]) < ALIKE:
        ways += [(1.0, (0.0, 0.0, 1.0)), (1.0, (0.0, 0.0, -1.0)), (-1.0, (0.0, 0.0, 1.0)), (-1.0, (0.0, 0.0, -1.0))]
    centre = scale(size, 0.5)
    for way, y in ways:
        x = (way, 0.0, 0.0)
        turn = Placement(IDENTITY.origin, x, y, _cross_x(way, y))
        yield Placement(sub(centre, turn.direction(centre)), turn.x, turn.y, turn.z)


def _cross_x(way: float, y: Vec) -> Vec:
    return (0.0, -way * y[2], way * y[1])


@lru_cache(maxsize=1024)
def _features(board: Board) -> tuple[tuple[Vec, ...], tuple[tuple[Vec, Vec, float], ...]]:
    """Corners, and for each bore both ends of its axis and its diameter."""
    bores = tuple((b.start, add(b.start, scale(b.direction, b.length)), b.diameter) for b in board.bores)
    return board_shell(board).points, bores


def _near(a: Vec, b: Vec) -> bool:
    return max(abs(a[i] - b[i]) for i in range(3)) < ALIKE


def _same_points(a: list[Vec], b: list[Vec]) -> bool:
    left = list(b)
    for p in a:
        match = next((i for i, q in enumerate(left) if _near(p, q)), None)
        if match is None:
            return False
        del left[match]
    return not left


def turn_between(first: Board, other: Board, mirrored: bool = False) -> Placement | None:
    """The turn that takes ``first`` to ``other`` (board frames), or None.

    With ``mirrored`` it is ``first``'s mirror image (ends exchanged) that is turned.
    """
    if not mirrored and first == other:
        return IDENTITY
    if not _near(first.size, other.size) or len(first.cuts) != len(other.cuts):
        return None
    if abs(board_volume_and_centre(first)[0] - board_volume_and_centre(other)[0]) > 1.0:
        return None
    points, bores = _features(first)
    flip = (lambda p: (first.length - p[0], p[1], p[2])) if mirrored else (lambda p: p)
    targets, holes = _features(other)
    for turn in turns(first.size):
        if not _same_points([turn.point(flip(p)) for p in points], list(targets)):
            continue
        moved = [(turn.point(flip(a)), turn.point(flip(b)), d) for a, b, d in bores]
        if all(any(_hole(m, h) for h in holes) for m in moved):
            return turn
    return None


@lru_cache(maxsize=1024)
def mirrors_itself(board: Board) -> bool:
    """True for a board that its own mirror image can be turned into: it has no hand."""
    return turn_between(board, board, mirrored=True) is not None


def turns_of(board: Board) -> list[Placement]:
    """The turns of a blank that bring its board onto itself, no turn among them."""
    points, bores = _features(board)
    return [turn for turn in turns(board.size) if _same_points([turn.point(p) for p in points], list(points))
            and all(any(_hole((turn.point(a), turn.point(b), d), h) for h in bores) for a, b, d in bores)]


def _hole(a: tuple[Vec, Vec, float], b: tuple[Vec, Vec, float]) -> bool:
    ends = (_near(a[0], b[0]) and _near(a[1], b[1])) or (_near(a[0], b[1]) and _near(a[1], b[0]))
    return ends and abs(a[2] - b[2]) < ALIKE


def parts_of(placed: list[Placed], stock_of: dict[str, Stock]) -> tuple[Part, ...]:
    """Pieces gathered under marks, in the order of the kind table; ``stock_of`` gives each kind's stock."""
    parts: list[Part] = []
    for kind in KINDS:
        classes = _classes([p for p in placed if p.member.kind == kind.id])
        parts.extend(_marked(classes, stock_of.get(kind.id)))
    return tuple(parts)


_Class = list[tuple[Placed, Placement]]


def _classes(placed: list[Placed]) -> list[_Class]:
    """Pieces that are cut alike, each with the placement of the first one's board in its place."""
    classes: list[_Class] = []
    for each in placed:
        for known in classes:
            turn = turn_between(known[0][0].board, each.board)
            if turn is not None:
                known.append((each, each.placement.then(turn)))
                break
        else:
            classes.append([(each, each.placement)])
    return classes


def _marked(classes: list[_Class], stock: Stock | None) -> Iterator[Part]:
    """Classes with their letters (where a kind has several) and hands."""
    partner: dict[int, int] = {}
    for i, a in enumerate(classes):
        for j in range(i + 1, len(classes)):
            if i not in partner and j not in partner and turn_between(a[0][0].board, classes[j][0][0].board, True):
                partner[i], partner[j] = j, i
    families = [i for i in range(len(classes)) if partner.get(i, i) >= i]
    for number, first in enumerate(families):
        letter = letters(number) if len(families) > 1 else ""
        for index, hand in _hands(classes, first, partner.get(first)):
            yield _part(classes[index], letter, hand, stock)


def letters(number: int) -> str:
    """The letters for a number from 0: a … z, aa, ab …"""
    rest, last = divmod(number, 26)
    return (letters(rest - 1) if rest else "") + chr(ord("a") + last)


def _hands(classes: list[_Class], first: int, other: int | None) -> list[tuple[int, str]]:
    if other is None:
        return [(first, "")]
    left_first = _leaning(classes[first][0][0]) <= _leaning(classes[other][0][0])
    pair = (first, other) if left_first else (other, first)
    return [(pair[0], "left"), (pair[1], "right")]


def _leaning(placed: Placed) -> float:
    """Which half of its side a piece belongs to: its end, or where its weight lies along the side."""
    if placed.member.end:
        return float(placed.member.end)
    centre = placed.placement.point(board_volume_and_centre(placed.board)[1])
    return dot(centre, placed.right) * 1e-6


def _part(pieces: _Class, letter: str, hand: str, stock: Stock | None) -> Part:
    first = pieces[0][0].member
    kind = BY_ID[first.kind]
    if stock is None:
        raise ValueError(f"No stock is named for {kind.id}.")
    edges = kind.edges[::-1] if first.swapped else kind.edges
    ends = kind.ends[::-1] if first.reversed else kind.ends
    if first.turned:
        ends, edges = edges, (ends[1].replace("end", "edge"), ends[0].replace("end", "edge"))
    names = ((END_A, ends[0]), (END_B, ends[1]), (REFERENCE_EDGE, edges[0]), (FAR_EDGE, edges[1]),
             (MARKED_FACE, kind.faces[0]), (HIDDEN_FACE, kind.faces[1]))
    made = tuple(Piece(p.member.id, kind.id, p.member.side, p.member.end, p.member.index, place)
                 for p, place in pieces)
    return Part(f"{kind.mark}{letter}{hand[:1].upper()}", kind, hand, pieces[0][0].board, stock, names, made)


@lru_cache(maxsize=16)
def same_pieces(assembly: Assembly) -> dict[str, tuple[str, ...]]:
    """For each mark the marks of other kinds that are the same piece: same stock, blank, cuts and hand.

    Marks follow kinds, which stand for places; the saw knows only pieces.
    """
    found: dict[str, tuple[str, ...]] = {}
    parts = assembly.parts
    for part in parts:
        others = tuple(other.mark for other in parts if other is not part and other.stock == part.stock
                       and turn_between(part.board, other.board) is not None)
        if others:
            found[part.mark] = others
    return found
