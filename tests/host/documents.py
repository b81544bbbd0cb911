"""What a document of vents holds, as plain data: for comparing one that was saved with one that was opened."""

from __future__ import annotations

import FreeCAD

from louverwright.features.opening import is_opening
from louverwright.features.vent import is_vent, parts_of

#: Groups of properties that are FreeCAD's own, or how we find out what is stale.
NOT_OURS = ("Base", "", "Louverwright")
#: Digests of the last figure of every plane: only whether they are the present ones matters, and that shows in what is stale.
DIGESTS = ("ContentKey", "ModelKey", "ValuesKey")


def plain(value):
    """A property's value as JSON has it; numbers to the tenth digit."""
    if isinstance(value, FreeCAD.Units.Quantity):
        return [float(f"{value.Value:.10g}"), value.Unit.Type]
    if isinstance(value, float):
        return float(f"{value:.10g}")
    if isinstance(value, (str, bool, int, type(None))):
        return value
    if isinstance(value, FreeCAD.Placement):
        return [round(each, 6) for each in value.toMatrix().A]
    if isinstance(value, FreeCAD.Vector):
        return [round(each, 6) for each in value]
    if isinstance(value, (list, tuple)):
        return [plain(each) for each in value]
    return value.Name if hasattr(value, "Name") else str(value)


def properties(obj):
    """Every property of ours."""
    return {name: plain(getattr(obj, name)) for name in obj.PropertiesList
            if name not in DIGESTS and obj.getGroupOfProperty(name) not in NOT_OURS}


def told(document):
    """Every vent and opening with its properties, volume and parts; and how many objects there are."""
    found = {"objects": len(document.Objects)}
    for obj in document.Objects:
        if is_vent(obj) or is_opening(obj):
            found[obj.Name] = {"label": obj.Label, "properties": properties(obj), "volume": round(obj.Shape.Volume, 3),
                               "solids": len(obj.Shape.Solids), "placement": plain(obj.Placement),
                               "expressions": sorted([path, text.replace(" ", "")] for path, text in obj.ExpressionEngine)}
        if is_vent(obj):
            found[obj.Name]["parts"] = {part.KindId: [round(part.Shape.Volume, 3), properties(part)] for part in parts_of(obj)}
    return found
