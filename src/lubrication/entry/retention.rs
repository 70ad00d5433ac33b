//! What the plate gap holds: a ring of oil as wide as capillarity carries against gravity and the throw in a turn.

use super::slot::{capillary_pressure, capillary_rise};

/// Width (m) of the ring of oil that the plate gap round the bush holds, at most `plate_path` (m, plate edge to bush).
///
/// `plate_gap` m, `surface_tension` N/m, `contact_angle` rad, `density` kg/m³; `acceleration` m/s² is gravity plus
/// speed²/radius of the turn. Narrower than `plate_path` means that the turn sheds the rest. 0 if the oil does not wet.
/// Source: Jurin's height with the acceleration of the turn.
pub fn retained_width(
    plate_gap: f64,
    plate_path: f64,
    surface_tension: f64,
    contact_angle: f64,
    density: f64,
    acceleration: f64,
) -> f64 {
    let held = capillary_rise(capillary_pressure(plate_gap, surface_tension, contact_angle), density, acceleration);
    held.clamp(0.0, plate_path)
}

#[cfg(test)]
mod tests {
    use super::retained_width;

    #[test]
    fn a_sharper_turn_sheds_more() {
        let width = |acceleration| retained_width(5e-4, 8e-3, 0.03, 0.35, 880.0, acceleration);
        assert_eq!(width(9.80665), 8e-3);
        assert!(width(50.0) < 8e-3 && width(100.0) == 0.5 * width(50.0));
        assert_eq!(retained_width(5e-4, 8e-3, 0.03, 2.0, 880.0, 9.8), 0.0);
    }
}
