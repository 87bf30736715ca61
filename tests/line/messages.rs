//! Every message of the line in words: a snapshot of each, and what holds for all of them.

use super::mill::Mill;
use crate::words::{sound, written};
use haulm::domain::line::changeover::Stop;
use haulm::domain::line::step::{Change, Pipe, StepReason};
use haulm::domain::line::{
    CalibrationField, CalibrationId, Check, ConditionField, DeliveryField, Deviation, Fed, FlowSource, Help, LineField,
    LineFigure, LineFinding, LineFindingKind, LinePlace, Metering, Model, PeriodField, PeriodLiquidField,
    PeriodLiquidId, PumpAction, PumpCorrection, PumpField, PumpId, RSquared, RangeStatus, RowField, RowId, RunFigure,
    RunningField, Setting, SettingUnit, TableField, TableRows, TankField, TankId, TankWay, ToleranceField,
    TransportField, UncertaintyField, check_line, pump_settings,
};
use haulm::domain::recipe::finding::What;
use haulm::domain::{Grade, LiquidId, work_out};
use haulm::quantity::format::DecimalMark;
use haulm::quantity::kind::UnitSystem;
use haulm::quantity::{Amount, Kind, Moisture, Solids, Unit, Units};
use haulm::ui::text::{Context, LineContext, words};
use std::collections::BTreeSet;
use std::fmt::Write;
use uom::si::f64::{MassRate, Ratio, Volume};
use uom::si::mass_rate::kilogram_per_second;
use uom::si::ratio::percent;
use uom::si::volume::liter;

const PUMP: PumpId = PumpId(1);
const TEST: CalibrationId = CalibrationId(2);
const TANK: TankId = TankId(1);

fn with<T>(mill: &Mill, units: &Units, tell: impl FnOnce(&LineContext<'_>) -> T) -> T {
    tell(&LineContext { plain: Context { units, draft: &mill.draft, currency: "€" }, book: &mill.book })
}

const fn flow(base: f64) -> Amount {
    Amount::from_base(Kind::PumpFlow, base / 3.6e6)
}

const fn fibre(base: f64) -> Amount {
    Amount::from_base(Kind::FibreFlow, base / 3_600.0)
}

fn rate(kilograms_per_hour: f64) -> MassRate {
    MassRate::new::<kilogram_per_second>(kilograms_per_hour / 3_600.0)
}

fn moist(value: f64) -> Moisture {
    Moisture::from_dry_basis(value / 100.0).unwrap()
}

/// One of each, in the order of the enum. Without a wildcard, so that a new one does not compile unless it is
/// told here.
fn which(what: &LineFindingKind) -> &'static str {
    match what {
        LineFindingKind::Entry(_) => "entry",
        LineFindingKind::SettingsNotIncreasing { .. } => "settings not increasing",
        LineFindingKind::NegativeMass { .. } => "negative mass",
        LineFindingKind::AboveTank { .. } => "above the tank",
        LineFindingKind::CatchIncomplete => "catch incomplete",
        LineFindingKind::FewRows { .. } => "few rows",
        LineFindingKind::OneSetting => "one setting",
        LineFindingKind::FlowNotIncreasing => "flow not increasing",
        LineFindingKind::Suspect { .. } => "suspect",
        LineFindingKind::NotCalibrated => "not calibrated",
        LineFindingKind::FaultyTest => "faulty test",
        LineFindingKind::NotWhole => "not whole",
        LineFindingKind::LimitsCrossed => "limits crossed",
        LineFindingKind::WindowCrossed => "window crossed",
        LineFindingKind::NozzlesIncomplete => "nozzles incomplete",
        LineFindingKind::SamePumpName => "same name",
        LineFindingKind::SharesNotWhole { .. } => "shares",
        LineFindingKind::NoPumps => "no pumps",
        LineFindingKind::NoRecipe => "no recipe",
        LineFindingKind::NoFibreFlow => "no fibre flow",
        LineFindingKind::NoPump => "no pump",
        LineFindingKind::NotInRecipe => "not in the recipe",
        LineFindingKind::OutOfReach { .. } => "out of reach",
        LineFindingKind::NozzlesTooFew { .. } => "nozzles too few",
        LineFindingKind::NozzlesTooMany { .. } => "nozzles too many",
        LineFindingKind::NozzlesBetween { .. } => "nozzles between",
        LineFindingKind::OverFull => "over full",
        LineFindingKind::TankEmpty => "tank empty",
        LineFindingKind::HeelTooLarge => "heel",
        LineFindingKind::OrderOverdue { .. } => "order overdue",
        LineFindingKind::DeliveryLate { .. } => "delivery late",
        LineFindingKind::StaleReadings { .. } => "stale readings",
        LineFindingKind::OtherRecipe { .. } => "other recipe",
        LineFindingKind::NoBalance => "no balance",
        LineFindingKind::SampleIncomplete => "sample",
        LineFindingKind::Assumed => "assumed",
        LineFindingKind::RangeCrossed => "range crossed",
        LineFindingKind::TooManySteps { .. } => "too many steps",
        LineFindingKind::NoTransport => "no transport time",
        LineFindingKind::NoPressTime => "no press time",
        LineFindingKind::NothingChanges => "nothing changes",
        LineFindingKind::WetBetween { .. } => "wet between",
        LineFindingKind::NoExpansion => "no expansion",
        LineFindingKind::NothingDelivered => "nothing delivered",
        LineFindingKind::NoLiquid => "no liquid",
    }
}

fn all() -> Vec<(LinePlace, LineFindingKind)> {
    use LineFindingKind as W;
    use LinePlace as P;
    let pump = P::Pump(PUMP);
    let test = P::Calibration(PUMP, TEST);
    let row = |part| P::Field(LineField::Row(PUMP, TEST, RowId(3), part));
    let field = |part| P::Field(LineField::Pump(PUMP, part));
    let tank = P::Tank(TANK);
    let at = |value: f64| Amount::from_base(Kind::SettingPercent, value / 100.0);
    let hours = |value: f64| Amount::from_base(Kind::ShiftTime, value * 3_600.0);
    let reach = |range_status, setting, help| W::OutOfReach {
        range_status,
        setting,
        least_fibre: Some(fibre(4_000.0)),
        most_fibre: Some(fibre(15_900.0)),
        help,
    };
    vec![
        (row(RowField::Mass), W::Entry(What::Missing)),
        (LinePlace::Row(PUMP, TEST, RowId(2)), W::CatchIncomplete),
        (row(RowField::Setting), W::SettingsNotIncreasing { before: at(35.0) }),
        (row(RowField::Mass), W::NegativeMass { net: Amount::from_base(Kind::BatchMass, -0.35) }),
        (row(RowField::Mass), W::AboveTank { tank: TANK, most: Amount::from_base(Kind::BatchMass, 24_600.0) }),
        (test, W::FewRows { rows: 2, least: 3 }),
        (test, W::OneSetting),
        (test, W::FlowNotIncreasing),
        (
            P::Row(PUMP, TEST, RowId(3)),
            W::Suspect {
                studentised: Amount::from_base(Kind::Ratio, -12.34),
                from: Amount::from_base(Kind::Ratio, 9.925),
            },
        ),
        (pump, W::NotCalibrated),
        (pump, W::FaultyTest),
        (field(PumpField::Nozzles), W::NotWhole),
        (field(PumpField::MostSetting), W::LimitsCrossed),
        (field(PumpField::NozzleMost), W::WindowCrossed),
        (field(PumpField::NozzleMost), W::NozzlesIncomplete),
        (P::Pump(PumpId(2)), W::SamePumpName),
        (field(PumpField::Share), W::SharesNotWhole { sum: Amount::from_base(Kind::Share, 2.0) }),
        (P::Line, W::NoPumps),
        (P::Line, W::NoRecipe),
        (P::Line, W::NoFibreFlow),
        (P::Liquid(LiquidId(2)), W::NoPump),
        (P::Water, W::NoPump),
        (pump, W::NotInRecipe),
        (
            pump,
            reach(
                RangeStatus::AboveTested,
                Some(at(84.6)),
                vec![
                    Help::TestTo(Setting(0.846), SettingUnit::Percent),
                    Help::FibreAtMost(rate(15_900.0)),
                    Help::Solids(Solids::new(0.72).unwrap()),
                    Help::OtherPump(rate(680.0)),
                ],
            ),
        ),
        (pump, reach(RangeStatus::AboveLimit, Some(at(124.0)), vec![Help::OtherPump(rate(1_000.0))])),
        (pump, reach(RangeStatus::BelowTested, Some(at(12.0)), vec![])),
        (
            pump,
            W::OutOfReach {
                range_status: RangeStatus::BelowLimit,
                setting: None,
                least_fibre: None,
                most_fibre: None,
                help: vec![Help::OtherPump(rate(3.0))],
            },
        ),
        (pump, W::NozzlesTooFew { each: flow(55.0), most: flow(40.0) }),
        (pump, W::NozzlesTooMany { each: flow(9.0), least: flow(15.0) }),
        (pump, W::NozzlesBetween { open: 1 }),
        (tank, W::OverFull),
        (tank, W::TankEmpty),
        (P::Field(LineField::Tank(TANK, TankField::Heel)), W::HeelTooLarge),
        (tank, W::OrderOverdue { by: hours(43.4), at_most: Some(flow(109.7)) }),
        (tank, W::DeliveryLate { by: hours(20.0), at_most: Some(flow(150.0)) }),
        (tank, W::DeliveryLate { by: hours(20.0), at_most: None }),
        (P::Line, W::StaleReadings { recipe: "Straw, 15 mm".to_owned() }),
        (P::Line, W::OtherRecipe { recipe: "Straw, 15 mm".to_owned() }),
        (P::Line, W::NoBalance),
        (P::Field(LineField::Running(RunningField::SampleArea)), W::SampleIncomplete),
        (pump, W::Assumed),
        (P::Field(LineField::Table(TableField::FlowTo)), W::RangeCrossed),
        (P::Field(LineField::Table(TableField::MoistureStep)), W::TooManySteps { most: 30 }),
        (P::Field(LineField::Transport(TransportField::BlenderToFormer)), W::NoTransport),
        (P::Line, W::NoPressTime),
        (P::Line, W::NothingChanges),
        (P::Line, W::WetBetween { moisture: Amount::from_base(Kind::Moisture, 0.131) }),
        (P::Field(LineField::Delivery(DeliveryField::Expansion)), W::NoExpansion),
        (P::Line, W::NothingDelivered),
        (P::Line, W::NoLiquid),
    ]
}

fn told(mill: &Mill, units: &Units) -> String {
    let mut text = String::new();
    for (place, what) in all() {
        let title = which(&what);
        let message = with(mill, units, |context| {
            words::line::finding(&LineFinding::new(Grade::Unusual, place, what.clone()), context)
        });
        write!(text, "{title}\n{}\n", written(&message)).unwrap();
    }
    text
}

#[test]
fn findings() {
    let kinds: BTreeSet<_> = all().iter().map(|(_, what)| which(what)).collect();
    assert_eq!(kinds.len(), 45, "one of each");
    snapshot!("line", "findings", told(&Mill::new(), &Units::default()));
}

#[test]
fn findings_in_us_units_with_a_comma() {
    let mut units = Units::default();
    units.set_system(UnitSystem::Us);
    units.mark = DecimalMark::Comma;
    snapshot!("line", "findings_in_us_units_with_a_comma", told(&Mill::new(), &units));
}

/// What the check itself says of entries that cannot be.
#[test]
fn entries() {
    let row = |row, part| LineField::Row(PUMP, TEST, RowId(row), part);
    let cases: &[(LineField, &str, Unit)] = &[
        (row(2, RowField::Seconds), "0", Unit::Second),
        (row(2, RowField::Seconds), "3", Unit::Second),
        (row(1, RowField::Mass), "-3", Unit::Kilogram),
        (row(1, RowField::Mass), "two", Unit::Kilogram),
        (row(1, RowField::Setting), "30 Hz", Unit::Percent),
        (row(1, RowField::Setting), "200", Unit::Percent),
        (LineField::Calibration(PUMP, TEST, CalibrationField::Density), "", Unit::KilogramPerCubicMetre),
        (LineField::Pump(PUMP, PumpField::Share), "0", Unit::Percent),
        (LineField::Tank(TANK, TankField::Content), "142", Unit::Percent),
        (LineField::Transport(TransportField::StepGap), "", Unit::Second),
        (LineField::Tolerance(ToleranceField::Dose), "0.01", Unit::Percent),
    ];
    let mut text = String::new();
    for (field, typed, unit) in cases {
        let mut mill = Mill::new();
        mill.put(*field, typed, *unit);
        for finding in check_line(&mill.book).findings {
            let message = with(&mill, &Units::default(), |context| words::line::finding(&finding, context));
            write!(text, "  [{}]\n{}", words::grade(finding.grade), written(&message)).unwrap();
        }
        text.push('\n');
    }
    snapshot!("line", "entries", text);
}

/// What the sheet says when the line runs twice as fast, worked out and not made up.
#[test]
fn a_sheet_at_its_limits() {
    let mut mill = Mill::new();
    mill.draft.plain.fibre_flow.text = "19000".to_owned();
    mill.case = work_out(&mill.draft).case.unwrap();
    let sheet = pump_settings(&mill.draft, &mill.case, &mill.line());
    let mut text = String::new();
    for finding in &sheet.findings {
        let message = with(&mill, &Units::default(), |context| words::line::finding(finding, context));
        text.push_str(&written(&message));
    }
    snapshot!("line", "sheet_at_its_limits", text);
}

#[test]
fn actions() {
    let at = Setting(0.453);
    let actions = [
        PumpAction::Set { setting: at, status: RangeStatus::Within },
        PumpAction::Set { setting: Setting(0.9), status: RangeStatus::AboveTested },
        PumpAction::Keep,
        PumpAction::Stop,
        PumpAction::CatchTestFirst { metered: rate(312.0), by_line: rate(339.0) },
        PumpAction::NoCatchTest,
        PumpAction::Cannot { status: RangeStatus::AboveLimit },
        PumpAction::EnterSetting,
        PumpAction::NotRead,
        PumpAction::Distrusted,
        PumpAction::Unsettled,
    ];
    let mill = Mill::new();
    let mut text = String::new();
    for action in actions {
        let correction = PumpCorrection {
            pump: PUMP,
            fed: Fed::Liquid(LiquidId(1)),
            source: FlowSource::Read,
            now: rate(312.0),
            half_interval: None,
            target: rate(339.0),
            change: rate(27.0),
            factor: None,
            unit: SettingUnit::Percent,
            setting_now: Some(Setting(0.425)),
            setting_needed: None,
            action,
        };
        let told = with(&mill, &Units::default(), |context| words::line::action(&correction, context));
        sound(&told);
        assert!(told.ends_with('.'), "no whole sentence: {told:?}");
        writeln!(text, "{told}").unwrap();
    }
    snapshot!("line", "actions", text);
}

#[test]
fn steps() {
    let pump = |from, to, pipe: Option<Pipe>| Change::Pump {
        pump: PUMP,
        fed: Fed::Liquid(LiquidId(1)),
        unit: SettingUnit::Percent,
        from: rate(from),
        to: rate(to),
        setting_from: (from > 0.0).then_some(Setting(0.425)),
        setting_to: (to > 0.0 && pipe != Some(Pipe::Displaces)).then_some(Setting(0.51)),
        status_to: if to > 400.0 && pipe.is_none() { RangeStatus::AboveTested } else { RangeStatus::Within },
        pipe: pipe.map(|way| (way, Volume::new::<liter>(6.0), None)),
    };
    let changes = [
        Change::FibreMoisture { from: moist(4.5), to: moist(4.0) },
        Change::Fibre { from: rate(8_500.0), to: rate(9_000.0), to_wet: rate(9_400.0) },
        pump(340.0, 410.0, None),
        pump(340.0, 0.0, Some(Pipe::Flush)),
        pump(0.0, 410.0, Some(Pipe::Fills)),
        pump(340.0, 410.0, Some(Pipe::Displaces)),
    ];
    let mill = Mill::new();
    let mut text = String::new();
    for change in &changes {
        let line = with(&mill, &Units::default(), |context| words::line::change(change, context));
        sound(&line);
        writeln!(text, "{line}").unwrap();
    }
    use haulm::domain::line::changeover::Downstream;
    use uom::si::f64::{ArealMassDensity, Length, Velocity};
    use uom::si::{areal_mass_density::kilogram_per_square_meter, length::millimeter, velocity::meter_per_second};
    let (weight, speed, gap) = (
        ArealMassDensity::new::<kilogram_per_square_meter>,
        Velocity::new::<meter_per_second>,
        Length::new::<millimeter>,
    );
    for change in [
        Downstream::MatWeight { from: weight(11.0), to: weight(13.2) },
        Downstream::LineSpeed { from: speed(0.13), to: speed(0.11) },
        Downstream::PressGap { from: gap(15.6), to: gap(18.6) },
        Downstream::PressTemperature,
    ] {
        let line = with(&mill, &Units::default(), |context| words::line::downstream(&change, context));
        sound(&line);
        writeln!(text, "{line}").unwrap();
    }
    for why in StepReason::ALL {
        writeln!(text, "{}", words::line::why(*why)).unwrap();
    }
    for pipe in [Pipe::Fills, Pipe::Flush, Pipe::Displaces] {
        writeln!(text, "{}", words::line::pipe(pipe)).unwrap();
    }
    snapshot!("line", "steps", text);
}

/// Every field of the example's line, with its full name.
fn fields() -> Vec<LineField> {
    let mut fields = Vec::new();
    fields.extend(PumpField::ALL.iter().map(|part| LineField::Pump(PUMP, *part)));
    fields.extend(CalibrationField::ALL.iter().map(|part| LineField::Calibration(PUMP, TEST, *part)));
    fields.extend(RowField::ALL.iter().map(|part| LineField::Row(PUMP, TEST, RowId(2), *part)));
    fields.extend(TankField::ALL.iter().map(|part| LineField::Tank(TANK, *part)));
    fields.extend(TransportField::ALL.iter().map(|part| LineField::Transport(*part)));
    fields.extend(ToleranceField::ALL.iter().map(|part| LineField::Tolerance(*part)));
    fields.extend(UncertaintyField::ALL.iter().map(|part| LineField::Uncertainty(*part)));
    fields.extend(RunningField::ALL.iter().map(|part| LineField::Running(*part)));
    fields.extend(ConditionField::ALL.iter().map(|part| LineField::Condition(*part)));
    fields.extend(TableField::ALL.iter().map(|part| LineField::Table(*part)));
    fields.extend(DeliveryField::ALL.iter().map(|part| LineField::Delivery(*part)));
    fields.extend(PeriodField::ALL.iter().map(|part| LineField::Period(*part)));
    fields.extend(PeriodLiquidField::ALL.iter().map(|part| LineField::PeriodLiquid(PeriodLiquidId(1), *part)));
    fields
}

#[test]
fn names() {
    let mut mill = Mill::new();
    mill.book.period = mill.book.period.next(&mill.draft, 0);
    let mut text = String::new();
    let mut labels = BTreeSet::new();
    let mut keys = BTreeSet::new();
    for field in fields() {
        let words = words::line::field(field, &mill.book);
        let name = with(&mill, &Units::default(), |context| words::line::field_name(field, context));
        assert!(mill.book.entry(field).is_some(), "{field:?}");
        assert!(keys.insert(field.key()), "{}", field.key());
        assert!(labels.insert(name.clone()), "two fields of one name: {name}");
        sound(&name);
        sound(words.hint);
        writeln!(text, "{}: {name} ({})", field.key(), words.hint).unwrap();
    }
    text.push('\n');
    for unit in SettingUnit::ALL {
        writeln!(text, "{}", words::line::setting_unit(*unit)).unwrap();
    }
    for metering in Metering::ALL {
        writeln!(text, "{}", words::line::metering(*metering)).unwrap();
    }
    for model in Model::ALL {
        writeln!(text, "{}", words::line::model(*model)).unwrap();
    }
    for r_squared in [RSquared::Centred(1.0), RSquared::Uncentred(1.0)] {
        writeln!(text, "{}", words::line::r_squared(r_squared)).unwrap();
    }
    for way in TankWay::ALL {
        writeln!(text, "{}", words::line::tank_way(*way)).unwrap();
    }
    for rows in TableRows::ALL {
        writeln!(text, "{}", words::line::table_rows(*rows)).unwrap();
    }
    for stop in Stop::ALL {
        writeln!(text, "{}", words::line::stop(*stop)).unwrap();
    }
    for source in [FlowSource::Read, FlowSource::Inferred, FlowSource::Assumed] {
        writeln!(text, "{}", words::line::source(source)).unwrap();
    }
    snapshot!("line", "names", text);
}

#[test]
fn things_without_a_name_have_their_number() {
    let mut mill = Mill::new();
    mill.book.pumps[0].name.clear();
    mill.book.tanks[0].name = "  ".to_owned();
    assert_eq!(words::line::pump(&mill.book.pumps[0]), "Pump 1");
    assert_eq!(words::line::tank(&mill.book.tanks[0]), "Tank 1");
}

#[test]
fn deviations_have_their_sign_and_their_basis() {
    let mill = Mill::new();
    let share = Ratio::new::<percent>;
    let told = |units: &Units, (kind, actual, target): (Kind, f64, f64), deviation| {
        let check = Check {
            figure: RunFigure::Water,
            actual: Amount::from_base(kind, actual),
            target: Amount::from_base(kind, target),
            deviation,
            tolerance: share(3.0),
            source: FlowSource::Read,
        };
        with(&mill, units, |context| words::line::deviation(&check, context))
    };
    let dry = Units::default();
    let dose = (Kind::Dose, 0.0, 0.0);
    assert_eq!(told(&dry, dose, Deviation::Relative(share(2.149))), "+2.15\u{a0}%");
    assert_eq!(told(&dry, dose, Deviation::Relative(share(-0.4))), "\u{2212}0.4\u{a0}%");
    assert_eq!(told(&dry, dose, Deviation::Relative(share(-1e-12))), "0\u{a0}%");
    let moisture = (Kind::Moisture, 0.12, 0.10);
    assert_eq!(told(&dry, moisture, Deviation::Points(share(2.0))), "+2 points d.b.");
    // 12 % dry basis is 10.71 % wet basis, 10 % is 9.09 %: the difference of what is shown.
    let mut wet = Units::default();
    wet.choose(Kind::Moisture, Unit::PercentWetBasis);
    assert_eq!(told(&wet, moisture, Deviation::Points(share(2.0))), "+1.62 points w.b.");
}

#[test]
fn figures_have_words_keys_and_letters_of_their_own() {
    use LineFigure as F;
    let unit = SettingUnit::Percent;
    let figures = [
        F::CaughtNet,
        F::CaughtFlow,
        F::Slope(unit),
        F::Intercept,
        F::ResidualSd,
        F::MeanFlow,
        F::MeanSetting(unit),
        F::StudentT,
        F::Leverage,
        F::Prediction,
        F::Wanted,
        F::WantedVolume,
        F::Setting(unit),
        F::Spray,
        F::OpenNozzles,
        F::NozzleFlow,
        F::PerFibre,
        F::VolumePerFibre,
        F::LeastFlow,
        F::MostFlow,
        F::LeastFibre,
        F::MostFibre,
        F::FlowThen,
        F::FlowNow,
        F::Drift,
        F::RunFibre,
        F::RunFlow,
        F::RunSolids,
        F::RunDose,
        F::RecipeDose,
        F::DoseDeviation,
        F::RunWater,
        F::RunFurnish,
        F::RunFurnishMoisture,
        F::RunMatMoisture,
        F::SampleMoisture,
        F::RunMat,
        F::RunDensity,
        F::CorrectionTarget,
        F::CorrectionFactor,
        F::FormerFactor,
        F::Content,
        F::Usable,
        F::UsableMass,
        F::Rate,
        F::Lasts,
        F::PerShift,
        F::Fits,
        F::BetweenTime,
        F::BetweenArea,
        F::BetweenVolume,
        F::ChartMean,
        F::MovingRange,
        F::LowLimit,
        F::HighLimit,
        F::DensityPumped,
        F::DensityMeasured,
    ];
    let distinct = |of: &dyn Fn(F) -> String| figures.iter().map(|figure| of(*figure)).collect::<BTreeSet<_>>().len();
    assert_eq!(distinct(&|figure| figure.key().to_owned()), figures.len());
    assert_eq!(distinct(&|figure| figure.symbol().to_text()), figures.len());
    let words = |figure| words::line::figure(figure);
    assert_eq!(distinct(&|figure| format!("{} {}", words(figure).label, words(figure).note)), figures.len());
}
