# SPDX-License-Identifier: LGPL-2.1-or-later
"""The page of checks: every row has value, limit, source and verdict; page and JSON say the same."""

from __future__ import annotations

import json
import sys
from dataclasses import replace
from html import unescape
from pathlib import Path

import pytest

sys.path.append(str(Path(__file__).resolve().parents[1] / "core"))
from making import EXAMPLES, job_of, no_number, scenario_of

from louverwright.core.part_wish import PartWish
from louverwright.core.rain import sheds
from louverwright.exchange.papers import job_from_values
from louverwright.report.checks_page import GOOD, LEAST_FALL, LOOK, SILL_FALL, chapters, checks_report, to_checks_json
from louverwright.report.html import to_html

CHOSEN = tuple(name for name in ("hay-barn-28ft", "octagon-dairy", "cart-shed-gable") if name in EXAMPLES)


@pytest.mark.parametrize("name", CHOSEN)
def test_every_row_is_whole_and_the_same_on_page_and_in_json(name: str) -> None:
    job = job_of(name)
    found = chapters(job)
    text = unescape(to_html(checks_report(job), job.spec.paper_size))
    record = json.loads(to_checks_json(job), parse_constant=no_number)
    assert [c["key"] for c in record["chapters"]] == ["dry_fit", "rain", "air", "movement", "errors", "reach"]
    for chapter, written in zip(found, record["chapters"], strict=True):
        assert chapter.checks and len(chapter.checks) == len(written["checks"])
        for check, row in zip(chapter.checks, written["checks"], strict=True):
            cells = (check.name, check.shown, check.limit, check.source, check.verdict)
            assert all(cells) and all(cell in text for cell in cells)
            assert (check.shown, check.limit, check.source, check.verdict) == tuple(row["shown"].values())
            assert row["to_look_at"] == check.verdict.startswith(LOOK)


@pytest.mark.parametrize("name", CHOSEN)
def test_shipped_vents_fit_and_keep_rain_out(name: str) -> None:
    found = {chapter.key: chapter for chapter in chapters(job_of(name))}
    assert not [c for c in found["dry_fit"].checks if c.verdict.startswith(LOOK)]
    assert not [c for c in found["rain"].checks if c.name.startswith("Sight") and c.verdict.startswith(LOOK)]


@pytest.mark.parametrize("kind", ["louver.screen", "louver.slat"])
def test_a_vent_with_parts_left_out_is_checked_whole(kind: str) -> None:
    """What is bought or used again has to fit as well, and keeps out the rain once it is in its place."""
    values = scenario_of(EXAMPLES[0]).values
    job = job_from_values(values, parts={kind: PartWish(left_out=True)})
    assert job.assembly.left_out
    for ours, whole in zip(chapters(job)[:2], chapters(job_from_values(values))[:2], strict=True):
        assert ours.checks == whole.checks


@pytest.mark.parametrize("name", CHOSEN)
def test_parts_that_move_alike_share_a_row_and_none_is_missing(name: str) -> None:
    job = job_of(name)
    (found,) = [chapter for chapter in chapters(job) if chapter.key == "movement"]
    told = [mark for check in found.checks if "thickness" not in check.name
            for mark in check.name.split(": ")[0].split(", ")]
    solid = [part.mark for part in job.assembly.parts if part.stock.form not in ("sheet", "mesh")]
    assert sorted(told) == sorted(solid)
    assert len({(check.name.split(": ")[1], check.shown, check.limit) for check in found.checks}) == len(found.checks)


def test_a_sill_and_a_slat_each_have_their_own_limit_and_a_flat_one_is_to_be_looked_at() -> None:
    """The sill sheds more water than a slat (from memory), and 1° is flat."""
    job = job_from_values({})
    rows = {check.name.split()[3].rstrip(","): check for chapter in chapters(job) if chapter.key == "rain"
            for check in chapter.checks if check.name.startswith("Fall outward")}
    for kind, least in (("louver.slat", LEAST_FALL), ("louver.sill", SILL_FALL)):
        (part,) = job.assembly.of_kind(kind)
        assert (rows[part.mark].bound, rows[part.mark].limit) == (least, f"at least {job.writer.angle(least)}")
    assert all((check.value >= check.bound) == (check.verdict == GOOD) for check in rows.values())
    flat = replace(sheds(job.assembly, job.sizes, ("louver.slat",))[0], fall=1.0)
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr("louverwright.report.checks_page.sheds", lambda *_: (flat,))
        (check,) = [c for chapter in chapters(job) for c in chapter.checks if c.name.startswith("Fall outward")]
    assert check.verdict == LOOK and check.value == 1.0
