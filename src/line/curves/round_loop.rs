//! Tension and temperature along the chain.

use super::{RoundLoop, RoundLoopSi, Worked, points_within};
use crate::error::Result;
use crate::line::Line;
use crate::quantity::{Field, unit::ONE};

/// Points in each section where nobody says.
const POINTS: i64 = 25;

/// Points of tension and temperature round the loop, `points` (2 to 100000) in each section, both its ends included.
///
/// Temperatures are exact at every point. Tension changes in proportion to the way on a straight; on a turn only its
/// ends are computed, and the points between lie on a straight line.
pub fn round_loop(line: &Line, points: Option<i64>) -> Result<RoundLoop> {
    let points = points_within(points, POINTS)?;
    let worked = Worked::of(line)?;
    let places = &worked.course.layout.places;
    let count = places.len() * points;
    let mut along = RoundLoopSi {
        section: Vec::with_capacity(count),
        position: Vec::with_capacity(count),
        time: Vec::with_capacity(count),
        tension: Vec::with_capacity(count),
        temperature: Vec::with_capacity(count),
    };
    let mut before = 0.0;
    for place in places {
        let [entry, exit] = worked.settled.march.profile[place.section];
        for point in 0..points {
            let share = point as f64 / (points - 1) as f64;
            along.section.push(place.section as i64);
            along.position.push(before + share * place.length);
            along.time.push(place.start + share * place.duration);
            along.tension.push(entry + share * (exit - entry));
            along.temperature.push(worked.course.temperatures.sections[place.section].after(share * place.duration));
        }
        before += place.length;
    }
    Ok(RoundLoop::public(along, &ONE))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::line::evaluate;

    #[test]
    fn its_ends_are_those_of_the_result() {
        let line = Line::from_toml(include_str!("../../../python/pinfilm/data/oven_now.toml")).unwrap();
        let (result, along) = (evaluate(&line).unwrap(), round_loop(&line, Some(5)).unwrap());
        assert_eq!(along.position_m.len(), 5 * result.tension.profile_n.len());
        for (section, ends) in result.tension.profile_n.iter().enumerate() {
            let here: Vec<usize> = (0..along.section.len()).filter(|&i| along.section[i] == section as i64).collect();
            let (first, last) = (here[0], here[4]);
            assert!((along.tension_n[first] - ends[0]).abs() < 1e-9 && (along.tension_n[last] - ends[1]).abs() < 1e-9);
            let [inlet, outlet, _] = result.kinematics.section_c[section];
            assert!((along.temperature_c[first] - inlet).abs() < 1e-9);
            assert!((along.temperature_c[last] - outlet).abs() < 1e-9);
        }
        assert!((along.position_m.last().unwrap() - result.kinematics.length_m).abs() < 1e-9);
        assert!((along.time_s.last().unwrap() - result.kinematics.circuit_time_s).abs() < 1e-6);
        assert!(round_loop(&line, Some(1)).is_err());
    }
}
