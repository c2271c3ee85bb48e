//! The language that is spoken: a page speaks one at a time.

use std::cell::Cell;
use std::fmt;

use super::keys::COUNT;
use super::{Argument, Message, Sentence, pattern};

/// The plural category of a count, by the rules of CLDR: `one`, `other` and so on.
pub type PluralRule = Box<dyn Fn(usize) -> &'static str>;

/// The messages of a language.
pub struct Language {
    texts: Vec<&'static str>,
    plural: PluralRule,
}

impl fmt::Debug for Language {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_struct("Language").field("messages", &self.texts.len()).finish_non_exhaustive()
    }
}

impl Language {
    /// A language by the text that the build made of its messages; nothing where the text
    /// belongs to another build.
    ///
    /// The text is kept for as long as the page is open: what is said refers to it, and a
    /// page speaks few languages in its life.
    pub fn of(text: String, plural: PluralRule) -> Option<Self> {
        let language = Self::of_texts(String::leak(text), plural);
        (language.texts.len() == COUNT).then_some(language)
    }

    fn of_texts(text: &'static str, plural: PluralRule) -> Self {
        Self { texts: text.split_terminator('\0').collect(), plural }
    }

    /// The first language, which the program carries with it.
    fn first() -> Self {
        Self::of_texts(
            include_str!(concat!(env!("OUT_DIR"), "/en.words")),
            Box::new(english_plural),
        )
    }

    /// A message by its place among the names in order, with its arguments in the order of
    /// their names.
    pub fn fill_in(&self, message: usize, arguments: &[Argument<'_>]) -> String {
        let say = |sentence: &Sentence| {
            let (message, arguments) = sentence.parts();
            self.fill_in(message, arguments)
        };
        pattern::fill_in(self.text(message), arguments, &self.plural, &say)
    }

    fn text(&self, message: usize) -> &'static str {
        self.texts.get(message).copied().unwrap_or_default()
    }
}

/// The plural category of a count in English.
///
/// Source: CLDR plural rules of `en`, `one: i = 1 and v = 0`.
pub fn english_plural(count: usize) -> &'static str {
    if count == 1 { "one" } else { "other" }
}

thread_local! {
    static SPOKEN: Cell<Option<&'static Language>> = const { Cell::new(None) };
}

/// Speaks this language from now on.
pub fn speak(language: Language) {
    keep(language);
}

fn keep(language: Language) -> &'static Language {
    let kept: &'static Language = Box::leak(Box::new(language));
    SPOKEN.set(Some(kept));
    kept
}

/// The language that is spoken: the first one until another was chosen.
pub fn spoken() -> &'static Language {
    SPOKEN.get().unwrap_or_else(|| keep(Language::first()))
}

impl Message {
    /// The message, in the language that is spoken.
    pub fn say(self) -> &'static str {
        spoken().text(self.0)
    }
}

impl Sentence {
    /// The message, in the language that is spoken.
    pub fn say(&self) -> String {
        let (message, arguments) = self.parts();
        spoken().fill_in(message, arguments)
    }
}
