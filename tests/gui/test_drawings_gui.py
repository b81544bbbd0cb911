# SPDX-License-Identifier: LGPL-2.1-or-later
"""Shop drawings in FreeCAD's window: the command, what it tells, its undo step, and a page as TechDraw exports it."""

from __future__ import annotations

import re

import FreeCAD
import FreeCADGui
import pytest
from conftest import settle

from louverwright.exchange.shop_pages import PICTURE, SHEET
from louverwright.features.vent import make_vent
from louverwright.report.shop_drawings import shop_sheets

pytestmark = pytest.mark.usefixtures("in_workbench")


def test_the_command_draws_pages_at_their_scale(said, tmp_path) -> None:
    import TechDrawGui

    document = FreeCAD.newDocument("Barn")
    document.UndoMode = 1
    vent = make_vent(document, width=900.0)
    document.recompute()
    before = len(document.Objects)
    FreeCADGui.runCommand("Louverwright_ShopDrawings", 0)
    settle(0.3)
    pages = {getattr(each, SHEET): each for each in document.Objects if SHEET in each.PropertiesList}
    assert len(pages) > 5 and str(len(pages)) in said[-1]
    from louverwright.commands.cut_report import job_of

    page, sheet = pages["arrangement"], shop_sheets(job_of(vent))[0]
    page.ViewObject.doubleClicked() if hasattr(page.ViewObject, "doubleClicked") else page.ViewObject.show()
    settle(0.5)
    TechDrawGui.exportPageAsSvg(page, str(tmp_path / "page.svg"))
    text = (tmp_path / "page.svg").read_text(encoding="utf-8")
    units = float(re.search(r'viewBox="0 0 ([0-9.]+)', text)[1]) / 297.0
    found = {tuple(float(each) / units for each in match)
             for match in re.findall(r"matrix\(([0-9.]+),0,0,([0-9.]+),([0-9.]+),([0-9.]+)\)", text)}
    for view in page.Views:
        each = next(each for each in sheet.pictures if each.name == getattr(view, PICTURE))
        wanted = (1.0, 1.0, each.x, 210.0 - float(view.Y) * 2.0 + each.y)
        assert any(abs(a - 1.0) < 0.0005 and abs(b - 1.0) < 0.0005 and abs(x - wanted[2]) < 0.1 and abs(y - wanted[3]) < 0.1
                   for a, b, x, y in found), (wanted, found)
    document.undo()
    settle(0.2)
    assert len(document.Objects) == before
