//! The plan of a study: which inputs are uncertain and how, and what row number so and so of them is.

use super::copula::Correlation;
use super::distribution::Distribution;
use super::normal::normal_quantile;
use super::philox::{key, philox4x32};
use super::sobol::{Net, unit};
use crate::error::{Code, Error, Result};
use ndarray::Array2;
use rayon::prelude::*;

/// Where the uniform numbers come from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Generator {
    /// A Sobol net shifted by the seed: the default.
    #[default]
    Sobol,
    /// Independent random numbers.
    Random,
}

impl Generator {
    /// By its word: `sobol` or `random`.
    pub fn from_word(word: &str) -> Result<Generator> {
        match word {
            "sobol" => Ok(Generator::Sobol),
            "random" => Ok(Generator::Random),
            _ => {
                let message = format!("generator = {word:?} is none: take \"sobol\" (evenly spread) or \"random\"");
                Err(Error::new(Code::UnknownChoice, "generator", message).text_value(word).limit("sobol or random"))
            }
        }
    }
}

/// One uncertain input.
#[derive(Debug, Clone, PartialEq)]
pub struct Input {
    /// Its name, such as a dotted path of a survey.
    pub name: String,
    /// What is thought of it.
    pub distribution: Distribution,
}

/// Rows of uncertain inputs; an input's dimension is its place in the list.
#[derive(Debug, Clone, PartialEq)]
pub struct Plan {
    inputs: Vec<Input>,
    correlation: Option<Correlation>,
    generator: Generator,
    seed: u64,
    net: Net,
}

/// Rows that one thread draws at a time.
const STRETCH: usize = 512;

impl Plan {
    /// Checks inputs and correlation. `seed` names the shift of the net, or the random numbers.
    pub fn new(inputs: Vec<Input>, correlation: Option<Correlation>, generator: Generator, seed: u64) -> Result<Plan> {
        for (i, input) in inputs.iter().enumerate() {
            input.distribution.check(&input.name)?;
            if inputs[..i].iter().any(|other| other.name == input.name) {
                let message = format!("{} is named twice among the uncertain inputs: name it once", input.name);
                return Err(Error::new(Code::Inconsistent, &input.name, message));
            }
        }
        if let Some(correlation) = &correlation
            && correlation.inputs() != inputs.len()
        {
            let message = format!(
                "the correlations are of {} inputs, and {} are uncertain: give one row for each",
                correlation.inputs(),
                inputs.len()
            );
            return Err(Error::new(Code::Inconsistent, "correlation", message));
        }
        let net = match generator {
            Generator::Sobol => Net::new(inputs.len(), Some(seed))?,
            Generator::Random => Net::new(0, None)?,
        };
        Ok(Plan { inputs, correlation: correlation.filter(|c| !c.is_none()), generator, seed, net })
    }

    /// The same plan under another seed: another net that says the same with another error.
    pub fn with_seed(&self, seed: u64) -> Result<Plan> {
        Plan::new(self.inputs.clone(), self.correlation.clone(), self.generator, seed)
    }

    /// The uncertain inputs in the order of their dimensions.
    pub fn inputs(&self) -> &[Input] {
        &self.inputs
    }

    /// Inputs sorted into independent groups; each its own where nothing is correlated.
    pub fn groups(&self) -> Vec<Vec<usize>> {
        let each = || (0..self.inputs.len()).map(|i| vec![i]).collect();
        self.correlation.as_ref().map_or_else(each, Correlation::groups)
    }

    /// Refuses a number of rows that is no net: Sobol points come in powers of two.
    pub fn check_rows(&self, rows: usize) -> Result<()> {
        let refuse = |message: String, limit: &str| {
            Err(Error::new(Code::OutOfRange, "n", message).number(rows as f64).limit(limit))
        };
        if rows == 0 || rows as u64 > 1 << 32 {
            return refuse(format!("{rows} draws cannot be made: ask for 1 to 4294967296"), "1 to 2^32");
        }
        if self.generator == Generator::Sobol && !rows.is_power_of_two() {
            let more = rows.next_power_of_two();
            let message = format!(
                "{rows} Sobol points are not evenly spread: ask for a power of two ({} or {more}), or for random numbers",
                more / 2
            );
            return refuse(message, "a power of two");
        }
        Ok(())
    }

    /// Uniform numbers (0 to 1, both excluded) of row `index`.
    pub fn unit_row(&self, index: u32, units: &mut [f64]) {
        match self.generator {
            Generator::Sobol => {
                let mut words = vec![0; units.len()];
                self.net.point(index, &mut words);
                units.iter_mut().zip(words).for_each(|(u, word)| *u = unit(word));
            }
            Generator::Random => {
                let word = |dimension: usize| philox4x32([index, dimension as u32, 0, 0], key(self.seed))[0];
                units.iter_mut().enumerate().for_each(|(dimension, u)| *u = unit(word(dimension)));
            }
        }
    }

    /// Turns a row of uniform numbers into values of the inputs, in place; correlates those that are correlated.
    pub fn values(&self, row: &mut [f64]) {
        if let Some(correlation) = &self.correlation {
            let tied = correlation.tied();
            tied.iter().for_each(|&i| row[i] = normal_quantile(row[i]));
            // from the last: a score needs those before it still independent
            for place in (0..tied.len()).rev() {
                row[tied[place]] = correlation.score(place, |other| row[tied[other]]);
            }
        }
        let tied = self.correlation.as_ref().map_or(&[][..], Correlation::tied);
        for (i, (value, input)) in row.iter_mut().zip(&self.inputs).enumerate() {
            let is_tied = tied.binary_search(&i).is_ok();
            *value = if is_tied { input.distribution.at_normal(*value) } else { input.distribution.quantile(*value) };
        }
    }

    /// Values of row `index`.
    pub fn row(&self, index: u32, values: &mut [f64]) {
        self.unit_row(index, values);
        self.values(values);
    }

    /// Rows `first` .. `first` + `rows`, one under the other, drawn by all threads of the pool.
    ///
    /// Memory: 8 bytes a number; draw a long study stretch by stretch.
    pub fn table(&self, first: u32, rows: usize) -> Array2<f64> {
        let width = self.inputs.len();
        let mut table = vec![0.0; rows * width];
        if width > 0 {
            table.par_chunks_mut(STRETCH * width).enumerate().for_each(|(stretch, part)| {
                self.stretch(first + (stretch * STRETCH) as u32, part);
            });
        }
        Array2::from_shape_vec((rows, width), table).unwrap_or_default()
    }

    /// Consecutive rows from `index`, one point of the net from the one before.
    fn stretch(&self, mut index: u32, part: &mut [f64]) {
        let width = self.inputs.len();
        let mut words = vec![0; width];
        if self.generator == Generator::Sobol {
            self.net.point(index, &mut words);
        }
        for row in part.chunks_mut(width) {
            match self.generator {
                Generator::Random => self.unit_row(index, row),
                Generator::Sobol => {
                    row.iter_mut().zip(&words).for_each(|(u, word)| *u = unit(*word));
                    self.net.advance(index, &mut words);
                }
            }
            index = index.wrapping_add(1);
            self.values(row);
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn inputs() -> Vec<Input> {
        let kinds = [
            Distribution::lognormal_90(1e-4, 3e-3),
            Distribution::Triangular { low: 0.05, mode: 0.19, high: 0.3 },
            Distribution::Normal { mean: 0.3, sd: 0.05 },
            Distribution::Constant(4.0),
        ];
        let input = |(i, distribution): (usize, Distribution)| Input { name: format!("input {i}"), distribution };
        kinds.into_iter().enumerate().map(input).collect()
    }

    fn plan(generator: Generator, pairs: &[(usize, usize, f64)]) -> Plan {
        let names: Vec<String> = inputs().into_iter().map(|input| input.name).collect();
        let names: Vec<&str> = names.iter().map(String::as_str).collect();
        Plan::new(inputs(), Some(Correlation::from_pairs(&names, pairs).unwrap()), generator, 42).unwrap()
    }

    #[test]
    fn the_table_does_not_depend_on_threads_and_is_made_of_its_rows() {
        for generator in [Generator::Sobol, Generator::Random] {
            let plan = plan(generator, &[(0, 2, 0.5)]);
            let table = plan.table(100, 1500);
            for threads in [1, 3] {
                let pool = rayon::ThreadPoolBuilder::new().num_threads(threads).build().unwrap();
                assert_eq!(pool.install(|| plan.table(100, 1500)), table);
            }
            let mut row = [0.0; 4];
            for index in [0, 511, 512, 1499] {
                plan.row(100 + index as u32, &mut row);
                assert_eq!(table.row(index).to_vec(), row);
            }
        }
    }

    #[test]
    fn independent_scores_change_nothing() {
        let (with, without) = (plan(Generator::Sobol, &[(0, 2, 1e-300)]), plan(Generator::Sobol, &[]));
        for (a, b) in with.table(0, 256).iter().zip(&without.table(0, 256)) {
            assert!((a - b).abs() <= 1e-12 * b.abs());
        }
    }

    /// The correlation of the normal scores is the one asked for; a correlated input keeps its own distribution.
    #[test]
    fn correlated_draws() {
        let table = plan(Generator::Sobol, &[(0, 2, 0.5)]).table(0, 4096);
        let scores = |column: usize, score: &dyn Fn(f64) -> f64| -> Vec<f64> {
            table.column(column).iter().map(|&x| score(x)).collect()
        };
        let wear = scores(0, &|k| (k / 3e-7_f64.sqrt()).ln() / ((30.0_f64).ln() / (2.0 * 1.644_853_626_951_472_7)));
        let friction = scores(2, &|f| (f - 0.3) / 0.05);
        let mean = |values: &mut dyn Iterator<Item = f64>| values.sum::<f64>() / 4096.0;
        assert!((mean(&mut wear.iter().zip(&friction).map(|(a, b)| a * b)) - 0.5).abs() < 0.01);
        assert!(mean(&mut friction.iter().copied()).abs() < 0.002);
        assert!((mean(&mut friction.iter().map(|f| f * f)) - 1.0).abs() < 0.01);
    }

    #[test]
    fn bad_plans_are_refused() {
        let twice = vec![inputs().remove(0), inputs().remove(0)];
        assert_eq!(Plan::new(twice, None, Generator::Sobol, 0).unwrap_err().code, Code::Inconsistent);
        let two = Correlation::from_pairs(&["a", "b"], &[(0, 1, 0.1)]).unwrap();
        assert_eq!(Plan::new(inputs(), Some(two), Generator::Sobol, 0).unwrap_err().code, Code::Inconsistent);
        let plan = plan(Generator::Sobol, &[]);
        assert!(plan.check_rows(1000).unwrap_err().message.contains("512 or 1024"));
        assert!(plan.check_rows(0).is_err());
        plan.check_rows(1024).unwrap();
    }
}
