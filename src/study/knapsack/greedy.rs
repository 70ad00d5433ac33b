//! Common practice: the lines in the order of payback, as long as each fits.

use super::super::progress::unwatched;
use super::choice::{Selection, select};
use super::offers::room;
use crate::error::Result;

/// Lines by falling value for money, each taken if the rest of the budget allows it: the reference to compare with.
///
/// `bound` is that of [`select`]; `exact` says whether this choice is worth as much as that one. Common practice, no source.
pub fn greedy(value: &[f64], cost: &[f64], budget: f64) -> Result<Selection> {
    let best = select(value, cost, budget, &mut unwatched)?; // refuses bad numbers
    let free = |line: usize| cost[line] <= 0.0 && value[line] >= 0.0;
    let mut chosen: Vec<Option<usize>> = (0..cost.len()).map(|line| free(line).then_some(0)).collect();
    let mut money = budget - (0..cost.len()).filter(|&line| free(line)).map(|line| cost[line]).sum::<f64>();
    let mut order: Vec<usize> = (0..cost.len()).filter(|&line| value[line] > 0.0 && cost[line] > 0.0).collect();
    order.sort_by(|&a, &b| (value[b] / cost[b]).total_cmp(&(value[a] / cost[a])));
    for line in order {
        if cost[line] <= room(money) {
            money -= cost[line];
            chosen[line] = Some(0);
        }
    }
    let sum = |of: &[f64]| chosen.iter().zip(of).filter(|(c, _)| c.is_some()).map(|(_, x)| x).sum::<f64>();
    let (value, cost) = (sum(value), sum(cost));
    let exact = best.exact && value >= best.value - 1e-12 * best.value.abs();
    Ok(Selection { chosen, value, cost, bound: best.bound, exact })
}
