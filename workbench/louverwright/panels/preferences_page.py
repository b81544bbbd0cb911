# SPDX-License-Identifier: LGPL-2.1-or-later
"""What FreeCAD is given at its start as our page of preferences: light, the page itself is made when it is opened."""

from __future__ import annotations

from typing import Any


class PreferencesPage:
    """Makes the page when FreeCAD opens its preferences."""

    def __init__(self, parent: Any = None) -> None:
        from .preferences import Preferences

        self.page = Preferences()
        self.form = self.page.form

    def loadSettings(self) -> None:
        """Shows what is preferred now."""
        self.page.load()

    def saveSettings(self) -> None:
        """Keeps what is shown."""
        self.page.save()
