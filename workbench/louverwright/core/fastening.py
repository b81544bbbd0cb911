# SPDX-License-Identifier: LGPL-2.1-or-later
"""The fastening plan: every screw and nail of a vent in its place, with its length from the wood that it goes through.

A joint's row in ``fixings`` says how it is held; where screws stand follows from the seam, how long they are from the pieces
along the screw, and whether a driver reaches them from what stands about at that step.  All in mm, assembly frame.
"""

from __future__ import annotations

import math
from collections import Counter
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace
from functools import lru_cache

from .assembly import Assembly, Joint
from .fixings import (
    APART,
    BACK,
    BIT_LENGTH,
    BIT_RADIUS,
    COUNTERBORE,
    COUNTERBORED_FROM,
    DRIVER_RADIUS,
    EDGE_DISTANCE,
    END_DISTANCE,
    FROM_INSIDE,
    HELD_FROM_INSIDE,
    HOLD_DIAMETERS,
    INSIDE,
    LAP,
    LIGHT_HOLD,
    MAST_KEEP_OUT,
    MOST_LEAN,
    MOST_LEAN_SLANTED,
    NAIL,
    NAIL_SHANKS,
    NONE,
    SCREW,
    SHANKS,
    SHORT_OF_FACE,
    SLANT,
    SLANT_BACK,
    SLANTS,
    STAPLE,
    STAPLE_LEG,
    TWO_IN_A_LAP,
    Fixing,
    fixing_of,
)
from .geometry import Vec, add, dot, length, scale, sub, unit
from .joints import matches
from .kinds import LOUVER, ROOF
from .seams import Contact, Seam, seams
from .sight import Body, between_lines, blocker, bodies, rim, stretches, wood_ahead
from .solid import Facet
from .spec import Spec
from .steps import Order, order_of

#: Lengths that screws and nails are sold in (mm); common sizes of the trade.
METRIC_LENGTHS = (16.0, 20.0, 25.0, 30.0, 40.0, 50.0, 60.0, 70.0, 80.0, 90.0, 100.0, 120.0)
INCH_LENGTHS = tuple(25.4 * inches for inches in (0.625, 0.75, 1.0, 1.25, 1.5, 2.0, 2.5, 2.75, 3.0, 3.5, 4.0, 5.0))


def lengths_sold(units: str) -> tuple[float, ...]:
    """Lengths (mm) that are sold where drawings are in mm, or in inches."""
    return METRIC_LENGTHS if units == "mm" else INCH_LENGTHS


#: Lengths that differ by less are alike (mm).
NOISE = 0.01
#: Where a place is not good: how far along the seam, and to which share of its width, a screw is moved.
SHIFTS, SHARES = (0.0, 14.0, -14.0, 30.0, -30.0, 55.0, -55.0, 85.0, -85.0), (0.5, 0.25, 0.75)
#: Less wood than this before the seam carries no head (mm), of the frame and of what is light.
LEAST_THROUGH, LEAST_THROUGH_LIGHT = 15.0, 3.0


@dataclass(frozen=True)
class Driven:
    """A screw or nail: where its head lies, the way it is driven (unit vector), its length and shank.

    ``through`` is the wood before the seam along it from under the head, ``hold`` what of it lies beyond, ``counterbore`` how
    deep its head lies under the face, and ``slant`` the angle between it and the seam's normal, ``lean`` that between it and
    the normal of the face it starts from (degrees); ``face`` is that face's name on its board; ``back`` tells that it goes
    through the second piece into the first.
    """

    head: Vec
    way: Vec
    length: float
    shank: float
    through: float
    hold: float
    counterbore: float
    slant: float
    lean: float
    face: str = ""
    back: bool = False

    @property
    def seam(self) -> Vec:
        """Where it leaves the piece that it goes through."""
        return add(self.head, scale(self.way, self.through))

    @property
    def tip(self) -> Vec:
        """Its point."""
        return add(self.head, scale(self.way, self.length))


@dataclass(frozen=True)
class Fastened:
    """One joint with what holds it: its seam, the pieces driven through and into (ids), what is driven, and how many were
    wanted.

    ``blocked`` names the piece that a driver meets where one was wanted and none could be driven; '' else.
    """

    row: Fixing
    joint: Joint
    contact: Contact
    first: str
    second: str
    driven: tuple[Driven, ...]
    wanted: int
    blocked: str

    @property
    def held(self) -> bool:
        """Whether something holds the joint that wants to be held."""
        return self.row.fastener in (NONE, STAPLE) or bool(self.driven)


@dataclass
class _Board:
    """What the plan knows while it is made: the pieces, bores to keep off, and what is driven into each piece so far."""

    order: Order
    by_id: Mapping[str, Body]
    sold: Sequence[float]
    driver: float
    bores: tuple[tuple[Vec, Vec, float], ...]
    lines: dict[str, list[tuple[Vec, Vec]]] = field(default_factory=dict)


@lru_cache(maxsize=4)
def fastening(assembly: Assembly, sold: tuple[float, ...], driver: float) -> tuple[Fastened, ...]:
    """Every joint of the pieces that are made, in the joints' order: lengths out of those ``sold`` (mm), for a driver that is
    so long with its bit (mm).  Raises KeyError for a joint that no row of the table fits."""
    board = _Board(order_of(assembly), bodies(assembly), sold, driver, tuple(_bores(assembly)))
    plan = [_fastened(seam, board) for seam in seams(assembly)]
    return tuple(_held_on_top(plan, seams(assembly), board))


def _held_on_top(plan: Sequence[Fastened], all_seams: Iterable[Seam], board: _Board) -> Iterator[Fastened]:
    """The plan, with screws from inside the vent on each side where nothing else holds the roof stage."""
    on_top = {each.joint for each in plan if _stages(each.joint, board) == {LOUVER, ROOF}}
    held = {_side(each.joint, board) for each in plan if each.joint in on_top and each.driven}
    inside = {}
    for seam in all_seams:
        pieces = [board.by_id[name].piece for name in (seam.joint.first, seam.joint.second)]
        kinds, sides = {piece.kind for piece in pieces}, {piece.side for piece in pieces}
        if kinds == {FROM_INSIDE.first, FROM_INSIDE.second} and len(sides) == 1 and not sides & held:
            inside[seam.joint] = _fastened(seam, board, FROM_INSIDE)
    now = {_side(joint, board) for joint, each in inside.items() if each.driven}
    for each in plan:
        if each.joint in on_top and not each.held and _side(each.joint, board) in now:
            yield replace(each, row=HELD_FROM_INSIDE, wanted=0, blocked="")
        else:
            yield inside.get(each.joint, each)


def _side(joint: Joint, board: _Board) -> int:
    """The side of the piece of the louver stage."""
    return next(piece.side for name in (joint.first, joint.second)
                if (piece := board.by_id[name].piece).kind.startswith(f"{LOUVER}."))


def _stages(joint: Joint, board: _Board) -> set[str]:
    return {board.by_id[name].piece.kind.split(".")[0] for name in (joint.first, joint.second)}


def fastening_of(spec: Spec, assembly: Assembly) -> tuple[Fastened, ...]:
    """The plan with the lengths of the paper's units and the driver that the shop has."""
    return fastening(assembly, lengths_sold(spec.paper_units), float(spec.driver_length))


def _bores(assembly: Assembly) -> Iterator[tuple[Vec, Vec, float]]:
    """Axis and radius of every bore where it stands."""
    for part in assembly.parts:
        for piece in part.pieces:
            for bore in part.board.bores:
                start = piece.placement.point(bore.start)
                stop = add(start, scale(piece.placement.direction(bore.direction), bore.length))
                yield start, stop, bore.diameter / 2.0


def row_of(joint: Joint, board_of: Mapping[str, Body]) -> tuple[Fixing, bool]:
    """The table's row for a joint, and whether the joint's first piece is the row's.  Raises KeyError where none fits."""
    a, b = board_of[joint.first].piece, board_of[joint.second].piece
    found = fixing_of(a.kind, b.kind, a.side == b.side)
    if found is None:
        raise KeyError(f"No rule says what holds {a.kind} to {b.kind}.")
    return found


def _fastened(seam: Seam, board: _Board, only: Fixing | None = None) -> Fastened:
    """A joint with what the table says of its kinds, or with ``only`` that."""
    row, forward = row_of(seam.joint, board.by_id) if only is None else (
        only, matches(board.by_id[seam.joint.first].piece.kind, only.first))
    first, second = (seam.joint.first, seam.joint.second) if forward else (seam.joint.second, seam.joint.first)
    contact = seam.main
    if row.fastener == NONE:
        return Fastened(row, seam.joint, contact, first, second, (), 0, "")
    places = tuple(_places(row, contact))
    if row.fastener == STAPLE:
        return Fastened(row, seam.joint, contact, first, second, (), len(places), "")
    there = board.order.there_when(first, second)
    middle = contact.point(sum(contact.span(contact.along)) / 2.0, sum(contact.span(contact.across)) / 2.0)
    stood = [body for name in there if (body := board.by_id[name]).near(middle, middle, contact.length / 2.0 + board.driver)]
    found: list[Driven] = []
    blocked = ""
    for station, share in places:
        driven, blocked = _driven(row, seam, (first, second), (station, share), stood, board, len(found))
        if driven:
            found.append(driven)
            for name in (first, second):
                board.lines.setdefault(name, []).append((driven.head, driven.tip))
    return Fastened(row, seam.joint, contact, first, second, tuple(found), len(places), "" if found else blocked)


# ---- places


def count_along(size: float, spacing: float, least: int) -> int:
    """How many stand in a row along a seam (mm): none further apart than the spacing, and no nearer than
    two edge distances."""
    between = size - 2.0 * min(END_DISTANCE, size / 4.0)
    wanted = max(least, 1 + math.ceil(between / spacing - 1e-9))
    return max(1, min(wanted, 1 + int(between / (2.0 * EDGE_DISTANCE))))


def _places(row: Fixing, contact: Contact) -> Iterator[tuple[float, float]]:
    """Station along the seam (mm, along its longest edge) and share of its width for each that the row asks for."""
    low, high = contact.span(contact.along)
    size = high - low
    end = min(END_DISTANCE, size / 4.0)
    if row.pattern == LAP:
        yield from _lap_places(low, high, end, contact.width)
        return
    count = count_along(size, row.spacing, row.least)
    for number in range(count):
        yield (low + size / 2.0 if count == 1 else low + end + (size - 2.0 * end) * number / (count - 1)), 0.5


def _lap_places(low: float, high: float, end: float, width: float) -> Iterator[tuple[float, float]]:
    small = min(high - low, width)
    if small < 3.0 * EDGE_DISTANCE:
        yield (low + high) / 2.0, 0.5
    elif width <= TWO_IN_A_LAP:
        yield from ((low + end, 0.3), (high - end, 0.7))
    else:
        yield from ((at, share) for at in (low + end, high - end) for share in (0.25, 0.75))


# ---- one screw


def _driven(row: Fixing, seam: Seam, pieces: tuple[str, str], place: tuple[float, float], stood: Sequence[Body],
            board: _Board, number: int) -> tuple[Driven | None, str]:
    """The first good screw at a place or near it, through the least wood of those that slant alike; and else what a driver met
    there."""
    blocked = ""
    points = tuple(_points(seam.main, place))
    for way in row.ways:
        for axes, back in _axes(way, seam, pieces, board, number):
            for point in points:
                made = (_along(row, point, axis, seam, pieces[::-1] if back else pieces, back, stood, board) for axis in axes)
                for driven in sorted((each for each in made if each), key=lambda each: round(each.through)):
                    if not _clear(driven, pieces, board):
                        continue
                    met = "" if row.fastener == NAIL else unreachable(driven, stood, board.driver)
                    if not met:
                        return driven, ""
                    blocked = met
    return None, blocked


def _points(contact: Contact, place: tuple[float, float]) -> Iterator[Vec]:
    """The place itself and those round it."""
    station, share = place
    for other in dict.fromkeys((share, *SHARES)):
        for shift in SHIFTS:
            chord = contact.chord(station + shift)
            if chord:
                yield contact.point(station + shift, chord[0] + other * (chord[1] - chord[0]))


def _axes(way: str, seam: Seam, pieces: tuple[str, str], board: _Board, number: int) -> Iterator[tuple[list[Vec], bool]]:
    """Directions to drive in, those that slant alike together, and whether from the second piece: along the seam's normal, or
    on a slant from a face or an edge; never along a board, where a driver might find room in a closed box."""
    back = way in (BACK, SLANT_BACK)
    through = pieces[1] if back else pieces[0]
    normal = seam.main.normal if through == seam.joint.first else scale(seam.main.normal, -1.0)
    if way not in (SLANT, SLANT_BACK, INSIDE):
        yield [normal], back
        return
    place = board.by_id[through].piece.placement
    if way == INSIDE:
        for angle in map(math.radians, SLANTS):
            yield [add(scale(normal, math.cos(angle)), scale(place.z, math.sin(angle)))], back
        return
    sides = [unit(flat) for side in (place.z, place.y)
             if length(flat := sub(side, scale(normal, dot(side, normal)))) > 0.2]
    senses = (1.0, -1.0) if number % 2 else (-1.0, 1.0)
    for angle in map(math.radians, SLANTS):
        yield [add(scale(normal, math.cos(angle)), scale(side, sense * math.sin(angle)))
               for side in sides for sense in senses], back


def _along(row: Fixing, point: Vec, axis: Vec, seam: Seam, pieces: tuple[str, str], back: bool, stood: Sequence[Body],
           board: _Board) -> Driven | None:
    """A screw along an axis through a point of the seam; None where there is no wood for one."""
    away = scale(axis, -1.0)
    at_seam = point if pieces[0] == seam.joint.first else add(point, scale(seam.main.normal, seam.joint.gap))
    through = wood_ahead(at_seam, away, (board.by_id[pieces[0]],))
    if not (LEAST_THROUGH_LIGHT if row.light else LEAST_THROUGH) <= through <= row.most:
        return None
    slant = math.degrees(math.acos(min(1.0, abs(dot(axis, seam.main.normal)))))
    gap = seam.joint.gap / math.cos(math.radians(slant))
    beyond = add(at_seam, scale(axis, gap))
    if not stretches_from(board.by_id[pieces[1]], beyond, axis):
        return None
    far = add(beyond, scale(axis, board.sold[-1]))
    ahead = wood_ahead(beyond, axis, [each for each in stood if each.piece.id != pieces[0] and each.near(beyond, far, 1.0)])
    deep = COUNTERBORE if row.plugged and through >= COUNTERBORED_FROM else 0.0
    under = through - deep
    screw = next(shank for most, shank in SHANKS if under <= most + NOISE)
    least = LIGHT_HOLD if row.light else HOLD_DIAMETERS * screw
    size = driven_length(under + gap, ahead, board.sold, least, row.hold)
    if not size:
        return None
    shank = next(shank for most, shank in NAIL_SHANKS if size <= most + NOISE) if row.fastener == NAIL else screw
    face = _start(sub(at_seam, scale(axis, through)), axis, board.by_id[pieces[0]])
    lean = math.degrees(math.acos(min(1.0, -dot(face.plane.normal, axis))))
    if lean > (MOST_LEAN_SLANTED if slant > 1.0 else MOST_LEAN):
        return None
    return Driven(sub(at_seam, scale(axis, under)), axis, size, shank, under, size - under - gap, deep, slant, lean,
                  face.name, back)


def stretches_from(body: Body, start: Vec, way: Vec) -> bool:
    """Whether a line enters a piece right at its start."""
    return any(low < 0.02 < high for low, high in stretches(body, start, way))


def driven_length(before: float, ahead: float, sold: Sequence[float], least: float, hold: float) -> float:
    """The length to take (mm) for ``before`` mm to the second part and ``ahead`` mm of wood there; 0 where none fits.

    The shortest that holds ``hold`` times what lies before, or where it would come out the longest that does not, if that
    holds ``least`` mm.
    """
    fits = [each for each in sold if before + least - NOISE <= each <= before + ahead - SHORT_OF_FACE + NOISE]
    wanted = before + max(least, hold * before)
    return next((each for each in fits if each >= wanted - NOISE), max(fits, default=0.0))


def _clear(driven: Driven, pieces: tuple[str, str], board: _Board) -> bool:
    """Whether a screw keeps off every bore and off what is driven already."""
    line = (driven.head, driven.tip)
    if any(between_lines(line, (start, stop)) < radius + MAST_KEEP_OUT + driven.shank / 2.0
           for start, stop, radius in board.bores):
        return False
    return all(between_lines(line, other) >= APART for name in pieces for other in board.lines.get(name, ()))


# ---- reach


def unreachable(driven: Driven, stood: Iterable[Body], driver: float) -> str:
    """The id of a piece in the way of the bit and the driver on a screw's axis, ``driver`` mm long together; '' for none."""
    away = scale(driven.way, -1.0)
    stop = add(driven.head, scale(away, driver))
    near = [body for body in stood if body.near(driven.head, stop, DRIVER_RADIUS)]
    start = driven.counterbore + 1.0
    edge = start + BIT_RADIUS * math.tan(math.radians(driven.lean))
    lines = [(driven.head, start, driver),
             *((p, edge, BIT_LENGTH) for p in rim(driven.head, away, BIT_RADIUS, 4)),
             *((p, BIT_LENGTH, driver) for p in rim(driven.head, away, DRIVER_RADIUS, 6))]
    return next((met for p, least, most in lines if (met := blocker(p, away, least, most, near))), "")


def _start(head: Vec, way: Vec, body: Body) -> Facet:
    """The face that a screw starts from: of the cell that the head lies on."""
    facets = [facet for cell in body.cells if all(other.plane.height(head) < NOISE for other in cell)
              for facet in cell if dot(facet.plane.normal, way) < -1e-6]
    return min(facets, key=lambda facet: abs(facet.plane.height(head)))


# ---- totals


@dataclass(frozen=True)
class Size:
    """Fasteners of one kind and size: shank and length (mm)."""

    fastener: str
    shank: float
    length: float


def totals(plan: Iterable[Fastened]) -> dict[Size, int]:
    """How many of each size one vent takes, screws first, the shortest first."""
    found: Counter[Size] = Counter()
    for each in plan:
        if each.row.fastener == STAPLE:
            found[Size(STAPLE, 0.0, STAPLE_LEG)] += each.wanted
        for driven in each.driven:
            found[Size(each.row.fastener, driven.shank, driven.length)] += 1
    order = (SCREW, NAIL, STAPLE)
    return dict(sorted(found.items(), key=lambda item: (order.index(item[0].fastener), item[0].shank, item[0].length)))
