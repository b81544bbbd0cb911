"""Makes the saved documents in tests/documents that later releases must open: run it once per release, with FreeCAD 0.20.

    /usr/bin/python3 tests/make_document.py

Writes vents-RELEASE.FCStd (two vents, one with a row, wishes, an expression and a seat on a drawn roof, and its opening) and
vents-RELEASE.json: every property and volume as they were saved, which tests/host/test_old_documents.py compares.
"""

from __future__ import annotations

import json
import os
import sys
from pathlib import Path

TESTS = Path(__file__).resolve().parent
sys.path[:0] = [str(TESTS.parent / "workbench"), str(TESTS / "host")]
sys.path += ["/usr/lib/freecad/lib", "/usr/share/freecad/Ext",
             *map(str, sorted(Path("/usr/share/freecad/Mod").iterdir())), "/usr/share/freecad/Mod"]

import FreeCAD  # noqa: E402
from documents import told  # noqa: E402
from roofs import feature, roof_shape  # noqa: E402

from louverwright import __version__  # noqa: E402
from louverwright.core.part_wish import PartWish  # noqa: E402
from louverwright.features.opening import make_opening  # noqa: E402
from louverwright.features.roof_reading import RoofPick, read_roof  # noqa: E402
from louverwright.features.row import make_row  # noqa: E402
from louverwright.features.seat import stand_on  # noqa: E402
from louverwright.features.vent import make_vent  # noqa: E402

FOLDER = TESTS / "documents"


def make(name: str) -> None:
    """The document and what it holds."""
    document = FreeCAD.newDocument("Vents")
    roof = feature(document, roof_shape())
    free = make_row(document, {"louver.slat": PartWish(note="cedar, from the old vent"),
                               "louver.screen": PartWish(left_out=True)},
                    width=1_000.0, slat_angle=40.0, corner="mitred", vents=2, ridge_length=9_000.0, project="Hay barn",
                    mast_diameter=30.0, frame_thickness=37.5)
    free.Placement.Base = FreeCAD.Vector(0.0, 20_000.0, 0.0)
    free.setExpression("RoofPitch", "30 deg + 8 deg")
    seated = make_vent(document, sides=8, width=1_200.0, king_post_stock="6x6")
    stand_on(seated, read_roof(RoofPick(roof, ("Face1", "Face2"))), 150.0)
    document.recompute()
    make_opening(seated, RidgeBoard=38.0)
    document.recompute()
    wrong = [obj.Name for obj in document.Objects if "Up-to-date" not in obj.State]
    if wrong:
        raise SystemExit(f"{wrong}: {seated.getStatusString()}")
    FOLDER.mkdir(exist_ok=True)
    document.saveAs(str(FOLDER / f"{name}.FCStd"))
    (FOLDER / f"{name}.json").write_text(json.dumps(told(document), sort_keys=True) + "\n", encoding="utf-8")
    print(FOLDER / f"{name}.FCStd", file=sys.__stdout__)


if __name__ == "__main__":
    try:
        make(f"vents-{__version__}")
    except BaseException as error:
        print(repr(error), file=sys.__stderr__)
        os._exit(1)
    os._exit(0)
