# SPDX-License-Identifier: LGPL-2.1-or-later
"""The comparison on paper: HTML and JSON say the same; the command line writes both and refuses with sentences."""

from __future__ import annotations

import json
import sys
from collections.abc import Callable
from dataclasses import replace
from functools import lru_cache
from html import unescape
from pathlib import Path
from typing import Any

import pytest

sys.path.append(str(Path(__file__).resolve().parent.parent / "core"))
from making import EXAMPLES, ROOT, job_of, no_number, scenario_of
from records import says_everything, strings

from louverwright.__main__ import BAD_SCENARIO, FAILED, main
from louverwright.core.assembly import NOTCH
from louverwright.core.spec import Spec
from louverwright.exchange.compare import job_from_record, read_report, read_state
from louverwright.exchange.papers import job_from_values
from louverwright.exchange.scenario import ScenarioError
from louverwright.report.compare import comparison_record, comparison_report, screen_lines, to_compare_json
from louverwright.report.compare_words import LESS_THAN_SHOWN, Pair, change_rows, summary_lines
from louverwright.report.html import to_html
from louverwright.report.job import Job
from louverwright.report.json_file import to_json
from louverwright.report.part_sheet import part_sheets

jsonschema = pytest.importorskip("jsonschema")

SCHEMA = json.loads((ROOT / "resources" / "compare.schema.json").read_text(encoding="utf-8"))
SALTBOX: dict[str, Any] = {"project": "Saltbox", "pitch_left": 36.87, "pitch_right": 18.43}
INCHES = {"paper_units": "in", "inch_fraction": 32}
#: Before and after: slope and slats; nothing; units of the paper; a mast; another vent altogether.
CASES: dict[str, tuple[dict[str, Any], dict[str, Any]]] = {
    "slope and slats": ({**SALTBOX, "slat_count": 5}, {**SALTBOX, "pitch_left": 35.0, "slat_count": 6}),
    "nothing": (SALTBOX, SALTBOX), "units": ({}, {**INCHES, "width": 910.0}), "mast": ({}, {"mast_diameter": 32.0}),
    "a hair": ({"pitch_left": 30.0}, {"pitch_left": 30.001}),
    "several": ({"ridge_length": 30000.0}, {"ridge_length": 30000.0, "vents": 3}),
    "sides": ({"width": 1000.0}, {"width": 1000.0, "sides": 8, "king_post_stock": "6x6"}),
    "hostile": ({"project": "<b>&"}, {"project": "</style><script>alert(1)</script>", "notes": "a\n\"b\" <i>"}),
}


@lru_cache(maxsize=16)
def pair(name: str) -> Pair:
    """One of the cases."""
    before, after = CASES[name]
    return Pair(job_from_values(before), job_from_values(after))


def record(name: str) -> dict[str, Any]:
    """Its JSON as a stranger has it."""
    read = json.loads(to_compare_json(pair(name)), parse_constant=no_number)
    assert isinstance(read, dict)
    return read


def html(name: str) -> str:
    """Its HTML with characters in place of entities."""
    return unescape(to_html(comparison_report(pair(name))))


def test_the_schema_is_one_and_says_everything() -> None:
    says_everything(SCHEMA)


@pytest.mark.parametrize("name", CASES)
def test_the_record_fits_its_schema(name: str) -> None:
    assert [e.message for e in jsonschema.Draft202012Validator(SCHEMA).iter_errors(record(name))] == []
    assert record(name) == comparison_record(pair(name))


@pytest.mark.parametrize("name", CASES)
def test_html_prints_the_strings_of_the_json(name: str) -> None:
    data, page = record(name), html(name)
    shown = [each["shown"] for each in (*data["parameters"], *data["changed"], *data["recut"], *data["recut_changes"])]
    groups = [(each["name"], str(each["count"])) for key in ("kept", "recut", "added", "removed", "to_make", "left_over")
              for each in data[key]]
    for text in (*strings(shown), *strings([data["summary"], data["cautions"], data["title_block"]]),
                 *(text for group in groups for text in group)):
        assert text in page, text


@pytest.mark.parametrize("name", CASES)
def test_counts_add_up(name: str) -> None:
    data = record(name)
    wanted = data["after"]["pieces"]
    assert sum(each["count"] for key in ("kept", "recut", "to_make") for each in data[key]) == wanted
    assert sum(each["count"] for key in ("kept", "recut", "left_over") for each in data[key]) == data["before"]["pieces"]
    kept = sum(each["count"] for each in data["kept"])
    assert data["summary"][0] in (f"{kept} of {wanted} pieces can be kept as they are.",
                                  f"All {wanted} pieces can be kept as they are.")


@pytest.mark.parametrize("name", CASES)
def test_old_and_new_are_told_apart_or_it_is_said_why_not(name: str) -> None:
    for change in (*pair(name).found.changed, *pair(name).found.recut_changes):
        rows = change_rows(change, pair(name))
        assert rows and [c for row in rows for c in row.changes] == list(change.changes)
        for row in rows:
            assert row.old != row.new, row
            assert "reference edge" not in row.what and "marked face" not in row.what, "the part's own names are used"


def test_a_hair_is_told_as_less_than_the_paper_shows() -> None:
    texts = [row.new for change in pair("a hair").found.changed for row in change_rows(change, pair("a hair"))]
    assert texts and any(text.endswith(LESS_THAN_SHOWN) for text in texts)
    assert any(LESS_THAN_SHOWN in line for line in record("a hair")["cautions"])


@pytest.mark.parametrize("name", CASES)
def test_what_to_take_off_is_told_for_every_piece_cut_from_an_old_one(name: str) -> None:
    data = record(name)
    told = {(each["old_mark"], each["new_mark"]) for key in ("changed", "recut_changes") for each in data[key]}
    assert told >= {(each["old_mark"], each["new_mark"]) for each in data["recut"]}
    assert all(each["measures"] and each["shown"]["rows"] for key in ("changed", "recut_changes") for each in data[key])


def test_stock_of_one_name_says_what_else_of_it_changed() -> None:
    both = pair("nothing")
    thick = replace(both.after.spec.slat_stock, density=1.0)
    after = replace(both.after, spec=Spec({**both.after.spec.values, "slat_stock": thick}))
    (_, label, old, new), = Pair(both.before, after).parameters
    assert (label, new) == ("Slat stock", f"{old}, another weight or other lengths sold")


def test_counts_of_several_vents_are_said_to_be_one_vent_s() -> None:
    assert any("one vent's: 1 vent before, 3 after" in line for line in record("several")["cautions"])


def test_figures_stand_as_on_both_papers() -> None:
    """Blank lengths and notches against the part sheets of either state, in millimetres and in inches."""
    both = pair("units")
    old, new = ({sheet.mark: sheet for sheet in part_sheets(job)} for job in (both.before, both.after))
    told = 0
    for change in both.found.changed:
        for row in change_rows(change, both):
            if row.what == "blank: length" and "less" not in row.new:
                assert old[change.old.mark].blank.startswith(row.old), row
                assert new[change.new.mark].blank.startswith(row.new), row
                told += 1
            if row.changes[0].kind == NOTCH:
                assert any(joint.size in row.old and joint.position in row.old for joint in old[change.old.mark].joints)
                told += 1
    assert told > 10
    assert any("differently" in line for line in record("units")["cautions"])


def test_nothing_changed_is_said_in_one_line() -> None:
    assert summary_lines(pair("nothing")) == (f"All {len(pair('nothing').after.assembly.pieces)} pieces can be kept as they "
                                              "are.",)
    assert "No parameter changed." in html("nothing") and "No length and no angle" in html("nothing")


def test_what_users_write_stays_text() -> None:
    page = to_html(comparison_report(pair("hostile")))
    assert "<script>" not in page and "<i>" not in page and page.count("</style>") == 1


def test_the_screen_says_sums_parameters_and_marks() -> None:
    lines = screen_lines(pair("slope and slats"))
    assert lines[:len(summary_lines(pair("slope and slats")))] == summary_lines(pair("slope and slats"))
    assert "Slat count: 5 → 6" in lines and "added: L9" in lines
    assert any(line.startswith("changed: B1bL, B1bR") for line in lines)


# ---- states from files


@pytest.fixture(scope="module")
def earlier(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The cuts.json of the first example."""
    path = tmp_path_factory.mktemp("earlier") / "cuts.json"
    path.write_text(to_json(job_of(EXAMPLES[0])), encoding="utf-8")
    return path


def changed(earlier: Path, folder: Path, change: Callable[[dict[str, Any]], object]) -> Path:
    """A copy of a cuts.json with something changed."""
    data = json.loads(earlier.read_text(encoding="utf-8"))
    change(data)
    path = folder / "changed.json"
    path.write_text(json.dumps(data), encoding="utf-8")
    return path


@pytest.mark.parametrize("name", EXAMPLES)
def test_a_job_is_made_again_from_its_record(name: str) -> None:
    job = job_of(name)
    again = job_from_record(json.loads(to_json(job)))
    assert again == Job(job.spec, job.date, job.revision, job.version)
    assert again.assembly == job.assembly


def test_an_own_stock_list_is_not_needed_again(tmp_path: Path) -> None:
    (tmp_path / "own.json").write_text(json.dumps({"base": "us", "name": "own", "title": "", "items": [
        {"name": "slat board", "form": "board", "thickness": 19.05, "width": 139.7, "lengths": [3000.0], "density": 500.0}],
        "usual": {"slat_stock": "slat board"}}), encoding="utf-8")
    job = job_from_values({"stock_list": "own.json"}, folder=tmp_path)
    (tmp_path / "own.json").unlink()
    assert job.spec.slat_stock.name == "slat board"
    assert job_from_record(json.loads(to_json(job))).spec == job.spec


@pytest.mark.parametrize(("change", "words"), [
    (lambda r: r.update(format="cuts"), "format: It must be"),
    (lambda r: r.update(format_version=9), "format: It must be"),
    (lambda r: r.update(parameters=[]), "parameters: It must be an object"),
    (lambda r: r["parameters"].update(widht=3.0), "parameters.widht: It is not a parameter of this version."),
    (lambda r: r["parameters"].update(slat_stock="1x6"), "parameters.slat_stock: It is not an item of stock."),
    (lambda r: r["parameters"].update(width="wide"), "parameters.width: Width is “wide”"),
    (lambda r: r["parameters"].update(slat_angle=44.0), "fingerprint: The file says"),
    (lambda r: r.update(fingerprint="00000000"), "fingerprint: The file says 00000000"),
    (lambda r: r["parts"].pop(), "would be cut otherwise today"),
    (lambda r: r["parts"][0]["blank"].__setitem__(0, 1.0), "parts: B1L would be cut otherwise today"),
    (lambda r: r.update(parts=[5]), "parts: They are not the parts of a report."),
])
def test_a_report_that_does_not_hold_is_refused(change: Callable[[dict[str, Any]], object], words: str, earlier: Path,
                                                tmp_path: Path) -> None:
    path = changed(earlier, tmp_path, change)
    with pytest.raises(ScenarioError) as caught:
        read_state(path)
    assert words in str(caught.value) and all(key.startswith(path.name) for key, _ in caught.value.findings)
    assert all(sentence.endswith(".") for _, sentence in caught.value.findings)


def test_only_a_report_is_taken_for_one() -> None:
    with pytest.raises(ScenarioError, match=r"Choose a cuts\.json"):
        read_report(ROOT / "resources" / "examples" / f"{EXAMPLES[0]}.json")


# ---- command line


def scenario_file(folder: Path, name: str, **more: Any) -> Path:
    """A scenario of plain values."""
    path = folder / name
    path.write_text(json.dumps({"louverwright": 1, "parameters": more}), encoding="utf-8")
    return path


def test_compare_writes_both_papers(earlier: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    scenario = ROOT / "resources" / "examples" / f"{EXAMPLES[0]}.json"
    assert main(["compare", str(earlier), str(scenario), "--out", str(tmp_path / "out")]) == 0
    printed = capsys.readouterr()
    assert printed.err == "" and printed.out.splitlines()[0].startswith("All ") and "done: " in printed.out
    assert sorted(path.name for path in (tmp_path / "out").iterdir()) == ["compare.html", "compare.json"]
    data = json.loads((tmp_path / "out" / "compare.json").read_text(encoding="utf-8"))
    assert data["before"]["fingerprint"] == data["after"]["fingerprint"] == job_of(EXAMPLES[0]).fingerprint
    assert data["after"]["revision"] == scenario_of(EXAMPLES[0]).revision


def test_two_scenarios_are_compared(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    before, after = (scenario_file(tmp_path, f"{n}.json", slat_count=n) for n in (5, 6))
    assert main(["compare", str(before), str(after), "--out", str(tmp_path)]) == 0
    assert "Slat count: 5 → 6" in capsys.readouterr().out


def test_all_that_is_wrong_with_both_is_said_at_once(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    bad = scenario_file(tmp_path, "bad.json", width=1.0)
    assert main(["compare", str(bad), str(tmp_path / "none.json"), "--out", str(tmp_path / "out")]) == BAD_SCENARIO
    first, *rest = capsys.readouterr().err.splitlines()
    assert first == "These vents cannot be compared:" and all(line.endswith(".") for line in rest)
    assert [line.split(": ")[0] for line in rest] == ["  - bad.json", "  - none.json"]
    assert not (tmp_path / "out").exists()


def test_a_folder_that_cannot_be_written_is_a_failure(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    good = scenario_file(tmp_path, "good.json")
    (tmp_path / "out").write_text("in the way", encoding="utf-8")
    assert main(["compare", str(good), str(good), "--out", str(tmp_path / "out")]) == FAILED
    assert "louverwright: " in capsys.readouterr().err
