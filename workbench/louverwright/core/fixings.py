# SPDX-License-Identifier: LGPL-2.1-or-later
"""What holds which joint: one row for each pair of kinds, and the numbers of the trade that the fastening plan goes by.

All rows are common practice unless a row's ``source`` says more.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from .joints import matches

SCREW, NAIL, STAPLE, NONE = "screw", "nail", "staple", "none"
#: In a row along the seam; two on a diagonal of a lap, or four where it is wide.
ROW, LAP = "row", "lap"
#: Ways to drive: straight through the first kind or the second, or on a slant from a face of either.
STRAIGHT, BACK, SLANT, SLANT_BACK = "straight", "back", "slant", "slant back"
#: On a slant from the hidden face of the first kind, which looks into the vent.
INSIDE = "inside"

COMMON = "common practice"
EDGE_RULE = "6 in along the edges, as roof sheathing is nailed (IRC Table R602.3(1), from memory)"
#: Where the screws' own numbers come from.
SOURCES = (
    "Diameters of wood screws: No. 6, 8 and 10 of ANSI/ASME B18.6.1 (3.5, 4.2 and 4.8 mm). In the frame a screw holds by six "
    "diameters at least in the second part (NDS, wood screws in single shear; from memory) and by half as much again as the "
    "part it goes through where that is thick enough (common practice).",
    "Pilot holes: 70 % of the root's diameter in wood of a specific gravity of 0.5 to 0.6 (NDS), the root being two thirds of "
    "the shank (Wood Handbook, FPL-GTR-190, chapter 8); lighter wood needs none but near edges, ends and in end grain. The "
    "first part is bored as wide as the shank (common practice).",
)

#: Screws stand at least so far from an edge and an end where the seam has the room (mm; 1/2 in and 1 in, common practice).
EDGE_DISTANCE, END_DISTANCE = 13.0, 25.0
#: A lap at most so wide takes two screws on a diagonal, a wider one four (mm; 3 1/2 in and a little, common practice).
TWO_IN_A_LAP = 90.0
#: Along a joined edge from stage to stage (mm; 8 in, common practice).
STAGE_SPACING = 203.0
#: In the second part: so many times the first's thickness where there is wood enough, so many diameters at least.
HOLD, HOLD_DIAMETERS = 1.5, 6.0
#: What is light holds by so much at least (mm; common practice).
LIGHT_HOLD = 9.0
#: A point ends so far under the far face (mm; 1/8 in, common practice).
SHORT_OF_FACE = 3.2
#: More wood than this before the seam is not bored through (mm).
MOST_THROUGH = 64.0
#: Through the thickness of a plank, not from its edge (mm).
THICKNESS = 48.0
#: Angles between a slanted screw and the seam's normal that are tried (degrees; 30° is the toe-nail's, common practice).
SLANTS = (30.0, 45.0, 20.0, 60.0)
#: A screw square to its seam starts from a face that leans no more than this from square to it, a slanted one that (degrees).
MOST_LEAN, MOST_LEAN_SLANTED = 44.0, 65.0
#: A plugged head lies so deep (mm) in stock of at least so much (mm); the plug's diameter (mm; 3/8 in).
COUNTERBORE, COUNTERBORED_FROM, PLUG = 6.35, 15.0, 9.525
#: No screw comes nearer than this to a bore for the mast, nor its axis to another's (mm).
MAST_KEEP_OUT, APART = 6.0, 6.0
#: Screws through stock up to so thick have this diameter (mm): No. 6, 8 and 10.
SHANKS = ((13.0, 3.5), (26.0, 4.2), (math.inf, 4.8))
#: Pilot for the thread in the second part: 70 % of a root of two thirds of the shank.
PILOT = 0.7 * 2.0 / 3.0
#: Nails up to so long have this shank (mm; brads, then common nails 4d, 6d, 8d, from memory); a staple's legs (mm).
NAIL_SHANKS, STAPLE_LEG = ((32.0, 1.8), (39.0, 2.5), (51.0, 2.9), (math.inf, 3.3)), 12.0
#: A bit in its holder is so long and so thick before the driver begins, which is so far from the screw's axis to its side.
BIT_LENGTH, BIT_RADIUS, DRIVER_RADIUS = 100.0, 5.0, 25.0


@dataclass(frozen=True)
class Fixing:
    """How pieces of ``first`` are held to pieces of ``second`` (families of kinds).

    ``ways`` are tried in order.  ``spacing`` is the most between two in a row (mm), ``least`` the fewest in a joint.
    ``light`` parts carry nothing and hold by less; ``hold`` times what lies before is wanted in the second part and on behind
    it; no more than ``most`` mm are gone through.  ``plugged`` heads lie in the weather; a joint of another side is left to
    the neighbours where ``own_side`` is set.
    """

    first: str
    second: str
    fastener: str = SCREW
    ways: tuple[str, ...] = (STRAIGHT, SLANT, BACK, SLANT_BACK)
    pattern: str = ROW
    spacing: float = STAGE_SPACING
    least: int = 2
    light: bool = False
    hold: float = HOLD
    most: float = MOST_THROUGH
    plugged: bool = False
    own_side: bool = False
    words: str = ""
    source: str = COMMON


def _none(first: str, second: str, words: str) -> Fixing:
    return Fixing(first, second, NONE, (), words=words)


_BY_ITS_OWN = "lies against it, held by its own joints"
_CLEAR = "stays clear of it"

#: The first row that fits a joint's two kinds holds, whichever of the two it names first.
FIXINGS: tuple[Fixing, ...] = (
    # ---- base
    Fixing("base.rail.top", "base.leg", pattern=LAP, light=True, own_side=True, words="glued"),
    _none("base.rail.top", "base.leg", "glued at the corner, drawn up by the legs' screws"),
    Fixing("base.rail.bottom", "base.leg", ways=(STRAIGHT, SLANT, BACK, SLANT_BACK)),
    Fixing("base.leg", "base.leg", spacing=250.0, most=THICKNESS, words="at the corner"),
    _none("base.rail.top", "base.rail.top", "drawn up by the legs' screws"),
    Fixing("base.sole", "base.leg", ways=(SLANT, BACK, STRAIGHT)),
    Fixing("base.sole", "base.sole", ways=(SLANT, SLANT_BACK, STRAIGHT), least=1, words="over the ridge"),
    Fixing("base.cladding", "base.leg base.rail base.sole", spacing=152.0, light=True, source=EDGE_RULE, own_side=True),
    _none("base.cladding", "base.leg base.rail base.sole base.cladding", "edges meet under the corner boards"),
    Fixing("base.corner", "base.cladding", light=True, hold=3.0, plugged=True, own_side=True,
           words="on into the leg behind"),
    _none("base.corner", "base.cladding", "covers the next side's edge"),
    Fixing("base.corner", "base.corner", NAIL, spacing=150.0, light=True, words="across the corner"),
    # ---- stages
    Fixing("base.cladding", "louver.rail.bottom", least=3, own_side=True, light=True, plugged=True,
           words="stage joint: sideways through the cladding above the base's rail"),
    _none("base.cladding base.corner base.rail base.leg", "louver", "stage joint: the stages stand on each other"),
    Fixing("roof.bedmould", "louver.frieze louver.trim", ways=(SLANT, STRAIGHT), own_side=True, hold=2.5,
           words="stage joint: up from below into the rail or the plate, before the soffit is on"),
    Fixing("roof.gable.apron", "louver.frieze louver.trim", ways=(STRAIGHT, SLANT), hold=2.5, plugged=True,
           own_side=True, light=True, words="stage joint: sideways through the apron into the rail"),
    _none("roof", "louver", "stage joint: the stages stand on each other"),
    # ---- louver stage
    Fixing("louver.rail", "louver.post", pattern=LAP, light=True, own_side=True, words="glued"),
    _none("louver.rail", "louver.post", "glued at the corner, drawn up by the posts' screws"),
    Fixing("louver.post", "louver.post", spacing=250.0, most=THICKNESS, words="at the corner"),
    _none("louver.rail", "louver.rail", "drawn up by the posts' screws"),
    Fixing("louver.bed", "louver.rail.bottom", light=True, words="glued"),
    Fixing("louver.sill", "louver.bed", spacing=250.0, light=True, plugged=True, words="glued"),
    Fixing("louver.sill", "louver.stile louver.mullion", light=True, least=1),
    Fixing("louver.stile", "louver.head", light=True, least=2, words="into the head rail's end"),
    Fixing("louver.head", "louver.mullion", light=True, least=2),
    Fixing("louver.stile louver.mullion", "louver.slat", NAIL, light=True, least=1,
           words="glued; a pin until the glue has set"),
    Fixing("louver.stile", "louver.post", light=True, spacing=250.0, own_side=True,
           words="over a packer in the gap"),
    _none("louver.sill louver.bed louver.head louver.stile", "louver.post louver.rail.top", _CLEAR),
    Fixing("louver.post", "louver.ring", ways=(STRAIGHT, SLANT, BACK), least=1, light=True, own_side=True,
           words="the joint bedded in sealant"),
    _none("louver.ring", "louver.ring", "glued mitre; each board is held to its posts"),
    _none("louver.ring", "louver", _BY_ITS_OWN),
    Fixing("louver.trim", "louver.post", spacing=254.0, light=True, plugged=True, own_side=True),
    Fixing("louver.trim", "louver.trim", NAIL, spacing=200.0, light=True, words="across the corner"),
    _none("louver.trim", "louver", _BY_ITS_OWN),
    Fixing("louver.frieze", "louver.rail.top", spacing=254.0, light=True, plugged=True),
    _none("louver.frieze", "louver", _BY_ITS_OWN),
    Fixing("louver.screen", "louver.sill louver.head louver.stile", STAPLE, spacing=50.0),
    _none("louver.screen", "louver.slat louver.mullion louver.bed", _BY_ITS_OWN),
    Fixing("louver.batten", "louver.screen", spacing=152.0, light=True, words="through the mesh into the panel"),
    _none("louver.batten", "louver.batten", _BY_ITS_OWN),
    _none("louver.slat", "louver.head", "just meets it"),
    # ---- roof stage
    Fixing("roof.gusset", "roof.plate", spacing=60.0, light=True, words="glued"),
    Fixing("roof.plate", "roof.plate", pattern=LAP, light=True, words="glued; clear of the rafters' seats"),
    Fixing("roof.hip", "roof.plate roof.kingpost roof.ridge roof.common", ways=(SLANT, STRAIGHT, SLANT_BACK)),
    Fixing("roof.jack", "roof.plate roof.hip", ways=(SLANT, STRAIGHT, SLANT_BACK)),
    Fixing("roof.common", "roof.plate roof.kingpost roof.ridge", ways=(SLANT, STRAIGHT, SLANT_BACK)),
    Fixing("roof.bedmould", "roof.plate", spacing=152.0, light=True, own_side=True),
    _none("roof.bedmould", "roof.plate roof.hip roof.jack roof.common", _BY_ITS_OWN),
    Fixing("roof.soffit", "roof.bedmould", spacing=152.0, light=True, plugged=True, words="at the roof"),
    Fixing("roof.soffit", "roof.hip roof.jack roof.common", least=1, light=True, plugged=True,
           words="at the roof"),
    _none("roof.soffit", "roof.soffit", "glued mitre over the hip's tail"),
    Fixing("roof.fascia", "roof.hip roof.jack roof.common", least=1, ways=(STRAIGHT, SLANT), light=True, plugged=True),
    _none("roof.fascia", "roof.soffit", "its edge closes on it"),
    _none("roof.fascia", "roof.fascia", "glued mitre; each board is held to the tails"),
    Fixing("roof.sheathing", "roof.hip roof.jack roof.common roof.ridge roof.fascia roof.barge", NAIL, spacing=152.0,
           light=True, hold=4.0, source=EDGE_RULE),
    Fixing("roof.sheathing", "roof.lookout roof.gable.board", NAIL, light=True, hold=4.0, source=EDGE_RULE),
    _none("roof.sheathing", "roof.sheathing", "edges meet over the rafter"),
    Fixing("roof.barge", "roof.ridge roof.fascia", NAIL, ways=(STRAIGHT, SLANT), light=True),
    Fixing("roof.barge", "roof.lookout", ways=(STRAIGHT, SLANT), light=True, plugged=True),
    _none("roof.barge", "roof.barge roof.soffit", _BY_ITS_OWN),
    Fixing("roof.common", "roof.lookout", ways=(STRAIGHT, SLANT_BACK), words="into the lookout's end"),
    Fixing("roof.lookout", "roof.gable.board", ways=(SLANT, BACK), least=1, light=True),
    _none("roof.lookout", "roof.gable.sill roof.ridge", _BY_ITS_OWN),
    Fixing("roof.gable.board", "roof.plate roof.common", spacing=152.0, light=True, source=EDGE_RULE),
    _none("roof.gable.board", "roof", _BY_ITS_OWN),
    Fixing("roof.gable.bed", "roof.plate", light=True, words="glued"),
    Fixing("roof.gable.sill", "roof.gable.bed", spacing=250.0, light=True, plugged=True, words="glued"),
    Fixing("roof.gable.apron", "roof.plate", spacing=254.0, light=True, plugged=True, own_side=True),
    _none("roof.gable.apron", "roof", _BY_ITS_OWN),
    Fixing("roof.gable.stile", "roof.common", light=True, words="up into the rafter"),
    _none("roof.gable.stile", "roof.gable.slat", "screws through the stile before it is in, by its marks in the cut report"),
    Fixing("roof.gable.stile", "roof.gable.sill", light=True, least=1),
    Fixing("roof.gable.peak", "roof.gable.stile", NAIL, light=True),
    Fixing("roof.gable.screen", "roof.gable.stile roof.gable.sill", STAPLE, spacing=50.0),
    Fixing("roof.gable.batten", "roof.gable.screen", spacing=152.0, light=True, words="through the mesh into the frame"),
    _none("roof.gable.screen", "roof", _BY_ITS_OWN),
    _none("roof.gable", "roof", _BY_ITS_OWN),
    Fixing("roof.bearer", "roof.plate", ways=(SLANT, STRAIGHT)),
    Fixing("roof.step", "roof.bearer"),
)

#: What holds the roof stage on a side where nothing of its own can: no bed mould reaches down, or no driver up to it.
FROM_INSIDE = Fixing("louver.rail.top", "roof.plate", ways=(INSIDE,), own_side=True, hold=1.0,
                     words="stage joint: from inside the vent, up through the rail into the plate")
#: And then of the joints that would have held it.
HELD_FROM_INSIDE = _none("roof", "louver", "stage joint: screwed from inside the vent instead")


def fixing_of(first: str, second: str, same_side: bool = True) -> tuple[Fixing, bool] | None:
    """The row for a joint of two kinds, and whether its first kind is the joint's; None where no row fits."""
    for row in FIXINGS:
        if row.own_side and not same_side:
            continue
        if matches(first, row.first) and matches(second, row.second):
            return row, True
        if matches(second, row.first) and matches(first, row.second):
            return row, False
    return None
