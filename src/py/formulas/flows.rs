//! Formulas over cash flows: the last axis holds the years of one project, the axes before it hold projects.

use super::declare::{Floats, Own, row};
use super::given::{Argument, Given, Values, index};
use super::spread::{joined, no_fit, or_unknown};
use crate::error::{Code, Error, Result};
use numpy::{PyArray1, PyArrayMethods};
use pyo3::prelude::*;
use pyo3::types::PyFloat;

/// Cash flows as projects.
struct Projects {
    flows: Vec<f64>,
    /// Flows of one project.
    length: usize,
    /// Axes of the projects; empty for a single one.
    shape: Vec<usize>,
}

impl Projects {
    fn read(given: &Given<'_>) -> PyResult<Projects> {
        let row = row!(Own, cash_flows);
        let (flows, mut shape) = match Argument::read(given, row)?.values {
            Values::Many { values, shape } if !shape.is_empty() => (values, shape),
            _ => {
                let message = "cash_flows is a single number, but it must be the flows of now and of each year end";
                return Err(Error::new(Code::WrongType, row.name, message).limit("a list of numbers").into());
            }
        };
        let length = shape.pop().unwrap_or(0);
        if length == 0 {
            let message = "cash_flows is empty: give the flow of now and that of each year end";
            return Err(Error::new(Code::Missing, row.name, message).limit("at least one flow").into());
        }
        if shape.is_empty()
            && let Some(at) = flows.iter().position(|flow| flow.is_nan())
        {
            let message = format!("cash_flows[{at}] is not a finite number: give every flow of the project");
            return Err(Error::new(Code::NotFinite, row.name, message).number(f64::NAN).into());
        }
        Ok(Projects { flows, length, shape })
    }

    fn project(&self, at: usize) -> &[f64] {
        &self.flows[at * self.length..(at + 1) * self.length]
    }
}

/// The flows of a single project.
pub fn of_one_project(given: &Given<'_>) -> PyResult<Vec<f64>> {
    let projects = Projects::read(given)?;
    if projects.shape.is_empty() {
        return Ok(projects.flows);
    }
    let message = "cash_flows has several axes, but this formula takes one project: call it for each";
    Err(Error::new(Code::WrongType, "cash_flows", message).limit("a list of numbers").into())
}

/// A word for each project, and whether there was a single one; `nan` where a flow is not known.
pub fn words_of_projects(
    given: &Given<'_>,
    word: impl Fn(&[f64]) -> &'static str,
) -> PyResult<(Vec<&'static str>, bool)> {
    let projects = Projects::read(given)?;
    if projects.shape.len() > 1 {
        let message = "cash_flows has more than two axes: give one project, or a table with one project in each row";
        return Err(Error::new(Code::WrongType, "cash_flows", message).limit("one or two axes").into());
    }
    let count = projects.shape.iter().product();
    let words = (0..count).map(|at| {
        let flows = projects.project(at);
        if flows.iter().any(|flow| flow.is_nan()) { "nan" } else { word(flows) }
    });
    Ok((words.collect(), projects.shape.is_empty()))
}

/// A number for each project, and for each rate where one is given; they broadcast.
pub fn for_each_project<'py>(
    py: Python<'py>,
    rate: Option<&Given<'py>>,
    flows: &Given<'py>,
    f: impl Fn(f64, &[f64]) -> Result<f64> + Sync,
) -> PyResult<Floats> {
    let projects = Projects::read(flows)?;
    let rates = rate.map(|rate| Argument::read(rate, row!(Own, rate))).transpose()?;
    let (rates, rate_shape) = match rates.map(|rates| rates.values) {
        Some(Values::Many { values, shape }) => (values, Some(shape)),
        Some(Values::One(rate)) => (vec![rate], None),
        _ => (vec![0.0], None),
    };
    if projects.shape.is_empty() && rate_shape.is_none() {
        return Ok(Floats(PyFloat::new(py, f(rates[0], &projects.flows)?).into_any().unbind()));
    }
    let rate_shape = rate_shape.unwrap_or_default();
    let Some(shape) = joined(&rate_shape, &projects.shape) else {
        return Err(no_fit("rate", &rate_shape, "cash_flows", &projects.shape).into());
    };
    let total: usize = shape.iter().product();
    let values = py.detach(|| -> Result<Vec<f64>> {
        let mut values = Vec::with_capacity(total);
        for at in 0..total {
            let rate = rates[part(at, &shape, &rate_shape)];
            let flows = projects.project(part(at, &shape, &projects.shape));
            if rate.is_nan() || flows.iter().any(|flow| flow.is_nan()) {
                values.push(f64::NAN);
                continue;
            }
            let [value] = or_unknown(f(rate, flows).map(|value| [value])).map_err(|mut error| {
                error.message += &format!(" (at project {})", index(at, &shape));
                error
            })?;
            values.push(value);
        }
        Ok(values)
    })?;
    Ok(Floats(PyArray1::from_vec(py, values).reshape(shape)?.into_any().unbind()))
}

/// Where in an array of the shape `own` the element `at` of the broadcast shape comes from.
fn part(at: usize, shape: &[usize], own: &[usize]) -> usize {
    let (mut rest, mut place, mut stride) = (at, 0, 1);
    for back in 1..=shape.len() {
        let length = shape[shape.len() - back];
        let step = rest % length.max(1);
        rest /= length.max(1);
        if back <= own.len() {
            let own_length = own[own.len() - back];
            if own_length > 1 {
                place += step * stride;
            }
            stride *= own_length;
        }
    }
    place
}
