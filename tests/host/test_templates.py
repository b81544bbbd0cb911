# SPDX-License-Identifier: LGPL-2.1-or-later
"""Templates as they come out of the printer: the PDF's lines read back by another program (pdftocairo, of poppler-utils) and
measured over the glued joints."""

from __future__ import annotations

import math
import re
import shutil
import subprocess
import sys
from pathlib import Path

import pytest

sys.path.append(str(Path(__file__).resolve().parent.parent / "core"))
from making import INCH, job_of

from louverwright.core.assembly import board_shell
from louverwright.core.solid import MARKED_FACE
from louverwright.exchange.templates import write_templates
from louverwright.report.template import templates
from louverwright.report.template_pages import template_sheets

pytestmark = pytest.mark.skipif(shutil.which("pdftocairo") is None, reason="pdftocairo is not there")

POINT = 25.4 / 72.0
#: A stroked path of pdftocairo's SVG: its pen in a style, in newer ones in an attribute of its own.
LINE = re.compile(r'<path [^>]*?stroke-width[:=]"?([0-9.]+)[;"][^>]*? d="([^"]+)" transform="matrix\(([^)]+)\)"')
#: Pens by their width on paper (mm): the outline's, and the dashed joint's.
OUTLINE, DASHED, THIN = 0.45, 0.25, 0.18
#: What a template may be out by over a metre (mm).
RIGHT = 0.1


def strokes(pdf: Path, page: int, folder: Path) -> list[tuple[float, str, list[tuple[float, float]]]]:
    """Every stroked path of a page: pen width, style, points; all in mm from the upper left corner of the paper."""
    svg = folder / f"{page}.svg"
    subprocess.run(["pdftocairo", "-svg", "-f", str(page), "-l", str(page), str(pdf), str(svg)], check=True)
    found = []
    for match in LINE.finditer(svg.read_text(encoding="utf-8")):
        a, b, c, d, e, f = (float(each) for each in re.split("[ ,]+", match[3]))
        numbers = re.findall(r"[ML] (-?[0-9.]+) (-?[0-9.]+)", match[2])
        points = [((a * float(x) + c * float(y) + e) * POINT, (b * float(x) + d * float(y) + f) * POINT) for x, y in numbers]
        found.append((float(match[1]) * a * POINT, match[0], points))
    return found


def has_width(stroke, width: float) -> bool:
    return abs(stroke[0] - width) < 0.02


def joint_and_edge(page) -> tuple[float, float]:
    """Where the dashed line of the joint to the next page stands, and the window's left edge (mm on this paper)."""
    frame = next(points for width, _, points in page if abs(width - THIN) < 0.02 and len(points) >= 5
                 and max(x for x, _ in points) - min(x for x, _ in points) > 150.0)
    left, (low, high) = min(x for x, _ in frame), (min(y for _, y in frame), max(y for _, y in frame))
    joints = [points[0][0] for width, style, points in page if "dasharray" in style and abs(width - DASHED) < 0.02
              and len(points) == 2 and abs(abs(points[0][1] - points[1][1]) - (high - low)) < 0.01]
    return (joints[0] if joints else math.nan), left


@pytest.mark.parametrize(("name", "mark"), [("three-vents-long-ridge", "R3"), ("stable-9400mm", "R3"),
                                            ("hay-barn-28ft", "L7L")])
def test_glued_pages_measure_right(tmp_path: Path, name: str, mark: str) -> None:
    job = job_of(name)
    pdf = write_templates(job, tmp_path)[0]
    names = [sheet.name for sheet in template_sheets(job).sheets]
    pages = [strokes(pdf, number, tmp_path) for number, each in enumerate(names, start=1)
             if each.startswith(f"{mark} A")]
    assert len(pages) >= 2
    shift, before, glued = 0.0, 0.0, []
    for number, page in enumerate(pages):
        joint, left = joint_and_edge(page)
        if number:
            shift += before - left
        glued += [(x + shift, y) for stroke in page if has_width(stroke, OUTLINE) for x, y in stroke[2]]
        before = joint
    part = next(each.part for each in templates(job) if each.part.mark == mark)
    shell = board_shell(part.board)
    corners = [shell.points[i][:2] for face in shell.faces if face.name == MARKED_FACE for i in face.loops[0]]
    long = max(math.dist(p, q) for p in corners for q in corners)
    origin = placed_on(corners, glued)
    worst = max(min(math.dist((x + origin[0], origin[1] - y), p) for p in glued) for x, y in corners)
    assert worst < RIGHT * max(1.0, long / 1000.0), f"{mark}: {worst:.4f} mm over {long:.0f} mm"


def placed_on(corners, glued) -> tuple[float, float]:
    """Where the board's origin lies on the glued paper: by the leftmost and the lowest points alone."""
    x = min(p[0] for p in glued) - min(p[0] for p in corners)
    return x, max(p[1] for p in glued) + min(p[1] for p in corners)


@pytest.mark.parametrize(("name", "side"), [("hay-barn-28ft", 4 * INCH), ("octagon-dairy", 100.0)])
def test_the_check_square_of_every_page_measures_right(tmp_path: Path, name: str, side: float) -> None:
    job = job_of(name)
    pdf = write_templates(job, tmp_path)[0]
    for number in range(2, len(template_sheets(job).sheets) + 1):
        corners = [points[1] for width, _, points in strokes(pdf, number, tmp_path)
                   if len(points) == 3 and abs(width - THIN) < 0.02 and abs(math.dist(*points[:2]) - 6.0) < 0.01]
        xs, ys = sorted(x for x, _ in corners), sorted(y for _, y in corners)
        assert len(corners) == 4
        assert (xs[3] - xs[0], ys[3] - ys[0]) == pytest.approx((side, side), abs=0.01)


def test_files_are_named_by_their_marks(tmp_path: Path) -> None:
    job = job_of("hay-barn-28ft")
    written = [path.relative_to(tmp_path).as_posix() for path in write_templates(job, tmp_path)]
    assert written == ["templates.pdf", *(f"templates/{each.part.mark}.dxf" for each in templates(job))]
