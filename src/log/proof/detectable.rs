//! How small a change so many days of logging can show, and how many days it takes.

use crate::drive::effective_count;
use crate::error::{Code, Error, Result};
use crate::log::statistics::student_quantile;
use statrs::distribution::{ContinuousCDF, Normal};

/// What is known of a log before it is made; spreads as shares of the level.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LoggingPlan {
    /// Spread of a daily mean about the model, coefficient of variation.
    pub noise: f64,
    /// Lag-one autocorrelation of daily means, −1 to 1.
    pub lag1: f64,
    /// Spread of what stays the same within a period (voltage, gear oil, how the clamp sits); no number of days removes it.
    pub systematic: f64,
    /// How far the systematic errors before and after are independent: 1 if they are, 0 if they are the same and cancel;
    /// between the two for a clamp left in place.
    pub systematic_independence: f64,
    /// Two-sided probability of seeing a change where there is none, usually 0.05.
    pub significance: f64,
    /// Probability of seeing the change where there is one, usually 0.8.
    pub power: f64,
}

/// Longest period, in days on each side, that is searched.
const LONGEST: usize = 36_500;

impl LoggingPlan {
    /// Least change, as a share, that `before` and `after` days can show; Student's t at n₁′ + n₂′ − 2 degrees (≥ 2).
    ///
    /// n′ = n (1 − ρ)/(1 + ρ). Source: two-sample t test with effective sample sizes.
    ///
    /// ```
    /// use pinfilm::log::proof::LoggingPlan;
    /// let plan = LoggingPlan { noise: 0.03, lag1: 0.5, systematic: 0.0, systematic_independence: 1.0, significance: 0.05, power: 0.8 };
    /// assert!((plan.least_change(30.0, 30.0) - 0.039_752_4).abs() < 1e-7);
    /// assert!((plan.days_by_normal(0.03) - 47.093).abs() < 1e-3);
    /// ```
    pub fn least_change(&self, before: f64, after: f64) -> f64 {
        let worth = effective_count(before, self.lag1) + effective_count(after, self.lag1);
        let degrees = (worth - 2.0).max(2.0);
        let quantile = |p| student_quantile(p, degrees);
        (quantile(1.0 - 0.5 * self.significance) + quantile(self.power)) * self.spread(before, after)
    }

    /// The same by normal quantiles: for many days, and for comparison with other tools.
    pub fn least_change_by_normal(&self, before: f64, after: f64) -> f64 {
        self.normal_quantiles() * self.spread(before, after)
    }

    /// Days on each side that show a change of `share` by normal quantiles and without systematic error.
    pub fn days_by_normal(&self, share: f64) -> f64 {
        2.0 * (self.normal_quantiles() * self.noise / share).powi(2) / effective_count(1.0, self.lag1)
    }

    /// Fewest whole days on each side that show a change of `share`, systematic error and Student's t included.
    ///
    /// Fails where the systematic error alone hides the change, or a hundred years would not do.
    pub fn days(&self, share: f64) -> Result<usize> {
        let shown = |days: usize| self.least_change(days as f64, days as f64) <= share;
        if !shown(LONGEST) {
            let floor = self.least_change_by_normal(f64::INFINITY, f64::INFINITY);
            return Err(Error::new(
                Code::NoAnswer,
                "share",
                format!(
                    "no number of days shows a change of {share}: what does not average away hides all below {floor:.4}. \
                     Leave the clamp in place, or measure power and load"
                ),
            )
            .number(share)
            .limit(format!("above {floor:.4}")));
        }
        // the least change falls as days are added
        let (mut hidden, mut seen) = (0, LONGEST);
        while seen - hidden > 1 {
            let middle = hidden + (seen - hidden) / 2;
            if shown(middle) { seen = middle } else { hidden = middle }
        }
        Ok(seen)
    }

    fn spread(&self, before: f64, after: f64) -> f64 {
        let days = |n| 1.0 / effective_count(n, self.lag1);
        let systematic = 2.0 * self.systematic_independence * self.systematic * self.systematic;
        (self.noise * self.noise * (days(before) + days(after)) + systematic).sqrt()
    }

    fn normal_quantiles(&self) -> f64 {
        let normal = Normal::standard();
        normal.inverse_cdf(1.0 - 0.5 * self.significance) + normal.inverse_cdf(self.power)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const PLAN: LoggingPlan = LoggingPlan {
        noise: 0.03,
        lag1: 0.5,
        systematic: 0.003,
        systematic_independence: 1.0,
        significance: 0.05,
        power: 0.8,
    };

    #[test]
    fn days_are_the_fewest() {
        for share in [0.02, 0.03, 0.05, 0.2] {
            let days = PLAN.days(share).unwrap();
            assert!(PLAN.least_change(days as f64, days as f64) <= share);
            assert!(days == 1 || PLAN.least_change(days as f64 - 1.0, days as f64 - 1.0) > share);
        }
    }

    #[test]
    fn what_does_not_average_away() {
        let floor = PLAN.least_change_by_normal(1e15, 1e15);
        assert!((floor - 2.801_585_218 * 0.003 * 2f64.sqrt()).abs() < 1e-9);
        assert_eq!(PLAN.days(0.99 * floor).unwrap_err().code, Code::NoAnswer);
        let in_place = LoggingPlan { systematic_independence: 0.0, ..PLAN };
        assert!(in_place.days(0.99 * floor).is_ok());
    }
}
