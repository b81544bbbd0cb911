# SPDX-License-Identifier: LGPL-2.1-or-later
"""A picture in the active 3D view, in front of a vent that is out of sight for as long.

Nothing in the document changes: the vent's own switch in the scene is turned, not its property.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from typing import Any

import FreeCAD
import FreeCADGui
from pivy import coin

from ..core.geometry import Vec
from ..core.outline import Outline
from .colours import Look, look_of
from .scene import Edges, Scene, no_shift

HIDDEN = -1
#: Of the edges that show through: pure magenta is no wood, no paint, and none of our colours.
FOUND = (1.0, 0.0, 1.0)
#: How much more than the pieces themselves is brought into view.
ROUND_IT = 1.6


class _InView:
    """Something drawn in the document's 3D view until ``close``."""

    def __init__(self, document: FreeCAD.Document, root: Any) -> None:
        self.graph, self.root = graph_of(document), root
        if self.graph is not None:
            self.graph.addChild(root)

    def close(self) -> None:
        """Takes it away."""
        if self.graph is not None:
            self.graph.removeChild(self.root)
            self.graph = None


class Picture(_InView):
    """Pieces shown in the document's 3D view until ``close``; ``look`` gives each kind of part its colour."""

    def __init__(self, document: FreeCAD.Document, vents: Iterable[FreeCAD.DocumentObject] = (),
                 look: Callable[[str], Look] = look_of) -> None:
        self.scene = Scene(look)
        super().__init__(document, self.scene.root)
        self.hidden: list[tuple[Any, int]] = []
        for vent in vents:
            self._hide(vent)

    def _hide(self, vent: FreeCAD.DocumentObject) -> None:
        switch = vent.ViewObject.SwitchNode
        self.hidden.append((switch, switch.whichChild.getValue()))
        switch.whichChild.setValue(HIDDEN)

    def close(self) -> None:
        """Takes the picture away and shows the vents as they were."""
        super().close()
        for switch, child in self.hidden:
            if switch.whichChild.getValue() == HIDDEN:    # else somebody has shown or hidden it meanwhile
                switch.whichChild.setValue(child)
        self.hidden.clear()

    def show(self, pieces: Iterable[Outline], placement: FreeCAD.Placement,
             shift: Callable[[Outline], Vec] = no_shift, row: Sequence[float] = (0.0,)) -> None:
        """Draws these pieces of a vent that stands at ``placement`` (global), each moved by its ``shift`` (mm).

        The vents of a ``row`` stand so far along the first one's +X (mm).
        """
        self.scene.move(*(placement.multiply(FreeCAD.Placement(FreeCAD.Vector(x, 0, 0), FreeCAD.Rotation())) for x in row))
        self.scene.show(pieces, shift)
        # The view is told now, not when Coin's turn comes, so that the picture is painted together with the panel's fields.
        coin.SoDB.getSensorManager().processDelayQueue(False)


class Found(_InView):
    """The edges of some pieces of a vent, seen through all that hides them, until ``close``."""

    def __init__(self, document: FreeCAD.Document) -> None:
        self.document, self.edges = document, Edges(FOUND)
        super().__init__(document, self.edges.root)

    def show(self, pieces: Iterable[Outline], placement: FreeCAD.Placement) -> None:
        """Draws the edges of these pieces of a vent that stands at ``placement`` (global), and of no others."""
        self.edges.move(placement)
        self.edges.show(pieces)

    def fit(self) -> None:
        """Brings what is drawn into view, with some of what is round it, from where the view looks already.

        Without FreeCAD's own viewer object: to have asked for it crashes FreeCAD 1.1 when the view is closed.
        """
        view = view_of(self.document)
        if view is not None:
            view.getCameraNode().viewAll(self.root, coin.SbViewportRegion(*view.getSize()), ROUND_IT)


def graph_of(document: FreeCAD.Document) -> Any:
    """The scene of the document's 3D view; None where no such view is open."""
    view = view_of(document)
    return None if view is None else view.getSceneGraph()


def view_of(document: FreeCAD.Document) -> Any:
    """The document's first 3D view; None where none is open."""
    gui = FreeCADGui.getDocument(document.Name)
    views = [view for view in gui.mdiViewsOfType("Gui::View3DInventor") if hasattr(view, "getSceneGraph")]
    return views[0] if views else None
