# SPDX-License-Identifier: LGPL-2.1-or-later
"""What the user wants new vents to begin with: units, paper, stock list and saw, kept in FreeCAD's own settings.

A vent takes them when it is made and then keeps them as its own properties, so a file prints alike everywhere.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

import FreeCAD

from ..core.parameters import BY_NAME, CHOICE, COUNT, PAPER, PARAMETERS, TEXT, Parameter
from ..core.spec import plain_finding
from .language import tr

GROUP = "User parameter:BaseApp/Preferences/Mod/Louverwright"
#: The parameters that can be preferred: those of paper and shop, and the stock list.
NAMES = (*(row.name for row in PARAMETERS if row.scope == PAPER), "stock_list")


def preferred() -> dict[str, Any]:
    """The values that the user has set, by the parameters' names; one that cannot be used is told of and left out."""
    kept = {name: value for _, name, value in FreeCAD.ParamGet(GROUP).GetContents() or ()}
    values: dict[str, Any] = {}
    for row in (BY_NAME[name] for name in NAMES if name in kept):
        wrong = plain_finding(row, kept[row.name])
        if wrong is None:
            values[row.name] = kept[row.name]
        else:
            FreeCAD.Console.PrintWarning(tr("Louverwright's preferences: {sentence}", sentence=wrong.sentence) + "\n")
    return values


def keep(values: Mapping[str, Any]) -> None:
    """Keeps values as preferred; one that is the parameter's own default is forgotten."""
    group = FreeCAD.ParamGet(GROUP)
    for name, value in values.items():
        row = BY_NAME[name]
        forget(row)
        if value == row.default:
            continue
        if row.kind in (CHOICE, TEXT):
            group.SetString(name, value)
        elif row.kind == COUNT:
            group.SetInt(name, value)
        else:
            group.SetFloat(name, value)


def forget(row: Parameter) -> None:
    """Takes a preferred value away, of whatever type it was kept as."""
    group = FreeCAD.ParamGet(GROUP)
    for remove in (group.RemString, group.RemInt, group.RemFloat):
        remove(row.name)
