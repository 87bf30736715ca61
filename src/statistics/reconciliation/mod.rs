//! Data reconciliation and the detection of gross errors.
//!
//! Readings never fit the balances exactly. [`Problem::reconcile`] adjusts them as little as their uncertainties
//! allow so that every constraint holds, infers what was not measured, and tests whether the adjustments are larger
//! than chance makes them. [`Problem::diagnose`] then looks for the readings whose removal makes the rest consistent.
//!
//! The method is the usual one (Narasimhan and Jordache, *Data Reconciliation and Gross Error Detection*, 2000;
//! VDI 2048): weighted least squares by successive linearisation, unmeasured quantities removed by a projection
//! (Crowe, García Campos and Hrymak, 1983), a global χ² test, and a test of each reading with the level shared out
//! after Šidák. Results are data; there are no words here.
//!
//! ```
//! use haulm::statistics::reconciliation::{Equations, Problem, Quantity};
//!
//! // Two feeds become one product, which is not weighed.
//! let problem = Problem::new(vec![
//!     Quantity::Measured { value: 60.0, uncertainty: 1.0 },
//!     Quantity::Measured { value: 39.0, uncertainty: 1.0 },
//!     Quantity::Unmeasured { start: 100.0 },
//! ]);
//! let balance = Equations::new(1, |x, residuals| residuals[0] = x[0] + x[1] - x[2]);
//! let result = problem.reconcile(&balance)?;
//! let product = result.quantities[2].estimate.ok_or("not observable")?;
//! assert!((product.value - 99.0).abs() < 1e-9);
//! assert!((product.uncertainty - 2.0_f64.sqrt()).abs() < 1e-9);
//! # Ok::<(), Box<dyn std::error::Error>>(())
//! ```

/// What the quantities have to satisfy.
mod constraints;
/// Which readings explain an inconsistency.
mod diagnosis;
/// Why there is no result.
mod error;
/// The global test and the measurement test.
mod hypothesis;
/// One linearisation of the constraints.
mod linearisation;
/// Readings and what is asked.
mod problem;
/// The reconciled quantities.
mod result;
/// Which extra reading would separate two suspects.
mod separation;
/// Successive linearisation.
mod solver;
/// Directions in which errors of readings show.
mod subspace;

pub use constraints::{Constraints, Equations, LinearConstraints};
pub use diagnosis::{Diagnosis, GrossError, SuspectReading, TestConclusion};
pub use error::ReconciliationError;
pub use hypothesis::{GlobalTest, MeasurementTest};
pub use num_dual::Dual64;
pub use problem::{Correlation, Problem, Quantity};
pub use result::{Estimate, ReadingResult, Reconciled, Reconciliation, Status};
pub use separation::{CandidateReading, ExtraReading};
