//! The recipe at the fibre that comes down the line now: belt scale and moisture as entered for the pump settings.

use crate::domain::balance::outcome::{Case, examine};
use crate::domain::balance::solve::solve;
use crate::domain::line::book::LineBook;
use crate::domain::line::entries::ConditionField;
use crate::domain::line::field::LineField;
use crate::domain::line::finding::{LineFinding, LineFindingKind, LinePlace};
use crate::domain::line::read::Reader;
use crate::domain::recipe::finding::{Finding, Grade};
use crate::domain::recipe::input::{Feed, Input};
use crate::quantity::Moisture;
use uom::si::f64::MassRate;

/// The recipe at what was entered.
#[derive(Debug, Clone, PartialEq)]
pub struct Conditions {
    /// The recipe there; `None` where an entry cannot be used, or gives no balance.
    pub case: Option<Case>,
    /// What the belt scale has to read for the recipe's fibre at this moisture.
    pub target: Option<MassRate>,
    /// What there is to say about the entries.
    pub findings: Vec<LineFinding>,
    /// What there is to say about the recipe at these conditions.
    pub recipe: Vec<Finding>,
}

/// The recipe `case`, called `name`, at the belt scale and the fibre moisture of the book, each the recipe's where it is
/// blank. A changed moisture alone keeps what the recipe fixes: its oven-dry flow, its belt scale or its line speed.
#[must_use]
pub fn at_conditions(case: &Case, book: &LineBook, name: &str) -> Conditions {
    let mut reader = Reader::new(book);
    let field = LineField::Condition;
    let moisture = reader.number(field(ConditionField::Moisture)).and_then(Moisture::from_dry_basis);
    let belt = reader.number(field(ConditionField::Belt)).map(|belt| si!(MassRate, belt));
    let is_typed = ConditionField::ALL.iter().any(|part| !book.conditions.entry(*part).is_blank());
    if let Some(on) = book.conditions_on.as_ref().filter(|on| is_typed && on.recipe != name) {
        let what = LineFindingKind::OtherRecipe { recipe: on.recipe.clone() };
        reader.say(Grade::Unusual, LinePlace::Line, what);
    }
    if reader.stopped_since(0) {
        return Conditions { case: None, target: None, findings: reader.findings, recipe: Vec::new() };
    }
    let moisture = moisture.unwrap_or(case.input.fibre_moisture);
    let planned = at(case, case.input.feed, moisture);
    let target = planned.as_ref().map(|planned| planned.solved.fibre_wet);
    let now = match belt {
        Some(belt) => at(case, Feed::Belt(belt), moisture),
        None => planned,
    };
    let mut recipe = Vec::new();
    match &now {
        Some(now) => examine(&now.input, &now.solved, &mut recipe),
        None => reader.stop(LinePlace::Line, LineFindingKind::NoBalance),
    }
    Conditions { case: now, target, findings: reader.findings, recipe }
}

/// The recipe fed so, with fibre of this moisture.
pub(in crate::domain::line) fn at(case: &Case, feed: Feed, fibre_moisture: Moisture) -> Option<Case> {
    let input = Input { feed, fibre_moisture, ..case.input.clone() };
    let solved = solve(&input).ok()?;
    Some(Case { input, solved })
}
