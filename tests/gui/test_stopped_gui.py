# SPDX-License-Identifier: LGPL-2.1-or-later
"""A recompute that the user stops with Esc, in the middle of a vent: nothing is lost, and the next one makes it whole."""

from __future__ import annotations

import sys
from pathlib import Path

import FreeCAD
import FreeCADGui
import pytest
from conftest import settle
from PySide import QtCore, QtGui

sys.path.append(str(Path(__file__).resolve().parents[1] / "host"))
from vents import model, not_settled

from louverwright.features import part_kind
from louverwright.features.vent import make_vent, parts_of


@pytest.fixture
def document():
    made = FreeCAD.newDocument("Barn")
    yield made
    FreeCAD.closeDocument(made.Name)


def press_escape_and_say_yes(asked):
    """What a user does who has had enough: Esc, and Yes to FreeCAD's question whether that is meant."""
    def yes():
        box = QtGui.QApplication.activeModalWidget()
        if isinstance(box, QtGui.QMessageBox):
            asked.append(box.text())
            box.button(QtGui.QMessageBox.Yes).click()

    QtCore.QTimer.singleShot(200, yes)
    for kind in (QtCore.QEvent.KeyPress, QtCore.QEvent.KeyRelease):
        event = QtGui.QKeyEvent(kind, QtCore.Qt.Key_Escape, QtCore.Qt.NoModifier)
        QtGui.QApplication.sendEvent(FreeCADGui.getMainWindow(), event)


def test_a_recompute_stopped_by_escape_is_made_good_by_the_next(document, monkeypatch) -> None:
    vent = make_vent(document, width=900.0)
    fresh = FreeCAD.newDocument("Fresh")
    wanted = model(make_vent(fresh, width=1_000.0))
    FreeCAD.closeDocument(fresh.Name)
    before = model(vent)
    settle()
    asked, filled = [], []
    fill = part_kind.fill

    def stopped(obj, assembly):
        fill(obj, assembly)
        filled.append(obj.KindId)
        if len(filled) == 8:
            press_escape_and_say_yes(asked)

    monkeypatch.setattr(part_kind, "fill", stopped)
    vent.Width = 1_000.0
    document.recompute()
    monkeypatch.undo()
    assert asked and 8 <= len(filled) < len(parts_of(vent)), "FreeCAD has not stopped"
    half = model(vent)
    assert half not in (before, wanted)
    assert not_settled(document)
    document.recompute()
    assert model(vent) == wanted and not_settled(document) == []
