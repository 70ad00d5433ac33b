//! Whole tables: rows against single calls.

use super::*;
use crate::line::{Evaluation, Line, evaluate};
use crate::quantity::{Datum, Field, Noun, Tree, Value, value_at};
use crate::{Code, Error};
use arrow_array::{Array, ArrayRef, Float64Array, Int64Array, RecordBatch, StringArray, cast::AsArray, types};
use std::sync::Arc;

const SURVEY_TEXT: &str = include_str!("../../python/pinfilm/data/packing_proposed.toml");

/// The columns of a line that a table can hold as a loop of two sprockets.
fn short(rows: usize) -> RecordBatch {
    let line = Line::from_toml(SURVEY_TEXT).unwrap();
    let mut columns: Vec<(String, ArrayRef)> = Vec::new();
    columns.push(("plant".into(), Arc::new(StringArray::from_iter_values((0..rows).map(|i| format!("hall {i}"))))));
    for known in names::VALUES.iter().filter(|known| !known.name.starts_with("circuit.")) {
        let Ok(datum) = value_at(&line, &known.name) else { continue };
        let column: ArrayRef = match datum {
            Datum::Nothing => continue,
            Datum::Flag(flag) => Arc::new(arrow_array::BooleanArray::from(vec![flag; rows])),
            Datum::Whole(number) => Arc::new(Int64Array::from(vec![number; rows])),
            Datum::Number(number) if known.name == "duty.speed_m_per_min" => {
                Arc::new(Float64Array::from_iter_values((0..rows).map(|i| number * (1.0 + 0.001 * i as f64))))
            }
            Datum::Number(number) => Arc::new(Float64Array::from(vec![number; rows])),
            Datum::Text(text) => Arc::new(StringArray::from(vec![text; rows])),
        };
        columns.push((known.name.clone(), column));
    }
    let mut number =
        |name: &str, value: f64| columns.push((name.into(), Arc::new(Float64Array::from(vec![value; rows]))));
    number("circuit.centre_distance_m", 12.0);
    number("circuit.teeth_drive", 17.0);
    number("circuit.teeth_tail", 17.0);
    number("circuit.carried_kg_per_m", 8.0);
    number("circuit.take_up_n", 300.0);
    RecordBatch::try_from_iter(columns).unwrap()
}

fn evaluated(batch: &RecordBatch, asked: &Asked, threads: usize) -> crate::Result<(Plan, Vec<RecordBatch>)> {
    let plan = Plan::new::<Evaluate>(&batch.schema(), asked)?;
    let mut found = Vec::new();
    let mut take = |batch| {
        found.push(batch);
        Ok(())
    };
    run(&Evaluate, &plan, std::slice::from_ref(batch), Some(threads), &mut |_, _| true, &mut take)?;
    Ok((plan, found))
}

fn with(batch: &RecordBatch, name: &str, column: ArrayRef) -> RecordBatch {
    let schema = batch.schema();
    let mut columns: Vec<(String, ArrayRef)> =
        schema.fields().iter().zip(batch.columns()).map(|(f, c)| (f.name().clone(), c.clone())).collect();
    match columns.iter_mut().find(|(known, _)| known == name) {
        Some(known) => known.1 = column,
        None => columns.push((name.into(), column)),
    }
    RecordBatch::try_from_iter_with_nullable(columns.into_iter().map(|(n, c)| (n, c, true))).unwrap()
}

fn text<'a>(batch: &'a RecordBatch, name: &str, row: usize) -> Option<&'a str> {
    let column = batch.column_by_name(name).unwrap().as_string::<i32>();
    column.is_valid(row).then(|| column.value(row))
}

#[test]
fn rows_are_what_single_calls_give() {
    let batch = short(150);
    let (plan, found) = evaluated(&batch, &Asked::default(), 2).unwrap();
    let (_, alone) = evaluated(&batch, &Asked::default(), 1).unwrap();
    assert_eq!(found, alone);
    assert_eq!(found[0].num_columns(), batch.num_columns() + OUTPUTS.len() + 3);
    for row in [0, 1, 149] {
        let result = evaluate(&plan.line(&batch, row, 0).unwrap()).unwrap();
        for output in &plan.outputs {
            let column = found[0].column_by_name(&output.path).unwrap();
            match value_at(&result, &output.path).unwrap() {
                Datum::Number(number) => {
                    assert_eq!(column.as_primitive::<types::Float64Type>().value(row).to_bits(), number.to_bits());
                }
                Datum::Whole(number) => assert_eq!(column.as_primitive::<types::Int64Type>().value(row), number),
                Datum::Text(word) => assert_eq!(column.as_string::<i32>().value(row), word),
                Datum::Nothing => assert!(column.is_null(row)),
                Datum::Flag(_) => {}
            }
        }
    }
    assert_eq!(plan.report.kept, ["plant"]);
}

#[test]
fn a_row_builds_the_line_that_a_survey_builds() {
    let batch = short(1);
    let line = Plan::new::<Evaluate>(&batch.schema(), &Asked::default()).unwrap().line(&batch, 0, 0).unwrap();
    assert_eq!(Line::from_tree(&line.write()).unwrap(), line);
    let mut surveyed = Line::from_toml(SURVEY_TEXT).unwrap();
    surveyed.circuit = line.circuit.clone();
    surveyed.duty.speed_m_per_min = line.duty.speed_m_per_min;
    assert_eq!(line, surveyed);
}

/// Rows that were made from what all have in common, each compared with the line that its cells alone make.
fn rows_in_common(batch: &RecordBatch) -> Vec<bool> {
    let plan = Plan::new::<Evaluate>(&batch.schema(), &Asked::default()).unwrap();
    let (side, cells) = (&plan.sides[0], &plan.cells(batch).unwrap()[0]);
    let (mut line, mut ready) = (Line::blank(), false);
    let Some(common) = common::Common::of(side, cells, batch.num_rows()) else { return Vec::new() };
    let each = (0..batch.num_rows()).map(|row| {
        let mut empty = Vec::new();
        let alone = side.line(cells, row, &mut side::Chains::new(), &mut empty);
        ready = common.put(&mut line, &mut ready, cells, row);
        if ready {
            // a number that was not given is none, which equals nothing
            assert_eq!(format!("{line:?}"), format!("{:?}", alone.unwrap()), "row {row}");
            assert_eq!(common.empty(), empty);
        }
        ready
    });
    each.collect()
}

#[test]
fn what_rows_share_makes_the_same_line() {
    let numbers = |of: [Option<f64>; 6]| -> ArrayRef { Arc::new(Float64Array::from(of.to_vec())) };
    let words = |of: [&str; 6]| -> ArrayRef { Arc::new(StringArray::from(of.to_vec())) };
    let batch = short(6);
    assert_eq!(rows_in_common(&batch), [true; 6]);
    let batch =
        with(&batch, "duty.speed_m_per_min", numbers([Some(3.0), None, Some(4.0), Some(f64::NAN), None, Some(5.0)]));
    assert_eq!(rows_in_common(&batch), [true, false, true, true, false, true]);
    // chain and loop differ, values of the circuit are put over the loop, some loops do not close, some words are no choice
    let batch = with(&short(6), "chain.pitch_mm", numbers([100.0, 63.0, 100.0, 125.0, 100.0, 100.0].map(Some)));
    let batch = with(&batch, "circuit.centre_distance_m", numbers([12.0, 13.0, 0.1, 14.0, 15.0, 16.0].map(Some)));
    let batch = with(&batch, "circuit.strands", Arc::new(Int64Array::from(vec![2; 6])));
    let batch = with(&batch, "circuit.sections.2.wash", words(["true"; 6]));
    let batch = with(&batch, "circuit.sections.2.extra_pull_n", numbers([1.0, 2.0, 3.0, 4.0, 5.0, 6.0].map(Some)));
    let batch = with(&batch, "duty.surroundings", words(["dry", "dusty", "dry", "dry", "damp", "dry"]));
    let batch = with(&batch, "duty.dust_factor", numbers([None; 6]));
    let batch = with(&batch, "supply.reservoir_l", numbers([4.0, 5.0, 6.0, 7.0, 8.0, 9.0].map(Some)));
    assert_eq!(rows_in_common(&batch), [true, true, false, true, false, true]);
    let (_, found) = evaluated(&batch, &Asked::default(), 2).unwrap();
    let codes: Vec<_> = [2, 4].iter().map(|row| text(&found[0], "code", *row).unwrap()).collect();
    assert_eq!(codes, ["inconsistent", "unknown_choice"]);
    // what decides the rest differs: nothing in common
    let batch = with(&batch, "lubrication.method", words(["synchronised", "manual", "drip", "manual", "drip", "drip"]));
    assert!(rows_in_common(&batch).is_empty());
}

#[test]
fn a_survey_column_and_a_column_over_it() {
    let line = Line::from_toml(SURVEY_TEXT).unwrap();
    let json = line.write().to_json().unwrap();
    let surveys: ArrayRef =
        Arc::new(StringArray::from(vec![Some(json.as_str()), Some("{"), None, Some("{\"duty\": 3}")]));
    let speeds: ArrayRef = Arc::new(Float64Array::from(vec![Some(20.0), None, None, None]));
    let batch = RecordBatch::try_from_iter([("survey", surveys), ("duty.speed_m_per_min", speeds)]).unwrap();
    let (plan, found) = evaluated(&batch, &Asked::default(), 1).unwrap();
    let mut wanted = line.clone();
    wanted.duty.speed_m_per_min = 20.0;
    assert_eq!(plan.line(&batch, 0, 0).unwrap(), wanted);
    let pull = found[0].column_by_name("tension.pull_n").unwrap().as_primitive::<types::Float64Type>();
    assert_eq!(pull.value(0).to_bits(), evaluate(&wanted).unwrap().tension.pull_n.to_bits());
    assert_eq!(pull.null_count(), 3);
    let codes: Vec<_> = (1..4).map(|row| text(&found[0], "code", row).unwrap()).collect();
    assert_eq!(codes, ["not_readable", "missing", "missing"]);
}

#[test]
fn nothing_is_computed_without_what_every_line_needs() {
    let batch = short(3);
    let keep: Vec<usize> =
        (0..batch.num_columns()).filter(|at| batch.schema().field(*at).name() != "duty.ambient_c").collect();
    let lacking = with(&batch.project(&keep).unwrap(), "duty.ambient", Arc::new(Float64Array::from(vec![20.0; 3])));
    let error = evaluated(&lacking, &Asked::default(), 1).unwrap_err();
    assert_eq!((error.code, error.field.as_str()), (Code::MissingColumns, "duty.ambient_c"));
    assert!(error.to_string().contains("the column \"duty.ambient\" looks like it"), "{error}");
    let given = vec![("duty.ambient_c".to_string(), Value::Number(20.0).into())];
    let (plan, found) = evaluated(&lacking, &Asked { given, ..Asked::default() }, 1).unwrap();
    assert_eq!(plan.report.meant[0].name, "duty.ambient_c");
    assert!(plan.report.defaults.iter().any(|d| d.name == "duty.ambient_c" && d.value == "20 °C"));
    assert_ne!(text(&found[0], "status", 0), Some("error"));
}

#[test]
fn what_a_row_cannot_say_is_an_error_of_that_row() {
    let batch = short(6);
    let speed = |values: [Option<f64>; 6]| -> ArrayRef { Arc::new(Float64Array::from(values.to_vec())) };
    let batch = with(
        &batch,
        "duty.speed_m_per_min",
        speed([Some(3.0), None, Some(f64::NAN), Some(-1.0), Some(3.0), Some(3.0)]),
    );
    let words = ["dry", "dry", "dry", "dry", "damp", "dry"];
    let batch = with(&batch, "duty.surroundings", Arc::new(StringArray::from(words.to_vec())));
    let shares: ArrayRef =
        Arc::new(Float64Array::from(vec![Some(0.9), Some(0.9), Some(0.9), Some(0.9), Some(0.9), None]));
    let batch = with(&batch, "lubrication.capture", shares);
    let (_, found) = evaluated(&batch, &Asked::default(), 2).unwrap();
    let codes: Vec<_> = (1..5).map(|row| text(&found[0], "code", row).unwrap()).collect();
    assert_eq!(codes, ["missing", "not_finite", "out_of_range", "unknown_choice"]);
    assert_ne!(text(&found[0], "status", 0), Some("error"));
    assert!(text(&found[0], "message", 1).unwrap().contains("duty.speed_m_per_min is missing: give chain speed"));
    assert!(text(&found[0], "code", 5).unwrap().contains("default_used"));
    assert_eq!(text(&found[0], "message", 5), Some("default taken for the empty lubrication.capture"));
}

#[test]
fn chains_of_standards_and_methods_by_row() {
    let batch = short(2);
    let keep: Vec<usize> = (0..batch.num_columns())
        .filter(|at| {
            !batch.schema().field(*at).name().starts_with("lubrication.")
                && !batch.schema().field(*at).name().starts_with("chain.")
        })
        .collect();
    let mut batch = batch.project(&keep).unwrap();
    let mut words = |name: &str, of: [&str; 2]| batch = with(&batch, name, Arc::new(StringArray::from(of.to_vec())));
    words("chain.standard", ["ISO 606", "ISO 606"]);
    words("chain.designation", ["16B", "16X"]);
    words("lubrication.method", ["manual", "manual"]);
    words("circuit.support", ["slide", "slide"]);
    words("circuit.return_support", ["slide", "slide"]);
    let mut numbers = |name: &str, of: f64| batch = with(&batch, name, Arc::new(Float64Array::from(vec![of; 2])));
    numbers("chain.bush_diameter_mm", 11.0);
    numbers("chain.mass_kg_per_m", 2.7);
    numbers("chain.bush_bore_mm", 8.4);
    numbers("chain.plate_gap_mm", 0.2);
    numbers("lubrication.interval_h", 500.0);
    numbers("lubrication.dose_ul", 100.0);
    let (plan, found) = evaluated(&batch, &Asked::default(), 1).unwrap();
    assert_eq!(text(&found[0], "code", 1), Some("no_such_chain"));
    assert_ne!(text(&found[0], "status", 0), Some("error"), "{:?}", text(&found[0], "message", 0));
    assert_eq!(plan.line(&batch, 0, 0).unwrap().chain.pin_diameter_mm, 8.28);
}

#[test]
fn a_stop_is_an_error() {
    let batch = short(3);
    let plan = Plan::new::<Evaluate>(&batch.schema(), &Asked::default()).unwrap();
    let stopped = run(&Evaluate, &plan, &[batch], Some(1), &mut |_, _| false, &mut |_| Ok(()));
    assert_eq!(stopped.unwrap_err().code, Code::Stopped);
}

#[test]
fn no_name_is_used_twice() {
    let batch = with(&short(1), "status", Arc::new(StringArray::from(vec!["done"])));
    assert_eq!(evaluated(&batch, &Asked::default(), 1).unwrap_err().code, Code::DuplicateColumn);
    let asked = Asked { outputs: Some(vec!["drive.curent_a".into()]), ..Asked::default() };
    let error: Error = evaluated(&short(1), &asked, 1).unwrap_err();
    assert_eq!(error.code, Code::UnknownOutput);
    assert!(error.to_string().contains("drive.current_a"), "{error}");
    let _ = (Evaluation::kind(&["drive", "current_a"]), Tree::EMPTY);
}
