"""Barn roofs as people draw them, each with a ridge along +X of a known frame, and pitches of 40° and 18°."""

from __future__ import annotations

from math import radians, tan

import FreeCAD
import Part
from FreeCAD import Placement, Rotation, Vector

LONG, SPAN, LEFT, RIGHT, THICK = 9000.0, 4000.0, 40.0, 18.0, 150.0
TURNED = Placement(Vector(12000.0, -3000.0, 4321.0), Rotation(Vector(0, 0, 1), 37.0))


def section(left=LEFT, right=RIGHT, barn=False):
    """The outline across the ridge, (y, z) from the ridge, in order."""
    tops = [(SPAN, -SPAN * tan(radians(left))), (0.0, 0.0), (-SPAN, -SPAN * tan(radians(right)))]
    if barn:
        return [*tops, (-SPAN, -6000.0), (SPAN, -6000.0)]
    return [*tops, *((y, z - THICK) for y, z in reversed(tops))]


def prism(points, start=0.0, end=LONG):
    """The solid of an outline (y, z) from one x to another."""
    corners = [Vector(start, y, z) for y, z in (*points, points[0])]
    return Part.Face(Part.makePolygon(corners)).extrude(Vector(end - start, 0, 0))


def roof_shape(left=LEFT, right=RIGHT):
    return prism(section(left, right))


def barn_shape():
    """Walls and roof in one hollow solid, with a floor, and a flat porch beside."""
    room = prism([(3800.0, -5800.0), (3800.0, -3600.0), (0.0, -300.0), (-3800.0, -1600.0), (-3800.0, -5800.0)], 200.0, 8800.0)
    porch = Part.makeBox(3000.0, 2500.0, 2600.0, Vector(1000.0, SPAN - 100.0, -6000.0))
    return prism(section(barn=True)).cut(room).fuse(porch)


def slab(hand, pitch):
    """One slope as a board of its own, ends cut square to it: its upper face ends at the ridge."""
    board = Part.makeBox(LONG, 5000.0, THICK, Vector(0.0, 0.0, -THICK))
    if hand < 0:
        board = board.mirror(Vector(0, 0, 0), Vector(0, 1, 0))
    board.rotate(Vector(0, 0, 0), Vector(1, 0, 0), -hand * pitch)
    return board


def feature(document, shape, name="Roof", place=None):
    obj = document.addObject("Part::Feature", name)
    obj.Shape = shape
    if place is not None:
        obj.Placement = place
    return obj


def body(document, place):
    """A PartDesign body with one pad."""
    found = document.addObject("PartDesign::Body", "Body")
    sketch = found.newObject("Sketcher::SketchObject", "Sketch")
    sketch.Placement = Placement(Vector(), Rotation(Vector(0, 1, 0), Vector(0, 0, 1), Vector(1, 0, 0), "XYZ"))
    points = [Vector(y, z, 0) for y, z in section()]
    for a, b in zip(points, [*points[1:], points[0]], strict=True):
        sketch.addGeometry(Part.LineSegment(a, b), False)
    pad = found.newObject("PartDesign::Pad", "Pad")
    pad.Profile = sketch
    pad.Length = LONG
    found.Placement = place
    document.recompute()
    return found


# ---- kinds: each gives the root, the path of the object, and the frame of its ridge


def solid(document):
    return feature(document, roof_shape(), place=TURNED), "", TURNED


def whole_barn(document):
    return feature(document, barn_shape(), place=TURNED), "", TURNED


def part_design(document):
    return body(document, TURNED), "Pad.", TURNED


def whole_body(document):
    return body(document, TURNED), "", TURNED


def a_link(document):
    link = document.addObject("App::Link", "Link")
    link.LinkedObject = feature(document, roof_shape(), place=Placement(Vector(1, 2, 3), Rotation(10, 20, 30)))
    link.Placement = TURNED
    return link, "", TURNED


def nested(document):
    """Drawn lying on its side, and set up by the parts that it stands in."""
    side = Placement(Vector(100.0, 200.0, 300.0), Rotation(Vector(1, 0, 0), 90.0))
    site, barn = document.addObject("App::Part", "Site"), document.addObject("App::Part", "Barn")
    roof = feature(document, roof_shape(), place=side)
    barn.addObject(roof)
    site.addObject(barn)
    site.Placement = Placement(Vector(0.0, 5000.0, 0.0), Rotation(Vector(0, 0, 1), 123.0))
    barn.Placement = site.Placement.inverse().multiply(TURNED).multiply(side.inverse())
    return site, "Barn.Roof.", TURNED


def link_to_a_part(document):
    """A link to a part that holds the roof, in a part of its own."""
    barn, site = document.addObject("App::Part", "Barn"), document.addObject("App::Part", "Site")
    inner = Placement(Vector(10.0, 20.0, 30.0), Rotation(Vector(0, 0, 1), -15.0))
    barn.addObject(feature(document, roof_shape(), place=inner))
    twin = document.addObject("App::Link", "Twin")
    twin.LinkedObject = barn
    site.addObject(twin)
    site.Placement = Placement(Vector(700.0, 0.0, 900.0), Rotation(Vector(0, 0, 1), 200.0))
    twin.Placement = site.Placement.inverse().multiply(TURNED).multiply(inner.inverse())
    return site, "Twin.Roof.", TURNED


def in_a_part_picked_alone(document):
    """The roof named by itself though it stands in a part: the part's placement counts."""
    site, path, frame = nested(document)
    return site.getSubObject(path, retType=1), "", frame


def step(document):
    import os
    import tempfile

    shape = roof_shape()
    shape.Placement = TURNED
    with tempfile.TemporaryDirectory() as folder:
        name = os.path.join(folder, "roof.step")
        shape.exportStep(name)
        return feature(document, Part.read(name)), "", TURNED


def split_faces(document):
    """Two lengths glued without refining, so that each slope is two faces of one plane."""
    shape = prism(section(), 0.0, 2500.0).fuse(prism(section(), 2500.0, LONG))
    assert len(shape.Faces) > 8
    return feature(document, shape, place=TURNED), "", TURNED


def bare_faces(document):
    """Two faces that belong to no solid; one is drawn to look down."""
    faces = [face for face in roof_shape().Faces if face.normalAt(0, 0).z > 0.3]
    assert len(faces) == 2
    return feature(document, Part.Compound([faces[0], faces[1].reversed()]), place=TURNED), "", TURNED


def splines(document):
    """Plane faces that are stored as spline surfaces, as some programs export them."""
    return feature(document, roof_shape().toNurbs(), place=TURNED), "", TURNED


def inside_out(document):
    shape = roof_shape()
    shape.complement()
    assert shape.Volume < 0.0
    return feature(document, shape, place=TURNED), "", TURNED


def slabs(document):
    """A compound of two boards that gape at the ridge underneath and touch above."""
    return feature(document, Part.Compound([slab(1, LEFT), slab(-1, RIGHT)]), place=TURNED), "", TURNED


def with_dormer(document):
    """A dormer with a flat roof and an upright front, and a chimney."""
    dormer = Part.makeBox(1500.0, 3000.0, 1500.0, Vector(3000.0, 500.0, -2200.0))
    chimney = Part.makeBox(600.0, 600.0, 3000.0, Vector(7000.0, -2500.0, -2000.0))
    return feature(document, roof_shape().fuse(dormer).fuse(chimney), place=TURNED), "", TURNED


KINDS = [solid, whole_barn, part_design, whole_body, a_link, nested, link_to_a_part, in_a_part_picked_alone, step, split_faces,
         bare_faces, splines, inside_out, slabs, with_dormer]


# ---- what can be picked of them


def global_shape(root, path):
    shape = root.getSubObject(path).copy()
    above = Placement()
    group = root.getParentGeoFeatureGroup()
    while group is not None:
        above, group = group.Placement.multiply(above), group.getParentGeoFeatureGroup()
    shape.Placement = above.multiply(shape.Placement)
    return shape


def face_names(root, path, frame, pitch, hand, tolerance=1e-6):
    """The names of the faces in the plane of one slope."""
    plane = Placement(Vector(), Rotation(Vector(1, 0, 0), -hand * pitch))
    normal = frame.Rotation.multVec(plane.Rotation.multVec(Vector(0, 0, 1)))
    found = []
    for number, face in enumerate(global_shape(root, path).Faces, 1):
        heights = [abs(normal.dot(vertex.Point - frame.Base)) for vertex in face.Vertexes]
        if max(heights) < tolerance and face.Area > 1.0:
            found.append(f"{path}Face{number}")
    return found


def edge_names(root, path, a, b, tolerance=1e-6):
    """The names of the edges that lie on the line of two points."""
    found = []
    for number, edge in enumerate(global_shape(root, path).Edges, 1):
        line = (b - a).normalize()
        if all((vertex.Point - a).cross(line).Length < tolerance for vertex in edge.Vertexes):
            found.append(f"{path}Edge{number}")
    return found


def new_document():
    return FreeCAD.newDocument("Roofs")
