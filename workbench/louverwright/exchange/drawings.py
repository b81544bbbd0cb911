# SPDX-License-Identifier: LGPL-2.1-or-later
"""Shop drawings written to a folder: one PDF of lying pages."""

from __future__ import annotations

from pathlib import Path

from ..report.job import Job
from ..report.shop_drawings import shop_drawings
from .papers import write_whole
from .pdf import write_sheets

PDF = "shop-drawings.pdf"


def write_drawings(job: Job, folder: Path) -> list[Path]:
    """Writes ``shop-drawings.pdf`` into ``folder`` (made if need be).

    Raises OSError where the folder cannot be written, PdfError where Qt is missing.
    """
    folder.mkdir(parents=True, exist_ok=True)
    return [write_whole(folder / PDF, lambda path: write_sheets(shop_drawings(job), path))]
