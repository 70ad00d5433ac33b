//! Which of the set-ups that keep every limit comes first.

use std::cmp::Ordering;

/// Costs that differ by no more than this share are taken as equal: the models are not finer. Closure of our own.
const AS_GOOD: f64 = 0.01;

/// What decides the place of a set-up.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Standing {
    /// Cost of a year, in any one unit.
    pub cost: f64,
    /// Longest wait, h.
    pub worst_wait_h: f64,
    /// Share of the oil in the gaps that spills over.
    pub overflow: f64,
    /// Starts of the timer, 1/s; 0 if it never stops.
    pub starts: f64,
    /// One joint in how many.
    pub every: i64,
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
    /// Among set-ups as good as one another: the shortest longest wait, then the least overflow, the fewest starts, the
    /// smallest n, shot, run and dwell; then the oil that enters in half of its time and leaves more in the joints, and the
    /// better point. Waits, overflows and fills equal to six decimals are equal.
    fn by_handling(&self, other: &Standing) -> Ordering {
        let six = |value: f64| (value * 1e6).round();
        let late = |s: &Standing| if s.enters_soon { 0.0 } else { 1.0 };
        let key = |s: &Standing| {
            let setting = [s.starts, s.every as f64, s.shot, s.run, s.dwell];
            let oil_and_place = [late(s), -six(s.lowest_fill), -s.score];
            [six(s.worst_wait_h), six(s.overflow)].into_iter().chain(setting).chain(oil_and_place)
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

fn least_cost(standings: &[Standing]) -> f64 {
    standings.iter().map(|s| s.cost).fold(f64::INFINITY, f64::min)
}

fn near_to(least: f64) -> impl Fn(&Standing) -> bool {
    move |s| s.cost <= least + AS_GOOD * least.abs()
}

/// The order of the set-ups, best first, as positions in `standings`.
///
/// First those within 1 % of the least cost, in the order of handling; then the others by cost. Of equals the one that
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
        worst_wait_h: 4.0,
        overflow: 0.0,
        starts: 1e-4,
        every: 7,
        shot: 5.0,
        run: 30.0,
        dwell: 60.0,
        enters_soon: true,
        lowest_fill: 0.5,
        score: 0.5,
    };

    #[test]
    fn a_per_cent_is_no_difference_and_the_shorter_wait_wins() {
        let list = [
            ONE,
            Standing { cost: 100.9, worst_wait_h: 3.0, ..ONE },
            Standing { cost: 101.1, worst_wait_h: 1.0, ..ONE },
        ];
        assert_eq!(ranking(&list), [1, 0, 2]);
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
