//! What a joint is made of and what happens to it: the pair of steel cylinders, their surfaces, the oil, one turn.

use crate::error::{Code, Error, Result};
use crate::quantity::show::{in_unit, number};
use crate::quantity::unit::MM;

/// Elastic constants of pin, bush and roller, taken as the same steel.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Elasticity {
    /// Young's modulus, Pa.
    pub youngs_modulus: f64,
    /// Poisson's ratio.
    pub poisson_ratio: f64,
}

/// Case-hardening steel: 206 GPa and 0.3, as in every machine design handbook.
pub const STEEL: Elasticity = Elasticity { youngs_modulus: 206e9, poisson_ratio: 0.3 };

impl Elasticity {
    /// Modulus in plane strain, E/(1 − ν²), Pa. For two bodies of the same steel this is also the E′ of
    /// elastohydrodynamic formulas, and twice the E* of rough contact.
    pub fn plane_strain_modulus(&self) -> f64 {
        self.youngs_modulus / (1.0 - self.poisson_ratio * self.poisson_ratio)
    }
}

/// A cylinder turning in a slightly larger bore: pin in bush, or bush in roller.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Pair {
    /// Radius of the inner cylinder, m.
    pub radius: f64,
    /// Half the difference of the two diameters as made, m.
    pub radial_clearance: f64,
    /// Length that carries, m.
    pub length: f64,
    /// How many times closer than as made the bore fits where it has run in; 1 for a new pair.
    /// Closure of our own: the bore is treated as one of `radial_clearance / conformity`.
    pub conformity: f64,
    /// The steel.
    pub elasticity: Elasticity,
}

impl Pair {
    /// A pair from its diameters and length (m), refused where the models do not hold: a bore that is not larger than
    /// the cylinder in it, a clearance outside 1e-4 to 0.2 of the radius, a length outside 0.2 to 10 diameters.
    pub fn new(diameter: f64, bore: f64, length: f64, conformity: f64) -> Result<Pair> {
        if !(bore > diameter && diameter > 0.0) {
            return Err(Error::new(
                Code::Clearance,
                "bore",
                format!(
                    "a bore of {} does not clear the cylinder of {} in it: the bore must be the larger",
                    in_unit(bore, &MM),
                    in_unit(diameter, &MM)
                ),
            )
            .number(bore)
            .unit("m")
            .limit(format!("above {}", in_unit(diameter, &MM))));
        }
        let pair = Pair {
            radius: diameter / 2.0,
            radial_clearance: (bore - diameter) / 2.0,
            length,
            conformity,
            elasticity: STEEL,
        };
        let outside = |field: &str, value: f64, ratio: String, low: f64, high: f64| {
            let limit = format!("{} to {}", in_unit(low, &MM), in_unit(high, &MM));
            Error::new(
                Code::BeyondModel,
                field,
                format!("{ratio}, which is outside film and contact models: check diameters and length"),
            )
            .number(value)
            .unit("m")
            .limit(limit)
        };
        let clearance_ratio = pair.radial_clearance / pair.radius;
        if !(1e-4..=0.2).contains(&clearance_ratio) {
            let ratio = format!("the clearance is {} of the diameter", number(clearance_ratio));
            return Err(outside("bore", bore, ratio, diameter * (1.0 + 1e-4), diameter * 1.2));
        }
        if !(0.2..=10.0).contains(&pair.length_to_diameter()) {
            let ratio = format!("the joint is {} diameters long", number(pair.length_to_diameter()));
            return Err(outside("length", length, ratio, 0.2 * diameter, 10.0 * diameter));
        }
        Ok(pair)
    }

    /// Length over diameter of the inner cylinder.
    pub fn length_to_diameter(&self) -> f64 {
        self.length / (2.0 * self.radius)
    }

    /// Radial clearance of the run-in pair, m: the one that contact and film see.
    pub fn fitted_clearance(&self) -> f64 {
        self.radial_clearance / self.conformity
    }

    /// Whether length or clearance lie outside what chains usually have: 0.5 to 5 diameters, 0.1 to 5 % of the radius.
    pub fn is_unusual(&self) -> bool {
        !(0.5..=5.0).contains(&self.length_to_diameter())
            || !(1e-3..=0.05).contains(&(self.radial_clearance / self.radius))
    }
}

/// The rough surfaces of a pair and what is uncertain about film on them.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RoughSurface {
    /// Combined roughness of both surfaces, Rq, m (see [`combined_roughness`](super::combined_roughness)).
    pub roughness: f64,
    /// Stiffness K of the asperities, Pa (see [`asperity_stiffness`](super::asperity_stiffness)).
    pub asperity_stiffness: f64,
    /// Friction coefficient of the dry pair.
    pub dry_friction: f64,
    /// Fill at which most of the boundary layer is there (see [`boundary_friction`](super::boundary_friction)).
    pub boundary_fill: f64,
    /// Exponent with which the film follows the fill; 1 for a film in proportion.
    pub starvation_exponent: f64,
    /// Factor on every computed film; 1 unless measured or sampled. It carries the error of the film formulas.
    pub film_factor: f64,
}

/// The oil in the joint, at the temperature of the joint.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Lubricant {
    /// Dynamic viscosity at ambient pressure, Pa s.
    pub viscosity: f64,
    /// Pressure-viscosity coefficient, 1/Pa.
    pub pressure_viscosity: f64,
    /// Friction coefficient of the oiled pair in boundary lubrication.
    pub boundary_friction: f64,
    /// Limiting shear stress over pressure: no film has more friction than this.
    pub limiting_friction: f64,
}

/// One turn of a joint on a sprocket or wheel, and the rest before it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Turn {
    /// Speed of pin against bush while the joint turns, rad/s; 0 for a joint that does not turn.
    pub angular_speed: f64,
    /// Angle through which the joint turns, rad, > 0.
    pub angle: f64,
    /// Time since the last turn, s.
    pub rest_time: f64,
    /// Mean load over that time, N; film squeezed out at rest depends only on load × time. Slack counts as no load.
    pub rest_load: f64,
}
