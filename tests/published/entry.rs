use crate::{Answer, Check};

pub fn check(_check: &Check) -> Answer {
    None
}
