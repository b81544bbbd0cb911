# SPDX-License-Identifier: LGPL-2.1-or-later
"""The report as a PDF file, through Qt: real text, drawings as vectors, without display or other programs.

Where nothing has made a Qt application yet (FreeCAD's console, plain Python) one without a screen is made and
kept for the life of the process; in FreeCAD's window its own is used. Without one Qt would crash.
"""

from __future__ import annotations

import sys
from collections.abc import Callable
from pathlib import Path
from types import ModuleType
from typing import Any

from louverwright.exchange.pdf_pages import Page, pages_of
from louverwright.exchange.pdf_text import BoxMark, DrawingMark, Mark, Measure, RuleMark, TextMark
from louverwright.report.drawing import Drawing, Pen, Point
from louverwright.report.page import Report
from louverwright.report.sheets import PAPERS, SHEETS, SheetSet, lying
from louverwright.report.strokes import POINT_MM, Disc, Fill, Letters, Primitive, Stroke, primitives

from ..core.saying import say

FAMILIES = ("DejaVu Sans", "Verdana", "Segoe UI", "Noto Sans", "Helvetica", "Arial")
RESOLUTION = 1200
UNITS_MM = RESOLUTION / 25.4
"""The writer's units in a millimetre."""

_kept: list[Any] = []
"""The application made here: Qt crashes if it goes before what draws."""


class PdfError(RuntimeError):
    """The PDF could not be made; the text is a sentence for the user."""


def write_pdf(report: Report, path: str | Path, paper: str = "A4") -> int:
    """Writes the file, over one of that name; the number of pages.

    PdfError if Qt is missing or the file cannot be written; ValueError for a paper that is not known or a
    text that does not fit on a page.
    """
    return _write(report.title, lambda measure: pages_of(report, paper, measure), path, paper)


def write_sheets(sheets: SheetSet, path: str | Path) -> int:
    """Writes drawn pages, lying, at full size; otherwise as ``write_pdf``."""
    width, height = lying(sheets.paper)
    pages = [Page(width, height, (DrawingMark(0.0, 0.0, 1.0, sheet.drawing),)) for sheet in sheets.sheets]
    return _write(sheets.title, lambda _: pages, path, sheets.paper, lies=True)


def _write(title: str, make: Callable[[Measure], list[Page]], path: str | Path, paper: str, lies: bool = False) -> int:
    core, gui = qt_modules()
    keep_application(gui)
    content, pages = _pdf_bytes(title, make, paper, lies, core, gui)
    try:
        Path(path).write_bytes(content)
    except OSError as error:
        raise PdfError(say("The PDF could not be written to {path}: {error}.", path=path,
                           error=error.strerror or error)) from error
    return pages


def qt_modules() -> tuple[ModuleType, ModuleType]:
    """QtCore and QtGui of FreeCAD's PySide; PdfError where there is none."""
    try:
        from PySide import QtCore, QtGui
    except ImportError as error:
        raise PdfError(say("The PDF is drawn by FreeCAD's Qt (PySide), which this Python does not find: {error}. Run it "
                           "in FreeCAD, or write the HTML report instead.", error=error)) from error
    return QtCore, QtGui


def keep_application(gui: ModuleType) -> None:
    """Sees that there is a Qt application that can draw; PdfError if there is one that cannot."""
    present = gui.QGuiApplication.instance()
    if present is None:
        # Elsewhere the screen is always there, and the offscreen platform may not be installed.
        platform = ["-platform", "offscreen"] if sys.platform.startswith("linux") else []
        _kept.append(gui.QGuiApplication(["louverwright", *platform]))
    elif not present.inherits("QGuiApplication"):
        raise PdfError(say("The PDF needs a Qt application that can draw, and this process has one that cannot. Write it "
                           "from FreeCAD's window or its console."))


def _pdf_bytes(title: str, make: Callable[[Measure], list[Page]], paper: str, lies: bool, core: ModuleType,
               gui: ModuleType) -> tuple[bytes, int]:
    """The file's content and its number of pages."""
    buffer = core.QBuffer()
    buffer.open(core.QIODevice.WriteOnly)
    writer = _writer(buffer, title, paper, lies, core, gui)
    brush = Brush(core, gui, writer)
    pages = make(brush.measure)
    if not brush.painter.begin(writer):
        raise PdfError(say("Qt could not begin to draw the PDF."))
    try:
        brush.pages(pages)
    finally:
        brush.painter.end()
    del brush, writer       # Qt wants them gone before the buffer they wrote to.
    return bytes(buffer.data().data()), len(pages)


def _writer(buffer: Any, title: str, paper: str, lies: bool, core: ModuleType, gui: ModuleType) -> Any:
    papers = SHEETS if lies else PAPERS
    if paper not in papers:
        raise ValueError(f"Paper {paper!r} is not one of {', '.join(papers)}.")
    writer = gui.QPdfWriter(buffer)
    size = {"A4": gui.QPageSize.A4, "Letter": gui.QPageSize.Letter, "A3": gui.QPageSize.A3,
            "Tabloid": gui.QPageSize.Tabloid}[paper]
    # The one form that every PySide takes.
    writer.setPageLayout(gui.QPageLayout(gui.QPageSize(size), gui.QPageLayout.Landscape if lies else gui.QPageLayout.Portrait,
                                         core.QMarginsF(0.0, 0.0, 0.0, 0.0), gui.QPageLayout.Millimeter))
    writer.setResolution(RESOLUTION)
    writer.setTitle(title)
    writer.setCreator("Louverwright")
    return writer


class Brush:
    """Paints marks with a painter whose unit is the millimetre, y downward."""

    def __init__(self, core: ModuleType, gui: ModuleType, writer: Any) -> None:
        self.core, self.gui, self.writer = core, gui, writer
        self.painter = gui.QPainter()
        self.fonts: dict[tuple[float, bool], Any] = {}

    def font(self, size: float, bold: bool) -> Any:
        """The font in a size of points, with its metrics."""
        if (size, bold) not in self.fonts:
            self.fonts[size, bold] = self._font(size, bold)
        return self.fonts[size, bold]

    def _font(self, size: float, bold: bool) -> Any:
        """No ligatures, so that every word can be searched."""
        font = self.gui.QFont()
        font.setFamilies(list(FAMILIES))
        font.setStyleHint(self.gui.QFont.SansSerif)
        font.setStyleStrategy(self.gui.QFont.PreferNoShaping)
        font.setPointSizeF(size)
        font.setBold(bold)
        return font, self.gui.QFontMetricsF(font, self.writer)

    def measure(self, text: str, size: float, bold: bool) -> float:
        """The width of a text, mm."""
        _, metrics = self.font(size, bold)
        return float(metrics.horizontalAdvance(text)) / UNITS_MM

    def pages(self, pages: list[Page]) -> None:
        for number, page in enumerate(pages):
            if number:
                self.writer.newPage()
            self.painter.resetTransform()
            self.painter.scale(UNITS_MM, UNITS_MM)
            for mark in page.marks:
                self.mark(mark)

    def mark(self, mark: Mark) -> None:
        if isinstance(mark, TextMark):
            self.text((mark.x, mark.y), mark.text, mark.style.size, mark.style.bold, mark.style.ink)
        elif isinstance(mark, RuleMark):
            self.stroke(((mark.x1, mark.y1), (mark.x2, mark.y2)), mark.pen)
        elif isinstance(mark, BoxMark):
            self.painter.fillRect(self.core.QRectF(mark.x, mark.y, mark.width, mark.height),
                                  self.gui.QColor(mark.paint))
        else:
            self.drawing(mark)

    def drawing(self, mark: DrawingMark) -> None:
        """The drawing in its scale; its y axis points up, the page's down."""
        self.painter.save()
        self.painter.translate(mark.x, mark.y)
        self.painter.scale(mark.scale, mark.scale)
        for part in primitives(mark.drawing):
            self.part(part, mark.drawing)
        self.painter.restore()

    def part(self, part: Primitive, drawing: Drawing) -> None:
        def place(point: Point) -> Point:
            return point[0] - drawing.x0, drawing.y0 + drawing.height - point[1]

        if isinstance(part, Stroke):
            self.stroke(tuple(map(place, part.points)), part.pen)
        elif isinstance(part, Fill):
            self.fill(tuple(tuple(map(place, loop)) for loop in part.loops), part)
        elif isinstance(part, Disc):
            self.disc(place(part.centre), part)
        else:
            self.letters(place(part.at), part)

    def pen(self, pen: Pen | None) -> Any:
        """Qt counts dashes in widths of the line."""
        if pen is None:
            return self.gui.QPen(self.core.Qt.NoPen)
        made = self.gui.QPen(self.gui.QColor(pen.ink))
        made.setWidthF(pen.width)
        made.setCapStyle(self.core.Qt.FlatCap)
        made.setJoinStyle(self.core.Qt.RoundJoin)
        if pen.dashes:
            made.setDashPattern([dash / pen.width for dash in pen.dashes])
        return made

    def paint(self, paint: str) -> Any:
        return self.gui.QBrush(self.gui.QColor(paint)) if paint else self.gui.QBrush(self.core.Qt.NoBrush)

    def stroke(self, points: tuple[Point, ...], pen: Pen) -> None:
        path = self.gui.QPainterPath(self.core.QPointF(*points[0]))
        for point in points[1:]:
            path.lineTo(*point)
        self.painter.strokePath(path, self.pen(pen))

    def fill(self, loops: tuple[tuple[Point, ...], ...], part: Fill) -> None:
        path = self.gui.QPainterPath()
        path.setFillRule(self.core.Qt.OddEvenFill)
        for loop in loops:
            path.addPolygon(self.gui.QPolygonF([self.core.QPointF(*point) for point in loop]))
            path.closeSubpath()
        self.painter.setPen(self.pen(part.pen))
        self.painter.setBrush(self.paint(part.paint))
        self.painter.drawPath(path)

    def disc(self, centre: Point, part: Disc) -> None:
        self.painter.setPen(self.pen(part.pen))
        self.painter.setBrush(self.paint(part.paint))
        self.painter.drawEllipse(self.core.QPointF(*centre), part.radius, part.radius)

    def letters(self, at: Point, part: Letters) -> None:
        size = part.size / POINT_MM
        width = self.measure(part.text, size, False)
        shift = {"start": 0.0, "middle": -width / 2, "end": -width}[part.anchor]
        self.text(at, part.text, size, False, part.ink, part.rotation, shift)

    def text(self, at: Point, text: str, size: float, bold: bool, ink: str, rotation: float = 0.0,
             shift: float = 0.0) -> None:
        """Text from a point on its base line, turned counter-clockwise about it and shifted along it (mm)."""
        font, _ = self.font(size, bold)
        self.painter.save()
        self.painter.translate(*at)
        self.painter.rotate(-rotation)
        self.painter.scale(1.0 / UNITS_MM, 1.0 / UNITS_MM)
        self.painter.setFont(font)
        self.painter.setPen(self.gui.QColor(ink))
        self.painter.drawText(self.core.QPointF(shift * UNITS_MM, 0.0), text)
        self.painter.restore()
