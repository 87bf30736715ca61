//! The parts of `src/ui/components` in all their states on one page, to look at and to test. It does not ship. `tests/tool/parts.sh`
//! builds it, goes through `tests/browser/parts/` with it and takes its pictures.
//!
//! Left out are the parts that follow the state of the whole app, which the journeys of the pages show: `Announce`, `Cautions`,
//! `UndoNotice`, `WorkingPanel`.
#![allow(missing_docs, unused_crate_dependencies, reason = "an example")]

#[cfg(target_arch = "wasm32")]
mod page;

#[cfg(target_arch = "wasm32")]
fn main() {
    leptos::mount::mount_to_body(page::Parts);
}

#[cfg(not(target_arch = "wasm32"))]
fn main() -> Result<(), &'static str> {
    Err("the parts need a browser: bash tests/tool/parts.sh")
}
