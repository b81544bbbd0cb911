# SPDX-License-Identifier: LGPL-2.1-or-later
"""A slice of a few seconds of ``tests/random_vents.py``, and that what it proves could fail."""

from __future__ import annotations

import subprocess
import sys
from dataclasses import replace

import proof
import pytest
from making import ROOT, only, spec_of
from proof import dado_faults, fit_faults, idle_faults, notch_faults, reach_faults, stock_faults
from test_checks import LISTS, SORTS

from louverwright.core.assembly import DADO, NOTCH, Cut
from louverwright.core.checks import checked_spec
from louverwright.core.fastening import fastening_of
from louverwright.core.layout import layout


def run(*words: str) -> subprocess.CompletedProcess[str]:
    return subprocess.run([sys.executable, "-B", str(ROOT / "tests/random_vents.py"), *words], capture_output=True, text=True,
                          encoding="utf-8", timeout=120, check=False)


def test_a_slice_of_random_vents_builds_without_a_fault() -> None:
    done = run("--built", "5", "--seed", "20261126", "--minutes", "1")
    assert done.returncode == 0, done.stdout + done.stderr
    assert done.stdout.splitlines()[-1].startswith("5 built, ") and ", 0 with faults" in done.stdout


def test_too_few_vents_in_the_time_are_a_failure() -> None:
    done = run("--built", "12", "--minutes", "0")
    assert done.returncode == 1 and done.stdout.splitlines()[-1].startswith("0 built")


@pytest.mark.parametrize("name", ["rectangle with steep ends", "flared, break over the eave", "commons", "gable, louvered",
                                  "jacks"])
def test_vents_of_some_sorts_keep_the_rules_of_fit(name: str) -> None:
    stock, values = SORTS[name]
    assert fit_faults(checked_spec(values, LISTS[stock])) == []


def test_a_broken_rule_would_be_found(monkeypatch: pytest.MonkeyPatch) -> None:
    spec = spec_of()
    hip, stile = only(layout(spec), "roof.hip"), layout(spec).of_kind("louver.stile")[0]
    assert not [*notch_faults(hip, spec), *dado_faults(stile, spec), *stock_faults(hip, spec)]
    assert any(cut.kind == NOTCH for cut in hip.board.cuts) and sum(cut.kind == DADO for cut in stile.board.cuts) > 3
    monkeypatch.setattr(proof, "THIRD", 0.1)
    assert list(notch_faults(hip, spec))
    monkeypatch.setattr(proof, "DADO_WOOD", 40.0)
    assert list(dado_faults(stile, spec))
    assert list(stock_faults(replace(hip, board=replace(hip.board, thickness=hip.stock.thickness + 0.1)), spec))
    assert list(stock_faults(replace(hip, board=replace(hip.board, thickness=0.0)), spec))
    trial = replace(hip, board=replace(hip.board, cuts=(*hip.board.cuts, deeper_than(next(iter(hip.board.cuts))))))
    assert not list(idle_faults(hip, spec)) and list(idle_faults(trial, spec))


def deeper_than(cut: Cut) -> Cut:
    """A saw cut parallel to another, which takes all of its face."""
    return replace(cut, planes=(cut.planes[0].moved(-5.0),))


def test_a_dado_of_another_width_would_be_found() -> None:
    spec = spec_of()
    stile = layout(spec).of_kind("louver.stile")[0]
    assert not list(dado_faults(stile, spec))
    assert list(dado_faults(stile, checked_spec({"dado_fit": spec.dado_fit + 0.2}, LISTS["us"])))


def test_what_nothing_holds_would_be_found(monkeypatch: pytest.MonkeyPatch) -> None:
    spec = spec_of()
    plan = fastening_of(spec, layout(spec))
    assert reach_faults(spec) == []
    sole = next(each for each in plan if "base.sole" in each.first and each.driven)
    rest = [each for each in plan if sole.first not in (each.first, each.second)]
    for blocked, faults in (("", 1), ("roof.fascia/0", 0)):
        loose = replace(sole, driven=(), blocked=blocked)
        monkeypatch.setattr(proof, "fastening_of", lambda *_, loose=loose: (*rest, loose))
        assert len(reach_faults(spec)) == faults
    within = [each for each in plan if each.first.split(".")[0] == each.second.split(".")[0]]
    monkeypatch.setattr(proof, "fastening_of", lambda *_: tuple(within))
    assert reach_faults(spec) == ["no screw holds base and louver together", "no screw holds louver and roof together"]
