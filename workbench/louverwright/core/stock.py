# SPDX-License-Identifier: LGPL-2.1-or-later
"""Stock as it is sold: dressed sizes, lengths, densities; the shipped lists and the user's own over them."""

from __future__ import annotations

import math
from collections import Counter
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field, replace
from types import MappingProxyType
from typing import Any

from .parameters import BY_NAME, MOISTURE, PARAMETERS, THICKNESS, WIDTH, measured_name
from .parameters import STOCK as STOCK_KIND
from .saying import joined, say
from .texts import LONGEST_LINE, LONGEST_NOTE, brief, unfit
from .units import ReadError, parse_length

FORMS = ("dimension", "board", "post", "sheet", "mesh")

#: Every use that a list names a usual item for: the stock parameters.
USES = tuple(row.name for row in PARAMETERS if row.kind == STOCK_KIND)

#: Shipped lists that a list of the user's own may lie over.
BASES = ("us", "eu")

#: The keys of a list and of an item; the first are needed.
LIST_KEYS = ("items", "$schema", "name", "title", "base", "usual")
NEEDED_KEYS = ("name", "form", "thickness", "width", "lengths", "density")
ITEM_KEYS = (*NEEDED_KEYS, "moisture", "material", "source")

#: Densities (kg/m³) between cork and copper; anything else is a slip of the pen.
LIGHTEST, HEAVIEST = 50.0, 9000.0
#: Moisture (percent of the dry weight) that a density counts for where the list does not say it, and the most that is read.
USUAL_MOISTURE, WETTEST = 12.0, 40.0
#: No stock is sold longer than this, or shorter (mm).
SHORTEST, LONGEST = 100.0, 100_000.0
#: No list has more items than this, no item is sold in more lengths.
MOST_ITEMS, MOST_LENGTHS = 2_000, 100

_Findings = list[tuple[str, str]]


class StockListError(ValueError):
    """A stock list that cannot be used; ``findings`` are (key, sentence) pairs, the text is all of them."""

    def __init__(self, findings: _Findings) -> None:
        super().__init__(joined("\n", (joined(": ", each) for each in findings)))
        self.findings = tuple(findings)


@dataclass(frozen=True)
class Stock:
    """One item: dressed thickness and width (mm), lengths sold (mm; a sheet's run along its face grain), density.

    The density is in kg/m³ at the ``moisture`` (percent of the dry weight) that the stock is built in at.
    """

    name: str
    form: str
    thickness: float
    width: float
    lengths: tuple[float, ...]
    material: str
    density: float
    moisture: float = USUAL_MOISTURE


@dataclass(frozen=True)
class StockList:
    """A list with the usual item for each use (``USES``)."""

    name: str
    title: str
    items: tuple[Stock, ...]
    usual: Mapping[str, str] = field(default_factory=dict)

    def __post_init__(self) -> None:
        object.__setattr__(self, "usual", MappingProxyType(dict(self.usual)))

    def find(self, name: str) -> Stock:
        """The item called ``name``.  Raises StockListError with the names there are."""
        for item in self.items:
            if item.name == name:
                return item
        raise StockListError([(self.name, say("“{name}” is not in the stock list. Choose one of: {names}.", name=name,
                                              names=", ".join(item.name for item in self.items)))])


def same_section(first: Stock, other: Stock) -> bool:
    """Whether two items are of one form and one section: as thick and as wide to 0.01 mm."""
    return first.form == other.form and max(abs(first.thickness - other.thickness), abs(first.width - other.width)) < 0.01


def density_at(gravity: float, moisture: float) -> float:
    """Density (kg/m³) from the specific gravity at 12 % moisture: 1000·G·(1 + M/100), M in percent.

    The formula of the Wood Handbook (FPL-GTR-190, chapter 4), water at 1000 kg/m³.  G is the oven-dry weight over
    the volume at 12 % moisture, so M is best near 12.
    """
    return 1000.0 * gravity * (1.0 + moisture / 100.0)


def measured_stock(item: Stock, use: str, values: Mapping[str, Any]) -> Stock:
    """The item as it was measured for a use: ``values`` has thickness and width (mm) and moisture (%), 0 for the list's.

    Density at another moisture: ρ₂ = ρ₁ · (1 + M₂/100) / (1 + M₁/100), the formula of ``density_at`` with one specific
    gravity for both.  The swelling is left out: wood between 12 % and its fibre saturation near 28 % comes out heavier than
    it is, by some 6 % at most (from memory of the Wood Handbook's volumetric shrinkage), and above that right but for this.
    """
    def told(what: str, listed: float) -> float:
        return float(values.get(measured_name(use, what), 0.0) or listed)

    moisture = told(MOISTURE, item.moisture)
    return replace(item, thickness=told(THICKNESS, item.thickness), width=told(WIDTH, item.width), moisture=moisture,
                   density=item.density * (100.0 + moisture) / (100.0 + item.moisture))


def read_stock_list(data: Any) -> StockList:
    """A list from parsed JSON (``resources/stock/README.md`` describes it).

    A ``usual`` item may be one of the list that this one is laid over: ``merged`` looks for it.
    Raises StockListError with every finding.
    """
    if not isinstance(data, Mapping) or not isinstance(data.get("items"), list):
        raise StockListError([("items", say("A stock list is an object with a list of items. See the shipped lists."))])
    if len(data["items"]) > MOST_ITEMS:
        raise StockListError([("items", say("The list has {count} items, and at most {most} are read. Leave out what you do "
                                            "not use.", count=len(data["items"]), most=MOST_ITEMS))])
    findings = [*_unknown("", data, LIST_KEYS), *_texts("", data, ("name", "title"))]
    if data.get("base", BASES[0]) not in BASES:
        findings.append(("base", say("“{name}” is not a shipped list; known are {bases}.", name=brief(data["base"]),
                                     bases=", ".join(BASES))))
    items = tuple(item for i, each in enumerate(data["items"]) if (item := _item(f"items[{i}]", each, findings)))
    findings += [("items", say("“{name}” stands {times} times in the list. Give each item a name of its own.", name=name,
                               times=times))
                 for name, times in sorted(Counter(item.name for item in items).items()) if times > 1]
    usual = data.get("usual", {})
    findings += _usual_findings(usual, items)
    if findings:
        raise StockListError(findings)
    return StockList(data.get("name", "own"), data.get("title", ""), items, usual)


def merged(base: StockList, own: StockList) -> StockList:
    """The user's own list laid over a shipped one: own items replace those of the same name, own uses go first.

    Raises StockListError where a use names an item that neither list has, or one of a form that does not fit.
    """
    names = {item.name for item in own.items}
    items = (*own.items, *(item for item in base.items if item.name not in names))
    usual = {**base.usual, **own.usual}
    known = {item.name for item in items}
    findings: _Findings = [
        (f"usual.{use}", say("“{name}” is in neither list. Add it to the items or name another.", name=brief(name)))
        for use, name in usual.items() if name not in known]
    findings += _usual_findings(usual, items)
    if findings:
        raise StockListError(findings)
    return StockList(own.name, own.title or base.title, items, usual)


def _usual_findings(usual: Any, items: tuple[Stock, ...]) -> _Findings:
    """Unknown uses, and items of a form that does not fit; names that are not among the items are let pass."""
    if not isinstance(usual, Mapping):
        return [("usual", say("It must be an object of uses and names of items."))]
    forms = {item.name: item.form for item in items}
    findings: _Findings = []
    for use, name in usual.items():
        if use not in USES:
            findings.append((f"usual.{brief(use)}", say("“{use}” is not a use; known are {uses}.", use=brief(use),
                                                        uses=", ".join(USES))))
        elif not isinstance(name, str) or not name.strip():
            findings.append((f"usual.{use}", say("“{name}” is not the name of an item. Write it as text.", name=brief(name))))
        elif name in forms and forms[name] not in BY_NAME[use].forms:
            findings.append((f"usual.{use}", say("“{name}” is a {form}, and the use needs a {forms}. Name another item.",
                                                 name=name, form=say(forms[name]),
                                                 forms=joined(" or ", map(say, BY_NAME[use].forms)))))
    return findings


def _item(where: str, data: Any, findings: _Findings) -> Stock | None:
    """One item, or None with findings."""
    if not isinstance(data, Mapping):
        findings.append((where, say("An item is an object with {item_keys}.", item_keys=", ".join(ITEM_KEYS))))
        return None
    found = [*_unknown(f"{where}.", data, ITEM_KEYS), *_texts(f"{where}.", data, ("name", "material", "source")),
             *((f"{where}.{key}", say("An item needs a {key}.", key=key)) for key in NEEDED_KEYS if key not in data)]
    sizes = {key: _length(f"{where}.{key}", data[key], found, size_limits(key, data.get("form")))
             for key in (THICKNESS, WIDTH) if key in data}
    lengths = _lengths(f"{where}.lengths", data["lengths"], found) if "lengths" in data else ()
    found += _plain_findings(where, data)
    if not found and sizes["thickness"] > sizes["width"]:
        found.append((f"{where}.thickness", say("A thickness of {thickness:g} mm is more than the width of {width:g} mm. "
                                                "Exchange them.", thickness=sizes["thickness"], width=sizes["width"])))
    findings += found
    if found:
        return None
    return Stock(data["name"], data["form"], sizes["thickness"], sizes["width"], lengths,
                 data.get("material", ""), float(data["density"]), float(data.get("moisture", USUAL_MOISTURE)))


def _plain_findings(where: str, data: Mapping[str, Any]) -> Iterator[tuple[str, str]]:
    """What is wrong with an item's name, form, density and moisture, where they are given."""
    if isinstance(data.get("name"), str) and not data["name"].strip():
        yield f"{where}.name", say("The name is empty. Give the item a name.")
    if "form" in data and data["form"] not in FORMS:
        yield f"{where}.form", say("“{form}” is not a form; known are {forms}.", form=brief(data["form"]),
                                   forms=", ".join(FORMS))
    density = data.get("density", LIGHTEST)
    if not _number(density) or not LIGHTEST <= density <= HEAVIEST:
        yield f"{where}.density", say("A density of “{density}” is not between {lightest:g} and {heaviest:g} kg/m³. Give "
                                      "it as a number.", density=brief(density), lightest=LIGHTEST, heaviest=HEAVIEST)
    moisture = data.get("moisture", USUAL_MOISTURE)
    if not _number(moisture) or not 0.0 <= moisture <= WETTEST:
        yield f"{where}.moisture", say("A moisture of “{moisture}” is not between 0 and {wettest:g} % of the dry weight. "
                                       "Give it as a number.", moisture=brief(moisture), wettest=WETTEST)


def _unknown(prefix: str, data: Mapping[str, Any], known: tuple[str, ...]) -> _Findings:
    return [(f"{prefix}{brief(key)}", say("“{key}” is not a key here; known are {known}.", key=brief(key),
                                          known=", ".join(known)))
            for key in data if key not in known]


def _texts(prefix: str, data: Mapping[str, Any], keys: tuple[str, ...]) -> _Findings:
    found: _Findings = []
    for key in (key for key in keys if key in data):
        if not isinstance(data[key], str):
            found.append((f"{prefix}{key}", say("“{value}” is not text. Put it in quotes.", value=brief(data[key]))))
        elif fault := unfit(data[key], LONGEST_NOTE if key == "source" else LONGEST_LINE):
            found.append((f"{prefix}{key}", say("This cannot be printed: {limit}. {cure}", limit=fault[0], cure=fault[1])))
    return found


def _number(value: Any) -> bool:
    """Whether it is a finite number; a whole number too large for a float is none."""
    return isinstance(value, (int, float)) and not isinstance(value, bool) and -1e300 < value < 1e300


def _lengths(where: str, listed: Any, findings: _Findings) -> tuple[float, ...]:
    """The lengths sold in mm, the shortest first, each once."""
    if not isinstance(listed, list) or not listed:
        findings.append((where, say("It must be a list with at least one length that the item is sold in.")))
        return ()
    if len(listed) > MOST_LENGTHS:
        findings.append((where, say("It has {count} lengths, and at most {most} are read. Leave out what you do not use.",
                                    count=len(listed), most=MOST_LENGTHS)))
        return ()
    return tuple(sorted({_length(f"{where}[{i}]", each, findings) for i, each in enumerate(listed)}))


def size_limits(what: str, form: Any) -> tuple[float, float]:
    """The least and the greatest thickness or width (mm) of a form: the same that may be measured on it."""
    row = BY_NAME[measured_name("screen_stock" if form == "mesh" and what == THICKNESS else "frame_stock", what)]
    assert row.low is not None and row.high is not None
    return row.low, row.high


def _length(where: str, value: Any, findings: _Findings, limits: tuple[float, float] = (SHORTEST, LONGEST)) -> float:
    """A length in mm from a number or a text with its unit; 0 with a finding."""
    try:
        mm = float(value) if _number(value) else parse_length(value) if isinstance(value, str) else math.nan
    except ReadError as error:
        findings.append((where, error.args[0]))
        return 0.0
    if math.isnan(mm):
        findings.append((where, say("“{value}” is not a length. Write millimetres, or a text with its unit.",
                                    value=brief(value))))
    elif not limits[0] <= mm <= limits[1]:
        findings.append((where, say("{mm:g} mm is not a size that is sold. Give at least {least:g} mm and at most "
                                    "{most:g} mm.", mm=mm, least=limits[0], most=limits[1])))
    return mm
