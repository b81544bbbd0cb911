# SPDX-License-Identifier: LGPL-2.1-or-later
"""The kinds of part that a vent can have: one row a kind, in the order of assembly.

Ids and mark numbers are written on wood and into documents, so a row keeps both
for ever; an absent kind leaves its number unused.
"""

from __future__ import annotations

from dataclasses import dataclass

from .saying import Text, joined, say

BASE, LOUVER, ROOF = "base", "louver", "roof"

#: Stage id → (letter that opens its marks, name).
STAGES = {BASE: ("B", "Base"), LOUVER: ("L", "Louver stage"), ROOF: ("R", "Roof stage")}


@dataclass(frozen=True)
class Kind:
    """One kind of part.

    ``edges``, ``faces`` and ``ends`` name what the board frame calls reference edge
    and far edge, marked and hidden face, end A and end B, as they sit in the vent
    (a member may be ``swapped`` or ``reversed``: then its edges or ends change names).
    """

    id: str
    number: int
    name: str
    stock: str  # the stock parameter it is cut from
    faces: tuple[str, str] = ("outside", "inside")
    ends: tuple[str, str] = ("left end", "right end")
    edges: tuple[str, str] = ("lower edge", "upper edge")
    held: str = ""  # how it is fastened, where the joints do not say it
    either: bool = False  # whether either face may be the outside one: it is covered, or within the frame
    finish: str = ""  # where what glue leaves is not primed as usual: all faces, edges and end grain before assembly

    @property
    def stage(self) -> str:
        """'base', 'louver' or 'roof'."""
        return self.id.split(".")[0]

    @property
    def mark(self) -> str:
        """Stage letter and number: B1."""
        return f"{STAGES[self.stage][0]}{self.number}"


_UPRIGHT = ("foot", "head")
_CORNER = ("corner edge", "edge to the opening")
_SIDES = ("right edge", "left edge")
_CHEEKS = ("right cheek", "left cheek")

_BATTEN = "Staple the mesh, then screw or nail the batten through it over its edge."

KINDS: tuple[Kind, ...] = (
    # ---- base
    Kind("base.leg.gable", 1, "Leg, gable side", "frame_stock", either=True, ends=_UPRIGHT, edges=_CORNER),
    Kind("base.leg.eave", 2, "Leg, eave side", "frame_stock", either=True, ends=_UPRIGHT, edges=_CORNER),
    Kind("base.rail.top", 3, "Top rail", "frame_stock", either=True),
    Kind("base.sole.gable", 4, "Sole, gable side", "frame_stock", either=True, ends=("leg end", "ridge end")),
    Kind("base.sole.eave", 5, "Sole, eave side", "frame_stock", either=True),
    Kind("base.rail.bottom", 6, "Bottom rail", "frame_stock", either=True),
    Kind("base.cladding.gable", 7, "Cladding, gable side", "cladding_stock",
         ends=_UPRIGHT, edges=_SIDES),
    Kind("base.cladding.eave", 8, "Cladding, eave side", "cladding_stock",
         ends=_UPRIGHT, edges=_SIDES),
    Kind("base.corner.gable", 9, "Corner board, gable side", "corner_board_stock",
         ends=_UPRIGHT, edges=_CORNER),
    Kind("base.corner.eave", 10, "Corner board, eave side", "corner_board_stock",
         ends=_UPRIGHT, edges=_CORNER),
    # ---- louver stage
    Kind("louver.post.gable", 1, "Post plank, gable side", "frame_stock", either=True, ends=_UPRIGHT, edges=_CORNER),
    Kind("louver.post.eave", 2, "Post plank, eave side", "frame_stock", either=True, ends=_UPRIGHT, edges=_CORNER),
    Kind("louver.rail.bottom", 3, "Bottom rail", "frame_stock", either=True),
    Kind("louver.rail.top", 4, "Top rail", "frame_stock", either=True),
    Kind("louver.bed", 5, "Sill bed", "frame_stock", either=True, faces=("lower face", "sloped face"),
         edges=("inner edge", "outer edge"),
         held="Glue and screws to the rail. Its thin outer edge is left blunt: fill the gap under the sill with sealant."),
    Kind("louver.sill", 6, "Sill", "slat_stock", faces=("upper face", "lower face"),
         edges=("outer edge", "inner edge")),
    Kind("louver.stile", 7, "Stile", "stile_stock", faces=("dadoed face", "face to the post"), ends=_UPRIGHT,
         edges=("inner edge", "weather edge")),
    Kind("louver.mullion", 8, "Mullion", "frame_stock", faces=("right face", "left face"), ends=_UPRIGHT,
         edges=("inner edge", "weather edge")),
    Kind("louver.slat", 9, "Slat", "slat_stock", faces=("upper face", "lower face"),
         edges=("outer edge", "inner edge")),
    Kind("louver.head", 10, "Head rail", "stile_stock", faces=("upper face", "lower face"),
         edges=("outer edge", "inner edge")),
    Kind("louver.ring", 11, "Drip ring board", "ring_stock", faces=("upper face", "lower face"),
         edges=("nose", "inner edge")),
    Kind("louver.trim.gable", 12, "Trim, gable side", "trim_stock", ends=_UPRIGHT, edges=_CORNER),
    Kind("louver.trim.eave", 13, "Trim, eave side", "trim_stock", ends=_UPRIGHT, edges=_CORNER),
    Kind("louver.frieze", 14, "Frieze", "trim_stock"),
    Kind("louver.screen", 15, "Screen", "screen_stock"),
    Kind("louver.batten.upright", 16, "Screen batten, upright", "batten_stock", faces=("face to the mesh", "inside"),
         ends=_UPRIGHT, edges=_SIDES),
    Kind("louver.batten.level", 17, "Screen batten, level", "batten_stock", faces=("face to the mesh", "inside")),
    # ---- roof stage
    Kind("roof.plate", 1, "Cap plate", "plate_stock", either=True, faces=("upper face", "lower face"),
         edges=("outer edge", "inner edge")),
    Kind("roof.kingpost", 2, "King post", "king_post_stock", faces=("marked flat", "flat opposite the mark"),
         ends=_UPRIGHT, edges=("right flat", "left flat")),
    Kind("roof.hip", 3, "Hip rafter", "rafter_stock", either=True, faces=_CHEEKS, ends=("tail", "head"),
         edges=("lower edge", "backed edge")),
    Kind("roof.jack", 4, "Jack rafter", "rafter_stock", either=True, faces=_CHEEKS, ends=("tail", "head")),
    Kind("roof.common", 5, "Common rafter", "rafter_stock", either=True, faces=_CHEEKS,
         ends=("tail", "head")),
    Kind("roof.bedmould", 6, "Bed mould and soffit nailer", "fascia_stock"),
    Kind("roof.soffit", 7, "Soffit", "soffit_stock", faces=("upper face", "lower face"),
         edges=("outer edge", "inner edge")),
    Kind("roof.fascia", 8, "Fascia", "fascia_stock"),
    Kind("roof.sheathing", 9, "Roof sheathing", "sheathing_stock", either=True, faces=("upper face", "lower face"),
         edges=("eave edge", "upper edge"), finish="paint the edges; leave the upper face for the covering"),
    Kind("roof.bearer", 10, "Mast bearer", "frame_stock", either=True, faces=("right face", "left face")),
    Kind("roof.ridge", 12, "Ridge piece", "ridge_stock", either=True, faces=("left face", "right face"),
         edges=("lower edge", "upper edge")),
    Kind("roof.sheathing.eave", 13, "Eave sheathing", "sheathing_stock", either=True, faces=("upper face", "lower face"),
         edges=("eave edge", "upper edge"), finish="paint the edges; leave the upper face for the covering"),
    Kind("roof.barge", 14, "Barge board", "fascia_stock", ends=("foot", "peak"),
         held="Nailed to the ends of ridge and fascia, to the lookouts if there are any, and down through the sheathing's "
              "edge."),
    Kind("roof.gable.board", 15, "Gable-end cladding", "cladding_stock", ends=_UPRIGHT, edges=_SIDES),
    Kind("roof.gable.bed", 16, "Gable-end sill bed", "frame_stock", either=True, faces=("lower face", "sloped face"),
         edges=("inner edge", "outer edge"),
         held="Glue and screws to the plate. Its thin outer edge is left blunt: fill the gap under the sill with sealant."),
    Kind("roof.gable.sill", 17, "Gable-end sill", "slat_stock", faces=("upper face", "lower face"),
         edges=("outer edge", "inner edge")),
    Kind("roof.gable.stile", 18, "Gable-end stile", "stile_stock", faces=("lower face", "face to the rafter"),
         ends=("foot", "peak"), edges=("inner edge", "weather edge"),
         held="Screwed up into the rafter and down to the sill, once the slats are screwed to it."),
    Kind("roof.gable.slat", 19, "Gable-end slat", "slat_stock", faces=("upper face", "lower face"),
         edges=("outer edge", "inner edge"),
         held="Each end with waterproof glue or sealant and two screws through the stile: see the stile's marks."),
    Kind("roof.gable.peak", 20, "Gable-end peak board", "trim_stock"),
    Kind("roof.gable.screen", 21, "Gable-end screen", "screen_stock"),
    Kind("roof.gable.apron", 23, "Gable-end apron", "trim_stock",
         held="Screws to the plate's edge, clear of the louver frame below; sealant on the upper edge, under the "
              "sill."),
    Kind("roof.lookout", 24, "Lookout", "rafter_stock", faces=("face up the slope", "face down the slope"),
         ends=("end at the rafter", "end at the barge board"),
         held="Two screws through the gable's rafter into its end, two through the barge board, and nails down through the "
              "sheathing."),
    Kind("roof.gable.batten.level", 25, "Gable-end screen batten, level", "batten_stock", faces=("face to the mesh", "inside"),
         held=_BATTEN),
    Kind("roof.gable.batten.rake", 26, "Gable-end screen batten, raking", "batten_stock",
         faces=("face to the mesh", "inside"), ends=("foot", "peak"), held=_BATTEN),
    Kind("roof.gusset", 22, "Corner gusset of the cap plate", "sheathing_stock", either=True,
         faces=("upper face", "lower face"), edges=("corner", "inner edge")),
    Kind("roof.step", 11, "Mast step", "frame_stock", either=True, faces=("upper face", "lower face"),
         edges=("right edge", "left edge")),
)

BY_ID: dict[str, Kind] = {k.id: k for k in KINDS}


def spoken(name: str) -> Text:
    """A kind's name, or one made of it such as 'Leg, diagonal side', word for word: so it is told in another language."""
    return joined(", ", map(say, name.split(", ")))
