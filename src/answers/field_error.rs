//! What is wrong with a field, said beside it.

use super::problem::FieldProblem;
use crate::document::Field;

/// What is missing in a field, or wrong with it: what was given, what is allowed, what to
/// do.
#[derive(Clone, Debug, PartialEq)]
pub struct FieldError {
    /// The field.
    pub field: Field,
    /// What is missing or wrong.
    pub problem: FieldProblem,
    /// Whether it is only still to be filled in: nothing that was typed is wrong.
    pub is_missing: bool,
}
