"""Small jobs of sticks solved exactly by somebody else: HiGHS (SciPy's milp), over every way to cut each stick."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import product

import numpy as np
from scipy.optimize import Bounds, LinearConstraint, milp

from louverwright.core.stick_relaxed import Stick
from louverwright.core.stick_solver import Wanted


def room_of(pieces: Sequence[Wanted], way: Sequence[int]) -> int:
    """The room that so many of each piece take, nest by nest: nobody else's reckoning."""
    room = sum(n * each.size for n, each in zip(way, pieces, strict=True))
    for nest in {each.nest for each in pieces if each.nest}:
        together = sum(n for n, each in zip(way, pieces, strict=True) if each.nest == nest)
        room -= nest.gain * (together // 2 if nest.pairs else max(0, together - 1))
    return room


def by_highs(pieces: Sequence[Wanted], sticks: Sequence[Stick]) -> tuple[int, int]:
    """The least cost, and the fewest bought sticks at it: whole numbers of every way to cut each stick."""
    ways = [way for way in product(*(range(each.count + 1) for each in pieces)) if any(way)]
    columns = [(j, way) for way in ways for j, stick in enumerate(sticks) if room_of(pieces, way) <= stick.size]
    many = 1000
    costs = np.array([many * sticks[j].cost + (sticks[j].limit is None) for j, _ in columns])
    cover = LinearConstraint(np.array([way for _, way in columns]).T, lb=[each.count for each in pieces])
    limits = [(j, stick.limit) for j, stick in enumerate(sticks) if stick.limit is not None]
    rules = [cover, *(LinearConstraint(np.array([[float(k == j) for k, _ in columns]]), ub=limit) for j, limit in limits)]
    found = milp(costs, integrality=np.ones(len(columns)), bounds=Bounds(0, np.inf), constraints=rules)
    assert found.success, found.message
    return divmod(round(found.fun), many)
