//! Data reconciliation and gross errors.

mod check_values;
mod diagnosis;
mod independent;
mod kkt;
mod network;
mod properties;
mod refusals;
mod simulation;
