# SPDX-License-Identifier: LGPL-2.1-or-later
"""Surfaces of the pieces as they are made: what is primed and what is painted.  All in mm².

Primed is every surface but what is glued, left for the covering, or mesh; painted is what air and rain reach of the parts
that are seen from outside.  Bores are not taken off.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache

from .assembly import GLUED, Assembly, Part, board_shell
from .geometry import length, newell
from .joints import matches
from .seams import seams
from .solid import HIDDEN_FACE, MARKED_FACE

#: Families of kinds that are seen from outside and so painted over the primer (common practice).
PAINTED = ("base.cladding base.corner louver.sill louver.stile louver.mullion louver.slat louver.head louver.ring louver.trim "
           "louver.frieze roof.soffit roof.fascia roof.barge roof.lookout roof.gable.board roof.gable.sill roof.gable.stile "
           "roof.gable.slat roof.gable.peak roof.gable.apron roof.sheathing")
#: Families whose marked face is left bare for the covering, and of which only edges are painted.
COVERED = "roof.sheathing"


@dataclass(frozen=True)
class Surface:
    """A part's surfaces, all its pieces together: the whole, what is glued, what is primed and what is painted (mm²)."""

    part: Part
    whole: float
    glued: float
    primed: float
    painted: float


def surface_of(part: Part) -> dict[str, float]:
    """The area of a finished board's faces by the name of what made them (mm²); bores are not taken off."""
    shell = board_shell(part.board)
    areas: dict[str, float] = {}
    for face in shell.faces:
        outline, *holes = (length(newell(tuple(shell.points[i] for i in loop))) / 2.0 for loop in face.loops)
        areas[face.name] = areas.get(face.name, 0.0) + outline - sum(holes)
    return areas


@lru_cache(maxsize=8)
def surfaces(assembly: Assembly) -> tuple[Surface, ...]:
    """Every part that is made, in the order of the parts."""
    glued, touched = _contacts(assembly)
    return tuple(_surface(part, glued, touched) for part in assembly.parts)


def _contacts(assembly: Assembly) -> tuple[dict[str, float], dict[str, float]]:
    """How much of each piece is glued, and how much of it touches another (mm²)."""
    glued: dict[str, float] = {}
    touched: dict[str, float] = {}
    for seam in seams(assembly):
        for piece in (seam.joint.first, seam.joint.second):
            if not seam.joint.gap:
                touched[piece] = touched.get(piece, 0.0) + seam.area
            if seam.joint.kind == GLUED:
                glued[piece] = glued.get(piece, 0.0) + seam.area
    return glued, touched


def _surface(part: Part, glued: dict[str, float], touched: dict[str, float]) -> Surface:
    areas = surface_of(part)
    one = sum(areas.values())
    whole = one * part.count
    bare, met = (sum(each.get(piece.id, 0.0) for piece in part.pieces) for each in (glued, touched))
    if part.stock.form == "mesh":
        return Surface(part, whole, bare, 0.0, 0.0)
    if matches(part.kind.id, COVERED):
        edges = sum(area for name, area in areas.items() if name not in (MARKED_FACE, HIDDEN_FACE)) * part.count
        return Surface(part, whole, bare, whole - areas[MARKED_FACE] * part.count - bare, edges)
    painted = max(0.0, whole - met) if matches(part.kind.id, PAINTED) else 0.0
    return Surface(part, whole, bare, whole - bare, painted)


def litres(area: float, coats: int, coverage: float) -> float:
    """Litres for an area (mm²) in so many coats, at ``coverage`` m² to a litre and coat."""
    return area * 1e-6 * coats / coverage
