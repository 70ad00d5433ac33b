//! Evaluates a table so many times, for instruction counts: `count_table COLUMNS.json TIMES [THREADS]`.
//!
//! Two runs of different length differ by the rows alone. `python benches/table.py 500 COLUMNS.json` writes the columns;
//! DEVELOPERS.md has the commands.
#![allow(missing_docs, clippy::unwrap_used, clippy::print_stdout)]

use arrow_array::{ArrayRef, Float64Array, Int64Array, RecordBatch, StringArray};
use pinfilm::table::{Asked, Evaluate, Plan, run};
use serde_json::Value;
use std::sync::Arc;

/// A column of the type that its values have.
fn column(values: &[Value]) -> ArrayRef {
    let is = |kind: fn(&Value) -> bool| values.iter().all(|value| value.is_null() || kind(value));
    if is(Value::is_i64) {
        Arc::new(values.iter().map(Value::as_i64).collect::<Int64Array>())
    } else if is(Value::is_number) {
        Arc::new(values.iter().map(Value::as_f64).collect::<Float64Array>())
    } else {
        Arc::new(values.iter().map(Value::as_str).collect::<StringArray>())
    }
}

fn main() {
    let given: Vec<String> = std::env::args().collect();
    let table: serde_json::Map<String, Value> =
        serde_json::from_str(&std::fs::read_to_string(&given[1]).unwrap()).unwrap();
    let columns = table.iter().map(|(name, values)| (name, column(values.as_array().unwrap()), true));
    let batch = RecordBatch::try_from_iter_with_nullable(columns).unwrap();
    let times: usize = given[2].parse().unwrap();
    let threads = given.get(3).map_or(1, |threads| threads.parse().unwrap());
    let plan = Plan::new::<Evaluate>(&batch.schema(), &Asked::default()).unwrap();
    let batches = vec![batch; times];
    let mut rows = 0;
    run(&Evaluate, &plan, &batches, Some(threads), &mut |_, _| true, &mut |batch| {
        rows += batch.num_rows();
        Ok(())
    })
    .unwrap();
    println!("{rows} rows");
}
