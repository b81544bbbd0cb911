# SPDX-License-Identifier: LGPL-2.1-or-later
"""A template as a DXF file of release 12 (AC1009), the plainest that drawing programs and machines read.

The group codes are those of the DXF reference (from memory).  A file is a sequence of pairs, code and value, a line each.
Layers are named by what they hold.  $INSUNITS (1 inches, 4 millimetres) came with a later release; readers of release 12
pass over it, and a text in the file says the unit too.
"""

from __future__ import annotations

from collections.abc import Iterator

from ..core.units_write import INCH
from .drawing import Point
from .template import Template, words

Pair = tuple[int, str]

OUTLINE, FAR_FACE, MARKS, WORDS = "OUTLINE", "FAR_FACE", "MARKS", "TEXT"
#: Layer → its colour number and line type.
LAYERS = {OUTLINE: (7, "CONTINUOUS"), FAR_FACE: (8, "DASHED"), MARKS: (5, "CONTINUOUS"), WORDS: (3, "CONTINUOUS")}
#: Height of letters and of lines of words (mm).
LETTER_HIGH, LINE_HIGH = 4.0, 5.0


def to_dxf(template: Template, inches: bool) -> str:
    """The file's text, in inches or millimetres; ASCII."""
    unit = float(INCH) if inches else 1.0
    pairs = [*_header(template, unit), *_tables(unit), (0, "SECTION"), (2, "ENTITIES"), *_entities(template, unit),
             (0, "ENDSEC"), (0, "EOF")]
    return "".join(f"{code:>3}\n{value}\n" for code, value in pairs)


def _number(mm: float, unit: float) -> str:
    return f"{mm / unit + 0.0:.6f}"


def _point(p: Point, unit: float, first: int = 10) -> list[Pair]:
    return [(first, _number(p[0], unit)), (first + 10, _number(p[1], unit)), (first + 20, "0.0")]


def _header(template: Template, unit: float) -> Iterator[Pair]:
    left, low, right, high = template.extent
    yield from ((0, "SECTION"), (2, "HEADER"), (9, "$ACADVER"), (1, "AC1009"))
    yield from ((9, "$INSUNITS"), (70, "4" if unit == 1.0 else "1"))
    yield from ((9, "$EXTMIN"), *_point((left, low), unit), (9, "$EXTMAX"), *_point((right, high), unit), (0, "ENDSEC"))


def _tables(unit: float) -> Iterator[Pair]:
    """Line types and layers."""
    yield from ((0, "SECTION"), (2, "TABLES"), (0, "TABLE"), (2, "LTYPE"), (70, "2"))
    yield from ((0, "LTYPE"), (2, "CONTINUOUS"), (70, "0"), (3, "Solid"), (72, "65"), (73, "0"), (40, "0.0"))
    yield from ((0, "LTYPE"), (2, "DASHED"), (70, "0"), (3, "Dashed"), (72, "65"), (73, "2"), (40, _number(9.0, unit)),
                (49, _number(6.0, unit)), (49, _number(-3.0, unit)), (0, "ENDTAB"))
    yield from ((0, "TABLE"), (2, "LAYER"), (70, str(len(LAYERS))))
    for name, (colour, kind) in LAYERS.items():
        yield from ((0, "LAYER"), (2, name), (70, "0"), (62, str(colour)), (6, kind))
    yield from ((0, "ENDTAB"), (0, "ENDSEC"))


def _entities(template: Template, unit: float) -> Iterator[Pair]:
    for loop in template.outline:
        yield from ((0, "POLYLINE"), (8, OUTLINE), (66, "1"), *_point((0.0, 0.0), unit), (70, "1"))
        for p in loop:
            yield from ((0, "VERTEX"), (8, OUTLINE), *_point(p, unit))
        yield from ((0, "SEQEND"), (8, OUTLINE))
    for layer, segments in ((FAR_FACE, template.far), (MARKS, template.marks)):
        for a, b in segments:
            yield from ((0, "LINE"), (8, layer), *_point(a, unit), *_point(b, unit, 11))
    for centre, diameter in template.holes:
        yield from ((0, "CIRCLE"), (8, OUTLINE), *_point(centre, unit), (40, _number(diameter / 2.0, unit)))
    for letter, (x, y) in template.letters:
        yield from _text(letter, (x + 1.0, y + 1.0), LETTER_HIGH, unit)
    for row, line in enumerate(words(template, "inches" if unit != 1.0 else "millimetres")):
        yield from _text(line, (0.0, template.extent[1] - 2.0 * LINE_HIGH * (row + 1)), LINE_HIGH, unit)


def _text(text: str, at: Point, high: float, unit: float) -> Iterator[Pair]:
    yield from ((0, "TEXT"), (8, WORDS), *_point(at, unit), (40, _number(high, unit)), (1, _ascii(text)))


def _ascii(text: str) -> str:
    """The text in the letters that every reader of release 12 has."""
    plain = text.translate(str.maketrans("\u00a0×–−“”’", " x--\"\"'"))
    return plain.replace("°", "%%d").encode("ascii", "replace").decode("ascii")
