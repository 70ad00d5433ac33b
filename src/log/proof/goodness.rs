//! Whether a model of energy use is good enough to be believed.

use crate::error::{Code, Error, Result};
use crate::log::statistics::{mean, sum};

/// Coefficient of variation of the root-mean-square error, a share: √(Σ(y − ŷ)²/(n − p)) over the mean reading.
///
/// Source: ASHRAE Guideline 14-2014, definitions.
pub fn cv_rmse(readings: &[f64], predicted: &[f64], parameters: usize) -> f64 {
    let squares = sum(readings.iter().zip(predicted).map(|(y, f)| (y - f) * (y - f)));
    (squares / (readings.len() as f64 - parameters as f64)).sqrt() / mean(readings)
}

/// Normalised mean bias error, a share: Σ(y − ŷ)/((n − p) × mean reading); positive where the model is too low.
///
/// Source: ASHRAE Guideline 14-2014, definitions.
pub fn nmbe(readings: &[f64], predicted: &[f64], parameters: usize) -> f64 {
    let bias = sum(readings.iter().zip(predicted).map(|(y, f)| y - f));
    bias / ((readings.len() as f64 - parameters as f64) * mean(readings))
}

/// What one reading covers.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Interval {
    /// A month.
    Monthly,
    /// A day; the guideline is silent, so the limits of months, the stricter, are taken (closure of our own).
    Daily,
    /// An hour.
    Hourly,
}

impl Interval {
    /// Greatest CV(RMSE) and |NMBE| of a calibrated model, shares. Source: ASHRAE Guideline 14-2014.
    pub const fn limits(self) -> (f64, f64) {
        match self {
            Interval::Monthly | Interval::Daily => (0.15, 0.05),
            Interval::Hourly => (0.30, 0.10),
        }
    }
}

/// Goodness of fit and its verdict.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Goodness {
    /// Coefficient of variation of the root-mean-square error, a share.
    pub cv_rmse: f64,
    /// Normalised mean bias error, a share.
    pub nmbe: f64,
    /// Whether both are within the limits of the guideline.
    pub good_enough: bool,
}

impl Goodness {
    /// Of a model with `parameters` parameters; more readings than those, their mean not zero.
    pub fn of(readings: &[f64], predicted: &[f64], parameters: usize, interval: Interval) -> Result<Self> {
        if readings.len() <= parameters || readings.len() != predicted.len() {
            return Err(Error::new(
                Code::Inconsistent,
                "readings",
                format!(
                    "{} readings and {} predictions cannot judge a model of {parameters} parameters: give as many of one \
                     as of the other, and more than parameters",
                    readings.len(),
                    predicted.len()
                ),
            ));
        }
        let (cv_rmse, nmbe) = (cv_rmse(readings, predicted, parameters), nmbe(readings, predicted, parameters));
        let (most_spread, most_bias) = interval.limits();
        Ok(Goodness { cv_rmse, nmbe, good_enough: cv_rmse <= most_spread && nmbe.abs() <= most_bias })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn bias_and_spread() {
        let y = [10.0, 12.0, 14.0, 12.0];
        let low: Vec<f64> = y.iter().map(|y| y - 1.2).collect();
        let found = Goodness::of(&y, &low, 0, Interval::Monthly).unwrap();
        assert!((found.nmbe - 0.1).abs() < 1e-12 && (found.cv_rmse - 0.1).abs() < 1e-12 && !found.good_enough);
        assert!(Goodness::of(&y, &low, 0, Interval::Hourly).unwrap().good_enough);
        assert!(Goodness::of(&y, &low, 4, Interval::Hourly).is_err());
        assert!(Goodness::of(&y, &low[1..], 0, Interval::Hourly).is_err());
    }
}
