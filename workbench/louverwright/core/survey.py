# SPDX-License-Identifier: LGPL-2.1-or-later
"""The barn's roof as it is measured: pitches of both slopes, and how far the reading may be off.

Three ways are known: the included angle at the ridge, a reading on each slope, and rise over run.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import Any

from .units import ReadError, format_angle, format_pitch, parse_angle, parse_length

#: A pitch of this many degrees or more is no roof to stand a vent on.
STEEPEST = 75.0


class SurveyError(ValueError):
    """A survey that cannot be used; ``findings`` are (key, sentence) pairs, the text is all sentences."""

    def __init__(self, findings: list[tuple[str, str]]) -> None:
        super().__init__("\n".join(sentence for _, sentence in findings))
        self.findings = tuple(findings)


@dataclass(frozen=True)
class Survey:
    """Pitches from the level and their uncertainty (degrees), with a sentence on how they were measured."""

    pitch_left: float
    pitch_right: float
    error: float
    words: str


def from_ridge_angle(included: float, reading_error: float = 0.5) -> Survey:
    """Equal slopes from the included angle at the ridge (degrees).

    The pitch is 90° less half the angle, so its error is half the gauge's.  Raises SurveyError.
    """
    pitch = _checked("ridge_angle", 90.0 - included / 2.0)
    words = (f"Included angle at the ridge {format_angle(included)} ± {format_angle(reading_error)}: both slopes "
             f"{format_pitch(pitch)}, each ± {format_angle(reading_error / 2.0, 2)}.")
    return Survey(pitch, pitch, reading_error / 2.0, words)


def from_ridge_angle_and_one_slope(included: float, slope: float, side: str, reading_error: float = 0.5) -> Survey:
    """Unequal slopes from the included angle and a reading on one slope ('left' or 'right').

    The other pitch is 180° less both, and carries both readings' errors.  Raises SurveyError.
    """
    other = _checked("ridge_angle", 180.0 - included - slope)
    slope = _checked(f"slope_{side}", slope)
    left, right = (slope, other) if side == "left" else (other, slope)
    words = (f"Included angle at the ridge {format_angle(included)} and {side} slope {format_angle(slope)}, each "
             f"± {format_angle(reading_error)}: left {format_pitch(left)}, right {format_pitch(right)}, the slope not "
             f"read ± {format_angle(2.0 * reading_error)}.")
    return Survey(left, right, 2.0 * reading_error, words)


def from_two_slopes(left: float, right: float, reading_error: float = 0.5) -> Survey:
    """A reading on each slope (degrees from the level).  Raises SurveyError."""
    left, right = _checked("slope_left", left), _checked("slope_right", right)
    words = (f"Read on the slopes: left {format_pitch(left)}, right {format_pitch(right)}, each ± "
             f"{format_angle(reading_error)}.")
    return Survey(left, right, reading_error, words)


def from_rise_and_run(rise_left: float, run_left: float, rise_right: float, run_right: float,
                      reading_error: float = 1.5) -> Survey:
    """Rise over run on each slope, with the tape's error (mm).

    The pitch's error is the larger of both slopes' atan((rise + e)/(run − e)) less atan(rise/run).  Raises SurveyError.
    """
    pitches, errors = [], []
    for name, rise, run in (("left", rise_left, run_left), ("right", rise_right, run_right)):
        if run <= reading_error or rise < 0.0:
            raise SurveyError([(f"run_{name}", f"A rise of {rise:g} mm over a run of {run:g} mm is no slope: the run "
                                f"must be more than the tape's error of {reading_error:g} mm. Measure a longer run.")])
        pitch = math.degrees(math.atan2(rise, run))
        pitches.append(_checked(f"rise_{name}", pitch))
        errors.append(math.degrees(math.atan2(rise + reading_error, run - reading_error)) - pitch)
    words = (f"Rise over run: left {format_pitch(pitches[0])}, right {format_pitch(pitches[1])}, tape "
             f"± {reading_error:g} mm, which is ± {format_angle(max(errors), 2)}.")
    return Survey(pitches[0], pitches[1], max(errors), words)


def _checked(key: str, pitch: float) -> float:
    if not 0.0 <= pitch < STEEPEST:
        raise SurveyError([(key, f"“{key}” gives a slope of {format_angle(pitch)}; it must be at least 0.0° and less than "
                            f"{format_angle(STEEPEST)}. Measure again from the level.")])
    return pitch


def opening_at_foot(half_width: float, pitch: float, error: float) -> float:
    """What a pitch that is off by ``error`` opens at the foot: A·(tan(p + δ) − tan p), mm.

    ``half_width`` is the distance from the ridge to the foot (mm), angles in degrees.
    """
    p, d = math.radians(pitch), math.radians(error)
    return half_width * (math.tan(p + d) - math.tan(p))


_ANGLES = ("ridge_angle", "slope_left", "slope_right")
_LENGTHS = ("rise_left", "run_left", "rise_right", "run_right")


def survey_from_mapping(mapping: Mapping[str, Any]) -> Survey:
    """The survey of a scenario: ``ridge_angle``, ``slope_left``/``slope_right`` or ``rise_…``/``run_…``, and ``error``.

    Where only the left slope is given both are equal.  Raises SurveyError with every finding.
    """
    known = (*_ANGLES, *_LENGTHS, "error")
    findings = [(key, f"“{key}” is not a reading; known are {', '.join(known)}.") for key in mapping if key not in known]
    tape = any(key in mapping for key in _LENGTHS)
    values: dict[str, float] = {}
    for key in (k for k in mapping if k in known):
        reader = parse_length if key in _LENGTHS or (key == "error" and tape) else parse_angle
        _read(key, mapping[key], reader, values, findings)
    if findings:
        raise SurveyError(findings)
    return _made(values, tape)


def _read(key: str, text: Any, reader: Callable[..., float], values: dict[str, float],
          findings: list[tuple[str, str]]) -> None:
    try:
        values[key] = float(text) if isinstance(text, (int, float)) else reader(str(text))
    except ReadError as error:
        findings.append((key, f"“{key}”: {error}"))


def _made(values: dict[str, float], tape: bool) -> Survey:
    if tape:
        rise, run = values.get("rise_left", 0.0), values.get("run_left", 0.0)
        return from_rise_and_run(rise, run, values.get("rise_right", rise), values.get("run_right", run),
                                 values.get("error", 1.5))
    error = values.get("error", 0.5)
    if "ridge_angle" in values:
        if "slope_left" in values and "slope_right" in values:
            raise SurveyError([("ridge_angle", "The ridge angle and both slopes are given, and they may disagree. "
                                "Give the angle and one slope, or both slopes.")])
        for side in ("left", "right"):
            if f"slope_{side}" in values:
                return from_ridge_angle_and_one_slope(values["ridge_angle"], values[f"slope_{side}"], side, error)
        return from_ridge_angle(values["ridge_angle"], error)
    if "slope_left" not in values:
        raise SurveyError([("survey", "The survey has no reading of the roof. Give ridge_angle, slope_left or rise_left "
                            "and run_left.")])
    return from_two_slopes(values["slope_left"], values.get("slope_right", values["slope_left"]), error)
