# SPDX-License-Identifier: LGPL-2.1-or-later
"""The model's solids: sound, as heavy as the core says, as many as the papers say, alike where the marks say so."""

from __future__ import annotations

import re
from itertools import combinations

import FreeCAD
import numpy as np
import pytest
from congruence import features, fits, mirrored, turn
from examples import EXAMPLES, example, frame_of, local_corners

from louverwright.core.assembly import board_volume_and_centre
from louverwright.core.faces import Shell, shell_of
from louverwright.core.solid import box
from louverwright.features.shapes import shell_shape
from louverwright.report.document import document
from louverwright.report.html import to_html

#: Share of the volume, and distance (mm), by which the core's figures may differ from the kernel's.
VOLUME, CENTRE = 1e-6, 1e-6
#: What the design page shrinks a blank by (mm) to see that the part no longer fits; and how exactly it fits (mm).
SHRINK, FIT = 0.1, 1e-3


def parts(name: str):
    """The file's parts."""
    return example(name).record["parts"]


def standing(name: str):
    """Every piece: its part's record, its own, and its solid."""
    case = example(name)
    return [(part, piece, case.solids[piece["id"]]) for part in case.record["parts"] for piece in part["pieces"]]


@pytest.mark.parametrize("name", EXAMPLES)
def test_every_solid_is_sound(name: str) -> None:
    for _, piece, solid in standing(name):
        assert solid.isValid(), piece["id"]
        assert solid.isClosed(), piece["id"]
        assert solid.ShapeType == "Solid" and len(solid.Solids) == len(solid.Shells) == 1, piece["id"]
        assert solid.Volume > 0.0, piece["id"]
        solid.check(True)    # the kernel's own thorough check; raises ValueError


@pytest.mark.parametrize("name", EXAMPLES)
def test_volume_and_centre_are_the_cores(name: str) -> None:
    case = example(name)
    for part in case.job.assembly.parts:
        volume, centre = board_volume_and_centre(part.board)
        for piece in part.pieces:
            solid = case.solids[piece.id]
            assert solid.Volume == pytest.approx(volume, rel=VOLUME), piece.id
            assert tuple(solid.CenterOfMass) == pytest.approx(piece.placement.point(centre), abs=CENTRE), piece.id


@pytest.mark.parametrize("name", EXAMPLES)
def test_weights_are_volume_times_density(name: str) -> None:
    total = 0.0
    for part, piece, solid in standing(name):
        weight = solid.Volume * 1e-9 * part["stock"]["density"]
        assert part["weight_each"] == pytest.approx(weight, rel=VOLUME), piece["id"]
        total += weight
    assert example(name).record["results"]["total_weight"] == pytest.approx(total, rel=VOLUME)


@pytest.mark.parametrize("name", EXAMPLES)
def test_counts_reconcile(name: str) -> None:
    case = example(name)
    record = case.record
    pieces, marks = len(case.solids), len(record["parts"])
    assert record["counts"] == {"parts": marks, "pieces": pieces}
    assert sum(part["count"] for part in record["parts"]) == pieces
    assert all(part["count"] == len(part["pieces"]) for part in record["parts"])
    assert (record["results"]["pieces"], record["results"]["marks"]) == (pieces, marks)
    ids = [piece["id"] for part in record["parts"] for piece in part["pieces"]]
    assert set(ids) == set(case.solids) and len(ids) == len(set(ids))
    text = to_html(document(case.job), case.job.spec.paper_size)
    assert f"{pieces} pieces under {marks} marks in all." in text
    stages = [int(count) for count in re.findall(r'<p class="note">(\d+) pieces, ', text)]
    assert sum(stages) == pieces and len(stages) == 3
    each = r"cut (\d+)" if case.job.vents == 1 else rf"\d+ pieces: (\d+) for each of {case.job.vents} vents"
    cut = {mark: int(count) for mark, count in re.findall(rf"<h\d[^>]*>(\w+) · [^<]* · {each}</h", text)}
    assert cut == {part["mark"]: part["count"] for part in record["parts"]}


@pytest.mark.parametrize("name", EXAMPLES)
def test_pieces_are_turned_and_never_mirrored(name: str) -> None:
    for _, piece, _ in standing(name):
        _, axes = frame_of(piece["placement"])
        assert np.allclose(axes @ axes.T, np.eye(3), atol=1e-9), piece["id"]
        assert np.linalg.det(axes) == pytest.approx(1.0, abs=1e-9), piece["id"]


# ---- marks and hands


@pytest.mark.parametrize("name", EXAMPLES)
def test_one_mark_is_one_shape(name: str) -> None:
    """Each piece of a mark can be turned into the first, its grain along its grain; also by moments of inertia."""
    case = example(name)
    for part in case.record["parts"]:
        first = part["pieces"][0]
        mine, grain = features(case.solids[first["id"]]), np.array(first["placement"]["x"])
        moments = sorted(case.solids[first["id"]].PrincipalProperties["Moments"])
        for piece in part["pieces"][1:]:
            solid = case.solids[piece["id"]]
            assert turn(mine, features(solid), (grain, np.array(piece["placement"]["x"]))) is not None, piece["id"]
            assert sorted(solid.PrincipalProperties["Moments"]) == pytest.approx(moments, rel=1e-6), piece["id"]


@pytest.mark.parametrize("name", EXAMPLES)
def test_left_and_right_are_mirror_images_and_not_alike(name: str) -> None:
    by_mark = {part["mark"]: part for part in parts(name)}
    lefts = [part for part in by_mark.values() if part["hand"] == "left"]
    assert lefts
    assert {part["mark"][:-1] for part in lefts} == {p["mark"][:-1] for p in by_mark.values() if p["hand"] == "right"}
    for left in lefts:
        right = by_mark[left["mark"][:-1] + "R"]
        a, b = (board_features(name, part) for part in (left, right))
        assert turn(a, b) is None, left["mark"]
        assert turn(mirrored(a), b) is not None, left["mark"]
        assert left["stock"] == right["stock"] and left["kind"] == right["kind"]


@pytest.mark.parametrize("name", EXAMPLES)
def test_a_part_without_a_hand_is_its_own_mirror_image_or_says_that_it_is_alone(name: str) -> None:
    for part in parts(name):
        if not part["hand"]:
            points = board_features(name, part)
            alone = part["shown"]["facts"].get("Hand", "") == "the only one of its hand: never cut it mirrored"
            assert (turn(mirrored(points), points, GRAIN) is None) == alone, part["mark"]
            others = [other for other in parts(name) if other["kind"] == part["kind"] and other["mark"] != part["mark"]]
            assert all(turn(mirrored(points), board_features(name, other), GRAIN) is None for other in others), part["mark"]


@pytest.mark.parametrize("name", EXAMPLES)
def test_two_marks_of_a_kind_are_two_shapes(name: str) -> None:
    """One mark for all that can be cut alike: no two marks of one kind can be turned into each other."""
    for a, b in combinations(parts(name), 2):
        if a["kind"] == b["kind"] and a["stock"] == b["stock"]:
            assert turn(board_features(name, a), board_features(name, b), GRAIN) is None, (a["mark"], b["mark"])


GRAIN = (np.array([1.0, 0.0, 0.0]), np.array([1.0, 0.0, 0.0]))


def board_features(name: str, part) -> np.ndarray:
    """The features of a part's first solid in its board frame."""
    piece = part["pieces"][0]
    origin, axes = frame_of(piece["placement"])
    return (features(example(name).solids[piece["id"]]) - origin) @ axes.T


def test_the_comparison_tells_hands_apart() -> None:
    """A box has no hand; a box with three different corners cut off has; a turned copy is found in any case."""
    box = np.array([[x, y, z] for x in (0.0, 5.0) for y in (0.0, 3.0) for z in (0.0, 1.0)])
    handed = np.vstack([box, [[1.0, 0.0, 0.0], [0.0, 0.7, 0.0], [0.0, 0.0, 0.4]]])
    half = np.array([[0.0, -1.0, 0.0], [1.0, 0.0, 0.0], [0.0, 0.0, 1.0]])
    assert turn(mirrored(box), box) is not None
    assert turn(handed, handed @ half.T + 7.0) is not None
    assert turn(mirrored(handed), handed) is None
    assert turn(handed, handed @ half.T, GRAIN) is None
    assert turn(box, box * 1.01) is None
    assert not fits(box, box + 0.01)


# ---- blanks


@pytest.mark.parametrize("name", EXAMPLES)
def test_every_blank_is_the_smallest(name: str) -> None:
    """The part fills its blank in all three ways, so in a blank 0.1 mm less in any of them it does not lie.

    Where laps take the long point off a mitred end, the blank is longer than the part: the end is sawn before it is lapped.
    """
    for part, piece, solid in standing(name):
        points = local_corners(solid, piece["placement"])
        if any(cut["kind"] == "half lap" for cut in part["cuts"]) and any(
                cut["kind"] == "crosscut" and abs(cut["bevel"]) > 1.0 for cut in part["cuts"]):
            assert points.min(axis=0)[1:] == pytest.approx([0.0] * 2, abs=FIT), piece["id"]
            assert points.max(axis=0)[1:] == pytest.approx(part["blank"][1:], abs=FIT), piece["id"]
            assert points.min(axis=0)[0] > -FIT and np.ptp(points[:, 0]) <= part["blank"][0] + FIT, piece["id"]
            continue
        assert points.min(axis=0) == pytest.approx([0.0] * 3, abs=FIT), piece["id"]
        assert points.max(axis=0) == pytest.approx(part["blank"], abs=FIT), piece["id"]
        for axis in range(3):
            less = np.array(part["blank"])
            less[axis] -= SHRINK
            assert (np.ptp(points, axis=0) > less + FIT).any(), piece["id"]


@pytest.mark.parametrize("name", EXAMPLES)
def test_width_and_thickness_are_the_stocks_or_said_to_be_less(name: str) -> None:
    for part in parts(name):
        (length, width, thickness), stock = part["blank"], part["stock"]
        told = part["shown"]["facts"]["Stock"]
        assert length <= max(stock["lengths"]) + FIT, part["mark"]
        assert width <= stock["width"] + FIT, part["mark"]
        assert thickness <= stock["thickness"] + FIT, part["mark"]
        less = width < stock["width"] - 0.01 and stock["form"] not in ("sheet", "mesh")
        assert ("ripped to" in told) == less, part["mark"]
        assert ("thicknessed to" in told) == (thickness < stock["thickness"] - 0.01), part["mark"]


@pytest.mark.parametrize("off", [1e-9, 2e-6, 1e-5])
def test_a_corner_is_as_uncertain_as_it_lies_off_its_faces(off: float) -> None:
    """Else the kernel finds the solid unsound: a corner that three planes miss by so much needs so much tolerance."""
    shell = shell_of((box((0.0, 0.0, 0.0), (100.0, 50.0, 20.0)),))
    number = shell.points.index((100.0, 50.0, 20.0))
    moved = (*shell.points[:number], (100.0, 50.0, 20.0 + off), *shell.points[number + 1:])
    solid = shell_shape(Shell(moved, shell.faces))
    (corner,) = [vertex for vertex in solid.Vertexes if vertex.Point.distanceToPoint(FreeCAD.Vector(100.0, 50.0, 20.0)) < 0.1]
    assert off <= corner.Tolerance <= max(2.0 * off, 1e-7) and solid.isValid()
