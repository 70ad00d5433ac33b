//! One line of a blank survey: key, value or blank, and what belongs there.

use crate::quantity::{Row, Tree, Value};

/// How a key stands in the file.
#[derive(Clone, Copy, PartialEq)]
pub enum Stands {
    /// Empty: it must be filled in.
    Asked,
    /// Commented out, with what holds where nobody says.
    Offered,
}

pub struct Key<'a> {
    pub row: &'static Row,
    /// A usual figure, or what holds where nobody says.
    pub value: Option<&'a Tree>,
    pub stands: Stands,
    /// Whether a blank is filled with the usual figure.
    pub filled: bool,
}

/// Column at which the comments begin.
const COMMENT: usize = 38;

impl Key<'_> {
    /// The line; none for a key that holds a table, which has a heading of its own.
    pub fn line(&self) -> Option<String> {
        if self.value.is_some_and(holds_table) {
            return None;
        }
        let written = self.value.map(Tree::written).unwrap_or_default();
        let start = match (self.stands, self.filled) {
            (Stands::Asked, false) => format!("{} =", self.row.name),
            (Stands::Asked, true) => format!("{} = {written}", self.row.name),
            (Stands::Offered, _) => format!("# {} = {}", self.row.name, self.offered(&written)),
        };
        Some(format!("{:<COMMENT$} # {}\n", start.trim_end(), self.comment(&written)))
    }

    /// The value that holds where nobody says; nothing for a key that then stands for nothing.
    fn offered<'b>(&self, written: &'b str) -> &'b str {
        if self.row.default == "None" { "" } else { written }
    }

    fn comment(&self, written: &str) -> String {
        let row = self.row;
        let bounded = |range: &crate::quantity::Range| range.low.is_finite() || range.high.is_finite();
        let range = if bounded(&row.usual) {
            format!("usually {}", row.usual.words(row.unit))
        } else if bounded(&row.allowed) && row.unit.is_of_numbers() {
            row.allowed.words(row.unit)
        } else {
            row.unit.label.to_string()
        };
        let example = if self.stands == Stands::Asked || row.default == "None" { written } else { "" };
        let example = if example.is_empty() { String::new() } else { format!("; e.g. {example}") };
        if range.is_empty() { format!("{}{example}", row.means) } else { format!("{range}; {}{example}", row.means) }
    }
}

fn holds_table(tree: &Tree) -> bool {
    match &tree.value {
        Value::Table(_) => true,
        Value::List(items) => items.iter().any(holds_table),
        _ => false,
    }
}
