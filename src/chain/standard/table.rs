//! Reading the data files: comma-separated, units in the column names, a source for every cell.

use super::cited::{self, Cited};
use crate::quantity::Class;
use std::sync::LazyLock;

/// Length of an inch, exact by definition (m).
const INCH: f64 = 0.0254;
/// Weight of a pound at standard gravity, exact by definition (N).
const POUND_FORCE: f64 = 4.448_221_615_260_5;

/// What one unit of a column, named by the end of its name, is in SI: a power of ten and a factor. The power is written
/// behind the printed decimal before it is read, so that 15.88 mm is the double nearest to 0.01588 m.
const UNITS: [(&str, &str, f64); 5] =
    [("_mm", "e-3", 1.0), ("_kn", "e3", 1.0), ("_in", "", INCH), ("_lbf", "", POUND_FORCE), ("_kg_per_m", "", 1.0)];

/// A printed number in the unit of its column, in SI.
fn si(number: &str, column: &str) -> Option<f64> {
    let (_, power, factor) = UNITS.iter().find(|(unit, ..)| column.ends_with(unit))?;
    Some(format!("{number}{power}").parse::<f64>().ok()? * factor)
}

/// Key, class and text of every source.
static SOURCES: LazyLock<Vec<(&'static str, Class, &'static str)>> = LazyLock::new(|| {
    let source = |line: &'static str| {
        let mut cells = line.splitn(3, ';');
        let (key, class, text) = (cells.next()?, cells.next()?, cells.next()?);
        Some((key, cited::class(class)?, text))
    };
    lines(include_str!("../tables/sources.csv")).filter_map(source).collect()
});

/// One data file.
pub(super) struct Table {
    columns: Vec<&'static str>,
    rows: Vec<Vec<&'static str>>,
}

impl Table {
    pub(super) fn read(text: &'static str) -> Self {
        let mut lines = lines(text).map(|line| line.split(',').collect::<Vec<_>>());
        Table { columns: lines.next().unwrap_or_default(), rows: lines.collect() }
    }

    /// The designations, in the order of the standard.
    pub(super) fn designations(&self) -> impl Iterator<Item = &'static str> {
        self.rows.iter().filter_map(|row| row.first().copied())
    }

    /// The row of a designation.
    pub(super) fn row(&self, designation: &str) -> Option<Row<'_>> {
        let cells = self.rows.iter().find(|row| row.first() == Some(&designation))?;
        Some(Row { table: self, cells })
    }
}

/// One chain of a data file.
#[derive(Clone, Copy)]
pub(super) struct Row<'a> {
    table: &'a Table,
    cells: &'a [&'static str],
}

impl Row<'_> {
    /// The designation as the standard writes it.
    pub(super) fn designation(&self) -> &'static str {
        self.cells.first().copied().unwrap_or_default()
    }

    /// The text of a cell; `None` where it is empty or the table has no such column.
    pub(super) fn text(&self, column: &str) -> Option<&'static str> {
        let place = self.table.columns.iter().position(|name| *name == column)?;
        self.cells.get(place).copied().filter(|cell| !cell.is_empty())
    }

    /// The value of a cell in SI, with its source.
    pub(super) fn value(&self, column: &str) -> Option<Cited> {
        let cell = self.text(column)?;
        let (number, key) = cell.split_once('@').or_else(|| Some((cell, self.text("source")?)))?;
        let (_, class, source) = SOURCES.iter().find(|(known, ..)| *known == key)?;
        Some(Cited { value: si(number, column)?, class: *class, source: (*source).into() })
    }

    /// A list of numbers separated by spaces, in SI.
    pub(super) fn list(&self, column: &str) -> Vec<f64> {
        self.text(column).unwrap_or_default().split(' ').filter_map(|number| si(number, column)).collect()
    }
}

/// The lines of a data file that are neither empty nor remarks.
fn lines(text: &'static str) -> impl Iterator<Item = &'static str> {
    text.lines().filter(|line| !line.is_empty() && !line.starts_with('#'))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_cell_can_be_read_and_has_a_known_source() {
        let files = [
            include_str!("../tables/iso606.csv"),
            include_str!("../tables/asme_b29_1.csv"),
            include_str!("../tables/iso1977.csv"),
            include_str!("../tables/iso1275.csv"),
            include_str!("../tables/asme_b29_22.csv"),
        ];
        for table in files.map(Table::read) {
            let mut seen = Vec::new();
            for designation in table.designations() {
                let row = table.row(designation).unwrap();
                assert_eq!(row.cells.len(), table.columns.len(), "{designation}");
                assert!(!seen.contains(&designation), "{designation} twice");
                seen.push(designation);
                for column in &table.columns {
                    let number = UNITS.iter().any(|(unit, ..)| column.ends_with(unit)) && *column != "pitches_mm";
                    if number && row.text(column).is_some() {
                        let cited = row.value(column);
                        assert!(cited.is_some_and(|c| c.value > 0.0), "{designation} {column}");
                    }
                }
            }
        }
    }

    #[test]
    fn millimetres_become_the_nearest_metres() {
        let table = Table::read(include_str!("../tables/iso606.csv"));
        assert_eq!(table.row("16B").unwrap().value("pitch_mm").unwrap().value, 0.0254);
        assert_eq!(table.row("16B").unwrap().value("pitch_mm").unwrap().class, Class::Read);
    }
}
