//! Current logs across the border: columns in, verdicts out, a watch that takes one reading at a time.

mod current_log; // the log: columns in
mod given; // what Python gives: columns, dates, settings
mod many; // many logs at once
mod value; // equality, hash, copies, pickles of a log
mod verdicts; // what a log says
mod watch; // one reading at a time

pub use current_log::CurrentLog;
pub use many::watch_many;
pub use verdicts::oil_use;
pub use watch::LogWatch;
