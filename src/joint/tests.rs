//! The whole room: joints of the practical and of the hard range, fast against full, limits, continuity.

use super::*;
use crate::error::{Code, Result};
use proptest::prelude::*;
use std::f64::consts::PI;

const SURFACE: RoughSurface = RoughSurface {
    roughness: 0.8e-6,
    asperity_stiffness: 1.341_002_03e8,
    dry_friction: 0.30,
    boundary_fill: 0.10,
    starvation_exponent: 1.0,
    film_factor: 1.0,
};

/// Roelands' law, so that the room is tried with a real oil.
fn at_pressure(oil: &Lubricant) -> impl Fn(f64) -> Result<f64> {
    let (viscosity, coefficient) = (oil.viscosity, oil.pressure_viscosity);
    move |pressure| {
        let k = viscosity.ln() + 9.67;
        let rise = k * ((1.0 + 5.1e-9 * pressure).powf(coefficient / (5.1e-9 * k)) - 1.0);
        Ok(viscosity * rise.min(200.0).exp())
    }
}

fn oil(viscosity: f64, pressure_viscosity: f64) -> Lubricant {
    Lubricant { viscosity, pressure_viscosity, boundary_friction: 0.12, limiting_friction: 0.06 }
}

fn close(a: f64, b: f64, relative: f64) -> bool {
    (a - b).abs() <= relative * a.abs().max(b.abs())
}

/// One row of a study.
#[derive(Debug, Clone, Copy)]
struct Row {
    pair: Pair,
    surface: RoughSurface,
    oil: Lubricant,
    load: f64,
    turn: Turn,
    fill: f64,
}

impl Row {
    fn fast(&self) -> Result<(Contact, Friction)> {
        let contact =
            articulating(&self.pair, &self.surface, &self.oil, self.load, &self.turn, at_pressure(&self.oil))?;
        Ok((contact, contact.friction(self.fill, &self.surface, &self.oil)?))
    }

    fn full(&self) -> Result<(Contact, Friction)> {
        let contact =
            articulating_in_full(&self.pair, &self.surface, &self.oil, self.load, &self.turn, at_pressure(&self.oil))?;
        Ok((contact, contact.friction(self.fill, &self.surface, &self.oil)?))
    }

    fn rolls(&self, full: bool) -> Result<(Contact, Friction)> {
        let (speed, law) = (self.turn.angular_speed, at_pressure(&self.oil));
        let contact = if full {
            rolling_in_full(&self.pair, &self.surface, &self.oil, self.load, speed, law)?
        } else {
            rolling(&self.pair, &self.surface, &self.oil, self.load, speed, law)?
        };
        Ok((contact, contact.friction(self.fill, &self.surface, &self.oil)?))
    }
}

fn log(low: f64, high: f64) -> impl Strategy<Value = f64> {
    (low.ln()..high.ln()).prop_map(f64::exp)
}

prop_compose! {
    /// Joints that are met in practice.
    fn practical()(
        diameter in log(4e-3, 30e-3), clearance in log(2e-3, 0.05), slenderness in 0.6..4.0_f64,
        pressure in log(0.1e6, 40e6), viscosity in log(2e-3, 3.0), alpha in 0.5e-8..4.5e-8_f64,
        angular_speed in log(0.05, 60.0), angle in 0.15..1.2_f64, rest in log(1.0, 500.0), share in 0.2..1.0_f64,
        fill in 0.0..1.0_f64, roughness in log(0.3e-6, 1.5e-6),
    ) -> Row {
        let length = slenderness * diameter;
        let load = pressure * diameter * length;
        Row {
            pair: Pair::new(diameter, diameter * (1.0 + clearance), length, 1.0).unwrap(),
            surface: RoughSurface { roughness, ..SURFACE },
            oil: oil(viscosity, alpha),
            load,
            turn: Turn { angular_speed, angle, rest_time: rest * angle / angular_speed, rest_load: share * load },
            fill,
        }
    }
}

prop_compose! {
    /// Joints that are only just allowed.
    fn hard()(
        diameter in log(1e-3, 0.2), clearance in log(1.1e-4, 0.19), slenderness in log(0.21, 9.9),
        load in log(1e-3, 1e6), viscosity in log(2e-4, 1e3), alpha in 0.5e-8..6e-8_f64,
        angular_speed in log(1e-6, 1e3), angle in log(0.01, 2.09), rest_time in log(1e-3, 1e6), rest_load in log(1e-3, 1e6),
        other in (log(0.02e-6, 10e-6), log(13e6, 1340e6), 0.03..0.3_f64, 0.5..2.0_f64, 0.5..2.0_f64),
        fill in 0.0..1.0_f64, conformity in log(1.0, 10.0),
    ) -> Row {
        let (roughness, asperity_stiffness, boundary_fill, starvation_exponent, film_factor) = other;
        Row {
            pair: Pair::new(diameter, diameter * (1.0 + clearance), slenderness * diameter, conformity).unwrap(),
            surface: RoughSurface {
                roughness, asperity_stiffness, boundary_fill, starvation_exponent, film_factor, dry_friction: 0.3,
            },
            oil: oil(viscosity, alpha),
            load,
            turn: Turn { angular_speed, angle, rest_time, rest_load },
            fill,
        }
    }
}

fn same(fast: &(Contact, Friction), full: &(Contact, Friction)) -> bool {
    close(fast.0.flooded_film, full.0.flooded_film, 1e-9)
        && close(fast.1.coefficient, full.1.coefficient, 1e-9)
        && (fast.1.asperity_share - full.1.asperity_share).abs() < 1e-9
        && fast.0.cautions == full.0.cautions
}

fn sound(row: &Row, (contact, friction): &(Contact, Friction)) -> bool {
    (0.0..=1.0).contains(&friction.asperity_share)
        && friction.coefficient >= LEAST_FRICTION
        && friction.coefficient <= row.surface.dry_friction
        && friction.lambda.is_finite()
        && friction.gap.is_finite()
        && friction.viscous.is_finite()
        && contact.flooded_film >= 0.0
        && contact.flash_temperature(friction.coefficient).is_finite()
        && (0.0..=1.0).contains(&contact.coverage)
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(3000))]

    #[test]
    fn fast_is_full_in_practice(row in practical()) {
        let (fast, full) = (row.fast().unwrap(), row.full().unwrap());
        prop_assert!(same(&fast, &full), "{fast:?} {full:?}");
        let (fast, full) = (row.rolls(false).unwrap(), row.rolls(true).unwrap());
        prop_assert!(same(&fast, &full), "{fast:?} {full:?}");
    }

    #[test]
    fn hard_rows_give_sound_numbers_or_errors_and_fast_is_full(row in hard()) {
        for (fast, full) in [(row.fast(), row.full()), (row.rolls(false), row.rolls(true))] {
            match (fast, full) {
                (Ok(fast), Ok(full)) => {
                    prop_assert!(same(&fast, &full), "{fast:?} {full:?}");
                    prop_assert!(sound(&row, &fast), "{fast:?}");
                    prop_assert!(fast.0.height_ratio(row.fill, &row.surface).unwrap().is_finite());
                }
                (Err(fast), Err(full)) => {
                    prop_assert_eq!(&fast.field, &full.field);
                    prop_assert_eq!(fast.code, full.code);
                    prop_assert_eq!(fast.code, Code::BeyondModel);
                }
                (fast, full) => prop_assert!(false, "{fast:?} {full:?}"),
            }
        }
    }

    #[test]
    fn friction_is_continuous_in_fill_load_and_viscosity(row in practical()) {
        let step = 1e-7;
        let mu = row.fast().unwrap().1.coefficient;
        let near = [
            Row { fill: row.fill * (1.0 - step), ..row },
            Row { load: row.load * (1.0 - step), ..row },
            Row { oil: oil(row.oil.viscosity * (1.0 + step), row.oil.pressure_viscosity), ..row },
        ];
        for other in near {
            prop_assert!((other.fast().unwrap().1.coefficient - mu).abs() < 1e-5 * mu);
        }
    }

    #[test]
    fn empty_joints_are_dry_and_still_ones_have_their_boundary_layer(row in practical()) {
        prop_assert_eq!(Row { fill: 0.0, ..row }.fast().unwrap().1.coefficient, row.surface.dry_friction);
        let still = Row { turn: Turn { angular_speed: 0.0, ..row.turn }, ..row };
        for (contact, friction) in [still.fast().unwrap(), still.full().unwrap(), still.rolls(false).unwrap()] {
            prop_assert_eq!(friction.lambda, 0.0);
            prop_assert_eq!(friction.coefficient, friction.boundary);
            prop_assert_eq!(contact.flash_temperature(0.3), 0.0);
        }
        let slack = Row { load: 0.0, ..row }.fast().unwrap();
        prop_assert!(slack.0.cautions.unloaded);
        prop_assert_eq!(slack.1.coefficient, slack.1.boundary);
    }
}

/// The heavy floor line and the small packing chain, oil as it is at their temperature.
fn floor_and_packing() -> [Row; 2] {
    let row = |diameter: f64, bore, length, viscosity, alpha, load, angle, angular_speed, rest_time| Row {
        pair: Pair::new(diameter, bore, length, 1.0).unwrap(),
        surface: SURFACE,
        oil: oil(viscosity, alpha),
        load,
        turn: Turn { angular_speed, angle, rest_time, rest_load: load },
        fill: 0.7,
    };
    let wooster = |viscosity: f64| (0.6 + 0.965 * (1e3 * viscosity).log10()) * 1e-8;
    let (floor, packing) = (0.520_962_134_5, 0.052_930_444_66);
    [
        row(0.015, 0.0151, 0.046, floor, wooster(floor), 25e3, PI / 4.0, 0.490_873_852_1, 150.0),
        row(4.45e-3, 4.5e-3, 11.3e-3, packing, wooster(packing), 500.0, 2.0 * PI / 19.0, 39.058_342_15, 2.0),
    ]
}

#[test]
fn parts_of_two_lines() {
    let printed = [
        [
            19.409_043_37,
            1.090_303_745e8,
            8.266_760_16e-9,
            1.570_499_225e-7,
            0.295_431_282_9,
            0.040_597_777_56,
            0.989_644_182_5,
            0.001_039_887_2,
            0.120_155_973_8,
            0.118_922_429_4,
        ],
        [
            8.041_379_635,
            7.108_047_512e7,
            1.429_496_152e-8,
            1.532_723_652e-7,
            0.295_498_344_8,
            0.039_630_263_94,
            0.992_090_060,
            8.244_938_92e-4,
            0.120_155_973_8,
            0.119_212_069_0,
        ],
    ];
    for (row, printed) in floor_and_packing().into_iter().zip(printed) {
        let (contact, friction) = row.full().unwrap();
        let ours = [
            contact.arc.half_angle().to_degrees(),
            contact.arc.mean_pressure,
            contact.rigid_film.unwrap(),
            contact.elastic_film,
            contact.coverage,
            friction.lambda,
            friction.asperity_share,
            friction.viscous,
            friction.boundary,
            friction.coefficient,
        ];
        for (ours, printed) in ours.into_iter().zip(printed) {
            assert!(close(ours, printed, 1e-8), "{ours} {printed}");
        }
    }
}

#[test]
fn heavy_floor_is_overloaded_and_its_pin_bends() {
    let [floor, packing] = floor_and_packing();
    let cautions = floor.fast().unwrap().0.cautions;
    assert!(cautions.bearing_pressure && cautions.pin_bending && !cautions.brief_turn);
    assert!(!packing.fast().unwrap().0.cautions.bearing_pressure);
    let error = Row { load: 100e3, ..floor }.fast().unwrap_err();
    assert_eq!((error.code, error.field.as_str()), (Code::BeyondModel, "bearing pressure"));
    let error = Row { load: 4e7, ..floor }.rolls(false).unwrap_err();
    assert_eq!((error.code, error.field.as_str()), (Code::BeyondModel, "contact pressure"));
}

#[test]
fn one_contact_serves_every_fill() {
    let [_, packing] = floor_and_packing();
    let contact = packing.fast().unwrap().0;
    for (fill, mu) in [(0.0, 0.30), (0.001, 0.298_208_883_9), (1.0, 0.118_102_635_7)] {
        assert!(close(contact.friction(fill, &SURFACE, &packing.oil).unwrap().coefficient, mu, 1e-9));
    }
}

#[test]
fn friction_against_viscosity_has_its_valley() {
    let pair = Pair::new(8.28e-3, 8.33e-3, 25e-3, 1.0).unwrap();
    for (viscosity, lambda, mu, digits) in [
        (1e-3, 0.0144, 0.11992, 5e-3),
        (0.01, 0.05735, 0.11867, 2e-4),
        (0.1, 0.2632, 0.097695, 2e-4),
        (1.0, 1.301, 0.014714, 4e-4),
        (10.0, 11.12, 0.009376, 5e-4),
        (100.0, 31.79, 0.06, 2e-4),
    ] {
        let oil = oil(viscosity, 2e-8);
        let contact = rolling(&pair, &SURFACE, &oil, 2e3, 10.0, at_pressure(&oil)).unwrap();
        let friction = contact.friction(1.0, &SURFACE, &oil).unwrap();
        assert!(close(friction.lambda, lambda, digits), "{} {lambda}", friction.lambda);
        assert!(close(friction.coefficient, mu, digits), "{} {mu}", friction.coefficient);
    }
}

#[test]
fn contradicting_frictions_are_refused() {
    let [mut row, _] = floor_and_packing();
    row.oil.boundary_friction = 0.4;
    assert_eq!(row.fast().unwrap_err().code, Code::Inconsistent);
    // as hard oiled as dry is allowed, and is dry
    row.oil.boundary_friction = row.surface.dry_friction;
    assert!(row.fast().unwrap().1.coefficient <= row.surface.dry_friction);
}
