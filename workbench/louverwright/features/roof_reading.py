# SPDX-License-Identifier: LGPL-2.1-or-later
"""Reads a barn's roof that is drawn already: from what was picked to the slopes, the ridge, and a vent's place on it.

A pick is a root object with dotted paths below it, as ``Gui.Selection.getSelectionEx('', 0)`` gives them; that form alone
tells which link and which part a face was seen through.  Two slopes can be picked, or the ridge, or one slope, or the
whole roof.  Solids, bodies, compounds, links and shells will do, in parts however moved; meshes and curved faces will not.

Faces of one plane are one slope.  Of a thick roof the upper skin counts, which is the one that looks up; a face that
belongs to no solid has no outside, and is taken to look up.
"""

from __future__ import annotations

import math
import re
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from typing import Any

import FreeCAD
import Part

from ..core.geometry import Placement, Vec, scale
from ..core.roof_planes import (
    FLAT,
    MIDDLE,
    Patch,
    RoofError,
    RoofLost,
    RoofPlanes,
    longest_edge,
    one_slope,
    slopes_of,
    two_slopes,
)
from ..core.roof_search import find_again, ridge_at, ridges_among, roof_among, signature
from ..core.saying import joined, say
from ..core.survey import STEEPEST
from ..core.texts import brief
from .shapes import freecad_placement
from .standing import container_placement

_NEEDED = say("Pick two slopes, the ridge, one slope, or the whole roof")
_ELEMENT = re.compile(r"(Face|Edge)([1-9]\d*)")
#: Of a flat face that is not stored as a plane, and of a straight edge that is not stored as a line (mm).
_FLATNESS = 1e-4


@dataclass(frozen=True)
class RoofPick:
    """A root object and dotted paths below it, such as "Link.Roof.Face3"; without a path the object as a whole."""

    object: FreeCAD.DocumentObject
    subpaths: tuple[str, ...] = ()


@dataclass(frozen=True)
class RoofReading:
    """A roof in global coordinates, the objects it was read from (paths end at the object), and how to find it again."""

    planes: RoofPlanes
    where: tuple[RoofPick, ...]
    signature: str


@dataclass(frozen=True)
class _Target:
    """One object that has part in a roof, where it stands: its whole shape's plane faces, numbered as FreeCAD does."""

    root: FreeCAD.DocumentObject
    path: str
    shape: Part.Shape
    above: FreeCAD.Placement    # of the parts that the root stands in
    patches: tuple[Patch, ...]
    frame: Placement    # the object's own, global

    @property
    def label(self) -> str:
        return say("“{name}”", name=self.root.getSubObject(self.path, retType=1).Label)


# ---- reading


def picks_of(selection: Iterable[Any]) -> tuple[RoofPick, ...]:
    """The picks in what ``Gui.Selection.getSelectionEx('', 0)`` gives."""
    return tuple(RoofPick(each.Object, tuple(each.SubElementNames)) for each in selection)


def read_roof(*picks: RoofPick) -> RoofReading:
    """The roof that was picked.  The slope picked first is left; of a ridge or a whole roof, the one drawn first.

    Raises RoofError for what is no roof to stand a vent on, and RoofLost for what is not there any more; the text says
    what was picked, what is needed and how to come by it.
    """
    where = _by_object(picks)
    elements = [(each.object, *_parted(path)) for each in picks for path in each.subpaths or ("",)]
    targets = [_target(pick.object, path, of) for of, (pick, path) in enumerate(_paths(where))]
    numbers = {(target.root.Name, target.path): of for of, target in enumerate(targets)}
    wanted = [(numbers[root.Name, path], element) for root, path, element in elements]
    try:
        planes = _settled(_picked(targets, wanted), targets)
    except RoofError as error:
        raise type(error)(joined(": ", (_named(targets, wanted), error.args[0]))) from None
    return _reading(planes, where, targets)


def read_again(where: Sequence[RoofPick], text: str) -> RoofReading:
    """The roof of a signature on the same objects: under whatever numbers its faces have now, or the nearest to it.

    Raises RoofLost if objects or slopes are gone, RoofError if what is there is no ridge any more.
    """
    targets = [_target(pick.object, path, of) for of, (pick, path) in enumerate(_paths(where))]
    if not targets:
        raise RoofLost(say("The roof, or what it stands in, is gone. Pick the roof again."))
    planes = find_again(text, _slopes(targets), [target.frame for target in targets])
    return _reading(planes, tuple(where), targets)


def roof_shapes(where: Iterable[RoofPick]) -> list[Part.Shape]:
    """The whole shape of every object that a roof is read from, where it stands in the whole document.

    Raises RoofLost for objects that are gone, RoofError for what has no faces.
    """
    found = []
    for of, (pick, path) in enumerate(_paths(where)):
        target = _target(pick.object, path, of)
        shape = target.shape.copy()
        shape.Placement = target.above.multiply(shape.Placement)
        found.append(shape)
    return found


def turned(reading: RoofReading) -> RoofReading:
    """The same roof with left and right exchanged."""
    targets = [_target(pick.object, path, of) for of, (pick, path) in enumerate(_paths(reading.where))]
    return _reading(reading.planes.turned(), reading.where, targets)


def on_one_slope(reading: RoofReading, right: bool = False) -> RoofReading:
    """The left or the right slope of a roof for itself, for a vent that stands wholly on it; there it falls to the left."""
    targets = [_target(pick.object, path, of) for of, (pick, path) in enumerate(_paths(reading.where))]
    slope = reading.planes.right if right else reading.planes.left
    if slope is None:
        raise RoofError(say("The roof has one slope only, and that is the left one. Choose the left slope."))
    return _reading(_settled(one_slope(slope), targets), reading.where, targets)


def placement_on(planes: RoofPlanes, along: float = 0.0, from_end: str = MIDDLE, left: float = 0.0) -> FreeCAD.Placement:
    """A vent's global placement: see ``RoofPlanes.place``.  Raises RoofError for a place past the end of the ridge.

    ``left`` is the vent's ridge offset, if it stands astride the ridge.
    """
    return freecad_placement(planes.place(along, from_end, left))


# ---- from picks to objects


def _parted(path: str) -> tuple[str, str]:
    """The path of the object ("Link.Roof." or ""), and the element's name; since 1.0 a mapped name may stand between."""
    *names, element = path.split(".")
    return "".join(f"{name}." for name in names if name and not name.startswith(";")), element


def _by_object(picks: Iterable[RoofPick]) -> tuple[RoofPick, ...]:
    """Each root once, with each object below it once, in the order they were picked."""
    found: dict[str, tuple[FreeCAD.DocumentObject, list[str]]] = {}
    for pick in picks:
        try:
            _, paths = found.setdefault(pick.object.Name, (pick.object, []))
        except ReferenceError:
            raise RoofLost(say("What was picked has been deleted. Pick the roof again.")) from None
        for path in (_parted(each)[0] for each in pick.subpaths or ("",)):
            if path not in paths:
                paths.append(path)
    if not found:
        raise RoofError(say("Nothing is picked. {needed}.", needed=_NEEDED))
    return tuple(RoofPick(root, tuple(paths)) for root, paths in found.values())


def _paths(where: Iterable[RoofPick]) -> list[tuple[RoofPick, str]]:
    """Every object of ``where`` once: the number that a slope's ``of`` is."""
    return [(pick, path) for pick in where for path in pick.subpaths or ("",)]


def _target(root: FreeCAD.DocumentObject, path: str, of: int) -> _Target:
    """Raises RoofError for an object without a shape, RoofLost for one that is gone."""
    try:
        leaf = root.getSubObject(path, retType=1)
    except ReferenceError:
        leaf = None
    if leaf is None:
        raise RoofLost(say("The roof, or what it stands in, is gone. Pick the roof again."))
    linked = leaf.getLinkedObject(True)
    if linked.isDerivedFrom("Mesh::Feature"):
        raise RoofError(say("“{label}” is a mesh, which has no plane faces. Make a shape from it in the Part workbench, "
                            "refine it and convert it to a solid, or draw the two slopes on it; then pick those.",
                            label=leaf.Label))
    shape = root.getSubObject(path)
    if not isinstance(shape, Part.Shape) or shape.isNull():
        what = (say("a part that holds other objects") if leaf.hasExtension("App::GroupExtension") else
                say("an object without a shape"))
        raise RoofError(say("“{label}” is {what}. {needed}.", label=leaf.Label, what=what, needed=_NEEDED))
    if not shape.Faces:
        raise RoofError(say("“{label}” has no faces, and a roof is read from its faces. {needed}.", label=leaf.Label,
                            needed=_NEEDED))
    above = container_placement(root)
    # The path of a face, whether there is one or not: a link's own path leaves out the placement of what it links to.
    frame = above.multiply(root.getSubObject(f"{path}Face1", retType=3))
    patches = tuple(each.moved(_core_placement(above)) for each in patches_of(shape, of))
    return _Target(root, path, shape, above, patches, _core_placement(frame))


def _core_placement(place: FreeCAD.Placement) -> Placement:
    turn = place.Rotation
    x, y, z = (_vec(turn.multVec(FreeCAD.Vector(*axis))) for axis in ((1, 0, 0), (0, 1, 0), (0, 0, 1)))
    return Placement(_vec(place.Base), x, y, z)


def _vec(v: FreeCAD.Vector) -> Vec:
    return (v.x, v.y, v.z)


# ---- from shapes to plane faces


def patches_of(shape: Part.Shape, of: int = 0) -> list[Patch]:
    """The plane faces of a shape, with their numbers in it; curved ones are left out."""
    solid = bool(shape.Solids)
    inside_out = solid and shape.Volume < 0.0
    found = []
    for number, face in enumerate(shape.Faces, 1):
        normal = _plane_normal(face)
        if normal is None:
            continue
        if inside_out or (not solid and normal.z < 0.0):
            normal = normal.negative()
        edges = tuple(edge for edge in map(_straight, face.Edges) if edge)
        found.append(Patch(_vec(normal), _vec(face.CenterOfMass), face.Area, edges, of, number))
    return found


def _plane_normal(face: Part.Face) -> FreeCAD.Vector | None:
    """The unit normal that the face's orientation gives it; None for a curved face."""
    if not isinstance(face.Surface, Part.Plane) and not face.Surface.isPlanar(_FLATNESS):
        return None
    u1, u2, v1, v2 = face.ParameterRange
    return face.normalAt((u1 + u2) / 2.0, (v1 + v2) / 2.0).normalize()


def _straight(edge: Part.Edge) -> tuple[Vec, Vec] | None:
    """The ends of a straight edge."""
    if edge.Degenerated or len(edge.Vertexes) != 2:
        return None
    a, b = (vertex.Point for vertex in edge.Vertexes)
    if not isinstance(edge.Curve, Part.Line) and edge.Length - a.distanceToPoint(b) > _FLATNESS:
        return None
    return _vec(a), _vec(b)


def _slopes(targets: Iterable[_Target]) -> list[Patch]:
    return slopes_of(patch for target in targets for patch in target.patches)


# ---- what the picks mean


def _picked(targets: Sequence[_Target], wanted: Sequence[tuple[int, str]]) -> RoofPlanes:
    """The roof of elements on objects by number.  Raises RoofError, whose text does not name what was picked."""
    kinds = {_kind(element) for _, element in wanted}
    if len(kinds) > 1:
        raise RoofError(say("Faces, edges and whole objects are picked together. Pick two slopes, or the ridge alone, or "
                            "one whole roof."))
    readers: dict[str, Callable[[Sequence[_Target], Sequence[tuple[int, str]]], RoofPlanes]] = {
        "": lambda all_, _: roof_among(_slopes(all_)), "Face": _of_faces, "Edge": _of_edges}
    return readers[kinds.pop()](targets, wanted)


def _settled(planes: RoofPlanes, targets: Sequence[_Target]) -> RoofPlanes:
    """A flat roof's +X along its longest edge, to that side that is +X, or else +Y, in the object's own frame.

    So it does not depend on how the building is turned.
    """
    if planes.kind != FLAT:
        return planes
    frame = targets[planes.left.of].frame
    x, y, _ = frame.local_direction(longest_edge(planes.left))
    sign = math.copysign(1.0, x if abs(x) > 1e-6 else y)
    return one_slope(planes.left, scale(longest_edge(planes.left), sign))


def _kind(element: str) -> str:
    """"Face", "Edge", or "" for the whole object.  Raises RoofError for anything else."""
    if not element:
        return ""
    if element.startswith("?"):
        raise RoofLost(say("“{element}” is not there any more. Pick the roof again.", element=element[1:]))
    match = _ELEMENT.fullmatch(element)
    if not match:
        raise RoofError(say("“{element}” is neither a face nor an edge. {needed}.", element=brief(element), needed=_NEEDED))
    return match[1]


def _number(element: str, there: Sequence[Any]) -> int:
    """The number in an element's name.  Raises RoofLost if there are fewer."""
    number = int(element[4:])
    if number > len(there):
        raise RoofLost(say("there is no {element} any more. Pick the roof again.", element=element))
    return number


def _of_faces(targets: Sequence[_Target], wanted: Sequence[tuple[int, str]]) -> RoofPlanes:
    slopes = _slopes(targets)
    picked: list[Patch] = []
    for of, element in wanted:
        face = _slope_face(targets[of], element)
        slope = next(each for each in slopes if each.of == of and each.same_plane(face))
        if slope not in picked:
            picked.append(slope)
    if len(picked) > 2:
        raise RoofError(say("{count} slopes are picked. Pick the two that meet in the ridge.", count=len(picked)))
    if len(picked) == 2:
        return two_slopes(picked[0], picked[1])
    ridges = [] if picked[0].level else ridges_among([each for each in slopes if each.of == picked[0].of], picked[0])
    return ridges[0] if ridges else one_slope(picked[0])


def _slope_face(target: _Target, element: str) -> Patch:
    """A face that was picked.  Raises RoofError if it is curved, too steep, or looks down."""
    number = _number(element, target.shape.Faces)
    face = next((each for each in target.patches if each.number == number), None)
    if face is None:
        raise RoofError(say("{element} is curved, and a vent is cut to plane slopes. Pick plane faces, or draw planes "
                            "that touch the roof where the vent stands, and pick those.", element=element))
    if face.pitch > 180.0 - STEEPEST:
        raise RoofError(say("{element} looks down: it is the underside. Pick the faces of the covering, which look up.",
                            element=element))
    if face.pitch >= STEEPEST:
        raise RoofError(say("{element} stands at {pitch:.1f}°, as a wall or a gable does; a roof is less than "
                            "{steepest:g}°. Pick the slopes, which look up.", element=element, pitch=face.pitch,
                            steepest=STEEPEST))
    return face


def _of_edges(targets: Sequence[_Target], wanted: Sequence[tuple[int, str]]) -> RoofPlanes:
    """The roof of the first edge; others have to be on the same ridge, as those of two slabs are."""
    roofs = []
    for of, element in wanted:
        shape = targets[of].shape
        edge = _straight(shape.Edges[_number(element, shape.Edges) - 1])
        if edge is None:
            raise RoofError(say("{element} is curved, and a ridge is straight. {needed}.", element=element, needed=_NEEDED))
        above = _core_placement(targets[of].above)
        roofs.append(ridge_at((above.point(edge[0]), above.point(edge[1])), _slopes(targets)))
    if any(roof.slopes != roofs[0].slopes for roof in roofs):
        raise RoofError(say("The edges picked are not on one ridge. Pick one ridge alone."))
    return roofs[0]


def _named(targets: Sequence[_Target], wanted: Sequence[tuple[int, str]]) -> str:
    """What was picked, in words: “Roof” (Face1, Face2)."""
    words = []
    for of, target in enumerate(targets):
        elements = [brief(element) for number, element in wanted if number == of and element]
        elements = elements[:6] + ["…"] * (len(elements) > 6)
        words.append(f"{target.label} ({', '.join(elements)})" if elements else target.label)
    return joined(" and ", words)


def _reading(planes: RoofPlanes, where: tuple[RoofPick, ...], targets: Sequence[_Target]) -> RoofReading:
    frames = [target.frame for target in targets]
    return RoofReading(planes, where, signature(planes, frames))
