//! The Rust names of messages: a constant for one without arguments, a structure with a
//! field for each argument for the rest, so a missing or unknown one does not compile.

use std::fmt::Write;

use crate::compile::Key;

/// The module `messages`.
pub(crate) fn rust(keys: &[Key], languages: &[String]) -> String {
    let mut code = String::new();
    let tags: Vec<String> = languages.iter().map(|it| format!("{it:?}")).collect();
    // Writing to a string cannot fail.
    let _ = writeln!(
        code,
        "/// The tags of the languages, the first one first.\npub const LANGUAGES: [&str; {}] = [{}];",
        tags.len(),
        tags.join(", ")
    );
    let _ = writeln!(
        code,
        "/// How many messages there are.\npub const COUNT: usize = {};",
        keys.len()
    );
    let mut file = "";
    for (at, key) in keys.iter().enumerate() {
        if key.name.file != file {
            if !file.is_empty() {
                find(&mut code, keys, file);
            }
            file = &key.name.file;
            let _ =
                writeln!(code, "/// Messages of {file}.\npub mod {} {{", file.replace('-', "_"));
        }
        message(&mut code, at, key);
    }
    if !file.is_empty() {
        find(&mut code, keys, file);
    }
    code
}

fn message(code: &mut String, at: usize, key: &Key) {
    let id = &key.name.id;
    let says = key.says.replace('`', "'");
    if key.arguments.is_empty() {
        let name = id.replace('-', "_").to_uppercase();
        let _ = writeln!(
            code,
            "/// `{says}`\npub const {name}: super::super::Message = super::super::Message({at});"
        );
        return;
    }
    let name: String = id.split('-').map(capital).collect();
    let types: Vec<String> = (0..key.arguments.len()).map(|it| format!("A{it}")).collect();
    let fields: Vec<String> = key
        .arguments
        .iter()
        .zip(&types)
        .map(|(field, a)| format!("/// `${field}`\npub {field}: {a}"))
        .collect();
    let bounds: Vec<String> =
        types.iter().map(|a| format!("{a}: Into<super::super::Argument<'a>>")).collect();
    let given: Vec<String> =
        key.arguments.iter().map(|field| format!("self.{field}.into()")).collect();
    let given = given.join(", ");
    let _ = writeln!(
        code,
        "/// `{says}`\n#[derive(Clone, Copy, Debug)]\npub struct {name}<{}> {{ {} }}\n\
         impl<'a, {}> {name}<{}> {{ /// The message, in the language that is spoken.\n\
         pub fn say(self) -> String {{ super::super::spoken().fill_in({at}, &[{given}]) }}\n\
         /// The message, to be said later.\n\
         pub fn sentence(self) -> super::super::Sentence {{\n\
         super::super::Sentence::new({at}, &[{given}]) }} }}",
        types.join(", "),
        fields.join(", "),
        bounds.join(", "),
        types.join(", ")
    );
}

/// Messages that belong to a row of data are found by its name.
fn find(code: &mut String, keys: &[Key], file: &str) {
    let mut rows = String::new();
    for (at, key) in keys.iter().enumerate() {
        if key.name.file == file && key.arguments.is_empty() {
            let _ = write!(rows, "{:?} => {at},", key.name.id);
        }
    }
    if rows.is_empty() {
        code.push_str("}\n");
        return;
    }
    let _ = writeln!(
        code,
        "/// The message with a name that is data, such as that of a constant.\n\
         #[allow(dead_code, reason = \"not every file is of rows of data\")]\n\
         pub(crate) fn find(id: &str) -> Option<super::super::Message> {{\n\
         Some(super::super::Message(match id {{ {rows} _ => return None }})) }}\n}}"
    );
}

fn capital(word: &str) -> String {
    let mut letters = word.chars();
    letters.next().map_or_else(String::new, |first| first.to_uppercase().chain(letters).collect())
}
