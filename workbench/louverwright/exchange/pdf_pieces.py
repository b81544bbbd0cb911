# SPDX-License-Identifier: LGPL-2.1-or-later
"""Pieces: what a PDF page takes or leaves whole. Pure: no Qt, no files.

A piece's marks are placed from its own upper left corner, in millimetres with y downward.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace

from louverwright.exchange.pdf_text import Mark, Measure, RuleMark, Style, set_lines
from louverwright.report.drawing import INK, Pen

FREE, GROUPED, BOUND = 0, 1, 2
"""How a piece holds to the next: not at all, if the group fits on one page, or as a heading to its text."""

HAIR, HEAVY = Pen(0.18, "#8a8a8a"), Pen(0.4, INK)
GUTTER = 6.0                    # between blocks side by side
TEXT_WIDTH = 150.0              # longest line of running text
HEADING_ROOM = 32.0             # kept free of any single piece, for the heading or caption it is bound to


@dataclass(frozen=True)
class Piece:
    """Marks with their height, the gaps before and after (the larger of two neighbours' counts), and the hold
    on the next piece. `head` is repeated above a piece that begins a page; `new_page` makes it begin one."""

    height: float
    marks: tuple[Mark, ...]
    before: float = 0.0
    after: float = 0.0
    hold: int = FREE
    head: Piece | None = None
    new_page: bool = False


@dataclass(frozen=True)
class Frame:
    """The room for text: its width, and the height of a page's worth of pieces."""

    width: float
    height: float
    measure: Measure


def gap(above: Piece, below: Piece) -> float:
    return max(above.after, below.before)


def height_of(pieces: list[Piece]) -> float:
    """Of pieces one below the other, the gaps between them included."""
    return sum(piece.height for piece in pieces) + sum(map(gap, pieces, pieces[1:]))


def moved(marks: Iterable[Mark], dx: float, dy: float) -> tuple[Mark, ...]:
    """The marks elsewhere."""
    return tuple(
        replace(mark, x1=mark.x1 + dx, y1=mark.y1 + dy, x2=mark.x2 + dx, y2=mark.y2 + dy)
        if isinstance(mark, RuleMark) else replace(mark, x=mark.x + dx, y=mark.y + dy) for mark in marks)


def stacked(pieces: list[Piece]) -> tuple[Mark, ...]:
    """The marks of pieces one below the other."""
    marks: list[Mark] = []
    for number, piece in enumerate(pieces):
        marks += moved(piece.marks, 0.0, height_of(pieces[:number + 1]) - piece.height)
    return tuple(marks)


def grouped(pieces: list[Piece]) -> list[Piece]:
    """The pieces held together, as far as a page has room for them all."""
    return [replace(piece, hold=max(piece.hold, GROUPED)) for piece in pieces[:-1]] + pieces[-1:]


def spaced(pieces: list[Piece], after: float) -> list[Piece]:
    """The pieces with the gap after the last."""
    return [*pieces[:-1], *(replace(piece, after=after) for piece in pieces[-1:])]


def flow(lines: list[str], x: float, width: float, style: Style, frame: Frame, after: float) -> list[Piece]:
    """A piece a line; the first two and the last two hold to each other."""
    count = len(lines)
    pieces = [Piece(style.line, set_lines([line], x, 0.0, width, style, frame.measure),
                    hold=BOUND if number < count - 1 and number in (0, count - 2) else FREE)
              for number, line in enumerate(lines)]
    return spaced(pieces, after)
