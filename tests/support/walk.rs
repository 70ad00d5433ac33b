//! The walk over a file of entries that the harnesses share: which are met, which nobody answers yet, which are missed.

use serde_json::Value;

/// What came of one entry.
pub enum Verdict {
    /// No function answers it yet: counted and named, never passed.
    Open,
    /// Every number agrees.
    Met,
    /// It is known to fail, and the data file says why.
    Excused,
    /// It disagrees; each complaint names the place.
    Missed(Vec<String>),
}

/// Number under `key`; NaN (which agrees with nothing) if it is not there.
pub fn number(value: &Value, key: &str) -> f64 {
    value[key].as_f64().unwrap_or(f64::NAN)
}

/// Judges every entry of a file and fails with all complaints at once. `what` names the entries: "cases".
pub fn walk(what: &str, text: &str, mut judge: impl FnMut(&Value) -> Verdict) {
    let entries: Vec<Value> = serde_json::from_str(text).unwrap();
    let (mut met, mut excused, mut open, mut missed) = (0, 0, Vec::new(), Vec::new());
    for entry in &entries {
        match judge(entry) {
            Verdict::Met => met += 1,
            Verdict::Excused => excused += 1,
            Verdict::Open => open.push(entry["id"].as_str().unwrap().to_string()),
            Verdict::Missed(complaints) => missed.extend(complaints),
        }
    }
    println!(
        "{met} of {} {what} met, {excused} known to fail; no function yet for {}: {}",
        entries.len(),
        open.len(),
        open.join(" ")
    );
    assert!(missed.is_empty(), "{what} missed:\n{}", missed.join("\n"));
}
