//! Mixed friction: a loaded contact at a fill, asperities and sheared oil together.

use super::Regime;
use super::friction::{boundary_friction, flash_temperature, ring_drag};
use super::sharing::{height_ratio, share_load_near};
use super::{Contact, Lubricant, RoughSurface};
use crate::error::{Code, Error, Result};

/// Friction coefficients below this are not believed of any joint.
pub const LEAST_FRICTION: f64 = 0.002;

/// Friction of a pair at one fill.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Friction {
    /// Friction coefficient at the radius of the pair.
    pub coefficient: f64,
    /// Film that smooth surfaces would have at this fill, m.
    pub film: f64,
    /// That film over the combined roughness.
    pub lambda: f64,
    /// Boundary, mixed or full film.
    pub regime: Regime,
    /// Share of the load on asperities.
    pub asperity_share: f64,
    /// Mean gap of the rough surfaces, m.
    pub gap: f64,
    /// Friction coefficient of the asperities.
    pub boundary: f64,
    /// Friction coefficient of the sheared oil.
    pub viscous: f64,
    /// The computed coefficient was below [`LEAST_FRICTION`] and that stands in its place.
    pub at_least: bool,
    /// From where the load sharing of a contact much like this one is searched.
    height: f64,
}

impl Contact {
    /// Ratio of film to roughness at a fill of 0 to 1: λ(fill) = fillⁿ λ(1). Closure of our own.
    pub fn lambda(&self, fill: f64, surface: &RoughSurface) -> f64 {
        let exponent = surface.starvation_exponent;
        let share = if exponent == 1.0 { fill } else { fill.powf(exponent) };
        share * self.lambda_at_fill_1
    }

    /// Friction of the pair filled to `fill`, 0..1.
    ///
    /// μ = X μ_b + (1 − X) μ_v: asperities with their share X ([`share_load`]) and layer ([`boundary_friction`]), oil
    /// sheared in the strip at the pressure of the contact and round the rest of the ring, at most the limiting
    /// friction. At fill 0 exactly the dry coefficient; never below [`LEAST_FRICTION`]. Fails where asperities are
    /// flattened beyond the model, or coefficients contradict each other (oiled above dry).
    pub fn friction(&self, fill: f64, surface: &RoughSurface, lubricant: &Lubricant) -> Result<Friction> {
        self.friction_near(None, fill, surface, lubricant)
    }

    /// As [`Contact::friction`], searched from the friction of a contact much like this one where one is known.
    pub fn friction_near(
        &self,
        near: Option<&Friction>,
        fill: f64,
        surface: &RoughSurface,
        lubricant: &Lubricant,
    ) -> Result<Friction> {
        let boundary =
            boundary_friction(fill, surface.dry_friction, lubricant.boundary_friction, surface.boundary_fill);
        let lambda = self.lambda(fill, surface);
        let (asperity_share, gap, viscous, height) = if self.cautions.unloaded {
            (1.0, 0.0, 0.0, 0.0)
        } else {
            let (pressure, stiffness) = (self.arc.mean_pressure, surface.asperity_stiffness);
            let (sharing, height) = share_load_near(lambda, pressure, stiffness, near.map(|near| near.height))?;
            let gap = surface.roughness * sharing.mean_gap;
            let sheared = fill * (self.strip / gap + self.ring * ring_drag(gap, self.clearance));
            (sharing.asperity_share, gap, sheared.min(lubricant.limiting_friction), height)
        };
        let computed = asperity_share * boundary + (1.0 - asperity_share) * viscous;
        if computed > surface.dry_friction * (1.0 + 1e-12) {
            return Err(Error::new(
                Code::Inconsistent,
                "dry_friction",
                format!(
                    "the oiled pair would rub harder ({computed:.4}) than the dry one ({:.4}): give a dry friction above \
                     boundary and limiting friction of the oil",
                    surface.dry_friction
                ),
            )
            .number(surface.dry_friction)
            .limit(format!("at least {computed:.4}")));
        }
        Ok(Friction {
            coefficient: computed.clamp(LEAST_FRICTION, surface.dry_friction.max(LEAST_FRICTION)),
            film: lambda * surface.roughness,
            lambda,
            regime: Regime::of(lambda),
            asperity_share,
            gap,
            boundary,
            viscous,
            at_least: computed < LEAST_FRICTION,
            height,
        })
    }

    /// Height of the mean planes over each other in roughnesses at a fill; 0 for an unloaded pair.
    pub fn height_ratio(&self, fill: f64, surface: &RoughSurface) -> Result<f64> {
        if self.cautions.unloaded {
            return Ok(0.0);
        }
        height_ratio(self.lambda(fill, surface), self.arc.mean_pressure, surface.asperity_stiffness)
    }

    /// Flash temperature of the strip at a friction coefficient, K above its surroundings; an upper estimate.
    pub fn flash_temperature(&self, friction: f64) -> f64 {
        if self.cautions.unloaded {
            return 0.0;
        }
        flash_temperature(friction, self.load_per_length, self.sliding_speed, self.arc.half_width)
    }
}
