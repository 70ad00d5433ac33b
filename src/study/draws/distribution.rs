//! What is thought of an uncertain input: one of a few kinds, each with its inverse distribution function.

use super::beta::{beta_by_range, beta_quantile};
use super::normal::{normal_cdf, normal_quantile};
use crate::error::{Code, Error, Result};
use crate::quantity::show;

/// The standard normal number that 95 % lie below.
const Z_95: f64 = 1.644_853_626_951_472_7;

/// A distribution of one input, in the unit of that input.
///
/// Source: textbook inverses, e.g. Devroye, Non-Uniform Random Variate Generation (1986).
#[derive(Debug, Clone, Copy, PartialEq)]
#[allow(missing_docs)] // the fields say what they are
pub enum Distribution {
    /// One value, certain.
    Constant(f64),
    /// Bell curve.
    Normal { mean: f64, sd: f64 },
    /// Bell curve of the logarithm: a factor rather than a difference; `ln_sd` is the sd of the natural logarithm.
    Lognormal { median: f64, ln_sd: f64 },
    /// Any value between two as likely as any other.
    Uniform { low: f64, high: f64 },
    /// Any factor between two as likely as any other.
    LogUniform { low: f64, high: f64 },
    /// Least, most likely and greatest value.
    Triangular { low: f64, mode: f64, high: f64 },
    /// Bell curve cut off at both ends; `mean` and `sd` are those before the cut.
    TruncatedNormal { mean: f64, sd: f64, low: f64, high: f64 },
    /// Beta distribution with shapes `a`, `b`, stretched from `low` to `high`: for shares.
    Beta { low: f64, high: f64, a: f64, b: f64 },
}

use Distribution as D;

impl Distribution {
    /// Bell curve from the values that 5 % and 95 % lie below.
    pub fn normal_90(p5: f64, p95: f64) -> Distribution {
        D::Normal { mean: 0.5 * (p5 + p95), sd: (p95 - p5) / (2.0 * Z_95) }
    }

    /// Lognormal from the values (> 0) that 5 % and 95 % lie below.
    ///
    /// ```
    /// use pinfilm::study::Distribution;
    /// let dry_wear = Distribution::lognormal_90(1e-4, 3e-3);
    /// assert!((dry_wear.quantile(0.5) - 5.477_226e-4).abs() < 1e-10);
    /// ```
    pub fn lognormal_90(p5: f64, p95: f64) -> Distribution {
        D::Lognormal { median: (p5 * p95).sqrt(), ln_sd: (p95 / p5).ln() / (2.0 * Z_95) }
    }

    /// Lognormal that lies with probability `share` between `median`/`factor` and `median`·`factor` (`factor` > 1).
    pub fn lognormal_within(median: f64, factor: f64, share: f64) -> Distribution {
        D::Lognormal { median, ln_sd: factor.ln() / normal_quantile(0.5 + 0.5 * share) }
    }

    /// Beta between two ends with its peak at `mode`, as rounded as project planning takes it.
    ///
    /// Source: the PERT convention, shapes 1 + 4 (mode − low)/(high − low) and 1 + 4 (high − mode)/(high − low); Malcolm,
    /// Roseboom, Clark and Fazar, Operations Research 7 (1959) 646.
    pub fn pert(low: f64, mode: f64, high: f64) -> Distribution {
        let width = high - low;
        D::Beta { low, high, a: 1.0 + 4.0 * (mode - low) / width, b: 1.0 + 4.0 * (high - mode) / width }
    }

    /// Beta between 0 and 1 from the values that 5 % and 95 % lie below.
    pub fn beta_90(p5: f64, p95: f64) -> Result<Distribution> {
        let (a, b) = beta_by_range(p5, p95)?;
        Ok(D::Beta { low: 0.0, high: 1.0, a, b })
    }

    /// The value that a share `u` (0 to 1, both excluded) lies below.
    pub fn quantile(&self, u: f64) -> f64 {
        match *self {
            D::Constant(value) => value,
            D::Normal { .. } | D::Lognormal { .. } => self.at_normal(normal_quantile(u)),
            D::Uniform { low, high } => low + u * (high - low),
            D::LogUniform { low, high } => low * (u * (high / low).ln()).exp(),
            D::Triangular { low, mode, high } => {
                let width = high - low;
                if u * width < mode - low {
                    low + (u * width * (mode - low)).sqrt()
                } else {
                    high - ((1.0 - u) * width * (high - mode)).sqrt()
                }
            }
            D::TruncatedNormal { mean, sd, low, high } => {
                let (a, b) = ((low - mean) / sd, (high - mean) / sd);
                // where all lies in the upper tail, count from above: the shares below are all next to 1
                let z = if a > 0.0 {
                    let (above_a, above_b) = (normal_cdf(-a), normal_cdf(-b));
                    -normal_quantile(above_a - u * (above_a - above_b))
                } else {
                    let (below_a, below_b) = (normal_cdf(a), normal_cdf(b));
                    normal_quantile(below_a + u * (below_b - below_a))
                };
                (mean + sd * z).clamp(low, high) // rounding only
            }
            D::Beta { low, high, a, b } => low + (high - low) * beta_quantile(a, b, u),
        }
    }

    /// The same for a share that was not checked: one that is no share is refused.
    pub fn checked_quantile(&self, u: f64) -> Result<f64> {
        if u > 0.0 && u < 1.0 {
            return Ok(self.quantile(u));
        }
        let message = format!("{u} is no share of a distribution: give a number between 0 and 1, both excluded");
        Err(Error::new(Code::OutOfRange, "u", message).number(u).limit("above 0 and below 1"))
    }

    /// The value as far up in this distribution as `z` is in the standard normal: what a correlated draw needs.
    pub fn at_normal(&self, z: f64) -> f64 {
        match *self {
            D::Normal { mean, sd } => mean + sd * z,
            D::Lognormal { median, ln_sd } => median * (ln_sd * z).exp(),
            _ => self.quantile(normal_cdf(z)),
        }
    }

    /// The word for the kind.
    pub fn kind(&self) -> &'static str {
        match self {
            D::Constant(_) => "constant",
            D::Normal { .. } => "normal",
            D::Lognormal { .. } => "lognormal",
            D::Uniform { .. } => "uniform",
            D::LogUniform { .. } => "loguniform",
            D::Triangular { .. } => "triangular",
            D::TruncatedNormal { .. } => "truncated normal",
            D::Beta { .. } => "beta",
        }
    }

    /// Refuses parameters that are no distribution, saying what to change; `field` is the input it belongs to.
    pub fn check(&self, field: &str) -> Result<()> {
        let kind = self.kind();
        let refuse = |code, what: &str, value: f64, limit: &str, change: &str| {
            let message =
                format!("{field}: the {what} of its {kind} distribution is {value}; it must be {limit}: {change}");
            Err(Error::new(code, field, message).number(value).limit(limit))
        };
        let (numbers, count) = self.numbers();
        for &(what, value) in &numbers[..count] {
            if !value.is_finite() {
                return refuse(Code::NotFinite, what, value, "a finite number", "give a number");
            }
            let must_be_positive = matches!(what, "sd" | "ln_sd" | "median" | "a" | "b")
                || (what == "low" && matches!(self, D::LogUniform { .. }));
            if must_be_positive && value <= 0.0 {
                let change =
                    if what.contains("sd") { "name it a constant if it is certain" } else { "give one above 0" };
                return refuse(Code::OutOfRange, what, value, "above 0", change);
            }
        }
        match *self {
            D::Uniform { low, high }
            | D::LogUniform { low, high }
            | D::Beta { low, high, .. }
            | D::TruncatedNormal { low, high, .. }
            | D::Triangular { low, high, .. }
                if low >= high =>
            {
                let limit = format!("below its upper end {high}");
                refuse(Code::Inconsistent, "lower end", low, &limit, "exchange the two, or name it a constant")
            }
            D::Triangular { low, mode, high } if mode < low || mode > high => {
                let limit = format!("between {low} and {high}");
                refuse(Code::Inconsistent, "most likely value", mode, &limit, "move it or the ends")
            }
            D::TruncatedNormal { mean, sd, low, high } if mean < low - 6.0 * sd || mean > high + 6.0 * sd => {
                let limit = format!("within 6 sd of {low} to {high}");
                refuse(
                    Code::Inconsistent,
                    "mean",
                    mean,
                    &limit,
                    "hardly any of the bell curve is left; move it or the ends",
                )
            }
            _ => Ok(()),
        }
    }

    /// Refuses a distribution of which more than one draw in a thousand falls below `low` or above `high`, the range that
    /// its input allows.
    pub fn check_within(&self, field: &str, unit: &'static str, low: f64, high: f64) -> Result<()> {
        let (least, most) = (self.quantile(0.001), self.quantile(0.999));
        let (value, end) = if least < low { (least, "below") } else { (most, "above") };
        if least >= low && most <= high {
            return Ok(());
        }
        let with = |number: f64| format!("{}{}{unit}", show::number(number), if unit.is_empty() { "" } else { " " });
        let message = format!(
            "{field}: one draw in a thousand of its {} distribution is {end} {}, and only {} to {} is allowed: narrow it, or \
             use a triangular or truncated normal distribution that ends there",
            self.kind(),
            with(value),
            show::number(low),
            with(high)
        );
        let limit = format!("{low} to {high}");
        Err(Error::new(Code::OutOfRange, field, message).number(value).unit(unit).limit(limit))
    }

    /// Its parameters with their names.
    pub fn parameters(&self) -> Vec<(&'static str, f64)> {
        let (numbers, count) = self.numbers();
        numbers[..count].to_vec()
    }

    /// Its parameters with their names, and how many there are.
    fn numbers(&self) -> ([(&'static str, f64); 4], usize) {
        let none = ("", 0.0);
        match *self {
            D::Constant(value) => ([("value", value), none, none, none], 1),
            D::Normal { mean, sd } => ([("mean", mean), ("sd", sd), none, none], 2),
            D::Lognormal { median, ln_sd } => ([("median", median), ("ln_sd", ln_sd), none, none], 2),
            D::Uniform { low, high } | D::LogUniform { low, high } => ([("low", low), ("high", high), none, none], 2),
            D::Triangular { low, mode, high } => ([("low", low), ("mode", mode), ("high", high), none], 3),
            D::TruncatedNormal { mean, sd, low, high } => {
                ([("mean", mean), ("sd", sd), ("low", low), ("high", high)], 4)
            }
            D::Beta { low, high, a, b } => ([("low", low), ("high", high), ("a", a), ("b", b)], 4),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn kinds() -> Vec<Distribution> {
        vec![
            D::Constant(3.0),
            D::normal_90(-1.0, 4.0),
            D::lognormal_90(0.2, 5.0),
            D::Uniform { low: -2.0, high: 5.0 },
            D::LogUniform { low: 0.03, high: 0.3 },
            D::Triangular { low: 1.0, mode: 1.0, high: 2.0 },
            D::Triangular { low: 1.0, mode: 2.0, high: 2.0 },
            D::TruncatedNormal { mean: 0.2, sd: 0.05, low: 0.08, high: 0.4 },
            D::TruncatedNormal { mean: 0.0, sd: 1.0, low: 4.0, high: 9.0 },
            D::pert(0.7, 0.9, 0.98),
            D::beta_90(0.1, 0.4).unwrap(),
        ]
    }

    /// The greatest distance between 4096 drawn shares and even ones stays below the 0.1 % point of Kolmogorov's.
    #[test]
    fn draws_follow_their_distribution() {
        use crate::study::{philox4x32, unit};
        for kind in kinds().into_iter().skip(1) {
            let mut draws: Vec<f64> =
                (0..4096).map(|row| kind.quantile(unit(philox4x32([row, 0, 0, 0], [5, 0])[0]))).collect();
            draws.sort_by(f64::total_cmp);
            // distribution function by bisection of its inverse
            let share = |x: f64| {
                let below = |u: f64| kind.quantile(u) < x;
                (0..40).fold((0.0, 1.0), |(l, h), _| {
                    let middle = 0.5 * (l + h);
                    if below(middle) { (middle, h) } else { (l, middle) }
                })
            };
            let far = draws.iter().enumerate().map(|(i, &x)| (share(x).0 - i as f64 / 4096.0).abs());
            assert!(far.fold(0.0, f64::max) < 1.95 / 64.0, "{kind:?}");
        }
    }

    #[test]
    fn five_and_ninety_five_percent_come_back() {
        let beta = D::beta_90(0.1, 0.4).unwrap();
        for (kind, p5, p95) in
            [(D::normal_90(-1.0, 4.0), -1.0, 4.0), (D::lognormal_90(0.2, 5.0), 0.2, 5.0), (beta, 0.1, 0.4)]
        {
            assert!((kind.quantile(0.05) - p5).abs() < 1e-12, "{kind:?}");
            assert!((kind.quantile(0.95) - p95).abs() < 1e-12, "{kind:?}");
        }
        let factor = D::lognormal_within(2.0, 10.0, 0.95);
        assert!((factor.quantile(0.975) / 20.0 - 1.0).abs() < 1e-12);
    }

    #[test]
    fn what_is_no_distribution_is_refused_with_what_to_change() {
        let refused = |kind: Distribution| kind.check("oil.price").unwrap_err();
        assert_eq!(refused(D::Constant(f64::NAN)).code, Code::NotFinite);
        assert_eq!(refused(D::Normal { mean: 1.0, sd: 0.0 }).code, Code::OutOfRange);
        assert_eq!(refused(D::lognormal_90(3.0, 1.0)).code, Code::OutOfRange);
        assert_eq!(refused(D::Uniform { low: 2.0, high: 2.0 }).code, Code::Inconsistent);
        assert_eq!(refused(D::Triangular { low: 0.0, mode: 3.0, high: 2.0 }).code, Code::Inconsistent);
        assert_eq!(refused(D::TruncatedNormal { mean: 0.0, sd: 1.0, low: 50.0, high: 60.0 }).code, Code::Inconsistent);
        assert_eq!(refused(D::LogUniform { low: 0.0, high: 2.0 }).code, Code::OutOfRange);
        assert_eq!(refused(D::pert(0.0, 2.0, 1.0)).code, Code::OutOfRange);
        assert!(refused(D::Normal { mean: 1.0, sd: -1.0 }).message.contains("constant"));
        for kind in kinds() {
            kind.check("x").unwrap();
        }
        let outside = D::Normal { mean: 0.1, sd: 0.1 }.check_within("joint.friction", "", 0.0, 1.0).unwrap_err();
        assert!(outside.message.contains("triangular"), "{outside}");
        D::lognormal_90(1e-4, 3e-3).check_within("wear_coefficient_dry", "", 0.0, 0.1).unwrap();
    }

    proptest! {
        #[test]
        fn quantiles_rise_and_stay_inside(u in 1e-9..1.0_f64, v in 1e-9..1.0_f64) {
            let (u, v) = (u.min(v), u.max(v));
            for kind in kinds() {
                prop_assert!(kind.quantile(u) <= kind.quantile(v), "{:?} {} {}", kind, u, v);
                let through_normal = kind.at_normal(normal_quantile(u));
                prop_assert!((through_normal - kind.quantile(u)).abs() < 1e-6 * (1.0 + kind.quantile(u).abs()));
            }
            let cut = D::TruncatedNormal { mean: 0.0, sd: 1.0, low: 4.0, high: 9.0 };
            prop_assert!((4.0..=9.0).contains(&cut.quantile(u)));
        }
    }
}
