//! A chain of a survey, filled in from a standard's table.

use super::standard::{Cited, StandardChain, standard};
use super::survey::Chain;
use crate::error::{Code, Result};
use crate::quantity::{Datum, Field, Noun, Tree, Value};

impl Chain {
    /// A chain of a standard; `given` are public names and values that the standard leaves open, or that differ.
    ///
    /// Tensile strength and mass are per strand. What neither the table nor `given` says, and a survey must have, is an
    /// error that names it.
    ///
    /// ```
    /// use pinfilm::chain::Chain;
    /// use pinfilm::quantity::Value;
    /// let given = vec![
    ///     ("bush_diameter_mm".to_string(), Value::Number(11.0).into()),
    ///     ("mass_kg_per_m".to_string(), Value::Number(2.7).into()),
    /// ];
    /// let chain = Chain::standard("ISO 606", "16B", given)?;
    /// assert_eq!((chain.pitch_mm, chain.pin_diameter_mm), (25.4, 8.28));
    /// # Ok::<(), pinfilm::Error>(())
    /// ```
    pub fn standard(name: &str, designation: &str, given: Vec<(String, Tree)>) -> Result<Chain> {
        let mut found = standard(name, designation)?;
        let pitch = given.iter().find(|(key, _)| key == "pitch_mm").map(|(_, tree)| &tree.value);
        if let (None, Some(Value::Number(_) | Value::Whole(_))) = (&found.pitch, pitch) {
            let millimetres = match pitch {
                Some(Value::Number(number)) => *number,
                Some(Value::Whole(number)) => *number as f64,
                _ => f64::NAN,
            };
            found = found.with_pitch(crate::quantity::unit::MM.to_si(millimetres))?;
        }
        let full_name = format!("{} {}", found.standard.name(), found.designation);
        let mut entries = vec![("designation".to_string(), Value::Text(full_name.clone()).into())];
        for row in Self::ROWS {
            if let Some(cited) = of_one_strand(&found, row.plain) {
                entries.push((row.name.to_string(), Value::Number(row.unit.from_si(cited.value)).into()));
            }
        }
        let mut tree: Tree = Value::Table(entries).into();
        for (key, value) in given {
            tree.put(&key, value)?;
        }
        Self::from_tree(&tree).map_err(|mut error| {
            if error.code == Code::Missing {
                let choice = if error.field.ends_with("pitch_mm") && !found.pitches.is_empty() {
                    let pitches = found.pitches.iter().map(|p| format!("{}", crate::quantity::unit::MM.from_si(*p)));
                    format!("choose one of {} mm", pitches.collect::<Vec<_>>().join(", "))
                } else {
                    "give it beside the designation".to_string()
                };
                error.message += &format!(". {full_name} does not fix it: {choice}");
            }
            error
        })
    }

    /// What a standard's table says of a chain, the rest blank: for columns that fill it. `pitch_mm` chooses among the
    /// pitches of a designation that has several.
    pub fn outline(name: &str, designation: &str, pitch_mm: Option<f64>) -> Result<Chain> {
        let mut found = standard(name, designation)?;
        if let (None, Some(millimetres)) = (&found.pitch, pitch_mm) {
            found = found.with_pitch(crate::quantity::unit::MM.to_si(millimetres))?;
        }
        let mut chain = <Chain as Field>::blank();
        chain.designation = Some(format!("{} {}", found.standard.name(), found.designation).into());
        for row in Self::ROWS {
            if let Some(cited) = of_one_strand(&found, row.plain) {
                chain.put(&[row.name], Datum::Number(row.unit.from_si(cited.value)));
            }
        }
        Ok(chain)
    }

    /// Where the value of a field comes from, if it is the one in the table of this chain's designation.
    pub fn table_value(&self, name: &str) -> Option<Cited> {
        let (family, designation) = self.designation.as_deref()?.rsplit_once(' ')?;
        let found = standard(family, designation).ok()?;
        let row = Self::ROWS.iter().find(|row| row.name == name)?;
        let cited = of_one_strand(&found, row.plain)?;
        let tree = crate::quantity::Field::write(self);
        match tree.get(name)?.value {
            Value::Number(value) if value == row.unit.from_si(cited.value) => Some(cited),
            _ => None,
        }
    }
}

/// A value of the table for one strand.
fn of_one_strand(chain: &StandardChain, plain: &str) -> Option<Cited> {
    let cited = chain.values().into_iter().find(|(name, _)| *name == plain)?.1.clone();
    let shared = matches!(plain, "tensile_strength" | "mass");
    Some(if shared { Cited { value: cited.value / f64::from(chain.strands), ..cited } } else { cited })
}
