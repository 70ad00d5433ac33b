//! A watch over a log, and the same one reading at a time.

use super::current_log::{Known, SECOND, is_load};
use super::{Cleaning, CurrentLog, LogNote, LoggedAs, zone::Zone};
use crate::error::{Code, Error, Result};
use crate::line::Line;
use crate::log::watch::{self, Baseline, Reading, Settings, Step, Watch, cusum_run_length, cusum_run_length_two_sided};
use crate::noun;
use crate::quantity::unit::PCT;
use crate::quantity::{Class, Word, show::brief};
use rayon::prelude::*;
use serde::{Deserialize, Serialize};
use std::borrow::Cow;
use std::ops::Range;

const CHARTS: &str =
    "CUSUM of innovations, Page (1954), limits widened for a baseline that was learnt (closure of our own)";
const WATCHED: &str = "closure of our own; Alwan and Roberts (1988) for the innovations";

macro_rules! watch_step_noun { ($declare:ident) => { $declare! {
    /// What one reading did to the charts of a watch.
    WatchStep / WatchStepSi, "step" {
        day as day: Word [WORD] "its date" {}
        residual_pct as residual: f64 [PCT] "share by which it is above what the line should draw" { symbol: "r", formula: "(y − ŷ)/ŷ less its mean in the quiet period", source: WATCHED, class: Class::Closure }
        innovation as innovation: f64 [ONE] "what is new in that, standard deviations" { symbol: "a", formula: "(r − ρ r′)/(σ √(1 − ρ²))", source: WATCHED, class: Class::FromMemory }
        cusum_up as up: f64 [ONE] "sum of what was too high" { symbol: "C⁺", formula: "max(0, C⁺ + a − k)", source: CHARTS, class: Class::FromMemory }
        cusum_down as down: f64 [ONE] "sum of what was too low" { symbol: "C⁻", formula: "max(0, C⁻ − a − k)", source: CHARTS, class: Class::FromMemory }
        ewma as ewma: f64 [ONE] "moving average of the innovations" { symbol: "z", formula: "(1 − λ) z + λ a", source: "Roberts (1959)", class: Class::FromMemory }
        ewma_out as ewma_out: bool [WORD] "whether that is beyond its limits; for the eye, no alarm" {}
        alarm as alarm: bool [WORD] "whether a sum is above the threshold" {}
        too_much as too_much: bool [WORD] "whether the alarm is one of too much" {}
        cause as cause: Word [WORD] "what it looks like: running_dry, idle_drag, mechanical, ambiguous; load_change without an alarm; quiet" {}
    }
} } }
#[cfg(feature = "python")]
pub(crate) use watch_step_noun;
watch_step_noun!(noun);

macro_rules! watch_alarm_noun { ($declare:ident) => { $declare! {
    /// A stretch of a log in alarm.
    WatchAlarm / WatchAlarmSi, "alarms" {
        first as first: Word [WORD] "first day in alarm" {}
        last as last: Word [WORD] "last day in alarm" {}
        readings as readings: i64 [ONE] "readings in alarm" { formula: "counted", source: CHARTS, class: Class::Derived }
        too_much as too_much: bool [WORD] "whether the line drew too much; else too little" {}
        cause as cause: Word [WORD] "what it looks like, as most of its readings say" {}
        rise_pct as rise: f64 [PCT] "mean share by which it was above what it should draw" { formula: "mean of {step.residual_pct}", source: WATCHED, class: Class::Closure }
    }
} } }
#[cfg(feature = "python")]
pub(crate) use watch_alarm_noun;
watch_alarm_noun!(noun);

macro_rules! watch_report_noun { ($declare:ident) => { $declare! {
    /// What a watch saw in a log after a quiet period.
    WatchReport / WatchReportSi, "watch" {
        sentence as sentence: Word [WORD] "the same in one sentence" {}
        name as name: Word [WORD] "name of the log" {}
        logged as logged: LoggedAs [WORD] "current_a or power_kw" {}
        quiet_until as quiet_until: Word [WORD] "end of the quiet period that the baseline was learnt from" {}
        readings_quiet as readings_quiet: i64 [ONE] "readings of the quiet period" { formula: "counted", source: WATCHED, class: Class::Derived }
        readings_watched as readings_watched: i64 [ONE] "readings watched" { formula: "counted", source: WATCHED, class: Class::Derived }
        scatter_pct as scatter: f64 [PCT] "scatter about the baseline" { symbol: "σ", formula: "standard deviation of (y − ŷ)/ŷ", source: WATCHED, class: Class::Derived }
        lag1 as lag1: f64 [ONE] "its lag-one autocorrelation" { symbol: "ρ", formula: "Σ r(t) r(t+1) / Σ r², raised by the bias of a short log", source: "Kendall (1954)", class: Class::FromMemory }
        allowance as allowance: f64 [ONE] "allowance of the CUSUM" { symbol: "k", formula: "half of the shift that is to be found", source: CHARTS, class: Class::FromMemory }
        threshold as threshold: f64 [ONE] "threshold of the CUSUM" { symbol: "h", formula: "by readings and ρ of the quiet period", source: CHARTS, class: Class::Closure }
        run_length as run_length: f64 [ONE] "mean readings between false alarms, were the baseline known" { symbol: "ARL₀", formula: "integral equation of the CUSUM, two-sided", source: "Page (1954), Nyström", class: Class::Derived }
        false_alarm_share as false_alarm: f64 [ONE] "share of quiet lines that alarm falsely within 100 readings" { formula: "own simulation of learnt baselines", source: CHARTS, class: Class::Closure }
        shift_pct as shift: f64 [PCT] "lasting rise that the chart is set for" { formula: "2 k σ √((1 + ρ)/(1 − ρ))", source: WATCHED, class: Class::Closure }
        shift_found_after as shift_found_after: f64 [ONE] "readings until such a rise gives an alarm, on average" { symbol: "ARL₁", formula: "integral equation of the CUSUM", source: "Page (1954), Nyström", class: Class::Derived }
        alarms as alarms: Vec<WatchAlarm> [WORD] "stretches in alarm" {}
        load_change_readings as load_change: i64 [ONE] "readings at another load than usual that the line followed: no alarm" { formula: "counted", source: WATCHED, class: Class::Closure }
        steps as steps: Vec<WatchStep> [WORD] "reading by reading" { aside: true }
        covariates as covariates: Vec<Word> [WORD] "what the baseline knows: load, speed, temperature" {}
        notes as notes: Vec<LogNote> [WORD] "what to read this with" {}
        cleaning as cleaning: Cleaning [WORD] "what cleaning did" {}
    }
} } }
#[cfg(feature = "python")]
pub(crate) use watch_report_noun;
watch_report_noun!(noun);

/// Share of learnt baselines that alarm within 100 readings though nothing happened. Source: own simulation.
const FALSE_ALARMS: f64 = 0.24;

/// A watch that takes one reading at a time. Plain data: written to JSON and read back it goes on as if it had not stopped.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct LogWatch {
    /// Name of the log that it was learnt from.
    pub name: String,
    /// `current_a` or `power_kw`.
    pub logged: String,
    /// Names of the covariates, in order; load first.
    pub covariates: Vec<String>,
    /// IANA name of the zone of dates.
    pub time_zone: Option<String>,
    /// Charts and baseline, in SI.
    pub watch: Watch,
}

impl LogWatch {
    /// Learns what the line should draw from all of `log`, a quiet period.
    ///
    /// Fails where the log has fewer than 30 means, or where these resemble each other too much to watch by.
    pub fn learn(log: &CurrentLog, line: Option<&Line>) -> Result<LogWatch> {
        let known = line.map(Known::of).transpose()?;
        let series = log.series(known.as_ref())?;
        series.of_one_piece()?;
        learnt(log, &series, 0..series.log.readings.len())
    }

    /// Takes one reading at `time` (ns UTC), in the unit of the log, with its covariates by name.
    ///
    /// Refuses one that is not later than the last, no number, or without the covariates that the baseline knows, and
    /// stays as it was.
    pub fn take(&mut self, time: i64, reading: f64, covariates: &[(&str, f64)], start: bool) -> Result<WatchStep> {
        let wanted = self.covariates.iter().map(|name| {
            covariates.iter().find(|(given, _)| given == name).map(|(_, value)| *value).ok_or_else(|| {
                let message = format!("{name} is missing: this watch was learnt with it, so every reading needs it");
                Error::new(Code::Missing, name.as_str(), message)
            })
        });
        let values = wanted.collect::<Result<Vec<f64>>>()?;
        let logged = self.logged()?;
        let reading =
            Reading { time: time as f64 / SECOND, value: logged.unit().to_si(reading), covariates: &values, start };
        let step = self.watch.take(&reading)?;
        let has_load = self.covariates.iter().any(|name| is_load(name));
        Ok(shown(&step, &Zone::named(self.time_zone.as_deref())?, time, has_load))
    }

    /// Puts the charts back to nothing, after an alarm was dealt with.
    pub fn reset(&mut self) {
        self.watch.reset();
    }

    /// As JSON.
    pub fn to_json(&self) -> Result<String> {
        serde_json::to_string(self)
            .map_err(|e| Error::new(Code::NotReadable, "watch", format!("this watch cannot be written as JSON: {e}")))
    }

    /// From JSON as [`Self::to_json`] writes it.
    pub fn from_json(text: &str) -> Result<LogWatch> {
        let watch: LogWatch = serde_json::from_str(text)
            .map_err(|e| Error::new(Code::NotReadable, "watch", format!("this is not a saved watch: {e}")))?;
        watch.logged()?;
        Zone::named(watch.time_zone.as_deref())?;
        if watch.covariates.len() != watch.watch.baseline.centres.len() {
            let message = "this is not a saved watch: its baseline knows other covariates than it names";
            return Err(Error::new(Code::Inconsistent, "watch", message));
        }
        Ok(watch)
    }

    /// What it reads.
    pub fn logged(&self) -> Result<LoggedAs> {
        match self.logged.as_str() {
            "current_a" => Ok(LoggedAs::Current),
            "power_kw" => Ok(LoggedAs::Power),
            other => {
                let message =
                    format!("logged = {other:?} is neither current_a nor power_kw: this is not a saved watch");
                Err(Error::new(Code::UnknownChoice, "logged", message).text_value(other).limit("current_a or power_kw"))
            }
        }
    }
}

/// A watch learnt from some means of a series.
fn learnt(log: &CurrentLog, series: &super::series::Series, quiet: Range<usize>) -> Result<LogWatch> {
    let columns: Vec<&[f64]> = series.log.covariates.iter().map(|x| &x[quiet.clone()]).collect();
    let baseline = Baseline::learn(&series.log.readings[quiet], &columns).map_err(|error| series.by_name(error))?;
    let mut settings = Settings::daily(&baseline)?;
    settings.interval = series.step();
    Ok(LogWatch {
        name: log.name.clone(),
        logged: log.logged.as_str().into(),
        covariates: series.names.iter().map(|name| name.to_string()).collect(),
        time_zone: log.time_zone.clone(),
        watch: Watch::new(settings, baseline),
    })
}

impl CurrentLog {
    /// Watches a log from a day on, against what the line drew until then.
    ///
    /// `quiet_until`, and `quiet_from` where the log begins before the quiet period, are dates by the clock of the log; 30
    /// means or more must lie between them.
    pub fn watch(&self, quiet_until: &str, quiet_from: Option<&str>, line: Option<&Line>) -> Result<WatchReport> {
        let known = line.map(Known::of).transpose()?;
        let series = self.series(known.as_ref())?;
        series.of_one_piece()?;
        let moment = series.zone.moment(quiet_until, "quiet_until")?;
        let (quiet, from) = series.sides(moment, 0.0, "quiet_until")?;
        let begin = match quiet_from {
            Some(text) => {
                let begin = series.zone.moment(text, "quiet_from")?.from;
                series.log.times.partition_point(|time| *time < begin)
            }
            None => 0,
        };
        let mut watch = learnt(self, &series, begin.min(quiet)..quiet)?.watch;
        let mut values = vec![0.0; series.names.len()];
        let steps = (from..series.log.readings.len())
            .map(|row| {
                for (value, column) in values.iter_mut().zip(&series.log.covariates) {
                    *value = column[row];
                }
                let time = series.log.times[row];
                let step = watch.take(&Reading {
                    time: time as f64 / SECOND,
                    value: series.log.readings[row],
                    covariates: &values,
                    start: series.log.starts[row],
                })?;
                Ok(shown(&step, &series.zone, time, series.has_load()))
            })
            .collect::<Result<Vec<WatchStep>>>()?;

        let (baseline, settings) = (&watch.baseline, &watch.settings);
        let mut notes = series.notes.clone();
        if !series.has_load() {
            notes.push(LogNote::new(
                "load_not_logged",
                "The load was not logged, so no alarm can be told from a heavier load: every cause is ambiguous.",
            ));
        }
        let unseen = baseline.visible_shift(1.0);
        if unseen < 0.5 {
            notes.push(LogNote::new("slow_witness", format!("Successive means resemble each other (ρ {}), so only {} % of a lasting shift is news to the chart: log load and temperature, or take longer means.", brief(baseline.lag1), brief(100.0 * unseen))));
        }
        let alarms = alarms(&steps);
        let load_change = steps.iter().filter(|step| step.cause == "load_change").count();
        let shift = 2.0 * settings.allowance;
        let shift_pct = PCT.from_si(shift * baseline.residual_deviation / unseen);
        let shift_found_after = cusum_run_length(settings.allowance, settings.threshold, shift);
        let sentence = sentence(&alarms, steps.len(), &series.day(from), shift_pct, shift_found_after);
        Ok(WatchReport {
            sentence: Cow::Owned(sentence),
            name: Cow::Owned(self.name.clone()),
            logged: self.logged,
            quiet_until: Cow::Owned(series.zone.text(moment.from)),
            readings_quiet: (quiet - begin) as i64,
            readings_watched: steps.len() as i64,
            scatter_pct: PCT.from_si(baseline.residual_deviation),
            lag1: baseline.lag1,
            allowance: settings.allowance,
            threshold: settings.threshold,
            run_length: cusum_run_length_two_sided(settings.allowance, settings.threshold, 0.0),
            false_alarm_share: FALSE_ALARMS,
            shift_pct,
            shift_found_after,
            alarms,
            load_change_readings: load_change as i64,
            steps,
            covariates: series.covariate_words(),
            notes,
            cleaning: series.cleaning,
        })
    }
}

/// Watches many logs in parallel, each with its line where one is given; the order does not depend on the threads, and a
/// log that fails stops no other.
pub fn watch_many(
    logs: &[&CurrentLog],
    quiet_until: &str,
    quiet_from: Option<&str>,
    lines: &[Option<&Line>],
) -> Vec<Result<WatchReport>> {
    let line = |at: usize| lines.get(at).copied().flatten();
    logs.par_iter().enumerate().map(|(at, log)| log.watch(quiet_until, quiet_from, line(at))).collect()
}

/// The chunk of [`watch_many`] that is done between two words to whoever waits.
pub const AT_ONCE: usize = 4;

/// A step as people read it.
fn shown(step: &Step, zone: &Zone, time: i64, has_load: bool) -> WatchStep {
    let cause = match step.alarm {
        // the numerics take the first covariate for the load
        Some(alarm) => (if has_load { alarm.cause } else { watch::Cause::Ambiguous }).as_str(),
        None if has_load && step.load_change => watch::Cause::LoadChange.as_str(),
        None => "quiet",
    };
    WatchStep {
        day: Cow::Owned(zone.text(time)),
        residual_pct: PCT.from_si(step.residual),
        innovation: step.innovation,
        cusum_up: step.up,
        cusum_down: step.down,
        ewma: step.ewma,
        ewma_out: step.ewma_out,
        alarm: step.alarm.is_some(),
        too_much: step.alarm.is_some_and(|alarm| alarm.up),
        cause: Cow::Borrowed(cause),
    }
}

/// Stretches of steps in alarm on one side.
fn alarms(steps: &[WatchStep]) -> Vec<WatchAlarm> {
    let stretches = steps.chunk_by(|a, b| a.alarm == b.alarm && a.too_much == b.too_much);
    stretches
        .filter(|stretch| stretch[0].alarm)
        .map(|stretch| {
            let count = |cause: &Word| stretch.iter().filter(|step| step.cause == *cause).count();
            // an early ambiguous day does not outvote what the later ones show
            let told = stretch.iter().filter(|step| step.cause != "ambiguous").max_by_key(|step| count(&step.cause));
            WatchAlarm {
                first: stretch[0].day.clone(),
                last: stretch[stretch.len() - 1].day.clone(),
                readings: stretch.len() as i64,
                too_much: stretch[0].too_much,
                cause: told.map_or(Cow::Borrowed("ambiguous"), |step| step.cause.clone()),
                rise_pct: stretch.iter().map(|step| step.residual_pct).sum::<f64>() / stretch.len() as f64,
            }
        })
        .collect()
}

fn sentence(alarms: &[WatchAlarm], watched: usize, first: &str, shift: f64, after: f64) -> String {
    let Some(alarm) = alarms.first() else {
        return format!(
            "In {watched} readings from {first} on nothing moved that the watch could see: a lasting rise of {} % would give \
             an alarm after {} readings on average.",
            brief(shift),
            brief(after)
        );
    };
    let looks = match alarm.cause.as_ref() {
        "running_dry" => "it looks like joints running dry: look at the oil first",
        "idle_drag" => "it looks like the same drag at every load: look at guides, take-up and gearbox",
        "mechanical" => "it looks like a step at a start: look for something mechanical",
        _ => "its cause cannot be told",
    };
    let way = if alarm.too_much { "more" } else { "less" };
    let others = match alarms.len() {
        1 => String::new(),
        more => format!(" (and {} more stretches in alarm)", more - 1),
    };
    format!(
        "From {} to {} the line drew {} % {way} than it should{others}; {looks}. Stop and lock out before anyone looks.",
        alarm.first,
        alarm.last,
        brief(alarm.rise_pct.abs())
    )
}
