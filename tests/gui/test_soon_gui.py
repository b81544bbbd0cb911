# SPDX-License-Identifier: LGPL-2.1-or-later
"""The picture that follows a hand: drawn once for many values, before the fields are painted, so that both come together."""

from __future__ import annotations

import FreeCAD
import FreeCADGui
import pytest
from conftest import settle
from panels import open_panels, press_cancel, widget
from pivy import coin
from PySide import QtCore

from louverwright.panels.soon import Soon

pytestmark = pytest.mark.usefixtures("in_workbench", "no_panel_left")


def test_asked_for_often_it_is_done_once_and_not_at_once() -> None:
    done = []
    soon = Soon(lambda: done.append(1))
    for _ in range(5):
        soon.start()
    assert soon.isActive() and done == []
    settle(0.05)
    assert not soon.isActive() and done == [1]
    soon.start()
    settle(0.05)
    assert done == [1, 1]


def test_taken_back_it_is_not_done_and_asked_again_done_once() -> None:
    done = []
    soon = Soon(lambda: done.append(1))
    soon.start()
    soon.stop()
    settle(0.05)
    assert done == []
    soon.start()
    soon.stop()
    soon.start()
    settle(0.05)
    assert done == [1]


def test_an_action_may_ask_again() -> None:
    done = []

    def twice() -> None:
        done.append(1)
        if len(done) < 3:
            soon.start()

    soon = Soon(twice)
    soon.start()
    settle(0.1)
    assert len(done) == 3


class Told(QtCore.QObject):
    """Notes each event of a kind that something gets."""

    def __init__(self, watched: QtCore.QObject, kind: QtCore.QEvent.Type, word: str, told: list[str]) -> None:
        super().__init__(watched)
        self.kind, self.word, self.told = kind, word, told
        watched.installEventFilter(self)

    def eventFilter(self, _: QtCore.QObject, event: QtCore.QEvent) -> bool:
        if event.type() == self.kind:
            self.told.append(self.word)
        return False


def test_field_and_picture_are_painted_together() -> None:
    """First the picture is worked out, then the window put together, once for the field and the 3D view."""
    FreeCAD.newDocument("Barn")
    settle(0.3)
    FreeCADGui.runCommand("Louverwright_NewVent", 0)
    settle(0.8)
    told: list[str] = []
    node = coin.SoCallback()
    picture = coin.SoGLRenderAction.getClassTypeId()
    node.setCallback(lambda _, action: told.append("picture") if action.isOfType(picture) else None, None)
    graph = FreeCADGui.activeView().getSceneGraph()
    graph.addChild(node)
    (panel,) = open_panels()
    draw = panel.drawing.action
    panel.drawing.action = lambda: (told.append("worked out"), draw())
    settle(0.5)
    watches = [Told(widget("Width").edit, QtCore.QEvent.Paint, "field", told),
               Told(FreeCADGui.getMainWindow(), QtCore.QEvent.UpdateRequest, "window", told)]
    told.clear()
    for width in (905.0, 910.0):
        panel.put("width", width, None)
    settle(0.2)
    for watch in watches:
        watch.parent().removeEventFilter(watch)
    graph.removeChild(node)
    assert told[0] == "worked out" and told.count("worked out") == 1
    both = max(told.index("picture"), told.index("field"))
    assert told[1:both].count("window") == 1, told
    press_cancel()
