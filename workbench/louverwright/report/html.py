# SPDX-License-Identifier: LGPL-2.1-or-later
"""The report as one HTML file: styles and drawings inline, nothing fetched.

It reads on a screen and on a phone, and prints on A4 or Letter: table heads repeat, rows, figures and
groups stay whole, and the foot of each page carries the report's footer where the browser can do so.
A report that has something to count off carries ``shop.js``; its policy forbids the browser every other script.
"""

from __future__ import annotations

from base64 import b64encode
from hashlib import sha256
from html import escape
from itertools import count
from pathlib import Path

from louverwright.report.html_style import style_sheet
from louverwright.report.page import (
    Block,
    Bullets,
    CellLike,
    Column,
    Figure,
    Heading,
    PageBreak,
    Pairs,
    Para,
    Report,
    Row,
    Table,
    Tally,
    Together,
    as_cell,
    tallies_of,
)
from louverwright.report.svg import number, to_svg

PAPERS = ("A4", "Letter")
LONG_WORD = 24      # letters; a longer word may be broken in a table, rather than push it off the paper


def to_html(report: Report, paper: str = "A4") -> str:
    """The whole file as text, to be written as UTF-8. ValueError for a paper that is not in PAPERS."""
    if paper not in PAPERS:
        raise ValueError(f"Paper {paper!r} is not one of {', '.join(PAPERS)}.")
    title, subtitle = _text(report.title), _text(report.subtitle)
    style = f"\n{style_sheet(paper, report)}\n"
    script = f"\n{shop_script()}" if any(tallies_of(report.blocks)) else ""
    return "\n".join([
        "<!DOCTYPE html>",
        f'<html lang="{_quoted(report.language)}">',
        "<head>",
        '<meta charset="utf-8">',
        f'<meta http-equiv="Content-Security-Policy" content="{policy(style, script)}">',
        '<meta name="viewport" content="width=device-width, initial-scale=1">',
        '<meta name="generator" content="Louverwright">',
        f"<title>{title}</title>",
        f"<style>{style}</style>",
        "</head>",
        f'<body data-model="{_quoted(report.model)}" data-project="{_quoted(report.title)}">' if script else "<body>",
        f'<header class="title-block">\n<div class="names">\n<h1>{title}</h1>',
        f'<p class="subtitle">{subtitle}</p>' if report.subtitle else "",
        f"</div>\n{_pairs_list(report.title_block, 'facts', 1)}\n</header>",
        f"<main>\n{_Body().blocks(report.blocks)}\n</main>",
        f"<footer>{_text(report.footer)}</footer>",
        f"<script>{script}</script>" if script else "",
        "</body>",
        "</html>",
        "",
    ])


def shop_script() -> str:
    """The one script, a file of this package."""
    return Path(__file__).with_name("shop.js").read_text(encoding="utf-8")


def policy(style: str, script: str = "") -> str:
    """What the browser may do (Content Security Policy, W3C): this style and, if there is one, this script; fetch nothing.

    Attributes that set widths are let in; the last entry is for browsers that know no entry for attributes alone.
    """
    scripts = f"script-src {_digest(script)}; " if script else ""
    return (f"default-src 'none'; base-uri 'none'; form-action 'none'; {scripts}style-src-elem {_digest(style)}; "
            "style-src-attr 'unsafe-inline'; style-src 'unsafe-inline'")


def _digest(text: str) -> str:
    return f"'sha256-{b64encode(sha256(text.encode('utf-8')).digest()).decode('ascii')}'"


def _text(text: str) -> str:
    return escape(text, quote=False)


def _quoted(text: str) -> str:
    return escape(text, quote=True)


def _pairs_list(rows: tuple[tuple[str, str], ...], kind: str, lines: int) -> str:
    items = "\n".join(f"<div><dt>{_text(label)}</dt><dd>{_text(value)}</dd></div>" for label, value in rows)
    longest = max((len(label) for label, _ in rows), default=0)
    return f'<dl class="{kind}" style="--lines:{lines};--label:{longest}">\n{items}\n</dl>'


class _Body:
    """Writes blocks in order; keeps the last heading's depth, a count that makes ids unique, and whether it is in a part."""

    def __init__(self) -> None:
        self._depth = 1
        self._numbers = count(1)
        self._in_part = False

    def blocks(self, blocks: tuple[Block, ...]) -> str:
        """The blocks one below the other; a page break marks the block after it."""
        written: list[str] = []
        breaking = False
        for block in blocks:
            if isinstance(block, PageBreak):
                breaking = bool(written)
                continue
            text = self._block(block)
            written.append(f'<div class="new-page">\n{text}\n</div>' if breaking else text)
            breaking = False
        return "\n".join(written)

    def _block(self, block: Block) -> str:
        if isinstance(block, Heading):
            return self._heading(block)
        if isinstance(block, Para):
            kind = "" if block.style == "normal" else f' class="{block.style}"'
            return f"<p{kind}>{_text(block.text)}</p>"
        if isinstance(block, Bullets):
            return "<ul>\n" + "\n".join(f"<li>{_text(item)}</li>" for item in block.items) + "\n</ul>"
        if isinstance(block, Pairs):
            kind = f"pairs columns-{block.columns}" + (" small-print" if block.small else "")
            return _pairs_list(block.rows, kind, max(1, block.lines))
        if isinstance(block, Table):
            return self._table(block)
        if isinstance(block, Figure):
            return self._figure(block)
        if isinstance(block, Row):
            return self._row(block)
        if isinstance(block, Together):
            return self._together(block)
        raise TypeError(f"{block!r} is not a block of a report.")

    def _heading(self, heading: Heading) -> str:
        """The title is h1; a level never skips one, so that the outline stays in order."""
        self._depth = min(heading.level + 1, self._depth + 1)
        anchor = f' id="{_quoted(heading.anchor)}"' if heading.anchor else ""
        return f'<h{self._depth} class="level-{heading.level}"{anchor}>{_text(heading.text)}</h{self._depth}>'

    def _row(self, row: Row) -> str:
        sides = "\n".join(
            f'<div style="flex:{number(100 * width)} 1 0">\n{self.blocks((block,))}\n</div>'
            for block, width in zip(row.blocks, row.widths, strict=True))
        return f'<div class="row">\n{sides}\n</div>'

    def _together(self, group: Together) -> str:
        self._in_part = group.tally is not None
        inside = self.blocks(group.blocks)
        self._in_part = False
        return f'<div class="together"{_counted(group.tally)}>\n{inside}\n</div>'

    def _figure(self, figure: Figure) -> str:
        drawing = to_svg(figure.drawing, f"figure-{next(self._numbers)}", figure.caption)
        caption = f"\n<figcaption>{_text(figure.caption)}</figcaption>" if figure.caption else ""
        return f"<figure>\n{drawing}{caption}\n</figure>"

    def _table(self, table: Table) -> str:
        """A table; one that is read in the shop turns each row into a card where the screen is narrow.

        A browser that is told to show rows as cards forgets that it is a table: so roles say it.
        """
        ident = f"table-{next(self._numbers)}"
        caption = f'<caption id="{ident}">{_text(table.caption)}</caption>' if table.caption else ""
        cards = bool(table.tallies) or self._in_part
        named = f' role="region" aria-labelledby="{ident}" tabindex="0"' if caption else ""
        whole = sum(column.width_share for column in table.columns)
        widths = "".join(f'<col style="width:{number(100 * c.width_share / whole)}%">' for c in table.columns)
        head = "".join(f'<th scope="col"{_role("columnheader", cards)}{_classes(_kinds(c))}>{_text(c.title)}</th>'
                       for c in table.columns)
        tallies = table.tallies or (None,) * len(table.rows)
        rows = "\n".join(_table_row(row, table.columns, cards, tally)
                         for row, tally in zip(table.rows, tallies, strict=True))
        note = f'\n<p class="note">{_text(table.note)}</p>' if table.note else ""
        group, line = _role("rowgroup", cards), _role("row", cards)
        kinds = _classes(["wide"] * (len(table.columns) > 8) + ["cards"] * cards)
        return (f'<div class="table"{named}>\n<table{_role("table", cards)}{kinds}>\n{caption}<colgroup>{widths}</colgroup>\n'
                f"<thead{group}><tr{line}>{head}</tr></thead>\n<tbody{group}>\n{rows}\n</tbody>\n</table>{note}\n</div>")


def _role(role: str, given: bool) -> str:
    return f' role="{role}"' if given else ""


def _counted(tally: Tally | None) -> str:
    """What the script needs of something that can be counted off, as attributes."""
    if tally is None:
        return ""
    told = {"piece": tally.piece, "mark": tally.mark, "name": tally.name, "pieces": str(tally.pieces), "stage": tally.stage,
            "stock": tally.stock}
    return "".join(f' data-{name}="{_quoted(value)}"' for name, value in told.items())


def _kinds(column: Column) -> list[str]:
    return [] if column.align == "left" else [column.align]


def _classes(kinds: list[str]) -> str:
    return f' class="{" ".join(kinds)}"' if kinds else ""


def _table_row(row: tuple[CellLike, ...], columns: tuple[Column, ...], cards: bool, tally: Tally | None) -> str:
    pairs = enumerate(zip(row, columns, strict=True))
    cells = [_table_cell(cell, column, index == 0, cards) for index, (cell, column) in pairs]
    return f"<tr{_role('row', cards)}{_counted(tally)}>{''.join(cells)}</tr>"


def _table_cell(content: CellLike, column: Column, first: bool, cards: bool) -> str:
    """The first cell of a row is its heading, to a screen reader if not to the eye; on a card each has its column's title."""
    cell = as_cell(content)
    text = _text(cell.text)
    if cell.link:
        text = f'<a href="#{_quoted(cell.link)}">{text}</a>'
    if cell.bold:
        text = f"<strong>{text}</strong>"
    anchor = f' id="{_quoted(cell.anchor)}"' if cell.anchor else ""
    tag, scope, role = ("th", ' scope="row"', "rowheader") if first else ("td", "", "cell")
    label = f' data-label="{_quoted(column.title)}"' if cards and not first else ""
    kinds = _kinds(column) + ["long"] * any(len(word) > LONG_WORD for word in cell.text.split())
    return f"<{tag}{scope}{_role(role, cards)}{anchor}{_classes(kinds)}{label}>{text}</{tag}>"
