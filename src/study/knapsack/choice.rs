//! The choice of lines or set-ups within a budget.

use super::super::progress::{Progress, report, unwatched};
use super::offers::Offers;
use super::search::best;
use crate::error::{Code, Error, Result};

/// What one set-up of a line costs now and is worth over its horizon (net present value).
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SetUp {
    /// Money needed now; negative if it brings money.
    pub cost: f64,
    /// Net present value.
    pub value: f64,
}

/// The lines to do.
#[derive(Debug, Clone, PartialEq)]
pub struct Selection {
    /// For each line the set-up chosen, if any.
    pub chosen: Vec<Option<usize>>,
    /// Net present value of all of them.
    pub value: f64,
    /// Money they need.
    pub cost: f64,
    /// No choice within the budget is worth more than this.
    pub bound: f64,
    /// Whether no choice is worth more; if not, what is missing is less than `bound` − `value`.
    pub exact: bool,
}

impl Selection {
    /// Numbers of the chosen lines, rising.
    pub fn lines(&self) -> Vec<usize> {
        (0..self.chosen.len()).filter(|&line| self.chosen[line].is_some()).collect()
    }
}

/// Lines that are worth most together within `budget`; `value` and `cost` of each.
///
/// Lines that cost nothing and lose nothing are always in, and money that a line brings may be spent on others. Lines that
/// lose (value ≤ 0) are out. Of equals the choice found first. Gives up after a million nodes (`exact` is false then).
///
/// ```
/// let chosen = pinfilm::study::select(&[6.0, 5.0, 5.0], &[6.0, 5.0, 5.0], 10.0, &mut |_, _| true).unwrap();
/// assert_eq!(chosen.lines(), [1, 2]);
/// ```
pub fn select(value: &[f64], cost: &[f64], budget: f64, progress: &mut Progress<'_>) -> Result<Selection> {
    if value.len() != cost.len() {
        let message = format!("{} values and {} costs: give both for every line", value.len(), cost.len());
        return Err(Error::new(Code::Inconsistent, "cost", message));
    }
    let lines: Vec<Vec<SetUp>> = value.iter().zip(cost).map(|(&value, &cost)| vec![SetUp { cost, value }]).collect();
    select_set_ups(&lines, budget, progress)
}

/// The same where each line has several set-ups, of which at most one is chosen.
pub fn select_set_ups(lines: &[Vec<SetUp>], budget: f64, progress: &mut Progress<'_>) -> Result<Selection> {
    check(lines, budget)?;
    let offers = Offers::sort(lines, budget);
    let best = best(&offers, budget - offers.cost, progress)?;
    let mut chosen = offers.settled.clone();
    for (line, at) in offers.lines.iter().zip(&best.chosen) {
        if let Some(at) = at {
            chosen[line.line] = Some(line.offers[*at].set_up);
        }
    }
    let taken = || chosen.iter().zip(lines).filter_map(|(chosen, set_ups)| chosen.map(|i| set_ups[i]));
    Ok(Selection {
        value: taken().map(|set_up| set_up.value).sum(),
        cost: taken().map(|set_up| set_up.cost).sum(),
        bound: offers.value + best.bound.max(best.value),
        exact: best.exact,
        chosen,
    })
}

/// How often each line is chosen when its value is uncertain: `values[draw][line]`, the same costs and budget.
///
/// Prices that hold for the whole plant must be drawn once for all lines of a draw.
pub fn chosen_shares(values: &[Vec<f64>], cost: &[f64], budget: f64, progress: &mut Progress<'_>) -> Result<Vec<f64>> {
    let mut counts = vec![0_usize; cost.len()];
    for (done, value) in values.iter().enumerate() {
        select(value, cost, budget, &mut unwatched)?.lines().into_iter().for_each(|line| counts[line] += 1);
        report(progress, done + 1, values.len())?;
    }
    Ok(counts.into_iter().map(|count| count as f64 / values.len().max(1) as f64).collect())
}

fn check(lines: &[Vec<SetUp>], budget: f64) -> Result<()> {
    if !budget.is_finite() || budget < 0.0 {
        let message = format!("the budget is {budget}: give the money there is, 0 or more");
        let code = if budget.is_finite() { Code::OutOfRange } else { Code::NotFinite };
        return Err(Error::new(code, "budget", message).number(budget).limit("0 or more"));
    }
    for (line, set_ups) in lines.iter().enumerate() {
        if let Some(s) = set_ups.iter().find(|s| !s.cost.is_finite() || !s.value.is_finite()) {
            let message = format!("line {line} costs {} and is worth {}: leave it out, or give both", s.cost, s.value);
            let number = if s.cost.is_finite() { s.value } else { s.cost };
            return Err(Error::new(Code::NotFinite, "lines", message).number(number));
        }
    }
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::super::greedy;
    use super::*;
    use crate::study::{philox4x32, unit};
    use proptest::prelude::*;

    /// Every choice there is, one set-up or none for each line that is not free.
    fn enumerated(lines: &[Vec<SetUp>], budget: f64) -> f64 {
        let Some((line, rest)) = lines.split_first() else {
            return if budget >= -1e-9 { 0.0 } else { f64::NEG_INFINITY };
        };
        let free = |s: &&SetUp| s.cost <= 0.0 && s.value >= 0.0;
        let none = if line.iter().any(|s| free(&s)) { f64::NEG_INFINITY } else { enumerated(rest, budget) };
        let worth = |s: &SetUp| s.value > 0.0 || free(&s);
        let taken = line.iter().filter(|s| worth(s)).map(|s| s.value + enumerated(rest, budget - s.cost));
        taken.fold(none, f64::max)
    }

    fn set_up() -> impl Strategy<Value = SetUp> {
        (-1.0..10.0_f64, -2.0..20.0_f64).prop_map(|(cost, value)| SetUp { cost, value })
    }

    proptest! {
        #[test]
        fn lines_as_good_as_all_choices(set_ups in prop::collection::vec(set_up(), 0..14), budget in 0.0..40.0_f64) {
            let (value, cost): (Vec<_>, Vec<_>) = set_ups.iter().map(|s| (s.value, s.cost)).unzip();
            let lines: Vec<_> = set_ups.iter().map(|&s| vec![s]).collect();
            let ours = select(&value, &cost, budget, &mut unwatched).unwrap();
            prop_assert!(ours.exact && ours.cost <= budget + 1e-9);
            prop_assert!((ours.value - enumerated(&lines, budget)).abs() < 1e-9);
            prop_assert!(ours.bound >= ours.value - 1e-9);
            prop_assert!(greedy(&value, &cost, budget).unwrap().value <= ours.value + 1e-9);
        }

        #[test]
        fn set_ups_as_good_as_all_choices(
            lines in prop::collection::vec(prop::collection::vec(set_up(), 0..5), 0..7), budget in 0.0..30.0_f64,
        ) {
            let ours = select_set_ups(&lines, budget, &mut unwatched).unwrap();
            prop_assert!(ours.exact && ours.cost <= budget + 1e-9);
            prop_assert!((ours.value - enumerated(&lines, budget)).abs() < 1e-9, "{:?}", ours);
            prop_assert!(ours.bound >= ours.value - 1e-9);
        }
    }

    #[test]
    fn many_lines_end_with_a_small_gap() {
        let u = |line: u32, what| unit(philox4x32([line, what, 0, 0], [1, 0])[0]);
        let cost: Vec<f64> = (0..20_000).map(|line| 1.0 + 9.0 * u(line, 0)).collect();
        let value: Vec<f64> = (0..20_000).map(|line| cost[line as usize] * (1.0 + u(line, 1))).collect();
        let chosen = select(&value, &cost, 20_000.0, &mut unwatched).unwrap();
        assert!(chosen.cost <= 20_000.0 * (1.0 + 1e-9));
        assert!(chosen.bound - chosen.value < 20.0 && chosen.value <= chosen.bound * (1.0 + 1e-12));
    }

    #[test]
    fn cheap_tenths_fill_a_budget() {
        let chosen = select(&[1.0; 10], &[0.1; 10], 1.0, &mut unwatched).unwrap();
        assert_eq!(chosen.lines().len(), 10);
    }

    #[test]
    fn shares_over_draws() {
        let draws = vec![vec![3.0, 2.0], vec![1.0, 2.0], vec![3.0, 2.0], vec![3.0, -2.0]];
        assert_eq!(chosen_shares(&draws, &[1.0, 1.0], 1.0, &mut unwatched).unwrap(), [0.75, 0.25]);
        let stopped = chosen_shares(&draws, &[1.0, 1.0], 1.0, &mut |done, _| done < 2);
        assert_eq!(stopped.unwrap_err().code, Code::Stopped);
    }

    #[test]
    fn bad_input_is_refused() {
        let code = |budget| select(&[1.0], &[1.0], budget, &mut unwatched).unwrap_err().code;
        assert_eq!((code(-1.0), code(f64::NAN)), (Code::OutOfRange, Code::NotFinite));
        assert_eq!(select(&[f64::NAN], &[1.0], 1.0, &mut unwatched).unwrap_err().code, Code::NotFinite);
        assert_eq!(select(&[1.0], &[], 1.0, &mut unwatched).unwrap_err().code, Code::Inconsistent);
    }
}
