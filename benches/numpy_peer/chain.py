"""The order of evaluation: the same chain of models as `evaluate`, a room at a time, on chunks of columns."""

from __future__ import annotations

from collections.abc import Mapping
from concurrent.futures import ThreadPoolExecutor
from types import SimpleNamespace as Rows
from typing import Any

import numpy as np

from . import circuit, drive, economics, entry, fill, life, methods, oil, settle, walk
from .columns import HOUR, KW, LITRE, PCT, PER_YEAR, UL, YEAR, Columns, full

#: What `evaluate_table` shows where nothing else was asked for: all of it is computed here.
OUTPUTS = (
    "kinematics.joints", "kinematics.circuit_time_s", "tension.pull_n", "tension.tight_n", "joint.mu_joint_drive",
    "fill.never_reached", "fill.worst_wait_h", "fill.mean_fill", "fill.lowest_fill_reached",
    "wear.elongation_1_year_pct", "wear.life_years", "wear.governs", "wear.service_life_years", "drive.load",
    "drive.current_a", "drive.energy_kwh_per_year", "supply.applied_l_per_year", "supply.dripped_share", "cost.oil",
    "cost.application_labour", "cost.energy", "cost.cleaning", "cost.downtime", "cost.chain", "cost.sprockets",
    "cost.waste", "cost.upkeep", "cost.total_per_year",
)  # fmt: skip
#: Computed on the way; given out for the comparison of the two sides only.
ON_THE_WAY = (
    "kinematics.mean_c", "tension.slack_n", "joint.plate_track", "fill.application_section",
    "fill.application_position", "fill.viscosity_application_mpa_s", "fill.time_available_s", "fill.entered_share",
    "fill.capacity_ul", "fill.retained_width_mm", "fill.dose_in_joint_ul", "fill.loss_rate_per_h",
    "fill.fill_after_shot", "fill.mean_fill_reached", "fill.effective_fill", "wear.coefficient_reached",
    "wear.temperature_c", "wear.limit_pct", "wear.sliding_m_per_h", "drive.shaft_power_w", "drive.input_power_w",
    "drive.slip", "supply.in_joints_l_per_year",
)  # fmt: skip
#: Rows at once: temporaries of this length stay in the second-level cache.
CHUNK = 4096
#: Chunks whose walks of joints are walked together.
TOGETHER = 32


def evaluate(
    columns: Mapping[str, Any], threads: int = 1, chunk: int = CHUNK, on_the_way: bool = False
) -> dict[str, np.ndarray]:
    """Evaluate columns of lines (arrays by the names of `evaluate_table`; scalars hold for all rows)."""
    count = max((len(one) for one in columns.values() if np.ndim(one)), default=1)
    names = OUTPUTS + (ON_THE_WAY if on_the_way else ())
    out = {name: np.empty(count, "U5" if name == "wear.governs" else float) for name in names}
    method = columns["lubrication.method"]
    words = np.unique(method) if np.ndim(method) else [method]
    tasks = []
    for word in words:
        rows = np.flatnonzero(method == word) if len(words) > 1 else None
        size = count if rows is None else len(rows)
        given = {name: one for name, one in columns.items() if rows is None or not blank(one, rows)}
        step = max(min(chunk * TOGETHER, -(-size // threads)), 1)
        for first in range(0, size, step):
            starts = range(first, min(first + step, size), chunk)
            parts = [slice(start, min(start + chunk, first + step, size)) for start in starts]
            chunks = [Columns(given, part if rows is None else rows[part], part.stop - part.start) for part in parts]
            tasks.append((chunks, str(word), names, out))
    if threads == 1:
        for task in tasks:
            some_chunks(*task)
    else:
        with ThreadPoolExecutor(threads) as pool:
            list(pool.map(lambda task: some_chunks(*task), tasks))
    return out


def some_chunks(chunks: list[Columns], method: str, names: tuple[str, ...], out: dict[str, np.ndarray]) -> None:
    """Chunks through all rooms; the walks of their joints are walked together."""
    with np.errstate(all="ignore"):
        states = [until_fill(c, method) for c in chunks]
        if hasattr(states[0].reach.settled, "rows"):
            walk.walk_all([state.reach.settled for state in states])
        for state in states:
            found = from_fill(state)
            for name in names:
                out[name][state.c.rows] = found[name]


def blank(column: Any, rows: np.ndarray) -> bool:
    """Whether a column is empty for all rows of a method, so that the default holds."""
    return bool(np.ndim(column) and column.dtype.kind == "f" and np.isnan(column[rows]).all())


def until_fill(c: Columns, method: str) -> Rows:
    """One chunk from the circuit to the oil that joints get."""
    running = c.si("duty.hours_per_day", 1.0 / 24.0) * c.si("duty.days_per_year", 1.0 / 365.0)
    loop = circuit.lay_out(c)
    heat = circuit.temperatures(loop)
    fluid = oil.liquid(c)
    warm = circuit.event_temperatures(heat, loop.even)
    viscosity = np.stack([full(oil.dynamic(fluid, one), c.count) for one in warm])
    density = oil.density(fluid, heat.over_loop)

    joint = entry.space(c, loop, density)
    rate = full(entry.losses(c, loop, heat, joint, viscosity, density, running), c.count)
    way = reference(c, loop) if not c.has("lubrication.application_section") else None
    place = entry.apply(c, loop, heat, fluid, joint, way, methods.next_run(c, loop, method, running))
    reach = methods.reach(c, loop, joint, rate, place.entered, method, running)
    return Rows(
        c=c, running=running, loop=loop, heat=heat, fluid=fluid, warm=warm, viscosity=viscosity, joint=joint, rate=rate,
        place=place, reach=reach,
    )  # fmt: skip


def from_fill(state: Rows) -> dict[str, Any]:
    """The same chunk from fill to money."""
    c, running, loop, heat, joint = state.c, state.running, state.loop, state.heat, state.joint
    rate, place, reach, warm = state.rate, state.place, state.reach, state.warm
    reach.rate, reach.mean, lowest = rate, reach.settled.mean, reach.settled.lowest
    surface = settle.surfaces(c)
    start, effective = fill.age_law(full(reach.mean, c.count), rate, reach.wait, reach.weight, surface.boundary_fill)
    reach.start = start
    same = c.si("oil.boundary_friction", 1.0, 0.12) == surface.dry
    effective = np.where(reach.dose == 0.0, 0.0, np.where(same, reach.mean, effective))
    lowest = start * np.exp(-rate * reach.worst) if lowest is None else lowest

    settled = settle.settle(c, loop, heat, state.fluid, state.viscosity, surface, effective, reach.never)
    worn = life.lives(c, loop, settled, warm, reach, running)
    driven = drive.load(c, settled.pull, loop.speed)

    mean = reach.mean * (1.0 - reach.never)
    in_joints = rate * mean * joint.capacity * loop.joints * loop.strands
    dripped = np.where(reach.applied > 0.0, 1.0 - in_joints / reach.applied, 0.0)
    applied, in_joints = reach.applied * running, in_joints * running
    costs = economics.yearly(c, loop, applied, in_joints, driven.input, worn.service, running, reach.rounds)
    return {
        "kinematics.joints": loop.joints,
        "kinematics.circuit_time_s": loop.circuit_time,
        "kinematics.mean_c": heat.over_loop,
        "tension.pull_n": settled.pull,
        "tension.tight_n": settled.tight,
        "tension.slack_n": settled.slack,
        "joint.mu_joint_drive": settled.joint[1],
        "joint.plate_track": settled.plate_track,
        "fill.application_section": place.section,
        "fill.application_position": place.position,
        "fill.viscosity_application_mpa_s": place.viscosity / 1e-3,
        "fill.time_available_s": place.available,
        "fill.entered_share": place.entered,
        "fill.capacity_ul": joint.capacity / UL,
        "fill.retained_width_mm": joint.retained_width / 1e-3,
        "fill.dose_in_joint_ul": reach.dose / UL,
        "fill.loss_rate_per_h": rate * HOUR,
        "fill.never_reached": reach.never,
        "fill.worst_wait_h": reach.worst / HOUR,
        "fill.fill_after_shot": start,
        "fill.mean_fill": mean,
        "fill.mean_fill_reached": reach.mean,
        "fill.lowest_fill_reached": lowest,
        "fill.effective_fill": effective,
        "wear.coefficient_reached": worn.reached,
        "wear.temperature_c": worn.temperature,
        "wear.limit_pct": worn.limit / PCT,
        "wear.sliding_m_per_h": worn.sliding * HOUR,
        "wear.elongation_1_year_pct": worn.elongation / PCT,
        "wear.life_years": worn.life / YEAR,
        "wear.governs": life.GOVERNS[worn.governs],
        "wear.service_life_years": worn.service / YEAR,
        "drive.load": driven.ratio,
        "drive.shaft_power_w": driven.shaft,
        "drive.slip": driven.slip,
        "drive.current_a": driven.current,
        "drive.input_power_w": driven.input,
        "drive.energy_kwh_per_year": np.nan_to_num(driven.input) * running / (KW * HOUR * PER_YEAR),
        "supply.applied_l_per_year": applied / (LITRE * PER_YEAR),
        "supply.in_joints_l_per_year": in_joints / (LITRE * PER_YEAR),
        "supply.dripped_share": dripped,
        **{f"cost.{name}": value for name, value in costs.items()},
    }


def reference(c: Columns, loop: Any) -> Any:
    """The march at boundary friction, which tells where the chain is slack."""
    boundary = full(c.si("oil.boundary_friction", 1.0, 0.12), c.count)
    joint = c.raw("friction.joint", boundary)
    roller = c.raw("friction.bush_roller", boundary)
    forces = circuit.straight_forces(loop, c, (roller, roller), c.si("friction.plate_track", 1.0, 0.25))
    return circuit.march(loop, forces, joint, joint, c.si("friction.wheel_bearing", 1.0, 0.02))
