//! Power that the standard lets a roller chain drive carry: what a transmission chain is sold for.
//!
//! The standard assumes two sprockets, smooth load and plenty of oil. A conveyor is limited by its pull, its joints'
//! pressure and its wear instead; `evaluate` never uses this.

use crate::error::{Code, Error, Result};

const INCH: f64 = 0.0254;
/// Mechanical horsepower, W.
const HORSEPOWER: f64 = 745.699_871_582_270_2;
/// Smallest and largest pitch of the formula, m: chains 25 and 240.
const PITCHES: (f64, f64) = (0.25 * INCH, 3.0 * INCH);
/// Below this pitch chains are bushing chains without rollers (25, 35), whose joints take more impact, m.
const FIRST_WITH_ROLLERS: f64 = 0.45 * INCH;

/// Rated power (W) of one strand of roller chain on a small sprocket with `teeth`, turning at `speed` (1/s).
///
/// `pitch` m, 1/4 to 3 inches. The lesser of what fatigue of the side plates and what impact of rollers and bushes
/// allow; service factors are the user's. The light chain 41 is not covered.
/// Source: ASME B29.1 as in Shigley, Mechanical Engineering Design, eq. 17-32 and 17-33 (read in a reprint):
/// H₁ = 0.004 N^1.08 n^0.9 p^(3 − 0.07 p), H₂ = 1000 K N^1.5 p^0.8/n^1.5 in hp, inches and 1/min, K = 17, or 29 below 1/2 inch.
///
/// ```
/// let watts = pinfilm::chain::roller_chain_power(0.0127, 17.0, 1000.0 / 60.0)?;
/// assert!((watts / 745.7 - 5.48).abs() < 0.01);
/// # Ok::<(), pinfilm::Error>(())
/// ```
pub fn roller_chain_power(pitch: f64, teeth: f64, speed: f64) -> Result<f64> {
    // an inch size given in rounded millimetres still counts
    if !(pitch > 0.99 * PITCHES.0 && pitch < 1.01 * PITCHES.1) {
        let message = format!(
            "pitch_mm = {} mm: the standard's rating covers roller chains of 6.35 to 76.2 mm pitch",
            1e3 * pitch
        );
        return Err(Error::new(Code::BeyondModel, "pitch_mm", message)
            .number(1e3 * pitch)
            .unit("mm")
            .limit("6.35 to 76.2 mm"));
    }
    let (p, n) = (pitch / INCH, 60.0 * speed);
    let impact = if pitch < FIRST_WITH_ROLLERS { 29.0 } else { 17.0 };
    let plates = 0.004 * teeth.powf(1.08) * n.powf(0.9) * p.powf(3.0 - 0.07 * p);
    let rollers = 1000.0 * impact * teeth.powf(1.5) * p.powf(0.8) / n.powf(1.5);
    Ok(HORSEPOWER * plates.min(rollers))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn nothing_at_rest_and_less_when_too_fast() {
        assert_eq!(roller_chain_power(0.0127, 17.0, 0.0).unwrap(), 0.0);
        let at = |rpm: f64| roller_chain_power(0.0127, 17.0, rpm / 60.0).unwrap();
        assert!(at(1700.0) > at(900.0) && at(5000.0) < at(1700.0));
        assert!(roller_chain_power(0.1, 17.0, 1.0).is_err());
    }
}
