//! `pinfilm.film`: pressure and oil film between pin and bush, as textbooks have them and as a reference solution.

use super::outcomes::classes::ReynoldsBearing;
use super::prelude::*;
use crate::chain::Chain;
use crate::error::{Code, Error, Result};
use crate::joint::reynolds::{self, Cavitation};
use crate::joint::{self, Eccentricity, LineContactFormula, Pair, STEEL, SqueezeFilm};

impl Choice for SqueezeFilm {
    const WORDS: &'static [(&'static str, Self)] = &[("half", SqueezeFilm::Half), ("full", SqueezeFilm::Full)];
}

impl Choice for Cavitation {
    const WORDS: &'static [(&'static str, Self)] =
        &[("reynolds", Cavitation::Reynolds), ("half", Cavitation::Half), ("full", Cavitation::Full)];
}

impl Choice for LineContactFormula {
    const WORDS: &'static [(&'static str, Self)] = &[
        ("minimum", LineContactFormula::Smallest),
        ("central", LineContactFormula::Central),
        ("dowson_higginson", LineContactFormula::DowsonHigginson),
    ];
}

/// A squeezed film gets thinner: the end must not lie before the start.
fn thinning(e1: f64, e2: f64) -> Result<[Eccentricity; 2]> {
    if e2 >= e1 {
        return Ok([e1, e2].map(Eccentricity::from_ratio));
    }
    let message = format!("e2 = {e2} is below e1 = {e1}, but a load squeezes the pin towards the bush: exchange them");
    Err(Error::new(Code::Inconsistent, "e2", message).number(e2).limit(format!("at least {e1}")))
}

formulas! { "film"
    /// Nominal bearing pressure of a pin in its bush: load over projected area.
    ///
    /// Parameters
    /// ----------
    /// load_n : array_like
    ///     Load on the joint; above 0 and at most 100000000 N.
    /// pin_diameter_mm : array_like
    ///     Diameter of the pin; 0.5 to 200 mm.
    /// joint_length_mm : array_like
    ///     Length of the bush; 0.5 to 1000 mm.
    ///
    /// Returns
    /// -------
    /// float or ndarray
    ///     Pressure in MPa.
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
    /// p = F/(d L). Exact by definition; the true contact is narrower and its pressure higher.
    ///
    /// References
    /// ----------
    /// Projected-area convention of machine design; ISO 10823:2004.
    ///
    /// Examples
    /// --------
    /// >>> from pinfilm import film
    /// >>> round(film.pressure_mpa(25000, 15, 46), 3)
    /// 36.232
    fn pressure_mpa(load_n: Own, pin_diameter_mm: Chain, joint_length_mm: Chain) -> Floats = joint::bearing_pressure;

    /// Sommerfeld number of a short journal bearing at an eccentricity.
    ///
    /// Parameters
    /// ----------
    /// eccentricity_ratio : array_like
    ///     Offset of the pin over the radial clearance; 0.000000001 to 0.999999999.
    /// length_to_diameter : array_like
    ///     Length over diameter; 0.01 to 1000.
    ///
    /// Returns
    /// -------
    /// float or ndarray
    ///     S = (η N 2 R L/W) (R/c)² with N in revolutions per second.
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
    /// 1/S = π (L/D)² e/(1 − e²)² √(π²(1 − e²) + 16 e²). Half film, steady turning, rigid, isoviscous, bearing much
    /// shorter than wide: a chain joint is none of that, and the film found this way is many times too thick.
    ///
    /// References
    /// ----------
    /// DuBois and Ocvirk 1953, NACA Report 1157.
    ///
    /// Examples
    /// --------
    /// >>> from pinfilm import film
    /// >>> round(film.sommerfeld_short(0.6, 0.5), 6)
    /// 0.250119
    fn sommerfeld_short(eccentricity_ratio: Own, length_to_diameter: Own) -> Floats =
        |e, slenderness| joint::sommerfeld_short(Eccentricity::from_ratio(e), slenderness);

    /// Eccentricity of a short journal bearing from its Sommerfeld number; the inverse of `sommerfeld_short`.
    ///
    /// Parameters
    /// ----------
    /// sommerfeld : array_like
    ///     Sommerfeld number; above 0 and at most 1000000000000.
    /// length_to_diameter : array_like
    ///     Length over diameter; 0.01 to 1000.
    ///
    /// Returns
    /// -------
    /// float or ndarray
    ///     Offset of the pin over the radial clearance, 0 to 1.
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
    /// By Newton's method in logarithms. Assumptions as in `sommerfeld_short`.
    ///
    /// References
    /// ----------
    /// DuBois and Ocvirk 1953, NACA Report 1157.
    ///
    /// Examples
    /// --------
    /// >>> from pinfilm import film
    /// >>> round(film.eccentricity_short(50, 0.5), 9)
    /// 0.008104465
    fn eccentricity_short(sommerfeld: Own, length_to_diameter: Own) -> Floats =
        |sommerfeld, slenderness| joint::eccentricity_short(sommerfeld, slenderness).map(Eccentricity::ratio);

    /// Time in which a load squeezes the film of a short joint from one eccentricity to a greater one.
    ///
    /// Parameters
    /// ----------
    /// viscosity_mpa_s : array_like
    ///     Dynamic viscosity; 0.01 to 1000000000 mPa s.
    /// radius_mm : array_like
    ///     Radius of the pin; above 0 and at most 10000000 mm.
    /// length_mm : array_like
    ///     Length of the bush; above 0 and at most 100000 mm.
    /// load_n : array_like
    ///     Load; above 0 and at most 100000000 N.
    /// clearance_um : array_like
    ///     Radial clearance; above 0 and at most 100000 µm.
    /// e1, e2 : array_like
    ///     Offset over clearance at start and end; 0 to 0.999999999.
    /// film : {'half', 'full'}, optional
    ///     Which part of the film carries: the closing half (as if not given) or, flooded under pressure, all of it.
    ///
    /// Returns
    /// -------
    /// float or ndarray
    ///     Time in s.
    ///
    /// Raises
    /// ------
    /// InputError
    ///     A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN. An
    ///     end before the start is an error.
    /// UnitError
    ///     A quantity of another dimension than the name says.
    ///
    /// Notes
    /// -----
    /// t = η R L³/(W c²) [J(e₂) − J(e₁)] with J = e arccos(−e)/(1 − e²)^1.5 + 1/(1 − e²) for the half film and
    /// π e/(1 − e²)^1.5 for the full one. Constant load, no turning, smooth and rigid: contact is never reached.
    ///
    /// References
    /// ----------
    /// Pinkus and Sternlicht 1961, Theory of Hydrodynamic Lubrication.
    ///
    /// Examples
    /// --------
    /// >>> from pinfilm import film
    /// >>> round(film.squeeze_time_short_s(200, 7.5, 30, 5000, 50, 0.1, 0.999), 4)
    /// 113.7708
    fn squeeze_time_short_s(
        viscosity_mpa_s: Own, radius_mm: Own, length_mm: Own, load_n: Own, clearance_um: Own, e1: Own, e2: Own
        | film: SqueezeFilm
    ) -> Floats = |viscosity, radius, length, load, clearance, e1, e2, film| {
        let [from, to] = thinning(e1, e2)?;
        // the film is that of the pair as made, and rigid
        let pair = Pair { radius, radial_clearance: clearance, length, conformity: 1.0, elasticity: STEEL };
        Ok(joint::squeeze_time_short(&pair, viscosity, load, from, to, film))
    };

    /// A steady journal bearing of finite length: two-dimensional solution of the Reynolds equation.
    ///
    /// Parameters
    /// ----------
    /// eccentricity_ratio : array_like
    ///     Offset of the pin over the radial clearance; 0.000000001 to 0.999999999, and at most 0.999.
    /// length_to_diameter : array_like
    ///     Length over diameter; 0.01 to 1000.
    /// cavitation : {'reynolds', 'half', 'full'}, optional
    ///     What happens below ambient pressure: the film ruptures (as if not given), negative pressures are left out,
    ///     or they count.
    ///
    /// Returns
    /// -------
    /// ReynoldsBearing
    ///     Sommerfeld number, attitude angle, friction, flow, side flow and pressure ratio, each a float or an array.
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
    /// Finite volumes on 240 × 24 cells; load within 0.1 to 0.3 % of the limit of fine grids, about a millisecond each.
    /// Full (360°) bearing, isoviscous, rigid, oil at ambient pressure at the widest gap and at both ends.
    ///
    /// References
    /// ----------
    /// Reynolds 1886; Raimondi and Boyd 1958 for the outputs; rupture of Swift 1932 and Stieber 1933.
    ///
    /// Examples
    /// --------
    /// >>> from pinfilm import film
    /// >>> bearing = film.reynolds_bearing(0.8, 1.0)
    /// >>> round(bearing.sommerfeld, 3), round(bearing.attitude_deg, 1)
    /// (0.045, 36.2)
    fn reynolds_bearing(eccentricity_ratio: Own, length_to_diameter: Own | cavitation: Cavitation) -> ReynoldsBearing =
        |e, slenderness, cavitation| {
            reynolds::reynolds_bearing(e, slenderness, cavitation).map(|bearing| [
                bearing.sommerfeld,
                bearing.attitude,
                bearing.friction,
                bearing.friction_striated,
                bearing.flow,
                bearing.side_flow_share,
                bearing.pressure_ratio,
            ])
        };

    /// Film thickness of an elastohydrodynamic line contact.
    ///
    /// Parameters
    /// ----------
    /// viscosity_mpa_s : array_like
    ///     Dynamic viscosity at ambient pressure; 0.01 to 1000000000 mPa s.
    /// speed_m_per_s : array_like
    ///     Entraining speed, the mean of both surfaces; 0 to 1000 m/s.
    /// load_n_per_mm : array_like
    ///     Load over length; above 0 and at most 1000000 N/mm.
    /// radius_mm : array_like
    ///     Reduced radius; for a pin of radius R in a bush with clearance c it is R (R + c)/c; above 0 and at most
    ///     10000000 mm.
    /// pressure_viscosity_per_gpa : array_like
    ///     Pressure-viscosity coefficient; 0 to 200 1/GPa.
    /// modulus_gpa : array_like, optional
    ///     Elastic modulus E′ of the pair; 0.001 to 2000 GPa; that of steel on steel, 226.374 GPa, if not given.
    /// formula : {'minimum', 'central', 'dowson_higginson'}, optional
    ///     Smallest film (as if not given), film in the middle, or the older formula for the smallest film.
    ///
    /// Returns
    /// -------
    /// float or ndarray
    ///     Film thickness in µm.
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
    /// With U = η u/(E′ R), W = w/(E′ R), G = α E′: smallest film over R is the larger of 3.10 U^0.6 W^−0.2 and
    /// 1.714 U^0.694 G^0.568 W^−0.128; central 2.922 U^0.692 G^0.470 W^−0.166; older 2.65 U^0.7 G^0.54 W^−0.13. Smooth,
    /// fully supplied with oil, isothermal. Taking the larger of soft and hard film is a closure of our own.
    ///
    /// References
    /// ----------
    /// Hamrock 1994, Fundamentals of Fluid Film Lubrication; Pan and Hamrock 1989; Dowson and Higginson 1968.
    ///
    /// Examples
    /// --------
    /// >>> from pinfilm import film
    /// >>> round(film.line_contact_film_um(100, 0.5, 100, 10, 20), 4)
    /// 0.297
    fn line_contact_film_um(
        viscosity_mpa_s: Own, speed_m_per_s: Own, load_n_per_mm: Own, radius_mm: Own, pressure_viscosity_per_gpa: Own;
        modulus_gpa: Own | formula: LineContactFormula
    ) -> Floats = joint::line_contact_film;

    /// Integral of Greenwood and Tripp over the asperities that reach the other surface.
    ///
    /// Parameters
    /// ----------
    /// height_ratio : array_like
    ///     Distance of the mean planes over the combined roughness; -40 to 35.
    /// order : array_like
    ///     Order n of the integral; 0 to 10. 5/2 for the load, 2 for the contact area.
    ///
    /// Returns
    /// -------
    /// float or ndarray
    ///     F_n(H).
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
    /// F_n(H) = (1/√(2π)) ∫_H^∞ (s − H)^n exp(−s²/2) ds, to about 12 digits. Heights are taken as normally distributed.
    ///
    /// References
    /// ----------
    /// Greenwood and Tripp 1970, Proc. Inst. Mech. Eng. 185, 625.
    ///
    /// Examples
    /// --------
    /// >>> from pinfilm import film
    /// >>> round(film.asperity_integral(0.0, 2.5), 6)
    /// 0.616634
    fn asperity_integral(height_ratio: Own, order: Own) -> Floats = joint::asperity_integral;
}
