//! What is said of where a number comes from.

use crate::message::keys::practice;
use crate::source::{Citation, Source};

/// What a source cites.
pub fn citation(source: &Source) -> &'static str {
    match source.citation {
        Citation::Published(text) => text,
        Citation::Words(words) | Citation::WithCaveat(words) => words.say(),
    }
}

/// A source, with what has to be said of it.
pub fn cited(source: &Source) -> String {
    let citation = citation(source);
    match (source.caveat(), source.citation) {
        (Some(caveat), Citation::Published(_) | Citation::Words(_)) => {
            practice::Cited { caveat, citation }.say()
        }
        _ => citation.to_owned(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::hardware::constants::VISCOSITY_RULE;
    use crate::source::Confidence;
    use crate::{fuel, hardware, methods, tank};

    #[test]
    fn what_was_not_looked_up_says_so() {
        let constants = fuel::constants::ALL.iter().chain(hardware::constants::ALL);
        for source in constants.map(|constant| constant.source).chain([VISCOSITY_RULE]) {
            if let Some(caveat) = source.caveat() {
                let text = citation(&source);
                assert!(matches!(source.citation, Citation::WithCaveat(_)), "{text}");
                assert!(text.contains(caveat.say()), "{text}");
                assert_eq!(source.confidence, Confidence::Weak, "{text}");
            }
        }
    }

    #[test]
    fn a_caveat_stands_before_what_does_not_say_it_itself() {
        let figure = tank::BOUNDARY_ERROR.source;
        assert_eq!(
            cited(&figure),
            "common practice, no source: a careful tube test repeats within some two points"
        );
        assert_eq!(
            cited(&fuel::constants::PETROL_DENSITY.source),
            "a middling summer petrol without oxygenates: common practice, no source"
        );
        assert_eq!(
            cited(&tank::DISPENSER_ERROR.source),
            "Directive 2014/32/EU, Annex VII (MI-005), Table 2, class 0.5"
        );
    }

    #[test]
    fn every_source_has_a_title() {
        for formula in methods::methods().iter().flat_map(|method| &method.formulas) {
            for source in &formula.working.sources {
                let title = citation(source);
                assert!(title.len() > 8, "{:?}: {title}", formula.working.name);
            }
        }
        assert!(tank::figures().iter().all(|it| !citation(&it.source).is_empty()));
    }
}
