//! Oil: how thick an oil is at a temperature, how heavy, and how it answers to pressure and to being mixed.
//!
//! Takes what a data sheet prints (viscosity grade, viscosity index, two measured viscosities, density at 15 °C)
//! and gives viscosity and density at the temperature of a joint. Viscosities pass through this face in SI
//! (m2/s, Pa s); the formulas of the standards are in mm2/s inside, converted by one constant. Temperatures are
//! in °C. Knows nothing of ageing, evaporation, grease or solid lubricants: an oil that has lost its light ends
//! or cracked (long above 200 °C) is no longer the oil computed here.

mod blend; // two oils in one: Wright's double logarithm, Refutas numbers
mod density; // thermal expansion
mod grade; // ISO 3448 grades and their limits
mod handbook; // grades by room temperature, for orientation
mod index; // viscosity index, both ways
mod pressure; // pressure-viscosity coefficient, Barus, Roelands
mod survey; // what a survey says of the oil
mod viscosity; // viscosity against temperature: the double-logarithm line

pub use blend::{blend_by_mass, blend_viscosity, blending_number};
pub use density::{density, thermal_expansion};
pub use grade::{GRADES, grade_limits, grade_midpoint};
pub use handbook::{USUAL_GRADE, handbook_grade, handbook_sae_grade};
pub use index::{index_limits, viscosity_at_100, viscosity_index};
pub use pressure::{barus, pressure_viscosity, roelands, roelands_exponent};
pub use survey::*;
pub use viscosity::{ViscosityLine, dynamic_viscosity};

use crate::error::Result;

/// One mm2/s (centistokes), the unit of the viscosity standards, in m2/s.
const MM2_PER_S: f64 = 1e-6;

/// What the models need to know of an oil as a liquid: its viscosity line and its density at 15 °C.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Liquid {
    /// Viscosity against temperature.
    pub line: ViscosityLine,
    /// Density at 15 °C, kg/m3.
    pub density_15: f64,
}

impl Liquid {
    /// Density at `temperature` (°C), kg/m3; see [`density`].
    pub fn density(&self, temperature: f64) -> f64 {
        density(self.density_15, temperature)
    }

    /// Dynamic viscosity at `temperature` (°C), Pa s: the viscosity line times the density there.
    ///
    /// ```
    /// use pinfilm::oil::{Liquid, ViscosityLine};
    /// let oil = Liquid { line: ViscosityLine::through(40.0, 220e-6, 100.0, 18.9e-6)?, density_15: 890.0 };
    /// assert!((oil.dynamic_viscosity(40.0)? - 0.19233).abs() < 1e-5);
    /// # Ok::<(), pinfilm::Error>(())
    /// ```
    pub fn dynamic_viscosity(&self, temperature: f64) -> Result<f64> {
        Ok(dynamic_viscosity(self.line.viscosity(temperature)?, self.density(temperature)))
    }
}
