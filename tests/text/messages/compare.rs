//! What the comparison says.

use super::{Context, Units, example, sound, words, written};
use haulm::domain::balance::machine::Machine;
use haulm::domain::chemistry::emission::{EmissionError, LIMITS};
use haulm::domain::compare::Output;
use haulm::domain::compare::break_even::{BreakEven, BreakEvenAnswer, BreakEvenError};
use haulm::domain::compare::economy::field::{EconomyField, SystemEconomyField};
use haulm::domain::compare::emission::EmissionField;
use haulm::domain::compare::feasibility::Obstacle;
use haulm::domain::compare::range::RangeError;
use haulm::domain::compare::side::{ComparedSystem, SideBySideError, differences, with_liquids};
use haulm::domain::compare::solve_for::{Method, Reached, Solution, SolveForError, SolvedInput, solve_for};
use haulm::domain::compare::uncertainty::agreement::{Agreement, DisagreementCause};
use haulm::domain::compare::uncertainty::input_uncertainty::Form;
use haulm::domain::compare::uncertainty::instrument::sources;
use haulm::domain::compare::uncertainty::study::StudyError;
use haulm::domain::recipe::binder_system::SystemKey;
use haulm::domain::{Draft, Entry, Field, Figure, LiquidField, LiquidId, work_out};
use haulm::quantity::format::DecimalMark;
use haulm::quantity::{Amount, Kind, Unit};
use haulm::ui::text::plus_minus;
use std::fmt::Write;

fn context<'a>(draft: &'a Draft, units: &'a Units) -> Context<'a> {
    Context { units, draft, currency: "€" }
}

fn systems() -> [ComparedSystem; 2] {
    let mut draft = with_liquids(&example(), &SystemKey::Uf.system().liquids);
    draft.feed_way = haulm::domain::recipe::draft::FeedWay::Belt;
    draft.water_way = haulm::domain::recipe::draft::WaterWay::None;
    for (field, text, unit) in [
        (Field::BoardDensity, "42", Unit::PoundPerCubicFoot),
        (Field::MatWidth, "", Unit::Metre),
        (Field::LeastPressFactor, "8", Unit::SecondPerMillimetre),
    ] {
        *draft.entry_mut(field).unwrap() = Entry::typed(text, unit);
    }
    [ComparedSystem::new("Straw with pMDI", example()), ComparedSystem::new("UF", draft)]
}

const PRICE: Field = Field::Liquid(LiquidId(1), LiquidField::Price);

#[test]
fn side_by_side() {
    let systems = systems();
    let units = Units::default();
    let context = context(&systems[0].draft, &units);
    let mut text = String::new();
    for difference in differences(&systems) {
        let message = words::compare::difference(&difference, &systems, &context);
        write!(text, "  [{:?}]\n{}", difference.belongs, written(&message)).unwrap();
    }
    for error in [SideBySideError::TooFew, SideBySideError::TooMany, SideBySideError::NoReference] {
        text += &written(&words::compare::not_side_by_side(error));
    }
    assert_eq!(words::compare::unpriced(&systems[0]), None);
    text += &written(&words::compare::unpriced(&systems[1]).unwrap());
    snapshot!("messages", "compare_side_by_side", text);
}

#[test]
fn answers() {
    let draft = example();
    let units = Units::default();
    let context = context(&draft, &units);
    let case = work_out(&draft).case.unwrap();
    let mut text = String::new();
    let (dose, cost) = (Output::Figure(Figure::WaterDose), Output::Figure(Figure::Cost));
    for (field, output, wanted) in [
        (Field::FibreMoisture, Output::DryerWater, 0.0),
        (Field::FibreMoisture, dose, 0.0),
        (Field::FibreFlow, dose, 0.1),
        (Field::FibrePrice, cost, 1.0),
        (Field::MatTemperature, dose, 0.1),
    ] {
        text += &written(&words::compare::answer(&solve_for(&case, field, output, wanted).unwrap(), &context));
    }
    let found = |found| SolvedInput {
        field: Field::Thickness,
        output: Output::FibreAtLimit,
        wanted: 2.5,
        method: Method::Search,
        found,
        over: Vec::new(),
    };
    for found in [
        found(Solution::Several(vec![0.002, 0.0125])),
        found(Solution::Several(vec![0.002, 0.0125, 0.02])),
        found(Solution::Unreachable { nearest: Reached { from: 0.002, to: 0.002, gives: 2.4 } }),
    ] {
        text += &written(&words::compare::answer(&found, &context));
    }
    for (error, field) in [
        (SolveForError::NotUsed, Field::WaterFlow),
        (SolveForError::NotGiven, Field::Thickness),
        (SolveForError::NotWanted, Field::Thickness),
    ] {
        text += &written(&words::compare::no_answer(error, field, Output::VolumeAtLimit, &context));
    }
    let beyond = solve_for(&case, Field::FibreFlow, Output::Figure(Figure::Fibre), 13_000.0 / 3600.0).unwrap();
    assert!(!beyond.over.is_empty());
    text += &written(&words::compare::answer(&beyond, &context));
    let wide = solve_for(&case, Field::FibreMoisture, Output::Figure(Figure::MatMoisture), 0.05).unwrap();
    text += &written(&words::compare::answer(&wide, &context));
    let systems = systems();
    let pair = [&systems[0], &systems[1]];
    let with = |at| BreakEvenAnswer { at, moves_with: None, other_keeps: None, exceeded: [vec![], vec![]] };
    for found in [
        BreakEvenAnswer { moves_with: Some(Field::FibrePrice), ..with(BreakEven::At(1.85)) },
        BreakEvenAnswer { other_keeps: Some(1.2), ..with(BreakEven::DearerAtZero(3.0)) },
        BreakEvenAnswer { exceeded: [vec![beyond.over[0].exceeded], vec![]], ..with(BreakEven::DearerAtZero(-3.0)) },
        with(BreakEven::Always),
        with(BreakEven::Never(2.0)),
        with(BreakEven::Never(-2.0)),
    ] {
        text += &written(&words::compare::break_even(&found, PRICE, pair, &context));
    }
    for error in [
        BreakEvenError::NotAPrice,
        BreakEvenError::NoBalance,
        BreakEvenError::Unpriced([vec![], vec![Field::FibrePrice, PRICE]]),
    ] {
        text += &written(&words::compare::no_price(&error, pair));
    }
    for error in [RangeError::NotUsed, RangeError::NotReadable, RangeError::Equal, RangeError::Reversed] {
        text += &written(&words::compare::no_range(error));
    }
    let ends = [10_000.0, 12_000.0].map(|flow| Amount::new(Kind::FibreFlow, flow, Unit::KilogramPerHour));
    let limited = words::compare::limited("A UF", Obstacle::OverLimit(Machine::FibreSupply), ends, &context);
    sound(&limited);
    writeln!(text, "  {limited}").unwrap();
    snapshot!("messages", "compare_answers", text);
}

#[test]
fn uncertainty() {
    let mut systems = systems();
    systems[1] = ComparedSystem::new("UF", with_liquids(&example(), &SystemKey::Uf.system().liquids));
    let mut units = Units::default();
    units.mark = DecimalMark::Comma;
    let context = context(&systems[0].draft, &units);
    let mut text = String::new();
    let cases = systems.each_ref().map(|system| system.case().unwrap());
    let uncertain = sources(&[(&systems[0].draft, cases[0]), (&systems[1].draft, cases[1])]);
    for source in &uncertain {
        let source = words::compare::uncertain(source, &systems);
        sound(&source);
        writeln!(text, "  {source}").unwrap();
    }
    for (agree, noisy) in [(true, false), (false, false), (false, true)] {
        let found = Agreement { tolerance: 0.1, low: 0.2, high: 0.0, agree, noisy, why: Vec::new() };
        let why = if agree {
            Vec::new()
        } else {
            vec![
                DisagreementCause::AtBound(0.123),
                DisagreementCause::LeftOut(2),
                DisagreementCause::Curved,
                DisagreementCause::Rectangular,
            ]
        };
        let agreement_note = words::compare::agreement_note(&Agreement { why, ..found }, &context);
        sound(&agreement_note);
        writeln!(text, "  {agreement_note}").unwrap();
    }
    for why in [
        DisagreementCause::AtBound(0.123),
        DisagreementCause::LeftOut(1),
        DisagreementCause::LeftOut(812),
        DisagreementCause::Curved,
        DisagreementCause::Rectangular,
        DisagreementCause::FewDegrees,
    ] {
        let why = words::compare::why(why, &context);
        sound(&why);
        writeln!(text, "  {why}").unwrap();
    }
    for error in [
        StudyError::Empty,
        StudyError::NoSystem(7),
        StudyError::NotUsed(1, Field::WaterFlow),
        StudyError::NotGiven(0, Output::VolumeAtLimit),
    ] {
        text += &written(&words::compare::no_study(error, &systems));
    }
    snapshot!("messages", "compare_uncertainty", text);
}

#[test]
fn economy_and_emission() {
    let mut text = String::new();
    let all = EconomyField::ALL.iter().map(|field| words::compare::economy_field(*field));
    let own = SystemEconomyField::ALL.iter().map(|field| words::compare::system_economy_field(*field));
    for found in all.chain(own).chain(EmissionField::ALL.iter().map(|field| words::compare::emission_field(*field))) {
        sound(found.label);
        writeln!(text, "  {}: {}", found.label, found.hint).unwrap();
    }
    let ratio = uom::si::f64::Ratio::default();
    for error in [
        EmissionError::RatioOutOfRange(ratio),
        EmissionError::MelamineOutOfRange(ratio),
        EmissionError::MassOutOfRange,
        EmissionError::NotReachable(ratio),
        EmissionError::TemperatureOutOfRange(uom::si::f64::ThermodynamicTemperature::default()),
        EmissionError::ValueOutOfRange(-1.0),
        EmissionError::MoistureOutOfRange(ratio),
    ] {
        text += &written(&words::compare::emission_error(error));
    }
    for limit in LIMITS {
        writeln!(text, "  {}, {}", words::compare::market(limit.market), words::compare::article(limit.article))
            .unwrap();
    }
    writeln!(text, "  {}", haulm::t!("comparison-emission-caution")).unwrap();
    snapshot!("messages", "compare_economy_and_emission", text);
}

#[test]
fn names() {
    let mut text = String::new();
    for output in Output::side_by_side(6000) {
        let found = words::compare::output(output);
        writeln!(text, "  {}: {} ({})", output.key(), found.label, found.note).unwrap();
    }
    for obstacle in Obstacle::ALL {
        writeln!(text, "  {}: {}", obstacle.key(), words::compare::obstacle(obstacle)).unwrap();
    }
    for form in Form::ALL {
        let found = words::compare::form(*form);
        writeln!(text, "  {}: {}", found.label, found.hint).unwrap();
    }
    sound(&text.replace("  ", ""));
    snapshot!("messages", "compare_names", text);
}

/// Source: JCGM 100, 7.2.6: u_c with two digits, and the value to the same place: 10.057 62 Ω with u_c = 27 mΩ
/// is 10.058 Ω.
#[test]
fn value_and_width_end_at_the_same_place() {
    let draft = example();
    let units = Units::default();
    let context = context(&draft, &units);
    let check = |kind, value, width, around, expected: [&str; 2]| {
        let (value, width) = plus_minus(kind, value, width, around, &context);
        assert_eq!([&*value, &*width], expected);
    };
    check(Kind::Ratio, 10.05762, 0.027, None, ["10.058", "0.027"]);
    check(Kind::Ratio, 1234.5678, 0.996, None, ["1234.6", "1.0"]);
    check(Kind::Ratio, 12345.678, 432.1, None, ["12\u{202f}350", "430"]);
    check(Kind::Ratio, 0.001, 0.02, None, ["0.001", "0.020"]);
    check(Kind::Ratio, 0.0001, 0.02, None, ["0", "0.020"]);
    check(Kind::Ratio, -0.456, 0.02, None, ["−0.456", "0.020"]);
    check(Kind::Ratio, 5.0, 0.0, None, ["5.000", "0"]);
    check(Kind::Ratio, f64::NAN, 0.1, None, ["–", "–"]);
    check(Kind::Moisture, 0.1049, 0.00123, None, ["10.49", "0.12"]);
    // A difference of 2 K is 2 °C, not −271 °C.
    check(Kind::Temperature, 2.0, 0.5, Some(300.0), ["2.00", "0.50"]);
    check(Kind::Temperature, 300.0, 0.5, None, ["26.85", "0.50"]);
}
