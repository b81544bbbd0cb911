# SPDX-License-Identifier: LGPL-2.1-or-later
"""The frozen description of the vent that is wanted, and the sentences that refuse one that cannot be built."""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass, field
from functools import cached_property
from types import MappingProxyType
from typing import Any, Literal

from .kinds import Kind
from .parameters import (
    ANGLE,
    BY_NAME,
    CHOICE,
    COUNT,
    LENGTH,
    NUMBER,
    PAPER,
    PARAMETERS,
    STOCK,
    SWITCH,
    TEXT,
    Parameter,
    defaults,
)
from .part_wish import NO_WISH, NO_WISHES, NOTE, PartWish, Wishes, field_of, field_words, found_in, measured_alike
from .saying import Text, joined, say
from .stock import Stock, StockList, measured_stock, same_section
from .texts import ENDLESS, LONGEST_NOTE, brief, unfit
from .units import LengthStyle, format_angle, format_length

_PLAIN = LengthStyle("mm", 0.1)
#: Tenths of a millimetre that are noise of floats, not length.
_ROUNDING = 1e-6
#: The field of a finding about a vent's revision, which is no parameter.
REVISION = "revision"
#: Parameters that lengths are rounded by on paper, with how they are written, the limit and the cure.
_STEPS: dict[str, tuple[Literal["mm", "in"], str, str]] = {
    "millimetre_step": ("mm", say("it can have three decimals at most"), say("Set it to 0.1, 0.5 or 1.")),
    "inch_fraction": ("in", say("inches are halved, and halved again"), say("Set it to 8, 16, 32 or 64.")),
}


@dataclass(frozen=True)
class Finding:
    """One reason why a vent cannot be built: what, where, how much, the limit, and what would cure it.

    ``field`` is the parameter's name, or 'parts.' with a kind's id and what is wished for it (empty where no one field is to
    blame).  Without a ``cure``, ``limit`` is a whole sentence that says it too.
    """

    code: str
    field: str
    value: str
    limit: str
    cure: str

    @property
    def sentence(self) -> Text:
        """The finding as the user reads it."""
        where = say(BY_NAME[self.field].label.capitalize()) if self.field in BY_NAME else field_words(self.field)
        where = where or (say("Revision") if self.field == REVISION else self.field)
        if not self.cure:
            return say("{where}: {limit}", where=where, limit=self.limit)
        if not self.value:
            return say("{where}: {limit}. {cure}", where=where, limit=self.limit, cure=self.cure)
        return say("{where} is {value}: {limit}. {cure}", where=where, value=self.value, limit=self.limit, cure=self.cure)

    @property
    def key(self) -> str:
        """Where a scenario file says it: 'parameters.width', 'parts.base.leg.gable.stock'; '' for no one place."""
        plain = not self.field or self.field == REVISION or bool(field_words(self.field))
        return self.field if plain else f"parameters.{self.field}"


class SpecError(ValueError):
    """A vent that cannot be built; carries every finding, and its text is all their sentences."""

    def __init__(self, findings: tuple[Finding, ...]) -> None:
        super().__init__(joined("\n", (finding.sentence for finding in findings)))
        self.findings = findings


@dataclass(frozen=True)
class Spec:
    """Every parameter with its value (mm, degrees), the stock chosen for each use, and what is wished for single kinds.

    Parameters are read as attributes: ``spec.roof_pitch``.  A stock parameter gives a ``Stock``.
    """

    values: Mapping[str, Any]
    parts: Wishes = field(default_factory=lambda: NO_WISHES)

    def __getattr__(self, name: str) -> Any:
        try:
            return self.values[name]
        except KeyError:
            raise AttributeError(name) from None

    def __hash__(self) -> int:
        return self._hash

    @cached_property
    def _hash(self) -> int:
        """Worked out once: layouts, sizes and figures are looked up by their spec."""
        return hash(tuple(sorted((k, repr(v)) for k, v in (*self.values.items(), *self.parts.items()))))

    def wish(self, kind: Kind) -> PartWish:
        """What is wished for a kind of part."""
        return self.parts.get(kind.id, NO_WISH)

    def stock_of(self, kind: Kind) -> Stock:
        """The stock that a kind is cut from: its own where that has the form and the section of the vent's."""
        own, usual = self.wish(kind).stock, self.values[kind.stock]
        assert isinstance(usual, Stock)
        return own if isinstance(own, Stock) and same_section(own, usual) else usual


def length_text(mm: float) -> str:
    """A length as findings write it: millimetres to 0.1."""
    return format_length(mm, _PLAIN)


def least_text(mm: float) -> str:
    """A least length as findings write it: up to 0.1 mm, so that what is written is enough."""
    return length_text(math.ceil(10.0 * mm - _ROUNDING) / 10.0)


def most_text(mm: float) -> str:
    """A greatest length as findings write it: down to 0.1 mm, so that what is written is not too much."""
    return length_text(math.floor(10.0 * mm + _ROUNDING) / 10.0)


def shown(parameter: Parameter, value: Any) -> str:
    """A parameter's value with its unit."""
    if parameter.kind == LENGTH:
        return length_text(value)
    return format_angle(value, 2) if parameter.kind == ANGLE else str(value)


def tooltip(row: Parameter) -> Text:
    """A parameter's doc with its limits and what 0 or nothing stands for."""
    parts = [say(row.doc)]
    if row.low is not None and row.high is not None:
        low, high = shown(row, row.low), shown(row, row.high)
        parts.append(say("{low} to less than {high}.", low=low, high=high) if row.open_high else
                     say("{low} to {high}.", low=low, high=high))
    if row.auto:
        auto = say(row.auto)
        parts.append(say("Empty: {auto}.", auto=auto) if row.kind == STOCK else say("0: {auto}.", auto=auto))
    return joined(" ", parts)


def make_spec(values: Mapping[str, Any], stock: StockList, parts: Wishes = NO_WISHES) -> Spec:
    """The spec of the given values over the defaults (mm, degrees; stock by its name in the list, or the item itself).

    Stock is what was measured of it, where that is told.  ``parts`` are wishes by kinds' ids, for ``checks`` to judge.

    Raises SpecError with every value that is of the wrong kind or out of its limits, every unknown
    name, and every stock that the list does not have.  What goes together is checked by ``checks``.
    """
    findings = [Finding("unknown", name, "", say("“{name}” is not a parameter", name=brief(name)),
                        say("See the list of parameters."))
                for name in values if name not in BY_NAME]
    full = {**defaults(), **{name: value for name, value in values.items() if name in BY_NAME}}
    chosen: dict[str, Any] = {}
    for row in PARAMETERS:
        wrong = _stock(row, full[row.name], stock, chosen) if row.kind == STOCK else plain_finding(row, full[row.name])
        if wrong:
            findings.append(wrong)
        elif row.kind != STOCK:
            chosen[row.name] = full[row.name]
    notes = (text_finding(field_of(kind, NOTE), wish.note, LONGEST_NOTE) for kind, wish in parts.items())
    findings += [wrong for wrong in notes if wrong]
    if findings:
        raise SpecError(tuple(findings))
    return as_measured(chosen, found_in(parts, stock.items))


def as_measured(values: Mapping[str, Any], parts: Wishes = NO_WISHES) -> Spec:
    """The spec of values with its stock as measured; of a spec that has it so already, the same."""
    before = {name: value for name, value in values.items() if isinstance(value, Stock)}
    after = {name: measured_stock(item, name, values) for name, item in before.items()}
    return Spec(MappingProxyType({**values, **after}), measured_alike(parts, before, after))


def _stock(row: Parameter, name: Any, stock: StockList, chosen: dict[str, Any]) -> Finding | None:
    wanted = name or stock.usual.get(row.name) or stock.usual.get(row.like, "")
    item: Stock | None = wanted if isinstance(wanted, Stock) else next((i for i in stock.items if i.name == wanted), None)
    if item is None:
        return Finding("no stock", row.name, say("“{name}”", name=brief(wanted)),
                       say("the stock list “{name}” has no such item", name=stock.name), _choose(row, stock))
    if item.form not in row.forms:
        return Finding("wrong form", row.name, say("“{name}”", name=wanted),
                       say("it is a {form}, and the use needs a {forms}", form=say(item.form),
                           forms=joined(" or ", map(say, row.forms))), _choose(row, stock))
    chosen[row.name] = item
    return None


def _choose(row: Parameter, stock: StockList) -> Text:
    return say("Choose one of: {names}.", names=", ".join(i.name for i in stock.items if i.form in row.forms))


def plain_finding(row: Parameter, value: Any) -> Finding | None:
    """The finding for a value, of any row but stock's, that is of the wrong kind or out of its own limits."""
    if row.kind in (LENGTH, ANGLE, NUMBER, COUNT):
        return _number(row, value)
    if row.kind == CHOICE and value not in row.choices:
        return Finding("choice", row.name, say("“{name}”", name=brief(value)),
                       say("it must be one of {choices}", choices=", ".join(row.choices)),
                       say("Choose {choice}.", choice=row.choices[0]))
    if row.kind == SWITCH and not isinstance(value, bool):
        return Finding("switch", row.name, say("“{name}”", name=brief(value)), say("it must be yes or no"),
                       say("Write yes or no."))
    return text_finding(row.name, value, int(row.high or LONGEST_NOTE)) if row.kind == TEXT else None


def text_finding(field: str, value: Any, longest: int) -> Finding | None:
    """The finding for a value that is no text, or one that cannot be printed or is longer than so many characters."""
    if not isinstance(value, str):
        return Finding("text", field, brief(value), say("it must be text"), say("Put it in quotes."))
    fault = unfit(value, longest)
    return Finding("text", field, "", *fault) if fault else None


def _number(row: Parameter, value: Any) -> Finding | None:
    whole = row.kind == COUNT
    good = isinstance(value, (int, float)) and not isinstance(value, bool) and -ENDLESS < value < ENDLESS
    if not good or (whole and value != int(value)):
        kind = say("a whole number") if whole else say("a number")
        return Finding("not a number", row.name, say("“{name}”", name=brief(value)), say("it must be {kind}", kind=kind),
                       say("Write a number."))
    if row.auto and value == 0:
        return None
    low, high = row.low, row.high
    too_low = low is not None and value < low
    too_high = high is not None and (value >= high if row.open_high else value > high)
    if not (too_low or too_high):
        return _step(row, value)
    zero = say(", or 0 ({auto})", auto=say(row.auto)) if row.auto else ""
    bound = say("less than") if row.open_high else say("at most")
    limits = say("it must be at least {low} and {bound} {high}{zero}", low=shown(row, low), bound=bound,
                 high=shown(row, high), zero=zero)
    highest = (say("Set it below {most}.", most=shown(row, high)) if row.open_high else
               say("Set it to {most} or less.", most=shown(row, high)))
    cure = say("Set it to {least} or more.", least=shown(row, low)) if too_low else highest
    return Finding("out of limits", row.name, shown(row, value), limits, cure)


def _step(row: Parameter, value: float) -> Finding | None:
    """The finding for a step that lengths cannot be written in."""
    if row.name not in _STEPS:
        return None
    system, limit, cure = _STEPS[row.name]
    try:
        LengthStyle(system, value)
    except ValueError:
        return Finding("step", row.name, shown(row, value), limit, cure)
    return None


def vent_values(spec: Spec) -> dict[str, Any]:
    """The values that make the vent what it is, without those that only change the paper."""
    return {row.name: spec.values[row.name] for row in PARAMETERS if row.scope != PAPER}
