//! What changed on a day: the saving at equal load, how sure it is, what the log could have seen, and what hides it.

use super::current_log::{Known, SECOND};
use super::pull::{Levels, pull_change};
use super::series::Series;
use super::{Cleaning, CurrentLog, LogNote, LoggedAs, Proof, ProofSi, PullChange};
use crate::error::{Code, Error, Result};
use crate::line::Line;
use crate::log::active_current;
use crate::log::proof::{self, LoggingPlan, Placebo};
use crate::log::statistics::student_quantile;
use crate::quantity::unit::{ONE, PCT};
use crate::quantity::{Class, Field, Named, Word, show::brief};
use crate::{choice, noun};
use std::borrow::Cow;

/// Load of the motor below which its current is a weak witness.
const WEAK_WITNESS: f64 = 0.4;
/// Share of the pull below which a pair is hidden from the current.
const HIDDEN_PAIR: f64 = 0.1;
/// Share of the draws that must give a load.
const MOST_DRAWS_FAIL: f64 = 0.25;
/// A log longer than this, s, runs through seasons.
const SEASONS: f64 = 120.0 * 86_400.0;
/// Days that a person would log at most.
const TOO_MANY_DAYS: i64 = 1000;

choice! {
    /// What a log says of a change.
    Verdict {
        /// Less was drawn afterwards, surely.
        Saving = "saving",
        /// More was drawn afterwards, surely.
        MoreUse = "more_use",
        /// The log shows such changes where nothing was done, too.
        NotProven = "not_proven",
        /// Nothing is seen that the log could have shown.
        NothingSeen = "nothing_seen",
        /// This log cannot answer the question.
        CannotBeTold = "cannot_be_told",
    }
}

const MODEL: &str = "y = b₀ + B (x − x̄ after) + δ after + ε by least squares";
const WIDER: &str =
    "wider of Newey and West (1987) and first-order autoregressive noise, taking the wider is a closure of our own";
const PLACEBO: &str = "in-time placebo, Abadie, Diamond and Hainmueller (2010); rule of agreement our own";
const PLAN: &str = "two-sample t test with effective sample sizes";
const COUNTED: &str = "means counted";

macro_rules! before_after_noun { ($declare:ident) => { $declare! {
    /// What changed on a day: the difference at equal load, speed and temperature, and how sure that is.
    BeforeAfter / BeforeAfterSi, "before_after" {
        sentence as sentence: Word [WORD] "the verdict in one sentence" {}
        verdict as verdict: Verdict [WORD] "saving, more_use, not_proven, nothing_seen or cannot_be_told" {}
        name as name: Word [WORD] "name of the log" {}
        logged as logged: LoggedAs [WORD] "current_a or power_kw" {}
        changed as changed: Word [WORD] "day of the change" {}
        first as first: Word [WORD] "first day of the period before" {}
        last as last: Word [WORD] "last day of the period after" {}
        means_before as means_before: i64 [ONE] "means before" { symbol: "n₁", formula: COUNTED, source: MODEL, class: Class::Derived }
        means_after as means_after: i64 [ONE] "means after" { symbol: "n₂", formula: COUNTED, source: MODEL, class: Class::Derived }
        means_left_out as means_left_out: i64 [ONE] "means on the day of the change and while the oil settled" { formula: COUNTED, source: MODEL, class: Class::Derived }
        level_before_a as level_before: Option<f64> [A = None] "current before, at the covariates of the period after" { symbol: "b₀", formula: MODEL, source: MODEL, class: Class::Derived }
        level_before_kw as level_before_power: Option<f64> [KW = None] "power before, likewise" { symbol: "b₀", formula: MODEL, source: MODEL, class: Class::Derived }
        difference_a as difference: Option<f64> [A = None] "current after less before, at equal covariates" { symbol: "δ", formula: MODEL, source: MODEL, class: Class::Derived }
        difference_kw as difference_power: Option<f64> [KW = None] "power after less before, likewise" { symbol: "δ", formula: MODEL, source: MODEL, class: Class::Derived }
        saving_pct as saving: f64 [PCT] "saved, of the level before" { symbol: "s", formula: "−δ / b₀", source: MODEL, class: Class::Derived }
        saving_low_pct as low: f64 [PCT] "its interval, low end" { formula: "{before_after.saving_pct} − t {before_after.error_pct}", source: WIDER, class: Class::Closure }
        saving_high_pct as high: f64 [PCT] "its interval, high end" { formula: "{before_after.saving_pct} + t {before_after.error_pct}", source: WIDER, class: Class::Closure }
        confidence_pct as confidence: f64 [PCT] "confidence of the intervals" { formula: "{proof.confidence_pct}", source: "asked for", class: Class::Derived }
        error_pct as error: f64 [PCT] "standard error that counts" { formula: "greater of {before_after.error_hac_pct} and {before_after.error_ar1_pct}", source: WIDER, class: Class::Closure }
        error_hac_pct as error_hac: f64 [PCT] "standard error from the autocovariances of the residuals" { formula: "Bartlett weights, n/(n − p)", source: "Newey and West (1987), Andrews (1991)", class: Class::FromMemory }
        error_ar1_pct as error_ar1: f64 [PCT] "standard error from their lag-one autocorrelation" { formula: "OLS error × √((1 + ρ)/(1 − ρ))", source: "first-order autoregressive noise", class: Class::Derived }
        degrees as degrees: f64 [ONE] "degrees of freedom that the means are worth" { symbol: "ν", formula: "n (1 − ρ)/(1 + ρ) − p, at least 2", source: WIDER, class: Class::Closure }
        t as t: f64 [ONE] "difference over its error" { formula: "δ / its error", source: WIDER, class: Class::Closure }
        p_value as p_value: f64 [ONE] "probability of a greater |t| if nothing changed" { formula: "Student t at {before_after.degrees}", source: WIDER, class: Class::Closure }
        lag1 as lag1: f64 [ONE] "lag-one autocorrelation of the residuals" { symbol: "ρ", formula: "Σ e(t) e(t+1) / Σ e²", source: "Box and Jenkins (1970)", class: Class::FromMemory }
        lags as lags: i64 [ONE] "lags of the autocovariances" { symbol: "L", formula: "max(⌊4 (n/100)^(2/9)⌋, ⌈1.1447 (α n)^(1/3)⌉)", source: "Andrews (1991)", class: Class::FromMemory }
        scatter_pct as scatter: f64 [PCT] "scatter of the means about the model, of the level before" { formula: "√(Σ e²/(n − p)) / b₀", source: MODEL, class: Class::Derived }
        covariates as covariates: Vec<Word> [WORD] "what was taken out: load, speed, temperature" {}
        effects as effects: Named [ONE] "change of the reading per unit of each, A or kW" { formula: MODEL, source: MODEL, class: Class::Derived }
        placebo_splits as placebo_splits: i64 [ONE] "dates before the change at which the same test was tried" { formula: "all dates that leave 15 means on each side", source: PLACEBO, class: Class::Closure }
        placebo_largest_t as placebo_largest_t: f64 [ONE] "largest |t| among them" { formula: "the same model there", source: PLACEBO, class: Class::Closure }
        placebo_rank as placebo_rank: f64 [ONE] "(1 + dates with |t| at least as large) / (1 + dates); no p value" { formula: "counted", source: PLACEBO, class: Class::Closure }
        placebo_agrees as placebo_agrees: Option<bool> [WORD = None] "whether the real |t| exceeds them all; happens in 16 to 20 % of logs where nothing was done; none with fewer than 19 dates" {}
        detectable_pct as detectable: f64 [PCT] "least change that so many days could show" { formula: "(t_α + t_power) √(CV² (1/n₁′ + 1/n₂′) + 2 κ {proof.systematic_pct}²)", source: PLAN, class: Class::Derived }
        needed_days as needed: Option<i64> [DAYS_COUNTED = None] "days on each side that would show the saving, of means as far apart as these; none where no number would do" { formula: "least n with that change at most the saving, times the days from one mean to the next", source: PLAN, class: Class::Derived }
        active_saving_pct as active_saving: Option<f64> [PCT = None] "saved of the active current, by the quick form for a clamp on the mains side of a motor without converter" { formula: "1 − √(I₂² − I₀²) / √(I₁² − I₀²)", source: "phasor diagram; common practice", class: Class::CommonPractice }
        pull as pull: Option<PullChange> [WORD = None] "the same as pull of the chain; needs the line" {}
        pin_share_pct as pin_share: Option<f64> [PCT = None] "share of the pull that pins and bushes make; needs the line" { formula: "{tension.shares} of joint", source: "tension march", class: Class::Derived }
        halved_pins_pct as halved_pins: Option<f64> [PCT = None] "fall of the current if pin/bush friction were halved; needs the line" { formula: "{drive.current_drop_joint_a} / {drive.current_a}", source: "tension march, gear, motor", class: Class::Closure }
        halved_all_pct as halved_all: Option<f64> [PCT = None] "fall of the current if pin, roller and track friction were all halved; needs the line" { formula: "{drive.current_drop_all_a} / {drive.current_a}", source: "tension march, gear, motor", class: Class::Closure }
        notes as notes: Vec<LogNote> [WORD] "what to read this with" {}
        cleaning as cleaning: Cleaning [WORD] "what cleaning did" {}
    }
} } }
#[cfg(feature = "python")]
pub(crate) use before_after_noun;
before_after_noun!(noun);

impl CurrentLog {
    /// Compares the periods before and after a change.
    ///
    /// `changed` a date or time by the clock of the log; the day itself is left out. Fails where the date is outside the
    /// log, where there are fewer means than the model needs, and where the log is in pieces or never changes.
    pub fn before_after(&self, changed: &str, line: Option<&Line>, proof: &Proof) -> Result<BeforeAfter> {
        let known = line.map(Known::of).transpose()?;
        let series = self.series(known.as_ref())?;
        series.of_one_piece()?;
        let asked = proof.si(&ONE);
        let moment = series.zone.moment(changed, "changed")?;
        let (before, from) = series.sides(moment, asked.settle, "changed")?;
        let total = series.log.readings.len();
        let (readings, columns) = series.rows(|row| row < before || row >= from);
        let covariates: Vec<&[f64]> = columns.iter().map(Vec::as_slice).collect();
        let found = proof::before_after(&readings, before, &covariates, asked.confidence)
            .map_err(|error| series.by_name(error))?;
        if !found.t.is_finite() {
            let message =
                "the log follows its model without any scatter, so nothing can be said of its error: check the clamp";
            return Err(Error::new(Code::Inconsistent, "log", message));
        }
        let placebo = proof::placebo(&readings, before, &covariates)?;
        let scatter = found.residual_deviation / found.before;
        let plan = plan(&asked, scatter, found.lag1_unbiased);
        let (count_before, count_after) = (before as f64, (total - from) as f64);
        let detectable = plan.least_change(count_before, count_after);
        let wanted = asked.expected_saving.unwrap_or(found.saving.abs());
        let needed = plan.days(wanted).ok().map(|means| series.days_of(means));

        let mut told =
            Told { notes: series.notes.clone(), found: &found, placebo, detectable, pull: None, blind: None };
        let quantile = student_quantile(0.5 + 0.5 * asked.confidence, found.degrees);
        let change = Levels { level: found.before, saving: found.saving, error: found.error, quantile };
        told.what_hides(&series, known.as_ref(), change);
        let no_load = self.rules.no_load_current_a.filter(|_| self.logged == LoggedAs::Current);
        let mains = known.as_ref().is_none_or(|known| known.sees_magnetising() && !known.line.drive.converter);
        let active = no_load.filter(|_| mains).and_then(|no_load| {
            let (before, after) =
                (active_current(found.before, no_load), active_current(found.before + found.difference, no_load));
            (after > 0.0).then(|| PCT.from_si(1.0 - after / before))
        });
        let verdict = told.verdict();
        let span = [series.day(0), series.zone.text(moment.from), series.day(total - 1)];
        let sentence = told.sentence(verdict, &series, &span, asked.confidence, needed, wanted);
        let witness = known.as_ref().map(Witness::of);
        let pct = |share: f64| PCT.from_si(share);
        let (level_before_a, level_before_kw) = self.logged.shared(found.before);
        let (difference_a, difference_kw) = self.logged.shared(found.difference);
        let factor = self.logged.unit().factor;
        Ok(BeforeAfter {
            sentence: Cow::Owned(sentence),
            verdict,
            name: Cow::Owned(self.name.clone()),
            logged: self.logged,
            changed: Cow::Owned(span[1].clone()),
            first: Cow::Owned(span[0].clone()),
            last: Cow::Owned(span[2].clone()),
            means_before: before as i64,
            means_after: (total - from) as i64,
            means_left_out: (from - before) as i64,
            level_before_a,
            level_before_kw,
            difference_a,
            difference_kw,
            saving_pct: pct(found.saving),
            saving_low_pct: pct(found.interval.0),
            saving_high_pct: pct(found.interval.1),
            confidence_pct: pct(asked.confidence),
            error_pct: pct(found.error),
            error_hac_pct: pct(found.error_newey_west),
            error_ar1_pct: pct(found.error_autoregressive),
            degrees: found.degrees,
            t: found.t,
            p_value: found.p,
            lag1: found.lag1,
            lags: found.lags as i64,
            scatter_pct: pct(scatter),
            covariates: series.covariate_words(),
            effects: Named(
                series.covariate_words().into_iter().zip(found.effects.iter().map(|b| b / factor)).collect(),
            ),
            placebo_splits: placebo.splits as i64,
            placebo_largest_t: placebo.largest_t,
            placebo_rank: placebo.rank,
            placebo_agrees: placebo.agrees,
            detectable_pct: pct(detectable),
            needed_days: needed,
            active_saving_pct: active,
            pull: told.pull.clone(),
            pin_share_pct: witness.as_ref().map(|w| pct(w.pin_share)),
            halved_pins_pct: witness.as_ref().and_then(|w| w.halved_pins.map(pct)),
            halved_all_pct: witness.as_ref().and_then(|w| w.halved_all.map(pct)),
            notes: told.notes,
            cleaning: series.cleaning,
        })
    }
}

/// The plan of a log like this one.
pub(super) fn plan(asked: &ProofSi, scatter: f64, lag1: f64) -> LoggingPlan {
    LoggingPlan {
        noise: scatter,
        lag1,
        systematic: asked.systematic,
        systematic_independence: asked.systematic_independence,
        significance: 1.0 - asked.confidence,
        power: asked.power,
    }
}

/// What the current of a line can see, shares.
struct Witness {
    pin_share: f64,
    halved_pins: Option<f64>,
    halved_all: Option<f64>,
}

impl Witness {
    fn of(known: &Known) -> Witness {
        let shares = &known.result.tension.shares.0;
        let drive = &known.result.drive;
        let of = |drop: Option<f64>| Some(drop? / drive.current_a?);
        Witness {
            pin_share: shares.iter().find(|(cause, _)| cause == "joint").map_or(0.0, |(_, share)| *share),
            halved_pins: of(drive.current_drop_joint_a),
            halved_all: of(drive.current_drop_all_a),
        }
    }
}

/// A verdict in the making.
struct Told<'a> {
    found: &'a proof::BeforeAfter,
    placebo: Placebo,
    detectable: f64,
    pull: Option<PullChange>,
    notes: Vec<LogNote>,
    /// Why the log cannot answer; none if it can.
    blind: Option<String>,
}

impl Told<'_> {
    fn note(&mut self, code: &'static str, message: String) {
        self.notes.push(LogNote::new(code, message));
    }

    /// Whether the interval leaves nothing out.
    fn sure(&self) -> bool {
        self.found.interval.0 * self.found.interval.1 > 0.0
    }

    /// Everything that stands between the reading and the answer.
    fn what_hides(&mut self, series: &Series, known: Option<&Known>, change: Levels) {
        let current = series.logged == LoggedAs::Current;
        if !series.has_load() {
            self.note("load_not_logged", "The load was not logged: a lighter load may be the whole of the difference. Log it, or show that it was the same.".into());
        }
        if !series.names.contains(&"temperature_c") && series.span() > SEASONS {
            self.note("temperature_not_logged", "The temperature was not logged, and the log runs through seasons: cold gear oil alone can make such a difference.".into());
        }
        for caution in &series.cleaning.cautions {
            if caution == "no_stop_rule" {
                self.note("stops_in_the_means", "Neither a run signal nor a no-load reading was given, so readings of a standing line, if there are any, count in full. Give one of them, or the line.".into());
            }
        }
        let Some(known) = known else {
            if current {
                self.note("current_is_not_pull", "Without the line, current stays current: most of it may magnetise the motor, so the saving of pull is larger than this. Give the survey of the line.".into());
            }
            return;
        };
        match pull_change(known, series.logged, change) {
            Ok(pull) => self.pull = pull,
            Err(error) => {
                self.note("no_such_load", format!("No load of this motor gives such a reading: {}.", error.message));
                self.blind = Some("no load of this motor draws such a current".into());
            }
        }
        let failed = self.pull.as_ref().map_or(1.0, |pull| pull.draws_without_load as f64 / pull.draws as f64);
        if self.blind.is_none() && failed > MOST_DRAWS_FAIL {
            self.blind = Some("the motor's magnetising current hides its load".into());
            self.note("magnetising_current", format!("In {} % of the motors that this nameplate can be, no load draws such a current: the magnetising current hides the answer. Measure power, or the current of the uncoupled motor.", brief(100.0 * failed)));
        }
        if current {
            self.current_hides(known);
        }
        let witness = Witness::of(known);
        if witness.pin_share < HIDDEN_PAIR {
            self.note("pins_not_seen", format!("Pins and bushes make {} % of the pull of this line: what the {} shows is oil at rollers, tracks or guides. Oil in the pins is shown by elongation.", brief(100.0 * witness.pin_share), series.logged.said()));
        }
    }

    /// What hides behind a current in particular.
    fn current_hides(&mut self, known: &Known) {
        let drive = &known.line.drive;
        if known.sees_magnetising() && drive.no_load_current_a.is_none() && drive.empty_current_a.is_none() {
            self.note("no_load_current_unknown", "The current of the uncoupled motor was not measured, so its magnetising current is a guess from the nameplate: measure it once, uncoupled, under lock-out and by people licensed for it.".into());
        }
        if drive.converter {
            self.note("converter", if known.sees_magnetising() {
                "The clamp sits behind a converter, where most clamps misread: use a true-RMS clamp made for it, or the converter's own power reading.".into()
            } else {
                "The clamp sits before a converter: it sees power over a power factor that changes with load. Log the converter's power reading instead.".into()
            });
        }
        if let Some(pull) = self.pull.clone().filter(|pull| pull.motor_load < WEAK_WITNESS) {
            let load = brief(PCT.from_si(pull.motor_load));
            self.note("weak_witness", format!("The motor works at {load} % of its rated power, where current hardly follows load and follows the voltage instead: log power."));
            // the sign alone proves nothing here: one per cent of voltage moves such a current as much
            if pull.pull_saving_low_pct <= 0.0 && pull.pull_saving_high_pct >= 0.0 && self.blind.is_none() {
                self.blind = Some(format!(
                    "at {load} % of rated power nearly all of it magnetises the motor, and the pull may have changed by anything from {} % more to {} % less",
                    brief(-pull.pull_saving_low_pct),
                    brief(pull.pull_saving_high_pct)
                ));
            }
        }
        if let Some(all) = Witness::of(known).halved_all {
            if all < self.detectable {
                self.blind = Some(format!(
                    "even with all friction halved the current would fall by {} %, and this log shows nothing below {} %",
                    brief(100.0 * all),
                    brief(100.0 * self.detectable)
                ));
            } else if self.sure() && self.found.saving > all {
                self.note("more_than_friction", format!("The current fell by more than halving all friction would give ({} %): look for another cause, such as load, speed or voltage.", brief(100.0 * all)));
            }
        }
    }

    fn verdict(&self) -> Verdict {
        if self.blind.is_some() {
            Verdict::CannotBeTold
        } else if !self.sure() {
            Verdict::NothingSeen
        } else if self.placebo.agrees == Some(false) {
            Verdict::NotProven
        } else if self.found.saving > 0.0 {
            Verdict::Saving
        } else {
            Verdict::MoreUse
        }
    }

    fn sentence(
        &self,
        verdict: Verdict,
        series: &Series,
        [first, changed, last]: &[String; 3],
        confidence: f64,
        needed: Option<i64>,
        wanted: f64,
    ) -> String {
        let said = series.logged.said();
        let pct = |share: f64| brief(100.0 * share.abs());
        let span = format!("{first} to {last}, changed {changed}");
        let equal = match (series.has_load(), series.names.is_empty()) {
            (true, _) => "at equal load",
            (false, true) => "if the load was the same",
            (false, false) => "at equal temperature or speed, if the load was the same",
        };
        let (low, high) = self.found.interval;
        // of more use, the ends are told in the same sense
        let (low, high) = if self.found.saving < 0.0 { (-high, -low) } else { (low, high) };
        let range =
            format!("{} % sure of {} to {} %", brief(100.0 * confidence), brief(100.0 * low), brief(100.0 * high));
        let more_or_less = if self.found.saving < 0.0 { "more" } else { "less" };
        let seen = format!("the drive drew {} % {more_or_less} {said} {equal} ({range})", pct(self.found.saving));
        let days = match needed {
            Some(days) if days <= TOO_MANY_DAYS => format!("{days} days on each side would show {} %", pct(wanted)),
            _ => format!("no useful number of days would show {} %", pct(wanted)),
        };
        match verdict {
            Verdict::Saving | Verdict::MoreUse => {
                let pull = self.pull.as_ref().filter(|_| verdict == Verdict::Saving).map_or(String::new(), |pull| {
                    let (low, high) = (pull.pull_saving_low_pct, pull.pull_saving_high_pct);
                    let range = format!("{} to {} %", brief(low), brief(high));
                    if low > 0.0 {
                        format!(", which is {} % ({range}) less pull of the chain", brief(pull.pull_saving_pct))
                    } else {
                        format!(", which leaves open how much less pull of the chain that is ({range}): measure power")
                    }
                });
                let placebo = match self.placebo.agrees {
                    Some(true) => format!("; at none of {} dates before was there such a step", self.placebo.splits),
                    _ => "; the period before is too short to try the same where nothing was done".into(),
                };
                format!("{span}: {seen}{pull}{placebo}.")
            }
            Verdict::NotProven => format!(
                "{span}: {seen}, but the log shows such steps where nothing was done, too (largest |t| {} against {}), so \
                 it proves nothing.",
                brief(self.placebo.largest_t),
                brief(self.placebo.real_t)
            ),
            Verdict::NothingSeen => format!(
                "{span}: no change is seen {equal} ({range} saved); this log would have shown {} %, and {days}.",
                pct(self.detectable)
            ),
            Verdict::CannotBeTold => format!(
                "{span}: it cannot be told from this {said}, because {}: measure power.",
                self.blind.as_deref().unwrap_or("the answer is hidden")
            ),
        }
    }
}

/// Months of a stretch of log, for the guideline's factor.
pub(super) fn months(times: &[i64], window: Option<f64>) -> f64 {
    /// Days of a mean month.
    const MONTH: f64 = 365.25 / 12.0 * 86_400.0;
    let span = times.last().zip(times.first()).map_or(0.0, |(last, first)| (last - first) as f64 / SECOND);
    (span + window.unwrap_or(0.0)) / MONTH
}
