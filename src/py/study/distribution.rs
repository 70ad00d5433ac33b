//! `Distribution`: what is thought of an uncertain input.

use super::columns::Foreign;
use crate::study::Distribution as Core;
use pyo3::prelude::*;
use std::hash::{DefaultHasher, Hash, Hasher};

/// What is thought of an uncertain input: a distribution in the unit that its path carries.
///
/// Made by the functions below; each refuses parameters that are no distribution. Whether it fits the allowed range of a
/// path is checked where the path is known: `sample`, `sensitivity`, `calibrate`.
///
/// Examples
/// --------
/// >>> import pinfilm
/// >>> price = pinfilm.Distribution.triangular(low=0.12, mode=0.19, high=0.30)
/// >>> round(price.quantile(0.95), 3)
/// 0.269
#[pyclass(frozen, module = "pinfilm")]
pub struct Distribution(pub Core);

fn made(distribution: Core) -> PyResult<Distribution> {
    distribution.check("distribution")?;
    Ok(Distribution(distribution))
}

#[pymethods]
impl Distribution {
    /// One value, certain.
    #[staticmethod]
    fn constant(value: f64) -> PyResult<Self> {
        made(Core::Constant(value))
    }
    /// Bell curve, from mean and standard deviation.
    #[staticmethod]
    fn normal(mean: f64, sd: f64) -> PyResult<Self> {
        made(Core::Normal { mean, sd })
    }
    /// Bell curve, from the values that 5 % and 95 % lie below.
    #[staticmethod]
    fn normal_90(p5: f64, p95: f64) -> PyResult<Self> {
        made(Core::normal_90(p5, p95))
    }
    /// Bell curve cut off at both ends; mean and sd are those before the cut.
    #[staticmethod]
    fn truncated_normal(mean: f64, sd: f64, low: f64, high: f64) -> PyResult<Self> {
        made(Core::TruncatedNormal { mean, sd, low, high })
    }
    /// Bell curve of the logarithm, from the median and the standard deviation of the natural logarithm.
    #[staticmethod]
    fn lognormal(median: f64, ln_sd: f64) -> PyResult<Self> {
        made(Core::Lognormal { median, ln_sd })
    }
    /// Bell curve of the logarithm, from the values that 5 % and 95 % lie below.
    #[staticmethod]
    fn lognormal_90(p5: f64, p95: f64) -> PyResult<Self> {
        made(Core::lognormal_90(p5, p95))
    }
    /// Bell curve of the logarithm with a share `within` of it between median / factor and median × factor.
    #[staticmethod]
    fn lognormal_factor(median: f64, factor: f64, within: f64) -> PyResult<Self> {
        made(Core::lognormal_within(median, factor, within))
    }
    /// Any value between two as likely as any other.
    #[staticmethod]
    fn uniform(low: f64, high: f64) -> PyResult<Self> {
        made(Core::Uniform { low, high })
    }
    /// Any factor between two (both above 0) as likely as any other.
    #[staticmethod]
    fn loguniform(low: f64, high: f64) -> PyResult<Self> {
        made(Core::LogUniform { low, high })
    }
    /// Least, most likely and greatest value.
    #[staticmethod]
    fn triangular(low: f64, mode: f64, high: f64) -> PyResult<Self> {
        made(Core::Triangular { low, mode, high })
    }
    /// Least, most likely and greatest value with a rounded peak, as project planning takes it.
    #[staticmethod]
    fn pert(low: f64, mode: f64, high: f64) -> PyResult<Self> {
        made(Core::pert(low, mode, high))
    }
    /// Beta distribution with shapes a and b, stretched from low to high.
    #[staticmethod]
    fn beta(low: f64, high: f64, a: f64, b: f64) -> PyResult<Self> {
        made(Core::Beta { low, high, a, b })
    }
    /// Beta distribution between 0 and 1, from the values that 5 % and 95 % lie below: for shares.
    #[staticmethod]
    fn beta_90(p5: f64, p95: f64) -> PyResult<Self> {
        made(Core::beta_90(p5, p95)?)
    }
    /// The word for its kind.
    #[getter]
    fn kind(&self) -> String {
        self.0.kind().replace(' ', "_")
    }
    /// Its parameters by name.
    #[getter]
    fn parameters(&self) -> std::collections::BTreeMap<&'static str, f64> {
        self.0.parameters().into_iter().collect()
    }
    /// The value that a share `u` (above 0, below 1) lies below.
    fn quantile(&self, u: f64) -> PyResult<f64> {
        Ok(self.0.checked_quantile(u)?)
    }
    fn __repr__(&self) -> String {
        let each = self.0.parameters().into_iter().map(|(name, value)| format!("{name}={value:?}"));
        format!("Distribution.{}({})", self.kind(), each.collect::<Vec<_>>().join(", "))
    }
    fn _repr_html_(&self) -> String {
        crate::quantity::show::html_text(&self.__repr__())
    }
    fn __eq__(&self, other: &Bound<'_, PyAny>) -> bool {
        other.cast::<Self>().is_ok_and(|other| other.get().0 == self.0)
    }
    fn __hash__(&self) -> u64 {
        let mut hasher = DefaultHasher::new();
        self.__repr__().hash(&mut hasher);
        hasher.finish()
    }
    fn __reduce__<'py>(slf: &Bound<'py, Self>) -> PyResult<(Bound<'py, PyAny>, Foreign)> {
        let numbers = slf.get().0.parameters().into_iter().map(|(_, value)| value);
        let numbers = pyo3::types::PyTuple::new(slf.py(), numbers.collect::<Vec<_>>())?;
        Ok((slf.get_type().getattr(slf.get().kind().as_str())?, Foreign(numbers.into_any().unbind())))
    }
}
