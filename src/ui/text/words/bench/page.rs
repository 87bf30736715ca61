//! The plain texts of the bench page.

use crate::ui::text::BenchPage;

pub const PAGE: BenchPage = BenchPage {
    title: "Bench",
    basis: "Recipe",
    kept: "Trial saved",
    new_begun: "New trial begun; the one before can be brought back here.",
    open_unread: "The bench begins anew; what cannot be read is set aside before anything is written in its place.",
    sheet: "Weigh sheet",
    order: "To weigh out, in order of addition",
    findings: "Findings",
    batch: "Batch",
    weighed: "Weighed",
    line: "Line",
    material: "Material for the whole series",
    volume: "Volume",
    property: "Property",
    count: "Boards",
    mean: "Mean",
    half_width: "± of the mean, 95 %",
    lower: "Lower 95 % quantile",
    upper: "Upper 95 % quantile",
    next_mat: "Furnish for the next mat",
    opened: "Trial opened",
    removed: "Trial deleted",
    put_back: "Trial restored",
};
