//! The boxes of a recipe: one table, from which the fields, the entries, their checks and their storage follow.

use crate::domain::balance::station::Station;
use crate::domain::form::form;
use crate::domain::limit::Limit;
use crate::domain::limit::Source::{CommonPractice, FromMemory, Published};
use crate::domain::limit::Window;
use crate::domain::recipe::liquid::{DoseWay, LiquidId};
use crate::quantity::Kind;
use crate::quantity::Unit as U;

/// Where a box is on the page, and the letter of its number in formulas.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Spot {
    /// The station it belongs to.
    pub station: Station,
    /// Whether it is folded away with those that are needed less often.
    pub folded: bool,
    /// The letter, and its index, perhaps empty.
    pub letter: (&'static str, &'static str),
}

const fn main(station: Station, letter: &'static str, index: &'static str) -> Spot {
    Spot { station, folded: false, letter: (letter, index) }
}

const fn folded(station: Station, letter: &'static str, index: &'static str) -> Spot {
    Spot { station, folded: true, letter: (letter, index) }
}

/// The usual press factor, s/mm.
pub const PRESS_FACTOR: Window = Window { low: 5.6, high: 14.0, source: Published("Garay (2012)") };

form! {
    /// A number on the recipe page.
    enum Field at Spot {
        /// Fibre into the blender, oven-dry or as the belt scale reads it (see [`FeedWay`](crate::domain::recipe::draft::FeedWay)).
        FibreFlow: fibre_flow, FibreFlow, KilogramPerHour, "", main(Station::Fibre, "F", ""),
            Limit::above_to(U::KilogramPerHour, 0.0, 1e6).usually(500.0, 60_000.0, CommonPractice);
        /// Line speed wanted, when the fibre flow follows from it.
        WantedLineSpeed: wanted_line_speed, LineSpeed, MetrePerMinute, "", main(Station::Fibre, "v", ""),
            Limit::above_to(U::MetrePerMinute, 0.0, 300.0).usually(1.0, 120.0, CommonPractice);
        /// Press factor wanted, when the fibre flow follows from it.
        WantedPressFactor: wanted_press_factor, PressFactor, SecondPerMillimetre, "", main(Station::Fibre, "φ", ""),
            Limit::above_to(U::SecondPerMillimetre, 0.0, 1_000.0).within(PRESS_FACTOR);
        /// Moisture of the fibre into the blender.
        FibreMoisture: fibre_moisture, Moisture, PercentDryBasis, "", main(Station::Fibre, "ω", "f"),
            Limit::from_to(U::PercentDryBasis, 0.0, 200.0).usually(1.0, 12.0, CommonPractice);
        /// Price of oven-dry fibre.
        FibrePrice: fibre_price, Price, PerTonne, "", folded(Station::Fibre, "p", "f"),
            Limit::from_to(U::PerTonne, 0.0, 1e6).optional();
        /// Moisture wanted of the mat at the former.
        MatMoisture: mat_moisture, Moisture, PercentDryBasis, "", main(Station::Mat, "ω", "t"),
            Limit::from_to(U::PercentDryBasis, 0.0, 100.0).usually(8.0, 12.0, Published("Garay (2012)"));
        /// Points of moisture lost between blender and former.
        DryingLoss: drying_loss, Share, Percent, "0", folded(Station::Mat, "δ", ""),
            Limit::from_to(U::Percent, 0.0, 50.0).usually(0.0, 3.0, CommonPractice);
        /// Water dose as kg per 100 kg oven-dry fibre.
        WaterOnFibre: water_on_fibre, Dose, Percent, "", main(Station::Blender, "d", "w"),
            Limit::from_to(U::Percent, 0.0, 100.0).usually(0.0, 15.0, CommonPractice);
        /// Water dose as a flow.
        WaterFlow: water_flow, LiquidFlow, KilogramPerHour, "", main(Station::Blender, "W", "d"),
            Limit::from_to(U::KilogramPerHour, 0.0, 1e6);
        /// Board density at the board's moisture (EN 323).
        BoardDensity: board_density, BoardDensity, KilogramPerCubicMetre, "", main(Station::Board, "ρ", "b"),
            Limit::above_to(U::KilogramPerCubicMetre, 0.0, 2_000.0).usually(400.0, 1_000.0, CommonPractice);
        /// Moisture at which the board's density is meant.
        BoardMoisture: board_moisture, Moisture, PercentDryBasis, "7", main(Station::Board, "ω", "b"),
            Limit::from_to(U::PercentDryBasis, 0.0, 50.0).usually(4.0, 11.0, FromMemory);
        /// Thickness of the finished, sanded board.
        Thickness: thickness, Thickness, Millimetre, "", main(Station::Board, "t", ""),
            Limit::above_to(U::Millimetre, 0.0, 300.0).usually(2.0, 40.0, CommonPractice);
        /// Sanded off the top face.
        SandTop: sand_top, Thickness, Millimetre, "0", main(Station::Board, "a", "top"),
            Limit::from_to(U::Millimetre, 0.0, 20.0).usually(0.0, 0.75, FromMemory);
        /// Sanded off the bottom face.
        SandBottom: sand_bottom, Thickness, Millimetre, "0", main(Station::Board, "a", "bottom"),
            Limit::from_to(U::Millimetre, 0.0, 20.0).usually(0.0, 0.75, FromMemory);
        /// Density of the sanded-off layers as a ratio of the mean.
        SurfaceRatio: surface_ratio, Ratio, One, "1", folded(Station::Board, "k", ""),
            Limit::above_to(U::One, 0.0, 3.0).usually(0.9, 1.5, CommonPractice);
        /// Width of the mat after trimming.
        MatWidth: mat_width, Extent, Metre, "", main(Station::Mat, "b", ""),
            Limit::above_to(U::Metre, 0.0, 20.0).usually(0.3, 4.5, CommonPractice).optional();
        /// Width that the former spreads, before trimming.
        SpreadWidth: spread_width, Extent, Metre, "", folded(Station::Mat, "b", "s"),
            Limit::above_to(U::Metre, 0.0, 20.0).usually(0.3, 4.5, CommonPractice).optional();
        /// Heated length of the press.
        PressLength: press_length, Extent, Metre, "", main(Station::Press, "l", ""),
            Limit::above_to(U::Metre, 0.0, 200.0).usually(1.0, 90.0, CommonPractice).optional();
        /// Share of the furnish that the sifter rejects.
        Reject: reject, Share, Percent, "0", folded(Station::Mat, "r", ""),
            Limit::from_to(U::Percent, 0.0, 100.0).below_most().usually(0.0, 2.0, FromMemory);
        /// Finished area per pressed area.
        AreaYield: area_yield, Share, Percent, "100", folded(Station::Board, "y", ""),
            Limit::above_to(U::Percent, 0.0, 100.0).usually(80.0, 100.0, CommonPractice);
        /// Moisture of the board as it leaves the press.
        ExitMoisture: exit_moisture, Moisture, PercentDryBasis, "", folded(Station::Press, "ω", "exit"),
            Limit::from_to(U::PercentDryBasis, 0.0, 50.0).usually(2.0, 10.0, CommonPractice).optional();
        /// Bulk density of the loose mat, with its moisture.
        MatBulkDensity: mat_bulk_density, BulkDensity, KilogramPerCubicMetre, "", folded(Station::Mat, "ρ", "mat"),
            Limit::above_to(U::KilogramPerCubicMetre, 0.0, 1_000.0).usually(15.0, 60.0, FromMemory).optional();
        /// Temperature of the mat before the press.
        MatTemperature: mat_temperature, Temperature, Celsius, "30", folded(Station::Mat, "θ", "mat"),
            Limit::from_to(U::Celsius, 1.0, 99.0).usually(15.0, 60.0, CommonPractice);
        /// Water sprayed on the mat before the press, per area of each sprayed face.
        SurfaceSpray: surface_spray, UsePerArea, GramPerSquareMetre, "0", folded(Station::Mat, "q", ""),
            Limit::from_to(U::GramPerSquareMetre, 0.0, 1_000.0).usually(0.0, 30.0, CommonPractice);
        /// Hours of a shift.
        ShiftHours: shift_hours, ShiftTime, Hour, "8", folded(Station::Board, "T", ""),
            Limit::above_to(U::Hour, 0.0, 24.0).usually(6.0, 12.0, CommonPractice);
        /// Largest oven-dry fibre flow that dryer and silo can supply.
        FibreSupply: fibre_supply, FibreFlow, KilogramPerHour, "", folded(Station::Fibre, "F", "max"),
            Limit::above_to(U::KilogramPerHour, 0.0, 1e6).optional();
        /// Largest oven-dry furnish flow through the blender.
        BlenderCapacity: blender_capacity, FibreFlow, KilogramPerHour, "", folded(Station::Blender, "S", "max"),
            Limit::above_to(U::KilogramPerHour, 0.0, 1e6).optional();
        /// Smallest press factor that cures the board.
        LeastPressFactor: least_press_factor, PressFactor, SecondPerMillimetre, "", folded(Station::Press, "φ", "min"),
            Limit::above_to(U::SecondPerMillimetre, 0.0, 1_000.0).optional();
        /// Highest mat moisture that this press takes without steam bursting the board.
        SteamLimit: steam_limit, Moisture, PercentDryBasis, "", folded(Station::Press, "ω", "max"),
            Limit::above_to(U::PercentDryBasis, 0.0, 100.0).usually(8.0, 16.0, FromMemory).optional();
        /// Largest line speed of former and press.
        TopLineSpeed: top_line_speed, LineSpeed, MetrePerMinute, "", folded(Station::Press, "v", "max"),
            Limit::above_to(U::MetrePerMinute, 0.0, 300.0).optional();
        +
        /// A number of one liquid.
        Liquid(LiquidId, LiquidField);
    }

    /// The numbers outside the liquids.
    struct Plain;
}

/// A number of one liquid.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum LiquidField {
    /// The dose, in the way that the liquid's [`DoseWay`](crate::domain::recipe::liquid::DoseWay) says.
    Dose,
    /// Solids as delivered, by mass.
    Solids,
    /// Density as delivered.
    Density,
    /// Solids to which it is thinned with water before spraying.
    SpraySolids,
    /// Price of the liquid as delivered.
    Price,
}

impl LiquidField {
    /// All of them, in the order of the page.
    pub const ALL: &'static [LiquidField] =
        &[LiquidField::Dose, LiquidField::Solids, LiquidField::Density, LiquidField::SpraySolids, LiquidField::Price];
}

impl Field {
    /// All fields outside the liquids, in the order of the page: the material's.
    pub const PLAIN: &'static [Field] = Self::FORM;

    /// The stable key of the field: in stored files, and as `data-field` on the page. A liquid's
    /// field carries the liquid's number behind its key.
    #[must_use]
    pub fn key(self) -> String {
        match self {
            Self::Liquid(id, field) => format!("{}.{}", field.key(), id.0),
            plain => plain.declared_key().unwrap_or_default().to_owned(),
        }
    }
}

impl Field {
    /// Whether the value that a new recipe starts with assumes nothing, such as no sanding: it is no typical value.
    #[must_use]
    pub const fn starts_neutral(self) -> bool {
        matches!(
            self,
            Self::DryingLoss
                | Self::SandTop
                | Self::SandBottom
                | Self::SurfaceRatio
                | Self::Reject
                | Self::AreaYield
                | Self::SurfaceSpray
        )
    }
}

impl LiquidField {
    /// The stable key of the field.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Dose => "dose",
            Self::Solids => "solids",
            Self::Density => "density",
            Self::SpraySolids => "spray_solids",
            Self::Price => "price",
        }
    }
}

impl Field {
    /// What the field measures. A liquid's field depends on the liquid: see [`LiquidField::kind`].
    #[must_use]
    pub const fn kind(self) -> Kind {
        match self {
            Self::Liquid(_, part) => part.kind(DoseWay::SolidsOnFibre),
            plain => match plain.declared_kind() {
                Some(kind) => kind,
                None => Kind::Ratio,
            },
        }
    }

    /// The station that the field belongs to.
    #[must_use]
    pub const fn station(self) -> Station {
        match self.declared_place() {
            Some(spot) => spot.station,
            None => Station::Blender,
        }
    }

    /// The letter of its number in formulas, and its index, perhaps empty.
    #[must_use]
    pub const fn letter(self) -> (&'static str, &'static str) {
        match self.declared_place() {
            Some(spot) => spot.letter,
            None => ("", ""),
        }
    }

    /// Whether the box is folded away with those that are needed less often.
    #[must_use]
    pub const fn is_folded(self) -> bool {
        matches!(self.declared_place(), Some(Spot { folded: true, .. }))
    }

    /// What the field may hold and what is typical, whatever else the recipe says; nothing for a liquid's.
    #[must_use]
    pub const fn limit(self) -> Limit {
        match self.declared_limit() {
            Some(limit) => limit,
            None => Limit::from_to(U::One, 0.0, 0.0),
        }
    }
}

impl LiquidField {
    /// What the field measures, which for the dose follows from its way.
    #[must_use]
    pub const fn kind(self, dose_way: DoseWay) -> Kind {
        match self {
            Self::Dose => match dose_way {
                DoseWay::LiquidPerBoard => Kind::UsePerVolume,
                DoseWay::LiquidOnFaces(_) => Kind::UsePerArea,
                DoseWay::SolidsOnFibre | DoseWay::SolidsOnLiquid(_) | DoseWay::LiquidOnFibre => Kind::Dose,
            },
            Self::Solids | Self::SpraySolids => Kind::Solids,
            Self::Density => Kind::LiquidDensity,
            Self::Price => Kind::Price,
        }
    }
}
