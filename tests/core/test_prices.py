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
    assert prices["2x4"].of(2438.4, 3) == pytest.approx(3 * 2.4384 * 2.5)
    assert prices["1x6"].of(2438.4, 3) == pytest.approx(3 * 8 * 0.5)
    assert prices["plywood 1/2"].of(2438.4, 3) == 114.0


@pytest.mark.parametrize("text", ["2x4", "2x4: ", ": 3/m", "2x4: 3", "2x4: three/m", "2x4: -1/m", "2x4: nan each",
                                  "2x4: inf each", "2x4: 1e9 each", "2x4: 2,10/m", "2x4: 1/m; 2x4: 2/m"])
def test_what_is_no_price_is_refused_in_words(text: str) -> None:
    with pytest.raises(PriceError) as caught:
        read_prices(text)
    assert str(caught.value).endswith(".") and text.split(":")[0].strip(" ;") in str(caught.value) + text


def test_the_cost_sheet_sums_what_has_a_price_and_tells_what_has_none() -> None:
    job = job_of(EXAMPLES[0])
    free = goods(job)
    assert all(each.cost is None for each in free) and "What it costs" not in to_html(buying_list(job))
    stocks = sorted({each.stock for each in free})
    text = "; ".join(f"{name}: {number}.25 each" for number, name in enumerate(stocks[1:], 1))
    priced = replace(job, spec=replace(job.spec, values=MappingProxyType({**job.spec.values, "prices": text})))
    lines = goods(priced)
    assert [replace(each, cost=None) for each in lines] == list(free)
    page = to_html(buying_list(priced))
    total = sum((stocks.index(each.stock) + 0.25) * each.count for each in free if each.stock != stocks[0])
    assert f"{total:.2f}" in page and f"want of a price: {stocks[0]}." in page
