# SPDX-License-Identifier: LGPL-2.1-or-later
"""The barn's roof as it is measured: pitches of both slopes, and how far the reading may be off.

Three ways are known: the included angle at the ridge, a reading on each slope, and rise over run.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Collection, Mapping
from dataclasses import dataclass
from typing import Any

from .saying import joined, say
from .texts import brief
from .units import ReadError, format_angle, format_pitch, parse_angle, parse_length

#: A pitch of this many degrees or more is no roof to stand a vent on.
STEEPEST = 75.0
#: A pitch that may be off by more degrees than this is not worth building to.
LARGEST_ERROR = 5.0
#: What a gauge's reading may be off where nothing is said (degrees; common practice).
GAUGE_ERROR = 0.5
#: What a tape's reading may be off where nothing is said (mm, about 1/16 in; common practice).
TAPE_ERROR = 1.5

_Findings = list[tuple[str, str]]


class SurveyError(ValueError):
    """A survey that cannot be used; ``findings`` are (key, sentence) pairs, the text is all sentences."""

    def __init__(self, findings: _Findings) -> None:
        super().__init__(joined("\n", (sentence for _, sentence in findings)))
        self.findings = tuple(findings)


@dataclass(frozen=True)
class Survey:
    """Pitches from the level and their uncertainty (degrees), with a sentence on how they were measured.

    Left and right are as seen looking along the vent's +X axis.  ``error`` is that of the worse slope.
    """

    pitch_left: float
    pitch_right: float
    error: float
    words: str


def from_ridge_angle(included: float, reading_error: float = GAUGE_ERROR) -> Survey:
    """Equal slopes from the included angle at the ridge, with the gauge's error (degrees).

    The pitch is 90° less half the angle, so its error is half the gauge's.  Raises SurveyError.
    """
    pitch, error = 90.0 - included / 2.0, reading_error / 2.0
    _refuse([*_angle_findings("ridge_angle", included, 180.0 - 2.0 * STEEPEST, 180.0),
             *_error_findings(reading_error, error)])
    words = say("Included angle at the ridge {included} ± {reading_error}: both slopes {pitch}, each ± {error}.",
                included=format_angle(included), reading_error=format_angle(reading_error), pitch=format_pitch(pitch),
                error=format_angle(error, 2))
    return Survey(pitch, pitch, error, words)


def from_ridge_angle_and_one_slope(included: float, slope: float, side: str,
                                   reading_error: float = GAUGE_ERROR) -> Survey:
    """Unequal slopes from the included angle and a reading on one slope ('left' or 'right'), in degrees.

    The other pitch is 180° less both, and carries both readings' errors.  Raises SurveyError, and
    ValueError for another side.
    """
    if side not in ("left", "right"):
        raise ValueError(f"“{side}” is no side of the ridge; write left or right.")
    findings = [*_slope_findings(f"slope_{side}", slope), *_error_findings(reading_error, 2.0 * reading_error)]
    other = 180.0 - included - slope
    other = 0.0 if abs(other) < 1e-9 else other    # a level slope, but for the last figure of the sum
    if not findings and not 0.0 <= other < STEEPEST:
        findings.append(("ridge_angle", say("“ridge_angle” is {included}, which with a {side} slope of {slope} leaves "
                                            "{other} for the other slope; that must be at least 0° and less than "
                                            "{steepest:g}°. Measure both again.", included=_degrees(included), side=say(side),
                                            slope=_degrees(slope), other=_degrees(other), steepest=STEEPEST)))
    _refuse(findings)
    left, right = (slope, other) if side == "left" else (other, slope)
    words = say("Included angle at the ridge {included} and {side} slope {slope}, each ± {reading_error}: left {left}, "
                "right {right}, the slope not read ± {error}.", included=format_angle(included), side=say(side),
                slope=format_angle(slope), reading_error=format_angle(reading_error), left=format_pitch(left),
                right=format_pitch(right), error=format_angle(2.0 * reading_error))
    return Survey(left, right, 2.0 * reading_error, words)


def from_two_slopes(left: float, right: float, reading_error: float = GAUGE_ERROR) -> Survey:
    """A reading on each slope, with the gauge's error (degrees from the level).  Raises SurveyError."""
    _refuse([*_slope_findings("slope_left", left), *(_slope_findings("slope_right", right) if right != left else ()),
             *_error_findings(reading_error, reading_error)])
    words = say("Read on the slopes: left {left}, right {right}, each ± {reading_error}.", left=format_pitch(left),
                right=format_pitch(right), reading_error=format_angle(reading_error))
    return Survey(left, right, reading_error, words)


def from_rise_and_run(rise_left: float, run_left: float, rise_right: float, run_right: float,
                      reading_error: float = TAPE_ERROR) -> Survey:
    """Rise over run on each slope, with the tape's error (mm).

    The pitch is atan(rise / run).  Its error is the most that it turns when rise and run are both off by the
    tape's error, in opposite senses; the larger of both slopes'.  Raises SurveyError.
    """
    left, right = (rise_left, run_left), (rise_right, run_right)
    findings = [] if reading_error >= 0.0 and math.isfinite(reading_error) else _error_findings(reading_error, 0.0)
    for side, (rise, run) in (("left", left), ("right", right))[: 1 if left == right else 2]:
        findings += _rise_findings(side, rise, run, reading_error)
    _refuse(findings)
    pitch_left, pitch_right = (math.degrees(math.atan2(rise, run)) for rise, run in (left, right))
    error = max(_tape_turns(*left, reading_error), _tape_turns(*right, reading_error))
    tape = f"{reading_error:.1f} mm"
    if error > LARGEST_ERROR:
        _refuse([("error", say("“error” is {tape}, which on so short a run turns the pitch by {error}; at most "
                               "{largest_error:g}° can be used. Measure a longer run.", tape=tape, error=_degrees(error),
                               largest_error=LARGEST_ERROR))])
    words = say("Rise over run: left {pitch_left}, right {pitch_right}, tape ± {tape}, which is ± {error}.",
                pitch_left=format_pitch(pitch_left), pitch_right=format_pitch(pitch_right), tape=tape,
                error=format_angle(error, 2))
    return Survey(pitch_left, pitch_right, error, words)


def _tape_turns(rise: float, run: float, error: float) -> float:
    """The most that atan(rise / run) turns, up or down, for readings off by ``error`` (degrees)."""
    pitch = math.atan2(rise, run)
    up = math.atan2(rise + error, run - error) - pitch
    return math.degrees(max(up, pitch - math.atan2(rise - error, run + error)))


def _rise_findings(side: str, rise: float, run: float, error: float) -> _Findings:
    """What is wrong with one slope's rise and run (mm)."""
    findings: _Findings = []
    if not (math.isfinite(rise) and rise >= 0.0):
        findings.append((f"rise_{side}", say("“rise_{side}” is {rise:g} mm; it must be 0 mm or more. Measure it up from "
                                             "the level.", side=side, rise=rise)))
    if not (math.isfinite(run) and run > max(error, 0.0)):
        findings.append((f"run_{side}", say("“run_{side}” is {run:g} mm; it must be more than the tape's error of "
                                            "{error:g} mm. Measure a longer run.", side=side, run=run, error=error)))
    return findings or _slope_findings(f"rise_{side}", math.degrees(math.atan2(rise, run)))


def _refuse(findings: _Findings) -> None:
    if findings:
        raise SurveyError(findings)


def _degrees(value: float) -> str:
    """Degrees to 0.01; also what is not finite."""
    return format_angle(value, 2) if math.isfinite(value) else f"{value}°"


def _slope_findings(key: str, pitch: float) -> _Findings:
    if 0.0 <= pitch < STEEPEST:
        return []
    return [(key, say("“{key}” gives a slope of {pitch}; it must be at least 0° and less than {steepest:g}°. Measure "
                      "again from the level.", key=key, pitch=_degrees(pitch), steepest=STEEPEST))]


def _angle_findings(key: str, angle: float, over: float, most: float) -> _Findings:
    if over < angle <= most:
        return []
    return [(key, say("“{key}” is {angle}; it must be more than {over:g}° and at most {most:g}°. Measure the angle "
                      "between the two slopes, from underneath.", key=key, angle=_degrees(angle), over=over, most=most))]


def _error_findings(reading: float, pitch_error: float) -> _Findings:
    """What is wrong with a reading's error, and with what it makes of the pitch's (degrees)."""
    if reading >= 0.0 and pitch_error <= LARGEST_ERROR:
        return []
    makes = "" if pitch_error == reading else say(", which puts the pitch off by {error}", error=_degrees(pitch_error))
    return [("error", say("“error” is {reading:g}{makes}; it must be at least 0, and the pitch may be off by at most "
                          "{largest_error:g}°. Measure again more closely.", reading=reading, makes=makes,
                          largest_error=LARGEST_ERROR))]


def opening_at_foot(half_width: float, pitch: float, error: float) -> float:
    """What a pitch that is off by ``error`` opens at the foot: A·(tan(p + δ) − tan p), mm.

    ``half_width`` is the level distance from the ridge to the foot (mm); angles in degrees, pitch and error
    together less than 90°.
    """
    p, d = math.radians(pitch), math.radians(error)
    return half_width * (math.tan(p + d) - math.tan(p))


_ANGLES = ("ridge_angle", "slope_left", "slope_right")
_LENGTHS = ("rise_left", "run_left", "rise_right", "run_right")
_KEYS = (*_ANGLES, *_LENGTHS, "error")


def survey_from_mapping(mapping: Mapping[str, Any], unit: str = "mm") -> Survey:
    """The survey of a scenario: ``ridge_angle``, ``slope_left``/``slope_right`` or ``rise_…``/``run_…``, and ``error``.

    Values are numbers or texts; ``unit`` is what a bare length means.  ``error`` is the gauge's (degrees), or the
    tape's where rise and run are given.  Where only the left slope is given both are equal.

    Raises SurveyError with every finding.
    """
    findings = [(key, say("“{key}” is not a reading; known are {keys}.", key=brief(key), keys=", ".join(_KEYS)))
                for key in mapping if key not in _KEYS]
    tape = any(key in mapping for key in _LENGTHS)
    values: dict[str, float] = {}
    for key in (k for k in _KEYS if k in mapping):
        try:
            long = key in _LENGTHS or (key == "error" and tape)
            values[key] = _reading(mapping[key], parse_length("1", unit) if long else 1.0,
                                   (lambda text: parse_length(text, unit)) if long else parse_angle)
        except ReadError as error:
            findings.append((key, say("“{key}”: {error}", key=key, error=error.args[0])))
    _refuse(findings + _missing(mapping.keys()))
    return _from_tape(values) if tape else _from_gauge(values)


def _reading(value: Any, size: float, reader: Callable[[str], float]) -> float:
    """A reading from JSON's number (in units of ``size``) or text.  Raises ReadError."""
    if isinstance(value, str):
        return reader(value)
    if isinstance(value, bool) or not isinstance(value, (int, float)) or not -1e9 < value < 1e9:
        raise ReadError(say("“{value}” is not a reading. Write a number, or a text with its unit.", value=brief(value, 20)))
    return value * size


def _missing(given: Collection[str]) -> _Findings:
    """Which readings lack others that they need, or say the same thing twice."""
    def pair(side: str) -> _Findings:
        both = (f"rise_{side}", f"run_{side}")
        return [(lacks, say("“{lacks}” is missing, and “{has}” means nothing without it. Give both.", lacks=lacks, has=has))
                for lacks, has in (both, both[::-1]) if lacks not in given and has in given]

    angles, lengths = ([k for k in keys if k in given] for keys in (_ANGLES, _LENGTHS))
    if angles and lengths:
        return [("survey", say("Angles ({angles}) and rise over run ({lengths}) are both given, and they may disagree. "
                               "Give one kind.", angles=", ".join(angles), lengths=", ".join(lengths)))]
    if lengths:
        left = [] if {"rise_left", "run_left"} & set(lengths) else [
            ("rise_left", say("“rise_left” and “run_left” are missing. Give them; the right slope alone is not enough."))]
        return [*left, *pair("left"), *pair("right")]
    if set(_ANGLES) <= set(angles):
        return [("ridge_angle", say("“ridge_angle” and both slopes are given, and they may disagree. Give the angle and "
                                    "one slope, or both slopes."))]
    if angles == ["slope_right"]:
        return [("slope_left", say("“slope_left” is missing. Give it or the ridge_angle; the right slope alone is not "
                                   "enough."))]
    return [] if angles else [("survey", say("The survey has no reading of the roof. Give ridge_angle, slope_left, or "
                                             "rise_left and run_left."))]


def _from_tape(values: Mapping[str, float]) -> Survey:
    rise, run = values["rise_left"], values["run_left"]
    return from_rise_and_run(rise, run, values.get("rise_right", rise), values.get("run_right", run),
                             values.get("error", TAPE_ERROR))


def _from_gauge(values: Mapping[str, float]) -> Survey:
    error = values.get("error", GAUGE_ERROR)
    if "ridge_angle" not in values:
        return from_two_slopes(values["slope_left"], values.get("slope_right", values["slope_left"]), error)
    for side in ("left", "right"):
        if f"slope_{side}" in values:
            return from_ridge_angle_and_one_slope(values["ridge_angle"], values[f"slope_{side}"], side, error)
    return from_ridge_angle(values["ridge_angle"], error)
