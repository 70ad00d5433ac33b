//! One loaded pair, from geometry to friction: pin in bush in a turn, or bush in a roller that turns for ever.

use super::film::{LineContactFormula, Rigid, RigidJoint, Roots, conformal_radius, coverage, line_contact_film};
use super::pressure::{ALWAYS_PERMISSIBLE, bearing_pressure, permissible_pressure, pin_sag};
use super::{ContactArc, Lubricant, Pair, RoughSurface, Turn};
use crate::error::{Code, Error, Result};
use crate::quantity::show::in_unit;
use crate::quantity::unit::{MM, MPA};

/// Times the permissible pressure beyond which nothing is computed.
const BEYOND_PERMISSIBLE: f64 = 4.0;

/// What somebody who reads a result should know about it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Cautions {
    /// The pair carries nothing: friction is that of the boundary layer, film and pressure are not defined and read 0.
    pub unloaded: bool,
    /// Nominal pressure above what is permissible in practice.
    pub bearing_pressure: bool,
    /// The pin bends more than the contact gives: the bush ends carry up to four times the computed pressure.
    pub pin_bending: bool,
    /// The rigid film may count, and the turn is too short or the load too light for its closed form: too thin.
    pub brief_turn: bool,
    /// A film thicker than the clearance: the pair floats, and film formulas say no more than that.
    pub thick_film: bool,
}

/// A loaded pair with oil all round it. How full it really is comes in with [`Contact::friction`], so that one contact
/// serves every class of joints.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Contact {
    /// Load, N.
    pub load: f64,
    /// Where the two touch.
    pub arc: ContactArc,
    /// Nominal bearing pressure, Pa.
    pub pressure: f64,
    /// Sliding speed of the surfaces, m/s.
    pub sliding_speed: f64,
    /// Mean share of the strip that oil covers.
    pub coverage: f64,
    /// Rigid film, m: mean over the turn, or steady. `None` where it was proven thinner than the elastic one.
    pub rigid_film: Option<f64>,
    /// Elastic film of the covered strip, m; the strip has `coverage` of it.
    pub elastic_film: f64,
    /// The larger of both at fill 1, m, with the film factor.
    pub flooded_film: f64,
    /// Flooded film over roughness.
    pub lambda_at_fill_1: f64,
    /// Viscosity of the oil under the pressure of the strip, Pa s.
    pub viscosity_in_contact: f64,
    /// What to know about these numbers.
    pub cautions: Cautions,
    /// Friction of the sheared strip times its gap (m), and of the ring in units of its drag factor.
    pub(super) strip: f64,
    pub(super) ring: f64,
    pub(super) clearance: f64,
    pub(super) load_per_length: f64,
    /// From where the rigid film of a pair much like this one is searched.
    roots: Roots,
}

/// How much of the film is worth computing.
#[derive(Clone, Copy, PartialEq)]
enum Parts {
    /// The larger film only.
    Larger,
    /// Every part, to be shown.
    All,
}

/// A pin in its bush, in a turn after a rest, as fast as its friction can be had.
///
/// `load` N during the turn (0 or less: unloaded); `viscosity_at_pressure` gives Pa s from Pa at the temperature of
/// the joint. The rigid film is skipped where the elastic film is proven thicker. Fails where the contact is pressed
/// beyond what steel stands, or the bearing beyond four times what is permissible.
/// Source: the parts are sourced at [`ContactArc`], [`turn_film`](super::turn_film),
/// [`line_contact_film`](super::line_contact_film); taking the larger film is a closure of our own.
pub fn articulating(
    pair: &Pair,
    surface: &RoughSurface,
    lubricant: &Lubricant,
    load: f64,
    turn: &Turn,
    viscosity_at_pressure: impl FnOnce(f64) -> Result<f64>,
) -> Result<Contact> {
    articulating_near(None, pair, surface, lubricant, load, turn, viscosity_at_pressure)
}

/// As [`articulating`], searched from the contact of a pair much like this one where one is known: the same numbers to
/// 1e-11, sooner.
pub fn articulating_near(
    near: Option<&Contact>,
    pair: &Pair,
    surface: &RoughSurface,
    lubricant: &Lubricant,
    load: f64,
    turn: &Turn,
    viscosity_at_pressure: impl FnOnce(f64) -> Result<f64>,
) -> Result<Contact> {
    articulate(
        pair,
        surface,
        lubricant,
        load,
        turn,
        viscosity_at_pressure,
        Parts::Larger,
        near.map_or_else(Roots::default, |near| near.roots),
    )
}

/// As [`articulating`], with the rigid film always computed.
pub fn articulating_in_full(
    pair: &Pair,
    surface: &RoughSurface,
    lubricant: &Lubricant,
    load: f64,
    turn: &Turn,
    viscosity_at_pressure: impl FnOnce(f64) -> Result<f64>,
) -> Result<Contact> {
    articulate(pair, surface, lubricant, load, turn, viscosity_at_pressure, Parts::All, Roots::default())
}

/// A bush in its roller (or any pair that turns without a stop), as fast as its friction can be had.
///
/// `load` N on this pair (0 or less: unloaded), `angular_speed` rad/s of one against the other, ≥ 0. The permissible
/// pressure of pins and bushes is not asked of it. Otherwise as [`articulating`].
pub fn rolling(
    pair: &Pair,
    surface: &RoughSurface,
    lubricant: &Lubricant,
    load: f64,
    angular_speed: f64,
    viscosity_at_pressure: impl FnOnce(f64) -> Result<f64>,
) -> Result<Contact> {
    roll(pair, surface, lubricant, load, angular_speed, viscosity_at_pressure, Parts::Larger)
}

/// As [`rolling`], with the rigid film always computed.
pub fn rolling_in_full(
    pair: &Pair,
    surface: &RoughSurface,
    lubricant: &Lubricant,
    load: f64,
    angular_speed: f64,
    viscosity_at_pressure: impl FnOnce(f64) -> Result<f64>,
) -> Result<Contact> {
    roll(pair, surface, lubricant, load, angular_speed, viscosity_at_pressure, Parts::All)
}

#[allow(clippy::too_many_arguments)]
fn articulate(
    pair: &Pair,
    surface: &RoughSurface,
    lubricant: &Lubricant,
    load: f64,
    turn: &Turn,
    viscosity_at_pressure: impl FnOnce(f64) -> Result<f64>,
    parts: Parts,
    roots: Roots,
) -> Result<Contact> {
    let Some(mut contact) = Contact::pressed(pair, lubricant, load, turn.angular_speed, viscosity_at_pressure)? else {
        return Ok(Contact::unloaded(pair, turn.angular_speed));
    };
    contact.check_pressure(pair)?;
    contact.roots = roots;
    contact.cautions.pin_bending = pin_sag(pair, load) > contact.arc.approach(pair);
    if contact.moves(parts) {
        contact.coverage = coverage(turn.angle, pair.radius, contact.arc.half_width);
        let elastic = contact.coverage * contact.elastic_film;
        let joint = RigidJoint::new(pair, lubricant.viscosity, load, turn);
        if parts == Parts::All {
            let (film, brief) = joint.mean_film()?;
            contact.rigid_film = Some(film);
            contact.cautions.brief_turn = brief && !joint.steady_loses(elastic);
        } else {
            match joint.mean_film_against(elastic, &mut contact.roots)? {
                Rigid::SteadyLoses => {}
                Rigid::MeanLoses { brief } => contact.cautions.brief_turn = brief,
                Rigid::Mean { film, brief } => {
                    contact.rigid_film = Some(film);
                    contact.cautions.brief_turn = brief;
                }
            }
        }
    }
    Ok(contact.flooded(surface))
}

fn roll(
    pair: &Pair,
    surface: &RoughSurface,
    lubricant: &Lubricant,
    load: f64,
    angular_speed: f64,
    viscosity_at_pressure: impl FnOnce(f64) -> Result<f64>,
    parts: Parts,
) -> Result<Contact> {
    let Some(mut contact) = Contact::pressed(pair, lubricant, load, angular_speed, viscosity_at_pressure)? else {
        return Ok(Contact::unloaded(pair, angular_speed));
    };
    if contact.moves(parts) {
        contact.coverage = 1.0;
        let endless = Turn { angular_speed, angle: f64::INFINITY, rest_time: 0.0, rest_load: 0.0 };
        let joint = RigidJoint::new(pair, lubricant.viscosity, load, &endless);
        if parts == Parts::All || !joint.steady_loses(contact.elastic_film) {
            contact.rigid_film = Some(joint.steady_film()?);
        }
    }
    Ok(contact.flooded(surface))
}

impl Contact {
    /// Geometry, pressures and elastic film; none without load.
    fn pressed(
        pair: &Pair,
        lubricant: &Lubricant,
        load: f64,
        angular_speed: f64,
        viscosity_at_pressure: impl FnOnce(f64) -> Result<f64>,
    ) -> Result<Option<Contact>> {
        if load <= 0.0 {
            return Ok(None);
        }
        let arc = ContactArc::new(pair, load).checked()?;
        let clearance = pair.fitted_clearance();
        let sliding_speed = angular_speed * pair.radius;
        let load_per_length = load / pair.length;
        let viscosity_in_contact = viscosity_at_pressure(arc.mean_pressure)?;
        let elastic_film = line_contact_film(
            lubricant.viscosity,
            0.5 * sliding_speed,
            load_per_length,
            conformal_radius(pair.radius, clearance),
            lubricant.pressure_viscosity,
            pair.elasticity.plane_strain_modulus(),
            LineContactFormula::Smallest,
        );
        Ok(Some(Contact {
            load,
            arc,
            pressure: bearing_pressure(load, 2.0 * pair.radius, pair.length),
            sliding_speed,
            coverage: 0.0,
            rigid_film: None,
            elastic_film,
            flooded_film: 0.0,
            lambda_at_fill_1: 0.0,
            viscosity_in_contact,
            cautions: Cautions::default(),
            strip: sliding_speed * viscosity_in_contact * 2.0 * arc.half_width / load_per_length,
            ring: sliding_speed * lubricant.viscosity * pair.radius / load_per_length,
            clearance,
            load_per_length,
            roots: Roots::default(),
        }))
    }

    /// A pair without load: friction only.
    fn unloaded(pair: &Pair, angular_speed: f64) -> Contact {
        Contact {
            load: 0.0,
            arc: ContactArc::NONE,
            pressure: 0.0,
            sliding_speed: angular_speed * pair.radius,
            coverage: 0.0,
            rigid_film: None,
            elastic_film: 0.0,
            flooded_film: 0.0,
            lambda_at_fill_1: 0.0,
            viscosity_in_contact: 0.0,
            cautions: Cautions { unloaded: true, ..Cautions::default() },
            strip: 0.0,
            ring: 0.0,
            clearance: pair.fitted_clearance(),
            load_per_length: 0.0,
            roots: Roots::default(),
        }
    }

    /// Whether there is any film to compute; a pair at a standstill has none, and its parts are 0.
    fn moves(&mut self, parts: Parts) -> bool {
        let moves = self.sliding_speed > 0.0;
        if !moves && parts == Parts::All {
            self.rigid_film = Some(0.0);
        }
        moves
    }

    /// Warns of a nominal pressure above the permissible one and refuses four times that.
    fn check_pressure(&mut self, pair: &Pair) -> Result<()> {
        if self.pressure <= ALWAYS_PERMISSIBLE {
            return Ok(());
        }
        let permissible = permissible_pressure(self.sliding_speed);
        self.cautions.bearing_pressure = self.pressure > permissible;
        if self.pressure > BEYOND_PERMISSIBLE * permissible {
            return Err(Error::new(
                Code::BeyondModel,
                "bearing pressure",
                format!(
                    "a load of {:.0} N on a pin of {} in a bush {} long is {}, more than four times what is permissible at \
                     this speed: check the pull and the chain",
                    self.load,
                    in_unit(2.0 * pair.radius, &MM),
                    in_unit(pair.length, &MM),
                    in_unit(self.pressure, &MPA)
                ),
            )
            .number(self.pressure)
            .unit("Pa")
            .limit(format!("at most {}", in_unit(BEYOND_PERMISSIBLE * permissible, &MPA))));
        }
        Ok(())
    }

    /// The film that counts at fill 1.
    fn flooded(mut self, surface: &RoughSurface) -> Contact {
        let smooth = self.rigid_film.unwrap_or(0.0).max(self.coverage * self.elastic_film);
        self.flooded_film = surface.film_factor * smooth;
        self.lambda_at_fill_1 = self.flooded_film / surface.roughness;
        self.cautions.thick_film = smooth > self.clearance;
        self
    }
}
