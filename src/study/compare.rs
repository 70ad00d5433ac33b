//! A line as it is against the same line as proposed.

use crate::economics::{Items, Payback, Replacements, Terms, npv, payback_days};
use crate::error::{Code, Error, Result};
use crate::line::{Evaluation, Line, evaluate, evaluate_in_brief, origin};
use crate::noun;
use crate::quantity::{Class, Explanation, Word, explain, only_numbers};
use std::borrow::Cow;

macro_rules! savings_noun { ($declare:ident) => { $declare! {
    /// Saving of a year, item by item; negative where the proposal costs more.
    Savings / SavingsSi, "saving_items" {
        currency as currency: Word [WORD] "currency of these amounts" {}
        oil as oil: f64 [MONEY_PER_YEAR] "oil" { formula: "{now.cost.oil} − {proposed.cost.oil}", source: DIFFERENCE, class: Class::Derived }
        application_labour as application_labour: f64 [MONEY_PER_YEAR] "work of oiling, refills and checks" { formula: "{now.cost.application_labour} − {proposed.cost.application_labour}", source: DIFFERENCE, class: Class::Derived }
        energy as energy: f64 [MONEY_PER_YEAR] "electrical energy" { formula: "{now.cost.energy} − {proposed.cost.energy}", source: DIFFERENCE, class: Class::Derived }
        cleaning as cleaning: f64 [MONEY_PER_YEAR] "cleaning" { formula: "{now.cost.cleaning} − {proposed.cost.cleaning}", source: DIFFERENCE, class: Class::Derived }
        downtime as downtime: f64 [MONEY_PER_YEAR] "standstill" { formula: "{now.cost.downtime} − {proposed.cost.downtime}", source: DIFFERENCE, class: Class::Derived }
        chain as chain: f64 [MONEY_PER_YEAR] "new chain" { formula: "{now.cost.chain} − {proposed.cost.chain}", source: DIFFERENCE, class: Class::Derived }
        sprockets as sprockets: f64 [MONEY_PER_YEAR] "new sprockets" { formula: "{now.cost.sprockets} − {proposed.cost.sprockets}", source: DIFFERENCE, class: Class::Derived }
        waste as waste: f64 [MONEY_PER_YEAR] "disposal of oil" { formula: "{now.cost.waste} − {proposed.cost.waste}", source: DIFFERENCE, class: Class::Derived }
        upkeep as upkeep: f64 [MONEY_PER_YEAR] "upkeep of the oiling equipment" { formula: "{now.cost.upkeep} − {proposed.cost.upkeep}", source: DIFFERENCE, class: Class::Derived }
    }
} } }
#[cfg(feature = "python")]
pub(crate) use savings_noun;
const DIFFERENCE: &str = "difference of yearly items";
savings_noun!(noun);

const FLOWS: &str = "standard capital budgeting: flows at year ends, uniform inside a year";

macro_rules! comparison_noun { ($declare:ident) => { $declare! {
    /// Now against proposed: what the change saves, and whether and when it pays back.
    Comparison / ComparisonSi, "" {
        now as now: Evaluation [WORD] "the line as it is" { aside: true }
        proposed as proposed: Evaluation [WORD] "the line as proposed" { aside: true }
        saving_items as saving_items: Savings [WORD] "saving of a year, item by item" {}
        saving_per_year as saving: f64 [MONEY_A_YEAR] "saving of a year" { symbol: "S", formula: "{now.cost.total_per_year} − {proposed.cost.total_per_year}", source: DIFFERENCE, class: Class::Derived }
        saving_without_chain_per_year as saving_without_chain: f64 [MONEY_A_YEAR] "the same without chain and sprockets, which rest on an estimated wear life"
            { formula: "{saving_per_year} − {saving_items.chain} − {saving_items.sprockets}", source: DIFFERENCE, class: Class::Derived }
        invest as invest: f64 [MONEY] "capital that the change needs now" { symbol: "I", formula: "{proposed.line.costs.invest}", source: "survey", class: Class::Survey }
        payback_status as payback_status: Word [WORD] "how it ends: pays_back, immediate, never or loses_after" { formula: "by the signs of {invest} and {saving_per_year}", source: "definition", class: Class::Derived }
        payback_days as payback: Option<f64> [DAYS_OF_PAYBACK] "days until the saving has returned the capital" { formula: "{invest} / {saving_per_year} × {proposed.line.costs.year_days}", source: "definition", class: Class::Derived }
        payback_status_without_chain as payback_status_without_chain: Word [WORD] "the same status without chain and sprockets" { formula: "by the signs of {invest} and {saving_without_chain_per_year}", source: "definition", class: Class::Derived }
        payback_days_without_chain as payback_without_chain: Option<f64> [DAYS_OF_PAYBACK] "days without counting chain and sprockets" { formula: "{invest} / {saving_without_chain_per_year} × {proposed.line.costs.year_days}", source: "definition", class: Class::Derived }
        payback_status_downtime_halved as payback_status_downtime_halved: Word [WORD] "the same status at half the downtime cost" { formula: "by the signs of {invest} and saving less half of {saving_items.downtime}", source: "definition", class: Class::Derived }
        payback_days_downtime_halved as payback_downtime_halved: Option<f64> [DAYS_OF_PAYBACK] "days if standstill costs only half" { formula: "{invest} / ({saving_per_year} − {saving_items.downtime}/2) × {proposed.line.costs.year_days}", source: "downtime cost is the softest number", class: Class::Derived }
        discounted_payback_status as discounted_payback_status: Word [WORD] "status of the discounted payback" { formula: "sum of {cash_flow} discounted at {discount_rate}", source: FLOWS, class: Class::Derived }
        discounted_payback_years as discounted_payback: Option<f64> [YEARS_OF_MONEY] "years until the discounted flows have returned the capital" { formula: "first year with a sum ≥ 0, linear inside the year; {cash_flow}, {discount_rate}", source: FLOWS, class: Class::Derived }
        npv as npv: f64 [MONEY] "net present value over the horizon" { symbol: "NPV", formula: "Σ flow / (1 + {discount_rate})^k over {cash_flow}", source: FLOWS, class: Class::Derived }
        npv_without_chain as npv_without_chain: f64 [MONEY] "the same without chain and sprockets" { formula: "flows of {saving_without_chain_per_year} for {horizon_years} years after {invest}", source: FLOWS, class: Class::Derived }
        irr as irr: Option<f64> [ONE] "internal rate of return of a year; with several, the one nearest zero, which decides nothing" { symbol: "IRR", formula: "rate at which {npv} would be 0", source: FLOWS, class: Class::Derived }
        irr_status as irr_status: Word [WORD] "none, unique, several or out_of_range" { formula: "sign changes and roots of {cash_flow}", source: FLOWS, class: Class::Derived }
        irr_roots as irr_roots: Vec<f64> [ONE] "all internal rates of return" { formula: "roots of the present value of {cash_flow}", source: FLOWS, class: Class::Derived }
        discount_rate as discount_rate: f64 [ONE] "discount rate of a year" { symbol: "r", formula: "{proposed.line.costs.discount_rate}", source: "survey", class: Class::Survey }
        horizon_years as horizon: i64 [YEARS] "years over which the change is judged" { symbol: "n", formula: "{proposed.line.costs.horizon_years}", source: "survey", class: Class::Survey }
        cash_flow as cash_flow: Vec<f64> [MONEY] "capital now, saving at each year end" { formula: "−{invest}, then {saving_per_year} a year", source: FLOWS, class: Class::Derived }
    }
} } }
#[cfg(feature = "python")]
pub(crate) use comparison_noun;
comparison_noun!(noun);

/// What a table shows of a comparison where nothing else was asked for.
pub const COMPARED: &[&str] = &[
    "invest",
    "saving_per_year",
    "saving_without_chain_per_year",
    "payback_status",
    "payback_days",
    "payback_days_without_chain",
    "payback_days_downtime_halved",
    "discounted_payback_years",
    "npv",
    "npv_without_chain",
    "irr_status",
    "irr",
    "now.cost.total_per_year",
    "proposed.cost.total_per_year",
    "now.fill.never_reached",
    "proposed.fill.never_reached",
    "now.drive.energy_kwh_per_year",
    "proposed.drive.energy_kwh_per_year",
    "now.supply.applied_l_per_year",
    "proposed.supply.applied_l_per_year",
    "now.wear.service_life_years",
    "proposed.wear.service_life_years",
];

/// Compares a line as it is with the same line as proposed.
///
/// Capital, discount rate, horizon and days of a year are those of the proposed survey. Chain replacements are spread
/// evenly over the service life. Fails where one of the two cannot be evaluated, or their currencies differ.
pub fn compare(now: &Line, proposed: &Line) -> Result<Comparison> {
    one_currency(now, proposed)?;
    finite(compared(evaluate(now)?, evaluate(proposed)?))
}

/// [`compare`] with the same numbers and codes of warnings, but without sentences: for many pairs.
pub fn compare_in_brief(now: &Line, proposed: &Line) -> Result<Comparison> {
    one_currency(now, proposed)?;
    finite(compared(evaluate_in_brief(now)?, evaluate_in_brief(proposed)?))
}

fn finite(comparison: Comparison) -> Result<Comparison> {
    only_numbers(&comparison)?;
    Ok(comparison)
}

fn one_currency(now: &Line, proposed: &Line) -> Result<()> {
    let (a, b) = (&now.costs.currency, &proposed.costs.currency);
    if a == b {
        return Ok(());
    }
    let message = format!("costs.currency differs: {a} now, {b} proposed; money can only be compared in one currency");
    Err(Error::new(Code::Inconsistent, "costs.currency", message).text_value(b.to_string()).limit(a.to_string()))
}

/// Compares two evaluations.
pub fn compared(now: Evaluation, proposed: Evaluation) -> Comparison {
    let items = |of: &Evaluation| Items {
        oil: of.cost.oil,
        application_labour: of.cost.application_labour,
        energy: of.cost.energy,
        cleaning: of.cost.cleaning,
        downtime: of.cost.downtime,
        chain: of.cost.chain,
        sprockets: of.cost.sprockets,
        waste: of.cost.waste,
        upkeep: of.cost.upkeep,
    };
    let costs = &proposed.line.costs;
    let terms = Terms {
        invest: costs.invest,
        rate: costs.discount_rate,
        horizon: costs.horizon_years as usize,
        year_days: costs.year_days,
        escalation: Items::default(),
    };
    let worth = crate::economics::compare(&items(&now), &items(&proposed), &terms, &Replacements::Annualised);
    let without_chain = worth.saving.total_without_chain();
    let halved = payback_days(terms.invest, worth.saving_per_year - worth.saving.downtime / 2.0, terms.year_days);
    let plain_flows = [-terms.invest].into_iter().chain(std::iter::repeat_n(without_chain, terms.horizon));
    let npv_without_chain = npv(terms.rate, &plain_flows.collect::<Vec<_>>());
    let status = |payback: &Payback| Cow::Borrowed(payback.status());
    Comparison {
        saving_items: Savings {
            currency: proposed.cost.currency.clone(),
            oil: worth.saving.oil,
            application_labour: worth.saving.application_labour,
            energy: worth.saving.energy,
            cleaning: worth.saving.cleaning,
            downtime: worth.saving.downtime,
            chain: worth.saving.chain,
            sprockets: worth.saving.sprockets,
            waste: worth.saving.waste,
            upkeep: worth.saving.upkeep,
        },
        saving_per_year: worth.saving_per_year,
        saving_without_chain_per_year: without_chain,
        invest: terms.invest,
        payback_status: status(&worth.payback),
        payback_days: worth.payback.value(),
        payback_status_without_chain: status(&worth.payback_without_chain),
        payback_days_without_chain: worth.payback_without_chain.value(),
        payback_status_downtime_halved: status(&halved),
        payback_days_downtime_halved: halved.value(),
        discounted_payback_status: status(&worth.discounted_payback),
        discounted_payback_years: worth.discounted_payback.value(),
        npv: worth.npv,
        npv_without_chain,
        irr: worth.irr.value,
        irr_status: Cow::Borrowed(worth.irr.status.as_str()),
        irr_roots: worth.irr.roots,
        discount_rate: terms.rate,
        horizon_years: costs.horizon_years,
        cash_flow: worth.flows,
        now,
        proposed,
    }
}

impl Comparison {
    /// Explains the quantity at `path`, as [`Evaluation::explain`](crate::line::Evaluation::explain) does; numbers of the
    /// two lines under `now.` and `proposed.`.
    pub fn explain(&self, path: &str) -> Result<Explanation> {
        explain(self, path, &|full| {
            let (side, key) = full.split_once(".line.")?;
            match side {
                "now" => Some(origin(&self.now.line, key)),
                "proposed" => Some(origin(&self.proposed.line, key)),
                _ => None,
            }
        })
    }
}
