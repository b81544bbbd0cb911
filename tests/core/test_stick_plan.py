"""Plans for sticks: the published optima, an exact search written another way, and what every plan must keep to."""

from __future__ import annotations

import random
from functools import cache

import pytest

from louverwright.core.stick_bound import bound_of, relaxed
from louverwright.core.stick_plan import Sold, StickPlan, TooLong, room_of, size_of, stick_plan

#: Paper rolls of 5600 mm, the least is 73: the encyclopedia's article on the cutting stock problem.
PAPER = {1380: 22, 1520: 25, 1560: 12, 1710: 14, 1820: 18, 1880: 18, 1930: 20, 2000: 10, 2050: 12, 2100: 14, 2140: 16,
         2150: 18, 2200: 20}
#: Raws of 100, the least is 453: Chvátal, Linear Programming, chapter 13 (optimum from memory).
RAWS = {45: 97, 36: 610, 31: 395, 14: 211}


def keeps_its_word(plan: StickPlan, wanted: dict[int, int]) -> None:
    """All pieces are there, each once, no stick is too full, and no plan is cheaper than its bound."""
    made = {size: sum(stick.pieces[i] for stick in plan.sticks) for i, size in enumerate(plan.sizes)}
    assert made == wanted
    for stick in plan.sticks:
        assert sum(size * many for size, many in zip(plan.sizes, stick.pieces, strict=True)) <= stick.room
    assert plan.bound <= plan.cost and plan.proven == (plan.bound == plan.cost)


@pytest.mark.parametrize(("wanted", "room", "least"), [(PAPER, 5600, 73), (RAWS, 100, 453)], ids=["paper rolls", "raws"])
def test_published_optima_are_reached_and_proven(wanted: dict[int, int], room: int, least: int) -> None:
    plan = stick_plan(wanted, (Sold(room, 1),), seconds=5.0)
    keeps_its_word(plan, wanted)
    assert (plan.cost, plan.bound, plan.proven) == (least, least, True)


@pytest.mark.parametrize(("usable", "length", "kerf", "count"), [
    (2438.4, 609.6, 3.175, 3), (2438.4, 304.8, 0.0, 8), (2438.4, 301.625, 3.175, 8), (4876.8, 1219.2, 3.175, 3),
    (2400.0, 600.0, 3.2, 3)])
def test_a_saw_cut_lies_between_two_pieces(usable: float, length: float, kerf: float, count: int) -> None:
    """n·l + (n − 1)·k ≤ L: computed from this rule alone."""
    assert room_of(usable, kerf) // size_of(length, kerf) == count


def least_cost(wanted: dict[int, int], sold: tuple[Sold, ...], own: tuple[int, ...]) -> int:
    """The least cost by another way: piece after piece into every open stick or a new one, all states remembered."""
    pieces = tuple(size for size in sorted(wanted, reverse=True) for _ in range(wanted[size]))

    @cache
    def rest(at: int, gaps: tuple[int, ...]) -> int:
        if at == len(pieces):
            return 0
        costs = [10**9]
        for gap in set(gaps):
            if gap >= pieces[at]:
                left = list(gaps)
                left.remove(gap)
                costs.append(rest(at + 1, tuple(sorted((*left, gap - pieces[at])))))
        costs += [each.price + rest(at + 1, tuple(sorted((*gaps, each.room - pieces[at]))))
                  for each in sold if each.room >= pieces[at]]
        return min(costs)

    return rest(0, tuple(sorted(own)))


def instance(seed: int) -> tuple[dict[int, int], tuple[Sold, ...], tuple[int, ...]]:
    """A few pieces of some sizes, one to three lengths at a price, sometimes a stick that is there already."""
    chance = random.Random(seed)
    wanted: dict[int, int] = {}
    for _ in range(chance.randint(3, 7)):
        size = chance.randint(12, 60)
        wanted[size] = wanted.get(size, 0) + 1
    rooms = sorted({chance.randint(60, 140) for _ in range(chance.randint(1, 3))})
    sold = tuple(Sold(room, room + chance.randint(-15, 15)) for room in rooms)
    own = tuple(chance.randint(10, 90) for _ in range(chance.randint(0, 2)))
    return wanted, sold, own


@pytest.mark.parametrize("seed", range(120))
def test_small_plans_cost_the_least(seed: int) -> None:
    wanted, sold, own = instance(seed)
    plan = stick_plan(wanted, sold, own, seconds=20.0)
    keeps_its_word(plan, wanted)
    assert plan.proven
    assert plan.cost == least_cost(wanted, sold, own)


def test_of_equal_cost_the_fewest_sticks() -> None:
    """Six pieces in two sticks of twelve or in three of eight: as dear, and fewer to carry."""
    plan = stick_plan({4: 6}, (Sold(8, 8), Sold(12, 12)))
    assert [stick.room for stick in plan.sticks] == [12, 12] and plan.fewest


def test_sticks_that_are_there_cost_nothing() -> None:
    plan = stick_plan({40: 3}, (Sold(100, 100),), own=(45,))
    assert plan.cost == 100 and sorted(stick.price for stick in plan.sticks) == [0, 100]


def test_a_piece_longer_than_any_stick_is_refused() -> None:
    with pytest.raises(TooLong) as caught:
        stick_plan({120: 1, 30: 2}, (Sold(100, 100),))
    assert caught.value.size == 120


def test_the_bound_is_the_relaxed_plans() -> None:
    """452.25 rolls, from memory of the same chapter."""
    sizes = tuple(sorted(RAWS, reverse=True))
    load = [RAWS[size] for size in sizes]
    duals, _ = relaxed(sizes, load, [(100, 1)], float("inf"))
    assert float(bound_of(sizes, load, duals, 100).cost([(100, 1)])) == pytest.approx(452.25, abs=1e-4)
