# SPDX-License-Identifier: LGPL-2.1-or-later
"""From marks to pieces in the document and back: which solid of which object carries which mark."""

from __future__ import annotations

from collections.abc import Collection, Iterable

import FreeCAD

from .vent import ROW_NUMBER, parts_of

#: FreeCAD's words for an element of a shape and for all of them.
_SORTS = {"Solid": "Solids", "Face": "Faces", "Edge": "Edges", "Vertex": "Vertexes"}


def sub_paths(vent: FreeCAD.DocumentObject, marks: Collection[str]) -> list[str]:
    """The pieces with these marks, as FreeCAD's selection names them from the vent: 'Base.BaseLegGable.Solid2'."""
    return [f"{part.getParentGeoFeatureGroup().Name}.{part.Name}.Solid{number}" for part in parts_of(vent)
            for number, mark in enumerate(part.Marks, 1) if mark in marks]


def from_the_top(obj: FreeCAD.DocumentObject) -> tuple[FreeCAD.DocumentObject, str]:
    """The outermost group with a place of its own that an object stands in, and the way from there, ending with a dot.

    For an object in no such group: itself and ''.
    """
    way, parent = "", obj.getParentGeoFeatureGroup()
    while parent is not None:
        way, obj = f"{obj.Name}.{way}", parent
        parent = obj.getParentGeoFeatureGroup()
    return obj, way


def marks_at(part: FreeCAD.DocumentObject, element: str) -> set[str]:
    """The marks that an element of a part's shape belongs to ('Solid2', 'Face17', 'Edge4'); all for ''.

    None where the shape has no such element.
    """
    if not element:
        return set(part.Marks)
    sort = element.rstrip("0123456789")
    number = int(element[len(sort):] or 0)
    if sort not in _SORTS or not 0 < number <= len(getattr(part.Shape, _SORTS[sort])):
        return set()
    wanted = getattr(part.Shape, _SORTS[sort])[number - 1]
    return {mark for mark, solid in zip(part.Marks, part.Shape.Solids, strict=True)
            if any(wanted.isSame(each) for each in getattr(solid, _SORTS[sort]))}


def standing_for(vent: FreeCAD.DocumentObject, names: Iterable[str]) -> FreeCAD.DocumentObject:
    """Of the row of a vent, the one that is meant by objects of these names: one of its links if it is named, else itself."""
    for name in names:
        obj = vent.Document.getObject(name)
        if obj is not None and ROW_NUMBER in obj.PropertiesList and obj.Vent == vent:
            return obj
    return vent
