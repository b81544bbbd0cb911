# SPDX-License-Identifier: LGPL-2.1-or-later
"""A part that came out wrong: the vent that follows has it as it is, packings are as thick as what opens."""

from __future__ import annotations

import math
from functools import lru_cache
from typing import Any

import pytest
from making import EXAMPLES, job_of, only, spec_of, vent
from pytest import approx

from louverwright.core.assembly import Assembly, Part
from louverwright.core.checks import check, checked_spec
from louverwright.core.compare import UNCHANGED, compare
from louverwright.core.contacts import contacts
from louverwright.core.joints import LEAST_CONTACT, facing_area, missing, stands, undeclared
from louverwright.core.layout import layout
from louverwright.core.mend import MendError, Mending, Wrong, mend
from louverwright.core.mend_cure import LEAST_FACE, LEAST_PACKING, MOST_PACKING, Cure, cure
from louverwright.core.mend_ways import GIVEN, Way, with_value
from louverwright.core.parameters import BY_NAME, MEASURED
from louverwright.core.solid import END_A, END_B, HIDDEN_FACE, MARKED_FACE
from louverwright.core.spec import Spec
from louverwright.places import stock_list

SALTBOX: dict[str, Any] = {"pitch_left": 36.87, "pitch_right": 18.43}


def marked(assembly: Assembly, mark: str) -> Part:
    """The part of a mark."""
    return next(part for part in assembly.parts if part.mark == mark)


@lru_cache(maxsize=64)
def off(spec: Spec, mark: str, length: float = 0.0, width: float = 0.0, thickness: float = 0.0, **more: Any) -> Mending:
    """What is said of a part whose sizes are off by so much (mm)."""
    size = marked(layout(spec), mark).board.size
    real = tuple(own + by if by else None for own, by in zip(size, (length, width, thickness), strict=True))
    return mend(spec, Wrong(mark, real=real, **more))    # type: ignore[arg-type]


def bench(spec: Spec, mark: str, by: float) -> Cure:
    """What is said of all pieces of a mark that are off in length by so much (mm), at the bench."""
    part = marked(layout(spec), mark)
    return cure(layout(spec), part, 0, by, part.count)


def named(found: Mending) -> dict[str, Way]:
    """The ways by their parameters."""
    return {way.parameter.name: way for way in found.ways.ways}


# ---- the vent follows


CASES: list[tuple[dict[str, Any], str, dict[str, float]]] = [
    ({}, "L9", {"length": -3.0}), ({}, "L9", {"length": 4.0}), ({}, "L9", {"width": -2.0}), ({}, "B1L", {"length": -5.0}),
    ({}, "L7L", {"length": -3.0}), ({}, "L1", {"length": 4.0}), ({}, "R3", {"length": -6.0}), ({}, "R8", {"length": 5.0}),
    ({}, "L12", {"width": 2.0}), ({}, "L16", {"length": 3.0}), (SALTBOX, "B1aL", {"length": -4.0}),
    (SALTBOX, "B7L", {"length": 6.0}), ({"sides": 8, "king_post_stock": "6x6", "width": 1200.0}, "L9", {"length": -2.0}),
    ({"mullion": "always", "width": 1100.0}, "L9", {"length": -1.5}), ({}, "L14", {"thickness": -1.0}),
]


@pytest.mark.parametrize(("values", "mark", "by"), CASES, ids=lambda value: str(value)[:24])
def test_the_proposed_value_makes_the_part_as_it_is(values: dict[str, Any], mark: str, by: dict[str, float]) -> None:
    """Set by hand in the values, the parameter makes a vent with a part of the real size that builds and fits together."""
    spec = spec_of(**values)
    found = off(spec, mark, **by)
    assert found.ways.ways
    for way in found.ways.ways:
        after = checked_spec({**values, way.parameter.name: way.new}, stock_list("us"))
        assert after == way.after and check(after) == ()
        part = layout(after).part_of(found.part.pieces[0].id)
        assert sorted(part.board.size) == approx(sorted(found.real), abs=2e-3), way.parameter.name
        assert way.parameter.name not in GIVEN and abs(way.new - way.old) > 1e-3
    assert missing(layout(found.ways.ways[0].after), found.ways.ways[0].after) == []
    assert undeclared(layout(found.ways.ways[0].after)) == []


@pytest.mark.parametrize(("values", "mark", "by"), CASES[:8], ids=lambda value: str(value)[:24])
def test_the_parts_named_are_those_that_compare_finds(values: dict[str, Any], mark: str, by: dict[str, float]) -> None:
    spec = spec_of(**values)
    found = off(spec, mark, **by)
    for way in found.ways.ways:
        compared = compare(layout(spec), layout(way.after))
        own = {piece.id for piece in found.part.pieces}
        changed = {p.old_mark or p.new_mark for p in compared.pieces if p.state != UNCHANGED and p.id not in own}
        assert set(way.others) - {mark} == changed
        assert way.pieces >= sum(1 for p in compared.pieces if p.state != UNCHANGED and p.id not in own)
        assert way.found.pieces == compared.pieces


def test_ways_are_ranked_by_how_few_other_parts_change() -> None:
    found = off(spec_of(), "L9", length=-3.0)
    assert [bool(way.moved) for way in found.ways.ways] == sorted(bool(way.moved) for way in found.ways.ways)
    counts = [len(way.others) for way in found.ways.ways if not way.moved]
    assert counts == sorted(counts) and len(counts) > 2
    best = found.ways.ways[0]
    assert (best.parameter.name, best.old, best.new) == ("dado_depth", 8.0, approx(6.5))
    assert set(best.others) == {"L7L", "L7R", "L12", "L13", "L14"}, "stiles, and what laps by the dados' depth"
    assert named(found)["width"].new == approx(897.0)


def test_a_way_that_moves_the_parts_own_cuts_comes_after_all_others() -> None:
    """However few other parts it changes: what is cut into the piece already cannot be moved.  A trim board too short."""
    found = off(spec_of(), "L12", length=-3.0)
    last = found.ways.ways[-1]
    assert [bool(way.moved) for way in found.ways.ways] == [False] * (len(found.ways.ways) - 1) + [True]
    assert len(last.others) < min(len(way.others) for way in found.ways.ways if way is not last)
    assert found.off == approx((-3.0, 0.0, 0.0)), "real less drawn"


def test_ways_that_change_what_is_cut_are_left_out_and_counted() -> None:
    free, held = (off(spec_of(), "L9", length=-3.0, cut=cut) for cut in ((), ("L10",)))
    assert held.ways.ways and all("L10" not in way.others for way in held.ways.ways)
    assert held.ways.barred == len([way for way in free.ways.ways if "L10" in way.others]) > 0
    none = off(spec_of(), "L9", length=-3.0, cut=("L10", "L7L"))
    assert none.ways.ways == () and none.ways.barred == len(free.ways.ways)


def test_pieces_of_the_mark_that_are_right_change_with_the_vent() -> None:
    some, every = (off(spec_of(), "L9", length=-3.0, count=count).ways.ways[0] for count in (2, 20))
    assert some.parameter == every.parameter and some.pieces == every.pieces + 18
    assert set(some.others) == {*every.others, "L9"}
    held = off(spec_of(), "L9", length=-3.0, count=2, cut=("L9",))
    assert held.ways.ways == () and held.ways.barred > 0, "where these are cut, no vent can follow"


def test_a_leg_takes_what_was_left_to_scribe() -> None:
    """A leg 3 mm too short is a leg with 3 mm less to scribe, and so are the others."""
    way = named(off(spec_of(scribe_allowance=10.0), "B2", length=-3.0))["scribe_allowance"]
    assert way.new < 10.0 and {mark[:2] for mark in way.others} <= {"B1"}
    assert way is off(spec_of(scribe_allowance=10.0), "B2", length=-3.0).ways.ways[0] or way.pieces == min(
        each.pieces for each in named(off(spec_of(scribe_allowance=10.0), "B2", length=-3.0)).values())


def test_an_automatic_value_is_solved_from_what_it_came_out_as() -> None:
    way = named(off(spec_of(), "L1", length=-4.0))["louver_height"]
    assert spec_of().louver_height == 0.0 and (way.old, way.new) == (approx(540.0), approx(536.0))


def test_the_barn_is_not_changed_to_fit_a_part() -> None:
    for mark, by in (("B1L", -5.0), ("B4", -3.0), ("B5", 2.0)):
        assert not set(named(off(spec_of(), mark, length=by))) & set(GIVEN)
    drops = {"drop_left_front": 300.0, "drop_left_back": 310.0, "drop_right_front": 305.0, "drop_right_back": 300.0}
    spec = spec_of(**drops)
    found = named(off(spec, "B1a", length=-3.0))
    assert found and not set(found) & set(drops), "what was read off the roof is not solved for"
    assert set(GIVEN) <= set(BY_NAME)


def test_own_cuts_that_move_are_named() -> None:
    """A shorter louver stage has its slats nearer together, so the stile's dados are elsewhere."""
    ways = named(off(spec_of(), "L7L", length=-3.0))
    assert any("dado" in name for name in ways["louver_height"].moved)
    assert named(off(spec_of(), "L1", length=-4.0))["louver_height"].moved == (), "laps stay at their ends"
    assert "plumb outer edge" in named(off(spec_of(), "L9", width=-2.0))["slat_angle"].moved


def test_stock_is_measured_otherwise_only_for_the_parts_own_size() -> None:
    assert "trim_thickness" in named(off(spec_of(), "L14", thickness=-1.0))
    for mark, by in (("L9", {"length": -3.0}), ("L7L", {"length": -3.0}), ("L9", {"width": -2.0})):
        rows = {name for name in named(off(spec_of(), mark, **by)) if BY_NAME[name].group == MEASURED}
        assert rows <= {"slat_width"}, mark


def test_a_way_that_cannot_be_built_is_told_with_its_reason() -> None:
    found = off(spec_of(), "L9", length=-3.0)
    (post,) = [each for each in found.ways.refused if each.parameter.name == "post_face"]
    assert post.new == approx(90.4) and "wider than the frame stock" in post.findings[0].sentence
    assert check(with_value(spec_of(), post.parameter, post.new)) == post.findings


def test_a_hand_is_followed_by_its_mirror_image() -> None:
    for way in off(spec_of(), "L7L", length=-3.0).ways.ways:
        assert "L7R" in way.others


def test_the_drawn_vent_is_not_changed_by_asking() -> None:
    spec = spec_of()
    before = layout(spec)
    off(spec, "L9", length=-3.0)
    assert layout(spec) == before and spec == spec_of()


# ---- at the bench: too small


def test_a_short_slat_may_stay_in_its_dados() -> None:
    """3 mm short in dados 8 mm deep: 5 mm left at one end, or 6.5 mm in each."""
    told = bench(spec_of(), "L9", -3.0)
    assert told.stays and told.shared == approx(6.5)
    for side in told.sides:
        (stile,) = [each for each in side.openings if each.hold]
        assert (stile.hold, stile.left, stile.opens) == (approx(8.0), approx(5.0), approx(3.0))
        assert stile.other is not None and stile.other.mark in ("L7L", "L7R")
    assert set(told.best.covers) <= {"L12", "L13"} and told.best.covers


@pytest.mark.parametrize(("by", "stays"), [(-3.9, True), (-4.1, False), (-9.0, False)])
def test_a_dado_keeps_half_of_its_hold_at_least(by: float, stays: bool) -> None:
    told = bench(spec_of(), "L9", by)
    assert told.stays is stays
    assert told.best.openings[0].left == approx(max(0.0, 8.0 + by))


def test_a_deeper_dado_allows_more() -> None:
    told = bench(spec_of(dado_depth=12.0), "L9", -5.0)
    assert told.stays and told.shared == approx(9.5)


def test_a_short_frieze_is_packed_as_thick_as_it_is_short() -> None:
    spec = spec_of()
    frieze = only(layout(spec), "louver.frieze")
    told = bench(spec, "L14", -2.0)
    assert not told.stays and len(told.best.packings) == 1
    (packing,) = told.best.packings
    assert packing.opens == approx(2.0) and packing.other is not None and packing.other.kind.id.startswith("louver.trim")
    assert (packing.long, packing.wide) == (approx(frieze.board.width), approx(frieze.board.thickness))


def test_a_mitred_end_opens_less_than_it_is_short() -> None:
    """Two boards mitred at 45°: the gap square to the joint is the loss times cos 45°."""
    told = bench(spec_of(ring_slope=10.0), "L11", -4.0)
    normal = next(c for c in contacts(vent(ring_slope=10.0), only(vent(ring_slope=10.0), "louver.ring").pieces[0])
                  if c.side == END_A).normal
    for side in told.sides:
        (packing,) = side.packings
        assert packing.opens == approx(4.0 * abs(normal[0])) and 2.7 < packing.opens < 3.0


def test_a_short_leg_is_packed_on_the_roof_square_to_it() -> None:
    told = bench(spec_of(pitch_left=33.69, pitch_right=33.69), "B1L", -5.0)
    assert told.best.name == END_A and not told.stays
    (packing,) = told.best.packings
    assert packing.other is None and packing.opens == approx(5.0 * math.cos(math.radians(33.69)))
    assert packing.long == approx(88.9 / math.cos(math.radians(33.69))) and packing.wide == approx(38.1)


def test_a_clearance_that_grows_needs_nothing() -> None:
    """A stile stands on its sill, and has 1.5 mm over it anyway, behind the frieze."""
    told = bench(spec_of(), "L7L", -3.0)
    assert told.stays and told.best.name == END_B
    (rail,) = told.best.openings
    assert (rail.gap, rail.opens, rail.kind) == (1.5, approx(3.0), "clearance") and "L14" in told.best.covers


def test_a_lap_loses_hold_and_opens_nothing() -> None:
    told = bench(spec_of(), "B3a", -4.0)
    for side in told.sides:
        laps = [each for each in side.openings if each.hold]
        assert [(each.hold, each.left, each.opens, each.stays) for each in laps if each.hold > 80.0] == [
            (approx(88.9), approx(84.9), 0.0, True)]


def test_more_than_a_packing_is_a_new_piece() -> None:
    for by, fails in ((-MOST_PACKING + 0.1, False), (-MOST_PACKING - 0.1, True)):
        told = bench(spec_of(), "L14", by)
        assert told.best.fails is fails and bool(told.best.packings) is not fails
    told = bench(spec_of(), "L14", -LEAST_PACKING + 0.1)
    assert told.stays


def test_the_wrong_pieces_go_where_they_do_least_harm() -> None:
    """Of the eave-side trims, as of all alike, any will do; the count says how many places are named."""
    found = off(spec_of(), "L9", length=-3.0, count=2)
    assert found.count == 2 and len(found.cures[0].places) == 2
    assert set(found.cures[0].places) <= {piece.id for piece in found.part.pieces}


@pytest.mark.parametrize("name", EXAMPLES[:3])
def test_packings_fill_what_the_shorter_piece_really_leaves_open(name: str) -> None:
    """Each face that is said to open, moved back by the loss, is that far from its neighbour and no nearer."""
    job = job_of(name)
    seen = 0
    for part in job.assembly.parts:
        found = cure(job.assembly, part, 0, -2.0, 1)
        piece = next(piece for piece in part.pieces if piece.id == found.places[0])
        for side in found.sides:
            for opening in side.packings:
                if opening.other is None:
                    continue
                faces = [c for c in contacts(job.assembly, piece) if c.side == side.name
                         and job.assembly.part_of(c.other).mark == opening.other.mark]
                assert any(opening.opens == approx(2.0 * abs(c.normal[0])) and (opening.long, opening.wide) == approx(c.size)
                           for c in faces), (part.mark, opening)
                assert opening.wide >= LEAST_FACE
                seen += 1
    assert seen > 5


@pytest.mark.parametrize("name", EXAMPLES[:3])
def test_contacts_are_those_of_the_joints(name: str) -> None:
    """The area that contacts of a pair share is what ``joints`` finds between its faces."""
    assembly = job_of(name).assembly
    for part in assembly.parts:
        piece = part.pieces[0]
        for contact in contacts(assembly, piece):
            other = assembly.part_of(contact.other)
            there = next(each for each in other.pieces if each.id == contact.other)
            assert facing_area(stands(piece, part).patches, stands(there, other).patches, contact.joint.gap) > LEAST_CONTACT
            assert min(contact.size) > 0.0 and all(-0.01 <= v <= size + 0.01 for p in contact.points
                                                   for v, size in zip(p, part.board.size, strict=True))


def test_a_thin_slat_is_loose_in_its_dados() -> None:
    """Lying on the dado's lower wall it has as much more room above it; raised to the upper one, below."""
    spec = spec_of()
    slat = marked(layout(spec), "L9")
    found = cure(layout(spec), slat, 2, -1.05, slat.count)
    for side in found.sides:
        assert [(each.opens, each.long, each.wide) for each in side.packings] == [
            (approx(1.05), approx(76.0 / math.cos(math.radians(45.0))), approx(8.0))] * 2


# ---- at the bench: too large


def test_an_end_with_no_joint_is_cut_again() -> None:
    told = bench(spec_of(), "R3", 4.0)
    assert told.best.name == END_B and [cut.name for cut in told.best.cuts] == ["plumb cut at the king post"]
    assert not told.stays and told.best.joints == ()
    leg = bench(spec_of(), "B1L", 4.0)
    assert leg.best.name == END_A and leg.best.cuts[0].name == "foot to the roof", "the head has the lap"


def test_a_lap_that_is_cut_short_is_named() -> None:
    told = bench(spec_of(), "R1", 3.0)
    assert told.best.joints == ("half lap at the corner",)


def test_the_face_without_joints_is_planed() -> None:
    """A stile's dados are measured from its marked face, so wood comes off the other."""
    stile = marked(vent(), "L7L")
    found = cure(vent(), stile, 2, 1.0, stile.count)
    assert found.best.name == HIDDEN_FACE and found.best.joints == ()
    assert found.sides[1].name == MARKED_FACE and found.sides[1].joints


# ---- lost


def test_a_lost_piece_leaves_the_joints_of_its_place() -> None:
    spec = spec_of()
    found = mend(spec, Wrong("L9", count=1, lost=True))
    first = found.part.pieces[0].id
    assert found.lost and found.ways.ways == () and found.cures == ()
    assert set(found.missing) == {joint for joint in layout(spec).joints if first in (joint.first, joint.second)}
    assert {joint.kind for joint in found.missing} >= {"glued", "bearing"}


def test_all_pieces_are_meant_where_no_number_is_given() -> None:
    assert mend(spec_of(), Wrong("L9", lost=True)).count == only(vent(), "louver.slat").count


# ---- what cannot be


@pytest.mark.parametrize(("wrong", "key", "words"), [
    (Wrong("L99", lost=True), "part", "“L99” is not a mark of this vent. Choose one of: B1L"),
    (Wrong("L9", lost=True, cut=("Q1",)), "cut", "“Q1” is not a mark of this vent"),
    (Wrong("L9", lost=True, cut=("L9",)), "cut", "“L9” came out wrong in all its pieces"),
    (Wrong("L9"), "length", "No size is given"),
    (Wrong("L9", real=(600.0, None, None), lost=True), "length", "A size is given for a piece that is lost: length"),
    (Wrong("L9", count=99, real=(600.0, None, None)), "count", "Count is 99: one vent has 20 of L9, so it must be 1 to 20"),
    (Wrong("L9", count=-1, lost=True), "count", "Count is -1"),
    (Wrong("L9", real=(655.0, None, None)), "length", "the piece is as it should be to 0.05 mm"),
    (Wrong("L9", real=(0.0, None, None)), "length", "Length is 0 mm: it must be more than 0 mm"),
    (Wrong("L9", real=(-5.0, None, None)), "length", "Length is -5 mm"),
    (Wrong("L9", real=(math.nan, None, None)), "length", "Length is nan mm: it must be more than 0 mm"),
    (Wrong("L9", real=(5000.0, None, None)), "length", "Length is 5000 mm: L9 is cut from “1x6”, which is 4876.8 mm at most"),
    (Wrong("L9", real=(None, 150.0, None)), "width", "139.7 mm at most. Measure the piece again, or give the slat width as"),
    (Wrong("L9", real=(None, None, 25.0)), "thickness", "19.1 mm at most. Measure the piece again, or give the slat thick"),
    (Wrong("L15", real=(None, 700.0, None)), "width", "609.6 mm at most. Measure the piece again."),
])
def test_what_cannot_be_is_refused_with_a_sentence(wrong: Wrong, key: str, words: str) -> None:
    with pytest.raises(MendError) as caught:
        mend(spec_of(), wrong)
    assert key in [each for each, _ in caught.value.findings]
    assert words in str(caught.value) and all(sentence.endswith(".") for _, sentence in caught.value.findings)


def test_all_that_is_wrong_is_said_at_once() -> None:
    with pytest.raises(MendError) as caught:
        mend(spec_of(), Wrong("L9", 99, (5000.0, 500.0, None), cut=("Q1",)))
    assert [key for key, _ in caught.value.findings] == ["cut", "count", "length", "width"]
