//! `pinfilm.oil`: viscosity against temperature, viscosity index, blends, grades.

use super::prelude::*;
use crate::line::Duty;
use crate::oil::{self, Oil, ViscosityLine};
use crate::py::nouns::classes;

formulas! { "oil"
    /// Viscosity index from the kinematic viscosities at 40 and 100 °C.
    ///
    /// Parameters
    /// ----------
    /// v40_mm2_s, v100_mm2_s : array_like
    ///     Kinematic viscosity at 40 °C and at 100 °C; 0.21 to 20000000 mm²/s.
    ///
    /// Returns
    /// -------
    /// float or ndarray
    ///     Viscosity index, not rounded.
    ///
    /// Raises
    /// ------
    /// InputError
    ///     A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN. A
    ///     viscosity at 100 °C outside what the standard covers, or not below that at 40 °C, is an error.
    /// UnitError
    ///     A quantity of another dimension than the name says.
    ///
    /// Notes
    /// -----
    /// Procedure A up to 100, procedure B above, with the table of the standard interpolated as it says.
    ///
    /// References
    /// ----------
    /// ASTM D2270; ISO 2909.
    ///
    /// Examples
    /// --------
    /// >>> from pinfilm import oil
    /// >>> round(oil.viscosity_index(73.30, 8.86), 1)
    /// 92.4
    fn viscosity_index(v40_mm2_s: Own, v100_mm2_s: Own) -> Floats = oil::viscosity_index;

    /// Kinematic viscosity at 100 °C from that at 40 °C and the viscosity index.
    ///
    /// Parameters
    /// ----------
    /// v40_mm2_s : array_like
    ///     Kinematic viscosity at 40 °C; 0.21 to 20000000 mm²/s.
    /// viscosity_index : array_like
    ///     Viscosity index; -50 to 400.
    ///
    /// Returns
    /// -------
    /// float or ndarray
    ///     Kinematic viscosity at 100 °C in mm²/s.
    ///
    /// Raises
    /// ------
    /// InputError
    ///     A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN. A
    ///     result outside what the standard covers is an error.
    /// UnitError
    ///     A quantity of another dimension than the name says.
    ///
    /// Notes
    /// -----
    /// The inverse of `viscosity_index`, by root finding on the standard's own procedures.
    ///
    /// References
    /// ----------
    /// ASTM D2270; ISO 2909.
    ///
    /// Examples
    /// --------
    /// >>> from pinfilm import oil
    /// >>> round(oil.v100_mm2_s(220, 95), 3)
    /// 18.75
    fn v100_mm2_s(v40_mm2_s: Own, viscosity_index: Oil) -> Floats = oil::viscosity_at_100;

    /// Kinematic viscosity at any temperature, from two measured ones.
    ///
    /// Parameters
    /// ----------
    /// temperature_c : array_like
    ///     Temperature asked for; -100 to 400 °C.
    /// t1_c : array_like
    ///     Temperature of the first viscosity; -60 to 350 °C.
    /// v1_mm2_s : array_like
    ///     First viscosity; 0.21 to 20000000 mm²/s.
    /// t2_c : array_like
    ///     Temperature of the second viscosity; -60 to 350 °C.
    /// v2_mm2_s : array_like
    ///     Second viscosity; 0.21 to 20000000 mm²/s.
    ///
    /// Returns
    /// -------
    /// float or ndarray
    ///     Kinematic viscosity in mm²/s.
    ///
    /// Raises
    /// ------
    /// InputError
    ///     A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN.
    ///     Equal temperatures, a viscosity that rises with temperature and a result outside 0.21 to 2e7 mm²/s are
    ///     errors.
    /// UnitError
    ///     A quantity of another dimension than the name says.
    ///
    /// Notes
    /// -----
    /// log log Z = A − B log T with Z = ν + 0.7 + corrections below 2 mm²/s. A straight line between and moderately
    /// beyond the two points; below the cloud point or far above the second temperature an oil may leave it.
    ///
    /// References
    /// ----------
    /// ASTM D341.
    ///
    /// Examples
    /// --------
    /// >>> from pinfilm import oil
    /// >>> round(oil.kinematic_viscosity_mm2_s(150, 40, 220, 100, 18.9), 3)
    /// 6.268
    fn kinematic_viscosity_mm2_s(temperature_c: Own, t1_c: Own, v1_mm2_s: Own, t2_c: Own, v2_mm2_s: Own) -> Floats =
        |temperature, t1, v1, t2, v2| ViscosityLine::through(t1, v1, t2, v2)?.viscosity(temperature);

    /// Kinematic viscosity of a blend of two oils at the temperature at which theirs are given.
    ///
    /// Parameters
    /// ----------
    /// v_a_mm2_s, v_b_mm2_s : array_like
    ///     Viscosities of the two oils at one temperature; 0.3 to 20000000 mm²/s.
    /// fraction_a : array_like
    ///     Share of the first oil; 0 to 1.
    ///
    /// Returns
    /// -------
    /// float or ndarray
    ///     Kinematic viscosity of the blend in mm²/s.
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
    /// log log (ν + 0.7) is averaged with the volume fractions. Good for oils of one kind; mixtures of unlike base oils
    /// may lie some 10 % off.
    ///
    /// References
    /// ----------
    /// Wright 1946; ASTM D7152.
    ///
    /// Examples
    /// --------
    /// >>> from pinfilm import oil
    /// >>> round(oil.blend_viscosity_mm2_s(32, 1000, 0.3), 3)
    /// 277.269
    fn blend_viscosity_mm2_s(v_a_mm2_s: Own, v_b_mm2_s: Own, fraction_a: Own) -> Floats = oil::blend_viscosity;

    /// Least and greatest kinematic viscosity at 40 °C that a viscosity grade allows.
    ///
    /// Parameters
    /// ----------
    /// iso_vg : array_like
    ///     Viscosity grade, one of the standard's; 2 to 3200.
    ///
    /// Returns
    /// -------
    /// tuple of float or ndarray
    ///     Least and greatest viscosity in mm²/s.
    ///
    /// Raises
    /// ------
    /// InputError
    ///     A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN. A
    ///     number that is no grade of the standard is an error.
    /// UnitError
    ///     A quantity with a unit.
    ///
    /// Notes
    /// -----
    /// The midpoint less and plus 10 %.
    ///
    /// References
    /// ----------
    /// ISO 3448.
    ///
    /// Examples
    /// --------
    /// >>> from pinfilm import oil
    /// >>> low, high = oil.grade_limits_mm2_s(68)
    /// >>> round(low, 2), round(high, 2)
    /// (61.2, 74.8)
    fn grade_limits_mm2_s(iso_vg: Oil) -> (Floats, Floats) = oil::grade_limits;

    /// Dynamic viscosity of an oil from its kinematic viscosity and density at the same temperature.
    ///
    /// Parameters
    /// ----------
    /// kinematic_viscosity_mm2_s : array_like
    ///     Kinematic viscosity; above 0 and at most 1000000000 mm²/s.
    /// density_kg_per_m3 : array_like
    ///     Density at that temperature; 500 to 2000 kg/m³.
    ///
    /// Returns
    /// -------
    /// float or ndarray
    ///     Dynamic viscosity in mPa s.
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
    /// η = ν ρ. Exact.
    ///
    /// References
    /// ----------
    /// Definition of kinematic viscosity.
    ///
    /// Examples
    /// --------
    /// >>> from pinfilm import oil
    /// >>> round(oil.dynamic_viscosity_mpa_s(100, 850), 3)
    /// 85.0
    fn dynamic_viscosity_mpa_s(kinematic_viscosity_mm2_s: Own, density_kg_per_m3: Own)
        -> Floats = oil::dynamic_viscosity;

    /// Density of a lubricating oil at a temperature, from that at 15 °C.
    ///
    /// Parameters
    /// ----------
    /// density_15_kg_per_m3 : array_like
    ///     Density at 15 °C; 700 to 1200 kg/m³.
    /// temperature_c : array_like
    ///     Temperature; -100 to 400 °C.
    ///
    /// Returns
    /// -------
    /// float or ndarray
    ///     Density in kg/m³.
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
    /// ρ = ρ₁₅ exp(−α Δ (1 + 0.8 α Δ)) with α = 0.6278/ρ₁₅ per K and Δ the temperature above 15 °C: the correction of
    /// the petroleum tables for lubricating oils.
    ///
    /// References
    /// ----------
    /// ASTM D1250, lubricating oils.
    ///
    /// Examples
    /// --------
    /// >>> from pinfilm import oil
    /// >>> round(oil.density_kg_per_m3(890, 60), 3)
    /// 861.498
    fn density_kg_per_m3(density_15_kg_per_m3: Oil, temperature_c: Own) -> Floats = oil::density;

    /// Viscosity grade that a handbook names for roller chains in a room of this temperature.
    ///
    /// Parameters
    /// ----------
    /// ambient_c : array_like
    ///     Temperature of the room; -60 to 150 °C.
    ///
    /// Returns
    /// -------
    /// float or ndarray
    ///     Grade of ISO 3448.
    ///
    /// Raises
    /// ------
    /// InputError
    ///     A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN. A
    ///     temperature outside the table is an error for numbers (`no_answer`), NaN in arrays.
    /// UnitError
    ///     A quantity of another dimension than the name says.
    ///
    /// Notes
    /// -----
    /// VG 68 up to 5 °C, 100 up to 25 °C, 150 up to 45 °C, 220 up to 70 °C.
    /// For orientation: it knows neither load nor the time an oil has to enter; `hydraulics.viscosity_window_mpa_s` does.
    ///
    /// References
    /// ----------
    /// ISO 10823:2004, from memory.
    ///
    /// Examples
    /// --------
    /// >>> from pinfilm import oil
    /// >>> oil.handbook_grade(20)
    /// 100.0
    fn handbook_grade(ambient_c: Duty) -> Floats = oil::handbook_grade;

    /// SAE number that a handbook names for roller chains in a room of this temperature.
    ///
    /// Parameters
    /// ----------
    /// ambient_c : array_like
    ///     Temperature of the room; -60 to 150 °C.
    ///
    /// Returns
    /// -------
    /// float or ndarray
    ///     SAE number of an engine oil.
    ///
    /// Raises
    /// ------
    /// InputError
    ///     A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN. A
    ///     temperature outside the table is an error for numbers (`no_answer`), NaN in arrays.
    /// UnitError
    ///     A quantity of another dimension than the name says.
    ///
    /// Notes
    /// -----
    /// SAE 20 from 20 °F, 30 from 40 °F, 40 from 100 °F, 50 from 120 °F to below 140 °F.
    /// For orientation: it knows neither load nor the time an oil has to enter; `hydraulics.viscosity_window_mpa_s` does.
    ///
    /// References
    /// ----------
    /// ASME B29; Machinery's Handbook, from memory.
    ///
    /// Examples
    /// --------
    /// >>> from pinfilm import oil
    /// >>> oil.handbook_sae_grade(20)
    /// 30.0
    fn handbook_sae_grade(ambient_c: Duty) -> Floats = oil::handbook_sae_grade;
}

#[pymethods]
impl classes::Oil {
    /// Dynamic viscosity of this oil at any temperature.
    ///
    /// Parameters
    /// ----------
    /// temperature_c : array_like
    ///     Temperature; -100 to 400 °C.
    ///
    /// Returns
    /// -------
    /// float or ndarray
    ///     Dynamic viscosity in mPa s.
    ///
    /// Raises
    /// ------
    /// InputError
    ///     A temperature outside its range, or at which the oil leaves what its viscosity line covers.
    /// UnitError
    ///     A quantity of another dimension than the name says.
    ///
    /// Notes
    /// -----
    /// The line through its two viscosities (ASTM D341) times its density at that temperature.
    ///
    /// Examples
    /// --------
    /// >>> import pinfilm
    /// >>> round(pinfilm.Oil.from_grade(220, 95, price_per_l=9.0).viscosity_mpa_s(40.0), 1)
    /// 192.3
    fn viscosity_mpa_s<'py>(&self, py: Python<'py>, temperature_c: Given<'py>) -> PyResult<Floats> {
        let liquid = crate::quantity::Field::si(&self.0, &crate::quantity::unit::ONE).liquid()?;
        let arguments = [Argument::read(&temperature_c, row!(Own, temperature_c))?];
        let rows = [row!(Own, dynamic_viscosity_mpa_s)];
        let values = spread(py, &arguments, rows, |[at]| answered(liquid.dynamic_viscosity(at)))?;
        Floats::of(values)
    }
}
