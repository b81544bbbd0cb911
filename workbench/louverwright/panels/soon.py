# SPDX-License-Identifier: LGPL-2.1-or-later
"""What a hand on a slider asks for many times over and the window needs once."""

from __future__ import annotations

from collections.abc import Callable

from PySide import QtCore


class Soon(QtCore.QObject):
    """Does something once the window has taken in what the hand did, however often it was asked for, and before it paints.

    A timer of no time at all would have its turn after the fields are painted, and a window that holds a 3D view is put
    together anew for each painting: once for the fields and once more for the picture.
    """

    _asked = QtCore.Signal()

    def __init__(self, action: Callable[[], None]) -> None:
        super().__init__()
        self.action, self._due = action, False
        self._asked.connect(self._act, QtCore.Qt.QueuedConnection)

    def start(self) -> None:
        """Asks for it."""
        if not self._due:
            self._due = True
            self._asked.emit()

    def stop(self) -> None:
        """Takes back what was asked and not done yet."""
        self._due = False

    def isActive(self) -> bool:
        """Whether it was asked for and not done yet; called as a timer's is."""
        return self._due

    def _act(self) -> None:
        if self._due:
            self._due = False
            self.action()
