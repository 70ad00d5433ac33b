//! The set-up sheet: what the fitter sets, checks on the day and comes back to.

use super::result::{LineSetUp, SetUpSheet};
use super::words::in_words;
use crate::circuit::Section;
use crate::error::Result;
use crate::line::Evaluation;
use crate::lubrication::{Clock, Lubrication, LubricationSi};
use crate::quantity::show::brief;
use crate::quantity::unit::{MIN, MM, ONE};
use crate::quantity::{Field, Word};
use crate::supply::{
    Conductor, Inrush, constant_power_load, least_bore, loop_resistance, outlet_pressure, resistive_load,
};
use std::borrow::Cow;

/// Share of the pump's outlet pressure that line and injector may need (common practice, no source).
const OUTLET_USE: f64 = 0.8;
/// Shots that are caught in a glass to check one: enough to read, few enough to wait for. Common practice, no source.
const CAUGHT: f64 = 20.0;

/// The sheet of a recommended set-up, from its evaluation.
pub(super) fn sheet(set_up: &LineSetUp, found: &Evaluation) -> Result<SetUpSheet> {
    let line = &found.line;
    let (supply, surveyed) = (&found.supply, line.supply.as_ref());
    Ok(SetUpSheet {
        name: line.name.clone(),
        set_up: set_up.clone(),
        clock: clock(&line.lubrication),
        point: point(set_up, found),
        point_why: point_why(found),
        worst_wait_h: found.fill.worst_wait_h,
        lowest_fill_reached: found.fill.lowest_fill_reached,
        never_reached: found.fill.never_reached,
        applied_l_per_year: supply.applied_l_per_year,
        reservoir_days: supply.reservoir_days,
        line_bore_mm: surveyed.and_then(|s| s.line_bore_mm),
        least_line_bore_mm: least_line_bore(found)?,
        cable_mm2: surveyed.and_then(|s| s.cable_mm2),
        least_cable_mm2: least_cable(found),
        check: checks(set_up, found),
        prove: proofs(found),
        cautions: found.cautions.iter().map(|caution| caution.message.clone()).collect(),
    })
}

fn clock(method: &Lubrication) -> Word {
    let timer = match method {
        Lubrication::Spray(m) => Some(&m.timer),
        Lubrication::Synchronised(m) => m.timer.as_ref(),
        _ => None,
    };
    Cow::Borrowed(match timer.map(|timer| (timer.clock, timer.interlocked)) {
        None => "no timer: it works whenever the chain runs",
        Some((Clock::Machine, _)) => "running time: wire it to the drive, so that it counts only while the chain runs",
        Some((Clock::Wall, true)) => "time of day, held while the chain stands",
        Some((Clock::Wall, false)) => "time of day, also while the chain stands: it then oils whatever stands below it",
    })
}

fn point(set_up: &LineSetUp, found: &Evaluation) -> Word {
    let Some(section) = set_up.application_section else { return Cow::Borrowed("as today") };
    let what = match found.line.circuit.sections.as_slice().get(section as usize) {
        Some(Section::Straight(straight)) => format!("the straight of {} m", brief(straight.length_m)),
        _ => "the turn".into(),
    };
    let from = match set_up.application_side {
        crate::quantity::Side::Top => "from the top",
        crate::quantity::Side::Beside => "from the side",
        crate::quantity::Side::Bottom => "from below",
    };
    Cow::Owned(format!(
        "section {section}, {what}, {} % of the way along it, {from}, on {} of the two plate gaps of a joint",
        brief(100.0 * set_up.application_position),
        if set_up.points == 2 { "both" } else { "one" }
    ))
}

fn point_why(found: &Evaluation) -> Word {
    let fill = &found.fill;
    let mut why = format!(
        "The chain has {} °C there and the oil {} mPa s; it needs {} s to enter and has {} s.",
        brief(fill.application_c),
        brief(fill.viscosity_application_mpa_s),
        brief(fill.entry_plate_gap_s + fill.entry_joint_s),
        brief(fill.time_available_s)
    );
    if let Some(score) = fill.application_score {
        why += &format!(
            " Score {} of 1 for slack chain, time, coolness, gravity, open gap, distance from a wash, and access.",
            brief(score)
        );
    }
    Cow::Owned(why)
}

/// The least bore (mm) at which line and injector leave the pump its margin, the oil at its coldest.
fn least_line_bore(found: &Evaluation) -> Result<Option<f64>> {
    let si = found.line.si(&ONE);
    let Some(supply) = &si.supply else { return Ok(None) };
    let (Some(length), Some(coldest), Some(ratio), Some(air)) =
        (supply.line_length, supply.coldest, supply.pump_ratio, supply.air_pressure)
    else {
        return Ok(None);
    };
    let strands = si.circuit.strands as f64;
    let flow = match (&si.lubrication, supply.delivery) {
        (LubricationSi::Synchronised(m), Some(delivery)) => m.shot * m.points as f64 * strands / delivery,
        (LubricationSi::Spray(m), _) => m.flow * m.points as f64 * strands,
        (LubricationSi::Drip(m), _) => m.flow * m.points as f64 * strands,
        _ => return Ok(None),
    };
    let spare = OUTLET_USE * outlet_pressure(ratio, air, supply.pump_efficiency) - supply.opening_pressure;
    if spare <= 0.0 {
        return Ok(None);
    }
    let liquid = si.oil.liquid()?;
    let bore = least_bore(length, flow, liquid.dynamic_viscosity(coldest)?, liquid.density(coldest), spare);
    Ok(Some(MM.from_si(bore)))
}

/// The smallest nominal cross-section (mm²) at which the device keeps its least voltage, running and switching on.
fn least_cable(found: &Evaluation) -> Option<f64> {
    let si = found.line.si(&ONE);
    let supply = si.supply.as_ref()?;
    let (length, power) = (supply.cable_length?, supply.device_power?);
    let keeps = |nominal: f64| -> Option<bool> {
        let area = crate::quantity::unit::MM2.to_si(nominal);
        let resistance = loop_resistance(length, area, supply.conductor_class, supply.cable_temperature).ok()?;
        let running = constant_power_load(supply.supply_voltage, power, resistance).ok()?.voltage;
        let starting = supply.inrush_factor * power;
        let inrush = match supply.inrush {
            Inrush::Resistive => resistive_load(supply.supply_voltage, starting, resistance).voltage,
            Inrush::ConstantPower => constant_power_load(supply.supply_voltage, starting, resistance).ok()?.voltage,
        };
        Some(running.min(inrush) >= supply.least_voltage)
    };
    Conductor::TABLE.iter().map(|row| row.nominal).find(|nominal| keeps(*nominal) == Some(true))
}

/// What to check on the day.
fn checks(set_up: &LineSetUp, found: &Evaluation) -> Vec<Word> {
    let (kinematics, supply) = (&found.kinematics, &found.supply);
    let mut list =
        vec!["Lock out the drive before anything is fitted or touched; the plant's procedure decides.".to_string()];
    let counted = if kinematics.joints_counted { "counted" } else { "only computed: count them past a paint mark" };
    if set_up.every_nth > 1 {
        list.push(format!(
            "The loop has {} joints ({counted}). One joint in {} reaches all of them only if the two have no factor in common.",
            kinematics.joints, set_up.every_nth
        ));
    }
    list.push(format!(
        "Time one turn of the chain by stop watch: {} min. If it differs by more than one in two hundred, recommend anew.",
        brief(MIN.from_si(kinematics.circuit_time_s))
    ));
    if set_up.method == "synchronised" {
        list.push(format!(
            "Catch {CAUGHT} shots of one nozzle and weigh them: {} µL. Then watch that shots land in the plate gap at running speed.",
            brief(CAUGHT * set_up.shot_ul)
        ));
    } else if let Some(flow) = set_up.flow_ml_per_min {
        list.push(format!("Catch one nozzle for a minute in a measuring glass: {} mL. A nozzle made for more only drips at that: then offer larger shots.",
            brief(flow)
        ));
    }
    if let (Some(run), Some(dwell)) = (set_up.run_min, set_up.dwell_min) {
        list.push(format!(
            "Set {} min on and {} min off. Paint one joint: it must get its first oil within {} running hours.",
            brief(run),
            brief(dwell),
            brief(found.fill.worst_wait_h)
        ));
    }
    if found.line.duty.wash_interval_h.is_some() {
        let left = found.fill.after_wash_fill.unwrap_or(f64::NAN);
        list.push(format!(
            "After a wash joints hold a fill of {} on average (floor {}): start a run by hand right after each wash.",
            brief(left),
            brief(found.line.fill.floor)
        ));
    }
    match supply.reservoir_days {
        Some(days) => {
            list.push(format!("Write the date of the next refill on the reservoir: in {} days.", brief(days.floor())))
        }
        None => list.push("Reservoir, line, pump and cable are not in the survey: size them before ordering.".into()),
    }
    list.push(
        "After an hour look below the point and at the next turns: no drops on product, floor or hot parts.".into(),
    );
    list.into_iter().map(Cow::Owned).collect()
}

/// How to prove it later.
fn proofs(found: &Evaluation) -> Vec<Word> {
    let mut list = vec![format!(
        "Pins: measure the length of 20 pitches under the same tension today and in half a year; {} % a year is expected.",
        brief(found.wear.elongation_1_year_pct)
    )];
    list.push(format!(
        "Oil: {} L should be gone after 30 days; much less means blocked nozzles, much more a leak.",
        brief(found.supply.applied_l_per_year * 30.0 / 365.0)
    ));
    let weak = ["weak_witness", "current_sees_other_pair", "current_hides_it"];
    let said = found.warnings.iter().filter(|warning| weak.contains(&warning.code.as_ref()));
    let said: Vec<String> = said.map(|warning| warning.message.to_string()).collect();
    match found.drive.current_a {
        Some(current) if said.is_empty() => list.push(format!(
            "Current: log it for a month before and after at the same load; {} A is expected afterwards.",
            brief(current)
        )),
        _ => list.extend(said),
    }
    list.push(
        "Joints: open one of the slack side after a quarter; it should be wet inside on the whole length of the pin."
            .into(),
    );
    list.into_iter().map(Cow::Owned).collect()
}

impl SetUpSheet {
    /// The sheet's title.
    pub(super) fn title(&self) -> String {
        format!("Set-up sheet, {}: {}", self.name, in_words(&self.set_up))
    }
}
