//! Whatever a document holds: what is shared of it arrives.

use fillwright::answers::fill::interpret;
use fillwright::answers::tank::{History, LogReading};
use fillwright::answers::trip::TripReading;
use fillwright::document::{Document, StartForm};
use fillwright::quantity::notation::DecimalMark;
use fillwright::share::{LinkError, Shared};
use proptest::prelude::*;

use crate::documents::document;

/// What there is to share, as far as it starts from something known.
fn shared(document: &Document) -> Vec<Shared> {
    let printer = document.settings.printer(DecimalMark::Point);
    let history = History::of(&LogReading::of(&document.here, &printer));
    let fill = interpret(document, history.estimator.as_ref(), &printer);
    let trip = TripReading::of(document, history.estimate().as_ref(), &printer);
    let fill = Shared::fill_of(document, fill.asked.as_ref(), &printer);
    let trip = Shared::trip_of(document, trip.asked.as_ref(), &printer);
    assert!(fill.is_ok() || document.here.fill.start == StartForm::Log);
    assert!(trip.is_ok() || document.here.route.start == StartForm::Log);
    fill.into_iter().chain(trip).chain([Shared::car_of(document)]).collect()
}

proptest! {
    #[test]
    fn what_is_shared_arrives_unless_it_is_refused_in_words(document in document()) {
        for shared in shared(&document) {
            match shared.to_link() {
                Ok(link) => prop_assert_eq!(Shared::from_link(&link), Ok(shared)),
                Err(LinkError::Blank { kind }) => prop_assert_eq!(kind, shared.kind()),
                Err(error) => prop_assert!(
                    matches!(error, LinkError::Bounds(_) | LinkError::TooMuch { .. }),
                    "{error}"
                ),
            }
        }
    }

    #[test]
    fn any_text_is_read_or_refused(tag in "[fct]?[0-9]?", payload in "[A-Za-z0-9_-]{0,200}") {
        // By chance no text has the checksum of the compression.
        let link = format!("{tag}.{payload}");
        prop_assert!(Shared::from_link(&link).is_err());
        prop_assert!(Shared::from_link(&payload).is_err());
    }
}
