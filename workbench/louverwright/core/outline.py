# SPDX-License-Identifier: LGPL-2.1-or-later
"""The faces of every piece where it stands, straight from the trimmed sticks: a picture while a value is dragged.

No boards, cuts, marks or joints are made, so it costs a fraction of ``layout``; the planes are the same.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache

from .cutting import Member, body_of
from .dimensions import sizes
from .geometry import Vec
from .kinds import BY_ID
from .layout import members
from .solid import Solid
from .spec import Spec


@dataclass(frozen=True)
class Outline:
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
    point = member.frame.point
    faces = tuple(tuple(point(p) for p in facet.points) for cell in _body(member) for facet in cell)
    return Outline(member.id, member.kind, BY_ID[member.kind].stage, member.side, faces)


@lru_cache(maxsize=2048)
def _body(member: Member) -> Solid:
    return body_of(member)
