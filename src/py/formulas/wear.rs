//! `pinfilm.wear`: Archard's law and the elongation that follows from worn pins and bushes.

use super::declare::{Floats, Formula, Outcome, Own, answered, formulas, own_row, results_of, row};
use super::given::{Argument, Given};
use super::spread::spread;
use crate::chain::Chain;
use crate::quantity::Noun;
use crate::wear;
use pyo3::prelude::*;

formulas! { "wear"
    /// Volume worn off the softer side of a sliding pair.
    ///
    /// Parameters
    /// ----------
    /// coefficient : array_like
    ///     Wear coefficient K; @R. About 5e-4 dry, 5e-6 oiled in boundary lubrication.
    /// load_n : array_like
    ///     Load W; @R.
    /// distance_m : array_like
    ///     Sliding distance s; @R.
    /// hardness_mpa : array_like
    ///     Hardness H of the softer side; @R.
    ///
    /// Returns
    /// -------
    /// float or ndarray
    ///     Worn volume in mm³.
    ///
    /// @E
    ///
    /// Notes
    /// -----
    /// V = K W s/(3 H). The 3 belongs to the law as Archard wrote it: coefficients tabulated for V = K W s/H are three times
    /// too low here. Wear coefficients scatter by a factor of ten between like pairs.
    ///
    /// References
    /// ----------
    /// Archard 1953, J. Appl. Phys. 24, 981.
    ///
    /// Examples
    /// --------
    /// >>> from pinfilm import wear
    /// >>> round(wear.archard_volume_mm3(7e-3, 100, 1000, 1176), 3)
    /// @O
    fn archard_volume_mm3(coefficient: Own, load_n: Own, distance_m: Own, hardness_mpa: Own) -> Floats = wear::archard_volume;

    /// Elongation of a chain whose joints have worn.
    ///
    /// Parameters
    /// ----------
    /// pin_wear_um, bush_wear_um : array_like
    ///     Depth worn off pin and bush; @R.
    /// pitch_mm : array_like
    ///     Pitch of the chain; @R.
    ///
    /// Returns
    /// -------
    /// float or ndarray
    ///     Elongation in percent.
    ///
    /// @E
    ///
    /// Notes
    /// -----
    /// e = (w_pin + w_bush)/p: one joint in each pitch. Exact where all joints wear alike.
    ///
    /// References
    /// ----------
    /// Definition.
    ///
    /// Examples
    /// --------
    /// >>> from pinfilm import wear
    /// >>> round(wear.elongation_pct(400, 360, 25.4), 3)
    /// @O
    fn elongation_pct(pin_wear_um: Own, bush_wear_um: Own, pitch_mm: Chain) -> Floats = wear::elongation;
}
