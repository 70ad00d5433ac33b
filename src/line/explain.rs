//! Where the numbers of an evaluation came from: survey, default, table of a standard, other result.

use super::{Evaluation, Line};
use crate::error::Result;
use crate::quantity::{Class, Explanation, Field, Noun, Tree, Value, explain};

impl Evaluation {
    /// Explains the quantity at `path`: formula, numbers put in with units, where each came from, source and its class.
    ///
    /// A result by its path (`joint.events.2.friction`, `joint.pressure_mpa` for the event with the greatest), an input by
    /// its survey key (`chain.pitch_mm`). Fails for a path that is none, naming the nearest.
    pub fn explain(&self, path: &str) -> Result<Explanation> {
        explain(self, path, &|full| full.strip_prefix("line.").map(|key| origin(&self.line, key)))
    }
}

/// Where the value of a survey key came from, in words.
pub fn origin(line: &Line, key: &str) -> String {
    let tree = line.write();
    let steps: Vec<&str> = key.split('.').collect();
    let Some(here) = tree.at(&steps) else { return "survey".into() };
    if here.value == Value::Nothing {
        return "not given".into();
    }
    if let Some(cited) = key.strip_prefix("chain.").and_then(|name| line.chain.table_value(name)) {
        return format!(
            "table of {}: {} [{}]",
            line.chain.designation.as_deref().unwrap_or(""),
            cited.source,
            cited.class.as_str()
        );
    }
    let without = removed(&tree, &steps);
    let same = |other: &Line| other.write().at(&steps).is_some_and(|value| value == here);
    if Line::from_tree(&without).as_ref().is_ok_and(same) { "default".into() } else { Class::Survey.as_str().into() }
}

/// The tree without the value at a path.
fn removed(tree: &Tree, steps: &[&str]) -> Tree {
    let Some((first, rest)) = steps.split_first() else { return tree.clone() };
    let value = match &tree.value {
        Value::Table(entries) => Value::Table(
            entries
                .iter()
                .filter(|(name, _)| !(rest.is_empty() && name == first))
                .map(|(name, below)| (name.clone(), if name == first { removed(below, rest) } else { below.clone() }))
                .collect(),
        ),
        Value::List(items) => Value::List(
            items
                .iter()
                .enumerate()
                .map(|(i, item)| if first.parse() == Ok(i) { removed(item, rest) } else { item.clone() })
                .collect(),
        ),
        other => other.clone(),
    };
    Tree { value, line: tree.line }
}
