//! A link as a QR code (ISO/IEC 18004), for another device's camera.

use crate::browser::element::{El, svg};
use qrcodegen::{QrCode, QrCodeEcc};
use std::fmt::Write as _;

/// The quiet zone around the code, in modules, as the standard asks for.
const QUIET: i32 = 4;

/// The code of a link; `None` for one that is too long for any.
pub fn code(link: &str, name: &'static str) -> Option<El> {
    let code = QrCode::encode_text(link, QrCodeEcc::Low).ok()?;
    let size = code.size();
    let mut path = String::new();
    for row in 0..size {
        let mut at = 0;
        while at < size {
            let run = (at..size).find(|column| !code.get_module(*column, row)).unwrap_or(size) - at;
            if run > 0 {
                let _ = write!(path, "M{} {}h{run}v1h-{run}z", at + QUIET, row + QUIET);
            }
            at += run.max(1);
        }
    }
    let width = size + 2 * QUIET;
    let drawn = svg("svg")
        .class("code")
        .set("viewBox", format!("0 0 {width} {width}"))
        .set("role", "img")
        .set("aria-label", name)
        .set("shape-rendering", "crispEdges")
        .child(svg("rect").set("width", width.to_string()).set("height", width.to_string()))
        .child(svg("path").set("d", path));
    Some(drawn)
}
