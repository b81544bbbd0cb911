# SPDX-License-Identifier: LGPL-2.1-or-later
"""The view providers of vent, stage, part and roof opening.  They hold nothing but the object that they were attached to."""

from __future__ import annotations

from typing import Any

import FreeCAD
import FreeCADGui

from ..core.kinds import BY_ID
from ..core.parameters import BY_NAME
from ..features.language import tr
from ..features.opening import cut_from, is_opening, show_roof
from ..features.properties import Row, ensure
from ..features.proxy import Proxy
from ..features.vent import delete_parts, is_vent
from ..folders import ICONS
from .colours import WAYS
from .context_menu import fill
from .painting import look_in, paint, paint_all

#: The vent's own choice of colours.
COLOUR_BY = Row("App::PropertyEnumeration", "ColourBy", "Louverwright",
                "What the parts' colours tell apart: the stock that they are cut from, or their kinds. A part that you have "
                "coloured yourself keeps its colour.")


class View(Proxy):
    """What all have in common."""

    is_group = True
    object: FreeCAD.DocumentObject | None = None

    @staticmethod
    def dress(view: Any) -> None:
        """Sets how an object looks that had no view; FreeCAD hides what was saved without one."""
        view.Visibility = True

    @staticmethod
    def ensure(view: Any) -> None:
        """Gives a view, new or of an older document, the properties that it lacks."""

    def attach(self, view: Any) -> None:
        """Keeps the object, for its icon; it is not saved."""
        self.object = view.Object

    def getIcon(self) -> str:
        """The path of the object's icon in the tree; FreeCAD may ask before it attaches."""
        return str(ICONS / f"{self.icon_of(self.object) if self.object is not None else 'louverwright'}.svg")

    @staticmethod
    def icon_of(obj: FreeCAD.DocumentObject) -> str:
        """The name of an object's icon."""
        return "louverwright"

    def setupContextMenu(self, view: Any, menu: Any) -> None:
        """Puts our commands above FreeCAD's own."""
        fill(menu, view.Object)


class VentView(View):
    """The whole vent: it shows its stages, not its own shape, which would lie over them."""

    @staticmethod
    def icon_of(obj: FreeCAD.DocumentObject) -> str:
        """That of a new vent."""
        return "new_vent"

    @staticmethod
    def dress(view: Any) -> None:
        """Shows the members of the group."""
        View.dress(view)
        view.DisplayMode = "Group"

    @staticmethod
    def ensure(view: Any) -> None:
        """The choice of colours."""
        if ensure(view, COLOUR_BY):
            view.ColourBy = list(WAYS)
            view.ColourBy = WAYS[0]

    def onChanged(self, view: Any, name: str) -> None:
        """Colours every part anew when the choice of colours changes."""
        if name == COLOUR_BY.name and view.ColourBy in WAYS and not view.Object.Document.Restoring:
            paint_all(view.Object)

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
        FreeCAD.Console.PrintWarning(tr("“{name}” belongs to “{vent}” and follows its parameters. Hide it, or delete the "
                                        "whole vent.", name=view.Object.Label, vent=view.Object.Vent.Label) + "\n")
        return False


class StageView(OwnedView):
    """A stage."""

    @staticmethod
    def icon_of(obj: FreeCAD.DocumentObject) -> str:
        """Each stage has its own."""
        return f"stage_{obj.StageId}"


class PartView(OwnedView):
    """The pieces of one kind of part."""

    is_group = False

    @staticmethod
    def icon_of(obj: FreeCAD.DocumentObject) -> str:
        """By the form of the stock that the kind is cut from."""
        return f"part_{form_of(obj.KindId)}"

    @staticmethod
    def dress(view: Any) -> None:
        """Colours as the vent has it chosen; a part that the vent has not stays hidden."""
        view.Visibility = view.Object.Count > 0
        paint(view, look_in(view.Object))


class OpeningView(View):
    """A roof with an opening: it looks as the roof does, which it hides."""

    is_group = False

    @staticmethod
    def icon_of(obj: FreeCAD.DocumentObject) -> str:
        """That of the command."""
        return "roof_opening"

    @staticmethod
    def dress(view: Any) -> None:
        """The roof's colour and transparency."""
        View.dress(view)
        roof = cut_from(view.Object)
        for name in ("ShapeColor", "LineColor", "Transparency"):
            if hasattr(getattr(roof, "ViewObject", None), name):
                setattr(view, name, getattr(roof.ViewObject, name))

    def onDelete(self, view: Any, sub_names: Any) -> bool:
        """Shows the roof again, in the same step."""
        show_roof(view.Object)
        return True


def form_of(kind_id: str) -> str:
    """What a kind is usually cut from: 'dimension', 'post', 'board', 'sheet' or 'mesh'."""
    return BY_NAME[BY_ID[kind_id].stock].forms[0]


def provider_for(obj: FreeCAD.DocumentObject) -> type[View] | None:
    """The view provider for one of our objects; None for any other."""
    if is_vent(obj):
        return VentView
    if is_opening(obj):
        return OpeningView
    if "StageId" in obj.PropertiesList:
        return StageView
    return PartView if "KindId" in obj.PropertiesList else None
