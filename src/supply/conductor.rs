//! Copper conductors of cables: resistance by cross-section and class.

use crate::error::{Code, Error, Result};

/// Square millimetre, m².
const SQUARE_MILLIMETRE: f64 = 1e-6;
/// Ohm per kilometre, Ω/m.
const OHM_PER_KILOMETRE: f64 = 1e-3;
/// Temperature coefficient of the resistance of copper at 20 °C, 1/K (IEC 60028).
const COPPER: f64 = 0.00393;
/// Temperature of the tables, °C.
const REFERENCE: f64 = 20.0;

/// A row of the tables of IEC 60228: plain copper at 20 °C, greatest resistance.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Conductor {
    /// Nominal cross-section, mm², as the trade names it.
    pub nominal: f64,
    /// Solid and stranded (class 1, 2), Ω/km as printed.
    pub solid: f64,
    /// Flexible (class 5, 6), Ω/km as printed.
    pub flexible: f64,
}

impl Conductor {
    /// IEC 60228, tables 1 to 4 (plain copper), read in a reproduction of the tables.
    pub const TABLE: [Conductor; 9] = [
        Conductor { nominal: 0.5, solid: 36.0, flexible: 39.0 },
        Conductor { nominal: 0.75, solid: 24.5, flexible: 26.0 },
        Conductor { nominal: 1.0, solid: 18.1, flexible: 19.5 },
        Conductor { nominal: 1.5, solid: 12.1, flexible: 13.3 },
        Conductor { nominal: 2.5, solid: 7.41, flexible: 7.98 },
        Conductor { nominal: 4.0, solid: 4.61, flexible: 4.95 },
        Conductor { nominal: 6.0, solid: 3.08, flexible: 3.30 },
        Conductor { nominal: 10.0, solid: 1.83, flexible: 1.91 },
        Conductor { nominal: 16.0, solid: 1.15, flexible: 1.21 },
    ];
}

/// Resistance (Ω/m) at 20 °C of a plain copper conductor of cross-section `area` (m²) and `class` 1, 2, 5 or 6.
///
/// Source: IEC 60228. Fails for areas and classes that its tables do not hold.
pub fn conductor_resistance(area: f64, class: i64) -> Result<f64> {
    let row = Conductor::TABLE.iter().find(|row| (area / SQUARE_MILLIMETRE / row.nominal - 1.0).abs() < 1e-6);
    let Some(row) = row else {
        return Err(Error::new(
            Code::UnknownChoice,
            "area",
            format!(
                "{} mm² is not a nominal cross-section: take 0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10 or 16 mm².",
                area / SQUARE_MILLIMETRE
            ),
        )
        .number(area / SQUARE_MILLIMETRE)
        .unit("mm²")
        .limit("0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10 or 16 mm²"));
    };
    match class {
        1 | 2 => Ok(row.solid * OHM_PER_KILOMETRE),
        5 | 6 => Ok(row.flexible * OHM_PER_KILOMETRE),
        _ => Err(Error::new(
            Code::UnknownChoice,
            "conductor_class",
            format!(
                "Conductor class {class} is not one of IEC 60228: take 1 (solid), 2 (stranded), 5 or 6 (flexible)."
            ),
        )
        .number(class as f64)
        .limit("1, 2, 5 or 6")),
    }
}

/// Resistance of copper at `temperature` (°C) over that at 20 °C. Source: IEC 60028.
pub fn temperature_factor(temperature: f64) -> f64 {
    1.0 + COPPER * (temperature - REFERENCE)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn thicker_is_better_and_flexible_is_worse() {
        for pair in Conductor::TABLE.windows(2) {
            assert!(pair[0].solid > pair[1].solid && pair[0].flexible > pair[1].flexible);
        }
        assert!(Conductor::TABLE.iter().all(|row| row.flexible > row.solid));
    }

    #[test]
    fn odd_cables_are_refused() {
        assert!((conductor_resistance(1.5e-6, 5).unwrap() - 0.0133).abs() < 1e-15);
        assert!(conductor_resistance(1.4e-6, 5).is_err_and(|e| e.code == Code::UnknownChoice));
        assert!(conductor_resistance(1.5e-6, 3).is_err_and(|e| e.code == Code::UnknownChoice));
    }
}
