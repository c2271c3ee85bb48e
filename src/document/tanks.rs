//! The tanks of the document: where the form of each stands.

use super::contents::{ContentsForm, LevelForm};
use super::event::{BeforeForm, What};
use super::field::{ContentsOf, Field};
use super::file::Document;
use crate::tank::HowSure;

/// What finds the form of a tank, made twice: to read it, and with `mut` to change it.
macro_rules! tanks {
    ([$($mut:tt)?] $what:ident, $level:ident, $contents:ident, $also:literal) => {
        impl Document {
            #[doc = concat!("What is written down in the entry of the log at hand", $also)]
            pub fn $what(&$($mut)? self) -> Option<&$($mut)? What> {
                let Some(draft) = &$($mut)? self.here.draft else { return None };
                Some(&$($mut)? draft.what)
            }

            #[doc = concat!("The level of a tank; nothing where it is not asked for", $also)]
            pub fn $level(&$($mut)? self, of: ContentsOf) -> Option<&$($mut)? LevelForm> {
                match of {
                    ContentsOf::Fill => Some(&$($mut)? self.here.fill.contents.level),
                    ContentsOf::Trip => Some(&$($mut)? self.here.route.contents.level),
                    ContentsOf::Entry => match self.$what()? {
                        What::Level(level) => Some(level),
                        What::Correction(ContentsForm { level, .. }) => Some(level),
                        What::Fill(fill) => match &$($mut)? fill.before {
                            BeforeForm::Nothing => None,
                            BeforeForm::Level(level) => Some(level),
                            BeforeForm::Contents(ContentsForm { level, .. }) => Some(level),
                        },
                        _ => None,
                    },
                }
            }

            #[doc = concat!("All that is in a tank; nothing where it is not asked for", $also)]
            pub fn $contents(&$($mut)? self, of: ContentsOf) -> Option<&$($mut)? ContentsForm> {
                match of {
                    ContentsOf::Fill => Some(&$($mut)? self.here.fill.contents),
                    ContentsOf::Trip => Some(&$($mut)? self.here.route.contents),
                    ContentsOf::Entry => match self.$what()? {
                        What::Correction(form) => Some(form),
                        What::Fill(fill) => match &$($mut)? fill.before {
                            BeforeForm::Contents(form) => Some(form),
                            BeforeForm::Nothing | BeforeForm::Level(_) => None,
                        },
                        _ => None,
                    },
                }
            }
        }
    };
}

tanks! { [] draft_what, level, contents, "." }
tanks! { [mut] draft_what_mut, level_mut, contents_mut, ", to be changed." }

impl Document {
    /// How sure the share in this field is, to be changed.
    pub fn how_sure_mut(&mut self, share: Field) -> Option<&mut HowSure> {
        match share {
            Field::Contents(of, _) => Some(&mut self.contents_mut(of)?.how_sure),
            Field::Fuel(id, _) => Some(&mut self.fuel_mut(id)?.how_sure),
            Field::Poured(id, _) => Some(&mut self.poured_mut(id)?.how_sure),
            _ => None,
        }
    }
}
