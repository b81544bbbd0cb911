# SPDX-License-Identifier: LGPL-2.1-or-later
"""Prices as they are written, what they come to, and what is refused."""

from __future__ import annotations

from dataclasses import replace
from types import MappingProxyType

import pytest
from making import EXAMPLES, job_of

from louverwright.core.prices import PriceError, read_prices
from louverwright.report.buying import buying_list, goods
from louverwright.report.html import to_html


def test_prices_are_for_a_metre_a_foot_or_a_piece() -> None:
    """8 ft are 2.4384 m by definition of the foot (0.3048 m, international yard and pound agreement of 1959)."""
    prices = read_prices("2x4: 2.50/m; 1x6: 0.5/ft ; plywood 1/2: 38 each;")
    assert prices["2x4"].of(2438.4) == round(100 * 2.4384 * 2.5)
    assert prices["1x6"].of(2438.4) == 400
    assert prices["plywood 1/2"].of(2438.4) == 3_800


@pytest.mark.parametrize(("text", "length", "price"), [
    ("2x4: 8 ft = 4.20, 10 ft = 5.60", 2438.4, 420), ("2x4: 8 ft = 4.20, 10 ft = 5.60", 3657.6, None),
    ("2x4: 8 ft = 4, 2/m", 2438.4, 400), ("2x4: 8 ft = 4, 2/m", 3000.0, 600), ("2x4: 2400 mm=3.99;", 2400.0, 399)])
def test_single_lengths_may_have_prices_of_their_own(text: str, length: float, price: int | None) -> None:
    assert read_prices(text)["2x4"].of(length) == price


@pytest.mark.parametrize("text", ["2x4", "2x4: ", ": 3/m", "2x4: 3", "2x4: three/m", "2x4: -1/m", "2x4: nan each",
                                  "2x4: inf each", "2x4: 1e9 each", "2x4: 2,10/m", "2x4: 1/m; 2x4: 2/m",
                                  "2x4: 8 ft = 4,20", "2x4: 8 ft = 3/m", "2x4: long = 3", "2x4: 8 ft = 3, 8 ft = 4",
                                  "2x4: 1/m, 2 each", "2x4: 8 ft"])
def test_what_is_no_price_is_refused_in_words(text: str) -> None:
    with pytest.raises(PriceError) as caught:
        read_prices(text)
    assert str(caught.value).endswith(".") and text.split(":")[0].strip(" ;") in str(caught.value) + text


def test_the_cost_sheet_sums_what_has_a_price_and_tells_what_has_none() -> None:
    job = job_of(EXAMPLES[0])
    free = goods(job)
    assert all(each.cost is None for each in free) and "What it costs" not in to_html(buying_list(job))
    stocks = sorted({each.stock.name for each in free})
    text = "; ".join(f"{name}: {number}.25/m" for number, name in enumerate(stocks[1:], 1))
    priced = replace(job, spec=replace(job.spec, values=MappingProxyType({**job.spec.values, "prices": text})))
    lines = goods(priced)
    assert {each.stock.name for each in lines if each.cost is None} == {stocks[0]}
    page = to_html(buying_list(priced))
    total = sum(round(100 * (stocks.index(each.stock.name) + 0.25) * each.length / 1000.0) * each.count for each in lines
                if each.stock.name != stocks[0])
    assert f"{total / 100:.2f}" in page and f"want of a price: {stocks[0]}, " in page
    assert "no plan can cost less than" in page
