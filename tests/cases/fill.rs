use crate::Answer;
use serde_json::Value;

pub fn ours(_case: &Value) -> Answer {
    None
}
