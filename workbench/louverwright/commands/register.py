# SPDX-License-Identifier: LGPL-2.1-or-later
"""The table of commands, in the order of toolbar and menu, and making them known to FreeCAD.

FreeCAD asks for names and icons at its start; what a command does is loaded when it is first used, so that the
commands are there in every workbench and cost nothing.
"""

from __future__ import annotations

from functools import cached_property
from importlib import import_module
from typing import Any, NamedTuple

import FreeCADGui

from ..folders import ICONS


class Row(NamedTuple):
    """One command: FreeCAD's name for it, its icon, its words, and where the class is that runs it."""

    name: str
    icon: str
    words: str
    tip: str
    module: str
    runner: str


ROWS = (
    Row("Louverwright_NewVent", "new_vent", "New vent",
        "Make a louvered vent in the active document, with its dimensions in a panel and a picture in the 3D view.",
        "new_vent", "NewVent"),
    Row("Louverwright_EditVent", "edit_vent", "Edit vent",
        "Change the dimensions of the selected vent in a panel, with a picture of what they make.",
        "edit_vent", "EditVent"),
    Row("Louverwright_RoofOpening", "roof_opening", "Roof opening",
        "Cut the rough opening for the selected vent into the roof that it stands on; the roof itself is kept, and hidden.",
        "roof_opening", "OpenRoof"),
    Row("Louverwright_TakeApart", "take_apart", "Take apart",
        "Pull the vent's stages and pieces apart in the 3D view, or take sides away to look in; closing puts all together.",
        "take_apart", "TakeApart"),
    Row("Louverwright_PartsAndMarks", "parts_and_marks", "Parts and marks",
        "List every mark as it stands in the report and find its pieces in the model, or the mark of a piece that is picked.",
        "parts_and_marks", "PartsAndMarks"),
    Row("Louverwright_VentsAlongRidge", "vents_along_ridge", "Vents along the ridge",
        "Show the vent as often as its property Vents says, spaced along its RidgeLength; those beyond that number are "
        "taken away.", "vents_along_ridge", "VentsAlongRidge"),
    Row("Louverwright_CutReport", "cut_report", "Cut report",
        "Write the vent's cut list, saw settings and drawings to a folder: HTML, PDF, CSV and JSON.",
        "cut_report", "CutReport"),
    Row("Louverwright_CutList", "cut_list", "Cut list in a spreadsheet",
        "Write the vent's cut list into a spreadsheet in the document, or bring it up to date; what you have written right of "
        "it stays with its cut.", "cut_list", "CutListInSheet"),
    Row("Louverwright_Papers", "papers", "Papers for the shop",
        "Choose which sets of papers to write to a folder, such as the cut report, the lift plan or the checks.",
        "papers", "Papers"),
    Row("Louverwright_ShopDrawings", "shop_drawings", "Shop drawings",
        "Draw the vent on TechDraw pages: general arrangement, a sheet a stage, sheets of parts; run again, the pages follow "
        "the model and keep what you added.", "shop_drawings", "ShopDrawings"),
    Row("Louverwright_Compare", "compare", "Compare with an earlier report",
        "List which lengths and angles changed since a report was written (its cuts.json), and which pieces already cut can "
        "be kept.", "compare", "Compare"),
    Row("Louverwright_Mend", "mend", "A part came out wrong",
        "Give the real size of a piece that was cut wrong, or say that it is lost: see whether it may stay, what packing "
        "fills the gap, what to take off, or which parameter lets the vent follow it.", "mend", "Mend"),
)


class Command:
    """A row as FreeCAD wants it."""

    def __init__(self, row: Row) -> None:
        self.row = row

    @cached_property
    def runner(self) -> Any:
        """What runs the command, loaded when it is first asked for."""
        module = import_module(f"{__package__}.{self.row.module}")
        return getattr(module, self.row.runner)()

    def GetResources(self) -> dict[str, str]:
        """Icon, name and tooltip, which FreeCAD shows in its status bar as well.

        In English: FreeCAD itself looks them up, in the context of the command's name, whenever the language changes.
        """
        return {"Pixmap": str(ICONS / f"{self.row.icon}.svg"), "MenuText": self.row.words, "ToolTip": self.row.tip,
                "StatusTip": self.row.tip}

    def IsActive(self) -> bool:
        """Whether the command can work now."""
        return bool(self.runner.IsActive())

    def Activated(self) -> None:
        """Runs the command."""
        self.runner.Activated()


def register() -> list[str]:
    """Makes every command known and returns their names."""
    for row in ROWS:
        FreeCADGui.addCommand(row.name, Command(row))
    return [row.name for row in ROWS]
