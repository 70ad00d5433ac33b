//! What resists the chain: the causes of pull, the coefficients behind them, and what supports cost.

use super::{FrictionSi, GRAVITY, Layout, Place, Support};

/// Lever arm of rolling friction, steel roller on steel track, m (Dubbel; Hütte; from memory, 0.3 to 0.6 mm clean).
pub const ROLLING_ARM_STEEL: f64 = 0.0005;

/// Resistance of a rolling wheel over its load: plain bearing on the axle plus rolling friction on the track.
///
/// `friction` of axle in wheel, `axle_diameter` and `wheel_diameter` m, `rolling_arm` m; wheel_diameter > 0.
/// Source: (mu d + 2 f)/D, textbooks of materials handling (Dubbel).
///
/// ```
/// # use pinfilm::circuit::rolling_resistance;
/// assert!((rolling_resistance(0.15, 0.015, 0.060, 0.0005) - 0.054_166_7).abs() < 1e-7);
/// ```
pub fn rolling_resistance(friction: f64, axle_diameter: f64, wheel_diameter: f64, rolling_arm: f64) -> f64 {
    (friction * axle_diameter + 2.0 * rolling_arm) / wheel_diameter
}

/// Tension (N) of a slack strand of `mass_per_length` kg/m that sags `sag` m over a level `span` m.
///
/// Parabola, good for sag up to a tenth of the span. Source: closed form q g a²/(8 s).
pub fn sag_tension(mass_per_length: f64, span: f64, sag: f64) -> f64 {
    mass_per_length * GRAVITY * span * span / (8.0 * sag)
}

/// Sag (m) of a strand of `mass_per_length` kg/m over a level `span` m under `tension` N > 0; inverse of [`sag_tension`].
pub fn sag(mass_per_length: f64, span: f64, tension: f64) -> f64 {
    sag_tension(mass_per_length, span, tension)
}

/// Where a part of the pull comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Cause {
    /// Pin in bush, where the chain bends.
    Joint,
    /// Chain roller on its bush.
    BushRoller,
    /// Chain roller on its track.
    RollingArm,
    /// Plate or slat sliding on its track.
    PlateTrack,
    /// Trolley in its track.
    Trolley,
    /// Standing rollers of a roller turn.
    TurnRoller,
    /// Idlers under the chain.
    Idler,
    /// Load on a bed, or held back over the chain.
    Bed,
    /// Floor of a corner.
    Floor,
    /// Bearings of wheels.
    WheelBearing,
    /// Brushes, scrapers, seals.
    Extra,
    /// Bringing placed load to speed.
    Accel,
    /// Lifting.
    Rise,
}

impl Cause {
    /// Number of causes.
    pub const COUNT: usize = 13;

    /// All causes, in the order in which arrays by cause hold them.
    pub const ALL: [Cause; Cause::COUNT] = [
        Cause::Joint,
        Cause::BushRoller,
        Cause::RollingArm,
        Cause::PlateTrack,
        Cause::Trolley,
        Cause::TurnRoller,
        Cause::Idler,
        Cause::Bed,
        Cause::Floor,
        Cause::WheelBearing,
        Cause::Extra,
        Cause::Accel,
        Cause::Rise,
    ];

    /// Its name in results.
    pub const fn as_str(self) -> &'static str {
        match self {
            Cause::Joint => "joint",
            Cause::BushRoller => "bush_roller",
            Cause::RollingArm => "rolling_arm",
            Cause::PlateTrack => "plate_track",
            Cause::Trolley => "trolley",
            Cause::TurnRoller => "turn_roller",
            Cause::Idler => "idler",
            Cause::Bed => "bed",
            Cause::Floor => "floor",
            Cause::WheelBearing => "wheel_bearing",
            Cause::Extra => "extra",
            Cause::Accel => "accel",
            Cause::Rise => "rise",
        }
    }

    /// Whether it turns work into heat and holds a stopped chain: all but lifting and bringing load to speed.
    pub const fn is_friction(self) -> bool {
        !matches!(self, Cause::Accel | Cause::Rise)
    }
}

/// Coefficients of friction as numbers: what [`march`](super::march()) needs, and what whoever computes friction updates.
#[derive(Debug, Clone, PartialEq)]
pub struct Coefficients {
    /// Pin in bush, by section of the survey; read on turns and idler straights.
    pub joint: Vec<f64>,
    /// Roller on bush, by section of the survey; read on roller straights ([`Place::roller_straight`]).
    pub bush_roller: Vec<f64>,
    /// Plate on track.
    pub plate_track: f64,
    /// Lever arm of rolling friction, m.
    pub rolling_arm: f64,
    /// Multiplier of roller resistance for flange rub, dirt and rail joints.
    pub track_factor: f64,
    /// Resistance of a trolley over its load.
    pub trolley: f64,
    /// Resistance of idlers over their load.
    pub idler: f64,
    /// Resistance of standing rollers over their load.
    pub turn_roller: f64,
    /// Load on bed.
    pub load_bed: f64,
    /// Bearing of a wheel, at the shaft radius.
    pub wheel_bearing: f64,
}

impl Coefficients {
    /// Coefficients of a loop of `sections`: those of `friction`, and a first guess where they are to be computed.
    pub fn new(sections: usize, friction: &FrictionSi, joint_guess: f64, bush_roller_guess: f64) -> Self {
        Coefficients {
            joint: vec![friction.joint.unwrap_or(joint_guess); sections],
            bush_roller: vec![friction.bush_roller.unwrap_or(bush_roller_guess); sections],
            plate_track: friction.plate_track,
            rolling_arm: friction.rolling_arm,
            track_factor: friction.track_factor,
            trolley: friction.trolley_coefficient,
            idler: friction.idler_coefficient,
            turn_roller: friction.turn_roller_coefficient,
            load_bed: friction.load_bed,
            wheel_bearing: friction.wheel_bearing,
        }
    }

    /// Every coefficient times `factor`; rolling arm and track factor describe geometry and stay.
    ///
    /// With the breakaway factor: friction after a stop. With 0.5: the lowest friction at which a declining line is
    /// judged.
    pub fn scaled(&self, factor: f64) -> Self {
        let times = |list: &[f64]| list.iter().map(|friction| friction * factor).collect();
        Coefficients {
            joint: times(&self.joint),
            bush_roller: times(&self.bush_roller),
            plate_track: self.plate_track * factor,
            rolling_arm: self.rolling_arm,
            track_factor: self.track_factor,
            trolley: self.trolley * factor,
            idler: self.idler * factor,
            turn_roller: self.turn_roller * factor,
            load_bed: self.load_bed * factor,
            wheel_bearing: self.wheel_bearing * factor,
        }
    }

    /// Resistance of chain rollers over their load, by cause.
    pub(super) fn rollers(&self, layout: &Layout, place: &Place) -> Parts {
        let roller = layout.roller_diameter.unwrap_or(f64::INFINITY);
        let friction = self.bush_roller[place.roller_straight.unwrap_or(place.section)];
        [
            (Cause::BushRoller, self.track_factor * rolling_resistance(friction, layout.bush_diameter, roller, 0.0)),
            (Cause::RollingArm, self.track_factor * rolling_resistance(0.0, 0.0, roller, self.rolling_arm)),
        ]
    }

    /// Resistance of a support over its load, by cause.
    ///
    /// Idlers bend the joint by q g a/T along the sag and back, which costs mu_j (d_p/p) q g a whatever T is (closure
    /// of our own, upper bound).
    pub(super) fn support(&self, support: Support, layout: &Layout, place: &Place) -> Parts {
        match support {
            Support::Rollers => self.rollers(layout, place),
            Support::Slide => [(Cause::PlateTrack, self.plate_track), NO_PART],
            Support::Trolleys => [(Cause::Trolley, self.trolley), NO_PART],
            Support::Idlers => {
                let bending = self.joint[place.section] * layout.pin_diameter / layout.pitch;
                [(Cause::Idler, self.idler), (Cause::Joint, bending)]
            }
            Support::Free => [NO_PART; 2],
        }
    }
}

/// Up to two causes with their resistance over load.
pub(super) type Parts = [(Cause, f64); 2];

/// Nothing.
pub(super) const NO_PART: (Cause, f64) = (Cause::Extra, 0.0);

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn causes_stand_where_arrays_by_cause_expect_them() {
        for (index, cause) in Cause::ALL.iter().enumerate() {
            assert_eq!(*cause as usize, index);
        }
    }

    #[test]
    fn sag_and_its_tension_undo_each_other() {
        let tension = sag_tension(10.0, 2.0, 0.04);
        assert!((sag(10.0, 2.0, tension) - 0.04).abs() < 1e-15);
    }
}
