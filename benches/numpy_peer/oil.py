"""Oil: viscosity by grade, index and temperature, density, what pressure does to it."""

from __future__ import annotations

import pathlib
from types import SimpleNamespace as Rows
from typing import Any

import numpy as np

from .columns import Columns

HERE = pathlib.Path(__file__).parent
TABLE = np.loadtxt(HERE.parents[1] / "src" / "oil" / "d2270.csv", delimiter=",", comments=("#", "v"))
GRADES = np.array([2, 3, 5, 7, 10, 15, 22, 32, 46, 68, 100, 150, 220, 320, 460, 680, 1000, 1500, 2200, 3200], float)
MIDPOINTS = np.array([2.2, 3.2, 4.6, 6.8, *GRADES[4:]])
L, H, FORMULA_FROM, ABOVE_100 = (0.8353, 14.67, -216.0), (0.1684, 11.85, -97.0), 70.0, 0.00715


def quadratic(abc: Any, y: Any) -> Any:
    return (abc[0] * y + abc[1]) * y + abc[2]


def row_below(value: Any, target: np.ndarray) -> np.ndarray:
    """Last row of the table whose value (a function of the row, rising) is not above the target, by bisection."""
    low, high = np.zeros(target.shape, int), np.full(target.shape, len(TABLE) - 1)
    for _ in range(int(np.ceil(np.log2(len(TABLE)))) + 1):
        middle = (low + high) // 2
        below = value(middle) <= target
        low = np.where(below, middle, low)
        high = np.where(below, high, middle)
    return np.minimum(low, len(TABLE) - 2)


def up_to_100(v40: np.ndarray, share: np.ndarray) -> np.ndarray:
    v100, index_0, index_100 = TABLE.T
    a, b, c = (L[i] - share * (L[i] - H[i]) for i in range(3))
    rest = v40 - c
    by_formula = 2.0 * rest / (b + np.sqrt(b * b + 4.0 * a * rest))

    def at_40(row: np.ndarray) -> np.ndarray:
        return index_0[row] - share * (index_0[row] - index_100[row])

    low = row_below(at_40, v40)
    here, above = at_40(low), at_40(low + 1)
    by_table = v100[low] + (v40 - here) * (v100[low + 1] - v100[low]) / (above - here)
    return np.where(v40 >= quadratic((a, b, c), FORMULA_FROM), by_formula, by_table)


def above_100(v40: np.ndarray, power: np.ndarray) -> np.ndarray:
    """Index above 100: Newton in logarithms on the straight piece of the table, or on the formula."""
    v100, _, h = TABLE.T
    log_y, log_h, target = np.log(v100), np.log(h), np.log(v40)
    far = target >= np.log(quadratic(H, FORMULA_FROM)) - power * np.log(FORMULA_FROM)
    low = row_below(lambda row: log_h[row] - power * log_y[row], target)
    slope = (h[low + 1] - h[low]) / (v100[low + 1] - v100[low])
    y = np.where(far, FORMULA_FROM, v100[low])
    for _ in range(20):
        height = np.where(far, quadratic(H, y), h[low] + slope * (y - v100[low]))
        steep = np.where(far, 2.0 * H[0] * y + H[1], slope)
        step = (np.log(height) - power * np.log(y) - target) / (y * steep / height - power)
        y = y * np.exp(-step)
        if np.abs(step).max(initial=0.0) < 1e-9:
            break
    return y


def viscosity_at_100(v40: np.ndarray, index: np.ndarray) -> np.ndarray:
    v40, index = np.broadcast_arrays(v40, index)
    out = np.empty(v40.shape)
    low = index <= 100.0
    out[low] = up_to_100(v40[low], index[low] / 100.0)
    high = ~low
    out[high] = above_100(v40[high], np.log1p(ABOVE_100 * (index[high] - 100.0)) / np.log(10.0))
    return out


def z_of(v: Any) -> Any:
    return v + 0.7 + np.exp(-1.47 - v * (1.84 + 0.51 * v))


def liquid(c: Columns) -> Rows:
    """Viscosity line and density; one index for all rows makes it a table of the grades."""
    grade, index = c.raw("oil.iso_vg"), c.raw("oil.viscosity_index", 95.0)
    log_40, log_100 = np.log(40.0 + 273.15), np.log(100.0 + 273.15)

    def line(v40: Any, index: Any) -> tuple[Any, Any]:
        first, second = np.log(np.log(z_of(v40))), np.log(np.log(z_of(viscosity_at_100(v40, index))))
        return first, (first - second) / (log_100 - log_40)

    place = np.searchsorted(GRADES, grade)
    known = GRADES[np.minimum(place, 19)] == grade
    place = np.where(known, place, 0)
    if np.ndim(index):
        log_log_z, slope = line(MIDPOINTS[place], index)
    else:
        log_log_z, slope = (part[place] for part in line(MIDPOINTS, np.float64(index)))
    log_log_z = np.where(known, log_log_z, np.nan)
    heavy = c.si("oil.density_15_kg_per_m3", 1.0, 890.0)
    return Rows(log_log_z=log_log_z, slope=slope, log_40=log_40, density_15=heavy)


def density(oil: Rows, temperature: Any) -> Any:
    expansion = 0.6278 / oil.density_15 * (temperature - 15.0)
    return oil.density_15 * np.exp(-expansion * (1.0 + 0.8 * expansion))


def kinematic(oil: Rows, temperature: Any) -> Any:
    """Viscosity in mm²/s: ASTM D341, the bend of thin oils by Newton where there is one."""
    z = np.exp(np.exp(oil.log_log_z - oil.slope * (np.log(temperature + 273.15) - oil.log_40)))
    v = np.asarray(z - 0.7)
    thin = v <= 7.0
    if thin.any():
        goal = z[thin]
        root = np.maximum(v[thin], 0.15)
        for _ in range(60):
            term = np.exp(-1.47 - root * (1.84 + 0.51 * root))
            step = (root + 0.7 + term - goal) / (1.0 - (1.84 + 1.02 * root) * term)
            root = np.maximum(root - step, 0.05)
            if not (np.abs(step) >= 1e-15 * goal).any():
                break
        v[thin] = root
    return v


def dynamic(oil: Rows, temperature: Any) -> Any:
    """Dynamic viscosity, Pa s."""
    return kinematic(oil, temperature) * 1e-6 * density(oil, temperature)


def pressure_viscosity(viscosity: Any) -> Any:
    return np.maximum(0.6 + 0.965 * (np.log10(viscosity) + 3.0), 0.5) * 1e-8


def roelands_numbers(viscosity: Any, coefficient: Any) -> tuple[Any, Any]:
    """ln of viscosity over Roelands' reference, and his exponent."""
    log_ratio = np.log(viscosity) + 9.67
    return log_ratio, coefficient / (5.1e-9 * log_ratio)


def roelands(viscosity: Any, log_ratio: Any, exponent: Any, pressure: Any) -> Any:
    rise = log_ratio * np.expm1(exponent * np.log1p(5.1e-9 * pressure))
    return viscosity * np.exp(np.minimum(rise, 200.0))
