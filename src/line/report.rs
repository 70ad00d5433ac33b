//! What is said of a computed line: its numbers with the survey, warnings in sentences, cautions.

use super::Line;
use super::cautions::cautions;
use super::computed::{Computed, Numbers};
use super::result::{Evaluation, Warning};
use super::warnings::warnings;
use crate::error::Result;
use std::borrow::Cow;

/// With `codes_only` neither sentences nor cautions.
pub(super) fn report(line: &Line, computed: &Computed, codes_only: bool) -> Result<Evaluation> {
    let numbers = computed.numbers()?;
    let notes = warnings(computed, &numbers, codes_only).warnings.into_iter();
    let warnings = notes.map(|note| Warning {
        code: Cow::Borrowed(note.code),
        field: note.field,
        value: note.value.is_finite().then_some(note.value),
        unit: Cow::Borrowed(note.unit),
        limit: note.limit,
        message: note.message,
    });
    let warnings = warnings.collect();
    let Numbers { kinematics, tension, joint, fill, wear, drive, supply, cost } = numbers;
    Ok(Evaluation {
        line: line.clone(),
        cautions: if codes_only { Vec::new() } else { cautions(line, &kinematics) },
        kinematics,
        tension,
        joint,
        fill,
        wear,
        drive,
        supply,
        cost,
        warnings,
    })
}
