//! What a folder of Fluent files says, as patterns that need no further look-up.

use std::collections::{BTreeMap, BTreeSet};

use fluent_syntax::ast;
use fluent_syntax::parser;

/// A part of a message.
#[derive(Clone, Debug, PartialEq)]
pub(crate) enum Part {
    /// Letters as they stand.
    Text(String),
    /// What an argument says.
    Argument(String),
    /// One of several, by an argument.
    Choice(String, Vec<Variant>),
}

/// One of several ways to go on.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Variant {
    /// A word, a number or a plural category.
    pub(crate) key: String,
    /// Whether it stands where none of the others fits.
    pub(crate) is_default: bool,
    pub(crate) pattern: Pattern,
}

/// All of a message.
pub(crate) type Pattern = Vec<Part>;

/// The name of a message: its file, and its name there.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) struct Name {
    pub(crate) file: String,
    pub(crate) id: String,
}

/// A message's name, and the names of its arguments in order.
#[derive(Clone, Debug)]
pub(crate) struct Key {
    pub(crate) name: Name,
    pub(crate) arguments: Vec<String>,
    /// The first line of what it says, for its documentation.
    pub(crate) says: String,
}

/// All messages of a language.
#[derive(Clone, Debug, Default)]
pub(crate) struct Catalogue {
    pub(crate) messages: BTreeMap<Name, Pattern>,
    /// What `{ -term }` stands for.
    terms: BTreeMap<String, Pattern>,
}

/// How a reference is kept until all files are read.
const REFERENCE: char = '\u{e000}';

impl Catalogue {
    /// Takes in a file.
    pub(crate) fn add(&mut self, file: &str, text: String) -> Result<(), String> {
        let resource = parser::parse(text).map_err(|(_, errors)| {
            errors.iter().map(ToString::to_string).collect::<Vec<_>>().join("; ")
        })?;
        for entry in resource.body {
            match entry {
                ast::Entry::Message(message) => self.add_message(file, message)?,
                ast::Entry::Term(term) => {
                    let pattern = pattern(&term.value)?;
                    if self.terms.insert(term.id.name.clone(), pattern).is_some() {
                        return Err(format!("-{} is there twice", term.id.name));
                    }
                }
                ast::Entry::Junk { content } => return Err(format!("not understood: {content}")),
                _ => {}
            }
        }
        Ok(())
    }

    fn add_message(&mut self, file: &str, message: ast::Message<String>) -> Result<(), String> {
        let id = message.id.name;
        let named = |id: String| Name { file: file.to_owned(), id };
        let mut all = Vec::new();
        if let Some(value) = message.value {
            all.push((named(id.clone()), pattern(&value)?));
        }
        for attribute in message.attributes {
            let id = format!("{id}-{}", attribute.id.name);
            all.push((named(id), pattern(&attribute.value)?));
        }
        for (name, pattern) in all {
            let id = name.id.clone();
            if self.messages.insert(name, pattern).is_some() {
                return Err(format!("{id} is there twice"));
            }
        }
        Ok(())
    }

    /// The same with every term put in.
    pub(crate) fn resolve(mut self) -> Result<Self, String> {
        let terms = self.terms.clone();
        for (name, pattern) in &mut self.messages {
            *pattern = put_in(pattern, &terms, 0).map_err(|why| format!("{}: {why}", name.id))?;
        }
        Ok(self)
    }

    /// The names of its messages and of their arguments.
    pub(crate) fn keys(&self) -> Vec<Key> {
        let key = |(name, pattern): (&Name, &Pattern)| Key {
            name: name.clone(),
            arguments: arguments(pattern).into_iter().collect(),
            says: outline(pattern),
        };
        self.messages.iter().map(key).collect()
    }

    /// Whether a language says all that the first does, with no argument that the
    /// program does not give.
    pub(crate) fn must_match(&self, first: &Self) -> Result<(), String> {
        for name in first.messages.keys() {
            if !self.messages.contains_key(name) {
                return Err(format!("{} has no message {}", name.file, name.id));
            }
        }
        for (name, pattern) in &self.messages {
            let Some(known) = first.messages.get(name) else {
                return Err(format!("{} has an unknown message {}", name.file, name.id));
            };
            let known = arguments(known);
            if let Some(unknown) = arguments(pattern).into_iter().find(|it| !known.contains(it)) {
                return Err(format!("{}: {} has no argument ${unknown}", name.file, name.id));
            }
        }
        Ok(())
    }
}

fn put_in(
    pattern: &Pattern,
    terms: &BTreeMap<String, Pattern>,
    depth: usize,
) -> Result<Pattern, String> {
    if depth > 8 {
        return Err("terms stand in a circle".into());
    }
    let mut whole = Pattern::new();
    for part in pattern {
        match part {
            Part::Argument(name) if name.starts_with(REFERENCE) => {
                let name = name.trim_start_matches(REFERENCE);
                let term = terms.get(name).ok_or_else(|| format!("there is no term -{name}"))?;
                whole.extend(put_in(term, terms, depth + 1)?);
            }
            Part::Choice(by, variants) => {
                let variants = variants
                    .iter()
                    .map(|it| {
                        Ok(Variant { pattern: put_in(&it.pattern, terms, depth)?, ..it.clone() })
                    })
                    .collect::<Result<_, String>>()?;
                whole.push(Part::Choice(by.clone(), variants));
            }
            other => whole.push(other.clone()),
        }
    }
    Ok(whole)
}

/// The arguments of a message.
pub(crate) fn arguments(pattern: &Pattern) -> BTreeSet<String> {
    let mut all = BTreeSet::new();
    for part in pattern {
        match part {
            Part::Text(_) => {}
            Part::Argument(name) => {
                all.insert(name.clone());
            }
            Part::Choice(by, variants) => {
                all.insert(by.clone());
                all.extend(variants.iter().flat_map(|it| arguments(&it.pattern)));
            }
        }
    }
    all
}

fn outline(pattern: &Pattern) -> String {
    let part = |part: &Part| match part {
        Part::Text(text) => text.replace('\n', " "),
        Part::Argument(name) => format!("{{ ${name} }}"),
        Part::Choice(_, variants) => variants
            .iter()
            .find(|it| it.is_default)
            .map_or_else(String::new, |it| outline(&it.pattern)),
    };
    pattern.iter().map(part).collect()
}

fn pattern(pattern: &ast::Pattern<String>) -> Result<Pattern, String> {
    let mut parts = Pattern::new();
    for element in &pattern.elements {
        match element {
            ast::PatternElement::TextElement { value } => text(&mut parts, value),
            ast::PatternElement::Placeable { expression } => placeable(&mut parts, expression)?,
        }
    }
    Ok(parts)
}

fn text(parts: &mut Pattern, more: &str) {
    match parts.last_mut() {
        Some(Part::Text(text)) => text.push_str(more),
        _ => parts.push(Part::Text(more.to_owned())),
    }
}

fn placeable(parts: &mut Pattern, expression: &ast::Expression<String>) -> Result<(), String> {
    match expression {
        ast::Expression::Inline(inline) => inline_part(parts, inline),
        ast::Expression::Select { selector, variants } => {
            let ast::InlineExpression::VariableReference { id } = selector else {
                return Err("only an argument can choose".into());
            };
            let variants = variants
                .iter()
                .map(|it| {
                    let key = match &it.key {
                        ast::VariantKey::Identifier { name } => name.clone(),
                        ast::VariantKey::NumberLiteral { value } => value.clone(),
                    };
                    Ok(Variant { key, is_default: it.default, pattern: pattern(&it.value)? })
                })
                .collect::<Result<_, String>>()?;
            parts.push(Part::Choice(argument(&id.name)?, variants));
            Ok(())
        }
    }
}

fn inline_part(parts: &mut Pattern, inline: &ast::InlineExpression<String>) -> Result<(), String> {
    match inline {
        ast::InlineExpression::StringLiteral { value } => {
            let mut unescaped = String::new();
            fluent_syntax::unicode::unescape_unicode(&mut unescaped, value)
                .map_err(|why| why.to_string())?;
            text(parts, &unescaped);
        }
        ast::InlineExpression::NumberLiteral { value } => text(parts, value),
        ast::InlineExpression::VariableReference { id } => {
            parts.push(Part::Argument(argument(&id.name)?));
        }
        ast::InlineExpression::TermReference { id, attribute: None, arguments: None } => {
            parts.push(Part::Argument(format!("{REFERENCE}{}", id.name)));
        }
        ast::InlineExpression::Placeable { expression } => placeable(parts, expression)?,
        _ => return Err("functions and references to messages are not read: use a term".into()),
    }
    Ok(())
}

/// A name of an argument, as Rust spells names.
fn argument(name: &str) -> Result<String, String> {
    const KEYWORDS: [&str; 12] =
        ["as", "in", "for", "if", "type", "move", "use", "where", "self", "match", "ref", "fn"];
    let name = name.replace('-', "_");
    if KEYWORDS.contains(&name.as_str()) {
        return Err(format!("${name} is a word of the programming language: choose another"));
    }
    Ok(name)
}
