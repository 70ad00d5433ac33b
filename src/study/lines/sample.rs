//! Draws of a line or a pair: how far every number of the result spreads, and how sure the drawing is of that.

use super::super::draws::Generator;
use super::super::progress::{Progress, by_chunks};
use super::super::spread::{Estimate, NETS, quantile_over_nets, share_over_nets};
use super::outputs::Outputs;
use super::subject::code_of;
use super::uncertain::Uncertain;
use crate::error::{Code, Error, Result};

/// Numbers that one study may hold: a gigabyte.
pub(super) const MOST_NUMBERS: usize = 1 << 27;

/// How much to draw.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SampleSettings {
    /// Draws in all, in eight nets: eight times a power of two for Sobol points.
    pub n: usize,
    /// Seed; net r has this plus r.
    pub seed: u64,
    /// Sobol points or random numbers.
    pub generator: Generator,
}

impl Default for SampleSettings {
    fn default() -> Self {
        SampleSettings { n: 4096, seed: 1, generator: Generator::Sobol }
    }
}

/// Draws that could not be computed for the same reason.
#[derive(Debug, Clone, PartialEq)]
pub struct Failure {
    /// Its code.
    pub code: &'static str,
    /// How many draws.
    pub count: usize,
    /// The first of them.
    pub row: usize,
    /// What was wrong with that.
    pub message: String,
}

/// Draws and what came out.
#[derive(Debug, Clone)]
pub struct Sample {
    /// What was uncertain.
    pub uncertain: Uncertain,
    /// What was read.
    pub outputs: Outputs,
    /// How much was drawn.
    pub settings: SampleSettings,
    /// Drawn inputs, a column each; on the side that has them.
    pub inputs: Vec<Vec<f64>>,
    /// Outputs, a column each: NaN where a draw has no number, +∞ for never.
    pub columns: Vec<Vec<f64>>,
    /// Whether each draw could be computed.
    pub computed: Vec<bool>,
    /// Why some could not, most frequent first.
    pub failures: Vec<Failure>,
}

/// What was drawn for one row, and the outputs that it gives.
type Drawn = (Box<[f64]>, Result<Box<[f64]>>);

/// Draws, evaluates, gathers. The same for any number of threads.
pub fn sample(
    uncertain: Uncertain,
    outputs: Option<&[String]>,
    settings: SampleSettings,
    progress: &mut Progress<'_>,
) -> Result<Sample> {
    let nominal = uncertain.subject().outcome()?;
    let outputs = Outputs::of(uncertain.subject(), outputs, Some(&nominal))?.only_numbers()?;
    let nets = (0..NETS as u64).map(|net| uncertain.plans(settings.generator, settings.seed.wrapping_add(net)));
    let plans = nets.collect::<Result<Vec<_>>>()?;
    let each = rows_of_a_net(settings)?;
    fits(settings.n, outputs.len() + uncertain.names().len(), "n", "draw fewer, or name fewer outputs")?;
    let readers = outputs.readers();
    let of_row = |scratch: &mut _, row: usize| {
        let outcome = uncertain.drawn(&plans[row / each], (row % each) as u32, scratch);
        (uncertain.values_of(scratch), outcome.map(|outcome| outputs.read(&readers, &outcome)))
    };
    let column = || Vec::with_capacity(settings.n);
    let mut inputs: Vec<Vec<f64>> = uncertain.names().iter().map(|_| column()).collect();
    let mut columns: Vec<Vec<f64>> = outputs.paths().iter().map(|_| column()).collect();
    let (mut computed, mut failures) = (Vec::with_capacity(settings.n), Failures::default());
    let take = |rows: &mut Vec<Drawn>| {
        let number = |row: &Result<Box<[f64]>>, i: usize| row.as_ref().map_or(f64::NAN, |numbers| numbers[i]);
        inputs.iter_mut().enumerate().for_each(|(i, column)| column.extend(rows.iter().map(|(values, _)| values[i])));
        columns
            .iter_mut()
            .enumerate()
            .for_each(|(i, column)| column.extend(rows.iter().map(|(_, row)| number(row, i))));
        computed.extend(rows.iter().map(|(_, row)| row.is_ok()));
        rows.iter().for_each(|(_, row)| failures.add(row.as_ref().err()));
    };
    by_chunks(settings.n, progress, || uncertain.scratch(), of_row, take)?;
    let failures = failures.most_frequent_first();
    if let (false, Some(why)) = (computed.contains(&true), failures.first()) {
        let message = format!("not one of {} draws could be computed; the first: {}", settings.n, why.message);
        return Err(Error::new(Code::BeyondModel, "uncertain", message));
    }
    drop(readers);
    Ok(Sample { uncertain, outputs, settings, inputs, columns, computed, failures })
}

impl Sample {
    /// The percentile `p` (0 to 1) of an output, over the draws that have one, with the error of its drawing.
    pub fn percentile(&self, path: &str, p: f64) -> Result<Estimate> {
        if !(0.0..=1.0).contains(&p) {
            let message = format!("{p} is no percentile: give a share between 0 and 1, such as 0.95");
            return Err(Error::new(Code::OutOfRange, "p", message).number(p).limit("0 to 1"));
        }
        let nets = self.nets(path)?;
        if nets.iter().all(Vec::is_empty) {
            return Ok(Estimate { value: f64::NAN, error: None });
        }
        Ok(quantile_over_nets(&nets, p))
    }

    /// Probability that an output is at most `limit`, over the draws that could be computed.
    pub fn probability(&self, path: &str, limit: f64) -> Result<Estimate> {
        if limit.is_nan() {
            return Err(Error::new(Code::NotFinite, "at_most", "the limit is no number: give one").number(limit));
        }
        Ok(share_over_nets(&self.nets(path)?, limit))
    }

    /// Share of the draws that could not be computed.
    pub fn share_failed(&self) -> f64 {
        self.computed.iter().filter(|computed| !**computed).count() as f64 / self.computed.len() as f64
    }

    /// Draws that could be computed and yet have no number for an output.
    pub fn without_number(&self, path: &str) -> Result<usize> {
        let column = &self.columns[self.outputs.place(path)?];
        Ok(column.iter().zip(&self.computed).filter(|(x, computed)| **computed && x.is_nan()).count())
    }

    /// The numbers of an output, one list for each net.
    fn nets(&self, path: &str) -> Result<Vec<Vec<f64>>> {
        let column = &self.columns[self.outputs.place(path)?];
        let with_number = |net: &[f64]| net.iter().copied().filter(|x| !x.is_nan()).collect();
        Ok(column.chunks(self.settings.n / NETS).map(with_number).collect())
    }
}

/// Draws of one net; refuses a number that does not make eight nets.
pub(super) fn rows_of_a_net(settings: SampleSettings) -> Result<usize> {
    let (n, each) = (settings.n, settings.n / NETS);
    let fits = match settings.generator {
        Generator::Sobol => each.is_power_of_two() && each * NETS == n,
        Generator::Random => each > 0 && each * NETS == n,
    };
    if fits && n <= 1 << 31 {
        return Ok(each);
    }
    let message = match settings.generator {
        Generator::Sobol => {
            let more = n.clamp(NETS, 1 << 31).next_power_of_two();
            let less = (more / 2).max(NETS);
            format!(
                "{n} draws do not make {NETS} nets of Sobol points: ask for a power of two, such as {less} or {more}"
            )
        }
        Generator::Random => format!("{n} draws do not make {NETS} equal parts: ask for a multiple of {NETS}"),
    };
    Err(Error::new(Code::OutOfRange, "n", message).number(n as f64).limit("8, 16, 32, .. 2147483648"))
}

/// Refuses a study that would not fit into memory, with its size.
pub(super) fn fits(rows: usize, columns: usize, field: &str, change: &str) -> Result<()> {
    let numbers = rows.saturating_mul(columns.max(1));
    if numbers <= MOST_NUMBERS {
        return Ok(());
    }
    let size = numbers as f64 * 8.0 / 1e9;
    let message =
        format!("{rows} rows of {columns} numbers take {size:.1} GB, and this study holds at most 1.1 GB: {change}");
    let limit = format!("{MOST_NUMBERS} numbers");
    Err(Error::new(Code::OutOfRange, field, message).number(rows as f64).limit(limit))
}

/// Counts failures by code as the rows come.
#[derive(Default)]
pub(super) struct Failures {
    found: Vec<Failure>,
    rows: usize,
}

impl Failures {
    /// Counts the next row, with its error if it has one.
    pub(super) fn add(&mut self, error: Option<&Error>) {
        let row = self.rows;
        self.rows += 1;
        let Some(error) = error else { return };
        let code = code_of(error);
        match self.found.iter_mut().find(|failure| failure.code == code) {
            Some(failure) => failure.count += 1,
            None => self.found.push(Failure { code, count: 1, row, message: error.message.clone() }),
        }
    }

    pub(super) fn most_frequent_first(mut self) -> Vec<Failure> {
        self.found.sort_by(|a, b| b.count.cmp(&a.count).then(a.row.cmp(&b.row)));
        self.found
    }
}

/// Failures by code, most frequent first, of the errors of all rows.
pub(super) fn failures<'a>(errors: impl Iterator<Item = Option<&'a Error>>) -> Vec<Failure> {
    let mut failures = Failures::default();
    errors.for_each(|error| failures.add(error));
    failures.most_frequent_first()
}

#[cfg(test)]
mod tests {
    use super::super::{Doubt, Subject, default_uncertainty};
    use super::*;
    use crate::line::Line;
    use crate::study::{Distribution, unwatched};

    fn pair() -> Subject {
        let line = |text: &str| Line::from_toml(text).unwrap();
        let now = line(include_str!("../../../python/pinfilm/data/packing_now.toml"));
        (now, line(include_str!("../../../python/pinfilm/data/packing_proposed.toml"))).into()
    }

    fn small(n: usize) -> SampleSettings {
        SampleSettings { n, ..Default::default() }
    }

    #[test]
    fn a_pair_by_its_defaults_is_the_same_for_any_number_of_threads() {
        let uncertain = Uncertain::new(pair(), &default_uncertainty(&pair()).unwrap()).unwrap();
        let with = |threads: usize| {
            let pool = rayon::ThreadPoolBuilder::new().num_threads(threads).build().unwrap();
            pool.install(|| sample(uncertain.clone(), None, small(64), &mut unwatched).unwrap())
        };
        let (one, two, three) = (with(1), with(2), with(3));
        let bits = |sample: &Sample| sample.columns.iter().flatten().map(|x| x.to_bits()).collect::<Vec<_>>();
        assert_eq!(bits(&one), bits(&two));
        assert_eq!(bits(&one), bits(&three));
        let [p5, p50, p95] = [0.05, 0.5, 0.95].map(|p| one.percentile("payback_days", p).unwrap());
        assert!(p5.value < p50.value && p50.value <= p95.value && p50.error.is_some(), "{p5:?} {p50:?} {p95:?}");
        let within = one.probability("payback_days", p50.value).unwrap().value;
        assert!((within - 0.5).abs() < 0.15, "{within}");
        // one draw for both sides
        let dry = one.uncertain.names().iter().position(|name| name == "wear.wear_coefficient_dry").unwrap();
        let lines = one.inputs[dry].iter().zip(&one.computed).filter(|(_, c)| **c).count();
        assert!(lines > 32);
    }

    #[test]
    fn draws_that_cannot_be_computed_are_told() {
        let Subject::Pair(now, _) = pair() else { panic!() };
        let bore = now.chain.bush_bore_mm;
        // half of the pins do not go into their bush
        let pin = Distribution::Uniform { low: bore - 0.1, high: bore + 0.1 };
        let doubts = [("chain.pin_diameter_mm".to_string(), Doubt::Same(pin))];
        let found = sample(Uncertain::new((*now).into(), &doubts).unwrap(), None, small(64), &mut unwatched).unwrap();
        assert!((found.share_failed() - 0.5).abs() < 0.05);
        assert_eq!(found.failures[0].code, "clearance");
        assert!(found.percentile("wear.life_years", 0.5).unwrap().value > 0.0);
    }

    #[test]
    fn what_cannot_be_studied_is_refused_with_what_to_change() {
        let refused = |path: &str, d: Distribution| {
            Uncertain::new(pair(), &[(path.to_string(), Doubt::Same(d))]).map(|_| ()).unwrap_err()
        };
        let some = Distribution::Uniform { low: 0.1, high: 0.2 };
        assert!(refused("surface.dry_fricton", some).message.contains("surface.dry_friction"));
        assert_eq!(refused("surface.dry_friction", Distribution::Normal { mean: 1.0, sd: 1.0 }).code, Code::OutOfRange);
        assert!(refused("costs.breakdowns_per_year", some).message.contains("undo that change"));
        assert_eq!(refused("circuit.strands", Distribution::Uniform { low: 1.0, high: 3.0 }).code, Code::WrongType);
        let uncertain = || Uncertain::new(pair(), &[("surface.dry_friction".into(), Doubt::Register)]).unwrap();
        let of = |outputs: &[&str], n| {
            let outputs: Vec<String> = outputs.iter().map(|s| s.to_string()).collect();
            sample(uncertain(), Some(&outputs), small(n), &mut unwatched).map(|_| ()).unwrap_err()
        };
        assert!(of(&["payback_day"], 64).message.contains("payback_days"));
        assert_eq!(of(&["payback_status"], 64).code, Code::WrongType);
        assert!(of(&["payback_days"], 1000).message.contains("1024"));
        assert!(of(&["payback_days"], 1 << 31).message.contains("GB"));
    }
}
