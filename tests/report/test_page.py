"""The page model refuses faulty trees, in sentences."""

from __future__ import annotations

import pytest

from louverwright.report.drawing import Drawing
from louverwright.report.page import (
    Block,
    Cell,
    Column,
    Figure,
    Heading,
    PageBreak,
    Pairs,
    Para,
    Report,
    Row,
    Table,
    Together,
    as_cell,
    walk,
)


def report(*blocks: Block) -> Report:
    return Report("Title", "", (), blocks, "Footer")


@pytest.mark.parametrize(("make", "sentence"), [
    (lambda: Heading("A", 4), "level 4"),
    (lambda: Heading("A", anchor="1st"), "beginning with a letter"),
    (lambda: Heading("A", anchor="a b"), "'a b'"),
    (lambda: Para("A", "loud"), "'loud'"),
    (lambda: Pairs((("a", "b", "c"),)), "a label and a value"),
    (lambda: Pairs((), columns=5), "not 5"),
    (lambda: Column("A", align="middle"), "'middle'"),
    (lambda: Column("A", 0.0), "above 0"),
    (lambda: Table((), ()), "no columns"),
    (lambda: Table((Column("A"),), (("1", "2"),)), "2 cells for 1 columns"),
    (lambda: Cell("A", link="#a"), "'#a'"),
    (lambda: Row(()), "no blocks"),
    (lambda: Row((Para("A"),), (1.0, 2.0)), "a width share for each block"),
    (lambda: Row((Para("A"),), (-1.0,)), "above 0"),
    (lambda: Row((PageBreak(),)), "within a Row"),
    (lambda: Together((Row((Para("A"),)), PageBreak())), "within a Together"),
    (lambda: report(Heading("A", anchor="a"), Heading("B", anchor="a")), "more than once: a"),
    (lambda: report(Table((Column("A"),), ((Cell("1", link="away"),),))), "not in the report: away"),
])
def test_faulty_trees_are_refused(make, sentence):
    with pytest.raises(ValueError, match=r"\w\.$") as refusal:
        make()
    assert sentence in str(refusal.value)


def test_walk_meets_every_block_in_order():
    inner = Para("inner")
    figure = Figure(Drawing(1.0, 1.0, ()))
    row = Row((figure, inner))
    group = Together((row,))
    assert list(walk((group, PageBreak()))) == [group, row, figure, inner, PageBreak()]


def test_links_reach_cells_and_headings_within_groups():
    cells = (Cell("1", anchor="one"), Cell("2", link="one"), Cell("3", link="h"))
    table = Table((Column("A"),), tuple((cell,) for cell in cells))
    assert report(Together((Heading("H", anchor="h"), table))).blocks


def test_shares_become_fractions():
    assert Row((Para("a"), Para("b")), (3.0, 1.0)).widths == (0.75, 0.25)
    assert Row((Para("a"), Para("b"))).widths == (0.5, 0.5)


def test_pairs_are_divided_among_columns():
    assert [Pairs((("a", "b"),) * n, columns=3).lines for n in (0, 1, 3, 4, 7)] == [0, 1, 1, 2, 3]


def test_a_string_is_a_plain_cell():
    assert as_cell("a") == Cell("a")
    cell = Cell("a", bold=True)
    assert as_cell(cell) is cell
