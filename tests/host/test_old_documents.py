# SPDX-License-Identifier: LGPL-2.1-or-later
"""Documents of earlier releases, older ones, newer ones, and those that a FreeCAD without this add-on has saved."""

from __future__ import annotations

import json
import os
import re
import shutil
import subprocess
import sys
import zipfile
from pathlib import Path

import FreeCAD
import pytest

sys.path.append(str(Path(__file__).resolve().parent))
from documents import told
from vents import errors_in, everything, not_settled

from louverwright.core.parameters import PARAMETERS
from louverwright.features import migrations
from louverwright.features.vent import is_vent, make_vent, parts_of

FOLDER = Path(__file__).resolve().parent.parent / "documents"
SAVED = sorted(path.stem for path in FOLDER.glob("*.FCStd"))
#: Rows that a document of before there were gables, measured stock, wishes and a lift plan does not have.
LATER = [row.property_name for row in PARAMETERS if row.group == "As measured" or row.name in (
    "roof_form", "gable_ridge", "gable_end", "verge", "flare_pitch", "flare_reach", "lift_limit", "passage_width",
    "wind_speed")]
WISHES = ["OwnStock", "Note", "LeftOut"]


@pytest.fixture
def opened(tmp_path):
    """Opens a copy of a document, and closes all afterwards."""
    def open_copy(path: Path) -> FreeCAD.Document:
        copy = tmp_path / f"copy-{path.name}"
        shutil.copy(path, copy)
        return FreeCAD.openDocument(str(copy))

    yield open_copy
    for name in FreeCAD.listDocuments():
        FreeCAD.closeDocument(name)


def differences(now: dict, then: dict, way: str = "") -> list[str]:
    """Where two tellings differ: numbers by more than a millionth; what is new is no difference."""
    if isinstance(then, dict):
        return [line for key in then for line in
                (differences(now[key], then[key], f"{way}/{key}") if key in now else [f"{way}/{key} is gone"])]
    if isinstance(then, list) and isinstance(now, list) and len(now) == len(then):
        pairs = enumerate(zip(now, then, strict=True))
        return [line for number, (a, b) in pairs for line in differences(a, b, f"{way}/{number}")]
    if isinstance(then, float) and isinstance(now, (int, float)):
        return [] if abs(now - then) <= 1e-3 + 1e-6 * abs(then) else [f"{way}: {now}, was {then}"]
    return [] if now == then else [f"{way}: {now!r}, was {then!r}"]


def vents(document: FreeCAD.Document) -> list:
    return [obj for obj in document.Objects if is_vent(obj)]


def touched(document: FreeCAD.Document) -> list[str]:
    """What is touched of ours; nothing where FreeCAD has touched all, a plain roof too, for an older FreeCAD saved it."""
    found = [obj.Name for obj in document.Objects if "Touched" in obj.State]
    return [] if "Roof" in found else found


def edited(path: Path, to: Path, *changes) -> Path:
    """A document whose Document.xml was changed by functions of its text."""
    with zipfile.ZipFile(path) as old, zipfile.ZipFile(to, "w", zipfile.ZIP_DEFLATED) as new:
        for name in old.namelist():
            content = old.read(name)
            if name == "Document.xml":
                text = content.decode("utf-8")
                for change in changes:
                    text = change(text)
                content = text.encode("utf-8")
            new.writestr(name, content)
    return to


def without(*names: str):
    """Takes properties out of a document's text, as an older release would have written it."""
    def change(text: str) -> str:
        for name in names:
            text = re.sub(rf'\s*<Property name="{name}" .*?</Property>', "", text, flags=re.DOTALL)

        def recount(block: re.Match[str]) -> str:
            inner = block.group(0)
            return re.sub(r'<Properties Count="\d+"', f'<Properties Count="{len(re.findall("<Property name=", inner))}"',
                          inner, count=1)

        return re.sub(r"<Properties Count=.*?</Properties>", recount, text, flags=re.DOTALL)

    return change


def of_schema(number: int):
    """Writes another schema number into every vent."""
    return lambda text: re.sub(r'(<Property name="Schema".*?<Integer value=")\d+', rf"\g<1>{number}", text, flags=re.DOTALL)


# ---- of every release


def test_there_is_a_document_of_a_release() -> None:
    assert SAVED and "vents-0.1.0" in SAVED


@pytest.mark.parametrize("name", SAVED)
def test_a_document_of_a_release_opens_as_it_was_and_is_not_changed_by_that(name, opened, capfd) -> None:
    then = json.loads((FOLDER / f"{name}.json").read_text(encoding="utf-8"))
    document = opened(FOLDER / f"{name}.FCStd")
    assert touched(document) == [], "opening does not mark the document changed"
    assert differences(told(document), then) == []
    assert [vent.Schema for vent in vents(document)] == [migrations.SCHEMA] * 2
    assert {row.property_name for row in PARAMETERS} <= set(vents(document)[0].PropertiesList)
    document.recompute()
    assert differences(told(document), then) == []
    for vent in vents(document):
        for obj in everything(vent):
            obj.touch()
    document.recompute()
    assert not_settled(document) == []
    assert differences(told(document), then) == [], "made anew it is the same"
    assert errors_in("".join(capfd.readouterr())) == []


@pytest.mark.parametrize("name", SAVED)
def test_a_document_of_a_release_can_be_changed_saved_and_opened_again(name, opened, tmp_path) -> None:
    document = opened(FOLDER / f"{name}.FCStd")
    free, seated = vents(document)
    document.UndoMode = 1
    document.openTransaction("Change")
    free.Width, seated.SlatAngle = 1_100.0, 43.0
    document.recompute()
    document.commitTransaction()
    assert not_settled(document) == [] and free.OverallWidth.Value == pytest.approx(1_100.0)
    changed = told(document)
    document.undo()
    assert differences(told(document), json.loads((FOLDER / f"{name}.json").read_text(encoding="utf-8"))) == []
    document.redo()
    document.saveAs(str(tmp_path / "again.FCStd"))
    FreeCAD.closeDocument(document.Name)
    assert differences(told(FreeCAD.openDocument(str(tmp_path / "again.FCStd"))), changed) == []


# ---- older and newer than any release


def test_an_older_document_is_given_what_it_lacks(opened, tmp_path) -> None:
    """One that was saved before there were gables, measured stock, wishes for parts and a lift plan."""
    source = FreeCAD.newDocument("Plain")
    volume = make_vent(source, width=1_000.0).Shape.Volume
    source.saveAs(str(tmp_path / "plain.FCStd"))
    FreeCAD.closeDocument(source.Name)
    older = edited(tmp_path / "plain.FCStd", tmp_path / "older.FCStd", without(*LATER, *WISHES))
    with zipfile.ZipFile(older) as archive:
        text = archive.read("Document.xml").decode("utf-8")
    assert len(LATER) > 40 and not any(f'name="{name}"' in text for name in (*LATER, *WISHES))
    document = opened(older)
    (vent,) = vents(document)
    assert touched(document) == []
    assert set(LATER) <= set(vent.PropertiesList) and all(set(WISHES) <= set(each.PropertiesList) for each in parts_of(vent))
    for row in (row for row in PARAMETERS if row.property_name in LATER):
        value = getattr(vent, row.property_name)
        assert getattr(value, "Value", value) == row.default, row.name
    for obj in everything(vent):
        obj.touch()
    document.recompute()
    assert not_settled(document) == [] and vent.Shape.Volume == pytest.approx(volume, rel=1e-9)


def test_a_document_of_an_older_schema_goes_through_the_steps_once(opened, tmp_path, monkeypatch) -> None:
    """A step that a later release may have: a property under its old name, in other units."""
    monkeypatch.setattr(migrations, "SCHEMA", 3)
    ran = []

    def first(obj) -> None:
        ran.append(1)
        obj.addProperty("App::PropertyLength", "Width", "Size")
        obj.Width = obj.WidthInMetres * 1000.0

    monkeypatch.setattr(migrations, "STEPS", {1: first, 2: lambda obj: ran.append(2)})
    source = FreeCAD.newDocument("Plain")
    monkeypatch.setattr(migrations, "STEPS", {})
    monkeypatch.setattr(migrations, "SCHEMA", 1)
    make_vent(source, width=1_000.0)
    source.saveAs(str(tmp_path / "plain.FCStd"))
    FreeCAD.closeDocument(source.Name)

    def renamed(text: str) -> str:
        old = '<Property name="WidthInMetres" type="App::PropertyFloat" group="Size" doc="" attr="0" ro="0" hide="0">'
        return re.sub(r'<Property name="Width" type="App::PropertyLength".*?</Property>',
                      f'{old}<Float value="1.0"/></Property>',
                      text, count=1, flags=re.DOTALL)

    older = edited(tmp_path / "plain.FCStd", tmp_path / "older.FCStd", renamed)
    monkeypatch.setattr(migrations, "SCHEMA", 3)
    monkeypatch.setattr(migrations, "STEPS", {1: first, 2: lambda obj: ran.append(2)})
    document = opened(older)
    (vent,) = vents(document)
    assert ran == [1, 2] and vent.Schema == 3 and vent.Width.Value == pytest.approx(1_000.0)
    vent.touch()
    document.recompute()
    assert not_settled(document) == [] and vent.OverallWidth.Value == pytest.approx(1_000.0)


def test_a_document_of_a_newer_release_keeps_its_shape_and_says_so(opened, tmp_path) -> None:
    name = SAVED[-1]
    newer = edited(FOLDER / f"{name}.FCStd", tmp_path / "newer.FCStd", of_schema(migrations.SCHEMA + 1))
    document = opened(newer)
    volumes = [vent.Shape.Volume for vent in vents(document)]
    assert touched(document) == []
    for vent in vents(document):
        vent.Width = 1_300.0
    document.recompute()
    for vent, volume in zip(vents(document), volumes, strict=True):
        assert "was written by a newer Louverwright" in vent.getStatusString() and vent.Shape.Volume == volume


# ---- without the add-on

ELSEWHERE = """
import os, sys
import FreeCAD
status = 1
try:
    document = FreeCAD.openDocument(os.environ["VENT_FROM"])
    vent = document.getObject("Vent")
    assert "louverwright" not in sys.modules and vent.Proxy is None
    assert abs(vent.Shape.Volume - float(os.environ["VENT_VOLUME"])) < 1e-3
    document.recompute()
    if os.environ["VENT_WIDTH"]:
        vent.Width = float(os.environ["VENT_WIDTH"])
        document.recompute()
    assert abs(vent.Shape.Volume - float(os.environ["VENT_VOLUME"])) < 1e-3
    document.saveAs(os.environ["VENT_TO"])
    status = 0
finally:
    sys.__stdout__.flush()
    os._exit(status)
"""


def saved_elsewhere(folder: Path, volume: float, width: str = "") -> Path:
    """The newest document, saved by a FreeCAD that does not have this add-on, and maybe changed there."""
    (folder / "home").mkdir()
    (folder / "elsewhere.py").write_text(ELSEWHERE, encoding="utf-8")
    shutil.copy(FOLDER / f"{SAVED[-1]}.FCStd", folder / "from.FCStd")
    environment = {key: value for key, value in os.environ.items() if key not in ("PYTHONPATH", "PYTEST_ARGS")}
    done = subprocess.run(["freecadcmd", str(folder / "elsewhere.py")], capture_output=True, text=True, timeout=120,
                          check=False,
                          stdin=subprocess.DEVNULL,
                          env={**environment, "FREECAD_USER_HOME": str(folder / "home"),
                               "VENT_FROM": str(folder / "from.FCStd"),
                               "VENT_TO": str(folder / "to.FCStd"), "VENT_VOLUME": repr(volume), "VENT_WIDTH": width})
    assert done.returncode == 0, done.stdout + done.stderr
    return folder / "to.FCStd"


def test_without_the_add_on_the_shapes_stay_and_with_it_again_all_works(opened, tmp_path) -> None:
    then = json.loads((FOLDER / f"{SAVED[-1]}.json").read_text(encoding="utf-8"))
    document = opened(saved_elsewhere(tmp_path, then["Vent"]["volume"]))
    assert [vent.Name for vent in vents(document)] == ["Vent", "Vent001"], "once this was dead for ever"
    assert touched(document) == []
    assert differences(told(document), then) == []
    for obj in document.Objects:
        obj.touch()
    document.recompute()
    assert not_settled(document) == [] and differences(told(document), then) == []
    vents(document)[0].Width = 1_100.0
    document.recompute()
    assert not_settled(document) == [] and vents(document)[0].OverallWidth.Value == pytest.approx(1_100.0)


def test_what_was_changed_without_the_add_on_is_made_when_it_is_there_again(opened, tmp_path) -> None:
    then = json.loads((FOLDER / f"{SAVED[-1]}.json").read_text(encoding="utf-8"))
    document = opened(saved_elsewhere(tmp_path, then["Vent"]["volume"], "1100"))
    assert touched(document) in ([], ["Vent"])    # by FreeCAD, before or in the first recompute
    document.recompute()
    assert not_settled(document) == [] and document.getObject("Vent").OverallWidth.Value == pytest.approx(1_100.0)
    assert differences(told(document)["Vent001"], then["Vent001"]) == []
