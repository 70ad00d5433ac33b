//! One row → one line: the values of its cells put over what holds for all rows.

use super::cells::Cells;
use super::names::{METHOD, only_loop};
use super::survey::Surveys;
use crate::chain::Chain;
use crate::circuit::TwoSprocket;
use crate::error::Result;
use crate::line::Line;
use crate::lubrication::{Lubrication, Timer};
use crate::quantity::{Datum, Field, Kind, Noun, Place, Put, Row, Tree, Value, blank, checked, no_such_path, put_at};
use crate::supply::Supply;
use std::collections::HashMap;

/// A column, or a value for all rows, that says one thing of a line.
#[derive(Debug, Clone)]
pub(super) struct Source {
    /// The name without its side.
    pub path: String,
    /// The column; none for a value that holds for all rows.
    pub column: Option<usize>,
    /// What the value is.
    pub kind: Kind,
    /// The value for all rows, where there is no column.
    pub constant: Cells,
    /// Whether it was given for both lines of a comparison, so that the one whose method has no such value passes it by.
    pub shared: bool,
}

impl Source {
    pub fn is_of_chain(&self) -> bool {
        self.path.starts_with("chain.")
    }
}

/// How the rows of a table make one of the lines that are computed.
#[derive(Debug, Clone)]
pub(super) struct Side {
    /// Where each value comes from; values for all rows stand first.
    pub sources: Vec<Source>,
    /// The same for the loop of two sprockets.
    pub of_loop: Vec<Source>,
    /// What holds where no cell says otherwise: a line that was given, or a blank one with defaults.
    pub template: Line,
    /// The column of whole surveys.
    pub survey: Option<usize>,
    /// Where the standard of the chain comes from.
    pub standard: Option<Source>,
}

/// The cells that one side needs of one batch.
pub(super) struct SideCells {
    pub sources: Vec<Cells>,
    pub of_loop: Vec<Cells>,
    pub surveys: Option<Surveys>,
    pub standard: Cells,
}

/// Chains of standards that were looked up already.
pub(super) type Chains = HashMap<(String, String, Option<u64>), Result<Chain>>;

impl Side {
    /// The line of a row. `empty` gets the names of cells that were empty where a default stood in.
    pub fn line(&self, cells: &SideCells, row: usize, chains: &mut Chains, empty: &mut Vec<String>) -> Result<Line> {
        match cells.surveys.as_ref().map_or(Ok(None), |surveys| surveys.at(row))? {
            Some(survey) => self.over_survey(survey, cells, row, chains),
            None => self.over_template(cells, row, chains, empty),
        }
    }

    /// Cells put over the template.
    pub fn over_template(
        &self,
        cells: &SideCells,
        row: usize,
        chains: &mut Chains,
        empty: &mut Vec<String>,
    ) -> Result<Line> {
        let mut line = self.template.clone();
        let given = || self.sources.iter().zip(&cells.sources).map(|(source, cells)| (source, cells.at(row)));
        // what decides which values there are comes first
        for (source, datum) in given().filter(|(source, _)| source.path == METHOD) {
            if datum != Datum::Nothing {
                put(&mut line, source, datum)?;
            }
        }
        if line.supply.is_none() && given().any(|(s, datum)| s.path.starts_with("supply.") && datum != Datum::Nothing) {
            line.supply = Some(Supply::blank());
        }
        if let Lubrication::Synchronised(method) = &mut line.lubrication
            && method.timer.is_none()
            && given().any(|(s, datum)| s.path.starts_with("lubrication.timer.") && datum != Datum::Nothing)
        {
            method.timer = Some(Timer::blank());
        }
        if let Some(outline) = self.outline(cells, row, chains)? {
            line.chain = outline;
        }
        // the loop needs the pitch, and its sections must be there before a column can change one
        for of_chain in [true, false] {
            if !of_chain && let Some(short) = self.two_sprocket(cells, row, line.chain.pitch_mm)? {
                line.circuit = short.circuit()?;
            }
            for (source, datum) in
                given().filter(|(source, _)| source.is_of_chain() == of_chain && source.path != METHOD)
            {
                if datum != Datum::Nothing {
                    put(&mut line, source, datum)?;
                } else if source.column.is_some() && !source.shared && stands_in(&line, &source.path) {
                    empty.push(source.path.clone());
                }
            }
        }
        Ok(line)
    }

    /// Cells put over the survey of the row.
    fn over_survey(&self, mut survey: Tree, cells: &SideCells, row: usize, chains: &mut Chains) -> Result<Line> {
        if let Some(outline) = self.outline(cells, row, chains)? {
            for name in Chain::ROWS.iter().map(|row| row.name) {
                let path = ["chain", name];
                let has = survey.at(&path).is_some_and(|tree| tree.value != Value::Nothing);
                let known = outline.get(&[name]).filter(|datum| !is_blank(*datum) && *datum != Datum::Nothing);
                if let (false, Some(datum)) = (has, known) {
                    survey.put(&path.join("."), leaf(datum))?;
                }
            }
        }
        let own_method = survey.at(&["lubrication", "method"]).is_some();
        for of_chain in [true, false] {
            if !of_chain {
                let pitch = match survey.at(&["chain", "pitch_mm"]).map(|tree| &tree.value) {
                    Some(Value::Number(number)) => *number,
                    Some(Value::Whole(number)) => *number as f64,
                    _ => blank::NUMBER,
                };
                if let Some(short) = self.two_sprocket(cells, row, pitch)? {
                    survey.put("circuit", short.circuit()?.write())?;
                }
            }
            for (source, cells) in self.sources.iter().zip(&cells.sources) {
                let datum = cells.at(row);
                let path: Vec<&str> = source.path.split('.').collect();
                let stays =
                    source.column.is_none() && survey.at(&path).is_some_and(|tree| tree.value != Value::Nothing);
                let others = source.shared && own_method && source.path.starts_with("lubrication.");
                if source.is_of_chain() == of_chain && datum != Datum::Nothing && !stays && !others {
                    survey.put(&source.path, leaf(datum))?;
                }
            }
        }
        Line::from_tree(&survey)
    }

    /// The chain that the row takes from a standard, blank where the standard is silent.
    fn outline(&self, cells: &SideCells, row: usize, chains: &mut Chains) -> Result<Option<Chain>> {
        let Datum::Text(standard) = cells.standard.at(row) else { return Ok(None) };
        let of = |path: &str| {
            let at = self.sources.iter().rposition(|source| source.path == path)?;
            Some(cells.sources[at].at(row)).filter(|datum| *datum != Datum::Nothing)
        };
        let Some(Datum::Text(designation)) = of("chain.designation") else { return Ok(None) };
        let pitch = of("chain.pitch_mm").and_then(Datum::number);
        let key = (standard.to_string(), designation.to_string(), pitch.map(f64::to_bits));
        let found = chains
            .entry(key)
            .or_insert_with_key(|(standard, designation, _)| Chain::outline(standard, designation, pitch));
        found.clone().map(Some)
    }

    /// The loop of two sprockets of a row, if it says anything that only such a loop has.
    pub fn two_sprocket(&self, cells: &SideCells, row: usize, pitch_mm: f64) -> Result<Option<TwoSprocket>> {
        let given = || self.of_loop.iter().zip(&cells.of_loop).map(|(source, cells)| (source, cells.at(row)));
        if !given().any(|(source, datum)| datum != Datum::Nothing && only_loop(&source.path)) {
            return Ok(None);
        }
        let mut short = TwoSprocket { pitch_mm, ..TwoSprocket::blank() };
        for (source, datum) in given().filter(|(_, datum)| *datum != Datum::Nothing) {
            let name = source.path.rsplit('.').next().unwrap_or_default();
            if short.put(&[name], datum) != Put::Done {
                let refusal = TwoSprocket::refusal(&[name], &leaf(datum), &Place::root("circuit"), &Row::BLANK);
                return Err(refusal.unwrap_or_else(|| no_such_path::<Line>(&source.path)));
            }
        }
        checked(&short, "circuit").map_err(|error| {
            // the pitch is the chain's
            let mut error = blank::missing::<TwoSprocket>(error);
            if error.field == "circuit.pitch_mm" {
                error.field = "chain.pitch_mm".into();
                error.message = error.message.replace("circuit.pitch_mm", "chain.pitch_mm");
            }
            error
        })?;
        Ok(Some(short))
    }
}

/// Puts a value into the line, or says as a survey would why it cannot stand there.
fn put(line: &mut Line, source: &Source, datum: Datum<'_>) -> Result<()> {
    let mut steps = [""; 8];
    let mut count = 0;
    for (place, step) in steps.iter_mut().zip(source.path.split('.')) {
        *place = step;
        count += 1;
    }
    match line.put(&steps[..count], datum) {
        Put::Done => Ok(()),
        Put::NoSuchPath if source.shared || source.column.is_none() => Ok(()),
        Put::NoSuchPath => {
            let mut error = no_such_path::<Line>(&source.path).text_value(datum.written());
            if source.path.starts_with("lubrication.") {
                let method = line.lubrication.as_str();
                error.limit = format!("an empty cell where the method is {method}");
                error.message = format!(
                    "{} = {} is no value of the method {method}: leave the cell empty",
                    source.path,
                    datum.written()
                );
            }
            Err(error)
        }
        Put::WrongKind => {
            let refusal = Line::refusal(&steps[..count], &leaf(datum), &Place::root(""), &Row::BLANK);
            Err(refusal
                .map_or_else(|| put_at(line, &source.path, datum).err(), Some)
                .unwrap_or_else(|| no_such_path::<Line>(&source.path)))
        }
    }
}

/// Whether a default stands at a path, which an empty cell leaves there.
fn stands_in(line: &Line, path: &str) -> bool {
    let steps: Vec<&str> = path.split('.').collect();
    line.get(&steps).is_some_and(|datum| datum != Datum::Nothing && datum != Datum::Text("") && !is_blank(datum))
}

pub(super) fn is_blank(datum: Datum<'_>) -> bool {
    datum.number().is_some_and(blank::is_blank)
}

/// A single value as survey data.
pub(super) fn leaf(datum: Datum<'_>) -> Tree {
    let value = match datum {
        Datum::Nothing => Value::Nothing,
        Datum::Flag(flag) => Value::Flag(flag),
        Datum::Whole(number) => Value::Whole(number),
        Datum::Number(number) => Value::Number(number),
        Datum::Text(text) => Value::Text(text.to_string()),
    };
    value.into()
}
