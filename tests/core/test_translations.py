"""The files of translations against the source: nothing left out, nothing unfinished, every placeholder in its place."""

from __future__ import annotations

import sys
from collections.abc import Callable, Mapping
from pathlib import Path
from typing import Any

import pytest
from test_checks import LISTS, PROVOKED

sys.path.append(str(Path(__file__).resolve().parents[1]))
import translations
from translations import LANGUAGES, OURS, PROPERTY, Key, Message

from louverwright.core.checks import checked_spec
from louverwright.core.roof_planes import Patch, RoofError, two_slopes
from louverwright.core.spec import SpecError
from louverwright.core.stock import StockListError, read_stock_list
from louverwright.core.survey import SurveyError, survey_from_mapping
from louverwright.core.units import ReadError, parse_angle, parse_length

UPDATE = "run python3 tests/translations.py, translate what is unfinished, and run it again"
LISTED = {language: translations.read(translations.file_of(language)) for language in LANGUAGES}
every_language = pytest.mark.parametrize("language", LANGUAGES)


@every_language
def test_all_that_is_said_is_translated(language: str) -> None:
    done = {source for (context, source), message in LISTED[language].items()
            if context == OURS and message.text and not message.state}
    assert translations.sources() - done == set(), UPDATE


@every_language
def test_the_file_is_as_the_tool_writes_it(language: str) -> None:
    path = translations.file_of(language)
    assert path.read_text(encoding="utf-8") == translations.written(translations.updated(LISTED[language]), language), UPDATE


@every_language
def test_placeholders_are_the_same(language: str) -> None:
    other = [source for (context, source), message in LISTED[language].items() if context == OURS
             and set(translations.placeholders(source)) != set(translations.placeholders(message.text))]
    assert other == []


@every_language
def test_translations_keep_the_ends_of_their_sources(language: str) -> None:
    """Space before and after, and the full stop, by which sentences are put together."""
    def ends(text: str) -> tuple[bool, bool, bool]:
        return text[0].isspace(), text[-1].isspace(), text.endswith(".")

    other = [source for (context, source), message in LISTED[language].items() if ends(source) != ends(message.text)]
    assert other == []


@every_language
def test_few_translations_are_english(language: str) -> None:
    """Names of paper and units, and words that both have."""
    same = {source for (context, source), message in LISTED[language].items() if context == OURS and source == message.text}
    assert same <= {"A4", "Letter", "mm", "in", "ft-in", "Base", "Air"}


def test_no_sentence_goes_to_the_user_unsaid() -> None:
    assert translations.unsaid() == []


def test_freecads_own_contexts_are_served() -> None:
    found = translations.derived()
    assert {context for context, _ in found} == {PROPERTY, *(name for name, *_ in translations.commands())}
    assert (PROPERTY, "Barn roof") in found    # a group of properties
    assert (PROPERTY, "Width of the vent over the cladding. 300 mm to 3600 mm. 0: by the width rule from the ridge "
            "length.") in found
    assert (PROPERTY, "Weight of the base. In kg.") in found
    assert (PROPERTY, "How many pieces the vent has; 0 if it has none.") in found    # of a property that no table has
    assert ("Louverwright_NewVent", "New vent") in found


# ---- the tool itself


def _message(text: str, state: str = "") -> Message:
    return Message(text, state)


def test_a_new_text_is_unfinished_and_one_that_is_gone_is_kept_but_marked(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(translations, "sources", lambda: {"old", "new"})
    monkeypatch.setattr(translations, "derived", dict)
    found = translations.updated({(OURS, "old"): _message("alt"), (OURS, "gone"): _message("weg"),
                                  (OURS, "void"): _message("")})
    assert found == {(OURS, "old"): _message("alt"), (OURS, "new"): _message("", "unfinished"),
                     (OURS, "gone"): _message("weg", "vanished")}
    monkeypatch.setattr(translations, "sources", lambda: {"gone"})
    assert translations.updated(found)[OURS, "gone"] == _message("weg")    # it has come back


def test_what_is_written_is_read_again(tmp_path: Path) -> None:
    told: Mapping[Key, Message] = {(OURS, ' a <b> & "c" '): _message(' ä <b> & "ç" '),
                                   (OURS, "n"): _message("", "unfinished"),
                                   (PROPERTY, "g"): _message("v", "vanished")}
    path = tmp_path / "x.ts"
    path.write_text(translations.written(told, "de"), encoding="utf-8")
    assert translations.read(path) == told


@pytest.mark.parametrize("source", [
    'Finding("a", "width", "", "it is too wide", say("Make it narrower."))', 'raise ReadError(f"{text} is no length")',
    'label.setText("Bring into view")', 'raise StockListError([("items", "It is empty.")])'])
def test_a_sentence_that_was_not_said_is_found(source: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    (tmp_path / "core").mkdir()
    (tmp_path / "core" / "a.py").write_text(source, encoding="utf-8")
    monkeypatch.setattr(translations, "PACKAGE", tmp_path)
    monkeypatch.setattr(translations, "ROOT", tmp_path)
    assert len(translations.unsaid()) == 1


# ---- what is refused, told in another language


@every_language
def test_every_finding_is_told_in_the_language(language: str) -> None:
    """No template of any finding is looked up in vain, and the values stand in the sentences."""
    table, vain = LISTED[language], set()

    def look_up(text: str) -> str:
        if (OURS, text) not in table and translations.worded(text):
            vain.add(text)
        return translations.look_up_in(table)(text)

    for stock, values, *_ in PROVOKED:
        with pytest.raises(SpecError) as caught:
            checked_spec(values, LISTS[stock])
        for finding in caught.value.findings:
            told = finding.sentence.told(look_up)
            assert told != finding.sentence
            assert "{" not in told
    assert vain == set()


def test_a_finding_in_german_and_french() -> None:
    with pytest.raises(SpecError) as caught:
        checked_spec({"frame_width": 120.0, "width": 250.0}, LISTS["eu"])
    told = {language: [finding.sentence.told(translations.look_up_in(LISTED[language])) for finding in caught.value.findings]
            for language in LANGUAGES}
    assert told["de"] == ["Breite ist 250 mm: der Wert muss mindestens 300 mm und höchstens 3600 mm sein, oder 0 (nach der "
                          "Breitenregel aus der Firstlänge). Setzen Sie den Wert auf 300 mm oder mehr."]
    assert told["fr"] == ["Largeur vaut 250 mm : la valeur doit être d'au moins 300 mm et au plus 3600 mm, ou 0 (d'après la "
                          "règle de largeur et la longueur du faîtage). Mettez 300 mm ou plus."]


UP = Patch((0.0, 0.0, 1.0), (0.0, 0.0, 0.0), 1e6, ())


@pytest.mark.parametrize(("refused", "error", "german"), [
    (lambda: parse_length("1/2"), ReadError,
     "„1/2“ lässt sich nicht lesen; gebraucht wird eine Länge: ein Bruch ohne Einheit kann Zoll oder mm bedeuten, also "
     "schreiben Sie die Einheit."),
    (lambda: parse_angle(""), ReadError, "Hier fehlt etwas; gebraucht wird: ein Winkel."),
    (lambda: survey_from_mapping({"rise_left": "x", "run_left": "1,250"}), SurveyError, "„rise_left“: „x“ lässt sich"),
    (lambda: read_stock_list({"items": [], "base": "moon"}), StockListError,
     "base: „moon“ ist keine mitgelieferte Liste; bekannt sind us, eu."),
    (lambda: two_slopes(UP, UP), RoofError, "Die beiden Dachflächen sind beide waagerecht, in einer Ebene: sie treffen"),
])
def test_errors_carry_what_can_be_told(refused: Callable[[], Any], error: type[Exception], german: str) -> None:
    with pytest.raises(error) as caught:
        refused()
    text = caught.value.args[0]
    assert str(caught.value) == text    # in English as it always was
    assert text.told(translations.look_up_in(LISTED["de"])).startswith(german)
