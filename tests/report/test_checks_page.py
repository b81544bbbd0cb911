# SPDX-License-Identifier: LGPL-2.1-or-later
"""The page of checks: every row has value, limit, source and verdict; page and JSON say the same."""

from __future__ import annotations

import json
import sys
from html import unescape
from pathlib import Path

import pytest

sys.path.append(str(Path(__file__).resolve().parents[1] / "core"))
from making import EXAMPLES, job_of, no_number, scenario_of

from louverwright.core.part_wish import PartWish
from louverwright.exchange.papers import job_from_values
from louverwright.report.checks_page import LOOK, chapters, checks_report, to_checks_json
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
