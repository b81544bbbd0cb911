# SPDX-License-Identifier: LGPL-2.1-or-later
"""Run by FreeCAD when its window starts: registers the workbench, and has reopened vents given their views.

FreeCAD runs this text inside a function, without __file__: what a method needs, it imports itself.
"""

import FreeCADGui

from louverwright.commands.register import register
from louverwright.folders import ICONS, TRANSLATIONS
from louverwright.panels.preferences_page import PreferencesPage
from louverwright.view.attach import start


class LouverwrightWorkbench(FreeCADGui.Workbench):
    """Design louvered roof vents for barns.

    It names no icon: FreeCAD takes the one in package.xml, and where both do it holds its start up to say so.
    """

    def __init__(self):
        from FreeCAD import Qt

        type(self).MenuText = "Louverwright"
        type(self).ToolTip = Qt.translate("Louverwright", "Louvered roof vents for barns, and the paper to cut them by")

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
