# SPDX-License-Identifier: LGPL-2.1-or-later
"""Stock as it is sold: dressed sizes, lengths, densities; the shipped lists and the user's own over them."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from typing import Any

from .parameters import BY_NAME, PARAMETERS
from .parameters import STOCK as STOCK_KIND
from .units import ReadError, parse_length

FORMS = ("dimension", "board", "post", "sheet", "mesh")

#: Every use that a list names a usual item for: the stock parameters.
USES = tuple(row.name for row in PARAMETERS if row.kind == STOCK_KIND)


class StockListError(ValueError):
    """A stock list that cannot be used; ``findings`` are (key, sentence) pairs, the text is all sentences."""

    def __init__(self, findings: list[tuple[str, str]]) -> None:
        super().__init__("\n".join(f"{key}: {sentence}" for key, sentence in findings))
        self.findings = tuple(findings)


@dataclass(frozen=True)
class Stock:
    """One item: dressed thickness and width (mm), the lengths sold (mm; a sheet's along its face grain), density (kg/m³)."""

    name: str
    form: str
    thickness: float
    width: float
    lengths: tuple[float, ...]
    material: str
    density: float


@dataclass(frozen=True)
class StockList:
    """A list with the usual item for each use (``USES``)."""

    name: str
    title: str
    items: tuple[Stock, ...]
    usual: Mapping[str, str] = field(default_factory=dict)

    def find(self, name: str) -> Stock:
        """The item called ``name``.  Raises KeyError."""
        for item in self.items:
            if item.name == name:
                return item
        raise KeyError(name)


def density_at(gravity: float, moisture: float) -> float:
    """Density (kg/m³) from the specific gravity at 12 % moisture: 1000·G·(1 + M/100), M in percent.

    The formula of the Wood Handbook (FPL-GTR-190, chapter 4), water at 1000 kg/m³.
    """
    return 1000.0 * gravity * (1.0 + moisture / 100.0)


def read_stock_list(data: Any) -> StockList:
    """A list from parsed JSON (``resources/stock/README.md`` describes it).  Raises StockListError with every finding."""
    findings: list[tuple[str, str]] = []
    if not isinstance(data, Mapping) or not isinstance(data.get("items"), list):
        raise StockListError([("items", "A stock list is an object with a list of items. See the shipped lists.")])
    items = [_item(f"items[{i}]", each, findings) for i, each in enumerate(data["items"])]
    good = tuple(item for item in items if item)
    names = [item.name for item in good]
    findings += [("items", f"“{name}” stands twice in the list. Give each item a name of its own.")
                 for name in sorted({n for n in names if names.count(n) > 1})]
    usual = data.get("usual", {})
    findings += _usual_findings(usual, good, "base" in data)
    if findings:
        raise StockListError(findings)
    return StockList(str(data.get("name", "own")), str(data.get("title", "")), good, dict(usual))


def _usual_findings(usual: Any, items: tuple[Stock, ...], partial: bool) -> list[tuple[str, str]]:
    if not isinstance(usual, Mapping):
        return [("usual", "It must be an object of uses and names of items.")]
    by_name = {item.name: item for item in items}
    found = [(f"usual.{use}", f"“{use}” is not a use; known are {', '.join(USES)}.") for use in usual if use not in USES]
    for use, name in usual.items():
        if use in USES and name in by_name and by_name[name].form not in BY_NAME[use].forms:
            found.append((f"usual.{use}", f"“{name}” is a {by_name[name].form}; the use needs a "
                          f"{' or '.join(BY_NAME[use].forms)}."))
        elif use in USES and name not in by_name and not partial:
            found.append((f"usual.{use}", f"“{name}” is not in the list."))
    return found


def _item(where: str, data: Any, findings: list[tuple[str, str]]) -> Stock | None:
    """One item, or None with findings."""
    if not isinstance(data, Mapping):
        findings.append((where, "An item is an object with name, form, thickness, width, lengths, material, density."))
        return None
    before = len(findings)
    name = data.get("name")
    if not isinstance(name, str) or not name.strip():
        findings.append((f"{where}.name", "An item needs a name."))
    if data.get("form") not in FORMS:
        findings.append((f"{where}.form", f"“{data.get('form')}” is not a form; known are {', '.join(FORMS)}."))
    thickness = _length(f"{where}.thickness", data.get("thickness"), findings)
    width = _length(f"{where}.width", data.get("width"), findings)
    listed = data.get("lengths")
    lengths = [_length(f"{where}.lengths", each, findings) for each in listed] if isinstance(listed, list) else []
    if not lengths:
        findings.append((f"{where}.lengths", "It needs at least one length that it is sold in."))
    density = data.get("density")
    if isinstance(density, bool) or not isinstance(density, (int, float)) or not 50.0 <= density <= 9000.0:
        findings.append((f"{where}.density", f"A density of {density} kg/m³ is not between 50 and 9000."))
    if len(findings) > before:
        return None
    return Stock(str(name), str(data["form"]), thickness, width, tuple(sorted(lengths)),
                 str(data.get("material", "")), float(density))  # type: ignore[arg-type]


def _length(where: str, value: Any, findings: list[tuple[str, str]],
            read: Callable[[str], float] = parse_length) -> float:
    """A length in mm from a number or a text with its unit; 0 with a finding."""
    try:
        mm = float(value) if isinstance(value, (int, float)) and not isinstance(value, bool) else read(str(value))
    except ReadError as error:
        findings.append((where, str(error)))
        return 0.0
    if not 0.0 < mm < 1e6:
        findings.append((where, f"{mm:g} mm is not a size that is sold. Give a length above 0."))
    return mm


def merged(base: StockList, own: StockList) -> StockList:
    """The user's own list laid over a shipped one: own items replace those of the same name, own uses go first.

    Raises StockListError where a use names an item that neither list has.
    """
    names = {item.name for item in own.items}
    items = (*own.items, *(item for item in base.items if item.name not in names))
    usual = {**base.usual, **own.usual}
    known = {item.name for item in items}
    findings = [(f"usual.{use}", f"“{name}” is in neither list.") for use, name in usual.items() if name not in known]
    if findings:
        raise StockListError(findings)
    return StockList(own.name, own.title or base.title, items, usual)
