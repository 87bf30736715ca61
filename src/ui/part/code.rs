//! A link as a QR code (ISO/IEC 18004), for another device's camera.

use leptos::prelude::*;
use qrcodegen::{QrCode as Modules, QrCodeEcc};
use std::fmt::Write as _;

/// The quiet zone around the code, in modules, as the standard asks for.
const QUIET: i32 = 4;

/// The code; nothing for a link that is too long for any.
#[component]
pub fn QrCode(
    /// The link.
    link: String,
    /// What it is, for who cannot see it.
    #[prop(into)]
    name: String,
    /// How wide the code itself is on paper, without the quiet zone around it.
    #[prop(optional)]
    millimetres: Option<f64>,
) -> impl IntoView {
    let modules =
        Modules::encode_text(&link, QrCodeEcc::Medium).or_else(|_| Modules::encode_text(&link, QrCodeEcc::Low));
    modules.ok().map(|code| {
        let whole = code.size() + 2 * QUIET;
        let width = millimetres.map(|own| format!("{:.2}mm", own * f64::from(whole) / f64::from(code.size())));
        let all = whole.to_string();
        view! {
            <svg
                class="code"
                viewBox=format!("0 0 {whole} {whole}")
                width=width.clone()
                height=width
                role="img"
                aria-label=name
                shape-rendering="crispEdges"
            >
                <rect width=all.clone() height=all></rect>
                <path d=path(&code)></path>
            </svg>
        }
    })
}

/// The dark modules, a run of a row each.
fn path(code: &Modules) -> String {
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
    path
}
