//! From a row of a table to a chain: what each family of chains takes from where.

use super::designation::{no_such_form, plain, strands, unknown};
use super::table::Row;
use super::{Cited, Roller, Standard, StandardChain};
use crate::error::{Error, Result};

/// The chain of a standard with this designation.
pub(super) fn chain(standard: Standard, designation: &str) -> Result<StandardChain> {
    let wanted = plain(designation);
    let found = match standard {
        Standard::Iso606 => short_pitch(&wanted)?,
        Standard::AsmeB29_1 => inch(&wanted)?,
        Standard::Iso1977 => conveyor(&wanted)?,
        Standard::Iso1275 => double_pitch(&wanted)?,
        Standard::AsmeB29_22 => rivetless(&wanted),
    };
    found.ok_or_else(|| unknown(standard, designation))
}

/// What every table that has these columns says.
fn from_row(standard: Standard, row: Row) -> StandardChain {
    let (inner_link, outer_link) = (row.value("inner_link_mm"), row.value("outer_link_mm"));
    let plate_gap = inner_link.as_ref().zip(outer_link).map(|(inner, outer)| {
        let how = "half of the least width between outer plates less the greatest width over the inner link";
        inner.derived((outer.value - inner.value) / 2.0, how)
    });
    StandardChain {
        standard,
        designation: row.designation().to_string(),
        strands: 1,
        roller: Roller::Small,
        pitch: row.value("pitch_mm").or_else(|| row.value("pitch_in")),
        pitches: row.list("pitches_mm"),
        pin_diameter: row.value("pin_mm").or_else(|| row.value("pin_in")),
        bush_bore: row.value("bush_bore_mm"),
        bush_diameter: row.value("bush_mm"),
        joint_length: inner_link.map(|link| link.remark("width over the inner link, by convention the bush length")),
        inner_width: row.value("inner_width_mm"),
        roller_diameter: None,
        small_roller_diameter: row.value("small_roller_mm").or_else(|| row.value("roller_mm")),
        large_roller_diameter: row.value("large_roller_mm"),
        plate_depth: row.value("plate_depth_mm"),
        plate_gap,
        transverse_pitch: row.value("transverse_mm"),
        tensile_strength: row.value("strength_1_kn"),
        mass: row.value("mass_1_kg_per_m"),
    }
}

impl StandardChain {
    /// Puts the chain on one of its rollers, if it has that one.
    fn on(mut self, roller: Roller) -> Option<Self> {
        self.roller_diameter = match roller {
            Roller::Bush => None,
            Roller::Small => Some(self.small_roller_diameter.clone()?),
            Roller::Large | Roller::Flanged => Some(self.large_roller_diameter.clone()?),
        };
        self.roller = roller;
        Some(self)
    }

    /// Makes it two or three strands wide.
    fn side_by_side(mut self, strands: u32, strength: Option<Cited>, mass: Option<Cited>) -> Result<Self> {
        if strands > 1 {
            if self.transverse_pitch.is_none() {
                return Err(no_strands(&self, strands));
            }
            self.designation = format!("{}-{strands}", self.designation);
            (self.strands, self.tensile_strength, self.mass) = (strands, strength, mass);
        }
        Ok(self)
    }
}

fn no_strands(chain: &StandardChain, strands: u32) -> Error {
    let designation = format!("{}-{strands}", chain.designation);
    no_such_form(chain.standard, &designation, "the chain is made with one strand only")
}

/// ISO 606.
fn short_pitch(designation: &str) -> Result<Option<StandardChain>> {
    let (base, strands) = strands(designation);
    let Some(row) = Standard::Iso606.table().row(base) else { return Ok(None) };
    let chain = from_row(Standard::Iso606, row);
    let roller = if chain.small_roller_diameter.is_some() { Roller::Small } else { Roller::Bush };
    let strength = row.value(&format!("strength_{strands}_kn"));
    let mass = row.value(&format!("mass_{strands}_kg_per_m"));
    chain.on(roller).map(|chain| chain.side_by_side(strands, strength, mass)).transpose()
}

/// ASME B29.1: pitch, roller and strength of its own, all else from the A series of ISO 606.
fn inch(designation: &str) -> Result<Option<StandardChain>> {
    let (base, count) = strands(designation);
    let Some(row) = Standard::AsmeB29_1.table().row(base) else { return Ok(None) };
    let Some(metric) = row.text("iso606") else { return Ok(None) };
    let Some(same) = short_pitch(metric)? else { return Ok(None) };
    let remark = |value: Option<Cited>| value.map(|value| value.remark(&format!("as {metric}")));
    let mass = match count {
        1 => same.mass.clone(),
        _ => short_pitch(&format!("{metric}-{count}")).ok().flatten().and_then(|wide| wide.mass),
    };
    let one = row.value("strength_lbf");
    let all = one.as_ref().map(|one| one.derived(one.value * f64::from(count), &format!("{count} times one strand")));
    let chain = StandardChain {
        standard: Standard::AsmeB29_1,
        designation: row.designation().to_string(),
        pitch: row.value("pitch_in"),
        pin_diameter: remark(same.pin_diameter),
        bush_bore: remark(same.bush_bore),
        bush_diameter: row.value("bush_in"),
        joint_length: remark(same.joint_length),
        inner_width: remark(same.inner_width),
        small_roller_diameter: row.value("roller_in"),
        plate_depth: remark(same.plate_depth),
        plate_gap: remark(same.plate_gap),
        transverse_pitch: remark(same.transverse_pitch),
        tensile_strength: one,
        mass: remark(same.mass),
        ..same
    };
    let roller = chain.roller;
    chain.on(roller).map(|chain| chain.side_by_side(count, all, remark(mass))).transpose()
}

/// ISO 1977: `M112`, `M112-160`, `M112-P`, `M112-P-160`.
fn conveyor(designation: &str) -> Result<Option<StandardChain>> {
    let mut parts = designation.split('-').peekable();
    let Some(row) = parts.next().and_then(|number| Standard::Iso1977.table().row(number)) else { return Ok(None) };
    let roller = match parts.peek() {
        Some(&"B") => Some(Roller::Bush),
        Some(&"S") => Some(Roller::Small),
        Some(&"P") => Some(Roller::Large),
        Some(&"F") => Some(Roller::Flanged),
        _ => None,
    };
    if roller.is_some() {
        parts.next();
    }
    let Some(chain) = from_row(Standard::Iso1977, row).on(roller.unwrap_or(Roller::Large)) else { return Ok(None) };
    let chain = match parts.next() {
        None => chain,
        // The designation writes its pitch in millimetres, as the tables do.
        Some(pitch) => match pitch.parse::<f64>() {
            Ok(pitch) => chain.with_pitch(pitch / 1e3)?,
            Err(_) => return Ok(None),
        },
    };
    Ok(parts.next().is_none().then(|| StandardChain { designation: designation.to_string(), ..chain }))
}

/// ISO 1275: twice the pitch of the ISO 606 chain, all else the same; plate gap and mass are not known.
fn double_pitch(designation: &str) -> Result<Option<StandardChain>> {
    let standard = Standard::Iso1275;
    let (base, roller) = match designation.strip_prefix('C') {
        None => (designation, Roller::Small),
        Some(rest) => match rest.strip_suffix('L') {
            None => (rest, Roller::Small),
            Some(base) => (base, Roller::Large),
        },
    };
    let Some(row) = standard.table().row(base) else { return Ok(None) };
    let Some(short) = row.text("iso606") else { return Ok(None) };
    let Some(same) = short_pitch(short)? else { return Ok(None) };
    let remark = |value: Option<Cited>| value.map(|value| value.remark(&format!("ISO 1275, as {short}")));
    let chain = StandardChain {
        standard,
        designation: designation.to_string(),
        pitch: same
            .pitch
            .map(|pitch| pitch.derived(2.0 * pitch.value, &format!("ISO 1275, twice the pitch of {short}"))),
        pin_diameter: remark(same.pin_diameter),
        bush_bore: remark(same.bush_bore),
        joint_length: remark(same.joint_length),
        inner_width: remark(same.inner_width),
        small_roller_diameter: remark(same.small_roller_diameter),
        large_roller_diameter: row.value("large_roller_mm"),
        plate_depth: remark(same.plate_depth),
        plate_gap: None,
        transverse_pitch: None,
        tensile_strength: remark(same.tensile_strength),
        mass: None,
        ..same
    };
    match chain.on(roller) {
        Some(chain) => Ok(Some(chain)),
        None => Err(no_such_form(standard, designation, "no large roller of it is known; give the roller diameter")),
    }
}

/// ASME B29.22: pitch and pin only.
fn rivetless(designation: &str) -> Option<StandardChain> {
    let row = Standard::AsmeB29_22.table().row(designation)?;
    from_row(Standard::AsmeB29_22, row).on(Roller::Bush)
}

#[cfg(test)]
mod tests {
    use super::super::{standard, standards};
    use super::*;
    use crate::error::Code;
    use crate::quantity::Class;

    fn value(cited: &Option<Cited>) -> f64 {
        cited.as_ref().unwrap().value
    }

    /// The pin turns in the bush, the bush in the roller, the inner link between the outer plates.
    #[test]
    fn every_chain_of_every_table_can_be_assembled() {
        for (name, designations) in standards() {
            for designation in designations {
                let chain = standard(name, designation).unwrap();
                let parts = [
                    &chain.pin_diameter,
                    &chain.bush_bore,
                    &chain.bush_diameter,
                    &chain.small_roller_diameter,
                    &chain.large_roller_diameter,
                ];
                let diameters: Vec<f64> = parts.into_iter().flatten().map(|part| part.value).collect();
                assert!(diameters.is_sorted_by(|inner, outer| inner < outer), "{name} {designation}");
                if let (Some(inner), Some(joint)) = (&chain.inner_width, &chain.joint_length) {
                    assert!(inner.value < joint.value, "{designation}");
                    assert!(chain.transverse_pitch.as_ref().is_none_or(|t| t.value > joint.value), "{designation}");
                }
                assert!(
                    chain.plate_gap.as_ref().is_none_or(|gap| gap.value > 1e-5 && gap.value < 1e-3),
                    "{designation}"
                );
                assert!(chain.pitch.is_some() != (chain.pitches.len() > 5), "{designation}");
                assert!(chain.values().iter().all(|(_, v)| v.value > 0.0 && !v.source.is_empty()));
            }
        }
    }

    #[test]
    fn strands_add_strength_but_leave_the_joint_alone() {
        let [one, two, three] = ["16B", "16b - 2", "16B-3"].map(|d| standard("iso606", d).unwrap());
        assert_eq!([&one, &two, &three].map(|c| c.strands), [1, 2, 3]);
        assert_eq!([&one, &two, &three].map(|c| value(&c.tensile_strength)), [60e3, 106e3, 160e3]);
        assert_eq!([&one, &two, &three].map(|c| value(&c.mass)), [2.7, 5.4, 8.0]);
        assert_eq!(one.joint_length, three.joint_length);
        assert_eq!(two.designation, "16B-2");
        assert_eq!(standard("ISO 606", "081-2").unwrap_err().code, Code::NoSuchChain);
        let inch = standard("ANSI B29.1", "#80-2").unwrap();
        assert_eq!(value(&inch.tensile_strength), 2.0 * value(&standard("ASME", "80").unwrap().tensile_strength));
        assert_eq!((value(&inch.mass), inch.tensile_strength.unwrap().class), (5.2, Class::Derived));
    }

    #[test]
    fn inch_chains_are_the_a_series() {
        for (inch, metric) in [("40", "08A"), ("80", "16A"), ("160", "32A"), ("60H", "60H")] {
            let (inch, metric) = (standard("ASME B29.1", inch).unwrap(), standard("ISO 606:2015", metric).unwrap());
            assert!((value(&inch.pitch) - value(&metric.pitch)).abs() < 1e-9);
            assert!((value(&inch.roller_diameter) - value(&metric.roller_diameter)).abs() < 5e-5);
            assert!((value(&inch.tensile_strength) / value(&metric.tensile_strength) - 1.0).abs() < 0.005);
            assert_eq!(value(&inch.pin_diameter), value(&metric.pin_diameter));
            assert!(inch.pin_diameter.unwrap().source.starts_with("as "));
        }
        assert_eq!(standard("ASME B29.1", "25").unwrap().roller, Roller::Bush);
    }

    #[test]
    fn conveyor_chains_take_type_and_pitch() {
        let plain = standard("ISO 1977", "M112").unwrap();
        assert_eq!((value(&plain.roller_diameter), plain.pitch.is_none()), (0.060, true));
        let small = standard("ISO 1977", "m112-s-160").unwrap();
        assert_eq!((value(&small.roller_diameter), value(&small.pitch)), (0.030, 0.160));
        assert_eq!(small.pitch.unwrap().class, Class::Survey);
        assert_eq!(standard("ISO 1977", "M112-B").unwrap().roller_diameter, None);
        assert_eq!(value(&standard("ISO 1977", "M112-250").unwrap().pitch), 0.250);
        let error = plain.with_pitch(0.150).unwrap_err();
        assert_eq!(error.code, Code::OutOfRange);
        assert!(error.limit.contains("0.125, 0.16, 0.2"));
        for wrong in ["M112-X", "M112-P-160-2", "M112-P-P", "M113"] {
            assert_eq!(standard("ISO 1977", wrong).unwrap_err().code, Code::NoSuchChain, "{wrong}");
        }
        for (number, kilonewtons) in [("M20", 20e3), ("M315", 315e3), ("M900", 900e3)] {
            assert_eq!(value(&standard("ISO 1977", number).unwrap().tensile_strength), kilonewtons);
        }
    }

    #[test]
    fn double_pitch_chains_differ_in_pitch_and_roller() {
        let (short, long) = (standard("ISO 606", "08B").unwrap(), standard("ISO 1275", "208b").unwrap());
        assert_eq!(value(&long.pitch), 2.0 * value(&short.pitch));
        assert_eq!(value(&long.pin_diameter), value(&short.pin_diameter));
        assert_eq!(value(&long.roller_diameter), value(&short.roller_diameter));
        assert_eq!(value(&standard("ISO 1275", "C208BL").unwrap().roller_diameter), 15.88e-3);
        assert_eq!(value(&standard("ISO 1275", "C208B").unwrap().roller_diameter), value(&short.roller_diameter));
        assert_eq!(standard("ISO 1275", "C228BL").unwrap_err().code, Code::NoSuchChain);
    }
}
