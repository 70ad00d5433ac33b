//! Straights, turns and friction as surveyed, in SI.

/// What carries the chain on a straight, or the floor under a corner.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Support {
    /// Chain rollers on a track: friction of bush on roller and rolling friction.
    Rollers,
    /// Plates or slats sliding on a track.
    Slide,
    /// Trolleys that hang in a track.
    Trolleys,
    /// Idler rollers at a spacing, the chain bending over each.
    Idlers,
    /// Nothing: a slack catenary or a vertical run.
    Free,
}

/// What carries the load of a straight.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum LoadOn {
    /// The chain.
    Chain,
    /// A bed beside the chain, over which the chain pushes the load.
    Bed,
    /// The chain, which runs on under a load that is held back.
    Accumulating,
}

/// What turns the chain.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum TurnKind {
    /// A wheel or sprocket that turns with the chain.
    Wheel,
    /// A ring of standing rollers.
    RollerTurn,
    /// A bent track.
    Curve,
    /// A bent track with a floor that carries the weight.
    Corner,
}

/// How the chain touches the wall of a curve or corner.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Contact {
    /// Plates slide.
    Slide,
    /// Chain rollers roll.
    Rollers,
    /// Trolleys roll.
    Trolleys,
}

/// The plane in which a turn bends the chain.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Plane {
    /// The plane of the pins that most turns use.
    Main,
    /// Across it (biplanar chain).
    Cross,
}

/// A straight.
#[derive(Debug, Clone, PartialEq)]
pub struct StraightSi {
    /// Length along the chain, m.
    pub length: f64,
    /// Rise in travel direction, m.
    pub rise: f64,
    /// Everything that rides with the chain, all strands together, kg/m.
    pub load: f64,
    /// Surroundings, °C; none: ambient.
    pub temperature: Option<f64>,
    /// Heat transfer from the surroundings to the chain, W/(m² K).
    pub heat_transfer: f64,
    /// What carries the chain.
    pub support: Support,
    /// What carries the load.
    pub load_on: LoadOn,
    /// Whether the load is placed at the start of this straight.
    pub loads: bool,
    /// Speed of the load along the chain before it is placed, m/s.
    pub feed_speed: f64,
    /// Distance between idlers, m.
    pub idler_spacing: Option<f64>,
    /// Pull of brushes, scrapers and seals, N.
    pub extra_pull: f64,
    /// Whether the chain is washed here.
    pub wash: bool,
}

/// A turn.
#[derive(Debug, Clone, PartialEq)]
pub struct TurnSi {
    /// What turns the chain.
    pub kind: TurnKind,
    /// How a curve or corner touches.
    pub contact: Contact,
    /// Floor of a corner.
    pub support: Support,
    /// +1 towards the inside of the loop, −1 for a reverse bend.
    pub side: i64,
    /// Plane of the bend.
    pub plane: Plane,
    /// Teeth of a sprocket.
    pub teeth: Option<u32>,
    /// Radius of the joint path of a smooth turn, m.
    pub radius: Option<f64>,
    /// Angle of wrap, rad.
    pub wrap: f64,
    /// Rise in travel direction, m.
    pub rise: f64,
    /// Everything that rides with the chain, all strands together, kg/m.
    pub load: f64,
    /// Shaft diameter at the bearing, m.
    pub shaft_diameter: Option<f64>,
    /// Surroundings, °C; none: ambient.
    pub temperature: Option<f64>,
    /// Heat transfer from the surroundings to the chain, W/(m² K).
    pub heat_transfer: f64,
    /// Pull of brushes, scrapers and seals, N.
    pub extra_pull: f64,
    /// Whether this turn drives the chain.
    pub drive: bool,
}

/// A section of the loop.
#[derive(Debug, Clone, PartialEq)]
pub enum SectionSi {
    /// A straight.
    Straight(StraightSi),
    /// A turn.
    Turn(TurnSi),
}

/// Friction of the rubbing pairs; none: computed elsewhere.
#[derive(Debug, Clone, PartialEq)]
pub struct FrictionSi {
    /// Pin in bush.
    pub joint: Option<f64>,
    /// Roller on bush.
    pub bush_roller: Option<f64>,
    /// Plate on track.
    pub plate_track: f64,
    /// Lever arm of rolling friction, m.
    pub rolling_arm: f64,
    /// Multiplier of roller resistance for flange rub, dirt and rail joints.
    pub track_factor: f64,
    /// Resistance of a trolley over its load.
    pub trolley_coefficient: f64,
    /// Resistance of idlers over their load.
    pub idler_coefficient: f64,
    /// Resistance of the standing rollers of a roller turn over their load.
    pub turn_roller_coefficient: f64,
    /// Load on bed.
    pub load_bed: f64,
    /// Bearing of a wheel, at the shaft radius.
    pub wheel_bearing: f64,
    /// Multiplier of friction at breakaway.
    pub breakaway_factor: f64,
}
