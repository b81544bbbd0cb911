# SPDX-License-Identifier: LGPL-2.1-or-later
"""The pages made from the parameter table are those in resources, and the examples keep to the schema."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from louverwright.exchange.reference import parameters_page, scenario_schema

RESOURCES = Path(__file__).resolve().parents[2] / "resources"


def test_page_is_up_to_date() -> None:
    assert (RESOURCES / "parameters.md").read_text(encoding="utf-8") == parameters_page(), (
        "write it anew: python3 -m louverwright parameters --markdown > resources/parameters.md")


def test_schema_is_up_to_date() -> None:
    assert (RESOURCES / "scenario.schema.json").read_text(encoding="utf-8") == scenario_schema(), (
        "write it anew: python3 -m louverwright parameters --schema > resources/scenario.schema.json")


@pytest.mark.parametrize("path", sorted((RESOURCES / "examples").glob("*.json")), ids=lambda path: path.stem)
def test_examples_keep_to_the_schema(path: Path) -> None:
    jsonschema = pytest.importorskip("jsonschema")
    jsonschema.validate(json.loads(path.read_text(encoding="utf-8")), json.loads(scenario_schema()))


def test_schema_refuses_an_unknown_parameter() -> None:
    jsonschema = pytest.importorskip("jsonschema")
    with pytest.raises(jsonschema.ValidationError):
        jsonschema.validate({"louverwright": 1, "parameters": {"widht": 3}}, json.loads(scenario_schema()))
