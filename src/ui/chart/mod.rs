//! Drawings. The way from data to geometry is pure and tested without a page.

pub mod strip_layout;
