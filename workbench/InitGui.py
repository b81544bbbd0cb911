# SPDX-License-Identifier: LGPL-2.1-or-later
"""Run by FreeCAD when its window starts: registers the workbench, and has reopened vents given their views.

FreeCAD runs this text inside a function, without __file__: what a method needs, it imports itself.
"""

import FreeCADGui

from louverwright.commands.register import register
from louverwright.panels.preferences_page import PreferencesPage
from louverwright.places import ICONS, TRANSLATIONS
from louverwright.view.attach import start


class LouverwrightWorkbench(FreeCADGui.Workbench):
    """Design louvered roof vents for barns."""

    def __init__(self):
        from FreeCAD import Qt

        from louverwright.places import ICONS

        type(self).MenuText = "Louverwright"
        type(self).ToolTip = Qt.translate("Louverwright", "Louvered roof vents for barns, and the paper to cut them by")
        type(self).Icon = str(ICONS / "louverwright.svg")

    def Initialize(self):
        """Called when the workbench is first chosen."""
        from louverwright.commands.register import ROWS

        names = [row.name for row in ROWS]
        self.appendToolbar("Louverwright", names)
        self.appendMenu("Louverwright", names)

    def GetClassName(self):
        """The kind of workbench, for FreeCAD."""
        return "Gui::PythonWorkbench"


# At once: macros, other workbenches and opened files may bring vents before ours is chosen.
start()
FreeCADGui.addLanguagePath(str(TRANSLATIONS))
FreeCADGui.updateLocale()
register()
FreeCADGui.addIconPath(str(ICONS))
FreeCADGui.addPreferencePage(PreferencesPage, "Louverwright")
FreeCADGui.addWorkbench(LouverwrightWorkbench())
