//! What is known of one standard chain.

use super::{Cited, Standard};
use crate::error::{Code, Error, Result};
use crate::quantity::Class;

/// Which roller the chain of a designation runs on.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Roller {
    /// None: the bush itself meets sprocket and track.
    Bush,
    /// The small roller, for the sprocket only; the one roller of a transmission chain.
    Small,
    /// The large roller, which also carries the chain on a track.
    Large,
    /// The large roller with a flange.
    Flanged,
}

/// A standard chain: SI values with their sources, empty where the standard does not fix them or they are not known.
///
/// Dimensions are the limits of the standard (pin, roller, plates: greatest; bore and inner width: least). Pin, bush,
/// joint length, plate gap are those of one strand; tensile strength and mass those of the whole chain designated.
#[derive(Debug, Clone, PartialEq)]
pub struct StandardChain {
    /// The standard.
    pub standard: Standard,
    /// The designation as the standard writes it, strands, type and pitch included.
    pub designation: String,
    /// Strands side by side on common pins.
    pub strands: u32,
    /// Which roller it runs on.
    pub roller: Roller,
    /// Pitch, m; empty where the user must choose one of `pitches`.
    pub pitch: Option<Cited>,
    /// The pitches of the standard to choose from, m; empty where the pitch is fixed.
    pub pitches: Vec<f64>,
    /// Pin diameter, m.
    pub pin_diameter: Option<Cited>,
    /// Bore of the bush, m.
    pub bush_bore: Option<Cited>,
    /// Outside diameter of the bush, m; ISO 606 does not fix it for chains with rollers.
    pub bush_diameter: Option<Cited>,
    /// Length of pin in bush, m: by convention the width over the inner link.
    pub joint_length: Option<Cited>,
    /// Width between the inner plates, m: where the sprocket tooth goes, and the length of the roller.
    pub inner_width: Option<Cited>,
    /// Diameter of the roller it runs on, m.
    pub roller_diameter: Option<Cited>,
    /// Diameter of the small roller, m.
    pub small_roller_diameter: Option<Cited>,
    /// Diameter of the large roller, m.
    pub large_roller_diameter: Option<Cited>,
    /// Depth of the inner plates, m.
    pub plate_depth: Option<Cited>,
    /// Least gap between inner and outer plate on each side, m; a chain may have more.
    pub plate_gap: Option<Cited>,
    /// Distance between the strands, m.
    pub transverse_pitch: Option<Cited>,
    /// Least tensile strength of the whole chain, N.
    pub tensile_strength: Option<Cited>,
    /// Mass of the whole chain without attachments, kg/m; approximate.
    pub mass: Option<Cited>,
}

impl StandardChain {
    /// The same chain with a pitch (m) chosen from those the standard offers.
    ///
    /// Fails for a pitch that is not one of `pitches`, or not that of a chain with a fixed pitch.
    pub fn with_pitch(self, pitch: f64) -> Result<Self> {
        let meets = |offered: f64| (pitch - offered).abs() <= 1e-6 * offered; // a pitch typed in inches
        let fixed = self.pitch.as_ref().map(|fixed| fixed.value);
        if fixed.is_some_and(meets) {
            return Ok(self);
        }
        let name = self.standard.name();
        if let (None, Some(chosen)) = (fixed, self.pitches.iter().copied().find(|offered| meets(*offered))) {
            let source = format!("chosen from the preferred pitches of {name}").into();
            return Ok(StandardChain { pitch: Some(Cited { value: chosen, class: Class::Survey, source }), ..self });
        }
        let offered = match fixed {
            Some(fixed) => format!("{fixed} m"),
            None => self.pitches.iter().map(|pitch| format!("{pitch}")).collect::<Vec<_>>().join(", ") + " m",
        };
        let designation = &self.designation;
        Err(Error::new(
            if fixed.is_some() { Code::Inconsistent } else { Code::OutOfRange },
            "pitch",
            format!(
                "{name} {designation} is not made with a pitch of {pitch} m but with {offered}; for another pitch give \
                 the dimensions of the chain"
            ),
        )
        .number(pitch)
        .unit("m")
        .limit(offered))
    }

    /// Every value that is known, under its plain name, in the order of this struct.
    pub fn values(&self) -> Vec<(&'static str, &Cited)> {
        [
            ("pitch", &self.pitch),
            ("pin_diameter", &self.pin_diameter),
            ("bush_bore", &self.bush_bore),
            ("bush_diameter", &self.bush_diameter),
            ("joint_length", &self.joint_length),
            ("inner_width", &self.inner_width),
            ("roller_diameter", &self.roller_diameter),
            ("small_roller_diameter", &self.small_roller_diameter),
            ("large_roller_diameter", &self.large_roller_diameter),
            ("plate_depth", &self.plate_depth),
            ("plate_gap", &self.plate_gap),
            ("transverse_pitch", &self.transverse_pitch),
            ("tensile_strength", &self.tensile_strength),
            ("mass", &self.mass),
        ]
        .into_iter()
        .filter_map(|(name, value)| value.as_ref().map(|value| (name, value)))
        .collect()
    }
}

#[cfg(test)]
mod tests {
    use super::super::standard;
    use crate::error::Code;

    #[test]
    fn a_fixed_pitch_may_be_repeated_but_not_changed() {
        assert!(standard("ISO 606", "16B").unwrap().with_pitch(0.0254).is_ok());
        assert_eq!(standard("ISO 606", "16B").unwrap().with_pitch(0.025).unwrap_err().code, Code::Inconsistent);
    }
}
