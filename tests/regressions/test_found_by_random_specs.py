# SPDX-License-Identifier: LGPL-2.1-or-later
"""Vents that random specs once brought to light; each builds, with every joint it must have and none without a rule."""

from __future__ import annotations

import sys
from pathlib import Path
from typing import Any

import pytest

sys.path.append(str(Path(__file__).resolve().parents[1] / "core"))
from proof import idle_faults

from louverwright.core.checks import checked_spec
from louverwright.core.joints import missing, undeclared
from louverwright.core.layout import layout
from louverwright.core.spec import SpecError
from louverwright.places import stock_list

FOUND: dict[str, dict[str, Any]] = {
    "a slope of a ten-thousandth of a degree kept the soles off the legs": {
        "sides": 6, "width": 988.2, "pitch_left": 29.26, "pitch_right": 0.0001, "king_post_stock": "120x120"},
    "a panel shallower than the rail had its sill bed in the screen": {
        "sides": 6, "width": 816.4, "panel_depth": 40.0, "batten_stock": "18x45", "stage_clearance": 1.0,
        "king_post_stock": "120x120"},
    "a sole's end lay just between two roundings of its direction, and met no leg": {
        "sides": 8, "width": 1_279.805625269928, "king_post_stock": "120x120", "frame_width": 99.36630688012865,
        "drop_left_back": 5.333333333333334, "drop_left_front": 5.000061035156251, "drop_right_back": 5.000000000000001,
        "drop_right_front": 5.999990000000001},
    "two soles that differ by 0.4 thousandths of a degree were cut as one and met no leg": {
        "width": 1_150.0, "pitch_left": 0.09810295887291434, "pitch_right": 0.09768962860103872, "king_post_stock": "120x120"},
    "a foot on a slope was ripped that a wide ridge cap's relief takes whole": {
        "stock_list": "us", "sides": 6, "width": 700.0, "pitch_left": 50.0, "pitch_right": 2.0, "ridge_cap_width": 1_000.0,
        "king_post_stock": "6x6"},
}


@pytest.mark.parametrize("fault", FOUND)
def test_the_vent_builds(fault: str) -> None:
    spec = checked_spec(FOUND[fault], stock_list(FOUND[fault].get("stock_list", "eu")))
    assembly = layout(spec)
    assert missing(assembly, spec) == []
    assert undeclared(assembly) == []
    assert [fault for part in assembly.parts for fault in idle_faults(part, spec)] == []


def test_the_sill_bed_stays_within_a_shallow_panel() -> None:
    spec = checked_spec({"panel_depth": 40.0, "slat_stock": "20x120"}, stock_list("eu"))
    assert [part.board.width for part in layout(spec).of_kind("louver.bed")] == [pytest.approx(38.0)]    # 2 mm blunt at 45°


def test_a_relief_that_no_saw_can_make_is_refused() -> None:
    """Over a cap of a hundred-thousandth of a millimetre two soles were cut otherwise than the paper said."""
    for height in (1e-5, 0.99):
        with pytest.raises(SpecError) as refused:
            checked_spec({"ridge_cap_height": height}, stock_list("eu"))
        assert [finding.field for finding in refused.value.findings] == ["ridge_cap_height"]
        assert "Set it to 0" in str(refused.value)
    for height in (0.0, 1.0):
        assert checked_spec({"ridge_cap_height": height}, stock_list("eu")).ridge_cap_height == height


@pytest.mark.parametrize("drops", [{}, {"drop_left_back": 435.8, "drop_left_front": 401.6, "drop_right_back": 7.1,
                                        "drop_right_front": 6.0, "pitch_left": 0.1, "pitch_right": 8.8}])
def test_no_foot_is_sawn_that_the_relief_over_the_ridge_cap_takes_whole(drops: dict[str, float]) -> None:
    """A leg at a corner that faces along the ridge stands wholly on the cap: one cut, not two parallel ones."""
    spec = checked_spec({"sides": 6, "facing": "corner", "width": 1_037.8, "king_post_stock": "6x6", **drops},
                        stock_list("us"))
    legs = [part.board for part in layout(spec).parts if part.kind.id == "base.leg.eave"]
    feet = [[cut for cut in leg.cuts if cut.kind != "half lap" and cut.planes[0].normal[0] < -0.1] for leg in legs]
    assert min(map(len, feet)) == 1 and max(map(len, feet)) <= 2
    for cuts in feet:
        ways = [tuple(round(each, 6) for each in cut.planes[0].normal) for cut in cuts]
        assert len(set(ways)) == len(ways), "two parallel cuts at one foot"
