//! What each column is for, before any row is computed.

use super::SURVEY;
use super::cells::{Cells, Reading};
use super::job::Job;
use super::names::{LOOP, METHOD, VALUES, meant, only_loop};
use super::outputs::{Output, STATE, described};
use super::side::{Chains, Side, SideCells, Source, is_blank};
use super::sorting::Sorting;
use super::survey::Surveys;
use crate::circuit::TwoSprocket;
use crate::error::{Code, Error, Result};
use crate::line::Line;
use crate::lubrication::{Drip, Lubrication, Manual, Spray, Synchronised};
use crate::quantity::unit::WORD;
use crate::quantity::{Datum, Field, Kind, Row, Tree, blank, checked, show};
use arrow_array::RecordBatch;
use arrow_schema::{DataType, Field as ArrowField, Schema, SchemaRef};
use std::collections::HashSet;
use std::sync::Arc;

/// What the caller wants.
#[derive(Debug, Clone, Default)]
pub struct Asked {
    /// Paths of results, in order; without it, those that the job shows usually.
    pub outputs: Option<Vec<String>>,
    /// A line that holds where no cell says otherwise.
    pub base: Option<Line>,
    /// Values that hold where no cell says otherwise, by path.
    pub given: Vec<(String, Tree)>,
    /// Whether unprefixed columns hold for every line of a row, or for the first alone.
    pub separate: bool,
}

/// A column that looks as if it was meant to have another name.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Meant {
    /// As it is.
    pub column: String,
    /// The name it was probably meant to have.
    pub name: String,
}

/// A value that no column gives, so that a default holds for every row.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Default {
    /// The value's path.
    pub name: String,
    /// The default, with its unit.
    pub value: String,
}

/// What became of the columns.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Report {
    /// Columns that were read, in order.
    pub read: Vec<String>,
    /// Columns of the caller's own, kept as they are.
    pub kept: Vec<String>,
    /// Columns of numbers that came as text.
    pub spelled: Vec<String>,
    /// Columns that look misspelt; they were not read.
    pub meant: Vec<Meant>,
    /// Defaults that hold for all rows.
    pub defaults: Vec<Default>,
    /// Columns of results.
    pub outputs: Vec<String>,
}

/// What to do with a table of one schema.
#[derive(Debug, Clone)]
pub struct Plan {
    pub(super) sides: Vec<Side>,
    pub(super) outputs: Vec<Output>,
    /// The schema of what comes out.
    pub schema: SchemaRef,
    /// What became of the columns.
    pub report: Report,
}

impl Plan {
    /// Decides what each column is for; fails before any row is computed where the table cannot be one of lines.
    pub fn new<J: Job>(schema: &Schema, asked: &Asked) -> Result<Plan> {
        let outputs = Output::all::<J>(asked.outputs.as_deref())?;
        only_once(schema, &outputs)?;
        let mut report =
            Report { outputs: outputs.iter().map(|output| output.path.clone()).collect(), ..Report::default() };
        let mut fields: Vec<ArrowField> = schema.fields().iter().map(|field| field.as_ref().clone()).collect();
        let mut sides = Vec::new();
        for name in J::SIDES {
            sides.push(Sorting { name, sides: J::SIDES, schema, asked }.side(&mut fields, &mut report)?);
        }
        let read: HashSet<String> = report.read.drain(..).collect();
        for field in schema.fields() {
            let column = field.name();
            if read.contains(column) {
                report.read.push(column.clone());
                continue;
            }
            report.kept.push(column.clone());
            let (prefix, bare) = split(column, J::SIDES);
            if let Some(name) = meant(bare) {
                let name = if prefix.is_empty() { name } else { format!("{prefix}.{name}") };
                report.meant.push(Meant { column: column.clone(), name });
            }
        }
        report.spelled.dedup();
        for (side, name) in sides.iter_mut().zip(J::SIDES) {
            complete(side, name, asked.base.is_some(), &report)?;
            defaults_of(side, name, &mut report);
        }
        fields.extend(outputs.iter().map(Output::field));
        fields.extend(
            STATE.iter().map(|(name, means)| {
                described(name, DataType::Utf8, &Row { means, unit: &WORD, ..Row::BLANK }, "state")
            }),
        );
        let schema = Arc::new(Schema::new_with_metadata(fields, schema.metadata().clone()));
        Ok(Plan { sides, outputs, schema, report })
    }

    /// The line of one row of a batch; in a comparison also its second line.
    pub fn line(&self, batch: &RecordBatch, row: usize, side: usize) -> Result<Line> {
        let cells = self.cells(&batch.slice(row, 1))?;
        let (Some(side), Some(cells)) = (self.sides.get(side), cells.get(side)) else {
            return Err(Error::new(Code::NotATable, "side", "there is no such line in a row"));
        };
        let line = side.line(cells, 0, &mut Chains::new(), &mut Vec::new())?;
        checked(&line, "").map_err(blank::missing::<Line>)?;
        Ok(line)
    }

    /// The cells of a batch that each side needs.
    pub(super) fn cells(&self, batch: &RecordBatch) -> Result<Vec<SideCells>> {
        let of = |source: &Source| -> Result<Cells> {
            let Some(array) = source.column.and_then(|at| batch.columns().get(at)) else {
                return Ok(source.constant.clone());
            };
            let reading = Reading::of(array.data_type(), source.kind).unwrap_or(Reading::Empty);
            Cells::of(array, reading, source.kind, &source.path)
        };
        let each = self.sides.iter().map(|side| {
            Ok(SideCells {
                sources: side.sources.iter().map(of).collect::<Result<_>>()?,
                of_loop: side.of_loop.iter().map(of).collect::<Result<_>>()?,
                surveys: side.survey.and_then(|at| batch.columns().get(at)).map(Surveys::of).transpose()?,
                standard: side.standard.as_ref().map_or(Ok(Cells::Empty), of)?,
            })
        });
        each.collect()
    }
}

/// Refuses two columns of one name: what is kept and what is found must be told apart.
fn only_once(schema: &Schema, outputs: &[Output]) -> Result<()> {
    let mut seen = HashSet::new();
    for name in schema.fields().iter().map(|field| field.name().as_str()) {
        if !seen.insert(name) {
            let message = format!("there are two columns {name:?}: rename or drop one");
            return Err(Error::new(Code::DuplicateColumn, name, message).text_value(name));
        }
    }
    for name in outputs.iter().map(|output| output.path.as_str()).chain(STATE.map(|(name, _)| name)) {
        if !seen.insert(name) {
            let message = format!(
                "the column {name:?} would be written twice: the table has one of that name already, or it was asked for \
                 twice; rename or drop one"
            );
            return Err(Error::new(Code::DuplicateColumn, name, message).text_value(name));
        }
    }
    Ok(())
}

/// A name as its side and the rest; no side where it has no such prefix.
pub(super) fn split<'a>(name: &'a str, sides: &[&str]) -> (&'a str, &'a str) {
    name.split_once('.').filter(|(prefix, _)| sides.contains(prefix)).unwrap_or(("", name))
}

/// A required value that nothing gives: error before any row is computed.
fn complete(side: &mut Side, name: &str, has_base: bool, report: &Report) -> Result<()> {
    if side.survey.is_some() {
        return Ok(()); // each survey says what it has
    }
    let has = |path: &str| side.sources.iter().chain(&side.of_loop).any(|source| source.path == path);
    let mut lacking: Vec<(&str, &Row)> = Vec::new();
    let by_row = has(METHOD);
    if !has_base && !by_row {
        let given = side.sources.iter().filter_map(|source| source.path.strip_prefix("lubrication."));
        match the_method_with(given) {
            Some(word) => {
                side.template.put(&["lubrication", "method"], Datum::Text(word));
            }
            None => lacking.extend(VALUES.iter().filter(|known| known.name == METHOD).map(|k| (METHOD, k.row))),
        }
    }
    let has = |path: &str| side.sources.iter().chain(&side.of_loop).any(|source| source.path == path);
    for known in VALUES.iter().filter(|known| !known.name.starts_with("circuit.")) {
        let elsewhere = (side.standard.is_some() && known.name.starts_with("chain."))
            || ((by_row || !lacking.is_empty()) && known.name.starts_with("lubrication."));
        let steps: Vec<&str> = known.name.split('.').collect();
        if !elsewhere && side.template.get(&steps).is_some_and(is_blank) && !has(&known.name) {
            lacking.push((&known.name, known.row));
        }
    }
    if !has_base {
        let short = TwoSprocket::blank();
        for known in LOOP.iter() {
            let leaf = known.name.rsplit('.').next().unwrap_or_default();
            if short.get(&[leaf]).is_some_and(is_blank) && !has(&known.name) {
                lacking.push((&known.name, known.row));
            }
        }
    }
    if lacking.is_empty() {
        return Ok(());
    }
    let prefix = if name.is_empty() { String::new() } else { format!("{name}.") };
    let words = |(path, row): &(&str, &Row)| {
        let limit = if row.unit.is_of_numbers() { row.allowed.words(row.unit) } else { String::new() };
        let near = report.meant.iter().find(|meant| meant.name == *path);
        let near = near.map_or_else(String::new, |meant| format!("; the column {:?} looks like it", meant.column));
        format!("{prefix}{path} ({}{}{limit}{near})", row.means, if limit.is_empty() { "" } else { ": " })
    };
    let names: Vec<String> = lacking.iter().map(|(path, _)| format!("{prefix}{path}")).collect();
    let all: Vec<String> = lacking.iter().map(words).collect();
    let message = format!(
        "the table lacks {} that every line needs: {}. Give {} as columns, or by defaults= for all rows, or give whole \
         surveys in a column {SURVEY:?}",
        if all.len() == 1 { "a column".to_string() } else { format!("{} columns", all.len()) },
        all.join(", "),
        if all.len() == 1 { "it" } else { "them" },
    );
    Err(Error::new(Code::MissingColumns, names.join(", "), message).limit("columns named as the survey names them"))
}

/// The one method of oiling that has all these values, if there is one.
fn the_method_with<'a>(values: impl Iterator<Item = &'a str>) -> Option<&'static str> {
    let values: Vec<Vec<&str>> = values.map(|path| path.split('.').collect()).collect();
    let has = |word: &str| {
        let kind: fn(&[&str]) -> Option<Kind> = match word {
            "manual" => Manual::kind,
            "drip" => Drip::kind,
            "timed_spray" => Spray::kind,
            _ => Synchronised::kind,
        };
        values.iter().all(|steps| kind(steps).is_some())
    };
    let mut able = Lubrication::WORDS.iter().copied().filter(|word| !values.is_empty() && has(word));
    able.next().filter(|_| able.next().is_none())
}

/// Lists the defaults that hold because nothing gives the value.
fn defaults_of(side: &Side, name: &str, report: &mut Report) {
    if side.survey.is_some() {
        return; // each survey has its own
    }
    let prefix = if name.is_empty() { String::new() } else { format!("{name}.") };
    let has = |path: &str| side.sources.iter().chain(&side.of_loop).any(|s| s.path == path && s.column.is_some());
    let short = TwoSprocket::blank();
    let of_line = VALUES.iter().map(|known| {
        let steps: Vec<&str> = known.name.split('.').collect();
        let constant = side.sources.iter().find(|source| source.path == known.name);
        (known, constant.map_or_else(|| side.template.get(&steps), |source| Some(source.constant.at(0))))
    });
    let of_loop = LOOP.iter().filter(|known| !side.of_loop.is_empty() && only_loop(&known.name)).map(|known| {
        let constant = side.of_loop.iter().find(|source| source.path == known.name);
        let leaf = known.name.rsplit('.').next().unwrap_or_default();
        (known, constant.map_or_else(|| short.get(&[leaf]), |source| Some(source.constant.at(0))))
    });
    for (known, datum) in of_line.chain(of_loop) {
        let Some(datum) = datum.filter(|datum| !is_blank(*datum)) else { continue };
        let silent = matches!(datum, Datum::Nothing | Datum::Text(""));
        if !silent && !has(&known.name) && !is_replaced(side, &known.name) {
            let value = datum.number().map_or_else(|| datum.written(), |n| show::quantity(n, known.row.unit));
            report.defaults.push(Default { name: format!("{prefix}{}", known.name), value });
        }
    }
}

/// Whether a value of the circuit is one that the loop of two sprockets gives.
fn is_replaced(side: &Side, path: &str) -> bool {
    !side.of_loop.is_empty() && side.of_loop.iter().any(|source| source.path == path && source.column.is_some())
}
