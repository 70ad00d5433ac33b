//! Stand-in for the pitch geometry of the chain room, until both are in one tree.

use crate::error::{Code, Error, Result};
use std::f64::consts::{PI, TAU};

/// Pitch diameter (m) of a sprocket: `pitch` m, `teeth` > 2. Closed form of a regular polygon.
pub fn pitch_diameter(pitch: f64, teeth: f64) -> f64 {
    pitch / (PI / teeth).sin()
}

/// Angle (rad) through which one joint articulates on a sprocket of `teeth`. Closed form of a regular polygon.
pub fn articulation_angle_toothed(teeth: f64) -> f64 {
    TAU / teeth
}

/// Angle (rad) through which one joint articulates on a smooth turn; `pitch`, joint path `radius` in m.
pub fn articulation_angle_smooth(pitch: f64, radius: f64) -> Result<f64> {
    if radius <= pitch / 2.0 {
        return Err(Error::new(
            Code::OutOfRange,
            "radius",
            format!("a turn of radius {radius} m is too tight for a pitch of {pitch} m: choose more than half a pitch"),
        )
        .number(radius)
        .unit("m")
        .limit(format!("> {} m", pitch / 2.0)));
    }
    Ok(2.0 * (pitch / (2.0 * radius)).asin())
}

/// Chain (m) on a turn: links are chords, so it is less than the arc. `pitch` m, `wrap` and `articulation_angle` rad.
pub fn chain_on_turn(pitch: f64, wrap: f64, articulation_angle: f64) -> f64 {
    pitch * wrap / articulation_angle
}
