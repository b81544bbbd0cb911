# SPDX-License-Identifier: LGPL-2.1-or-later
"""Which sets of papers to write, and where to: one after the other, so that the user can stop between two."""

from __future__ import annotations

import re
from collections.abc import Callable
from pathlib import Path

import FreeCAD
import FreeCADGui
from PySide import QtCore, QtGui

from ..exchange.paper_sets import SETS, PaperSet
from ..exchange.pdf import PdfError
from ..features.language import tr, translated
from ..features.model import REFUSALS
from ..report.job import Job
from .closing import EndsWith, close_button, vent_label


class PapersPanel:
    """FreeCAD's task panel; ``make_job`` gives the vent as it is when writing begins, ``open_path`` tells whether the system
    opens a file or folder.  The document is left as it is."""

    def __init__(self, title: str, vent: FreeCAD.DocumentObject, folder: Path, make_job: Callable[[], Job],
                 open_path: Callable[[Path], bool]) -> None:
        self.make_job, self.open_path = make_job, open_path
        self.job: Job | None = None
        self.waiting: list[PaperSet] = []
        self.boxes = {each.name: _box(each) for each in SETS}
        self.folder = QtGui.QLineEdit(str(folder))
        self.folder.setObjectName("PapersFolder")
        self.write_button = _button("WritePapers", tr("Write"), self.write)
        self.stop_button = _button("StopPapers", tr("Stop"), self.stop)
        self.folder_button = _button("OpenPapersFolder", tr("Open the folder"), self.show_folder)
        self.progress = QtGui.QProgressBar()
        self.progress.setObjectName("PapersProgress")
        self.said = QtGui.QLabel()
        self.said.setObjectName("PapersSaid")
        self.said.setTextFormat(QtCore.Qt.PlainText)
        self.said.setWordWrap(True)
        self.written = QtGui.QListWidget()
        self.written.setObjectName("PapersWritten")
        self.written.itemActivated.connect(lambda item: self.show_path(Path(item.toolTip())))
        self.form = self._form(title, vent)
        self.next = QtCore.QTimer()    # between two sets the window is the user's
        self.next.setSingleShot(True)
        self.next.setInterval(0)
        self.next.timeout.connect(self.write_next)
        self.end = EndsWith(vent.Document, vent, self.reject)
        self.show_state()

    def _form(self, title: str, vent: FreeCAD.DocumentObject) -> QtGui.QWidget:
        form = QtGui.QWidget()
        form.setWindowTitle(title)
        lines = QtGui.QVBoxLayout(form)
        lines.addWidget(vent_label(vent))
        for each in SETS:
            lines.addWidget(self.boxes[each.name])
            lines.addWidget(_holds(each))
            self.boxes[each.name].toggled.connect(lambda _: self.show_state())
        lines.addWidget(QtGui.QLabel(tr("Folder for the papers")))
        lines.addLayout(_beside(self.folder, _button("ChoosePapersFolder", tr("Choose…"), self.choose_folder)))
        lines.addLayout(_beside(self.write_button, self.stop_button))
        for widget in (self.progress, self.said, self.written, self.folder_button):
            lines.addWidget(widget)
        return form

    # ---- writing

    def write(self) -> None:
        """Begins with the first of the sets that are ticked."""
        self.written.clear()
        self.said.clear()
        try:
            self.job = self.make_job()
        except REFUSALS as refusal:
            self.said.setText(tr("The papers were not written.") + f"\n\n{translated(refusal)}")
            return
        self.waiting = [each for each in SETS if self.boxes[each.name].isChecked()]
        self.progress.setRange(0, len(self.waiting))
        self.progress.setValue(0)
        self.show_state()
        self.next.start()

    def write_next(self) -> None:
        """Writes the set whose turn it is; a set that cannot be written ends it."""
        if not self.waiting or self.job is None:
            return
        each = self.waiting.pop(0)
        try:
            self._list(each.write(self.job, self._folder()))
        except PdfError as error:
            self._give_up(f"{_title(each)}: {translated(error)}")
        except OSError as error:
            self._give_up(tr("The papers could not be written to the folder {folder}: {reason}. Choose another folder.",
                             folder=self.folder.text(), reason=error.strerror or error))
        else:
            if self.waiting:
                self.next.start()
            else:
                self.said.setText(tr("{count} files are written. A double click opens one.", count=self.written.count()))
            self.progress.setValue(self.progress.value() + 1)
        self.show_state()

    def _give_up(self, text: str) -> None:
        self.waiting.clear()
        self.said.setText(text)

    def stop(self) -> None:
        """Writes no further set; what is written stays."""
        if self.waiting:
            self._give_up(tr("Stopped. The sets that are listed are whole; the others were not written."))
            self.show_state()

    def _folder(self) -> Path:
        return Path(self.folder.text()).expanduser()

    def _list(self, paths: list[Path]) -> None:
        for path in paths:
            item = QtGui.QListWidgetItem(path.name)
            item.setToolTip(str(path))
            self.written.addItem(item)

    def show_state(self) -> None:
        """Which buttons can be pressed now."""
        busy = bool(self.waiting)
        chosen = any(box.isChecked() for box in self.boxes.values())
        for widget in (*self.boxes.values(), self.folder):
            widget.setEnabled(not busy)
        self.write_button.setEnabled(chosen and not busy)
        self.stop_button.setEnabled(busy)
        self.folder_button.setEnabled(self.written.count() > 0 and not busy)

    # ---- folder and files

    def choose_folder(self) -> None:
        """Lets the user pick a folder."""
        picked = QtGui.QFileDialog.getExistingDirectory(self.form, tr("Folder for the papers"), self.folder.text())
        if picked:
            self.folder.setText(picked)

    def show_folder(self) -> None:
        """Opens the folder."""
        self.show_path(self._folder())

    def show_path(self, path: Path) -> None:
        """Opens a file or the folder.  Not called ``open``: that is what FreeCAD calls when it shows a panel."""
        if not self.open_path(path):
            self.said.setText(tr("This system has no viewer for {path}.", path=path))

    # ---- FreeCAD's side

    def getStandardButtons(self) -> int:
        """Close."""
        return close_button()

    def reject(self) -> bool:
        """Writes no more, and goes."""
        self.waiting.clear()
        self.next.stop()
        self.end.stop()
        FreeCADGui.Control.closeDialog()
        return True


def _words(each: PaperSet) -> tuple[str, str]:
    """What a set is called, with a capital letter, and what it holds: its words to the first colon or comma, and the rest."""
    name, *holds = re.split(r"\s*[:,]\s*", tr(each.words), maxsplit=1)
    return name[:1].upper() + name[1:], "".join(holds)


def _title(each: PaperSet) -> str:
    return _words(each)[0]


def _box(each: PaperSet) -> QtGui.QCheckBox:
    box = QtGui.QCheckBox(_title(each))
    box.setObjectName(f"Papers_{each.name}")
    box.setToolTip(tr(each.words))
    box.setSizePolicy(QtGui.QSizePolicy.Ignored, QtGui.QSizePolicy.Fixed)    # a long name must not hold the panel wide
    box.setChecked(True)
    return box


def _holds(each: PaperSet) -> QtGui.QLabel:
    """What is in a set, in lines as long as there is room for."""
    label = QtGui.QLabel(_words(each)[1])
    label.setWordWrap(True)
    label.setIndent(24)
    return label


def _button(name: str, text: str, press: Callable[[], object]) -> QtGui.QPushButton:
    button = QtGui.QPushButton(text)
    button.setObjectName(name)
    button.clicked.connect(lambda: press())
    return button


def _beside(*widgets: QtGui.QWidget) -> QtGui.QHBoxLayout:
    line = QtGui.QHBoxLayout()
    for widget in widgets:
        line.addWidget(widget)
    return line
