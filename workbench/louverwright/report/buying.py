# SPDX-License-Identifier: LGPL-2.1-or-later
"""The buying list: what to buy for all vents of a job, how well it is used, and what is cut from each stick and sheet."""

from __future__ import annotations

import csv
import io
from collections import Counter
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import lru_cache
from itertools import pairwise

from ..core.assembly import CORNER_CUT, CROSSCUT, RIP, Cut, Part
from ..core.buying import CutStick, SheetBuy, Shop, StickBuy, sheets_to_buy, sticks_to_buy
from ..core.nesting import TURNS
from ..core.offcuts import read_offcuts
from ..core.prices import read_prices
from ..core.saw import end_of, setting
from ..core.sheet_plan import Laid, Sheet
from ..core.solid import END_A, END_B
from .cost_sheet import Goods, cost_sheet, money
from .csv_file import safe
from .cutting_diagram import sheet_drawing, stick_drawing
from .document import report_of
from .job import Job
from .page import Block, Bullets, Column, Figure, Heading, Pairs, Para, Report, Table, Together

CSV_HEAD = ("what", "stock", "length", "width", "number", "pieces", "left", "weight", "price", "sum")

#: Angles (degrees) below this are square.
LEAST_ANGLE = 0.05

SHARED = ("Where slanting ends lie point to heel one saw cut makes both: set its angle on the saw and do not square the stick "
          "between them. Pieces called face down lie with their marked face under; either face of theirs may be outside. All "
          "others lie marked face up. Joints and marks are laid out on the piece itself, once it is cut off.")
NOTES = (
    "Choose sound, straight sticks: the plan knows lengths, not knots. Move a cut past a knot where the offcut allows it.",
    "Each piece takes the whole width of its stick. The cut report says what is ripped, and "
    "whether before the piece is cut off.",
    "Set each length anew from the last cut; do not mark all of them along the stick at once, or the saw cuts add up.",
    "Look for nails and screws in old offcuts before you saw them. Support long sticks and sheets on both sides of the cut.",
)


@dataclass(frozen=True)
class Buying:
    """What a job buys."""

    sticks: tuple[StickBuy, ...]
    sheets: tuple[SheetBuy, ...]

    @property
    def weight(self) -> float:
        """The load in kg."""
        return sum(each.weight for each in self.sticks) + sum(each.weight for each in self.sheets)


def shop_of(job: Job) -> Shop:
    """How the job's shop cuts its wood."""
    spec = job.spec
    return Shop(spec.saw_kerf, spec.end_trim, spec.defect_allowance / 100.0, spec.shortest_offcut,
                read_offcuts(spec.shop_offcuts), read_prices(spec.prices))


@lru_cache(maxsize=16)
def buying(job: Job) -> Buying:
    """The plan for all vents of the job."""
    wanted = tuple((part, job.count(part)) for part in job.assembly.parts)
    shop = shop_of(job)
    return Buying(sticks_to_buy(wanted, shop), sheets_to_buy(wanted, shop))


def buying_list(job: Job) -> Report:
    """The paper, ready for any writer."""
    what = "a louvered roof vent" if job.vents == 1 else f"{job.vents} louvered roof vents"
    plan = buying(job)
    blocks = (*_to_buy(job, plan), *cost_sheet(job, shop_of(job), goods(job), plan.sticks), *_how_well(job, plan),
              *_sticks(job, plan), *_sheets(job, plan))
    return report_of(job, f"Buying list and cutting diagrams for {what}", blocks)


def _to_buy(job: Job, plan: Buying) -> Iterator[Block]:
    write, spec = job.writer, job.spec
    rows = [(row[1], row[2], row[3], row[4], row[7]) for row in _bought_rows(job)]
    yield Heading("What to buy")
    yield Table((Column("Stock", 2.0), Column("Length", 1.2, "right"), Column("Width", 1.0, "right"),
                 Column("Number", 0.8, "right"), Column("Weight", 1.0, "right")), tuple(rows),
                note=f"The load weighs {write.weight(plan.weight)} at the moisture of the stock list.")
    yield Pairs((("Saw cut", write.fine.length(spec.saw_kerf)), ("Trimmed off each end of a new stick",
                 write.length(spec.end_trim)), ("Reckoned lost to defects", f"{spec.defect_allowance:g} % of a new stick"),
                 ("Shortest offcut that is kept", write.length(spec.shortest_offcut))))
    yield from (Para(line, "caution") for line in _misfits(job, plan))
    yield from (Para(line) for line in _own_lines(job, plan))
    yield Bullets(NOTES)


def goods(job: Job) -> tuple[Goods, ...]:
    """All that is bought, in the order of the plan, with its price."""
    plan, shop = buying(job), shop_of(job)
    bought = [*((buy.stock, length, many) for buy in plan.sticks for length, many in buy.bought.items()),
              *((sheet.stock, sheet.length, sheet.count) for sheet in plan.sheets if sheet.count)]
    return tuple(Goods(stock, length, many, shop.price(stock, length)) for stock, length, many in bought)


def _bought_rows(job: Job) -> Iterator[tuple[str, ...]]:
    """One row for each stock and length, in the order of ``CSV_HEAD``."""
    write = job.writer
    for each in goods(job):
        stock = each.stock
        weight = each.count * each.length * stock.width * stock.thickness * 1e-9 * stock.density
        yield ("buy", stock.name, write.length(each.length), write.length(stock.width), str(each.count), "", "",
               write.weight(weight), *(("", "") if each.price is None else each.words))


def _misfits(job: Job, plan: Buying) -> Iterator[str]:
    write = job.writer
    for buy in plan.sticks:
        for part, many in buy.too_long:
            yield (f"{part.mark} ({many} of {write.length(part.board.length)}) fits no stick of {buy.stock.name}: the longest "
                   f"that is sold, {write.length(max(buy.stock.lengths))}, leaves {_usable(job, buy)} after trimming and "
                   "allowance. Trim less, allow less for defects, or order a longer stick for it.")
    for sheet in plan.sheets:
        for part, many in sheet.too_large:
            yield (f"{part.mark} ({many} of {write.size(part.board.length, part.board.width)}) is larger than any "
                   f"{sheet.stock.name} that is sold. Order a larger one for it, or choose another stock.")


def _usable(job: Job, buy: StickBuy) -> str:
    return job.writer.length(shop_of(job).usable(max(buy.stock.lengths)))


def _own_lines(job: Job, plan: Buying) -> Iterator[str]:
    """Which offcuts from the shop are cut, and which are not needed."""
    write = job.writer
    used = {buy.stock.name: Counter(buy.used_own) for buy in plan.sticks}
    for name, lengths in read_offcuts(job.spec.shop_offcuts).items():
        rest = Counter(lengths) - used.get(name, Counter())
        cut = ", ".join(map(write.length, used.get(name, Counter()).elements()))
        stay = ", ".join(map(write.length, sorted(rest.elements(), reverse=True)))
        yield f"{name} from the shop: " + "; ".join(filter(None, (cut and f"cut {cut}", stay and f"not needed {stay}"))) + "."


def _how_well(job: Job, plan: Buying) -> Iterator[Block]:
    write = job.writer
    yield Heading("How well it is used")
    if plan.sticks:
        yield Table((Column("Sticks", 1.6), Column("Bought", 1.2, "right"), Column("In pieces", 1.2, "right"),
                     Column("Offcuts kept", 1.6, "right"), Column("Waste", 1.4, "right"), Column("Proof", 3.0)),
                    tuple(_stick_row(job, buy) for buy in plan.sticks),
                    note="With these saw cuts, trims and lengths sold; each piece the whole width of its stick, slanting ends "
                         "point to heel where one cut makes two. Waste is saw cuts, trimmed ends and offcuts too short to "
                         "keep.")
    if plan.sheets:
        yield Table((Column("Sheets and rolls", 1.6), Column("Bought", 1.2, "right"), Column("Area", 1.2, "right"),
                     Column("Not in pieces", 1.4, "right"), Column("Bound", 3.0)),
                    tuple((buy.stock.name, str(buy.count), write.area(buy.area),
                           f"{write.area(buy.waste)} ({_share(buy.waste, buy.area)})",
                           _sheet_proof(buy)) for buy in plan.sheets if buy.count),
                    note="What is not in pieces is mostly the rest of the last sheet or roll, which is fit for use.")


def _sheet_proof(buy: SheetBuy) -> str:
    words = f"no plan can need fewer than {buy.least}"
    return f"{words}, and this one needs no more" if buy.count == buy.least else words


def _share(part: float, whole: float) -> str:
    return f"{100.0 * part / whole:.1f}\u00a0%" if whole else "–"


def _stick_row(job: Job, buy: StickBuy) -> tuple[str, ...]:
    far = job.writer.far
    kept = f"{len(buy.kept)}: {far.length(sum(buy.kept))}" if buy.kept else "none"
    whole = buy.length + sum(buy.used_own)
    return (buy.stock.name, far.length(buy.length), far.length(buy.in_parts), kept,
            f"{far.length(buy.waste)} ({_share(buy.waste, whole)})", proof(job, buy))


def proof(job: Job, buy: StickBuy) -> str:
    """What is proven of a plan, in words."""
    least = money(buy.bound) if buy.priced else job.writer.far.length(buy.bound)
    words = f"no plan can {'cost' if buy.priced else 'buy'} less than {least}"
    if not buy.proven:
        return f"not proven: {words}, and this one {'costs' if buy.priced else 'buys'} more"
    return words + ("; of these none has fewer sticks" if buy.fewest else "; whether fewer sticks would do is not proven")


def _sticks(job: Job, plan: Buying) -> Iterator[Block]:
    write = job.writer
    if plan.sticks:
        yield Heading("Sticks")
        yield Para("Lengths are to scale, widths are drawn larger. Cut from the left in the order of the numbers; each blank "
                   "is as long as its longest point. Above slanting ends stand their angles where there is room, m for mitre "
                   "and b for bevel; the table has all. Dashed is the lower face. Hatched wood falls off.", "small")
        if any(piece.shared for buy in plan.sticks for stick in buy.sticks for piece in stick.pieces):
            yield Para(SHARED, "small")
    for buy in plan.sticks:
        longest = max((stick.length for stick in buy.sticks), default=0.0)
        figures = [Figure(stick_drawing(stick, longest, write), _caption(job, stick)) for stick in _in_order(buy.sticks)]
        head = (Heading(f"{buy.stock.name}: {len_text(buy)}", 2), _part_table(job, buy))
        yield Together((*head, *figures[:1]))
        yield from figures[1:]


def len_text(buy: StickBuy) -> str:
    """How many sticks are cut."""
    count = sum(stick.count for stick in buy.sticks)
    return f"{count} stick{'s' if count != 1 else ''} to cut"


def _in_order(sticks: Sequence[CutStick]) -> list[CutStick]:
    """The shop's own first, then the longest."""
    return sorted(sticks, key=lambda s: (not s.own, -s.length, -s.count, tuple(part.mark for part in s.parts)))


def _caption(job: Job, stick: CutStick) -> str:
    write = job.writer
    keep = stick.left >= job.spec.shortest_offcut
    left = f"keep the offcut of {write.length(stick.left)}" if keep else f"{write.length(stick.left)} is left"
    from_where = "offcut from the shop" if stick.own else f"stick{'s' if stick.count > 1 else ''}"
    words = f"{stick_words(stick)}; {left}{shared_words(job, stick)}"
    return f"{stick.count} × {from_where}, {write.length(stick.length)}: {words}"


def shared_words(job: Job, stick: CutStick) -> str:
    """The slanting cuts that make two ends, and which pieces lie face down for it: '; one cut at 22.5° between 1 and 2'."""
    cuts: dict[str, list[tuple[int, int]]] = {}
    for number, (before, piece) in enumerate(pairwise(stick.pieces), start=1):
        if piece.shared:
            end = END_B if TURNS[before.turn][0] > 0.0 else END_A
            runs = cuts.setdefault(end_words(before.part, end, job), [])
            runs.append((runs.pop()[0] if runs and runs[-1][1] == number else number, number + 1))
    down = [str(number) for number, piece in enumerate(stick.pieces, start=1) if TURNS[piece.turn][2] < 0.0]
    words = "".join(f"; one cut ({angle}) between " + ", ".join(
        f"{first} and {last}" if last == first + 1 else f"each two from {first} to {last}" for first, last in runs)
        for angle, runs in cuts.items())
    return words + (f"; face down: {', '.join(down)}" if down else "")


def stick_words(stick: CutStick) -> str:
    """The marks in order, alike ones that follow each other with their number: 'B3a ×2, L1'."""
    runs: list[tuple[str, int]] = []
    for part in stick.parts:
        if runs and runs[-1][0] == part.mark:
            runs[-1] = (part.mark, runs[-1][1] + 1)
        else:
            runs.append((part.mark, 1))
    return ", ".join(mark if many == 1 else f"{mark}\u00a0×{many}" for mark, many in runs)


def _part_table(job: Job, buy: StickBuy) -> Table:
    """The pieces of a stock: how many, the blank's length and both ends."""
    count: Counter[Part] = Counter()
    for stick in buy.sticks:
        for part in stick.parts:
            count[part] += stick.count
    order = [part for part in job.assembly.parts if count[part]]
    rows = tuple((part.mark, str(count[part]), job.writer.length(part.board.length), end_words(part, END_A, job),
                  end_words(part, END_B, job)) for part in order)
    return Table((Column("Mark", 0.8), Column("Pieces", 0.8, "right"), Column("Blank", 1.2, "right"), Column("End A", 2.2),
                  Column("End B", 2.2)), rows)


def end_words(part: Part, end: str, job: Job) -> str:
    """The angles of the crosscut at an end, and 'square' for none."""
    cuts = [cut for cut in part.board.cuts if cut.kind == CROSSCUT and end_of(cut) == end]
    return "; ".join(_angles(cut, job) or "square" for cut in cuts) or "square"


def _sheets(job: Job, plan: Buying) -> Iterator[Block]:
    if any(buy.count for buy in plan.sheets):
        yield Heading("Sheets and rolls")
        yield Para("To scale. Rip the sheet along the dashed lines first, to the widths at their right ends, then cut "
                   "each strip from the left in the order of the numbers, every cut right through it. No piece is turned "
                   "across its grain. “Turned” pieces lie half round with the same face up, “face down” ones with the "
                   "marked face under, which only parts do of which either face may be outside. The outline is that of "
                   "the face that lies up; dashed is the other one.", "small")
    for buy in plan.sheets:
        for number, (sheet, many) in enumerate(buy.sheets):
            size = job.writer.size(buy.length, buy.stock.width)
            words = f"{many} × {buy.stock.name}, {size}: {sheet_words(sheet)}{slant_words(sheet)}"
            figure = Figure(sheet_drawing(sheet, buy, job.writer), words)
            yield Together((Heading(buy.stock.name, 2), _sheet_table(job, buy), figure)) if number == 0 else figure


def _sheet_table(job: Job, buy: SheetBuy) -> Table:
    """The pieces of a sheet's stock: how many, the blank along and across the grain, and their slanting and bevelled sides."""
    count = Counter(laid.mark for sheet, many in buy.sheets for _ in range(many) for laid in sheet.laid)
    rows = tuple((part.mark, str(count[part.mark]), job.writer.length(part.board.length), job.writer.length(part.board.width),
                  side_words(part, job)) for part in job.assembly.parts if count[part.mark])
    along = "Along the roll" if buy.stock.form == "mesh" else "Along the grain"
    return Table((Column("Mark", 0.8), Column("Pieces", 0.8, "right"), Column(along, 1.4, "right"),
                  Column("Across", 1.2, "right"), Column("Sides that are not square", 3.2)), rows)


def side_words(part: Part, job: Job) -> str:
    """A sheet piece's slanting and bevelled sides by their cuts, alike ones once with their number; 'none' for a rectangle."""
    words = Counter(f"{cut.kind} {angles}" for cut in part.board.cuts
                    if cut.kind in (RIP, CROSSCUT, CORNER_CUT) and len(cut.planes) == 1 and (angles := _angles(cut, job)))
    return "; ".join(text if many == 1 else f"{many}\u00a0× {text}" for text, many in words.items()) or "none"


def _angles(cut: Cut, job: Job) -> str:
    """Mitre (of a rip its taper) and bevel of a cut; '' for a square one."""
    at = setting(cut.planes[0])
    told = (("taper", at.taper) if cut.kind == RIP else ("mitre", at.mitre), ("bevel", at.bevel))
    return ", ".join(f"{name} {job.writer.angle(abs(angle))}" for name, angle in told if abs(angle) >= LEAST_ANGLE)


def sheet_words(sheet: Sheet) -> str:
    """The marks with their numbers."""
    return ", ".join(f"{mark}\u00a0×{many}" for mark, many in Counter(laid.mark for laid in sheet.laid).items())


def slant_words(sheet: Sheet) -> str:
    """How many saw cuts the slanting sides between two pieces take: one where it makes both, else two."""
    between = [laid for before, laid in pairwise(sheet.laid)
               if laid.strip == before.strip and (slants(before) or slants(laid))]
    one = sum(laid.shared for laid in between)
    words = [f"{count} of the slanting gaps: {told}" for count, told in (
        (one, "one saw cut makes both sides"), (len(between) - one, "two saw cuts, one for each piece")) if count]
    return "".join(f"; {each}" for each in words)


def slants(laid: Laid) -> bool:
    """Whether a piece has a side that is neither along nor across the sheet."""
    return any(own and min(abs(n[0]), abs(n[1])) > 1e-3 for n, _, own in laid.sides)


def buying_csv(job: Job) -> str:
    """The list as CSV (RFC 4180, with a byte order mark): what to buy, then each stick and sheet to cut."""
    plan, write = buying(job), job.writer
    out = io.StringIO()
    rows = csv.writer(out, lineterminator="\r\n")
    rows.writerow(CSV_HEAD)
    lines = list(_bought_rows(job))
    for buy in plan.sticks:
        lines += [("cut offcut" if stick.own else "cut", buy.stock.name, write.length(stick.length),
                   write.length(buy.stock.width), str(stick.count), stick_words(stick), write.length(stick.left), "", "", "")
                  for stick in _in_order(buy.sticks)]
    for each in plan.sheets:
        lines += [("cut", each.stock.name, write.length(each.length), write.length(each.stock.width), str(many),
                   sheet_words(sheet), "", "", "", "") for sheet, many in each.sheets]
    for line in lines:
        rows.writerow([safe(cell) for cell in line])
    return "\ufeff" + out.getvalue()
