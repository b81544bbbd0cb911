# SPDX-License-Identifier: LGPL-2.1-or-later
"""What no plan can undercut: values of the pieces that no stick can hold more of than it costs.

Any values y ≥ 0 of the pieces prove a bound: a stick of room r holds at most v(r) of them, so all sticks together must hold
Σ demand·y.  Good values are the duals of the linear relaxation, found by generating columns (Gilmore and Gomory 1961);
the bound itself is reckoned in whole numbers from rounded values, so that no rounding error can make it too high.
"""

from __future__ import annotations

import time
from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction

Vector = list[float]
#: Rooms are counted in at most so many steps; sizes are rounded down to them, which only lowers the bound.
STEPS = 5000
#: Values are rounded down to one part in so many.
FINE = 10**7


@dataclass(frozen=True)
class Bound:
    """Whole-number values of the sizes; ``holds`` gives the most a room can hold, ``needed`` all pieces' value."""

    values: tuple[int, ...]
    most: tuple[int, ...]
    step: int
    needed: int

    def holds(self, room: int) -> int:
        """The most value that a stick of the room can hold."""
        return self.most[room // self.step]

    def cost(self, prices: Sequence[tuple[int, int]], spare: Sequence[int] = ()) -> Fraction:
        """The least cost of sticks (room, price) that hold what the ``spare`` rooms do not."""
        rest = self.needed - sum(self.holds(room) for room in spare)
        dearest = max(Fraction(self.holds(room), price) for room, price in prices)
        return max(Fraction(0), Fraction(rest) / dearest) if dearest else Fraction(0)

    def allows(self, rooms: Sequence[int]) -> bool:
        """False where sticks of these rooms cannot take all pieces."""
        return sum(self.holds(room) for room in rooms) >= self.needed


def knapsack(sizes: Sequence[int], values: Sequence[float], room: int) -> tuple[Vector, list[int]]:
    """The most value for every room up to ``room``, any number of each size, and the last size taken (−1: a step free).

    Whole values give whole sums, exactly.
    """
    best: Vector = [0] * (room + 1)
    took = [-1] * (room + 1)
    for index, (size, value) in enumerate(zip(sizes, values, strict=True)):
        if value <= 0:
            continue
        for at in range(max(size, 1), room + 1):
            total = best[at - size] + value
            if total > best[at]:
                best[at], took[at] = total, index
    for at in range(1, room + 1):
        if best[at - 1] > best[at]:
            best[at], took[at] = best[at - 1], -1
    return best, took


def bound_of(sizes: Sequence[int], load: Sequence[int], values: Sequence[float], room: int) -> Bound:
    """The bound that values of the sizes prove, for rooms up to ``room``."""
    whole = tuple(max(0, int(value * FINE)) for value in values)
    step = max(1, -(-room // STEPS))
    most, _ = knapsack([size // step for size in sizes], whole, room // step)
    return Bound(whole, tuple(int(value) for value in most), step, sum(a * b for a, b in zip(whole, load, strict=True)))


@dataclass
class _Basis:
    """The columns in use (cost, pieces), the inverse of their matrix, and how many of each."""

    columns: list[tuple[float, tuple[int, ...]]]
    inverse: list[Vector]
    level: Vector

    def duals(self) -> Vector:
        costs = [cost for cost, _ in self.columns]
        return [sum(c * row[i] for c, row in zip(costs, self.inverse, strict=True) if c) for i in range(len(costs))]

    def enter(self, cost: float, column: tuple[int, ...]) -> bool:
        """Takes a column in for the one that it drives out; False where none limits it."""
        way = [sum(a * b for a, b in zip(row, column, strict=True) if b) for row in self.inverse]
        ratios = [(max(0.0, self.level[i]) / w, i) for i, w in enumerate(way) if w > 1e-9]
        if not ratios:
            return False
        amount, out = min(ratios)
        pivot = [each / way[out] for each in self.inverse[out]]
        for i, w in enumerate(way):
            if i != out and w:
                self.inverse[i] = [a - w * b for a, b in zip(self.inverse[i], pivot, strict=True)]
                self.level[i] -= w * amount
        self.inverse[out], self.level[out], self.columns[out] = pivot, amount, (cost, column)
        return True


def relaxed(sizes: Sequence[int], load: Sequence[int], prices: Sequence[tuple[int, int]], deadline: float
            ) -> tuple[Vector, list[tuple[float, int, tuple[int, ...]]]]:
    """Values of the sizes (duals) and the fillings (how many sticks, price, pieces) of the relaxed plan so far."""
    count = len(sizes)
    top = max(room for room, _ in prices)
    step = max(1, -(-top // STEPS))
    small = [size // step for size in sizes]
    basis = _first(sizes, load, prices)
    while True:
        duals = basis.duals()
        negative = next((i for i, value in enumerate(duals) if value < -1e-9), -1)
        if negative >= 0:
            if not basis.enter(0.0, tuple(-int(i == negative) for i in range(count))):
                break
            continue
        best, took = knapsack(small, duals, top // step)
        fresh = [(price, _filling(took, small, room // step)) for room, price in prices
                 if best[room // step] > price * (1.0 + 1e-9)]
        if not fresh or not _enter_all(basis, fresh) or time.monotonic() > deadline:
            break
    used = [(level, int(cost), column) for level, (cost, column) in zip(basis.level, basis.columns, strict=True) if cost]
    return basis.duals(), used


def _enter_all(basis: _Basis, fresh: list[tuple[int, tuple[int, ...]]]) -> bool:
    """Takes in every filling that is still worth more than it costs; whether there was one."""
    entered = False
    for price, column in sorted(fresh):
        worth = sum(a * b for a, b in zip(basis.duals(), column, strict=True) if b)
        if worth > price * (1.0 + 1e-9):
            entered = basis.enter(float(price), column) or entered
    return entered


def _first(sizes: Sequence[int], load: Sequence[int], prices: Sequence[tuple[int, int]]) -> _Basis:
    """One filling for each size, of that size alone, in the stick that is cheapest for it."""
    count = len(sizes)
    columns, inverse, level = [], [], []
    for i, size in enumerate(sizes):
        price, many = min(((price, room // size) for room, price in prices if room >= size), key=lambda p: p[0] / p[1])
        columns.append((float(price), tuple(many if j == i else 0 for j in range(count))))
        inverse.append([1.0 / many if j == i else 0.0 for j in range(count)])
        level.append(load[i] / many)
    return _Basis(columns, inverse, level)


def _filling(took: Sequence[int], small: Sequence[int], room: int) -> tuple[int, ...]:
    out = [0] * len(small)
    while room > 0:
        index = took[room]
        if index < 0:
            room -= 1
        else:
            out[index] += 1
            room -= small[index]
    return tuple(out)
