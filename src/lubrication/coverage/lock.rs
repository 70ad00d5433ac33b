//! How long a timer near a simple fraction of the circuit starves a stretch of the chain, and how likely that is.

use super::timer::{Slater, gcd};

/// How long the locked pattern of a timer holds when circuit and period drift.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LockTime {
    /// Width of the starved stretch, in s of passing chain.
    pub starved: f64,
    /// Time until a constant error of the ratio has crept over the whole stretch, s.
    pub constant: f64,
    /// Typical time, no bound, until zero-mean noise of the speed has wandered over it, s.
    pub random: f64,
    /// The creep of one cycle is not longer than the run, so that it leaves no new gap: `constant` holds.
    pub contiguous: bool,
}

/// How long a lock of `lock_den` circuits lasts; `None` where the run leaves nothing starved.
///
/// `circuit`, `run`, `period` s; `lock_den`: circuits after which the phase repeats; `ratio_error`: relative error of
/// circuit over period, > 0, for `random` the root mean square of it; `correlation` s: time over which the speed keeps
/// its error, 0.5 to 24 h, usually 8 h. `constant` is geometry, exact to one and a half cycles. `random` is a random
/// walk of steps `correlation` long, or the constant drift where one step is enough: closure of our own.
pub fn lock_time(
    circuit: f64,
    run: f64,
    period: f64,
    lock_den: i64,
    ratio_error: f64,
    correlation: f64,
) -> Option<LockTime> {
    let cycle = lock_den as f64 * circuit;
    let starved = period / lock_den as f64 - run;
    let error = ratio_error.abs();
    (starved > 0.0).then(|| {
        let constant = starved / error;
        let random = if constant < correlation { constant } else { constant * constant / correlation };
        LockTime { starved, constant, random, contiguous: cycle * error <= run }
    })
}

/// Share of the ratio errors within ±`tolerance` for which some stretch of chain waits longer than `longest_wait`.
///
/// `circuit`, `period`, `run` s, > 0, run <= period; `tolerance`: relative error of circuit over period, in (0, 0.5);
/// `longest_wait` s: the wait that just keeps the oil a joint needs, may be infinite. Reject a setting above 0.05.
///
/// Where the allowed wait spans many cycles the starved stretches of all simple fractions nearby are united, good to
/// 0.01. Where it is shorter, 1001 errors are judged exactly. Derivation of our own from Slater's gap theorem.
pub fn lock_risk(circuit: f64, period: f64, run: f64, tolerance: f64, longest_wait: f64) -> f64 {
    let shares = period / run;
    let ratio = circuit / period;
    let reach = (tolerance + period / longest_wait).min(0.5);
    // The work of the union grows with the square of period over run, that of the scan does not.
    let fractions = shares * (1.0 + ratio * reach * shares);
    if longest_wait >= 3.0 * shares * circuit.max(period) && fractions <= MOST_FRACTIONS {
        union(circuit, period, run, tolerance, longest_wait, reach)
    } else {
        scan(circuit, period, run, tolerance, longest_wait)
    }
}

/// Most fractions that [`union`] looks at; from here on it costs more than the scan.
const MOST_FRACTIONS: f64 = 4000.0;

/// Starved errors of the fractions m/q with q < period/run near the ratio, united.
///
/// At the ratio m/q the stretch starved is w = period/q − run wide. An error e moves it by q·circuit·|e| a cycle of
/// q circuits, so it waits longer than T if |e| < w/(T − 1.5 q circuit). As T >= 3 (period/run) circuit is assumed, and
/// q < period/run, the bracket is at least T/2.
fn union(circuit: f64, period: f64, run: f64, tolerance: f64, longest_wait: f64, reach: f64) -> f64 {
    let ratio = circuit / period;
    let (low, high) = (ratio * (1.0 - reach), ratio * (1.0 + reach));
    let mut starved: Vec<(f64, f64)> = Vec::new();
    let mut q = 1.0;
    while q * run < period {
        let half_width = (period / q - run) / (longest_wait - 1.5 * q * circuit);
        let mut m = (q * low).ceil().max(1.0);
        while m <= q * high {
            let centre = m / (q * ratio) - 1.0;
            let (from, to) = ((centre - half_width).max(-tolerance), (centre + half_width).min(tolerance));
            if from < to && gcd(m as i64, q as i64) == 1 {
                starved.push((from, to));
            }
            m += 1.0;
        }
        q += 1.0;
    }
    starved.sort_unstable_by(|a, b| a.0.total_cmp(&b.0));
    let (mut total, mut reached) = (0.0, -tolerance);
    for (from, to) in starved {
        if to > reached {
            total += to - reached.max(from);
            reached = to;
        }
    }
    total / (2.0 * tolerance)
}

/// The errors that the scan judges.
const STEPS: i64 = 1000;

/// Ticks of the scan in a second: finer than the timer's, so that a small error is not rounded away.
const SCAN_TICKS_PER_SECOND: f64 = 1e6;

/// Judges 1001 errors, evenly spaced over ±`tolerance`, each exactly.
///
/// Neighbouring errors mostly share the two returns n1 and n2 of Slater's theorem, only their steps d1 and d2 change,
/// and those in proportion to the circuit. One computation therefore speaks for all circuits up to the one where an
/// inequality of the theorem breaks: the result is that of 1001 computations at the price of few.
fn scan(circuit: f64, period: f64, run: f64, tolerance: f64, longest_wait: f64) -> f64 {
    let count = |seconds: f64| (SCAN_TICKS_PER_SECOND * seconds).round_ties_even() as i64;
    let circuit_at = |i: i64| count(circuit * (1.0 + tolerance * (2.0 * i as f64 / STEPS as f64 - 1.0)));
    let (period, run) = (count(period), count(run));
    // A cast from f64 saturates: an infinite wait is allowed by every circuit.
    let allowed = (SCAN_TICKS_PER_SECOND * longest_wait).floor() as i128;

    let mut starved = 0;
    let mut i = 0;
    while i <= STEPS {
        let ticks = circuit_at(i);
        let (bad, same_up_to) = verdict(ticks, run, period, allowed);
        let last = if same_up_to > ticks { last_at_most(same_up_to, i, tolerance, circuit, &circuit_at) } else { i };
        if bad {
            starved += last - i + 1;
        }
        i = last + 1;
    }
    starved as f64 / (STEPS + 1) as f64
}

/// The last step from `first` on whose circuit is at most `ticks`.
fn last_at_most(ticks: i64, first: i64, tolerance: f64, circuit: f64, circuit_at: &impl Fn(i64) -> i64) -> i64 {
    let error = ticks as f64 / (SCAN_TICKS_PER_SECOND * circuit) - 1.0;
    let guess = (error / tolerance + 1.0) * (STEPS as f64 / 2.0);
    let mut last = (guess as i64).clamp(first, STEPS);
    while last < STEPS && circuit_at(last + 1) <= ticks {
        last += 1;
    }
    while last > first && circuit_at(last) > ticks {
        last -= 1;
    }
    last
}

/// Whether a circuit of `ticks` starves some joint for longer than `allowed`, and the longest circuit of which the same
/// is known from this one; all in ticks of the scan.
fn verdict(ticks: i64, run: i64, period: i64, allowed: i128) -> (bool, i64) {
    let too_long = |circuits: i64| i128::from(circuits) * i128::from(ticks) > allowed;
    // A wait of so many circuits is allowed up to this circuit and too long beyond.
    let turning = |circuits: i64| i64::try_from(allowed / i128::from(circuits)).unwrap_or(i64::MAX);
    let (worst, same_waits_up_to) = if run >= period {
        (1, i64::MAX)
    } else if let Some(slater) = Slater::first_returns(ticks % period, run, period) {
        (slater.worst(), ticks + room(&slater))
    } else {
        let cell = gcd(ticks, period);
        return (run < cell || too_long(period / cell), ticks);
    };
    if too_long(worst) { (true, same_waits_up_to) } else { (false, same_waits_up_to.min(turning(worst))) }
}

/// Ticks by which the circuit may grow before the returns, or which of the three waits occur, change.
///
/// A longer circuit by δ makes d1 + n1 δ and d2 − n2 δ of the steps. The returns stay the first ones as long as
/// 0 < d < run for both and d1 + d2 >= run, because n1 and n2 stay neighbours (n1 d2 + n2 d1 = period).
fn room(slater: &Slater) -> i64 {
    let Slater { n1, d1, n2, d2, run, .. } = *slater;
    let spare = d1 + d2 - run;
    let third = match (spare, n2 - n1) {
        (_, 0) => i64::MAX,
        (0, _) => 0,
        (_, shrink) if shrink > 0 => (spare - 1) / shrink,
        _ => i64::MAX,
    };
    ((run - 1 - d1) / n1).min((d2 - 1) / n2).min(third)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::lubrication::coverage::Timer;
    use proptest::prelude::*;

    /// The scan as it would be written without looking for the same answer nearby.
    fn plain_scan(circuit: f64, period: f64, run: f64, tolerance: f64, longest_wait: f64) -> f64 {
        let count = |seconds: f64| (1e6 * seconds).round_ties_even() as i64;
        let (p, r) = (count(period), count(run));
        let starved = (0..=1000).filter(|&i| {
            let c = count(circuit * (1.0 + tolerance * (2.0 * f64::from(i) / 1000.0 - 1.0)));
            let waits = Timer { circuit: c, run: r, period: p }.coverage();
            waits.never_reached > 0.0 || waits.worst_wait() as f64 * c as f64 > 1e6 * longest_wait
        });
        starved.count() as f64 / 1001.0
    }

    #[test]
    fn an_oven_that_oils_half_its_chain() {
        let lock = lock_time(1200.0, 600.0, 3600.0, 3, 0.005, 28_800.0).unwrap();
        assert!((lock.constant / 3600.0 - 33.333).abs() < 1e-3 && (lock.random / 3600.0 - 138.889).abs() < 1e-3);
        assert_eq!(lock_time(1200.0, 1200.0, 3600.0, 3, 0.005, 28_800.0), None);
        // A large error crosses the stretch within one correlation time, as a constant one does.
        let quick = lock_time(1200.0, 600.0, 3600.0, 3, 0.05, 28_800.0).unwrap();
        assert_eq!(quick.random, quick.constant);
    }

    #[test]
    fn risks_by_union_and_by_scan() {
        let near = |ours: f64, value: f64| assert!((ours - value).abs() < 1e-6, "{ours} {value}");
        near(lock_risk(1200.0, 3600.0, 600.0, 0.005, 172_800.0), 0.716846);
        near(lock_risk(1000.0, 2500.0, 300.0, 0.005, 86_400.0), 0.506971);
        near(lock_risk(5716.0, 26_876.0, 15_336.0, 0.005, 10_800.0), 1.0);
        near(lock_risk(5793.0, 1224.0, 581.0, 0.005, 21_600.0), 0.405594);
    }

    #[test]
    fn nothing_starves_without_a_dwell_or_without_a_loss() {
        assert_eq!(lock_risk(1200.0, 600.0, 600.0, 0.005, 1e6), 0.0);
        assert_eq!(lock_risk(1200.0, 600.0, 600.0, 0.005, 1199.0), 1.0 - 417.0 / 1001.0);
        assert_eq!(lock_risk(1200.0, 3600.0, 600.0, 0.005, f64::INFINITY), 0.0);
        assert_eq!(
            lock_risk(1200.0, 3600.0, 1e-3, 0.005, f64::INFINITY),
            lock_risk(1200.0, 3600.0, 1e-3, 0.005, 1e300)
        );
    }

    proptest! {
        #![proptest_config(ProptestConfig { cases: 300, failure_persistence: None, ..Default::default() })]
        #[test]
        fn one_answer_speaks_for_its_neighbours(
            circuit in 0.7..4.3_f64, period in 1.0..5.0_f64, share in 0.003..1.0_f64, tolerance in 0.0005..0.03_f64,
            patience in -0.5..2.5_f64,
        ) {
            let (circuit, period) = (10f64.powf(circuit), 10f64.powf(period));
            let run = period * share;
            let longest = 10f64.powf(patience) * circuit.max(period);
            let (quick, plain) =
                (scan(circuit, period, run, tolerance, longest), plain_scan(circuit, period, run, tolerance, longest));
            prop_assert_eq!(quick, plain);
        }

        #[test]
        fn one_answer_speaks_for_round_numbers_too(
            circuit in 1..40_i32, period in 1..60_i32, share in 1..10_i32, patience in 0.1..6.0_f64,
        ) {
            let (circuit, period) = (60.0 * f64::from(circuit), 60.0 * f64::from(period));
            let run = period * f64::from(share) / 10.0;
            let longest = patience * period / run * circuit.max(period);
            let (quick, plain) =
                (scan(circuit, period, run, 0.005, longest), plain_scan(circuit, period, run, 0.005, longest));
            prop_assert_eq!(quick, plain);
        }

        #[test]
        fn both_ways_agree_where_the_wait_is_long(
            circuit in 100.0..5000.0_f64, period in 600.0..20_000.0_f64, shares in 1.5..40.0_f64, patience in 3.0..30.0_f64,
        ) {
            let run = period / shares;
            let longest = patience * shares * circuit.max(period);
            let union = lock_risk(circuit, period, run, 0.005, longest);
            let scan = scan(circuit, period, run, 0.005, longest);
            // A thousand samples of a share that consists of a few narrow bands: a few bands may fall between them.
            prop_assert!((union - scan).abs() < 0.04, "{union} {scan}");
        }
    }
}
