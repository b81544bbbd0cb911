"""The workbench in the real window: its commands, what they show, and that all of it can be undone."""

from __future__ import annotations

import sys
import zipfile
from pathlib import Path

import FreeCAD
import FreeCADGui
import pytest
from conftest import settle
from panels import press_cancel, press_ok
from PySide import QtCore, QtGui, QtSvg

sys.path.append(str(Path(__file__).resolve().parents[1] / "host"))
from vents import everything, model, not_settled, part

from louverwright.core.kinds import KINDS
from louverwright.features.vent import make_vent
from louverwright.folders import ICONS

WORKBENCH = "LouverwrightWorkbench"
NEW, REPORT = "Louverwright_NewVent", "Louverwright_CutReport"


@pytest.fixture(scope="module", autouse=True)
def workbench():
    if FreeCADGui.activeWorkbench().name() != WORKBENCH:
        FreeCADGui.activateWorkbench(WORKBENCH)
    settle()


@pytest.fixture(autouse=True)
def dialogs():
    """Closes what opens a modal box and fails the test that did not expect it, instead of waiting for ever."""
    seen = []

    def close():
        box = QtGui.QApplication.activeModalWidget()
        if box is not None:
            seen.append(box.text() if hasattr(box, "text") else box.windowTitle())
            box.close()

    timer = QtCore.QTimer()
    timer.timeout.connect(close)
    timer.start(200)
    yield seen
    timer.stop()
    assert seen == []


@pytest.fixture(autouse=True)
def no_documents():
    yield
    for name in FreeCAD.listDocuments():
        FreeCAD.closeDocument(name)
    settle(0.1)


@pytest.fixture
def said(monkeypatch):
    """What the commands tell the user in a box."""
    from louverwright.commands import cut_report, new_vent

    texts = []
    monkeypatch.setattr(cut_report, "tell", texts.append)
    monkeypatch.setattr(new_vent, "tell", texts.append)
    return texts


def run(command):
    FreeCADGui.runCommand(command, 0)
    settle(0.2)


def new_vent():
    """A vent by the command, in a new document."""
    run(NEW)
    press_ok()
    return FreeCAD.ActiveDocument.ActiveObject.Document.getObject("Vent")


def select(*objects):
    FreeCADGui.Selection.clearSelection()
    for obj in objects:
        FreeCADGui.Selection.addSelection(obj.Document.Name, obj.Name)
    settle(0.1)


def is_active(command):
    return FreeCADGui.Command.get(command).isActive()


def view_pixels(image):
    """The colours of the 3D view in a picture of the screen, every fourth pixel each way."""
    area = FreeCADGui.getMainWindow().centralWidget()
    corner = area.mapToGlobal(QtCore.QPoint(0, 0))
    left, top = corner.x() + area.width() // 5, corner.y() + area.height() // 8
    return [image.pixel(x, y) for x in range(left, left + area.width() * 3 // 5, 4)
            for y in range(top, top + area.height() * 3 // 4, 4)]


# ---- the workbench


def test_the_workbench_is_there_with_toolbar_and_menu() -> None:
    assert FreeCADGui.activeWorkbench().name() == WORKBENCH
    bench = FreeCADGui.listWorkbenches()[WORKBENCH]
    assert bench.MenuText == "Louverwright"
    bars = [bar for bar in FreeCADGui.getMainWindow().findChildren(QtGui.QToolBar)
            if bar.windowTitle() == "Louverwright"]
    assert len(bars) == 1
    assert [action.text().replace("&", "") for action in bars[0].actions()] == [
        "New vent", "Edit vent", "Roof opening", "Take apart", "Parts and marks", "Vents along the ridge", "Cut report",
        "Cut list in a spreadsheet", "Papers for the shop", "Shop drawings",
        "Compare with an earlier report", "A part came out wrong"]
    assert all(not action.icon().isNull() for action in bars[0].actions())
    assert "Louverwright" in [action.text().replace("&", "")
                              for action in FreeCADGui.getMainWindow().menuBar().actions()]


def test_the_workbench_has_the_icon_of_its_package() -> None:
    icon = Path(FreeCADGui.getWorkbench(WORKBENCH).Icon)
    assert icon.is_absolute() and icon.resolve() == (ICONS / "louverwright.svg").resolve()


@pytest.mark.parametrize("name", sorted(path.stem for path in ICONS.glob("*.svg")))
def test_icons_are_drawn_within_their_margin(name) -> None:
    image = QtGui.QImage(64, 64, QtGui.QImage.Format_ARGB32)
    image.fill(QtCore.Qt.transparent)
    painter = QtGui.QPainter(image)
    QtSvg.QSvgRenderer(str(ICONS / f"{name}.svg")).render(painter)
    painter.end()
    drawn = [(x, y) for x in range(64) for y in range(64) if QtGui.QColor.fromRgba(image.pixel(x, y)).alpha() > 40]
    assert len(drawn) > 800
    assert all(2 <= value <= 61 for point in drawn for value in point)


# ---- New vent


def test_new_vent_shows_a_vent(shot) -> None:
    FreeCAD.newDocument("Empty")
    settle(0.5)
    run(NEW)
    press_cancel()    # the window makes room for the panel once
    empty = view_pixels(shot("empty"))
    vent = new_vent()
    settle(0.7)
    picture = shot("new_vent")
    full = view_pixels(picture)
    changed = sum(a != b for a, b in zip(empty, full, strict=True)) / len(full)
    assert 0.10 < changed < 0.95, f"{changed:.0%} of the view has changed"
    assert len(set(full) - set(empty)) > 5    # frame, sheet, sheathing, ring, in light and shade, and edges
    assert vent.ViewObject.DisplayMode == "Group"
    assert not_settled(vent.Document) == []


def test_the_picture_moves_with_the_vent_and_goes_when_hidden(shot) -> None:
    vent = new_vent()
    view = FreeCADGui.activeView()
    view.setAnimationEnabled(False)
    before = view_pixels(shot("vent_before"))
    vent.Placement.Base.x = 100_000.0
    vent.Document.recompute()
    away = view_pixels(shot("vent_away"))
    assert sum(a != b for a, b in zip(before, away, strict=True)) > 0.1 * len(before)
    vent.Placement.Base.x = 0.0
    vent.Document.recompute()
    assert sum(a != b for a, b in zip(before, view_pixels(shot("vent_back")), strict=True)) < 0.01 * len(before)
    vent.ViewObject.Visibility = False
    assert view_pixels(shot("vent_hidden")) == away


def test_new_vent_is_one_step_to_undo() -> None:
    FreeCAD.newDocument("Empty")
    vent = new_vent()
    document, made = vent.Document, model(vent)
    assert document.UndoNames == ["New vent"]
    run("Std_Undo")
    assert document.Objects == []
    run("Std_Redo")
    document.recompute()
    assert model(document.getObject("Vent")) == made
    assert document.getObject("Vent").ViewObject.Proxy.__class__.__name__ == "VentView"


def test_a_refused_new_vent_leaves_nothing_and_says_why(monkeypatch, said) -> None:
    from louverwright.commands import new_vent as command
    from louverwright.core.spec import Finding, SpecError

    def fail(document):
        document.addObject("Part::Box", "Half")
        raise SpecError((Finding("width", "width", "1 mm", "it is too little", "Make it more."),))

    monkeypatch.setattr(command, "make_vent", fail)
    document = FreeCAD.newDocument("Empty")
    document.UndoMode = 1
    run(NEW)
    press_ok()
    assert said == ["Width is 1 mm: it is too little. Make it more."]
    assert (document.Objects, document.UndoNames) == ([], [])
    press_cancel()


def test_new_vent_goes_into_the_active_part() -> None:
    document = FreeCAD.newDocument("Empty")
    holder = document.addObject("App::Part", "Building")
    FreeCADGui.activeView().setActiveObject("part", holder)
    vent = new_vent()
    assert vent in holder.Group
    assert not_settled(document) == []


def test_members_stand_in_the_tree_under_the_vent() -> None:
    vent = new_vent()
    assert [each.Label for each in vent.ViewObject.claimChildren()] == ["Base", "Louver stage", "Roof stage"]
    base = vent.ViewObject.claimChildren()[0]
    assert part(vent, "base.leg.gable") in base.ViewObject.claimChildren()
    for obj in everything(vent):
        assert Path(obj.ViewObject.Proxy.getIcon()).is_file()
    assert not part(vent, "roof.step").ViewObject.Visibility


def test_materials_are_told_apart() -> None:
    vent = new_vent()
    shown = {each: part(vent, each).ViewObject.ShapeColor[:3]
             for each in ("base.leg.gable", "base.cladding.gable", "roof.sheathing", "louver.screen", "louver.trim.eave")}
    assert len(set(shown.values())) == len(shown)
    assert part(vent, "louver.screen").ViewObject.Transparency > 0


# ---- deleting


def test_deleting_the_vent_leaves_nothing_of_it_and_is_one_step() -> None:
    vent = new_vent()
    document = vent.Document
    box = document.addObject("Part::Box", "Box")
    vent.addObject(box)
    second = make_vent(document)
    kept, undone = {each.Name for each in everything(second)}, model(vent)
    steps = document.UndoCount
    select(vent)
    run("Std_Delete")
    assert {each.Name for each in document.Objects} == kept | {"Box"}
    assert document.UndoCount == steps + 1
    run("Std_Undo")
    document.recompute()
    vent = document.getObject("Vent")
    assert model(vent) == undone
    assert vent.ViewObject.Proxy.__class__.__name__ == "VentView"
    run("Std_Redo")
    assert {each.Name for each in document.Objects} == kept | {"Box"}


def test_deleting_everything_at_once_works() -> None:
    vent = new_vent()
    document = vent.Document
    select(*everything(vent))
    run("Std_Delete")
    assert document.Objects == []


def test_a_part_alone_is_not_deleted() -> None:
    vent = new_vent()
    before = len(vent.Document.Objects)
    select(part(vent, "louver.frieze"))
    run("Std_Delete")
    assert len(vent.Document.Objects) == before
    vent.Document.removeObject(vent.Name)
    select(vent_part := FreeCAD.ActiveDocument.getObject("LouverFrieze"))
    assert vent_part.Vent is None
    run("Std_Delete")    # without its vent it can go
    assert FreeCAD.ActiveDocument.getObject("LouverFrieze") is None


# ---- opened again


def test_a_document_made_without_a_window_is_given_its_views(tmp_path, shot) -> None:
    document = FreeCAD.newDocument("Headless")
    vent = make_vent(document)
    before = model(vent)
    document.saveAs(str(tmp_path / "with.FCStd"))
    FreeCAD.closeDocument(document.Name)
    bare = without_views(tmp_path / "with.FCStd", tmp_path / "without.FCStd")
    document = FreeCAD.openDocument(str(bare))
    vent = document.getObject("Vent")
    assert not_settled(document) == []
    assert [each.ViewObject.Proxy.__class__.__name__ for each in (vent, *vent.Group)] == ["VentView"] + 3 * ["StageView"]
    assert vent.ViewObject.DisplayMode == "Group"
    assert [each.Label for each in vent.ViewObject.claimChildren()] == ["Base", "Louver stage", "Roof stage"]
    for each in everything(vent):
        assert each.ViewObject.Visibility == each.Visibility
    assert part(vent, "louver.screen").ViewObject.Transparency > 0
    assert model(vent) == before
    FreeCADGui.activeView().viewIsometric()
    FreeCADGui.SendMsgToActiveView("ViewFit")
    settle(0.7)
    shown = view_pixels(shot("repaired"))
    vent.ViewObject.Visibility = False
    hidden = view_pixels(shot("repaired_hidden"))
    assert 0.10 < sum(a != b for a, b in zip(shown, hidden, strict=True)) / len(shown) < 0.95
    assert len(set(shown) - set(hidden)) > 5


def without_views(source, target):
    """A copy of a document as FreeCAD's console would have saved it."""
    with zipfile.ZipFile(source) as old, zipfile.ZipFile(target, "w") as new:
        for name in old.namelist():
            if name == "Document.xml" or not name.startswith(("GuiDocument", "ShapeAppearance", "LineColor",
                                                             "PointColor", "DiffuseColor", "thumbnails")):
                new.writestr(name, old.read(name))
    return target


def test_a_document_saved_with_its_views_keeps_them(tmp_path) -> None:
    vent = new_vent()
    part(vent, "louver.slat").ViewObject.ShapeColor = (0.1, 0.2, 0.3)
    part(vent, "louver.frieze").ViewObject.Visibility = False
    document = vent.Document
    document.recompute()    # the stage, whose member was hidden
    document.saveAs(str(tmp_path / "barn.FCStd"))
    path = document.FileName
    FreeCAD.closeDocument(document.Name)
    document = FreeCAD.openDocument(path)
    settle()
    vent = document.getObject("Vent")
    assert not_settled(document) == []
    assert part(vent, "louver.slat").ViewObject.ShapeColor[:3] == pytest.approx((0.1, 0.2, 0.3), abs=0.01)
    assert not part(vent, "louver.frieze").ViewObject.Visibility
    assert not FreeCADGui.getDocument(document.Name).Modified
    select(vent)
    run("Std_Delete")
    assert document.Objects == []


def test_a_pasted_vent_has_its_views_and_lives_by_itself() -> None:
    vent = new_vent()
    document, kept = vent.Document, model(vent)
    select(*everything(vent))
    run("Std_Copy")
    FreeCADGui.Selection.clearSelection()
    run("Std_Paste")
    document.recompute()
    (copy,) = [each for each in document.Objects if each.Name.startswith("Vent") and each.Name != vent.Name]
    assert len(document.Objects) == 2 * len(everything(vent)) == 2 * len(everything(copy))
    assert model(copy) == kept
    for each, name in zip(everything(copy), ["VentView"] + 3 * ["StageView"] + len(KINDS) * ["PartView"], strict=True):
        assert each.ViewObject.Proxy.__class__.__name__ == name
    assert copy.ViewObject.DisplayMode == "Group"
    select(copy)
    run("Std_Delete")
    assert {each.Name for each in document.Objects} == {each.Name for each in everything(vent)}
    assert model(vent) == kept


# ---- Cut report


@pytest.fixture
def opened(monkeypatch, tmp_path):
    """Has the report written to ``tmp_path / "papers"``; what would have been opened."""
    from louverwright.commands import cut_report

    paths = []
    monkeypatch.setattr(cut_report, "ask_folder", lambda start: tmp_path / "papers")
    monkeypatch.setattr(cut_report, "open_in_viewer", lambda path: paths.append(path) or True)
    return paths


def test_cut_report_writes_and_opens_the_papers(opened, said, tmp_path) -> None:
    vent = new_vent()
    vent.Project, vent.Revision = "Hay barn", "B"
    run(REPORT)
    assert said == []
    names = {path.name for path in (tmp_path / "papers").iterdir()}
    assert names == {"report.html", "report.pdf", "cuts.csv", "cuts.json"}
    assert [path.name for path in opened] == ["report.html"]
    html = (tmp_path / "papers" / "report.html").read_text(encoding="utf-8")
    assert "Hay barn" in html
    assert (tmp_path / "papers" / "report.pdf").read_bytes().startswith(b"%PDF")


def test_cut_report_is_active_when_it_is_clear_which_vent(opened, said) -> None:
    assert not is_active(REPORT)
    first = new_vent()
    document = first.Document
    assert is_active(REPORT)
    second = make_vent(document, width=1000.0)
    select()
    assert not is_active(REPORT)
    for chosen in (first, part(second, "louver.slat"), second.Group[0]):
        select(chosen)
        assert is_active(REPORT)
    select(first, second)
    assert not is_active(REPORT)


def test_cut_report_says_why_it_cannot(opened, said, tmp_path) -> None:
    vent = new_vent()
    vent.Width = 5000.0
    run(REPORT)
    assert len(said) == 1 and "Width is 5000 mm" in said[0]
    vent.Width = 900.0
    (tmp_path / "papers").write_text("a file is in the way")
    run(REPORT)
    assert len(said) == 2 and "could not be written to this folder" in said[1]
    assert opened == []


def test_cut_report_without_a_viewer_says_where_the_papers_are(opened, said, monkeypatch) -> None:
    from louverwright.commands import cut_report

    monkeypatch.setattr(cut_report, "open_in_viewer", lambda path: False)
    new_vent()
    run(REPORT)
    assert len(said) == 1 and "report.pdf" in said[0]


def test_cut_report_is_given_up_with_the_folder(opened, said, monkeypatch, tmp_path) -> None:
    from louverwright.commands import cut_report

    monkeypatch.setattr(cut_report, "ask_folder", lambda start: None)
    new_vent()
    run(REPORT)
    assert (said, opened, (tmp_path / "papers").exists()) == ([], [], False)
