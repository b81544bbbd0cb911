# SPDX-License-Identifier: LGPL-2.1-or-later
"""Where a part sits in the vent, in words: the slope in its name, its sides and corners, and how pieces are turned."""

from __future__ import annotations

from collections import Counter

from ..core.assembly import Part, Piece, board_shell, board_volume_and_centre
from ..core.geometry import Z_AXIS, cross, dot
from ..core.kinds import BASE, spoken
from ..core.marks import turns_of
from ..core.plan import LEFT, RIGHT
from ..core.saying import Text, joined, say
from ..core.solid import END_A, END_B, FAR_EDGE, HIDDEN_FACE, MARKED_FACE, REFERENCE_EDGE
from ..core.twist import LEVEL_PITCH
from ..core.units import format_pitch
from .job import Job
from .scribing import corner_name

#: Directions this near to level (sine of the angle) are level.
LEVEL = 1e-9
#: What reaches less than this (mm) over the ridge lies on one slope.
ON_RIDGE = 1.0
#: Kinds that stand at no side: at corners, or on the axis.
SIDELESS = ("roof.hip", "roof.gusset", "roof.kingpost", "roof.ridge", "roof.bearer", "roof.step")
#: Kinds that stand side by side along a side of the vent, counted together.
SIDE_BY_SIDE = (("base.cladding.gable", "base.cladding.eave"), ("roof.gable.board",), ("roof.bedmould",),
                ("roof.jack", "roof.common"))


def part_name(part: Part, job: Job) -> Text:
    """The part's name; with its side where the kind's pieces differ by it, and in the base with the slope it stands on."""
    roof = job.sizes.roof
    name = spoken(", ".join(filter(None, (_sided(part, job), part.hand))))
    if part.kind.stage != BASE or roof.single or abs(roof.left - roof.right) < 0.01:
        return name
    slope = {1: roof.left, -1: roof.right}.get(slope_of(part, job))
    return name if slope is None else joined(", ", (name, say("{pitch} slope", pitch=format_pitch(slope))))


def slope_of(part: Part, job: Job) -> int:
    """1 for a part whose every piece lies wholly left of the ridge (or of the axis on one slope), −1 right of it, else 0."""
    ridge = job.sizes.roof.ridge
    points = board_shell(part.board).points
    away = [piece.placement.point(p)[1] - ridge for piece in part.pieces for p in points]
    return 1 if min(away) > -ON_RIDGE else -1 if max(away) < ON_RIDGE else 0


def _sort(job: Job, side: int) -> str:
    plan = job.sizes.plan
    return "gable" if plan.gable(side) else "eave" if plan.eave(side) else "diagonal"


def _sided(part: Part, job: Job) -> str:
    """The kind's name with the side that its pieces stand on, where that is one, and not every part of the kind's."""
    name, plan = part.kind.name, job.sizes.plan
    own = {_sort(job, piece.side) for piece in part.pieces}
    if "gable side" not in name and "eave side" not in name:
        every = {_sort(job, piece.side) for each in job.assembly.whole if each.kind == part.kind
                 for piece in each.pieces}
        return name if len(own) > 1 or own == every or part.kind.id in SIDELESS else f"{name}, {own.pop()} side"
    if own == {"diagonal"}:
        return name.replace("eave side", "diagonal side").replace("gable side", "diagonal side")
    if plan.turned or plan.sides > 4:
        name = name.replace("gable side", "side") if own != {"gable"} else name
        name = name.replace("eave side", "side") if own != {"eave"} else name
    return name


def side_name(job: Job, side: int) -> Text:
    """A side of the plan in words."""
    u = job.sizes.plan.u(side)
    if abs(u[0]) > 0.999:
        front, back = (say(" (front)"), say(" (back)")) if job.sizes.readings else ("", "")
        return say("gable side +X{front}", front=front) if u[0] > 0 else say("gable side −X{back}", back=back)
    if abs(u[1]) > 0.999:
        return say("left eave side (+Y)") if u[1] > 0 else say("right eave side (−Y)")
    return say("diagonal side {along} {across} ({axis})", along="+X" if u[0] > 0 else "−X",
               across=say("left") if u[1] > 0 else say("right"), axis="+Y" if u[1] > 0 else "−Y")


def turned_over(part: Part, job: Job) -> dict[str, int]:
    """How many pieces lie otherwise than the first as seen from their own sides, by the turn that they are given."""
    found = Counter(_TURNS[ways_kept(part, piece, job)] for piece in part.pieces)
    return {turn: count for turn, count in found.items() if turn}


def ways_kept(part: Part, piece: Piece, job: Job) -> tuple[bool, bool]:
    """Whether a piece's length and its marked face look the way they do on the part's first piece, each as seen from its own
    side."""
    at = job.sizes

    def lie(piece: Piece) -> tuple[tuple[float, ...], ...]:
        own = at.hip_toward(piece.side) if part.kind.id == "roof.hip" else (
            at.plan.toward(piece.side) if part.kind.id == "roof.gusset" else at.plan.u(piece.side))
        return tuple((dot(axis, own), dot(axis, cross(Z_AXIS, own)), axis[2])
                     for axis in (piece.placement.x, piece.placement.z))

    length, face = (_same_way(mine, theirs) for mine, theirs in zip(lie(piece), lie(part.pieces[0]), strict=True))
    return length, face


def called_as_it_lies(part: Part, piece: Piece, side: str, job: Job) -> str:
    """What one of the six sides of a piece's board is in the vent, for pieces too that lie turned; else the name that was
    given, as of the face that a cut has left."""
    length, face = ways_kept(part, piece, job)
    swapped = (() if face else ((MARKED_FACE, HIDDEN_FACE),)) + (() if length else ((END_A, END_B),)) + (
        () if length == face else ((REFERENCE_EDGE, FAR_EDGE),))
    other = {a: b for pair in swapped for a, b in (pair, pair[::-1])}
    return dict(part.names).get(other.get(side, side)) or side.split("/")[0]


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
    if part.kind.id in ("roof.kingpost", "roof.bearer", "roof.step"):
        return "on the axis"
    if part.kind.id == "roof.ridge":
        return "under the ridge"
    return "; ".join(filter(None, (_by_side(part, job), _at_ridge(part, job), _low_or_high(part, job), _numbers(part, job))))


def _by_side(part: Part, job: Job) -> str:
    """How many pieces stand on which sides; at which end of them where the hand does not tell."""
    counts = Counter(piece.side for piece in part.pieces)
    if _ends_to_tell(part, job):
        return ", ".join(_at_end(piece, job) for piece in part.pieces)
    groups: dict[int, list[int]] = {}
    for side, count in sorted(counts.items()):
        groups.setdefault(count, []).append(side)
    if len(groups) > 1:
        return ", ".join(f"{count} on {'each of ' if len(sides) > 1 else ''}{_named(sides, job)}"
                         for count, sides in groups.items())
    ((count, sides),) = groups.items()
    return f"{count} on every side" if len(sides) == job.sizes.plan.sides else _named(sides, job)


def _named(sides: list[int], job: Job) -> str:
    """Sides in few words: all of one sort, all but the gable sides, or one after the other."""
    every = range(job.sizes.plan.sides)
    for sort in ("gable", "eave", "diagonal"):
        if len(sides) > 1 and sides == [side for side in every if _sort(job, side) == sort]:
            return f"both {sort} sides" if len(sides) == 2 else f"all {sort} sides"
    if len(sides) > 2 and sides == [side for side in every if _sort(job, side) != "gable"]:
        return "every side but the gable sides"
    return ", ".join(side_name(job, side) for side in sides)


def _ends_to_tell(part: Part, job: Job) -> bool:
    """True where pieces stand at one end of their sides only and the part's hand does not say at which."""
    ends: dict[int, set[int]] = {}
    for piece in part.pieces:
        ends.setdefault(piece.side, set()).add(piece.end)
    if any(len(found) > 1 or 0 in found for found in ends.values()):
        return False
    if job.sizes.readings and part.kind.stage == BASE:
        return True
    return set().union(*ends.values()) != {LEFT if part.hand == "left" else RIGHT} if part.hand else True


def _at_end(piece: Piece, job: Job) -> str:
    """A piece's side and its end there; on a twisted roof with the corner that its table names."""
    plan, text = job.sizes.plan, f"{side_name(job, piece.side)} at its {'left' if piece.end == LEFT else 'right'} end"
    if not job.sizes.readings:
        return text
    corner = plan.corner_point(plan.corner(piece.side, piece.end), job.sizes.base.frame_r)
    return f"{text} ({corner_name(corner).lower()} corner)"


def _at_ridge(part: Part, job: Job) -> str:
    """For commons of a hipped roof with a ridge that all meet it where it ends."""
    at = job.sizes
    if part.kind.id != "roof.common" or at.cap.gables or at.cap.post_flats:
        return ""
    offs = [abs(abs(_along(piece, part, job)) - at.ridge_half(piece.side)) for piece in part.pieces]
    return "at the ridge's ends" if max(offs) < 1.0 else ""


def _along(piece: Piece, part: Part, job: Job) -> float:
    """How far right of the middle of its side a piece's weight lies (mm)."""
    return dot(piece.placement.point(board_volume_and_centre(part.board)[1]), job.sizes.plan.v(piece.side))


def _low_or_high(part: Part, job: Job) -> str:
    """On one slope, which of its sides a part of the base stands at."""
    roof, hand = job.sizes.roof, slope_of(part, job)
    if part.kind.stage != BASE or not roof.single or not hand or abs(roof.left) < LEVEL_PITCH:
        return ""
    return f"on the {'low' if hand * roof.left > 0.0 else 'high'} side of the roof"


def _numbers(part: Part, job: Job) -> str:
    """Which pieces of several that stand side by side: counted from the left, as seen from outside."""
    family = next((kinds for kinds in SIDE_BY_SIDE if part.kind.id in kinds), ())
    rows: dict[int, list[tuple[float, str]]] = {}
    for each in (each for each in job.assembly.whole if each.kind.id in family):
        for piece in each.pieces:
            rows.setdefault(piece.side, []).append((_along(piece, each, job), each.mark))
    told: dict[str, list[int]] = {}
    for side in sorted({piece.side for piece in part.pieces}):
        row = [mark for _, mark in sorted(rows.get(side, []))]
        own = [str(number) for number, mark in enumerate(row, start=1) if mark == part.mark]
        if len(own) < len(row) and not (part.hand and len(row) == 2):
            told.setdefault(f"no. {' and '.join(own)} of {len(row)}", []).append(side)
    if not told:
        return ""
    texts = [text if len(told) == 1 else f"{text} on {_named(sides, job)}" for text, sides in told.items()]
    return f"from the left, seen from outside: {', '.join(texts)}"


def _corners(part: Part, job: Job) -> str:
    """The corners that pieces stand at."""
    if part.count == job.sizes.plan.sides:
        return "one at each corner"
    points = [job.sizes.plan.corner_point(piece.side, 1.0) for piece in part.pieces]
    names = [f"{'+X' if x > 0.0 else '−X'} {'left' if y > 0.0 else 'right'}" for x, y, _ in points]
    return "at the corners " + " and ".join(names)
