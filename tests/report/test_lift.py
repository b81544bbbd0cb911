# SPDX-License-Identifier: LGPL-2.1-or-later
"""The lift plan on paper: every stage, who lifts it, what does not go through, and the cautions."""

from __future__ import annotations

import html
import re
from dataclasses import replace

import pytest
from making import EXAMPLES, job_of, scenario_of

from louverwright.core.lifting import loads, sling_force
from louverwright.exchange.papers import job_from_values
from louverwright.report.html import to_html
from louverwright.report.job import Job
from louverwright.report.lift import CAUTIONS, lift_report
from louverwright.report.page import Heading, Table, as_cell, walk


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


def rows_of(job: Job, *titles: str) -> list[tuple[str, ...]]:
    """The rows of the plan's table with such a heading over its second column."""
    (table,) = [block for block in walk(lift_report(job).blocks) if isinstance(block, Table)
                and block.columns[1].title in titles]
    return [tuple(as_cell(cell).text for cell in row) for row in table.rows]


def test_the_centre_is_told_from_the_foot_of_each_stage() -> None:
    """Halfway up or so: a stage that stands on the ground knows no ridge."""
    job = job_with()
    for load, row in zip(loads(job.assembly), rows_of(job, "Weight"), strict=True):
        assert row[3] == job.writer.length(load.centre[2] - load.low)
        assert 0.2 < (load.centre[2] - load.low) / load.size[2] < 0.8


def test_tension_is_told_in_newtons_and_in_pounds_for_points_so_far_apart_as_is_said() -> None:
    """A pound-force is 4.448 N (by the definitions of the pound and of standard gravity)."""
    job = job_with()
    spread = 2.0 * job.sizes.base.inner_r
    said = job.writer.length(spread).replace("\u00a0", " ")
    assert f"alike on opposite sides, {said} apart" in text_of(job)
    off = [replace(load, centre=(0.1 * spread, 0.0, 0.0)) for load in loads(job.assembly)]
    for load, aside, row in zip(loads(job.assembly), off, rows_of(job, "Tension in the heavier leg"), strict=True):
        kilonewtons, pounds = (float(text) for text in re.findall(r"[0-9.]+", row[1]))
        assert kilonewtons == pytest.approx(sling_force(load, spread) / 1000.0, abs=0.006)
        assert pounds == pytest.approx(sling_force(load, spread) / 4.448222, abs=0.6)
        assert sling_force(aside, spread) == pytest.approx(1.2 * sling_force(replace(load, centre=(0.0, 0.0, 0.0)), spread))


def test_the_frame_alone_is_what_is_left_without_what_is_brought_up_by_itself() -> None:
    job = job_with(lift_limit=6.0)
    heavy = [load for load in loads(job.assembly)[:-1] if load.loose]
    assert heavy and any(f"the frame alone is {job.writer.weight(load.weight - load.loose)}".replace("\u00a0", " ")
                         in text_of(job) for load in heavy)


def test_the_cautions_come_first_and_before_the_forces_that_they_speak_of() -> None:
    heads = [block.text for block in lift_report(job_of(EXAMPLES[0])).blocks if isinstance(block, Heading)]
    assert heads[0] == "Cautions" and "Wind, for information only" in heads
