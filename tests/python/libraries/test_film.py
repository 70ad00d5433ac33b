"""Film against SciPy: the bearing by another discretisation, the asperity integrals by two other ways."""

from __future__ import annotations

import math

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.integrate import quad
from scipy.sparse import diags, identity, kron
from scipy.sparse.linalg import spsolve
from scipy.special import gamma, pbdv

from pinfilm import film

AROUND, ALONG = 144, 16


def bearing(e: float, length_to_diameter: float) -> tuple[float, float]:
    """Return Sommerfeld number and attitude (degrees) from Vogelpohl's form of the Reynolds equation.

    With P = M/H^1.5 it reads M'' + (D/L)² M_zz − M (H^1.5)''/H^1.5 = 6 H'/H^1.5: second differences of M on nodes,
    where the library balances flows of P over cells. The rupture is the complementarity M ≥ 0, found by
    exchanging nodes.
    """
    step = 2 * math.pi / AROUND
    theta = step * np.arange(1, AROUND)  # ambient at the widest gap, 0 and 2π
    deep = 1.0 / ALONG  # half the length, from the middle (mirror) to the end (ambient)
    h = 1 + e * np.cos(theta)
    h1, h2 = -e * np.sin(theta), -e * np.cos(theta)
    curve = (1.5 * h2 * h**0.5 + 0.75 * h1**2 / h**0.5) / h**1.5
    around = diags([1.0, -2.0, 1.0], [-1, 0, 1], shape=(AROUND - 1, AROUND - 1)) / step**2 - diags(curve)
    along = diags([1.0, -2.0, 1.0], [-1, 0, 1], shape=(ALONG, ALONG)).tolil()
    along[0, 1] = 2.0
    along = along / (deep * length_to_diameter) ** 2
    matrix = -(kron(around, identity(ALONG)) + kron(identity(AROUND - 1), along)).tocsr()
    right = np.repeat(-6 * h1 / h**1.5, ALONG)
    under = np.repeat(theta < 1.2 * math.pi, ALONG)
    for _ in range(60):
        m = np.zeros(len(right))
        m[under] = spsolve(matrix[under][:, under].tocsc(), right[under])
        inflow = right - matrix @ m
        after = np.where(under, m > 0, inflow > 1e-9)
        if (after == under).all():
            break
        under = after
    else:
        pytest.fail("the independent solution did not settle")
    p = m.reshape(AROUND - 1, ALONG) / h[:, None] ** 1.5
    weight = np.full(ALONG, deep)
    weight[0] /= 2  # trapezoids from the middle; the end is ambient
    line = p @ weight
    centres, across = -(line * np.cos(theta)).sum() * step, (line * np.sin(theta)).sum() * step
    return 1 / (math.pi * math.hypot(centres, across)), math.degrees(math.atan2(across, centres))


@settings(max_examples=200)
@given(e=st.floats(0.1, 0.9), length_to_diameter=st.floats(0.4, 3.0))
def test_reynolds_bearing(e: float, length_to_diameter: float) -> None:
    sommerfeld, attitude = bearing(e, length_to_diameter)
    ours = film.reynolds_bearing(e, length_to_diameter)
    # the grids' own errors: about 1 % of this coarse one where the film is narrow, 0.3 % of the library's
    assert ours.sommerfeld == pytest.approx(sommerfeld, rel=0.015)
    assert ours.attitude_deg == pytest.approx(attitude, abs=0.5)


@settings(max_examples=300)
@given(height=st.floats(-5, 8), order=st.floats(0, 6))
def test_asperity_integral_by_quadrature(height: float, order: float) -> None:
    def integrand(u: float) -> float:
        return u**order * math.exp(-0.5 * (u + height) ** 2)

    peak = max(0.0, -height)
    pieces = ((0, peak + 1), (peak + 1, peak + 40))
    parts = [quad(integrand, a, b, epsabs=0, epsrel=1e-11, limit=200)[0] for a, b in pieces]
    assert film.asperity_integral(height, order) == pytest.approx(sum(parts) / math.sqrt(2 * math.pi), rel=1e-8)


@settings(max_examples=300)
@given(height=st.floats(-5, 8), order=st.floats(0, 6))
def test_asperity_integral_is_a_parabolic_cylinder_function(height: float, order: float) -> None:
    """F_n(H) = Γ(n + 1) exp(−H²/4) D_(−n−1)(H)/√(2π)."""
    cylinder = pbdv(-order - 1, height)[0]
    theirs = gamma(order + 1) * math.exp(-height * height / 4) * cylinder / math.sqrt(2 * math.pi)
    assert film.asperity_integral(height, order) == pytest.approx(theirs, rel=1e-7)
