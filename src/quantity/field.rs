//! How one value of a noun is read, checked, written and converted.

use super::tree::{Tree, Value};
use super::unit::Unit;
use super::{Datum, Kind, Notes, Put, Row, blank, show};
use crate::error::{Code, Error, Result};
use std::borrow::Cow;
use std::fmt::Debug;

/// Where in a survey we are; spelled out only when something is wrong.
#[derive(Clone, Copy)]
pub struct Place<'a> {
    parent: Option<&'a Place<'a>>,
    name: &'a str,
    item: Option<usize>,
}

impl<'a> Place<'a> {
    /// The root of a path; empty for a whole survey.
    pub const fn root(name: &'a str) -> Self {
        Place { parent: None, name, item: None }
    }
    /// A key below this place.
    pub const fn then<'b>(&'b self, name: &'b str) -> Place<'b> {
        Place { parent: Some(self), name, item: None }
    }
    /// An item of the list at this place.
    pub const fn item<'b>(&'b self, item: usize) -> Place<'b> {
        Place { parent: Some(self), name: "", item: Some(item) }
    }
    /// The dotted path.
    pub fn path(&self) -> String {
        let mut path = self.parent.map(Place::path).unwrap_or_default();
        let step = self.item.map_or_else(|| self.name.to_string(), |item| item.to_string());
        if !path.is_empty() && !step.is_empty() {
            path.push('.');
        }
        path + &step
    }
}

/// The word among `words` that is most like `word`, if any is near enough to be meant.
pub fn nearest<'a>(word: &str, words: impl IntoIterator<Item = &'a str>) -> Option<&'a str> {
    words
        .into_iter()
        .map(|candidate| (strsim::normalized_damerau_levenshtein(word, candidate), candidate))
        .filter(|(likeness, _)| *likeness >= 0.5)
        .max_by(|a, b| a.0.total_cmp(&b.0))
        .map(|(_, candidate)| candidate)
}

/// A type that a field of a noun can have.
pub trait Field: Sized + Clone + PartialEq + Debug {
    /// The same in SI.
    type Si: Clone + Debug;

    /// Reads, and refuses what is of the wrong kind, not finite or outside the allowed range.
    fn read(tree: &Tree, place: &Place, row: &Row) -> Result<Self>;

    /// The value where the key was not given and the declaration has no default.
    fn absent(place: &Place, row: &Row) -> Result<Self> {
        let path = place.path();
        // Words and groups have no range to quote.
        let limit = if row.unit.is_of_numbers() { row.allowed.words(row.unit) } else { String::new() };
        let range = if limit.is_empty() { String::new() } else { format!(" ({limit})") };
        let message = format!("{path} is missing: give {}{range}", row.means);
        Err(Error::new(Code::Missing, path, message).unit(row.unit.label).limit(limit))
    }

    /// Whether this is what an absent key would give.
    fn is_absent(&self) -> bool {
        false
    }

    /// What stands here before anything was given: the default of the declaration, else a blank that no range allows
    /// ([`blank`](super::blank)). Columns fill a blank noun value by value.
    fn blank() -> Self;

    /// What single values at a path below this type are; nothing for a group or where there is no such path.
    fn kind(path: &[&str]) -> Option<Kind>;

    /// Why a single value cannot stand at a path below this type; nothing where it can.
    fn refusal(path: &[&str], tree: &Tree, place: &Place, row: &Row) -> Option<Error> {
        if path.is_empty() { Self::read(tree, place, row).err() } else { None }
    }

    /// As survey data.
    fn write(&self) -> Tree;

    /// A single value of this kind; nothing where it is a group or the value is of another kind.
    fn from_datum(_: Datum<'_>) -> Option<Self> {
        None
    }

    /// The single value at a path below this one; nothing for a group or where there is no such path.
    fn get(&self, path: &[&str]) -> Option<Datum<'_>>;

    /// Puts a single value at a path below this one, without checking its range.
    fn put(&mut self, path: &[&str], datum: Datum<'_>) -> Put {
        match (path, Self::from_datum(datum)) {
            ([], Some(value)) => {
                *self = value;
                Put::Done
            }
            ([], None) => Put::WrongKind,
            _ => Put::NoSuchPath,
        }
    }

    /// Checks the ranges; outside the usual one is a warning.
    fn check(&self, place: &Place, row: &Row, notes: &mut Notes) -> Result<()>;

    /// In SI.
    fn si(&self, unit: &Unit) -> Self::Si;

    /// From SI.
    fn public(si: Self::Si, unit: &Unit) -> Self;

    /// As Python would write it.
    fn repr(&self) -> String {
        python(&self.write())
    }

    /// Whether this is a noun, which tables show under a heading of its own.
    const NESTED: bool = false;

    /// Adds this value to a table: one entry, or a heading and the entries of the noun inside it.
    fn show(&self, name: &str, row: &'static Row, depth: usize, out: &mut Vec<show::Entry>) {
        out.push(show::Entry::value(name, row, depth, show::value_of(&self.write(), row)));
    }

    /// Adds this field's row, or those of the noun inside it, under `path`.
    fn register(path: String, row: &'static Row, out: &mut Vec<(String, &'static Row)>) {
        out.push((path, row));
    }
}

/// Survey data as a Python literal.
fn python(tree: &Tree) -> String {
    match &tree.value {
        Value::Nothing => "None".into(),
        Value::Flag(flag) => if *flag { "True" } else { "False" }.into(),
        Value::Whole(number) => number.to_string(),
        Value::Number(number) => format!("{number:?}"),
        Value::Text(text) => serde_json::to_string(text).unwrap_or_default(),
        Value::List(items) => format!("[{}]", items.iter().map(python).collect::<Vec<_>>().join(", ")),
        Value::Table(entries) => {
            let each = entries.iter().map(|(key, tree)| format!("{key:?}: {}", python(tree)));
            format!("{{{}}}", each.collect::<Vec<_>>().join(", "))
        }
    }
}

/// The error for a value of the wrong kind.
pub(super) fn wrong_type(tree: &Tree, place: &Place, row: &Row, wanted: &str) -> Error {
    let path = place.path();
    let message = format!("{path} = {} is {}, but {} must be {wanted}", tree.written(), tree.kind(), row.means);
    Error::new(Code::WrongType, path, message)
        .text_value(tree.written())
        .unit(row.unit.label)
        .limit(wanted)
        .at_line(tree.line)
}

/// Refuses what is not finite or outside the allowed range.
#[inline(never)]
fn allowed(value: f64, place: &Place, row: &Row) -> Result<()> {
    if value.is_finite() && row.allowed.holds(value) {
        return Ok(());
    }
    let path = place.path();
    let limit = row.allowed.words(row.unit);
    let shown = show::quantity(value, row.unit);
    let (code, message) = if value.is_finite() {
        (Code::OutOfRange, format!("{path} = {shown} is outside what can be computed: {} must be {limit}", row.means))
    } else {
        (Code::NotFinite, format!("{path} = {shown} is not a finite number: {} must be {limit}", row.means))
    };
    Err(Error::new(code, path, message).number(value).unit(row.unit.label).limit(limit))
}

/// Refuses a number, or remembers that it is unusual.
#[cold]
#[inline(never)]
fn outside(value: f64, place: &Place, row: &Row, notes: &mut Notes) -> Result<()> {
    allowed(value, place, row)?;
    notes.unusual(place.path(), value, row);
    Ok(())
}

impl Field for f64 {
    type Si = f64;
    fn read(tree: &Tree, place: &Place, row: &Row) -> Result<Self> {
        let value = match tree.value {
            Value::Number(number) => number,
            Value::Whole(number) => number as f64,
            _ => return Err(wrong_type(tree, place, row, "a number")),
        };
        allowed(value, place, row).map_err(|error| error.at_line(tree.line))?;
        Ok(value)
    }
    fn blank() -> Self {
        blank::NUMBER
    }
    fn kind(path: &[&str]) -> Option<Kind> {
        path.is_empty().then_some(Kind::Number)
    }
    fn from_datum(datum: Datum<'_>) -> Option<Self> {
        datum.number()
    }
    fn get(&self, path: &[&str]) -> Option<Datum<'_>> {
        path.is_empty().then_some(Datum::Number(*self))
    }
    fn write(&self) -> Tree {
        Value::Number(*self).into()
    }
    #[inline]
    fn check(&self, place: &Place, row: &Row, notes: &mut Notes) -> Result<()> {
        // nearly every number is fine: it costs four comparisons, and nothing is spelled out
        if row.allowed.holds(*self) && row.usual.holds(*self) && self.is_finite() {
            return Ok(());
        }
        outside(*self, place, row, notes)
    }
    #[inline]
    fn si(&self, unit: &Unit) -> f64 {
        unit.to_si(*self)
    }
    #[inline]
    fn public(si: f64, unit: &Unit) -> f64 {
        unit.from_si(si)
    }
}

impl Field for i64 {
    type Si = i64;
    fn read(tree: &Tree, place: &Place, row: &Row) -> Result<Self> {
        let value = match tree.value {
            Value::Whole(number) => number,
            Value::Number(number) if number.fract() == 0.0 && number.abs() < 9e15 => number as i64,
            Value::Number(number) if !number.is_finite() => {
                return allowed(number, place, row).map(|()| 0).map_err(|e| e.at_line(tree.line));
            }
            _ => return Err(wrong_type(tree, place, row, "a whole number")),
        };
        allowed(value as f64, place, row).map_err(|error| error.at_line(tree.line))?;
        Ok(value)
    }
    fn blank() -> Self {
        blank::WHOLE
    }
    fn kind(path: &[&str]) -> Option<Kind> {
        path.is_empty().then_some(Kind::Whole)
    }
    fn from_datum(datum: Datum<'_>) -> Option<Self> {
        datum.whole()
    }
    fn get(&self, path: &[&str]) -> Option<Datum<'_>> {
        path.is_empty().then_some(Datum::Whole(*self))
    }
    fn write(&self) -> Tree {
        Value::Whole(*self).into()
    }
    #[inline]
    fn check(&self, place: &Place, row: &Row, notes: &mut Notes) -> Result<()> {
        (*self as f64).check(place, row, notes)
    }
    fn si(&self, _: &Unit) -> i64 {
        *self
    }
    fn public(si: i64, _: &Unit) -> i64 {
        si
    }
}

impl Field for bool {
    type Si = bool;
    fn read(tree: &Tree, place: &Place, row: &Row) -> Result<Self> {
        match tree.value {
            Value::Flag(flag) => Ok(flag),
            _ => Err(wrong_type(tree, place, row, "true or false")),
        }
    }
    fn blank() -> Self {
        false
    }
    fn kind(path: &[&str]) -> Option<Kind> {
        path.is_empty().then_some(Kind::Flag)
    }
    fn from_datum(datum: Datum<'_>) -> Option<Self> {
        if let Datum::Flag(flag) = datum { Some(flag) } else { None }
    }
    fn get(&self, path: &[&str]) -> Option<Datum<'_>> {
        path.is_empty().then_some(Datum::Flag(*self))
    }
    fn write(&self) -> Tree {
        Value::Flag(*self).into()
    }
    fn check(&self, _: &Place, _: &Row, _: &mut Notes) -> Result<()> {
        Ok(())
    }
    fn si(&self, _: &Unit) -> bool {
        *self
    }
    fn public(si: bool, _: &Unit) -> bool {
        si
    }
}

/// Words: names of lines, of causes, of chains.
pub type Word = Cow<'static, str>;

impl Field for Word {
    type Si = Word;
    fn read(tree: &Tree, place: &Place, row: &Row) -> Result<Self> {
        match &tree.value {
            Value::Text(text) => Ok(Cow::Owned(text.clone())),
            _ => Err(wrong_type(tree, place, row, "text")),
        }
    }
    fn blank() -> Self {
        Cow::Borrowed("")
    }
    fn kind(path: &[&str]) -> Option<Kind> {
        path.is_empty().then_some(Kind::Text)
    }
    fn from_datum(datum: Datum<'_>) -> Option<Self> {
        if let Datum::Text(text) = datum { Some(Cow::Owned(text.to_string())) } else { None }
    }
    fn get(&self, path: &[&str]) -> Option<Datum<'_>> {
        path.is_empty().then_some(Datum::Text(self))
    }
    fn write(&self) -> Tree {
        Value::Text(self.to_string()).into()
    }
    fn check(&self, _: &Place, _: &Row, _: &mut Notes) -> Result<()> {
        Ok(())
    }
    fn si(&self, _: &Unit) -> Word {
        self.clone()
    }
    fn public(si: Word, _: &Unit) -> Word {
        si
    }
}

impl<T: Field> Field for Option<T> {
    type Si = Option<T::Si>;
    fn read(tree: &Tree, place: &Place, row: &Row) -> Result<Self> {
        if tree.value == Value::Nothing { Ok(None) } else { T::read(tree, place, row).map(Some) }
    }
    fn absent(_: &Place, _: &Row) -> Result<Self> {
        Ok(None)
    }
    fn is_absent(&self) -> bool {
        self.is_none()
    }
    fn blank() -> Self {
        None
    }
    fn kind(path: &[&str]) -> Option<Kind> {
        T::kind(path)
    }
    fn refusal(path: &[&str], tree: &Tree, place: &Place, row: &Row) -> Option<Error> {
        T::refusal(path, tree, place, row)
    }
    fn get(&self, path: &[&str]) -> Option<Datum<'_>> {
        match self {
            Some(value) => value.get(path),
            None => path.is_empty().then_some(Datum::Nothing),
        }
    }
    fn put(&mut self, path: &[&str], datum: Datum<'_>) -> Put {
        if path.is_empty() && datum == Datum::Nothing {
            *self = None;
            return Put::Done;
        }
        if self.is_none() {
            // a group that was left out can be begun if nothing in it must be given
            *self = T::from_datum(datum).or_else(|| T::absent(&Place::root(""), &Row::BLANK).ok());
        }
        self.as_mut()
            .map_or(if path.is_empty() { Put::WrongKind } else { Put::NoSuchPath }, |value| value.put(path, datum))
    }
    fn write(&self) -> Tree {
        self.as_ref().map_or(Value::Nothing.into(), T::write)
    }
    #[inline]
    fn check(&self, place: &Place, row: &Row, notes: &mut Notes) -> Result<()> {
        self.as_ref().map_or(Ok(()), |value| value.check(place, row, notes))
    }
    #[inline]
    fn si(&self, unit: &Unit) -> Self::Si {
        self.as_ref().map(|value| value.si(unit))
    }
    #[inline]
    fn public(si: Self::Si, unit: &Unit) -> Self {
        si.map(|value| T::public(value, unit))
    }
    fn repr(&self) -> String {
        self.as_ref().map_or("None".into(), T::repr)
    }
    const NESTED: bool = T::NESTED;
    fn show(&self, name: &str, row: &'static Row, depth: usize, out: &mut Vec<show::Entry>) {
        if let Some(value) = self {
            value.show(name, row, depth, out);
        }
    }
    fn register(path: String, row: &'static Row, out: &mut Vec<(String, &'static Row)>) {
        T::register(path, row, out);
    }
}

impl<T: Field> Field for Vec<T> {
    type Si = Vec<T::Si>;
    fn read(tree: &Tree, place: &Place, row: &Row) -> Result<Self> {
        let Value::List(items) = &tree.value else { return Err(wrong_type(tree, place, row, "a list")) };
        items.iter().enumerate().map(|(i, item)| T::read(item, &place.item(i), row)).collect()
    }
    fn blank() -> Self {
        Vec::new()
    }
    fn kind(path: &[&str]) -> Option<Kind> {
        let (first, rest) = path.split_first()?;
        first.parse::<usize>().ok().and_then(|_| T::kind(rest))
    }
    fn refusal(path: &[&str], tree: &Tree, place: &Place, row: &Row) -> Option<Error> {
        let (first, rest) = path.split_first()?;
        T::refusal(rest, tree, &place.item(first.parse().ok()?), row)
    }
    fn get(&self, path: &[&str]) -> Option<Datum<'_>> {
        let (first, rest) = path.split_first()?;
        <[T]>::get(self, first.parse::<usize>().ok()?)?.get(rest)
    }
    fn put(&mut self, path: &[&str], datum: Datum<'_>) -> Put {
        let Some((first, rest)) = path.split_first() else { return Put::WrongKind };
        let item = first.parse::<usize>().ok().and_then(|item| self.get_mut(item));
        item.map_or(Put::NoSuchPath, |item| item.put(rest, datum))
    }
    fn write(&self) -> Tree {
        Value::List(self.iter().map(T::write).collect()).into()
    }
    fn check(&self, place: &Place, row: &Row, notes: &mut Notes) -> Result<()> {
        self.iter().enumerate().try_for_each(|(i, item)| item.check(&place.item(i), row, notes))
    }
    fn si(&self, unit: &Unit) -> Self::Si {
        self.iter().map(|item| item.si(unit)).collect()
    }
    fn public(si: Self::Si, unit: &Unit) -> Self {
        si.into_iter().map(|item| T::public(item, unit)).collect()
    }
    fn repr(&self) -> String {
        format!("[{}]", self.iter().map(T::repr).collect::<Vec<_>>().join(", "))
    }
    fn show(&self, name: &str, row: &'static Row, depth: usize, out: &mut Vec<show::Entry>) {
        if T::NESTED {
            for (i, item) in self.iter().enumerate() {
                item.show(&format!("{name} {i}"), row, depth, out);
            }
        } else {
            out.push(show::Entry::value(name, row, depth, show::value_of(&self.write(), row)));
        }
    }
    fn register(path: String, row: &'static Row, out: &mut Vec<(String, &'static Row)>) {
        T::register(path, row, out);
    }
}

impl<T: Field + Copy + Default, const K: usize> Field for [T; K]
where
    [T::Si; K]: Clone + Debug,
{
    type Si = [T::Si; K];
    fn read(tree: &Tree, place: &Place, row: &Row) -> Result<Self> {
        Vec::read(tree, place, row)?.try_into().map_err(|_| wrong_type(tree, place, row, &format!("a list of {K}")))
    }
    fn blank() -> Self {
        std::array::from_fn(|_| T::blank())
    }
    fn kind(path: &[&str]) -> Option<Kind> {
        let (first, rest) = path.split_first()?;
        first.parse::<usize>().ok().and_then(|_| T::kind(rest))
    }
    fn refusal(path: &[&str], tree: &Tree, place: &Place, row: &Row) -> Option<Error> {
        let (first, rest) = path.split_first()?;
        T::refusal(rest, tree, &place.item(first.parse().ok()?), row)
    }
    fn get(&self, path: &[&str]) -> Option<Datum<'_>> {
        let (first, rest) = path.split_first()?;
        <[T]>::get(self, first.parse::<usize>().ok()?)?.get(rest)
    }
    fn put(&mut self, path: &[&str], datum: Datum<'_>) -> Put {
        let Some((first, rest)) = path.split_first() else { return Put::WrongKind };
        let item = first.parse::<usize>().ok().and_then(|item| self.get_mut(item));
        item.map_or(Put::NoSuchPath, |item| item.put(rest, datum))
    }
    fn write(&self) -> Tree {
        Value::List(self.iter().map(T::write).collect()).into()
    }
    fn check(&self, place: &Place, row: &Row, notes: &mut Notes) -> Result<()> {
        self.iter().try_for_each(|item| item.check(place, row, notes))
    }
    fn si(&self, unit: &Unit) -> Self::Si {
        std::array::from_fn(|i| self[i].si(unit))
    }
    fn public(si: Self::Si, unit: &Unit) -> Self {
        si.map(|item| T::public(item, unit))
    }
}

/// A section's number and a value there.
impl<T: Field> Field for (i64, T) {
    type Si = (i64, T::Si);
    fn read(tree: &Tree, place: &Place, row: &Row) -> Result<Self> {
        match &tree.value {
            Value::List(items) if items.len() == 2 => {
                Ok((i64::read(&items[0], place, &Row::BLANK)?, T::read(&items[1], place, row)?))
            }
            _ => Err(wrong_type(tree, place, row, "a section number and a value")),
        }
    }
    fn blank() -> Self {
        (i64::blank(), T::blank())
    }
    fn kind(path: &[&str]) -> Option<Kind> {
        match path.split_first()? {
            (&"0", []) => Some(Kind::Whole),
            (&"1", rest) => T::kind(rest),
            _ => None,
        }
    }
    fn get(&self, path: &[&str]) -> Option<Datum<'_>> {
        match path.split_first()? {
            (&"0", []) => Some(Datum::Whole(self.0)),
            (&"1", rest) => self.1.get(rest),
            _ => None,
        }
    }
    fn put(&mut self, path: &[&str], datum: Datum<'_>) -> Put {
        match path.split_first() {
            Some((&"0", rest)) => self.0.put(rest, datum),
            Some((&"1", rest)) => self.1.put(rest, datum),
            Some(_) => Put::NoSuchPath,
            None => Put::WrongKind,
        }
    }
    fn write(&self) -> Tree {
        Value::List(vec![self.0.write(), self.1.write()]).into()
    }
    fn check(&self, place: &Place, row: &Row, notes: &mut Notes) -> Result<()> {
        self.1.check(place, row, notes)
    }
    fn si(&self, unit: &Unit) -> Self::Si {
        (self.0, self.1.si(unit))
    }
    fn public(si: Self::Si, unit: &Unit) -> Self {
        (si.0, T::public(si.1, unit))
    }
}

/// Values by name, such as the shares of the pull by cause.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Named(pub Vec<(Word, f64)>);

impl Field for Named {
    type Si = Vec<(Word, f64)>;
    fn read(tree: &Tree, place: &Place, row: &Row) -> Result<Self> {
        let Value::Table(entries) = &tree.value else { return Err(wrong_type(tree, place, row, "a table of numbers")) };
        let read = |(name, tree): &(String, Tree)| {
            f64::read(tree, &place.then(name), row).map(|value| (Cow::Owned(name.clone()), value))
        };
        entries.iter().map(read).collect::<Result<_>>().map(Named)
    }
    fn blank() -> Self {
        Named::default()
    }
    fn kind(path: &[&str]) -> Option<Kind> {
        (path.len() == 1).then_some(Kind::Number)
    }
    fn get(&self, path: &[&str]) -> Option<Datum<'_>> {
        let [first] = path else { return None };
        self.0.iter().find(|(name, _)| name == first).map(|(_, value)| Datum::Number(*value))
    }
    fn write(&self) -> Tree {
        Value::Table(self.0.iter().map(|(name, value)| (name.to_string(), value.write())).collect()).into()
    }
    fn check(&self, place: &Place, row: &Row, notes: &mut Notes) -> Result<()> {
        self.0.iter().try_for_each(|(name, value)| value.check(&place.then(name), row, notes))
    }
    fn si(&self, unit: &Unit) -> Self::Si {
        self.0.iter().map(|(name, value)| (name.clone(), unit.to_si(*value))).collect()
    }
    fn public(mut si: Self::Si, unit: &Unit) -> Self {
        si.iter_mut().for_each(|(_, value)| *value = unit.from_si(*value));
        Named(si)
    }
}
