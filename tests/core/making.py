# SPDX-License-Identifier: LGPL-2.1-or-later
"""What tests are made from: the shipped examples, specs of given values, and the sticks of a laid-out vent."""

from __future__ import annotations

import json
import os
from functools import lru_cache
from pathlib import Path
from typing import Any

from louverwright.core.assembly import Assembly, Cut, Part, board_shell
from louverwright.core.checks import checked_spec
from louverwright.core.geometry import Vec
from louverwright.core.layout import layout
from louverwright.core.spec import Spec
from louverwright.core.stock import StockList
from louverwright.exchange.papers import job_from_values
from louverwright.exchange.scenario import Scenario, read_scenario
from louverwright.places import stock_list
from louverwright.report.job import Job
from louverwright.report.json_file import to_json

ROOT = Path(__file__).resolve().parents[2]
#: Names of examples to keep to, as ``versions.sh`` sets them to stay quick; all where it is not set.
CHOSEN = os.environ.get("LOUVERWRIGHT_EXAMPLES", "").split()
_STEMS = [path.stem for path in (ROOT / "resources" / "examples").glob("*.json")]
#: The first has a mast, so that every kind of cut comes up in it: tests that need one example take it.
EXAMPLES = tuple(sorted((stem for stem in _STEMS if not CHOSEN or stem in CHOSEN),
                        key=lambda stem: (stem != "hay-barn-28ft", stem)))
INCH = 25.4


def scenario_of(name: str) -> Scenario:
    """A shipped example as it is read."""
    return read_scenario(ROOT / "resources" / "examples" / f"{name}.json")


@lru_cache(maxsize=16)
def job_of(name: str) -> Job:
    """The job of a shipped example with every part made; what is wished for parts has tests of its own."""
    scenario = scenario_of(name)
    return job_from_values(scenario.values, scenario.revision, scenario.folder)


def no_number(word: str) -> float:
    """For words such as NaN, which JSON does not have."""
    raise ValueError(f"{word} is no number of JSON.")


@lru_cache(maxsize=16)
def record_of(name: str) -> dict[str, Any]:
    """An example's cuts.json as a stranger has it: text, read again."""
    record = json.loads(to_json(job_of(name)), parse_constant=no_number)
    assert isinstance(record, dict)
    return record


def spec_of(stock: StockList | None = None, **values: Any) -> Spec:
    """A checked spec of the given values over the defaults, with the US list unless another is given."""
    return checked_spec(values, stock or stock_list("us"))


def vent(stock: StockList | None = None, **values: Any) -> Assembly:
    """The assembly of the given values."""
    return layout(spec_of(stock, **values))


def only(assembly: Assembly, kind: str) -> Part:
    """The one part of a kind."""
    (part,) = assembly.of_kind(kind)
    return part


def cuts_named(part: Part, word: str) -> list[Cut]:
    """The cuts of a part whose name has a word in it."""
    return [cut for cut in part.board.cuts if word in cut.name]


def standing(part: Part, number: int = 0) -> list[Vec]:
    """The corners of a part's piece where it stands in the vent."""
    place = part.pieces[number].placement
    return [place.point(p) for p in board_shell(part.board).points]
