# SPDX-License-Identifier: LGPL-2.1-or-later
"""A part came out wrong, in FreeCAD's window: the dialog, what the command writes and opens, what it says when it cannot."""

from __future__ import annotations

import json

import FreeCAD
import FreeCADGui
import pytest
from conftest import settle
from PySide import QtCore, QtGui

from louverwright.commands import mend as command
from louverwright.commands.mend import Dialog, Told, job_of
from louverwright.commands.new_vent import new_vent

MEND = "Louverwright_Mend"

pytestmark = pytest.mark.usefixtures("in_workbench")


@pytest.fixture
def opened(monkeypatch, tmp_path):
    """Has ``tmp_path`` picked as the folder; what would have been opened."""
    paths = []
    monkeypatch.setattr(command, "ask_folder", lambda start: tmp_path)
    monkeypatch.setattr(command, "open_in_viewer", lambda path: paths.append(path) or True)
    return paths


@pytest.fixture
def vent():
    """A new vent."""
    return new_vent(FreeCAD.newDocument("Barn"))


def telling(monkeypatch, told):
    monkeypatch.setattr(command, "ask_told", lambda job, mark: told)


def run():
    FreeCADGui.runCommand(MEND, 0)
    settle(0.2)


def short(**more):
    """Slats of 652 mm, or what else is told of them."""
    return Told(**{"mark": "L9", "count": 2, "sizes": {"length": "652 mm"}, "lost": False, "cut": "", **more})


def test_it_writes_what_can_be_done_and_opens_the_page(vent, opened, said, monkeypatch, tmp_path) -> None:
    telling(monkeypatch, short())
    steps = vent.Document.UndoCount
    run()
    assert said == [] and [path.name for path in opened] == ["mend.html"]
    data = json.loads((tmp_path / "mend.json").read_text(encoding="utf-8"))
    assert (data["part"]["mark"], data["part"]["count"], data["part"]["real"][0]) == ("L9", 2, 652.0)
    assert data["summary"][0] in (tmp_path / "mend.html").read_text(encoding="utf-8")
    assert vent.Document.UndoCount == steps, "nothing in the document is changed"


def test_the_parameter_that_it_names_makes_the_part_in_the_document(vent, opened, said, monkeypatch, tmp_path) -> None:
    telling(monkeypatch, short())
    run()
    best = json.loads((tmp_path / "mend.json").read_text(encoding="utf-8"))["ways"][0]
    assert best["parameter"] == "dado_depth"
    vent.DadoDepth = best["new"]
    vent.Document.recompute()
    slats = next(each for each in vent.Document.Objects if getattr(each, "KindId", "") == "louver.slat")
    assert {round(size.x, 3) for size in slats.Sizes} == {652.0}


@pytest.mark.parametrize(("more", "words"), [
    ({"mark": "L99"}, "“L99” is not a mark of this vent"), ({"sizes": {"length": "wide"}}, "“wide” is not a length"),
    ({"sizes": {"length": "6 m"}}, "4876.8 mm at most"), ({"sizes": {}}, "No size is given"),
])
def test_it_says_why_it_cannot(vent, opened, said, monkeypatch, tmp_path, more, words) -> None:
    telling(monkeypatch, short(**more))
    run()
    assert len(said) == 1 and words in said[0] and opened == [] and not (tmp_path / "mend.html").exists()


def test_a_vent_that_is_refused_is_not_mended(vent, opened, said, monkeypatch) -> None:
    telling(monkeypatch, short())
    vent.Width = 5000.0
    run()
    assert len(said) == 1 and "Width is 5000 mm" in said[0] and opened == []


def test_it_is_given_up_with_the_dialog_or_with_the_folder(vent, opened, said, monkeypatch, tmp_path) -> None:
    telling(monkeypatch, None)
    run()
    telling(monkeypatch, short())
    monkeypatch.setattr(command, "ask_folder", lambda start: None)
    run()
    assert (said, opened, list(tmp_path.iterdir())) == ([], [], [])


def test_without_a_viewer_it_says_where_the_papers_are(vent, opened, said, monkeypatch) -> None:
    telling(monkeypatch, short())
    monkeypatch.setattr(command, "open_in_viewer", lambda path: False)
    run()
    assert len(said) == 1 and "mend.html" in said[0] and "mend.json" in said[0]


def test_a_folder_that_cannot_be_written_is_told(vent, opened, said, monkeypatch, tmp_path) -> None:
    (tmp_path / "file").write_text("in the way", encoding="utf-8")
    telling(monkeypatch, short())
    monkeypatch.setattr(command, "ask_folder", lambda start: tmp_path / "file")
    run()
    assert len(said) == 1 and "could not be written to this folder" in said[0] and opened == []


def test_the_dialog_shows_the_drawn_sizes_and_takes_the_real_ones(vent) -> None:
    dialog = Dialog(job_of(vent), "L9")
    assert dialog.parts.currentData() == "L9" and dialog.parts.currentText() == "L9 · Slat"
    assert dialog.sizes["length"].placeholderText() == "as drawn: 655\u00a0mm"
    assert (dialog.count.value(), dialog.count.maximum()) == (20, 20)
    dialog.sizes["length"].setText("25 5/8 in")
    dialog.count.setValue(3)
    dialog.cut.setText("L10")
    assert dialog.told() == Told("L9", 3, {"length": "25 5/8 in", "width": "", "thickness": ""}, False, "L10")
    dialog.lost.setChecked(True)
    assert not dialog.sizes["length"].isEnabled() and dialog.told().sizes["length"] == "" and dialog.told().lost
    dialog.parts.setCurrentIndex(dialog.parts.findData("R2"))
    assert dialog.count.maximum() == 1 and dialog.sizes["length"].text() == ""


def test_the_dialog_begins_with_the_part_that_is_selected(vent, opened, said, tmp_path) -> None:
    """The whole way through the window: select, run, answer, OK."""
    slats = next(each for each in vent.Document.Objects if getattr(each, "KindId", "") == "louver.slat")
    FreeCADGui.Selection.clearSelection()
    FreeCADGui.Selection.addSelection(vent.Document.Name, slats.Name)
    seen = []

    def answer():
        dialog = QtGui.QApplication.activeModalWidget()
        if isinstance(dialog, Dialog):
            seen.append(dialog.parts.currentData())
            dialog.sizes["length"].setText("652")
            dialog.accept()

    QtCore.QTimer.singleShot(500, answer)
    run()
    assert seen == ["L9"] and said == [] and [path.name for path in opened] == ["mend.html"]
    assert json.loads((tmp_path / "mend.json").read_text(encoding="utf-8"))["part"]["real"][0] == 652.0


def test_it_is_active_when_it_is_clear_which_vent() -> None:
    assert not FreeCADGui.Command.get(MEND).isActive()
    new_vent(FreeCAD.newDocument("Barn"))
    assert FreeCADGui.Command.get(MEND).isActive()
