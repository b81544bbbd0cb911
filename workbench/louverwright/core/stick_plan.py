# SPDX-License-Identifier: LGPL-2.1-or-later
"""Which sticks to buy and how to divide them: the least cost, then the fewest sticks, with proof where there is one.

The cutting stock problem with several lengths.  A saw cut of width k lies between two pieces, so that pieces
of lengths l fit in a stick of usable length L where Σ(l + k) ≤ L + k: sizes are lengths with their saw cut, rooms are
usable lengths with one.
All in whole steps of 1/10 mm, sizes rounded up and rooms down.
"""

from __future__ import annotations

import math
import random
import time
from collections import Counter
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from .stick_bound import Bound, bound_of, relaxed
from .stick_fill import Load, OutOfTime, Search, fullest, greedy, largest_sum, less, weight

#: Steps in a millimetre, and how far (mm) rounding errors of lengths in inches reach.
STEPS, NOISE = 10, 1e-6
#: Tries by chance for one choice of sticks, states of an exact search, and choices of sticks for one cost.
TRIES, NODES, CHOICES = 24, 40_000, 400
#: Choices of sticks are listed one by one up to so many steps of cost; beyond, the relaxed plan is rounded first.
LISTED = 60


@dataclass(frozen=True)
class Sold:
    """A stick to be had: its usable room in steps, and what it costs (any whole unit above 0)."""

    room: int
    price: int


@dataclass(frozen=True)
class Filled:
    """A stick in the plan: its room, price (0 for one that is there already) and how many pieces of each size."""

    room: int
    price: int
    pieces: Load


@dataclass(frozen=True)
class StickPlan:
    """Sizes in falling order, the sticks, and the bound: no plan costs less than ``bound``.

    ``proven`` tells that the cost is the least; ``fewest`` that no plan of that cost has fewer bought sticks.
    """

    sizes: tuple[int, ...]
    sticks: tuple[Filled, ...]
    bound: int
    proven: bool
    fewest: bool

    @property
    def cost(self) -> int:
        """What all sticks bought cost together."""
        return sum(stick.price for stick in self.sticks)


class TooLong(ValueError):
    """A piece that no stick is long enough for; ``size`` is its size in steps."""

    def __init__(self, size: int) -> None:
        super().__init__(f"No stick can take a piece of {size} steps.")
        self.size = size


def size_of(length: float, kerf: float) -> int:
    """A piece's size with its saw cut (mm) in steps, rounded up."""
    return math.ceil((length + kerf - NOISE) * STEPS)


def room_of(usable: float, kerf: float) -> int:
    """A stick's room for sizes (mm) in steps, rounded down."""
    return math.floor((usable + kerf + NOISE) * STEPS)


def stick_plan(wanted: dict[int, int], sold: Sequence[Sold], own: Sequence[int] = (), seconds: float = 1.0) -> StickPlan:
    """The plan for ``wanted`` pieces (size → how many) from sticks ``sold`` and rooms that are there already (``own``).

    Raises TooLong for a piece that fits no stick.  It is the same plan each time unless ``seconds`` run out.
    """
    sizes = tuple(sorted(wanted, reverse=True))
    longest = max((*(each.room for each in sold), *own), default=0)
    if sizes and sizes[0] > longest:
        raise TooLong(sizes[0])
    return _Planner(sizes, tuple(wanted[size] for size in sizes), _worth_buying(sold), tuple(sorted(own)), seconds).plan()


def _worth_buying(sold: Sequence[Sold]) -> tuple[Sold, ...]:
    """The sticks without those that a longer one costs no more than; the shortest first."""
    kept: list[Sold] = []
    for each in sorted(set(sold), key=lambda s: (-s.room, s.price)):
        if not kept or each.price < kept[-1].price:
            kept.append(each)
    return tuple(reversed(kept))


class _Planner:
    """One search: bounds first, then every choice of sticks from the bound upward until one can take the pieces."""

    def __init__(self, sizes: Load, load: Load, sold: tuple[Sold, ...], own: tuple[int, ...], seconds: float) -> None:
        self.sizes, self.load, self.sold, self.own = sizes, load, sold, own
        self.deadline = time.monotonic() + seconds
        self.chance = random.Random(1)
        self.step = math.gcd(*(each.price for each in sold)) if sold else 1
        self.bounds: list[Bound] = []
        self.fillings: list[tuple[float, int, Load]] = []

    def plan(self) -> StickPlan:
        if not any(self.load):
            return StickPlan(self.sizes, (), 0, True, True)
        best = self._simple()
        low = self._bound()
        best = self._better(best, self._rounded(low, best))
        sure, cost = True, low
        while cost <= _cost(best):
            found, all_tried = self._at_cost(cost, len(_bought(best)) if cost == _cost(best) else 0)
            sure = sure and all_tried
            best = self._better(best, found)
            if found is not None or time.monotonic() > self.deadline:
                sure = sure and found is not None
                break
            low = cost + self.step if sure else low
            cost += self.step
        proven = _cost(best) <= low
        return StickPlan(self.sizes, tuple(best), min(low, _cost(best)), proven, proven and sure)

    def _simple(self) -> list[Filled]:
        """A plan at once: stick after stick, each the one that is filled at the least cost for what it holds."""
        load, plan = self.load, []
        for room in self.own:
            filling = self._one(load, room)
            load = less(load, filling)
            plan += [Filled(room, 0, filling)] if any(filling) else []
        while any(load):
            fit = [each for each in self.sold if each.room >= next(s for s, m in zip(self.sizes, load, strict=True) if m)]
            if not fit:
                raise TooLong(next(s for s, m in zip(self.sizes, load, strict=True) if m))
            tries = [(each, self._one(load, each.room)) for each in fit]
            each, filling = min(tries, key=lambda t: (t[0].price / weight(self.sizes, t[1]), t[0].price))
            times = max(1, min(m // f for m, f in zip(load, filling, strict=True) if f) // 2)
            plan += [Filled(each.room, each.price, filling)] * times
            load = less(load, tuple(times * f for f in filling))
        return plan

    def _one(self, load: Load, room: int) -> Load:
        """The largest piece that a stick can take, and what fills the rest best."""
        first = next((i for i, many in enumerate(load) if many and self.sizes[i] <= room), -1)
        if first < 0:
            return (0,) * len(load)
        held = tuple(int(i == first) for i in range(len(load)))
        rest = fullest(self.sizes, less(load, held), room - self.sizes[first])
        return tuple(a + b for a, b in zip(held, rest, strict=True))

    def _bound(self) -> int:
        """The least cost that is proven, a whole number of the prices' steps."""
        if not self.sold:
            return 0
        prices = [(each.room, each.price) for each in self.sold]
        top = max((*self.own, *(room for room, _ in prices)))
        fits = all(any(room >= size for room, _ in prices) for size in self.sizes)
        spare = sum(largest_sum(self.sizes, self.load, room) for room in self.own)
        whole = max(0, weight(self.sizes, self.load) - spare)
        rates = [(largest_sum(self.sizes, self.load, room), price) for room, price in prices]
        low = min((-(-whole * price // held) for held, price in rates if held), default=0)
        if fits:
            half = time.monotonic() + (self.deadline - time.monotonic()) / 2.0
            duals, self.fillings = relaxed(self.sizes, self.load, prices, half)
            self.bounds.append(bound_of(self.sizes, self.load, duals, top))
            low = max(low, *(math.ceil(bound.cost(prices, self.own)) for bound in self.bounds))
        return -(-low // self.step) * self.step

    def _rounded(self, low: int, best: list[Filled]) -> list[Filled] | None:
        """The whole sticks of the relaxed plan, and what they leave planned by itself; None where that is no way."""
        if self.own or not self.fillings or low // self.step <= LISTED:
            return None
        load, plan = self.load, []
        for level, price, filling in sorted(self.fillings, reverse=True):
            room = next(each.room for each in self.sold if each.price == price)
            if weight(self.sizes, filling) <= room:
                times = min((int(level + 1e-9), *(m // f for m, f in zip(load, filling, strict=True) if f)))
                plan += [Filled(room, price, filling)] * times
                load = less(load, tuple(times * f for f in filling))
        if not plan or not any(load):
            return plan or None
        rest = tuple((size, many) for size, many in zip(self.sizes, load, strict=True) if many)
        left = max(0.05, (self.deadline - time.monotonic()) / 2.0)
        part = stick_plan(dict(rest), self.sold, (), left)
        at = {size: i for i, size in enumerate(self.sizes)}
        for stick in part.sticks:
            pieces = [0] * len(self.sizes)
            for size, many in zip(part.sizes, stick.pieces, strict=True):
                pieces[at[size]] = many
            plan.append(Filled(stick.room, stick.price, tuple(pieces)))
        return plan

    def _better(self, best: list[Filled], other: list[Filled] | None) -> list[Filled]:
        """The cheaper of two plans, of equals that with fewer sticks bought."""
        if other is None or (_cost(best), len(_bought(best))) <= (_cost(other), len(_bought(other))):
            return best
        return other

    def _at_cost(self, cost: int, below: int) -> tuple[list[Filled] | None, bool]:
        """A plan of exactly this cost with the fewest sticks (fewer than ``below`` unless 0), and whether all that come
        before it are proven to be none."""
        sure, tried = True, 0
        for rooms in self._choices(cost, below):
            tried += 1
            if time.monotonic() > self.deadline or tried > CHOICES:
                return None, False
            try:
                found = self._pack(rooms)
            except OutOfTime:
                sure = False
                continue
            if found is not None:
                return found, sure
        return None, sure

    def _choices(self, cost: int, below: int) -> Iterator[tuple[Sold, ...]]:
        """Choices of sticks of exactly this cost that the bounds allow, the fewest sticks first."""
        need = weight(self.sizes, self.load) - sum(self.own)
        dearest = max((each.price for each in self.sold), default=1)
        cheapest = min((each.price for each in self.sold), default=1)
        most = min(cost // cheapest, below - 1 if below else cost)
        for count in range(-(-cost // dearest), most + 1):
            for choice in _sums(tuple(reversed(self.sold)), count, cost, self.deadline):
                rooms = (*self.own, *(each.room for each in choice))
                if sum(each.room for each in choice) >= need and all(bound.allows(rooms) for bound in self.bounds):
                    yield choice

    def _pack(self, choice: tuple[Sold, ...]) -> list[Filled] | None:
        """The pieces in these sticks and the own ones, or None where it is proven that they do not fit; else OutOfTime."""
        rooms = (*self.own, *sorted(each.room for each in choice))
        slack = sum(rooms) - weight(self.sizes, self.load)
        for number in range(TRIES):
            if number and time.monotonic() > self.deadline:
                break
            order = rooms if number % 2 == 0 else (*self.own, *reversed(rooms[len(self.own):]))
            loose = 0 if number < 2 else max(1, 2 * slack // len(rooms))
            found = greedy(self.sizes, self.load, order, self.chance, loose)
            if found is not None:
                return self._filled(list(zip(order, found, strict=True)), choice)
        packed = Search(self.sizes, self.deadline, NODES).pack(self.load, rooms)
        return None if packed is None else self._filled(packed, choice)

    def _filled(self, packed: list[tuple[int, Load]], choice: tuple[Sold, ...]) -> list[Filled]:
        """Rooms with their fillings as sticks: the own ones first, then those that are bought."""
        own, out = Counter(self.own), []
        prices = {each.room: each.price for each in choice}
        for room, filling in packed:
            if any(filling):
                free = own[room] > 0
                own[room] -= int(free)
                out.append(Filled(room, 0 if free else prices[room], filling))
        return out


def _cost(plan: Sequence[Filled]) -> int:
    return sum(stick.price for stick in plan)


def _bought(plan: Sequence[Filled]) -> list[Filled]:
    return [stick for stick in plan if stick.price]


def _sums(sold: tuple[Sold, ...], count: int, cost: int, deadline: float) -> Iterator[tuple[Sold, ...]]:
    """Every choice of ``count`` sticks that cost exactly ``cost``; the dearest come first in ``sold``."""
    if count == 0 or not sold:
        if count == 0 and cost == 0:
            yield ()
        return
    if cost > count * sold[0].price or cost < count * sold[-1].price or time.monotonic() > deadline:
        return
    first, rest = sold[0], sold[1:]
    for many in range(min(count, cost // first.price), -1, -1):
        for others in _sums(rest, count - many, cost - many * first.price, deadline):
            yield (first,) * many + others
