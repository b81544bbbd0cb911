# SPDX-License-Identifier: LGPL-2.1-or-later
"""Touches vents whose place on their roof changes by a move that FreeCAD's own dependencies cannot carry.

Such are the moves of a part that holds the vent but not the roof (or the other way about, where a link would be a cycle),
and a vent that is put into another part.  The links of ``roof_link`` do all else, and do it without this.

It also puts vents back into their seats after undo and redo.

An opening that was cut for a vent stands beside it; where a part holds only one of the two, it is looked after likewise.
"""

from __future__ import annotations

import FreeCAD

from .roof_link import TAKEN, is_linked, unfollowed
from .standing import containers, same_place

#: The property by which an opening in a roof is known.
OPENING = "OpeningSchema"
_CONTAINER = "App::GeoFeatureGroupExtension"


class RoofWatch:
    """A document observer."""

    def slotChangedObject(self, obj: FreeCAD.DocumentObject, name: str) -> None:
        """FreeCAD calls this for every change of every property."""
        if name not in ("Placement", "Group") or not _holds(obj):
            return
        document = obj.Document
        if document.Restoring or document.Transacting:    # what comes back then was right when it was written
            return
        for each in document.Objects:
            if each != obj and _looked_after(each) and (name == "Group" or _moves(obj, each)):
                each.touch()


    def slotUndoDocument(self, document: FreeCAD.Document) -> None:
        """Puts every vent on a roof where its seat says.

        FreeCAD brings back shape and placement in any order, and a shape that comes last drags the placement along.
        """
        for obj in document.Objects:
            if is_linked(obj) and not same_place(obj.Placement, getattr(obj, TAKEN)):
                touched = "Touched" in obj.State
                obj.Placement = getattr(obj, TAKEN)
                if not touched:
                    obj.purgeTouched()

    slotRedoDocument = slotUndoDocument


def _looked_after(obj: FreeCAD.DocumentObject) -> bool:
    """Whether an object is a vent on a roof that is drawn, or an opening for a vent."""
    return is_linked(obj) or (OPENING in obj.PropertiesList and obj.Vent is not None)


def _moves(part: FreeCAD.DocumentObject, obj: FreeCAD.DocumentObject) -> bool:
    """Whether a move of a part changes a vent's place on its roof, or an opening's against its vent."""
    return part in unfollowed(obj) if is_linked(obj) else _holds_one(part, obj)


def _holds_one(part: FreeCAD.DocumentObject, opening: FreeCAD.DocumentObject) -> bool:
    """Whether a part holds an opening but not its vent, or the other way about."""
    return (part in containers(opening)) != (part in containers(opening.Vent))


def _holds(obj: FreeCAD.DocumentObject) -> bool:
    """Whether an object is a part, a body or a link, which carries what is in it."""
    return obj.hasExtension(_CONTAINER) or obj.isDerivedFrom("App::Link")


_watching: list[RoofWatch] = []


def watch() -> None:
    """Watches all documents from now on; once is enough."""
    if not _watching:
        _watching.append(RoofWatch())
        FreeCAD.addDocumentObserver(_watching[0])


def stop_watching() -> None:
    """Watches nothing any more."""
    while _watching:
        FreeCAD.removeDocumentObserver(_watching.pop())
