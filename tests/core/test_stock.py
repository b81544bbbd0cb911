# SPDX-License-Identifier: LGPL-2.1-or-later
"""Stock lists: the shipped ones against published sizes, thicknesses and densities, and the user's own over them."""

from __future__ import annotations

import json
import math
from pathlib import Path
from typing import Any

import pytest

from louverwright.core.parameters import BY_NAME
from louverwright.core.stock import (
    BASES,
    FORMS,
    HEAVIEST,
    ITEM_KEYS,
    LIGHTEST,
    LIST_KEYS,
    LONGEST,
    NEEDED_KEYS,
    USES,
    Stock,
    StockList,
    StockListError,
    density_at,
    merged,
    read_stock_list,
)

FOLDER = Path(__file__).resolve().parents[2] / "resources" / "stock"
INCH, FOOT, POUND = 25.4, 304.8, 0.45359237
CEDAR = {"name": "cedar 1x6", "form": "board", "thickness": "11/16 in", "width": "5 1/2 in", "lengths": ["8 ft", "12 ft"],
         "material": "western redcedar", "density": 360}


def data(name: str) -> dict[str, Any]:
    content = json.loads((FOLDER / f"{name}.json").read_text(encoding="utf-8"))
    assert isinstance(content, dict)
    return content


def shipped(name: str) -> StockList:
    return read_stock_list(data(name))


def refused(content: Any) -> dict[str, str]:
    """Key and sentence of every finding that a list is refused with."""
    with pytest.raises(StockListError) as caught:
        read_stock_list(content)
    findings = caught.value.findings
    assert all(sentence.endswith(".") for _, sentence in findings)
    assert str(caught.value) == "\n".join(f"{key}: {sentence}" for key, sentence in findings)
    return dict(findings)


def own(*items: Any, **more: Any) -> dict[str, Any]:
    return {"items": list(items), **more}


# ---- the shipped lists against published tables


# PS 20, nominal to minimum dressed dry size in inches (engineeringtoolbox.com, softwood lumber standard).
THICKNESSES = {"1": 0.75, "5/4": 1.0, "2": 1.5, "4": 3.5, "6": 5.5}
WIDTHS = {"2": 1.5, "3": 2.5, "4": 3.5, "5": 4.5, "6": 5.5, "8": 7.25, "10": 9.25, "12": 11.25}


def test_us_lumber_has_the_dressed_sizes_of_the_lumber_standard() -> None:
    lumber = [item for item in shipped("us").items if item.form in ("dimension", "board", "post")
              and not item.name.startswith("strip")]
    assert {"2x4", "1x4", "1x6", "5/4x6", "4x4"} <= {item.name for item in lumber}
    for item in lumber:
        thick, wide = item.name.split("x")
        assert item.thickness == pytest.approx(THICKNESSES[thick] * INCH), item.name
        assert item.width == pytest.approx(WIDTHS[wide] * INCH), item.name


# Pounds a foot at 35 lb/ft³ (engineeringtoolbox.com, softwood lumber dimensions).
@pytest.mark.parametrize(("name", "published"), [
    ("1x4", 0.64), ("1x6", 1.00), ("1x12", 2.05), ("2x4", 1.28), ("2x6", 2.00), ("2x12", 4.10), ("4x4", 2.98),
])
def test_us_lumber_weighs_what_a_published_table_says(name: str, published: float) -> None:
    item = shipped("us").find(name)
    pounds = 35.0 * item.thickness * item.width / FOOT**2
    assert pounds == pytest.approx(published, abs=0.006)


# Lengths are whole even feet (sizes.com, softwood lumber, PS 20-05); 6 ft boards are common practice.
def test_us_lumber_is_sold_in_even_feet() -> None:
    for item in shipped("us").items:
        if item.form in ("dimension", "board", "post"):
            feet = [length / FOOT for length in item.lengths]
            assert all(each == pytest.approx(round(each / 2) * 2) and 5.9 < each < 20.1 for each in feet), item.name


# PS 1: least and most thickness of each Performance Category (apawood-europe.org, performance category).
CATEGORIES = {"3/8": (0.344, 0.406), "15/32": (0.438, 0.500), "1/2": (0.469, 0.531), "19/32": (0.563, 0.625),
              "5/8": (0.594, 0.656), "23/32": (0.688, 0.750), "3/4": (0.719, 0.781)}


def test_us_plywood_is_within_its_performance_category() -> None:
    sheets = [item for item in shipped("us").items if item.form == "sheet"]
    assert {item.name.split()[-1] for item in sheets} == set(CATEGORIES)
    for item in sheets:
        least, most = CATEGORIES[item.name.split()[-1]]
        assert least * INCH <= item.thickness <= most * INCH, item.name
        assert item.width == pytest.approx(48.0 * INCH) and 96.0 * INCH in [pytest.approx(x) for x in item.lengths]


# Weight of plywood by the square foot (APA, from memory).
@pytest.mark.parametrize(("name", "psf"), [("plywood 3/8", 1.1), ("plywood 1/2", 1.5), ("plywood 5/8", 1.8),
                                           ("plywood 3/4", 2.2)])
def test_us_plywood_weighs_what_its_makers_say(name: str, psf: float) -> None:
    item = shipped("us").find(name)
    assert item.density * item.thickness * 1e-3 == pytest.approx(psf * POUND / FOOT**2 * 1e6, rel=0.04)


# EN 1313-1 reference moisture 20 %; sheets of 1250 × 2500 mm (a maker's size list, nestplywood.com).
def test_eu_sheets_have_a_european_size() -> None:
    sheets = [item for item in shipped("eu").items if item.form == "sheet"]
    assert sheets
    assert {(item.width, item.lengths) for item in sheets} == {(1250.0, (2500.0,))}


# Lengths in steps of 0.3 m, 2.4 to 6.0 m; planed 4 to 9 mm under a sawn size of EN 1313-1 (both from memory).
SAWN_THICK, SAWN_WIDE = (16, 19, 22, 25, 32, 38, 44, 47, 50, 63, 75, 100, 125), (50, 75, 100, 125, 150, 175, 200)


def test_eu_timber_is_planed_from_sawn_sizes_and_sold_in_steps() -> None:
    timber = [item for item in shipped("eu").items if item.form in ("dimension", "board", "post")
              and not item.name.startswith("strip")]
    for item in timber:
        if item.name != "38x89":    # the North American size, sold in Europe too
            assert any(4 <= sawn - item.thickness <= 9 for sawn in SAWN_THICK), item.name
            assert any(4 <= sawn - item.width <= 9 for sawn in SAWN_WIDE), item.name
        assert all(2400.0 <= x <= 6000.0 and x / 300.0 == pytest.approx(round(x / 300.0)) for x in item.lengths)
        assert item.name == f"{item.thickness:g}x{item.width:g}"


# ---- density


# Density at 12 % moisture from the specific gravity: TM 5-852-4, table 2-2 (Sitka spruce, loblolly pine); western
# redcedar, baldcypress and northern red oak from memory of the Wood Handbook.
@pytest.mark.parametrize(("gravity", "published"), [(0.40, 448.0), (0.51, 571.0), (0.32, 358.0), (0.46, 515.0), (0.63, 706.0)])
def test_density_follows_from_specific_gravity(gravity: float, published: float) -> None:
    assert density_at(gravity, 12.0) == pytest.approx(published, abs=0.5)


# Missouri forest function notes: G 0.4 at 12 % is 27.968 lb/ft³ (oakmissouri.org, density).
def test_density_agrees_with_a_published_example_in_pounds() -> None:
    assert density_at(0.4, 12.0) / POUND * FOOT**3 * 1e-9 == pytest.approx(27.968, abs=0.002)


def test_shipped_densities_follow_from_specific_gravities() -> None:
    us, eu = shipped("us"), shipped("eu")
    # Spruce-pine-fir: 0.42 by oven-dry volume (from memory). Oven-dry form: 62.4·G/(1 + 0.009·G·M)·(1 + M/100) lb/ft³
    # (engineeringtoolbox.com, wood density).
    pounds = 62.4 * 0.42 / (1.0 + 0.009 * 0.42 * 12.0) * 1.12
    assert us.find("2x4").density == pytest.approx(pounds * POUND / FOOT**3 * 1e9, rel=0.01)
    # Eastern white pine: 0.35 (from memory of the Wood Handbook), at 15 %.
    assert us.find("1x6").density == pytest.approx(density_at(0.35, 15.0), rel=0.01)
    # EN 338 C24: mean 420 kg/m³ at 12 % (from memory), at 20 %.
    assert eu.find("45x95").density == pytest.approx(420.0 / 1.12 * 1.20, rel=0.01)
    for stock in (us, eu):
        timber = [item for item in stock.items if item.form != "mesh"]
        assert all(350.0 <= item.density <= 700.0 for item in timber)


# ---- the shipped lists as wholes


@pytest.mark.parametrize("name", BASES)
def test_a_shipped_list_has_a_usual_item_of_a_fitting_form_for_every_use(name: str) -> None:
    stock = shipped(name)
    assert stock.name == name and stock.title
    assert set(stock.usual) == set(USES)
    for use, item in stock.usual.items():
        assert stock.find(item).form in BY_NAME[use].forms, use


@pytest.mark.parametrize("name", BASES)
def test_every_shipped_item_says_where_its_figures_are_from(name: str) -> None:
    assert all(item.get("source") and item.get("material") for item in data(name)["items"])


@pytest.mark.parametrize("name", BASES)
def test_every_form_of_a_use_can_be_bought_from_a_shipped_list(name: str) -> None:
    forms = {item.form for item in shipped(name).items}
    assert forms == set(FORMS) == {form for use in USES for form in BY_NAME[use].forms}


# A slat of the default panel (76 mm deep, 45°) needs D/cos a + t·tan a; its stile must give the panel's depth.
@pytest.mark.parametrize("name", BASES)
def test_the_usual_boards_give_the_default_panel(name: str) -> None:
    stock, depth = shipped(name), BY_NAME["panel_depth"].default
    slat, stile = (stock.find(stock.usual[use]) for use in ("slat_stock", "stile_stock"))
    assert depth / math.cos(math.radians(45.0)) + slat.thickness <= slat.width
    assert depth <= stile.width
    assert 18.0 <= stock.find(stock.usual["cladding_stock"]).thickness <= 19.1


# ---- reading a list of the user's own


def test_an_own_list_is_read_with_lengths_in_its_own_units() -> None:
    stock = read_stock_list(own({**CEDAR, "lengths": ["12 ft", 2440, "8 ft", "2.44 m"]}, base="eu", name="yard", title="Ours"))
    assert (stock.name, stock.title) == ("yard", "Ours")
    assert stock.items == (Stock("cedar 1x6", "board", pytest.approx(17.4625), pytest.approx(139.7),
                                 (2438.4, 2440.0, 3657.6), "western redcedar", 360.0),)


def test_an_own_list_lies_over_a_shipped_one() -> None:
    base = shipped("us")
    heavy = {**CEDAR, "name": "2x4", "form": "dimension", "thickness": 38, "width": 89, "density": 500}
    both = merged(base, read_stock_list(own(CEDAR, heavy, usual={"slat_stock": "cedar 1x6", "ring_stock": "1x8"})))
    assert both.find("2x4").density == 500.0
    assert len(both.items) == len(base.items) + 1 == len({item.name for item in both.items})
    assert both.usual == {**base.usual, "slat_stock": "cedar 1x6", "ring_stock": "1x8"}
    assert both.title == base.title and both.name == "own"
    assert base.find("2x4").density == 450.0    # the shipped one is as it was


def test_a_use_may_name_a_shipped_item_with_or_without_a_base() -> None:
    for more in ({}, {"base": "us"}):
        assert merged(shipped("us"), read_stock_list(own(usual={"trim_stock": "1x8"}, **more))).usual["trim_stock"] == "1x8"


@pytest.mark.parametrize(("items", "usual", "key", "words"), [
    ([], {"slat_stock": "cedar 1x9"}, "usual.slat_stock", "“cedar 1x9” is in neither list"),
    ([], {"slat_stock": "2x4"}, "usual.slat_stock", "“2x4” is a dimension, and the use needs a board"),
    ([{**CEDAR, "name": "4x4"}], {}, "usual.king_post_stock", "“4x4” is a board, and the use needs a post"),
])
def test_a_use_that_does_not_fit_the_list_below_is_refused(items: list[Any], usual: dict[str, str], key: str,
                                                           words: str) -> None:
    with pytest.raises(StockListError) as caught:
        merged(shipped("us"), read_stock_list(own(*items, usual=usual)))
    assert [where for where, _ in caught.value.findings] == [key]
    assert words in str(caught.value)


def test_a_list_cannot_be_changed_behind_its_back() -> None:
    usual = {"slat_stock": "1x6"}
    stock = StockList("own", "", (), usual)
    usual["slat_stock"] = "1x8"
    assert stock.usual["slat_stock"] == "1x6"
    with pytest.raises(TypeError):
        stock.usual["slat_stock"] = "1x8"  # type: ignore[index]


def test_an_item_that_is_not_there_is_named_with_those_that_are() -> None:
    with pytest.raises(StockListError, match=r"“3x5” is not in the stock list\. Choose one of: 2x4, 2x6"):
        shipped("us").find("3x5")


# ---- refusals


@pytest.mark.parametrize("content", [None, [], "us", 3, {}, {"items": {}}, {"items": "2x4"}, {"name": "own"}])
def test_what_is_no_list_is_refused(content: Any) -> None:
    assert set(refused(content)) == {"items"}


@pytest.mark.parametrize(("change", "key", "words"), [
    ({"name": ""}, "name", "The name is empty"), ({"name": 5}, "name", "“5” is not text"),
    ({"form": "plank"}, "form", "“plank” is not a form; known are dimension, board"),
    ({"form": ["board"]}, "form", "is not a form"),
    ({"thickness": "thick"}, "thickness", "“thick” is not a length that can be read"),
    ({"thickness": "11/16"}, "thickness", "so write the unit"), ({"thickness": 0}, "thickness", "0 mm is not a size"),
    ({"thickness": -19}, "thickness", "-19 mm is not a size"), ({"thickness": None}, "thickness", "is not a length"),
    ({"thickness": True}, "thickness", "is not a length"), ({"thickness": math.nan}, "thickness", "is not a length"),
    ({"thickness": math.inf}, "thickness", "is not a length"), ({"thickness": 10**400}, "thickness", "is not a length"),
    ({"thickness": "6 in"}, "thickness", "152.4 mm is more than the width of 139.7 mm"),
    ({"width": "200 m"}, "width", "at least 8 mm and at most 3000 mm"), ({"width": 5}, "width", "at least 8 mm"),
    ({"thickness": 1}, "thickness", "at least 3 mm and at most 300 mm"), ({"lengths": [99]}, "lengths[0]", "at least 100 mm"),
    ({"lengths": [1e9]}, "lengths[0]", "at most 100000 mm"), ({"lengths": [900] * 101}, "lengths", "at most 100 are read"),
    ({"lengths": []}, "lengths", "at least one length"), ({"lengths": "8 ft"}, "lengths", "at least one length"),
    ({"lengths": ["8 ft", "long"]}, "lengths[1]", "“long” is not a length"),
    ({"density": 0}, "density", "not between 50 and 9000 kg/m³"), ({"density": "360"}, "density", "not between"),
    ({"density": True}, "density", "not between"), ({"density": math.nan}, "density", "not between"),
    ({"density": None}, "density", "not between"), ({"material": 3}, "material", "“3” is not text"),
    ({"colour": "red"}, "colour", "“colour” is not a key here; known are name, form"),
])
def test_an_item_with_a_fault_is_refused_with_the_place_where_it_stands(change: dict[str, Any], key: str,
                                                                        words: str) -> None:
    findings = refused(own({**CEDAR, "name": "first"}, {**CEDAR, **change}))
    assert list(findings) == [f"items[1].{key}"]
    assert words in findings[f"items[1].{key}"]


@pytest.mark.parametrize("key", NEEDED_KEYS)
def test_an_item_needs_all_of_its_keys(key: str) -> None:
    findings = refused(own({k: v for k, v in CEDAR.items() if k != key}))
    assert findings == {f"items[0].{key}": f"An item needs a {key}."}


@pytest.mark.parametrize(("more", "key", "words"), [
    ({"base": "fr"}, "base", "“fr” is not a shipped list; known are us, eu"), ({"base": ["us"]}, "base", "known are"),
    ({"title": 4}, "title", "not text"), ({"name": None}, "name", "not text"), ({"prices": {}}, "prices", "not a key"),
    ({"usual": []}, "usual", "must be an object"), ({"usual": {"roof_stock": "x"}}, "usual.roof_stock", "is not a use"),
    ({"usual": {"slat_stock": 3}}, "usual.slat_stock", "not the name of an item"),
    ({"usual": {"screen_stock": "cedar 1x6"}}, "usual.screen_stock", "is a board, and the use needs a mesh"),
])
def test_a_list_with_a_fault_is_refused(more: dict[str, Any], key: str, words: str) -> None:
    findings = refused(own(CEDAR, **more))
    assert list(findings) == [key]
    assert words in findings[key]


def test_two_items_may_not_have_one_name() -> None:
    assert "“cedar 1x6” stands 3 times" in refused(own(CEDAR, CEDAR, CEDAR))["items"]


def test_every_fault_of_a_list_is_named_at_once() -> None:
    bad = {"name": " ", "form": "plank", "thickness": -1, "width": "wide", "lengths": ["x", 0], "density": 1, "color": 1}
    assert set(refused(own(bad, 7, {"name": "empty"}, base="xx", usual={"stock": "a"}, foo=1))) == {
        "foo", "base", "usual.stock", "items[1]", *(f"items[0].{key}" for key in (
            "name", "form", "thickness", "width", "lengths[0]", "lengths[1]", "density", "color")),
        *(f"items[2].{key}" for key in ("form", "thickness", "width", "lengths", "density"))}


# ---- the schema


def schema() -> dict[str, Any]:
    return data("stock-list.schema")


def test_the_schema_speaks_of_the_same_keys_forms_uses_and_limits() -> None:
    top, item = schema(), schema()["$defs"]["item"]
    assert (set(top["properties"]), top["required"]) == (set(LIST_KEYS), ["items"])
    assert (set(item["properties"]), tuple(item["required"])) == (set(ITEM_KEYS), NEEDED_KEYS)
    assert tuple(item["properties"]["form"]["enum"]) == FORMS
    assert tuple(top["properties"]["base"]["enum"]) == BASES
    assert tuple(top["properties"]["usual"]["properties"]) == USES
    assert top["$defs"]["length"]["oneOf"][0]["maximum"] == LONGEST
    assert (item["properties"]["density"]["minimum"], item["properties"]["density"]["maximum"]) == (LIGHTEST, HEAVIEST)


def accepts(content: Any) -> bool:
    validator = pytest.importorskip("jsonschema").Draft202012Validator
    validator.check_schema(schema())
    return bool(validator(schema()).is_valid(content))


@pytest.mark.parametrize("name", BASES)
def test_the_schema_accepts_the_shipped_lists(name: str) -> None:
    assert accepts(data(name))


def test_the_schema_accepts_the_example_in_the_readme() -> None:
    text = (FOLDER / "README.md").read_text(encoding="utf-8").split("```json\n")[1].split("```")[0]
    example = json.loads(text)
    assert accepts(example)
    assert merged(shipped("us"), read_stock_list(example)).find("cedar 1x6").thickness == pytest.approx(19.05)


@pytest.mark.parametrize("change", [
    {"name": " "}, {"form": "plank"}, {"thickness": 0}, {"thickness": "thick"}, {"width": 200_000}, {"lengths": []},
    {"density": 10}, {"density": "360"}, {"colour": "red"}, {"material": 3},
])
def test_the_schema_refuses_what_the_reader_refuses(change: dict[str, Any]) -> None:
    content = own({**CEDAR, **change})
    assert refused(content)
    assert not accepts(content)
    assert accepts(own(CEDAR, base="us", usual={"slat_stock": "cedar 1x6"}))


def test_the_readme_names_every_key_form_and_use() -> None:
    text = (FOLDER / "README.md").read_text(encoding="utf-8")
    assert all(f"`{word}`" in text for word in (*ITEM_KEYS, *FORMS, *USES))
