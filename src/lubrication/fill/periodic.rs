//! The settled fill of the joints of a line under a timer: always full, one wait, a whole cycle, or a long walk.

use super::cycle;
use super::sample::many_starts;
use super::walk::Walk;
use super::{JointOil, single_wait};
use crate::lubrication::rotation::Rotation;

/// How full the joints are once the line has settled; shares of the capacity except `overflow`.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PeriodicFill {
    /// Mean over time and all joints, those never reached counted as empty.
    pub mean: f64,
    /// Mean over time and the joints that are reached.
    pub mean_reached: f64,
    /// Lowest fill of a reached joint, right before a shot.
    pub lowest: f64,
    /// Mean fill right after a shot.
    pub after: f64,
    /// Oil that overflows, m³ a shot.
    pub overflow: f64,
    /// Share of the joints that no shot meets.
    pub never_reached: f64,
    /// Every shot fills its joint to the brim.
    pub always_full: bool,
}

impl PeriodicFill {
    /// From volumes of the reached joints.
    fn of(rotation: &Rotation, capacity: f64, [mean, lowest, after, overflow]: [f64; 4], always_full: bool) -> Self {
        let never_reached = rotation.never_reached();
        let mean_reached = mean / capacity;
        PeriodicFill {
            mean: (1.0 - never_reached) * mean_reached,
            mean_reached,
            lowest: lowest / capacity,
            after: after / capacity,
            overflow,
            never_reached,
            always_full,
        }
    }
}

/// The settled fill under a timer.
///
/// `rotation` is the timer against the circuit (of n circuits, if every n-th joint is counted), `circuit` s its unrounded
/// time. Exact for locked and continuous timers, joints that are always full, and cycles of up to 8192 shots (s = 0);
/// else sampled from 16 starts: against whole cycles the mean is good to 1e-6 usually, 1 % where a pattern drifts about
/// as slowly as oil is lost. Without overflow and constant loss the mean is exact whatever the waits.
/// Source: Slater 1967 for the waits; first-order loss; the walk is our own.
pub fn periodic_fill(rotation: &Rotation, circuit: f64, oil: &JointOil) -> PeriodicFill {
    let JointOil { dose, capacity, loss_rate, uptake } = *oil;
    if dose <= 0.0 {
        return PeriodicFill::of(rotation, capacity, [0.0; 4], false);
    }
    if rotation.locked() || rotation.continuous() {
        let circuits = if rotation.continuous() { 1 } else { rotation.circuits_to_repeat() };
        let one = single_wait(circuits as f64 * circuit, oil);
        let full = one.after >= capacity;
        return PeriodicFill::of(rotation, capacity, [one.mean, one.before, one.after, one.overflow], full);
    }
    if let Some(full) = always_full(rotation, circuit, oil) {
        return full;
    }
    let decay = loss_rate * rotation.mean_wait() * circuit; // k times the mean wait
    let guess = if decay > 0.0 { capacity.min(dose / -(-decay).exp_m1()) } else { capacity };
    if cycle::short(rotation) {
        let c = cycle::whole(rotation, circuit, oil, guess);
        return PeriodicFill::of(rotation, capacity, [c.mean, c.lowest, c.after, c.overflow], false);
    }
    let totals = many_starts(&Walk::new(rotation, circuit, oil), guess);
    let mean = if totals.overflow == 0.0 && uptake == 0.0 { dose / decay } else { totals.integral / totals.time };
    let volumes = [mean, totals.lowest, totals.after / totals.shots, totals.overflow / totals.shots];
    PeriodicFill::of(rotation, capacity, volumes, false)
}

/// The fill if the dose makes good even the loss of the longest wait and nothing is drained at a constant rate.
fn always_full(rotation: &Rotation, circuit: f64, oil: &JointOil) -> Option<PeriodicFill> {
    let JointOil { dose, capacity, loss_rate, uptake } = *oil;
    let lost = |circuits: i64| -(-loss_rate * circuits as f64 * circuit).exp_m1();
    let worst = lost(rotation.worst_wait());
    if uptake > 0.0 || dose < capacity * worst {
        return None;
    }
    let (mut mean, mut lost_a_shot) = (0.0, 0.0);
    for wait in rotation.waits().into_iter().filter(|wait| wait.ticks > 0) {
        let decay = loss_rate * wait.circuits as f64 * circuit;
        let lost = lost(wait.circuits);
        mean += rotation.share_of_joints(wait) * if decay > 0.0 { lost / decay } else { 1.0 };
        lost_a_shot += rotation.share_of_shots(wait) * lost;
    }
    let lowest = (-loss_rate * rotation.worst_wait() as f64 * circuit).exp();
    let overflow = dose - capacity * lost_a_shot;
    Some(PeriodicFill::of(rotation, capacity, [mean * capacity, lowest * capacity, capacity, overflow], true))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::lubrication::rotation::of_timer;
    use proptest::prelude::*;

    /// Whole cycles shot by shot, for many phases in the cell.
    fn by_hand(circuit: i64, run: i64, dwell: i64, tick: f64, oil: &JointOil) -> [f64; 4] {
        let rotation = of_timer(circuit, run, dwell);
        let (cell, period) = (rotation.cell, rotation.period);
        let (mut mean, mut lowest, mut after, mut overflow, mut shots) = (0.0, f64::INFINITY, 0.0, 0.0, 0.0);
        for start in 0..cell {
            let (mut fill, mut x) = (0.0f64, start);
            let circuits = rotation.circuits_to_repeat();
            let rounds = 2 + (30.0 / (oil.loss_rate * circuits as f64 * circuit as f64 * tick)).ceil() as i64;
            for round in 0..rounds {
                for _ in 0..circuits {
                    let last = round == rounds - 1;
                    if x < run {
                        if last {
                            lowest = fill.min(lowest);
                            shots += 1.0;
                            overflow += (fill + oil.dose - oil.capacity).max(0.0);
                        }
                        fill = (fill + oil.dose).min(oil.capacity);
                        after += if last { fill } else { 0.0 };
                    }
                    let kept = (-oil.loss_rate * circuit as f64 * tick).exp();
                    if last {
                        mean += fill * (1.0 - kept) / (oil.loss_rate * circuit as f64 * tick);
                    }
                    fill *= kept;
                    x = (x + circuit) % period;
                }
            }
        }
        [mean / (cell * rotation.circuits_to_repeat()) as f64, lowest, after / shots, overflow / shots]
    }

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(60))]
        #[test]
        fn whole_cycles_agree_with_shots_by_hand(
            circuit in 20..400i64, run in 2..90i64, dwell in 1..200i64, dose in 0.01..0.6f64, rate in 1e-5..1e-2f64,
        ) {
            let rotation = of_timer(circuit, run, dwell);
            if !rotation.locked() {
                let oil = JointOil { dose, capacity: 1.0, loss_rate: rate, uptake: 0.0 };
                let [mean, lowest, after, overflow] = by_hand(circuit, run, dwell, 1.0, &oil);
                let ours = periodic_fill(&rotation, circuit as f64, &oil);
                prop_assert!((ours.mean - mean).abs() < 1e-9, "mean {} {mean}", ours.mean);
                prop_assert!((ours.lowest - lowest).abs() < 1e-9, "lowest {} {lowest}", ours.lowest);
                prop_assert!((ours.after - after).abs() < 1e-9, "after {} {after}", ours.after);
                prop_assert!((ours.overflow - overflow).abs() < 1e-9, "overflow {} {overflow}", ours.overflow);
            }
        }

        #[test]
        fn what_does_not_overflow_stays(circuit in 1_000_000..9_000_000i64, run in 20_000..900_000i64, dwell in 1..9_000_000i64) {
            let rotation = of_timer(circuit, run, dwell);
            let oil = JointOil { dose: 0.02, capacity: 1.0, loss_rate: 2e-6, uptake: 0.0 };
            let seconds = circuit as f64 / 1000.0;
            let fill = periodic_fill(&rotation, seconds, &oil);
            let in_joints = oil.loss_rate * fill.mean * rotation.period as f64 / rotation.run as f64 * seconds;
            // close for the sampled walk, exact without overflow
            prop_assert!((in_joints - (oil.dose - fill.overflow)).abs() < 0.05 * oil.dose || rotation.locked());
            prop_assert!(fill.lowest <= fill.mean_reached && fill.mean_reached <= fill.after);
        }
    }

    #[test]
    fn more_loss_by_constant_uptake_means_less_oil() {
        let rotation = of_timer(1_000_003, 250_000, 999_750);
        let oil = JointOil { dose: 0.02, capacity: 1.0, loss_rate: 2e-6, uptake: 0.0 };
        let without = periodic_fill(&rotation, 1000.003, &oil);
        let with = periodic_fill(&rotation, 1000.003, &JointOil { uptake: 1e-7, ..oil });
        let barely = periodic_fill(&rotation, 1000.003, &JointOil { uptake: 1e-18, ..oil });
        assert!(with.mean < without.mean);
        assert!((barely.mean - without.mean).abs() < 1e-6, "{} {}", barely.mean, without.mean);
    }

    #[test]
    fn no_loss_means_full_joints() {
        let oil = JointOil { dose: 0.02, capacity: 1.0, loss_rate: 0.0, uptake: 0.0 };
        let fill = periodic_fill(&of_timer(1237, 300, 3300), 1237.0, &oil);
        assert_eq!((fill.mean, fill.lowest, fill.overflow, fill.always_full), (1.0, 1.0, 0.02, true));
        assert_eq!(periodic_fill(&of_timer(1237, 300, 3300), 1237.0, &JointOil { dose: 0.0, ..oil }).mean, 0.0);
    }
}
