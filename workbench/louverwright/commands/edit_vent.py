# SPDX-License-Identifier: LGPL-2.1-or-later
"""Edit vent: the dimensions of a vent in a panel."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

import FreeCAD
import FreeCADGui

from ..core.roof_planes import RoofError
from ..features.generations import UNDOES_LINKS
from ..features.language import tr, translated
from ..features.migrations import refuse_newer
from ..features.model import REFUSALS, folder_of_document, spec_of, wishes_of
from ..features.properties import expressions_of, set_values, values_of
from ..features.row import update_row
from ..features.seat import Seat, seat_of, stand_free, stand_on
from ..features.standing import global_placement
from ..panels.draft import Draft
from ..panels.vent_panel import VentPanel
from .cut_report import chosen_vent
from .messages import tell


class EditVent:
    """Opens the panel of the selected vent, or of the only one."""

    def IsActive(self) -> bool:
        """Whether it is clear which vent is meant."""
        return chosen_vent() is not None and not FreeCADGui.Control.activeDialog()

    def Activated(self) -> None:
        """Opens the panel; a vent that cannot be read is told of in a message."""
        vent = chosen_vent()
        if vent is not None and not FreeCADGui.Control.activeDialog():
            edit(vent)


def edit(vent: FreeCAD.DocumentObject) -> VentPanel | None:
    """The panel of a vent, as a task of FreeCAD's window; None, and a message, for one whose values cannot be read."""
    try:
        refuse_newer(vent)
        values = values_of(vent)
    except REFUSALS as refusal:
        tell(translated(refusal))
        return None

    def accepted(draft: Draft) -> bool:
        try:
            change_vent(vent, draft.changed, draft.seat, draft.seat_changed)
        except (*REFUSALS, RoofError) as refusal:
            tell(translated(refusal))
            return False
        return True

    draft, lost = Draft(values, folder_of_document(vent.Document), wishes_of(vent)), ""
    try:
        draft.seat = seat_of(vent)
    except RoofError as error:
        lost = translated(error)
    panel = VentPanel(vent.Document, vent, draft, global_placement(vent), accepted, lambda taken: None, expressions_of(vent),
                      lost)
    FreeCADGui.Control.showDialog(panel)
    return panel


def change_vent(vent: FreeCAD.DocumentObject, changed: Mapping[str, Any], seat: Seat | None = None,
                seat_too: bool = False) -> None:
    """Writes values, and a seat or none where that is asked for, into a vent in one transaction, the row of vents with it.

    It is taken back if it fails.  The row is left to its own command where FreeCAD cannot undo links.  Raises one of
    ``REFUSALS``, or RoofError.
    """
    document = vent.Document
    document.openTransaction(tr("Edit vent"))
    try:
        set_values(vent, changed)
        if seat_too and seat is not None:
            stand_on(vent, seat.reading, seat.along, seat.end)
        elif seat_too:
            stand_free(vent)
        spec_of(vent)
        document.recompute()
        if UNDOES_LINKS:
            update_row(vent)
    except BaseException:
        document.abortTransaction()
        raise
    document.commitTransaction()
