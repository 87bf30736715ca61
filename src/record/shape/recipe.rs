//! The shape of a recipe's draft.

use super::{choice, fields, forms, through};
use crate::domain::draft::{FeedWay, Plain, WaterWay};
use crate::domain::{DoseWay, Draft, Entry, LiquidDraft, LiquidId, Role, Substance};

fields!(Entry { Must text, Must unit, Spare preset });
through!(LiquidId 0);
forms!(Plain);

fields!(LiquidDraft {
    Must id, Must name, Must role, Must substance, Must dose_way, Must dose, Must solids, Must density,
    Must spray_solids, Must price, Spare source
});
fields!(Draft { Must feed_way, Must water_way, Must liquids, Must plain });

choice!(plain FeedWay {
    OvenDry = "oven_dry",
    Belt = "belt",
    LineSpeed = "line_speed",
    PressFactor = "press_factor",
});
choice!(plain WaterWay { ToMatMoisture = "to_mat_moisture", OnFibre = "on_fibre", Flow = "flow", None = "none" });
choice!(plain Role {
    Binder = "binder",
    Hardener = "hardener",
    Wax = "wax",
    Scavenger = "scavenger",
    ReleaseAgent = "release_agent",
    Other = "other",
});
choice!(plain Substance {
    Uf = "uf",
    Muf = "muf",
    Pf = "pf",
    Pmdi = "pmdi",
    Soy = "soy",
    Tannin = "tannin",
    WaxEmulsion = "wax_emulsion",
    AmmoniumSulfate = "ammonium_sulfate",
    AmmoniumChloride = "ammonium_chloride",
    AmmoniumNitrate = "ammonium_nitrate",
    Urea = "urea",
    Other = "other",
});
choice!(DoseWay {
    SolidsOnFibre = "solids_on_fibre",
    SolidsOnLiquid(liquid: LiquidId) = "solids_on_liquid",
    LiquidOnFibre = "liquid_on_fibre",
    LiquidPerBoard = "liquid_per_board",
});
