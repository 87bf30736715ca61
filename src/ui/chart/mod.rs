//! Drawings. The way from data to geometry is pure and tested without a page.

pub mod legs;
pub mod strip_layout;
