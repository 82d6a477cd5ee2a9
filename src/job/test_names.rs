//! Names of the tests and searches of one visit, for the proofs that refer to them.

use crate::job::book::Visit;
use crate::text::{Diagnostic, Diagnostics, Noted, Span};
use crate::vocabulary::Identifier;

/// Names of tests and searches of a visit.
#[derive(Default)]
pub(super) struct TestNames {
    names: Vec<(Identifier, Span)>,
    /// A name could not be read, so that an unknown one may be it.
    incomplete: bool,
}

impl TestNames {
    pub(super) fn add(
        &mut self,
        id: Option<&Noted<Identifier>>,
        what: &str,
        sound: bool,
        diagnostics: &mut Diagnostics,
    ) {
        let Some(id) = id else {
            self.incomplete |= !sound;
            return;
        };
        if let Some((_, first)) = self.names.iter().find(|(known, _)| *known == id.value) {
            diagnostics.push(
                Diagnostic::error(
                    "name-taken",
                    id.span,
                    format!(
                        "another test or search of this visit has the name `{}`",
                        id.value
                    ),
                )
                .here("the second one")
                .also(*first, "the first one")
                .cure(format!("give this {what} another name")),
            );
            return;
        }
        self.names.push((id.value.clone(), id.span));
    }

    pub(super) fn check(
        &self,
        id: &Noted<Identifier>,
        complete: bool,
        visit: &Visit,
        diagnostics: &mut Diagnostics,
    ) {
        if !complete || self.incomplete || self.names.iter().any(|(known, _)| *known == id.value) {
            return;
        }
        let known: Vec<&str> = self.names.iter().map(|(id, _)| id.0.as_str()).collect();
        let diagnostic = Diagnostic::error(
            "name-unknown",
            id.span,
            format!("there is no test or search `{}` in this visit", id.value),
        )
        .here("named as the proof")
        .why("a repair without its proof must not be called proved");
        let diagnostic = match (self.names.first(), visit.files.first()) {
            (Some((_, span)), _) => diagnostic.also(*span, "the tests and searches are here"),
            (None, Some(file)) => diagnostic.also(
                Span::file_start(*file),
                "this visit has no tests or searches",
            ),
            (None, None) => diagnostic,
        };
        diagnostics.push(match crate::text::nearest(&id.value.0, &known) {
            Some(near) => diagnostic.patch(format!("did you mean `{near}`?"), id.span, near),
            None => {
                diagnostic.cure("write the test's id, or a look: `16:50 electronic ld-2, no alarm`")
            }
        });
    }
}
