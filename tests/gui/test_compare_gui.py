# SPDX-License-Identifier: LGPL-2.1-or-later
"""Compare with an earlier report, in FreeCAD's window: what it writes and opens, and what it says when it cannot."""

from __future__ import annotations

import json

import FreeCAD
import FreeCADGui
import pytest
from conftest import settle

from louverwright.commands import compare as command
from louverwright.commands.cut_report import write_cut_report
from louverwright.commands.new_vent import new_vent

COMPARE = "Louverwright_Compare"


pytestmark = pytest.mark.usefixtures("in_workbench")


@pytest.fixture
def opened(monkeypatch, tmp_path):
    """Has ``tmp_path / "cuts.json"`` picked; what would have been opened."""
    paths = []
    monkeypatch.setattr(command, "ask_report", lambda start: tmp_path / "cuts.json")
    monkeypatch.setattr(command, "open_in_viewer", lambda path: paths.append(path) or True)
    return paths


@pytest.fixture
def vent(tmp_path):
    """A vent whose report is written."""
    made = new_vent(FreeCAD.newDocument("Barn"))
    made.Revision = "A"
    write_cut_report(made, tmp_path)
    return made


def run():
    FreeCADGui.runCommand(COMPARE, 0)
    settle(0.2)


def test_it_writes_beside_the_earlier_report_and_opens_the_page(vent, opened, said, tmp_path) -> None:
    vent.Revision, vent.PitchLeft = "B", 30.0
    vent.Document.recompute()
    steps = vent.Document.UndoCount
    run()
    assert said == []
    assert [path.name for path in opened] == ["compare.html"]
    data = json.loads((tmp_path / "compare.json").read_text(encoding="utf-8"))
    assert (data["before"]["revision"], data["after"]["revision"]) == ("A", "B")
    assert [each["name"] for each in data["parameters"]] == ["pitch_left"]
    assert {piece["state"] for piece in data["pieces"] if piece["id"].startswith(("louver.", "roof."))} == {"unchanged"}
    assert data["summary"][0] in (tmp_path / "compare.html").read_text(encoding="utf-8")
    assert vent.Document.UndoCount == steps, "nothing in the document is changed"


def test_an_unchanged_vent_keeps_every_piece(vent, opened, said, tmp_path) -> None:
    run()
    data = json.loads((tmp_path / "compare.json").read_text(encoding="utf-8"))
    assert data["summary"] == [f"All {data['after']['pieces']} pieces can be kept as they are."] and said == []


def test_it_says_why_it_cannot(vent, opened, said, tmp_path) -> None:
    good = (tmp_path / "cuts.json").read_text(encoding="utf-8")
    (tmp_path / "cuts.json").write_text(good.replace('"fingerprint": "', '"fingerprint": "0'), encoding="utf-8")
    run()
    assert len(said) == 1 and "cuts.json: fingerprint: The file says" in said[0]
    (tmp_path / "cuts.json").write_text('{"louverwright": 1}', encoding="utf-8")
    run()
    assert len(said) == 2 and "Choose a cuts.json." in said[1]
    (tmp_path / "cuts.json").write_text(good, encoding="utf-8")
    vent.Width = 5000.0
    run()
    assert len(said) == 3 and "Width is 5000 mm" in said[2]
    assert opened == [] and not (tmp_path / "compare.html").exists()


def test_it_is_given_up_with_the_file(vent, opened, said, monkeypatch, tmp_path) -> None:
    monkeypatch.setattr(command, "ask_report", lambda start: None)
    run()
    assert (said, opened, (tmp_path / "compare.html").exists()) == ([], [], False)


def test_without_a_viewer_it_says_where_the_papers_are(vent, opened, said, monkeypatch) -> None:
    monkeypatch.setattr(command, "open_in_viewer", lambda path: False)
    run()
    assert len(said) == 1 and "compare.html" in said[0] and "compare.json" in said[0]


def test_it_is_active_when_it_is_clear_which_vent() -> None:
    assert not FreeCADGui.Command.get(COMPARE).isActive()
