//! A link as a QR code (ISO/IEC 18004), for another device's camera.

use crate::browser::element::{El, svg};
use fast_qr::{ECL, QRBuilder};
use std::fmt::Write as _;

/// The quiet zone around the code, in modules, as the standard asks for.
const QUIET: usize = 4;

/// The code of a link; `None` for one that is too long for any.
pub fn code(link: &str, name: &'static str) -> Option<El> {
    let code = QRBuilder::new(link).ecl(ECL::L).build().ok()?;
    let mut path = String::new();
    for row in 0..code.size {
        let dark: Vec<bool> = code[row].iter().take(code.size).map(|module| module.value()).collect();
        let mut at = 0;
        while at < dark.len() {
            let run = dark.iter().skip(at).take_while(|dark| **dark).count();
            if run > 0 {
                let _ = write!(path, "M{} {}h{run}v1h-{run}z", at + QUIET, row + QUIET);
            }
            at += run.max(1);
        }
    }
    let width = code.size + 2 * QUIET;
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
