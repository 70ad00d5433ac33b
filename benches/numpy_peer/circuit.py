"""Circuit: the loop of two sprockets laid out, its temperatures, its march, what a joint meets on its way.

Four places in march order: return strand, tail, carrying strand, drive. Tuples hold one column for each.
"""

from __future__ import annotations

from types import SimpleNamespace as Rows
from typing import Any

import numpy as np

from .columns import GRAVITY, M_PER_MIN, MM, Columns

STEEL_HEAT, STEEL_DENSITY, SHAFT_SHARE, HEAT_TRANSFER = 480.0, 7850.0, 0.15, 12.0
GAUSS = np.polynomial.legendre.leggauss(16)
NODES, WEIGHTS = 0.5 * (GAUSS[0] + 1.0), 0.5 * GAUSS[1]
SETTLED = 40.0


def lay_out(c: Columns) -> Rows:
    """Lengths, times, masses and lever arms of the loop."""
    pitch, centre = c.si("chain.pitch_mm", MM), c.si("circuit.centre_distance_m")
    teeth_drive, teeth_tail = c.raw("circuit.teeth_drive"), c.raw("circuit.teeth_tail")
    speed, mass = c.si("duty.speed_m_per_min", M_PER_MIN), c.si("chain.mass_kg_per_m")
    strands, pin = c.raw("circuit.strands", 1), c.si("chain.pin_diameter_mm", MM)
    lift, ambient = c.si("circuit.lift_m", 1.0, 0.0), c.si("duty.ambient_c")
    carried, returning = c.si("circuit.carried_kg_per_m", 1.0, 0.0), c.si("circuit.returning_kg_per_m", 1.0, 0.0)

    radius_drive = pitch / np.sin(np.pi / teeth_drive) / 2.0
    radius_tail = pitch / np.sin(np.pi / teeth_tail) / 2.0
    sine = (radius_tail - radius_drive) / centre
    gamma, cosine = np.arcsin(sine), np.sqrt(1.0 - sine * sine)
    up = lift / centre
    level = np.sqrt(1.0 - up * up)
    straight = centre * cosine
    rise = (
        -centre * up + (radius_tail - radius_drive) * (sine * up - cosine * level),
        2.0 * radius_tail * cosine * level,
        centre * up + (radius_drive - radius_tail) * (sine * up + cosine * level),
        -2.0 * radius_drive * cosine * level,
    )
    angle_tail, angle_drive = 2.0 * np.pi / teeth_tail, 2.0 * np.pi / teeth_drive
    wrap_tail, wrap_drive = np.pi + 2.0 * gamma, np.pi - 2.0 * gamma
    length = (straight, pitch * wrap_tail / angle_tail, straight, pitch * wrap_drive / angle_drive)
    total = length[0] + length[1] + length[2] + length[3]
    counted = c.has("circuit.joints")
    joints = c.raw("circuit.joints") if counted else 2.0 * np.floor(total / (2.0 * pitch) + 0.5)
    circuit_time = joints * pitch / speed
    per_length = circuit_time / total
    duration = tuple(one * per_length for one in length)

    chain_mass = strands * mass
    on_return, on_carry = chain_mass + returning, chain_mass + carried
    square = speed * speed
    centrifugal = (chain_mass * square, on_return * square, chain_mass * square, on_return * square)
    weights = (
        on_return * GRAVITY * np.sqrt(np.maximum((straight - rise[0]) * (straight + rise[0]), 0.0)),
        on_carry * GRAVITY * np.sqrt(np.maximum((straight - rise[2]) * (straight + rise[2]), 0.0)),
    )
    loads = c.raw("circuit.loads", True)
    return Rows(
        pitch=pitch, speed=speed, strands=strands, mass=mass, radius=(radius_tail, radius_drive), joints=joints,
        circuit_time=circuit_time, joint_time=pitch / speed, duration=duration, rise=rise, straight=straight,
        centrifugal=centrifugal, weights=weights, counted=counted, teeth=(teeth_tail, teeth_drive),
        angle=(angle_tail, angle_drive), loads=(returning, carried),
        lift=tuple(q * GRAVITY * h for q, h in zip((on_return, on_return, on_carry, on_return), rise, strict=True)),
        acceleration=np.where(loads, carried * square, 0.0),
        extra=c.si("circuit.extra_pull_n", 1.0, 0.0),
        joint_arm=(pin / 2.0 * angle_tail / pitch, pin / 2.0 * angle_drive / pitch),
        bearing_arm=(SHAFT_SHARE * np.sin(wrap_tail / 2.0), SHAFT_SHARE * np.sin(wrap_drive / 2.0)),
        strand_share=np.where(strands == 1, 1.0, np.where(strands == 2, 1.2, 1.3)) / strands,
        take_up=c.si("circuit.take_up_n"),
        environment=(
            c.si("circuit.return_temperature_c", 1.0, ambient), ambient,
            c.si("circuit.carry_temperature_c", 1.0, ambient), ambient,
        ),
        even=not (c.has("circuit.return_temperature_c") or c.has("circuit.carry_temperature_c")),
        tau=mass * STEEL_HEAT
        / (HEAT_TRANSFER * c.si("circuit.surface_factor", 1.0, 3.0) * 2.0 * np.sqrt(np.pi * mass / STEEL_DENSITY)),
        rollers=(
            c.is_word("circuit.return_support", "rollers", "rollers"),
            c.is_word("circuit.support", "rollers", "rollers"),
        ),
    )  # fmt: skip


def temperatures(loop: Rows) -> Rows:
    """Periodic chain temperature in closed form; a loop at one temperature needs none of it."""
    ambient = loop.environment[1]
    if loop.even:
        same = (ambient,) * 4
        return Rows(inlet=same, outlet=same, mean=same, over_loop=ambient, hottest=ambient)
    ratio = tuple(duration / loop.tau for duration in loop.duration)
    offset: Any = 0.0
    for part, environment in zip(ratio, loop.environment, strict=True):
        decay = np.exp(-part)
        offset = offset * decay - environment * np.expm1(-part)
    start = offset / -np.expm1(-(ratio[0] + ratio[1] + ratio[2] + ratio[3]))
    inlet, outlet, mean, total = [], [], [], 0.0
    for part, environment, duration in zip(ratio, loop.environment, loop.duration, strict=True):
        excess = start - environment
        inlet.append(start)
        start = environment + excess * np.exp(-part)
        outlet.append(start)
        mean.append(environment + excess * -np.expm1(-part) / part)
        total = total + mean[-1] * duration
    return Rows(inlet=tuple(inlet), outlet=tuple(outlet), mean=tuple(mean), over_loop=total / loop.circuit_time)


def time_mean(loop: Rows, heat: Rows, rates: Any) -> list[Any]:
    """Means over a revolution of functions of temperature: 16-point Gauss-Legendre on panels of two time constants."""
    if loop.even:
        return list(rates(heat.over_loop))
    count = len(loop.circuit_time)
    sums = [np.zeros(count) for _ in rates(20.0)]
    for place in range(4):
        tau = np.broadcast_to(loop.tau, (count,))
        environment = np.broadcast_to(loop.environment[place], (count,))
        duration, excess = loop.duration[place], heat.inlet[place] - environment
        varying = np.minimum(duration, SETTLED * tau)
        panels = np.maximum(np.ceil(varying / (2.0 * tau)), 1.0)
        width = varying / panels
        rest = duration - varying
        if rest.any():
            for total, value in zip(sums, rates(environment), strict=True):
                total += rest * value
        rows = np.arange(count)
        decay = np.exp(-(width / tau) * NODES[:, None])
        fade = np.exp(-width / tau)
        panel = 0
        while rows.size:
            values = rates(environment[rows] + excess[rows] * decay)
            for total, value in zip(sums, values, strict=True):
                total[rows] += width[rows] * (WEIGHTS @ value)
            panel += 1
            left = panels[rows] > panel
            rows, decay = rows[left], decay[:, left]
            decay = decay * fade[rows]
    return [total / loop.circuit_time for total in sums]


def straight_forces(loop: Rows, c: Columns, bush_roller: tuple[Any, Any], plate_track: Any) -> tuple[Any, Any]:
    """What the two strands add to the tension, N."""
    roller = c.si("chain.roller_diameter_mm", MM, np.inf)
    bush = c.si("chain.bush_diameter_mm", MM)
    factor, arm = c.si("friction.track_factor", 1.0, 1.0), c.si("friction.rolling_arm_mm", MM, 0.5)
    trolley = c.si("friction.trolley_coefficient", 1.0, 0.02)
    forces = []
    for which, name in enumerate(("circuit.return_support", "circuit.support")):
        resistance = np.where(
            loop.rollers[which],
            factor * (bush_roller[which] * bush + 2.0 * arm) / roller,
            np.where(
                c.is_word(name, "slide", "rollers"),
                plate_track,
                np.where(c.is_word(name, "trolleys", "rollers"), trolley, 0.0),
            ),
        )
        forces.append(loop.lift[2 * which] + resistance * loop.weights[which])
    return forces[0], forces[1] + loop.acceleration + loop.extra


def march(loop: Rows, forces: tuple[Any, Any], joint_tail: Any, joint_drive: Any, wheel_bearing: Any) -> Rows:
    """Effective tensions at the ends of the places and the pull."""
    slack = loop.take_up
    onto_tail = slack + forces[0]
    joint, bearing = joint_tail * loop.joint_arm[0], wheel_bearing * loop.bearing_arm[0]
    both = joint + bearing
    off_tail = ((1.0 + both) * onto_tail + 2.0 * joint * loop.centrifugal[1] + loop.lift[1]) / (1.0 - both)
    tight = off_tail + forces[1]
    joint, bearing = joint_drive * loop.joint_arm[1], wheel_bearing * loop.bearing_arm[1]
    pull = (
        (tight - slack) + joint * (tight + slack + 2.0 * loop.centrifugal[3]) + bearing * (tight + slack) + loop.lift[3]
    )
    return Rows(slack=slack, onto_tail=onto_tail, off_tail=off_tail, tight=tight, pull=pull)


def events(loop: Rows, way: Rows) -> tuple[np.ndarray, np.ndarray]:
    """Tension of the heaviest strand at the four articulations and its mean over the rest before each, N."""
    share, pulled = loop.strand_share, loop.centrifugal
    count = len(way.tight)
    tension, rest = np.empty((4, count)), np.empty((4, count))
    tension[0] = (way.onto_tail + pulled[1]) * share
    tension[1] = (way.off_tail + pulled[1]) * share
    tension[2] = (way.tight + pulled[3]) * share
    tension[3] = (way.slack + pulled[3]) * share
    rest[0] = ((way.slack + way.onto_tail) / 2.0 + pulled[0]) * share
    rest[1] = ((way.onto_tail + way.off_tail) / 2.0 + pulled[1]) * share
    rest[2] = ((way.off_tail + way.tight) / 2.0 + pulled[2]) * share
    rest[3] = ((way.tight + way.slack) / 2.0 + pulled[3]) * share
    return tension, rest


def event_temperatures(heat: Rows, even: bool) -> tuple[Any, ...]:
    """Chain temperature at each articulation: one for all where the loop has one temperature."""
    if even:
        return (heat.over_loop,)
    return (heat.inlet[1], heat.outlet[1], heat.inlet[3], heat.outlet[3])
