//! A share as somebody stated it: what was typed, and what is allowed for around it.

use crate::document::{ContentsForm, Document, Field, FuelForm};
use crate::fuel::grades::{self, Grade};
use crate::quantity::notation::{ShareText, ShareTextError, parse_share_text};
use crate::quantity::{Band, Share};
use crate::tank::HowSure;

/// What a share is said of, which decides what is allowed for where it has no range.
#[derive(Clone, Copy, Debug)]
pub(crate) enum ShareOf<'a> {
    /// A blend that is only supposed: it is as it was typed.
    Supposed,
    /// What is in a tank.
    Tank(HowSure),
    /// A fuel, with the name of its grade.
    Fuel(HowSure, Option<&'a str>),
}

impl ShareOf<'_> {
    /// What a share without a range is taken as.
    pub(crate) fn taken(self, share: Share) -> Band<Share> {
        match self {
            Self::Supposed => Band::exact(share),
            Self::Tank(how_sure) => how_sure.of_tank(share),
            Self::Fuel(how_sure, grade) => {
                let grade = grade.and_then(grades::find).map(Grade::ethanol);
                how_sure.of_fuel(share, grade)
            }
        }
    }

    /// What is taken where nothing but one share was typed.
    fn assumed(self, share: &str, range: &str) -> Option<Band<Share>> {
        let text = match (share.trim().is_empty(), range.trim().is_empty()) {
            (false, true) => share,
            (true, false) => range,
            _ => return None,
        };
        match parse_share_text(text) {
            Ok(ShareText::Single(share)) => Some(self.taken(share)),
            _ => None,
        }
    }
}

/// A share from the text for what is expected and the one for what it may be.
///
/// # Errors
/// When a spread has no share to belong to, or when what is expected lies outside the
/// range.
pub(crate) fn together(
    typed: Option<ShareText>,
    may_be: Option<ShareText>,
    of: ShareOf,
) -> Result<Option<Band<Share>>, NoShare> {
    use ShareText::{Range, Single, Spread};
    let band = match (typed, may_be) {
        (None, None) => return Ok(None),
        (None, Some(Spread(spread))) => return Err(NoShare::Range(spread.refused())),
        (Some(Spread(spread)), None) => return Err(NoShare::Typed(spread.refused())),
        (Some(Single(share)), None) | (None, Some(Single(share))) => of.taken(share),
        (Some(Range(band)), None) | (None, Some(Range(band))) => band,
        (Some(typed), Some(may_be)) => {
            let expected = match typed {
                Single(share) => share,
                Range(band) => band.expected(),
                Spread(spread) => return Err(NoShare::Typed(spread.refused())),
            };
            let may_be = match may_be {
                Single(share) => Band::exact(share),
                Range(band) => band,
                Spread(spread) => spread.around(expected).map_err(NoShare::Range)?,
            };
            Band::new(may_be.low(), expected, may_be.high())
                .map_err(|_| NoShare::Apart(expected, may_be))?
        }
    };
    Ok(Some(band))
}

/// Why two texts make no share.
pub(crate) enum NoShare {
    /// The text for what is expected cannot stand so.
    Typed(ShareTextError),
    /// The text for what it may be cannot stand so.
    Range(ShareTextError),
    /// What is expected lies outside of what it may be.
    Apart(Share, Band<Share>),
}

impl FuelForm {
    /// What its share is taken as where it was typed without a range.
    pub fn share_assumed(&self) -> Option<Band<Share>> {
        ShareOf::Fuel(self.how_sure, self.grade.as_deref()).assumed(&self.share, &self.share_range)
    }
}

impl ContentsForm {
    /// What its share is taken as where it was typed without a range.
    pub fn share_assumed(&self) -> Option<Band<Share>> {
        ShareOf::Tank(self.how_sure).assumed(&self.share, &self.share_range)
    }
}

impl Document {
    /// How sure the share in this field is, and what it is taken as; nothing where it has a
    /// range.
    pub fn share_assumed(&self, share: Field) -> Option<(HowSure, Band<Share>)> {
        let of_fuel = |form: &FuelForm| Some((form.how_sure, form.share_assumed()?));
        match share {
            Field::Contents(of, _) => {
                let form = self.contents(of)?;
                Some((form.how_sure, form.share_assumed()?))
            }
            Field::Fuel(id, _) => of_fuel(self.fuel(id)?),
            Field::Poured(id, _) => of_fuel(self.poured(id)?),
            _ => None,
        }
    }
}
