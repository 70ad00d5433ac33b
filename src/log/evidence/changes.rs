//! On which days the level of a log changed.

use super::current_log::Known;
use super::{Cleaning, CurrentLog, LogNote, LoggedAs};
use crate::error::Result;
use crate::line::Line;
use crate::log::change;
use crate::quantity::unit::PCT;
use crate::quantity::{Class, Word, show::brief};
use crate::{choice, noun};
use std::borrow::Cow;

/// Least means of a segment.
pub const LEAST_SEGMENT: usize = 10;

choice! {
    /// What a change is a change of.
    ChangeOf {
        /// The level; the scatter is the same all along.
        Mean = "mean",
        /// Level and scatter.
        MeanVariance = "mean_variance",
    }
}

const PARTITION: &str =
    "optimal partitioning, Jackson et al. (2005), pruned after Killick, Fearnhead and Eckley (2012)";
const NOISE: &str = "trimmed differences; closure of our own";

macro_rules! change_noun { ($declare:ident) => { $declare! {
    /// A day on which the level of a log changed.
    Change / ChangeSi, "changes" {
        day as day: Word [WORD] "first day of the new level" {}
        index as index: i64 [ONE] "its number among the means, from 0" { formula: "cheapest division of the log", source: PARTITION, class: Class::Read }
        before_a as before: Option<f64> [A = None] "current before, at mean covariates" { formula: "mean of the segment before", source: PARTITION, class: Class::Derived }
        before_kw as before_power: Option<f64> [KW = None] "power before, likewise" { formula: "mean of the segment before", source: PARTITION, class: Class::Derived }
        after_a as after: Option<f64> [A = None] "current after" { formula: "mean of the segment after", source: PARTITION, class: Class::Derived }
        after_kw as after_power: Option<f64> [KW = None] "power after" { formula: "mean of the segment after", source: PARTITION, class: Class::Derived }
        step_pct as step: f64 [PCT] "step, of the level before" { formula: "after / before − 1", source: "definition", class: Class::Derived }
    }
} } }
#[cfg(feature = "python")]
pub(crate) use change_noun;
change_noun!(noun);

macro_rules! change_points_noun { ($declare:ident) => { $declare! {
    /// The days on which the level of a log changed. A change point proposes a date; `before_after` proves it.
    ChangePoints / ChangePointsSi, "change_points" {
        sentence as sentence: Word [WORD] "the same in one sentence" {}
        name as name: Word [WORD] "name of the log" {}
        logged as logged: LoggedAs [WORD] "current_a or power_kw" {}
        change_of as change_of: ChangeOf [WORD] "mean or mean_variance" {}
        changes as changes: Vec<Change> [WORD] "the changes, in order" {}
        means as means: i64 [ONE] "means of the log" { symbol: "n", formula: "counted", source: PARTITION, class: Class::Derived }
        least_segment as least_segment: i64 [ONE] "least means between two changes" { formula: "as asked for", source: PARTITION, class: Class::CommonPractice }
        penalty as penalty: f64 [ONE] "price of a change in the cost used (A² or kW² for mean)" { symbol: "β", formula: "4 σ² ln n (1 + ρ)/(1 − ρ), or 5 ln n (…) for mean and variance", source: "Yao (1988); factor for autocorrelation and constants our own", class: Class::Closure }
        lag1 as lag1: f64 [ONE] "lag-one autocorrelation of the noise" { symbol: "ρ", formula: "from first and second differences", source: NOISE, class: Class::Closure }
        noise_pct as noise: f64 [PCT] "standard deviation of the noise, of the mean level" { symbol: "σ", formula: "from first differences", source: NOISE, class: Class::Closure }
        covariates as covariates: Vec<Word> [WORD] "what was taken out: load, speed, temperature" {}
        notes as notes: Vec<LogNote> [WORD] "what to read this with" {}
        cleaning as cleaning: Cleaning [WORD] "what cleaning did" {}
    }
} } }
#[cfg(feature = "python")]
pub(crate) use change_points_noun;
change_points_noun!(noun);

impl CurrentLog {
    /// Finds the days on which the level changed.
    ///
    /// `least_segment` means between two changes, 10 if not given. Fails where the log is shorter than two segments, in
    /// pieces, or never changes.
    pub fn change_points(
        &self,
        line: Option<&Line>,
        of: Option<ChangeOf>,
        least_segment: Option<i64>,
    ) -> Result<ChangePoints> {
        let known = line.map(Known::of).transpose()?;
        let series = self.series(known.as_ref())?;
        series.of_one_piece()?;
        let (of, least_segment) = (of.unwrap_or(ChangeOf::Mean), least_segment.unwrap_or(LEAST_SEGMENT as i64).max(1));
        let cost = match of {
            ChangeOf::Mean => change::Cost::Mean,
            ChangeOf::MeanVariance => change::Cost::MeanVariance,
        };
        let columns: Vec<&[f64]> = series.log.covariates.iter().map(Vec::as_slice).collect();
        let found = change::change_points(&series.log.readings, &columns, cost, least_segment as usize)
            .map_err(|error| series.by_name(error))?;
        let changes: Vec<Change> = found
            .points
            .iter()
            .zip(found.levels.windows(2))
            .map(|(at, levels)| {
                let (before_a, before_kw) = self.logged.shared(levels[0]);
                let (after_a, after_kw) = self.logged.shared(levels[1]);
                Change {
                    day: Cow::Owned(series.day(*at)),
                    index: *at as i64,
                    before_a,
                    before_kw,
                    after_a,
                    after_kw,
                    step_pct: PCT.from_si(levels[1] / levels[0] - 1.0),
                }
            })
            .collect();
        let factor = self.logged.unit().factor;
        let mut notes = series.notes.clone();
        if !series.has_load() {
            notes.push(LogNote::new("load_not_logged", "The load was not logged: a change may be one of load."));
        }
        let level = crate::log::statistics::mean(&series.log.readings);
        Ok(ChangePoints {
            sentence: Cow::Owned(sentence(
                &changes,
                self.logged,
                &series.day(0),
                &series.day(series.log.times.len() - 1),
            )),
            name: Cow::Owned(self.name.clone()),
            logged: self.logged,
            change_of: of,
            means: series.log.readings.len() as i64,
            least_segment,
            penalty: if of == ChangeOf::Mean { found.penalty / (factor * factor) } else { found.penalty },
            lag1: found.noise.lag1,
            noise_pct: PCT.from_si(found.noise.deviation / level),
            covariates: series.covariate_words(),
            changes,
            notes,
            cleaning: series.cleaning,
        })
    }
}

fn sentence(changes: &[Change], logged: LoggedAs, first: &str, last: &str) -> String {
    let said = logged.said();
    if changes.is_empty() {
        return format!("{first} to {last}: the level of the {said} did not change.");
    }
    let each: Vec<String> = changes
        .iter()
        .map(|change| {
            let way = if change.step_pct < 0.0 { "down" } else { "up" };
            format!("{way} {} % on {}", brief(change.step_pct.abs()), change.day)
        })
        .collect();
    format!("{first} to {last}: the {said} went {}.", each.join(", "))
}
