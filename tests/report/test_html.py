"""The HTML report: well-formed, escaped, complete in one file, the same strings as the page model."""

from __future__ import annotations

import base64
import hashlib
import re
from html.parser import HTMLParser

import pytest
from sample_report import sample_report, strings_of

from louverwright.report.html import PAPERS, shop_script, to_html
from louverwright.report.html_style import css_string, page_counter
from louverwright.report.page import (
    Bullets,
    Cell,
    Column,
    Heading,
    PageBreak,
    Pairs,
    Para,
    Report,
    Table,
    Tally,
    Together,
    tallies_of,
)

EVIL = "</title></style><script>alert('x')</script> & \"quoted\""
VOID = {"meta", "col", "br"}


class Reader(HTMLParser):
    """Fails on tags that do not match; keeps elements, their attributes, the text that is seen, styles and scripts."""

    def __init__(self) -> None:
        super().__init__(convert_charrefs=True)
        self.open: list[str] = []
        self.elements: list[tuple[str, dict[str, str]]] = []
        self.seen: list[str] = []
        self.hidden: dict[str, list[str]] = {"style": [], "script": [], "desc": []}

    def handle_starttag(self, tag, attrs):
        self.elements.append((tag, dict(attrs)))
        if tag not in VOID:
            self.open.append(tag)

    def handle_startendtag(self, tag, attrs):
        self.elements.append((tag, dict(attrs)))

    def handle_endtag(self, tag):
        assert self.open and self.open.pop() == tag, f"</{tag}> closes nothing"

    def handle_data(self, data):
        last = self.open[-1] if self.open else ""
        self.hidden.get(last, self.seen).append(data)


def read(report: Report, paper: str = "A4") -> Reader:
    reader = Reader()
    reader.feed(to_html(report, paper))
    reader.close()
    assert not reader.open, f"left open: {reader.open}"
    return reader


def evil_report(tallies: tuple[Tally, ...] = ()) -> Report:
    table = Table((Column(EVIL),), ((EVIL,), (Cell(EVIL, bold=True),)), caption=EVIL, note=EVIL, tallies=tallies)
    blocks = (Heading(EVIL), Para(EVIL), Bullets((EVIL,)), Pairs(((EVIL, EVIL),)), table)
    return Report(EVIL, EVIL, ((EVIL, EVIL),), blocks, EVIL, language='en"><script>', page_label=EVIL, model=EVIL)


def counted_report() -> Report:
    """Two marks to count off, in a list and in blocks of their own."""
    tallies = (Tally("a1", "B1", "Leg", 8, "Base", "2x4"), Tally("b2", "L9", "Slat", 16, "Louver stage", "1x6"))
    listed = Table((Column("Mark"), Column("Part")), (("B1", "Leg"), ("L9", "Slat")), caption="All", tallies=tallies)
    parts = tuple(Together((Heading(f"{each.mark} · {each.name}", 2),), each) for each in tallies)
    return Report("Barn", "", (), (Heading("Cut list"), listed, Heading("Parts"), *parts), "", model="ed07ed36")


def policy_of(reader: Reader) -> dict[str, list[str]]:
    """What the page's policy says, by its directives."""
    metas = [attributes for tag, attributes in reader.elements
             if tag == "meta" and attributes.get("http-equiv") == "Content-Security-Policy"]
    assert len(metas) == 1
    return {words[0]: words[1:] for words in (each.split() for each in metas[0]["content"].split(";"))}


def digest(text: str) -> str:
    """As Content Security Policy Level 3 (W3C) asks for it: base64 of the SHA-256 of the element's text."""
    return f"'sha256-{base64.b64encode(hashlib.sha256(text.encode()).digest()).decode()}'"


@pytest.mark.parametrize("paper", PAPERS)
def test_tags_match_and_every_string_is_there(paper):
    report = sample_report()
    seen = " ".join(" ".join(read(report, paper).seen).split())
    missing = [text for text in strings_of(report) if " ".join(text.split()) not in seen]
    assert not missing


def test_what_a_user_typed_stays_text():
    reader = read(evil_report())
    assert "script" not in {tag for tag, _ in reader.elements}
    assert [text for text in reader.seen if text.strip()] == [EVIL] * 16
    assert reader.elements[0] == ("html", {"lang": 'en"><script>'})


def test_what_a_user_typed_stays_text_where_it_is_counted_off():
    tally = Tally("a1", EVIL, EVIL, 3, EVIL, EVIL)
    reader = read(evil_report((tally, tally)))
    assert [tag for tag, _ in reader.elements].count("script") == 1 and reader.hidden["script"] == [f"\n{shop_script()}"]
    assert [text for text in reader.seen if text.strip()] == [EVIL] * 16
    counted = [attributes for _, attributes in reader.elements if "data-piece" in attributes]
    assert [each["data-name"] for each in counted] == [EVIL] * 2
    body = next(attributes for tag, attributes in reader.elements if tag == "body")
    assert body == {"data-model": EVIL, "data-project": EVIL}


@pytest.mark.parametrize("make", [sample_report, counted_report])
def test_nothing_is_fetched_and_nothing_but_our_script_runs(make):
    text = to_html(make())
    assert not re.search(r"https?:", text.replace("http://www.w3.org/2000/svg", ""))
    assert not re.search(r"@import|url\(", text)
    reader = read(make())
    tags = [tag for tag, _ in reader.elements]
    assert not set(tags) & {"link", "img", "iframe", "object", "embed", "image", "use", "form", "base"}
    assert tags.count("script") == (1 if any(tallies_of(make().blocks)) else 0)
    names = {name for _, attributes in reader.elements for name in attributes}
    assert "src" not in names and not [name for name in names if name.startswith("on")]


@pytest.mark.parametrize("make", [sample_report, counted_report])
def test_the_policy_lets_in_our_style_and_our_script_alone(make):
    reader = read(make())
    policy = policy_of(reader)
    script = reader.hidden["script"]
    assert policy["default-src"] == policy["base-uri"] == policy["form-action"] == ["'none'"]
    assert policy.get("script-src", []) == [digest(each) for each in script]
    assert policy["style-src-elem"] == [digest("".join(reader.hidden["style"]))]
    assert set(policy) - {"script-src"} == {"default-src", "base-uri", "form-action", "style-src-elem", "style-src-attr",
                                            "style-src"}, "nothing else is let in: no picture, no font, no connection"


def test_the_script_cannot_end_early_and_makes_no_code_of_texts():
    script = shop_script()
    assert not re.search(r"</|<!--|\]\]>", script)
    assert not re.search(r"(inner|outer)HTML|insertAdjacent|document\.write|\beval\b|Function\(|fetch\(|XMLHttp|import\(",
                         script)


def test_what_is_counted_off_says_what_and_how_many():
    counted = [(tag, attributes) for tag, attributes in read(counted_report()).elements if "data-piece" in attributes]
    assert [tag for tag, _ in counted] == ["tr", "tr", "div", "div"]
    assert counted[0][1] == {"role": "row", "data-piece": "a1", "data-mark": "B1", "data-name": "Leg", "data-pieces": "8",
                             "data-stage": "Base", "data-stock": "2x4"}
    assert {key: value for key, value in counted[2][1].items() if key != "class"} == {
        key: value for key, value in counted[0][1].items() if key != "role"}


def test_anchors_are_unique_and_links_reach_them():
    elements = read(sample_report()).elements
    anchors = [attributes["id"] for _, attributes in elements if "id" in attributes]
    links = [attributes["href"] for _, attributes in elements if "href" in attributes]
    named = [attributes.get("aria-labelledby", "").split() for _, attributes in elements]
    assert len(anchors) == len(set(anchors))
    assert len(links) == 40
    assert {link[1:] for link in links} <= set(anchors)
    assert {name for names in named for name in names} <= set(anchors)


@pytest.mark.parametrize("paper", PAPERS)
def test_the_paper_is_named(paper):
    assert f"size: {paper} portrait;" in to_html(sample_report(), paper)


def test_other_papers_are_refused():
    with pytest.raises(ValueError, match=r"'A5' is not one of A4, Letter\."):
        to_html(sample_report(), "A5")


def test_heading_levels_leave_none_out():
    report = Report("T", "", (), (Heading("a", 3), Heading("b", 2), Heading("c", 3), Heading("d", 1)), "")
    levels = [tag for tag, _ in read(report).elements if re.fullmatch(r"h\d", tag)]
    assert levels == ["h1", "h2", "h3", "h4", "h2"]


def test_page_breaks_make_no_empty_page():
    a, b = Para("a"), Para("b")
    report = Report("T", "", (), (PageBreak(), a, PageBreak(), PageBreak(), b, PageBreak()), "")
    assert [attributes for _, attributes in read(report).elements].count({"class": "new-page"}) == 1


def test_table_columns_keep_their_shares_and_sides():
    table = Table((Column("a", 1.0), Column("b", 3.0, "right")), (("1", "2"),))
    text = to_html(Report("T", "", (), (table,), ""))
    assert '<col style="width:25%"><col style="width:75%">' in text
    assert '<th scope="row">1</th><td class="right">2</td>' in text


def test_a_very_long_word_may_be_broken():
    text = to_html(Report("T", "", (), (Table((Column("a"),), (("x" * 60,), ("x " * 60,))),), ""))
    assert text.count('class="long"') == 1


def test_css_strings_cannot_end_early():
    assert css_string('a"b\n</style>') == '"a\\22 b\\a \\3c /style\\3e "'
    assert css_string("10 · 20") == '"10 \\b7  20"', "the escape's space and the text's own"


def test_the_page_label_counts():
    assert page_counter("Page {page} of {pages}") == '"Page " counter(page) " of " counter(pages)'
    assert page_counter("") == '""'
