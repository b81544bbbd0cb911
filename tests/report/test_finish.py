"""What stays bare for glue and what is primed: from the joints, for every part; and equal pieces under two marks."""

from __future__ import annotations

import re
import sys
from pathlib import Path

import pytest

sys.path.append(str(Path(__file__).resolve().parents[1] / "core"))
from making import EXAMPLES, job_of

from louverwright.core.assembly import GLUED, HALF_LAP
from louverwright.core.gluing import glued_faces
from louverwright.core.marks import turn_between
from louverwright.report.document import document
from louverwright.report.page import Pairs, Para, walk
from louverwright.report.part_sheet import part_sheets


@pytest.mark.parametrize("name", EXAMPLES)
def test_every_part_says_what_is_bare_and_what_is_primed(name: str) -> None:
    """Bare faces just where it is glued, with the marks of all that it is glued to and of nothing else."""
    job = job_of(name)
    for sheet in part_sheets(job):
        text = dict(sheet.facts)["Finish"]
        glued = {assembly_mark for joint in job.assembly.joints if joint.kind == GLUED
                 for mine, other in ((joint.first, joint.second), (joint.second, joint.first))
                 if job.assembly.part_of(mine) is sheet.part for assembly_mark in [job.assembly.part_of(other).mark]}
        assert ("bare for glue" in text) == bool(glued), sheet.mark
        told = set(re.findall(r"\b[BLR]\d+[a-z]*[LR]?\b", text))
        assert told == glued, sheet.mark
        assert "prime" in text or "paint" in text or sheet.part.stock.form == "mesh", sheet.mark
        assert ("half lap" in text) == any(cut.kind == HALF_LAP for cut in sheet.part.board.cuts), sheet.mark


def test_a_mitred_plate_leaves_its_ends_bare() -> None:
    """It was told to leave half laps bare, and has none."""
    if "octagon-dairy" not in EXAMPLES:
        pytest.skip("needs the octagon")
    texts = {sheet.mark: sheet.finish for sheet in part_sheets(job_of("octagon-dairy"))}
    assert texts["R1"] == "bare for glue: both ends (R1); the lower face where R22 meets it; prime all the rest"
    assert texts["R8"] == "bare for glue: both ends (R8); prime all the rest"
    assert texts["L9"].startswith("bare for glue: both ends, and the faces as far as the dados take them (L7L, L7R)")
    assert texts["L10"] == "no glue: prime all faces, edges and end grain"


@pytest.mark.parametrize("name", EXAMPLES)
def test_glued_faces_are_told_by_both_sides(name: str) -> None:
    found = glued_faces(job_of(name).assembly)
    for mark, faces in found.items():
        for face in faces:
            for partner, theirs in face.mates:
                assert any(other.name == theirs and (mark, face.name) in other.mates for other in found[partner])


@pytest.mark.parametrize("name", EXAMPLES)
def test_the_same_piece_under_two_marks_is_told_on_both_sheets(name: str) -> None:
    """Octagonal posts L1 and L2 are one piece; the set-up sheet says so too."""
    job = job_of(name)
    paras = [block.text for block in walk(document(job).blocks) if isinstance(block, Para)]
    parts = job.assembly.parts
    for sheet in part_sheets(job):
        alike = [other.mark for other in parts if other.mark != sheet.mark and other.stock == sheet.part.stock
                 and turn_between(sheet.part.board, other.board)]
        told = dict(sheet.facts).get("Same piece", "")
        assert told == (f"as {', '.join(alike)}: cut them together" if alike else "")
        assert bool(alike) == any(re.search(rf"^The same piece.*\b{sheet.mark}\b", text) for text in paras)
    if name == "octagon-dairy":
        assert any(dict(sheet.facts).get("Same piece") == "as L2: cut them together" for sheet in part_sheets(job))


@pytest.mark.parametrize("name", EXAMPLES)
def test_the_parameters_in_the_report_are_those_that_apply(name: str) -> None:
    job = job_of(name)
    labels = {label for block in list(walk(document(job).blocks))[-1:] if isinstance(block, Pairs) for label, _ in block.rows}
    assert "Width" in labels and "Roof form" in labels
    form = job.spec.roof_form
    assert ("Flare pitch" in labels) == (form == "flared hip") and ("Verge" in labels) == (form == "gable")
    assert ("End pitch" in labels) == (form != "gable" and job.sizes.plan.rectangle)
    assert ("Drop left front" in labels) == bool(job.sizes.readings)
