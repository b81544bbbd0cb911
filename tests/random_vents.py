"""Random vents: every one that is accepted must build without a fault.

    python3 tests/random_vents.py --built 2000 --seed 1 --minutes 30 [--kernel 20]

Draws values as ``tests/core/test_checks.py`` does, and prints how many were refused and built, every fault with the
values that made it, and what was built of each form.  Of each vent that is accepted it proves that it is laid out with
every joint and no contact without a rule, that no two pieces share more than 1 mm³, that every piece is closed, and the rules
of fit by ``core/proof.py``: blanks within their stock, notches, dados' width and the wood between them, no idle saw cut.

With ``--kernel N`` FreeCAD (its own Python: /usr/bin/python3) makes every vent's solids and judges them sound or not, and of
every Nth vent cuts all near pairs with each other, makes every solid again from cuts.json alone, measures every saw cut's
angles on the solids, and looks for stages and pieces that nothing holds.  ``--shortest`` lets what the time allows be enough.
Ends with 1 where a fault was found or too few were built.
"""

from __future__ import annotations

import argparse
import json
import sys
import time
from collections import Counter
from itertools import combinations
from pathlib import Path
from typing import Any

ROOT = Path(__file__).resolve().parent
sys.path[:0] = [str(ROOT.parent / "workbench"), str(ROOT / "core")]

from hypothesis import HealthCheck, Phase, given, seed, settings  # noqa: E402
from proof import fit_faults, reach_faults  # noqa: E402
from test_checks import LISTS, faults, wanted  # noqa: E402

from louverwright.core.assembly import board_volume_and_centre  # noqa: E402
from louverwright.core.checks import checked_spec  # noqa: E402
from louverwright.core.layout import layout  # noqa: E402
from louverwright.core.spec import Spec, SpecError  # noqa: E402
from louverwright.report.job import Job  # noqa: E402
from louverwright.report.json_file import to_json  # noqa: E402

#: Solids may share this much (mm³), as in the tests' dry fit.
SHARED = 1.0


def form_of(values: dict[str, Any]) -> str:
    """What sort of vent the values are, for the count."""
    sides = {6: "hexagon", 8: "octagon"}.get(values.get("sides", 4), "rectangle" if values.get("length") else "square")
    facing = ", corner first" if values.get("facing") == "corner" else ""
    return f"{sides}{facing}, {values.get('roof_form', 'hip')}, {values.get('seat', 'ridge')}"


def kernel_faults(spec: Spec, every_pair: bool) -> list[str]:
    """What FreeCAD's kernel finds wrong with a vent's solids: soundness and volume, and shared wood where it is asked."""
    from louverwright.features.shapes import board_shape, piece_shapes

    found: list[str] = []
    solids = []
    for part in layout(spec).parts:
        shape = board_shape(part.board)
        wanted = board_volume_and_centre(part.board)[0]
        if not (shape.isValid() and shape.isClosed() and len(shape.Solids) == 1):
            found.append(f"{part.mark}: the kernel calls its solid faulty")
        elif abs(shape.Volume - wanted) > 1e-6 * wanted:
            found.append(f"{part.mark}: {shape.Volume:.3f} mm³ by the kernel, {wanted:.3f} by the core")
        if every_pair:
            solids += list(zip([piece.id for piece in part.pieces], piece_shapes(part), strict=True))
    for (a, one), (b, other) in combinations(solids, 2):
        if one.BoundBox.intersect(other.BoundBox) and (shared := one.common(other).Volume) > SHARED:
            found.append(f"{a} and {b} share {shared:.2f} mm³ by the kernel")
    return found


def paper_faults(spec: Spec) -> list[str]:
    """Where cuts.json does not give the model's solids again, or an angle in it is not the one on the solid."""
    from test_angles import rows_of, wrong
    from test_replay import replayed

    from louverwright.features.shapes import piece_shapes

    record = json.loads(to_json(Job(spec, "2000-01-01", "1", "0")))
    solids = {piece.id: shape for part in layout(spec).parts
              for piece, shape in zip(part.pieces, piece_shapes(part), strict=True)}
    found = [f"replay, {fault}" for fault in replayed(record, solids).faults]
    found += [f"angle, {fault}" for row in rows_of(record, solids) if (fault := wrong(row))]
    if {piece["id"] for part in record["parts"] for piece in part["pieces"]} != set(solids):
        found.append("cuts.json has other pieces than the model")
    return found


def load_kernel() -> None:
    """Makes FreeCAD's modules known to this Python, where they lie as Debian has them."""
    sys.path += ["/usr/lib/freecad/lib", "/usr/share/freecad/Ext", "/usr/share/freecad/Mod/Part", str(ROOT / "host")]
    import FreeCAD
    import Part

    print(f"solids by FreeCAD {'.'.join(FreeCAD.Version()[:3])}, {Part.OCC_VERSION}", flush=True)


def run(wanted_built: int, number: int, minutes: float, kernel: int = 0) -> tuple[int, int, Counter[str], list[str]]:
    """Draws until so many vents are built or the time is up: refused, built, what was built, and the faults found."""
    end = time.monotonic() + 60.0 * minutes
    built: Counter[str] = Counter()
    refused = 0
    found: list[str] = []

    def one(case: tuple[str, dict[str, Any]]) -> None:
        nonlocal refused
        if sum(built.values()) >= wanted_built or time.monotonic() > end:
            return
        name, values = case
        try:
            spec = checked_spec(values, LISTS[name])
        except SpecError:
            refused += 1
            return
        try:
            wrong = faults(spec) + fit_faults(spec)
            if kernel:
                chosen = sum(built.values()) % kernel == 0
                wrong += kernel_faults(spec, chosen) + (paper_faults(spec) + reach_faults(spec) if chosen else [])
        except Exception as error:  # a fault like any other here: it is printed, and the run fails
            wrong = [f"{type(error).__name__}: {error}"]
        built[form_of(values)] += 1
        if wrong:
            found.append(f"{name} {values}\n    " + "\n    ".join(wrong[:6]))
            print(found[-1], flush=True)

    while sum(built.values()) < wanted_built and time.monotonic() < end:
        draw = settings(max_examples=400, database=None, deadline=None, phases=[Phase.generate],
                        suppress_health_check=list(HealthCheck))(given(wanted())(one))
        seed(number)(draw)()
        number += 1
        print(f"{sum(built.values())} built, {refused} refused, {len(found)} with faults", flush=True)
    return refused, sum(built.values()), built, found


def main() -> int:
    """Reads the command line and says what came of it."""
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--built", type=int, default=2000, help="vents to build")
    parser.add_argument("--seed", type=int, default=1, help="where the drawing begins")
    parser.add_argument("--minutes", type=float, default=60.0, help="longest time")
    parser.add_argument("--kernel", type=int, default=0, help="FreeCAD judges all solids, and all pairs of each Nth vent")
    parser.add_argument("--shortest", action="store_true", help="as many as the time allows are enough, but one")
    chosen = parser.parse_args()
    if chosen.kernel:
        load_kernel()
    refused, count, forms, found = run(chosen.built, chosen.seed, chosen.minutes, chosen.kernel)
    for form, number in sorted(forms.items()):
        print(f"{number:6d}  {form}")
    print(f"{count} built, {refused} refused, {len(found)} with faults (seed {chosen.seed})")
    return 1 if found or count < (1 if chosen.shortest else chosen.built) else 0


if __name__ == "__main__":
    sys.exit(main())
