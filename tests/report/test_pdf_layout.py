"""The PDF's layout, with a font that is only a rule: no Qt needed."""

from __future__ import annotations

from collections import Counter

import pytest
from hypothesis import given
from hypothesis import strategies as st
from sample_report import cuts_table, part_block, sample_report, setup_table, strings_of

from louverwright.exchange.pdf_pages import BOTTOM, LEFT, RIGHT, SPARE, TOP, Page, pages_of
from louverwright.exchange.pdf_text import (
    RUNNING,
    BoxMark,
    DrawingMark,
    RuleMark,
    Style,
    TextMark,
    column_widths,
    word_width,
    wrap,
)
from louverwright.report.drawing import Drawing
from louverwright.report.page import (
    Block,
    Bullets,
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
)
from louverwright.report.sheets import PAPERS
from louverwright.report.strokes import POINT_MM, Letters, primitives

STYLE = Style(10.0)
TOUCH = 1e-6


def measure(text: str, size: float, bold: bool) -> float:
    return len(text) * size * POINT_MM * (0.66 if bold else 0.6)


def pages(*blocks: Block, paper: str = "A4", title: str = "Title", footer: str = "Footer") -> list[Page]:
    return pages_of(Report(title, "Subtitle", (("Date", "today"),), blocks, footer), paper, measure)


def texts(page: Page, style: Style | None = None) -> list[str]:
    return [mark.text for mark in page.marks if isinstance(mark, TextMark) and style in (None, mark.style)]


def body(page: Page) -> list[str]:
    return [mark.text for mark in page.marks if isinstance(mark, TextMark) and mark.style != RUNNING]


def words(lines: list[str]) -> Counter[str]:
    return Counter(word for line in lines for word in line.split())


def drawn(page: Page) -> list[str]:
    return [part.text for mark in page.marks if isinstance(mark, DrawingMark)
            for part in primitives(mark.drawing) if isinstance(part, Letters)]


def edges(mark) -> tuple[float, float]:
    if isinstance(mark, TextMark):
        return mark.x, mark.x + measure(mark.text, mark.style.size, mark.style.bold)
    if isinstance(mark, RuleMark):
        return mark.x1, mark.x2
    if isinstance(mark, BoxMark):
        return mark.x, mark.x + mark.width
    return mark.x, mark.x + mark.scale * mark.drawing.width


def low(mark) -> float:
    if isinstance(mark, RuleMark):
        return mark.y2
    if isinstance(mark, BoxMark):
        return mark.y + mark.height
    return mark.y if isinstance(mark, TextMark) else mark.y + mark.scale * mark.drawing.height


def assert_within_frame(page: Page) -> None:
    for mark in page.marks:
        left, right = edges(mark)
        assert left >= LEFT - TOUCH and right <= page.width - RIGHT + TOUCH, mark
        if not (isinstance(mark, TextMark) and mark.style == RUNNING):
            assert low(mark) <= page.height - BOTTOM + TOUCH, mark


@pytest.mark.parametrize("paper", PAPERS)
@pytest.mark.parametrize("parts", [3, 12])
def test_nothing_is_outside_the_frame(paper, parts):
    for page in pages_of(sample_report(parts), paper, measure):
        assert (page.width, page.height) == PAPERS[paper]
        assert_within_frame(page)


@pytest.mark.parametrize("paper", PAPERS)
def test_every_string_is_placed_once(paper):
    report = sample_report(6)
    made = pages_of(report, paper, measure)
    placed = words([line for page in made for line in body(page) + drawn(page)])
    placed -= Counter({"•": 3})
    repeated = sum("Gauge" in body(page) for page in made) - 1
    divided = sum(body(page).count("Done") for page in made) - 6
    for table, times in ((setup_table(), repeated), (cuts_table("B1L", 3), divided)):
        for word, count in words([column.title for column in table.columns]).items():
            placed[word] -= count * times
    # The footer is on each page, among the running words.
    assert +placed == words(strings_of(report)) - words([report.footer])
    assert repeated >= 1


def test_first_page_has_the_title_block_and_the_others_a_running_head():
    first, second, third = pages(Para("a"), PageBreak(), Para("b"), PageBreak(), Para("c"))
    assert texts(first)[:4] == ["Title", "Subtitle", "Date", "today"]
    assert texts(first, RUNNING) == ["Footer", "Page 1 of 3"]
    assert texts(second) == ["Title", "Subtitle", "b", "Footer", "Page 2 of 3"]
    assert texts(third)[-1] == "Page 3 of 3"


def test_the_head_of_a_table_is_on_each_of_its_pages():
    rows = tuple((f"row {n}", "x") for n in range(150))
    made = pages(Table((Column("First"), Column("Second")), rows, caption="Long table"))
    assert len(made) > 2
    for page in made:
        lines = body(page)
        first_row = next(index for index, line in enumerate(lines) if line.startswith("row"))
        assert lines[first_row - 2:first_row] == ["First", "Second"]
    assert sum(body(page).count("Long table") for page in made) == 1
    placed = [line for page in made for line in body(page) if line.startswith("row")]
    assert placed == [name for name, _ in rows]


@pytest.mark.parametrize("filling", range(0, 60, 3))
def test_no_row_and_no_heading_stands_alone(filling):
    lines = Para("\n".join(["filling"] * filling))
    rows = tuple((f"row {n}",) for n in range(40))
    table = Table((Column("Head"),), rows, caption="Caption", note="Note")
    made = pages(lines, Heading("Heading", 2), table)
    for page in made:
        shown = [line for line in body(page) if line.startswith("row")]
        assert len(shown) != 1
        assert ("Heading" in body(page)) == ("Caption" in body(page)) == ("row 0" in shown)
        assert ("Note" in body(page)) == ("row 39" in shown)


@pytest.mark.parametrize("filling", range(0, 60, 4))
def test_groups_that_fit_on_a_page_stay_together(filling):
    lines = Para("\n".join(["filling"] * filling))
    made = pages(lines, part_block(1), part_block(2))
    for mark in ("B1L", "B2L"):
        (first, *more) = [page for page in made if any(line.startswith(mark) for line in body(page))]
        assert {f"{mark} Gable leg, left", f"Cuts of {mark}, in order", f"{mark}.1", f"{mark}.2"} <= set(body(first))
        for page in more:
            assert body(page)[0] == "Cut", "its table runs on below its head"
            assert max(low(mark) for mark in first.marks if not _runs(mark)) > (1.0 - SPARE) * first.height
        assert len(more) <= 1
    assert len(made) <= 3


def _runs(mark) -> bool:
    return isinstance(mark, TextMark) and mark.style == RUNNING


@pytest.mark.parametrize("filling", range(0, 60, 4))
def test_a_group_without_a_table_is_never_divided(filling):
    lines = Para("\n".join(["filling"] * filling))
    made = pages(lines, Together((Heading("Group", 2), *(Para(f"line {n}") for n in range(30)))))
    assert sum(any(line.startswith("line") for line in body(page)) for page in made) == 1


def test_pairs_in_small_print_are_as_low_as_their_columns_allow():
    """A long value beside short ones: the columns are filled on their own, not row by row."""
    long = " ".join(["word"] * 60)
    rows = (("A", long), ("B", "b"), ("C", "c"), ("D", "d"))
    (page,) = pages(Pairs(rows, 2, small=True), Para("after"))
    places = {mark.text: (mark.x, mark.y) for mark in page.marks if isinstance(mark, TextMark)}
    assert places["B"][0] == places["C"][0] == places["D"][0] > places["A"][0]
    assert places["B"][1] == pytest.approx(places["A"][1]) and places["D"][1] < places["after"][1]
    assert places["C"][1] - places["B"][1] < 6.0


def test_a_group_too_tall_for_a_page_flows_with_its_heading():
    made = pages(Together((Heading("Tall", 2), *(Para(f"line {n}") for n in range(150)))))
    assert {"Tall", "line 0"} <= set(body(made[0]))
    assert [line for page in made for line in body(page) if line.startswith("line")] == [
        f"line {n}" for n in range(150)]


def test_a_row_of_blocks_has_them_side_by_side():
    table = Table((Column("Left"),), (("1",),))
    page, = pages(Row((table, Para("Right")), shares=(2.0, 1.0)))
    places = {mark.text: mark.x for mark in page.marks if isinstance(mark, TextMark)}
    assert places["Right"] > LEFT + 110.0 > places["Left"]


def test_a_row_too_tall_for_a_page_becomes_a_column():
    tall = Table((Column("Left"),), tuple((f"row {n}",) for n in range(100)))
    made = pages(Row((tall, Para("Right"))))
    assert len(made) > 1
    assert sum(line.startswith("row") for page in made for line in body(page)) == 100
    assert "Right" in body(made[-1])


def test_a_table_row_taller_than_a_page_is_divided():
    made = pages(Table((Column("Head"), Column("Long")), (("x", "word " * 4000),)))
    assert sum(words(body(page))["word"] for page in made) == 4000
    assert all("Head" in body(page) for page in made)
    for page in made:
        assert_within_frame(page)


def test_a_very_long_value_of_a_pair_is_set_as_text():
    made = pages(Pairs((("Note", "word " * 4000), ("Next", "value"))))
    assert sum(words(body(page))["word"] for page in made) == 4000
    assert "value" in body(made[-1])


def test_a_drawing_is_scaled_down_to_the_paper_but_never_up():
    wide, small, tall = Drawing(400.0, 10.0, ()), Drawing(20.0, 10.0, ()), Drawing(10.0, 900.0, ())
    made = pages(Figure(wide), Figure(small), Figure(tall, "caption"))
    scales = [mark.scale for page in made for mark in page.marks if isinstance(mark, DrawingMark)]
    assert scales[0] == pytest.approx((210.0 - LEFT - RIGHT) / 400.0)
    assert scales[1] == 1.0
    assert scales[2] < 0.3
    for page in made:
        assert_within_frame(page)


def test_page_breaks_make_no_empty_page():
    made = pages(PageBreak(), Para("a"), PageBreak(), PageBreak(), Para("b"), PageBreak())
    assert [body(page)[-1] for page in made] == ["a", "b"]
    assert [body(page)[-1] for page in pages(Heading("a"), PageBreak(), Heading("b"))] == ["a", "b"]


def test_a_report_of_nothing_is_one_page():
    assert len(pages()) == 1
    assert len(pages(Bullets(()), Pairs(()), Together(()))) == 1


def test_an_overlong_title_is_refused_in_a_sentence():
    with pytest.raises(ValueError, match=r"longer than a page of the PDF\. Shorten its text\.$"):
        pages(Heading("word " * 3000))


def test_other_papers_are_refused():
    with pytest.raises(ValueError, match=r"'A5' is not one of A4, Letter\."):
        pages(paper="A5")


def test_a_long_footer_makes_its_own_room():
    made = pages(*(Para(f"line {n}") for n in range(120)), footer="many words " * 60)
    for page in made:
        foot = min(mark.y for mark in page.marks if isinstance(mark, TextMark) and "many" in mark.text)
        rest = [mark.y for mark in page.marks if isinstance(mark, TextMark) and mark.style != RUNNING]
        assert max(rest) < foot - 2.0
        assert_within_frame(page)


def test_the_top_margin_is_kept():
    for page in pages_of(sample_report(), "A4", measure):
        tops = [mark.y for mark in page.marks if isinstance(mark, TextMark) and mark.style != RUNNING]
        assert min(tops) > TOP


@given(st.text(alphabet="ab \n\u00a0", max_size=80), st.floats(3.0, 60.0))
def test_wrapped_lines_fit_and_lose_nothing(text, width):
    lines = wrap(text, width, STYLE, measure)
    assert all(len(line) <= 1 or measure(line, 10.0, False) <= width for line in lines)
    assert "".join(lines).replace(" ", "") == text.replace(" ", "").replace("\n", "")


@given(st.text(alphabet="abc \n\u00a0", max_size=60))
def test_no_word_is_broken_where_the_widest_fits(text):
    lines = wrap(text, word_width(text, STYLE, measure) + TOUCH, STYLE, measure)
    found = [word for line in lines for word in line.split(" ") if word]
    assert found == [word for word in text.replace("\n", " ").split(" ") if word]


COLUMNS = st.lists(st.tuples(st.floats(0.1, 9.0), st.floats(0.5, 40.0)), min_size=1, max_size=9)


@given(COLUMNS, st.floats(20.0, 200.0))
def test_columns_fill_the_width_and_keep_their_least(columns, width):
    shares, least = [share for share, _ in columns], [each for _, each in columns]
    widths = column_widths(shares, least, width)
    assert sum(widths) == pytest.approx(width)
    if sum(least) <= width:
        assert all(given_ >= needed - 1e-6 for given_, needed in zip(widths, least, strict=True))
