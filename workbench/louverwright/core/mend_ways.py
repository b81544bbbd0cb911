# SPDX-License-Identifier: LGPL-2.1-or-later
"""Which parameters make a part as it came out, and what else of the vent they change.

Each parameter is solved for by the secant rule on the part's own board; only where that succeeds is the whole vent
checked, laid out and compared.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass, field, replace

from .assembly import Assembly, Part
from .checks import MEASURED_SHARE, check
from .compare import UNCHANGED, Comparison, compare
from .cutting import LayoutError, board_of
from .dimensions import sizes
from .geometry import Vec
from .layout import layout, members
from .marks import turn_between
from .measures import ARRIS, BLANK, STOCK, Change, changes_between
from .parameters import ANGLE, LENGTH, MEASURED, PAPER, PARAMETERS, THICKNESS, WIDTH, Parameter, measured_name
from .resolved import resolved
from .spec import Finding, Spec, as_measured
from .twist import DROPS

#: Sizes that differ by less than this (mm) are the same: what a rule reads off a piece is coarser.
SAME_SIZE = 0.05
#: How near (mm) a solved size comes to the real one.
NEAR = 1e-4
#: What the barn is like and what it is to be cannot be changed to fit a part.
GIVEN = ("pitch_left", "pitch_right", "pitch_error", "ridge_length", "ridge_cap_height", "ridge_cap_width", "seat_depth",
         "building_width", *DROPS.values())
#: First step of the secant (mm, degrees), how many steps, and the least that a parameter must move the size by in the first.
_STEP, _STEPS, _DEAD = {LENGTH: 1.0, ANGLE: 0.1}, 20, 1e-6


@dataclass(frozen=True)
class Way:
    """One parameter with the value (mm, degrees) that it has now and the one that makes the part as it is.

    ``others`` are the old marks of the pieces that change besides the wrong ones, new marks for what is added; ``pieces`` how
    many those are.  ``fitting`` is how many pieces of the wrong mark come to the real size.  ``moved`` names the cuts of the
    part itself that come to lie otherwise: if they are made already, this is no way.
    """

    parameter: Parameter
    old: float
    new: float
    others: tuple[str, ...]
    pieces: int
    fitting: int
    moved: tuple[str, ...]
    after: Spec = field(repr=False)
    found: Comparison = field(repr=False)


@dataclass(frozen=True)
class Refused:
    """A parameter and the value (mm, degrees) that would make the part as it is, but for what the checks say."""

    parameter: Parameter
    new: float
    findings: tuple[Finding, ...]


@dataclass(frozen=True)
class Ways:
    """The ways found, the best first; those that cannot be built; how many more change what is cut already."""

    ways: tuple[Way, ...] = ()
    refused: tuple[Refused, ...] = ()
    barred: int = 0


def ways(spec: Spec, part: Part, real: Vec, count: int, keep: Iterable[str] = ()) -> Ways:
    """Every single length or angle of the table that makes ``count`` pieces of a part have the real size (mm).

    Ways that change a part whose mark is in ``keep`` are counted and left out.  Ranked by the number of other parts that
    change; ways that leave the part's own cuts where they are go first.
    """
    kept, now = set(keep), resolved(spec)
    axis = next(i for i in range(3) if abs(real[i] - part.board.size[i]) > SAME_SIZE)
    found: dict[object, Way] = {}
    refused: list[Refused] = []
    barred = 0
    for row in PARAMETERS:
        start = _start(row, spec, now, part, axis)
        value = None if start is None else _solved(row, start, _size_of(spec, part, row, axis), real[axis])
        if start is None or value is None:
            continue
        after = with_value(spec, row, value)
        if row.group == MEASURED and abs(value - start) > MEASURED_SHARE * start:
            continue    # no wood of that name is so thick or wide
        findings = check(after)
        if findings:
            refused.append(Refused(row, value, findings))
            continue
        way = _way(spec, after, row, (start, value), part, real, count)
        if way is None or way.fitting < count:
            continue
        if kept & set(way.others):
            barred += 1
        else:
            found.setdefault(_look(way.found.after), way)
    ranked = sorted(found.values(), key=lambda way: (bool(way.moved), len(way.others), way.pieces))
    return Ways(tuple(ranked), tuple(refused), barred)


def with_value(spec: Spec, row: Parameter, value: float) -> Spec:
    """The spec with one parameter at another value (mm, degrees)."""
    return as_measured({**spec.values, row.name: value}, spec.parts)


def _start(row: Parameter, spec: Spec, now: dict[str, float], part: Part, axis: int) -> float | None:
    """The value that a parameter has, also an automatic one; None for one that is not to be solved for.

    Stock is taken as measured otherwise only where the part itself is of that width or thickness.
    """
    if row.kind not in _STEP or row.scope == PAPER or row.name in GIVEN:
        return None
    if row.group == MEASURED and (axis == 0 or row.name != measured_name(part.kind.stock, (WIDTH, THICKNESS)[axis - 1])):
        return None
    value = float(spec.values[row.name])
    return now.get(row.name) if row.auto and value == 0.0 else value


SizeAt = Callable[[float], "float | None"]


def _size_of(spec: Spec, part: Part, row: Parameter, axis: int) -> SizeAt:
    """A function from the parameter's value to the part's size along an axis (mm); None where there is no such piece."""
    wanted = part.pieces[0].id

    def size(value: float) -> float | None:
        changed = with_value(spec, row, value)
        member = next((each for each in members(changed, sizes(changed)) if each.id == wanted), None)
        if member is None:
            return None
        try:
            return board_of(replace(member, bores=()))[1].size[axis]
        except LayoutError:    # the value leaves nothing of the piece: it is out of the question
            return None

    return size


def _solved(row: Parameter, start: float, size: SizeAt, target: float) -> float | None:
    """The value at which the size is the target, or None: without influence, beyond the limits, or not to be reached."""
    assert row.low is not None and row.high is not None
    low, high = row.low, row.high
    a, at_a = start, size(start)
    step = _STEP[row.kind]
    for b in (start + step, start - step):
        at_b = size(b) if low <= b <= high else None
        if at_a is not None and at_b is not None and abs(at_b - at_a) > _DEAD:
            break
    else:
        return None
    for _ in range(_STEPS):
        if at_a is None or at_b is None or abs(at_b - at_a) < 1e-12:
            return None
        c = b + (target - at_b) * (b - a) / (at_b - at_a)
        if not low <= c <= high or (row.open_high and c == high):
            return None
        a, at_a, b, at_b = b, at_b, c, size(c)
        if at_b is not None and abs(at_b - target) < NEAR * 1e-2:
            return b
    return None


def _way(before: Spec, after: Spec, row: Parameter, values: tuple[float, float], part: Part, real: Vec,
         count: int) -> Way | None:
    """The way with all that it changes; None where the part has the real size in one direction only."""
    found = compare(layout(before), layout(after))
    first = part.pieces[0].id
    ids = {piece.id for piece in found.after.pieces}
    new = found.after.part_of(first) if first in ids else None
    if new is None or any(abs(a - b) > 10.0 * NEAR for a, b in zip(_like(new, part), real, strict=True)):
        return None
    own = [piece.id for piece in part.pieces]
    fitting = [each for each in own if each in ids
               and turn_between(found.after.part_of(each).board, new.board) is not None]
    others = [(p.old_mark or p.new_mark) for p in found.pieces if p.state != UNCHANGED and p.id not in fitting[:count]]
    return Way(row, *values, tuple(dict.fromkeys(others)), len(others), len(fitting), _moved(part, new), after, found)


def _like(new: Part, old: Part) -> Vec:
    """The new size, its width and thickness in the old one's order: a square stick's may be told the other way round."""
    length, wide, thick = new.board.size
    straight = abs(wide - old.board.width) + abs(thick - old.board.thickness)
    crossed = abs(thick - old.board.width) + abs(wide - old.board.thickness)
    return (length, thick, wide) if crossed < straight - 1e-9 else (length, wide, thick)


def _moved(old: Part, new: Part) -> tuple[str, ...]:
    """Names of the cuts that change otherwise than by keeping their distance to one end, edge or face."""
    shifts = [b - a for a, b in zip(old.board.size, new.board.size, strict=True)]
    return tuple(dict.fromkeys(change.cut for change in changes_between(old, new)[1]
                               if change.kind not in (BLANK, ARRIS, STOCK) and not _follows(change, shifts)))


def _follows(change: Change, shifts: list[float]) -> bool:
    if not isinstance(change.old, float) or not isinstance(change.new, float) or change.unit != LENGTH:
        return False
    return any(abs(change.new - change.old - shift) < SAME_SIZE for shift in shifts)


def _look(assembly: Assembly) -> object:
    """What two parameters that come to the same vent have in common."""
    return tuple((part.mark, part.stock.name, tuple(round(size, 3) + 0.0 for size in part.board.size), part.count)
                 for part in assembly.parts)
