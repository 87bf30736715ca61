//! From a draft to a recipe that can be solved, or to what is wrong with it.

use crate::domain::balance::cost::Price;
use crate::domain::recipe::draft::{Draft, Entry, FeedWay, LiquidDraft, WaterWay};
use crate::domain::recipe::field::{Field, LiquidField};
use crate::domain::recipe::finding::{Finding, Grade, Place, What};
use crate::domain::recipe::input::{
    BaseError, Board, Dosing, Feed, Input, Line, Liquid, Liquids, MOST_LIQUIDS, MachineLimits, PressSize, WaterPlan,
};
use crate::domain::recipe::limit::{self, Limit};
use crate::domain::recipe::liquid::{DoseWay, Role};
use crate::quantity::number::{ReadError, read};
use crate::quantity::{Amount, Dimension, Dose, Kind, Moisture, Solids, Unit};
use arrayvec::ArrayVec;
use uom::si::f64::Length;

/// What a check found.
#[derive(Debug, Clone, PartialEq)]
pub struct Checked {
    /// The recipe, when nothing stands in the way.
    pub input: Option<Input>,
    /// What there is to say, in the order of the page.
    pub findings: Vec<Finding>,
}

/// Reads every number of a draft that its choices call for and holds it against its limits.
#[must_use]
pub fn check(draft: &Draft) -> Checked {
    let mut reader = Reader { draft, findings: Vec::new() };
    let input = reader.input();
    reader.notes();
    let stopped = reader.findings.iter().any(|finding| finding.grade == Grade::Stop);
    Checked { input: input.filter(|_| !stopped), findings: reader.findings }
}

/// What one field holds, in the base unit of its kind; `None` while blank.
///
/// # Errors
/// What is wrong with the text, or [`What::Missing`] for a blank field that must be filled in.
pub fn read_field(draft: &Draft, field: Field) -> Result<Option<f64>, What> {
    let Some(entry) = draft.entry(field) else { return Ok(None) };
    read_entry(entry, draft.kind(field), &limit_of(draft, field))
}

/// What one box holds, in the base unit of `kind`; `None` while blank.
///
/// # Errors
/// What is wrong with the text, or [`What::Missing`] for a blank box that must be filled in.
pub fn read_entry(entry: &Entry, kind: Kind, limit: &Limit) -> Result<Option<f64>, What> {
    if entry.is_blank() {
        return if limit.optional { Ok(None) } else { Err(What::Missing) };
    }
    // Only a file can bring a box with a unit of something else.
    if entry.unit.dimension() != kind.dimension() {
        return Err(What::Unreadable(ReadError::OtherUnit { unit: entry.unit }));
    }
    let reading = read(&entry.text, kind, entry.unit).map_err(|error| match error {
        ReadError::Empty => What::Missing,
        other => What::Unreadable(other),
    })?;
    let value = reading.amount(kind);
    if limit.allows(value.base) {
        Ok(Some(value.base))
    } else {
        Err(What::NotAllowed { value, limit: *limit, meant: meant_as_fraction(value, reading.unit, limit) })
    }
}

/// What is unusual about a value that is allowed.
#[must_use]
pub fn unusual(value: Amount, limit: &Limit) -> Option<What> {
    if let Some(meant) = meant_as_percent(value, limit) {
        return Some(What::LikelyFraction { value, meant });
    }
    limit.outside_usual(value.base).map(|window| What::NotUsual { value, window, unit: limit.unit })
}

/// The limit of a field of this draft.
#[must_use]
pub fn limit_of(draft: &Draft, field: Field) -> Limit {
    match field {
        Field::Liquid(id, part) => draft.liquid(id).map_or(limit::plain(field), |liquid| {
            let another = |other: &LiquidDraft| other.id != id && other.role == Role::Binder;
            limit::liquid(liquid, part, draft.liquids.iter().any(another), draft.product())
        }),
        Field::MatMoisture => {
            let number = |field, unit: Unit| read_field(draft, field).ok().flatten().map(|base| unit.from_base(base));
            let density = number(Field::BoardDensity, Unit::KilogramPerCubicMetre);
            let typical = density.map_or(field.limit().usual, |density| Some(limit::mat_moisture(density)));
            let of_press = number(Field::SteamLimit, Unit::PercentDryBasis);
            Limit { usual: typical.map(|window| window.up_to(of_press)), ..field.limit() }
        }
        Field::WantedPressFactor => {
            let binders = draft.liquids.iter().filter(|liquid| liquid.role == Role::Binder);
            limit::plain(field).within(limit::press_factor(binders.map(|liquid| liquid.substance)))
        }
        plain => limit::plain(plain),
    }
}

/// 65 typed where a fraction is meant: a hundredth of it is allowed.
fn meant_as_fraction(value: Amount, unit: Unit, limit: &Limit) -> Option<Amount> {
    let meant = value.base / 100.0;
    (unit == Unit::PerUnit && value.base > 1.0 && limit.allows(meant)).then(|| Amount::from_base(value.kind, meant))
}

/// 0.65 typed where 65 % is meant: not above 1 %, outside the usual, and a hundredfold is allowed
/// and no longer outside.
fn meant_as_percent(value: Amount, limit: &Limit) -> Option<Amount> {
    let shares = matches!(value.kind.dimension(), Dimension::Fraction | Dimension::Moisture);
    let meant = value.base * 100.0;
    let strange = match limit.usual {
        Some(_) => limit.outside_usual(value.base).is_some() && limit.outside_usual(meant).is_none(),
        // Solids without a usual window: one percent of solids is no glue.
        None => value.kind == Kind::Solids,
    };
    (shares && value.base > 0.0 && value.base <= 0.01 && strange && limit.allows(meant))
        .then(|| Amount::from_base(value.kind, meant))
}

struct Reader<'a> {
    draft: &'a Draft,
    findings: Vec<Finding>,
}

impl Reader<'_> {
    fn say(&mut self, grade: Grade, place: Place, what: What) {
        self.findings.push(Finding { grade, place, what });
    }

    /// The number of a field; what is wrong or unusual with it is put down.
    fn optional(&mut self, field: Field) -> Option<f64> {
        match read_field(self.draft, field) {
            Ok(None) => None,
            Ok(Some(base)) => {
                self.compare_with_usual(field, base);
                Some(base)
            }
            Err(what) => {
                self.findings.push(Finding::stop(field, what));
                None
            }
        }
    }

    /// The number of a field that must hold one. While it does not, the check ends in a finding and
    /// the number returned is never solved with.
    fn required(&mut self, field: Field) -> f64 {
        self.optional(field).unwrap_or(f64::NAN)
    }

    fn compare_with_usual(&mut self, field: Field, base: f64) {
        let limit = limit_of(self.draft, field);
        let value = Amount::from_base(self.draft.kind(field), base);
        if let Some(what) = unusual(value, &limit) {
            self.say(Grade::Unusual, Place::Field(field), what);
        }
    }

    fn input(&mut self) -> Option<Input> {
        let feed = self.feed();
        let fibre_moisture = self.moisture(Field::FibreMoisture);
        let fibre_price = self.optional(Field::FibrePrice).and_then(Price::per_kilogram);
        let fibre_supply = self.optional(Field::FibreSupply);
        let liquids = self.liquids();
        let blender = self.optional(Field::BlenderCapacity);
        let water = self.water();
        let drying_loss = si!(Ratio, self.required(Field::DryingLoss));
        let board = self.board();
        let line = self.line();
        let limits = MachineLimits {
            fibre_supply: fibre_supply.map(|flow| si!(MassRate, flow)),
            blender: blender.map(|flow| si!(MassRate, flow)),
            press_factor: self.optional(Field::LeastPressFactor).map(|factor| si!(InverseVelocity, factor)),
            mat_moisture: self.moisture(Field::SteamLimit),
            line_speed: self.optional(Field::TopLineSpeed).map(|speed| si!(Velocity, speed)),
        };
        Some(Input {
            product: self.draft.product(),
            feed: feed?,
            fibre_moisture: fibre_moisture?,
            fibre_price,
            liquids: liquids?,
            water: water?,
            drying_loss,
            board: board?,
            line,
            limits,
        })
    }

    fn moisture(&mut self, field: Field) -> Option<Moisture> {
        self.optional(field).and_then(Moisture::from_dry_basis)
    }

    fn feed(&mut self) -> Option<Feed> {
        match self.draft.feed_way {
            FeedWay::OvenDry => Some(Feed::OvenDry(si!(MassRate, self.optional(Field::FibreFlow)?))),
            FeedWay::Belt => Some(Feed::Belt(si!(MassRate, self.optional(Field::FibreFlow)?))),
            FeedWay::LineSpeed => {
                let speed = self.optional(Field::WantedLineSpeed);
                let width = self.needed_for_feed(Field::MatWidth);
                Some(Feed::LineSpeed(si!(Velocity, speed?), width?))
            }
            FeedWay::PressFactor => {
                let factor = self.optional(Field::WantedPressFactor);
                let width = self.needed_for_feed(Field::MatWidth);
                let length = self.needed_for_feed(Field::PressLength);
                let press = PressSize { width: width?, length: length? };
                Some(Feed::PressFactor(si!(InverseVelocity, factor?), press))
            }
            FeedWay::None => Some(Feed::None),
        }
    }

    /// A length that is optional by itself but needed by the way in which the fibre flow is fixed.
    /// What is wrong with its text is put down where the line is read.
    fn needed_for_feed(&mut self, field: Field) -> Option<Length> {
        match read_field(self.draft, field) {
            Ok(Some(base)) => Some(si!(Length, base)),
            Ok(None) => {
                self.findings.push(Finding::stop(field, What::NeededForFeed));
                None
            }
            Err(_) => None,
        }
    }

    fn water(&mut self) -> Option<WaterPlan> {
        match self.draft.water_way {
            WaterWay::ToMatMoisture => self.moisture(Field::MatMoisture).map(WaterPlan::ToMatMoisture),
            WaterWay::OnFibre => self.optional(Field::WaterOnFibre).and_then(Dose::new).map(WaterPlan::OnFibre),
            WaterWay::Flow if self.draft.feed_way == FeedWay::None => {
                self.findings.push(Finding::stop(Field::WaterFlow, What::NeedsFibreFlow));
                None
            }
            WaterWay::Flow => self.optional(Field::WaterFlow).map(|flow| WaterPlan::Flow(si!(MassRate, flow))),
            WaterWay::None => Some(WaterPlan::None),
        }
    }

    fn board(&mut self) -> Option<Board> {
        let density = si!(MassDensity, self.required(Field::BoardDensity));
        let moisture = self.moisture(Field::BoardMoisture);
        let thickness = si!(Length, self.required(Field::Thickness));
        let sand_top = si!(Length, self.required(Field::SandTop));
        let sand_bottom = si!(Length, self.required(Field::SandBottom));
        let surface_ratio = si!(Ratio, self.required(Field::SurfaceRatio));
        Some(Board { density, moisture: moisture?, thickness, sand_top, sand_bottom, surface_ratio })
    }

    fn line(&mut self) -> Line {
        let width = self.optional(Field::MatWidth);
        let spread_width = self.optional(Field::SpreadWidth);
        if let Some((width, spread)) = width.zip(spread_width)
            && spread < width
        {
            self.findings.push(Finding::stop(Field::SpreadWidth, What::SpreadNarrower));
        }
        let bulk_density = self.optional(Field::MatBulkDensity);
        let mat_temperature = self.required(Field::MatTemperature);
        let surface_spray = self.required(Field::SurfaceSpray);
        let reject = si!(Ratio, self.required(Field::Reject));
        let press_length = self.optional(Field::PressLength);
        let exit_moisture = self.moisture(Field::ExitMoisture);
        let area_yield = si!(Ratio, self.required(Field::AreaYield));
        let shift = si!(Time, self.required(Field::ShiftHours));
        Line {
            width: width.map(|width| si!(Length, width)),
            spread_width: spread_width.map(|width| si!(Length, width)),
            press_length: press_length.map(|length| si!(Length, length)),
            reject,
            area_yield,
            exit_moisture,
            bulk_density: bulk_density.map(|density| si!(MassDensity, density)),
            mat_temperature: si!(ThermodynamicTemperature, mat_temperature),
            surface_spray: si!(ArealMassDensity, surface_spray),
            sprayed_faces: self.draft.sprayed_faces,
            shift,
        }
    }

    fn liquids(&mut self) -> Option<Liquids> {
        let draft = self.draft;
        let mut list = ArrayVec::<Liquid, MOST_LIQUIDS>::new();
        let mut complete = true;
        for liquid in &draft.liquids {
            let read = self.liquid(liquid);
            match read {
                Some(liquid) if !list.is_full() => list.push(liquid),
                Some(_) => {
                    self.say(Grade::Stop, Place::Liquid(liquid.id), What::TooManyLiquids { most: MOST_LIQUIDS });
                    return None;
                }
                None => complete = false,
            }
        }
        if !complete {
            return None;
        }
        let at = |error| match error {
            BaseError::Loop(at) => (at, What::BaseLoop),
            BaseError::Missing(at) => (at, What::BaseMissing),
            BaseError::OnFaces(at) => (at, What::BaseOnFaces),
        };
        match Liquids::new(list).map_err(at) {
            Ok(liquids) => Some(liquids),
            Err((at, what)) => {
                let place = draft.liquids.get(at).map_or(Place::Station(crate::domain::Station::Blender), |liquid| {
                    Place::Field(Field::Liquid(liquid.id, LiquidField::Dose))
                });
                self.say(Grade::Stop, place, what);
                None
            }
        }
    }

    fn liquid(&mut self, liquid: &LiquidDraft) -> Option<Liquid> {
        let field = |part| Field::Liquid(liquid.id, part);
        let dose = self.optional(field(LiquidField::Dose));
        let solids = self.optional(field(LiquidField::Solids)).and_then(Solids::new);
        let density = self.optional(field(LiquidField::Density));
        let spray_solids = self.optional(field(LiquidField::SpraySolids)).and_then(Solids::new);
        let price = self.optional(field(LiquidField::Price)).and_then(Price::per_kilogram);
        if let Some((solids, spray)) = solids.zip(spray_solids)
            && spray > solids
        {
            self.findings.push(Finding::stop(field(LiquidField::SpraySolids), What::SprayThicker));
        }
        let dose_value = dose?;
        let dosing = match liquid.dose_way {
            DoseWay::SolidsOnFibre => Dosing::SolidsOnFibre(Dose::new(dose_value)?),
            DoseWay::LiquidOnFibre => Dosing::LiquidOnFibre(Dose::new(dose_value)?),
            DoseWay::LiquidPerBoard => Dosing::LiquidPerBoard(si!(MassDensity, dose_value)),
            DoseWay::LiquidOnFaces(faces) => Dosing::LiquidOnFaces(si!(ArealMassDensity, dose_value), faces),
            DoseWay::SolidsOnLiquid(base) => {
                // A place past the end is what `Liquids::new` reports as missing.
                let at = self.draft.liquids.iter().position(|other| other.id == base).unwrap_or(usize::MAX);
                Dosing::SolidsOnLiquid(Dose::new(dose_value)?, at)
            }
        };
        Some(Liquid {
            id: liquid.id,
            role: liquid.role,
            substance: liquid.substance,
            dosing,
            solids: solids?,
            density: si!(MassDensity, density?),
            spray_solids,
            price,
        })
    }

    /// What is worth knowing about the liquids as a whole.
    fn notes(&mut self) {
        let liquids = &self.draft.liquids;
        let has = |role: Role| liquids.iter().any(|liquid| liquid.role == role);
        let acid_curing = liquids
            .iter()
            .any(|liquid| matches!(liquid.substance, crate::domain::Substance::Uf | crate::domain::Substance::Muf));
        let mut notes = Vec::new();
        if !has(Role::Binder) {
            notes.push((Place::Station(crate::domain::Station::Blender), What::NoBinder));
        }
        if acid_curing && !has(Role::Hardener) {
            notes.push((Place::Station(crate::domain::Station::Blender), What::NoHardener));
        }
        for (at, liquid) in liquids.iter().enumerate() {
            let on_binder = match liquid.dose_way {
                DoseWay::SolidsOnLiquid(base) => self.draft.liquid(base).is_some_and(|base| base.role == Role::Binder),
                _ => false,
            };
            if liquid.role == Role::Hardener && !on_binder {
                notes.push((Place::Liquid(liquid.id), What::HardenerNotOnBinder));
            }
            let name = liquid.name.trim();
            if !name.is_empty() && liquids[..at].iter().any(|earlier| earlier.name.trim() == name) {
                notes.push((Place::Liquid(liquid.id), What::SameName));
            }
        }
        for (place, what) in notes {
            self.say(Grade::Note, place, what);
        }
    }
}

/// The number of a reading in `unit`, for those who need just that.
#[must_use]
pub fn value_in(draft: &Draft, field: Field, unit: Unit) -> Option<f64> {
    read_field(draft, field).ok().flatten().map(|base| unit.from_base(base))
}
