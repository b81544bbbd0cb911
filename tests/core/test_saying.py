"""Sentences that can be told in another language: English to the byte, and told from inside out."""

from __future__ import annotations

import copy
import json
import pickle

import pytest

from louverwright.core.saying import Text, joined, say

GERMAN = {"{where} is {value}": "{value} ist {where}", "Width": "Breite", "{many} slats": "{many} Lamellen", " or ": " oder ",
          "wide": "breit", "Set it to {most:g}°.": "Höchstens {most:g}°."}


def look_up(text: str) -> str:
    return GERMAN.get(text, text)


def test_it_is_its_english_self() -> None:
    text = say("{where} is {value}", where=say("Width"), value="3 mm")
    assert isinstance(text, str)
    assert text == "Width is 3 mm" == f"{text}"
    assert {text: 1}["Width is 3 mm"] == 1    # as a key
    assert json.dumps([text]) == '["Width is 3 mm"]'
    assert repr(text) == "'Width is 3 mm'"


def test_values_and_parts_are_told_too() -> None:
    text = joined(" or ", (say("{where} is {value}", where=say("Width"), value=say("{many} slats", many=3)), say("wide")))
    assert text == "Width is 3 slats or wide"
    assert text.told(look_up) == "3 Lamellen ist Breite oder breit"


def test_only_what_was_said_is_told() -> None:
    assert say("{where} is {value}", where="Width", value="wide").told(look_up) == "wide ist Width"    # the user's own words
    assert joined(", ", ("Width", say("Width"))).told(look_up) == "Width, Breite"


def test_what_is_not_known_stays_english() -> None:
    assert say("{many} sills", many=2).told(look_up) == "2 sills"


def test_numbers_are_written_as_the_template_says() -> None:
    text = say("Set it to {most:g}°.", most=45.0)
    assert (text, text.told(look_up)) == ("Set it to 45°.", "Höchstens 45°.")


def test_braces_stand_as_they_are_in_a_text_without_values_and_in_values() -> None:
    assert say("{} {a}") == "{} {a}" == say("{} {a}").told(look_up)
    assert say("{where} is {value}", where="{value}", value="{0}").told(look_up) == "{0} ist {value}"


def test_a_missing_value_is_an_error() -> None:
    with pytest.raises(KeyError):
        say("{where} is {value}", where="Width")


def test_a_text_without_values_is_said_once() -> None:
    text = say("{many} slats", many=3)
    assert say(text) is text


def test_nothing_joined_is_nothing() -> None:
    assert joined(" or ", ()) == "" == joined(" or ", ()).told(look_up)


@pytest.mark.parametrize("copied", [copy.deepcopy, copy.copy, lambda text: pickle.loads(pickle.dumps(text))])
def test_copies_remember(copied: object) -> None:
    text = copied(joined(" or ", (say("Width"), say("wide"))))    # type: ignore[operator]
    assert isinstance(text, Text)
    assert text.told(look_up) == "Breite oder breit"


def test_what_is_done_to_it_is_english() -> None:
    assert not isinstance(say("wide").capitalize(), Text)
    assert not isinstance(say("wide") + "!", Text)
