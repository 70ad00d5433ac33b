//! What a result says of the loop: times, temperatures, pull.

use crate::noun;
use crate::quantity::{Class, Named};

macro_rules! kinematics_noun { ($declare:ident) => { $declare! {
    /// Lengths, times and temperatures round the loop.
    Kinematics / KinematicsSi, "kinematics" {
        joints as joints: i64 [ONE] "joints of one strand"
            { symbol: "N", formula: "counted ({circuit.joints}), else 2 floor({kinematics.survey_length_m} / (2 {chain.pitch_mm}) + 1/2)", source: "definition", class: Class::Derived }
        joints_counted as joints_counted: bool [WORD] "whether the joints were counted, not computed"
            { formula: "{circuit.joints} is given", source: "definition", class: Class::Derived }
        survey_length_m as survey_length: f64 [M] "sum of the section lengths along the chain"
            { symbol: "L", formula: "sum over {circuit.sections.length_m} of straights and p θ/α of turns", source: "polygon of the pitch circle", class: Class::Derived }
        length_m as length: f64 [M] "length of one strand"
            { formula: "sum over {circuit.sections.length_m} of straights and p θ/α of turns, p = {chain.pitch_mm}", source: "polygon of the pitch circle", class: Class::Derived }
        circuit_time_s as circuit_time: f64 [S] "time of one revolution of the chain"
            { symbol: "C", formula: "{kinematics.joints} × {chain.pitch_mm} / {duty.speed_m_per_min}", source: "definition", class: Class::Derived }
        joint_time_s as joint_time: f64 [S] "time between two joints passing one place"
            { symbol: "T_j", formula: "{chain.pitch_mm} / {duty.speed_m_per_min}", source: "definition", class: Class::Derived }
        speed_ripple as speed_ripple: f64 [ONE] "greatest less least over mean chain speed at the drive"
            { formula: "(π/z) tan(π/(2 z)), z = {circuit.sections.teeth} of the drive", source: "polygon of the pitch circle", class: Class::Derived }
        running_h_per_year as running: f64 [H_PER_YEAR] "running hours in a year"
            { formula: "{duty.hours_per_day} × {duty.days_per_year}", source: "definition", class: Class::Derived }
        section_c as section_temperature: Vec<[f64; 3]> [C] "chain temperature of each section: entry, exit, mean"
            { symbol: "ϑ", formula: "ϑ_out = ϑ_env + (ϑ_in − ϑ_env) exp(−t/τ), periodic round the loop; environment {circuit.sections.temperature_c} or {duty.ambient_c}, heat transfer {circuit.sections.heat_transfer_w_per_m2_k}",
              source: "lumped heat balance; cooled surface is a closure ({circuit.surface_factor})", class: Class::Closure }
        mean_c as mean_temperature: f64 [C] "time mean of the chain temperature"
            { formula: "mean over the loop of {kinematics.section_c}", source: "lumped heat balance", class: Class::Closure }
    }
} } }
#[cfg(feature = "python")]
pub(crate) use kinematics_noun;
kinematics_noun!(noun);

const MARCH: &str = "tension march round the loop: Coulomb and rolling friction on straights, capstan and joint work on turns (Lodge and Burgess 2002 for the joint work)";

macro_rules! tension_noun { ($declare:ident) => { $declare! {
    /// Pull and tension of all strands together.
    Tension / TensionSi, "tension" {
        pull_n as pull: f64 [N] "effective pull at the drive"
            { symbol: "F", formula: "{tension.tight_n} − {tension.slack_n} + joint and bearing work of the drive turn + weight of its rise", source: MARCH, class: Class::Derived }
        tight_n as tight: f64 [N] "effective tension on the tight side of the drive"
            { symbol: "S_t", formula: "S_out = A S_in + B, section by section from {tension.slack_n}", source: MARCH, class: Class::Derived }
        slack_n as slack: f64 [N] "effective tension on the slack side of the drive"
            { symbol: "S₀", formula: "{circuit.take_up_n}, or what the frame of the take-up at {circuit.take_up_at} leaves at the drive exit", source: MARCH, class: Class::Derived }
        least_n as least: f64 [N] "least effective tension anywhere"
            { formula: "least of {tension.profile_n}", source: MARCH, class: Class::Derived }
        required_take_up_n as required_take_up: f64 [N] "slack-side tension at which no section hangs loose"
            { formula: "largest of (S_min − B)/A over all section ends and S_min; S_min = {circuit.least_tension_n}", source: MARCH, class: Class::Derived }
        take_up_sensitivity as take_up_sensitivity: f64 [ONE] "pull gained by one newton more of take-up"
            { formula: "(A − 1) + (a + b)(A + 1), A over the whole march, a and b of the drive turn", source: MARCH, class: Class::Derived }
        heaviest_strand_n as heaviest_strand: f64 [N] "greatest tension in one strand, with its centrifugal part"
            { formula: "({tension.tight_n} + n m v²) × {circuit.strand_share_factor} / {circuit.strands}", source: MARCH, class: Class::Closure }
        breakaway_pull_n as breakaway_pull: f64 [N] "pull when the line starts after a stop"
            { formula: "the march with every friction coefficient × {friction.breakaway_factor}, plus total mass × {duty.speed_m_per_min} / {circuit.start_time_s}", source: MARCH, class: Class::CommonPractice }
        shares as shares: Named [ONE] "share of the pull by cause"
            { formula: "tagged increments of the march over {tension.pull_n}", source: MARCH, class: Class::Derived }
        profile_n as profile: Vec<[f64; 2]> [N] "effective tension at the ends of each section"
            { formula: "S_out = A S_in + B, from {tension.slack_n}", source: MARCH, class: Class::Derived }
    }
} } }
#[cfg(feature = "python")]
pub(crate) use tension_noun;
tension_noun!(noun);
