# SPDX-License-Identifier: LGPL-2.1-or-later
"""The frame of a shop drawing with its title block, as a drawing and as a template that TechDraw fills in."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from html import escape

from .drawing import Drawing, Item, Label, Line
from .sheets import lying
from .strokes import POINT_MM, text_width
from .svg import number, to_svg

#: From the paper's edge to the frame, and the height of the title block along its lower side (mm).
MARGIN, BLOCK = 8.0, 13.0
#: Between the frame and what is drawn in it (mm).
INSET = 3.0
HEADING, VALUE = 5.0, 9.0
#: The name space of what TechDraw reads in a template.
FREECAD = "http://www.freecadweb.org/wiki/index.php?title=Svg_Namespace"


@dataclass(frozen=True)
class Field:
    """A field of the title block: its name in the template, its heading, and its share of the width."""

    name: str
    heading: str
    share: float


FIELDS = (
    Field("Vent", "Vent", 3.0), Field("Sheet", "Drawing", 2.6), Field("Scale", "Scale", 1.9), Field("Units", "Units", 1.1),
    Field("Paper", "Paper", 0.8), Field("Model", "Model and revision", 1.7), Field("Number", "Sheet", 0.9),
)


def room(paper: str) -> tuple[float, float, float, float]:
    """Left, bottom, right and top of what may be drawn on (mm)."""
    width, height = lying(paper)
    return MARGIN + INSET, MARGIN + BLOCK + INSET, width - MARGIN - INSET, height - MARGIN - INSET


def frame(paper: str) -> list[Item]:
    """Frame, lines and headings of the title block."""
    width, height = lying(paper)
    left, low, right, high, top = MARGIN, MARGIN, width - MARGIN, height - MARGIN, MARGIN + BLOCK
    items: list[Item] = [Line(((left, low), (right, low), (right, high), (left, high), (left, low)), "outline"),
                         Line(((left, top), (right, top)), "outline")]
    for field, x, _ in _cells(paper):
        if x > left:
            items.append(Line(((x, low), (x, top)), "thin"))
        items.append(Label(x + 1.2, top - 3.0, field.heading, HEADING))
    return items


def filled(paper: str, values: Mapping[str, str]) -> list[Item]:
    """The values of the title block, by the fields' names; a long one is set smaller."""
    return [Label(x + 1.2, MARGIN + 3.2, values[field.name], _size(values[field.name], wide - 2.4))
            for field, x, wide in _cells(paper)]


def _size(text: str, room: float) -> float:
    return min(VALUE, VALUE * room / max(text_width(text, VALUE * POINT_MM), 1e-9))


def _cells(paper: str) -> Iterator[tuple[Field, float, float]]:
    """The fields with their left sides and widths (mm)."""
    whole, shares, x = lying(paper)[0] - 2.0 * MARGIN, sum(field.share for field in FIELDS), MARGIN
    for field in FIELDS:
        wide = whole * field.share / shares
        yield field, x, wide
        x += wide


def template_svg(paper: str) -> str:
    """The sheet as a TechDraw template: its values are texts that TechDraw lets one edit."""
    width, height = lying(paper)
    drawing = Drawing(width, height, tuple(frame(paper)), description="Frame and title block of a shop drawing.")
    svg = to_svg(drawing, "louverwright", f"Shop drawing, {paper}")
    svg = svg.replace("<svg ", f'<svg version="1.1" xmlns:freecad="{FREECAD}" ', 1)
    texts = "\n".join(
        f'<text x="{number(x + 1.2)}" y="{number(height - MARGIN - 3.2)}" font-size="{number(0.75 * VALUE * POINT_MM)}" '
        f'font-family="DejaVu Sans, sans-serif" fill="#000000" freecad:editable="{field.name}"><tspan>{escape(field.heading)}'
        "</tspan></text>" for field, x, _ in _cells(paper))
    return ('<?xml version="1.0" encoding="UTF-8"?>\n<!-- SPDX-License-Identifier: LGPL-2.1-or-later -->\n'
            + svg.replace("</svg>", f"{texts}\n</svg>\n"))
