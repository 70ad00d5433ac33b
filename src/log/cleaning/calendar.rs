//! Windows of a log: between which two moments a mean is taken, by the clock on the wall.
//!
//! A day runs from midnight to midnight of the plant, so it has 23 hours when the clock is put forward and 25 when it is put
//! back; shorter windows begin at full hours and minutes of the same clock. The calendar and its rounding are jiff's, and
//! tests hold the windows against two libraries that resample data frames.

use crate::error::{Code, Error, Result};
use jiff::civil::{Date, date};
use jiff::tz::TimeZone;
use jiff::{RoundMode, Timestamp, Unit, ZonedDateTime, ZonedDateTimeRound};

/// Days are counted from here where a window holds several.
const FIRST_DAY: Date = date(1970, 1, 1);

/// A window: times from `from`, before `until`, ns.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Window {
    pub from: i64,
    pub until: i64,
}

/// How long windows are.
#[derive(Debug, Clone, Copy)]
enum Length {
    /// Whole days.
    Days(i64),
    /// So many of a unit, of which the next larger unit holds a whole number.
    Part(Unit, i64),
}

/// What cuts time into windows.
#[derive(Debug)]
pub(super) struct Calendar {
    length: Length,
    /// Length where no clock is changed, ns.
    pub usual: i64,
    zone: TimeZone,
}

impl Length {
    /// `seconds` as days, hours, minutes or seconds that a clock can be cut into.
    fn of(seconds: f64) -> Option<Length> {
        let whole = seconds.round();
        if whole < 1.0 || (seconds - whole).abs() > 1e-6 || whole > 1e9 {
            return None;
        }
        let whole = whole as i64;
        let part = |unit: Unit, holds: i64, of: i64| {
            (whole % holds == 0 && of % (whole / holds) == 0 && whole / holds < of)
                .then_some(Length::Part(unit, whole / holds))
        };
        if whole % 86_400 == 0 {
            return Some(Length::Days(whole / 86_400));
        }
        part(Unit::Hour, 3600, 24).or_else(|| part(Unit::Minute, 60, 60)).or_else(|| part(Unit::Second, 1, 60))
    }
}

/// Whether means can be taken over windows of so many seconds: whole days, or a length that goes into a day, an hour or a
/// minute and begins at its full hours, minutes or seconds.
pub fn can_be_window(seconds: f64) -> bool {
    Length::of(seconds).is_some()
}

impl Calendar {
    /// Windows of `seconds` by the clock of a zone.
    pub fn new(seconds: f64, zone: &TimeZone) -> Result<Calendar> {
        let length = Length::of(seconds).ok_or_else(|| {
            let message = format!(
                "means over {seconds} s do not begin with the days and hours of a clock: take whole days, 1, 2, 3, 4, 6, 8 \
                 or 12 hours, or minutes that go into an hour"
            );
            Error::new(Code::OutOfRange, "window", message).number(seconds)
        })?;
        Ok(Calendar { length, usual: (seconds.round() * super::SECOND) as i64, zone: zone.clone() })
    }

    /// The window that holds a time, ns.
    pub fn around(&self, time: i64) -> Result<Window> {
        self.window(time).map_err(|error| {
            Error::new(Code::OutOfRange, "time", format!("a time stamp lies beyond the calendar: {error}"))
        })
    }

    fn window(&self, time: i64) -> std::result::Result<Window, jiff::Error> {
        let at = Timestamp::from_nanosecond(i128::from(time))?.to_zoned_datetime(self.zone.clone());
        match self.length {
            Length::Days(days) => {
                let since = FIRST_DAY.until(at.date())?.get_days();
                let back = i64::from(since).rem_euclid(days);
                let first = at.date().checked_sub(jiff::Span::new().try_days(back)?)?;
                let next = first.checked_add(jiff::Span::new().try_days(days)?)?;
                let midnight = |date: Date| date.to_zoned_datetime(self.zone.clone()).map(|at| nanoseconds(&at));
                Ok(Window { from: midnight(first)?, until: midnight(next)? })
            }
            Length::Part(unit, count) => {
                let rounding = |mode| ZonedDateTimeRound::new().smallest(unit).increment(count).mode(mode);
                let begin = |at: &ZonedDateTime| at.round(rounding(RoundMode::Trunc));
                let mut from = begin(&at)?;
                if from.timestamp() > at.timestamp() {
                    // the clock skipped the full hour: the window begins where it was put forward
                    let skip =
                        self.zone.preceding(at.timestamp().checked_add(jiff::SignedDuration::from_nanos(1))?).next();
                    from =
                        skip.map_or_else(|| at.clone(), |skip| skip.timestamp().to_zoned_datetime(self.zone.clone()));
                }
                let later = Timestamp::from_nanosecond(i128::from(nanoseconds(&from)) + i128::from(self.usual))?
                    .to_zoned_datetime(self.zone.clone());
                // where the clock is put back, the window may not have ended by its usual length
                let mut until = begin(&later)?;
                if until.timestamp() <= from.timestamp() {
                    until = later.round(rounding(RoundMode::Ceil))?;
                }
                Ok(Window { from: nanoseconds(&from), until: nanoseconds(&until) })
            }
        }
    }
}

/// A time as ns from 1970; the range of an i64 holds all that a log may have.
fn nanoseconds(at: &ZonedDateTime) -> i64 {
    i64::try_from(at.timestamp().as_nanosecond()).unwrap_or(i64::MAX)
}
