# SPDX-License-Identifier: LGPL-2.1-or-later
"""Vents along the ridge: as many links to a vent as its number of vents asks for, evenly spaced."""

from __future__ import annotations

import FreeCAD

from ..features.generations import UNDOES_LINKS
from ..features.language import tr, translated
from ..features.model import REFUSALS
from ..features.row import update_row
from .cut_report import chosen_vent
from .messages import tell


class VentsAlongRidge:
    """Brings the row of the selected vent, or of the only one, up to its number of vents, as one undo step."""

    def IsActive(self) -> bool:
        """Whether it is clear which vent is meant."""
        return chosen_vent() is not None

    def Activated(self) -> None:
        """Runs the command; refusals, and a vent that is alone, are told in a message."""
        vent = chosen_vent()
        if vent is None:
            return
        try:
            changed = vents_along_ridge(vent)
        except REFUSALS as refusal:
            tell(translated(refusal))
            return
        if not changed and vent.Vents == 1:
            tell(tr("Vents is 1, so the vent stands alone. Set Vents to how many share the ridge, and "
                                   "RidgeLength to the ridge's unbroken length; then run this command again."))


def vents_along_ridge(vent: FreeCAD.DocumentObject) -> bool:
    """Updates the row in one transaction, which is taken back if it fails; True if anything changed.

    Without a transaction where FreeCAD cannot undo it.  Raises one of ``REFUSALS``.
    """
    if not UNDOES_LINKS:
        return update_row(vent)
    document = vent.Document
    document.openTransaction(tr("Vents along the ridge"))
    try:
        changed = update_row(vent)
    except BaseException:
        document.abortTransaction()
        raise
    document.commitTransaction()
    return changed
