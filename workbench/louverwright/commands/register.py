# SPDX-License-Identifier: LGPL-2.1-or-later
"""Makes the commands known to FreeCAD."""

from __future__ import annotations

import FreeCADGui

from . import cut_report, new_vent

#: In the order of toolbar and menu.
COMMANDS = (new_vent.NAME, cut_report.NAME)


def register() -> list[str]:
    """Registers every command and returns their names."""
    FreeCADGui.addCommand(new_vent.NAME, new_vent.NewVent())
    FreeCADGui.addCommand(cut_report.NAME, cut_report.CutReport())
    return list(COMMANDS)
