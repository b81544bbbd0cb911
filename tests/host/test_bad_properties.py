# SPDX-License-Identifier: LGPL-2.1-or-later
"""Bad input in a document: properties, expressions, panel fields, roof picks; and a disk that is full."""

from __future__ import annotations

import math
import os
import resource
import subprocess
import sys
from itertools import product
from pathlib import Path

import FreeCAD
import Part
import pytest

sys.path.append(str(Path(__file__).resolve().parent))
from roofs import feature, roof_shape
from vents import errors_in, model, not_settled

from louverwright.core.parameters import ANGLE, BY_NAME, CHOICE, COUNT, LENGTH, NUMBER, PARAMETERS, STOCK, TEXT
from louverwright.core.roof_planes import RoofError
from louverwright.core.spec import SpecError, plain_finding
from louverwright.core.units import LengthStyle, ReadError
from louverwright.exchange.host import KNOWN
from louverwright.features.model import spec_of
from louverwright.features.roof_reading import RoofPick, read_roof
from louverwright.features.vent import make_vent
from louverwright.panels.reading import read

ROOT = Path(__file__).resolve().parents[2]
SCRIPT, ESCAPE, LONG = "<script>alert(1)</script>", "\x1b[2J", "A" * 5_000
FIELDS = [row for row in PARAMETERS if row.kind in (LENGTH, ANGLE, COUNT, NUMBER)]
#: What is put into every property of these kinds at once.  FreeCAD's own properties make 0 of a negative length.
MEASURES = (LENGTH, ANGLE, NUMBER)
ROUNDS = {
    "NaN": (MEASURES, math.nan), "infinity": (MEASURES, math.inf), "1e12": (MEASURES, 1e12), "1e300": (MEASURES, 1e300),
    "the largest count": ((COUNT,), 2**31 - 1), "a count below nought": ((COUNT,), -5),
    "a number below nought": ((NUMBER,), -5.0), "a long text": ((TEXT,), LONG),
    "a text that clears the screen": ((TEXT,), ESCAPE), "markup for stock": ((STOCK,), SCRIPT),
    "long stock": ((STOCK,), LONG), "stock that clears the screen": ((STOCK,), ESCAPE)}


@pytest.fixture(scope="module")
def vent():
    """One vent for all: each test leaves it as it was."""
    made = FreeCAD.newDocument("Bad")
    name = made.Name
    yield make_vent(made, project="Hay barn")
    if name in FreeCAD.listDocuments():
        FreeCAD.closeDocument(name)


@pytest.mark.parametrize("name", ROUNDS)
def test_bad_values_of_all_properties_are_told_at_once_and_the_model_stays(name, vent) -> None:
    kinds, bad = ROUNDS[name]
    rows = [row for row in PARAMETERS if row.kind in kinds and row.name != "stock_list"]
    before = model(vent)
    kept = {row.property_name: getattr(vent, row.property_name) for row in rows}
    for row in rows:
        setattr(vent, row.property_name, bad)
    vent.Document.recompute()
    with pytest.raises(SpecError) as refusal:
        spec_of(vent)
    told = str(refusal.value).splitlines()
    assert vent.getStatusString().startswith(told[0])    # FreeCAD cuts a long status short
    assert len(told) == len(rows)
    for row, line in zip(rows, told, strict=True):
        assert line.startswith(row.label.capitalize()) and line.endswith("."), line
        assert len(line) < 1_000 and "\x1b" not in line, line
    assert model(vent)[1:] == before[1:]
    for name_, value in kept.items():
        setattr(vent, name_, value)
    vent.Document.recompute()
    assert not_settled(vent.Document) == [] and model(vent) == before


def test_what_is_of_the_wrong_type_is_refused_by_the_property_itself(vent) -> None:
    before = model(vent)
    for row, bad in product(PARAMETERS, (None, [], {}, object())):
        if row.kind == CHOICE and bad == []:
            continue    # to an enumeration a list is its new choices, whoever's it is
        with pytest.raises((TypeError, ValueError, FreeCAD.Base.FreeCADError)):
            setattr(vent, row.property_name, bad)
    for row in (row for row in PARAMETERS if row.kind == CHOICE):
        for bad in (SCRIPT, "nothing", ""):
            with pytest.raises(ValueError, match="not part of the enumeration"):
                setattr(vent, row.property_name, bad)
    vent.Document.recompute()
    assert model(vent) == before


@pytest.mark.parametrize("text", ["1 / 0 mm", "Nothing.Length", "900 kg", "35 deg", "<<wide>>", "1e300 m", "sqrt(-1) * 1 mm",
                                  "900 mm ^ 3"])
def test_an_expression_that_is_no_length_is_told(text, vent) -> None:
    before = model(vent)
    try:
        vent.setExpression("Width", text)
    except (RuntimeError, FreeCAD.Base.FreeCADError):
        return    # FreeCAD takes no such expression
    vent.Document.recompute()
    assert "Width" in vent.getStatusString() or "Invalid" in vent.State, text
    assert model(vent)[1:] == before[1:]
    vent.setExpression("Width", "900 mm")    # FreeCAD keeps a wrong unit until there is a right one
    vent.Document.recompute()
    vent.setExpression("Width", None)
    vent.Document.recompute()
    assert not_settled(vent.Document) == []


@pytest.mark.parametrize("bad", ["\ud800", "\x00", ESCAPE, LONG])
def test_a_text_that_a_file_cannot_hold_comes_into_no_document(bad, document) -> None:
    with pytest.raises(SpecError, match="Project: it has"):
        make_vent(document, project=bad)
    assert document.Objects == []


# ---- fields of the panel

TYPED = ["wide", "NaN", "inf", "1e5", "0x10", "--5", "1/0", "1_000", "٣٣٣", "9" * 5_000, SCRIPT, "=1+1", ESCAPE, "a\0b", LONG,
         "900 kg",
         "12 mm 3 mm 4 mm", "1.2.3", "__import__('os')", "²", "½½", "\u202e9"]


@pytest.mark.parametrize("row", FIELDS, ids=lambda row: row.name)
def test_what_is_typed_into_a_field_is_a_value_within_limits_or_told(row) -> None:
    for style, text in product((LengthStyle("mm", 0.1), LengthStyle("ft-in", 64)), TYPED):
        with pytest.raises(ReadError) as told:
            read(row, text, style)
        assert str(told.value).endswith(".") and len(str(told.value)) < 300 and "\x1b" not in str(told.value)
    for text in ("1000000000000", "-1000000000000"):
        try:
            value = read(row, text, LengthStyle("mm", 0.1))
        except ReadError:
            continue
        assert plain_finding(row, value).sentence.startswith(row.label.capitalize())


# ---- roof picks

PATHS = ["Face0", "Face7", "Face999999999999", "Face-1", "face1", "Face1.Face2", "Edge1", "Edge999", "Vertex1", "Solid1",
         "Wire1", "../x", "..",
         ".", "Nothing.Face1", "Roof.Roof.Face1", SCRIPT, "=1+1", "Face1\x00", ESCAPE, "Face١", "Face1 ", "F" * 10_000,
         "?Face1", ";Face1;"]


#: Of these things the ones that have a level top, which a vent can stand on (a lone sheet has no underside).
FLAT = ("box", "tiny", "huge", "below")


def bad_roofs(document):
    """Objects that no vent can stand on, by what they are."""
    sheet = document.addObject("Spreadsheet::Sheet", "Sheet")
    group = document.addObject("App::DocumentObjectGroup", "Group")
    empty = document.addObject("Part::Feature", "Empty")
    sphere, box = document.addObject("Part::Sphere", "Sphere"), document.addObject("Part::Box", "Box")
    tiny, huge = feature(document, Part.makeBox(1e-6, 1e-6, 1e-6)), feature(document, Part.makeBox(1e9, 1e9, 1e9))
    line, point = feature(document, Part.makeLine((0, 0, 0), (0, 0, 9))), feature(document, Part.Vertex(0, 0, 0))
    wall = feature(document, Part.makePlane(900.0, 900.0, FreeCAD.Vector(), FreeCAD.Vector(1, 0, 0)))
    below = feature(document, Part.makePlane(900.0, 900.0, FreeCAD.Vector(), FreeCAD.Vector(0, 0, -1)))
    document.recompute()
    return {"sheet": sheet, "group": group, "empty": empty, "sphere": sphere, "box": box, "tiny": tiny, "huge": huge,
            "line": line,
            "point": point, "wall": wall, "below": below}


def refused(*picks) -> bool:
    """Whether a pick is refused with a sentence; the one roof that is good is another's test."""
    try:
        read_roof(*picks)
    except RoofError as error:
        assert str(error).endswith(".") and len(str(error)) < 700 and "\x1b" not in str(error), str(error)
        return True
    return False


def test_a_pick_that_is_no_roof_is_told(document) -> None:
    roof = feature(document, roof_shape())
    document.recompute()
    left = [path for path in PATHS if not refused(RoofPick(roof, (path,)))]
    assert not set(left) - {"Face7", "Edge1", ".", ".."}, left    # nothing behind a dot is the object as a whole
    assert refused(RoofPick(roof, tuple(PATHS)))


def test_things_that_are_no_roof_are_told(document) -> None:
    roof = feature(document, roof_shape())
    things = bad_roofs(document)
    for name, thing in things.items():
        for path in ("", "Face1", "Edge1", "Vertex1"):
            top = path in ("", "Face1") and name in FLAT
            assert top or refused(RoofPick(thing, (path,) if path else ())), (name, path)
        assert refused(RoofPick(thing, ("Edge1",)), RoofPick(roof, ("Vertex1",))), name


# ---- a full disk


@pytest.mark.parametrize("most", [100_000, 400_000])
def test_a_model_that_was_cut_short_by_a_full_disk_is_noticed(most, tmp_path) -> None:
    """FreeCAD tells nothing of a document that did not fit: it once lay there as a broken file."""
    for name in ("model.FCStd", "model.step", "cuts.csv"):
        (tmp_path / name).write_text("as it was", encoding="utf-8")
    python = sys.executable if "python" in Path(sys.executable).name else "/usr/bin/python3"
    environment = {**os.environ, "PYTHONPATH": str(ROOT / "workbench"), "PYTHONDONTWRITEBYTECODE": "1",
                   "QT_QPA_PLATFORM": "offscreen"}
    done = subprocess.run([python, "-m", "louverwright", "build", str(ROOT / "resources/examples/hay-barn-28ft.json"), "--out",
                           "."],
                          cwd=tmp_path, env=environment, capture_output=True, text=True, encoding="utf-8", timeout=100,
                          check=False,
                          preexec_fn=lambda: resource.setrlimit(resource.RLIMIT_FSIZE, (most, most)))
    assert any(Path(folder).is_dir() for folder in KNOWN)
    assert done.returncode == 1 and "Traceback" not in done.stderr, done.stderr
    assert f"model.{'FCStd' if most == 100_000 else 'step'} could not be written whole. Is the disk full?" in done.stderr
    assert {path.name: path.read_text(encoding="utf-8") for path in tmp_path.iterdir()} == dict.fromkeys(
        ("model.FCStd", "model.step", "cuts.csv"), "as it was")


def test_there_are_as_many_cases_as_were_promised() -> None:
    values = sum(sum(row.kind in kinds for row in PARAMETERS) for kinds, _ in ROUNDS.values())
    assert values > 500 and len(FIELDS) * 2 * len(TYPED) > 3_000 and len(PATHS) + 11 * 4 > 60
    assert "width" in BY_NAME and errors_in("Traceback") == ["Traceback"]
