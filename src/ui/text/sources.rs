//! Sources and names that the app itself puts into a recipe or a line, in the language that is spoken.
//!
//! A source is a citation, which no language changes, with a few words of prose around it. Both are kept in English by the computation
//! and by the files of others, so the prose is put into the language here, phrase by phrase. What somebody typed is never touched.

use crate::domain::Draft;
use crate::domain::line::LineBook;
use crate::domain::recipe::binder_system::SystemKey;
use crate::domain::recipe::draft::LiquidDraft;
use crate::ui::text::fluent;
use crate::{label, t};

/// The prose of the sources, longer phrases before the shorter ones in them, with what it is in the language.
fn phrases() -> [(&'static str, &'static str); 35] {
    [
        ("Directive (EU)", label!("source-directive")),
        ("Regulation (EU)", label!("source-regulation")),
        ("102nd ed.", label!("source-edition-102")),
        ("Invented, for the example.", label!("source-invented")),
        ("Hexamine gives off formaldehyde and ammonia when heated.", label!("source-hexamine")),
        ("Dose beside another binder:", label!("source-dose-beside")),
        ("Dose, solids and density:", label!("source-dose-solids-density")),
        ("Dose and concentration:", label!("source-dose-concentration")),
        ("Solids and density:", label!("source-solids-density")),
        ("Spray solids:", label!("source-spray-solids")),
        ("Density at 20 °C:", label!("source-density-at-20")),
        ("Concentration:", label!("source-concentration")),
        ("Density:", label!("source-density")),
        ("Solids:", label!("source-solids")),
        ("Dose:", label!("source-dose")),
        ("Typical.", label!("source-typical")),
        ("coefficients unverified", label!("source-coefficients-unverified")),
        ("factor unverified", label!("source-factor-unverified")),
        ("unverified", label!("source-unverified")),
        ("more on wheat straw", label!("source-more-on-wheat-straw")),
        ("on split wheat straw at", label!("source-on-split-wheat-straw")),
        ("on rice straw", label!("source-on-rice-straw")),
        ("melamine-modified UF", label!("source-melamine-modified")),
        ("wheat-straw MDF", label!("source-wheat-straw-mdf")),
        ("wheat straw", label!("source-wheat-straw")),
        ("wood, core and face", label!("source-wood-core-face")),
        ("from wood to straw", label!("source-wood-to-straw")),
        ("around the ", label!("source-around")),
        ("chart for individuals", label!("source-chart-individuals")),
        ("least squares", label!("source-least-squares")),
        ("chapter ", label!("source-chapter")),
        ("up to ", label!("source-up-to")),
        ("about ", label!("source-about")),
        ("best ", label!("source-best")),
        ("from ", label!("source-from")),
    ]
}

/// A source in the language that is spoken.
#[must_use]
pub fn source_text(source: &str) -> String {
    if fluent::code() == "en" {
        return source.to_owned();
    }
    let put = |text: String, (english, own): (&str, &str)| text.replace(english, own);
    let text = phrases().into_iter().fold(source.to_owned(), put);
    // Between two numbers and between two names, wherever they are.
    let text = text
        .replace(" to ", label!("source-to"))
        .replace(" and ", label!("source-and"))
        .replace(" of ", label!("source-of"));
    with_mark_of_language(&text)
}

/// A source's percentages as the language writes them: "12,5 bis 14 %". Numbers of standards and sections have points of their own.
fn with_mark_of_language(text: &str) -> String {
    let mark = label!("source-decimal-mark");
    let is_share = text.contains('%');
    let letters: Vec<char> = text.chars().collect();
    let digit = |at: Option<usize>| at.and_then(|at| letters.get(at)).is_some_and(char::is_ascii_digit);
    let put = |(at, letter): (usize, &char)| {
        let between = *letter == '.' && digit(at.checked_sub(1)) && digit(Some(at + 1));
        if is_share && between { mark.to_owned() } else { letter.to_string() }
    };
    letters.iter().enumerate().map(put).collect()
}

/// The liquids of a typical binder system, named in the language that is spoken. From then on their names are the user's.
#[must_use]
pub fn typical_liquids(key: SystemKey) -> Vec<LiquidDraft> {
    named(key.system().liquids)
}

/// A recipe that begins with names of the app's, in the language that is spoken.
#[must_use]
pub fn named_recipe(mut draft: Draft) -> Draft {
    draft.liquids = named(draft.liquids);
    draft
}

fn named(liquids: Vec<LiquidDraft>) -> Vec<LiquidDraft> {
    let own =
        |liquid: LiquidDraft| LiquidDraft { name: name(&liquid.name), source: source_text(&liquid.source), ..liquid };
    liquids.into_iter().map(own).collect()
}

/// A line that begins with names of the app's, in the language that is spoken.
#[must_use]
pub fn named_line(mut book: LineBook) -> LineBook {
    for pump in &mut book.pumps {
        pump.name = name(&pump.name);
    }
    for tank in &mut book.tanks {
        tank.name = name(&tank.name);
    }
    book
}

/// A name that the computation gives a liquid, a pump or a tank of its examples.
fn name(english: &str) -> String {
    match english {
        "UF resin" => t!("name-uf"),
        "MUF resin" => t!("name-muf"),
        "PF resin" => t!("name-pf"),
        "Soy adhesive" => t!("name-soy"),
        "Tannin adhesive" => t!("name-tannin"),
        "Hexamine solution" => t!("name-hexamine"),
        "Ammonium sulfate solution" => t!("name-ammonium-sulfate"),
        "Urea solution" => t!("name-urea"),
        "Wax emulsion" => t!("name-wax"),
        "P1 binder" => t!("name-binder-pump"),
        "P2 wax" => t!("name-wax-pump"),
        "P3 water" => t!("name-water-pump"),
        "T1 binder" => t!("name-binder-tank"),
        other => other.to_owned(),
    }
}
