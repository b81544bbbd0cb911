# SPDX-License-Identifier: LGPL-2.1-or-later
"""Cut list in a spreadsheet: the rows of cuts.csv in the document, made or brought up to date."""

from __future__ import annotations

import FreeCAD

from ..features.cut_list import CutList, update_cut_list
from ..features.language import tr, translated
from ..features.model import REFUSALS
from ..report.csv_file import COUNT_COLUMNS, HEAD_ROWS, KEY_COLUMNS, cut_list_rows
from .cut_report import chosen_vent, job_of
from .messages import tell


class CutListInSheet:
    """Writes the cut list of the selected vent, or of the only one, and opens it."""

    def IsActive(self) -> bool:
        """Whether it is clear which vent is meant."""
        return chosen_vent() is not None

    def Activated(self) -> None:
        """Runs the command; a vent that cannot be built is told of in a message."""
        vent = chosen_vent()
        if vent is None:
            return
        try:
            sheet = cut_list_in_sheet(vent)
        except REFUSALS as refusal:
            tell(tr("The cut list was not written.") + f"\n\n{translated(refusal)}")
        else:
            sheet.ViewObject.doubleClicked()    # as a user opens it from the tree


def cut_list_in_sheet(vent: FreeCAD.DocumentObject) -> FreeCAD.DocumentObject:
    """The vent's cut list as it is now, in one transaction, which is taken back if it fails; returns the sheet.

    Raises one of ``REFUSALS``, before anything is changed.
    """
    listed = CutList(cut_list_rows(job_of(vent)), HEAD_ROWS, KEY_COLUMNS, COUNT_COLUMNS)
    document = vent.Document
    document.openTransaction(tr("Cut list in a spreadsheet"))
    try:
        sheet = update_cut_list(vent, listed)
    except BaseException:
        document.abortTransaction()
        raise
    document.commitTransaction()
    document.recompute()
    return sheet
