//! Branch and bound, depth first: take the best set-up of the best line, and come back where the bound allows better.

use super::super::progress::{Progress, report};
use super::offers::{Offers, room};
use crate::error::Result;

/// The search gives up after so many nodes ...
const MOST_NODES: usize = 1_000_000;
/// ... or so many steps of the bound, whichever comes first: about half a second.
const MOST_STEPS: usize = 100_000_000;
/// Nodes between two words to whoever waits.
const STRETCH: usize = 10_000;
/// A choice must be better by more than its own rounding.
const ROUNDING: f64 = 1e-12;

/// The best choice found: for each line of the offers, the place of its offer.
pub(super) struct Best {
    pub chosen: Vec<Option<usize>>,
    pub value: f64,
    /// No choice is worth more than this.
    pub bound: f64,
    /// Whether the search came to its end.
    pub exact: bool,
}

struct Search<'a> {
    offers: &'a Offers,
    /// First upgrade of each line in the list of all.
    first: Vec<usize>,
    steps: usize,
}

/// A line about to be decided.
struct Level {
    next: usize,
    money: f64,
    value: f64,
    bound: f64,
}

impl Search<'_> {
    /// Most that lines from `line` on can add with `money`, the last upgrade in part.
    fn bound(&mut self, line: usize, mut money: f64) -> f64 {
        let mut value = 0.0;
        let Some(&first) = self.first.get(line) else { return 0.0 };
        for upgrade in &self.offers.upgrades[first..] {
            self.steps += 1;
            if upgrade.line < line {
                continue;
            }
            if upgrade.cost > money {
                return value + upgrade.value * (money / upgrade.cost).max(0.0);
            }
            money -= upgrade.cost;
            value += upgrade.value;
        }
        value
    }
}

/// Upgrades in the order of value for money as long as each fits: a good choice to begin with.
fn dive(offers: &Offers, mut money: f64) -> (Vec<Option<usize>>, f64) {
    let (mut chosen, mut value) = (vec![None; offers.lines.len()], 0.0);
    let mut reached: Vec<(f64, f64)> = vec![(0.0, 0.0); offers.lines.len()];
    for upgrade in &offers.upgrades {
        // a later step of a line follows on its first one only
        let (cost, worth) = reached[upgrade.line];
        let at = offers.lines[upgrade.line]
            .offers
            .iter()
            .position(|o| (o.cost - cost - upgrade.cost).abs() <= ROUNDING * o.cost);
        if let (true, Some(at)) = (upgrade.cost <= money, at) {
            let offer = offers.lines[upgrade.line].offers[at];
            money -= offer.cost - cost;
            value += offer.value - worth;
            reached[upgrade.line] = (offer.cost, offer.value);
            chosen[upgrade.line] = Some(at);
        }
    }
    (chosen, value)
}

/// Most valuable choice of offers with `money`.
///
/// Source: Horowitz and Sahni, J. ACM 21 (1974) 277, with Dantzig's bound; for set-ups, Sinha and Zoltners, Operations
/// Research 27 (1979) 503.
pub(super) fn best(offers: &Offers, money: f64, progress: &mut Progress<'_>) -> Result<Best> {
    let money = room(money);
    let count = offers.lines.len();
    let mut first = vec![0; count];
    for (place, upgrade) in offers.upgrades.iter().enumerate().rev() {
        first[upgrade.line] = place;
    }
    let mut search = Search { offers, first, steps: 0 };
    let bound = search.bound(0, money);
    let (mut chosen, mut value) = dive(offers, money);
    let mut trying: Vec<Option<usize>> = vec![None; count];
    let mut levels = vec![Level { next: 0, money, value: 0.0, bound }];
    let mut nodes = 0;
    while let Some(level) = levels.pop() {
        let line = levels.len();
        if line == count || level.bound <= value * (1.0 + ROUNDING) {
            continue;
        }
        if nodes >= MOST_NODES || search.steps >= MOST_STEPS {
            return Ok(Best { chosen, value, bound, exact: false });
        }
        let set_ups = &offers.lines[line].offers;
        // dearest first, leaving the line out last
        let at = set_ups.len().checked_sub(level.next + 1);
        let offer = at.map(|at| set_ups[at]);
        let (money, worth) =
            offer.map_or((level.money, level.value), |o| (level.money - o.cost, level.value + o.value));
        let above = level.bound;
        if at.is_some() {
            levels.push(Level { next: level.next + 1, ..level });
        } else {
            // every choice of this line has been tried: its place stays empty below the next one
            levels.push(Level { next: 0, bound: f64::NEG_INFINITY, ..level });
        }
        if money < 0.0 {
            continue;
        }
        nodes += 1;
        if nodes % STRETCH == 0 {
            report(progress, nodes, MOST_NODES)?;
        }
        // taking the only offer of the best line is what the bound above did already
        let bound = if at.is_some() && set_ups.len() == 1 { above } else { worth + search.bound(line + 1, money) };
        trying[line] = at;
        if worth > value * (1.0 + ROUNDING) {
            value = worth;
            chosen.copy_from_slice(&trying);
            chosen[line + 1..].fill(None);
        }
        levels.push(Level { next: 0, money, value: worth, bound });
    }
    Ok(Best { chosen, value, bound, exact: true })
}
