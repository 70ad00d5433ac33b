//! Percentiles of outcomes, and the outcomes that enclose the true percentile.

use statrs::function::beta::beta_reg;

/// The outcomes in rising order; one without a number (+∞ or NaN) comes last, as +∞.
pub fn sorted(outcomes: &[f64]) -> Vec<f64> {
    let mut sorted: Vec<f64> = outcomes.iter().map(|&x| if x.is_nan() { f64::INFINITY } else { x }).collect();
    sorted.sort_unstable_by(f64::total_cmp);
    sorted
}

/// The value that a share `p` (0 to 1) of rising outcomes lies below; +∞ where it falls on or next to one without a
/// number, and where there are no outcomes.
///
/// Source: type 7 of Hyndman and Fan, The American Statistician 50 (1996) 361.
///
/// ```
/// use pinfilm::study::quantile;
/// assert_eq!(quantile(&[1.0, 2.0, 4.0], 0.75), 3.0);
/// assert_eq!(quantile(&[1.0, 2.0, f64::INFINITY], 0.5), 2.0);
/// ```
pub fn quantile(rising: &[f64], p: f64) -> f64 {
    let Some(last) = rising.len().checked_sub(1) else { return f64::INFINITY };
    let place = p * last as f64;
    let below = place.floor();
    let (part, below) = (place - below, below as usize);
    let low = rising[below];
    // +∞ − +∞ and 0 · ∞ are no numbers
    if part == 0.0 || !low.is_finite() { low } else { low + part * (rising[below + 1] - low) }
}

/// Ranks (1 for the smallest) of two outcomes with the true percentile between them; `None`: no bound on that side.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Ranks {
    /// Rank of the lower bound.
    pub low: Option<usize>,
    /// Rank of the upper bound.
    pub high: Option<usize>,
}

/// Ranks that enclose the percentile `p` of what `count` independent outcomes were drawn from, with probability
/// `confidence` at least; for plain random draws, not for nets.
///
/// Source: exact binomial interval, e.g. Conover, Practical Nonparametric Statistics (1999), section 3.2.
pub fn enclosing_ranks(count: usize, p: f64, confidence: f64) -> Ranks {
    let half = 0.5 * (1.0 - confidence);
    let (low, high) = (binomial_quantile(half, count, p), binomial_quantile(1.0 - half, count, p) + 1);
    Ranks { low: (low > 0).then_some(low), high: (high <= count).then_some(high) }
}

/// The smallest number of successes in `count` trials of probability `p` that is not exceeded with probability `share`.
fn binomial_quantile(share: f64, count: usize, p: f64) -> usize {
    let not_exceeded = |k: usize| {
        if k >= count { 1.0 } else { beta_reg((count - k) as f64, k as f64 + 1.0, 1.0 - p) }
    };
    let (mut low, mut high) = (0, count);
    while low < high {
        let middle = low + (high - low) / 2;
        if not_exceeded(middle) >= share { high = middle } else { low = middle + 1 }
    }
    low
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    /// Source: binomial tables, n = 1000 at 95 %.
    #[test]
    fn ranks_of_a_thousand() {
        let ranks = |p| enclosing_ranks(1000, p, 0.95);
        assert_eq!(ranks(0.05), Ranks { low: Some(37), high: Some(65) });
        assert_eq!(ranks(0.5), Ranks { low: Some(469), high: Some(532) });
        assert_eq!(ranks(0.95), Ranks { low: Some(936), high: Some(964) });
        assert_eq!(enclosing_ranks(20, 0.05, 0.95).low, None);
        assert_eq!(enclosing_ranks(20, 0.95, 0.95).high, None);
    }

    #[test]
    fn outcomes_without_a_number_come_last() {
        let outcomes = sorted(&[3.0, f64::NAN, 1.0, f64::INFINITY, 2.0]);
        assert_eq!(outcomes, [1.0, 2.0, 3.0, f64::INFINITY, f64::INFINITY]);
        assert_eq!(quantile(&outcomes, 0.5), 3.0);
        assert_eq!(quantile(&outcomes, 0.51), f64::INFINITY);
        assert_eq!(quantile(&outcomes, 1.0), f64::INFINITY);
        assert_eq!(quantile(&[], 0.5), f64::INFINITY);
    }

    proptest! {
        #[test]
        fn ends_order_and_scale(values in prop::collection::vec(-1e3..1e3_f64, 1..60), p in 0.0..1.0_f64, q in 0.0..1.0_f64) {
            let rising = sorted(&values);
            prop_assert_eq!(quantile(&rising, 0.0), rising[0]);
            prop_assert_eq!(quantile(&rising, 1.0), rising[rising.len() - 1]);
            prop_assert!(quantile(&rising, p.min(q)) <= quantile(&rising, p.max(q)) + 1e-9);
            let turned = sorted(&values.iter().map(|x| -x).collect::<Vec<_>>());
            prop_assert!((quantile(&turned, 1.0 - p) + quantile(&rising, p)).abs() < 1e-9);
        }

        /// The interval between the ranks holds at least the probability asked for.
        #[test]
        fn ranks_enclose(count in 1_usize..200, p in 0.02..0.98_f64) {
            let ranks = enclosing_ranks(count, p, 0.9);
            let below = |k: usize| if k == 0 { 0.0 } else if k > count { 1.0 } else {
                beta_reg((count - k + 1) as f64, k as f64, 1.0 - p) // probability of fewer than k successes
            };
            let enclosed = below(ranks.high.unwrap_or(count + 1)) - below(ranks.low.unwrap_or(0));
            prop_assert!(enclosed >= 0.9 - 1e-9, "{}", enclosed);
        }
    }
}
