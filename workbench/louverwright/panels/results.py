# SPDX-License-Identifier: LGPL-2.1-or-later
"""What follows from the values, live: sizes, air, weights, advice, and every finding with a way to its field."""

from __future__ import annotations

import html
from collections.abc import Iterator
from typing import Any

from PySide import QtCore, QtGui

from ..core.figures import AREA, LENGTH, OUTPUTS, WEIGHT, air_report
from ..core.parameters import BY_NAME
from ..core.sizing import vents_advised, width_from_ridge
from ..core.spec import Spec
from ..core.units import LengthStyle, format_angle, format_area, format_length, format_weight
from ..features.language import tr, translated
from .draft import Outcome

#: The outputs that are shown while values change, in this order.
SHOWN = ("overall_width", "overall_height", "slats", "slat_spacing", "free_area", "roof_opening_area", "hip_slope",
         "base_weight", "louver_weight", "roof_weight", "total_weight", "pieces")
_OUTPUT = {output.name: output for output in OUTPUTS}


class Results(QtGui.QWidget):
    """The figures; ``findings`` is a label of its own, for the panel's top.

    ``asked`` carries the name of the parameter whose finding was pressed.
    """

    asked = QtCore.Signal(str)

    def __init__(self) -> None:
        super().__init__()
        box = QtGui.QVBoxLayout(self)
        box.setContentsMargins(0, 0, 0, 0)
        self.findings = self._words("Findings")
        self.findings.linkActivated.connect(self.asked.emit)
        self.figures = self._words("Figures")
        box.addWidget(self.figures)

    @staticmethod
    def _words(name: str) -> QtGui.QLabel:
        label = QtGui.QLabel()
        label.setObjectName(name)
        label.setWordWrap(True)
        label.setTextFormat(QtCore.Qt.RichText)
        label.setTextInteractionFlags(QtCore.Qt.TextBrowserInteraction)
        return label

    def show_outcome(self, outcome: Outcome, style: LengthStyle) -> None:
        """Shows what a check came to; figures of a vent that cannot be built stay, greyed, from before."""
        self.findings.setText(findings_html(outcome))
        self.findings.setVisible(bool(outcome.findings))
        self.figures.setEnabled(outcome.spec is not None)
        if outcome.spec is not None:
            self.figures.setText(figures_html(outcome, style))


def findings_html(outcome: Outcome) -> str:
    """Every finding as a sentence; one that a parameter is to blame for links to it."""
    lines = []
    for finding in outcome.findings:
        sentence = html.escape(translated(finding.sentence))
        link = f' <a href="{html.escape(finding.field)}">{html.escape(tr("Go there"))}</a>' if finding.field in BY_NAME else ""
        lines.append(f'<p style="color:#b3261e; margin:2px 0">⚠ {sentence}{link}</p>')
    return "".join(lines)


def figures_html(outcome: Outcome, style: LengthStyle) -> str:
    """The figures as a small table, with advice below it."""
    assert outcome.spec is not None
    rows = [(tr(_OUTPUT[name].label.capitalize()), told(name, outcome.figures[name], style)) for name in SHOWN
            if not (_OUTPUT[name].optional and not outcome.figures[name])]
    table = "".join(f"<tr><td>{html.escape(name)}&nbsp;</td><td><b>{html.escape(value)}</b></td></tr>" for name, value in rows)
    advice = "".join(f'<p style="margin:2px 0">{html.escape(line)}</p>' for line in advice_on(outcome.spec, style))
    return f"<table>{table}</table>{advice}"


def told(name: str, value: Any, style: LengthStyle) -> str:
    """An output's value with its unit."""
    kind = _OUTPUT[name].kind
    if kind == LENGTH:
        return format_length(value, style)
    if kind == AREA:
        return format_area(value, style)
    if kind == WEIGHT:
        return format_weight(value, style)
    return format_angle(value) if kind == "angle" else str(value)


def advice_on(spec: Spec, style: LengthStyle) -> Iterator[str]:
    """What the ridge and the building ask for, and whether the vent gives it."""
    if spec.ridge_length:
        ridge = format_length(spec.ridge_length, style)
        width = width_from_ridge(spec.ridge_length, spec.width_rule, spec.vents)
        yield tr("By the trade's rule a ridge of {ridge}, shared by {vents}, takes a vent {width} wide.", ridge=ridge,
                 vents=spec.vents, width=format_length(width, style))
        advised = vents_advised(spec.ridge_length)
        if advised > spec.vents:
            yield tr("A ridge of {ridge} usually takes {vents} vents.", ridge=ridge, vents=advised)
    air = air_report(spec)
    if air.target:
        yield (tr("Of the free area wanted, {area}, the vent gives all.", area=format_area(air.target, style))
               if air.meets_target else
               tr("Of the free area wanted, {area}, {missing} is missing; the narrowest is the {narrowest}.",
                  area=format_area(air.target, style), missing=format_area(air.missing, style), narrowest=tr(air.narrowest)))
