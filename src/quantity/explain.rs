//! A number that explains itself: its formula, the numbers put in, where each came from.

use super::show::{self, escaped};
use super::tree::{Tree, Value};
use super::{Noun, Row, nearest, registered};
use crate::error::{Code, Error, Result};

/// A number that was put into a formula.
#[derive(Debug, Clone, PartialEq)]
pub struct Ingredient {
    /// Its path.
    pub path: String,
    /// Its value and unit, as people read it.
    pub value: String,
    /// What it means.
    pub means: &'static str,
    /// Survey, default, table, other result.
    pub origin: String,
}

/// One number, explained.
#[derive(Debug, Clone, PartialEq)]
pub struct Explanation {
    /// Its path, with the number of the list item that was explained.
    pub path: String,
    /// What it means.
    pub means: &'static str,
    /// Its value and unit, as people read it.
    pub value: String,
    /// The formula with names; empty for an input.
    pub formula: String,
    /// The formula with numbers.
    pub filled: String,
    /// The numbers put in, and where they came from.
    pub ingredients: Vec<Ingredient>,
    /// Where the number itself came from.
    pub origin: String,
    /// Where the relation, or the default, comes from.
    pub source: &'static str,
    /// How well that is founded.
    pub class: &'static str,
    /// Low and high of a default or closure; empty where none is stated.
    pub spread: String,
}

/// Where a value under a path came from, in words; `None` for a computed result.
pub type Origin<'a> = dyn Fn(&str) -> Option<String> + 'a;

/// Explains the quantity at `path` of `root`; `origin` tells where inputs came from.
///
/// `path` is dotted; an item of a list by its number. Without the number, the item with the greatest value is explained.
pub fn explain<T: Noun>(root: &T, path: &str, origin: &Origin) -> Result<Explanation> {
    let tree = root.write();
    let mut rows = Vec::new();
    T::register(String::new(), &Row::BLANK, &mut rows);
    let known = Known { tree: &tree, rows: &rows };
    let Some((full, row)) = known.find(path) else {
        let near = nearest(path, rows.iter().map(|(path, _)| path.as_str()));
        let hint = near.map_or_else(String::new, |near| format!(": did you mean {near}?"));
        let message = format!("{path} is not a quantity of this result{hint}");
        return Err(Error::new(Code::UnknownKey, path, message).text_value(path).limit(near.unwrap_or_default()));
    };
    let full = known.with_item(&full);
    let base = ["now.", "proposed."].into_iter().find(|base| full.starts_with(base)).unwrap_or("");
    let mut ingredients: Vec<Ingredient> = Vec::new();
    let (mut formula, mut filled) = (String::new(), String::new());
    let mut rest = row.formula;
    while let Some(open) = rest.find('{') {
        let (before, after) = rest.split_at(open);
        let close = after.find('}').unwrap_or(after.len() - 1);
        let name = &after[1..close];
        formula += before;
        filled += before;
        formula += name.rsplit('.').next().unwrap_or(name);
        if let Some(ingredient) = known.ingredient(base, &full, name, origin) {
            filled += &ingredient.value;
            if ingredients.iter().all(|other| other.path != ingredient.path) {
                ingredients.push(ingredient);
            }
        } else {
            filled += "–";
        }
        rest = &after[close + 1..];
    }
    formula += rest;
    filled += rest;
    Ok(Explanation {
        means: row.means,
        value: known.value(&full, row),
        formula,
        filled,
        ingredients,
        origin: origin(&full).unwrap_or_else(|| "computed".into()),
        source: row.source,
        class: row.class.as_str(),
        spread: row.spread.words(),
        path: full,
    })
}

/// The values of a result and the rows that describe them.
struct Known<'a> {
    tree: &'a Tree,
    rows: &'a [(String, &'static Row)],
}

impl Known<'_> {
    fn row(&self, path: &str) -> Option<&'static Row> {
        let plain = registered(path);
        self.rows.iter().find(|(known, _)| *known == plain).map(|(_, row)| *row)
    }

    /// The full path and row of a path that may leave out `line.`, or the list inside a group.
    fn find(&self, path: &str) -> Option<(String, &'static Row)> {
        for base in ["", "line."] {
            let full = format!("{base}{path}");
            if let Some(row) = self.row(&full) {
                return Some((full, row));
            }
        }
        for side in ["now.", "proposed."] {
            if let Some(below) = path.strip_prefix(side) {
                let full = format!("{side}line.{below}");
                if let Some(row) = self.row(&full) {
                    return Some((full, row));
                }
            }
        }
        let (group, name) = path.rsplit_once('.')?;
        let inside = |known: &str| {
            known.strip_prefix(group).is_some_and(|rest| rest.starts_with('.')) && known.ends_with(&format!(".{name}"))
        };
        self.rows.iter().find(|(known, _)| inside(known)).map(|(known, row)| (known.clone(), *row))
    }

    /// The same path with the number of the list item that has the greatest value, where a list is on the way.
    fn with_item(&self, path: &str) -> String {
        let mut done: Vec<String> = Vec::new();
        let mut here = self.tree;
        let steps: Vec<&str> = path.split('.').collect();
        for (i, step) in steps.iter().enumerate() {
            if let (Value::List(items), Err(_)) = (&here.value, step.parse::<usize>()) {
                let rest = &steps[i..];
                let number = |item: &Tree| match item.at(rest).map(|tree| &tree.value) {
                    Some(Value::Number(number)) => *number,
                    Some(Value::Whole(number)) => *number as f64,
                    Some(_) => f64::MIN,
                    None => f64::NEG_INFINITY,
                };
                let greatest = (0..items.len()).max_by(|a, b| number(&items[*a]).total_cmp(&number(&items[*b])));
                let Some(greatest) = greatest else { return path.to_string() };
                done.push(greatest.to_string());
                here = &items[greatest];
            }
            done.push((*step).to_string());
            match here.at(&[*step]) {
                Some(next) => here = next,
                None => {
                    return done
                        .into_iter()
                        .chain(steps[i + 1..].iter().map(|s| (*s).to_string()))
                        .collect::<Vec<_>>()
                        .join(".");
                }
            }
        }
        done.join(".")
    }

    /// The value at a path, with its unit; all values where a list is on the way.
    fn value(&self, path: &str, row: &Row) -> String {
        let steps: Vec<&str> = path.split('.').collect();
        let mut found = Vec::new();
        gather(self.tree, &steps, &mut found);
        let text = match found.as_slice() {
            [] => return "not given".into(),
            [one] => show::value_of(one, row),
            many => {
                let mut shown: Vec<String> = many.iter().map(|tree| show::value_of(tree, row)).collect();
                shown.dedup();
                let more = if shown.len() > 6 { ", …" } else { "" };
                if shown.len() == 1 {
                    shown.remove(0)
                } else {
                    format!("[{}{more}]", shown[..shown.len().min(6)].join(", "))
                }
            }
        };
        if text == "–" {
            return "not given".into();
        }
        if row.unit.label.is_empty() { text } else { format!("{text} {}", row.unit.label_in(self.tree.currency())) }
    }

    /// One number of a formula: `name` is relative to the evaluation that `full` belongs to.
    fn ingredient(&self, base: &str, full: &str, name: &str, origin: &Origin) -> Option<Ingredient> {
        let base = if name.starts_with("now.") || name.starts_with("proposed.") { "" } else { base };
        let bases = [base.to_string(), format!("{base}line."), String::new()];
        let (path, row) =
            bases.iter().map(|base| format!("{base}{name}")).find_map(|path| self.row(&path).map(|row| (path, row)))?;
        let path = same_item(full, &path);
        let origin = origin(&path).unwrap_or_else(|| "result".into());
        Some(Ingredient { value: self.value(&path, row), means: row.means, origin, path })
    }
}

/// All values at a path, through every item of the lists on the way.
fn gather<'a>(tree: &'a Tree, steps: &[&str], found: &mut Vec<&'a Tree>) {
    let Some((step, rest)) = steps.split_first() else {
        if tree.value != Value::Nothing {
            found.push(tree);
        }
        return;
    };
    match (&tree.value, step.parse::<usize>()) {
        (Value::List(items), Err(_)) => items.iter().for_each(|item| gather(item, steps, found)),
        _ => {
            if let Some(next) = tree.at(&[*step]) {
                gather(next, rest, found);
            }
        }
    }
}

/// `path` with the list items that `full` has on the part that they share.
fn same_item(full: &str, path: &str) -> String {
    let mut out: Vec<&str> = Vec::new();
    let mut ours = full.split('.').peekable();
    let mut shared = true;
    for step in path.split('.') {
        if shared {
            if let Some(number) = ours.next_if(|step| step.parse::<usize>().is_ok()) {
                out.push(number);
            }
            shared = ours.next() == Some(step);
        }
        out.push(step);
    }
    out.join(".")
}

impl Explanation {
    /// As text, line by line.
    pub fn text(&self) -> String {
        let mut text = format!("{} = {}\n  {}\n", self.path, self.value, self.means);
        if self.formula.is_empty() {
            text += &format!("  from: {}\n", self.origin);
        } else {
            text += &format!("  = {}\n  = {}\n", self.formula, self.filled);
        }
        for ingredient in &self.ingredients {
            text += &format!(
                "    {} = {}  ({}; {})\n",
                ingredient.path, ingredient.value, ingredient.means, ingredient.origin
            );
        }
        if !self.source.is_empty() {
            text += &format!("  source: {} [{}]\n", self.source, self.class);
        } else {
            text += &format!("  [{}]\n", self.class);
        }
        if !self.spread.is_empty() {
            text += &format!("  spread: {}\n", self.spread);
        }
        text
    }

    /// As HTML.
    pub fn html(&self) -> String {
        let mut html = format!(
            "<div class=\"pinfilm\"><p><code>{}</code> = <b>{}</b><br>{}</p>",
            escaped(&self.path),
            escaped(&self.value),
            escaped(self.means)
        );
        if self.formula.is_empty() {
            html += &format!("<p>from: {}</p>", escaped(&self.origin));
        } else {
            html += &format!("<p>= {}<br>= {}</p>", escaped(&self.formula), escaped(&self.filled));
        }
        if !self.ingredients.is_empty() {
            html += "<table><thead><tr style=\"text-align:left\"><th>name</th><th>value</th><th>meaning</th><th>from</th></tr>\
                     </thead><tbody>";
            for ingredient in &self.ingredients {
                html += &format!(
                    "<tr style=\"text-align:left;vertical-align:top\"><td><code>{}</code></td>\
                     <td style=\"white-space:nowrap\">{}</td><td style=\"text-align:left\">{}</td>\
                     <td style=\"text-align:left\">{}</td></tr>",
                    escaped(&ingredient.path),
                    escaped(&ingredient.value),
                    escaped(ingredient.means),
                    escaped(&ingredient.origin)
                );
            }
            html += "</tbody></table>";
        }
        let spread = if self.spread.is_empty() { String::new() } else { format!("; spread: {}", self.spread) };
        html += &format!("<p>source: {} [{}]{}</p></div>", escaped(self.source), self.class, escaped(&spread));
        html
    }
}
