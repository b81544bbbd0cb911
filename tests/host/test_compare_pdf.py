# SPDX-License-Identifier: LGPL-2.1-or-later
"""The comparison goes through the PDF writer as well: every string of it is on the paper."""

from __future__ import annotations

import shutil
import subprocess

import pytest

from louverwright.exchange.papers import job_from_values
from louverwright.exchange.pdf import write_pdf
from louverwright.report.compare import comparison_report
from louverwright.report.compare_words import Pair, summary_lines


@pytest.mark.skipif(shutil.which("pdftotext") is None, reason="pdftotext is not there")
def test_the_comparison_can_be_printed(tmp_path) -> None:
    pair = Pair(job_from_values({"slat_count": 5}), job_from_values({"slat_count": 6, "pitch_left": 30.0}))
    path = tmp_path / "compare.pdf"
    write_pdf(comparison_report(pair), path, "A4")
    text = subprocess.run(["pdftotext", "-layout", str(path), "-"], capture_output=True, encoding="utf-8",
                          check=True).stdout
    assert all(line in text for line in summary_lines(pair))
    assert "Pieces to keep" in text and "What changed in each part" in text
