# SPDX-License-Identifier: LGPL-2.1-or-later
"""The cheapest sticks that pieces can be cut from, with a proof: whole numbers in, whole numbers out.

A least cost is proven by prices (``stick_relaxed``).  Then plans of that cost are looked for: each stick costs a little more
than what is cut from it is priced at, and all these surcharges together must stay within what the cost leaves, which
leaves few ways to cut each stick.  Where the search ends with no plan the next cost is tried, and is proven to be the least.
The search is counted in steps, not in time, so that the same job always gets the same plan.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from itertools import islice

from .stick_relaxed import CELLS, PIVOTS, SCALE, Nest, Pattern, Pieces, Relaxed, Stick, Table, relaxed
from .stick_tries import Plan, Tries

#: Sticks tried within one search, ways listed for one stick, and steps of all searches for a job, before they are given up.
TRIES, WAYS, STEPS = 3_000, 400, 150_000
#: Costs tried one after another from the proven least, and choices of sticks tried for each before the search.
COSTS, CHOICES = 12, 60
#: The stages of a job: cells and pivots for its prices.
STAGES = ((CELLS[0], 0), (CELLS[0], PIVOTS))
#: Steps in which the pieces' price is counted to cover it with whole sticks.
GRID = 3_000

@dataclass(frozen=True)
class Solution:
    """One (stick, pattern) for each stick that is cut; ``least`` is a cost that no plan goes below.

    ``proven`` tells that the plan costs no more than that, ``fewest`` that of plans that cost as little none has fewer
    bought sticks.
    """

    plan: Plan
    cost: int
    least: int
    fewest: bool

    @property
    def proven(self) -> bool:
        return self.cost == self.least


@dataclass(frozen=True)
class Wanted:
    """Pieces of one size, and the nest that they can lie in."""

    size: int
    count: int
    nest: Nest | None = None


def solve(wanted: Sequence[Wanted], sticks: Sequence[Stick]) -> Solution:
    """The cheapest plan for pieces, each of which fits a stick that has no limit; a pattern counts them in their order.

    Sizes and costs are whole numbers; a kerf is counted in by adding it to pieces and sticks alike.  Raises ValueError for
    a piece that no stick takes.
    """
    if not wanted:
        return Solution((), 0, 0, True)
    largest = max((stick.size for stick in sticks if stick.limit is None), default=0)
    if max(each.size for each in wanted) > largest:
        raise ValueError(f"A piece of {max(each.size for each in wanted)} fits no stick; the longest is {largest}.")
    order = _order(wanted)
    step = math.gcd(*(stick.cost for stick in sticks)) or 1
    small = math.gcd(*(each.size for each in wanted), *(each.nest.gain for each in wanted if each.nest))
    scaled = [Stick(stick.size // small, stick.cost // step, stick.limit) for stick in sticks]
    pieces = Pieces(tuple(wanted[i].size // small for i in order), tuple(wanted[i].count for i in order), tuple(
        replace(nest, gain=nest.gain // small) if (nest := wanted[i].nest) else None for i in order))
    plan: Plan = Tries(pieces, scaled).simple_best()
    for cells, pivots in STAGES:
        plan, cost, least, fewest = _Solver(pieces, scaled, cells, plan, pivots).run()
        if cost == least and (fewest or pivots):
            break
    back = [order.index(i) for i in range(len(order))]
    ways = tuple((stick, tuple(way[i] for i in back)) for stick, way in plan)
    return Solution(ways, cost * step, least * step, fewest)


def _order(wanted: Sequence[Wanted]) -> list[int]:
    """The longest first, those of one nest together."""
    longest: dict[Nest, int] = {}
    for each in wanted:
        if each.nest:
            longest[each.nest] = max(each.size, longest.get(each.nest, 0))

    def key(i: int) -> tuple[int, str, int, int]:
        nest = wanted[i].nest
        return (-longest[nest], nest.name, -wanted[i].size, i) if nest else (-wanted[i].size, "", 0, i)

    return sorted(range(len(wanted)), key=key)


class _Solver:
    """One stage: with no ``pivots`` only what is found at once."""

    def __init__(self, pieces: Pieces, sticks: Sequence[Stick], cells: int, known: Plan, pivots: int) -> None:
        self.pieces, self.sticks, self.known, self.deep = pieces, sticks, known, pivots > 0
        self.tries = Tries(pieces, sticks)
        self.relaxed: Relaxed = relaxed(pieces, sticks, cells, known, pivots)
        self.table = Table(pieces, self.relaxed.prices, max(stick.size for stick in sticks), cells)
        self.free = self.tries.free
        self.dearest = max(sticks[j].cost for j in self.free)
        self.holds = [self.table.best(stick.size, -1)[0] for stick in sticks]
        self.need = sum(price * count for price, count in zip(self.relaxed.prices, pieces.counts, strict=True)) - sum(
            self.holds[j] for j in self.tries.spare)

    def run(self) -> tuple[Plan, int, int, bool]:
        least = max(0, -(-self.relaxed.least // SCALE), self.cover())
        starts = (self.known, *(self.tries.simple_best(settled) for settled in self.settled() if self.deep))
        best = self._nearer(min(starts, key=self.tries.rank), least)
        cost = self.tries.cost(best)
        target = least
        while target < cost and target < least + COSTS:
            found, whole = self.at_cost(target, target)
            if found:
                best, cost = found, self.tries.cost(found)
            elif whole and target == least:
                least += 1
            target += 1
        best, fewest = self.with_fewer(best, cost, least)
        return best, cost, min(least, cost), fewest

    def _nearer(self, best: Plan, least: int) -> Plan:
        """A plan that is nearer to the least cost where that is too far off to try every cost between: by halves."""
        low = least
        while self.tries.cost(best) - low > COSTS:
            middle = (low + self.tries.cost(best)) // 2
            found, _ = self.at_cost(middle, low)
            best, low = (found, low) if found else (best, middle)
        return best

    def allows(self, choice: Sequence[int]) -> bool:
        """Whether these sticks can bring what all pieces are priced at less what the limited ones can."""
        return sum(self.holds[j] for j in choice) >= self.need

    def cover(self) -> int:
        """The least cost of whole sticks that can bring what all pieces are priced at."""
        grid = max(1, self.need // GRID)
        gains = [(-(-self.holds[j] // grid), self.sticks[j].cost) for j in self.free]
        costs = [0]
        for value in range(1, max(0, self.need // grid) + 1):
            costs.append(min(cost + costs[max(0, value - gain)] for gain, cost in gains if gain))
        return costs[-1]

    def at_cost(self, target: int, low: int, most: int | None = None) -> tuple[Plan | None, bool]:
        """A plan that costs ``target`` or less with ``most`` bought sticks or fewer, and whether the search was complete.

        First most sticks of a large job are settled by the fractions' whole parts; then choices of sticks that cost ``low``
        or more are tried; last comes the search.
        """
        for settled in self.settled() if self.deep else ():
            found = _Search(self, target, most).run(settled)
            if found is not None:
                return found, True
        for choice in islice(filter(self.allows, self.tries.choices(low, target, most)), CHOICES):
            found = self.tries.within(choice)
            if found is not None:
                return found, True
        if not self.deep:
            return None, False
        search = _Search(self, target, most)
        return search.run(()), search.complete

    def settled(self) -> Iterator[Plan]:
        """The fractions' whole parts as far as there are pieces for them, and the same with one stick less of each way."""
        for less in (0, 1):
            left, limits, kept = self.pieces.counts, [stick.limit for stick in self.sticks], []
            for stick, way, amount in self.relaxed.columns:
                for _ in range(int(amount + 1e-6) - less):
                    if all(n <= m for n, m in zip(way, left, strict=True)) and limits[stick] != 0:
                        left = tuple(m - n for n, m in zip(way, left, strict=True))
                        limits[stick] = (limits[stick] or 0) - 1
                        kept.append((stick, way))
            if kept:
                yield tuple(kept)

    def with_fewer(self, plan: Plan, cost: int, least: int) -> tuple[Plan, bool]:
        """Plans of the same cost with fewer bought sticks, from the fewest that it could be."""
        bought = self.tries.bought(plan)
        fewest = -(-min(least, cost) // self.dearest)
        for most in range(fewest, bought):
            found, whole = self.at_cost(cost, cost, most)
            if found:
                return found, most == fewest and cost == least
            if whole and most == fewest:
                fewest += 1
        return plan, bought == fewest and cost == least


class _Search:
    """Sticks chosen one after another, the longest piece that is left always in the next one, within the surcharge left."""

    def __init__(self, solver: _Solver, target: int, most: int | None) -> None:
        self.solver, self.target, self.most = solver, target, most
        self.tries, self.complete = TRIES, True
        self.failed: dict[tuple[Pattern, tuple[int, ...]], int] = {}

    def run(self, settled: Plan) -> Plan | None:
        solver = self.solver
        left = list(solver.pieces.counts)
        limits = [stick.limit or 0 for stick in solver.sticks]
        budget = self.target * SCALE - solver.relaxed.least
        bought = 0
        for stick, way in settled:
            left = [m - n for n, m in zip(way, left, strict=False)]
            budget -= self._surcharge(stick, way)
            limits[stick] -= solver.sticks[stick].limit is not None
            bought += solver.sticks[stick].limit is None
        if budget < 0 or min(limits) < 0:
            self.complete = False
            return None
        rest = self._next(tuple(left), tuple(limits), budget, 0, bought)
        return None if rest is None else (*settled, *rest)

    def _surcharge(self, stick: int, way: Pattern) -> int:
        told, own = self.solver.relaxed, self.solver.sticks[stick]
        paid = own.cost * SCALE if own.limit is None else told.stick_prices[stick]
        return paid - sum(n * price for n, price in zip(way, told.prices, strict=False))

    def _next(self, left: Pattern, limits: tuple[int, ...], budget: int, spare: int, bought: int) -> Plan | None:
        """The rest of a plan; ``spare`` is the first limited kind of stick that is not settled yet."""
        while spare < len(limits) and not limits[spare]:
            spare += 1
        if not any(left):
            unused = sum(n * price for n, price in zip(limits[spare:], self.solver.relaxed.stick_prices[spare:], strict=False))
            return () if unused <= budget and (self.most is None or bought <= self.most) else None
        key = (left, (*limits[spare:], bought if self.most is not None else 0))
        if self.failed.get(key, -1) >= budget:
            return None
        self.tries -= 1
        if self.tries < 0 or self.solver.table.walked > STEPS:
            self.complete = False
            return None
        found = self._limited(left, limits, budget, spare, bought) if spare < len(limits) else (
            self._bought(left, limits, budget, spare, bought))
        if found is None and self.complete:
            self.failed[key] = max(budget, self.failed.get(key, -1))
        return found

    def _limited(self, left: Pattern, limits: tuple[int, ...], budget: int, spare: int, bought: int) -> Plan | None:
        """Every way to cut one more limited stick of a kind, or to leave the rest of the kind as it is."""
        less = tuple(n - (j == spare) for j, n in enumerate(limits))
        for surcharge, way in self._ways(spare, left, budget, None):
            rest = self._next(tuple(m - n for n, m in zip(way, left, strict=False)), less, budget - surcharge, spare, bought)
            if rest is not None:
                return ((spare, way), *rest)
        unused = limits[spare] * self.solver.relaxed.stick_prices[spare]
        none_left = tuple(0 if j == spare else n for j, n in enumerate(limits))
        return self._next(left, none_left, budget - unused, spare + 1, bought) if unused <= budget else None

    def _bought(self, left: Pattern, limits: tuple[int, ...], budget: int, spare: int, bought: int) -> Plan | None:
        if self.most is not None and bought + self._sticks_needed(left) > self.most:
            return None
        first = next(i for i, n in enumerate(left) if n)
        ways = sorted((surcharge, -self.solver.sticks[j].size, j, way) for j in self.solver.free
                      for surcharge, way in self._ways(j, left, budget, first))
        for surcharge, _, stick, way in ways:
            after = tuple(m - n for n, m in zip(way, left, strict=False))
            rest = self._next(after, limits, budget - surcharge, spare, bought + 1)
            if rest is not None:
                return ((stick, way), *rest)
        return None

    def _sticks_needed(self, left: Pattern) -> int:
        priced = sum(n * price for n, price in zip(left, self.solver.relaxed.prices, strict=False))
        return -(-priced // (self.solver.dearest * SCALE))

    def _ways(self, stick: int, left: Pattern, budget: int, first: int | None) -> Iterator[tuple[int, Pattern]]:
        """Ways to cut a stick within the budget that leave no room for a piece that is left, piece ``first`` among them."""
        solver, told = self.solver, self.solver.relaxed
        own, sizes = solver.sticks[stick], solver.pieces.sizes
        paid = own.cost * SCALE if own.limit is None else told.stick_prices[stick]
        found: list[tuple[int, Pattern]] = []
        whole = solver.table.walk(own.size, lambda: paid - budget if len(found) < WAYS else paid + SCALE, left,
                                  lambda value, way: found.append((value, way)), first)
        self.complete = self.complete and whole and len(found) < WAYS
        for value, way in sorted(found, reverse=True):
            over = own.size - solver.pieces.room(way)
            if not any(m > n and size <= over for n, m, size in zip(way, left, sizes, strict=False)):
                yield paid - value, way
