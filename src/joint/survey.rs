//! What a survey says of the surfaces of a joint.

use crate::noun;
use crate::quantity::{Class, Spread, between};

macro_rules! surface_noun { ($declare:ident) => { $declare! {
    /// The surfaces of pin, bush and roller: roughness, dry friction and the closures of mixed friction.
    Surface / SurfaceSi, "surface", defaults: all {
        roughness_um as roughness: f64 [UM = 0.8] "combined root-mean-square roughness of both surfaces"
            { symbol: "σ", allowed: between(0.02, 10.0), usual: between(0.1, 3.0), spread: Spread::Lognormal(0.3, 1.5), class: Class::FromMemory, source: "ground and run-in steel" }
        dry_friction as dry_friction: f64 [ONE = 0.30] "friction coefficient of the dry pair"
            { symbol: "µ_dry", allowed: between(0.002, 2.0), usual: between(0.15, 0.6), spread: Spread::Triangular(0.20, 0.50), class: Class::FromMemory, source: "steel on steel" }
        boundary_fill as boundary_fill: f64 [ONE = 0.10] "fill at which most of the boundary layer has formed"
            { symbol: "f₀", allowed: between(0.001, 10.0), usual: between(0.03, 0.30), spread: Spread::LogUniform(0.03, 0.30), class: Class::Closure,
              source: "boundary friction falls from dry to oiled as exp(−fill/f₀): little oil already makes a layer" }
        starvation_exponent as starvation_exponent: f64 [ONE = 1.0] "exponent with which the film thins as fill falls"
            { symbol: "n", allowed: between(0.1, 5.0), usual: between(0.5, 2.0), spread: Spread::Uniform(0.5, 2.0), class: Class::Closure,
              source: "film = fillⁿ × film of the flooded joint" }
        conformity as conformity: f64 [ONE = 1.0] "clearance over the local clearance of the run-in bush"
            { symbol: "κ", allowed: between(1.0, 100.0), usual: between(1.0, 10.0), spread: Spread::LogUniform(1.0, 10.0), class: Class::Closure,
              source: "a bush wears to the shape of its pin: its bore is taken as one of clearance/κ" }
        roller_edge_share as roller_edge_share: f64 [ONE = 0.7] "share of a roller's load on its edges and faces"
            { symbol: "e_s", allowed: between(0.0, 1.0), usual: between(0.3, 1.0), spread: Spread::Uniform(0.3, 1.0), class: Class::Closure,
              source: "rollers skew, and carry on edges and faces at boundary friction" }
        asperity_stiffness_mpa as asperity_stiffness: f64 [MPA = 134.100_202_968_589_53] "stiffness of the asperities"
            { symbol: "K", allowed: between(0.01, 1e6), usual: between(13.0, 1340.0), spread: Spread::LogUniform(13.0, 1340.0), class: Class::FromMemory,
              source: "Greenwood and Tripp 1970 with the product of roughness, density and radius 0.05 and their ratio 0.01" }
        film_factor as film_factor: f64 [ONE = 1.0] "factor on the film thickness: carries the error of all film models"
            { allowed: between(0.01, 100.0), usual: between(0.5, 2.0), spread: Spread::Lognormal(0.5, 2.0), class: Class::Closure,
              source: "1 by definition; its spread is the error of film formulas" }
        modulus_gpa as modulus: f64 [GPA = 206.0] "modulus of elasticity of pin and bush"
            { symbol: "E", allowed: between(10.0, 700.0), usual: between(190.0, 215.0), class: Class::FromMemory, source: "steel" }
        poisson_ratio as poisson_ratio: f64 [ONE = 0.3] "Poisson's ratio of pin and bush"
            { symbol: "ν", allowed: between(0.0, 0.49), class: Class::FromMemory, source: "steel" }
    }
} } }
#[cfg(feature = "python")]
pub(crate) use surface_noun;
surface_noun!(noun);

macro_rules! joint_noun { ($declare:ident) => { $declare! {
    /// How oil wets the gap of a joint.
    Joint / JointSi, "joint", defaults: all {
        contact_angle_deg as contact_angle: f64 [DEG = 20.0] "angle at which the oil meets the steel"
            { allowed: between(0.0, 180.0), usual: between(0.0, 60.0), spread: Spread::Triangular(0.0, 60.0), class: Class::FromMemory, source: "dirty steel" }
        eccentricity_ratio as eccentricity_ratio: f64 [ONE = 1.0] "eccentricity of the resting pin over the clearance"
            { symbol: "e", allowed: between(0.0, 1.0), spread: Spread::Uniform(0.8, 1.0), class: Class::Derived, source: "a loaded pin rests on its bush" }
    }
} } }
#[cfg(feature = "python")]
pub(crate) use joint_noun;
joint_noun!(noun);
