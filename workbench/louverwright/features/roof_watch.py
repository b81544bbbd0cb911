# SPDX-License-Identifier: LGPL-2.1-or-later
"""Touches vents whose place on their roof changes by a move that FreeCAD's own dependencies cannot carry.

Such are the moves of a part that holds the vent but not the roof (or the other way about, where a link would be a cycle),
and a vent that is put into another part.  The links of ``roof_link`` do all else, and do it without this.
"""

from __future__ import annotations

import FreeCAD

from .roof_link import is_linked, unfollowed

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
        for vent in document.Objects:
            if vent != obj and is_linked(vent) and (name == "Group" or obj in unfollowed(vent)):
                vent.touch()


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
