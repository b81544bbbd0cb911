# SPDX-License-Identifier: LGPL-2.1-or-later
"""Gives vents their working back in a document that was saved by a FreeCAD without this add-on.

Such a FreeCAD shows the shapes as they are, but writes the objects down as nobody's; without this they would stay so for
ever.  Light: FreeCAD imports it at its start.
"""

from __future__ import annotations

import FreeCAD

#: By which property of its own a kind of object is known, which in a file stands before its proxy (a stage's stands after it).
MARKS = ("KindId", "OpeningSchema", "ModelKey")


class Reviver:
    """A document observer."""

    def slotChangedObject(self, obj: FreeCAD.DocumentObject, name: str) -> None:
        """FreeCAD calls this for every change of every property: while a document is read, for the proxy that it found."""
        if name == "Proxy" and obj.Document.Restoring and obj.Proxy is None:
            mark = next((mark for mark in MARKS if mark in obj.PropertiesList), "")
            if mark:
                obj.Proxy = _new(mark)    # FreeCAD itself tells it, later, that the document is read

    def slotBeforeRecomputeDocument(self, document: FreeCAD.Document) -> None:
        """Touches the vents that were changed elsewhere: while a document is read FreeCAD wipes that out again."""
        for vent in [vent for vent in _changed if vent.Document == document]:
            _changed.remove(vent)
            vent.touch()

    slotActivateDocument = slotBeforeRecomputeDocument

    def slotDeletedDocument(self, document: FreeCAD.Document) -> None:
        """Forgets the vents of a document that is closed."""
        _changed[:] = [vent for vent in _changed if vent.Document != document]


def _new(mark: str) -> object:
    """What makes an object work that is known by a mark."""
    from .opening import RoofOpening
    from .part_kind import PartKind
    from .vent import Vent

    return {"KindId": PartKind, "OpeningSchema": RoofOpening, "ModelKey": Vent}[mark]()


_reviving: list[Reviver] = []
_changed: list[FreeCAD.DocumentObject] = []


def changed_elsewhere(vent: FreeCAD.DocumentObject) -> None:
    """Has a vent made anew by the next recompute: its properties were changed where nobody could make it."""
    _changed.append(vent)


def start() -> None:
    """Looks at every document that is opened from now on; once is enough."""
    if not _reviving:
        _reviving.append(Reviver())
        FreeCAD.addDocumentObserver(_reviving[0])
