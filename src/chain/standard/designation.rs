//! Designations: tolerant to read, and a helpful answer to a wrong one.

use super::Standard;
use crate::error::{Code, Error};

/// A designation without blanks and `#`, in capitals.
pub(super) fn plain(designation: &str) -> String {
    designation.chars().filter(|c| !c.is_whitespace() && *c != '#').collect::<String>().to_uppercase()
}

/// Splits `16B-2` into the designation of the table and the number of strands.
pub(super) fn strands(designation: &str) -> (&str, u32) {
    match designation.rsplit_once('-') {
        Some((base, "1")) => (base, 1),
        Some((base, "2")) => (base, 2),
        Some((base, "3")) => (base, 3),
        _ => (designation, 1),
    }
}

/// The error for a designation that the table does not hold: the nearest ones, and other standards that have it.
pub(super) fn unknown(standard: Standard, designation: &str) -> Error {
    let wanted = plain(designation);
    let mut near: Vec<(usize, &str)> =
        standard.designations().into_iter().map(|known| (strsim::damerau_levenshtein(known, &wanted), known)).collect();
    near.sort_by_key(|(distance, _)| *distance); // stable: equal ones stay in the order of the standard
    let near: Vec<&str> = near.into_iter().take(3).map(|(_, known)| known).collect();
    let elsewhere: String = Standard::ALL
        .into_iter()
        .filter(|other| *other != standard && other.designations().contains(&strands(&wanted).0))
        .map(|other| format!("; {} has {designation}", other.name()))
        .collect();
    let name = standard.name();
    Error::new(
        Code::NoSuchChain,
        "designation",
        format!(
            "the table of {name} has no chain {designation:?}: nearest are {}{elsewhere}; for another chain give its \
             dimensions",
            near.join(", ")
        ),
    )
    .text_value(designation)
    .limit(standard.designations().join(", "))
}

/// The error for a form of a chain (strands, roller) that the standard does not have or the table does not know.
pub(super) fn no_such_form(standard: Standard, designation: &str, why: &str) -> Error {
    Error::new(
        Code::NoSuchChain,
        "designation",
        format!("the table of {} has no {designation}: {why}", standard.name()),
    )
    .text_value(designation)
}

#[cfg(test)]
mod tests {
    use super::super::standard;

    #[test]
    fn a_wrong_name_is_answered_with_the_nearest() {
        let error = standard("ISO 606", "8B").unwrap_err();
        assert!(error.message.contains("08B"), "{}", error.message);
        assert!(standard("ISO 606", "M80").unwrap_err().message.contains("ISO 1977 has M80"));
        assert!(standard("ISO 606", "80-2").unwrap_err().message.contains("ASME B29.1 has 80-2"));
        assert!(standard("ISO 607", "08B").unwrap_err().message.contains("ISO 606"));
        assert!(standard("ASME B29.22", "X345").unwrap_err().message.contains("X348"));
    }
}
