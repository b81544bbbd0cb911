# SPDX-License-Identifier: LGPL-2.1-or-later
"""What to buy for a list of parts, and what is cut from each stick and sheet.

Each piece takes the whole width of its stick: two narrow pieces are not ripped from one width.  Lengths in mm, areas in mm².
"""

from __future__ import annotations

import math
from collections import Counter
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass

from .assembly import Part, board_shell
from .sheet_plan import Outline, Sheet, SheetPiece, area, hull, sheet_plan
from .stick_plan import Filled, Sold, StickPlan, room_of, size_of, stick_plan
from .stock import Stock

#: Costs are lengths in these parts of a millimetre.
FINE = 10
#: Seconds that a section's plan may take to prove the fewest sticks.
SECONDS = 1.0
Wanted = Sequence[tuple[Part, int]]


@dataclass(frozen=True)
class Shop:
    """How the wood is cut: the saw cut, what is trimmed off each end of a new stick, the share of it that is reckoned lost to
    defects (0 to 1), the shortest offcut that is kept, and offcuts that are there by the name of their stock."""

    kerf: float
    trim: float = 0.0
    lost: float = 0.0
    keep: float = 300.0
    own: Mapping[str, tuple[float, ...]] | None = None

    def usable(self, length: float) -> float:
        """What of a new stick can be cut to pieces."""
        return (length - 2.0 * self.trim) * (1.0 - self.lost)


@dataclass(frozen=True)
class Stick:
    """Sticks divided alike: their length, how many, whether from the shop, where the first piece begins, and the pieces from
    there on, a saw cut between two; ``left`` is what remains behind the last saw cut."""

    length: float
    count: int
    own: bool
    start: float
    parts: tuple[Part, ...]
    left: float


@dataclass(frozen=True)
class StickBuy:
    """One stock's sticks.  No plan buys less length than ``bound``; ``proven`` says that this one buys no more."""

    stock: Stock
    sticks: tuple[Stick, ...]
    bound: float
    proven: bool
    fewest: bool
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
        """What becomes parts' blanks."""
        return sum(s.count * part.board.length for s in self.sticks for part in s.parts)

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
    """One stock's sheets, or lengths off its roll: equal ones once with their number; ``least`` by area alone."""

    stock: Stock
    length: float
    sheets: tuple[tuple[Sheet, int], ...]
    least: int
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
        return self.area - sum(many * area(laid.outline) for sheet, many in self.sheets for laid in sheet.laid)

    @property
    def weight(self) -> float:
        """What is bought, in kg."""
        return self.area * self.stock.thickness * 1e-9 * self.stock.density


def by_stock(wanted: Wanted) -> dict[str, list[tuple[Part, int]]]:
    """The parts by the name of their stock, in their order."""
    found: dict[str, list[tuple[Part, int]]] = {}
    for part, many in wanted:
        found.setdefault(part.stock.name, []).append((part, many))
    return found


def sticks_to_buy(wanted: Wanted, shop: Shop) -> tuple[StickBuy, ...]:
    """The plan for every stock that is sold as sticks."""
    return tuple(_sticks(parts, shop) for parts in by_stock(
        [each for each in wanted if each[0].stock.form not in ("sheet", "mesh")]).values())


def sheets_to_buy(wanted: Wanted, shop: Shop) -> tuple[SheetBuy, ...]:
    """The plan for every stock that is sold as sheets or rolls; mesh is shorn, without a saw cut."""
    return tuple(_sheets(parts, shop) for parts in by_stock(
        [each for each in wanted if each[0].stock.form in ("sheet", "mesh")]).values())


def _sticks(parts: Wanted, shop: Shop) -> StickBuy:
    stock = parts[0][0].stock
    sold = {room_of(shop.usable(length), shop.kerf): length for length in reversed(stock.lengths)}
    mine = (shop.own or {}).get(stock.name, ())
    own = [room_of(length, shop.kerf) for length in mine]
    top = max((*sold, *own))
    long = tuple(each for each in parts if _size(each[0], shop) > top)
    fits = [each for each in parts if _size(each[0], shop) <= top]
    sizes: Counter[int] = Counter()
    for part, many in fits:
        sizes[_size(part, shop)] += many
    goods = [Sold(room, round(length * FINE)) for room, length in sold.items() if room > 0]
    plan = stick_plan(dict(sizes), goods, own, SECONDS)
    lengths = {**{(room, True): length for room, length in zip(own, mine, strict=True)},
               **{(room, False): length for room, length in sold.items()}}
    return StickBuy(stock, tuple(_divided(plan, fits, shop, lengths)), plan.bound / FINE, plan.proven, plan.fewest, long,
                    shop.keep)


def _size(part: Part, shop: Shop) -> int:
    return size_of(part.board.length, shop.kerf)


def _divided(plan: StickPlan, parts: Wanted, shop: Shop, lengths: Mapping[tuple[int, bool], float]) -> Iterable[Stick]:
    """The plan's sticks with parts in the places of sizes, the long parts first; sticks that are filled alike keep alike parts
    as far as there are enough of one."""
    left: dict[str, int] = {part.mark: many for part, many in parts}
    of_size: dict[int, list[Part]] = {}
    for part, _ in parts:
        of_size.setdefault(_size(part, shop), []).append(part)
    found: Counter[tuple[int, bool, tuple[Part, ...]]] = Counter()
    for stick, many in sorted(Counter(plan.sticks).items(), key=lambda s: (not s[0].price, s[1]), reverse=True):
        for chosen, count in _chosen(stick, many, plan.sizes, of_size, left):
            found[(stick.room, not stick.price, chosen)] += count
    for (room, own, chosen), count in found.items():
        length = lengths[(room, own)]
        start = 0.0 if own else shop.trim
        rest = length - start - sum(part.board.length + shop.kerf for part in chosen)
        yield Stick(length, count, own, start, chosen, max(0.0, rest))


def _chosen(stick: Filled, many: int, sizes: Sequence[int], of_size: Mapping[int, list[Part]], left: dict[str, int]
            ) -> Iterable[tuple[tuple[Part, ...], int]]:
    """Parts for ``many`` sticks filled alike, and how many of them have these; takes them from what is ``left``."""
    while many:
        chosen: list[Part] = []
        count = many
        for size, times in zip(sizes, stick.pieces, strict=True):
            for _ in range(times):
                free = [part for part in of_size[size] if left[part.mark] > chosen.count(part)]
                part = max(free, key=lambda p: min(count, left[p.mark] // (chosen.count(p) + 1)))
                chosen.append(part)
                count = max(1, min(count, left[part.mark] // chosen.count(part)))
        for part in chosen:
            left[part.mark] -= count
        many -= count
        yield tuple(chosen), count


def outline_of(part: Part) -> Outline:
    """What a part takes of its sheet: both its faces seen from above, its lowest corner at (0, 0)."""
    flat = hull([(x, y) for x, y, _ in board_shell(part.board).points])
    x0, y0 = min(x for x, _ in flat), min(y for _, y in flat)
    return tuple((x - x0, y - y0) for x, y in flat)


def _sheets(parts: Wanted, shop: Shop) -> SheetBuy:
    stock = parts[0][0].stock
    kerf = 0.0 if stock.form == "mesh" else shop.kerf
    pieces = {part.mark: SheetPiece(part.mark, outline_of(part)) for part, _ in parts}
    top = max(stock.lengths)
    fit = [(part, many) for part, many in parts
           if pieces[part.mark].long <= top and pieces[part.mark].wide <= stock.width]
    large = tuple(each for each in parts if each not in fit)
    all_of = [pieces[part.mark] for part, many in fit for _ in range(many)]
    longest = max((piece.long for piece in all_of), default=0.0)
    plans = [(length, sheet_plan(all_of, length, stock.width, kerf)) for length in stock.lengths if length >= longest]
    length, plan = min(plans, key=lambda p: (p[0] * len(p[1]), len(p[1])))
    least = math.ceil(sum(area(piece.outline) for piece in all_of) / (length * stock.width) - 1e-9)
    return SheetBuy(stock, length, tuple(Counter(plan).items()), least, large)
