//! Showing a number.
