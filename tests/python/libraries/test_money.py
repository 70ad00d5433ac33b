"""Present value and rate of return against numpy-financial and pyxirr."""

from __future__ import annotations

import numpy as np
import numpy_financial
import pytest
import pyxirr
from hypothesis import given, settings
from hypothesis import strategies as st

from pinfilm import InputError, economics

MANY = settings(max_examples=400)
MONEY = st.integers(-10_000_000, 10_000_000).map(lambda cents: cents / 100)
FLOWS = st.lists(MONEY, min_size=2, max_size=15)


@MANY
@given(rate=st.floats(-0.5, 1.0), flows=FLOWS)
def test_npv(rate: float, flows: list[float]) -> None:
    scale = sum(abs(flow) * (1 + rate) ** -k for k, flow in enumerate(flows))
    ours = economics.npv(rate, flows)
    assert ours == pytest.approx(numpy_financial.npv(rate, flows), abs=1e-12 * scale + 1e-12)
    assert ours == pytest.approx(pyxirr.npv(rate, flows, start_from_zero=True), abs=1e-12 * scale + 1e-12)


@MANY
@given(invest=st.floats(100, 1e5), later=st.lists(MONEY.map(abs), min_size=1, max_size=15))
def test_irr_of_an_investment(invest: float, later: list[float]) -> None:
    flows = [-invest, *later]
    if sum(later) < 0.05 * invest:
        return  # rates near −1, where nobody's numbers mean anything
    ours = economics.irr(flows)
    assert economics.irr_status(flows) == "unique"
    # theirs where they find it: numpy-financial prefers a root of its own, pyxirr gives none at times
    for theirs in (pyxirr.irr(flows), numpy_financial.irr(flows)):
        if theirs is not None and np.isfinite(theirs):
            assert ours == pytest.approx(theirs, rel=1e-6, abs=1e-7)
    # and in any case a root
    scale = sum(abs(flow) * (1 + ours) ** -k for k, flow in enumerate(flows))
    assert numpy_financial.npv(ours, flows) == pytest.approx(0, abs=1e-9 * scale)


@MANY
@given(flows=FLOWS)
def test_every_root_of_any_flows(flows: list[float]) -> None:
    """The rates are the positive real roots of the polynomial in 1/(1 + r), as NumPy's eigenvalues find them."""
    try:
        ours = economics.irr_roots(flows)
    except InputError:
        return
    for rate in ours:
        scale = sum(abs(flow) * (1 + rate) ** -k for k, flow in enumerate(flows))
        assert numpy_financial.npv(rate, flows) == pytest.approx(0, abs=1e-6 * scale)
    roots = np.roots(flows[::-1]) if np.any(flows) else np.array([])
    apart = [x.real for x in roots if abs(x.imag) < 1e-9 * abs(x) and x.real > 1e-3]
    simple = [x for x in apart if min((abs(x - y) for y in roots if y != x), default=1.0) > 1e-3 * x]
    for x in simple:
        rate = 1 / x - 1
        if -0.99 < rate < 100:
            assert any(rate == pytest.approx(found, rel=1e-5, abs=1e-6) for found in ours)
