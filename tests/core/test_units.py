# SPDX-License-Identifier: LGPL-2.1-or-later
"""Reading and writing lengths, angles, areas, weights and counts.

Conversion factors are the international ones of 1959: 1 in = 25.4 mm, 1 lb = 0.45359237 kg (from memory). Published
tables are named beside the checks that use them; all else follows from the module's own rules.
"""

from __future__ import annotations

import math
import re
from fractions import Fraction

import pytest
from hypothesis import example, given
from hypothesis import strategies as st

from louverwright.core.units import (
    LengthStyle,
    ReadError,
    format_angle,
    format_area,
    format_length,
    format_pitch,
    format_size,
    format_weight,
    parse_angle,
    parse_area,
    parse_count,
    parse_length,
    parse_number,
    parse_weight,
    parse_yes_no,
    rounded,
)

READERS = (parse_length, parse_angle, parse_area, parse_weight, parse_number, parse_count, parse_yes_no)
MM, HALF_MM, INCHES = LengthStyle("mm", 1), LengthStyle("mm", 0.5), LengthStyle("in", 16)
FEET, FINE_FEET = LengthStyle("ft-in", 16), LengthStyle("ft-in", 32)

styles = st.one_of(
    st.sampled_from([0.001, 0.01, 0.1, 0.25, 0.5, 1, 2, 5, 10]).map(lambda step: LengthStyle("mm", step)),
    st.builds(LengthStyle, st.sampled_from(["in", "ft-in"]), st.sampled_from([1, 2, 4, 8, 16, 32, 64])),
)
lengths = st.floats(-60_000.0, 60_000.0)


def refusal(reader, text: str, *arguments: str) -> str:
    """The sentence that a text is refused with."""
    with pytest.raises(ReadError) as caught:
        reader(text, *arguments)
    return str(caught.value)


# ---- reading lengths


@pytest.mark.parametrize(("text", "mm"), [
    ("40", 40.0), ("40 mm", 40.0), ("40mm.", 40.0), ("4 cm", 40.0), ("0.04 m", 40.0), ("40 millimetres", 40.0),
    ("40 in", 1016.0), ('40"', 1016.0), ("40 inches", 1016.0), ("1 in.", 25.4), ("1''", 25.4),
    ("3 1/2 in", 88.9), ('3-1/2"', 88.9), ("3 1/2″", 88.9), ("3½ in", 88.9), ("3 ½ in", 88.9), ("3.5 in", 88.9),
    ("3,5 in", 88.9), ("1/2 in", 12.7), ("½ in", 12.7), ("0 1/2 in", 12.7), ("3 8/16 in", 88.9), ("3 1⁄2 in", 88.9),
    ("5'-3 1/2\"", 1612.9), ("5' 3 1/2\"", 1612.9), ("5'3 1/2", 1612.9), ("5′-3 1/2″", 1612.9),
    ("5’ 3-1/2”", 1612.9), ("5 ft 3 in", 1600.2), ("5ft3in", 1600.2), ("5 ft. 3 in.", 1600.2), ("5'", 1524.0),
    ("5 feet, 3 inches", 1600.2), ("5'-0\"", 1524.0), ("5' 1/2\"", 1536.7), ("0'-6\"", 152.4), ("0.5 ft", 152.4),
    ("2 m 5 cm", 2050.0), ("2 m 5 mm", 2005.0), ("1 cm 5 mm", 15.0), ("9,4 m", 9400.0),
    (".5 in", 12.7), (",5 in", 12.7), ("  40   mm ", 40.0), ("40 MM", 40.0), ("40\u00a0mm", 40.0), ("+40", 40.0),
    ("-3 1/2 in", -88.9), ("−5'-3 1/2\"", -1612.9), ("- 5 mm", -5.0), ("-0", 0.0),
    ("0,125", 0.125), ("1.250", 1.25), ("1,17", 1.17), ("1250,125", 1250.125), ("1 250", 1250.0),
    ("1 250,5 mm", 1250.5), ("1.234,5", 1234.5), ("1,234.5", 1234.5), ("1,234,567", 1234567.0),
    ("1.234.567", 1234567.0), ("1 000 000", 1e6),
])
def test_a_length_is_read_in_every_way_of_writing_it(text: str, mm: float) -> None:
    assert parse_length(text) == pytest.approx(mm, abs=1e-12, rel=1e-15)


@pytest.mark.parametrize(("text", "unit", "mm"), [
    ("40", "mm", 40.0), ("4", "cm", 40.0), ("2", "m", 2000.0), ("40", "in", 1016.0), ("3", "ft", 914.4),
    ("3 1/2", "in", 88.9), ("1/2", "in", 12.7), ("2 1/2", "ft", 762.0), ("40 mm", "in", 40.0), ("5'3", "mm", 1600.2),
])
def test_a_bare_number_is_in_the_unit_of_the_field(text: str, unit: str, mm: float) -> None:
    assert parse_length(text, unit) == pytest.approx(mm, rel=1e-15)


@pytest.mark.parametrize(("text", "why"), [
    ("", "Nothing is written"), ("   ", "Nothing is written"), ("mm", "write figures and a unit"),
    ("40 x", "write figures and a unit"), ("forty", "write figures"), ("nan", "write figures"), ("inf", "write figures"),
    ("1e3", "write figures"), ("0x10", "write figures"), ("٣", "write figures"), ("--5", "write figures"),
    ("40 lb", "write figures"), ("4 x 4", "write figures"),
    ("1,250", "1,250 may mean 1.250 or 1250"), ("1,2,3", "do not fit"), ("1.2.3", "do not fit"),
    ("1,23.4", "do not fit"), ("1.234,567.8", "do not fit"),
    ("1/2", "a fraction without a unit may mean inches or mm"), ("3 1/2", "a fraction without a unit"),
    ("31/2 in", "write 15 1/2"), ("4/4 in", "write 1."), ("3 4/2 in", "write 2."), ("1/0 in", "divides by nought"),
    ("3.5 1/2 in", "already has decimals"), ("3,5 1/2 in", "already has decimals"),
    ("5' 14\"", "make 1 ft or more"), ("5' 12\"", "make 1 ft or more"), ("2 m 100 cm", "make 1 m or more"),
    ("5.5 ft 3 in", "the feet must be a whole number when inches follow"),
    ("5 1/2 ft 3 in", "the feet must be a whole number"),
    ("1 12 mm", "two numbers"), ("2 m 50", "two numbers"), ("3 in 5 mm", "two numbers"), ("3 in 2 ft", "two numbers"),
    ("3 - 1/2 in", "two numbers"), ("1 ft 2 in 3 mm", "there are 3 numbers"), ("1" * 61, "61 characters"),
])
def test_a_length_that_is_none_or_two_is_refused_with_a_sentence(text: str, why: str) -> None:
    sentence = refusal(parse_length, text)
    assert why in sentence
    assert sentence.endswith(".")
    assert not text.strip() or text[:20] in sentence    # it names what was written


def test_an_unknown_unit_is_the_programs_fault_and_no_refusal() -> None:
    for reader, unit in ((parse_length, "yd"), (parse_area, "acre"), (parse_weight, "stone")):
        with pytest.raises(KeyError):
            reader("1", unit)


# ---- reading angles


@pytest.mark.parametrize(("text", "degrees"), [
    ("33.7", 33.7), ("33.7°", 33.7), ("33,7 °", 33.7), ("33.7 deg", 33.7), ("33.7 degrees", 33.7), ("33.7º", 33.7),
    ("22 1/2°", 22.5), ("22½", 22.5), ("1/2°", 0.5), ("-5°", -5.0), ("0", 0.0), ("112.6°", 112.6),
    ("33°41'24\"", 33.69), ("33° 41.4'", 33.69), ("33°41′24″", 33.69), ("33° 30'", 33.5),
])
def test_an_angle_is_read_in_every_way_of_writing_it(text: str, degrees: float) -> None:
    assert parse_angle(text) == pytest.approx(degrees, abs=1e-12)


@pytest.mark.parametrize(("text", "slope"), [
    ("8:12", 8 / 12), ("8/12", 8 / 12), ("8 in 12", 8 / 12), ("8-in-12", 8 / 12), ("8 : 12", 8 / 12),
    ("4.5:12", 4.5 / 12), ("4,5/12", 4.5 / 12), ("9 1/2 in 12", 9.5 / 12), ("9½:12", 9.5 / 12), ("14/12", 14 / 12),
    ("1/2", 0.5), ("67 %", 0.67), ("67%", 0.67), ("100 %", 1.0), ("-4:12", -4 / 12), ("0:12", 0.0),
])
def test_a_pitch_is_rise_over_run(text: str, slope: float) -> None:
    assert math.tan(math.radians(parse_angle(text))) == pytest.approx(slope, abs=1e-15, rel=1e-14)


# A published rafter table, its angles to a quarter of a degree (daveosborne.com, rafter table).
@pytest.mark.parametrize(("rise", "published"), [
    (2, 9.5), (3, 14.0), (4, 18.5), (5, 22.5), (6, 26.5), (7, 30.25), (8, 33.75), (10, 39.75), (11, 42.5), (12, 45.0),
])
def test_pitches_agree_with_a_published_rafter_table(rise: int, published: float) -> None:
    assert parse_angle(f"{rise}/12") == pytest.approx(published, abs=0.125)
    assert format_pitch(parse_angle(f"{rise}:12")).endswith(f"({rise}:12)")


@pytest.mark.parametrize(("text", "why"), [
    ("", "Nothing is written where an angle is needed"), ("8:0", "a run of more than 0"), ("8/0", "a run of more than 0"),
    ("8:12°", "write it with figures"), ("1:2:3", "write it with figures"), ("33,750", "33.750 or 33750"),
    ("33° 60'", "less than 60"), ("33° 10' 60\"", "less than 60"), ("33° 10.5' 3\"", "minutes must be a whole number"),
    ("31/2°", "write 15 1/2"), ("31/2 in 12", "write 15 1/2"), ("steep", "write it with figures"), ("nan", "figures"),
])
def test_an_angle_that_cannot_be_read_is_refused_with_a_sentence(text: str, why: str) -> None:
    sentence = refusal(parse_angle, text)
    assert why in sentence and sentence.endswith(".")


def test_no_angle_is_minus_nought() -> None:
    for text in ("-0", "-0:12", "-0 %", "-0°0'"):
        assert math.copysign(1.0, parse_angle(text)) == 1.0, text


# ---- reading areas, weights, numbers, counts, yes and no


@pytest.mark.parametrize(("text", "mm2"), [
    ("1.2 m²", 1.2e6), ("1.2 m2", 1.2e6), ("1.2 m^2", 1.2e6), ("1.2", 1.2e6), ("1,2 sq m", 1.2e6), ("5 cm²", 500.0),
    ("7 mm²", 7.0), ("144 sq in", 92903.04), ("144 sq. in.", 92903.04), ("1 sq ft", 92903.04), ("1 ft²", 92903.04),
    ("1/2 sq ft", 46451.52), ("144 in2", 92903.04), ("3 1/2 square feet", 325160.64),
])
def test_an_area_is_read_in_every_way_of_writing_it(text: str, mm2: float) -> None:
    assert parse_area(text) == pytest.approx(mm2, rel=1e-15)


@pytest.mark.parametrize(("text", "kg"), [
    ("12.5 kg", 12.5), ("12,5", 12.5), ("500 g", 0.5), ("1 lb", 0.45359237), ("1 lb.", 0.45359237),
    ("27 lbs", 12.24699399), ("16 oz", 0.45359237), ("2 1/2 kg", 2.5), ("-0 kg", 0.0),
])
def test_a_weight_is_read_in_every_way_of_writing_it(text: str, kg: float) -> None:
    assert parse_weight(text) == pytest.approx(kg, rel=1e-15)


def test_bare_areas_and_weights_are_in_the_unit_of_the_field() -> None:
    assert parse_area("144", "in2") == pytest.approx(parse_area("1", "ft2")) == pytest.approx(92903.04)
    assert parse_weight("16", "oz") == parse_weight("1", "lb") == pytest.approx(0.45359237)


@pytest.mark.parametrize(("text", "value"), [
    ("1.25", 1.25), ("1,25", 1.25), ("1 1/4", 1.25), ("1¼", 1.25), ("1/150", 1 / 150), ("-2", -2.0), ("3", 3.0),
])
def test_a_number_is_read(text: str, value: float) -> None:
    assert parse_number(text) == value


def test_counts_and_switches_are_read() -> None:
    assert [parse_count(text) for text in ("0", "4", "4.0", "12")] == [0, 4, 4, 12]
    assert all(parse_yes_no(text) is True for text in ("yes", "Y", "true", "On", "1"))
    assert all(parse_yes_no(text) is False for text in ("no", "N", "FALSE", "off", "0"))


@pytest.mark.parametrize(("reader", "text", "why"), [
    (parse_area, "-1 m²", "less than 0"), (parse_area, "1 kg", "write figures and a unit"),
    (parse_area, "31/2 sq ft", "write 15 1/2"), (parse_weight, "-1 kg", "less than 0"),
    (parse_weight, "12 lb 4 oz", "write it with figures"), (parse_weight, "heavy", "write figures and a unit"),
    (parse_number, "5/4", "write 1 1/4"), (parse_number, "1 in", "write it with figures"),
    (parse_count, "2.5", "a whole number, 0 or more"), (parse_count, "-1", "a whole number, 0 or more"),
    (parse_yes_no, "maybe", "write yes or no"),
])
def test_what_is_no_area_weight_number_or_count_is_refused(reader, text: str, why: str) -> None:
    sentence = refusal(reader, text)
    assert why in sentence and text in sentence and sentence.endswith(".")


@given(st.one_of(st.text(max_size=70), st.text(alphabet="0123456789 .,/-'\"°:%mftincsqkglb½²", max_size=14)))
@example("1/")
@example("0/0")
@example("'")
@example("⅟")
def test_any_text_is_read_as_a_finite_number_or_refused_with_a_sentence(text: str) -> None:
    for reader in READERS:
        try:
            assert math.isfinite(reader(text))
        except ReadError as error:
            assert str(error).endswith(".")


# ---- writing lengths


# PS 20 dressed sizes in inches and in whole millimetres (engineeringtoolbox.com, softwood lumber standard and
# softwood lumber dimensions; the standard's own rounding is half up, as 2 1/2 in shows). 114, 25 and 32: from memory.
@pytest.mark.parametrize(("inches", "mm"), [
    ("3/4", 19), ("1", 25), ("1 1/4", 32), ("1 1/2", 38), ("2 1/2", 64), ("3 1/2", 89), ("4 1/2", 114), ("5 1/2", 140),
    ("7 1/4", 184), ("9 1/4", 235), ("11 1/4", 286),
])
def test_dressed_sizes_round_as_the_lumber_standard_rounds_them(inches: str, mm: int) -> None:
    exact = parse_length(f"{inches} in")
    assert format_length(exact, MM) == f"{mm} mm"
    assert format_length(exact, INCHES) == f'{inches}"'


# Difference in length of jack rafters at 16 in on centre, to the sixteenth (daveosborne.com, rafter table; its 10/12
# and 11/12 rows are given to the eighth only). 16 in × √(1 + (rise/12)²).
@pytest.mark.parametrize(("rise", "published"), [
    (2, "16 1/4"), (3, "16 1/2"), (4, "16 7/8"), (5, "17 5/16"), (6, "17 7/8"), (7, "18 1/2"), (8, "19 1/4"),
    (12, "22 5/8"),
])
def test_sixteenths_agree_with_a_published_rafter_table(rise: int, published: str) -> None:
    exact = 25.4 * 16.0 * math.hypot(1.0, rise / 12.0)
    assert format_length(exact, INCHES) == f'{published}"'
    assert format_length(exact, FEET, with_unit=False) == format_length(exact, FEET)


# Worked examples of carrying and of exact ties, half up.
@pytest.mark.parametrize(("inches", "sixteenths", "thirtyseconds"), [
    (21.633308, "1'-9 5/8\"", "1'-9 5/8\""), (11.97, "1'-0\"", '11 31/32"'), (36.0, "3'-0\"", "3'-0\""),
    (0.96875, '1"', '31/32"'), (95.875, "7'-11 7/8\"", "7'-11 7/8\""), (7.9999, '8"', '8"'), (0.0, '0"', '0"'),
    (63.5, "5'-3 1/2\"", "5'-3 1/2\""), (0.02, '0"', '1/32"'), (-63.5, "-5'-3 1/2\"", "-5'-3 1/2\""),
    (-0.96875, '-1"', '-31/32"'), (-0.001, '0"', '0"'), (11.99999, "1'-0\"", "1'-0\""),
    (61.0, "5'-1\"", "5'-1\""),    # whole inches after feet have no nought before them
    (60.5, "5'-0 1/2\"", "5'-0 1/2\""),    # feet, then 0 and the fraction: usual on US drawings (common practice)
])
def test_feet_and_inches_carry_and_reduce(inches: float, sixteenths: str, thirtyseconds: str) -> None:
    assert format_length(inches * 25.4, FEET) == sixteenths
    assert format_length(inches * 25.4, FINE_FEET) == thirtyseconds


@pytest.mark.parametrize(("mm", "step", "text"), [
    (1250.5, 0.5, "1250.5 mm"), (1250.0, 0.5, "1250 mm"), (1250.25, 0.5, "1250.5 mm"), (1250.24, 0.5, "1250 mm"),
    (126.48, 0.1, "126.5 mm"), (126.45, 0.1, "126.5 mm"), (0.005, 0.01, "0.01 mm"), (-126.45, 0.1, "-126.5 mm"),
    (3.5, 1, "4 mm"), (-3.5, 1, "-4 mm"), (2.5, 1, "3 mm"), (-0.4, 1, "0 mm"), (999.96, 0.1, "1000 mm"),
    (1219.2, 10, "1220 mm"), (2438.4, 10, "2440 mm"),    # 48 × 96 in, sold as 1220 × 2440 mm (makers' size lists)
])
def test_millimetres_round_half_up_to_the_step(mm: float, step: float, text: str) -> None:
    assert format_length(mm, LengthStyle("mm", step)) == text


def test_a_length_may_be_written_without_its_unit_except_in_feet() -> None:
    assert format_length(88.9, INCHES, with_unit=False) == "3 1/2"
    assert format_length(88.9, HALF_MM, with_unit=False) == "89"
    assert format_length(1612.9, FEET, with_unit=False) == "5'-3 1/2\""


def test_a_size_is_lengths_with_crosses() -> None:
    assert format_size((655.0, 126.5, 19.0), HALF_MM) == "655 × 126.5 × 19 mm"
    assert format_size((655.0, 127.0, 19.05), INCHES) == '25 13/16" × 5" × 3/4"'


@given(lengths, styles)
@example(0.96875 * 25.4, FEET)
@example(304.7999, FEET)
def test_what_is_written_reads_back_as_the_rounded_length(mm: float, style: LengthStyle) -> None:
    assert parse_length(format_length(mm, style)) == rounded(mm, style)


@given(lengths, styles.filter(lambda style: style.system != "ft-in"))
def test_a_number_without_its_unit_reads_back_in_the_unit_of_the_field(mm: float, style: LengthStyle) -> None:
    assert parse_length(format_length(mm, style, with_unit=False), style.system) == rounded(mm, style)


@given(lengths, styles)
def test_rounding_goes_to_the_nearest_step_once_and_the_same_way_for_both_signs(mm: float, style: LengthStyle) -> None:
    to = rounded(mm, style)
    assert abs(Fraction(to) - Fraction(mm)) <= style.step_mm / 2 + Fraction(2, 10**6)
    assert rounded(to, style) == to
    assert rounded(-mm, style) == -to
    assert format_length(to, style) == format_length(mm, style)


@given(st.integers(0, 10**6), styles)
def test_a_half_step_is_rounded_up(count: int, style: LengthStyle) -> None:
    half = float((count + Fraction(1, 2)) * style.step_mm)
    assert rounded(half, style) == float((count + 1) * style.step_mm)


@given(lengths, st.sampled_from([2, 4, 8, 16, 32, 64]), st.sampled_from(["in", "ft-in"]))
def test_fractions_are_proper_and_reduced_and_inches_do_not_fill_a_foot(mm: float, bottom: int, system: str) -> None:
    text = format_length(mm, LengthStyle(system, bottom))
    for top, under in re.findall(r"(\d+)/(\d+)", text):
        assert 0 < int(top) < int(under) <= bottom
        assert math.gcd(int(top), int(under)) == 1
    if "'" in text:
        feet, inches = re.fullmatch(r"-?(\d+)'-(\d+)(?: \d+/\d+)?\"", text).groups()    # 5'-0 1/2", never 5'-1/2"
        assert int(feet) > 0 and int(inches) < 12


@given(st.one_of(lengths, st.floats(-0.01, 0.01)), styles)
def test_nought_has_no_sign(mm: float, style: LengthStyle) -> None:
    assert re.fullmatch(r'-0( mm|"|.-0")?', format_length(mm, style)) is None


@pytest.mark.parametrize(("system", "step", "why"), [
    ("cm", 1, "choose mm, in or ft-in"), ("in", 10, "choose 2, 4, 8, 16, 32 or 64"), ("ft-in", 0, "1/0"),
    ("mm", 0, "must be 0.001 to 10 mm"), ("mm", 0.0005, "0.001 to 10"), ("mm", 11, "0.001 to 10"),
    ("mm", 0.0015, "at most three decimals"), ("mm", math.nan, "0.001 to 10"), ("mm", -1, "0.001 to 10"),
])
def test_a_style_that_cannot_be_written_is_refused(system: str, step: float, why: str) -> None:
    with pytest.raises(ValueError, match=re.escape(why)):
        LengthStyle(system, step)  # type: ignore[arg-type]


@pytest.mark.parametrize("value", [math.nan, math.inf, -math.inf])
def test_what_is_no_number_is_not_written(value: float) -> None:
    for write in (lambda v: format_length(v, MM), lambda v: rounded(v, MM), format_angle, format_pitch,
                  lambda v: format_area(v, MM), lambda v: format_weight(v, MM)):
        with pytest.raises(ValueError, match=r"\.$"):
            write(value)


# ---- writing angles, areas and weights


@pytest.mark.parametrize(("degrees", "decimals", "text"), [
    (33.69, 1, "33.7°"), (45.0, 1, "45.0°"), (45.0, 0, "45°"), (35.264, 2, "35.26°"), (0.25, 1, "0.3°"),
    (-0.25, 1, "-0.3°"), (-0.04, 1, "0.0°"), (89.96, 1, "90.0°"), (22.45, 1, "22.5°"),
])
def test_an_angle_is_written_half_up(degrees: float, decimals: int, text: str) -> None:
    assert format_angle(degrees, decimals) == text


@given(st.floats(-180.0, 180.0), st.integers(0, 4))
def test_an_angle_reads_back_within_half_a_step(degrees: float, decimals: int) -> None:
    assert parse_angle(format_angle(degrees, decimals)) == pytest.approx(degrees, abs=0.5 * 10.0**-decimals + 2e-6)


@pytest.mark.parametrize(("degrees", "text"), [
    (math.degrees(math.atan(8 / 12)), "33.7° (8:12)"), (40.0, "40.0° (10.1:12)"), (0.0, "0.0° (0:12)"),
    (-0.01, "0.0° (0:12)"), (math.degrees(math.atan(4.5 / 12)), "20.6° (4.5:12)"), (-45.0, "-45.0° (-12:12)"),
])
def test_a_pitch_is_written_with_its_rise_in_twelve(degrees: float, text: str) -> None:
    assert format_pitch(degrees) == text


@pytest.mark.parametrize("degrees", [90.0, -90.0, 135.0])
def test_an_upright_has_no_pitch(degrees: float) -> None:
    with pytest.raises(ValueError, match="between -90° and 90°"):
        format_pitch(degrees)


@pytest.mark.parametrize(("m2", "text"), [
    (1.25, "1.25 m²"), (0.125, "0.125 m²"), (12.5, "12.5 m²"), (125.0, "125 m²"), (0.9996, "1.00 m²"),
    (9.996, "10.0 m²"), (99.96, "100 m²"), (0.0, "0.000 m²"), (1234.4, "1234 m²"),
])
def test_an_area_has_three_figures(m2: float, text: str) -> None:
    assert format_area(m2 * 1e6, MM) == text


def test_areas_and_weights_follow_the_unit_of_lengths() -> None:
    assert format_area(1219.2 * 2438.4, INCHES) == format_area(1219.2 * 2438.4, FEET) == "32.0 sq ft"    # 4 × 8 ft
    assert format_weight(12.5, HALF_MM) == "12.5 kg"
    assert format_weight(12.5, INCHES) == "27.6 lb"


@given(st.floats(0.01, 900.0), st.sampled_from([MM, INCHES]))
def test_areas_and_weights_read_back_to_three_figures(value: float, style: LengthStyle) -> None:
    assert parse_area(format_area(value * 1e6, style)) == pytest.approx(value * 1e6, rel=0.0051, abs=600.0)
    assert parse_weight(format_weight(value, style)) == pytest.approx(value, rel=0.0051, abs=0.0006)
    for text in (format_area(value * 1e6, style), format_weight(value, style)):
        figures = text.split()[0].replace(".", "").lstrip("0")
        assert len(figures) == 3 or float(text.split()[0]) < 0.1 or float(text.split()[0]) >= 1000.0
