//! The whole search: stations, candidates, verdicts, ranks, reasons.

use super::choices::{Choices, KEEP};
use super::grid::Grid;
use super::judge::{Figures, Scratch, Verdict, judge};
use super::rank::{as_good, cheapest_with_margin, ranking};
use super::reason::{Reason, Refusal};
use super::result::{Alternative, LineSetUp, Recommendation, Refused, Rejection};
use super::sheet::sheet;
use super::station::{Setting, Station, set};
use super::stations::stations;
use super::words::{Margin, after_a_wash, in_words, label, why};
use crate::error::{Code, Error, Result};
use crate::line::{Line, evaluate};
use crate::lubrication::Lubrication;
use crate::quantity::checked;
use crate::study::progress::{Progress, in_parallel};
use std::borrow::Cow;

/// Most refused set-ups that are listed one by one.
const MOST_LISTED: usize = 500_000;

/// Judges every set-up that `choices` make on `line` and gives the one to use, the alternatives, and every refusal.
///
/// The survey gives the line, its limits of fill and its prices; its oil, method, shot, timer and place are replaced by
/// the offers. Yearly work in the survey's costs is taken as it stands, whatever the method. Deterministic for any number
/// of threads. Where nothing keeps every limit the result says so, with the nearest misses. Errors are those of the
/// survey and of the offers.
pub fn recommend(line: &Line, choices: &Choices, progress: &mut Progress<'_>) -> Result<Recommendation> {
    choices.checked(line)?;
    checked(line, "")?;
    let stations = stations(line, choices, progress)?;
    let grid = Grid::new(line, choices, &stations)?;
    if choices.all_rejections && grid.len() > MOST_LISTED {
        let message = format!(
            "all_rejections would list up to {} set-ups one by one, more than {MOST_LISTED}: leave it out, or offer less",
            grid.len()
        );
        return Err(Error::new(Code::OutOfRange, "all_rejections", message).number(grid.len() as f64));
    }
    let verdicts = in_parallel(
        grid.len(),
        progress,
        || -> Scratch { None },
        |scratch, number| {
            let (station, setting) = grid.candidate(number);
            judge(station, &stations[station], &setting, &choices.limits, scratch).map_err(Box::new)
        },
    )?;
    let (mut kept, mut refused) = (Vec::new(), Vec::new());
    for (number, verdict) in verdicts.into_iter().enumerate() {
        match verdict.map_err(|error| *error)? {
            Verdict::Keeps(figures) => kept.push((number, *figures)),
            Verdict::Refused(refusal) => refused.push((number, refusal)),
        }
    }
    Found { stations: &stations, grid: &grid, choices }.gathered(kept, &refused)
}

/// What the search found, before it is put under public names.
struct Found<'a> {
    stations: &'a [Station],
    grid: &'a Grid,
    choices: &'a Choices,
}

impl Found<'_> {
    fn gathered(&self, kept: Vec<(usize, Figures)>, refused: &[(usize, Refusal)]) -> Result<Recommendation> {
        let keep = self.choices.keep.unwrap_or(KEEP);
        let standings: Vec<_> = kept.iter().map(|(_, figures)| figures.standing).collect();
        let order = ranking(&standings);
        let alternatives: Vec<Alternative> = order
            .iter()
            .take(keep)
            .enumerate()
            .map(|(rank, &at)| self.alternative(rank as i64 + 1, kept[at].0, &kept[at].1))
            .collect();
        let best = order.first().map(|&at| kept[at].0);
        let (line, evaluation) = match best {
            Some(number) => {
                let (station, setting) = self.grid.candidate(number);
                let line = self.line(station, &setting)?;
                let evaluation = evaluate(&line)?;
                (Some(line), Some(evaluation))
            }
            None => (None, None),
        };
        let set_up = best.map(|number| self.set_up(number));
        let sheet = match (&set_up, &evaluation) {
            (Some(set_up), Some(evaluation)) => Some(sheet(set_up, evaluation)?),
            _ => None,
        };
        let (groups, rejections) = self.reasons(refused, keep);
        let margin = match cheapest_with_margin(&standings) {
            _ if order.first().is_some_and(|&at| standings[at].has_margin) => Margin::Has,
            Some(at) => Margin::Costs(standings[at].cost, Box::new(self.set_up(kept[at].0))),
            None => Margin::Nowhere,
        };
        let mut why = why(&alternatives, as_good(&standings), &margin, kept.len(), self.grid.len(), &groups);
        why.extend(evaluation.as_ref().and_then(after_a_wash));
        Ok(Recommendation {
            feasible: best.is_some(),
            candidates: self.grid.len() as i64,
            feasible_candidates: kept.len() as i64,
            why,
            set_up,
            sheet,
            line,
            evaluation,
            alternatives,
            refused: groups,
            rejections,
        })
    }

    fn line(&self, station: usize, setting: &Setting) -> Result<Line> {
        let at = &self.stations[station];
        let mut line = at.line.clone();
        set(&mut line, setting, at.joint_time()?);
        Ok(line)
    }

    fn set_up(&self, number: usize) -> LineSetUp {
        let (station, setting) = self.grid.candidate(number);
        let mut line = self.stations[station].line.clone();
        let joint_time = self.stations[station].joint_time().unwrap_or(f64::NAN);
        set(&mut line, &setting, joint_time);
        let timed = |run, dwell| if setting.dwell_min > 0.0 { (Some(run), Some(dwell)) } else { (None, None) };
        let (run_min, dwell_min) = timed(setting.run_min, setting.dwell_min);
        let method = Cow::Borrowed(line.lubrication.as_str());
        let (points, place, flow_ml_per_min) = match &line.lubrication {
            Lubrication::Manual(m) => {
                (m.points, (m.application_section, m.application_position, m.application_side), None)
            }
            Lubrication::Drip(m) => {
                (m.points, (m.application_section, m.application_position, m.application_side), Some(m.flow_ml_per_min))
            }
            Lubrication::Spray(m) => {
                (m.points, (m.application_section, m.application_position, m.application_side), Some(m.flow_ml_per_min))
            }
            Lubrication::Synchronised(m) => {
                (m.points, (m.application_section, m.application_position, m.application_side), None)
            }
        };
        LineSetUp {
            method,
            oil: label(&line.oil),
            oil_number: self.stations[station].oil as i64,
            shot_ul: setting.shot_ul,
            flow_ml_per_min,
            every_nth: setting.every_nth,
            points,
            run_min,
            dwell_min,
            application_section: place.0,
            application_position: place.1,
            application_side: place.2,
        }
    }

    fn alternative(&self, rank: i64, number: usize, figures: &Figures) -> Alternative {
        Alternative {
            rank,
            set_up: self.set_up(number),
            total_per_year: figures.standing.cost,
            applied_l_per_year: figures.applied_l_per_year,
            dripped_share: figures.dripped_share,
            overflow_share: figures.standing.overflow,
            lowest_fill_reached: figures.standing.lowest_fill,
            mean_fill: figures.mean_fill,
            never_reached: figures.never_reached,
            worst_wait_h: figures.standing.worst_wait_h,
            lock_risk: figures.lock_risk,
        }
    }

    /// The refusals by reason, and those that missed by least one by one.
    fn reasons(&self, refused: &[(usize, Refusal)], keep: usize) -> (Vec<Refused>, Vec<Rejection>) {
        let mut groups: Vec<Vec<&(usize, Refusal)>> = vec![Vec::new(); Reason::WORDS.len()];
        for one in refused {
            groups[one.1.reason as usize].push(one);
        }
        let (mut counts, mut listed) = (Vec::new(), Vec::new());
        for group in &mut groups {
            let Some((_, first)) = group.first() else { continue };
            let reason = first.reason;
            group.sort_by(|(i, a), (j, b)| a.missed_by().total_cmp(&b.missed_by()).then(i.cmp(j)));
            let (number, nearest) = group[0];
            counts.push(Refused {
                reason,
                count: group.len() as i64,
                means: Cow::Borrowed(reason.meaning()),
                nearest: Cow::Owned(self.sentence(*number, nearest)),
                missed_by: nearest.missed_by(),
                cure: Cow::Borrowed(reason.cure()),
            });
            let shown = if self.choices.all_rejections { group.len() } else { keep };
            listed.extend(group.iter().take(shown).map(|(number, refusal)| self.rejection(*number, refusal)));
        }
        (counts, listed)
    }

    fn rejection(&self, number: usize, refusal: &Refusal) -> Rejection {
        let (value, limit, unit) = refusal.public();
        Rejection {
            reason: refusal.reason,
            value: value.is_finite().then_some(value),
            limit: limit.is_finite().then_some(limit),
            unit: Cow::Borrowed(unit.label),
            missed_by: refusal.missed_by(),
            set_up: self.set_up(number),
        }
    }

    /// What a set-up was and why it was refused.
    fn sentence(&self, number: usize, refusal: &Refusal) -> String {
        let (station, setting) = self.grid.candidate(number);
        let at = &self.stations[station];
        let why = match (&at.refusal, refusal.reason) {
            (Some((_, message)), _) => message.clone(),
            (None, Reason::CannotBeComputed) => self
                .line(station, &setting)
                .and_then(|line| evaluate(&line))
                .map_or_else(|error| error.message, |_| refusal.sentence()),
            _ => refusal.sentence(),
        };
        format!("{}: {why}", in_words(&self.set_up(number)))
    }
}
