//! Where each number comes from: the formulas of the app, each with its symbols, its
//! sources and an example.
//!
//! A formula stands in one place: where it is worked out for a person's own figures.
//! Here those workings are run on the invented example and told apart by symbol, so
//! what is shown cannot differ from what is computed with.

mod trip;

mod car;
mod example;
mod fuel;

use crate::fuel::Constant;
use crate::message::{Message, Sentence};
use crate::source::{Source, SourceKind};
use crate::workings::Working;
use example::Example;

/// How one thing is worked out.
#[derive(Clone, Debug, PartialEq)]
pub struct Method {
    /// A short name that never changes, for links.
    pub id: &'static str,
    /// What is worked out.
    pub title: Message,
    /// What to know of it: sentences.
    pub words: &'static [Message],
    /// Its formulas, each with an example.
    pub formulas: Vec<Formula>,
}

/// A formula with its example.
#[derive(Clone, Debug, PartialEq)]
pub struct Formula {
    /// The formula, the numbers of the example, what they come to, the sources.
    pub working: Working,
    /// What its symbols mean, in the order in which they stand in it.
    pub symbols: Vec<Symbol>,
}

/// A symbol of a formula.
#[derive(Clone, Debug, PartialEq)]
pub struct Symbol {
    /// As it is written.
    pub symbol: String,
    /// What it stands for.
    pub meaning: Sentence,
    /// Its unit; empty for a pure number.
    pub unit: String,
}

/// How far the word of a source goes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum SourceStanding {
    /// Published: a standard, a law, a paper, a handbook, a data set, a library.
    Published,
    /// So by definition.
    Defined,
    /// Follows from other rules by arithmetic.
    Derived,
    /// Common practice of the trade.
    CommonPractice,
    /// Recalled, not looked up.
    FromMemory,
}

impl SourceStanding {
    /// Of a source.
    pub fn of(source: &Source) -> Self {
        match source.kind {
            SourceKind::Standard
            | SourceKind::Law
            | SourceKind::Paper
            | SourceKind::Handbook
            | SourceKind::Dataset
            | SourceKind::Library => Self::Published,
            SourceKind::Definition => Self::Defined,
            SourceKind::Derivation => Self::Derived,
            SourceKind::CommonPractice => Self::CommonPractice,
            SourceKind::FromMemory => Self::FromMemory,
        }
    }
}

/// Every method, in the order in which to show them.
pub fn methods() -> Vec<Method> {
    let example = Example::new();
    topics().map(|topic| topic.method(&example)).collect()
}

/// The ids of all methods, without working anything out.
pub fn ids() -> impl Iterator<Item = &'static str> {
    topics().map(|topic| topic.id)
}

fn topics() -> impl Iterator<Item = &'static Topic> {
    fuel::TOPICS.iter().chain(car::TOPICS).chain(trip::TOPICS)
}

/// Which workings of the example belong to a method.
struct Topic {
    id: &'static str,
    title: Message,
    words: &'static [Message],
    /// Where its lines are looked for.
    lines: fn(&Example) -> Vec<Working>,
    /// The symbol of each line, and its name where that of the example is too narrow.
    picks: &'static [(&'static str, Option<Message>)],
    /// Symbols that neither a line nor a constant explains: meaning and unit.
    glossary: &'static [(&'static str, Message, &'static str)],
}

impl Topic {
    fn method(&self, example: &Example) -> Method {
        let lines = (self.lines)(example);
        let of_pick = |(symbol, name): &(&str, Option<Message>)| {
            let alike = lines.iter().filter(move |line| line.symbol == *symbol);
            // One of several alike stands for them, unless each has a name of its own.
            let count = if name.is_some() { 1 } else { usize::MAX };
            alike
                .take(count)
                .map(|line| {
                    let mut working = line.clone();
                    if let Some(name) = name {
                        working.name = (*name).into();
                    }
                    Formula { symbols: self.symbols(&working, &lines), working }
                })
                .collect::<Vec<_>>()
        };
        Method {
            id: self.id,
            title: self.title,
            words: self.words,
            formulas: self.picks.iter().flat_map(of_pick).collect(),
        }
    }

    fn symbols(&self, working: &Working, lines: &[Working]) -> Vec<Symbol> {
        let mut symbols: Vec<Symbol> = Vec::new();
        for symbol in letters_of(&working.formula) {
            if symbols.iter().any(|known| known.symbol == symbol) {
                continue;
            }
            if let Some((meaning, unit)) = self.meaning(symbol, lines) {
                symbols.push(Symbol { symbol: symbol.to_owned(), meaning, unit });
            }
        }
        symbols
    }

    /// What a symbol means: as this method says, as an earlier line does, or as the
    /// constants do.
    fn meaning(&self, symbol: &str, lines: &[Working]) -> Option<(Sentence, String)> {
        let own = self.glossary.iter().find(|(known, ..)| *known == symbol);
        if let Some((_, meaning, unit)) = own {
            return Some(((*meaning).into(), (*unit).to_owned()));
        }
        if let Some(line) = lines.iter().find(|line| line.symbol == symbol) {
            return Some((line.name.clone(), line.unit.to_owned()));
        }
        let constant = constants().find(|constant| constant.symbol == symbol)?;
        let unit = if constant.unit == "1" { "" } else { constant.unit };
        Some((constant.name.into(), unit.to_owned()))
    }
}

/// Every constant that has a symbol.
fn constants() -> impl Iterator<Item = &'static Constant> {
    let hardware = crate::hardware::constants::ALL;
    crate::fuel::constants::ALL.iter().chain(hardware).copied()
}

/// The symbols of a formula as it is written.
fn letters_of(formula: &str) -> impl Iterator<Item = &str> {
    formula
        .split(|letter: char| !(letter.is_alphanumeric() || letter == '_' || letter == '.'))
        .filter(|word| word.starts_with(char::is_alphabetic) && *word != "sqrt")
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::collections::HashSet;

    /// exmex 0.21, a general-purpose expression evaluator.
    #[test]
    fn every_example_can_be_checked_by_hand() {
        for formula in methods().iter().flat_map(|method| &method.formulas) {
            let line = &formula.working;
            let evaluated: f64 = exmex::eval_str(&line.numbers).unwrap();
            approx::assert_relative_eq!(evaluated, line.value, max_relative = 1e-5, epsilon = 1e-6);
        }
    }

    #[test]
    fn nothing_that_is_picked_is_missing() {
        let example = Example::new();
        for topic in topics() {
            let lines = (topic.lines)(&example);
            for (symbol, _) in topic.picks {
                let found = lines.iter().any(|line| line.symbol == *symbol);
                assert!(found, "{}: {symbol}", topic.id);
            }
            assert!(!topic.words.is_empty(), "{}", topic.id);
        }
    }

    #[test]
    fn every_symbol_is_explained_and_none_in_vain() {
        let example = Example::new();
        for topic in topics() {
            let method = topic.method(&example);
            let mut used = HashSet::new();
            for formula in &method.formulas {
                let explained: HashSet<_> =
                    formula.symbols.iter().map(|it| it.symbol.as_str()).collect();
                for symbol in letters_of(&formula.working.formula) {
                    assert!(explained.contains(symbol), "{}: {symbol}", topic.id);
                    used.insert(symbol);
                }
            }
            for (symbol, ..) in topic.glossary {
                assert!(used.contains(symbol), "{}: {symbol}", topic.id);
            }
        }
    }

    /// Volumes, ratios of volumes and the like follow from geometry alone and name no
    /// source.
    #[test]
    fn every_method_names_a_source() {
        for method in methods() {
            let named = method.formulas.iter().any(|it| !it.working.sources.is_empty());
            assert!(named, "{}", method.id);
        }
    }

    #[test]
    fn ids_are_unique() {
        let all: Vec<_> = ids().collect();
        assert_eq!(all.iter().collect::<HashSet<_>>().len(), all.len());
    }

    #[test]
    fn symbols_are_told_from_numbers_and_functions() {
        let found: Vec<_> = letters_of("1.18 * sqrt((t + 273) / 298) ^ x_a - M_N2a").collect();
        assert_eq!(found, ["t", "x_a", "M_N2a"]);
    }
}
