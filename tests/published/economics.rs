//! Present value factors, NPV, rates of return, payback, life-cycle cost, loans.

use crate::{Answer, Check, number, numbers, relative, within};
use pinfilm::economics::{
    capital_recovery, discounted_payback_years, future_value, irr, life_cycle_cost, modified_irr, npv, payback_years,
    payment, periods, single_present_value, uniform_present_value,
};

/// Outlay first, then the receipts.
fn flows(outlay: f64, receipts: Vec<f64>) -> Vec<f64> {
    [vec![-outlay], receipts].concat()
}

pub fn check(check: &Check) -> Answer {
    let (i, e) = (check.inputs, check.expected);
    let input = |key| number(i, key);
    Some(match check.id {
        "ECO-001" | "ECO-003" | "ECO-005" => {
            let (rate, years) = (input("d"), input("n"));
            vec![
                within("SPV", number(e, "SPV"), single_present_value(rate, years), 5e-4),
                within("UPV", number(e, "UPV"), uniform_present_value(rate, years), 5e-3),
            ]
        }
        "ECO-007" => {
            let found = i["flows"].as_array()?.iter().map(|f| irr(&numbers(f)).value.unwrap_or(f64::NAN));
            numbers(e).into_iter().zip(found).map(|(printed, ours)| within("irr", printed, ours, 6e-5)).collect()
        }
        "ECO-008" => {
            // the entry gives its inputs in words
            let mirr = [-4500.0, -800.0, 800.0, 800.0, 600.0, 600.0, 800.0, 800.0, 700.0, 3000.0];
            vec![
                relative("npv", number(e, "npv"), npv(0.08, &[-40000.0, 5000.0, 8000.0, 12000.0, 30000.0]), 1e-6),
                relative("pmt", number(e, "pmt"), payment(0.075 / 12.0, 180.0, 200_000.0), 1e-6),
                relative("fv", number(e, "fv"), future_value(0.05 / 12.0, 120.0, -100.0, -100.0), 1e-6),
                relative("nper", number(e, "nper"), periods(0.07 / 12.0, -150.0, 8000.0)?, 1e-6),
                relative("mirr", number(e, "mirr"), modified_irr(&mirr, 0.08, 0.055)?, 1e-6),
            ]
        }
        "ECO-009" => {
            let (rate, flows) = (input("r"), flows(input("I"), numbers(&i["cf"])));
            vec![
                within("simple", number(e, "simple"), payback_years(&flows).value()?, 1e-3),
                within("discounted", number(e, "discounted"), discounted_payback_years(rate, &flows).value()?, 1e-3),
                within("npv", number(e, "npv"), npv(rate, &flows), 0.02),
                within("pv", number(e, "pv"), npv(rate, &flows) + input("I"), 0.02),
            ]
        }
        "ECO-011" => {
            let years = |outlay| discounted_payback_years(input("r"), &flows(outlay, numbers(&i["cf"]))).value();
            let found = numbers(&i["I"]).into_iter().map(|outlay| years(outlay).unwrap_or(f64::NAN));
            numbers(e).into_iter().zip(found).map(|(printed, ours)| within("years", printed, ours, 6e-3)).collect()
        }
        "ECO-013" => {
            let flows = flows(input("I"), numbers(&i["cf"]));
            vec![within("years", e.as_f64()?, discounted_payback_years(input("r"), &flows).value()?, 1e-4)]
        }
        "ECO-014" => {
            vec![within("yearly", e.as_f64()?, capital_recovery(input("P"), input("i"), input("n")), 0.01)]
        }
        "ECO-016" => ["E", "F"]
            .iter()
            .map(|&project| within(project, number(e, project), npv(input("r"), &numbers(&i[project])), 0.02))
            .collect(),
        "ECO-017" => {
            vec![within("npv", e.as_f64()?, npv(input("r"), &flows(input("I"), numbers(&i["cf"]))), 0.01)]
        }
        "ECO-018" => {
            let yearly = numbers(&i["annual"]).into_iter().map(|cost| (cost, 0.0));
            let residual = -input("salvage_as_cost");
            let ours = life_cycle_cost(input("capital"), input("r"), input("n"), yearly, [], residual);
            vec![within("life-cycle cost", e.as_f64()?, ours, 2.0)]
        }
        _ => return None,
    })
}
