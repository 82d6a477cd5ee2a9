//! From a noted finding to a validated one: point, circuit, instruments, proofs, photographs.

use crate::job::assemble_visit::VisitAssembler;
use crate::job::book::{Finding, Visit};
use crate::job::test_names::TestNames;
use crate::notes::{FindingNote, FindingsNote, Proof};
use crate::text::{Diagnostic, Noted};
use crate::vocabulary::Identifier;

impl VisitAssembler<'_> {
    pub(super) fn findings_file(
        &mut self,
        note: FindingsNote,
        visit: &mut Visit,
        names: &TestNames,
        readings_complete: bool,
    ) {
        visit.introduction = note.introduction;
        for finding in note.findings {
            let finding = self.finding(finding, visit, names, readings_complete);
            visit.findings.push(finding);
        }
    }

    fn finding(
        &mut self,
        note: FindingNote,
        visit: &Visit,
        names: &TestNames,
        readings_complete: bool,
    ) -> Finding {
        let registered = note
            .point
            .as_ref()
            .and_then(|point| self.system.points.resolve(point, self.diagnostics));
        let circuit_name = note
            .circuit
            .as_ref()
            .or(registered.and_then(|point| point.circuit.as_ref()));
        let circuit = match circuit_name {
            Some(_) => self.circuit(circuit_name, note.span, true),
            None => (self.system.circuits.len() == 1).then_some(0),
        };
        let looks = note.proofs.iter().filter_map(|proof| match proof {
            Proof::Look(look) => Some(look),
            Proof::Named(_) => None,
        });
        for look in note.evidence.iter().chain(looks) {
            self.look(look, visit);
        }
        for proof in &note.proofs {
            if let Proof::Named(name) = proof {
                names.check(name, readings_complete, visit, self.diagnostics);
            }
        }
        let pictures = note
            .pictures
            .iter()
            .enumerate()
            .filter_map(|(index, picture)| {
                let path = format!("{}/{}", visit.path, picture.path.value);
                self.photograph(&picture.path, &path)
                    .then_some((index, path))
            })
            .collect();
        Finding {
            circuit,
            note,
            pictures,
        }
    }

    fn look(&mut self, look: &crate::notes::Look, visit: &Visit) {
        let last = i32::from(look.at.value.day) - 1;
        let days = (visit.last_day() - visit.name.date).get_days();
        if last > days && !visit.attendance.is_empty() {
            self.diagnostics.push(
                Diagnostic::error(
                    "day-not-of-the-visit",
                    look.at.span,
                    format!("this visit has no day {}", look.at.value.day),
                )
                .here("on a day nobody was there")
                .cure("correct the day, or the attendance in visit.toml"),
            );
        }
        let needs_instrument = matches!(
            look.method.value,
            crate::vocabulary::method_word::MethodWord::Electronic
                | crate::vocabulary::method_word::MethodWord::Ultrasonic
                | crate::vocabulary::method_word::MethodWord::Tracer
        );
        if let Some(with) = look.with.as_ref().filter(|_| needs_instrument)
            && !with.value.contains(char::is_whitespace)
        {
            self.book.instruments.resolve(
                &Noted::new(Identifier(with.value.clone()), with.span),
                self.diagnostics,
            );
        }
    }

    fn photograph(&mut self, noted: &Noted<String>, path: &str) -> bool {
        let wrong = |what: String, here: &str, cure: &str| {
            Diagnostic::error("photograph-unusable", noted.span, what)
                .here(here)
                .why("the report shows every picture that a finding names")
                .cure(cure)
        };
        let Some(fact) = self.folder.files.get(path) else {
            let prefix = path.strip_suffix(&noted.value).unwrap_or("");
            let there: Vec<&str> = self
                .folder
                .files
                .keys()
                .filter_map(|known| known.strip_prefix(prefix))
                .collect();
            let diagnostic = Diagnostic::error(
                "photograph-missing",
                noted.span,
                format!("there is no photograph `{}`", noted.value),
            )
            .here("not in the visit folder")
            .why("the report shows every picture that a finding names");
            self.diagnostics
                .push(match crate::text::nearest(&noted.value, &there) {
                    Some(near) => {
                        diagnostic.patch(format!("did you mean `{near}`?"), noted.span, near)
                    }
                    None => diagnostic.cure("copy it into photos/, or take the line out"),
                });
            return false;
        };
        let diagnostic = if fact.link {
            wrong(
                format!("`{}` is a link to another place", noted.value),
                "may lead out of the book",
                "copy the picture itself into photos/",
            )
        } else if !(fact.head.starts_with(&[0xff, 0xd8, 0xff])
            || fact.head.starts_with(b"\x89PNG\r\n\x1a\n"))
        {
            let heic = fact.head.get(4..8) == Some(b"ftyp");
            wrong(
                format!("`{}` is not a JPEG or PNG picture", noted.value),
                "its first bytes are those of another kind of file",
                if heic {
                    "save it as JPEG (this is the phone's own HEIC format)"
                } else {
                    "save it as JPEG or PNG"
                },
            )
        } else {
            return true;
        };
        self.diagnostics.push(diagnostic);
        false
    }
}
