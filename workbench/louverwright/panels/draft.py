# SPDX-License-Identifier: LGPL-2.1-or-later
"""The values that a panel is changing, and what follows from them.  Knows no widgets and no document."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

import FreeCAD

from ..core.checks import checked_spec
from ..core.cutting import LayoutError
from ..core.figures import figures
from ..core.outline import Outline, outlines
from ..core.parameters import BY_NAME, PAPER, applies, defaults
from ..core.part_wish import NO_WISHES, Wishes
from ..core.resolved import resolved
from ..core.row import positions
from ..core.sizing import vents_advised
from ..core.spec import Finding, Spec, SpecError, make_spec
from ..core.stock import StockList, StockListError
from ..core.units import LengthStyle
from ..features.seat import Seat, place_of, values_read
from ..places import stock_list

#: What values that do not go together may come to before they are checked.
NO_PICTURE = (SpecError, StockListError, LayoutError, ValueError, ArithmeticError)


@dataclass(frozen=True)
class Outcome:
    """What a check came to: every finding, or figures and what automatic parameters came out as."""

    findings: tuple[Finding, ...] = ()
    figures: Mapping[str, Any] = field(default_factory=dict)
    resolved: Mapping[str, float] = field(default_factory=dict)
    spec: Spec | None = None


class Draft:
    """Parameter values (mm, degrees) over the defaults, those that were changed, and texts that could not be read.

    ``parts`` are the vent's wishes for single kinds, which stay as they are.
    """

    def __init__(self, values: Mapping[str, Any], folder: Path | None = None, parts: Wishes = NO_WISHES) -> None:
        self.values: dict[str, Any] = {**defaults(), **values}
        self.given = dict(values)
        self.folder = folder
        self.parts = parts
        self.changed: dict[str, Any] = {}
        self.unread: dict[str, str] = {}
        self.seat: Seat | None = None
        self.seat_changed = False

    def take_seat(self, seat: Seat | None, new: bool = False) -> dict[str, Any]:
        """Takes a place on a roof that is drawn, or none; returns the values that the roof gives, which are put as well.

        A ``new`` vent is sized by the ridge, if that comes to a vent.
        """
        self.seat, self.seat_changed = seat, True
        values = {} if seat is None else values_read(seat.reading.planes)
        if new and values.get("ridge_length"):
            sized = {"width": 0.0, "vents": vents_advised(values["ridge_length"])}
            if not Draft({**self.values, **values, **sized}, self.folder).outcome().findings:
                values.update(sized)
        for name, value in values.items():
            self.put(name, value)
        return values

    def place(self) -> FreeCAD.Placement | None:
        """Where the vent, or the first of its row, stands on its roof (global); None where it stands free.

        Raises RoofError for a place past the end of the ridge.
        """
        if self.seat is None:
            return None
        return place_of(self.seat.reading.planes, self.seat.along, self.seat.end, self._plain_spec())

    def put(self, name: str, value: Any) -> None:
        """Takes a value as it was read."""
        self.unread.pop(name, None)
        self.values[name] = value
        self.changed[name] = value

    def put_unread(self, name: str, why: str) -> None:
        """Takes note that a text was no value, and why, in the user's language; the last good one stays."""
        self.unread[name] = why

    @property
    def wanted(self) -> dict[str, Any]:
        """What a new vent is to be made with: what was given, and what was changed."""
        return {**self.given, **self.changed}

    @property
    def stock(self) -> StockList:
        """The stock list in use.  Raises StockListError."""
        return stock_list(self.values["stock_list"] or "us", self.folder)

    @property
    def style(self) -> LengthStyle:
        """How lengths are written in the fields: in the vent's own unit of paper, finely."""
        system = self.values["paper_units"]
        return LengthStyle("mm", 0.1) if system == "mm" else LengthStyle(system, 64)

    def picture(self) -> tuple[Outline, ...] | None:
        """Every piece as it would stand, quickly; None for values that make no vent."""
        try:
            return outlines(self._plain_spec())
        except NO_PICTURE:
            return None    # the check, which follows, says why

    def row(self) -> tuple[float, ...]:
        """How far the axes of all vents of the row stand along the ridge from the first one's (mm); (0,) for one vent."""
        places = positions(self._plain_spec())
        return tuple(place - places[0] for place in places) or (0.0,)

    def _plain_spec(self) -> Spec:
        """The spec with all that only stands on paper at its default.  Raises SpecError or StockListError."""
        shaping = {name: value for name, value in self.values.items() if BY_NAME[name].scope != PAPER}
        return make_spec(shaping, self.stock, self.parts)

    def outcome(self) -> Outcome:
        """Checks all values together; texts that could not be read are findings like others, where they are asked for."""
        unread = tuple(Finding("unread", name, "", why, "") for name, why in self.unread.items() if applies(name, self.values))
        try:
            spec = checked_spec(self.values, self.stock, self.parts)
        except SpecError as error:
            return Outcome((*unread, *error.findings))
        except StockListError as error:
            return Outcome((*unread, Finding("stock list", "stock_list", "", error.args[0], "")))
        return Outcome(unread, figures(spec), resolved(spec), spec)
