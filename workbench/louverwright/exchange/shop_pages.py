# SPDX-License-Identifier: LGPL-2.1-or-later
"""Shop drawings as pages of FreeCAD's TechDraw: our template, and each picture a view of its own that the user may move.

Pages are made once and then kept: running again gives their pictures and title blocks the model as it is.  What the user
added to a page, and where a picture was moved to, stays.  Needs FreeCAD; no window.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace

import FreeCAD

from ..features.generations import count_pixels
from ..features.language import tr
from ..features.model import owned_by
from ..folders import TEMPLATES
from ..report.drawing import Drawing
from ..report.job import Job
from ..report.placed import Placed
from ..report.shop_drawings import ShopSheet, paper_of, shop_sheets, title_values
from ..report.svg import number, to_svg

#: Properties of pages (whose, which sheet) and of pictures (which one, where it was put).
SHEET, PICTURE, PUT_X, PUT_Y = "ShopSheet", "ShopPicture", "PutX", "PutY"
GROUP = "ShopDrawings"
#: TechDraw takes a symbol's pixels for so many to the millimetre, and wants whole ones (measured in 0.20, 1.0 and 1.1).
PIXELS = 3.78
#: A picture that is further from where it was put (mm) was moved by the user.
MOVED = 0.01

#: The title block of a page that is kept for what the user has on it, though the model has no such sheet any more.
NO_SHEET = {"Sheet": "no longer in the set", "Scale": "–", "Number": "–"}


@dataclass(frozen=True)
class Refreshed:
    """How many pages were made, brought up to date, and taken away, since the model has no such sheet any more."""

    made: int
    renewed: int
    removed: int


def refresh_pages(vent: FreeCAD.DocumentObject, job: Job) -> Refreshed:
    """Makes the pages of a vent, or brings them up to date.  No transaction is opened here."""
    present = {getattr(page, SHEET): page for page in owned_by(vent, SHEET)}
    sheets = shop_sheets(job)
    for number_, sheet in enumerate(sheets, 1):
        page = present.get(sheet.name) or _new_page(vent, sheet)
        page.Label = f"{number_:02d} {sheet.title}"
        _title(page, job, sheet, number_)
        _pictures(page, sheet)
    gone = [page for name, page in present.items() if name not in {sheet.name for sheet in sheets}]
    removed = sum(_emptied(page) for page in gone)
    vent.Document.recompute()
    renewed = sum(sheet.name in present for sheet in sheets)
    return Refreshed(len(sheets) - renewed, renewed, removed)


def _new_page(vent: FreeCAD.DocumentObject, sheet: ShopSheet) -> FreeCAD.DocumentObject:
    document = vent.Document
    page = document.addObject("TechDraw::DrawPage", "ShopDrawing")
    page.Template = document.addObject("TechDraw::DrawSVGTemplate", "ShopTemplate")
    # Hidden from the order of recomputing: a change of the vent does not redraw its pages.
    page.addProperty("App::PropertyLinkHidden", "Vent", "Louverwright", tr("The vent that is drawn."))
    page.addProperty("App::PropertyString", SHEET, "Louverwright", tr("Which of the vent's sheets this is."), 0, True)
    page.Vent = vent
    setattr(page, SHEET, sheet.name)
    _group(vent).addObject(page)
    return page


def _group(vent: FreeCAD.DocumentObject) -> FreeCAD.DocumentObject:
    """The folder in the tree that holds the vent's pages."""
    for page in owned_by(vent, SHEET):
        for parent in page.InList:
            if parent.isDerivedFrom("App::DocumentObjectGroup"):
                return parent
    group = vent.Document.addObject("App::DocumentObjectGroup", GROUP)
    group.Label = tr("Shop drawings of {vent}", vent=vent.Label)
    return group


def _title(page: FreeCAD.DocumentObject, job: Job, sheet: ShopSheet, number_: int) -> None:
    """Our template for the paper, unless the user gave the page another; and its values, where the template has such."""
    template = page.Template
    ours = {str(path) for path in TEMPLATES.glob("*.svg")}
    wanted = str(TEMPLATES / f"{paper_of(job)}.svg")
    if template.Template != wanted and (not template.Template or template.Template in ours):
        template.Template = wanted
    values = title_values(job, sheet, number_)
    texts = dict(template.EditableTexts)
    template.EditableTexts = {name: values.get(name, text) for name, text in texts.items()}


def _pictures(page: FreeCAD.DocumentObject, sheet: ShopSheet) -> None:
    """Every picture of a sheet on its page; those of ours that the sheet has no more are taken away."""
    present = {getattr(view, PICTURE): view for view in page.Views if PICTURE in view.PropertiesList}
    for placed in sheet.pictures:
        view = present.pop(placed.name, None) or _new_view(page, placed.name)
        _put(view, placed)
    for view in present.values():
        page.Document.removeObject(view.Name)


def _new_view(page: FreeCAD.DocumentObject, name: str) -> FreeCAD.DocumentObject:
    view = page.Document.addObject("TechDraw::DrawViewSymbol", "ShopPicture")
    page.addView(view)
    view.Label = name
    view.ScaleType = "Custom"
    view.Scale = 1.0
    view.addProperty("App::PropertyString", PICTURE, "Louverwright", tr("Which of the sheet's pictures this is."), 0, True)
    for place in (PUT_X, PUT_Y):
        view.addProperty("App::PropertyFloat", place, "Louverwright",
                         tr("Where the picture was put, to tell whether you moved it."), 0, True, True)
        setattr(view, place, math.nan)
    setattr(view, PICTURE, name)
    return view


def _put(view: FreeCAD.DocumentObject, placed: Placed) -> None:
    """Gives a view its picture, and its place unless the user moved it; places are of the picture's middle."""
    padded, symbol = symbol_of(placed.drawing)
    count_pixels(view)
    x, y = placed.x + padded.width / 2.0, placed.y + padded.height / 2.0
    if view.Symbol != symbol:
        view.Symbol = symbol
    if not _moved(view):
        view.X, view.Y = x, y
        setattr(view, PUT_X, float(view.X))
        setattr(view, PUT_Y, float(view.Y))


def _moved(view: FreeCAD.DocumentObject) -> bool:
    return any(abs(float(at) - getattr(view, put)) > MOVED for at, put in ((view.X, PUT_X), (view.Y, PUT_Y)))


def symbol_of(drawing: Drawing) -> tuple[Drawing, str]:
    """A drawing, widened above and to the right to whole pixels, and it as an SVG whose size is told in them."""
    wide, high = math.ceil(drawing.width * PIXELS), math.ceil(drawing.height * PIXELS)
    padded = replace(drawing, width=wide / PIXELS, height=high / PIXELS)
    svg = to_svg(padded, "picture", drawing.description)
    told = f'width="{number(padded.width)}mm" height="{number(padded.height)}mm"'
    return padded, svg.replace(told, f'width="{wide}" height="{high}" font-family="DejaVu Sans, sans-serif"', 1)


def _emptied(page: FreeCAD.DocumentObject) -> bool:
    """Takes our pictures off a page that the model has no sheet for; the page itself too where nothing else is on it."""
    document = page.Document
    for view in [view for view in page.Views if PICTURE in view.PropertiesList]:
        document.removeObject(view.Name)
    if page.Views:
        texts = dict(page.Template.EditableTexts)
        page.Template.EditableTexts = {**texts, **{name: text for name, text in NO_SHEET.items() if name in texts}}
        return False
    template = page.Template.Name if page.Template else ""
    document.removeObject(page.Name)
    # Some FreeCADs take a page's template away with it.
    if document.getObject(template):
        document.removeObject(template)
    return True
