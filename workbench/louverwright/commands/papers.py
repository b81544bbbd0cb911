# SPDX-License-Identifier: LGPL-2.1-or-later
"""Papers for the shop: the sets of papers that are asked for, written to a folder."""

from __future__ import annotations

from pathlib import Path

import FreeCAD
import FreeCADGui

from ..features.language import tr
from ..features.model import folder_of_document
from ..panels.papers_panel import PapersPanel
from .cut_report import chosen_vent, job_of, open_in_viewer


class Papers:
    """Opens the panel for the selected vent, or for the only one."""

    def IsActive(self) -> bool:
        """Whether it is clear which vent is meant, and no other panel is open."""
        return chosen_vent() is not None and not FreeCADGui.Control.activeDialog()

    def Activated(self) -> None:
        """Opens the panel."""
        vent = chosen_vent()
        if vent is not None and not FreeCADGui.Control.activeDialog():
            papers_for_the_shop(vent)


def papers_for_the_shop(vent: FreeCAD.DocumentObject) -> PapersPanel:
    """The panel, as a task of FreeCAD's window."""
    folder = (folder_of_document(vent.Document) or Path.home()) / "papers"
    panel = PapersPanel(tr("Papers for the shop"), vent, folder, lambda: job_of(vent), open_in_viewer)
    FreeCADGui.Control.showDialog(panel)
    return panel
