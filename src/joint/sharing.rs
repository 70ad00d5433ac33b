//! How film and asperities share the load of a rough contact.

use super::asperity::{
    AT_ZERO, CLOSED_GAP, DEEPEST, asperity_integral, height_of_log_integral, log_asperity_integral, mean_gap,
};
use crate::error::{Code, Error, Result};
use crate::numeric::root;
use crate::quantity::show::in_unit;
use crate::quantity::unit::MPA;

/// Who carries, and how far the surfaces stay apart.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Sharing {
    /// Share of the load on asperities, 0 to 1.
    pub asperity_share: f64,
    /// Mean gap in units of the combined roughness, at least 0.3989 (the valleys).
    pub mean_gap: f64,
}

/// Shares a contact pressure between asperities and film.
///
/// `lambda` is the film that smooth surfaces would have over the combined roughness, ≥ 0; `contact_pressure` Pa > 0 the
/// mean pressure of the strip; `asperity_stiffness` K Pa. The surfaces settle at the height H where
/// K F_5/2(H)/p + (λ/g(max(H, 0)))² = 1, g the mean gap: a thin film carries with the square of what it would fill.
/// Source: closure of our own in the spirit of Johnson, Greenwood and Poon (1972), with Greenwood and Tripp (1970).
pub fn share_load(lambda: f64, contact_pressure: f64, asperity_stiffness: f64) -> Result<Sharing> {
    Ok(share_load_near(lambda, contact_pressure, asperity_stiffness, None)?.0)
}

/// As [`share_load`], searched from the height of a contact much like this one where one is known; with the height, 0
/// where the mean planes touch.
pub(super) fn share_load_near(
    lambda: f64,
    contact_pressure: f64,
    asperity_stiffness: f64,
    near: Option<f64>,
) -> Result<(Sharing, f64)> {
    let pressure = contact_pressure / asperity_stiffness;
    let filled = (lambda / CLOSED_GAP) * (lambda / CLOSED_GAP);
    if DEEPEST < pressure * (1.0 - filled) {
        return Err(beyond_asperities(contact_pressure, asperity_stiffness));
    }
    if AT_ZERO <= pressure * (1.0 - filled) {
        // the mean planes touch: the gap is that of the valleys and H need not be known
        return Ok((Sharing { asperity_share: 1.0 - filled, mean_gap: CLOSED_GAP }, 0.0));
    }
    let (height, pressed) = height_apart(lambda, pressure, near);
    let (gap, _) = mean_gap(height);
    let film = (lambda / gap) * (lambda / gap);
    // either term gives the share; the smaller one has the digits
    let asperity_share = if film < 0.5 { 1.0 - film } else { pressed.min(1.0) };
    Ok((Sharing { asperity_share, mean_gap: gap }, height))
}

/// Height H of the mean planes over each other in roughnesses, negative where they overlap; as [`share_load`].
pub fn height_ratio(lambda: f64, contact_pressure: f64, asperity_stiffness: f64) -> Result<f64> {
    let pressure = contact_pressure / asperity_stiffness;
    let filled = (lambda / CLOSED_GAP) * (lambda / CLOSED_GAP);
    if DEEPEST < pressure * (1.0 - filled) {
        return Err(beyond_asperities(contact_pressure, asperity_stiffness));
    }
    let needed = pressure * (1.0 - filled);
    if AT_ZERO > needed {
        return Ok(height_apart(lambda, pressure, None).0);
    }
    root("height of the asperities", -6.001, 0.001, 1e-13, 1e-13, |h| asperity_integral(h, 2.5).ln() - needed.ln())
}

/// The height H > 0 of surfaces held apart and the asperity share there.
///
/// Newton on the logarithm of what both carry, which is nearly straight; each carrier alone gives a height that is too
/// low, and the higher of the two is already close; a known height `near` is closer still.
fn height_apart(lambda: f64, pressure: f64, near: Option<f64>) -> (f64, f64) {
    let (mut low, mut high) = (0.0, 2.0 * lambda + 40.0);
    let mut height = match near {
        Some(height) if height > low && height < high => height,
        _ => {
            let by_film = if lambda > CLOSED_GAP { lambda - CLOSED_GAP * CLOSED_GAP / lambda } else { 0.0 };
            by_film.max(height_of_log_integral(pressure.ln())).max(0.0)
        }
    };
    let mut pressed = 0.0;
    for _ in 0..100 {
        let (ln, ln_slope) = log_asperity_integral(height);
        let (gap, gap_slope) = mean_gap(height);
        pressed = ln.exp() / pressure;
        let film = (lambda / gap) * (lambda / gap);
        let carried = pressed + film;
        if carried > 1.0 {
            low = height;
        } else {
            high = height;
        }
        let slope = pressed * ln_slope - 2.0 * film * gap_slope / gap;
        let step = -carried.ln() * carried / slope;
        let next = height + step;
        if next >= low && next <= high {
            height = next;
            // the next step would be about the square of this one
            if step.abs() < 3e-6 {
                pressed *= (ln_slope * step).exp(); // along with the height
                break;
            }
        } else {
            height = 0.5 * (low + high);
        }
    }
    (height, pressed)
}

fn beyond_asperities(contact_pressure: f64, asperity_stiffness: f64) -> Error {
    Error::new(
        Code::BeyondModel,
        "contact pressure",
        format!(
            "a contact pressure of {} flattens asperities of {} stiffness beyond what rough contact can say: check the \
             load, or give stiffer asperities",
            in_unit(contact_pressure, &MPA),
            in_unit(asperity_stiffness, &MPA)
        ),
    )
    .number(contact_pressure)
    .unit("Pa")
    .limit(format!("at most {}", in_unit(DEEPEST * asperity_stiffness, &MPA)))
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    const K: f64 = 1.341_002_029_7e8;

    #[test]
    fn worked_shares() {
        for (lambda, pressure, height, share) in [
            (0.05, 100e6, -0.101_516_418_9, 0.984_292_036_7),
            (0.5, 30e6, 0.728_218_507_9, 0.665_406_890_2),
            (1.5, 100e6, 1.494_220_071, 0.031_140_213_4),
            (4.0, 20e6, 4.000_024_411, 1.577_762_747e-5),
            (0.0, 1000e6, -1.893_416_754, 1.0),
        ] {
            let ours = share_load(lambda, pressure, K).unwrap();
            assert!((ours.asperity_share - share).abs() < 1e-10, "{ours:?}");
            let ours = height_ratio(lambda, pressure, K).unwrap();
            assert!((ours - height).abs() < 6e-10, "{ours}");
        }
    }

    #[test]
    fn flattened_asperities_are_refused() {
        let error = share_load(0.0, 100.0 * K, K).unwrap_err();
        assert_eq!(error.code, Code::BeyondModel);
        assert!(height_ratio(0.0, 92.7 * K, K).is_ok());
    }

    proptest! {
        #[test]
        fn shares_solve_the_balance(
            log_lambda in -12.0..6.0_f64, log_pressure in -9.0..4.0_f64, near in -2.0..2.0_f64,
        ) {
            let (lambda, pressure) = (log_lambda.exp(), log_pressure.exp());
            let sharing = share_load(lambda, pressure, 1.0).unwrap();
            prop_assert!((0.0..=1.0).contains(&sharing.asperity_share));
            let height = height_ratio(lambda, pressure, 1.0).unwrap();
            let (gap, _) = mean_gap(height.max(0.0));
            prop_assert!((sharing.mean_gap / gap - 1.0).abs() < 1e-9);
            let pressed = asperity_integral(height, 2.5) / pressure;
            prop_assert!((pressed + (lambda / gap).powi(2) - 1.0).abs() < 1e-9);
            prop_assert!((pressed - sharing.asperity_share).abs() < 1e-9);
            let (again, _) = share_load_near(lambda, pressure, 1.0, Some(height + near)).unwrap();
            prop_assert!((again.asperity_share - sharing.asperity_share).abs() < 1e-11);
            prop_assert!((again.mean_gap / sharing.mean_gap - 1.0).abs() < 1e-11);
        }

        #[test]
        fn share_falls_without_a_jump_as_the_film_grows(log_lambda in -8.0..4.0_f64, log_pressure in -6.0..4.0_f64) {
            let share = |l: f64| share_load(l.exp(), log_pressure.exp(), 1.0).unwrap().asperity_share;
            let (thin, thick) = (share(log_lambda), share(log_lambda + 1e-6));
            prop_assert!(thick <= thin + 1e-12 && thin - thick < 1e-4);
        }
    }

    #[test]
    fn no_film_leaves_all_to_the_asperities() {
        for pressure in [1e-6, 0.1, 0.6, 1.0, 50.0] {
            assert_eq!(share_load(0.0, pressure, 1.0).unwrap().asperity_share, 1.0);
        }
    }
}
