# SPDX-License-Identifier: LGPL-2.1-or-later
"""The rules of fit, measured on the cuts of an accepted vent, and not by the formulas that the checks go by."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from louverwright.core.assembly import DADO, NOTCH, Cut, Part
from louverwright.core.checks_louver import DADO_WOOD
from louverwright.core.dimensions import sizes
from louverwright.core.fastening import fastening_of
from louverwright.core.layout import layout
from louverwright.core.solid import box, remove
from louverwright.core.spec import Spec

#: Noise of floats (mm), and the share of a rafter's depth that a notch may take (common practice: a third).
NOISE, THIRD = 1e-3, 1.0 / 3.0
#: Nothing is cut thinner than mesh (mm).
THINNEST = 0.1
RAFTERS = ("roof.hip", "roof.jack", "roof.common")


def fit_faults(spec: Spec) -> list[str]:
    """What breaks a rule of fit; [] for a vent that keeps them all."""
    found: list[str] = []
    for part in layout(spec).parts:
        found += [f"{part.mark} ({part.name}): {fault}" for rule in (stock_faults, notch_faults, dado_faults, idle_faults)
                  for fault in rule(part, spec)]
    return found


def stock_faults(part: Part, spec: Spec) -> Iterator[str]:
    """Blanks that cannot be cut from their stock, and pieces that stick out of their blanks."""
    length, width, thickness = part.board.size
    stock = part.stock
    if length > max(stock.lengths) + NOISE or width > stock.width + NOISE or thickness > stock.thickness + NOISE:
        yield f"its blank {length:.2f} × {width:.2f} × {thickness:.2f} is larger than {stock.name}"
    if min(length, width, thickness) < THINNEST:
        yield f"its blank {length:.2f} × {width:.2f} × {thickness:.2f} is nothing to cut"


def idle_faults(part: Part, spec: Spec) -> Iterator[str]:
    """Saw cuts that leave no face, since others take all that they meet; so a level tail is long enough for its soffit.

    A face that only a joint takes away again is no fault: a lapped rail's mitre gives it its long point.
    """
    sawn = [cut for cut in part.board.cuts if len(cut.planes) == 1]
    solid = (box((0.0, 0.0, 0.0), part.board.size),)
    for cut in sawn:
        solid = remove(solid, cut.planes, cut.name)
    left = {facet.plane for cell in solid for facet in cell}
    for cut in sawn:
        if cut.planes[0] not in left:
            yield f"“{cut.name}” is sawn for nothing"


def reach_faults(spec: Spec) -> list[str]:
    """Stages that no screw holds on each other, and pieces whose joints all lack a screw, without a word of what is in the
    driver's way."""
    plan = fastening_of(spec, layout(spec))
    held = {name for each in plan if each.held for name in (each.first, each.second)}
    found = [f"{each.first} is not held to {each.second}, nor by anything else, and nothing is in a driver's way"
             for each in plan if not each.held and not each.blocked and not {each.first, each.second} <= held]
    for pair in (("base", "louver"), ("louver", "roof")):
        between = [each for each in plan if {name.split(".")[0] for name in (each.first, each.second)} == set(pair)]
        if not any(each.driven for each in between):
            found.append(f"no screw holds {pair[0]} and {pair[1]} together")
    return found


def corner(cut: Cut) -> tuple[float, float]:
    """Where the two planes of a notch meet, along and across the board (mm)."""
    (a, b), (c, d) = ((plane.normal[0], plane.normal[1]) for plane in cut.planes)
    p, q = (plane.offset for plane in cut.planes)
    whole = a * d - b * c
    return (p * d - b * q) / whole, (a * q - p * c) / whole


def notch_faults(part: Part, spec: Spec) -> Iterator[str]:
    """A notch over the plate deeper than a third of the rafter, or whose seat does not lie within it."""
    if part.kind.id not in RAFTERS:
        return
    depth = sizes(spec).cap.rafter_d
    notches = [cut for cut in part.board.cuts if cut.kind == NOTCH and cut.partner == "roof.plate" and len(cut.planes) == 2
               and all(abs(plane.normal[2]) < 1e-9 for plane in cut.planes)]
    for cut in notches:
        x, y = corner(cut)
        if y > depth * THIRD + NOISE:
            yield f"“{cut.name}” is {y:.3f} deep in {depth:.3f}"
        if not (0.0 < x < part.board.length and y > 0.0):
            yield f"“{cut.name}” lies off the board, at {x:.3f}, {y:.3f}"


def dado_faults(part: Part, spec: Spec) -> Iterator[str]:
    """Dados for slats with less wood between them, plumb, than the checks ask for, or that are not as wide as their fit."""
    slats = {slat.board.thickness for slat in layout(spec).of_kind("louver.slat")}
    dados: dict[tuple[float, ...], list[tuple[float, float, float]]] = {}
    for cut in part.board.cuts:
        flanks = [plane for plane in cut.planes if abs(plane.normal[2]) < 1e-9]
        if cut.kind != DADO or cut.partner != "louver.slat" or len(flanks) != 2:
            continue
        first, other = sorted(flanks, key=lambda plane: plane.normal[0])
        way = tuple(round(each, 6) for each in other.normal)
        face = tuple(round(each, 6) for plane in cut.planes if plane not in flanks for each in plane.normal)
        low, high = sorted((other.offset, -first.offset))
        if slats and not any(abs(high - low - slat - spec.dado_fit) < NOISE for slat in slats):
            yield f"“{cut.name}” is {high - low:.3f} wide for slats of {sorted(slats)}"
        dados.setdefault((*way, *face), []).append((low, high, abs(other.normal[0])))
    for rows in dados.values():
        rows.sort()
        for (_, end, along), (begin, _, _) in pairwise(rows):
            wood = (begin - end) / along
            if wood < DADO_WOOD - spec.dado_fit / along - NOISE:
                yield f"only {wood:.3f} of wood between two dados"
