"""What the tests of JSON records share."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

import pytest

jsonschema = pytest.importorskip("jsonschema")


def strings(value: Any) -> Iterator[str]:
    """Every string in a piece of JSON."""
    if isinstance(value, str):
        yield value
    elif isinstance(value, dict):
        for each in value.values():
            yield from strings(each)
    elif isinstance(value, list):
        for each in value:
            yield from strings(each)


def says_everything(schema: dict[str, Any]) -> None:
    """Asserts that a schema is one, lets nothing else in, needs all it names, and describes it."""
    jsonschema.Draft202012Validator.check_schema(schema)
    for each in (schema, *(each for each in schema["$defs"].values() if each["type"] == "object")):
        assert each["additionalProperties"] is False and set(each["required"]) == set(each["properties"])
        assert all("description" in value or "const" in value or "$ref" in value for key, value in each["properties"].items()
                   if key != "units")
