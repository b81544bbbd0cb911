# SPDX-License-Identifier: LGPL-2.1-or-later
"""New vent: a vent with the usual parameters in the active document."""

from __future__ import annotations

from typing import Any

import FreeCAD
import FreeCADGui

from ..core.roof_planes import RoofError
from ..features.language import tr, translated
from ..features.model import REFUSALS, folder_of_document
from ..features.preferences import preferred
from ..features.roof_reading import RoofPick, picks_of, read_roof
from ..features.row import update_row
from ..features.seat import Seat, stand_on
from ..features.standing import global_placement
from ..features.vent import make_vent
from ..panels.draft import Draft
from ..panels.vent_panel import VentPanel
from .messages import tell


class NewVent:
    """Makes a vent as one undo step, in the active part if there is one."""

    def IsActive(self) -> bool:
        """Always: without a document one is made."""
        return True

    def Activated(self) -> None:
        """Opens the panel of a new vent; a document that is made for it goes again if the panel is cancelled."""
        if FreeCADGui.Control.activeDialog():
            return
        document = FreeCAD.ActiveDocument
        made = None if document is not None else FreeCAD.newDocument()
        open_panel(document or made, made is not None)


def open_panel(document: FreeCAD.Document, own_document: bool = False) -> VentPanel:
    """The panel of a new vent, as a task of FreeCAD's window."""
    empty, name = not document.Objects, document.Name

    def accepted(draft: Draft) -> bool:
        try:
            new_vent(document, draft.seat, **draft.wanted)
        except (*REFUSALS, RoofError) as refusal:
            tell(translated(refusal))
            return False
        return True

    def closed(taken: bool) -> None:
        if taken:
            show(empty)
        elif own_document and name in FreeCAD.listDocuments() and not document.Objects:
            FreeCAD.closeDocument(name)

    part = active_part()
    inside = global_placement(part) if part is not None and part.Document is document else FreeCAD.Placement()
    draft = Draft(preferred(), folder_of_document(document))
    picked = picks_of(FreeCADGui.Selection.getSelectionEx("", 0))
    lost = _take_picked(draft, picked) if picked else ""
    panel = VentPanel(document, None, draft, inside, accepted, closed, lost=lost)
    FreeCADGui.Control.showDialog(panel)
    show(empty)
    return panel


def _take_picked(draft: Draft, picked: tuple[RoofPick, ...]) -> str:
    """Seats the new vent on what was selected before; why that is no roof, or ''."""
    try:
        draft.take_seat(Seat(read_roof(*picked)), new=True)
    except RoofError as error:
        return translated(error)
    FreeCADGui.Selection.clearSelection()
    return ""


def new_vent(document: FreeCAD.Document, seat: Seat | None = None, /, **parameters: Any) -> FreeCAD.DocumentObject:
    """A vent, or a row of them, free or on a roof, in one transaction, which is taken back if it fails.

    Raises one of ``REFUSALS``, or RoofError.
    """
    document.openTransaction(tr("New vent"))
    try:
        vent = make_vent(document, **parameters)
        part = active_part()
        if part is not None and part.Document is document:
            part.addObject(vent)
            document.recompute()
        if seat is not None:
            stand_on(vent, seat.reading, seat.along, seat.end)
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
