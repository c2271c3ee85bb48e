//! The pseudo-language: the first one with accents on its letters and two fifths longer, so
//! that text which is not translated shows, and a layout that has no room for more.

use crate::compile::{Catalogue, Part, Pattern};

/// By how much it is longer.
const LONGER: f64 = 0.4;

pub(crate) fn of(mut catalogue: Catalogue) -> Catalogue {
    for pattern in catalogue.messages.values_mut() {
        change(pattern);
        let letters = count(pattern);
        if letters > 0 {
            pattern.push(Part::Text(more(letters)));
        }
    }
    catalogue
}

fn change(pattern: &mut Pattern) {
    for part in pattern {
        match part {
            Part::Text(text) => *text = text.chars().map(accented).collect(),
            Part::Argument(_) => {}
            Part::Choice(_, variants) => {
                for variant in variants {
                    change(&mut variant.pattern);
                }
            }
        }
    }
}

fn count(pattern: &Pattern) -> usize {
    let part = |part: &Part| match part {
        Part::Text(text) => text.chars().filter(|it| it.is_alphabetic()).count(),
        Part::Argument(_) => 0,
        Part::Choice(_, variants) => {
            variants.iter().map(|it| count(&it.pattern)).max().unwrap_or(0)
        }
    };
    pattern.iter().map(part).sum()
}

/// Words of five letters at most, so that they break where words break.
fn more(letters: usize) -> String {
    #[allow(
        clippy::cast_precision_loss,
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "a message is short"
    )]
    let extra = (letters as f64 * LONGER).ceil() as usize;
    let mut text = String::new();
    for at in 0..extra {
        if at % 5 == 0 {
            text.push(' ');
        }
        text.push('~');
    }
    text
}

fn accented(letter: char) -> char {
    const PLAIN: &str = "AEIOUCDGHJKLNRSTUWYZaeioucdghjklnrstwyz";
    const ACCENTED: &str = "ÅÉÎÖÛÇÐĜĤĴĶĻÑŔŠŢÛŴÝŽåéîöûçðĝĥĵķļñŕšţŵýž";
    PLAIN
        .chars()
        .position(|it| it == letter)
        .and_then(|at| ACCENTED.chars().nth(at))
        .unwrap_or(letter)
}
