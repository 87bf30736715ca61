//! The only code that touches the browser: storage, files, clock, locale.

pub mod page;
