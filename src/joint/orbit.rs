//! The path of a loaded pin in its bush, in time: a joint rests, turns, rests, turns, and its film follows late.
//!
//! Takes the load's squeeze time, the turning speed and the duration of each rest and turn; gives film, eccentricity
//! and angle at their ends, and the mean film. Rigid, isoviscous, flooded, half film. A reference for the closed forms
//! (tens of microseconds for each rest or turn); knows nothing of roughness or of how much oil there is.

mod dormand_prince;
mod film_arc;
mod film_force;
mod periodic;

use super::film::{Eccentricity, short_over_finite};
use crate::error::Result;
use film_force::Place;
pub use periodic::{Orbit, periodic_orbit};

/// Share of the place and of the film that each time step may be wrong by.
const TOLERANCE: f64 = 1e-9;

/// Place of the pin in its bush: the vector e/(1−e) along the line of centres, x along the load.
///
/// It maps the clearance circle to the whole plane. Contact is infinitely far away, so no step can cross it, and a
/// relative error of the vector is a relative error of the film.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PinPlace {
    /// Component along the load.
    pub x: f64,
    /// Component across it, in the sense of turning.
    pub y: f64,
}

impl PinPlace {
    /// Place of a pin with its `eccentricity_ratio` (0 ≤ e < 1) at `angle` (rad) from the load line.
    pub fn new(eccentricity_ratio: f64, angle: f64) -> PinPlace {
        let radius = eccentricity_ratio / (1.0 - eccentricity_ratio);
        PinPlace { x: radius * angle.cos(), y: radius * angle.sin() }
    }

    /// Smallest film over radial clearance, 1 − e.
    pub fn film_ratio(self) -> f64 {
        1.0 / (1.0 + self.radius())
    }

    /// Eccentricity ratio e, 0 to 1.
    pub fn eccentricity_ratio(self) -> f64 {
        let radius = self.radius();
        radius / (1.0 + radius)
    }

    /// Angle from the load line to the line of centres, positive in the sense of turning (rad).
    pub fn angle(self) -> f64 {
        self.y.atan2(self.x)
    }

    /// Whether the pin is at `other`, within what a time step may be wrong by.
    fn is_at(self, other: PinPlace) -> bool {
        let [x, y, _] = allowed(&[other.x, other.y, 0.0]);
        (self.x - other.x).abs() < x && (self.y - other.y).abs() < y
    }

    fn radius(self) -> f64 {
        self.x.hypot(self.y)
    }
}

/// A rest or a turn of a joint under a load of constant size and direction.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Segment {
    /// The load's [`squeeze_time`] (s), > 0.
    pub squeeze_time: f64,
    /// Speed of pin against bush (rad/s); 0 at rest, negative for a turn the other way.
    pub angular_speed: f64,
    /// How long it lasts (s), ≥ 0.
    pub duration: f64,
}

/// The film over one rest or turn.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SegmentFilm {
    /// The pin when it begins.
    pub start: PinPlace,
    /// The pin when it ends.
    pub end: PinPlace,
    /// Time mean of the smallest film over radial clearance.
    pub mean_film_ratio: f64,
}

/// Time scale on which a load squeezes the film out of a short bearing, η R L³/(W c²) (s).
///
/// `viscosity` Pa s, `radius` of the pin m, `length` m, `load` N, `radial_clearance` m, all > 0.
/// Source: Reynolds equation of the short bearing, Ocvirk 1952.
pub fn squeeze_time(viscosity: f64, radius: f64, length: f64, load: f64, radial_clearance: f64) -> f64 {
    viscosity * radius * length.powi(3) / (load * radial_clearance * radial_clearance)
}

/// Follows the pin from `start` through `segments`.
///
/// `length_to_diameter` of the bearing for the closure of finite length, or `None` for short-bearing theory as it
/// stands (which overstates the film of chain joints many times).
/// Source: mobility method, Booker 1965, with the exact half film; closure of our own for the length.
pub fn travel(start: PinPlace, segments: &[Segment], length_to_diameter: Option<f64>) -> Result<Vec<SegmentFilm>> {
    follow(start, segments, &[], length_to_diameter)
}

/// As [`travel`], but from where the pin is at the place that it had in an `earlier` circuit, its film is that one's.
///
/// The same place, as far as time steps can tell, has the same future: the pin has forgotten how it began.
fn follow(
    start: PinPlace,
    segments: &[Segment],
    earlier: &[SegmentFilm],
    length_to_diameter: Option<f64>,
) -> Result<Vec<SegmentFilm>> {
    let mut films: Vec<SegmentFilm> = Vec::with_capacity(segments.len());
    let mut here = start;
    for (at, segment) in segments.iter().enumerate() {
        if earlier.get(at).is_some_and(|film| here.is_at(film.start)) {
            films.extend_from_slice(&earlier[at..]);
            break;
        }
        let film = pass(here, *segment, length_to_diameter)?;
        here = film.end;
        films.push(film);
    }
    Ok(films)
}

/// One rest or turn.
fn pass(start: PinPlace, segment: Segment, length_to_diameter: Option<f64>) -> Result<SegmentFilm> {
    let mut last = None;
    let length_squared = length_to_diameter.map(|ratio| ratio * ratio);
    let whirl = 0.5 * segment.angular_speed;
    let share = if segment.duration > 0.0 { 1.0 / segment.duration } else { 0.0 };
    let rate = 1.0 / segment.squeeze_time;
    let [x, y, mean] = dormand_prince::travel([start.x, start.y, 0.0], segment.duration, allowed, |&[x, y, _]| {
        let place = Place::new(x, y);
        // The closure of the wedge; in pure squeeze it comes out 10 to 39 % too stiff.
        let softer = length_squared.map_or(1.0, |l2| short_over_finite(Eccentricity::from_closeness(place.radius), l2));
        let pace = (1.0 + place.radius) * rate * softer;
        let moving = film_force::velocity(place, &mut last);
        let outward = moving.outward * pace * (1.0 + place.radius);
        let round = moving.across * pace + place.radius * whirl;
        [
            outward * place.cosine - round * place.sine,
            outward * place.sine + round * place.cosine,
            share * place.film_ratio,
        ]
    })?;
    let end = PinPlace { x, y };
    let mean_film_ratio = if segment.duration > 0.0 { mean } else { end.film_ratio() };
    Ok(SegmentFilm { start, end, mean_film_ratio })
}

/// Error that a time step may make in place and summed film.
///
/// Near contact a pin at radius r moves across the load line on the scale of sqrt(r), not of r; that sets how well the
/// smaller component must be known, and no better, also where it passes through zero.
fn allowed(&[x, y, mean]: &[f64; 3]) -> [f64; 3] {
    let radius = x.hypot(y);
    let least = (1.0 + radius).sqrt();
    [TOLERANCE * x.abs().max(least), TOLERANCE * y.abs().max(least), TOLERANCE * mean.max(1.0 / (1.0 + radius))]
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;
    use std::f64::consts::PI;

    fn near(a: f64, b: f64, share: f64) -> bool {
        (a - b).abs() <= share * b.abs()
    }

    fn rest(duration: f64) -> Segment {
        Segment { squeeze_time: 1.0, angular_speed: 0.0, duration }
    }

    #[test]
    fn at_rest_the_film_thins_by_the_squeeze_formula() {
        // t/K = J(e2) − J(e1), J = e arccos(−e)/o^1.5 + 1/o (half film).
        let squeezed = |e: f64| e * (-e).acos() / (1.0 - e * e).powf(1.5) + 1.0 / (1.0 - e * e);
        for (from, to) in [(0.0, 0.3), (0.1, 0.9), (0.5, 0.9999)] {
            let film = travel(PinPlace::new(from, 0.0), &[rest(squeezed(to) - squeezed(from))], None).unwrap()[0];
            assert!(near(film.end.film_ratio(), 1.0 - to, 1e-8), "{from} {to}: {}", film.end.film_ratio());
        }
    }

    #[test]
    fn a_pin_in_the_middle_sets_out_along_its_load() {
        let film = travel(PinPlace::new(0.0, 0.0), &[rest(0.1)], Some(2.0)).unwrap()[0];
        assert!(film.end.x > 0.0 && film.end.y == 0.0, "{film:?}");
    }

    #[test]
    fn a_turn_the_other_way_is_the_mirror_image() {
        let turn = |angular_speed| [rest(2.0), Segment { squeeze_time: 0.7, angular_speed, duration: 1.3 }];
        let one = travel(PinPlace::new(0.4, 0.5), &turn(3.0), Some(2.0)).unwrap();
        let other = travel(PinPlace::new(0.4, -0.5), &turn(-3.0), Some(2.0)).unwrap();
        for (a, b) in one.iter().zip(&other) {
            assert!(near(a.end.x, b.end.x, 1e-8) && near(a.end.y, -b.end.y, 1e-8));
            assert!(near(a.mean_film_ratio, b.mean_film_ratio, 1e-8));
        }
    }

    #[test]
    fn a_segment_cut_in_pieces_gives_the_same_path_and_mean() {
        let turn = |duration| Segment { squeeze_time: 0.2, angular_speed: 2.0, duration };
        let start = PinPlace::new(0.9, 0.1);
        let whole = travel(start, &[turn(3.0)], Some(1.5)).unwrap()[0];
        let parts = travel(start, &[turn(1.0), turn(0.0), turn(2.0)], Some(1.5)).unwrap();
        assert!(near(parts[2].end.x, whole.end.x, 1e-7));
        let mean = (parts[0].mean_film_ratio + 2.0 * parts[2].mean_film_ratio) / 3.0;
        assert!(near(mean, whole.mean_film_ratio, 1e-7));
        assert_eq!(parts[1].mean_film_ratio, parts[1].end.film_ratio());
    }

    #[test]
    fn a_periodic_orbit_ends_where_it_begins_heavy_and_light() {
        for (squeeze_time, duration) in [(5e-4, 2.0), (0.14, 0.5), (1.4, 0.5)] {
            let turn = Segment { squeeze_time, angular_speed: 10.0, duration: 0.04 };
            let still = Segment { angular_speed: 0.0, duration, ..turn };
            let back = Segment { angular_speed: -10.0, ..turn };
            for length in [None, Some(1.5)] {
                for segments in [vec![still, turn], vec![still, turn, still, back]] {
                    let orbit = periodic_orbit(&segments, length).unwrap();
                    let (first, last) = (orbit.segments[0].start, orbit.segments[segments.len() - 1].end);
                    assert!((first.x - last.x).hypot(first.y - last.y) < 1e-7 * (1.0 + last.radius()));
                    assert!(orbit.circuits < 100, "{squeeze_time} {length:?}: {}", orbit.circuits);
                }
            }
        }
    }

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(24))]
        #[test]
        fn long_turning_settles_on_the_steady_bearing(speed in 0.3..50.0f64) {
            let turning = Segment { squeeze_time: 1.0, angular_speed: speed, duration: 400.0 };
            let end = travel(PinPlace::new(0.5, 0.0), &[turning], None).unwrap()[0].end;
            let e = end.eccentricity_ratio();
            let o = 1.0 - e * e;
            // Ocvirk: load over K ω, and the attitude angle. Lightly loaded pins spiral in slowly.
            let load = e / (4.0 * o * o) * (PI * PI * o + 16.0 * e * e).sqrt();
            prop_assert!(near(load * speed, 1.0, 1e-3), "{}", load * speed);
            prop_assert!((end.angle() - (PI * o.sqrt()).atan2(4.0 * e)).abs() < 1e-3);
        }

        #[test]
        fn no_rest_reaches_contact(duration in 0.0..1e9f64, e in 0.0..0.99f64, angle in -3.1..3.1f64) {
            let film = travel(PinPlace::new(e, angle), &[rest(duration)], Some(3.0)).unwrap()[0];
            prop_assert!(film.end.film_ratio() > 0.0 && film.mean_film_ratio > 0.0 && film.mean_film_ratio <= 1.0);
        }
    }
}
