# SPDX-License-Identifier: LGPL-2.1-or-later
"""Drawings of sticks and sheets with what is cut from them: lengths to scale, a stick's width drawn larger."""

from __future__ import annotations

import math
from collections.abc import Iterator

from ..core.assembly import CROSSCUT
from ..core.buying import CutStick, Placed, SheetBuy
from ..core.nesting import lying
from ..core.saw import end_of, setting
from ..core.sheet_plan import Laid, Sheet
from ..core.solid import END_A, END_B
from .drawing import Area, Arrow, Drawing, Item, Label, Line, Point
from .job import Writer
from .strokes import POINT_MM, fitted, text_width

#: The longest stick or sheet, a stick's width, and what a strip's width takes beside its sheet (mm on paper).
ROOM, HIGH, BESIDE = 168.0, 7.0, 8.0
#: Letters of marks and of lengths (points).
MARK, SMALL = 6.5, 5.0


def stick_drawing(stick: CutStick, longest: float, write: Writer) -> Drawing:
    """A stick with its pieces from the left: number and mark in them, lengths below, the angles of slanting ends above them;
    hatched is what falls off, dashed the lower face where it is seen behind the upper."""
    scale = ROOM / longest
    items: list[Item] = [Area((_box(0.0, stick.length * scale, HIGH),), "waste", "outline")]
    for number, piece in enumerate(stick.pieces, start=1):
        items += _piece(piece, number, scale, write)
    last = stick.pieces[-1].end
    if stick.left * scale > 12.0:
        items.append(Label((last + stick.length) / 2.0 * scale, -2.6, write.bare(stick.left), SMALL, "middle"))
    items += [Arrow(0.0, HIGH + 4.4, 12.0, HIGH + 4.4, both=True, style="grain"), Label(14.0, HIGH + 3.7, "grain", SMALL)]
    marks = ", ".join(part.mark for part in stick.parts)
    return fitted(tuple(items), description=f"A stick of {write.length(stick.length)}, cut into {marks}.")


def _box(x0: float, x1: float, high: float) -> tuple[Point, ...]:
    return ((x0, 0.0), (x1, 0.0), (x1, high), (x0, high))


def _piece(piece: Placed, number: int, scale: float, write: Writer) -> Iterator[Item]:
    """A piece's upper face, its lower one dashed, with mark, length and the angles of its ends."""
    board = piece.part.board
    upper, lower = (tuple(((piece.x + x) * scale, y / board.width * HIGH) for x, y in lying(board, piece.turn, side))
                    for side in (True, False))
    yield Area((upper,), "wood", "outline")
    for a, b, c, d in ((lower[0], lower[1], upper[0], upper[1]), (lower[2], lower[3], upper[2], upper[3])):
        if max(abs(a[0] - c[0]), abs(b[0] - d[0])) > 0.2:
            yield Line((a, b), "hidden")
    left, right = min(x for x, _ in (*upper, *lower)), max(x for x, _ in (*upper, *lower))
    yield from _fitting((left + right) / 2.0, HIGH / 2.0, f"{number}: {piece.part.mark}", MARK, right - left)
    length = write.bare(board.length)
    if text_width(length, SMALL * POINT_MM) < right - left:
        yield Label((left + right) / 2.0, -2.6, length, SMALL, "middle")
    else:
        yield Label((left + right) / 2.0 + 0.7, -0.8, length, SMALL, "end", 90.0)
    yield from _angles(piece, left, right, write)


def _angles(piece: Placed, left: float, right: float, write: Writer) -> Iterator[Item]:
    """The slanting ends' mitre and bevel above them: 'm 22.5°', 'b 30.0°'; a cut that makes two ends once."""
    turned = piece.turn in ("turned", "face down, turned")
    texts = [end_angles(piece, end, write) for end in ((END_B, END_A) if turned else (END_A, END_B))]
    room = right - left - 1.5
    if texts[0] and not piece.shared and _wide(texts[0]) + _wide(texts[1]) < room - (1.5 if texts[1] else 0.0):
        yield Label(left + 0.3, HIGH + 0.8, texts[0], SMALL, "start")
    if texts[1] and _wide(texts[1]) < room:
        yield Label(right - 0.3, HIGH + 0.8, texts[1], SMALL, "end")


def _wide(text: str) -> float:
    return text_width(text, SMALL * POINT_MM) if text else 0.0


def end_angles(piece: Placed, end: str, write: Writer) -> str:
    """An end's angles in letters, m for mitre and b for bevel; '' for a square one."""
    words = []
    for cut in piece.part.board.cuts:
        if cut.kind == CROSSCUT and end_of(cut) == end:
            at = setting(cut.planes[0])
            words += [f"{letter} {write.angle(abs(angle))}" for letter, angle in (("m", at.mitre), ("b", at.bevel))
                      if abs(angle) >= 0.05]
    return " ".join(words)


def _fitting(x: float, y: float, text: str, size: float, room: float) -> Iterator[Item]:
    """A text centred where there is room for it, its last word where there is not, upright where that is too wide too."""
    for each in (text, text.split()[-1]):
        if text_width(each, size * POINT_MM) < room - 0.6:
            yield Label(x, y - 0.8, each, size, "middle")
            return
    yield Label(x + 0.7, y, text.split()[-1], SMALL, "middle", 90.0)


def sheet_drawing(sheet: Sheet, buy: SheetBuy, write: Writer) -> Drawing:
    """A sheet with its pieces, the lines that it is ripped along first, the strips' widths at their right ends, and its face
    grain; hatched is what falls off."""
    used = max(laid.end for laid in sheet.laid) if buy.stock.form == "mesh" else buy.length
    long = min(buy.length, used * 1.15)
    scale = min((ROOM - BESIDE) / long, 110.0 / buy.stock.width)
    high = buy.stock.width * scale
    items: list[Item] = [Area((_box(0.0, long * scale, high),), "waste", "outline")]
    for laid in sheet.laid:
        items += _laid(laid, 1 + [each for each in sheet.laid if each.strip == laid.strip].index(laid), scale)
    for low, top in sheet.strips:
        if top < buy.stock.width:
            items.append(Line(((0.0, top * scale), (long * scale, top * scale)), "hidden"))
        items.append(Label(long * scale + 1.2, (low + top) / 2.0 * scale - 0.6, write.bare(top - low), SMALL))
    items += [Arrow(0.0, high + 2.5, 16.0, high + 2.5, both=True, style="grain"),
              Label(18.0, high + 1.8, "along the roll" if buy.stock.form == "mesh" else "face grain", SMALL)]
    marks = ", ".join(laid.mark for laid in sheet.laid)
    return fitted(tuple(items), description=f"{buy.stock.name}, {write.size(buy.length, buy.stock.width)}, cut into {marks}.")


def _laid(laid: Laid, number: int, scale: float) -> Iterator[Item]:
    upper, lower = (tuple((x * scale, y * scale) for x, y in shape) for shape in (laid.upper, laid.lower))
    yield Area((upper,), "wood", "outline")
    for a, b in zip(lower, (*lower[1:], lower[0]), strict=True):
        if max(_away(p, upper) for p in (a, b)) > 0.3:
            yield Line((a, b), "hidden")
    x, y = (sum(p[i] for p in upper) / len(upper) for i in (0, 1))
    width, depth = (max(p[i] for p in upper) - min(p[i] for p in upper) for i in (0, 1))
    room = width * (0.9 if len(upper) == 4 else 0.5)
    yield from _fitting(x, y, f"{number}: {laid.mark}", MARK, room)
    if laid.turn and depth > 9.0 and text_width(laid.turn, SMALL * POINT_MM) < room:
        yield Label(x, y - 3.4, laid.turn, SMALL, "middle")


def _away(p: Point, outline: tuple[Point, ...]) -> float:
    """How far a corner is from the nearest of an outline's (mm on paper)."""
    return min(math.dist(p, q) for q in outline)
