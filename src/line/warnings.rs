//! What to read with care: findings of the rooms, put into sentences that say what to do.

use super::checked::Checked;
use super::computed::{Computed, Numbers};
use super::course::Course;
use super::driving::Driving;
use super::oiling::Oiling;
use super::settle::Settled;
use crate::circuit::{Finding, inspect_layout, inspect_march};
use crate::drive::{BREAKAWAY_CAUTION, breakaway_share};
use crate::lubrication::{Clock, LubricationSi};
use crate::quantity::Notes;
use crate::quantity::show::brief as number;
use crate::quantity::unit::{M_PER_MIN, MPA};
use crate::wear::{JUMP_WARNING_SHARE, TEMPERING_TEMPERATURE, tip_elongation, wear_does_not_limit};

/// Lock risk above which a timer is not to be trusted. Closure of our own.
const LOCK_RISK: f64 = 0.05;
/// Fill below which oil at its lowest is called starved: the floor of the survey decides.
const OUTLET_USE: f64 = 0.8;
/// Days to refill below which the reservoir is small. Common practice.
const RESERVOIR_DAYS: f64 = 7.0;
/// Years to residue below which it is worth a word. Closure of our own.
const RESIDUE_YEARS: f64 = 2.0;
/// Load of the motor below which its current is a weak witness.
const WEAK_WITNESS: f64 = 0.4;
/// Distance from the pour point within which oil may not flow (K). Common practice.
const POUR_MARGIN: f64 = 10.0;
/// Mismatch of a nameplate worth a word.
const MISMATCH: f64 = 0.03;
/// Share of the pull below which a pair is hidden in it.
const SMALL_SHARE: f64 = 0.05;

/// Gathers every warning that this evaluation calls for; with `codes_only` without limits and sentences.
pub(super) fn warnings(computed: &Computed, numbers: &Numbers, codes_only: bool) -> Notes {
    let Computed { survey, course, oiling, settled, starting, driving, .. } = computed;
    let mut notes = Notes::about(&survey.notes, codes_only);
    let mut findings = Vec::new();
    inspect_layout(&course.layout, &mut findings);
    inspect_march(&course.layout, &settled.march, &mut findings);
    findings.extend(starting.finding);
    // What to do something about first, what to know about the models last.
    of_oil(&mut notes, survey, oiling, numbers);
    findings.iter().for_each(|finding| of_circuit(&mut notes, finding));
    of_joints(&mut notes, settled, numbers);
    of_wear(&mut notes, survey, course, numbers);
    of_drive(&mut notes, survey, driving, starting.breakaway.pull, numbers);
    of_supply(&mut notes, numbers, survey);
    notes
}

fn of_circuit(notes: &mut Notes, finding: &Finding) {
    match *finding {
        Finding::JointsNotCounted { joints } => notes.warn("joints_not_counted", "circuit.joints", f64::from(joints), "", "counted",
            format_args!("The {joints} joints of a strand were computed, not counted: every n-th-joint dosing depends on the exact number, and wear lengthens the chain. Count them.")),
        Finding::OddJoints { joints } => notes.warn("odd_joints", "circuit.joints", f64::from(joints), "", "an even number",
            format_args!("{joints} joints is an odd number: such a loop needs a cranked link. Check the count.")),
        Finding::JointsDiffer { counted, computed } => notes.warn("joints_differ", "circuit.joints", f64::from(counted), "", format_args!("about {computed}"),
            format_args!("{counted} joints were counted, but the surveyed lengths make {computed}: check lengths, pitch and count.")),
        Finding::FewTeeth { section, teeth } => notes.warn("few_teeth", format!("circuit.sections.{section}.teeth"), f64::from(teeth), "", "at least 8",
            format_args!("Section {section} has {teeth} teeth: below 8 the chain runs in jerks, and joints articulate far.")),
        Finding::FastChain { speed } => notes.warn("fast_chain", "duty.speed_m_per_min", M_PER_MIN.from_si(speed), "m/min", "at most 150 m/min",
            format_args!("At {} m/s this is a transmission drive rather than a conveyor: impact and vibration are not modelled.", number(speed))),
        Finding::PlanNotClosed { turned } => notes.warn("plan_not_closed", "circuit.sections", turned.to_degrees(), "°", "360° or -360°",
            format_args!("The turns add up to {}°, but a closed plan turns by ±360°: a turn, its wrap or its side is wrong.", number(turned.to_degrees()))),
        Finding::SlackChain { take_up, required, least } if least > 0.0 => notes.warn("slack_chain", "tension.slack_n", take_up, "N", format_args!("at least {} N", number(required)),
            format_args!("The take-up of {} N leaves the chain slack; it needs {} N.", number(take_up), number(required))),
        Finding::SlackChain { take_up, required, least } => notes.warn("slack_chain", "tension.slack_n", take_up, "N", format_args!("at least {} N", number(required)),
            format_args!("The take-up of {} N lets the chain pile up (least tension {} N): tensions there are not physical. It needs {} N.", number(take_up), number(least), number(required))),
        Finding::LargeSag { section, sag_share } if sag_share.is_finite() => notes.warn("large_sag", format!("circuit.sections.{section}"), sag_share * 100.0, "%", "at most 5 % of the span",
            format_args!("The chain of section {section} sags by {} % of its span: more take-up or more idlers.", number(sag_share * 100.0))),
        Finding::LargeSag { section, sag_share } => notes.warn("large_sag", format!("circuit.sections.{section}"), sag_share * 100.0, "%", "at most 5 % of the span",
            format_args!("The chain of section {section} hangs without tension.")),
        Finding::CurveWeight { section, weight_share } => notes.warn("curve_weight", format!("circuit.sections.{section}"), weight_share, "", "at most 0.2",
            format_args!("In the vertical curve of section {section} the weight on a radian is {} of the tension; its friction is neglected.", number(weight_share))),
        Finding::ChainLifts { section, tension_over_weight } => notes.warn("chain_lifts", format!("circuit.sections.{section}"), tension_over_weight, "", "at most 1",
            format_args!("If the curve of section {section} is concave and has no hold-down, the chain lifts off it: tension is {} times the weight on a radian.", number(tension_over_weight))),
        Finding::TensionJump { section, share } => notes.warn("tension_jump", format!("circuit.sections.{section}"), share * 100.0, "%", "at most 2 %",
            format_args!("The load on the turn of section {section} makes joint tension jump by {} % against the straight beside it: a limit of the model.", number(share * 100.0))),
        Finding::FrictionHeating { heating } => notes.warn("friction_heating", "kinematics.mean_c", heating, "K", "at most 5 K",
            format_args!("Friction may heat the chain by up to {} K, which the temperature round the loop leaves out.", number(heating))),
        Finding::RunBack { rises, friction } => notes.warn("run_back", "tension.pull_n", rises, "N", format_args!("below {} N", number(friction)),
            format_args!("The rises pull with {} N against {} N of friction: when the drive lets go, the loaded chain runs back. It needs a holdback or brake; the machine's designer and local codes decide.", number(rises), number(friction))),
        Finding::Overhauling { pull } => notes.warn("overhauling", "tension.pull_n", pull, "N", "above 0 N",
            format_args!("The load drives the chain (pull {} N): the drive must brake, and its current says nothing of friction.", number(pull))),
        Finding::Strength { strand_tension, tensile_strength, safety } => notes.warn("strength", "tension.heaviest_strand_n", strand_tension, "N", format_args!("at most {} N", number(tensile_strength / 7.0)),
            format_args!("At breakaway the heaviest strand carries {} N, a {} th of its tensile strength; a seventh is usual (common practice). People under the load and local rules ask for more.", number(strand_tension), number(safety))),
    }
}

fn of_joints(notes: &mut Notes, settled: &Settled, numbers: &Numbers) {
    if settled.events.is_empty() {
        return;
    }
    let worst = |index: usize| &numbers.joint.events[index];
    let first =
        |is: fn(&crate::joint::Cautions) -> bool| settled.events.iter().position(|joint| is(&joint.contact.cautions));
    if let Some(i) = first(|c| c.bearing_pressure) {
        let highest = numbers.joint.events.iter().map(|event| event.pressure_mpa).fold(0.0, f64::max);
        let speed = settled.events[i].contact.sliding_speed;
        let limit = MPA.from_si(crate::joint::permissible_pressure(speed));
        notes.warn("bearing_pressure", "joint.events.pressure_mpa", highest, "MPa", format_args!("at most {} MPa", number(limit)),
            format_args!("The bearing pressure of {} MPa is above the {} MPa that hardened pins are given (common practice, no source): expect fast wear; a larger chain or more strands.", number(highest), number(limit)));
    }
    if let Some(i) = first(|c| c.pin_bending) {
        notes.warn("pin_bending", "joint.events.contact_pressure_mpa", worst(i).contact_pressure_mpa, "MPa", "",
            "The pin bends more than the contact gives, so the ends of the bush carry one to four times the computed contact pressure.");
    }
    if first(|c| c.brief_turn).is_some() {
        notes.warn("brief_turn", "joint.events.film_um", f64::NAN, "µm", "",
            "Some turns are too brief or too lightly loaded for the closed form of the film: the film shown there is too thin.");
    }
    if first(|c| c.unloaded).is_some() {
        notes.warn(
            "unloaded_joint",
            "joint.events.tension_n",
            f64::NAN,
            "N",
            "above 0 N",
            "Some joints articulate without tension: boundary friction is taken there, and no wear.",
        );
    }
    let most = numbers.joint.events.iter().map(|event| event.lambda_fill_1).fold(0.0, f64::max);
    if most < 1.0 {
        notes.warn("boundary_lubrication", "joint.events.lambda_ratio", most, "", "1 for mixed, 3 for full film",
            format_args!("Film theory says boundary lubrication: even full joints reach a film of only {} of the roughness. Supply and additive decide friction and wear here; viscosity decides whether oil gets in and stays.", number(most)));
    }
    if settled.rounds > 100 {
        notes.warn(
            "slow_settling",
            "joint.rounds",
            settled.rounds as f64,
            "",
            "about 10",
            "Friction and pull settled only slowly: the result depends strongly on the film model.",
        );
    }
}

fn of_oil(notes: &mut Notes, survey: &Checked, oiling: &Oiling, numbers: &Numbers) {
    let fill = &numbers.fill;
    if fill.never_reached > 0.0 {
        notes.warn("joints_never_reached", "fill.never_reached", fill.never_reached, "", "0",
            format_args!("{} % of the joints never get oil. They run dry, and their wear decides the life of the chain whatever the mean says.", number(fill.never_reached * 100.0)));
    }
    if let Some(share) = fill.never_reached_if_miscounted.filter(|share| *share > fill.never_reached) {
        notes.warn("count_decides", "fill.never_reached_if_miscounted", share, "", "0",
            format_args!("The joints were not counted: if their number is up to 4 off, {} % of them would never get oil. Count them, or choose another n.", number(share * 100.0)));
    }
    if let Some(risk) = fill.lock_risk.filter(|risk| *risk > LOCK_RISK) {
        notes.warn("lock_risk", "fill.lock_risk", risk, "", "at most 0.05",
            format_args!("The timer runs near a simple fraction of the circuit time: at {} % of the possible speed errors a stretch of chain waits too long. A longer run, or a period further from that fraction.", number(risk * 100.0)));
    }
    if fill.lowest_fill_reached < survey.si.fill.floor {
        notes.warn(
            "low_fill",
            "fill.lowest_fill_reached",
            fill.lowest_fill_reached,
            "",
            format_args!("at least {}", number(survey.si.fill.floor)),
            format_args!(
                "Reached joints fall to a fill of {} before they are oiled again: more oil, or more often.",
                number(fill.lowest_fill_reached)
            ),
        );
    }
    if fill.entered_share < 1.0 {
        notes.warn("slow_entry", "fill.entered_share", fill.entered_share, "", "1",
            format_args!("Only {} % of the captured oil enters in the {} s it has; it would take {} s. A warmer or earlier point, or a thinner oil.", number(fill.entered_share * 100.0), number(fill.time_available_s), number(fill.entry_plate_gap_s + fill.entry_joint_s)));
    }
    if fill.viscosity_least_mpa_s > fill.viscosity_most_mpa_s {
        notes.warn("no_grade_fits", "fill.viscosity_least_mpa_s", fill.viscosity_least_mpa_s, "mPa s", format_args!("at most {} mPa s", number(fill.viscosity_most_mpa_s)),
            "No viscosity both enters in time and stays until the next shot: a warmer or earlier point, a shorter interval, or an oil of higher viscosity index.");
    }
    if numbers.supply.dripped_share > 0.5 {
        notes.warn(
            "drips",
            "supply.dripped_share",
            numbers.supply.dripped_share,
            "",
            "at most 0.5",
            format_args!(
                "{} % of the applied oil never stays in a joint: it drips, and makes floors slippery.",
                number(numbers.supply.dripped_share * 100.0)
            ),
        );
    }
    for exclusion in &oiling.application.exclusions {
        notes.warn(
            "application_point",
            "lubrication.application_section",
            oiling.application.spot.section as f64,
            "",
            "another place",
            format_args!("Oil should not be applied there: {}.", exclusion.reason()),
        );
    }
    if oiling.near_flash_point {
        notes.warn("near_flash_point", "oil.flash_point_c", survey.si.oil.flash_point.unwrap_or(f64::NAN), "°C", "20 K above the hottest chain",
            "The chain comes within 20 K of the flash point of this oil. Somebody has confirmed it; the caution stays all the same, and the local fire code decides.");
    }
    if let Some(pour) = survey.si.oil.pour_point {
        let at = fill.application_c;
        if at < pour + POUR_MARGIN {
            notes.warn(
                "near_pour_point",
                "fill.application_c",
                at,
                "°C",
                format_args!("at least {} °C", number(pour + POUR_MARGIN)),
                "The application point is within 10 K of the pour point: the oil may not flow.",
            );
        }
    }
    match &survey.si.lubrication {
        LubricationSi::Drip(_) => notes.warn("drip_lock", "fill.pass_chance", fill.pass_chance.unwrap_or(f64::NAN), "", "",
            "A steady drip against evenly spaced joints can fall into step with them and then oils the same ones for ever; chance passes are assumed."),
        LubricationSi::Spray(spray) if spray.timer.clock == Clock::Wall && !spray.timer.interlocked => {
            notes.warn("sprays_in_stops", "lubrication.timer.interlocked", f64::NAN, "", "interlocked",
                "The timer also runs while the line stands: that oil falls on whatever stands below the nozzle.");
        }
        LubricationSi::Synchronised(applicator) if applicator.timer.as_ref().is_some_and(|timer| timer.clock == Clock::Wall) => {
            notes.warn("wall_clock", "lubrication.timer.clock", f64::NAN, "", "machine",
                "The timer runs on wall time: waits are computed as if the line never stopped between runs.");
        }
        _ => {}
    }
    if let Some(years) = fill.residue_years.filter(|years| *years < RESIDUE_YEARS) {
        notes.warn("residue", "fill.residue_years", years, "years", "at least 2 years",
            format_args!("What evaporates and oxidises may block half of the clearance in {} years: an oil that leaves less residue.", number(years)));
    }
    let widest = "Loss rate, capture and dry wear coefficient are uncertain by factors of 5 to 30 until they are calibrated: one elongation reading is worth more than all tables.";
    notes.warn("uncalibrated", "fill.loss_rate_per_h", fill.loss_rate_per_h, "1/h", "", widest);
}

fn of_wear(notes: &mut Notes, survey: &Checked, course: &Course, numbers: &Numbers) {
    let wear = &numbers.wear;
    if wear_does_not_limit(wear.life_years) {
        notes.warn(
            "wear_does_not_limit",
            "wear.life_years",
            wear.life_years,
            "years",
            "below 50 years",
            "Wear does not limit this chain: corrosion, damage or a change of product will end it first.",
        );
    }
    if wear.temperature_c > TEMPERING_TEMPERATURE {
        notes.warn(
            "tempering",
            "wear.temperature_c",
            wear.temperature_c,
            "°C",
            format_args!("at most {} °C", number(TEMPERING_TEMPERATURE)),
            "Above this temperature hardened steel softens for good, which is not modelled: wear will be faster.",
        );
    }
    if survey.si.wear.coefficient_dry < survey.si.wear.coefficient_boundary {
        notes.warn(
            "wear_coefficients",
            "wear.wear_coefficient_dry",
            survey.si.wear.coefficient_dry,
            "",
            "above the boundary coefficient",
            "The dry joint is said to wear less than the oiled one.",
        );
    }
    let chain = &survey.si.chain;
    let teeth = course.layout.places.iter().filter_map(|place| place.turn()?.teeth).max();
    if let (Some(teeth), Some(roller)) = (teeth, chain.roller_diameter) {
        let tip = tip_elongation(chain.pitch, roller, teeth);
        if chain.elongation_limit > JUMP_WARNING_SHARE * tip {
            notes.warn("tooth_jump", "chain.elongation_limit_pct", chain.elongation_limit * 100.0, "%", format_args!("at most {} %", number(JUMP_WARNING_SHARE * tip * 100.0)),
                format_args!("On {teeth} teeth the chain may jump before it reaches its elongation limit; it certainly does at {} %.", number(tip * 100.0)));
        }
    }
}

fn of_drive(notes: &mut Notes, survey: &Checked, driving: &Driving, breakaway_pull: f64, numbers: &Numbers) {
    let (drive, load) = (&survey.si.drive, driving.load.load_ratio);
    if driving.load.running.is_none() {
        notes.warn("overhauling_motor", "drive.shaft_power_w", driving.load.shaft_power, "W", "above 0 W",
            "The load drives the motor: current and energy are not computed. The drive must brake safely; the machine's designer decides.");
    } else if driving.shaft_power_at_half_friction < 0.0 {
        notes.warn("overhauling_when_oiled", "drive.shaft_power_w", driving.shaft_power_at_half_friction, "W", "above 0 W",
            "With half of today's friction the load would drive the motor: good oiling can make this line run away. The machine's designer decides.");
    }
    if load > 1.0 {
        notes.warn(
            "overload",
            "drive.load",
            load,
            "",
            "at most 1",
            format_args!("The motor runs at {} % of its rated power.", number(load * 100.0)),
        );
    }
    if load < WEAK_WITNESS {
        notes.warn("weak_witness", "drive.load", load, "", "at least 0.4",
            format_args!("At {} % of rated power most of the current is magnetising current: log electrical power, not current, to prove anything.", number(load * 100.0)));
    }
    if let Some(locked) = breakaway_share(
        breakaway_pull,
        survey.si.duty.speed,
        &driving.gear,
        drive.rated_power,
        drive.locked_rotor_torque_ratio,
    ) && locked > BREAKAWAY_CAUTION
    {
        notes.warn(
            "breakaway",
            "tension.breakaway_pull_n",
            breakaway_pull,
            "N",
            "80 % of the locked-rotor torque at low voltage",
            format_args!(
                "After a stop the motor needs {} % of its locked-rotor torque at 10 % low voltage: it may not start.",
                number(locked * 100.0)
            ),
        );
    }
    if driving.motor.mismatch.abs() > MISMATCH {
        notes.warn(
            "nameplate",
            "drive.rated_current_a",
            drive.rated_current,
            "A",
            "power, voltage, efficiency and power factor that agree",
            format_args!(
                "The nameplate contradicts itself by {} %: √3 U I cos φ η is not the rated power.",
                number(driving.motor.mismatch * 100.0)
            ),
        );
    }
    if !drive.converter {
        let voltage = drive.supply_voltage.unwrap_or(drive.rated_voltage) / drive.rated_voltage;
        if (voltage - 1.0).abs() > 0.05 {
            notes.warn(
                "supply_voltage",
                "drive.supply_voltage_v",
                voltage * drive.rated_voltage,
                "V",
                "within 5 % of rated",
                "The iron of the motor is taken as unsaturated: at this voltage the computed current is uncertain.",
            );
        }
    }
    let pin_share =
        numbers.tension.shares.0.iter().find(|(cause, _)| cause == "joint").map_or(0.0, |(_, share)| *share);
    if pin_share < SMALL_SHARE {
        notes.warn("current_sees_other_pair", "tension.shares", pin_share, "", "",
            format_args!("Pins and bushes make {} % of the pull: the current proves oil at rollers, tracks or trolleys, never by itself in the pins. Pins are proved by elongation.", number(pin_share * 100.0)));
    }
    if let (Some(drop), Some(per_pull), Some(least)) =
        (numbers.drive.current_drop_all_a, numbers.drive.current_per_pull_a_per_n, numbers.drive.pull_detectable_n)
        && drop < least * per_pull
    {
        notes.warn("current_hides_it", "drive.current_drop_all_a", drop, "A", format_args!("above {} A", number(least * per_pull)),
                "Even if pin, roller and track friction were all halved, a month of logged current on each side could not show it: measure electrical power.");
    }
}

fn of_supply(notes: &mut Notes, numbers: &Numbers, survey: &Checked) {
    let supply = &numbers.supply;
    if let Some(used) = supply.outlet_use.filter(|used| *used > OUTLET_USE) {
        notes.warn("line_pressure", "supply.outlet_use", used, "", "at most 0.8",
            format_args!("Line and injector need {} % of the pump's outlet pressure when the oil is coldest: a wider or shorter line, or a thinner oil.", number(used * 100.0)));
    }
    if let (Some(needs), Some(has)) = (supply.injector_s, supply.time_between_shots_s)
        && needs > has
    {
        notes.warn(
            "injector_too_slow",
            "supply.injector_s",
            needs,
            "s",
            format_args!("at most {} s", number(has)),
            format_args!(
                "An injector needs {} s for a shot but gets only {} s: a larger n.",
                number(needs),
                number(has)
            ),
        );
    }
    if let Some(days) = supply.reservoir_days.filter(|days| *days < RESERVOIR_DAYS) {
        notes.warn(
            "small_reservoir",
            "supply.reservoir_days",
            days,
            "d",
            "at least 7 d",
            format_args!("The reservoir lasts {} days.", number(days)),
        );
    }
    if let Some(data) = &survey.si.supply {
        for (volts, name) in [(supply.cable_v, "supply.cable_v"), (supply.cable_inrush_v, "supply.cable_inrush_v")] {
            if let Some(volts) = volts.filter(|volts| *volts < data.least_voltage) {
                notes.warn(
                    "low_voltage",
                    name,
                    volts,
                    "V",
                    format_args!("at least {} V", number(data.least_voltage)),
                    format_args!("The device gets {} V: a thicker or shorter cable.", number(volts)),
                );
            }
        }
        if let (Some(coldest), Some(pour)) = (data.coldest, survey.si.oil.pour_point)
            && coldest < pour + POUR_MARGIN
        {
            notes.warn(
                "cold_line",
                "supply.coldest_c",
                coldest,
                "°C",
                format_args!("at least {} °C", number(pour + POUR_MARGIN)),
                "The line comes within 10 K of the pour point: the oil may not flow.",
            );
        }
    }
}
