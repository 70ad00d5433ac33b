"""Entry: what a joint holds and loses, where oil is applied, how much of it gets in."""

from __future__ import annotations

from types import SimpleNamespace as Rows
from typing import Any

import numpy as np

from . import circuit, oil
from .columns import DEG, GRAVITY, HOUR, ICE_POINT, MM, PCT, Columns

GAS_CONSTANT, NOACK_TEMPERATURE, NOACK_DURATION, STILL_AIR, OVEN = 8.314462618, 250.0, 3600.0, 0.3, 100.0


def space(c: Columns, loop: Rows, density: Any) -> Rows:
    """Annulus and rings of a joint, what the plate gap holds, which turns shed."""
    pin, bush = c.si("chain.pin_diameter_mm", MM), c.si("chain.bush_diameter_mm", MM)
    gap = c.si("chain.plate_gap_mm", MM)
    clearance = (c.si("chain.bush_bore_mm", MM) - pin) / 2.0
    path = (c.si("chain.plate_depth_mm", MM) - bush) / 2.0
    tension = c.si("oil.surface_tension_mn_per_m", 1e-3, 30.0)
    cosine = np.cos(c.si("joint.contact_angle_deg", DEG, 20.0))
    length, share = c.si("chain.joint_length_mm", MM), c.si("fill.ring_share", 1.0, 0.5)

    def width(radius: Any) -> Any:
        held = 2.0 * tension * cosine / gap / (density * (GRAVITY + loop.speed**2 / radius))
        return np.clip(held, 0.0, path)

    at_tail, at_drive = width(loop.radius[0]), width(loop.radius[1])
    bore = pin + 2.0 * clearance
    annulus = 0.25 * np.pi * (bore * bore - pin * pin) * length
    ring = bush + 2.0 * np.minimum(at_tail, at_drive)
    rings = share * 2.0 * 0.25 * np.pi * (ring * ring - bush * bush) * gap
    return Rows(
        pin=pin, gap=gap, clearance=clearance, path=path, cosine=cosine, tension=tension, length=length,
        sheds=(at_tail < path, at_drive < path), capacity=annulus + rings, annulus=annulus,
        exposed=share * 2.0 * np.pi * ring * gap, eccentricity=c.si("joint.eccentricity_ratio", 1.0, 1.0),
        retained_width=np.minimum(at_tail, at_drive),
    )  # fmt: skip


def losses(c: Columns, loop: Rows, heat: Rows, joint: Rows, viscosity: np.ndarray, density: Any, running: Any) -> Any:
    """Sum of the loss rates, 1/s of running time."""
    vaporisation = c.si("oil.vaporisation_kj_per_mol", 1e3, 100.0)
    per_area = c.si("fill.noack_mass_per_area_kg_per_m2", 1.0, 23.0) / (density * joint.capacity / joint.exposed)
    at_test = -np.log1p(-c.si("oil.noack_pct", PCT, 8.0)) / NOACK_DURATION * per_area
    half_life = c.si("oil.oxidation_half_life_h", HOUR, 1000.0)
    reference = c.si("oil.oxidation_reference_c", 1.0, 100.0)
    over_gas, at_noack = -vaporisation / GAS_CONSTANT, 1.0 / (NOACK_TEMPERATURE + ICE_POINT)

    def rates(temperature: Any) -> tuple[Any, Any]:
        vapour = np.exp(over_gas * (1.0 / (temperature + ICE_POINT) - at_noack))
        return vapour, np.exp2((temperature - reference) / 10.0)

    vapour, oxidised = circuit.time_mean(loop, heat, rates)
    oxidation = np.log(2.0) / half_life
    moving = c.si("fill.air_factor", 1.0, 0.3)
    total = moving * at_test * vapour + oxidation * oxidised

    loss, exponent = c.si("fill.articulation_loss", 1.0, 5e-4), c.si("fill.articulation_loss_exponent", 1.0, 0.5)
    thin = c.si("fill.articulation_loss_reference_pa_s", 1.0, 0.1) / viscosity
    power = np.sqrt(thin) if np.ndim(exponent) == 0 and exponent == 0.5 else thin**exponent
    by_turn = [power[0] * 2.0, power[0] * 2.0] if loop.even else [power[0] + power[1], power[2] + power[3]]
    turned = by_turn[0] * loop.angle[0] + by_turn[1] * loop.angle[1]
    total = total + loss * joint.eccentricity / (2.0 * np.pi) * turned / loop.circuit_time

    by_clock: Any = c.si("duty.dust_loss_per_s", 1.0, 0.0)
    if c.has("duty.wash_interval_h"):
        removed = c.si("duty.wash_removed_share", 1.0, 0.6)
        washed = -np.log1p(-removed) / c.si("duty.wash_interval_h", HOUR)
        by_clock = by_clock + np.where(np.isnan(washed), 0.0, washed)
    ambient = loop.environment[1]
    vapour, oxidised = (vapour, oxidised) if loop.even else rates(ambient)
    standing = (STILL_AIR * at_test * vapour + oxidation * oxidised) * (1.0 - running)
    return total + (by_clock + standing) / running


def time_to_loss(loop: Rows, joint: Rows, section: int, position: float | Any, otherwise: Any) -> Any:
    """Time (s) from a place to the first turn that sheds, or the first oven; `otherwise` where nothing takes oil."""
    here, time = loop.environment[section], loop.duration[section] * (1.0 - position)
    found: Any = otherwise
    ahead = [(section + step) % 4 for step in range(1, 5)]
    starts = []
    for place in ahead:
        starts.append(time)
        time = time + loop.duration[place]
    for place, start in zip(reversed(ahead), reversed(starts), strict=True):
        if place % 2:
            takes = joint.sheds[place // 2]
        elif loop.even or place == section:
            continue
        else:
            takes = (loop.environment[place] >= OVEN) & (here < OVEN)
        found = np.where(takes, start, found)
    return found


def entry_times(joint: Rows, density: Any, depth: Any) -> Rows:
    """Times through plate gap and annulus at a viscosity of 1 Pa s, to which they are proportional."""
    conductance = joint.gap**2 / 12.0
    a = conductance * 2.0 * joint.tension * joint.cosine / joint.gap
    b = conductance * density * GRAVITY
    u = np.asarray(b * joint.path / a)
    plate = np.asarray(a / (b * b) * (u - np.log1p(u)))
    little = u < 0.01
    if little.any():
        series: Any = 0.0
        for k in range(11, 1, -1):
            series = 1.0 / k - u * series
        plate = np.where(little, joint.path**2 / a * series, plate)
    ring = np.pi * joint.pin * joint.clearance
    pressure = 2.0 * joint.tension * joint.cosine / joint.clearance
    in_plate = 12.0 * joint.path / (0.5 * np.pi * joint.pin * joint.gap**3)
    in_annulus = 12.0 / (np.pi * joint.pin * joint.clearance**3 * (1.0 + 1.5 * joint.eccentricity**2))
    annulus = ring / pressure * (in_plate * depth + 0.5 * in_annulus * depth * depth)
    push = pressure / ring
    return Rows(plate=plate, annulus=annulus, in_plate=in_plate, in_annulus=in_annulus, push=push, depth=depth)


def entered_share(times: Rows, viscosity: Any, available: Any) -> Any:
    y = times.push * np.maximum(available / viscosity - times.plate, 0.0)
    depth = 2.0 * y / (times.in_plate + np.sqrt(times.in_plate**2 + 2.0 * times.in_annulus * y))
    return np.minimum(depth / times.depth, 1.0)


def apply(c: Columns, loop: Rows, heat: Rows, fluid: Rows, joint: Rows, way: Rows, next_run: Any) -> Rows:
    """Oil at the surveyed place, or at the best of start, middle and end of both strands, from above.

    No straight of this loop is washed, above product or out of reach, so that all else in the score is the same.
    """
    depth = np.where(c.raw("lubrication.points", 2) >= 2, joint.length / 2.0, joint.length)
    given = c.si("lubrication.time_available_s") if c.has("lubrication.time_available_s") else None
    if c.has("lubrication.application_section"):
        section, position = c.raw("lubrication.application_section"), c.raw("lubrication.application_position", 0.5)
        temperature = available = np.nan
        for place in range(4):
            chosen = section == place
            if np.any(chosen):
                temperature = np.where(chosen, temperature_at(loop, heat, place, position), temperature)
                available = np.where(chosen, time_to_loss(loop, joint, place, position, next_run), available)
        viscosity, heavy = oil.dynamic(fluid, temperature), oil.density(fluid, temperature)
        times = entry_times(joint, heavy, depth)
        available = available if given is None else given
        return Rows(
            section=section, position=position, temperature=temperature, viscosity=viscosity, available=available,
            entered=entered_share(times, viscosity, available),
        )  # fmt: skip
    ends = (way.slack, way.onto_tail, way.off_tail, way.tight)
    low = np.minimum(np.minimum(ends[0], ends[1]), np.minimum(ends[2], ends[3]))
    high = np.maximum(np.maximum(ends[0], ends[1]), np.maximum(ends[2], ends[3]))
    if loop.even:
        temperature: Any = heat.over_loop
        viscosity, heavy = oil.dynamic(fluid, temperature), oil.density(fluid, temperature)
        times = entry_times(joint, heavy, depth)
        needed = viscosity * (times.plate + times.annulus)
    else:
        cold = np.minimum.reduce([*heat.inlet, *heat.outlet])
        hot = np.maximum.reduce([*heat.inlet, *heat.outlet])
    best: Rows | None = None
    for section in (0, 2):
        for position in (0.0, 0.5, 1.0):
            available = time_to_loss(loop, joint, section, position, next_run) if given is None else given
            cool: Any = 1.0
            if not loop.even:
                temperature = temperature_at(loop, heat, section, position)
                viscosity, heavy = oil.dynamic(fluid, temperature), oil.density(fluid, temperature)
                times = entry_times(joint, heavy, depth)
                needed = viscosity * (times.plate + times.annulus)
                cool = np.where(hot > cold, 1.0 - (temperature - cold) / (hot - cold), 1.0)
            tension = ends[section] + (ends[section + 1] - ends[section]) * position
            slack = np.where(high > low, 1.0 - (tension - low) / (high - low), 1.0)
            score = (3.0 * (slack + available / (available + needed)) + 2.0 * (cool + 3.0) + 1.0) / 15.0
            if best is None:
                best = Rows(score=score, available=available, section=0.0, position=0.0)
                best.__dict__.update(temperature=temperature, viscosity=viscosity, density=heavy)
                continue
            better = (score > best.score) | ((score == best.score) & (available > best.available))
            best.section = np.where(better, section, best.section)
            best.position = np.where(better, position, best.position)
            best.score = np.where(better, score, best.score)
            best.available = np.where(better, available, best.available)
            if not loop.even:
                best.temperature = np.where(better, temperature, best.temperature)
                best.viscosity = np.where(better, viscosity, best.viscosity)
                best.density = np.where(better, heavy, best.density)
    assert best is not None
    if not loop.even:
        times = entry_times(joint, best.density, depth)
    best.entered = entered_share(times, best.viscosity, best.available)
    return best


def temperature_at(loop: Rows, heat: Rows, section: int, position: Any) -> Any:
    if loop.even:
        return heat.over_loop
    environment = loop.environment[section]
    decay = np.exp(-position * loop.duration[section] / loop.tau)
    return environment + (heat.inlet[section] - environment) * decay
