# SPDX-License-Identifier: LGPL-2.1-or-later
"""Take apart: a vent's stages and pieces pulled apart in the 3D view, to look at how it is made."""

from __future__ import annotations

import FreeCAD
import FreeCADGui

from ..features.language import tr, translated
from ..features.model import REFUSALS
from ..features.pieces import standing_for
from ..features.standing import global_placement
from ..panels.apart_panel import ApartPanel
from ..view.in_view import Picture
from ..view.painting import seen_in
from .cut_report import chosen_vent, job_of
from .messages import tell


class TakeApart:
    """Opens the panel for the selected vent, or for the only one."""

    def IsActive(self) -> bool:
        """Whether it is clear which vent is meant, and no other panel is open."""
        return chosen_vent() is not None and not FreeCADGui.Control.activeDialog()

    def Activated(self) -> None:
        """Opens the panel."""
        vent = chosen_vent()
        if vent is not None and not FreeCADGui.Control.activeDialog():
            take_apart(vent)


def take_apart(vent: FreeCAD.DocumentObject) -> ApartPanel | None:
    """The panel, as a task of FreeCAD's window; None, and a message, for a vent that cannot be built.

    Of several vents in a row the selected one comes apart, the others stay whole beside it.
    """
    try:
        job = job_of(vent)
    except REFUSALS as refusal:
        tell(tr("The vent cannot be taken apart.") + f"\n\n{translated(refusal)}")
        return None
    standing = chosen_of_row(vent)
    picture = Picture(vent.Document, [standing], seen_in(vent))
    panel = ApartPanel(tr("Take apart"), job, standing, picture, global_placement(standing))
    FreeCADGui.Control.showDialog(panel)
    return panel


def chosen_of_row(vent: FreeCAD.DocumentObject) -> FreeCAD.DocumentObject:
    """Of several vents in a row the one that is selected, or a piece of it; the vent itself where it stands alone."""
    names = [name for each in FreeCADGui.Selection.getSelectionEx(vent.Document.Name, 0)
             for path in (each.SubElementNames or ("",)) for name in (each.Object.Name, *path.split("."))]
    return standing_for(vent, names)
