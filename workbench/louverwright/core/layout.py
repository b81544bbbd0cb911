# SPDX-License-Identifier: LGPL-2.1-or-later
"""``layout(spec) → Assembly``: every part of the vent, trimmed by the assembly's planes."""

from __future__ import annotations

from functools import lru_cache

from .assembly import Assembly
from .base import base_members
from .cap import roof_members
from .cutting import Member, board_of
from .dimensions import sizes
from .joints import joints_of
from .kinds import KINDS
from .louver import louver_members
from .marks import Placed, parts_of
from .part_wish import Wishes
from .sizes import Sizes
from .spec import Spec


def members(spec: Spec, at: Sizes) -> list[Member]:
    """Every stick of the vent, uncut."""
    return [*base_members(spec, at), *louver_members(spec, at), *roof_members(spec, at)]


@lru_cache(maxsize=16)
def layout(spec: Spec) -> Assembly:
    """The assembly of a checked spec (see ``checks.check``): marks and joints of the whole vent, whatever is left out.

    Raises LayoutError where the planes leave nothing of a part; for a spec that passed the checks
    that would be a fault of this program.
    """
    at = sizes(spec)
    placed = [Placed(member, *board_of(member), at.plan.v(member.side)) for member in members(spec, at)]
    parts = parts_of(placed, {kind.id: spec.stock_of(kind) for kind in KINDS})
    made = tuple(part for part in parts if not spec.wish(part.kind).left_out)
    left_out = tuple(part for part in parts if spec.wish(part.kind).left_out)
    return Assembly(made, lambda: joints_of(parts, spec), left_out)


def wishes_in_use(spec: Spec) -> Wishes:
    """The wishes for kinds that the vent has, by their ids in the kind table's order."""
    there = {part.kind.id for part in layout(spec).whole}
    return {kind.id: spec.parts[kind.id] for kind in KINDS if kind.id in there and kind.id in spec.parts}
