# SPDX-License-Identifier: LGPL-2.1-or-later
"""A part that came out wrong, in words: every string that its report, its JSON and the screen print, made once."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from itertools import groupby

from ..core.assembly import CLEARANCE, GLUED, LINE_CONTACT, RIP, Cut
from ..core.mend import SIZE_NAMES, Mending
from ..core.mend_cure import Cure, Opening, Side
from ..core.mend_ways import Refused, Way
from ..core.parameters import LENGTH, Parameter
from ..core.units import format_angle
from .compare_words import NOTHING, Pair, pieces_text
from .job import Job
from .part_sheet import stock_text
from .place_words import part_name, side_name
from .saw_words import angles_text, lay_text, rip_words, saw_row

#: How many ways to let the vent follow are printed.
SHOWN_WAYS = 4
_JOINTS = {GLUED: "glued joint", CLEARANCE: "clearance", LINE_CONTACT: "line contact"}


@dataclass(frozen=True)
class Repair:
    """A job and the answer to what came out wrong in it."""

    job: Job
    mending: Mending

    @property
    def shown(self) -> tuple[Way, ...]:
        """The ways that are printed, the best first."""
        return self.mending.ways.ways[:SHOWN_WAYS]

    def pair(self, way: Way) -> Pair:
        """The vent as drawn and as it follows the part, to compare."""
        return Pair(self.job, replace(self.job, spec=way.after))


def heading(repair: Repair) -> str:
    """Mark, name and how many."""
    mending = repair.mending
    several = f"{mending.count} of {pieces_text(mending.part.count)}"
    return f"{mending.part.mark} · {part_name(mending.part, repair.job)} · {several}"


# ---- sums


def summary_lines(repair: Repair) -> tuple[str, ...]:
    """What is wrong, and the shortest ways out."""
    mending = repair.mending
    if mending.lost:
        return (f"{heading(repair)}: lost or left out.", again_text(repair))
    lines = [f"{heading(repair)}: {'; '.join(off_text(cure, repair) for cure in mending.cures)}."]
    for cure in mending.cures:
        lines += verdict_lines(cure, repair)
    return (*lines, *ways_lines(repair))


def off_text(cure: Cure, repair: Repair) -> str:
    """'length 652 mm instead of 655 mm, 3 mm too small'."""
    write, mending = repair.job.writer.fine, repair.mending
    return (f"{SIZE_NAMES[cure.axis]} {write.length(mending.real[cure.axis])} instead of "
            f"{write.length(mending.part.board.size[cure.axis])}, {write.length(abs(cure.off))} too "
            f"{'small' if cure.off < 0.0 else 'large'}")


def ways_lines(repair: Repair) -> Iterator[str]:
    """How many ways there are to let the vent follow, and the best."""
    found = repair.mending.ways
    if found.ways:
        way = found.ways[0]
        yield (f"Or let the vent follow: {way.parameter.label} {value_text(way.parameter, way.new, repair)} instead of "
               f"{value_text(way.parameter, way.old, repair)} makes the part as it is; {others_text(way)}.{_moved_text(way)}")
    else:
        yield "No one length or angle of the parameters makes a vent with the part as it is" + (
            " that leaves alone what is cut." if found.barred else ".")


def caution_lines(repair: Repair) -> tuple[str, ...]:
    """What to mind."""
    mending = repair.mending
    lines = []
    if repair.job.spec.vents > 1:
        lines.append(f"All counts are one vent's. The ridge has {repair.job.spec.vents}: a parameter that changes, changes "
                     "every one of them.")
    if not mending.lost:
        lines.append("The piece is taken to be straight and as drawn but for the sizes given; its own joints are taken to lie "
                     "as drawn, from the other end, edge or face.")
    if repair.shown:
        some = mending.count < mending.part.count
        rest = f" The other pieces of {mending.part.mark} count among those that change." if some else ""
        lines.append(f"A vent that follows needs a new cut report: cut nothing more by the old one.{rest}")
    if mending.ways.barred:
        lines.append(f"Left out {'is' if mending.ways.barred == 1 else 'are'} {mending.ways.barred} further "
                     f"way{'' if mending.ways.barred == 1 else 's'}, which would change what is cut already: "
                     f"{', '.join(mending.cut)}.")
    return tuple(lines)


# ---- at the bench


def verdict_lines(cure: Cure, repair: Repair) -> tuple[str, ...]:
    """What to do about one size at the bench, in sentences."""
    if cure.off > 0.0:
        return tuple(_take_off(cure, repair))
    return (_short(cure, repair), *_cover(cure, repair))


def _short(cure: Cure, repair: Repair) -> str:
    part, side, write = repair.mending.part, cure.best, repair.job.writer.fine
    where = part.called(side.name)
    if side.fails:
        bad = _and(_effect(each, repair) for each in side.openings if not each.stays)
        return f"It can neither stay nor be packed: {bad}. {again_text(repair)}"
    if not side.stays:
        return f"Bring it tight at the {part.called(_other(cure).name)} and pack it at the {where}: " + _and(
            packing_text(each, repair) for each in side.packings) + "."
    if cure.shared:
        other = part.called(_other(cure).name)
        return (f"It may stay: shared by both, {write.length(cure.shared)} of hold is left at the {where} and at the {other}; "
                f"all to one of them, {_and(_effect(each, repair) for each in side.openings)}.")
    if not side.openings:
        return f"It may stay, with all of it left at the {where}: nothing opens there."
    return f"It may stay, with all of it left at the {where}: {_and(_effect(each, repair) for each in side.openings)}."


def _other(cure: Cure) -> Side:
    return cure.sides[1]


def _cover(cure: Cure, repair: Repair) -> Iterator[str]:
    covers = cure.best.covers
    if covers and cure.best.openings and not cure.best.fails:
        yield f"{_and(covers)} {'lies over it there and hides it' if len(covers) == 1 else 'lie over it there and hide it'}."


def other_text(opening: Opening, repair: Repair) -> str:
    """The neighbour by its mark and name."""
    if opening.other is None:
        return "the barn's roof"
    return f"{opening.other.mark} ({part_name(opening.other, repair.job)})"


def _effect(opening: Opening, repair: Repair) -> str:
    write = repair.job.writer.fine
    other = other_text(opening, repair)
    if opening.hold:
        return f"the joint with {other} keeps {write.length(opening.left)} of its {write.length(opening.hold)} of hold"
    if opening.kind == CLEARANCE:
        then = opening.gap + opening.opens
        return f"the clearance to {other} grows from {write.length(opening.gap)} to {write.length(then)}"
    return f"the joint with {other} opens by {write.length(opening.opens)}"


def packing_text(opening: Opening, repair: Repair) -> str:
    """The packing that fills an opening: its size, grain and stock; '' for one that needs none."""
    if not opening.packed:
        return ""
    write = repair.job.writer.fine
    return (f"{write.size(opening.long, opening.wide, opening.opens)} against {other_text(opening, repair)}, grain along the "
            f"{write.length(opening.long)}, from an offcut of {repair.mending.part.stock.name}"
            + (", glued to both" if opening.kind == GLUED else ""))


def opening_rows(cure: Cure, repair: Repair) -> tuple[tuple[str, str, str, str, str, str], ...]:
    """Side, neighbour, joint, what opens, what is left of the hold, packing: joints that fare alike in one row."""
    write = repair.job.writer.fine
    rows = []
    for side in cure.sides:
        where = repair.mending.part.called(side.name)
        told = [(where, other_text(each, repair), _JOINTS.get(each.kind, each.kind),
                 write.length(each.opens) if each.opens else NOTHING,
                 f"{write.length(each.left)} of {write.length(each.hold)}" if each.hold else NOTHING,
                 packing_text(each, repair) or ("none: it may stay" if each.stays else "none will do: make it again"))
                for each in side.openings]
        for row, alike in groupby(sorted(told)):
            number = len(list(alike))
            rows.append((row[0], f"{number} × {row[1]}" if number > 1 else row[1], *row[2:]))
        if not told:
            rows.append((where, "nothing", NOTHING, NOTHING, NOTHING, "none: it may stay"))
    return tuple(rows)


def _take_off(cure: Cure, repair: Repair) -> Iterator[str]:
    part, side = repair.mending.part, cure.best
    amount = repair.job.writer.fine.length(cure.off)
    where = part.called(side.name)
    if cure.axis == 2:
        yield f"Plane {amount} off the {where}."
    else:
        yield f"Take {amount} off the {where}: {cut_text(side.cuts, cure.axis, side.name, repair)}."
    if side.joints:
        yield (f"Its {_and(side.joints)} there goes with it: if it is cut, cut its inner wall further in by {amount} as "
               "well, before.")


def cut_text(cuts: tuple[Cut, ...], axis: int, side: str, repair: Repair) -> str:
    """How the saw is set to make an end or an edge again; plain ends and edges are square."""
    part, write = repair.mending.part, repair.job.writer
    if not cuts:
        return "square across" if axis == 0 else "rip, blade upright"
    return "; ".join(f"{cut.name}, {' – '.join(rip_words(cut, part, write))}" if cut.kind == RIP else
                     f"{cut.name}, {angles_text(row, write)} ({lay_text(row, part)})"
                     for cut in cuts for row in [saw_row(cut, part.board)])


# ---- lost


def again_text(repair: Repair) -> str:
    """The piece to make again."""
    mending = repair.mending
    part = mending.part
    return (f"Make {pieces_text(mending.count)} of {part.mark} again: blank {repair.job.writer.size(*part.board.size)}, from "
            f"{stock_text(part, repair.job.writer)}.")


def missing_rows(repair: Repair) -> tuple[tuple[str, str, str], ...]:
    """Joints that a lost piece leaves without it: the other part, the kind, how many such."""
    mending = repair.mending
    first = mending.part.pieces[0].id
    told: dict[tuple[str, str], int] = {}
    for joint in mending.missing:
        other = mending.assembly.part_of(joint.second if joint.first == first else joint.first)
        key = (f"{other.mark} ({part_name(other, repair.job)})", _JOINTS.get(joint.kind, joint.kind))
        told[key] = told.get(key, 0) + 1
    return tuple((other, kind, str(count)) for (other, kind), count in told.items())


# ---- the vent follows


def value_text(row: Parameter, value: float, repair: Repair) -> str:
    """A parameter's value as the report prints it."""
    return repair.job.writer.fine.length(value) if row.kind == LENGTH else format_angle(value, 2)


def others_text(way: Way) -> str:
    """What else changes: how many pieces, and their marks."""
    if not way.others:
        return "nothing else changes"
    return f"{pieces_text(way.pieces)} change besides: {', '.join(way.others)}"


def _moved_text(way: Way) -> str:
    return f" Only if these of its own are not cut yet: {', '.join(way.moved)}." if way.moved else ""


def way_row(way: Way, repair: Repair) -> tuple[str, str, str, str, str, str]:
    """Parameter, value now, value then, other parts that change, their pieces, cuts of the part itself that move."""
    return (way.parameter.label.capitalize(), value_text(way.parameter, way.old, repair),
            value_text(way.parameter, way.new, repair), ", ".join(way.others) or NOTHING, str(way.pieces),
            ", ".join(way.moved) or NOTHING)


def refused_text(each: Refused, repair: Repair) -> str:
    """A way that the checks refuse, with their reason."""
    return (f"{each.parameter.label.capitalize()} {value_text(each.parameter, each.new, repair)} would make it, but: "
            + " ".join(finding.sentence for finding in each.findings))


def place_text(cure: Cure, repair: Repair) -> str:
    """Where the wrong pieces do least harm; '' where it makes no difference or all are wrong."""
    part = repair.mending.part
    if cure.off > 0.0 or len(cure.places) == part.count:
        return ""
    sides = {piece.id: side_name(repair.job, piece.side) for piece in part.pieces}
    names = dict.fromkeys(sides[each] for each in cure.places)
    return f"They do least harm here: {', '.join(names)} ({', '.join(cure.places)})."


def _and(words: Iterator[str] | tuple[str, ...]) -> str:
    told = list(dict.fromkeys(words))
    return told[0] if len(told) == 1 else f"{', '.join(told[:-1])} and {told[-1]}" if told else ""
