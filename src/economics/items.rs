//! The nine items of a year, in a fixed order.

use std::ops::Sub;

/// Money a year, or the saving of it (then an item may be negative).
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Items {
    /// Oil bought.
    pub oil: f64,
    /// Labour to apply it; refills and checks where that is automatic.
    pub application_labour: f64,
    /// Electricity of the drive.
    pub energy: f64,
    /// Labour and material of cleaning.
    pub cleaning: f64,
    /// Breakdowns and planned stops.
    pub downtime: f64,
    /// New chains, with fitting and the stop it takes.
    pub chain: f64,
    /// New sprockets.
    pub sprockets: f64,
    /// Disposal of waste oil.
    pub waste: f64,
    /// Upkeep of the lubrication equipment.
    pub upkeep: f64,
}

impl Items {
    /// Names in order.
    pub const NAMES: [&str; 9] =
        ["oil", "application_labour", "energy", "cleaning", "downtime", "chain", "sprockets", "waste", "upkeep"];

    /// Values in the order of [`Self::NAMES`].
    pub fn values(&self) -> [f64; 9] {
        [
            self.oil,
            self.application_labour,
            self.energy,
            self.cleaning,
            self.downtime,
            self.chain,
            self.sprockets,
            self.waste,
            self.upkeep,
        ]
    }

    /// From values in the order of [`Self::NAMES`].
    pub fn from_values(values: [f64; 9]) -> Self {
        let [oil, application_labour, energy, cleaning, downtime, chain, sprockets, waste, upkeep] = values;
        Items { oil, application_labour, energy, cleaning, downtime, chain, sprockets, waste, upkeep }
    }

    /// Sum of all items.
    pub fn total(&self) -> f64 {
        self.values().iter().sum()
    }

    /// Sum without what depends on the wear life: chain and sprockets.
    pub fn total_without_chain(&self) -> f64 {
        Items { chain: 0.0, sprockets: 0.0, ..*self }.total()
    }
}

impl Sub for Items {
    type Output = Items;

    /// Saving: now − proposed.
    fn sub(self, proposed: Items) -> Items {
        let (now, proposed) = (self.values(), proposed.values());
        Items::from_values(std::array::from_fn(|i| now[i] - proposed[i]))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn savings_add_up(now in prop::array::uniform9(0.0..1e5f64), proposed in prop::array::uniform9(0.0..1e5f64)) {
            let (now, proposed) = (Items::from_values(now), Items::from_values(proposed));
            let saving = now - proposed;
            prop_assert!((saving.total() - (now.total() - proposed.total())).abs() <= 1e-12 * now.total().max(proposed.total()));
            let rest = saving.total_without_chain() + saving.chain + saving.sprockets;
            prop_assert!((rest - saving.total()).abs() <= 1e-12 * now.total());
            prop_assert_eq!(Items::from_values(saving.values()), saving);
        }
    }
}
