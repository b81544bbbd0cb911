# SPDX-License-Identifier: LGPL-2.1-or-later
"""The one parameter table.  Adding a parameter is adding a row here.

FreeCAD's properties and their tooltips, the validation, the scenario-file
reader, the reference in the documentation and the JSON Schema are all made
from these rows; nothing else lists parameters.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from functools import cached_property
from typing import Any

from .saying import say
from .texts import LONGEST_LINE, LONGEST_NOTE, LONGEST_PATH

LENGTH, ANGLE, COUNT, NUMBER = "length", "angle", "count", "number"
CHOICE, SWITCH, TEXT, STOCK = "choice", "switch", "text", "stock"

#: What a value of each kind is measured in, inside the program.
UNITS = {LENGTH: "mm", ANGLE: "°", COUNT: "", NUMBER: "", CHOICE: "", SWITCH: "", TEXT: "", STOCK: ""}

VENT, PAPER = "vent", "paper"


@dataclass(frozen=True)
class Parameter:
    """One row.

    ``default``, ``low`` and ``high`` are in mm or degrees; the limits are allowed
    values themselves unless ``open_high`` is set; a text's ``high`` is its greatest number of
    characters.  ``auto`` says what 0 (or an empty stock name) stands for, and is empty where 0 has no such meaning.  ``forms``
    are the forms of stock that fit; where a list names no usual stock for the use, that of the use ``like``
    serves.  ``scope`` tells parameters of the vent itself
    from those that only change the printed paper.
    """

    name: str
    kind: str
    group: str
    default: Any
    doc: str
    low: float | None = None
    high: float | None = None
    open_high: bool = False
    choices: tuple[str, ...] = ()
    forms: tuple[str, ...] = ()
    like: str = ""
    auto: str = ""
    scope: str = VENT
    since: str = "0.1.0"

    @property
    def unit(self) -> str:
        """The unit of the value inside the program."""
        return UNITS[self.kind]

    @cached_property
    def property_name(self) -> str:
        """The name as a FreeCAD property: RoofPitch for roof_pitch."""
        return "".join(word.capitalize() for word in self.name.split("_"))

    @property
    def label(self) -> str:
        """The name in plain words: 'roof pitch'."""
        return self.name.replace("_", " ")


def _length(name: str, group: str, default: float, doc: str, low: float, high: float, auto: str = "") -> Parameter:
    return Parameter(name, LENGTH, group, default, doc, low, high, auto=auto)


def _angle(name: str, group: str, default: float, doc: str, low: float, high: float, **more: Any) -> Parameter:
    return Parameter(name, ANGLE, group, default, doc, low, high, **more)


def _count(name: str, group: str, default: int, doc: str, low: int, high: int, auto: str = "") -> Parameter:
    return Parameter(name, COUNT, group, default, doc, low, high, auto=auto)


def _choice(name: str, group: str, choices: tuple[str, ...], doc: str, **more: Any) -> Parameter:
    return Parameter(name, CHOICE, group, choices[0], doc, choices=choices, **more)


def _text(name: str, group: str, default: str, doc: str, longest: int = LONGEST_NOTE) -> Parameter:
    return Parameter(name, TEXT, group, default, doc, high=longest)


def _stock(name: str, doc: str, *forms: str, like: str = "") -> Parameter:
    return Parameter(name, STOCK, "Stock", "", doc, forms=forms, like=like, auto="the list's usual stock for this use")


def _drop(place: str, where: str) -> Parameter:
    return _length(f"drop_{place}", ROOF, 0.0, say(
        "Plumb drop from the level of the ridge's highest point under the vent to the covering {where}: at the corner of the "
        "rectangle round the plan, over the cladding. Give all four drops or none; the pitches then follow from the smaller "
        "drop of each slope.", where=where), 0.1, 5_000.0, auto="not measured")


def measured_name(stock: str, what: str) -> str:
    """The row that tells a stock parameter's real ``what`` (thickness, width or moisture): frame_thickness of frame_stock."""
    return f"{stock.removesuffix('_stock')}_{what}"


def _measured(stock: Parameter) -> list[Parameter]:
    """The rows for what was measured on a stock parameter's wood.

    What is cut from sheets alone is never as wide as the sheet, so its width makes no part; mesh has no moisture.
    """
    use = say(stock.label)
    low, high = (0.2, 10.0) if stock.forms == ("mesh",) else (3.0, 300.0)
    rows = [_length(measured_name(stock.name, THICKNESS), MEASURED, 0.0,
                    say("Thickness of the {stock}, as measured.", stock=use), low, high, auto="as the stock list says")]
    if not set(stock.forms) <= {"sheet", "mesh"}:
        rows.append(_length(measured_name(stock.name, WIDTH), MEASURED, 0.0,
                            say("Width of the {stock}, as measured.", stock=use), 8.0, 3_000.0,
                            auto="as the stock list says"))
    if stock.forms != ("mesh",):
        rows.append(Parameter(measured_name(stock.name, MOISTURE), NUMBER, MEASURED, 0.0, say(
            "Moisture of the {stock}, as measured, in percent of its dry weight; weights follow from it.", stock=use),
            4.0, 40.0, auto="as the stock list says"))
    return rows


ROOF, SIZE, FRAME, CLADDING = "Barn roof", "Size", "Frame", "Cladding"
LOUVERS, CAP, GAPS, AIR, JOB, SHOP = "Louvers", "Vent roof", "Clearances", "Air", "Job", "Shop"
MEASURED = "As measured"
#: What can be measured on stock.
THICKNESS, WIDTH, MOISTURE = "thickness", "width", "moisture"

_STOCK_ROWS: tuple[Parameter, ...] = (
    _stock("frame_stock", "Legs, posts, rails, soles, mullions and bearer.", "dimension"),
    _stock("rafter_stock", "Hips, jacks and commons.", "dimension"),
    _stock("ridge_stock", "Ridge piece of a rectangle's or a gable's roof.", "dimension", like="rafter_stock"),
    _stock("plate_stock", "Cap plates, laid flat.", "dimension"),
    _stock("king_post_stock", "King post, square.", "post"),
    _stock("cladding_stock", "Cladding: a sheet, or a board for board cladding.", "sheet", "board"),
    _stock("corner_board_stock", "Corner boards of the base.", "board"),
    _stock("slat_stock", "Slats and sills.", "board"),
    _stock("stile_stock", "Stiles and head rails of the louver panels.", "board"),
    _stock("ring_stock", "Drip ring.", "board"),
    _stock("trim_stock", "Trim and frieze of the louver stage.", "board"),
    _stock("sheathing_stock", "Roof sheathing.", "sheet"),
    _stock("soffit_stock", "Soffit.", "sheet", "board"),
    _stock("fascia_stock", "Fascia and bed mould.", "board"),
    _stock("screen_stock", "Screen mesh.", "mesh"),
    _stock("batten_stock", "Battens that hold the screen.", "board"),
)

PARAMETERS: tuple[Parameter, ...] = (
    # ---- the job
    _text("project", JOB, "", "Name of the job, as it stands in the report's title block.", LONGEST_LINE),
    _text("notes", JOB, "", "Remarks of your own, printed on the report's first page."),
    _text("survey_note", ROOF, "", "How the pitch was measured, as it is to stand in the report."),
    # ---- the barn's roof
    _angle("pitch_left", ROOF, 33.69, "Pitch of the slope on your left when you look along the vent's +X axis, "
           "from the level.", 0.0, 75.0, open_high=True),
    _angle("pitch_right", ROOF, 33.69, "Pitch of the slope on your right when you look along the vent's +X axis, "
           "from the level.", 0.0, 75.0, open_high=True),
    _choice("seat", ROOF, ("ridge", "one slope"), "Whether the vent stands astride the ridge, or as a curb wholly on the "
            "left slope (a flat roof is a slope of 0°); then heights count from the roof under the vent's axis."),
    _angle("pitch_error", ROOF, 0.5, "How far the measured pitch may be off; the report says what it opens up at "
           "the foot.", 0.0, 5.0),
    _length("ridge_length", ROOF, 0.0, "Length of unbroken ridge that the vents share; 0 if it does not matter.",
            0.0, 500_000.0, auto="not given"),
    _length("ridge_offset", ROOF, 0.0, "How far the vent's axis stands to the left of the ridge (to the right if "
            "negative).", -5_000.0, 5_000.0),
    _length("seat_depth", ROOF, 0.0, "How far legs and soles sit below the roof's finished surface, square to the "
            "slope: 0 on the covering, the covering's thickness on the deck.", 0.0, 300.0),
    _length("scribe_allowance", ROOF, 0.0, "Wood left on the legs' feet, plumb, to scribe them to a twisted roof or a "
            "ridge that sags.", 0.0, 80.0),
    _drop("left_front", say("on your left, at the vent's +X end, when you look along +X")),
    _drop("left_back", say("on your left, at the vent's −X end, when you look along +X")),
    _drop("right_front", say("on your right, at the vent's +X end, when you look along +X")),
    _drop("right_back", say("on your right, at the vent's −X end, when you look along +X")),
    _length("ridge_cap_height", ROOF, 12.0, "How far the barn's ridge cap stands above its covering, plumb; "
            "soles and cladding are relieved over it. 0 if the cap is taken away under the vent.", 0.0, 150.0),
    _length("ridge_cap_width", ROOF, 200.0, "Width of the barn's ridge cap, level, both slopes together.",
            0.0, 1_000.0),
    # ---- size
    _count("vents", SIZE, 1, "How many equal vents share the ridge.", 1, 24),
    _length("end_distance", SIZE, 0.0, "With several vents: from each end of the unbroken ridge to the axis of the nearest "
            "vent; between these the vents are evenly spaced. One vent stands in the middle.", 150.0, 250_000.0,
            auto="half a vent's share of the ridge"),
    Parameter("width_rule", NUMBER, SIZE, 1.25, "Trade's rule for the width: inches of vent for each foot of its "
              "share of the ridge (1.25 is 104 mm per metre).", 1.0, 1.5),
    _length("width", SIZE, 900.0, "Width of the vent over the cladding.", 300.0, 3_600.0,
            auto="by the width rule from the ridge length"),
    _length("length", SIZE, 0.0, "Length of a rectangular vent over the cladding, along the ridge (with a corner to the "
            "ridge, along its first side's direction); 1:2 of the width at most.", 300.0, 3_600.0,
            auto="as the width: a square"),
    _length("base_height", SIZE, 0.0, "Height of the base's top above the ridge.", 150.0, 2_000.0,
            auto="0.3 of the width; 150 mm and what soles and rail need at least"),
    _length("louver_height", SIZE, 0.0, "Height of the louver stage's frame.", 250.0, 3_000.0,
            auto="0.6 of the width"),
    # ---- frame
    _count("sides", FRAME, 4, "Number of sides of the plan: 4, 6 or 8.", 4, 8),
    _choice("facing", FRAME, ("side", "corner"), "Whether a side or a corner of the plan looks along the ridge."),
    _choice("corner", FRAME, ("butt", "mitred"), "How planks turn a corner on a square plan: the gable side runs through "
            "and the eave side stops against it, or both are mitred. Other plans are always mitred."),
    _length("post_face", FRAME, 0.0, "Width that a corner post shows on each face.", 40.0, 400.0,
            auto="the frame stock's width; 0.15 of a side at most with 6 or 8 sides"),
    _length("bottom_rail_height", FRAME, 0.0, "Height above the ridge of the base's second rail on the gable sides "
            "(its lower edge).", 0.0, 2_000.0, auto="no second rail"),
    # ---- cladding
    _choice("cladding", CLADDING, ("sheet", "boards"), "Sheet cladding, or upright boards with a gap."),
    _length("board_gap", CLADDING, 3.0, "Gap between cladding boards.", 0.0, 20.0),
    _length("corner_board_face", CLADDING, 0.0, "Width that a corner board shows on each face.", 40.0, 300.0,
            auto="the corner board stock's width, 140 mm at most"),
    # ---- louvers
    _angle("slat_angle", LOUVERS, 45.0, "Slope of the slats from the level.", 25.0, 60.0),
    _count("slat_count", LOUVERS, 0, "Slats in one panel, without the sill.", 1, 60,
           auto="the fewest that hide the sky at the rain angle"),
    _length("widest_spacing", LOUVERS, 0.0, "Widest spacing of the slats, plumb; it leads where no number of slats is "
            "given.", 20.0, 400.0, auto="by the number of slats"),
    _choice("slat_edges", LOUVERS, ("plumb", "square"), "Long edges of the slats: ripped plumb to the stiles' faces, or "
            "left square."),
    _angle("sill_slope", LOUVERS, 0.0, "Slope of the sill from the level.", 10.0, 60.0, auto="the slats' slope"),
    _angle("rain_angle", LOUVERS, 30.0, "Steepest sight line, rising inward, that the slats must still block.",
           0.0, 45.0),
    _length("panel_depth", LOUVERS, 76.0, "Depth of a louver panel, which is the width of its stiles.", 40.0, 250.0),
    _length("dado_depth", LOUVERS, 8.0, "Depth of the dados that take the slats.", 3.0, 25.0),
    _length("dado_fit", LOUVERS, 0.2, "How much wider a dado is than the slat is thick.", 0.0, 1.0),
    _choice("mullion", LOUVERS, ("automatic", "never", "always"), "A middle stile; automatic: where the clear width "
            "passes the slats' span."),
    _length("slat_span", LOUVERS, 900.0, "Longest clear width that a slat may bridge without a mullion.",
            300.0, 2_000.0),
    _angle("ring_slope", LOUVERS, 0.0, "Slope of the drip ring from the level.", 10.0, 45.0,
           auto="the slats' slope, 45° at most"),
    _length("ring_projection", LOUVERS, 25.0, "How far the drip ring reaches beyond the corner boards.",
            10.0, 150.0),
    _length("trim_lap", LOUVERS, 0.0, "How far trim laps over the stiles and the frieze over the head rail.",
            3.0, 18.0, auto="1 mm past the dados' ends, 10 mm at least"),
    Parameter("screen", SWITCH, LOUVERS, True, "Mesh with battens on the inner face of each panel."),
    # ---- vent roof
    _choice("roof_form", CAP, ("hip", "flared hip", "gable"), "Form of the vent's roof: hipped on every side; hipped with a "
            "kicked eave, two pitches a face; or two faces that end in gables."),
    _choice("gable_ridge", CAP, ("along", "across"), "Whether the ridge of a gable roof runs along the barn's or across it."),
    _choice("gable_end", CAP, ("boarded", "louvered"), "What closes the gables: cladding, or slats as in the panels."),
    _length("verge", CAP, 0.0, "From the gables' cladding to the back of the barge boards, level.", 30.0, 400.0,
            auto="half the overhang"),
    _angle("roof_pitch", CAP, 35.0, "Pitch of the vent's roof faces from the level (not the slope of its hips).",
           5.0, 70.0),
    _angle("hip_rafter_slope", CAP, 0.0, "Slope of the vent's hips from the level; if it is given, the faces' pitch follows "
           "from it and the roof pitch is left aside.", 4.0, 65.0, auto="from the faces' pitch"),
    _angle("flare_pitch", CAP, 0.0, "Pitch of a flared roof's eave, below the break.", 5.0, 60.0,
           auto="half the faces' pitch"),
    _length("flare_reach", CAP, 0.0, "From the rafters' tails up to the break of a flared roof, level.", 40.0, 1_200.0,
            auto="as the overhang: the break lies over the plate's edge"),
    _angle("end_pitch", CAP, 0.0, "Pitch of a rectangle's end faces, over its short sides, where it is another than the long "
           "faces'; their overhang follows, so that all eaves are level.", 5.0, 75.0, auto="as the long faces"),
    _length("overhang", CAP, 110.0, "From the plate's edge to the rafters' tails, level.", 40.0, 600.0),
    _length("tail_depth", CAP, 60.0, "Plumb depth of the rafters' tails at the fascia.", 60.0, 300.0),
    _length("heel_height", CAP, 0.0, "Plumb height of the roof sheathing's underside above the plate's outer edge.",
            20.0, 400.0, auto="so that no rafter is notched deeper than a third"),
    _count("rafters_per_side", CAP, -1, "Jack and common rafters on each side, between the hips; an odd number has "
           "a common at mid-side. Under a gable roof those between the gables' own. −1: automatic, by the sheathing's "
           "span.", -1, 12),
    _length("sheathing_span", CAP, 900.0, "Widest clear distance between rafters that the roof sheathing may "
            "bridge.", 200.0, 1_500.0),
    _choice("sheathing_grain", CAP, ("along the eave", "up the slope"), "Direction of the roof sheathing's face "
            "grain."),
    _length("mast_diameter", CAP, 0.0, "Diameter of the mast through the roof for a vane or finial; 0 for none.",
            15.0, 120.0, auto="no mast"),
    # ---- clearances
    _length("cladding_clearance", GAPS, 13.0, "Plumb height of the cladding's foot above the roof covering.",
            0.0, 100.0),
    _length("panel_clearance", GAPS, 1.5, "Gap between a louver panel and the posts and rail around it.", 0.5, 6.0),
    _length("stage_clearance", GAPS, 2.0, "Gap all round where the louver stage drops inside the cladding.",
            1.0, 10.0),
    _length("ring_clearance", GAPS, 2.0, "Gap between the drip ring and the cladding and corner boards under it.",
            1.0, 10.0),
    _length("trim_clearance", GAPS, 4.0, "Joint to be caulked between trim and drip ring.", 3.0, 6.0),
    # ---- air
    Parameter("screen_factor", NUMBER, AIR, 1.0, "Share of the opening that the mesh leaves free (1/4 in hardware "
              "cloth 1.0, 1/8 in mesh 0.8).", 0.2, 1.0),
    Parameter("air_target", NUMBER, AIR, 0.0, "Net free area wanted from each vent, in square metres.",
              0.0, 100.0, auto="by the floor or by the building's width, if either is given"),
    Parameter("floor_area", NUMBER, AIR, 0.0, "Floor that the vents together air, in square metres.", 0.0, 100_000.0,
              auto="not given"),
    Parameter("floor_ratio", NUMBER, AIR, 150.0, "Square metres of floor for one of free area: 150 by the usual rule for "
              "attics, 300 under its conditions.", 20.0, 1_000.0),
    _length("building_width", AIR, 0.0, "Width of the building across the ridge; with the ridge length it gives the area "
            "of an open ridge, 2 in for each 10 ft of width.", 0.0, 100_000.0, auto="not given"),
    _length("opening_margin", AIR, 20.0, "Distance of the roof opening's edge from the inside of the legs.",
            0.0, 300.0),
    # ---- stock
    _text("stock_list", "Stock", "us", "Stock list: us, eu, or the path of a list of your own.", LONGEST_PATH),
    *_STOCK_ROWS,
    # ---- stock as measured
    *(row for stock in _STOCK_ROWS for row in _measured(stock)),
    # ---- paper and shop: they change the paper, never the vent
    _choice("paper_units", SHOP, ("mm", "in", "ft-in"), "Unit of lengths on the report.", scope=PAPER),
    Parameter("millimetre_step", NUMBER, SHOP, 0.5, "Millimetres are rounded to this on the report.", 0.1, 5.0,
              scope=PAPER),
    Parameter("inch_fraction", COUNT, SHOP, 16, "Inches are rounded to one part in so many on the report.", 8, 64,
              scope=PAPER),
    _choice("paper_size", SHOP, ("A4", "Letter"), "Paper that the report is laid out for.", scope=PAPER),
    Parameter("large_drawings", SWITCH, SHOP, False, "Shop drawings on the next larger paper: A3 for A4, Tabloid for Letter.",
              scope=PAPER),
    _angle("saw_tilt", SHOP, 45.0, "How far your saw's blade tilts from upright.", 0.0, 60.0, scope=PAPER),
    _angle("saw_mitre", SHOP, 60.0, "How far your saw's gauge swings from square.", 0.0, 70.0, scope=PAPER),
    _angle("saw_compound", SHOP, 45.0, "Largest mitre at which your saw's blade still tilts fully; beyond it the tilt "
           "falls to nothing at the largest mitre.", 0.0, 70.0, scope=PAPER),
    Parameter("saw_depth", LENGTH, SHOP, 75.0, "Thickest stock that your saw cuts with its blade upright.",
              20.0, 300.0, scope=PAPER),
    Parameter("saw_crosscut", LENGTH, SHOP, 305.0, "Widest stock that your saw crosscuts.", 80.0, 3_000.0,
              scope=PAPER),
    Parameter("saw_kerf", LENGTH, SHOP, 3.2, "Width of your saw's cut.", 0.5, 8.0, scope=PAPER),
    Parameter("lift_limit", NUMBER, SHOP, 0.0, "What each person is to lift at most, in kg.", 5.0, 50.0, scope=PAPER,
              auto="13.6, by the lifting equation for a stage held before one"),
    Parameter("passage_width", LENGTH, SHOP, 0.0, "Narrowest place on the way to the roof: a hatch, a door, between the rails "
              "of a scaffold.", 300.0, 5_000.0, scope=PAPER, auto="not given"),
    Parameter("wind_speed", NUMBER, SHOP, 0.0, "Design wind speed of the place in m/s, as the code there gives it "
              "(three-second gust).", 20.0, 90.0, scope=PAPER, auto="not given"),
    Parameter("driver_length", LENGTH, SHOP, 280.0, "Length of your driver with its bit, along the screw.", 120.0, 600.0,
              scope=PAPER),
    Parameter("primer_coats", COUNT, SHOP, 1, "Coats of primer.", 0, 4, scope=PAPER),
    Parameter("paint_coats", COUNT, SHOP, 2, "Coats of paint over the primer.", 0, 6, scope=PAPER),
    Parameter("paint_coverage", NUMBER, SHOP, 10.0, "Square metres that a litre of primer or paint covers in one coat, as its "
              "tin says.", 2.0, 20.0, scope=PAPER),
    Parameter("course_exposure", LENGTH, SHOP, 0.0, "How much of each course of the barn's shingles or tiles shows, up the "
              "slope; there is one step flashing for each.", 60.0, 600.0, scope=PAPER,
              auto="sheet covering: side pans instead of steps"),
    Parameter("shortest_piece", LENGTH, SHOP, 200.0, "Shortest piece that you let your saw cut without a holder.",
              50.0, 600.0, scope=PAPER),
    Parameter("end_trim", LENGTH, SHOP, 10.0, "What you cut off each end of a new stick, with the saw cut, to have it sound "
              "and square.", 0.0, 300.0, scope=PAPER),
    Parameter("defect_allowance", NUMBER, SHOP, 0.0, "How much of a new stick you reckon lost to knots, wane and splits, in "
              "percent of its length.", 0.0, 40.0, scope=PAPER),
    Parameter("prices", TEXT, SHOP, "", "What the yard asks, in one currency, as stock and price for a metre, a foot, a piece "
              "or a length: 1x6: 0.95/ft; plywood 1/2: 38 each; 2x4: 8 ft = 4.20, 10 ft = 5.60. Gives a cost sheet; stock "
              "with a price for every length is bought at the least cost.", high=LONGEST_NOTE, scope=PAPER),
    Parameter("shop_offcuts", TEXT, SHOP, "", "Offcuts that you have already, as stock and lengths: 2x4: 1200, 900; 1x6: 2 m. "
              "A bare number is in mm.", high=LONGEST_NOTE, scope=PAPER),
    Parameter("shortest_offcut", LENGTH, SHOP, 300.0, "Shortest offcut that you keep.", 50.0, 3_000.0, scope=PAPER),
)

BY_NAME: dict[str, Parameter] = {p.name: p for p in PARAMETERS}


def parameter(name: str) -> Parameter:
    """The row called ``name``.  Raises KeyError for a name that is not in the table."""
    return BY_NAME[name]


def defaults() -> dict[str, Any]:
    """Every parameter with its default value."""
    return {p.name: p.default for p in PARAMETERS}


# ---- what applies when


@dataclass(frozen=True)
class Condition:
    """When a parameter has any use: in words that follow 'only', and as a test of the values (mm, degrees) by name."""

    words: str
    holds: Callable[[Mapping[str, Any]], bool]


def _rectangle(values: Mapping[str, Any]) -> bool:
    """Whether the plan is a rectangle, as far as given sizes tell: a width by the rule is taken to differ from a length."""
    return bool(values["length"]) and values["length"] != values["width"]


def _ridged(values: Mapping[str, Any]) -> bool:
    """Whether the vent's own roof has a ridge, not a king post."""
    return values["roof_form"] == "gable" or _rectangle(values)


_ASTRIDE = Condition("astride the ridge", lambda v: v["seat"] == "ridge")
_CAPPED = Condition("astride a ridge with a cap", lambda v: v["seat"] == "ridge" and v["ridge_cap_height"] > 0)
_SQUARE = Condition("with 4 sides", lambda v: v["sides"] == 4)
_GABLED = Condition("under a gable roof", lambda v: v["roof_form"] == "gable")
_FLARED = Condition("under a flared hip roof", lambda v: v["roof_form"] == "flared hip")
_SCREENED = Condition("with a screen", lambda v: bool(v["screen"]))
_POSTED = Condition("under a hip roof that meets in a point", lambda v: not _ridged(v))
_RIDGE_PIECE = Condition("where the vent's roof has a ridge", _ridged)

#: Parameters that not every vent has a use for; all others always apply.  What was measured on stock follows its stock.
CONDITIONS: Mapping[str, Condition] = {
    "pitch_right": _ASTRIDE, "ridge_offset": _ASTRIDE, "ridge_cap_height": _ASTRIDE, "ridge_cap_width": _CAPPED,
    **{f"drop_{place}": _ASTRIDE for place in ("left_front", "left_back", "right_front", "right_back")},
    "end_distance": Condition("with several vents on a ridge of known length",
                              lambda v: v["vents"] > 1 and v["ridge_length"] > 0),
    "width_rule": Condition("where the width follows from the ridge", lambda v: not v["width"]),
    "length": _SQUARE, "corner": _SQUARE,
    "widest_spacing": Condition("where no number of slats is given", lambda v: not v["slat_count"]),
    "slat_span": Condition("with automatic mullions", lambda v: v["mullion"] == "automatic"),
    "gable_ridge": _GABLED, "gable_end": _GABLED, "verge": _GABLED,
    "roof_pitch": Condition("where no slope of the hips is given", lambda v: not v["hip_rafter_slope"]),
    "flare_pitch": _FLARED, "flare_reach": _FLARED,
    "end_pitch": Condition("under the hip roof of a rectangle", lambda v: v["roof_form"] != "gable" and _rectangle(v)),
    "mast_diameter": _POSTED, "king_post_stock": _POSTED, "ridge_stock": _RIDGE_PIECE,
    "screen_stock": _SCREENED, "batten_stock": _SCREENED,
    "floor_ratio": Condition("where a floor is given and no target", lambda v: v["floor_area"] > 0 and not v["air_target"]),
}


#: The stock parameter that each of the rows of what was measured is about.
_STOCK_OF: Mapping[str, str] = {row.name: stock.name for stock in _STOCK_ROWS for row in _measured(stock)}


def applies(name: str, values: Mapping[str, Any]) -> bool:
    """Whether a parameter has any use beside the other values (mm, degrees; by name).  Raises KeyError for no parameter."""
    row = BY_NAME[name]
    condition = CONDITIONS.get(_STOCK_OF.get(row.name, row.name))
    return condition is None or condition.holds(values)
