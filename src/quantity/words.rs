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

choice! {
    /// How a person gets at a place.
    Access {
        /// Freely, with the line locked out.
        Open = "open",
        /// Behind a guard.
        Guarded = "guarded",
        /// By ladder or platform.
        Climb = "climb",
    }
}
