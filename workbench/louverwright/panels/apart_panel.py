# SPDX-License-Identifier: LGPL-2.1-or-later
"""Taking a vent apart in the 3D view: a picture that sliders pull apart.  The vent itself stays as it is."""

from __future__ import annotations

import FreeCAD
import FreeCADGui
from PySide import QtCore, QtGui

from ..core.apart import shifts, without_sides
from ..core.outline import outlines
from ..features.language import tr
from ..report.job import Job
from ..report.place_words import side_name
from ..view.in_view import Picture
from .closing import EndsWith, close_button, vent_label
from .soon import Soon

#: Steps of a slider: as fine as a hand can place it.
STEPS = 100


class ApartPanel:
    """FreeCAD's task panel for a vent, or for a link of its row; closing it puts all together again."""

    def __init__(self, title: str, job: Job, standing: FreeCAD.DocumentObject, picture: Picture,
                 placement: FreeCAD.Placement) -> None:
        self.pieces = outlines(job.spec)
        self.picture, self.placement = picture, placement
        self.end = EndsWith(standing.Document, standing, self.reject)
        self.stages, self.all = self._slider("StagesApart"), self._slider("AllPiecesApart")
        self.sides = [self._box(job, side) for side in range(job.sizes.plan.sides)]
        self.form = self._form(title, standing)
        self.drawing = Soon(self.draw)
        self.draw()

    def _slider(self, name: str) -> QtGui.QSlider:
        slider = QtGui.QSlider(QtCore.Qt.Horizontal)
        slider.setObjectName(name)
        slider.setRange(0, STEPS)
        slider.valueChanged.connect(lambda _: self.drawing.start())
        return slider

    def _box(self, job: Job, side: int) -> QtGui.QCheckBox:
        box = QtGui.QCheckBox(tr(side_name(job, side)))
        box.setObjectName(f"Side{side}")
        box.toggled.connect(lambda _: self.drawing.start())
        return box

    def _form(self, title: str, standing: FreeCAD.DocumentObject) -> QtGui.QWidget:
        form = QtGui.QWidget()
        form.setWindowTitle(title)
        lines = QtGui.QFormLayout(form)
        lines.setRowWrapPolicy(QtGui.QFormLayout.WrapLongRows)
        lines.addRow(vent_label(standing))
        lines.addRow(tr("Stages apart"), self.stages)
        lines.addRow(tr("All pieces apart"), self.all)
        fit = QtGui.QPushButton(tr("Bring all into view"))
        fit.setObjectName("Fit")
        fit.clicked.connect(lambda: FreeCADGui.SendMsgToActiveView("ViewFit"))
        lines.addRow(fit)
        lines.addRow(QtGui.QLabel(tr("Take away, to look in:")))
        for box in self.sides:
            lines.addRow(box)
        note = QtGui.QLabel(tr("This is a picture. Vent and document stay as they are, and closing puts all together."))
        note.setWordWrap(True)
        lines.addRow(note)
        return form

    def draw(self) -> None:
        """The picture as the sliders and boxes stand."""
        away = {side for side, box in enumerate(self.sides) if box.isChecked()}
        by = shifts(self.pieces, self.stages.value() / STEPS, self.all.value() / STEPS)
        self.picture.show(without_sides(self.pieces, away), self.placement, lambda piece: by[piece.id])

    # ---- FreeCAD's side

    def getStandardButtons(self) -> int:
        """Close."""
        return close_button()

    def reject(self) -> bool:
        """Puts all together."""
        self.drawing.stop()
        self.end.stop()
        self.picture.close()
        FreeCADGui.Control.closeDialog()
        return True
