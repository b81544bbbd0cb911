# SPDX-License-Identifier: LGPL-2.1-or-later
"""Width by the ridge, and the air: rules of the trade and of the published guides."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from louverwright.core.sizing import (
    LEAST_RATIO,
    SCREEN_FACTORS,
    USUAL_RATIO,
    AirReport,
    net_free_area,
    target_area,
    target_from_building,
    vents_advised,
    width_from_ridge,
)

INCH, FOOT = 25.4, 304.8
areas = st.floats(0.0, 1e7)


# ---- width


# Common practice, a built vent: 29 ft of ridge at 1.25 in for each foot is 36.25 in by the rule, and was built 36.
def test_the_width_of_a_built_vent_follows_the_rule() -> None:
    assert width_from_ridge(29.0 * FOOT, 1.25) == pytest.approx(36.25 * INCH)


# Common practice: 1.25 to 1.5 in for each foot of ridge, which is 104 to 125 mm for each metre.
@pytest.mark.parametrize(("rule", "mm_in_a_metre"), [(1.25, 104), (1.5, 125)])
def test_the_rule_in_millimetres_for_each_metre(rule: float, mm_in_a_metre: int) -> None:
    assert round(width_from_ridge(1000.0, rule)) == mm_in_a_metre


@given(st.floats(1_000.0, 100_000.0), st.floats(1.0, 1.5), st.integers(1, 24))
def test_vents_share_the_ridge(ridge: float, rule: float, vents: int) -> None:
    assert vents * width_from_ridge(ridge, rule, vents) == pytest.approx(width_from_ridge(ridge, rule))


# Common practice: several vents where the ridge is longer than 48 to 50 ft.
@pytest.mark.parametrize(("feet", "vents"), [(10.0, 1), (29.0, 1), (48.0, 1), (50.1, 2), (96.0, 2), (97.0, 3)])
def test_a_long_ridge_takes_several_vents(feet: float, vents: int) -> None:
    assert vents_advised(feet * FOOT) == vents


# ---- targets


# IRC R806.2 (2012 text, quoted at hansenpolebuildings.com, adequate eave and ridge ventilation): 1/150 of the area of
# the vented space, 1/300 under conditions.
def test_targets_for_attics_of_dwellings() -> None:
    assert target_area(1500.0) == 10.0    # 1500 sq ft of attic: 10 sq ft of net free area
    assert target_area(1500.0, LEAST_RATIO) == 5.0
    assert (USUAL_RATIO, LEAST_RATIO) == (150.0, 300.0)


# Extension advice on barn attics (docsbay.net, ventilation of barn attic space): 1 sq in for each sq ft of ceiling.
def test_the_advice_for_barn_attics_is_a_ratio_too() -> None:
    assert target_area(1200.0 * FOOT**2, 144.0) == pytest.approx(1200.0 * INCH**2)


# The same advice for a ridge that is open all along: 2 in of slot for 10 ft of building width.
def test_a_vent_that_stands_for_an_open_ridge() -> None:
    assert target_from_building(10.0 * FOOT, 1.0 * FOOT) == pytest.approx(2.0 * INCH * FOOT)
    assert target_from_building(30.0 * FOOT, 40.0 * FOOT, 2) == pytest.approx(6.0 * INCH * 20.0 * FOOT)


# ---- louvers


# JLC field guide to roof ventilation: gross vent area for 1 of net free area, louvers apart.
@pytest.mark.parametrize(("screen", "gross"), [("1/4 in hardware cloth", 1.0), ("1/8 in mesh", 1.25), ("#16 mesh", 2.0)])
def test_screens_agree_with_the_published_multipliers(screen: str, gross: float) -> None:
    assert SCREEN_FACTORS[screen] * gross == pytest.approx(1.0)


def test_no_screen_counts_the_louver_a_second_time() -> None:
    # The guide's rows for wood louvers (2.00, 2.25, 3.00) contain the louver; its gaps are measured here instead.
    assert len(SCREEN_FACTORS) == 3
    assert not {round(1.0 / factor, 2) for factor in SCREEN_FACTORS.values()} & {2.25, 3.0}


# AMCA 500-L (text at vanman.com.cn): free area = L·(A + B + N·C). Worked: a frame 24 × 24 in, clear width 22.5, head and
# sill gap 1.0, seven gaps of 1.018: 1.426 sq ft, 35.6 % of the frame.
def test_louvers_are_counted_as_the_test_standard_counts_them() -> None:
    width = 22.5 * INCH
    free = net_free_area(1.018 * INCH, width, 7, 1) + net_free_area(1.0 * INCH, width, 2, 1)
    assert free / FOOT**2 == pytest.approx(1.426, abs=0.0005)
    assert free / (24.0 * INCH) ** 2 == pytest.approx(0.356, abs=0.0005)


@given(st.floats(0.0, 100.0), st.floats(0.0, 2000.0), st.integers(0, 60), st.integers(0, 8), st.floats(0.1, 1.0))
def test_free_area_grows_with_each_of_its_factors(gap: float, width: float, gaps: int, sides: int, share: float) -> None:
    free = net_free_area(gap, width, gaps, sides, share)
    assert 0.0 <= free <= net_free_area(gap, width, gaps, sides)
    assert net_free_area(gap, width, gaps + 1, sides, share) >= free
    assert net_free_area(gap, width, gaps, 2 * sides, share) == pytest.approx(2.0 * free)


def test_closed_slats_let_nothing_through() -> None:
    assert net_free_area(0.0, 500.0, 5, 4) == net_free_area(-3.0, 500.0, 5, 4) == net_free_area(9.0, -1.0, 5, 4) == 0.0
    assert net_free_area(-3.0, -500.0, 5, 4) == 0.0


# ---- the report


# AMCA 500-L (text at vanman.com.cn): combined openings in series count the smaller area.
@given(areas, areas, areas)
def test_openings_in_series_count_as_the_least(louvers: float, throat: float, roof: float) -> None:
    air = AirReport(louvers, throat, roof)
    assert air.least == sorted((louvers, throat, roof))[0]
    named = {"louvers": louvers, "throat": throat, "roof opening": roof}
    assert named[air.narrowest] == air.least
    assert air.meets_target and air.missing == 0.0


@pytest.mark.parametrize(("target", "meets", "missing"), [(0.0, True, 0.0), (3.0, True, 0.0), (3.5, False, 0.5)])
def test_the_least_is_held_against_the_target(target: float, meets: bool, missing: float) -> None:
    air = AirReport(5.0, 4.0, 3.0, target)
    assert (air.narrowest, air.meets_target, air.missing) == ("roof opening", meets, missing)


def test_of_equal_openings_the_first_is_named() -> None:
    assert AirReport(3.0, 3.0, 3.0).narrowest == "louvers"
    assert AirReport(5.0, 3.0, 3.0).narrowest == "throat"


# ---- refusals


@pytest.mark.parametrize(("make", "words"), [
    (lambda: width_from_ridge(0.0, 1.25), "length of ridge is 0 mm; it must be above 0"),
    (lambda: width_from_ridge(math.nan, 1.25), "length of ridge is nan mm"),
    (lambda: width_from_ridge(9000.0, -1.0), "width rule is -1 in for each foot"),
    (lambda: width_from_ridge(9000.0, 1.25, 0), "number of vents is 0;"),
    (lambda: vents_advised(-1.0), "length of ridge is -1 mm"), (lambda: vents_advised(math.inf), "is inf mm"),
    (lambda: target_area(-5.0), "floor area is -5;"), (lambda: target_area(5.0, 0.0), "ratio is 0;"),
    (lambda: target_from_building(0.0, 9000.0), "width of the building is 0 mm"),
    (lambda: target_from_building(9000.0, 9000.0, 0), "number of vents is 0;"),
    (lambda: net_free_area(9.0, 500.0, -1, 4), "-1 gaps on 4 sides"),
    (lambda: net_free_area(9.0, 500.0, 5, 4, 0.0), "screen factor is 0; it must be above 0 and at most 1"),
    (lambda: net_free_area(9.0, 500.0, 5, 4, 1.1), "screen factor is 1.1"),
    (lambda: net_free_area(9.0, 500.0, 5, 4, math.nan), "screen factor is nan"),
])
def test_what_makes_no_sense_is_refused_with_a_sentence(make, words: str) -> None:
    with pytest.raises(ValueError) as caught:
        make()
    assert words in str(caught.value) and str(caught.value).endswith(".")
