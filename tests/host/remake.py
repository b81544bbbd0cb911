# SPDX-License-Identifier: LGPL-2.1-or-later
"""Makes every solid again from cuts.json alone, as its schema describes it: blank, cuts in order, places.

It has FreeCAD's kernel and the file, and nothing of the program that wrote the file.
"""

from __future__ import annotations

import json
from collections.abc import Iterator
from functools import lru_cache
from typing import Any

import FreeCAD
import Part

Record = dict[str, Any]
#: How far beyond the blank a waste is drawn (mm).
BEYOND = 25.0


def blank(part: Record) -> Part.Shape:
    """The box that a part is cut from."""
    return Part.makeBox(*part["blank"])


def waste(cut: Record, part: Record) -> Part.Shape:
    """What a cut takes away, as far as it can matter."""
    if "bore" in cut:
        bore = cut["bore"]
        return Part.makeCylinder(bore["diameter"] / 2.0, bore["length"], FreeCAD.Vector(*bore["start"]),
                                 FreeCAD.Vector(*bore["direction"]))
    body = Part.makeBox(*(side + 2.0 * BEYOND for side in part["blank"]), FreeCAD.Vector(-BEYOND, -BEYOND, -BEYOND))
    for space in cut["waste"]:
        body = body.common(half_space(space, body.BoundBox))
    return body


def half_space(space: Record, box: FreeCAD.BoundBox) -> Part.Shape:
    """The points beyond a plane: a block that stands on it, greater than ``box``."""
    reach = 2.0 * box.DiagonalLength
    normal = FreeCAD.Vector(*space["normal"])
    foot = box.Center - normal * (normal.dot(box.Center) - space["offset"])
    block = Part.makeBox(2.0 * reach, 2.0 * reach, reach, FreeCAD.Vector(-reach, -reach, 0.0))
    block.Placement = FreeCAD.Placement(foot, FreeCAD.Rotation(FreeCAD.Vector(0, 0, 1), normal))
    return block


def steps(part: Record) -> Iterator[tuple[Record, Part.Shape, Part.Shape]]:
    """Each cut in the order listed, with the wood before it and after it."""
    woods = _woods(json.dumps([part["blank"], part["cuts"]]))
    return zip(part["cuts"], woods, woods[1:], strict=False)


@lru_cache(maxsize=1024)
def _woods(told: str) -> list[Part.Shape]:
    """The blank and the wood after each cut, of a part's blank and cuts as they stand in the file; made once."""
    size, cuts = json.loads(told)
    part = {"blank": size}
    woods = [blank(part)]
    for cut in cuts:
        woods.append(woods[-1].cut(waste(cut, part)))
    return woods


def remade(part: Record) -> Part.Shape:
    """The finished solid in the board frame."""
    wood = blank(part)
    for _, _, after in steps(part):
        wood = after
    return wood.removeSplitter()


def placed(shape: Part.Shape, piece: Record) -> Part.Shape:
    """The solid where it stands: p_assembly = origin + x·X + y·Y + z·Z."""
    at = piece["placement"]
    x, y, z, o = at["x"], at["y"], at["z"], at["origin"]
    copy = shape.copy()
    copy.Placement = FreeCAD.Placement(FreeCAD.Matrix(
        x[0], y[0], z[0], o[0], x[1], y[1], z[1], o[1], x[2], y[2], z[2], o[2], 0.0, 0.0, 0.0, 1.0))
    return copy
