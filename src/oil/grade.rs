//! ISO viscosity grades.

use super::MM2_PER_S;
use crate::error::{Code, Error, Result};

/// The grades of ISO 3448 and the mid-point of each at 40 °C, mm2/s.
///
/// Source: ISO 3448; limits of grades up to 1500 read in a table of the standard, 2200 and 3200 from memory.
pub const GRADES: [(u16, f64); 20] = [
    (2, 2.2),
    (3, 3.2),
    (5, 4.6),
    (7, 6.8),
    (10, 10.0),
    (15, 15.0),
    (22, 22.0),
    (32, 32.0),
    (46, 46.0),
    (68, 68.0),
    (100, 100.0),
    (150, 150.0),
    (220, 220.0),
    (320, 320.0),
    (460, 460.0),
    (680, 680.0),
    (1000, 1000.0),
    (1500, 1500.0),
    (2200, 2200.0),
    (3200, 3200.0),
];

/// A grade may lie this far to either side of its mid-point. Source: ISO 3448.
const HALF_WIDTH: f64 = 0.1;

/// Kinematic viscosity at 40 °C (m2/s) in the middle of an ISO viscosity grade.
///
/// Source: ISO 3448. Fails for a number that is no grade, naming its neighbours.
pub fn grade_midpoint(iso_vg: f64) -> Result<f64> {
    match GRADES.iter().find(|(grade, _)| f64::from(*grade) == iso_vg) {
        Some((_, midpoint)) => Ok(midpoint * MM2_PER_S),
        None => Err(no_such_grade(iso_vg)),
    }
}

/// Least and greatest kinematic viscosity at 40 °C (m2/s) of an ISO viscosity grade: the mid-point ±10 %.
///
/// Source: ISO 3448. Fails for a number that is no grade, naming its neighbours.
///
/// ```
/// let (least, greatest) = pinfilm::oil::grade_limits(220.0)?;
/// assert!((least - 198e-6).abs() < 1e-15 && (greatest - 242e-6).abs() < 1e-15);
/// assert!(pinfilm::oil::grade_limits(200.0).unwrap_err().message.contains("150 and 220"));
/// # Ok::<(), pinfilm::Error>(())
/// ```
pub fn grade_limits(iso_vg: f64) -> Result<(f64, f64)> {
    let midpoint = grade_midpoint(iso_vg)?;
    Ok((midpoint * (1.0 - HALF_WIDTH), midpoint * (1.0 + HALF_WIDTH)))
}

fn no_such_grade(iso_vg: f64) -> Error {
    let below = GRADES.iter().rev().map(|(grade, _)| *grade).find(|grade| f64::from(*grade) < iso_vg);
    let above = GRADES.iter().map(|(grade, _)| *grade).find(|grade| f64::from(*grade) > iso_vg);
    let neighbours = match (below, above) {
        (Some(below), Some(above)) => format!("the nearest grades are {below} and {above}"),
        (None, Some(first)) => format!("the lowest grade is {first}"),
        (Some(last), None) => format!("the highest grade is {last}"),
        (None, None) => "give the number of a grade".to_string(), // NaN has no neighbours
    };
    Error::new(
        Code::NoSuchGrade,
        "iso_vg",
        format!(
            "ISO 3448 has no viscosity grade {iso_vg}: {neighbours}; for an oil between grades give its viscosity at 40 °C"
        ),
    )
    .number(iso_vg)
    .limit(GRADES.map(|(grade, _)| grade.to_string()).join(", "))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_grade_contains_its_midpoint_and_none_overlap() {
        let mut last = 0.0;
        for (grade, midpoint) in GRADES {
            let (least, greatest) = grade_limits(f64::from(grade)).unwrap();
            assert!(last < least && least < midpoint * 1e-6 && midpoint * 1e-6 < greatest);
            assert!((greatest / least - 11.0 / 9.0).abs() < 1e-12);
            last = greatest;
        }
    }

    #[test]
    fn a_wrong_grade_names_its_neighbours() {
        for (wrong, hint) in [(1.0, "lowest grade is 2"), (221.0, "220 and 320"), (5000.0, "highest grade is 3200")] {
            let error = grade_midpoint(wrong).unwrap_err();
            assert_eq!(error.code, Code::NoSuchGrade);
            assert!(error.message.contains(hint), "{}", error.message);
        }
        assert_eq!(grade_limits(f64::NAN).unwrap_err().code, Code::NoSuchGrade);
    }
}
