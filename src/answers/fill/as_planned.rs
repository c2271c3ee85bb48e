//! Taking it that a plan was poured.

use super::answer::FillAnswer;
use crate::document::CarFile;
use crate::quantity::notation::{Entry, Printer};

impl CarFile {
    /// Takes it that everything was poured as planned.
    pub fn pour_as_planned(&mut self, answer: &FillAnswer, printer: &Printer) {
        for step in &answer.steps {
            let id = answer.asked.fuels[step.fuel].id;
            let text = printer.volume_number(step.poured + step.volume);
            let amount = Entry { text, typed_in: printer.units };
            self.fill.pour_step(id, amount, step.to_click);
        }
    }
}
