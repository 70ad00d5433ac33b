//! The column that holds whole surveys, as JSON text or as a struct.

use crate::error::{Code, Error, Result};
use crate::quantity::{Tree, Value};
use arrow_array::cast::AsArray;
use arrow_array::{Array, ArrayRef, LargeStringArray, types};
use arrow_cast::cast;
use arrow_schema::DataType;

/// Surveys of a column.
pub(super) enum Surveys {
    /// As JSON text.
    Json(LargeStringArray),
    /// As structs.
    Struct(ArrayRef),
}

impl Surveys {
    /// Whether a column of this type can hold surveys.
    pub fn can_be(data: &DataType) -> bool {
        match data {
            DataType::Struct(_) => true,
            DataType::Dictionary(_, value) => Self::can_be(value) && !matches!(**value, DataType::Struct(_)),
            other => matches!(other, DataType::Utf8 | DataType::LargeUtf8 | DataType::Utf8View | DataType::Null),
        }
    }

    /// The surveys of a column.
    pub fn of(array: &ArrayRef) -> Result<Surveys> {
        if matches!(array.data_type(), DataType::Struct(_)) {
            return Ok(Surveys::Struct(array.clone()));
        }
        let text = cast(array, &DataType::LargeUtf8)
            .map_err(|error| Error::new(Code::ColumnType, super::SURVEY, format!("survey cannot be read: {error}")))?;
        Ok(Surveys::Json(text.as_string::<i64>().clone()))
    }

    /// The survey of a row; nothing where the cell is empty.
    pub fn at(&self, row: usize) -> Result<Option<Tree>> {
        match self {
            Surveys::Json(text) if text.is_null(row) || text.value(row).trim().is_empty() => Ok(None),
            Surveys::Json(text) => Tree::from_json(text.value(row)).map(Some),
            Surveys::Struct(array) if array.is_null(row) => Ok(None),
            Surveys::Struct(array) => tree(array, row, 0).map(Some),
        }
    }
}

/// Levels of structs and lists that a survey may have.
const DEEPEST: usize = 40;

/// A value of a column as survey data; fields that are null are left out, as structs have the fields of all rows.
fn tree(array: &ArrayRef, row: usize, depth: usize) -> Result<Tree> {
    use DataType as T;
    if array.is_null(row) {
        return Ok(Value::Nothing.into());
    }
    if depth > DEEPEST {
        let message = format!("survey is nested more than {DEEPEST} levels deep: no survey is");
        return Err(Error::new(Code::WrongType, super::SURVEY, message));
    }
    let items = |list: ArrayRef| (0..list.len()).map(|item| tree(&list, item, depth + 1)).collect::<Result<Vec<_>>>();
    let value = match array.data_type() {
        T::Struct(fields) => {
            let mut entries = Vec::with_capacity(fields.len());
            for (field, column) in fields.iter().zip(array.as_struct().columns()) {
                let value = tree(column, row, depth + 1)?;
                if value.value != Value::Nothing {
                    entries.push((field.name().clone(), value));
                }
            }
            Value::Table(entries)
        }
        T::List(_) => Value::List(items(array.as_list::<i32>().value(row))?),
        T::LargeList(_) => Value::List(items(array.as_list::<i64>().value(row))?),
        T::FixedSizeList(..) => Value::List(items(array.as_fixed_size_list().value(row))?),
        T::Boolean => Value::Flag(array.as_boolean().value(row)),
        T::Utf8 => Value::Text(array.as_string::<i32>().value(row).to_string()),
        T::LargeUtf8 => Value::Text(array.as_string::<i64>().value(row).to_string()),
        T::Utf8View => Value::Text(array.as_string_view().value(row).to_string()),
        T::Int64 => Value::Whole(array.as_primitive::<types::Int64Type>().value(row)),
        T::Float64 => Value::Number(array.as_primitive::<types::Float64Type>().value(row)),
        other => {
            let wider = match other {
                T::Int8 | T::Int16 | T::Int32 | T::UInt8 | T::UInt16 | T::UInt32 => T::Int64,
                T::Dictionary(_, value) => (**value).clone(),
                _ => T::Float64,
            };
            let one = cast(&array.slice(row, 1), &wider).map_err(|_| {
                Error::new(
                    Code::WrongType,
                    super::SURVEY,
                    format!("survey holds a value of type {other}: no survey does"),
                )
            })?;
            return tree(&one, 0, depth + 1);
        }
    };
    Ok(value.into())
}

#[cfg(test)]
mod tests {
    use super::*;
    use arrow_array::{Float64Array, StringArray, StructArray};
    use arrow_schema::Field;
    use std::sync::Arc;

    #[test]
    fn text_and_struct_say_the_same() {
        let text: ArrayRef =
            Arc::new(StringArray::from(vec![Some(r#"{"name": "a", "duty": {"speed_m_per_min": 3.5}}"#), None]));
        let duty: ArrayRef = Arc::new(StructArray::from(vec![
            (
                Arc::new(Field::new("speed_m_per_min", DataType::Float64, true)),
                Arc::new(Float64Array::from(vec![3.5])) as ArrayRef,
            ),
            (
                Arc::new(Field::new("ambient_c", DataType::Float64, true)),
                Arc::new(Float64Array::from(vec![None])) as ArrayRef,
            ),
        ]));
        let all: ArrayRef = Arc::new(StructArray::from(vec![
            (Arc::new(Field::new("name", DataType::Utf8, true)), Arc::new(StringArray::from(vec!["a"])) as ArrayRef),
            (Arc::new(Field::new("duty", duty.data_type().clone(), true)), duty),
        ]));
        let text = Surveys::of(&text).unwrap();
        assert_eq!(text.at(0).unwrap(), Surveys::of(&all).unwrap().at(0).unwrap());
        assert_eq!(text.at(1).unwrap(), None);
    }
}
