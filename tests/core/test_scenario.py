# SPDX-License-Identifier: LGPL-2.1-or-later
"""Scenario files: what they hold is read in their own units, and all that is wrong with one is said by its key."""

from __future__ import annotations

import json
import math
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st
from making import EXAMPLES, ROOT, scenario_of

from louverwright.core.parameters import BY_NAME, PARAMETERS
from louverwright.core.stock import StockListError
from louverwright.exchange.papers import job_from_values, write_whole
from louverwright.exchange.scenario import (
    KEYS,
    UNITS,
    Scenario,
    ScenarioError,
    read_scenario,
    scenario_from,
    value_from,
)
from louverwright.places import stock_list

HERE = Path("/nowhere")


def read(**content: Any) -> Scenario:
    """A scenario of the given keys."""
    return scenario_from({"louverwright": 1, **content}, HERE)


def value(name: str, given_value: Any, unit: str = "mm") -> Any:
    """One parameter as it is read."""
    return read(units=unit, parameters={name: given_value}).values[name]


def refused(data: Any) -> dict[str, str]:
    """Key and sentence of every finding; the error's text is all of them."""
    with pytest.raises(ScenarioError) as caught:
        scenario_from(data, HERE)
    findings = caught.value.findings
    assert str(caught.value) == "\n".join(f"{key}: {sentence}" for key, sentence in findings)
    assert all(sentence.endswith(".") for _, sentence in findings)
    assert len({key for key, _ in findings}) == len(findings)
    return dict(findings)


# ---- what is read


def test_an_empty_scenario_is_the_defaults() -> None:
    assert read() == Scenario({}, "1", HERE)
    assert job_from_values(read().values).spec.width == 900.0


@pytest.mark.parametrize(("unit", "mm"), [("mm", 1.0), ("cm", 10.0), ("m", 1000.0), ("in", 25.4), ("ft", 304.8)])
def test_a_bare_length_is_in_the_scenarios_unit_and_a_written_one_in_its_own(unit: str, mm: float) -> None:
    assert [value("width", 36, unit), value("width", "36", unit)] == pytest.approx([36.0 * mm] * 2)
    assert value("width", "3'-0\"", unit) == pytest.approx(914.4)
    assert value("ridge_length", "9,4 m", unit) == pytest.approx(9400.0)
    assert set(UNITS) == {"mm", "cm", "m", "in", "ft"}


@pytest.mark.parametrize(("name", "written", "read_as"), [
    ("roof_pitch", "8:12", math.degrees(math.atan(8 / 12))), ("roof_pitch", "67 %", math.degrees(math.atan(0.67))),
    ("roof_pitch", 33.7, 33.7), ("roof_pitch", "33.7°", 33.7), ("width_rule", "1 1/4", 1.25),
    ("width_rule", 1.25, 1.25),
    ("air_target", "0,2", 0.2), ("slat_count", 5, 5), ("slat_count", "5", 5), ("slat_count", 5.0, 5), ("vents", "2", 2),
    ("rafters_per_side", -1, -1), ("screen", True, True), ("screen", "no", False), ("screen", 1, True),
    ("corner", "mitred", "mitred"), ("project", "Hay barn", "Hay barn"), ("slat_stock", "1x8", "1x8"),
])
def test_values_are_read_by_their_kind(name: str, written: Any, read_as: Any) -> None:
    # A pitch is rise over run: 8:12 is 33.69° from the level, never 33.69 % or 8 in 24.
    for unit in UNITS:
        assert value(name, written, unit) == pytest.approx(read_as)
    assert isinstance(value(name, written), type(read_as))


def test_the_survey_gives_pitches_error_and_note() -> None:
    values = read(survey={"ridge_angle": "112.6°", "error": "0.5°"}).values
    assert (values["pitch_left"], values["pitch_right"], values["pitch_error"]) == pytest.approx((33.7, 33.7, 0.25))
    assert "Included angle at the ridge 112.6°" in values["survey_note"]
    own = read(survey={"slope_left": "8:12"}, parameters={"survey_note": "By eye."}).values
    assert own["survey_note"] == "By eye."
    tape = read(units="in", survey={"rise_left": 8, "run_left": 12, "error": 0}).values
    assert tape["pitch_left"] == pytest.approx(math.degrees(math.atan(8 / 12)))


def test_revision_and_remark() -> None:
    assert [read(revision="C").revision, read(revision=3).revision, read(remark="Any.").revision] == ["C", "3", "1"]


@pytest.mark.parametrize("name", EXAMPLES)
def test_the_examples_are_read_and_can_be_built(name: str) -> None:
    scenario = scenario_of(name)
    assert scenario.folder == ROOT / "resources" / "examples"
    assert set(scenario.values) <= set(BY_NAME) and scenario.values["survey_note"]
    assert job_from_values(scenario.values, scenario.revision, scenario.folder).figures["pieces"] > 100


def test_a_file_may_begin_with_the_mark_that_some_editors_set(tmp_path: Path) -> None:
    path = tmp_path / "marked.json"
    path.write_text('{"louverwright": 1, "parameters": {"project": "Gärtnerei"}}', encoding="utf-8-sig")
    assert read_scenario(path).values == {"project": "Gärtnerei"}


def test_an_own_stock_list_is_found_beside_the_scenario(tmp_path: Path) -> None:
    yard = {"name": "yard", "items": [{"name": "cedar 1x6", "form": "board", "thickness": "3/4 in", "width": "5 1/2 in",
                                       "lengths": ["12 ft"], "density": 360}], "usual": {"slat_stock": "cedar 1x6"}}
    (tmp_path / "yard.json").write_text(json.dumps(yard), encoding="utf-8")
    path = tmp_path / "vent.json"
    path.write_text(json.dumps({"louverwright": 1, "parameters": {"stock_list": "yard.json"}}), encoding="utf-8")
    scenario = read_scenario(path)
    job = job_from_values(scenario.values, scenario.revision, scenario.folder)
    assert job.spec.slat_stock.name == "cedar 1x6"
    assert stock_list("us").usual["slat_stock"] == "1x6"
    for wrong in ("nowhere.json", "vent.json", "."):
        with pytest.raises(StockListError):
            stock_list(wrong, tmp_path)


# ---- what is refused


@pytest.mark.parametrize("data", [None, [], "vent", 3, True, [{"louverwright": 1}]])
def test_what_is_no_object_is_no_scenario(data: Any) -> None:
    assert refused(data) == {"scenario": "A scenario is an object with parameters."}


@pytest.mark.parametrize(("change", "key", "words"), [
    ({"louverwright": 2}, "louverwright", "It must be 1"), ({"louverwright": None}, "louverwright", "It must be 1"),
    ({"parameter": {}}, "parameter", f"known are {', '.join(KEYS)}"),
    ({"units": "yd"}, "units", "“yd” is not one of mm, cm, m, in, ft"), ({"units": ["in"]}, "units", "is not one of"),
    ({"revision": ["A"]}, "revision", "Put it in quotes"), ({"revision": None}, "revision", "Put it in quotes"),
    ({"parameters": []}, "parameters", "must be an object"), ({"parameters": None}, "parameters", "must be an object"),
    ({"parameters": {"widht": 900}}, "parameters.widht", "It is not a parameter"),
    ({"parameters": {"width": "wide"}}, "parameters.width", "“wide” is not a length that can be read"),
    ({"parameters": {"width": "1,250"}}, "parameters.width", "1,250 may mean 1.250 or 1250"),
    ({"parameters": {"width": "35°"}}, "parameters.width", "is not a length"),
    ({"parameters": {"width": True}}, "parameters.width", "“True” is not a number"),
    ({"parameters": {"width": None}}, "parameters.width", "“None” is not a number"),
    ({"parameters": {"width": [900]}}, "parameters.width", "is not a number"),
    ({"parameters": {"width": math.nan}}, "parameters.width", "“nan” is not a number"),
    ({"parameters": {"roof_pitch": math.inf}}, "parameters.roof_pitch", "“inf” is not a number"),
    ({"parameters": {"width": 10**400}}, "parameters.width", "“an endless number” is not a number"),
    ({"parameters": {"slat_count": -(10**400)}}, "parameters.slat_count", "“an endless number” is not a number"),
    ({"parameters": {"roof_pitch": "steep"}}, "parameters.roof_pitch", "“steep” is not an angle"),
    ({"parameters": {"width_rule": "5/4"}}, "parameters.width_rule", "write 1 1/4"),
    ({"parameters": {"screen": "maybe"}}, "parameters.screen", "write yes or no"),
    ({"parameters": {"screen": None}}, "parameters.screen", "write yes or no"),
    ({"parameters": {"stock_list": 5}}, "parameters.stock_list", "“5” is not text. Put it in quotes."),
    ({"parameters": {"corner": ["butt"]}}, "parameters.corner", "is not text"),
    ({"parameters": {"slat_stock": None}}, "parameters.slat_stock", "is not text"),
    ({"survey": []}, "survey", "must be an object"), ({"survey": {}}, "survey", "no reading of the roof"),
    ({"survey": {"slope_left": "80°"}}, "survey.slope_left", "less than 75°"),
    ({"survey": {"angle": 3, "slope_left": 30}}, "survey.angle", "is not a reading"),
])
def test_a_scenario_with_a_fault_is_refused_by_its_key(change: dict[str, Any], key: str, words: str) -> None:
    findings = refused({"louverwright": 1, **change})
    assert list(findings) == [key]
    assert words in findings[key]


@pytest.mark.parametrize("name", ["pitch_left", "pitch_right", "pitch_error"])
def test_what_the_survey_gives_may_not_be_given_twice(name: str) -> None:
    findings = refused({"louverwright": 1, "survey": {"slope_left": "8:12"}, "parameters": {name: 3}})
    assert findings == {f"parameters.{name}": "The survey gives it already. Give it in one place."}


def test_every_fault_is_named_at_once() -> None:
    findings = refused({"units": "yd", "parameter": 1, "revision": [],
                        "survey": {"slope_left": "90°", "slope_right": "-1°"},
                        "parameters": {"widht": 1, "width": "x", "overhang": None, "pitch_left": 30, "project": 4}})
    assert set(findings) == {"units", "parameter", "revision", "louverwright", "survey.slope_left",
                             "survey.slope_right", "parameters.widht", "parameters.width",
                             "parameters.overhang", "parameters.pitch_left",
                             "parameters.project"}


@pytest.mark.parametrize("text", ["", "{", "vent", '{"louverwright": 1,}', "{'louverwright': 1}", "[" * 200_000])
def test_what_is_no_json_is_said_to_be_none(text: str, tmp_path: Path) -> None:
    path = tmp_path / "vent.json"
    path.write_text(text, encoding="utf-8")
    with pytest.raises(ScenarioError) as caught:
        read_scenario(path)
    ((key, sentence),) = caught.value.findings
    assert key == "vent.json" and sentence.startswith("It is not JSON: ") and sentence.endswith(".")


def test_a_file_that_cannot_be_read_is_named(tmp_path: Path) -> None:
    (tmp_path / "latin.json").write_bytes('{"louverwright": 1, "remark": "Gärtnerei"}'.encode("latin-1"))
    for name, words in (("nowhere.json", "cannot be read: No such file"), (".", "cannot be read"),
                        ("latin.json", "it is not written in UTF-8; save it in that encoding")):
        with pytest.raises(ScenarioError, match=words):
            read_scenario(tmp_path / name)


leaves = st.one_of(st.none(), st.booleans(), st.integers(), st.floats(), st.text(max_size=8))
contents = st.recursive(leaves, lambda inner: st.one_of(
    st.lists(inner, max_size=3), st.dictionaries(st.text(max_size=8), inner, max_size=3)), max_leaves=6)


@given(contents, st.sampled_from(KEYS), st.sampled_from(PARAMETERS))
def test_any_content_is_read_or_refused_with_sentences(content: Any, key: str, row: Any) -> None:
    for data in (content, {"louverwright": 1, key: content}, {"louverwright": 1, "parameters": {row.name: content}}):
        try:
            scenario_from(data, HERE)
        except ScenarioError as error:
            assert error.findings and all(sentence.endswith(".") for _, sentence in error.findings)


def test_the_value_of_every_parameter_is_read_from_its_default() -> None:
    for row in PARAMETERS:
        read_as = value_from(row, row.default)
        assert read_as == row.default and type(read_as) is type(row.default), row.name


# ---- files whole or not at all


def test_a_file_is_moved_into_place_once_it_is_whole(tmp_path: Path) -> None:
    path = tmp_path / "report.html"
    seen: list[tuple[str, bool]] = []

    def make(to: Path) -> None:
        to.write_text("half", encoding="utf-8")
        seen.append((to.name, path.exists()))
        to.write_text("whole", encoding="utf-8")

    assert write_whole(path, make) == path
    assert seen == [("report.html", False)] and path.read_text(encoding="utf-8") == "whole"
    assert list(tmp_path.iterdir()) == [path], "nothing is left beside it"


def test_an_old_file_stays_when_a_new_one_fails(tmp_path: Path) -> None:
    path = tmp_path / "report.html"
    path.write_text("old", encoding="utf-8")

    def fail(to: Path) -> None:
        to.write_text("half", encoding="utf-8")
        raise OSError("The disk is full.")

    with pytest.raises(OSError, match="disk is full"):
        write_whole(path, fail)
    with pytest.raises(OSError):
        write_whole(path, lambda _: None)    # it made nothing
    assert path.read_text(encoding="utf-8") == "old" and list(tmp_path.iterdir()) == [path]
    with path.open(encoding="utf-8") as reader:    # one who has it open keeps the old one, whole
        write_whole(path, lambda to: to.write_text("new", encoding="utf-8"))
        assert reader.read() == "old"
    assert path.read_text(encoding="utf-8") == "new"
