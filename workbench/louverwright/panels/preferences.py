# SPDX-License-Identifier: LGPL-2.1-or-later
"""Louverwright's page in FreeCAD's preferences: what new vents begin with."""

from __future__ import annotations

from typing import Any

from PySide import QtGui

from ..core.parameters import BY_NAME
from ..core.spec import plain_finding
from ..core.units import LengthStyle
from ..features.language import tr, translated
from ..features.preferences import NAMES, keep, preferred
from .fields import Field, make_field

PAGE = LengthStyle("mm", 0.1)


class Preferences:
    """The page: a field for each parameter that can be preferred."""

    def __init__(self) -> None:
        self.form = QtGui.QWidget()
        self.form.setWindowTitle(tr("New vents"))
        self.values: dict[str, Any] = {}
        self.fields: dict[str, Field] = {}
        box = QtGui.QVBoxLayout(self.form)
        intro = QtGui.QLabel(tr("New vents begin with these. Vents that are there keep their own."))
        intro.setWordWrap(True)
        box.addWidget(intro)
        rows = QtGui.QFormLayout()
        box.addLayout(rows)
        for name in NAMES:
            field = make_field(BY_NAME[name], PAGE, None)
            self.fields[name] = field
            field.changed.connect(lambda value, name=name: self.put(name, value))
            field.unread.connect(lambda why: self.wrong.setText(why))
            rows.addRow(field.label(), field)
        self.wrong = QtGui.QLabel()
        self.wrong.setWordWrap(True)
        self.wrong.setObjectName("PreferencesWrong")
        box.addWidget(self.wrong)
        box.addStretch(1)

    def load(self) -> None:
        """Shows what is preferred now."""
        self.values = {name: BY_NAME[name].default for name in NAMES}
        self.values.update(preferred())
        for name, field in self.fields.items():
            field.show_value(self.values[name], PAGE)

    def put(self, name: str, value: Any) -> None:
        """Takes a value that its parameter can have; any other is told of and not kept."""
        wrong = plain_finding(BY_NAME[name], value)
        self.wrong.setText(translated(wrong.sentence) if wrong else "")
        if wrong is None:
            self.values[name] = value

    def save(self) -> None:
        """Keeps what is shown."""
        keep(self.values)
