//! The course of one joint round the loop: lengths, times, temperatures, and the pull it meets at boundary friction.

use super::checked::Checked;
use crate::circuit::{
    Coefficients, Event, FrictionSi, Layout, LoopData, March, TakeUp, Temperatures, events, lay_out, march,
    temperatures,
};
use crate::error::Result;

/// The loop laid out, and what does not depend on the friction that is yet to be found.
pub(super) struct Course {
    pub layout: Layout,
    pub temperatures: Temperatures,
    /// The march at boundary friction, which tells where the chain is slack and how far it bends over idlers.
    pub reference: March,
    /// The events of that march.
    pub events: Vec<Event>,
}

impl Course {
    pub fn lay_out(survey: &Checked) -> Result<Course> {
        let (line, circuit, chain) = (&survey.si, &survey.si.circuit, &survey.si.chain);
        let take_up = match circuit.take_up_at {
            Some(section) => TakeUp::FrameForce { section: section as usize, force: circuit.take_up },
            None => TakeUp::Tension(circuit.take_up),
        };
        let layout = lay_out(&LoopData {
            pitch: chain.pitch,
            pin_diameter: chain.pin_diameter,
            bush_diameter: chain.bush_diameter,
            roller_diameter: chain.roller_diameter,
            mass: chain.mass,
            tensile_strength: chain.tensile_strength,
            strands: circuit.strands as u32,
            joints: circuit.joints.map(|joints| joints as u32),
            speed: line.duty.speed,
            ambient: line.duty.ambient,
            take_up,
            least_tension: circuit.least_tension,
            strand_share_factor: circuit.strand_share_factor,
            surface_factor: circuit.surface_factor,
            sections: &circuit.sections,
        })?;
        let temperatures = temperatures(&layout);
        let boundary = line.oil.boundary_friction;
        let reference = march(&layout, &coefficients(&line.friction, &layout, boundary, boundary))?;
        let mut list = Vec::new();
        events(&layout, &reference, &temperatures, &mut list);
        Ok(Course { layout, temperatures, reference, events: list })
    }
}

/// The coefficients of a march: what the survey gives, and guesses for what it leaves to be computed.
pub(super) fn coefficients(friction: &FrictionSi, layout: &Layout, joint: f64, bush_roller: f64) -> Coefficients {
    Coefficients::new(layout.places.len(), friction, joint, bush_roller)
}
