"""The PDF that FreeCAD's Qt makes: pages, paper, text that can be found again, failures told in sentences."""

from __future__ import annotations

import re
import shutil
import subprocess
import sys
from pathlib import Path

import pytest

sys.path.append(str(Path(__file__).resolve().parent.parent / "report"))
from sample_report import sample_report, strings_of

from louverwright.exchange import pdf
from louverwright.exchange.pdf import PdfError, write_pdf
from louverwright.exchange.pdf_pages import pages_of
from louverwright.exchange.pdf_text import TextMark
from louverwright.report.html import to_html
from louverwright.report.page import Para, Report
from louverwright.report.sheets import PAPERS

POINTS = {"A4": (595.0, 842.0), "Letter": (612.0, 792.0)}
needs_pdftotext = pytest.mark.skipif(shutil.which("pdftotext") is None, reason="pdftotext is not installed")
needs_pdfinfo = pytest.mark.skipif(shutil.which("pdfinfo") is None, reason="pdfinfo is not installed")


def letters(text: str) -> str:
    """Without what line breaks may change."""
    return "".join(text.split())


def text_of(path: Path) -> str:
    """The text in the order of drawing, so that what is set at a slant stays whole."""
    return subprocess.run(["pdftotext", "-raw", "-enc", "UTF-8", str(path), "-"], check=True,
                          capture_output=True, encoding="utf-8").stdout


def page_boxes(path: Path) -> list[tuple[float, float]]:
    """Width and height of each page in points, as the file has them."""
    boxes = re.findall(rb"/MediaBox\s*\[\s*0\s+0\s+([0-9.]+)\s+([0-9.]+)\s*\]", path.read_bytes())
    return [(float(width), float(height)) for width, height in boxes]


def measure():
    """The one that the writer uses."""
    core, gui = pdf.qt_modules()
    pdf.keep_application(gui)
    buffer = core.QBuffer()
    buffer.open(core.QIODevice.WriteOnly)
    writer = pdf._writer(buffer, "Measured", "A4", False, core, gui)
    brush = pdf.Brush(core, gui, writer)
    return brush.measure, (buffer, writer)


@pytest.mark.parametrize("paper", PAPERS)
def test_pages_are_counted_and_have_their_paper(tmp_path, paper):
    path = tmp_path / "report.pdf"
    count = write_pdf(sample_report(), path, paper)
    boxes = page_boxes(path)
    assert len(boxes) == count >= 4
    assert all(box == pytest.approx(POINTS[paper], abs=1.0) for box in boxes)


@needs_pdfinfo
@pytest.mark.parametrize("paper", PAPERS)
def test_a_reader_finds_the_same_pages(tmp_path, paper):
    path = tmp_path / "report.pdf"
    count = write_pdf(sample_report(), str(path), paper)
    told = subprocess.run(["pdfinfo", str(path)], check=True, capture_output=True, text=True).stdout
    assert re.search(rf"^Pages:\s+{count}$", told, re.MULTILINE)
    assert re.search(r"^Title:\s+Louvered ridge vent$", told, re.MULTILINE)
    size = re.search(r"^Page size:\s+([0-9.]+) x ([0-9.]+)", told, re.MULTILINE)
    assert [float(each) for each in size.groups()] == pytest.approx(POINTS[paper], abs=1.0)


@needs_pdftotext
def test_every_string_of_the_html_can_be_found(tmp_path):
    report = sample_report()
    path = tmp_path / "report.pdf"
    write_pdf(report, path)
    found = letters(text_of(path))
    html = letters(to_html(report).replace("&lt;", "<").replace("&gt;", ">").replace("&amp;", "&"))
    strings = [letters(text) for text in strings_of(report)]
    assert not [text for text in strings if text not in html]
    assert not [text for text in strings if text not in found]


@needs_pdftotext
@pytest.mark.parametrize("text", [
    "400 × 90 × 19 mm", "35.26°", "− 0.5", "12½\"", "¾ ⅜", "α β Ω µ", "äöüÄÖÜß éñç ŁœŞ", "“a” – b — c…",
    "≤ ≥ ≈ ±", "→ ← ↑ ↓", "office flat fit ffi fl", "☐ ☑", "Ржавый гвоздь", "<script> & \"x\""])
def test_letters_come_back_as_they_were(tmp_path, text):
    path = tmp_path / "letters.pdf"
    write_pdf(Report("Letters", "", (), (Para(text),), ""), path)
    assert letters(text) in letters(text_of(path))


@needs_pdftotext
def test_each_page_is_numbered(tmp_path):
    path = tmp_path / "report.pdf"
    count = write_pdf(sample_report(), path)
    pages = text_of(path).split("\f")[:count]
    assert all(f"Page {number} of {count}" in page for number, page in enumerate(pages, start=1))


def test_drawings_are_vectors_and_fonts_are_embedded(tmp_path):
    path = tmp_path / "report.pdf"
    write_pdf(sample_report(), path)
    content = path.read_bytes()
    assert b"/Subtype /Image" not in content
    assert b"/FontFile" in content
    assert len(content) < 400_000


def test_nothing_runs_past_the_frame_in_the_real_font():
    width_of, _kept = measure()
    for page in pages_of(sample_report(), "A4", width_of):
        for mark in page.marks:
            if isinstance(mark, TextMark):
                assert mark.x + width_of(mark.text, mark.style.size, mark.style.bold) <= page.width - 13.9


def test_bold_is_wider_and_size_counts():
    width_of, _kept = measure()
    assert width_of("Louver", 9.0, True) > width_of("Louver", 9.0, False) > 5.0
    assert width_of("Louver", 18.0, False) == pytest.approx(2 * width_of("Louver", 9.0, False), rel=0.02)


def test_one_after_another_in_one_process_is_the_same(tmp_path):
    counts = [write_pdf(sample_report(), tmp_path / f"{number}.pdf") for number in range(3)]
    assert len(set(counts)) == 1
    assert len({len(page_boxes(tmp_path / f"{number}.pdf")) for number in range(3)}) == 1


def test_an_old_file_is_written_over(tmp_path):
    path = tmp_path / "report.pdf"
    path.write_text("old")
    write_pdf(sample_report(), path)
    assert path.read_bytes().startswith(b"%PDF")


def test_a_place_that_cannot_be_written_to_is_told_in_a_sentence(tmp_path):
    with pytest.raises(PdfError, match=r"^The PDF could not be written to .*nowhere.*: .*\.$"):
        write_pdf(sample_report(), tmp_path / "nowhere" / "report.pdf")
    with pytest.raises(PdfError, match=r"could not be written to"):
        write_pdf(sample_report(), tmp_path)


def test_another_paper_is_refused_and_nothing_is_written(tmp_path):
    path = tmp_path / "report.pdf"
    with pytest.raises(ValueError, match=r"'A5' is not one of A4, Letter\."):
        write_pdf(sample_report(), path, "A5")
    assert not path.exists()


def test_without_pyside_a_sentence_says_so(tmp_path, monkeypatch):
    monkeypatch.setitem(sys.modules, "PySide", None)
    with pytest.raises(PdfError, match=r"FreeCAD's Qt .*HTML report instead\.$"):
        write_pdf(sample_report(), tmp_path / "report.pdf")
