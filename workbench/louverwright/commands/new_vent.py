# SPDX-License-Identifier: LGPL-2.1-or-later
"""New vent: a vent with the usual parameters in the active document."""

from __future__ import annotations

from typing import Any

import FreeCAD
import FreeCADGui
from FreeCAD import Qt

from ..features.model import REFUSALS
from ..features.row import update_row
from ..features.vent import make_vent
from ..places import ICONS
from .messages import say

NAME = "Louverwright_NewVent"


class NewVent:
    """Makes a vent as one undo step, in the active part if there is one."""

    def GetResources(self) -> dict[str, str]:
        """Icon, name and tooltip."""
        return {"Pixmap": str(ICONS / "new_vent.svg"),
                "MenuText": Qt.translate(NAME, "New vent"),
                "ToolTip": Qt.translate(NAME, "Make a louvered vent in the active document; its parameters are "
                                              "then changed as properties.")}

    def IsActive(self) -> bool:
        """Always: without a document one is made."""
        return True

    def Activated(self) -> None:
        """Runs the command; refusals are told in a message."""
        document = FreeCAD.ActiveDocument
        empty = document is None or not document.Objects
        document = document or FreeCAD.newDocument()
        try:
            new_vent(document)
        except REFUSALS as refusal:
            say(str(refusal))
            return
        show(empty)


def new_vent(document: FreeCAD.Document, **parameters: Any) -> FreeCAD.DocumentObject:
    """A vent, or a row of them, in one transaction, which is taken back if it fails.  Raises one of ``REFUSALS``."""
    document.openTransaction(Qt.translate(NAME, "New vent"))
    try:
        vent = make_vent(document, **parameters)
        part = active_part()
        if part is not None and part.Document is document:
            part.addObject(vent)
            document.recompute()
        update_row(vent)
    except BaseException:
        document.abortTransaction()
        raise
    document.commitTransaction()
    return vent


def active_part() -> FreeCAD.DocumentObject | None:
    """The part that new objects go into, as FreeCAD's own commands have it."""
    view = FreeCADGui.activeView()
    return view.getActiveObject("part") if hasattr(view, "getActiveObject") else None


def show(from_the_corner: bool) -> None:
    """Brings all into view; into an empty document, from a corner."""
    if from_the_corner and hasattr(FreeCADGui.activeView(), "viewIsometric"):
        FreeCADGui.activeView().viewIsometric()
    FreeCADGui.SendMsgToActiveView("ViewFit")
