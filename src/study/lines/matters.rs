//! Which uncertain input an outcome hangs on, and so which is worth measuring first.

use super::super::draws::Generator;
use super::super::indices::{Design, Indices, over_shifts};
use super::super::progress::{Progress, in_parallel};
use super::super::spread::NETS;
use super::outputs::{Outputs, number_of};
use super::sample::{SampleSettings, failures, fits, rows_of_a_net};
use super::subject::Side;
use super::uncertain::Uncertain;
use crate::error::{Code, Error, Result};
use crate::quantity::Datum;

/// An outcome with one input low and high and all others in their middle.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Swing {
    /// The value of the input that 5 % lie below.
    pub input_low: f64,
    /// The value that 95 % lie below.
    pub input_high: f64,
    /// The outcome at the first; NaN where it has none.
    pub low: f64,
    /// At the second.
    pub high: f64,
}

/// What an outcome hangs on.
#[derive(Debug, Clone)]
pub struct Matters {
    /// What was uncertain.
    pub uncertain: Uncertain,
    /// The outcome, and its row of the register.
    pub outputs: Outputs,
    /// Whether its logarithm was studied.
    pub log: bool,
    /// Inputs that have an index together, because they are correlated; else one each.
    pub groups: Vec<Vec<usize>>,
    /// Indices of each group; none where the outcome does not vary.
    pub indices: Option<Indices>,
    /// Swing of each input.
    pub swings: Vec<Swing>,
    /// The outcome with all inputs in their middle.
    pub middle: f64,
    /// Rows that were computed for the indices.
    pub rows: usize,
    /// Share of the base rows that was left out, because a draw of theirs could not be computed.
    pub left_out: f64,
}

/// First-order and total indices of `output`, from eight shifted designs that share `n` base rows, and the swings.
///
/// `log`: of its natural logarithm. Base rows with a draw that cannot be computed are left out whole; shares then hold among
/// the rest. Refuses an outcome that has no number somewhere: its spread cannot be shared out.
pub fn what_matters(
    uncertain: Uncertain,
    output: &str,
    log: bool,
    n: usize,
    seed: u64,
    progress: &mut Progress<'_>,
) -> Result<Matters> {
    let paths = [output.to_string()];
    let nominal = uncertain.subject().outcome()?;
    let outputs = Outputs::of(uncertain.subject(), Some(&paths), Some(&nominal))?.only_numbers()?;
    let each = rows_of_a_net(SampleSettings { n, seed, generator: Generator::Sobol })?;
    let plans = uncertain.plans(Generator::Random, seed)?;
    let groups = plans[0].groups();
    let (readers, row) = (outputs.readers(), outputs.rows()[0]);
    let scaled = |x: f64| if log { x.ln() } else { x };
    let read = |outcome: &super::Outcome| scaled(number_of(outcome.get(&readers[0]).unwrap_or(Datum::Nothing), row));
    fits(each * (groups.len() + 2), 1, "n", "ask for fewer base rows")?;
    let mut shifts = Vec::with_capacity(NETS);
    let (mut done, mut left_out, mut varies) = (0, 0, true);
    let all = NETS * each * (groups.len() + 2);
    for shift in 0..NETS as u64 {
        let design = Design::grouped(each, groups.clone(), Some(seed.wrapping_add(shift)))?;
        let scratch = || (design.scratch(), uncertain.scratch());
        let of_row = |((words, units), lines): &mut ((Vec<u32>, Vec<f64>), _), place| {
            design.row(design.in_turn(place), words, units);
            uncertain.at(&plans, units, lines).map(|outcome| read(&outcome))
        };
        let found = in_parallel(design.rows(), &mut |part, _| progress(done + part, all), scratch, of_row)?;
        let found = design.in_order(found);
        done += design.rows();
        let blocks = groups.len() + 2;
        let failed: Vec<bool> = (0..each).map(|i| (0..blocks).any(|b| found[b * each + i].is_err())).collect();
        let lost = failed.iter().filter(|failed| **failed).count();
        left_out += lost;
        enough(each - lost, each, &found)?;
        let kept = found.into_iter().enumerate().filter(|(row, _)| !failed[row % each]);
        let numbers = with_numbers(output, log, kept.flat_map(|(_, row)| row).collect())?;
        match Indices::of_blocks(each - lost, &numbers) {
            Some(indices) => shifts.push(indices),
            None => varies = false,
        }
    }
    let indices = if varies { over_shifts(&shifts) } else { None };
    let mut lines = uncertain.scratch();
    let count = uncertain.names().len();
    let mut at = |units: &[f64]| uncertain.at(&plans, units, &mut lines).map_or(f64::NAN, |outcome| read(&outcome));
    let mut units = vec![0.5; count];
    let middle = at(&units);
    let mut swing = |i: usize| {
        let side = uncertain.side_of(i);
        let d = uncertain.distribution_of(i, side);
        let mut end = |u: f64| {
            units[i] = u;
            let outcome = at(&units);
            units[i] = 0.5;
            outcome
        };
        Swing { input_low: d.quantile(LOW), input_high: d.quantile(HIGH), low: end(LOW), high: end(HIGH) }
    };
    let swings = (0..count).map(&mut swing).collect();
    drop(readers);
    let left_out = left_out as f64 / (NETS * each) as f64;
    Ok(Matters { uncertain, outputs, log, groups, indices, swings, middle, rows: all, left_out })
}

const LOW: f64 = 0.05;
const HIGH: f64 = 0.95;

impl Matters {
    /// The name of a group: its inputs, joined.
    pub fn name(&self, group: usize) -> String {
        let names = self.groups[group].iter().map(|&i| self.uncertain.names()[i].as_str());
        names.collect::<Vec<_>>().join(" + ")
    }

    /// The side whose value of input `i` its swing tells.
    pub fn side_of(&self, i: usize) -> Side {
        self.uncertain.side_of(i)
    }
}

/// Refuses indices from less than half of the base rows.
fn enough(kept: usize, each: usize, found: &[Result<f64>]) -> Result<()> {
    let failed = failures(found.iter().map(|row| row.as_ref().err()));
    let Some(why) = failed.first().filter(|_| kept < 2 || 2 * kept < each) else { return Ok(()) };
    let message = format!(
        "{} of {each} base rows hold a draw that could not be computed, and the shares of what is left would mean little; the \
         first: {}. Narrow the distributions that lead there",
        each - kept,
        why.message
    );
    Err(Error::new(Code::BeyondModel, "uncertain", message).number((each - kept) as f64))
}

/// The outcomes, all of which must be numbers.
fn with_numbers(output: &str, log: bool, numbers: Vec<f64>) -> Result<Vec<f64>> {
    let without = numbers.iter().filter(|x| !x.is_finite()).count();
    if without == 0 {
        return Ok(numbers);
    }
    let logarithm = if log { "the logarithm of " } else { "" };
    let message = format!(
        "{without} of {} rows have no number for {logarithm}{output}, and indices need one everywhere: study the saving \
         (saving_per_year) instead of a payback that may never come, and logarithms only of what stays above 0",
        numbers.len()
    );
    Err(Error::new(Code::NotFinite, output, message).number(without as f64))
}

#[cfg(test)]
mod tests {
    use super::super::{Doubt, Subject, Uncertain};
    use super::*;
    use crate::line::Line;
    use crate::study::{Distribution, unwatched};

    fn oven() -> Subject {
        Line::from_toml(include_str!("../../../python/pinfilm/data/oven_now.toml")).unwrap().into()
    }

    fn doubts(list: &[(&str, Distribution)]) -> Vec<(String, Doubt)> {
        list.iter().map(|(path, d)| (path.to_string(), Doubt::Same(*d))).collect()
    }

    /// Energy cost is a product: a share of each variance by itself and a small one together, in closed form.
    #[test]
    fn a_product_has_its_closed_form() {
        let list = doubts(&[
            ("costs.energy_price_per_kwh", Distribution::Uniform { low: 0.1, high: 0.3 }),
            ("costs.labour_rate_per_h", Distribution::Uniform { low: 20.0, high: 80.0 }),
            ("duty.days_per_year", Distribution::Uniform { low: 150.0, high: 250.0 }),
        ]);
        let uncertain = Uncertain::new(oven(), &list).unwrap();
        let found = what_matters(uncertain, "cost.energy", false, 2048, 1, &mut unwatched).unwrap();
        let indices = found.indices.clone().unwrap();
        // variances of 1 + relative deviation: width²/12 over mean²
        let (price, days) = (0.04 / 12.0 / 0.04, 1e4 / 12.0 / 4e4);
        let whole = price + days + price * days;
        for (i, first, total) in [(0, price, price + price * days), (1, 0.0, 0.0), (2, days, days + price * days)] {
            for (found, exact) in [(indices.first[i], first / whole), (indices.total[i], total / whole)] {
                let error = found.error.unwrap();
                assert!((found.value - exact).abs() <= 4.0 * error && error < 0.01, "{i} {exact} {indices:?}");
            }
        }
        let swing = found.swings[0];
        assert!((swing.input_low - 0.11).abs() < 1e-12 && (swing.high / swing.low - 0.29 / 0.11).abs() < 1e-9);
        assert!(found.swings[1].low == found.middle);
    }

    #[test]
    fn an_outcome_that_stands_still_and_one_without_a_number() {
        let price = || doubts(&[("costs.energy_price_per_kwh", Distribution::Uniform { low: 0.1, high: 0.3 })]);
        let of = |output: &str, log: bool| {
            what_matters(Uncertain::new(oven(), &price()).unwrap(), output, log, 64, 1, &mut unwatched)
        };
        assert!(of("wear.life_years", false).unwrap().indices.is_none());
        assert_eq!(of("cost.energy", true).map(|_| ()), Ok(()));
        assert_eq!(of("tension.extra", false).map(|_| ()).unwrap_err().code, Code::UnknownKey);
    }

    #[test]
    fn base_rows_that_cannot_be_computed_are_left_out() {
        let bore = 12.1;
        let pin = |low: f64| {
            let pin = ("chain.pin_diameter_mm", Distribution::Uniform { low, high: bore + 0.02 });
            let dust = ("duty.dust_factor", Distribution::Uniform { low: 1.0, high: 3.0 });
            let uncertain = Uncertain::new(oven(), &doubts(&[pin, dust])).unwrap();
            what_matters(uncertain, "wear.life_years", false, 512, 1, &mut unwatched)
        };
        // one pin in ten is too thick; a base row holds two pins
        let found = pin(bore - 0.18).unwrap();
        assert!((found.left_out - 0.19).abs() < 0.03, "{}", found.left_out);
        assert!(found.indices.unwrap().total[1].value > 0.1);
        let error = pin(bore - 0.01).map(|_| ()).unwrap_err();
        assert_eq!(error.code, Code::BeyondModel);
    }
}
