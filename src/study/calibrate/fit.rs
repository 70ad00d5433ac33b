//! The most probable parameters, how sure they are, and what the readings taught.

use super::super::draws::normal_quantile;
use super::super::progress::{Progress, report};
use super::bell::{is_bell, rises};
use super::learnt::{Direction, directions};
use super::problem::Problem;
use super::search::{curvature, descend};
use crate::error::{Code, Error, Result};
use nalgebra::DMatrix;
use ndarray::Array2;

/// Starts of the search besides the guesses themselves.
const STARTS: u32 = 4;

/// What the readings say of the parameters; all on the scales of the parameters.
#[derive(Debug, Clone, PartialEq)]
pub struct Fit {
    /// Most probable parameters.
    pub theta: Vec<f64>,
    /// Their standard deviations.
    pub sd: Vec<f64>,
    /// Their covariance.
    pub covariance: Array2<f64>,
    /// Misfit at the peak: half the squared distances from readings and guesses.
    pub misfit: f64,
    /// Combinations of parameters, best learnt first.
    pub directions: Vec<Direction>,
    /// Rise of the misfit two standard deviations down and up along each direction; 2 and 2 for a bell curve.
    pub rises: Vec<[f64; 2]>,
    /// Starts from which the search found this peak, and starts that were tried.
    pub agreeing_starts: (usize, usize),
    /// Whether the search came to rest at the peak; on an edge of the misfit it does not, and no bell curve fits it.
    pub settled: bool,
    /// Lower Cholesky factor of the covariance.
    lower: Array2<f64>,
}

impl Fit {
    /// Whether errors taken from the curvature may be trusted; if not, run an [`super::Ensemble`].
    pub fn is_bell_shaped(&self) -> bool {
        self.settled && is_bell(&self.rises)
    }

    /// Interval of parameter `i` on its scale that holds it with probability `probability`, if bell-shaped.
    pub fn interval(&self, i: usize, probability: f64) -> [f64; 2] {
        let z = normal_quantile(0.5 + 0.5 * probability);
        [self.theta[i] - z * self.sd[i], self.theta[i] + z * self.sd[i]]
    }

    /// Parameters on their scales for uniform numbers `units`, one each: draws of the bell curve for a study after the
    /// readings.
    pub fn draw(&self, units: &[f64], theta: &mut [f64]) {
        for (i, value) in theta.iter_mut().enumerate() {
            let tied = units[..=i].iter().enumerate().map(|(j, &u)| self.lower[(i, j)] * normal_quantile(u));
            *value = self.theta[i] + tied.sum::<f64>();
        }
    }
}

/// Finds the most probable parameters from the guesses and from four draws of them (`seed`), and keeps the best.
///
/// Maximum of the posterior with Gaussian guesses and errors; covariance (Jᵀ J + C⁻¹)⁻¹ at the peak (Laplace). `progress`
/// counts starts. Source: e.g. Tarantola, Inverse Problem Theory (2005), section 3.2.
pub fn calibrate(problem: &Problem<'_>, seed: u64, progress: &mut Progress<'_>) -> Result<Fit> {
    let guesses = problem.parameters().iter().map(|parameter| parameter.mean).collect();
    let starts = std::iter::once(guesses).chain((0..STARTS).map(|row| problem.guess(row, seed)));
    let (mut found, mut refused) = (Vec::new(), None);
    for (tried, start) in starts.enumerate() {
        let mut word = |done| report(progress, done, STARTS as usize + 1);
        match descend(problem, start, &mut || word(tried)) {
            Ok(peak) => found.push(peak),
            Err(why) if why.code == Code::Stopped => return Err(why),
            Err(why) => refused = refused.or(Some(why)),
        }
        word(tried + 1)?;
    }
    let lowest = found.iter().map(|peak| peak.misfit).fold(f64::INFINITY, f64::min);
    let agreeing = found.iter().filter(|peak| peak.settled && peak.misfit - lowest <= 1e-6 * (1.0 + lowest)).count();
    // of equals the first: the search from the guesses
    let Some(best) = found.into_iter().find(|peak| peak.misfit - lowest <= 1e-9 * (1.0 + lowest)) else {
        return Err(refused.unwrap_or_else(not_settled));
    };
    let curvature = curvature(problem, &best.slopes).cholesky().ok_or_else(not_settled)?;
    let covariance = curvature.inverse();
    let lower = covariance.clone().cholesky().ok_or_else(not_settled)?.l();
    let directions = directions(problem.parameters(), &best.slopes);
    Ok(Fit {
        sd: covariance.diagonal().iter().map(|variance| variance.sqrt()).collect(),
        rises: rises(problem, &best.theta, best.misfit, &directions),
        covariance: array(&covariance),
        lower: array(&lower),
        theta: best.theta,
        misfit: best.misfit,
        directions,
        agreeing_starts: (agreeing, STARTS as usize + 1),
        settled: best.settled,
    })
}

fn array(matrix: &DMatrix<f64>) -> Array2<f64> {
    Array2::from_shape_fn(matrix.shape(), |at| matrix[at])
}

fn not_settled() -> Error {
    let message = "the calibration found no peak: the model gives no number near the guesses, or the errors of the \
                   readings are beyond measure; check both";
    Error::new(Code::NotConverged, "calibrate", message)
}

#[cfg(test)]
mod tests {
    use super::super::problem::{Observation, Parameter};
    use super::*;
    use crate::study::unwatched;

    /// A linear model has the closed answer of weighted averages.
    #[test]
    fn linear_model_is_exact_and_bell_shaped() {
        let parameters = [Parameter::plain("a", 1.0, 2.0), Parameter::plain("b", -1.0, 0.5)];
        let observed = [Observation { value: 4.0, error: 1.0 }, Observation { value: 3.0, error: 1.0 }];
        let model = |p: &[f64], y: &mut [f64]| {
            y.fill(p[0]);
            Ok(())
        };
        let problem = Problem::new(&parameters, &observed, &model).unwrap();
        let fit = calibrate(&problem, 1, &mut unwatched).unwrap();
        // precisions 1/4 + 1 + 1
        assert!((fit.theta[0] - (0.25 + 4.0 + 3.0) / 2.25).abs() < 1e-9);
        assert!((fit.sd[0] - 1.0 / 1.5).abs() < 1e-9);
        assert_eq!((fit.theta[1], fit.sd[1]), (-1.0, 0.5));
        assert!(fit.is_bell_shaped());
        assert_eq!(fit.agreeing_starts, (5, 5));
        let [low, high] = fit.interval(0, 0.9);
        assert!((high - low - 2.0 * 1.6448536 * fit.sd[0]).abs() < 1e-6);
        let mut theta = [0.0; 2];
        fit.draw(&[0.5, 0.95], &mut theta);
        assert!((theta[0] - fit.theta[0]).abs() < 1e-12 && (theta[1] - (-1.0 + 0.5 * 1.6448536)).abs() < 1e-6);
    }

    /// A reading that sees only the square of a parameter has two peaks: no bell curve.
    #[test]
    fn two_peaks_are_no_bell() {
        let parameters = [Parameter::plain("a", 0.1, 3.0)];
        let observed = [Observation { value: 1.0, error: 0.5 }];
        let model = |p: &[f64], y: &mut [f64]| {
            y[0] = p[0] * p[0];
            Ok(())
        };
        let problem = Problem::new(&parameters, &observed, &model).unwrap();
        let fit = calibrate(&problem, 1, &mut unwatched).unwrap();
        assert!(fit.theta[0] > 0.0 && !fit.is_bell_shaped(), "{fit:?}");
        assert!(fit.agreeing_starts.0 >= 1);
    }

    #[test]
    fn bad_readings_stops_and_models_without_an_answer() {
        let parameters = [Parameter::log("a", 1.0, 1.0)];
        let good = [Observation { value: 1.0, error: 1.0 }];
        let model = |p: &[f64], y: &mut [f64]| {
            y[0] = p[0];
            Ok(())
        };
        let zero = [Observation { value: 1.0, error: 0.0 }];
        assert!(Problem::new(&parameters, &zero, &model).is_err());
        assert!(Problem::new(&[Parameter::logit("c", 1.0, 1.0)], &good, &model).is_err());
        assert!(Problem::new(&parameters, &[], &model).is_err());
        let problem = Problem::new(&parameters, &good, &model).unwrap();
        let stopped = calibrate(&problem, 0, &mut |done, _| done < 2).unwrap_err();
        assert_eq!(stopped.code, Code::Stopped);
        let nothing = |_: &[f64], _: &mut [f64]| Ok(());
        let problem = Problem::new(&parameters, &good, &nothing).unwrap();
        assert_eq!(calibrate(&problem, 0, &mut unwatched).unwrap_err().code, Code::NotFinite);
    }
}
