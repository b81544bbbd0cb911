# SPDX-License-Identifier: LGPL-2.1-or-later
"""How the parts of a vent join: one rule for each pair of kinds, and the joints that follow from the rules.

A rule says what kind of joint two kinds of part make, with what gap, and how many such joints every piece of
the first kind must have at least.  Where the joints are is read off the pieces themselves: two
plane faces that look at each other across the rule's gap.  A piece that lacks the joints its
rules ask for, or that touches a piece no rule names, is a fault of the layout; the tests look for both.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from functools import cached_property, lru_cache
from itertools import product
from typing import NamedTuple

from .assembly import (
    BEARING,
    CLEARANCE,
    GLUED,
    LINE_CONTACT,
    Assembly,
    Board,
    Joint,
    Part,
    Piece,
    board_shell,
    board_solid,
)
from .dimensions import plan_of
from .geometry import IDENTITY, Placement, Vec, dot, newell, sub
from .spec import Spec

#: Faces are at the rule's gap when they differ from it by less than this (mm).
GAP_ERROR = 1e-3
#: Directions of faces that differ by less than this look the same way.
SAME_WAY = 3e-7
#: Faces that overlap by less than this (mm²) do not make a joint.
LEAST_CONTACT = 1.0


@dataclass(frozen=True)
class Rule:
    """Pieces of two kinds (or families of kinds, by the beginning of their ids) that join.

    ``gap`` is a clearance in mm; ``least`` the number of joints that each piece of ``first`` has at least.
    """

    first: str
    second: str
    kind: str
    gap: float = 0.0
    least: int = 0


def _each(first: str, seconds: str, kind: str, gap: float = 0.0, least: int = 0) -> list[Rule]:
    return [Rule(first, second, kind, gap, least) for second in seconds.split()]


def rules(spec: Spec) -> list[Rule]:
    """Every rule, with the spec's clearances.  The first that fits a pair of pieces holds."""
    panel, ring = spec.panel_clearance, spec.ring_clearance
    gable = spec.roof_form == "gable"
    turned = 0 if gable else 2
    return [
        # base
        *_each("base.leg", "base.rail.top", GLUED, least=1),
        *_each("base.leg", "base.leg", BEARING),
        *_each("base.rail.top", "base.rail.top", BEARING),
        *_each("base.sole", "base.leg", BEARING, least=1),
        *_each("base.sole", "base.sole", BEARING),
        *_each("base.rail.bottom", "base.leg", BEARING, least=2),
        Rule("base.cladding", "base.leg base.rail.top", BEARING, least=1),
        *_each("base.cladding", "base.sole base.rail.bottom", BEARING),
        *_each("base.cladding", "base.cladding", BEARING),
        *_each("base.cladding", "base.cladding", CLEARANCE, spec.board_gap),
        *_each("base.corner", "base.cladding", BEARING, least=1),
        *_each("base.corner", "base.corner", BEARING),
        # louver stage on the base
        *_each("louver.rail.bottom", "base.rail.top", BEARING, least=1),
        *_each("louver.post", "base.leg", BEARING),
        *_each("louver.post", "base.rail.top", BEARING, least=1),
        *_each("louver.rail.bottom", "base.leg", BEARING),
        *_each("louver.rail.bottom", "base.cladding", CLEARANCE, spec.stage_clearance, 1),
        *_each("louver.post", "base.cladding", CLEARANCE, spec.stage_clearance),
        *_each("louver.ring", "base.cladding base.corner", CLEARANCE, ring, 1),
        # louver frame and panels
        *_each("louver.post", "louver.rail", GLUED, least=2),
        *_each("louver.post", "louver.post", BEARING),
        *_each("louver.rail", "louver.rail", BEARING),
        *_each("louver.bed", "louver.rail.bottom", GLUED, least=1),
        *_each("louver.sill", "louver.bed", GLUED, least=1),
        *_each("louver.sill", "louver.post", CLEARANCE, panel, 2),
        *_each("louver.bed", "louver.post", CLEARANCE, panel, 2),
        *_each("louver.stile", "louver.sill", BEARING, least=1),
        *_each("louver.stile", "louver.post", CLEARANCE, panel, 1),
        *_each("louver.stile", "louver.rail.top", CLEARANCE, panel, 1),
        *_each("louver.stile", "louver.head", BEARING, least=1),
        *_each("louver.mullion", "louver.sill louver.head", BEARING, least=1),
        *_each("louver.slat", "louver.stile", GLUED, least=1),
        *_each("louver.slat", "louver.mullion", GLUED),
        *_each("louver.head", "louver.rail.top", CLEARANCE, panel, 1),
        # ring, trim, screen
        *_each("louver.ring", "louver.sill", BEARING, least=1),
        *_each("louver.ring", "louver.post", BEARING, least=2),
        *_each("louver.ring", "louver.ring", GLUED, least=2),
        *_each("louver.ring", "louver.stile louver.mullion", BEARING),
        *_each("louver.trim", "louver.ring", CLEARANCE, spec.trim_clearance, 1),
        *_each("louver.trim", "louver.post louver.stile", BEARING, least=1),
        *_each("louver.trim", "louver.trim louver.rail.top louver.head louver.sill louver.slat", BEARING),
        *_each("louver.frieze", "louver.head louver.rail.top", BEARING, least=1),
        *_each("louver.frieze", "louver.trim", BEARING, least=2),
        *_each("louver.frieze", "louver.stile louver.post", BEARING),
        *_each("louver.screen", "louver.sill louver.head", BEARING, least=1),
        *_each("louver.screen", "louver.stile", BEARING, least=2),
        *_each("louver.screen", "louver.slat louver.mullion louver.bed", BEARING),
        *_each("louver.batten", "louver.screen", BEARING, least=1),
        *_each("louver.batten.level", "louver.batten.upright", BEARING, least=2),
        # roof stage
        *_each("roof.plate", "louver.rail.top louver.frieze", BEARING, least=1),
        *_each("roof.plate", "louver.post louver.trim", BEARING),
        *_each("roof.plate", "roof.plate", GLUED, least=2),
        *_each("roof.gusset", "roof.plate", GLUED, least=2),
        *_each("roof.gusset", "louver.post louver.rail.top", CLEARANCE, spec.stage_clearance),
        *_each("roof.hip", "roof.plate roof.kingpost", BEARING, least=1),
        *_each("roof.jack", "roof.plate roof.hip", BEARING, least=1),
        *_each("roof.common", "roof.plate roof.kingpost roof.ridge", BEARING, least=1),
        Rule("roof.hip", "roof.common", BEARING, least=2 if plan_of(spec).rectangle else 0),
        *_each("roof.bedmould", "roof.plate roof.soffit", BEARING, least=1),
        *_each("roof.hip roof.jack roof.common", "louver.trim louver.frieze", BEARING),
        *_each("roof.bedmould", "roof.hip roof.jack roof.common louver.trim louver.frieze", BEARING),
        *_each("roof.soffit", "louver.trim", CLEARANCE, 2.0),
        *_each("roof.soffit", "louver.frieze", CLEARANCE, 2.0),
        *_each("roof.soffit", "roof.hip", BEARING, least=2),
        *_each("roof.soffit", "roof.jack roof.common", BEARING),
        *_each("roof.soffit", "roof.soffit", GLUED, least=turned),
        *_each("roof.fascia", "roof.soffit", BEARING, least=1),
        *_each("roof.fascia", "roof.hip", BEARING, least=2),
        *_each("roof.fascia", "roof.jack roof.common", BEARING),
        *_each("roof.fascia", "roof.fascia", GLUED, least=turned),
        *_each("roof.sheathing", "roof.hip", BEARING, least=2),
        *_each("roof.sheathing.eave", "roof.fascia roof.sheathing", BEARING, least=1),
        Rule("roof.sheathing", "roof.fascia", BEARING, least=0 if spec.roof_form == "flared hip" else 1),
        *_each("roof.sheathing", "roof.jack roof.common roof.ridge", BEARING),
        *_each("roof.sheathing", "roof.sheathing", BEARING, least=1 if gable else 2),
        # gables
        *_each("roof.barge", "roof.ridge roof.fascia roof.sheathing roof.barge", BEARING, least=1),
        *_each("roof.barge", "roof.soffit", BEARING),
        *_each("roof.lookout", "roof.barge roof.sheathing", BEARING, least=1),
        Rule("roof.lookout", "roof.common roof.gable.board", BEARING, least=1),
        *_each("roof.lookout", "roof.gable.sill roof.ridge", BEARING),
        Rule("roof.gable.board", "roof.plate roof.common", BEARING, least=1),
        *_each("roof.gable.board", "roof.sheathing", BEARING, least=1),
        *_each("roof.gable.board", "roof.ridge louver.trim louver.frieze roof.gable.board roof.bedmould", BEARING),
        *_each("roof.gable.board", "roof.gable.board", CLEARANCE, spec.board_gap),
        *_each("roof.gable.board", "roof.soffit", CLEARANCE, 2.0),
        *_each("roof.gable.bed", "roof.plate roof.gable.sill", GLUED, least=1),
        *_each("roof.gable.bed roof.gable.sill", "roof.common", BEARING),
        *_each("roof.gable.apron", "roof.plate louver.frieze", BEARING, least=1),
        *_each("roof.gable.apron", "roof.gable.sill louver.trim roof.common roof.bedmould", BEARING),
        *_each("roof.gable.apron", "roof.soffit", CLEARANCE, 2.0),
        *_each("roof.gable.stile", "roof.gable.sill roof.common", BEARING, least=1),
        *_each("roof.gable.stile", "roof.gable.stile roof.ridge", BEARING),
        *_each("roof.gable.slat", "roof.gable.stile", GLUED, least=2),
        *_each("roof.gable.peak", "roof.gable.stile", BEARING, least=2),
        *_each("roof.gable.peak", "roof.ridge", BEARING),
        *_each("roof.gable.screen", "roof.gable.stile roof.gable.sill", BEARING, least=1),
        *_each("roof.gable.batten", "roof.gable.screen", BEARING, least=1),
        *_each("roof.gable.batten.rake", "roof.gable.batten.level", BEARING, least=1),
        *_each("roof.gable.batten.rake", "roof.gable.batten.rake roof.ridge", BEARING),
        *_each("roof.gable.screen roof.gable.batten", "roof.common", BEARING),
        *_each("roof.gable.screen", "roof.gable.slat roof.gable.bed roof.gable.peak roof.ridge", BEARING),
        *_each("roof.bearer", "roof.plate", BEARING, least=2),
        *_each("roof.step", "roof.bearer", BEARING, least=1),
    ]


class Patch(NamedTuple):
    """A convex face of a board that stands at ``place``: its outward normal and its offset along that (mm) where it stands,
    and its corners in the board frame."""

    normal: Vec
    offset: float
    points: tuple[Vec, ...]
    place: Placement

    @property
    def corners(self) -> tuple[Vec, ...]:
        """The corners where they stand (mm), worked out for the few patches that come to meet another."""
        return tuple(map(self.place.point, self.points))


#: Patches by the way they look.
Patches = dict[Vec, list[Patch]]


@dataclass(frozen=True)
class Stands:
    """A piece where it stands, with its box and, once they are asked for, its faces in the assembly frame."""

    piece: Piece
    part: Part
    low: Vec
    high: Vec

    @cached_property
    def patches(self) -> Patches:
        """The faces (convex patches of them) in the assembly frame, sorted by the way they look."""
        return patches_of(self.part.board, self.piece.placement)


def stands(piece: Piece, part: Part) -> Stands:
    """A piece where it stands in the assembly frame."""
    return Stands(piece, part, *_box(part.board, piece.placement))


@lru_cache(maxsize=1 << 13)
def _box(board: Board, place: Placement) -> tuple[Vec, Vec]:
    """The lowest and the highest x, y, z of a board that stands at ``place``."""
    points, o, x, y, z = board_shell(board).points, place.origin, place.x, place.y, place.z
    along = [[o[i] + a * x[i] + b * y[i] + c * z[i] for a, b, c in points] for i in range(3)]
    xs, ys, zs = along
    return (min(xs), min(ys), min(zs)), (max(xs), max(ys), max(zs))


def patches_of(board: Board, place: Placement) -> Patches:
    """The faces of a board that stands at ``place``, by the way they look."""
    patches: Patches = {}
    for cell in board_solid(board):
        for facet in cell:
            normal = place.direction(facet.plane.normal)
            offset = facet.plane.offset + dot(normal, place.origin)
            patches.setdefault(way_of(normal), []).append(Patch(normal, offset, facet.points, place))
    return patches


def way_of(normal: Vec) -> Vec:
    """A direction rounded so that most equal ones compare equal; ±0 made one."""
    return (round(normal[0], 6) + 0.0, round(normal[1], 6) + 0.0, round(normal[2], 6) + 0.0)


def _facing(normal: Vec, patches: Patches) -> Iterator[Patch]:
    """The patches that look the other way; of a direction near the middle between two roundings those of either."""
    xs, ys, zs = ({round(-x - SAME_WAY, 6) + 0.0, round(-x + SAME_WAY, 6) + 0.0} for x in normal)
    for key in product(xs, ys, zs):
        yield from patches.get(key, ())


def facing(a: Patches, b: Patches) -> Iterator[tuple[Patch, Patch]]:
    """Every two patches of two pieces that look at each other, at whatever distance."""
    for mine in a.values():
        theirs = tuple(_facing(mine[0].normal, b))
        yield from product(mine, theirs)


def distance(one: Patch, other: Patch) -> float:
    """How far apart two patches are that look at each other (mm); negative where they lie in each other's wood."""
    return -other.offset - one.offset


def facing_area(a: Patches, b: Patches, gap: float) -> float:
    """How much of the faces of two pieces look at each other at a distance of ``gap`` (mm²)."""
    return sum(shared_area(one.corners, other.corners, one.normal) for one, other in facing(a, b)
               if abs(distance(one, other) - gap) < GAP_ERROR)


def join(a: Stands, b: Stands, gap: float) -> bool:
    """Whether faces of the two pieces look at each other at a distance of ``gap`` (mm), so that they make a joint.

    Asked in the board frame of the one that has more cuts, and remembered: most joints of a vent are the same joint on
    another side.
    """
    home, guest = (a, b) if len(a.part.board.cuts) >= len(b.part.board.cuts) else (b, a)
    return _join_at(home.part.board, home.piece.placement, guest.part.board, guest.piece.placement, gap)


@lru_cache(maxsize=1 << 14)
def _join_at(a: Board, place: Placement, b: Board, other: Placement, gap: float) -> bool:
    return _join(a, b, place.local_frame(other).rounded(), gap)


@lru_cache(maxsize=1 << 15)
def _join(a: Board, b: Board, there: Placement, gap: float) -> bool:
    return facing_area(_patches_at_home(a), patches_of(b, there), gap) > LEAST_CONTACT


@lru_cache(maxsize=1024)
def _patches_at_home(board: Board) -> Patches:
    return patches_of(board, IDENTITY)


def shared_area(a: tuple[Vec, ...], b: tuple[Vec, ...], normal: Vec) -> float:
    """Area (mm²) of what is common to two convex polygons that face each other, seen along ``normal``."""
    shared = shared_polygon(a, b, normal)
    return abs(dot(newell(shared), normal)) / 2.0 if shared else 0.0


def shared_polygon(a: tuple[Vec, ...], b: tuple[Vec, ...], normal: Vec) -> tuple[Vec, ...]:
    """What is common to two convex polygons seen along ``normal``, in the plane of ``a``; () for nothing.

    ``b`` runs clockwise, as it faces ``a``.
    """
    rest: list[Vec] = list(a)
    for i, start in enumerate(b):
        side = sub(b[(i + 1) % len(b)], start)
        inward = _turned(side, normal)
        limit = dot(inward, start)
        rest = _kept(rest, inward, limit)
        if len(rest) < 3:
            return ()
    return tuple(rest)


def _turned(side: Vec, normal: Vec) -> Vec:
    return (side[1] * normal[2] - side[2] * normal[1], side[2] * normal[0] - side[0] * normal[2],
            side[0] * normal[1] - side[1] * normal[0])


def _kept(points: list[Vec], inward: Vec, limit: float) -> list[Vec]:
    """The part of a convex polygon with inward·p ≥ limit."""
    out: list[Vec] = []
    for i, p in enumerate(points):
        q = points[(i + 1) % len(points)]
        hp, hq = dot(inward, p) - limit, dot(inward, q) - limit
        if hp >= 0.0:
            out.append(p)
        if (hp > 0.0 > hq) or (hp < 0.0 < hq):
            share = hp / (hp - hq)
            out.append((p[0] + share * (q[0] - p[0]), p[1] + share * (q[1] - p[1]), p[2] + share * (q[2] - p[2])))
    return out


def near(a: Stands, b: Stands, reach: float) -> bool:
    """True when the boxes of two pieces come within ``reach`` of each other."""
    p, q, r, s = a.low, a.high, b.low, b.high
    return (p[0] <= s[0] + reach and r[0] <= q[0] + reach and p[1] <= s[1] + reach and r[1] <= q[1] + reach
            and p[2] <= s[2] + reach and r[2] <= q[2] + reach)


def all_standing(parts: Iterable[Part]) -> list[Stands]:
    """Every piece of the parts with its faces."""
    return [stands(piece, part) for part in parts for piece in part.pieces]


def joints_of(parts: tuple[Part, ...], spec: Spec) -> tuple[Joint, ...]:
    """Every joint that the rules name and the pieces make, each pair of pieces once."""
    by_kind: dict[str, list[Stands]] = {}
    for each in all_standing(parts):
        by_kind.setdefault(each.piece.kind, []).append(each)
    found: dict[tuple[str, str], Joint] = {}
    for rule in rules(spec):
        for a, b in _candidates(rule, by_kind):
            pair = (a.piece.id, b.piece.id)
            if not near(a, b, rule.gap + 1.0) or pair in found or pair[::-1] in found:
                continue
            if join(a, b, rule.gap):
                found[pair] = Joint(*pair, rule.kind, rule.gap)
    return (*found.values(), *_under_heads(parts))


def _candidates(rule: Rule, by_kind: dict[str, list[Stands]]) -> Iterator[tuple[Stands, Stands]]:
    for first, firsts in by_kind.items():
        if not matches(first, rule.first):
            continue
        for second, seconds in by_kind.items():
            if matches(second, rule.second):
                yield from ((a, b) for a in firsts for b in seconds if a is not b)


@lru_cache(maxsize=1 << 14)
def matches(kind: str, family: str) -> bool:
    """True for a kind that is one of a space-separated list of kinds or families."""
    return any(kind == name or kind.startswith(name + ".") for name in family.split())


def _under_heads(parts: tuple[Part, ...]) -> list[Joint]:
    """The line contacts: the top slat of each panel (or each half of it) just meets the head rail."""
    slats = [piece for part in parts if part.kind.id == "louver.slat" for piece in part.pieces]
    heads = [piece for part in parts if part.kind.id == "louver.head" for piece in part.pieces]
    top = max((slat.index for slat in slats), default=0)
    return [Joint(slat.id, head.id, LINE_CONTACT, 0.0)
            for slat in slats if slat.index == top for head in heads if head.side == slat.side]


def undeclared(assembly: Assembly) -> list[tuple[str, str]]:
    """Pairs of pieces that touch with no joint between them."""
    known = {frozenset((j.first, j.second)) for j in assembly.joints}
    pieces = all_standing(assembly.whole)
    return [(a.piece.id, b.piece.id) for i, a in enumerate(pieces) for b in pieces[i + 1:]
            if frozenset((a.piece.id, b.piece.id)) not in known and near(a, b, 0.01)
            and join(a, b, 0.0)]


def missing(assembly: Assembly, spec: Spec) -> list[str]:
    """Sentences for pieces that have fewer joints by a rule than the rule asks for."""
    kinds = {piece.id: piece.kind for part in assembly.whole for piece in part.pieces}
    lacking: list[str] = []
    for rule in rules(spec):
        if not rule.least or not any(matches(kind, rule.second) for kind in kinds.values()):
            continue
        for piece, kind in kinds.items():
            if matches(kind, rule.first):
                count = sum(1 for j in assembly.joints if j.kind == rule.kind and piece in (j.first, j.second)
                            and matches(kinds[j.second if j.first == piece else j.first], rule.second))
                if count < rule.least:
                    lacking.append(f"{piece} has {count} {rule.kind} joints with {rule.second}, not {rule.least}.")
    return lacking
