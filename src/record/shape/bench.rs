//! The shape of a trial's parts.

use super::{choice, fields, forms, through};
use crate::domain::LiquidId;
use crate::domain::bench::board::{BoardDraft, BoardId};
use crate::domain::bench::board_field::{BendingDraft, BondDraft, PieceDraft, SwellingDraft};
use crate::domain::bench::draft::{OverageOf, OverageOn, SheetDraft, SprayWay, ThicknessWay, WaterPlace};
use crate::domain::bench::effects::ModelWay;
use crate::domain::bench::field::Boxes;
use crate::domain::bench::line_id::LineId;
use crate::domain::bench::property::Property;
use crate::domain::bench::series_draft::{BlockWay, DesignWay, FactorDraft, LevelDraft, SeriesDraft};
use crate::domain::bench::series_field::{FactorId, Of};
use crate::domain::bench::target::RequirementDraft;
use crate::domain::bench::weighing::{BatchDraft, WeighedDraft};

through!(BoardId 0, FactorId 0, BatchDraft lines);
forms!(Boxes, PieceDraft, BendingDraft, BondDraft, SwellingDraft);

fields!(default SheetDraft {
    May thickness_way, May overage_of, May overage_on, May water_place, May spray_way, May boxes
});
fields!(WeighedDraft { Must line, Must mass });
fields!(LevelDraft { Must value, Spare name, Spare liquids });
fields!(FactorDraft { Must id, Must of, Must levels });
fields!(default SeriesDraft { May factors, May design, May blocks, May replicates, May seed, May margin });
fields!(BoardDraft {
    Must id, May name, May run, Must mass, Must length, Must width, Must thickness, Must moisture, May pieces,
    May bending, May bond, May swelling, May note
});
fields!(RequirementDraft { Must property, Must value });

choice!(plain ThicknessWay { Finished = "finished", Pressed = "pressed" });
choice!(plain OverageOf { Moist = "moist", OvenDry = "oven_dry" });
choice!(plain OverageOn { Furnish = "furnish", Fibre = "fibre" });
choice!(plain WaterPlace { Last = "last", First = "first" });
choice!(plain SprayWay { Volume = "volume", Mass = "mass" });
choice!(plain BlockWay { None = "none", Replicate = "replicate", Halves = "halves", Quarters = "quarters" });
choice!(plain ModelWay { Pairs = "pairs", Mains = "mains" });
choice!(plain Property {
    Density = "density",
    OvenDryDensity = "oven_dry_density",
    Moisture = "moisture",
    Thickness = "thickness",
    BendingStrength = "bending_strength",
    BendingModulus = "bending_modulus",
    InternalBond = "internal_bond",
    Swelling = "swelling",
});
choice!(DesignWay { Full = "full", Fraction(generators: u8) = "fraction" });
choice!(Of {
    Dose(liquid: LiquidId) = "dose",
    BoardDensity = "board_density",
    MatMoisture = "mat_moisture",
    PressFactor = "press_factor",
    System = "system",
});
choice!(LineId {
    Fibre = "fibre",
    Liquid(liquid: LiquidId) = "liquid",
    Thinning(liquid: LiquidId) = "thinning",
    Water = "water",
});
