# SPDX-License-Identifier: LGPL-2.1-or-later
"""The assembly book's own words: what each step is called, what is done in it, and where its picture is seen from."""

from __future__ import annotations

from dataclasses import dataclass

from .step_picture import FROM_ABOVE, FROM_BELOW, FROM_HIGH, Eye


@dataclass(frozen=True)
class StepWords:
    """A step's title, what is done, and the eye of its picture."""

    title: str
    lines: tuple[str, ...]
    eye: Eye = FROM_ABOVE


WORDS: dict[str, StepWords] = {
    "base.frame": StepWords("Frame of the base", (
        "Lay each side flat on the bench, its outside down: legs, rails and soles. Glue and screw the half laps, check both "
        "diagonals before the glue grips.",
        "Stand the sides on their heads on the level blocks and screw them together at the corners, one after another.",
        "Compare the diagonals of the whole frame; they must be alike before cladding goes on.")),
    "base.cladding": StepWords("Cladding of the base", (
        "Fit the cladding: its foot clears the roof, its head runs past the rails and takes the louver stage between it.",
        "Prime the edges at the foot twice: they drink most.")),
    "base.corner": StepWords("Corner boards", (
        "Bed and screw the corner boards in pairs; their heads keep to the slope of the drip ring over them.",)),
    "louver.frame": StepWords("Frame of the louver stage", (
        "Lay each side flat on the bench, its outside down, glue and screw the half laps, check the diagonals.",
        "Stand the sides up and screw them together at the corners. Set the frame on the base dry: it must drop in all "
        "round.")),
    "louver.bed": StepWords("Sill beds", ("Glue and screw the beds to the bottom rails, sloped face up, thin edge out.",),
                            FROM_HIGH),
    "louver.panel": StepWords("Louver panels", (
        "Make each panel on the bench: slats into the dados of one stile, the other stile over them, the sill under and the "
        "head rail between. Try it dry; the slats must go home with hand pressure.",
        "Glue the dados, drive the pins through the stiles into the slats, check the diagonals, let it set on the wedges.",
        "Set the panels on their beds, packed to an even gap all round, and screw them through the stiles.")),
    "louver.ring": StepWords("Drip ring", (
        "Fit the boards round the frame, the last one to the gap. Bed the inner edges and screw from inside through the "
        "posts.",
        "The ring carries rain over the cladding: leave no gap at the mitres.")),
    "louver.trim": StepWords("Trim", (
        "Stand the trim on packers of the joint's height over the ring, lap it over the stiles, screw and plug.",)),
    "louver.frieze": StepWords("Friezes", ("Fit the friezes between the trims, their heads level with the frame's.",)),
    "louver.screen": StepWords("Screens", (
        "From inside: staple the mesh over the panel, then screw the battens through it over its edges.",), FROM_HIGH),
    "roof.plate": StepWords("Cap plate", (
        "Glue and screw the plate flat on the level blocks; check it on the louver stage before the glue grips.",)),
    "roof.bearer": StepWords("Mast bearer and step", (
        "Screw the bearer to the plate and the step to the bearer, its hole under the roof's axis. No screw within the "
        "bore.",)),
    "roof.peak": StepWords("Peak with its first rafters", (
        "Stand up the peak with the first rafters leaning against it; prop it until the others are in. Check it plumb "
        "over the plate's middle.",)),
    "roof.rafters": StepWords("Rafters", ("Screw in the other rafters, opposite ones after each other, heads first.",)),
    "roof.bedmould": StepWords("Bed mould", (
        "Screw the bed mould to the plate's edge, its upper edge level with the plate's. Below the plate it hangs free: there "
        "the stage joint's screws go in, at the roof.",), FROM_BELOW),
    "roof.gable.sill": StepWords("Gable ends: beds, sills, aprons", (
        "Glue and screw bed and sill, bed the apron under the sill and screw it to the plate.",)),
    "roof.gable.louver": StepWords("Gable ends: louvers", (
        "Screw the slats to their stiles on the bench by the stiles' marks, with waterproof glue or sealant; then set each "
        "louver in and screw it up into the rafters and down to the sill.",)),
    "roof.gable.board": StepWords("Gable ends: cladding", ("Screw the boards to plate and rafter.",)),
    "roof.gable.screen": StepWords("Gable ends: screens", ("From inside: mesh first, then battens over its edges.",)),
    "roof.fascia": StepWords("Fascia", ("Screw the fascia to the tails, its upper edge in the plane of the roof.",)),
    "roof.lookout": StepWords("Lookouts", ("Screw the lookouts to the gables' rafters, upper edges to the sheathing.",)),
    "roof.barge": StepWords("Barge boards", (
        "Hold the barge boards up to ridge and fascia and nail them; lookouts are screwed through them and plugged.",)),
    "roof.sheathing": StepWords("Roof sheathing", (
        "Nail the sheathing along every edge. Leave the covering until the stage is on the vent, or cover it now if it can be "
        "lifted whole.",)),
    "roof.soffit": StepWords("Soffit, at the roof", (
        "Only when the roof stage is screwed down: push the soffit up from below, screw it to bed mould and tails, plug.",),
        FROM_BELOW),
}

CAUTIONS = (
    "Eye and ear protection, dust mask for treated wood; clamp what you bore, keep the hand that holds out of the "
    "screw's line.",
    "Stages tip over easily while they have no cladding: brace them, and have two people turn them.",
    "Glue only on bare, dry wood; wipe off what is squeezed out of a joint before it is primed over.",
)
DRY_FIT = (
    "Put each stage together dry, without glue or sealant, with a screw here and there. Check: corners closed, diagonals "
    "alike, each stage dropping onto the one below by its own weight.",
    "Bore clearance holes, pilots and counterbores while it is dry. Take it apart, write nothing anew: the labels stay on.",
    "Prime all that is not named bare for glue, end grain twice, and let it dry before assembly.",
)
