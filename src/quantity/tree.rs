//! Survey data before it is typed: what a TOML or JSON file, or a dictionary, says, with the line it stood on.

use crate::error::{Code, Error, Result};
use serde::de::{self, Deserialize, Deserializer, MapAccess, SeqAccess, Visitor};
use serde::ser::{Serialize, SerializeMap, SerializeSeq, Serializer};
use std::fmt;
use std::sync::Arc;

/// One value and the line of the file it stood on.
#[derive(Debug, Clone)]
pub struct Tree {
    /// What was said.
    pub value: Value,
    /// Where, in a file.
    pub line: Option<usize>,
}

/// The kinds of value that a survey can hold.
#[derive(Debug, Clone, PartialEq)]
pub enum Value {
    /// Not given (`null`, `None`).
    Nothing,
    /// True or false.
    Flag(bool),
    /// A whole number.
    Whole(i64),
    /// A number.
    Number(f64),
    /// A word.
    Text(String),
    /// A list.
    List(Vec<Tree>),
    /// Keys and values, in their order.
    Table(Vec<(String, Tree)>),
}

/// The file that a survey was read from, kept to say on which line a value stood. It is no part of the survey: two surveys
/// with the same values are equal, wherever they came from.
#[derive(Debug, Clone, Default)]
pub struct Lines(Option<Arc<Tree>>);

impl PartialEq for Lines {
    fn eq(&self, _: &Self) -> bool {
        true
    }
}

impl Lines {
    /// The lines of survey data; nothing is kept of data that came from no file.
    pub fn of(tree: &Tree) -> Lines {
        Lines(tree.line.map(|_| Arc::new(tree.clone())))
    }

    /// The line of the value at a dotted path, or of the table that would hold it.
    pub fn line_of(&self, path: &str) -> Option<usize> {
        let mut here: &Tree = self.0.as_ref()?;
        let mut line = None;
        for step in path.split('.') {
            let Some(next) = here.at(&[step]) else { break };
            here = next;
            line = here.line.or(line);
        }
        line
    }
}

impl PartialEq for Tree {
    fn eq(&self, other: &Self) -> bool {
        self.value == other.value
    }
}

impl From<Value> for Tree {
    fn from(value: Value) -> Self {
        Tree { value, line: None }
    }
}

impl Tree {
    /// A table without keys.
    pub const EMPTY: Tree = Tree { value: Value::Table(Vec::new()), line: None };

    /// The value under `key`, if this is a table that has it and it is not nothing.
    pub fn get(&self, key: &str) -> Option<&Tree> {
        match &self.value {
            Value::Table(entries) => entries
                .iter()
                .find(|(name, _)| name == key)
                .map(|(_, tree)| tree)
                .filter(|tree| tree.value != Value::Nothing),
            _ => None,
        }
    }

    /// What kind of value this is, for messages.
    pub fn kind(&self) -> &'static str {
        match self.value {
            Value::Nothing => "nothing",
            Value::Flag(_) => "true/false",
            Value::Whole(_) => "a whole number",
            Value::Number(_) => "a number",
            Value::Text(_) => "text",
            Value::List(_) => "a list",
            Value::Table(_) => "a table of keys",
        }
    }

    /// The value as it would be written.
    pub fn written(&self) -> String {
        match &self.value {
            Value::Text(text) => format!("{text:?}"),
            _ => serde_json::to_string(self).unwrap_or_default(),
        }
    }

    /// The value at a dotted path; list items by their number.
    pub fn at(&self, path: &[&str]) -> Option<&Tree> {
        let Some((first, rest)) = path.split_first() else { return Some(self) };
        match &self.value {
            Value::Table(entries) => entries.iter().find(|(name, _)| name == first)?.1.at(rest),
            Value::List(items) => items.get(first.parse::<usize>().ok()?)?.at(rest),
            _ => None,
        }
    }

    /// The currency of the first costs in here.
    pub fn currency(&self) -> Option<&str> {
        match &self.value {
            Value::Table(entries) => entries.iter().find_map(|(key, tree)| match &tree.value {
                Value::Text(text) if key == "currency" => Some(text.as_str()),
                _ => tree.currency(),
            }),
            _ => None,
        }
    }

    /// Puts `new` at a dotted path, making tables on the way where there was nothing.
    pub fn put(&mut self, path: &str, new: Tree) -> Result<()> {
        let missing = |step: &str, has: String| {
            Error::new(Code::UnknownKey, path, format!("there is no {step:?} on the way to {path}: {has}"))
        };
        let mut here = self;
        let steps: Vec<&str> = path.split('.').collect();
        for (depth, step) in steps.iter().enumerate() {
            if here.value == Value::Nothing {
                here.value = Value::Table(Vec::new());
            }
            here = match &mut here.value {
                Value::Table(entries) => {
                    let index = entries.iter().position(|(name, _)| name == step).unwrap_or(entries.len());
                    if index == entries.len() {
                        entries.push(((*step).to_string(), Value::Nothing.into()));
                    }
                    &mut entries[index].1
                }
                Value::List(items) => {
                    let count = items.len();
                    step.parse::<usize>()
                        .ok()
                        .and_then(|index| items.get_mut(index))
                        .ok_or_else(|| missing(step, format!("the list has items 0 to {}", count.saturating_sub(1))))?
                }
                _ => return Err(missing(step, format!("{} is a single value", steps[..depth].join(".")))),
            };
        }
        *here = new;
        Ok(())
    }

    /// The text of a file; survey files are UTF-8.
    pub fn text(bytes: Vec<u8>) -> Result<String> {
        String::from_utf8(bytes).map_err(|error| {
            let good = error.utf8_error().valid_up_to();
            let bytes = error.as_bytes();
            let line = 1 + bytes[..good].iter().filter(|byte| **byte == b'\n').count();
            let byte = bytes.get(good).copied().unwrap_or_default();
            let message =
                format!("the file is not UTF-8 text: byte {} of the file is {byte:#04x}. Save it as UTF-8", good + 1);
            Error::new(Code::NotReadable, "", message)
                .text_value(format!("{byte:#04x}"))
                .limit("UTF-8")
                .at_line(Some(line))
        })
    }

    /// Reads TOML; every value keeps its line.
    pub fn from_toml(text: &str) -> Result<Tree> {
        let line_of =
            |start: usize| 1 + text.as_bytes()[..start.min(text.len())].iter().filter(|b| **b == b'\n').count();
        let table = toml::de::DeTable::parse(text).map_err(|error| {
            let line = error.span().map(|span| line_of(span.start));
            if let Some((key, line)) = line.and_then(|line| Some((blank_key(text.lines().nth(line - 1)?)?, line))) {
                let rest = text.lines().enumerate().skip(line).filter(|(_, row)| blank_key(row).is_some());
                let rest: Vec<String> = rest.map(|(at, _)| (at + 1).to_string()).collect();
                let rest = match rest.as_slice() {
                    [] => String::new(),
                    [one] => format!("; so is line {one}"),
                    many => format!("; so are {} more lines: {}", many.len(), many.join(", ")),
                };
                let message =
                    format!("{key} is still empty: give its value after the =, or put # before the line{rest}");
                return Error::new(Code::Missing, key, message).at_line(Some(line));
            }
            Error::new(Code::NotReadable, "", format!("the survey is not valid TOML: {}", error.message()))
                .at_line(line)
        })?;
        let line = line_of(table.span().start);
        let mut tree = from_toml_table(table.get_ref(), &line_of)?;
        tree.line = Some(line);
        Ok(tree)
    }

    /// Reads JSON.
    pub fn from_json(text: &str) -> Result<Tree> {
        serde_json::from_str(text).map_err(|error| {
            Error::new(Code::NotReadable, "", format!("the survey is not valid JSON: {error}"))
                .at_line(Some(error.line()))
        })
    }

    /// Writes TOML; values that are nothing are left out.
    pub fn to_toml(&self) -> Result<String> {
        toml::to_string(self)
            .map_err(|e| Error::new(Code::NotReadable, "", format!("this cannot be written as TOML: {e}")))
    }

    /// Writes JSON.
    pub fn to_json(&self) -> Result<String> {
        serde_json::to_string_pretty(self)
            .map_err(|e| Error::new(Code::NotReadable, "", format!("this cannot be written as JSON: {e}")))
    }
}

/// The key of a line that has nothing after its `=` but a comment.
fn blank_key(line: &str) -> Option<&str> {
    let (key, rest) = line.split_once('=')?;
    let rest = rest.trim_start();
    (rest.is_empty() || rest.starts_with('#'))
        .then(|| key.trim())
        .filter(|key| !key.is_empty() && !key.starts_with('#'))
}

/// Walks a parsed TOML table, keeping the line of each value.
fn from_toml_table(table: &toml::de::DeTable<'_>, line_of: &impl Fn(usize) -> usize) -> Result<Tree> {
    let mut entries = Vec::with_capacity(table.len());
    for (key, value) in table.iter() {
        let line = line_of(key.span().start);
        let mut tree = from_toml_value(value.get_ref(), line, line_of)?;
        tree.line = Some(line);
        entries.push((line, key.get_ref().to_string(), tree));
    }
    entries.sort_by_key(|(line, ..)| *line);
    Ok(Value::Table(entries.into_iter().map(|(_, key, tree)| (key, tree)).collect()).into())
}

fn from_toml_value(value: &toml::de::DeValue<'_>, line: usize, line_of: &impl Fn(usize) -> usize) -> Result<Tree> {
    use toml::de::DeValue;
    let unreadable =
        |text: String| Error::new(Code::NotReadable, "", format!("{text} cannot be read")).at_line(Some(line));
    let value = match value {
        DeValue::String(text) => Value::Text(text.to_string()),
        DeValue::Boolean(flag) => Value::Flag(*flag),
        DeValue::Integer(number) => Value::Whole(
            i64::from_str_radix(number.as_str(), number.radix()).map_err(|_| unreadable(number.to_string()))?,
        ),
        DeValue::Float(number) => Value::Number(number.as_str().parse().map_err(|_| unreadable(number.to_string()))?),
        DeValue::Datetime(moment) => Value::Text(moment.to_string()),
        DeValue::Array(items) => {
            let mut list = Vec::with_capacity(items.len());
            for item in items.iter() {
                let line = line_of(item.span().start);
                let mut tree = from_toml_value(item.get_ref(), line, line_of)?;
                tree.line = Some(line);
                list.push(tree);
            }
            Value::List(list)
        }
        DeValue::Table(table) => return from_toml_table(table, line_of),
    };
    Ok(value.into())
}

impl Serialize for Tree {
    fn serialize<S: Serializer>(&self, to: S) -> std::result::Result<S::Ok, S::Error> {
        match &self.value {
            Value::Nothing => to.serialize_none(),
            Value::Flag(flag) => to.serialize_bool(*flag),
            Value::Whole(number) => to.serialize_i64(*number),
            Value::Number(number) => to.serialize_f64(*number),
            Value::Text(text) => to.serialize_str(text),
            Value::List(items) => {
                let mut list = to.serialize_seq(Some(items.len()))?;
                for item in items {
                    list.serialize_element(item)?;
                }
                list.end()
            }
            Value::Table(entries) => {
                let mut map = to.serialize_map(None)?;
                for (key, tree) in entries {
                    map.serialize_entry(key, tree)?;
                }
                map.end()
            }
        }
    }
}

impl<'de> Deserialize<'de> for Tree {
    fn deserialize<D: Deserializer<'de>>(from: D) -> std::result::Result<Self, D::Error> {
        struct Any;
        impl<'de> Visitor<'de> for Any {
            type Value = Tree;
            fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                f.write_str("a value")
            }
            fn visit_unit<E>(self) -> std::result::Result<Tree, E> {
                Ok(Value::Nothing.into())
            }
            fn visit_bool<E>(self, flag: bool) -> std::result::Result<Tree, E> {
                Ok(Value::Flag(flag).into())
            }
            fn visit_i64<E>(self, number: i64) -> std::result::Result<Tree, E> {
                Ok(Value::Whole(number).into())
            }
            fn visit_u64<E: de::Error>(self, number: u64) -> std::result::Result<Tree, E> {
                Ok(i64::try_from(number).map_or(Value::Number(number as f64), Value::Whole).into())
            }
            fn visit_f64<E>(self, number: f64) -> std::result::Result<Tree, E> {
                Ok(Value::Number(number).into())
            }
            fn visit_str<E>(self, text: &str) -> std::result::Result<Tree, E> {
                Ok(Value::Text(text.to_string()).into())
            }
            fn visit_seq<A: SeqAccess<'de>>(self, mut items: A) -> std::result::Result<Tree, A::Error> {
                let mut list = Vec::new();
                while let Some(item) = items.next_element()? {
                    list.push(item);
                }
                Ok(Value::List(list).into())
            }
            fn visit_map<A: MapAccess<'de>>(self, mut map: A) -> std::result::Result<Tree, A::Error> {
                let mut entries = Vec::new();
                while let Some(entry) = map.next_entry()? {
                    entries.push(entry);
                }
                Ok(Value::Table(entries).into())
            }
        }
        from.deserialize_any(Any)
    }
}
