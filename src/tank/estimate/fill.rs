//! What a fill tells, and what it leaves in the tank.

use super::doubt::Doubt;
use super::evidence::Pour;
use super::filter::{LevelRead, dispenser_variance};
use super::octane_floor::{Floor, Part};
use super::prior::Content;
use super::reading::{HARD, LEVEL_GATE};
use super::{Estimator, Latest, litres, volume};
use crate::quantity::{Band, Share};
use crate::tank::CLICK_ERROR_L;

impl Estimator {
    pub(super) fn fill(&mut self, pours: &[Pour], clicked: bool) -> Option<Doubt> {
        let poured: f64 = pours.iter().map(|pour| litres(pour.volume)).sum();
        if poured <= 0.0 && !clicked {
            return None;
        }
        let doubt = self.room_for(pours, poured, clicked);
        let before = self.clone();
        for pour in pours {
            let (amount, content) = (litres(pour.volume), Content::of(&pour.share));
            let level = self.envelope.level_about(self.bank.level());
            self.extras.pour(&level, amount, &pour.extras);
            self.bank.each(|filter| filter.pour(&self.car, amount, &content));
            self.envelope.pour(&self.car, amount, &pour.share);
            self.fuels.remember(&content, pour, amount);
        }
        (self.ron, self.mon) = before.octane_after(pours);
        self.latest = Latest::Level;
        doubt
    }

    /// The octane numbers of the contents after these pours; this is before them.
    fn octane_after(&self, pours: &[Pour]) -> (Floor, Floor) {
        let poured = || pours.iter().filter(|pour| litres(pour.volume) > 0.0);
        let known = |own: Floor, of: fn(&Pour) -> Option<f64>| {
            own != Floor::Unknown && poured().all(|pour| of(pour).is_some())
        };
        let (ron, mon) = (known(self.ron, |pour| pour.ron), known(self.mon, |pour| pour.mon));
        // Bands take far longer to work out than all else here.
        if !ron && !mon {
            return (Floor::Unknown, Floor::Unknown);
        }
        let level = self.bank.level_band(&self.car);
        let share = self.share_band().map(Share::clamped);
        let floor = |own: Floor, of: fn(&Pour) -> Option<f64>| {
            let mut parts = vec![Part::new(level, share, own, &self.density)];
            parts.extend(poured().map(|pour| {
                let amount = Band::exact(litres(pour.volume));
                Part::new(amount, pour.share, Floor::given(of(pour)), &self.density)
            }));
            Floor::of_mixture(&parts)
        };
        (floor(self.ron, |pour| pour.ron), floor(self.mon, |pour| pour.mon))
    }

    /// What a fill tells of the level before it: at the click there was room for
    /// just that much, and otherwise for no less.
    fn room_for(&mut self, pours: &[Pour], poured: f64, clicked: bool) -> Option<Doubt> {
        let click = CLICK_ERROR_L.value;
        let room = self.car.capacity - poured;
        let dispensers: f64 =
            pours.iter().map(|pour| dispenser_variance(litres(pour.volume))).sum();
        let read = LevelRead {
            litres: room.max(0.0),
            variance: click * click + dispensers,
            by_gauge: false,
        };
        let largest_error = HARD * read.variance.sqrt();
        let overfull = (-room > largest_error).then(|| Doubt::Overfull { volume: volume(-room) });
        if clicked {
            let doubt = self.read_level(&read, largest_error);
            return overfull.or(doubt);
        }
        let over = self.bank.level() - room;
        if over <= 0.0 {
            return overfull;
        }
        if over <= LEVEL_GATE * self.bank.level_innovation(&read).variance.sqrt() {
            // The tank held a little less than was thought, and the brim says so by itself.
            self.envelope.read_at_most(&self.car, room + largest_error);
            return overfull;
        }
        if self.latest == Latest::Level {
            self.bank.each(|filter| filter.use_unknown(room));
            self.envelope.use_unknown();
            self.envelope.read_at_most(&self.car, room + largest_error);
            return overfull;
        }
        let misfit = self.read_level(&read, largest_error);
        overfull.or(misfit.map(|_| Doubt::Overfull { volume: volume(over) }))
    }
}
