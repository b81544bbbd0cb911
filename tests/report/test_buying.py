"""The buying list: it holds what the job needs, no plan buys less, and its papers say so."""

from __future__ import annotations

import csv
import io
from collections import Counter
from dataclasses import replace

import pytest
from making import EXAMPLES, job_of, scenario_of

from louverwright.core.buying import Shop, StickBuy, sticks_to_buy
from louverwright.core.offcuts import OffcutError, read_offcuts
from louverwright.core.spec import Spec
from louverwright.exchange.papers import job_from_values
from louverwright.report.buying import Buying, buying, buying_csv, buying_list, side_words
from louverwright.report.cutting_diagram import sheet_drawing
from louverwright.report.drawing import Area, Label
from louverwright.report.html import to_html
from louverwright.report.job import Job

SOME = tuple(name for name in EXAMPLES if name in (
    "hay-barn-28ft", "octagon-dairy", "cart-shed-gable", "three-vents-long-ridge"))


def with_values(name: str, **values: object) -> Job:
    scenario = scenario_of(name)
    return job_from_values({**scenario.values, **values}, scenario.revision, scenario.folder, parts=scenario.parts)


def length_of(plan: Buying) -> float:
    return sum(buy.length for buy in plan.sticks)


@pytest.mark.parametrize("name", EXAMPLES)
def test_every_stick_plan_of_the_examples_buys_the_least_that_is_possible(name: str) -> None:
    """The plan counts steps, not time, so that what is proven here is proven on every machine."""
    for buy in buying(job_of(name)).sticks:
        assert buy.proven and buy.length == pytest.approx(buy.bound) and not buy.too_long


@pytest.mark.parametrize("name", SOME)
def test_every_piece_is_cut_once_and_no_stick_is_overfull(name: str) -> None:
    job = job_of(name)
    plan = buying(job)
    made: Counter[str] = Counter()
    for buy in plan.sticks:
        for stick in buy.sticks:
            for part in stick.parts:
                made[part.mark] += stick.count
            assert job.spec.end_trim - 1e-6 <= stick.pieces[0].x
            assert stick.pieces[-1].end <= stick.length - job.spec.end_trim + 1e-3
    for sheet in plan.sheets:
        for each, many in sheet.sheets:
            for laid in each.laid:
                made[laid.mark] += many
    assert made == {part.mark: job.count(part) for part in job.assembly.parts}


@pytest.mark.parametrize("name", SOME)
def test_what_is_bought_is_pieces_kept_offcuts_and_waste(name: str) -> None:
    for buy in buying(job_of(name)).sticks:
        assert buy.waste > 0.0 and all(left >= buy.keep for left in buy.kept)
        assert buy.length + sum(buy.used_own) == pytest.approx(buy.in_parts + sum(buy.kept) + buy.waste)


@pytest.mark.parametrize(("name", "value"), [("saw_kerf", 8.0), ("end_trim", 150.0), ("defect_allowance", 20.0),
                                             ("shop_offcuts", "2x4: 1200, 900; 1x6: 2 m"), ("shortest_offcut", 2_000.0)])
def test_each_of_the_shops_parameters_has_an_effect(name: str, value: object) -> None:
    example = EXAMPLES[0] if name in ("shop_offcuts", "shortest_offcut") else "cart-shed-gable"
    own, other = with_values(example), with_values(example, **{name: value})
    assert own.fingerprint == other.fingerprint
    assert buying_csv(own) != buying_csv(other) or to_html(buying_list(own)) != to_html(buying_list(other))
    if name in ("saw_kerf", "end_trim", "defect_allowance"):
        assert length_of(buying(other)) > length_of(buying(own))


def test_offcuts_from_the_shop_are_cut_and_save_what_is_bought() -> None:
    job = with_values("hay-barn-28ft", shop_offcuts="2x4: 1200, 900; 1x6: 2 m; 2x12: 1 m")
    plan, own = buying(job), buying(job_of("hay-barn-28ft"))
    assert length_of(plan) < length_of(own)
    assert {buy.stock.name: buy.used_own for buy in plan.sticks}["1x6"] == (2000.0,)
    text = to_html(buying_list(job))
    assert "2x12 from the shop: not needed" in text and "offcut from the shop" in text


def test_a_piece_that_fits_no_stick_is_told_and_the_rest_planned() -> None:
    job = job_of("hay-barn-28ft")
    wanted = [(part, job.count(part)) for part in job.assembly.parts]
    buys: tuple[StickBuy, ...] = sticks_to_buy(wanted, Shop(3.2, 800.0))
    strip = next(buy for buy in buys if buy.stock.name.startswith("strip"))
    assert not strip.too_long and all(buy.proven for buy in buys)
    short = next(buy for buy in sticks_to_buy(wanted, Shop(3.2, 1_000.0)) if buy.stock.name.startswith("strip"))
    assert {part.mark for part, _ in short.too_long} == {"L17"} and short.sticks
    told = replace(job, spec=Spec({**job.spec.values, "end_trim": 1_000.0}))
    assert "fits no stick of strip" in to_html(buying_list(told))


def test_what_is_bought_at_prices_costs_what_the_cost_sheet_says() -> None:
    job = with_values("hay-barn-28ft", prices="2x4: 8 ft = 4.20, 10 ft = 5.60, 12 ft = 6.90, 14 ft = 8.40, 16 ft = 9.30, "
                      "18 ft = 12.00, 20 ft = 14.00; 1x6: 2.10/m; plywood 1/2: 38 each; 4x4: 8 ft = 11.00")
    assert job.fingerprint == job_of("hay-barn-28ft").fingerprint
    buys = {buy.stock.name: buy for buy in buying(job).sticks}
    assert buys["2x4"].priced and buys["1x6"].priced and not buys["4x4"].priced and buys["1x4"].cost is None
    assert buys["1x6"].cost == sum(round(length * 0.21) * many for length, many in buys["1x6"].bought.items())
    sheet = next(buy for buy in buying(job).sheets if buy.stock.name == "plywood 1/2")
    told = [buys["2x4"].cost, buys["1x6"].cost, buys["4x4"].cost, 3_800 * sheet.count]
    text = to_html(buying_list(job))
    assert f"{sum(filter(None, told)) / 100:.2f}" in text and "least length and not by the least cost" in text


def test_prices_choose_what_is_bought() -> None:
    """Where long sticks cost out of proportion, shorter ones are bought, and more of them."""
    own, dear = with_values("hay-barn-28ft"), with_values("hay-barn-28ft", prices=(
        "1x6: 6 ft = 3, 8 ft = 4, 10 ft = 5, 12 ft = 9, 14 ft = 20, 16 ft = 30"))
    by_length, by_price = (next(buy for buy in buying(job).sticks if buy.stock.name == "1x6") for job in (own, dear))
    assert by_price.priced and max(by_price.bought) < max(by_length.bought) and by_price.bound <= (by_price.cost or 0)


@pytest.mark.parametrize(("text", "found"), [
    ("", {}), ("2x4: 1200, 900; 1x6: 2 m", {"2x4": (1200.0, 900.0), "1x6": (2000.0,)}),
    ("2x4: 3 ft, 1.5 m;", {"2x4": (914.4, 1500.0)}), ("2x4: 1200; 2x4: 900", {"2x4": (1200.0, 900.0)})])
def test_offcuts_are_read(text: str, found: dict[str, tuple[float, ...]]) -> None:
    assert {name: pytest.approx(lengths) for name, lengths in found.items()} == read_offcuts(text)


@pytest.mark.parametrize(("text", "words"), [
    ("2x4", "it is not a stock with its lengths"), ("2x4: 1200,900", "it can be read in two ways"),
    ("2x4: long", "it is not a length"), ("2x4: 0", "it is no offcut's length"),
    ("2x4: " + ", ".join(["900"] * 61), "more than 60")])
def test_offcuts_that_cannot_be_read_are_refused(text: str, words: str) -> None:
    with pytest.raises(OffcutError, match=words):
        read_offcuts(text)


@pytest.mark.parametrize("name", SOME)
def test_the_spreadsheet_buys_what_the_plan_buys(name: str) -> None:
    plan = buying(job_of(name))
    rows = list(csv.DictReader(io.StringIO(buying_csv(job_of(name)).removeprefix("\ufeff"))))
    bought = {buy.stock.name: sum(buy.bought.values()) for buy in plan.sticks} | {
        buy.stock.name: buy.count for buy in plan.sheets}
    read: Counter[str] = Counter()
    for row in rows:
        read[row["stock"]] += int(row["number"]) if row["what"] == "buy" else 0
    assert read == bought and {row["what"] for row in rows} == {"buy", "cut"}


@pytest.mark.parametrize("name", [name for name in SOME if name in ("hay-barn-28ft", "octagon-dairy")])
def test_a_sheets_diagram_tells_each_strips_width_beside_it(name: str) -> None:
    """Which pieces make a strip as wide as it is told by the widest blank in it."""
    job = job_of(name)
    width = {part.mark: part.board.width for part in job.assembly.parts}
    for buy in buying(job).sheets:
        for sheet, _ in buy.sheets:
            drawing = sheet_drawing(sheet, buy, job.writer)
            right = max(p[0] for item in drawing.items if isinstance(item, Area) for p in item.loops[0])
            told = [item.text for item in drawing.items if isinstance(item, Label) and item.x > right]
            strips = sorted({laid.strip for laid in sheet.laid})
            assert told == [job.writer.bare(max(width[laid.mark] for laid in sheet.laid if laid.strip == strip))
                            for strip in strips]


def test_sheet_pieces_are_told_with_their_slanting_and_bevelled_sides() -> None:
    """The hay barn's sheathing has two hips and two bevelled edges, its soffit a mitre at either end; screen is square."""
    job = job_of("hay-barn-28ft")
    words = {part.kind.name: side_words(part, job) for part in job.assembly.parts if part.stock.form in ("sheet", "mesh")}
    text = to_html(buying_list(job))
    assert words["Soffit"] == "2\u00a0× crosscut mitre 45.0°" and "none" in words.values()
    assert words["Roof sheathing"].startswith("2\u00a0× rip bevel 36.9°; 2\u00a0× corner cut mitre")
    assert all(each in text for each in words.values()) and "Along the roll" in text and "Along the grain" in text


def test_the_paper_says_what_is_proven() -> None:
    job = job_of("hay-barn-28ft")
    text = to_html(buying_list(job))
    assert "no plan can buy less than" in text and "no plan can need fewer than 2, and this one needs no more" in text
