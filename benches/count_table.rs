//! Evaluates a table so many times, for instruction counts: `count_table COLUMNS.json TIMES [THREADS]`.
//!
//! Two runs of different length differ by the rows alone; 0 times compares each row with its single call. `python benches/table.py 500 COLUMNS.json` writes the columns;
//! DEVELOPERS.md has the commands.
#![allow(missing_docs, clippy::unwrap_used, clippy::print_stdout)]

use arrow_array::cast::AsArray;
use arrow_array::types::{Float64Type, Int64Type};
use arrow_array::{Array, ArrayRef, Float64Array, Int64Array, RecordBatch, StringArray};
use pinfilm::line::evaluate;
use pinfilm::quantity::{Datum, value_at};
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

/// Compares every row with what `evaluate` gives for its line.
fn compare(plan: &Plan, batch: &RecordBatch, threads: usize) {
    let mut found = Vec::new();
    let mut take = |batch| {
        found.push(batch);
        Ok(())
    };
    run(&Evaluate, plan, std::slice::from_ref(batch), Some(threads), &mut |_, _| true, &mut take).unwrap();
    let (mut same, mut refused) = (0, 0);
    for row in 0..batch.num_rows() {
        let single = plan.line(batch, row, 0).and_then(|line| evaluate(&line));
        for path in &plan.report.outputs {
            let column = found[0].column_by_name(path).unwrap();
            match single.as_ref().map(|result| value_at(result, path).unwrap()) {
                Ok(Datum::Number(n)) => {
                    assert_eq!(column.as_primitive::<Float64Type>().value(row).to_bits(), n.to_bits())
                }
                Ok(Datum::Whole(n)) => assert_eq!(column.as_primitive::<Int64Type>().value(row), n),
                Ok(Datum::Text(word)) => assert_eq!(column.as_string::<i32>().value(row), word),
                Ok(Datum::Flag(flag)) => assert_eq!(column.as_boolean().value(row), flag),
                Ok(Datum::Nothing) | Err(_) => assert!(column.is_null(row), "{path}, row {row}"),
            }
        }
        match single {
            Ok(_) => same += 1,
            Err(error) => {
                let message = found[0].column_by_name("message").unwrap();
                assert_eq!(message.as_string::<i32>().value(row), error.to_string());
                refused += 1;
            }
        }
    }
    println!("{same} rows bit for bit as single calls give them, {refused} refused with the same message");
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
    if times == 0 {
        return compare(&plan, &batch, threads);
    }
    let batches = vec![batch; times];
    let mut rows = 0;
    run(&Evaluate, &plan, &batches, Some(threads), &mut |_, _| true, &mut |batch| {
        rows += batch.num_rows();
        Ok(())
    })
    .unwrap();
    println!("{rows} rows");
}
