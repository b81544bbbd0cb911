# SPDX-License-Identifier: LGPL-2.1-or-later
"""The list of marks says what the report's parts list says, and a mark or any words of a row find it."""

from __future__ import annotations

import sys
from pathlib import Path

import pytest

sys.path.append(str(Path(__file__).resolve().parents[1] / "core"))
from making import EXAMPLES, job_of

from louverwright.report.mark_list import HEADS, mark_rows, matching
from louverwright.report.part_sheet import part_sheets


@pytest.mark.parametrize("name", EXAMPLES)
def test_rows_are_those_of_the_report(name: str) -> None:
    job = job_of(name)
    sheets = [(s.mark, s.name, s.count, s.stock, s.blank) for s in part_sheets(job)]
    assert [row.cells for row in mark_rows(job)] == sheets
    assert len(sheets[0]) == len(HEADS)


@pytest.mark.parametrize("name", EXAMPLES)
def test_every_mark_finds_its_row_alone(name: str) -> None:
    rows = mark_rows(job_of(name))
    for row in rows:
        assert matching(rows, f" {row.mark.lower()} ") == (row,)


def test_words_find_rows_that_have_them_all() -> None:
    rows = mark_rows(job_of("hay-barn-28ft"))
    assert matching(rows, "") == rows
    found = matching(rows, "RAIL top")
    assert found and all("rail" in row.name.lower() and "top" in row.name.lower() for row in found)
    assert set(found) == {row for row in rows if "top rail" in row.name.lower()}
    assert matching(rows, "no such wood") == ()
