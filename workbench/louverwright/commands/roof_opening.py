# SPDX-License-Identifier: LGPL-2.1-or-later
"""Roof opening: the rough opening of a vent, cut into the roof that it stands on."""

from __future__ import annotations

import FreeCAD
import FreeCADGui

from ..core.roof_opening import OpeningError
from ..core.roof_planes import RoofError
from ..features.language import tr, translated
from ..features.model import REFUSALS
from ..features.opening import make_opening
from ..features.roof_link import is_linked
from .cut_report import chosen_vent
from .messages import tell


class OpenRoof:
    """Cuts the opening for the selected vent, or for the only one, as one undo step."""

    def IsActive(self) -> bool:
        """Whether it is clear which vent is meant, and that stands on a roof that is drawn."""
        vent = chosen_vent()
        return vent is not None and is_linked(vent) and not FreeCADGui.Control.activeDialog()

    def Activated(self) -> None:
        """Runs the command and selects the opening, so that its properties are seen; refusals are told in a message."""
        vent = chosen_vent()
        if vent is None:
            return
        try:
            made = open_roof(vent)
        except (*REFUSALS, RoofError, OpeningError) as refusal:
            tell(translated(refusal))
            return
        FreeCADGui.Selection.clearSelection()
        FreeCADGui.Selection.addSelection(made.Document.Name, made.Name)


def open_roof(vent: FreeCAD.DocumentObject) -> FreeCAD.DocumentObject:
    """The opening, made in one transaction, which is taken back if it fails.

    Raises OpeningError, RoofError or one of ``REFUSALS``.
    """
    document = vent.Document
    document.openTransaction(tr("Roof opening"))
    try:
        made = make_opening(vent)
    except BaseException:
        document.abortTransaction()
        raise
    document.commitTransaction()
    return made
