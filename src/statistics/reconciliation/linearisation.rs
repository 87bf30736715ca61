//! One linearisation of the constraints: A·Δx + f = 0 with the unmeasured quantities projected out.
//!
//! Residuals and derivatives are divided by the terms of their constraint, Σ|∂f/∂x|·size(x), and quantities by
//! their size, so that kg/h and fractions count alike. With B = Q·R the unmeasured columns, Q₂ᵀ removes them
//! (Crowe's projection); what is left, G·z = h in readings of unit variance, has the least ‖z‖ at z = Wᵀ·y, where
//! W = R⁻ᵀ·G from the QR decomposition of Gᵀ and y = R⁻ᵀ·h. The elements of y are independent and of unit variance
//! where only chance is at work: ‖y‖² is the global test.

use super::problem::Measurements;
use nalgebra::linalg::{ColPivQR, QR};
use nalgebra::{DMatrix, DVector, Dyn};

/// A pivot below this part of the largest is zero: the rank of balances is decided here. Columns are scaled to unit
/// length before, so that it is a part of the quantity's own weight in the constraints.
pub(super) const RANK: f64 = 1e-9;

/// The linearised constraints at a point.
#[derive(Debug)]
pub(super) struct Linearisation {
    /// One over the terms of each constraint.
    pub scales: Vec<f64>,
    /// Residuals as parts of the terms of their constraint.
    pub residuals: DVector<f64>,
    /// Derivatives of them by each quantity, in sizes of the quantity.
    pub jacobian: DMatrix<f64>,
    /// Size of each quantity.
    pub sizes: Vec<f64>,
    /// W, a column a reading.
    pub whitened: DMatrix<f64>,
    /// y.
    pub scores: DVector<f64>,
    /// Whether the constraints check a reading.
    pub checked: Vec<bool>,
    /// Whether constraints were found that follow from others.
    pub dependent: bool,
    elimination: Elimination,
}

/// QR decomposition of the columns of the unmeasured quantities.
#[derive(Debug)]
struct Elimination {
    qr: ColPivQR<f64, Dyn, Dyn>,
    /// Length of each column before it was scaled to one.
    lengths: Vec<f64>,
    /// Columns in the order of their pivots.
    order: Vec<usize>,
    rank: usize,
}

impl Elimination {
    fn new(mut columns: DMatrix<f64>) -> Self {
        let lengths: Vec<f64> = columns
            .column_iter()
            .map(|column| Some(column.norm()).filter(|length| *length > 0.0).unwrap_or(1.0))
            .collect();
        for (mut column, length) in columns.column_iter_mut().zip(&lengths) {
            column /= *length;
        }
        let qr = ColPivQR::new(columns);
        let order = pivots(&qr, lengths.len());
        let rank = rank(&qr);
        Self { qr, lengths, order, rank }
    }

    /// R₁₁ over the pivots and R₁₂ over the other columns.
    fn triangle(&self) -> (DMatrix<f64>, DMatrix<f64>) {
        let r = self.qr.r();
        let rest = r.ncols() - self.rank;
        (r.view((0, 0), (self.rank, self.rank)).into_owned(), r.view((0, self.rank), (self.rank, rest)).into_owned())
    }
}

/// The order in which pivoting took the columns.
fn pivots(qr: &ColPivQR<f64, Dyn, Dyn>, columns: usize) -> Vec<usize> {
    let mut order = nalgebra::RowDVector::from_iterator(columns, 0..columns);
    qr.p().permute_columns(&mut order);
    order.iter().copied().collect()
}

fn rank(qr: &ColPivQR<f64, Dyn, Dyn>) -> usize {
    let r = qr.col_piv_qr_internal();
    let triangle = qr.r();
    let pivots: Vec<f64> = (0..r.nrows().min(r.ncols())).map(|at| triangle[(at, at)].abs()).collect();
    let largest = pivots.iter().copied().fold(0.0, f64::max);
    pivots.iter().take_while(|pivot| **pivot > RANK * largest).count()
}

impl Linearisation {
    /// `x` is the point, `z` the adjustments there in readings of unit variance.
    pub(super) fn new(
        readings: &Measurements,
        sizes: Vec<f64>,
        residuals: &DVector<f64>,
        jacobian: &DMatrix<f64>,
        z: &DVector<f64>,
    ) -> Self {
        let (scales, residuals, jacobian) = scale(residuals, jacobian, &sizes);
        let measured = jacobian.select_columns(&readings.measured);
        let elimination = Elimination::new(jacobian.select_columns(&readings.unmeasured));

        let mut projected = measured.clone();
        elimination.qr.q_tr_mul(&mut projected);
        let mut right = residuals.clone();
        elimination.qr.q_tr_mul(&mut right);
        let left = residuals.len() - elimination.rank;
        let projected = projected.rows(elimination.rank, left).into_owned();
        let right = right.rows(elimination.rank, left).into_owned();

        let checked = projected
            .column_iter()
            .zip(measured.column_iter())
            .map(|(projected, whole)| projected.norm() > RANK * whole.norm())
            .collect();
        // The rank is that of the balances, whatever the uncertainties are.
        let by_row = ColPivQR::new(projected.transpose());
        let rank = rank(&by_row);
        let rows: Vec<usize> = pivots(&by_row, left).into_iter().take(rank).collect();

        let mut g = in_unit_variance(projected.select_rows(&rows), &sizes, readings);
        let mut h = &g * z - right.select_rows(&rows);
        for (at, mut row) in g.row_iter_mut().enumerate() {
            let length = row.norm();
            if length > 0.0 {
                row /= length;
                h[at] /= length;
            }
        }
        let triangle = QR::new(g.transpose()).r();
        let whitened = triangle.tr_solve_upper_triangular(&g).unwrap_or_else(|| DMatrix::zeros(rank, z.len()));
        let scores = triangle.tr_solve_upper_triangular(&h).unwrap_or_else(|| DVector::zeros(rank));
        let dependent = rank < left;
        Self { scales, residuals, jacobian, sizes, whitened, scores, checked, dependent, elimination }
    }

    /// The adjustments z that the linearised constraints ask for.
    pub(super) fn adjustments(&self) -> DVector<f64> {
        self.whitened.tr_mul(&self.scores)
    }

    /// By how much the unmeasured quantities have to change when the readings' adjustments change by `step`. What is
    /// not observable stays.
    pub(super) fn unmeasured_step(&self, readings: &Measurements, step: &DVector<f64>) -> DVector<f64> {
        let moved = self.measured_part(readings) * step + &self.residuals;
        let response = self.eliminate(&DMatrix::from_column_slice(moved.len(), 1, moved.as_slice()), readings);
        response.column(0).into_owned()
    }

    /// Change of the unmeasured quantities per change of the adjustments, K.
    pub(super) fn unmeasured_response(&self, readings: &Measurements) -> DMatrix<f64> {
        self.eliminate(&self.measured_part(readings), readings)
    }

    /// Derivatives of the residuals by the adjustments in readings of unit variance.
    fn measured_part(&self, readings: &Measurements) -> DMatrix<f64> {
        let measured = self.jacobian.select_columns(&readings.measured);
        in_unit_variance(measured, &self.sizes, readings)
    }

    /// What the unmeasured quantities have to do to make up for `moved`, a row a quantity.
    fn eliminate(&self, moved: &DMatrix<f64>, readings: &Measurements) -> DMatrix<f64> {
        let Elimination { qr, lengths, order, rank } = &self.elimination;
        let mut right = moved.clone();
        qr.q_tr_mul(&mut right);
        let right = right.rows(0, *rank).into_owned();
        let (triangle, _) = self.elimination.triangle();
        let mut response = DMatrix::zeros(lengths.len(), moved.ncols());
        // The diagonal has no zeros, as the rank says.
        if let Some(solved) = triangle.solve_upper_triangular(&right) {
            for (row, at) in solved.row_iter().zip(order) {
                let size = readings.unmeasured.get(*at).map_or(1.0, |index| self.sizes[*index]);
                response.row_mut(*at).copy_from(&(row * (-size / lengths[*at])));
            }
        }
        response
    }

    /// Whether the constraints determine an unmeasured quantity.
    pub(super) fn observable(&self) -> Vec<bool> {
        let Elimination { lengths, order, rank, .. } = &self.elimination;
        let mut observable = vec![false; lengths.len()];
        let (triangle, rest) = self.elimination.triangle();
        if let Some(free) = triangle.solve_upper_triangular(&rest) {
            for (row, at) in free.row_iter().zip(order.iter().take(*rank)) {
                observable[*at] = row.iter().all(|weight| weight.abs() <= RANK);
            }
        }
        observable
    }
}

/// Divides constraints by their terms and multiplies derivatives by the quantities' sizes.
fn scale(residuals: &DVector<f64>, jacobian: &DMatrix<f64>, sizes: &[f64]) -> (Vec<f64>, DVector<f64>, DMatrix<f64>) {
    let (mut residuals, mut jacobian) = (residuals.clone(), jacobian.clone());
    for (mut column, size) in jacobian.column_iter_mut().zip(sizes) {
        column *= *size;
    }
    let scales =
        jacobian.row_iter().map(|row| Some(row.lp_norm(1)).filter(|terms| *terms > 0.0).map_or(1.0, f64::recip));
    let scales: Vec<f64> = scales.collect();
    for ((mut row, residual), scale) in jacobian.row_iter_mut().zip(residuals.iter_mut()).zip(&scales) {
        row *= *scale;
        *residual *= *scale;
    }
    (scales, residuals, jacobian)
}

/// Derivatives per size of a reading as derivatives per adjustment of unit variance.
fn in_unit_variance(mut matrix: DMatrix<f64>, sizes: &[f64], readings: &Measurements) -> DMatrix<f64> {
    for (mut column, index) in matrix.column_iter_mut().zip(&readings.measured) {
        column /= sizes[*index];
    }
    readings.in_unit_variance(matrix)
}
