# SPDX-License-Identifier: LGPL-2.1-or-later
"""What a report is made from: the spec, its assembly and figures, and who wants it when in which units."""

from __future__ import annotations

import hashlib
import json
from collections.abc import Mapping
from dataclasses import dataclass, fields, is_dataclass
from functools import cached_property
from typing import Any

from ..core.assembly import Assembly, Part
from ..core.dimensions import sizes
from ..core.figures import figures
from ..core.layout import layout, wishes_in_use
from ..core.parameters import BY_NAME
from ..core.part_wish import LEFT_OUT, NOTE, STOCK, PartWish
from ..core.row import vents_alike
from ..core.sizes import Sizes
from ..core.spec import Spec, vent_values
from ..core.units import LengthStyle, format_angle, format_area, format_length, format_size, format_weight


@dataclass(frozen=True)
class Job:
    """A checked spec with the date (as it is to be printed) and the model's revision."""

    spec: Spec
    date: str
    revision: str
    version: str

    @cached_property
    def assembly(self) -> Assembly:
        return layout(self.spec)

    @cached_property
    def sizes(self) -> Sizes:
        return sizes(self.spec)

    @cached_property
    def figures(self) -> Mapping[str, Any]:
        return figures(self.spec)

    @cached_property
    def vents(self) -> int:
        """How many vents alike are made by this report."""
        return vents_alike(self.spec)

    def count(self, part: Part) -> int:
        """How many of a part to cut, for all vents."""
        return part.count * self.vents

    @property
    def for_all(self) -> str:
        """What a count's column says behind its word where there are several vents: ', all 3 vents'."""
        return f", all {self.vents} vents" if self.vents > 1 else ""

    @cached_property
    def writer(self) -> Writer:
        """How this report writes numbers."""
        units = self.spec.paper_units
        step = self.spec.millimetre_step if units == "mm" else self.spec.inch_fraction
        return Writer(LengthStyle(units, step))

    @cached_property
    def fingerprint(self) -> str:
        return fingerprint(self.spec)

    @property
    def title(self) -> str:
        """The project's name, or what is made where it has none."""
        return self.spec.project or "Louvered roof vent"

    @property
    def stamp(self) -> str:
        """One line that tells this drawing from an older one."""
        return f"{self.title} · model {self.fingerprint} · revision {self.revision} · {self.date}"


@dataclass(frozen=True)
class Writer:
    """Numbers as the report prints them; every format takes its strings from here."""

    style: LengthStyle

    def bare(self, mm: float) -> str:
        """A length in a table whose head names the unit; inches keep their mark."""
        return _whole(format_length(mm, self.style, with_unit=self.style.system != "mm"))

    def length(self, mm: float) -> str:
        """A length with its unit, which stays on the number's line."""
        return _whole(format_length(mm, self.style))

    def size(self, *lengths: float) -> str:
        """Length × width × thickness; a line may break at a ×, never inside a length."""
        return " × ".join(_whole(each) for each in format_size(lengths, self.style).split(" × "))

    def angle(self, degrees: float) -> str:
        """An angle to 0.1°."""
        return format_angle(degrees)

    def area(self, mm2: float) -> str:
        """An area."""
        return _whole(format_area(mm2, self.style))

    def weight(self, kg: float) -> str:
        """A weight."""
        return _whole(format_weight(kg, self.style))

    @property
    def fine(self) -> Writer:
        """The same unit to 0.1 mm or 1/64 in, for clearances and fits."""
        return Writer(LengthStyle("mm", 0.1) if self.style.system == "mm" else LengthStyle(self.style.system, 64))

    @property
    def far(self) -> Writer:
        """The same for distances along the barn: feet and inches instead of hundreds of inches."""
        return Writer(LengthStyle("ft-in", self.style.step)) if self.style.system == "in" else self

    @property
    def unit(self) -> str:
        """The unit of lengths in words, for the title block."""
        names = {"mm": "millimetres", "in": "inches", "ft-in": "feet and inches"}
        step = f"to {self.style.step:g} mm" if self.style.system == "mm" else f"to 1/{self.style.step} in"
        return f"{names[self.style.system]}, {step}; angles in degrees to 0.1°"


def _whole(text: str) -> str:
    """A value that no line may break: whole inches stay with their fraction, the number with its unit."""
    return text.replace(" ", "\u00a0")


def plain(value: Any) -> Any:
    """A parameter's value as JSON has it; stock as its record."""
    if is_dataclass(value) and not isinstance(value, type):
        return {each.name: plain(getattr(value, each.name)) for each in fields(value)}
    if isinstance(value, (tuple, list)):
        return [plain(each) for each in value]
    return value


def wish_record(wish: PartWish) -> dict[str, Any]:
    """A wish for a kind of part as JSON has it; own stock as its record."""
    return {STOCK: plain(wish.stock), NOTE: wish.note, LEFT_OUT: wish.left_out}


def fingerprint(spec: Spec) -> str:
    """Eight hexadecimal digits of the SHA-256 of the parameters that shape the vent.

    Parameters that only change the paper, the project's name and remarks do not count, so that the same
    model always has the same fingerprint; nor do notes on parts, nor what is wished for parts that the vent does not have.
    """
    values = {name: plain(value) for name, value in vent_values(spec).items() if BY_NAME[name].group != "Job"}
    wishes = {kind: [plain(wish.stock), wish.left_out] for kind, wish in wishes_in_use(spec).items()
              if wish.stock or wish.left_out}
    if wishes:
        values["parts"] = wishes
    text = json.dumps(values, sort_keys=True, ensure_ascii=False)
    return hashlib.sha256(text.encode("utf-8")).hexdigest()[:8]
