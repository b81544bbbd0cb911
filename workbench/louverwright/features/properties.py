# SPDX-License-Identifier: LGPL-2.1-or-later
"""The vent's properties, made from the core's tables of parameters and outputs, and reading them back.

One routine serves new and reopened objects.  FreeCAD lets an expression put degrees into a length without a
word, and keeps that unit when the expression is gone, so values are read with their units here.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from typing import Any

import FreeCAD

from ..core import figures as results
from ..core import parameters as table
from ..core.parameters import PARAMETERS, Parameter
from ..core.saying import say
from ..core.spec import Finding, SpecError, shown, tooltip
from .migrations import SCHEMA, migrate

PLAIN, OUTPUT = 0, 8  # FreeCAD's Prop_None and Prop_Output: a result does not touch its object

_TYPES = {table.LENGTH: "App::PropertyLength", table.ANGLE: "App::PropertyAngle", table.COUNT: "App::PropertyInteger",
          table.NUMBER: "App::PropertyFloat", table.CHOICE: "App::PropertyEnumeration",
          table.SWITCH: "App::PropertyBool", table.TEXT: "App::PropertyString", table.STOCK: "App::PropertyString"}
_RESULT_TYPES = {results.LENGTH: "App::PropertyDistance", results.AREA: "App::PropertyArea",
                 results.ANGLE: "App::PropertyAngle", results.WEIGHT: "App::PropertyFloat",
                 results.COUNT: "App::PropertyInteger", results.TEXT: "App::PropertyString"}
_MEASURES = {table.LENGTH: ("Length", say("a length"), "mm"), table.ANGLE: ("Angle", say("an angle"), "°")}


@dataclass(frozen=True)
class Row:
    """One property: FreeCAD's type, name, group in the editor and tooltip.

    Group and tooltip are saved in the document, in English; FreeCAD shows them in the user's language (translations'
    context "App::Property").
    """

    type: str
    name: str
    group: str
    doc: str
    attributes: int = PLAIN
    read_only: bool = False
    hidden: bool = False


def result_row(type_name: str, name: str, group: str, doc: str, hidden: bool = False) -> Row:
    """A property that the program writes and the user only reads."""
    return Row(type_name, name, group, doc, OUTPUT, True, hidden)


OWN_ROWS = (
    Row("App::PropertyString", "Revision", table.JOB, "Revision of the model, as it stands in the report's title "
        "block."),
    result_row("App::PropertyInteger", "Schema", "Louverwright", "Number of the arrangement of these properties.", True),
    result_row("App::PropertyString", "ModelKey", "Louverwright", "What the shape was made from.", True),
    result_row("App::PropertyString", "ValuesKey", "Louverwright", "What the last recompute found.", True),
)


def type_of(row: Parameter) -> str:
    """FreeCAD's property type for a parameter; its PropertyLength cannot be negative."""
    signed = row.kind == table.LENGTH and row.low is not None and row.low < 0
    return "App::PropertyDistance" if signed else _TYPES[row.kind]


def ensure(obj: FreeCAD.DocumentObject, row: Row) -> bool:
    """Adds a property that is not there yet; True if it did."""
    if row.name in obj.PropertiesList:
        return False
    obj.addProperty(row.type, row.name, row.group, str(row.doc), row.attributes, row.read_only, row.hidden)
    obj.setPropertyStatus(row.name, "LockDynamic")  # the user cannot remove it
    return True


def ensure_properties(obj: FreeCAD.DocumentObject) -> None:
    """Gives a vent, new or reopened, every property it lacks, and takes an older one to the present schema.

    An object that was not touched is not touched afterwards.
    """
    touched = "Touched" in obj.State
    new = "Schema" not in obj.PropertiesList
    for row in OWN_ROWS:
        if ensure(obj, row) and row.name == "Revision":
            obj.Revision = "1"
    if new:
        obj.Schema = SCHEMA
    migrate(obj)
    for parameter in PARAMETERS:
        _ensure_parameter(obj, parameter)
    for output in results.OUTPUTS:
        ensure(obj, result_row(_RESULT_TYPES[output.kind], output.property_name, "Result", output.tooltip))
    if not touched:
        obj.purgeTouched()


def _ensure_parameter(obj: FreeCAD.DocumentObject, row: Parameter) -> None:
    name = row.property_name
    added = ensure(obj, Row(type_of(row), name, row.group, tooltip(row)))
    if row.kind == table.CHOICE and (added or obj.getEnumerationsOfProperty(name) != list(row.choices)):
        kept = None if added else getattr(obj, name)
        setattr(obj, name, list(row.choices))
        setattr(obj, name, kept if kept in row.choices else row.default)
    elif added:
        setattr(obj, name, row.default)


def set_values(obj: FreeCAD.DocumentObject, values: Mapping[str, Any]) -> None:
    """Writes checked parameter values (mm, degrees) into the properties."""
    for name, value in values.items():
        setattr(obj, table.parameter(name).property_name, value)


def set_results(obj: FreeCAD.DocumentObject, values: Mapping[str, Any]) -> None:
    """Writes the outputs; one that is the same to FreeCAD's eyes is left alone."""
    for output in results.OUTPUTS:
        value, name = values[output.name], output.property_name
        now = getattr(obj, name)
        if getattr(now, "Value", now) != value:
            setattr(obj, name, value)


# ---- reading


def expressions_of(obj: FreeCAD.DocumentObject) -> dict[str, str]:
    """The expressions that drive parameters, by the parameters' names."""
    bound = {path.lstrip("."): text for path, text in obj.ExpressionEngine}
    return {row.name: bound[row.property_name] for row in PARAMETERS if row.property_name in bound}


def values_of(obj: FreeCAD.DocumentObject) -> dict[str, Any]:
    """Every parameter's value (mm, degrees), for ``checked_spec``.

    Raises SpecError with a finding for every value that is of the wrong unit, or whose expression fails.
    """
    bound = {path.lstrip("."): text for path, text in obj.ExpressionEngine}
    values: dict[str, Any] = {}
    findings: list[Finding] = []
    for row in PARAMETERS:
        text = bound.get(row.property_name)
        value = _stored(obj, row) if text is None else _evaluated(obj, row, text)
        if isinstance(value, Finding):
            findings.append(value)
        else:
            values[row.name] = value
    if findings:
        raise SpecError(tuple(findings))
    return values


def _stored(obj: FreeCAD.DocumentObject, row: Parameter) -> Any:
    """The property's own value, or a finding if an earlier expression has left another unit in it."""
    value = getattr(obj, row.property_name)
    if row.kind not in _MEASURES:
        return value
    measure, words, unit = _MEASURES[row.kind]
    if value.Unit.Type == measure:
        return value.Value
    return Finding("unit", row.name, str(value), say("it must be {words}, and FreeCAD keeps the unit of the expression "
                                                     "that was there before", words=words),
                   say("Enter the expression {value} once; then it can be taken away again and a number of {unit} be "
                       "entered.", value=shown(row, row.default or row.low or 0), unit=unit))


def _evaluated(obj: FreeCAD.DocumentObject, row: Parameter, text: str) -> Any:
    """The value of a property's expression, or a finding if that has another unit or no value."""
    try:
        value = obj.evalExpression(text)
    except Exception as error:  # FreeCAD raises half a dozen types here
        return Finding("expression", row.name, say("“{name}”", name=text), say("its expression has no value ({reason})",
                                                                reason=_reason(error)),
                       say("Mend the expression or take it away."))
    if isinstance(value, FreeCAD.Units.Quantity):
        return _measured(row, value, text)
    if row.kind in (table.CHOICE, table.SWITCH) and not isinstance(value, str):
        return getattr(obj, row.property_name)
    return int(value) if row.kind == table.COUNT and value == int(value) else value


def _measured(row: Parameter, value: FreeCAD.Units.Quantity, text: str) -> Any:
    """A quantity's number if its unit fits the parameter (or there is none), else a finding."""
    measure, words, _ = _MEASURES.get(row.kind, ("", say("without a unit"), ""))
    if value.Unit.Type in (measure, "") and (row.kind in _MEASURES or row.kind in (table.NUMBER, table.COUNT)):
        return value.Value
    return Finding("unit", row.name, say("{value} (from the expression “{text}”)", value=value, text=text),
                   say("it must be {words}", words=words), say("Change the expression."))


def _reason(error: Exception) -> str:
    """What FreeCAD says; before 1.1 it hands over a dictionary."""
    said = error.args[0] if error.args else error
    return str(said.get("sErrMsg", said) if isinstance(said, dict) else said)


def names_of(rows: Iterable[Parameter]) -> frozenset[str]:
    """The property names of parameters."""
    return frozenset(row.property_name for row in rows)
