"""For all folders of tests: the add-on on the path; property tests that give the same answer each time; no file left out.

A run of whole folders in which a file of tests took no part, by not one test that passed, is no good run.
"""

from __future__ import annotations

import importlib.util
import sys
from pathlib import Path
from typing import Any

_passed: set[str] = set()


def pytest_configure() -> None:
    # After the folders' own conftest files: where FreeCAD runs, the add-on must come from its Mod folder.
    if importlib.util.find_spec("louverwright") is None:
        sys.path.insert(0, str(Path(__file__).resolve().parent.parent / "workbench"))


if importlib.util.find_spec("hypothesis") is not None:
    from hypothesis import settings

    settings.register_profile("louverwright", derandomize=True, deadline=None, database=None)
    settings.load_profile("louverwright")


def pytest_runtest_logreport(report: Any) -> None:
    if report.when == "call" and report.passed:
        _passed.add(report.nodeid.split("::")[0])


def whole_folders(config: Any) -> list[Path]:
    """The folders that were asked for as wholes; none where anything else was asked for."""
    option = config.option
    asked = [Path(config.invocation_params.dir, argument) for argument in config.args]
    part = any(getattr(option, name, None) for name in ("keyword", "markexpr", "deselect", "collectonly", "lf", "stepwise",
                                                        "ignore",
                                                        "ignore_glob", "maxfail"))
    return [] if part or not all(path.is_dir() for path in asked) else asked


def left_out(config: Any) -> list[Path]:
    """Files of tests, in the folders that were asked for, of which no test has passed."""
    took_part = {(config.rootpath / name).resolve() for name in _passed}
    files = {path.resolve() for folder in whole_folders(config) for path in folder.rglob("test_*.py")}
    return sorted(files - took_part)


def pytest_sessionfinish(session: Any, exitstatus: int) -> None:
    if exitstatus == 0 and left_out(session.config):
        session.exitstatus = 1


def pytest_terminal_summary(terminalreporter: Any, exitstatus: int, config: Any) -> None:
    for path in left_out(config):
        terminalreporter.write_line(f"LEFT OUT: not one test of {path.name} has passed")
