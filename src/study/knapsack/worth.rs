//! What a line is expected to be worth over draws, and which of the chosen lines comes first.

/// Mean value of each line over the draws; nothing for a line that a draw leaves without a value.
///
/// ```
/// use pinfilm::study::expected_values;
/// assert_eq!(expected_values(&[vec![Some(1.0), None], vec![Some(3.0), Some(2.0)]]), [Some(2.0), None]);
/// ```
pub fn expected_values(draws: &[Vec<Option<f64>>]) -> Vec<Option<f64>> {
    let lines = draws.first().map_or(0, Vec::len);
    let mean = |line: usize| {
        let sum = draws.iter().try_fold(0.0, |sum, draw| draw[line].map(|value| sum + value));
        sum.map(|sum| sum / draws.len() as f64)
    };
    (0..lines).map(mean).collect()
}

/// Sorts lines by value for money, the best first; what costs nothing comes before all.
pub fn by_worth(lines: &mut [usize], value: &[f64], cost: &[f64]) {
    let worth = |line: usize| if cost[line] > 0.0 { value[line] / cost[line] } else { f64::INFINITY };
    lines.sort_by(|a, b| worth(*b).total_cmp(&worth(*a)));
}
