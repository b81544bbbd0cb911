# SPDX-License-Identifier: LGPL-2.1-or-later
"""A drawing as an SVG element for the HTML report, at its size in millimetres."""

from __future__ import annotations

from html import escape

from louverwright.report.drawing import Drawing, Pen, Point
from louverwright.report.strokes import Disc, Fill, Letters, Primitive, Stroke, primitives


def number(value: float) -> str:
    """A coordinate to 0.01 mm, without trailing zeros and never "-0"."""
    text = f"{value:.2f}".rstrip("0").rstrip(".")
    return "0" if text == "-0" else text


def to_svg(drawing: Drawing, ident: str, title: str) -> str:
    """The element; `ident` makes the ids of its title and description unique on the page.

    Without a description of its own a drawing is described by the texts in it.
    """
    parts = primitives(drawing)
    description = drawing.description or "; ".join(part.text for part in parts if isinstance(part, Letters))
    width, height = number(drawing.width), number(drawing.height)
    head = (f'<svg xmlns="http://www.w3.org/2000/svg" width="{width}mm" height="{height}mm" '
            f'viewBox="0 0 {width} {height}" role="img" aria-labelledby="{ident}-title {ident}-desc">'
            f'<title id="{ident}-title">{escape(title)}</title>'
            f'<desc id="{ident}-desc">{escape(description)}</desc>')
    return "\n".join([head, *(_element(part, drawing) for part in parts), "</svg>"])


def _element(part: Primitive, drawing: Drawing) -> str:
    if isinstance(part, Stroke):
        points = " ".join(",".join(_place(point, drawing)) for point in part.points)
        return f'<polyline points="{points}" fill="none"{_pen(part.pen)}/>'
    if isinstance(part, Fill):
        loops = " ".join(_loop(loop, drawing) for loop in part.loops)
        return f'<path d="{loops}" fill="{part.paint or "none"}" fill-rule="evenodd"{_pen(part.pen)}/>'
    if isinstance(part, Disc):
        x, y = _place(part.centre, drawing)
        paint = part.paint or "none"
        return f'<circle cx="{x}" cy="{y}" r="{number(part.radius)}" fill="{paint}"{_pen(part.pen)}/>'
    return _text(part, drawing)


def _place(point: Point, drawing: Drawing) -> tuple[str, str]:
    return number(point[0] - drawing.x0), number(drawing.y0 + drawing.height - point[1])


def _loop(loop: tuple[Point, ...], drawing: Drawing) -> str:
    return "M" + " L".join(" ".join(_place(point, drawing)) for point in loop) + " Z"


def _pen(pen: Pen | None) -> str:
    if pen is None:
        return ""
    dashes = f' stroke-dasharray="{" ".join(map(number, pen.dashes))}"' if pen.dashes else ""
    return f' stroke="{pen.ink}" stroke-width="{number(pen.width)}" stroke-linejoin="round"{dashes}'


def _text(letters: Letters, drawing: Drawing) -> str:
    x, y = _place(letters.at, drawing)
    angle = number(-letters.rotation)
    turn = "" if angle == "0" else f' transform="rotate({angle} {x} {y})"'
    return (f'<text x="{x}" y="{y}" font-size="{number(letters.size)}" text-anchor="{letters.anchor}" '
            f'fill="{letters.ink}"{turn}>{escape(letters.text)}</text>')
