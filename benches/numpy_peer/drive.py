"""Drive: pull through the gear to the motor, whose circuit is fitted to its nameplate in closed form."""

from __future__ import annotations

from types import SimpleNamespace as Rows
from typing import Any

import numpy as np

from .columns import KW, RPM, Columns

TAU = 2.0 * np.pi


def fitted(c: Columns) -> Rows:
    """The circuit of each nameplate, all in real numbers."""
    voltage, printed = c.si("drive.rated_voltage_v"), c.si("drive.rated_current_a")
    power, speed = c.si("drive.rated_power_kw", KW), c.si("drive.rated_speed_rpm", RPM) * TAU
    efficiency, cosine = c.si("drive.rated_efficiency"), c.si("drive.rated_power_factor")
    frequency = c.si("drive.rated_frequency_hz", 1.0, 50.0)
    ratio = np.sqrt(3.0) * voltage * printed * efficiency * cosine / power
    current, cosine = printed / np.sqrt(ratio), cosine / np.sqrt(ratio)
    pole_pairs = np.floor(TAU * frequency / speed + 1e-9)
    slip = 1.0 - speed * pole_pairs / (TAU * frequency)
    input_power = power / efficiency
    loss = input_power - power
    kilowatts = power / 1e3
    assigned = np.where(kilowatts <= 1.0, 0.025, np.maximum(0.025 - 0.005 * np.log10(kilowatts), 0.005))
    stray = c.si("drive.stray_factor", 1.0, 1.0) * assigned * input_power
    windage = c.si("drive.friction_windage_share", 1.0, 0.10) * loss
    air_gap = (power + windage + stray) / (1.0 - slip)
    rest = loss - stray - windage - slip * air_gap
    core_share = c.si("drive.core_share", 1.0, 0.40)
    core, stator = core_share * rest, (1.0 - core_share) * rest / (3.0 * current * current)
    phase = voltage / np.sqrt(3.0)
    reactance = 0.5 * c.si("drive.leakage_pu", 1.0, 0.20) * phase / current
    sine = np.sqrt((1.0 - cosine) * (1.0 + cosine))
    active, reactive = current * cosine, -current * sine
    gap_square = (phase - active * stator + reactive * reactance) ** 2 + (active * reactance + reactive * stator) ** 2
    total = 3.0 * gap_square / air_gap
    apparent = 0.5 * (total + np.sqrt(total * total - 4.0 * reactance * reactance))
    rotor_square = air_gap / (3.0 * apparent)
    magnetising = 3.0 * phase * current * sine - 3.0 * reactance * (current * current + rotor_square)
    return Rows(
        power=power, stator=stator, reactance=reactance, rotor=apparent * slip, core=3.0 * gap_square / core,
        magnetising=3.0 * gap_square / magnetising, windage=windage, stray=stray / rotor_square, voltage=voltage,
    )  # fmt: skip


def load(c: Columns, pull: np.ndarray, speed: Any) -> Rows:
    """Shaft power, current at the clamp and electrical power; NaN where the load drives the motor or stalls it."""
    motor = fitted(c)
    rated = c.si("drive.rated_frequency_hz", 1.0, 50.0)
    f = c.si("drive.frequency_hz", 1.0, rated) / rated
    efficiency, fixed = c.si("drive.gear_efficiency"), c.si("drive.gear_fixed_share", 1.0, 0.5)
    gear_power = c.si("drive.gear_rated_power_kw", KW) if c.has("drive.gear_rated_power_kw") else motor.power
    relative = 1.0 / efficiency - 1.0
    follows, chain = 1.0 + (1.0 - fixed) * relative, pull * speed
    taken = np.where(chain >= 0.0, chain * follows, chain / follows) + fixed * gear_power * relative * f
    further = c.si("drive.gear_extra_efficiency", 1.0, 1.0)
    shaft = np.where(taken >= 0.0, taken / further, taken * further)

    converter = c.raw("drive.converter", False)
    mains = c.si("drive.supply_voltage_v", 1.0, motor.voltage)
    voltage = np.where(converter, motor.voltage * np.minimum(f, 1.0), mains)
    phase = voltage / np.sqrt(3.0)
    stator = motor.stator + 1j * (motor.reactance * f)
    magnetising = 1.0 / (1.0 / (motor.core * np.sqrt(f)) - 1j / (motor.magnetising * f))
    total = stator + magnetising
    seen = magnetising / total
    rotor_reactance = 1j * (motor.reactance * f)
    open_, short = magnetising + rotor_reactance, stator * seen + rotor_reactance
    source = (seen.real**2 + seen.imag**2) * phase * phase
    windage, lossy = motor.windage * f * f, motor.rotor + motor.stray * f * np.sqrt(f) / 3.0

    drawn = shaft + windage
    half = 1.5 * source - drawn * short.real
    end = drawn * (short.real**2 + short.imag**2) + 3.0 * source * lossy
    t = drawn / (half + np.sqrt(np.maximum(half * half - drawn * end, 0.0)))
    line = phase / total * (1.0 + open_ * t) / (1.0 + short * t)
    most = 1.0 / (lossy + np.abs(short + lossy))
    greatest = 3.0 * source * most * (1.0 - lossy * most) / np.abs(1.0 + short * most) ** 2 - windage
    runs = (shaft >= 0.0) & (shaft <= greatest)
    motor_input = 3.0 * phase * line.real
    saved = c.si("drive.converter_efficiency", 1.0, 0.97)
    before = converter & c.is_word("drive.current_measured_at", "before_converter", "motor")
    line_factor = c.si("drive.line_power_factor", 1.0, 0.90)
    current = np.abs(line)
    if np.any(before):
        current = np.where(before, motor_input / (saved * np.sqrt(3.0) * mains * line_factor), current)
    return Rows(
        shaft=shaft, ratio=shaft / motor.power, current=np.where(runs, current, np.nan),
        input=np.where(runs, motor_input / np.where(converter, saved, 1.0), np.nan), slip=t * motor.rotor,
    )  # fmt: skip
