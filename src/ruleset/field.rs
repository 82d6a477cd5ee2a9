//! What a rule wants on record, by subject; the key of the notes that holds it.

use crate::vocabulary::{
    FileKind, book_file, refrigerant_file, site_file, system_file, visit_file,
};

/// What has to be on record.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Subject {
    /// Name of the operator.
    Operator,
    /// Address of the operator or the system.
    Address,
    /// Telephone of the operator.
    Telephone,
    /// Type of gas.
    Refrigerant,
    /// Full charge.
    FullCharge,
    /// How the full charge was determined.
    FullChargeBy,
    /// Date of installation.
    Installed,
    /// Category, which the trigger hangs on.
    Category,
    /// Name of the company that did the work.
    Company,
    /// Its certificate.
    CompanyCertificate,
    /// Name of the person.
    Person,
    /// The person's certificate.
    PersonCertificate,
    /// Parts, and the work on each.
    Parts,
    /// Quantity added, with its type and date.
    Added,
    /// Whether what was added was recycled or reclaimed, and by whom.
    AddedOrigin,
    /// Quantity recovered.
    Recovered,
    /// What became of it.
    RecoveredWhereTo,
    /// Leak rate at an addition, and its method.
    LeakRate,
    /// Date, method and result of a leak check.
    CheckResult,
    /// That all visible and accessible parts were inspected.
    InspectionCertified,
    /// Test of a repair and its result.
    RepairResult,
    /// Test of a repair after normal operation, and its result.
    FollowUpResult,
    /// Cause of a leak.
    Cause,
    /// Plan to retrofit or retire.
    Plan,
    /// Request for an extension.
    Extension,
    /// Day on which a plant was mothballed.
    Mothballed,
    /// Quantity purged, and how much of it was destroyed.
    Purged,
    /// Quantity taken out, or put back, for the season.
    Seasonal,
    /// Report of a chronic loss.
    ChronicReport,
    /// Check of the automatic leak detection system.
    DetectionCheck,
}

/// A subject with the citation that asks for it.
#[derive(Clone, Copy, Debug)]
pub struct Field(pub Subject, pub &'static str);

impl Subject {
    /// What it is, in print.
    pub fn title(self) -> &'static str {
        match self {
            Subject::Operator => "operator",
            Subject::Address => "address",
            Subject::Telephone => "telephone of the operator",
            Subject::Refrigerant => "type of gas",
            Subject::FullCharge => "full charge",
            Subject::FullChargeBy => "how the full charge was determined",
            Subject::Installed => "date of installation",
            Subject::Category => "category of the system",
            Subject::Company => "company that did the work",
            Subject::CompanyCertificate => "certificate of the company",
            Subject::Person => "person who did the work",
            Subject::PersonCertificate => "certificate of the person",
            Subject::Parts => "parts and the work on each",
            Subject::Added => "quantity added",
            Subject::AddedOrigin => "origin of what was added",
            Subject::Recovered => "quantity recovered",
            Subject::RecoveredWhereTo => "destination of what was recovered",
            Subject::LeakRate => "leak rate and method",
            Subject::CheckResult => "leak check: date, method, result",
            Subject::InspectionCertified => "that all visible and accessible parts were inspected",
            Subject::RepairResult => "test of the repair and its result",
            Subject::FollowUpResult => "follow-up verification test and its result",
            Subject::Cause => "cause of the leak",
            Subject::Plan => "plan to retrofit or retire",
            Subject::Extension => "request for an extension",
            Subject::Mothballed => "day of mothballing",
            Subject::Purged => "quantity purged, and share destroyed",
            Subject::Seasonal => "quantity moved for the season",
            Subject::ChronicReport => "report of chronic loss",
            Subject::DetectionCheck => "check of the automatic leak detection system",
        }
    }

    /// The file that holds it, and the line to write, with the vocabulary's own example.
    pub fn line(self) -> (FileKind, String) {
        use FileKind as F;
        let entry = |file, entry: crate::vocabulary::Entry| {
            (file, format!("{} = {}", entry.name, entry.example))
        };
        match self {
            Subject::Operator => entry(F::Site, site_file::top::OPERATOR.entry()),
            Subject::Address => entry(F::Site, site_file::top::ADDRESS.entry()),
            Subject::Telephone => entry(F::Site, site_file::top::TELEPHONE.entry()),
            Subject::Refrigerant => entry(F::System, system_file::in_force::REFRIGERANT.entry()),
            Subject::FullCharge | Subject::LeakRate => {
                entry(F::System, system_file::in_force::FULL_CHARGE.entry())
            }
            Subject::FullChargeBy => {
                entry(F::System, system_file::in_force::FULL_CHARGE_BY.entry())
            }
            Subject::Installed => entry(F::System, system_file::top::INSTALLED.entry()),
            Subject::Category => entry(F::System, system_file::top::CATEGORY.entry()),
            Subject::Company => entry(F::Book, book_file::contractor::NAME.entry()),
            Subject::CompanyCertificate => {
                entry(F::Book, book_file::contractor::CERTIFICATE.entry())
            }
            Subject::Person => entry(F::Book, book_file::person::NAME.entry()),
            Subject::PersonCertificate => entry(F::Book, book_file::person::CERTIFICATE.entry()),
            Subject::Parts => (
                F::Visit,
                format!(
                    "[[work]] with {} = {} and {} = {}",
                    visit_file::work::PART.name,
                    visit_file::work::PART.example,
                    visit_file::work::WORK.name,
                    visit_file::work::WORK.example
                ),
            ),
            Subject::Added | Subject::Recovered => {
                entry(F::Refrigerant, refrigerant_file::movement::MASS.entry())
            }
            Subject::AddedOrigin => entry(F::Book, book_file::cylinder::ORIGIN.entry()),
            Subject::RecoveredWhereTo => entry(
                F::Refrigerant,
                refrigerant_file::movement::DESTINATION.entry(),
            ),
            Subject::CheckResult => (
                F::Readings,
                "[[search]] with method, started, ended and areas".to_owned(),
            ),
            Subject::InspectionCertified => entry(
                F::Readings,
                crate::vocabulary::readings_file::search::ALL_VISIBLE.entry(),
            ),
            Subject::RepairResult | Subject::FollowUpResult => (
                F::Findings,
                "- proof: 16:50 electronic ld-2, no alarm".to_owned(),
            ),
            Subject::Cause => (F::Findings, "- cause: nut backed off".to_owned()),
            Subject::Plan => (
                F::System,
                "[[plan]] with made, kind and complete-by".to_owned(),
            ),
            Subject::Extension => entry(F::Visit, visit_file::due::ASKED.entry()),
            Subject::Mothballed => entry(F::System, system_file::in_force::FROM.entry()),
            Subject::Purged => entry(
                F::Refrigerant,
                refrigerant_file::movement::DESTROYED.entry(),
            ),
            Subject::Seasonal => entry(F::Refrigerant, refrigerant_file::movement::MASS.entry()),
            Subject::ChronicReport => {
                entry(F::System, system_file::top::CHRONIC_LOSS_REPORTED.entry())
            }
            Subject::DetectionCheck => {
                entry(F::System, system_file::top::LEAK_DETECTION_CHECKED.entry())
            }
        }
    }
}
