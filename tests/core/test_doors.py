"""Reads the source: imports go through the doors between the rooms only, and the house is kept in order.

The doors, one way: core <- report <- exchange, core <- features <- exchange,
core, report, features, exchange <- view <- panels <- commands <- InitGui. Three modules stand in no room:
`folders`, which says where the add-on's folders lie, `places`, which reads shipped and users' files, and `__main__`.
"""

from __future__ import annotations

import ast
import shutil
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[2]
WORKBENCH = ROOT / "workbench"
PACKAGE = "louverwright"
SPDX = "# SPDX-License-Identifier: LGPL-2.1-or-later"
LONGEST = 500
TOP_LEVEL = {"README.md", "DEVELOPERS.md", "LICENSE", "package.xml",
             "workbench", "icons", "resources", "tests"}

DATA = {"core", "report", "features", "exchange"}
# What each room may import besides itself and the package's own name. Everything under workbench has a row.
DOORS: dict[str, set[str]] = {
    PACKAGE: set(),
    "folders": set(),
    "places": {"core", "folders"},
    "core": set(),
    "report": {"core"},
    "features": {"core", "places"},
    "exchange": {"core", "report", "features", "folders", "places"},
    "view": {*DATA, "folders", "places"},
    "panels": {*DATA, "places", "view"},
    "commands": {*DATA, "folders", "places", "view", "panels"},
    "__main__": {"core", "report", "exchange", "places"},
    "Init": {*DATA, "places"},
    "InitGui": {*DATA, "folders", "places", "view", "panels", "commands"},
}
ROOMS = {*DATA, "view", "panels", "commands"}
# Rooms that run in any Python, with what they may import besides the standard library.
PURE: dict[str, set[str]] = {PACKAGE: set(), "folders": set(), "places": set(), "__main__": set(),
                             "core": {"numpy"}, "report": {"numpy"}}
WITHOUT_GUI = {"features", "exchange", "Init"}
BINDINGS = {"PySide2", "PySide6", "shiboken2", "shiboken6", "PyQt5", "PyQt6"}


def sources() -> list[Path]:
    return sorted(path for path in WORKBENCH.rglob("*.py") if "__pycache__" not in path.parts)


def room_of(path: Path) -> str:
    """The room of the module at ``path``, counted from workbench; its own name if it stands in none."""
    parts = path.with_suffix("").parts
    if parts[0] != PACKAGE:
        return parts[0]
    return PACKAGE if parts[1] == "__init__" else parts[1]


def absolute(node: ast.ImportFrom, path: Path) -> str:
    """The full name of the module that a ``from`` names."""
    if not node.level:
        return node.module or ""
    package = path.parts[:-1]
    if node.level > len(package):
        raise ValueError(f"{path}:{node.lineno}: a relative import out of the package")
    return ".".join([*package[: len(package) - node.level + 1], *filter(None, [node.module])])


def imported(tree: ast.Module, path: Path) -> Iterator[tuple[int, str]]:
    """Line and full name of all that a module imports, inside functions and by ``import_module`` as well."""
    for node in ast.walk(tree):
        if isinstance(node, ast.Import):
            yield from ((node.lineno, alias.name) for alias in node.names)
        elif isinstance(node, ast.ImportFrom):
            base = absolute(node, path)
            yield from ((node.lineno, f"{base}.{alias.name}") for alias in node.names)
        elif isinstance(node, ast.Call) and called(node) in {"import_module", "__import__"}:
            yield from ((node.lineno, word.value) for word in node.args[:1] if isinstance(word, ast.Constant))


def called(node: ast.Call) -> str:
    return getattr(node.func, "attr", getattr(node.func, "id", ""))


def outside_fault(room: str, top: str) -> str:
    """What is wrong with ``room`` importing ``top``, which is not of the add-on; nothing if all is well."""
    if top in BINDINGS:
        return "the Qt binding is taken from PySide"
    if room in PURE and top not in sys.stdlib_module_names and top not in PURE[room]:
        return f"{room} runs in any Python, on {' and '.join(['the standard library', *PURE[room]])} alone"
    if room in WITHOUT_GUI and top == "FreeCADGui":
        return f"{room} works without the GUI"
    return ""


def fault(room: str, name: str) -> str:
    """What is wrong with ``room`` importing ``name``; nothing if all is well."""
    parts = name.split(".")
    if parts[0] != PACKAGE:
        return outside_fault(room, parts[0])
    if len(parts) == 1 or parts[1] not in DOORS or parts[1] == room:
        return ""    # the package's own names, such as its version
    return "" if parts[1] in DOORS[room] else f"there is no door from {room} to {parts[1]}"


def faults(source: str, path: Path) -> list[str]:
    """Every import in ``source``, the module at ``path`` below workbench, that should not be there."""
    room = room_of(path)
    if room not in DOORS:
        return [f"{path}: no such room: {room}"]
    found = ((line, name, fault(room, name)) for line, name in imported(ast.parse(source), path))
    return [f"{path}:{line}: {name}: {why}" for line, name, why in found if why]


def test_imports_go_through_the_doors() -> None:
    assert len(sources()) > 3
    found = [line for path in sources()
             for line in faults(path.read_text(encoding="utf-8"), path.relative_to(WORKBENCH))]
    assert not found, "\n".join(found)


@pytest.mark.parametrize(("path", "source", "expected"), [
    ("louverwright/core/a.py", "import FreeCAD", "core runs in any Python"),
    ("louverwright/core/a.py", "import scipy.optimize", "core runs in any Python"),
    ("louverwright/core/a.py", "from louverwright.report import page", "no door from core to report"),
    ("louverwright/core/a.py", "from louverwright import features", "no door from core to features"),
    ("louverwright/core/a.py", "from .. import report", "no door from core to report"),
    ("louverwright/core/a.py", "def f():\n    from ..exchange.pdf import write", "a.py:2: "),
    ("louverwright/core/a.py", "from ..places import read", "no door from core to places"),
    ("louverwright/core/a.py", "importlib.import_module('louverwright.view')", "no door from core to view"),
    ("louverwright/report/a.py", "import Part", "report runs in any Python"),
    ("louverwright/report/a.py", "from PySide import QtGui", "report runs in any Python"),
    ("louverwright/report/__init__.py", "from ..features import vent", "no door from report to features"),
    ("louverwright/features/a.py", "import FreeCADGui as Gui", "features works without the GUI"),
    ("louverwright/features/a.py", "from ..report import page", "no door from features to report"),
    ("louverwright/features/a.py", "from ..exchange import pdf", "no door from features to exchange"),
    ("louverwright/features/a.py", "from ..view.providers import Vent", "no door from features to view"),
    ("louverwright/exchange/a.py", "__import__('FreeCADGui')", "exchange works without the GUI"),
    ("louverwright/view/a.py", "from louverwright.panels import task", "no door from view to panels"),
    ("louverwright/panels/a.py", "from PySide2 import QtCore", "the Qt binding"),
    ("louverwright/panels/a.py", "import louverwright.commands.new", "no door from panels to commands"),
    ("louverwright/places.py", "from .report import page", "no door from places to report"),
    ("louverwright/places.py", "import numpy", "places runs in any Python"),
    ("louverwright/__main__.py", "from . import features", "no door from __main__ to features"),
    ("louverwright/__init__.py", "from .core import units", "no door from louverwright to core"),
    ("louverwright/utils.py", "", "no such room: utils"),
    ("louverwright/cellar/a.py", "", "no such room: cellar"),
    ("Init.py", "import louverwright.commands", "no door from Init to commands"),
    ("InitGui.py", "from PySide6 import QtCore", "the Qt binding"),
    ("helpers.py", "", "no such room: helpers"),
])
def test_a_bad_import_is_found(path: str, source: str, expected: str) -> None:
    assert [line for line in faults(source, Path(path)) if expected in line]


@pytest.mark.parametrize(("path", "source"), [
    ("louverwright/core/a.py", "import math\nimport numpy as np\nfrom . import units"),
    ("louverwright/core/a.py", "from louverwright import __version__\nfrom .. import core"),
    ("louverwright/report/a.py", "from ..core.units import read\nfrom louverwright.core import solid"),
    ("louverwright/features/a.py", "import FreeCAD, Part\nfrom ..core import solid\nfrom .. import places"),
    ("louverwright/exchange/a.py", "from PySide import QtGui\nfrom ..report import page"),
    ("louverwright/exchange/a.py", "from ..features import vent\nfrom ..places import read"),
    ("louverwright/view/a.py", "import FreeCADGui\nfrom ..features import vent"),
    ("louverwright/commands/a.py", "from ..panels import task\nfrom ..places import stock"),
    ("louverwright/__main__.py", "import argparse\nfrom .exchange import scenario\nfrom .report import html"),
    ("InitGui.py", "import FreeCADGui\nfrom louverwright import commands"),
])
def test_a_good_import_is_let_through(path: str, source: str) -> None:
    assert faults(source, Path(path)) == []


def test_a_relative_import_out_of_the_package_is_an_error() -> None:
    with pytest.raises(ValueError, match="out of the package"):
        faults("from .... import core", Path("louverwright/core/a.py"))


def test_every_room_begins_with_a_docstring() -> None:
    folders = [path for path in (WORKBENCH / PACKAGE).iterdir() if path.is_dir() and any(path.glob("*.py"))]
    assert folders
    assert {path.name for path in folders} <= ROOMS
    for folder in folders:
        first = folder / "__init__.py"
        assert first.is_file(), f"{folder.name} has no __init__.py"
        assert ast.get_docstring(ast.parse(first.read_text(encoding="utf-8"))), f"{first} has no docstring"


def test_every_module_names_the_licence_on_its_first_line() -> None:
    without = [str(path.relative_to(ROOT)) for path in sources()
               if not path.read_text(encoding="utf-8").startswith(SPDX + "\n")]
    assert not without


def test_no_module_is_too_long() -> None:
    lengths = {path.relative_to(ROOT).as_posix(): path.read_text(encoding="utf-8").count("\n")
               for path in sources()}
    assert {name: length for name, length in lengths.items() if length > LONGEST} == {}


def test_the_top_level_holds_what_it_should() -> None:
    if not (ROOT / ".git").exists() or shutil.which("git") is None:
        pytest.skip("not a git checkout")
    # The checkout may belong to another user. What is new counts before it is committed.
    git = ["git", "-c", f"safe.directory={ROOT}"]
    listed = subprocess.run([*git, "ls-files", "-z", "--cached", "--others", "--exclude-standard"],
                            cwd=ROOT, check=True, capture_output=True, text=True).stdout.split("\0")
    present = {name.split("/")[0] for name in listed if name and (ROOT / name).exists()}
    assert {name for name in present if not name.startswith(".")} == TOP_LEVEL
