# SPDX-License-Identifier: LGPL-2.1-or-later
"""What solid wood grows and shrinks across its grain over a year: ΔD = D · C · ΔM (Wood Handbook, FPL-GTR-190, chapter 13)."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from .assembly import Assembly, Part
from .joints import matches
from .spec import Spec

#: From the driest to the wettest of a year, outdoors under cover (points of moisture): an assumption, from memory.
SEASON = 4.0
#: How much wider than the slat a dado is made (mm): 0.005 to 0.010 in, common practice.
FIT_LEAST, FIT_MOST = 0.127, 0.254
#: Kinds that stand side by side with a gap of their own between them.
GAPPED = "base.cladding roof.gable.board"
WIDTH, THICKNESS = "width", "thickness"


@dataclass(frozen=True)
class Species:
    """A wood's coefficients per point of moisture (valid between 6 and 14 %): radial, tangential; and where they are from."""

    name: str
    radial: float
    tangential: float
    source: str


#: Species by the name that a stock list's material has, small letters; the radial and tangential coefficients of the table.
SPECIES = {each.name: each for each in (
    Species("red alder", 0.00151, 0.00256, "Wood Handbook, FPL-GTR-190, table 13-5"),
    Species("black cherry", 0.00126, 0.00248, "Wood Handbook, FPL-GTR-190, table 13-5"),
    Species("american beech", 0.00190, 0.00431, "Wood Handbook, FPL-GTR-190, table 13-5"),
    Species("red oak", 0.00158, 0.00369, "Wood Handbook, FPL-GTR-190, table 13-5"),
    Species("white oak", 0.00180, 0.00365, "Wood Handbook, FPL-GTR-190, table 13-5"),
    Species("western redcedar", 0.00111, 0.00234, "from memory of the Wood Handbook, table 13-5"),
    Species("douglas-fir", 0.00165, 0.00267, "Wood Handbook, table 13-5; the radial one from memory"),
    Species("eastern white pine", 0.00071, 0.00212, "from memory of the Wood Handbook, table 13-5"),
)}


@dataclass(frozen=True)
class Movement:
    """How a part's width or thickness moves in a season (mm) if it is flat-sawn; ``species`` None for an unknown wood.

    ``gap`` is what the vent leaves for it (mm), 0.0 where nothing is left or needed.
    """

    part: Part
    of: str
    size: float
    species: Species | None
    moves: float | None
    gap: float

    @property
    def held(self) -> bool | None:
        """Whether the gap takes the movement; None where no gap is asked for or the wood is unknown."""
        return None if self.moves is None or not self.gap else self.moves <= self.gap


def species_of(material: str) -> Species | None:
    """The species that a stock list's material names; None for a group of species or one that is not in the table."""
    return SPECIES.get(material.strip().lower())


def movement(size: float, coefficient: float, points: float = SEASON) -> float:
    """ΔD = D · C · ΔM (mm), D in mm, ΔM in points of moisture (percent of the dry weight)."""
    return size * coefficient * points


def movements(assembly: Assembly, spec: Spec) -> tuple[Movement, ...]:
    """Every part of solid wood: its width, and the thickness of what is let into a dado.

    Both by the tangential coefficient, the greater one: the width as of a flat-sawn board, the thickness as of a
    quarter-sawn one, for a pile has both.
    """
    return tuple(each for part in assembly.parts if part.stock.form not in ("sheet", "mesh") for each in _of(part, spec))


def _of(part: Part, spec: Spec) -> Iterator[Movement]:
    gap = spec.board_gap if matches(part.kind.id, GAPPED) else 0.0
    yield _movement(part, WIDTH, part.board.width, gap)
    if part.kind.id in ("louver.slat", "roof.gable.slat"):
        yield _movement(part, THICKNESS, part.board.thickness, FIT_MOST)


def _movement(part: Part, of: str, size: float, gap: float) -> Movement:
    species = species_of(part.stock.material)
    return Movement(part, of, size, species, movement(size, species.tangential) if species else None, gap)
