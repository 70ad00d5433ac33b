//! The timetable of a week: when the line runs, how fast, and how it is interrupted.

use crate::error::{Code, Error, Result};
use crate::line::Duty;
use crate::lubrication::coverage::Segment;
use crate::noun;
use crate::quantity::unit::{H, ONE};
use crate::quantity::{Field, between, up_to};

/// A week, s.
pub(super) const WEEK: f64 = 7.0 * DAY;
const DAY: f64 = 86_400.0;
/// When the first shift of a day begins where nobody says so, s after midnight. Common practice, no source.
const MORNING: f64 = DAY / 4.0;

macro_rules! shift_noun { ($declare:ident) => { $declare! {
    /// A stretch of a week in which the line runs, with the stops that interrupt it.
    Shift / ShiftSi, "shift" {
        start_h as start: f64 [H] "start, counted from the beginning of the week (Monday 0:00)" { allowed: between(0.0, 168.0) }
        length_h as length: f64 [H] "length of the shift, stops included" { allowed: up_to(0.0, 168.0) }
        speed_m_per_min as speed: Option<f64> [M_PER_MIN = None] "chain speed in this shift; not given: that of the line" { allowed: up_to(0.0, 1200.0) }
        stop_every_min as stop_every: Option<f64> [MIN = None] "running time between two stops in it; not given: no stops" { allowed: up_to(0.0, 10080.0) }
        stop_min as stop: f64 [MIN = 0.0] "length of each such stop" { allowed: between(0.0, 10080.0) }
    }
} } }
#[cfg(feature = "python")]
pub(crate) use shift_noun;
shift_noun!(noun);

/// The week of a line whose timetable nobody gave: its hours a day from 6:00 on (from midnight if they are more than
/// 18), on as many days from Monday on as its days a year make a week. Common practice, no source.
pub fn usual_week(duty: &Duty) -> Vec<Shift> {
    let si = duty.si(&ONE);
    let (length, days) = (si.day_share * DAY, (7.0 * si.year_share).round().clamp(1.0, 7.0));
    let start = if MORNING + length > DAY { 0.0 } else { MORNING };
    let hours = |seconds: f64| H.from_si(seconds);
    (0..days as usize)
        .map(|day| Shift {
            start_h: hours(day as f64 * DAY + start),
            length_h: hours(length),
            speed_m_per_min: None,
            stop_every_min: None,
            stop_min: 0.0,
        })
        .collect()
}

/// The stretches of `weeks` such weeks at one speed each, stops among them. `speed` m/s where a shift has none of its own.
pub(super) fn segments(shifts: &[Shift], speed: f64, weeks: f64) -> Result<Vec<Segment>> {
    let mut shifts: Vec<ShiftSi> = shifts.iter().map(|shift| shift.si(&ONE)).collect();
    shifts.sort_by(|a, b| a.start.total_cmp(&b.start));
    let mut week = Vec::new();
    let mut now = 0.0;
    for shift in &shifts {
        let (start, end) = (H.from_si(shift.start), H.from_si(shift.start + shift.length));
        if shift.start < now - 1e-6 {
            let message = format!(
                "the shift that starts at hour {start} of the week begins before the one before it has ended (hour {}): \
                 shorten one of them",
                H.from_si(now)
            );
            return Err(Error::new(Code::Inconsistent, "shifts", message).number(start).unit("h"));
        }
        if end > H.from_si(WEEK) + 1e-9 {
            let message = format!(
                "the shift that starts at hour {start} of the week would end at hour {end}: a week has 168 h, so give its \
                 rest as a shift that starts at 0"
            );
            return Err(Error::new(Code::OutOfRange, "shifts", message).number(end).unit("h").limit("at most 168 h"));
        }
        stand(&mut week, shift.start - now);
        run(&mut week, shift, shift.speed.unwrap_or(speed));
        now = shift.start + shift.length;
    }
    stand(&mut week, WEEK - now);
    Ok(repeated(&week, weeks * WEEK))
}

fn stand(week: &mut Vec<Segment>, duration: f64) {
    if duration > 0.0 {
        week.push(Segment { duration, speed: 0.0 });
    }
}

/// A shift: running, stop, running, stop, until it is over.
fn run(week: &mut Vec<Segment>, shift: &ShiftSi, speed: f64) {
    let every = shift.stop_every.unwrap_or(f64::INFINITY);
    let mut left = shift.length;
    while left > 0.0 {
        let duration = every.min(left);
        week.push(Segment { duration, speed });
        left -= duration;
        stand(week, shift.stop.min(left));
        left -= shift.stop.min(left);
    }
}

/// The week over and over until the time is up, the last one cut where it ends.
fn repeated(week: &[Segment], time: f64) -> Vec<Segment> {
    let mut all = Vec::new();
    let mut left = time;
    for segment in week.iter().cycle() {
        if left <= 0.0 {
            break;
        }
        all.push(Segment { duration: segment.duration.min(left), ..*segment });
        left -= segment.duration;
    }
    all
}

#[cfg(test)]
mod tests {
    use super::*;

    fn shift(start_h: f64, length_h: f64) -> Shift {
        Shift { start_h, length_h, speed_m_per_min: None, stop_every_min: None, stop_min: 0.0 }
    }

    #[test]
    fn a_week_is_a_week_whatever_its_shifts() {
        let shifts = [shift(30.0, 8.0), Shift { stop_every_min: Some(50.0), stop_min: 10.0, ..shift(6.0, 8.0) }];
        let week = segments(&shifts, 0.5, 2.0).unwrap();
        let all: f64 = week.iter().map(|s| s.duration).sum();
        let running: f64 = week.iter().filter(|s| s.speed > 0.0).map(|s| s.duration).sum();
        assert!((all - 2.0 * WEEK).abs() < 1e-6);
        assert!((running - 2.0 * (8.0 * 3600.0 + 8.0 * 3000.0)).abs() < 1e-6);
    }

    #[test]
    fn shifts_that_cannot_be_are_refused() {
        assert_eq!(segments(&[shift(6.0, 8.0), shift(13.0, 8.0)], 0.5, 1.0).unwrap_err().code, Code::Inconsistent);
        assert_eq!(segments(&[shift(160.0, 9.0)], 0.5, 1.0).unwrap_err().code, Code::OutOfRange);
    }
}
