# SPDX-License-Identifier: LGPL-2.1-or-later
"""FreeCAD's language switched while it runs: menus, panel, findings and property editor follow, and go back to English."""

from __future__ import annotations

import html

import FreeCAD
import FreeCADGui
import pytest
from conftest import settle
from panels import press_cancel, type_into, widget
from PySide import QtCore, QtGui

from louverwright.core.parameters import BY_NAME
from louverwright.core.spec import tooltip
from louverwright.features.vent import make_vent

NEW = "Louverwright_NewVent"
LANGUAGES = {"de": "German", "fr": "French"}
pytestmark = pytest.mark.usefixtures("in_workbench")


@pytest.fixture
def switch():
    """``switch("German")``; afterwards English again."""
    def to(language: str) -> None:
        FreeCADGui.setLocale(language)
        settle(0.5)

    to("English")
    yield to
    FreeCADGui.Control.closeDialog()
    to("English")


def action() -> QtGui.QAction:
    """The command of a new vent in menu and toolbar."""
    actions = FreeCADGui.Command.get(NEW).getAction()
    assert actions
    return actions[0]


def labels() -> list[str]:
    """What stands on labels, buttons and heads of the panel that is open."""
    panel = widget("Width").window()
    found = panel.findChildren(QtGui.QLabel) + panel.findChildren(QtGui.QToolButton)
    return [each.text() for each in found]


def new_panel() -> None:
    FreeCAD.newDocument("Barn")
    settle(0.3)
    FreeCADGui.runCommand(NEW, 0)
    settle(0.4)


EXPECTED = {
    "de": ("Neuer Dachreiter", ("Hauptmaße", "Breite", "Dachneigung", "Was daraus folgt"), "Dachreiter mit Lamellen",
           "Breite ist 250 mm: der Wert muss mindestens 300 mm und höchstens 3600 mm sein", "Dorthin",
           "„ein Holzstück“ lässt sich nicht lesen; gebraucht wird eine Länge", "Reiterdach"),
    "fr": ("Nouveau lanterneau", ("Dimensions principales", "Largeur", "Pente du toit", "Ce qui en découle"),
           "Lanterneau à lames", "Largeur vaut 250 mm : la valeur doit être d'au moins 300 mm et au plus 3600 mm", "Y aller",
           "« ein Holzstück » ne peut pas être lu comme une longueur", "Toit du lanterneau"),
}


@pytest.mark.parametrize("code", EXPECTED)
def test_everything_follows_the_language(code: str, switch, shot) -> None:
    command, wanted, label, finding, link, unread, group = EXPECTED[code]
    assert action().text() == "New vent"
    switch(LANGUAGES[code])
    assert action().text() == command
    assert "3D" in action().toolTip()
    assert "panel" not in action().toolTip()
    new_panel()
    shown = labels()
    assert [each for each in wanted if each not in shown] == []
    assert widget("Width").toolTip().startswith({"de": "Breite des Dachreiters über", "fr": "Largeur du lanterneau"}[code])
    type_into("Width", "250")
    settle(1.0)
    assert finding in html.unescape(widget("Findings").text())
    assert link in widget("Findings").text()
    shot(f"language_{code}")
    type_into("Width", "ein Holzstück")
    settle(1.0)
    assert unread in widget("Findings").text()
    press_cancel()
    vent = make_vent(FreeCAD.ActiveDocument or FreeCAD.newDocument("Barn"))
    assert vent.Label == label
    vent.Sides, vent.RoofForm = 6, "gable"
    vent.Document.recompute()
    assert {"de": "nur ein Grundriss mit 4 Seiten", "fr": "seul un plan à 4 côtés"}[code] in vent.getStatusString()
    # What FreeCAD's property editor asks for.
    context = "App::Property"
    assert QtCore.QCoreApplication.translate(context, vent.getGroupOfProperty("RoofPitch")) == group
    doc = vent.getDocumentationOfProperty("RoofPitch")
    assert doc == tooltip(BY_NAME["roof_pitch"])
    assert QtCore.QCoreApplication.translate(context, doc) != doc
    switch("English")
    assert action().text() == "New vent"
    assert QtCore.QCoreApplication.translate(context, doc) == doc


def test_a_language_that_we_have_not_is_english(switch) -> None:
    switch("Italian")
    assert action().text() == "New vent"
    new_panel()
    assert "Main dimensions" in labels()
    press_cancel()
