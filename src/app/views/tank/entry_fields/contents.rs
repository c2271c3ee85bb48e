//! What is in the tank, in an entry of the log.

use fillwright::document::{BeforeForm, ContentsForm, ContentsOf, LevelForm, What};

use super::{what, what_mut};
use crate::app::views::contents::TankForm;

fn level(what: &What) -> Option<&LevelForm> {
    match what {
        What::Level(form) => Some(form),
        What::Correction(form) => Some(&form.level),
        What::Fill(fill) => match &fill.before {
            BeforeForm::Nothing => None,
            BeforeForm::Level(form) => Some(form),
            BeforeForm::Contents(form) => Some(&form.level),
        },
        _ => None,
    }
}

fn level_mut(what: &mut What) -> Option<&mut LevelForm> {
    match what {
        What::Level(form) => Some(form),
        What::Correction(form) => Some(&mut form.level),
        What::Fill(fill) => match &mut fill.before {
            BeforeForm::Nothing => None,
            BeforeForm::Level(form) => Some(form),
            BeforeForm::Contents(form) => Some(&mut form.level),
        },
        _ => None,
    }
}

fn contents(what: &What) -> Option<&ContentsForm> {
    match what {
        What::Correction(form) => Some(form),
        What::Fill(fill) => match &fill.before {
            BeforeForm::Contents(form) => Some(form),
            BeforeForm::Nothing | BeforeForm::Level(_) => None,
        },
        _ => None,
    }
}

fn contents_mut(what: &mut What) -> Option<&mut ContentsForm> {
    match what {
        What::Correction(form) => Some(form),
        What::Fill(fill) => match &mut fill.before {
            BeforeForm::Contents(form) => Some(form),
            BeforeForm::Nothing | BeforeForm::Level(_) => None,
        },
        _ => None,
    }
}

/// The tank in the entry that is being written.
pub(super) const TANK: TankForm = TankForm {
    of: ContentsOf::Entry,
    level: |it| what(it).and_then(level),
    level_mut: |it| what_mut(it).and_then(level_mut),
    contents: |it| what(it).and_then(contents),
    contents_mut: |it| what_mut(it).and_then(contents_mut),
};
