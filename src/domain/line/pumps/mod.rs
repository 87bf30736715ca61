//! Pumps: what a catch test tells, what a pump must be set to, and the settings table.

/// Catch tests and their catches.
pub mod catch_test;
/// The recipe at the fibre that comes down the line now.
pub mod conditions;
/// A pump's line at the density of today.
pub mod curve;
/// A setting as the drive takes it.
pub mod dial;
/// How far a pump has moved since an earlier catch test.
pub mod drift;
/// What would help a pump to serve a flow.
pub mod help;
/// What a pump's setting fixes.
pub mod metering;
/// Nozzles to open.
pub mod nozzles;
/// Pumps, as typed and as checked.
pub mod pump;
/// What every pump has to be set to for a recipe.
pub mod pump_settings;
/// Where a setting lies.
pub mod range_status;
/// What a pump's drive is set to.
pub mod setting;
/// Pump settings over fibre flows and moistures.
pub mod settings_table;
