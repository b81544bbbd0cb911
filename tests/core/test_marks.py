# SPDX-License-Identifier: LGPL-2.1-or-later
"""Marks: pieces that turn into one another have one, mirror images are left and right, all else is told apart."""

from __future__ import annotations

import re
from collections import Counter
from itertools import combinations
from typing import Any

import pytest
from making import EXAMPLES, job_of, spec_of, vent

from louverwright.core.assembly import (
    BORE,
    CROSSCUT,
    HALF_LAP,
    Assembly,
    Board,
    Cut,
    Part,
    board_shell,
    board_volume_and_centre,
)
from louverwright.core.cutting import board_of
from louverwright.core.dimensions import sizes
from louverwright.core.geometry import Bore, Plane, Vec, cross, dot, length, sub
from louverwright.core.kinds import BY_ID, KINDS
from louverwright.core.layout import layout, members
from louverwright.core.marks import Placed, parts_of, turn_between, turns
from louverwright.places import stock_list

FLAT_STICK, SQUARE_STICK = (600.0, 89.0, 38.0), (600.0, 89.0, 89.0)
VENTS: dict[str, dict[str, Any]] = {
    "usual": {},
    "mitred": {"corner": "mitred"},
    "saltbox": {"pitch_left": 36.87, "pitch_right": 18.43, "width": 1_000.0},
    "beside the ridge": {"ridge_offset": 120.0},
    "mast and mullion": {"mast_diameter": 25.0, "mullion": "always", "width": 1_000.0},
    "boards": {"cladding": "boards", "cladding_stock": "1x6", "pitch_left": 36.87, "pitch_right": 18.43},
    "commons": {"rafters_per_side": 3, "king_post_stock": "6x6"},
    "twisted roof": {"drop_left_front": 300.0, "drop_left_back": 310.0, "drop_right_front": 325.0, "drop_right_back": 280.0},
}


def cut(*planes: Plane, kind: str = CROSSCUT) -> Cut:
    """A cut without a name of its own."""
    return Cut(kind, "cut", planes)


def mitred(size: Vec, y: float, z: float, *more: Cut) -> Board:
    """A stick whose end B leans: its normal has the given parts across the width and the thickness."""
    return Board(*size, (cut(Plane.through((size[0] - 60.0, size[1] / 2.0, size[2] / 2.0), (1.0, y, z))), *more))


def place(part: Part, number: int) -> list[Vec]:
    """Corners of a piece as its part's board stands in its place."""
    return [part.pieces[number].placement.point(p) for p in board_shell(part.board).points]


# ---- turns


def test_a_stick_has_four_turns_and_a_square_one_eight() -> None:
    for size, count in ((FLAT_STICK, 4), (SQUARE_STICK, 8)):
        found = list(turns(size))
        assert len(found) == count == len({(turn.x, turn.y) for turn in found})
        assert found[0].point((1.0, 2.0, 3.0)) == (1.0, 2.0, 3.0), "the first is no turn"


@pytest.mark.parametrize("size", [FLAT_STICK, SQUARE_STICK])
def test_a_turn_is_a_rotation_of_the_blank_into_itself_with_its_grain_along(size: Vec) -> None:
    box = {(x * size[0], y * size[1], z * size[2]) for x in (0, 1) for y in (0, 1) for z in (0, 1)}
    for turn in turns(size):
        assert cross(turn.x, turn.y) == pytest.approx(turn.z), "no mirror image"
        assert abs(turn.x[0]) == 1.0, "the grain stays along the length"
        assert {tuple(round(c, 6) for c in turn.point(p)) for p in box} == box


def test_a_leaning_end_is_found_again_turned_about_each_axis() -> None:
    up, down = mitred(FLAT_STICK, 0.5, 0.0), mitred(FLAT_STICK, -0.5, 0.0)
    assert turn_between(up, up) is not None
    turn = turn_between(up, down)
    assert turn is not None and turn.x == (1.0, 0.0, 0.0), "rolled about its length"
    ends = Board(*FLAT_STICK, (cut(Plane.through((60.0, 44.5, 19.0), (-1.0, 0.5, 0.0))),))
    turned = turn_between(up, ends)
    assert turned is not None and turned.x == (-1.0, 0.0, 0.0), "end for end"


def test_a_compound_end_has_a_left_and_a_right_which_no_turn_makes_one() -> None:
    left, right = mitred(FLAT_STICK, 0.5, 0.3), mitred(FLAT_STICK, 0.5, -0.3)
    assert turn_between(left, right) is None
    assert turn_between(left, right, mirrored=True) is not None
    assert turn_between(left, left, mirrored=True) is None, "it is not its own mirror image"
    plain = mitred(FLAT_STICK, 0.5, 0.0)
    assert turn_between(plain, plain, mirrored=True) is not None, "a plain mitre is"


def test_a_quarter_turn_fits_a_square_section_only() -> None:
    for size, fits in ((SQUARE_STICK, True), ((600.0, 89.0, 88.0), False)):
        assert (turn_between(mitred(size, 0.5, 0.0), mitred(size, 0.0, 0.5)) is not None) == fits


def test_size_and_every_corner_count() -> None:
    board = mitred(FLAT_STICK, 0.5, 0.0)
    assert turn_between(board, mitred((600.0, 89.0, 38.1), 0.5, 0.0)) is None
    assert turn_between(board, mitred(FLAT_STICK, 0.501, 0.0)) is None
    lap = cut(Plane((-1.0, 0.0, 0.0), -89.0), Plane((0.0, 0.0, 1.0), 19.0), kind=HALF_LAP)
    shifted = cut(Plane((-1.0, 0.0, 0.0), -90.0), Plane((0.0, 0.0, 1.0), 19.0), kind=HALF_LAP)
    assert turn_between(mitred(FLAT_STICK, 0.5, 0.0, lap), mitred(FLAT_STICK, 0.5, 0.0, lap)) is not None
    assert turn_between(mitred(FLAT_STICK, 0.5, 0.0, lap), mitred(FLAT_STICK, 0.5, 0.0, shifted)) is None


def test_bores_count() -> None:
    def bored(x: float, way: float = 1.0, diameter: float = 20.0) -> Board:
        start = (x, 44.5, 0.0 if way > 0 else 38.0)
        return Board(*FLAT_STICK, (Cut(BORE, "bore", bore=Bore(start, (0.0, 0.0, way), 38.0, diameter)),))

    assert turn_between(bored(200.0), bored(400.0)) is not None, "end for end"
    assert turn_between(bored(200.0), bored(200.0, -1.0)) is not None, "bored from the other face"
    assert turn_between(bored(200.0), bored(250.0)) is None
    assert turn_between(bored(200.0), bored(200.0, diameter=21.0)) is None


# ---- the marks of a vent


@pytest.fixture(params=VENTS)
def assembly(request: pytest.FixtureRequest) -> Assembly:
    """One vent of each sort."""
    return vent(**VENTS[request.param])


def test_marks_are_unique_and_say_stage_number_letter_and_hand(assembly: Assembly) -> None:
    marks = [part.mark for part in assembly.parts]
    assert len(set(marks)) == len(marks)
    for part in assembly.parts:
        assert re.fullmatch(rf"{part.kind.mark}[a-z]?{part.hand[:1].upper()}", part.mark), part.mark
        assert part.mark[0] == {"base": "B", "louver": "L", "roof": "R"}[part.kind.stage]
        assert part.name == (f"{part.kind.name}, {part.hand}" if part.hand else part.kind.name)


def test_every_stick_that_is_laid_out_is_a_piece_of_one_part(assembly: Assembly,
                                                             request: pytest.FixtureRequest) -> None:
    spec = spec_of(**VENTS[request.node.callspec.params["assembly"]])
    laid_out = Counter((member.id, member.kind) for member in members(spec, sizes(spec)))
    assert Counter((piece.id, piece.kind) for piece in assembly.pieces) == laid_out
    assert set(laid_out.values()) == {1}
    assert all(part.count == len(part.pieces) > 0 for part in assembly.parts)
    assert sum(part.count for part in assembly.parts) == len(assembly.pieces)
    assert all(assembly.part_of(piece.id) is part for part in assembly.parts for piece in part.pieces)


def test_no_two_parts_of_a_kind_can_be_turned_into_one_another(assembly: Assembly) -> None:
    for kind in KINDS:
        for a, b in combinations(assembly.of_kind(kind.id), 2):
            assert turn_between(a.board, b.board) is None, (a.mark, b.mark)


def test_hands_are_pairs_of_mirror_images_and_all_such_pairs_have_hands(assembly: Assembly) -> None:
    for kind in KINDS:
        parts = assembly.of_kind(kind.id)
        pairs = [(a, b) for a, b in combinations(parts, 2) if turn_between(a.board, b.board, mirrored=True) is not None]
        assert all({a.hand, b.hand} == {"left", "right"} and a.mark[:-1] == b.mark[:-1] for a, b in pairs)
        handed = {part.mark for pair in pairs for part in pair}
        assert handed == {part.mark for part in parts if part.hand}
        assert len(handed) == 2 * len(pairs)


def test_each_piece_stands_where_its_own_stick_was_laid_out(assembly: Assembly, request: pytest.FixtureRequest) -> None:
    spec = spec_of(**VENTS[request.node.callspec.params["assembly"]])
    own = {member.id: board_of(member) for member in members(spec, sizes(spec))}
    for part in assembly.parts:
        for number, piece in enumerate(part.pieces):
            frame, board = own[piece.id]
            wanted = [frame.point(p) for p in board_shell(board).points]
            stands = place(part, number)
            assert len(stands) == len(wanted)
            assert all(min(length(sub(p, q)) for q in wanted) < 2e-3 for p in stands), piece.id


def test_left_and_right_are_as_seen_from_outside() -> None:
    for kind in ("louver.stile", "base.leg.gable", "louver.trim.gable"):
        for part in vent().of_kind(kind):
            ends = {piece.end for piece in part.pieces}
            assert ends == ({-1} if part.hand == "left" else {1} if part.hand == "right" else {-1, 1}), part.mark
    stiles = {part.hand: part for part in vent().of_kind("louver.stile")}
    assert set(stiles) == {"left", "right"}
    for hand, part in stiles.items():
        piece = next(piece for piece in part.pieces if piece.side == 0)    # faces +X, its right is +Y seen from outside
        middle = piece.placement.point((part.board.length / 2.0, 0.0, 0.0))
        assert (dot(middle, (0.0, 1.0, 0.0)) > 0.0) == (hand == "right")


HANDED = {"base.leg.gable", "base.corner.gable", "louver.stile"}
PLAIN = {"base.leg.eave", "base.rail.top", "louver.slat", "louver.sill", "louver.head", "louver.ring", "louver.frieze",
         "roof.plate", "roof.kingpost", "roof.hip", "roof.soffit", "roof.fascia", "roof.sheathing"}


def test_on_an_even_roof_stiles_and_gable_legs_have_hands_and_self_mirrored_parts_have_none() -> None:
    hands = {kind: {part.hand for part in vent().of_kind(kind)} for kind in HANDED | PLAIN}
    assert {kind for kind, has in hands.items() if has == {"left", "right"}} == HANDED
    assert {kind for kind, has in hands.items() if has == {""}} == PLAIN
    assert len(vent().of_kind("louver.slat")) == 1 and len(vent().of_kind("louver.ring")) == 1


def test_on_a_saltbox_the_legs_of_each_slope_are_told_apart_with_their_hands() -> None:
    even, uneven = vent(width=1_000.0), vent(**VENTS["saltbox"])
    assert [part.mark for part in even.of_kind("base.leg.gable")] == ["B1L", "B1R"]
    legs = uneven.of_kind("base.leg.gable")
    assert [(part.mark, part.count) for part in legs] == [("B1aL", 1), ("B1aR", 1), ("B1bL", 1), ("B1bR", 1)]
    eave = uneven.of_kind("base.leg.eave")
    assert [(part.mark, part.count) for part in eave] == [("B2a", 2), ("B2b", 2)]
    assert [part.hand for part in uneven.of_kind("base.cladding.gable")] == ["left", "right"]
    assert [part.mark for part in uneven.of_kind("louver.stile")] == ["L7L", "L7R"], "no roof up there"


def test_on_a_gable_side_astride_the_ridge_the_cladding_is_its_own_mirror_image() -> None:
    (cladding,) = vent().of_kind("base.cladding.gable")
    assert (cladding.mark, cladding.hand, cladding.count) == ("B7", "", 2)


@pytest.mark.parametrize("name", EXAMPLES)
def test_the_shipped_examples_have_unique_marks(name: str) -> None:
    marks = [part.mark for part in job_of(name).assembly.parts]
    assert len(set(marks)) == len(marks) and all(mark.isalnum() and mark.isascii() for mark in marks)


def test_every_kind_has_its_own_mark_and_names_its_six_sides() -> None:
    assert len({kind.mark for kind in KINDS}) == len(KINDS) == len(BY_ID)
    for part in vent(**VENTS["mast and mullion"]).parts:
        names = [part.called(side) for side, _ in part.names]
        assert len(names) == 6 and all(names)


def test_a_kind_without_stock_is_a_fault_and_no_part() -> None:
    spec = spec_of()
    member = members(spec, sizes(spec))[0]
    with pytest.raises(ValueError, match=f"No stock is named for {member.kind}"):
        parts_of([Placed(member, *board_of(member), (0.0, 1.0, 0.0))], {})


def test_more_than_26_sorts_of_board_still_have_marks_of_letters() -> None:
    parts = vent(stock_list("eu"), width=1_450.0, cladding="boards", cladding_stock="18x45", pitch_left=35.0,
                 pitch_right=20.0, screen=False).of_kind("base.cladding.gable")
    assert len(parts) > 52
    assert [part.mark for part in parts if not re.fullmatch(r"B7[a-z]+[LR]", part.mark)] == []


@pytest.mark.parametrize("name", ["usual", "saltbox", "commons"])
def test_a_piece_stands_on_the_half_of_its_side_that_it_is_named_after(name: str) -> None:
    """Left and right as seen from outside: soles and jacks as well as legs, whatever their mark."""
    spec = spec_of(**VENTS[name])
    at = sizes(spec)
    seen = set()
    for part in layout(spec).parts:
        middle = board_volume_and_centre(part.board)[1]
        for piece in part.pieces:
            if piece.end:
                along = dot(piece.placement.point(middle), at.plan.v(piece.side))
                assert along * piece.end > 0.0, piece.id
                seen.add(part.kind.id)
    assert {"base.sole.gable", "louver.stile"} <= seen and ("roof.jack" in seen) == (name != "usual")
