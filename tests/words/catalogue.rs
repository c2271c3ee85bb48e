//! A language that lacks a message, or asks for what is not given, is refused by the build.

use crate::compile::Catalogue;

fn catalogue(text: &str) -> Result<Catalogue, String> {
    let mut catalogue = Catalogue::default();
    catalogue.add("fill", text.to_owned())?;
    catalogue.resolve()
}

fn refusal(first: &str, other: &str) -> String {
    let refused = catalogue(other).and_then(|it| it.must_match(&catalogue(first)?));
    refused.expect_err("it should be refused")
}

#[test]
fn every_message_must_be_there() {
    assert_eq!(refusal("a = A\nb = B", "a = A"), "fill has no message b");
}

#[test]
fn no_other_message_may_be_there() {
    assert_eq!(refusal("a = A", "a = A\nb = B"), "fill has an unknown message b");
}

#[test]
fn an_argument_must_be_known() {
    assert_eq!(refusal("a = A { $volume }", "a = A { $level }"), "fill: a has no argument $level");
}

#[test]
fn an_argument_may_be_left_out() {
    let first = catalogue("a = A { $volume }").expect("it is read");
    assert_eq!(catalogue("a = A").expect("it is read").must_match(&first), Ok(()));
}

#[test]
fn what_is_not_understood_is_refused() {
    for text in
        ["a", "a = { NUMBER($b) }", "a = { b }", "a = { -b }", "a = { $for }", "a = A\na = A"]
    {
        assert!(catalogue(text).is_err(), "{text}");
    }
    assert!(catalogue("-a = { -b }\n-b = { -a }\nc = { -a }").is_err());
}
