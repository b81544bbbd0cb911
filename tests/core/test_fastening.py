# SPDX-License-Identifier: LGPL-2.1-or-later
"""The fastening plan: a rule for every joint, screws that lie in the wood they join, in reach of a driver at their step."""

from __future__ import annotations

from dataclasses import replace
from functools import lru_cache

import pytest
from making import EXAMPLES, INCH, job_of

from louverwright.core.assembly import GLUED, Assembly
from louverwright.core.dry_fit import standing_cells
from louverwright.core.fastening import (
    INCH_LENGTHS,
    METRIC_LENGTHS,
    Driven,
    Fastened,
    count_along,
    driven_length,
    fastening,
    fastening_of,
    totals,
    unreachable,
)
from louverwright.core.fixings import FIXINGS, LIGHT_HOLD, NAIL, NONE, SCREW, SHANKS, fixing_of
from louverwright.core.geometry import Plane, Vec, add, scale, sub
from louverwright.core.joints import matches, rules
from louverwright.core.kinds import KINDS
from louverwright.core.seams import seams
from louverwright.core.sight import Body, between_lines, bodies
from louverwright.core.solid import Cell, box
from louverwright.core.steps import Order, order_of, steps, touching

THREE = [name for name in ("hay-barn-28ft", "octagon-dairy", "cart-shed-gable") if name in EXAMPLES]


@lru_cache(maxsize=4)
def plan_of(name: str) -> tuple[Fastened, ...]:
    job = job_of(name)
    return fastening_of(job.spec, job.assembly)


def inside(cells: tuple[Cell, ...], p: Vec, slack: float = 0.01) -> bool:
    return any(all(facet.plane.height(p) < slack for facet in cell) for cell in cells)


@pytest.mark.parametrize("name", EXAMPLES)
def test_every_joint_has_a_rule(name: str) -> None:
    assembly = job_of(name).assembly
    pieces = {piece.id: piece for piece in assembly.pieces}
    for joint in assembly.joints:
        a, b = pieces[joint.first], pieces[joint.second]
        assert fixing_of(a.kind, b.kind, a.side == b.side), (a.kind, b.kind)


def test_every_pair_that_may_join_has_a_rule_and_every_rule_is_of_use() -> None:
    used = set()
    for rule in (rule for name in THREE for rule in rules(job_of(name).spec)):
        for a in (kind.id for kind in KINDS if matches(kind.id, rule.first)):
            for b in (kind.id for kind in KINDS if matches(kind.id, rule.second)):
                for same_side in (True, False):
                    found = fixing_of(a, b, same_side)
                    assert found, (a, b, same_side)
                    used.add(found[0])
    assert [(row.first, row.second) for row in FIXINGS if row not in used] == [("louver.slat", "louver.head")]


def test_the_table_says_why_where_nothing_is_driven() -> None:
    assert all(row.words for row in FIXINGS if row.fastener == NONE)
    assert all(row.ways for row in FIXINGS if row.fastener in (SCREW, NAIL))


@pytest.mark.parametrize("name", THREE)
def test_nothing_that_wants_a_fastener_goes_without(name: str) -> None:
    plan = plan_of(name)
    assert [(each.first, each.second, each.blocked) for each in plan if not each.held] == []
    assert [(each.first, each.second) for each in plan
            if each.row.fastener in (SCREW, NAIL) and len(each.driven) < each.wanted] == []


@pytest.mark.parametrize("name", THREE)
def test_screws_lie_in_both_pieces_and_come_out_nowhere(name: str) -> None:
    assembly = job_of(name).assembly
    cells = {piece.id: standing_cells(assembly, piece) for piece in assembly.pieces}
    order = order_of(assembly)
    for each in plan_of(name):
        for driven in each.driven:
            before = add(driven.head, scale(driven.way, driven.through - 0.5))
            beyond = add(driven.head, scale(driven.way, driven.length - driven.hold + 0.5))
            assert any(inside(cells[p], before) and inside(cells[q], beyond)
                       for p, q in ((each.first, each.second), (each.second, each.first))), (each.first, each.second)
            tip = sub(driven.tip, scale(driven.way, 0.5))
            assert any(inside(cells[body], tip) for body in order.there_when(each.first, each.second))
            assert driven.hold >= LIGHT_HOLD - 1e-6 and driven.length in INCH_LENGTHS + METRIC_LENGTHS


@pytest.mark.parametrize("name", THREE)
def test_what_is_called_glued_is_a_glued_joint(name: str) -> None:
    told = [each for each in plan_of(name) if each.row.words.startswith("glued")]
    assert told and all(each.joint.kind == GLUED for each in told), [each.first for each in told if each.joint.kind != GLUED]


@pytest.mark.parametrize("name", THREE[:1])
def test_screws_keep_off_the_mast_and_off_each_other(name: str) -> None:
    assembly = job_of(name).assembly
    bores = [(piece.placement.point(bore.start),
              piece.placement.point(add(bore.start, scale(bore.direction, bore.length))), bore.diameter / 2.0)
             for part in assembly.parts for piece in part.pieces for bore in part.board.bores]
    assert bores
    lines: dict[str, list[tuple[Vec, Vec]]] = {}
    for each in plan_of(name):
        for driven in each.driven:
            line = (driven.head, driven.tip)
            assert all(between_lines(line, (a, b)) >= radius + 6.0 for a, b, radius in bores)
            for piece in (each.first, each.second):
                assert all(between_lines(line, other) >= 6.0 for other in lines.get(piece, []))
                lines.setdefault(piece, []).append(line)


@pytest.mark.parametrize("name", THREE)
def test_stage_joints_can_be_driven_when_the_stages_stand_on_each_other(name: str) -> None:
    """Measured again by points along the driver's axis, not by the plan's own lines."""
    job = job_of(name)
    assembly, reach = job.assembly, float(job.spec.driver_length)
    cells = {piece.id: standing_cells(assembly, piece) for piece in assembly.pieces}
    stage = {piece.id: piece.kind.split(".")[0] for piece in assembly.pieces}
    joined = [each for each in plan_of(name) if stage[each.first] != stage[each.second] and each.driven]
    assert {frozenset((stage[each.first], stage[each.second])) for each in joined} == {
        frozenset(("base", "louver")), frozenset(("louver", "roof"))}
    for each in joined:
        there = order_of(assembly).there_when(each.first, each.second)
        assert all(stage[name] != "roof" for name in there) or "roof" in (stage[each.first], stage[each.second])
        for driven in each.driven:
            for number in range(2, 12):
                p = sub(driven.head, scale(driven.way, driven.counterbore + reach * number / 12.0))
                assert not any(inside(cells[piece], p, -0.01) for piece in there), (each.first, each.second)


def block(low: Vec, high: Vec) -> Body:
    first = bodies(job_of(EXAMPLES[0]).assembly)
    return replace(next(iter(first.values())), cells=(box(low, high),), low=low, high=high)


def test_a_piece_in_the_drivers_way_is_told() -> None:
    driven = Driven((0.0, 0.0, 0.0), (0.0, 0.0, -1.0), 50.0, 4.2, 19.0, 31.0, 0.0, 0.0, 0.0)
    wood = block((-50.0, -50.0, -80.0), (50.0, 50.0, 0.0))
    assert unreachable(driven, [wood], 280.0) == ""
    over = block((-50.0, -50.0, 200.0), (50.0, 50.0, 220.0))
    assert unreachable(driven, [wood, over], 280.0) == over.piece.id
    assert unreachable(driven, [wood, over], 190.0) == ""
    beside_bit, beside_driver = block((10.0, -50.0, 0.0), (60.0, 50.0, 90.0)), block((20.0, -50.0, 110.0), (60.0, 50.0, 150.0))
    assert unreachable(driven, [wood, beside_bit], 280.0) == ""
    assert unreachable(driven, [wood, beside_driver], 280.0)


def test_a_soffit_put_on_too_early_leaves_the_stage_joint_out_of_reach(monkeypatch: pytest.MonkeyPatch) -> None:
    assembly = job_of(EXAMPLES[0]).assembly
    everything = frozenset(piece.id for piece in assembly.pieces)
    kinds = {piece.id: piece.kind for piece in assembly.pieces}
    side = {piece.id: piece.side for piece in assembly.pieces}
    joint = next(each for each in assembly.joints if kinds[each.first] == "roof.bedmould" and side[each.first] == 0
                 and kinds[each.second] == "louver.frieze")
    alone = Assembly(assembly.parts, (joint,), assembly.left_out)
    (good,) = fastening(alone, INCH_LENGTHS, 280.0)
    assert good.held and len(good.driven) == good.wanted
    monkeypatch.setattr(Order, "there_when", lambda self, first, second: everything)
    (lost,) = fastening.__wrapped__(alone, INCH_LENGTHS, 280.0)
    assert not lost.held and kinds[lost.blocked] in ("roof.soffit", "roof.fascia")


def test_lengths_and_counts() -> None:
    # 3/4 in ply on 1 1/2 in stock: one and a half times the ply, so the 2 in screw; through both nothing longer than 2 1/8 in.
    assert driven_length(19.05, 38.1, INCH_LENGTHS, 9.0, 1.5) == pytest.approx(2.0 * INCH)
    assert driven_length(19.05, 19.05, INCH_LENGTHS, 9.0, 1.5) == pytest.approx(1.25 * INCH)
    assert driven_length(19.05, 11.0, INCH_LENGTHS, 9.0, 1.5) == 0.0
    assert count_along(600.0, 152.0, 2) == 5 and count_along(20.0, 152.0, 2) == 1
    # ANSI/ASME B18.6.1: D = 0.060 + 0.013 n inches.
    for (_, shank), gauge in zip(SHANKS, (6, 8, 10), strict=True):
        assert shank == pytest.approx((0.060 + 0.013 * gauge) * INCH, abs=0.05)


def test_totals_are_the_plans_own() -> None:
    plan = plan_of(EXAMPLES[0])
    assert sum(totals(plan).values()) == sum(len(each.driven) or each.wanted for each in plan if each.row.fastener != NONE)


@pytest.mark.parametrize("name", EXAMPLES)
def test_each_piece_finds_what_it_stands_on(name: str) -> None:
    assembly = job_of(name).assembly
    touches, there = touching(assembly), dict.fromkeys(("base", "louver", "roof"), frozenset[str]())
    seen: list[str] = []
    for step in steps(assembly):
        for unit in step.units:
            ids = [piece.id for piece in unit.pieces]
            assert unit.held
            assert not there[step.stage] or any(touches[piece] & there[step.stage] for piece in ids), ids
            assert all(any(touches[piece] & {*ids[:number], *there[step.stage]} for number, piece in [(n, ids[n])])
                       for n in range(1, len(ids)) for number in [n]), ids
            there[step.stage] |= set(ids)
            seen += ids
    assert sorted(seen) == sorted(piece.id for piece in assembly.pieces)


def test_the_soffit_waits_for_the_roof() -> None:
    assembly = job_of(EXAMPLES[0]).assembly
    assert [step.rule.key for step in steps(assembly)][-1] == "roof.soffit"
    soffit = next(piece.id for piece in assembly.pieces if piece.kind == "roof.soffit")
    mould = next(piece.id for piece in assembly.pieces if piece.kind == "roof.bedmould")
    frieze = next(piece.id for piece in assembly.pieces if piece.kind == "louver.frieze")
    order = order_of(assembly)
    assert soffit not in order.there_when(mould, frieze)
    assert order.there_when(soffit, mould) == {piece.id for piece in assembly.pieces if "soffit" not in piece.id} | {soffit}


def test_seams_are_the_joints_areas() -> None:
    """A lap of two planks that are as wide as each other: its floor and its shoulders, from the saw's own measures."""
    job = job_of(EXAMPLES[0])
    lap = next(seam for seam in seams(job.assembly) if "rail" in seam.joint.second and "leg" in seam.joint.first)
    base = job.sizes.base
    assert lap.main.area <= base.frame_w ** 2 + 1.0
    assert lap.main.length == pytest.approx(base.frame_w, abs=0.5)
    for seam in seams(job.assembly)[::17]:
        station = sum(seam.main.span(seam.main.along)) / 2.0
        chord = seam.main.chord(station)
        assert chord is None or chord[1] - chord[0] <= seam.main.width + 1e-6
        height = Plane.through(seam.main.polygons[0][0], seam.main.normal).height(seam.main.point(station, 0.0))
        assert height == pytest.approx(0.0, abs=1e-3)
