//! Things with the writer's own names, and what is told when a name is not among them.

use crate::text::{Diagnostic, Diagnostics, Noted, Span, nearest, quoted_or};
use crate::vocabulary::Identifier;
use std::collections::BTreeMap;

/// Things by name.
#[derive(Clone, Debug)]
pub struct Registry<T> {
    /// What they are, in the singular, such as `cylinder`.
    pub what: &'static str,
    /// Where they are registered: the file, or a table in it.
    pub home: Span,
    /// Whether all of them could be read; if not, an unknown name may be one of the unread.
    pub complete: bool,
    entries: BTreeMap<Identifier, (T, Span)>,
}

impl<T> Registry<T> {
    /// An empty registry.
    pub fn new(what: &'static str, home: Span, complete: bool) -> Self {
        Self {
            what,
            home,
            complete,
            entries: BTreeMap::new(),
        }
    }

    /// Adds a thing under its name; a name taken is told, one unread makes the registry incomplete.
    pub fn add(&mut self, id: Option<&Noted<Identifier>>, thing: T, diagnostics: &mut Diagnostics) {
        let Some(id) = id else {
            self.complete = false;
            return;
        };
        if let Some((_, first)) = self.entries.get(&id.value) {
            diagnostics.push(
                Diagnostic::error(
                    "name-taken",
                    id.span,
                    format!("the {} `{}` is registered twice", self.what, id.value),
                )
                .here("the second one")
                .also(*first, "the first one")
                .why("a name that stands for two things stands for neither")
                .cure("give one of them another name"),
            );
            return;
        }
        self.entries.insert(id.value.clone(), (thing, id.span));
    }

    /// The thing of a name.
    pub fn get(&self, id: &Identifier) -> Option<&T> {
        self.entries.get(id).map(|(thing, _)| thing)
    }

    /// Where a name is registered.
    pub fn span(&self, id: &Identifier) -> Option<Span> {
        self.entries.get(id).map(|(_, span)| *span)
    }

    /// All things, by name.
    pub fn iter(&self) -> impl Iterator<Item = (&Identifier, &T)> {
        self.entries.iter().map(|(id, (thing, _))| (id, thing))
    }

    /// Number of things.
    pub fn len(&self) -> usize {
        self.entries.len()
    }

    /// Whether there are none.
    pub fn is_empty(&self) -> bool {
        self.entries.is_empty()
    }

    /// The thing of a name in the notes; an unknown one is told with a label at both ends.
    pub fn resolve(&self, id: &Noted<Identifier>, diagnostics: &mut Diagnostics) -> Option<&T> {
        if let Some(thing) = self.get(&id.value) {
            return Some(thing);
        }
        if self.complete {
            diagnostics.push(self.unknown(id));
        }
        None
    }

    /// What is told of an unknown name.
    pub fn unknown(&self, id: &Noted<Identifier>) -> Diagnostic {
        let known: Vec<&str> = self.entries.keys().map(|id| id.0.as_str()).collect();
        let near = nearest(&id.value.0, &known);
        let home = near
            .and_then(|near| self.span(&Identifier(near.to_owned())))
            .unwrap_or(self.home);
        let diagnostic = Diagnostic::error(
            "name-unknown",
            id.span,
            format!("there is no {} `{}`", self.what, id.value),
        )
        .here("not registered")
        .also(
            home,
            match near {
                Some(_) => format!("the nearest {}", self.what),
                None => "not among those registered here".to_owned(),
            },
        );
        let register = match self.what {
            "section" => format!(
                "add it to `sections` of the circuit: `{{ id = \"{id}\" }}`",
                id = id.value
            ),
            what => format!("register it: `[[{what}]]` with `id = \"{}\"`", id.value),
        };
        match near {
            Some(near) => {
                diagnostic.patch(format!("did you mean `{near}`?"), bare(id), near.to_owned())
            }
            None if known.is_empty() || known.len() > 12 => diagnostic.cure(register),
            None => diagnostic
                .cure(format!("known here: {}", quoted_or(&known)))
                .cure(format!("or {register}")),
        }
    }
}

/// The name without the quotation marks that TOML puts around it.
fn bare(id: &Noted<Identifier>) -> Span {
    let length = (id.span.end - id.span.start) as usize;
    if length == id.value.0.len() + 2 {
        id.span.part(1..length - 1)
    } else {
        id.span
    }
}
