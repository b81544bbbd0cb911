# SPDX-License-Identifier: LGPL-2.1-or-later
"""Stock as it was measured: parts have its real size, weights follow its moisture, reports show what was measured."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

import pytest
from making import job_of, only, spec_of, vent
from pytest import approx

from louverwright.core.compare import compare
from louverwright.core.figures import figures
from louverwright.core.joints import missing, undeclared
from louverwright.core.kinds import KINDS
from louverwright.core.layout import layout
from louverwright.core.spec import as_measured, make_spec
from louverwright.core.stock import ITEM_KEYS, measured_stock, merged, read_stock_list
from louverwright.exchange.compare import job_from_record
from louverwright.exchange.papers import job_from_values
from louverwright.places import stock_list
from louverwright.report.json_file import to_json
from louverwright.report.part_sheet import part_sheets

REAL: dict[str, Any] = {"frame_thickness": 37.0, "frame_width": 86.0, "slat_thickness": 18.2, "ring_thickness": 18.2,
                        "panel_depth": 74.0, "screen_thickness": 1.2, "cladding_thickness": 18.0, "batten_width": 20.0}


def test_parts_have_the_measured_thickness_and_the_vent_fits_together() -> None:
    spec = spec_of(**REAL)
    assembly = layout(spec)
    assert undeclared(assembly) == [] and missing(assembly, spec) == []
    for kind in KINDS:
        real = REAL.get(kind.stock.replace("_stock", "_thickness"))
        if real is not None and kind.id != "louver.bed":
            assert all(part.board.thickness == approx(real) for part in assembly.of_kind(kind.id)), kind.id
    assert only(assembly, "louver.slat").board.thickness == approx(18.2)
    assert [part.board.width for part in assembly.of_kind("base.rail.top")] == [approx(86.0), approx(86.0)]
    assert only(assembly, "louver.batten.level").board.width == approx(20.0)
    assert only(vent(), "louver.slat").board.thickness == approx(19.05), "the list's without a measure"


def test_a_size_measured_for_one_use_leaves_the_other_uses_of_that_stock_alone() -> None:
    spec = spec_of(frame_thickness=37.0)
    assert (spec.frame_stock.thickness, spec.rafter_stock.thickness) == (37.0, approx(38.1))
    assert spec.frame_stock.name == spec.rafter_stock.name == "2x4"


def test_weights_follow_the_moisture() -> None:
    """ρ ∝ 1 + M: 12 % to 19 % makes the frame heavier by 1.19/1.12, and nothing else."""
    dry, wet = (layout(spec_of(**values)) for values in ({}, {"frame_moisture": 19.0}))
    for old, new in zip(dry.parts, wet.parts, strict=True):
        factor = 1.19 / 1.12 if old.kind.stock == "frame_stock" else 1.0
        assert new.weight == approx(factor * old.weight), old.mark
    assert figures(spec_of(frame_moisture=19.0))["total_weight"] > figures(spec_of())["total_weight"]
    assert compare(dry, wet).same, "another weight makes no other piece"


def test_the_lists_own_moisture_is_the_one_to_start_from() -> None:
    assert spec_of(slat_moisture=15.0).slat_stock.density == 400.0, "white pine is listed at 15 %"
    assert spec_of(slat_moisture=10.0).slat_stock.density == approx(400.0 * 1.10 / 1.15)
    own = merged(stock_list("us"), read_stock_list({"name": "own", "items": [
        {"name": "green board", "form": "board", "thickness": 20, "width": 150, "lengths": [3000], "density": 700,
         "moisture": 40}]}))
    assert spec_of(own, slat_stock="green board", slat_moisture=12.0).slat_stock.density == approx(700 * 1.12 / 1.40)


@pytest.mark.parametrize("moisture", [-1, 41, "12", None, True])
def test_a_moisture_that_no_list_can_have_is_refused(moisture: Any) -> None:
    with pytest.raises(ValueError, match=r"items\[0\].moisture: A moisture of “.*” is not between 0 and 40 %"):
        read_stock_list({"items": [{"name": "x", "form": "board", "thickness": 20, "width": 150, "lengths": [3000],
                                    "density": 700, "moisture": moisture}]})


def test_measuring_twice_is_measuring_once() -> None:
    spec = make_spec({"frame_thickness": 37.0, "frame_moisture": 19.0}, stock_list("us"))
    assert as_measured(spec.values) == spec
    once = measured_stock(stock_list("us").find("2x4"), "frame_stock", {"frame_moisture": 19.0})
    assert measured_stock(once, "frame_stock", {"frame_moisture": 19.0}) == once


def test_the_report_shows_what_was_measured() -> None:
    job = job_from_values({"slat_thickness": 18.0, "slat_width": 138.0, "ring_thickness": 18.2})
    stock = {sheet.part.kind.id: sheet.stock for sheet in part_sheets(job)}
    assert stock["louver.slat"].startswith("1x6 (138 × 18\u00a0mm)")
    assert stock["louver.trim.gable"].startswith("1x6 (139.5 × 19\u00a0mm)")
    shown = {part["kind"]: part["stock"] for part in json.loads(to_json(job))["parts"]}
    assert (shown["louver.slat"]["thickness"], shown["louver.slat"]["width"]) == (18.0, 138.0)


def test_a_job_with_measured_stock_is_made_again_from_its_record() -> None:
    """Uses of one stock with other sizes each, and a moisture that must not be counted twice."""
    job = job_from_values({"plate_thickness": 36.0, "rafter_thickness": 37.0, "frame_moisture": 19.0})
    again = job_from_record(json.loads(to_json(job)))
    assert again.spec == job.spec and again.assembly == job.assembly
    assert job_from_record(json.loads(to_json(job_of("octagon-dairy")))).spec == job_of("octagon-dairy").spec


def test_the_schema_of_stock_lists_has_every_key() -> None:
    folder = Path(__file__).resolve().parents[2] / "resources" / "stock"
    schema = json.loads((folder / "stock-list.schema.json").read_text(encoding="utf-8"))
    item = next(each for each in schema["$defs"].values() if "density" in each.get("properties", {}))
    assert set(item["properties"]) == set(ITEM_KEYS)
