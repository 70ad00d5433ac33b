//! Columns across the border without a copy, by the Arrow C interface: the only place here with unsafe code.
//!
//! A producer hands a capsule that holds one of the interface's structs. Taking it over means moving the struct out and
//! leaving an empty one behind, so that the capsule's own clean-up finds nothing left to release.
#![allow(unsafe_code)]

use crate::error::{Code, Error};
use arrow_array::ffi::{FFI_ArrowArray, from_ffi};
use arrow_array::ffi_stream::{ArrayStreamReader, FFI_ArrowArrayStream, RecordBatchStreamReader};
use arrow_array::{
    ArrayReader, ArrayRef, RecordBatch, RecordBatchIterator, RecordBatchReader, make_array, new_empty_array,
};
use arrow_schema::ffi::FFI_ArrowSchema;
use arrow_schema::{ArrowError, Schema, SchemaRef};
use pyo3::prelude::*;
use pyo3::sync::critical_section::with_critical_section;
use pyo3::types::{PyCapsule, PyTuple};
use std::ffi::CStr;

const STREAM: &CStr = c"arrow_array_stream";
const ARRAY: &CStr = c"arrow_array";
const SCHEMA: &CStr = c"arrow_schema";

/// The error for a stream that breaks off; what its producer says of it comes along.
pub fn broken(error: &ArrowError) -> PyErr {
    Error::new(Code::NotATable, "table", format!("the table cannot be read: {error}")).into()
}

/// The struct out of a capsule of that name.
fn taken<T>(capsule: &Bound<'_, PyAny>, name: &CStr, empty: T) -> PyResult<T> {
    let pointer = capsule.cast::<PyCapsule>()?.pointer_checked(Some(name))?.cast::<T>();
    // SAFETY: by the Arrow PyCapsule interface a capsule of this name holds a valid struct of this type, which a consumer
    // takes over by moving it; an empty one (release is null) stays behind. The section keeps out other threads that were
    // handed the same capsule, where no global lock does.
    Ok(with_critical_section(capsule, || unsafe { pointer.as_ptr().replace(empty) }))
}

/// All batches of an object with `__arrow_c_stream__`.
pub fn batches(object: &Bound<'_, PyAny>) -> PyResult<(SchemaRef, Vec<RecordBatch>)> {
    let capsule = object.call_method0("__arrow_c_stream__")?;
    let stream = taken(&capsule, STREAM, FFI_ArrowArrayStream::empty())?;
    let reader = RecordBatchStreamReader::try_new(stream).map_err(|error| broken(&error))?;
    let schema = reader.schema();
    let batches = reader.collect::<Result<Vec<_>, _>>().map_err(|error| broken(&error))?;
    Ok((schema, batches))
}

/// One column of an object with `__arrow_c_stream__` (chunked) or `__arrow_c_array__`.
pub fn column(object: &Bound<'_, PyAny>) -> PyResult<ArrayRef> {
    if object.hasattr("__arrow_c_stream__")? {
        let capsule = object.call_method0("__arrow_c_stream__")?;
        let stream = taken(&capsule, STREAM, FFI_ArrowArrayStream::empty())?;
        let reader = ArrayStreamReader::try_new(stream).map_err(|error| broken(&error))?;
        let data_type = reader.field().data_type().clone();
        let chunks = reader.collect::<Result<Vec<ArrayRef>, _>>().map_err(|error| broken(&error))?;
        let chunks: Vec<&dyn arrow_array::Array> = chunks.iter().map(AsRef::as_ref).collect();
        return match chunks.as_slice() {
            [] => Ok(new_empty_array(&data_type)),
            several => arrow_select::concat::concat(several).map_err(|error| broken(&error)),
        };
    }
    let capsules = object.call_method0("__arrow_c_array__")?;
    let capsules = capsules.cast::<PyTuple>()?;
    let schema = taken(&capsules.get_item(0)?, SCHEMA, FFI_ArrowSchema::empty())?;
    let array = taken(&capsules.get_item(1)?, ARRAY, FFI_ArrowArray::empty())?;
    // SAFETY: both structs come from one call of `__arrow_c_array__`, so the schema describes the array.
    let data = unsafe { from_ffi(array, &schema) }.map_err(|error| broken(&error))?;
    Ok(make_array(data))
}

/// Batches as a stream that a consumer takes over; the columns are shared, not copied.
pub fn stream<'py>(py: Python<'py>, schema: &SchemaRef, batches: &[RecordBatch]) -> PyResult<Bound<'py, PyCapsule>> {
    let batches: Vec<Result<RecordBatch, ArrowError>> = batches.iter().cloned().map(Ok).collect();
    let reader: Box<dyn RecordBatchReader + Send> = Box::new(RecordBatchIterator::new(batches, schema.clone()));
    PyCapsule::new_with_value(py, FFI_ArrowArrayStream::new(reader), STREAM)
}

/// A schema by itself.
pub fn schema<'py>(py: Python<'py>, schema: &Schema) -> PyResult<Bound<'py, PyCapsule>> {
    let schema = FFI_ArrowSchema::try_from(schema).map_err(|error| broken(&error))?;
    PyCapsule::new_with_value(py, schema, SCHEMA)
}
