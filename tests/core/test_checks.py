# SPDX-License-Identifier: LGPL-2.1-or-later
"""What must go together: every finding provoked, its sentence and cure tried; and a spec that is accepted builds."""

from __future__ import annotations

import ast
import re
from functools import lru_cache
from typing import Any

import pytest
from hypothesis import event, given, settings
from hypothesis import strategies as st
from making import ROOT, spec_of, vent

from louverwright.core.assembly import Assembly, Joint, board_shell, board_solid, board_volume_and_centre
from louverwright.core.checks import check, checked_spec
from louverwright.core.figures import figures
from louverwright.core.geometry import Plane, Vec, dot
from louverwright.core.joints import Stands, all_standing, missing, near, undeclared
from louverwright.core.kinds import KINDS
from louverwright.core.layout import layout
from louverwright.core.parameters import BY_NAME, COUNT, LENGTH, MEASURED, PAPER, PARAMETERS, STOCK, SWITCH, TEXT, Parameter
from louverwright.core.part_wish import PartWish
from louverwright.core.solid import Cell, Facet, clip, extents, volume_and_centre
from louverwright.core.spec import Finding, Spec, SpecError, make_spec
from louverwright.core.stock import StockList, merged, read_stock_list
from louverwright.places import stock_list


def _item(name: str, form: str, thickness: float, width: float, longest: float = 3_600.0) -> dict[str, Any]:
    return {"name": name, "form": form, "thickness": thickness, "width": width, "lengths": [longest], "density": 450}


#: Stock that no yard would sell for the use, for what the shipped lists cannot do wrong.
ODD = merged(stock_list("us"), read_stock_list({"name": "odd", "items": [
    _item("narrow frame", "dimension", 38, 40), _item("narrow plate", "dimension", 20, 30),
    _item("slip", "board", 6, 20), _item("thin post", "post", 30, 30), _item("thick ring", "board", 32, 200),
    _item("short post", "post", 89, 89, 100.0),
    _item("thin frame", "dimension", 30, 89), _item("shallow rafter", "dimension", 20, 22),
]}))
#: A deal of the frame's section that is sold too short for a rail.
SHORT = merged(stock_list("us"), read_stock_list({"name": "short", "items": [
    _item("short deal", "dimension", 38.1, 88.9, 300.0)]}))
LISTS = {"us": stock_list("us"), "eu": stock_list("eu"), "odd": ODD, "short": SHORT}
FLAT = {"pitch_left": 0.0, "pitch_right": 0.0}
#: A roof read at its corners: the ridge sags and the right slope is twisted.
TWISTED = {"drop_left_front": 300.0, "drop_left_back": 310.0, "drop_right_front": 320.0, "drop_right_back": 290.0}
#: A wide vent on a steep roof, with legs that are long for their thickness.
TALL = {"width": 1_600.0, "pitch_left": 43.0, "pitch_right": 43.0, "base_height": 1_300.0, "cladding": "boards",
        "cladding_stock": "1x12"}

#: List, values, then code, field and words of the finding that they must provoke.
PROVOKED: list[tuple[str, dict[str, Any], str, str, str]] = [
    ("us", {"prices": "2x5: 2.10/m"}, "prices", "prices", "Prices is “2x5”: it is no item of the stock list. Choose one of:"),
    ("us", {"prices": "2x4: 2.10"}, "prices", "prices", "Prices is “2.10”: it is not a price. Give a number"),
    ("us", {"shop_offcuts": "2x5: 1200"}, "offcuts", "shop_offcuts",
     "Shop offcuts is “2x5”: it is no stick of the stock list. Choose one of: 1x10, 1x12"),
    ("us", {"shop_offcuts": "2x4: 1200 and a bit"}, "offcuts", "shop_offcuts",
     "Shop offcuts is “1200 and a bit”: it is not a length"),
    ("us", {"prices": "2x4: long = 4.20"}, "prices", "prices", "Prices is “long”: it is not a length. Give figures"),
    ("us", {"width": 0.0}, "width", "width", "Width is 0: no ridge length is given"),
    ("us", {"width": 0.0, "ridge_length": 2_000.0}, "width", "width",
     "Width is 208.3 mm: by the width rule from the ridge"),
    ("eu", {"width": 0.0, "ridge_length": 60_000.0}, "width", "width", "must be between 300 mm and 3600 mm"),
    ("us", {"post_face": 95.0}, "post face", "post_face",
     "Post face is 95 mm: it cannot be wider than the frame stock, 88.9 mm"),
    ("us", {"post_face": 50.0}, "post face", "post_face",
     "by the frame's thickness 38.1 mm and needs 20 mm. Set it to 58.1 mm"),
    ("us", {"ridge_offset": -330.0}, "ridge", "ridge_offset",
     "Ridge offset is -330 mm: the ridge must pass between the legs"),
    ("us", {**FLAT, "frame_stock": "2x12", "base_height": 300.0}, "leg", "base_height",
     "Base height is 300 mm: a leg has only"),
    ("us", {"ridge_cap_height": 0.4}, "ridge cap", "ridge_cap_height",
     "Ridge cap height is 0.4 mm: a relief over so low a cap cannot be sawn; it is 1 mm deep at least. Set it to 0"),
    ("us", {"ridge_cap_width": 800.0}, "ridge cap", "ridge_cap_width",
     "the cap would lie under the legs, which stand 342.1 mm"),
    ("us", {"opening_margin": 300.0, "width": 600.0}, "opening", "opening_margin",
     "Opening margin is 300 mm: the legs leave"),
    ("us", {"pitch_left": 65.0}, "sole", "pitch_left",
     "Pitch left is 65.0°: a sole on the eave side keeps only 7.2 mm"),
    ("us", {"pitch_right": 65.0}, "sole", "pitch_right", "Pitch right is 65.0°: a sole on the eave side"),
    ("us", {"ridge_cap_height": 60.0}, "sole", "ridge_cap_height", "takes 60 mm of a sole, more than half its width"),
    ("us", {"base_height": 150.0}, "sole", "base_height", "the soles reach 106.8 mm above the ridge"),
    ("us", {"bottom_rail_height": 50.0}, "bottom rail", "bottom_rail_height",
     "there is no room for it between the soles"),
    ("us", {"bottom_rail_height": 500.0, "base_height": 600.0}, "bottom rail", "bottom_rail_height",
     "it must lie between the soles and the top rail, 106.9 mm to 422.2 mm"),
    ("us", {"cladding": "boards"}, "cladding", "cladding_stock", "it is a sheet, and the cladding is to be boards"),
    ("us", {"cladding_stock": "1x6"}, "cladding", "cladding_stock",
     "“1x6”: it is a board, and the cladding is to be sheet"),
    ("us", {"corner_board_face": 120.0}, "corner board", "corner_board_face",
     "cannot be wider than its stock, 88.9 mm"),
    ("us", {"corner_board_face": 40.0, "corner_board_stock": "5/4x4"}, "corner board", "corner_board_face",
     "Corner board face is 40 mm: the eave-side board is narrower by its thickness and needs 20 mm. Set it to 45.4 mm"),
    ("us", {"length": 1_500.0, "roof_pitch": 48.0}, "ridge", "ridge_stock",
     "the ridge must be 154.1 mm deep, and the stock is 139.7 mm wide"),
    ("us", {"length": 2_000.0}, "length", "length", "the longer of length and width may be twice the other, here 450 mm"),
    ("us", {"length": 1_200.0, "sides": 6}, "rectangle", "length", "only a plan of 4 sides can be a rectangle"),
    ("us", {"length": 950.0}, "ridge", "length", "its roof's ridge would be 50 mm long"),
    ("us", {"length": 1_200.0, "rafters_per_side": 2}, "ridge", "rafters_per_side", "Set an odd number of rafters"),
    ("us", {"length": 1_200.0, "mast_diameter": 20.0}, "mast", "mast_diameter", "there is no king post under a ridge"),
    ("odd", {"king_post_stock": "short post"}, "blank", "king_post_stock", "long, and it is sold 100 mm long"),
    ("us", {"width": 300.0}, "panel", "width", "Width is 300 mm: posts and stiles leave 39 mm clear between them"),
    ("us", {"width": 400.0, "mullion": "always"}, "panel", "width", "posts and stiles leave 50.5 mm clear"),
    ("us", {"panel_depth": 85.0}, "panel depth", "panel_depth",
     "neighbouring panels would touch inside the corner beyond 78.3 mm"),
    ("us", {"panel_depth": 100.0}, "panel depth", "panel_depth", "stiles are cut from stock 88.9 mm wide"),
    ("us", {"slat_angle": 60.0}, "slat", "slat_stock", "slats need a blank 185 mm wide and it is 139.7 mm"),
    ("us", {"louver_height": 250.0}, "louver height", "louver_height",
     "Louver height is 250 mm: there is no room for a sill"),
    ("us", {"slat_count": 12}, "slats", "slat_count",
     "Slat count is 12: 0 mm of wood and a gap of 0 mm are left between slats"),
    ("us", {"rain_angle": 45.0}, "slats", "slat_count", "Take a smaller rain angle, a steeper slat or a deeper panel"),
    ("us", {"slat_count": 2}, "sight line", "slat_count",
     "rain rising inward at 30° passes between the slats. Take 5 slats or more"),
    ("us", {"slat_angle": 25.0, "rain_angle": 45.0, "slat_count": 2}, "sight line", "slat_count",
     "Take a steeper slat or a"),
    ("us", {"dado_depth": 15.0}, "dado", "dado_depth",
     "a stile 19.1 mm thick must keep 6 mm behind it. Set it to 13 mm or less"),
    ("us", {"dado_depth": 17.0, "mullion": "always", "stile_stock": "5/4x4"}, "dado", "dado_depth",
     "of the mullion. Set it to 16 mm"),
    ("us", {"panel_depth": 100.0, "mullion": "always"}, "mullion", "panel_depth", "cut from frame stock 88.9 mm wide"),
    ("odd", {"ring_stock": "thick ring"}, "ring slope", "ring_slope",
     "above the sill and hold water. Make it no steeper"),
    ("odd", {"frame_stock": "narrow frame", "ring_slope": 45.0}, "upstand", "ring_slope",
     "above the joint of the stages"),
    ("us", {**FLAT, "ring_projection": 150.0, "seat_depth": 30.0, "base_height": 160.0, "ridge_cap_height": 0.0},
     "ring", "ring_projection", "Ring projection is 150 mm: the ring's nose would hang down below the base's top rail"),
    ("odd", {"stile_stock": "slip"}, "trim lap", "trim_lap", "it would cover the stile, 6 mm thick"),
    ("us", {"heel_height": 50.0}, "notch", "heel_height", "Heel height is 50 mm: the hip is notched"),
    ("us", {"heel_height": 60.0, "rafters_per_side": 2}, "notch", "heel_height", "the jack or common is notched"),
    ("us", {"heel_height": 95.0}, "seat", "heel_height", "has less than 20 mm of seat on the plate. Lower it below"),
    ("us", {"tail_depth": 120.0}, "tail", "tail_depth",
     "Tail depth is 120 mm: the rafters are only 97.2 mm deep plumb"),
    ("us", {"overhang": 40.0, "roof_pitch": 5.0}, "soffit", "overhang", "below the plate's top and leave no nailer"),
    ("us", {"overhang": 400.0}, "soffit", "overhang", "Overhang is 400 mm: the fascia would hang"),
    ("us", {"fascia_stock": "1x3"}, "bed mould", "fascia_stock", "Fascia stock is “1x3”: the bed mould is 70 mm wide"),
    ("odd", {"plate_stock": "narrow plate"}, "plate", "plate_stock", "it bears on 11 mm of the frame and needs 20 mm"),
    ("odd", {"king_post_stock": "thin post"}, "king post", "king_post_stock",
     "hips would collide on a post 30 mm thick"),
    ("us", {"rafters_per_side": 1}, "king post", "king_post_stock",
     "hips and commons would collide on a post 88.9 mm thick"),
    ("odd", {"rafter_stock": "shallow rafter", "roof_pitch": 70.0}, "king post", "roof_pitch",
     "the king post would be"),
    ("us", {"mast_diameter": 60.0}, "mast", "mast_diameter", "must keep 20 mm of wood around the bore"),
    ("us", {"mast_diameter": 20.0, "rafters_per_side": 1}, "mast", "rafters_per_side",
     "Rafters per side is 1: a common at mid-side"),
    ("us", {"mast_diameter": 20.0, "roof_pitch": 10.0, "frame_stock": "2x6"}, "mast", "heel_height",
     "the mast's bearer less than"),
    ("odd", {"mast_diameter": 20.0, "frame_stock": "thin frame"}, "mast", "mast_diameter",
     "cut from frame stock 89 mm × 30 mm"),
    ("us", {"mast_diameter": 20.0, "width": 600.0}, "mast", "roof_pitch",
     "no room for bearer and step under the king post"),
    ("us", {"batten_stock": "1x12", "width": 857.0, "sides": 6, "king_post_stock": "6x6"}, "batten", "batten_stock",
     "wide would meet behind the screen"),
    ("us", {"sides": 7}, "sides", "sides", "Sides is 7: a plan has 4, 6 or 8 sides. Choose one of these."),
    ("us", {"sides": 8, "king_post_stock": "6x6", "width": 400.0, "corner_board_face": 88.0}, "corner board",
     "corner_board_face", "the boards of both corners would meet in the middle of a side"),
    ("us", {"sill_slope": 60.0}, "sill", "sill_slope", "the sill needs a blank 185 mm wide and its stock is 139.7 mm"),
    ("us", {"slat_angle": 30.0, "rain_angle": 5.0, "sill_slope": 46.0, "slat_count": 5, "ring_slope": 30.0}, "sill",
     "sill_slope", "under the first slat's dado"),
    ("us", {"roof_form": "flared hip", "flare_pitch": 40.0}, "flare", "flare_pitch", "must be 5° flatter than its faces"),
    ("us", {"roof_form": "flared hip", "flare_reach": 400.0}, "flare", "flare_reach", "below the middle of the rafters"),
    ("us", {"roof_form": "flared hip", "roof_pitch": 40.0}, "flare", "rafter_stock",
     "keep 44 mm of their depth above the break and must keep 60 mm"),
    ("us", {"roof_form": "gable", "sides": 6}, "gable", "roof_form", "only a plan of 4 sides can have gables, and this has 6"),
    ("us", {"roof_form": "gable", "fascia_stock": "1x3"}, "barge board", "fascia_stock", "barge boards must be"),
    ("us", {"roof_form": "gable", "gable_end": "louvered", "roof_pitch": 15.0}, "gable louvers", "gable_end",
     "there is room for 0 slats"),
    ("odd", {"sides": 6, "width": 1_100.0, "plate_stock": "narrow plate", "king_post_stock": "4x4"}, "gusset", "plate_stock",
     "inside the frame it leaves 0 mm for the gussets"),
    ("us", {"end_pitch": 40.0}, "end pitch", "end_pitch", "only the hip roof of a rectangle has end faces"),
    ("us", {"end_pitch": 20.0, "length": 1_200.0}, "ridge", "end_pitch", "it leaves a ridge of 0 mm"),
    ("eu", {"batten_stock": "20x120", "seat": "one slope", "panel_depth": 40.0, "sides": 6, "facing": "corner",
            "king_post_stock": "120x120"}, "batten", "panel_depth", "the panel is shallower than the rail, 45 mm"),
    ("us", {"rafters_per_side": 8}, "rafters", "rafters_per_side",
     "Rafters per side is 8: they would stand 99.6 mm apart"),
    ("us", {**TWISTED, "drop_left_back": 0.0}, "drops", "drop_left_back",
     "Drop left back is 0 mm: it is not measured, and the drops at the other corners mean nothing without it. Give all four"),
    ("us", {"drop_right_front": 300.0}, "drops", "drop_right_back", "or set all four to 0"),
    ("us", {"drop_right_front": 300.0}, "drops", "drop_left_front", "Drop left front is 0 mm: it is not measured"),
    ("us", {**TWISTED, "seat": "one slope"}, "drops", "drop_left_front",
     "Drop left front is 300 mm: drops are read from a ridge, and the vent sits on one slope"),
    ("us", {**TWISTED, "drop_left_front": 1_700.0, "drop_left_back": 1_690.0}, "drops", "drop_left_back",
     "Drop left back is 1690 mm: it makes a slope of 75.1°, and a slope must be less than 75°"),
    ("us", {**TWISTED, "drop_right_front": 341.0}, "twist", "drop_right_front",
     "Drop right front is 341 mm: the slope drops 51 mm further there than at its other end, and a twist may be 50 mm"),
    ("us", {**TWISTED, "drop_left_front": 975.0, "drop_left_back": 965.0}, "sole", "drop_left_back",
     "Drop left back is 965 mm: a sole on the eave side keeps only 7.2 mm"),
    ("us", TALL, "slender leg", "base_height",
     "Base height is 1300 mm: a leg would stand 1939.3 mm below its lowest rail, and 38.1 mm thick it may stand 1905 mm"),
    ("us", {"slat_thickness": 14.0}, "as measured", "slat_thickness",
     "Slat thickness is 14 mm: the stock list has 19.1 mm for “1x6”, and what differs by more than 25 % is another stock"),
    ("eu", {"frame_width": 120.0}, "as measured", "frame_width", "the stock list has 95 mm for “45x95”"),
]


#: List, values, wishes, code, field, words: what is wished for single kinds of part.
PARTS_PROVOKED: list[tuple[str, dict[str, Any], dict[str, PartWish], str, str, str]] = [
    ("us", {}, {"base.leg": PartWish(note="clear")}, "no kind", "parts.base.leg",
     "Part is “base.leg”: there is no such kind of part. Choose one of: base.leg.gable, base.leg.eave, "),
    ("us", {"width": -1.0}, {"slat": PartWish()}, "no kind", "parts.slat", "there is no such kind of part"),
    ("us", {}, {"base.leg.gable": PartWish("oak")}, "no own stock", "parts.base.leg.gable.stock",
     "Own stock of B1 (Leg, gable side) is “oak”: the stock list “us” has no such item. Choose one of: 2x4"),
    ("us", {"frame_thickness": 37.0}, {"base.leg.gable": PartWish("oak")}, "no own stock", "parts.base.leg.gable.stock",
     "Take it away: the list has no stock of this part's form and size."),
    ("us", {}, {"louver.slat": PartWish("2x4")}, "own stock", "parts.louver.slat.stock",
     "it is a dimension, 38.1 mm × 88.9 mm, and the vent is laid out from “1x6”, a board"),
    ("eu", {}, {"base.rail.top": PartWish("45x145")}, "own stock", "parts.base.rail.top.stock",
     "or change the vent's frame stock instead, for the layout is made from it."),
    ("short", {}, {"base.rail.top": PartWish("short deal")}, "blank", "parts.base.rail.top.stock",
     "Own stock of B3 (Top rail) is “short deal”: B3a (Top rail) must be"),
    ("us", {}, {kind.id: PartWish(left_out=True) for kind in KINDS}, "nothing to make", "",
     "every part of the vent is left out. Make at least one of them."),
]


@pytest.mark.parametrize("row", PARTS_PROVOKED, ids=lambda row: f"{row[3]} {row[4]}")
def test_a_wish_that_cannot_be_met_is_refused_with_a_sentence(
        row: tuple[str, dict[str, Any], dict[str, PartWish], str, str, str]) -> None:
    name, values, parts, code, field, words = row
    with pytest.raises(SpecError) as refusal:
        checked_spec(values, LISTS[name], parts)
    found = [each for each in refusal.value.findings if (each.code, each.field) == (code, field)]
    assert [each for each in found if words in each.sentence], [each.sentence for each in refusal.value.findings]
    assert all(each.key == field for each in found)


def findings(name: str, values: dict[str, Any]) -> tuple[Finding, ...]:
    """What values are refused with; () for a spec that is accepted."""
    try:
        checked_spec(values, LISTS[name])
    except SpecError as error:
        return error.findings
    return ()


def told(row: tuple[str, dict[str, Any], str, str, str]) -> list[Finding]:
    """The findings of a row's code and field that have its words."""
    name, values, code, field, words = row
    found = [each for each in findings(name, values) if (each.code, each.field) == (code, field)]
    return [each for each in found if words in each.sentence]


@pytest.mark.parametrize("row", PROVOKED, ids=lambda row: f"{row[2]} {row[4][:24]}")
def test_a_vent_that_cannot_be_built_is_refused_with_a_sentence(row: tuple[str, dict[str, Any], str, str, str]) -> None:
    assert told(row), [each.sentence for each in findings(row[0], row[1])]


@pytest.mark.parametrize("row", PROVOKED, ids=lambda row: f"{row[2]} {row[4][:24]}")
def test_each_sentence_names_property_value_limit_and_cure(row: tuple[str, dict[str, Any], str, str, str]) -> None:
    for finding in findings(row[0], row[1]):
        assert finding.field in BY_NAME
        assert finding.sentence.startswith(f"{BY_NAME[finding.field].label.capitalize()} is {finding.value}: ")
        assert re.match(r"“.+”$|-?[\d.]+( mm|°)?$", finding.value), finding.value
        assert ("mm" in finding.value or finding.value == "0") or BY_NAME[finding.field].unit != "mm"
        assert (finding.limit and finding.limit[0].islower()) or finding.limit[0] in "0123456789BLR"
        assert re.match(r"(Give|Choose|Set|Move|Raise|Lower|Take|Make|Join|Level|Measure) .*\.$", finding.cure)
        assert "nan" not in finding.sentence and "inf " not in finding.sentence


def called() -> set[tuple[str, str]]:
    """Code and field (or the beginning of what is not plain text) of every finding in the checks' source."""
    found: set[tuple[str, str]] = set()
    for path in sorted((ROOT / "workbench" / "louverwright" / "core").glob("checks*.py")):
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            if isinstance(node, ast.Call) and getattr(node.func, "id", "") == "Finding":
                code, field = node.args[:2]
                assert isinstance(code, ast.Constant)
                found.add((str(code.value), str(field.value) if isinstance(field, ast.Constant) else ""))
    return found


def test_every_finding_of_the_checks_is_provoked_here() -> None:
    sites = called()
    assert len(sites) > 25
    provoked = {(row[2], row[3]) for row in PROVOKED} | {(row[3], row[4]) for row in PARTS_PROVOKED}
    codes = {code for code, _ in provoked}
    assert [site for site in sites if site not in provoked and not (site[1] == "" and site[0] in codes)] == []


def _cured(finding: Finding) -> tuple[str, float] | None:
    """Field and value that a cure names, if it names one."""
    match = re.match(r"(Set|Raise|Make) it (?:to )?([\d.]+) mm or (?:more|less)", finding.cure)
    below = re.match(r"Lower it below ([\d.]+) mm", finding.cure)
    if match:
        return finding.field, float(match[2])
    return (finding.field, float(below[1]) - 0.1) if below else None


CURED = [row for row in PROVOKED if row[2] not in ("width",) and any(_cured(each) for each in told(row))]


@pytest.mark.parametrize("row", CURED, ids=lambda row: f"{row[2]} {row[4][:24]}")
def test_what_a_cure_says_cures(row: tuple[str, dict[str, Any], str, str, str]) -> None:
    name, values, code, field, _ = row
    for finding in told(row):
        cure = _cured(finding)
        assert cure is not None
        after = findings(name, {**values, cure[0]: cure[1]})
        assert finding.limit not in {each.limit for each in after if (each.code, each.field) == (code, field)}
        assert not any((each.code, each.field) in ((code, field), ("out of limits", field)) for each in after)


def test_the_cures_that_are_tried_are_most_of_those_with_a_length() -> None:
    assert len(CURED) >= 10


def test_the_number_of_slats_and_of_rafters_that_a_cure_names_is_enough() -> None:
    assert findings("us", {"slat_count": 5}) == () and findings("us", {"slat_count": 4})
    (finding,) = findings("us", {"rafters_per_side": 8})
    most = int(re.findall(r"Take (\d+) or fewer", finding.cure)[0])
    assert most == 6 and findings("us", {"rafters_per_side": most}) == ()


def test_several_faults_give_all_findings_at_once() -> None:
    wrong = {"post_face": 95.0, "ridge_cap_height": 60.0, "corner_board_face": 120.0, "dado_depth": 15.0,
             "slat_count": 2, "heel_height": 50.0, "tail_depth": 120.0, "mast_diameter": 60.0, "rafters_per_side": 8,
             "opening_margin": 300.0, "width": 700.0}
    codes = {finding.code for finding in findings("us", wrong)}
    assert {"post face", "sole", "corner board", "dado", "sight line", "notch", "tail", "mast", "rafters",
            "opening"} <= codes


def test_a_ridge_beside_the_legs_is_one_finding_and_not_five() -> None:
    assert [finding.code for finding in findings("us", {"ridge_offset": 2_000.0})] == ["ridge"]


def test_a_quarter_more_or_less_is_the_same_stock() -> None:
    assert findings("us", {"trim_thickness": 0.75 * 19.05}) == () and findings("us", {"trim_thickness": 1.25 * 19.05}) == ()
    for share in (0.7499, 1.2501):
        assert [each.code for each in findings("us", {"trim_thickness": share * 19.05})] == ["as measured"]


def test_the_stock_that_was_meant_is_named() -> None:
    """A trim board 24.6 mm thick is a 5/4 board; one of 10 mm is none of the list's."""
    (thick,) = findings("us", {"trim_thickness": 24.6})
    assert thick.cure == "Choose “5/4x6” as trim stock, or measure again."
    (thin,) = findings("us", {"trim_thickness": 10.0})
    assert thin.cure == "Choose another as trim stock, or measure again."


def test_the_limit_itself_is_accepted() -> None:
    assert findings("us", {"post_face": 88.9}) == () and findings("us", {"corner_board_face": 88.9}) == ()
    assert findings("us", {"panel_depth": 78.3}) == () and findings("us", {"panel_depth": 78.4})
    assert findings("us", {"dado_depth": 13.0}) == () and findings("us", {"dado_depth": 13.1})
    assert findings("us", {"ridge_offset": 312.0, "ridge_cap_height": 0.0}) == ()


def test_check_says_nothing_of_a_spec_that_builds() -> None:
    assert check(make_spec({}, LISTS["us"])) == ()
    assert {each.code for each in check(make_spec({"dado_depth": 15.0}, LISTS["us"]))} == {"dado"}


# ---- a spec that is accepted builds


def _cells(each: Stands) -> list[tuple[Cell, Vec, Vec]]:
    """A piece's cells in the assembly frame, each with its box."""
    place, cells = each.piece.placement, []
    for cell in board_solid(each.part.board):
        moved: list[Facet] = []
        for facet in cell:
            normal, points = place.direction(facet.plane.normal), tuple(place.point(p) for p in facet.points)
            moved.append(Facet(Plane(normal, dot(normal, points[0])), facet.name, points))
        cells.append((tuple(moved), *extents((tuple(moved),))))
    return cells


def _shared(a: Cell, b: Cell) -> float:
    """Volume that two convex cells share (mm³)."""
    rest: Cell | None = a
    for facet in b:
        rest = clip(rest, facet.plane, "") if rest else None
    return volume_and_centre((rest,))[0] if rest else 0.0


def overlapping(assembly: Assembly) -> list[str]:
    """Pairs of pieces that stand in each other by more than 1 mm³."""
    standing = all_standing(assembly.parts)
    cells = {each.piece.id: _cells(each) for each in standing}
    found = []
    for number, a in enumerate(standing):
        for b in (b for b in standing[number + 1:] if near(a, b, -0.01)):
            pairs = [(one, other) for one, low, high in cells[a.piece.id] for other, least, most in cells[b.piece.id]
                     if all(low[k] < most[k] - 0.01 and least[k] < high[k] - 0.01 for k in range(3))]
            if sum(_shared(one, other) for one, other in pairs) > 1.0:
                found.append(f"{a.piece.id} stands in {b.piece.id}")
    return found


def faults(spec: Spec) -> list[str]:
    """All that is wrong with an accepted spec's vent; [] for one that can be built."""
    assembly = layout(spec)
    found = [f"{a} touches {b}." for a, b in undeclared(assembly)] + missing(assembly, spec) + overlapping(assembly)
    for part in assembly.parts:
        if board_volume_and_centre(part.board)[0] <= 0.0:
            found.append(f"{part.mark} has no volume")
        if any(len(faces) != 2 for faces in board_shell(part.board).edges.values()):
            found.append(f"{part.mark} is not closed")
    out = figures(spec)
    positive = ("louver_area", "throat_area", "roof_opening_area", "slat_gap", "base_weight", "louver_weight",
                "roof_weight")
    return found + [f"{name} is {out[name]}" for name in positive if out[name] <= 0.0]


#: Sound contacts that come up with few vents only; each with the smallest vent.
RARE: dict[str, tuple[str, dict[str, Any]]] = {
    "sill and trim": ("us", {"ring_slope": 10.0}),
    "slat and trim": ("us", {"trim_lap": 12.0}),
    "frieze and jack": ("us", {"roof_pitch": 40.4, "rafters_per_side": 4}),
    "ring and stile": ("us", {"sill_slope": 44.4}),
    "ring and mullion": ("us", {"sill_slope": 44.4, "mullion": "always", "width": 1_100.0}),
    "plate short of the trim": ("us", {"plate_stock": "2x8"}),
    "gable's screen under the rafter": ("eu", {"roof_form": "gable", "gable_end": "louvered", "width": 1_000.0,
                                               "panel_depth": 43.0}),
    "cladding board on legs alone": ("us", {"cladding": "boards", "cladding_stock": "1x4"}),
}


@pytest.mark.parametrize("contact", RARE)
def test_rare_contacts_have_their_rules(contact: str) -> None:
    name, values = RARE[contact]
    assert faults(checked_spec(values, LISTS[name])) == []


#: Parameters that change no shape.
SHAPELESS = {"vents", "width_rule", "ridge_length", "air_target", "floor_area", "floor_ratio", "building_width",
             "screen_factor"}
#: Parameters that mean nothing alone, so that they are drawn together.
TOGETHER = set(TWISTED)
SHAPING = [row for row in PARAMETERS if row.scope != PAPER and row.kind != TEXT and row.group != MEASURED
           and row.name not in SHAPELESS | TOGETHER]
#: Sizes as measured: drawn near the stock's own, as others would be refused.
MEASURABLE = [row for row in PARAMETERS if row.group == MEASURED and row.kind == LENGTH]


def _as_measured(row: Parameter, values: dict[str, Any], stock: StockList) -> float:
    """The listed size of the stock that values choose for a row of what was measured."""
    use, what = row.name.rsplit("_", 1)
    return float(getattr(stock.find(values.get(f"{use}_stock") or stock.usual[f"{use}_stock"]), what))


def _value(row: Parameter, stock: StockList) -> st.SearchStrategy[Any]:
    """Values within a row's limits, mostly near the usual ones."""
    if row.kind == STOCK:
        return st.sampled_from([item.name for item in stock.items if item.form in row.forms])
    if row.kind == SWITCH:
        return st.booleans()
    if row.choices:
        return st.sampled_from(row.choices)
    assert row.low is not None and row.high is not None
    if row.kind == COUNT:
        return st.integers(int(row.low), min(int(row.high), int(row.low) + 10))
    high = row.high - 0.01 if row.open_high else row.high
    usual = min(max(row.default or max(row.low, 0.0) or 0.05 * high, row.low), high)
    near_usual = st.floats(max(row.low, 0.8 * usual), min(high, 1.25 * usual + 1.0))
    return st.one_of(near_usual, near_usual, near_usual, st.floats(row.low, high), st.sampled_from([row.low, high]))


@st.composite
def wanted(draw: st.DrawFn) -> tuple[str, dict[str, Any]]:
    """A shipped list and the values of a few parameters; often two slopes, some width, six or eight sides, or a curb."""
    name = draw(st.sampled_from(["us", "eu"]))
    chosen = draw(st.lists(st.sampled_from(SHAPING), min_size=1, max_size=5, unique=True))
    values = {row.name: draw(_value(row, LISTS[name])) for row in chosen}
    if draw(st.booleans()):
        values["pitch_left"], values["pitch_right"] = draw(st.floats(0.0, 50.0)), draw(st.floats(0.0, 50.0))
    if draw(st.booleans()):
        values["width"] = draw(st.floats(500.0, 1_150.0))
    if draw(st.booleans()):
        values["sides"], values["facing"] = draw(st.sampled_from([6, 8])), draw(st.sampled_from(["side", "corner"]))
        values["width"] = draw(st.floats(700.0, 1_300.0))
        values["king_post_stock"] = "6x6" if name == "us" else "120x120"
    elif draw(st.booleans()):
        values["length"] = values.setdefault("width", 800.0) * draw(st.floats(0.5, 2.0))
        if draw(st.booleans()):
            values["ridge_stock"] = "2x8" if name == "us" else "45x195"
        if draw(st.integers(0, 2)) == 0:
            values["end_pitch"] = draw(st.floats(25.0, 50.0))
    if draw(st.integers(0, 2)) == 0:
        values["roof_form"] = "flared hip"
        values["rafter_stock"] = draw(st.sampled_from(["2x6", "2x8"] if name == "us" else ["45x145", "45x195"]))
        values["tail_depth"], values["overhang"] = draw(st.floats(60.0, 120.0)), draw(st.floats(60.0, 200.0))
    elif values.get("sides", 4) == 4 and draw(st.booleans()):
        values["roof_form"], values["gable_ridge"] = "gable", draw(st.sampled_from(["along", "across"]))
        values["gable_end"] = draw(st.sampled_from(["boarded", "louvered"]))
        values["verge"] = draw(st.sampled_from([0.0, 0.0, 30.0, 140.0, 250.0, 400.0]))
        if draw(st.booleans()):
            values["fascia_stock"] = "1x10" if name == "us" else "20x195"
            values["ridge_stock"] = "2x8" if name == "us" else "45x195"
    if draw(st.integers(0, 5)) == 0:
        values["seat"], values["pitch_left"] = "one slope", draw(st.floats(0.0, 35.0))
    elif draw(st.integers(0, 3)) == 0:
        drop, more = st.floats(5.0, 450.0), st.floats(0.0, 49.0)
        left, right = draw(drop), draw(drop)
        values |= {name: (left if "left" in name else right) + draw(more) for name in sorted(TOGETHER)}
    if values.get("cladding") == "boards":
        boards = [item.name for item in LISTS[name].items if item.form == "board" and item.width > 60.0]
        values["cladding_stock"] = draw(st.sampled_from(boards))
    for row in draw(st.lists(st.sampled_from(MEASURABLE), max_size=3, unique=True)):
        values[row.name] = draw(st.floats(0.93, 1.05)) * _as_measured(row, values, LISTS[name])
    return name, values


@settings(max_examples=120)
@given(wanted())
def test_a_spec_that_is_accepted_builds(case: tuple[str, dict[str, Any]]) -> None:
    name, values = case
    try:
        spec = checked_spec(values, LISTS[name])
    except SpecError as error:
        event("refused")
        assert all(finding.sentence.endswith(".") for finding in error.findings)
        return
    event("built")
    assert faults(spec) == []


@lru_cache(maxsize=1)
def _plain_spec() -> Spec:
    return spec_of()


def test_assemblies_are_equal_by_parts_and_joints_and_find_joints_only_when_asked() -> None:
    whole = layout(checked_spec({}, LISTS["us"]))
    found: list[str] = []

    def find() -> tuple[Joint, ...]:
        found.append("asked")
        return whole.joints

    late = Assembly(whole.parts, find)
    assert hash(late) == hash(Assembly(whole.parts, ())) and late.part_of(whole.pieces[0].id) and found == []
    assert late == Assembly(whole.parts, whole.joints) != Assembly(whole.parts, whole.joints[1:])
    assert late.joints is late.joints and found == ["asked"]


def test_a_fault_would_be_found() -> None:
    """The predicates above, on a vent that is spoiled by hand: two pieces exchanged, a joint forgotten."""
    spec = _plain_spec()
    assembly = layout(spec)
    assert faults(spec) == []
    fewer = Assembly(assembly.parts, assembly.joints[1:])
    assert undeclared(fewer) or missing(fewer, spec)
    stile = assembly.of_kind("louver.stile")[0]
    doubled = Assembly((*assembly.parts, stile), assembly.joints)
    assert f"{stile.pieces[0].id} stands in {stile.pieces[0].id}" in overlapping(doubled)


#: Vents of many sorts that must be accepted, and build.
SORTS: dict[str, tuple[str, dict[str, Any]]] = {
    "all stock thinner and narrower than listed": ("us", {
        row.name: 0.97 * _as_measured(row, {}, LISTS["us"]) for row in MEASURABLE}),
    "swollen stock": ("eu", {row.name: 1.02 * _as_measured(row, {}, LISTS["eu"]) for row in MEASURABLE}),
    "mast": ("us", {"mast_diameter": 30.0, "width": 1_000.0}),
    "mullion": ("eu", {"mullion": "always", "width": 1_100.0, "screen_stock": "wire mesh 1000"}),
    "boards": ("eu", {"cladding": "boards", "cladding_stock": "20x145"}),
    "mitred": ("us", {"corner": "mitred"}),
    "mitred boards": ("eu", {"corner": "mitred", "cladding": "boards", "cladding_stock": "20x145"}),
    "saltbox": ("us", {"pitch_left": 36.87, "pitch_right": 18.43, "width": 1_000.0}),
    "beside the ridge": ("us", {"ridge_offset": 150.0}),
    "beside the ridge of a saltbox": ("eu", {"ridge_offset": -120.0, "pitch_left": 40.0, "pitch_right": 20.0}),
    "on the deck": ("us", {"seat_depth": 25.0}),
    "no ridge cap": ("us", {"ridge_cap_height": 0.0}),
    "flat roof": ("eu", {**FLAT, "base_height": 300.0}),
    "lean-to": ("us", {"pitch_left": 0.0, "pitch_right": 25.0}),
    "commons": ("us", {"rafters_per_side": 3, "king_post_stock": "6x6"}),
    "jacks": ("eu", {"sheathing_span": 250.0}),
    "no screen": ("us", {"screen": False, "panel_depth": 85.0}),
    "second rail": ("us", {"base_height": 500.0, "bottom_rail_height": 200.0}),
    "grain up the slope": ("us", {"sheathing_grain": "up the slope"}),
    "rectangle": ("us", {"length": 1_350.0}),
    "rectangle across the ridge": ("eu", {"length": 700.0, "width": 1_000.0}),
    "rectangle, corner first": ("us", {"length": 1_200.0, "facing": "corner"}),
    "rectangle, mitred": ("eu", {"length": 1_100.0, "corner": "mitred", "rafters_per_side": 3}),
    "rectangle on a saltbox": ("us", {"length": 1_500.0, "pitch_left": 36.87, "pitch_right": 18.43, "ridge_offset": 60.0}),
    "rectangle with steep ends": ("us", {"length": 1_350.0, "roof_pitch": 32.0, "end_pitch": 42.0, "rafters_per_side": 3}),
    "rectangle with flat ends": ("eu", {"length": 1_350.0, "end_pitch": 29.0}),
    "flared rectangle with steep ends": ("us", {"length": 1_300.0, "roof_form": "flared hip", "roof_pitch": 38.0,
                                                "end_pitch": 42.0, "rafter_stock": "2x6", "ridge_stock": "2x8",
                                                "tail_depth": 80.0}),
    "rectangle of boards": ("eu", {"length": 1_400.0, "cladding": "boards", "cladding_stock": "20x145"}),
    "flared": ("us", {"roof_form": "flared hip", "roof_pitch": 45.0, "rafter_stock": "2x6"}),
    "flared, break above the plate": ("us", {"roof_form": "flared hip", "roof_pitch": 40.0, "rafter_stock": "2x8",
                                             "flare_reach": 200.0, "tail_depth": 110.0}),
    "flared, break over the eave": ("us", {"roof_form": "flared hip", "roof_pitch": 45.0, "rafter_stock": "2x6",
                                           "overhang": 150.0, "flare_reach": 80.0}),
    "flared octagon": ("us", {"roof_form": "flared hip", "roof_pitch": 45.0, "rafter_stock": "2x8", "sides": 8,
                              "width": 1_200.0, "king_post_stock": "6x6", "tail_depth": 110.0}),
    "flared rectangle": ("us", {"roof_form": "flared hip", "roof_pitch": 42.0, "rafter_stock": "2x6", "length": 1_300.0,
                                "ridge_stock": "2x8", "sheathing_span": 300.0, "tail_depth": 80.0}),
    "gable": ("us", {"roof_form": "gable"}),
    "gable across": ("eu", {"roof_form": "gable", "gable_ridge": "across"}),
    "gable, louvered": ("us", {"roof_form": "gable", "gable_end": "louvered", "width": 1_000.0}),
    "gable, louvered with square edges": ("eu", {"roof_form": "gable", "gable_end": "louvered", "width": 1_000.0,
                                                 "slat_edges": "square"}),
    "gable of boards": ("us", {"roof_form": "gable", "cladding": "boards", "cladding_stock": "1x6"}),
    "gables on the short sides": ("us", {"roof_form": "gable", "length": 1_300.0, "gable_end": "louvered"}),
    "gables on the long sides": ("us", {"roof_form": "gable", "length": 1_300.0, "gable_ridge": "across", "roof_pitch": 28.0,
                                        "fascia_stock": "1x8"}),
    "gable with lookouts": ("us", {"roof_form": "gable", "verge": 250.0}),
    "gable, louvered, with lookouts": ("us", {"roof_form": "gable", "gable_end": "louvered", "width": 1_000.0,
                                              "verge": 250.0, "ridge_stock": "2x8"}),
    "gable, corner first, mitred": ("us", {"roof_form": "gable", "facing": "corner", "corner": "mitred"}),
    "octagon": ("eu", {"sides": 8, "width": 1_150.0, "king_post_stock": "120x120"}),
    "octagon, corner first": ("us", {"sides": 8, "width": 1_200.0, "king_post_stock": "6x6", "facing": "corner"}),
    "hexagon": ("us", {"sides": 6, "width": 1_000.0}),
    "hexagon, corner first, saltbox": ("us", {"sides": 6, "width": 1_100.0, "facing": "corner", "pitch_left": 36.87,
                                              "pitch_right": 18.43}),
    "octagon off the ridge with a mast": ("us", {"sides": 8, "width": 1_200.0, "king_post_stock": "6x6",
                                                  "ridge_offset": 80.0, "mast_diameter": 30.0}),
    "square, corner first": ("us", {"facing": "corner"}),
    "square, corner first, mitred": ("us", {"facing": "corner", "corner": "mitred", "pitch_right": 20.0}),
    "curb": ("us", {"seat": "one slope", "pitch_left": 18.43}),
    "curb on a flat roof": ("eu", {"seat": "one slope", "pitch_left": 0.0}),
    "octagonal curb": ("us", {"seat": "one slope", "sides": 8, "width": 1_200.0, "king_post_stock": "6x6"}),
    "square edges": ("us", {"slat_edges": "square"}),
    "square edges, mullion": ("us", {"slat_edges": "square", "mullion": "always", "width": 1_100.0,
                                      "screen_stock": "hardware cloth 36"}),
    "shallow panel": ("eu", {"panel_depth": 40.0, "slat_stock": "20x120"}),
    "by the hips' slope": ("us", {"hip_rafter_slope": 30.0}),
    "flat sill": ("us", {"sill_slope": 15.0, "ring_slope": 15.0}),
    "scribed legs": ("us", {"scribe_allowance": 30.0}),
    "twisted roof": ("us", TWISTED),
    "twisted roof, to scribe, on the deck": ("eu", {**TWISTED, "scribe_allowance": 20.0, "seat_depth": 20.0}),
    "twisted roof, unequal, off the ridge": ("us", {**TWISTED, "drop_right_front": 200.0, "drop_right_back": 170.0,
                                                    "ridge_offset": 120.0}),
    "twisted roof, hexagon, corner first": ("us", {**TWISTED, "sides": 6, "width": 1_100.0, "facing": "corner"}),
    "twisted roof, octagon": ("us", {**TWISTED, "sides": 8, "width": 1_200.0, "king_post_stock": "6x6"}),
    "twisted roof, square, corner first": ("us", {**TWISTED, "facing": "corner", "corner": "mitred"}),
    "nearly level, twisted": ("eu", {**dict.fromkeys(TWISTED, 0.1), "drop_left_front": 40.0, "base_height": 300.0}),
    "tall, with a second rail": ("us", {**TALL, "bottom_rail_height": 500.0, "screen_stock": "hardware cloth 36"}),
    "steep slats": ("us", {"slat_angle": 55.0, "panel_depth": 60.0, "slat_stock": "1x8"}),
}


@pytest.mark.parametrize("name", SORTS)
def test_vents_of_many_sorts_build(name: str) -> None:
    stock, values = SORTS[name]
    assert findings(stock, values) == ()
    assert faults(checked_spec(values, LISTS[stock])) == []


def test_a_sort_is_what_it_is_called() -> None:
    kinds = {name: {piece.kind for piece in vent(LISTS[SORTS[name][0]], **SORTS[name][1]).pieces}
             for name in ("mast", "mullion", "commons", "jacks", "second rail")}
    assert {"roof.bearer", "roof.step"} <= kinds["mast"] and "louver.mullion" in kinds["mullion"]
    assert {"roof.common", "roof.jack"} <= kinds["commons"] and "roof.jack" in kinds["jacks"]
    assert "base.rail.bottom" in kinds["second rail"]
