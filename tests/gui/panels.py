# SPDX-License-Identifier: LGPL-2.1-or-later
"""Driving a task panel as a hand would: find a field, type into it, press a button."""

from __future__ import annotations

import time
import weakref
from typing import Any

import FreeCADGui
from conftest import settle
from PySide import QtCore, QtGui

from louverwright.panels.vent_panel import VentPanel

#: Every vent's panel: on a busy machine its picture and its check may be waiting still when time is up.
_panels: weakref.WeakSet[VentPanel] = weakref.WeakSet()
_make = VentPanel.__init__


def _made(self: VentPanel, *given: Any, **named: Any) -> None:
    _make(self, *given, **named)
    _panels.add(self)


VentPanel.__init__ = _made    # type: ignore[method-assign]


def open_panels() -> list[VentPanel]:
    """The vents' panels that are in sight."""
    return [panel for panel in _panels if panel.form is not None and panel.form.isVisible()]


def window() -> QtGui.QWidget:
    """FreeCAD's window."""
    return FreeCADGui.getMainWindow()


def widget(name: str) -> QtGui.QWidget:
    """The one widget of the open panel called so; a field is called as its property."""
    found = [each for each in window().findChildren(QtGui.QWidget, name) if each.isVisible()]
    assert found, f"no widget {name} is in sight"
    return found[0]


def type_into(name: str, text: str, rest: float = 0.6) -> None:
    """Types a text over a field's own, key by key, and waits for the check."""
    line = widget(name)
    line = line if isinstance(line, QtGui.QLineEdit) else line.findChild(QtGui.QLineEdit)
    line.setFocus()
    line.selectAll()
    for letter in text or "\b":
        key(line, letter)
    settle(rest)
    end = time.monotonic() + 10.0
    while any(timer.isActive() for panel in _panels for timer in (panel.drawing, panel.checking)):
        assert time.monotonic() < end, "the panel does not come to rest"
        settle(0.05)


def key(target: QtGui.QWidget, letter: str, code: int = 0) -> None:
    """One key pressed; it may close the panel, and its widgets with it."""
    code = int(code or (QtCore.Qt.Key_Backspace if letter == "\b" else 0))
    text = "" if letter == "\b" else letter
    event = QtGui.QKeyEvent(QtCore.QEvent.KeyPress, code, QtCore.Qt.NoModifier, text)
    QtGui.QApplication.sendEvent(target, event)


def press(button: QtGui.QDialogButtonBox.StandardButton) -> None:
    """Presses a button of the open panel."""
    boxes = [box for box in window().findChildren(QtGui.QDialogButtonBox) if box.isVisible() and box.button(button)]
    assert boxes, "no panel is open"
    boxes[-1].button(button).click()
    settle(0.4)


def press_ok() -> None:
    """Accepts the open panel."""
    press(QtGui.QDialogButtonBox.Ok)


def press_cancel() -> None:
    """Cancels the open panel."""
    press(QtGui.QDialogButtonBox.Cancel)
