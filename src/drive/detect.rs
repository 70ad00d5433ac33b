//! What a log could prove: the least change between two samples of a noisy, autocorrelated signal.

/// Normal quantiles of a two-sided test at 5 % plus a power of 80 %: 1.959963985 + 0.841621234.
pub const TWO_SIDED_5_POWER_80: f64 = 1.959_963_984_540_054 + 0.841_621_233_572_914_3;

/// Number of independent readings that `count` readings with lag-one autocorrelation `lag1` (−1 to 1) are worth.
///
/// Source: first-order autoregressive noise, large count (from memory).
pub fn effective_count(count: f64, lag1: f64) -> f64 {
    count * (1.0 - lag1) / (1.0 + lag1)
}

/// Least change of the mean that two samples can prove, in the unit of `noise`.
///
/// `noise` standard deviation of one reading; `systematic` standard deviation of what does not average away within a
/// sample (voltage, warm-up, re-fitting the clamp), independent in the two samples; `before` and `after` numbers of
/// readings, > 0; `lag1` autocorrelation of successive readings, below 1. The same formula serves current and power;
/// over the slope of current against pull it is the least pull that the current can prove.
/// Source: two-sample normal test, two-sided 5 %, power 80 %.
pub fn least_detectable_change(noise: f64, systematic: f64, before: f64, after: f64, lag1: f64) -> f64 {
    let random = noise * noise * (1.0 / effective_count(before, lag1) + 1.0 / effective_count(after, lag1));
    TWO_SIDED_5_POWER_80 * (random + 2.0 * systematic * systematic).sqrt()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn systematic_error_does_not_average_away() {
        let long = least_detectable_change(0.08, 0.02, 1e12, 1e12, 0.9);
        assert!((long - TWO_SIDED_5_POWER_80 * 0.02 * 2f64.sqrt()).abs() < 1e-6);
        let clean = |n| least_detectable_change(0.08, 0.0, n, n, 0.0);
        assert!((clean(100.0) / clean(400.0) - 2.0).abs() < 1e-12);
    }
}
