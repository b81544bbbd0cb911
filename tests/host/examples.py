# SPDX-License-Identifier: LGPL-2.1-or-later
"""The shipped examples with the model's solids, and what the kernel says of them."""

from __future__ import annotations

import sys
from dataclasses import dataclass
from functools import lru_cache
from pathlib import Path
from typing import Any

import numpy as np
import Part

sys.path.append(str(Path(__file__).resolve().parent.parent / "core"))
from making import EXAMPLES, ROOT, job_of, record_of, scenario_of

from louverwright.exchange.scenario import Scenario
from louverwright.features.shapes import piece_shapes
from louverwright.report.job import Job

__all__ = ["EXAMPLES", "ROOT", "Example", "Plate", "corners", "example", "local_corners", "plates"]


@dataclass(frozen=True)
class Example:
    """One example: scenario, job, cuts.json read again, and the model's solids by the pieces' ids."""

    name: str
    scenario: Scenario
    job: Job
    record: dict[str, Any]
    solids: dict[str, Part.Shape]


@lru_cache(maxsize=16)
def example(name: str) -> Example:
    """A shipped example."""
    job = job_of(name)
    solids = {piece.id: shape for part in job.assembly.parts
              for piece, shape in zip(part.pieces, piece_shapes(part), strict=True)}
    return Example(name, scenario_of(name), job, record_of(name), solids)


# ---- what the kernel says of a solid


def round_faces(shape: Part.Shape) -> list[Part.Face]:
    """The walls of the round holes."""
    return [face for face in shape.Faces if isinstance(face.Surface, Part.Cylinder)]


def corners(shape: Part.Shape) -> np.ndarray:
    """The corners, one a row; a round hole's seam has an end but no corner."""
    seams = {vertex.hashCode() for face in round_faces(shape) for vertex in face.Vertexes}
    return np.array([vertex.Point for vertex in shape.Vertexes if vertex.hashCode() not in seams])


def frame_of(placement: dict[str, list[float]]) -> tuple[np.ndarray, np.ndarray]:
    """A placement of cuts.json: origin, and the axes as rows."""
    return np.array(placement["origin"]), np.array([placement["x"], placement["y"], placement["z"]])


def local_corners(shape: Part.Shape, placement: dict[str, list[float]]) -> np.ndarray:
    """The corners of a placed solid in its board frame."""
    origin, axes = frame_of(placement)
    return (corners(shape) - origin) @ axes.T


@dataclass(frozen=True)
class Plate:
    """A plane face: outward unit normal, distance of its plane from the origin along it, and the face."""

    normal: np.ndarray
    offset: float
    face: Part.Face


def plates(shape: Part.Shape) -> list[Plate]:
    """The plane faces of a solid as the kernel has them."""
    out = []
    for face in shape.Faces:
        if isinstance(face.Surface, Part.Plane):
            u0, u1, v0, v1 = face.ParameterRange
            normal = np.array(face.normalAt((u0 + u1) / 2.0, (v0 + v1) / 2.0))
            out.append(Plate(normal, float(normal @ np.array(face.Vertexes[0].Point)), face))
    return out
