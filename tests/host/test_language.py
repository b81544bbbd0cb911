"""The translations as Qt loads them, and the sentences that FreeCAD itself is given."""

from __future__ import annotations

import sys
from pathlib import Path

import FreeCAD
import pytest
from PySide import QtCore

sys.path.append(str(Path(__file__).resolve().parents[1]))
import translations

from louverwright.core.spec import SpecError
from louverwright.features import language
from louverwright.features.language import in_user_words, tr, translated
from louverwright.features.model import spec_of
from louverwright.features.vent import make_vent


def loaded(name: str) -> QtCore.QTranslator:
    translator = QtCore.QTranslator()
    assert translator.load(str(translations.file_of(name, "qm")))
    return translator


@pytest.mark.parametrize("name", translations.LANGUAGES)
def test_the_compiled_files_say_what_the_others_say(name: str) -> None:
    translator = loaded(name)
    listed = translations.read(translations.file_of(name))
    other = [key for key, message in listed.items() if message.state != "vanished"
             and translator.translate(*key) != message.text]
    assert other == [], "run python3 tests/translations.py"
    assert len(listed) > 1_000


@pytest.fixture
def german(monkeypatch: pytest.MonkeyPatch) -> None:
    """FreeCAD's translation in German; its console has none of its own."""
    translator = loaded("de")
    monkeypatch.setattr(language, "Qt", type("Qt", (), {
        "translate": staticmethod(lambda context, text: translator.translate(context, text) or text)}))


@pytest.mark.usefixtures("german")
def test_texts_with_values_and_errors_are_told() -> None:
    assert tr("Roof pitch") == "Dachneigung"
    assert tr("{vent}, number {number}", vent="Scheune", number=2) == "Scheune, Nummer 2"
    error = SpecError(())
    assert translated(error) == ""
    assert translated(OSError("Roof pitch")) == "Dachneigung"    # any error's own text, where it is known
    assert tr("no text of ours") == "no text of ours"


@pytest.mark.usefixtures("german")
def test_an_objects_status_is_in_the_users_language_and_its_findings_are_not_lost() -> None:
    document = FreeCAD.newDocument("Barn")
    try:
        vent = make_vent(document)
        assert vent.Label == "Dachreiter mit Lamellen"
        assert document.getObject("BaseLegGable").Label == "Stiel, Giebelseite"
        assert vent.getGroupOfProperty("RoofPitch") == "Vent roof"    # FreeCAD translates what the document has in English
        assert "from the level" in vent.getDocumentationOfProperty("RoofPitch")
        vent.RoofForm = "gable"
        vent.Sides = 6
        with pytest.raises(SpecError) as caught:
            spec_of(vent)
        assert "only a plan of 4 sides" in str(caught.value)
        told = in_user_words(caught.value)
        assert str(told).startswith("Dachform ist „Satteldach“: nur ein Grundriss mit 4 Seiten kann Giebel haben")
        assert told.findings[0].field == "roof_form"
        document.recompute()
        assert "Invalid" in vent.State
        if hasattr(vent, "getStatusString"):
            assert "nur ein Grundriss mit 4 Seiten" in vent.getStatusString()
    finally:
        FreeCAD.closeDocument(document.Name)
