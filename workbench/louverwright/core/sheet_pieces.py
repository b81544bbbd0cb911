# SPDX-License-Identifier: LGPL-2.1-or-later
"""A part as it is laid on a sheet: the corners of its solid and the planes of its bevelled sides."""

from __future__ import annotations

from .assembly import Part, board_shell
from .geometry import dot, sub
from .sheet_plan import NEAR, TRUE, SheetPiece


def sheet_piece(part: Part) -> SheetPiece:
    """The part's finished board, its lowest corner at (0, 0, 0); a cut is a side where the whole board lies behind it."""
    shell = board_shell(part.board)
    x, y, z = (min(p[i] for p in shell.points) for i in range(3))
    points = tuple(dict.fromkeys(sub(p, (x, y, z)) for p in shell.points))
    planes = [cut.planes[0] for cut in part.board.cuts if len(cut.planes) == 1 and TRUE < abs(cut.planes[0].normal[2]) < 0.99]
    sides = [(plane.normal, plane.offset - dot(plane.normal, (x, y, z)), True) for plane in planes]
    bevels = tuple(side for side in sides if all(dot(side[0], p) <= side[1] + NEAR for p in points))
    return SheetPiece(part.mark, points, bevels, part.kind.either)
