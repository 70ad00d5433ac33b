//! `pinfilm.electrics`: the 24 V cable to the injectors.

use super::prelude::*;
use super::spread::whole;
use crate::supply::{self, Supply};

formulas! { "electrics"
    /// Greatest resistance of a copper conductor at 20 °C.
    ///
    /// Parameters
    /// ----------
    /// area_mm2 : array_like
    ///     Nominal cross-section, one of the standard's; 0.5 to 16 mm².
    /// conductor_class : array_like
    ///     Class: 1 solid, 2 stranded, 5 or 6 flexible; 1 to 6.
    ///
    /// Returns
    /// -------
    /// float or ndarray
    ///     Resistance of one conductor in Ω/km.
    ///
    /// Raises
    /// ------
    /// InputError
    ///     A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN. A
    ///     cross-section or class that the tables do not hold is an error.
    /// UnitError
    ///     A quantity of another dimension than the name says.
    ///
    /// Notes
    /// -----
    /// Plain annealed copper, as the tables print it.
    ///
    /// References
    /// ----------
    /// IEC 60228, tables 1 to 4.
    ///
    /// Examples
    /// --------
    /// >>> from pinfilm import electrics
    /// >>> round(electrics.conductor_resistance_ohm_per_km(1.5, 5), 4)
    /// 13.3
    fn conductor_resistance_ohm_per_km(area_mm2: Own, conductor_class: Supply) -> Floats =
        |area, class| supply::conductor_resistance(area, whole("conductor_class", class)?);

    /// Voltage lost in a two-wire cable.
    ///
    /// Parameters
    /// ----------
    /// current_a : array_like
    ///     Current; 0 to 5000 A.
    /// length_m : array_like
    ///     Length of the cable; 0 to 100000 m.
    /// area_mm2 : array_like
    ///     Nominal cross-section; 0.5 to 16 mm².
    /// conductor_class : array_like
    ///     Class: 1 solid, 2 stranded, 5 or 6 flexible; 1 to 6.
    /// temperature_c : array_like
    ///     Temperature of the conductor; -100 to 400 °C.
    ///
    /// Returns
    /// -------
    /// float or ndarray
    ///     Voltage lost there and back, in V.
    ///
    /// Raises
    /// ------
    /// InputError
    ///     A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN. A
    ///     cross-section or class that the tables do not hold is an error.
    /// UnitError
    ///     A quantity of another dimension than the name says.
    ///
    /// Notes
    /// -----
    /// ΔU = 2 L I R₂₀ (1 + 0.00393 (t − 20)).
    ///
    /// References
    /// ----------
    /// IEC 60228; IEC 60028 for the temperature coefficient of copper.
    ///
    /// Examples
    /// --------
    /// >>> from pinfilm import electrics
    /// >>> round(electrics.voltage_drop_v(2.0, 50.0, 1.5, 5, 20.0), 4)
    /// 2.66
    fn voltage_drop_v(current_a: Own, length_m: Own, area_mm2: Own, conductor_class: Supply, temperature_c: Own)
        -> Floats =
        |current, length, area, class, temperature| {
            let resistance = supply::loop_resistance(length, area, whole("conductor_class", class)?, temperature)?;
            Ok(supply::voltage_drop(current, resistance))
        };

    /// Voltage that arrives at a device which draws the same power at any voltage.
    ///
    /// Parameters
    /// ----------
    /// power_w : array_like
    ///     Power of the device; above 0 and at most 100000 W.
    /// length_m : array_like
    ///     Length of the cable; 0 to 100000 m.
    /// area_mm2 : array_like
    ///     Nominal cross-section; 0.5 to 16 mm².
    /// conductor_class : array_like
    ///     Class: 1 solid, 2 stranded, 5 or 6 flexible; 1 to 6.
    /// temperature_c : array_like
    ///     Temperature of the conductor; -100 to 400 °C.
    /// supply_voltage_v : array_like, optional
    ///     Voltage at the feeding end; 5 to 60 V; 24 V if not given.
    ///
    /// Returns
    /// -------
    /// float or ndarray
    ///     Voltage at the load in V.
    ///
    /// Raises
    /// ------
    /// InputError
    ///     A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN. A
    ///     load that the cable cannot carry at any voltage is an error (`no_operating_point`).
    /// UnitError
    ///     A quantity of another dimension than the name says.
    ///
    /// Notes
    /// -----
    /// U = U₀/2 + √(U₀²/4 − P R): the stable one of two solutions of U = U₀ − R P/U.
    ///
    /// References
    /// ----------
    /// Ohm's law with a constant-power load; IEC 60228; IEC 60028.
    ///
    /// Examples
    /// --------
    /// >>> from pinfilm import electrics
    /// >>> round(electrics.load_voltage_v(60.0, 50.0, 1.5, 5, 40.0), 4)
    /// 19.611
    fn load_voltage_v(
        power_w: Own, length_m: Own, area_mm2: Own, conductor_class: Supply, temperature_c: Own;
        supply_voltage_v: Supply
    ) -> Floats = |power, length, area, class, temperature, supply| {
        let resistance = supply::loop_resistance(length, area, whole("conductor_class", class)?, temperature)?;
        Ok(supply::constant_power_load(supply, power, resistance)?.voltage)
    };
}
