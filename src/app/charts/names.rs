//! Names within the picture, where they cover least.

use super::svg::width_of;

/// The height of a line of text.
pub(super) const LINE: f64 = 16.0;

/// From the edge of something to the text beside it.
pub(super) const GAP: f64 = 6.0;

/// A name in its place.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Name {
    pub(super) words: String,
    pub(super) left: f64,
    /// The line that the letters stand on.
    pub(super) base: f64,
}

impl Name {
    /// The room that it takes.
    pub(super) fn area(&self) -> Area {
        Area {
            left: self.left,
            right: self.left + width_of(&self.words),
            top: self.base - LINE,
            bottom: self.base + GAP,
        }
    }
}

/// A part of the picture.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Area {
    pub(super) left: f64,
    pub(super) right: f64,
    pub(super) top: f64,
    pub(super) bottom: f64,
}

impl Area {
    /// The same with so much more on every side.
    pub(super) fn wider(self, by: f64) -> Self {
        Self {
            left: self.left - by,
            right: self.right + by,
            top: self.top - by,
            bottom: self.bottom + by,
        }
    }

    pub(super) fn meets(&self, other: &Self) -> bool {
        self.left < other.right
            && other.left < self.right
            && self.top < other.bottom
            && other.top < self.bottom
    }
}

/// The place where a name covers the fewest things; of equal ones the first. Names
/// that stand already, and the edge of the picture, weigh more than all things.
pub(super) fn least_covering(
    places: impl Iterator<Item = Name>,
    inside: &Area,
    things: &[Area],
    names: &[Name],
) -> Option<Name> {
    let weight = things.len() + 1;
    let cost = |place: &Name| {
        let area = place.area();
        let mut cost = things.iter().filter(|it| it.meets(&area)).count();
        for name in names {
            // Lines of text may stand right under each other.
            if (name.base - place.base).abs() < LINE
                && name.left < area.right
                && area.left < name.area().right
            {
                cost += weight;
            }
        }
        if area.top < inside.top || place.base > inside.bottom {
            cost += weight;
        }
        if area.left < inside.left || area.right > inside.right {
            cost += weight;
        }
        cost
    };
    // Of equal ones `min_by_key` takes the first.
    places.map(|place| (cost(&place), place)).min_by_key(|it| it.0).map(|it| it.1)
}

/// The first text that fits into a room, or the last one, cut.
pub(super) fn fitting(texts: &[&str], room: f64) -> String {
    if let Some(text) = texts.iter().find(|text| width_of(text) <= room) {
        return (*text).to_owned();
    }
    let mut cut = String::new();
    for letter in texts.last().map_or("", |it| it).chars() {
        if width_of(&cut) + width_of("m…") > room {
            break;
        }
        cut.push(letter);
    }
    cut + "…"
}

#[cfg(test)]
mod tests {
    use super::*;

    const INSIDE: Area = Area { left: 0.0, right: 300.0, top: 0.0, bottom: 200.0 };

    fn name(left: f64, base: f64) -> Name {
        Name { words: "Map".into(), left, base }
    }

    fn least(places: &[Name], things: &[Area], names: &[Name]) -> Option<Name> {
        least_covering(places.iter().cloned(), &INSIDE, things, names)
    }

    #[test]
    fn of_equal_places_the_first_is_taken() {
        let places = [name(10.0, 50.0), name(90.0, 50.0)];
        assert_eq!(least(&places, &[], &[]).as_ref(), Some(&places[0]));
        let thing = places[0].area();
        assert_eq!(least(&places, &[thing], &[]).as_ref(), Some(&places[1]));
        assert_eq!(least(&[], &[], &[]), None);
    }

    #[test]
    fn things_are_covered_rather_than_names_or_the_edge() {
        let covered = name(90.0, 50.0);
        let things = [covered.area(), covered.area().wider(3.0)];
        let taken = name(12.0, 52.0);
        for bad in [name(10.0, 50.0), name(-4.0, 90.0), name(290.0, 90.0), name(10.0, 10.0)] {
            let places = [bad, covered.clone()];
            assert_eq!(least(&places, &things, &[taken.clone()]).as_ref(), Some(&covered));
        }
    }

    #[test]
    fn the_longest_text_that_fits_is_taken() {
        let texts = ["Map: 26 to 34", "Map"];
        assert_eq!(fitting(&texts, 200.0), "Map: 26 to 34");
        assert_eq!(fitting(&texts, 40.0), "Map");
        let cut = fitting(&["a very long name"], 60.0);
        assert!(cut.ends_with('…') && width_of(&cut) <= 60.0, "{cut}");
        assert!("a very long name".starts_with(cut.trim_end_matches('…')));
    }
}
