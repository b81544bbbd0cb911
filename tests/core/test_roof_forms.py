# SPDX-License-Identifier: LGPL-2.1-or-later
"""The forms of the vent's roof, measured on their pieces: what the take-off says, and what has to cover what."""

from __future__ import annotations

import math
from typing import Any

import pytest
from making import only, spec_of, standing

from louverwright.core.assembly import Assembly, board_shell
from louverwright.core.dimensions import sizes
from louverwright.core.figures import figures
from louverwright.core.geometry import newell
from louverwright.core.layout import layout
from louverwright.core.solid import HIDDEN_FACE

FORMS: dict[str, dict[str, Any]] = {
    "hip": {},
    "octagon": {"sides": 8, "width": 1_200.0, "king_post_stock": "6x6"},
    "rectangle": {"length": 1_350.0},
    "steep ends": {"length": 1_350.0, "roof_pitch": 32.0, "end_pitch": 42.0, "rafters_per_side": 3},
    "flared": {"roof_form": "flared hip", "roof_pitch": 45.0, "rafter_stock": "2x6"},
    "flared rectangle": {"roof_form": "flared hip", "roof_pitch": 42.0, "rafter_stock": "2x6", "length": 1_300.0,
                         "ridge_stock": "2x8", "tail_depth": 80.0},
    "gable": {"roof_form": "gable"},
    "gable across": {"roof_form": "gable", "gable_ridge": "across", "length": 1_200.0, "roof_pitch": 28.0,
                     "fascia_stock": "1x8"},
}


def undersides(assembly: Assembly) -> float:
    """Area of the sheathing's lower faces, all pieces together (mm²)."""
    total = 0.0
    for part in assembly.parts:
        if part.kind.id.startswith("roof.sheathing"):
            shell = board_shell(part.board)
            for face in shell.faces:
                if face.name == HIDDEN_FACE:
                    loops = [newell(tuple(shell.points[i] for i in loop)) for loop in face.loops]
                    total += part.count * abs(sum(loop[2] for loop in loops)) / 2.0
    return total


@pytest.mark.parametrize("form", FORMS)
def test_the_covering_is_the_area_of_the_sheathing(form: str) -> None:
    spec = spec_of(**FORMS[form])
    assert figures(spec)["roof_covering"] == pytest.approx(undersides(layout(spec)), rel=5e-3 if "ends" in form else 1e-6)


@pytest.mark.parametrize("form", FORMS)
def test_the_height_is_the_highest_point(form: str) -> None:
    spec = spec_of(**FORMS[form])
    high = max(point[2] for part in layout(spec).parts for point in standing(part))
    assert figures(spec)["overall_height"] == pytest.approx(high, abs=1e-6 if "ends" not in form else 4.0)


def test_the_ridge_run_is_what_the_ridge_piece_is_long() -> None:
    """Between hipped ends the piece is longer by its own thickness, between barge boards shorter by both of these."""
    hipped, gabled = spec_of(**FORMS["rectangle"]), spec_of(**FORMS["gable"])
    ridge = only(layout(hipped), "roof.ridge").board
    assert ridge.length - figures(hipped)["ridge_run"] == pytest.approx(ridge.thickness, abs=1e-6)
    board = only(layout(gabled), "roof.barge").board
    assert figures(gabled)["ridge_run"] - only(layout(gabled), "roof.ridge").board.length == pytest.approx(
        2.0 * board.thickness, abs=1e-6)


def test_gable_boards_lap_over_the_plate_and_the_joint_under_it() -> None:
    spec = spec_of(**FORMS["gable"])
    low = min(point[2] for part in layout(spec).of_kind("roof.gable.board") for point in standing(part))
    plate = min(point[2] for part in layout(spec).of_kind("roof.plate") for point in standing(part))
    assert low == pytest.approx(plate - 12.0, abs=1e-6)


def test_barge_boards_cover_the_ends_of_ridge_fascia_and_soffit() -> None:
    """Seen along the ridge: where the barge board's lower edge runs, nothing of what ends behind it hangs lower.

    With a narrow overhang the ridge is what needs the width.
    """
    spec = spec_of(**FORMS["gable"], overhang=60.0)
    assembly, at = layout(spec), sizes(spec)
    fall = math.tan(math.radians(at.cap.pitch))
    board = only(assembly, "roof.barge").board
    plumb = board.width / math.cos(math.radians(at.cap.pitch))
    for kind in ("roof.ridge", "roof.soffit"):
        for part in assembly.of_kind(kind):
            for point in standing(part):
                if abs(point[1]) <= at.cap.plate_r + 2.5:
                    away = 0.0 if kind == "roof.ridge" else abs(point[1])    # its lower edge runs right across the peak
                    assert point[2] > at.peak - away * fall - plumb, kind
    low = min(point[2] for part in assembly.of_kind("roof.barge") for point in standing(part))
    assert low == pytest.approx(min(point[2] for part in assembly.of_kind("roof.fascia") for point in standing(part)))


def test_a_kicked_hip_falls_as_its_slope_says() -> None:
    for values in (FORMS["flared"], {**FORMS["flared rectangle"], "end_pitch": 46.0}):
        spec = spec_of(**values)
        at, out = sizes(spec), figures(spec)
        run = math.dist(at.hip_point(0, at.cap.break_r, 0.0), at.hip_point(0, at.cap.tail_r, 0.0))
        fall = at.cap.under(at.cap.break_r) - at.cap.under(at.cap.tail_r)
        assert math.tan(math.radians(out["kicked_hip_slope"])) == pytest.approx(fall / run, rel=1e-9)
