# SPDX-License-Identifier: LGPL-2.1-or-later
"""Whether one solid can be turned into another: a turn is looked for from corner to corner and then tried on all.

Nothing of the program's own comparing is used.  Corners are rows of an array; a solid that has round holes brings the
ends of their axes as corners more.
"""

from __future__ import annotations

from itertools import permutations

import numpy as np
from examples import corners, round_faces

#: Corners nearer than this (mm) are one.
SAME = 1e-3


def features(shape) -> np.ndarray:
    """Corners, and both ends of every round hole's axis."""
    rows = [corners(shape)]
    for face in round_faces(shape):
        axis = np.array(face.Surface.Axis)
        centre = np.array(face.CenterOfMass)
        half = face.Area / (4.0 * np.pi * face.Surface.Radius)
        rows.append(np.array([centre - half * axis, centre + half * axis]))
    return np.vstack(rows)


def mirrored(points: np.ndarray) -> np.ndarray:
    """The mirror image."""
    return points * np.array([-1.0, 1.0, 1.0])


def turn(a: np.ndarray, b: np.ndarray, grain: tuple[np.ndarray, np.ndarray] | None = None) -> np.ndarray | None:
    """A proper rotation about the middle of the corners that takes a to b, or None.

    With ``grain`` (a direction of each) only one that keeps the grain's line will do.
    """
    if len(a) != len(b):
        return None
    a, b = a - a.mean(axis=0), b - b.mean(axis=0)
    if not np.allclose(spread(a), spread(b), atol=SAME):
        return None
    first, second = base_of(a)
    frame = triad(a[first], a[second])
    reach = np.linalg.norm(b, axis=1)
    for i, j in permutations(range(len(b)), 2):
        if abs(reach[i] - np.linalg.norm(a[first])) > SAME or abs(reach[j] - np.linalg.norm(a[second])) > SAME:
            continue
        if abs(b[i] @ b[j] - a[first] @ a[second]) > SAME * (reach[i] + reach[j]):
            continue
        rotation = triad(b[i], b[j]).T @ frame
        if fits(a @ rotation.T, b) and (grain is None or abs(abs((rotation @ grain[0]) @ grain[1]) - 1.0) < 1e-6):
            return rotation
    return None


def spread(points: np.ndarray) -> np.ndarray:
    """All distances from the middle, sorted: what every turn and every mirror keeps."""
    return np.sort(np.linalg.norm(points, axis=1))


def base_of(points: np.ndarray) -> tuple[int, int]:
    """Two corners that span the largest triangle with the middle: the safest to build a frame on."""
    first = int(np.argmax(np.linalg.norm(points, axis=1)))
    second = int(np.argmax(np.linalg.norm(np.cross(points, points[first]), axis=1)))
    return first, second


def triad(p: np.ndarray, q: np.ndarray) -> np.ndarray:
    """A right-handed frame from two directions, its axes as rows."""
    x = p / np.linalg.norm(p)
    z = np.cross(p, q)
    z = z / np.linalg.norm(z)
    return np.array([x, np.cross(z, x), z])


def fits(a: np.ndarray, b: np.ndarray) -> bool:
    """True when each corner of a lies on one of b's and each of b's is taken."""
    distance = np.linalg.norm(a[:, None, :] - b[None, :, :], axis=2)
    return bool(distance.min(axis=0).max() < SAME and distance.min(axis=1).max() < SAME)
