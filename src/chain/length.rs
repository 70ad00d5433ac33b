//! Length of a chain round two sprockets, and the centre distance that a length allows.

use super::pitch_circle::pitch_diameter;
use crate::error::{Code, Error, Result};
use std::f64::consts::{PI, TAU};

/// Length of chain (pitches) round two sprockets by the standard formula.
///
/// `2 C/p + (z1 + z2)/2 + ((z2 - z1)/2pi)² p/C`; `centre` (C) and `pitch` (p) m. Within 0.007 pitch of
/// [`loop_length`] for C of 30 pitches and more, up to 60 teeth and a difference of at most 43; within 0.02 to 60 : 5.
/// Source: ISO 10823; Shigley, Mechanical Engineering Design, eq. 17-34.
///
/// ```
/// let length = pinfilm::chain::chain_length(0.762, 0.01905, 17.0, 34.0);
/// assert!((length - 105.683011).abs() < 1e-6);
/// ```
pub fn chain_length(centre: f64, pitch: f64, teeth_1: f64, teeth_2: f64) -> f64 {
    let x = centre / pitch;
    2.0 * x + (teeth_1 + teeth_2) / 2.0 + difference_term(teeth_1, teeth_2) / x
}

/// Centre distance (m) that a chain of `length` pitches allows: the exact inverse of [`chain_length`].
///
/// `pitch` m. Source: ISO 10823; Shigley, Mechanical Engineering Design, eq. 17-35.
/// Fails if the chain is too short to reach round both sprockets.
///
/// ```
/// let centre = pinfilm::chain::centre_distance(106.0, 0.01905, 17.0, 34.0)?;
/// assert!((centre * 0.998 - 0.76349616).abs() < 1e-8); // 0.2 % for sag
/// # Ok::<(), pinfilm::Error>(())
/// ```
pub fn centre_distance(length: f64, pitch: f64, teeth_1: f64, teeth_2: f64) -> Result<f64> {
    let free = length - (teeth_1 + teeth_2) / 2.0; // what is left for the two spans
    let root = free * free - 8.0 * difference_term(teeth_1, teeth_2);
    if free > 0.0 && root >= 0.0 {
        return Ok((free + root.sqrt()) / 4.0 * pitch);
    }
    let least = (teeth_1 + teeth_2) / 2.0 + (teeth_2 - teeth_1).abs() / PI * 2.0_f64.sqrt();
    Err(Error::new(
        Code::Inconsistent,
        "length of a chain",
        format!(
            "a chain of {length} pitches is too short for sprockets of {teeth_1} and {teeth_2} teeth: it needs more than \
             {least:.1} pitches"
        ),
    )
    .number(length)
    .unit("pitches")
    .limit(format!("more than {least:.1} pitches")))
}

/// Exact length of chain (pitches) of an open loop of two sprockets: tangents between pitch circles, polygon on them.
///
/// `centre` and `pitch` m. Exact geometry (the spans are straight).
/// Fails if one pitch circle lies inside the other.
pub fn loop_length(centre: f64, pitch: f64, teeth_1: f64, teeth_2: f64) -> Result<f64> {
    let rise = (pitch_diameter(pitch, teeth_2) - pitch_diameter(pitch, teeth_1)) / 2.0;
    let slope = rise / centre;
    if slope.abs() < 1.0 && centre > 0.0 {
        let gamma = slope.asin();
        let spans = 2.0 * centre * gamma.cos() / pitch;
        return Ok(spans + (teeth_1 * (PI - 2.0 * gamma) + teeth_2 * (PI + 2.0 * gamma)) / TAU);
    }
    Err(Error::new(
        Code::OutOfRange,
        "centre",
        format!(
            "with a centre distance of {centre} m one sprocket of {teeth_1} and {teeth_2} teeth lies inside the other: \
             move them apart"
        ),
    )
    .number(centre)
    .unit("m")
    .limit(format!("more than {} m", rise.abs())))
}

fn difference_term(teeth_1: f64, teeth_2: f64) -> f64 {
    ((teeth_2 - teeth_1) / TAU).powi(2)
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn length_and_centre_distance_undo_each_other(
            x in 20.0..200.0_f64, z1 in 5..60_u32, z2 in 5..60_u32,
        ) {
            let (z1, z2) = (f64::from(z1), f64::from(z2));
            let length = chain_length(x * 0.05, 0.05, z1, z2);
            let back = centre_distance(length, 0.05, z1, z2).unwrap();
            prop_assert!((back / (x * 0.05) - 1.0).abs() < 1e-12);
            prop_assert!((chain_length(x * 0.05, 0.05, z2, z1) - length).abs() < 1e-10);
        }

        #[test]
        fn standard_formula_stays_near_the_exact_loop(x in 30.0..200.0_f64, z1 in 9..60_u32, more in 0..43_u32) {
            let (z1, z2) = (f64::from(z1), f64::from((z1 + more).min(60)));
            let exact = loop_length(x, 1.0, z1, z2).unwrap();
            prop_assert!((chain_length(x, 1.0, z1, z2) - exact).abs() < 0.0075, "{x} {z1} {z2}");
            prop_assert!((loop_length(x, 1.0, z2, z1).unwrap() - exact).abs() < 1e-10);
        }
    }

    #[test]
    fn equal_sprockets_need_no_approximation() {
        assert!((loop_length(2.0, 0.1, 12.0, 12.0).unwrap() - 52.0).abs() < 1e-12);
        assert_eq!(chain_length(2.0, 0.1, 12.0, 12.0), 52.0);
        // an independent implementation: pitch 19.05 mm, centres 762 mm, 17 : 34
        assert!((loop_length(0.762, 0.01905, 17.0, 34.0).unwrap() - 105.68307975485385).abs() < 1e-10);
    }

    #[test]
    fn what_does_not_fit_is_refused() {
        assert_eq!(centre_distance(20.0, 0.1, 17.0, 34.0).unwrap_err().code, Code::Inconsistent);
        assert_eq!(centre_distance(27.0, 0.1, 17.0, 34.0).unwrap_err().code, Code::Inconsistent);
        assert_eq!(loop_length(0.1, 0.1, 9.0, 60.0).unwrap_err().code, Code::OutOfRange);
    }
}
