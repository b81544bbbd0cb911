# SPDX-License-Identifier: LGPL-2.1-or-later
"""Labels and the assembly book as they come out of the printer, read back by another program (pdftotext, of poppler-utils)."""

from __future__ import annotations

import shutil
import subprocess
import sys
from collections import Counter
from pathlib import Path

import pytest

sys.path.append(str(Path(__file__).resolve().parent.parent / "core"))
from making import job_of

from louverwright.exchange.paper_sets import write_sets

pytestmark = pytest.mark.skipif(shutil.which("pdftotext") is None, reason="pdftotext is not there")


def words_of(pdf: Path) -> list[str]:
    told = subprocess.run(["pdftotext", "-layout", str(pdf), "-"], check=True, capture_output=True, encoding="utf-8")
    return told.stdout.split()


def test_each_piece_has_its_label_on_paper_and_each_step_its_place_in_the_book(tmp_path: Path) -> None:
    job = job_of("hay-barn-28ft")
    papers = write_sets(job, tmp_path, ("labels", "assembly", "take-offs"))
    assert [path.name for path in papers] == ["labels.pdf", "assembly-book.html", "assembly-book.pdf", "take-offs.html",
                                              "take-offs.pdf"]
    found = Counter(words_of(papers[0]))
    assert {part.mark: found[part.mark] for part in job.assembly.parts} == {
        part.mark: part.count for part in job.assembly.parts}
    book = " ".join(words_of(papers[2]))
    assert "Frame of the base" in book and "Soffit, at the roof" in book and "Fastening plan" in book
