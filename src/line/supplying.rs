//! Whether line, pump, reservoir and cable carry what the method needs.

use super::checked::Checked;
use super::course::Course;
use super::oiling::{Oiling, points};
use super::reach::{Reach, use_of_oil};
use crate::error::Result;
use crate::lubrication::LubricationSi;
use crate::supply::{
    Inrush, Segment, SupplyStateSi, constant_power_load, injector_time, line_drop, loop_resistance, outlet_pressure,
    outlet_use, reservoir_time, resistive_load, vent_time,
};

pub(super) fn supply_of(survey: &Checked, course: &Course, oiling: &Oiling, reach: &Reach) -> Result<SupplyStateSi> {
    let share = survey.running_share;
    let used = use_of_oil(course, oiling, reach);
    let mut state = SupplyStateSi {
        applied: used.applied * share,
        in_joints: used.in_joints * share,
        dripped_share: used.dripped,
        reservoir_time: None,
        line_drop: None,
        reynolds: None,
        outlet_use: None,
        vent: None,
        injector: None,
        time_between_shots: None,
        cable: None,
        cable_inrush: None,
    };
    if let LubricationSi::Synchronised(applicator) = &survey.si.lubrication {
        state.time_between_shots = Some(applicator.every_nth as f64 * course.layout.joint_time);
    }
    let Some(supply) = &survey.si.supply else { return Ok(state) };
    let each = points(&survey.si.lubrication) * course.layout.strands;
    let flow = match (&survey.si.lubrication, supply.delivery) {
        (LubricationSi::Synchronised(applicator), Some(delivery)) => Some(applicator.shot * each / delivery),
        (LubricationSi::Spray(spray), _) => Some(spray.flow * each),
        (LubricationSi::Drip(drip), _) => Some(drip.flow * each),
        _ => None,
    };
    state.reservoir_time =
        supply.reservoir.map(|volume| reservoir_time(volume, supply.refill_share, used.applied * share));
    let outlet = supply
        .pump_ratio
        .zip(supply.air_pressure)
        .map(|(ratio, air)| outlet_pressure(ratio, air, supply.pump_efficiency));
    if let (Some(length), Some(bore), Some(coldest)) = (supply.line_length, supply.line_bore, supply.coldest) {
        let viscosity = oiling.liquid.dynamic_viscosity(coldest).map_err(|mut error| {
            error.field = "supply.coldest_c".into();
            error
        })?;
        if let Some(flow) = flow {
            let drop = line_drop(&[Segment { length, bore, flow }], viscosity, oiling.liquid.density(coldest))?;
            state.line_drop = Some(drop.pressure);
            state.reynolds = Some(drop.reynolds);
            state.outlet_use = outlet.map(|outlet| outlet_use(drop.pressure, supply.opening_pressure, outlet));
        }
        if let (Some(reset), Some(outlet)) = (supply.reset_pressure, outlet) {
            let (modulus, hose) = (supply.bulk_modulus, supply.hose_compliance);
            let vent = vent_time(length, bore, viscosity, modulus, hose, outlet, reset);
            state.vent = Some(vent);
            state.injector = supply.delivery.map(|delivery| injector_time(delivery, vent));
        }
    }
    if let (Some(length), Some(area), Some(power)) = (supply.cable_length, supply.cable_area, supply.device_power) {
        let resistance = loop_resistance(length, area, supply.conductor_class, supply.cable_temperature)?;
        let feeding = supply.supply_voltage;
        state.cable = Some(constant_power_load(feeding, power, resistance)?.voltage);
        let inrush = supply.inrush_factor * power;
        state.cable_inrush = Some(match supply.inrush {
            Inrush::Resistive => resistive_load(feeding, inrush, resistance).voltage,
            Inrush::ConstantPower => constant_power_load(feeding, inrush, resistance)?.voltage,
        });
    }
    Ok(state)
}
