# SPDX-License-Identifier: LGPL-2.1-or-later
"""The faces of every piece where it stands, straight from the trimmed sticks: a picture while a value is dragged.

No boards, cuts, marks or joints are made, so it costs a fraction of ``layout``; the planes are the same.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from functools import lru_cache
from typing import NamedTuple

from .cutting import Member, Stick, faces_of, stick_of
from .dimensions import sizes
from .geometry import Placement, Vec
from .kinds import BY_ID
from .layout import members
from .spec import Spec


@dataclass(frozen=True, eq=False)
class Mesh:
    """Corners (mm), each once, and convex faces as loops of corner numbers, anticlockwise from outside.

    Equal sticks have the very same mesh, so meshes are compared, and looked up, as objects.
    """

    points: tuple[Vec, ...]
    loops: tuple[tuple[int, ...], ...]


class Outline(NamedTuple):
    """One piece: its id, kind, stage and side, and its convex faces in the assembly frame."""

    id: str
    kind: str
    stage: str
    side: int
    mesh: Mesh

    @property
    def faces(self) -> Iterator[tuple[Vec, ...]]:
        """The corners of each face (mm, assembly frame, outside on the left)."""
        return (tuple(self.mesh.points[i] for i in loop) for loop in self.mesh.loops)


def outlines(spec: Spec) -> tuple[Outline, ...]:
    """Every piece that is made of a vent whose values are within their own limits.

    Raises LayoutError, ValueError or ArithmeticError for values that do not go together; ``checks`` says which.
    """
    return tuple(_outline(member) for member in members(spec, sizes(spec)) if not spec.wish(BY_ID[member.kind]).left_out)


def _outline(member: Member) -> Outline:
    mesh = _standing(_mesh(stick_of(member)), member.frame)
    return Outline(member.id, member.kind, BY_ID[member.kind].stage, member.side, mesh)


@lru_cache(maxsize=1024)
def _standing(own: Mesh, frame: Placement) -> Mesh:
    """A stick where it stands; one that a change leaves alone is not moved again."""
    return Mesh(tuple(map(frame.point, own.points)), own.loops)


@lru_cache(maxsize=512)
def _mesh(stick: Stick) -> Mesh:
    """A stick in its own frame: numbers only, which Python's search for garbage need not walk through."""
    return mesh_of(faces_of(stick))


def mesh_of(faces: tuple[tuple[Vec, ...], ...]) -> Mesh:
    """Faces by the numbers of their corners; corners that are the very same are one."""
    numbers = {p: i for i, p in enumerate(dict.fromkeys(p for face in faces for p in face))}
    return Mesh(tuple(numbers), tuple(tuple(map(numbers.__getitem__, face)) for face in faces))
