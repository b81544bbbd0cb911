# SPDX-License-Identifier: LGPL-2.1-or-later
"""A picture in the active 3D view, in front of a vent that is out of sight for as long.

Nothing in the document changes: the vent's own switch in the scene is turned, not its property.
"""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any

import FreeCAD
import FreeCADGui

from ..core.outline import Outline
from .scene import Scene

HIDDEN = -1


class Picture:
    """Pieces shown in the document's 3D view until ``close``."""

    def __init__(self, document: FreeCAD.Document, vents: Iterable[FreeCAD.DocumentObject] = ()) -> None:
        self.scene = Scene()
        self.graph = graph_of(document)
        if self.graph is not None:
            self.graph.addChild(self.scene.root)
        self.hidden: list[tuple[Any, int]] = []
        for vent in vents:
            self._hide(vent)

    def _hide(self, vent: FreeCAD.DocumentObject) -> None:
        switch = vent.ViewObject.SwitchNode
        self.hidden.append((switch, switch.whichChild.getValue()))
        switch.whichChild.setValue(HIDDEN)

    def close(self) -> None:
        """Takes the picture away and shows the vents as they were."""
        if self.graph is not None:
            self.graph.removeChild(self.scene.root)
            self.graph = None
        for switch, child in self.hidden:
            if switch.whichChild.getValue() == HIDDEN:    # else somebody has shown or hidden it meanwhile
                switch.whichChild.setValue(child)
        self.hidden.clear()

    def show(self, pieces: Iterable[Outline], placement: FreeCAD.Placement) -> None:
        """Draws these pieces of a vent that stands at ``placement`` (global)."""
        self.scene.move(placement)
        self.scene.show(pieces)


def graph_of(document: FreeCAD.Document) -> Any:
    """The scene of the document's 3D view; None where no such view is open."""
    gui = FreeCADGui.getDocument(document.Name)
    views = [view for view in gui.mdiViewsOfType("Gui::View3DInventor") if hasattr(view, "getSceneGraph")]
    return views[0].getSceneGraph() if views else None
