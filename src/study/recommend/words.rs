//! The recommendation in sentences: a set-up in a few words, why it is first, why there is none.

use super::reason::Refusal;
use super::result::{Alternative, LineSetUp, Refused, Rejection};
use super::sieve::QUICKER;
use crate::line::Evaluation;
use crate::oil::Oil;
use crate::quantity::show::brief;
use std::borrow::Cow;

impl Rejection {
    /// What happened, with numbers, in a sentence.
    pub fn message(&self) -> String {
        let (value, limit) = (self.value.unwrap_or(f64::NAN), self.limit.unwrap_or(f64::NAN));
        let unit = self.reason.unit();
        let refusal = Refusal { reason: self.reason, value: unit.to_si(value), limit: unit.to_si(limit) };
        format!("{}: {}", in_words(&self.set_up), refusal.sentence())
    }
}

/// A set-up in a few words.
pub(super) fn in_words(set_up: &LineSetUp) -> String {
    let mut words = format!("{}, {} µL of {}", set_up.method.replace('_', " "), brief(set_up.shot_ul), set_up.oil);
    if set_up.every_nth > 1 {
        words += &format!(", one joint in {}", set_up.every_nth);
    }
    words += &match (set_up.run_min, set_up.dwell_min) {
        (Some(run), Some(dwell)) => format!(", {} min on, {} min off", brief(run), brief(dwell)),
        _ if set_up.method == "manual" => String::new(),
        _ => ", never stopping".into(),
    };
    if let Some(section) = set_up.application_section {
        words += &format!(", section {section} at {} %", brief(100.0 * set_up.application_position));
    }
    words
}

/// The oil as the plant calls it, or its grade.
pub(super) fn label(oil: &Oil) -> Cow<'static, str> {
    let grade = oil.iso_vg.map(|grade| format!("ISO VG {grade}"));
    Cow::Owned(match (&oil.name, grade) {
        (Some(name), Some(grade)) if !name.contains(&grade) => format!("{name} ({grade})"),
        (Some(name), _) => name.to_string(),
        (None, Some(grade)) => grade,
        (None, None) => "oil by two viscosities".into(),
    })
}

/// Whether the first keeps its floor if oil is lost quicker than guessed; if not, what the cheapest that does costs.
pub(super) enum Margin {
    Has,
    Costs(f64, Box<LineSetUp>),
    Nowhere,
}

/// Why the first of the alternatives is first; why there is none.
pub(super) fn why(
    alternatives: &[Alternative],
    (least, near): (f64, usize),
    margin: &Margin,
    kept: usize,
    all: usize,
    refused: &[Refused],
) -> Vec<Cow<'static, str>> {
    let Some(best) = alternatives.first() else {
        let mut words = vec![format!("None of the {all} set-ups keeps every limit; nothing is recommended.")];
        words.extend(refused.iter().map(|r| format!("{} of them: {}. To change that: {}.", r.count, r.means, r.cure)));
        return words.into_iter().map(Cow::Owned).collect();
    };
    let mut words = vec![format!(
        "{kept} of {all} set-ups keep every limit; this one costs {} a year, the least of them {}.",
        brief(best.total_per_year),
        brief(least)
    )];
    if near > 1 {
        words.push(format!(
            "{near} of them cost the same within 2 %: of these it is the one to set up and leave alone, by margin against \
             losses that nobody has measured, spilt oil, starts, strokes of the valve, n, and longest wait, in this order."
        ));
    }
    words.push(format!(
        "Reached joints never fall below a fill of {}; {} % of the oil in the gaps spills over.",
        brief(best.lowest_fill_reached),
        brief(100.0 * best.overflow_share)
    ));
    let quicker = brief(100.0 * (QUICKER - 1.0));
    words.push(match margin {
        Margin::Has => format!("They keep their floor even if oil is lost {quicker} % quicker than guessed."),
        Margin::Costs(cost, set_up) => format!(
            "If oil is lost {quicker} % quicker than guessed, joints fall below the floor. The cheapest set-up that keeps it \
             even then costs {} a year: {}.",
            brief(*cost),
            in_words(set_up)
        ),
        Margin::Nowhere => format!(
            "If oil is lost {quicker} % quicker than guessed, joints fall below the floor, and so they do with every other \
             set-up that was offered: offer larger shots or shorter pauses."
        ),
    });
    if best.never_reached > 0.0 {
        words.push(format!(
            "{} % of the joints stay without oil, as the limits allow.",
            brief(100.0 * best.never_reached)
        ));
    }
    words.into_iter().map(Cow::Owned).collect()
}

/// A wash takes oil that no set-up can keep: said, where it leaves less than the floor.
pub(super) fn after_a_wash(found: &Evaluation) -> Option<Cow<'static, str>> {
    let (left, floor) = (found.fill.after_wash_fill?, found.line.fill.floor);
    (left < floor).then(|| {
        Cow::Owned(format!(
            "Right after a wash the joints hold {} on average, below the floor of {}, which is kept between washes only: \
             start a run by hand after each wash.",
            brief(left),
            brief(floor)
        ))
    })
}
