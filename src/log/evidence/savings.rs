//! Energy and money avoided: what the line would have drawn as it was, less what it drew.

use super::before_after::months;
use super::current_log::Known;
use super::pull::input_powers;
use super::{Cleaning, CurrentLog, LogNote, LoggedAs, Proof};
use crate::error::{Code, Error, Result};
use crate::line::Line;
use crate::log::least_squares;
use crate::log::proof::{Goodness, Interval, SavingsFactor, avoided, placebo};
use crate::log::statistics::{mean, student_quantile};
use crate::noun;
use crate::quantity::unit::{H, KW, ONE, PCT};
use crate::quantity::{Class, Field, Word, show::brief};
use std::borrow::Cow;

/// Normal quantile of 90 %, two-sided, as the guideline's examples use it.
const NINETY: f64 = 1.645;
/// Confidence at which the guideline sets its limit, and the limit.
const CLAIM: (f64, f64) = (0.68, 0.5);
/// Windows of this length, s, or longer count as days.
const A_DAY: f64 = 20.0 * 3600.0;
/// Readings farther apart than this, s, are no means of days but were taken by hand.
const BY_HAND: f64 = 2.0 * 86_400.0;
/// Hours of a mean year.
const HOURS_OF_A_YEAR: f64 = 365.25 * 24.0;

const GUIDELINE: &str = "ASHRAE Guideline 14-2014, as quoted in public";
const AVOIDED: &str =
    "model of the period before, prediction variance with autocorrelation and Student t (closure of our own)";

macro_rules! avoided_use_noun { ($declare:ident) => { $declare! {
    /// Energy and money avoided since a change, with the uncertainty of measurement and verification.
    AvoidedUse / AvoidedUseSi, "avoided" {
        sentence as sentence: Word [WORD] "the verdict in one sentence" {}
        may_be_claimed as may_be_claimed: bool [WORD] "whether something was avoided, its uncertainty at 68 % is below one half, and the placebo agrees" {}
        name as name: Word [WORD] "name of the log" {}
        logged as logged: LoggedAs [WORD] "current_a or power_kw" {}
        changed as changed: Word [WORD] "day of the change" {}
        last as last: Word [WORD] "last day of the log" {}
        running_h as running: f64 [H] "logged running hours since" { formula: "rows kept × {cleaning.sample_s}; of readings by hand, times the share of a year that the line runs", source: "definition", class: Class::Derived }
        avoided_kwh as avoided: f64 [KWH] "energy avoided in these hours" { symbol: "E", formula: "Σ (predicted − measured)", source: AVOIDED, class: Class::Closure }
        avoided_low_kwh as low: f64 [KWH] "its interval, low end" { formula: "{avoided.avoided_kwh} − t × error", source: AVOIDED, class: Class::Closure }
        avoided_high_kwh as high: f64 [KWH] "its interval, high end" { formula: "{avoided.avoided_kwh} + t × error", source: AVOIDED, class: Class::Closure }
        confidence_pct as confidence: f64 [PCT] "confidence of the interval" { formula: "{proof.confidence_pct}", source: "asked for", class: Class::Derived }
        avoided_pct as share: f64 [PCT] "avoided, of what would have been used" { symbol: "F", formula: "{avoided.avoided_kwh} / Σ predicted", source: AVOIDED, class: Class::Derived }
        avoided_kwh_per_year as per_year: Option<f64> [KWH_PER_YEAR = None] "the same over the running hours of a year; needs the line" { formula: "{avoided.avoided_kwh} / {avoided.running_h} × {kinematics.running_h_per_year}", source: "a year like these days", class: Class::Closure }
        money as money: Option<f64> [MONEY = None] "money avoided in these hours" { formula: "{avoided.avoided_kwh} × {costs.energy_price_per_kwh}", source: "definition", class: Class::Derived }
        money_per_year as money_per_year: Option<f64> [MONEY_A_YEAR = None] "money avoided in a year" { formula: "{avoided.avoided_kwh_per_year} × {costs.energy_price_per_kwh}", source: "definition", class: Class::Derived }
        currency as currency: Option<Word> [WORD = None] "currency" {}
        uncertainty_68_pct as uncertainty: f64 [PCT] "uncertainty at 68 % confidence, of what was avoided; the guideline's limit is 50 %" { formula: "t × error / {avoided.avoided_kwh}", source: AVOIDED, class: Class::Closure }
        motor_spread_pct as motor_spread: f64 [PCT] "part of it that comes from reading power off a current, one standard deviation; 0 for logged power" { formula: "spread of the slope of power over current, by draws", source: AVOIDED, class: Class::Closure }
        guideline_90_pct as guideline: f64 [PCT] "the guideline's uncertainty at 90 % with the factor 1.26" { formula: "1.645 × 1.26 × CV/F × √((n/n′)(1 + 2/n′)/m)", source: "Reddy and Claridge (2000), ASHRAE Guideline 14-2002", class: Class::FromMemory }
        guideline_90_by_months_pct as guideline_by_months: f64 [PCT] "the same with the factor by months" { formula: "1.645 × (−0.00024 M² + 0.03535 M + 1.00286) × CV/F × …", source: "Sun and Baltazar (2013)", class: Class::FromMemory }
        factor_by_months as factor: f64 [ONE] "that factor" { formula: "polynomial in the months M after the change", source: "Sun and Baltazar (2013)", class: Class::FromMemory }
        cv_rmse_pct as cv_rmse: f64 [PCT] "scatter of the model before; limit 15 % for days, 30 % for hours" { formula: "√(Σ e²/(n − p)) / mean", source: GUIDELINE, class: Class::FromMemory }
        nmbe_pct as nmbe: f64 [PCT] "bias of the model before; limit 5 % for days, 10 % for hours" { formula: "Σ e / ((n − p) mean)", source: GUIDELINE, class: Class::FromMemory }
        good_fit as good_fit: bool [WORD] "whether both are within the guideline's limits" {}
        placebo_rank as placebo_rank: f64 [ONE] "rank of the change among dates before at which the same was tried" { formula: "(1 + dates with |t| at least as large) / (1 + dates)", source: "in-time placebo, Abadie, Diamond and Hainmueller (2010)", class: Class::FromMemory }
        placebo_agrees as placebo_agrees: Option<bool> [WORD = None] "whether the real |t| exceeds them all; none with fewer than 19 dates" {}
        notes as notes: Vec<LogNote> [WORD] "what to read this with" {}
        cleaning as cleaning: Cleaning [WORD] "what cleaning did" {}
    }
} } }
#[cfg(feature = "python")]
pub(crate) use avoided_use_noun;
avoided_use_noun!(noun);

impl CurrentLog {
    /// Energy and money avoided since a change.
    ///
    /// A log of current needs the line, whose motor turns it into power; of power, the line adds the price and the hours of a
    /// year. `price` a kWh in place of the line's. Fails as [`Self::before_after`] does.
    pub fn savings(&self, changed: &str, line: Option<&Line>, price: Option<f64>, proof: &Proof) -> Result<AvoidedUse> {
        let known = line.map(Known::of).transpose()?;
        let series = self.series(known.as_ref())?;
        series.of_one_piece()?;
        let asked = proof.si(&ONE);
        let moment = series.zone.moment(changed, "changed")?;
        let (before, from) = series.sides(moment, asked.settle, "changed")?;
        let (readings, columns) = series.rows(|row| row < before || row >= from);
        let covariates: Vec<&[f64]> = columns.iter().map(Vec::as_slice).collect();
        let (powers, motor_spread) = match (&known, self.logged) {
            (_, LoggedAs::Power) => (readings, 0.0),
            (Some(known), LoggedAs::Current) => input_powers(known, self.logged, &readings)?,
            (None, LoggedAs::Current) => {
                let message =
                    "current is not energy: give the line, whose motor turns one into the other, or log power";
                return Err(Error::new(Code::Missing, "line", message));
            }
        };
        let found = avoided(&powers, before, &covariates, asked.confidence).map_err(|error| series.by_name(error))?;
        let placebo = placebo(&powers, before, &covariates)?;
        let goodness = goodness(&powers[..before], &covariates, before, series.window)?;

        let rows = &series.log.rows[from..];
        // a reading by hand stands for the days until the next, of which the line runs only a part
        let by_hand = series.window.is_none() && series.step() > BY_HAND;
        let running = match &known {
            Some(known) if by_hand => known.result.kinematics.running_h_per_year / HOURS_OF_A_YEAR,
            _ => 1.0,
        };
        let hours = rows.iter().map(|rows| *rows as f64).sum::<f64>() * H.from_si(series.log.report.sample) * running;
        // every mean stands for the same number of hours
        let kwh = KW.from_si(1.0) * hours / rows.len() as f64;
        let spread = found.avoided.abs() * motor_spread;
        let error = found.error.hypot(spread);
        let half = student_quantile(0.5 + 0.5 * asked.confidence, found.degrees) * error * kwh;
        let energy = found.avoided * kwh;
        let uncertainty = student_quantile(0.5 + 0.5 * CLAIM.0, found.degrees) * error / found.avoided.abs();
        let months = asked.months_after.unwrap_or_else(|| months(&series.log.times[from..], series.window));
        let by_months = SavingsFactor::Daily { months };
        let may_be_claimed = energy > 0.0 && uncertainty < CLAIM.1 && placebo.agrees == Some(true);

        let price = price.or(known.as_ref().map(|known| known.line.costs.energy_price_per_kwh));
        let per_year = known.as_ref().map(|known| energy / hours * known.result.kinematics.running_h_per_year);
        let currency = known.as_ref().map(|known| known.line.costs.currency.clone());
        let mut notes = series.notes.clone();
        if !series.has_load() {
            notes.push(LogNote::new("load_not_logged", "The load was not logged: a lighter load since the change counts as avoided. Log it, or show that it was the same."));
        }
        if by_hand {
            let days = brief(series.step() / 86_400.0);
            let said = match &known {
                Some(_) => format!(
                    "Each reading stands for the {days} days until the next; the line's survey says how many hours of them it runs."
                ),
                None => format!(
                    "Each reading stands for all hours of the {days} days until the next, stops included: give the line, whose running hours are known."
                ),
            };
            notes.push(LogNote::new("read_by_hand", said));
        }
        if motor_spread > 0.0 {
            notes.push(LogNote::new("power_from_current", format!("Power was read off the current through the motor's circuit, which alone leaves ± {} % open (one standard deviation): a power meter leaves nothing.", brief(PCT.from_si(motor_spread)))));
        }
        if !goodness.good_enough {
            notes.push(LogNote::new(
                "poor_fit",
                format!(
                    "The model of the period before scatters by {} % (bias {} %), more than the guideline lets pass.",
                    brief(PCT.from_si(goodness.cv_rmse)),
                    brief(PCT.from_si(goodness.nmbe))
                ),
            ));
        }
        let pct = |share: f64| PCT.from_si(share);
        let mut told = AvoidedUse {
            sentence: Cow::Borrowed(""),
            may_be_claimed,
            name: Cow::Owned(self.name.clone()),
            logged: self.logged,
            changed: Cow::Owned(series.zone.text(moment.from)),
            last: Cow::Owned(series.day(series.log.times.len() - 1)),
            running_h: hours,
            avoided_kwh: energy,
            avoided_low_kwh: energy - half,
            avoided_high_kwh: energy + half,
            confidence_pct: pct(asked.confidence),
            avoided_pct: pct(found.share),
            avoided_kwh_per_year: per_year,
            money: price.map(|price| price * energy),
            money_per_year: price.zip(per_year).map(|(price, energy)| price * energy),
            currency,
            uncertainty_68_pct: pct(uncertainty),
            motor_spread_pct: pct(motor_spread),
            guideline_90_pct: pct(found.guideline_uncertainty(NINETY, SavingsFactor::Original)),
            guideline_90_by_months_pct: pct(found.guideline_uncertainty(NINETY, by_months)),
            factor_by_months: by_months.value(),
            cv_rmse_pct: pct(goodness.cv_rmse),
            nmbe_pct: pct(goodness.nmbe),
            good_fit: goodness.good_enough,
            placebo_rank: placebo.rank,
            placebo_agrees: placebo.agrees,
            notes,
            cleaning: series.cleaning,
        };
        told.sentence = Cow::Owned(told.said());
        Ok(told)
    }
}

/// How well the model of the period before fits it.
fn goodness(powers: &[f64], covariates: &[&[f64]], before: usize, window: Option<f64>) -> Result<Goodness> {
    let constant = vec![1.0; before];
    let centred: Vec<Vec<f64>> = covariates
        .iter()
        .map(|x| {
            let centre = mean(&x[..before]);
            x[..before].iter().map(|x| x - centre).collect()
        })
        .collect();
    let columns: Vec<&[f64]> = [constant.as_slice()].into_iter().chain(centred.iter().map(Vec::as_slice)).collect();
    let fit = least_squares(&columns, powers)?;
    let predicted: Vec<f64> = powers.iter().zip(&fit.residuals).map(|(y, e)| y - e).collect();
    let interval = if window.is_some_and(|window| window >= A_DAY) { Interval::Daily } else { Interval::Hourly };
    Goodness::of(powers, &predicted, columns.len(), interval)
}

impl AvoidedUse {
    fn said(&self) -> String {
        let money = |money: f64| format!("{} {}", brief(money), self.currency.as_deref().unwrap_or("of money"));
        let worth = self.money.map_or(String::new(), |m| format!(", worth {}", money(m)));
        let year = match (self.avoided_kwh_per_year, self.money_per_year) {
            (Some(energy), Some(m)) => format!("; a year like this gives {} kWh, {}", brief(energy), money(m)),
            (Some(energy), None) => format!("; a year like this gives {} kWh", brief(energy)),
            _ => String::new(),
        };
        let claim = if self.may_be_claimed {
            "it may be claimed".into()
        } else if self.avoided_kwh <= 0.0 {
            "there is nothing to claim".into()
        } else if self.uncertainty_68_pct >= PCT.from_si(CLAIM.1) {
            format!(
                "it may not be claimed: uncertain by {} % at 68 %, where 50 % is the limit",
                brief(self.uncertainty_68_pct)
            )
        } else {
            match self.placebo_agrees {
                Some(false) => "it may not be claimed: the log shows such steps where nothing was done".into(),
                _ => "it may not be claimed yet: the period before is too short to try the same where nothing was done"
                    .into(),
            }
        };
        format!(
            "From {} to {} the line used {} kWh ({} to {} at {} % confidence) less than it would have, {} %{worth}{year}; {claim}.",
            self.changed,
            self.last,
            brief(self.avoided_kwh),
            brief(self.avoided_low_kwh),
            brief(self.avoided_high_kwh),
            brief(self.confidence_pct),
            brief(self.avoided_pct)
        )
    }
}
