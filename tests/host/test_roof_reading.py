"""Every kind of roof that people draw, picked every way: the numbers it was drawn by come back, in global coordinates."""

from __future__ import annotations

from math import cos, radians, sin, tan

import FreeCAD
import Part
import pytest
import roofs
from FreeCAD import Placement, Rotation, Vector
from roofs import KINDS, LEFT, LONG, RIGHT, SPAN, THICK, TURNED, edge_names, face_names, feature, roof_shape
from vents import near

from louverwright.core.roof_search import alike
from louverwright.features.roof_reading import (
    RoofError,
    RoofLost,
    RoofPick,
    on_one_slope,
    picks_of,
    placement_on,
    read_again,
    read_roof,
    turned,
)
from louverwright.features.standing import in_container
from louverwright.features.vent import make_vent

DEGREES, MM = 1e-6, 1e-6


@pytest.fixture
def document():
    found = FreeCAD.newDocument("Roofs")
    yield found
    FreeCAD.closeDocument(found.Name)


def drawn(kind, document):
    root, path, frame = kind(document)
    document.recompute()
    return root, path, frame


def check(planes, frame, left_first=True, long=LONG):
    """The roof's numbers, with the 40° slope on the left or on the right."""
    pitches = (LEFT, RIGHT) if left_first else (RIGHT, LEFT)
    assert (planes.pitch_left, planes.pitch_right) == (pytest.approx(pitches[0], abs=DEGREES),
                                                       pytest.approx(pitches[1], abs=DEGREES))
    ends = [frame.multVec(Vector(0, 0, 0)), frame.multVec(Vector(long, 0, 0))]
    for found, drawn_at in zip(planes.ridge, ends if left_first else ends[::-1], strict=True):
        assert near(Vector(*found), drawn_at, MM)
    angle = frame.Rotation.multVec(Vector(1 if left_first else -1, 0, 0))
    assert near(Vector(*planes.along), angle, 1e-9)
    assert planes.ridge_height == pytest.approx(frame.Base.z, abs=MM)


def same(first, second):
    """Whether two readings agree, to a nanometre."""
    a, b = first.planes, second.planes
    assert (a.kind, first.where) == (b.kind, second.where)
    assert alike(first.signature, second.signature)
    for p, q in zip(a.ridge, b.ridge, strict=True):
        assert near(Vector(*p), Vector(*q), MM)
    assert [each.number for each in a.slopes] == [each.number for each in b.slopes]
    return True


@pytest.mark.parametrize("kind", KINDS, ids=lambda kind: kind.__name__)
def test_two_slopes(kind, document) -> None:
    root, path, frame = drawn(kind, document)
    left, right = (face_names(root, path, frame, pitch, hand) for pitch, hand in ((LEFT, 1), (RIGHT, -1)))
    assert left and right
    check(read_roof(RoofPick(root, (left[0], right[-1]))).planes, frame)
    check(read_roof(RoofPick(root, (right[0], left[-1]))).planes, frame, left_first=False)
    check(read_roof(RoofPick(root, (*left, *right))).planes, frame)


@pytest.mark.parametrize("kind", KINDS, ids=lambda kind: kind.__name__)
def test_one_slope_finds_the_other(kind, document) -> None:
    root, path, frame = drawn(kind, document)
    check(read_roof(RoofPick(root, tuple(face_names(root, path, frame, LEFT, 1)[:1]))).planes, frame)
    check(read_roof(RoofPick(root, tuple(face_names(root, path, frame, RIGHT, -1)[:1]))).planes, frame, left_first=False)


@pytest.mark.parametrize("kind", KINDS, ids=lambda kind: kind.__name__)
def test_the_whole_and_the_ridge(kind, document) -> None:
    root, path, frame = drawn(kind, document)
    first = min(face_names(root, path, frame, LEFT, 1) + face_names(root, path, frame, RIGHT, -1),
                key=lambda name: int(name.split("Face")[1]))
    left_first = first in face_names(root, path, frame, LEFT, 1)
    check(read_roof(RoofPick(root, (path,))).planes, frame, left_first)
    check(read_roof(RoofPick(root, () if not path else (path,))).planes, frame, left_first)
    ridges = edge_names(root, path, frame.Base, frame.multVec(Vector(LONG, 0, 0)))
    assert ridges
    for name in ridges:
        check(read_roof(RoofPick(root, (name,))).planes, frame, left_first)
    check(read_roof(RoofPick(root, tuple(ridges))).planes, frame, left_first)


@pytest.mark.parametrize("kind", KINDS, ids=lambda kind: kind.__name__)
def test_read_again_is_the_same(kind, document) -> None:
    root, path, frame = drawn(kind, document)
    for names in ((face_names(root, path, frame, LEFT, 1)[0],), (face_names(root, path, frame, RIGHT, -1)[0],)):
        reading = read_roof(RoofPick(root, names))
        assert [pick.subpaths for pick in reading.where] == [(path,)]
        assert same(read_again(reading.where, reading.signature), reading)
        other = turned(reading)
        assert other.planes == reading.planes.turned()
        assert same(read_again(other.where, other.signature), other)


def test_two_objects_in_two_parts(document) -> None:
    picks = []
    for hand, pitch in ((1, LEFT), (-1, RIGHT)):
        part = document.addObject("App::Part", f"Half{hand + 2}")
        slope = feature(document, roofs.slab(hand, pitch), f"Slope{hand + 2}")
        part.addObject(slope)
        part.Placement = Placement(Vector(50.0 * hand, 0, 0), Rotation(Vector(0, 0, 1), 20.0 * hand))
        slope.Placement = part.Placement.inverse().multiply(TURNED).multiply(slope.Placement)
        document.recompute()
        picks.append(RoofPick(part, tuple(face_names(part, f"{slope.Name}.", TURNED, pitch, hand))))
    check(read_roof(*picks).planes, TURNED)
    check(read_roof(*picks[::-1]).planes, TURNED, left_first=False)
    wholes = [RoofPick(pick.object, (pick.subpaths[0].split("Face")[0],)) for pick in picks]
    reading = read_roof(*wholes)
    check(reading.planes, TURNED)
    assert same(read_again(reading.where, reading.signature), reading)


def test_an_architects_roof(document) -> None:
    """``Arch.makeRoof`` makes a compound of one solid a slope, on the wire of its eaves.

    Its thickness is added on top, and both are cut off plumb over the wires' ridge, so that with unlike pitches the upper
    skins meet beside it: where left and right are equally high.
    """
    import Arch
    import Draft

    rise, thick = 2500.0 * tan(radians(LEFT)), 50.0
    run = rise / tan(radians(RIGHT))
    corners = [Vector(0, 0, 0), Vector(8000, 0, 0), Vector(8000, 2500.0 + run, 0), Vector(0, 2500.0 + run, 0)]
    wire = Draft.make_wire(corners, closed=True, face=True)
    document.recompute()
    roof = Arch.makeRoof(wire, angles=[RIGHT, 90.0, LEFT, 90.0], run=[run, 0.0, 2500.0, 0.0], idrel=[-1] * 4,
                         thickness=[thick] * 4, overhang=[0.0] * 4)
    document.recompute()
    planes = read_roof(RoofPick(roof)).planes
    assert sorted((planes.pitch_left, planes.pitch_right)) == pytest.approx(sorted((LEFT, RIGHT)), abs=DEGREES)
    assert planes.ridge_length == pytest.approx(8000.0, abs=MM)
    steep, shallow = (rise + thick / cos(radians(pitch)) for pitch in (LEFT, RIGHT))
    beside = (steep - shallow) / (tan(radians(LEFT)) + tan(radians(RIGHT)))
    assert planes.ridge_height == pytest.approx(steep - beside * tan(radians(LEFT)), abs=MM)


@pytest.mark.parametrize(("pitch", "kind"), [(12.0, "one slope"), (0.0, "flat")])
@pytest.mark.parametrize("azimuth", [0.0, 100.0, 260.0])
def test_a_roof_of_one_slope_and_a_flat_one(document, pitch, kind, azimuth) -> None:
    frame = Placement(Vector(300.0, 400.0, 2600.0), Rotation(Vector(0, 0, 1), azimuth))
    drop = 3000.0 * tan(radians(pitch))
    shed = feature(document, roofs.prism([(0.0, 0.0), (3000.0, -drop), (3000.0, -2200.0), (0.0, -2200.0)], 0.0, 7000.0),
                   place=frame)
    for pick in (RoofPick(shed), RoofPick(shed, tuple(face_names(shed, "", frame, pitch, 1)))):
        reading = read_roof(pick)
        planes = reading.planes
        assert (planes.kind, planes.right) == (kind, None)
        assert planes.pitch_left == pytest.approx(pitch, abs=DEGREES)
        assert near(Vector(*planes.along), frame.Rotation.multVec(Vector(1, 0, 0)), 1e-9)
        assert near(placement_on(planes).Base, frame.multVec(Vector(3500.0, 1500.0, -drop / 2.0)), MM)
        assert near(placement_on(planes, 1000.0, "back", 500.0).Base,
                    frame.multVec(Vector(1000.0, 2000.0, -2000.0 * tan(radians(pitch)))), MM)
        assert same(read_again(reading.where, reading.signature), reading)


def test_one_slope_of_a_roof_with_two(document) -> None:
    roof = feature(document, roof_shape(), place=TURNED)
    reading = read_roof(RoofPick(roof, tuple(face_names(roof, "", TURNED, LEFT, 1))))
    for right, pitch in ((False, LEFT), (True, RIGHT)):
        alone = on_one_slope(reading, right)
        planes = alone.planes
        assert (planes.kind, planes.right, planes.pitch_left) == ("one slope", None, pytest.approx(pitch, abs=DEGREES))
        assert near(Vector(*planes.along), TURNED.Rotation.multVec(Vector(-1 if right else 1, 0, 0)), 1e-9)
        middle = Vector(LONG / 2.0, (-SPAN if right else SPAN) / 2.0, -SPAN / 2.0 * tan(radians(pitch)))
        assert near(placement_on(planes).Base, TURNED.multVec(middle), MM)
        assert same(read_again(alone.where, alone.signature), alone)
    with pytest.raises(RoofError, match="one slope only"):
        on_one_slope(on_one_slope(reading), True)


def test_an_opening_and_other_numbers_do_not_lose_the_roof(document) -> None:
    roof = feature(document, roof_shape(), place=TURNED)
    reading = read_roof(RoofPick(roof, (face_names(roof, "", TURNED, RIGHT, -1)[0], face_names(roof, "", TURNED, LEFT, 1)[0])))
    before = face_names(roof, "", TURNED, RIGHT, -1)
    hole = Part.makeBox(700.0, 700.0, 3000.0, Vector(2000.0, 800.0, -2000.0))
    roof.Shape = Part.makeBox(10.0, 10.0, 10.0, Vector(0, 0, -9000)).fuse(roof_shape()).cut(hole)
    roof.Placement = TURNED
    document.recompute()
    assert face_names(roof, "", TURNED, RIGHT, -1) != before
    check(read_again(reading.where, reading.signature).planes, TURNED, left_first=False)


def test_another_pitch_is_found_as_the_nearest(document) -> None:
    roof = feature(document, roof_shape(), place=TURNED)
    reading = read_roof(RoofPick(roof))
    roof.Shape = roof_shape(35.0, 25.0)
    roof.Placement = TURNED
    now = read_again(reading.where, reading.signature).planes
    assert sorted((now.pitch_left, now.pitch_right)) == pytest.approx([25.0, 35.0], abs=DEGREES)
    assert near(Vector(*now.along), Vector(*reading.planes.along), 1e-9)


# ---- where the vent stands


@pytest.mark.parametrize("offset", [0.0, 90.0, -60.0])
def test_a_vent_stands_on_the_roof_that_was_read(document, offset) -> None:
    """Its feet are on the drawn slopes, and nothing of it goes through them."""
    roof = feature(document, roof_shape(), place=TURNED)
    document.recompute()
    planes = read_roof(RoofPick(roof, (face_names(roof, "", TURNED, LEFT, 1)[0],))).planes
    vent = make_vent(document, pitch_left=planes.pitch_left, pitch_right=planes.pitch_right, ridge_offset=offset,
                     seat_depth=0.0)
    vent.Placement = placement_on(planes, 3000.0, "back", offset)
    document.recompute()
    assert near(vent.Placement.Base, TURNED.multVec(Vector(3000.0, offset, 0.0)), MM)
    above = [max(slope.height(tuple(vertex.Point)) for slope in planes.slopes) for vertex in vent.Shape.Vertexes]
    assert min(above) == pytest.approx(0.0, abs=MM)
    for slope in planes.slopes:
        on_it = [vertex for vertex in vent.Shape.Vertexes if abs(slope.height(tuple(vertex.Point))) < MM]
        assert len(on_it) > 8


def test_a_vent_in_a_part_of_its_own(document) -> None:
    roof = feature(document, roof_shape(), place=TURNED)
    part, inner = document.addObject("App::Part", "Vents"), document.addObject("App::Part", "North")
    part.addObject(inner)
    part.Placement = Placement(Vector(1.0, 2.0, 3.0), Rotation(30.0, 10.0, 5.0))
    inner.Placement = Placement(Vector(-500.0, 0.0, 90.0), Rotation(-80.0, 0.0, 45.0))
    vent = document.addObject("Part::Feature", "Vent")
    inner.addObject(vent)
    place = placement_on(read_roof(RoofPick(roof)).planes)
    vent.Placement = in_container(vent, place)
    vent.Shape = Part.makeBox(1, 1, 1)
    vent.Placement = in_container(vent, place)
    corner = part.getSubObject("North.Vent.Vertex1").Point
    assert near(corner, place.multVec(Part.makeBox(1, 1, 1).Vertexes[0].Point), MM)


# ---- what is refused


def refusal(*picks, error=RoofError):
    with pytest.raises(error) as caught:
        read_roof(*picks)
    assert type(caught.value) is error
    return str(caught.value)


def faces_of(obj, test):
    return tuple(f"Face{number}" for number, face in enumerate(obj.Shape.Faces, 1) if test(face.normalAt(0, 0)))


def test_nothing_picked() -> None:
    assert "Nothing is picked. Pick two slopes" in refusal()


def test_walls_undersides_and_curves(document) -> None:
    roof = feature(document, roof_shape(), place=TURNED)
    (gable, *_) = faces_of(roof, lambda n: abs(n.z) < 1e-6)
    assert "stands at 90.0°, as a wall or a gable does" in refusal(RoofPick(roof, (gable,)))
    (under, *_) = faces_of(roof, lambda n: n.z < -0.1)
    assert f"“Roof” ({under}): {under} looks down" in refusal(RoofPick(roof, (under,)))
    silo = feature(document, Part.makeCylinder(2000.0, 5000.0), "Silo")
    assert "Face1 is curved" in refusal(RoofPick(silo, ("Face1",)))
    assert "Edge1 is curved" in refusal(RoofPick(silo, ("Edge1",)))
    dome = feature(document, Part.makeSphere(2000.0), "Dome")
    assert "no roof to stand a vent on" in refusal(RoofPick(dome))


def test_edges_that_are_no_ridge(document) -> None:
    roof = feature(document, roof_shape(), place=TURNED)
    eave = TURNED.multVec(Vector(0, SPAN, -SPAN * tan(radians(LEFT))))
    (name,) = edge_names(roof, "", eave, eave + TURNED.Rotation.multVec(Vector(LONG, 0, 0)))
    assert "is level, as an eave is" in refusal(RoofPick(roof, (name,)))
    (verge,) = edge_names(roof, "", TURNED.Base, eave)
    assert "as a verge does" in refusal(RoofPick(roof, (verge,)))
    low = TURNED.multVec(Vector(0, 0, -THICK))
    (inner,) = edge_names(roof, "", low, low + TURNED.Rotation.multVec(Vector(LONG, 0, 0)))
    assert "no ridge" in refusal(RoofPick(roof, (inner,)))


def test_a_valley_between_two_roofs(document) -> None:
    shape = roof_shape(30.0, 30.0).fuse(roof_shape(30.0, 30.0).translated(Vector(0, 2.0 * SPAN, 0)))
    roof = feature(document, shape)
    valley = Vector(0, SPAN, -SPAN * tan(radians(30.0)))
    left = face_names(roof, "", Placement(), 30.0, 1)
    right = face_names(roof, "", Placement(Vector(0, 2.0 * SPAN, 0), Rotation()), 30.0, -1)
    assert "they meet in a valley" in refusal(RoofPick(roof, (left[0], right[0])))
    (edge,) = edge_names(roof, "", valley, valley + Vector(LONG, 0, 0))
    assert "they meet in a valley" in refusal(RoofPick(roof, (edge,)))
    assert "more than one ridge of 9000 mm" in refusal(RoofPick(roof))


def test_planes_that_are_parallel(document) -> None:
    steps = feature(document, Part.makeBox(1000, 1000, 1000).fuse(Part.makeBox(1000, 1000, 700, Vector(1000, 0, 0))))
    tops = faces_of(steps, lambda n: n.z > 0.9)
    assert "both level, 300 mm apart" in refusal(RoofPick(steps, tops))
    low, high = (feature(document, roof_shape(), f"Roof{z:.0f}", Placement(Vector(0, 0, z), Rotation())) for z in (0.0, 800.0))
    (name,) = face_names(low, "", Placement(), LEFT, 1)
    assert f"parallel, at 40.0°, {800.0 * cos(radians(LEFT)):.0f} mm apart" in refusal(
        RoofPick(low, (name,)), RoofPick(high, (name,)))


def test_a_ridge_that_slopes(document) -> None:
    def tilted(angle):
        place = Placement(Vector(0, 0, 3000), Rotation(Vector(0, 1, 0), -angle))
        return feature(document, roof_shape(), f"Tilted{angle * 100:.0f}", place), place

    for angle, words in ((0.8, "The ridge slopes 0.80° along its length"), (3.0, "slopes 3.0°: that is a hip or a valley")):
        roof, place = tilted(angle)
        names = face_names(roof, "", place, LEFT, 1) + face_names(roof, "", place, RIGHT, -1)
        assert words in refusal(RoofPick(roof, tuple(names)))
    roof, place = tilted(0.05)
    planes = read_roof(RoofPick(roof)).planes
    assert planes.ridge[1][2] - planes.ridge[0][2] == pytest.approx(
        (1 if planes.along[0] > 0 else -1) * LONG * sin(radians(0.05)), abs=MM)
    assert placement_on(planes).Rotation.multVec(Vector(0, 0, 1)).z == pytest.approx(1.0, abs=1e-15)


def test_meshes_and_what_has_no_shape(document) -> None:
    import Mesh

    mesh = document.addObject("Mesh::Feature", "Scan")
    mesh.Mesh = Mesh.createBox(1000.0, 1000.0, 1000.0)
    link = document.addObject("App::Link", "LinkedScan")
    link.LinkedObject = mesh
    for picked in (RoofPick(mesh), RoofPick(mesh, ("Facet1",)), RoofPick(link, ("Facet1",))):
        words = refusal(picked)
        assert "is a mesh" in words and "Part workbench" in words
    part = document.addObject("App::Part", "Barn")
    assert "“Barn” is a part that holds other objects" in refusal(RoofPick(part))
    note = document.addObject("App::FeaturePython", "Note")
    assert "“Note” is an object without a shape" in refusal(RoofPick(note))
    empty = document.addObject("Part::Feature", "Empty")
    assert "“Empty” is an object without a shape" in refusal(RoofPick(empty))
    wire = feature(document, Part.makePolygon([Vector(0, 0, 0), Vector(1, 0, 0)]), "Wire")
    assert "“Wire” has no faces" in refusal(RoofPick(wire, ("Edge1",)))


def test_wrong_elements_and_mixtures(document) -> None:
    roof = feature(document, roof_shape(), place=TURNED)
    assert "neither a face nor an edge" in refusal(RoofPick(roof, ("Vertex1",)))
    assert "picked together" in refusal(RoofPick(roof, ("Face1", "Edge1")))
    left, right = face_names(roof, "", TURNED, LEFT, 1), face_names(roof, "", TURNED, RIGHT, -1)
    other = feature(document, roof_shape(50.0, 10.0), "Other", TURNED)
    assert "3 slopes are picked" in refusal(RoofPick(roof, (*left, *right)),
                                            RoofPick(other, tuple(face_names(other, "", TURNED, 50.0, 1))))


def test_what_is_gone(document) -> None:
    roof = feature(document, roof_shape(), place=TURNED)
    part = document.addObject("App::Part", "Barn")
    part.addObject(roof)
    reading = read_roof(RoofPick(part, ("Roof.",)))
    assert "no Face77 any more. Pick the roof again" in refusal(RoofPick(roof, ("Face77",)), error=RoofLost)
    assert "Face7” is not there any more" in refusal(RoofPick(roof, ("?Face7",)), error=RoofLost)
    alone = read_roof(RoofPick(roof))
    document.removeObject("Roof")
    assert "is gone. Pick the roof again" in refusal(RoofPick(part, ("Roof.Face1",)), error=RoofLost)
    assert "deleted. Pick the roof again" in refusal(RoofPick(roof, ("Face1",)), error=RoofLost)
    for found in (reading, alone):
        with pytest.raises(RoofLost, match="is gone"):
            read_again(found.where, found.signature)
    with pytest.raises(RoofLost, match="is gone"):
        read_again((), reading.signature)


def test_a_mapped_name_between_path_and_face(document) -> None:
    site, path, frame = roofs.nested(document)
    document.recompute()
    names = [face_names(site, path, frame, pitch, hand)[0] for pitch, hand in ((LEFT, 1), (RIGHT, -1))]
    mapped = tuple(name.replace("Roof.", "Roof.;g7v1;XTR;:H3a,F.") for name in names)
    check(read_roof(RoofPick(site, mapped)).planes, frame)


def test_the_forms_of_a_selection() -> None:
    class Selected:
        def __init__(self, obj, names):
            self.Object, self.SubElementNames = obj, names

    one, two = object(), object()
    assert picks_of([Selected(one, ("Roof.Face1", "Roof.Face2")), Selected(two, ())]) == (
        RoofPick(one, ("Roof.Face1", "Roof.Face2")), RoofPick(two, ()))
