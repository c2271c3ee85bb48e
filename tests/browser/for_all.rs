//! What every view owes everybody: contrast, names, room for a finger, no
//! scrolling sideways, in light and dark, on a phone and at a desk.

use crate::harness::{Page, Scheme, browse};
use crate::states::State;

/// Has all of it hold in each of these states.
fn all_for_all(states: &[State]) {
    browse(async |page| {
        for state in states {
            state.reach(page).await;
            for_all(page, &state.name()).await;
        }
    });
}

#[test]
fn the_first_start_is_for_all() {
    use State::{CarEmpty, FillMissing, HardwareEmpty, TankEmpty, TripEmpty, Welcome};
    all_for_all(&[Welcome, FillMissing, TankEmpty, HardwareEmpty, TripEmpty, CarEmpty]);
}

#[test]
fn the_fill_is_for_all() {
    use State::{Fill, FillImpossible, FillOpen, FillRecorded, FillWrong};
    all_for_all(&[Fill, FillOpen, FillImpossible, FillWrong, FillRecorded]);
}

#[test]
fn the_tank_is_for_all() {
    use State::{Tank, TankContentsWrong, TankFillWrong, TankOpen, TankTubeTestWrong};
    all_for_all(&[Tank, TankOpen, TankFillWrong, TankTubeTestWrong, TankContentsWrong]);
}

#[test]
fn the_hardware_is_for_all() {
    use State::{Hardware, HardwareBegun, HardwareOpen, HardwareWrong};
    all_for_all(&[HardwareBegun, Hardware, HardwareOpen, HardwareWrong]);
}

#[test]
fn the_trip_is_for_all() {
    use State::{Trip, TripBegun, TripOpen, TripWrong};
    all_for_all(&[TripBegun, Trip, TripOpen, TripWrong]);
}

#[test]
fn the_car_is_for_all() {
    all_for_all(&[State::Car, State::CarWrong, State::CarImport]);
}

#[test]
fn the_methods_are_for_all() {
    all_for_all(&[State::Methods, State::MethodsOpen]);
}

pub(crate) async fn for_all(page: &Page, name: &str) {
    for (width, height) in [(360, 740), (1280, 800)] {
        page.viewport(width, height).await;
        page.draws_every_picture().await;
        page.no_horizontal_scroll().await;
        page.targets_at_least(44).await;
        for scheme in [Scheme::Light, Scheme::Dark] {
            page.colour_scheme(scheme).await;
            page.axe().await;
            page.screenshot(&format!("{name}-{width}-{scheme:?}").to_lowercase()).await;
        }
    }
    page.viewport(320, 640).await;
    page.no_horizontal_scroll().await;
}
