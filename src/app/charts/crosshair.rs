//! Where the crosshair is.

use leptos::prelude::*;

/// How many points a large step of the crosshair passes.
const LEAP: usize = 10;

/// The point that is read.
#[derive(Clone, Copy)]
pub(super) struct Crosshair {
    /// How many points there are.
    pub(super) count: Signal<usize>,
    /// The point that is read while none was chosen.
    pub(super) rest: Signal<usize>,
    /// The point that the crosshair was led to.
    pub(super) at: RwSignal<Option<usize>>,
}

impl Crosshair {
    /// Which point is read.
    pub(super) fn index(self) -> usize {
        self.at.get().unwrap_or_else(|| self.rest.get()).min(self.last())
    }

    /// Whether the crosshair was led there.
    pub(super) fn is_led(self) -> bool {
        self.at.with(Option::is_some)
    }

    /// Moves the crosshair by a key; whether it was one that does.
    pub(super) fn step(self, key: &str) -> bool {
        let now = self.index();
        let to = match key {
            "ArrowLeft" | "ArrowDown" => now.saturating_sub(1),
            "ArrowRight" | "ArrowUp" => now + 1,
            "PageDown" => now.saturating_sub(LEAP),
            "PageUp" => now + LEAP,
            "Home" => 0,
            "End" => self.last(),
            _ => return false,
        };
        self.at.set(Some(to.min(self.last())));
        true
    }

    fn last(self) -> usize {
        self.count.get().saturating_sub(1)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn keys_lead_the_crosshair_within_the_points() {
        Owner::new().with(|| {
            let cross = Crosshair {
                count: Signal::stored(25),
                rest: Signal::stored(7),
                at: RwSignal::new(None),
            };
            assert_eq!((cross.index(), cross.is_led()), (7, false));
            let keys = [
                ("ArrowRight", 8),
                ("ArrowDown", 7),
                ("PageUp", 17),
                ("PageUp", 24),
                ("ArrowUp", 24),
                ("Home", 0),
                ("PageDown", 0),
                ("End", 24),
            ];
            for (key, index) in keys {
                assert!(cross.step(key), "{key}");
                assert_eq!(cross.index(), index, "{key}");
            }
            assert!(!cross.step("Tab"));
            assert!(cross.is_led());
        });
    }

    #[test]
    fn what_was_chosen_stays_within_fewer_points() {
        Owner::new().with(|| {
            let count = RwSignal::new(25);
            let at = RwSignal::new(Some(20));
            let cross = Crosshair { count: count.into(), rest: Signal::stored(0), at };
            count.set(4);
            assert_eq!(cross.index(), 3);
            count.set(0);
            assert_eq!(cross.index(), 0);
        });
    }
}
