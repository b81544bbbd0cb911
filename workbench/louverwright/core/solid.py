# SPDX-License-Identifier: LGPL-2.1-or-later
"""A piece of wood with plane faces, kept as convex cells that share no volume.

Cutting only ever takes away the common part of some half-spaces (one for a saw
cut, three for a dado, two for a bird's-mouth), so every solid of the vent is a
box less a few convex wastes.  Splitting the cells by the waste's planes keeps
all of it exact: volume, centre of gravity, extents and corners need no kernel.
Round holes are not part of this; see ``board.py``.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from typing import NamedTuple

from .geometry import Plane, Vec, add, cross, dot, newell, scale, sub, unit

#: Two points nearer than this (mm) are one: far below any saw, far above rounding of floats.
COINCIDENT = 1e-6


class Facet(NamedTuple):
    """One convex face of a cell: outward plane, the name of what made it, corners anticlockwise from outside."""

    plane: Plane
    name: str
    points: tuple[Vec, ...]


Cell = tuple[Facet, ...]
Solid = tuple[Cell, ...]

#: The names of a blank's six faces in the board frame (saw-table position: marked face up).
REFERENCE_EDGE, FAR_EDGE = "reference edge", "far edge"
HIDDEN_FACE, MARKED_FACE = "hidden face", "marked face"
END_A, END_B = "end A", "end B"


def box(low: Vec, high: Vec) -> Cell:
    """The block between two opposite corners (mm), its faces named as a blank's."""
    (x0, y0, z0), (x1, y1, z1) = low, high
    a, b, c, d = (x0, y0, z0), (x1, y0, z0), (x1, y1, z0), (x0, y1, z0)
    e, f, g, h = (x0, y0, z1), (x1, y0, z1), (x1, y1, z1), (x0, y1, z1)
    return (
        Facet(Plane((-1.0, 0.0, 0.0), -x0), END_A, (a, e, h, d)),
        Facet(Plane((1.0, 0.0, 0.0), x1), END_B, (b, c, g, f)),
        Facet(Plane((0.0, -1.0, 0.0), -y0), REFERENCE_EDGE, (a, b, f, e)),
        Facet(Plane((0.0, 1.0, 0.0), y1), FAR_EDGE, (d, h, g, c)),
        Facet(Plane((0.0, 0.0, -1.0), -z0), HIDDEN_FACE, (a, d, c, b)),
        Facet(Plane((0.0, 0.0, 1.0), z1), MARKED_FACE, (e, f, g, h)),
    )


def clip(cell: Cell, plane: Plane, name: str) -> Cell | None:
    """What of a cell lies on the kept side of ``plane``; the new face is called ``name``.

    Returns the cell itself when nothing is cut and None when nothing is left.
    """
    levels = _levels(cell, plane)
    if max(map(max, levels)) <= COINCIDENT:
        return cell
    if min(map(min, levels)) >= -COINCIDENT:
        return None
    return _kept_part(cell, levels, plane, name, {})


def split(cell: Cell, plane: Plane, name: str) -> tuple[Cell | None, Cell | None]:
    """What of a cell lies on the kept side of ``plane`` and what in its waste, with the very same corners between them.

    The new faces are called ``name``.  One is None and the other the cell itself where the plane does not cut it; a cell
    thinner than COINCIDENT counts as kept.
    """
    levels = _levels(cell, plane)
    if max(map(max, levels)) <= COINCIDENT:
        return cell, None
    if min(map(min, levels)) >= -COINCIDENT:
        return None, cell
    crossings: dict[tuple[Vec, Vec], Vec] = {}
    beyond = [[-level for level in each] for each in levels]
    return _kept_part(cell, levels, plane, name, crossings), _kept_part(cell, beyond, plane.flipped(), name, crossings)


def _levels(cell: Cell, plane: Plane) -> list[list[float]]:
    """How far each corner of each facet lies inside the waste (mm)."""
    (nx, ny, nz), offset = plane.normal, plane.offset
    return [[nx * x + ny * y + nz * z - offset for x, y, z in facet.points] for facet in cell]


def _kept_part(cell: Cell, heights: list[list[float]], plane: Plane, name: str,
               crossings: dict[tuple[Vec, Vec], Vec]) -> Cell:
    """What of a cell lies on the kept side of a plane that cuts it; ``heights`` are those of its corners (mm)."""
    kept: list[Facet] = []
    rim: list[Vec] = []
    for facet, levels in zip(cell, heights, strict=True):
        if min(levels) > COINCIDENT:
            continue
        rim += [p for p, height in zip(facet.points, levels, strict=True) if -COINCIDENT <= height <= COINCIDENT]
        if max(levels) > COINCIDENT:
            points = _clip_polygon(facet.points, levels, crossings)
            if len(points) < 3:
                continue
            facet = Facet(facet.plane, facet.name, points)
        kept.append(facet)
    cap = _around([*rim, *crossings.values()], plane.normal)
    if len(cap) >= 3:
        kept.append(Facet(plane, name, cap))
    return tuple(kept)


def _clip_polygon(points: tuple[Vec, ...], levels: list[float],
                  crossings: dict[tuple[Vec, Vec], Vec]) -> tuple[Vec, ...]:
    """A convex polygon's kept part; crossings are shared, so that neighbours get the very same corner.

    ``levels`` holds the height of each of ``points`` over the plane (mm).
    """
    out: list[Vec] = []
    a, ha = points[-1], levels[-1]
    for b, hb in zip(points, levels, strict=True):
        if (ha < -COINCIDENT and hb > COINCIDENT) or (ha > COINCIDENT and hb < -COINCIDENT):
            low, high, h, k = (a, b, ha, hb) if a < b else (b, a, hb, ha)
            corner = crossings.get((low, high))
            if corner is None:
                share, (x, y, z), (u, v, w) = h / (h - k), low, high
                corner = crossings[low, high] = (x + (u - x) * share, y + (v - y) * share, z + (w - z) * share)
            out.append(corner)
        if hb <= COINCIDENT:
            out.append(b)
        a, ha = b, hb
    return tuple(dict.fromkeys(out))


def _around(points: list[Vec], normal: Vec) -> tuple[Vec, ...]:
    """Points of a convex plane polygon put in order, anticlockwise about ``normal``."""
    distinct: list[Vec] = []
    for p in points:
        x, y, z = p
        for q in distinct:
            if abs(x - q[0]) <= COINCIDENT and abs(y - q[1]) <= COINCIDENT and abs(z - q[2]) <= COINCIDENT:
                break
        else:
            distinct.append(p)
    if len(distinct) < 3:
        return ()
    cx, cy, cz = scale(_sum(distinct), 1.0 / len(distinct))
    fx, fy, fz = first = unit(sub(distinct[0], (cx, cy, cz)))
    sx, sy, sz = cross(normal, first)

    def turn(p: Vec) -> float:
        x, y, z = p[0] - cx, p[1] - cy, p[2] - cz
        return math.atan2(x * sx + y * sy + z * sz, x * fx + y * fy + z * fz)

    distinct.sort(key=turn)
    return tuple(distinct)


def _sum(points: Iterable[Vec]) -> Vec:
    total = (0.0, 0.0, 0.0)
    for p in points:
        total = add(total, p)
    return total


def waste_name(name: str, index: int, count: int) -> str:
    """The name of the face that plane ``index`` of a cut leaves; a single saw cut keeps the cut's own name."""
    return name if count == 1 else f"{name}/{index + 1}"


def remove(solid: Solid, waste: Sequence[Plane], name: str) -> Solid:
    """The solid less the common part of the half-spaces beyond every plane of ``waste``."""
    out: list[Cell] = []
    for cell in solid:
        out.extend(_remove_from_cell(cell, waste, name))
    return tuple(out)


def _remove_from_cell(cell: Cell, waste: Sequence[Plane], name: str) -> list[Cell]:
    if any(_spares(plane, cell) for plane in waste):    # most often: a dado has to do with few cells of a long stile
        return [cell]
    pieces: list[Cell] = []
    rest = cell
    for i, plane in enumerate(waste):
        outside, beyond = split(rest, plane, waste_name(name, i, len(waste)))
        if beyond is None:
            return [cell]
        if outside is not None:
            pieces.append(outside)
        rest = beyond
    return pieces


def _spares(plane: Plane, cell: Cell) -> bool:
    """Whether all of a cell lies on the kept side of a plane."""
    (nx, ny, nz), most = plane.normal, plane.offset + COINCIDENT
    for facet in cell:
        for x, y, z in facet.points:
            if nx * x + ny * y + nz * z > most:
                return False
    return True


def common(cell: Cell, planes: Sequence[Plane]) -> Cell | None:
    """The part of a cell that lies beyond every plane (inside the waste), or None."""
    rest: Cell | None = cell
    for plane in planes:
        if rest is None:
            return None
        rest = clip(rest, plane.flipped(), "")
    return rest


def needed_planes(cell: Cell, waste: Sequence[Plane]) -> tuple[Plane, ...]:
    """The planes of a waste that really bound it inside ``cell``; () when it takes nothing away.

    A saddle over the ridge is one plane for a part that lies on one slope and a
    V for a part that straddles the ridge: this is where the one becomes the other.
    A plane is needed where the waste has a face on it: there is wood before that face, which no other plane spares.
    """
    names = [waste_name("the waste", number, len(waste)) for number in range(len(waste))]
    taken: Cell | None = cell
    for plane, name in zip(waste, names, strict=True):
        taken = clip(taken, plane.flipped(), name) if taken else None
    if taken is None:
        return ()
    faces = {facet.name for facet in taken}
    return tuple(plane for plane, name in zip(waste, names, strict=True) if name in faces) or tuple(waste[-1:])


def corners(solid: Solid) -> list[Vec]:
    """Every corner of every cell, each once (exact repeats only)."""
    return list(dict.fromkeys(p for cell in solid for facet in cell for p in facet.points))


def extents(solid: Solid) -> tuple[Vec, Vec]:
    """The lowest and the highest x, y, z of a solid (mm)."""
    points = corners(solid)
    xs, ys, zs = zip(*points, strict=True)
    return (min(xs), min(ys), min(zs)), (max(xs), max(ys), max(zs))


def volume_and_centre(solid: Solid) -> tuple[float, Vec]:
    """Volume (mm³) and centre of gravity (mm), by tetrahedra from a corner of each cell."""
    total, moment = 0.0, (0.0, 0.0, 0.0)
    for cell in solid:
        apex = cell[0].points[0]
        for facet in cell:
            for i in range(1, len(facet.points) - 1):
                a, b, c = facet.points[0], facet.points[i], facet.points[i + 1]
                v = dot(sub(a, apex), cross(sub(b, apex), sub(c, apex))) / 6.0
                total += v
                moment = add(moment, scale(add(add(apex, a), add(b, c)), v / 4.0))
    return total, scale(moment, 1.0 / total)


def surface_area(points: tuple[Vec, ...]) -> float:
    """Area (mm²) of a plane polygon."""
    area = newell(points)
    return math.sqrt(dot(area, area)) / 2.0
