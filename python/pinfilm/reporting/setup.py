"""The set-up sheet: what to set, where and why, what to check on the day, how to prove it later."""

from __future__ import annotations

from .._core import Comparison, Drip, Evaluation, Manual, Spray, Straight, Synchronised
from .facts import Fact, method, value_of

LUBRICATION = (
    "lubrication.interval_h",
    "lubrication.dose_ul",
    "lubrication.flow_ml_per_min",
    "lubrication.zone_length_mm",
    "lubrication.shot_ul",
    "lubrication.every_nth",
    "lubrication.points",
    "circuit.strands",
    "lubrication.timer.run_min",
    "lubrication.timer.dwell_min",
    "lubrication.timer.clock",
    "lubrication.timer.interlocked",
)
PLACE = (
    "fill.application_section",
    "fill.application_position",
    "fill.application_side",
    "fill.application_c",
    "fill.viscosity_application_mpa_s",
    "fill.viscosity_most_mpa_s",
    "fill.time_available_s",
    "fill.entry_plate_gap_s",
    "fill.entry_joint_s",
    "fill.entered_share",
    "fill.application_score",
)
OIL = (
    "oil.name",
    "oil.iso_vg",
    "oil.v1_mm2_s",
    "oil.v2_mm2_s",
    "oil.flash_point_c",
    "oil.food_grade",
    "supply.applied_l_per_year",
)
SUPPLY = (
    "supply.reservoir_l",
    "supply.reservoir_days",
    "supply.line_length_m",
    "supply.line_bore_mm",
    "supply.line_drop_kpa",
    "supply.outlet_use",
    "supply.injector_s",
    "supply.time_between_shots_s",
    "supply.cable_length_m",
    "supply.cable_mm2",
    "supply.cable_v",
    "supply.cable_inrush_v",
    "supply.least_voltage_v",
)


def sheet(result: Evaluation) -> list[tuple[str, list[Fact]]]:
    """Return groups of what to set, each row with its value and meaning."""
    groups = (("Oil", OIL), (f"Dosing, {method(result)}", LUBRICATION), ("Place", PLACE), ("Supply", SUPPLY))
    shown = []
    for title, paths in groups:
        facts = []
        for path in paths:
            try:
                explained = result.explain(path)
            except ValueError:  # a key of another method, or of a supply that was not surveyed
                continue
            value = value_of(result, path)
            if value:
                facts.append(Fact(path, explained.means, (value,)))
        if facts:
            shown.append((title, facts))
    return shown


def why_there(result: Evaluation) -> str:
    """Return where oil is applied and what speaks for that place, in one sentence or two."""
    fill, number = result.fill, result.fill.application_section
    if number is None or fill.application_position is None:
        return ""
    section = result.line.circuit.sections[number]
    kind = f"a straight on {section.support}" if isinstance(section, Straight) else f"a turn ({section.kind})"
    entry, leave = result.tension.profile_n[number]
    given = getattr(result.line.lubrication, "application_section", None) is not None
    return (
        f"Section {number} of the survey ({kind}), at {fill.application_position:.0%} of its length, from the "
        f"{fill.application_side}: "
        f"{'the place that the survey names' if given else 'the place with the best score'}. The chain is at "
        f"{fill.application_c:.0f} °C there and its effective tension lies between {min(entry, leave):,.0f} and "
        f"{max(entry, leave):,.0f} N (loop: {result.tension.least_n:,.0f} to {result.tension.tight_n:,.0f} N). "
        "Oil has "
        f"{fill.time_available_s:.3g} s to enter; it needs {fill.entry_plate_gap_s:.3g} s through the plate gap and "
        f"{fill.entry_joint_s:.3g} s further into the joint."
    )


def on_the_day(result: Evaluation) -> list[str]:
    """Return what to check while the set-up is made, in order."""
    line = result.line
    steps = [
        "Lock out the drive by the plant's procedure before fitting, adjusting or measuring at the chain; put "
        "every guard "
        "back before it runs.",
        "Count the joints of one strand past a paint mark: the figures here rest on "
        f"{value_of(result, 'kinematics.joints')} "
        f"({'counted' if result.kinematics.joints_counted else 'computed from the length, not counted'}).",
        "Time one revolution of the paint mark with a stop watch: "
        f"{value_of(result, 'kinematics.circuit_time_s')} are expected. "
        "If it differs, put in the measured speed and evaluate again before setting the timer: which joints are "
        "reached "
        "depends on it.",
    ]
    lubrication = line.lubrication
    if isinstance(lubrication, Manual):
        steps.append(
            f"Weigh or measure the oil of ten joints: {value_of(result, 'lubrication.dose_ul')} are meant for one "
            "joint."
        )
    if isinstance(lubrication, Drip):
        steps.append(
            "Catch the drops of ten minutes in a measuring cup: "
            f"{value_of(result, 'lubrication.flow_ml_per_min')} are meant."
        )
    if isinstance(lubrication, Spray):
        steps.append(
            "Catch the oil of each nozzle in a cup for one run: "
            f"{value_of(result, 'lubrication.flow_ml_per_min')} are meant "
            "while it sprays. Look whether the spray meets the plate gaps and not the floor."
        )
    if isinstance(lubrication, Synchronised):
        steps.append(
            f"Catch a hundred shots in a measuring cup: {value_of(result, 'lubrication.shot_ul')} are meant for "
            "one shot. With "
            "chalk on the plates, look whether each shot lands in the plate gap at full speed."
        )
    if getattr(lubrication, "timer", None) is not None:
        steps.append(
            f"Measure run and dwell with a stop watch: {value_of(result, 'lubrication.timer.run_min')} and "
            f"{value_of(result, 'lubrication.timer.dwell_min')}. Stop the line for a minute and look whether the "
            "timer stands "
            "still or goes on as the sheet says."
        )
    if result.supply.cable_v is not None:
        steps.append(
            "Have a qualified electrician read the voltage at the device while it works: "
            f"{value_of(result, 'supply.cable_v')} "
            f"are expected, {value_of(result, 'supply.least_voltage_v')} is the least."
        )
    steps.append(
        f"Look at plates and floor after a week: {result.supply.dripped_share:.0%} of the applied oil is expected "
        "not to stay in "
        "the joints. Wet floors are slippery: trays and absorbents belong to the set-up."
    )
    return steps


def proof(comparison: Comparison) -> list[str]:
    """Return how to prove later that it works, with the figures to expect."""
    now, proposed = comparison.now, comparison.proposed
    steps = [
        "Elongation proves the pins. Measure the length of a marked stretch of some twenty pitches under "
        "tension, at the "
        f"same temperature, before the change and every half year. A new chain would grow by "
        f"{value_of(now, 'wear.elongation_1_year_pct')} in a year as it is and by "
        f"{value_of(proposed, 'wear.elongation_1_year_pct')} as proposed; wear coefficients are uncertain by "
        "factors of 5 to 30 "
        "until one reading is in, so put the reading in and calibrate.",
    ]
    if now.drive.current_a is not None and proposed.drive.current_a is not None:
        steps.append(
            f"The drive current speaks for rollers, tracks and trolleys. {now.drive.current_a:.3g} A as it is and "
            f"{proposed.drive.current_a:.3g} A as proposed are expected at the same load. Log a month before and "
            "a month after, "
            f"with load, temperature and stops; {_detectable(now)}"
        )
    steps += [
        "Mark ten joints spread over the loop and look at them before each shot and after it for a week: all of "
        "them must be "
        "wet at the gap, none may run.",
        "Keep the amount of oil filled into the reservoir, with dates: it must agree with "
        f"{value_of(proposed, 'supply.applied_l_per_year')}.",
        "Repeat the count and the stop watch after every change of speed, chain length or timer.",
    ]
    return steps


def _detectable(now: Evaluation) -> str:
    least = now.drive.pull_detectable_n
    if least is None:
        return "what such a log can show was not computed for this drive."
    return (
        f"such logs can show a change of pull of {least:.3g} N or more, of {now.tension.pull_n:.4g} N. A smaller "
        "change proves "
        "nothing either way."
    )
