//! `pinfilm.wear`: Archard's law and the elongation that follows from worn pins and bushes.

use super::prelude::*;
use crate::chain::Chain;
use crate::wear;

formulas! { "wear"
    /// Volume worn off the softer side of a sliding pair.
    ///
    /// Parameters
    /// ----------
    /// coefficient : array_like
    ///     Wear coefficient K; 0 to 1. About 5e-4 dry, 5e-6 oiled in boundary lubrication.
    /// load_n : array_like
    ///     Load W; above 0 and at most 100000000 N.
    /// distance_m : array_like
    ///     Sliding distance s; 0 to 1000000000000 m.
    /// hardness_mpa : array_like
    ///     Hardness H of the softer side; above 0 and at most 1000000 MPa.
    ///
    /// Returns
    /// -------
    /// float or ndarray
    ///     Worn volume in mm³.
    ///
    /// Raises
    /// ------
    /// InputError
    ///     A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN.
    /// UnitError
    ///     A quantity of another dimension than the name says.
    ///
    /// Notes
    /// -----
    /// V = K W s/(3 H). The 3 belongs to the law as Archard wrote it: coefficients tabulated for V = K W s/H are three
    /// times too low here. Wear coefficients scatter by a factor of ten between like pairs.
    ///
    /// References
    /// ----------
    /// Archard 1953, J. Appl. Phys. 24, 981.
    ///
    /// Examples
    /// --------
    /// >>> from pinfilm import wear
    /// >>> round(wear.archard_volume_mm3(7e-3, 100, 1000, 1176), 3)
    /// 198.413
    fn archard_volume_mm3(coefficient: Own, load_n: Own, distance_m: Own, hardness_mpa: Own)
        -> Floats = wear::archard_volume;

    /// Elongation of a chain whose joints have worn.
    ///
    /// Parameters
    /// ----------
    /// pin_wear_um, bush_wear_um : array_like
    ///     Depth worn off pin and bush; 0 to 1000000 µm.
    /// pitch_mm : array_like
    ///     Pitch of the chain; 4 to 1000 mm.
    ///
    /// Returns
    /// -------
    /// float or ndarray
    ///     Elongation in percent.
    ///
    /// Raises
    /// ------
    /// InputError
    ///     A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN.
    /// UnitError
    ///     A quantity of another dimension than the name says.
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
    /// 2.992
    fn elongation_pct(pin_wear_um: Own, bush_wear_um: Own, pitch_mm: Chain) -> Floats = wear::elongation;
}

impl Choice for wear::DryPair {
    const WORDS: &'static [(&'static str, Self)] = &[
        ("mild_steel", wear::DryPair::MildSteel),
        ("brass", wear::DryPair::Brass),
        ("hard_tool_steel", wear::DryPair::HardToolSteel),
        ("ferritic_stainless", wear::DryPair::FerriticStainless),
        ("polythene", wear::DryPair::Polythene),
    ];
}

/// Measured wear coefficient of a dry pair of materials.
///
/// Parameters
/// ----------
/// pair : {'mild_steel', 'brass', 'hard_tool_steel', 'ferritic_stainless', 'polythene'}, optional
///     Mild steel on itself (as if not given), brass, hardened tool steel, ferritic stainless steel, polyethylene.
///
/// Returns
/// -------
/// float
///     Coefficient K of V = K W s/(3 H).
///
/// Raises
/// ------
/// InputError
///     A pair that was not measured.
///
/// Notes
/// -----
/// An order of magnitude. The dry joint of `evaluate` takes 5e-4, between hardened and mild steel, until one reading of
/// elongation says better.
///
/// References
/// ----------
/// Archard and Hirst 1956, as an encyclopaedia prints them.
///
/// Examples
/// --------
/// >>> from pinfilm import wear
/// >>> wear.unlubricated_coefficient("hard_tool_steel")
/// 0.00013
#[pyfunction]
#[pyo3(signature = (pair = None))]
pub fn unlubricated_coefficient(pair: Option<String>) -> PyResult<f64> {
    Ok(wear::unlubricated_coefficient(chosen(pair.as_deref(), row!(Own, pair))?))
}

by_hand! { "wear"
    unlubricated_coefficient(pair: Own) -> Floats;
}
