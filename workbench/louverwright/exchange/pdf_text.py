# SPDX-License-Identifier: LGPL-2.1-or-later
"""Lines of text on a PDF page: breaking, sizes, column widths. Pure; the font is known only by `Measure`.

All lengths are millimetres, sizes points; y runs down the page from the top.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from louverwright.report.drawing import INK, SOFT_INK, Drawing, Pen
from louverwright.report.strokes import POINT_MM

Measure = Callable[[str, float, bool], float]
"""The width in millimetres of a text in a size (points), bold or not."""

LINE_SPACING = 1.30     # line height, in the text's size
BASE_LINE = 0.76        # of the line height, from its top


@dataclass(frozen=True)
class Style:
    size: float
    bold: bool = False
    ink: str = INK

    @property
    def line(self) -> float:
        """Height of a line, mm."""
        return self.size * POINT_MM * LINE_SPACING


TITLE, SUBTITLE = Style(17, bold=True), Style(10, ink=SOFT_INK)
HEADINGS = {1: Style(13.5, bold=True), 2: Style(10.5, bold=True), 3: Style(9, bold=True)}
BODY, TABLE, SMALL, RUNNING = Style(9), Style(8), Style(7.5, ink=SOFT_INK), Style(7, ink=SOFT_INK)


@dataclass(frozen=True)
class TextMark:
    """One line of text from its base line's left end."""

    x: float
    y: float
    text: str
    style: Style


@dataclass(frozen=True)
class RuleMark:
    x1: float
    y1: float
    x2: float
    y2: float
    pen: Pen


@dataclass(frozen=True)
class BoxMark:
    x: float
    y: float
    width: float
    height: float
    paint: str


@dataclass(frozen=True)
class DrawingMark:
    """A drawing with its upper left corner at (x, y), in a scale of at most 1."""

    x: float
    y: float
    scale: float
    drawing: Drawing


WidthOf = Callable[[str, Style, Measure], float]
Mark = TextMark | RuleMark | BoxMark | DrawingMark


def wrap(text: str, width: float, style: Style, measure: Measure) -> list[str]:
    """Lines no wider than the width: broken at newlines and spaces, and within a word only if it is too long.

    A no-break space does not break. An empty text is one empty line.
    """
    lines: list[str] = []
    for paragraph in text.split("\n"):
        line = ""
        for word in (word for word in paragraph.split(" ") if word):
            longer = f"{line} {word}" if line else word
            if measure(longer, style.size, style.bold) <= width:
                line = longer
                continue
            if line:
                lines.append(line)
            *whole, line = _pieces(word, width, style, measure)
            lines.extend(whole)
        lines.append(line)
    return lines


def _pieces(word: str, width: float, style: Style, measure: Measure) -> list[str]:
    """The word, cut where it no longer fits; a single letter always fits."""
    pieces, piece = [], word[0]
    for letter in word[1:]:
        if measure(piece + letter, style.size, style.bold) > width:
            pieces.append(piece)
            piece = letter
        else:
            piece += letter
    return [*pieces, piece]


def set_lines(lines: Sequence[str], x: float, top: float, width: float, style: Style, measure: Measure,
              align: str = "left") -> tuple[TextMark, ...]:
    """Marks for lines one below the other in a column at x; empty lines only take their room."""
    marks = []
    for number, line in enumerate(lines):
        if not line:
            continue
        spare = 0.0 if align == "left" else width - measure(line, style.size, style.bold)
        shift = spare / 2 if align == "centre" else spare
        marks.append(TextMark(x + shift, top + (number + BASE_LINE) * style.line, line, style))
    return tuple(marks)


def text_width(text: str, style: Style, measure: Measure) -> float:
    """The widest line."""
    return max(measure(line, style.size, style.bold) for line in text.split("\n"))


def word_width(text: str, style: Style, measure: Measure) -> float:
    """The widest word, words being what `wrap` does not break."""
    return max(measure(word, style.size, style.bold) for word in text.replace("\n", " ").split(" "))


def column_widths(shares: Sequence[float], least: Sequence[float], width: float) -> list[float]:
    """Share out a width, but no column below its least width; if all the least do not fit, in their ratio.

    Each round fixes the columns that would be too narrow and shares the rest among the others again.
    """
    if sum(least) >= width:
        return [width * column / sum(least) for column in least]
    fixed: dict[int, float] = {}
    while True:
        free = [index for index in range(len(shares)) if index not in fixed]
        rest = width - sum(fixed.values())
        whole = sum(shares[index] for index in free)
        narrow = {index: least[index] for index in free if rest * shares[index] / whole < least[index] - 1e-9}
        if not narrow:
            return [fixed.get(index, rest * share / whole) for index, share in enumerate(shares)]
        fixed |= narrow
