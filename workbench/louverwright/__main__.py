# SPDX-License-Identifier: LGPL-2.1-or-later
"""``python3 -m louverwright``: build, report on, check, compare and mend vents from scenario files, without a window."""

from __future__ import annotations

import argparse
import codecs
import io
import sys
import time
from pathlib import Path

from .core.cutting import LayoutError
from .core.mend import SIZE_NAMES, MendError
from .core.spec import SpecError
from .core.stock import StockListError
from .core.texts import visible
from .exchange.build import ModelError, write_all
from .exchange.compare import read_state, write_comparison
from .exchange.host import NoFreeCAD, add_paths, load_freecad, run_again_in_system_python
from .exchange.mend import repair_of, write_mending
from .exchange.paper_sets import BY_NAME, SETS, write_sets
from .exchange.papers import job_from_values, write_papers
from .exchange.pdf import PdfError, qt_modules
from .exchange.reference import parameters_json, parameters_page, parameters_text, scenario_schema
from .exchange.scenario import Scenario, ScenarioError, read_scenario
from .report.compare import screen_lines
from .report.compare_words import Pair
from .report.job import Job
from .report.mend import screen_lines as mend_lines

BAD_SCENARIO, FAILED = 2, 1


def main(arguments: list[str] | None = None) -> int:
    """Runs one verb; the process's exit status: 0, 1 for a failure of the machine, 2 for a bad scenario."""
    _print_what_the_terminal_can()
    options = _parser().parse_args(arguments)
    try:
        return int(options.run(options))
    except (ScenarioError, StockListError) as error:
        return _refuse([f"{key}: {sentence}" for key, sentence in error.findings])
    except SpecError as error:
        return _refuse([f"{f.key}: {f.sentence}" if f.key else f.sentence for f in error.findings])
    except MendError as error:
        return _refuse([f"{key}: {sentence}" for key, sentence in error.findings], "This part cannot be mended as told:")
    except LayoutError as error:
        return _refuse([f"the parts do not fit each other: {error} Take sizes or stock nearer to the usual ones."])
    except BrokenPipeError:
        raise
    except OSError as error:
        return _fail(f"{error.filename or 'A file'} cannot be written: {error.strerror or error}. What was there before is "
                     "as it was.")
    except (NoFreeCAD, PdfError, ModelError) as error:
        return _fail(str(error))


def _fail(sentence: str) -> int:
    print(f"louverwright: {visible(sentence)}", file=sys.stderr)
    return FAILED


def _print_what_the_terminal_can() -> None:
    """A terminal that knows fewer characters than we print gets spaces for spaces and question marks, not an error."""
    codecs.register_error("louverwright", _stand_in)
    for stream in (sys.stdout, sys.stderr):
        if isinstance(stream, io.TextIOWrapper):
            stream.reconfigure(errors="louverwright")


def _stand_in(error: UnicodeError) -> tuple[str, int]:
    if not isinstance(error, UnicodeEncodeError):
        raise error
    lost = error.object[error.start:error.end]
    return "".join(" " if each.isspace() else "?" for each in lost), error.end


def _refuse(sentences: list[str], head: str = "This vent cannot be built:") -> int:
    print(head, file=sys.stderr)
    for sentence in sentences:
        print(f"  - {visible(sentence)}", file=sys.stderr)
    return BAD_SCENARIO


def _parser() -> argparse.ArgumentParser:
    parser = argparse.ArgumentParser(prog="louverwright", description="Louvered roof vents: model and cut report.")
    verbs = parser.add_subparsers(required=True, metavar="VERB")
    for name, run, text in (("build", _build, "model (FCStd, STEP) and report (HTML, PDF, CSV, JSON)"),
                            ("report", _report, "the report alone"),
                            ("papers", _papers, "every set of papers, or those named")):
        verb = verbs.add_parser(name, help=text)
        verb.add_argument("scenario", type=Path)
        verb.add_argument("--out", type=Path, required=True, help="folder to write to")
        verb.set_defaults(run=run)
    verb.add_argument("--only", default=",".join(BY_NAME), metavar="SET,SET",
                      help="; ".join(f"{each.name}: {each.words}" for each in SETS))
    verb = verbs.add_parser("check", help="say whether a scenario can be built, and what comes of it")
    verb.add_argument("scenario", type=Path)
    verb.set_defaults(run=_check)
    verb = verbs.add_parser("compare", help="say what changed between two states, and which pieces already cut can be kept")
    for name, text in (("before", "the earlier state"), ("after", "the later state")):
        verb.add_argument(name, type=Path, help=f"{text}: a scenario, or the cuts.json of a report")
    verb.add_argument("--out", type=Path, required=True, help="folder to write to")
    verb.set_defaults(run=_compare)
    verb = verbs.add_parser("mend", help="say what can be done about a part that came out wrong")
    verb.add_argument("scenario", type=Path, help="a scenario, or the cuts.json of a report")
    verb.add_argument("--part", required=True, metavar="MARK", help="the part's mark, such as L9")
    for name in SIZE_NAMES:
        verb.add_argument(f"--{name}", default="", help=f"the finished piece's real {name}, if it is not as drawn")
    verb.add_argument("--count", type=int, default=0, help="how many of its pieces; all if not given")
    verb.add_argument("--lost", action="store_true", help="the pieces are spoiled, lost or were left out")
    verb.add_argument("--cut", default="", metavar="MARK,MARK", help="parts that are cut already and must not change")
    verb.add_argument("--out", type=Path, help="folder to write mend.html and mend.json to")
    verb.set_defaults(run=_mend)
    verb = verbs.add_parser("parameters", help="list every parameter")
    for form, text in (("json", "as JSON"), ("markdown", "as resources/parameters.md"),
                       ("schema", "as the JSON Schema of scenario files, resources/scenario.schema.json")):
        verb.add_argument(f"--{form}", dest="form", action="store_const", const=form, help=text)
    verb.set_defaults(run=_parameters)
    return parser


def _job(options: argparse.Namespace) -> tuple[Scenario, Job]:
    _say(f"reading {options.scenario.name}")
    scenario = read_scenario(options.scenario)
    job = job_from_values(scenario.values, scenario.revision, scenario.folder, parts=scenario.parts)
    _say(f"laid out: {len(job.assembly.pieces)} pieces under {len(job.assembly.parts)} marks, "
         f"model {job.fingerprint}")
    return scenario, job


def _say(text: str) -> None:
    print(visible(text), flush=True)


def _build(options: argparse.Namespace) -> int:
    started = time.monotonic()
    missing = _missing_freecad()
    scenario, job = _job(options)
    if missing:
        raise missing
    written = write_all(job, scenario, options.out, _say)
    _say(f"done in {time.monotonic() - started:.1f} s: {options.out}: {', '.join(path.name for path in written)}")
    return 0


def _missing_freecad() -> Exception | None:
    """None where FreeCAD and its Qt can be used, from this Python or after starting again in the system's."""
    try:
        load_freecad()
        add_paths()
        qt_modules()
    except (NoFreeCAD, PdfError) as error:
        run_again_in_system_python()
        return error
    return None


def _report(options: argparse.Namespace) -> int:
    add_paths()
    try:
        qt_modules()
    except PdfError:
        run_again_in_system_python()
    _, job = _job(options)
    written = write_papers(job, options.out)
    _say(f"done: {options.out}: {', '.join(path.name for path in written)}")
    return 0


def _papers(options: argparse.Namespace) -> int:
    names = [name.strip() for name in options.only.split(",")]
    unknown = [name for name in names if name not in BY_NAME]
    if unknown:
        return _refuse([f"--only: there is no set “{name}”; known are {', '.join(BY_NAME)}." for name in unknown],
                       "These papers cannot be written:")
    missing = _missing_freecad()
    _, job = _job(options)
    if missing:
        raise missing
    started = time.monotonic()
    written = write_sets(job, options.out, names)
    _say(f"done in {time.monotonic() - started:.1f} s: {options.out}: {', '.join(path.name for path in written)}")
    return 0


def _check(options: argparse.Namespace) -> int:
    _, job = _job(options)
    figures = job.figures
    _say(f"{job.writer.length(figures['overall_width'])} wide, {job.writer.length(figures['overall_height'])} high, "
         f"{job.writer.weight(figures['total_weight'])}, free area {job.writer.area(figures['free_area'])}")
    _say("It can be built.")
    return 0


def _compare(options: argparse.Namespace) -> int:
    jobs: list[Job] = []
    findings: list[tuple[str, str]] = []
    for path in (options.before, options.after):
        try:
            jobs.append(read_state(path))
        except ScenarioError as error:
            findings += error.findings
    if findings:
        return _refuse([f"{key}: {sentence}" for key, sentence in findings], "These vents cannot be compared:")
    pair = Pair(*jobs)
    for line in screen_lines(pair):
        _say(line)
    written = write_comparison(pair, options.out)
    _say(f"done: {options.out}: {', '.join(path.name for path in written)}")
    return 0


def _mend(options: argparse.Namespace) -> int:
    sizes = {name: getattr(options, name) for name in SIZE_NAMES}
    repair = repair_of(read_state(options.scenario), options.part, sizes, options.count, options.lost, options.cut)
    for line in mend_lines(repair):
        _say(line)
    if options.out:
        written = write_mending(repair, options.out)
        _say(f"done: {options.out}: {', '.join(path.name for path in written)}")
    return 0


def _parameters(options: argparse.Namespace) -> int:
    text = {"json": parameters_json, "markdown": parameters_page, "schema": scenario_schema}.get(options.form)
    print(text() if text else parameters_text(), end="")
    return 0


if __name__ == "__main__":
    try:
        status = main()
        sys.stdout.flush()
    except BrokenPipeError:  # the reader has seen enough, as with "| head"
        sys.stdout = None  # type: ignore[assignment]
        status = FAILED
    sys.exit(status)
