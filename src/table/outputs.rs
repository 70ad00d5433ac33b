//! Columns of results: which, of what type, and how they are filled.

use super::job::Job;
use crate::error::{Code, Error, Result};
use crate::quantity::{Datum, Field, Kind, Row, no_such_path, row_of};
use arrow_array::builder::{BooleanBuilder, Float64Builder, Int64Builder, StringBuilder};
use arrow_array::{ArrayRef, new_empty_array};
use arrow_schema::{DataType, Field as ArrowField};
use std::collections::HashMap;
use std::sync::Arc;

/// The results of a line that a table shows where nothing else was asked for.
pub const OUTPUTS: &[&str] = &[
    "kinematics.joints",
    "kinematics.circuit_time_s",
    "tension.pull_n",
    "tension.tight_n",
    "joint.mu_joint_drive",
    "fill.never_reached",
    "fill.worst_wait_h",
    "fill.mean_fill",
    "fill.lowest_fill_reached",
    "wear.elongation_1_year_pct",
    "wear.life_years",
    "wear.governs",
    "wear.service_life_years",
    "drive.load",
    "drive.current_a",
    "drive.energy_kwh_per_year",
    "supply.applied_l_per_year",
    "supply.dripped_share",
    "cost.oil",
    "cost.application_labour",
    "cost.energy",
    "cost.cleaning",
    "cost.downtime",
    "cost.chain",
    "cost.sprockets",
    "cost.waste",
    "cost.upkeep",
    "cost.total_per_year",
];

/// What a row became, beside its results: `ok`, `warning` or `error`; codes; a sentence.
pub(super) const STATE: [(&str, &str); 3] = [
    ("status", "what became of the row: ok, warning (the numbers stand, read them with care) or error (no numbers)"),
    ("code", "codes of the error or of the warnings, in alphabetical order"),
    ("message", "what is wrong with the row and what to change; names of empty cells for which a default stood in"),
];

/// One column of results.
#[derive(Debug, Clone)]
pub(super) struct Output {
    pub path: String,
    pub kind: Kind,
    pub row: &'static Row,
}

impl Output {
    /// The columns that were asked for, or those of the job.
    pub fn all<J: Job>(asked: Option<&[String]>) -> Result<Vec<Output>> {
        let usual = || J::OUTPUTS.iter().map(|path| (*path).to_string()).collect::<Vec<_>>();
        let paths = asked.map_or_else(usual, <[String]>::to_vec);
        let each = paths.into_iter().map(|path| {
            let kind = J::Out::kind(&path.split('.').collect::<Vec<_>>());
            let row = row_of::<J::Out>(&path);
            match (kind, row) {
                (Some(kind), Some(row)) => Ok(Output { path, kind, row }),
                _ => {
                    let error = no_such_path::<J::Out>(&path);
                    let message = format!("{path} is no single value of a result: {}", error.limit);
                    Err(Error::new(Code::UnknownOutput, &path, message).text_value(&path).limit(error.limit))
                }
            }
        });
        each.collect()
    }

    /// Its column as Arrow describes it, with unit and meaning.
    pub fn field(&self) -> ArrowField {
        described(&self.path, data_type(self.kind), self.row, "result")
    }
}

pub(super) fn data_type(kind: Kind) -> DataType {
    match kind {
        Kind::Number => DataType::Float64,
        Kind::Whole => DataType::Int64,
        Kind::Flag => DataType::Boolean,
        Kind::Text => DataType::Utf8,
    }
}

/// A column with unit and meaning from the register.
pub(super) fn described(name: &str, data: DataType, row: &Row, role: &str) -> ArrowField {
    let words = [("unit", row.unit.label), ("meaning", row.means), ("role", role)];
    let metadata: HashMap<String, String> = words.iter().map(|(key, text)| ((*key).into(), (*text).into())).collect();
    ArrowField::new(name, data, true).with_metadata(metadata)
}

/// Results of some rows, column by column.
pub(super) struct Filled {
    columns: Vec<Column>,
    state: [StringBuilder; 3],
}

enum Column {
    Numbers(Float64Builder),
    Wholes(Int64Builder),
    Flags(BooleanBuilder),
    Words(StringBuilder),
}

impl Filled {
    pub fn new(outputs: &[Output], rows: usize) -> Self {
        let columns = outputs.iter().map(|output| match output.kind {
            Kind::Number => Column::Numbers(Float64Builder::with_capacity(rows)),
            Kind::Whole => Column::Wholes(Int64Builder::with_capacity(rows)),
            Kind::Flag => Column::Flags(BooleanBuilder::with_capacity(rows)),
            Kind::Text => Column::Words(StringBuilder::with_capacity(rows, 8 * rows)),
        });
        Filled {
            columns: columns.collect(),
            state: std::array::from_fn(|_| StringBuilder::with_capacity(rows, 16 * rows)),
        }
    }

    /// Adds a row: the value of each column, and its state.
    pub fn add<'a>(&mut self, values: impl Iterator<Item = Option<Datum<'a>>>, state: [Option<&str>; 3]) {
        for (column, datum) in self.columns.iter_mut().zip(values) {
            let datum = datum.unwrap_or(Datum::Nothing);
            match (column, datum) {
                (Column::Numbers(cells), datum) => cells.append_option(datum.number()),
                (Column::Wholes(cells), datum) => cells.append_option(datum.whole()),
                (Column::Flags(cells), Datum::Flag(flag)) => cells.append_value(flag),
                (Column::Flags(cells), _) => cells.append_null(),
                (Column::Words(cells), Datum::Text(text)) => cells.append_value(text),
                (Column::Words(cells), _) => cells.append_null(),
            }
        }
        for (cells, text) in self.state.iter_mut().zip(state) {
            cells.append_option(text);
        }
    }

    /// The columns, results first.
    pub fn finish(mut self) -> Vec<ArrayRef> {
        let columns = self.columns.iter_mut().map(|column| -> ArrayRef {
            match column {
                Column::Numbers(cells) => Arc::new(cells.finish()),
                Column::Wholes(cells) => Arc::new(cells.finish()),
                Column::Flags(cells) => Arc::new(cells.finish()),
                Column::Words(cells) => Arc::new(cells.finish()),
            }
        });
        let mut columns: Vec<ArrayRef> = columns.collect();
        columns.extend(self.state.iter_mut().map(|cells| Arc::new(cells.finish()) as ArrayRef));
        columns
    }
}

/// Columns of no rows.
pub(super) fn no_rows(fields: &[ArrowField]) -> Vec<ArrayRef> {
    fields.iter().map(|field| new_empty_array(field.data_type())).collect()
}
