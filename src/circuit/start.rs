//! Starting after a stop, and what the heaviest strand must bear.

use super::{Coefficients, Finding, Layout, march};
use crate::error::{Code, Error, Result};

/// Safety factor against tensile strength below which a caution is due (common practice, no source).
pub(super) const SAFETY: f64 = 7.0;

/// What starting takes.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Breakaway {
    /// Pull of the drive while it accelerates, N.
    pub pull: f64,
    /// Part of it that accelerates the moved mass, N.
    pub inertia: f64,
    /// Greatest tension of the heaviest strand, N; the whole inertia counted, so an upper bound.
    pub strand_tension: f64,
}

/// Pull at breakaway: the march with every coefficient times `factor`, plus the moved mass brought to speed.
///
/// `factor` >= 1, `start_time` s > 0. Rolling arm, track factor and centrifugal tension stay as running. Against it
/// stands the locked-rotor torque of the motor. Source: closure of our own.
pub fn breakaway(layout: &Layout, coefficients: &Coefficients, factor: f64, start_time: f64) -> Result<Breakaway> {
    let stuck = march(layout, &coefficients.scaled(factor))?;
    let inertia = layout.moved_mass * layout.speed / start_time;
    Ok(Breakaway {
        pull: stuck.pull + inertia,
        inertia,
        strand_tension: (stuck.greatest + inertia) * layout.strand_share,
    })
}

/// Judges `strand_tension` (N, heaviest strand, breakaway included) against the tensile strength, where it is known.
///
/// Caution beyond a seventh of it (common practice, no source; local rules, and people under the load, ask for more).
/// Errors: beyond the tensile strength (`strength`).
pub fn strength(layout: &Layout, strand_tension: f64) -> Result<Option<Finding>> {
    let Some(tensile_strength) = layout.tensile_strength else { return Ok(None) };
    if strand_tension > tensile_strength {
        return Err(Error::new(
            Code::Strength,
            "tensile_strength",
            format!(
                "the heaviest strand is pulled with {strand_tension:.0} N, more than the tensile strength of \
                 {tensile_strength:.0} N: choose a stronger chain or lower load and friction"
            ),
        )
        .number(tensile_strength)
        .unit("N")
        .limit(format!("above {strand_tension:.0} N")));
    }
    let safety = tensile_strength / strand_tension;
    Ok((strand_tension > 0.0 && safety < SAFETY).then_some(Finding::Strength {
        strand_tension,
        tensile_strength,
        safety,
    }))
}

#[cfg(test)]
mod tests {
    use super::super::testing::*;
    use super::*;

    #[test]
    fn a_start_without_end_is_running() {
        let (layout, coefficients) = laid_out(&simple_loop());
        let running = march(&layout, &coefficients).unwrap();
        let start = breakaway(&layout, &coefficients, 1.0, f64::INFINITY).unwrap();
        assert_eq!(start.pull, running.pull);
        assert_eq!(start.strand_tension, running.greatest * layout.strand_share);
    }

    #[test]
    fn strength_is_judged_in_three_steps() {
        let (layout, _) = laid_out(&simple_loop());
        assert_eq!(strength(&layout, 100e3 / 7.1).unwrap(), None);
        assert!(matches!(strength(&layout, 100e3 / 6.9).unwrap(), Some(Finding::Strength { .. })));
        assert_eq!(strength(&layout, 100.1e3).unwrap_err().code, Code::Strength);
        let unknown = Layout { tensile_strength: None, ..layout };
        assert_eq!(strength(&unknown, 1e9).unwrap(), None);
    }
}
