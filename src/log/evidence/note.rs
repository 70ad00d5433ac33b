//! What to read a verdict with.

use crate::noun;
use crate::quantity::Word;
use std::borrow::Cow;

macro_rules! log_note_noun {
    ($declare:ident) => {
        $declare! {
            /// Something that a reader of a verdict must know.
            LogNote / LogNoteSi, "notes" {
                code as code: Word [WORD] "stable word for programs" {}
                message as message: Word [WORD] "the whole sentence" {}
            }
        }
    };
}
#[cfg(feature = "python")]
pub(crate) use log_note_noun;
log_note_noun!(noun);

impl LogNote {
    /// A note.
    pub(super) fn new(code: &'static str, message: impl Into<String>) -> LogNote {
        LogNote { code: Cow::Borrowed(code), message: Cow::Owned(message.into()) }
    }
}
