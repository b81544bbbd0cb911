"""What readers of the printed reports found when they rebuilt pieces from the words alone."""

from __future__ import annotations

import math
import sys
from pathlib import Path

import pytest

sys.path.append(str(Path(__file__).resolve().parents[1] / "core"))
from making import EXAMPLES, job_of, only, spec_of

from louverwright.core.assembly import CROSSCUT
from louverwright.core.dimensions import sizes
from louverwright.core.layout import layout
from louverwright.core.saw import ARRISES, span_at
from louverwright.core.solid import FAR_EDGE, REFERENCE_EDGE
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
