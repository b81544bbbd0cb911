# SPDX-License-Identifier: LGPL-2.1-or-later
"""Vents that random specs once brought to light; each builds, with every joint it must have and none without a rule."""

from __future__ import annotations

import pytest

from louverwright.core.checks import checked_spec
from louverwright.core.joints import missing, undeclared
from louverwright.core.layout import layout
from louverwright.core.spec import SpecError
from louverwright.places import stock_list

FOUND = {
    "a slope of a ten-thousandth of a degree kept the soles off the legs": {
        "sides": 6, "width": 988.2, "pitch_left": 29.26, "pitch_right": 0.0001, "king_post_stock": "120x120"},
    "a panel shallower than the rail had its sill bed in the screen": {
        "sides": 6, "width": 816.4, "panel_depth": 40.0, "batten_stock": "18x45", "stage_clearance": 1.0,
        "king_post_stock": "120x120"},
}


@pytest.mark.parametrize("fault", FOUND)
def test_the_vent_builds(fault: str) -> None:
    spec = checked_spec(FOUND[fault], stock_list("eu"))
    assembly = layout(spec)
    assert missing(assembly, spec) == []
    assert undeclared(assembly) == []


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
