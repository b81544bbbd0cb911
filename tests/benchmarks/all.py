# SPDX-License-Identifier: LGPL-2.1-or-later
"""Runs every benchmark and prints one table; with --write it goes into DEVELOPERS.md, between its two marks.

    /usr/bin/python3 tests/benchmarks/all.py [--runs 7] [--json FILE] [--write]

Ratios are of one run in one process; times depend on the machine, which the table describes.  Needs FreeCAD and Xvfb.
"""

from __future__ import annotations

import argparse
import json
import os
import platform
import subprocess
import sys
import tempfile
from pathlib import Path
from typing import Any

HERE = Path(__file__).resolve().parent
PAGE = HERE.parents[1] / "DEVELOPERS.md"
#: What the table stands between.
BEGIN, END = "<!-- benchmarks: made by tests/benchmarks/all.py --write -->", "<!-- end of benchmarks -->"
DISPLAY = ["xvfb-run", "-a", "-s", "-screen 0 1600x1000x24"]


def run(name: str, *options: str, window: bool = False) -> dict[str, Any]:
    """What one benchmark found."""
    with tempfile.TemporaryDirectory() as folder:
        found = Path(folder) / "found.json"
        command = [*(DISPLAY if window else []), sys.executable, str(HERE / f"{name}.py"), *options, "--json", str(found)]
        subprocess.run(command, check=True)
        record: dict[str, Any] = json.loads(found.read_text(encoding="utf-8"))
        return record


def machine() -> str:
    """The machine in a line."""
    info = Path("/proc/cpuinfo").read_text(encoding="utf-8") if Path("/proc/cpuinfo").exists() else ""
    models = [line.split(":", 1)[1].strip() for line in info.splitlines() if line.startswith("model name")]
    return f"{models[0] if models else platform.processor()}, {os.cpu_count()} cores, Python {platform.python_version()}"


def rows(model: dict[str, Any], drag: dict[str, Any], start: dict[str, Any]) -> list[tuple[str, str, str]]:
    """The table: what, found, asked."""
    figures = model["figures"]
    told = [(name, f"{value:.0f} ms", "") for name, value in figures.items() if not name.endswith(("MB", "a mark", "a plane"))]
    told += [(each["name"], f"{each['value']:.2f}", _asked(each["value"], each["limit"])) for each in model["ratios"]]
    for name, each in drag.items():
        told.append((f"a picture while {name} is dragged", f"median {each['median']:.0f} ms, p95 {each['p95']:.0f} ms",
                     _asked(each["median"], 50.0, " ms")))
    told += [(name, f"{each['difference']:.0f} ms of {each['with']:.0f} ms", _asked(each["difference"], 50.0, " ms"))
             for name, each in start.items()]
    return told


def _asked(value: float, limit: float, unit: str = "") -> str:
    return f"≤ {limit:.2f}{unit}" + ("" if value <= limit else ", not held")


def table(found: list[tuple[str, str, str]]) -> str:
    """The table in Markdown."""
    lines = [f"| {what} | {value} | {asked} |" for what, value, asked in found]
    return "\n".join((f"Measured on {machine()}.", "", "| what | found | asked |", "|---|---|---|", *lines))


def main() -> int:
    """Reads the command line, runs, prints, writes."""
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--runs", type=int, default=7)
    parser.add_argument("--json", type=Path)
    parser.add_argument("--write", action="store_true", help="put the table into DEVELOPERS.md")
    options = parser.parse_args()
    record = {"machine": machine(), "model": run("model", "--runs", str(options.runs)),
              "drag": run("drag", window=True), "start": run("startup", "--runs", str(options.runs), window=True)}
    text = table(rows(record["model"], record["drag"], record["start"]))
    print(text)
    if options.json:
        options.json.write_text(json.dumps(record, indent=1) + "\n", encoding="utf-8")
    if options.write:
        before, _, rest = PAGE.read_text(encoding="utf-8").partition(BEGIN)
        PAGE.write_text(f"{before}{BEGIN}\n{text}\n{END}{rest.partition(END)[2]}", encoding="utf-8")
    return 0


if __name__ == "__main__":
    raise SystemExit(main())
