//! The walk over a file of entries that the harnesses share: which are met, which nobody answers yet, which are missed.

use serde_json::Value;

/// Number under `key`; NaN (which agrees with nothing) if it is not there.
pub fn number(value: &Value, key: &str) -> f64 {
    value[key].as_f64().unwrap_or(f64::NAN)
}

/// Judges every entry of a file and fails with all complaints at once. `what` names the entries: "cases".
///
/// `judge` gives what disagrees in an entry, or nothing at all where no function answers it yet: such entries are
/// counted and named, never passed. One that is known to fail says why under `fails_because`, and must fail.
pub fn walk(what: &str, text: &str, mut judge: impl FnMut(&Value) -> Option<Vec<String>>) {
    let entries: Vec<Value> = serde_json::from_str(text).unwrap();
    let (mut met, mut open, mut missed) = (0, Vec::new(), Vec::new());
    for entry in &entries {
        let id = entry["id"].as_str().unwrap();
        match (judge(entry), entry["fails_because"].as_str()) {
            (None, _) => open.push(id.to_string()),
            (Some(wrong), None) if wrong.is_empty() => met += 1,
            (Some(wrong), None) => missed.extend(wrong),
            (Some(wrong), Some(_)) if wrong.is_empty() => missed.push(format!("{id} passes but is marked as failing")),
            (Some(_), Some(why)) => println!("{id:<8} known to fail: {why}"),
        }
    }
    println!("{met} of {} {what} met; no function yet for {}: {}", entries.len(), open.len(), open.join(" "));
    assert!(missed.is_empty(), "{what} missed:\n{}", missed.join("\n"));
}
