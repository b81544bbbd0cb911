# SPDX-License-Identifier: LGPL-2.1-or-later
"""The panel of a vent, new or old: main dimensions first, the rest in groups, and what follows from them, live."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

import FreeCAD
import FreeCADGui
from PySide import QtCore, QtGui

from ..core.parameters import BY_NAME, JOB, MEASURED, PARAMETERS, SHOP, Parameter, applies
from ..core.stock import StockList, StockListError
from ..core.survey import Survey
from ..features.generations import as_number
from ..features.language import tr, translated
from ..features.seat import READ, Seat
from ..features.unswept import unswept
from ..view.in_view import Picture
from .closing import EndsWith
from .draft import NO_PICTURE, Draft, Outcome
from .fields import Field, make_field
from .results import Results
from .roof_box import RoofBox
from .section import Section
from .soon import Soon
from .survey_box import SurveyBox

#: The dimensions that a vent is begun with, in the order of asking.
MAIN = ("pitch_left", "pitch_right", "ridge_length", "vents", "width", "base_height", "louver_height", "sides", "slat_angle",
        "roof_form", "roof_pitch", "overhang", "cladding", "paper_units")
#: How long values rest before they are checked (ms): a check takes longer than a picture.
REST = 250
#: A change of these has stock chosen, or lengths written, otherwise.
RELISTING = ("stock_list", "paper_units")


class VentPanel:
    """FreeCAD's task panel of a vent, or of a new one where there is none yet.

    ``accepted`` gets the draft; where it says no, the panel stays open.
    """

    def __init__(self, document: FreeCAD.Document, vent: FreeCAD.DocumentObject | None, draft: Draft,
                 placement: FreeCAD.Placement, accepted: Callable[[Draft], bool], closed: Callable[[bool], None],
                 locked: Mapping[str, str] | None = None, lost: str = "") -> None:
        self.draft, self.placement, self.accepted, self.closed = draft, placement, accepted, closed
        self.locked, self.lost, self.new = locked or {}, lost, vent is None
        self.fields: dict[str, list[Field]] = {}
        self.labels: dict[Field, QtGui.QLabel] = {}
        self.outcome = Outcome()
        self.results = Results()
        self.results.asked.connect(self.go_to)
        self.sections: dict[str, Section] = {}
        self.roof: RoofBox | None = None
        self.survey: SurveyBox | None = None
        self.form = self._main(vent.Label if vent is not None else tr("New vent"))
        self.picture = Picture(document, [vent] if vent is not None else [])
        self.end = EndsWith(document, vent, self.reject)
        self.drawing = Soon(self.draw)
        self.checking = QtCore.QTimer()
        self.checking.setSingleShot(True)
        self.checking.setInterval(REST)
        self.checking.timeout.connect(self.check)
        self.draw()
        self.check()

    # ---- building

    def _main(self, title: str) -> QtGui.QWidget:
        form = QtGui.QWidget()
        form.setWindowTitle(title)
        box = QtGui.QVBoxLayout(form)
        box.setSpacing(4)
        box.addWidget(self.results.findings)
        self._section(box, tr("Main dimensions"), MAIN, True)
        box.addWidget(Section(tr("What follows"), lambda form: form.addRow(self.results), True))
        drawn = self.draft.seat is not None or bool(self.lost)
        self.sections["roof"] = Section(tr("The roof that is drawn"), self._fill_roof, drawn)
        box.insertWidget(1, self.sections["roof"])
        survey = Section(tr("Measured on the roof"), self._fill_survey)
        self.sections["survey"] = survey
        box.addWidget(survey)
        for group, names in groups().items():
            self._section(box, tr(group), names)
        box.addStretch(1)
        return form

    def _section(self, box: QtGui.QVBoxLayout, title: str, names: tuple[str, ...], opened: bool = False) -> None:
        section = Section(title, lambda form: self._fill(form, names), opened)
        for name in names:
            self.sections.setdefault(name, section)
        box.addWidget(section)

    def _fill(self, form: QtGui.QFormLayout, names: tuple[str, ...]) -> None:
        for name in names:
            field = self._field(BY_NAME[name])
            self.labels[field] = field.label()
            form.addRow(self.labels[field], field)
        self._show_what_applies()

    def _show_what_applies(self) -> None:
        """Hides the fields of parameters that this vent has no use for, such as the flare of a plain hip roof."""
        for name, fields in self.fields.items():
            shown = applies(name, self.draft.values)
            for field in fields:
                if field.isHidden() == shown:
                    field.setVisible(shown)
                    self.labels[field].setVisible(shown)

    def _field(self, row: Parameter) -> Field:
        field = make_field(row, self.draft.style, self._stock())
        field.show_value(self.draft.values[row.name], self.draft.style)
        field.show_resolved(self.outcome.resolved.get(row.name), self.draft.style)
        field.changed.connect(lambda value: self.put(row.name, value, field))
        field.unread.connect(lambda why: self.put_unread(row.name, why))
        self.fields.setdefault(row.name, []).append(field)
        self._lock()
        return field

    def _fill_survey(self, form: QtGui.QFormLayout) -> None:
        self.survey = SurveyBox(self._unit)
        self.survey.measured.connect(self.take_survey)
        form.addRow(self.survey)

    @property
    def _unit(self) -> str:
        """What a length without a unit means."""
        return "mm" if self.draft.style.system == "mm" else "in"

    def _fill_roof(self, form: QtGui.QFormLayout) -> None:
        self.roof = RoofBox(self.draft.style, self.draft.seat, self.lost)
        self.roof.taken.connect(self.take_seat)
        form.addRow(self.roof)

    # ---- changing

    def take_seat(self, seat: Seat | None) -> None:
        """Takes a place on a roof, or none: pitches and ridge are read from there, and not entered."""
        same = seat is not None and self.draft.seat is not None and seat.reading is self.draft.seat.reading
        values = self.draft.take_seat(seat, self.new and not same)
        for name, value in values.items():
            for field in self.fields.get(name, []):
                field.show_value(value, self.draft.style)
        self._lock()
        self._show_what_applies()
        self.drawing.start()
        self.checking.start()

    def _lock(self) -> None:
        """Lets fields show, but not take, what expressions or the roof say."""
        read = dict.fromkeys(READ, tr("Read from the roof that is drawn")) if self.draft.seat is not None else {}
        driven = {name: tr("Set by the expression {text}", text=text) for name, text in self.locked.items()}
        for name, fields in self.fields.items():
            for field in fields:
                field.lock({**read, **driven}.get(name, ""))

    def put(self, name: str, value: Any, source: Field | None = None) -> None:
        """Takes a value; other fields of the same parameter follow, the picture at once, the check when values rest."""
        self.draft.put(name, value)
        for field in self.fields.get(name, []):
            if field is not source:
                field.show_value(value, self.draft.style)
        if name in RELISTING:
            self._write_anew()
        self._show_what_applies()
        self.drawing.start()
        self.checking.start()

    def put_unread(self, name: str, why: str) -> None:
        """Takes note of a text that is no value."""
        self.draft.put_unread(name, why)
        self.checking.start()

    def take_survey(self, survey: Survey) -> None:
        """Pitches, what they may be off by, and how they were measured, from the readings.

        The note is in English, as the report is.
        """
        for name, value in (("pitch_left", survey.pitch_left), ("pitch_right", survey.pitch_right),
                            ("pitch_error", survey.error), ("survey_note", str(survey.words))):
            if name not in self.locked:
                self.put(name, value)

    def _write_anew(self) -> None:
        """All fields in another unit, or with the stock of another list."""
        stock = self._stock()
        for name, fields in self.fields.items():
            for field in fields:
                field.relist(stock)
                field.show_value(self.draft.values[name], self.draft.style)
        if self.roof is not None:
            self.roof.write_in(self.draft.style)
        if self.survey is not None:
            self.survey.unit = self._unit

    def _stock(self) -> StockList | None:
        try:
            return self.draft.stock
        except StockListError:
            return None    # the check tells of it

    # ---- showing

    def draw(self) -> None:
        """The picture of the values as they are; what makes no vent leaves the last one."""
        with unswept():
            pieces = self.draft.picture()
            if pieces is not None:
                self.picture.show(pieces, self._place(), row=self.draft.row())

    def _place(self) -> FreeCAD.Placement:
        """Where the vent stands: on its roof, or where it stood when the panel was opened."""
        try:
            return self.draft.place() or self.placement
        except NO_PICTURE:
            return self.placement    # the check, which follows, says why

    def check(self) -> None:
        """Figures and findings of the values as they are."""
        self.checking.stop()
        self.outcome = self.draft.outcome()
        self.results.show_outcome(self.outcome, self.draft.style)
        wrong = {finding.field: translated(finding.sentence) for finding in self.outcome.findings}
        for name, fields in self.fields.items():
            for field in fields:
                field.mark(wrong.get(name, ""))
                if self.outcome.spec is not None:
                    field.show_resolved(self.outcome.resolved.get(name), self.draft.style)

    def go_to(self, name: str) -> None:
        """Opens the section that has a parameter's field and puts the cursor there."""
        if name in self.sections:
            self.sections[name].set_open(True)
        for field in self.fields.get(name, [])[:1]:
            field.setFocus()

    # ---- FreeCAD's side

    def getStandardButtons(self) -> int:
        """OK and Cancel."""
        return as_number(QtGui.QDialogButtonBox.Ok | QtGui.QDialogButtonBox.Cancel)

    def accept(self) -> bool:
        """Takes the values over, if they make a vent; else the findings are in sight and the panel stays."""
        self.check()
        if self.outcome.findings:
            self.go_to(self.outcome.findings[0].field)
            return False
        if not self.accepted(self.draft):
            return False
        self.close(True)
        return True

    def reject(self) -> bool:
        """Leaves everything as it was."""
        self.close(False)
        return True

    def close(self, taken: bool) -> None:
        """Takes the panel and its picture away."""
        self.drawing.stop()
        self.checking.stop()
        self.end.stop()
        self.picture.close()
        FreeCADGui.Control.closeDialog()
        self.closed(taken)


def groups() -> dict[str, tuple[str, ...]]:
    """The parameters that are not among the main ones, by their groups, in the table's order; seldom used ones last."""
    found: dict[str, list[str]] = {}
    for row in PARAMETERS:
        if row.name not in MAIN:
            found.setdefault(row.group, []).append(row.name)
    late = {BY_NAME["frame_stock"].group, MEASURED, SHOP, JOB}
    order = sorted(found, key=lambda group: group in late)
    return {group: tuple(found[group]) for group in order}

