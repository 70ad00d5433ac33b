//! Whether the reservoir agrees with the shots.

use crate::error::Result;
use crate::log::watch;
use crate::noun;
use crate::quantity::unit::{L, ONE, PCT};
use crate::quantity::{Class, Field, Word, at_least, between, checked, show::brief, up_to};
use std::borrow::Cow;

macro_rules! oil_check_noun { ($declare:ident) => { $declare! {
    /// A reading of the reservoir between two refills, and the shots of that time.
    OilCheck / OilCheckSi, "oil_check" {
        used_l as used: f64 [L] "fall of the reservoir" { allowed: at_least(0.0) }
        shots as shots: f64 [ONE] "shots counted in that time" { allowed: at_least(0.0) }
        shot_ul as shot: f64 [UL] "oil of one shot" { allowed: up_to(0.0, 1e6) }
        reading_error_l as reading_error: f64 [L = 0.1] "standard deviation of the fall as read" { allowed: up_to(0.0, 1e3), class: Class::CommonPractice, source: "marks of a small reservoir" }
        shot_error_pct as shot_error: f64 [PCT = 10.0] "standard deviation of the shot" { allowed: between(0.0, 100.0), class: Class::CommonPractice, source: "metering valves" }
    }
} } }
#[cfg(feature = "python")]
pub(crate) use oil_check_noun;
oil_check_noun!(noun);

macro_rules! oil_use_noun { ($declare:ident) => { $declare! {
    /// What the reservoir says of the supply.
    OilUse / OilUseSi, "oil_use" {
        sentence as sentence: Word [WORD] "the verdict in one sentence" {}
        verdict as verdict: Word [WORD] "consistent, high (a leak, a valve stuck open) or low (a blockage, an empty reservoir)" {}
        dispensed_l as dispensed: f64 [L] "oil that the shots should have taken" { formula: "{oil_check.shots} × {oil_check.shot_ul}", source: "definition", class: Class::Derived }
        deviations as deviations: f64 [ONE] "difference in standard deviations" { symbol: "z", formula: "({oil_check.used_l} − {oil_use.dispensed_l}) / √({oil_check.reading_error_l}² + ({oil_check.shot_error_pct} × dispensed)²)", source: "propagation of independent errors", class: Class::Derived }
    }
} } }
#[cfg(feature = "python")]
pub(crate) use oil_use_noun;
oil_use_noun!(noun);

/// Whether the fall of the reservoir agrees with the shots, within three standard deviations.
pub fn oil_use(check: &OilCheck) -> Result<OilUse> {
    checked(check, "oil_check")?;
    let si = check.si(&ONE);
    let deviations = watch::oil_use_z(si.used, si.shots, si.shot, si.reading_error, si.shot_error);
    let verdict = watch::oil_use(deviations);
    let dispensed = L.from_si(si.shots * si.shot);
    let said = match verdict {
        watch::OilUse::Consistent => "which agrees",
        watch::OilUse::High => "so oil goes elsewhere: look for a leak, or a valve that stays open",
        watch::OilUse::Low => {
            "so joints get less: look for a blockage, air, or an empty reservoir, before the chain runs dry"
        }
    };
    let sentence = format!(
        "The reservoir fell by {} L and the shots should have taken {} L (± {} % and ± {} L), {said}.",
        brief(check.used_l),
        brief(dispensed),
        brief(PCT.from_si(si.shot_error)),
        brief(check.reading_error_l)
    );
    let (sentence, verdict) = (Cow::Owned(sentence), Cow::Borrowed(verdict.as_str()));
    Ok(OilUse { sentence, verdict, dispensed_l: dispensed, deviations })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn three_reservoirs() {
        let check =
            |used_l| OilCheck { used_l, shots: 120_000.0, shot_ul: 18.0, reading_error_l: 0.1, shot_error_pct: 10.0 };
        // deviations by hand: (2.0 − 2.16)/√(0.1² + 0.216²) and so on
        for (used, verdict, z) in [(2.0, "consistent", -0.672), (3.1, "high", 3.949), (0.4, "low", -7.394)] {
            let found = oil_use(&check(used)).unwrap();
            assert_eq!(found.verdict, verdict);
            assert!((found.deviations - z).abs() < 1e-3, "{found:?}");
        }
        assert!(oil_use(&check(-1.0)).is_err());
    }
}
