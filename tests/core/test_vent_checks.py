# SPDX-License-Identifier: LGPL-2.1-or-later
"""Dry fit, rain, movement and errors: the measures find what is made wrong, and say what published figures say."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest
from making import EXAMPLES, job_of, only

from louverwright.core.assembly import CLEARANCE, Assembly, Board, Cut, Part
from louverwright.core.dry_fit import joint_fits, overlaps
from louverwright.core.error_budget import BEVEL, LENGTH, MITRE, opening, openings
from louverwright.core.geometry import Plane, add
from louverwright.core.movement import SPECIES, movement, movements, species_of
from louverwright.core.rain import SHUT, end_grain_up, reach_beyond, sheds, sight_lines, steepest_shut

CHOSEN = tuple(name for name in ("hay-barn-28ft", "octagon-dairy", "cart-shed-gable") if name in EXAMPLES)


def moved(assembly: Assembly, part: Part, number: int, way: tuple[float, float, float]) -> Assembly:
    """The vent with one piece of a part pushed aside."""
    piece = part.pieces[number]
    place = piece.placement._replace(origin=add(piece.placement.origin, way))
    pieces = (*part.pieces[:number], replace(piece, placement=place), *part.pieces[number + 1:])
    return Assembly(tuple(replace(p, pieces=pieces) if p is part else p for p in assembly.parts), assembly.joints)


@pytest.mark.parametrize("name", CHOSEN)
def test_the_vent_fits_dry(name: str) -> None:
    assembly = job_of(name).assembly
    fits = joint_fits(assembly)
    assert all(fit.good for fit in fits) and sum(fit.count for fit in fits) == len(assembly.joints)
    assert not overlaps(assembly)


def test_a_piece_that_stands_wrong_is_found() -> None:
    assembly = job_of(EXAMPLES[0]).assembly
    wrong = moved(assembly, only(assembly, "louver.sill"), 0, (0.0, 0.0, 0.5))
    assert [fit.kind for fit in joint_fits(wrong) if fit.worst == pytest.approx(0.5, abs=0.2)]
    assert overlaps(wrong)[0].volume > 1.0
    aside = moved(assembly, only(assembly, "louver.sill"), 0, (0.0, 0.7, 0.0))
    worst = next(fit for fit in joint_fits(aside) if fit.kind == CLEARANCE)
    assert worst.worst == pytest.approx(0.7, abs=1e-6)
    assert "louver.sill/0" in (worst.worst_joint.first, worst.worst_joint.second)


@pytest.mark.parametrize("name", CHOSEN)
def test_sight_lines_agree_with_the_slats_overlap(name: str) -> None:
    """Slats alone decide: the steepest ray shut out is where the overlap by formula is nothing."""
    job = job_of(name)
    louver = job.sizes.louver
    assert max(sight.open for sight in sight_lines(job.assembly, job.sizes, 0, job.spec.rain_angle)) < SHUT
    found = steepest_shut(job.assembly, job.sizes, 0)
    assert found >= job.spec.rain_angle
    assert louver.overlap(found) == pytest.approx(0.0, abs=0.02)


def test_a_missing_slat_is_seen_through() -> None:
    job = job_of(EXAMPLES[0])
    slats = only(job.assembly, "louver.slat")
    gone = replace(slats, pieces=tuple(p for p in slats.pieces if (p.side, p.index) != (0, 2)))
    without = Assembly(tuple(gone if p is slats else p for p in job.assembly.parts), job.assembly.joints)
    assert max(sight.open for sight in sight_lines(without, job.sizes, 0, 30.0)) > 10.0
    assert max(sight.open for sight in sight_lines(without, job.sizes, 1, 30.0)) < SHUT


def test_slats_sill_and_ring_shed_outward_at_their_slopes() -> None:
    job = job_of(EXAMPLES[0])
    falls = {shed.part.kind.id: shed.fall for shed in sheds(job.assembly, job.sizes, ("louver.slat", "louver.sill"))}
    louver = job.sizes.louver
    assert falls == pytest.approx({"louver.slat": louver.slat_angle, "louver.sill": louver.sill_slope})
    assert reach_beyond(job.assembly, job.sizes, "louver.ring", "base.corner") == pytest.approx(job.spec.ring_projection)


def test_an_end_under_open_sky_is_found_and_one_under_the_roof_is_not() -> None:
    job = job_of(EXAMPLES[0])
    roofless = Assembly(tuple(p for p in job.assembly.parts if p.kind.stage != "roof"), job.assembly.joints)
    bare = {end.part.kind.id for end in end_grain_up(roofless)}
    assert "louver.post.gable" in bare or "louver.trim.gable" in bare
    assert not {end.part.kind.id for end in end_grain_up(job.assembly)} & bare


def test_movement_is_that_of_the_published_rows() -> None:
    """5.5 in flat-sawn, 4 points: inches computed from the coefficients of the Wood Handbook, FPL-GTR-190, table 13-5."""
    published = {"red alder": 0.056, "american beech": 0.095, "red oak": 0.081, "white oak": 0.080, "douglas-fir": 0.059}
    for name, inches in published.items():
        assert movement(5.5, SPECIES[name].tangential, 4.0) == pytest.approx(inches, abs=6e-4)
    assert species_of(" Eastern White Pine ") is SPECIES["eastern white pine"]
    assert species_of("spruce-pine-fir") is None


def test_sheets_do_not_move_and_an_unknown_wood_is_not_guessed() -> None:
    job = job_of(EXAMPLES[0])
    found = movements(job.assembly, job.spec)
    assert not [each for each in found if each.part.stock.form in ("sheet", "mesh")]
    assert all((each.moves is None) == (each.species is None) for each in found)
    assert {each.species is None for each in found} == {True, False}


def test_a_square_end_opens_as_the_tables_say() -> None:
    """w · tan δ for one piece: 3.5 in at 0.5° is 0.0305 in (table of the trade, computed)."""
    end = Cut("crosscut", "end", (Plane((1.0, 0.0, 0.0), 100.0),))
    board = Board(120.0, 3.5, 0.75, (end,))
    assert opening(board, 0, MITRE, 0.5) == pytest.approx(0.0305, abs=1e-4)
    assert opening(board, 0, BEVEL, 0.5) == pytest.approx(0.75 * math.tan(math.radians(0.5)), rel=1e-6)
    assert opening(board, 0, LENGTH, 0.5) == pytest.approx(0.5)


def test_a_mitre_opens_by_the_width_it_is_sawn_over() -> None:
    """An octagon's plate is sawn over more than its width: w / cos M, both pieces; and a hip has an error budget too."""
    names = {each.sort.name for name in CHOSEN for each in openings(job_of(name).assembly, job_of(name).sizes)}
    assert any("hip" in name for name in names) and any("dados" in name for name in names)
    for name in CHOSEN:
        for each in openings(job_of(name).assembly, job_of(name).sizes):
            assert each.opens > 0.0
            if each.sort.kind == "louver.ring" and each.what == MITRE:
                plane = next(cut.planes[0] for cut in each.part.board.cuts if cut.kind == "crosscut")
                slant = math.hypot(plane.normal[0], plane.normal[2])
                expected = 2.0 * each.part.board.width / slant * math.tan(math.radians(0.5))
                assert each.opens == pytest.approx(expected, rel=0.1)


def test_a_slats_thickness_is_held_against_the_widest_fit_by_the_greater_coefficient() -> None:
    """In a dado 0.010 in wider than the slat (common practice); a pile has quarter-sawn boards too."""
    job = job_of(EXAMPLES[0])
    slats = only(job.assembly, "louver.slat")
    oak = replace(slats, stock=replace(slats.stock, material="white oak"))
    (thick,) = [each for each in movements(Assembly((oak,), ()), job.spec) if each.of == "thickness"]
    assert thick.gap == pytest.approx(0.010 * 25.4)
    assert thick.moves == pytest.approx(slats.board.thickness * 0.00365 * 4.0), "white oak, tangential, 4 points"


def test_errors_add_up_over_both_pieces_of_a_mitre_and_over_all_dados() -> None:
    job = job_of("octagon-dairy")
    found = {(each.sort.kind, each.what): each for each in openings(job.assembly, job.sizes)}
    ring = found["louver.ring", MITRE]
    alone = max(opening(ring.part.board, number, MITRE) for number, cut in enumerate(ring.part.board.cuts)
                if cut.kind == "crosscut")
    assert ring.opens == pytest.approx(2.0 * alone)
    assert found["louver.stile", "spacing"].opens == pytest.approx(1.0 * job.sizes.louver.slats)


def test_an_end_just_under_another_piece_is_covered() -> None:
    """A board on edge with its end up: bare by itself, covered by one that lies on it, and bare under one far beside it."""
    job = job_of(EXAMPLES[0])
    posts = job.assembly.of_kind("louver.post.gable")[0]
    plates = [part for part in job.assembly.parts if part.kind.id == "roof.plate"]
    assert [end.part.mark for end in end_grain_up(Assembly((posts,), ()))] == [posts.mark]
    assert not [end for end in end_grain_up(Assembly((posts, *plates), ())) if end.part is posts]
