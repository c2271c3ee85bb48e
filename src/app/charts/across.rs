//! Where a chart's places lie across the picture.

/// How far beyond the frame a place is still told apart; farther ones are clipped.
pub(super) const FAR: f64 = 5000.0;

/// The left and the right end in the picture's own units, and what they stand for.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Across {
    pub(super) left: f64,
    pub(super) right: f64,
    /// How wide the whole picture is.
    pub(super) width: f64,
    pub(super) from: f64,
    pub(super) to: f64,
}

impl Across {
    pub(super) fn x(&self, x: f64) -> f64 {
        if self.from >= self.to {
            return f64::midpoint(self.left, self.right);
        }
        let part = (x - self.from) / (self.to - self.from);
        (self.left + part * (self.right - self.left)).clamp(-FAR, FAR)
    }

    /// The number at a place.
    pub(super) fn x_at(&self, place: f64) -> f64 {
        let part = (place - self.left) / (self.right - self.left);
        self.from + part * (self.to - self.from)
    }
}
