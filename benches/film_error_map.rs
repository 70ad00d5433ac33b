//! How far the closed form of a joint's film lies from the path of the pin followed in time, over the practical range.
//!
//! `cargo bench --bench film_error_map` prints the map; with `-- --write` it writes `docs/film-error-map.md`. The limits of
//! the caution `brief_turn` are read off it: reduced angle 3 and load number 100.

#![allow(missing_docs, clippy::unwrap_used, clippy::print_stdout)]

use pinfilm::joint::orbit::{Segment, periodic_orbit};
use pinfilm::joint::{Pair, Turn, turn_film};
use rayon::prelude::*;
use std::f64::consts::PI;
use std::fmt::Write;

/// One joint and what both ways say of it: closed form over orbit, less one.
struct Place {
    reduced_angle: f64,
    load_number: f64,
    rests: f64,
    start: f64,
    mean: f64,
    end: f64,
}

/// Film of a joint that turns by `angle`, rests `rests` turn times, turns back and rests again.
fn place(length_to_diameter: f64, load_number: f64, angle: f64, rests: f64) -> Place {
    let (radius, clearance, load, turn_time) = (5e-3, 50e-6, 1000.0, 0.1);
    let length = 2.0 * radius * length_to_diameter;
    let angular_speed = angle / turn_time;
    let viscosity = load * clearance * clearance / (load_number * angular_speed * radius * radius * radius * length);
    let pair = Pair::new(2.0 * radius, 2.0 * (radius + clearance), length, 1.0).unwrap();
    let rest_time = rests * turn_time;
    let fast = turn_film(&pair, viscosity, load, &Turn { angular_speed, angle, rest_time, rest_load: load }).unwrap();
    let squeeze_time = viscosity * radius * length.powi(3) / (load * clearance * clearance);
    let rest = Segment { squeeze_time, angular_speed: 0.0, duration: rest_time };
    let turn = |sense: f64| Segment { squeeze_time, angular_speed: sense * angular_speed, duration: turn_time };
    let orbit = periodic_orbit(&[rest, turn(1.0), rest, turn(-1.0)], Some(length_to_diameter)).unwrap();
    let film = orbit.segments[1];
    let off = |fast: f64, orbit: f64| fast / (clearance * orbit) - 1.0;
    Place {
        reduced_angle: angle / (fast.steady / clearance).sqrt(),
        load_number,
        rests,
        start: off(fast.start, film.start.film_ratio()),
        mean: off(fast.mean, film.mean_film_ratio),
        end: off(fast.end, film.end.film_ratio()),
    }
}

/// Least and greatest of a kind of error in per cent.
fn range(places: &[&Place], error: impl Fn(&Place) -> f64) -> String {
    let (low, high) = places
        .iter()
        .fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), place| (low.min(error(place)), high.max(error(place))));
    format!("{:+.1} .. {:+.1}", 100.0 * low, 100.0 * high)
}

fn main() {
    let mut joints = Vec::new();
    for length_to_diameter in [0.7, 1.0, 1.5, 2.0, 3.0, 4.0] {
        for exponent in 0..=12 {
            for teeth in [36.0, 18.0, 12.0, 8.0, 6.0] {
                for rests in [5.0, 15.0, 50.0, 150.0, 500.0] {
                    let load_number = 10f64.powf(1.0 + 0.5 * f64::from(exponent));
                    joints.push((length_to_diameter, load_number, 2.0 * PI / teeth, rests));
                }
            }
        }
    }
    let places: Vec<Place> = joints.par_iter().map(|(l, w, a, r)| place(*l, *w, *a, *r)).collect();
    let mut page = String::from(
        "# Closed form of the film against the orbit\n\n\
         Written by `cargo bench --bench film_error_map -- --write`. Error of the closed form that `evaluate` uses against the\n\
         periodic path of the pin followed in time (mobility method with the same closure for the length), in per cent, least\n\
         and greatest. Joints of length/diameter 0.7 to 4, 6 to 36 teeth, load numbers W c²/(η ω R³ L) of 10 to 10⁷.\n\
         The *reduced angle* is the angle of articulation over the square root of the steady film ratio.\n\n\
         | reduced angle | rest, turn times | joints | start | mean | end |\n|---|---|---|---|---|---|\n",
    );
    let bands = [(0.0, 1.5), (1.5, 3.0), (3.0, 5.0), (5.0, 8.0), (8.0, 15.0), (15.0, f64::INFINITY)];
    for (low, high) in bands {
        for (least, most) in [(0.0, 10.0), (10.0, 30.0), (30.0, f64::INFINITY)] {
            let within: Vec<&Place> = places
                .iter()
                .filter(|place| (low..high).contains(&place.reduced_angle) && (least..most).contains(&place.rests))
                .collect();
            if within.is_empty() {
                continue;
            }
            let rests = match least {
                0.0 => "5",
                10.0 => "15",
                _ => "50 to 500",
            };
            let (start, mean, end) =
                (range(&within, |p| p.start), range(&within, |p| p.mean), range(&within, |p| p.end));
            let band = if high.is_finite() { format!("{low} to {high}") } else { format!("above {low}") };
            writeln!(page, "| {band} | {rests} | {} | {start} | {mean} | {end} |", within.len()).unwrap();
        }
    }
    let kept = |place: &&Place| place.reduced_angle >= 3.0 && place.load_number >= 100.0 && place.rests >= 50.0;
    let inside: Vec<&Place> = places.iter().filter(kept).collect();
    let brief: Vec<&Place> = places.iter().filter(|p| p.reduced_angle < 3.0 || p.load_number < 100.0).collect();
    let surest = brief.iter().filter(|p| p.mean > 0.1).count();
    write!(
        page,
        "\nWithout the caution `brief_turn` (reduced angle at least 3, load number at least 100) and after rests of at least 50\n\
         turn times, as conveyor joints have them, the mean film is off by {} % over {} joints. With it ({} joints) the mean\n\
         film is off by {} %; it is more than 10 % too thick in {} of them.\n",
        range(&inside, |p| p.mean),
        inside.len(),
        brief.len(),
        range(&brief, |p| p.mean),
        surest,
    )
    .unwrap();
    println!("{page}");
    if std::env::args().any(|argument| argument == "--write") {
        std::fs::write(concat!(env!("CARGO_MANIFEST_DIR"), "/docs/film-error-map.md"), page).unwrap();
    }
}
