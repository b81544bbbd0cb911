# SPDX-License-Identifier: LGPL-2.1-or-later
"""The page model: what a printed report says, without saying how it is printed.

A `Report` is a tree of frozen blocks. Every string in it is final: a writer breaks lines and places
them, and never formats a number, translates or shortens. So every writer prints the same strings.

A newline in a text is a line break. An `anchor` names a place that a `Cell.link` may point to; it is
the part's stable id or made from it, unique in the report. Faulty trees raise `ValueError` when made.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass

from louverwright.report.drawing import Drawing

PARA_STYLES = ("normal", "caution", "small")
ALIGNMENTS = ("left", "right", "centre")
HEADING_LEVELS = (1, 2, 3)
_ANCHOR = re.compile(r"[A-Za-z][A-Za-z0-9._-]*\Z")


def _require(condition: bool, sentence: str) -> None:
    if not condition:
        raise ValueError(sentence)


def _check_anchor(anchor: str) -> None:
    _require(not anchor or _ANCHOR.match(anchor) is not None,
             f"The anchor {anchor!r} must be letters, digits, '.', '_' or '-', beginning with a letter.")


@dataclass(frozen=True)
class Heading:
    """A heading; level 1 is a chapter (the parts, a list), 2 a section of it (a part), 3 a sub-section."""

    text: str
    level: int = 1
    anchor: str = ""

    def __post_init__(self) -> None:
        _require(self.level in HEADING_LEVELS, f"Heading level {self.level} is not 1, 2 or 3.")
        _check_anchor(self.anchor)


@dataclass(frozen=True)
class Para:
    """A paragraph. Style "caution" is set in a marked box, "small" in smaller print."""

    text: str
    style: str = "normal"

    def __post_init__(self) -> None:
        _require(self.style in PARA_STYLES,
                 f"Paragraph style {self.style!r} is not one of {', '.join(PARA_STYLES)}.")


@dataclass(frozen=True)
class Bullets:
    items: tuple[str, ...]


@dataclass(frozen=True)
class Pairs:
    """Labels with their values, in `columns` columns read downward, then to the right; `small` in a table's print."""

    rows: tuple[tuple[str, str], ...]
    columns: int = 2
    small: bool = False

    def __post_init__(self) -> None:
        _require(1 <= self.columns <= 4, f"A list of pairs has 1 to 4 columns, not {self.columns}.")
        _require(all(len(row) == 2 for row in self.rows),
                 "Each row of a list of pairs is a label and a value.")

    @property
    def lines(self) -> int:
        """Rows on the page: the pairs divided among the columns, the last column perhaps shorter."""
        return -(-len(self.rows) // self.columns)


@dataclass(frozen=True)
class Cell:
    """A table cell that is more than a string: bold, the target of a link, or a link to an anchor."""

    text: str
    bold: bool = False
    anchor: str = ""
    link: str = ""

    def __post_init__(self) -> None:
        _check_anchor(self.anchor)
        _check_anchor(self.link)


CellLike = str | Cell


def as_cell(cell: CellLike) -> Cell:
    return cell if isinstance(cell, Cell) else Cell(cell)


@dataclass(frozen=True)
class Column:
    """A table column; shares are relative to each other, and a long word may widen its column."""

    title: str
    width_share: float = 1.0
    align: str = "left"

    def __post_init__(self) -> None:
        _require(self.align in ALIGNMENTS,
                 f"Alignment {self.align!r} is not one of {', '.join(ALIGNMENTS)}.")
        _require(self.width_share > 0, f"The width share of column {self.title!r} must be above 0.")


@dataclass(frozen=True)
class Tally:
    """What can be counted off as it is cut: ``pieces`` alike under a mark, and the stage and stock to choose it by.

    ``piece`` is a digest of one piece as it is cut, so that a count outlives what does not change the piece.
    """

    piece: str
    mark: str
    name: str
    pieces: int
    stage: str
    stock: str


@dataclass(frozen=True)
class Table:
    """A table; ``tallies`` are one for each row that can be counted off, or none.  On paper they show nothing."""

    columns: tuple[Column, ...]
    rows: tuple[tuple[CellLike, ...], ...]
    caption: str = ""
    note: str = ""
    tallies: tuple[Tally, ...] = ()

    def __post_init__(self) -> None:
        _require(len(self.columns) > 0, f"Table {self.caption!r} has no columns.")
        _require(len(self.tallies) in (0, len(self.rows)), f"Table {self.caption!r} has a tally for each row, or none.")
        for row in self.rows:
            _require(len(row) == len(self.columns),
                     f"Table {self.caption!r}: a row has {len(row)} cells for {len(self.columns)} columns.")


@dataclass(frozen=True)
class Figure:
    """A drawing with its caption, printed at its size in millimetres, or smaller where there is no room."""

    drawing: Drawing
    caption: str = ""


@dataclass(frozen=True)
class Row:
    """Blocks side by side, their widths in the ratio of `shares` (equal if none are given)."""

    blocks: tuple[Block, ...]
    shares: tuple[float, ...] = ()

    def __post_init__(self) -> None:
        _require(len(self.blocks) > 0, "A row has no blocks.")
        _require(len(self.shares) in (0, len(self.blocks)),
                 "A row has a width share for each block, or none.")
        _require(all(share > 0 for share in self.shares), "The width shares of a row must be above 0.")
        _no_break_in(self.blocks, "Row")

    @property
    def widths(self) -> tuple[float, ...]:
        """Fractions of the width of the row, with the sum 1."""
        shares = self.shares or (1.0,) * len(self.blocks)
        return tuple(share / sum(shares) for share in shares)


@dataclass(frozen=True)
class Together:
    """Blocks one below the other, kept on one page when they fit on one; with a tally they are about one mark."""

    blocks: tuple[Block, ...]
    tally: Tally | None = None

    def __post_init__(self) -> None:
        _no_break_in(self.blocks, "Together")


@dataclass(frozen=True)
class PageBreak:
    """The next block begins a page. Two in a row, or one at either end, make no empty page."""


Block = Heading | Para | Bullets | Pairs | Table | Figure | Row | Together | PageBreak


@dataclass(frozen=True)
class Report:
    """A whole report.

    `title_block` is label and value pairs at the head of the first page. `footer` is printed at the foot
    of each page with `page_label`, in which {page} and {pages} stand for numbers. `language` is a BCP 47 tag. `model`
    is the fingerprint of what it is about, for counts that a browser keeps.
    """

    title: str
    subtitle: str
    title_block: tuple[tuple[str, str], ...]
    blocks: tuple[Block, ...]
    footer: str
    language: str = "en"
    page_label: str = "Page {page} of {pages}"
    model: str = ""

    def __post_init__(self) -> None:
        names = [name for block in walk(self.blocks) for name in _anchors_of(block)]
        doubled = sorted({name for name in names if names.count(name) > 1})
        _require(not doubled, f"Anchors used more than once: {', '.join(doubled)}.")
        missing = sorted({cell.link for cell in _cells(self.blocks) if cell.link} - set(names))
        _require(not missing, f"Links to anchors that are not in the report: {', '.join(missing)}.")


def walk(blocks: tuple[Block, ...]) -> Iterator[Block]:
    """Every block in reading order; a row or a group comes before what it holds."""
    for block in blocks:
        yield block
        if isinstance(block, (Row, Together)):
            yield from walk(block.blocks)


def tallies_of(blocks: tuple[Block, ...]) -> Iterator[Tally]:
    """Every tally in reading order; a mark that stands in a list and has a group of its own has two alike."""
    for block in walk(blocks):
        if isinstance(block, Table):
            yield from block.tallies
        elif isinstance(block, Together) and block.tally is not None:
            yield block.tally


def _no_break_in(blocks: tuple[Block, ...], holder: str) -> None:
    _require(not any(isinstance(block, PageBreak) for block in walk(blocks)),
             f"A PageBreak cannot stand within a {holder}.")


def _cells(blocks: tuple[Block, ...]) -> Iterator[Cell]:
    """The table cells that are more than a string."""
    for block in walk(blocks):
        if isinstance(block, Table):
            for row in block.rows:
                yield from (cell for cell in row if isinstance(cell, Cell))


def _anchors_of(block: Block) -> tuple[str, ...]:
    if isinstance(block, Heading):
        return (block.anchor,) if block.anchor else ()
    if isinstance(block, Table):
        return tuple(cell.anchor for cell in _cells((block,)) if cell.anchor)
    return ()
