# SPDX-License-Identifier: LGPL-2.1-or-later
"""A part of a panel that opens and closes; what is in it is made when it is first opened."""

from __future__ import annotations

from collections.abc import Callable

from PySide import QtCore, QtGui


class Section(QtGui.QWidget):
    """A head to press and a form under it."""

    def __init__(self, title: str, fill: Callable[[QtGui.QFormLayout], None], opened: bool = False) -> None:
        super().__init__()
        self.setObjectName(title)
        self._fill, self._filled = fill, False
        box = QtGui.QVBoxLayout(self)
        box.setContentsMargins(0, 0, 0, 0)
        box.setSpacing(2)
        self.head = QtGui.QToolButton()
        self.head.setText(title)
        self.head.setCheckable(True)
        self.head.setAutoRaise(True)
        self.head.setToolButtonStyle(QtCore.Qt.ToolButtonTextBesideIcon)
        self.head.setSizePolicy(QtGui.QSizePolicy.Expanding, QtGui.QSizePolicy.Fixed)
        font = self.head.font()
        font.setBold(True)
        self.head.setFont(font)
        self.body = QtGui.QWidget()
        self.form = QtGui.QFormLayout(self.body)
        self.form.setContentsMargins(8, 0, 0, 6)
        self.form.setFieldGrowthPolicy(QtGui.QFormLayout.AllNonFixedFieldsGrow)
        self.form.setRowWrapPolicy(QtGui.QFormLayout.WrapLongRows)
        box.addWidget(self.head)
        box.addWidget(self.body)
        self.head.toggled.connect(self.open)
        self.head.setChecked(opened)
        self.open(opened)

    def open(self, opened: bool) -> None:
        """Shows or hides what is in it."""
        if opened and not self._filled:
            self._filled = True
            self._fill(self.form)
        self.head.setArrowType(QtCore.Qt.DownArrow if opened else QtCore.Qt.RightArrow)
        self.body.setVisible(opened)

    def set_open(self, opened: bool) -> None:
        """Opens or closes it from the program."""
        self.head.setChecked(opened)
