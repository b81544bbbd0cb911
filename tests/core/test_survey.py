# SPDX-License-Identifier: LGPL-2.1-or-later
"""The survey: pitches and their error from what is measured on the roof.

Angles of pitches are checked against a published rafter table (daveosborne.com, rafter table; angles to a quarter of a
degree), and the ridge's included angle against the base saddles of common practice. Errors are checked against a search
over all readings that the gauge or tape allows, which knows no formula for them.
"""

from __future__ import annotations

import math
from itertools import product

import pytest
from hypothesis import given
from hypothesis import strategies as st

from louverwright.core.parameters import BY_NAME
from louverwright.core.survey import (
    LARGEST_ERROR,
    STEEPEST,
    Survey,
    SurveyError,
    from_ridge_angle,
    from_ridge_angle_and_one_slope,
    from_rise_and_run,
    from_two_slopes,
    opening_at_foot,
    survey_from_mapping,
)

INCH = 25.4
pitches = st.floats(0.0, 74.9)
errors = st.floats(0.0, 2.4)


def pitch(rise: float, run: float = 12.0) -> float:
    return math.degrees(math.atan2(rise, run))


def refused(mapping: object, unit: str = "mm") -> dict[str, str]:
    """Key and sentence of every finding that a scenario's survey is refused with."""
    with pytest.raises(SurveyError) as caught:
        survey_from_mapping(mapping, unit)  # type: ignore[arg-type]
    findings = caught.value.findings
    assert all(sentence.endswith(".") for _, sentence in findings)
    assert str(caught.value) == "\n".join(sentence for _, sentence in findings)
    assert len({key for key, _ in findings}) == len(findings)
    return dict(findings)


# ---- the three ways


# Included angle of the V over the ridge, common practice for a base's saddle: 180° less both pitches (worked figures).
@pytest.mark.parametrize(("rise", "included"), [(6, 126.870), (10, 100.389), (12, 90.000)])
def test_the_ridge_angle_gives_the_pitch_of_both_slopes(rise: int, included: float) -> None:
    survey = from_ridge_angle(included)
    assert survey.pitch_left == survey.pitch_right == pytest.approx(pitch(rise), abs=0.0005)


# A published rafter table (daveosborne.com), its angles to a quarter of a degree.
@pytest.mark.parametrize(("rise", "published"), [(2, 9.5), (4, 18.5), (6, 26.5), (8, 33.75), (10, 39.75), (12, 45.0)])
def test_rise_and_run_agree_with_a_published_rafter_table(rise: int, published: float) -> None:
    survey = from_rise_and_run(rise * INCH, 12.0 * INCH, rise * INCH, 12.0 * INCH)
    assert survey.pitch_left == survey.pitch_right == pytest.approx(published, abs=0.125)


def test_half_of_the_gauges_error_falls_on_each_of_two_equal_slopes() -> None:
    assert from_ridge_angle(112.6, 0.5).error == 0.25


@given(pitches, errors)
def test_the_error_of_a_ridge_angle_is_all_that_the_gauge_allows(slope: float, error: float) -> None:
    survey = from_ridge_angle(180.0 - 2.0 * slope, error)
    read = [90.0 - (180.0 - 2.0 * slope + off) / 2.0 for off in (-error, 0.0, error)]
    assert survey.error == pytest.approx(max(abs(each - slope) for each in read), abs=1e-9)
    assert survey.pitch_left == survey.pitch_right == pytest.approx(slope, abs=1e-9)


@given(pitches, pitches, errors, st.sampled_from(["left", "right"]))
def test_an_angle_and_one_slope_give_the_other_with_both_errors(left: float, right: float, error: float,
                                                                side: str) -> None:
    slope, other = (left, right) if side == "left" else (right, left)
    survey = from_ridge_angle_and_one_slope(180.0 - left - right, slope, side, error)
    assert (survey.pitch_left, survey.pitch_right) == pytest.approx((left, right), abs=1e-9)
    off = [180.0 - (180.0 - left - right + one) - (slope + two) - other for one, two in product((-error, error), repeat=2)]
    assert survey.error == pytest.approx(max(map(abs, off)), abs=1e-9)


@given(pitches, pitches, errors)
def test_two_slopes_are_taken_as_they_are_read(left: float, right: float, error: float) -> None:
    assert from_two_slopes(left, right, error) == Survey(left, right, error, from_two_slopes(left, right, error).words)


@given(st.floats(0.0, 3.0), st.floats(0.0, 3.0), st.floats(300.0, 900.0), st.floats(0.0, 6.0))
def test_the_tapes_error_is_the_most_that_the_slope_may_turn(steep: float, other: float, run: float,
                                                             error: float) -> None:
    survey = from_rise_and_run(steep * run, run, other * run, run, error)
    offs = [error * step / 4.0 for step in range(-4, 5)]
    turned = [abs(pitch(slope * run + up, run + along) - pitch(slope * run, run))
              for slope in (steep, other) for up, along in product(offs, repeat=2)]
    assert survey.error == pytest.approx(max(turned), abs=1e-9)


def test_the_words_name_readings_pitches_and_errors() -> None:
    assert from_ridge_angle(112.6, 0.5).words == (
        "Included angle at the ridge 112.6° ± 0.5°: both slopes 33.7° (8:12), each ± 0.25°.")
    assert from_ridge_angle_and_one_slope(124.7, pitch(9), "left", 0.5).words == (
        "Included angle at the ridge 124.7° and left slope 36.9°, each ± 0.5°: left 36.9° (9:12), right 18.4° (4:12), "
        "the slope not read ± 1.0°.")
    assert from_two_slopes(pitch(9), pitch(4), 0.5).words == (
        "Read on the slopes: left 36.9° (9:12), right 18.4° (4:12), each ± 0.5°.")
    assert from_rise_and_run(457.2, 609.6, 203.2, 609.6, INCH / 16.0).words == (
        "Rise over run: left 36.9° (9:12), right 18.4° (4:12), tape ± 1.6 mm, which is ± 0.18°.")


# ---- what an error opens


def test_what_opens_at_the_foot_is_the_drop_of_the_steeper_slope() -> None:
    # By construction: the foot is cut to a line of pitch p, the roof falls away at p + δ; both start at the ridge.
    assert opening_at_foot(450.0, 33.69, 0.5) == pytest.approx(
        450.0 * math.sin(math.radians(0.5)) / (math.cos(math.radians(33.69)) * math.cos(math.radians(34.19))))
    # A roof of 12 in 12 taken for one of 11 in 12 is 1 in lower for each 12 in that the foot stands from the ridge.
    assert opening_at_foot(450.0, pitch(11), pitch(12) - pitch(11)) == pytest.approx(450.0 / 12.0)


@given(st.floats(100.0, 1800.0), pitches, st.floats(0.0, LARGEST_ERROR))
def test_more_error_or_width_opens_more(half: float, slope: float, error: float) -> None:
    opening = opening_at_foot(half, slope, error)
    assert opening >= 0.0
    assert opening_at_foot(2.0 * half, slope, error) == pytest.approx(2.0 * opening)
    assert opening_at_foot(half, slope, error + 0.1) > opening
    assert opening_at_foot(half, slope, 0.0) == 0.0


# ---- a scenario's survey


@pytest.mark.parametrize(("mapping", "left", "right", "error"), [
    ({"ridge_angle": "112.6°", "error": "0.5°"}, 33.7, 33.7, 0.25),
    ({"ridge_angle": 112.6}, 33.7, 33.7, 0.25),
    ({"ridge_angle": "124.7°", "slope_left": "9:12", "error": "0.5°"}, pitch(9), 180 - 124.7 - pitch(9), 1.0),
    ({"ridge_angle": "124.7°", "slope_right": "4:12", "error": "0.5°"}, 180 - 124.7 - pitch(4), pitch(4), 1.0),
    ({"slope_left": "9:12", "slope_right": "4:12", "error": "0.5°"}, pitch(9), pitch(4), 0.5),
    ({"slope_left": "8/12"}, pitch(8), pitch(8), 0.5),
    ({"slope_left": "67 %", "error": 0}, 33.82208521749396, 33.82208521749396, 0.0),
    ({"slope_left": 0, "slope_right": 10}, 0.0, 10.0, 0.5),
    ({"rise_left": "8 in", "run_left": "12 in", "error": 0.0}, pitch(8), pitch(8), 0.0),
    ({"rise_left": "9 in", "run_left": "12 in", "rise_right": "4 in", "run_right": "12 in", "error": 0},
     pitch(9), pitch(4), 0.0),
    ({"rise_left": 200, "run_left": "0.3 m", "error": 0}, pitch(8), pitch(8), 0.0),
])
def test_a_scenarios_survey_is_read(mapping: dict[str, object], left: float, right: float, error: float) -> None:
    survey = survey_from_mapping(mapping)
    assert (survey.pitch_left, survey.pitch_right, survey.error) == pytest.approx((left, right, error), abs=1e-9)
    assert survey.words.endswith(".")


def test_a_bare_length_is_in_the_scenarios_unit() -> None:
    bare = survey_from_mapping({"rise_left": 8, "run_left": "12", "error": 0.125}, "in")
    written = survey_from_mapping({"rise_left": "8 in", "run_left": "12 in", "error": "1/8 in"})
    assert bare == written
    assert bare.error == pytest.approx(math.degrees(math.atan2(8.125, 11.875) - math.atan2(8, 12)))


@pytest.mark.parametrize(("mapping", "key", "words"), [
    ({}, "survey", "no reading of the roof"),
    ({"error": "0.5°"}, "survey", "no reading of the roof"),
    ({"ridge_angle": "steep"}, "ridge_angle", "“steep” is not an angle"),
    ({"ridge_angle": None}, "ridge_angle", "“None” is not a reading"),
    ({"ridge_angle": True}, "ridge_angle", "“True” is not a reading"),
    ({"ridge_angle": [112]}, "ridge_angle", "is not a reading"),
    ({"ridge_angle": math.nan}, "ridge_angle", "“nan” is not a reading"),
    ({"ridge_angle": math.inf}, "ridge_angle", "“inf” is not a reading"),
    ({"ridge_angle": 10**400}, "ridge_angle", "is not a reading"),
    ({"ridge_angle": "30°"}, "ridge_angle", "is 30.00°; it must be more than 30° and at most 180°"),
    ({"ridge_angle": "180.5°"}, "ridge_angle", "at most 180°"),
    ({"ridge_angle": 100, "slope_left": 80}, "slope_left", "less than 75°"),
    ({"ridge_angle": 100, "slope_right": 5}, "ridge_angle", "leaves 75.00° for the other slope"),
    ({"ridge_angle": 170, "slope_left": 20}, "ridge_angle", "leaves -10.00°"),
    ({"ridge_angle": 112, "slope_left": 30, "slope_right": 30}, "ridge_angle", "they may disagree"),
    ({"slope_right": "4:12"}, "slope_left", "the right slope alone is not enough"),
    ({"slope_left": 75}, "slope_left", "gives a slope of 75.00°; it must be at least 0° and less than 75°"),
    ({"slope_left": "-1°"}, "slope_left", "at least 0°"),
    ({"slope_left": 30, "slope_right": 76}, "slope_right", "less than 75°"),
    ({"slope_left": 30, "error": "-0.5°"}, "error", "at least 0"),
    ({"slope_left": 30, "error": "5.5°"}, "error", "at most 5°"),
    ({"ridge_angle": 112, "error": 10.5}, "error", "puts the pitch off by 5.25°"),
    ({"ridge_angle": 112, "slope_left": 30, "error": 3}, "error", "puts the pitch off by 6.00°"),
    ({"rise_left": "8 in"}, "run_left", "“run_left” is missing"),
    ({"run_left": "12 in"}, "rise_left", "“rise_left” is missing"),
    ({"rise_right": "8 in", "run_right": "12 in"}, "rise_left", "the right slope alone"),
    ({"rise_left": 8, "run_left": 12, "rise_right": 4}, "run_right", "“run_right” is missing"),
    ({"rise_left": "-8 in", "run_left": "12 in"}, "rise_left", "must be 0 mm or more"),
    ({"rise_left": "8 in", "run_left": 0}, "run_left", "more than the tape's error of 1.5 mm"),
    ({"rise_left": "80 in", "run_left": "12 in"}, "rise_left", "less than 75°"),
    ({"rise_left": 80, "run_left": 120, "error": "1°"}, "error", "is not a length"),
    ({"rise_left": 80, "run_left": 120, "error": -1}, "error", "at least 0"),
    ({"rise_left": 8, "run_left": 12, "error": "1.5 mm"}, "error", "Measure a longer run"),
    ({"slope_left": 30, "rise_left": 8, "run_left": 12}, "survey", "Give one kind"),
])
def test_a_survey_that_cannot_be_used_is_refused_with_a_sentence(mapping: dict[str, object], key: str,
                                                                 words: str) -> None:
    findings = refused(mapping)
    assert list(findings) == [key]
    assert words in findings[key]


def test_every_fault_of_a_survey_is_named_at_once() -> None:
    assert set(refused({"ridge": "112°", "slope_left": "steep", "slope_right": None, "error": "x"})) == {
        "ridge", "slope_left", "slope_right", "error"}
    assert set(refused({"slope_left": 80, "slope_right": -1, "error": 9})) == {"slope_left", "slope_right", "error"}
    assert set(refused({"rise_left": -1, "run_left": 0, "rise_right": 900, "run_right": 100, "error": 1})) == {
        "rise_left", "run_left", "rise_right"}
    unknown = refused({"angle_of_ridge": 112})
    assert "known are ridge_angle, slope_left" in unknown["angle_of_ridge"]
    assert "survey" in unknown


@pytest.mark.parametrize("make", [
    lambda: from_ridge_angle(math.nan), lambda: from_ridge_angle(math.inf), lambda: from_ridge_angle(112, math.nan),
    lambda: from_two_slopes(math.nan, 30.0), lambda: from_two_slopes(30.0, 30.0, math.inf),
    lambda: from_ridge_angle_and_one_slope(math.nan, 30.0, "left"),
    lambda: from_ridge_angle_and_one_slope(112.0, math.nan, "right"),
    lambda: from_rise_and_run(math.nan, 12.0, 8.0, 12.0), lambda: from_rise_and_run(8.0, math.inf, 8.0, 12.0),
    lambda: from_rise_and_run(800.0, 1200.0, 800.0, 1200.0, math.nan),
])
def test_what_is_no_number_is_no_survey(make) -> None:
    with pytest.raises(SurveyError, match=r"\.$"):
        make()


def test_there_are_two_sides_to_a_ridge() -> None:
    with pytest.raises(ValueError, match="left or right"):
        from_ridge_angle_and_one_slope(112.0, 30.0, "north")


def test_the_limits_are_those_of_the_parameters() -> None:
    for name in ("pitch_left", "pitch_right"):
        assert (BY_NAME[name].low, BY_NAME[name].high, BY_NAME[name].open_high) == (0.0, STEEPEST, True)
    assert BY_NAME["pitch_error"].high == LARGEST_ERROR


@given(pitches, pitches, errors)
def test_every_survey_is_within_the_limits_of_the_parameters(left: float, right: float, error: float) -> None:
    for survey in (from_two_slopes(left, right, error), from_ridge_angle(180.0 - 2.0 * left, error)):
        assert 0.0 <= survey.pitch_left < STEEPEST and 0.0 <= survey.pitch_right < STEEPEST
        assert 0.0 <= survey.error <= LARGEST_ERROR
