# SPDX-License-Identifier: LGPL-2.1-or-later
"""The assembly book, the labels and the take-offs: every piece and joint is in them, and their figures are the pieces' own."""

from __future__ import annotations

import html
import math
import re
from dataclasses import replace
from functools import lru_cache

import pytest
from making import EXAMPLES, job_of, scenario_of

from louverwright.core import fastening as fastening_module
from louverwright.core.assembly import board_solid
from louverwright.core.bench_blocks import bench_blocks
from louverwright.core.coatings import litres, surface_of, surfaces
from louverwright.core.fastening import fastening_of, totals
from louverwright.core.fixings import FROM_INSIDE, NONE
from louverwright.core.flashing import APRON, BACK_PAN, SADDLE, SIDE_PAN, STEP, flashings, foot_lines
from louverwright.core.geometry import dot, length, newell
from louverwright.core.mast import mast_bores
from louverwright.core.sealing import beads
from louverwright.core.solid import HIDDEN_FACE
from louverwright.core.steps import RULES, order_of, steps
from louverwright.exchange.papers import job_from_values
from louverwright.report import assembly_book as book_module
from louverwright.report import checks_page
from louverwright.report.assembly_book import assembly_book, step_blocks
from louverwright.report.assembly_words import WORDS
from louverwright.report.checks_page import GOOD, LOOK, chapters
from louverwright.report.drawing import Area, Label
from louverwright.report.html import to_html
from louverwright.report.job import Job
from louverwright.report.labels import COLUMNS, ROWS, label_sheets, labels, up_on
from louverwright.report.page import Heading, Report, Table, walk
from louverwright.report.step_picture import FROM_ABOVE, FROM_BELOW, picture
from louverwright.report.take_offs import take_offs

THREE = [name for name in ("hay-barn-28ft", "octagon-dairy", "cart-shed-gable") if name in EXAMPLES]


def job_with(**values: object) -> Job:
    return job_from_values({**scenario_of(EXAMPLES[0]).values, **values})


@lru_cache(maxsize=4)
def book_of(name: str) -> Report:
    return assembly_book(job_of(name))


def text_of(report: Report) -> str:
    return " ".join(html.unescape(re.sub(r"<[^>]*>", " ", to_html(report))).replace("\u00a0", " ").split())


# ---- the book


def test_every_step_has_words() -> None:
    assert {rule.key for rule in RULES} == set(WORDS)


@pytest.mark.parametrize("name", THREE)
def test_the_book_has_every_step_and_every_screw(name: str) -> None:
    job = job_of(name)
    report = book_of(name)
    titles = [block.text for block in walk(report.blocks) if isinstance(block, Heading)]
    for step in steps(job.assembly):
        assert any(WORDS[step.rule.key].title in title for title in titles)
    tables = [block for block in walk(report.blocks) if isinstance(block, Table)]
    driven = sum(int(str(row[1])) for table in tables if table.columns[0].title == "Through → into" for row in table.rows)
    assert driven == sum(totals(fastening_of(job.spec, job.assembly)).values())
    sizes = next(table for table in tables if table.caption == "All sizes")
    assert sum(int(str(row[1])) for row in sizes.rows) == driven


def test_the_book_defers_to_code_and_licensed_practice() -> None:
    text = text_of(book_of(EXAMPLES[0]))
    for word in ("licensed engineer", "local code", "roofing's maker", "dry", "Bench blocks", "common practice",
                 "trusses are never cut"):
        assert word in text
    assert "a straight driver stands free on the axis of each" in text


def test_what_has_no_screw_is_told(monkeypatch: pytest.MonkeyPatch) -> None:
    job = job_of(EXAMPLES[0])
    plan = fastening_of(job.spec, job.assembly)
    one = next(each for each in plan if each.row.fastener != NONE and each.driven)
    other = next(piece.id for piece in job.assembly.pieces if piece.kind == "roof.soffit")
    lost = replace(one, driven=(), blocked=other)
    monkeypatch.setattr(book_module, "plan_of", lambda _: (lost,))
    assert "is in the driver's way" in text_of(assembly_book(job))
    few = replace(one, driven=one.driven[:1], wanted=2)
    monkeypatch.setattr(book_module, "plan_of", lambda _: (few,))
    assert "Fewer than usual, for want of wood between them" in text_of(assembly_book(job))


#: Under so narrow a flared eave the fascia stands before every screw of the bed mould.
NARROW = {"pitch_left": 14.6, "pitch_right": 0.9, "sides": 6, "facing": "corner", "width": 787.8, "king_post_stock": "6x6",
          "roof_form": "flared hip", "rafter_stock": "2x6", "tail_depth": 96.6, "overhang": 101.0}
LOOSE, INSIDE = "As drawn, nothing holds this stage", "from inside the vent, up through the rail into the plate"


@pytest.mark.parametrize("name", EXAMPLES)
def test_every_stage_is_held_on_the_one_below(name: str) -> None:
    text = text_of(book_of(name))
    assert "4 · Louver stage onto the base" in text and "5 · Roof stage on top" in text and LOOSE not in text


def test_a_roof_stage_that_nothing_of_its_own_can_hold_is_screwed_from_inside() -> None:
    """Its step was left out of the book, and with it all that would have held it."""
    for job in (job_of("horse-barn-flared"), job_from_values(NARROW)):
        text = text_of(assembly_book(job))
        assert INSIDE in text and LOOSE not in text and "Look at R" not in text
        assert "From inside: reach up through the opening from the barn" in text
        told = [text.index(title) for title in ("4 · Louver stage", "5 · Roof stage on top", INSIDE, "6 · Soffit, at the")]
        assert told == sorted(told)
        screws = [driven for each in fastening_of(job.spec, job.assembly) if each.row is FROM_INSIDE for driven in each.driven]
        assert len(screws) > 12 and all(driven.face == HIDDEN_FACE and driven.way[2] > 0.5 for driven in screws)


def test_a_stage_that_no_driver_reaches_keeps_its_step_and_says_so(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(fastening_module, "FROM_INSIDE", replace(FROM_INSIDE, ways=()))
    job = job_from_values({**NARROW, "driver_length": 281.0})
    text = text_of(assembly_book(job))
    steps_told = [text.index(title) for title in ("5 · Roof stage on top", LOOSE, "6 · Soffit, at the roof")]
    assert steps_told == sorted(steps_told) and text.count(LOOSE) == 1
    told = re.findall(r"Look at (R6 to L1\S+), (\d+) joints: (R\d+) is in the driver's way", text)
    assert len(told) == 2 * len(set(told)), "each is told at the step and in the plan, and not for every joint again"
    lost = [each for each in fastening_of(job.spec, job.assembly) if not each.held and each.joint.first.startswith("roof.bed")]
    assert sum(int(number) for _, number, _ in set(told)) == len(lost) > 10


def test_left_out_parts_are_told() -> None:
    told = "Left out, not made here"
    assert told not in text_of(book_of(EXAMPLES[0]))
    scenario = scenario_of("cart-shed-gable") if "cart-shed-gable" in EXAMPLES else None
    if scenario is not None and scenario.parts:
        job = job_from_values(scenario.values, parts=scenario.parts)
        assert (told in text_of(assembly_book(job))) == bool(job.assembly.left_out)


def test_blocks_are_the_stages_own() -> None:
    job = job_of(EXAMPLES[0])
    found = bench_blocks(job.assembly, job.sizes)
    slopes = [block for block in found if "saddle" in block.use]
    half = job.sizes.base.width / 2.0
    for block in slopes:
        assert block.height == pytest.approx(half * math.tan(math.radians(block.angle)))
        assert block.length == pytest.approx(math.hypot(half, block.height))
    assert {round(block.angle, 3) for block in slopes} == {round(job.sizes.roof.left, 3), round(job.sizes.roof.right, 3)}
    roof = next(block for block in found if "tails and fascia" in block.use)
    fascia = next(part for part in job.assembly.parts if part.kind.id == "roof.fascia")
    low = min(piece.placement.point(p)[2] for piece in fascia.pieces for cell in board_solid(fascia.board)
              for facet in cell for p in facet.points)
    assert roof.height >= job.sizes.cap.plate_top - job.sizes.cap.plate_t - low


def test_reach_is_a_chapter_of_the_checks(monkeypatch: pytest.MonkeyPatch) -> None:
    job = job_of(EXAMPLES[0])
    reach = next(chapter for chapter in chapters(job) if chapter.key == "reach")
    assert len(reach.checks) == 5 and all(check.verdict == GOOD and check.value == check.bound for check in reach.checks)
    plan = fastening_of(job.spec, job.assembly)
    soffit = next(piece.id for piece in job.assembly.pieces if piece.kind == "roof.soffit")
    lost = tuple(replace(each, driven=(), blocked=soffit) if "bedmould" in each.first else each for each in plan)
    monkeypatch.setattr(checks_page, "fastening_of", lambda *_: lost)
    worse = next(chapter for chapter in chapters(job) if chapter.key == "reach")
    assert any(check.verdict == LOOK and "in the way" in check.shown for check in worse.checks)


# ---- pictures


def test_a_picture_paints_what_is_new_and_hides_what_lies_behind() -> None:
    assembly = job_of(EXAMPLES[0]).assembly
    order = order_of(assembly)
    frame, cladding = (next(step for step in order.steps if step.rule.key == key) for key in ("base.frame", "base.cladding"))
    there, new = ([piece.id for piece in step.pieces] for step in (frame, cladding))
    drawing = picture(assembly, there, new, FROM_ABOVE, (70.0, 50.0), "test")
    fills = [item.fill for item in drawing.items if isinstance(item, Area)]
    assert {"shade", "face"} == set(fills)
    assert {item.text for item in drawing.items if isinstance(item, Label)} == {
        assembly.part_of(name).mark for name in new}
    alone = picture(assembly, (), there, FROM_ABOVE, (70.0, 50.0), "test")
    assert fills.count("face") < len([item for item in alone.items if isinstance(item, Area)])
    assert drawing.width < 100.0 and drawing.height < 60.0


def test_from_below_the_soffit_is_seen() -> None:
    assembly = job_of(EXAMPLES[0]).assembly
    pieces = [piece.id for piece in assembly.pieces if piece.kind == "roof.soffit"]
    roof = [piece.id for piece in assembly.pieces if piece.kind == "roof.sheathing"]
    below, above = (picture(assembly, roof, pieces, eye, (70.0, 50.0), "test") for eye in (FROM_BELOW, FROM_ABOVE))
    seen = [sum(isinstance(item, Area) and item.fill == "shade" for item in drawing.items) for drawing in (below, above)]
    assert seen[0] > seen[1]


# ---- flashing


def test_flashing_is_laid_from_below_and_bends_with_the_roof() -> None:
    job = job_of(EXAMPLES[0])
    found = flashings(job.spec, job.sizes)
    assert found[0].name == APRON and found[-1].name not in (APRON, SIDE_PAN)
    pitch = job.sizes.roof.left
    for piece in found:
        if piece.name == APRON:
            assert piece.angle == pytest.approx(90.0 + pitch)
        if piece.name == SIDE_PAN:
            assert piece.angle == pytest.approx(90.0)
    side = next(line for line in foot_lines(job.sizes) if abs(line.falls) < 0.1)
    half = job.sizes.base.width / 2.0 + job.sizes.base.corner_t
    assert side.length == pytest.approx(half / math.cos(math.radians(pitch)), rel=1e-6)
    steps_ = flashings(job_with(course_exposure=127.0).spec, job.sizes)
    stepped = [piece for piece in steps_ if piece.name == STEP]
    assert stepped and all((piece.count - 1) * 127.0 >= side.length for piece in stepped)
    assert SIDE_PAN not in {piece.name for piece in steps_}


def test_on_one_slope_there_is_a_back_pan_and_no_saddle() -> None:
    if "flat-roof-curb" not in EXAMPLES:
        pytest.skip("the example is not among those chosen")
    names = {piece.name for piece in flashings(job_of("flat-roof-curb").spec, job_of("flat-roof-curb").sizes)}
    assert BACK_PAN in names and SADDLE not in names


# ---- labels


@pytest.mark.parametrize("name", THREE)
def test_there_is_a_label_for_each_piece(name: str) -> None:
    job = job_of(name)
    found = labels(job)
    assert [label.piece for label in found] == [piece.id for piece in job.assembly.pieces]
    sheets = label_sheets(job).sheets
    assert len(sheets) == math.ceil(len(found) / (COLUMNS * ROWS))
    marks = [item.text for sheet in sheets for item in sheet.drawing.items if isinstance(item, Label)]
    for part in job.assembly.parts:
        assert marks.count(part.mark) == part.count
    for sheet in sheets:
        assert all(0.0 < item.x < sheet.drawing.width and 0.0 < item.y < sheet.drawing.height
                   for item in sheet.drawing.items if isinstance(item, Label))


def test_a_labels_arrow_points_up_in_the_vent() -> None:
    for part in job_of(EXAMPLES[0]).assembly.parts:
        for piece in part.pieces:
            angle = up_on(piece)
            if angle is None:
                assert abs(piece.placement.z[2]) > 0.99
                continue
            a = math.radians(angle)
            way = piece.placement.direction((math.cos(a), math.sin(a), 0.0))
            assert way[2] == pytest.approx(math.sqrt(1.0 - piece.placement.z[2] ** 2), abs=1e-6)


@pytest.mark.parametrize("name", THREE)
def test_labels_of_turned_pieces_name_the_face_that_they_lie_on(name: str) -> None:
    job = job_of(name)
    pieces = {piece.id: piece for piece in job.assembly.pieces}
    told = 0
    for label in labels(job):
        place, out = pieces[label.piece].placement, job.sizes.plan.u(pieces[label.piece].side)
        for words, way in (("on the outside", dot(place.z, out)), ("on the inside", -dot(place.z, out)),
                           ("on the upper face", place.z[2]), ("on the lower face", -place.z[2]),
                           ("to the left: foot", place.x[2]), ("to the gauge: lower edge", place.y[2])):
            if words in f"{label.face} {label.end} {label.edge}":
                assert way > 0.0, (label, words)
                told += 1
    assert told > 100


def test_several_vents_take_several_sets_of_labels() -> None:
    job = job_with(vents=2, width=800.0)
    first = label_sheets(job).sheets[0].drawing
    assert any("print 2 sets" in item.text for item in first.items if isinstance(item, Label))


# ---- take-offs


def test_surfaces_are_the_solids_own() -> None:
    """Every face of every cell, less what lies between two cells of the board: counted without the shell's merging."""
    job = job_of(EXAMPLES[0])
    for part in job.assembly.parts:
        cells = board_solid(part.board)
        if len(cells) > 1:
            continue
        whole = sum(length(newell(facet.points)) / 2.0 for facet in cells[0])
        assert sum(surface_of(part).values()) == pytest.approx(whole, rel=1e-6)
    batten = next(part for part in job.assembly.parts if part.kind.id == "louver.batten.level")
    a, b, c = batten.board.size
    assert sum(surface_of(batten).values()) == pytest.approx(2.0 * (a * b + b * c + c * a), rel=1e-6)


def test_slats_are_primed_on_all_faces_but_in_the_dados() -> None:
    job = job_of(EXAMPLES[0])
    found = {each.part.kind.id: each for each in surfaces(job.assembly)}
    slat = found["louver.slat"]
    ends = 2.0 * slat.part.board.thickness * slat.part.board.width * slat.part.count
    assert slat.primed == pytest.approx(slat.whole - slat.glued) and slat.glued > 0.5 * ends
    assert 0.8 * slat.whole < slat.painted <= slat.primed
    frame = found["louver.rail.top"]
    assert frame.painted == 0.0 and frame.primed < frame.whole
    sheathing = found["roof.sheathing"]
    assert sheathing.primed < 0.6 * sheathing.whole
    assert found["louver.screen"].primed == found["louver.screen"].painted == 0.0
    for each in surfaces(job.assembly):
        assert 0.0 <= each.painted <= each.whole and 0.0 <= each.glued < each.whole


def test_litres_follow_coats_and_coverage() -> None:
    assert litres(20e6, 2, 10.0) == pytest.approx(4.0)
    few, many = (text_of(take_offs(job_with(paint_coats=coats, paint_coverage=8.0))) for coats in (1, 4))
    assert "At 8 m²" in few and few != many


@pytest.mark.parametrize("name", THREE)
def test_take_offs_are_the_plans_and_the_figures_own(name: str) -> None:
    job = job_of(name)
    report = take_offs(job)
    tables = {block.columns[0].title: block for block in walk(report.blocks) if isinstance(block, Table)}
    counted = sum(int(str(row[1])) for row in tables["Fastener"].rows if "slats to" not in str(row[0]))
    assert counted == job.vents * sum(totals(fastening_of(job.spec, job.assembly)).values())
    text = text_of(report)
    assert job.writer.area(job.figures["roof_covering"]).replace("\u00a0", " ") in text
    assert len(tables["Face over the"].rows) == len(job.sizes.eaves)
    assert ("Mast" in text) == bool(job.spec.mast_diameter)
    assert all(bead.length > 0.0 for bead in beads(job.assembly))


def test_a_mast_stands_from_the_step_to_the_peak() -> None:
    job = job_of(EXAMPLES[0])
    bores = mast_bores(job.assembly)
    assert [each.diameter for each in bores] == [pytest.approx(job.sizes.cap.mast)] * len(bores) and len(bores) >= 2
    assert bores[0].high == max(each.high for each in bores) and bores[-1].low < bores[0].low
    assert mast_bores(job_with(mast_diameter=0.0).assembly) == ()


def test_several_vents_are_all_counted() -> None:
    one, two = (text_of(take_offs(job_with(vents=count, width=800.0))) for count in (1, 2))
    assert "all 2 vents" in two and "all 2 vents" not in one
    assert "you make 2" in text_of(assembly_book(job_with(vents=2, width=800.0)))


def test_each_step_at_the_roof_comes_after_the_stages() -> None:
    job = job_of(EXAMPLES[0])
    assert list(step_blocks(job, at_roof=True)) == ["roof.soffit"]
    titles = [block.text for block in walk(book_of(EXAMPLES[0]).blocks) if isinstance(block, Heading)]
    assert titles.index("5 · Roof stage on top") < titles.index("6 · Soffit, at the roof") < titles.index("7 · Last of all")
