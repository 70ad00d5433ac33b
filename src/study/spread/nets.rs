//! Several nets under different shifts: each says the same, and their differences are the error.

use super::quantile::{quantile, sorted};
use super::share::share_within;
use statrs::distribution::{ContinuousCDF, StudentsT};

/// How many nets a study draws unless told otherwise; net r has the seed of the study plus r.
pub const NETS: usize = 8;

/// A number with the error of its drawing.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Estimate {
    /// The number; +∞ is `never`.
    pub value: f64,
    /// Its standard error; `None` where it is not known (one net, or a net that says `never`).
    pub error: Option<f64>,
}

impl Estimate {
    /// Half of the interval that holds the truth with probability `confidence`, if the error came from `nets` nets.
    ///
    /// Student's t at `nets` − 1 degrees of freedom. Source: textbook interval of a mean.
    pub fn half_width(&self, nets: usize, confidence: f64) -> Option<f64> {
        let student = StudentsT::new(0.0, 1.0, nets.checked_sub(1)? as f64).ok()?;
        Some(self.error? * student.inverse_cdf(0.5 + 0.5 * confidence))
    }
}

/// Mean over the nets and its standard error s/√R (s with R − 1).
///
/// Source: randomised quasi-Monte Carlo, e.g. L'Ecuyer and Lemieux (2002). The nets are few: an interval takes Student's
/// t at R − 1 degrees.
pub fn mean_of_nets(of_each: &[f64]) -> Estimate {
    let count = of_each.len() as f64;
    let mean = of_each.iter().sum::<f64>() / count;
    let squares = of_each.iter().map(|x| (x - mean).powi(2)).sum::<f64>();
    let error = (of_each.len() > 1).then(|| (squares / (count - 1.0) / count).sqrt());
    Estimate { value: mean, error }
}

/// The percentile `p` (0 to 1) of outcomes drawn by several nets, one list each, in any order.
///
/// If a net's percentile is `never`, that of all outcomes together is given instead, without an error.
pub fn quantile_over_nets(nets: &[Vec<f64>], p: f64) -> Estimate {
    let of_each: Vec<f64> = nets.iter().map(|outcomes| quantile(&sorted(outcomes), p)).collect();
    if of_each.iter().all(|value| value.is_finite()) && !of_each.is_empty() {
        mean_of_nets(&of_each)
    } else {
        Estimate { value: quantile(&sorted(&nets.concat()), p), error: None }
    }
}

/// Probability that an outcome is at most `limit`, over several nets.
pub fn share_over_nets(nets: &[Vec<f64>], limit: f64) -> Estimate {
    mean_of_nets(&nets.iter().map(|outcomes| share_within(outcomes, limit)).collect::<Vec<_>>())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn mean_and_error() {
        let estimate = mean_of_nets(&[1.0, 2.0, 3.0, 6.0]);
        assert_eq!(estimate.value, 3.0);
        assert!((estimate.error.unwrap() - (14.0_f64 / 3.0 / 4.0).sqrt()).abs() < 1e-15);
        assert_eq!(mean_of_nets(&[5.0]).error, None);
        // Student's t of 7 degrees at 97.5 %, from tables
        let one = Estimate { value: 0.0, error: Some(1.0) };
        assert!((one.half_width(8, 0.95).unwrap() - 2.364_624).abs() < 1e-5);
    }

    #[test]
    fn a_net_that_says_never_gives_way_to_all_together() {
        let nets = [vec![1.0, 2.0, 3.0], vec![4.0, f64::INFINITY, f64::INFINITY]];
        assert_eq!(quantile_over_nets(&nets, 0.5), Estimate { value: 3.5, error: None });
        assert_eq!(quantile_over_nets(&nets, 0.9).value, f64::INFINITY);
        assert!(quantile_over_nets(&nets, 0.0).error.is_some());
        assert_eq!(share_over_nets(&nets, 2.5).value, 1.0 / 3.0);
    }
}
