"""What readers of the printed reports found when they rebuilt pieces from the words alone."""

from __future__ import annotations

import math
import re
import sys
from collections import Counter
from pathlib import Path
from typing import Any

import pytest

sys.path.append(str(Path(__file__).resolve().parents[1] / "core"))
from making import EXAMPLES, job_of, only, spec_of

from louverwright.core.assembly import CORNER_CUT, CROSSCUT, NOTCH, SHAPED_EDGE, board_shell, board_volume_and_centre
from louverwright.core.dimensions import sizes
from louverwright.core.geometry import dot
from louverwright.core.layout import layout
from louverwright.core.saw import ARRISES, line_of, setting, span_at
from louverwright.core.solid import END_A, END_B, FAR_EDGE, REFERENCE_EDGE
from louverwright.exchange.papers import job_from_values
from louverwright.report.document import document
from louverwright.report.html import to_html
from louverwright.report.job import Job
from louverwright.report.lettered import bevelled, far_lines, marked_lines, shaped
from louverwright.report.part_sheet import part_sheets
from louverwright.report.place_words import turned_over


@pytest.mark.parametrize("sides", [6, 8])
def test_a_mitred_rails_blank_has_its_long_points(sides: int) -> None:
    """The lap takes the long point off again, but the saw's cut needs it: the whole side of the frame's outer face."""
    spec = spec_of(sides=sides, width=1_150.0, king_post_stock="6x6")
    at = sizes(spec)
    for kind, r in (("base.rail.top", at.base.frame_r), ("louver.rail.top", at.louver.frame_r)):
        rail = only(layout(spec), kind).board
        assert rail.length == pytest.approx(2.0 * r * math.tan(math.pi / sides), abs=1e-6)


@pytest.mark.parametrize("name", EXAMPLES)
def test_every_crosscut_can_be_marked_on_a_face_and_the_marks_lie_on_it(name: str) -> None:
    """A line joined from mark to mark must be the cut's: a double cheek's ran off the far face, and was printed there."""
    for part in job_of(name).assembly.parts:
        for cut in (cut for cut in part.board.cuts if cut.kind == CROSSCUT):
            span = span_at(part.board, cut)
            sides = {face for _, face in ARRISES}
            assert any(all(span.meets(edge, face) for edge in (REFERENCE_EDGE, FAR_EDGE)) for face in sides), part.mark
    texts = [row.mark_at for sheet in part_sheets(job_of(name)) for row in sheet.cuts]
    assert texts and not any("off the wood" in text for text in texts)


def test_a_double_cheek_prints_the_cheek_that_has_its_line() -> None:
    """Both marks of each of a hip's plumb cheeks lie on its plane: their slope is the mitre."""
    hip = only(layout(spec_of(length=1_350.0)), "roof.hip")
    cheeks = [cut for cut in hip.board.cuts if "cheek" in cut.name]
    assert len(cheeks) == 4
    for cut in cheeks:
        span = span_at(hip.board, cut)
        whole = [face for face in {face for _, face in ARRISES}
                 if span.meets(REFERENCE_EDGE, face) and span.meets(FAR_EDGE, face)]
        assert len(whole) == 1


def test_the_turn_of_a_piece_is_named() -> None:
    """A bed mould at the hip's other end is turned upside down, its outside out; a barge board face for face."""
    hipped = job_of("hay-store-rectangle")
    moulds = [part for part in hipped.assembly.of_kind("roof.bedmould") if turned_over(part, hipped)]
    assert moulds and all(set(turned_over(part, hipped)) == {"end for end, the same face out"} for part in moulds)
    gabled = job_of("cart-shed-gable")
    assert turned_over(only(gabled.assembly, "roof.barge"), gabled) == {"face for face, the same end first": 2}


@pytest.mark.parametrize("name", ["horse-barn-flared", "hexagon-corner-first"])
def test_a_bevelled_notch_can_be_sawn_from_line_to_line(name: str) -> None:
    """Lines on both faces (or where the two backings meet), each point on a wall; every wall with its bevel and its lean."""
    job, seen = job_of(name), 0
    for part in job.assembly.parts:
        for cut, far in far_lines(part.board).items():
            near = marked_lines(part.board)[cut]
            upper, lower = ({round(p[2], 3) for line in lines for _, p in line} for lines in (near, far))
            assert len(upper) == len(lower) == 1 and upper != lower, (part.mark, upper, lower)
            for plane in cut.planes:
                for lines in (near, far):
                    assert sum(abs(plane.height(p)) < 1e-3 for line in lines for _, p in line) >= 2, (part.mark, cut.name)
            seen += 1
    assert seen >= 2


def test_a_bevelled_notchs_words_say_how_each_wall_leans() -> None:
    """The relief over a ridge cap in a sole on the skew: both walls run deeper into the inside."""
    job = job_of("hexagon-corner-first")
    sheet = next(sheet for sheet in part_sheets(job) if sheet.mark == "B5aL")
    (row,) = [row for row in sheet.joints if "ridge cap" in row.name]
    (cut,) = [cut for cut in sheet.part.board.cuts if "ridge cap" in cut.name]
    assert all(plane.normal[2] < 0.0 for plane in cut.planes)
    walls = row.size.split("; ")
    assert len(walls) == 2 and all(wall.endswith("more wood left on the outside") for wall in walls)
    assert walls[0].startswith("a–b plumb") and "bevel 30.0°" in walls[0] and "bevel 14.6°" in walls[1]
    assert row.position.startswith("on the outside: a\u00a0(") and "; on the inside: d\u00a0(" in row.position


def test_a_flared_rafters_top_is_sawn_before_its_ends_are_marked() -> None:
    """The ends' lines run to the shaped top, not to an edge of the blank that is no longer there."""
    job = job_of("horse-barn-flared")
    rafters = [part for part in job.assembly.parts if part.kind.id in ("roof.hip", "roof.jack", "roof.common")]
    assert rafters
    for part in rafters:
        kinds = [cut.kind for cut in part.board.cuts]
        first = next(i for i, kind in enumerate(kinds) if kind in (CROSSCUT, CORNER_CUT))
        assert SHAPED_EDGE in kinds[:first] and SHAPED_EDGE not in kinds[first:], part.mark
        solid = part.board.after(first)
        for cut in (cut for cut in part.board.cuts if cut.kind == CORNER_CUT):
            for _, p in marked_lines(part.board)[cut][0]:
                assert any(all(facet.plane.height(p) < 1e-6 for facet in cell) for cell in solid), (part.mark, cut.name, p)


@pytest.mark.parametrize("name", EXAMPLES)
def test_the_order_of_cuts_is_the_list_of_cuts(name: str) -> None:
    """Every listed row has one place in the order, and the order names no other."""
    for sheet in part_sheets(job_of(name)):
        steps: list[int] = []
        for sort in sheet.order.split(" → "):
            first, _, last = sort.split()[-1].partition("–")
            steps += range(int(first), int(last or first) + 1)
        assert steps == list(range(1, len(sheet.cuts) + len(sheet.joints) + 1)), (sheet.mark, sheet.order)
        sorts = [row.sort for row in (*sheet.cuts, *sheet.joints)]
        assert len(dict.fromkeys(sorts)) == len(sheet.order.split(" → "))


def test_too_long_for_the_saw_is_said_of_the_cut_that_is() -> None:
    """A corner cut's line is as long as it is on the wood: the flared rafters' run 251 mm at most, and the saw cuts 305."""
    job = job_of("horse-barn-flared")
    for sheet in part_sheets(job):
        lines = [(cut.name, line_of(sheet.part.board, cut)) for cut in sheet.part.board.cuts
                 if cut.kind in (CROSSCUT, CORNER_CUT)]
        over = {name for name, long in lines if long > job.spec.saw_crosscut}
        told = [text for text in sheet.advice if "more than the saw's" in text]
        assert bool(over) == bool([text for text in told if "square end" not in text]), sheet.mark
        assert all(f"“{name}”" in told[0] for name in over)
        if sheet.part.kind.id.startswith("roof.hip") or sheet.part.kind.id == "roof.jack":
            assert lines and not over and not told


def where(job: Job) -> dict[str, str]:
    return {sheet.mark: sheet.where for sheet in part_sheets(job)}


def test_commons_are_said_to_be_where_they_are() -> None:
    rectangle, gabled = job_of("hay-store-rectangle"), job_of("cart-shed-gable")
    assert where(rectangle)["R5"] == "1 on each of both gable sides, 2 on each of both eave sides; at the ridge's ends"
    assert where(gabled)["R5"] == "both gable sides"
    for job in (rectangle, gabled):
        for sheet in part_sheets(job):
            if "every side" in sheet.where:
                counts = Counter(piece.side for piece in sheet.part.pieces)
                assert len(counts) == job.sizes.plan.sides and len(set(counts.values())) == 1, sheet.mark


def test_parts_at_one_corner_of_a_twisted_roof_name_it() -> None:
    """As the scribing table does: each leg alone at a corner, front is +X."""
    job, seen = job_of("twisted-roof-sagging-ridge"), 0
    for sheet in part_sheets(job):
        part = sheet.part
        if part.kind.id.startswith("base.leg."):
            (piece,) = part.pieces
            x, y, _ = piece.placement.point(board_volume_and_centre(part.board)[1])
            corner = f"{'front' if x > 0.0 else 'back'} {'left' if y > 0.0 else 'right'} corner"
            assert corner in sheet.where, (part.mark, sheet.where)
            seen += 1
    assert seen == 8
    assert {where(job)["B7a"], where(job)["B7b"]} == {"gable side −X (back)", "gable side +X (front)"}


def test_parts_on_one_slope_say_whether_they_stand_low_or_high() -> None:
    job, seen = job_of("flat-roof-curb"), set()
    for sheet in (sheet for sheet in part_sheets(job) if sheet.part.kind.stage == "base"):
        centres = [piece.placement.point(board_volume_and_centre(sheet.part.board)[1])[1] for piece in sheet.part.pieces]
        word = next((word for word in ("low", "high") if f"on the {word} side of the roof" in sheet.where), "")
        if word:
            assert all((y > 0.0) == (word == "low") for y in centres), sheet.mark
            seen.add((sheet.part.kind.id, word))
    assert {(kind, word) for kind in ("base.leg.gable", "base.leg.eave", "base.cladding.eave", "base.corner.gable")
            for word in ("low", "high")} <= seen


@pytest.mark.parametrize("ridge_offset", [0.0, 120.0])
def test_boards_are_numbered_from_the_left_as_seen_from_outside(ridge_offset: float) -> None:
    values = {"cladding": "boards", "cladding_stock": "1x6", "ridge_offset": ridge_offset, "width": 900.0}
    job = job_from_values(values, "1", Path())
    plan, told = job.sizes.plan, 0
    rows: dict[int, list[tuple[float, str]]] = {}
    for part in job.assembly.parts:
        for piece in part.pieces if part.kind.id.startswith("base.cladding.") else ():
            rows.setdefault(piece.side, []).append((dot(piece.placement.origin, plan.v(piece.side)), part.mark))
    for mark, text in where(job).items():
        if "from the left" in text:
            (numbers, count), = re.findall(r"no\. ([\d and]+) of (\d+)(?: on|;|$)", text)[:1]
            first = next(side for side, row in sorted(rows.items()) if mark in [m for _, m in row])
            row = [m for _, m in sorted(rows[first])]
            assert [row[int(n) - 1] for n in numbers.split(" and ")] == [mark] * row.count(mark) and len(row) == int(count)
            told += 1
    assert told > 3


def test_no_part_is_named_for_a_slope_that_it_straddles() -> None:
    """With the ridge off the axis the middle of a gable side's rail or sheet lies on one slope, and the piece on both."""
    job = job_of("saltbox-off-the-ridge")
    ridge, seen = job.sizes.roof.ridge, 0
    for sheet in part_sheets(job):
        points = [piece.placement.point(p)[1] - ridge for piece in sheet.part.pieces
                  for p in board_shell(sheet.part.board).points]
        if min(points) < -1.0 and max(points) > 1.0:
            assert "slope" not in sheet.name, sheet.name
            seen += sheet.part.kind.id in ("base.rail.top", "base.cladding.gable")
    assert seen >= 3


def test_rails_of_two_lengths_name_their_sides() -> None:
    names = {sheet.mark: sheet.name for sheet in part_sheets(job_of("hay-store-rectangle"))}
    assert (names["L3a"], names["L3b"]) == ("Bottom rail, gable side", "Bottom rail, eave side")
    assert (names["L4a"], names["L4b"]) == ("Top rail, gable side", "Top rail, eave side")
    assert {sheet.name for sheet in part_sheets(job_of("hay-barn-28ft")) if sheet.mark == "L3a"} == {"Bottom rail, gable side"}


def test_a_figure_is_described_by_the_name_on_the_page() -> None:
    job = job_of("octagon-dairy")
    text = to_html(document(job), "A4")
    for sheet in part_sheets(job):
        assert f"{sheet.mark}, {sheet.name}: marked face" in text.replace("&#x27;", "'"), sheet.mark


def test_the_sheathings_upper_edge_has_one_name() -> None:
    for name in ("hay-store-rectangle", "cart-shed-gable", "horse-barn-flared"):
        job = job_of(name)
        for part in job.assembly.of_kind("roof.sheathing"):
            assert part.called(FAR_EDGE) == "upper edge"
            assert not [cut.name for cut in part.board.cuts if "peak" in cut.name or "ridge edge" in cut.name]


def test_a_notch_that_another_takes_whole_is_not_cut() -> None:
    """Corner first, a narrow leg at the ridge stands under the cap all along: its foot on the roof left no line to saw to."""
    job = job_from_values({"width": 900.0, "facing": "corner"}, "1", Path())
    taken = [part for part in job.assembly.parts if part.kind.id.startswith("base.leg.")
             and not [cut for cut in part.board.cuts if cut.name == "foot to the roof"]]
    assert taken and all("relief over the ridge cap" in [cut.name for cut in part.board.cuts] for part in taken)
    for part in job.assembly.parts:
        assert all(lines and all(lines) for lines in marked_lines(part.board).values()), part.mark


@pytest.mark.parametrize("roof_form", ["hip", "gable"])
def test_sheathing_with_its_grain_up_the_slope_names_its_sides_as_they_lie(roof_form: str) -> None:
    """Its ends are the eave edge and the upper edge, and its long sides left and right; a tapering rip has two marks."""
    job = job_from_values({"sheathing_grain": "up the slope", "roof_form": roof_form}, "1", Path())
    sheet = next(sheet for sheet in part_sheets(job) if sheet.part.kind.id == "roof.sheathing")
    part, piece = sheet.part, sheet.part.pieces[0]
    right = job.sizes.plan.v(piece.side)
    assert (part.called(END_A), part.called(END_B)) == ("eave edge", "upper edge") and piece.placement.x[2] > 0.0
    assert (part.called(REFERENCE_EDGE), part.called(FAR_EDGE)) == ("right edge", "left edge")
    assert dot(piece.placement.y, right) == pytest.approx(-1.0)
    rips = [row for row in sheet.cuts if "taper" in row.set_to]
    assert len(rips) == (2 if roof_form == "hip" else 0)
    for row in rips:
        assert "at the eave edge" in row.mark_at and "at the upper edge" in row.mark_at


def test_a_shaped_edge_does_not_lie_at_the_fence_unless_it_is_said() -> None:
    """With the blade upright the piece is turned to bring its straight edge there; with a bevel the sheet says what to do."""
    job, seen = job_of("horse-barn-flared"), 0
    for sheet in part_sheets(job):
        if not shaped(sheet.part.board):
            continue
        edge = f"{sheet.part.called(FAR_EDGE)} at the fence"
        at_fence = [row for row in sheet.cuts if edge in row.lay]
        assert all("bevel" in row.set_to for row in at_fence), sheet.mark
        told = [text for text in sheet.advice if "comes to the fence" in text]
        assert len(told) == bool(at_fence) and all(f"“{row.name}”" in told[0] for row in at_fence)
        seen += len(at_fence)
    assert seen >= 2


@pytest.mark.parametrize("values", [{}, {"cladding": "boards", "cladding_stock": "1x6", "ridge_offset": 100.0}])
def test_every_bevelled_wall_is_told_on_whichever_face_it_shows(values: dict[str, Any]) -> None:
    """Corner first, some boards meet the ridge cap so that a wall runs out before the marked face."""
    job, seen = job_from_values({"facing": "corner", "width": 1_200.0, **values}, "1", Path()), 0
    for sheet in part_sheets(job):
        notches = [cut for cut in sheet.part.board.cuts if cut.kind == NOTCH]
        rows = [row for row in sheet.joints if row.sort == "notches"]
        for cut, row in zip(notches, rows, strict=True):
            walls = {(face.plane.normal, face.plane.offset): face.plane for face in board_shell(sheet.part.board).faces
                     if face.name.split("/")[0] == cut.name}
            if bevelled(cut):
                bevels = {job.writer.angle(abs(setting(plane).bevel)) for plane in walls.values()}
                assert bevels == set(re.findall(r"bevel ([^,]+),", row.size)), (sheet.mark, row.size)
                assert len(re.findall("bevel", row.size)) == len(walls), (sheet.mark, row.size)
                seen += len(walls)
    assert seen > 8
