//! Entry, fill and methods against the independent cases. Rotations come from a small oracle of its own here.

#![allow(clippy::unwrap_used)]

use crate::{Answer, number};
use pinfilm::lubrication::entry::{self, JointEntry, Slot};
use pinfilm::lubrication::fill::{self, Block, JointOil, Totals};
use pinfilm::lubrication::loss::{self, Articulation, Evaporation, JointSpace, Losses, Oxidation, TemperatureShare};
use pinfilm::lubrication::method::{Drip, Manual, synchronised_wait};
use pinfilm::lubrication::point::{Loop, Point, Surroundings};
use pinfilm::lubrication::rotation::Rotation;
use pinfilm::quantity::{Access, Side};
use serde_json::{Value, json};
use statrs::distribution::{ContinuousCDF, Gamma};

pub fn ours(case: &Value) -> Answer {
    let i = &case["inputs"];
    match case["quantity"].as_str()? {
        "slot_entry_time_s" => Some(finite(slot(i).entry_time(number(i, "depth_m")))),
        "slot_depth_m" => Some(json!(slot(i).depth(number(i, "time_s")).ok()?)),
        "disc_entry_time_s" => Some(json!(entry::disc_entry_time(
            number(i, "r2_m"),
            number(i, "r1_m"),
            number(i, "gap_m"),
            number(i, "viscosity_pa_s"),
            number(i, "surface_tension_n_per_m"),
            number(i, "contact_deg").to_radians(),
        ))),
        "line" => Some(line(&i["data"])),
        "fill" => Some(periodic(i)),
        "single_wait" => Some(single_wait(i)),
        "block_step" => Some(block_step(i)),
        "smallest_shot" => Some(smallest_shot(i)),
        "viscosity_window" => Some(window(i)),
        "point_score" => Some(point_score(i)),
        "methods" => methods(i["line"].as_str()?),
        _ => None,
    }
}

/// `null` stands for never.
fn finite(value: f64) -> Value {
    if value.is_finite() { json!(value) } else { Value::Null }
}

/// The rotation of a timer, by the plain loop over records.
pub fn rotation(circuit: i64, run: i64, period: i64) -> Rotation {
    let (mut cell, mut b) = (circuit, period);
    while b > 0 {
        (cell, b) = (b, cell % b);
    }
    let (mut n1, mut d1, mut n2, mut d2) = (1, circuit % period, 0, period);
    if run > cell && run < period {
        while d1 >= run || d2 >= run {
            if d2 >= d1 {
                let most = if d2 >= run { (d2 - run) / d1 + 1 } else { i64::MAX };
                let k = (d2 / d1).min(most);
                (d2, n2) = (d2 - k * d1, n2 + k * n1);
            } else {
                let most = if d1 >= run { (d1 - run) / d2 + 1 } else { i64::MAX };
                let k = (d1 / d2).min(most);
                (d1, n1) = (d1 - k * d2, n1 + k * n2);
            }
        }
    }
    Rotation { n1, d1, n2, d2, run, period, cell }
}

fn slot(i: &Value) -> Slot {
    Slot {
        gap: number(i, "gap_m"),
        viscosity: number(i, "viscosity_pa_s"),
        surface_tension: number(i, "surface_tension_n_per_m"),
        contact_angle: number(i, "contact_deg").to_radians(),
        drive: i["drive_pa_per_m"].as_f64().unwrap_or(0.0),
        eccentricity: i["eccentricity"].as_f64().unwrap_or(0.0),
    }
}

fn timer(i: &Value) -> (Rotation, f64) {
    let tick = i["tick_s"].as_f64().unwrap_or(0.001);
    let ticks = |key| (number(i, key) / tick).round() as i64;
    let (run, dwell) = (ticks("run_s"), ticks("dwell_s"));
    (rotation(ticks("circuit_s"), run, run + dwell), number(i, "circuit_s"))
}

fn periodic(i: &Value) -> Value {
    let (rotation, circuit) = timer(i);
    let oil = JointOil {
        dose: number(i, "shot_over_capacity"),
        capacity: 1.0,
        loss_rate: number(i, "k_per_s"),
        uptake: i["s_per_s"].as_f64().unwrap_or(0.0),
    };
    let f = fill::periodic_fill(&rotation, circuit, &oil);
    json!({"mean_fill": f.mean, "min_fill": f.lowest, "overflow_per_shot": f.overflow, "after_fill": f.after,
           "never": f.never_reached})
}

fn single_wait(i: &Value) -> Value {
    let oil = JointOil {
        dose: number(i, "shot"),
        capacity: number(i, "capacity"),
        loss_rate: number(i, "k_per_s"),
        uptake: number(i, "s_per_s"),
    };
    let s = fill::single_wait(number(i, "wait_s"), &oil);
    json!({"after": s.after, "before": s.before, "mean": s.mean, "overflow": s.overflow})
}

fn block_step(i: &Value) -> Value {
    let oil = JointOil {
        dose: number(i, "dose"),
        capacity: number(i, "capacity"),
        loss_rate: number(i, "k_per_s"),
        uptake: number(i, "s_per_s"),
    };
    let mut t = Totals::NONE;
    let waits = i["waits"].as_i64().unwrap();
    let end = Block::new(number(i, "wait_s"), waits, &oil).cross(number(i, "fill_start"), &mut t);
    json!({"fill_end": end, "sum_after": t.after, "integral": t.integral, "overflow": t.overflow, "lowest": t.lowest})
}

fn smallest_shot(i: &Value) -> Value {
    // this case is in whole seconds, as the table of the same loops
    let ticks = |key| number(i, key).round() as i64;
    let rotation = rotation(ticks("circuit_s"), ticks("run_s"), ticks("run_s") + ticks("dwell_s"));
    let oil = JointOil { dose: 0.0, capacity: number(i, "capacity"), loss_rate: number(i, "k_per_s"), uptake: 0.0 };
    json!(fill::smallest_shot(&rotation, number(i, "circuit_s"), &oil, number(i, "floor")))
}

fn point_score(i: &Value) -> Value {
    let point = Point {
        tension: number(i, "tension"),
        temperature: number(i, "temperature_c"),
        time_available: number(i, "t_available"),
        side: match i["side"].as_str().unwrap() {
            "top" => Side::Top,
            "bottom" => Side::Bottom,
            _ => Side::Beside,
        },
        open_share: number(i, "open_share"),
        time_to_wash: i["t_wash"].as_f64(),
        access: match i["access"].as_str().unwrap() {
            "open" => Access::Open,
            "guarded" => Access::Guarded,
            _ => Access::Climb,
        },
        surroundings: Surroundings::default(),
    };
    let of = Loop {
        tension: (number(i, "t_min_n"), number(i, "t_max_n")),
        temperature: (number(i, "tc_min"), number(i, "tc_max")),
        flash_point: number(i, "flash_c"),
        entry_time: number(i, "t_entry"),
    };
    let s = point.score(&of);
    json!({"score": s.score, "parts": {"slack": s.slack, "time": s.time, "cool": s.cool, "gravity": s.gravity,
           "gap": s.gap, "wash": s.wash, "access": s.access}})
}

/// The five invented lines that the cases name.
const LINES: &str = r#"{
"oven": {"N": 900, "pitch": 0.1, "v": 0.075, "j": {"d": 0.014, "c": 0.00015, "Lj": 0.04, "Dbo": 0.02, "hg": 0.0006, "Lg": 0.01, "ecc": 1.0}, "T": [[300, 200.0], [900, 60.0]], "Trun": 60.0, "alphas": [30, 30, 20, 20], "Noack": 4.0, "ox": [150.0, 200.0], "v40": 220.0, "v100": 25.0, "rho": 900.0, "air": 1.0, "wash": [0, 0], "R": 600, "D": 3000, "shot": 3e-08, "capt": 0.9, "Tap": 60.0, "t_av": 240.0, "turn_r": 0.48, "hours": 6000},
"slat": {"N": 504, "pitch": 0.0635, "v": 0.254, "j": {"d": 0.01, "c": 0.0001, "Lj": 0.026, "Dbo": 0.015, "hg": 0.0005, "Lg": 0.008, "ecc": 1.0}, "T": [[126, 20.0]], "Trun": 20.0, "alphas": [22.5, 22.5, 22.5, 22.5], "Noack": 10.0, "ox": [1000.0, 100.0], "v40": 150.0, "v100": 15.0, "rho": 880.0, "air": 0.3, "wash": [1.736111111111111e-05, 0.6], "R": 120, "D": 1680, "shot": 1e-08, "capt": 0.85, "Tap": 20.0, "t_av": 50.0, "turn_r": 0.165, "hours": 4000},
"paint": {"N": 2400, "pitch": 0.1, "v": 0.05, "j": {"d": 0.012, "c": 0.0002, "Lj": 0.03, "Dbo": 0.018, "hg": 0.0008, "Lg": 0.009, "ecc": 1.0}, "T": [[600, 160.0], [4200, 35.0]], "Trun": 35.0, "alphas": [15, 15, 15, 15, 15, 15, 15, 15, 15, 15, 15, 15, 15, 15, 15, 15, 15, 15, 15, 15, 15, 15, 15, 15], "Noack": 6.0, "ox": [100.0, 160.0], "v40": 150.0, "v100": 17.0, "rho": 900.0, "air": 0.6, "wash": [0, 0], "R": 1500, "D": 12900, "shot": 2e-08, "capt": 0.85, "Tap": 35.0, "t_av": 120.0, "turn_r": 0.6, "hours": 4000},
"floor": {"N": 620, "pitch": 0.2, "v": 0.1, "j": {"d": 0.03, "c": 0.0003, "Lj": 0.07, "Dbo": 0.042, "hg": 0.001, "Lg": 0.014, "ecc": 1.0}, "T": [[1240, 25.0]], "Trun": 25.0, "alphas": [45, 45, 45, 45], "Noack": 8.0, "ox": [1000.0, 100.0], "v40": 320.0, "v100": 24.0, "rho": 895.0, "air": 0.3, "wash": [0, 0], "R": 900, "D": 27900, "shot": 1e-07, "capt": 0.85, "Tap": 25.0, "t_av": 300.0, "turn_r": 0.52, "hours": 4000},
"pack": {"N": 210, "pitch": 0.01905, "v": 1.5, "j": {"d": 0.00572, "c": 6e-05, "Lj": 0.0154, "Dbo": 0.0082, "hg": 0.00025, "Lg": 0.005, "ecc": 1.0}, "T": [[2.667, 55.0]], "Trun": 55.0, "alphas": [17, 17, 17, 17], "Noack": 9.0, "ox": [1000.0, 100.0], "v40": 100.0, "v100": 11.2, "rho": 880.0, "air": 0.3, "wash": [0, 0], "R": 5, "D": 595, "shot": 1e-09, "capt": 0.5, "Tap": 55.0, "t_av": 600.0, "turn_r": 0.064, "hours": 6000}
}"#;

pub fn named(line: &str) -> Value {
    let lines: Value = serde_json::from_str(LINES).unwrap();
    lines[if line == "packing" { "pack" } else { line }].clone()
}

/// What the cases hold fixed: surface tension, contact angle, heat of vaporisation, ring share, loss and so on.
const SURFACE_TENSION: f64 = 0.03;
const CONTACT: f64 = 20.0;
const HEAT: f64 = 1e5;
const CUP: f64 = 23.0;
const RING: f64 = 0.5;
const PUMPED: (f64, f64, f64) = (5e-4, 0.5, 0.1);
const SOLIDS: (f64, f64) = (0.002, 0.05);
pub const GAPS: f64 = 2.0;

/// Viscosity (Pa s) by ASTM D341 with v + 0.7 through 40 and 100 °C, at constant density, as these cases have it.
fn viscosity(d: &Value, celsius: f64) -> f64 {
    let z = |key| (number(d, key) + 0.7).log10().log10();
    let t = |celsius: f64| (celsius + 273.15f64).log10();
    let slope = (z("v40") - z("v100")) / (t(100.0) - t(40.0));
    let zz = z("v40") - slope * (t(celsius) - t(40.0));
    (10f64.powf(10f64.powf(zz)) - 0.7) * 1e-6 * number(d, "rho")
}

pub struct Line {
    pub entry: JointEntry,
    pub capacity: loss::Capacity,
    pub losses: Losses,
    pub circuit: f64,
    pub joints: f64,
    pub applied: f64,
    pub running: f64,
    pub years: f64,
}

pub fn build(d: &Value) -> Line {
    let j = &d["j"];
    let (rho, v) = (number(d, "rho"), number(d, "v"));
    let contact = CONTACT.to_radians();
    let entry = JointEntry {
        plate_gap: number(j, "hg"),
        plate_path: number(j, "Lg"),
        pin_diameter: number(j, "d"),
        clearance: number(j, "c"),
        eccentricity: number(j, "ecc"),
        depth: number(j, "Lj") / 2.0,
        surface_tension: SURFACE_TENSION,
        contact_angle: contact,
        density: rho,
    };
    let throw = entry::GRAVITY + v * v / number(d, "turn_r");
    let capacity = JointSpace {
        pin_diameter: entry.pin_diameter,
        clearance: entry.clearance,
        joint_length: number(j, "Lj"),
        bush_diameter: number(j, "Dbo"),
        plate_gap: entry.plate_gap,
        retained_width: entry::retained_width(entry.plate_gap, entry.plate_path, SURFACE_TENSION, contact, rho, throw),
        ring_share: RING,
    }
    .capacity();
    let joints = number(d, "N");
    let circuit = joints * number(d, "pitch") / v;
    let rows: Vec<(f64, f64)> =
        d["T"].as_array().unwrap().iter().map(|row| (row[0].as_f64().unwrap(), row[1].as_f64().unwrap())).collect();
    let all: f64 = rows.iter().map(|row| row.0).sum();
    let temperatures: Vec<TemperatureShare> =
        rows.iter().map(|row| TemperatureShare { temperature: row.1, share: row.0 / all }).collect();
    let evaporation = Evaporation {
        noack_loss: number(d, "Noack") / 100.0,
        heat: HEAT,
        air: number(d, "air"),
        noack_mass_per_area: CUP,
        mass_per_area: rho * capacity.total / capacity.exposed_area,
    };
    let ox = d["ox"].as_array().unwrap();
    let oxidation = Oxidation { half_life: ox[0].as_f64().unwrap() * 3600.0, reference: ox[1].as_f64().unwrap() };
    let (applied, running) = (viscosity(d, number(d, "Tap")), viscosity(d, number(d, "Trun")));
    let articulations: Vec<Articulation> = d["alphas"]
        .as_array()
        .unwrap()
        .iter()
        .map(|a| Articulation { count: 2.0, angle: a.as_f64().unwrap().to_radians(), viscosity: running })
        .collect();
    let wash = d["wash"].as_array().unwrap();
    let (per_second, removed) = (wash[0].as_f64().unwrap(), wash[1].as_f64().unwrap());
    let losses = Losses {
        evaporation: loss::mean_rate(&temperatures, |t| evaporation.rate(t)),
        oxidation: loss::mean_rate(&temperatures, |t| oxidation.rate(t)),
        articulation: loss::articulation_rate(
            &articulations,
            circuit,
            entry.eccentricity,
            PUMPED.0,
            PUMPED.1,
            PUMPED.2,
        ),
        wash: if per_second > 0.0 { loss::wash_rate(removed, 1.0 / per_second) } else { 0.0 },
        ..Losses::default()
    };
    Line { entry, capacity, losses, circuit, joints, applied, running, years: number(d, "hours") * 3600.0 }
}

fn line(d: &Value) -> Value {
    let l = build(d);
    let k = l.losses.total();
    let (run, period) = (number(d, "R") * 1000.0, (number(d, "R") + number(d, "D")) * 1000.0);
    let rotation = rotation((1000.0 * l.circuit).round() as i64, run as i64, period as i64);
    let entered = l.entry.entered_share(l.applied, number(d, "t_av"));
    let oil = JointOil {
        dose: number(d, "shot") * GAPS * number(d, "capt") * entered,
        capacity: l.capacity.total,
        loss_rate: k,
        uptake: 0.0,
    };
    let f = fill::periodic_fill(&rotation, l.circuit, &oil);
    let solids =
        loss::solids_rate(0.5 * l.capacity.total, l.losses.evaporation, l.losses.oxidation, SOLIDS.0, SOLIDS.1);
    json!({
        "eta_ap": l.applied,
        "eta_run": l.running,
        "k_evap": l.losses.evaporation,
        "k_oxid": l.losses.oxidation,
        "k_art": l.losses.articulation,
        "k_wash": l.losses.wash,
        "k": k,
        "half_life_h": l.losses.half_life() / 3600.0,
        "t_gap": l.entry.plate_time(l.applied),
        "t_annulus": l.entry.annulus_time(l.applied),
        "eta_max": entry::most_viscous(number(d, "t_av"), l.entry.time(1.0)),
        "never": f.never_reached,
        "joints": (l.joints * (1.0 - f.never_reached)).round() as i64,
        "worst_h": rotation.worst_wait() as f64 * l.circuit / 3600.0,
        "mean_h": rotation.mean_wait() * l.circuit / 3600.0,
        "demand_ul_h": fill::demand(k, 0.5, l.capacity.total) * 1e9 * 3600.0,
        "residue_y": loss::time_to_block(l.capacity.annulus, solids) / l.years,
        "capacity_m3": l.capacity.total,
        "mean_fill": f.mean,
        "min_fill": f.lowest,
        "overflow_m3": f.overflow,
    })
}

fn window(i: &Value) -> Value {
    let d = named(i["line"].as_str().unwrap());
    let l = build(&d);
    let (loss, exponent, reference) = PUMPED;
    let pump = entry::pumping_viscosity(
        number(i, "keep"),
        number(i, "n_articulations"),
        number(i, "alpha_deg").to_radians(),
        l.entry.eccentricity,
        loss,
        exponent,
        reference,
    );
    let film =
        entry::film_viscosity(number(i, "film_min_m"), number(i, "film_time_s"), l.entry.plate_path, l.entry.density);
    json!({"eta_max": entry::most_viscous(number(i, "t_available"), l.entry.time(1.0)),
           "eta_min": pump.max(film), "eta_min_pump": pump, "eta_min_film": film})
}

/// Mean of exp(-k t) and the 95 % quantile (s) of manual visits: gamma intervals, some missed.
fn manual_visits(mean: f64, cv: f64, missed: f64, k: f64) -> (f64, f64) {
    let shape = 1.0 / (cv * cv);
    let z = (1.0 + k * mean * cv * cv).powf(-shape);
    let below = |t: f64| -> f64 {
        (1..=20)
            .map(|j| {
                let rounds = Gamma::new(f64::from(j) * shape, shape / mean).unwrap();
                (1.0 - missed) * missed.powi(j - 1) * rounds.cdf(t)
            })
            .sum()
    };
    let (mut low, mut high) = (0.0, 400.0 * mean);
    for _ in 0..200 {
        let middle = 0.5 * (low + high);
        if below(middle) < 0.95 { low = middle } else { high = middle }
    }
    ((1.0 - missed) * z / (1.0 - missed * z), high)
}

fn methods(name: &str) -> Answer {
    let d = named(name);
    let l = build(&d);
    let (k, capacity) = (l.losses.total(), l.capacity.total);
    let target = 0.5;
    let q = fill::demand(k, target, capacity);
    let litres = |rate: f64| rate * l.years * 1000.0;
    let in_joint = litres(q * l.joints);
    let oil = |dose| JointOil { dose, capacity, loss_rate: k, uptake: 0.0 };

    let wait = synchronised_wait(l.circuit, k, 0.6);
    let synchronised = fill::single_wait(wait, &oil(q * wait));

    let (run, period) = (number(&d, "R"), number(&d, "R") + number(&d, "D"));
    let rotation = rotation((1000.0 * l.circuit).round() as i64, (1000.0 * run) as i64, (1000.0 * period) as i64);
    let spray = fill::periodic_fill(&rotation, l.circuit, &oil(q * l.circuit * period / run));

    let (drop, capture) = (4e-8, 0.12);
    let drip = Drip::new(q * l.circuit, drop, 1.0, l.circuit);
    let drops = q * l.joints / capture / drop * 60.0;

    let (interval, cv, missed, capture_by_hand) = (28800.0, 0.3, 0.05, 0.3);
    let (kept, p95) = manual_visits(interval, cv, missed, k);
    let dose = q * interval / (1.0 - missed);
    let manual = Manual { interval, missed, dose, kept };
    let full = Manual { dose: capacity, ..manual };
    Some(json!({
        "synchronised": {"applied_l_y": in_joint / 0.9, "in_joint_l_y": litres(k * synchronised.mean * l.joints),
                         "mean": synchronised.mean / capacity, "low": synchronised.before / capacity},
        "timed_spray": {"applied_l_y": in_joint / 0.25, "in_joint_l_y": litres(k * spray.mean * capacity * l.joints),
                        "mean": spray.mean, "low": spray.lowest, "never": spray.never_reached},
        "drip": {"applied_l_y": in_joint / capture, "p_pass": drip.chance,
                 "mean": drip.mean_without_overflow(k) / capacity, "cv": drip.spread(k), "drops_per_min": drops},
        "manual": {"applied_l_y": in_joint / (capture_by_hand * (1.0 - missed)),
                   "mean_if_full": manual.mean_if_filled(k), "dose_over_capacity": dose / capacity,
                   "p95_h": p95 / 3600.0, "before_p95_if_full": full.fill_before(k, capacity, p95)},
    }))
}

/// Fills of whole lines from an independent implementation: (mean, k 1/h, waits h with weights, fill at age 0, effective fill).
#[test]
fn effective_fill_of_whole_lines() {
    use pinfilm::lubrication::fill::{AgeLaw, Waiting};
    let lines = [
        (
            0.2350921709909668,
            0.003206958107729476,
            [165.84093435538233, 227.76196925283318, 310.5865860413031],
            [0.23550611986259953, 0.3234384673451919, 0.4410554127922085],
            0.34001421802289244,
            0.21923307229732153,
        ),
        (
            0.9890436654819063,
            0.002211737370259939,
            [8932.0 / 3600.0, 35728.0 / 3600.0, 44660.0 / 3600.0],
            [0.001888888888888889, 0.9697777777777777, 0.028333333333333332],
            1.0,
            0.9888428940886609,
        ),
        (
            0.2406019429585345,
            0.03272653532915648,
            [63308.5348 / 3600.0, 240667.2352 / 3600.0, 622094.8188 / 3600.0],
            [0.0683625369012475, 0.25988001142748307, 0.6717574516712694],
            0.8723521650262837,
            0.09763815105831541,
        ),
        (
            0.49483679154650473,
            0.027753669352459178,
            [2013.0 / 3600.0, 8052.0 / 3600.0, 10065.0 / 3600.0],
            [0.14694444444444443, 0.31555555555555553, 0.5375],
            0.5106956451282825,
            0.4942411773957637,
        ),
    ];
    for (mean, k, waits, weights, start, expected) in lines {
        let waits: Vec<Waiting> = waits.iter().zip(weights).map(|(&wait, weight)| Waiting { wait, weight }).collect();
        let law = AgeLaw::with_mean(mean, k, &waits);
        assert!((law.start / start - 1.0).abs() < 1e-9, "{} {start}", law.start);
        let effective = law.effective_fill(0.1);
        assert!((effective / expected - 1.0).abs() < 1e-9, "{effective} {expected}");
    }
}

/// Settled fills of whole lines under timers from an independent implementation, circuits and runs in ms.
#[test]
fn settled_fill_of_whole_lines() {
    let check =
        |what: &str, ours: f64, theirs: f64| assert!((ours / theirs - 1.0).abs() < 1e-9, "{what} {ours} {theirs}");
    // spray on a washed slat line; oil per shot, capacity uL; k 1/h
    let oil = |dose, capacity, k: f64| JointOil { dose, capacity, loss_rate: k / 3600.0, uptake: 0.0 };
    let slat = fill::periodic_fill(
        &rotation(183_000, 61_000, 3_600_000),
        183.0,
        &oil(3.822282038649172, 295.16441077721163, 0.02759219249958006),
    );
    check("slat mean", slat.mean, 0.1564412480771364);
    check("slat lowest", slat.lowest, 0.14499963398456062);
    let slat = fill::periodic_fill(
        &rotation(2_013_000, 3_600_000, 10_800_000),
        2013.0,
        &oil(6.8, 295.16441077721163, 0.027753669352459178),
    );
    check("slat counted mean", slat.mean, 0.49483679154650473);
    check("slat counted lowest", slat.lowest, 0.45285162043152805);
    // spray on a packing line: the pattern overflows
    let packing = fill::periodic_fill(
        &rotation(11_024, 30_050, 1_800_000),
        11.0236,
        &oil(0.10565723793677205, 15.595034793024915, 0.027044001279815457),
    );
    check("packing mean", packing.mean, 0.9933704342358074);
    check("packing lowest", packing.lowest, 0.9866740854109066);
    // synchronised in an oven: always full
    let oven = fill::periodic_fill(
        &rotation(8_932_000, 9_000_000, 36_000_000),
        8932.0,
        &oil(18.0, 657.0326875717683, 0.002211737370259939),
    );
    assert!(oven.always_full);
    check("oven mean", oven.mean, 0.9890436654819063);
    check("oven lowest", oven.lowest, 0.9729351672538044);
}

/// Drip and manual of whole lines from an independent implementation.
#[test]
fn random_methods_of_whole_lines() {
    let check =
        |what: &str, ours: f64, theirs: f64| assert!((ours / theirs - 1.0).abs() < 1e-9, "{what} {ours} {theirs}");
    let (k, circuit, capacity) = (0.03272653532915648 / 3600.0, 11.0236, 15.595034793024915);
    let drip = Drip::new(3.174999999999999e-05 * 40.0, 40.0, 1.0, circuit);
    let three = pinfilm::lubrication::coverage::drip_waits(circuit, drip.chance).unwrap();
    let waits: Vec<_> =
        three.wait.into_iter().zip(three.weight).map(|(wait, weight)| fill::Waiting { wait, weight }).collect();
    let mean = drip.mean_fill(k, capacity);
    check("drip mean", mean, 0.2406019429585345);
    let law = fill::AgeLaw::with_mean(mean, k, &waits);
    check("drip after", law.start, 0.8723521650262837);
    check("drip lowest", law.fill(three.worst), 6.828011086885911e-05);

    let k = 0.003206958107729476 / 3600.0;
    let interval = 336.0 * 3600.0 * 6000.0 / 8760.0;
    let (kept, p95) = manual_visits(interval, 0.3, 0.05, k);
    let manual = Manual { interval, missed: 0.05, dose: 120.0, kept };
    check("manual mean", manual.mean_fill(k, 657.0326875717683), 0.2350921709909668);
    check("manual p95", p95 / 3600.0, 404.52381415612757);
    check("manual lowest", manual.fill_before(k, 657.0326875717683, p95), 0.0953571062002324);
}

/// Tables of an independent implementation: entry times, fills in ticks of 1 s, one wait.
#[test]
fn tables() {
    let check = |what: &str, ours: f64, theirs: f64, tol: f64| {
        assert!((ours / theirs - 1.0).abs() < tol, "{what} {ours} {theirs}");
    };
    let contact = 20f64.to_radians();
    let slot = |gap, viscosity, drive| Slot {
        gap,
        viscosity,
        surface_tension: 0.03,
        contact_angle: contact,
        drive,
        eccentricity: 0.0,
    };
    check("level", slot(5e-5, 0.1, 0.0).entry_time(0.01), 21.283555, 1e-7);
    check("down", slot(6e-4, 0.08, 8825.985).entry_time(0.01), 0.89088410, 1e-7);
    check("up", slot(1e-4, 0.5, -8629.852).entry_time(0.02), 269.53308, 1e-7);
    check("disc", entry::disc_entry_time(0.01, 0.02, 6e-4, 0.1, 0.03, contact), 1.4310581, 1e-7);

    let oil = |dose, loss_rate, uptake| JointOil { dose, capacity: 1.0, loss_rate, uptake };
    for (circuit, run, dwell, dose, k, mean, lowest, overflow, after) in [
        (1237, 300, 3300, 0.01, 1e-6, 0.67367286, 0.64800249, 0.0, 0.67877536),
        (1000, 120, 437, 0.02, 1e-5, 0.43087971, 0.40551432, 0.0, 0.44111066),
        (1440, 300, 6900, 0.3, 5e-6, 0.20462793, 0.96464029, 0.26464029, 1.0),
    ] {
        let f = fill::periodic_fill(&rotation(circuit, run, run + dwell), circuit as f64, &oil(dose, k, 0.0));
        check("mean", f.mean, mean, 2e-8);
        check("lowest", f.lowest, lowest, 2e-8);
        check("after", f.after, after, 2e-8);
        assert!((f.overflow - overflow).abs() < 1e-8);
    }
    let single = fill::single_wait(86400.0, &oil(0.2, 2e-6, 1e-6));
    check("after", single.after, 0.76028598, 1e-7);
    check("before", single.before, 0.56028598, 1e-7);
    check("mean", single.mean, 0.65740741, 1e-7);
}
