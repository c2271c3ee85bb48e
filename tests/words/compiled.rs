//! Each message of the first language, with every variant of it, against the
//! `fluent-bundle` library, which implements the syntax as it is published
//! (Fluent Syntax 1.0), and the plural rules of CLDR with it.

use std::fs;
use std::path::{Path, PathBuf};
use std::slice;

use fillwright::message::keys::COUNT;
use fillwright::message::{Argument, Language, english_plural, spoken};
use fluent_bundle::{FluentArgs, FluentBundle, FluentResource, FluentValue};

use crate::compile::{Catalogue, Key, Part, Pattern};

fn files() -> Vec<(String, String)> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("src/words/en");
    let mut paths: Vec<PathBuf> =
        fs::read_dir(folder).expect("a folder").map(|it| it.expect("a file").path()).collect();
    paths.sort();
    let named = |path: &PathBuf| {
        let stem = path.file_stem().expect("a name").to_string_lossy().into_owned();
        (stem, fs::read_to_string(path).expect("it is read"))
    };
    paths.iter().map(named).collect()
}

fn catalogue() -> Catalogue {
    let mut catalogue = Catalogue::default();
    for (stem, text) in files() {
        catalogue.add(&stem, text).expect("it is understood");
    }
    catalogue.resolve().expect("its terms are there")
}

/// What an argument is tried with: the words that choose, counts where plurals do.
fn tried(argument: &str, pattern: &Pattern) -> Vec<Argument<'static>> {
    let mut all = vec![Argument::from(format!("<{argument}>"))];
    for part in pattern {
        let Part::Choice(by, variants) = part else { continue };
        for variant in variants {
            if by == argument {
                let is_plural = ["zero", "one", "two", "few", "many", "other"]
                    .contains(&variant.key.as_str())
                    || variant.key.parse::<usize>().is_ok();
                if is_plural {
                    all.extend([0_usize, 1, 2, 5, 21].map(Argument::from));
                } else {
                    all.push(Argument::from(variant.key.clone()));
                }
            }
            all.extend(tried(argument, &variant.pattern).into_iter().skip(1));
        }
    }
    all
}

fn given(argument: &Argument<'static>) -> FluentValue<'static> {
    match argument {
        Argument::Text(text) => FluentValue::from(text.clone()),
        Argument::Count(count) => FluentValue::from(*count),
        Argument::Sentence(sentence) => FluentValue::from(sentence.say()),
    }
}

/// All of the combinations, or the first thousand.
fn combinations(choices: &[Vec<Argument<'static>>]) -> Vec<Vec<Argument<'static>>> {
    let mut all = vec![Vec::new()];
    for of_one in choices {
        all = all
            .iter()
            .flat_map(|it| {
                of_one.iter().map(move |next| [it.as_slice(), slice::from_ref(next)].concat())
            })
            .take(1000)
            .collect();
    }
    all
}

fn by_the_library(
    bundles: &[(String, FluentBundle<FluentResource>)],
    key: &Key,
    arguments: &[Argument<'static>],
) -> String {
    let (_, bundle) = bundles.iter().find(|it| it.0 == key.name.file).expect("its file");
    let mut args = FluentArgs::new();
    for (name, argument) in key.arguments.iter().zip(arguments) {
        args.set(name.clone(), given(argument));
    }
    // What was flattened: `name` or `name.attribute`.
    let id = &key.name.id;
    let pattern = bundle.get_message(id).and_then(|it| it.value()).or_else(|| {
        id.match_indices('-').find_map(|(at, _)| {
            bundle.get_message(&id[..at])?.get_attribute(&id[at + 1..]).map(|it| it.value())
        })
    });
    let mut errors = Vec::new();
    let said = bundle.format_pattern(pattern.expect("its pattern"), Some(&args), &mut errors);
    assert!(errors.is_empty(), "{id}: {errors:?}");
    said.into_owned()
}

#[test]
fn each_message_reads_as_the_standard_has_it() {
    let files = files();
    let lines = files.iter().flat_map(|(_, text)| text.lines());
    let terms = lines.filter(|line| line.starts_with('-')).collect::<Vec<_>>().join("\n");
    let bundles: Vec<_> = files
        .into_iter()
        .map(|(stem, text)| {
            let mut bundle = FluentBundle::new(vec!["en".parse().expect("a tag")]);
            bundle.set_use_isolating(false);
            for text in [terms.clone(), text] {
                bundle.add_resource_overriding(FluentResource::try_new(text).expect("it is read"));
            }
            (stem, bundle)
        })
        .collect();
    let catalogue = catalogue();
    let keys = catalogue.keys();
    assert_eq!(keys.len(), COUNT);
    let mut compared = 0;
    for (at, key) in keys.iter().enumerate() {
        let pattern = &catalogue.messages[&key.name];
        let choices: Vec<_> = key.arguments.iter().map(|it| tried(it, pattern)).collect();
        for arguments in combinations(&choices) {
            let expected = by_the_library(&bundles, key, &arguments);
            assert_eq!(spoken().fill_in(at, &arguments), expected, "{}", key.name.id);
            compared += 1;
        }
    }
    assert!(compared > COUNT, "{compared} of {COUNT}");
}

#[test]
fn plurals_of_english_are_those_of_cldr() {
    let rules = intl_pluralrules::PluralRules::create(
        "en".parse::<unic_langid::LanguageIdentifier>().expect("a tag"),
        intl_pluralrules::PluralRuleType::CARDINAL,
    )
    .expect("rules");
    for count in 0..200 {
        let category = rules.select(count).expect("a category");
        assert_eq!(english_plural(count), format!("{category:?}").to_lowercase(), "{count}");
    }
}

#[test]
fn the_pseudo_language_says_everything_and_longer() {
    let text = include_str!(concat!(env!("OUT_DIR"), "/en-XA.words"));
    let pseudo = Language::of(text.to_owned(), Box::new(english_plural)).expect("it is complete");
    for (at, key) in catalogue().keys().iter().enumerate() {
        let arguments = vec![Argument::from("1"); key.arguments.len()];
        let first = spoken().fill_in(at, &arguments);
        let other = pseudo.fill_in(at, &arguments);
        let letters = |it: &str| it.chars().filter(|it| it.is_alphabetic()).count();
        let is_longer = other.chars().count() >= first.chars().count() + letters(&first) * 2 / 5;
        assert!(is_longer, "{}: {first} / {other}", key.name.id);
    }
}

#[test]
fn the_text_of_another_build_is_no_language() {
    assert!(Language::of("one\0two\0".into(), Box::new(english_plural)).is_none());
}
