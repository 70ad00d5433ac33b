"""Film: elastic line contact, and the rigid film of a joint that turns and rests; column-wise Newton in a bracket."""

from __future__ import annotations

from collections.abc import Callable
from types import SimpleNamespace as Rows
from typing import Any

import numpy as np

from .columns import at

SOFT, HARD = np.log(3.10), np.log(1.714)
EXPONENT, LONG, PI = 0.84, 1.17, np.pi
ANYWHERE, THICKER_IS_THICKER = 140.0, 3.2


def rising_root(
    function: Callable[..., tuple[Any, Any]], low: Any, high: Any, start: np.ndarray, args: tuple[Any, ...]
) -> Any:
    """Zero of a rising function, for all rows at once; rows that have settled are dropped."""
    out = np.clip(start, low, high)
    here, rows = out.copy(), np.arange(len(out))
    low, high = np.broadcast_to(low, here.shape).copy(), np.broadcast_to(high, here.shape).copy()
    for _ in range(200):
        value, slope = function(here, *args)
        above = value > 0.0
        high, low = np.where(above, here, high), np.where(above, low, here)
        following = here - value / slope
        inside = (following >= low) & (following <= high)
        exact = np.abs(value) < 1e-14
        # a row that is no number never settles: it is done
        settled = exact | (inside & (np.abs(following - here) < 3e-7)) | np.isnan(value)
        here = np.where(exact, here, np.where(inside, following, 0.5 * (low + high)))
        out[rows] = here
        if settled.all():
            break
        left = ~settled
        rows, here, low, high = rows[left], here[left], low[left], high[left]
        args = tuple(at(arg, left) for arg in args)
    return out


def elastic(viscosity: Any, speed: Any, radius: Any, coefficient: Any, modulus: Any) -> Rows:
    """What the elastic film has whatever the load: film = radius × exp(greater of two lines in ln load)."""
    stiffness = modulus * radius
    u, g, s = np.log(viscosity * speed / stiffness), np.log(coefficient * modulus), np.log(stiffness)
    return Rows(soft=SOFT + 0.6 * u + 0.2 * s, hard=HARD + 0.694 * u + 0.568 * g + 0.128 * s, radius=radius)


def elastic_film(numbers: Any, log_load_per_length: Any) -> Any:
    soft, hard, radius = numbers
    return radius * np.exp(np.maximum(soft - 0.2 * log_load_per_length, hard - 0.128 * log_load_per_length))


def long_load(q: Any) -> Any:
    p2, r2 = (1.0 + q) * (1.0 + q), 1.0 + 2.0 * q
    return 6.0 * q * p2 * np.sqrt(PI * PI * r2 + 4.0 * q * q) / ((2.0 * p2 + q * q) * r2)


def joined(short: Any, long: Any) -> tuple[Any, Any]:
    """Logarithm of the power mean of two limits, and the weight of the short one in its slope."""
    power = (short / long) ** -EXPONENT
    return np.log(long) - np.log1p(power) / EXPONENT, power / (1.0 + power)


def steady_load(q: Any, ld2: Any) -> tuple[Any, Any]:
    p, r2 = 1.0 + q, 1.0 + 2.0 * q
    short_root = PI * PI * r2 + 16.0 * q * q
    short = 4.0 * ld2 * q * p * p * np.sqrt(short_root) / (4.0 * r2 * r2)
    ln, share = joined(short, LONG * long_load(q))
    of_short = 1.0 + q * (2.0 / p + (PI * PI + 16.0 * q) / short_root - 4.0 / r2)
    of_long = 1.0 + q * (
        2.0 / p
        + (PI * PI + 4.0 * q) / (PI * PI * r2 + 4.0 * q * q)
        - (4.0 * p + 2.0 * q) / (2.0 * p * p + q * q)
        - 2.0 / r2
    )
    return ln, share * of_short + (1.0 - share) * of_long


def squeeze_number(q: Any, ld2: Any) -> tuple[Any, Any]:
    p, r2 = 1.0 + q, 1.0 + 2.0 * q
    r = np.sqrt(r2)
    arc = 2.0 * np.arctan(r)
    short = q * p * p * arc / (r2 * r) + q * q / r2
    slope = ((p * p + 2.0 * q * q) * p * arc / (r2 * r2 * r)) + 3.0 * q * p / (r2 * r2)
    ln, share = joined(4.0 * ld2 * short, 12.0 * PI * LONG * q / r)
    return ln, share * (q * slope / short) + (1.0 - share) * (1.0 - q / r2)


def steady_closeness(load: Any, ld2: Any) -> Any:
    """e/(1 − e) of the bearing that turns for ever."""
    start = np.log(np.maximum(np.maximum(0.5 * (load / LONG - 5.3), load / 5.0), 1e-3))

    def miss(log_q: Any, target: Any, ld2: Any) -> tuple[Any, Any]:
        ln, slope = steady_load(np.exp(log_q), ld2)
        return ln - target, slope

    return np.exp(rising_root(miss, -ANYWHERE, ANYWHERE, start, (np.log(load), ld2)))


def squeezed_closeness(log_number: Any, ld2: Any) -> Any:
    scale = 12.0 * PI * LONG
    number = np.exp(log_number)
    start = np.log(np.maximum(number * number / (2.0 * scale * scale), 1e-6))

    def miss(log_q: Any, target: Any, ld2: Any) -> tuple[Any, Any]:
        ln, slope = squeeze_number(np.exp(log_q), ld2)
        return ln - target, slope

    return rising_root(miss, -ANYWHERE, ANYWHERE, start, (log_number, ld2))


def steady_loses(load: Any, ld2: Any, clearance: Any, film: Any) -> Any:
    """Whether even the steady film is not thicker than `film`: mostly seen from the long bearing alone."""
    closeness = clearance / film - 1.0
    loses = np.asarray((closeness <= 0.0) | (LONG * long_load(closeness) <= load))
    rest = np.nonzero(~loses & (film > 0.0))
    if rest[0].size:
        pick = lambda value: np.broadcast_to(value, loses.shape)[rest]  # noqa: E731
        loses[rest] = steady_load(pick(closeness), pick(ld2))[0] <= np.log(pick(load))
    return loses


def mean_growth(angle: Any) -> Any:
    return 1.0 / (1.0 + 6.4 / angle + 175.0 / angle**2.35)


def towards_steady(start: Any, growth: Any) -> Any:
    return np.sqrt(start * start + growth * growth * (1.0 - start * start))


def mean_surely_loses(load: Any, rest: Any, turn: Any, clearance: Any, film: Any) -> Any:
    closeness = 0.5 * (load / LONG - 5.3)
    steady = 1.0 / (1.0 + np.maximum(closeness, 0.0))
    angle = turn / np.sqrt(steady)
    wedge = steady * mean_growth(angle)
    s = rest / (12.0 * PI * LONG)
    left = 1.0 / (1.0 + s * (s + np.sqrt(s * s + 1.0)))
    return (closeness > 0.0) & (angle >= THICKER_IS_THICKER) & (clearance * np.sqrt(wedge**2 + left**2) <= film)


def squeezed_too_far(log_q: Any, steady: Any, end_growth: Any, end_gap: Any, ld2: Any, rest: Any) -> tuple[Any, Any]:
    """As in the core: ln of the start's squeeze number over that of the end film plus the rest, and its slope."""
    at_start = np.exp(log_q)
    start = (1.0 + steady) / (1.0 + at_start)
    end = towards_steady(start, end_growth)
    missing = (at_start - steady) / (1.0 + at_start) * (1.0 + start) * end_gap / (1.0 + end)
    at_end = (steady + missing) / end
    ln_start, start_slope = squeeze_number(at_start, ld2)
    ln_end, end_slope = squeeze_number(at_end, ld2)
    number = np.exp(ln_end)
    total = number + rest
    follows = (1.0 + at_end) / at_end * start * start * end_gap / (end * end) * at_start / (1.0 + at_start)
    return ln_start - np.log(total), start_slope - end_slope * follows * number / total


def turning_film(load: Any, rest: Any, turn: Any, ld2: Any, clearance: Any) -> Any:
    """Mean rigid film (m) of the turn of a joint that repeats turn and rest for ever."""
    steady = steady_closeness(load, ld2)
    ratio = 1.0 / (1.0 + steady)
    a = turn / np.sqrt(ratio)
    exponent = (a / 5.873) ** 2 / (1.0 + a / 17.47)
    end = -np.expm1(-exponent)
    gap, mean = np.exp(-exponent) * (1.0 + end), mean_growth(a)
    from_bare = (steady + gap / (1.0 + end)) / end
    first = squeezed_closeness(np.log(np.exp(squeeze_number(from_bare, ld2)[0]) + rest), ld2)
    log_q = rising_root(squeezed_too_far, np.log(steady), first + 1e-9, first, (steady, end, gap, ld2, rest))
    start = np.where(rest > 0.0, (1.0 + steady) / (1.0 + np.exp(log_q)), 1.0)
    return clearance * ratio * towards_steady(start, mean)


def coverage(angle: Any, radius: Any, half_width: Any) -> Any:
    widths = angle * radius / (4.0 * half_width)
    return np.where(widths <= 1.0, 0.5 * widths, 1.0 - 0.5 / widths)
