# SPDX-License-Identifier: LGPL-2.1-or-later
"""Sticks cut in fractions: prices for the pieces, and from them a cost that no plan can go below.

Whole sticks are hard to count, parts of sticks are easy: a linear programme whose columns are ways to cut one stick,
made as they are needed (the method of Gilmore and Gomory, 1961).  Its prices are worked out in floats, then rounded to whole
numbers and *checked* in whole numbers, so that no float decides what is proven.
"""

from __future__ import annotations

from bisect import bisect_right
from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from functools import cached_property

#: Prices are whole numbers of one part in so many of the cost's unit.
SCALE = 1_000_000
#: Cells of the table that bounds what a stick can hold: more are slower and sharper; the second if the first proves nothing.
CELLS = (3_000, 12_000)
#: Steps within one search for a better way to cut a stick, and for the best one before the table's bound is taken instead.
QUICK, STEPS = 200, 4_000
#: Columns entered before the prices are taken as they are; a price below this is 0.
PIVOTS, NOTHING = 1_500, 1e-9

Pattern = tuple[int, ...]


@dataclass(frozen=True)
class Stick:
    """A length that sticks come in: ``size`` and ``cost`` are whole numbers; ``limit`` is how many there are, None for any."""

    size: int
    cost: int
    limit: int | None = None


@dataclass(frozen=True)
class Nest:
    """Pieces that one stick can hold point to heel, known by ``name``: each after the first saves ``gain``, or each second
    (``pairs``) where only one end slants.
    """

    name: str
    gain: int
    pairs: bool = False


@dataclass(frozen=True)
class Pieces:
    """Pieces to cut: sizes and how many of each, whole numbers; a size has its kerf in it, as sticks have.

    Pieces of one nest stand together.
    """

    sizes: tuple[int, ...]
    counts: tuple[int, ...]
    nests: tuple[Nest | None, ...]

    def takes(self, number: int, count: int, open_nest: int) -> tuple[int, int]:
        """The room that ``count`` pieces take in a stick, and whether they leave the next piece (1 or 0) a slanting end to
        lie against, where pieces before them left one (``open_nest``)."""
        nest, room = self.nests[number], self.sizes[number] * count
        if nest is None or not count:
            return room, open_nest if nest and self.goes_on(number) else 0
        room -= nest.gain * ((count + open_nest) // 2 if nest.pairs else count - 1 + open_nest)
        after = (count + open_nest) % 2 if nest.pairs else 1
        return room, after if self.goes_on(number) else 0

    def goes_on(self, number: int) -> bool:
        """Whether the next piece is of the same nest."""
        return self.nests[number] is not None and self.nests[number] == (*self.nests, None)[number + 1]

    def room(self, way: Pattern) -> int:
        """The room that a way to cut a stick takes."""
        total, open_nest = 0, 0
        for number, count in enumerate(way):
            room, open_nest = self.takes(number, count, open_nest)
            total += room
        return total

    @cached_property
    def nearest(self) -> tuple[int, ...]:
        """Twice the room that each piece takes at least, however many lie together."""
        return tuple(2 * size - (0 if nest is None else nest.gain if nest.pairs else 2 * nest.gain)
                     for size, nest in zip(self.sizes, self.nests, strict=True))

    @cached_property
    def steps(self) -> tuple[tuple[tuple[list[int], list[int]], ...], ...]:
        """For each piece, without and with an open nest: the rooms that 0, 1, 2 … of it take, and the nest after them."""
        return tuple(tuple((list(rooms), list(after)) for open_nest in (0, 1) for rooms, after in [
            zip(*(self.takes(number, n, open_nest) for n in range(count + 1)), strict=True)])
            for number, count in enumerate(self.counts))


@dataclass(frozen=True)
class Relaxed:
    """Prices of the pieces and of limited sticks (1/SCALE of a cost), and the columns in use: (stick, pattern, how often).

    ``least`` (in 1/SCALE) is proven: the price of all pieces less that of all limited sticks (below 0 where these are plenty).
    """

    prices: tuple[int, ...]
    stick_prices: tuple[int, ...]
    columns: tuple[tuple[int, Pattern, float], ...]
    least: int


class Table:
    """For each piece and room left: a bound on the price of what this and the later pieces can bring (a grid, rounded so that
    it is never too low).  ``rows`` has two for each piece: without and with an open nest."""

    def __init__(self, pieces: Pieces, prices: Sequence[int], largest: int, cells: int) -> None:
        self.pieces, self.prices, self.largest = pieces, prices, largest
        self.grid, self.walked = max(1, -(-largest // cells)), 0
        none = [0] * (largest // self.grid + 1)
        self.rows: list[tuple[list[int], list[int]]] = [(none, none)]
        for number in reversed(range(len(pieces.sizes))):
            self.rows.insert(0, self._row(number))

    def _row(self, number: int) -> tuple[list[int], list[int]]:
        size, price, nest = self.pieces.sizes[number], self.prices[number], self.pieces.nests[number]
        free, held = self.rows[0] if self.pieces.goes_on(number) else (self.rows[0][0],) * 2
        most = min(self.pieces.counts[number], self.largest // (size - (nest.gain if nest else 0)))
        if nest is None:
            row = self._with(free, size, most, price)
            return row, row
        near = size - nest.gain
        if not nest.pairs:
            later = self._with(held, near, most - 1, price)
            return _higher(free, self._with(later, size, 1, price)), _higher(later, self._with(later, near, 1, price))
        pair, few = size + near, (most - 1) // 2
        return (_higher(self._with(free, pair, most // 2, 2 * price),
                        self._with(self._with(held, pair, few, 2 * price), size, 1, price)),
                _higher(self._with(held, pair, most // 2, 2 * price),
                        self._with(self._with(free, pair, few, 2 * price), near, 1, price)))

    def _with(self, row: list[int], size: int, count: int, price: int) -> list[int]:
        """The row with ``count`` more pieces to choose from, in lots of 1, 2, 4 …"""
        lot, size = 1, size // self.grid if price else 0
        while count > 0 and price > 0:
            lot = min(lot, count)
            shift, gain = lot * size, lot * price
            if shift < len(row):
                more = [a if a > b + gain else b + gain for a, b in zip(row[shift:], row, strict=False)]
                row = row[:shift] + more
            count, lot = count - lot, 2 * lot
        return row

    def bound(self, first: int, room: int) -> int:
        """What pieces from number ``first`` on can bring at most in ``room``."""
        dear, near = self.dearest[first]
        return min(self.rows[first][0][room // self.grid], 2 * room * dear // near)

    @cached_property
    def dearest(self) -> list[tuple[int, int]]:
        """For each piece, of it and those after it, what brings most for its length: the price and twice the length."""
        found = [(0, 1)]
        for price, near in reversed(list(zip(self.prices, self.pieces.nearest, strict=True))):
            found.append(max(found[-1], (price, near), key=lambda each: each[0] / each[1]))
        return found[::-1]

    def best(self, room: int, floor: int, steps: int = STEPS) -> tuple[int, Pattern]:
        """A bound on what one stick brings, and the best way found: exact where the search ends, the table's bound if not."""
        if self.bound(0, room) <= floor:
            return self.bound(0, room), ()
        found: list[tuple[int, Pattern]] = [(floor, ())]
        whole = self.walk(room, lambda: found[-1][0] + 1, self.pieces.counts, lambda value, way: found.append((value, way)),
                          steps=steps)
        return found[-1][0] if whole else self.bound(0, room), found[-1][1]

    def walk(self, room: int, wanted: Callable[[], int], most: Sequence[int], take: Callable[[int, Pattern], object],
             first: int | None = None, steps: int = STEPS) -> bool:
        """Hands every way to fill ``room`` that brings ``wanted()`` or more to ``take``; False where it was cut short.

        With ``first`` it has that piece in it and none before it.  ``walked`` counts the steps of all walks of this table.
        """
        moves, prices, rows, grid, last = self.pieces.steps, self.prices, self.rows, self.grid, len(self.prices)
        left = [steps]

        def descend(number: int, room: int, open_nest: int, value: int, way: Pattern) -> None:
            left[0] -= 1
            if number == last:
                if value >= wanted():
                    take(value, way)
                return
            (rooms, after), price, later = moves[number][open_nest], prices[number], rows[number + 1]
            top = min(most[number], bisect_right(rooms, room) - 1)
            tries = sorted([(value + n * price + later[after[n]][(room - rooms[n]) // grid], n)
                            for n in range(int(number == first), top + 1)], reverse=True)
            for bound, n in tries:
                if bound < wanted() or left[0] <= 0:
                    return
                descend(number + 1, room - rooms[n], after[n], value + n * price, (*way, n))

        start = first or 0
        descend(start, room, 0, 0, (0,) * start)
        self.walked += steps - max(0, left[0])
        return left[0] > 0


def _higher(row: list[int], other: list[int]) -> list[int]:
    return [max(each) for each in zip(row, other, strict=True)]


class _Master:
    """The linear programme over the columns so far: cover the counts, keep to the limits, at the least cost."""

    def __init__(self, pieces: Pieces, sticks: Sequence[Stick], start: Sequence[tuple[int, int]]) -> None:
        """``start`` gives each piece a stick of no limit and how many of the piece it holds."""
        self.sticks, self.kinds = sticks, len(pieces.sizes)
        self.limited = [number for number, stick in enumerate(sticks) if stick.limit is not None]
        rows = self.kinds + len(self.limited)
        self.columns: list[tuple[int, Pattern]] = [(stick, _single(self.kinds, i, n)) for i, (stick, n) in enumerate(start)]
        self.basis = [*range(self.kinds), *(-1 - self.kinds - j for j in range(len(self.limited)))]
        self.inverse = [[0.0] * rows for _ in range(rows)]
        for i in range(rows):
            self.inverse[i][i] = 1.0 / start[i][1] if i < self.kinds else 1.0
        amounts = [*map(float, pieces.counts), *(float(sticks[j].limit or 0) for j in self.limited)]
        self.amounts = [self.inverse[i][i] * amounts[i] for i in range(rows)]
        self.seen = set(self.columns)

    def cost(self, column: int) -> float:
        return float(self.sticks[self.columns[column][0]].cost) if column >= 0 else 0.0

    def vector(self, column: int) -> list[float]:
        """A column's entries; −1 − i is what is over of row i (of a limit: what is left)."""
        if column < 0:
            row = -1 - column
            return [(-1.0 if row < self.kinds else 1.0) if i == row else 0.0 for i in range(len(self.basis))]
        stick, pattern = self.columns[column]
        return [*map(float, pattern), *(1.0 if stick == j else 0.0 for j in self.limited)]

    def prices(self) -> list[float]:
        costs = [self.cost(column) for column in self.basis]
        used = [i for i, cost in enumerate(costs) if cost]
        return [sum(costs[i] * self.inverse[i][j] for i in used) for j in range(len(self.basis))]

    def entering(self, prices: Sequence[float]) -> int | None:
        """The column in hand that saves most; None where none saves anything."""
        best, chosen = -1e-7, None
        for row, price in enumerate(prices):
            saving = price if row < self.kinds else -price
            if saving < best:
                best, chosen = saving, -1 - row
        for number, (stick, pattern) in enumerate(self.columns):
            saving = self.sticks[stick].cost - sum(n * p for n, p in zip(pattern, prices, strict=False) if n)
            if stick in self.limited:
                saving -= prices[self.kinds + self.limited.index(stick)]
            if saving < best:
                best, chosen = saving, number
        return chosen

    def pivot(self, column: int) -> None:
        vector = self.vector(column)
        moved = [sum(r * v for r, v in zip(row, vector, strict=False) if v) for row in self.inverse]
        ratios = [(self.amounts[i] / m, i) for i, m in enumerate(moved) if m > NOTHING]
        if not ratios:
            return
        step, out = min(ratios)
        pivot = [each / moved[out] for each in self.inverse[out]]
        for i, m in enumerate(moved):
            if i != out and abs(m) > NOTHING:
                self.inverse[i] = [a - m * b for a, b in zip(self.inverse[i], pivot, strict=False)]
                self.amounts[i] = max(0.0, self.amounts[i] - m * step)
        self.inverse[out], self.amounts[out], self.basis[out] = pivot, step, column

    def add(self, stick: int, pattern: Pattern) -> bool:
        if (stick, pattern) in self.seen:
            return False
        self.seen.add((stick, pattern))
        self.columns.append((stick, pattern))
        return True


def _single(kinds: int, number: int, count: int) -> Pattern:
    return tuple(count if i == number else 0 for i in range(kinds))


def relaxed(pieces: Pieces, sticks: Sequence[Stick], cells: int = CELLS[0], known: Sequence[tuple[int, Pattern]] = (),
            pivots: int = PIVOTS) -> Relaxed:
    """Prices, columns and the proven least cost.  Every piece must fit some stick that has no limit and costs something.

    ``known`` is a plan to begin from; the search for better prices ends where they prove that no plan costs less.  With no
    ``pivots`` the prices are those by length alone.
    """
    free = [number for number, stick in enumerate(sticks) if stick.limit is None]
    start = []
    for size, count in zip(pieces.sizes, pieces.counts, strict=True):
        holds = [(sticks[j].cost / min(count, sticks[j].size // size), j) for j in free if sticks[j].size >= size]
        chosen = min(holds)[1]
        start.append((chosen, min(count, sticks[chosen].size // size)))
    master = _Master(pieces, sticks, start)
    for stick, pattern in known:
        master.add(stick, pattern)
    enough = (sum(sticks[stick].cost for stick, _ in known) - 1) * SCALE if known else None
    largest = max(stick.size for stick in sticks)
    best = _proven(pieces, sticks, master, Table(pieces, _by_length(pieces, sticks), largest, cells))
    for _ in range(pivots):
        if enough is not None and best.least > enough:
            return best
        prices = master.prices()
        column = master.entering(prices)
        if column is not None:
            master.pivot(column)
            continue
        table = Table(pieces, _whole(prices[:master.kinds]), largest, cells)
        best = max(best, _proven(pieces, sticks, master, table), key=lambda each: each.least)
        if not _generate(master, table, prices, QUICK) and not _generate(master, table, prices, STEPS):
            break
    if not pivots:
        return best
    last = _proven(pieces, sticks, master, Table(pieces, _whole(master.prices()[:master.kinds]), largest, cells))
    return replace(max(best, last, key=lambda each: each.least), columns=last.columns)


def _by_length(pieces: Pieces, sticks: Sequence[Stick]) -> list[int]:
    """Prices by the length alone that each piece takes at least: they prove that sticks are as long as all pieces together."""
    rate = min(stick.cost / stick.size for stick in sticks if stick.limit is None and stick.size)
    return [int(rate * SCALE * near / 2.0) for near in pieces.nearest]


def _whole(prices: Sequence[float]) -> list[int]:
    return [max(0, int(price * SCALE)) for price in prices]


def _generate(master: _Master, table: Table, prices: Sequence[float], steps: int) -> bool:
    """Adds the best way to cut each stick where that saves; False where none does."""
    added = False
    for number, stick in enumerate(master.sticks):
        floor = stick.cost * SCALE + 10
        if number in master.limited:
            floor = int(-prices[master.kinds + master.limited.index(number)] * SCALE) + 10
        _, pattern = table.best(stick.size, max(floor, 10), steps)
        added = (bool(pattern) and master.add(number, pattern)) or added
    return added


def _proven(pieces: Pieces, sticks: Sequence[Stick], master: _Master, table: Table) -> Relaxed:
    """The table's prices scaled down until no stick can bring more than it costs: then they prove what they add up to."""
    over, under = 1, 1
    for stick in sticks:
        if stick.limit is None:
            value, cost = table.bound(0, stick.size), stick.cost * SCALE
            if value * under > over * cost:
                over, under = value, cost
    prices = [price * under // over for price in table.prices]
    stick_prices = tuple(0 if stick.limit is None else -(-table.bound(0, stick.size) * under // over) for stick in sticks)
    least = sum(p * n for p, n in zip(prices, pieces.counts, strict=True)) - sum(
        p * (stick.limit or 0) for p, stick in zip(stick_prices, sticks, strict=True))
    used = tuple((*master.columns[column], amount)
                 for column, amount in zip(master.basis, master.amounts, strict=True) if column >= 0)
    return Relaxed(tuple(prices), stick_prices, used, least)
