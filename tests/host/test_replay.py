# SPDX-License-Identifier: LGPL-2.1-or-later
"""A stranger with cuts.json and its schema alone gets every solid of the model, by making the cuts in order."""

from __future__ import annotations

import copy
from dataclasses import dataclass, field

import FreeCAD
import numpy as np
import pytest
from examples import EXAMPLES, corners, example, round_faces
from remake import Record, placed, remade, steps, waste

from louverwright.features.vent import make_vent, parts_of

#: Largest error of a volume (its share) and of a corner (mm): what the design page asks of the replay.
VOLUME, CORNER = 1e-4, 0.01
#: A cut that takes less than this (mm³) takes nothing.
SHAVING = 1.0
ORDER = ("rip", "shaped edge", "crosscut", "corner cut", "half lap", "dado", "groove", "bore", "notch")


@dataclass
class Errors:
    """The largest errors found, and every piece that is beyond what is allowed."""

    volume: float = 0.0
    corner: float = 0.0
    faults: list[str] = field(default_factory=list)

    def compare(self, name: str, mine, theirs) -> None:
        """Adds one remade solid and the model's."""
        volume = abs(mine.Volume - theirs.Volume) / theirs.Volume
        corner = max(apart(corners(mine), corners(theirs)), holes_apart(mine, theirs))
        self.volume, self.corner = max(self.volume, volume), max(self.corner, corner)
        if not (volume < VOLUME and corner < CORNER):
            self.faults.append(f"{name}: volume off by {100 * volume:.5f} %, corner by {corner:.5f} mm")


def apart(a: np.ndarray, b: np.ndarray) -> float:
    """How far the corner without a match that is furthest from every corner of the other is from it (mm)."""
    if not len(a) or not len(b):
        return float("inf")
    distance = np.linalg.norm(a[:, None, :] - b[None, :, :], axis=2)
    return float(max(distance.min(axis=0).max(), distance.min(axis=1).max()))


def holes_apart(mine, theirs) -> float:
    """The same of the round holes: centre of each wall, and its area as a length along the hole."""
    def told(shape) -> np.ndarray:
        return np.array([[*face.CenterOfMass, face.Surface.Radius, face.Area / face.Surface.Radius]
                         for face in round_faces(shape)])

    a, b = told(mine), told(theirs)
    if len(a) != len(b):
        return float("inf")
    return apart(a, b) if len(a) else 0.0


def replayed(record: Record, solids: dict) -> Errors:
    """Every piece of a record made again and compared with the model's solids (by id)."""
    errors = Errors()
    for part in record["parts"]:
        shape = remade(part)
        for piece in part["pieces"]:
            errors.compare(piece["id"], placed(shape, piece), solids[piece["id"]])
    return errors


def tell(what: str, errors: Errors, record_property) -> None:
    """The largest errors, for whoever reads the log."""
    told = f"{what}: volume off by {100 * errors.volume:.2e} %, corner by {errors.corner:.2e} mm"
    print(told)
    record_property("largest_error", told)


@pytest.mark.parametrize("name", EXAMPLES)
def test_every_solid_is_made_again(name: str, record_property) -> None:
    case = example(name)
    errors = replayed(case.record, case.solids)
    tell(f"{name}, {len(case.solids)} solids", errors, record_property)
    assert not errors.faults, "\n".join(errors.faults)
    assert len(case.solids) == case.record["counts"]["pieces"]


@pytest.mark.parametrize("name", EXAMPLES)
def test_the_solids_of_a_document_are_made_again(name: str, record_property) -> None:
    """The solids that a user's document holds, by the ids that stand beside them."""
    case = example(name)
    document = FreeCAD.newDocument("Replay")
    try:
        vent = make_vent(document, **case.scenario.values)
        solids = {identity: solid for part in parts_of(vent)
                  for identity, solid in zip(part.Pieces, part.Shape.Solids, strict=True)}
        assert set(solids) == set(case.solids)
        assert len(vent.Shape.Solids) == len(solids)
        assert vent.Shape.Volume == pytest.approx(sum(solid.Volume for solid in solids.values()), rel=1e-9)
        errors = replayed(case.record, solids)
    finally:
        FreeCAD.closeDocument(document.Name)
    tell(f"{name}, document", errors, record_property)
    assert not errors.faults, "\n".join(errors.faults)


@pytest.mark.parametrize("name", EXAMPLES)
def test_every_cut_takes_something_when_its_turn_comes(name: str) -> None:
    idle, broken = [], []
    for part in example(name).record["parts"]:
        for number, (cut, before, after) in enumerate(steps(part), start=1):
            if before.Volume - after.Volume < SHAVING:
                idle.append(f"{part['mark']} {number} {cut['name']}: {before.Volume - after.Volume:.4f} mm³")
            if len(after.Solids) != 1 or not after.isValid():
                broken.append(f"{part['mark']} {number} {cut['name']}: {len(after.Solids)} solids")
    assert not idle, "\n".join(idle)
    assert not broken, "\n".join(broken)


@pytest.mark.parametrize("name", EXAMPLES)
def test_cuts_are_listed_in_the_order_of_work(name: str) -> None:
    """Rips and backing before ends; ends before laps; laps before dados; notches last."""
    for part in example(name).record["parts"]:
        ranks = [ORDER.index(cut["kind"]) for cut in part["cuts"]]
        assert ranks == sorted(ranks), part["mark"]


@pytest.mark.parametrize("name", EXAMPLES)
def test_a_waste_of_several_planes_needs_each_of_them(name: str) -> None:
    """Without any one of its planes a joint takes away more: none is listed for nothing."""
    spare = []
    for part in example(name).record["parts"]:
        for cut, before, after in steps(part):
            for index in range(len(cut.get("waste", ())) if len(cut.get("waste", ())) > 1 else 0):
                fewer = {**cut, "waste": [space for k, space in enumerate(cut["waste"]) if k != index]}
                if after.Volume - before.cut(waste(fewer, part)).Volume < SHAVING:
                    spare.append(f"{part['mark']} {cut['name']} plane {index + 1}")
    assert not spare, "\n".join(spare)


def altered(mark: str, change) -> Errors:
    """The replay of the first example after ``change`` was made to one part's record."""
    case = example(EXAMPLES[0])
    record = copy.deepcopy(case.record)
    record["parts"] = [part for part in record["parts"] if part["mark"] == mark]
    change(record["parts"][0])
    return replayed(record, case.solids)


def test_the_replay_sees_a_plane_that_is_off() -> None:
    def moved(part: Record) -> None:
        part["cuts"][0]["waste"][0]["offset"] += 0.02

    assert not altered("L11", lambda part: None).faults
    assert len(altered("L11", moved).faults) == 4


def test_the_replay_sees_a_cut_that_is_missing() -> None:
    assert altered("L7L", lambda part: part["cuts"].pop()).faults
    assert altered("R11", lambda part: part["cuts"].pop()).faults


def test_the_replay_sees_a_piece_that_stands_elsewhere() -> None:
    def shifted(part: Record) -> None:
        part["pieces"][0]["placement"]["origin"][2] += 0.02

    assert len(altered("R8", shifted).faults) == 1


def test_the_replay_sees_a_bore_that_is_off() -> None:
    def wider(part: Record) -> None:
        part["cuts"][-1]["bore"]["diameter"] += 0.05

    assert altered("R2", lambda part: None).faults == []
    assert altered("R2", wider).faults
