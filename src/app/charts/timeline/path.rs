//! The text that an SVG path is.

use super::frame::whole;

/// A path under way. Whole numbers are fine enough: they are pixels.
#[derive(Default)]
pub(super) struct Path(String);

impl Path {
    /// Adds a command with its numbers.
    pub(super) fn with(mut self, command: &str, numbers: &[f64]) -> Self {
        self.add(command, numbers);
        self
    }

    pub(super) fn add(&mut self, command: &str, numbers: &[f64]) {
        self.0.push_str(command);
        for number in numbers {
            self.0.push(' ');
            self.0.push_str(&whole(*number).to_string());
        }
    }

    pub(super) fn is_empty(&self) -> bool {
        self.0.is_empty()
    }

    pub(super) fn text(self) -> String {
        self.0
    }
}
