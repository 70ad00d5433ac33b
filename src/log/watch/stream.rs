//! One reading at a time: charts, alarm and likely cause, in a state that can be saved and resumed.

use super::{Baseline, Cause, Cusum, Ewma, Seen, Settings, cause};
use crate::error::{Code, Error, Result};
use rayon::prelude::*;
use serde::{Deserialize, Serialize};
use std::collections::VecDeque;

/// One reading to watch.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Reading<'a> {
    /// Time, s from anywhere; rising.
    pub time: f64,
    /// The reading, in the unit of the baseline.
    pub value: f64,
    /// Covariates in the order of the baseline, load first.
    pub covariates: &'a [f64],
    /// Whether the line was started since the reading before.
    pub start: bool,
}

/// A chart above its threshold.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub struct Alarm {
    /// Whether the line draws too much; else too little.
    pub up: bool,
    /// What it looks like; ambiguous for a line that draws too little.
    pub cause: Cause,
}

/// What one reading did to the charts.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Step {
    /// What the baseline expects.
    pub expected: f64,
    /// Share by which the reading is above that.
    pub residual: f64,
    /// What is new in it, standard deviations.
    pub innovation: f64,
    /// Upper sum of the CUSUM.
    pub up: f64,
    /// Lower sum of the CUSUM.
    pub down: f64,
    /// Moving average.
    pub ewma: f64,
    /// Whether the moving average is beyond its limits; for the eye, not an alarm.
    pub ewma_out: bool,
    /// The CUSUM above its threshold.
    pub alarm: Option<Alarm>,
    /// Whether the load of the last days is not the usual one while the line follows it: no alarm.
    pub load_change: bool,
}

/// A watch over one line: baseline, charts and the last days.
///
/// Plain data: it serialises, and a watch read back goes on as if it had not stopped.
///
/// ```
/// use pinfilm::log::watch::{Baseline, Reading, Settings, Watch};
/// let quiet: Vec<f64> = (0..60).map(|t| 3.0 + 0.01 * f64::from(t * 7 % 10)).collect();
/// let baseline = Baseline::learn(&quiet, &[])?;
/// let mut watch = Watch::new(Settings::daily(&baseline)?, baseline);
/// let day = |t: u32, value| Reading { time: 86_400.0 * f64::from(t), value, covariates: &[], start: false };
/// assert_eq!(watch.take(&day(0, 3.04))?.alarm, None);
/// let dear = (1..9).map(|t| watch.take(&day(t, 3.2))).collect::<Result<Vec<_>, _>>()?;
/// assert!(dear.iter().any(|step| step.alarm.is_some_and(|alarm| alarm.up)));
/// # Ok::<(), pinfilm::Error>(())
/// ```
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Watch {
    /// What the line should draw.
    pub baseline: Baseline,
    /// How the charts are set.
    pub settings: Settings,
    /// The chart that gives the alarm.
    pub cusum: Cusum,
    /// The chart for the eye.
    pub ewma: Ewma,
    /// The last days, oldest first.
    pub seen: VecDeque<Seen>,
}

impl Watch {
    /// A watch that has seen nothing.
    pub fn new(settings: Settings, baseline: Baseline) -> Self {
        let cusum = Cusum::new(settings.allowance, settings.threshold);
        let ewma = Ewma::new(settings.ewma_weight, settings.ewma_width);
        Watch { baseline, settings, cusum, ewma, seen: VecDeque::new() }
    }

    /// Takes one reading. Refuses one that is no number or not later than the last, and leaves the state as it was.
    pub fn take(&mut self, reading: &Reading) -> Result<Step> {
        if !reading.value.is_finite() || reading.covariates.iter().any(|x| !x.is_finite()) {
            return Err(
                Error::new(Code::NotFinite, "reading", "a reading is not a number: leave it out").number(reading.value)
            );
        }
        let last = self.seen.back().copied();
        let since = last.map_or(f64::INFINITY, |last| reading.time - last.time);
        if since.is_nan() || since <= 0.0 {
            return Err(Error::new(
                Code::Inconsistent,
                "time",
                "a reading is not later than the one before: give readings in the order of time, each once",
            )
            .number(reading.time)
            .unit("s"));
        }
        let expected = self.baseline.expected(reading.covariates)?;
        let residual = self.baseline.residual(reading.value, expected);
        let neighbour = last.filter(|_| since <= 1.5 * self.settings.interval);
        let innovation = self.baseline.innovation(residual, neighbour.map(|last| last.residual));
        let out = self.cusum.take(innovation);
        let ewma_out = self.ewma.take(innovation);

        while self.seen.front().is_some_and(|row| reading.time - row.time > self.settings.window) {
            self.seen.pop_front();
        }
        self.seen.push_back(Seen {
            time: reading.time,
            reading: reading.value,
            expected,
            residual,
            up: self.cusum.up,
            load: reading.covariates.first().copied(),
            start: reading.start,
        });
        let up = self.cusum.up > self.cusum.threshold;
        let looks_like = cause(self.seen.make_contiguous(), out, &self.baseline);
        let alarm = out.then_some(Alarm { up, cause: looks_like.filter(|_| up).unwrap_or(Cause::Ambiguous) });
        Ok(Step {
            expected,
            residual,
            innovation,
            up: self.cusum.up,
            down: self.cusum.down,
            ewma: self.ewma.value,
            ewma_out,
            alarm,
            load_change: looks_like == Some(Cause::LoadChange),
        })
    }

    /// Takes a whole log, reading by reading.
    pub fn follow(&mut self, log: &Log) -> Result<Vec<Step>> {
        let mut covariates = vec![0.0; log.covariates.len()];
        (0..log.values.len().min(log.times.len()))
            .map(|row| {
                for (now, column) in covariates.iter_mut().zip(log.covariates) {
                    *now = column[row];
                }
                let start = log.starts.get(row).copied().unwrap_or(false);
                self.take(&Reading { time: log.times[row], value: log.values[row], covariates: &covariates, start })
            })
            .collect()
    }

    /// Puts the charts back to nothing, after an alarm was dealt with; baseline and last days stay.
    pub fn reset(&mut self) {
        self.cusum = Cusum::new(self.settings.allowance, self.settings.threshold);
        self.ewma = Ewma::new(self.settings.ewma_weight, self.settings.ewma_width);
    }
}

/// A log to follow: columns of equal length.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Log<'a> {
    /// Times, s, rising.
    pub times: &'a [f64],
    /// Readings.
    pub values: &'a [f64],
    /// Covariates in the order of the baseline, load first.
    pub covariates: &'a [&'a [f64]],
    /// Whether the line was started since the reading before; may be empty.
    pub starts: &'a [bool],
}

/// Follows many logs, each with its own watch, in parallel; the order and the numbers do not depend on it.
pub fn follow_all(watches: &mut [Watch], logs: &[Log]) -> Vec<Result<Vec<Step>>> {
    watches.par_iter_mut().zip(logs).map(|(watch, log)| watch.follow(log)).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::log::watch::cusum_path;
    use proptest::prelude::*;

    fn lines(n: usize, drift: f64) -> (Vec<f64>, Vec<f64>, Vec<f64>) {
        let load: Vec<f64> = (0..n).map(|t| 100.0 + ((t * 37) % 23) as f64).collect();
        let ripple = |t: usize| ((t * t * 31 + 7 * t) % 101) as f64 / 101.0 - 0.5;
        let draw = (0..n).map(|t| (4.0 + 0.06 * load[t]) * (1.0 + 0.02 * ripple(t) + drift * t as f64)).collect();
        ((0..n).map(|t| 86_400.0 * t as f64).collect(), draw, load)
    }

    fn watch() -> Watch {
        let (_, draw, load) = lines(80, 0.0);
        let baseline = Baseline::learn(&draw, &[&load]).unwrap();
        Watch::new(Settings::daily(&baseline).unwrap(), baseline)
    }

    proptest! {
        #[test]
        fn saved_and_resumed_anywhere_it_is_the_batch(stop in 0usize..60, drift in -0.001..0.003f64) {
            let (times, values, load) = lines(60, drift);
            let whole = Log { times: &times, values: &values, covariates: &[&load], starts: &[] };
            let mut once = watch();
            let batch = once.follow(&whole).unwrap();

            let mut first = watch();
            let part = |range: std::ops::Range<usize>, watch: &mut Watch| {
                let log = Log {
                    times: &times[range.clone()],
                    values: &values[range.clone()],
                    covariates: &[&load[range]],
                    starts: &[],
                };
                watch.follow(&log).unwrap()
            };
            let mut steps = part(0..stop, &mut first);
            let saved = serde_json::to_string(&first).unwrap();
            let mut second: Watch = serde_json::from_str(&saved).unwrap();
            steps.extend(part(stop..60, &mut second));
            prop_assert_eq!(&steps, &batch);
            prop_assert_eq!(&second, &once);

            let innovations: Vec<f64> = batch.iter().map(|step| step.innovation).collect();
            let path = cusum_path(&innovations, 0.0, 0.5, once.cusum.threshold);
            prop_assert_eq!(path.up, batch.iter().map(|step| step.up).collect::<Vec<f64>>());
            let alarms: Vec<usize> = (0..60).filter(|t| batch[*t].alarm.is_some()).collect();
            prop_assert_eq!(path.alarms, alarms);
        }
    }

    #[test]
    fn many_logs_at_once() {
        let logs: Vec<_> = (0..8).map(|i| lines(60, 0.0005 * i as f64)).collect();
        let covariates: Vec<[&[f64]; 1]> = logs.iter().map(|log| [log.2.as_slice()]).collect();
        let views: Vec<Log> = logs
            .iter()
            .zip(&covariates)
            .map(|(log, covariates)| Log { times: &log.0, values: &log.1, covariates, starts: &[] })
            .collect();
        let mut watches = vec![watch(); 8];
        let all = follow_all(&mut watches, &views);
        for (log, steps) in views.iter().zip(all) {
            assert_eq!(watch().follow(log).unwrap(), steps.unwrap());
        }
    }

    #[test]
    fn drift_is_found_and_named() {
        let (times, values, load) = lines(60, 0.002);
        let steps = watch().follow(&Log { times: &times, values: &values, covariates: &[&load], starts: &[] }).unwrap();
        let first = steps.iter().find_map(|step| step.alarm).unwrap();
        assert!(first.up);
        assert!(steps.iter().any(|step| step.alarm.is_some_and(|alarm| alarm.cause == Cause::RunningDry)));
    }

    #[test]
    fn a_refused_reading_leaves_the_state() {
        let mut watch = watch();
        let good = Reading { time: 0.0, value: 10.0, covariates: &[100.0], start: false };
        watch.take(&good).unwrap();
        let before = watch.clone();
        for bad in [
            good,
            Reading { time: -1.0, ..good },
            Reading { time: f64::NAN, ..good },
            Reading { time: 9.0, value: f64::NAN, ..good },
            Reading { time: 9.0, covariates: &[], ..good },
            Reading { time: 9.0, covariates: &[f64::NAN], ..good },
        ] {
            assert!(watch.take(&bad).is_err());
        }
        assert_eq!(watch, before);
    }

    #[test]
    fn starts_afresh_after_a_gap() {
        let mut watch = watch();
        let at = |time: f64| Reading { time, value: 11.0, covariates: &[100.0], start: false };
        let first = watch.take(&at(0.0)).unwrap();
        let near = watch.take(&at(86_400.0)).unwrap();
        let far = watch.take(&at(9.0 * 86_400.0)).unwrap();
        assert_eq!(first.innovation, far.innovation);
        assert!(watch.baseline.lag1 == 0.0 || near.innovation != first.innovation);
        watch.reset();
        assert_eq!((watch.cusum.up, watch.ewma.value), (0.0, 0.0));
    }
}
