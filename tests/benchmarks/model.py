# SPDX-License-Identifier: LGPL-2.1-or-later
"""How long a vent takes in a document, beside plain modelling of the same parts in the same process.

    /usr/bin/python3 tests/benchmarks/model.py [--runs 7] [--json FILE]

Plain modelling is what a scripted model would do: each part's blank as a box, one boolean of the kernel for each cut, the
pieces as placed copies.  Everything that the add-on remembers is forgotten before each full rebuild.  Medians (ms).
"""

from __future__ import annotations

import argparse
import gc
import json
import os
import sys
import tempfile
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from itertools import count
from pathlib import Path
from statistics import median
from typing import Any

TESTS = Path(__file__).resolve().parents[1]
sys.path[:0] = [str(TESTS.parent / "workbench"), str(TESTS / "core"), str(TESTS / "host")]
os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from conftest import load_freecad  # noqa: E402

if "FreeCAD" not in sys.modules:
    load_freecad()

import FreeCAD  # noqa: E402
import Part  # noqa: E402
from making import EXAMPLES, job_of, scenario_of  # noqa: E402

from louverwright.core.assembly import Board, Cut, board_shell  # noqa: E402
from louverwright.core.checks import checked_spec  # noqa: E402
from louverwright.core.layout import layout  # noqa: E402
from louverwright.core.solid import box, common  # noqa: E402
from louverwright.exchange.pdf import write_pdf  # noqa: E402
from louverwright.features.shapes import freecad_placement, vector  # noqa: E402
from louverwright.features.vent import make_vent, parts_of  # noqa: E402
from louverwright.places import stock_list  # noqa: E402
from louverwright.report.buying import buying  # noqa: E402
from louverwright.report.csv_file import to_csv  # noqa: E402
from louverwright.report.document import document  # noqa: E402
from louverwright.report.html import to_html  # noqa: E402
from louverwright.report.json_file import to_json  # noqa: E402

STANDARD = "hay-barn-28ft"
#: Vents by what grows in them.
LAYOUTS: dict[str, dict[str, Any]] = {
    "4 sides": {}, "8 sides": {"sides": 8, "width": 1400.0, "king_post_stock": "6x6"},
    "8 slats": {"slat_count": 8, "louver_height": 700.0, "width": 800.0, "screen": False},
    "32 slats": {"slat_count": 32, "louver_height": 2150.0, "width": 800.0, "screen": False}}
#: Properties that touch one stage, each with a value to begin from and a step that makes it new (mm, degrees).
ONE_STAGE = {"CladdingClearance": (25.0, 0.1), "SlatAngle": (45.0, 0.1), "Overhang": (150.0, 0.5)}
#: How far beyond the blank a waste is drawn (mm).
BEYOND = 25.0


def forget() -> None:
    """Empties everything that the add-on remembers."""
    for each in gc.get_objects():
        if type(each).__name__ == "_lru_cache_wrapper" and each.__module__.startswith("louverwright"):
            each.cache_clear()


def timed(work: Callable[[], Any], runs: int, before: Callable[[], Any] = lambda: None) -> float:
    """The median time of so many runs (ms), each after ``before``, which is not counted."""
    times = []
    for _ in range(runs):
        before()
        gc.collect()
        begun = time.perf_counter()
        work()
        times.append(1000.0 * (time.perf_counter() - begun))
    return median(times)


# ---- plain modelling


def waste_shape(cut: Cut, board: Board) -> Part.Shape:
    """What a cut takes away, made of faces, as far as it can matter."""
    if cut.bore is not None:
        return Part.makeCylinder(cut.bore.diameter / 2.0, cut.bore.length, vector(cut.bore.start), vector(cut.bore.direction))
    high = (board.length + BEYOND, board.width + BEYOND, board.thickness + BEYOND)
    cell = common(box((-BEYOND, -BEYOND, -BEYOND), high), cut.planes)
    assert cell is not None
    faces = [Part.Face(Part.makePolygon([vector(p) for p in (*facet.points, facet.points[0])])) for facet in cell]
    return Part.Solid(Part.Shell(faces))


def cut_out(board: Board) -> Part.Shape:
    """A board by one boolean a cut."""
    shape = Part.makeBox(*board.size)
    for cut in board.cuts:
        shape = shape.cut(waste_shape(cut, board))
    return shape


def plain(parts: Any, once: bool) -> Part.Shape:
    """All pieces, each cut out by itself, or as copies of the ``once`` cut out part of their mark."""
    shapes = []
    for part in parts:
        shape = cut_out(part.board)
        for number, piece in enumerate(part.pieces):
            shape = shape if once or not number else cut_out(part.board)
            shapes.append(shape.transformed(freecad_placement(piece.placement).toMatrix()))
    return Part.Compound(shapes)


# ---- the add-on


@contextmanager
def vent_of(values: dict[str, Any]) -> Iterator[Any]:
    """A vent in a document of its own."""
    opened = FreeCAD.newDocument("Benchmark")
    try:
        yield make_vent(opened, **values)
    finally:
        FreeCAD.closeDocument(opened.Name)


def touch_all(vent: Any) -> None:
    """Has all of a vent be made anew, from nothing remembered."""
    forget()
    vent.ModelKey = ""
    for part in parts_of(vent):
        part.ContentKey = ""
        part.touch()
    vent.touch()


def rebuild(vent: Any, runs: int) -> float:
    """A full rebuild: properties to solids in the document."""
    return timed(vent.Document.recompute, runs, lambda: touch_all(vent))


def changed(vent: Any, name: str, start: float, step: float, runs: int) -> float:
    """A change of one property, the document recomputed; each value is new to the add-on."""
    values = (start + number * step for number in count(1))

    def once() -> None:
        setattr(vent, name, next(values))
        vent.Document.recompute()
    found = timed(once, runs)
    assert vent.isValid(), vent.getStatusString()
    return found


def several(number_of: int, runs: int, step: float) -> float:
    """So many vents in one document, made anew, their widths ``step`` apart (0: all equal)."""
    opened = FreeCAD.newDocument("Benchmark")
    try:
        vents = [make_vent(opened, width=900.0 + number * step) for number in range(number_of)]

        def touch() -> None:
            for vent in vents:
                touch_all(vent)
        return timed(opened.recompute, runs, touch)
    finally:
        FreeCAD.closeDocument(opened.Name)


def memory() -> float:
    """What the program holds now (MB)."""
    pages = int(Path("/proc/self/statm").read_text(encoding="ascii").split()[1])
    return pages * os.sysconf("SC_PAGE_SIZE") / 1e6


def ten_in_memory() -> dict[str, float]:
    """What ten different vents in a document add to the program (MB), and the saved file of the standard example."""
    forget()
    gc.collect()
    before = memory()
    opened = FreeCAD.newDocument("Benchmark")
    for number in range(10):
        make_vent(opened, width=900.0 + 20.0 * number)
    found = {"ten different vents in memory, MB": memory() - before}
    FreeCAD.closeDocument(opened.Name)
    with vent_of(scenario_of(STANDARD).values) as vent, tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "vent.FCStd"
        vent.Document.saveAs(str(path))
        found["saved file of the standard example, MB"] = path.stat().st_size / 1e6
    return found


def distinct(**values: Any) -> tuple[float, int, int]:
    """Time of a layout from nothing (ms, median of 7), its number of marks, and of the planes that these are sawn to."""
    spec = checked_spec(values, stock_list("us"))
    parts = layout(spec).parts
    planes = sum(len(cut.planes) for part in parts for cut in part.board.cuts)
    return timed(lambda: layout(spec), 7, forget), len(parts), planes


def papers(runs: int) -> dict[str, float]:
    """The standard example's report, when the model has just been made: its parts and their faces are remembered, no words."""
    def fresh() -> Any:
        return job_of.__wrapped__(STANDARD)

    def made() -> None:
        forget()
        for part in layout(fresh().spec).parts:
            board_shell(part.board)

    def texts() -> None:
        job = fresh()
        to_html(document(job)), to_json(job), to_csv(job)

    with tempfile.TemporaryDirectory() as folder:
        return {"report: HTML, JSON, CSV": timed(texts, runs, made),
                "report: PDF": timed(lambda: write_pdf(document(fresh()), Path(folder) / "cuts.pdf"), runs, made)}


def slowest_buying() -> float:
    """The buying list of the example that takes longest (ms), its job laid out; every stick's plan must be proven."""
    times = []
    for name in EXAMPLES:
        job = job_of(name)
        begun = time.perf_counter()
        plan = buying.__wrapped__(job)
        times.append(1000.0 * (time.perf_counter() - begun))
        assert all(each.proven for each in plan.sticks), name
    return max(times)


def measure(runs: int) -> dict[str, float]:
    """Every figure, by its name (ms, where it says nothing else)."""
    scenario, parts = scenario_of(STANDARD), job_of(STANDARD).assembly.parts
    figures = {"plain modelling, each mark once": timed(lambda: plain(parts, once=True), runs),
               "plain modelling, each piece": timed(lambda: plain(parts, once=False), runs)}
    with vent_of(scenario.values) as vent:
        figures["full rebuild"] = rebuild(vent, runs)
        volume = plain(parts, once=True).Volume
        assert abs(vent.Shape.Volume - volume) < 1e-6 * volume
        for name, (start, step) in ONE_STAGE.items():
            figures[f"change of {name}"] = changed(vent, name, start, step, runs)
    for number_of, step in ((1, 0.0), (10, 2.0), (10, 0.0)):
        name = f"{number_of} vents, {'different' if step else 'equal'}" if number_of > 1 else "1 vent"
        figures[name] = several(number_of, runs, step)
    for name, values in LAYOUTS.items():
        time_of, marks, planes = distinct(**values)
        figures[f"layout, {name}"] = time_of
        figures[f"layout, {name}, a mark"], figures[f"layout, {name}, a plane"] = time_of / marks, time_of / planes
    return {**figures, **papers(runs), "buying list, slowest example": slowest_buying(), **ten_in_memory()}


def ratios(found: dict[str, float]) -> list[tuple[str, float, float]]:
    """What is asked: in words, the figure, and its limit."""
    full = found["full rebuild"]
    return [
        ("full rebuild ÷ plain modelling of each piece", full / found["plain modelling, each piece"], 1 / 5),
        ("full rebuild ÷ plain modelling of each mark once", full / found["plain modelling, each mark once"], 1 / 5),
        *((f"change of {name} ÷ full rebuild", found[f"change of {name}"] / full, 1 / 3) for name in ONE_STAGE),
        ("10 different vents ÷ one", found["10 vents, different"] / found["1 vent"], 10.5),
        ("10 equal vents ÷ one", found["10 vents, equal"] / found["1 vent"], 1.5),
        *((f"layout, {more} ÷ {less}, a {each}", found[f"layout, {more}, a {each}"] / found[f"layout, {less}, a {each}"], 1.2)
          for each in ("mark", "plane") for less, more in (("4 sides", "8 sides"), ("8 slats", "32 slats"))),
        ("report ÷ full rebuild", found["report: HTML, JSON, CSV"] / full, 1 / 2),
        ("buying list of the slowest example, s", found["buying list, slowest example"] / 1000.0, 2.0),
        ("PDF, s", found["report: PDF"] / 1000.0, 2.0),
        ("ten different vents, MB", found["ten different vents in memory, MB"], 150.0),
        ("saved file, MB", found["saved file of the standard example, MB"], 3.0),
    ]


def main() -> int:
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--runs", type=int, default=7)
    parser.add_argument("--json", type=Path)
    options = parser.parse_args()
    found = measure(options.runs)
    asked = ratios(found)
    for name, value in found.items():
        print(f"{name:52s} {value:9.2f}{'' if name.endswith('MB') else ' ms'}")
    for name, value, limit in asked:
        print(f"{name:52s} {value:9.2f}  asked {limit:.2f}  {'held' if value <= limit else 'NOT held'}")
    if options.json:
        record = {"figures": found, "ratios": [{"name": name, "value": value, "limit": limit} for name, value, limit in asked]}
        options.json.write_text(json.dumps(record, indent=1) + "\n", encoding="utf-8")
    return 0


if __name__ == "__main__":
    raise SystemExit(main())
