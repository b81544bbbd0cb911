# SPDX-License-Identifier: LGPL-2.1-or-later
"""What was measured on the roof, in any of three ways, as pitches."""

from __future__ import annotations

from PySide import QtCore, QtGui

from ..core.saying import say
from ..core.survey import Survey, SurveyError, survey_from_mapping
from ..features.language import tr, translated

#: The ways to measure: a name for each and its readings, as a scenario has them.
WAYS = (
    (say("A reading on each slope"), ("slope_left", "slope_right")),
    (say("The angle between both slopes, at the ridge"), ("ridge_angle",)),
    (say("The angle at the ridge and one slope"), ("ridge_angle", "slope_left")),
    (say("Rise and run"), ("rise_left", "run_left", "rise_right", "run_right")),
)
READINGS = {"slope_left": say("Left slope"), "slope_right": say("Right slope"), "ridge_angle": say("Angle at the ridge"),
            "rise_left": say("Left rise"), "run_left": say("Left run"), "rise_right": say("Right rise"),
            "run_right": say("Right run"), "error": say("May be off by")}
#: What a reading looks like, for the empty field.
EXAMPLES = {"slope_left": say("33.7° or 8:12"), "slope_right": say("as left"), "ridge_angle": "112.6°", "rise_left": "203",
            "run_left": "305", "rise_right": say("as left"), "run_right": say("as left"), "error": ""}
#: Readings that may be left out, being those of the left slope.
OPTIONAL = ("slope_right", "rise_right", "run_right")


class SurveyBox(QtGui.QWidget):
    """Readings to type; ``measured`` carries the Survey that they make, as soon as they make one."""

    measured = QtCore.Signal(object)

    def __init__(self, unit: str) -> None:
        super().__init__()
        self.unit = unit
        self.ways = QtGui.QComboBox()
        self.ways.setObjectName("SurveyWay")
        self.ways.setSizeAdjustPolicy(QtGui.QComboBox.AdjustToMinimumContentsLengthWithIcon)
        for words, _ in WAYS:
            self.ways.addItem(tr(words))
        self.words = QtGui.QLabel()
        self.words.setObjectName("SurveyWords")
        self.words.setWordWrap(True)
        self.lines = {key: self._line(key) for key in READINGS}
        self.form = QtGui.QFormLayout(self)
        self.form.setContentsMargins(0, 0, 0, 0)
        self.form.addRow(tr("Measured"), self.ways)
        self.rows = {key: QtGui.QLabel(tr(words)) for key, words in READINGS.items()}
        for key, line in self.lines.items():
            self.form.addRow(self.rows[key], line)
        self.form.addRow(self.words)
        self.ways.currentIndexChanged.connect(self.show_way)
        self.show_way(0)

    def _line(self, key: str) -> QtGui.QLineEdit:
        line = QtGui.QLineEdit()
        line.setObjectName(f"Survey_{key}")
        line.setPlaceholderText(tr(EXAMPLES[key]))
        line.textEdited.connect(self.read)
        return line

    @property
    def wanted(self) -> tuple[str, ...]:
        """The readings of the way that is chosen, the error last."""
        return (*WAYS[self.ways.currentIndex()][1], "error")

    def show_way(self, _: int) -> None:
        """Shows the readings of the way that is chosen."""
        for key, line in self.lines.items():
            line.setVisible(key in self.wanted)
            self.rows[key].setVisible(key in self.wanted)
        self.read()

    def read(self, *_: str) -> None:
        """Says what the readings come to, once all that are needed are there."""
        told = {key: self.lines[key].text() for key in self.wanted if self.lines[key].text().strip()}
        if any(key not in told for key in self.wanted if key not in (*OPTIONAL, "error")):
            self.words.setText("")
            return
        try:
            survey: Survey = survey_from_mapping(told, self.unit)
        except SurveyError as error:
            self.words.setText(translated(error))
            return
        self.words.setText(translated(survey.words))
        self.measured.emit(survey)
