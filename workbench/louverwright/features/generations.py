# SPDX-License-Identifier: LGPL-2.1-or-later
"""All that differs between FreeCAD 0.20, 1.0 and 1.1, and between their Qts: nothing else asks for a version.

What all three can do, only by other names, is hidden behind one name here; what one of them cannot do has a word that says so.
"""

from __future__ import annotations

from typing import Any

import FreeCAD

#: FreeCAD 1.0 can neither undo that a link was made to an older object nor redo that one was deleted: it says "invalid
#: container", and the document is broken afterwards.
UNDOES_LINKS = tuple(FreeCAD.Version()[:2]) != ("1", "0")


def run_modal(dialog: Any) -> int:
    """Shows a Qt dialog until it is closed; what it was closed with.  PySide 2 has ``exec_``, later ones keep ``exec``."""
    run = getattr(dialog, "exec_", None) or dialog.exec
    return int(run())


def as_number(flags: Any) -> int:
    """Qt flags as the number that FreeCAD wants for a panel's buttons: with Qt 6 they are Python enumerations."""
    return int(getattr(flags, "value", flags))


def count_pixels(symbol: Any) -> None:
    """Has TechDraw take a symbol's pixels for 1/3.78 mm.  0.20 and 1.0 always do; 1.1 does where its view provider is told."""
    shown = symbol.ViewObject
    if shown is not None and "LegacyScaling" in shown.PropertiesList:
        shown.LegacyScaling = True
