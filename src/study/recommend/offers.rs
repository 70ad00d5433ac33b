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

/// Run and dwell (min) for a counter that comes round to each joint in `turns` s and oil that lasts `patience` s.
///
/// The run covers every joint once, with the drift of the circuit; the pauses let some share of the oil go. Whole
/// minutes, or whole tenths of a minute on quick chains.
pub(super) fn runs_and_dwells(turns: f64, patience: f64, tolerance: f64) -> (Vec<f64>, Vec<f64>) {
    let minutes = |seconds: f64| MIN.from_si(seconds);
    let step = if minutes(turns) < 2.0 { 10.0 } else { 1.0 };
    let run = (minutes(turns * (1.0 + tolerance)) * step).ceil() / step;
    let mut dwells = vec![0.0];
    for share in SHARES {
        // the joint that is last in one run may be first in the next: two turns less than the oil lasts
        let dwell = ((minutes(share * patience - turns) - run) * step).floor() / step;
        if dwell > 0.0 && dwell < 1e7 {
            dwells.push(dwell);
        }
    }
    dwells.dedup();
    (vec![run], dwells)
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
        assert_eq!(dwell[..3], [0.0, 1399.0, 679.0]);
        assert_eq!(runs_and_dwells(2.667, 3600.0, 0.005).0, [0.1]);
        assert_eq!(runs_and_dwells(1200.0, 60.0, 0.005).1, [0.0]);
    }
}
