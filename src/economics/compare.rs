//! A line as it is against the same line as proposed.

use super::irr::{Irr, irr};
use super::items::Items;
use super::lifecycle::{replacement_flows, saving_flows};
use super::payback::{Payback, discounted_payback_years, payback_days};
use super::present_value::npv;
use super::yearly::Piece;

/// What the change is worth.
#[derive(Debug, Clone, PartialEq)]
pub struct Comparison {
    /// Saving item by item (money a year); negative where the proposal costs more.
    pub saving: Items,
    /// Their sum.
    pub saving_per_year: f64,
    /// Payback in days.
    pub payback: Payback,
    /// Payback in days without the saving on chain and sprockets, which rests on an estimated wear life.
    pub payback_without_chain: Payback,
    /// Payback in years, discounted.
    pub discounted_payback: Payback,
    /// Net present value over the horizon.
    pub npv: f64,
    /// Internal rate of return over the horizon.
    pub irr: Irr,
    /// Flows behind the two: the investment now, the saving at each year end.
    pub flows: Vec<f64>,
}

/// How chains and sprockets enter the flows. The yearly saving and the simple payback spread them evenly either way.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Replacements {
    /// Spread evenly over their lives.
    Annualised,
    /// Booked at the end of the year in which they fall, see [`replacement_flows`]; pieces new now.
    Discrete {
        /// Chain and sprockets as they are.
        now: [Piece; 2],
        /// Chain and sprockets as proposed.
        proposed: [Piece; 2],
    },
}

/// What a comparison is judged by.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Terms {
    /// Money now.
    pub invest: f64,
    /// Discount rate a year, > −1; real if the escalations are.
    pub rate: f64,
    /// Years looked ahead.
    pub horizon: usize,
    /// Days that make a year of payback: 365, or the working days.
    pub year_days: f64,
    /// Yearly growth of each item's price above that of money.
    pub escalation: Items,
}

/// Compares two years of cost at today's prices.
pub fn compare(now: &Items, proposed: &Items, terms: &Terms, replacements: &Replacements) -> Comparison {
    let saving = *now - *proposed;
    let flows = flows(&saving, terms, replacements);
    Comparison {
        saving,
        saving_per_year: saving.total(),
        payback: payback_days(terms.invest, saving.total(), terms.year_days),
        payback_without_chain: payback_days(terms.invest, saving.total_without_chain(), terms.year_days),
        discounted_payback: discounted_payback_years(terms.rate, &flows),
        npv: npv(terms.rate, &flows),
        irr: irr(&flows),
        flows,
    }
}

fn flows(saving: &Items, terms: &Terms, replacements: &Replacements) -> Vec<f64> {
    let Replacements::Discrete { now, proposed } = replacements else {
        return saving_flows(terms.invest, saving, &terms.escalation, terms.horizon);
    };
    let rest = Items { chain: 0.0, sprockets: 0.0, ..*saving };
    let mut flows = saving_flows(terms.invest, &rest, &terms.escalation, terms.horizon);
    let growth = [terms.escalation.chain, terms.escalation.sprockets];
    let sides =
        now.iter().zip(growth).map(|side| (side, 1.0)).chain(proposed.iter().zip(growth).map(|side| (side, -1.0)));
    for ((piece, growth), sign) in sides {
        let mut price = sign;
        for (flow, cost) in flows.iter_mut().zip(replacement_flows(piece.cost, piece.life, terms.horizon)) {
            *flow += price * cost;
            price *= 1.0 + growth;
        }
    }
    flows
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::economics::{CALENDAR_DAYS, IrrStatus};

    const TERMS: Terms = Terms {
        invest: 1000.0,
        rate: 0.08,
        horizon: 10,
        year_days: CALENDAR_DAYS,
        escalation: Items {
            oil: 0.0,
            application_labour: 0.0,
            energy: 0.0,
            cleaning: 0.0,
            downtime: 0.0,
            chain: 0.0,
            sprockets: 0.0,
            waste: 0.0,
            upkeep: 0.0,
        },
    };

    #[test]
    fn a_change_that_costs_more_never_pays() {
        let now = Items { oil: 100.0, energy: 50.0, ..Items::default() };
        let dearer = Items { oil: 180.0, energy: 20.0, ..Items::default() };
        let worth = compare(&now, &dearer, &TERMS, &Replacements::Annualised);
        assert_eq!(worth.saving_per_year, -50.0);
        assert_eq!((worth.payback, worth.discounted_payback), (Payback::Never, Payback::Never));
        assert_eq!(worth.irr.status, IrrStatus::None);
        assert!(worth.npv < -1000.0);
    }

    #[test]
    fn booking_replacements_moves_money_in_time_only() {
        let pieces =
            |chain_life| [Piece { cost: 900.0, life: chain_life }, Piece { cost: 200.0, life: 2.0 * chain_life }];
        let items = |[chain, sprockets]: [Piece; 2]| Items {
            energy: 300.0,
            chain: chain.cost / chain.life,
            sprockets: sprockets.cost / sprockets.life,
            ..Items::default()
        };
        let (now, proposed) = (pieces(1.7), pieces(6.3));
        let even = compare(&items(now), &items(proposed), &TERMS, &Replacements::Annualised);
        let booked = compare(&items(now), &items(proposed), &TERMS, &Replacements::Discrete { now, proposed });
        assert!((even.flows.iter().sum::<f64>() - booked.flows.iter().sum::<f64>()).abs() < 1e-9);
        assert_eq!(even.payback, booked.payback);
        assert!(even.npv != booked.npv);
    }
}
