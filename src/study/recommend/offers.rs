//! Run, dwell and n where the user names none: worked out from the circuit and from how long the oil lasts.
//!
//! Closures of our own, offered and not imposed: every one goes through the same tests as the user's.

use crate::lubrication::Lubrication;
use crate::lubrication::coverage::{every_nth_worst_over, gcd};
use crate::quantity::unit::MIN;
use crate::quantity::{Field, Place, Row, Tree, Value};

/// Doubt about a number of joints that was computed and not counted.
const COUNT_DOUBT: i64 = 4;
/// Shares of the time that the oil lasts after which the timer may start again.
const SHARES: [f64; 6] = [1.0, 0.5, 0.25, 0.125, 0.0625, 0.03125];

/// The n to try: the least that reaches every joint and lets the injector follow, and one that spreads the shots.
///
/// `joints` on the loop, `counted` or computed; `injector` and `joint_time` s. Where joints were only computed, n reaches
/// all of every loop up to 4 joints longer or shorter.
pub(super) fn every_nth(joints: i64, counted: bool, injector: Option<f64>, joint_time: f64) -> Vec<i64> {
    let least = injector.map_or(1, |needs| (needs / joint_time).ceil().max(1.0) as i64);
    let reaches_all = |n: &i64| {
        if counted {
            gcd(*n, joints) == 1
        } else {
            every_nth_worst_over(joints, *n, COUNT_DOUBT).is_ok_and(|w| w.never == 0)
        }
    };
    let from = |least: i64| (least..).take(2 * joints.max(64) as usize).find(reaches_all);
    let mut offered: Vec<i64> = [from(least), from(least.max(7))].into_iter().flatten().collect();
    offered.dedup();
    if offered.is_empty() { vec![least] } else { offered }
}

/// Runs and dwells (min) for a counter that comes round to each joint in `turns` s and oil that lasts `patience` s.
///
/// A run covers every joint once, with the drift of the circuit; where that leaves many joints with one shot more than the
/// others, a second run of more turns leaves few. The pauses let some share of the oil go. Values that a timer can be set
/// to: runs are rounded up by a twentieth at most, pauses down by a tenth (or by six seconds).
pub(super) fn runs_and_dwells(turns: f64, patience: f64, tolerance: f64) -> (Vec<f64>, Vec<f64>) {
    let minutes = |seconds: f64| MIN.from_si(seconds);
    let least = settable(minutes(turns * (1.0 + tolerance)), 0.05, f64::ceil);
    // share of the joints that get a shot more or less than the others, of so many shots
    let uneven = |run: f64| {
        let shots = run / minutes(turns);
        (shots - shots.round()).abs() / shots.floor().max(1.0)
    };
    let more = (1..=MOST_TENTHS).map(|tenths| settable(least + f64::from(tenths) * TENTH, 0.05, f64::ceil));
    let even = more.filter(|_| uneven(least) > FEW).find(|run| uneven(*run) <= FEW);
    let runs: Vec<f64> = [least].into_iter().chain(even).collect();
    let mut dwells = vec![0.0];
    for share in SHARES {
        // the joint that is last in one run may be first in the next: two turns less than the oil lasts
        let dwell = settable(minutes(share * patience - turns) - least, 0.1, f64::floor);
        if dwell > 0.0 && dwell < 1e7 {
            dwells.push(dwell);
        }
    }
    dwells.dedup();
    (runs, dwells)
}

/// Part of a shot that joints may get unevenly in a run, in the mean.
const FEW: f64 = 0.1;
/// The finest step of a timer, min, and how many of them a longer run is looked for.
const TENTH: f64 = 0.1;
const MOST_TENTHS: i32 = 30;
/// Steps that people set timers in, min.
const STEPS: [f64; 10] = [TENTH, 0.5, 1.0, 5.0, 10.0, 30.0, 60.0, 120.0, 360.0, 720.0];

/// A time (min) in the largest of the usual steps that are at most a share `coarse` of it, rounded by `way`.
fn settable(time: f64, coarse: f64, way: fn(f64) -> f64) -> f64 {
    let step = STEPS.into_iter().rev().find(|step| *step <= coarse * time).unwrap_or(TENTH);
    // counted in whole parts, so that 2.7 is 2.7
    let per_unit = if step < 1.0 { (1.0 / step).round() } else { 1.0 };
    let whole = if step < 1.0 { 1.0 } else { step };
    let count = time * per_unit / whole;
    let nearest = count.round();
    // a value that is one already stays
    let count = if (count - nearest).abs() < 1e-9 * (1.0 + nearest.abs()) { nearest } else { way(count) };
    count * whole / per_unit
}

impl Lubrication {
    /// A method by its word, with the register's defaults; what a search replaces stands at one unit.
    pub fn blank(word: &str) -> Option<Lubrication> {
        let one = |keys: &[&str]| -> Tree {
            let mut entries: Vec<(String, Tree)> = vec![("method".into(), Value::Text(word.into()).into())];
            entries.extend(keys.iter().map(|key| (key.to_string(), Value::Number(1.0).into())));
            Value::Table(entries).into()
        };
        let mut tree = match word {
            "manual" => one(&["interval_h", "dose_ul"]),
            "drip" | "timed_spray" => one(&["flow_ml_per_min"]),
            "synchronised" => one(&["shot_ul"]),
            _ => return None,
        };
        if word == "timed_spray" {
            tree.put("timer.run_min", Value::Number(1.0).into()).ok()?;
        }
        Lubrication::read(&tree, &Place::root("lubrication"), &Row::BLANK).ok()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_even_loop_gets_an_odd_count() {
        assert_eq!(every_nth(560, true, None, 2.0), [1, 9]);
        assert_eq!(every_nth(504, true, Some(0.4), 0.25), [5, 11]);
        // 500 to 508 joints: 11 divides 506, 13 divides 507
        assert_eq!(every_nth(504, false, Some(2.0), 0.25), [17]);
    }

    #[test]
    fn a_run_covers_the_loop_and_a_pause_leaves_oil() {
        let (run, dwell) = runs_and_dwells(1200.0, 86_400.0, 0.005);
        assert_eq!(run, [21.0]);
        assert_eq!(dwell[..3], [0.0, 1320.0, 660.0]);
        assert_eq!(runs_and_dwells(2.667, 3600.0, 0.005).0, [0.1, 0.3]); // 2.25 and 6.75 turns
        assert_eq!(runs_and_dwells(1200.0, 60.0, 0.005).1, [0.0]);
        // a circuit of 11.95 s: 18 s are a turn and a half, 24 s two turns
        assert_eq!(runs_and_dwells(11.95, 3600.0, 0.005).0, [0.3, 0.4]);
    }

    #[test]
    fn times_that_a_timer_can_be_set_to() {
        let up = |time| settable(time, 0.05, f64::ceil);
        assert_eq!([2.68, 20.1, 74.37, 180.9, 207.5, 0.3, 2.7].map(up), [2.7, 21.0, 75.0, 185.0, 210.0, 0.3, 2.7]);
        let down = |time| settable(time, 0.1, f64::floor);
        assert_eq!([1087.0, 767.0, 36.0, 126.0, 39.6, 0.07].map(down), [1080.0, 720.0, 36.0, 120.0, 39.0, 0.0]);
    }
}
