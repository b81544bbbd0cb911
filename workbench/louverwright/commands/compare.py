# SPDX-License-Identifier: LGPL-2.1-or-later
"""Compare with an earlier report: which pieces already cut can be kept, written beside that report and opened."""

from __future__ import annotations

from pathlib import Path

import FreeCAD
import FreeCADGui
from PySide import QtGui

from ..exchange.compare import read_report, write_comparison
from ..exchange.scenario import ScenarioError
from ..features.language import tr, translated
from ..features.model import REFUSALS, folder_of_document
from ..report.compare_words import Pair
from .cut_report import chosen_vent, job_of, open_in_viewer
from .messages import tell


class Compare:
    """Compares the selected vent, or the only one, with the exact numbers of an earlier report."""

    def IsActive(self) -> bool:
        """Whether it is clear which vent is meant."""
        return chosen_vent() is not None

    def Activated(self) -> None:
        """Asks for the earlier report, compares, writes beside it and opens; failures are told in a message."""
        vent = chosen_vent()
        earlier = ask_report(folder_of_document(vent.Document) or Path.home()) if vent is not None else None
        if earlier is None:
            return
        try:
            written = compare_with(vent, earlier)
        except (*REFUSALS, ScenarioError) as error:
            tell(tr("The vent was not compared.") + f"\n\n{translated(error)}")
        except OSError as error:
            tell(tr("The comparison could not be written to this folder:")
                + f" {earlier.parent}\n\n{error.strerror or error}.")
        else:
            if not open_in_viewer(written[0]):
                tell(tr("The comparison is written, but this system has no viewer for it:")
                    + "\n\n" + "\n".join(str(path) for path in written))


def compare_with(vent: FreeCAD.DocumentObject, earlier: Path) -> list[Path]:
    """Writes the comparison of a vent with an earlier report beside that report: compare.html, compare.json.

    Raises one of ``REFUSALS``, ScenarioError for a file that cannot be compared with, or OSError.
    """
    after = job_of(vent)
    return write_comparison(Pair(read_report(earlier), after), earlier.parent)


def ask_report(start: Path) -> Path | None:
    """The earlier report's file that the user picks; None for none."""
    picked, _ = QtGui.QFileDialog.getOpenFileName(
        FreeCADGui.getMainWindow(), tr("Exact numbers of the earlier report (cuts.json)"), str(start),
        tr("Exact numbers of a report") + " (*.json)")
    return Path(picked) if picked else None
