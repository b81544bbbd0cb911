# SPDX-License-Identifier: LGPL-2.1-or-later
"""Filling sticks with pieces: the fullest stick, and whether given sticks can take all pieces.

Everything is counted in whole steps.  A ``Load`` is how many pieces of each size; sizes stand in falling order.
"""

from __future__ import annotations

import random
import time
from collections.abc import Iterator, Sequence
from functools import lru_cache

Load = tuple[int, ...]


class OutOfTime(Exception):
    """The search was stopped before it knew."""


def reaches(sizes: Sequence[int], load: Sequence[int], room: int) -> list[int]:
    """For each size in order the sums up to ``room`` that it and those *after* it make, as bits; the last is for none."""
    mask = (1 << (room + 1)) - 1
    found = [1]
    for size, many in zip(reversed(sizes), reversed(load), strict=True):
        sums, left, step = found[-1], min(many, room // size), 1
        while left > 0:
            step = min(step, left)
            sums |= (sums << (size * step)) & mask
            left, step = left - step, step * 2
        found.append(sums)
    found.reverse()
    return found


def fullest(sizes: Sequence[int], load: Sequence[int], room: int, short: int = 0) -> Load:
    """A filling with the largest sum up to ``room - short``, large pieces first."""
    sums = reaches(sizes, load, room)
    total = (sums[0] & ((1 << (max(0, room - short) + 1)) - 1)).bit_length() - 1
    out = []
    for size, many, after in zip(sizes, load, sums[1:], strict=True):
        count = next(n for n in range(min(many, total // size), -1, -1) if after >> (total - n * size) & 1)
        out.append(count)
        total -= count * size
    return tuple(out)


def weight(sizes: Sequence[int], load: Sequence[int]) -> int:
    """The sum of the sizes of a load."""
    return sum(size * many for size, many in zip(sizes, load, strict=True))


def less(load: Sequence[int], taken: Sequence[int]) -> Load:
    """What is left of a load."""
    return tuple(a - b for a, b in zip(load, taken, strict=True))


def greedy(sizes: Sequence[int], load: Load, rooms: Sequence[int], chance: random.Random, loose: int = 0
           ) -> list[Load] | None:
    """Fills the sticks one after another, each round its largest piece left as full as may be; None if pieces are left.

    ``loose`` steps may be missing from a full stick, by chance, so that another try goes another way.
    """
    plan = []
    for room in rooms:
        first = next((i for i, many in enumerate(load) if many and sizes[i] <= room), -1)
        held = tuple(int(i == first) for i in range(len(sizes)))
        load = less(load, held) if first >= 0 else load
        rest = fullest(sizes, load, room - weight(sizes, held), chance.randint(0, loose) if loose else 0)
        load = less(load, rest)
        plan.append(tuple(a + b for a, b in zip(held, rest, strict=True)))
    return None if any(load) else plan


class Search:
    """Whether sticks can take all pieces, decided by trying every full stick round the largest piece left.

    Sticks of one room are alike, so the largest piece is tried in each room once.  A state (pieces and sticks left) that
    has failed is not entered again.  The search stops with OutOfTime at ``deadline`` (time.monotonic) or after ``nodes``.
    """

    def __init__(self, sizes: Sequence[int], deadline: float, nodes: int) -> None:
        self.sizes, self.deadline, self.nodes = tuple(sizes), deadline, nodes
        self.failed: set[tuple[Load, tuple[tuple[int, int], ...]]] = set()

    def pack(self, load: Load, rooms: Sequence[int]) -> list[tuple[int, Load]] | None:
        """(room, filling) of each stick that is used, or None where it is proven that the sticks cannot take the load."""
        counts: dict[int, int] = {}
        for room in rooms:
            counts[room] = counts.get(room, 0) + 1
        return self._pack(load, tuple(sorted(counts.items())))

    def _pack(self, load: Load, rooms: tuple[tuple[int, int], ...]) -> list[tuple[int, Load]] | None:
        if not any(load):
            return []
        slack = sum(room * many for room, many in rooms) - weight(self.sizes, load)
        if slack < 0 or (load, rooms) in self.failed:
            return None
        self.nodes -= 1
        if self.nodes < 0 or time.monotonic() > self.deadline:
            raise OutOfTime
        largest = next(i for i, many in enumerate(load) if many)
        for room, _ in rooms:
            if self.sizes[largest] <= room:
                rest = tuple((r, m - (r == room)) for r, m in rooms if m > (r == room))
                for filling in self._fillings(load, room, largest, slack):
                    found = self._pack(less(load, filling), rest)
                    if found is not None:
                        return [(room, filling), *found]
        self.failed.add((load, rooms))
        return None

    def _fillings(self, load: Load, room: int, largest: int, slack: int) -> Iterator[Load]:
        """Every filling with the largest piece that nothing left could be added to and that wastes no more than the slack."""
        held = tuple(int(i == largest) for i in range(len(load)))
        left = less(load, held)
        space = room - self.sizes[largest]
        sums = reaches(self.sizes, left, space)
        yield from self._fill(held, left, largest, space, slack, sums)

    def _fill(self, held: Load, left: Load, at: int, space: int, slack: int, sums: list[int]) -> Iterator[Load]:
        if at == len(left):
            if space <= slack and not any(many and size <= space for size, many in zip(self.sizes, left, strict=True)):
                yield held
            return
        window = sums[at] >> max(0, space - slack)
        if not window & ((1 << (space - max(0, space - slack) + 1)) - 1):
            return
        size = self.sizes[at]
        for count in range(min(left[at], space // size), -1, -1):
            more = (*held[:at], held[at] + count, *held[at + 1:])
            fewer = (*left[:at], left[at] - count, *left[at + 1:])
            yield from self._fill(more, fewer, at + 1, space - count * size, slack, sums)


@lru_cache(maxsize=512)
def largest_sum(sizes: tuple[int, ...], load: Load, room: int) -> int:
    """The most of a stick of that room that pieces of the load can fill."""
    return reaches(sizes, load, room)[0].bit_length() - 1
