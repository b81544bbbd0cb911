# SPDX-License-Identifier: LGPL-2.1-or-later
"""Where sealant goes on the vent itself: one row for each pair of kinds, and how long the beads are, from the seams."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from functools import lru_cache

from .assembly import Assembly
from .joints import matches
from .seams import Seam, seams


@dataclass(frozen=True)
class Sealing:
    """How the joint of two kinds (families) is kept tight."""

    first: str
    second: str
    how: str


#: Common practice; what drains or breathes is not sealed.
SEALED: tuple[Sealing, ...] = (
    Sealing("base.corner", "base.cladding", "bed the corner board in a bead along its back"),
    Sealing("base.corner", "base.corner", "bead in the corner before the second board goes on"),
    Sealing("louver.ring", "louver.post louver.sill", "bed the ring's inner edge"),
    Sealing("louver.ring", "louver.ring", "fill the mitre as it is glued, and point it from above"),
    Sealing("louver.sill", "louver.bed", "fill the gap under the sill at the bed's blunt edge"),
    Sealing("louver.trim", "louver.ring", "caulk the joint over the ring once it is painted"),
    Sealing("louver.frieze", "louver.trim", "caulk the butt joint"),
    Sealing("roof.gable.apron", "roof.gable.sill", "bed the apron's upper edge under the sill"),
    Sealing("roof.gable.sill", "roof.gable.bed", "fill the gap under the sill at the bed's blunt edge"),
    Sealing("roof.barge", "roof.barge", "bead in the joint at the peak"),
)


@dataclass(frozen=True)
class Bead:
    """A bead of sealant along one seam: its row, the ids of the two pieces and its length (mm)."""

    row: Sealing
    first: str
    second: str
    length: float


@lru_cache(maxsize=8)
def beads(assembly: Assembly) -> tuple[Bead, ...]:
    """Every bead of a vent, in the joints' order."""
    kinds = {piece.id: piece.kind for piece in assembly.pieces}
    return tuple(bead for seam in seams(assembly) for bead in _bead(seam, kinds))


def _bead(seam: Seam, kinds: dict[str, str]) -> Iterator[Bead]:
    first, second = seam.joint.first, seam.joint.second
    for row in SEALED:
        if any(matches(kinds[a], row.first) and matches(kinds[b], row.second) for a, b in ((first, second), (second, first))):
            yield Bead(row, first, second, seam.main.length)
            return
