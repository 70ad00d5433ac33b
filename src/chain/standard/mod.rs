//! Standard chains by designation: every value with its source, nothing invented.
//!
//! The tables are data files. Most of their numbers are from memory of the standards, which are not public; each value
//! says so. A value that the standard does not fix, or that nobody here knows, is empty.

mod build; // from a row of a table to a chain
mod chain; // what is known of one standard chain
mod cited; // a number with its source
mod designation; // "16B-2", "C208AL", "M112-P-160"
mod table; // reading the data files

pub use chain::{Roller, StandardChain};
pub use cited::Cited;

use crate::error::{Code, Error, Result};
use std::sync::LazyLock;
use table::Table;

/// Length of a new chain under its measuring load: shortest and longest, as shares of the nominal length off it.
///
/// Source: ISO 606 (0 to +0.15 %), from memory.
pub const NEW_CHAIN_LENGTH_TOLERANCE: (f64, f64) = (0.0, 0.0015);

/// The standards of which there is a table.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Standard {
    /// Short-pitch precision roller and bush chains, A and B series and ANSI heavy series.
    Iso606,
    /// Inch roller chains, the A series under other names.
    AsmeB29_1,
    /// Conveyor chains of the metric M series with solid pins.
    Iso1977,
    /// Double-pitch chains for transmission and conveyors.
    Iso1275,
    /// Drop-forged rivetless chains.
    AsmeB29_22,
}

impl Standard {
    /// All of them.
    pub const ALL: [Standard; 5] =
        [Standard::Iso606, Standard::AsmeB29_1, Standard::Iso1977, Standard::Iso1275, Standard::AsmeB29_22];

    /// The name under which it is called, such as `ISO 606`.
    pub const fn name(self) -> &'static str {
        self.names()[0]
    }

    /// Its own name, then those of standards with the same chains.
    const fn names(self) -> &'static [&'static str] {
        match self {
            Standard::Iso606 => &["ISO 606", "DIN 8187", "DIN 8188", "BS 228"],
            Standard::AsmeB29_1 => &["ASME B29.1", "ANSI B29.1", "B29.1", "ASME", "ANSI"],
            Standard::Iso1977 => &["ISO 1977"],
            Standard::Iso1275 => &["ISO 1275", "DIN 8181"],
            Standard::AsmeB29_22 => &["ASME B29.22", "ANSI B29.22", "B29.22"],
        }
    }

    /// The designations of its table, in order.
    pub fn designations(self) -> Vec<&'static str> {
        self.table().designations().collect()
    }

    fn table(self) -> &'static Table {
        static TABLES: LazyLock<[Table; 5]> = LazyLock::new(|| {
            [
                Table::read(include_str!("../tables/iso606.csv")),
                Table::read(include_str!("../tables/asme_b29_1.csv")),
                Table::read(include_str!("../tables/iso1977.csv")),
                Table::read(include_str!("../tables/iso1275.csv")),
                Table::read(include_str!("../tables/asme_b29_22.csv")),
            ]
        });
        &TABLES[self as usize]
    }

    /// The standard of that name; case, spaces and the year of the edition do not matter.
    fn named(name: &str) -> Result<Self> {
        let plain = |name: &str| name.chars().filter(char::is_ascii_alphanumeric).collect::<String>().to_uppercase();
        let wanted = plain(name.split(':').next().unwrap_or_default());
        let known = Standard::ALL.into_iter().find(|s| s.names().iter().any(|name| plain(name) == wanted));
        known.ok_or_else(|| {
            let names = Standard::ALL.map(Standard::name).join(", ");
            Error::new(
                Code::NoSuchChain,
                "standard",
                format!(
                    "there is no table of chains of a standard {name:?}: known are {names}; for another chain give its \
                     dimensions"
                ),
            )
            .text_value(name)
            .limit(names)
        })
    }
}

/// What there is: each standard with the designations of its table.
pub fn standards() -> Vec<(&'static str, Vec<&'static str>)> {
    Standard::ALL.map(|standard| (standard.name(), standard.designations())).to_vec()
}

/// The chain that a standard calls by this designation.
///
/// Case, blanks and a leading `#` do not matter. `-1`, `-2`, `-3` name strands (`16B-2`); `C208A` and `C208AL` are the
/// conveyor forms of ISO 1275 with small and large rollers; `M112-P-160` names type and pitch of ISO 1977 (`B` bush,
/// `S` small roller, `P` large plain roller, `F` flanged roller; large plain rollers where no type is given).
/// Fails for an unknown standard or designation, naming the nearest.
///
/// ```
/// let chain = pinfilm::chain::standard("ISO 606", "16b-2")?;
/// assert_eq!(chain.designation, "16B-2");
/// let pitch = chain.pitch.unwrap();
/// assert_eq!((pitch.value, pitch.class.as_str()), (0.0254, "read"));
///
/// let conveyor = pinfilm::chain::standard("ISO 1977", "M112")?.with_pitch(0.160)?;
/// assert_eq!(conveyor.tensile_strength.unwrap().value, 112e3);
///
/// let error = pinfilm::chain::standard("ISO 606", "16C").unwrap_err();
/// assert!(error.message.contains("16A") && error.message.contains("16B"));
/// # Ok::<(), pinfilm::Error>(())
/// ```
pub fn standard(standard: &str, designation: &str) -> Result<StandardChain> {
    build::chain(Standard::named(standard)?, designation)
}
