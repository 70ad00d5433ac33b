//! Words that several rooms share.

use crate::choice;

choice! {
    /// The side of the chain that an applicator can reach.
    Side {
        /// From above.
        Top = "top",
        /// From the side.
        Beside = "side",
        /// From below.
        Bottom = "bottom",
    }
}
