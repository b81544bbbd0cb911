# SPDX-License-Identifier: LGPL-2.1-or-later
"""A spec's single values: what is refused whatever else is asked for, a sentence for each fault, all at once."""

from __future__ import annotations

import math
from dataclasses import FrozenInstanceError
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from louverwright.core.parameters import (
    ANGLE,
    BY_NAME,
    CHOICE,
    COUNT,
    LENGTH,
    NUMBER,
    PARAMETERS,
    STOCK,
    SWITCH,
    TEXT,
    defaults,
)
from louverwright.core.spec import Finding, SpecError, least_text, length_text, make_spec, most_text, shown
from louverwright.core.stock import Stock
from louverwright.places import stock_list

US = stock_list("us")
NUMBERS = [row for row in PARAMETERS if row.kind in (LENGTH, ANGLE, COUNT, NUMBER)]
NAMES = [row.name for row in NUMBERS]


def refused(values: dict[str, Any]) -> tuple[Finding, ...]:
    """What values are refused with; the error's text is all the sentences."""
    with pytest.raises(SpecError) as caught:
        make_spec(values, US)
    assert str(caught.value) == "\n".join(finding.sentence for finding in caught.value.findings)
    return caught.value.findings


def only(values: dict[str, Any]) -> Finding:
    """The one finding."""
    (finding,) = refused(values)
    return finding


def test_a_spec_of_nothing_is_the_defaults_with_the_usual_stock() -> None:
    spec = make_spec({}, US)
    assert {name: value for name, value in spec.values.items() if BY_NAME[name].kind != STOCK} == {
        name: value for name, value in defaults().items() if BY_NAME[name].kind != STOCK}
    assert spec.roof_pitch == 35.0 and isinstance(spec.slat_stock, Stock) and spec.slat_stock.name == "1x6"
    assert set(spec.values) == set(BY_NAME)


def test_a_spec_cannot_be_changed_and_has_no_other_attributes() -> None:
    values = {"width": 800.0}
    spec = make_spec(values, US)
    values["width"] = 1.0
    assert spec.width == 800.0
    with pytest.raises(TypeError):
        spec.values["width"] = 1.0  # type: ignore[index]
    with pytest.raises(FrozenInstanceError):
        spec.values = {}  # type: ignore[misc]
    with pytest.raises(AttributeError, match="widht"):
        _ = spec.widht


def test_equal_specs_are_equal_and_hash_alike() -> None:
    one, other, third = make_spec({"width": 800.0}, US), make_spec({"width": 800}, US), make_spec({"width": 801.0}, US)
    assert one == make_spec({"width": 800.0}, US) and hash(one) == hash(make_spec({"width": 800.0}, US))
    assert one == other and one != third


@pytest.mark.parametrize("name", NAMES)
@pytest.mark.parametrize("value", [math.nan, math.inf, -math.inf, None, "900", "", True, [900.0], {}, 10**400,
                                   -(10**400)])
def test_what_is_no_number_is_none(name: str, value: Any) -> None:
    finding = only({name: value})
    assert (finding.code, finding.field) == ("not a number", name)
    assert finding.sentence.startswith(f"{BY_NAME[name].label.capitalize()} is “") and finding.sentence.endswith(".")
    assert len(finding.sentence) < 160


@pytest.mark.parametrize("row", NUMBERS, ids=lambda row: row.name)
@pytest.mark.parametrize("way", [-1, 1])
def test_beyond_its_limits_a_number_is_refused_with_the_limits_and_the_nearer_one_as_cure(row, way: int) -> None:
    step = 1 if row.kind == COUNT else 0.01
    value = row.low - step if way < 0 else row.high + (0.0 if row.open_high else step)
    value = -1 if row.auto and value == 0 else value
    finding = only({row.name: value})
    assert (finding.code, finding.field) == ("out of limits", row.name)
    assert shown(row, row.low) in finding.limit and shown(row, row.high) in finding.limit
    assert not row.auto or f"or 0 ({row.auto})" in finding.limit
    nearer = row.low if way < 0 else row.high
    assert shown(row, nearer) in finding.cure
    word = "or more" if way < 0 else "below" if row.open_high else "or less"
    assert word in finding.cure
    if word != "below":    # what the cure says is enough
        assert make_spec({row.name: nearer}, US).values[row.name] == nearer


@pytest.mark.parametrize("row", [row for row in NUMBERS if row.auto], ids=lambda row: row.name)
def test_nought_stands_for_automatic_and_minus_nought_too(row) -> None:
    assert make_spec({row.name: 0}, US).values[row.name] == 0
    assert make_spec({row.name: -0.0}, US).values[row.name] == 0
    assert only({row.name: -1}).code == "out of limits"


def test_values_are_shown_with_their_unit() -> None:
    assert only({"overhang": 5_000.0}).sentence == (
        "Overhang is 5000 mm: it must be at least 40 mm and at most 600 mm. Set it to 600 mm or less.")
    assert only({"pitch_left": 75.0}).sentence == (
        "Pitch left is 75.00°: it must be at least 0.00° and less than 75.00°. Set it below 75.00°.")
    assert only({"mast_diameter": 5.0}).sentence == (
        "Mast diameter is 5 mm: it must be at least 15 mm and at most 120 mm, or 0 (no mast). Set it to 15 mm or more.")
    assert only({"sides": 12}).sentence == "Sides is 12: it must be at least 4 and at most 8. Set it to 8 or less."


@pytest.mark.parametrize("name", [row.name for row in PARAMETERS if row.kind == COUNT])
def test_a_count_is_a_whole_number(name: str) -> None:
    finding = only({name: BY_NAME[name].low + 0.5})
    assert finding.code == "not a number" and "it must be a whole number" in finding.sentence
    whole = float(BY_NAME[name].default or BY_NAME[name].low)
    assert make_spec({name: whole}, US).values[name] == whole    # 4.0 is one


@pytest.mark.parametrize("fraction", [9, 10, 12, 20, 33, 63])
def test_inches_are_rounded_by_halves_only(fraction: int) -> None:
    finding = only({"inch_fraction": fraction, "paper_units": "in"})
    assert finding.sentence == (
        f"Inch fraction is {fraction}: inches are halved, and halved again. Set it to 8, 16, 32 or 64.")
    assert [make_spec({"inch_fraction": good}, US).inch_fraction for good in (8, 16, 32, 64)] == [8, 16, 32, 64]


def test_millimetres_are_rounded_to_three_decimals_at_most() -> None:
    assert only({"millimetre_step": 0.12345}).sentence == (
        "Millimetre step is 0.12345: it can have three decimals at most. Set it to 0.1, 0.5 or 1.")
    assert make_spec({"millimetre_step": 0.125}, US).millimetre_step == 0.125


@pytest.mark.parametrize("row", [row for row in PARAMETERS if row.kind == CHOICE], ids=lambda row: row.name)
@pytest.mark.parametrize("value", ["other", "", None, 0, True, ["sheet"]])
def test_a_choice_is_one_of_its_words(row, value: Any) -> None:
    finding = only({row.name: value})
    assert finding.code == "choice" and f"is “{value}”: it must be one of {', '.join(row.choices)}" in finding.sentence
    assert finding.cure == f"Choose {row.choices[0]}."
    for choice in row.choices:
        assert make_spec({row.name: choice}, US).values[row.name] == choice


@pytest.mark.parametrize("row", [row for row in PARAMETERS if row.kind == SWITCH], ids=lambda row: row.name)
@pytest.mark.parametrize("value", ["yes", 1, 0, None, "true"])
def test_a_switch_is_yes_or_no(row, value: Any) -> None:
    assert only({row.name: value}).code == "switch"
    assert "it must be yes or no. Write yes or no." in only({row.name: value}).sentence


@pytest.mark.parametrize("row", [row for row in PARAMETERS if row.kind == TEXT], ids=lambda row: row.name)
@pytest.mark.parametrize("value", [5, None, ["a"], True])
def test_a_text_is_text(row, value: Any) -> None:
    assert (only({row.name: value}).code, only({row.name: value}).cure) == ("text", "Put it in quotes.")


@pytest.mark.parametrize("row", [row for row in PARAMETERS if row.kind == STOCK], ids=lambda row: row.name)
def test_stock_is_an_item_of_the_list_in_a_form_that_fits(row) -> None:
    fitting = [item.name for item in US.items if item.form in row.forms]
    for value in ("3x5", 5, ["2x4"]):
        finding = only({row.name: value})
        assert (finding.code, finding.field) == ("no stock", row.name)
        assert "the stock list “us” has no such item" in finding.sentence
        assert finding.cure == f"Choose one of: {', '.join(fitting)}."
    wrong = next(item for item in US.items if item.form not in row.forms)
    finding = only({row.name: wrong.name})
    assert finding.code == "wrong form"
    assert f"it is a {wrong.form}, and the use needs a {' or '.join(row.forms)}" in finding.sentence
    assert all(make_spec({row.name: name}, US).values[row.name].name == name for name in fitting)


def test_an_unknown_name_is_named() -> None:
    finding = only({"widht": 900.0})
    assert (finding.code, finding.field) == ("unknown", "widht")
    assert finding.sentence == "widht: “widht” is not a parameter. See the list of parameters."


def test_every_fault_is_named_at_once() -> None:
    findings = refused({"widht": 1, "width": math.nan, "overhang": -1.0, "sides": 3, "corner": "open", "screen": "no",
                        "project": 7, "slat_stock": "2x4", "ring_stock": "oak", "inch_fraction": 10})
    assert {(f.code, f.field) for f in findings} == {
        ("unknown", "widht"), ("not a number", "width"), ("out of limits", "overhang"), ("out of limits", "sides"),
        ("choice", "corner"), ("switch", "screen"), ("text", "project"), ("wrong form", "slat_stock"),
        ("no stock", "ring_stock"), ("step", "inch_fraction")}
    assert len(findings) == 10


anything = st.one_of(st.none(), st.booleans(), st.integers(), st.floats(), st.text(max_size=12),
                     st.lists(st.integers(), max_size=2))


@given(st.dictionaries(st.sampled_from([*BY_NAME, "widht"]), anything, max_size=8))
def test_any_values_make_a_spec_or_are_refused_with_sentences(values: dict[str, Any]) -> None:
    try:
        spec = make_spec(values, US)
    except SpecError as error:
        assert error.findings
        fields = [finding.field for finding in error.findings]
        assert set(fields) <= set(values) and len(set(fields)) == len(fields)
        assert all(finding.sentence.endswith(".") for finding in error.findings)
    else:
        assert set(values) <= set(spec.values)


@given(st.floats(0.0, 5_000.0))
def test_limits_are_written_so_that_what_is_written_is_enough(mm: float) -> None:
    least, most = (float(text(mm).removesuffix(" mm")) for text in (least_text, most_text))
    assert mm - 1e-6 <= least < mm + 0.1001 and mm - 0.1001 < most <= mm + 1e-6
    assert most - 1e-9 <= float(length_text(mm).removesuffix(" mm")) <= least + 1e-9
    assert least_text(13.05) == "13.1 mm" and most_text(13.05) == "13 mm"
    assert least_text(45.4) == most_text(45.4) == "45.4 mm"
