//! The one error type: what was wrong with which field, its value and unit, what is allowed, and a stable code.

use std::fmt;

/// Result of everything here that can fail.
pub type Result<T> = std::result::Result<T, Error>;

/// The four families of errors; Python has one exception class for each.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Kind {
    /// A value, or a combination of values, that cannot be computed.
    Input,
    /// A quantity of another dimension than its name says.
    Unit,
    /// A table that is not one: columns missing, types wrong.
    Table,
    /// An iteration that did not settle.
    Convergence,
}

macro_rules! codes {
    ($($(#[$doc:meta])* $name:ident = $text:literal, $kind:ident, $means:literal;)+) => {
        /// A stable code for programs; the message is for people.
        #[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
        pub enum Code { $(#[doc = $means] $name),+ }

        impl Code {
            /// Every code there is, in the order of the documentation.
            pub const ALL: &'static [Code] = &[$(Code::$name),+];
            /// The code as it is printed and compared.
            pub const fn as_str(self) -> &'static str { match self { $(Code::$name => $text),+ } }
            /// What the code says, in one line.
            pub const fn means(self) -> &'static str { match self { $(Code::$name => $means),+ } }
            /// The family it belongs to.
            pub const fn kind(self) -> Kind { match self { $(Code::$name => Kind::$kind),+ } }
        }
    };
}

codes! {
    OutOfRange = "out_of_range", Input, "a number outside the range that the models allow";
    NotFinite = "not_finite", Input, "a number that is NaN or infinite";
    Missing = "missing", Input, "a required value that was not given";
    UnknownKey = "unknown_key", Input, "a key that no survey has";
    UnknownChoice = "unknown_choice", Input, "a word that is not one of the choices";
    WrongType = "wrong_type", Input, "a value of the wrong kind, such as text for a number";
    NotReadable = "not_readable", Input, "a file or text that is not valid TOML or JSON";
    Inconsistent = "inconsistent", Input, "values that contradict each other";
    Clearance = "clearance", Input, "a pin that is not smaller than its bush, or a bush that is not smaller than its roller";
    RiseMismatch = "rise_mismatch", Input, "a loop whose rises do not add up to zero";
    Unsupported = "unsupported", Input, "a case that the models do not cover";
    BeyondModel = "beyond_model", Input, "a load, pressure or temperature beyond what the model can say";
    NoSuchChain = "no_such_chain", Input, "a chain that the tables do not hold";
    NoSuchGrade = "no_such_grade", Input, "a viscosity grade that ISO 3448 does not have";
    MotorNameplate = "motor.infeasible", Input, "a nameplate that no induction motor can have";
    MotorNoLoad = "motor.no_load_current", Input, "a no-load current that does not fit the nameplate";
    MotorPullOut = "motor.pull_out", Input, "a load above what the motor can turn";
    NotInvertible = "not_invertible", Input, "a current that does not name one load";
    NoOperatingPoint = "no_operating_point", Input, "a cable that cannot carry the load at any voltage";
    Turbulent = "turbulent", Input, "flow in an oil line that is not laminar";
    Strength = "strength", Input, "a chain pulled beyond its tensile strength";
    Hot = "hot_surface", Input, "oil within 20 K of its flash point, not confirmed by the surveyor";
    NoAnswer = "no_answer", Input, "a question of a formula or a log that no number answers";
    Dimension = "dimension", Unit, "a quantity of another dimension than the name says";
    MissingColumns = "missing_columns", Table, "a table without columns that every line needs";
    DuplicateColumn = "duplicate_column", Table, "two columns of one name, or one with the name of a result";
    ColumnType = "column_type", Table, "a column whose type cannot hold what its name says";
    UnknownOutput = "unknown_output", Table, "a result that was asked for and that there is not";
    NotATable = "not_a_table", Table, "an object that holds no columns, or columns of different length";
    File = "file", Table, "a file that cannot be read as a table, or not be written";
    Stopped = "stopped", Convergence, "a calculation that was stopped before its end";
    NotConverged = "not_converged", Convergence, "an iteration that did not settle";
}

/// The value that was refused.
#[derive(Debug, Clone, PartialEq)]
pub enum Given {
    /// No single value is to blame, or none was given.
    Nothing,
    /// A number, in the unit of its name.
    Number(f64),
    /// Anything else, as it was written.
    Text(String),
}

impl fmt::Display for Given {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Given::Nothing => Ok(()),
            Given::Number(number) => write!(f, "{number}"),
            Given::Text(text) => write!(f, "{text}"),
        }
    }
}

/// What went wrong, for a person (the message) and for a program (the rest).
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[error("{}", self.text())]
pub struct Error {
    /// Stable code.
    pub code: Code,
    /// Dotted path of the field, such as `chain.pin_diameter_mm`; a plain name where a formula was called directly.
    pub field: String,
    /// Whether that path is one of a result, such as `joint.events.pressure_mpa`, and not a survey key.
    pub is_result: bool,
    /// The refused value.
    pub value: Box<Given>,
    /// Its unit; empty when it has none.
    pub unit: &'static str,
    /// What would have been accepted, in words.
    pub limit: String,
    /// The line of the survey file, where it is known.
    pub line: Option<usize>,
    /// What is wrong and what to do about it.
    pub message: String,
}

impl Error {
    /// An error of `code` about `field`; `message` says in a full sentence what is wrong and what to change.
    pub fn new(code: Code, field: impl Into<String>, message: impl Into<String>) -> Self {
        Error {
            code,
            field: field.into(),
            is_result: false,
            value: Box::new(Given::Nothing),
            unit: "",
            limit: String::new(),
            line: None,
            message: message.into(),
        }
    }

    /// Adds the refused number.
    pub fn number(mut self, value: f64) -> Self {
        self.value = Box::new(Given::Number(value));
        self
    }

    /// Adds the refused text.
    pub fn text_value(mut self, value: impl Into<String>) -> Self {
        self.value = Box::new(Given::Text(value.into()));
        self
    }

    /// Adds the unit of the refused value.
    pub fn unit(mut self, unit: &'static str) -> Self {
        self.unit = unit;
        self
    }

    /// Adds what would have been accepted.
    pub fn limit(mut self, limit: impl Into<String>) -> Self {
        self.limit = limit.into();
        self
    }

    /// Adds the line of the survey file.
    pub fn at_line(mut self, line: Option<usize>) -> Self {
        self.line = self.line.or(line);
        self
    }

    /// The family of the error.
    pub fn kind(&self) -> Kind {
        self.code.kind()
    }

    /// The whole message: what is wrong, the code, and where in the survey file.
    fn text(&self) -> String {
        let mut place = format!("code: {}", self.code.as_str());
        if !self.field.is_empty() {
            // a plain name is that of an argument, or what the formula calls it
            let kind = match (self.is_result, self.field.contains('.')) {
                (true, _) => "result ",
                (false, true) => "survey key ",
                (false, false) => "",
            };
            place += &format!(", {kind}{}", self.field);
        }
        if let Some(line) = self.line {
            place += &format!(", line {line}");
        }
        format!("{} [{place}]", self.message)
    }
}
