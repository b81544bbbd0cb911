"""The add-on's manifest as FreeCAD reads it, and its two start-up files run the way FreeCAD runs them."""

from __future__ import annotations

import re
import sys
import types
import xml.etree.ElementTree as ElementTree
from pathlib import Path

import FreeCAD
import pytest

ROOT = Path(__file__).resolve().parents[2]
WORKBENCH = ROOT / "workbench"
CLASS = "LouverwrightWorkbench"
NOT_SET = ("", "0.0.0")    # what FreeCAD says where the manifest is silent: 1.0 and later, and 0.20


@pytest.fixture
def manifest():
    return FreeCAD.Metadata(str(ROOT / "package.xml"))


@pytest.fixture
def workbench(manifest):
    content = manifest.Content
    assert list(content) == ["workbench"]
    (only,) = content["workbench"]
    return only


def test_the_manifest_names_the_add_on(manifest) -> None:
    assert manifest.Name == "Louverwright"
    assert manifest.Description
    assert re.fullmatch(r"\d+\.\d+\.\d+", manifest.Version)
    assert manifest.Version != "0.0.0"
    (licence,) = manifest.License
    assert licence["name"] == "LGPL-2.1-or-later"
    assert (ROOT / licence["file"]).is_file()


def test_the_manifest_leads_to_the_workbench(workbench) -> None:
    assert workbench.Name
    assert workbench.Classname == CLASS
    assert workbench.Subdirectory == "./workbench/"    # without it nothing is registered
    for name in ("Init.py", "InitGui.py", "louverwright/__init__.py"):
        assert (WORKBENCH / name).is_file(), name


def test_no_newer_freecad_is_shut_out(manifest, workbench) -> None:
    for part in (manifest, workbench):
        assert part.FreeCADMax in NOT_SET
        assert part.supportsCurrentFreeCAD()


def test_both_icons_are_there(manifest, workbench) -> None:
    assert (ROOT / manifest.Icon).is_file()
    # FreeCAD joins this one to the subdirectory.
    assert (WORKBENCH / workbench.Icon).resolve() == (ROOT / "icons" / "louverwright.svg").resolve()


def test_the_icon_is_an_svg_of_64_pixels() -> None:
    icon = ElementTree.parse(ROOT / "icons" / "louverwright.svg").getroot()
    assert icon.tag == "{http://www.w3.org/2000/svg}svg"
    assert [icon.get(name, "").removesuffix("px") for name in ("width", "height")] == ["64", "64"]
    assert icon.get("viewBox", "").split() == ["0", "0", "64", "64"]


def run_as_freecad_does(name: str, names: dict[str, object]) -> None:
    """Runs a start-up file inside a function, ``names`` about it: no __file__, locals apart from globals."""
    code = compile((WORKBENCH / name).read_text(encoding="utf-8"), str(WORKBENCH / name), "exec")
    exec(code, {"__name__": "FreeCADInit", "FreeCAD": FreeCAD, "App": FreeCAD, **names}, {})


def test_init_runs_without_file() -> None:
    run_as_freecad_does("Init.py", {})


class Workbench:
    """What FreeCAD's own Workbench class promises a workbench."""

    MenuText = ""
    ToolTip = ""
    Icon = ""


def test_initgui_registers_the_workbench_without_file(monkeypatch: pytest.MonkeyPatch) -> None:
    added: list[object] = []
    gui = types.ModuleType("FreeCADGui")    # the console has none that knows workbenches
    gui.Workbench = Workbench
    gui.addWorkbench = added.append
    commands: list[str] = []
    gui.addCommand = lambda name, command: commands.append(name)
    gui.addLanguagePath = gui.addIconPath = gui.addPreferencePage = lambda *words: None
    gui.updateLocale = lambda: None
    monkeypatch.setitem(sys.modules, "FreeCADGui", gui)
    run_as_freecad_does("InitGui.py", {"FreeCADGui": gui, "Gui": gui, "Workbench": Workbench})
    assert "Louverwright_NewVent" in commands
    (bench,) = added
    if isinstance(bench, type):    # FreeCAD takes the class as well
        bench = bench()
    assert type(bench).__name__ == CLASS
    assert bench.MenuText
    assert bench.ToolTip
    assert callable(bench.Initialize)
    assert bench.GetClassName() == "Gui::PythonWorkbench"
    assert not bench.Icon    # FreeCAD takes that of package.xml, and waits where there are two
