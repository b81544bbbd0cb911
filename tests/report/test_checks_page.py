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
    assert [c["key"] for c in record["chapters"]] == ["dry_fit", "rain", "air", "movement", "errors"]
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


def test_a_vent_with_parts_left_out_is_checked_whole() -> None:
    """Its joints are the whole vent's: what is bought or reused has to fit as well."""
    scenario = scenario_of("cart-shed-gable")
    job = job_from_values(scenario.values, scenario.revision, scenario.folder, parts=scenario.parts)
    assert job.assembly.left_out
    whole = job_from_values(scenario.values, scenario.revision, scenario.folder)
    assert chapters(job)[0].checks == chapters(whole)[0].checks
