# SPDX-License-Identifier: LGPL-2.1-or-later
"""Where a part sits in the vent, in words: the slope in its name, its sides and corners, and how pieces are turned."""

from __future__ import annotations

from collections import Counter

from ..core.assembly import Part, Piece, board_volume_and_centre
from ..core.geometry import Z_AXIS, cross, dot
from ..core.kinds import BASE
from ..core.marks import turns_of
from ..core.units import format_pitch
from .job import Job

#: Directions this near to level (sine of the angle) are level.
LEVEL = 1e-9


def part_name(part: Part, job: Job) -> str:
    """The part's name; in the base of a roof with two pitches with the slope that it stands on."""
    roof, plan = job.sizes.roof, job.sizes.plan
    name = part.name
    if not any(plan.gable(piece.side) or plan.eave(piece.side) for piece in part.pieces):
        name = name.replace("eave side", "diagonal side").replace("gable side", "diagonal side")
    elif plan.turned or plan.sides > 4:
        name = name.replace("gable side", "side") if not all(plan.gable(piece.side) for piece in part.pieces) else name
        name = name.replace("eave side", "side") if not all(plan.eave(piece.side) for piece in part.pieces) else name
    if part.kind.stage != BASE or roof.single or abs(roof.left - roof.right) < 0.01:
        return name
    centre = board_volume_and_centre(part.board)[1]
    away = [piece.placement.point(centre)[1] - roof.ridge for piece in part.pieces]
    if min(away) > 1.0:
        return f"{name}, {format_pitch(roof.left)} slope"
    return f"{name}, {format_pitch(roof.right)} slope" if max(away) < -1.0 else name


def side_name(job: Job, side: int) -> str:
    """A side of the plan in words."""
    u = job.sizes.plan.u(side)
    if abs(u[0]) > 0.999:
        return "gable side +X" if u[0] > 0 else "gable side −X"
    if abs(u[1]) > 0.999:
        return "left eave side (+Y)" if u[1] > 0 else "right eave side (−Y)"
    across = "left" if u[1] > 0 else "right"
    return f"diagonal side {'+X' if u[0] > 0 else '−X'} {across} ({'+Y' if u[1] > 0 else '−Y'})"


def turned_over(part: Part, job: Job) -> dict[str, int]:
    """How many pieces lie otherwise than the first as seen from their own sides, by the turn that they are given."""
    at = job.sizes

    def lie(piece: Piece) -> tuple[tuple[float, ...], ...]:
        own = at.hip_toward(piece.side) if part.kind.id == "roof.hip" else (
            at.plan.toward(piece.side) if part.kind.id == "roof.gusset" else at.plan.u(piece.side))
        return tuple((dot(axis, own), dot(axis, cross(Z_AXIS, own)), axis[2])
                     for axis in (piece.placement.x, piece.placement.z))

    first, found = lie(part.pieces[0]), Counter[str]()
    for piece in part.pieces:
        length, face = (_same_way(mine, theirs) for mine, theirs in zip(lie(piece), first, strict=True))
        found[_TURNS[length, face]] += 1
    return {turn: count for turn, count in found.items() if turn}


def _same_way(mine: tuple[float, ...], theirs: tuple[float, ...]) -> bool:
    """Whether two directions keep their way: up or down where they are not level, else the way along the side."""
    if min(abs(mine[2]), abs(theirs[2])) > LEVEL:
        return mine[2] * theirs[2] > 0.0
    return sum(a * b for a, b in zip(mine, theirs, strict=True)) > 0.0


#: What is done to a piece by whether its length and its face keep their ways.
_TURNS = {(True, True): "", (False, True): "end for end, the same face out",
          (True, False): "face for face, the same end first", (False, False): "end for end and face for face"}


def where_text(part: Part, job: Job) -> str:
    """On which sides the pieces stand, and how many of them turned in which way."""
    turned = turned_over(part, job) if _tells(part) else {}
    notes = [f"{count} of {part.count} lie turned {turn}" for turn, count in turned.items()]
    return "; ".join([_sides(part, job), *notes])


def _tells(part: Part) -> bool:
    """True for a part that is not the same every way round: its cuts tell faces or ends apart."""
    return len(turns_of(part.board)) < 4


def _sides(part: Part, job: Job) -> str:
    if part.kind.id in ("roof.hip", "roof.gusset"):
        return _corners(part, job)
    sides = sorted({piece.side for piece in part.pieces})
    if len(sides) == job.sizes.plan.sides:
        each = part.count // len(sides)
        return f"{each} on every side" if each * len(sides) == part.count else "on every side"
    if part.kind.id in ("roof.kingpost", "roof.bearer", "roof.step"):
        return "on the axis"
    if part.kind.id == "roof.ridge":
        return "under the ridge"
    if all(job.sizes.plan.gable(side) for side in sides) and len(sides) == 2:
        return "both gable sides"
    if len(sides) == 2 and job.sizes.plan.sides == 4 and not any(job.sizes.plan.gable(side) for side in sides):
        return "both eave sides"
    return ", ".join(side_name(job, side) for side in sides)


def _corners(part: Part, job: Job) -> str:
    """The corners that pieces stand at."""
    if part.count == job.sizes.plan.sides:
        return "one at each corner"
    points = [job.sizes.plan.corner_point(piece.side, 1.0) for piece in part.pieces]
    names = [f"{'+X' if x > 0.0 else '−X'} {'left' if y > 0.0 else 'right'}" for x, y, _ in points]
    return "at the corners " + " and ".join(names)
