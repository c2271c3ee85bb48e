//! A message with its arguments put in: what `tools/words/encode.rs` wrote, read.

use std::str::Chars;

use super::{Argument, Sentence};

const ARGUMENT: char = '\u{1}';
const CHOICE: char = '\u{2}';
const VARIANT: char = '\u{3}';
const DEFAULT: char = '\u{4}';
const PATTERN: char = '\u{5}';
const END: char = '\u{6}';

/// A message with its arguments put in.
pub(super) fn fill_in(
    pattern: &str,
    arguments: &[Argument<'_>],
    plural: &dyn Fn(usize) -> &'static str,
    say: &dyn Fn(&Sentence) -> String,
) -> String {
    let mut said = String::with_capacity(pattern.len() + 16 * arguments.len());
    Filling { rest: pattern.chars(), arguments, plural, say }.write(&mut said);
    said
}

struct Filling<'a> {
    rest: Chars<'a>,
    arguments: &'a [Argument<'a>],
    plural: &'a dyn Fn(usize) -> &'static str,
    say: &'a dyn Fn(&Sentence) -> String,
}

impl<'a> Filling<'a> {
    /// Writes as far as the pattern goes, and tells which mark ended it.
    fn write(&mut self, said: &mut String) -> Option<char> {
        while let Some(letter) = self.rest.next() {
            match letter {
                ARGUMENT => match self.argument() {
                    Some(Argument::Text(text)) => said.push_str(text),
                    Some(Argument::Count(count)) => said.push_str(&count.to_string()),
                    Some(Argument::Sentence(sentence)) => said.push_str(&(self.say)(sentence)),
                    None => {}
                },
                CHOICE => self.choose(said),
                VARIANT | DEFAULT | END => return Some(letter),
                letter => said.push(letter),
            }
        }
        None
    }

    fn argument(&mut self) -> Option<&'a Argument<'a>> {
        let place = u32::from(self.rest.next()?).checked_sub(u32::from('a'))?;
        self.arguments.get(usize::try_from(place).ok()?)
    }

    /// Writes the first variant that fits: by its word, its number or its plural category.
    fn choose(&mut self, said: &mut String) {
        let (word, category) = match self.argument() {
            Some(Argument::Text(text)) => (text.to_string(), None),
            Some(Argument::Count(count)) => {
                let count = *count;
                (count.to_string(), Some((self.plural)(count)))
            }
            Some(Argument::Sentence(_)) | None => (String::new(), None),
        };
        let mut chosen: Option<(u8, String)> = None;
        let mut mark = self.rest.next();
        while let Some(VARIANT | DEFAULT) = mark {
            let key: String = self.rest.by_ref().take_while(|it| *it != PATTERN).collect();
            let fits = if key == word {
                3
            } else if category == Some(key.as_str()) {
                2
            } else {
                u8::from(mark == Some(DEFAULT))
            };
            let mut text = String::new();
            mark = self.write(&mut text);
            if fits > chosen.as_ref().map_or(0, |it| it.0) {
                chosen = Some((fits, text));
            }
        }
        if let Some((_, text)) = chosen {
            said.push_str(&text);
        }
    }
}
