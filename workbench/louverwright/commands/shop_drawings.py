# SPDX-License-Identifier: LGPL-2.1-or-later
"""Shop drawings: pages of TechDraw for a vent, made once and brought up to date by running the command again."""

from __future__ import annotations

import FreeCAD

from ..exchange.shop_pages import Refreshed, refresh_pages
from ..features.language import tr, translated
from ..features.model import REFUSALS
from .cut_report import chosen_vent, job_of
from .messages import tell


class ShopDrawings:
    """Makes or refreshes the pages of the selected vent, or of the only one, as one undo step."""

    def IsActive(self) -> bool:
        """Whether it is clear which vent is meant."""
        return chosen_vent() is not None

    def Activated(self) -> None:
        """Runs the command and tells what was made; refusals are told in a message."""
        vent = chosen_vent()
        if vent is None:
            return
        try:
            done = draw_pages(vent)
        except (*REFUSALS, ValueError) as refusal:
            tell(tr("The shop drawings were not made.") + f"\n\n{translated(refusal)}")
        else:
            tell(words(done))


def draw_pages(vent: FreeCAD.DocumentObject) -> Refreshed:
    """The vent's pages, made or refreshed in one transaction, which is taken back if it fails.

    Raises one of ``REFUSALS``, or ValueError for a vent that is too large for the paper.
    """
    job, document = job_of(vent), vent.Document
    document.openTransaction(tr("Shop drawings"))
    try:
        done = refresh_pages(vent, job)
    except BaseException:
        document.abortTransaction()
        raise
    document.commitTransaction()
    return done


def words(done: Refreshed) -> str:
    """What was done, and where to find it."""
    told = [tr("Shop drawings: {made} pages made, {renewed} brought up to date, {removed} taken away.", made=done.made,
               renewed=done.renewed, removed=done.removed),
            tr("Double-click a page in the tree to open it. Your own additions to a page are kept, and so is where you move a "
               "picture. Run this command again when the vent has changed.")]
    return "\n\n".join(told)
