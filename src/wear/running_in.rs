//! Running-in: a new chain wears faster until its pins have bedded in.

/// How a new joint starts: `factor` times the steady wear, fading over `distance` of sliding.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RunningIn {
    /// Wear at first over steady wear, ≥ 1.
    pub factor: f64,
    /// Sliding over which the excess falls to 1/e (m), ≥ 0.
    pub distance: f64,
}

impl RunningIn {
    /// Three times the steady wear, over 20 m. Source: common practice (up to about 0.1 % in the first hours), no source.
    pub const USUAL: RunningIn = RunningIn { factor: 3.0, distance: 20.0 };

    /// Steady wear from the first turn.
    pub const NONE: RunningIn = RunningIn { factor: 1.0, distance: 0.0 };

    /// Time for the excess to fade (s) and the steady time it is worth in the end (s).
    fn times(&self, sliding_rate: f64) -> Option<(f64, f64)> {
        let fade = self.distance / sliding_rate;
        let worth = (self.factor - 1.0) * fade;
        (worth > 0.0 && worth.is_finite()).then_some((fade, worth))
    }

    /// Running time at steady wear (s) that wears as much as the first `time` (s) do: t + (m − 1) T₀ (1 − e^(−t/T₀)).
    ///
    /// `sliding_rate` (m/s) is the sliding of a joint for each second of running; T₀ = distance / sliding rate. The wear
    /// work is this times the steady rate, whose coefficient has been capped before. Closure of our own.
    pub fn steady_time(&self, time: f64, sliding_rate: f64) -> f64 {
        self.times(sliding_rate).map_or(time, |(fade, worth)| time - worth * (-time / fade).exp_m1())
    }

    /// Running time (s) after which a joint has worn as much as in `steady_time` (s) at steady wear; inverse of
    /// [`RunningIn::steady_time`].
    ///
    /// ```
    /// use pinfilm::wear::RunningIn;
    /// // 300 N m at 1e-6 N m/s steady, sliding 3 µm a second
    /// let time = RunningIn { factor: 3.0, distance: 20.0 }.running_time(300.0 / 1e-6, 3e-6);
    /// assert!((time - 2.866666667e8).abs() < 1.0);
    /// ```
    pub fn running_time(&self, steady_time: f64, sliding_rate: f64) -> f64 {
        let Some((fade, worth)) = self.times(sliding_rate) else { return steady_time };
        if !steady_time.is_finite() {
            return steady_time;
        }
        // left of the root of a concave function: the steps rise monotonically
        let mut time = (steady_time - worth).max(0.0);
        for _ in 0..60 {
            let fading = (-time / fade).exp_m1();
            let step = (steady_time - (time - worth * fading)) / (1.0 + (self.factor - 1.0) * (1.0 + fading));
            time += step;
            if step <= 1e-15 * time {
                break;
            }
        }
        time
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn the_inverse_gives_the_time_back(time in 0.0..10.0_f64, rate in -8.0..-1.0_f64, factor in 1.0..10.0, distance in 0.0..100.0) {
            let (time, rate) = (10f64.powf(time), 10f64.powf(rate));
            let run_in = RunningIn { factor, distance };
            let back = run_in.running_time(run_in.steady_time(time, rate), rate);
            prop_assert!((back / time - 1.0).abs() < 1e-12, "{time} {back}");
        }
    }

    #[test]
    fn starts_at_the_factor_and_ends_steady() {
        let run_in = RunningIn::USUAL;
        assert!((run_in.steady_time(1.0, 1e-6) - 3.0).abs() < 1e-6);
        let late = 1e12;
        assert_eq!(run_in.steady_time(late + 1e6, 1e-3) - run_in.steady_time(late, 1e-3), 1e6);
        assert_eq!(run_in.running_time(0.0, 1e-3), 0.0);
    }

    #[test]
    fn nothing_fades_without_a_distance_and_nothing_moves_without_sliding() {
        assert_eq!(RunningIn::NONE.running_time(5.0, 1.0), 5.0);
        assert_eq!(RunningIn::USUAL.running_time(f64::INFINITY, 0.0), f64::INFINITY);
    }
}
