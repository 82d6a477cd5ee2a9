//! What has to be on record of a system: each field with its place in the notes, or what is missing.

use crate::job::{Book, Finding, Movement, Search, Site, System, Visit};
use crate::language::clock;
use crate::notes::{Look, Proof};
use crate::quantity::{print, print_mass};
use crate::ruleset::deadline::obligations;
use crate::ruleset::field::{Field, Subject};
use crate::ruleset::in_force::{covered_on, rules_of, statutory_rate};
use crate::ruleset::obligation::{Duty, Obligation};
use crate::ruleset::past::whole_check;
use crate::ruleset::rule_set::RuleSet;
use crate::text::{Message, Noted, Span, Text};
use crate::vocabulary::book_file::GasOrigin;
use crate::vocabulary::refrigerant_file::{MovementKind, MovementWhy};
use crate::vocabulary::system_file::Status;
use crate::vocabulary::visit_file::{Extension, Purpose};
use crate::vocabulary::{FileKind, Word, book_file};
use crate::working::account::account;
use crate::working::outcome::{is_leak, moment_of};
use crate::working::pressure_test::hold;
use crate::working::repair_proof::{Ground, written};
use crate::working::vacuum_test::{Acceptance, rise};
use jiff::civil::{Date, DateTime};

/// A field of the record.
#[derive(Clone, Debug)]
pub struct RecordRow {
    /// The rule.
    pub rules: &'static RuleSet,
    /// The citation.
    pub source: &'static str,
    /// What has to be there.
    pub subject: Subject,
    /// Number of the visit; none for what concerns the system.
    pub visit: Option<usize>,
    /// Number of the circuit; none for what concerns all.
    pub circuit: Option<usize>,
    /// What it is about, such as a point, a person or a cylinder.
    pub about: Text,
    /// Whether it is there.
    pub present: Present,
}

/// Whether a field is there.
#[derive(Clone, Debug)]
pub enum Present {
    /// It is.
    Here {
        /// What it says; none: as it stands there.
        value: Option<Text>,
        /// Where.
        span: Span,
    },
    /// It is not.
    Missing {
        /// Path of the file, from the root of the book.
        file: String,
        /// The line to write, with an example.
        write: String,
    },
}

/// Every record field of a system that the rules in force ask for, by its first visits and on a day.
pub fn records(
    book: &Book,
    site: &Site,
    system: &System,
    visits: usize,
    on: Date,
) -> Vec<RecordRow> {
    let mut rows = Vec::new();
    for rules in rules_of(site, on) {
        let mut walk = Walk {
            book,
            site,
            system,
            rules,
            rows: &mut rows,
        };
        if walk.circuits(on).is_empty() {
            continue;
        }
        for Field(subject, source) in rules.fields {
            walk.system_field(*subject, source, on);
        }
        let duties = obligations(site, system, visits, on);
        walk.due_fields(&duties, on);
        for number in 0..visits {
            walk.visit(number, &duties);
        }
    }
    rows
}

struct Walk<'a, 'r> {
    book: &'a Book,
    site: &'a Site,
    system: &'a System,
    rules: &'static RuleSet,
    rows: &'r mut Vec<RecordRow>,
}

fn here<T>(noted: Option<&Noted<T>>) -> Option<Present> {
    noted.map(|noted| Present::Here {
        value: None,
        span: noted.span,
    })
}

fn day(noted: Option<&Noted<Date>>) -> Option<Present> {
    noted.map(|noted| Present::Here {
        value: Some(noted.value.into()),
        span: noted.span,
    })
}

/// A moment with its day in full.
fn at(civil: DateTime) -> Message {
    Message::of("record-at")
        .with("day", civil.date())
        .with("clock", clock(civil))
}

/// Method, instrument and result of a look.
pub fn look_in_words(look: &Look) -> Message {
    let result = match &look.detail {
        Some(detail) => format!("{}; {detail}", look.result),
        None => look.result.clone(),
    };
    let with = look.with.as_ref().map_or("none", |with| &with.value);
    Message::of("event-look")
        .phrase("method", look.method.value.word())
        .with("with", with)
        .with("result", result)
}

/// A word of a closed list, said in the reader's language.
fn chosen<W: Word + Copy>(noted: Option<Noted<W>>) -> Option<Present> {
    noted.map(|noted| Present::Here {
        value: Some(Text::Phrase(noted.value.word())),
        span: noted.span,
    })
}

impl Walk<'_, '_> {
    /// A circuit in words.
    fn circuit(&self, circuit: usize) -> Text {
        let choice = self.system.circuit_choice(circuit);
        Message::of("record-circuit").with("circuit", choice).into()
    }

    /// Circuits that the rule covers on a day.
    fn circuits(&self, day: Date) -> Vec<usize> {
        let covered = |circuit: &usize| {
            self.rules.holds_on(day)
                && covered_on(self.rules, self.system, *circuit, day)
                    .is_some_and(|(coverage, _)| coverage.covered)
        };
        (0..self.system.circuits.len()).filter(covered).collect()
    }

    fn push(
        &mut self,
        (subject, source): (Subject, &'static str),
        (visit, circuit): (Option<usize>, Option<usize>),
        about: Text,
        present: Option<Present>,
    ) {
        let present = present.unwrap_or_else(|| {
            let (kind, write) = subject.line();
            Present::Missing {
                file: self.path(kind, visit),
                write,
            }
        });
        self.rows.push(RecordRow {
            rules: self.rules,
            source,
            subject,
            visit,
            circuit,
            about,
            present,
        });
    }

    fn path(&self, kind: FileKind, visit: Option<usize>) -> String {
        let name = kind.file_name();
        let visit = visit.and_then(|number| self.system.visits.get(number));
        match kind {
            FileKind::Book => name.to_owned(),
            FileKind::Site => format!("{}/{name}", self.site.folder),
            FileKind::System => format!("{}/{name}", self.system.path),
            _ => format!(
                "{}/{name}",
                visit.map_or(&self.system.path, |visit| &visit.path)
            ),
        }
    }

    /// A field that concerns the system, if the subject is one.
    fn system_field(&mut self, subject: Subject, source: &'static str, on: Date) {
        let site = self.site.note.as_ref();
        let system = self.system.note.as_ref();
        let contractor = self.book.note.as_ref().and_then(|b| b.contractor.as_ref());
        let of_all = match subject {
            Subject::Operator => here(site.and_then(|s| s.operator.as_ref())),
            Subject::Address => here(site.and_then(|s| s.address.as_ref())),
            Subject::Telephone => here(site.and_then(|s| s.telephone.as_ref())),
            Subject::Installed => day(system.and_then(|s| s.installed.as_ref())),
            Subject::Category => system.and_then(|s| chosen(s.category)),
            Subject::Company => here(contractor.and_then(|c| c.name.as_ref())),
            Subject::CompanyCertificate => here(contractor.and_then(|c| c.certificate.as_ref())),
            Subject::Refrigerant | Subject::FullCharge | Subject::FullChargeBy => {
                for circuit in self.circuits(on) {
                    let note = self.system.in_force(circuit, on).map(|entry| &entry.note);
                    let present = match subject {
                        Subject::Refrigerant => here(note.and_then(|n| n.refrigerant.as_ref())),
                        Subject::FullCharge => {
                            let full = note.and_then(|n| n.full_charge.as_ref());
                            full.map(|full| Present::Here {
                                value: Some(Text::Figure(
                                    print_mass(&full.value, self.site.units).to_string(),
                                )),
                                span: full.span,
                            })
                        }
                        _ => here(note.and_then(|n| n.full_charge_by.as_ref())),
                    };
                    let name = self.circuit(circuit);
                    self.push((subject, source), (None, Some(circuit)), name, present);
                }
                return;
            }
            Subject::DetectionCheck => {
                let fitted = system.and_then(|s| s.leak_detection_system);
                if !fitted.is_some_and(|yes| yes.value) {
                    return;
                }
                let checked = system.iter().flat_map(|s| &s.leak_detection_checked);
                day(checked
                    .filter(|day| day.value <= on)
                    .max_by_key(|day| day.value))
            }
            Subject::Mothballed => {
                for (number, circuit) in self.system.circuits.iter().enumerate() {
                    for entry in &circuit.in_force {
                        let status = entry.note.status.map(|status| status.value);
                        if status == Some(Status::Mothballed) && entry.from.value.date() <= on {
                            let name = self.circuit(number);
                            let present = Some(Present::Here {
                                value: Some(entry.from.value.date().into()),
                                span: entry.from.span,
                            });
                            self.push((subject, source), (None, Some(number)), name, present);
                        }
                    }
                }
                return;
            }
            _ => return,
        };
        let name = self.system.name().into();
        self.push((subject, source), (None, None), name, of_all);
    }

    /// What the rule asks for of a kind.
    fn of_rule<'d>(
        &self,
        duties: &'d [Obligation],
        kind: Duty,
    ) -> impl Iterator<Item = &'d Obligation> + use<'d> {
        let word = self.rules.word;
        let of_rule = move |duty: &&Obligation| duty.rules.is_some_and(|r| r.word == word);
        let of_kind = duties.iter().filter(move |duty| duty.duty == kind);
        of_kind.filter(of_rule)
    }

    /// Plans, reports and follow-up tests that fell due, and the plans and reports that are there.
    fn due_fields(&mut self, duties: &[Obligation], on: Date) {
        for Field(subject, source) in self.rules.fields {
            let kind = match subject {
                Subject::Plan => Duty::Plan,
                Subject::ChronicReport => Duty::Report,
                // One that was made stands with the visit that made it.
                Subject::FollowUpResult => Duty::FollowUp,
                _ => continue,
            };
            let at_visit = kind == Duty::FollowUp;
            let asked = self.of_rule(duties, kind);
            let asked = asked.filter(|duty| match duty.done {
                Some(_) => !at_visit,
                None => duty.by < on,
            });
            let asked: Vec<&Obligation> = asked.collect();
            for duty in asked {
                let present = duty.done.as_ref().map(|done| Present::Here {
                    value: Some(
                        Message::of(if kind == Duty::Plan {
                            "record-plan-made"
                        } else {
                            "record-reported"
                        })
                        .with("day", done.day)
                        .into(),
                    ),
                    span: done.span,
                });
                let about = Message::of("record-due-by").with("day", duty.by);
                self.push(
                    (*subject, source),
                    (None, duty.circuit),
                    about.into(),
                    present,
                );
            }
        }
    }

    fn visit(&mut self, number: usize, duties: &[Obligation]) {
        let Some(visit) = self.system.visits.get(number) else {
            return;
        };
        let circuits = self.circuits(visit.name.date);
        if circuits.is_empty() {
            return;
        }
        for Field(subject, source) in self.rules.fields {
            let key = (*subject, *source);
            match subject {
                Subject::Person | Subject::PersonCertificate => self.people(key, number, visit),
                Subject::Parts => self.parts(key, number, visit),
                Subject::Extension => self.extensions(key, number, visit),
                Subject::CheckResult | Subject::InspectionCertified => {
                    self.check(key, number, visit, &circuits);
                }
                Subject::Added
                | Subject::AddedOrigin
                | Subject::Recovered
                | Subject::RecoveredWhereTo
                | Subject::Purged
                | Subject::Seasonal => {
                    for movement in visit
                        .movements
                        .iter()
                        .filter(|m| circuits.contains(&m.circuit))
                    {
                        self.movement(key, number, movement);
                    }
                }
                Subject::LeakRate => {
                    for circuit in &circuits {
                        self.leak_rate(key, number, *circuit);
                    }
                }
                Subject::RepairResult | Subject::Cause => {
                    let repaired = |f: &&Finding| {
                        is_leak(f)
                            && !f.note.repairs.is_empty()
                            && f.circuit.is_none_or(|circuit| circuits.contains(&circuit))
                    };
                    for finding in visit.findings.iter().filter(repaired) {
                        self.repair(key, number, finding);
                    }
                }
                Subject::FollowUpResult => self.follow_up(key, number, visit, duties),
                _ => {}
            }
        }
    }

    fn people(&mut self, key: (Subject, &'static str), number: usize, visit: &Visit) {
        let mut told = Vec::new();
        for attendance in &visit.attendance {
            let id = &attendance.by.value;
            if told.contains(&id) {
                continue;
            }
            told.push(id);
            let person = self.book.people.get(id);
            let present = match key.0 {
                Subject::Person => here(person.and_then(|p| p.name.as_ref())),
                _ => here(person.and_then(|p| p.certificate.as_ref())),
            };
            let certificate = key.0 == Subject::PersonCertificate;
            let about = if certificate || present.is_none() {
                self.book.person_name(id)
            } else {
                String::new()
            };
            self.push(key, (Some(number), None), about.into(), present);
        }
    }

    /// Asked for where more time is claimed; what follows from a process shutdown needs no request.
    fn extensions(&mut self, key: (Subject, &'static str), number: usize, visit: &Visit) {
        let claims = visit.note.iter().flat_map(|note| &note.due);
        for (due, extension) in claims.filter_map(|due| Some((due, due.extension?))) {
            if extension.value != Extension::Shutdown {
                let about = Text::Phrase(extension.value.word());
                self.push(key, (Some(number), None), about, here(due.asked.as_ref()));
            }
        }
    }

    /// Asked for where a repair or work on a part was done, each part with the work on it.
    fn parts(&mut self, key: (Subject, &'static str), number: usize, visit: &Visit) {
        let work = visit.note.iter().flat_map(|note| &note.work);
        let parts: Vec<_> = work
            .filter_map(|work| Some((work.part.as_ref()?, work.work.as_ref())))
            .collect();
        let repaired = visit.findings.iter().any(|f| !f.note.repairs.is_empty());
        if parts.is_empty() && repaired {
            self.push(key, (Some(number), None), "".into(), None);
        }
        for (part, work) in parts {
            let value = work.map_or_else(
                || part.value.as_str().into(),
                |work| {
                    Message::of("record-part")
                        .with("part", part.value.as_str())
                        .with("work", work.value.as_str())
                        .into()
                },
            );
            let present = Present::Here {
                value: Some(value),
                span: part.span,
            };
            self.push(key, (Some(number), None), "".into(), Some(present));
        }
    }

    /// Asked for at a leak check, by its purpose or by what was searched. A search that says it did not
    /// go over all that is visible and accessible is none, and fills nothing.
    fn check(
        &mut self,
        key: (Subject, &'static str),
        number: usize,
        visit: &Visit,
        circuits: &[usize],
    ) {
        let periodic = visit
            .note
            .as_ref()
            .and_then(|note| note.purpose)
            .is_some_and(|purpose| purpose.value == Purpose::PeriodicCheck);
        let checked: Vec<usize> = circuits
            .iter()
            .copied()
            .filter(|circuit| whole_check(visit, *circuit).is_some())
            .collect();
        let in_part = |search: &Search| search.note.all_visible.is_some_and(|all| !all.value);
        let none = checked.is_empty() && visit.searches.iter().any(in_part);
        if none || (!periodic && checked.is_empty()) {
            return;
        }
        let whole = checked
            .first()
            .and_then(|circuit| whole_check(visit, *circuit));
        let search = whole.or(visit.searches.first());
        let present = match key.0 {
            Subject::CheckResult => search.and_then(|search| {
                let method = search.note.method?;
                let leaks = visit.findings.iter().filter(|f| is_leak(f)).count();
                let value = Message::of("record-leaks-found")
                    .with("day", search.started.value.date())
                    .phrase("method", method.value.word())
                    .with("leaks", leaks);
                Some(Present::Here {
                    value: Some(value.into()),
                    span: method.span,
                })
            }),
            _ => whole.into_iter().chain(&visit.searches).find_map(|search| {
                let all = search.note.all_visible.as_ref()?;
                let yes = if all.value { "answer-yes" } else { "answer-no" };
                Some(Present::Here {
                    value: Some(Message::of(yes).into()),
                    span: all.span,
                })
            }),
        };
        let several = self.system.several_circuits();
        let about = checked
            .iter()
            .filter(|_| several)
            .map(|circuit| self.circuit(*circuit))
            .collect();
        self.push(key, (Some(number), None), Text::List(about), present);
    }

    fn movement(&mut self, key: (Subject, &'static str), number: usize, movement: &Movement) {
        let cylinder = movement.note.cylinder.as_ref();
        let about = cylinder.map_or_else(
            || Text::from(""),
            |id| {
                Message::of("record-cylinder")
                    .with("cylinder", id.value.0.clone())
                    .into()
            },
        );
        let charged = movement.kind == MovementKind::Charged;
        let recovered = movement.kind == MovementKind::Recovered;
        let present = match key.0 {
            Subject::Added if charged => Some(self.mass(movement)),
            Subject::Recovered if recovered => Some(self.mass(movement)),
            Subject::Seasonal if movement.why == Some(MovementWhy::Seasonal) => {
                Some(self.mass(movement))
            }
            Subject::Purged if movement.kind == MovementKind::Purged => {
                // Without a share destroyed the whole of it counts as lost.
                let share = movement.note.destroyed.as_ref();
                share.map(|share| Present::Here {
                    value: Some(
                        Message::of("record-destroyed")
                            .with("moved", self.moved(movement))
                            .figure("share", print(&share.value, self.site.units))
                            .into(),
                    ),
                    span: share.span,
                })
            }
            Subject::RecoveredWhereTo if recovered => chosen(movement.note.destination),
            Subject::AddedOrigin if charged => {
                let note = cylinder.and_then(|id| self.book.cylinders.get(&id.value));
                let treated = note.and_then(|n| n.origin).is_some_and(|origin| {
                    matches!(origin.value, GasOrigin::Recycled | GasOrigin::Reclaimed)
                });
                let facility = note.and_then(|n| n.facility.as_ref());
                let certificate = note.and_then(|n| n.facility_certificate.as_ref());
                if treated && (facility.is_none() || certificate.is_none()) {
                    let key = if facility.is_none() {
                        &book_file::cylinder::FACILITY
                    } else {
                        &book_file::cylinder::FACILITY_CERTIFICATE
                    };
                    Some(Present::Missing {
                        file: self.path(FileKind::Book, None),
                        write: format!("{} = {}", key.name, key.example),
                    })
                } else {
                    note.and_then(|n| n.origin).map(|origin| Present::Here {
                        // Registered empty: what comes out of it was recovered into it.
                        value: Some(match origin.value {
                            GasOrigin::Empty => Message::of("record-recovered-before").into(),
                            origin => Text::Phrase(origin.word()),
                        }),
                        span: origin.span,
                    })
                }
            }
            _ => return,
        };
        self.push(key, (Some(number), Some(movement.circuit)), about, present);
    }

    fn mass(&self, movement: &Movement) -> Present {
        Present::Here {
            value: Some(self.moved(movement).into()),
            span: movement.amount.span(),
        }
    }

    fn moved(&self, movement: &Movement) -> Message {
        let gas = self.book.refrigerant_moved(self.system, movement);
        let mass = Message::of("record-of-gas")
            .figure(
                "mass",
                print_mass(&movement.amount.measured(), self.site.units),
            )
            .with("refrigerant", gas.map_or("none", |gas| gas.designation));
        Message::of("record-moved")
            .with("mass", mass)
            .with("day", movement.at.value.date())
    }

    fn leak_rate(&mut self, key: (Subject, &'static str), number: usize, circuit: usize) {
        let account = account(self.system, circuit, number);
        let Some(addition) = account.addition_of(number) else {
            return;
        };
        let place = (self.site, self.system);
        let rate = statutory_rate(self.rules, place, &account, (circuit, number));
        let present = rate.map(|figure| Present::Here {
            value: Some(
                Message::of("record-rate")
                    .figure("rate", figure.value.print(self.site.units))
                    .phrase("method", figure.method.name)
                    .into(),
            ),
            span: addition.spans.last().copied().unwrap_or(addition.at.span),
        });
        let present = present.unwrap_or_else(|| Present::Missing {
            file: self.path(FileKind::System, None),
            write: "[[earlier]] with what = \"charged\", at and mass: the addition before this one"
                .to_owned(),
        });
        let name = self.circuit(circuit);
        self.push(key, (Some(number), Some(circuit)), name, Some(present));
    }

    fn repair(&mut self, key: (Subject, &'static str), number: usize, finding: &Finding) {
        let note = &finding.note;
        let present = match key.0 {
            Subject::Cause => note.cause.as_ref().map(|cause| Present::Here {
                value: Some(cause.value.as_str().into()),
                span: cause.span,
            }),
            _ => self.proofs(number, finding),
        };
        let about = self.place(finding);
        self.push(key, (Some(number), finding.circuit), about.into(), present);
    }

    fn place(&self, finding: &Finding) -> String {
        let point = finding.note.point.as_ref();
        let registered = point.filter(|point| self.system.points.get(&point.value).is_some());
        registered.map_or_else(
            || finding.note.title.clone(),
            |point| self.system.point_name(&point.value),
        )
    }

    /// Every proof of a finding with its time and what it showed, in order of time.
    fn proofs(&self, number: usize, finding: &Finding) -> Option<Present> {
        let visit = self.system.visits.get(number)?;
        let proofs = &finding.note.proofs;
        let span = match proofs.last()? {
            Proof::Look(look) => look.span,
            Proof::Named(name) => name.span,
        };
        let told = proofs.iter().map(|proof| self.proof(visit, proof));
        let mut told: Vec<(Option<DateTime>, Message)> = told.collect();
        told.sort_by_key(|(at, _)| *at);
        let told = told.into_iter().map(|(_, told)| told);
        let value = told.reduce(|first, then| {
            let message = Message::of("record-and-then").with("first", first);
            message.with("next", then)
        })?;
        Some(Present::Here {
            value: Some(value.into()),
            span,
        })
    }

    fn proof(&self, visit: &Visit, proof: &Proof) -> (Option<DateTime>, Message) {
        let told = |civil: DateTime, what: Message| {
            let message = Message::of("record-proof").with("at", at(civil));
            (Some(civil), message.with("what", what))
        };
        match written(visit, proof).map(|clearance| clearance.ground) {
            Some(Ground::Look(look)) => told(moment_of(visit, look.at.value), look_in_words(look)),
            Some(Ground::Pressure(test)) => {
                let verdict = self.system.circuits.get(test.circuit).map(|circuit| {
                    let hold = hold(test, circuit, visit);
                    let size = hold.limit.map(|limit| limit.value.print(self.site.units));
                    hold.verdict.short(&size.unwrap_or_default())
                });
                let test_of = Message::of("record-pressure-test").with("test", test.id.0.as_str());
                let what = match verdict {
                    Some(verdict) => test_of.with("verdict", verdict),
                    None => test_of.with("verdict", ""),
                };
                told(test.end.at.value.civil, what)
            }
            Some(Ground::Vacuum(test)) => {
                let met = match rise(test, self.system, visit).acceptance {
                    Acceptance::Met => "met",
                    Acceptance::NotMet => "not-met",
                    Acceptance::TooShort | Acceptance::NoLimit => "open",
                };
                let what = Message::of("record-vacuum-test").with("test", test.id.0.as_str());
                told(test.end.at.value.civil, what.with("limit", met))
            }
            Some(Ground::Search(search)) => {
                let id = search.note.id.as_ref();
                let id = id.map(|id| id.value.to_string()).unwrap_or_default();
                let what = Message::of("proof-search").with("name", id);
                told(search.ended.value.civil, what)
            }
            None => {
                let name = match proof {
                    Proof::Named(name) => name.value.to_string(),
                    Proof::Look(look) => look.result.clone(),
                };
                (None, Message::of("proof-search").with("name", name))
            }
        }
    }

    /// The follow-up verification tests that a visit made: of each place that it looked at again.
    fn follow_up(
        &mut self,
        key: (Subject, &'static str),
        number: usize,
        visit: &Visit,
        duties: &[Obligation],
    ) {
        let mut told = Vec::new();
        for duty in self.of_rule(duties, Duty::FollowUp) {
            let here = |day: Date| day >= visit.name.date && day <= visit.last_day();
            let Some(done) = duty.done.as_ref().filter(|done| here(done.day)) else {
                continue;
            };
            if told.contains(&(duty.circuit, done.span)) {
                continue;
            }
            told.push((duty.circuit, done.span));
            let of_circuit = |f: &&Finding| f.circuit.is_none() || f.circuit == duty.circuit;
            let again = |f: &&Finding| f.note.repairs.is_empty() && !f.note.proofs.is_empty();
            let places: Vec<&Finding> = visit
                .findings
                .iter()
                .filter(of_circuit)
                .filter(again)
                .collect();
            for finding in &places {
                let present = self.proofs(number, finding);
                let about = self.place(finding);
                self.push(key, (Some(number), duty.circuit), about.into(), present);
            }
            if places.is_empty() {
                let value = Message::of("record-looked-again").with("day", done.day);
                let present = Present::Here {
                    value: Some(value.into()),
                    span: done.span,
                };
                let circuit = duty.circuit.map(|circuit| self.circuit(circuit));
                let about = circuit.unwrap_or_else(|| "".into());
                self.push(key, (Some(number), duty.circuit), about, Some(present));
            }
        }
    }
}
