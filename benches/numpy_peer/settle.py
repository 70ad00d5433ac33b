"""Settle: friction gives the pull, the pull loads the joints, the load gives friction; rows drop out as they agree."""

from __future__ import annotations

from types import SimpleNamespace as Rows
from typing import Any

import numpy as np

from . import circuit, film, friction, oil
from .columns import GRAVITY, MM, MPA, UM, Columns, at, full

EXACT, SETTLED, MOST_ROUNDS, LEAST_STEP, STILL_MANY = 1e-10, 1e-9, 200, 0.25, 0.7


def surfaces(c: Columns) -> Rows:
    return Rows(
        roughness=c.si("surface.roughness_um", UM, 0.8),
        stiffness=c.si("surface.asperity_stiffness_mpa", MPA, 134.10020296858953),
        dry=c.si("surface.dry_friction", 1.0, 0.30),
        boundary_fill=c.si("surface.boundary_fill", 1.0, 0.10),
        exponent=c.si("surface.starvation_exponent", 1.0, 1.0),
        film_factor=c.si("surface.film_factor", 1.0, 1.0),
        conformity=c.si("surface.conformity", 1.0, 1.0),
        edge_share=c.si("surface.roller_edge_share", 1.0, 0.7),
        modulus=c.si("surface.modulus_gpa", 1e9, 206.0) / (1.0 - c.si("surface.poisson_ratio", 1.0, 0.3) ** 2),
    )


def pair_numbers(
    surface: Rows, diameter: Any, bore: Any, length: Any, viscosity: Any, speed: Any, coefficient: Any
) -> dict[str, Any]:
    """What a pair brings along whatever loads it."""
    radius, clearance = diameter / 2.0, (bore - diameter) / 2.0 / surface.conformity
    sliding = speed * radius
    curved = radius * (radius + clearance) / clearance
    elastic = film.elastic(viscosity, 0.5 * sliding, curved, coefficient, surface.modulus)
    log_ratio, exponent = oil.roelands_numbers(viscosity, coefficient)
    return {
        "radius": radius, "clearance": clearance, "length": length, "viscosity": viscosity, "sliding": sliding,
        "soft": elastic.soft, "hard": elastic.hard, "curved": curved, "log_ratio": log_ratio, "exponent": exponent,
        "per_load": surface.modulus * clearance * length, "ld2": (length / diameter) ** 2,
        "rate": clearance * clearance / (viscosity * radius**3 * length), "ring": sliding * viscosity * radius,
    }  # fmt: skip


def contact(n: Rows, load: np.ndarray) -> tuple[Any, ...]:
    """Pressure, half width, elastic film and the strip's drag of a loaded pair."""
    x = friction.tangent_squared(n.per_load / load)
    half_width = n.radius * 2.0 * np.sqrt(x) / (1.0 + x)
    per_length = load / n.length
    pressure = per_length / (2.0 * half_width)
    elastic = film.elastic_film((n.soft, n.hard, n.curved), np.log(per_length))
    strip = n.sliding * oil.roelands(n.viscosity, n.log_ratio, n.exponent, pressure) * 2.0 * half_width / per_length
    return pressure, half_width, elastic, strip, n.ring / per_length


def joints(n: Rows, surface: Rows, tension: np.ndarray, rest_tension: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    """Film ratio at fill 1 and friction at the effective fill of all articulations; a slack joint has no film."""
    slack = tension <= 0.0
    load = np.where(slack, 1.0, tension)
    pressure, half_width, elastic, strip, ring = contact(n, load)
    smooth = film.coverage(n.angle, n.radius, half_width) * elastic
    number = load * (n.rate / n.turning)
    doubt = np.nonzero(~film.steady_loses(number, n.ld2, n.clearance, smooth))
    if doubt[0].size:
        pick = lambda value: np.broadcast_to(value, tension.shape)[doubt]  # noqa: E731
        rest = np.maximum(pick(rest_tension), 0.0) * pick(n.rate) * pick(n.rest)
        args = (pick(number), rest, pick(n.angle), pick(n.clearance), pick(smooth))
        left = ~film.mean_surely_loses(*args)
        if left.any():
            number_left, rest, angle, clearance, thinner = (one[left] for one in args)
            rigid = film.turning_film(number_left, rest, angle, pick(n.ld2)[left], clearance)
            smooth[doubt[0][left], doubt[1][left]] = np.maximum(rigid, thinner)
    ratio = surface.film_factor * smooth / surface.roughness
    ratio[slack] = 0.0
    found = friction.mixed(n.starved * ratio, pressure, surface, n, strip, ring, n.clearance, n.heights)
    if slack.any():
        found[slack] = np.broadcast_to(n.boundary, tension.shape)[slack]
    return ratio, found


def on_rollers(c: Columns, loop: Rows, heat: Rows, fluid: Rows, surface: Rows, mix: Rows) -> tuple[Any, Any]:
    """Friction of bush in roller on both strands: a pair that turns for ever, with a share on its edges."""
    given = c.raw("friction.bush_roller", np.nan)
    which = [straight for straight in (0, 1) if np.any(loop.rollers[straight])]
    if c.has("friction.bush_roller") or not which:
        return given, given
    bush, width = c.si("chain.bush_diameter_mm", MM), c.si("chain.inner_width_mm", MM)
    bore, roller = c.si("chain.roller_bore_mm", MM), c.si("chain.roller_diameter_mm", MM)
    per_pitch = c.raw("chain.rollers_per_pitch", 1.0)
    count = c.count
    out = [np.nan, np.nan]
    for straight in which:
        viscosity = oil.dynamic(fluid, heat.mean[2 * straight])
        coefficient = oil.pressure_viscosity(viscosity) * mix.pressure_factor
        speed = 2.0 * loop.speed / roller
        n = Rows(**pair_numbers(surface, bush, bore, width, viscosity, speed, coefficient))
        rise = loop.rise[2 * straight]
        level = np.sqrt(np.maximum(loop.straight**2 - rise**2, 0.0)) / loop.straight
        mass = loop.strands * loop.mass + loop.loads[straight]
        load = full(mass * GRAVITY * loop.pitch * level / (loop.strands * per_pitch), count)
        pressure, _, smooth, strip, ring = contact(n, load)
        number = load * (n.rate / speed)
        doubt = np.flatnonzero(~film.steady_loses(number, n.ld2, n.clearance, smooth))
        if doubt.size:
            q = film.steady_closeness(at(number, doubt), at(full(n.ld2, count), doubt))
            smooth[doubt] = np.maximum(smooth[doubt], at(full(n.clearance, count), doubt) / (1.0 + q))
        ratio = mix.starved * surface.film_factor * smooth / surface.roughness
        unknown = np.full(count, np.nan)
        found = friction.mixed(ratio, pressure, surface, mix, strip, ring, n.clearance, unknown)
        reached = surface.edge_share * mix.boundary + (1.0 - surface.edge_share) * found
        out[straight] = mix.over_all(reached)
    return out[0], out[1]


def settle(
    c: Columns, loop: Rows, heat: Rows, fluid: Rows, viscosity: np.ndarray, surface: Rows, fill: Any, never: Any
) -> Rows:
    """Friction and pull that agree, with tension and film ratio at each articulation."""
    boundary_oiled = c.si("oil.boundary_friction", 1.0, 0.12)
    boundary = full(friction.boundary_friction(fill, surface.dry, boundary_oiled, surface.boundary_fill), c.count)
    plain = np.ndim(surface.exponent) == 0 and surface.exponent == 1.0
    mix = Rows(
        fill=fill, boundary=boundary, starved=fill if plain else fill**surface.exponent,
        limiting=c.si("oil.limiting_friction", 1.0, 0.06),
        pressure_factor=c.si("oil.pressure_viscosity_factor", 1.0, 1.0),
        over_all=lambda reached: (1.0 - never) * reached + never * surface.dry,
    )  # fmt: skip
    rollers = on_rollers(c, loop, heat, fluid, surface, mix)
    plate = c.si("friction.plate_track", 1.0, 0.25)
    if c.has("friction.track_oiled"):
        oiled = friction.boundary_friction(
            fill, plate, c.si("friction.plate_track_oiled", 1.0, 0.12), surface.boundary_fill
        )
        plate = np.where(c.raw("friction.track_oiled"), (1.0 - never) * oiled + never * plate, plate)
    forces = circuit.straight_forces(loop, c, rollers, plate)
    bearing = c.si("friction.wheel_bearing", 1.0, 0.02)

    coefficient = oil.pressure_viscosity(viscosity) * mix.pressure_factor
    angle = np.stack([full(loop.angle[turn], c.count) for turn in (0, 0, 1, 1)])
    turning = angle * loop.speed / loop.pitch
    rest = np.maximum(np.stack([full(time, c.count) for time in loop.duration[:4]]), loop.joint_time)
    pin, bore = c.si("chain.pin_diameter_mm", MM), c.si("chain.bush_bore_mm", MM)
    numbers = pair_numbers(surface, pin, bore, c.si("chain.joint_length_mm", MM), viscosity, turning, coefficient)
    numbers |= {"angle": angle, "turning": turning, "rest": rest}
    numbers |= {"fill": fill, "starved": mix.starved, "boundary": boundary, "limiting": mix.limiting}
    numbers["heights"] = np.full(angle.shape, np.nan)
    state = {f"surface.{name}": value for name, value in vars(surface).items()} | numbers
    state |= {"never": never, "force_0": forces[0], "force_1": forces[1], "bearing": bearing}
    for name in ("take_up", "strand_share"):
        state[f"loop.{name}"] = getattr(loop, name)
    for name in ("joint_arm", "bearing_arm", "centrifugal", "lift"):
        state |= {f"loop.{name}.{place}": value for place, value in enumerate(getattr(loop, name))}

    guess = full(mix.over_all(boundary), c.count)
    joint = np.stack([guess, guess])
    if c.has("friction.joint"):
        joint = np.stack([full(c.raw("friction.joint"), c.count)] * 2)
    out = Rows(
        joint=joint.copy(), tension=np.empty((4, c.count)), ratio=np.empty((4, c.count)), rounds=np.zeros(c.count)
    )
    rows: np.ndarray | None = None
    step, before, last = np.ones(c.count), np.full(c.count, np.inf), np.full(c.count, np.inf)
    done = np.zeros(c.count, bool)
    for round_ in range(1, MOST_ROUNDS + 1):
        part = Rows(**{name: value for name, value in state.items() if "." not in name})
        here = Rows(**{name[8:]: value for name, value in state.items() if name.startswith("surface.")})
        lane = Rows(take_up=state["loop.take_up"], strand_share=state["loop.strand_share"])
        for name in ("joint_arm", "bearing_arm", "centrifugal", "lift"):
            size = 2 if name.endswith("arm") else 4
            setattr(lane, name, tuple(state[f"loop.{name}.{place}"] for place in range(size)))
        way = circuit.march(lane, (part.force_0, part.force_1), joint[0], joint[1], part.bearing)
        tension, rest_tension = circuit.events(lane, way)
        ratio, reached = joints(part, here, tension, rest_tension)
        over_all = (1.0 - part.never) * reached + part.never * here.dry
        computed = np.stack([(over_all[0] + over_all[1]) / 2.0, (over_all[2] + over_all[3]) / 2.0])
        difference = np.log(computed / joint)
        change = np.abs(difference).max(axis=0)
        agreed = ~(change >= EXACT)
        if c.has("friction.joint"):
            agreed[:] = True
        new = joint if c.has("friction.joint") else np.where(step == 1.0, computed, joint * np.exp(step * difference))
        target = slice(None) if rows is None else rows
        done[target] = agreed
        out.tension[:, target], out.ratio[:, target], out.joint[:, target] = tension, ratio, new
        out.rounds[target] = round_
        if agreed.all():
            break
        step = np.where((change > before / 2.0) & (step > LEAST_STEP), step / 2.0, step)
        before, last, joint = last, change, new
        left = ~agreed
        if np.count_nonzero(left) < STILL_MANY * len(left):
            rows = np.flatnonzero(left) if rows is None else rows[left]
            state = {name: at(value, left) for name, value in state.items()}
            joint, step, before, last = joint.compress(left, axis=1), step[left], before[left], last[left]
    out.joint[:, ~done] = np.nan
    way = circuit.march(loop, forces, out.joint[0], out.joint[1], bearing)
    out.pull, out.tight, out.slack, out.way = way.pull, way.tight, way.slack, way
    out.plate_track, out.rollers = plate, rollers
    return out
