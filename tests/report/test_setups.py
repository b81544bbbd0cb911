# SPDX-License-Identifier: LGPL-2.1-or-later
"""The set-up sheet against the boards: counts, bevels, and which edge has the long point."""

from __future__ import annotations

import re
import sys
from pathlib import Path

import pytest

sys.path.append(str(Path(__file__).resolve().parents[1] / "core"))
from making import EXAMPLES, job_of

from louverwright.core.assembly import CORNER_CUT, CROSSCUT, DADO, RIP
from louverwright.core.saw import end_of, setting
from louverwright.core.solid import END_B, FAR_EDGE, REFERENCE_EDGE
from louverwright.exchange.papers import job_from_values
from louverwright.report.document import survey_rows
from louverwright.report.setups import corner_rows, crosscut_rows, joint_setups, rip_rows

SOME = tuple(name for name in ("hay-barn-28ft", "octagon-dairy", "horse-barn-flared") if name in EXAMPLES)


@pytest.mark.parametrize("name", SOME)
def test_every_corner_cut_and_every_dado_is_counted(name: str) -> None:
    job = job_of(name)
    rows = corner_rows(job)
    for row in rows:
        assert sum(int(times) for times in re.findall("×([0-9]+)", row[2])) == int(row[3]), row
    assert sum(int(row[3]) for row in rows) == sum(job.count(part) for part in job.assembly.parts
                                                   for cut in part.board.cuts if cut.kind == CORNER_CUT)
    dados = sum(job.count(part) for part in job.assembly.parts for cut in part.board.cuts if cut.kind == DADO)
    assert sum(int(row.count) for row in joint_setups(job) if row.joint.startswith("dados")) == dados > 0


@pytest.mark.parametrize("name", SOME)
def test_a_rips_bevel_is_counted_from_upright(name: str) -> None:
    job = job_of(name)
    tilts = {job.writer.angle(abs(setting(cut.planes[0]).bevel)) for part in job.assembly.parts for cut in part.board.cuts
             if cut.kind == RIP}
    assert {row.bevel for row in rip_rows(job)} - {"upright"} == tilts - {"upright"} and tilts


@pytest.mark.parametrize("name", SOME)
def test_the_long_point_lies_where_the_row_says(name: str) -> None:
    """Of each part that a row names alone: the edge that the cut leaves longer, at the fence or on the near side."""
    job, seen = job_of(name), set()
    for row in crosscut_rows(job):
        for part in job.assembly.parts:
            own = re.fullmatch(rf"{part.mark} ([^,]*)\u00a0×[0-9]+", row.ends)
            if not own or "long point" not in row.lie:
                continue
            for cut in part.board.cuts:
                if cut.kind != CROSSCUT or own[1] not in ("both ends", part.called(end_of(cut))):
                    continue
                if job.writer.angle(abs(setting(cut.planes[0]).mitre)) != row.mitre.split("\u00a0")[0]:
                    continue
                plane, way = cut.planes[0], 1.0 if end_of(cut) == END_B else -1.0
                reach = {edge: way * (plane.offset - plane.normal[1] * y) / plane.normal[0]
                         for edge, y in ((REFERENCE_EDGE, 0.0), (FAR_EDGE, part.board.width))}
                long = max(reach, key=lambda edge: reach[edge])
                at_fence = f"{part.called(long)} at the fence" in row.lie
                assert f"long point {'at the fence' if at_fence else 'towards you'}" in row.lie, (part.mark, row)
                seen.add(at_fence)
    assert seen


def test_what_opens_on_the_left_is_told_of_the_left() -> None:
    job = job_from_values({"pitch_left": 36.87, "pitch_right": 18.43, "pitch_error": 1.0})
    told = dict(survey_rows(job))
    assert told["Opens at the foot, left"] == job.writer.length(job.figures["opening_left"])
    assert told["Opens at the foot, left"] != told["Opens at the foot, right"]
    assert told["Opens at the foot, right"] == job.writer.length(job.figures["opening_right"])
