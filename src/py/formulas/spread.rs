//! A formula over its arguments: one number each, or arrays that broadcast.

use super::given::{Argument, Values, index};
use crate::error::{Code, Error, Result};
use crate::quantity::Row;
use numpy::{PyArray1, PyArrayMethods};
use pyo3::prelude::*;
use pyo3::types::{PyDict, PyFloat};
use std::time::{Duration, Instant};

/// What a formula of the core returns, as a list of numbers in SI.
pub trait Answer<const K: usize> {
    /// The numbers.
    fn answer(self) -> Result<[f64; K]>;
}
impl Answer<1> for f64 {
    fn answer(self) -> Result<[f64; 1]> {
        Ok([self])
    }
}
impl Answer<1> for Result<f64> {
    fn answer(self) -> Result<[f64; 1]> {
        self.map(|value| [value])
    }
}
impl Answer<2> for Result<(f64, f64)> {
    fn answer(self) -> Result<[f64; 2]> {
        self.map(|(a, b)| [a, b])
    }
}
impl<const K: usize> Answer<K> for [f64; K] {
    fn answer(self) -> Result<[f64; K]> {
        Ok(self)
    }
}
impl<const K: usize> Answer<K> for Result<[f64; K]> {
    fn answer(self) -> Result<[f64; K]> {
        self
    }
}

/// The formula `f` for `arguments`, each result in the unit of its row.
///
/// Numbers give numbers and refuse what has no answer. Arrays give arrays: NaN for NaN and for what has no answer; any
/// other failure names the first element it happened at. Long runs leave Python to others and can be interrupted.
pub fn spread<'py, const N: usize, const K: usize>(
    py: Python<'py>,
    arguments: &[Argument<'py>; N],
    results: [&'static Row; K],
    f: impl Fn([f64; N]) -> Result<[f64; K]> + Sync,
) -> PyResult<[Bound<'py, PyAny>; K]> {
    let Some(shape) = common_shape(arguments)? else {
        let values = f(std::array::from_fn(|i| match arguments[i].values {
            Values::One(value) => value,
            _ => f64::NAN,
        }))?;
        return Ok(std::array::from_fn(|k| PyFloat::new(py, results[k].unit.from_si(values[k])).into_any()));
    };
    let columns = Columns::new(arguments.each_ref().map(|argument| &argument.values), &shape);
    let total = columns.total;
    let mut filled: [Vec<f64>; K] = std::array::from_fn(|_| Vec::with_capacity(total));
    let mut walk = columns.start();
    while walk.done < total {
        py.detach(|| columns.fill(&mut walk, &mut filled, &results, &f)).map_err(|mut error| {
            error.message += &format!(" (at element {} of the arrays)", index(walk.done, &shape));
            error
        })?;
        py.check_signals()?;
    }
    let mut arrays = Vec::with_capacity(K);
    for values in filled {
        let array = PyArray1::from_vec(py, values).reshape(shape.clone())?;
        arrays.push(labelled(array.into_any(), &shape, arguments)?);
    }
    let mut arrays = arrays.into_iter();
    Ok(std::array::from_fn(|_| arrays.next().unwrap_or_else(|| py.None().into_bound(py))))
}

/// The common shape of the arrays; none if all arguments are numbers.
pub fn common_shape(arguments: &[Argument<'_>]) -> PyResult<Option<Vec<usize>>> {
    let mut common: Option<(Vec<usize>, &'static str)> = None;
    for argument in arguments {
        let Values::Many { shape, .. } = &argument.values else { continue };
        common = Some(match common {
            None => (shape.clone(), argument.row.name),
            Some((so_far, name)) => match joined(&so_far, shape) {
                Some(both) => (both, argument.row.name),
                None => return Err(no_fit(name, &so_far, argument.row.name, shape).into()),
            },
        });
    }
    Ok(common.map(|(shape, _)| shape))
}

/// Two shapes broadcast by NumPy's rule: from the last axis on, lengths are equal or one.
pub fn joined(a: &[usize], b: &[usize]) -> Option<Vec<usize>> {
    let axes = a.len().max(b.len());
    let length = |shape: &[usize], axis: usize| (axis + shape.len()).checked_sub(axes).map_or(1, |at| shape[at]);
    (0..axes)
        .map(|axis| match (length(a, axis), length(b, axis)) {
            (m, n) if m == n || n == 1 => Some(m),
            (1, n) => Some(n),
            _ => None,
        })
        .collect()
}

/// The error for shapes that do not broadcast.
pub fn no_fit(a: &str, a_shape: &[usize], b: &str, b_shape: &[usize]) -> Error {
    let message = format!(
        "the arrays do not fit together: {b} has the shape {b_shape:?}, but what comes before it, up to {a}, has \
         {a_shape:?}; from the last axis on, lengths must be equal or 1"
    );
    Error::new(Code::Inconsistent, b, message).text_value(format!("{b_shape:?}")).limit(format!("{a_shape:?}"))
}

/// The arguments as columns of equal length, some of them repeated.
struct Columns<'a, const N: usize> {
    values: [&'a Values; N],
    shape: &'a [usize],
    /// Elements to go on in each column for one step along each axis.
    strides: Vec<[usize; N]>,
    total: usize,
    /// Every array has the common shape: element by element.
    plain: bool,
}

/// Where in the columns we are.
struct Walk<const N: usize> {
    done: usize,
    place: Vec<usize>,
    offset: [usize; N],
}

/// How long a formula runs before others, and an interrupt, get their turn.
const TURN: Duration = Duration::from_millis(50);

impl<'a, const N: usize> Columns<'a, N> {
    fn new(values: [&'a Values; N], shape: &'a [usize]) -> Self {
        let mut strides = vec![[0; N]; shape.len()];
        let mut plain = true;
        for (column, values) in values.iter().enumerate() {
            let Values::Many { shape: own, .. } = values else { continue };
            plain &= own == shape;
            let mut stride = 1;
            for (axis, &length) in own.iter().enumerate().rev() {
                if length != 1 {
                    strides[axis + shape.len() - own.len()][column] = stride;
                }
                stride *= length;
            }
        }
        Columns { values, shape, strides, total: shape.iter().product(), plain }
    }

    fn start(&self) -> Walk<N> {
        Walk { done: 0, place: vec![0; self.shape.len()], offset: [0; N] }
    }

    /// Goes on for one turn; after an error the walk stands at the element it happened at.
    fn fill<const K: usize>(
        &self,
        walk: &mut Walk<N>,
        filled: &mut [Vec<f64>; K],
        results: &[&'static Row; K],
        f: &(impl Fn([f64; N]) -> Result<[f64; K]> + Sync),
    ) -> Result<()> {
        let start = Instant::now();
        while walk.done < self.total {
            let mut unknown = false;
            let values: [f64; N] = std::array::from_fn(|i| match self.values[i] {
                Values::Absent => f64::NAN,
                Values::One(value) => *value,
                Values::Many { values, .. } => {
                    let value = values[if self.plain { walk.done } else { walk.offset[i] }];
                    unknown |= value.is_nan();
                    value
                }
            });
            let answer = if unknown { [f64::NAN; K] } else { or_unknown(f(values))? };
            for k in 0..K {
                filled[k].push(results[k].unit.from_si(answer[k]));
            }
            walk.done += 1;
            if !self.plain {
                self.step(walk);
            }
            if walk.done.is_multiple_of(64) && start.elapsed() > TURN {
                break;
            }
        }
        Ok(())
    }

    fn step(&self, walk: &mut Walk<N>) {
        for axis in (0..self.shape.len()).rev() {
            walk.place[axis] += 1;
            let back = if walk.place[axis] < self.shape[axis] { None } else { Some(self.shape[axis] - 1) };
            for (offset, stride) in walk.offset.iter_mut().zip(&self.strides[axis]) {
                match back {
                    None => *offset += stride,
                    Some(steps) => *offset -= steps * stride,
                }
            }
            if back.is_none() {
                return;
            }
            walk.place[axis] = 0;
        }
    }
}

/// What has no answer is not a number in an array.
pub fn or_unknown<const K: usize>(answer: Result<[f64; K]>) -> Result<[f64; K]> {
    match answer {
        Err(error) if error.code == Code::NoAnswer => Ok([f64::NAN; K]),
        answer => answer,
    }
}

/// The result with the labels of the first labelled argument, if it has its shape; labels must agree.
pub fn labelled<'py>(
    array: Bound<'py, PyAny>,
    shape: &[usize],
    arguments: &[Argument<'py>],
) -> PyResult<Bound<'py, PyAny>> {
    let mut series = arguments.iter().filter_map(|argument| Some((argument.series.as_ref()?, argument)));
    let Some((first, _)) = series.next() else { return Ok(array) };
    let labels = first.getattr("index")?;
    for (other, argument) in series {
        if !labels.call_method1("equals", (other.getattr("index")?,))?.is_truthy()? {
            let name = argument.row.name;
            let message = format!("{name} has other labels than the labelled argument before it: align them first");
            return Err(Error::new(Code::Inconsistent, name, message).limit("equal labels").into());
        }
    }
    if first.getattr("shape")?.extract::<Vec<usize>>()? != shape {
        return Ok(array);
    }
    let keywords = PyDict::new(array.py());
    keywords.set_item("index", labels)?;
    if let Some(columns) = first.getattr_opt("columns")? {
        keywords.set_item("columns", columns)?;
    }
    first.get_type().call((array,), Some(&keywords))
}

/// A count; a number with a fraction is refused.
pub fn whole(name: &'static str, value: f64) -> Result<i64> {
    if value.fract() == 0.0 {
        return Ok(value as i64);
    }
    let message = format!("{name} = {value} is not a whole number, but it counts something");
    Err(Error::new(Code::WrongType, name, message).number(value).limit("a whole number"))
}
