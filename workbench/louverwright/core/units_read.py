# SPDX-License-Identifier: LGPL-2.1-or-later
"""Reading what a joiner writes: lengths, angles and pitches, areas, weights, counts.

What could be read in two ways is refused with a sentence and never guessed:

* a lone comma before exactly three digits (`1,250`) is a thousands mark to some and a decimal comma to
  others. `0,125`, `1250,125` and `1,17` have one reading only and are accepted;
* a lone point is always the decimal mark (`1.250` is one and a quarter), as in everything the program prints;
* a fraction without a unit where a bare number means a metric unit (`1/2` in a millimetre field);
* a fraction of one or more (`31/2` may be 3 1/2 or 15 1/2; a pitch like `14/12` is no such fraction), and
  inches that fill a foot (`5' 14"`).

Arithmetic is exact until the last step, so that what the program prints reads back as the same number.
"""

from __future__ import annotations

import math
import re
import unicodedata
from fractions import Fraction

from .saying import say
from .texts import brief

LONGEST_TEXT = 60

_MARKS = str.maketrans(
    {
        "′": "'", "’": "'", "‘": "'", "´": "'", "`": "'", "ʹ": "'",
        "″": '"', "”": '"', "“": '"', "„": '"', "ʺ": '"', "º": "°", "˚": "°",
        "−": "-", "–": "-", "‐": "-", "‑": "-", "⁄": "/", "∕": "/",
    }
)  # fmt: skip
_DECIMAL = r"[0-9]{1,3}(?: [0-9]{3})+(?![0-9])(?! ?/)(?:[.,][0-9]+)?|[0-9.,]*[0-9]"
_NUMBER = (
    rf"(?:(?P<whole>{_DECIMAL})(?![0-9.,])(?! ?/)(?:(?: |- ?)(?P<top>[0-9]+) ?/ ?(?P<bottom>[0-9]+))?"
    r"|(?P<top_alone>[0-9]+) ?/ ?(?P<bottom_alone>[0-9]+))"
)

_LENGTH_WORDS = {
    "mm": "mm", "millimetre": "mm", "millimetres": "mm", "millimeter": "mm", "millimeters": "mm",
    "cm": "cm", "centimetre": "cm", "centimetres": "cm", "centimeter": "cm", "centimeters": "cm",
    "m": "m", "metre": "m", "metres": "m", "meter": "m", "meters": "m",
    '"': "in", "in": "in", "inch": "in", "inches": "in",
    "'": "ft", "ft": "ft", "foot": "ft", "feet": "ft",
}  # fmt: skip
_MM = {"mm": Fraction(1), "cm": Fraction(10), "m": Fraction(1000), "in": Fraction(127, 5), "ft": Fraction(1524, 5)}
LENGTH_NAMES = {"mm": "millimetres", "cm": "centimetres", "m": "metres", "in": "inches", "ft": "feet"}
_PAIRS = {("ft", "in"), ("m", "cm"), ("m", "mm"), ("cm", "mm")}
_AREA_WORDS = {
    "mm2": "mm", "sq mm": "mm", "cm2": "cm", "sq cm": "cm", "m2": "m", "sq m": "m", "sqm": "m",
    "square metre": "m", "square metres": "m", "square meter": "m", "square meters": "m",
    "in2": "in", "sq in": "in", "sqin": "in", "square inch": "in", "square inches": "in",
    "ft2": "ft", "sq ft": "ft", "sqft": "ft", "square foot": "ft", "square feet": "ft",
}  # fmt: skip
_KG = {
    "kg": Fraction(1), "g": Fraction(1, 1000), "lb": Fraction("0.45359237"), "lbs": Fraction("0.45359237"),
    "oz": Fraction("0.45359237") / 16,
}  # fmt: skip


def _words(table: dict[str, str] | dict[str, Fraction]) -> str:
    """A regular expression for the table's words, the longest first."""
    return "|".join(re.escape(word) for word in sorted(table, key=len, reverse=True))


_TERM = re.compile(rf"{_NUMBER} ?(?:(?P<unit>{_words(_LENGTH_WORDS)})\.?)?(?: ?[-,]? ?(?=[0-9.]))?")
_ALONE = re.compile(_NUMBER)


class ReadError(ValueError):
    """A text that cannot be read; its message is a sentence for the user."""


def _refuse(text: str, what: str, why: str) -> ReadError:
    return ReadError(say("“{text}” is not {what} that can be read: {why}.", text=brief(text, LONGEST_TEXT), what=what,
                         why=why))


def _clean(text: str, what: str) -> tuple[int, str]:
    """The sign (+1 or -1) and the rest: lower case, plain marks, single spaces, no vulgar fractions."""
    if not isinstance(text, str) or not text.strip():
        raise ReadError(say("Nothing is written where {what} is needed: write {what}.", what=what))
    if len(text) > LONGEST_TEXT:
        raise _refuse(brief(text, 20), what, say("it is {count} characters long and at most {most} are read",
                                                 count=len(text), most=LONGEST_TEXT))
    spread = "".join(
        " " + unicodedata.normalize("NFKC", c) if unicodedata.decomposition(c).startswith("<fraction>") else c
        for c in text
    )
    plain = " ".join(spread.translate(_MARKS).replace("''", '"').lower().split())
    sign = -1 if plain.startswith("-") else 1
    return sign, plain[1:].lstrip() if plain[:1] in ("-", "+") else plain


def _grouped(text: str, mark: str) -> bool:
    return re.fullmatch(rf"[1-9][0-9]{{0,2}}(?:{re.escape(mark)}[0-9]{{3}})+", text) is not None


def _decimal(text: str, whole_text: str, what: str) -> Fraction:
    """A number with a decimal point or comma and, if any, thousands marks; see the module's rules."""
    text = text.replace(" ", "")
    marks = [c for c in text if c in ".,"]
    if marks == [","] and _grouped(text, ","):
        one, other = text.replace(",", "."), text.replace(",", "")
        raise _refuse(whole_text, what, say("{text} may mean {one} or {other}, so write the one that is meant", text=text,
                                            one=one, other=other))
    if len(marks) > 1:
        last = marks[-1]
        head, tail = (text, "0") if len(set(marks)) == 1 else text.rsplit(last, 1)
        if len(set(marks[:-1])) != 1 or not _grouped(head, marks[0]):
            raise _refuse(whole_text, what, say("the points and commas in {text} do not fit; write it with one point",
                                                text=text))
        return Fraction(f"{head.replace(marks[0], '')}.{tail}")
    return Fraction(("0" if text[0] in ".," else "") + text.replace(",", "."))


def _fraction(top: str, bottom: str, whole_text: str, what: str) -> Fraction:
    if int(bottom) == 0:
        raise _refuse(whole_text, what, say("the fraction {top}/{bottom} divides by nought; give it a bottom of 1 or more",
                                            top=top, bottom=bottom))
    value = Fraction(int(top), int(bottom))
    if value >= 1:
        whole, rest = divmod(value.numerator, value.denominator)
        cure = f"{whole} {rest}/{value.denominator}" if rest else f"{whole}"
        raise _refuse(whole_text, what, say("the fraction {top}/{bottom} is not less than 1; if it is meant, write {cure}",
                                            top=top, bottom=bottom, cure=cure))
    return value


def _value(match: re.Match[str], text: str, what: str) -> Fraction:
    """The number that `_NUMBER` matched: a decimal, a fraction, or a whole number and a fraction."""
    if match["whole"] is None:
        return _fraction(match["top_alone"], match["bottom_alone"], text, what)
    whole = _decimal(match["whole"], text, what)
    if match["top"] is None:
        return whole
    if whole.denominator != 1 or "." in match["whole"] or "," in match["whole"]:
        raise _refuse(text, what, say("{number} already has decimals and cannot have a fraction after it",
                                      number=match["whole"]))
    return whole + _fraction(match["top"], match["bottom"], text, what)


def _one_number(part: str, text: str, what: str) -> Fraction:
    match = _ALONE.fullmatch(part.strip())
    if match is None:
        raise _refuse(text, what, say("write it with figures, like 3.5 or 3 1/2"))
    return _value(match, text, what)


def _length_terms(rest: str, text: str) -> list[tuple[Fraction, str | None, bool]]:
    """The numbers of a length, each with its unit (or None) and whether it was written as a fraction."""
    terms: list[tuple[Fraction, str | None, bool]] = []
    at = 0
    while at < len(rest) or not terms:
        match = _TERM.match(rest, at)
        if match is None:
            raise _refuse(text, say("a length"), say("write figures and a unit, like 40 mm, 3 1/2 in or 5'-3 1/2\""))
        unit = _LENGTH_WORDS[match["unit"]] if match["unit"] else None
        fraction = match["top"] is not None or match["top_alone"] is not None
        terms.append((_value(match, text, say("a length")), unit, fraction))
        at = match.end()
    return terms


def _one_length(term: tuple[Fraction, str | None, bool], unit: str, text: str) -> Fraction:
    value, written, fraction = term
    if written is None and fraction and unit not in ("in", "ft"):
        raise _refuse(text, say("a length"), say("a fraction without a unit may mean inches or {unit}, so write the unit",
                                                 unit=unit))
    return value * _MM[written or unit]


def _two_lengths(first: tuple[Fraction, str | None, bool], second: tuple[Fraction, str | None, bool],
                 text: str) -> Fraction:  # fmt: skip
    (big, big_unit, _), (small, small_unit, _) = first, second
    small_unit = small_unit or ("in" if big_unit == "ft" else None)
    if big_unit is None or small_unit is None or (big_unit, small_unit) not in _PAIRS:
        raise _refuse(text, say("a length"), say("two numbers are read only as feet and inches or metres and cm or mm"))
    if big.denominator != 1:
        raise _refuse(text, say("a length"),
                      say("the {big} must be a whole number when {small} follow; write it in one unit",
                          big=say(LENGTH_NAMES[big_unit]), small=say(LENGTH_NAMES[small_unit])))
    if small * _MM[small_unit] >= _MM[big_unit]:
        raise _refuse(text, say("a length"), say("{small:g} {small_unit} make 1 {big_unit} or more; carry them over",
                                                 small=float(small), small_unit=small_unit, big_unit=big_unit))
    return big * _MM[big_unit] + small * _MM[small_unit]


def parse_length(text: str, unit: str = "mm") -> float:
    """Read a length; millimetres.

    `unit` is what a bare number means: "mm", "cm", "m", "in" or "ft". A number written after feet without a
    unit is inches. A hyphen after feet or between a whole number and its fraction joins; only a sign at the
    very start makes the length negative, and it holds for the whole length.

    Raises ReadError with a sentence for anything else, and KeyError for an unknown `unit`.
    """
    _MM[unit]
    sign, rest = _clean(text, say("a length"))
    terms = _length_terms(rest, text)
    if len(terms) == 1:
        return float(sign * _one_length(terms[0], unit, text))
    if len(terms) == 2:
        return float(sign * _two_lengths(terms[0], terms[1], text))
    raise _refuse(text, say("a length"), say("there are {count} numbers in it, and a length has one or two", count=len(terms)))


def _sexagesimal(rest: str, text: str) -> Fraction | None:
    match = re.fullmatch(r"([0-9]+) ?° ?([0-9.,]*[0-9]) ?'(?: ?([0-9.,]*[0-9]) ?\")?", rest)
    if match is None:
        return None
    minutes, seconds = (_decimal(part or "0", text, say("an angle")) for part in match.group(2, 3))
    if minutes >= 60 or seconds >= 60:
        raise _refuse(text, say("an angle"), say("minutes and seconds must be less than 60"))
    if match[3] and minutes.denominator != 1:
        raise _refuse(text, say("an angle"), say("the minutes must be a whole number when seconds follow"))
    return int(match[1]) + minutes / 60 + seconds / 3600


def _pitch_ratio(rest: str, text: str) -> Fraction | None:
    """Rise over run of `8:12`, `8 in 12`, `8/12` or `67 %`; None if it is not written as a pitch."""
    if rest.endswith("%"):
        return _one_number(rest[:-1], text, say("an angle")) / 100
    match = re.fullmatch(rf"({_DECIMAL}) ?/ ?({_DECIMAL})", rest) or re.fullmatch(
        r"(.*[0-9])(?: ?: ?| in |-in-)(.*[0-9])", rest
    )
    if match is None:
        return None
    rise, run = (_one_number(part, text, say("an angle")) for part in match.groups())
    if run == 0:
        raise _refuse(text, say("an angle"), say("the run after the mark is nought, and a pitch needs a run of more than 0"))
    return rise / run


def parse_angle(text: str) -> float:
    """Read an angle or a pitch; degrees.

    Degrees: `33.7`, `33.7°`, `33,7 deg`, `22 1/2°`, `33°41'24"`. A pitch is rise to run: `8:12`, `8/12`,
    `8 in 12`, `67 %`, and is turned into atan(rise / run), the angle from the level. A fraction alone
    (`1/2`) is such a pitch too, rise to run and never rise to span. A leading minus is kept.

    Raises ReadError.
    """
    sign, rest = _clean(text, say("an angle"))
    ratio = _pitch_ratio(rest, text)
    if ratio is not None:
        return sign * math.degrees(math.atan(ratio)) + 0.0  # never -0
    degrees = _sexagesimal(rest, text)
    if degrees is None:
        degrees = _one_number(re.sub(r" ?(?:°|deg\.?|degrees?)$", "", rest), text, say("an angle"))
    return float(sign * degrees)


def _with_unit(text: str, what: str, words: str, example: str) -> tuple[Fraction, str | None]:
    """A number that may not be negative and the unit's word behind it, or None if there is none."""
    sign, rest = _clean(text, what)
    rest = " ".join(rest.replace("²", "2").replace("^2", "2").replace("sq.", "sq ").split())
    match = re.fullmatch(rf"(?P<number>.*?[0-9]) ?(?P<word>{words})?\.?", rest)
    if match is None:
        raise _refuse(text, what, say("write figures and a unit, like {example}", example=example))
    value = _one_number(match["number"], text, what)
    if sign < 0 and value:
        raise _refuse(text, what, say("it may not be less than 0"))
    return value, match["word"]


def parse_area(text: str, unit: str = "m2") -> float:
    """Read an area; square millimetres. `unit` ("mm2", "cm2", "m2", "in2", "ft2") is what a bare number means.

    Raises ReadError (a negative area too), and KeyError for an unknown `unit`.
    """
    default = _AREA_WORDS[unit]
    value, word = _with_unit(text, say("an area"), _words(_AREA_WORDS), say("1.2 m², 12 sq ft or 144 sq in"))
    return float(value * _MM[_AREA_WORDS[word] if word else default] ** 2)


def parse_weight(text: str, unit: str = "kg") -> float:
    """Read a weight; kilograms. `unit` ("kg", "g", "lb", "oz") is what a bare number means.

    Raises ReadError (a negative weight too), and KeyError for an unknown `unit`.
    """
    default = _KG[unit]
    value, word = _with_unit(text, say("a weight"), _words(_KG), say("12.5 kg or 27 lb"))
    return float(value * (_KG[word] if word else default))


def parse_number(text: str) -> float:
    """Read a number without a unit: `1.25`, `1,25`, `1 1/4`, `1/150` (but not `5/4`). Raises ReadError."""
    sign, rest = _clean(text, say("a number"))
    return float(sign * _one_number(rest, text, say("a number")))


def parse_count(text: str) -> int:
    """Read a count: a whole number, 0 or more. Raises ReadError."""
    value = parse_number(text)
    if value < 0 or value != int(value):
        raise _refuse(text, say("a count"), say("a count is a whole number, 0 or more"))
    return int(value)


def parse_yes_no(text: str) -> bool:
    """Read yes or no (also true/false, on/off, 1/0). Raises ReadError."""
    _, word = _clean(text, say("yes or no"))
    if word in ("yes", "y", "true", "on", "1"):
        return True
    if word in ("no", "n", "false", "off", "0"):
        return False
    raise _refuse(text, say("an answer"), say("write yes or no"))
