//! How long a chain may grow: what the sprockets carry, what pin and bush can spare.

use crate::error::{Code, Error, Result};
use std::f64::consts::PI;

/// Usual limit of elongation with a take-up. Source: common practice for roller chain.
pub const ADJUSTABLE_LIMIT: f64 = 0.03;

/// Usual limit with fixed centres, or where two strands must match. Source: common practice for roller chain.
pub const FIXED_CENTRES_LIMIT: f64 = 0.015;

/// Share of its diameter that a pin may lose. From memory.
pub const PIN_WEAR_SHARE: f64 = 0.15;

/// Share of its wall that a bush may lose. From memory.
pub const BUSH_WEAR_SHARE: f64 = 0.5;

/// Share of [`tip_elongation`] from which a chain may jump its teeth. From memory.
pub const JUMP_WARNING_SHARE: f64 = 0.6;

/// How far a joint and its chain may wear.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WearLimits {
    /// Elongation of the chain (1), from [`replacement_limit`].
    pub elongation: f64,
    /// Share of its diameter that the pin may lose; usually [`PIN_WEAR_SHARE`].
    pub pin_share: f64,
    /// Share of its wall that the bush may lose; usually [`BUSH_WEAR_SHARE`].
    pub bush_share: f64,
}

/// Elongation of a chain (1) whose joints have worn by `pin_depth` and `bush_depth` (m); one joint in each `pitch` (m).
///
/// Exact. Source: geometry.
pub fn elongation(pin_depth: f64, bush_depth: f64, pitch: f64) -> f64 {
    (pin_depth + bush_depth) / pitch
}

/// Pitch diameter at which a chain elongated by `elongation` (1) runs on a wheel of `teeth` (m): p (1 + e)/sin(π/z).
///
/// Exact where the worn chain lies evenly. Source: geometry.
pub fn worn_pitch_diameter(pitch: f64, elongation: f64, teeth: u32) -> f64 {
    pitch * (1.0 + elongation) / (PI / f64::from(teeth)).sin()
}

/// Rise of the rollers of a worn chain up the teeth (m): p e / (2 sin(π/z)).
///
/// Exact where the worn chain lies evenly. Source: geometry.
pub fn tooth_ride_out(pitch: f64, elongation: f64, teeth: u32) -> f64 {
    pitch * elongation / (2.0 * (PI / f64::from(teeth)).sin())
}

/// Elongation (1) at which the rollers reach the tips of the tallest teeth and the chain is certain to jump:
/// (1.25 p − d_r) sin(π/z)/p.
///
/// `roller_diameter` d_r in m (the bush's where there is no roller), below 1.25 p. Source: greatest tip diameter of
/// ISO 606 sprockets, d + 1.25 p − d_r, set equal to the rise of [`tooth_ride_out`].
pub fn tip_elongation(pitch: f64, roller_diameter: f64, teeth: u32) -> f64 {
    (1.25 * pitch - roller_diameter) * (PI / f64::from(teeth)).sin() / pitch
}

/// The rule of thumb 200/z per cent for the greatest elongation on a wheel of `teeth` (1). Source: common practice; it is
/// [`tip_elongation`] rounded up, for usual rollers.
pub fn tooth_rule_limit(teeth: u32) -> f64 {
    2.0 / f64::from(teeth)
}

/// Elongation (1) at which the chain is replaced: the user's `limit`, but never above what the largest wheel carries.
///
/// `pitch` and `roller_diameter` in m, `most_teeth` of the largest toothed wheel, `None` where the loop has none. Fails
/// where the roller is so thick that no tooth stands above it.
pub fn replacement_limit(limit: f64, pitch: f64, roller_diameter: f64, most_teeth: Option<u32>) -> Result<f64> {
    let Some(teeth) = most_teeth else { return Ok(limit) };
    let tip = tip_elongation(pitch, roller_diameter, teeth);
    if tip <= 0.0 {
        return Err(Error::new(
            Code::Inconsistent,
            "roller diameter",
            "the rollers are thicker than 1.25 pitches, so no tooth stands above them: correct roller diameter or pitch",
        )
        .number(roller_diameter)
        .unit("m")
        .limit("below 1.25 pitches"));
    }
    Ok(limit.min(tooth_rule_limit(teeth)).min(tip))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn at_tip_elongation_the_roller_has_risen_to_the_tip() {
        let (pitch, roller) = (25.4e-3, 15.88e-3);
        for teeth in [9, 19, 38, 114] {
            let rise = tooth_ride_out(pitch, tip_elongation(pitch, roller, teeth), teeth);
            assert!((rise - 0.5 * (1.25 * pitch - roller)).abs() < 1e-15);
            let radius = |e: f64| 0.5 * worn_pitch_diameter(pitch, e, teeth);
            assert!((radius(0.02) - radius(0.0) - tooth_ride_out(pitch, 0.02, teeth)).abs() < 1e-14);
        }
    }

    #[test]
    fn the_rule_of_thumb_lies_just_above_the_geometry() {
        // ISO 606 16B: pitch 25.4 mm, roller 15.88 mm
        for (teeth, tip) in [(19, 10.2839), (38, 5.15958), (76, 2.58200), (114, 1.72160)] {
            let ours = 100.0 * tip_elongation(25.4e-3, 15.88e-3, teeth);
            assert!((ours - tip).abs() < 1e-4 && ours < 100.0 * tooth_rule_limit(teeth));
        }
    }

    #[test]
    fn the_least_limit_counts() {
        let limit = |e, z| replacement_limit(e, 25.4e-3, 15.88e-3, z).unwrap();
        assert_eq!((limit(0.03, None), limit(0.03, Some(25))), (0.03, 0.03));
        assert_eq!(limit(0.03, Some(114)), tip_elongation(25.4e-3, 15.88e-3, 114));
        assert_eq!(replacement_limit(0.03, 25.4e-3, 8e-3, Some(80)).unwrap(), tooth_rule_limit(80));
        assert_eq!(replacement_limit(0.03, 10e-3, 13e-3, Some(20)).unwrap_err().code, Code::Inconsistent);
    }
}
