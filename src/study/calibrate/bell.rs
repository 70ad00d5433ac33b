//! Whether the answer is shaped like a bell curve, so that its errors can be taken from the curvature at its peak.

use super::learnt::Direction;
use super::problem::Problem;

/// Two standard deviations out, a bell curve's misfit has risen by 2; more than this share off, and it is none.
const ALLOWED: f64 = 0.30;

/// Rise of the misfit two standard deviations out along each direction, down and up; +∞ where no line can be.
pub(super) fn rises(problem: &Problem<'_>, peak: &[f64], misfit: f64, directions: &[Direction]) -> Vec<[f64; 2]> {
    let rise = |direction: &Direction, sign: f64| {
        let far = 2.0 * sign * direction.spread_left();
        let moved = peak.iter().zip(problem.parameters()).zip(&direction.weights);
        let moved: Vec<f64> = moved.map(|((theta, parameter), weight)| theta + far * weight * parameter.sd).collect();
        problem.misfit(&moved).map_or(f64::INFINITY, |there| there - misfit)
    };
    directions.iter().map(|direction| [-1.0, 1.0].map(|sign| rise(direction, sign))).collect()
}

/// Whether every rise is that of a bell curve within 30 %.
pub(super) fn is_bell(rises: &[[f64; 2]]) -> bool {
    rises.iter().flatten().all(|rise| (rise / 2.0 - 1.0).abs() <= ALLOWED)
}
