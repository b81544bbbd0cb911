# SPDX-License-Identifier: LGPL-2.1-or-later
"""The bench sheet against the solids: what dados, rips, laps and test pairs really are on the boards.

Sources: crown    woodweb.com/knowledge_base/Finding_Compound_Angles_for_Crown_Moulding.html (settings for a 90° corner);
         polygon  the inner angle of a regular polygon of n sides, 180° − 360°/n, and the rule for boards that slope by s round
                  one, sin bevel = sin s · sin(180°/n) with the dihedral angle 180° − 2 · bevel: common practice.
"""

from __future__ import annotations

import html
import math
import re

import pytest
from making import job_of

from louverwright.core.assembly import BORE, DADO, HALF_LAP, RIP, Cut, Part, board_shell
from louverwright.core.geometry import Plane, Vec, add, dot, scale, sub, unit
from louverwright.core.housing import covered_edge, housings
from louverwright.core.saw import SQUARE, edge_of, setting
from louverwright.core.solid import FAR_EDGE, HIDDEN_FACE, MARKED_FACE, Cell, Facet, box, clip, corners
from louverwright.core.trial import closing, is_compound
from louverwright.exchange.papers import job_from_values
from louverwright.report.bench import bench_report
from louverwright.report.bench_rows import (
    BLADE_REACH,
    drill_rows,
    fence_distances,
    gauge_rows,
    lap_rows,
    order_rows,
    pair_rows,
    rip_setups,
    slat_rows,
    story_sticks,
)
from louverwright.report.html import to_html
from louverwright.report.job import Job
from louverwright.report.page import Heading, Table, walk

SOME = ("hay-barn-28ft", "octagon-dairy", "cart-shed-gable", "horse-barn-flared")
CUT = "this cut"
NEAR = 1e-6


def compound(name: str) -> list[tuple[Part, Cut]]:
    return [(part, cut) for part in job_of(name).assembly.parts for cut in part.board.cuts if is_compound(cut)]


# ---- test pairs, sawn and put together


def halves(plane: Plane) -> tuple[Cell, Cell]:
    """A stick sawn through in its middle: what is kept and the offcut."""
    stick = box((-600.0, 0.0, 0.0), (600.0, 90.0, 20.0))
    through = Plane.through((0.0, 45.0, 10.0), plane.normal)
    kept, offcut = clip(stick, through, CUT), clip(stick, through.flipped(), CUT)
    assert kept is not None and offcut is not None
    return kept, offcut


def facet(cell: Cell, name: str) -> Facet:
    return next(each for each in cell if each.name == name)


def rolled(cell: Cell, normal: Vec) -> list[tuple[str, list[Vec]]]:
    """The offcut rolled half round and set back on the cut: half a turn about the cut's middle, square to the cut."""
    middle = scale(_sum(facet(cell, CUT).points), 1.0 / len(facet(cell, CUT).points))

    def turn(p: Vec) -> Vec:
        v = sub(p, middle)
        return add(middle, sub(scale(normal, 2.0 * dot(v, normal)), v))

    return [(each.name, [turn(p) for p in each.points]) for each in cell]


def _sum(points: tuple[Vec, ...]) -> Vec:
    total: Vec = (0.0, 0.0, 0.0)
    for p in points:
        total = add(total, p)
    return total


def same(p: Vec, q: Vec) -> bool:
    return math.dist(p, q) < NEAR


def between(a: Vec, b: Vec) -> float:
    return math.degrees(math.acos(max(-1.0, min(1.0, dot(unit(a), unit(b))))))


def measured(plane: Plane) -> tuple[float, float]:
    """Angles of the closed pair as gauge and square read them off its corners: over the wide faces, along two arrises."""
    kept, offcut = halves(plane)
    other = rolled(offcut, plane.normal)
    joint = facet(kept, CUT).points
    theirs = dict(other)[CUT]
    assert all(any(same(p, q) for q in theirs) for p in joint), "the corners of the joint do not meet"
    mine, faced = facet(kept, MARKED_FACE).points, dict(other)[HIDDEN_FACE]
    edge = [p for p in joint if any(same(p, q) for q in mine)]
    assert len(edge) == 2 and all(any(same(p, q) for q in faced) for p in edge)
    along = unit(sub(edge[1], edge[0]))
    ways = [square_to(sub(_far(points, edge), edge[0]), along) for points in (mine, faced)]
    arrises = [sub(_arris(points, edge[0], edge[1]), edge[0]) for points in (mine, faced)]
    return between(*ways), between(*arrises)


def square_to(v: Vec, along: Vec) -> Vec:
    return sub(v, scale(along, dot(v, along)))


def _far(points: tuple[Vec, ...] | list[Vec], edge: list[Vec]) -> Vec:
    return max(points, key=lambda p: min(math.dist(p, q) for q in edge))


def _arris(points: tuple[Vec, ...] | list[Vec], corner: Vec, other: Vec) -> Vec:
    """The far end of the arris that starts at a corner of a face."""
    at = next(i for i, p in enumerate(points) if same(p, corner))
    beside = [points[at - 1], points[(at + 1) % len(points)]]
    return next(p for p in beside if not same(p, other))


@pytest.mark.parametrize("name", SOME)
def test_a_pair_closes_to_the_angles_told(name: str) -> None:
    found = compound(name)
    assert found
    for _, cut in found:
        faces, lengths = measured(cut.planes[0])
        told = closing(cut.planes[0])
        assert told.faces == pytest.approx(faces, abs=1e-5)
        assert told.lengths == pytest.approx(lengths, abs=1e-5)


@pytest.mark.parametrize("name", ("hay-barn-28ft", "octagon-dairy"))
@pytest.mark.parametrize("kind", ("louver.ring", "roof.sheathing"))
def test_a_pair_closes_as_the_parts_do_in_the_vent(name: str, kind: str) -> None:
    job = job_of(name)
    (part,) = job.assembly.of_kind(kind)
    first, second = (next(piece for piece in part.pieces if piece.side == side) for side in (0, 1))
    a, b = first.placement, second.placement
    for cut in (cut for cut in part.board.cuts if is_compound(cut)):
        told = closing(cut.planes[0])
        assert told.faces == pytest.approx(180.0 - between(a.z, b.z), abs=1e-6)
        assert told.lengths == pytest.approx(180.0 - between(a.x, b.x), abs=1e-6)
        assert told.lengths == pytest.approx(180.0 - 360.0 / job.sizes.plan.sides, abs=1e-6)  # polygon


@pytest.mark.parametrize(("name", "sides"), (("hay-barn-28ft", 4), ("octagon-dairy", 8)))
def test_the_ring_closes_to_the_dihedral_angle_of_the_trade(name: str, sides: int) -> None:
    job = job_of(name)
    (part,) = job.assembly.of_kind("louver.ring")
    cut = next(cut for cut in part.board.cuts if is_compound(cut))
    bevel = math.asin(math.sin(math.radians(job.sizes.louver.ring_slope)) * math.sin(math.pi / sides))  # polygon
    assert closing(cut.planes[0]).faces == pytest.approx(180.0 - 2.0 * math.degrees(bevel), abs=1e-6)


@pytest.mark.parametrize(("mitre", "bevel"), ((31.6, 33.9), (35.3, 30.0)))
def test_published_settings_for_a_square_corner_close_square(mitre: float, bevel: float) -> None:
    m, b = math.radians(mitre), math.radians(bevel)
    plane = Plane((math.cos(b) * math.cos(m), math.cos(b) * math.sin(m), math.sin(b)), 0.0)
    assert closing(plane).lengths == pytest.approx(90.0, abs=0.1)  # crown; settings to 0.1°


def test_every_compound_cut_is_tried_and_no_other() -> None:
    for name in SOME:
        job = job_of(name)
        told = " ".join(row[-1] for row in pair_rows(job))
        for part in job.assembly.parts:
            for cut in part.board.cuts:
                if len(cut.planes) == 1 and cut.kind != RIP:
                    angles = setting(cut.planes[0])
                    both = abs(angles.mitre) > SQUARE and abs(angles.bevel) > SQUARE
                    assert (f"{part.mark} {cut.name}" in told) or not both
        assert all(re.match(r"Cross\u00a0\d+|corner cut", row[0]) for row in pair_rows(job))


# ---- dados


@pytest.mark.parametrize("name", ("hay-barn-28ft", "octagon-dairy"))
def test_dados_are_where_the_slats_stand(name: str) -> None:
    """The slats' own solids, seen from the stile that they stand in."""
    job = job_of(name)
    for stile in job.assembly.of_kind("louver.stile"):
        (housing,) = housings(stile)
        place, edge = stile.pieces[0].placement, 0.0 if housing.edge != FAR_EDGE else stile.board.width
        slats = [(slat, piece) for slat in job.assembly.of_kind("louver.slat") for piece in slat.pieces
                 if piece.side == stile.pieces[0].side]
        found = []
        for slat, piece in sorted(slats, key=lambda each: each[1].index):
            points = [place.local_point(piece.placement.point(p)) for p in board_shell(slat.board).points]
            end = [p for p in points if housing_floor(stile) - 0.01 < p[2] < stile.board.thickness + 0.01]
            xs = [p[0] for p in end if abs(p[1] - edge) < 0.01]
            found.append((min(xs), max(xs)))
        fit = job.spec.dado_fit / math.cos(math.radians(housing.climb))
        assert [low for low, _ in housing.places] == pytest.approx([low for low, _ in found], abs=0.01)
        assert [high - fit for _, high in housing.places] == pytest.approx([high for _, high in found], abs=0.01)
        assert housing.width == pytest.approx(slats[0][0].board.thickness + job.spec.dado_fit, abs=1e-6)


def housing_floor(stile: Part) -> float:
    (housing,) = housings(stile)
    return stile.board.thickness - housing.depth


@pytest.mark.parametrize("name", ("hay-barn-28ft", "octagon-dairy"))
def test_the_gauge_reaches_along_a_wall(name: str) -> None:
    """Line and angle measured between corners of the finished stile."""
    for stile in job_of(name).assembly.of_kind("louver.stile"):
        (housing,) = housings(stile)
        cut = next(cut for cut in stile.board.cuts if cut.kind == DADO)
        wall = min((p for p in cut.planes if abs(p.normal[2]) < 0.5), key=lambda p: p.offset * p.normal[0])
        on = [p for p in board_shell(stile.board).points if abs(wall.height(p)) < 0.01]
        a, b = min(on, key=lambda p: p[1]), max(on, key=lambda p: p[1])
        assert math.dist(a[:2], b[:2]) == pytest.approx(housing.line, abs=0.01)
        rise = (b[0] - a[0]) * (1.0 if housing.edge != FAR_EDGE else -1.0)
        assert math.degrees(math.atan2(rise, b[1] - a[1])) == pytest.approx(housing.climb, abs=0.01)


def test_cuts_come_out_where_the_trim_hides_them() -> None:
    assembly = job_of("hay-barn-28ft").assembly
    for stile in assembly.of_kind("louver.stile"):
        assert stile.called(covered_edge(stile, assembly)) == "weather edge"
    assert all(row[-1].endswith("out at the weather edge") for row in gauge_rows(job_of("hay-barn-28ft")))


def test_both_hands_share_a_stick_and_one_setting() -> None:
    job = job_of("hay-barn-28ft")
    (stick,) = story_sticks(job)
    assert [part.hand for part in stick.parts] == ["left", "right"]
    assert len({row[2:6] for row in gauge_rows(job)}) == 1
    assert len(stick.rows) == 2 + 2 * job.sizes.louver.slats and stick.places == tuple(sorted(stick.places))
    (slat,) = slat_rows(job)
    assert slat[1] == "L9" and slat[3] == job.writer.fine.length(job.sizes.louver.slat_t + job.spec.dado_fit)


def test_a_mullion_is_struck_on_both_faces_at_the_stiles_places() -> None:
    job = job_from_values({**job_of("hay-barn-28ft").spec.values, "mullion": "always"})
    (mullion,) = job.assembly.of_kind("louver.mullion")
    a, b = housings(mullion)
    assert a.face != b.face and [*sum(a.places, ())] == pytest.approx([*sum(b.places, ())], abs=1e-6)
    assert mullion.called(covered_edge(mullion, job.assembly)) == "inner edge", "the screen lies on it"
    assert [row[0] for row in gauge_rows(job)].count(f"{mullion.mark}\u00a0×{job.count(mullion)}") == 2
    stile = housings(job.assembly.of_kind("louver.stile")[0])[0]
    assert [low for low, _ in a.places] == pytest.approx([low for low, _ in stile.places], abs=1e-6)


def test_a_line_beyond_the_blade_is_told() -> None:
    job = job_of("hay-barn-28ft")
    deep = job_from_values({"frame_stock": "2x6", "panel_depth": 95.0, "slat_angle": 60.0, "slat_stock": "1x10",
                            "trim_stock": "1x8", "stile_stock": "1x6", "width": 1200.0, "louver_height": 900.0})
    for each, far in ((job, False), (deep, True)):
        for row in gauge_rows(each):
            line = housings(part_of(each, row[0].split("\u00a0")[0]))[0].line
            assert ("further than a blade" in row[5]) == (line > BLADE_REACH) == far


def part_of(job: Job, mark: str) -> Part:
    return next(part for part in job.assembly.parts if part.mark == mark)


# ---- laps, rips, holes


@pytest.mark.parametrize("name", SOME[:2])
def test_laps_halve_the_wood(name: str) -> None:
    job = job_of(name)
    rows = lap_rows(job)
    assert all(row[0] == row[1] for row in rows)
    laps = sum(job.count(part) for part in job.assembly.parts for cut in part.board.cuts if cut.kind == HALF_LAP)
    assert sum(int(row[-1]) for row in rows) == laps


@pytest.mark.parametrize("name", SOME)
def test_the_fence_is_as_far_from_the_blade_as_the_sawn_board_shows(name: str) -> None:
    """The cut's face on the finished rip: its arris on the table's side, from the outermost wood at the fence."""
    seen = 0
    for part in job_of(name).assembly.parts:
        for number, cut in enumerate(part.board.cuts):
            if cut.kind != RIP:
                continue
            told = fence_distances(cut, part)
            assert told is not None
            plane, solid = cut.planes[0], part.board.after(number + 1)
            on = [p for p in corners(solid) if abs(plane.height(p)) < 1e-3]
            table = part.board.thickness if setting(plane).bevel > 0.0 else 0.0
            down = [p for p in on if abs(p[2] - table) < 1e-3]
            assert down, f"{part.mark} {cut.name}: the cut does not come through on the table"
            ys = [p[1] for p in corners(part.board.after(number))]
            fence = min(ys) if edge_of(cut) == FAR_EDGE else max(ys)
            spread = [abs(p[1] - fence) for p in down]
            assert min(told) == pytest.approx(min(spread), abs=0.01) and max(told) == pytest.approx(max(spread), abs=0.01)
            seen += 1
    assert seen


def test_every_rip_is_listed_under_its_stock() -> None:
    for name in SOME:
        job = job_of(name)
        for stock, rows in rip_setups(job):
            cuts = sum(job.count(part) for part in job.assembly.parts for cut in part.board.cuts
                       if cut.kind == RIP and part.stock.name == stock)
            assert sum(int(row[-1]) for row in rows if row[1] != "upright") == cuts
        assert {stock for stock, _ in rip_setups(job)} >= {part.stock.name for part in job.assembly.parts
                                                           for cut in part.board.cuts if cut.kind == RIP}


def test_every_hole_is_listed_the_widest_bit_first() -> None:
    job = job_of("hay-barn-28ft")
    holes = sum(job.count(part) for part in job.assembly.parts for cut in part.board.cuts if cut.kind == BORE)
    rows = drill_rows(job)
    assert sum(int(row[-1]) for row in rows) == holes == 3
    assert [row[2] for row in rows] == ["R2", "R11", "R11"] and "weep" in rows[-1][3]
    assert "before the piece is cut off" in rows[0][3] and "before the piece" not in rows[1][3]
    gable = drill_rows(job_of("cart-shed-gable"))
    assert [row[-1] for row in gable] == ["12", "12"] and "leaning" in gable[0][4]


# ---- the paper


def test_the_sheet_has_what_the_vent_has() -> None:
    for name in SOME:
        job = job_of(name)
        report = bench_report(job)
        heads = [block.text for block in walk(report.blocks) if isinstance(block, Heading) and block.level == 1]
        assert ("Drill list" in heads) == bool(drill_rows(job))
        assert {"Dado practice", "Half laps", "Rips by stock", "Test pairs for compound settings", "Order of cuts"} <= {*heads}
        assert all(block.rows for block in walk(report.blocks) if isinstance(block, Table))
        assert len(order_rows(job)) == len(job.assembly.parts)
        text = html.unescape(to_html(report))
        assert "try the test slat before any board" in text and "nan" not in text.lower().split()
