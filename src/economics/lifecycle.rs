//! Life-cycle cost, and flows with replacements booked in the year in which they fall.

use super::items::Items;
use super::present_value::{escalating_present_value, single_present_value};

/// Present value of all cost of a line over `years` years at `rate` a year (> −1).
///
/// `capital` money now; `yearly` pairs (money a year at today's price, escalation a year); `replacements` pairs (years from
/// now, money then); `residual` money that is left at the end. Source: NIST Handbook 135 (Fuller and Petersen 1996).
pub fn life_cycle_cost(
    capital: f64,
    rate: f64,
    years: f64,
    yearly: impl IntoIterator<Item = (f64, f64)>,
    replacements: impl IntoIterator<Item = (f64, f64)>,
    residual: f64,
) -> f64 {
    let running: f64 =
        yearly.into_iter().map(|(cost, growth)| cost * escalating_present_value(rate, growth, years)).sum();
    let replaced: f64 = replacements.into_iter().map(|(when, cost)| cost * single_present_value(rate, when)).sum();
    capital + running + replaced - residual * single_present_value(rate, years)
}

/// Cost flows (now, then year ends, `horizon` + 1 in all) of something that costs `cost` and lasts `life` years (> 0), new now.
///
/// Each replacement is booked at the end of the year in which it falls; at the horizon the unused share of the piece then
/// in service is credited in proportion to its years, so that the undiscounted sum is cost·(horizon/life − 1): what was
/// used up, less the piece that was there. In a saving (now − proposed) that piece cancels.
/// Source: straight-line residual value, common practice.
pub fn replacement_flows(cost: f64, life: f64, horizon: usize) -> Vec<f64> {
    let mut flows = vec![0.0; horizon + 1];
    let end = horizon as f64;
    let replacements = (end / life * (1.0 + 4.0 * f64::EPSILON)).floor(); // ten years of a two-year chain are five chains
    let per_year = |year: f64| (year / life * (1.0 + 4.0 * f64::EPSILON)).floor().min(replacements);
    for (year, flow) in flows.iter_mut().enumerate().skip(1) {
        *flow = cost * (per_year(year as f64) - per_year(year as f64 - 1.0));
    }
    flows[horizon] -= cost * (1.0 - (end / life - replacements).max(0.0));
    flows
}

/// Flows of an investment `invest` and yearly savings that each grow by their escalation a year; `horizon` + 1 in all.
///
/// Savings are stated at today's price, so the first is escalated once.
pub fn saving_flows(invest: f64, saving: &Items, escalation: &Items, horizon: usize) -> Vec<f64> {
    let growth = escalation.values().map(|e| 1.0 + e);
    let mut amounts = saving.values();
    let mut flows = Vec::with_capacity(horizon + 1);
    flows.push(-invest);
    for _ in 0..horizon {
        for (amount, factor) in amounts.iter_mut().zip(growth) {
            *amount *= factor;
        }
        flows.push(amounts.iter().sum());
    }
    flows
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::economics::npv;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn what_is_booked_is_what_is_used_up(life in 0.2..40.0f64, horizon in 1usize..30) {
            let flows = replacement_flows(100.0, life, horizon);
            let used = 100.0 * (horizon as f64 / life - 1.0);
            prop_assert!((flows.iter().sum::<f64>() - used).abs() < 1e-9 * used.abs().max(100.0));
            prop_assert!(flows.len() == horizon + 1 && flows[0] == 0.0);
        }

        #[test]
        fn factor_and_flows_agree(saving in 1.0..1e4f64, growth in -0.1..0.2f64, rate in 0.0..0.3f64, horizon in 1usize..25) {
            let items = Items { energy: saving, ..Items::default() };
            let flows = saving_flows(100.0, &items, &Items { energy: growth, ..Items::default() }, horizon);
            let by_factor = -life_cycle_cost(100.0, rate, horizon as f64, [(-saving, growth)], [], 0.0);
            prop_assert!((npv(rate, &flows) - by_factor).abs() < 1e-9 * (100.0 + saving * horizon as f64));
        }
    }

    #[test]
    fn replacements_stand_in_their_years() {
        let three_years = replacement_flows(90.0, 3.0, 7);
        assert_eq!(three_years[..7], [0.0, 0.0, 0.0, 90.0, 0.0, 0.0, 90.0]);
        assert!((three_years[7] + 60.0).abs() < 1e-12);
        assert_eq!(replacement_flows(90.0, 2.5, 5), [0.0, 0.0, 0.0, 90.0, 0.0, 0.0]); // the last is bought and credited whole
        assert_eq!(replacement_flows(90.0, 0.5, 1), [0.0, 90.0]);
        assert_eq!(replacement_flows(90.0, f64::INFINITY, 2), [0.0, 0.0, -90.0]);
        let tenth = replacement_flows(1.0, 0.1, 3);
        assert!((tenth.iter().sum::<f64>() - 29.0).abs() < 1e-12 && tenth[1] == 10.0);
    }
}
