//! Units at the border. Inside, everything is SI; a public name carries its unit, and the conversion stands here.

use std::borrow::Cow;

/// 0 °C in kelvin (the definition of the Celsius scale).
pub const ICE_POINT: f64 = 273.15;

/// A unit of a public name: how it is written, how names carry it, and what it is in SI.
#[derive(Debug, PartialEq)]
pub struct Unit {
    /// As people write it: `mm`, `°C`, `m/min`; empty for pure numbers.
    pub label: &'static str,
    /// The endings that a name in this unit may have: `mm` for `pitch_mm`. Empty for pure numbers, words and money.
    pub endings: &'static [&'static str],
    /// SI value of one unit.
    pub factor: f64,
    /// The same unit in the words of a units library, to accept its quantities; empty where none applies.
    pub spelled: &'static str,
}

impl Unit {
    /// A value in this unit, in SI. Temperatures stay in °C, which the rooms take.
    #[inline]
    pub const fn to_si(&self, value: f64) -> f64 {
        value * self.factor
    }

    /// An SI value, in this unit.
    #[inline]
    pub const fn from_si(&self, value: f64) -> f64 {
        value / self.factor
    }

    /// As people write it where the currency of the survey is known: `EUR/year` for `money/year`.
    pub fn label_in(&self, currency: Option<&str>) -> Cow<'static, str> {
        match (self.label.strip_prefix("money"), currency) {
            (Some(per), Some(currency)) if !currency.is_empty() => Cow::Owned(format!("{currency}{per}")),
            _ => Cow::Borrowed(self.label),
        }
    }

    /// Whether values in this unit are numbers; words and groups of quantities have a unit that is none.
    pub fn is_of_numbers(&self) -> bool {
        !(self.label.is_empty() && self.spelled.is_empty())
    }

    /// Whether a public name carries this unit as it should.
    pub fn is_carried_by(&self, name: &str) -> bool {
        if self.endings.is_empty() {
            return true;
        }
        self.endings
            .iter()
            .any(|ending| name == *ending || name.strip_suffix(ending).is_some_and(|stem| stem.ends_with('_')))
    }
}

/// Every unit that some name carries, for the test that pure numbers do not carry one by mistake.
pub fn all() -> &'static [&'static Unit] {
    ALL
}

macro_rules! units {
    ($($name:ident = $label:literal, [$($ending:literal),*], $factor:expr, $spelled:literal;)+) => {
        $(
            #[doc = concat!("`", $label, "`")]
            pub const $name: Unit =
                Unit { label: $label, endings: &[$($ending),*], factor: $factor, spelled: $spelled };
        )+
        const ALL: &[&Unit] = &[$(&$name),+];
    };
}

/// Hours of a calendar year of 365 days.
pub const HOURS_OF_YEAR: f64 = 8760.0;
const HOUR: f64 = 3600.0;
const YEAR: f64 = HOURS_OF_YEAR * HOUR;

units! {
    ONE = "", [], 1.0, "dimensionless";
    WORD = "", [], 1.0, "";
    MONEY = "money", [], 1.0, "";
    MONEY_PER_YEAR = "money/year", [], 1.0 / YEAR, "";
    MM = "mm", ["mm"], 1e-3, "millimeter";
    UM = "µm", ["um"], 1e-6, "micrometer";
    M = "m", ["m"], 1.0, "meter";
    MM2 = "mm²", ["mm2"], 1e-6, "millimeter**2";
    UL = "µL", ["ul"], 1e-9, "microliter";
    L = "L", ["l"], 1e-3, "liter";
    N = "N", ["n"], 1.0, "newton";
    KN = "kN", ["kn"], 1e3, "kilonewton";
    MPA = "MPa", ["mpa"], 1e6, "megapascal";
    GPA = "GPa", ["gpa"], 1e9, "gigapascal";
    KPA = "kPa", ["kpa"], 1e3, "kilopascal";
    PER_GPA = "1/GPa", ["per_gpa"], 1e-9, "1/gigapascal";
    C = "°C", ["c"], 1.0, "degree_Celsius";
    KELVIN = "K", ["k"], 1.0, "kelvin";
    DEG = "°", ["deg"], std::f64::consts::PI / 180.0, "degree";
    S = "s", ["s"], 1.0, "second";
    MIN = "min", ["min"], 60.0, "minute";
    H = "h", ["h"], HOUR, "hour";
    DAYS = "d", ["days"], 24.0 * HOUR, "day";
    YEARS = "years", ["years"], YEAR, "year";
    PCT = "%", ["pct"], 1e-2, "percent";
    KG_PER_M = "kg/m", ["kg_per_m"], 1.0, "kilogram/meter";
    KG_PER_M2 = "kg/m²", ["kg_per_m2"], 1.0, "kilogram/meter**2";
    KG_PER_M3 = "kg/m³", ["kg_per_m3"], 1.0, "kilogram/meter**3";
    W_PER_M2_K = "W/(m² K)", ["w_per_m2_k"], 1.0, "watt/meter**2/kelvin";
    M_PER_MIN = "m/min", ["m_per_min"], 1.0 / 60.0, "meter/minute";
    M_PER_H = "m/h", ["m_per_h"], 1.0 / HOUR, "meter/hour";
    MM2_PER_S = "mm²/s", ["mm2_s"], 1e-6, "millimeter**2/second";
    MPA_S = "mPa s", ["mpa_s"], 1e-3, "millipascal*second";
    PA_S = "Pa s", ["pa_s"], 1.0, "pascal*second";
    MN_PER_M = "mN/m", ["mn_per_m"], 1e-3, "millinewton/meter";
    KJ_PER_MOL = "kJ/mol", ["kj_per_mol"], 1e3, "kilojoule/mole";
    ML_PER_MIN = "mL/min", ["ml_per_min"], 1e-6 / 60.0, "milliliter/minute";
    PER_S = "1/s", ["per_s"], 1.0, "1/second";
    RAD_PER_S = "rad/s", ["rad_per_s"], 1.0, "radian/second";
    PER_H = "1/h", ["per_h"], 1.0 / HOUR, "1/hour";
    PER_H_PART = "1/h", [], 1.0 / HOUR, "1/hour";
    UL_PER_H = "µL/h", ["ul_per_joint_h"], 1e-9 / HOUR, "microliter/hour";
    PER_YEAR = "1/year", ["per_year"], 1.0 / YEAR, "1/year";
    H_PER_YEAR = "h/year", ["h_per_year"], HOUR / YEAR, "hour/year";
    HOURS_PER_DAY = "h/day", ["hours_per_day"], 1.0 / 24.0, "hour/day";
    DAYS_PER_YEAR = "d/year", ["days_per_year"], 1.0 / 365.0, "day/year";
    L_PER_YEAR = "L/year", ["l_per_year"], 1e-3 / YEAR, "liter/year";
    UM_PER_YEAR = "µm/year", ["um_per_year"], 1e-6 / YEAR, "micrometer/year";
    KWH = "kWh", ["kwh"], 1e3 * HOUR, "kilowatt*hour";
    KWH_PER_YEAR = "kWh/year", ["kwh_per_year"], 1e3 * HOUR / YEAR, "kilowatt*hour/year";
    W = "W", ["w"], 1.0, "watt";
    KW = "kW", ["kw"], 1e3, "kilowatt";
    V = "V", ["v"], 1.0, "volt";
    A = "A", ["a"], 1.0, "ampere";
    A_PER_N = "A/N", ["a_per_n"], 1.0, "ampere/newton";
    HZ = "Hz", ["hz"], 1.0, "hertz";
    RPM = "1/min", ["rpm"], 1.0 / 60.0, "revolution/minute";
    CIRCUITS = "circuits", ["circuits"], 1.0, "dimensionless";
    H_A_YEAR = "h/year", ["h"], HOUR / YEAR, "hour/year";
    H_PER_APPLICATION = "h/application", ["hours_per_application"], HOUR, "hour";
    DAYS_OF_PAYBACK = "d", ["days", "days_without_chain", "days_downtime_halved"], 1.0, "day";
    YEARS_OF_MONEY = "years", ["years"], 1.0, "year";
    MONEY_PER_H = "money/h", ["per_h"], 1.0 / HOUR, "";
    MONEY_PER_L = "money/L", ["per_l"], 1e3, "";
    MONEY_PER_KWH = "money/kWh", ["per_kwh"], 1.0 / (1e3 * HOUR), "";
    MONEY_PER_M = "money/m", ["per_m"], 1.0, "";
    M_PER_S = "m/s", ["m_per_s"], 1.0, "meter/second";
    MM3 = "mm³", ["mm3"], 1e-9, "millimeter**3";
    N_PER_MM = "N/mm", ["n_per_mm"], 1e3, "newton/millimeter";
    NM = "N m", ["nm"], 1.0, "newton*meter";
    OHM = "Ω", ["ohm"], 1.0, "ohm";
    OHM_PER_KM = "Ω/km", ["ohm_per_km"], 1e-3, "ohm/kilometer";
    PITCHES = "pitches", ["pitches"], 1.0, "dimensionless";
    // Interest is counted by the year and payback by the day, however long they are.
    YEARS_COUNTED = "years", ["years"], 1.0, "year";
    DAYS_COUNTED = "d", ["days"], 1.0, "day";
    MONEY_A_YEAR = "money/year", ["per_year"], 1.0 / YEAR, "";
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn conversion_is_its_own_inverse() {
        for unit in all() {
            for value in [0.0, 1.0, 37.2, -4e5] {
                let back = unit.from_si(unit.to_si(value));
                assert!((back - value).abs() <= 4.0 * f64::EPSILON * value.abs(), "{} {value} {back}", unit.label);
            }
        }
    }

    #[test]
    fn names_carry_their_unit_at_the_end() {
        assert!(MM.is_carried_by("pitch_mm"));
        assert!(!MM.is_carried_by("pitch"));
        assert!(!M.is_carried_by("pitch_mm"));
        assert!(PCT.is_carried_by("elongation_1_year_pct"));
    }
}
