# SPDX-License-Identifier: LGPL-2.1-or-later
"""Drawings of sticks and sheets with what is cut from them: lengths to scale, a stick's width drawn larger."""

from __future__ import annotations

from collections.abc import Iterator

from ..core.assembly import Part
from ..core.buying import SheetBuy, Stick, outline_of
from ..core.sheet_plan import Sheet
from .drawing import Area, Arrow, Drawing, Item, Label, Line, Point
from .job import Writer
from .strokes import POINT_MM, fitted, text_width

#: The longest stick or sheet, and a stick's width (mm on paper).
ROOM, HIGH = 168.0, 6.0
#: Letters of marks and of lengths (points).
MARK, SMALL = 6.5, 5.5


def stick_drawing(stick: Stick, longest: float, kerf: float, write: Writer) -> Drawing:
    """A stick with its pieces from the left, their marks in them and their lengths below; hatched is what falls off."""
    scale = ROOM / longest
    items: list[Item] = [Area((_box(0.0, stick.length * scale, HIGH),), "waste", "outline")]
    x = stick.start
    for number, part in enumerate(stick.parts, start=1):
        items += _piece(part, number, x, scale, write)
        x += part.board.length + kerf
    if stick.left * scale > 12.0:
        items.append(Label((x + stick.left / 2.0) * scale, -2.6, write.bare(stick.left), SMALL, "middle"))
    items += [Arrow(0.0, HIGH + 2.0, 12.0, HIGH + 2.0, both=True, style="grain"),
              Label(14.0, HIGH + 1.3, "grain", SMALL)]
    marks = ", ".join(part.mark for part in stick.parts)
    return fitted(tuple(items), description=f"A stick of {write.length(stick.length)}, cut into {marks}.")


def _box(x0: float, x1: float, high: float) -> tuple[Point, ...]:
    return ((x0, 0.0), (x1, 0.0), (x1, high), (x0, high))


def _piece(part: Part, number: int, x: float, scale: float, write: Writer) -> Iterator[Item]:
    """A piece's outline in its blank, with mark and length; upright where they are too wide for it."""
    board = part.board
    left, long = x * scale, board.length * scale
    yield Area((_box(left, left + long, HIGH),), "face", "thin")
    yield Area((tuple((left + px * scale, py / board.width * HIGH) for px, py in outline_of(part)),), "wood", "outline")
    yield from _fitting(left + long / 2.0, HIGH / 2.0, f"{number}: {part.mark}", MARK, long)
    length = write.bare(board.length)
    if text_width(length, SMALL * POINT_MM) < long:
        yield Label(left + long / 2.0, -2.6, length, SMALL, "middle")
    else:
        yield Label(left + long / 2.0 + 0.7, -0.8, length, SMALL, "end", 90.0)


def _fitting(x: float, y: float, text: str, size: float, room: float) -> Iterator[Item]:
    """A text centred where there is room for it, its last word where there is not, upright where that is too wide too."""
    for each in (text, text.split()[-1]):
        if text_width(each, size * POINT_MM) < room - 0.6:
            yield Label(x, y - 0.8, each, size, "middle")
            return
    yield Label(x + 0.7, y, text.split()[-1], SMALL, "middle", 90.0)


def sheet_drawing(sheet: Sheet, buy: SheetBuy, write: Writer) -> Drawing:
    """A sheet with its pieces, the lines that it is ripped along first, and its face grain; hatched is what falls off."""
    used = max(x for laid in sheet.laid for x, _ in laid.outline) if buy.stock.form == "mesh" else buy.length
    long = min(buy.length, used * 1.15)
    scale = min(ROOM / long, 110.0 / buy.stock.width)
    high = buy.stock.width * scale
    items: list[Item] = [Area((_box(0.0, long * scale, high),), "waste", "outline")]
    for _, top in sheet.strips:
        if top < buy.stock.width:
            items.append(Line(((0.0, top * scale), (long * scale, top * scale)), "hidden"))
    for laid in sheet.laid:
        shape = tuple((x * scale, y * scale) for x, y in laid.outline)
        x = sum(p[0] for p in shape) / len(shape)
        y = sum(p[1] for p in shape) / len(shape)
        room = max(p[0] for p in shape) - min(p[0] for p in shape)
        items.append(Area((shape,), "wood", "outline"))
        items += _fitting(x, y, laid.mark, MARK, room)
        if laid.turned:
            items.append(Label(x, y - 3.4, "turned", SMALL - 0.5, "middle"))
    items += [Arrow(0.0, high + 2.5, 16.0, high + 2.5, both=True, style="grain"),
              Label(18.0, high + 1.8, "along the roll" if buy.stock.form == "mesh" else "face grain", SMALL)]
    marks = ", ".join(laid.mark for laid in sheet.laid)
    return fitted(tuple(items), description=f"{buy.stock.name}, {write.size(buy.length, buy.stock.width)}, cut into {marks}.")
