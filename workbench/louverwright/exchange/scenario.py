# SPDX-License-Identifier: LGPL-2.1-or-later
"""Scenario files: a vent as a JSON file that a person writes.

    {"louverwright": 1, "units": "in", "revision": "A",
     "survey": {"slope_left": "8:12", "error": "0.5°"},
     "parameters": {"project": "Hay barn", "ridge_length": "28 ft", "width": 0},
     "parts": {"louver.screen": {"left_out": true, "note": "from the old vent"}}}

``units`` says what a bare length means; a text may always carry its own unit.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

from ..core.parameters import ANGLE, BY_NAME, COUNT, LENGTH, NUMBER, SWITCH, Parameter
from ..core.part_wish import LEFT_OUT, NO_WISHES, NOTE, STOCK, PartWish, Wishes
from ..core.saying import joined, say
from ..core.survey import SurveyError, survey_from_mapping
from ..core.texts import ENDLESS, brief
from ..core.units import ReadError, parse_angle, parse_length, parse_number, parse_yes_no
from ..places import FileFault, read_json, why_unread

VERSION = 1
UNITS = ("mm", "cm", "m", "in", "ft")
KEYS = ("louverwright", "units", "revision", "survey", "parameters", "parts", "remark")
#: What may be wished for a kind of part, and what it is written as.
WISH_KEYS: Mapping[str, type] = {STOCK: str, NOTE: str, LEFT_OUT: bool}
_MM = {"mm": 1.0, "cm": 10.0, "m": 1000.0, "in": 25.4, "ft": 304.8}


class ScenarioError(ValueError):
    """A scenario that cannot be used; ``findings`` are (key, sentence) pairs, all of them."""

    def __init__(self, findings: list[tuple[str, str]]) -> None:
        super().__init__(joined("\n", (joined(": ", each) for each in findings)))
        self.findings = tuple(findings)


@dataclass(frozen=True)
class Scenario:
    """Parameter values (mm, degrees), the revision, the folder that relative paths start from, and wishes for single kinds."""

    values: Mapping[str, Any]
    revision: str
    folder: Path
    parts: Wishes = field(default_factory=lambda: NO_WISHES)


def read_scenario(path: Path) -> Scenario:
    """Reads a file.  Raises ScenarioError with every finding, also for a file that is no JSON."""
    return scenario_from(parsed(path), path.parent)


def parsed(path: Path) -> Any:
    """A JSON file's content.  Raises ScenarioError with a sentence."""
    try:
        return read_json(path)
    except (OSError, FileFault) as error:
        raise ScenarioError([(brief(path.name), why_unread(error))]) from error


def scenario_from(data: Any, folder: Path) -> Scenario:
    """A scenario from parsed JSON.  Raises ScenarioError with every finding."""
    if not isinstance(data, Mapping):
        raise ScenarioError([("scenario", say("A scenario is an object with parameters."))])
    findings = [(brief(key), f"It is not a key of a scenario; known are {', '.join(KEYS)}.") for key in data
                if key not in KEYS]
    if data.get("louverwright") != VERSION or isinstance(data["louverwright"], bool):
        findings.append(("louverwright", f"It must be {VERSION}, the version of the scenario format."))
    unit = data.get("units", "mm")
    if unit not in UNITS:
        findings.append(("units", f"“{brief(unit)}” is not one of {', '.join(UNITS)}."))
        unit = "mm"
    revision = data.get("revision", "1")
    if isinstance(revision, bool) or not isinstance(revision, (str, int)):
        findings.append(("revision", f"“{brief(revision)}” is not a revision. Put it in quotes."))
    values = _values(data.get("parameters", {}), unit, findings)
    values |= _survey(data.get("survey"), values, unit, findings)
    parts = wishes_from(data.get("parts", {}), findings)
    if findings:
        raise ScenarioError(findings)
    return Scenario(values, str(revision), folder, parts)


def _values(given: Any, unit: str, findings: list[tuple[str, str]]) -> dict[str, Any]:
    if not isinstance(given, Mapping):
        findings.append(("parameters", "It must be an object of names and values."))
        return {}
    values: dict[str, Any] = {}
    for name, value in given.items():
        if name not in BY_NAME:
            findings.append((f"parameters.{brief(name)}", "It is not a parameter; “louverwright parameters” lists them."))
            continue
        try:
            values[name] = value_from(BY_NAME[name], value, unit)
        except ReadError as error:
            findings.append((f"parameters.{name}", str(error)))
    return values


def value_from(row: Parameter, value: Any, unit: str = "mm") -> Any:
    """A parameter's value (mm, degrees) from JSON's number or text.  Raises ReadError."""
    if row.kind == SWITCH:
        return value if isinstance(value, bool) else parse_yes_no(str(value))
    if row.kind not in (LENGTH, ANGLE, COUNT, NUMBER):
        if not isinstance(value, str):
            raise ReadError(say("“{value}” is not text. Put it in quotes.", value=brief(value)))
        return value
    number = _written(row, value, unit) if isinstance(value, str) else _bare(row, value, unit)
    return int(number) if row.kind == COUNT and number == int(number) else number


def _written(row: Parameter, text: str, unit: str) -> float:
    if row.kind == LENGTH:
        return parse_length(text, unit)
    return parse_angle(text) if row.kind == ANGLE else parse_number(text)


def _bare(row: Parameter, value: Any, unit: str) -> float:
    """A number as JSON has it; neither NaN nor one that is too large for a float."""
    if isinstance(value, bool) or not isinstance(value, (int, float)) or not -ENDLESS < value < ENDLESS:
        raise ReadError(say("“{value}” is not a number. Write figures, or a text with its unit.", value=brief(value)))
    return value * _MM[unit] if row.kind == LENGTH else value


def wishes_from(given: Any, findings: list[tuple[str, str]]) -> Wishes:
    """Wishes by kinds' ids from parsed JSON; what is wrong is added to ``findings``.

    Whether there are such kinds, and such stock, the core says.
    """
    if not isinstance(given, Mapping):
        findings.append(("parts", "It must be an object of kinds of part and what is wished for each."))
        return NO_WISHES
    wishes: dict[str, PartWish] = {}
    for kind, told in given.items():
        if not isinstance(told, Mapping):
            findings.append((f"parts.{brief(kind)}", f"It must be an object with {', '.join(WISH_KEYS)}."))
            continue
        wrong = list(_wish_findings(kind, told))
        findings += wrong
        if not wrong:
            wishes[kind] = PartWish(**told)
    return wishes


def _wish_findings(kind: str, told: Mapping[str, Any]) -> Iterator[tuple[str, str]]:
    for key, value in told.items():
        if key not in WISH_KEYS:
            yield f"parts.{brief(kind)}.{brief(key)}", f"It is not a key of a part's wish; known are {', '.join(WISH_KEYS)}."
        elif not isinstance(value, WISH_KEYS[key]):
            cure = "is not text. Put it in quotes." if WISH_KEYS[key] is str else "must be true or false."
            yield f"parts.{brief(kind)}.{key}", f"“{brief(value)}” {cure}"


def _survey(given: Any, values: Mapping[str, Any], unit: str, findings: list[tuple[str, str]]) -> dict[str, Any]:
    """Pitches, error and note from the survey's readings."""
    if given is None:
        return {}
    if not isinstance(given, Mapping):
        findings.append(("survey", "It must be an object of readings."))
        return {}
    twice = [name for name in ("pitch_left", "pitch_right", "pitch_error") if name in values]
    findings += [(f"parameters.{name}", "The survey gives it already. Give it in one place.") for name in twice]
    try:
        survey = survey_from_mapping(given, unit)
    except SurveyError as error:
        findings += [(key if key == "survey" else f"survey.{brief(key)}", sentence) for key, sentence in error.findings]
        return {}
    return {"pitch_left": survey.pitch_left, "pitch_right": survey.pitch_right, "pitch_error": survey.error,
            "survey_note": values.get("survey_note", survey.words)}
