//! Gear between motor and sprocket: a loss that grows with the load and one that is always there.

/// A gear with its nameplate efficiency split into a part that follows the load and a part that follows the speed.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Gear {
    /// Output power (W) at which the efficiency holds; the motor's rated power where nothing else is known. > 0.
    pub rated_power: f64,
    /// Efficiency at rated power, 0.05 to 1.
    pub efficiency: f64,
    /// Share of the rated loss that stays when the load is gone (churning, seals, preload), 0 to 1.
    pub fixed_share: f64,
    /// Efficiency of an intermediate belt or chain, 0.05 to 1; 1 if there is none.
    pub extra_efficiency: f64,
}

impl Gear {
    /// Loss at rated load over rated power.
    fn relative_loss(&self) -> f64 {
        1.0 / self.efficiency - 1.0
    }

    /// Loss at rated speed that the load does not change (W).
    pub fn idle_loss(&self) -> f64 {
        self.fixed_share * self.rated_power * self.relative_loss()
    }

    /// Power lost per power passed on, without the idle loss.
    pub fn load_loss(&self) -> f64 {
        (1.0 - self.fixed_share) * self.relative_loss()
    }

    /// Shaft power of the motor (W) for the power `chain_power` (W) at the sprocket.
    ///
    /// `relative_speed` is speed over rated speed, 1 at rated. A negative `chain_power` overhauls: the load drives the
    /// gear, which then passes on less than it takes; a negative answer means that the motor brakes.
    /// Source: load-dependent and load-independent gear losses as in ISO/TR 14179-1 (from memory); the split of the nameplate loss
    /// is a closure of our own. The intermediate stage loses in the direction in which the power flows.
    ///
    /// ```
    /// let gear = pinfilm::drive::Gear { rated_power: 750.0, efficiency: 0.78, fixed_share: 0.4, extra_efficiency: 1.0 };
    /// // a third of a kilowatt of nameplate efficiency is not 78 % at a tiny load
    /// assert!((gear.shaft_power(20.0, 1.0) - 108.0).abs() < 1e-9);
    /// ```
    pub fn shaft_power(&self, chain_power: f64, relative_speed: f64) -> f64 {
        let passed = if chain_power >= 0.0 {
            chain_power * (1.0 + self.load_loss())
        } else {
            chain_power / (1.0 + self.load_loss())
        };
        let taken = passed + self.idle_loss() * relative_speed;
        if taken >= 0.0 { taken / self.extra_efficiency } else { taken * self.extra_efficiency }
    }

    /// Power at the sprocket (W) for the shaft power `shaft_power` (W) of a motor that drives; below zero where the motor
    /// does not even turn the empty gear. Inverse of [`Self::shaft_power`] where the chain takes power.
    pub fn chain_power(&self, shaft_power: f64, relative_speed: f64) -> f64 {
        (shaft_power * self.extra_efficiency - self.idle_loss() * relative_speed) / (1.0 + self.load_loss())
    }

    /// Change of shaft power per change of chain power while the motor drives.
    pub fn shaft_per_chain_power(&self) -> f64 {
        (1.0 + self.load_loss()) / self.extra_efficiency
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const WORM: Gear = Gear { rated_power: 750.0, efficiency: 0.78, fixed_share: 0.4, extra_efficiency: 1.0 };

    #[test]
    fn loses_in_both_directions() {
        assert!((WORM.shaft_power(400.0, 1.0) - 552.307692307692).abs() < 1e-9);
        assert!((WORM.shaft_power(-100.0, 1.0) + 0.910931174089).abs() < 1e-9);
        for power in [-2000.0, -100.0, -1.0, 0.0, 1.0, 100.0, 2000.0] {
            let with_belt = Gear { extra_efficiency: 0.9, ..WORM };
            assert!(WORM.shaft_power(power, 1.0) > power);
            assert!(with_belt.shaft_power(power, 1.0) >= WORM.shaft_power(power, 1.0));
        }
    }

    #[test]
    fn backwards() {
        for power in [0.0, 1.0, 100.0, 2000.0] {
            let with_belt = Gear { extra_efficiency: 0.9, ..WORM };
            assert!((with_belt.chain_power(with_belt.shaft_power(power, 0.7), 0.7) - power).abs() < 1e-10);
        }
    }

    #[test]
    fn nameplate_efficiency_at_rated_power() {
        assert!((WORM.shaft_power(750.0, 1.0) - 750.0 / 0.78).abs() < 1e-9);
        let lossless = Gear { efficiency: 1.0, ..WORM };
        assert_eq!(lossless.shaft_power(123.0, 1.0), 123.0);
    }

    #[test]
    fn slope_is_the_difference() {
        let gear = Gear { extra_efficiency: 0.95, ..WORM };
        let slope = (gear.shaft_power(301.0, 1.0) - gear.shaft_power(300.0, 1.0)) / 1.0;
        assert!((slope - gear.shaft_per_chain_power()).abs() < 1e-10);
    }
}
