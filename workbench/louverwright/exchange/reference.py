# SPDX-License-Identifier: LGPL-2.1-or-later
"""The parameter table as people and programs read it: text, a page, JSON, and the JSON Schema of scenario files."""

from __future__ import annotations

import json
from typing import Any

from ..core.kinds import KINDS, Kind
from ..core.parameters import ANGLE, CHOICE, COUNT, LENGTH, NUMBER, PARAMETERS, SWITCH, TEXT, Parameter
from ..core.part_wish import LEFT_OUT, NOTE, STOCK
from ..core.spec import shown
from ..report.job import plain
from .scenario import UNITS, VERSION, WISH_KEYS


def default_text(row: Parameter) -> str:
    """The default in words."""
    if row.kind == SWITCH:
        return "yes" if row.default else "no"
    return row.auto if row.auto and row.default in (0, "") else shown(row, row.default)


def limits_text(row: Parameter) -> str:
    """The limits in words."""
    if row.kind == CHOICE:
        return ", ".join(row.choices)
    if row.kind == TEXT:
        return f"at most {row.high:g} characters"
    if row.low is None or row.high is None:
        return " or ".join(row.forms)
    return f"{shown(row, row.low)} to {'under ' if row.open_high else ''}{shown(row, row.high)}"


def parameters_text() -> str:
    """One parameter after another, for a terminal."""
    return "".join(f"{row.name}  [{row.group}; {row.kind}; default: {default_text(row)}]\n    {row.doc}\n"
                   for row in PARAMETERS)


def parameters_json() -> str:
    """The rows as JSON."""
    return json.dumps([plain(row) for row in PARAMETERS], ensure_ascii=False, indent=1) + "\n"


def parameters_page() -> str:
    """The page ``resources/parameters.md``."""
    lines = ["# Parameters", "", "Made from the parameter table by `python3 -m louverwright parameters --markdown`. `0` (or",
             "an empty stock name) stands for what *Default* says in words."]
    for group in dict.fromkeys(row.group for row in PARAMETERS):
        lines += ["", f"## {group}", "", "| scenario key | property | what it is | default | limits |",
                  "|---|---|---|---|---|"]
        lines += [f"| `{row.name}` | `{row.property_name}` | {row.doc} | {default_text(row)} | {limits_text(row)} |"
                  for row in PARAMETERS if row.group == group]
    return "\n".join(lines) + "\n"


def _value_schema(row: Parameter) -> dict[str, Any]:
    schema: dict[str, Any] = {"description": f"{row.doc} Default: {default_text(row)}."}
    if row.kind in (LENGTH, ANGLE, NUMBER, COUNT):
        return schema | {"type": ["integer" if row.kind == COUNT else "number", "string"]}
    if row.kind == CHOICE:
        return schema | {"enum": list(row.choices)}
    return schema | {"type": ["boolean", "string"] if row.kind == SWITCH else "string"}


def _wish_schema(kind: Kind) -> dict[str, Any]:
    return {"description": f"{kind.mark}, {kind.name[0].lower()}{kind.name[1:]}.", "$ref": "#/$defs/wish"}


def _wish() -> dict[str, Any]:
    """What may be wished for any kind."""
    docs = {STOCK: "Own stock, by its name in the vent's stock list, of the form and the size that the vent's has there.",
            NOTE: "A note that is printed on the part's sheet and in the cut list.",
            LEFT_OUT: "Not made here: in no model, count or weight; the report lists it as left out."}
    types = {str: "string", bool: "boolean"}
    return {"type": "object", "additionalProperties": False,
            "properties": {key: {"type": types[kind], "description": docs[key]} for key, kind in WISH_KEYS.items()}}


def scenario_schema() -> str:
    """The JSON Schema ``resources/scenario.schema.json``: keys and kinds; limits are checked by the program."""
    reading = {"type": ["number", "string"]}
    survey = ("ridge_angle", "slope_left", "slope_right", "rise_left", "run_left", "rise_right", "run_right", "error")
    schema = {
        "$schema": "https://json-schema.org/draft/2020-12/schema",
        "title": "Louverwright scenario", "type": "object", "required": ["louverwright"], "additionalProperties": False,
        "properties": {
            "louverwright": {"const": VERSION, "description": "Version of the scenario format."},
            "units": {"enum": list(UNITS), "description": "What a bare length means; mm if not given."},
            "revision": {"type": "string"}, "remark": {"type": "string"},
            "survey": {"type": "object", "additionalProperties": False, "properties": dict.fromkeys(survey, reading)},
            "parameters": {"type": "object", "additionalProperties": False,
                           "properties": {row.name: _value_schema(row) for row in PARAMETERS}},
            "parts": {"type": "object", "additionalProperties": False,
                      "description": "What is wished for single kinds of part, by their ids.",
                      "properties": {kind.id: _wish_schema(kind) for kind in KINDS}},
        },
        "$defs": {"wish": _wish()},
    }
    return json.dumps(schema, ensure_ascii=False, indent=1) + "\n"
