# SPDX-License-Identifier: LGPL-2.1-or-later
"""The lift plan on paper: every stage, who lifts it, what does not go through, and the cautions."""

from __future__ import annotations

import html
import re

import pytest
from making import EXAMPLES, scenario_of

from louverwright.exchange.papers import job_from_values
from louverwright.report.html import to_html
from louverwright.report.job import Job
from louverwright.report.lift import CAUTIONS, lift_report


def job_with(**values: object) -> Job:
    return job_from_values({**scenario_of(EXAMPLES[0]).values, **values})


def text_of(job: Job) -> str:
    return " ".join(html.unescape(re.sub(r"<[^>]*>", " ", to_html(lift_report(job)))).replace("\u00a0", " ").split())


def test_every_stage_and_every_caution_is_there() -> None:
    text = text_of(job_with())
    for word in ("Base", "Louver stage", "Roof stage", "The whole vent", "NIOSH", *CAUTIONS):
        assert word in text
    assert "No wind speed is given" in text
    assert "Lift plan" in to_html(lift_report(job_with()))


def test_a_lighter_limit_takes_more_people_and_splits_the_stage() -> None:
    text = text_of(job_with(lift_limit=6.0))
    assert "as you gave it" in text and "NIOSH" not in text
    assert "Lift it by tackle, or bring up by themselves" in text


@pytest.mark.parametrize(("width", "told"), [(5_000.0, False), (700.0, True)])
def test_what_does_not_go_through_is_told(width: float, told: bool) -> None:
    assert ("does not go upright through" in text_of(job_with(passage_width=width))) == told


def test_wind_is_for_information_only() -> None:
    text = text_of(job_with(wind_speed=45.0))
    assert "for information only" in text and "licensed engineer" in text and "Uplift on the roof" in text
