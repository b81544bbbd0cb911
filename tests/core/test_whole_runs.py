# SPDX-License-Identifier: LGPL-2.1-or-later
"""A green run that ran nothing, or only part, does not exist: what conftest.py, pytest.ini and lib.sh do, tried out."""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
from pathlib import Path

import pytest
from making import ROOT

TESTS = ROOT / "tests"
GOOD = "def test_good():\n    assert True\n"
SKIPPED = "import pytest\n\n\n@pytest.mark.skip(reason='not today')\ndef test_it():\n    assert True\n"
EMPTY = "import pytest\n\n\n@pytest.mark.parametrize('name', [])\ndef test_it(name):\n    assert True\n"


def run(folder: Path, files: dict[str, str], *words: str) -> subprocess.CompletedProcess[str]:
    """pytest on a folder of these files, as run.sh calls it."""
    (folder / "core").mkdir(parents=True)
    for name in ("conftest.py", "pytest.ini"):
        shutil.copy(TESTS / name, folder / name)
    for name, text in files.items():
        (folder / "core" / name).write_text(text, encoding="utf-8")
    command = [sys.executable, "-B", "-m", "pytest", "-q", "-p", "no:cacheprovider", "-c", "pytest.ini", *(words or ("core",))]
    return subprocess.run(command, cwd=folder, capture_output=True, text=True, encoding="utf-8", timeout=60, check=False)


@pytest.mark.parametrize(("files", "told"), [
    ({}, "no tests ran"), ({"test_a.py": GOOD, "test_b.py": "X = 1\n"}, "not one test of test_b.py has passed"),
    ({"test_a.py": GOOD, "test_b.py": SKIPPED}, "not one test of test_b.py has passed"),
    ({"test_a.py": GOOD, "test_b.py": EMPTY}, "Empty parameter set"),
    ({"test_a.py": GOOD, "test_b.py": "import nothing_there\n"}, "error"),
    ({"test_a.py": GOOD, "test_b.py": "import os\n\n\ndef test_it():\n    os._exit(0)\n"}, "")], ids=range(6))
def test_a_run_that_left_something_out_is_not_good(files: dict[str, str], told: str, tmp_path: Path) -> None:
    done = run(tmp_path / "tests", files)
    log = tmp_path / "log"
    log.write_text(done.stdout, encoding="utf-8")
    assert told in done.stdout + done.stderr
    assert judged(done.returncode, log) != 0


def judged(status: int, log: Path) -> int:
    """What lib.sh makes of a run by its status and its log."""
    script = f'. "{TESTS}/lib.sh"; judge "it" {status} "{log}"; closing_total'
    own = {name: value for name, value in os.environ.items() if name != "LOUVERWRIGHT_TOTALS"}    # .ci/run counts real runs
    return subprocess.run(["bash", "-c", script], env=own, capture_output=True, timeout=60, check=False).returncode


def test_a_whole_run_is_good_and_a_part_is_what_was_asked_for(tmp_path: Path) -> None:
    done = run(tmp_path / "whole", {"test_a.py": GOOD, "test_b.py": GOOD})
    (tmp_path / "log").write_text(done.stdout, encoding="utf-8")
    assert done.returncode == 0 and judged(0, tmp_path / "log") == 0
    assert judged(0, tmp_path / "nothing") != 0, "a status of 0 without pytest's closing line is no good run"
    part = run(tmp_path / "part", {"test_a.py": GOOD, "test_b.py": "X = 1\n"}, "core/test_a.py")
    assert part.returncode == 0 and "LEFT OUT" not in part.stdout


def test_every_folder_of_tests_is_named_in_the_scripts() -> None:
    folders = {path.parent.relative_to(TESTS).parts[0] for path in TESTS.rglob("test_*.py")}
    text = (TESTS / "run.sh").read_text(encoding="utf-8")
    assert folders == {"core", "report", "host", "regressions", "gui"}
    assert "for folder in core report host regressions gui; do" in text
    assert all(f"tests/{folder}" in text for folder in folders)
    assert "rooms=(host gui)" in (TESTS / "versions.sh").read_text(encoding="utf-8")
