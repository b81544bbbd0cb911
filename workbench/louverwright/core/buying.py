# SPDX-License-Identifier: LGPL-2.1-or-later
"""What to buy for a list of parts, and what is cut from each stick and sheet.

Each piece takes the whole width of its stick: two narrow pieces are not ripped from one width.  A saw cut of width k lies
between two pieces, so that pieces of lengths l fit a stick of usable length L where Σ(l + k) ≤ L + k; point to heel they take
less.  Lengths in mm, areas in mm²; plans in whole tenths of a millimetre, pieces rounded up and sticks down.
"""

from __future__ import annotations

import math
from collections import Counter
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from itertools import groupby

from .assembly import Part, board_volume_and_centre
from .nesting import Slants, arranged, slants
from .prices import Price
from .sheet_bound import fewest_sheets
from .sheet_pieces import sheet_piece
from .sheet_plan import Sheet, sheet_plan
from .stick_relaxed import Nest, Pattern, Stick
from .stick_solver import Wanted, solve
from .stock import Stock

#: Whole parts of a millimetre in plans, and how far (mm) rounding errors of lengths in inches reach.
TENTHS, NOISE = 10, 1e-6
Listed = Sequence[tuple[Part, int]]


@dataclass(frozen=True)
class Shop:
    """How the wood is cut and had: the saw cut, what is trimmed off each end of a new stick, the share of it that is reckoned
    lost to defects (0 to 1), the shortest offcut that is kept; offcuts that are there, and prices, by the name of their stock.
    """

    kerf: float
    trim: float = 0.0
    lost: float = 0.0
    keep: float = 300.0
    own: Mapping[str, tuple[float, ...]] = field(default_factory=dict)
    prices: Mapping[str, Price] = field(default_factory=dict)

    def usable(self, length: float) -> float:
        """What of a new stick can be cut to pieces."""
        return (length - 2.0 * self.trim) * (1.0 - self.lost)

    def price(self, stock: Stock, length: float) -> int | None:
        """What one of the length costs (hundredths), None where that is not told."""
        return self.prices[stock.name].of(length) if stock.name in self.prices else None

    def priced(self, stock: Stock) -> bool:
        """Whether all lengths that the stock is sold in have prices: then the cheapest plan is made, else the shortest."""
        return all(self.price(stock, length) for length in stock.lengths)


@dataclass(frozen=True)
class Placed:
    """A piece in its stick: where its left end begins, how it is turned (``nesting.TURNS``), and whether its left end is made
    by the same cut as the right end of the piece before."""

    part: Part
    x: float
    turn: str = ""
    shared: bool = False

    @property
    def end(self) -> float:
        """Where its right end's long point is."""
        return self.x + self.part.board.length


@dataclass(frozen=True)
class CutStick:
    """Sticks divided alike: their length, how many, whether from the shop, and the pieces from the left; ``left`` is what
    remains behind the last saw cut."""

    length: float
    count: int
    own: bool
    pieces: tuple[Placed, ...]
    left: float

    @property
    def parts(self) -> tuple[Part, ...]:
        """The part of each piece, from the left."""
        return tuple(piece.part for piece in self.pieces)


@dataclass(frozen=True)
class StickBuy:
    """One stock's sticks.

    No plan buys less than ``bound``: mm, or hundredths of the currency where ``priced``.  ``proven`` says that this one buys
    no more, ``fewest`` that of plans that buy as little none has fewer sticks.  ``cost`` is in hundredths, None where the
    price of a length that is bought is not told.
    """

    stock: Stock
    sticks: tuple[CutStick, ...]
    bound: float
    proven: bool
    fewest: bool
    priced: bool
    cost: int | None
    too_long: tuple[tuple[Part, int], ...]
    keep: float

    @property
    def bought(self) -> dict[float, int]:
        """How many to buy of each length, the longest first."""
        found: Counter[float] = Counter()
        for stick in self.sticks:
            found[stick.length] += 0 if stick.own else stick.count
        return {length: many for length, many in sorted(found.items(), reverse=True) if many}

    @property
    def length(self) -> float:
        """All that is bought."""
        return sum(length * many for length, many in self.bought.items())

    @property
    def used_own(self) -> tuple[float, ...]:
        """The offcuts from the shop that are cut."""
        return tuple(sorted((s.length for s in self.sticks if s.own for _ in range(s.count)), reverse=True))

    @property
    def in_parts(self) -> float:
        """What becomes parts' blanks; where two lie point to heel, their common length once."""
        return sum(s.count * (piece.end - max(piece.x, before)) for s in self.sticks
                   for piece, before in zip(s.pieces, (0.0, *(each.end for each in s.pieces)), strict=False))

    @property
    def kept(self) -> tuple[float, ...]:
        """The offcuts that are long enough to keep, the longest first."""
        return tuple(sorted((s.left for s in self.sticks for _ in range(s.count) if s.left >= self.keep), reverse=True))

    @property
    def waste(self) -> float:
        """What is neither part nor kept: saw cuts, trimmed ends, short ends."""
        return self.length + sum(self.used_own) - self.in_parts - sum(self.kept)

    @property
    def weight(self) -> float:
        """What is bought, in kg."""
        return self.length * self.stock.width * self.stock.thickness * 1e-9 * self.stock.density


@dataclass(frozen=True)
class SheetBuy:
    """One stock's sheets, or lengths off its roll: equal ones once with their number; no plan needs fewer than ``least`` (of
    this length)."""

    stock: Stock
    length: float
    sheets: tuple[tuple[Sheet, int], ...]
    least: int
    in_parts: float
    too_large: tuple[tuple[Part, int], ...]

    @property
    def count(self) -> int:
        """How many to buy."""
        return sum(many for _, many in self.sheets)

    @property
    def area(self) -> float:
        """All that is bought."""
        return self.count * self.length * self.stock.width

    @property
    def waste(self) -> float:
        """What does not become parts, offcuts with it."""
        return self.area - self.in_parts

    @property
    def weight(self) -> float:
        """What is bought, in kg."""
        return self.area * self.stock.thickness * 1e-9 * self.stock.density


def by_stock(wanted: Listed) -> dict[str, list[tuple[Part, int]]]:
    """The parts by the name of their stock, in their order."""
    found: dict[str, list[tuple[Part, int]]] = {}
    for part, many in wanted:
        found.setdefault(part.stock.name, []).append((part, many))
    return found


def sticks_to_buy(wanted: Listed, shop: Shop) -> tuple[StickBuy, ...]:
    """The plan for every stock that is sold as sticks."""
    return tuple(_sticks(parts, shop) for parts in by_stock(
        [each for each in wanted if each[0].stock.form not in ("sheet", "mesh")]).values())


def sheets_to_buy(wanted: Listed, shop: Shop) -> tuple[SheetBuy, ...]:
    """The plan for every stock that is sold as sheets or rolls; mesh is shorn, without a saw cut."""
    return tuple(_sheets(parts, shop) for parts in by_stock(
        [each for each in wanted if each[0].stock.form in ("sheet", "mesh")]).values())


def _up(mm: float) -> int:
    return math.ceil((mm - NOISE) * TENTHS)


def _down(mm: float) -> int:
    return math.floor((mm + NOISE) * TENTHS)


def _sticks(parts: Listed, shop: Shop) -> StickBuy:
    stock = parts[0][0].stock
    priced = shop.priced(stock)
    costs_of = {length: (shop.price(stock, length) or 0) if priced else _up(length) for length in stock.lengths}
    sold = [(Stick(_down(shop.usable(length) + shop.kerf), cost), length) for length, cost in costs_of.items()
            if shop.usable(length) > 0.0]
    mine = Counter(shop.own.get(stock.name, ()))
    own = [(Stick(_down(length + shop.kerf), 0, many), length) for length, many in mine.items()]
    top = max((stick.size for stick, _ in sold), default=0)
    fits = [(part, many) for part, many in parts if _up(part.board.length + shop.kerf) <= top]
    long = tuple((part, many) for part, many in parts if _up(part.board.length + shop.kerf) > top)
    groups = _groups(fits, shop)
    found = solve(list(groups), [stick for stick, _ in (*sold, *own)])
    lengths = [*((length, False) for _, length in sold), *((length, True) for _, length in own)]
    sticks = tuple(_divided(found.plan, groups, shop, lengths))
    costs = [shop.price(stock, stick.length) for stick in sticks if not stick.own for _ in range(stick.count)]
    return StickBuy(stock, sticks, found.least / (1 if priced else TENTHS), found.proven, found.fewest, priced,
                    None if None in costs else sum(filter(None, costs)), long, shop.keep)


def _groups(parts: Listed, shop: Shop) -> dict[Wanted, list[tuple[Part, int]]]:
    """The parts by what the plan knows of them: alike in length and in how they lie point to heel; nests stand together."""
    found: dict[tuple[str, int], list[tuple[Part, int]]] = {}
    ways: dict[str, Slants] = {}
    for part, many in parts:
        way = slants(part)
        if way and _down(way.gain(shop.kerf)) > 0:
            ways.setdefault(way.name, way)
        key = way.name if way and way.name in ways else "", _up(part.board.length + shop.kerf)
        found.setdefault(key, []).append((part, many))
    together = Counter(name for (name, _), each in found.items() for _, many in each for _ in range(many))
    nests = {name: Nest(name, _down(way.gain(shop.kerf)), way.pairs) for name, way in ways.items() if together[name] > 1}
    return {Wanted(size, sum(many for _, many in each), nests.get(name)): each
            for (name, size), each in sorted(found.items(), key=lambda item: (item[0][0], -item[0][1]))}


def _divided(plan: Sequence[tuple[int, Pattern]], groups: Mapping[Wanted, Listed], shop: Shop,
             lengths: Sequence[tuple[float, bool]]) -> Iterator[CutStick]:
    """The plan's sticks with parts in the places of sizes; sticks that are filled alike keep alike parts as far as there are
    enough of one."""
    left = {part.mark: many for listed in groups.values() for part, many in listed}
    found: Counter[tuple[float, bool, tuple[tuple[Part, ...], ...]]] = Counter()
    for (number, way), many in sorted(Counter(plan).items(), key=lambda each: (each[0][0], each[1]), reverse=True):
        for chosen, count in _chosen(way, many, groups, left):
            found[(*lengths[number], chosen)] += count
    nests = [wanted.nest for wanted in groups]
    for (length, own, chosen), count in found.items():
        rows = [(nest, [part for _, parts in each for part in parts])
                for nest, each in groupby(zip(nests, chosen, strict=True), key=lambda pair: pair[0])]
        pieces = tuple(_placed(rows, 0.0 if own else shop.trim, shop.kerf))
        yield CutStick(length, count, own, pieces, max(0.0, length - pieces[-1].end - shop.kerf))


def _chosen(way: Pattern, many: int, groups: Mapping[Wanted, Listed], left: dict[str, int]
            ) -> Iterator[tuple[tuple[tuple[Part, ...], ...], int]]:
    """Parts of each group for ``many`` sticks filled alike, and how many of them have these; takes them from ``left``."""
    while many:
        chosen: list[list[Part]] = []
        count = many
        for listed, times in zip(groups.values(), way, strict=True):
            chosen.append([])
            for _ in range(times):
                free = [part for part, _ in listed if left[part.mark] > chosen[-1].count(part)]
                part = max(free, key=lambda p: min(count, left[p.mark] // (chosen[-1].count(p) + 1)))
                chosen[-1].append(part)
                count = max(1, min(count, left[part.mark] // chosen[-1].count(part)))
        for part in (part for each in chosen for part in each):
            left[part.mark] -= count
        many -= count
        yield tuple(tuple(each) for each in chosen), count


def _placed(rows: Iterable[tuple[Nest | None, list[Part]]], start: float, kerf: float) -> Iterator[Placed]:
    """The pieces from ``start`` on, those of a nest in a row against each other."""
    at = start
    for nest, parts in rows:
        if not parts:
            continue
        turns = arranged(parts, nest.pairs) if nest else ("",) * len(parts)
        for number, (part, turn) in enumerate(zip(parts, turns, strict=True)):
            way = slants(part) if nest and number and not (nest.pairs and number % 2 == 0) else None
            at -= way.gain(kerf) if way else 0.0
            yield Placed(part, at, turn, way is not None)
            at += part.board.length + kerf


def _sheets(parts: Listed, shop: Shop) -> SheetBuy:
    stock = parts[0][0].stock
    kerf = 0.0 if stock.form == "mesh" else shop.kerf
    pieces = {part.mark: sheet_piece(part) for part, _ in parts}
    top = max(stock.lengths)
    fit = [(part, many) for part, many in parts
           if pieces[part.mark].long <= top and pieces[part.mark].wide <= stock.width]
    large = tuple(each for each in parts if each not in fit)
    all_of = [pieces[part.mark] for part, many in fit for _ in range(many)]
    longest = max((piece.long for piece in all_of), default=0.0)
    plans = [(length, sheet_plan(all_of, length, stock.width, kerf)) for length in stock.lengths if length >= longest]
    length, plan = min(plans, key=lambda p: ((shop.price(stock, p[0]) or 0) * len(p[1]) if shop.priced(stock) else 0,
                                             p[0] * len(p[1]), len(p[1])))
    covered = sum(many * board_volume_and_centre(part.board)[0] / part.board.thickness for part, many in fit)
    least = fewest_sheets(all_of, covered, length, stock.width, kerf)
    return SheetBuy(stock, length, tuple(Counter(plan).items()), least, covered, large)
