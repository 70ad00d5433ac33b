//! The declaration macros: `noun!` for groups of quantities, `choice!` for words, `tagged!` for one of several nouns.

use super::datum::row_of;
use super::field::Place;
use super::tree::{Tree, Value};
use super::{Field, Notes, Row, nearest, show};
use crate::error::{Code, Error, Given, Result};

/// A named group of quantities: what a survey or a result is made of.
pub trait Noun: Field + 'static {
    /// Its name in code: `Chain`.
    const NAME: &'static str;
    /// The group it stands under in a survey or result: `chain`.
    const GROUP: &'static str;
    /// What it is, in words.
    const MEANS: &'static str;
    /// Its rows of the register, in order.
    const ROWS: &'static [Row];

    /// Reads survey data; `tag` is a key that belongs to the enclosing choice and not to this noun.
    fn read_tagged(tree: &Tree, place: &Place, tag: Option<&str>) -> Result<Self>;

    /// Checks what was computed: every field but those that are kept for reference only, such as the survey of a result.
    fn check_computed(&self, notes: &mut Notes) -> Result<()>;

    /// Reads survey data that stands alone.
    fn from_tree(tree: &Tree) -> Result<Self> {
        Self::read_tagged(tree, &Place::root(Self::GROUP), None)
    }

    /// The same with some values changed; `changes` are dotted paths below this noun and what to put there.
    fn replaced(&self, changes: Vec<(String, Tree)>) -> Result<Self> {
        let mut tree = self.write();
        for (path, value) in changes {
            tree.put(&path, value)?;
        }
        Self::from_tree(&tree)
    }

    /// As people read it in a terminal. A noun with a page of its own has an inherent method of this name.
    fn as_text(&self) -> String {
        super::show::text_table(self)
    }

    /// As people read it in a notebook. A noun with a page of its own has an inherent method of this name.
    fn as_html(&self) -> String {
        super::show::html_table(self)
    }
}

/// Refuses a table with a key that none of the rows has, naming the nearest that one of them has.
pub fn only_known(tree: &Tree, place: &Place, rows: &[Row], noun: &str, tag: Option<&str>) -> Result<()> {
    let Value::Table(entries) = &tree.value else {
        let path = place.path();
        let message =
            format!("{path} = {} is {}, but a table of keys was expected ({noun})", tree.written(), tree.kind());
        return Err(Error::new(Code::WrongType, path, message).text_value(tree.written()).at_line(tree.line));
    };
    for (key, value) in entries {
        if Some(key.as_str()) == tag || rows.iter().any(|row| row.name == key) {
            continue;
        }
        let hint = nearest(key, rows.iter().map(|row| row.name)).map_or_else(
            || format!("it has {}", rows.iter().map(|row| row.name).collect::<Vec<_>>().join(", ")),
            |near| format!("did you mean {near}?"),
        );
        let path = place.then(key).path();
        let message = format!("{path} is not a key of a survey ({noun}): {hint}");
        return Err(Error::new(Code::UnknownKey, path, message).text_value(key).limit(hint).at_line(value.line));
    }
    Ok(())
}

/// Declares a noun: struct, SI twin, register rows, reading, writing, checking, converting.
///
/// A line is `public_name as plain_name: type [UNIT] "what it means" { row settings }`; `[UNIT = default]` where a
/// survey may leave it out. `defaults: all` after the group where every row has one: the noun is then `Default`.
/// `keeps: lines` keeps the lines of the file that it was read from, for errors that come later.
#[macro_export]
macro_rules! noun {
    (
        $(#[doc = $doc:literal])+
        $name:ident / $si:ident, $group:literal
        $(, consistent: $consistent:path)? $(, defaults: $defaults:ident)? $(, keeps: $lines:ident)? {
            $( $field:ident as $plain:ident : $ty:ty [$unit:ident $($eq:tt $default:expr)?] $means:literal
               { $($key:ident : $value:expr),* $(,)? } )+
        }
    ) => {
        $(#[doc = $doc])+
        #[derive(Debug, Clone, PartialEq)]
        pub struct $name {
            $( #[doc = $means] pub $field: $ty, )+
            $( #[doc = "Where its values stood in the file it was read from."] pub $lines: $crate::quantity::Lines, )?
        }

        $crate::noun!(@default_impl [$($defaults)?] $name { $( $field: $ty [$($default)?] )+ });

        #[doc = concat!("[`", stringify!($name), "`] in SI, under the trade's plain names.")]
        #[derive(Debug, Clone)]
        pub struct $si { $( #[doc = $means] pub $plain: <$ty as $crate::quantity::Field>::Si ),+ }

        impl $crate::quantity::Noun for $name {
            const NAME: &'static str = stringify!($name);
            const GROUP: &'static str = $group;
            const MEANS: &'static str = concat!($($doc),+);
            const ROWS: &'static [$crate::quantity::Row] = &[ $( $crate::quantity::Row {
                name: stringify!($field),
                plain: stringify!($plain),
                unit: &$crate::quantity::unit::$unit,
                means: $means,
                default: $crate::noun!(@default_text $($default)?),
                $($key: $value,)*
                ..$crate::quantity::Row::BLANK
            } ),+ ];

            fn read_tagged(
                tree: &$crate::quantity::Tree,
                place: &$crate::quantity::Place,
                tag: Option<&str>,
            ) -> $crate::Result<Self> {
                $crate::quantity::only_known(tree, place, Self::ROWS, stringify!($name), tag)?;
                let mut rows = Self::ROWS.iter();
                let mut next = || rows.next().unwrap_or(&$crate::quantity::Row::BLANK);
                let noun = Self { $( $lines: $crate::quantity::Lines::of(tree), )? $( $field: {
                    let row = next();
                    let place = place.then(stringify!($field));
                    match tree.get(stringify!($field)) {
                        Some(tree) => <$ty as $crate::quantity::Field>::read(tree, &place, row)?,
                        None => $crate::noun!(@absent place, row, $ty $(, $default)?),
                    }
                } ),+ };
                $(
                    $consistent(&noun, place).map_err(|error| {
                        let key = error.field.rsplit('.').next().unwrap_or_default();
                        let line = tree.get(key).and_then(|tree| tree.line).or(tree.line);
                        error.at_line(line)
                    })?;
                )?
                Ok(noun)
            }

            fn check_computed(&self, notes: &mut $crate::quantity::Notes) -> $crate::Result<()> {
                let place = $crate::quantity::Place::root("");
                let mut rows = Self::ROWS.iter();
                $( if let Some(row) = rows.next().filter(|row| !row.aside) {
                    $crate::quantity::Field::check(&self.$field, &place.then(stringify!($field)), row, notes)?;
                } )+
                Ok(())
            }
        }

        impl $crate::quantity::Field for $name {
            type Si = $si;
            fn read(
                tree: &$crate::quantity::Tree,
                place: &$crate::quantity::Place,
                _: &$crate::quantity::Row,
            ) -> $crate::Result<Self> {
                <Self as $crate::quantity::Noun>::read_tagged(tree, place, None)
            }
            fn absent(place: &$crate::quantity::Place, _: &$crate::quantity::Row) -> $crate::Result<Self> {
                <Self as $crate::quantity::Noun>::read_tagged(&$crate::quantity::Tree::EMPTY, place, None)
            }
            fn is_absent(&self) -> bool {
                Self::absent(&$crate::quantity::Place::root(""), &$crate::quantity::Row::BLANK)
                    .is_ok_and(|absent| absent == *self)
            }
            fn blank() -> Self {
                Self { $( $lines: $crate::quantity::Lines::default(), )? $( $field: $crate::noun!(@blank $ty $(, $default)?) ),+ }
            }
            fn kind(path: &[&str]) -> Option<$crate::quantity::Kind> {
                let (first, rest) = path.split_first()?;
                match *first {
                    $( stringify!($field) => <$ty as $crate::quantity::Field>::kind(rest), )+
                    _ => None,
                }
            }
            fn refusal(
                path: &[&str],
                tree: &$crate::quantity::Tree,
                place: &$crate::quantity::Place,
                _: &$crate::quantity::Row,
            ) -> Option<$crate::Error> {
                let (first, rest) = path.split_first()?;
                let row = <Self as $crate::quantity::Noun>::ROWS.iter().find(|row| row.name == *first)?;
                match *first {
                    $( stringify!($field) => <$ty as $crate::quantity::Field>::refusal(
                        rest, tree, &place.then(stringify!($field)), row,
                    ), )+
                    _ => None,
                }
            }
            fn write(&self) -> $crate::quantity::Tree {
                $crate::quantity::Value::Table(vec![ $(
                    (stringify!($field).to_string(), $crate::quantity::Field::write(&self.$field))
                ),+ ]).into()
            }
            fn get(&self, path: &[&str]) -> Option<$crate::quantity::Datum<'_>> {
                let (first, rest) = path.split_first()?;
                match *first {
                    $( stringify!($field) => $crate::quantity::Field::get(&self.$field, rest), )+
                    _ => None,
                }
            }
            fn put(&mut self, path: &[&str], datum: $crate::quantity::Datum<'_>) -> $crate::quantity::Put {
                let Some((first, rest)) = path.split_first() else { return $crate::quantity::Put::WrongKind };
                match *first {
                    $( stringify!($field) => $crate::quantity::Field::put(&mut self.$field, rest, datum), )+
                    _ => $crate::quantity::Put::NoSuchPath,
                }
            }
            fn check(
                &self,
                place: &$crate::quantity::Place,
                _: &$crate::quantity::Row,
                notes: &mut $crate::quantity::Notes,
            ) -> $crate::Result<()> {
                let mut rows = <Self as $crate::quantity::Noun>::ROWS.iter();
                $( if let Some(row) = rows.next() {
                    $crate::quantity::Field::check(&self.$field, &place.then(stringify!($field)), row, notes)?;
                } )+
                $( $consistent(self, place)?; )?
                Ok(())
            }
            #[inline]
            fn si(&self, _: &$crate::quantity::Unit) -> $si {
                $si { $( $plain: $crate::quantity::Field::si(&self.$field, &$crate::quantity::unit::$unit) ),+ }
            }
            #[inline]
            fn public(si: $si, _: &$crate::quantity::Unit) -> Self {
                Self {
                    $( $lines: $crate::quantity::Lines::default(), )?
                    $( $field: <$ty as $crate::quantity::Field>::public(si.$plain, &$crate::quantity::unit::$unit) ),+
                }
            }
            fn repr(&self) -> String {
                let mut given: Vec<String> = Vec::new();
                $( if !$crate::noun!(@is_default self.$field, $ty $(, $default)?) {
                    given.push(format!("{}={}", stringify!($field), $crate::quantity::Field::repr(&self.$field)));
                } )+
                format!("{}({})", stringify!($name), given.join(", "))
            }
            const NESTED: bool = true;
            fn show(
                &self,
                name: &str,
                row: &'static $crate::quantity::Row,
                depth: usize,
                out: &mut Vec<$crate::quantity::show::Entry>,
            ) {
                out.push($crate::quantity::show::Entry::heading(name, row, depth));
                let mut rows = <Self as $crate::quantity::Noun>::ROWS.iter();
                $( if let Some(row) = rows.next().filter(|row| !row.aside) {
                    $crate::quantity::Field::show(&self.$field, stringify!($field), row, depth + 1, out);
                } )+
            }
            fn register(
                path: String,
                _: &'static $crate::quantity::Row,
                out: &mut Vec<(String, &'static $crate::quantity::Row)>,
            ) {
                let mut rows = <Self as $crate::quantity::Noun>::ROWS.iter();
                $( if let Some(row) = rows.next() {
                    let path = if path.is_empty() { String::new() } else { format!("{path}.") };
                    <$ty as $crate::quantity::Field>::register(path + stringify!($field), row, out);
                } )+
            }
        }
    };
    (@default_impl [] $name:ident { $($rows:tt)* }) => {};
    (@default_impl [all] $name:ident { $( $field:ident: $ty:ty [$default:expr] )+ }) => {
        impl Default for $name {
            fn default() -> Self {
                Self { $( $field: $default ),+ }
            }
        }
    };
    (@default_text) => { "" };
    (@default_text $default:expr) => { stringify!($default) };
    (@absent $place:ident, $row:ident, $ty:ty) => { <$ty as $crate::quantity::Field>::absent(&$place, $row)? };
    (@absent $place:ident, $row:ident, $ty:ty, $default:expr) => {{
        let _ = (&$place, $row);
        $default
    }};
    (@blank $ty:ty) => { <$ty as $crate::quantity::Field>::blank() };
    (@blank $ty:ty, $default:expr) => { $default };
    (@is_default $self:ident . $field:ident, $ty:ty) => { false };
    (@is_default $self:ident . $field:ident, $ty:ty, $default:expr) => {{
        let default: $ty = $default;
        $self.$field == default
    }};
}

/// Declares a choice of words: an enum that surveys write as text.
#[macro_export]
macro_rules! choice {
    ($(#[doc = $doc:literal])+ $name:ident { $($(#[doc = $means:literal])+ $variant:ident = $word:literal),+ $(,)? }) => {
        $(#[doc = $doc])+
        #[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
        pub enum $name { $($(#[doc = $means])+ $variant),+ }

        impl $name {
            /// Every word, as surveys write it.
            pub const WORDS: &'static [&'static str] = &[$($word),+];
            /// The word, as surveys write it.
            pub const fn as_str(self) -> &'static str { match self { $($name::$variant => $word),+ } }
        }

        impl $crate::quantity::Field for $name {
            type Si = $name;
            fn read(
                tree: &$crate::quantity::Tree,
                place: &$crate::quantity::Place,
                row: &$crate::quantity::Row,
            ) -> $crate::Result<Self> {
                match $crate::quantity::word(tree, place, row, Self::WORDS)? {
                    $($word => Ok($name::$variant),)+
                    other => Err($crate::quantity::unknown_word(other, place, row, Self::WORDS, tree.line)),
                }
            }
            fn blank() -> Self {
                const FIRST: &[$name] = &[$($name::$variant),+];
                FIRST[0]
            }
            fn kind(path: &[&str]) -> Option<$crate::quantity::Kind> {
                path.is_empty().then_some($crate::quantity::Kind::Text)
            }
            fn from_datum(datum: $crate::quantity::Datum<'_>) -> Option<Self> {
                match datum {
                    $($crate::quantity::Datum::Text($word) => Some($name::$variant),)+
                    _ => None,
                }
            }
            fn get(&self, path: &[&str]) -> Option<$crate::quantity::Datum<'_>> {
                path.is_empty().then_some($crate::quantity::Datum::Text(self.as_str()))
            }
            fn write(&self) -> $crate::quantity::Tree {
                $crate::quantity::Value::Text(self.as_str().to_string()).into()
            }
            fn check(
                &self,
                _: &$crate::quantity::Place,
                _: &$crate::quantity::Row,
                _: &mut $crate::quantity::Notes,
            ) -> $crate::Result<()> {
                Ok(())
            }
            fn si(&self, _: &$crate::quantity::Unit) -> Self { *self }
            fn public(si: Self, _: &$crate::quantity::Unit) -> Self { si }
        }
    };
}

/// The word of a choice, if it is text.
pub fn word<'a>(tree: &'a Tree, place: &Place, row: &Row, words: &[&str]) -> Result<&'a str> {
    match &tree.value {
        Value::Text(text) => Ok(text),
        _ => {
            let row = Row { means: without_choices(row), ..*row };
            Err(super::field::wrong_type(tree, place, &row, &format!("one of {}", words.join(", "))))
        }
    }
}

/// What a row means, without the choices that it may list after a colon.
fn without_choices(row: &Row) -> &'static str {
    row.means.split(':').next().unwrap_or(row.means)
}

/// The error for a word that is not one of the choices.
pub fn unknown_word(word: &str, place: &Place, row: &Row, words: &[&str], line: Option<usize>) -> Error {
    let path = place.path();
    let near = nearest(word, words.iter().copied()).map_or_else(String::new, |near| format!(" Did you mean {near:?}?"));
    let limit = format!("one of {}", words.join(", "));
    let message = format!("{path} = {word:?} is not a choice: {} must be {limit}.{near}", without_choices(row));
    Error::new(Code::UnknownChoice, path, message).text_value(word).limit(limit).at_line(line)
}

/// Declares a value that is one of several nouns, told apart by a word under a key of their table.
#[macro_export]
macro_rules! tagged {
    (
        $(#[doc = $doc:literal])+
        $name:ident / $si:ident by $tag:literal { $($word:literal => $noun:ident / $noun_si:ident),+ $(,)? }
    ) => {
        $(#[doc = $doc])+
        #[derive(Debug, Clone, PartialEq)]
        pub enum $name { $(#[doc = concat!("`", $tag, " = \"", $word, "\"`")] $noun($noun)),+ }

        #[doc = concat!("[`", stringify!($name), "`] in SI.")]
        #[derive(Debug, Clone)]
        pub enum $si { $(#[doc = concat!("`", $tag, " = \"", $word, "\"`")] $noun($noun_si)),+ }

        impl $name {
            /// Every word, as surveys write it.
            pub const WORDS: &'static [&'static str] = &[$($word),+];
            /// The word that tells which one this is.
            pub const fn as_str(&self) -> &'static str { match self { $($name::$noun(_) => $word),+ } }
        }

        $(impl From<$noun> for $name { fn from(noun: $noun) -> Self { $name::$noun(noun) } })+

        impl $crate::quantity::Field for $name {
            type Si = $si;
            fn read(
                tree: &$crate::quantity::Tree,
                place: &$crate::quantity::Place,
                row: &$crate::quantity::Row,
            ) -> $crate::Result<Self> {
                let at = place.then($tag);
                let Some(tag) = tree.get($tag) else {
                    let row = $crate::quantity::Row { means: concat!("the ", $tag), ..*row };
                    return Err($crate::quantity::missing_word(tree, &at, &row, Self::WORDS));
                };
                match $crate::quantity::word(tag, &at, row, Self::WORDS)? {
                    $($word => <$noun as $crate::quantity::Noun>::read_tagged(tree, place, Some($tag)).map($name::$noun),)+
                    other => Err($crate::quantity::unknown_word(other, &at, row, Self::WORDS, tag.line)),
                }
            }
            fn write(&self) -> $crate::quantity::Tree {
                let mut tree = match self { $($name::$noun(noun) => $crate::quantity::Field::write(noun)),+ };
                if let $crate::quantity::Value::Table(entries) = &mut tree.value {
                    let word = $crate::quantity::Value::Text(self.as_str().to_string());
                    entries.insert(0, ($tag.to_string(), word.into()));
                }
                tree
            }
            fn get(&self, path: &[&str]) -> Option<$crate::quantity::Datum<'_>> {
                match path {
                    [$tag] => Some($crate::quantity::Datum::Text(self.as_str())),
                    _ => match self { $($name::$noun(noun) => $crate::quantity::Field::get(noun, path)),+ },
                }
            }
            /// The word itself may be put too: another one than it is makes a blank noun of that kind.
            fn put(&mut self, path: &[&str], datum: $crate::quantity::Datum<'_>) -> $crate::quantity::Put {
                if let [$tag] = path {
                    match datum {
                        $crate::quantity::Datum::Text(word) if word == self.as_str() => {}
                        $( $crate::quantity::Datum::Text($word) => {
                            *self = $name::$noun($crate::quantity::Field::blank());
                        } )+
                        _ => return $crate::quantity::Put::WrongKind,
                    }
                    return $crate::quantity::Put::Done;
                }
                match self { $($name::$noun(noun) => $crate::quantity::Field::put(noun, path, datum)),+ }
            }
            fn blank() -> Self {
                let each: &[fn() -> Self] = &[$( || $name::$noun($crate::quantity::Field::blank()) ),+];
                each[0]()
            }
            fn kind(path: &[&str]) -> Option<$crate::quantity::Kind> {
                if let [$tag] = path {
                    return Some($crate::quantity::Kind::Text);
                }
                let none = None;
                $( let none = none.or_else(|| <$noun as $crate::quantity::Field>::kind(path)); )+
                none
            }
            fn refusal(
                path: &[&str],
                tree: &$crate::quantity::Tree,
                place: &$crate::quantity::Place,
                row: &$crate::quantity::Row,
            ) -> Option<$crate::Error> {
                if let [$tag] = path {
                    let row = $crate::quantity::Row { means: concat!("the ", $tag), ..*row };
                    let at = place.then($tag);
                    return match $crate::quantity::word(tree, &at, &row, Self::WORDS) {
                        Ok(word) if Self::WORDS.contains(&word) => None,
                        Ok(word) => Some($crate::quantity::unknown_word(word, &at, &row, Self::WORDS, tree.line)),
                        Err(error) => Some(error),
                    };
                }
                let none = None;
                $( let none = none.or_else(|| <$noun as $crate::quantity::Field>::refusal(path, tree, place, row)); )+
                none
            }
            fn check(
                &self,
                place: &$crate::quantity::Place,
                row: &$crate::quantity::Row,
                notes: &mut $crate::quantity::Notes,
            ) -> $crate::Result<()> {
                match self { $($name::$noun(noun) => $crate::quantity::Field::check(noun, place, row, notes)),+ }
            }
            fn si(&self, unit: &$crate::quantity::Unit) -> $si {
                match self { $($name::$noun(noun) => $si::$noun($crate::quantity::Field::si(noun, unit))),+ }
            }
            fn public(si: $si, unit: &$crate::quantity::Unit) -> Self {
                match si { $($si::$noun(noun) => $name::$noun(<$noun as $crate::quantity::Field>::public(noun, unit))),+ }
            }
            fn repr(&self) -> String {
                match self { $($name::$noun(noun) => $crate::quantity::Field::repr(noun)),+ }
            }
            const NESTED: bool = true;
            fn show(
                &self,
                name: &str,
                row: &'static $crate::quantity::Row,
                depth: usize,
                out: &mut Vec<$crate::quantity::show::Entry>,
            ) {
                let name = format!("{name} ({})", self.as_str());
                match self { $($name::$noun(noun) => $crate::quantity::Field::show(noun, &name, row, depth, out)),+ }
            }
            fn register(
                path: String,
                row: &'static $crate::quantity::Row,
                out: &mut Vec<(String, &'static $crate::quantity::Row)>,
            ) {
                $( <$noun as $crate::quantity::Field>::register(path.clone(), row, out); )+
            }
        }
    };
}

/// The error for a table that does not say which noun it is.
pub fn missing_word(tree: &Tree, place: &Place, row: &Row, words: &[&str]) -> Error {
    let path = place.path();
    let limit = format!("one of {}", words.join(", "));
    Error::new(Code::Missing, &path, format!("{path} is missing: {} must be {limit}", row.means))
        .limit(limit)
        .at_line(tree.line)
}

/// Refuses a result with a number that is infinite or none, naming the first, and what it is computed from.
pub fn only_numbers<T: Noun>(result: &T) -> Result<()> {
    result.check_computed(&mut Notes::default()).map_err(infinite::<T>)
}

/// Says of a failed check of results what came out infinite and how it is computed.
pub fn infinite<T: Noun>(mut error: Error) -> Error {
    let row = row_of::<T>(&error.field).unwrap_or(&Row::BLANK);
    let value = match *error.value {
        Given::Number(number) => show::quantity(number, row.unit),
        _ => "no number".into(),
    };
    error.is_result = true;
    error.limit = "a finite number".into();
    error.message = format!(
        "{} comes out as {value} ({}): some values of this survey are too extreme together",
        error.field, row.means
    );
    if !row.formula.is_empty() {
        error.message += &format!(". It is computed by {}", row.formula.replace(['{', '}'], ""));
    }
    error
}

/// Checks a noun that was built in code, and gathers warnings about unusual values.
pub fn checked<T: Noun>(noun: &T, root: &str) -> Result<Notes> {
    let mut notes = Notes::default();
    noun.check(&Place::root(root), &Row::BLANK, &mut notes)?;
    Ok(notes)
}
