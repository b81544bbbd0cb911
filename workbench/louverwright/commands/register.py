# SPDX-License-Identifier: LGPL-2.1-or-later
"""Makes the commands known to FreeCAD."""

from __future__ import annotations

import FreeCADGui

from . import compare, cut_report, mend, new_vent, vents_along_ridge

#: In the order of toolbar and menu.
COMMANDS = (new_vent.NAME, vents_along_ridge.NAME, cut_report.NAME, compare.NAME, mend.NAME)


def register() -> list[str]:
    """Registers every command and returns their names."""
    FreeCADGui.addCommand(new_vent.NAME, new_vent.NewVent())
    FreeCADGui.addCommand(vents_along_ridge.NAME, vents_along_ridge.VentsAlongRidge())
    FreeCADGui.addCommand(cut_report.NAME, cut_report.CutReport())
    FreeCADGui.addCommand(compare.NAME, compare.Compare())
    FreeCADGui.addCommand(mend.NAME, mend.Mend())
    return list(COMMANDS)
