# SPDX-License-Identifier: LGPL-2.1-or-later
"""The commands for a vent in the tree's context menu: FreeCAD's commands called by name, with their own words."""

from __future__ import annotations

from typing import Any

import FreeCAD
import FreeCADGui

from ..features.language import tr

#: In the order of the menu.
COMMANDS = ("Louverwright_EditVent", "Louverwright_TakeApart", "Louverwright_PartsAndMarks", "Louverwright_CutReport")


def fill(menu: Any, obj: FreeCAD.DocumentObject) -> None:
    """Adds the commands; what is not selected yet will be, for a command works on what is selected."""
    if obj not in FreeCADGui.Selection.getSelection(obj.Document.Name):
        FreeCADGui.Selection.clearSelection()
        FreeCADGui.Selection.addSelection(obj.Document.Name, obj.Name)
    for name in COMMANDS:
        command = FreeCADGui.Command.get(name)
        told = command.getInfo()
        action = menu.addAction(FreeCADGui.getIcon(told["pixmap"]), tr(told["menuText"]))    # Qt itself may not know SVG
        action.setToolTip(tr(told["toolTip"]))
        action.setEnabled(command.isActive())
        action.triggered.connect(lambda *_, name=name: FreeCADGui.runCommand(name, 0))
    menu.addSeparator()
