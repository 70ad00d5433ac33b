//! Seconds to whole ticks: coverage is decided by divisibility, so its times are integers.

use crate::error::{Code, Error, Result};

/// Ticks in a second: timers and circuit times are settled to the millisecond.
pub const TICKS_PER_SECOND: f64 = 1e3;

/// The longest time that is computed with, in ticks (some three hundred years).
///
/// Far below the range of `i64`, and a wait of as many circuits stays inside `i128` when multiplied by a circuit.
pub const LONGEST_TICKS: i64 = 10_000_000_000_000;

/// A time in whole ticks, the half tick rounded to the even one.
///
/// `what` names the quantity for the error; `seconds` s, at most [`LONGEST_TICKS`] long in either direction. Exact
/// from here on. Rounding of IEEE 754: the even rule does not drift when a table of times is rounded.
pub fn ticks(what: &str, seconds: f64) -> Result<i64> {
    if !seconds.is_finite() {
        let message = format!("{what} is not a number of seconds: give a finite time");
        return Err(Error::new(Code::NotFinite, what, message).number(seconds).unit("s"));
    }
    let count = (seconds * TICKS_PER_SECOND).round_ties_even();
    if count.abs() > LONGEST_TICKS as f64 {
        return Err(too_long(what, seconds));
    }
    Ok(count as i64)
}

/// The error for a time beyond [`LONGEST_TICKS`].
pub(super) fn too_long(what: &str, seconds: f64) -> Error {
    let longest = LONGEST_TICKS as f64 / TICKS_PER_SECOND;
    let message = format!("{what} = {seconds} s is longer than any timer or circuit: it may be at most {longest} s");
    Error::new(Code::OutOfRange, what, message).number(seconds).unit("s").limit(format!("at most {longest} s"))
}

/// Greatest common divisor of two numbers that are not negative and not both zero. Source: Euclid, Elements VII.2.
pub fn gcd(a: i64, b: i64) -> i64 {
    let (mut a, mut b) = (a, b);
    while b != 0 {
        (a, b) = (b, a % b);
    }
    a
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn half_ticks_go_to_the_even_one() {
        let count = |seconds| ticks("run", seconds).unwrap();
        assert_eq!([count(0.0005), count(0.0015), count(0.0025)], [0, 2, 2]);
        assert_eq!(count(1966.905), 1_966_905);
    }

    #[test]
    fn times_beyond_the_limit_are_refused() {
        assert!(ticks("run", 1e10).is_ok());
        assert_eq!(ticks("run", 1.1e10).unwrap_err().code, Code::OutOfRange);
        assert_eq!(ticks("run", f64::NAN).unwrap_err().code, Code::NotFinite);
    }

    #[test]
    fn common_divisors() {
        assert_eq!((gcd(480, 36), gcd(7, 0), gcd(0, 7), gcd(1, 9)), (12, 7, 7, 1));
    }
}
