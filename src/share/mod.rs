//! A fill, a car or a trip as a link, and back.
//!
//! A link's fragment is `TAG.PAYLOAD`. The tag is a letter for what it is and the
//! version of this form (`f1`, `c1`, `t1`). The payload is a stored document that
//! holds one car with nothing in it but what is shared, compressed (RFC 1950) and
//! written in base64url without padding (RFC 4648, section 5). So a link is checked
//! like an opened file, and an old one is read like an old file; the checksum of the
//! compression tells a damaged link from a whole one.

mod bounds;
mod give;
mod link;
mod picture;
mod take;

pub use bounds::{BoundsError, MOST_IN_A_LIST};
pub use link::{LARGEST_PAYLOAD, LINK_FORM, LONGEST_LINK, LinkError};
pub use picture::{Picture, PictureError, QUIET_ZONE};

use crate::document::{
    AimForm, CalibrationForm, Car, CarFile, Document, FillForm, FuelForm, HardwareForm, Id,
    Settings, TripForm,
};

/// What is shared.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Kind {
    /// The question of a fill: contents, fuels on offer, aim and stop rule.
    Fill,
    /// A car with its calibrations, own fuels, power curves and parts.
    Car,
    /// A route with what is asked of it.
    Trip,
}

impl Kind {
    /// All kinds.
    pub const ALL: [Self; 3] = [Self::Fill, Self::Car, Self::Trip];

    /// What it is, in a word.
    pub fn name(self) -> &'static str {
        match self {
            Self::Fill => "fill",
            Self::Car => "car",
            Self::Trip => "trip",
        }
    }
}

/// Something shared: a document in which there is nothing else.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Shared {
    kind: Kind,
    document: Document,
}

impl Shared {
    /// What of a document belongs to this kind; everything else is left out.
    fn of(kind: Kind, document: &Document) -> Self {
        let here = &document.here;
        let mut shared = CarFile::new(Id::of_content("shared"));
        match kind {
            Kind::Fill => {
                shared.car = tank_of(&here.car, |id| here.fill.aim == AimForm::Calibration(id));
                // Where somebody is, is no part of the question.
                shared.fill = FillForm { place: String::new(), ..here.fill.clone() };
            }
            Kind::Trip => {
                let kept = |id| here.route.stops.iter().any(|it| it.calibrations.contains(&id));
                shared.car = tank_of(&here.car, kept);
                shared.route = here.route.clone();
            }
            Kind::Car => {
                shared.demo = here.demo;
                shared.car = here.car.clone();
                shared.hardware = here.hardware.clone();
            }
        }
        let settings =
            Settings { currency: document.settings.currency.clone(), ..Settings::default() };
        let schema = document.schema;
        Self { kind, document: Document { schema, settings, here: shared, others: Vec::new() } }
    }

    /// Whether nothing of its kind was ever entered.
    fn is_blank(&self) -> bool {
        let here = &self.document.here;
        match self.kind {
            Kind::Fill => here.fill == FillForm::default(),
            Kind::Trip => here.route.stops.is_empty(),
            Kind::Car => {
                let blank = CarFile::new(here.id.clone());
                here.car == blank.car && here.hardware == blank.hardware
            }
        }
    }

    /// What it is.
    pub fn kind(&self) -> Kind {
        self.kind
    }

    /// It as a document, to be read like any other. Its settings are the usual ones,
    /// save for the currency of the prices.
    pub fn document(&self) -> &Document {
        &self.document
    }

    /// Whether a car is the invented example.
    pub fn is_invented(&self) -> bool {
        self.document.here.demo
    }

    /// The label of the currency in which prices are given; blank where nobody said.
    pub fn currency(&self) -> &str {
        &self.document.settings.currency
    }

    /// The car: all of it where a car is shared, else what the question needs of it.
    pub fn car(&self) -> &Car {
        &self.document.here.car
    }

    /// The fill; blank where something else is shared.
    pub fn fill(&self) -> &FillForm {
        &self.document.here.fill
    }

    /// The fuels on offer of a fill.
    pub fn offers(&self) -> &[FuelForm] {
        &self.fill().offers
    }

    /// The trip; blank where something else is shared.
    pub fn route(&self) -> &TripForm {
        &self.document.here.route
    }

    /// Power curves and parts of a car.
    pub fn hardware(&self) -> &HardwareForm {
        &self.document.here.hardware
    }

    /// The calibrations of a question that a car does not have.
    pub fn unknown_calibrations<'a>(
        &'a self,
        car: &'a Car,
    ) -> impl Iterator<Item = &'a CalibrationForm> {
        let calibrations = self.car().calibrations.iter();
        calibrations.filter(|it| take::same_calibration(car, it).is_none())
    }
}

/// The car as far as a question about its tank needs it, with some calibrations.
fn tank_of(car: &Car, calibration: impl Fn(u32) -> bool) -> Car {
    let calibrations = car.calibrations.iter().filter(|it| calibration(it.id));
    Car {
        capacity: car.capacity.clone(),
        reserve: car.reserve.clone(),
        consumption: car.consumption.clone(),
        range_display: car.range_display,
        reference: car.reference.clone(),
        calibrations: calibrations.cloned().collect(),
        ..Car::default()
    }
}
