"""For all folders of tests: the add-on on the path; property tests that give the same answer each time."""

from __future__ import annotations

import importlib.util
import sys
from pathlib import Path


def pytest_configure() -> None:
    # After the folders' own conftest files: where FreeCAD runs, the add-on must come from its Mod folder.
    if importlib.util.find_spec("louverwright") is None:
        sys.path.insert(0, str(Path(__file__).resolve().parent.parent / "workbench"))


if importlib.util.find_spec("hypothesis") is not None:
    from hypothesis import settings

    settings.register_profile("louverwright", derandomize=True, deadline=None, database=None)
    settings.load_profile("louverwright")
