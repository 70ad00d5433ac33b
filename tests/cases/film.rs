//! Contact, films, asperities and friction of joints and rollers.

use crate::{Answer, number};
use pinfilm::joint::{
    ContactArc, Eccentricity, Lubricant, Pair, RoughSurface, STEEL, SqueezeFilm, Turn, articulating_in_full,
    asperity_integral, eccentricity_short, finite_bearing_eccentricity, height_ratio, rolling_in_full, share_load,
    squeeze_time_short, turn_film,
};
use pinfilm::oil::{Liquid, ViscosityLine, grade_midpoint, pressure_viscosity, roelands};
use pinfilm::{Error, Result};
use serde_json::{Value, json};
use std::f64::consts::PI;

pub fn ours(case: &Value) -> Answer {
    answer(case["quantity"].as_str()?, &case["inputs"])
        .map(|answer| answer.unwrap_or_else(|error: Error| json!(format!("error: {error}"))))
}

fn answer(quantity: &str, input: &Value) -> Option<Result<Value>> {
    let get = |key: &str| number(input, key);
    Some(match quantity {
        "conformal contact half angle rad, peak pressure x R / w" => {
            let pair = cylinders(0.01, get("radial_clearance_m"), get("length_m"));
            let arc = ContactArc::new(&pair, get("load_n"));
            Ok(json!([arc.half_angle(), arc.peak_pressure() * pair.radius * pair.length / get("load_n")]))
        }
        "eccentricity_short" => {
            eccentricity_short(get("sommerfeld"), get("length_to_diameter")).map(|e| json!(e.ratio()))
        }
        "squeeze_time_short_s half" => {
            let (from, to) = (Eccentricity::from_ratio(get("e1")), Eccentricity::from_ratio(get("e2")));
            let half = SqueezeFilm::Half;
            Ok(json!(squeeze_time_short(
                &cylinders(get("R"), get("c"), get("L")),
                get("eta"),
                get("W"),
                from,
                to,
                half
            )))
        }
        "finite closure: 1-eps from wbar=W c2/(eta omega R3 L)" => {
            finite_bearing_eccentricity(get("wbar"), get("length_to_diameter")).map(|e| json!(e.film_ratio()))
        }
        "articulation film m" => {
            let turn = Turn {
                angular_speed: get("omega"),
                angle: get("alpha_rad"),
                rest_time: get("t_rest_s"),
                rest_load: get("W"),
            };
            turn_film(&cylinders(get("R"), get("c"), get("L")), get("eta"), get("W"), &turn)
                .map(|film| json!({"start": film.start, "mean": film.mean, "end": film.end, "steady": film.steady}))
        }
        "asperity_integral" => Ok(json!(asperity_integral(get("height_ratio"), get("order")))),
        "load share: H, asperity share" => {
            let (lambda, pressure, stiffness) = (get("film_over_sigma"), get("contact_pressure_pa"), get("K_pa"));
            share_load(lambda, pressure, stiffness)
                .and_then(|sharing| Ok(json!([height_ratio(lambda, pressure, stiffness)?, sharing.asperity_share])))
        }
        "mu_joint and parts, five lines" => Line::named(input["line"].as_str()?)?.joint(),
        "mu_roller and parts, five lines" => Line::named(input["line"].as_str()?)?.roller(&input["roller"]),
        "mu_joint against fill" => {
            let line = Line { fill: get("fill"), ..Line::named(input["line"].as_str()?)? };
            line.joint().map(|all| all["mu"].clone())
        }
        _ => return None,
    })
}

fn cylinders(radius: f64, radial_clearance: f64, length: f64) -> Pair {
    Pair { radius, radial_clearance, length, conformity: 1.0, elasticity: STEEL }
}

/// The invented lines of the cases; lengths in mm.
#[derive(Clone, Copy)]
struct Line {
    load: f64,
    pin: f64,
    bore: f64,
    length: f64,
    pitch: f64,
    teeth: f64,
    speed: f64,
    temperature: f64,
    grade: f64,
    index: f64,
    fill: f64,
    circuit: f64,
}

const SURFACE: RoughSurface = RoughSurface {
    roughness: 0.8e-6,
    asperity_stiffness: 134_100_202.968_589_53,
    dry_friction: 0.30,
    boundary_fill: 0.10,
    starvation_exponent: 1.0,
    film_factor: 1.0,
};

impl Line {
    fn named(name: &str) -> Option<Line> {
        let row = match name {
            "heavy floor" => [25000.0, 15.0, 15.1, 46.0, 160.0, 8.0, 0.1, 25.0, 220.0, 95.0, 0.7, 600.0],
            "oven" => [5000.0, 10.0, 10.1, 34.0, 100.0, 10.0, 0.2, 200.0, 320.0, 120.0, 0.3, 300.0],
            "paint" => [4000.0, 15.9, 16.6, 20.0, 102.0, 18.0, 0.1, 60.0, 220.0, 95.0, 0.5, 1800.0],
            "wash-down slat" => [3000.0, 8.5, 8.6, 28.0, 63.0, 9.0, 0.25, 20.0, 150.0, 95.0, 0.2, 200.0],
            "packing 08B" => [500.0, 4.45, 4.5, 11.3, 12.7, 19.0, 1.5, 50.0, 100.0, 95.0, 0.7, 8.0],
            _ => return None,
        };
        let [load, pin, bore, length, pitch, teeth, speed, temperature, grade, index, fill, circuit] = row;
        Some(Line { load, pin, bore, length, pitch, teeth, speed, temperature, grade, index, fill, circuit })
    }

    fn oil(&self) -> Result<Lubricant> {
        let line = ViscosityLine::from_index(grade_midpoint(self.grade)?, self.index)?;
        let viscosity = Liquid { line, density_15: 890.0 }.dynamic_viscosity(self.temperature)?;
        Ok(Lubricant {
            viscosity,
            pressure_viscosity: pressure_viscosity(viscosity),
            boundary_friction: 0.12,
            limiting_friction: 0.06,
        })
    }

    fn joint(&self) -> Result<Value> {
        let oil = self.oil()?;
        let pair = Pair::new(self.pin / 1e3, self.bore / 1e3, self.length / 1e3, 1.0)?;
        let angle = 2.0 * PI / self.teeth;
        let angular_speed = angle * self.speed / (self.pitch / 1e3);
        let turn = Turn { angular_speed, angle, rest_time: self.circuit / 4.0, rest_load: self.load };
        let at_pressure = |pressure| roelands(oil.viscosity, oil.pressure_viscosity, pressure);
        let contact = articulating_in_full(&pair, &SURFACE, &oil, self.load, &turn, at_pressure)?;
        let friction = contact.friction(self.fill, &SURFACE, &oil)?;
        Ok(json!({
            "eta": oil.viscosity,
            "om": angular_speed,
            "half_angle_deg": contact.arc.half_angle().to_degrees(),
            "p_contact": contact.arc.mean_pressure,
            "h_rigid": contact.rigid_film,
            "h_elastic": contact.elastic_film,
            "coverage": contact.coverage,
            "lam": friction.lambda,
            "H": contact.height_ratio(self.fill, &SURFACE)?,
            "share": friction.asperity_share,
            "mu_viscous": friction.viscous,
            "mu_b": friction.boundary,
            "mu": friction.coefficient,
        }))
    }

    fn roller(&self, roller: &Value) -> Result<Value> {
        let oil = self.oil()?;
        let length = self.length / 2.0;
        let pair =
            Pair::new(number(roller, "bush_od_mm") / 1e3, number(roller, "roller_bore_mm") / 1e3, length / 1e3, 1.0)?;
        let angular_speed = 2.0 * self.speed / (number(roller, "roller_d_mm") / 1e3);
        let at_pressure = |pressure| roelands(oil.viscosity, oil.pressure_viscosity, pressure);
        let contact = rolling_in_full(&pair, &SURFACE, &oil, number(roller, "load_n"), angular_speed, at_pressure)?;
        let friction = contact.friction(self.fill, &SURFACE, &oil)?;
        Ok(json!({
            "p_contact": contact.arc.mean_pressure,
            "h_rigid": contact.rigid_film,
            "h_elastic": contact.elastic_film,
            "lam": friction.lambda,
            "share": friction.asperity_share,
            "mu_viscous": friction.viscous,
            "mu": friction.coefficient,
        }))
    }
}
