"""What readers of the printed reports found when they rebuilt pieces from the words alone."""

from __future__ import annotations

import math
import sys
from pathlib import Path

import pytest

sys.path.append(str(Path(__file__).resolve().parents[1] / "core"))
from making import EXAMPLES, job_of, only, spec_of

from louverwright.core.assembly import CORNER_CUT, CROSSCUT, SHAPED_EDGE
from louverwright.core.dimensions import sizes
from louverwright.core.layout import layout
from louverwright.core.saw import ARRISES, line_of, span_at
from louverwright.core.solid import FAR_EDGE, REFERENCE_EDGE
from louverwright.report.lettered import far_lines, marked_lines
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
        for cut, far in far_lines(part).items():
            near = marked_lines(part)[cut]
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
    assert row.position.startswith("on the outside: a (") and "; on the inside: d (" in row.position


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
            for _, p in marked_lines(part)[cut][0]:
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
