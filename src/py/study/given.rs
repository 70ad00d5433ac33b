//! What Python gives to a study: lines, distributions, correlations, grids.

use super::distribution::Distribution;
use crate::error::{Code, Error};
use crate::py::border::to_tree;
use crate::py::nouns::classes::Line;
use crate::study::{Axis, Correlation, Doubt, Subject, Uncertain};
use pyo3::exceptions::PyTypeError;
use pyo3::prelude::*;
use pyo3::types::{PyDict, PyMapping, PyString, PyTuple};

macro_rules! hinted {
    ($($(#[doc = $doc:literal])+ $name:ident as $hint:literal;)+) => { $(
        $(#[doc = $doc])+
        pub struct $name<'py>(pub Bound<'py, PyAny>);

        impl<'a, 'py> FromPyObject<'a, 'py> for $name<'py> {
            type Error = PyErr;
            #[cfg(feature = "stubs")]
            const INPUT_TYPE: pyo3::inspect::PyStaticExpr = pyo3::type_hint_identifier!("pinfilm.typing", $hint);
            fn extract(object: Borrowed<'a, 'py, PyAny>) -> PyResult<Self> {
                Ok($name(object.to_owned()))
            }
        }
    )+ };
}

hinted! {
    /// A line, or a pair of lines.
    Lines as "Lines";
    /// Distributions by path.
    Doubts as "Doubts";
    /// Correlations by pairs of paths, or as a matrix.
    Correlations as "Correlations";
    /// Values by path.
    Grid as "Grid";
}

impl Lines<'_> {
    /// As a subject of studies.
    pub fn subject(&self) -> PyResult<Subject> {
        if let Ok(line) = self.0.cast::<Line>() {
            return Ok(line.get().0.clone().into());
        }
        let both = || -> PyResult<Option<Subject>> {
            if self.0.is_instance_of::<PyString>() || self.0.len()? != 2 {
                return Ok(None);
            }
            let (now, proposed) = (self.0.get_item(0)?, self.0.get_item(1)?);
            let lines = (now.cast::<Line>().ok(), proposed.cast::<Line>().ok());
            Ok(if let (Some(now), Some(proposed)) = lines {
                Some((now.get().0.clone(), proposed.get().0.clone()).into())
            } else {
                None
            })
        };
        match both() {
            Ok(Some(subject)) => Ok(subject),
            _ => Err(PyTypeError::new_err(format!(
                "a Line or a pair (now, proposed) of lines is studied, not {}",
                self.0.get_type()
            ))),
        }
    }
}

/// The items of a mapping whose keys are dotted paths.
fn by_path<'py>(object: &Bound<'py, PyAny>, what: &str) -> PyResult<Vec<(String, Bound<'py, PyAny>)>> {
    let wrong = || PyTypeError::new_err(format!("{what} is a dict of dotted paths, not {}", object.get_type()));
    let dict = match object.cast::<PyDict>() {
        Ok(dict) => dict.clone(),
        Err(_) => {
            let dict = PyDict::new(object.py());
            dict.update(object.cast::<PyMapping>().map_err(|_| wrong())?)?;
            dict
        }
    };
    let item = |(key, value): (Bound<'py, PyAny>, Bound<'py, PyAny>)| {
        Ok((key.extract::<String>().map_err(|_| PyTypeError::new_err(format!("the keys of {what} are text")))?, value))
    };
    dict.iter().map(item).collect()
}

/// The uncertain inputs of a subject: those named, or the usual ones.
pub fn uncertain(
    subject: Subject,
    doubts: Option<&Doubts<'_>>,
    correlations: Option<&Correlations<'_>>,
    usual: impl FnOnce(Subject) -> crate::Result<Uncertain>,
) -> PyResult<Uncertain> {
    let uncertain = match doubts {
        None => usual(subject)?,
        Some(doubts) => {
            let each = by_path(&doubts.0, "uncertain")?;
            let read = each.into_iter().map(|(path, value)| doubt(&path, &value).map(|doubt| (path, doubt)));
            Uncertain::new(subject, &read.collect::<PyResult<Vec<_>>>()?)?
        }
    };
    match correlations {
        None => Ok(uncertain),
        Some(given) => {
            let names: Vec<String> = uncertain.names().to_vec();
            let names: Vec<&str> = names.iter().map(String::as_str).collect();
            Ok(uncertain.correlated(Some(correlation(&names, &given.0)?))?)
        }
    }
}

fn doubt(path: &str, value: &Bound<'_, PyAny>) -> PyResult<Doubt> {
    if value.is_none() {
        return Ok(Doubt::Register);
    }
    if let Ok(one) = value.cast::<Distribution>() {
        return Ok(Doubt::Same(one.get().0));
    }
    if let Ok(pair) = value.cast::<PyTuple>()
        && let Ok((now, proposed)) = pair.extract::<(Bound<'_, Distribution>, Bound<'_, Distribution>)>()
    {
        return Ok(Doubt::Each(now.get().0, proposed.get().0));
    }
    let kind = value.get_type().name()?.to_string();
    let message = format!(
        "{path} has a {kind} where a distribution is wanted: give pinfilm.Distribution, such as \
         Distribution.triangular(low, mode, high), a pair of them for (now, proposed), or None for what the register thinks"
    );
    Err(Error::new(Code::WrongType, path, message).text_value(kind).into())
}

fn correlation(names: &[&str], given: &Bound<'_, PyAny>) -> PyResult<Correlation> {
    if let Ok(pairs) = given.cast::<PyMapping>() {
        let place = |path: &str| {
            names.iter().position(|name| *name == path).ok_or_else(|| {
                let near = crate::quantity::nearest(path, names.iter().copied());
                let hint = near.map_or_else(|| "name it there too".to_string(), |near| format!("did you mean {near}?"));
                let message = format!("correlation names {path}, which is not among the uncertain inputs: {hint}");
                Error::new(Code::UnknownKey, path, message).text_value(path).limit(hint)
            })
        };
        let mut list = Vec::new();
        for item in pairs.items()?.iter() {
            let wrong =
                |_| PyTypeError::new_err("correlation is a dict of pairs of paths, such as {(a, b): 0.5}, or a matrix");
            let ((a, b), r): ((String, String), f64) = item.extract().map_err(wrong)?;
            list.push((place(&a)?, place(&b)?, r));
        }
        return Ok(Correlation::from_pairs(names, &list)?);
    }
    let rows =
        given.extract::<Vec<Vec<f64>>>().or_else(|_| given.call_method0("tolist")?.extract()).map_err(|_: PyErr| {
            PyTypeError::new_err(
                "correlation is a dict of pairs of paths, such as {(a, b): 0.5}, or a matrix of numbers",
            )
        })?;
    Ok(Correlation::from_matrix(names, &rows)?)
}

/// Values of each axis, as Python gave them.
pub type Values<'py> = Vec<Vec<Bound<'py, PyAny>>>;

/// The axes of a grid, with their values as Python gave them.
pub fn axes<'py>(grid: &Grid<'py>) -> PyResult<(Vec<Axis>, Values<'py>)> {
    let (mut axes, mut given) = (Vec::new(), Vec::new());
    for (path, values) in by_path(&grid.0, "the grid")? {
        let single = values.is_instance_of::<PyString>() || values.is_instance_of::<PyDict>();
        let items = if single { None } else { values.try_iter().ok() };
        let Some(items) = items else {
            let message = format!("{path} needs a list of the values that it takes in turn");
            return Err(Error::new(Code::WrongType, &path, message).into());
        };
        let items = items.collect::<PyResult<Vec<_>>>()?;
        let row = Subject::input_row(path.trim_start_matches("now.").trim_start_matches("proposed.")).ok();
        let trees = items.iter().map(|item| to_tree(item, &path, row)).collect::<PyResult<Vec<_>>>()?;
        axes.push(Axis { path, values: trees });
        given.push(items);
    }
    Ok((axes, given))
}
