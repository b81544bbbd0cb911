# SPDX-License-Identifier: LGPL-2.1-or-later
"""The view providers of vent, stage and part.  They hold nothing."""

from __future__ import annotations

from typing import Any

import FreeCAD
import FreeCADGui

from ..features.proxy import Proxy
from ..features.vent import delete_parts, is_vent
from ..places import ICONS
from .colours import look_of


class View(Proxy):
    """What all three have in common."""

    is_group = True
    icon = "louverwright.svg"

    @staticmethod
    def dress(view: Any) -> None:
        """Sets how an object looks that had no view; FreeCAD hides what was saved without one."""
        view.Visibility = True

    def attach(self, view: Any) -> None:
        """Nothing is kept; FreeCAD wants the method."""

    def getIcon(self) -> str:
        """The path of the object's icon in the tree."""
        return str(ICONS / self.icon)


class VentView(View):
    """The whole vent: it shows its stages, not its own shape, which would lie over them."""

    icon = "new_vent.svg"

    @staticmethod
    def dress(view: Any) -> None:
        """Shows the members of the group."""
        View.dress(view)
        view.DisplayMode = "Group"

    def doubleClicked(self, view: Any) -> bool:
        """Opens the vent's panel."""
        FreeCADGui.Selection.clearSelection()
        FreeCADGui.Selection.addSelection(view.Object)
        FreeCADGui.runCommand("Louverwright_EditVent", 0)
        return True

    def onDelete(self, view: Any, sub_names: Any) -> bool:
        """Takes along all that belongs to the vent, and nothing else."""
        delete_parts(view.Object)
        return True


class OwnedView(View):
    """Something that the vent makes: it cannot be deleted by itself."""

    def onDelete(self, view: Any, sub_names: Any) -> bool:
        """Refuses with a sentence."""
        if view.Object.Vent is None:
            return True
        FreeCAD.Console.PrintWarning(f"“{view.Object.Label}” belongs to “{view.Object.Vent.Label}” and follows its "
                                     "parameters. Hide it, or delete the whole vent.\n")
        return False


class StageView(OwnedView):
    """A stage."""

    icon = "stage.svg"


class PartView(OwnedView):
    """The pieces of one kind of part."""

    is_group = False
    icon = "part.svg"

    @staticmethod
    def dress(view: Any) -> None:
        """Colours by what the part is cut from; a part that the vent has not stays hidden."""
        view.Visibility = view.Object.Count > 0
        look = look_of(view.Object.KindId)
        view.ShapeColor = look.colour
        view.Transparency = look.transparency


def provider_for(obj: FreeCAD.DocumentObject) -> type[View] | None:
    """The view provider for one of our objects; None for any other."""
    if is_vent(obj):
        return VentView
    if "StageId" in obj.PropertiesList:
        return StageView
    return PartView if "KindId" in obj.PropertiesList else None
