"""Drawings whose words lie on nothing, and values that no line breaks."""

from __future__ import annotations

import re
import sys
from itertools import pairwise
from pathlib import Path

import pytest

sys.path.append(str(Path(__file__).resolve().parents[1] / "core"))
from making import EXAMPLES, job_of
from records import strings

from louverwright.report.board_drawing import board_drawing
from louverwright.report.drawing import Label
from louverwright.report.job import Job
from louverwright.report.json_file import cuts_record
from louverwright.report.lettering import Box, Taken, crosses, lettered, overlap
from louverwright.report.seat_words import seats
from louverwright.report.strokes import CAP_HEIGHT, Letters, Stroke, primitives, text_width
from louverwright.report.words import how_to_read


def box(letters: Letters) -> Box:
    """A text's own room, level or upright, a little less than its estimate."""
    width = text_width(letters.text, letters.size)
    start = {"start": 0.0, "middle": -width / 2.0, "end": -width}[letters.anchor]
    along, up = (start + 0.15, start + width - 0.15), (0.05, CAP_HEIGHT * letters.size - 0.1)
    x, y = letters.at
    if letters.rotation:
        return (x - up[1], y + along[0], x - up[0], y + along[1])
    return (x + along[0], y + up[0], x + along[1], y + up[1])


@pytest.mark.parametrize("name", EXAMPLES)
def test_no_word_of_a_drawing_lies_on_a_line_or_on_another_word(name: str) -> None:
    job = job_of(name)
    for part in job.assembly.parts:
        painted = primitives(board_drawing(part, part.name, job.writer, seats(part, job.assembly)))
        boxes = [(each.text, box(each)) for each in painted if isinstance(each, Letters)]
        lines = [line for each in painted if isinstance(each, Stroke) for line in pairwise(each.points)]
        for i, (text, own) in enumerate(boxes):
            assert not [other for other, its in boxes[i + 1:] if overlap(own, its)], (part.mark, text)
            assert not any(crosses(line, own) for line in lines), (part.mark, text)


def test_a_letter_goes_outward_where_that_is_free_and_elsewhere_where_it_is_not() -> None:
    points = [("a", (0.0, 0.0)), ("b", (20.0, 0.0))]
    free = lettered(points, 6.0, Taken(()))
    assert [round(label.y, 2) for label in free] == [-0.75, -0.75] and free[0].x < 0.0 < 20.0 < free[1].x
    moved = lettered(points, 6.0, Taken((Label(22.0, -0.7, "taken", 6.0, "middle"),)))
    assert moved[0] == free[0] and moved[1] != free[1]


@pytest.mark.parametrize("name", EXAMPLES)
def test_no_line_can_break_within_a_value(name: str) -> None:
    """Whole inches and their fraction, a number and its unit, a point's two measures stay on one line in every writer."""
    job: Job = job_of(name)
    shown = [text for part in cuts_record(job)["parts"] for text in strings(part["shown"])]
    assert shown and any(re.search(r"\d\u00a0(mm|\d+/\d+\")", text) for text in shown)
    assert not [text for text in shown if re.search(r"\d (mm\b|\d+/\d+\")| \||\| ", text)]


def test_the_drawings_circles_are_explained() -> None:
    assert any("open circle" in text for text in how_to_read(job_of(EXAMPLES[0])))
