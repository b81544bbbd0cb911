# SPDX-License-Identifier: LGPL-2.1-or-later
"""A report set on pages: the title block, the pieces in order, running heads and feet. Pure: no Qt, no files.

Pieces that hold together stay on one page when they fit on one, unless much of the page before it would stay empty: then
their table may run on. A piece that begins a page has its table's head above it again.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field, replace

from louverwright.exchange.pdf_layout import pieces_of
from louverwright.exchange.pdf_pieces import (
    BOUND,
    GROUPED,
    GUTTER,
    HAIR,
    HEAVY,
    Frame,
    Piece,
    gap,
    height_of,
    moved,
    stacked,
)
from louverwright.exchange.pdf_text import (
    BODY,
    RUNNING,
    SMALL,
    SUBTITLE,
    TITLE,
    Mark,
    Measure,
    RuleMark,
    Style,
    set_lines,
    wrap,
)
from louverwright.report.page import PageBreak, Report
from louverwright.report.sheets import PAPERS

TOP, BOTTOM, LEFT, RIGHT = 17.0, 17.0, 16.0, 14.0
EDGE = 9.0              # from the edge of the paper to the running head and foot
CLEAR = 3.5             # from them to the text
PAD = 2.0               # about the words of the title block
NAMES_SHARE = 5 / 11    # of the title block, for title and subtitle
SPARE = 0.3             # of a page: a group that would leave more of it empty is divided within its table
SLACK = 1e-6            # heights are sums, and rounding must not turn a page


@dataclass(frozen=True)
class Page:
    """The marks of a page, from the upper left corner of the paper, in the order of painting."""

    width: float
    height: float
    marks: tuple[Mark, ...]


def pages_of(report: Report, paper: str, measure: Measure) -> list[Page]:
    """The report on pages.

    ValueError for a paper that is not in PAPERS, or for a heading or title that is longer than a page.
    """
    if paper not in PAPERS:
        raise ValueError(f"Paper {paper!r} is not one of {', '.join(PAPERS)}.")
    width, height = PAPERS[paper]
    measuring = Frame(width - LEFT - RIGHT, height, measure)
    head, foot = _running_head(report, measuring), _running_foot(report, 1, 1, measuring)
    top = max(TOP, EDGE + head.height + CLEAR)
    frame = Frame(measuring.width, height - top - max(BOTTOM, EDGE + foot.height + CLEAR), measure)
    bodies = _bodies([_title_block(report, frame), *_pieces(report, frame)], frame)
    pages = []
    for number, body in enumerate(bodies, start=1):
        foot = _running_foot(report, number, len(bodies), frame)
        marks = () if number == 1 else moved(head.marks, LEFT, EDGE)
        marks += moved(body, LEFT, top) + moved(foot.marks, LEFT, height - EDGE - foot.height)
        pages.append(Page(width, height, marks))
    return pages


def _pieces(report: Report, frame: Frame) -> list[Piece]:
    """All pieces; a page break marks the one after it, and at either end of the report it marks none."""
    pieces: list[Piece] = []
    breaking = False
    for block in report.blocks:
        if isinstance(block, PageBreak):
            breaking = bool(pieces)
            continue
        made = pieces_of(block, frame)
        if breaking and made:
            made[0] = replace(made[0], new_page=True)
            breaking = False
        pieces += made
    return pieces


@dataclass
class _Filling:
    """The pages so far, and how far the last one is filled."""

    height: float
    pages: list[list[Mark]] = field(default_factory=lambda: [[]])
    used: float = 0.0
    last: Piece | None = None

    def turn(self) -> None:
        """A new page, unless this one is empty still."""
        if self.last is not None:
            self.pages.append([])
            self.used, self.last = 0.0, None

    def fits(self, pieces: list[Piece]) -> bool:
        lead = gap(self.last, pieces[0]) if self.last else 0.0
        return self.used + lead + height_of(pieces) <= self.height + SLACK

    def divided(self, group: list[Piece]) -> list[list[Piece]]:
        """The group whole; in two within its table where this page would else stay empty by more than ``SPARE``."""
        if self.fits(group) or self.height - self.used < SPARE * self.height:
            return [group]
        breaks = [i for i in range(1, len(group)) if group[i].head and group[i - 1].head and group[i - 1].hold < BOUND]
        fitting = [i for i in breaks if self.fits(group[:i])]
        return [group[:fitting[-1]], group[fitting[-1]:]] if fitting else [group]

    def put(self, piece: Piece) -> None:
        """The piece on this page, below a gap; at the top of a page below its table's head instead."""
        if self.last is None and piece.head:
            self.put(piece.head)
        if self.last is not None:
            self.used += gap(self.last, piece)
        self.pages[-1] += moved(piece.marks, 0.0, self.used)
        self.used += piece.height
        self.last = piece


def _bodies(pieces: list[Piece], frame: Frame) -> list[list[Mark]]:
    """The marks of each page's body, from the frame's upper left corner."""
    tallest = max(piece.height for piece in pieces)
    if tallest > frame.height + SLACK:
        raise ValueError("A heading, title or caption is longer than a page of the PDF. Shorten its text.")
    filling = _Filling(frame.height)
    for group in _chains(pieces, GROUPED):
        if group[0].new_page:
            filling.turn()
        for chain in filling.divided(group) if _on_a_page(group, frame) else _divided(group, frame):
            if not filling.fits(chain):
                filling.turn()
            for piece in chain:
                filling.put(piece)
    return filling.pages


def _chains(pieces: list[Piece], hold: int) -> Iterator[list[Piece]]:
    """Runs of pieces of which each but the last holds to the next at least as firmly as that.

    A page break ends a run whatever it holds to.
    """
    chain: list[Piece] = []
    for piece in pieces:
        if chain and (piece.new_page or chain[-1].hold < hold):
            yield chain
            chain = []
        chain.append(piece)
    if chain:
        yield chain


def _on_a_page(chain: list[Piece], frame: Frame) -> bool:
    """Whether the chain fits on a page of its own, with the table's head that it may begin with."""
    head = [chain[0].head] if chain[0].head else []
    return height_of([*head, *chain]) <= frame.height + SLACK


def _divided(group: list[Piece], frame: Frame) -> Iterator[list[Piece]]:
    """A group too tall for a page: heading with text as one where that fits, else piece by piece."""
    for chain in _chains(group, BOUND):
        if _on_a_page(chain, frame):
            yield chain
        else:
            yield from ([piece] for piece in chain)


def _title_block(report: Report, frame: Frame) -> Piece:
    """A box with title and subtitle at the left and the facts in two columns at the right."""
    width = frame.width * NAMES_SHARE if report.title_block else frame.width
    names = _lines([(report.title, TITLE), (report.subtitle, SUBTITLE)], width - 4 * PAD, frame, 1.5)
    facts = _facts(report.title_block, frame.width - width, frame)
    height = max(names.height + 3 * PAD, facts.height)
    sides = ((0.0, 0.0, frame.width, 0.0), (0.0, height, frame.width, height),
             (0.0, 0.0, 0.0, height), (frame.width, 0.0, frame.width, height))
    marks = moved(names.marks, 2 * PAD, 1.5 * PAD) + moved(facts.marks, width, 0.0)
    if report.title_block:
        marks += (RuleMark(width, 0.0, width, height, HAIR),)
    return Piece(height, marks + tuple(RuleMark(*side, HEAVY) for side in sides), after=6.0)


def _facts(facts: tuple[tuple[str, str], ...], width: float, frame: Frame) -> Piece:
    """The cells of the title block, two in a line; a last one without a neighbour has the whole line."""
    pieces: list[Piece] = []
    for start in range(0, len(facts), 2):
        line = facts[start:start + 2]
        each = width / len(line)
        cells = [_lines([(label, SMALL), (value, BODY)], each - 2 * PAD, frame, 0.0) for label, value in line]
        height = max(cell.height for cell in cells) + PAD
        marks: tuple[Mark, ...] = (RuleMark(0.0, 0.0, width, 0.0, HAIR),) if start else ()
        for number, cell in enumerate(cells):
            marks += moved(cell.marks, number * each + PAD, PAD / 2)
            marks += (RuleMark(number * each, 0.0, number * each, height, HAIR),) if number else ()
        pieces.append(Piece(height, marks))
    return Piece(height_of(pieces), stacked(pieces))


def _lines(texts: list[tuple[str, Style]], width: float, frame: Frame, between: float,
           align: str = "left") -> Piece:
    """Texts one below the other as one piece; an empty one takes no room."""
    pieces = []
    for text, style in texts:
        lines = wrap(text, width, style, frame.measure) if text else []
        marks = set_lines(lines, 0.0, 0.0, width, style, frame.measure, align)
        pieces += [Piece(len(lines) * style.line, marks, before=between)] if lines else []
    return Piece(height_of(pieces), stacked(pieces))


def _running_head(report: Report, frame: Frame) -> Piece:
    """Title and subtitle, for every page but the first."""
    half = (frame.width - GUTTER) / 2
    return _sides((report.title, half), (report.subtitle, half), frame)


def _running_foot(report: Report, page: int, pages: int, frame: Frame) -> Piece:
    """The footer and the page's number."""
    label = report.page_label.replace("{pages}", str(pages)).replace("{page}", str(page))
    wide = (frame.width - GUTTER) * 0.75
    return _sides((report.footer, wide), (label, frame.width - GUTTER - wide), frame)


def _sides(left: tuple[str, float], right: tuple[str, float], frame: Frame) -> Piece:
    """Two running texts with their widths, one from the left and one to the right."""
    ours = _lines([(left[0], RUNNING)], left[1], frame, 0.0)
    theirs = _lines([(right[0], RUNNING)], right[1], frame, 0.0, align="right")
    marks = ours.marks + moved(theirs.marks, frame.width - right[1], 0.0)
    return Piece(max(ours.height, theirs.height), marks)
