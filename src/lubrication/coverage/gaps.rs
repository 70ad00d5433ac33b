//! The three-gap theorem on the unit circle: the clean form of what a timer does to a chain.

/// Gaps of one length between neighbouring points on the unit circle.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Gap {
    /// Length of the gap; the circle is 1 long.
    pub length: f64,
    /// How many gaps have this length.
    pub count: u64,
}

/// The circle in whole steps, fine enough that the rounding of an `f64` is some hundred of them.
const CIRCLE: i128 = 1 << 62;

/// Gaps between the points 0, `step`, 2 `step`, … (`count` of them) on a circle of length 1, shortest first.
///
/// `step`: any finite number, its whole part does not matter; `count` >= 1. At most three lengths occur, and of three
/// the longest is the sum of the other two (three-gap theorem: V. T. Sós, Ann. Univ. Sci. Budapest 1, 1958). Points
/// closer than the rounding of `step` can tell apart coincide: a gap of length 0 for each that falls on an earlier one.
///
/// ```
/// use pinfilm::lubrication::coverage::three_gaps;
/// let golden = (5.0_f64.sqrt() - 1.0) / 2.0;
/// let gaps = three_gaps(golden, 5);
/// assert_eq!(gaps.iter().map(|gap| gap.count).collect::<Vec<_>>(), [2, 3]);
/// ```
pub fn three_gaps(step: f64, count: u64) -> Vec<Gap> {
    let count = i128::from(count.max(1));
    let turn = ((step - step.floor()) * CIRCLE as f64).round() as i128 % CIRCLE;
    // n1 is the point nearest after point 0, n2 the nearest before it, as far as the points have been laid.
    let (mut n1, mut d1, mut n2, mut d2) = (1, turn, 0, CIRCLE);
    // Half a unit in the last place of step, and of the circle, for every step taken.
    let slack = ((step.abs().max(1.0) * f64::EPSILON * CIRCLE as f64) as i128).max(1);
    while n1 + n2 < count {
        if d1 <= slack * n1 || d2 <= slack * n2 {
            let places = if d1 <= slack * n1 { n1 } else { n2 };
            return coincident(places, count);
        }
        if d2 >= d1 {
            let times = (d2 / d1).min((count - n1 - n2 + n1 - 1) / n1);
            (d2, n2) = (d2 - times * d1, n2 + times * n1);
        } else {
            let times = (d1 / d2).min((count - n1 - n2 + n2 - 1) / n2);
            (d1, n1) = (d1 - times * d2, n1 + times * n2);
        }
    }
    let mut gaps: Vec<Gap> = Vec::with_capacity(3);
    for (length, number) in [(d1, count - n1), (d2, count - n2), (d1 + d2, n1 + n2 - count)] {
        if number > 0 {
            gaps.push(Gap { length: length as f64 / CIRCLE as f64, count: number as u64 });
        }
    }
    gaps.sort_by(|a, b| a.length.total_cmp(&b.length));
    gaps.dedup_by(|b, a| {
        let same = b.length - a.length <= 2.0 * count as f64 * slack as f64 / CIRCLE as f64;
        if same {
            a.count += b.count;
        }
        same
    });
    gaps
}

/// Points that fall on `places` evenly spaced places again and again.
fn coincident(places: i128, count: i128) -> Vec<Gap> {
    let mut gaps = vec![Gap { length: 1.0 / places as f64, count: places as u64 }];
    if count > places {
        gaps.insert(0, Gap { length: 0.0, count: (count - places) as u64 });
    }
    gaps
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn one_point_leaves_the_whole_circle() {
        assert_eq!(three_gaps(0.3, 1), [Gap { length: 1.0, count: 1 }]);
    }

    #[test]
    fn simple_fractions_come_back_to_their_places() {
        let third = three_gaps(1.0 / 3.0, 7);
        assert_eq!(third, [Gap { length: 0.0, count: 4 }, Gap { length: 1.0 / 3.0, count: 3 }]);
        assert_eq!(three_gaps(4.0, 3), [Gap { length: 0.0, count: 2 }, Gap { length: 1.0, count: 1 }]);
        assert_eq!(three_gaps(0.9, 10).last().unwrap().count, 10);
    }

    proptest! {
        #![proptest_config(ProptestConfig { cases: 500, failure_persistence: None, ..Default::default() })]
        #[test]
        fn sorting_the_points_finds_the_same_gaps(step in 0.001..0.999_f64, count in 1..200_u64) {
            let mut points: Vec<f64> = (0..count).map(|k| (k as f64 * step).fract()).collect();
            points.sort_by(f64::total_cmp);
            points.push(1.0);
            let mut sorted: Vec<f64> = points.windows(2).map(|p| p[1] - p[0]).collect();
            sorted.sort_by(f64::total_cmp);
            let listed: Vec<f64> =
                three_gaps(step, count).iter().flat_map(|gap| vec![gap.length; gap.count as usize]).collect();
            prop_assert_eq!(listed.len(), sorted.len());
            prop_assert!(listed.iter().zip(&sorted).all(|(a, b)| (a - b).abs() < 1e-11));
        }
    }
}
