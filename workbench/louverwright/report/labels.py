# SPDX-License-Identifier: LGPL-2.1-or-later
"""Labels to stick on the wood, one a piece: mark, name, stage, hand, which face they lie on, up, the edge to the gauge.

A label lies on the marked face as the board lies before the saw: end A to its left, the reference edge along its foot.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass

from ..core.assembly import Part, Piece
from ..core.geometry import Z_AXIS
from ..core.kinds import STAGES
from ..core.solid import END_A, MARKED_FACE, REFERENCE_EDGE
from .drawing import Arrow, Drawing, Item, Label, Line
from .job import Job
from .place_words import SIDELESS, called_as_it_lies, part_name, side_name
from .sheets import Sheet, SheetSet, lying
from .strokes import POINT_MM, text_width

#: Columns and rows of a sheet, the margin round them and the room for its head (mm).
COLUMNS, ROWS, MARGIN, HEAD = 4, 7, 10.0, 6.0
#: Within a label (mm), and its sizes of print (points).
PAD, MARK, SMALL, TINY = 2.5, 17.0, 7.0, 6.0
#: A marked face that leans less than this from the level has no way up on it (sine).
LEVEL = 0.05
#: Room for the arrow at a label's right (mm).
ARROW = 14.0


@dataclass(frozen=True)
class PieceLabel:
    """The words of one piece's label; ``up`` is the angle of its arrow from the label's length (degrees), None for none."""

    piece: str
    mark: str
    name: str
    stage: str
    face: str
    edge: str
    end: str
    side: str
    up: float | None


def labels(job: Job) -> tuple[PieceLabel, ...]:
    """One label for each piece of a vent that is made, in the order of the marks."""
    return tuple(_label(part, piece, number, job) for part in job.assembly.parts
                 for number, piece in enumerate(part.pieces, start=1))


def _label(part: Part, piece: Piece, number: int, job: Job) -> PieceLabel:
    name, (_, stage) = str(part_name(part, job)), STAGES[part.kind.stage]
    side = "" if part.kind.id in SIDELESS else str(side_name(job, piece.side))

    def called(of: str) -> str:
        return called_as_it_lies(part, piece, of, job)

    return PieceLabel(piece.id, part.mark, name[:1].upper() + name[1:], f"{stage}, {number} of {part.count}",
                      f"on the {called(MARKED_FACE)}{_facing(piece)}",
                      f"to the gauge: {called(REFERENCE_EDGE)}", f"end A, to the left: {called(END_A)}", side,
                      up_on(piece))


def up_on(piece: Piece) -> float | None:
    """Which way is up on a piece's marked face as it stands: degrees anticlockwise from its length; None on a level face."""
    place = piece.placement
    along, across = place.x[2], place.y[2]
    return math.degrees(math.atan2(across, along)) if math.hypot(along, across) > LEVEL else None


def _facing(piece: Piece) -> str:
    """Which way a level face looks, where there is no arrow."""
    if up_on(piece) is not None:
        return ""
    return ", which looks up" if piece.placement.z[2] * Z_AXIS[2] > 0.0 else ", which looks down"


# ---- sheets


def label_sheets(job: Job) -> SheetSet:
    """All labels of one vent on sheets of the job's paper, with lines to cut along."""
    found, each = labels(job), COLUMNS * ROWS
    pages = [found[start:start + each] for start in range(0, len(found), each)]
    return SheetSet(f"Labels: {job.title}", job.spec.paper_size,
                    tuple(Sheet(f"labels {number}", _sheet(page, number, len(pages), job))
                          for number, page in enumerate(pages, start=1)))


def _sheet(page: tuple[PieceLabel, ...], number: int, pages: int, job: Job) -> Drawing:
    wide, high = lying(job.spec.paper_size)
    step = ((wide - 2.0 * MARGIN) / COLUMNS, (high - 2.0 * MARGIN - HEAD) / ROWS)
    items: list[Item] = [*_cut_lines(wide, high, step), Label(MARGIN, high - MARGIN - 2.0, _head(number, pages, job), SMALL)]
    for place, label in enumerate(page):
        row, column = divmod(place, COLUMNS)
        items += _drawn(label, MARGIN + column * step[0], high - MARGIN - HEAD - (row + 1) * step[1], step)
    return Drawing(wide, high, tuple(items), description=f"Labels, sheet {number} of {pages}.")


def _head(number: int, pages: int, job: Job) -> str:
    several = f" · print {job.vents} sets, one for each vent" if job.vents > 1 else ""
    return f"{job.stamp} · labels {number} of {pages}{several} · cut along the dashes, glue on with end A to the left"


def _cut_lines(wide: float, high: float, step: tuple[float, float]) -> Iterator[Item]:
    top = high - MARGIN - HEAD
    for column in range(COLUMNS + 1):
        x = MARGIN + column * step[0]
        yield Line(((x, MARGIN), (x, top)), "hidden")
    for row in range(ROWS + 1):
        y = top - row * step[1]
        yield Line(((MARGIN, y), (wide - MARGIN, y)), "hidden")


def _drawn(label: PieceLabel, x: float, y: float, step: tuple[float, float]) -> Iterator[Item]:
    """A label with its lower left corner at (x, y)."""
    left, foot, room = x + PAD, y + PAD, step[0] - 2.0 * PAD
    lines = [(label.name, SMALL), (label.stage + (f" · {label.side}" if label.side else ""), TINY), (label.face, TINY),
             (label.end, TINY)]
    yield Label(left, y + step[1] - PAD - 4.4, label.mark, MARK)
    level = y + step[1] - PAD - 8.0
    for text, size in lines:
        yield Label(left, level, text, _fitted(text, size, room - ARROW))
        level -= 3.0
    yield Line(((left, foot), (left + room, foot)), "outline")
    yield Label(left, foot + 0.9, label.edge, _fitted(label.edge, TINY, room - ARROW))
    if label.up is not None:
        cx, cy, a = x + step[0] - PAD - ARROW / 2.0, y + step[1] / 2.0 + 1.0, math.radians(label.up)
        dx, dy = 5.0 * math.cos(a), 5.0 * math.sin(a)
        yield Arrow(cx - dx, cy - dy, cx + dx, cy + dy, style="outline")
        yield Label(cx, y + step[1] - PAD - 2.0, "up", TINY, "middle")


def _fitted(text: str, size: float, room: float) -> float:
    """The size of print (points) at which a line has room (mm), 4 points at least."""
    wide = text_width(text, size * POINT_MM)
    return size if wide <= room else max(4.0, size * room / wide)
