//! Messages as one text: each ends with a NUL, and what is to be put in is marked by
//! control characters, which no message holds (`src/message/pattern.rs` reads them).

use crate::compile::{Catalogue, Key, Part, Pattern};

/// Before the place of an argument, a letter from `a`.
const ARGUMENT: char = '\u{1}';
/// Before the place of the argument that chooses.
const CHOICE: char = '\u{2}';
/// Before the key of a variant.
const VARIANT: char = '\u{3}';
/// Before the key of the variant that stands where no other fits.
const DEFAULT: char = '\u{4}';
/// Between the key of a variant and its pattern.
const PATTERN: char = '\u{5}';
/// After the last variant.
const END: char = '\u{6}';

/// The text of a language, with its messages in the order of the keys.
pub(crate) fn encode(catalogue: &Catalogue, keys: &[Key]) -> Result<String, String> {
    let mut text = String::new();
    for key in keys {
        let pattern = catalogue
            .messages
            .get(&key.name)
            .ok_or_else(|| format!("{} has no message {}", key.name.file, key.name.id))?;
        write(&mut text, pattern, &key.arguments)
            .map_err(|why| format!("{}: {why}", key.name.id))?;
        text.push('\0');
    }
    Ok(text)
}

fn write(text: &mut String, pattern: &Pattern, arguments: &[String]) -> Result<(), String> {
    for part in pattern {
        match part {
            Part::Text(letters) => {
                if letters.chars().any(|it| it < ' ' && it != '\n') {
                    return Err("it holds a control character".into());
                }
                text.push_str(letters);
            }
            Part::Argument(name) => {
                text.push(ARGUMENT);
                text.push(place(name, arguments)?);
            }
            Part::Choice(by, variants) => {
                text.push(CHOICE);
                text.push(place(by, arguments)?);
                for variant in variants {
                    text.push(if variant.is_default { DEFAULT } else { VARIANT });
                    text.push_str(&variant.key);
                    text.push(PATTERN);
                    write(text, &variant.pattern, arguments)?;
                }
                text.push(END);
            }
        }
    }
    Ok(())
}

fn place(name: &str, arguments: &[String]) -> Result<char, String> {
    let at = arguments.iter().position(|it| it == name).ok_or("an argument is unknown")?;
    u8::try_from(at)
        .ok()
        .and_then(|at| b'a'.checked_add(at))
        .map(char::from)
        .ok_or_else(|| "it has too many arguments".into())
}
