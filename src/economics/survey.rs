//! What a survey says of money.

use crate::noun;
use crate::quantity::{Class, Spread, Word, any, at_least, between, up_to};
use std::borrow::Cow;

macro_rules! costs_noun { ($declare:ident) => { $declare! {
    /// Prices, yearly work and stops, and what a change costs. Money is in one currency, all real or all nominal.
    Costs / CostsSi, "costs" {
        currency as currency: Word [WORD = Cow::Borrowed("EUR")] "label of the currency" {}
        energy_price_per_kwh as energy_price: f64 [MONEY_PER_KWH] "price of electrical energy" { allowed: between(0.0, 100.0), spread: Spread::NormalTimes(0.25, 0.4, 2.0) }
        labour_rate_per_h as labour_rate: f64 [MONEY_PER_H] "cost of one working hour" { allowed: between(0.0, 1e4) }
        downtime_cost_per_h as downtime_cost: f64 [MONEY_PER_H = 0.0] "cost of one hour of standstill" { allowed: between(0.0, 1e7) }
        applications_per_year as applications: Option<f64> [PER_YEAR = None] "oilings, or refills and checks, in a year; not given: from the interval of a manual round" { allowed: between(0.0, 1e5) }
        hours_per_application as hours_per_application: f64 [H_PER_APPLICATION = 0.0] "work of one oiling, refill or check" { allowed: between(0.0, 1000.0) }
        cleanings_per_year as cleanings: f64 [PER_YEAR = 0.0] "cleanings in a year" { allowed: between(0.0, 1e4), spread: Spread::Times(0.333, 3.0) }
        cleaning_h as cleaning_time: f64 [H = 0.0] "work of one cleaning" { allowed: between(0.0, 1000.0) }
        cleaning_material as cleaning_material: f64 [MONEY = 0.0] "material of one cleaning" { allowed: at_least(0.0) }
        breakdowns_per_year as breakdowns: f64 [PER_YEAR = 0.0] "breakdowns of the chain in a year" { allowed: between(0.0, 1e4), spread: Spread::Times(0.0, 2.0) }
        breakdown_h as breakdown_time: f64 [H = 0.0] "standstill of one breakdown" { allowed: between(0.0, 8760.0) }
        planned_stop_h as planned_stop: f64 [H_A_YEAR = 0.0] "planned standstill for the chain in a year" { allowed: between(0.0, 8760.0) }
        chain_price_per_m as chain_price: f64 [MONEY_PER_M = 0.0] "price of one metre of one strand" { allowed: between(0.0, 1e5) }
        fit_h as fit_time: f64 [H = 0.0] "work to fit a new chain" { allowed: between(0.0, 1e4) }
        fit_downtime_h as fit_downtime: f64 [H = 0.0] "standstill to fit a new chain" { allowed: between(0.0, 8760.0) }
        sprocket_set_price as sprocket_set_price: f64 [MONEY = 0.0] "price of a set of sprockets, fitted" { allowed: at_least(0.0) }
        chains_per_sprocket as chains_per_sprocket: f64 [ONE = 2.0] "chains that one set of sprockets outlasts" { allowed: up_to(0.0, 100.0), class: Class::FromMemory, source: "new sprockets with every second chain" }
        other_life_years as other_life: f64 [YEARS = 8.0] "mean life of the chain if it did not wear: corrosion, damage, change of product"
            { allowed: up_to(0.0, 1000.0), usual: between(4.0, 15.0), spread: Spread::Triangular(4.0, 15.0), class: Class::CommonPractice }
        waste_price_per_l as waste_price: f64 [MONEY_PER_L = 0.0] "cost of disposing of oil" { allowed: between(0.0, 1e4) }
        upkeep_per_year as upkeep: f64 [MONEY_A_YEAR = 0.0] "upkeep of the oiling equipment" { allowed: at_least(0.0) }
        invest as invest: f64 [MONEY = 0.0] "capital that this method needs now" { allowed: any(), spread: Spread::Times(0.81, 1.54) }
        discount_rate as discount_rate: f64 [ONE = 0.08] "discount rate of a year" { symbol: "r", allowed: between(-0.5, 1.0), usual: between(0.0, 0.25), class: Class::CommonPractice }
        horizon_years as horizon: i64 [YEARS = 10] "years over which the change is judged" { symbol: "n", allowed: between(1.0, 60.0), class: Class::CommonPractice }
        year_days as year_days: f64 [ONE = 365.0] "days in the year of a payback: 365 calendar days, or the working days" { allowed: between(1.0, 366.0) }
    }
} } }
#[cfg(feature = "python")]
pub(crate) use costs_noun;
costs_noun!(noun);
