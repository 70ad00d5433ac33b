//! Time stamps: a logger's clock to UTC and back, and dates as people write them.
//!
//! A stamp without an offset is what a clock on the wall said. With a named time zone, the hour that the clock skips in
//! spring and the hour that it shows twice in autumn are known, and a file in its own order tells which of the two a row
//! belongs to. Without a zone the stamps stay as they are, and cleaning mends the jumps of an hour that it sees.

use crate::error::{Code, Error, Result};
use jiff::Span;
use jiff::Timestamp;
use jiff::civil::{Date, DateTime};
use jiff::tz::{AmbiguousOffset, Offset, TimeZone};

/// Nanoseconds in a second.
const SECOND: i64 = 1_000_000_000;

/// Seconds in a day of 24 hours.
const A_DAY: f64 = 86_400.0;

/// The time zone of a log; none where stamps are a bare clock, taken as they are.
#[derive(Debug, Clone, PartialEq)]
pub struct Zone(Option<TimeZone>);

/// What it took to bring a clock to UTC.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct ClockRows {
    /// Rows in the hour that the clock showed twice; told apart by their order in the file.
    pub repeated_hour: usize,
    /// Rows in the hour that the clock should have skipped: it was not put forward.
    pub skipped_hour: usize,
}

/// A moment as people name it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Moment {
    /// First nanosecond.
    pub from: i64,
    /// First nanosecond after it: a day later for a date, the same for a time of day.
    pub until: i64,
}

impl Zone {
    /// The zone of that IANA name, such as `Europe/Vienna`; without a name a bare clock.
    pub fn named(name: Option<&str>) -> Result<Zone> {
        let Some(name) = name else { return Ok(Zone(None)) };
        TimeZone::get(name).map(|zone| Zone(Some(zone))).map_err(|_| {
            let message = format!(
                "time_zone = {name:?} is not in the time zone database: give a name such as \"Europe/Vienna\", or \
                 \"UTC\"; for a logger that stays on winter time one such as \"Etc/GMT-1\""
            );
            Error::new(Code::UnknownChoice, "time_zone", message).text_value(name).limit("an IANA time zone name")
        })
    }

    /// Stamps of a clock on the wall, ns in the order of the file, to UTC. Stamps that are no dates stay as they are.
    pub fn utc(&self, stamps: &[i64]) -> (Vec<i64>, ClockRows) {
        let Some(zone) = &self.0 else { return (stamps.to_vec(), ClockRows::default()) };
        let mut rows = ClockRows::default();
        let falls = stamps.windows(2).filter(|w| w[1] < w[0]).count();
        let backwards = 2 * falls > stamps.len();
        // a logger by the hour shows the hour that comes twice as one stamp twice
        let by_the_hour = usual_step(stamps) >= 3600 * SECOND;
        let mut times = vec![0; stamps.len()];
        let mut before: Option<i64> = None;
        // offsets hold for a while: a row in the same quarter of an hour needs no look into the database
        let mut known: Option<(i64, AmbiguousOffset)> = None;
        for i in 0..stamps.len() {
            let row = if backwards { stamps.len() - 1 - i } else { i };
            let quarter = stamps[row].div_euclid(900 * SECOND);
            let offset = match known.filter(|(known, _)| *known == quarter) {
                Some((_, offset)) => offset,
                None => {
                    let Some(clock) = clock(stamps[row]) else {
                        times[row] = stamps[row];
                        continue;
                    };
                    zone.to_ambiguous_timestamp(clock).offset()
                }
            };
            known = Some((quarter, offset));
            let less = |offset: Offset| stamps[row].saturating_sub(i64::from(offset.seconds()) * SECOND);
            times[row] = match offset {
                AmbiguousOffset::Unambiguous { offset } => less(offset),
                AmbiguousOffset::Gap { before, .. } => {
                    rows.skipped_hour += 1;
                    less(before)
                }
                AmbiguousOffset::Fold { before: first, after: second } => {
                    rows.repeated_hour += 1;
                    let again = |before: i64| less(first) < before || by_the_hour && less(first) == before;
                    if before.is_some_and(again) { less(second) } else { less(first) }
                }
            };
            before = Some(times[row]);
        }
        (times, rows)
    }

    /// The calendar and clock that windows follow; none where the stamps are a bare clock.
    pub(super) fn clock(&self) -> Option<&TimeZone> {
        self.0.as_ref()
    }

    /// So many seconds after `time` ns, whole days of them by the calendar.
    pub(super) fn after(&self, time: i64, seconds: f64) -> i64 {
        let days = (seconds / A_DAY).floor();
        let later = |days: i64| {
            let at = Timestamp::from_nanosecond(i128::from(time)).ok()?;
            let at = at.to_zoned_datetime(self.0.clone().unwrap_or(TimeZone::UTC));
            Some(nanoseconds(at.checked_add(Span::new().try_days(days).ok()?).ok()?.timestamp()))
        };
        let rest = (seconds - days * A_DAY) * SECOND as f64;
        later(days as i64).unwrap_or(i64::MAX).saturating_add(rest as i64)
    }

    /// A time as people read it: the date, with the time of day unless that is midnight.
    pub fn text(&self, time: i64) -> String {
        let Ok(at) = Timestamp::from_nanosecond(i128::from(time)) else { return "no date".into() };
        let clock = self.0.clone().unwrap_or(TimeZone::UTC).to_datetime(at);
        if (clock.hour(), clock.minute()) == (0, 0) {
            return clock.date().to_string();
        }
        format!("{} {:02}:{:02}", clock.date(), clock.hour(), clock.minute())
    }

    /// Reads a date (`2025-06-02`), a time (`2025-06-02T10:30`) by the clock of the zone, or a time with its offset.
    pub fn moment(&self, text: &str, field: &'static str) -> Result<Moment> {
        let text = text.trim();
        let local = |clock: DateTime| {
            let zone = self.0.clone().unwrap_or(TimeZone::UTC);
            zone.to_ambiguous_timestamp(clock).compatible().ok().map(nanoseconds)
        };
        let day = |date: Date| {
            let (from, until) = (local(date.at(0, 0, 0, 0))?, local(date.tomorrow().ok()?.at(0, 0, 0, 0))?);
            Some(Moment { from, until })
        };
        let at = |time: i64| Moment { from: time, until: time };
        let found = if text.len() <= 10 {
            text.parse::<Date>().ok().and_then(day)
        } else if let Ok(time) = text.parse::<Timestamp>() {
            Some(at(nanoseconds(time)))
        } else {
            text.parse::<DateTime>().ok().and_then(local).map(at)
        };
        found.ok_or_else(|| {
            let message = format!("{field} = {text:?} is not a date: write it as 2025-06-02, or 2025-06-02T10:30");
            Error::new(Code::WrongType, field, message).text_value(text).limit("a date as 2025-06-02")
        })
    }
}

fn nanoseconds(time: Timestamp) -> i64 {
    i64::try_from(time.as_nanosecond()).unwrap_or(i64::MAX)
}

/// Median of the steps between unlike stamps, ns; 0 where there are none.
fn usual_step(stamps: &[i64]) -> i64 {
    let mut steps: Vec<i64> = stamps.windows(2).map(|w| w[1].abs_diff(w[0]) as i64).filter(|step| *step > 0).collect();
    let middle = steps.len() / 2;
    if steps.is_empty() { 0 } else { *steps.select_nth_unstable(middle).1 }
}

/// A stamp as the face of a clock.
fn clock(stamp: i64) -> Option<DateTime> {
    Timestamp::from_nanosecond(i128::from(stamp)).ok().map(|at| TimeZone::UTC.to_datetime(at))
}

#[cfg(test)]
mod tests {
    use super::*;

    const HOUR: i64 = 3600 * SECOND;

    fn stamp(text: &str) -> i64 {
        Zone(None).moment(text, "t").unwrap().from
    }

    #[test]
    fn the_hour_that_comes_twice_is_told_apart_by_the_order_of_the_file() {
        let zone = Zone::named(Some("Europe/Vienna")).unwrap();
        // 1:30, 2:00, 2:30, 2:00, 2:30, 3:00 on the last Sunday of October 2025
        let start = stamp("2025-10-26T01:30");
        let clock = [0, 1, 2, 1, 2, 3].map(|half| start + half * HOUR / 2);
        let (utc, rows) = zone.utc(&clock);
        assert!(utc.windows(2).all(|w| w[1] - w[0] == HOUR / 2), "{utc:?}");
        assert_eq!(rows, ClockRows { repeated_hour: 4, skipped_hour: 0 });
        let mut backwards = clock;
        backwards.reverse();
        let mut found = zone.utc(&backwards).0;
        found.reverse();
        assert_eq!(found, utc);
    }

    #[test]
    fn a_logger_by_the_hour_shows_one_stamp_twice() {
        let zone = Zone::named(Some("Europe/Vienna")).unwrap();
        let start = stamp("2025-10-26T00:00");
        let (utc, rows) = zone.utc(&[0, 1, 2, 2, 3, 4].map(|hour| start + hour * HOUR));
        assert!(utc.windows(2).all(|w| w[1] - w[0] == HOUR), "{utc:?}");
        assert_eq!(rows.repeated_hour, 2);
    }

    #[test]
    fn a_clock_that_was_not_put_forward_is_counted() {
        let zone = Zone::named(Some("Europe/Vienna")).unwrap();
        let (utc, rows) = zone.utc(&[stamp("2025-03-30T01:59"), stamp("2025-03-30T02:30"), stamp("2025-03-30T04:00")]);
        assert_eq!((rows.skipped_hour, rows.repeated_hour), (1, 0));
        assert_eq!(utc[1] - utc[0], 31 * 60 * SECOND);
    }

    #[test]
    fn dates() {
        let zone = Zone::named(Some("Europe/Vienna")).unwrap();
        let day = zone.moment("2025-03-30", "changed").unwrap();
        assert_eq!(day.until - day.from, 23 * HOUR);
        assert_eq!(zone.text(day.from), "2025-03-30");
        assert_eq!(zone.moment("2025-06-02T10:30", "c").unwrap(), zone.moment("2025-06-02T08:30Z", "c").unwrap());
        assert_eq!(zone.text(zone.moment("2025-06-02T10:30", "c").unwrap().from), "2025-06-02 10:30");
        for wrong in ["", "tomorrow", "2025-13-01", "02.06.2025", "2025-06-02T99:00"] {
            assert_eq!(zone.moment(wrong, "changed").unwrap_err().field, "changed");
        }
        assert!(Zone::named(Some("Europe/Atlantis")).is_err());
        // four days after the 29th begins are five midnights on, one of them an hour early
        let friday = zone.moment("2025-03-28", "changed").unwrap();
        assert_eq!(zone.text(zone.after(friday.until, 4.0 * A_DAY)), "2025-04-02");
        assert_eq!(zone.text(zone.after(friday.until, 1.5 * A_DAY)), "2025-03-30 13:00");
        assert_eq!(zone.after(0, f64::INFINITY), i64::MAX);
        assert_eq!(zone.utc(&[i64::MIN, i64::MAX]).0.len(), 2);
    }
}
