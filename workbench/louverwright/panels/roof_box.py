# SPDX-License-Identifier: LGPL-2.1-or-later
"""The roof that is drawn, in a panel: what was read from it, and where along its ridge the vent stands."""

from __future__ import annotations

from dataclasses import replace

import FreeCADGui
from PySide import QtCore, QtGui

from ..core.roof_planes import BACK, FRONT, MIDDLE, RIDGE, RoofError
from ..core.saying import say
from ..core.units import LengthStyle, ReadError, format_angle, format_length, parse_length
from ..features.language import tr, translated
from ..features.roof_reading import picks_of, read_roof
from ..features.seat import Seat

#: What the ends of the ridge are called, in the order of choice.
ENDS = ((MIDDLE, say("From the middle")), (BACK, say("From the back end")), (FRONT, say("From the front end")))
#: Notches of the slider over the whole ridge.
NOTCHES = 400


class RoofBox(QtGui.QWidget):
    """``taken`` carries the Seat as it is now, or None when the vent is to stand free."""

    taken = QtCore.Signal(object)

    def __init__(self, style: LengthStyle, seat: Seat | None, lost: str = "") -> None:
        super().__init__()
        self.style, self.seat = style, seat
        form = QtGui.QFormLayout(self)
        form.setContentsMargins(0, 0, 0, 0)
        self.words = QtGui.QLabel(lost)
        self.words.setObjectName("RoofWords")
        self.words.setWordWrap(True)
        form.addRow(self.words)
        self.pick = self._button("RoofPick", tr("Take what is selected"), self.take)
        self.pick.setToolTip(tr("Select two slopes, the ridge, one slope or the whole roof in the 3D view or the tree first."))
        self.turn = self._button("RoofTurn", tr("Turn left and right"), self.turn_about)
        self.free = self._button("RoofFree", tr("Stand free"), self.let_go)
        for button in (self.pick, self.turn, self.free):
            form.addRow(button)
        self.along = QtGui.QLineEdit()
        self.along.setObjectName("AlongRidge")
        self.along.textEdited.connect(self._typed)
        self.slider = QtGui.QSlider(QtCore.Qt.Horizontal)
        self.slider.setObjectName("AlongRidgeSlider")
        self.slider.setRange(0, NOTCHES)
        self.slider.valueChanged.connect(self._slid)
        self.ends = QtGui.QComboBox()
        self.ends.setObjectName("FromEnd")
        for end, words in ENDS:
            self.ends.addItem(tr(words), end)
        self.ends.activated.connect(self._counted)
        form.addRow(tr("Along the ridge"), self.along)
        form.addRow(self.slider)
        form.addRow(self.ends)
        self.show_seat(lost)

    @staticmethod
    def _button(name: str, words: str, action: object) -> QtGui.QPushButton:
        button = QtGui.QPushButton(words)
        button.setObjectName(name)
        button.clicked.connect(action)
        return button

    # ---- showing

    def write_in(self, style: LengthStyle) -> None:
        """Writes lengths in another unit from now on."""
        self.style = style
        self.show_seat()

    def show_seat(self, lost: str = "", place_too: bool = True) -> None:
        """Shows the roof and the place on it; the place's own text is left alone while it is typed."""
        there = self.seat is not None
        for widget in (self.turn, self.free, self.along, self.slider, self.ends):
            widget.setEnabled(there)
        self.words.setText(lost or roof_words(self.seat, self.style))
        if self.seat is None:
            return
        if place_too:
            self.along.setText(format_length(self.seat.along, self.style))
        self.ends.setCurrentIndex(self.ends.findData(self.seat.end))
        low, high = self.seat.limits
        self.slider.blockSignals(True)
        self.slider.setValue(round((self.seat.along - low) / max(high - low, 1.0) * NOTCHES))
        self.slider.blockSignals(False)

    # ---- changing

    def take(self) -> None:
        """Reads the roof that is selected."""
        selection = FreeCADGui.Selection.getSelectionEx("", 0)
        try:
            reading = read_roof(*picks_of(selection))
        except RoofError as error:
            self.words.setText(translated(error))
            return
        FreeCADGui.Selection.clearSelection()
        self._set(Seat(reading))

    def turn_about(self) -> None:
        """The vent turned half round: its left slope is the other."""
        assert self.seat is not None
        self._set(self.seat.turned())

    def let_go(self) -> None:
        """The vent stands free, where it is."""
        self.seat = None
        self.show_seat()
        self.taken.emit(None)

    def _set(self, seat: Seat, place_too: bool = True) -> None:
        self.seat = seat.held()
        self.show_seat(place_too=place_too)
        self.taken.emit(self.seat)

    def _typed(self, text: str) -> None:
        """Takes a distance that is one, and that stays on the ridge; of any other it says why."""
        assert self.seat is not None
        try:
            along = parse_length(text, "mm" if self.style.system == "mm" else "in")
            self.seat.reading.planes.place(along, self.seat.end)
        except (ReadError, RoofError) as error:
            self.words.setText(translated(error))
            return
        self._set(replace(self.seat, along=along), place_too=False)

    def _slid(self, position: int) -> None:
        assert self.seat is not None
        low, high = self.seat.limits
        self._set(replace(self.seat, along=low + (high - low) * position / NOTCHES))

    def _counted(self, _: int) -> None:
        assert self.seat is not None
        self._set(self.seat.counted_from(self.ends.currentData()))


def roof_words(seat: Seat | None, style: LengthStyle) -> str:
    """What was read, in one sentence."""
    if seat is None:
        return tr("No roof is taken: the vent stands free, and its pitches are entered by hand.")
    planes = seat.reading.planes
    name = ", ".join(dict.fromkeys(pick.object.Label for pick in seat.reading.where))
    if planes.kind != RIDGE:
        return tr("“{name}”: one slope of {pitch}.", name=name, pitch=format_angle(planes.pitch_left, 2))
    return tr("“{name}”: {left} left, {right} right, a ridge of {ridge}.", name=name, left=format_angle(planes.pitch_left, 2),
              right=format_angle(planes.pitch_right, 2), ridge=format_length(planes.ridge_length, style))
