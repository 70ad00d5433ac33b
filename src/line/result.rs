//! What `evaluate` gives: the groups of results, with the survey they belong to.

use super::Line;
use crate::circuit::{Kinematics, Tension};
use crate::drive::DriveState;
use crate::economics::Cost;
use crate::joint::JointState;
use crate::lubrication::FillState;
use crate::noun;
use crate::quantity::Word;
use crate::supply::SupplyState;
use crate::wear::WearState;

macro_rules! warning_noun {
    ($declare:ident) => {
        $declare! {
            /// A warning: the number stands, but outside what the model was made for, or it means trouble on the line.
            Warning / WarningSi, "warnings" {
                code as code: Word [WORD] "stable word for programs" {}
                field as field: Word [WORD] "path of the quantity it is about" {}
                value as value: Option<f64> [ONE = None] "its value, in the unit of its name" {}
                unit as unit: Word [WORD] "that unit" {}
                limit as limit: Word [WORD] "what would have been usual" {}
                message as message: Word [WORD] "the whole sentence" {}
            }
        }
    };
}
#[cfg(feature = "python")]
pub(crate) use warning_noun;
warning_noun!(noun);

macro_rules! caution_noun {
    ($declare:ident) => {
        $declare! {
            /// A caution for people who will stand at the machine.
            Caution / CautionSi, "cautions" {
                code as code: Word [WORD] "stable word of the hazard" {}
                message as message: Word [WORD] "what to mind, and whose rules decide" {}
            }
        }
    };
}
#[cfg(feature = "python")]
pub(crate) use caution_noun;
caution_noun!(noun);

macro_rules! evaluation_noun {
    ($declare:ident) => {
        $declare! {
            /// A line, evaluated: what its joints go through, what oil does in them, what that costs.
            Evaluation / EvaluationSi, "" {
                line as line: Line [WORD] "the survey" { aside: true }
                kinematics as kinematics: Kinematics [WORD] "lengths, times and temperatures" {}
                tension as tension: Tension [WORD] "pull and tension" {}
                joint as joint: JointState [WORD] "what the joints go through" {}
                fill as fill: FillState [WORD] "oil in the joints" {}
                wear as wear: WearState [WORD] "wear and life" {}
                drive as drive: DriveState [WORD] "power, current, energy" {}
                supply as supply: SupplyState [WORD] "oil used and its supply" {}
                cost as cost: Cost [WORD] "cost of a year" {}
                warnings as warnings: Vec<Warning> [WORD] "what to read with care" {}
                cautions as cautions: Vec<Caution> [WORD] "what can hurt people" {}
            }
        }
    };
}
#[cfg(feature = "python")]
pub(crate) use evaluation_noun;
evaluation_noun!(noun);
