# SPDX-License-Identifier: LGPL-2.1-or-later
"""``mend(spec, wrong)``: a part came out wrong; what of the vent could follow it, and what can be done about the piece."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field

from .assembly import Assembly, Joint, Part
from .geometry import Vec
from .layout import layout
from .mend_cure import Cure, cure
from .mend_ways import SAME_SIZE, Ways, ways
from .parameters import BY_NAME, THICKNESS, WIDTH, measured_name
from .saying import joined, say
from .spec import Spec, length_text

#: The names of a piece's sizes, in the order of the board's axes.
SIZE_NAMES = ("length", "width", "thickness")
_Findings = list[tuple[str, str]]


class MendError(ValueError):
    """What was told of the part cannot be; ``findings`` are (what, sentence) pairs, the text is all of them."""

    def __init__(self, findings: _Findings) -> None:
        super().__init__(joined("\n", (sentence for _, sentence in findings)))
        self.findings = tuple(findings)


@dataclass(frozen=True)
class Wrong:
    """What came out wrong: a mark, how many of its pieces (0 for all), and their real finished sizes.

    ``real`` has length, width and thickness of the whole piece in mm, None for one that is as drawn; ``lost`` tells that
    the pieces are spoiled, lost or were left out.  ``cut`` are the marks of parts that are cut and must stay as they are.
    """

    mark: str
    count: int = 0
    real: tuple[float | None, float | None, float | None] = (None, None, None)
    lost: bool = False
    cut: tuple[str, ...] = ()


@dataclass(frozen=True)
class Mending:
    """The answer: by which parameters the vent follows the part, the cure for each size, the joints that a lost one leaves.

    ``real`` is the piece's size and ``off`` real less drawn (mm), length, width and thickness.  ``missing`` are the joints
    of one lost piece.
    """

    before: Spec = field(repr=False)
    part: Part
    count: int
    cut: tuple[str, ...]
    lost: bool
    real: Vec
    ways: Ways
    cures: tuple[Cure, ...]
    missing: tuple[Joint, ...]

    @property
    def off(self) -> Vec:
        """Real less drawn (mm), along length, width and thickness."""
        (a, b, c), (x, y, z) = self.real, self.part.board.size
        return (a - x, b - y, c - z)

    @property
    def assembly(self) -> Assembly:
        """The vent as it was drawn."""
        return layout(self.before)


def mend(spec: Spec, wrong: Wrong) -> Mending:
    """What can be done about a part that came out wrong, in the vent of a checked spec.

    Raises MendError with every finding where there is no such part, or no such piece can be.
    """
    assembly = layout(spec)
    findings = list(_findings(assembly, wrong))
    if findings:
        raise MendError(findings)
    part = _part(assembly, wrong.mark)
    count = wrong.count or part.count
    if wrong.lost:
        first = part.pieces[0].id
        joints = tuple(joint for joint in assembly.joints if first in (joint.first, joint.second))
        return Mending(spec, part, count, wrong.cut, True, part.board.size, Ways(), (), joints)
    length, width, thickness = (own if told is None else told for told, own in zip(wrong.real, part.board.size, strict=True))
    real = (length, width, thickness)
    off = [real[axis] - part.board.size[axis] for axis in range(3)]
    cures = tuple(cure(assembly, part, axis, off[axis], count) for axis in range(3) if abs(off[axis]) > SAME_SIZE)
    return Mending(spec, part, count, wrong.cut, False, real, ways(spec, part, real, count, wrong.cut), cures, ())


def _part(assembly: Assembly, mark: str) -> Part:
    return next(part for part in assembly.parts if part.mark == mark)


def _findings(assembly: Assembly, wrong: Wrong) -> Iterator[tuple[str, str]]:
    """Everything that is wrong with what was told."""
    parts = {part.mark: part for part in assembly.parts}
    left_out = [part.mark for part in assembly.left_out]
    for key, mark in (("part", wrong.mark), *(("cut", each) for each in wrong.cut)):
        if mark in left_out:
            yield key, say("“{mark}” is left out of this vent: it is not made here. Choose one of: {parts}.", mark=mark,
                           parts=", ".join(parts))
        elif mark not in parts:
            yield key, say("“{mark}” is not a mark of this vent. Choose one of: {parts}.", mark=mark, parts=", ".join(parts))
        elif key == "cut" and mark == wrong.mark and wrong.count in (0, parts[mark].count):
            yield key, say("“{mark}” came out wrong in all its pieces. Name only others that are cut already.", mark=mark)
    if wrong.mark not in parts:
        return
    part = parts[wrong.mark]
    if not 0 <= wrong.count <= part.count:
        yield "count", say("Count is {count}: one vent has {most} of {mark}, so it must be 1 to {most}, or 0 for all. "
                           "Give the number of pieces that came out wrong.", count=wrong.count, most=part.count,
                           mark=part.mark)
    told = [name for name, size in zip(SIZE_NAMES, wrong.real, strict=True) if size is not None]
    if wrong.lost and told:
        yield told[0], say("A size is given for a piece that is lost: {told}. Give the size, or say that it is lost.",
                           told=joined(", ", map(say, told)))
        return
    if not wrong.lost and not told:
        yield "length", say("No size is given: length, width or thickness of the finished piece is needed. Give one, or "
                            "say that the piece is lost.")
        return
    yield from _size_findings(part, wrong)
    bad = [name for name, own, real in zip(SIZE_NAMES, part.board.size, wrong.real, strict=True)
           if real is not None and abs(real - own) > SAME_SIZE]
    if told and not bad:
        drawn = " × ".join(length_text(size) for size in part.board.size)
        yield told[0], say("{mark} is drawn {drawn}: the piece is as it should be to {same_size:g} mm. Give the size that "
                           "is wrong.", mark=part.mark, drawn=drawn, same_size=SAME_SIZE)


def _size_findings(part: Part, wrong: Wrong) -> Iterator[tuple[str, str]]:
    """Sizes that no piece of the part's stock can have."""
    stock = part.stock
    rows = [measured_name(part.kind.stock, what) for what in (WIDTH, THICKNESS)]
    cures = ("", *(say(", or give the {label} as measured first", label=say(BY_NAME[name].label)) if name in BY_NAME else ""
                   for name in rows))
    for name, real, most, cure_text in zip(SIZE_NAMES, wrong.real, (max(stock.lengths), stock.width, stock.thickness), cures,
                                           strict=True):
        if real is None:
            continue
        if not 0.0 < real < float("inf"):
            yield name, say("{name} is {real:g} mm: it must be more than 0 mm. Measure the piece again.",
                            name=say(name.capitalize()), real=real)
        elif real > most + SAME_SIZE:
            yield name, say("{name} is {real}: {mark} is cut from “{stock}”, which is {most} at most. Measure the piece "
                            "again{cure_text}.", name=say(name.capitalize()), real=length_text(real), mark=part.mark,
                            stock=stock.name, most=length_text(most), cure_text=cure_text)
