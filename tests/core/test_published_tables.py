# SPDX-License-Identifier: LGPL-2.1-or-later
"""The planes of the layout against tables that others have published.

Nothing here is computed by the formulas behind the tables: angles are read from the planes that trim a laid-out
vent, by ``core.saw.setting`` or straight from normals and corners.  Sources stand beside the rows:

chart      compound angle setting chart of mitre-saw operators' manuals: manualsdump.com/en/manuals/craftsman-315.21212/
           276873/24, manualslib.com/manual/476368/Craftsman-315-212050.html?page=29, esmanual.top/manual/109885/
           Ryobi-Tss121.html?page=32.  Scanned copies misprint 8.89 as 8.69 and 23.86 as 23.66.
crown      it.all-manuals.su/lobziki-i-pily/78981-ms-1065lz.html (its bevel 33.85 should be 33.86 and is not used);
           88.208.23.73:8080/en/manual/bosch/4412/49200?page=28;
           woodweb.com/knowledge_base/Finding_Compound_Angles_for_Crown_Moulding.html
box        manualslib.mx/manual/90411/Dewalt-Dcs361.html?page=16
rafters    daveosborne.com/dave/articles/rafter-table.php (24 in column of 4/12 and 7/12: misprinted, not used)
commons    instructables.com/id/How-To-Make-A-Common-Rafter-For-Any-Width-Structur/step4/
navy       constructionmanuals.tpub.com/14044/css/Hip-Continued-73.htm and Ridge-Layout-85.htm (NAVEDTRA 14044)
radford    gluedideas.com, Radford's cyclopedia of construction, vol. 3, Roof Framing Simplified, P3 and P4
hodgson    bitlit.ru/page/en/fred-t-hodgson/abc-of-the-steel-square-and-its-uses/24 and 31
griffith   chestofbooks.com, Ira S. Griffith, Carpentry, sections 24, 26, 38 and 39
drop       josephfusco.org/Tips/tip0002.html
notch      jlconline.com/framing/q-a--sizing-the-birdsmouth.aspx and howtolookatahouse.com, 2020/9 (a quarter of
           the depth); a third of the depth is the traditional rule, from memory
free area  vanman.com.cn/Blog-detail?article_id=1 (text of AMCA 500-L); archlouvers.com/Louver_Free_Area.htm
screens    jlconline.com/how-to/roofing/roof-ventilation/roof-ventilation-field-guide
"""

from __future__ import annotations

from functools import cache
from itertools import pairwise
from math import acos, atan, cos, degrees, hypot, radians, sin, sqrt, tan

import pytest
from making import INCH, cuts_named, only, spec_of, standing, vent

from louverwright.core.assembly import Assembly, Part
from louverwright.core.dimensions import sizes
from louverwright.core.figures import figures
from louverwright.core.geometry import Plane, Vec, cross, dot, length, sub, unit
from louverwright.core.layout import layout
from louverwright.core.plan import LEFT, RIGHT, Plan
from louverwright.core.saw import Setting, setting
from louverwright.core.sizing import SCREEN_FACTORS, net_free_area
from louverwright.core.stock import Stock, StockList
from louverwright.places import stock_list

#: Charts print two decimals of a degree, or of an inch.
TWO_DECIMALS = 0.006
ONE_DECIMAL = 0.051
SIXTEENTH = 1.0 / 16.0 + 0.01


def rise(in_twelve: float) -> float:
    """The pitch of so many in 12 (degrees)."""
    return degrees(atan(in_twelve / 12.0))


def roof(pitch: float, **more) -> Assembly:
    """A vent with a roof of a pitch; overhang and tails such that flat and steep roofs can be built."""
    overhang = 110.0 if pitch < 50.0 else 45.0
    tails = 85.0 if pitch < 14.0 else 60.0
    return vent(**{"roof_pitch": pitch, "overhang": overhang, "tail_depth": tails, **more})


def plain(angles: Setting) -> tuple[float, float]:
    """Mitre and bevel without their signs."""
    return abs(angles.mitre), abs(angles.bevel)


# ---- compound mitres

CHART = {
    4: ((5, 44.89, 3.53), (15, 44.01, 10.55), (25, 42.19, 17.39), (35, 39.32, 23.93), (45, 35.26, 30.00),
        (55, 29.84, 35.40), (65, 22.91, 39.86), (75, 14.51, 43.08)),
    5: ((10, 35.58, 5.86), (20, 34.32, 11.60), (30, 32.18, 17.09), (40, 29.10, 22.20), (50, 25.03, 26.76),
        (60, 19.96, 30.60)),
    6: ((10, 29.62, 4.98), (20, 28.48, 9.85), (30, 26.57, 14.48), (40, 23.86, 18.75), (50, 20.36, 22.52),
        (60, 16.10, 25.66)),
    8: ((10, 22.19, 3.81), (20, 21.27, 7.52), (30, 19.73, 11.03), (40, 17.60, 14.24), (50, 14.91, 17.05)),
}
ROWS = [(sides, *row) for sides, rows in CHART.items() for row in rows]
SQUARE = {row[0]: row[1:] for row in CHART[4]}


@pytest.mark.parametrize(("sides", "slope", "mitre", "bevel"), ROWS)
def test_chart_on_a_plan_of_any_number_of_sides(sides: int, slope: float, mitre: float, bevel: float) -> None:
    """A board that lies on the slope of one side, ended by the plan's mitre planes."""
    plan = Plan(sides)
    board = plan.sloping(1, slope, 500.0, 100.0)
    for end in (LEFT, RIGHT):
        found = setting(board.local_plane(plan.mitre(1, end)))
        assert plain(found) == pytest.approx((mitre, bevel), abs=TWO_DECIMALS)


@pytest.mark.parametrize("slope", [15, 25, 35, 45])
def test_chart_on_drip_rings(slope: int) -> None:
    ring = only(vent(ring_slope=float(slope)), "louver.ring")
    cuts = cuts_named(ring, "mitre at the corner")
    assert len(cuts) == 2
    for cut in cuts:
        assert plain(setting(cut.planes[0])) == pytest.approx(SQUARE[slope], abs=TWO_DECIMALS)


@pytest.mark.parametrize(("slope", "rain"), [(35, 15.0), (45, 30.0)])
def test_chart_on_drip_rings_that_follow_the_slats(slope: int, rain: float) -> None:
    assembly = vent(slat_angle=float(slope), rain_angle=rain)
    for cut in cuts_named(only(assembly, "louver.ring"), "mitre at the corner"):
        assert plain(setting(cut.planes[0])) == pytest.approx(SQUARE[slope], abs=TWO_DECIMALS)
    (rip, _) = only(assembly, "louver.slat").board.cuts
    assert abs(setting(rip.planes[0]).bevel) == pytest.approx(slope, abs=1e-6)


@pytest.mark.parametrize("slope", [5, 15, 25, 35, 45, 55, 65])
@pytest.mark.parametrize("grain", ["along the eave", "up the slope"])
def test_chart_on_roof_sheathing(slope: int, grain: str) -> None:
    """Angles of a sheet refer to its eave edge: with the grain up the slope the gauge shows the complement."""
    sheet = only(roof(float(slope), sheathing_grain=grain, width=760.0), "roof.sheathing")
    cuts = cuts_named(sheet, "hip edge")
    assert len(cuts) == 2
    for cut in cuts:
        mitre, bevel = plain(setting(cut.planes[0]))
        mitre = mitre if grain == "along the eave" else 90.0 - mitre
        assert (mitre, bevel) == pytest.approx(SQUARE[slope], abs=TWO_DECIMALS)


@pytest.mark.parametrize(("slope", "mitre", "bevel", "within"), [
    (52, 31.62, None, TWO_DECIMALS),    # crown, first source: 38° from the wall
    (52, 31.6, 33.9, ONE_DECIMAL),      # crown, second and third source
    (45, 35.3, 30.0, ONE_DECIMAL),      # crown, third source
    (26, 42.0, 18.0, 0.1),              # box, whole degrees
])
def test_crown_and_box_settings(slope: int, mitre: float, bevel: float | None, within: float) -> None:
    for cut in cuts_named(only(roof(float(slope)), "roof.sheathing"), "hip edge"):
        found = plain(setting(cut.planes[0]))
        assert found[0] == pytest.approx(mitre, abs=within)
        assert bevel is None or found[1] == pytest.approx(bevel, abs=within)


@pytest.mark.parametrize("in_twelve", [4, 6, 8, 10, 12])
def test_plumb_fascia_is_mitred_at_45_whatever_the_pitch(in_twelve: float) -> None:
    """Computed row 0 / 45; beside it griffith, 24: a hip's end is cut back half its thickness each side: 45°."""
    assembly = roof(rise(in_twelve))
    for cut in cuts_named(only(assembly, "roof.fascia"), "mitre"):
        assert plain(setting(cut.planes[0])) == pytest.approx((0.0, 45.0), abs=1e-6)


# ---- hips and jacks

#: rafters: pitch in 12, common and hip per foot of run, jack difference at 16 and 24 in (None: misprint), angle (°).
RAFTERS = (
    (2, 12.16, 17.09, 16 + 1 / 4, 24 + 5 / 16, 9.5), (3, 12.37, 17.23, 16 + 1 / 2, 24 + 3 / 4, 14.0),
    (4, 12.65, 17.44, 16 + 7 / 8, None, 18.5), (5, 13.0, 17.69, 17 + 5 / 16, 26.0, 22.5),
    (6, 13.42, 18.0, 17 + 7 / 8, 26 + 7 / 8, 26.5), (7, 13.89, 18.36, 18 + 1 / 2, None, 30.25),
    (8, 14.42, 18.76, 19 + 1 / 4, 28 + 7 / 8, 33.75), (10, 15.62, 19.7, 20 + 7 / 8, 31 + 1 / 4, 39.75),
    (11, 16.28, 20.22, 21 + 3 / 4, 32 + 5 / 8, 42.5), (12, 16.97, 20.78, 22 + 5 / 8, 34.0, 45.0),
)
#: commons: pitch in 12, length per foot of run (in).
COMMONS = ((3, 12.37), (5, 13.00), (6, 13.42), (8, 14.42), (9, 15.00), (11, 16.28), (12, 16.97), (14, 18.44),
           (15, 19.21), (17, 20.81), (18, 21.63))


def framed(in_twelve: float) -> Assembly:
    """A wide vent with four jacks a side."""
    return roof(rise(in_twelve), width=1200.0, rafters_per_side=4)


def hip_line(assembly: Assembly) -> Vec:
    """The line in which the backing's two planes meet, in the vent, towards the peak."""
    hip = only(assembly, "roof.hip")
    place = hip.pieces[0].placement
    first, second = (place.direction(cut.planes[0].normal) for cut in cuts_named(hip, "backing"))
    line = unit(cross(first, second))
    return line if line[2] > 0.0 else (-line[0], -line[1], -line[2])


def per_foot(line: Vec, run: float) -> float:
    """Length along a line for a level run of so many inches."""
    return run / hypot(line[0], line[1])


def jacks(assembly: Assembly) -> tuple[float, float]:
    """How much longer a long jack is than a short one, and their spacing (mm); both on the right half of side 0."""
    found = []
    for part in assembly.of_kind("roof.jack"):
        for piece in part.pieces:
            if piece.side == 0 and piece.end > 0:
                found.append((part.board.length, piece.placement.origin))
    (a, at), (b, there) = sorted(found)
    return b - a, abs(at[1] - there[1])


@pytest.mark.parametrize(("in_twelve", "common", "hip", "at_16", "at_24", "angle"), RAFTERS)
def test_rafter_table(in_twelve: float, common: float, hip: float, at_16: float, at_24: float | None,
                      angle: float) -> None:
    assembly = framed(in_twelve)
    x = assembly.of_kind("roof.jack")[0].pieces[0].placement.x
    assert per_foot(x, 12.0) == pytest.approx(common, abs=TWO_DECIMALS)
    assert degrees(acos(hypot(x[0], x[1]))) == pytest.approx(angle, abs=0.13)    # to the quarter degree
    assert per_foot(hip_line(assembly), 12.0 * sqrt(2.0)) == pytest.approx(hip, abs=TWO_DECIMALS)
    longer, spacing = jacks(assembly)
    assert longer / spacing * 16.0 == pytest.approx(at_16, abs=SIXTEENTH)
    assert at_24 is None or longer / spacing * 24.0 == pytest.approx(at_24, abs=SIXTEENTH)


@pytest.mark.parametrize(("in_twelve", "common"), COMMONS)
def test_common_rafters(in_twelve: float, common: float) -> None:
    assembly = roof(rise(in_twelve), rafters_per_side=1, king_post_stock="6x6")
    x = only(assembly, "roof.common").pieces[0].placement.x
    assert per_foot(x, 12.0) == pytest.approx(common, abs=TWO_DECIMALS)


def test_hip_lies_in_its_rafter() -> None:
    """The rafter's length runs along the hip line, and the hip's slope is not the faces' pitch."""
    for in_twelve in (4, 8, 12):
        assembly = framed(in_twelve)
        line = hip_line(assembly)
        assert dot(line, only(assembly, "roof.hip").pieces[0].placement.x) == pytest.approx(1.0, abs=1e-12)
        assert line[2] / hypot(line[0], line[1]) == pytest.approx(in_twelve / 16.97, abs=1e-3)    # navy: run 16.97


def test_hip_of_a_fifteen_foot_run() -> None:
    """Navy: 8/12, common run 15 ft: hip run 21.21 ft, hip 23.45 ft; bridge measure 18.76 in a foot."""
    line = hip_line(framed(8))
    assert per_foot(line, 12.0 * sqrt(2.0)) == pytest.approx(18.76, abs=TWO_DECIMALS)
    assert per_foot(line, 21.21) == pytest.approx(23.45, abs=TWO_DECIMALS)


@pytest.mark.parametrize(("in_twelve", "figure", "within"), [
    (8, 10.0, 0.02),    # navy: 12 and 10 (the other way round: 12·cos)
    (6, 13.375, 0.05), (9, 15.0, 0.01), (10, 15.625, 0.01),    # radford, hodgson: 12 and the common's length
])
def test_side_cut_of_jacks(in_twelve: float, figure: float, within: float) -> None:
    """The line of the cut against the hip across the jack's upper edge, as the steel square gives it."""
    for part in framed(in_twelve).of_kind("roof.jack"):
        (cut,) = cuts_named(part, "against the hip")
        x, _, z = cut.planes[0].normal
        tangent = abs(x / z)
        assert 12.0 * (tangent if figure < 12.0 else 1.0 / tangent) == pytest.approx(figure, abs=within)


def test_side_cut_of_a_hips_tail() -> None:
    """Hodgson: 9/12, 17 and 19 1/4; 10/12, 17 and 19 3/4: the cheeks' lines across the upper edge of a hip."""
    for in_twelve, figure in ((9, 19.25), (10, 19.75)):
        for cut in cuts_named(only(framed(in_twelve), "roof.hip"), "cheek"):
            x, _, z = cut.planes[0].normal
            assert 12.0 * sqrt(2.0) / abs(x / z) == pytest.approx(figure, abs=SIXTEENTH)


def test_a_hips_tail_is_cut_back_half_its_thickness() -> None:
    """Griffith, 24: level, from the tail's point to its shoulders."""
    hip = only(framed(8), "roof.hip")
    piece = hip.pieces[0]
    out = unit((piece.placement.x[0], piece.placement.x[1], 0.0))
    reach = sorted({round(-dot(p, out), 6) for p in standing(hip)}, reverse=True)
    assert reach[0] - reach[1] == pytest.approx(hip.board.thickness / 2.0, abs=1e-6)


def test_backing() -> None:
    """Griffith, 26, and hodgson: take the hip's length and rise and mark on the rise; 8/12: tangent 8 / 18.76."""
    cuts = cuts_named(only(framed(8), "roof.hip"), "backing")
    assert len(cuts) == 2
    for cut in cuts:
        assert abs(tan(radians(setting(cut.planes[0]).bevel))) == pytest.approx(8.0 / 18.76, abs=1e-4)


@pytest.mark.parametrize("in_twelve", [4, 8, 12])
def test_backing_is_the_bevel_of_the_sheathing(in_twelve: float) -> None:
    """Both are half of what the dihedral angle at the hip lacks of 180°, and 8/12 is 23.09° in either table."""
    assembly = framed(in_twelve)
    backing = [abs(setting(c.planes[0]).bevel) for c in cuts_named(only(assembly, "roof.hip"), "backing")]
    edges = [abs(setting(c.planes[0]).bevel) for c in cuts_named(only(assembly, "roof.sheathing"), "hip edge")]
    assert backing == pytest.approx(edges, abs=1e-9)
    if in_twelve == 8:
        assert backing[0] == pytest.approx(23.09, abs=TWO_DECIMALS)


def test_backing_takes_what_the_drop_would() -> None:
    """Drop: an 8/12 hip 1 1/2 in thick that is not backed is dropped about 3/8 in, plumb."""
    hip = only(framed(8), "roof.hip")
    assert hip.board.thickness == pytest.approx(1.5 * INCH)
    plane = cuts_named(hip, "backing")[0].planes[0]
    heights = [(plane.offset - plane.normal[2] * z) / plane.normal[1] for z in (0.0, hip.board.thickness / 2.0,
                                                                            hip.board.thickness)]
    fall = max(heights) - heights[1]
    slope = acos(hypot(*hip.pieces[0].placement.x[:2]))
    assert fall / cos(slope) / INCH == pytest.approx(3.0 / 8.0, abs=1.0 / 32.0)


@cache
def irregular() -> Assembly:
    """10/12 over the long sides of a rectangle and 11/12 over its ends, a side 1350 long with a jack beyond each common."""
    return vent(width=900.0, length=1350.0, roof_pitch=rise(10), end_pitch=rise(11), rafters_per_side=3,
                ridge_stock="2x8")


def test_irregular_hip() -> None:
    """Two pitches at one corner, 10/12 and 11/12, by the worksheets on irregular hips and valleys
    (geocities.ws/web_sketches/hip_valley_dimensioning/jack_compound_calcs.html): pitch, plan angle and backing of the hip."""
    part = irregular().of_kind("roof.hip")[0]
    along = part.pieces[0].placement.x
    assert degrees(acos(abs(along[2]))) == pytest.approx(58.34132, abs=1e-4)
    assert degrees(atan(abs(along[1] / along[0]))) == pytest.approx(47.72631, abs=1e-4), "with the eave of the 10/12 side"
    backing = sorted(abs(setting(cut.planes[0]).bevel)
                     for cut in cuts_named(part, "backing"))
    assert backing == pytest.approx([25.50784, 29.99972], abs=1e-4)


def test_side_cuts_of_jacks_at_an_irregular_hip() -> None:
    """As above: the line across a jack's upper edge, from its length, on the 10/12 side and on the 11/12 side."""
    found: dict[bool, set[float]] = {}
    for part in irregular().of_kind("roof.jack"):
        (cut,) = cuts_named(part, "against the hip")
        x, _, z = cut.planes[0].normal
        long = abs(part.pieces[0].placement.z[0]) > 0.5
        found.setdefault(long, set()).add(round(degrees(atan(abs(x / z))), 4))
    assert {long: len(angles) for long, angles in found.items()} == {True: 1, False: 1}
    assert found[True].pop() == pytest.approx(34.92979, abs=1e-4)
    assert found[False].pop() == pytest.approx(39.03754, abs=1e-4)


def test_the_sheathing_at_an_irregular_hip_is_mitred_to_the_backing() -> None:
    """The edges of both sheets lie in one plane, which halves the angle between the faces."""
    edges = {round(abs(setting(cut.planes[0]).bevel), 4) for part in irregular().of_kind("roof.sheathing")
             for cut in cuts_named(part, "hip edge")}
    assert len(edges) == 1
    assert edges.pop() == pytest.approx((25.50784 + 29.99972) / 2.0, abs=1e-3)


def slopes_at(plan: Plan, corner: int, pitch: float) -> tuple[Plane, Plane]:
    """The two roof faces that meet at a corner of a plan."""
    return (plan.slope_plane(corner, pitch, 500.0, 0.0), plan.slope_plane(corner + 1, pitch, 500.0, 0.0))


def hip_of(plan: Plan, pitch: float) -> Vec:
    """The line in which two faces of a plan meet, towards the peak."""
    first, second = slopes_at(plan, 0, pitch)
    line = unit(cross(first.normal, second.normal))
    return line if line[2] > 0.0 else (-line[0], -line[1], -line[2])


def backing_of(plan: Plan, pitch: float) -> float:
    """Tangent of the backing: a face's lean across the hip, from a line square to the hip."""
    line = hip_of(plan, pitch)
    across = plan.across(0)
    top = cross(line, across)
    normal = slopes_at(plan, 0, pitch)[0].normal
    return abs(dot(normal, across) / dot(normal, top))


def test_octagon() -> None:
    """Radford, P4, and griffith, 38: mitre 5 in 12, hip run 13; griffith, 39: backing 5/12 of a square's."""
    plan = Plan(8)
    line = hip_of(plan, rise(10))
    assert 10.0 * hypot(line[0], line[1]) / line[2] == pytest.approx(13.0, abs=0.02)
    assert 12.0 * plan.slope == pytest.approx(5.0, abs=0.03)
    hip = 30.0
    square, octagon = (degrees(atan(tan(radians(hip)) / dot(Plan(n).toward(0), Plan(n).u(0)))) for n in (4, 8))
    assert backing_of(plan, octagon) / backing_of(Plan(4), square) == pytest.approx(5.0 / 12.0, abs=0.003)


@pytest.mark.parametrize(("stock", "depth", "quarter", "third"), [
    ("2x4", 3.5, 0.8750, 1.1667), ("2x6", 5.5, 1.3750, 1.8333), ("2x8", 7.25, 1.8125, 2.4167)])
def test_notches(stock: str, depth: float, quarter: float, third: float) -> None:
    """Notch: a third is not passed; a quarter, the stricter published rule, is: it is not the rule kept here."""
    assembly = roof(30.0, rafter_stock=stock, overhang=200.0, rafters_per_side=1,
                    king_post_stock="6x6", width=1200.0, louver_height=700.0)
    rafters = [only(assembly, "roof.hip"), only(assembly, "roof.common")]
    depths = [notch_depth(part) / INCH for part in rafters]
    assert all(part.board.width == pytest.approx(depth * INCH) for part in rafters)
    assert max(depths) <= third
    assert max(depths) > third - 1.0 / INCH    # the heel is a whole millimetre
    assert quarter == pytest.approx(depth / 4.0)


def notch_depth(part: Part) -> float:
    """How deep a rafter's seat reaches, square to its lower edge (mm)."""
    (seat,) = cuts_named(part, "seat")
    (a, b, _), (c, d, _) = (plane.normal for plane in seat.planes)
    return (a * seat.planes[1].offset - c * seat.planes[0].offset) / (a * d - b * c)


# ---- the saddle

#: width (in), pitch in 12: V height, V leg (in), included angle, tilt of the side boards, leg from square (°).
#: Computed (common practice: gable boards V-notched, side boards bevelled); beside it the angle of ``rafters``.
SADDLES = ((24, 6, 6.0, 13.4164, 126.870, 26.565, 63.435, 26.5),
           (30, 10, 12.5, 19.5256, 100.389, 39.806, 50.194, 39.75),
           (36, 12, 18.0, 25.4558, 90.0, 45.0, 45.0, 45.0))


@pytest.mark.parametrize(("width", "in_twelve", "high", "leg", "included", "tilt", "square", "angle"), SADDLES)
def test_saddle(width, in_twelve, high, leg, included, tilt, square, angle) -> None:
    assembly = vent(width=width * INCH, pitch_left=rise(in_twelve), pitch_right=rise(in_twelve), ridge_cap_height=0.0,
                    louver_height=500.0)
    gable = only(assembly, "base.cladding.gable")
    (notch,) = cuts_named(gable, "foot")
    first, second = notch.planes
    peak, low = v_points(first, second, gable.board.width)
    assert (peak[0] - low[0]) / INCH == pytest.approx(high, abs=5e-5)
    assert length(sub(peak, low)) / INCH == pytest.approx(leg, abs=5e-5)
    assert 180.0 - degrees(acos(dot(first.normal, second.normal))) == pytest.approx(included, abs=5e-4)
    eave = only(assembly, "base.cladding.eave")
    (foot,) = cuts_named(eave, "foot")
    assert plain(setting(foot.planes[0])) == pytest.approx((0.0, tilt), abs=5e-4)
    assert tilt == pytest.approx(angle, abs=0.13)
    for plane in notch.planes:    # the gable's grain is plumb: its legs run at the complement from the length
        assert plain(setting(plane)) == pytest.approx((tilt, 0.0), abs=5e-4)
        assert 90.0 - plain(setting(plane))[0] == pytest.approx(square, abs=5e-4)


def v_points(first: Plane, second: Plane, width: float) -> tuple[Vec, Vec]:
    """A V's peak, and the point where its first leg leaves through an edge of the board."""
    (a, b, _), (c, d, _) = first.normal, second.normal
    whole = a * d - b * c
    peak = ((first.offset * d - second.offset * b) / whole, (a * second.offset - c * first.offset) / whole, 0.0)
    edge = 0.0 if b < 0.0 else width
    ends = [((first.offset - b * y) / a, y, 0.0) for y in (edge, width - edge)]
    return peak, min(ends, key=lambda p: p[0])


# ---- slats, water and air

#: width, thickness (in), angle, spacing (in): height H, overlap, gap (in), free share (%), steepest ray blocked (°).
#: Computed rows for square-edged slats: they check the way of measuring here, which then measures our own slats.
SLATS = (
    (3.5, 0.75, 45, 2.0, 3.0052, 1.0052, 0.6642, 33.2, 27.3), (3.5, 0.75, 45, 3.0, 3.0052, 0.0052, 1.3713, 45.7, 0.2),
    (3.5, 0.75, 35, 2.0, 2.6219, 0.6219, 0.8883, 44.4, 14.3), (2.875, 0.5, 45, 2.0, 2.3865, 0.3865, 0.9142, 45.7, 13.0),
    (5.5, 0.75, 45, 3.5, 4.4194, 0.9194, 1.7249, 49.3, 15.3), (2.5, 0.75, 45, 2.25, 2.2981, 0.0481, 0.8410, 37.4, 2.2),
)


def cover(section: list[tuple[float, float]], rain: float) -> float:
    """How much height a section (distance from the axis, height) hides from rays that rise inward at an angle."""
    seen = [z + r * tan(radians(rain)) for r, z in section]
    return max(seen) - min(seen)


def steepest(section: list[tuple[float, float]], spacing: float) -> float:
    """The steepest ray that a row of sections still blocks (degrees), by halving."""
    low, high = 0.0, 89.0
    for _ in range(60):
        middle = (low + high) / 2.0
        blocked = min(cover(section, rain) for rain in (low, middle)) >= spacing
        low, high = (middle, high) if blocked else (low, middle)
    return low


@pytest.mark.parametrize(("w", "t", "angle", "spacing", "high", "over", "gap", "free", "ray"), SLATS)
def test_the_way_of_measuring_slats(w, t, angle, spacing, high, over, gap, free, ray) -> None:
    a = radians(angle)
    section = [(x * cos(a) + y * sin(a), -x * sin(a) + y * cos(a)) for x in (0.0, w) for y in (0.0, t)]
    assert cover(section, 0.0) == pytest.approx(high, abs=5.1e-5)
    assert cover(section, 0.0) - spacing == pytest.approx(over, abs=5.1e-5)
    assert steepest(section, spacing) == pytest.approx(ray, abs=ONE_DECIMAL)


def thin_slats(thickness: float) -> StockList:
    """The US list with one more board for slats, 9 in wide."""
    usual = stock_list("us")
    item = Stock("slats", "board", thickness * INCH, 9.0 * INCH, (2438.4,), "pine", 400.0)
    return StockList("us", usual.title, (item, *usual.items), {**usual.usual, "slat_stock": "slats",
                                                                "ring_stock": "slats"})


def louvered(thickness: float, angle: float, spacing: float):
    """The spec of a vent whose four slats come out at the spacing wanted (in), by its louver stage's height."""
    values = {"slat_angle": float(angle), "slat_count": 4, "rain_angle": 0.0, "louver_height": 600.0}
    stock = thin_slats(thickness)
    try_out = sizes(spec_of(stock, **{**values, "slat_count": 0, "rain_angle": 10.0})).louver
    room = try_out.slats * try_out.spacing
    return spec_of(stock, **{**values, "louver_height": 600.0 + 4.0 * spacing * INCH - room})


def sections(assembly: Assembly) -> list[list[tuple[float, float]]]:
    """The sections of side 0's sill and slats from below, as they stand: distance from the axis, height."""
    found = []
    for part in (*assembly.of_kind("louver.sill"), *assembly.of_kind("louver.slat")):
        for number, piece in enumerate(part.pieces):
            if piece.side == 0:
                found.append(sorted({(round(p[0], 6), round(p[2], 6)) for p in standing(part, number)}))
    return sorted(found, key=lambda section: section[0][1])


def clear(lower: list[tuple[float, float]], upper: list[tuple[float, float]], angle: float) -> float:
    """Clear gap between two slats, square to them."""
    def heights(section: list[tuple[float, float]]) -> list[float]:
        return [r * sin(radians(angle)) + z * cos(radians(angle)) for r, z in section]

    return min(heights(upper)) - max(heights(lower))


@pytest.mark.parametrize(("w", "t", "angle", "spacing", "high", "over", "gap", "free", "ray"), SLATS)
def test_gaps_between_slats_that_stand_in_a_vent(w, t, angle, spacing, high, over, gap, free, ray) -> None:
    spec = louvered(t, angle, spacing)
    rows = sections(layout(spec))
    assert len(rows) == 5
    for lower, upper in pairwise(rows):
        assert (upper[0][1] - lower[0][1]) / INCH == pytest.approx(spacing, abs=1e-6)
        assert clear(lower, upper, angle) / INCH == pytest.approx(gap, abs=5.1e-5)
    assert 100.0 * sizes(spec).louver.gap / INCH / spacing == pytest.approx(free, abs=ONE_DECIMAL)


@pytest.mark.parametrize("values", [
    {}, {"slat_angle": 40.0, "rain_angle": 20.0}, {"slat_angle": 55.0, "panel_depth": 60.0}, {"rain_angle": 15.0}])
def test_overlap_and_rays_on_our_own_slats(values: dict[str, float]) -> None:
    """Slats ripped plumb have another profile than the table's: the overlap is measured on the real sections."""
    spec = spec_of(**values)
    louver, rows = sizes(spec).louver, sections(layout(spec))
    spacing = rows[2][0][1] - rows[1][0][1]
    for rain in (0.0, 10.0, spec.rain_angle):
        assert cover(rows[1], rain) - spacing == pytest.approx(louver.overlap(rain), abs=1e-5)
    assert steepest(rows[1], spacing) >= spec.rain_angle
    fewer = spacing * louver.slats / (louver.slats - 1)
    assert steepest(rows[1], fewer) < spec.rain_angle    # one slat less would let it in


@pytest.mark.parametrize("values", [{}, {"screen_factor": 0.8}, {"width": 1200.0, "slat_span": 1500.0}])
def test_net_free_area_is_what_the_standard_defines(values: dict[str, float]) -> None:
    """Free area: the sum of the least gaps between blades, and of the gaps at head and sill, times the clear width."""
    spec = spec_of(**values)
    assembly = layout(spec)
    rows = sections(assembly)
    gaps = [clear(lower, upper, spec.slat_angle) for lower, upper in pairwise(rows)]
    head = min(p[2] for p in standing(only(assembly, "louver.head"))) - max(z for _, z in rows[-1])
    assert head == pytest.approx(0.0, abs=1e-6)
    stiles = [[p[1] for p in standing(part, n)] for part in assembly.of_kind("louver.stile")
              for n, piece in enumerate(part.pieces) if piece.side == 0]
    low, high = sorted(stiles, key=min)
    clear_width = min(high) - max(low)
    area = (sum(gaps) + head) * clear_width * 4 * spec.screen_factor
    assert figures(spec)["louver_area"] == pytest.approx(area, rel=1e-6)


def test_net_free_area_of_a_worked_louver() -> None:
    """Computed beside the definition: 24 × 24 in, L 22.5, A = B = 1.0, N 7, C 1.018 in: 1.426 sq ft, 35.6 %."""
    square_inches = net_free_area(1.018, 22.5, 7, 1) + net_free_area(1.0, 22.5, 2, 1)
    assert square_inches / 144.0 == pytest.approx(1.426, abs=5.1e-4)
    assert 100.0 * square_inches / 576.0 == pytest.approx(35.6, abs=ONE_DECIMAL)


def test_screen_factors() -> None:
    """Screens: gross area for one of net area: 1.00, 1.25 and 2.00; the louver itself is not counted twice."""
    assert {mesh: 1.0 / factor for mesh, factor in SCREEN_FACTORS.items()} == pytest.approx(
        {"1/4 in hardware cloth": 1.00, "1/8 in mesh": 1.25, "#16 mesh": 2.00})
