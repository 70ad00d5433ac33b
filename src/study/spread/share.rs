//! How probable an outcome is, such as a payback within a limit.

use super::super::draws::normal_quantile;

/// A probability counted in draws, with its interval.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Share {
    /// Share of the draws.
    pub value: f64,
    /// Lower end of the interval.
    pub low: f64,
    /// Upper end of the interval.
    pub high: f64,
}

impl Share {
    /// `hits` of `count` (> 0) independent draws, with the interval that holds the truth with probability `confidence`.
    ///
    /// Source: Wilson, J. Am. Stat. Assoc. 22 (1927) 209. None and all are 0 and 1 exactly at their end.
    ///
    /// ```
    /// let share = pinfilm::study::Share::counted(37, 1000, 0.95);
    /// assert!((share.low - 0.026_961_18).abs() < 1e-8 && (share.high - 0.050_582_40).abs() < 1e-8);
    /// ```
    pub fn counted(hits: usize, count: usize, confidence: f64) -> Share {
        let z = normal_quantile(0.5 + 0.5 * confidence);
        let (n, value) = (count as f64, hits as f64 / count as f64);
        let shrink = 1.0 / (1.0 + z * z / n);
        let middle = shrink * (value + 0.5 * z * z / n);
        let half = shrink * z * (value * (1.0 - value) / n + 0.25 * z * z / (n * n)).sqrt();
        let low = if hits == 0 { 0.0 } else { middle - half };
        let high = if hits == count { 1.0 } else { middle + half };
        Share { value, low, high }
    }
}

/// Share of `outcomes` that are at most `limit`; 0 of none.
pub fn share_within(outcomes: &[f64], limit: f64) -> f64 {
    let hits = outcomes.iter().filter(|&&x| x <= limit).count();
    if outcomes.is_empty() { 0.0 } else { hits as f64 / outcomes.len() as f64 }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        /// Wilson's ends are the probabilities at which the count lies z standard errors away.
        #[test]
        fn ends_are_z_errors_away(hits in 1_usize..99, confidence in 0.5..0.999_f64) {
            let share = Share::counted(hits, 100, confidence);
            let z = normal_quantile(0.5 + 0.5 * confidence);
            for end in [share.low, share.high] {
                prop_assert!(((share.value - end).abs() / (end * (1.0 - end) / 100.0).sqrt() - z).abs() < 1e-9);
            }
            let mirrored = Share::counted(100 - hits, 100, confidence);
            prop_assert!((mirrored.low + share.high - 1.0).abs() < 1e-12);
        }
    }

    #[test]
    fn none_and_all_are_exact() {
        assert_eq!(Share::counted(0, 50, 0.95).low, 0.0);
        assert_eq!(Share::counted(50, 50, 0.95).high, 1.0);
        assert_eq!(share_within(&[1.0, f64::INFINITY], 5.0), 0.5);
        assert_eq!(share_within(&[], 5.0), 0.0);
    }
}
