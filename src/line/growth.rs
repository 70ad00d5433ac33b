//! How a line's chain grows with its running hours: what elongation readings are compared with.

use super::Line;
use super::checked::Checked;
use super::course::Course;
use super::oiling::Oiling;
use super::reach::reach;
use super::settle::settle;
use super::wearing::{Wearer, wear_of};
use crate::error::Result;
use crate::quantity::unit::{H, PCT};

/// Elongation of the chain as a whole against running hours since it was new.
pub struct Growth(Wearer);

impl Growth {
    /// Of the chain of a line; the same steps as `evaluate` up to wear.
    ///
    /// ```
    /// use pinfilm::line::{Growth, Line};
    /// let line = Line::from_toml(include_str!("../../python/pinfilm/data/oven_now.toml"))?;
    /// let growth = Growth::of(&line)?;
    /// let year = growth.elongation_pct(20.0 * 240.0);
    /// assert!((year / pinfilm::line::evaluate(&line)?.wear.elongation_1_year_pct - 1.0).abs() < 1e-12);
    /// assert!((growth.running_h(year) / 4800.0 - 1.0).abs() < 1e-9);
    /// # Ok::<(), pinfilm::Error>(())
    /// ```
    pub fn of(line: &Line) -> Result<Growth> {
        let survey = Checked::new(line)?;
        let course = Course::lay_out(&survey)?;
        let oiling = Oiling::of(&survey, &course)?;
        let reach = reach(&survey, &course, &oiling)?;
        let settled = settle(&survey, &course, &oiling, &reach)?;
        Ok(Growth(wear_of(&survey, &course, &oiling, &reach, &settled)?.wearer))
    }

    /// Elongation after so many running hours.
    pub fn elongation_pct(&self, running_h: f64) -> f64 {
        PCT.from_si(self.0.chain().elongation(H.to_si(running_h)))
    }

    /// Running hours after which the chain has grown by so much; infinite where it does not grow.
    pub fn running_h(&self, elongation_pct: f64) -> f64 {
        if elongation_pct <= 0.0 {
            return 0.0;
        }
        let (mut low, mut high) = (0.0, 1.0);
        while self.elongation_pct(high) < elongation_pct {
            (low, high) = (high, 2.0 * high);
            if !high.is_finite() || high > 1e12 {
                return f64::INFINITY;
            }
        }
        while high - low > 1e-12 * high {
            let middle = 0.5 * (low + high);
            if middle <= low || middle >= high {
                break;
            }
            if self.elongation_pct(middle) < elongation_pct { low = middle } else { high = middle }
        }
        high
    }
}
