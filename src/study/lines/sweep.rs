//! A grid of inputs: every combination of the values named, evaluated.

use super::super::progress::{Progress, by_chunks};
use super::outputs::{Outputs, number_of};
use super::sample::fits;
use super::subject::{Outcome, Side, Subject};
use crate::error::{Code, Error, Result};
use crate::line::Line;
use crate::quantity::{Datum, Noun, Put, Tree, Value, no_such_path, registered, rows_of, steps, unit};

/// One value on an axis: a number, a word, yes or no, nothing, or a whole group such as an oil.
pub type Cell = Tree;

/// A path and the values that it takes in turn.
#[derive(Debug, Clone, PartialEq)]
pub struct Axis {
    /// Dotted path of the survey; of a pair with `now.` or `proposed.` before it, or for both.
    pub path: String,
    /// Its values.
    pub values: Vec<Cell>,
}

/// A column of results.
#[derive(Debug, Clone, PartialEq)]
pub enum Column {
    /// Numbers; NaN where a row has none, +∞ for a payback that never comes.
    Numbers(Vec<f64>),
    /// Words; empty where a row has none.
    Words(Vec<String>),
}

/// A grid, evaluated; the last axis changes fastest.
#[derive(Debug, Clone)]
pub struct Sweep {
    /// The axes, as they were named.
    pub axes: Vec<Axis>,
    /// What was read.
    pub outputs: Outputs,
    /// A column for each output.
    pub columns: Vec<Column>,
    /// What was wrong with each row, if anything was.
    pub errors: Vec<Option<Error>>,
}

/// Rows that a grid may have.
const MOST_ROWS: usize = 1 << 26;

enum Read {
    Number(f64),
    Word(String),
}

/// Evaluates every combination of the values of the axes. A combination that cannot be computed is told in its row.
pub fn sweep(
    subject: &Subject,
    axes: Vec<Axis>,
    outputs: Option<&[String]>,
    progress: &mut Progress<'_>,
) -> Result<Sweep> {
    let grid = Grid::new(subject, &axes)?;
    let rows = grid.rows(&axes)?;
    let nominal = subject.outcome().or_else(|why| grid.first_outcome(rows.min(4096)).ok_or(why));
    let outputs = match (outputs, nominal) {
        (Some(_), nominal) => Outputs::of(subject, outputs, nominal.ok().as_ref())?,
        (None, Ok(nominal)) => Outputs::of(subject, None, Some(&nominal))?,
        (None, Err(why)) => return Err(why),
    };
    fits(rows, outputs.len() + axes.len(), "grid", "take fewer values on an axis, or name fewer outputs")?;
    let readers = outputs.readers();
    let is_word: Vec<bool> = outputs.rows().iter().map(|row| *row.unit == unit::WORD).collect();
    let read = |outcome: &Outcome| -> Box<[Read]> {
        let one = |i: usize| {
            let datum = outcome.get(&readers[i]).unwrap_or(Datum::Nothing);
            match (is_word[i], datum) {
                (true, Datum::Text(word)) => Read::Word(word.to_string()),
                (true, Datum::Nothing) => Read::Word(String::new()),
                (true, other) => Read::Word(other.written()),
                (false, other) => Read::Number(number_of(other, outputs.rows()[i])),
            }
        };
        (0..readers.len()).map(one).collect()
    };
    let of_row =
        |here: &mut Option<(usize, Subject)>, row: usize| grid.outcome(row, here).map(|outcome| read(&outcome));
    let empty = |word: &bool| if *word { Column::Words(Vec::new()) } else { Column::Numbers(Vec::new()) };
    let mut columns: Vec<Column> = is_word.iter().map(empty).collect();
    let mut errors = Vec::with_capacity(rows);
    let take = |found: &mut Vec<Result<Box<[Read]>>>| {
        columns.iter_mut().enumerate().for_each(|(i, column)| column.extend(found, i));
        errors.extend(found.drain(..).map(std::result::Result::err));
    };
    by_chunks(rows, progress, || None, of_row, take)?;
    drop(readers);
    Ok(Sweep { axes, outputs, columns, errors })
}

impl Column {
    /// Takes output `i` of some more rows.
    fn extend(&mut self, found: &mut [Result<Box<[Read]>>], i: usize) {
        match self {
            Column::Numbers(numbers) => {
                numbers.extend(found.iter().map(|row| match row.as_ref().map(|read| &read[i]) {
                    Ok(Read::Number(number)) => *number,
                    _ => f64::NAN,
                }))
            }
            Column::Words(words) => {
                words.extend(found.iter_mut().map(|row| match row.as_mut().map(|read| &mut read[i]) {
                    Ok(Read::Word(word)) => std::mem::take(word),
                    _ => String::new(),
                }))
            }
        }
    }
}

impl Sweep {
    /// How many rows it has.
    pub fn rows(&self) -> usize {
        self.errors.len()
    }

    /// Place on axis `axis` of row `row`.
    pub fn place(&self, axis: usize, row: usize) -> usize {
        let faster: usize = self.axes[axis + 1..].iter().map(|axis| axis.values.len()).product();
        row / faster % self.axes[axis].values.len()
    }
}

/// The grid, with groups put in place beforehand: these need a survey to be read anew.
struct Grid<'a> {
    axes: &'a [Axis],
    sides: Vec<(Vec<Side>, &'a str)>,
    /// Rows between two changes of an axis.
    strides: Vec<usize>,
    is_group: Vec<bool>,
    /// Lines with every combination of groups.
    bases: Vec<Result<Subject>>,
}

impl<'a> Grid<'a> {
    fn new(subject: &Subject, axes: &'a [Axis]) -> Result<Grid<'a>> {
        if axes.is_empty() {
            return Err(Error::new(Code::Missing, "grid", "a sweep needs at least one path with its values"));
        }
        let mut sides = Vec::new();
        for axis in axes {
            if axis.values.is_empty() {
                let message = format!("{} has no values: give at least one", axis.path);
                return Err(Error::new(Code::Missing, &axis.path, message));
            }
            sides.push(sides_of(subject, &axis.path)?);
        }
        let is_group =
            axes.iter().map(|axis| axis.values.iter().any(|v| matches!(v.value, Value::Table(_) | Value::List(_))));
        let is_group: Vec<bool> = is_group.collect();
        let mut bases = vec![Ok(subject.clone())];
        for (i, axis) in axes.iter().enumerate().filter(|(i, _)| is_group[*i]) {
            fits(bases.len() * axis.values.len(), 1 << 10, "grid", "take fewer oils, methods or other groups")?;
            let with =
                |base: &Result<Subject>, value: &Tree| replaced(base.as_ref().map_err(Clone::clone)?, &sides[i], value);
            bases = bases.iter().flat_map(|base| axis.values.iter().map(move |value| with(base, value))).collect();
        }
        let strides =
            (0..axes.len()).map(|i| axes[i + 1..].iter().map(|a| a.values.len()).fold(1, usize::saturating_mul));
        let grid = Grid { axes, strides: strides.collect(), sides, is_group, bases };
        grid.kinds(subject)?;
        Ok(grid)
    }

    fn rows(&self, axes: &[Axis]) -> Result<usize> {
        let rows = axes.iter().map(|axis| axis.values.len()).fold(1, usize::saturating_mul);
        if rows > MOST_ROWS {
            let sizes = axes.iter().map(|axis| axis.values.len().to_string()).collect::<Vec<_>>().join(" × ");
            let message = format!(
                "a grid of {sizes} = {rows} rows is too large: at most {MOST_ROWS}; take fewer values on an axis"
            );
            return Err(Error::new(Code::OutOfRange, "grid", message)
                .number(rows as f64)
                .limit(format!("{MOST_ROWS} rows")));
        }
        Ok(rows)
    }

    /// Refuses values of a kind that cannot stand at their path, where that does not depend on a group.
    fn kinds(&self, subject: &Subject) -> Result<()> {
        if self.is_group.contains(&true) {
            return Ok(());
        }
        let mut tried = subject.clone();
        for (axis, (sides, path)) in self.axes.iter().zip(&self.sides) {
            for (value, side) in axis.values.iter().flat_map(|value| sides.iter().map(move |side| (value, *side))) {
                write(&mut tried, side, path, value)?;
            }
        }
        Ok(())
    }

    fn first_outcome(&self, rows: usize) -> Option<Outcome> {
        let mut here = None;
        (0..rows).find_map(|row| self.outcome(row, &mut here).ok())
    }

    /// What comes out in a row; `here` keeps the lines of the last one.
    fn outcome(&self, row: usize, here: &mut Option<(usize, Subject)>) -> Result<Outcome> {
        let place = |i: usize| row / self.strides[i] % self.axes[i].values.len();
        let groups = (0..self.axes.len()).filter(|&i| self.is_group[i]);
        let base = groups.fold(0, |base, i| base * self.axes[i].values.len() + place(i));
        let fresh = here.as_ref().is_none_or(|(last, _)| *last != base);
        if fresh {
            *here = Some((base, self.bases[base].clone()?));
        }
        let Some((_, subject)) = here else { return Err(Error::new(Code::Missing, "grid", "no line")) };
        for i in (0..self.axes.len()).filter(|&i| !self.is_group[i]) {
            let (sides, path) = &self.sides[i];
            for &side in sides {
                write(subject, side, path, &self.axes[i].values[place(i)])?;
            }
        }
        subject.outcome()
    }
}

/// The sides that a path is about, and the path below them.
fn sides_of<'a>(subject: &Subject, name: &'a str) -> Result<(Vec<Side>, &'a str)> {
    let only = |side: Side| name.strip_prefix(side.as_str()).and_then(|rest| rest.strip_prefix('.'));
    let asked = [Side::Now, Side::Proposed].into_iter().find_map(|side| only(side).map(|path| (vec![side], path)));
    let (sides, path) = asked.filter(|_| subject.is_pair()).unwrap_or_else(|| (subject.sides().to_vec(), name));
    let rows = rows_of::<Line>();
    let wanted = registered(path);
    let group = format!("{wanted}.");
    if rows.iter().any(|(known, _)| *known == wanted || known.starts_with(&group)) || wanted == "lubrication.method" {
        return Ok((sides, path));
    }
    Err(no_such_path::<Line>(path))
}

fn write(subject: &mut Subject, side: Side, path: &str, value: &Tree) -> Result<()> {
    let datum = match &value.value {
        Value::Nothing => Datum::Nothing,
        Value::Flag(flag) => Datum::Flag(*flag),
        Value::Whole(number) => Datum::Whole(*number),
        Value::Number(number) => Datum::Number(*number),
        Value::Text(text) => Datum::Text(text),
        Value::List(_) | Value::Table(_) => Datum::Nothing, // groups are in place
    };
    match subject.put(side, &steps(path), datum) {
        Put::Done => Ok(()),
        Put::NoSuchPath => Err(no_such_path::<Line>(path)),
        Put::WrongKind => {
            let row = Subject::input_row(path)?;
            let written = datum.written();
            let message = format!("{path} = {written} is of the wrong kind for {}", row.means);
            Err(Error::new(Code::WrongType, path, message).text_value(written).unit(row.unit.label))
        }
    }
}

/// A subject with a group put at a path.
fn replaced(subject: &Subject, (sides, path): &(Vec<Side>, &str), value: &Tree) -> Result<Subject> {
    let line = |side: Side| {
        let line = subject.line(side);
        if sides.contains(&side) { line.replaced(vec![((*path).to_string(), value.clone())]) } else { Ok(line.clone()) }
    };
    Ok(if subject.is_pair() { (line(Side::Now)?, line(Side::Proposed)?).into() } else { line(Side::Now)?.into() })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::line::evaluate;
    use crate::quantity::Field;
    use crate::study::unwatched;

    fn oven() -> Line {
        Line::from_toml(include_str!("../../../python/pinfilm/data/oven_now.toml")).unwrap()
    }

    fn axis(path: &str, values: Vec<Value>) -> Axis {
        Axis { path: path.into(), values: values.into_iter().map(Tree::from).collect() }
    }

    #[test]
    fn each_row_is_the_line_with_its_values() {
        let axes = vec![
            axis("oil.iso_vg", vec![Value::Whole(150), Value::Whole(220)]),
            axis("lubrication.timer.dwell_min", [40.0, 52.0, 60.0].map(Value::Number).to_vec()),
        ];
        let found = sweep(&oven().into(), axes, None, &mut unwatched).unwrap();
        assert_eq!(found.rows(), 6);
        let place = found.outputs.place("fill.never_reached").unwrap();
        let Column::Numbers(never) = &found.columns[place] else { panic!() };
        let mut line = oven();
        for row in 0..6 {
            line.oil.iso_vg = Some([150, 220][found.place(0, row)]);
            let dwell = Datum::Number([40.0, 52.0, 60.0][found.place(1, row)]);
            crate::quantity::put_at(&mut line, "lubrication.timer.dwell_min", dwell).unwrap();
            assert_eq!(never[row], evaluate(&line).unwrap().fill.never_reached);
        }
    }

    #[test]
    fn a_row_that_cannot_be_computed_stops_no_other() {
        let axes = vec![axis("chain.pin_diameter_mm", [12.0, 13.0, 11.9].map(Value::Number).to_vec())];
        let outputs = ["wear.governs".to_string(), "wear.life_years".to_string()];
        let found = sweep(&oven().into(), axes, Some(&outputs), &mut unwatched).unwrap();
        let codes: Vec<_> = found.errors.iter().map(|e| e.as_ref().map(|e| e.code)).collect();
        assert_eq!(codes, [None, Some(Code::Clearance), None]);
        let Column::Words(governs) = &found.columns[0] else { panic!() };
        assert!(!governs[0].is_empty() && governs[1].is_empty());
    }

    #[test]
    fn groups_and_their_members() {
        let mut other = oven().oil;
        other.iso_vg = Some(460);
        let oils = Axis { path: "oil".into(), values: vec![oven().oil.write(), other.write()] };
        let index = axis("oil.viscosity_index", [90.0, 140.0].map(Value::Number).to_vec());
        let outputs = ["fill.viscosity_application_mpa_s".to_string()];
        let found = sweep(&oven().into(), vec![index, oils], Some(&outputs), &mut unwatched).unwrap();
        let Column::Numbers(viscosity) = &found.columns[0] else { panic!() };
        let mut line = oven();
        line.oil.iso_vg = Some(460);
        line.oil.viscosity_index = 140.0;
        assert_eq!(viscosity[3], evaluate(&line).unwrap().fill.viscosity_application_mpa_s);
        assert!(viscosity[0] < viscosity[1]);
    }

    #[test]
    fn bad_grids_are_refused() {
        let refused = |axes: Vec<Axis>| sweep(&oven().into(), axes, None, &mut unwatched).map(|_| ()).unwrap_err();
        assert!(
            refused(vec![axis("oil.viscosty_index", vec![Value::Number(95.0)])]).message.contains("viscosity_index")
        );
        assert_eq!(refused(vec![axis("oil.viscosity_index", vec![Value::Text("high".into())])]).code, Code::WrongType);
        assert_eq!(refused(vec![axis("oil.viscosity_index", vec![])]).code, Code::Missing);
        let many = |path: &str| axis(path, (0..10_000).map(|i| Value::Number(f64::from(i))).collect());
        let error = refused(vec![many("duty.ambient_c"), many("oil.viscosity_index")]);
        assert!(error.message.contains("10000 × 10000 = 100000000 rows"), "{error}");
        assert!(
            refused(vec![many("duty.ambient_c"), axis("oil.noack_pct", vec![Value::Number(1.0); 1000])])
                .message
                .contains("GB")
        );
    }
}
