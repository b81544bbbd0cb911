"""Wishes for single kinds of part: another stock, a note, left out."""

from __future__ import annotations

import json
from dataclasses import replace
from pathlib import Path
from typing import Any

import pytest
from making import ROOT, job_of, only, record_of

from louverwright.core.assembly import Assembly
from louverwright.core.checks import check, checked_spec
from louverwright.core.compare import CHANGED, LEFT_OUT, MADE_AGAIN, SPARE, UNCHANGED, changed_wishes, compare
from louverwright.core.figures import figures, weight_and_centre
from louverwright.core.joints import missing, undeclared
from louverwright.core.kinds import BY_ID, KINDS
from louverwright.core.layout import layout, wishes_in_use
from louverwright.core.mend import MendError, Wrong, mend
from louverwright.core.mend_ways import with_value
from louverwright.core.outline import outlines
from louverwright.core.parameters import BY_NAME
from louverwright.core.part_wish import NO_WISH, PartWish
from louverwright.core.spec import Spec, SpecError, make_spec
from louverwright.core.stock import Stock, StockList, same_section
from louverwright.exchange.compare import job_from_record
from louverwright.exchange.scenario import ScenarioError, read_scenario, scenario_from
from louverwright.places import stock_list
from louverwright.report.job import Job, fingerprint
from louverwright.report.json_file import to_json

US = stock_list("us")
LEG, SCREEN, SLAT = "base.leg.gable", "louver.screen", "louver.slat"
TWO_BY_FOUR = US.find(US.usual["frame_stock"])
#: Oak of the section that the frame has, twice as heavy; and a list that has it besides.
OAK = replace(TWO_BY_FOUR, name="oak 2x4", material="oak", density=2.0 * TWO_BY_FOUR.density, lengths=(3_000.0,))
WITH_OAK = StockList(US.name, US.title, (*US.items, OAK), US.usual)
DEAL = replace(TWO_BY_FOUR, name="short deal", lengths=(300.0,))


def wished(stock: StockList = WITH_OAK, values: dict[str, Any] | None = None, **wishes: PartWish) -> Spec:
    """A checked spec; wishes by ids with underscores for dots."""
    return checked_spec(values or {}, stock, {name.replace("_", "."): wish for name, wish in wishes.items()})


def plain(values: dict[str, Any] | None = None) -> Spec:
    """The same without a wish."""
    return checked_spec(values or {}, WITH_OAK)


def marks(assembly: Assembly) -> dict[str, list[str]]:
    """Marks and their pieces of everything that is drawn."""
    return {part.mark: [piece.id for piece in part.pieces] for part in assembly.whole}


# ---- left out


@pytest.mark.parametrize("kind", [LEG, SCREEN, SLAT, "roof.plate", "louver.stile"])
def test_what_is_left_out_changes_no_other_part_and_no_mark(kind: str) -> None:
    before, after = layout(plain()), layout(checked_spec({}, WITH_OAK, {kind: PartWish(left_out=True)}))
    assert after.of_kind(kind) == () and after.left_out == before.of_kind(kind) != ()
    assert after.parts == tuple(part for part in before.parts if part.kind.id != kind)
    assert after.whole == before.parts and after.joints == before.joints and marks(after) == marks(before)
    assert all(after.part_of(each.id) is part for part in after.left_out for each in part.pieces)


def test_joints_are_checked_for_the_whole_vent() -> None:
    spec = wished(louver_stile=PartWish(left_out=True))
    assert undeclared(layout(spec)) == [] and missing(layout(spec), spec) == []


def test_counts_and_weights_follow_and_air_stays() -> None:
    before, after = figures(plain()), figures(wished(louver_screen=PartWish(left_out=True)))
    screen = only(layout(plain()), SCREEN)
    weight = weight_and_centre([screen])[0]
    assert weight > 0.0
    assert after["pieces"] == before["pieces"] - screen.count and after["marks"] == before["marks"] - 1
    assert after["pieces_left_out"] == screen.count and before["pieces_left_out"] == 0
    assert after["total_weight"] == pytest.approx(before["total_weight"] - weight)
    assert after["weight_left_out"] == pytest.approx(weight) and before["weight_left_out"] == 0.0
    rest = weight_and_centre(part for part in layout(plain()).parts if part.kind.id != SCREEN)
    assert after["centre_height"] == pytest.approx(rest[1][2])
    follow = {"pieces", "marks", "pieces_left_out", "total_weight", "weight_left_out", "louver_weight", "centre_height",
              "pieces_of_all_vents", "weight_of_all_vents"}
    assert {name for name in before if before[name] != after[name]} == follow


def test_the_quick_picture_shows_what_is_made() -> None:
    ids = {each.id for each in outlines(wished(base_leg_gable=PartWish(left_out=True)))}
    assert ids == {piece.id for piece in layout(wished(base_leg_gable=PartWish(left_out=True))).pieces}
    assert len(ids) < len(outlines(plain()))


def test_left_out_stock_need_not_be_long_enough() -> None:
    """What is bought is not cut from the list."""
    short = StockList(US.name, US.title, (*US.items, DEAL), US.usual)
    with pytest.raises(SpecError):
        wished(short, base_rail_top=PartWish(stock="short deal"))
    assert layout(wished(short, base_rail_top=PartWish(stock="short deal", left_out=True))).left_out


# ---- own stock


def test_own_stock_changes_weight_and_nothing_of_the_wood_s_shape() -> None:
    before, after = layout(plain()), layout(wished(base_leg_gable=PartWish(stock="oak 2x4")))
    for old, new in zip(before.parts, after.parts, strict=True):
        assert (new.mark, new.board, new.pieces) == (old.mark, old.board, old.pieces)
        assert new.stock == (OAK if new.kind.id == LEG else old.stock)
        assert new.weight == pytest.approx(old.weight * (2.0 if new.kind.id == LEG else 1.0))


def test_own_stock_is_as_thick_as_the_vent_s_was_measured_and_keeps_its_moisture() -> None:
    spec = wished(values={"frame_thickness": 37.0, "frame_moisture": 19.0}, base_leg_gable=PartWish(stock="oak 2x4"))
    own = layout(spec).of_kind(LEG)[0].stock
    assert own == replace(OAK, thickness=37.0) and spec.frame_stock.moisture == 19.0
    thinner = with_value(spec, BY_NAME["frame_thickness"], 36.5)
    assert thinner.stock_of(BY_ID[LEG]) == replace(OAK, thickness=36.5) and check(thinner) == ()


def test_stock_that_was_listed_as_it_was_measured_fits_as_well() -> None:
    sawn = replace(OAK, name="sawn oak", thickness=37.0)
    listed = StockList(US.name, US.title, (*US.items, sawn), US.usual)
    assert layout(wished(listed, {"frame_thickness": 37.0}, base_leg_gable=PartWish(stock="sawn oak"))
                  ).of_kind(LEG)[0].stock == sawn
    with pytest.raises(SpecError) as refusal:
        wished(listed, base_leg_gable=PartWish(stock="sawn oak"))
    assert [each.code for each in refusal.value.findings] == ["own stock"]


def test_another_section_is_refused_and_the_vent_s_parameter_named() -> None:
    with pytest.raises(SpecError) as refusal:
        wished(base_leg_gable=PartWish(stock="2x6"))
    (finding,) = refusal.value.findings
    assert finding.sentence == (
        "Own stock of B1 (Leg, gable side) is “2x6”: it is a dimension, 38.1 mm × 139.7 mm, and the vent is laid out from "
        "“2x4”, a dimension, 38.1 mm × 88.9 mm. Choose stock of that form and size, or change the vent's frame stock instead, "
        "for the layout is made from it.")
    assert finding.key == "parts.base.leg.gable.stock"


def test_a_section_is_form_thickness_and_width() -> None:
    assert same_section(OAK, TWO_BY_FOUR)
    for other in (replace(OAK, form="board"), replace(OAK, thickness=38.2), replace(OAK, width=89.0)):
        assert not same_section(other, TWO_BY_FOUR)


# ---- a wish outlives the kind


def test_a_wish_for_a_kind_that_the_vent_has_not_is_kept_and_breaks_nothing() -> None:
    wishes = {"roof.barge": PartWish(stock="no such", left_out=True), "roof.gable.screen": PartWish(note="mesh")}
    hipped = checked_spec({}, WITH_OAK, wishes)
    assert layout(hipped) == layout(plain()) and dict(wishes_in_use(hipped)) == {}
    assert fingerprint(hipped) == fingerprint(plain())
    assert hipped.parts["roof.barge"].stock == "no such"
    with pytest.raises(SpecError) as refusal:
        checked_spec({"roof_form": "gable"}, WITH_OAK, wishes)
    assert [each.code for each in refusal.value.findings] == ["no own stock"]
    gabled = checked_spec({"roof_form": "gable"}, WITH_OAK, {"roof.barge": PartWish(left_out=True)})
    assert [part.kind.id for part in layout(gabled).left_out] == ["roof.barge"] * len(layout(gabled).left_out) != []


def test_a_wish_for_nothing_is_none() -> None:
    assert make_spec({}, US, {LEG: PartWish()}) == make_spec({}, US)
    assert NO_WISH.stock_name == "" and PartWish(OAK).stock_name == "oak 2x4"


def test_specs_with_other_wishes_are_other_specs() -> None:
    specs = [plain(), wished(base_leg_gable=PartWish(note="a")), wished(base_leg_gable=PartWish(left_out=True)),
             wished(base_leg_gable=PartWish(stock="oak 2x4"))]
    assert len(set(specs)) == 4
    prints = [fingerprint(spec) for spec in specs]
    assert prints[0] == prints[1] and len(set(prints)) == 3, "a note changes no model"


def test_the_model_of_a_vent_without_wishes_has_the_fingerprint_that_it_had_before_there_were_any() -> None:
    spec = plain()
    assert not spec.parts and fingerprint(spec) == fingerprint(checked_spec({}, US))


# ---- scenario files


def test_a_scenario_says_it(tmp_path: Path) -> None:
    path = tmp_path / "vent.json"
    path.write_text(json.dumps({"louverwright": 1, "parts": {
        LEG: {"note": "pick clear wood"}, SCREEN: {"left_out": True}, SLAT: {"stock": "1x6", "note": "", "left_out": False}}}))
    assert dict(read_scenario(path).parts) == {
        LEG: PartWish(note="pick clear wood"), SCREEN: PartWish(left_out=True), SLAT: PartWish(stock="1x6")}


@pytest.mark.parametrize(("parts", "key", "words"), [
    ([], "parts", "an object of kinds"),
    ({LEG: True}, "parts.base.leg.gable", "an object with stock, note, left_out"),
    ({LEG: {"lost": True}}, "parts.base.leg.gable.lost", "not a key of a part's wish"),
    ({LEG: {"left_out": "yes"}}, "parts.base.leg.gable.left_out", "“yes” must be true or false"),
    ({LEG: {"left_out": 1}}, "parts.base.leg.gable.left_out", "“1” must be true or false"),
    ({LEG: {"note": 5}}, "parts.base.leg.gable.note", "“5” is not text. Put it in quotes."),
    ({LEG: {"stock": None}}, "parts.base.leg.gable.stock", "is not text"),
])
def test_a_scenario_s_slips_are_told(parts: Any, key: str, words: str) -> None:
    with pytest.raises(ScenarioError) as refusal:
        scenario_from({"louverwright": 1, "parts": parts}, Path())
    ((where, sentence),) = refusal.value.findings
    assert where == key and words in sentence


def test_the_schema_knows_every_kind() -> None:
    schema = json.loads((ROOT / "resources" / "scenario.schema.json").read_text(encoding="utf-8"))
    assert list(schema["properties"]["parts"]["properties"]) == [kind.id for kind in KINDS]
    assert list(schema["$defs"]["wish"]["properties"]) == ["stock", "note", "left_out"]


# ---- two states, and a part that came out wrong


def test_left_out_now_and_made_again() -> None:
    whole, less = layout(plain()), layout(wished(louver_screen=PartWish(left_out=True)))
    ids = {piece.id for part in whole.of_kind(SCREEN) for piece in part.pieces}
    now = compare(whole, less)
    assert {p.id for p in now.pieces if p.state == LEFT_OUT} == ids and now.removed == () and now.added == ()
    assert all(p.wood == SPARE and p.new_mark == "" for p in now.pieces if p.state == LEFT_OUT)
    assert [group.part.mark for group in now.left_out] == [only(whole, SCREEN).mark]
    again = compare(less, whole)
    assert {p.id for p in again.pieces if p.state == MADE_AGAIN} == ids and again.added == () and again.removed == ()
    assert [set(group.ids) for group in again.made_again] == [ids] == [set(group.ids) for group in again.to_make]
    assert {p.state for p in again.pieces} == {UNCHANGED, MADE_AGAIN}
    same = compare(less, less)
    assert same.same and same.left_out == same.made_again == same.left_out_otherwise == ()


def test_what_is_left_out_in_both_but_drawn_otherwise_is_told() -> None:
    small, large = (layout(checked_spec({"louver_height": height}, US, {SLAT: PartWish(left_out=True),
                                                                       "louver.stile": PartWish(left_out=True)}))
                    for height in (560.0, 600.0))
    found = compare(small, large)
    told = {group.part.kind.id for group in found.left_out_otherwise}
    assert "louver.stile" in told, "a stile is as long as the stage is high"
    assert not {p.id for p in found.pieces} & {piece.id for part in large.left_out for piece in part.pieces}


def test_own_stock_is_a_change_of_the_part() -> None:
    spec = wished(base_leg_gable=PartWish(stock="oak 2x4"))
    found = compare(layout(plain()), layout(spec))
    assert {part.kind.id for change in found.changed for part in (change.new,)} == {LEG}
    assert {p.state for p in found.pieces} == {UNCHANGED, CHANGED}
    assert changed_wishes(plain(), spec) == ((LEG, NO_WISH, PartWish(OAK)),) and changed_wishes(spec, spec) == ()


def test_a_part_that_is_left_out_cannot_come_out_wrong() -> None:
    spec = wished(louver_screen=PartWish(left_out=True))
    mark = layout(spec).left_out[0].mark
    for wrong in (Wrong(mark, lost=True), Wrong("L9", lost=True, cut=(mark,))):
        with pytest.raises(MendError) as refusal:
            mend(spec, wrong)
        (sentence,) = str(refusal.value).splitlines()
        assert sentence.startswith(f"“{mark}” is left out of this vent: it is not made here. Choose one of: B1L, ")
        assert f"{mark}," not in sentence.split("Choose")[1]


def test_ways_to_mend_keep_what_is_wished() -> None:
    spec = wished(louver_stile=PartWish(left_out=True), base_leg_gable=PartWish(stock="oak 2x4"))
    found = mend(spec, Wrong("L9", real=(only(layout(spec), SLAT).board.length - 3.0, None, None)))
    assert found.ways.ways
    for way in found.ways.ways:
        assert way.after.parts == spec.parts and layout(way.after).of_kind("louver.stile") == ()
        assert all(not mark.startswith("L7") for mark in way.others)


# ---- the exact numbers, read again


def test_a_report_with_wishes_is_made_again_from_its_own_numbers() -> None:
    wishes = {LEG: PartWish("oak 2x4", "clear wood"), SCREEN: PartWish(left_out=True, note="bought"),
              "roof.barge": PartWish("x")}
    job = Job(checked_spec({}, WITH_OAK, wishes), "2026-01-02", "1", "0")
    again = job_from_record(json.loads(to_json(job)))
    assert again.spec.parts == job.spec.parts and again.assembly == job.assembly
    assert isinstance(again.spec.parts[LEG].stock, Stock)


def test_a_report_of_before_there_were_wishes_is_read() -> None:
    record = {key: value for key, value in record_of("hay-barn-28ft").items() if key not in ("part_wishes", "left_out")}
    assert job_from_record(record).assembly == job_of("hay-barn-28ft").assembly


def test_own_stock_that_is_no_stock_is_refused() -> None:
    record = {**record_of("hay-barn-28ft"), "part_wishes": {LEG: {"stock": {"name": "oak"}, "note": "", "left_out": False}}}
    with pytest.raises(ScenarioError) as refusal:
        job_from_record(record)
    assert refusal.value.findings == (("part_wishes.base.leg.gable.stock", "It is not an item of stock."),)
