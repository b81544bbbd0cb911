# SPDX-License-Identifier: LGPL-2.1-or-later
"""What the buying list costs, stock by stock with its sum, where prices are given; what has no price is told."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from ..core.buying import Shop, StickBuy
from ..core.prices import HUNDREDTHS
from ..core.stock import Stock
from .job import Job
from .page import Block, Column, Heading, Para, Table


@dataclass(frozen=True)
class Goods:
    """What is bought of one stock in one length (mm): how many, and the price of one in hundredths, None if not told."""

    stock: Stock
    length: float
    count: int
    price: int | None

    @property
    def cost(self) -> int | None:
        """What all of them cost, in hundredths."""
        return None if self.price is None else self.price * self.count

    @property
    def words(self) -> tuple[str, str]:
        """The price of one and of all; 'no price' where it is not told."""
        return ("no price", "") if self.price is None else (money(self.price), money(self.price * self.count))


def money(hundredths: float) -> str:
    """An amount, in the currency that the prices are in."""
    return f"{hundredths / HUNDREDTHS:.2f}"


def cost_sheet(job: Job, shop: Shop, lines: Sequence[Goods], sticks: Sequence[StickBuy]) -> Iterator[Block]:
    """The cost sheet; nothing where no prices are given."""
    if not shop.prices:
        return
    total = sum(each.cost or 0 for each in lines)
    yield Heading("What it costs")
    yield Table((Column("Stock", 2.0), Column("Length", 1.2, "right"), Column("Number", 0.8, "right"),
                 Column("Price", 1.2, "right"), Column("Cost", 1.2, "right")),
                (*((each.stock.name, job.writer.length(each.length), str(each.count), *each.words) for each in lines),
                 ("All", "", str(sum(each.count for each in lines)), "", money(total))),
                note="Wood only, at the prices of this job and in their currency; screws, screen, paint, roofing and work are "
                     "not in it. Offcuts from the shop cost nothing.")
    unpriced = [f"{each.stock.name}, {job.writer.length(each.length)}" for each in lines if each.cost is None]
    if unpriced:
        yield Para(f"Not in the sum, for want of a price: {'; '.join(unpriced)}.", "caution")
    by_length = [buy.stock.name for buy in sticks if not buy.priced and buy.bought]
    if by_length:
        yield Para(f"Bought by the least length and not by the least cost, since not every length that is sold has a price: "
                   f"{', '.join(by_length)}.", "small")
