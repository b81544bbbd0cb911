"""The cut report in Chromium, as it is used in the shop: ticks, filters, large print, keyboard, printing, without network."""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path

import pytest

sys.path.append(str(Path(__file__).resolve().parent.parent / "core"))
from chromium import Chromium
from making import scenario_of

from louverwright.exchange.papers import job_from_values
from louverwright.report.document import document
from louverwright.report.html import to_html
from louverwright.report.job import Job
from louverwright.report.part_sheet import part_sheets
from louverwright.report.tally import piece_digest

PROGRAM = shutil.which("chromium")
pytestmark = pytest.mark.skipif(PROGRAM is None, reason="chromium is not installed")

#: Widths of a small phone, a phone, a tablet and a desk (CSS pixels).
WIDTHS = (320, 390, 820, 1280)
EVIL = "</script><script>window.hacked = 1</script><img src=x onerror='window.hacked = 2'>"
ROW = "document.querySelectorAll('tr[data-piece]')"


def job(**values: object) -> Job:
    return job_from_values({**scenario_of("hay-barn-28ft").values, **values})


def page(folder: Path, name: str, **values: object) -> str:
    """Writes the report of a hay barn; its address."""
    path = folder / f"{name}.html"
    path.write_text(to_html(document(job(**values))), encoding="utf-8")
    return path.as_uri()


@pytest.fixture(scope="module")
def browser(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Chromium]:
    assert PROGRAM is not None
    made = Chromium(PROGRAM, tmp_path_factory.mktemp("profile"))
    yield made
    made.close()


@pytest.fixture(scope="module")
def pages(tmp_path_factory: pytest.TempPathFactory) -> dict[str, str]:
    """The vent, the same with another slope at the left, and with texts that are meant ill."""
    folder = tmp_path_factory.mktemp("pages")
    return {"barn": page(folder, "barn"), "changed": page(folder, "changed", pitch_left=30.0),
            "evil": page(folder, "evil", project=EVIL, notes=EVIL)}


@pytest.fixture
def barn(browser: Chromium, pages: dict[str, str]) -> Chromium:
    """The vent's page, opened as for the first time."""
    browser.complaints.clear()
    browser.size(1280, 900)
    browser.open(pages["barn"])
    browser.run("localStorage.clear()")
    browser.open(pages["barn"])
    return browser


def words(browser: Chromium, row: int = 0) -> str:
    return str(browser.run(f"{ROW}[{row}].querySelector('.count').textContent"))


def tick(browser: Chromium, row: int, button: str, times: int = 1) -> None:
    number = {"less": 0, "more": 1, "all": 2}[button]
    browser.run(f"for (let i = 0; i < {times}; i++) {ROW}[{row}].querySelectorAll('button')[{number}].click()")


def sums(browser: Chromium) -> str:
    return str(browser.run("document.querySelector('.sums').textContent"))


def choose(browser: Chromium, select: int, value: str) -> None:
    browser.run(f"(list => {{ list.value = '{value}'; list.dispatchEvent(new Event('change')); }})"
                f"(document.querySelectorAll('.controls select')[{select}])")


def shown(browser: Chromium) -> list[list[str]]:
    """Marks of the cut list and of the parts that are not hidden."""
    found = browser.run("['tr', 'div'].map(tag => [...document.querySelectorAll(tag + '[data-piece]')]"
                        ".filter(each => each.offsetParent !== null).map(each => each.dataset.mark))")
    assert isinstance(found, list)
    return found


def test_pieces_are_counted_and_the_browser_keeps_them(barn: Chromium, pages: dict[str, str]) -> None:
    assert (words(barn), sums(barn)) == ("0 of 2", "0 of 145 pieces cut")
    tick(barn, 0, "more", 3)
    tick(barn, 2, "more")
    assert (words(barn), words(barn, 2), sums(barn)) == ("✓ 2 of 2", "1 of 4", "3 of 145 pieces cut")
    block = "document.querySelector('#part-B1L').parentElement.querySelector('.count').textContent"
    assert barn.run(block) == "✓ 2 of 2", "the part's own block counts along"
    barn.open(pages["barn"])
    assert (words(barn), sums(barn)) == ("✓ 2 of 2", "3 of 145 pieces cut")
    tick(barn, 0, "less")
    tick(barn, 2, "all")
    assert (words(barn), words(barn, 2)) == ("1 of 2", "✓ 4 of 4")
    assert barn.run("document.querySelector('[role=status]').textContent") == "B2: ✓ 4 of 4 cut. 5 of 145 in all.".replace(
        "✓ ", "")
    barn.run("[...document.querySelectorAll('.controls button')].at(-1).click()")
    assert sums(barn) == "0 of 145 pieces cut"
    assert barn.complaints == []


def test_a_changed_vent_takes_over_what_is_cut_alike_and_no_more(barn: Chromium, pages: dict[str, str]) -> None:
    before = {sheet.mark: piece_digest(sheet.part) for sheet in part_sheets(job())}
    after = {piece_digest(sheet.part) for sheet in part_sheets(job(pitch_left=30.0))}
    marks = list(before)
    gone = next(mark for mark in marks if before[mark] not in after)
    assert before["L9"] in after and gone.startswith("B")
    pieces = next(sheet.part.count for sheet in part_sheets(job()) if sheet.mark == gone)
    for mark in (gone, "L9"):
        tick(barn, marks.index(mark), "all")
    barn.open(pages["changed"])
    assert sums(barn).startswith("0 of "), "nothing is taken over unasked"
    offer = "[...document.querySelectorAll('.controls button')].find(each => each.textContent.startsWith('Take over'))"
    assert barn.run(f"{offer}.textContent").startswith("Take over 16 ticks of an earlier state")
    barn.run(f"{offer}.click()")
    assert sums(barn).startswith("16 of ")
    barn.open(pages["barn"])
    assert sums(barn) == f"{16 + pieces} of 145 pieces cut", "each state has its own"


def test_parts_are_chosen_by_stage_by_stock_and_by_what_is_left(barn: Chromium) -> None:
    everything = shown(barn)
    assert everything[0] == everything[1] and len(everything[0]) == 40
    choose(barn, 0, "Louver stage")
    assert shown(barn) == [[mark for mark in everything[0] if mark.startswith("L")]] * 2
    choose(barn, 1, "1x6")
    louver_boards = shown(barn)[0]
    assert "L9" in louver_boards and "L1" not in louver_boards
    choose(barn, 0, "")
    choose(barn, 1, "")
    still = "document.querySelectorAll('.controls input')[0].click()"
    barn.run(still)
    tick(barn, 0, "all")
    assert shown(barn) == everything, "what is finished stays under the finger"
    barn.run(f"{still}; {still}")
    assert shown(barn) == [everything[0][1:]] * 2
    assert "still to cut (39 of 40 marks)" in barn.run("document.querySelector('.choice').textContent")
    barn.run("location.hash = '#part-B1L'")
    barn.run("new Promise(done => setTimeout(done, 50))")
    assert shown(barn) == everything, "a link to a part that is not shown shows it"


def test_it_is_used_by_keyboard_and_every_control_has_a_name(barn: Chromium) -> None:
    barn.run(f"{ROW}[0].querySelector('a').focus()")
    for _ in range(2):
        barn.press("Tab", 9)
    assert barn.run("document.activeElement.getAttribute('aria-label')") == "B1L: one more is cut"
    assert barn.run("getComputedStyle(document.activeElement).outlineStyle") == "solid", "focus is seen"
    barn.press(" ", 32, " ")
    barn.press("Enter", 13, "\r")
    assert words(barn) == "✓ 2 of 2"
    tree = barn.ask("Accessibility.getFullAXTree")["nodes"]
    used = [each for each in tree if each.get("role", {}).get("value") in ("button", "checkbox", "combobox", "table", "group")
            and not each.get("ignored")]
    assert len(used) > 80 and not [each for each in used if not each.get("name", {}).get("value")
                                   and each["role"]["value"] != "table"]


def test_without_storage_it_works_for_the_visit_and_says_so(barn: Chromium, pages: dict[str, str]) -> None:
    blocked = barn.ask("Page.addScriptToEvaluateOnNewDocument", source="Object.defineProperty(window, 'localStorage', "
                       "{get() { throw new DOMException('blocked', 'SecurityError'); }})")
    barn.open(pages["barn"])
    assert "does not keep ticks" in barn.run("document.querySelector('.shop').textContent")
    tick(barn, 0, "more")
    assert words(barn) == "1 of 2" and barn.complaints == []
    barn.ask("Page.removeScriptToEvaluateOnNewDocument", identifier=blocked["identifier"])
    barn.open(pages["barn"])
    assert "Ticks are kept in this browser" in barn.run("document.querySelector('.shop').textContent")


def test_no_other_script_runs(barn: Chromium, pages: dict[str, str]) -> None:
    barn.open(pages["evil"])
    tick(barn, 0, "more")
    assert sums(barn) == "1 of 145 pieces cut" and barn.complaints == []
    assert barn.run("document.title") == EVIL
    barn.run("document.body.append(Object.assign(document.createElement('script'), {textContent: 'window.hacked = 3'}))")
    barn.run("document.body.insertAdjacentHTML('beforeend', '<button id=bad onclick=\"window.hacked = 4\">x</button>')")
    barn.run("document.querySelector('#bad').click()")
    assert barn.run("typeof window.hacked") == "undefined"
    assert len(barn.complaints) == 2 and all("Content Security Policy" in text for text in barn.complaints)


def test_nothing_stands_out_at_the_side_and_large_print_is_larger(barn: Chromium) -> None:
    large = "document.querySelectorAll('.controls input')[1].click()"
    size = f"parseFloat(getComputedStyle({ROW}[0].querySelector('td')).fontSize)"
    for width in WIDTHS:
        barn.size(width, 844)
        plain = barn.run(size)
        assert barn.run("document.documentElement.scrollWidth") == width
        barn.run(large)
        assert barn.run("document.documentElement.scrollWidth") == width
        assert barn.run(size) > 1.3 * plain
        barn.run(large)
    barn.size(390, 844)
    small = "[...document.querySelectorAll('.tally button')].filter(each => each.getBoundingClientRect().height < 40)"
    assert barn.run(f"{small}.length") == 0, "a thumb hits every button"


def test_what_is_shown_is_printed_with_boxes_for_ticks(barn: Chromium, tmp_path: Path) -> None:
    tick(barn, 0, "more")
    choose(barn, 0, "Base")
    barn.print_to(tmp_path / "base.pdf")
    text = subprocess.run(["pdftotext", "-layout", tmp_path / "base.pdf", "-"], check=True, capture_output=True,
                          text=True).stdout
    assert "1 of 145 pieces cut" in text and "Shown: Base (12 of 40 marks)" in text and "1 of 2" in text
    assert "B1L · Leg" in text and "L9 · Slat" not in text
    assert "Clear all ticks" not in text and "Still to cut" not in text
    barn.ask("Emulation.setEmulatedMedia", media="print")
    boxes = f"[...{ROW}[0].querySelectorAll('.boxes i')].map(each => getComputedStyle(each).borderTopWidth)"
    thick, thin = barn.run(boxes)
    assert float(thick[:-2]) > 2 * float(thin[:-2])
    assert barn.run("[...document.querySelectorAll('.tally button')].every(each => each.offsetParent === null)")
    barn.ask("Emulation.setEmulatedMedia", media="")


def test_without_scripts_the_page_is_whole(barn: Chromium, pages: dict[str, str]) -> None:
    barn.ask("Emulation.setScriptExecutionDisabled", value=True)
    barn.open(pages["barn"])
    assert barn.run("document.querySelectorAll('.shop, button').length") == 0
    assert len(shown(barn)[0]) == len(shown(barn)[1]) == 40
    barn.ask("Emulation.setScriptExecutionDisabled", value=False)


def test_every_part_has_a_digest_of_its_own() -> None:
    for values in ({}, {"pitch_left": 30.0}, {"corner": "mitred"}):
        digests = [piece_digest(sheet.part) for sheet in part_sheets(job(**values))]
        assert len(digests) == len(set(digests))


if shots := os.environ.get("LOUVERWRIGHT_SHOTS"):
    def test_pictures(barn: Chromium) -> None:
        """To be looked at: a phone, a tablet, a desk."""
        for name, width, height in (("phone", 390, 844), ("tablet", 820, 1180), ("desk", 1280, 900)):
            barn.size(width, height)
            for anchor in ("summary", "cut-list", "part-B1L"):
                barn.run(f"document.getElementById('{anchor}').scrollIntoView()")
                barn.picture(Path(shots) / f"shop_{name}_{anchor}.png")
