# SPDX-License-Identifier: LGPL-2.1-or-later
"""A comparison in words: every string that its report and its JSON print, made once."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass
from functools import cached_property
from itertools import groupby

from ..core.assembly import DADO, NOTCH, SHAPED_EDGE, Part
from ..core.compare import KEEP, NEW, RECUT, Comparison, Handed, PartChange, changed_parameters, changed_wishes, compare
from ..core.fits import fit
from ..core.geometry import Placement
from ..core.kinds import BY_ID
from ..core.measures import ANGLE, ARRIS, BLANK, LENGTH, STOCK, Change, stock_text
from ..core.parameters import BY_NAME
from ..core.parameters import STOCK as STOCK_KIND
from ..core.part_wish import PartWish
from ..core.saw import SQUARE
from ..core.solid import END_A, END_B, FAR_EDGE, HIDDEN_FACE, MARKED_FACE, REFERENCE_EDGE
from .document import parameter_text
from .job import Job, Writer
from .joint_words import joint_rows
from .left_out import kind_text
from .lettered import SAME_POINT
from .place_words import part_name

NOTHING = "–"
LESS_THAN_SHOWN = "differs by less than the paper shows"
_SIDES = re.compile("|".join((END_A, END_B, REFERENCE_EDGE, FAR_EDGE, MARKED_FACE, HIDDEN_FACE)))


@dataclass(frozen=True)
class Pair:
    """Two jobs to compare: the one that wood was cut by, and the one that is wanted."""

    before: Job
    after: Job

    @cached_property
    def found(self) -> Comparison:
        """What became of the pieces."""
        return compare(self.before.assembly, self.after.assembly)

    @property
    def writers(self) -> tuple[Writer, Writer]:
        """How the old paper and the new one write numbers."""
        return self.before.writer, self.after.writer

    @cached_property
    def parameters(self) -> tuple[tuple[str, str, str, str], ...]:
        """Name, label, old and new text of each parameter that differs."""
        return tuple((name, BY_NAME[name].label.capitalize(), *parameter_texts(self, name))
                     for name in changed_parameters(self.before.spec, self.after.spec))


    @cached_property
    def wishes(self) -> tuple[tuple[str, str, str, str], ...]:
        """Kind id, label, old and new text of what is wished otherwise for a kind."""
        return tuple((kind, kind_text(BY_ID[kind]), wish_text(old), wish_text(new))
                     for kind, old, new in changed_wishes(self.before.spec, self.after.spec))


def wish_text(wish: PartWish) -> str:
    """A wish in words."""
    told = (f"own stock {wish.stock_name}" if wish.stock_name else "", "left out" if wish.left_out else "",
            f"note: {wish.note}" if wish.note else "")
    return "; ".join(filter(None, told)) or NOTHING


def parameter_texts(pair: Pair, name: str) -> tuple[str, str]:
    """A parameter's old and new value; of stock of one name what else of it changed."""
    jobs = (pair.before, pair.after)
    old, new = (parameter_text(job, name) or NOTHING for job in jobs)
    if old == new and BY_NAME[name].kind == STOCK_KIND:
        old, new = (stock_text(job.spec.values[name]) for job in jobs)
        return (old, new) if old != new else (old, f"{new}, another weight or other lengths sold")
    return old, f"{new}, {LESS_THAN_SHOWN}" if old == new else new


@dataclass(frozen=True)
class ChangeRow:
    """One line of a table of changes; ``changes`` are the measures in it."""

    what: str
    old: str
    new: str
    changes: tuple[Change, ...]


def pieces_text(count: int) -> str:
    """'1 piece', '2 pieces'."""
    return f"{count} piece{'' if count == 1 else 's'}"


def marks_text(old: str, new: str) -> str:
    """The old mark and the new one, or the one where it stays."""
    return old if old == new else f"{old} → {new}"


# ---- sums


def summary_lines(pair: Pair) -> tuple[str, ...]:
    """What can be kept, cut further, and must be made."""
    found = pair.found
    wanted, old = len(pair.after.assembly.pieces), len(pair.before.assembly.pieces)
    if found.same and wanted == old:
        return (f"All {wanted} pieces can be kept as they are.", *_renamed(found))
    lines = [f"{found.count(KEEP)} of {wanted} pieces can be kept as they are.", *_renamed(found)]
    if found.count(RECUT):
        lines.append(f"{pieces_text(found.count(RECUT)).capitalize()} can be cut from old ones.")
    lines.append(f"{pieces_text(found.count(NEW)).capitalize()} must be cut from new wood.")
    spare = sum(len(group.ids) for group in found.left_over)
    if spare:
        lines.append(f"{spare} of {old} old pieces {'is' if spare == 1 else 'are'} left over.")
    return tuple(lines)


def _renamed(found: Comparison) -> tuple[str, ...]:
    other = sum(len(row.pieces) for row in found.kept if row.old.mark != row.new.mark)
    return (f"{other} of those kept {'carries' if other == 1 else 'carry'} another mark now.",) if other else ()


def caution_lines(pair: Pair) -> tuple[str, ...]:
    """What to mind before old pieces are used."""
    lines = ["Two drawings are compared, not the wood: measure each old piece before it is used again. A piece that was cut "
             "off its line, nailed or glued may not serve."]
    vents = (pair.before.spec.vents, pair.after.spec.vents)
    if max(vents) > 1:
        lines.append(f"All counts are one vent's: {vents[0]} vent{'' if vents[0] == 1 else 's'} before, {vents[1]} after. "
                     "A vent that is added is made from new wood.")
    if _renamed(pair.found):
        lines.append("The same mark may mean another piece on the new paper. Strike out the old marks and write the new "
                     "ones before any piece is moved.")
    if pair.found.left_out_otherwise:
        lines.append("Left out before and now, but drawn otherwise: "
                     f"{', '.join(group.part.mark for group in pair.found.left_out_otherwise)}. What was bought or made "
                     "elsewhere for them may not fit.")
    if pair.found.recut:
        lines.append("A piece is said to come from an old one only where it surely lies within that one, grain along grain; "
                     "the others may still do so: lay them together. Clamp short pieces.")
    if pair.before.writer != pair.after.writer:
        lines.append(f"The papers write lengths differently: the old in {pair.before.writer.unit}; the new in "
                     f"{pair.after.writer.unit}. Each figure stands here as on its own paper.")
    if any(row.new.endswith(LESS_THAN_SHOWN) for change in pair.found.changed for row in change_rows(change, pair)):
        lines.append(f"Where a measure “{LESS_THAN_SHOWN}” the two papers print the same figure; the exact numbers are in "
                     "the JSON.")
    return tuple(lines)


# ---- parts


def name_of(part: Part, job: Job) -> str:
    """The part's name as its own paper has it."""
    return part_name(part, job)


def change_title(change: PartChange, pair: Pair) -> str:
    """Heading of a changed part: marks, name, pieces."""
    return (f"{marks_text(change.old.mark, change.new.mark)} · {name_of(change.new, pair.after)} · "
            f"{pieces_text(len(change.ids))}")


def wood_text(change: PartChange, pair: Pair) -> str:
    """Where the wood of changed pieces comes from."""
    wanted = set(change.ids)
    words: dict[str, int] = {}
    for piece in pair.found.pieces:
        if piece.id in wanted:
            words[_wood(piece.wood, piece.source, change, pair)] = words.get(
                _wood(piece.wood, piece.source, change, pair), 0) + 1
    text = "; ".join(f"{pieces_text(count)} {word}" for word, count in words.items())
    turn = " The old board is turned end for end or over to compare it." if change.turned else ""
    return f"{text}.{turn}"


def _wood(wood: str, source: str, change: PartChange, pair: Pair) -> str:
    if wood == NEW:
        return "to be cut from new wood"
    mark = pair.before.assembly.part_of(source).mark
    if wood == KEEP:
        return f"taken over as cut from the old {mark}"
    return "can be cut from the old one" if mark == change.old.mark else f"can be cut from the old {mark}"


def lie_text(row: Handed, pair: Pair) -> str:
    """How a new piece lies in the old one that it can be cut from; '' where it is not to be cut."""
    place = fit(row.old.board, row.new.board)
    if place is None:
        return ""
    along = pair.after.writer.bare(abs(place.origin[0]))
    words = [f"new {row.new.called(END_A)} {along} from the old {row.old.called(END_A)}"]
    if place.x[0] < 0.0:
        words.append("turned end for end")
    if abs(place.z[2]) < 0.5:
        words.append("turned on edge")
    elif place.z[2] < 0.0:
        words.append("turned over")
    return ", ".join((*words, *_at_sides(row, place)))


def _at_sides(row: Handed, place: Placement) -> Iterator[str]:
    """The edge and the face of the old piece that a narrower or thinner one lies at."""
    corner, opposite = place.point((0.0, 0.0, 0.0)), place.point(row.new.board.size)
    for axis, sides in ((1, (REFERENCE_EDGE, FAR_EDGE)), (2, (HIDDEN_FACE, MARKED_FACE))):
        low, high = sorted((corner[axis], opposite[axis]))
        if high - low < row.old.board.size[axis] - SAME_POINT:
            yield f"at the old {row.old.called(sides[0] if low < SAME_POINT else sides[1])}"


# ---- changes


def change_rows(change: PartChange, pair: Pair) -> tuple[ChangeRow, ...]:
    """The lines for one part; a cut that only one state has is one line with all its measures."""
    rows: list[ChangeRow] = []
    for own, group in groupby(change.changes, lambda c: (c.kind, c.cut, c.where, c.number, c.one_sided)):
        several = tuple(group)
        if own[0] in (NOTCH, SHAPED_EDGE):
            rows.append(_notch_row(several, change, pair))
        elif own[-1]:
            rows.append(_one_sided(several, change, pair))
        else:
            rows.extend(_row(each, change, pair) for each in several)
    return tuple(rows)


def _one_sided(changes: tuple[Change, ...], change: PartChange, pair: Pair) -> ChangeRow:
    def told(values: Iterator[tuple[Change, float | str | None]], write: Writer) -> str:
        return "; ".join(f"{named(c.what, change.new)} {value_text(c, value, change.new, write)}"
                         for c, value in values if value is not None) or NOTHING

    old_write, new_write = pair.writers
    return ChangeRow(cut_title(changes[0], change.new), told(((c, c.old) for c in changes), old_write),
                     told(((c, c.new) for c in changes), new_write), changes)


def _notch_row(changes: tuple[Change, ...], change: PartChange, pair: Pair) -> ChangeRow:
    """A notch by its sides and points, as each paper has them."""
    old, new = (_notch_text(changes[0], part, write)
                for part, write in zip((change.old, change.new), pair.writers, strict=True))
    return ChangeRow(cut_title(changes[0], change.new), old, f"{new}, {LESS_THAN_SHOWN}" if old == new else new, changes)


def _notch_text(each: Change, part: Part, write: Writer) -> str:
    rows = [row for row in joint_rows(part, write) if row.name == each.cut]
    return f"{rows[each.number - 1].size}; {rows[each.number - 1].position}" if len(rows) >= each.number else NOTHING


def _row(each: Change, change: PartChange, pair: Pair) -> ChangeRow:
    old_write, new_write = pair.writers
    old, new = (value_text(each, value, change.new, write)
                for value, write in ((each.old, old_write), (each.new, new_write)))
    if old == new:
        old, new = (value_text(each, value, change.new, write.fine)
                    for value, write in ((each.old, old_write), (each.new, new_write)))
    if old == new:
        new = f"{new}, {LESS_THAN_SHOWN}"
    elif _other_way(each):
        new += ", the other way"
    return ChangeRow(f"{cut_title(each, change.new)}: {named(each.what, change.new)}".removeprefix(": "), old, new, (each,))


def _other_way(each: Change) -> bool:
    """True for an angle whose words do not tell its sense, and whose sign changed."""
    if each.what in ("mitre", "bevel", "taper") or isinstance(each.old, str) or isinstance(each.new, str):
        return False
    return each.unit == ANGLE and (each.old or 0.0) * (each.new or 0.0) < 0.0


def cut_title(each: Change, part: Part) -> str:
    """Which cut or side of the board a change belongs to."""
    if each.kind == STOCK:
        return ""
    if each.kind == BLANK:
        return "blank"
    where = named(each.where, part)
    if each.kind == ARRIS:
        return f"arris {where}"
    name = each.cut if not where or each.cut.startswith(where) else f"{where}: {each.cut}"
    return f"{name}, number {each.number}" if each.number > 1 else name


def named(text: str, part: Part) -> str:
    """Words with the board frame's sides under the names that the part gives them."""
    return _SIDES.sub(lambda found: part.called(found.group()), text)


def value_text(each: Change, value: float | str | None, part: Part, write: Writer) -> str:
    """A measure as the paper writes it."""
    if value is None:
        return NOTHING
    if isinstance(value, str):
        return value
    if each.unit == LENGTH:
        return (write.fine if each.kind == DADO and each.what == "width" else write).bare(value)
    return _angle_text(each.what, value, part, write)


def _angle_text(what: str, value: float, part: Part, write: Writer) -> str:
    """An angle without its sign; the sense in words."""
    if abs(value) < SQUARE:
        return {"mitre": "square", "bevel": "upright", "taper": "none"}.get(what, write.angle(0.0))
    sense = {"mitre": (f", long point at the {part.called(REFERENCE_EDGE)}", f", long point at the {part.called(FAR_EDGE)}"),
             "bevel": (f", {part.called(MARKED_FACE)} shorter", f", {part.called(HIDDEN_FACE)} shorter"),
             "taper": (f", narrower to the {part.called(END_B)}", f", narrower to the {part.called(END_A)}")}
    return write.angle(abs(value)) + sense.get(what, ("", ""))[0 if value > 0.0 else 1]
