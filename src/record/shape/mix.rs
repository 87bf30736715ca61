//! The shape of what is typed where solutions and glues are made up.

use super::{choice, fields, forms};
use crate::domain::mix::{AmountWay, Entries, MixDraft, PartKey, ShareWay, TankPart};
use crate::domain::solute::Solute;

forms!(Entries);
fields!(TankPart { Must key, May in_tank, Must share });
fields!(default MixDraft { May solute, May solution_way, May glue_way, May share_way, May tank, May entries });

choice!(plain AmountWay { Mass = "mass", Volume = "volume" });
choice!(plain ShareWay { Recipe = "recipe", Typed = "typed" });
choice!(plain Solute {
    AmmoniumSulfate = "ammonium_sulfate",
    AmmoniumChloride = "ammonium_chloride",
    AmmoniumNitrate = "ammonium_nitrate",
    Urea = "urea",
});
choice!(PartKey { Liquid(name: String) = "liquid", Thinning = "thinning", Water = "water" });
