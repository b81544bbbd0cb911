# SPDX-License-Identifier: LGPL-2.1-or-later
"""Two states of a vent, read from scenarios or from the exact numbers of earlier reports, and their comparison written."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from dataclasses import replace
from pathlib import Path
from typing import Any

from .. import __version__
from ..core.checks import checked_spec
from ..core.parameters import BY_NAME, THICKNESS, WIDTH
from ..core.parameters import STOCK as STOCK_KIND
from ..core.part_wish import STOCK, Wishes
from ..core.saying import say
from ..core.spec import SpecError
from ..core.stock import (
    FORMS,
    HEAVIEST,
    LONGEST,
    SHORTEST,
    WETTEST,
    Stock,
    StockList,
    StockListError,
    size_limits,
)
from ..core.texts import LONGEST_LINE, LONGEST_NOTE, LONGEST_REVISION, brief, unfit
from ..places import SHIPPED, stock_list
from ..report.compare import comparison_report, to_compare_json
from ..report.compare_words import Pair
from ..report.html import to_html
from ..report.job import Job
from ..report.json_file import FORMAT, FORMAT_VERSION, cuts_record
from .papers import job_from_values, write_together
from .scenario import ScenarioError, parsed, scenario_from, wishes_from

#: File name → what it holds, in the order of writing.
PAPERS = {"compare.html": "the comparison for a browser", "compare.json": "its exact numbers"}
#: Numbers of a report made again may differ by so much (mm, degrees, kg) on another machine.
_NOISE = 1e-6
_OLDER = say("It was written by another version of Louverwright, which lays out the same parameters otherwise. Compare with "
             "the version that wrote it, or write that report again.")


def read_state(path: Path) -> Job:
    """The job of a scenario file, or of a cuts.json that was written earlier.

    Raises ScenarioError with every finding, each under the file's name.
    """
    return _job(path, parsed(path))


def read_report(path: Path) -> Job:
    """The job of a cuts.json alone; a scenario is refused.  Raises ScenarioError as ``read_state`` does."""
    data = parsed(path)
    if not isinstance(data, Mapping) or "format" not in data:
        raise ScenarioError([(path.name, say("It holds no exact numbers of a report. Choose a cuts.json."))])
    return _job(path, data)


def _job(path: Path, data: Any) -> Job:
    """The job of parsed JSON; findings under the file's name."""
    try:
        if isinstance(data, Mapping) and "format" in data:
            return job_from_record(data)
        scenario = scenario_from(data, path.parent)
        return job_from_values(scenario.values, scenario.revision, scenario.folder, parts=scenario.parts)
    except (ScenarioError, StockListError) as error:
        findings = list(error.findings)
    except SpecError as error:
        findings = [(f.key, f.sentence) for f in error.findings]
    raise ScenarioError([(f"{path.name}: {key}" if key else path.name, sentence) for key, sentence in findings])


def job_from_record(record: Mapping[str, Any]) -> Job:
    """The job that a cuts.json was written from, made again from its parameters.

    Raises ScenarioError for another format, for parameters that are not known, and where the report made again would not
    be the one in the file; SpecError for parameters that cannot be built.
    """
    if record.get("format") != FORMAT or record.get("format_version") != FORMAT_VERSION:
        raise ScenarioError([("format", say("It must be “{format}”, version {format_version}: a cuts.json of a report.",
                                            format=FORMAT, format_version=FORMAT_VERSION))])
    given = record.get("parameters")
    if not isinstance(given, Mapping):
        raise ScenarioError([("parameters", say("It must be an object of names and values."))])
    unknown = [(f"parameters.{brief(name)}", say("It is not a parameter of this version."))
               for name in given if name not in BY_NAME]
    values, stock = _values_and_stock(given, unknown)
    parts = _wishes(record.get("part_wishes", {}), unknown)
    if unknown:
        raise ScenarioError(unknown)
    job = Job(checked_spec(values, stock, parts), _line(record, "date", LONGEST_LINE),
              _line(record, "revision", LONGEST_REVISION), __version__)
    _require_same(record, job)
    return job


def _line(record: Mapping[str, Any], key: str, longest: int) -> str:
    """A text of the file.  Raises ScenarioError for one that cannot be printed."""
    text = record.get(key, "")
    other = say("it is no text"), say("Choose the report as it was written.")
    fault = unfit(text, longest) if isinstance(text, str) else other
    if fault:
        raise ScenarioError([(key, say("This cannot be printed: {limit}. {cure}", limit=fault[0], cure=fault[1]))])
    return str(text)


def _values_and_stock(given: Mapping[str, Any], findings: list[tuple[str, str]]) -> tuple[dict[str, Any], StockList]:
    """Values with the very items of stock that the report was made with, and a list to find the others in."""
    values = dict(given)
    for name in [name for name in given if name in BY_NAME and BY_NAME[name].kind == STOCK_KIND]:
        values[name] = _stock(given[name])
        if values[name] is None:
            findings.append((f"parameters.{name}", say("It is not an item of stock.")))
    name = str(given.get("stock_list", ""))
    return values, stock_list(name if name in SHIPPED else SHIPPED[0])


def _wishes(given: Any, findings: list[tuple[str, str]]) -> Wishes:
    """The wishes that a report was made with, own stock as its very item; reports of before there were any have none."""
    if not isinstance(given, Mapping):
        return wishes_from(given, findings)
    own: dict[str, Stock] = {}
    plain: dict[str, Any] = dict(given)
    for kind, told in given.items():
        if isinstance(told, Mapping) and isinstance(told.get(STOCK), Mapping):
            item = _stock(told[STOCK])
            if item is None:
                findings.append((f"part_wishes.{kind}.{STOCK}", "It is not an item of stock."))
            else:
                own[kind] = item
            plain[kind] = {**told, STOCK: ""}
    wishes = wishes_from(plain, findings)
    return {kind: replace(wish, stock=own.get(kind, wish.stock)) for kind, wish in wishes.items()}


def _stock(given: Any) -> Stock | None:
    try:
        item = Stock(**{**given, "lengths": tuple(map(float, given["lengths"]))})
        thin, thick = size_limits(THICKNESS, item.form)
        narrow, wide = size_limits(WIDTH, item.form)
        good = (item.form in FORMS and isinstance(item.name, str) and isinstance(item.material, str) and bool(item.lengths)
                and _within(item.thickness, thin, thick) and _within(item.width, narrow, wide)
                and _within(item.density, 1.0, 2.0 * HEAVIEST) and _within(item.moisture, 0.0, WETTEST)
                and all(_within(each, SHORTEST, LONGEST) for each in item.lengths)
                and unfit(item.name + item.material, LONGEST_NOTE) is None)
    except (TypeError, ValueError, KeyError, OverflowError):
        return None
    return item if good else None


def _within(value: Any, least: float, most: float) -> bool:
    return isinstance(value, (int, float)) and not isinstance(value, bool) and least <= value <= most


def _require_same(record: Mapping[str, Any], job: Job) -> None:
    """Refuses a report that would not come out the same: what was cut by it is then not known."""
    if record.get("fingerprint") != job.fingerprint:
        raise ScenarioError([("fingerprint", say("The file says {told}, and its parameters make model {fingerprint}: "
                                                 "they were changed after the report was written, or another version of "
                                                 "Louverwright wrote it. Choose the report as it was written.",
                                                 told=brief(record.get("fingerprint")), fingerprint=job.fingerprint))])
    made = {part["mark"]: _cut_data(part) for part in cuts_record(job)["parts"]}
    try:
        told = {part["mark"]: _cut_data(part) for part in record["parts"]}
    except (TypeError, KeyError, AttributeError):
        raise ScenarioError([("parts", say("They are not the parts of a report."))]) from None
    other = [mark for mark in dict.fromkeys([*told, *made]) if not _alike(told.get(mark), made.get(mark))]
    if other:
        raise ScenarioError([("parts", say("{marks} would be cut otherwise today. {older}",
                                           marks=", ".join(other[:8]) + (" …" if len(other) > 8 else ""), older=_OLDER))])


def _cut_data(part: Mapping[str, Any]) -> Any:
    """What a part of the file is cut by, and for which pieces."""
    wastes = [(cut.get("waste"), cut.get("bore")) for cut in part["cuts"]]
    return [list(part["blank"]), wastes, sorted(piece["id"] for piece in part["pieces"])]


def _alike(a: Any, b: Any) -> bool:
    if isinstance(a, Mapping) and isinstance(b, Mapping):
        return a.keys() == b.keys() and all(_alike(a[key], b[key]) for key in a)
    if isinstance(a, (list, tuple)) and isinstance(b, (list, tuple)):
        return len(a) == len(b) and all(map(_alike, a, b))
    if isinstance(a, (int, float)) and isinstance(b, (int, float)):
        return abs(a - b) < _NOISE
    return bool(a == b)


def write_comparison(pair: Pair, folder: Path, names: Iterable[str] = tuple(PAPERS)) -> list[Path]:
    """Writes ``compare.html`` and ``compare.json`` into ``folder`` (made if need be).  Raises OSError."""
    makers: dict[str, Callable[[Path], object]] = {
        "compare.html": lambda path: path.write_text(to_html(comparison_report(pair), pair.after.spec.paper_size),
                                                     encoding="utf-8"),
        "compare.json": lambda path: path.write_text(to_compare_json(pair), encoding="utf-8"),
    }
    return write_together(folder, {name: makers[name] for name in names})
