# SPDX-License-Identifier: LGPL-2.1-or-later
"""Cuts the rough opening of a vent, or of all vents of its row, out of the shapes of a roof; touches no object."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import FreeCAD
import Part

from ..core.dimensions import sizes
from ..core.faces import shell_of
from ..core.figures import air_report
from ..core.geometry import Vec
from ..core.roof_opening import (
    LEFT_STANDING,
    OpeningError,
    Spared,
    clear_area,
    clear_pieces,
    depth_under,
    outline,
    ridge_board,
    shadow,
    shafts,
)
from ..core.row import spacing, vents_alike
from ..core.saying import Text, say
from ..core.sizes import Sizes
from ..core.sizing import AirReport
from ..core.solid import Solid
from ..core.spec import Spec, length_text
from .shapes import shell_shape
from .standing import container_placement, global_placement

#: A roof that goes on for longer than this (plumb, mm) is the solid model of a whole building, or something stands under it.
DEEPEST = 600.0
#: How far past the underside of a roof the opening is carried, so that nothing is left of it (mm).
PAST = 1.0
#: Of points on curved faces (mm).
_CHORD = 0.5


@dataclass(frozen=True)
class HowToCut:
    """Thickness of a ridge board (mm, 0 for none), what becomes of it, drawn boards not to be cut, and the opening's depth
    (plumb, mm; 0 for as thick as the roof is)."""

    board: float = 0.0
    rule: str = LEFT_STANDING
    boards: tuple[FreeCAD.DocumentObject, ...] = ()
    depth: float = 0.0


@dataclass(frozen=True)
class RoofCut:
    """A roof with its opening in global coordinates, the areas of one vent (mm²), how deep it was cut (mm), and in words."""

    shape: Part.Shape
    clear_area: float
    louver_area: float
    depth: float
    done: Text
    compared: Text


def cut_roof(vent: FreeCAD.DocumentObject, spec: Spec, roofs: Sequence[Part.Shape], how: HowToCut) -> RoofCut:
    """The roof's shapes (global) with the opening for a vent cut into them; several become one compound.

    Raises OpeningError for an opening that leaves or cuts nothing, or would cut what must not be.
    """
    at, roofs = sizes(spec), [_right_way(roof) for roof in roofs]
    frames = frames_of(vent, spec)
    cleared = [clear_pieces(outline(at, float(spec.opening_margin)), _spared(at, how, frame), how.rule)
               for frame in frames]
    depth, done = _depth(at, roofs, frames, cleared, how.depth)
    tools = [tool for frame, pieces in zip(frames, cleared, strict=True) for tool in _tools(at, frame, pieces, depth)]
    shape = _joined([_without(roof, tools) for roof in roofs])
    if not shape.Faces:
        raise OpeningError(say("The opening would leave nothing of the roof, which is smaller than the opening. Pick the "
                               "whole roof for the vent, or make the vent narrower."))
    clear, air = min(map(clear_area, cleared)), air_report(spec)
    return RoofCut(shape, clear, air.louvers, depth, done, compared(clear, air))


def frames_of(vent: FreeCAD.DocumentObject, spec: Spec) -> list[FreeCAD.Placement]:
    """Where the vent and the others of its row stand in the whole document."""
    place, step = global_placement(vent), spacing(spec)
    return [place.multiply(FreeCAD.Placement(FreeCAD.Vector(number * step, 0.0, 0.0), FreeCAD.Rotation()))
            for number in range(vents_alike(spec))]


def _right_way(shape: Part.Shape) -> Part.Shape:
    """The shape with its solids' insides inside, as booleans want them."""
    if not shape.Solids or shape.Volume > 0.0:
        return shape
    shape = shape.copy()
    shape.complement()
    return shape


# ---- what must not be cut


def _spared(at: Sizes, how: HowToCut, frame: FreeCAD.Placement) -> tuple[Spared, ...]:
    """The ridge board and all drawn boards, as a vent in its frame sees them."""
    found = ridge_board(at.roof, how.board)
    for board in how.boards:
        for body in bodies_of(board):
            corners = [local_point(frame, point) for point in body.tessellate(_CHORD)[0]]
            found += shadow(say("“{name}”", name=board.Label), corners)
    return found


def bodies_of(board: FreeCAD.DocumentObject) -> list[Part.Shape]:
    """The solids of an object, or all of one that has none, where they stand in the whole document.

    Raises OpeningError for an object without a shape.
    """
    shape = Part.getShape(board)
    if shape.isNull() or not shape.Faces:
        raise OpeningError(say("“{name}”, which is not to be cut, has no faces. Take it off the list RidgeBoards, and put the "
                               "drawn board itself there.", name=board.Label))
    shape = shape.copy()
    shape.Placement = container_placement(board).multiply(shape.Placement)
    return list(shape.Solids) or [shape]


def local_point(frame: FreeCAD.Placement, point: FreeCAD.Vector) -> Vec:
    """A point of the whole document as a vent in its frame sees it."""
    p = frame.inverse().multVec(point)
    return (p.x, p.y, p.z)


# ---- cutting


def _depth(at: Sizes, roofs: Sequence[Part.Shape], frames: Sequence[FreeCAD.Placement], cleared: Sequence[Solid],
           wanted: float) -> tuple[float, Text]:
    """How deep to cut (plumb, mm), and that in words.  Raises OpeningError if there is nothing to cut."""
    deepest: list[float] = []
    for frame, pieces in zip(frames, cleared, strict=True):
        for tool in _tools(at, frame, pieces, wanted or DEEPEST):
            for found in (leaf.common(tool) for roof in roofs for leaf in _leaves(roof)):
                deepest += [depth_under(at.roof, local_point(frame, point)) for point in found.tessellate(_CHORD)[0]]
    if not deepest:
        raise OpeningError(say("The opening cuts nothing: there is no roof inside the vent's legs, or it is open there "
                               "already. Move the vent onto the roof, or delete the opening."))
    thick = max(0.0, *deepest)
    if wanted:
        return wanted, say("Cut {depth} deep, plumb, as Depth says.", depth=length_text(wanted))
    if thick > DEEPEST - PAST:
        return DEEPEST, say("The roof goes on for more than {depth} under the opening, as a building in one solid does: cut "
                            "so deep, plumb. Depth takes another.", depth=length_text(DEEPEST))
    if thick < PAST:
        return thick + PAST, say("Cut through the roof, which is drawn without a thickness.")
    return thick + PAST, say("Cut through the roof, which is {depth} thick, plumb.", depth=length_text(thick))


def _tools(at: Sizes, frame: FreeCAD.Placement, pieces: Solid, depth: float) -> list[Part.Shape]:
    """The solids to cut away, in global coordinates."""
    return [shell_shape(shell_of(cells)).transformed(frame.toMatrix()) for cells in shafts(at.roof, pieces, depth)]


def _without(roof: Part.Shape, tools: Sequence[Part.Shape]) -> Part.Shape:
    """A shape less others; a solid that stays in one is one.

    The members of a compound are cut one by one, for booleans want no arguments that overlap themselves.
    """
    if roof.ShapeType == "Compound":
        return Part.Compound([rest for each in roof.childShapes() if not (rest := _without(each, tools)).isNull()])
    if not any(roof.BoundBox.intersect(tool.BoundBox) for tool in tools):
        return roof
    rest = roof.cut(tuple(tools))
    return rest.Solids[0] if roof.ShapeType == "Solid" and len(rest.Solids) == 1 else rest


def _leaves(shape: Part.Shape) -> list[Part.Shape]:
    """The members of a compound, of those that are compounds their members; any other shape itself."""
    if shape.ShapeType != "Compound":
        return [shape]
    return [leaf for child in shape.childShapes() for leaf in _leaves(child)]


def _joined(shapes: Sequence[Part.Shape]) -> Part.Shape:
    return shapes[0] if len(shapes) == 1 else Part.Compound(list(shapes))


# ---- in words


def compared(clear: float, air: AirReport) -> Text:
    """The clear area of an opening (mm²) against its vent's louvers, and what is narrowest on the air's way."""
    way = AirReport(air.louvers, air.throat, clear, air.target)
    verdict = (say("the opening is narrower than the louvers and holds the air back. Set a smaller opening margin, or count "
                   "on the opening's area.") if clear < air.louvers else
               say("the opening is no narrower than the louvers; narrowest on the air's way: {narrowest}.",
                   narrowest=say(way.narrowest)))
    return say("Clear opening {opening}, louvers {louvers}: {verdict}", opening=_square_metres(clear),
               louvers=_square_metres(air.louvers), verdict=verdict)


def _square_metres(area: float) -> str:
    return f"{area / 1e6:.3f} m²"
