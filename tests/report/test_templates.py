# SPDX-License-Identifier: LGPL-2.1-or-later
"""Full-size templates: which parts have one, what they show, and their DXF files read back by another program's reader."""

from __future__ import annotations

import io
import math
import sys
from itertools import combinations
from pathlib import Path

import ezdxf
import pytest

sys.path.append(str(Path(__file__).resolve().parent.parent / "core"))
from making import INCH, job_of

from louverwright.core.assembly import DADO, NOTCH, SHAPED_EDGE, board_shell
from louverwright.core.solid import MARKED_FACE
from louverwright.report.dxf import FAR_FACE, LAYERS, OUTLINE, WORDS, to_dxf
from louverwright.report.template import Template, templates, uncovered
from louverwright.report.template_pages import template_sheets
from louverwright.report.tiling import LAP, Tile, Tiling, clipped

NAMES = ("hay-barn-28ft", "octagon-dairy", "cart-shed-gable", "horse-barn-flared")


def read(text: str):
    document = ezdxf.read(io.StringIO(text))
    assert not document.audit().errors
    return document


def of_mark(name: str, mark: str) -> Template:
    return next(each for each in templates(job_of(name)) if each.part.mark == mark)


@pytest.mark.parametrize("name", NAMES)
def test_what_is_notched_shaped_or_dadoed_has_a_template_and_one_serves_both_hands(name: str) -> None:
    job = job_of(name)
    found = templates(job)
    covered = {mark for each in found for mark in (each.part.mark, each.turned_for) if mark}
    wanted = {part.mark for part in job.assembly.parts
              if any(cut.kind in (NOTCH, SHAPED_EDGE, DADO) for cut in part.board.cuts)}
    assert wanted <= covered
    assert any(each.turned_for == each.part.mark[:-1] + "R" for each in found)
    assert template_sheets(job).sheets[0].name == "how to use"


@pytest.mark.parametrize("name", NAMES)
def test_a_template_turned_over_is_the_other_hand_s_marked_face(name: str) -> None:
    job = job_of(name)
    parts = {part.mark: part for part in job.assembly.parts}
    for each in templates(job):
        if each.turned_for:
            turned = marked_corners(parts[each.turned_for])
            mine = marked_corners(each.part)
            long, wide = each.part.board.length, each.part.board.width
            ways = ([(long - x, y) for x, y in mine], [(x, wide - y) for x, y in mine])
            assert any(alike(way, turned) for way in ways), each.part.mark


def marked_corners(part) -> list[tuple[float, float]]:
    shell = board_shell(part.board)
    return [shell.points[i][:2] for face in shell.faces if face.name == MARKED_FACE for loop in face.loops for i in loop]


def alike(some, others) -> bool:
    return len(some) == len(others) and all(min(math.dist(p, q) for q in others) < 1e-3 for p in some)


@pytest.mark.parametrize("name", NAMES)
@pytest.mark.parametrize("inches", [False, True])
def test_another_reader_finds_the_board_in_the_dxf(name: str, inches: bool) -> None:
    unit = INCH if inches else 1.0
    for each in templates(job_of(name)):
        document = read(to_dxf(each, inches))
        assert document.dxfversion == "AC1009"
        assert document.header["$INSUNITS"] == (1 if inches else 4)
        assert {layer.dxf.name for layer in document.layers} >= set(LAYERS)
        loops = [[(p.x * unit, p.y * unit) for p in line.points()] for line in document.modelspace().query("POLYLINE")]
        assert alike([p for loop in loops for p in loop], marked_corners(each.part)), each.part.mark
        assert len(document.modelspace().query(f'LINE[layer=="{FAR_FACE}"]')) == len(each.far)
        assert all(entity.dxf.layer == OUTLINE and entity.is_closed for entity in document.modelspace().query("POLYLINE"))
        words = {entity.dxf.text for entity in document.modelspace().query(f'TEXT[layer=="{WORDS}"]')}
        assert {letter for letter, _ in each.letters} <= words
        assert any(text.startswith(each.part.mark + "  ") for text in words)


def test_dados_of_a_stile_lie_where_its_slats_are() -> None:
    stile = of_mark("hay-barn-28ft", "L7L")
    dados = [cut for cut in stile.part.board.cuts if cut.kind == DADO]
    assert len(stile.outline) == len(dados) + 1      # a through dado parts the marked face in two
    assert stile.far                                 # and its floor's ends show as dashes


def test_the_slats_on_a_gable_s_stile_are_marks() -> None:
    assert of_mark("cart-shed-gable", "R18L").marks


def test_letters_are_those_that_lie_on_the_wood() -> None:
    for each in templates(job_of("horse-barn-flared")):
        for _, p in each.letters:
            gaps = [abs(math.dist(p, a) + math.dist(p, b) - math.dist(a, b)) for a, b in each.segments]
            assert min(gaps) < 0.1


def test_what_is_drawn_already_is_not_dashed_over() -> None:
    assert uncovered(((0.0, 0.0), (10.0, 0.0)), [((2.0, 0.0), (5.0, 0.0)), ((9.0, 0.0), (20.0, 0.0))]) == [
        ((0.0, 0.0), (2.0, 0.0)), ((5.0, 0.0), (9.0, 0.0))]
    assert uncovered(((0.0, 0.0), (10.0, 0.0)), [((0.0, 1.0), (10.0, 1.0))]) == [((0.0, 0.0), (10.0, 0.0))]


@pytest.mark.parametrize(("paper", "inches", "step"), [
    ("A4", False, (250.0, 150.0)), ("Letter", True, (9 * INCH, 6 * INCH)), ("A4", True, (9 * INCH, 5 * INCH)),
    ("Letter", False, (230.0, 150.0))])
def test_sheets_step_by_whole_units_and_lap(paper: str, inches: bool, step: tuple[float, float]) -> None:
    tiling = Tiling(paper, inches, (0.0, 0.0), (1200.0, 400.0))
    assert tiling.step == pytest.approx(step)
    tiles = list(tiling.tiles())
    assert tiles[1].left - tiles[0].left == pytest.approx(step[0])
    assert tiles[0].right - tiles[1].left == pytest.approx(LAP)
    assert all(any(tile.holds(p) for tile in tiles) for p in ((0.0, 0.0), (1200.0, 400.0), (613.0, 200.0)))
    assert len({tile.name for tile in tiles}) == len(tiles)


def test_a_line_is_clipped_to_its_sheet() -> None:
    tile = Tile(0, 0, 0.0, 0.0, 100.0, 50.0)
    assert clipped(((-50.0, 25.0), (150.0, 25.0)), tile) == ((0.0, 25.0), (100.0, 25.0))
    assert clipped(((-50.0, 60.0), (150.0, 60.0)), tile) is None
    assert clipped(((-10.0, -10.0), (-1.0, 80.0)), tile) is None


def test_every_check_square_has_its_side() -> None:
    """The four corners of the brackets, read from the drawing: 4 in on Letter's inches, 100 mm on A4's millimetres."""
    for name, side in (("hay-barn-28ft", 4 * INCH), ("octagon-dairy", 100.0)):
        for sheet in template_sheets(job_of(name)).sheets[1:]:
            corners = [item.points[1] for item in sheet.drawing.items
                       if hasattr(item, "points") and len(item.points) == 3]
            assert len(corners) == 4
            assert sorted(math.dist(a, b) for a, b in combinations(corners, 2))[:4] == pytest.approx([side] * 4)
