# SPDX-License-Identifier: LGPL-2.1-or-later
"""Nothing that a file holds is run, nothing goes out to a network, and no paper makes another program run anything.

The source is read: what could do such a thing stands in a list with its place and its reason, or the test fails.
"""

from __future__ import annotations

import ast
import csv
import io
import json
import stat
from collections.abc import Iterator
from pathlib import Path

import pytest
from making import ROOT

from louverwright.core.part_wish import PartWish
from louverwright.exchange.papers import job_from_values, write_together
from louverwright.exchange.scenario import scenario_from
from louverwright.report.csv_file import to_csv

WORKBENCH = ROOT / "workbench"
#: Names that run a text as a program, by themselves.
RUNNERS = {"eval", "exec", "compile", "__import__", "execfile", "breakpoint", "globals", "locals", "vars"}
#: Modules that run programs, unpack objects, load libraries or speak to a network.
MODULES = {"subprocess", "pickle", "cPickle", "marshal", "shelve", "dill", "socket", "ssl", "urllib", "urllib2", "urllib3",
           "http", "ftplib",
           "smtplib", "telnetlib", "xmlrpc", "asyncio", "requests", "socketserver", "webbrowser", "ctypes", "cffi",
           "multiprocessing", "pty",
           "code", "codeop", "runpy", "importlib", "imp", "pkgutil", "zipimport", "xml", "yaml", "sqlite3", "dbm", "builtins"}
#: Attributes of whatever object that do so.
ATTRIBUTES = {"system", "popen", "startfile", "execv", "execve", "execl", "execlp", "execvp", "execvpe", "spawnl", "spawnv",
              "spawnlp", "fork",
              "evalExpression", "setExpression", "openUrl", "doCommand", "runCommand", "QProcess", "QNetworkAccessManager",
              "QTcpSocket",
              "QWebEngineView", "import_module", "loads_module", "insert_source"}
#: Where one of these stands all the same, and why.
ALLOWED = {
    ("louverwright/exchange/host.py", "importlib"): "asks whether there is a module FreeCAD, a name of our own",
    ("louverwright/exchange/host.py", "execv"): "starts this very command again in /usr/bin/python3",
    ("louverwright/commands/register.py", "importlib"): "loads a command of our own when it is first used",
    ("louverwright/features/properties.py",
     "evalExpression"): "FreeCAD's expressions, which FreeCAD evaluates at any rate: no Python",
    ("louverwright/features/row.py", "setExpression"): "a placement made of an internal name and a number",
    ("louverwright/view/providers.py", "runCommand"): "a command of our own, by a name in the source",
    ("louverwright/view/context_menu.py", "runCommand"): "a command of our own, by a name in the source",
    ("louverwright/commands/cut_report.py", "openUrl"): "shows a paper of our own by fromLocalFile, never what a file says"}


def sources() -> list[Path]:
    return sorted(path for path in WORKBENCH.rglob("*.py") if "__pycache__" not in path.parts)


def dangers(tree: ast.AST) -> Iterator[str]:
    """What in a module could run something or go out."""
    for node in ast.walk(tree):
        if isinstance(node, ast.Import):
            yield from (alias.name.split(".")[0] for alias in node.names if alias.name.split(".")[0] in MODULES)
        elif isinstance(node, ast.ImportFrom) and not node.level and node.module and node.module.split(".")[0] in MODULES:
            yield node.module.split(".")[0]
        elif isinstance(node, ast.Name) and node.id in RUNNERS:
            yield node.id
        elif isinstance(node, ast.ImportFrom) and node.module in ("os", "posix"):
            yield from (alias.name for alias in node.names if alias.name in ATTRIBUTES)
        elif isinstance(node, ast.Attribute) and node.attr in ATTRIBUTES:
            of = getattr(node.value, "id", "")
            if node.attr != "system" or of in ("os", "posix", "nt"):    # a style of lengths has a system too
                yield node.attr


def test_what_could_run_or_send_something_stands_in_the_list_with_its_reason() -> None:
    found = {(path.relative_to(WORKBENCH).as_posix(), name) for path in sources()
             for name in dangers(ast.parse(path.read_text(encoding="utf-8")))}
    assert found == set(ALLOWED)


@pytest.mark.parametrize("line", ["eval(text)", "exec(text)", "import pickle", "from subprocess import run",
                                  "import urllib.request", "import os; os.system(a)", "from os import system",
                                  "os.popen(a)", "from xml.etree import ElementTree", "QtCore.QProcess.startDetached(a)",
                                  "f = eval", "import socket as s",
                                  "Gui.doCommand(a)", "__import__(a)", "obj.setExpression('Width', a)",
                                  "importlib.import_module(a)"])
def test_the_reading_of_the_source_would_find_it(line: str) -> None:
    assert list(dangers(ast.parse(line)))


def test_the_command_that_opens_a_paper_takes_a_path_only() -> None:
    text = (WORKBENCH / "louverwright/commands/cut_report.py").read_text(encoding="utf-8")
    assert text.count("openUrl(") == text.count("openUrl(QtCore.QUrl.fromLocalFile(str(path)))") == 1


def test_what_is_loaded_by_name_is_named_in_the_source() -> None:
    """``import_module`` gets a module of the room of commands only, of a row of the table in the same file."""
    text = (WORKBENCH / "louverwright/commands/register.py").read_text(encoding="utf-8")
    assert text.count("import_module(") == text.count('import_module(f"{__package__}.{self.row.module}")') == 1
    tree = ast.parse(text)
    (rows,) = (node.value for node in tree.body if isinstance(node, (ast.Assign, ast.AnnAssign))
               and getattr(node.targets[0] if isinstance(node, ast.Assign) else node.target, "id", "") == "ROWS")
    assert isinstance(rows, ast.Tuple)
    assert all(isinstance(row, ast.Call) and isinstance(row.args[0], ast.Constant) for row in rows.elts)


# ---- papers

STARTS = ["=1+1", "+1", "-1", "@SUM(1)", "\t=1", "\r=1", "\n=1", '=HYPERLINK("http://a.example")', "=cmd|' /C calc'!A0"]


@pytest.mark.parametrize("text", STARTS)
def test_no_cell_of_the_cut_list_is_a_formula(text: str) -> None:
    stock = {"frame_stock": "2x4"}
    job = job_from_values({"project": text, "notes": text, **stock}, text.strip(), parts={
        "base.leg.gable": PartWish(note=text), "louver.slat": PartWish(note=text, left_out=True)})
    rows = list(csv.reader(io.StringIO(to_csv(job).removeprefix("\ufeff"))))
    cells = [cell for row in rows for cell in row]
    assert not [cell for cell in cells if cell[:1] and cell[0] in "=+-@\t\r\n"]
    assert sum(cell == f"'{text}" for cell in cells) > 3, "the text is there, as a text"


def test_names_in_a_stock_list_are_no_formulas_either(tmp_path: Path) -> None:
    item = {"name": "=1+1", "form": "dimension", "thickness": 38, "width": 89, "lengths": [3600], "density": 450,
            "material": "@x"}
    (tmp_path / "yard.json").write_text(json.dumps({"items": [item], "usual": {"frame_stock": "=1+1"}}), encoding="utf-8")
    scenario = scenario_from({"louverwright": 1, "parameters": {"stock_list": "yard.json"}}, tmp_path)
    text = to_csv(job_from_values(scenario.values, folder=tmp_path))
    cells = [cell for row in csv.reader(io.StringIO(text.removeprefix("\ufeff"))) for cell in row]
    assert not [cell for cell in cells if cell[:1] and cell[0] in "=+-@\t\r"]
    assert any(cell.startswith("'=1+1") for cell in cells)


# ---- files


def test_papers_go_in_place_together_from_a_folder_of_their_own(tmp_path: Path) -> None:
    seen: list[tuple[int, int]] = []

    def make(path: Path) -> None:
        seen.append((stat.S_IMODE(path.parent.stat().st_mode), len(list(tmp_path.iterdir()))))
        path.write_text("new", encoding="utf-8")

    def fail(path: Path) -> None:
        raise OSError("The disk is full.")

    names = ["a.html", "b.json", "c.csv"]
    assert write_together(tmp_path, dict.fromkeys(names, make)) == [tmp_path / name for name in names]
    assert seen == [(0o700, 1)] * 3, "private, and nothing in its place before all is made"
    for name in names:
        (tmp_path / name).write_text("old", encoding="utf-8")
    with pytest.raises(OSError, match="disk is full"):
        write_together(tmp_path, {"a.html": make, "b.json": make, "c.csv": fail})
    with pytest.raises(FileNotFoundError, match="nothing was written"):
        write_together(tmp_path, {"a.html": make, "b.json": lambda path: None})
    assert {path.name: path.read_text(encoding="utf-8") for path in tmp_path.iterdir()} == dict.fromkeys(names, "old")
