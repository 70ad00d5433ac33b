//! Chain speed from shaft speed, and how far it swings because a sprocket is a polygon.

use super::pitch_circle::pitch_diameter;
use std::f64::consts::PI;

/// Mean chain speed (m/s): `teeth pitch shaft_speed`.
///
/// `pitch` m, `shaft_speed` in revolutions per second. Exact: one pitch a tooth. The speed of the pitch circle is
/// greater (4.7 % at 6 teeth). Source: by definition, e.g. Shigley, Mechanical Engineering Design.
pub fn chain_speed(pitch: f64, teeth: f64, shaft_speed: f64) -> f64 {
    teeth * pitch * shaft_speed
}

/// Least and greatest chain speed (m/s) within one tooth at constant shaft speed (rev/s).
///
/// Greatest: pitch circle speed `pi D n`; least: that times cos(pi/teeth). `pitch` m.
/// Source: Shigley, Mechanical Engineering Design, eq. 17-28 to 17-30.
pub fn chain_speed_limits(pitch: f64, teeth: f64, shaft_speed: f64) -> (f64, f64) {
    let greatest = PI * pitch_diameter(pitch, teeth) * shaft_speed;
    (greatest * (PI / teeth).cos(), greatest)
}

/// Swing of the chain speed at constant shaft speed: (greatest - least)/mean (-).
///
/// `(pi/teeth) tan(pi/(2 teeth))`. Source: Shigley, Mechanical Engineering Design, eq. 17-31, in a form without
/// cancellation.
///
/// ```
/// assert!((pinfilm::chain::speed_ripple(6.0) - 0.1402978691).abs() < 1e-9);
/// ```
pub fn speed_ripple(teeth: f64) -> f64 {
    PI / teeth * (PI / (2.0 * teeth)).tan()
}

/// Fall of the chain speed from its greatest to its least value, over the greatest (-): `1 - cos(pi/teeth)`.
///
/// Exact geometry (the polygon effect of the textbooks).
pub fn speed_drop(teeth: f64) -> f64 {
    2.0 * (PI / (2.0 * teeth)).sin().powi(2)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn ripple_and_drop_are_those_of_the_limits() {
        for teeth in [3.0, 6.0, 8.0, 19.0, 200.0] {
            let (least, greatest) = chain_speed_limits(0.1, teeth, 0.3);
            let mean = chain_speed(0.1, teeth, 0.3);
            assert!(least < mean && mean < greatest);
            assert!(((greatest - least) / mean - speed_ripple(teeth)).abs() < 1e-14);
            assert!(((greatest - least) / greatest - speed_drop(teeth)).abs() < 1e-14);
        }
        for (teeth, ripple) in [(5.0, 0.2041530661383851), (19.0, 0.013701041533390716)] {
            assert!((speed_ripple(teeth) / ripple - 1.0).abs() < 1e-12);
        }
    }
}
