//! Closed forms of turns: wrapped walls, a corner that carries weight, torque, weight take-ups.

use super::GRAVITY;

/// Ratio of the tensions after and before a wall that the chain wraps: exp(friction × wrap).
///
/// `friction` >= 0 of chain on wall, `wrap` rad. Holds without weight and without joint friction.
/// Source: Euler 1769, Eytelwein 1808.
pub fn capstan_ratio(friction: f64, wrap: f64) -> f64 {
    (friction * wrap).exp()
}

/// Growth exp(mu θ) − 1 at a wall, and its spread K = (exp(mu θ) − 1)/mu over an even pull W along the turn.
///
/// Solution of dS/dθ = mu S + W: S(θ) = S_in exp(mu θ) + W K; K = θ without wall friction.
pub(super) fn wall_growth(friction: f64, wrap: f64) -> (f64, f64) {
    let growth = (friction * wrap).exp_m1();
    (growth, if friction == 0.0 { wrap } else { growth / friction })
}

/// Tension (N) after a corner where one inclined surface carries both weight and wall pressure.
///
/// `tension` N at entry (effective), `friction` on the surface, `wrap` rad, `mass_per_length` kg/m > 0, `radius` m > 0.
/// Less than with wall and floor apart, so a lower bound; the march does not use it.
/// Source: dS/dθ = mu sqrt(S² + w²) with w = q g R, integrated.
pub fn corner_one_surface(tension: f64, friction: f64, wrap: f64, mass_per_length: f64, radius: f64) -> f64 {
    let weight = mass_per_length * GRAVITY * radius;
    weight * ((tension / weight).asinh() + friction * wrap).sinh()
}

/// Mean torque (N m) of the drive shaft for a `pull` (N): one pitch of chain per articulation angle (rad) of rotation.
///
/// Not pull × pitch radius, which is (π/z)/sin(π/z) too much. Source: work balance over one tooth, F z p/(2π).
pub fn shaft_torque(pull: f64, pitch: f64, articulation_angle: f64) -> f64 {
    pull * pitch / articulation_angle
}

/// Tension (N) at the drive exit set by a weight or spring.
///
/// `force` N on the frame of a turn with sin(wrap/2) = `half_wrap_sine` > 0; entry and exit tension of the turn follow
/// S = `gain` S0 + `offset` each. Source: equilibrium of the frame, (S_in + S_out) sin(wrap/2) = force.
pub fn take_up_from_frame_force(force: f64, half_wrap_sine: f64, gains: [f64; 2], offsets: [f64; 2]) -> f64 {
    (force / half_wrap_sine - offsets[0] - offsets[1]) / (gains[0] + gains[1])
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;
    use std::f64::consts::PI;

    /// Euler steps of dS/dθ in the limit of many (midpoint rule).
    fn integrate(start: f64, wrap: f64, slope: impl Fn(f64) -> f64) -> f64 {
        let (steps, mut tension) = (20_000, start);
        let step = wrap / f64::from(steps);
        for _ in 0..steps {
            let middle = tension + step / 2.0 * slope(tension);
            tension += step * slope(middle);
        }
        tension
    }

    #[test]
    fn wall_and_floor_solve_their_equation() {
        let (growth, spread) = wall_growth(0.3, PI);
        let floor = 0.25 * 40.0 * GRAVITY * 0.6;
        let ours = 1000.0 * (1.0 + growth) + floor * spread;
        assert!((ours - 2_873.541_867).abs() < 1e-6);
        assert!((ours / integrate(1000.0, PI, |s| 0.3 * s + floor) - 1.0).abs() < 1e-8);
    }

    #[test]
    fn one_surface_solves_its_equation() {
        let weight: f64 = 40.0 * GRAVITY * 0.6;
        let ours = corner_one_surface(1000.0, 0.3, PI, 40.0, 0.6);
        assert!((ours / integrate(1000.0, PI, |s| 0.3 * s.hypot(weight)) - 1.0).abs() < 1e-8);
    }

    #[test]
    fn torque_of_a_sprocket_is_pull_times_teeth_times_pitch_over_a_turn() {
        assert!((shaft_torque(1000.0, 0.1, 2.0 * PI / 12.0) - 1000.0 * 12.0 * 0.1 / (2.0 * PI)).abs() < 1e-10);
    }

    proptest! {
        #[test]
        fn one_surface_lies_below_wall_and_floor(
            tension in 10.0..1e5f64, friction in 0.01..0.5f64, wrap in 0.1..6.0f64,
            mass in 0.5..500.0f64, radius in 0.1..5.0f64,
        ) {
            let (growth, spread) = wall_growth(friction, wrap);
            let apart = tension * (1.0 + growth) + friction * mass * GRAVITY * radius * spread;
            let one = corner_one_surface(tension, friction, wrap, mass, radius);
            prop_assert!(one <= apart * (1.0 + 1e-12));
            prop_assert!(one >= tension * capstan_ratio(friction, wrap) * (1.0 - 1e-12));
        }

        #[test]
        fn a_slippery_wall_joins_smoothly(wrap in 0.1..6.0f64) {
            let (_, without) = wall_growth(0.0, wrap);
            let (_, little) = wall_growth(1e-12, wrap);
            prop_assert!((without - little).abs() < 1e-9);
        }
    }
}
