//! What every view can look like, for what has to hold in all of it.

use serde_json::Value;

use crate::app;
use crate::harness::{Key, Page};
use crate::storage::notes;
use crate::trip;

/// A view with what it holds.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum State {
    Welcome,
    /// A first car, with nothing entered.
    FillMissing,
    Fill,
    FillOpen,
    FillImpossible,
    FillWrong,
    FillRecorded,
    TankEmpty,
    Tank,
    TankOpen,
    /// With an entry that cannot be kept as it is.
    TankFillWrong,
    TankTubeTestWrong,
    TankContentsWrong,
    HardwareEmpty,
    /// With a curve and a part of which nothing was typed.
    HardwareBegun,
    Hardware,
    HardwareOpen,
    HardwareWrong,
    TripEmpty,
    /// With a stop of which nothing was typed.
    TripBegun,
    Trip,
    TripOpen,
    TripWrong,
    CarEmpty,
    Car,
    CarWrong,
    /// Several cars, one of them removed, and a file that waits.
    CarImport,
    Methods,
    MethodsOpen,
}

impl State {
    pub(crate) const ALL: [Self; 29] = [
        Self::Welcome,
        Self::FillMissing,
        Self::Fill,
        Self::FillOpen,
        Self::FillImpossible,
        Self::FillWrong,
        Self::FillRecorded,
        Self::TankEmpty,
        Self::Tank,
        Self::TankOpen,
        Self::TankFillWrong,
        Self::TankTubeTestWrong,
        Self::TankContentsWrong,
        Self::HardwareEmpty,
        Self::HardwareBegun,
        Self::Hardware,
        Self::HardwareOpen,
        Self::HardwareWrong,
        Self::TripEmpty,
        Self::TripBegun,
        Self::Trip,
        Self::TripOpen,
        Self::TripWrong,
        Self::CarEmpty,
        Self::Car,
        Self::CarWrong,
        Self::CarImport,
        Self::Methods,
        Self::MethodsOpen,
    ];

    /// The name of its pictures.
    pub(crate) fn name(self) -> String {
        format!("{self:?}").to_lowercase()
    }

    /// Leads there, from a device that has never seen the app, at a desk.
    pub(crate) async fn reach(self, page: &Page) {
        page.viewport(1280, 800).await;
        page.forget().await;
        page.open("").await;
        match self {
            Self::Welcome => page.sees(app::EXAMPLE).await,
            Self::FillMissing
            | Self::TankEmpty
            | Self::HardwareEmpty
            | Self::HardwareBegun
            | Self::TripEmpty
            | Self::TripBegun
            | Self::CarEmpty => {
                page.click("button", app::OWN_CAR).await;
                page.sees(app::SOMETHING_MISSING).await;
                self.reach_with_own_car(page).await;
            }
            _ => {
                page.click("button", app::EXAMPLE).await;
                page.sees("Makes E30").await;
                self.reach_with_example(page).await;
            }
        }
    }

    async fn reach_with_own_car(self, page: &Page) {
        match self {
            Self::TankEmpty => app::to_tank(page).await,
            Self::HardwareEmpty => app::to_hardware(page).await,
            Self::HardwareBegun => {
                app::to_hardware(page).await;
                page.click("button", "Add a curve").await;
                page.sees("Not judged yet").await;
                open_everything(page).await;
                page.click("button", "Port injectors").await;
                page.sees("Port injectors: ").await;
                open_everything(page).await;
            }
            Self::TripEmpty => to_trip(page).await,
            Self::TripBegun => {
                to_trip(page).await;
                page.click("button", "Add the start").await;
                page.sees("Still to fill in").await;
                open_everything(page).await;
            }
            Self::CarEmpty => app::to_car(page).await,
            _ => {}
        }
    }

    async fn reach_with_example(self, page: &Page) {
        match self {
            Self::FillOpen => {
                open_everything(page).await;
                page.sees("Orders of pouring").await;
            }
            Self::FillImpossible => {
                page.type_in(app::LEVEL, "54").await;
                page.type_in(app::AIM, "E60").await;
                page.sees("cannot be reached").await;
            }
            Self::FillWrong => {
                page.type_in(app::LEVEL, "90").await;
                page.press(Key::Tab).await;
                page.sees(app::NOT_UPDATED).await;
            }
            Self::FillRecorded => {
                page.click("button", app::RECORD_AS_PLANNED).await;
                page.sees("See Tank.").await;
            }
            Self::Tank | Self::TankOpen => {
                app::to_tank(page).await;
                if self == Self::TankOpen {
                    open_everything(page).await;
                }
            }
            Self::TankFillWrong => wrong_entry(page, "Fill").await,
            Self::TankTubeTestWrong => wrong_entry(page, "Tube test").await,
            Self::TankContentsWrong => wrong_entry(page, "Set contents by hand").await,
            Self::Hardware | Self::HardwareOpen => {
                app::to_hardware(page).await;
                if self == Self::HardwareOpen {
                    open_everything(page).await;
                    page.sees("What was taken where nothing was typed").await;
                }
            }
            Self::HardwareWrong => {
                app::to_hardware(page).await;
                open_everything(page).await;
                page.type_in("Mixture at full load", "7").await;
                page.type_in("Driveline loss, of crank power", "95").await;
                page.press(Key::Tab).await;
                page.click("button", "Port injectors").await;
                page.sees(app::NOT_UPDATED).await;
                open_everything(page).await;
            }
            Self::Trip | Self::TripOpen | Self::TripWrong => self.reach_trip(page).await,
            Self::Car => app::to_car(page).await,
            Self::CarWrong => {
                app::to_car(page).await;
                page.type_in(app::CAPACITY, "-60").await;
                page.type_in(app::RESERVE, "some").await;
                page.press(Key::Tab).await;
                page.until("both to be wrong", async || wrong_fields(page).await == 2).await;
            }
            Self::CarImport => {
                app::to_car(page).await;
                page.click("button", "Add a car").await;
                page.type_in("Name of the car", "Second").await;
                page.click("button", "Remove this car").await;
                page.click("button", "Add a car").await;
                page.give_file(notes("other", 0, 3).as_bytes()).await;
                page.sees("a new car, 3 entries").await;
            }
            Self::Methods | Self::MethodsOpen => {
                page.click("link", "Methods").await;
                page.sees("Where does each number come from?").await;
                if self == Self::MethodsOpen {
                    open_everything(page).await;
                    page.sees("Octane by moles, a lower bound").await;
                }
            }
            _ => {}
        }
    }

    async fn reach_trip(self, page: &Page) {
        page.click("link", "Trip").await;
        page.sees(trip::SETTLED).await;
        if self == Self::Trip {
            return;
        }
        page.click("button", "Hold this plan").await;
        page.sees("The plan that you hold").await;
        open_everything(page).await;
        if self == Self::TripWrong {
            page.type_in("At most to spend", "much").await;
            page.type_in("Stay inside the windows by", "90").await;
            page.press(Key::Tab).await;
            page.sees("entries are wrong").await;
        }
    }
}

async fn to_trip(page: &Page) {
    page.click("link", "Trip").await;
    page.sees("Which fills, and where?").await;
}

async fn wrong_entry(page: &Page, kind: &str) {
    app::to_tank(page).await;
    app::add(page, kind).await;
    app::keep(page).await;
    page.sees("Not kept yet").await;
    open_everything(page).await;
}

/// So many fields say that they are wrong.
async fn wrong_fields(page: &Page) -> usize {
    const COUNT: &str = "return document.querySelectorAll('[aria-invalid=true]').length";
    let count = page.script(COUNT, vec![]).await;
    count.as_u64().and_then(|it| usize::try_from(it).ok()).expect("a number")
}

/// Opens all that opens.
pub(crate) async fn open_everything(page: &Page) {
    // What opens may make more that opens.
    const OPEN: &str = "
        const closed = document.querySelectorAll('details:not([open])');
        closed.forEach(it => it.open = true);
        return closed.length;";
    page.becomes(Value::from(0), async || page.script(OPEN, vec![]).await).await;
}
