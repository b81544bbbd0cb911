# SPDX-License-Identifier: LGPL-2.1-or-later
"""What can be done about a part that came out wrong goes through the PDF writer as well."""

from __future__ import annotations

import re
import shutil
import subprocess

import pytest

from louverwright.exchange.mend import repair_of
from louverwright.exchange.papers import job_from_values
from louverwright.exchange.pdf import write_pdf
from louverwright.report.mend import mending_report
from louverwright.report.mend_words import summary_lines


@pytest.mark.skipif(shutil.which("pdftotext") is None, reason="pdftotext is not there")
def test_the_answer_can_be_printed(tmp_path) -> None:
    repair = repair_of(job_from_values({}), "L9", {"length": "652"}, 2)
    path = tmp_path / "mend.pdf"
    write_pdf(mending_report(repair), path, "A4")
    text = subprocess.run(["pdftotext", "-layout", str(path), "-"], capture_output=True, encoding="utf-8",
                          check=True).stdout
    words = re.sub(r"\s+", " ", text)
    assert all(re.sub(r"\s+", " ", line) in words for line in summary_lines(repair))
    assert "At the bench" in text and "Let the vent follow" in text
