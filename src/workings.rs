//! Workings: how a number came about, as data.
//!
//! A formula is written once, as an [`Expression`] over named numbers. Its
//! letters, its letters with the numbers put in, and its value all come from
//! that one expression, so they cannot disagree.
//!
//! Where a value is worked out over and over, its formula is written over any
//! [`Arithmetic`]: in bare numbers it costs what the numbers cost, and as an
//! [`Expression`] the same lines give the workings.

use crate::message::Sentence;
use std::fmt::{Display, Write};
use std::ops::{Add, Div, Mul, Sub};

use crate::source::Source;

/// Digits that a number keeps in the formula with the numbers put in.
const SIGNIFICANT_DIGITS: f64 = 7.0;

/// A formula over named numbers.
///
/// ```
/// use fillwright::workings::number;
/// let share = (number("V0", 15.0) * number("e0", 0.1) + number("x", 32.0) * number("e", 0.85))
///     / (number("V0", 15.0) + number("x", 32.0));
/// assert_eq!(share.letters(), "(V0 * e0 + x * e) / (V0 + x)");
/// assert_eq!(share.numbers(), "(15 * 0.1 + 32 * 0.85) / (15 + 32)");
/// ```
#[derive(Clone, Debug)]
pub struct Expression {
    node: Node,
    value: f64,
}

#[derive(Clone, Debug)]
enum Node {
    Number(String),
    Binary(Box<Expression>, Operator, Box<Expression>),
    Call(&'static str, Box<Expression>),
}

#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Operator {
    Add,
    Subtract,
    Multiply,
    Divide,
    Power,
}

impl Operator {
    fn sign(self) -> char {
        match self {
            Self::Add => '+',
            Self::Subtract => '-',
            Self::Multiply => '*',
            Self::Divide => '/',
            Self::Power => '^',
        }
    }

    fn binds(self) -> u8 {
        match self {
            Self::Add | Self::Subtract => 1,
            Self::Multiply | Self::Divide => 2,
            Self::Power => 3,
        }
    }
}

/// A named number in a formula.
pub fn number(symbol: impl Into<String>, value: f64) -> Expression {
    Expression { node: Node::Number(symbol.into()), value }
}

/// A number that stands in a formula as itself.
pub fn literal(value: f64) -> Expression {
    number(plain(value), value)
}

/// The sum of terms; nothing where there are none.
pub fn sum<A: Arithmetic>(terms: impl IntoIterator<Item = A>) -> A {
    terms.into_iter().reduce(Add::add).unwrap_or_else(|| A::literal(0.0))
}

/// The letter of one of several fuels: a for the first.
pub fn letter(place: usize) -> char {
    u8::try_from(place).ok().and_then(|place| b'a'.checked_add(place)).map_or('z', char::from)
}

/// What a formula is worked out in: bare numbers for its value alone, expressions for
/// its workings.
///
/// ```
/// use fillwright::workings::{Arithmetic, Expression};
/// fn drive<A: Arithmetic>(difference: f64, rated: f64) -> A {
///     (A::number("dp", difference) / A::number("p_r", rated)).sqrt()
/// }
/// assert_eq!(drive::<f64>(4.0, 1.0), 2.0);
/// assert_eq!(drive::<Expression>(4.0, 1.0).letters(), "sqrt(dp / p_r)");
/// ```
pub trait Arithmetic:
    Clone + Add<Output = Self> + Sub<Output = Self> + Mul<Output = Self> + Div<Output = Self>
{
    /// A named number.
    fn number(symbol: impl Display, value: f64) -> Self;
    /// A number that stands in a formula as itself.
    fn literal(value: f64) -> Self;
    /// What it comes to.
    fn value(&self) -> f64;
    /// The square root.
    #[must_use]
    fn sqrt(self) -> Self;
    /// A power of it.
    #[must_use]
    fn power(self, exponent: Self) -> Self;
}

impl Arithmetic for f64 {
    fn number(_: impl Display, value: f64) -> Self {
        value
    }

    fn literal(value: f64) -> Self {
        value
    }

    fn value(&self) -> f64 {
        *self
    }

    fn sqrt(self) -> Self {
        Self::sqrt(self)
    }

    fn power(self, exponent: Self) -> Self {
        self.powf(exponent)
    }
}

impl Arithmetic for Expression {
    fn number(symbol: impl Display, value: f64) -> Self {
        number(symbol.to_string(), value)
    }

    fn literal(value: f64) -> Self {
        literal(value)
    }

    fn value(&self) -> f64 {
        Self::value(self)
    }

    fn sqrt(self) -> Self {
        Self::sqrt(self)
    }

    fn power(self, exponent: Self) -> Self {
        Self::power(self, exponent)
    }
}

impl Expression {
    /// What it comes to.
    pub fn value(&self) -> f64 {
        self.value
    }

    /// The square root.
    #[must_use]
    pub fn sqrt(self) -> Self {
        Self { value: self.value.sqrt(), node: Node::Call("sqrt", Box::new(self)) }
    }

    /// A power of it.
    #[must_use]
    pub fn power(self, exponent: Self) -> Self {
        let value = self.value.powf(exponent.value);
        self.binary(Operator::Power, exponent, value)
    }

    /// The formula in letters.
    pub fn letters(&self) -> String {
        self.text(&|symbol, _| symbol.to_owned())
    }

    /// The formula with the numbers put in.
    pub fn numbers(&self) -> String {
        self.text(&|_, value| plain(value))
    }

    fn text(&self, leaf: &dyn Fn(&str, f64) -> String) -> String {
        let mut text = String::new();
        self.write(&mut text, leaf);
        text
    }

    fn write(&self, text: &mut String, leaf: &dyn Fn(&str, f64) -> String) {
        match &self.node {
            Node::Number(symbol) => text.push_str(&leaf(symbol, self.value)),
            Node::Call(name, inner) => {
                // Writing to a string cannot fail.
                let _ = write!(text, "{name}(");
                inner.write(text, leaf);
                text.push(')');
            }
            Node::Binary(left, operator, right) => {
                let strict = !matches!(operator, Operator::Add | Operator::Multiply);
                // Nobody agrees on which of two powers in a row comes first.
                let power = *operator == Operator::Power;
                left.write_inside(text, leaf, |inner| {
                    inner < operator.binds() || (power && inner == operator.binds())
                });
                let _ = write!(text, " {} ", operator.sign());
                right.write_inside(text, leaf, |inner| {
                    inner < operator.binds() || (strict && inner == operator.binds())
                });
            }
        }
    }

    fn write_inside(
        &self,
        text: &mut String,
        leaf: &dyn Fn(&str, f64) -> String,
        needs_brackets: impl Fn(u8) -> bool,
    ) {
        let brackets = match &self.node {
            Node::Binary(_, operator, _) => needs_brackets(operator.binds()),
            // A negative number after an operator.
            Node::Number(_) => self.value < 0.0 && leaf("", self.value).starts_with('-'),
            Node::Call(..) => false,
        };
        if brackets {
            text.push('(');
        }
        self.write(text, leaf);
        if brackets {
            text.push(')');
        }
    }

    fn binary(self, operator: Operator, other: Self, value: f64) -> Self {
        Self { node: Node::Binary(Box::new(self), operator, Box::new(other)), value }
    }
}

impl Add for Expression {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        let value = self.value + other.value;
        self.binary(Operator::Add, other, value)
    }
}

impl Sub for Expression {
    type Output = Self;
    fn sub(self, other: Self) -> Self {
        let value = self.value - other.value;
        self.binary(Operator::Subtract, other, value)
    }
}

impl Mul for Expression {
    type Output = Self;
    fn mul(self, other: Self) -> Self {
        let value = self.value * other.value;
        self.binary(Operator::Multiply, other, value)
    }
}

impl Div for Expression {
    type Output = Self;
    fn div(self, other: Self) -> Self {
        let value = self.value / other.value;
        self.binary(Operator::Divide, other, value)
    }
}

/// A number to so many significant digits, without trailing zeros.
fn plain(value: f64) -> String {
    if value == 0.0 || !value.is_finite() {
        return "0".into();
    }
    let before_point = value.abs().log10().floor();
    // Between 1e-7 and 1e7 all numbers of this trade fit; the count of decimals
    // stays small and positive.
    #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "clamped above")]
    let decimals = (SIGNIFICANT_DIGITS - 1.0 - before_point).clamp(0.0, 12.0) as usize;
    let text = format!("{value:.decimals$}");
    if text.contains('.') {
        text.trim_end_matches('0').trim_end_matches('.').to_owned()
    } else {
        text
    }
}

/// One line of the workings.
#[derive(Clone, Debug, PartialEq)]
pub struct Working {
    /// What is worked out.
    pub name: Sentence,
    /// Its symbol.
    pub symbol: String,
    /// The formula in letters.
    pub formula: String,
    /// The formula with the numbers put in: plain arithmetic that any
    /// calculator can check.
    pub numbers: String,
    /// What it comes to.
    pub value: f64,
    /// Decimals that are worth showing.
    pub decimals: usize,
    /// The unit of the value; empty for a bare number.
    pub unit: &'static str,
    /// Where the formula and its constants come from.
    pub sources: Vec<Source>,
}

impl Working {
    /// A line from its formula.
    pub fn new(
        name: impl Into<Sentence>,
        symbol: impl Into<String>,
        expression: &Expression,
        decimals: usize,
        unit: &'static str,
        sources: &[Source],
    ) -> Self {
        Self {
            name: name.into(),
            symbol: symbol.into(),
            formula: expression.letters(),
            numbers: expression.numbers(),
            value: expression.value(),
            decimals,
            unit,
            sources: sources.to_vec(),
        }
    }
}

/// Workings that build on each other.
#[derive(Clone, Debug, Default)]
pub struct Lines(Vec<Working>);

impl Lines {
    /// Adds a line, and gives its result to be used in later ones.
    pub fn add(
        &mut self,
        name: impl Into<Sentence>,
        symbol: impl Into<String>,
        expression: &Expression,
        (decimals, unit): (usize, &'static str),
        sources: &[Source],
    ) -> Expression {
        let symbol = symbol.into();
        self.0.push(Working::new(name, symbol.clone(), expression, decimals, unit, sources));
        number(symbol, expression.value())
    }

    /// Adds lines that were worked out elsewhere.
    pub fn extend(&mut self, lines: impl IntoIterator<Item = Working>) {
        self.0.extend(lines);
    }

    /// The result of an earlier line; not a number where there is none.
    pub fn value_of(&self, symbol: &str) -> f64 {
        self.0.iter().find(|line| line.symbol == symbol).map_or(f64::NAN, |line| line.value)
    }

    /// The lines.
    pub fn into_vec(self) -> Vec<Working> {
        self.0
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn evaluated(text: &str) -> f64 {
        exmex::eval_str(text).unwrap()
    }

    #[test]
    fn the_text_means_what_the_value_says() {
        let a = || number("a", 7.5);
        let b = || number("b", -2.25);
        let c = || number("c", 3.0);
        for expression in [
            a() - (b() - c()),
            a() - b() - c(),
            a() / (b() * c()),
            a() / b() / c(),
            (a() + b()) * (c() - a()),
            a() * b() + c(),
            (a() / c()).sqrt() * b(),
            (a() / c()).power(literal(1.2)) * c().power(literal(0.6)),
            c().power(a() - c()) / c().power(c()).power(literal(0.5)),
            sum([a(), b(), c()]) / literal(100.0),
        ] {
            let text = expression.numbers();
            // exmex 0.21, a general-purpose expression evaluator.
            approx::assert_relative_eq!(evaluated(&text), expression.value(), max_relative = 1e-6);
        }
    }

    #[test]
    fn a_formula_comes_to_the_same_in_numbers_and_as_an_expression() {
        fn formula<A: Arithmetic>() -> A {
            let a = || A::number("a", 7.5);
            (a() * A::literal(2.0) - A::number(format_args!("b_{}", letter(1)), 3.0)).sqrt()
                / sum([a(), a()]).power(A::literal(1.5))
        }
        let expression = formula::<Expression>();
        assert_eq!(formula::<f64>().to_bits(), expression.value().to_bits());
        assert_eq!(expression.letters(), "sqrt(a * 2 - b_b) / (a + a) ^ 1.5");
    }

    #[test]
    fn numbers_stay_readable() {
        assert_eq!(plain(16.0), "16");
        assert_eq!(plain(0.1), "0.1");
        assert_eq!(plain(1.0 / 3.0), "0.3333333");
        assert_eq!(plain(138.246), "138.246");
        assert_eq!(plain(0.0), "0");
        assert_eq!(plain(12_345_678.9), "12345679");
    }
}
