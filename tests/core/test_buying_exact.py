"""The examples' plans against an independent exact solver: HiGHS (SciPy's milp).

No plan can be cheaper than sticks that together bring what all pieces are worth, whatever the pieces are said to be worth.
HiGHS finds the most that each stick can bring, and the cheapest sticks that bring enough: both exactly, both knowing nothing
of the plan or of how its own bound was found.  Where that does not reach, and the ways to cut a stick are few, HiGHS chooses
among all of them.
"""

from __future__ import annotations

import math
import os
from collections.abc import Sequence

import numpy as np
import pytest
from making import EXAMPLES, job_of
from scipy.optimize import Bounds, LinearConstraint, milp
from sticks_exact import by_highs

from louverwright.core import buying
from louverwright.core.stick_relaxed import Pieces, Stick, relaxed
from louverwright.core.stick_solver import Solution, Wanted, solve

#: Some in every run; all where it is asked for.
SOME = EXAMPLES if os.environ.get("LOUVERWRIGHT_EXACT") else tuple(
    name for name in EXAMPLES if name in ("hay-barn-28ft", "stable-9400mm"))
#: All ways to cut a stick are listed up to so many.
FEW = 3_000


def brings(wanted: Sequence[Wanted], worth: Sequence[float], room: int) -> float:
    """The most that pieces in one stick are worth: so many of each, rows of each nest begun (or pairs of it)."""
    nests = list(dict.fromkeys(each.nest for each in wanted if each.nest))
    many = len(wanted)
    takes = np.zeros(many + len(nests))
    rules = []
    for i, each in enumerate(wanted):
        takes[i] = each.size - (each.nest.gain if each.nest and not each.nest.pairs else 0)
    for k, nest in enumerate(nests, start=many):
        takes[k] = -nest.gain if nest.pairs else nest.gain
        rule = np.zeros(many + len(nests))
        total = sum(each.count for each in wanted if each.nest == nest)
        for i, each in enumerate(wanted):
            rule[i] = float(each.nest == nest)
        rule[k] = -2.0 if nest.pairs else -float(total)
        rules.append(LinearConstraint(rule[None], lb=0.0) if nest.pairs else LinearConstraint(rule[None], ub=0.0))
    upper = [*(each.count for each in wanted), *(sum(e.count for e in wanted) if nest.pairs else 1 for nest in nests)]
    found = milp(-np.array([*worth, *(0.0 for _ in nests)]), integrality=np.ones(many + len(nests)), bounds=Bounds(0, upper),
                 constraints=[LinearConstraint(takes[None], ub=room), *rules], options={"mip_rel_gap": 1e-9})
    assert found.success, found.message
    return float(-found.fun)


def least_by_highs(wanted: Sequence[Wanted], sticks: Sequence[Stick], worth: Sequence[float]) -> int:
    """The cost of the cheapest sticks that can bring what all pieces are worth."""
    most = np.array([brings(wanted, worth, stick.size) for stick in sticks])
    need = sum(each.count * each_worth for each, each_worth in zip(wanted, worth, strict=True))
    costs = np.array([stick.cost for stick in sticks])
    found = milp(costs, integrality=np.ones(len(sticks)), bounds=Bounds(0, np.inf),
                 constraints=LinearConstraint(most[None] / need, lb=1.0 - 1e-9), options={"mip_rel_gap": 1e-9})
    assert found.success, found.message
    return round(found.fun)


def worths(wanted: Sequence[Wanted], sticks: Sequence[Stick], plan: Solution) -> list[list[float]]:
    """Two ways to say what pieces are worth: the length that each takes at least, and the prices of the relaxed plan."""
    by_length = [each.size - (each.nest.gain * (0.5 if each.nest.pairs else 1.0) if each.nest else 0.0) for each in wanted]
    pieces = Pieces(tuple(w.size for w in wanted), tuple(w.count for w in wanted), tuple(w.nest for w in wanted))
    return [by_length, [price / 1e6 for price in relaxed(pieces, sticks).prices]]


@pytest.mark.parametrize("name", SOME)
def test_no_plan_buys_less_by_highs(name: str, monkeypatch: pytest.MonkeyPatch) -> None:
    asked: list[tuple[list[Wanted], list[Stick], Solution]] = []

    def told(wanted: list[Wanted], sticks: list[Stick]) -> Solution:
        asked.append((wanted, sticks, solve(wanted, sticks)))
        return asked[-1][2]

    monkeypatch.setattr(buying, "solve", told)
    job = job_of(name)
    buying.sticks_to_buy([(part, job.count(part)) for part in job.assembly.parts],
                         buying.Shop(job.spec.saw_kerf, job.spec.end_trim, job.spec.defect_allowance / 100.0))
    assert len(asked) > 3
    for wanted, sticks, plan in asked:
        found = 0
        for worth in worths(wanted, sticks, plan):
            found = max(found, least_by_highs(wanted, sticks, worth))
            if found >= plan.cost:
                break
        if found < plan.cost and math.prod(each.count + 1 for each in wanted) < FEW:
            found = by_highs(wanted, sticks)[0]
        assert found == plan.cost == plan.least
