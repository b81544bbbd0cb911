# SPDX-License-Identifier: LGPL-2.1-or-later
"""Sheets of parts: every mark with the drawing that the cut report has of it, and beside it its cuts and joints."""

from __future__ import annotations

from collections.abc import Iterator
from textwrap import wrap

from .board_drawing import board_drawing
from .drawing import Drawing, Item, Label
from .job import Job
from .part_sheet import PartSheet, part_sheets
from .placed import Box, Placed
from .seat_words import seats
from .strokes import POINT_MM, text_width

#: Points of a part's title and of the words beside its drawing, and the height of their lines (mm).
TITLE, WORDS, LINE = 9.0, 6.5, 3.1
#: Room for a title, between drawing and words, between two parts (mm).
HEAD, BESIDE, BETWEEN = 6.0, 5.0, 3.0


def part_pages(job: Job, box: Box) -> list[list[Placed]]:
    """Every part of the job, from the top of each page's box downward, as many on a page as find room."""
    pages: list[list[Placed]] = [[]]
    y = box[3]
    for sheet in part_sheets(job):
        block = part_block(sheet, job, box[2] - box[0])
        if pages[-1] and y - block.height < box[1]:
            pages.append([])
            y = box[3]
        pages[-1].append(Placed(sheet.mark, block, box[0], y - block.height))
        y -= block.height + BETWEEN
    return pages if pages[0] else []


def part_block(sheet: PartSheet, job: Job, width: float) -> Drawing:
    """One part: title, drawing, and beside it what is cut, as wide as the sheet's room (mm)."""
    board = board_drawing(sheet.part, sheet.name, job.writer, seats(sheet.part, job.assembly))
    left = board.width + BESIDE
    lines = list(_lines(sheet, int((width - left) / text_width("x", WORDS * POINT_MM))))
    high = max(board.height, LINE * len(lines)) + HEAD
    items: list[Item] = [Label(0.0, high - 4.0, _title(sheet, job), TITLE), *board.placed(0.0, high - HEAD - board.height)]
    items += [Label(left, high - HEAD - LINE * number, line, WORDS) for number, line in enumerate(lines, 1)]
    return Drawing(width, high, tuple(items), description=board.description)


def _title(sheet: PartSheet, job: Job) -> str:
    return f"{sheet.mark} · {sheet.name} · cut {job.count(sheet.part)}{job.for_all} · {sheet.stock}"


def _lines(sheet: PartSheet, letters: int) -> Iterator[str]:
    """Blank, then each cut and joint with its angle or size, how the piece lies (left and right mean nothing without), and
    where it is marked, in lines of so many letters."""
    yield from wrap(f"Blank {sheet.blank}", letters)
    rows = [(row.title, row.set_to, row.lay, row.mark_at) for row in sheet.cuts]
    rows += [(row.name, row.size, row.face, row.position) for row in sheet.joints]
    for number, (what, *told) in enumerate(rows, 1):
        text = f"{number}  {what}: " + "; ".join(each for each in told if each)
        yield from wrap(text, letters, subsequent_indent="    ")
    for advice in sheet.advice:
        yield from wrap(advice, letters)
