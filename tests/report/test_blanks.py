"""Every blank is reached from its stock by steps that are listed, in the part's block and on the set-up sheet."""

from __future__ import annotations

import re
import sys
from functools import lru_cache
from pathlib import Path

import pytest

sys.path.append(str(Path(__file__).resolve().parents[1] / "core"))
from making import EXAMPLES, job_of

from louverwright.core.assembly import RIP, Part
from louverwright.core.saw import SQUARE, setting
from louverwright.exchange.papers import job_from_values
from louverwright.report.blanks import NARROW, THICKNESSED, blank_steps
from louverwright.report.document import document
from louverwright.report.job import Job
from louverwright.report.page import Table, as_cell, walk
from louverwright.report.part_sheet import PartSheet, part_sheets


@lru_cache(maxsize=1)
def tables(job: Job) -> tuple[Table, ...]:
    """The report's tables."""
    return tuple(block for block in walk(document(job).blocks) if isinstance(block, Table))


def set_up(job: Job, caption: str) -> list[str]:
    """The rows of the set-up sheet's tables whose caption begins so, each as one text."""
    return [" | ".join(as_cell(cell).text for cell in row) for table in tables(job)
            if table.caption.startswith(caption) for row in table.rows]


def has(rows: list[str], part: Part, *words: str) -> bool:
    """Whether some row names the part's mark and holds the words."""
    return any(re.search(rf"\b{part.mark}\b", row) and all(word in row for word in words) for row in rows)


def steps(sheet: PartSheet) -> list[str]:
    return [" | ".join((row.title, row.set_to, row.lay, row.mark_at)) for row in sheet.cuts]


@pytest.mark.parametrize("name", EXAMPLES)
def test_every_size_of_a_blank_that_is_not_its_stocks_is_made_by_a_listed_step(name: str) -> None:
    job = job_of(name)
    write = job.writer
    sheets, planed, rips = (set_up(job, caption) for caption in ("Sheet goods", "Thicknessing", "Rips"))
    ends = set_up(job, "Crosscuts") + set_up(job, "Corner cuts")
    for sheet in part_sheets(job):
        part, board = sheet.part, sheet.part.board
        own = steps(sheet)
        if part.stock.form in ("sheet", "mesh"):
            size = write.size(board.length, board.width)
            assert has(sheets, part, part.stock.name, size), part.mark
            assert size in own[0] and ("along the first size" in own[0] or "along the roll" in own[0]), part.mark
        else:
            assert has(ends, part) and own, part.mark
            assert not has(sheets, part)
        if abs(board.thickness - part.stock.thickness) > 0.01:
            assert has(planed, part, f"{write.length(board.thickness)} thick"), part.mark
            assert any(f"{write.bare(board.thickness)} thick" in step for step in own), part.mark
        if part.stock.form not in ("sheet", "mesh") and abs(board.width - part.stock.width) > 0.01:
            assert has(rips, part, f"{write.length(board.width)} wide"), part.mark
            assert sum(f"{write.bare(board.width)} wide" in step for step in own) == 1, part.mark


def test_a_bed_that_is_flatter_than_its_stock_is_thicknessed() -> None:
    """So that the test above sees a thickness."""
    if "saltbox-off-the-ridge" not in EXAMPLES:
        pytest.skip("needs the sill of little slope")
    assert len(set_up(job_of("saltbox-off-the-ridge"), "Thicknessing")) == 1


def bevelled(part: Part) -> bool:
    return any(cut.kind == RIP and abs(setting(cut.planes[0]).bevel) >= SQUARE for cut in part.board.cuts)


@pytest.mark.parametrize("name", EXAMPLES)
def test_a_narrow_strip_is_bevelled_on_the_board(name: str) -> None:
    """A sill bed was ripped to width before its bevel, and told to be bevelled before it is ripped free."""
    narrow = [sheet for sheet in part_sheets(job_of(name)) if bevelled(sheet.part) and sheet.part.board.width < NARROW]
    rips = set_up(job_of(name), "Rips")
    assert narrow
    for sheet in narrow:
        rows = [step for step in steps(sheet) if step.startswith("rip")]
        assert "bevel" in rows[0] and not rows[0].startswith("rip to width"), sheet.mark
        assert any("on the wide board" in sentence for sentence in sheet.advice)
        assert sum(bool(re.search(rf"\b{sheet.mark}\b", row)) for row in rips) == len(rows)


def test_a_narrow_strip_with_a_square_edge_left_is_ripped_free_last() -> None:
    """Narrow mitred posts: the bevel on the board's edge, then the rip that frees them, in block and set-up sheet alike."""
    job = job_from_values({"sides": 8, "width": 1_150.0, "king_post_stock": "6x6", "post_face": 58.5})
    sheets = [sheet for sheet in part_sheets(job) if sheet.part.board.width < NARROW and bevelled(sheet.part)
              and sheet.part.kind.id != "louver.bed"]
    last = [sheet for sheet in sheets if "free of the board" in [r for r in steps(sheet) if r.startswith("rip")][-1]]
    assert last
    rips = set_up(job, "Rips")
    for sheet in last:
        own = [row for row in rips if re.search(rf"\b{sheet.mark}\b", row)]
        assert "upright" not in own[0] and "after the bevel" in own[-1], sheet.mark


@pytest.mark.parametrize("name", EXAMPLES)
def test_no_two_rows_print_the_same_setting(name: str) -> None:
    """Two rips of 3" stood in two rows, since they differed by less than is printed."""
    for caption, columns in (("Rips", slice(1, 3)), ("Crosscuts", slice(1, 4)), ("Sheet goods", slice(1, 3)),
                             ("Thicknessing", slice(1, 3))):
        keys = [tuple(row.split(" | ")[columns]) for row in set_up(job_of(name), caption)]
        shown = [(key[0], key[1].split(":")[0]) if caption == "Rips" else key for key in keys]
        assert len(set(shown)) == len(shown), (caption, shown)


@pytest.mark.parametrize("name", EXAMPLES)
def test_no_crosscut_of_a_sheet_is_advised_on_that_is_not_listed(name: str) -> None:
    """The square ends of sheet goods are made when the blank is cut from the sheet."""
    for sheet in part_sheets(job_of(name)):
        told = [text for text in sheet.advice if "“square end”" in text]
        assert not told or any(row.name.startswith("square") for row in sheet.cuts), (sheet.mark, told)


@pytest.mark.parametrize("name", EXAMPLES[:2])
def test_nothing_is_planed_that_is_as_thick_as_its_stock(name: str) -> None:
    for part in job_of(name).assembly.parts:
        planed = any(step.how == THICKNESSED for step in blank_steps(part))
        assert planed == (part.stock.thickness - part.board.thickness > 0.01), part.mark
