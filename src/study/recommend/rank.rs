//! Which of the set-ups that keep every limit comes first.

use std::cmp::Ordering;

/// Costs that differ by no more than this share are taken as equal: prices and hours are not known better. Closure of our own.
const AS_GOOD: f64 = 0.02;

/// Starts of a timer up to this many a second, one an hour, are few enough: oil little and often. Common practice, no source.
const FEW_STARTS: f64 = 1.0 / 3600.0;

/// What decides the place of a set-up.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Standing {
    /// Cost of a year, in any one unit.
    pub cost: f64,
    /// Whether the joints keep their floor even if oil is lost somewhat quicker than guessed
    /// ([`QUICKER`](super::sieve::QUICKER)).
    pub has_margin: bool,
    /// Share of the oil in the gaps that spills over.
    pub overflow: f64,
    /// Starts of the timer, 1/s; 0 if it never stops.
    pub starts: f64,
    /// Strokes of a valve that shoots, 1/s over runs and pauses; 0 for methods without shots.
    pub strokes: f64,
    /// One joint in how many.
    pub every: i64,
    /// Longest wait, h.
    pub worst_wait_h: f64,
    /// Oil of one shot.
    pub shot: f64,
    /// Run and dwell of the timer.
    pub run: f64,
    /// Pause of the timer.
    pub dwell: f64,
    /// Whether the oil enters in half of the time that it has.
    pub enters_soon: bool,
    /// Lowest fill of the joints that are reached.
    pub lowest_fill: f64,
    /// Score of the point, 0 to 1.
    pub score: f64,
}

impl Standing {
    /// Among set-ups as good as one another, what a fitter would rather set up and leave alone:
    ///
    /// 1. the floor is kept with a margin in the loss of oil, which nobody has measured;
    /// 2. hardly anything spills over, in whole per cent;
    /// 3. the timer starts no oftener than once an hour;
    /// 4. few large shots rather than many small ones, within a factor of about two: a small shot is hard to repeat, and
    ///    every stroke wears the valve;
    /// 5. the smallest n: 1 needs no counter and no count of the joints;
    /// 6. the shortest longest wait;
    /// 7. then fewest starts, smallest shot, run and dwell; the oil that enters in half of its time and leaves more in the
    ///    joints; the better point.
    ///
    /// Waits and fills equal to six decimals are equal. Common practice, no source.
    fn by_handling(&self, other: &Standing) -> Ordering {
        let six = |value: f64| (value * 1e6).round();
        let not = |is: bool| if is { 0.0 } else { 1.0 };
        let often = |s: &Standing| not(s.starts <= FEW_STARTS * (1.0 + 1e-9));
        let octave = |rate: f64| if rate > 0.0 { rate.log2().round() } else { f64::NEG_INFINITY };
        let key = |s: &Standing| {
            let trouble =
                [not(s.has_margin), (100.0 * s.overflow).round(), often(s), octave(s.strokes), s.every as f64];
            let setting = [six(s.worst_wait_h), s.starts, s.shot, s.run, s.dwell];
            let oil_and_place = [not(s.enters_soon), -six(s.lowest_fill), -s.score];
            trouble.into_iter().chain(setting).chain(oil_and_place)
        };
        let pairs = key(self).zip(key(other));
        pairs.map(|(a, b)| a.total_cmp(&b)).find(|order| order.is_ne()).unwrap_or(Ordering::Equal)
    }
}

/// The least cost, and how many of the set-ups are as good.
pub(super) fn as_good(standings: &[Standing]) -> (f64, usize) {
    let least = least_cost(standings);
    (least, standings.iter().filter(|s| near_to(least)(s)).count())
}

/// The cheapest with a margin in the loss of oil; of equals the first.
pub(super) fn cheapest_with_margin(standings: &[Standing]) -> Option<usize> {
    let with = standings.iter().enumerate().filter(|(_, s)| s.has_margin);
    with.min_by(|(_, a), (_, b)| a.cost.total_cmp(&b.cost)).map(|(at, _)| at)
}

fn least_cost(standings: &[Standing]) -> f64 {
    standings.iter().map(|s| s.cost).fold(f64::INFINITY, f64::min)
}

fn near_to(least: f64) -> impl Fn(&Standing) -> bool {
    move |s| s.cost <= least + AS_GOOD * least.abs()
}

/// The order of the set-ups, best first, as positions in `standings`.
///
/// First those within 2 % of the least cost, in the order of handling; then the others by cost. Of equals the one that
/// was offered first: the order depends on the offers alone.
pub fn ranking(standings: &[Standing]) -> Vec<usize> {
    let near = near_to(least_cost(standings));
    let mut order: Vec<usize> = (0..standings.len()).collect();
    order.sort_by(|&i, &j| {
        let (a, b) = (&standings[i], &standings[j]);
        match (near(a), near(b)) {
            (true, true) => a.by_handling(b),
            (true, false) => Ordering::Less,
            (false, true) => Ordering::Greater,
            (false, false) => a.cost.total_cmp(&b.cost).then(a.by_handling(b)),
        }
        .then(i.cmp(&j))
    });
    order
}

#[cfg(test)]
mod tests {
    use super::*;

    const ONE: Standing = Standing {
        cost: 100.0,
        has_margin: true,
        overflow: 0.0,
        starts: 1e-4,
        strokes: 0.01,
        every: 7,
        worst_wait_h: 4.0,
        shot: 5.0,
        run: 30.0,
        dwell: 60.0,
        enters_soon: true,
        lowest_fill: 0.5,
        score: 0.5,
    };

    #[test]
    fn two_per_cent_is_no_difference_and_the_shorter_wait_wins() {
        let list = [
            ONE,
            Standing { cost: 101.9, worst_wait_h: 3.0, ..ONE },
            Standing { cost: 102.1, worst_wait_h: 1.0, ..ONE },
        ];
        assert_eq!(ranking(&list), [1, 0, 2]);
    }

    /// Each beats the next by one thing alone, although all later things speak against it.
    #[test]
    fn margin_spill_starts_strokes_n_and_wait_in_this_order() {
        let list = [
            Standing { worst_wait_h: 5.0, ..ONE },
            Standing { every: 8, worst_wait_h: 4.0, ..ONE },
            Standing { strokes: 0.03, every: 1, worst_wait_h: 3.0, ..ONE },
            Standing { starts: 1e-3, strokes: 0.001, every: 1, worst_wait_h: 2.0, ..ONE },
            Standing { overflow: 0.03, starts: 0.0, strokes: 0.001, every: 1, worst_wait_h: 1.0, ..ONE },
            Standing { has_margin: false, starts: 0.0, strokes: 0.001, every: 1, worst_wait_h: 0.5, ..ONE },
        ];
        let turned: Vec<Standing> = list.iter().rev().copied().collect();
        assert_eq!(ranking(&list), [0, 1, 2, 3, 4, 5]);
        assert_eq!(ranking(&turned), [5, 4, 3, 2, 1, 0]);
        // a little more is no more: spills by half a per cent, strokes by a tenth, starts once in an hour or in two
        let near = Standing { overflow: 0.004, strokes: 0.011, starts: 1.0 / 3600.0, worst_wait_h: 3.0, ..ONE };
        assert_eq!(ranking(&[ONE, near]), [1, 0]);
    }

    #[test]
    fn of_two_oils_the_one_that_enters_soon_and_stays_longer() {
        let stays = Standing { lowest_fill: 0.7, ..ONE };
        let slow = Standing { lowest_fill: 0.8, enters_soon: false, ..ONE };
        assert_eq!(ranking(&[ONE, slow, stays]), [2, 0, 1]);
    }

    #[test]
    fn equals_keep_the_order_of_the_offers() {
        assert_eq!(ranking(&[ONE, ONE, ONE]), [0, 1, 2]);
        let tiny = Standing { worst_wait_h: 4.0 + 1e-8, starts: 0.5e-4, ..ONE };
        assert_eq!(ranking(&[ONE, tiny]), [1, 0]);
        assert!(ranking(&[]).is_empty());
    }
}
