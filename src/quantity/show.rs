//! Values as people read them: numbers with six figures, text and HTML tables from the register.

use super::tree::{Tree, Value};
use super::unit::Unit;
use super::{Noun, Row};

/// A number that sentences show with at most three significant figures; put into words only when it is printed.
pub struct Brief(f64);

/// A number for sentences.
pub fn brief(value: f64) -> Brief {
    Brief(value)
}

impl std::fmt::Display for Brief {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        let Brief(value) = *self;
        if value == 0.0 || !value.is_finite() {
            return f.write_str(&number(value));
        }
        let exponent = value.abs().log10().floor() as i32;
        let step = 10f64.powi(exponent - 2);
        let digits = (value / step).round();
        if !(-4..8).contains(&exponent) {
            return f.write_str(&number(digits * step));
        }
        // three digits as a whole number, and where the point goes: printing the number itself takes ten times as long
        let (sign, mut whole) = (if value < 0.0 { "-" } else { "" }, digits.abs() as u64);
        match exponent {
            2.. => write!(f, "{sign}{}", whole * 10_u64.pow(exponent as u32 - 2)),
            _ => {
                let mut decimals = (2 - exponent) as usize;
                while decimals > 0 && whole.is_multiple_of(10) {
                    (whole, decimals) = (whole / 10, decimals - 1);
                }
                let tens = 10_u64.pow(decimals as u32);
                match decimals {
                    0 => write!(f, "{sign}{whole}"),
                    _ => write!(f, "{sign}{}.{:0decimals$}", whole / tens, whole % tens),
                }
            }
        }
    }
}

/// A number with at most six significant figures, without trailing zeros.
pub fn number(value: f64) -> String {
    if value == 0.0 {
        return "0".into();
    }
    if !value.is_finite() {
        return if value.is_nan() {
            "NaN".into()
        } else {
            format!("{}infinite", if value < 0.0 { "minus " } else { "" })
        };
    }
    let exponent = value.abs().log10().floor() as i32;
    if !(-4..9).contains(&exponent) {
        let text = format!("{value:.5e}");
        let (digits, power) = text.split_once('e').unwrap_or((&text, "0"));
        return format!("{}e{power}", trimmed(digits));
    }
    let decimals = (5 - exponent).max(0) as usize;
    trimmed(&format!("{value:.decimals$}")).to_string()
}

fn trimmed(text: &str) -> &str {
    if text.contains('.') { text.trim_end_matches('0').trim_end_matches('.') } else { text }
}

/// A number and its unit.
pub fn quantity(value: f64, unit: &Unit) -> String {
    if unit.label.is_empty() { number(value) } else { format!("{} {}", number(value), unit.label) }
}

/// A value in SI, in a unit that people use.
pub fn in_unit(si: f64, unit: &Unit) -> String {
    quantity(unit.from_si(si), unit)
}

/// Text that is safe inside HTML.
pub fn escaped(text: &str) -> String {
    let mut safe = String::with_capacity(text.len());
    for c in text.chars() {
        match c {
            '&' => safe.push_str("&amp;"),
            '<' => safe.push_str("&lt;"),
            '>' => safe.push_str("&gt;"),
            '"' => safe.push_str("&quot;"),
            '\'' => safe.push_str("&#39;"),
            _ => safe.push(c),
        }
    }
    safe
}

/// A value of a noun as people read it, without its unit; lists are cut after a few items.
pub fn value(tree: &Tree) -> String {
    match &tree.value {
        Value::Nothing => "–".into(),
        Value::Flag(flag) => if *flag { "yes" } else { "no" }.into(),
        Value::Whole(whole) => whole.to_string(),
        Value::Number(value) => number(*value),
        Value::Text(text) => text.clone(),
        Value::List(items) if items.is_empty() => "–".into(),
        Value::List(items) if items.iter().all(|item| matches!(item.value, Value::Text(_))) => {
            items.iter().map(value).collect::<Vec<_>>().join(", ")
        }
        Value::List(items) => {
            let shown: Vec<String> = items.iter().take(4).map(value).collect();
            let more = if items.len() > 4 { format!(", … {} in all", items.len()) } else { String::new() };
            format!("[{}{more}]", shown.join(", "))
        }
        Value::Table(entries) => {
            entries.iter().map(|(key, tree)| format!("{key} {}", value(tree))).collect::<Vec<_>>().join(", ")
        }
    }
}

/// A value of a quantity, or that it is above what its number still says.
pub fn value_of(tree: &Tree, row: &Row) -> String {
    match tree.value {
        Value::Number(number) if number > row.ceiling => format!("over {}", self::number(row.ceiling)),
        _ => value(tree),
    }
}

/// A line of a table.
pub struct Entry {
    depth: usize,
    name: String,
    row: &'static Row,
    /// None for a heading.
    value: Option<String>,
}

impl Entry {
    /// A heading: a noun inside a noun.
    pub fn heading(name: &str, row: &'static Row, depth: usize) -> Self {
        Entry { depth, name: name.to_string(), row, value: None }
    }

    /// A value.
    pub fn value(name: &str, row: &'static Row, depth: usize, value: String) -> Self {
        Entry { depth, name: name.to_string(), row, value: Some(value) }
    }
}

/// The entries of a noun, its own heading first.
fn entries<T: Noun>(noun: &T) -> Vec<Entry> {
    let mut out = Vec::new();
    noun.show(T::NAME, &Row::BLANK, 0, &mut out);
    out
}

/// A noun as a table of text: name, value, unit, meaning; nouns inside it under their own headings.
pub fn text_table<T: Noun>(noun: &T) -> String {
    let entries = entries(noun);
    let tree = noun.write();
    let currency = tree.currency();
    let widest = |of: &dyn Fn(&Entry) -> usize| entries.iter().filter(|e| e.value.is_some()).map(of).max().unwrap_or(0);
    let name_width = widest(&|entry| 2 * entry.depth + entry.name.chars().count());
    let value_width = widest(&|entry| entry.value.as_ref().map_or(0, |value| value.chars().count())).min(24);
    let unit_width = widest(&|entry| entry.row.unit.label_in(currency).chars().count());
    let mut text = String::new();
    for entry in &entries {
        let indent = "  ".repeat(entry.depth);
        let line = match &entry.value {
            None if entry.depth == 0 => entry.name.clone(),
            None => format!("{indent}{}: {}", entry.name, entry.row.means),
            Some(value) => {
                let name = format!("{indent}{}", entry.name);
                let unit = entry.row.unit.label_in(currency);
                format!("{name:<name_width$}  {value:>value_width$} {unit:<unit_width$}  {}", entry.row.means)
            }
        };
        text += line.trim_end();
        text.push('\n');
    }
    text
}

/// A symbol as HTML, what follows its underline as an index.
fn html_symbol(symbol: &str) -> String {
    match symbol.split_once('_') {
        Some((letter, index)) => format!("<i>{}</i><sub>{}</sub>", escaped(letter), escaped(index)),
        None => format!("<i>{}</i>", escaped(symbol)),
    }
}

const LEFT: &str = "text-align:left;vertical-align:top";

/// A noun as an HTML table: symbol, name, value, unit, meaning. Styles stand in it, since a notebook keeps no others.
pub fn html_table<T: Noun>(noun: &T) -> String {
    let mut html = format!(
        "<table class=\"pinfilm\"><caption style=\"text-align:left;font-weight:bold\">{}</caption><thead><tr>\
         <th style=\"{LEFT}\">symbol</th><th style=\"{LEFT}\">name</th><th style=\"text-align:right\">value</th>\
         <th style=\"{LEFT}\">unit</th><th style=\"{LEFT}\">meaning</th></tr></thead><tbody>",
        escaped(T::NAME)
    );
    let tree = noun.write();
    let currency = tree.currency();
    for entry in entries(noun).iter().skip(1) {
        let (row, indent) = (entry.row, entry.depth.saturating_sub(1));
        html += &match &entry.value {
            None => format!(
                "<tr><td></td><th colspan=\"4\" style=\"text-align:left;padding-left:{indent}em\">{}: {}</th></tr>",
                escaped(&entry.name),
                escaped(row.means)
            ),
            Some(value) => format!(
                "<tr><td style=\"{LEFT}\">{}</td><td style=\"{LEFT};padding-left:{indent}em\"><code>{}</code></td>\
                 <td style=\"text-align:right;vertical-align:top;max-width:22em\">{}</td>\
                 <td style=\"{LEFT};white-space:nowrap\">{}</td><td style=\"{LEFT}\">{}</td></tr>",
                html_symbol(row.symbol),
                escaped(&entry.name),
                escaped(value),
                escaped(&row.unit.label_in(currency)),
                escaped(row.means)
            ),
        };
    }
    html + "</tbody></table>"
}

/// Rows of words and numbers as an HTML table; numbers stand to the right.
pub fn html_rows<'a>(caption: &str, heads: &[&str], rows: impl Iterator<Item = Vec<&'a str>>, foot: &str) -> String {
    let side = |cell: &str| {
        let plain = cell.chars().next().is_some_and(|c| c.is_ascii_digit() || matches!(c, '-' | '–'));
        if plain { "text-align:right;vertical-align:top" } else { LEFT }
    };
    let cells = |tag: &str, cells: &[&str]| {
        let each = cells.iter().map(|cell| format!("<{tag} style=\"{}\">{}</{tag}>", side(cell), escaped(cell)));
        format!("<tr>{}</tr>", each.collect::<String>())
    };
    let mut html = String::from("<table class=\"pinfilm\">");
    if !caption.is_empty() {
        html += &format!("<caption style=\"text-align:left;font-weight:bold\">{}</caption>", escaped(caption));
    }
    html += &format!("<thead>{}</thead><tbody>", cells("th", heads));
    html.extend(rows.map(|row| cells("td", &row)));
    html += "</tbody></table>";
    if foot.is_empty() { html } else { html + &format!("<p>{}</p>", escaped(foot)) }
}

/// Words of a terminal in a page, line by line as they are.
pub fn html_text(text: &str) -> String {
    format!("<pre class=\"pinfilm\" style=\"white-space:pre-wrap\">{}</pre>", escaped(text))
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn rows_are_escaped_and_numbers_stand_right() {
        let html = html_rows("<b>", &["name", "value"], [vec!["a & b", "-1.5"]].into_iter(), "1 of 9 rows");
        assert!(html.contains("&lt;b&gt;</caption>") && html.contains("a &amp; b</td>"), "{html}");
        assert!(html.contains("right;vertical-align:top\">-1.5") && html.ends_with("<p>1 of 9 rows</p>"), "{html}");
    }

    proptest! {
        #[test]
        fn three_figures_read_as_the_rounded_number_does(log in -7.0..12.0f64, sign in prop_oneof![Just(1.0), Just(-1.0)]) {
            let value = sign * 10f64.powf(log);
            let step = 10f64.powi(value.abs().log10().floor() as i32 - 2);
            prop_assert_eq!(brief(value).to_string(), number((value / step).round() * step));
        }
    }

    #[test]
    fn three_figures_without_trailing_zeros() {
        for (value, text) in [
            (0.0, "0"),
            (9.996, "10"),
            (-1.203, "-1.2"),
            (1.005, "1"),
            (2.038, "2.04"),
            (999.6, "1000"),
            (99_996.0, "100000"),
            (f64::INFINITY, "infinite"),
        ] {
            assert_eq!(brief(value).to_string(), text);
        }
    }

    #[test]
    fn six_figures_without_trailing_zeros() {
        for (value, text) in [
            (0.0, "0"),
            (12.7, "12.7"),
            (5390.632316, "5390.63"),
            (0.0001335016, "0.000133502"),
            (1.341002030e8, "134100203"),
            (1.341002030e9, "1.341e9"),
            (3.282961968e-201, "3.28296e-201"),
            (-0.5, "-0.5"),
        ] {
            assert_eq!(number(value), text);
        }
    }

    #[test]
    fn html_is_escaped() {
        assert_eq!(escaped("<b a='1'>&\"</b>"), "&lt;b a=&#39;1&#39;&gt;&amp;&quot;&lt;/b&gt;");
    }
}
