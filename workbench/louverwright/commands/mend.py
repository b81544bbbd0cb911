# SPDX-License-Identifier: LGPL-2.1-or-later
"""A part came out wrong: the user says which and how, and gets what can be done about it as a page."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

import FreeCADGui
from PySide import QtGui

from ..core.mend import SIZE_NAMES, MendError
from ..exchange.mend import repair_of, write_mending
from ..features.generations import run_modal
from ..features.language import tr, translated
from ..features.model import REFUSALS, folder_of_document
from ..report.job import Job
from ..report.place_words import part_name
from .cut_report import ask_folder, chosen_vent, job_of, open_in_viewer
from .messages import tell


@dataclass(frozen=True)
class Told:
    """What the user says: a mark, how many pieces, sizes as texts by their names, whether they are lost, marks cut already."""

    mark: str
    count: int
    sizes: dict[str, str]
    lost: bool
    cut: str


class Mend:
    """Asks what came out wrong of the selected vent, or of the only one, and shows what can be done."""

    def IsActive(self) -> bool:
        """Whether it is clear which vent is meant."""
        return chosen_vent() is not None

    def Activated(self) -> None:
        """Asks for the part and for a folder, writes and opens; failures are told in a message."""
        vent = chosen_vent()
        if vent is None:
            return
        folder: Path | None = None
        try:
            job = job_of(vent)
            told = ask_told(job, selected_mark())
            folder = ask_folder(folder_of_document(vent.Document) or Path.home()) if told is not None else None
            if told is None or folder is None:
                return
            written = mend_part(job, told, folder)
        except (*REFUSALS, MendError) as error:
            tell(tr("Nothing can be said about this part.") + f"\n\n{translated(error)}")
        except OSError as error:
            tell(tr("The answer could not be written to this folder:")
                + f" {folder or ''}\n\n{error.strerror or error}.")
        else:
            if not open_in_viewer(written[0]):
                tell(tr("The answer is written, but this system has no viewer for it:")
                    + "\n\n" + "\n".join(str(path) for path in written))


def mend_part(job: Job, told: Told, folder: Path) -> list[Path]:
    """Writes what can be done: mend.html, mend.json.  Raises MendError, or OSError."""
    return write_mending(repair_of(job, told.mark, told.sizes, told.count, told.lost, told.cut), folder)


def selected_mark() -> str:
    """The first mark of the part that is selected; '' if none is."""
    for each in FreeCADGui.Selection.getSelection():
        if getattr(each, "Marks", None) and hasattr(each, "KindId"):
            return str(each.Marks[0])
    return ""


class Dialog(QtGui.QDialog):
    """The questions: part, pieces, real sizes, lost or not, what is cut already."""

    def __init__(self, job: Job, mark: str, parent: QtGui.QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWindowTitle(tr("A part came out wrong"))
        self.job = job
        self.parts = QtGui.QComboBox()
        for part in job.assembly.parts:
            self.parts.addItem(f"{part.mark} · {translated(part_name(part, job))}", part.mark)
        self.count = QtGui.QSpinBox()
        self.sizes = {name: QtGui.QLineEdit() for name in SIZE_NAMES}
        self.lost = QtGui.QCheckBox(tr("Spoiled, lost or left out"))
        self.cut = QtGui.QLineEdit()
        self.cut.setPlaceholderText(tr("marks with commas, such as B1L, L7R"))
        form = QtGui.QFormLayout(self)
        form.addRow(tr("Part"), self.parts)
        form.addRow(tr("Pieces"), self.count)
        for name, line in self.sizes.items():
            form.addRow(tr("Real {size}", size=tr(name)), line)
        form.addRow("", self.lost)
        form.addRow(tr("Cut already, not to change"), self.cut)
        buttons = QtGui.QDialogButtonBox(QtGui.QDialogButtonBox.Ok | QtGui.QDialogButtonBox.Cancel)
        buttons.accepted.connect(self.accept)
        buttons.rejected.connect(self.reject)
        form.addRow(buttons)
        self.parts.currentIndexChanged.connect(self.show_part)
        self.lost.toggled.connect(self.show_lost)
        self.parts.setCurrentIndex(max(0, self.parts.findData(mark)))
        self.show_part()

    def show_part(self, *_: int) -> None:
        """Drawn sizes and number of the part that is chosen."""
        part = next(each for each in self.job.assembly.parts if each.mark == self.parts.currentData())
        self.count.setRange(1, part.count)
        self.count.setValue(part.count)
        for line, size in zip(self.sizes.values(), part.board.size, strict=True):
            line.clear()
            line.setPlaceholderText(tr("as drawn:") + f" {self.job.writer.fine.length(size)}")

    def show_lost(self, lost: bool) -> None:
        """A lost piece has no size."""
        for line in self.sizes.values():
            line.setEnabled(not lost)

    def told(self) -> Told:
        """What was answered."""
        lost = self.lost.isChecked()
        sizes = {name: "" if lost else line.text() for name, line in self.sizes.items()}
        return Told(self.parts.currentData(), self.count.value(), sizes, lost, self.cut.text())


def ask_told(job: Job, mark: str) -> Told | None:
    """What the user tells of a part, with one chosen beforehand; None if it is given up."""
    dialog = Dialog(job, mark, FreeCADGui.getMainWindow())
    return dialog.told() if run_modal(dialog) else None
