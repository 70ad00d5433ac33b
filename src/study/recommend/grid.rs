//! All combinations of what is offered, by number, without writing them down.

use super::choices::Choices;
use super::offers;
use super::station::{Setting, Station};
use crate::error::{Code, Error, Result};
use crate::line::Line;
use crate::lubrication::{Lubrication, Timer};

/// Most candidates of one search: some hundred megabytes if every refusal is kept.
const MOST_CANDIDATES: usize = 5_000_000;

/// The settings of one station and one n.
struct Block {
    station: usize,
    every_nth: i64,
    /// Run and dwell; dwell 0 stands once, with the first run.
    timers: Vec<(f64, f64)>,
    first: usize,
}

/// The candidates: stations × n × shots × timers.
pub(super) struct Grid {
    blocks: Vec<Block>,
    shots_ul: Vec<f64>,
    count: usize,
}

impl Grid {
    /// Lays the offers out over the stations; error where there are too many.
    pub fn new(line: &Line, choices: &Choices, stations: &[Station]) -> Result<Grid> {
        let mut grid = Grid { blocks: Vec::new(), shots_ul: choices.shots_ul.clone(), count: 0 };
        for (station, at) in stations.iter().enumerate() {
            for every_nth in counters(choices, line, at) {
                let timers = timers(choices, line, at, every_nth);
                let block = Block { station, every_nth, timers, first: grid.count };
                grid.count += block.timers.len() * grid.shots_ul.len();
                grid.blocks.push(block);
            }
        }
        if grid.count > MOST_CANDIDATES {
            let message = format!(
                "the offers make {} set-ups, more than the {MOST_CANDIDATES} of one search: take fewer steps of run_min, \
                 dwell_min, every_nth or shots_ul, or search oil by oil",
                grid.count
            );
            let limit = format!("at most {MOST_CANDIDATES} set-ups");
            return Err(Error::new(Code::OutOfRange, "shots_ul", message).number(grid.count as f64).limit(limit));
        }
        Ok(grid)
    }

    /// How many candidates there are.
    pub fn len(&self) -> usize {
        self.count
    }

    /// Station and setting of a candidate.
    pub fn candidate(&self, number: usize) -> (usize, Setting) {
        let block = &self.blocks[self.blocks.partition_point(|block| block.first <= number).saturating_sub(1)];
        let within = number - block.first;
        let (run_min, dwell_min) = block.timers[within % block.timers.len()];
        let shot_ul = self.shots_ul[within / block.timers.len()];
        (block.station, Setting { shot_ul, every_nth: block.every_nth, run_min, dwell_min })
    }
}

/// The n to try at a station.
fn counters(choices: &Choices, line: &Line, at: &Station) -> Vec<i64> {
    let Lubrication::Synchronised(_) = at.line.lubrication else { return vec![1] };
    if let Some(given) = &choices.every_nth {
        return given.clone();
    }
    let Some(sieve) = &at.sieve else { return vec![1] };
    let mut offered = offers::every_nth(sieve.joints, at.counted, sieve.injector, sieve.joint_time);
    if let Lubrication::Synchronised(now) = &line.lubrication
        && !offered.contains(&now.every_nth)
    {
        offered.push(now.every_nth);
    }
    offered
}

/// Run and dwell at a station.
fn timers(choices: &Choices, line: &Line, at: &Station, every_nth: i64) -> Vec<(f64, f64)> {
    if matches!(at.line.lubrication, Lubrication::Manual(_) | Lubrication::Drip(_)) {
        return vec![(1.0, 0.0)];
    }
    let surveyed = surveyed_timer(line);
    let Some(sieve) = &at.sieve else {
        // refused before anything was known of its oil: counted by what is offered
        let or = |given: &Option<Vec<f64>>, own: Option<f64>, else_: f64| {
            given.clone().unwrap_or_else(|| vec![own.unwrap_or(else_)])
        };
        let runs = or(&choices.run_min, surveyed.map(|timer| timer.run_min), 1.0);
        return pairs(&runs, &or(&choices.dwell_min, surveyed.map(|timer| timer.dwell_min), 0.0));
    };
    let counted = crate::lubrication::coverage::every_nth(sieve.joints, every_nth);
    let turns = counted.map_or(1, |counted| counted.wait) as f64 * sieve.circuit;
    let (own_runs, own_dwells) = offers::runs_and_dwells(turns, sieve.patience, sieve.tolerance);
    let with_surveyed = |mut list: Vec<f64>, own: Option<f64>| {
        list.extend(own.filter(|own| !list.contains(own)));
        list
    };
    let runs = choices.run_min.clone().unwrap_or_else(|| with_surveyed(own_runs, surveyed.map(|timer| timer.run_min)));
    let dwells =
        choices.dwell_min.clone().unwrap_or_else(|| with_surveyed(own_dwells, surveyed.map(|timer| timer.dwell_min)));
    pairs(&runs, &dwells)
}

/// Every run with every dwell; a timer that never stops stands once, with the first run.
fn pairs(runs: &[f64], dwells: &[f64]) -> Vec<(f64, f64)> {
    let all = runs.iter().enumerate().flat_map(|(i, &run)| dwells.iter().map(move |&dwell| (i, run, dwell)));
    all.filter(|&(i, _, dwell)| dwell > 0.0 || i == 0).map(|(_, run, dwell)| (run, dwell)).collect()
}

/// The timer of the survey, if its method has one.
fn surveyed_timer(line: &Line) -> Option<&Timer> {
    match &line.lubrication {
        Lubrication::Spray(spray) => Some(&spray.timer),
        Lubrication::Synchronised(synchronised) => synchronised.timer.as_ref(),
        _ => None,
    }
}
