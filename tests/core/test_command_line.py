# SPDX-License-Identifier: LGPL-2.1-or-later
"""The command line without FreeCAD: ``check`` and ``parameters``, exit statuses, and sentences only for the user.

``report`` and ``build`` need the host's Qt and are tested with it.
"""

from __future__ import annotations

import json
import os
import subprocess
import sys
from pathlib import Path
from typing import Any

import pytest
from making import EXAMPLES, ROOT, scenario_of

from louverwright.__main__ import BAD_SCENARIO, FAILED, main
from louverwright.core.parameters import PARAMETERS
from louverwright.exchange.papers import job_from_values
from louverwright.exchange.reference import default_text, limits_text, parameters_page, scenario_schema

EXAMPLE = ROOT / "resources" / "examples" / f"{EXAMPLES[0]}.json"


def scenario(folder: Path, content: Any) -> Path:
    """A scenario file; text is written as it is."""
    path = folder / "vent.json"
    path.write_text(content if isinstance(content, str) else json.dumps(content), encoding="utf-8")
    return path


def bad(path: Path, capsys: pytest.CaptureFixture[str]) -> list[str]:
    """The sentences that ``check`` refuses a file with; it ends with status 2 and no traceback."""
    assert main(["check", str(path)]) == BAD_SCENARIO == 2
    printed = capsys.readouterr()
    assert "It can be built" not in printed.out and "Traceback" not in printed.err
    first, *rest = printed.err.splitlines()
    assert first == "This vent cannot be built:"
    assert all(line.startswith("  - ") and line.endswith(".") for line in rest)
    return [line.removeprefix("  - ") for line in rest]


def shell(command: list[str], folder: Path) -> subprocess.CompletedProcess[str]:
    """A command in a process of its own, with the add-on on its path."""
    environment = {**os.environ, "PYTHONPATH": str(ROOT / "workbench"), "PYTHONIOENCODING": "utf-8",
                   "PYTHONDONTWRITEBYTECODE": "1"}
    return subprocess.run(command, cwd=folder, env=environment, text=True, encoding="utf-8", capture_output=True,
                          timeout=60, check=False)


def run(*arguments: str, folder: Path) -> subprocess.CompletedProcess[str]:
    """The command line."""
    return shell([sys.executable, "-m", "louverwright", *arguments], folder)


@pytest.mark.parametrize("name", EXAMPLES)
def test_check_says_what_comes_of_a_good_scenario(name: str, capsys: pytest.CaptureFixture[str]) -> None:
    scenario = scenario_of(name)
    job = job_from_values(scenario.values, scenario.revision, scenario.folder, parts=scenario.parts)
    assert main(["check", str(EXAMPLE.with_name(f"{name}.json"))]) == 0
    printed = capsys.readouterr()
    assert printed.err == ""
    lines = printed.out.splitlines()
    assert lines[0] == f"reading {name}.json" and lines[-1] == "It can be built."
    assert lines[1] == (f"laid out: {len(job.assembly.pieces)} pieces under {len(job.assembly.parts)} marks, "
                        f"model {job.fingerprint}")
    assert job.writer.length(job.figures["overall_width"]) in lines[2] and "free area" in lines[2]


def test_a_bad_scenario_gives_every_finding_with_its_key(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    lines = bad(scenario(tmp_path, {"louverwright": 1, "unit": "in", "survey": {"slope_left": "80°"},
                                    "parameters": {"widht": 3, "width": "wide", "pitch_left": 3}}), capsys)
    assert [line.split(": ")[0] for line in lines] == [
        "unit", "parameters.widht", "parameters.width", "parameters.pitch_left", "survey.slope_left"]


def test_values_beyond_their_limits_have_their_keys(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    lines = bad(scenario(tmp_path, {"louverwright": 1, "parameters": {
        "overhang": "5 m", "sides": 12, "slat_stock": "2x4", "paper_units": "in", "inch_fraction": 10}}), capsys)
    assert [line.split(": ")[0] for line in lines] == [
        "parameters.sides", "parameters.overhang", "parameters.slat_stock", "parameters.inch_fraction"]
    assert "parameters.overhang: Overhang is 5000 mm: it must be at least 40 mm and at most 600 mm." in lines[1]


def test_what_does_not_go_together_is_named_with_its_key(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    lines = bad(scenario(tmp_path, {"louverwright": 1, "parameters": {"dado_depth": 15, "slat_count": 2}}), capsys)
    assert [line.split(": ")[0] for line in lines] == ["parameters.slat_count", "parameters.dado_depth"]


@pytest.mark.parametrize(("content", "words"), [
    ("", "vent.json: It is not JSON"), ("width = 900", "vent.json: It is not JSON"),
    ("[" * 100_000, "vent.json: It is not JSON"),
    ("[1, 2]", "scenario: A scenario is an object"), ("{}", "louverwright: It must be 1"),
    ({"louverwright": 1, "survey": {"slope_left": "8:12"}, "parameters": {"pitch_right": 3}},
     "parameters.pitch_right: The survey gives it already"),
    ('{"louverwright": 1, "parameters": {"width": NaN}}', "parameters.width: “nan” is not a number"),
    ('{"louverwright": 1, "parameters": {"width": 1e999}}', "parameters.width: “inf” is not a number"),
    ('{"louverwright": 1, "parameters": {"width": 1' + "0" * 400 + "}}", "parameters.width: “an endless number”"),
    ({"louverwright": 1, "parameters": {"stock_list": "nowhere.json"}},
     "stock_list: The stock list “nowhere.json” cannot be read"),
    ({"louverwright": 1, "parameters": {"stock_list": 5}}, "parameters.stock_list: “5” is not text"),
    ({"louverwright": 1, "parameters": {"stock_list": "vent.json"}},
     "items: A stock list is an object with a list of items"),
])
def test_whatever_a_file_holds_there_is_a_sentence(content: Any, words: str, tmp_path: Path,
                                                   capsys: pytest.CaptureFixture[str]) -> None:
    lines = bad(scenario(tmp_path, content), capsys)
    assert len(lines) == 1 and words in lines[0]


def test_a_file_that_is_not_there_is_a_bad_scenario(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    (sentence,) = bad(tmp_path / "nowhere.json", capsys)
    assert sentence == "nowhere.json: The file cannot be read: No such file or directory."


def test_the_process_ends_with_the_status_and_without_a_traceback(tmp_path: Path) -> None:
    path = scenario(tmp_path, {"louverwright": 1, "parameters": {"width": "wide"}})
    refused = run("check", path.name, folder=tmp_path)
    assert refused.returncode == BAD_SCENARIO
    assert "parameters.width: “wide” is not a length" in refused.stderr and "Traceback" not in refused.stderr
    good = run("check", str(EXAMPLE), folder=tmp_path)
    assert (good.returncode, good.stderr) == (0, "") and good.stdout.endswith("It can be built.\n")
    assert sorted(tmp_path.iterdir()) == [path], "check writes nothing"


def test_a_reader_that_has_seen_enough_is_no_error_of_ours(tmp_path: Path) -> None:
    command = f"{sys.executable} -m louverwright parameters | head -n 1"
    ended = shell(["bash", "-o", "pipefail", "-c", command], tmp_path)
    assert "Traceback" not in ended.stderr and ended.stdout.startswith("project ")
    assert ended.returncode in (0, FAILED)


@pytest.mark.parametrize("arguments", [[], ["paint"], ["check"], ["check", "a", "b"], ["build", "a.json"],
                                       ["parameters", "--xml"]])
def test_a_wrong_command_is_answered_with_the_usage(arguments: list[str], capsys: pytest.CaptureFixture[str]) -> None:
    with pytest.raises(SystemExit) as caught:
        main(arguments)
    assert caught.value.code == 2
    assert "usage: louverwright" in capsys.readouterr().err


def test_help_names_the_verbs(capsys: pytest.CaptureFixture[str]) -> None:
    with pytest.raises(SystemExit) as caught:
        main(["--help"])
    assert caught.value.code == 0
    text = capsys.readouterr().out
    assert all(verb in text for verb in ("build", "report", "check", "parameters"))


# ---- parameters


def printed(capsys: pytest.CaptureFixture[str], *arguments: str) -> str:
    """What ``parameters`` prints."""
    assert main(["parameters", *arguments]) == 0
    return capsys.readouterr().out


def test_the_list_names_every_parameter_with_its_default(capsys: pytest.CaptureFixture[str]) -> None:
    text = printed(capsys)
    for row in PARAMETERS:
        assert f"{row.name}  [{row.group}; {row.kind}; default: {default_text(row)}]\n    {row.doc}\n" in text
    assert text.count("\n") == 2 * len(PARAMETERS)


def test_the_json_is_the_table(capsys: pytest.CaptureFixture[str]) -> None:
    rows = json.loads(printed(capsys, "--json"))
    assert [row["name"] for row in rows] == [row.name for row in PARAMETERS]
    width = next(row for row in rows if row["name"] == "width")
    assert (width["kind"], width["default"], width["low"], width["high"]) == ("length", 900.0, 300.0, 3600.0)
    assert next(row for row in rows if row["name"] == "corner")["choices"] == ["butt", "mitred"]


def test_page_and_schema_are_printed_as_they_are_shipped(capsys: pytest.CaptureFixture[str]) -> None:
    assert printed(capsys, "--markdown") == parameters_page()
    assert printed(capsys, "--schema") == scenario_schema()


def test_defaults_and_limits_in_words() -> None:
    rows = {row.name: row for row in PARAMETERS}
    assert default_text(rows["base_height"]) == "0.3 of the width; 150 mm and what soles and rail need at least"
    assert [default_text(rows[name]) for name in ("width", "screen", "roof_pitch")] == ["900 mm", "yes", "35.00°"]
    assert limits_text(rows["pitch_left"]) == "0.00° to under 75.00°"
    assert limits_text(rows["overhang"]) == "40 mm to 600 mm"
    assert limits_text(rows["corner"]) == "butt, mitred" and limits_text(rows["soffit_stock"]) == "sheet or board"


def test_sets_of_papers_are_written_by_name(tmp_path: Path) -> None:
    done = run("papers", str(EXAMPLE), "--out", str(tmp_path), "--only", "cuts", folder=ROOT / "workbench")
    assert done.returncode == 0, done.stderr
    assert {"report.html", "report.pdf", "cuts.csv", "cuts.json"} <= {path.name for path in tmp_path.iterdir()}


def test_a_set_that_there_is_not_is_refused_with_those_that_there_are(tmp_path: Path) -> None:
    done = run("papers", str(EXAMPLE), "--out", str(tmp_path), "--only", "cuts,poems", folder=ROOT / "workbench")
    assert done.returncode == 2
    assert "there is no set “poems”; known are cuts" in done.stderr
    assert list(tmp_path.iterdir()) == []
