"""Which parameters a vent has a use for: one that does not apply changes nothing, or is refused when it is set."""

from __future__ import annotations

from typing import Any

import pytest
from making import EXAMPLES, job_of

from louverwright.core.checks import check
from louverwright.core.dimensions import plan_of
from louverwright.core.figures import figures
from louverwright.core.layout import layout
from louverwright.core.parameters import (
    BY_NAME,
    CONDITIONS,
    COUNT,
    MEASURED,
    PARAMETERS,
    STOCK,
    Parameter,
    applies,
    measured_name,
)
from louverwright.core.spec import Spec, as_measured

#: Stock of the same form as that of a use.
OTHER_STOCK = {"king_post_stock": "frame_stock", "ridge_stock": "plate_stock", "batten_stock": "trim_stock"}


def other(row: Parameter, values: dict[str, Any]) -> Any:
    """Another value of a parameter that is within its limits."""
    if row.kind == STOCK:
        return values[OTHER_STOCK[row.name]]
    if row.choices:
        return next(choice for choice in row.choices if choice != values[row.name])
    assert row.low is not None and row.high is not None
    value = row.low + 0.4 * (row.high - row.low)
    return round(value) if row.kind == COUNT else value


def made(spec: Spec) -> tuple[Any, ...]:
    """All that a vent is: boards and where they stand."""
    return tuple((part.mark, part.board, part.stock, part.pieces) for part in layout(spec).parts)


@pytest.mark.parametrize("name", EXAMPLES)
def test_what_does_not_apply_changes_nothing_or_is_refused(name: str) -> None:
    spec = job_of(name).spec
    values = dict(spec.values)
    idle = [row for row in PARAMETERS if not applies(row.name, values) and row.name != "screen_stock"]
    assert idle
    for row in idle:
        changed = as_measured({**values, row.name: other(row, values)})
        findings = check(changed)
        if findings:
            assert {finding.field for finding in findings} == {row.name}, row.name
            continue
        assert made(changed) == made(spec), row.name
        shaped = {key: value for key, value in figures(changed).items() if value != figures(spec)[key]}
        assert not shaped, (row.name, shaped)


@pytest.mark.parametrize("name", EXAMPLES)
def test_a_rectangle_is_told_as_the_plan_tells_it(name: str) -> None:
    spec = job_of(name).spec
    flat = {**spec.values, "roof_form": "hip"}
    assert applies("end_pitch", flat) == applies("ridge_stock", flat) == plan_of(spec).rectangle


def test_every_condition_holds_for_one_vent_and_not_for_another() -> None:
    every = [dict(job_of(name).spec.values) for name in EXAMPLES] if len(EXAMPLES) > 6 else []
    if not every:
        pytest.skip("needs all examples")
    every.append({**every[0], "screen": False, "mullion": "never", "slat_count": 5, "width": 0.0,
                  "hip_rafter_slope": 25.0, "floor_area": 100.0, "air_target": 0.0})
    for name in CONDITIONS:
        assert {applies(name, values) for values in every} == {True, False}, name


def test_conditions_name_parameters_and_read_as_only_so() -> None:
    assert set(CONDITIONS) <= set(BY_NAME)
    for condition in CONDITIONS.values():
        assert condition.words.split()[0] in ("astride", "under", "with", "where")
    with pytest.raises(KeyError):
        applies("widht", {})


def test_what_was_measured_on_stock_follows_its_stock() -> None:
    values = {**job_of(EXAMPLES[0]).spec.values, "screen": False}
    assert not applies("screen_stock", values) and not applies(measured_name("screen_stock", "thickness"), values)
    assert applies("frame_thickness", values)
    assert sum(1 for row in PARAMETERS if row.group == MEASURED and not applies(row.name, values)) > 1
