# SPDX-License-Identifier: LGPL-2.1-or-later
"""Two states of a vent compared: what is kept, what changed, what can be cut from what."""

from __future__ import annotations

import random
from collections import Counter
from dataclasses import replace
from typing import Any

import pytest
from making import EXAMPLES, job_of, only, spec_of, vent
from pytest import approx

from louverwright.core.assembly import BORE, CROSSCUT, Assembly, Board, Cut, Part, board_shell
from louverwright.core.compare import (
    ADDED,
    CHANGED,
    HANDED_ON,
    KEEP,
    NEW,
    RECUT,
    REMOVED,
    SPARE,
    UNCHANGED,
    Comparison,
    can_be_cut_from,
    changed_parameters,
    compare,
)
from louverwright.core.fits import fit
from louverwright.core.geometry import Bore, Placement, Plane, Vec, dot, sub, unit
from louverwright.core.marks import turn_between, turns
from louverwright.core.measures import ANGLE, LENGTH, STOCK, changes_between, turned

SALTBOX: dict[str, Any] = {"pitch_left": 36.87, "pitch_right": 18.43}
#: Kinds that stand on a slope of the barn, or are trimmed by it.
ON_THE_SLOPE = {"base.leg.gable", "base.leg.eave", "base.sole.gable", "base.sole.eave", "base.cladding.gable",
                "base.cladding.eave", "base.corner.gable", "base.corner.eave"}


def kinds(found: Comparison, state: str) -> set[str]:
    """Kinds of the pieces in a state."""
    return {piece.id.split("/")[0] for piece in found.pieces if piece.state == state}


def check_sums(found: Comparison) -> None:
    """Every piece is told of once, and no old piece serves twice or is lost."""
    old, new = ({piece.id for piece in each.pieces} for each in (found.before, found.after))
    assert {p.id for p in found.pieces if p.state != REMOVED} == new and len(found.pieces) == len(old | new)
    assert {p.id for p in found.pieces if p.state == ADDED} == new - old
    assert {p.id for p in found.pieces if p.state == REMOVED} == old - new
    sources = [piece.source for piece in found.pieces if piece.source]
    assert len(sources) == len(set(sources)) and set(sources) <= old
    left = [piece_id for group in found.left_over for piece_id in group.ids]
    assert sorted(sources + left) == sorted(old)
    assert sum(found.count(wood) for wood in (KEEP, RECUT, NEW)) == len(new)
    for piece in found.pieces:
        assert bool(piece.source) == (piece.wood in (KEEP, RECUT))
        assert (piece.wood in (HANDED_ON, SPARE)) == (piece.state == REMOVED)


@pytest.mark.parametrize("name", EXAMPLES)
def test_the_same_vent_is_kept_whole(name: str) -> None:
    assembly = job_of(name).assembly
    found = compare(assembly, assembly)
    check_sums(found)
    assert found.same and {piece.wood for piece in found.pieces} == {KEEP}
    assert all(piece.source == piece.id and piece.old_mark == piece.new_mark for piece in found.pieces)
    assert (found.changed, found.added, found.removed, found.left_over, found.to_make) == ((), (), (), (), ())


def test_one_slat_more_changes_the_stiles_and_adds_slats() -> None:
    found = compare(vent(slat_count=5), vent(slat_count=6))
    check_sums(found)
    assert kinds(found, CHANGED) == {"louver.stile"}
    assert kinds(found, ADDED) == {"louver.slat"} and kinds(found, REMOVED) == set()
    assert found.count(KEEP) == len(found.before.pieces) - 8, "all but the eight stiles"
    assert found.count(NEW) == 8 + 4 and found.count(RECUT) == 0, "a dado cannot be filled"


def test_one_slat_less_leaves_slats_over() -> None:
    found = compare(vent(slat_count=6), vent(slat_count=5))
    check_sums(found)
    assert kinds(found, REMOVED) == {"louver.slat"} and kinds(found, ADDED) == set()
    assert [(group.part.kind.id, len(group.ids)) for group in found.removed] == [("louver.slat", 4)]
    assert {p.wood for p in found.pieces if p.state == REMOVED} == {SPARE}


def test_one_slope_changed_touches_only_what_stands_on_it() -> None:
    found = compare(vent(**SALTBOX), vent(**{**SALTBOX, "pitch_left": 35.0}))
    check_sums(found)
    assert kinds(found, CHANGED) == ON_THE_SLOPE
    assert {p.state for p in found.pieces if p.id.startswith(("louver.", "roof."))} == {UNCHANGED}
    for change in found.changed:
        assert all("/3" not in piece_id for piece_id in change.ids), "the side under the right slope"
    by_id = {piece.id: piece for piece in found.pieces}
    assert by_id["base.leg.eave/1.left"].state == CHANGED and by_id["base.leg.eave/3.left"].state == UNCHANGED
    assert by_id["base.leg.gable/0.right"].state == CHANGED and by_id["base.leg.gable/0.left"].state == UNCHANGED


def test_the_angle_that_changed_is_told_exactly() -> None:
    found = compare(vent(**SALTBOX), vent(**{**SALTBOX, "pitch_left": 35.0}))
    change = next(c for c in found.changed if "base.leg.gable/0.right" in c.ids)
    angles = {(c.what, c.cut): (c.old, c.new) for c in change.changes if c.unit == ANGLE}
    assert list(angles) == [("mitre", "foot to the roof")]
    (old, new), = angles.values()
    assert (abs(old), abs(new)) == (approx(36.87), approx(35.0))
    lengths = {(c.what, c.where): (c.old, c.new) for c in change.changes if c.unit == LENGTH and not c.cut}
    assert lengths["length", ""] == (approx(change.old.board.length), approx(change.new.board.length))


def test_slopes_exchanged_keep_every_piece_under_other_marks() -> None:
    found = compare(vent(**SALTBOX), vent(pitch_left=SALTBOX["pitch_right"], pitch_right=SALTBOX["pitch_left"]))
    check_sums(found)
    assert found.count(KEEP) == len(found.after.pieces) and not found.left_over and not found.same
    assert kinds(found, CHANGED) == ON_THE_SLOPE, "by their ids they changed"
    assert {(row.old.mark, row.new.mark) for row in found.kept} >= {("B1aL", "B1bL"), ("B1bL", "B1aL"), ("B2a", "B2b")}


def test_a_mark_alone_is_no_change() -> None:
    before = vent()
    parts = tuple(replace(part, mark=f"Z{part.mark}") for part in before.parts)
    found = compare(before, Assembly(parts, before.joints))
    check_sums(found)
    assert found.same and found.count(KEEP) == len(before.pieces)
    assert all(row.new.mark == f"Z{row.old.mark}" for row in found.kept)


def test_a_board_told_from_its_other_end_is_no_change() -> None:
    part = only(vent(), "roof.hip")
    for turn in turns(part.board.size):
        other = replace(part, board=turned(part.board, turn))
        assert turn_between(part.board, other.board) is not None
        assert changes_between(other, part)[1] == ()


def test_other_stock_is_a_change_though_the_shape_stays() -> None:
    before = vent()
    parts = tuple(replace(part, stock=replace(part.stock, material="larch")) if part.kind.id == "louver.slat" else part
                  for part in before.parts)
    found = compare(before, Assembly(parts, before.joints))
    check_sums(found)
    assert kinds(found, CHANGED) == {"louver.slat"} and found.count(RECUT) == 0
    assert [[c.kind for c in change.changes] for change in found.changed] == [[STOCK]]


def test_lengths_sold_and_density_do_not_matter() -> None:
    before = vent()
    parts = tuple(replace(part, stock=replace(part.stock, lengths=(1000.0,), density=444.0)) for part in before.parts)
    assert compare(before, Assembly(parts, before.joints)).same


def test_parameters_that_changed_are_named_in_the_table_s_order() -> None:
    assert changed_parameters(spec_of(), spec_of()) == ()
    assert changed_parameters(spec_of(), spec_of(project="Barn", pitch_right=30.0, pitch_left=30.0)) == (
        "project", "pitch_left", "pitch_right")


# ---- cut from an old piece: never wrong


def box_board(length: float, width: float = 100.0, thickness: float = 20.0) -> Board:
    """A blank without cuts."""
    return Board(length, width, thickness)


def test_a_shorter_blank_lies_in_a_longer_one_and_not_the_other_way() -> None:
    assert fit(box_board(500.0), box_board(499.0)) is not None
    assert fit(box_board(499.0), box_board(500.0)) is None
    assert fit(box_board(500.0), box_board(400.0, 100.1)) is None
    assert fit(box_board(100.0, 500.0), box_board(500.0, 100.0)) is None, "the grain stays along the length"
    assert fit(box_board(500.0), box_board(500.0)) is not None


def test_one_stock_does_not_serve_for_another() -> None:
    part = only(vent(), "louver.sill")
    other = replace(part, stock=replace(part.stock, name="another"))
    assert can_be_cut_from(part, part) and not can_be_cut_from(part, other)


def wanted(board: Board, p: Vec, slack: float) -> bool:
    """Whether a point is wood of the finished board, by its cuts alone; ``slack`` > 0 counts a little more as wood."""
    if any(not -slack <= p[i] <= board.size[i] + slack for i in range(3)):
        return False
    for cut in board.cuts:
        if cut.planes and all(dot(plane.normal, p) - plane.offset > slack for plane in cut.planes):
            return False
        if cut.bore:
            off = sub(p, cut.bore.start)
            along = dot(off, cut.bore.direction)
            aside = (dot(off, off) - along * along) ** 0.5 if dot(off, off) > along * along else 0.0
            if -slack < along < cut.bore.length + slack and aside < cut.bore.diameter / 2.0 - slack:
                return False
    return True


def samples(board: Board, chance: random.Random) -> list[Vec]:
    """Points of the finished board: corners pulled in by a hair, and others all over it."""
    points = board_shell(board).points
    middle = [sum(p[i] for p in points) / len(points) for i in range(3)]
    near = [tuple(p[i] + (middle[i] - p[i]) * 1e-5 for i in range(3)) for p in points]
    anywhere = [tuple(chance.random() * size for size in board.size) for _ in range(250)]
    around = [tuple(p[i] + chance.uniform(-6.0, 6.0) for i in range(3)) for p in points for _ in range(6)]
    return [p for p in (*near, *anywhere, *around) if wanted(board, p, -1e-6)]  # type: ignore[arg-type,misc]


def right_handed(place: Placement) -> bool:
    """Whether it turns and moves and does not mirror, the grain kept along the length."""
    a, b, c = place.x, place.y, place.z
    size = a[0] * (b[1] * c[2] - b[2] * c[1]) - a[1] * (b[0] * c[2] - b[2] * c[0]) + a[2] * (b[0] * c[1] - b[1] * c[0])
    return size == approx(1.0) and abs(a[0]) == approx(1.0)


def check_cut_from(old: Part, new: Part, chance: random.Random) -> bool:
    """Whether it is said that the new part can be cut from the old one; if so it must be true."""
    place = fit(old.board, new.board)
    if place is None:
        return False
    assert right_handed(place)
    for p in samples(new.board, chance):
        assert wanted(old.board, place.point(p), 5e-3), (old.mark, new.mark, p)
    return True


def check_kept(old: Part, new: Part, chance: random.Random) -> None:
    """A kept piece is wood where the new one is, and nowhere else."""
    turn = turn_between(old.board, new.board)
    assert turn is not None and right_handed(turn) and old.stock == new.stock
    for p in samples(old.board, chance):
        assert wanted(new.board, turn.point(p), 5e-3)
    for p in samples(new.board, chance):
        assert wanted(old.board, turn.local_point(p), 5e-3)


PAIRS: list[tuple[dict[str, Any], dict[str, Any]]] = [
    ({}, {"pitch_left": 30.0}), ({"pitch_left": 30.0}, {}), (SALTBOX, {"pitch_left": 30.0, "pitch_right": 10.0}),
    ({"width": 1000.0}, {"width": 900.0}), ({"width": 1100.0, "slat_count": 8}, {"width": 700.0}),
    ({"roof_pitch": 40.0}, {"roof_pitch": 33.0}), ({"roof_pitch": 33.0}, {"roof_pitch": 40.0}),
    ({"overhang": 130.0}, {"overhang": 110.0}), ({"sides": 8, "king_post_stock": "6x6", "width": 1100.0},
     {"sides": 8, "king_post_stock": "6x6", "width": 1000.0}),
    ({"mast_diameter": 32.0}, {}), ({}, {"mast_diameter": 32.0}),
    ({"mast_diameter": 25.0, "width": 1000.0}, {"mast_diameter": 32.0, "width": 950.0}),
    ({"sides": 6, "width": 1100.0}, {"sides": 6, "width": 1000.0, "facing": "corner"}),
    ({"seat": "one slope", "pitch_left": 5.0}, {"seat": "one slope", "pitch_left": 2.0}),
    ({"slat_angle": 45.0}, {"slat_angle": 40.0}), ({"corner": "mitred"}, {"corner": "butt"}),
]


@pytest.mark.parametrize(("first", "then"), PAIRS)
def test_what_is_said_to_be_cut_from_an_old_piece_lies_within_it(first: dict[str, Any], then: dict[str, Any]) -> None:
    found = compare(vent(**first), vent(**then))
    check_sums(found)
    chance = random.Random(7)
    assert all(check_cut_from(row.old, row.new, chance) for row in found.recut)
    for row in found.kept:
        check_kept(row.old, row.new, chance)


@pytest.mark.parametrize("name", EXAMPLES)
def test_what_one_example_gives_to_another_lies_within_it(name: str) -> None:
    chance = random.Random(11)
    other = EXAMPLES[EXAMPLES.index(name) - 1]
    found = compare(job_of(other).assembly, job_of(name).assembly)
    check_sums(found)
    assert all(check_cut_from(row.old, row.new, chance) for row in found.recut)


def test_of_any_two_parts_it_is_never_said_wrongly() -> None:
    """Parts of all kinds of two vents against each other, whatever their stock."""
    chance = random.Random(3)
    old, new = vent(width=1150.0, mast_diameter=25.0), vent(**SALTBOX, mast_diameter=32.0, slat_count=5)
    said = Counter(check_cut_from(a, b, chance) for a in old.parts for b in new.parts)
    assert said[True] > 50 and said[False] > 500


def test_a_smaller_vent_can_be_cut_from_a_larger_one_in_part() -> None:
    found = compare(vent(width=1000.0), vent(width=900.0))
    assert found.count(RECUT) > 20
    assert {row.new.kind.id for row in found.recut} >= {"louver.slat", "louver.sill"}


def bored(diameter: float, across: float) -> Board:
    """A block with a hole through its thickness, so far across from the reference edge."""
    hole = Bore((150.0, across, 0.0), (0.0, 0.0, 1.0), 40.0, diameter)
    return Board(300.0, 100.0, 40.0, (Cut(BORE, "hole", bore=hole),))


@pytest.mark.parametrize(("across", "serves"), [(50.0, True), (55.0, True), (58.0, False), (61.0, False)])
def test_an_old_hole_vanishes_in_a_new_one_only_where_all_of_it_does(across: float, serves: bool) -> None:
    """20 mm in 32 mm: 6 mm beside its middle at the most."""
    assert (fit(bored(20.0, across), bored(32.0, 50.0)) is not None) == serves


def test_a_square_piece_is_found_between_two_mitres() -> None:
    """Between a mitre that takes 100 mm at end A and one that takes 50 at end B, 840 of 1000 have 10 to spare."""
    ends = (Plane.through((0.0, 0.0, 0.0), unit((-1.0, 1.0, 0.0))), Plane.through((1_000.0, 0.0, 0.0), unit((1.0, 0.5, 0.0))))
    old = Board(1_000.0, 100.0, 20.0, tuple(Cut(CROSSCUT, f"end {number}", (plane,)) for number, plane in enumerate(ends)))
    assert fit(old, Board(840.0, 100.0, 20.0)) is not None
    assert fit(old, Board(855.0, 100.0, 20.0)) is None
