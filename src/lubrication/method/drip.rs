//! Drip: drops fall at their own rate, and a passing joint catches one or not.
//!
//! How long a joint waits for its drop says [`crate::lubrication::coverage::drip_wait`]. Passes are taken as independent. A steady dripper against equal joint spacing is itself a rotation and can lock.

/// A dripper against passing joints.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Drip {
    /// Chance that a passing joint catches a drop, 0 to 1.
    pub chance: f64,
    /// Oil into the joint when it does, m³.
    pub dose: f64,
    /// Circuit time, s.
    pub circuit: f64,
}

impl Drip {
    /// From what a joint is offered in a pass: `offered` m³ after capture, in drops of `drop` m³; `entered` share gets in.
    ///
    /// Closure of our own: chance = offered/drop, up to 1; beyond that every pass brings what is offered.
    pub fn new(offered: f64, drop: f64, entered: f64, circuit: f64) -> Self {
        let chance = (offered / drop).min(1.0);
        let dose = if chance < 1.0 { drop } else { offered };
        Drip { chance, dose: dose * entered, circuit }
    }

    /// Mean over time if nothing ever overflowed (m³); `loss_rate` 1/s. Exact.
    pub fn mean_without_overflow(&self, loss_rate: f64) -> f64 {
        self.chance * self.dose / (loss_rate * self.circuit)
    }

    /// Mean fill over time if every drop filled the joint (share of the capacity). Exact.
    pub fn mean_if_filled(&self, loss_rate: f64) -> f64 {
        let decay = loss_rate * self.circuit;
        let lost = -(-decay).exp_m1();
        // 1 - (1 - p) e, without its cancellation
        let renewed = lost + self.chance * (1.0 - lost);
        self.chance * lost / (renewed * decay)
    }

    /// Upper bound of the mean fill (share of `capacity`, m³): the lesser of the two limits.
    pub fn mean_fill(&self, loss_rate: f64, capacity: f64) -> f64 {
        (self.mean_without_overflow(loss_rate) / capacity).min(self.mean_if_filled(loss_rate))
    }

    /// Spread of the fill over the joints, standard deviation over mean, without overflow. Exact for independent passes.
    pub fn spread(&self, loss_rate: f64) -> f64 {
        let decay = loss_rate * self.circuit;
        // (1 - e)/(1 + e) is tanh(k C/2)
        ((1.0 - self.chance) * (0.5 * decay).tanh() / self.chance).sqrt()
    }

    /// Share of the joints below the fill `floor`, if every drop filled the joint.
    pub fn share_below(&self, floor: f64, loss_rate: f64) -> f64 {
        let circuits = (-floor.ln() / (loss_rate * self.circuit)).ceil();
        (circuits * (-self.chance).ln_1p()).exp()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn spread_of_an_independent_simulation() {
        // Monte Carlo of an independent implementation gave 0.3817
        let drip = Drip { chance: 0.02, dose: 0.3, circuit: 300.0 };
        assert!((drip.spread(2e-5) - 0.383405).abs() < 1e-6);
    }

    #[test]
    fn every_pass_catches() {
        let drip = Drip::new(5e-8, 4e-8, 0.5, 300.0);
        assert_eq!((drip.chance, drip.dose), (1.0, 2.5e-8));
        assert_eq!(drip.spread(1e-5), 0.0);
        assert_eq!(drip.share_below(0.5, 1e-5), 0.0);
        let decay: f64 = 1e-5 * 300.0;
        assert!((drip.mean_if_filled(1e-5) - (1.0 - (-decay).exp()) / decay).abs() < 1e-12);
    }

    #[test]
    fn a_rare_drop_keeps_its_digits() {
        let drip = Drip { chance: 1e-9, dose: 4e-8, circuit: 10.0 };
        let renewal: f64 = 1e-9 / (1e-9 + 1e-12 * 10.0);
        assert!((drip.mean_if_filled(1e-12) / renewal - 1.0).abs() < 1e-9);
    }
}
