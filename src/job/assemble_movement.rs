//! From a noted movement of refrigerant to a validated one: cylinder, circuit, moment and mass.

use crate::job::accuracy::Accuracy;
use crate::job::assemble::section_of;
use crate::job::assemble_visit::VisitAssembler;
use crate::job::book::{MovedMass, Movement, Visit};
use crate::notes::{MovementNote, RefrigerantNote};
use crate::quantity::{Mass, Measured};
use crate::text::{Diagnostic, Noted};
use crate::vocabulary::refrigerant_file::MovementKind;

impl VisitAssembler<'_> {
    pub(super) fn refrigerant_file(&mut self, note: RefrigerantNote, visit: &mut Visit) {
        for movement in note.movement {
            visit.movements.extend(self.movement(movement, visit));
        }
    }

    fn movement(&mut self, note: MovementNote, visit: &Visit) -> Option<Movement> {
        let circuit = self.circuit(note.circuit.as_ref(), note.whole.span, note.whole.sound);
        if let Some(section) = &note.section {
            section_of(
                self.system,
                note.circuit.as_ref(),
                section,
                self.diagnostics,
            );
        }
        if let Some(by) = &note.by {
            self.book.people.resolve(by, self.diagnostics);
        }
        if let Some(cylinder) = &note.cylinder {
            self.book.cylinders.resolve(cylinder, self.diagnostics);
        }
        let scale = note
            .scale
            .as_ref()
            .and_then(|scale| self.book.instruments.resolve(scale, self.diagnostics))
            .and_then(Accuracy::of::<Mass>);
        if let Some(name) = &note.refrigerant
            && crate::refrigerant::find(&name.value.0).is_none()
        {
            self.diagnostics.push(
                Diagnostic::error(
                    "refrigerant-unknown",
                    name.span,
                    format!("`{}` is not a refrigerant in the tables", name.value.0),
                )
                .here("not a known designation")
                .cure("write its ASHRAE or ISO 817 number, such as \"R-449A\""),
            );
        }
        let at = self.inside(note.at, visit);
        let amount = self.amount(&note);
        Some(Movement {
            kind: note.kind?.value,
            why: note.why.map(|why| why.value),
            circuit: circuit?,
            at: at?,
            amount: amount?,
            scale,
            note,
        })
    }

    fn amount(&mut self, note: &MovementNote) -> Option<MovedMass> {
        match (note.before, note.after, note.mass) {
            (Some(before), Some(after), mass) => {
                let amount = self.weighed(note, before, after)?;
                if let Some(mass) = mass {
                    self.agree(amount, mass)?;
                }
                Some(amount)
            }
            (None, None, Some(mass)) => Some(MovedMass::Stated(mass)),
            (before, after, _) => {
                if note.whole.sound {
                    let (span, missing) = match (before, after) {
                        (Some(one), None) => (one.span, "`after` is missing beside `before`"),
                        (None, Some(one)) => (one.span, "`before` is missing beside `after`"),
                        _ => (note.whole.span, "this movement does not say how much"),
                    };
                    self.diagnostics.push(
                        Diagnostic::error("mass-missing", span, missing)
                            .here("how much moved?")
                            .why("the charge account has to add up")
                            .cure("write both scale readings, `before` and `after`")
                            .cure("or `mass` with its uncertainty and `how`"),
                    );
                }
                None
            }
        }
    }

    fn weighed(
        &mut self,
        note: &MovementNote,
        before: Noted<Measured<Mass>>,
        after: Noted<Measured<Mass>>,
    ) -> Option<MovedMass> {
        let kind = note.kind?.value;
        let (from, to) = (before.value.value.si(), after.value.value.si());
        let wrong = match kind {
            MovementKind::Recovered => to < from,
            _ => to > from,
        };
        if wrong {
            let (what, why) = if kind == MovementKind::Recovered {
                (
                    "the cylinder weighs less after recovering into it",
                    "gas recovered makes the cylinder heavier",
                )
            } else {
                (
                    "the cylinder weighs more after charging from it",
                    "gas charged makes the cylinder lighter",
                )
            };
            self.diagnostics.push(
                Diagnostic::error("scale-wrong-way", after.span, what)
                    .here("after")
                    .also(before.span, "before")
                    .why(why)
                    .cure("are the two readings, or the kind of movement, exchanged?"),
            );
            return None;
        }
        let cylinder = note
            .cylinder
            .as_ref()
            .and_then(|id| self.book.cylinders.get(&id.value));
        let tare = cylinder.and_then(|cylinder| cylinder.tare);
        let least = if from < to { before } else { after };
        if let Some(tare) = tare
            && least.value.value.si() < tare.value.value.si() - 1e-9
        {
            self.diagnostics.push(
                Diagnostic::error(
                    "below-tare",
                    least.span,
                    "the cylinder weighs less than when it is empty",
                )
                .here("on the scale")
                .also(tare.span, "its weight when empty")
                .cure("correct the reading, the tare or the cylinder's name"),
            );
            return None;
        }
        Some(MovedMass::Weighed { before, after })
    }

    fn agree(&mut self, amount: MovedMass, mass: Noted<Measured<Mass>>) -> Option<()> {
        let stated = mass.value.value.si();
        let room = mass.value.uncertainty.unwrap_or(0.0) + mass.value.step.max(0.005);
        if (amount.kg() - stated).abs() <= room {
            return Some(());
        }
        self.diagnostics.push(
            Diagnostic::error(
                "mass-disagrees",
                mass.span,
                "this mass is not the difference of the two scale readings",
            )
            .here(format!("the scale readings give {:.2} kg", amount.kg()))
            .also(amount.span(), "after")
            .why("one movement has one mass")
            .cure("keep the scale readings and take the mass out"),
        );
        None
    }
}
