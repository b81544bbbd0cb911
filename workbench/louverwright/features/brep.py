# SPDX-License-Identifier: LGPL-2.1-or-later
"""A core shell as the text in which OpenCASCADE stores shapes (its BREP format, version 1, described in its user guide).

Read from it, a solid has each corner and edge once, shared by its faces, and the faces in the shell's order; nothing is
searched for, sewn or tried, which is what takes the kernel's time when it is given single faces.
"""

from __future__ import annotations

from itertools import pairwise

from ..core.faces import Face, Shell
from ..core.geometry import Vec, cross, sub, unit
from ..core.geometry import length as size

#: The kernel's own least tolerance (mm).
TOLERANCE = 1e-7
#: What a tolerance found is widened by, so that rounding in the text cannot pass it.
ROUND = 1.5

_HEAD = "\nCASCADE Topology V1, (c) Matra-Datavision\nLocations 0\nCurve2ds 0\n"
_FLAGS = {"Ve": "0101101", "Ed": "0101000", "Wi": "0101100", "Fa": "0111000", "Sh": "0101100", "So": "1100000"}


def brep_text(shell: Shell) -> str | None:
    """The solid inside a shell (mm); None for one with an edge in which not just two faces meet."""
    edges = shell.edges
    if any(len(faces) != 2 for faces in edges.values()):
        return None
    off = _tolerances(shell)
    number_of = {edge: len(shell.points) + i for i, edge in enumerate(edges)}
    curves, shapes = [], [f"Ve\n{off[i]!r}\n{_told(p)}\n0 0\n\n{_FLAGS['Ve']}\n*" for i, p in enumerate(shell.points)]
    first_wire = len(shell.points) + len(edges)
    count = first_wire + sum(len(face.loops) for face in shell.faces) + len(shell.faces) + 2

    def named(number: int, sense: str = "+") -> str:
        """A shape by its place in the list, which the text counts from the end."""
        return f"{sense}{count - number} 0"

    for a, b in number_of:
        way = sub(shell.points[b], shell.points[a])
        curves.append(f"1 {_told(shell.points[a])} {_told(unit(way))} ")
        shapes.append(f"Ed\n {max(off[a], off[b])!r} 1 1 0\n1  {len(curves)} 0 0 {size(way)!r}\n0\n\n{_FLAGS['Ed']}\n"
                      f"{named(a)} {named(b, '-')} *")
    planes, faces = [], []
    for face in shell.faces:
        wires = []
        for loop in face.loops:
            steps = pairwise((*loop, loop[0]))
            told = " ".join(named(number_of[min(step), max(step)], "+" if step[0] < step[1] else "-") for step in steps)
            wires.append(named(len(shapes)))
            shapes.append(f"Wi\n\n{_FLAGS['Wi']}\n{told} *")
        planes.append(_plane(shell, face))
        faces.append(named(len(shapes)))
        shapes.append(f"Fa\n0  {TOLERANCE!r} {len(planes)} 0\n\n{_FLAGS['Fa']}\n{' '.join(wires)} *")
    shapes.append(f"Sh\n\n{_FLAGS['Sh']}\n{' '.join(faces)} *")
    shapes.append(f"So\n\n{_FLAGS['So']}\n{named(len(shapes) - 1)} *")
    return "\n".join((_HEAD + f"Curves {len(curves)}", *curves, "Polygon3D 0\nPolygonOnTriangulations 0",
                      f"Surfaces {len(planes)}", *planes, f"Triangulations 0\n\nTShapes {len(shapes)}", *shapes, "\n+1 0"))


def _told(v: Vec) -> str:
    return f"{v[0]!r} {v[1]!r} {v[2]!r}"


def _plane(shell: Shell, face: Face) -> str:
    """A plane: a point, its normal, and its own x and y."""
    start, way = shell.points[face.loops[0][0]], face.plane.normal
    side = sub(shell.points[face.loops[0][1]], start)
    y = unit(cross(way, side))
    return f"1 {_told(start)} {_told(way)} {_told(cross(y, way))} {_told(y)} "


def _tolerances(shell: Shell) -> list[float]:
    """For each corner how far it is off the planes of its faces, as these are written (mm), at least the kernel's own."""
    off = [TOLERANCE] * len(shell.points)
    for face in shell.faces:
        n, at = face.plane.normal, shell.points[face.loops[0][0]]
        for loop in face.loops:
            for i in loop:
                d = sub(shell.points[i], at)
                off[i] = max(off[i], ROUND * abs(d[0] * n[0] + d[1] * n[1] + d[2] * n[2]))
    return off
