//! Links that came from here, whole and ruined, and links that somebody made to do
//! harm: each is refused in words or read, and nothing that is here is lost to it.

use base64::Engine;
use base64::engine::general_purpose::URL_SAFE_NO_PAD;
use fillwright::answers::fill::interpret;
use fillwright::answers::tank::{History, LogReading};
use fillwright::answers::trip::TripReading;
use fillwright::document::{AimForm, Document, Id, SCHEMA, StartForm};
use fillwright::quantity::notation::{DecimalMark, Entry};
use fillwright::share::{
    BoundsError, Kind, LARGEST_PAYLOAD, LONGEST_LINK, LinkError, Picture, PictureError, Shared,
};
use fillwright::words;
use miniz_oxide::deflate::compress_to_vec_zlib;

/// What the invented example has to share, one of each kind.
pub(crate) fn of_the_example() -> [Shared; 3] {
    let demo = Document::demo();
    let printer = demo.settings.printer(DecimalMark::Point);
    let history = History::of(&LogReading::of(&demo.here, &printer));
    let fill = interpret(&demo, history.estimator.as_ref(), &printer);
    let trip = TripReading::of(&demo, history.estimate().as_ref(), &printer);
    [
        Shared::fill_of(&demo, fill.asked.as_ref(), &printer).unwrap(),
        Shared::car_of(&demo),
        Shared::trip_of(&demo, trip.asked.as_ref(), &printer).unwrap(),
    ]
}

/// A link of this form around any text.
pub(crate) fn link_around(tag: &str, text: &[u8]) -> String {
    format!("{tag}.{}", URL_SAFE_NO_PAD.encode(compress_to_vec_zlib(text, 6)))
}

fn id() -> Id {
    Id::new("taken").unwrap()
}

#[test]
fn the_example_goes_through_a_link_unchanged() {
    // Bounds, not wishes: short enough for a QR code that a telephone can read.
    for (shared, longest) in of_the_example().into_iter().zip([900, 2000, 1400]) {
        let link = shared.to_link().unwrap();
        assert!(link.len() <= longest, "{} characters: {link}", link.len());
        assert_eq!(Shared::from_link(&link).unwrap(), shared);
    }
}

#[test]
fn what_the_log_tells_is_written_out_and_never_surer_than_it_was() {
    let demo = Document::demo();
    let printer = demo.settings.printer(DecimalMark::Point);
    let history = History::of(&LogReading::of(&demo.here, &printer));
    let told = interpret(&demo, history.estimator.as_ref(), &printer).asked.unwrap();
    let [shared, ..] = of_the_example();
    assert_eq!(shared.fill().start, StartForm::Typed);
    let typed = interpret(shared.document(), None, &printer).asked.expect("a fill to read");
    let (told, typed) = (&told.problem.tank, &typed.problem.tank);
    assert!(typed.level.low() <= told.level.low() && told.level.high() <= typed.level.high());
    assert!(typed.share.low() <= told.share.low() && told.share.high() <= typed.share.high());
    assert!(typed.ron.unwrap() <= told.ron.unwrap());
    // Nor much less sure: a tenth of a litre and of a per cent at each end.
    assert!((typed.share.high().percent() - told.share.high().percent()) < 0.11);

    let mut blank = demo.clone();
    blank.here.log = fillwright::document::Log::default();
    let asked = interpret(&blank, None, &printer).asked;
    assert_eq!(Shared::fill_of(&blank, asked.as_ref(), &printer), Err(LinkError::UnknownContents));
}

#[test]
fn a_link_holds_neither_the_log_nor_where_somebody_is() {
    let mut demo = Document::demo();
    demo.here.fill.start = StartForm::Typed;
    demo.here.fill.place = "Secret place".into();
    let printer = demo.settings.printer(DecimalMark::Point);
    let fill = Shared::fill_of(&demo, None, &printer).unwrap();
    for shared in [fill, Shared::car_of(&demo)] {
        let text = shared.document().to_json().unwrap();
        for secret in ["Secret place", "Jutland", "84 Hz"] {
            assert!(!text.contains(secret), "{secret} in {text}");
        }
    }
}

#[test]
fn a_taken_car_stands_beside_the_others_and_is_whole() {
    let mut document = super::mutated::logged();
    let before = document.here.clone();
    let [_, car, _] = of_the_example();
    document.take_shared(&car, id());
    assert_eq!(document.here.id, id());
    assert!(document.here.demo, "an invented car stays one");
    assert_eq!(document.others, [before]);
    let (came, now) = (car.hardware(), &document.here.hardware);
    let target = |it: &fillwright::document::HardwareForm| {
        it.curves.iter().find(|curve| curve.id == it.target).map(|curve| curve.name.clone())
    };
    assert!(target(came).is_some());
    assert_eq!(target(now), target(came));
    for (came, now) in came.curves.iter().zip(&now.curves) {
        let name = |id: Option<u32>, car: &fillwright::document::Car| {
            let found = car.calibrations.iter().find(|it| Some(it.id) == id);
            found.map(|it| it.name.clone())
        };
        assert!(came.calibration.is_some());
        assert_eq!(name(now.calibration, &document.here.car), name(came.calibration, car.car()));
    }
}

#[test]
fn a_taken_fill_or_trip_takes_the_place_of_the_one_at_hand_alone() {
    for shared in of_the_example() {
        if shared.kind() == Kind::Car {
            continue;
        }
        let mut document = super::mutated::logged();
        let before = document.clone();
        document.here.fill.aim_share = "E11".into();
        document.here.route.stops.truncate(1);
        document.take_shared(&shared, id());
        let car =
            |it: &Document| (it.here.car.clone(), it.here.hardware.clone(), it.here.log.clone());
        assert_eq!(car(&document), car(&before));
        if shared.kind() == Kind::Fill {
            assert_eq!(document.here.fill.aim_share, "E30");
            assert_eq!(document.here.route.stops.len(), 1);
        } else {
            assert_eq!(document.here.fill.aim_share, "E11");
            let kept = |it: &Document| -> Vec<Vec<u32>> {
                it.here.route.stops.iter().map(|stop| stop.calibrations.clone()).collect()
            };
            // This car has the same calibrations.
            assert_eq!(kept(&document), kept(&before));
            let fuels = document.here.route.stops.iter().flat_map(|it| &it.fuels);
            let mut numbers: Vec<u32> = fuels.map(|it| it.id).collect();
            numbers.sort_unstable();
            assert!(numbers.windows(2).all(|pair| pair[0] < pair[1]), "{numbers:?}");
            assert!(numbers[0] > before.here.last_id);
        }
        let mut back = document.clone();
        back.take_back(&before, &document);
        assert_eq!(
            (&back.here.fill, &back.here.route),
            (&before.here.fill, &before.here.route),
            "it can be undone"
        );
    }
}

#[test]
fn another_cars_calibration_is_not_taken_for_ones_own() {
    let mut demo = Document::demo();
    demo.here.fill.start = StartForm::Typed;
    demo.here.fill.aim = AimForm::Calibration(demo.here.car.calibrations[1].id);
    let printer = demo.settings.printer(DecimalMark::Point);
    let shared = Shared::fill_of(&demo, None, &printer).unwrap();
    assert_eq!(shared.car().calibrations, [demo.here.car.calibrations[1].clone()]);

    let mut same = Document::demo();
    same.take_shared(&shared, id());
    assert_eq!(same.here.fill.aim, demo.here.fill.aim);
    assert_eq!(shared.unknown_calibrations(&same.here.car).count(), 0);

    let mut other = Document::demo();
    other.here.car.calibrations[1].high = "E50".into();
    assert_eq!(shared.unknown_calibrations(&other.here.car).count(), 1);
    other.take_shared(&shared, id());
    assert_eq!(other.here.fill.aim, AimForm::Share);
    assert_eq!(other.here.fill.aim_share, "E30");

    // Where there is no car yet, the tank and the calibration come along.
    let mut first = Document::empty(Id::new("first").unwrap());
    first.take_shared(&shared, id());
    assert_eq!(first.here.car.capacity, demo.here.car.capacity);
    assert!(matches!(first.here.fill.aim, AimForm::Calibration(_)));
    assert_eq!(first.settings.currency, "kr");
}

#[test]
fn what_is_too_much_for_a_link_is_said() {
    let mut demo = Document::demo();
    // Digits without order hardly shrink.
    let digits = (1_u32..4000).map(|it| format!("{} ", it.wrapping_mul(2_654_435_761)));
    let digits: String = digits.collect();
    demo.here.hardware.curves[0].table = Entry::metric(&digits);
    let error = Shared::car_of(&demo).to_link().unwrap_err();
    assert!(matches!(error, LinkError::TooMuch { length } if length > LONGEST_LINK), "{error:?}");
    assert!(words::files::link(&error).contains("Export everything"), "{error}");
    demo.here.car.name = "x".repeat(201);
    assert!(matches!(
        Shared::car_of(&demo).to_link(),
        Err(LinkError::Bounds(BoundsError::TextTooLong { length: 201, most: 200, .. }))
    ));
    let nothing = Document::empty(id());
    assert_eq!(Shared::car_of(&nothing).to_link(), Err(LinkError::Blank { kind: Kind::Car }));
    assert_eq!(Picture::of(&"x".repeat(2954)), Err(PictureError::TooLong { bytes: 2954 }));
}

#[test]
fn each_fault_of_a_link_has_its_own_words() {
    let [fill, ..] = of_the_example();
    let link = fill.to_link().unwrap();
    let (_, payload) = link.split_once('.').unwrap();
    let json = fill.document().to_json().unwrap();
    let text = |from: &str, to: &str| link_around("f1", json.replacen(from, to, 1).as_bytes());
    assert_ne!(text("E30", "E31"), text("E30", "E30"), "what is replaced is there");
    let read = |link: &str| Shared::from_link(link).unwrap_err();
    for nothing in ["", "f1", "x1.AAAA", "f.AAAA", "f-1.AA", "F1.AAAA", "fill.AAAA", "f0.AAAA"] {
        assert_eq!(read(nothing), LinkError::NoKind, "{nothing}");
    }
    assert_eq!(read(&format!("f2.{payload}")), LinkError::TooNew { found: 2 });
    for damaged in ["f1.", "f1.A", "f1.AAAA", "f1.=", "f1.%41"] {
        assert_eq!(read(damaged), LinkError::Damaged, "{damaged}");
    }
    let long = "f1.".to_owned() + &"A".repeat(LONGEST_LINK);
    assert_eq!(read(&long), LinkError::LinkTooLong { length: LONGEST_LINK + 3 });
    let bomb = link_around("f1", &vec![b' '; LARGEST_PAYLOAD + 1]);
    assert!(bomb.len() < LONGEST_LINK);
    assert_eq!(read(&bomb), LinkError::PayloadTooLarge);
    assert_eq!(read(&format!("t1.{payload}")), LinkError::Blank { kind: Kind::Trip });
    assert!(matches!(
        read(&text(&format!("\"schema\":{SCHEMA}"), "\"schema\":99")),
        LinkError::Document(_)
    ));
    assert!(matches!(
        read(&text("E30", "E3\u{202e}0")),
        LinkError::Bounds(BoundsError::Control { code: 0x202e, .. })
    ));
    let logged = super::mutated::logged().to_json().unwrap();
    assert_eq!(
        read(&link_around("f1", logged.as_bytes())),
        LinkError::MoreThanSaid { kind: Kind::Fill }
    );
}

#[test]
fn a_link_of_an_earlier_schema_is_still_read() {
    let car = Shared::from_link(&link_around("c1", super::SCHEMA_1.as_bytes())).unwrap();
    assert!(!car.car().calibrations.is_empty());
    let fill = Shared::from_link(&link_around("f1", super::SCHEMA_1.as_bytes())).unwrap();
    assert!(!fill.offers().is_empty());
}
