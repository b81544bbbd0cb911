# SPDX-License-Identifier: LGPL-2.1-or-later
"""Where the GUI, if there is one, learns of objects that have been made or reopened.

This room knows nothing of view providers; the view puts itself on this list.
"""

from __future__ import annotations

from collections.abc import Callable

import FreeCAD

_listeners: list[Callable[[FreeCAD.DocumentObject], None]] = []


def listen(listener: Callable[[FreeCAD.DocumentObject], None]) -> None:
    """Has ``listener`` called with every object that is made or reopened from now on."""
    if listener not in _listeners:
        _listeners.append(listener)


def announce(obj: FreeCAD.DocumentObject) -> None:
    """Tells every listener of an object that is complete but for its view."""
    for listener in _listeners:
        listener(obj)
