# SPDX-License-Identifier: LGPL-2.1-or-later
"""Shop drawings against FreeCAD: hidden lines by its kernel, lines on the paper, TechDraw's pages made and refreshed."""

from __future__ import annotations

import math
import re
import shutil
import subprocess
import sys
from pathlib import Path
from types import SimpleNamespace

import FreeCAD
import pytest

sys.path.append(str(Path(__file__).resolve().parent.parent / "core"))
from making import EXAMPLES, job_of

from louverwright.core.apart import shifts
from louverwright.core.assembly import board_solid
from louverwright.core.geometry import cross, unit
from louverwright.exchange.drawings import write_drawings
from louverwright.exchange.shop_pages import PICTURE, PIXELS, SHEET, symbol_of
from louverwright.features.model import owned_by
from louverwright.features.vent import make_vent
from louverwright.report.bodies import bodies, outline
from louverwright.report.hidden_lines import visible_edges
from louverwright.report.shop_drawings import shop_drawings, shop_sheets
from louverwright.report.strokes import Stroke, primitives
from louverwright.report.vent_views import pieces_of
from louverwright.report.views import View, edges_seen

#: Points are asked for at so much along the lines (mm), and further from lines' ends than NEAR.
STEP, NEAR = 25.0, 0.5
RIGHT = 0.1


# ---- hidden lines


def kernel_view(eye) -> View:
    """The axes that the kernel takes for paper when it looks along a direction (Open CASCADE, gp_Ax2 of a point and a
    direction)."""
    a, b, c = eye
    if abs(b) <= abs(a) and abs(b) <= abs(c):
        right = (-c, 0.0, a) if abs(a) > abs(c) else (c, 0.0, -a)
    elif abs(a) <= abs(b) and abs(a) <= abs(c):
        right = (0.0, -c, b) if abs(b) > abs(c) else (0.0, c, -b)
    else:
        right = (-b, a, 0.0) if abs(a) > abs(b) else (b, -a, 0.0)
    right = unit(right)
    return View(right, cross(eye, right), eye)


def solid(body):
    """A body's cells as one solid of the kernel's."""
    import Part

    cells = []
    for cell in body.cells:
        faces = [Part.Face(Part.makePolygon([FreeCAD.Vector(*p) for p in (*f.points, f.points[0])])) for f in cell]
        cells.append(Part.Solid(Part.Shell(faces)))
    whole = cells[0] if len(cells) == 1 else cells[0].multiFuse(cells[1:])
    return whole.removeSplitter()


def stretches(edges):
    return [((a.x, a.y), (b.x, b.y)) for edge in edges for a, b in [(edge.Vertexes[0].Point, edge.Vertexes[-1].Point)]]


def away(p, lines) -> float:
    best = math.inf
    for a, b in lines:
        long = (b[0] - a[0]) ** 2 + (b[1] - a[1]) ** 2
        share = 0.0 if long < 1e-12 else ((p[0] - a[0]) * (b[0] - a[0]) + (p[1] - a[1]) * (b[1] - a[1])) / long
        share = min(1.0, max(0.0, share))
        best = min(best, math.hypot(p[0] - a[0] - share * (b[0] - a[0]), p[1] - a[1] - share * (b[1] - a[1])))
    return best


def along(lines):
    """Points on lines, clear of their ends."""
    for a, b in lines:
        long = math.dist(a, b)
        if long > 3.0 * NEAR:
            count = max(1, int(long / STEP))
            for i in range(count):
                share = (NEAR + (long - 2.0 * NEAR) * (i + 0.5) / count) / long
                yield (a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1]))


def deviations(name, stage, eye):
    """How far our lines are from the kernel's, and the kernel's from ours, of a stage pulled apart (mm)."""
    import Part
    import TechDraw

    own = pieces_of(job_of(name), stage)
    whole = bodies(own, shifts([outline(part, piece) for part, piece in own], 0.0, 1.0))
    view = kernel_view(unit(eye))
    ours = [segment for _, segment in visible_edges(whole, view)]
    kinds = TechDraw.projectEx(Part.makeCompound([solid(body) for body in whole]), FreeCAD.Vector(*view.eye))
    # Of its ten kinds the first five are seen: sharp, smooth, sewn, outline, isoparametric.
    theirs = stretches([edge for kind in kinds[:5] for edge in kind.Edges])
    return [away(p, theirs) for p in along(ours)], [away(p, ours) for p in along(theirs)]


@pytest.mark.parametrize("eye", [(0.0, -1.0, 0.0), (0.0, 0.0, 1.0), (1.0, -0.8, 0.7)], ids=str)
@pytest.mark.parametrize("stage", ["base", "louver", "roof"])
def test_the_kernel_sees_the_same_lines(stage: str, eye: tuple[float, float, float]) -> None:
    ours, theirs = deviations("hay-barn-28ft", stage, eye)
    assert len(ours) > 200 < len(theirs)
    assert max(ours) < 0.02, max(ours)
    assert max(theirs) < 0.02, max(theirs)


@pytest.mark.parametrize("name", EXAMPLES)
def test_the_kernel_sees_the_same_edges_of_every_board(name: str) -> None:
    """A part's drawing, from three sides and askew: what is seen and what is dashed, each way round; the kernel's hidden lines
    are all, ours those that lie behind no visible one."""
    import TechDraw

    dashed = 0
    for part in job_of(name).assembly.parts:
        whole = solid(SimpleNamespace(cells=board_solid(part.board)))
        for eye in ((0.0, 0.0, 1.0), (0.0, -1.0, 0.0), (1.0, 0.0, 0.0), (0.6, -0.5, 0.62)):
            view = kernel_view(unit(eye))
            kinds = TechDraw.projectEx(whole, FreeCAD.Vector(*view.eye))
            seen, behind = (stretches([edge for kind in chosen for edge in kind.Edges]) for chosen in (kinds[:5], kinds[5:]))
            visible, hidden = edges_seen(part.board, view)
            dashed += len(hidden)
            for mine, theirs in ((visible, seen), (seen, visible), (hidden, behind), (behind, hidden + visible)):
                assert max((away(p, theirs) for p in along(mine)), default=0.0) < 0.02, (part.mark, eye)
    assert dashed > 20


# ---- on paper

POINT = 25.4 / 72.0
PATH = re.compile(r"<path [^>]*stroke-width[^>]*>")
DATA, MATRIX = re.compile(r' d="([^"]+)"'), re.compile(r"matrix\(([^)]+)\)")


@pytest.mark.skipif(shutil.which("pdftocairo") is None, reason="pdftocairo is not there")
def test_lines_are_where_the_scale_has_them(tmp_path) -> None:
    job = job_of("hay-barn-28ft")
    pdf, = write_drawings(job, tmp_path)
    subprocess.run(["pdftocairo", "-svg", "-f", "1", "-l", "1", str(pdf), str(tmp_path / "1.svg")], check=True)
    found = []
    for path in PATH.findall((tmp_path / "1.svg").read_text(encoding="utf-8")):
        a, b, c, d, e, f = map(float, re.split("[ ,]+", MATRIX.search(path)[1]))
        numbers = [float(each) for each in re.findall(r"-?[0-9.]+", DATA.search(path)[1])]
        found += [((a * x + c * y + e) * POINT, (b * x + d * y + f) * POINT)
                  for x, y in zip(numbers[::2], numbers[1::2], strict=True)]
    page = shop_drawings(job).sheets[0].drawing
    wanted = [(x, page.height - y) for part in primitives(page) if isinstance(part, Stroke) for x, y in part.points]
    assert len(wanted) > 200
    assert max(min(math.dist(p, q) for q in found) for p in wanted) < RIGHT


# ---- pages


@pytest.fixture
def vent(document):
    made = make_vent(document, width=900.0)
    document.recompute()
    return made


def refresh(vent, **values):
    from louverwright.commands.shop_drawings import draw_pages
    from louverwright.commands.shop_drawings import job_of as job_of_vent

    for name, value in values.items():
        setattr(vent, name, value)
    vent.Document.recompute()
    return draw_pages(vent), job_of_vent(vent)


def pages_of(vent):
    return {getattr(page, SHEET): page for page in owned_by(vent, SHEET)}


def test_pages_are_made_with_the_sheets_pictures_and_titles(vent) -> None:
    done, job = refresh(vent)
    pages, sheets = pages_of(vent), shop_sheets(job)
    assert done.made == len(sheets) == len(pages) and done.renewed == done.removed == 0
    for number, sheet in enumerate(sheets, 1):
        page = pages[sheet.name]
        assert {getattr(view, PICTURE) for view in page.Views} == {each.name for each in sheet.pictures}
        texts = dict(page.Template.EditableTexts)
        assert texts["Number"] == f"{number} of {len(sheets)}" and texts["Sheet"] == sheet.title
        assert (float(page.Template.Width), float(page.Template.Height)) == pytest.approx((297.0, 210.0))
        for view, each in ((v, p) for v in page.Views for p in sheet.pictures if getattr(v, PICTURE) == p.name):
            padded, symbol = symbol_of(each.drawing)
            assert view.Symbol == symbol and view.Scale == 1.0
            assert (float(view.X), float(view.Y)) == pytest.approx(
                (each.x + padded.width / 2.0, each.y + padded.height / 2.0), abs=0.001)


def test_running_again_follows_the_model_and_keeps_what_the_user_did(vent) -> None:
    _, before = refresh(vent)
    document, page = vent.Document, pages_of(vent)["arrangement"]
    note = document.addObject("TechDraw::DrawViewAnnotation", "Note")
    page.addView(note)
    moved, still = page.Views[:2]
    old = moved.Symbol
    moved.X = float(moved.X) + 7.0
    place, count = float(moved.X), len(document.Objects)
    done, after = refresh(vent, Width=1000.0, Slats=0)
    assert done.renewed == len(shop_sheets(before)) and note in page.Views
    assert moved.Symbol != old and float(moved.X) == place
    wanted = next(each for each in shop_sheets(after)[0].pictures if each.name == getattr(still, PICTURE))
    assert float(still.X) == pytest.approx(wanted.x + symbol_of(wanted.drawing)[0].width / 2.0, abs=0.001)
    again, _ = refresh(vent)
    assert again.made == again.removed == 0 and abs(len(document.Objects) - count) < 8


def test_larger_paper_takes_the_pages_along_and_what_the_user_added_stays(vent) -> None:
    refresh(vent)
    pages = pages_of(vent)
    own = pages["louver"].Template.Template.replace("A4", "Letter")
    copy = Path(FreeCAD.ActiveDocument.TransientDir) / "own.svg"
    shutil.copy(own, copy)
    pages["louver"].Template.Template = str(copy)
    last = pages[max((name for name in pages if name.startswith("parts")), key=lambda name: int(name.split("-")[1]))]
    note = vent.Document.addObject("TechDraw::DrawViewAnnotation", "Note")
    last.addView(note)
    done, _ = refresh(vent, LargeDrawings=True)
    assert done.removed > 0
    assert float(pages["base"].Template.Width) == pytest.approx(420.0)
    assert pages["louver"].Template.Template == str(copy)
    assert dict(pages["louver"].Template.EditableTexts)["Paper"] == "A3"
    assert last.Views == [note] and dict(last.Template.EditableTexts)["Number"] == "–"
    assert len(pages_of(vent)) == len(pages) - done.removed


def test_one_undo_takes_all_pages_away(vent) -> None:
    document = vent.Document
    before = {obj.Name for obj in document.Objects}
    refresh(vent)
    assert len(document.Objects) > len(before) + 20
    document.undo()
    assert {obj.Name for obj in document.Objects} == before
    document.redo()
    assert len(pages_of(vent)) > 5


def test_a_symbol_is_whole_pixels_and_no_smaller() -> None:
    drawing = shop_sheets(job_of("hay-barn-28ft"))[0].pictures[0].drawing
    padded, svg = symbol_of(drawing)
    width, height = (int(each) for each in re.search(r'width="(\d+)" height="(\d+)"', svg).groups())
    assert (width / PIXELS, height / PIXELS) == pytest.approx((padded.width, padded.height))
    assert 0.0 <= padded.width - drawing.width < 0.27 and 0.0 <= padded.height - drawing.height < 0.27
