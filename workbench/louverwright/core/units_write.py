# SPDX-License-Identifier: LGPL-2.1-or-later
"""Writing lengths, angles, areas and weights as a joiner reads them.

All rounding is half up on the size of the number, whatever its sign, so that -3.5 is written as the mirror of 3.5.
A millionth of a millimetre (or degree) short of a half counts as the half: 0.96875 in held as binary
millimetres is still a tie. Fractions are carried and reduced: never 16/16, 0/16 or 6/16, and never -0.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from functools import lru_cache
from typing import Literal

INCH = Fraction(127, 5)
FOOT = 12 * INCH
POUND = Fraction("0.45359237")
DENOMINATORS = (1, 2, 4, 8, 16, 32, 64)
_NEARLY_HALF = Fraction(1, 10**6)


@dataclass(frozen=True)
class LengthStyle:
    """How lengths are written.

    `system` is "mm", "in" (inches with fractions) or "ft-in" (feet, inches and fractions). `step` is the
    rounding step in mm for "mm" (0.001 to 10, at most three decimals: usually 0.1, 0.5 or 1), and the
    largest denominator for the others (1, 2, 4 … 64: usually 16 or 32).

    Raises ValueError for anything else.
    """

    system: Literal["mm", "in", "ft-in"]
    step: float | int

    def __post_init__(self) -> None:
        if self.system not in ("mm", "in", "ft-in"):
            raise ValueError(f"“{self.system}” is not a way to write lengths; choose mm, in or ft-in.")
        if self.system != "mm" and self.step not in DENOMINATORS:
            raise ValueError(f"Inches cannot be written in parts of 1/{self.step}; choose 2, 4, 8, 16, 32 or 64.")
        if self.system == "mm" and not (0.001 <= self.step <= 10 and (Fraction(str(self.step)) * 1000).denominator == 1):
            raise ValueError(f"The step is {self.step} mm; it must be 0.001 to 10 mm with at most three decimals.")

    @property
    def step_mm(self) -> Fraction:
        """The rounding step, exactly, in millimetres."""
        return Fraction(str(self.step)) if self.system == "mm" else INCH / int(self.step)


def _finite(value: float, what: str) -> Fraction:
    if not math.isfinite(value):
        raise ValueError(f"The {what} is {value}, which is not a number that can be written.")
    return Fraction(value)


def _steps(value: Fraction, step: Fraction) -> int:
    """How many steps, half up on the size; signed."""
    count = math.floor((abs(value) + _NEARLY_HALF) / step + Fraction(1, 2))
    return -count if value < 0 else count


def _decimals(value: Fraction, places: int) -> str:
    """The value half up with exactly so many decimals, never -0."""
    count = _steps(value, Fraction(1, 10**places))
    whole, part = divmod(abs(count), 10**places)
    return ("-" if count < 0 else "") + (f"{whole}.{part:0{places}d}" if places else f"{whole}")


def _three_figures(value: Fraction) -> str:
    """Three figures of a size: 0.125, 1.25, 12.5, 125; at most three decimals, and no decimals from 100 up."""
    for places in (3, 2, 1):
        if abs(_steps(value, Fraction(1, 10**places))) < 1000:
            return _decimals(value, places)
    return _decimals(value, 0)


def _fraction_text(count: int, bottom: int) -> str:
    """Whole and reduced fraction of so many 1/bottom: `3 1/2`, `1/2`, `3`, `0`."""
    whole, rest = divmod(count, bottom)
    if rest == 0:
        return f"{whole}"
    part = Fraction(rest, bottom)
    return (f"{whole} " if whole else "") + f"{part.numerator}/{part.denominator}"


def _feet_text(count: int, bottom: int) -> str:
    """`5'-3 1/2"`, `5'-0 1/2"`, `3'-0"`; below a foot the inches alone."""
    feet, rest = divmod(count, 12 * bottom)
    inches = ("0 " if feet and 0 < rest < bottom else "") + _fraction_text(rest, bottom)
    return (f"{feet}'-" if feet else "") + f'{inches}"'


def rounded(mm: float, style: LengthStyle) -> float:
    """The length in mm that `format_length` shows for `mm`. Raises ValueError if it is not finite."""
    return float(_steps(_finite(mm, "length"), style.step_mm) * style.step_mm)


@lru_cache(maxsize=4096)
def format_length(mm: float, style: LengthStyle, with_unit: bool = True) -> str:
    """A length in mm as text: `1250.5 mm`, `63 1/2"`, `5'-3 1/2"`.

    Millimetres have the fewest decimals that show the rounded value, so a trailing .0 is dropped. Without
    its unit a length in feet keeps its marks, since it would mean nothing without them.

    Raises ValueError if the length is not finite.
    """
    count = _steps(_finite(mm, "length"), style.step_mm)
    sign, count = ("-" if count < 0 else ""), abs(count)
    if style.system == "mm":
        text = _decimals(count * style.step_mm, 3).rstrip("0").rstrip(".")
        return f"{sign}{text} mm" if with_unit else f"{sign}{text}"
    if style.system == "ft-in":
        return sign + _feet_text(count, int(style.step))
    return sign + _fraction_text(count, int(style.step)) + ('"' if with_unit else "")


def format_size(values: Sequence[float], style: LengthStyle) -> str:
    """Two or more lengths in mm as a size: `655 × 126.5 × 19 mm`, `25 13/16" × 5" × 3/4"`."""
    if style.system != "mm":
        return " × ".join(format_length(value, style) for value in values)
    return " × ".join(format_length(value, style, with_unit=False) for value in values) + " mm"


@lru_cache(maxsize=4096)
def format_angle(deg: float, decimals: int = 1) -> str:
    """An angle in degrees as text with so many decimals, half up: `33.7°`, `45.0°`, never `-0.0°`."""
    return _decimals(_finite(deg, "angle"), decimals) + "°"


def format_pitch(deg: float) -> str:
    """A slope from the level as text, with the nearest rise in 12 to one decimal: `33.7° (8:12)`.

    Raises ValueError for a slope that is not between -90° and 90°.
    """
    if not -90 < deg < 90:
        raise ValueError(f"The slope is {deg}°, and only a slope between -90° and 90° has a pitch.")
    rise = _decimals(Fraction(12 * math.tan(math.radians(deg))), 1).removesuffix(".0")
    return f"{format_angle(deg)} ({'0' if rise == '-0' else rise}:12)"


def format_area(mm2: float, style: LengthStyle) -> str:
    """An area in mm² as text with three figures: `1.25 m²`, or `13.5 sq ft` where lengths are in inches."""
    area = _finite(mm2, "area")
    return f"{_three_figures(area / 10**6)} m²" if style.system == "mm" else f"{_three_figures(area / FOOT**2)} sq ft"


def format_weight(kg: float, style: LengthStyle) -> str:
    """A weight in kg as text with three figures: `12.5 kg`, or `27.6 lb` where lengths are in inches."""
    weight = _finite(kg, "weight")
    return f"{_three_figures(weight)} kg" if style.system == "mm" else f"{_three_figures(weight / POUND)} lb"
