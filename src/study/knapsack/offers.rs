//! What is worth looking at: free lines settled, hopeless set-ups dropped, the rest in the order of value for money.

use super::choice::SetUp;

/// A set-up beyond the cheapest one of its line that is taken anyway.
#[derive(Debug, Clone, Copy)]
pub(super) struct Offer {
    /// Its place among the set-ups of its line.
    pub set_up: usize,
    /// Cost and value on top of what is taken anyway.
    pub cost: f64,
    pub value: f64,
}

/// One line with something to decide.
#[derive(Debug)]
pub(super) struct Line {
    /// Its place in the caller's list.
    pub line: usize,
    /// Set-ups by rising cost and rising value.
    pub offers: Vec<Offer>,
}

/// A step from one set-up of a line to a better one; the steps of a line give less and less for the money.
#[derive(Debug, Clone, Copy)]
pub(super) struct Upgrade {
    /// Place among the lines of [`Offers`].
    pub line: usize,
    pub cost: f64,
    pub value: f64,
}

/// All that is left to decide.
#[derive(Debug)]
pub(super) struct Offers {
    /// Set-up taken anyway, by the caller's line.
    pub settled: Vec<Option<usize>>,
    /// Value and cost of those.
    pub value: f64,
    pub cost: f64,
    /// Lines by falling value for money of their first upgrade.
    pub lines: Vec<Line>,
    /// Upgrades of all lines by falling value for money.
    pub upgrades: Vec<Upgrade>,
}

impl Offers {
    /// Free set-ups (cost ≤ 0, value ≥ 0) are taken, the cheapest of a line first; the money they bring is in the budget.
    pub(super) fn sort(lines: &[Vec<SetUp>], budget: f64) -> Offers {
        let free = |set_up: &SetUp| set_up.cost <= 0.0 && set_up.value >= 0.0;
        let cheapest = |set_ups: &Vec<SetUp>| {
            let free = (0..set_ups.len()).filter(|&i| free(&set_ups[i]));
            free.min_by(|&a, &b| {
                set_ups[a].cost.total_cmp(&set_ups[b].cost).then(set_ups[b].value.total_cmp(&set_ups[a].value))
            })
        };
        let settled: Vec<Option<usize>> = lines.iter().map(cheapest).collect();
        let taken = || settled.iter().zip(lines).filter_map(|(settled, set_ups)| settled.map(|i| set_ups[i]));
        let (value, cost) = (taken().map(|s| s.value).sum::<f64>(), taken().map(|s| s.cost).sum::<f64>());
        let money = room(budget - cost);

        let mut open: Vec<(f64, Line, Vec<Upgrade>)> = Vec::new();
        for (line, (set_ups, settled)) in lines.iter().zip(&settled).enumerate() {
            let base = settled.map_or(SetUp { cost: 0.0, value: 0.0 }, |i| set_ups[i]);
            let beyond =
                |(set_up, s): (usize, &SetUp)| Offer { set_up, cost: s.cost - base.cost, value: s.value - base.value };
            let mut offers: Vec<Offer> = set_ups.iter().enumerate().map(beyond).collect();
            offers.retain(|offer| offer.value > 0.0 && offer.cost > 0.0 && offer.cost <= money);
            offers.sort_by(|a, b| a.cost.total_cmp(&b.cost).then(b.value.total_cmp(&a.value)));
            // one that costs more and gives no more is never taken
            let mut best = 0.0;
            offers.retain(|offer| {
                offer.value > best && {
                    best = offer.value;
                    true
                }
            });
            let upgrades = upgrades(&offers);
            if let Some(first) = upgrades.first() {
                open.push((first.value / first.cost, Line { line, offers }, upgrades));
            }
        }
        open.sort_by(|a, b| b.0.total_cmp(&a.0));
        let mut upgrades = Vec::new();
        for (place, (_, _, steps)) in open.iter().enumerate() {
            upgrades.extend(steps.iter().map(|step| Upgrade { line: place, ..*step }));
        }
        upgrades.sort_by(|a, b| (b.value / b.cost).total_cmp(&(a.value / a.cost)));
        Offers { settled, value, cost, lines: open.into_iter().map(|(_, line, _)| line).collect(), upgrades }
    }
}

/// Money with what rounding may have taken from it: ten tenths fit in one.
pub(super) fn room(money: f64) -> f64 {
    money + 1e-12 * money.abs()
}

/// Steps along the upper convex hull of the offers of a line.
fn upgrades(offers: &[Offer]) -> Vec<Upgrade> {
    let mut hull: Vec<(f64, f64)> = vec![(0.0, 0.0)];
    for offer in offers {
        let point = (offer.cost, offer.value);
        while let [.., a, b] = hull[..] {
            if (b.1 - a.1) * (point.0 - b.0) > (point.1 - b.1) * (b.0 - a.0) {
                break;
            }
            hull.pop();
        }
        hull.push(point);
    }
    let step = |pair: &[(f64, f64)]| Upgrade { line: 0, cost: pair[1].0 - pair[0].0, value: pair[1].1 - pair[0].1 };
    hull.windows(2).map(step).collect()
}
