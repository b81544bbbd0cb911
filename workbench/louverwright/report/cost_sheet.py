# SPDX-License-Identifier: LGPL-2.1-or-later
"""What the buying list costs: piece by piece with sum and total, where prices are given; what has no price is told."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from ..core.buying import SheetBuy, StickBuy
from ..core.prices import HUNDREDTHS, read_prices
from ..core.stock import Stock
from .job import Job
from .page import Block, Column, Heading, Para, Table


def money(job: Job, hundredths: int) -> str:
    """An amount with its currency behind it."""
    return "\u00a0".join(filter(None, (f"{hundredths / HUNDREDTHS:.2f}", job.spec.currency)))


def prices_of(job: Job, stock: Stock, length: float, many: int) -> tuple[str, str]:
    """The price of one and of ``many`` of a length (mm); '' where it is not told."""
    price = _price(job, stock, length)
    return ("", "") if price is None else (money(job, price), money(job, price * many))


def _price(job: Job, stock: Stock, length: float) -> int | None:
    prices = read_prices(job.spec.prices)
    return prices[stock.name].of(length) if stock.name in prices else None


def cost_sheet(job: Job, sticks: Sequence[StickBuy], sheets: Sequence[SheetBuy]) -> Iterator[Block]:
    """The cost sheet; nothing where no prices are given."""
    if not read_prices(job.spec.prices):
        return
    bought = [(buy.stock, length, many) for buy in sticks for length, many in buy.bought.items()]
    bought += [(buy.stock, buy.length, buy.count) for buy in sheets if buy.count]
    rows, total, missing = [], 0, []
    for stock, length, many in bought:
        each, together = prices_of(job, stock, length, many)
        price = _price(job, stock, length)
        total += (price or 0) * many
        if price is None:
            missing.append(f"{many} × {stock.name}, {job.writer.length(length)}")
        rows.append((stock.name, job.writer.length(length), str(many), each or "no price", together))
    yield Heading("Cost sheet")
    yield Table((Column("Stock", 2.0), Column("Length", 1.2, "right"), Column("Number", 0.8, "right"),
                 Column("Price each", 1.2, "right"), Column("Sum", 1.2, "right")),
                (*rows, ("Total" if not missing else "Total of what has a price", "", "", "", money(job, total))),
                note="At the prices given for this job, as they stand: taxes, delivery and fees only if they are in them.")
    if missing:
        yield Para(f"Without a price, and not in the total: {'; '.join(missing)}.", "caution")
    by_length = [buy.stock.name for buy in sticks if not buy.priced and buy.bought]
    if by_length:
        yield Para(f"Bought by the least length, since not all lengths sold have a price: {', '.join(by_length)}.", "small")
