//! The workings of an answer: each number of it, to be checked by hand.

mod distance;

mod blend;
mod pours;

use super::answer::FillAnswer;
use super::reading::FillAsked;
use crate::answers::working::{CONSERVATION, constant, letter, litres};
use crate::fill::FillPlan;
use crate::workings::{Expression, Lines, Working, number};

impl FillAnswer {
    /// How each number came about.
    pub fn workings(&self) -> Vec<Working> {
        let mut derivation =
            Derivation { asked: &self.asked, plan: &self.plan, lines: Lines::default() };
        derivation.fill();
        derivation.worst(&self.order);
        if let Some(blend) = &self.blend {
            derivation.blend(blend);
            derivation.calibrations(blend);
        }
        derivation.burn_down(self);
        derivation.money();
        derivation.trip(self);
        derivation.lines.into_vec()
    }
}

struct Derivation<'a> {
    asked: &'a FillAsked,
    plan: &'a FillPlan,
    lines: Lines,
}

impl Derivation<'_> {
    fn level(&self) -> Expression {
        number("V0", litres(self.asked.problem.tank.level.expected()))
    }

    fn present(&self) -> Expression {
        number("e0", self.asked.problem.tank.share.expected().fraction())
    }

    fn name(&self, fuel: usize) -> &str {
        &self.asked.fuels[fuel].name
    }

    /// The fuels of which the plan takes some.
    fn taken(&self) -> Vec<usize> {
        (0..self.asked.fuels.len()).filter(|&fuel| litres(self.plan.volumes[fuel]) > 1e-9).collect()
    }

    /// Litres of every fuel, nothing of those of which the plan takes none.
    fn amounts(&self) -> Vec<f64> {
        let mut amounts = vec![0.0; self.asked.fuels.len()];
        for fuel in self.taken() {
            amounts[fuel] = litres(self.plan.volumes[fuel]);
        }
        amounts
    }

    /// Litres of a fuel and its ethanol share, by letter.
    fn poured(&self, fuel: usize) -> (Expression, Expression) {
        let share = self.asked.problem.offers[fuel].share.expected().fraction();
        (
            number(format!("x_{}", letter(fuel)), litres(self.plan.volumes[fuel])),
            number(format!("e_{}", letter(fuel)), share),
        )
    }
}

#[cfg(test)]
mod tests {
    use uom::si::volume::liter;

    use super::super::answer::FillAnswer;
    use super::super::interpret;
    use crate::answers::tank::{History, LogReading};
    use crate::document::Document;
    use crate::quantity::Volume;
    use crate::quantity::notation::{DecimalMark, Entry};

    fn demo_answer() -> FillAnswer {
        answer_to(&Document::demo())
    }

    fn answer_to(document: &Document) -> FillAnswer {
        let printer = document.settings.printer(DecimalMark::Point);
        let history = History::of(&LogReading::of(&document.here, &printer));
        let reading = interpret(document, history.estimator.as_ref(), &printer);
        assert_eq!(reading.field_errors, []);
        FillAnswer::of(reading.asked.unwrap())
    }

    /// Every line, evaluated by exmex 0.21, a general-purpose expression
    /// evaluator, comes to the value that is shown.
    #[test]
    fn every_line_can_be_checked_by_hand() {
        let answer = demo_answer();
        assert!(answer.workings().len() > 12);
        for line in answer.workings() {
            let evaluated: f64 = exmex::eval_str(&line.numbers).unwrap();
            let shown = 0.5 * 10_f64.powi(-i32::try_from(line.decimals).unwrap());
            assert!(
                (evaluated - line.value).abs() < shown,
                "{:?}: {} comes to {evaluated}, not {}",
                line.name,
                line.numbers,
                line.value
            );
            assert!(!line.sources.is_empty(), "{:?} has no source", line.name);
        }
    }

    /// The lines say what the answer says, which is worked out another way.
    #[test]
    fn the_lines_agree_with_the_answer() {
        let answer = demo_answer();
        let workings = answer.workings();
        let line = |symbol: &str| {
            workings.iter().find(|line| line.symbol == symbol).map(|line| line.value)
        };
        let blend = answer.blend.as_ref().unwrap();
        let pairs = [
            ("v", Some(blend.share.expected().fraction())),
            ("v_low", Some(blend.share.low().fraction())),
            ("v_high", Some(blend.share.high().fraction())),
            ("AFR", blend.stoichiometric_afr.map(|band| band.expected())),
            ("m_V", blend.volume_multiplier.map(|band| band.expected())),
            ("RON", blend.ron.map(|band| band.expected())),
            ("MON", blend.mon.map(|band| band.expected())),
            ("AKI", blend.aki().map(|band| band.expected())),
            ("s", answer.range.map(|(range, _)| range.get::<uom::si::length::kilometer>())),
            ("k", answer.cost_per_kilometre.map(|cost| cost * 100.0)),
            (
                "p_even",
                answer.break_even.map(|(_, _, price)| price.of(Volume::new::<liter>(1.0)).amount()),
            ),
            ("cost", answer.cost.map(crate::quantity::Money::amount)),
        ];
        for (symbol, expected) in pairs {
            let (got, expected) = (line(symbol).unwrap(), expected.unwrap());
            assert!(
                (got - expected).abs() < 1e-9 * expected.abs().max(1.0),
                "{symbol}: {got} {expected}"
            );
        }
    }

    /// The level to burn down to, worked out by the formula on the one side and
    /// by the linear programme on the other.
    #[test]
    fn the_burn_down_is_derived_as_well() {
        let mut document = Document::demo();
        document.here.fill.contents.level.level = Entry::metric("3/4");
        document.here.fill.aim_share = "E60".into();
        let answer = answer_to(&document);
        let burn =
            answer.infeasible.as_ref().and_then(|it| it.impossible.burn_down.clone()).unwrap();
        let line = answer.workings().into_iter().find(|line| line.symbol == "X").unwrap();
        assert!((line.value - burn.level.get::<liter>()).abs() < 1e-9);
    }
}
