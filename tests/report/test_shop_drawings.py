# SPDX-License-Identifier: LGPL-2.1-or-later
"""Shop drawings: hidden lines against rays through the solids, figures against sizes and solids, words that stay clear."""

from __future__ import annotations

import math
import random
import sys
from dataclasses import replace
from itertools import combinations
from pathlib import Path

import pytest

sys.path.append(str(Path(__file__).resolve().parent.parent / "core"))
from making import ROOT, job_of

from louverwright.core.geometry import add, dot, scale, sub
from louverwright.core.kinds import BASE, LOUVER, ROOF, STAGES
from louverwright.report.bodies import bodies
from louverwright.report.drawing import Circle, Dim, Label, Line
from louverwright.report.hidden_lines import visible_edges
from louverwright.report.lettering import crosses, overlap, text_box
from louverwright.report.picture import DOT, balloons, drawn
from louverwright.report.sheet_frame import room, template_svg
from louverwright.report.sheets import SHEETS, lying
from louverwright.report.shop_drawings import shop_drawings, shop_sheets
from louverwright.report.strokes import Letters, Stroke, extent, primitives
from louverwright.report.vent_views import (
    ACROSS,
    ALONG,
    CORNER,
    elevations,
    exploded,
    pieces_of,
    roof_plan,
    stage_views,
    vertical_section,
)

NAMES = ("hay-barn-28ft", "octagon-dairy", "cart-shed-gable")
#: How deep wood must be to cover what lies behind it (mm); pieces that touch do not.
NEAR = 0.05


def blocked(p, eye, whole) -> bool:
    """Whether a ray from a point to the eye goes through wood, by its way in and out of every cell."""
    for body in whole:
        for cell in body.cells:
            enter, leave = 0.0, math.inf
            for facet in cell:
                slope, height = dot(facet.plane.normal, eye), facet.plane.height(p)
                if abs(slope) < 1e-9:
                    leave = leave if height < -NEAR else -1.0
                elif slope > 0.0:
                    leave = min(leave, -height / slope)
                else:
                    enter = max(enter, -height / slope)
            if leave - enter > NEAR:
                return True
    return False


@pytest.mark.parametrize(("name", "view"), tuple(zip(NAMES, (ALONG, CORNER, ACROSS), strict=True)), ids=NAMES)
def test_what_is_drawn_is_what_rays_see(name: str, view) -> None:
    """Points on edges anywhere: one that rays reach lies on a line, one that wood covers for a good way round does not."""
    whole = bodies(pieces_of(job_of(name)))
    lines = [segment for _, segment in visible_edges(whole, view)]
    edges = [(body, edge) for body in whole for edge in body.edges
             if any(dot(normal, view.eye) > 1e-6 for normal, _ in edge.sides)]
    chance, asked, seen = random.Random(7), 0, 0
    while asked < 150:
        _, edge = chance.choice(edges)
        way = sub(edge.stop, edge.start)
        share = chance.uniform(0.02, 0.98)
        p = add(edge.start, scale(way, share))
        around = [add(p, add(scale(view.right, u), scale(view.up, v))) for u in (-0.2, 0.0, 0.2) for v in (-0.2, 0.0, 0.2)]
        covered = [blocked(q, view.eye, whole) for q in around]
        if math.dist(view.flat(edge.start), view.flat(edge.stop)) < 1.0 or (covered[4] and not all(covered)):
            continue
        asked, seen = asked + 1, seen + (not covered[4])
        assert on_any(view.flat(p), lines) or covered[4], (name, p)
        if covered[4]:
            own = [line for line in lines if parallel(line, (view.flat(edge.start), view.flat(edge.stop)))]
            for line in own:
                if on_any(view.flat(p), [line]):
                    assert any(not blocked(q, view.eye, whole) for q in along_sight(view.flat(p), edges, view)), (name, p)
    assert 4 < seen < 110


def along_sight(flat, edges, view):
    """The points of edges that lie under one point of the paper."""
    for _, edge in edges:
        a, b = view.flat(edge.start), view.flat(edge.stop)
        long = math.dist(a, b)
        if long > 1e-6 and away(flat, a, b) < 0.02:
            yield add(edge.start, scale(sub(edge.stop, edge.start), math.dist(a, flat) / long))


def parallel(a, b) -> bool:
    (u, v), (x, y) = ((each[1][0] - each[0][0], each[1][1] - each[0][1]) for each in (a, b))
    return abs(u * y - v * x) < 1e-3 * math.hypot(u, v) * math.hypot(x, y)


def on_any(p, lines) -> bool:
    return any(away(p, a, b) < 0.02 for a, b in lines)


def away(p, a, b) -> float:
    """How far a point is from a stretch."""
    long = math.dist(a, b)
    share = ((p[0] - a[0]) * (b[0] - a[0]) + (p[1] - a[1]) * (b[1] - a[1])) / long ** 2
    share = min(1.0, max(0.0, share))
    return math.dist(p, (a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1])))


def pictures(job):
    yield from elevations(job)
    yield from (vertical_section(job), roof_plan(job))
    for stage in STAGES:
        yield from stage_views(job, stage)


@pytest.mark.parametrize("name", NAMES)
def test_every_figure_is_the_length_of_its_line(name: str) -> None:
    job = job_of(name)
    for picture in pictures(job):
        dims = [item for item in drawn(picture, 0.05, job.writer.bare).items if isinstance(item, Dim)]
        assert len(dims) == len(picture.spans) > 0
        for dim in dims:
            assert dim.text == job.writer.bare(math.dist(dim.p1, dim.p2) / 0.05)


@pytest.mark.parametrize("name", NAMES)
def test_the_elevations_say_what_the_report_says(name: str) -> None:
    job = job_of(name)
    told = [job.figures[each] for each in ("base_top", "stage_height", "overall_height", "overall_width")]
    for picture in elevations(job):
        lengths = [span.stop - span.start for span in picture.spans]
        assert all(any(abs(length - each) < 1e-6 for length in lengths) for each in told)


def reach(lines, axis):
    values = [p[axis] for line in lines for p in line]
    return min(values), max(values)


@pytest.mark.parametrize("name", NAMES)
def test_dimensions_end_where_the_solids_do(name: str) -> None:
    """Over the eaves and over the frames: the ends of the dimension lines against the lines that come from the solids."""
    job = job_of(name)
    spans = {(span.where, span.start, span.stop) for span in roof_plan(job).spans}
    solid = [segment for style, segment in roof_plan(job).lines if style == "edge"]
    for where, axis in (("below", 0), ("right", 1)):
        low, high = reach(solid, axis)
        assert any(side == where and abs(a - low) < 0.01 and abs(b - high) < 0.01 for side, a, b in spans)
    base = [(s.start, s.stop) for s in stage_views(job, BASE)[0].spans if s.where == "right"]
    low, high = reach([line for _, line in visible_edges(bodies(pieces_of(job, BASE)), ALONG)], 1)
    assert base[-1] == pytest.approx((low, high), abs=0.01)
    frame = bodies((part, piece) for part, piece in pieces_of(job, LOUVER) if part.kind.id.startswith("louver.rail"))
    low, high = reach([line for _, line in visible_edges(frame, ALONG)], 1)
    levels = [each for s in stage_views(job, LOUVER)[0].spans if s.where == "right" for each in (s.start, s.stop)]
    assert min(abs(each - high) for each in levels) < 0.01


@pytest.mark.parametrize("name", NAMES)
def test_marks_point_at_their_parts_and_leaders_keep_clear(name: str) -> None:
    job = job_of(name)
    for stage in STAGES:
        picture = exploded(job, stage)
        marks = {part.mark for part, _ in pieces_of(job, stage)}
        unseen = picture.caption.partition("not seen: ")[2].split(", ") if "not seen" in picture.caption else []
        assert {mark for mark, _ in picture.marks} | set(unseen) == marks and len(unseen) <= 2
        items = drawn(picture, 0.06, job.writer.bare).items
        leaders = [item for item in items if isinstance(item, Line) and item.style == "thin"]
        words = [text_box(item) for item in items if isinstance(item, Label)]
        rings = [item for item in items if isinstance(item, Circle) and item.radius > DOT]
        assert len(leaders) == len(picture.marks) == len(rings)
        assert not any(crosses(line.points, box) for line in leaders for box in words)
        assert all(math.dist((a.x, a.y), (b.x, b.y)) > a.radius + b.radius for a, b in combinations(rings, 2))


def test_leaders_of_a_column_do_not_cross() -> None:
    points = [(str(i), (x, y)) for i, (x, y) in enumerate([(60, 5), (55, 90), (90, 40), (70, 41), (99, 95), (52, 8), (80, 0)])]
    lines = [item.points for item in balloons(points, (0.0, 0.0, 100.0, 100.0)) if isinstance(item, Line)]
    right = [line for line in lines if line[0][0] > 100.0]

    def turn(p, q, r):
        return (q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0])

    assert len(right) > 3
    for (a, b), (c, d) in combinations(right, 2):
        assert not (turn(a, b, c) * turn(a, b, d) < 0 and turn(c, d, a) * turn(c, d, b) < 0)


@pytest.mark.parametrize("name", NAMES[:2])
def test_words_do_not_overlap_and_nothing_leaves_the_frame(name: str) -> None:
    job = job_of(name)
    left, low, right, high = room(job.spec.paper_size)
    for sheet in shop_sheets(job):
        boxes = []
        for each in sheet.pictures:
            items = each.drawing.placed(each.x, each.y)
            box = extent(items)
            assert left - 0.6 <= box[0] and low - 0.6 <= box[1] and box[2] <= right + 0.6 and box[3] <= high + 0.6, sheet.name
            if not sheet.name.startswith("parts"):
                words = [p for p in primitives(replace(each.drawing, items=items)) if isinstance(p, Letters)]
                boxes += [extent((Label(*p.at, p.text, p.size / (25.4 / 72.0), p.anchor, p.rotation),)) for p in words]
        clashes = [(a, b) for a, b in combinations(boxes, 2) if overlap(a, b)]
        assert not clashes, (sheet.name, clashes)


@pytest.mark.parametrize("name", NAMES)
def test_every_mark_has_its_drawing_once(name: str) -> None:
    job = job_of(name)
    names = [each.name for sheet in shop_sheets(job) if sheet.name.startswith("parts") for each in sheet.pictures]
    assert names == [part.mark for part in job.assembly.parts]


def test_a_section_hatches_wood_alone() -> None:
    """The cut wood of the hay barn's section: its area is that of the pieces' own sections, by their thickness there."""
    job = job_of("hay-barn-28ft")
    wood = vertical_section(job).wood
    assert len(wood) > 20
    for loops in wood:
        assert abs(sum(area(loop) for loop in loops)) > 1.0
    top = max(p[1] for loops in wood for loop in loops for p in loop)
    assert top <= job.figures["overall_height"] + 0.01


def area(loop) -> float:
    return sum(a[0] * b[1] - b[0] * a[1] for a, b in zip(loop, (*loop[1:], loop[0]), strict=True)) / 2.0


def test_larger_paper_is_of_the_same_standard() -> None:
    job = job_of("flat-roof-curb")
    spec = job.spec
    large = replace(job, spec=replace(spec, values={**spec.values, "large_drawings": True}))
    printed = shop_drawings(large)
    assert printed.paper == "A3"
    assert {(sheet.drawing.width, sheet.drawing.height) for sheet in printed.sheets} == {lying("A3")} == {(420.0, 297.0)}
    assert len(printed.sheets) < len(shop_drawings(job).sheets)


@pytest.mark.parametrize("paper", SHEETS)
def test_the_templates_that_are_shipped_are_those_that_are_drawn(paper: str) -> None:
    assert (ROOT / "resources" / "templates" / f"{paper}.svg").read_text(encoding="utf-8") == template_svg(paper)


def test_the_roof_s_sheathing_is_left_off_its_framing_plan() -> None:
    job = job_of("hay-barn-28ft")
    _, plan = stage_views(job, ROOF)
    assert len(plan.lines) > 2 * len(roof_plan(job).lines)
    assert all(isinstance(each, Stroke) for each in primitives(drawn(replace(plan, spans=(), caption=" "), 0.1, str))[:3])
