//! What handbooks tell people to buy before anything is computed: a grade by the temperature of the room.
//!
//! They speak of transmission chains indoors, know neither load nor time to enter, and are for orientation: the window
//! of viscosities that a joint lets in and keeps decides. `evaluate` never takes a grade from here.

use crate::error::{Code, Error, Result};

/// Grade of ISO 3448 that one handbook takes for roller chains where it says nothing more.
///
/// Source: read in The Tribology Handbook (Neale), sheet C9.
pub const USUAL_GRADE: f64 = 150.0;

/// Upper end of each range of room temperature (°C; the lower end is outside) and its grade, from −5 °C on.
const GRADES_BY_ROOM: [(f64, f64); 4] = [(5.0, 68.0), (25.0, 100.0), (45.0, 150.0), (70.0, 220.0)];
const COLDEST: f64 = -5.0;

/// The same in SAE numbers of engine oils: upper end of each range (°F; the lower end is inside), from 20 °F on.
const SAE_BY_ROOM: [(f64, f64); 4] = [(40.0, 20.0), (100.0, 30.0), (120.0, 40.0), (140.0, 50.0)];
const COLDEST_FAHRENHEIT: f64 = 20.0;

/// Viscosity grade of ISO 3448 for a roller chain drive in a room of `ambient` (°C), above −5 and at most 70.
///
/// Source: lubricant table of ISO 10823:2004, from memory; the limits may differ between editions.
pub fn handbook_grade(ambient: f64) -> Result<f64> {
    let found = GRADES_BY_ROOM.iter().find(|(most, _)| ambient > COLDEST && ambient <= *most);
    found.map(|(_, grade)| *grade).ok_or_else(|| outside(ambient, "above -5 and at most 70 °C"))
}

/// SAE number of the oil for a roller chain drive in a room of `ambient` (°C), −6.7 (20 °F) to below 60 (140 °F).
///
/// Source: the table of ASME B29 as Machinery's Handbook prints it, from memory.
pub fn handbook_sae_grade(ambient: f64) -> Result<f64> {
    let fahrenheit = 32.0 + 1.8 * ambient;
    let found = SAE_BY_ROOM.iter().find(|(most, _)| fahrenheit >= COLDEST_FAHRENHEIT && fahrenheit < *most);
    found.map(|(_, grade)| *grade).ok_or_else(|| outside(ambient, "-6.6 to below 60 °C"))
}

fn outside(ambient: f64, limit: &str) -> Error {
    let message = format!(
        "ambient_c = {ambient} °C lies outside the handbook's table, which goes {limit}: compute the window of \
         viscosities instead"
    );
    Error::new(Code::NoAnswer, "ambient_c", message).number(ambient).unit("°C").limit(limit)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn limits_belong_to_the_colder_grade() {
        assert_eq!(
            [-4.9, 5.0, 5.1, 25.0, 45.0, 70.0].map(|t| handbook_grade(t).unwrap()),
            [68., 68., 100., 100., 150., 220.]
        );
        assert!(handbook_grade(-5.0).is_err() && handbook_grade(70.1).is_err() && handbook_grade(f64::NAN).is_err());
        assert_eq!([0.0, 20.0, 45.0, 55.0].map(|t| handbook_sae_grade(t).unwrap()), [20., 30., 40., 50.]);
        assert!(handbook_sae_grade(60.0).is_err() && handbook_sae_grade(-10.0).is_err());
    }
}
