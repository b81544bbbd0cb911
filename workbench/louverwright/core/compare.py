# SPDX-License-Identifier: LGPL-2.1-or-later
"""``compare(before, after)``: what became of every piece, so that pieces already cut can be kept.

A piece is the same when its board can be turned into the other, the grain along its length, and its stock is the
same.  Wood is handed on within its kind: first to the piece of the same id, then to any that is cut alike, then
to one that lies within the old finished board.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass, field, replace
from functools import cached_property

from .assembly import Assembly, Part
from .fits import fit
from .kinds import KINDS
from .marks import turn_between
from .measures import Change, changes_between, same_stock
from .parameters import PARAMETERS
from .part_wish import PartWish
from .spec import Spec

#: What became of a piece, by its id.
UNCHANGED, CHANGED, ADDED, REMOVED = "unchanged", "changed", "added", "removed"
#: Of pieces that one of the states draws but leaves out: left out now, made again.
LEFT_OUT, MADE_AGAIN = "left out", "made again"
#: Where its wood comes from: an old piece as it is, an old piece cut further, new wood; for a piece that is no longer wanted
#: 'handed on' to another id, or 'spare'.
KEEP, RECUT, NEW, HANDED_ON, SPARE = "keep", "recut", "new", "handed on", "spare"


@dataclass(frozen=True)
class PieceChange:
    """One piece id: its state, the marks it had and has ('' for none), and the id of the old piece that serves for it."""

    id: str
    state: str
    old_mark: str
    new_mark: str
    wood: str
    source: str = ""


@dataclass(frozen=True)
class Handed:
    """Pieces of one new part that old pieces of one old part serve for, as (old id, new id), in order of the new part."""

    old: Part
    new: Part
    pieces: tuple[tuple[str, str], ...]


@dataclass(frozen=True)
class PartChange:
    """Pieces whose ids stand in both states and that changed alike: ``turned`` tells that the frame of the old board
    was turned to compare."""

    old: Part
    new: Part
    ids: tuple[str, ...]
    turned: bool
    changes: tuple[Change, ...]


@dataclass(frozen=True)
class Gathered:
    """Pieces of one part that were added or removed."""

    part: Part
    ids: tuple[str, ...]


@dataclass(frozen=True)
class Comparison:
    """Two assemblies and what became of their pieces: the new ones in their order, then those removed."""

    before: Assembly = field(repr=False)
    after: Assembly = field(repr=False)
    pieces: tuple[PieceChange, ...]

    @cached_property
    def kept(self) -> tuple[Handed, ...]:
        """Old parts' pieces that serve as they are."""
        return self._handed(KEEP)

    @cached_property
    def recut(self) -> tuple[Handed, ...]:
        """Old parts' pieces that new ones can be cut from."""
        return self._handed(RECUT)

    @cached_property
    def changed(self) -> tuple[PartChange, ...]:
        """Pieces of one id that differ, gathered by the parts that they were and are of."""
        groups: dict[tuple[str, str], list[str]] = {}
        for piece in self.pieces:
            if piece.state == CHANGED:
                groups.setdefault((piece.old_mark, piece.new_mark), []).append(piece.id)
        return tuple(self._change(ids) for ids in groups.values())

    @cached_property
    def recut_changes(self) -> tuple[PartChange, ...]:
        """What to take off old pieces that serve for pieces of another id, where ``changed`` does not say it."""
        known = {(change.old.mark, change.new.mark) for change in self.changed}
        return tuple(PartChange(row.old, row.new, tuple(new for _, new in row.pieces), *changes_between(row.old, row.new))
                     for row in self.recut if (row.old.mark, row.new.mark) not in known)

    @cached_property
    def added(self) -> tuple[Gathered, ...]:
        """Pieces that only the later state has."""
        return _gathered(self.after, [p.id for p in self.pieces if p.state == ADDED])

    @cached_property
    def removed(self) -> tuple[Gathered, ...]:
        """Pieces that only the earlier state has."""
        return _gathered(self.before, [p.id for p in self.pieces if p.state == REMOVED])

    @cached_property
    def left_out(self) -> tuple[Gathered, ...]:
        """Pieces that were made and are left out now."""
        return _gathered(self.before, [p.id for p in self.pieces if p.state == LEFT_OUT])

    @cached_property
    def made_again(self) -> tuple[Gathered, ...]:
        """Pieces that were left out and are made now."""
        return _gathered(self.after, [p.id for p in self.pieces if p.state == MADE_AGAIN])

    @cached_property
    def left_out_otherwise(self) -> tuple[Gathered, ...]:
        """Pieces that both states leave out, and that are drawn otherwise now: what was got for them may not fit."""
        old, alike = _ids(self.before.left_out), _Pairs(cut_alike)
        return _gathered(self.after, [piece.id for part in self.after.left_out for piece in part.pieces
                                      if piece.id in old and not alike(self.before.part_of(piece.id), part)])

    @cached_property
    def to_make(self) -> tuple[Gathered, ...]:
        """Pieces that are cut from new wood."""
        return _gathered(self.after, [p.id for p in self.pieces if p.wood == NEW])

    @cached_property
    def left_over(self) -> tuple[Gathered, ...]:
        """Old pieces that serve for nothing."""
        used = {piece.source for piece in self.pieces}
        return _gathered(self.before, [piece.id for piece in self.before.pieces if piece.id not in used])

    def count(self, wood: str) -> int:
        """How many pieces of the later state have their wood so."""
        return sum(1 for piece in self.pieces if piece.wood == wood)

    @property
    def same(self) -> bool:
        """True where nothing changed in any piece."""
        return all(piece.state == UNCHANGED for piece in self.pieces)

    def _handed(self, wood: str) -> tuple[Handed, ...]:
        groups: dict[tuple[str, str], list[tuple[str, str]]] = {}
        for piece in self.pieces:
            if piece.wood == wood:
                source = self.before.part_of(piece.source)
                groups.setdefault((source.mark, piece.new_mark), []).append((piece.source, piece.id))
        return tuple(Handed(self.before.part_of(pairs[0][0]), self.after.part_of(pairs[0][1]), tuple(pairs))
                     for pairs in groups.values())

    def _change(self, ids: list[str]) -> PartChange:
        old, new = self.before.part_of(ids[0]), self.after.part_of(ids[0])
        return PartChange(old, new, tuple(ids), *changes_between(old, new))


def _ids(parts: Iterable[Part]) -> frozenset[str]:
    return frozenset(piece.id for part in parts for piece in part.pieces)


def _gathered(assembly: Assembly, ids: list[str]) -> tuple[Gathered, ...]:
    groups: dict[str, list[str]] = {}
    for each in ids:
        groups.setdefault(assembly.part_of(each).mark, []).append(each)
    return tuple(Gathered(assembly.part_of(group[0]), tuple(group)) for group in groups.values())


# ---- making one


def compare(before: Assembly, after: Assembly) -> Comparison:
    """What became of the pieces of ``before`` in ``after``."""
    served: dict[str, tuple[str, str]] = {}
    for kind in KINDS:
        served |= _served(before.of_kind(kind.id), after.of_kind(kind.id))
    old_ids, new_ids = _ids(before.parts), _ids(after.parts)
    was_left, is_left = _ids(before.left_out), _ids(after.left_out)
    alike = _Pairs(cut_alike)
    found = [_new_piece(piece.id, before if piece.id in old_ids else None, after, served, alike) for piece in after.pieces]
    found = [replace(each, state=MADE_AGAIN) if each.id in was_left else each for each in found]
    used = {source for _, source in served.values()}
    gone = [PieceChange(piece.id, LEFT_OUT if piece.id in is_left else REMOVED, before.part_of(piece.id).mark, "",
                        HANDED_ON if piece.id in used else SPARE)
            for piece in before.pieces if piece.id not in new_ids]
    return Comparison(before, after, (*found, *gone))


def cut_alike(old: Part, new: Part) -> bool:
    """Whether a piece of the old part is one of the new part."""
    return same_stock(old.stock, new.stock) and turn_between(old.board, new.board) is not None


def can_be_cut_from(old: Part, new: Part) -> bool:
    """Whether the new part surely lies within a finished piece of the old one, of the same stock."""
    return same_stock(old.stock, new.stock) and fit(old.board, new.board) is not None


class _Pairs:
    """A test of two parts, each pair asked once."""

    def __init__(self, test: Callable[[Part, Part], bool]) -> None:
        self._test = test
        self._known: dict[tuple[str, str], bool] = {}

    def __call__(self, old: Part, new: Part) -> bool:
        key = (old.mark, new.mark)
        if key not in self._known:
            self._known[key] = self._test(old, new)
        return self._known[key]


def _new_piece(piece_id: str, before: Assembly | None, after: Assembly, served: dict[str, tuple[str, str]],
               alike: _Pairs) -> PieceChange:
    wood, source = served.get(piece_id, (NEW, ""))
    new = after.part_of(piece_id)
    if before is None:
        return PieceChange(piece_id, ADDED, "", new.mark, wood, source)
    old = before.part_of(piece_id)
    state = UNCHANGED if alike(old, new) else CHANGED
    return PieceChange(piece_id, state, old.mark, new.mark, wood, source)


def _served(old_parts: tuple[Part, ...], new_parts: tuple[Part, ...]) -> dict[str, tuple[str, str]]:
    """For pieces of one kind: new id → (keep or recut, old id)."""
    left = {piece.id: part for part in old_parts for piece in part.pieces}
    wanted = {piece.id: part for part in new_parts for piece in part.pieces}
    served: dict[str, tuple[str, str]] = {}
    for wood, test in ((KEEP, _Pairs(cut_alike)), (RECUT, _Pairs(can_be_cut_from))):
        for own in (True, False):
            for new_id, new in wanted.items():
                if new_id not in served:
                    source = _source(new_id, new, left, test, own)
                    if source:
                        served[new_id] = (wood, source)
                        del left[source]
    return served


def _source(new_id: str, new: Part, left: dict[str, Part], test: _Pairs, own: bool) -> str:
    """The first old piece that passes the test: the one of the same id, or any; '' for none."""
    if own:
        return new_id if new_id in left and test(left[new_id], new) else ""
    return next((old_id for old_id, old in left.items() if test(old, new)), "")


def changed_parameters(before: Spec, after: Spec) -> tuple[str, ...]:
    """The names of the parameters whose values differ, in the table's order."""
    return tuple(row.name for row in PARAMETERS if before.values[row.name] != after.values[row.name])


def changed_wishes(before: Spec, after: Spec) -> tuple[tuple[str, PartWish, PartWish], ...]:
    """Kind id, old and new wish of the kinds that are wished for otherwise, in the kind table's order."""
    pairs = ((kind.id, before.wish(kind), after.wish(kind)) for kind in KINDS)
    return tuple(each for each in pairs if each[1] != each[2])
