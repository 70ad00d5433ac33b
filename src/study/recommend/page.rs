//! The recommendation and its sheet as people read them: rows of the register, tables of alternatives, lists of words.

use super::result::{Alternative, LineSetUp, Recommendation, SetUpSheet};
use crate::quantity::show::{self, escaped};
use crate::quantity::{Field, Noun, Row, Tree, Word};

/// The columns of the table of alternatives.
const COLUMNS: [&str; 14] = [
    "rank",
    "total_per_year",
    "set_up.oil",
    "set_up.shot_ul",
    "set_up.every_nth",
    "set_up.run_min",
    "set_up.dwell_min",
    "set_up.application_section",
    "set_up.application_position",
    "worst_wait_h",
    "lowest_fill_reached",
    "overflow_share",
    "applied_l_per_year",
    "never_reached",
];
/// Alternatives that are shown; the others stand in the list.
const SHOWN: usize = 8;

/// A page in blocks, so that text and HTML say the same.
enum Block {
    Title(String),
    /// Name, value, unit, meaning.
    Rows(Vec<[String; 4]>),
    Table(Vec<Vec<String>>),
    List(String, Vec<String>),
}

impl Recommendation {
    /// As text.
    pub fn as_text(&self) -> String {
        text(&self.blocks())
    }
    /// As HTML.
    pub fn as_html(&self) -> String {
        html(&self.blocks())
    }

    fn blocks(&self) -> Vec<Block> {
        let name = self.line.as_ref().map_or(String::new(), |line| format!(" for {}", line.name));
        let verdict = if self.feasible { "Recommendation" } else { "No recommendation" };
        let mut blocks = vec![Block::Title(format!(
            "{verdict}{name}: {} of {} set-ups keep every limit",
            self.feasible_candidates, self.candidates
        ))];
        blocks.extend(self.set_up.as_ref().map(|set_up| Block::Rows(rows(set_up))));
        blocks.push(Block::List("why".into(), words(&self.why)));
        if !self.alternatives.is_empty() {
            blocks.push(Block::Table(table(&self.alternatives)));
        }
        let refused = self
            .refused
            .iter()
            .map(|group| format!("{} {}: nearest {}", group.count, group.reason.as_str(), group.nearest));
        blocks.push(Block::List("refused".into(), refused.collect()));
        blocks
    }
}

impl SetUpSheet {
    /// As text.
    pub fn as_text(&self) -> String {
        text(&self.blocks())
    }
    /// As HTML.
    pub fn as_html(&self) -> String {
        html(&self.blocks())
    }

    fn blocks(&self) -> Vec<Block> {
        let of = |name: &str| Self::ROWS.iter().find(|row| row.name == name).map_or("", |row| row.means).to_string();
        let mut all = rows(&self.set_up);
        all.extend(rows(self).into_iter().filter(|row| row[0] != "name"));
        vec![
            Block::Title(self.title()),
            Block::Rows(all),
            Block::List(of("check"), words(&self.check)),
            Block::List(of("prove"), words(&self.prove)),
            Block::List(of("cautions"), words(&self.cautions)),
        ]
    }
}

fn words(list: &[Word]) -> Vec<String> {
    list.iter().map(ToString::to_string).collect()
}

/// The single values of a noun that are there, with unit and meaning from the register.
fn rows<T: Noun>(noun: &T) -> Vec<[String; 4]> {
    let tree = noun.write();
    let shown = |row: &'static Row| -> Option<[String; 4]> {
        let value = tree.get(row.name)?;
        let is_single = !matches!(
            value.value,
            crate::quantity::Value::List(_) | crate::quantity::Value::Table(_) | crate::quantity::Value::Nothing
        );
        is_single.then(|| [row.name.into(), show::value_of(value, row), row.unit.label.into(), row.means.into()])
    };
    T::ROWS.iter().filter_map(shown).collect()
}

fn table(alternatives: &[Alternative]) -> Vec<Vec<String>> {
    let row_of = |path: &str| match path.strip_prefix("set_up.") {
        Some(name) => LineSetUp::ROWS.iter().find(|row| row.name == name),
        None => Alternative::ROWS.iter().find(|row| row.name == path),
    };
    let head = |path: &&str| {
        let name = path.trim_start_matches("set_up.");
        // most names carry their unit
        match row_of(path).map(|row| row.unit).filter(|unit| unit.endings.is_empty() && !unit.label.is_empty()) {
            Some(unit) => format!("{name} [{}]", unit.label),
            None => name.to_string(),
        }
    };
    let cell = |tree: &Tree, path: &&str| {
        let found = path.split('.').try_fold(tree, |tree, step| tree.get(step));
        found.map_or("–".into(), |tree| match tree.value {
            crate::quantity::Value::Number(number) => show::brief(number).to_string(),
            _ => show::value(tree),
        })
    };
    let mut lines = vec![COLUMNS.iter().map(head).collect::<Vec<_>>()];
    for alternative in alternatives.iter().take(SHOWN) {
        let tree = alternative.write();
        lines.push(COLUMNS.iter().map(|path| cell(&tree, path)).collect());
    }
    lines
}

/// The same with the heads in short lines, the last one above the numbers.
fn stacked(lines: &[Vec<String>]) -> Vec<Vec<String>> {
    let Some((heads, rest)) = lines.split_first() else { return Vec::new() };
    let pieces = |head: &String| -> Vec<String> {
        let mut pieces: Vec<String> = Vec::new();
        for word in head.split_inclusive(['_', ' ']) {
            match pieces.last_mut().filter(|last| last.chars().count() + word.chars().count() <= HEAD) {
                Some(last) => last.push_str(word),
                None => pieces.push(word.to_string()),
            }
        }
        pieces
    };
    let stacks: Vec<Vec<String>> = heads.iter().map(pieces).collect();
    let height = stacks.iter().map(Vec::len).max().unwrap_or(0);
    let at = |stack: &Vec<String>, row: usize| {
        row.checked_sub(height - stack.len()).map_or(String::new(), |i| stack[i].clone())
    };
    let mut all: Vec<Vec<String>> =
        (0..height).map(|row| stacks.iter().map(|stack| at(stack, row)).collect()).collect();
    all.extend_from_slice(rest);
    all
}

/// Letters in a line of a head.
const HEAD: usize = 12;

/// Lines of a table under one another, numbers to the right.
fn columns(lines: &[Vec<String>]) -> String {
    let width =
        |i: usize| lines.iter().filter_map(|line| line.get(i)).map(|cell| cell.chars().count()).max().unwrap_or(0);
    let widths: Vec<usize> = (0..lines.first().map_or(0, Vec::len)).map(width).collect();
    let line = |cells: &Vec<String>| {
        let padded: Vec<String> = cells.iter().zip(&widths).map(|(cell, &width)| format!("{cell:>width$}")).collect();
        format!("  {}\n", padded.join("  ").trim_end())
    };
    lines.iter().map(line).collect()
}

fn text(blocks: &[Block]) -> String {
    let mut page = String::new();
    for block in blocks {
        page += &match block {
            Block::Title(title) => format!("{title}\n"),
            Block::Rows(rows) => {
                let wide =
                    |i: usize| rows.iter().map(|row| row[i].chars().count()).filter(|n| *n <= 24).max().unwrap_or(0);
                let (name, value, unit) = (wide(0), wide(1), wide(2));
                let line = |row: &[String; 4]| {
                    let [n, v, u, means] = row;
                    if v.chars().count() > 24 {
                        // a sentence needs no meaning beside it
                        return format!("  {n:<name$}  {v}\n");
                    }
                    format!("{}\n", format!("  {n:<name$}  {v:>value$} {u:<unit$}  {means}").trim_end())
                };
                rows.iter().map(line).collect()
            }
            Block::Table(lines) => format!("\n{}", columns(&stacked(lines))),
            Block::List(title, items) if !items.is_empty() => {
                format!("\n{title}\n{}", items.iter().map(|item| format!("  - {item}\n")).collect::<String>())
            }
            Block::List(..) => String::new(),
        };
    }
    page
}

fn html(blocks: &[Block]) -> String {
    let mut page = String::from("<div class=\"pinfilm\">");
    for block in blocks {
        page += &match block {
            Block::Title(title) => format!("<h4>{}</h4>", escaped(title)),
            Block::Rows(rows) => {
                let line = |row: &[String; 4]| {
                    let [name, value, unit, means] = row.each_ref().map(|cell| escaped(cell));
                    format!(
                        "<tr><td><code>{name}</code></td><td style=\"text-align:right\">{value}</td><td>{unit}</td>\
                         <td style=\"text-align:left\">{means}</td></tr>"
                    )
                };
                format!("<table><tbody>{}</tbody></table>", rows.iter().map(line).collect::<String>())
            }
            Block::Table(lines) => {
                let line = |tag: &str, cells: &Vec<String>| {
                    let cells: String = cells.iter().map(|cell| format!("<{tag}>{}</{tag}>", escaped(cell))).collect();
                    format!("<tr>{cells}</tr>")
                };
                let head = lines.first().map_or(String::new(), |cells| line("th", cells));
                let body: String = lines.iter().skip(1).map(|cells| line("td", cells)).collect();
                format!("<table><thead>{head}</thead><tbody>{body}</tbody></table>")
            }
            Block::List(title, items) if !items.is_empty() => {
                let items: String = items.iter().map(|item| format!("<li>{}</li>", escaped(item))).collect();
                format!("<p><b>{}</b></p><ul>{items}</ul>", escaped(title))
            }
            Block::List(..) => String::new(),
        };
    }
    page + "</div>"
}
