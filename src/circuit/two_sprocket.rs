//! The everyday loop: two sprockets, a carrying strand above, a return strand below.

use super::survey::{Circuit, Section, Straight, Support, Turn, TurnKind};
use crate::chain::loop_length;
use crate::error::{Code, Error, Result};
use crate::noun;
use crate::quantity::unit::{DEG, M, MM};
use crate::quantity::{Field, at_least, between, checked, up_to};

macro_rules! two_sprocket_noun { ($declare:ident) => { $declare! {
    /// The everyday loop by a few numbers: it fits one row of a table.
    TwoSprocket / TwoSprocketSi, "circuit" {
        pitch_mm as pitch: f64 [MM] "pitch of the chain" { symbol: "p", allowed: between(4.0, 1000.0) }
        centre_distance_m as centre_distance: f64 [M] "distance between the shafts" { symbol: "C", allowed: up_to(0.0, 5000.0) }
        teeth_drive as teeth_drive: i64 [ONE] "teeth of the drive sprocket" { symbol: "z₁", allowed: between(3.0, 200.0), usual: between(6.0, 150.0) }
        teeth_tail as teeth_tail: i64 [ONE] "teeth of the tail sprocket" { symbol: "z₂", allowed: between(3.0, 200.0), usual: between(6.0, 150.0) }
        lift_m as lift: f64 [M = 0.0] "height of the drive shaft over the tail shaft" { allowed: between(-500.0, 500.0) }
        support as support: Support [WORD = Support::Rollers] "what carries the carrying strand" {}
        return_support as return_support: Support [WORD = Support::Rollers] "what carries the return strand" {}
        carried_kg_per_m as carried: f64 [KG_PER_M = 0.0] "slats, carriers and product on the carrying strand, all strands together" { allowed: between(0.0, 20000.0) }
        returning_kg_per_m as returning: f64 [KG_PER_M = 0.0] "slats and carriers on the return strand and the wheels, all strands together" { allowed: between(0.0, 20000.0) }
        loads as loads: bool [WORD = true] "whether product is placed at the tail" {}
        strands as strands: i64 [ONE = 1] "parallel strands of chain" { symbol: "n", allowed: between(1.0, 12.0) }
        joints as joints: Option<i64> [ONE = None] "joints of one strand, counted" { symbol: "N", allowed: between(4.0, 1e6) }
        take_up_n as take_up: f64 [N] "running tension of all strands at the drive exit" { symbol: "S₀", allowed: up_to(0.0, 1e7) }
        carry_temperature_c as carry_temperature: Option<f64> [C = None] "temperature around the carrying strand; not given: ambient" { allowed: between(-60.0, 350.0) }
        return_temperature_c as return_temperature: Option<f64> [C = None] "temperature around the return strand; not given: ambient" { allowed: between(-60.0, 350.0) }
        extra_pull_n as extra_pull: f64 [N = 0.0] "pull of brushes, scrapers and seals on the carrying strand" { allowed: at_least(0.0) }
    }
} } }
#[cfg(feature = "python")]
pub(crate) use two_sprocket_noun;
two_sprocket_noun!(noun);

impl TwoSprocket {
    /// The circuit with its four sections: return strand, tail, carrying strand, drive.
    ///
    /// Exact for straight tangents: with γ = asin((R₂ − R₁)/C) the tail is wrapped by π + 2γ and the drive by π − 2γ, and
    /// the rises of the four sections add up to zero.
    pub fn circuit(&self) -> Result<Circuit> {
        let (pitch, centre, lift) = (MM.to_si(self.pitch_mm), self.centre_distance_m, self.lift_m);
        let radius = |teeth: i64| crate::chain::pitch_diameter(pitch, teeth as f64) / 2.0;
        let (drive, tail) = (radius(self.teeth_drive), radius(self.teeth_tail));
        if centre <= drive + tail || lift.abs() > centre {
            let message = format!(
                "circuit.centre_distance_m = {centre} m does not hold two sprockets of {:.3} m and {:.3} m radius with a lift of {lift} m",
                drive, tail
            );
            return Err(Error::new(Code::Inconsistent, "circuit.centre_distance_m", message).number(centre).unit("m"));
        }
        loop_length(centre, pitch, self.teeth_drive as f64, self.teeth_tail as f64)?;
        let sine = (tail - drive) / centre;
        let (gamma, cosine) = (sine.asin(), (1.0 - sine * sine).sqrt());
        let (up, level) = (lift / centre, (1.0 - (lift / centre).powi(2)).sqrt());
        let return_rise = -centre * up + (tail - drive) * (sine * up - cosine * level);
        let carry_rise = centre * up + (drive - tail) * (sine * up + cosine * level);
        let length = centre * cosine;
        let straight = |rise: f64, support: Support, load: f64, temperature: Option<f64>| Straight {
            length_m: M.from_si(length),
            rise_m: rise,
            support,
            load_kg_per_m: load,
            temperature_c: temperature,
            ..Straight::blank()
        };
        let wheel = |teeth: i64, wrap: f64, rise: f64, drive: bool| {
            Section::Turn(Turn {
                kind: TurnKind::Wheel,
                teeth: Some(teeth),
                wrap_deg: DEG.from_si(wrap),
                rise_m: rise,
                load_kg_per_m: self.returning_kg_per_m,
                drive,
                ..Turn::blank()
            })
        };
        let back = straight(return_rise, self.return_support, self.returning_kg_per_m, self.return_temperature_c);
        let carry = Straight {
            loads: self.loads,
            extra_pull_n: self.extra_pull_n,
            ..straight(carry_rise, self.support, self.carried_kg_per_m, self.carry_temperature_c)
        };
        let half = std::f64::consts::PI;
        let sections = vec![
            Section::Straight(back),
            wheel(self.teeth_tail, half + 2.0 * gamma, 2.0 * tail * cosine * level, false),
            Section::Straight(carry),
            wheel(self.teeth_drive, half - 2.0 * gamma, -2.0 * drive * cosine * level, true),
        ];
        let circuit = Circuit {
            sections,
            take_up_n: self.take_up_n,
            strands: self.strands,
            joints: self.joints,
            ..Circuit::blank()
        };
        checked(&circuit, "circuit")?; // ranges of the sections that were made here
        Ok(circuit)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::{Noun, Tree, Value};
    use proptest::prelude::*;

    fn table(entries: Vec<(&str, Value)>) -> Tree {
        Value::Table(entries.into_iter().map(|(key, value)| (key.to_string(), value.into())).collect()).into()
    }

    proptest! {
        #[test]
        fn rises_close_and_length_is_that_of_the_loop(
            centre in 2.0..40.0f64, z1 in 6..30i64, z2 in 6..30i64, slope in -0.8..0.8f64,
        ) {
            let short = TwoSprocket::from_tree(&table(vec![
                ("pitch_mm", Value::Number(100.0)), ("centre_distance_m", Value::Number(centre)),
                ("teeth_drive", Value::Whole(z1)), ("teeth_tail", Value::Whole(z2)),
                ("lift_m", Value::Number(slope * centre)), ("take_up_n", Value::Number(500.0)),
            ])).unwrap();
            let circuit = short.circuit().unwrap();
            let (mut rise, mut length) = (0.0, 0.0);
            for section in &circuit.sections {
                match section {
                    Section::Straight(s) => { rise += s.rise_m; length += s.length_m / 0.1; }
                    Section::Turn(t) => { rise += t.rise_m; length += t.wrap_deg / 360.0 * t.teeth.unwrap() as f64; }
                }
            }
            prop_assert!(rise.abs() < 1e-9);
            let exact = loop_length(centre, 0.1, z1 as f64, z2 as f64).unwrap();
            prop_assert!((length - exact).abs() < 1e-9 * exact);
        }
    }
}
