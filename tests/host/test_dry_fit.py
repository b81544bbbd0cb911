# SPDX-License-Identifier: LGPL-2.1-or-later
"""The vent put together dry: nothing overlaps, and every joint is what its kind says, measured by the kernel."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable
from functools import lru_cache
from itertools import combinations

import FreeCAD
import numpy as np
import pytest
from examples import EXAMPLES, Plate, example, plates

from louverwright.core.assembly import BEARING, CLEARANCE, GLUED, LINE_CONTACT, Joint
from louverwright.core.joints import missing, undeclared

#: Solids may share this much (mm³); faces that share less than this (mm²) do not bear on each other.
OVERLAP, CONTACT = 1.0, 1.0
#: Solids nearer than this (mm) touch; a clearance may be off by that (mm).
TOUCH, GAP_ERROR = 1e-3, 0.01
SHIFT = 0.5


class Bench:
    """Solids by their ids, with the kernel's measures of each pair.

    Pairs whose corners all lie alike are one pair on another side of the vent, or its mirror image, and measured once: their
    volumes and all distances from corner to corner, read off the solids in their order, are the same.
    """

    def __init__(self, solids: dict) -> None:
        self.solids = solids
        self._boxes = {name: solid.BoundBox for name, solid in solids.items()}
        self._plates: dict[str, list[Plate]] = {}
        self._corners: dict[str, np.ndarray] = {}
        self._known: dict[tuple, float] = {}

    def once(self, measure: Callable[[str, str], float], a: str, b: str) -> float:
        """A measure of a pair, taken from the first pair that lies alike."""
        for name in (a, b):
            if name not in self._corners:
                self._corners[name] = np.array([vertex.Point for vertex in self.solids[name].Vertexes])
        both = np.vstack([self._corners[a], self._corners[b]])
        apart = np.round(np.linalg.norm(both[:, None, :] - both[None, :, :], axis=2), 4)
        key = (measure.__name__, len(self._corners[a]), *(round(self.solids[name].Volume, 1) for name in (a, b)),
               apart.tobytes())
        if key not in self._known:
            self._known[key] = measure(a, b)
        return self._known[key]

    def near(self, a: str, b: str, reach: float = TOUCH) -> bool:
        """True when the boxes round two solids come within ``reach`` (mm)."""
        box = FreeCAD.BoundBox(self._boxes[a])
        box.enlarge(reach)
        return box.intersect(self._boxes[b])

    def pairs(self, about: str = "") -> list[tuple[str, str]]:
        """Pairs whose boxes touch; only those with ``about`` in them where it is given."""
        return [pair for pair in combinations(self.solids, 2) if (not about or about in pair) and self.near(*pair)]

    def overlap(self, a: str, b: str) -> float:
        """Volume that two solids share (mm³)."""
        return self.once(self._overlap, a, b)

    def _overlap(self, a: str, b: str) -> float:
        return float(self.solids[a].common(self.solids[b]).Volume)

    def distance(self, a: str, b: str) -> float:
        """Least distance of two solids (mm)."""
        return self.once(self._distance, a, b)

    def _distance(self, a: str, b: str) -> float:
        return float(self.solids[a].distToShape(self.solids[b])[0])

    def contact(self, a: str, b: str) -> float:
        """Area over which faces of two solids lie on each other (mm²)."""
        return self.once(self._contact, a, b)

    def _contact(self, a: str, b: str) -> float:
        return sum(float(mine.face.common(other.face).Area) for mine in self.faces(a) for other in self.faces(b)
                   if mine.normal @ other.normal < -1.0 + 1e-9 and abs(mine.offset + other.offset) < TOUCH)

    def faces(self, name: str) -> list[Plate]:
        """The plane faces of a solid."""
        if name not in self._plates:
            self._plates[name] = plates(self.solids[name])
        return self._plates[name]

    def shifted(self, name: str, way: np.ndarray) -> Bench:
        """The same with one solid moved."""
        solid = self.solids[name].copy()
        solid.translate(FreeCAD.Vector(*way))
        return Bench({**self.solids, name: solid})


def overlaps(bench: Bench, about: str = "") -> list[str]:
    """Sentences for pairs that share wood."""
    found = ((a, b, bench.overlap(a, b)) for a, b in bench.pairs(about))
    return [f"{a} and {b} share {volume:.2f} mm³." for a, b, volume in found if volume > OVERLAP]


def joint_fault(bench: Bench, joint: Joint) -> str:
    """What is wrong with a joint, measured; '' where it is what its kind says."""
    a, b = joint.first, joint.second
    distance = bench.distance(a, b)
    area = bench.contact(a, b) if joint.kind != CLEARANCE else 0.0
    good = {BEARING: distance < TOUCH and area > CONTACT, GLUED: distance < TOUCH and area > CONTACT,
            CLEARANCE: joint.gap > 0.0 and abs(distance - joint.gap) < GAP_ERROR,
            LINE_CONTACT: distance < TOUCH and area < 1e-6}
    return "" if good[joint.kind] else (
        f"{a} and {b}: {joint.kind}, gap {joint.gap}; measured distance {distance:.4f} mm, contact {area:.2f} mm²")


def joint_faults(bench: Bench, joints, about: str = "") -> list[str]:
    """What is wrong with all joints, or those of one piece."""
    found = (joint_fault(bench, joint) for joint in joints if not about or about in (joint.first, joint.second))
    return [fault for fault in found if fault]


def touching(bench: Bench, about: str = "") -> dict[frozenset[str], float]:
    """Pairs that lie on each other, with the area (mm²)."""
    found = {frozenset(pair): bench.contact(*pair) for pair in bench.pairs(about)}
    return {pair: area for pair, area in found.items() if area > CONTACT}


@lru_cache(maxsize=16)
def bench_of(name: str) -> Bench:
    return Bench(example(name).solids)


@pytest.mark.parametrize("name", EXAMPLES)
def test_nothing_overlaps(name: str, record_property) -> None:
    bench = bench_of(name)
    told = f"{name}: {len(bench.solids)} solids, {len(bench.pairs())} pairs near each other"
    print(told)
    record_property("pairs", told)
    found = overlaps(bench)
    assert not found, "\n".join(found)


@pytest.mark.parametrize("name", EXAMPLES)
def test_every_joint_is_what_its_kind_says(name: str, record_property) -> None:
    joints = example(name).job.assembly.joints
    kinds = Counter(joint.kind for joint in joints)
    told = f"{name}: " + ", ".join(f"{count} {kind}" for kind, count in kinds.items())
    print(told)
    record_property("joints", told)
    assert set(kinds) == {BEARING, GLUED, CLEARANCE, LINE_CONTACT}
    found = joint_faults(bench_of(name), joints)
    assert not found, "\n".join(found)


@pytest.mark.parametrize("name", EXAMPLES)
def test_what_touches_is_a_joint_and_no_joint_is_listed_twice(name: str) -> None:
    joints = example(name).job.assembly.joints
    pairs = [frozenset((joint.first, joint.second)) for joint in joints]
    declared = {pair for pair, joint in zip(pairs, joints, strict=True) if joint.kind in (BEARING, GLUED)}
    measured = set(touching(bench_of(name)))
    assert len(pairs) == len(set(pairs))
    assert measured == declared, (measured - declared, declared - measured)


@pytest.mark.parametrize("name", EXAMPLES)
def test_the_core_says_the_same(name: str) -> None:
    job = example(name).job
    assert undeclared(job.assembly) == []
    assert missing(job.assembly, job.spec) == []


@pytest.mark.parametrize("name", EXAMPLES)
def test_every_piece_is_held(name: str) -> None:
    """From each piece a way leads to every other over joints that touch, but for the stages' own clearances."""
    case = example(name)
    groups = {identity: identity for identity in case.solids}

    def root(identity: str) -> str:
        while groups[identity] != identity:
            identity = groups[identity]
        return identity

    for joint in case.job.assembly.joints:
        if joint.kind in (BEARING, GLUED):
            groups[root(joint.first)] = root(joint.second)
    assert len({root(identity) for identity in case.solids}) == 1


def seat(bench: Bench, slat: str, holder: str, up: np.ndarray) -> tuple[float, float]:
    """Area (mm²) over which a slat lies on the lower walls of its dados, and the gap over it (mm)."""
    under, over = ([face for face in bench.faces(slat) if face.normal @ up * way > 1.0 - 1e-9] for way in (-1.0, 1.0))
    area = sum(float(mine.face.common(wall.face).Area) for mine in under for wall in bench.faces(holder)
               if wall.normal @ up > 1.0 - 1e-9 and abs(mine.offset + wall.offset) < TOUCH)
    gaps = [-wall.offset - mine.offset for mine in over for wall in bench.faces(holder)
            if wall.normal @ up < -1.0 + 1e-9]
    return area, min((gap for gap in gaps if gap > -TOUCH), default=float("inf"))


def slat_faults(name: str, bench: Bench, about: str = "") -> list[str]:
    """Slats that do not lie on their dados over the whole depth, or with another gap over them than the fit."""
    case = example(name)
    spec, places = case.job.spec, {piece.id: piece.placement for piece in case.job.assembly.pieces}
    a = np.radians(spec.slat_angle)
    depth = spec.panel_depth - (spec.slat_stock.thickness * np.sin(a) if spec.slat_edges == "square" else 0.0)
    whole = spec.dado_depth * depth / np.cos(a)
    found = []
    for joint in case.job.assembly.joints:
        if joint.first.startswith("louver.slat") and joint.kind == GLUED and (not about or about == joint.first):
            area, gap = seat(bench, joint.first, joint.second, np.array(places[joint.first].z))
            if abs(area - whole) > 0.01 * whole or abs(gap - spec.dado_fit) > GAP_ERROR:
                found.append(f"{joint.first} in {joint.second}: on {area:.1f} of {whole:.1f} mm², gap {gap:.3f} mm")
    return found


@pytest.mark.parametrize("name", EXAMPLES)
def test_slats_lie_in_their_dados_with_the_fit_over_them(name: str) -> None:
    """End grain that meets the dado's floor would make a joint by itself: the lower wall must carry the slat."""
    assert slat_faults(name, bench_of(name)) == []


# ---- the checker checked


def first_pieces() -> list[str]:
    return [part["pieces"][0]["id"] for part in example(EXAMPLES[0]).record["parts"]]


@pytest.mark.parametrize("identity", first_pieces())
def test_a_piece_half_a_millimetre_off_is_seen(identity: str) -> None:
    """One piece of each mark moved across its grain: wood is shared or a joint is no longer what it was."""
    case = example(EXAMPLES[0])
    place = next(piece for piece in case.job.assembly.pieces if piece.id == identity).placement
    across = (np.array(place.y) + np.array(place.z)) / np.sqrt(2.0)
    bench = bench_of(EXAMPLES[0]).shifted(identity, SHIFT * across)
    assert overlaps(bench, identity) or joint_faults(bench, case.job.assembly.joints, identity)


def test_a_slat_that_is_lifted_shares_wood_with_the_head_and_leaves_its_dados() -> None:
    case = example(EXAMPLES[0])
    top = max((piece for piece in case.job.assembly.pieces if piece.kind == "louver.slat"), key=lambda p: p.index)
    bench = bench_of(EXAMPLES[0]).shifted(top.id, np.array([0.0, 0.0, SHIFT]))
    found = overlaps(bench, top.id)
    assert [line for line in found if "louver.head" in line]
    assert [line for line in found if "louver.stile" in line]
    assert [line for line in joint_faults(bench, case.job.assembly.joints, top.id) if LINE_CONTACT in line] == []
    assert slat_faults(EXAMPLES[0], bench, top.id)
    lowered = bench_of(EXAMPLES[0]).shifted(top.id, np.array([0.0, 0.0, -SHIFT]))
    assert [line for line in joint_faults(lowered, case.job.assembly.joints, top.id) if LINE_CONTACT in line]


def test_a_joint_that_is_taken_from_the_list_is_missed() -> None:
    case = example(EXAMPLES[0])
    fascia = next(piece.id for piece in case.job.assembly.pieces if piece.kind == "roof.fascia")
    declared = {frozenset((j.first, j.second)) for j in case.job.assembly.joints if fascia in (j.first, j.second)}
    gone = next(iter(declared))
    assert gone in set(touching(bench_of(EXAMPLES[0]), fascia))
    assert set(touching(bench_of(EXAMPLES[0]), fascia)) - (declared - {gone}) == {gone}


def test_a_clearance_that_is_closed_is_seen() -> None:
    case = example(EXAMPLES[0])
    joint = next(j for j in case.job.assembly.joints if j.kind == CLEARANCE and j.first.startswith("louver.trim"))
    bench = bench_of(EXAMPLES[0])
    assert joint_fault(bench, joint) == ""
    assert joint_fault(bench.shifted(joint.first, np.array([0.0, 0.0, -0.02])), joint)
    assert joint_fault(bench, Joint(joint.first, joint.second, CLEARANCE, joint.gap + 0.02))
    assert joint_fault(bench, Joint(joint.first, joint.second, BEARING, 0.0))
