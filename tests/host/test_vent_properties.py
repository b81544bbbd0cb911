"""The vent's properties: made from the tables, read with their units, kept through releases."""

from __future__ import annotations

import json
import sys
from pathlib import Path

import FreeCAD
import pytest

sys.path.append(str(Path(__file__).resolve().parent))
from vents import model, not_settled, part

from louverwright.core import figures as results
from louverwright.core.figures import OUTPUTS, figures
from louverwright.core.parameters import PARAMETERS, STOCK, defaults, parameter
from louverwright.features import migrations, properties
from louverwright.features.model import spec_of
from louverwright.features.properties import tooltip, values_of
from louverwright.features.vent import make_vent, parts_of

EXPECTED = {"width": "App::PropertyLength", "ridge_offset": "App::PropertyDistance", "slat_angle": "App::PropertyAngle",
            "slat_count": "App::PropertyInteger", "width_rule": "App::PropertyFloat",
            "corner": "App::PropertyEnumeration", "screen": "App::PropertyBool", "project": "App::PropertyString",
            "slat_stock": "App::PropertyString"}


@pytest.fixture
def document():
    made = FreeCAD.newDocument("Barn")
    yield made
    for each in FreeCAD.listDocuments():    # a test may have closed it and opened another
        FreeCAD.closeDocument(each)


@pytest.fixture
def vent(document):
    return make_vent(document)


def status_after(vent, name, expression):
    """The vent's status once an expression is bound (None: taken away)."""
    vent.setExpression(name, expression)
    vent.Document.recompute()
    return vent.getStatusString()


def is_unit(name):
    """Whether FreeCAD takes a name for a unit; then no expression can use it for a property."""
    try:
        return bool(FreeCAD.Units.Quantity(f"1 {name}"))
    except (ValueError, ArithmeticError, RuntimeError, FreeCAD.Base.ParserError):
        return False


# ---- made from the tables


def test_every_parameter_is_a_property_with_its_default(vent) -> None:
    assert values_of(vent) == defaults()
    for row in PARAMETERS:
        assert vent.getGroupOfProperty(row.property_name) == row.group
        assert vent.getDocumentationOfProperty(row.property_name) == tooltip(row)
    for name, type_name in EXPECTED.items():
        assert vent.getTypeIdOfProperty(parameter(name).property_name) == type_name
    assert list(vent.getEnumerationsOfProperty("Corner")) == ["butt", "mitred"]


def test_tooltips_tell_limits_and_what_nothing_means() -> None:
    assert tooltip(parameter("slat_count")) == ("Slats in one panel, without the sill. 1 to 60. 0: the fewest that hide "
                                                "the sky at the rain angle.")
    assert "0.00° to less than 75.00°." in tooltip(parameter("pitch_left"))
    assert tooltip(parameter("slat_stock")).endswith("Empty: the list's usual stock for this use.")


def test_no_property_has_the_name_of_another_or_of_a_unit() -> None:
    names = [row.property_name for row in (*PARAMETERS, *OUTPUTS)] + [row.name for row in properties.OWN_ROWS]
    assert len(set(names)) == len(names)
    assert [name for name in ("W", *names) if is_unit(name)] == ["W"]


def test_results_are_the_cores_figures_and_read_only(vent) -> None:
    values = figures(spec_of(vent))
    for output in OUTPUTS:
        value = getattr(vent, output.property_name)
        assert getattr(value, "Value", value) == pytest.approx(values[output.name]), output.name
        assert "ReadOnly" in vent.getEditorMode(output.property_name)
        if output.kind in (results.LENGTH, results.AREA, results.ANGLE):
            assert value.Unit.Type == {results.LENGTH: "Length", results.AREA: "Area",
                                       results.ANGLE: "Angle"}[output.kind]
        if output.kind == results.WEIGHT:
            assert "kg" in vent.getDocumentationOfProperty(output.property_name)


def test_given_parameters_stand_in_the_properties(document) -> None:
    given = {"width": 1000.0, "slat_angle": 40.0, "corner": "mitred", "screen": False, "project": "Hay barn",
             "rafters_per_side": 2, "width_rule": 1.3, "ridge_offset": -20.0}
    vent = make_vent(document, **given)
    assert values_of(vent) == {**defaults(), **given}
    assert not_settled(document) == []


# ---- expressions and units


def test_parameters_follow_a_spreadsheet(vent, document) -> None:
    sheet = document.addObject("Spreadsheet::Sheet", "Sizes")
    sheet.set("A1", "=1100 mm")
    sheet.setAlias("A1", "vent_width")
    document.recompute()
    assert status_after(vent, "Width", "Sizes.vent_width") == "Valid"
    assert vent.OverallWidth.Value == pytest.approx(1100.0)
    sheet.set("A1", "=1000 mm")
    document.recompute()
    assert vent.OverallWidth.Value == pytest.approx(1000.0)
    assert vent.Shape.Volume == pytest.approx(sum(each.Shape.Volume for each in parts_of(vent)), rel=1e-9)
    assert not_settled(document) == []


@pytest.mark.skipif(tuple(FreeCAD.Version()[:2]) < ("1", "0"), reason="FreeCAD has variable sets since 1.0")
def test_parameters_follow_a_variable_set(vent, document) -> None:
    sizes = document.addObject("App::VarSet", "Sizes")
    sizes.addProperty("App::PropertyLength", "VentWidth", "Vent")
    sizes.addProperty("App::PropertyAngle", "BarnPitch", "Barn")
    sizes.VentWidth, sizes.BarnPitch = 1100.0, 30.0
    assert status_after(vent, "Width", "Sizes.VentWidth") == "Valid"
    assert status_after(vent, "PitchLeft", "Sizes.BarnPitch") == "Valid"
    assert (vent.OverallWidth.Value, values_of(vent)["pitch_left"]) == (pytest.approx(1100.0), pytest.approx(30.0))
    sizes.VentWidth = 1000.0
    document.recompute()
    assert vent.OverallWidth.Value == pytest.approx(1000.0)
    assert vent.Shape.Volume == pytest.approx(sum(each.Shape.Volume for each in parts_of(vent)), rel=1e-9)
    assert not_settled(document) == []


@pytest.mark.parametrize("name", ["Width", "PitchLeft", "SlatCount", "WidthRule", "RidgeOffset"])
def test_every_kind_of_number_takes_a_plain_expression(vent, document, name) -> None:
    text = {"Width": "2 * 500 mm", "PitchLeft": "30 deg + 2 deg", "SlatCount": "2 + 4", "WidthRule": "1 + 0.3",
            "RidgeOffset": "-20"}[name]
    assert status_after(vent, name, text) == "Valid"
    value = {"Width": 1000.0, "PitchLeft": 32.0, "SlatCount": 6, "WidthRule": 1.3, "RidgeOffset": -20.0}[name]
    row = next(each for each in PARAMETERS if each.property_name == name)
    assert values_of(vent)[row.name] == pytest.approx(value)
    assert not_settled(document) == []


@pytest.mark.parametrize(("name", "expression", "sentence"), [
    ("Width", "900 * 1 deg", "Width is 900.0 deg (from the expression “900 * 1 deg”): it must be a length."),
    ("SlatAngle", "45 * 1 mm", "Slat angle is 45.0 mm (from the expression “45 * 1 mm”): it must be an angle."),
    ("SlatCount", "6 * 1 mm", "Slat count is 6.0 mm (from the expression “6 * 1 mm”): it must be without a unit."),
    ("WidthRule", "1.25 * 1 mm", "it must be without a unit."),
    ("SlatCount", "5.6", "Slat count is “5.6”: it must be a whole number."),
    ("Corner", "<<round>>", "Corner is “round”: it must be one of butt, mitred."),
    ("Screen", "1 * 1 mm", "it must be without a unit."),
    ("Width", "-900 mm", "Width is -900 mm: it must be at least 300 mm"),
    ("Width", "30 mm * 30 mm", "Width is 900.0 mm^2 (from the expression “30 mm * 30 mm”): it must be a length."),
])
def test_what_freecad_would_take_silently_is_refused(vent, document, name, expression, sentence) -> None:
    before = model(vent)[1:]
    status = status_after(vent, name, expression)
    plain = "".join(status.split()).replace("−", "-")
    assert "".join(sentence.split()) in plain
    assert "Invalid" in vent.State
    assert model(vent)[1:] == before


def test_a_unit_that_an_expression_left_behind_is_refused_until_cured(vent, document) -> None:
    good = model(vent)
    status_after(vent, "Width", "900 * 1 deg")
    status = status_after(vent, "Width", None)
    assert "FreeCAD keeps the unit of the expression that was there before" in status
    vent.Width = 900.0
    document.recompute()
    assert "Width is 900.0 deg" in vent.getStatusString()
    cure = status.split("Enter the expression ")[1].split(" once")[0]
    assert status_after(vent, "Width", cure) == "Valid"
    assert status_after(vent, "Width", None) == "Valid"
    vent.Width = 900.0
    document.recompute()
    assert model(vent) == good
    assert not_settled(document) == []


# ---- the stock list


def test_a_stock_list_of_the_users_own_lies_beside_the_document(document, tmp_path) -> None:
    mine = tmp_path / "mine.json"

    def write(thickness):
        item = {"name": "my slat", "form": "board", "thickness": thickness, "width": 140.0, "lengths": [4000.0],
                "material": "larch", "density": 550}
        mine.write_text(json.dumps({"name": "mine", "items": [item], "usual": {"slat_stock": "my slat"}, "base": "us"}))

    write(20.0)
    document.saveAs(str(tmp_path / "barn.FCStd"))
    vent = make_vent(document, stock_list="mine.json")
    slats = part(vent, "louver.slat")
    assert (slats.Stock, slats.Sizes[0].z) == ("my slat", 20.0)
    write(21.0)
    vent.touch()    # the parts are not
    document.recompute()
    assert slats.Sizes[0].z == 21.0
    assert not_settled(document) == []
    mine.unlink()
    vent.touch()
    document.recompute()
    assert "The stock list “mine.json” cannot be read" in vent.getStatusString()
    assert slats.Sizes[0].z == 21.0


def test_a_stock_that_the_list_has_not_is_refused(vent, document) -> None:
    vent.SlatStock = "plank of dreams"
    document.recompute()
    assert "“plank of dreams”: the stock list “us” has no such item" in vent.getStatusString()
    assert all(row.property_name.endswith("Stock") for row in PARAMETERS if row.kind == STOCK)


# ---- releases


def test_a_property_that_an_older_file_lacks_is_added_without_touching(document, tmp_path) -> None:
    vent = make_vent(document)
    before, name = model(vent), vent.Name
    for each in ("Overhang", "Corner", "TotalWeight"):
        vent.setPropertyStatus(each, "-LockDynamic")
        assert vent.removeProperty(each)
    for each in document.Objects:
        each.purgeTouched()
    path = str(tmp_path / "older.FCStd")
    document.saveAs(path)
    FreeCAD.closeDocument(document.Name)
    older = FreeCAD.openDocument(path)
    vent = older.getObject(name)
    assert not_settled(older) == []
    assert vent.Overhang.Value == parameter("overhang").default
    vent.touch()
    older.recompute()
    assert model(vent) == before


def test_ensuring_twice_changes_nothing(vent, document) -> None:
    vent.Overhang = 150.0
    document.recompute()
    before = model(vent)
    properties.ensure_properties(vent)
    assert not_settled(document) == []
    assert model(vent) == before


def test_choices_are_renewed_and_the_choice_kept(vent, document) -> None:
    vent.Corner = ["butt", "mitred", "woven"]    # as of another release
    vent.Corner = "mitred"
    properties.ensure_properties(vent)
    assert list(vent.getEnumerationsOfProperty("Corner")) == ["butt", "mitred"]
    assert vent.Corner == "mitred"


def test_migrations_run_in_turn_and_once(vent, monkeypatch) -> None:
    ran = []
    monkeypatch.setattr(migrations, "SCHEMA", 3)
    monkeypatch.setattr(migrations, "STEPS", {1: lambda obj: ran.append(1), 2: lambda obj: ran.append(2)})
    properties.ensure_properties(vent)
    properties.ensure_properties(vent)
    assert ran == [1, 2]
    assert vent.Schema == 3
    assert vent.State == ["Up-to-date"]


def test_there_is_a_step_from_every_schema_to_the_next() -> None:
    assert sorted(migrations.STEPS) == list(range(1, migrations.SCHEMA))


def test_a_vent_of_a_newer_release_is_left_as_it_is(vent, document) -> None:
    before = model(vent)[1:]
    vent.Schema = migrations.SCHEMA + 1
    properties.ensure_properties(vent)
    vent.Width = 1000.0
    document.recompute()
    assert "was written by a newer Louverwright" in vent.getStatusString()
    assert model(vent)[1:] == before
