//! What a study is about: one line, or a line as it is with the same line as proposed.

use super::super::compare::{Comparison, compare_in_brief};
use crate::error::{Error, Result};
use crate::line::{Evaluation, Line, evaluate_in_brief};
use crate::quantity::{Datum, Field, Noun, Put, Row, no_such_path, row_of, rows_of};

/// Which line of a pair; a single line is `Now`.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Side {
    /// The line as it is.
    Now,
    /// The line as proposed.
    Proposed,
}

impl Side {
    /// The word before a dotted path.
    pub const fn as_str(self) -> &'static str {
        match self {
            Side::Now => "now",
            Side::Proposed => "proposed",
        }
    }
}

/// A line, or a pair of lines.
#[derive(Debug, Clone, PartialEq)]
pub enum Subject {
    /// One line.
    Line(Box<Line>),
    /// A line as it is, and as proposed.
    Pair(Box<Line>, Box<Line>),
}

/// What is computed for a subject.
#[derive(Debug, Clone, PartialEq)]
pub enum Outcome {
    /// Of one line.
    Line(Box<Evaluation>),
    /// Of a pair.
    Pair(Box<Comparison>),
}

impl From<Line> for Subject {
    fn from(line: Line) -> Self {
        Subject::Line(Box::new(line))
    }
}

impl From<(Line, Line)> for Subject {
    fn from((now, proposed): (Line, Line)) -> Self {
        Subject::Pair(Box::new(now), Box::new(proposed))
    }
}

impl Subject {
    /// Evaluates the line, or compares the pair: the one place where studies compute anything.
    pub fn outcome(&self) -> Result<Outcome> {
        match self {
            Subject::Line(line) => evaluate_in_brief(line).map(|result| Outcome::Line(Box::new(result))),
            Subject::Pair(now, proposed) => {
                compare_in_brief(now, proposed).map(|result| Outcome::Pair(Box::new(result)))
            }
        }
    }

    /// Its sides.
    pub fn sides(&self) -> &'static [Side] {
        match self {
            Subject::Line(_) => &[Side::Now],
            Subject::Pair(..) => &[Side::Now, Side::Proposed],
        }
    }

    /// Whether it is a pair.
    pub fn is_pair(&self) -> bool {
        matches!(self, Subject::Pair(..))
    }

    /// The line of a side; that of a single line whatever the side.
    pub fn line(&self, side: Side) -> &Line {
        match (self, side) {
            (Subject::Line(line), _)
            | (Subject::Pair(line, _), Side::Now)
            | (Subject::Pair(_, line), Side::Proposed) => line,
        }
    }

    fn line_mut(&mut self, side: Side) -> &mut Line {
        match (self, side) {
            (Subject::Line(line), _)
            | (Subject::Pair(line, _), Side::Now)
            | (Subject::Pair(_, line), Side::Proposed) => line,
        }
    }

    /// Puts a value at the steps of a path of one side.
    pub fn put(&mut self, side: Side, steps: &[&str], datum: Datum<'_>) -> Put {
        self.line_mut(side).put(steps, datum)
    }

    /// The row of a dotted path of a survey, or the error that names the nearest.
    pub fn input_row(path: &str) -> Result<&'static Row> {
        row_of::<Line>(path).ok_or_else(|| no_such_path::<Line>(path))
    }

    /// The row of a dotted path of its result, or the error that names the nearest.
    pub fn output_row(&self, path: &str) -> Result<&'static Row> {
        fn row<T: Noun>(path: &str) -> Result<&'static Row> {
            row_of::<T>(path).ok_or_else(|| no_such_path::<T>(path))
        }
        if self.is_pair() { row::<Comparison>(path) } else { row::<Evaluation>(path) }
    }

    /// All rows of its result, with their paths.
    pub fn output_rows(&self) -> &'static [(String, &'static Row)] {
        if self.is_pair() { rows_of::<Comparison>() } else { rows_of::<Evaluation>() }
    }
}

impl Outcome {
    /// The single value at the steps of a path.
    pub fn get(&self, steps: &[&str]) -> Option<Datum<'_>> {
        match self {
            Outcome::Line(result) => result.get(steps),
            Outcome::Pair(result) => result.get(steps),
        }
    }
}

/// A path with the side before it, where there are two.
pub(super) fn sided(subject: &Subject, side: Side, path: &str) -> String {
    if subject.is_pair() { format!("{}.{path}", side.as_str()) } else { path.to_string() }
}

/// The error of a draw with the row that it happened in is told by its code alone.
pub(super) fn code_of(error: &Error) -> &'static str {
    error.code.as_str()
}
