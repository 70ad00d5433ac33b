//! One root finder for film equations: Newton on logarithms, kept in a bracket.

use crate::error::{Code, Error, Result};

/// Bounds of the logarithm of any eccentricity measure: wider than any joint, and its fifth power still a number.
pub(super) const ANYWHERE: (f64, f64) = (-140.0, 140.0);

/// Logarithms of film equations are not known better than this; flat ones never get a smaller step.
const ROUNDING: f64 = 1e-14;

/// A step whose square is lost in rounding.
const NOTHING_LEFT: f64 = 3e-7;

/// Argument within `bounds` at which `f` (value and slope, rising) is zero, by Newton steps from `start` with bisection
/// as the guard.
///
/// On logarithmic axes film equations have slopes between 1 and 2, so Newton settles in about five rounds. Its error
/// after a step is below a tenth of the square of that step: a step below 3e-7 leaves nothing to gain.
pub(super) fn rising_root(
    what: &str,
    bounds: (f64, f64),
    start: f64,
    mut f: impl FnMut(f64) -> (f64, f64),
) -> Result<f64> {
    let (mut low, mut high) = bounds;
    let mut at = start.clamp(low, high);
    for _ in 0..200 {
        let (value, slope) = f(at);
        if value.abs() < ROUNDING {
            return Ok(at);
        }
        if value > 0.0 {
            high = at;
        } else {
            low = at;
        }
        let next = at - value / slope;
        if next >= low && next <= high {
            let step = next - at;
            at = next;
            if step.abs() < NOTHING_LEFT {
                return Ok(at);
            }
        } else {
            at = 0.5 * (low + high);
        }
    }
    Err(Error::new(
        Code::NotConverged,
        what,
        format!(
            "the {what} did not settle: load, speed or viscosity of the joint is beyond what film formulas can say"
        ),
    ))
}
