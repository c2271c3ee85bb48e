//! The fill itself, its worst cases, and the level to burn down to.

use super::{CONSERVATION, Derivation, letter, litres};
use crate::answers::fill::answer::FillAnswer;
use crate::fill::{Order, StopRule, mean_share};
use crate::message::keys::practice as words;
use crate::message::keys::workings;
use crate::source::Source;
use crate::tank::DISPENSER_ERROR;
use crate::workings::number;

const CORNERS: Source = Source::derived(words::CORNERS);

impl Derivation<'_> {
    pub(crate) fn fill(&mut self) {
        let problem = &self.asked.problem;
        let taken = self.taken();
        if problem.stop == StopRule::Brim && problem.aim.low() == problem.aim.high() {
            let capacity = number("C", litres(problem.tank.capacity));
            let target = number("T", problem.aim.low().fraction());
            let space = capacity.clone() - self.level();
            let space =
                self.lines.add(workings::SPACE_TANK, "F", &space, (1, "L"), &[CONSERVATION]);
            if space.value() > 0.0 {
                let needed = (target * capacity - self.level() * self.present()) / space.clone();
                let needed = self.lines.add(
                    workings::MEAN_SHARE_WHAT_BE_ADDED,
                    "e_add",
                    &needed,
                    (4, ""),
                    &[CONSERVATION],
                );
                if let [a, b] = taken[..] {
                    let (_, of_a) = self.poured(a);
                    let (_, of_b) = self.poured(b);
                    if (of_a.value() - of_b.value()).abs() > 1e-9 {
                        let wanted = space * (needed - of_a.clone()) / (of_b - of_a);
                        self.lines.add(
                            workings::SecondFuel { fuel: self.name(b) }.sentence(),
                            format!("x_{}", letter(b)),
                            &wanted,
                            (2, "L"),
                            &[CONSERVATION],
                        );
                    }
                }
            }
        }
        let tank = (litres(problem.tank.level.expected()), problem.tank.share.expected());
        let shares = problem.offers.iter().map(|offer| offer.share.expected());
        if let Some(share) = mean_share("", tank, self.amounts().into_iter().zip(shares)) {
            let name = workings::ETHANOL_SHARE_AFTERWARDS_EXPECTED;
            self.lines.add(name, "v", &share, (4, ""), &[CONSERVATION]);
        }
    }

    pub(crate) fn worst(&mut self, order: &Order) {
        for (strong, name) in [(false, workings::WEAKEST), (true, workings::STRONGEST)] {
            let corner = self.asked.problem.worst_corner(&order.pours, strong);
            let end = if strong { "high" } else { "low" };
            let tank = (litres(corner.level), corner.tank_share);
            let added = corner.volumes.iter().map(|volume| litres(*volume)).zip(corner.shares);
            if let Some(share) = mean_share(&format!("_{end}"), tank, added) {
                let sources = [CORNERS, DISPENSER_ERROR.source];
                self.lines.add(name, format!("v_{end}"), &share, (4, ""), &sources);
            }
        }
    }

    /// The level from which the aim can be reached, where one share is wanted
    /// and nothing but the space stands in the way.
    pub(crate) fn burn_down(&mut self, answer: &FillAnswer) {
        let problem = &self.asked.problem;
        let Some(infeasible) = &answer.infeasible else { return };
        let Some(burn) = &infeasible.impossible.burn_down else { return };
        let poured: Vec<usize> =
            (0..burn.then.len()).filter(|&fuel| litres(burn.then[fuel]) > 1e-9).collect();
        let (StopRule::Brim, [fuel]) = (problem.stop, &poured[..]) else { return };
        let nothing_in = problem.offers.iter().all(|offer| litres(offer.poured) <= 0.0);
        if problem.aim.low() != problem.aim.high() || !nothing_in {
            return;
        }
        let (_, strongest) = self.poured(*fuel);
        let target = number("T", problem.aim.low().fraction());
        let level = number("C", litres(problem.tank.capacity)) * (strongest.clone() - target)
            / (strongest - self.present());
        self.lines.add(workings::LEVEL_BURN_DOWN, "X", &level, (1, "L"), &[CONSERVATION]);
    }
}
