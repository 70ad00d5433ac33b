//! Present value factors and net present value: flow 0 now, the others at year ends, all real or all nominal.

/// Present value of one payment in `years` years at `rate` a year (> −1): (1 + rate)^−years.
///
/// Source: NIST Handbook 135 (Fuller and Petersen 1996), single present value factor.
///
/// ```
/// # use pinfilm::economics::single_present_value;
/// assert!((single_present_value(0.03, 10.0) - 0.744).abs() < 5e-4);
/// ```
pub fn single_present_value(rate: f64, years: f64) -> f64 {
    (-years * rate.ln_1p()).exp()
}

/// Present value of one unit at every year end for `years` years at `rate` a year (> −1); `years` at rate 0.
///
/// Source: NIST Handbook 135, uniform present value factor.
pub fn uniform_present_value(rate: f64, years: f64) -> f64 {
    escalating_present_value(rate, 0.0, years)
}

/// Present value of a yearly amount that grows by `escalation` a year, at `rate` a year (both > −1), over `years` years;
/// the amount is stated at today's price.
///
/// x (xⁿ − 1)/(x − 1) with x = (1 + escalation)/(1 + rate); n where the two are equal. Exact down to tiny differences.
/// Source: NIST Handbook 135, modified uniform present value factor UPV*.
pub fn escalating_present_value(rate: f64, escalation: f64, years: f64) -> f64 {
    let less_one = (escalation - rate) / (1.0 + rate);
    if less_one == 0.0 {
        return years;
    }
    (1.0 + less_one) * (years * less_one.ln_1p()).exp_m1() / less_one
}

/// Net present value of `flows` (now, then year ends) at `rate` a year (> −1).
///
/// ```
/// # use pinfilm::economics::npv;
/// let value = npv(0.08, &[-40_000.0, 5_000.0, 8_000.0, 12_000.0, 30_000.0]);
/// assert!((value - 3065.223).abs() < 1e-3);
/// ```
pub fn npv(rate: f64, flows: &[f64]) -> f64 {
    let factor = 1.0 / (1.0 + rate);
    flows.iter().rev().fold(0.0, |sum, flow| sum * factor + flow)
}

/// Pairs (rate, NPV) at `points` ≥ 2 rates evenly from −50 % to 200 %: what to look at where the rate of return has
/// several values or none.
pub fn npv_curve(flows: &[f64], points: usize) -> Vec<(f64, f64)> {
    let (low, high) = (-0.5, 2.0);
    let step = (high - low) / (points.max(2) - 1) as f64;
    (0..points.max(2)).map(|i| low + step * i as f64).map(|rate| (rate, npv(rate, flows))).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn factors_are_sums(rate in -0.3..0.5f64, escalation in -0.2..0.3f64, years in 1usize..40) {
            let sum: f64 = (1..=years).map(|k| ((1.0 + escalation) / (1.0 + rate)).powi(k as i32)).sum();
            let ours = escalating_present_value(rate, escalation, years as f64);
            prop_assert!((ours / sum - 1.0).abs() < 1e-11);
            let ones: Vec<f64> = (0..=years).map(|k| f64::from(u8::from(k > 0))).collect();
            prop_assert!((uniform_present_value(rate, years as f64) / npv(rate, &ones) - 1.0).abs() < 1e-11);
        }
    }

    #[test]
    fn equal_and_nearly_equal_rates() {
        assert_eq!(escalating_present_value(0.05, 0.05, 10.0), 10.0);
        assert_eq!(uniform_present_value(0.0, 7.0), 7.0);
        assert!((escalating_present_value(0.05, 0.05 + 1e-15, 10.0) - 10.0).abs() < 1e-12);
        assert!((uniform_present_value(1e-13, 10.0) - 10.0).abs() < 1e-11);
        assert!((escalating_present_value(0.05, 0.03, 10.0) - 9.010024038).abs() < 1e-9);
        assert!((escalating_present_value(0.03, 0.08, 15.0) - 22.37964433).abs() < 1e-8);
    }

    #[test]
    fn the_curve_spans_its_rates() {
        let curve = npv_curve(&[-100.0, 230.0, -132.0], 251);
        assert_eq!((curve[0].0, curve[250].0), (-0.5, 2.0));
        assert!(curve[60].1.abs() < 1e-9 && curve[70].1.abs() < 1e-9); // 10 % and 20 %
    }
}
