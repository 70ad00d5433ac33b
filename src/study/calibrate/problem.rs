//! What is guessed, what was read, and the function between the two.

use super::super::draws::{key, normal_quantile, philox4x32, unit};
use crate::error::{Code, Error, Result};

/// On which scale a parameter is a bell curve.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Scale {
    /// As it is.
    Plain,
    /// Its natural logarithm: factors, such as wear coefficients and friction.
    Log,
    /// The logarithm of p/(1 − p): shares between 0 and 1, such as capture.
    Logit,
}

/// A parameter with what is thought of it before the readings: a bell curve on its scale.
#[derive(Debug, Clone, PartialEq)]
pub struct Parameter {
    /// Its name in words or as a dotted path.
    pub name: String,
    /// On which scale it is a bell curve.
    pub scale: Scale,
    /// Middle of the bell curve, on the scale.
    pub mean: f64,
    /// Its standard deviation (> 0), on the scale.
    pub sd: f64,
}

impl Parameter {
    /// A guess `value` of a factor (> 0), `sd` in its natural logarithm.
    pub fn log(name: impl Into<String>, value: f64, sd: f64) -> Parameter {
        Parameter { name: name.into(), scale: Scale::Log, mean: value.ln(), sd }
    }

    /// A guess `value` of a share (0 to 1, both excluded), `sd` in ln p/(1 − p).
    pub fn logit(name: impl Into<String>, value: f64, sd: f64) -> Parameter {
        Parameter { name: name.into(), scale: Scale::Logit, mean: (value / (1.0 - value)).ln(), sd }
    }

    /// A guess `value` ± `sd` as it is.
    pub fn plain(name: impl Into<String>, value: f64, sd: f64) -> Parameter {
        Parameter { name: name.into(), scale: Scale::Plain, mean: value, sd }
    }

    /// The parameter itself from its place `theta` on the scale.
    pub fn natural(&self, theta: f64) -> f64 {
        match self.scale {
            Scale::Plain => theta,
            Scale::Log => theta.exp(),
            Scale::Logit => 1.0 / (1.0 + (-theta).exp()),
        }
    }
}

/// One reading.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Observation {
    /// What was read.
    pub value: f64,
    /// Standard deviation of its error (> 0), the same unit.
    pub error: f64,
}

/// Computes the readings (second) from the parameters (first); an error means that such a line cannot be.
pub type Model<'a> = dyn Fn(&[f64], &mut [f64]) -> Result<()> + Sync + 'a;

/// Parameters, readings, and the model that computes the readings.
pub struct Problem<'a> {
    parameters: &'a [Parameter],
    observed: &'a [Observation],
    model: &'a Model<'a>,
}

impl<'a> Problem<'a> {
    /// Checks parameters and readings. `model` takes the parameters themselves (not on their scales), in their order, and
    /// writes the computed readings in theirs.
    pub fn new(parameters: &'a [Parameter], observed: &'a [Observation], model: &'a Model<'a>) -> Result<Problem<'a>> {
        if parameters.is_empty() || observed.is_empty() {
            let message = "a calibration needs at least one uncertain parameter and one reading";
            return Err(Error::new(Code::Missing, "observations", message));
        }
        for parameter in parameters {
            if !(parameter.sd > 0.0 && parameter.sd.is_finite() && parameter.mean.is_finite()) {
                let message = format!(
                    "{}: the guess {} with a spread of {} is no bell curve on its scale: give a finite guess and a spread \
                     above 0, a share strictly between 0 and 1, a factor above 0",
                    parameter.name,
                    parameter.natural(parameter.mean),
                    parameter.sd
                );
                return Err(Error::new(Code::OutOfRange, &parameter.name, message).number(parameter.sd));
            }
        }
        for (i, reading) in observed.iter().enumerate() {
            if !(reading.error > 0.0 && reading.error.is_finite() && reading.value.is_finite()) {
                let message = format!(
                    "reading {} is {} with an error of {}: give a finite number, and an error above 0",
                    i + 1,
                    reading.value,
                    reading.error
                );
                return Err(Error::new(Code::OutOfRange, "observations", message)
                    .number(reading.error)
                    .limit("above 0"));
            }
        }
        Ok(Problem { parameters, observed, model })
    }

    /// The parameters.
    pub fn parameters(&self) -> &[Parameter] {
        self.parameters
    }

    /// The readings.
    pub fn observed(&self) -> &[Observation] {
        self.observed
    }

    /// Readings computed at `theta` (on the scales).
    pub fn predict(&self, theta: &[f64]) -> Result<Vec<f64>> {
        let natural: Vec<f64> = self.parameters.iter().zip(theta).map(|(p, &t)| p.natural(t)).collect();
        let mut computed = vec![f64::NAN; self.observed.len()];
        (self.model)(&natural, &mut computed)?;
        if let Some(i) = computed.iter().position(|y| !y.is_finite()) {
            let message = format!(
                "reading {} has no number when it is computed: the parameters tried there make no line; narrow their spreads",
                i + 1
            );
            return Err(Error::new(Code::NotFinite, "observations", message).number(computed[i]));
        }
        Ok(computed)
    }

    /// Distance of `computed` from the readings in their errors.
    pub(super) fn residuals(&self, computed: &[f64]) -> Vec<f64> {
        self.observed.iter().zip(computed).map(|(o, f)| (o.value - f) / o.error).collect()
    }

    /// Distance of `theta` from the guesses in their spreads.
    pub(super) fn surprise(&self, theta: &[f64]) -> Vec<f64> {
        self.parameters.iter().zip(theta).map(|(p, t)| (t - p.mean) / p.sd).collect()
    }

    /// U = ½ Σ residual² + ½ Σ surprise²: minus the logarithm of the posterior density, but for a constant.
    pub fn misfit(&self, theta: &[f64]) -> Result<f64> {
        let computed = self.predict(theta)?;
        let squares = |all: Vec<f64>| all.iter().map(|x| x * x).sum::<f64>();
        Ok(0.5 * squares(self.residuals(&computed)) + 0.5 * squares(self.surprise(theta)))
    }

    /// Draw number `row` of the guesses, on the scales; row and seed alone say which.
    pub fn guess(&self, row: u32, seed: u64) -> Vec<f64> {
        let score = |i: usize| normal_quantile(unit(philox4x32([row, i as u32, 0, 0], key(seed))[0]));
        self.parameters.iter().enumerate().map(|(i, p)| p.mean + p.sd * score(i)).collect()
    }
}
