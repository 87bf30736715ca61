//! Linear least squares by Householder's QR, column after column, so that a column that says nothing new
//! is noticed and left out.
//!
//! Source: Golub and Van Loan (2013), sections 5.2 and 5.3 (from memory). Checked against
//! NIST StRD Longley, SiRstv and AtmWtAg, and against `nalgebra`.

use crate::quantity::number::finite;

/// A column counts as a combination of those before it when what is left of it is smaller than this share
/// of it.
const NOTHING_NEW: f64 = 1e-9;

/// A model fitted.
#[derive(Debug, Clone, PartialEq)]
pub struct LeastSquaresFit {
    /// For each column its coefficient; `None` for one that is a combination of those before it.
    pub coefficients: Vec<Option<f64>>,
    /// Part of Qᵀy that each column adds; its square is the column's sum of squares given those before it.
    pub added: Vec<Option<f64>>,
    /// Sum of squares of the residuals.
    pub residual: f64,
    /// Degrees of freedom of the residuals.
    pub freedom: u32,
    /// R of the columns that were kept, row by row.
    upper: Vec<Vec<f64>>,
    /// The columns that were kept.
    kept: Vec<usize>,
}

/// Fits y by the columns. `None` when a number is not finite, a column is shorter than y, or there are fewer
/// rows than columns that say something new.
#[must_use]
pub fn fit(columns: &[Vec<f64>], y: &[f64]) -> Option<LeastSquaresFit> {
    let rows = y.len();
    let mut y = y.to_vec();
    let mut reflectors: Vec<Vec<f64>> = Vec::new();
    let (mut kept, mut upper) = (Vec::new(), Vec::new());
    for (at, column) in columns.iter().enumerate() {
        let mut column = column.clone();
        if column.len() != rows {
            return None;
        }
        let size = norm(&column);
        for (from, reflector) in reflectors.iter().enumerate() {
            reflect(&mut column, reflector, from);
        }
        let from = reflectors.len();
        let left = norm(column.get(from..).unwrap_or_default());
        if !size.is_finite() {
            return None;
        }
        if from >= rows || left <= NOTHING_NEW * size {
            continue;
        }
        // The sign that adds up, so that nothing cancels.
        let first = column.get(from).copied()?;
        let diagonal = if first > 0.0 { -left } else { left };
        let mut reflector = column.get(from..)?.to_vec();
        *reflector.first_mut()? -= diagonal;
        reflect(&mut y, &reflector, from);
        let mut above: Vec<f64> = column.get(..from)?.to_vec();
        above.push(diagonal);
        upper.push(above);
        reflectors.push(reflector);
        kept.push(at);
    }
    let rank = kept.len();
    let residual = y.get(rank..)?.iter().map(|left| left * left).sum::<f64>();
    let mut solution = vec![0.0; rank];
    // `upper` holds a column of R a row: back substitution runs from the last.
    for at in (0..rank).rev() {
        let known: f64 = (at + 1..rank).map(|other| upper[other][at] * solution[other]).sum();
        solution[at] = (y[at] - known) / upper[at][at];
    }
    let mut coefficients = vec![None; columns.len()];
    let mut added = vec![None; columns.len()];
    for (place, column) in kept.iter().enumerate() {
        coefficients[*column] = Some(finite(solution[place])?);
        added[*column] = Some(finite(y[place])?);
    }
    let freedom = u32::try_from(rows - rank).ok()?;
    Some(LeastSquaresFit { coefficients, added, residual: finite(residual)?, freedom, upper, kept })
}

fn norm(column: &[f64]) -> f64 {
    // Scaled, so that no square leaves the range of numbers.
    let most = column.iter().fold(0.0_f64, |most, x| most.max(x.abs()));
    if most > 0.0 { most * column.iter().map(|x| (x / most).powi(2)).sum::<f64>().sqrt() } else { most }
}

/// Mirrors the entries of `column` from `from` on at the plane that `reflector` stands on.
fn reflect(column: &mut [f64], reflector: &[f64], from: usize) {
    let size: f64 = reflector.iter().map(|x| x * x).sum();
    if size <= 0.0 {
        return;
    }
    let tail = column.iter_mut().skip(from);
    let along: f64 = tail.zip(reflector).map(|(x, r)| *x * r).sum();
    for (x, r) in column.iter_mut().skip(from).zip(reflector) {
        *x -= 2.0 * along / size * r;
    }
}

impl LeastSquaresFit {
    /// Residual variance s² = RSS/(n − p); `None` without degrees of freedom.
    #[must_use]
    pub fn variance(&self) -> Option<f64> {
        (self.freedom > 0).then(|| self.residual / f64::from(self.freedom))
    }

    /// Value of a combination of the coefficients, one weight a column, and its standard deviation
    /// s·√(cᵀ(XᵀX)⁻¹c) = s·‖R⁻ᵀc‖ (`None` without degrees of freedom). `None` when a column that was left
    /// out has a weight.
    #[must_use]
    pub fn combination(&self, weights: &[f64]) -> Option<(f64, Option<f64>)> {
        let mut value = 0.0;
        for (weight, coefficient) in weights.iter().zip(&self.coefficients) {
            if weight.abs() > 0.0 {
                value += weight * (*coefficient)?;
            }
        }
        // Rᵀz = c, from the first.
        let mut z: Vec<f64> = Vec::with_capacity(self.kept.len());
        for (at, column) in self.kept.iter().enumerate() {
            let known: f64 = z.iter().zip(&self.upper[at]).map(|(z, r)| z * r).sum();
            let weight = weights.get(*column).copied().unwrap_or(0.0);
            z.push((weight - known) / self.upper[at][at]);
        }
        let deviation = self.variance().map(|variance| (variance * z.iter().map(|z| z * z).sum::<f64>()).sqrt());
        Some((value, deviation))
    }
}
