# SPDX-License-Identifier: LGPL-2.1-or-later
"""The order in which a vent goes together: what is made at the bench by itself, and that every piece finds what it stands on.

The table says in which order a joiner takes up the kinds of part, stage by stage; which piece comes next is read off the
joints: it must touch what is there already.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import lru_cache

from .assembly import CLEARANCE, LINE_CONTACT, Assembly, Piece
from .geometry import Vec, dot
from .joints import matches
from .kinds import STAGES

PIECE, SIDE, WHOLE, PEAK = "piece", "side", "whole", "peak"
#: Before the rule of the peak, the rafters that hold up a king post: two; and a ridge: a pair at either end.
RAFTERS = "roof.hip roof.common"
HELD_BY = {"roof.kingpost": 2, "roof.ridge": 4}


@dataclass(frozen=True)
class StepRule:
    """What is put on in one step: families of kinds, in the order in which they go together.

    ``unit`` says what is made by itself before it is put on: each piece, all of a side, the whole of it, or the peak with the
    first rafters.  ``at_roof`` pieces are put on when the stages stand on each other, a unit ``in_place`` is put
    together where it belongs.
    """

    key: str
    kinds: str
    unit: str = PIECE
    at_roof: bool = False
    in_place: bool = False


RULES: tuple[StepRule, ...] = (
    StepRule("base.frame", "base.leg base.rail base.sole", SIDE),
    StepRule("base.cladding", "base.cladding"),
    StepRule("base.corner", "base.corner"),
    StepRule("louver.frame", "louver.post louver.rail", SIDE),
    StepRule("louver.bed", "louver.bed"),
    StepRule("louver.panel", "louver.sill louver.stile louver.slat louver.mullion louver.head", SIDE),
    StepRule("louver.ring", "louver.ring"),
    StepRule("louver.trim", "louver.trim"),
    StepRule("louver.frieze", "louver.frieze"),
    StepRule("louver.screen", "louver.screen louver.batten", SIDE, in_place=True),
    StepRule("roof.plate", "roof.plate roof.gusset", WHOLE),
    StepRule("roof.bearer", "roof.bearer roof.step", WHOLE),
    StepRule("roof.peak", "roof.kingpost roof.ridge", PEAK),
    StepRule("roof.rafters", "roof.common roof.hip roof.jack"),
    StepRule("roof.bedmould", "roof.bedmould"),
    StepRule("roof.gable.sill", "roof.gable.bed roof.gable.sill roof.gable.apron", SIDE, in_place=True),
    StepRule("roof.gable.louver", "roof.gable.stile roof.gable.slat roof.gable.peak", SIDE),
    StepRule("roof.gable.board", "roof.gable.board"),
    StepRule("roof.gable.screen", "roof.gable.screen roof.gable.batten", SIDE, in_place=True),
    StepRule("roof.fascia", "roof.fascia"),
    StepRule("roof.lookout", "roof.lookout"),
    StepRule("roof.barge", "roof.barge"),
    StepRule("roof.sheathing", "roof.sheathing"),
    StepRule("roof.soffit", "roof.soffit", at_roof=True),
)


@dataclass(frozen=True)
class Unit:
    """Pieces that are put on together, in the order in which they go together, and whether they touch what is there."""

    pieces: tuple[Piece, ...]
    held: bool


@dataclass(frozen=True)
class Step:
    """One step of a stage: its rule and its units, in order."""

    stage: str
    rule: StepRule
    units: tuple[Unit, ...]

    @property
    def pieces(self) -> tuple[Piece, ...]:
        """All pieces of the step, in order."""
        return tuple(piece for unit in self.units for piece in unit.pieces)


Touching = Mapping[str, frozenset[str]]


@lru_cache(maxsize=8)
def touching(assembly: Assembly) -> Touching:
    """For each piece the ids of those that it bears on or is glued to."""
    found: dict[str, set[str]] = {piece.id: set() for piece in assembly.pieces}
    for joint in assembly.joints:
        if joint.kind not in (CLEARANCE, LINE_CONTACT) and joint.first in found and joint.second in found:
            found[joint.first].add(joint.second)
            found[joint.second].add(joint.first)
    return {name: frozenset(others) for name, others in found.items()}


@lru_cache(maxsize=8)
def steps(assembly: Assembly) -> tuple[Step, ...]:
    """Every step, stage by stage from below; those at the roof last of their stage."""
    return tuple(step for stage in STAGES for step in _stage_steps(assembly, stage))


def _stage_steps(assembly: Assembly, stage: str) -> Iterator[Step]:
    touches = touching(assembly)
    waiting = [(rule, group) for rule in RULES if rule.key.startswith(stage + ".") for group in _groups(rule, assembly)]
    there: set[str] = set()
    rule, units = None, []
    while waiting:
        chosen = next((each for each in waiting if not there or _meets(each[1], there, touches)), waiting[0])
        waiting.remove(chosen)
        if rule is not None and chosen[0] is not rule:
            yield Step(stage, rule, tuple(units))
            units = []
        rule = chosen[0]
        units.append(Unit(tuple(_in_order(chosen[1], there, touches)), not there or _meets(chosen[1], there, touches)))
        there.update(piece.id for piece in chosen[1])
    if rule is not None:
        yield Step(stage, rule, tuple(units))


def _groups(rule: StepRule, assembly: Assembly) -> list[list[Piece]]:
    """The pieces of a rule by what is put on together, each group's in the order of the rule's kinds."""
    found = [piece for family in rule.kinds.split() for piece in assembly.pieces if matches(piece.kind, family)]
    early = _early_rafters(assembly)
    if rule.unit == PEAK:
        return [[*found, *early]] if found else []
    found = [piece for piece in found if piece not in early]
    if rule.unit == WHOLE:
        return [found] if found else []
    if rule.unit == SIDE:
        return [[piece for piece in found if piece.side == side] for side in sorted({piece.side for piece in found})]
    return [[piece] for piece in found]


@lru_cache(maxsize=8)
def _early_rafters(assembly: Assembly) -> tuple[Piece, ...]:
    """The rafters that hold up the king post or the ridge: a pair that lean against each other, or one at either end."""
    touches = touching(assembly)
    for peak in (piece for piece in assembly.pieces if piece.kind in HELD_BY):
        on_it = [piece for piece in assembly.pieces if matches(piece.kind, RAFTERS) and peak.id in touches[piece.id]]
        if peak.kind == "roof.ridge":
            middle = dot(peak.placement.x, peak.placement.point((assembly.part_of(peak.id).board.length / 2.0, 0.0, 0.0)))
            return tuple(sorted(on_it, key=lambda p: -abs(round(dot(peak.placement.x, p.placement.origin) - middle, 3)))
                         [:HELD_BY[peak.kind]])
        if on_it:
            first = on_it[0]
            return first, min(on_it, key=lambda p: dot(_level(first), _level(p)))
    return ()


def _level(piece: Piece) -> Vec:
    return (piece.placement.x[0], piece.placement.x[1], 0.0)


def _meets(group: Iterable[Piece], there: set[str], touches: Touching) -> bool:
    return any(touches[piece.id] & there for piece in group)


def _in_order(group: Sequence[Piece], there: set[str], touches: Touching) -> Iterator[Piece]:
    """A group's pieces so that each touches one before it, as far as any does."""
    rest, known = list(group), set(there)
    alone = len(group) > 1
    done: set[str] = set()
    while rest:
        piece = next((p for p in rest if touches[p.id] & (done if alone and done else known)),
                     next((p for p in rest if touches[p.id] & known), rest[0]))
        rest.remove(piece)
        done.add(piece.id)
        known.add(piece.id)
        yield piece


@dataclass(frozen=True)
class Order:
    """The steps, and for each piece its step, its unit in the step and its place in the unit: they sort as the vent goes
    together."""

    steps: tuple[Step, ...]
    places: Mapping[str, tuple[int, int, int]]

    def there_when(self, first: str, second: str) -> frozenset[str]:
        """The pieces that stand about when two pieces (ids) are joined: those of their unit so far, or of their stage up to
        the later unit; between stages everything but what is put on at the roof."""
        early, late = sorted((self.places[first], self.places[second]))
        step = self.steps[late[0]]
        if early[:2] == late[:2] and not step.rule.in_place:
            return frozenset(piece.id for piece in step.units[late[1]].pieces[:late[2] + 1])
        if step.rule.at_roof:
            return frozenset(name for name, place in self.places.items() if place <= late)
        stages = {self.steps[early[0]].stage, step.stage}
        if len(stages) == 1:
            return frozenset(name for name, place in self.places.items()
                             if place[:2] <= late[:2] and self.steps[place[0]].stage in stages)
        reached = tuple(STAGES)[:1 + max(tuple(STAGES).index(stage) for stage in stages)]
        return frozenset(name for name, place in self.places.items()
                         if self.steps[place[0]].stage in reached and not self.steps[place[0]].rule.at_roof)


@lru_cache(maxsize=8)
def order_of(assembly: Assembly) -> Order:
    """The order in which a vent's pieces go together."""
    found = steps(assembly)
    return Order(found, {piece.id: (number, count, place) for number, step in enumerate(found)
                         for count, unit in enumerate(step.units) for place, piece in enumerate(unit.pieces)})
