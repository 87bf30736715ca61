//! The page of the line in English.

use crate::ui::text::LinePage;

fn accepted_in(saved: usize) -> String {
    match saved {
        0 => "Delivery accepted.".to_owned(),
        1 => "Delivery accepted. 1 saved recipe has a new revision.".to_owned(),
        several => format!("Delivery accepted. {several} saved recipes have a new revision each."),
    }
}

pub const LINE_PAGE: LinePage = LinePage {
    sheet: "Pump settings",
    delivery: "New delivery",
    example: "Example data.",
    unread: "The line of the page is blank. What is kept stays as it is until something is typed there, and is then set aside.",
    water: "Water",
    face_water: "Face water",
    thinning_of: "Thinning water of",
    not_in_recipe: "not in this recipe",
    off: "off",
    no_setting: "no setting",
    interval: "95 % interval: from",
    to: "to",
    setting: "Setting",
    density: "Density, as caught",
    cannot: "cannot",
    figure: "Figure",
    target: "Target",
    pump: "Pump",
    station: "Station",
    complete: "The new recipe",
    mass: "Mass",
    solids: "Solids content",
    liquid: "Liquid delivered",
    after: "After",
    accepted_in,
    accept_undone: "Delivery undone.",
};
