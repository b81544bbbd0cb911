"""Slanting ends point to heel: they are true opposites, no wood is in two pieces, a saw cut lies between, and faces that show
stay up."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest
from making import EXAMPLES, job_of

from louverwright.core.assembly import CROSSCUT, Board, Cut, Part, Piece, board_shell
from louverwright.core.buying import Placed, Shop, sticks_to_buy
from louverwright.core.geometry import Placement, Plane, Vec, dot
from louverwright.core.kinds import BY_ID
from louverwright.core.nesting import AS_IT_IS, BOTH, FACE_DOWN, TURNED, TURNS, arranged, end_plane, lying, slants
from louverwright.core.stock import Stock

KERF = 3.2
STOCK = Stock("38x89", "dimension", 38.0, 89.0, (2400.0,), "pine", 500.0)
#: Some kinds by what may show: rails and legs are within the frame, a fascia has one outside.
INSIDE, OUTSIDE = "louver.rail.top", "roof.fascia"


def part_of(mark: str, kind: str, first: Vec | None, second: Vec | None, length: float = 600.0, width: float = 89.0) -> Part:
    """A part of ``length`` whose ends A and B are cut by planes with these normals, tips at the blank's ends."""
    cuts = []
    for way, normal in ((-1.0, first), (1.0, second)):
        if normal:
            size = math.sqrt(dot(normal, normal))
            n = (normal[0] / size, normal[1] / size, normal[2] / size)
            reach = max(n[1] * y + n[2] * z for y in (0.0, width) for z in (0.0, 38.0))
            least = min(n[1] * y + n[2] * z for y in (0.0, width) for z in (0.0, 38.0))
            tip = (length if way > 0 else 0.0) * n[0] + least
            assert reach - least < length
            cuts.append(Cut(CROSSCUT, "end", (Plane(n, tip),)))
    piece = Piece(mark, kind, 0, 0, 0, Placement((0.0, 0.0, 0.0), (1.0, 0.0, 0.0), (0.0, 1.0, 0.0), (0.0, 0.0, 1.0)))
    return Part(mark, BY_ID[kind], "", Board(length, width, 38.0, tuple(cuts)), STOCK, (), (piece,))


def corners(piece: Placed) -> list[Vec]:
    """The solid's corners where the piece lies in its stick."""
    board, signs = piece.part.board, TURNS[piece.turn]
    out = []
    for p in board_shell(board).points:
        x, y, z = (c if s > 0.0 else size - c for c, s, size in zip(p, signs, board.size, strict=True))
        out.append((piece.x + x, y, z))
    return out


def right_plane(piece: Placed) -> Plane | None:
    """The plane of the right end where the piece lies."""
    signs, board = TURNS[piece.turn], piece.part.board
    plane = end_plane(board, 1 if signs[0] > 0.0 else -1)
    if plane is None:
        return None
    n = (plane.normal[0] * signs[0], plane.normal[1] * signs[1], plane.normal[2] * signs[2])
    on = next(p for p in board_shell(board).points if abs(plane.height(p)) < 1e-6)
    there = tuple(c if s > 0.0 else size - c for c, s, size in zip(on, signs, board.size, strict=True))
    return Plane(n, dot(n, (piece.x + there[0], there[1], there[2])))


def clear(left: Placed, right: Placed, kerf: float) -> None:
    """Asserts that one straight saw cut of the kerf parts two neighbours, along both their ends where it is shared."""
    plane = right_plane(left) if right.shared else Plane((1.0, 0.0, 0.0), max(p[0] for p in corners(left)))
    assert plane is not None
    assert max(plane.height(p) for p in corners(left)) < 1e-6
    assert min(plane.height(p) for p in corners(right)) > kerf - 0.02
    if right.shared:
        assert sum(abs(plane.height(p) - kerf) < 0.02 for p in corners(right)) >= 3, "the cut makes the right piece's end too"


#: Kind, normals of both ends, then how many of three pieces share a cut and whether one lies face down.
CASES = {
    "mitred both ways": (OUTSIDE, (-2.0, 1.0, 0.0), (2.0, 1.0, 0.0), 2, False),
    "parallel mitres": (OUTSIDE, (-2.0, -1.0, 0.0), (2.0, 1.0, 0.0), 2, False),
    "parallel bevels": (OUTSIDE, (-2.0, 0.0, -1.0), (2.0, 0.0, 1.0), 2, False),
    "one mitre": (OUTSIDE, (-2.0, 1.0, 0.0), None, 1, False),
    "one mitre at end B": (OUTSIDE, None, (2.0, -1.0, 0.0), 1, False),
    "bevels that face out, either face outside": (INSIDE, (-2.0, 0.0, 1.0), (2.0, 0.0, 1.0), 2, True),
    "bevels that face out, one face outside": (OUTSIDE, (-2.0, 0.0, 1.0), (2.0, 0.0, 1.0), 0, False),
    "compound, either face outside": (INSIDE, (-2.0, 0.5, 1.0), (2.0, 0.5, 1.0), 2, True),
    "compound, one face outside": (OUTSIDE, (-2.0, 0.5, 1.0), (2.0, 0.5, 1.0), 0, False),
    "one bevel, either face outside": (INSIDE, None, (2.0, 0.0, 1.0), 1, True),
    "one bevel, one face outside": (OUTSIDE, None, (2.0, 0.0, 1.0), 0, False),
    "square": (INSIDE, None, None, 0, False),
    "two mitres that are no opposites": (OUTSIDE, (-2.0, 1.0, 0.0), (3.0, 1.0, 0.0), 1, False),
}


@pytest.mark.parametrize("case", CASES)
def test_ends_lie_point_to_heel_only_where_they_are_opposites(case: str) -> None:
    kind, first, second, shared, down = CASES[case]
    part = part_of("A", kind, first, second)
    (buy,) = sticks_to_buy([(part, 3)], Shop(KERF))
    (stick,) = buy.sticks
    for left, right in zip(stick.pieces, stick.pieces[1:], strict=False):
        clear(left, right, KERF)
    assert sum(piece.shared for piece in stick.pieces) == shared
    assert any(TURNS[piece.turn][2] < 0.0 for piece in stick.pieces) == down


def test_a_mitre_across_89_at_45_degrees_saves_its_reach_less_the_longer_cut() -> None:
    way = slants(part_of("A", OUTSIDE, (-1.0, 1.0, 0.0), (1.0, 1.0, 0.0)))
    assert way is not None and not way.pairs
    assert way.gain(KERF) == pytest.approx(89.0 + KERF - KERF * math.sqrt(2.0))


def test_a_piece_narrower_than_its_stick_is_not_nested_for_its_mitre() -> None:
    assert slants(part_of("A", OUTSIDE, (-1.0, 1.0, 0.0), (1.0, 1.0, 0.0), width=80.0)) is None
    assert slants(part_of("A", INSIDE, (-1.0, 0.0, 1.0), (1.0, 0.0, 1.0), width=80.0)) is not None


def test_left_lies_against_right_only_where_either_face_may_be_outside() -> None:
    for kind, alike in ((INSIDE, True), (OUTSIDE, False)):
        left, right = (part_of(mark, kind, (-2.0, y, 0.0), None) for mark, y in (("L", -1.0), ("R", 1.0)))
        ways = slants(left), slants(right)
        assert ways[0] and ways[1] and (ways[0].name == ways[1].name) == alike
        if alike:
            assert set(arranged([left, right], pairs=True)) & {FACE_DOWN, BOTH}
        else:
            with pytest.raises(ValueError, match="no opposites"):
                arranged([left, right], pairs=True)


def test_trapezia_are_turned_end_for_end_one_after_the_other() -> None:
    part = part_of("A", OUTSIDE, (-2.0, 1.0, 0.0), (2.0, 1.0, 0.0))
    assert arranged([part] * 4, pairs=False) == (AS_IT_IS, TURNED, AS_IT_IS, TURNED)


def test_both_faces_of_a_blank_as_it_lies() -> None:
    """45° over 38 thick: the upper face of the piece as it is ends 38 short of the lower one."""
    board = part_of("A", INSIDE, None, (1.0, 0.0, 1.0)).board
    assert max(x for x, _ in lying(board, AS_IT_IS, upper=True)) == pytest.approx(562.0)
    assert max(x for x, _ in lying(board, AS_IT_IS, upper=False)) == pytest.approx(600.0)
    assert max(x for x, _ in lying(board, FACE_DOWN, upper=True)) == pytest.approx(600.0)
    assert min(x for x, _ in lying(board, BOTH, upper=False)) == pytest.approx(38.0)


@pytest.mark.parametrize("name", [name for name in ("hay-barn-28ft", "octagon-dairy", "cart-shed-gable") if name in EXAMPLES])
def test_in_the_examples_a_saw_cut_parts_all_neighbours_and_outside_faces_lie_up(name: str) -> None:
    job = job_of(name)
    shop = Shop(KERF, 10.0)
    shared = 0
    for buy in sticks_to_buy([(part, job.count(part)) for part in job.assembly.parts], shop):
        for stick in buy.sticks:
            for left, right in zip(stick.pieces, stick.pieces[1:], strict=False):
                clear(left, right, KERF)
                shared += right.shared
            for piece in stick.pieces:
                assert piece.part.kind.either or TURNS[piece.turn][2] > 0.0
                assert all(stick.pieces[0].x - 1e-6 <= x <= stick.length - (0.0 if stick.own else 10.0) + 1e-6
                           for x, _, _ in corners(piece))
    assert shared > 5


def test_replaced_boards_keep_their_ends() -> None:
    """A tip that another cut has taken is no tip: such an end is not nested."""
    part = part_of("A", OUTSIDE, (-2.0, 1.0, 0.0), (2.0, 1.0, 0.0))
    short = replace(part, board=replace(part.board, length=620.0))
    assert end_plane(short.board, 1) is None and end_plane(short.board, -1) is not None
