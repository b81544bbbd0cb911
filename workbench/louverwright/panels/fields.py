# SPDX-License-Identifier: LGPL-2.1-or-later
"""One widget for each row of the table of parameters: it shows a value, and says when the user changes it.

Lengths are read as they are written in the trade, 5'-3 1/2", 88,9 mm or 4 in, whatever FreeCAD's own fields accept.
"""

from __future__ import annotations

from typing import Any

from PySide import QtCore, QtGui

from ..core.parameters import ANGLE, CHOICE, COUNT, LENGTH, NUMBER, STOCK, SWITCH, Parameter
from ..core.spec import tooltip
from ..core.stock import StockList
from ..core.units import LengthStyle, ReadError
from ..features.language import tr, translated
from .reading import automatic, notches, read, step_of, stepped, within, written

WRONG = "border: 1px solid #b3261e;"


class Field(QtGui.QWidget):
    """What all have in common.  ``changed`` carries the new value, ``unread`` why a text is none."""

    changed = QtCore.Signal(object)
    unread = QtCore.Signal(str)

    def __init__(self, row: Parameter) -> None:
        super().__init__()
        self.row = row
        self.setObjectName(row.property_name)
        self.tip, self.driven, self.wrong = translated(tooltip(row)), "", ""
        self._tell()
        self.line = QtGui.QHBoxLayout(self)
        self.line.setContentsMargins(0, 0, 0, 0)

    def label(self) -> QtGui.QLabel:
        """The field's name, for the form."""
        name = QtGui.QLabel(tr(self.row.label.capitalize()))
        name.setToolTip(self.tip)
        name.setBuddy(self)
        return name

    def show_value(self, value: Any, style: LengthStyle) -> None:
        """Shows a value without saying that it has changed."""

    def show_resolved(self, value: Any, style: LengthStyle) -> None:
        """Shows what an automatic value came out as."""

    def relist(self, stock: StockList | None) -> None:
        """Offers the stock of another list."""

    def mark(self, wrong: str) -> None:
        """Shows by a red border, and in the tooltip, that the value cannot be as it is; '' takes that back."""
        self.wrong = wrong
        self.setStyleSheet(WRONG if wrong else "")
        self._tell()

    def lock(self, why: str) -> None:
        """Shows that the value is driven from elsewhere, and by what; '' lets it be entered again."""
        self.driven = why
        self.setEnabled(not why)
        self._tell()

    def _tell(self) -> None:
        """The tooltip: what drives the value, what it is, and what is wrong with it."""
        self.setToolTip("\n\n".join(filter(None, (self.driven, self.tip, self.wrong))))


class MeasureField(Field):
    """A length, angle, count or number: text to type, arrow keys to step, a slider to drag where there is room for one."""

    def __init__(self, row: Parameter, style: LengthStyle) -> None:
        super().__init__(row)
        self.style, self.value, self.came_out = style, row.default, None
        self.edit = QtGui.QLineEdit()
        self.edit.setMinimumWidth(70)
        self.line.addWidget(self.edit, 3)
        self.setFocusProxy(self.edit)
        self.edit.textEdited.connect(self._typed)
        self.edit.editingFinished.connect(self._tidy)
        self.edit.installEventFilter(self)
        self.slider: QtGui.QSlider | None = None
        if notches(row, style):
            self.slider = QtGui.QSlider(QtCore.Qt.Horizontal)
            self.slider.setRange(0, notches(row, style))
            self.slider.setFocusPolicy(QtCore.Qt.NoFocus)
            self.slider.setMinimumWidth(50)
            self.slider.valueChanged.connect(self._slid)
            self.line.addWidget(self.slider, 2)

    def show_value(self, value: Any, style: LengthStyle) -> None:
        self.style, self.value = style, value
        self.edit.setText(written(self.row, value, style))
        self._place_slider()

    def show_resolved(self, value: Any, style: LengthStyle) -> None:
        self.style, self.came_out = style, value
        told = tr("automatic: {value}", value=written(self.row, value, style)) if value not in (None, 0) else tr(self.row.auto)
        self.edit.setPlaceholderText(told if self.row.auto else "")
        self._place_slider()

    @property
    def _shown(self) -> float:
        """The value that a step or the slider starts from."""
        if automatic(self.row, self.value):
            return float(self.came_out if self.came_out is not None else self.row.low or 0.0)
        return float(self.value)

    def _place_slider(self) -> None:
        if self.slider is None or self.slider.isSliderDown():
            return
        self.slider.blockSignals(True)
        assert self.row.low is not None
        self.slider.setValue(round((self._shown - self.row.low) / step_of(self.row, self.style)))
        self.slider.blockSignals(False)

    def _typed(self, text: str) -> None:
        try:
            value = read(self.row, text, self.style)
        except ReadError as error:
            self.unread.emit(translated(error))
            return
        self.value = value
        self._place_slider()
        self.changed.emit(value)

    def _tidy(self) -> None:
        """Writes what was typed as it is understood, unless it could not be read: then it stays to be mended."""
        if not self.edit.isModified():
            return
        try:
            read(self.row, self.edit.text(), self.style)
        except ReadError:
            return
        self.edit.setText(written(self.row, self.value, self.style))

    def _slid(self, position: int) -> None:
        assert self.row.low is not None
        self._take(within(self.row, self.row.low + position * step_of(self.row, self.style)))

    def _take(self, value: float) -> None:
        self.value = value
        self.edit.setText(written(self.row, value, self.style))
        self.changed.emit(value)

    def eventFilter(self, watched: QtCore.QObject, event: QtCore.QEvent) -> bool:
        """Steps with the arrow keys; ten at a time with Page Up and Page Down."""
        if event.type() == QtCore.QEvent.KeyPress and watched is self.edit:
            by = {QtCore.Qt.Key_Up: 1, QtCore.Qt.Key_Down: -1, QtCore.Qt.Key_PageUp: 10,
                  QtCore.Qt.Key_PageDown: -10}.get(event.key())
            if by:
                self._take(stepped(self.row, self._shown, by, self.style))
                self._place_slider()
                return True
        return bool(super().eventFilter(watched, event))


class ChoiceField(Field):
    """One of the row's choices, or of the stock that fits the use."""

    def __init__(self, row: Parameter, choices: list[tuple[str, str]]) -> None:
        super().__init__(row)
        self.box = QtGui.QComboBox()
        self.box.setSizeAdjustPolicy(QtGui.QComboBox.AdjustToMinimumContentsLengthWithIcon)
        self.box.setFocusPolicy(QtCore.Qt.StrongFocus)
        for words, value in choices:
            self.box.addItem(words, value)
        self.box.installEventFilter(self)
        self.line.addWidget(self.box)
        self.setFocusProxy(self.box)
        self.box.activated.connect(lambda _: self.changed.emit(self.box.currentData()))

    def eventFilter(self, watched: QtCore.QObject, event: QtCore.QEvent) -> bool:
        """Leaves the mouse's wheel to the panel: scrolling past is no choice."""
        if event.type() == QtCore.QEvent.Wheel:
            event.ignore()
            return True
        return bool(super().eventFilter(watched, event))

    def relist(self, stock: StockList | None) -> None:
        if self.row.kind == STOCK:
            self.box.clear()
            for words, value in stock_choices(self.row, stock):
                self.box.addItem(words, value)

    def show_value(self, value: Any, style: LengthStyle) -> None:
        at = self.box.findData(value)
        if at < 0:
            self.box.addItem(str(value), value)    # not in this list: the check says so
            at = self.box.count() - 1
        self.box.setCurrentIndex(at)


class SwitchField(Field):
    """Yes or no."""

    def __init__(self, row: Parameter) -> None:
        super().__init__(row)
        self.box = QtGui.QCheckBox()
        self.line.addWidget(self.box)
        self.setFocusProxy(self.box)
        self.box.clicked.connect(lambda on: self.changed.emit(bool(on)))

    def show_value(self, value: Any, style: LengthStyle) -> None:
        self.box.setChecked(bool(value))


class TextField(Field):
    """Words."""

    def __init__(self, row: Parameter) -> None:
        super().__init__(row)
        self.edit = QtGui.QLineEdit()
        self.line.addWidget(self.edit)
        self.setFocusProxy(self.edit)
        self.edit.textEdited.connect(self.changed.emit)

    def show_value(self, value: Any, style: LengthStyle) -> None:
        self.edit.setText(str(value))


def make_field(row: Parameter, style: LengthStyle, stock: StockList | None) -> Field:
    """The widget for a row; ``stock`` is the list that stock is chosen from, None where it cannot be read."""
    if row.kind in (LENGTH, ANGLE, COUNT, NUMBER):
        return MeasureField(row, style)
    if row.kind == CHOICE:
        return ChoiceField(row, [(tr(choice), choice) for choice in row.choices])
    if row.kind == STOCK:
        return ChoiceField(row, stock_choices(row, stock))
    return SwitchField(row) if row.kind == SWITCH else TextField(row)


def stock_choices(row: Parameter, stock: StockList | None) -> list[tuple[str, str]]:
    """The items of the list that fit a use, after the usual one."""
    if stock is None:
        return [(tr("usual"), "")]
    usual = stock.usual.get(row.name) or stock.usual.get(row.like, "")
    items = [item.name for item in stock.items if item.form in row.forms]
    return [(tr("usual: {name}", name=usual), ""), *((name, name) for name in items)]
