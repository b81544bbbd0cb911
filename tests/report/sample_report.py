"""A report that uses every block of the page model: a made-up vent with made-up numbers.

`sample_report(parts)` has that many part blocks of the kind the real report has.
"""

from __future__ import annotations

from louverwright.report.drawing import Area, Arrow, Circle, Dim, Label, Line
from louverwright.report.page import (
    Block,
    Bullets,
    Cell,
    Column,
    Figure,
    Heading,
    PageBreak,
    Pairs,
    Para,
    Report,
    Row,
    Table,
    Together,
    as_cell,
    walk,
)
from louverwright.report.strokes import Letters, fitted, primitives

USER_NOTE = "Ridge side <script>alert('moss & \"lichen\"')</script> faces north"
GLYPHS = ("400 × 90 × 19 mm, 35.26° − 0.5, 12½\", ¾, µ, α β Ω, äöüß, Ł, œ, “a” – b — c…, "
          "≤ ≥ ≈ ± → ← ↑ ↓, office flat fit")
BOARD = 1 / 6       # paper to board, in the figures


def board_figure(length: float, width: float, mark: str) -> Figure:
    """A board seen flat, with a mitred end, hidden slots, its grain and dimensions both long and short."""
    long, high, skew = length * BOARD, width * BOARD, width * BOARD * 0.5
    outline = ((0.0, 0.0), (long, 0.0), (long - skew, high), (0.0, high))
    waste = ((long - 14, 1.0), (long - 9, 1.0), (long - 9, high - 2), (long - 14, high - 2))
    slots = [Line(((x, 2.0), (x + high - 4.0, high - 2.0)), "hidden") for x in (12.0, 24.0, 36.0)]
    items = (
        Area((outline,), "wood"),
        *slots,
        Line(((0.0, high / 2), (long, high / 2)), "centre"),
        Circle(6.0, high / 2, 1.2, "face", "thin"),
        Area((waste,), "waste", "thin"),
        Arrow(40.0, high * 0.8, 58.0, high * 0.8, both=True, style="grain"),
        Label(60.0, high * 0.8 - 1.0, "grain", 6.5),
        Dim((0.0, 0.0), (long, 0.0), -7.0, f"{length:.1f}"),
        Dim((long - 14, high), (long - 9, high), 4.0, "30.0"),
        Dim((0.0, 0.0), (0.0, high), 6.0, f"{width:.1f}"),
        Label(long - 22.0, 2.0, f"{mark} face", 6.5, "end"),
    )
    return Figure(fitted(items, description=f"Board {mark} from its face side, right end mitred."),
                  f"{mark}: face side, 1 : 6. Dashed: slots on the back.")


def cuts_table(mark: str, count: int) -> Table:
    columns = (Column("Cut", 0.6), Column("Blade tilt", 1.0, "right"), Column("Mitre gauge", 1.1, "right"),
               Column("Fence", 1.0, "right"), Column("Which face down", 2.4), Column("Done", 0.6, "centre"))
    rows = tuple((f"{mark}.{n}", f"{12.25 * n:.2f}°", f"{90 - 7.5 * n:.1f}°", f"{88.0 + 31.5 * n:.1f} mm",
                  "outer face down, long edge to the fence", "☐") for n in range(1, count + 1))
    return Table(columns, rows, caption=f"Cuts of {mark}, in order",
                 note="Tilt from upright; gauge from square.")


def part_block(number: int) -> Together:
    """As a part is shown in the real report."""
    mark = f"B{number}L"
    pairs = Pairs((("Pieces", "2, one of them mirrored"), ("Blank", "640.0 × 140.0 × 19.0 mm"),
                   ("Stock", "Board 19 × 140"), ("Grain", "along the length → ridge"),
                   ("Finished", f"{560.0 + 3 * number:.1f} mm"), ("Mass", "1.1 kg")), columns=1)
    row = Row((board_figure(560.0 + 3 * (number % 8), 140.0, mark), pairs), shares=(112.0, 62.0))
    tables = (cuts_table(mark, 3 + number % 3),)
    slots = (Row((slot_table(mark, 1), slot_table(mark, 7))),) if number % 2 else ()
    return Together((Heading(f"{mark} Gable leg, left", 2, anchor=f"part.{number}"), row, *tables, *slots))


def slot_table(mark: str, first: int) -> Table:
    columns = (Column("Slot", 0.5), Column("From the end", 1.0, "right"), Column("Depth", 1.0, "right"))
    rows = tuple((str(n), f"{48.0 * n:.1f} mm", "6.0 mm") for n in range(first, first + 6))
    return Table(columns, rows, caption=f"Slots of {mark}, {first} to {first + 5}")


def dimensions_figure() -> Figure:
    """Dimensions from 1 mm to long, all ways round, in a drawing wider than any paper."""
    long = tuple(Dim((0.0, y), (length, y), 3.0, f"{length:.1f}")
                 for y, length in ((0.0, 1.0), (10.0, 3.0), (20.0, 6.0), (30.0, 12.0), (40.0, 240.0)))
    upright = tuple(Dim((x, 0.0), (x, length), offset, f"{length:.1f}")
                    for x, length, offset in ((60.0, 1.0, 3.0), (80.0, 5.0, -3.0), (100.0, 25.0, 3.0)))
    slanted = (Dim((120.0, 0.0), (150.0, 17.3), 4.0, "30° up"),
               Dim((200.0, 0.0), (170.0, 17.3), -4.0, "34.6"))
    lines = tuple(Line((dim.p1, dim.p2)) for dim in (*long, *upright, *slanted))
    arrows = (Arrow(215.0, 5.0, 216.0, 5.0), Arrow(215.0, 10.0, 225.0, 10.0, both=True, style="grain"))
    shade = Area((((215.0, 15.0), (235.0, 15.0), (235.0, 30.0), (215.0, 30.0)),
                  ((220.0, 18.0), (230.0, 18.0), (230.0, 27.0), (220.0, 27.0))), "shade", "")
    items = (*lines, *long, *upright, *slanted, *arrows, shade, Label(215.0, 32.0, "<b>frame</b> & hole"))
    return Figure(fitted(items, description="Dimensions of many lengths."), "Scaled to the paper's width.")


def setup_table(rows: int = 40) -> Table:
    """A long and wide table; some of its rows take more than one line."""
    columns = (Column("No.", 0.5, "right"), Column("Tilt", 0.8, "right"), Column("Gauge", 0.8, "right"),
               Column("Fence", 1.0, "right"), Column("Stop", 1.0, "right"), Column("Face down", 1.6),
               Column("Pieces", 0.9, "right"), Column("Parts", 1.4), Column("Remark", 2.0))
    turn = "turn the board end for end, keep the face"
    body = tuple(
        (Cell(f"S{n}", bold=True, anchor=f"setup.{n}"), f"{n * 1.25:.2f}°", f"{90 - n * 0.5:.1f}°",
         f"{100 + 7.5 * n:.1f} mm", f"{300 + n:.1f} mm", "outer", str(1 + n % 4),
         Cell(f"B{1 + n % 3}L", link=f"part.{1 + n % 3}"),
         turn if n % 5 == 0 else "as before") for n in range(1, rows + 1))
    return Table(columns, body, caption="Set-ups, by blade tilt", note="One line is one setting of the saw.")


def opening() -> tuple[Block, ...]:
    return (
        Heading("Summary", 1, anchor="summary"),
        Para("The vent stands on the ridge of a barn with a roof of 35.26° and has four louvered sides. "
             "All lengths are of the finished part unless a column says otherwise. " + GLYPHS),
        Para("Two louvers of side B are less than 2 mm from the corner post. Cut one and try it before "
             "the rest.", "caution"),
        Bullets(("Boards are counted with one saw cut between neighbours.",
                 "Angles are those on the saw's scales: 0° tilt is an upright blade, and this point is made "
                 "long enough to need a second line in print.", "No glue on the louvers.")),
        Pairs((("Net opening", "0.184 m²"), ("Height", "1 214 mm"), ("Base", "760 × 760 mm"), ("Parts", "64"),
               ("Mass", "48.2 kg"), ("Note", USER_NOTE))),
        Pairs((("A", "1"), ("B", "2"), ("C", "3"), ("D", "4")), columns=3),
        Para("Masses from the density in the stock list.", "small"),
        Heading("Check before cutting", 3),
        Para("First line of a note.\nSecond line of the note."),
    )


def sample_report(parts: int = 3) -> Report:
    """The report; `parts` of three or more, which the set-up table's links need."""
    blocks: tuple[Block, ...] = (
        *opening(),
        Heading("Set-up sheet"), setup_table(),
        PageBreak(),
        Heading("Parts"), *(part_block(number) for number in range(1, parts + 1)),
        Heading("Notes"), Para("Nothing else was asked for."), dimensions_figure(),
    )
    facts = (("Project", "Hay barn, north ridge"), ("Drawn by", "The workshop"), ("Date", "2031-04-09"),
             ("Revision", "C"), ("Units", "mm, degrees"))
    return Report("Louvered ridge vent", "Cutting and set-up report", facts, blocks,
                  "Hay barn, north ridge · revision C · check every length before cutting")


def strings_of(report: Report) -> list[str]:
    """Every string that a reader of the report sees, page numbers aside, in no particular order."""
    facts = [text for pair in report.title_block for text in pair]
    return [report.title, report.subtitle, *facts,
            *(text for block in walk(report.blocks) for text in _strings_in(block)), report.footer]


def _strings_in(block: Block) -> list[str]:
    if isinstance(block, Heading | Para):
        return [block.text]
    if isinstance(block, Bullets):
        return list(block.items)
    if isinstance(block, Pairs):
        return [text for pair in block.rows for text in pair]
    if isinstance(block, Table):
        cells = [as_cell(cell).text for row in block.rows for cell in row]
        return [block.caption, *(column.title for column in block.columns), *cells, block.note]
    if isinstance(block, Figure):
        letters = [part.text for part in primitives(block.drawing) if isinstance(part, Letters)]
        return [block.caption, *letters]
    return []
