# SPDX-License-Identifier: LGPL-2.1-or-later
"""Edit vent: the dimensions of a vent in a panel."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

import FreeCAD
import FreeCADGui

from ..features.language import tr
from ..features.migrations import refuse_newer
from ..features.model import REFUSALS, folder_of_document, spec_of
from ..features.properties import expressions_of, set_values, values_of
from ..features.row import UNDOES_LINKS, update_row
from ..features.standing import global_placement
from ..panels.draft import Draft
from ..panels.vent_panel import VentPanel
from ..view.in_view import Picture
from .cut_report import chosen_vent
from .messages import say


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
        say(str(refusal))
        return None

    def accepted(draft: Draft) -> None:
        try:
            change_vent(vent, draft.changed)
        except REFUSALS as refusal:
            say(str(refusal))

    draft = Draft(values, folder_of_document(vent.Document))
    panel = VentPanel(vent.Label, draft, Picture(vent.Document, [vent]), global_placement(vent), accepted, lambda taken: None,
                      expressions_of(vent))
    FreeCADGui.Control.showDialog(panel)
    return panel


def change_vent(vent: FreeCAD.DocumentObject, changed: Mapping[str, Any]) -> None:
    """Writes values into a vent in one transaction, the row of vents with it, which is taken back if it fails.

    The row is left to its own command where FreeCAD cannot undo links.  Raises one of ``REFUSALS``.
    """
    document = vent.Document
    document.openTransaction(tr("Edit vent"))
    try:
        set_values(vent, changed)
        spec_of(vent)
        document.recompute()
        if UNDOES_LINKS:
            update_row(vent)
    except BaseException:
        document.abortTransaction()
        raise
    document.commitTransaction()
