//! What cleaning did to a log.

/// Something that a reader of the log should know.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Caution {
    /// Newest first in the file; turned round.
    Reversed,
    /// The rows were in no order, so clock changes could not be seen; sorted.
    Unsorted,
    /// The clock was set back by more or less than an hour: the log is in pieces whose times cannot be compared.
    ClockSplit,
    /// Rows with one time stamp and different readings; averaged.
    DuplicatesDiffer,
    /// Neither a no-load reading nor a run signal was given, so stops are in the means.
    NoStopRule,
    /// More than 2 % of the readings were spikes: perhaps the line, not the logger.
    ManySpikes,
    /// The clean readings are all alike: check the clamp.
    Constant,
    /// Nothing was left.
    NothingLeft,
}

impl Caution {
    /// The word as it is printed and compared.
    pub const fn as_str(self) -> &'static str {
        match self {
            Caution::Reversed => "reversed",
            Caution::Unsorted => "unsorted",
            Caution::ClockSplit => "clock_split",
            Caution::DuplicatesDiffer => "duplicates_differ",
            Caution::NoStopRule => "no_stop_rule",
            Caution::ManySpikes => "many_spikes",
            Caution::Constant => "constant",
            Caution::NothingLeft => "nothing_left",
        }
    }

    /// The same as a sentence: what was seen, and what to do.
    pub const fn said(self) -> &'static str {
        match self {
            Caution::Reversed => "The file runs from new to old and was turned round.",
            Caution::Unsorted => {
                "The rows were in no order: they were sorted, and a change of the clock could not be seen."
            }
            Caution::ClockSplit => {
                "The clock was set by more or less than an hour: the log is in pieces whose times cannot be compared."
            }
            Caution::DuplicatesDiffer => {
                "Rows with one time stamp had different readings, which were averaged: check the stamps."
            }
            Caution::NoStopRule => {
                "Nothing told when the line stood, so readings of a standing line, if there are any, count in full."
            }
            Caution::ManySpikes => {
                "More than 2 % of the readings were spikes: perhaps the line itself, or starts that nothing told of."
            }
            Caution::Constant => "All that is left is alike: check the clamp.",
            Caution::NothingLeft => "Nothing is left: look at the rules, and at the unit of the readings.",
        }
    }
}

/// A count for every step. Rows left out and rows kept add up to the rows read.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct CleaningReport {
    /// Rows read.
    pub read: usize,
    /// Left out: no number, or no time stamp.
    pub unreadable: usize,
    /// Left out: current below zero.
    pub negative: usize,
    /// Times that the clock was found an hour out and put right.
    pub clock_shifts: usize,
    /// Rows moved by that.
    pub clock_shifted_rows: usize,
    /// Pieces that other clock changes split the log into; 1 for a whole log.
    pub pieces: usize,
    /// Rows that were out of order and sorted.
    pub out_of_order: usize,
    /// Left out: same stamp and reading as another row.
    pub duplicates_equal: usize,
    /// Left out: same stamp as another row, into whose mean they went.
    pub duplicates_averaged: usize,
    /// Left out: the line stood.
    pub stopped: usize,
    /// Starts of the line.
    pub starts: usize,
    /// Left out: just started.
    pub start_up: usize,
    /// Left out: warming up after a long stop.
    pub warm_up: usize,
    /// Left out: in a window that the log covers too little of.
    pub gaps: usize,
    /// Such windows.
    pub windows_with_gaps: usize,
    /// Windows without any row, between the first and the last.
    pub windows_missing: usize,
    /// Left out: far from their neighbours.
    pub spikes: usize,
    /// Left out: no covariate to go with them.
    pub without_covariates: usize,
    /// Rows in the clean log or its means.
    pub kept: usize,
    /// Usual time between rows, s.
    pub sample: f64,
    /// Step of the display, in the unit of the readings.
    pub display_step: f64,
    /// What a reader should know.
    pub cautions: Vec<Caution>,
}

impl CleaningReport {
    /// Rows left out at some step, and rows kept: the rows read.
    pub fn accounted(&self) -> usize {
        self.unreadable
            + self.negative
            + self.duplicates_equal
            + self.duplicates_averaged
            + self.stopped
            + self.start_up
            + self.warm_up
            + self.gaps
            + self.spikes
            + self.without_covariates
            + self.kept
    }
}
