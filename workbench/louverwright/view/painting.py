# SPDX-License-Identifier: LGPL-2.1-or-later
"""Colours on the parts of a vent in FreeCAD's window: ours follow the vent's choice, the user's own stay."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import FreeCAD

from ..features.vent import parts_of
from .colours import WAYS, Look, is_ours, look_of


def look_in(part: FreeCAD.DocumentObject) -> Look:
    """How a part looks by its vent's choice of colours."""
    chosen = getattr(getattr(part.Vent, "ViewObject", None), "ColourBy", WAYS[0])
    return look_of(part.KindId, chosen)


def paint(view: Any, look: Look) -> None:
    """Gives a part's view a colour and a transparency."""
    view.ShapeColor = look.colour
    view.Transparency = look.transparency


def paint_all(vent: FreeCAD.DocumentObject) -> None:
    """Colours every part as its vent has it chosen, but those whose colour the user has set."""
    for part in parts_of(vent):
        view = part.ViewObject
        if view is not None and is_ours(part.KindId, view.ShapeColor[:3]):
            view.ShapeColor = look_in(part).colour


def seen_in(vent: FreeCAD.DocumentObject) -> Callable[[str], Look]:
    """How each kind of part of a vent is shown at present, the user's own colours too."""
    shown = {part.KindId: Look(tuple(part.ViewObject.ShapeColor[:3]), part.ViewObject.Transparency) for part in parts_of(vent)}
    return lambda kind_id: shown.get(kind_id) or look_of(kind_id)
