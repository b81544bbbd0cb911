# SPDX-License-Identifier: LGPL-2.1-or-later
"""Blocks of a report measured and cut into pieces, which `pdf_pages` puts on pages. Pure: no Qt, no files."""

from __future__ import annotations

from dataclasses import replace

from louverwright.exchange.pdf_pieces import (
    BOUND,
    FREE,
    GUTTER,
    HAIR,
    HEADING_ROOM,
    HEAVY,
    TEXT_WIDTH,
    Frame,
    Piece,
    flow,
    grouped,
    height_of,
    moved,
    spaced,
    stacked,
)
from louverwright.exchange.pdf_text import (
    BODY,
    HEADINGS,
    SMALL,
    TABLE,
    BoxMark,
    DrawingMark,
    Mark,
    RuleMark,
    Style,
    WidthOf,
    column_widths,
    set_lines,
    text_width,
    word_width,
    wrap,
)
from louverwright.report.drawing import INK, Pen
from louverwright.report.page import (
    Block,
    Bullets,
    Cell,
    CellLike,
    Figure,
    Heading,
    PageBreak,
    Pairs,
    Para,
    Row,
    Table,
    Together,
    as_cell,
)

BAR, TINT = Pen(1.4, INK), "#efeeeb"
PAD_X, PAD_Y = 1.5, 0.8         # about the text of a table cell
LABEL_SHARE, LABEL_GAP = 0.45, 3.0    # of a list of pairs: at most for the labels; beside them
WIDE_TABLE = 9                  # columns from which the small print is used


def pieces_of(block: Block, frame: Frame) -> list[Piece]:
    """The block in pieces, in order; a page break has none, see `pdf_pages`."""
    if isinstance(block, PageBreak):
        return []
    if isinstance(block, Heading):
        return [_heading(block, frame)]
    if isinstance(block, Para):
        return _caution(block, frame) if block.style == "caution" else _para(block, frame)
    if isinstance(block, Bullets):
        return spaced([piece for item in block.items for piece in _bullet(item, frame)], 2.5)
    if isinstance(block, Pairs):
        return _pairs(block, frame)
    if isinstance(block, Table):
        return table_pieces(block, frame)
    if isinstance(block, Figure):
        return [_figure(block, frame)]
    if isinstance(block, Row):
        return _row(block, frame)
    if isinstance(block, Together):
        return grouped([piece for inner in block.blocks for piece in pieces_of(inner, frame)])
    raise TypeError(f"{block!r} is not a block of a report.")


def _heading(heading: Heading, frame: Frame) -> Piece:
    style = HEADINGS[heading.level]
    lines = wrap(heading.text, frame.width, style, frame.measure)
    height = len(lines) * style.line
    marks: tuple[Mark, ...] = set_lines(lines, 0.0, 0.0, frame.width, style, frame.measure)
    if heading.level == 1:
        height += 1.2
        marks = (*marks, RuleMark(0.0, height, frame.width, height, HEAVY))
    before, after = {1: (8.0, 2.6), 2: (5.0, 1.5), 3: (3.5, 1.0)}[heading.level]
    return Piece(height, marks, before, after, BOUND)


def _para(para: Para, frame: Frame) -> list[Piece]:
    style, width = SMALL if para.style == "small" else BODY, min(frame.width, TEXT_WIDTH)
    return flow(wrap(para.text, width, style, frame.measure), 0.0, width, style, frame, after=2.2)


def _bullet(item: str, frame: Frame) -> list[Piece]:
    width = min(frame.width, TEXT_WIDTH) - 4.5
    first, *rest = flow(wrap(item, width, BODY, frame.measure), 4.5, width, BODY, frame, after=0.8)
    dot = set_lines(["•"], 1.5, 0.0, 3.0, BODY, frame.measure)
    return grouped([replace(first, marks=(*dot, *first.marks)), *rest])


def _caution(para: Para, frame: Frame) -> list[Piece]:
    """A tinted box with a heavy bar at its left, a strip for each line."""
    width, bar, pad = frame.width, BAR.width, 1.8
    lines = wrap(para.text, width - bar - 2 * pad, BODY, frame.measure)
    pieces = []
    for number, line in enumerate(lines):
        above, below = pad if number == 0 else 0.0, pad if number == len(lines) - 1 else 0.0
        height = above + BODY.line + below
        marks: list[Mark] = [BoxMark(0.0, 0.0, width, height, TINT), BoxMark(0.0, 0.0, bar, height, INK),
                             RuleMark(width, 0.0, width, height, HAIR)]
        marks += [RuleMark(0.0, y, width, y, HAIR) for y, edge in ((0.0, above), (height, below)) if edge]
        marks += set_lines([line], bar + pad, above, width, BODY, frame.measure)
        pieces.append(Piece(height, tuple(marks), before=2.0 if above else 0.0, after=3.0 if below else 0.0))
    return grouped(pieces)


def _pairs(pairs: Pairs, frame: Frame) -> list[Piece]:
    """A piece a row of the grid; one pair below the other where one is too long for that."""
    width = (frame.width - (pairs.columns - 1) * GUTTER) / pairs.columns
    longest = max((text_width(label, SMALL, frame.measure) for label, _ in pairs.rows), default=0.0)
    split = min(LABEL_SHARE * width, longest + LABEL_GAP)
    style = TABLE if pairs.small else BODY
    if pairs.small and pairs.columns > 1:
        return _balanced(pairs, split, width, frame, style)
    pieces: list[Piece] = []
    for line in range(pairs.lines):
        found = [(column, column * pairs.lines + line) for column in range(pairs.columns)]
        cells = [(column * (width + GUTTER), *_pair(pairs.rows[index], split, width, frame, style))
                 for column, index in found if index < len(pairs.rows)]
        height = max(tall for _, _, tall in cells)
        if height > frame.height - HEADING_ROOM:
            return [piece for pair in pairs.rows for piece in _long_pair(pair, frame)]
        marks = [mark for x, inner, _ in cells
                 for mark in (*moved(inner, x, 0.0), RuleMark(x, height, x + width, height, HAIR))]
        pieces.append(Piece(height, tuple(marks)))
    return spaced(pieces, 3.0)


def _balanced(pairs: Pairs, split: float, width: float, frame: Frame, style: Style) -> list[Piece]:
    """All pairs as one piece, column by column, each column as long as its own pairs; one below the other if too tall."""
    cells = [_pair(pair, split, width, frame, style) for pair in pairs.rows]
    columns = _shared_out([tall for _, tall in cells], pairs.columns)
    marks: list[Mark] = []
    for number, column in enumerate(columns):
        x, y = number * (width + GUTTER), 0.0
        for inner, tall in (cells[index] for index in column):
            marks += [*moved(inner, x, y), RuleMark(x, y + tall, x + width, y + tall, HAIR)]
            y += tall
    height = max(sum(cells[index][1] for index in column) for column in columns)
    if height > frame.height - HEADING_ROOM:
        return [piece for pair in pairs.rows for piece in _long_pair(pair, frame)]
    return [Piece(height, tuple(marks), after=3.0)]


def _shared_out(heights: list[float], columns: int) -> list[range]:
    """Runs of items for so many columns, in order, so that the tallest column is as low as it can be."""
    limits = sorted(sum(heights[i:j]) for i in range(len(heights)) for j in range(i + 1, len(heights) + 1))
    return next(runs for runs in (_runs(heights, limit) for limit in limits) if len(runs) <= columns)


def _runs(heights: list[float], limit: float) -> list[range]:
    """Items filled into columns up to a height; an item that is taller has a column of its own."""
    runs, start, filled = [], 0, 0.0
    for index, tall in enumerate(heights):
        if filled and filled + tall > limit + 1e-9:
            runs.append(range(start, index))
            start, filled = index, 0.0
        filled += tall
    return [*runs, range(start, len(heights))]


def _pair(pair: tuple[str, str], split: float, width: float, frame: Frame,
          style: Style) -> tuple[tuple[Mark, ...], float]:
    """Label and value with the height of the taller, the value from `split` on."""
    label = wrap(pair[0], split - LABEL_GAP + 1e-6, SMALL, frame.measure)
    value = wrap(pair[1], width - split, style, frame.measure)
    drop = 0.76 * (style.line - SMALL.line)
    marks = (*set_lines(label, 0.0, 0.5 + drop, split, SMALL, frame.measure),
             *set_lines(value, split, 0.5, width - split, style, frame.measure))
    return marks, max(len(label) * SMALL.line + drop, len(value) * style.line) + 0.9


def _long_pair(pair: tuple[str, str], frame: Frame) -> list[Piece]:
    label = flow(wrap(pair[0], frame.width, SMALL, frame.measure), 0.0, frame.width, SMALL, frame, after=0.0)
    value = flow(wrap(pair[1], frame.width, BODY, frame.measure), 0.0, frame.width, BODY, frame, after=3.0)
    return [*label[:-1], replace(label[-1], hold=BOUND), *value]


def table_pieces(table: Table, frame: Frame) -> list[Piece]:
    """Caption, head, a piece a row (more for a row taller than a page), note.

    The first two rows and the last two hold to each other, so that none stands alone on a page."""
    style = Style(7.0) if len(table.columns) >= WIDE_TABLE else TABLE
    bold = replace(style, bold=True)
    widths = _widths(table, style, frame)
    head = _cells(tuple(column.title for column in table.columns), table, widths, bold, frame)
    box = BoxMark(0.0, 0.0, frame.width, head.height, TINT)
    rules = [RuleMark(0.0, y, frame.width, y, HEAVY) for y in (0.0, head.height)]
    head = replace(head, marks=(box, *head.marks, *rules), hold=BOUND if table.rows else FREE)
    tallest = frame.height - head.height - HEADING_ROOM
    last = len(table.rows) - 1
    rows = [replace(piece, head=head, hold=BOUND if number in (0, last - 1) and number < last else FREE)
            for number, row in enumerate(table.rows)
            for piece in _table_row(row, table, widths, style, frame, tallest, number == last)]
    body = [head, *rows]
    note = flow(wrap(table.note, min(frame.width, TEXT_WIDTH), SMALL, frame.measure), 0.0, TEXT_WIDTH, SMALL,
                 frame, after=4.0) if table.note else []
    body[-1] = replace(body[-1], after=1.0 if note else 4.0, hold=BOUND if note else FREE)
    caption = wrap(table.caption, frame.width, bold, frame.measure) if table.caption else []
    above = [Piece(bold.line, set_lines([line], 0.0, 0.0, frame.width, bold, frame.measure),
                   after=1.0 if number == len(caption) - 1 else 0.0, hold=BOUND)
             for number, line in enumerate(caption)]
    return [*above, *body, *note]


def _widths(table: Table, style: Style, frame: Frame) -> list[float]:
    """By the columns' shares, but so that no line need be broken; if that cannot be, no word."""
    whole, words = (_needed(table, style, frame, width) for width in (text_width, word_width))
    shares = [column.width_share for column in table.columns]
    return column_widths(shares, whole if sum(whole) <= frame.width else words, frame.width)


def _needed(table: Table, style: Style, frame: Frame, width_of: WidthOf) -> list[float]:
    """The width of each column for the widest of its texts."""
    needed = []
    for index, column in enumerate(table.columns):
        cells = [Cell(column.title, bold=True), *(as_cell(row[index]) for row in table.rows)]
        widest = max(width_of(cell.text, replace(style, bold=cell.bold), frame.measure) for cell in cells)
        needed.append(widest + 2 * PAD_X + 0.05)
    return needed


def _cells(row: tuple[CellLike, ...], table: Table, widths: list[float], style: Style, frame: Frame,
           window: slice = slice(None)) -> Piece:
    """One row of cells, or the lines of it that the window shows; a head's lines stand at the foot."""
    marks: list[Mark] = []
    wrapped = []
    for content, width in zip(row, widths, strict=True):
        cell = as_cell(content)
        its = replace(style, bold=style.bold or cell.bold)
        wrapped.append((wrap(cell.text, width - 2 * PAD_X, its, frame.measure)[window], its))
    tallest = max(len(lines) for lines, _ in wrapped)
    x = 0.0
    for (lines, its), width, column in zip(wrapped, widths, table.columns, strict=True):
        top = PAD_Y + ((tallest - len(lines)) * style.line if style.bold else 0.0)
        marks += set_lines(lines, x + PAD_X, top, width - 2 * PAD_X, its, frame.measure, column.align)
        x += width
    return Piece(tallest * style.line + 2 * PAD_Y, tuple(marks))


def _table_row(row: tuple[CellLike, ...], table: Table, widths: list[float], style: Style, frame: Frame,
               tallest: float, last: bool) -> list[Piece]:
    whole = _cells(row, table, widths, style, frame)
    step = max(1, int((tallest - 2 * PAD_Y) / style.line))
    lines = round((whole.height - 2 * PAD_Y) / style.line)
    windows = [slice(start, start + step) for start in range(0, lines, step)]
    pieces = [whole]
    if lines > step:
        pieces = [_cells(row, table, widths, style, frame, shown) for shown in windows]
    end = pieces[-1]
    rule = RuleMark(0.0, end.height, frame.width, end.height, HEAVY if last else HAIR)
    return [*pieces[:-1], replace(end, marks=(*end.marks, rule))]


def _figure(figure: Figure, frame: Frame) -> Piece:
    drawing = figure.drawing
    caption = wrap(figure.caption, frame.width, SMALL, frame.measure) if figure.caption else []
    under = len(caption) * SMALL.line
    scale = min(1.0, frame.width / drawing.width, (frame.height - HEADING_ROOM - under) / drawing.height)
    height = drawing.height * scale + (1.0 if caption else 0.0)
    text = set_lines(caption, 0.0, height, frame.width, SMALL, frame.measure)
    return Piece(height + under, (DrawingMark(0.0, 0.0, scale, drawing), *text), before=1.0, after=4.0)


def _row(row: Row, frame: Frame) -> list[Piece]:
    """One piece with the blocks side by side; one below the other if that would be taller than a page."""
    room = frame.width - (len(row.blocks) - 1) * GUTTER
    marks: list[Mark] = []
    x, height = 0.0, 0.0
    for block, share in zip(row.blocks, row.widths, strict=True):
        pieces = pieces_of(block, replace(frame, width=room * share))
        marks += moved(stacked(pieces), x, 0.0)
        height = max(height, height_of(pieces))
        x += room * share + GUTTER
    if height > frame.height - HEADING_ROOM:
        return [piece for block in row.blocks for piece in pieces_of(block, frame)]
    return [Piece(height, tuple(marks), before=1.0, after=3.0)]
