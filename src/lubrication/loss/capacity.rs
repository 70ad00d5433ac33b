//! How much oil a joint can hold: the annulus round the pin and a ring in each plate gap.

use std::f64::consts::PI;

/// The spaces of a joint that hold oil.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct JointSpace {
    /// Pin diameter, m.
    pub pin_diameter: f64,
    /// Radial clearance of pin and bush, m; grows with wear.
    pub clearance: f64,
    /// Length of the joint, m.
    pub joint_length: f64,
    /// Outer diameter of the bush, m.
    pub bush_diameter: f64,
    /// Gap between inner and outer plate, m.
    pub plate_gap: f64,
    /// Width of the ring of oil held in the plate gap, m (see [`crate::lubrication::entry::retained_width`]).
    pub retained_width: f64,
    /// Share of that ring which stays wet, 0 to 1 (closure of our own: 0.5, 0.2 to 0.8).
    pub ring_share: f64,
}

/// Volumes (m³) and the area open to the air (m²).
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Capacity {
    /// Annulus between pin and bush, m³.
    pub annulus: f64,
    /// Rings in the two plate gaps, m³.
    pub rings: f64,
    /// All together, m³.
    pub total: f64,
    /// Area of oil open to the air, m².
    pub exposed_area: f64,
}

impl JointSpace {
    /// Oil that the joint can hold. Exact geometry but for the wet share of the ring.
    pub fn capacity(&self) -> Capacity {
        let bore = self.pin_diameter + 2.0 * self.clearance;
        let annulus = 0.25 * PI * (bore * bore - self.pin_diameter * self.pin_diameter) * self.joint_length;
        let ring = self.bush_diameter + 2.0 * self.retained_width;
        let side = 0.25 * PI * (ring * ring - self.bush_diameter * self.bush_diameter) * self.plate_gap;
        let rings = self.ring_share * 2.0 * side;
        let exposed_area = self.ring_share * 2.0 * PI * ring * self.plate_gap;
        Capacity { annulus, rings, total: annulus + rings, exposed_area }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn without_a_ring_only_the_annulus_is_left() {
        let space = JointSpace {
            pin_diameter: 0.014,
            clearance: 1.5e-4,
            joint_length: 0.04,
            bush_diameter: 0.02,
            plate_gap: 6e-4,
            retained_width: 0.0,
            ring_share: 0.5,
        };
        let capacity = space.capacity();
        assert_eq!(capacity.rings, 0.0);
        assert_eq!(capacity.total, capacity.annulus);
        let unrolled = PI * (0.014 + 1.5e-4) * 1.5e-4 * 0.04;
        assert!((capacity.annulus / unrolled - 1.0).abs() < 1e-12);
    }
}
