"""Tables of a report: every row is a quantity of the register, with its value, unit and meaning."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any, NamedTuple

import numpy as np

from .._core import Comparison, Evaluation, Line, register

SURVEY = (
    "chain.designation",
    "chain.pitch_mm",
    "chain.pin_diameter_mm",
    "chain.plate_gap_mm",
    "circuit.strands",
    "kinematics.joints",
    "kinematics.joints_counted",
    "kinematics.length_m",
    "kinematics.circuit_time_s",
    "duty.speed_m_per_min",
    "kinematics.running_h_per_year",
    "duty.ambient_c",
    "duty.surroundings",
    "duty.food_contact",
    "oil.name",
    "drive.rated_power_kw",
)
FOUND = (
    "tension.pull_n",
    "joint.pressure_mpa",
    "joint.mu_joint_drive",
    "fill.never_reached",
    "fill.worst_wait_h",
    "fill.mean_fill",
    "fill.lowest_fill_reached",
    "fill.half_life_h",
    "fill.entered_share",
    "wear.elongation_1_year_pct",
    "wear.life_years",
    "wear.governs",
    "wear.service_life_years",
    "drive.load",
    "drive.current_a",
    "drive.energy_kwh_per_year",
    "supply.applied_l_per_year",
    "supply.dripped_share",
)
PAYBACK = (
    "saving_per_year",
    "saving_without_chain_per_year",
    "invest",
    "payback_status",
    "payback_days",
    "payback_days_downtime_halved",
    "payback_days_without_chain",
    "discounted_payback_years",
    "npv",
    "npv_without_chain",
    "irr",
    "discount_rate",
    "horizon_years",
)
METHODS = {"Manual": "by hand", "Drip": "dripping", "Spray": "timed spray", "Synchronised": "synchronised shots"}


class Fact(NamedTuple):
    """One row of a table."""

    path: str
    means: str
    values: tuple[str, ...]


#: What `explain` shows where there is no value.
NOTHING = frozenset({"", "–", "not given"})


def value_of(result: Evaluation | Comparison, path: str) -> str:
    """Return a value with its unit, to four figures; empty where there is none."""
    shown = result.explain(path).value
    if shown in NOTHING:
        return ""
    currency = (result.proposed.line if isinstance(result, Comparison) else result.line).costs.currency
    number, space, unit = shown.partition(" ")
    return _spoken((brief(number) + space + unit).replace("money", currency))


def _spoken(value: str) -> str:
    """Return a value with its unit, a count of a year as people say it."""
    return f"{value.removesuffix(' 1/year')} a year" if value.endswith(" 1/year") else value


def brief(text: str) -> str:
    """Return a number to four figures, with commas between thousands and a minus sign; other words as they are."""
    try:
        number = float(text)
    except ValueError:
        return text.replace("_", " ")
    shown = f"{number:,.0f}" if abs(number) >= 1000.0 else f"{number:.4g}"
    return shown.replace("-", "−", 1) if number < 0.0 else shown


def table(results: Iterable[Evaluation | Comparison], paths: Iterable[str]) -> list[Fact]:
    """Return rows for paths, with a value of each result; rows without any value are left out."""
    results = tuple(results)
    rows = []
    for path in paths:
        values = tuple(value_of(result, path) for result in results)
        if any(values):
            rows.append(Fact(path, results[0].explain(path).means, tuple(value or "–" for value in values)))
    return rows


def method(result: Evaluation) -> str:
    """Return the method in words."""
    return METHODS[type(result.line.lubrication).__name__]


def in_short(comparison: Comparison) -> list[tuple[str, str, str]]:
    """Return what to read first: what, as it is, as proposed."""
    now, proposed = comparison.now, comparison.proposed
    paths = (
        ("fill.never_reached", "Joints that never get oil"),
        ("fill.worst_wait_h", "Longest wait of a joint that does"),
        ("fill.mean_fill", "Mean fill of all joints"),
        ("tension.pull_n", "Pull of the chain"),
        ("drive.current_a", "Motor current"),
        ("wear.service_life_years", "Mean life of the chain, wear and other causes"),
        ("supply.applied_l_per_year", "Oil used"),
        ("cost.total_per_year", "Cost of a year"),
    )
    rows = [("Method", method(now), method(proposed))]
    for path, words in paths:
        one, other = (_percent(result, path) for result in (now, proposed))
        if one.strip("–") or other.strip("–"):
            rows.append((words, one, other))
    return rows


def _percent(result: Evaluation, path: str) -> str:
    """Return a value to three figures; a share in per cent."""
    value: Any = result
    for step in path.split("."):
        value = getattr(value, step)
    unit = value_of(result, path).partition(" ")[2]
    if value is None:
        return "–"
    if path in ("fill.never_reached", "fill.mean_fill"):
        return f"{value:.0%}"
    return f"{value:,.0f} {unit}" if abs(value) >= 1000 else f"{value:.3g} {unit}".strip()


def leaves(data: Any, path: str = "") -> dict[str, Any]:
    """Return every single value of survey data under its dotted path."""
    if isinstance(data, dict):
        return {key: value for name, item in data.items() for key, value in leaves(item, _join(path, name)).items()}
    if isinstance(data, list) and any(isinstance(item, dict) for item in data):
        return {key: value for at, item in enumerate(data) for key, value in leaves(item, _join(path, str(at))).items()}
    return {path: data}


def _join(path: str, step: str) -> str:
    return f"{path}.{step}" if path else step


def plain(path: str) -> str:
    """Return the path without the numbers of list items, as the register has it."""
    return ".".join(step for step in path.split(".") if not step.isdigit())


def _rows() -> dict[str, dict[str, str]]:
    return {row["path"]: row for row in register()}


def changes(now: Line, proposed: Line) -> list[Fact]:
    """Return survey keys whose values differ; those that only one method has are not in the other."""
    rows = _rows()
    before, after = leaves(now.to_dict()), leaves(proposed.to_dict())
    found = []
    for path in dict.fromkeys((*before, *after)):
        one, other = before.get(path), after.get(path)
        if one == other:
            continue
        row = rows.get(plain(path), {"means": "how the joints get their oil", "unit": ""})
        values = tuple("–" if value is None else f"{_text(value)} {row['unit']}".strip() for value in (one, other))
        found.append(
            Fact(
                path, row["means"], tuple(_spoken(value.replace("money", proposed.costs.currency)) for value in values)
            )
        )
    return found


def _text(value: Any) -> str:
    if isinstance(value, bool):
        return "yes" if value else "no"
    return brief(str(value))


def items(comparison: Comparison) -> list[tuple[str, float, float, float]]:
    """Return cost items: meaning, now, proposed, saving."""
    rows = _rows()
    now, proposed, saving = comparison.now.cost, comparison.proposed.cost, comparison.saving_items
    money = [name for name in saving.to_dict() if name != "currency"]
    names = [name for name in money if any(getattr(of, name) for of in (now, proposed))]
    found = [(rows[f"cost.{name}"]["means"], *(getattr(of, name) for of in (now, proposed, saving))) for name in names]
    return [*found, ("all items", now.total_per_year, proposed.total_per_year, comparison.saving_per_year)]


def spread(paybacks: Any | None) -> list[tuple[str, str]]:
    """Return percentiles of a sample of paybacks, and the share that never pays back."""
    if paybacks is None:
        return []
    days = np.asarray(paybacks, dtype=float)
    days = np.where(np.isnan(days), np.inf, days)
    at = [
        (words, float(np.quantile(days, share, method="higher")))
        for words, share in (("5 in 100 pay back", 0.05), ("half pay back", 0.5), ("95 in 100 pay back", 0.95))
    ]
    return [
        *((f"{words} within", f"{value:.0f} days") for words, value in at if np.isfinite(value)),
        ("never pay back", f"{np.mean(~np.isfinite(days)):.1%}"),
        ("draws", str(len(days))),
    ]


def in_a_sentence(rows: list[tuple[str, str]]) -> str:
    """Return what `spread` says but for its first row, in one sentence."""
    *within, never, draws = rows
    parts = [f"{words} {value}" for words, value in within if not words.startswith("5 ")]
    parts += [f"{never[1]} never do"] if never[1] != "0.0%" else []
    return f"Over {draws[1]} draws of what is uncertain, {', '.join(parts)}."


def assumptions(result: Evaluation) -> list[tuple[str, str, str, str, str, str]]:
    """Return what nobody surveyed: path, meaning, value, class, source and spread of each default that is a claim."""
    found: dict[str, tuple[str, str, str, str, str, str]] = {}
    rows = _rows()
    for path in leaves(result.line.to_dict()):
        row = rows.get(plain(path))
        if row is None or row["source_class"] == "from the survey" or plain(path) in found:
            continue
        explained = result.explain(path)
        if explained.origin not in ("default", "not given"):
            continue
        shown = value_of(result, path) if explained.origin == "default" else "computed"
        found[plain(path)] = (plain(path), row["means"], shown, row["source_class"], row["source"], row["spread"])
    return list(found.values())
