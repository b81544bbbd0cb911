# SPDX-License-Identifier: LGPL-2.1-or-later
"""Several vents on one ridge: where they stand, how they are sized, and what is refused."""

from __future__ import annotations

import itertools
import sys
from pathlib import Path
from typing import Any

import pytest

sys.path.append(str(Path(__file__).resolve().parent))
from making import spec_of

from louverwright.core.checks import check
from louverwright.core.dimensions import sizes
from louverwright.core.figures import figures
from louverwright.core.plan import Plan
from louverwright.core.row import end_distance, positions, reach_along, spacing
from louverwright.core.spec import Spec, SpecError, make_spec
from louverwright.places import stock_list

FOOT = 304.8
LONG = {"ridge_length": 36_000.0, "vents": 3, "width": 1_200.0}


def unchecked(**values: Any) -> Spec:
    return make_spec(values, stock_list("us"))


def refused(**values: Any) -> list[str]:
    """The sentences that a spec is refused with."""
    with pytest.raises(SpecError) as error:
        spec_of(**{**LONG, **values})
    return str(error.value).splitlines()


# ---- places


def test_vents_stand_in_the_middle_of_their_shares() -> None:
    spec = spec_of(**LONG)
    assert positions(spec) == pytest.approx((6_000.0, 18_000.0, 30_000.0))
    assert (end_distance(spec), spacing(spec)) == pytest.approx((6_000.0, 12_000.0))


def test_a_given_end_distance_leads() -> None:
    spec = spec_of(**{**LONG, "ridge_length": 120.0 * FOOT, "end_distance": 18.0 * FOOT})
    assert positions(spec) == pytest.approx((18.0 * FOOT, 60.0 * FOOT, 102.0 * FOOT))


@pytest.mark.parametrize("vents", [1, 2, 3, 5, 9])
@pytest.mark.parametrize("end", [0.0, 1_500.0])
def test_places_are_even_and_the_same_from_both_ends(vents: int, end: float) -> None:
    spec = spec_of(**{**LONG, "vents": vents, "end_distance": end})
    places = positions(spec)
    assert len(places) == vents
    assert [36_000.0 - place for place in reversed(places)] == pytest.approx(list(places))
    assert [b - a for a, b in itertools.pairwise(places)] == pytest.approx([spacing(spec)] * (vents - 1))
    assert places[0] == pytest.approx(18_000.0 if vents == 1 else end or 18_000.0 / vents)


def test_one_vent_needs_no_ridge() -> None:
    spec = spec_of(width=900.0)
    assert (positions(spec), spacing(spec)) == ((), 0.0)
    assert positions(spec_of(ridge_length=9_000.0, width=900.0, end_distance=2_000.0)) == (4_500.0,)


def test_each_is_sized_on_its_share() -> None:
    three = spec_of(ridge_length=90.0 * FOOT, vents=3, width=0.0)
    assert sizes(three).base.width == pytest.approx(sizes(spec_of(ridge_length=30.0 * FOOT, width=0.0)).base.width)
    assert sizes(three).base.width == pytest.approx(30.0 * 1.25 * 25.4)


def test_figures_for_all() -> None:
    one, all_three = figures(spec_of(width=1_200.0)), figures(spec_of(**LONG))
    assert all_three["pieces"] == one["pieces"]
    assert all_three["pieces_of_all_vents"] == 3 * one["pieces"]
    assert all_three["weight_of_all_vents"] == pytest.approx(3.0 * one["total_weight"])
    assert (one["vent_spacing"], all_three["vent_spacing"]) == pytest.approx((0.0, 12_000.0))
    assert one["pieces_of_all_vents"] == one["pieces"]


@pytest.mark.parametrize(("plan", "reach"), [
    (Plan(4), 100.0), (Plan(4, True), 141.4214), (Plan(6), 100.0), (Plan(6, True), 115.4701), (Plan(8), 100.0),
    (Plan(8, True), 108.2392)])
def test_a_corner_reaches_further_along_the_ridge_than_a_side(plan: Plan, reach: float) -> None:
    assert reach_along(plan, 100.0) == pytest.approx(reach, abs=1e-4)


# ---- refusals


def test_several_vents_want_a_ridge() -> None:
    assert refused(ridge_length=0.0) == ["Ridge length is not given: 3 vents share the ridge and are spaced along it. "
                                         "Give the length of unbroken ridge, or make one vent."]


def test_a_roof_must_not_stand_out_over_the_ridges_end() -> None:
    half = sizes(spec_of(**LONG)).eave(0)
    (line,) = refused(end_distance=400.0)
    assert line.startswith("End distance is 400 mm: the vent's roof reaches")
    assert half > 600.0
    assert not check(unchecked(**LONG, end_distance=half))
    assert check(unchecked(**LONG, end_distance=half - 0.2))


def test_end_distances_must_not_meet() -> None:
    (line,) = refused(end_distance=18_000.0)
    assert line.startswith("End distance is 18000 mm: it reaches the middle of the ridge, 18000 mm from each end")


def test_vents_must_not_crowd() -> None:
    (line,) = refused(end_distance=17_000.0)
    assert line.startswith("End distance is 17000 mm: the 3 vents would stand 1000 mm from axis to axis and need 1500 mm")
    (line,) = refused(vents=24, ridge_length=30_000.0)
    assert line.startswith("Vents is 24: they would stand 1250 mm from axis to axis and need 1500 mm")


def test_wide_roofs_must_not_overlap() -> None:
    least = 2.0 * sizes(unchecked(**LONG, overhang=300.0)).eave(0)
    assert least > 1_500.0
    line = next(line for line in refused(overhang=300.0, end_distance=16_300.0) if line.startswith("End distance"))
    assert "would stand 1700 mm from axis to axis and need" in line


@pytest.mark.parametrize("values", [
    {"end_distance": 400.0}, {"end_distance": 18_000.0}, {"end_distance": 17_900.0}, {"end_distance": 25_000.0},
    {"vents": 24, "ridge_length": 30_000.0}, {"vents": 20, "end_distance": 5_000.0}], ids=str)
def test_the_cure_that_is_named_cures(values: dict[str, Any]) -> None:
    (finding,) = check(unchecked(**{**LONG, **values}))
    number = float(finding.cure.split(" mm")[0].split(" or ")[0].split()[-1])
    cured = {finding.field: int(number) if finding.field == "vents" else number}
    assert check(unchecked(**{**LONG, **values, **cured})) == ()
    more = {"vents": 1} if finding.field == "vents" else {"end_distance": -1.0 if "less" not in finding.cure else 1.0}
    worse = {name: cured[name] + step for name, step in more.items()}
    assert check(unchecked(**{**LONG, **values, **worse}))
