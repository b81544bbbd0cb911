# SPDX-License-Identifier: LGPL-2.1-or-later
"""Plans found by filling sticks one after another as full as may be: good ones at once, with no proof.

First a choice of sticks that are long enough together, then a try to get everything into it.  Which lengths pieces can add up
to is kept as the bits of one number, so that a try takes milliseconds.
"""

from __future__ import annotations

import random
from collections.abc import Iterator, Sequence

from .stick_relaxed import Pattern, Pieces, Stick

Plan = tuple[tuple[int, Pattern], ...]
#: Steps to list choices of sticks, and tries for each.
STEPS, TRIES = 20_000, 6
#: Sticks filled in all tries of a stage, times the pieces of the job, before they are given up.
FILLS = 150_000


class Tries:
    """Filling sticks; ``free`` are the sticks without a limit."""

    def __init__(self, pieces: Pieces, sticks: Sequence[Stick]) -> None:
        self.pieces, self.sticks = pieces, sticks
        self.free = [j for j, stick in enumerate(sticks) if stick.limit is None]
        spare = [j for j, stick in enumerate(sticks) for _ in range(stick.limit or 0)]
        self.spare = sorted(spare, key=lambda j: sticks[j].size)
        self.chance, self.fills = random.Random(1), 0

    def cost(self, plan: Plan) -> int:
        """What a plan's sticks cost."""
        return sum(self.sticks[stick].cost for stick, _ in plan)

    def bought(self, plan: Plan) -> int:
        """How many of a plan's sticks are bought."""
        return sum(1 for stick, _ in plan if self.sticks[stick].limit is None)

    def simple_best(self, settled: Plan = ()) -> Plan:
        """The cheapest of the simple plans that begin as ``settled``, of equals that with fewer bought sticks."""
        longest = max(self.pieces.sizes)
        return min((self.simple(j, settled) for j in self.free if self.sticks[j].size >= longest), key=self.rank)

    def rank(self, plan: Plan) -> tuple[int, int]:
        """What makes a plan better: less cost, then fewer bought sticks."""
        return self.cost(plan), self.bought(plan)

    def simple(self, bought: int, settled: Plan = ()) -> Plan:
        """One stick after another of the limited ones and then of one length; each then the cheapest that holds as much."""
        left, plan, spare = self.pieces.counts, list(settled), list(self.spare)
        for stick, way in settled:
            left = tuple(m - n for m, n in zip(left, way, strict=True))
            if self.sticks[stick].limit:
                spare.remove(stick)
        while any(left):
            stick = spare.pop(0) if spare else bought
            way = self.fill(left, self.sticks[stick].size, 0, False)
            left = tuple(m - n for m, n in zip(left, way, strict=True))
            if any(way):
                plan.append((stick if self.sticks[stick].limit else self._cheapest(self.pieces.room(way)), way))
        return tuple(plan)

    def _cheapest(self, need: int) -> int:
        return min((j for j in self.free if self.sticks[j].size >= need), key=lambda j: (self.sticks[j].cost, j))

    def within(self, choice: Sequence[int]) -> Plan | None:
        """A plan out of the limited sticks and these; None where none was found."""
        total = sum(self.sticks[j].size for j in (*self.spare, *choice)) - sum(
            size * count for size, count in zip(self.pieces.sizes, self.pieces.counts, strict=True))
        order = list(choice)
        for number in range(TRIES):
            found = self._filled((*self.spare, *order), 0 if number < 4 else max(1, 2 * abs(total) // (len(choice) + 1)),
                                 number != TRIES - 1)
            if found is not None or self.fills > FILLS:
                return found
            order.reverse()
            if number:
                self.chance.shuffle(order)
        return None

    def _filled(self, order: Sequence[int], loose: int, neat: bool) -> Plan | None:
        left, plan = self.pieces.counts, []
        self.fills += len(order) * sum(left)
        for stick in order:
            way = self.fill(left, self.sticks[stick].size, self.chance.randint(0, loose) if loose else 0, neat)
            left = tuple(m - n for m, n in zip(left, way, strict=True))
            if any(way):
                plan.append((stick, way))
        return None if any(left) else tuple(plan)

    def fill(self, left: Pattern, room: int, short: int, neat: bool) -> Pattern:
        """The longest piece left that fits, and what fills the rest best, or ``short`` less.

        ``neat`` keeps pieces that lie in pairs or rows together where there are enough of them.
        """
        first = next((i for i, n in enumerate(left) if n and self.pieces.sizes[i] <= room), None)
        if first is None:
            return (0,) * len(left)
        sums = self._sums(left, room, first, neat)
        if not sums[0][0]:    # not two of the longest fit
            neat, sums = False, self._sums(left, room, first, False)
        reached = sums[0][0] & ((1 << (max(0, room - short) + 1)) - 1) or sums[0][0]
        total, open_nest, way = reached.bit_length() - 1, 0, [0] * first
        for number in range(first, len(left)):
            rooms, after = self.pieces.steps[number][open_nest]
            count = next(n for n in reversed(self._counts(number, left, first, neat)) if rooms[n] <= total
                         and sums[number - first + 1][after[n]] >> (total - rooms[n]) & 1)
            way.append(count)
            total, open_nest = total - rooms[count], after[count]
        return tuple(way)

    def _sums(self, left: Pattern, room: int, first: int, neat: bool) -> list[tuple[int, int]]:
        """For each piece from ``first`` on, without and with an open nest: the rooms that it and later ones take, as bits."""
        mask, found = (1 << (room + 1)) - 1, [(1, 1)]
        for number in reversed(range(first, len(left))):
            counts, rows = self._counts(number, left, first, neat), []
            for rooms, after in self.pieces.steps[number][:2 if self.pieces.nests[number] else 1]:
                bits = 0
                for n in counts:
                    if rooms[n] > room:
                        break
                    bits |= found[-1][after[n]] << rooms[n]
                rows.append(bits & mask)
            found.append((rows[0], rows[-1]))
        return found[::-1]

    def _counts(self, number: int, left: Pattern, first: int, neat: bool) -> Sequence[int]:
        """How many of a piece a stick may hold, the fewest first."""
        counts = range(int(number == first), left[number] + 1)
        nest = self.pieces.nests[number]
        if not neat or nest is None or left[number] < 2:
            return counts
        return [n for n in counts if n in (0, left[number]) or (n % 2 == 0 if nest.pairs else n > 1)]

    def choices(self, low: int, high: int, most: int | None = None) -> Iterator[tuple[int, ...]]:
        """Choices of ``most`` bought sticks or fewer that cost from ``low`` to ``high``, the fewest first."""
        kinds = sorted(self.free, key=lambda j: -self.sticks[j].cost)
        prices = [self.sticks[j].cost for j in kinds]
        left = [STEPS]

        def descend(at: int, count: int, low: int, high: int) -> Iterator[tuple[int, ...]]:
            left[0] -= 1
            if not count:
                yield ()
            elif left[0] > 0 and at < len(kinds) and count * prices[-1] <= high and low <= count * prices[at]:
                for many in range(min(count, high // prices[at]), -1, -1):
                    paid = many * prices[at]
                    if many < count or paid >= low:
                        for rest in descend(at + 1, count - many, low - paid, high - paid):
                            yield (kinds[at],) * many + rest

        limit = high // prices[-1]
        for count in range(-(-low // prices[0]), (limit if most is None else min(limit, most)) + 1):
            yield from descend(0, count, low, high)
