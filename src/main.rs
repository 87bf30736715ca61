//! Mounts the app in the page. Everything else is in the library.

#[cfg(target_arch = "wasm32")]
fn main() {
    haulm::ui::mount();
}

/// Natively there is nothing to mount: the library, its tests and the `solve` example are what runs.
#[cfg(not(target_arch = "wasm32"))]
fn main() {}
