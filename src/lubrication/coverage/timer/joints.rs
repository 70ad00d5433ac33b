//! Whole joints instead of shares, and several application points on one timer.

use super::{Timer, Wait, gcd};
use crate::error::{Code, Error, Result};
use std::collections::BTreeMap;

/// Most phases that [`coverage_of_points`] walks: some tenths of a second.
const MOST_PHASES: i64 = 20_000_000;

/// Number of joints, of `joints` evenly spaced ones, that a timer ever reaches; joint 0 is at the point at a run start.
///
/// `joints` >= 1. Exact; another start phase changes the number by at most the greatest common divisor of the circuit
/// (in cells) and the joints. Counting of residues, a derivation of our own.
pub fn reached_joints(timer: &Timer, joints: i64) -> i64 {
    let cell = timer.cell();
    if timer.run >= cell {
        return joints;
    }
    let alike = gcd(timer.circuit / cell, joints); // joints that share a phase
    let phases = joints / alike;
    let reached = (i128::from(timer.run) * i128::from(phases) + i128::from(cell) - 1) / i128::from(cell);
    alike * (reached as i64).min(phases)
}

/// Number of joints, of `joints` evenly spaced ones, that any of several points on the same timer ever reaches.
///
/// `delays` as in [`never_reached_of_points`]; joint 0 is at the reference point at a run start. Exact: the phases of the
/// joints are evenly spaced on the cell, so that each piece of the united arcs holds a count of them.
pub fn reached_joints_of_points(timer: &Timer, joints: i64, delays: &[i64]) -> i64 {
    let cell = timer.cell();
    if timer.run >= cell {
        return joints;
    }
    let alike = gcd(timer.circuit / cell, joints);
    let phases = joints / alike;
    // Phases k·cell/phases below a mark: their number, rounded up.
    let below = |mark: i64| {
        ((i128::from(mark) * i128::from(phases) + i128::from(cell) - 1).div_euclid(i128::from(cell))) as i64
    };
    let mut starts: Vec<i64> = delays.iter().map(|delay| (-delay).rem_euclid(cell)).collect();
    starts.sort_unstable();
    starts.dedup();
    let ends = starts.iter().skip(1).copied().chain(starts.first().map(|first| first + cell));
    alike * starts.iter().zip(ends).map(|(&start, next)| below(next.min(start + timer.run)) - below(start)).sum::<i64>()
}

/// Share of the joints that none of several points on the same timer ever reaches.
///
/// `delays`: travel time of the chain from a reference point to each application point, ticks; at least one. A second
/// point helps only if its delay falls beside the first one's arc modulo the cell. Exact: length of a union of arcs.
pub fn never_reached_of_points(timer: &Timer, delays: &[i64]) -> f64 {
    let cell = timer.cell();
    if timer.run >= cell {
        return 0.0;
    }
    let mut starts: Vec<i64> = delays.iter().map(|delay| (-delay).rem_euclid(cell)).collect();
    starts.sort_unstable();
    let next = starts.iter().skip(1).copied().chain(starts.first().map(|first| first + cell));
    let bare: i64 = starts.iter().zip(next).map(|(start, next)| (next - start - timer.run).max(0)).sum();
    bare as f64 / cell as f64
}

/// Waits of the joints that pass several points on one timer.
#[derive(Debug, Clone, PartialEq)]
pub struct PointsCoverage {
    /// Waits between two circuits in which a joint is shot, shortest first; there may be more than three.
    pub waits: Vec<Wait>,
    /// Share of the joints that no point ever reaches.
    pub never_reached: f64,
}

/// Waits between the circuits in which a joint is shot by any of several points on one timer.
///
/// `delays` as in [`never_reached_of_points`]. Exact: walks the orbit over the union of the arcs, one orbit for each
/// piece of the cell that the ends of the arcs cut. An error where that would take more than some tenths of a second.
pub fn coverage_of_points(timer: &Timer, delays: &[i64]) -> Result<PointsCoverage> {
    let (cell, step) = (timer.cell(), timer.step());
    let circuits = timer.period / cell;
    let mut cuts: Vec<i64> = vec![0];
    for delay in delays {
        cuts.extend([(-delay).rem_euclid(cell), (timer.run - delay).rem_euclid(cell)]);
    }
    cuts.sort_unstable();
    cuts.dedup();
    if circuits > MOST_PHASES / (cuts.len() * delays.len().max(1)) as i64 {
        let message = format!(
            "the phase of circuit and timer repeats only after {circuits} circuits, too many to walk for several points: \
             round circuit time and period to a coarser step, or judge one point at a time"
        );
        return Err(Error::new(Code::Unsupported, "circuit time", message));
    }
    let shot = |phase: i64| delays.iter().any(|delay| (phase + delay).rem_euclid(timer.period) < timer.run);

    let mut lengths: BTreeMap<i64, i64> = BTreeMap::new();
    let mut never = 0;
    for (i, &own) in cuts.iter().enumerate() {
        let width = cuts.get(i + 1).copied().unwrap_or(cell) - own;
        let (mut first, mut last, mut phase) = (None, None, own);
        for circuit in 0..circuits {
            if shot(phase) {
                if let Some(last) = last {
                    *lengths.entry(circuit - last).or_insert(0) += width;
                }
                first = first.or(Some(circuit));
                last = Some(circuit);
            }
            phase = (phase + step) % timer.period;
        }
        match (first, last) {
            (Some(first), Some(last)) => *lengths.entry(first + circuits - last).or_insert(0) += width,
            _ => never += width,
        }
    }
    let shots: i64 = lengths.values().sum();
    let wait = |(circuits, length): (i64, i64)| Wait {
        circuits,
        length,
        share_of_shots: length as f64 / shots as f64,
        share_of_joints: circuits as f64 * length as f64 / timer.period as f64,
    };
    Ok(PointsCoverage { waits: lengths.into_iter().map(wait).collect(), never_reached: never as f64 / cell as f64 })
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn a_second_point_helps_only_beside_the_first() {
        let timer = Timer::from_ticks(1200, 400, 3200).unwrap();
        let never = |delays: &[i64]| never_reached_of_points(&timer, delays);
        assert_eq!(never(&[0, 600]), 400.0 / 1200.0);
        assert_eq!(never(&[0, 300]), 500.0 / 1200.0);
        assert_eq!(never(&[0, 1200]), never(&[0]));
        assert_eq!(never(&[0, 400, 800]), 0.0);
    }

    proptest! {
        #![proptest_config(ProptestConfig { cases: 500, failure_persistence: None, ..Default::default() })]
        #[test]
        fn joints_are_counted_as_they_pass(joints in 1..=200_i64, period in 1..=200_i64, share in 0.0..1.0, turns in 1..=9_i64) {
            let run = 1 + (share * period as f64) as i64;
            let circuit = joints * turns; // a whole number of ticks a joint
            let timer = Timer::from_ticks(circuit, run, period - run).unwrap();
            let reached = |joint: i64| (0..period).any(|n| (joint * turns + n * circuit) % period < run);
            prop_assert_eq!(reached_joints(&timer, joints), (0..joints).filter(|&j| reached(j)).count() as i64);
        }

        #[test]
        fn joints_of_several_points_are_counted_as_they_pass(
            joints in 1..=120_i64, period in 1..=120_i64, share in 0.0..1.0, turns in 1..=9_i64,
            delays in proptest::collection::vec(-200..=200_i64, 1..5),
        ) {
            let run = 1 + (share * period as f64) as i64;
            let circuit = joints * turns;
            let timer = Timer::from_ticks(circuit, run, period - run).unwrap();
            let shot = |time: i64| delays.iter().any(|delay| (time + delay).rem_euclid(period) < run);
            let reached = |joint: i64| (0..period).any(|n| shot(joint * turns + n * circuit));
            let counted = (0..joints).filter(|&j| reached(j)).count() as i64;
            prop_assert_eq!(reached_joints_of_points(&timer, joints, &delays), counted);
        }

        #[test]
        fn one_point_waits_as_a_timer_does(period in 1..=150_i64, share in 0.0..1.0, circuit in 1..=500_i64, delay in 0..=500_i64) {
            let run = 1 + (share * period as f64) as i64;
            let timer = Timer::from_ticks(circuit, run, period - run).unwrap();
            let points = coverage_of_points(&timer, &[delay]).unwrap();
            let closed = timer.coverage();
            prop_assert_eq!(points.waits.as_slice(), closed.waits());
            prop_assert!((points.never_reached - closed.never_reached).abs() < 1e-12);
        }

        #[test]
        fn both_ways_agree_on_what_several_points_miss(
            period in 1..=150_i64, share in 0.0..1.0, circuit in 1..=500_i64,
            delays in proptest::collection::vec(0..=500_i64, 1..4),
        ) {
            let run = 1 + (share * period as f64) as i64;
            let timer = Timer::from_ticks(circuit, run, period - run).unwrap();
            let points = coverage_of_points(&timer, &delays).unwrap();
            prop_assert!((points.never_reached - never_reached_of_points(&timer, &delays)).abs() < 1e-12);
            let joints: f64 = points.waits.iter().map(|w| w.share_of_joints).sum();
            prop_assert!((joints + points.never_reached - 1.0).abs() < 1e-12);
        }
    }
}
