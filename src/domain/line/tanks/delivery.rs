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
use crate::domain::line::read::{Reader, read_line_field};
use crate::domain::line::tanks::blend::{Blend, Stock};
use crate::domain::line::tanks::feeds::{Fed, Tie};
use crate::domain::line::tanks::tank::{TankField, TankId, TankWay};
use crate::domain::recipe::draft::{Draft, Entry, LiquidDraft};
use crate::domain::recipe::field::{Field, LiquidField};
use crate::domain::recipe::finding::{Finding, Grade};
use crate::domain::recipe::liquid::LiquidId;
use crate::quantity::format::{DecimalMark, editable};
use crate::quantity::{Amount, Solids, Unit};
use uom::ConstZero;
use uom::si::f64::{Mass, MassDensity, MassRate, ThermodynamicTemperature, Time, VolumeRate};

/// A pump before and after.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Moved {
    /// The pump.
    pub pump: PumpId,
    /// What it delivers.
    pub fed: Fed,
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
    /// Its flow by volume before.
    pub volume_before: VolumeRate,
    /// Its flow by volume after.
    pub volume_after: VolumeRate,
}

/// The recipe with the new delivery.
#[derive(Debug, Clone, PartialEq)]
pub struct Delivered {
    /// The liquid.
    pub liquid: LiquidId,
    /// The tank that it goes into; `None` where none holds it.
    pub tank: Option<TankId>,
    /// Its density at the temperature at which it is pumped; `None` when the certificate does not change it.
    pub density: Option<MassDensity>,
    /// What is in the tank then, where the mass delivered and the content of the tank are known.
    pub blend: Option<Blend>,
    /// Solids and density as entered in the recipe, of the blend or of the certificate alone; `None` as before.
    pub entries: (Option<Entry>, Option<Entry>),
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
        let before = pump_settings(draft, case, line);
        let amount = self.number(LineField::Delivery(DeliveryField::Amount)).map(|mass| si!(Mass, mass));
        let blend = amount.and_then(|mass| self.blend(id, mass, (solids, density), (draft, case), line, &before));
        let typed = |value: f64, unit: Unit| Entry::typed(editable(unit.from_base(value), DecimalMark::Point), unit);
        let entries = match &blend {
            Some(blend) => {
                let after = blend.after;
                let solids = typed(after.solids.ratio().value, Unit::Percent);
                (Some(solids), Some(typed(after.density.value, Unit::KilogramPerCubicMetre)))
            }
            None => (
                solids.map(|_| Entry { preset: false, ..self.book.delivery.solids.clone() }),
                density.map(|density| typed(density.value, Unit::KilogramPerCubicMetre)),
            ),
        };
        enter(new.liquid_mut(id)?, &entries);
        let outcome = work_out(&new);
        let after = outcome.case.as_ref().map(|case| pump_settings(&new, case, line));
        let moved = after.as_ref().map(|after| moved(&before, after)).unwrap_or_default();
        let figures = outcome.case.as_ref().map(|new| figures(case, new)).unwrap_or_default();
        Some(Delivered {
            liquid: id,
            tank: blend.as_ref().map(|blend| blend.tank).or_else(|| self.book.tank_delivered_into(draft)),
            density,
            blend,
            entries,
            draft: new,
            recipe_findings: outcome.findings,
            before,
            after,
            moved,
            figures,
        })
    }

    /// The delivery in the tank of its liquid; `None` where that tank, or what is in it, is not known.
    fn blend(
        &mut self,
        id: LiquidId,
        mass: Mass,
        (solids, density): (Option<f64>, Option<MassDensity>),
        (draft, case): (&Draft, &Case),
        line: &CheckedLine,
        settings: &PumpSettings,
    ) -> Option<Blend> {
        let now = case.input.liquids.as_slice().iter().find(|liquid| liquid.id == id)?;
        let fed = Fed::Liquid(id);
        let holding = || line.tanks.iter().filter(|tank| tank.feeds.within(draft) == Some(fed));
        let chosen = holding().find(|tank| Some(tank.id) == self.book.delivered_into);
        let tank = chosen.or_else(|| holding().next())?;
        let state = tank.state(draft, case)?;
        let before = Stock { mass: state.content * now.density, solids: now.solids, density: now.density };
        let delivered = Stock {
            mass,
            solids: solids.and_then(Solids::new).unwrap_or(now.solids),
            density: density.unwrap_or(now.density),
        };
        let after = before.mixed(&delivered)?;
        if after.volume() > tank.capacity * (1.0 + 1e-9) {
            self.say(Grade::Unusual, LinePlace::Tank(tank.id), LineFindingKind::OverFull);
        }
        let rows: Vec<_> = settings.rows.iter().filter(|row| row.fed == fed && row.mass.value > 0.0).collect();
        let way = |row: &&crate::domain::line::PumpRow| line.pump(row.pump)?.pipe.map(|pipe| pipe / row.volume);
        let times: Option<Vec<Time>> = rows.iter().map(way).collect();
        let reaches_nozzle =
            times.filter(|times| !times.is_empty()).map(|times| times.into_iter().fold(Time::ZERO, Time::max));
        Some(Blend { tank: tank.id, before, delivered, after, reaches_nozzle })
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

fn enter(liquid: &mut LiquidDraft, (solids, density): &(Option<Entry>, Option<Entry>)) {
    if let Some(solids) = solids {
        liquid.solids.clone_from(solids);
    }
    if let Some(density) = density {
        liquid.density.clone_from(density);
    }
}

impl LineBook {
    /// The tank that a delivery goes into: the one chosen where it holds the liquid, or else the first that does.
    #[must_use]
    pub fn tank_delivered_into(&self, draft: &Draft) -> Option<TankId> {
        let fed = Fed::Liquid(self.delivered?);
        let mut holding = self.tanks.iter().filter(|tank| tank.feeds.within(draft) == Some(fed)).map(|tank| tank.id);
        let first = holding.clone().next();
        holding.find(|id| Some(*id) == self.delivered_into).or(first)
    }
}

impl Delivered {
    /// Whether the certificate says anything that a recipe can take over.
    #[must_use]
    pub const fn says_something(&self) -> bool {
        self.entries.0.is_some() || self.entries.1.is_some()
    }

    /// Raises the content of its tank to what is in it with the delivery, as read `at` that time. Nothing where the blend is not known.
    pub fn fill(&self, book: &mut LineBook, at: u64) {
        let Some(Blend { tank, after, .. }) = self.blend else { return };
        let capacity = read_line_field(book, LineField::Tank(tank, TankField::Capacity)).ok().flatten();
        let Some(tank) = book.tank_mut(tank) else { return };
        let base = match tank.way {
            TankWay::Level => capacity.map(|capacity| after.volume().value / capacity),
            TankWay::Volume => Some(after.volume().value),
            TankWay::Mass => Some(after.mass.value),
        };
        if let Some(base) = base.filter(|base| base.is_finite()) {
            let unit = tank.entries.content.unit;
            tank.entries.content = Entry::typed(editable(unit.from_base(base), DecimalMark::Point), unit);
            tank.read_at = Some(at);
            tank.ordered_at = None;
        }
    }

    /// Takes the delivery out of a recipe again: what it entered goes back to what `before` says. What was entered since stays.
    pub fn take_out(&self, before: &Draft, now: &mut Draft) {
        let Some((old, new)) = before.liquid(self.liquid).zip(self.draft.liquid(self.liquid)) else { return };
        let Some(liquid) = now.liquid_mut(self.liquid).filter(|liquid| Tie::to(old).is(liquid)) else { return };
        if liquid.solids == new.solids {
            liquid.solids.clone_from(&old.solids);
        }
        if liquid.density == new.density {
            liquid.density.clone_from(&old.density);
        }
    }

    /// The same liquid in another recipe, by its name: that recipe with the delivery, or `None` where it does not use it or
    /// nothing changes. `own` is the recipe that the delivery was computed for.
    #[must_use]
    pub fn applied_to(&self, own: &Draft, other: &Draft) -> Option<Draft> {
        let tie = Tie::to(own.liquid(self.liquid)?);
        let id = other.liquids.iter().find(|liquid| tie.is(liquid))?.id;
        let mut new = other.clone();
        enter(new.liquid_mut(id)?, &self.entries);
        (new != *other).then_some(new)
    }

    /// What it moves at the pumps while another recipe runs. Nothing where that recipe does not use the liquid, or has no result.
    #[must_use]
    pub fn moves_in(&self, own: &Draft, other: &Draft, line: &CheckedLine) -> Vec<Moved> {
        let settings = |draft: &Draft| work_out(draft).case.map(|case| pump_settings(draft, &case, line));
        let new = self.applied_to(own, other);
        let both = new.and_then(|new| settings(other).zip(settings(&new)));
        both.map(|(before, after)| moved(&before, &after)).unwrap_or_default()
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
            fed: row.fed,
            unit: row.unit,
            before: setting(row),
            after: setting(then),
            status_after: then.range_status,
            mass_before: row.mass,
            mass_after: then.mass,
            volume_before: row.volume,
            volume_after: then.volume,
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
