//! What all rows of a batch have in common, put into a line once.
//!
//! Most columns of a real table hold the same value in every row, or nothing; defaults do always. They are put into one
//! line for the whole batch, and each row puts only what differs. Where a row has anything else to it (an empty cell in
//! a column that is not empty, a word that is no choice, a loop that does not close) the row is made from its cells alone
//! by [`Side::line`], which also words what is wrong: the two ways give the same line, and a test holds them together.

use super::cells::Cells;
use super::names::METHOD;
use super::side::{Chains, Side, SideCells};
use crate::circuit::TwoSprocket;
use crate::line::Line;
use crate::quantity::{Datum, Field, Put, checked};

/// Rows that are tried before a batch counts as one without anything in common.
const TRIED: usize = 32;

/// What the rows of a batch have in common.
pub(super) struct Common<'a> {
    line: Line,
    short: Option<TwoSprocket>,
    empty: Vec<String>,
    /// Columns that differ from row to row: those of the chain, which the loop needs, and the others.
    of_chain: Vec<Varying<'a>>,
    others: Vec<Varying<'a>>,
    /// Columns of the loop that differ; it is made anew for each row if there are any, or if the pitch differs.
    of_loop: Vec<Varying<'a>>,
    loop_varies: bool,
    /// Values of the circuit that are put over the loop.
    over_loop: Vec<Varying<'a>>,
}

/// A source by its number, and its path in steps.
struct Varying<'a> {
    at: usize,
    steps: Vec<&'a str>,
    /// Whether the value may have no place in this line, as it was given for both lines of a row.
    shared: bool,
}

impl<'a> Common<'a> {
    /// Finds what these rows have in common; nothing where too much of what decides the rest differs.
    pub fn of(side: &'a Side, cells: &SideCells, rows: usize) -> Option<Common<'a>> {
        if cells.surveys.is_some() {
            return None;
        }
        let varies = |cells: &Vec<Cells>| cells.iter().map(Cells::varies).collect::<Vec<bool>>();
        let (varying, loop_varying) = (varies(&cells.sources), varies(&cells.of_loop));
        let path = |at: usize| side.sources[at].path.as_str();
        let any = |is: &dyn Fn(&str) -> bool| (0..varying.len()).any(|at| varying[at] && is(path(at)));
        let by_standard = side.standard.is_some()
            && (cells.standard.varies() || any(&|path| path == "chain.designation" || path == "chain.pitch_mm"));
        // of two columns for one value the later one counts, which may be the one that is the same in all rows
        let twice = |at: usize| (0..varying.len()).any(|other| other != at && path(other) == path(at));
        if by_standard || any(&|path| path == METHOD) || (0..varying.len()).any(|at| varying[at] && twice(at)) {
            return None;
        }
        let given = |row: usize| {
            let of = |cells: &[Cells], varying: &[bool]| {
                cells.iter().zip(varying).all(|(cells, varies)| !varies || cells.at(row) != Datum::Nothing)
            };
            of(&cells.sources, &varying) && of(&cells.of_loop, &loop_varying)
        };
        let (line, short, empty) = (0..rows).filter(|row| given(*row)).take(TRIED).find_map(|row| {
            let mut empty = Vec::new();
            let line = side.over_template(cells, row, &mut Chains::new(), &mut empty).ok()?;
            let short = side.two_sprocket(cells, row, line.chain.pitch_mm).ok()?;
            Some((line, short, empty))
        })?;
        let source = |at: usize| Varying { at, steps: path(at).split('.').collect(), shared: side.sources[at].shared };
        let chosen = |is: &dyn Fn(usize) -> bool| (0..varying.len()).filter(|at| is(*at)).map(source).collect();
        let is_of_chain = |at: usize| side.sources[at].is_of_chain();
        let leaf = |at: usize| side.of_loop[at].path.rsplit('.').next().into_iter().collect();
        let of_loop = (0..loop_varying.len()).filter(|at| loop_varying[*at]);
        let loop_varies = short.is_some() && (loop_varying.contains(&true) || any(&|path| path == "chain.pitch_mm"));
        Some(Common {
            line,
            short,
            empty,
            of_chain: chosen(&|at| varying[at] && is_of_chain(at)),
            others: chosen(&|at| varying[at] && !is_of_chain(at)),
            of_loop: of_loop.map(|at| Varying { at, steps: leaf(at), shared: false }).collect(),
            loop_varies,
            over_loop: chosen(&|at| !varying[at] && loop_varies && path(at).starts_with("circuit.")),
        })
    }

    /// Names of the cells that are empty in every row where a default stood in.
    pub fn empty(&self) -> &[String] {
        &self.empty
    }

    /// Puts a row into a line that a row before was put into (`ready`) or any other; `false` where the row must be made from
    /// its cells alone.
    pub fn put(&self, line: &mut Line, ready: &mut bool, cells: &SideCells, row: usize) -> bool {
        if !*ready {
            line.clone_from(&self.line);
            *ready = true;
        }
        self.put_all(line, cells, row).is_some()
    }

    fn put_all(&self, line: &mut Line, cells: &SideCells, row: usize) -> Option<()> {
        put_each(&self.of_chain, &cells.sources, row, line)?;
        if let Some(short) = self.short.as_ref().filter(|_| self.loop_varies) {
            let mut short = TwoSprocket { pitch_mm: line.chain.pitch_mm, ..short.clone() };
            put_each(&self.of_loop, &cells.of_loop, row, &mut short)?;
            checked(&short, "circuit").ok()?;
            line.circuit = short.circuit().ok()?;
            for source in &self.over_loop {
                match cells.sources[source.at].at(row) {
                    Datum::Nothing => {}
                    datum => drop(line.put(&source.steps, datum)), // it was put there once: it can be put again
                }
            }
        }
        put_each(&self.others, &cells.sources, row, line)
    }
}

/// Puts cells that are all given; nothing where one is not, or cannot stand there.
fn put_each<T: Field>(sources: &[Varying<'_>], cells: &[Cells], row: usize, into: &mut T) -> Option<()> {
    sources.iter().try_for_each(|source| {
        let datum = cells[source.at].at(row);
        let put = datum != Datum::Nothing && {
            let put = into.put(&source.steps, datum);
            put == Put::Done || (put == Put::NoSuchPath && source.shared)
        };
        put.then_some(())
    })
}
