"""For the tests in the real GUI (run_gui.py): pictures of the screen, to be looked at and to be tested."""

from __future__ import annotations

import os
import time
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from PySide import QtCore, QtGui


def settle(seconds: float = 0.3) -> None:
    """Lets the GUI do what is waiting: drawing, timers, drawings made in the background."""
    end = time.monotonic() + seconds
    while time.monotonic() < end:
        QtGui.QApplication.processEvents(QtCore.QEventLoop.AllEvents, 50)


def grab(path: Path) -> QtGui.QImage:
    """Saves a picture of the screen; the main window's own grab leaves the 3D view white in 0.20 and 1.0."""
    settle()
    picture = QtGui.QGuiApplication.primaryScreen().grabWindow(0)
    assert not picture.isNull(), "the screen could not be grabbed"
    assert picture.save(str(path)), f"{path} could not be written"
    return picture.toImage()


@pytest.fixture(scope="session")
def shots(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The folder for pictures: LOUVERWRIGHT_SHOTS, or one that goes with the run."""
    named = os.environ.get("LOUVERWRIGHT_SHOTS")
    if not named:
        return tmp_path_factory.mktemp("shots")
    folder = Path(named)
    folder.mkdir(parents=True, exist_ok=True)
    return folder


@pytest.fixture
def shot(shots: Path) -> Callable[[str], QtGui.QImage]:
    """``shot("panel")`` saves the screen as panel.png and returns it."""
    return lambda name: grab(shots / f"{name}.png")


@pytest.fixture
def in_workbench() -> Iterator[None]:
    """The workbench chosen; every document closed again afterwards."""
    import FreeCAD
    import FreeCADGui

    if FreeCADGui.activeWorkbench().name() != "LouverwrightWorkbench":
        FreeCADGui.activateWorkbench("LouverwrightWorkbench")
    settle()
    yield
    for name in FreeCAD.listDocuments():
        FreeCAD.closeDocument(name)
    settle(0.1)


@pytest.fixture
def said(monkeypatch: pytest.MonkeyPatch) -> list[str]:
    """What these commands tell the user in a box."""
    from louverwright.commands import compare, cut_list, mend, roof_opening, shop_drawings, vents_along_ridge

    texts: list[str] = []
    for command in (compare, cut_list, mend, roof_opening, shop_drawings, vents_along_ridge):
        monkeypatch.setattr(command, "tell", texts.append)
    return texts


@pytest.fixture
def no_panel_left() -> Iterator[None]:
    """Closes a panel that a test has left open."""
    import FreeCADGui

    yield
    FreeCADGui.Control.closeDialog()
