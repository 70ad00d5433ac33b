"""The reference side of the film beside the same schemes in SciPy, in one run.

2-D Reynolds equation of the bearing, 240 x 24 of the half width, active-set cavitation: ours against scipy.sparse
direct solves of the same finite-volume equations. Periodic path of a pin through the events of a circuit: ours against
scipy.integrate.solve_ivp (DOP853) on the same equations at the same tolerance. Both must give the same numbers before a
time is printed.

Run in an environment with a release build of pinfilm: ``python benches/reference.py``.
"""

from __future__ import annotations

import time
from collections.abc import Callable

import numpy as np
from scipy.integrate import solve_ivp
from scipy.optimize import brentq
from scipy.sparse import diags_array
from scipy.sparse.linalg import splu

import pinfilm

#: The peer needs seconds for each rest or turn, so only one circuit is given to it.
PEER_LINES = ("floor_now",)


def best_s(call: Callable[[], object], seconds: float = 2.0, most: int = 50) -> float:
    """Least wall time of one call."""
    times: list[float] = []
    end = time.perf_counter() + seconds
    while not times or (time.perf_counter() < end and len(times) < most):
        start = time.perf_counter()
        call()
        times.append(time.perf_counter() - start)
    return min(times)


def reynolds_sommerfeld(e: float, length_to_diameter: float, around: int = 240, along: int = 24) -> float:
    """Sommerfeld number by the same grid, scheme and active set with sparse direct solves."""
    root = np.sqrt((1 + 0.8 * e) / (1 - 0.8 * e))
    g = np.linspace(0, 2 * np.pi, around + 1)
    faces = 2 * np.arctan2(root * np.sin(g / 2), np.cos(g / 2))
    faces[-1] = 2 * np.pi
    centres = 0.5 * (faces[1:] + faces[:-1])
    z_faces = np.sin(np.linspace(0, np.pi / 2, along + 1))
    z_centres = 0.5 * (z_faces[1:] + z_faces[:-1])
    d_theta, d_zeta = np.diff(faces), np.diff(z_faces)
    h_face, h_cell = 1 + e * np.cos(faces), 1 + e * np.cos(centres)
    distance = np.empty(around + 1)
    distance[1:-1] = np.diff(centres)
    distance[0], distance[-1] = centres[0], 2 * np.pi - centres[-1]
    z_distance = np.empty(along)
    z_distance[:-1] = np.diff(z_centres)
    z_distance[-1] = 1 - z_centres[-1]
    round_ = (h_face**3 / distance)[:, None] * d_zeta[None, :]
    axial = (1 / length_to_diameter) ** 2 * (h_cell**3 * d_theta)[:, None] / z_distance[None, :]
    diagonal = round_[:-1] + round_[1:] + axial
    diagonal[:, 1:] += axial[:, :-1]
    n = around * along
    side = -axial.copy()
    side[:, -1] = 0
    matrix = diags_array(
        [diagonal.ravel(), side.ravel()[:-1], side.ravel()[:-1], -round_[1:-1].ravel(), -round_[1:-1].ravel()],
        offsets=[0, 1, -1, along, -along],
        shape=(n, n),
    ).tocsr()
    b = (-6 * np.diff(h_face))[:, None] * d_zeta[None, :]
    b = b.ravel()
    pressure = np.zeros(n)
    active = np.ones(n, dtype=bool)
    while True:
        rows = np.flatnonzero(active)
        pressure[:] = 0
        pressure[rows] = splu(matrix[rows][:, rows].tocsc()).solve(b[rows])
        residual = matrix @ pressure - b
        new = np.where(active, pressure > 0, residual < -1e-12 * np.abs(b).max())
        if np.array_equal(new, active):
            break
        active = new
    field = pressure.reshape(around, along)
    along_load = -(field * d_zeta * np.diff(np.sin(faces))[:, None]).sum()
    across = abs((field * d_zeta * np.diff(np.cos(faces))[:, None]).sum())
    return float(1 / (np.pi * np.hypot(along_load, across)))


def half_film(e: float, direction: float) -> tuple[float, float, float]:
    """Integrals of the squeezed half film, exact."""
    kk = np.sqrt((1 - e) / (1 + e))
    o = 1 - e * e

    def at(theta: float) -> tuple[float, float, float]:
        half = theta / 2
        s, c = np.sin(half), np.cos(half)
        g = theta + 2 * np.arctan2(-(1 - kk) * s * c, c * c + kk * s * s)
        sg, cg = np.sin(g), np.cos(g)
        return (
            (g / 2 + sg * cg / 2 - 2 * e * sg + e * e * g) / o**2.5,
            (sg * sg / 2 + e * cg) / o**2,
            (g / 2 - sg * cg / 2) / o**1.5,
        )

    low, high = at(direction + np.pi / 2), at(direction + 1.5 * np.pi)
    return high[0] - low[0], high[1] - low[1], high[2] - low[2]


def finite_over_short(e: float, length_to_diameter: float) -> float:
    """Closure for the finite length, as documented in `pinfilm`."""
    m, k = 0.84, 1.17
    o = 1 - e * e
    short = 4 * length_to_diameter**2 * e / (4 * o * o) * np.sqrt(np.pi**2 * o + 16 * e * e)
    long = 6 * e * np.sqrt(np.pi**2 * o + 4 * e * e) / ((2 + e * e) * o)
    return float((short**-m + (k * long) ** -m) ** (-1 / m) / short)


def pin_velocity(_t: float, q: np.ndarray, squeeze_time: float, omega: float, length_to_diameter: float) -> list[float]:
    """Rate of the place e/(1-e) of the pin under a constant load."""
    r = max(float(np.hypot(q[0], q[1])), 1e-9)
    e, phi = r / (1 + r), float(np.arctan2(q[1], q[0]))

    def across(direction: float) -> float:
        jcc, jcs, jss = half_film(e, direction)
        c, s = np.cos(direction), np.sin(direction)
        return float((jcc * c + jcs * s) * np.sin(phi) + (jcs * c + jss * s) * np.cos(phi))

    direction = brentq(across, -phi - np.pi / 2 + 1e-12, -phi + np.pi / 2 - 1e-12, xtol=1e-14, rtol=1e-14)
    jcc, jcs, jss = half_film(e, direction)
    c, s = np.cos(direction), np.sin(direction)
    force = np.hypot(jcc * c + jcs * s, jcs * c + jss * s)
    scale = 1 / (force * squeeze_time * finite_over_short(e, length_to_diameter))
    e_rate, turn_rate = c * scale, s * scale / e + omega / 2
    r_rate = e_rate * (1 + r) ** 2
    return [
        float(r_rate * np.cos(phi) - r * turn_rate * np.sin(phi)),
        float(r_rate * np.sin(phi) + r * turn_rate * np.cos(phi)),
    ]


def orbit_film_ratios(segments: list[tuple[float, float, float]], length_to_diameter: float) -> list[float]:
    """Film ratio at the end of each segment of the periodic path."""
    q = np.array([1e3, 0.0])
    for _ in range(400):
        start, films = q, []
        for squeeze_time, omega, duration in segments:
            run = solve_ivp(
                pin_velocity,
                (0, duration),
                q,
                method="DOP853",
                rtol=1e-9,
                atol=1e-12,
                args=(squeeze_time, omega, length_to_diameter),
            )
            q = run.y[:, -1]
            films.append(1 / (1 + float(np.hypot(*q))))
        if np.hypot(*(q - start)) < 1e-7 * (1 + np.hypot(*q)):
            return films
    raise RuntimeError("the path does not repeat")


def main() -> None:
    """Print agreement, times and ratios."""
    print("2-D Reynolds, 240 x 24 of the half width, active-set cavitation")
    for e, length_to_diameter in [(0.5, 1.0), (0.8, 1.0), (0.95, 2.0), (0.99, 3.0)]:
        ours = pinfilm.film.reynolds_bearing(e, length_to_diameter).sommerfeld
        peer = reynolds_sommerfeld(e, length_to_diameter)
        if abs(ours / peer - 1) > 1e-8:
            raise SystemExit(f"e {e}, L/D {length_to_diameter}: {ours} against {peer}")
        t_ours = best_s(lambda e=e, ld=length_to_diameter: pinfilm.film.reynolds_bearing(e, ld))
        t_peer = best_s(lambda e=e, ld=length_to_diameter: reynolds_sommerfeld(e, ld), most=5)
        print(
            f"  e {e:<5} L/D {length_to_diameter}: S {ours:.9f}  pinfilm {1e3 * t_ours:6.2f} ms  "
            f"scipy.sparse {1e3 * t_peer:7.1f} ms  ratio {t_peer / t_ours:5.0f}"
        )
    print("periodic path of a pin through one circuit, tolerance 1e-9")
    for name in pinfilm.examples.names():
        line = pinfilm.examples.load(name)
        try:
            orbit = pinfilm.joint_orbit(line)
        except pinfilm.InputError as error:
            print(f"  {name}: {error}")
            continue
        segments = [
            part
            for event in orbit.events
            for part in (
                (event.rest_squeeze_time_s, 0.0, event.rest_s),
                (event.squeeze_time_s, event.angular_speed_rad_per_s, event.turn_s),
            )
        ]
        t_ours = best_s(lambda line=line: pinfilm.joint_orbit(line))
        told = (
            f"  {name:<18} {len(segments):3} rests and turns, {orbit.circuits} circuits  pinfilm {1e3 * t_ours:6.2f} ms"
        )
        if name not in PEER_LINES:
            print(told)
            continue
        start = time.perf_counter()
        peer_films = orbit_film_ratios(segments, orbit.length_to_diameter)[1::2]
        t_peer = time.perf_counter() - start
        off = max(
            abs(event.film_end_um / (orbit.radial_clearance_um * film) - 1)
            for event, film in zip(orbit.events, peer_films, strict=True)
        )
        if off > 1e-5:
            raise SystemExit(f"{name}: films differ by {off:.1e}")
        print(f"{told}  solve_ivp {1e3 * t_peer:8.0f} ms  ratio {t_peer / t_ours:6.0f}  films within {off:.0e}")


if __name__ == "__main__":
    main()
