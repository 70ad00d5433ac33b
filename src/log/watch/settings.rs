//! How the charts of a watch are set.

use super::{Baseline, widened_threshold};
use crate::error::Result;
use serde::{Deserialize, Serialize};

/// How the charts are set.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Settings {
    /// Allowance k of the CUSUM, standard deviations.
    pub allowance: f64,
    /// Threshold h of the CUSUM; see [`widened_threshold`] and [`cusum_threshold`](super::cusum_threshold).
    pub threshold: f64,
    /// Weight λ of the EWMA.
    pub ewma_weight: f64,
    /// Width L of the limits of the EWMA.
    pub ewma_width: f64,
    /// Time between readings, s; after more than one and a half of it the next reading starts afresh.
    pub interval: f64,
    /// Stretch of log that a cause is read from, s.
    pub window: f64,
}

impl Settings {
    /// Usual settings for daily means: k 0.5, h widened for what the baseline was learnt from, λ 0.1, L 2.7, ten days.
    ///
    /// Fails where the baseline is too short or too much alike to watch by.
    pub fn daily(baseline: &Baseline) -> Result<Self> {
        let threshold = widened_threshold(baseline.readings as f64, baseline.lag1)?;
        let day = 86_400.0;
        Ok(Settings { allowance: 0.5, threshold, ewma_weight: 0.1, ewma_width: 2.7, interval: day, window: 10.0 * day })
    }
}
