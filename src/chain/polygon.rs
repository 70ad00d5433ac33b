//! Polygon action: a sprocket feeds the chain unevenly; how far, and what force that may cause.

use std::f64::consts::{PI, TAU};

/// Amplitude (m) of the chain's position error: how far the chain runs ahead of and behind its mean motion.
///
/// With x = pi/teeth, k = sin(x)/x, t = acos(k): `R (sin t - k t)`, R the pitch circle radius. `pitch` m. Exact geometry
/// of a chain leaving a sprocket that turns evenly.
pub fn position_error(pitch: f64, teeth: f64) -> f64 {
    let x = PI / teeth;
    let k = x.sin() / x;
    let t = k.acos();
    pitch / (2.0 * x.sin()) * (t.sin() - k * t)
}

/// How near the tooth frequency lies to the natural frequency of the chain as a spring.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Resonance {
    /// Ratio outside 0.5 to 5: the estimate stands as it is.
    Clear,
    /// Ratio between 2 and 5: the estimate is low, a single mode swings up to a third more.
    Close,
    /// Ratio between 0.5 and 2: no number can be trusted; change the speed or the number of teeth.
    Near,
}

/// Extra pull from polygon action: an estimate, not a bound, since the sway of the spans is left out.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PolygonForce {
    /// Greatest acceleration of the chain, m/s2.
    pub acceleration: f64,
    /// Amplitude of the position error, m; see [`position_error`].
    pub position_error: f64,
    /// Force if the whole mass followed rigidly, N.
    pub rigid: f64,
    /// Force if the chain took up the position error as a spring, N.
    pub elastic: f64,
    /// The smaller of the two, N.
    pub force: f64,
    /// Tooth frequency over natural frequency (-).
    pub frequency_ratio: f64,
    /// What the ratio says about the estimate.
    pub resonance: Resonance,
}

/// Extra pull (N) from polygon action at the drive.
///
/// `pitch` m, `speed` m/s, `mass` of everything that moves (kg), `stiffness` of the loop (N/m, see [`loop_stiffness`]).
/// Greatest acceleration `omega² pitch/2`, omega = 2 pi speed/(teeth pitch); the tooth frequency is speed/pitch.
/// Source: acceleration from the polygon's geometry; the choice of the smaller of rigid and elastic force is a closure
/// of our own.
pub fn polygon_force(pitch: f64, teeth: f64, speed: f64, mass: f64, stiffness: f64) -> PolygonForce {
    let omega = TAU * speed / (teeth * pitch);
    let acceleration = omega * omega * pitch / 2.0;
    let position_error = position_error(pitch, teeth);
    let (rigid, elastic) = (mass * acceleration, stiffness * position_error);
    let frequency_ratio = speed / pitch * TAU / (stiffness / mass).sqrt();
    let resonance = match frequency_ratio {
        r if r > 0.5 && r < 2.0 => Resonance::Near,
        r if (2.0..5.0).contains(&r) => Resonance::Close,
        _ => Resonance::Clear,
    };
    PolygonForce { acceleration, position_error, rigid, elastic, force: rigid.min(elastic), frequency_ratio, resonance }
}

/// Stiffness (N/m) of a loop between drive and tail: 100 times the tensile strength a unit strain, over half the loop.
///
/// `tensile_strength` (N) of one strand, `strands` side by side, `loop_length` (m) of the whole loop.
/// Closure of our own, no published law; the factor lies between 60 and 150.
pub fn loop_stiffness(tensile_strength: f64, strands: f64, loop_length: f64) -> f64 {
    const STRENGTHS_PER_STRAIN: f64 = 100.0;
    STRENGTHS_PER_STRAIN * tensile_strength * strands / (loop_length / 2.0)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::chain::{pitch_diameter, speed_ripple};

    /// The position error integrates the speed error: follow the chain through one tooth in small steps.
    #[test]
    fn position_error_is_the_integrated_speed_error() {
        for teeth in [5.0, 6.0, 19.0] {
            let (radius, x) = (pitch_diameter(0.1, teeth) / 2.0, PI / teeth);
            let error = |angle: f64| radius * angle.sin() - angle * 0.1 / (2.0 * x);
            let greatest = (0..=20_000).map(|i| error(x * f64::from(i) / 20_000.0)).fold(0.0, f64::max);
            assert!((position_error(0.1, teeth) / greatest - 1.0).abs() < 1e-6);
            assert!(position_error(0.1, teeth) < 0.1 * speed_ripple(teeth));
        }
        for (teeth, error) in [(5.0, 0.001318366405730565), (19.0, 8.793230534526245e-5), (6.0, 0.9041588715e-3)] {
            assert!((position_error(0.1, teeth) / error - 1.0).abs() < 1e-9);
        }
    }

    #[test]
    fn a_chain_above_resonance_is_a_spring_and_below_a_mass() {
        let force = polygon_force(0.0127, 21.0, 1.0, 73.6, 666667.0);
        assert!((force.acceleration / 3.52441816240447 - 1.0).abs() < 1e-12);
        assert!((force.rigid / 259.39717675296896 - 1.0).abs() < 1e-12);
        assert!((force.elastic / 6.0913534075623215 - 1.0).abs() < 1e-9);
        assert!((force.frequency_ratio / 5.1982908551945535 - 1.0).abs() < 1e-12);
        assert_eq!((force.force, force.resonance), (force.elastic, Resonance::Clear));
        let slow = polygon_force(0.0127, 21.0, 0.01, 73.6, 666667.0);
        assert_eq!((slow.force, slow.resonance), (slow.rigid, Resonance::Clear));
        assert_eq!(polygon_force(0.0127, 21.0, 0.2, 73.6, 666667.0).resonance, Resonance::Near);
        assert_eq!(polygon_force(0.0127, 21.0, 0.5, 73.6, 666667.0).resonance, Resonance::Close);
        assert!((loop_stiffness(20_000.0, 2.0, 40.0) - 200_000.0).abs() < 1e-9);
    }
}
