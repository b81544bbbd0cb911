# SPDX-License-Identifier: LGPL-2.1-or-later
"""The angles of cuts.json against dihedral angles measured on the finished solids.

A bevel is measured between the sawn face and the marked (or hidden) face, a mitre and a taper as the angle that the
sawn face's line on the marked face makes with the arris of the reference edge: the line is the kernel's own edge
where the two faces still meet.  Which way X runs and which plane is which cut is all that is taken from the file.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass
from math import acos, atan, degrees

import numpy as np
import pytest
from examples import EXAMPLES, Plate, example, frame_of, plates

#: Angles agree to this (degrees).
AGREE = 0.01
#: Planes with normals this near (sine) and distances this near (mm) are one.
SAME, SAME_PLACE = 1e-6, 1e-3
SAW_CUTS = ("rip", "crosscut", "corner cut")


@dataclass(frozen=True)
class Measured:
    """Angles in degrees, signed as the file signs them, and whether the line was an edge of the solid."""

    mitre: float
    bevel: float
    taper: float
    edge: bool


def between(a: np.ndarray, b: np.ndarray) -> float:
    """Angle between two directions (degrees)."""
    return degrees(acos(max(-1.0, min(1.0, float(a @ b) / float(np.linalg.norm(a) * np.linalg.norm(b))))))


def lying(faces: list[Plate], normal: np.ndarray, offset: float) -> Plate | None:
    """The largest face in a plane."""
    found = [face for face in faces
             if np.linalg.norm(face.normal - normal) < SAME and abs(face.offset - offset) < SAME_PLACE]
    return max(found, key=lambda plate: plate.face.Area, default=None)


class Board:
    """A placed solid with its outer faces: marked or hidden face, reference or far edge, and its length."""

    def __init__(self, solid, part: dict, piece: dict) -> None:
        self.faces = plates(solid)
        self.origin, self.axes = frame_of(piece["placement"])
        self.x, y, z = self.axes
        _, width, thickness = part["blank"]
        self.marked = self._side(z, thickness)
        self.hidden = self._side(-z, 0.0)
        self.reference = self._side(-y, 0.0)
        self.far = self._side(y, width)
        flat = self.marked.normal if self.marked else -self.hidden.normal
        self.up = flat
        self.long = self._long(flat)
        self.across = np.cross(flat, self.long)    # from the reference edge to the far edge

    def _side(self, normal: np.ndarray, offset: float) -> Plate | None:
        return lying(self.faces, normal, float(normal @ self.origin) + offset)

    def _long(self, flat: np.ndarray) -> np.ndarray:
        """Along the arris between a long edge and the marked face, or by the edge nearest to along or across; to end B.

        A triangle of a hexagon's sheathing with its grain up the slope has no edge along: its eave lies square to that.
        """
        edge = self.reference or self.far
        if edge is not None:
            way = np.cross(flat, edge.normal)
        else:
            lines = [direction(each) for each in (self.marked or self.hidden).face.Edges]
            both = [way for line in lines for way in (line, np.cross(flat, line))]
            way = max(both, key=lambda line: abs(line @ self.x) / float(np.linalg.norm(line)))
        way = way / np.linalg.norm(way)
        return way if way @ self.x > 0.0 else -way

    def measure(self, sawn: Plate) -> Measured:
        """The angles of a sawn face."""
        if self.marked is not None:
            bevel = 90.0 - between(sawn.normal, self.marked.normal)
        else:
            bevel = between(sawn.normal, self.hidden.normal) - 90.0
        edge = shared_edge(sawn, self.marked or self.hidden)
        line = direction(edge) if edge is not None else np.cross(sawn.normal, self.up)
        lean = between(line, self.across)
        mitre = min(lean, 180.0 - lean)
        return Measured(mitre * self._mitre_sign(sawn, line), bevel,
                        (90.0 - mitre) * self._taper_sign(sawn, line), edge is not None)

    def _mitre_sign(self, sawn: Plate, line: np.ndarray) -> float:
        """Positive where the sawn line falls back from the end as it goes to the far edge."""
        towards_far = line if line @ self.across > 0.0 else -line
        outward = self.long if sawn.normal @ self.long > 0.0 else -self.long
        return 1.0 if towards_far @ outward < 0.0 else -1.0

    def _taper_sign(self, sawn: Plate, line: np.ndarray) -> float:
        """Positive where the sawn line comes in as it goes to end B."""
        towards_b = line if line @ self.long > 0.0 else -line
        outward = self.across if sawn.normal @ self.across > 0.0 else -self.across
        return 1.0 if towards_b @ outward < 0.0 else -1.0


def direction(edge) -> np.ndarray:
    """From one end of a straight edge to the other."""
    return np.array(edge.Vertexes[-1].Point) - np.array(edge.Vertexes[0].Point)


def shared_edge(a: Plate, b: Plate):
    """The longest edge in which two faces of a solid meet, or None."""
    theirs = b.face.Edges
    found = [edge for edge in a.face.Edges if any(edge.isSame(other) for other in theirs)]
    return max(found, key=lambda edge: edge.Length, default=None)


def sawn_face(board: Board, cut: dict) -> Plate | None:
    """The face that a saw cut left."""
    (space,) = cut["waste"]
    normal = board_direction(board, space["normal"])
    return lying(board.faces, normal, space["offset"] + float(normal @ board.origin))


def board_direction(board: Board, normal: list[float]) -> np.ndarray:
    """A direction of the board frame in the vent."""
    return np.array(normal) @ board.axes


@dataclass(frozen=True)
class Row:
    """One saw cut of one solid: the file's record and what was measured (None where no face is left)."""

    name: str
    cut: dict
    measured: Measured | None


def rows(name: str, every: bool = False) -> Iterator[Row]:
    """Every saw cut of one solid of each part, or of every solid."""
    case = example(name)
    yield from rows_of(case.record, case.solids, every)


def rows_of(record: dict, solids: dict, every: bool = False) -> Iterator[Row]:
    """The same of a record and the model's solids by the pieces' ids."""
    for part in record["parts"]:
        for piece in part["pieces"] if every else part["pieces"][:1]:
            board = Board(solids[piece["id"]], part, piece)
            for cut in part["cuts"]:
                if cut["kind"] in SAW_CUTS:
                    sawn = sawn_face(board, cut)
                    label = f"{part['mark']} {piece['id']} {cut['kind']} “{cut['name']}”"
                    yield Row(label, cut, board.measure(sawn) if sawn else None)


def wrong(row: Row) -> str:
    """How a cut's record differs from what was measured; '' where it does not."""
    if row.measured is None:
        return f"{row.name}: no such face on the solid"
    names = ("taper", "bevel") if row.cut["kind"] == "rip" else ("mitre", "bevel")
    off = [f"{name} {row.cut[name]:.4f}, measured {getattr(row.measured, name):.4f}" for name in names
           if abs(row.cut[name] - getattr(row.measured, name)) > AGREE]
    return f"{row.name}: {'; '.join(off)}" if off else ""


@pytest.mark.parametrize("name", EXAMPLES)
def test_every_saw_cut_has_the_angles_of_its_face(name: str, record_property) -> None:
    measured = list(rows(name, every=True))
    edges = Counter(row.measured.edge for row in measured if row.measured)
    told = f"{name}: {len(measured)} sawn faces, {edges[True]} by an edge of the solid, {edges[False]} by planes alone"
    print(told)
    record_property("faces", told)
    found = [text for text in map(wrong, measured) if text]
    assert not found, "\n".join(found)
    assert len(measured) > 100
    assert edges[True] > 0.7 * len(measured)


def test_a_wrong_angle_is_seen() -> None:
    row = next(row for row in rows(EXAMPLES[0]) if row.name.startswith("L11") and row.cut["kind"] == "crosscut")
    assert wrong(row) == ""
    for change in ({"mitre": row.cut["mitre"] + 0.02}, {"mitre": -row.cut["mitre"]}, {"bevel": -row.cut["bevel"]},
                   {"mitre": 90.0 - row.cut["mitre"]}, {"mitre": row.cut["bevel"], "bevel": row.cut["mitre"]}):
        assert wrong(Row(row.name, {**row.cut, **change}, row.measured))


def ends(name: str, kind: str) -> dict[str, tuple[float, float]]:
    """Measured |mitre| and |bevel| of a part's ends by the cuts' names (to 0.001°)."""
    return {row.cut["name"]: (round(abs(row.measured.mitre), 3), round(abs(row.measured.bevel), 3))
            for row in rows(name) if f" {kind}/" in row.name and row.cut["kind"] != "rip"}


def test_two_slopes_give_two_feet() -> None:
    """9 in 12 and 4 in 12: legs on the gable side are mitred to one or the other, eave-side feet bevelled."""
    steep, low = round(degrees(atan(9 / 12)), 3), round(degrees(atan(4 / 12)), 3)
    feet = {kind: {(round(abs(row.measured.mitre), 3), round(abs(row.measured.bevel), 3))
                   for row in rows("saltbox-9-and-4") if f" {kind}/" in row.name and "foot" in row.cut["name"]}
            for kind in ("base.leg.gable", "base.leg.eave")}
    assert feet["base.leg.gable"] == {(steep, 0.0), (low, 0.0)}
    assert feet["base.leg.eave"] == {(0.0, steep), (0.0, low)}


def test_ends_that_differ_are_given_apart() -> None:
    """A jack is plumb at its tail and turned to the hip at its head; a hip's head and its cheeks differ too."""
    jack = ends("stable-9400mm", "roof.jack")
    assert jack["cut against the hip"][1] == pytest.approx(45.0, abs=1e-3)
    assert jack["plumb tail"] == (jack["cut against the hip"][0], 0.0)
    hip = ends("hay-barn-28ft", "roof.hip")
    assert hip["plumb cut at the king post"][1] == 0.0
    assert hip["tail, plumb cheek"][1] == pytest.approx(45.0, abs=1e-3)


@pytest.mark.parametrize("name", EXAMPLES)
def test_the_two_ends_of_a_ring_board_are_mirror_images(name: str) -> None:
    ends = [row for row in rows(name) if "louver.ring" in row.name and row.cut["kind"] == "crosscut"]
    ring = [row.measured for row in ends]
    assert len(ring) == 2 * len({row.name.split()[0] for row in ends})
    assert all(end.mitre == pytest.approx(ring[0].mitre, abs=1e-6) for end in ring)
    assert all(end.bevel == pytest.approx(ring[0].bevel, abs=1e-6) for end in ring)
    assert ring[0].mitre > 15.0
