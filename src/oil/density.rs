//! Density against temperature.

/// Thermal expansion coefficient of a lubricating oil at 15 °C (1/K): 0.6278/density at 15 °C (kg/m3).
///
/// Source: ASTM D1250 (API MPMS 11.1, 1980), lubricating oils, table 54D; form from memory, evaluated.
pub fn thermal_expansion(density_15: f64) -> f64 {
    0.6278 / density_15
}

/// Density (kg/m3) of a lubricating oil at `temperature` (°C) from its density at 15 °C (kg/m3, 700 to 1200).
///
/// `density_15 exp(-a dT (1 + 0.8 a dT))`, dT from 15 °C, a = [`thermal_expansion`]. Up to 150 °C; an extrapolation above.
/// Source: ASTM D1250 (API MPMS 11.1, 1980), lubricating oils, table 54D; form from memory, evaluated.
///
/// ```
/// assert!((pinfilm::oil::density(890.0, 200.0) - 770.546481).abs() < 1e-6);
/// ```
pub fn density(density_15: f64, temperature: f64) -> f64 {
    let expansion = thermal_expansion(density_15) * (temperature - 15.0);
    density_15 * (-expansion * (1.0 + 0.8 * expansion)).exp()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn gives_back_what_it_was_given_and_expands_at_the_stated_rate() {
        assert_eq!(density(890.0, 15.0), 890.0);
        let slope = (density(890.0, 15.01) - density(890.0, 14.99)) / 0.02 / 890.0;
        assert!((slope + thermal_expansion(890.0)).abs() < 1e-9);
        assert!(density(890.0, -20.0) > 890.0 && density(890.0, 80.0) < 890.0);
    }
}
