//! Archard's law, and the two pairs beside the joint it is applied to: roller on bush, roller on sprocket flank.

use std::f64::consts::PI;

/// Volume worn off the softer side of a sliding pair (m³): V = K W s / (3 H).
///
/// `coefficient` K (1), `load` W (N), `distance` s slid (m), `hardness` H (Pa), all > 0. The 3 belongs to the law as
/// Archard wrote it for hemispherical particles; coefficients tabulated for V = K W s / H are three times too low here.
/// Source: Archard (1953), J. Appl. Phys. 24, 981.
///
/// ```
/// // mild steel on itself, 100 N over 1 km
/// let volume = pinfilm::wear::archard_volume(7e-3, 100.0, 1000.0, 1.176e9);
/// assert!((volume - 1.984127e-7).abs() < 1e-12);
/// ```
pub fn archard_volume(coefficient: f64, load: f64, distance: f64, hardness: f64) -> f64 {
    coefficient * load * distance / (3.0 * hardness)
}

/// Sliding of a roller on its bush (m) while the roller travels `travel` (m) along its track.
///
/// `bush_diameter` and `roller_diameter` in m; rolling without slip on the track. Source: exact kinematics.
pub fn roller_sliding(travel: f64, bush_diameter: f64, roller_diameter: f64) -> f64 {
    travel * bush_diameter / roller_diameter
}

/// Depth worn off the outside of a bush by its turning roller (m), spread over the projected area.
///
/// `load` on one roller (N), `sliding` from [`roller_sliding`] (m), `bush_diameter` and `length` of the roller's seat
/// (m), `hardness` (Pa). Indicative: it has no threshold of load. Source: Archard (1953) over the projected area.
pub fn roller_bush_depth(
    coefficient: f64,
    load: f64,
    sliding: f64,
    bush_diameter: f64,
    length: f64,
    hardness: f64,
) -> f64 {
    archard_volume(coefficient, load, sliding, hardness) / (bush_diameter * length)
}

/// Share of the articulation that slides on the tooth: 0.05 for a turning roller to 1 for a plain bush. Closure of our own.
pub const FLANK_SLIP: f64 = 0.2;

/// Arc of the tooth seat over which one flank wears (rad). Closure of our own.
pub const FLANK_ARC: f64 = 0.5;

/// Sliding on one tooth flank (m) while one joint seats: the articulation 2π/z at the roller's surface, times `slip`.
///
/// `slip` 0..1 (see [`FLANK_SLIP`]), `roller_diameter` m, `teeth` z. Closure of our own.
pub fn sprocket_sliding(slip: f64, roller_diameter: f64, teeth: u32) -> f64 {
    slip * roller_diameter * PI / f64::from(teeth)
}

/// Depth worn into one tooth flank of a sprocket after `seatings` joints have seated in it (m).
///
/// `load` (N) is the tension of one strand where the joint seats, `sliding` from [`sprocket_sliding`] (m), `width` of
/// the tooth (m), `hardness` (Pa). A loop of N joints seats N/z of them in each tooth every circuit. Indicative.
/// Source: Archard (1953) over an arc of [`FLANK_ARC`] of the roller, closure of our own.
pub fn sprocket_flank_depth(
    coefficient: f64,
    load: f64,
    sliding: f64,
    seatings: f64,
    roller_diameter: f64,
    width: f64,
    hardness: f64,
) -> f64 {
    let area = FLANK_ARC * 0.5 * roller_diameter * width;
    archard_volume(coefficient, load, sliding * seatings, hardness) / area
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_roller_slides_once_round_its_bush_for_every_turn() {
        let (bush, roller) = (0.021, 0.06);
        assert!((roller_sliding(PI * roller, bush, roller) - PI * bush).abs() < 1e-16);
    }

    #[test]
    fn one_full_turn_of_teeth_slides_the_circumference_of_a_plain_bush() {
        let (d, z) = (0.016, 25);
        assert!((f64::from(z) * sprocket_sliding(1.0, d, z) - PI * d).abs() < 1e-15);
    }

    #[test]
    fn depth_over_the_seat_gives_back_the_volume() {
        let depth = roller_bush_depth(1e-5, 600.0, 1e6, 0.021, 0.045, 3e9);
        assert!((depth * 0.021 * 0.045 / archard_volume(1e-5, 600.0, 1e6, 3e9) - 1.0).abs() < 1e-15);
        let depth = sprocket_flank_depth(5e-5, 4000.0, 4e-4, 2e6, 0.0158, 0.016, 5.5e9);
        let volume = archard_volume(5e-5, 4000.0, 4e-4 * 2e6, 5.5e9);
        assert!((depth * FLANK_ARC * 0.0079 * 0.016 / volume - 1.0).abs() < 1e-15);
    }
}
