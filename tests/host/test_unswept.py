# SPDX-License-Identifier: LGPL-2.1-or-later
"""The rest of Python's search for garbage ends when it should, whatever happens meanwhile."""

from __future__ import annotations

import gc

import pytest

from louverwright.core.spec import SpecError
from louverwright.features.model import spec_of
from louverwright.features.unswept import unswept
from louverwright.features.vent import make_vent


def test_the_search_rests_and_is_taken_up_again() -> None:
    assert gc.isenabled()
    with unswept():
        assert not gc.isenabled()
        with unswept():
            assert not gc.isenabled()
        assert not gc.isenabled(), "an inner rest does not end the outer"
    assert gc.isenabled()
    with pytest.raises(ValueError), unswept():
        raise ValueError
    assert gc.isenabled()


def test_one_that_others_have_stopped_stays_stopped() -> None:
    gc.disable()
    try:
        with unswept():
            pass
        assert not gc.isenabled()
    finally:
        gc.enable()


def test_a_refused_vent_leaves_the_search_on(document) -> None:
    vent = make_vent(document)
    vent.PitchLeft = 70.0
    with pytest.raises(SpecError):
        spec_of(vent)
    assert gc.isenabled()
