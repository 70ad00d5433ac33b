//! Uncertain inputs of a line or a pair: checked once, then written into a line for every draw.

use super::super::draws::{Correlation, Distribution, Generator, Input, Plan};
use super::subject::{Outcome, Side, Subject, sided};
use super::usual::{default_correlation, default_uncertainty, thought_of};
use crate::error::{Code, Error, Result};
use crate::quantity::{Datum, Field, Put, Row, no_such_path, show, steps};

/// What is thought of an uncertain input.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Doubt {
    /// What the register thinks of it, about the value of each line.
    Register,
    /// One number; on both sides of a pair the same.
    Same(Distribution),
    /// One draw for both sides of a pair, each with a distribution of its own.
    Each(Distribution, Distribution),
}

/// Where a drawn number is written.
#[derive(Debug, Clone, PartialEq)]
struct Target {
    side: Side,
    path: String,
    /// The path, taken apart once.
    steps: Vec<String>,
    input: usize,
}

/// The uncertain inputs of a subject, ready to be drawn.
#[derive(Debug, Clone)]
pub struct Uncertain {
    subject: Subject,
    names: Vec<String>,
    rows: Vec<&'static Row>,
    /// Distributions of each input on the side as it is, and as proposed.
    sides: [Vec<Distribution>; 2],
    targets: Vec<Target>,
    /// The side that each input is told by.
    told: Vec<Side>,
    correlation: Option<Correlation>,
}

/// What one thread needs to draw: lines to write into, and the numbers of a row.
pub(super) struct Scratch {
    subject: Subject,
    values: [Vec<f64>; 2],
}

impl Scratch {
    /// The lines, with the inputs that were written last.
    pub(super) fn subject(&self) -> &Subject {
        &self.subject
    }
}

impl Uncertain {
    /// Checks paths, distributions and what the paths allow. A path may be led by `now.` or `proposed.` for one side of a
    /// pair; without, it is both, and then one distribution for both needs the two lines to agree there.
    pub fn new(subject: Subject, doubts: &[(String, Doubt)]) -> Result<Uncertain> {
        if doubts.is_empty() {
            let message = "no input is uncertain: name at least one path with a distribution, or leave the defaults";
            return Err(Error::new(Code::Missing, "uncertain", message));
        }
        let nothing = Distribution::Constant(0.0);
        let mut all = Uncertain {
            names: Vec::new(),
            rows: Vec::new(),
            sides: [Vec::new(), Vec::new()],
            targets: Vec::new(),
            told: Vec::new(),
            correlation: None,
            subject,
        };
        for (input, (name, doubt)) in doubts.iter().enumerate() {
            let (sides, path) = all.sides_of(name)?;
            let row = Subject::input_row(path)?;
            let mut of = [nothing; 2];
            for &side in &sides {
                let d = all.distribution(name, path, row, side, *doubt, sides.len())?;
                let shared = matches!(doubt, Doubt::Same(_));
                let shown = if shared { name.clone() } else { sided(&all.subject, side, path) };
                d.check(&shown)?;
                d.check_within(&shown, row.unit.label, row.allowed.low, row.allowed.high)?;
                all.try_out(side, path, row, d.quantile(0.5), matches!(d, Distribution::Constant(_)))?;
                of[side as usize] = d;
                let steps = steps(path).into_iter().map(String::from).collect();
                all.targets.push(Target { side, path: path.to_string(), steps, input });
            }
            // a side that does not have it is drawn like the other
            if sides.len() == 1 {
                of = [of[sides[0] as usize]; 2];
            }
            all.names.push(name.clone());
            all.told.push(sides[0]);
            all.rows.push(row);
            all.sides[0].push(of[0]);
            all.sides[1].push(of[1]);
        }
        all.refuse_twice()?;
        Ok(all)
    }

    /// What is uncertain if nobody says, with the correlations that go with it.
    pub fn usual(subject: Subject) -> Result<Uncertain> {
        let doubts = default_uncertainty(&subject)?;
        let names: Vec<&str> = doubts.iter().map(|(name, _)| name.as_str()).collect();
        let correlation = Correlation::from_pairs(&names, &default_correlation(&names))?;
        Uncertain::new(subject, &doubts)?.correlated(Some(correlation))
    }

    /// The same with correlated inputs.
    pub fn correlated(mut self, correlation: Option<Correlation>) -> Result<Uncertain> {
        self.correlation = correlation;
        self.plans(Generator::Random, 0)?;
        Ok(self)
    }

    /// Names of the inputs, in the order of their dimensions.
    pub fn names(&self) -> &[String] {
        &self.names
    }

    /// Their rows of the register.
    pub fn rows(&self) -> &[&'static Row] {
        &self.rows
    }

    /// What is thought of input `i` on a side.
    pub fn distribution_of(&self, i: usize, side: Side) -> Distribution {
        self.sides[side as usize][i]
    }

    /// The side that input `i` is told by: the one that has it, of two the line as it is.
    pub fn side_of(&self, i: usize) -> Side {
        self.told[i]
    }

    /// The line or pair it is about.
    pub fn subject(&self) -> &Subject {
        &self.subject
    }

    /// Plans of the two sides under one seed: the same draws through the distributions of each.
    pub(super) fn plans(&self, generator: Generator, seed: u64) -> Result<[Plan; 2]> {
        let plan = |side: usize| {
            let each = self.names.iter().zip(&self.sides[side]);
            let inputs = each.map(|(name, d)| Input { name: name.clone(), distribution: *d }).collect();
            Plan::new(inputs, self.correlation.clone(), generator, seed)
        };
        Ok([plan(0)?, plan(1)?])
    }

    /// Scratch for [`Uncertain::drawn`] and [`Uncertain::at`].
    pub(super) fn scratch(&self) -> Scratch {
        Scratch { subject: self.subject.clone(), values: [vec![0.0; self.names.len()], vec![0.0; self.names.len()]] }
    }

    /// What comes out for row `index` of the plans.
    pub(super) fn drawn(&self, plans: &[Plan; 2], index: u32, scratch: &mut Scratch) -> Result<Outcome> {
        plans[0].unit_row(index, &mut scratch.values[0]);
        self.of_units(plans, scratch)
    }

    /// What comes out for uniform numbers, one for each input.
    pub(super) fn at(&self, plans: &[Plan; 2], units: &[f64], scratch: &mut Scratch) -> Result<Outcome> {
        scratch.values[0].copy_from_slice(units);
        self.of_units(plans, scratch)
    }

    /// Writes the inputs that lie `scores` standard deviations up a normal distribution into the lines of `scratch`.
    pub(super) fn write_scores(&self, scores: &[f64], scratch: &mut Scratch) {
        for (values, side) in scratch.values.iter_mut().zip(&self.sides) {
            for ((value, d), &z) in values.iter_mut().zip(side).zip(scores) {
                *value = d.at_normal(z);
            }
        }
        self.write(scratch);
    }

    fn of_units(&self, plans: &[Plan; 2], scratch: &mut Scratch) -> Result<Outcome> {
        let [now, proposed] = &mut scratch.values;
        proposed.copy_from_slice(now);
        plans[0].values(now);
        if self.subject.is_pair() {
            plans[1].values(proposed);
        }
        self.write(scratch);
        scratch.subject.outcome()
    }

    fn write(&self, scratch: &mut Scratch) {
        for target in &self.targets {
            let value = scratch.values[target.side as usize][target.input];
            put(&mut scratch.subject, target, value);
        }
    }

    /// The values that were drawn last, as the side that has them sees them.
    pub(super) fn values_of(&self, scratch: &Scratch) -> Box<[f64]> {
        self.told.iter().enumerate().map(|(i, side)| scratch.values[*side as usize][i]).collect()
    }

    /// The sides that a name is about, and its path below them.
    fn sides_of<'a>(&self, name: &'a str) -> Result<(Vec<Side>, &'a str)> {
        let only = |side: Side| name.strip_prefix(side.as_str()).and_then(|rest| rest.strip_prefix('.'));
        let asked = if self.subject.is_pair() {
            [Side::Now, Side::Proposed].into_iter().find_map(|side| only(side).map(|path| (vec![side], path)))
        } else {
            None
        };
        let (sides, path) = asked.unwrap_or_else(|| (self.subject.sides().to_vec(), name));
        Subject::input_row(path)?;
        let has = |side: &Side| self.subject.line(*side).get(&steps(path)).is_some();
        let sides: Vec<Side> = sides.into_iter().filter(has).collect();
        if sides.is_empty() {
            return Err(no_such_path::<crate::line::Line>(path));
        }
        Ok((sides, path))
    }

    /// What is thought of a path on a side.
    fn distribution(
        &self,
        name: &str,
        path: &str,
        row: &Row,
        side: Side,
        doubt: Doubt,
        sides: usize,
    ) -> Result<Distribution> {
        match doubt {
            Doubt::Same(d) => {
                let value = |side| self.subject.line(side).get(&steps(path));
                let (now, proposed) = (value(Side::Now), value(Side::Proposed));
                if sides == 2 && now != proposed {
                    let shown = |value: Option<Datum<'_>>| value.map_or_else(String::new, Datum::written);
                    let message = format!(
                        "{name} is {} now and {} proposed, and one number for both would undo that change: give a pair of \
                         distributions (now, proposed), which share their draw, or name now.{path} and proposed.{path}, which \
                         do not",
                        shown(now),
                        shown(proposed)
                    );
                    return Err(Error::new(Code::Inconsistent, name, message).unit(row.unit.label));
                }
                Ok(d)
            }
            Doubt::Each(now, proposed) => {
                if sides != 2 {
                    let message = format!("{name} has two distributions, but only one line has it: give one");
                    return Err(Error::new(Code::Inconsistent, name, message));
                }
                Ok(if side == Side::Now { now } else { proposed })
            }
            Doubt::Register => thought_of(self.subject.line(side), path, row).ok_or_else(|| {
                let message = format!(
                    "the register states no spread of {name} about the value of this line: give a distribution of {}",
                    row.means
                );
                Error::new(Code::Missing, name, message).unit(row.unit.label)
            }),
        }
    }

    /// Refuses a place where a drawn number cannot stand.
    fn try_out(&self, side: Side, path: &str, row: &Row, middle: f64, whole: bool) -> Result<()> {
        let value = if whole { middle } else { middle + 0.123_456_789 * (1.0 + middle.abs()) };
        if self.subject.clone().put(side, &steps(path), Datum::Number(value)) == Put::Done {
            return Ok(());
        }
        let message = format!(
            "{path} cannot be drawn: {} is not a number with fractions; study its values one by one with a sweep",
            row.means
        );
        Err(Error::new(Code::WrongType, path, message).text_value(show::number(middle)))
    }

    /// Refuses an input that two names write to.
    fn refuse_twice(&self) -> Result<()> {
        for (i, target) in self.targets.iter().enumerate() {
            let same = |other: &&Target| other.side == target.side && other.path == target.path;
            if let Some(other) = self.targets[..i].iter().find(same) {
                let names = (&self.names[other.input], &self.names[target.input]);
                let message = format!("{} and {} draw the same input twice: name it once", names.0, names.1);
                return Err(Error::new(Code::Inconsistent, names.1, message));
            }
        }
        Ok(())
    }
}

fn put(subject: &mut Subject, target: &Target, value: f64) {
    // paths are short: no heap for their steps
    let mut steps = [""; 8];
    let count = target.steps.len().min(steps.len());
    steps.iter_mut().zip(&target.steps).for_each(|(step, own)| *step = own);
    subject.put(target.side, &steps[..count], Datum::Number(value)); // tried out when the path was named
}
