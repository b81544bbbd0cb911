# SPDX-License-Identifier: LGPL-2.1-or-later
"""The lift plan's figures: the published lifting equation, statics, the published wind formula, and the vent's own pieces."""

from __future__ import annotations

import math

import pytest
from making import EXAMPLES, job_of, spec_of, vent

from louverwright.core.assembly import board_shell
from louverwright.core.hull import hull
from louverwright.core.lifting import (
    GRAVITY,
    INCH,
    POUND,
    Load,
    each_lifts,
    loads,
    passes,
    people,
    recommended_weight,
    sling_force,
    velocity_pressure,
    wind_forces,
)
from louverwright.core.parameters import BY_NAME

#: Square feet in a square metre, pounds of force in a newton, miles an hour in m/s.
FT2, LBF, MPH = 10.763910, 1.0 / 4.4482216, 0.44704


@pytest.mark.parametrize(("h", "v", "d", "turned", "wanted"), [
    (10.0, 30.0, 10.0, 0.0, 51.00),
    (15.0, 30.0, 30.0, 0.0, 29.92),
    (20.0, 60.0, 30.0, 0.0, 17.39),
])
def test_the_lifting_equation(h: float, v: float, d: float, turned: float, wanted: float) -> None:
    """NIOSH 94-110, RWL = LC · HM · VM · DM · AM with LC 51 lb; the values are worked from that formula (lb, in)."""
    assert recommended_weight(h * INCH, v * INCH, d * INCH, turned) / POUND == pytest.approx(wanted, abs=0.005)


@pytest.mark.parametrize(("held", "start", "lift", "turned"), [(26.0, 30.0, 10.0, 0.0), (10.0, 71.0, 10.0, 0.0),
                                                               (10.0, 30.0, 71.0, 0.0), (10.0, 30.0, 10.0, 136.0)])
def test_beyond_its_reach_the_equation_allows_nothing(held: float, start: float, lift: float, turned: float) -> None:
    assert recommended_weight(held * INCH, start * INCH, lift * INCH, turned) == 0.0


def test_the_parameter_says_what_the_equation_gives() -> None:
    usual = each_lifts(spec_of())
    assert BY_NAME["lift_limit"].auto.startswith(f"{usual:.1f},")
    assert each_lifts(spec_of(lift_limit=20.0)) == 20.0


def test_turning_makes_it_less_and_nothing_makes_it_more_than_the_constant() -> None:
    """AM = 1 − 0.0032 A: 90° leave 0.712 (NIOSH 94-110)."""
    straight = recommended_weight(10 * INCH, 30 * INCH, 10 * INCH)
    assert recommended_weight(10 * INCH, 30 * INCH, 10 * INCH, 90.0) == pytest.approx(0.712 * straight)
    assert recommended_weight(INCH, 30 * INCH, INCH) == pytest.approx(51.0 * POUND)


@pytest.mark.parametrize(("mph", "psf"), [(105.0, 23.51), (115.0, 28.20), (140.0, 41.80)])
def test_velocity_pressure(mph: float, psf: float) -> None:
    """ASCE 7, qh = 0.00256 · Kz · Kzt · Kd · Ke · V² (psf, mph), Kz 0.98 and Kd 0.85 from memory; 0.613 is its SI constant."""
    assert velocity_pressure(mph * MPH) * LBF / FT2 == pytest.approx(psf, rel=0.002)


@pytest.mark.parametrize(("mph", "lateral", "uplift"), [(105.0, 536.0, 317.0), (140.0, 953.0, 564.0)])
def test_force_is_pressure_by_coefficient_by_area(mph: float, lateral: float, uplift: float) -> None:
    """12 ft² at GCr 1.9 and 9 ft² at GCr 1.5, a published worked table (engineeringexpress.com on ASCE 7-10)."""
    pressure = velocity_pressure(mph * MPH)
    assert pressure * 1.9 * 12.0 / FT2 * LBF == pytest.approx(lateral, rel=0.003)
    assert pressure * 1.5 * 9.0 / FT2 * LBF == pytest.approx(uplift, rel=0.003)


def test_the_vents_own_areas_take_the_wind() -> None:
    job = job_of(EXAMPLES[0])
    whole = loads(job.assembly)[-1]
    lateral, uplift = wind_forces(job.sizes, whole, 40.0)
    out = job.figures
    side = max(whole.size[0], whole.size[1]) * (out["overall_height"] - 0.0)
    assert lateral == pytest.approx(velocity_pressure(40.0) * 1.9 * side * 1e-6, rel=0.03)    # sheathing apart
    assert uplift == pytest.approx(velocity_pressure(40.0) * 1.5 * out["eave_width"] ** 2 * 1e-6, rel=1e-6)


@pytest.mark.parametrize("name", EXAMPLES)
def test_the_roof_takes_the_wind_over_its_whole_plan(name: str) -> None:
    """The area inside the outermost corners of fascias and barge boards, by the shoelace formula, and the width over them."""
    job = job_of(name)
    rim = [piece.placement.point(p)[:2] for part in job.assembly.parts if part.kind.id in ("roof.fascia", "roof.barge")
           for piece in part.pieces for p in board_shell(part.board).points]
    corners = hull(rim)
    area = sum(a[0] * b[1] - b[0] * a[1] for a, b in zip(corners, (*corners[1:], corners[0]), strict=True)) / 2.0
    _, uplift = wind_forces(job.sizes, loads(job.assembly)[-1], 40.0)
    assert uplift == pytest.approx(velocity_pressure(40.0) * 1.5 * area * 1e-6, rel=1e-3)
    across = min(max(p[i] for p in rim) - min(p[i] for p in rim) for i in (0, 1))
    assert job.figures["eave_width"] == pytest.approx(across, abs=0.01)


def test_the_loads_are_the_pieces() -> None:
    job = job_of(EXAMPLES[0])
    found, out = loads(job.assembly), job.figures
    assert [load.name for load in found] == ["Base", "Louver stage", "Roof stage", "The whole vent"]
    assert [load.weight for load in found] == pytest.approx(
        [out["base_weight"], out["louver_weight"], out["roof_weight"], out["total_weight"]])
    moment = sum(load.weight * load.centre[2] for load in found[:-1])
    assert moment == pytest.approx(out["total_weight"] * out["centre_height"])
    assert found[1].size[0] == pytest.approx(found[1].size[1])
    assert all(load.off_axis < 1e-6 for load in found)    # a square vent on a symmetrical roof balances on its axis
    assert all(0.0 < load.loose < load.weight for load in found)


def test_unequal_slopes_put_the_bases_centre_off_the_axis() -> None:
    base = loads(vent(pitch_left=45.0, pitch_right=20.0))[0]
    assert base.off_axis > 1.0 and base.centre[1] > 0.0    # the legs of the steeper slope, on the left, are longer


@pytest.mark.parametrize(("weight", "each", "wanted"), [(10.0, 13.6, 2), (40.8, 13.6, 3), (40.9, 13.6, 4), (100.0, 13.6, 8)])
def test_people(weight: float, each: float, wanted: int) -> None:
    assert people(weight, each) == wanted


def test_slings_by_statics() -> None:
    """Two legs at 60° from the level carry W / (2 sin 60°) each; a centre a quarter of the spread off puts half as much again
    on the near ones."""
    even = Load("", 100.0, (1000.0, 1000.0, 1000.0), (0.0, 0.0, 500.0), 0.0, 0.0)
    assert sling_force(even, 800.0) == pytest.approx(100.0 * GRAVITY / (2.0 * math.sqrt(3.0) / 2.0))
    odd = Load("", 100.0, (1000.0, 1000.0, 1000.0), (120.0, 160.0, 500.0), 0.0, 0.0)
    assert sling_force(odd, 800.0) == pytest.approx(1.5 * sling_force(even, 800.0))


def test_the_narrower_side_goes_through() -> None:
    load = Load("", 100.0, (1200.0, 900.0, 2000.0), (0.0, 0.0, 0.0), 0.0, 0.0)
    assert passes(load, 900.0) and not passes(load, 899.0)
