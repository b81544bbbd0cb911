# SPDX-License-Identifier: LGPL-2.1-or-later
"""The parameter table is sound, none of its rows is dead, and its defaults build with both shipped lists."""

from __future__ import annotations

import re
from functools import lru_cache
from pathlib import Path

import pytest
from making import ROOT, spec_of, vent

from louverwright.core.figures import OUTPUTS
from louverwright.core.joints import missing, undeclared
from louverwright.core.parameters import (
    ANGLE,
    BY_NAME,
    CHOICE,
    COUNT,
    LENGTH,
    MEASURED,
    NUMBER,
    PAPER,
    PARAMETERS,
    STOCK,
    SWITCH,
    TEXT,
    UNITS,
    VENT,
    Parameter,
    defaults,
    parameter,
)
from louverwright.core.spec import make_spec, vent_values
from louverwright.core.stock import FORMS
from louverwright.places import stock_list

NUMBERS = (LENGTH, ANGLE, COUNT, NUMBER)
#: Units that FreeCAD's expressions know: no property may be called as one is (from memory of its manual).
EXPRESSION_UNITS = {"mm", "cm", "m", "km", "um", "nm", "in", "ft", "mi", "yd", "thou", "deg", "rad", "gon",
                    "g", "kg", "mg", "t", "lb", "oz", "s", "min", "h", "N", "kN", "Pa", "J", "W", "V", "A", "K", "mol",
                    "cd", "l", "ml", "e", "pi"}
#: Properties that FreeCAD itself gives an object (from memory of its manual).
TAKEN = {"Label", "Label2", "Visibility", "ExpressionEngine", "Shape", "Placement", "Proxy", "Group", "Document",
         "Name"}


def rows(*kinds: str) -> list[Parameter]:
    """The rows of some kinds."""
    return [row for row in PARAMETERS if row.kind in kinds]


@lru_cache(maxsize=1)
def readers() -> str:
    """The source of every module that may read a parameter; not the table, nor what treats all rows alike."""
    package = ROOT / "workbench" / "louverwright"
    rooms = ("core", "report", "exchange", "features")
    files = [path for room in rooms for path in sorted((package / room).glob("*.py"))
             if path.name not in ("parameters.py", "reference.py")]
    return "\n".join(path.read_text(encoding="utf-8") for path in files)


def is_read(name: str) -> bool:
    """Whether some module takes the parameter from a spec, or by its name from the values."""
    return re.search(rf"\bspec\.{name}\b|values(?:\[|\.get\()\s*\"{name}\"", readers()) is not None


def changes_stock(row: Parameter) -> bool:
    """Whether a row of what was measured changes the very stock it is named after, and no other."""
    assert row.high is not None
    plain, told = make_spec({}, stock_list("us")), make_spec({row.name: 0.9 * row.high}, stock_list("us"))
    uses = [each.name for each in rows(STOCK) if plain.values[each.name] != told.values[each.name]]
    what = row.name.rsplit("_", 1)[1]
    return uses == [f"{row.name.removesuffix('_' + what)}_stock"] and getattr(
        told.values[uses[0]], what) == 0.9 * row.high


def test_names_are_unique_and_plain() -> None:
    names = [row.name for row in PARAMETERS]
    assert len(set(names)) == len(names) == len(BY_NAME)
    assert all(re.fullmatch(r"[a-z]+(_[a-z]+)*", name) for name in names)
    assert all(parameter(name) is BY_NAME[name] for name in names)
    with pytest.raises(KeyError):
        parameter("widht")


def test_property_names_are_unique_and_free() -> None:
    names = [row.property_name for row in PARAMETERS] + [row.property_name for row in OUTPUTS]
    assert len(set(names)) == len(names), "parameters and outputs are properties of one object"
    assert not set(names) & (EXPRESSION_UNITS | TAKEN)
    assert BY_NAME["roof_pitch"].property_name == "RoofPitch" and BY_NAME["roof_pitch"].label == "roof pitch"


def test_no_parameter_is_called_as_something_else_of_a_spec() -> None:
    plain = {"values", "count", "index", "keys", "items"}
    assert not plain & set(BY_NAME), "a spec is read by attributes"


def test_kinds_and_units() -> None:
    assert {row.kind for row in PARAMETERS} == {LENGTH, ANGLE, COUNT, NUMBER, CHOICE, SWITCH, TEXT, STOCK} == set(UNITS)
    assert {row.unit for row in rows(LENGTH)} == {"mm"} and {row.unit for row in rows(ANGLE)} == {"°"}
    assert {row.scope for row in PARAMETERS} == {VENT, PAPER}
    assert all(re.fullmatch(r"\d+\.\d+\.\d+", row.since) for row in PARAMETERS)


@pytest.mark.parametrize("row", PARAMETERS, ids=lambda row: row.name)
def test_docs_are_sentences(row: Parameter) -> None:
    assert row.doc.endswith(".") and not row.doc.endswith("..")
    assert row.doc[0].isupper() and "  " not in row.doc
    assert row.group and (row.auto == "" or row.auto[-1] not in ".;")


@pytest.mark.parametrize("row", rows(*NUMBERS), ids=lambda row: row.name)
def test_a_number_has_limits_and_a_default_within_them(row: Parameter) -> None:
    assert row.low is not None and row.high is not None and row.low <= row.high
    assert isinstance(row.default, int if row.kind == COUNT else float)
    assert (row.auto and row.default == 0) or row.low <= row.default <= row.high
    assert not row.auto or row.low >= 0, "0 stands for automatic, so it lies below or at the limits"
    assert not row.choices and not row.forms


@pytest.mark.parametrize("row", rows(*NUMBERS), ids=lambda row: row.name)
def test_the_limits_themselves_are_allowed_but_for_an_open_one(row: Parameter) -> None:
    stock = stock_list("us")
    assert row.low is not None and row.high is not None
    highest = row.high * (1.0 - 1e-9) if row.open_high else row.high
    for value in (row.low, highest, row.default):
        assert make_spec({row.name: value}, stock).values[row.name] == value


def test_choices_switches_and_stock() -> None:
    for row in rows(CHOICE):
        assert row.default == row.choices[0] and len(set(row.choices)) == len(row.choices) > 1, row.name
    assert all(isinstance(row.default, bool) for row in rows(SWITCH))
    assert all(isinstance(row.default, str) for row in rows(TEXT, STOCK))
    for row in rows(STOCK):
        assert row.forms and set(row.forms) <= set(FORMS) and row.default == "", row.name


def test_defaults_are_all_the_rows() -> None:
    assert defaults() == {row.name: row.default for row in PARAMETERS}
    values = defaults()
    values["width"] = 0.0
    assert defaults()["width"] == BY_NAME["width"].default


@pytest.mark.parametrize("row", PARAMETERS, ids=lambda row: row.name)
def test_no_parameter_is_dead(row: Parameter) -> None:
    assert changes_stock(row) if row.group == MEASURED else is_read(row.name), f"nothing reads {row.name}"


def test_a_dead_parameter_would_be_noticed() -> None:
    assert not is_read("colour_of_the_vane") and not is_read("widt")


def test_what_is_measured_has_rows_for_every_stock() -> None:
    names = [row.name for row in PARAMETERS if row.group == MEASURED]
    assert {"frame_thickness", "frame_width", "frame_moisture", "king_post_width", "corner_board_moisture"} <= set(names)
    for row in rows(STOCK):
        use = row.name.removesuffix("_stock")
        own = {name.removeprefix(f"{use}_") for name in names if name.removeprefix(f"{use}_") in
               ("thickness", "width", "moisture") and name.startswith(f"{use}_")}
        wanted = {("sheet",): {"thickness", "moisture"}, ("mesh",): {"thickness"}}
        assert own == wanted.get(row.forms, {"thickness", "width", "moisture"}), row.name
    assert all(BY_NAME[name].default == 0.0 and BY_NAME[name].auto for name in names)


@pytest.mark.parametrize("name", ["us", "eu"])
def test_the_defaults_build(name: str) -> None:
    stock = stock_list(name)
    assembly = vent(stock)
    assert len(assembly.pieces) > 100
    assert undeclared(assembly) == [] and missing(assembly, spec_of(stock)) == []


def test_what_only_changes_the_paper_is_not_of_the_vent() -> None:
    spec = spec_of()
    assert set(spec.values) - set(vent_values(spec)) == {row.name for row in PARAMETERS if row.scope == PAPER}


def test_the_page_of_parameters_names_every_one() -> None:
    page = (Path(ROOT) / "resources" / "parameters.md").read_text(encoding="utf-8")
    assert all(f"| `{row.name}` | `{row.property_name}` |" in page for row in PARAMETERS)
