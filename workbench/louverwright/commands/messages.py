# SPDX-License-Identifier: LGPL-2.1-or-later
"""Telling the user something in a box."""

from __future__ import annotations

import FreeCADGui
from PySide import QtGui


def tell(text: str) -> None:
    """A message box with a sentence; waits until it is closed."""
    QtGui.QMessageBox.warning(FreeCADGui.getMainWindow(), "Louverwright", text)
