//! What a new delivery of a liquid moves, before it is accepted.

use crate::domain::balance::figure::Figure;
use crate::domain::balance::outcome::{Case, work_out};
use crate::domain::line::book::LineBook;
use crate::domain::line::checked::CheckedLine;
use crate::domain::line::entries::DeliveryField;
use crate::domain::line::field::LineField;
use crate::domain::line::finding::{LineFinding, LineFindingKind, LinePlace};
use crate::domain::line::pumps::pump::PumpId;
use crate::domain::line::pumps::pump_settings::{PumpSettings, pump_settings};
use crate::domain::line::pumps::range_status::RangeStatus;
use crate::domain::line::pumps::setting::{Setting, SettingUnit};
use crate::domain::line::read::Reader;
use crate::domain::recipe::draft::{Draft, Entry};
use crate::domain::recipe::field::{Field, LiquidField};
use crate::domain::recipe::finding::{Finding, Grade};
use crate::domain::recipe::liquid::LiquidId;
use crate::quantity::format::{DecimalMark, editable};
use crate::quantity::{Amount, Unit};
use uom::si::f64::{MassDensity, MassRate, ThermodynamicTemperature};

/// A pump before and after.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Moved {
    /// The pump.
    pub pump: PumpId,
    /// The scale of its drive.
    pub unit: SettingUnit,
    /// Its setting before; `None` when it stands or has no line.
    pub before: Option<Setting>,
    /// Its setting after; `None` where it must not run there either.
    pub after: Option<Setting>,
    /// Where that setting lies.
    pub status_after: RangeStatus,
    /// Its flow before.
    pub mass_before: MassRate,
    /// Its flow after.
    pub mass_after: MassRate,
}

/// The recipe with the new delivery.
#[derive(Debug, Clone, PartialEq)]
pub struct Delivered {
    /// The liquid.
    pub liquid: LiquidId,
    /// Its density at the temperature at which it is pumped; `None` when the certificate does not change it.
    pub density: Option<MassDensity>,
    /// The recipe to go on with, once the delivery is accepted.
    pub draft: Draft,
    /// What the check of that recipe says.
    pub recipe_findings: Vec<Finding>,
    /// The pumps before.
    pub before: PumpSettings,
    /// The pumps after; `None` when the recipe has no balance then.
    pub after: Option<PumpSettings>,
    /// Every pump whose setting or flow moves.
    pub moved: Vec<Moved>,
    /// Every figure of the balance that moves: before and after.
    pub figures: Vec<(Figure, Amount, Amount)>,
}

/// The density at another temperature, ρ/(1 + β·(θ − θ₀)), with the expansion β per degree.
#[must_use]
pub fn density_at(
    density: MassDensity,
    expansion: f64,
    measured: ThermodynamicTemperature,
    pumped: ThermodynamicTemperature,
) -> MassDensity {
    density / (1.0 + expansion * (pumped.value - measured.value))
}

/// Works out what the certificate in the book changes. Nothing is accepted: the new recipe is in the answer.
#[must_use]
pub fn deliver(
    draft: &Draft,
    case: &Case,
    line: &CheckedLine,
    book: &LineBook,
) -> (Option<Delivered>, Vec<LineFinding>) {
    let mut reader = Reader::new(book);
    let delivered = reader.deliver(draft, case, line);
    (delivered, reader.findings)
}

impl Reader<'_> {
    fn deliver(&mut self, draft: &Draft, case: &Case, line: &CheckedLine) -> Option<Delivered> {
        let Some(id) = self.book.delivered.filter(|id| draft.liquid(*id).is_some()) else {
            self.stop(LinePlace::Line, LineFindingKind::NoLiquid);
            return None;
        };
        let mut new = draft.clone();
        let solids = self.number(LineField::Delivery(DeliveryField::Solids));
        let density = self.density(id, case);
        if self.stopped_since(0) {
            return None;
        }
        if solids.is_none() && density.is_none() {
            self.say(Grade::Note, LinePlace::Line, LineFindingKind::NothingDelivered);
        }
        let liquid = new.liquid_mut(id)?;
        if solids.is_some() {
            liquid.solids = Entry { preset: false, ..self.book.delivery.solids.clone() };
        }
        if let Some(density) = density {
            let unit = Unit::KilogramPerCubicMetre;
            liquid.density = Entry::typed(editable(unit.from_base(density.value), DecimalMark::Point), unit);
        }
        let before = pump_settings(draft, case, line);
        let outcome = work_out(&new);
        let after = outcome.case.as_ref().map(|case| pump_settings(&new, case, line));
        let moved = after.as_ref().map(|after| moved(&before, after)).unwrap_or_default();
        let figures = outcome.case.as_ref().map(|new| figures(case, new)).unwrap_or_default();
        Some(Delivered {
            liquid: id,
            density,
            draft: new,
            recipe_findings: outcome.findings,
            before,
            after,
            moved,
            figures,
        })
    }

    /// The density at the temperature at which the liquid is pumped; `None` when nothing changes it.
    fn density(&mut self, id: LiquidId, case: &Case) -> Option<MassDensity> {
        let mut read = |field| self.number(LineField::Delivery(field));
        let typed = read(DeliveryField::Density);
        let measured = read(DeliveryField::MeasuredAt);
        let pumped = read(DeliveryField::PumpedAt);
        let expansion = read(DeliveryField::Expansion);
        let now = case.input.liquids.as_slice().iter().find(|liquid| liquid.id == id)?.density;
        let density = typed.map_or(now, |density| si!(MassDensity, density));
        match (measured.zip(pumped), expansion) {
            (Some((measured, pumped)), Some(expansion)) => {
                let temperature = |kelvin| si!(ThermodynamicTemperature, kelvin);
                Some(density_at(density, expansion, temperature(measured), temperature(pumped)))
            }
            (Some((measured, pumped)), None) if measured.to_bits() != pumped.to_bits() => {
                let place = LinePlace::Field(LineField::Delivery(DeliveryField::Expansion));
                self.say(Grade::Note, place, LineFindingKind::NoExpansion);
                typed.map(|_| density)
            }
            _ => typed.map(|_| density),
        }
    }
}

fn differ(a: f64, b: f64) -> bool {
    (a - b).abs() > 1e-9 * a.abs().max(b.abs())
}

fn moved(before: &PumpSettings, after: &PumpSettings) -> Vec<Moved> {
    let setting = |row: &crate::domain::line::PumpRow| row.set_to;
    let pairs = before.rows.iter().filter_map(|row| {
        let then = after.rows.iter().find(|other| other.pump == row.pump)?;
        Some((row, then))
    });
    pairs
        .map(|(row, then)| Moved {
            pump: row.pump,
            unit: row.unit,
            before: setting(row),
            after: setting(then),
            status_after: then.range_status,
            mass_before: row.mass,
            mass_after: then.mass,
        })
        .filter(|moved| {
            let settings = match (moved.before, moved.after) {
                (Some(before), Some(after)) => differ(before.0, after.0),
                (before, after) => before.is_some() != after.is_some(),
            };
            settings || differ(moved.mass_before.value, moved.mass_after.value)
        })
        .collect()
}

fn figures(before: &Case, after: &Case) -> Vec<(Figure, Amount, Amount)> {
    before
        .figures()
        .filter_map(|(figure, was)| after.figure(figure).map(|is| (figure, was, is)))
        .filter(|(_, was, is)| differ(was.base, is.base))
        .collect()
}

/// The fields of the recipe that a delivery may change.
#[must_use]
pub const fn fields(id: LiquidId) -> [Field; 2] {
    [Field::Liquid(id, LiquidField::Solids), Field::Liquid(id, LiquidField::Density)]
}
