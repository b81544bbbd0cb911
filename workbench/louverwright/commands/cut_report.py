# SPDX-License-Identifier: LGPL-2.1-or-later
"""Cut report: the papers of a vent, written to a folder and opened."""

from __future__ import annotations

from pathlib import Path

import FreeCAD
import FreeCADGui
from PySide import QtCore, QtGui

from ..exchange.papers import job_from_values, write_papers
from ..exchange.pdf import PdfError
from ..features.language import tr, translated
from ..features.migrations import refuse_newer
from ..features.model import REFUSALS, folder_of_document, wishes_of
from ..features.properties import values_of
from ..features.vent import is_vent, vent_of
from ..report.job import Job
from .messages import tell


class CutReport:
    """Writes the papers of the selected vent, or of the only one."""

    def IsActive(self) -> bool:
        """Whether it is clear which vent is meant."""
        return chosen_vent() is not None

    def Activated(self) -> None:
        """Asks for a folder, writes and opens; failures are told in a message."""
        vent = chosen_vent()
        folder = ask_folder(folder_of_document(vent.Document) or Path.home()) if vent is not None else None
        if folder is None:
            return
        try:
            written = write_cut_report(vent, folder)
        except (*REFUSALS, PdfError) as error:
            tell(tr("The report was not written.") + f"\n\n{translated(error)}")
        except OSError as error:
            tell(tr("The report could not be written to this folder:")
                + f" {folder}\n\n{error.strerror or error}.")
        else:
            open_first(written)


def write_cut_report(vent: FreeCAD.DocumentObject, folder: Path) -> list[Path]:
    """The papers of a vent.  Raises one of ``REFUSALS``, PdfError, or OSError for a folder that cannot be written."""
    return write_papers(job_of(vent), folder)


def job_of(vent: FreeCAD.DocumentObject) -> Job:
    """The vent as its report has it.  Raises one of ``REFUSALS``."""
    refuse_newer(vent)
    return job_from_values(values_of(vent), vent.Revision or "1", folder_of_document(vent.Document),
                           parts=wishes_of(vent))


def chosen_vent() -> FreeCAD.DocumentObject | None:
    """The vent that is selected, or one of whose parts is; else the document's only one; None if that is unclear."""
    document = FreeCAD.ActiveDocument
    if document is None:
        return None
    selected = [vent_of(each) for each in FreeCADGui.Selection.getSelection(document.Name)]
    vents = {vent.Name: vent for vent in selected if vent is not None}
    if not vents:
        vents = {each.Name: each for each in document.Objects if is_vent(each)}
    return next(iter(vents.values())) if len(vents) == 1 else None


def ask_folder(start: Path) -> Path | None:
    """The folder that the user picks; None for none."""
    picked = QtGui.QFileDialog.getExistingDirectory(
        FreeCADGui.getMainWindow(), tr("Folder for the cut report"), str(start))
    return Path(picked) if picked else None


def open_first(written: list[Path]) -> None:
    """Opens the first paper that the system has a viewer for."""
    readable = [path for path in written if path.suffix in (".html", ".pdf")]
    if not any(open_in_viewer(path) for path in readable):
        tell(tr("The report is written, but this system has no viewer for it:")
            + "\n\n" + "\n".join(str(path) for path in written))


def open_in_viewer(path: Path) -> bool:
    """Whether the system opens the file."""
    return bool(QtGui.QDesktopServices.openUrl(QtCore.QUrl.fromLocalFile(str(path))))
