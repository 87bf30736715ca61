//! The line check as one table: a row for each thing that is read, with its target, its deviation and its reconciled value.

use crate::domain::balance::outcome::Case;
use crate::domain::line::book::LineBook;
use crate::domain::line::checked::{CheckedLine, Tolerances};
use crate::domain::line::entries::TableRows;
use crate::domain::line::line_check::actual::FlowSource;
use crate::domain::line::line_check::check::LineCheck;
use crate::domain::line::line_check::deviation::{Check, RunFigure, Verdict};
use crate::domain::line::line_check::reading::Readings;
use crate::domain::line::line_check::reconcile::model::raw_board;
use crate::domain::line::line_check::reconcile::quantity::LineQuantity;
use crate::domain::line::line_check::reconcile::verdict::LineReconciliation;
use crate::domain::line::period::Uncertain;
use crate::domain::line::pumps::pump::{Pump, ReadingWay};
use crate::domain::line::pumps::{conditions, settings_table};
use crate::domain::line::tanks::draw::drawn;
use crate::domain::recipe::draft::Draft;
use crate::quantity::{Amount, Kind, Moisture};
use uom::si::f64::{MassDensity, MassRate, Ratio};

/// A row of the line check.
#[derive(Debug, Clone, PartialEq)]
pub struct CheckRow {
    /// What is read.
    pub figure: RunFigure,
    /// What it measures.
    pub kind: Kind,
    /// What it should be; `None` where the recipe does not say.
    pub target: Option<Amount>,
    /// How far it may be off, relative or in points.
    pub tolerance: Option<Ratio>,
    /// The reading beside its target; `None` where there is none to compare.
    pub check: Option<Check>,
    /// Its reconciled value in the base unit of its kind.
    pub reconciled: Option<Uncertain>,
}

impl CheckRow {
    /// Whether it is within its tolerance. A blank reading is not read, and counts for nothing.
    #[must_use]
    pub fn verdict(&self) -> Verdict {
        self.check.as_ref().map_or(Verdict::NotRead, Check::verdict)
    }
}

/// The rows in the order of the page, there before anything is read. `set_for` is the recipe at the belt scale and the moisture for
/// which the pumps are set; the flows are compared with what the fibre that was read takes.
#[must_use]
pub fn check_rows(
    draft: &Draft,
    set_for: &Case,
    line: &CheckedLine,
    book: &LineBook,
    readings: Option<&Readings>,
    check: Option<&LineCheck>,
) -> Vec<CheckRow> {
    let at_read =
        readings.and_then(|readings| settings_table::at(set_for, TableRows::Belt, readings.belt, readings.moisture));
    let sheet = Sheet {
        set_for,
        target: at_read.as_ref().unwrap_or(set_for),
        readings: readings.filter(|_| check.is_some()),
        check,
        tolerances: line.tolerances.as_ref(),
    };
    let mut rows = vec![sheet.belt_scale(), sheet.fibre_moisture()];
    rows.extend(line.pumps.iter().map(|pump| sheet.pump(pump, draft, book)));
    rows.extend([
        sheet.line_speed(),
        sheet.mat_width(),
        sheet.mat_weight(),
        sheet.mat_moisture(),
        sheet.raw_density(),
        sheet.thickness(),
        sheet.board_moisture(),
    ]);
    rows
}

/// The rows of a recipe that has no balance, or no fibre flow: what is read, without targets.
#[must_use]
pub fn blank_rows(book: &LineBook) -> Vec<CheckRow> {
    let blank = |figure, kind| CheckRow { figure, kind, target: None, tolerance: None, check: None, reconciled: None };
    let pumps = book.pumps.iter().map(|pump| {
        let by_volume = pump.reading_way == ReadingWay::VolumeMeter;
        blank(RunFigure::Flow(pump.id), if by_volume { Kind::PumpFlow } else { Kind::LiquidFlow })
    });
    let first = [(RunFigure::BeltScale, Kind::FibreFlow), (RunFigure::FibreMoisture, Kind::Moisture)];
    let last = [
        (RunFigure::LineSpeed, Kind::LineSpeed),
        (RunFigure::MatWidth, Kind::Extent),
        (RunFigure::MatWeight, Kind::MatWeight),
        (RunFigure::MatMoisture, Kind::Moisture),
        (RunFigure::RawDensity, Kind::BoardDensity),
        (RunFigure::Thickness, Kind::Thickness),
        (RunFigure::BoardMoisture, Kind::Moisture),
    ];
    let plain = |(figure, kind)| blank(figure, kind);
    first.into_iter().map(plain).chain(pumps).chain(last.into_iter().map(plain)).collect()
}

struct Sheet<'a> {
    set_for: &'a Case,
    target: &'a Case,
    readings: Option<&'a Readings>,
    check: Option<&'a LineCheck>,
    tolerances: Option<&'a Tolerances>,
}

impl Sheet<'_> {
    fn reconciled(&self, quantity: LineQuantity) -> Option<Uncertain> {
        self.check?.reconciliation.as_ref()?.uncertain(quantity)
    }

    fn relative(
        &self,
        (figure, kind): (RunFigure, Kind),
        target: Option<f64>,
        read: Option<f64>,
        tolerance: fn(&Tolerances) -> Ratio,
        quantity: LineQuantity,
    ) -> CheckRow {
        let tolerance = self.tolerances.map(tolerance);
        let compared = read.zip(target).zip(tolerance);
        CheckRow {
            figure,
            kind,
            target: target.map(|target| Amount::from_base(kind, target)),
            tolerance,
            check: compared.and_then(|((is, target), tolerance)| {
                Check::relative(figure, (kind, is, target), tolerance, FlowSource::Read)
            }),
            reconciled: self.reconciled(quantity),
        }
    }

    fn moisture(
        &self,
        figure: RunFigure,
        target: Moisture,
        read: Option<Moisture>,
        tolerance: fn(&Tolerances) -> Ratio,
        quantity: LineQuantity,
    ) -> CheckRow {
        let tolerance = self.tolerances.map(tolerance);
        let compared = read.zip(tolerance);
        CheckRow {
            figure,
            kind: Kind::Moisture,
            target: Some(Amount::from_base(Kind::Moisture, target.dry_basis().value)),
            tolerance,
            check: compared.map(|(is, tolerance)| Check::points(figure, is, target, tolerance, FlowSource::Read)),
            reconciled: self.reconciled(quantity),
        }
    }

    /// A changed moisture moves the target of the belt scale, where the recipe fixes the oven-dry flow.
    fn belt_scale(&self) -> CheckRow {
        let moved = self.readings.and_then(|readings| {
            conditions::at(self.set_for, self.set_for.input.feed, readings.moisture).map(|case| case.solved.fibre_wet)
        });
        let target = moved.unwrap_or(self.set_for.solved.fibre_wet);
        self.relative(
            (RunFigure::BeltScale, Kind::FibreFlow),
            Some(target.value),
            self.readings.map(|readings| readings.belt.value),
            |tolerances| tolerances.belt_scale,
            LineQuantity::BeltScale,
        )
    }

    fn fibre_moisture(&self) -> CheckRow {
        self.moisture(
            RunFigure::FibreMoisture,
            self.set_for.input.fibre_moisture,
            self.readings.map(|readings| readings.moisture),
            |tolerances| tolerances.moisture,
            LineQuantity::FibreMoisture,
        )
    }

    fn pump(&self, pump: &Pump, draft: &Draft, book: &LineBook) -> CheckRow {
        let figure = RunFigure::Flow(pump.id);
        let by_volume = book.pump(pump.id).is_some_and(|own| own.reading_way == ReadingWay::VolumeMeter);
        let kind = if by_volume { Kind::PumpFlow } else { Kind::LiquidFlow };
        let fed = pump.feeds.within(draft);
        let drawn = fed.and_then(|fed| drawn(self.target, fed));
        let shown = |mass: MassRate, density: MassDensity| if by_volume { (mass / density).value } else { mass.value };
        let target = drawn.map(|(whole, density)| shown(whole * pump.share, density));
        let tolerance = self.tolerances.map(|tolerances| tolerances.dose);
        let run = self.check.and_then(|check| check.actual.pumps.iter().find(|run| run.pump == pump.id));
        let check = run.zip(drawn).zip(target.zip(tolerance)).and_then(|((run, (_, density)), (target, tolerance))| {
            Check::relative(figure, (kind, shown(run.mass, density), target), tolerance, run.source)
        });
        let quantity = if by_volume { LineQuantity::Volume(pump.id) } else { LineQuantity::Meter(pump.id) };
        CheckRow {
            figure,
            kind,
            target: target.map(|target| Amount::from_base(kind, target)),
            tolerance,
            check,
            reconciled: self.reconciled(quantity),
        }
    }

    fn line_speed(&self) -> CheckRow {
        self.relative(
            (RunFigure::LineSpeed, Kind::LineSpeed),
            self.target.solved.line.speed.map(|speed| speed.value),
            self.readings.and_then(|readings| readings.line_speed).map(|speed| speed.value),
            |tolerances| tolerances.line_speed,
            LineQuantity::LineSpeed,
        )
    }

    fn mat_width(&self) -> CheckRow {
        self.relative(
            (RunFigure::MatWidth, Kind::Extent),
            self.set_for.input.line.width.map(|width| width.value),
            self.readings.and_then(|readings| readings.mat_width).map(|width| width.value),
            |tolerances| tolerances.mat_width,
            LineQuantity::MatWidth,
        )
    }

    fn mat_weight(&self) -> CheckRow {
        let row = self.relative(
            (RunFigure::MatWeight, Kind::MatWeight),
            Some(self.set_for.solved.mat.od.value),
            None,
            |tolerances| tolerances.mat_weight,
            LineQuantity::MatMass,
        );
        let reconciliation = self.check.and_then(|check| check.reconciliation.as_ref());
        CheckRow {
            check: self.check.and_then(|check| check.check(RunFigure::MatWeight).copied()),
            reconciled: reconciliation.and_then(LineReconciliation::mat_od),
            ..row
        }
    }

    fn mat_moisture(&self) -> CheckRow {
        self.moisture(
            RunFigure::MatMoisture,
            self.set_for.solved.water.mat,
            self.readings.and_then(|readings| readings.sample?.moisture),
            |tolerances| tolerances.moisture,
            LineQuantity::MatMoisture,
        )
    }

    fn raw_density(&self) -> CheckRow {
        let board = self.readings.map(|readings| readings.board);
        let read = board.and_then(|board| Some((board.weight? / board.thickness?).value));
        self.relative(
            (RunFigure::RawDensity, Kind::BoardDensity),
            raw_board(self.set_for, LineQuantity::Density),
            read,
            |tolerances| tolerances.density,
            LineQuantity::Density,
        )
    }

    fn thickness(&self) -> CheckRow {
        self.relative(
            (RunFigure::Thickness, Kind::Thickness),
            raw_board(self.set_for, LineQuantity::Thickness),
            self.readings.and_then(|readings| readings.board.thickness).map(|thickness| thickness.value),
            |tolerances| tolerances.thickness,
            LineQuantity::Thickness,
        )
    }

    fn board_moisture(&self) -> CheckRow {
        self.moisture(
            RunFigure::BoardMoisture,
            self.set_for.input.exit_moisture(),
            self.readings.and_then(|readings| readings.board.moisture),
            |tolerances| tolerances.board_moisture,
            LineQuantity::BoardMoisture,
        )
    }
}
