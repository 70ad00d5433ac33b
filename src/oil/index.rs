//! Viscosity index (ASTM D2270): how little an oil thins with heat; and the viscosity at 100 °C that an index implies.
//!
//! The index compares an oil at 40 °C with two reference families that have the same viscosity at 100 °C: `L` (index 0)
//! and `H` (index 100). Both are tabulated up to 70 mm2/s, with linear interpolation, and given by formulas from there.

use super::MM2_PER_S;
use crate::error::{Code, Error, Result};
use std::f64::consts::LN_10;
use std::sync::LazyLock;

/// One row of the table of ASTM D2270; viscosities in mm2/s.
struct Row {
    v100: f64,
    l: f64,
    h: f64,
    log_v100: f64,
    log_h: f64,
}

/// Where the formulas take over from the table, mm2/s at 100 °C. The two differ there by 0.02 %.
const FORMULA_FROM: f64 = 70.0;

/// `a Y² + b Y + c` for L and H from 70 mm2/s at 100 °C. Source: ASTM D2270 5.1.2.
const L: [f64; 3] = [0.8353, 14.67, -216.0];
const H: [f64; 3] = [0.1684, 11.85, -97.0];

/// Slope of the scale above 100. Source: ASTM D2270, procedure B.
const ABOVE_100: f64 = 0.00715;

/// Table 1 of the standard. A line of the file that is not three numbers is a heading.
static TABLE: LazyLock<Vec<Row>> = LazyLock::new(|| {
    let row = |line: &str| {
        let mut cells = line.split(',').map(str::parse::<f64>);
        match (cells.next(), cells.next(), cells.next()) {
            (Some(Ok(v100)), Some(Ok(l)), Some(Ok(h))) => Some(Row { v100, l, h, log_v100: v100.ln(), log_h: h.ln() }),
            _ => None,
        }
    };
    include_str!("d2270.csv").lines().filter_map(row).collect()
});

/// Viscosity index (-) of an oil with `viscosity_40` and `viscosity_100` (m2/s at 40 and 100 °C), unrounded.
///
/// Source: ASTM D2270, procedure A up to 100, procedure B above; the table rows are interpolated linearly.
/// Fails below 2 mm2/s at 100 °C, where the standard has no table, and for an oil that does not thin with heat.
///
/// ```
/// let index = pinfilm::oil::viscosity_index(73.30e-6, 8.86e-6)?;
/// assert!((index - 92.43).abs() < 0.01); // worked example of the standard
/// # Ok::<(), pinfilm::Error>(())
/// ```
pub fn viscosity_index(viscosity_40: f64, viscosity_100: f64) -> Result<f64> {
    let (v40, v100) = (viscosity_40 / MM2_PER_S, viscosity_100 / MM2_PER_S);
    if v40.is_nan() || v40 <= v100 {
        return Err(Error::new(
            Code::Inconsistent,
            "viscosity_100",
            format!(
                "{v40} mm²/s at 40 °C and {v100} mm²/s at 100 °C: an oil is thinner at 100 °C; swap or correct them"
            ),
        )
        .number(v100)
        .unit("mm²/s")
        .limit("less than the viscosity at 40 °C"));
    }
    let (l, h) = limits(v100)?;
    if v40 >= h {
        return Ok(100.0 * (l - v40) / (l - h));
    }
    let power = (h / v40).ln() / v100.ln();
    Ok(100.0 + (power * LN_10).exp_m1() / ABOVE_100)
}

/// Viscosities at 40 °C (m2/s) of the reference oils with index 0 (`L`) and 100 (`H`) that have this viscosity at
/// 100 °C (m2/s, 2 mm2/s and more).
///
/// Source: ASTM D2270 table 1 to 70 mm2/s, equations of 5.1.2 from there.
pub fn index_limits(viscosity_100: f64) -> Result<(f64, f64)> {
    limits(viscosity_100 / MM2_PER_S).map(|(l, h)| (l * MM2_PER_S, h * MM2_PER_S))
}

/// Viscosity at 100 °C (m2/s) of an oil with `viscosity_40` (m2/s at 40 °C) and a viscosity index (-50 to 400).
///
/// The exact inverse of [`viscosity_index`]: the table row is found by bisection, the interpolation inverted in closed
/// form (index up to 100) or by Newton's method in logarithms (above). Source: ASTM D2270, inverted.
/// Fails where the answer would be below 2 mm2/s: such thin oils need two measured viscosities.
///
/// ```
/// let v100 = pinfilm::oil::viscosity_at_100(320e-6, 120.0)?;
/// assert!((v100 - 28.39040436e-6).abs() < 1e-14);
/// # Ok::<(), pinfilm::Error>(())
/// ```
pub fn viscosity_at_100(viscosity_40: f64, viscosity_index: f64) -> Result<f64> {
    let v40 = viscosity_40 / MM2_PER_S;
    let v100 = if viscosity_index <= 100.0 {
        up_to_100(v40, viscosity_index / 100.0)
    } else {
        above_100(v40, (ABOVE_100 * (viscosity_index - 100.0)).ln_1p() / LN_10)
    };
    match v100 {
        Some(v100) => Ok(v100 * MM2_PER_S),
        None => Err(Error::new(
            Code::BeyondModel,
            "viscosity_40",
            format!(
                "an oil of {v40} mm²/s at 40 °C and index {viscosity_index} would have less than 2 mm²/s at 100 °C, \
                 where the viscosity index ends: give two measured viscosities instead of grade and index"
            ),
        )
        .number(v40)
        .unit("mm²/s")
        .limit("oils with at least 2 mm²/s at 100 °C")),
    }
}

/// L and H in mm2/s for a viscosity at 100 °C in mm2/s.
fn limits(v100: f64) -> Result<(f64, f64)> {
    if v100 >= FORMULA_FROM {
        return Ok((quadratic(L, v100), quadratic(H, v100)));
    }
    let above = TABLE.partition_point(|row| row.v100 <= v100);
    match (above.checked_sub(1).and_then(|below| TABLE.get(below)), TABLE.get(above)) {
        (Some(low), Some(high)) => {
            let share = (v100 - low.v100) / (high.v100 - low.v100);
            Ok((low.l + share * (high.l - low.l), low.h + share * (high.h - low.h)))
        }
        _ => Err(Error::new(
            Code::BeyondModel,
            "viscosity_100",
            format!("{v100} mm²/s at 100 °C is below 2 mm²/s, where the viscosity index of ASTM D2270 begins"),
        )
        .number(v100)
        .unit("mm²/s")
        .limit("2 mm²/s and more")),
    }
}

/// Index up to 100: viscosity at 40 °C is `L - share (L - H)`, straight between rows and quadratic above the table.
fn up_to_100(v40: f64, share: f64) -> Option<f64> {
    let [a, b, c] = std::array::from_fn(|i| L[i] - share * (L[i] - H[i]));
    if v40 >= quadratic([a, b, c], FORMULA_FROM) {
        let rest = v40 - c;
        return Some(2.0 * rest / (b + (b * b + 4.0 * a * rest).sqrt()));
    }
    let at = |row: &Row| row.l - share * (row.l - row.h);
    let above = TABLE.partition_point(|row| at(row) <= v40);
    let (low, high) = (TABLE.get(above.checked_sub(1)?)?, TABLE.get(above)?);
    Some(low.v100 + (v40 - at(low)) * (high.v100 - low.v100) / (at(high) - at(low)))
}

/// Index above 100: `ln v40 = ln H(Y) - power ln Y`, which rises with Y because H rises faster than Y.
fn above_100(v40: f64, power: f64) -> Option<f64> {
    let log_v40 = v40.ln();
    if log_v40 >= quadratic(H, FORMULA_FROM).ln() - power * FORMULA_FROM.ln() {
        let slope = |y: f64| (2.0 * H[0] * y + H[1]) / quadratic(H, y);
        return Some(newton(FORMULA_FROM, |y| (quadratic(H, y).ln() - power * y.ln() - log_v40, y * slope(y) - power)));
    }
    let above = TABLE.partition_point(|row| row.log_h - power * row.log_v100 <= log_v40);
    let (low, high) = (TABLE.get(above.checked_sub(1)?)?, TABLE.get(above)?);
    let slope = (high.h - low.h) / (high.v100 - low.v100);
    let start = {
        let at = |row: &Row| row.log_h - power * row.log_v100;
        let share = (log_v40 - at(low)) / (at(high) - at(low));
        low.v100 + share * (high.v100 - low.v100)
    };
    Some(newton(start, |y| {
        let h = low.h + slope * (y - low.v100);
        (h.ln() - power * y.ln() - log_v40, y * slope / h - power)
    }))
}

/// Newton's method in ln y for a function that is nearly straight there; `f` gives value and slope against ln y.
fn newton(start: f64, f: impl Fn(f64) -> (f64, f64)) -> f64 {
    let mut y = start;
    for _ in 0..20 {
        let (value, slope) = f(y);
        let step = value / slope;
        y *= (-step).exp();
        if step.abs() < 1e-9 {
            break; // steps square: what is left is below the last digit
        }
    }
    y
}

fn quadratic([a, b, c]: [f64; 3], y: f64) -> f64 {
    (a * y + b) * y + c
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::numeric::root;
    use proptest::prelude::*;

    #[test]
    fn the_table_is_whole_and_rises() {
        assert_eq!(TABLE.len(), 311);
        assert_eq!((TABLE[0].v100, TABLE[310].v100), (2.0, 70.0));
        assert!(TABLE.windows(2).all(|w| w[0].v100 < w[1].v100 && w[0].l < w[1].l && w[0].h < w[1].h));
        assert!(TABLE.iter().all(|row| row.h < row.l));
    }

    /// The method the closed inversion replaces: a bracketed root of the direct formula.
    fn by_bracketing(v40: f64, index: f64) -> f64 {
        let power = (ABOVE_100 * (index - 100.0)).ln_1p() / LN_10;
        let f = |y: f64| {
            let (l, h) = limits(y).unwrap();
            (if index <= 100.0 { l - index / 100.0 * (l - h) } else { h * y.powf(-power) }) - v40
        };
        let mut high = 4.0;
        while f(high) < 0.0 {
            high *= 2.0;
        }
        root("viscosity at 100 °C", 2.0, high, 1e-15, 0.0, f).unwrap()
    }

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(2000))]
        #[test]
        fn inverse_agrees_with_bracketing_and_with_the_direct_index(
            log in (8.1_f64).ln()..(2e5_f64).ln(), index in -50.0..400.0_f64,
        ) {
            let v40 = log.exp();
            let Ok(v100) = viscosity_at_100(v40 * 1e-6, index) else {
                // only thin oils have no answer: index -50 starts at 8.794 mm2/s
                prop_assert!(v40 < 8.8);
                return Ok(());
            };
            let slow = by_bracketing(v40, index);
            // Around 70 mm2/s table and formula overlap by 0.02 %: two oils fit there, either is right.
            if (v100 * 1e6 - 70.0).abs() > 0.05 {
                prop_assert!((v100 * 1e6 / slow - 1.0).abs() < 1e-12, "{v100:e} against {slow}");
                prop_assert!((viscosity_index(v40 * 1e-6, v100).unwrap() - index).abs() < 1e-9 * (1.0 + index.abs()));
            }
        }
    }

    #[test]
    fn joins_at_100_and_rises_with_both_inputs() {
        for v40 in [10.0, 46.0, 220.0, 1500.0, 9000.0] {
            let at = |v40: f64, index: f64| viscosity_at_100(v40 * 1e-6, index).unwrap();
            assert!((at(v40, 100.0) / at(v40, 100.0 + 1e-9) - 1.0).abs() < 1e-10);
            assert!(at(v40, 95.0) < at(v40, 105.0) && at(v40, 95.0) < at(v40 * 1.01, 95.0));
        }
    }

    #[test]
    fn thin_and_upside_down_oils_are_refused() {
        let error = viscosity_at_100(4.6e-6, 95.0).unwrap_err();
        assert_eq!(error.code, Code::BeyondModel);
        assert!(error.message.contains("give two measured viscosities"));
        assert!(viscosity_at_100(6.473e-6, 95.0).is_err() && viscosity_at_100(6.475e-6, 95.0).is_ok());
        assert_eq!(viscosity_at_100(4.6e-6, 180.0).unwrap_err().code, Code::BeyondModel);
        assert_eq!(viscosity_index(10e-6, 1.9e-6).unwrap_err().code, Code::BeyondModel);
        assert_eq!(viscosity_index(10e-6, 10e-6).unwrap_err().code, Code::Inconsistent);
    }
}
