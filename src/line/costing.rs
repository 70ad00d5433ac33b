//! Cost of a year of this line, item by item.

use super::checked::Checked;
use super::course::Course;
use super::driving::Driving;
use super::wearing::Wearing;
use crate::economics::{CostSi, Prices, Quantities, yearly};
use crate::lubrication::LubricationSi;
use crate::supply::SupplyStateSi;

/// Everything per second of the calendar: rates times prices, and costs of a chain over its life.
pub(super) fn cost_of(
    survey: &Checked,
    course: &Course,
    driving: &Driving,
    wearing: &Wearing,
    supply: &SupplyStateSi,
) -> CostSi {
    let costs = &survey.si.costs;
    let by_interval = match &survey.si.lubrication {
        LubricationSi::Manual(manual) => 1.0 / manual.interval,
        _ => 0.0,
    };
    let quantities = Quantities {
        oil: supply.applied,
        applications: costs.applications.unwrap_or(by_interval),
        application_time: costs.hours_per_application,
        drive_power: driving.input_power.unwrap_or(0.0),
        running_time: survey.running_share,
        cleanings: costs.cleanings,
        cleaning_time: costs.cleaning_time,
        breakdowns: costs.breakdowns,
        breakdown_time: costs.breakdown_time,
        planned_stop: costs.planned_stop,
        chain_length: f64::from(course.layout.joints) * course.layout.pitch * course.layout.strands,
        fit_time: costs.fit_time,
        fit_downtime: costs.fit_downtime,
        chain_life: wearing.service_life,
        chains_per_sprocket: costs.chains_per_sprocket,
        waste: (supply.applied - supply.in_joints).max(0.0),
        upkeep: costs.upkeep,
    };
    let prices = Prices {
        oil: survey.si.oil.price,
        labour: costs.labour_rate,
        energy: costs.energy_price,
        cleaning_material: costs.cleaning_material,
        downtime: costs.downtime_cost,
        chain: costs.chain_price,
        sprocket_set: costs.sprocket_set_price,
        waste: costs.waste_price,
    };
    let items = yearly(&quantities, &prices);
    CostSi {
        currency: costs.currency.clone(),
        oil: items.oil,
        application_labour: items.application_labour,
        energy: items.energy,
        cleaning: items.cleaning,
        downtime: items.downtime,
        chain: items.chain,
        sprockets: items.sprockets,
        waste: items.waste,
        upkeep: items.upkeep,
        total: items.total(),
    }
}
