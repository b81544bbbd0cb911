# SPDX-License-Identifier: LGPL-2.1-or-later
"""Bad days of a machine, by the command line: full disks, folders that take nothing, kills, limits of time and memory.

Each ends with a sentence and a status, and with what was there before.  FreeCAD's own files: ``test_bad_properties.py``.
"""

from __future__ import annotations

import json
import os
import resource
import signal
import stat
import subprocess
import sys
import time
from collections.abc import Callable
from pathlib import Path

import pytest
from making import EXAMPLES, ROOT

from louverwright.__main__ import BAD_SCENARIO, FAILED
from louverwright.places import MOST_BYTES

EXAMPLE = ROOT / "resources" / "examples" / f"{EXAMPLES[0]}.json"
#: What one check may take at most (bytes of address space, seconds of CPU); it needs some 0.1 GB and 0.3 s.
MEMORY, SECONDS = 1_000_000_000, 10
OLD = "as it was\n"


def limits(**more: int) -> Callable[[], None]:
    """To be called in the child: nothing may take more memory or time, or write larger files (``file``, bytes)."""
    def limit() -> None:
        resource.setrlimit(resource.RLIMIT_AS, (MEMORY, MEMORY))
        resource.setrlimit(resource.RLIMIT_CPU, (SECONDS, SECONDS))
        resource.setrlimit(resource.RLIMIT_CORE, (0, 0))
        if "file" in more:
            resource.setrlimit(resource.RLIMIT_FSIZE, (more["file"], more["file"]))
    return limit


def run(*words: str, folder: Path, **more: int) -> subprocess.CompletedProcess[str]:
    """The command line in a process of its own, under limits, without an error that is not a sentence."""
    done = subprocess.run([sys.executable, "-m", "louverwright", *words], cwd=folder, env=environment(), text=True,
                          encoding="utf-8",
                          capture_output=True, timeout=60, check=False, preexec_fn=limits(**more), stdin=subprocess.DEVNULL)
    assert "Traceback" not in done.stderr and "MemoryError" not in done.stderr, done.stderr
    return done


def environment() -> dict[str, str]:
    """The add-on on the path; no screen."""
    return {**os.environ, "PYTHONPATH": str(ROOT / "workbench"), "PYTHONIOENCODING": "utf-8", "PYTHONDONTWRITEBYTECODE": "1",
            "QT_QPA_PLATFORM": "offscreen", "OPENBLAS_NUM_THREADS": "1"}


def failed(done: subprocess.CompletedProcess[str], *words: str) -> None:
    """It ended with status 1 and one sentence that has these words."""
    assert done.returncode == FAILED, done
    (sentence,) = done.stderr.splitlines()
    assert sentence.startswith("louverwright: ") and sentence.endswith("."), sentence
    assert all(word in sentence for word in words), sentence


# ---- files to read


@pytest.mark.parametrize("content", [
    b'{"a":' * (MOST_BYTES // 5), b"[" + b"{}," * (MOST_BYTES // 3 - 2) + b"{}]",
    b'["' + b"\\u00e9" * (MOST_BYTES // 6 - 2) + b'"]',
    b"[1e9999" + b"9" * 1_000_000 + b"]", b" " * (MOST_BYTES * 4),
    b'{"louverwright": 1, "parameters": {' + b",".join(b'"k%d": 1' % i for i in range(20_000)) + b"}}"], ids=range(6))
def test_a_monster_is_refused_within_limits_of_time_and_memory(content: bytes, tmp_path: Path) -> None:
    (tmp_path / "vent.json").write_bytes(content)
    done = run("check", "vent.json", folder=tmp_path)
    assert done.returncode == BAD_SCENARIO, done.stderr[:300]
    assert done.stderr.startswith("This vent cannot be built:\n"), done.stderr[:300]


def test_what_is_no_file_is_not_waited_for(tmp_path: Path) -> None:
    os.mkfifo(tmp_path / "pipe.json")
    for name, words in {"/dev/zero": "a pipe or a device", "/dev/full": "a pipe or a device",
                        "pipe.json": "a pipe or a device",
                        ".": "Is a directory", "nowhere.json": "No such file", "a\nb\x1b[2J.json": "No such file"}.items():
        done = run("check", name, folder=tmp_path)
        assert done.returncode == BAD_SCENARIO and words in done.stderr and "\x1b" not in done.stderr + done.stdout, done


def test_a_file_without_permission_is_told(tmp_path: Path) -> None:
    path = tmp_path / "vent.json"
    path.write_bytes(EXAMPLE.read_bytes())
    path.chmod(0)
    if os.access(path, os.R_OK):
        path = Path("/proc/self/mem")    # root may read any file, but not this one from its start
    done = run("check", str(path), folder=tmp_path)
    assert done.returncode == BAD_SCENARIO and "The file cannot be read: " in done.stderr


# ---- folders to write


@pytest.mark.parametrize(("out", "words"), [
    ("/proc/vents", "/proc/vents"), ("vent.json", "vent.json"), ("vent.json/vents", "Not a directory"),
    ("x" * 300, "File name too long"), ("taken", "mend.json")])
def test_a_folder_that_cannot_be_written_is_told(out: str, words: str, tmp_path: Path) -> None:
    scenario = tmp_path / "vent.json"
    scenario.write_bytes(EXAMPLE.read_bytes())
    (tmp_path / "taken" / "mend.json").mkdir(parents=True)
    failed(run("mend", "vent.json", "--part", "L9", "--lost", "--out", out, folder=tmp_path), words,
           "What was there before is as it was")
    assert scenario.read_bytes() == EXAMPLE.read_bytes()
    assert list((tmp_path / "taken").iterdir()) == [tmp_path / "taken" / "mend.json"]


#: Sizes between those of the papers: the disk is full at the first of them, half-way, and at the last.
@pytest.mark.parametrize("most", [0, 230_000, 400_000])
def test_a_full_disk_leaves_the_papers_as_they_were(most: int, tmp_path: Path) -> None:
    names = ("report.html", "report.pdf", "cuts.csv", "cuts.json")
    for name in names:
        (tmp_path / name).write_text(OLD, encoding="utf-8")
    done = run("report", str(EXAMPLE), "--out", ".", folder=tmp_path, file=most)
    failed(done, "What was there before is as it was" if "PDF" not in done.stderr else "PDF")
    assert {path.name: path.read_text(encoding="utf-8") for path in tmp_path.iterdir()} == dict.fromkeys(names, OLD)


@pytest.mark.parametrize("words", [["compare", str(EXAMPLE), str(EXAMPLE)], ["mend", str(EXAMPLE), "--part", "L9", "--lost"]],
                         ids=lambda words: words[0])
def test_a_full_disk_leaves_a_comparison_and_a_mending_as_they_were(words: list[str], tmp_path: Path) -> None:
    names = (f"{words[0]}.html", f"{words[0]}.json")
    for name in names:
        (tmp_path / name).write_text(OLD, encoding="utf-8")
    failed(run(*words, "--out", ".", folder=tmp_path, file=2_000), "File too large")
    assert {path.name: path.read_text(encoding="utf-8") for path in tmp_path.iterdir()} == dict.fromkeys(names, OLD)


def test_a_full_disk_behind_the_words_themselves_is_told(tmp_path: Path) -> None:
    with open("/dev/full", "w", encoding="utf-8") as full:
        for words in (["parameters"],):
            done = subprocess.run([sys.executable, "-m", "louverwright", *words], cwd=tmp_path, env=environment(), stdout=full,
                                  stderr=subprocess.PIPE, text=True, encoding="utf-8", timeout=60, check=False)
            assert done.returncode == FAILED and "Traceback" not in done.stderr and "No space left" in done.stderr, done.stderr


@pytest.mark.parametrize("encoding", ["ascii", "cp1252"])
def test_a_terminal_that_knows_few_characters_gets_what_it_can_show(encoding: str, tmp_path: Path) -> None:
    (tmp_path / "bad.json").write_text('{"louverwright": 1, "parameters": {"width": "breit “農”"}}', encoding="utf-8")
    for words, status in ((["check", str(EXAMPLE)], 0), (["check", "bad.json"], BAD_SCENARIO)):
        done = subprocess.run([sys.executable, "-m", "louverwright", *words], cwd=tmp_path, capture_output=True, timeout=60,
                              check=False,
                              env={**environment(), "PYTHONIOENCODING": encoding})
        assert done.returncode == status and b"Traceback" not in done.stderr, done.stderr
        (done.stdout + done.stderr).decode(encoding)


# ---- killed


@pytest.mark.parametrize("after", [0.55, 0.85])
def test_what_is_killed_half_way_leaves_whole_papers(after: float, tmp_path: Path) -> None:
    """Old ones or new ones, and all of one sort: what is unfinished lies in a folder that nobody else can read."""
    names = ("report.html", "report.pdf", "cuts.csv", "cuts.json")
    for name in names:
        (tmp_path / name).write_text(OLD, encoding="utf-8")
    child = subprocess.Popen([sys.executable, "-m", "louverwright", "report", str(EXAMPLE), "--out", "."], cwd=tmp_path,
                             env=environment(),
                             stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
    time.sleep(after)
    child.send_signal(signal.SIGKILL)
    child.wait(timeout=60)
    for name in names:
        content = (tmp_path / name).read_bytes()
        assert content == OLD.encode() or content.rstrip().endswith((b"</html>", b"%%EOF", b"}")) or name == "cuts.csv", name
    if (tmp_path / "cuts.json").read_text(encoding="utf-8") != OLD:
        json.loads((tmp_path / "cuts.json").read_text(encoding="utf-8"))
    for path in tmp_path.iterdir():
        if path.name not in names:
            assert path.name.startswith(".unfinished-") and stat.S_IMODE(path.stat().st_mode) == 0o700
    done = run("report", str(EXAMPLE), "--out", ".", folder=tmp_path) if after == 0.55 else None
    assert done is None or done.returncode == 0, "the next run is not hindered"


def test_what_is_being_written_is_private_and_goes_in_place_whole(tmp_path: Path) -> None:
    """Seen from beside it while it is written."""
    child = subprocess.Popen([sys.executable, "-m", "louverwright", "report", str(EXAMPLE), "--out", "out"], cwd=tmp_path,
                             env=environment(),
                             stdout=subprocess.DEVNULL, stderr=subprocess.PIPE)
    modes: set[int] = set()
    counts: set[int] = set()
    while child.poll() is None:
        for path in (tmp_path / "out").glob(".unfinished-*"):
            try:
                modes.add(stat.S_IMODE(path.stat().st_mode))
            except FileNotFoundError:    # it has gone in place just now
                continue
            counts.add(len(list((tmp_path / "out").glob("*.*"))) - 1)
        time.sleep(0.001)
    assert child.returncode == 0, child.stderr
    assert modes == {0o700}
    assert 0 in counts, "nothing is in its place before all is written"
    assert len(list((tmp_path / "out").iterdir())) == 4
