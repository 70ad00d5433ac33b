//! How a formula is declared: its name, its arguments with the register rows they are read by, and the function of the
//! core that computes it.

use super::spread::Answer;
use crate::error::{Code, Error};
use crate::quantity::{ARGUMENTS, OUTCOMES, Row, find, nearest, same};
use pyo3::prelude::*;

/// A formula as the glossary and the tests see it.
pub struct Formula {
    /// The Python module it stands in.
    pub module: &'static str,
    /// Its name.
    pub name: &'static str,
    /// The rows of its arguments, in order.
    pub arguments: &'static [&'static Row],
    /// The rows of its results.
    pub results: &'static [Row],
}

/// What a formula gives back in Python.
pub trait Outcome<const K: usize>: Sized {
    /// The rows of its results; `own` is the row of the name of the formula, where it has one.
    fn rows(own: Option<&'static Row>) -> [&'static Row; K];
    /// Made of the results.
    fn of(values: [Bound<'_, PyAny>; K]) -> PyResult<Self>;
}

/// A number for numbers, an array for arrays.
pub struct Floats(pub Py<PyAny>);

impl<'py> IntoPyObject<'py> for Floats {
    type Target = PyAny;
    type Output = Bound<'py, PyAny>;
    type Error = PyErr;
    #[cfg(feature = "stubs")]
    const OUTPUT_TYPE: pyo3::inspect::PyStaticExpr = pyo3::type_hint_identifier!("pinfilm.typing", "FloatsOut");
    fn into_pyobject(self, py: Python<'py>) -> PyResult<Self::Output> {
        Ok(self.0.into_bound(py))
    }
}

impl Outcome<1> for Floats {
    fn rows(own: Option<&'static Row>) -> [&'static Row; 1] {
        [own.unwrap_or(&Row::BLANK)]
    }
    fn of([value]: [Bound<'_, PyAny>; 1]) -> PyResult<Self> {
        Ok(Floats(value.unbind()))
    }
}

impl Outcome<2> for (Floats, Floats) {
    fn rows(own: Option<&'static Row>) -> [&'static Row; 2] {
        [own.unwrap_or(&Row::BLANK); 2]
    }
    fn of([a, b]: [Bound<'_, PyAny>; 2]) -> PyResult<Self> {
        Ok((Floats(a.unbind()), Floats(b.unbind())))
    }
}

/// Names the rows of arguments and results beyond surveys, beside the nouns in declarations.
pub struct Own;

impl Own {
    /// The rows.
    pub const ROWS: &'static [Row] = ARGUMENTS;
}

/// A choice of the core that arguments name by a word.
pub trait Choice: Copy + 'static {
    /// The words.
    const WORDS: &'static [(&'static str, Self)];
}

/// The choice that was named, or that of the row's default.
pub fn chosen<T: Choice>(given: Option<&str>, row: &'static Row) -> PyResult<T> {
    let word = given.unwrap_or(row.default.trim_matches('"'));
    if let Some((_, choice)) = T::WORDS.iter().find(|(known, _)| *known == word) {
        return Ok(*choice);
    }
    let words = T::WORDS.iter().map(|(known, _)| *known);
    let limit = format!("one of {}", words.clone().collect::<Vec<_>>().join(", "));
    let near = nearest(word, words).map_or_else(String::new, |near| format!(" Did you mean {near:?}?"));
    let message = format!("{} = {word:?} is not a choice: it must be {limit}.{near}", row.name);
    Err(Error::new(Code::UnknownChoice, row.name, message).text_value(word).limit(limit).into())
}

/// The answer of a core function, in the form that [`super::spread::spread`] takes.
pub fn answered<const K: usize>(answer: impl Answer<K>) -> crate::Result<[f64; K]> {
    answer.answer()
}

/// The row of an argument of this name in a noun, looked up at compile time.
macro_rules! row {
    ($noun:ident, $name:ident) => {
        const { $crate::quantity::named($noun::ROWS, stringify!($name)) }
    };
}

/// Declares the formulas of a module.
///
/// A line is `fn name(argument: Noun, …; optional: Noun, … | choice: CoreEnum, …) -> Outcome = core function;`. The
/// noun is the one whose row of the same name the argument is read by, `Own` for rows of formulas alone. The core
/// function gets the arguments in SI and in this order.
macro_rules! formulas {
    ($module:literal $(
        $(#[doc = $doc:literal])+
        fn $name:ident (
            $($arg:ident : $noun:ident),+ $(; $($opt:ident : $opt_noun:ident),+)? $(| $($word:ident : $choice:ty),+)?
        )
            -> $out:ty = $core:expr;
    )+) => {
        $(
            $(#[doc = $doc])+
            #[pyfunction]
            #[pyo3(signature = ($($arg),+ $(, $($opt = None),+)? $(, $($word = None),+)?))]
            #[allow(clippy::too_many_arguments)]
            pub fn $name<'py>(
                py: Python<'py>,
                $($arg: Given<'py>,)+
                $($($opt: Option<Given<'py>>,)+)?
                $($($word: Option<String>,)+)?
            ) -> PyResult<$out> {
                $($(let $word: $choice = chosen($word.as_deref(), row!(Own, $word))?;)+)?
                let arguments = [
                    $(Argument::read(&$arg, row!($noun, $arg))?,)+
                    $($(Argument::or_default($opt.as_ref(), row!($opt_noun, $opt))?,)+)?
                ];
                let rows = <$out as Outcome<_>>::rows(const { find(ARGUMENTS, stringify!($name)) });
                let values = spread(py, &arguments, rows, |[$($arg),+ $(, $($opt),+)?]| {
                    answered(($core)($($arg),+ $(, $($opt),+)? $(, $($word),+)?))
                })?;
                <$out as Outcome<_>>::of(values)
            }
        )+

        /// The formulas of this module that are declared here.
        pub const FORMULAS: &[Formula] = &[ $( Formula {
            module: $module,
            name: stringify!($name),
            arguments: &[
                $(row!($noun, $arg),)+ $($(row!($opt_noun, $opt),)+)? $($(row!(Own, $word),)+)?
            ],
            results: results_of(stringify!($name), stringify!($out)),
        } ),+ ];
    };
}

/// The rows of the results of a formula: those of its outcome, or the one of its own name.
pub const fn results_of(name: &'static str, outcome: &str) -> &'static [Row] {
    let mut i = 0;
    while i < OUTCOMES.len() {
        if same(OUTCOMES[i].0, outcome) {
            return OUTCOMES[i].1;
        }
        i += 1;
    }
    match find(ARGUMENTS, name) {
        Some(row) => std::slice::from_ref(row),
        None => &[],
    }
}

/// Declares, for the register, formulas that are written out: `name(argument: Noun, …) -> Outcome;`.
macro_rules! by_hand {
    ($module:literal $( $name:ident ( $($arg:ident : $noun:ident),+ ) -> $out:ident ; )+) => {
        /// The formulas of this module that are written out.
        pub const BY_HAND: &[Formula] = &[ $( Formula {
            module: $module,
            name: stringify!($name),
            arguments: &[$(row!($noun, $arg)),+],
            results: results_of(stringify!($name), stringify!($out)),
        } ),+ ];
    };
}

pub(super) use {by_hand, formulas, row};
