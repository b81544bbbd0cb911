# SPDX-License-Identifier: LGPL-2.1-or-later
"""A parameter's value as text and back: what its kind reads and how it is written.  Knows no widgets."""

from __future__ import annotations

import math
from typing import Any

from ..core.parameters import ANGLE, COUNT, LENGTH, NUMBER, Parameter
from ..core.saying import say
from ..core.units import (
    LengthStyle,
    ReadError,
    format_angle,
    format_length,
    parse_angle,
    parse_count,
    parse_length,
    parse_number,
)

#: How far one press of an arrow key or one notch of a slider goes, by kind and system of units (mm, degrees).
STEPS = {(LENGTH, "mm"): 5.0, (LENGTH, "in"): 6.35, (LENGTH, "ft-in"): 6.35}
_OTHER_STEPS = {ANGLE: 0.5, COUNT: 1.0, NUMBER: 0.05}
#: A value with more notches than this has no slider: a hand could not place it.
MOST_NOTCHES = 800


def automatic(row: Parameter, value: Any) -> bool:
    """Whether a value stands for one that follows by itself."""
    return bool(row.auto) and value == (row.default if row.default == -1 else 0)


def automatic_value(row: Parameter) -> Any:
    """The value that stands for one that follows by itself."""
    return row.default if row.default == -1 else 0


def written(row: Parameter, value: Any, style: LengthStyle) -> str:
    """A value in its field: with its unit, as finely as it may matter; '' for an automatic one."""
    if automatic(row, value):
        return ""
    if row.kind == LENGTH:
        return format_length(float(value), style)
    if row.kind == ANGLE:
        return format_angle(float(value), 2)
    return f"{value:g}" if row.kind == NUMBER else str(value)


def read(row: Parameter, text: str, style: LengthStyle) -> Any:
    """The value (mm, degrees) of a field's text; nothing is the automatic value.  Raises ReadError."""
    if not text.strip():
        if row.auto:
            return automatic_value(row)
        raise ReadError(say("{label} is empty. Give it a value.", label=say(row.label.capitalize())))
    if row.kind == LENGTH:
        return parse_length(text, "mm" if style.system == "mm" else "in")
    if row.kind == ANGLE:
        return parse_angle(text)
    if row.kind == COUNT:
        return parse_count(text)
    return parse_number(text)


def step_of(row: Parameter, style: LengthStyle) -> float:
    """One notch (mm, degrees, or of the number)."""
    if row.kind == LENGTH:
        return STEPS[row.kind, style.system]
    return _OTHER_STEPS[row.kind]


def stepped(row: Parameter, value: float, notches: int, style: LengthStyle) -> float:
    """A value moved by so many notches, onto a whole notch and within the row's limits."""
    step = step_of(row, style)
    moved = (math.floor(value / step + 1e-6) if notches > 0 else math.ceil(value / step - 1e-6)) * step + notches * step
    return within(row, moved)


def within(row: Parameter, value: float) -> float:
    """The nearest value that the row's limits allow; a whole number for a count."""
    low = -math.inf if row.low is None else row.low
    high = math.inf if row.high is None else row.high - (0.1 if row.open_high else 0.0)
    held = min(max(value, low), high)
    return round(held) if row.kind == COUNT else round(held, 6)


def notches(row: Parameter, style: LengthStyle) -> int:
    """How many notches lie between the row's limits; 0 for a row that a slider cannot serve."""
    if row.low is None or row.high is None:
        return 0
    count = math.ceil((row.high - row.low) / step_of(row, style))
    return count if count <= MOST_NOTCHES else 0
