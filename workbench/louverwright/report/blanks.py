# SPDX-License-Identifier: LGPL-2.1-or-later
"""From the stock to the blank: cutting sheet goods to size, thicknessing, ripping to width, each listed as a step."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass

from ..core.assembly import RIP, Cut, Part, board_shell
from ..core.saw import SQUARE, edge_of, setting
from ..core.solid import FAR_EDGE
from .job import Job, Writer

#: How a blank's sizes are made.
SHEET, ROLL, THICKNESSED, RIPPED, CUT_FREE, BEVELLED = (
    "cut from the sheet", "cut from the roll", "thickness", "rip to width", "rip to width, free of the board", "bevelled rip")
#: A bevelled strip narrower than this (mm) is bevelled on the wide board, never once it is free.
NARROW = 60.0
#: A piece bored along its length that is shorter than this (mm) is bored before it is cut off.
SHORT_BORE = 400.0
#: Sizes this near (mm) to the stock's are the stock's.
SAME = 0.01
LENGTH, WIDTH, THICKNESS = 0, 1, 2


@dataclass(frozen=True)
class BlankStep:
    """One step that makes sizes of a blank: how, and which of length, width and thickness (0, 1, 2)."""

    how: str
    axes: tuple[int, ...]


def from_sheet(part: Part) -> bool:
    """True for a part that is cut out of a sheet or off a roll: all four sides of its blank are sawn or shorn."""
    return part.stock.form in ("sheet", "mesh")


def ripped_to_width(part: Part) -> bool:
    """True for a part that is narrower than the strip of stock it is made from."""
    return not from_sheet(part) and part.board.width < part.stock.width - SAME


def bevels(part: Part) -> list[Cut]:
    """The rips that need the blade tilted."""
    return [cut for cut in part.board.cuts if cut.kind == RIP and abs(setting(cut.planes[0]).bevel) >= SQUARE]


def bevelled_on_the_board(part: Part) -> bool:
    """True for a narrow strip whose bevels are ripped before it is free of the wide board."""
    return ripped_to_width(part) and part.board.width < NARROW and bool(bevels(part))


def freed_by_bevel(part: Part) -> Cut | None:
    """The bevel that makes a narrow strip's width and cuts it free: nothing square is left of its far edge."""
    own = bevels(part)
    if not bevelled_on_the_board(part) or len(own) != 1 or edge_of(own[0]) != FAR_EDGE:
        return None
    return None if any(face.name == FAR_EDGE for face in board_shell(part.board).faces) else own[0]


def blank_steps(part: Part) -> tuple[BlankStep, ...]:
    """The steps from the stock's section (of a sheet: from the sheet) to the blank, the length of a stick apart."""
    steps = []
    if from_sheet(part):
        steps.append(BlankStep(ROLL if part.stock.form == "mesh" else SHEET, (LENGTH, WIDTH)))
    if part.board.thickness < part.stock.thickness - SAME:
        steps.append(BlankStep(THICKNESSED, (THICKNESS,)))
    if ripped_to_width(part):
        how = BEVELLED if freed_by_bevel(part) else CUT_FREE if bevelled_on_the_board(part) else RIPPED
        steps.append(BlankStep(how, (WIDTH,)))
    return tuple(steps)


def step_words(step: BlankStep, part: Part, write: Writer) -> tuple[str, str, str, str]:
    """A step in the part's table: what, the setting, how the piece lies, and the sizes."""
    board = part.board
    if step.how == SHEET:
        return step.how, "square", "face grain along the first size", write.size(board.length, board.width)
    if step.how == ROLL:
        return step.how, "square", "first size along the roll", write.size(board.length, board.width)
    if step.how == THICKNESSED:
        return step.how, "plane or rip", "either face", f"{write.bare(board.thickness)} thick"
    lie = "either way" if step.how == RIPPED else "after the bevel"
    return step.how, "square", lie, f"{write.bare(board.width)} wide"


def sort_of(step: BlankStep) -> str:
    """What a step is called in the order of cuts."""
    return {SHEET: "cut to size", ROLL: "cut to size", THICKNESSED: "thicknessing"}.get(step.how, "rips")


def bored_on_the_stick(part: Part) -> bool:
    """True for a short piece with a bore along its length, which is made before the piece is cut off its stick."""
    return part.board.length < SHORT_BORE and any(abs(bore.direction[0]) > 0.5 for bore in part.board.bores)


def rip_advice(part: Part) -> list[str]:
    """Narrow strips, sharp arrises at the fence, and bores in short pieces."""
    out = []
    if bevelled_on_the_board(part):
        out.append("Rip the bevel on the wide board, never on the narrow strip; featherboard and push stick."
                   + (" Square the board's edge again before the next strip." if freed_by_bevel(part) else ""))
    if len({edge_of(cut) for cut in bevels(part)}) == 2 and part.stock.form == "board":
        out.append("At the second rip a sharp arris runs at the fence: clamp a board to the fence, tight on the table, so "
                   "that it cannot slip under.")
    if bored_on_the_stick(part):
        out.append("Bore the long stick before cutting the piece off it.")
    return out


@dataclass(frozen=True)
class SizeRow:
    """Parts whose blanks are made by one setting: stock, size, marks with their numbers, and all pieces."""

    number: str
    stock: str
    size: str
    parts: str
    count: str


def sheet_rows(job: Job) -> tuple[SizeRow, ...]:
    """Sheet goods and mesh, by stock and then from the largest: length along the face grain × width."""
    return _rows(job, "Sheet", (SHEET, ROLL), lambda p: job.writer.size(p.board.length, p.board.width),
                 lambda p: (-p.board.width, -p.board.length))


def thickness_rows(job: Job) -> tuple[SizeRow, ...]:
    """Parts that are thinner than their stock."""
    return _rows(job, "Plane", (THICKNESSED,), lambda p: f"{job.writer.length(p.board.thickness)} thick",
                 lambda p: (p.board.thickness,))


def _rows(job: Job, word: str, ways: Sequence[str], size: Callable[[Part], str],
          order: Callable[[Part], tuple[float, ...]]) -> tuple[SizeRow, ...]:
    groups: dict[tuple[str, str], list[Part]] = {}
    own = [part for part in job.assembly.parts if any(step.how in ways for step in blank_steps(part))]
    for part in sorted(own, key=lambda p: (p.stock.name, *order(p))):
        groups.setdefault((part.stock.name, size(part)), []).append(part)
    for parts in groups.values():
        parts.sort(key=job.assembly.parts.index)
    return tuple(SizeRow(f"{word}\u00a0{number}", stock, text, marks_text(parts, job), count_text(parts, job))
                 for number, ((stock, text), parts) in enumerate(groups.items(), start=1))


def marks_text(parts: Sequence[Part], job: Job) -> str:
    """Marks with how many of each: 'B2 ×4, L2 ×4'."""
    return ", ".join(dict.fromkeys(f"{part.mark}\u00a0×{job.count(part)}" for part in parts))


def count_text(parts: Sequence[Part], job: Job) -> str:
    """How many pieces the parts come to, for all vents."""
    return str(sum(job.count(part) for part in parts))


def width_rows(job: Job, how: str) -> Iterator[tuple[str, list[Part]]]:
    """Parts ripped to width in the given way, by the width as it is printed, the narrowest first."""
    groups: dict[str, list[Part]] = {}
    own = [part for part in job.assembly.parts if any(step.how == how for step in blank_steps(part))]
    for part in sorted(own, key=lambda p: p.board.width):
        groups.setdefault(job.writer.length(part.board.width), []).append(part)
    for width, parts in groups.items():
        yield width, sorted(parts, key=job.assembly.parts.index)
