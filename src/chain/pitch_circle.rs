//! The chain on a toothed wheel or a smooth turn: pitch circle, how far a joint bends, how much chain lies there.

use crate::error::{Code, Error, Result};
use crate::quantity::show::in_unit;
use crate::quantity::unit::MM;
use std::f64::consts::{PI, TAU};

/// Pitch circle diameter (m) of a sprocket: `pitch / sin(pi/teeth)`.
///
/// `pitch` m, `teeth` a whole number of 3 and more. Exact geometry; ISO 606 tabulates it for unit pitch.
///
/// ```
/// assert!((pinfilm::chain::pitch_diameter(0.1, 6.0) - 0.2).abs() < 1e-15);
/// ```
pub fn pitch_diameter(pitch: f64, teeth: f64) -> f64 {
    pitch / (PI / teeth).sin()
}

/// Angle (rad) by which one joint bends when it enters a sprocket, and straightens when it leaves: `2 pi/teeth`.
///
/// Exact geometry.
pub fn articulation_angle(teeth: f64) -> f64 {
    TAU / teeth
}

/// Angle (rad) by which one joint bends on a smooth turn: `2 asin(pitch / (2 radius))`.
///
/// `pitch` m, `radius` (m) of the path of the joints. Exact geometry.
/// Fails if the radius is not greater than half the pitch: no chain of that pitch can lie there.
pub fn articulation_angle_smooth(pitch: f64, radius: f64) -> Result<f64> {
    let share = pitch / (2.0 * radius);
    if share > 0.0 && share < 1.0 {
        return Ok(2.0 * share.asin());
    }
    Err(Error::new(
        Code::OutOfRange,
        "radius",
        format!(
            "a chain of {} pitch cannot turn on a radius of {}: the radius of the joints' path must be greater than half \
             the pitch",
            in_unit(pitch, &MM),
            in_unit(radius, &MM)
        ),
    )
    .number(radius)
    .unit("m")
    .limit(format!("above {}", in_unit(pitch / 2.0, &MM))))
}

/// Length of chain (m) on a turn: one pitch for every articulation angle of the wrap.
///
/// `pitch` m, `wrap` and `articulation` rad (of the sprocket or the smooth turn). Exact for a polygon: less than the arc
/// through the joints.
pub fn chain_on_turn(pitch: f64, wrap: f64, articulation: f64) -> f64 {
    pitch * wrap / articulation
}

/// Measurement over two pins (m) laid in opposite tooth gaps: what a caliper reads on a sprocket.
///
/// `pitch` m, `pin` the measuring pin (m), equal to the roller diameter. With an odd number of teeth the pins are not
/// quite opposite. Source: ISO 606 clause 5, from memory; exact geometry.
pub fn measurement_over_pins(pitch: f64, teeth: f64, pin: f64) -> f64 {
    let diameter = pitch_diameter(pitch, teeth);
    if teeth % 2.0 == 0.0 { diameter + pin } else { diameter * (PI / (2.0 * teeth)).cos() + pin }
}

/// Root diameter (m) of a sprocket: pitch circle less one roller. Source: ISO 606 clause 5, from memory.
pub fn root_diameter(pitch: f64, teeth: f64, roller_diameter: f64) -> f64 {
    pitch_diameter(pitch, teeth) - roller_diameter
}

/// Elongation (a share, not percent) at which the rollers have climbed to the tips of the teeth and the chain jumps.
///
/// `(1.25 pitch - roller_diameter) sin(pi/teeth) / pitch`: the roller seats higher as the pitch grows, the tallest tooth
/// is `(1.25 pitch - roller_diameter)/2` high. `pitch`, `roller_diameter` m. Close to the rule 2/teeth.
/// Source: tooth height of ISO 606 clause 5 (from memory), geometry our own.
///
/// ```
/// assert!((pinfilm::chain::ride_out_elongation(25.4e-3, 15.88e-3, 19.0) - 0.102839).abs() < 1e-6);
/// ```
pub fn ride_out_elongation(pitch: f64, roller_diameter: f64, teeth: f64) -> f64 {
    (1.25 - roller_diameter / pitch) * (PI / teeth).sin()
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The chain that lies on the wheel: a polygon with one side a tooth.
    #[test]
    fn a_full_wrap_holds_one_pitch_a_tooth() {
        for teeth in [5.0, 6.0, 19.0, 76.0] {
            let alpha = articulation_angle(teeth);
            assert!((chain_on_turn(0.1, TAU, alpha) - teeth * 0.1).abs() < 1e-12);
            // A smooth turn through the joints of a sprocket bends them alike.
            let radius = pitch_diameter(0.1, teeth) / 2.0;
            assert!((articulation_angle_smooth(0.1, radius).unwrap() - alpha).abs() < 1e-12);
            assert!(chain_on_turn(0.1, PI, alpha) < radius * PI);
        }
    }

    #[test]
    fn cases_of_an_independent_implementation() {
        for (teeth, diameter, degrees) in
            [(5.0, 0.17013016167040798, 72.0), (19.0, 0.607553382097426, 18.94736842105263)]
        {
            assert!((pitch_diameter(0.1, teeth) / diameter - 1.0).abs() < 1e-12);
            assert!((articulation_angle(teeth).to_degrees() - degrees).abs() < 1e-12);
        }
        let alpha = articulation_angle_smooth(0.1, 0.45).unwrap();
        assert!((alpha.to_degrees() - 12.758740416885608).abs() < 1e-11);
        assert!((chain_on_turn(0.1, PI / 2.0, alpha) - 0.7053987859247385).abs() < 1e-13);
    }

    #[test]
    fn too_tight_a_turn_is_refused() {
        for radius in [0.05, 0.02, 0.0, -1.0, f64::NAN] {
            assert_eq!(articulation_angle_smooth(0.1, radius).unwrap_err().code, Code::OutOfRange);
        }
    }

    #[test]
    fn the_chain_jumps_a_little_before_two_hundred_over_teeth() {
        for (teeth, percent) in [(19.0, 10.2839), (38.0, 5.15958), (76.0, 2.58200), (114.0, 1.72160)] {
            let jump = ride_out_elongation(25.4e-3, 15.88e-3, teeth);
            assert!((jump * 100.0 - percent).abs() < 5e-5 && jump < 2.0 / teeth);
        }
    }

    #[test]
    fn even_sprockets_are_measured_across_the_middle() {
        assert_eq!(measurement_over_pins(0.1, 8.0, 0.05), pitch_diameter(0.1, 8.0) + 0.05);
        assert!(measurement_over_pins(0.1, 9.0, 0.05) < pitch_diameter(0.1, 9.0) + 0.05);
    }
}
