"""Economics: oil used, and what a year costs, item by item."""

from __future__ import annotations

from types import SimpleNamespace as Rows
from typing import Any

import numpy as np

from .columns import HOUR, KW, LITRE, PER_YEAR, YEAR, Columns

PER_KWH, PER_HOUR, PER_LITRE = 1.0 / (KW * HOUR), 1.0 / HOUR, 1.0 / LITRE


def yearly(
    c: Columns, loop: Rows, applied: Any, in_joints: Any, input_power: Any, service: Any, running: Any, rounds: Any
) -> dict[str, Any]:
    """Items of a year in money a year; times are s, rates a second of the calendar."""
    labour, downtime = c.si("costs.labour_rate_per_h", PER_HOUR), c.si("costs.downtime_cost_per_h", PER_HOUR, 0.0)
    applications = c.si("costs.applications_per_year", PER_YEAR) if c.has("costs.applications_per_year") else rounds
    length = loop.joints * loop.pitch * loop.strands
    replaced = (
        length * c.si("costs.chain_price_per_m", 1.0, 0.0)
        + c.si("costs.fit_h", HOUR, 0.0) * labour
        + c.si("costs.fit_downtime_h", HOUR, 0.0) * downtime
    )
    stops = c.si("costs.breakdowns_per_year", PER_YEAR, 0.0) * c.si("costs.breakdown_h", HOUR, 0.0)
    stops = stops + c.si("costs.planned_stop_h", HOUR / YEAR, 0.0)
    cleaning = c.si("costs.cleaning_h", HOUR, 0.0) * labour + c.si("costs.cleaning_material", 1.0, 0.0)
    sprockets = c.si("costs.sprocket_set_price", 1.0, 0.0) / (c.si("costs.chains_per_sprocket", 1.0, 2.0) * service)
    waste = np.maximum(applied - in_joints, 0.0) * c.si("costs.waste_price_per_l", PER_LITRE, 0.0)
    items = {
        "oil": applied * c.si("oil.price_per_l", PER_LITRE),
        "application_labour": applications * c.si("costs.hours_per_application", HOUR, 0.0) * labour,
        "energy": np.nan_to_num(input_power) * running * c.si("costs.energy_price_per_kwh", PER_KWH),
        "cleaning": c.si("costs.cleanings_per_year", PER_YEAR, 0.0) * cleaning,
        "downtime": stops * downtime,
        "chain": replaced / service,
        "sprockets": sprockets,
        "waste": waste,
        "upkeep": c.si("costs.upkeep_per_year", PER_YEAR, 0.0),
    }
    items = {name: value * YEAR for name, value in items.items()}
    items["total_per_year"] = sum(items.values())
    return items
