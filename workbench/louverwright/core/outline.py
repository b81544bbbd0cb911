# SPDX-License-Identifier: LGPL-2.1-or-later
"""The faces of every piece where it stands, straight from the trimmed sticks: a picture while a value is dragged.

No boards, cuts, marks or joints are made, so it costs a fraction of ``layout``; the planes are the same.
"""

from __future__ import annotations

from functools import lru_cache
from typing import NamedTuple

from .cutting import Member, Stick, faces_of, stick_of
from .dimensions import sizes
from .geometry import Placement, Vec
from .kinds import BY_ID
from .layout import members
from .spec import Spec


class Outline(NamedTuple):
    """One piece: its id, kind, stage and side, and its convex faces (corners in mm, assembly frame, outside on the left)."""

    id: str
    kind: str
    stage: str
    side: int
    faces: tuple[tuple[Vec, ...], ...]


def outlines(spec: Spec) -> tuple[Outline, ...]:
    """Every piece that is made of a vent whose values are within their own limits.

    Raises LayoutError, ValueError or ArithmeticError for values that do not go together; ``checks`` says which.
    """
    return tuple(_outline(member) for member in members(spec, sizes(spec)) if not spec.wish(BY_ID[member.kind]).left_out)


def _outline(member: Member) -> Outline:
    return Outline(member.id, member.kind, BY_ID[member.kind].stage, member.side, _faces(stick_of(member), member.frame))


@lru_cache(maxsize=1024)
def _faces(stick: Stick, frame: Placement) -> tuple[tuple[Vec, ...], ...]:
    """The faces of a stick where it stands; one that a change leaves alone is not moved again."""
    point = frame.point
    return tuple(tuple(map(point, face)) for face in _own_faces(stick))


@lru_cache(maxsize=512)
def _own_faces(stick: Stick) -> tuple[tuple[Vec, ...], ...]:
    """The faces of a stick in its own frame: points only, which Python's search for garbage need not walk through."""
    return faces_of(stick)
