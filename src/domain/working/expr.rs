//! A formula as data: rendered to MathML on the page, to text in exports, and evaluated by tests.

use std::ops;

/// A formula over the numbers put in, which it names by their place.
#[derive(Debug, Clone, PartialEq)]
pub enum Expr {
    /// The number put in at this place.
    Given(usize),
    /// An exact number.
    Number(f64),
    /// left + right
    Add(Box<Expr>, Box<Expr>),
    /// left − right
    Sub(Box<Expr>, Box<Expr>),
    /// left · right
    Mul(Box<Expr>, Box<Expr>),
    /// left / right
    Div(Box<Expr>, Box<Expr>),
    /// The larger of two.
    Max(Box<Expr>, Box<Expr>),
    /// The square root.
    Sqrt(Box<Expr>),
}

macro_rules! operator {
    ($trait:ident, $method:ident, $variant:ident) => {
        impl ops::$trait for Expr {
            type Output = Self;
            fn $method(self, right: Self) -> Self {
                Self::$variant(Box::new(self), Box::new(right))
            }
        }
    };
}

operator!(Add, add, Add);
operator!(Sub, sub, Sub);
operator!(Mul, mul, Mul);
operator!(Div, div, Div);

impl Expr {
    /// The number one.
    pub const ONE: Self = Self::Number(1.0);
    /// Zero.
    pub const ZERO: Self = Self::Number(0.0);

    /// The larger of two.
    #[must_use]
    pub fn max(self, other: Self) -> Self {
        Self::Max(Box::new(self), Box::new(other))
    }

    /// The square root.
    #[must_use]
    pub fn sqrt(self) -> Self {
        Self::Sqrt(Box::new(self))
    }

    /// The sum of all terms; zero for none.
    #[must_use]
    pub fn sum(terms: impl IntoIterator<Item = Self>) -> Self {
        terms.into_iter().reduce(|sum, term| sum + term).unwrap_or(Self::ZERO)
    }

    /// The value of the formula, each number put in as `number` gives it.
    #[must_use]
    pub fn value(&self, number: &impl Fn(usize) -> f64) -> f64 {
        let of = |part: &Self| part.value(number);
        match self {
            Self::Given(at) => number(*at),
            Self::Number(exact) => *exact,
            Self::Add(left, right) => of(left) + of(right),
            Self::Sub(left, right) => of(left) - of(right),
            Self::Mul(left, right) => of(left) * of(right),
            Self::Div(left, right) => of(left) / of(right),
            Self::Max(left, right) => of(left).max(of(right)),
            Self::Sqrt(inner) => of(inner).sqrt(),
        }
    }

    /// How tightly the outermost operator binds: sums 1, products 2, everything else 3.
    #[must_use]
    pub const fn binding(&self) -> u8 {
        match self {
            Self::Add(..) | Self::Sub(..) => 1,
            Self::Mul(..) | Self::Div(..) => 2,
            Self::Given(_) | Self::Number(_) | Self::Max(..) | Self::Sqrt(_) => 3,
        }
    }

    /// The formula as plain text with `+ - * / max( , ) sqrt( )`, each number put in as `name` gives it.
    #[must_use]
    pub fn to_text(&self, name: &impl Fn(usize) -> String) -> String {
        let within = |part: &Self, least: u8| {
            let text = part.to_text(name);
            if part.binding() < least { format!("({text})") } else { text }
        };
        match self {
            Self::Given(at) => name(*at),
            Self::Number(number) => format!("{number}"),
            Self::Add(left, right) => format!("{} + {}", within(left, 1), within(right, 1)),
            Self::Sub(left, right) => format!("{} - {}", within(left, 1), within(right, 2)),
            Self::Mul(left, right) => format!("{} * {}", within(left, 2), within(right, 2)),
            Self::Div(left, right) => format!("{} / {}", within(left, 2), within(right, 3)),
            Self::Max(left, right) => format!("max({}, {})", left.to_text(name), right.to_text(name)),
            Self::Sqrt(of) => format!("sqrt({})", of.to_text(name)),
        }
    }
}
