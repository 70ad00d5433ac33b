//! `pinfilm.kinematics`: sprockets, chain length and chain speed.

use super::prelude::*;
use crate::chain::{self, Chain};
use crate::circuit::Turn;

formulas! { "kinematics"
    /// Diameter of the circle through the joints of a chain on a sprocket.
    ///
    /// Parameters
    /// ----------
    /// pitch_mm : array_like
    ///     Pitch of the chain, joint to joint; 4 to 1000 mm.
    /// teeth : array_like
    ///     Teeth of the sprocket; 3 to 200.
    ///
    /// Returns
    /// -------
    /// float or ndarray
    ///     Pitch diameter in mm.
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
    /// d = p / sin(π/z): the joints are the corners of a regular polygon with sides of one pitch. Exact.
    ///
    /// References
    /// ----------
    /// ISO 606, pitch diameter of sprockets.
    ///
    /// Examples
    /// --------
    /// >>> from pinfilm import kinematics
    /// >>> round(kinematics.pitch_diameter_mm(25.4, 17), 3)
    /// 138.232
    fn pitch_diameter_mm(pitch_mm: Chain, teeth: Turn) -> Floats = chain::pitch_diameter;

    /// Angle by which one joint bends when it enters a sprocket.
    ///
    /// Parameters
    /// ----------
    /// teeth : array_like
    ///     Teeth of the sprocket; 3 to 200.
    ///
    /// Returns
    /// -------
    /// float or ndarray
    ///     Angle in degrees; the joint straightens by the same angle when it leaves.
    ///
    /// Raises
    /// ------
    /// InputError
    ///     A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN.
    /// UnitError
    ///     A quantity with a unit.
    ///
    /// Notes
    /// -----
    /// α = 360°/z. Exact.
    ///
    /// References
    /// ----------
    /// Geometry of the regular polygon.
    ///
    /// Examples
    /// --------
    /// >>> from pinfilm import kinematics
    /// >>> kinematics.articulation_angle_deg(10)
    /// 36.0
    fn articulation_angle_deg(teeth: Turn) -> Floats = chain::articulation_angle;

    /// Ripple of the chain speed at constant speed of the shaft: greatest less least, over the mean.
    ///
    /// Parameters
    /// ----------
    /// teeth : array_like
    ///     Teeth of the sprocket; 3 to 200.
    ///
    /// Returns
    /// -------
    /// float or ndarray
    ///     Ripple as a share of the mean speed.
    ///
    /// Raises
    /// ------
    /// InputError
    ///     A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN.
    /// UnitError
    ///     A quantity with a unit.
    ///
    /// Notes
    /// -----
    /// (v_max − v_min)/v_mean = (π/z) tan(π/(2z)), from v_max = π d n and v_min = v_max cos(π/z). Kinematics alone: an
    /// elastic chain smooths it.
    ///
    /// References
    /// ----------
    /// Polygon action of chain drives; derived from the pitch polygon.
    ///
    /// Examples
    /// --------
    /// >>> from pinfilm import kinematics
    /// >>> round(kinematics.speed_ripple(8), 4)
    /// 0.0781
    fn speed_ripple(teeth: Turn) -> Floats = chain::speed_ripple;

    /// Mean speed of a chain that a turning sprocket drives.
    ///
    /// Parameters
    /// ----------
    /// pitch_mm : array_like
    ///     Pitch of the chain; 4 to 1000 mm.
    /// teeth : array_like
    ///     Teeth of the sprocket; 3 to 200.
    /// speed_rpm : array_like
    ///     Speed of the shaft; 0 to 100000 1/min.
    ///
    /// Returns
    /// -------
    /// float or ndarray
    ///     Chain speed in m/s.
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
    /// v = z p n: each turn passes as many pitches as there are teeth. Exact as a mean.
    ///
    /// References
    /// ----------
    /// Definition.
    ///
    /// Examples
    /// --------
    /// >>> from pinfilm import kinematics
    /// >>> round(kinematics.chain_speed_m_per_s(160, 8, 9.375), 6)
    /// 0.2
    fn chain_speed_m_per_s(pitch_mm: Chain, teeth: Turn, speed_rpm: Own) -> Floats = chain::chain_speed;

    /// Length of a chain over two sprockets, in pitches.
    ///
    /// Parameters
    /// ----------
    /// centre_mm : array_like
    ///     Distance of the shafts; above 0 and at most 10000000 mm.
    /// pitch_mm : array_like
    ///     Pitch of the chain; 4 to 1000 mm.
    /// teeth_1, teeth_2 : array_like
    ///     Teeth of the two sprockets; 3 to 200.
    ///
    /// Returns
    /// -------
    /// float or ndarray
    ///     Length in pitches, not yet rounded to a whole (better even) number.
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
    /// X = 2 C/p + (z₁ + z₂)/2 + ((z₂ − z₁)/(2π))² p/C, the usual approximation for an open loop without sag.
    ///
    /// References
    /// ----------
    /// ISO 10823:2004, chain length.
    ///
    /// Examples
    /// --------
    /// >>> from pinfilm import kinematics
    /// >>> round(kinematics.chain_length_pitches(762.0, 19.05, 17, 34), 4)
    /// 105.683
    fn chain_length_pitches(centre_mm: Own, pitch_mm: Chain, teeth_1: Own, teeth_2: Own)
        -> Floats = chain::chain_length;

    /// Distance of the shafts for a chain of so many pitches; the inverse of `chain_length_pitches`.
    ///
    /// Parameters
    /// ----------
    /// length_pitches : array_like
    ///     Length of the closed chain; above 0 and at most 1000000 pitches.
    /// pitch_mm : array_like
    ///     Pitch of the chain; 4 to 1000 mm.
    /// teeth_1, teeth_2 : array_like
    ///     Teeth of the two sprockets; 3 to 200.
    ///
    /// Returns
    /// -------
    /// float or ndarray
    ///     Centre distance in mm.
    ///
    /// Raises
    /// ------
    /// InputError
    ///     A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN. A
    ///     chain too short to reach round both sprockets is an error too.
    /// UnitError
    ///     A quantity of another dimension than the name says.
    ///
    /// Notes
    /// -----
    /// The exact root of the formula of `chain_length_pitches`.
    ///
    /// References
    /// ----------
    /// ISO 10823:2004, centre distance.
    ///
    /// Examples
    /// --------
    /// >>> from pinfilm import kinematics
    /// >>> round(kinematics.centre_distance_mm(106, 19.05, 17, 34), 3)
    /// 765.026
    fn centre_distance_mm(length_pitches: Own, pitch_mm: Chain, teeth_1: Own, teeth_2: Own)
        -> Floats = chain::centre_distance;

    /// Power for which the standard rates a roller chain drive of one strand.
    ///
    /// Parameters
    /// ----------
    /// pitch_mm : array_like
    ///     Pitch of the chain; 4 to 1000 mm; the rating covers 6.35 to 76.2 mm.
    /// teeth : array_like
    ///     Teeth of the small sprocket; 3 to 200.
    /// speed_rpm : array_like
    ///     Speed of its shaft; 0 to 100000 1/min.
    ///
    /// Returns
    /// -------
    /// float or ndarray
    ///     Rated power in kW, before any service factor.
    ///
    /// Raises
    /// ------
    /// InputError
    ///     A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN. A
    ///     pitch that the rating does not cover is an error.
    /// UnitError
    ///     A quantity of another dimension than the name says.
    ///
    /// Notes
    /// -----
    /// The lesser of H₁ = 0.004 N^1.08 n^0.9 p^(3 − 0.07 p), fatigue of the side plates, and H₂ = 1000 K N^1.5 p^0.8/n^1.5,
    /// impact of rollers, in horsepower, inches and 1/min; K = 17, or 29 below half an inch. For transmission drives with
    /// plenty of oil, as an orientation: conveyors are limited by pull, joint pressure and wear, and `evaluate` does not
    /// use it. The light chain 41 is not covered.
    ///
    /// References
    /// ----------
    /// ASME B29.1; Shigley, Mechanical Engineering Design.
    ///
    /// Examples
    /// --------
    /// >>> from pinfilm import kinematics
    /// >>> round(kinematics.roller_chain_power_kw(12.7, 17, 1000), 2)
    /// 4.08
    fn roller_chain_power_kw(pitch_mm: Chain, teeth: Turn, speed_rpm: Own) -> Floats = chain::roller_chain_power;
}
