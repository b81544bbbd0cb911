# SPDX-License-Identifier: LGPL-2.1-or-later
"""Parts and marks: from a mark on paper to the pieces in the model, and from a piece to its mark."""

from __future__ import annotations

import FreeCAD
import FreeCADGui

from ..features.language import tr, translated
from ..features.model import REFUSALS
from ..features.standing import global_placement
from ..panels.marks_panel import MarksPanel
from ..view.in_view import Found
from .cut_report import chosen_vent, job_of
from .messages import tell
from .take_apart import chosen_of_row


class PartsAndMarks:
    """Opens the list for the selected vent, or for the only one."""

    def IsActive(self) -> bool:
        """Whether it is clear which vent is meant, and no other panel is open."""
        return chosen_vent() is not None and not FreeCADGui.Control.activeDialog()

    def Activated(self) -> None:
        """Opens the list."""
        vent = chosen_vent()
        if vent is not None and not FreeCADGui.Control.activeDialog():
            parts_and_marks(vent)


def parts_and_marks(vent: FreeCAD.DocumentObject) -> MarksPanel | None:
    """The list, as a task of FreeCAD's window; None, and a message, for a vent that cannot be built."""
    try:
        job = job_of(vent)
    except REFUSALS as refusal:
        tell(tr("The parts cannot be listed.") + f"\n\n{translated(refusal)}")
        return None
    standing = chosen_of_row(vent)
    panel = MarksPanel(tr("Parts and marks"), job, vent, standing, Found(vent.Document), global_placement(standing))
    FreeCADGui.Control.showDialog(panel)
    return panel
