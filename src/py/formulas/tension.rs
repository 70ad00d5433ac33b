//! `pinfilm.tension`: what wheels, turns and slack strands do to the pull.

use super::prelude::*;
use crate::chain::Chain;
use crate::circuit::{self, Friction};

formulas! { "tension"
    /// Resistance of a loaded wheel or chain roller, over its load.
    ///
    /// Parameters
    /// ----------
    /// friction : array_like
    ///     Friction coefficient between axle (the bush) and wheel (the roller); 0 to 5.
    /// axle_diameter_mm : array_like
    ///     Diameter of the axle, on which the wheel slides; 0 to 10000 mm.
    /// wheel_diameter_mm : array_like
    ///     Diameter of the wheel; above 0 and at most 10000 mm.
    /// rolling_arm_mm : array_like
    ///     Lever arm of rolling friction on the track; 0 to 10 mm.
    ///
    /// Returns
    /// -------
    /// float or ndarray
    ///     Resistance over load.
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
    /// c = (μ d + 2 f)/D: moments about the point of contact. Only the first part is oil's business.
    ///
    /// References
    /// ----------
    /// Statics of the wheel; lever arms of rolling friction as in DIN 22101 and mechanics textbooks.
    ///
    /// Examples
    /// --------
    /// >>> from pinfilm import tension
    /// >>> round(tension.rolling_resistance(0.2, 21, 60, 0.5), 5)
    /// 0.08667
    fn rolling_resistance(friction: Own, axle_diameter_mm: Own, wheel_diameter_mm: Own, rolling_arm_mm: Friction)
        -> Floats = circuit::rolling_resistance;

    /// Tension after a sliding turn over the tension before it.
    ///
    /// Parameters
    /// ----------
    /// friction : array_like
    ///     Friction coefficient of chain on wall; 0 to 5.
    /// wrap_deg : array_like
    ///     Angle of wrap; 0 to 7200 °.
    ///
    /// Returns
    /// -------
    /// float or ndarray
    ///     Ratio of tensions, at least 1.
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
    /// S₂/S₁ = exp(μ θ). A belt without weight or centrifugal force; a chain's links make no difference here.
    ///
    /// References
    /// ----------
    /// Euler 1769; Eytelwein 1808.
    ///
    /// Examples
    /// --------
    /// >>> from pinfilm import tension
    /// >>> round(tension.capstan_ratio(0.25, 180), 4)
    /// 2.1933
    fn capstan_ratio(friction: Own, wrap_deg: Own) -> Floats = circuit::capstan_ratio;

    /// Tension of a strand that sags between two supports at one height.
    ///
    /// Parameters
    /// ----------
    /// mass_kg_per_m : array_like
    ///     Mass of the strand with its attachments; above 0 and at most 500 kg/m.
    /// span_m : array_like
    ///     Distance of the supports; above 0 and at most 5000 m.
    /// sag_m : array_like
    ///     Sag in the middle; above 0 and at most 500 m.
    ///
    /// Returns
    /// -------
    /// float or ndarray
    ///     Horizontal tension in N.
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
    /// T = m g L²/(8 s): the parabola that stands for the catenary. Good to 1 % up to a sag of a tenth of the span.
    ///
    /// References
    /// ----------
    /// Parabolic approximation of the catenary.
    ///
    /// Examples
    /// --------
    /// >>> from pinfilm import tension
    /// >>> round(tension.sag_tension_n(5.0, 2.0, 0.04), 2)
    /// 612.92
    fn sag_tension_n(mass_kg_per_m: Chain, span_m: Own, sag_m: Own) -> Floats = circuit::sag_tension;
}
