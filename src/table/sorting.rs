//! Columns, and values for all rows, sorted to the lines that they say something of.

use super::SURVEY;
use super::cells::{Cells, Reading, Same};
use super::names::{LOOP, STANDARD, VALUES, only_loop};
use super::outputs::described;
use super::plan::{Asked, Report, split};
use super::side::{Side, Source};
use super::survey::Surveys;
use crate::error::{Code, Error, Result};
use crate::line::Line;
use crate::quantity::unit::WORD;
use crate::quantity::{Field, Kind, Row, Tree, Value, no_such_path, row_of};
use arrow_schema::{DataType, Field as ArrowField, Schema};

/// What one line of each row is made from.
pub(super) struct Sorting<'a> {
    /// Its name: `now`, `proposed`; empty where a row holds one line.
    pub name: &'a str,
    /// The names of all lines of a row.
    pub sides: &'a [&'a str],
    pub schema: &'a Schema,
    pub asked: &'a Asked,
}

impl Sorting<'_> {
    /// Finds what this line is made from, describes the columns that are read, and notes them.
    pub fn side(&self, fields: &mut [ArrowField], report: &mut Report) -> Result<Side> {
        let mut side = Side {
            sources: Vec::new(),
            of_loop: Vec::new(),
            template: self.asked.base.clone().unwrap_or_else(Line::blank),
            survey: None,
            standard: None,
        };
        let columns: Vec<(usize, &str, bool)> = self.columns();
        let given: Vec<(&str, &Tree)> = self.given();
        let short = columns.iter().any(|(_, name, _)| only_loop(name)) || given.iter().any(|(name, _)| only_loop(name));
        for (name, tree) in given {
            let kind = kind_of(name, short).ok_or_else(|| no_such_path::<Line>(name))?;
            let constant = same(name, tree, kind)?;
            place(&mut side, Source { path: name.into(), column: None, kind, constant, shared: false }, short);
        }
        for (at, name, shared) in columns {
            let field = self.schema.field(at);
            let row = if name == SURVEY {
                if !Surveys::can_be(field.data_type()) {
                    return Err(wrong_type(field, "JSON text or structs", "whole surveys"));
                }
                side.survey = Some(at);
                Row { means: "the whole survey of the line", unit: &WORD, ..Row::BLANK }
            } else if let Some(kind) = kind_of(name, short) {
                let row = row_of_name(name);
                let reading = Reading::of(field.data_type(), kind);
                let reading = reading.ok_or_else(|| wrong_type(field, words(kind), row.means))?;
                if reading == Reading::Spelled && kind != Kind::Flag {
                    report.spelled.push(field.name().clone());
                }
                place(
                    &mut side,
                    Source { path: name.into(), column: Some(at), kind, constant: Cells::Empty, shared },
                    short,
                );
                row
            } else {
                continue;
            };
            let mut metadata = field.metadata().clone();
            metadata.extend(described("", DataType::Null, &row, "input").metadata().clone());
            fields[at] = field.clone().with_metadata(metadata);
            report.read.push(field.name().clone());
        }
        Ok(side)
    }

    /// Columns of this line: number, name without its side, whether others have it too. Shared ones come first, so that
    /// the line's own are put over them.
    fn columns(&self) -> Vec<(usize, &str, bool)> {
        let first = self.sides.first() == Some(&self.name);
        let fields = self.schema.fields().iter().enumerate();
        let mut columns: Vec<(usize, &str, bool)> = fields
            .filter_map(|(at, field)| {
                let (prefix, name) = split(field.name(), self.sides);
                let bare = prefix.is_empty();
                let mine = if bare { first || !self.asked.separate } else { prefix == self.name };
                mine.then_some((at, name, bare && self.sides.len() > 1 && !self.asked.separate))
            })
            .collect();
        columns.sort_by_key(|(_, _, shared)| !shared);
        columns
    }

    /// Values for all rows of this line; those of groups one by one.
    fn given(&self) -> Vec<(&str, &Tree)> {
        let mine = |(path, tree): &'_ (String, Tree)| -> bool {
            let (prefix, _) = split(path, self.sides);
            let _ = tree;
            prefix.is_empty() || prefix == self.name
        };
        let given = self.asked.given.iter().filter(|given| mine(given));
        let mut given: Vec<(&str, &Tree)> = given.map(|(path, tree)| (split(path, self.sides).1, tree)).collect();
        // the method decides which other values there are
        given.sort_by_key(|(name, _)| *name != super::names::METHOD);
        given
    }
}

/// Puts a source where its name belongs; a name of both circuit and loop belongs to both.
fn place(side: &mut Side, source: Source, short: bool) {
    if source.path == STANDARD {
        side.standard = Some(source);
        return;
    }
    if short && LOOP.iter().any(|known| known.name == source.path) {
        side.of_loop.push(source.clone());
    }
    if !only_loop(&source.path) {
        side.sources.push(source);
    }
}

/// What a value of this name is, if a line has such a value.
fn kind_of(name: &str, short: bool) -> Option<Kind> {
    if name == STANDARD {
        return Some(Kind::Text);
    }
    let of_line = || Line::kind(&name.split('.').collect::<Vec<_>>());
    let of_loop = || LOOP.iter().filter(|_| short).find(|known| known.name == name).map(|known| known.kind);
    of_line().or_else(of_loop)
}

fn row_of_name(name: &str) -> Row {
    let known = LOOP.iter().chain(VALUES.iter()).find(|known| known.name == name).map(|known| *known.row);
    let standard = Row { means: "standard that the chain is taken from", unit: &WORD, ..Row::BLANK };
    known.or_else(|| row_of::<Line>(name).copied()).unwrap_or(standard)
}

fn words(kind: Kind) -> &'static str {
    match kind {
        Kind::Number => "numbers",
        Kind::Whole => "whole numbers",
        Kind::Flag => "true and false",
        Kind::Text => "text",
    }
}

fn wrong_type(field: &ArrowField, wanted: &str, means: &str) -> Error {
    let (name, data) = (field.name(), field.data_type());
    let message = format!("the column {name} is of type {data}, but {means} must be {wanted}");
    Error::new(Code::ColumnType, name, message).text_value(data.to_string()).limit(wanted)
}

/// A value for all rows.
fn same(name: &str, tree: &Tree, kind: Kind) -> Result<Cells> {
    let wrong = || {
        let message =
            format!("{name} = {} is {}, but a value for all rows must be {}", tree.written(), tree.kind(), words(kind));
        Error::new(Code::WrongType, name, message).text_value(tree.written())
    };
    Ok(match (&tree.value, kind) {
        (Value::Nothing, _) => Cells::Empty,
        (Value::Flag(flag), Kind::Flag) => Cells::Same(Same::Flag(*flag)),
        (Value::Whole(number), Kind::Number | Kind::Whole) => Cells::Same(Same::Whole(*number)),
        (Value::Number(number), Kind::Number | Kind::Whole) => Cells::Same(Same::Number(*number)),
        (Value::Text(text), Kind::Text) => Cells::Same(Same::Word(text.clone())),
        _ => return Err(wrong()),
    })
}
