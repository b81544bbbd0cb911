"""A slice of ``tests/random_vents.py --kernel 1``: random vents' solids are sound, and cuts.json says the same as they do."""

from __future__ import annotations

import json
import sys
from pathlib import Path

sys.path.append(str(Path(__file__).resolve().parent.parent))
import random_vents
from test_checks import LISTS, SORTS

from louverwright.core.checks import checked_spec


def test_a_random_vent_is_sound_and_its_papers_say_what_it_is() -> None:
    refused, built, _, found = random_vents.run(1, 20261126, 1.0, kernel=1)
    assert found == [] and built == 1 and refused > 0


def test_the_papers_of_a_vent_of_another_sort_are_those_of_its_solids() -> None:
    """The sort that the measuring once took for wrong: triangles of sheathing without an edge along the grain."""
    stock, values = SORTS["hexagon"]
    spec = checked_spec({**values, "sheathing_grain": "up the slope"}, LISTS[stock])
    assert random_vents.paper_faults(spec) == []


def test_a_paper_that_is_off_would_be_found(monkeypatch) -> None:
    stock, values = SORTS["hexagon"]
    spec = checked_spec(values, LISTS[stock])
    real = random_vents.to_json

    def off(job) -> str:
        record = json.loads(real(job))
        (cut, other) = [cut for part in record["parts"] for cut in part["cuts"] if cut["kind"] == "crosscut"][:2]
        cut["mitre"] += 0.02
        other["waste"][0]["offset"] += 0.02
        return json.dumps(record)

    monkeypatch.setattr(random_vents, "to_json", off)
    found = random_vents.paper_faults(spec)
    assert any(fault.startswith("replay") for fault in found) and any(fault.startswith("angle") for fault in found)
