//! The text that an SVG path is.

/// The whole number nearest to a place in the picture.
#[expect(clippy::cast_possible_truncation, reason = "a place in the picture or near it")]
pub(super) fn whole(value: f64) -> i64 {
    value.round() as i64
}

/// A path under way. Tenths of a pixel are fine enough.
#[derive(Default)]
pub(super) struct Path(String);

/// A path that begins with a command and its numbers.
pub(super) fn pen(command: &str, numbers: &[f64]) -> Path {
    Path::default().with(command, numbers)
}

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
            self.push(*number);
        }
    }

    fn push(&mut self, number: f64) {
        let tenths = whole(number * 10.0);
        if tenths < 0 {
            self.0.push('-');
        }
        let tenths = tenths.unsigned_abs();
        self.0.push_str(&(tenths / 10).to_string());
        if !tenths.is_multiple_of(10) {
            self.0.push('.');
            self.0.push_str(&(tenths % 10).to_string());
        }
    }

    pub(super) fn is_empty(&self) -> bool {
        self.0.is_empty()
    }

    pub(super) fn text(self) -> String {
        self.0
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_have_a_decimal_only_where_they_need_one() {
        let path = pen("M", &[0.04, -0.5]).with("L", &[-12.96, 7.25]);
        assert_eq!(path.text(), "M 0 -0.5L -13 7.3");
    }
}
