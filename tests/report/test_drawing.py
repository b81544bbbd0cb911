"""Drawings as strokes and as SVG: dimensions, arrows, hatching, extents."""

from __future__ import annotations

import math
import xml.etree.ElementTree as ElementTree

import pytest

from louverwright.report.drawing import PENS, TONES, Area, Arrow, Circle, Dim, Drawing, Label, Line
from louverwright.report.strokes import (
    HATCH_SPACING,
    HEAD_LENGTH,
    POINT_MM,
    Disc,
    Fill,
    Letters,
    Stroke,
    extent,
    fitted,
    hatch_lines,
    primitives,
    text_width,
)
from louverwright.report.svg import number, to_svg

SQUARE = ((0.0, 0.0), (20.0, 0.0), (20.0, 20.0), (0.0, 20.0))
HOLE = ((5.0, 5.0), (15.0, 5.0), (15.0, 15.0), (5.0, 15.0))
SVG = "{http://www.w3.org/2000/svg}"


def parts(item, kind):
    return [part for part in primitives(Drawing(1.0, 1.0, (item,))) if isinstance(part, kind)]


def heads(item):
    """Tip and direction of each arrow head: a triangle whose first corner is the tip."""
    found = []
    for head in parts(item, Fill):
        (tip, left, right), = head.loops
        tail = ((left[0] + right[0]) / 2, (left[1] + right[1]) / 2)
        length = math.dist(tip, tail)
        found.append((tip, ((tip[0] - tail[0]) / length, (tip[1] - tail[1]) / length), length))
    return found


def box(letters):
    """Left and right end of a level text's estimate."""
    width = text_width(letters.text, letters.size)
    return letters.at[0] - width / 2, letters.at[0] + width / 2


@pytest.mark.parametrize("make", [
    lambda: Line(((0.0, 0.0),)),
    lambda: Line(((0.0, 0.0), (1.0, 0.0)), "dotted"),
    lambda: Area((((0.0, 0.0), (1.0, 0.0)),)),
    lambda: Area((SQUARE,), "red"),
    lambda: Circle(0.0, 0.0, 1.0, "red"),
    lambda: Label(0.0, 0.0, "a", anchor="centre"),
    lambda: Arrow(1.0, 1.0, 1.0, 1.0),
    lambda: Dim((1.0, 1.0), (1.0, 1.0), 5.0, "0"),
    lambda: Drawing(0.0, 10.0, ()),
])
def test_faulty_items_are_refused(make):
    with pytest.raises(ValueError, match=r"\w\.$"):
        make()


def test_every_pen_is_told_apart_without_colour():
    looks = {(pen.width, pen.dashes) for pen in PENS.values()}
    assert len(looks) == len(PENS)


def test_a_long_dimension_has_its_text_over_the_middle_and_heads_inside():
    dim = Dim((0.0, 0.0), (60.0, 0.0), 5.0, "360.0")
    letters, = parts(dim, Letters)
    assert letters.at[0] == pytest.approx(30.0)
    assert letters.at[1] > 5.0
    assert [(tip, way) for tip, way, _ in heads(dim)] == [
        (pytest.approx((0.0, 5.0)), pytest.approx((-1.0, 0.0))),
        (pytest.approx((60.0, 5.0)), pytest.approx((1.0, 0.0)))]


@pytest.mark.parametrize("length", [0.1, 1.0, 3.0, 6.0])
def test_a_short_dimension_has_its_text_beyond_the_second_point(length):
    dim = Dim((0.0, 0.0), (length, 0.0), 5.0, "1234.5")
    letters, = parts(dim, Letters)
    left, right = box(letters)
    assert left > length, "clear of the second extension line"
    reach = max(point[0] for stroke in parts(dim, Stroke) for point in stroke.points)
    assert reach >= right - 1e-9, "the line runs under the text"


def test_heads_turn_outside_where_there_is_no_room():
    (_, first, _), (_, second, _) = heads(Dim((0.0, 0.0), (2.0, 0.0), 5.0, "2"))
    assert first == pytest.approx((1.0, 0.0))
    assert second == pytest.approx((-1.0, 0.0))


@pytest.mark.parametrize(("end", "turn"), [
    ((0.0, 60.0), 90.0), ((0.0, -60.0), 90.0), ((-60.0, 0.0), 0.0), ((60.0, 60.0), 45.0),
    ((-60.0, 60.0), -45.0)])
def test_text_reads_from_below_or_from_the_right(end, turn):
    letters, = parts(Dim((0.0, 0.0), end, 5.0, "60"), Letters)
    assert letters.rotation == pytest.approx(turn)


@pytest.mark.parametrize("offset", [5.0, -5.0])
def test_the_dimension_lies_to_the_left_of_the_way_or_to_the_right(offset):
    tips = [tip for tip, _, _ in heads(Dim((0.0, 0.0), (60.0, 0.0), offset, "60"))]
    assert [y for _, y in tips] == pytest.approx([offset, offset])


def test_an_arrow_has_one_head_or_two():
    assert [tip for tip, _, _ in heads(Arrow(0.0, 0.0, 20.0, 0.0))] == [(20.0, 0.0)]
    assert [tip for tip, _, _ in heads(Arrow(0.0, 0.0, 20.0, 0.0, both=True))] == [(20.0, 0.0), (0.0, 0.0)]


def test_a_short_arrow_is_no_longer_than_it_says():
    arrow = Arrow(0.0, 0.0, 1.0, 0.0, both=True)
    assert all(length <= 0.5 for _, _, length in heads(arrow))
    assert heads(Arrow(0.0, 0.0, 20.0, 0.0))[0][2] == pytest.approx(HEAD_LENGTH)


def test_hatching_leaves_holes_free():
    lines = hatch_lines((SQUARE, HOLE))
    assert len(lines) > 10
    for (x1, y1), (x2, y2) in lines:
        middle = ((x1 + x2) / 2, (y1 + y2) / 2)
        assert all(-1e-9 <= value <= 20 + 1e-9 for value in (x1, y1, x2, y2))
        assert not all(5 < value < 15 for value in middle)


def test_hatching_covers_the_area_evenly():
    length = sum(math.dist(*line) for line in hatch_lines((SQUARE, HOLE)))
    assert length * HATCH_SPACING == pytest.approx(300.0, rel=0.02)


def test_waste_is_painted_hatched_and_edged_in_that_order():
    made = primitives(Drawing(1.0, 1.0, (Area((SQUARE,), "waste"),)))
    assert isinstance(made[0], Fill) and made[0].paint == TONES["waste"].paint and made[0].pen is None
    assert all(isinstance(part, Stroke) for part in made[1:-1])
    assert isinstance(made[-1], Fill) and made[-1].pen == PENS["outline"]


def test_sizes_of_text_are_points():
    letters, = parts(Label(0.0, 0.0, "a", size=7.5), Letters)
    assert letters.size == pytest.approx(7.5 * POINT_MM)


def test_a_fitted_drawing_holds_all_with_its_margin():
    items = (Area((SQUARE,)), Circle(30.0, 10.0, 4.0), Label(34.0, -8.0, "text", anchor="end"),
             Dim((0.0, 0.0), (0.0, 20.0), 6.0, "20.0"))
    left, bottom, right, top = extent(items)
    drawing = fitted(items, margin=2.0)
    assert (drawing.x0, drawing.y0) == pytest.approx((left - 2.0, bottom - 2.0))
    assert (drawing.width, drawing.height) == pytest.approx((right - left + 4.0, top - bottom + 4.0))
    assert left < -6.0 and right == pytest.approx(34.0) and bottom < -8.0


def test_nothing_has_no_extent():
    with pytest.raises(ValueError, match="no extent"):
        fitted(())


def test_svg_has_the_size_on_paper_and_y_downward():
    drawing = Drawing(50.0, 30.0, (Line(((-10.0, -5.0), (40.0, 25.0))),), x0=-10.0, y0=-5.0)
    svg = ElementTree.fromstring(to_svg(drawing, "f", "A line"))
    assert (svg.get("width"), svg.get("height"), svg.get("viewBox")) == ("50mm", "30mm", "0 0 50 30")
    assert svg.find(f"{SVG}polyline").get("points") == "0,30 50,0"


def test_svg_has_an_element_for_each_primitive():
    items = (Area((SQUARE, HOLE), "waste"), Circle(1.0, 1.0, 1.0),
             Dim((0.0, 0.0), (20.0, 0.0), -5.0, "20 < 21"), Label(0.0, 0.0, "up & down", rotation=90.0))
    drawing = fitted(items)
    svg = ElementTree.fromstring(to_svg(drawing, "f", "A <title>"))
    count = {kind: sum(isinstance(part, kind) for part in primitives(drawing))
             for kind in (Stroke, Fill, Disc, Letters)}
    for tag, kind in (("polyline", Stroke), ("path", Fill), ("circle", Disc), ("text", Letters)):
        assert len(svg.findall(SVG + tag)) == count[kind] > 0
    assert [text.text for text in svg.findall(f"{SVG}text")] == ["20 < 21", "up & down"]
    assert svg.findall(f"{SVG}text")[1].get("transform").startswith("rotate(-90 ")
    assert svg.find(f"{SVG}title").text == "A <title>"
    assert svg.find(f"{SVG}desc").text == "20 < 21; up & down"


def test_dashes_are_written():
    svg = to_svg(fitted((Line(((0.0, 0.0), (9.0, 0.0)), "hidden"),)), "f", "")
    assert 'stroke-dasharray="1.8 1.1"' in svg


@pytest.mark.parametrize(("value", "text"), [
    (0.0, "0"), (-0.001, "0"), (1.0, "1"), (1.5, "1.5"), (1.234, "1.23"), (-1.236, "-1.24"), (100.0, "100")])
def test_numbers_are_short(value, text):
    assert number(value) == text
