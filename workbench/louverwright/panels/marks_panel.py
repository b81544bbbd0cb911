# SPDX-License-Identifier: LGPL-2.1-or-later
"""All parts and marks of a vent in a list: rows chosen here are selected in tree and 3D view, and the other way round."""

from __future__ import annotations

from collections.abc import Collection

import FreeCAD
import FreeCADGui
from PySide import QtCore, QtGui

from ..core.outline import Outline, outlines
from ..features.language import tr, translated
from ..features.pieces import from_the_top, marks_at, sub_paths
from ..report.job import Job
from ..report.mark_list import HEADS, MarkRow, mark_rows, matching
from ..view.in_view import Found
from .closing import EndsWith, close_button, vent_label


class MarksPanel:
    """FreeCAD's task panel for a vent; ``standing`` is the vent itself or the link of its row where pieces are selected."""

    def __init__(self, title: str, job: Job, vent: FreeCAD.DocumentObject, standing: FreeCAD.DocumentObject,
                 found: Found, placement: FreeCAD.Placement) -> None:
        self.rows = tuple(MarkRow(*map(translated, row.cells)) for row in mark_rows(job))
        self.vent, self.standing = vent, standing
        self.found, self.placement = found, placement
        self.pieces = pieces_by_mark(job)
        self.busy = False
        self.filter, self.table = self._filter(), self._table()
        self.fitting = QtGui.QCheckBox(tr("Bring what is chosen into view"))
        self.fitting.setObjectName("FitChosen")
        self.fitting.toggled.connect(lambda on: self.fit() if on else None)
        self.form = QtGui.QWidget()
        self.form.setWindowTitle(title)
        box = QtGui.QVBoxLayout(self.form)
        for each in (vent_label(standing), self.filter, self.table, self.fitting):
            box.addWidget(each)
        self.later = QtCore.QTimer()
        self.later.setSingleShot(True)
        self.later.setInterval(0)
        self.later.timeout.connect(self.follow_selection)
        self.end = EndsWith(vent.Document, vent, self.reject)
        self.fill()
        FreeCADGui.Selection.addObserver(self)
        self.follow_selection()

    def _filter(self) -> QtGui.QLineEdit:
        line = QtGui.QLineEdit()
        line.setObjectName("MarkFilter")
        line.setPlaceholderText(tr("a mark, such as B1L, or words of a part, its stock or size"))
        line.setClearButtonEnabled(True)
        line.textChanged.connect(lambda _: self.fill())
        line.returnPressed.connect(lambda: self.table.selectAll())
        return line

    def _table(self) -> QtGui.QTableWidget:
        table = QtGui.QTableWidget(0, len(HEADS))
        table.setObjectName("MarkTable")
        table.setHorizontalHeaderLabels([tr(head) for head in HEADS])
        table.verticalHeader().hide()
        table.setMinimumSize(160, 320)
        table.setSizePolicy(QtGui.QSizePolicy.Ignored, QtGui.QSizePolicy.Expanding)
        table.setSelectionBehavior(QtGui.QAbstractItemView.SelectRows)
        table.setSelectionMode(QtGui.QAbstractItemView.ExtendedSelection)
        table.setEditTriggers(QtGui.QAbstractItemView.NoEditTriggers)
        table.itemSelectionChanged.connect(self.select_pieces)
        return table

    # ---- the list

    def fill(self) -> None:
        """The rows that the filter finds; those chosen stay chosen, as far as they are still listed."""
        chosen = self.chosen()
        self.busy = True
        listed = matching(self.rows, self.filter.text())
        self.table.clearContents()
        self.table.setRowCount(len(listed))
        for number, row in enumerate(listed):
            for column, text in enumerate(row.cells):
                item = QtGui.QTableWidgetItem(text)
                item.setToolTip(text)
                self.table.setItem(number, column, item)
        self.table.resizeColumnsToContents()
        self.busy = False
        self.choose(chosen)

    def chosen(self) -> set[str]:
        """The marks of the rows that are chosen."""
        return {self.table.item(index.row(), 0).text() for index in self.table.selectionModel().selectedRows()}

    def choose(self, marks: Collection[str]) -> None:
        """Chooses the rows of these marks and no others, without selecting anything; brings the first into sight."""
        self.busy = True
        self.table.clearSelection()
        rows = [row for row in range(self.table.rowCount()) if self.table.item(row, 0).text() in marks]
        chosen = QtCore.QItemSelection()
        for row in rows:
            chosen.select(self.table.model().index(row, 0), self.table.model().index(row, len(HEADS) - 1))
        self.table.selectionModel().select(chosen, QtCore.QItemSelectionModel.Select)
        if rows:
            self.table.scrollToItem(self.table.item(rows[0], 0))
        self.busy = False

    # ---- from the list to the model

    def select_pieces(self) -> None:
        """Selects every piece with the chosen marks, in the tree and in the 3D view, and nothing else."""
        if self.busy or self.end.is_gone:
            return
        self.busy = True
        marks = self.chosen()
        top, way = from_the_top(self.standing)
        FreeCADGui.Selection.clearSelection()
        for path in sub_paths(self.vent, marks):
            FreeCADGui.Selection.addSelection(top.Document.Name, top.Name, way + path)
        self.busy = False
        self.show_found(marks)
        if self.fitting.isChecked():
            self.fit()

    def show_found(self, marks: Collection[str]) -> None:
        """Draws the edges of the pieces with these marks through all that hides them."""
        self.found.show([piece for mark in marks for piece in self.pieces[mark]], self.placement)

    def fit(self) -> None:
        """Brings the pieces of the chosen rows into view."""
        if self.chosen():
            self.found.fit()

    # ---- from the model to the list

    def addSelection(self, *_: object) -> None:
        """FreeCAD's word that something was selected; several come in a row."""
        if not self.busy:
            self.later.start()

    removeSelection = setSelection = clearSelection = addSelection

    def follow_selection(self) -> None:
        """Chooses the rows of the pieces that are selected; a mark that the filter hides empties the filter."""
        if self.end.is_gone:
            return
        marks = selected_marks(self.vent)
        if marks - {row.mark for row in matching(self.rows, self.filter.text())}:
            self.filter.clear()
        self.choose(marks)
        self.show_found(marks & set(self.pieces))

    # ---- FreeCAD's side

    def getStandardButtons(self) -> int:
        """Close."""
        return close_button()

    def reject(self) -> bool:
        """Leaves what is selected."""
        self.later.stop()
        self.end.stop()
        FreeCADGui.Selection.removeObserver(self)
        self.found.close()
        FreeCADGui.Control.closeDialog()
        return True


def pieces_by_mark(job: Job) -> dict[str, list[Outline]]:
    """The pieces of a vent where they stand, by their marks."""
    drawn = {piece.id: piece for piece in outlines(job.spec)}
    return {part.mark: [drawn[piece.id] for piece in part.pieces] for part in job.assembly.parts}


def selected_marks(vent: FreeCAD.DocumentObject) -> set[str]:
    """The marks of all that is selected of a vent: of the pieces picked, or all of a kind selected as a whole."""
    marks: set[str] = set()
    for each in FreeCADGui.Selection.getSelectionEx(vent.Document.Name):
        if "KindId" in each.Object.PropertiesList and each.Object.Vent == vent:
            for element in each.SubElementNames or ("",):
                marks |= marks_at(each.Object, element)
    return marks
