//! Quantities of a year times their prices.

use super::items::Items;

/// What a line uses and suffers, a year where nothing else is said. All ≥ 0, lives > 0.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Quantities {
    /// Oil (volume a year).
    pub oil: f64,
    /// Applications, or refills and checks, a year.
    pub applications: f64,
    /// Labour time of one.
    pub application_time: f64,
    /// Electrical input power of the drive, mean while running; times `running_time` in the unit of the energy price.
    pub drive_power: f64,
    /// Running time a year.
    pub running_time: f64,
    /// Cleanings a year.
    pub cleanings: f64,
    /// Labour time of one.
    pub cleaning_time: f64,
    /// Breakdowns a year.
    pub breakdowns: f64,
    /// Stop of one.
    pub breakdown_time: f64,
    /// Planned stops (time a year) that are not counted elsewhere.
    pub planned_stop: f64,
    /// Length of chain, all strands.
    pub chain_length: f64,
    /// Labour time to fit it.
    pub fit_time: f64,
    /// Stop for fitting it.
    pub fit_downtime: f64,
    /// Service life of the chain (years).
    pub chain_life: f64,
    /// Chains that a set of sprockets lasts.
    pub chains_per_sprocket: f64,
    /// Waste oil (volume a year).
    pub waste: f64,
    /// Upkeep of the equipment (money a year).
    pub upkeep: f64,
}

/// What these cost.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Prices {
    /// Money per volume of oil.
    pub oil: f64,
    /// Money per time of labour.
    pub labour: f64,
    /// Money per energy.
    pub energy: f64,
    /// Material of one cleaning.
    pub cleaning_material: f64,
    /// Money per time of a stop.
    pub downtime: f64,
    /// Money per length of chain.
    pub chain: f64,
    /// One set of sprockets.
    pub sprocket_set: f64,
    /// Money per volume of waste oil.
    pub waste: f64,
}

/// Cost of one chain replacement: chain, labour, and the stop.
pub fn chain_replacement_cost(q: &Quantities, p: &Prices) -> f64 {
    q.chain_length * p.chain + q.fit_time * p.labour + q.fit_downtime * p.downtime
}

/// Something that is replaced again and again.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Piece {
    /// Cost of one replacement.
    pub cost: f64,
    /// Life (years), > 0.
    pub life: f64,
}

/// The two wearing pieces of a line: chain and set of sprockets.
pub fn wearing_pieces(q: &Quantities, p: &Prices) -> [Piece; 2] {
    [
        Piece { cost: chain_replacement_cost(q, p), life: q.chain_life },
        Piece { cost: p.sprocket_set, life: q.chains_per_sprocket * q.chain_life },
    ]
}

/// The nine items of a year; chain and sprockets spread evenly over their lives.
///
/// Source: common practice of maintenance costing, no source. A stop must be counted once: a breakdown that replaces the
/// chain belongs to `fit_downtime` or to `breakdowns`, not to both.
pub fn yearly(q: &Quantities, p: &Prices) -> Items {
    let [chain, sprockets] = wearing_pieces(q, p).map(|piece| piece.cost / piece.life);
    Items {
        oil: q.oil * p.oil,
        application_labour: q.applications * q.application_time * p.labour,
        energy: q.drive_power * q.running_time * p.energy,
        cleaning: q.cleanings * (q.cleaning_time * p.labour + p.cleaning_material),
        downtime: (q.breakdowns * q.breakdown_time + q.planned_stop) * p.downtime,
        chain,
        sprockets,
        waste: q.waste * p.waste,
        upkeep: q.upkeep,
    }
}
