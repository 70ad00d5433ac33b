//! An investment financed by a loan: what is paid, what is owed, how long it takes.
//!
//! Signs follow the purse: money received is positive, money paid negative. Source of all: the annuity identity
//! present + Σ payment (1 + rate)^−k + future (1 + rate)^−n = 0, payments at the ends of periods.

use super::present_value::{single_present_value, uniform_present_value};

/// Yearly amount that repays `capital` in `years` years at `rate` a year (> −1).
///
/// Source: capital recovery factor, e.g. NIST Handbook 135.
pub fn capital_recovery(capital: f64, rate: f64, years: f64) -> f64 {
    capital / uniform_present_value(rate, years)
}

/// Payment a period for a loan of `present` over `count` periods at `rate` a period; negative for a loan received.
pub fn payment(rate: f64, count: f64, present: f64) -> f64 {
    -capital_recovery(present, rate, count)
}

/// What an account holds after `count` periods at `rate` a period, from `present` and a `payment` a period.
pub fn future_value(rate: f64, count: f64, payment: f64, present: f64) -> f64 {
    -(present + payment * uniform_present_value(rate, count)) / single_present_value(rate, count)
}

/// Periods until `payment` a period has repaid `present` at `rate` a period; none if it never does.
pub fn periods(rate: f64, payment: f64, present: f64) -> Option<f64> {
    let ratio = -present / payment; // the uniform present value factor that is wanted
    let count = if rate == 0.0 { ratio } else { -(-ratio * rate).ln_1p() / rate.ln_1p() };
    (count.is_finite() && count >= 0.0).then_some(count)
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn the_loan_is_repaid(rate in 0.0..0.4f64, count in 1.0..60.0f64, present in 1.0..1e6f64) {
            let paid = payment(rate, count, present);
            prop_assert!(future_value(rate, count, paid, present).abs() < 1e-8 * present / single_present_value(rate, count));
            prop_assert!((periods(rate, paid, present).unwrap() / count - 1.0).abs() < 1e-6);
        }
    }

    #[test]
    fn interest_alone_repays_nothing() {
        assert_eq!(periods(0.1, -10.0, 100.0), None);
        assert_eq!(periods(0.1, 10.0, 100.0), None);
        assert_eq!(periods(0.0, -10.0, 100.0), Some(10.0));
    }
}
