//! `account`: where every kilogram came from and went, by circuit, by cylinder and by year.

use crate::command::arguments::{AccountTable, Sheet};
use crate::command::console::{Console, Exit};
use crate::command::loaded::{Loaded, Target};
use crate::command::plain_table::{comma_table, plain_table};
use crate::job::{Site, System};
use crate::quantity::{Flavour, UnitSystem, print_as};
use crate::refrigerant::Refrigerant;
use crate::text::{Sources, Span};
use crate::vocabulary::Word;
use crate::working::account::{Account, Entry, account as account_of};
use crate::working::balance::{Balance, Known, Place, Sums, Transfer, balances};
use crate::working::cylinder_balance::{CylinderBalance, cylinder_balances};
use serde_json::{Value, json};
use std::collections::{BTreeMap, BTreeSet};

/// The accounts of a system up to a visit.
struct SystemAccount<'a> {
    site: &'a Site,
    system: &'a System,
    circuits: Vec<(String, Account, Vec<Balance>)>,
}

/// The unit and the decimals in which masses are printed.
#[derive(Clone, Copy)]
struct Unit {
    symbol: &'static str,
    decimals: u8,
}

impl Unit {
    const PLAIN: Self = Self {
        symbol: "kg",
        decimals: 3,
    };

    fn of(units: UnitSystem) -> Self {
        let symbol = match units {
            UnitSystem::Metric => "kg",
            UnitSystem::Us => "lb",
        };
        Self {
            symbol,
            decimals: 2,
        }
    }

    /// The unit in which the tare of a cylinder is written.
    fn of_cylinder(cylinder: &CylinderBalance<'_>) -> Self {
        let written = cylinder.note.tare.map(|tare| tare.value.unit);
        Self::of(match written {
            Some("lb" | "oz") => UnitSystem::Us,
            _ => UnitSystem::Metric,
        })
    }

    fn print(self, kg: f64) -> String {
        let printed = print_as(Flavour::Mass, kg.abs(), self.symbol, self.decimals);
        let number = printed.map_or_else(String::new, |printed| printed.number);
        let nothing = !number.contains(|c: char| c.is_ascii_digit() && c != '0');
        if kg < 0.0 && !nothing {
            format!("-{number}")
        } else {
            number
        }
    }

    fn maybe(self, kg: Option<f64>) -> String {
        kg.map_or_else(|| "not known".to_owned(), |kg| self.print(kg))
    }
}

/// Prints the account of a part of a book.
pub fn account(
    loaded: &Loaded,
    target: &Target,
    table: Option<AccountTable>,
    sheet: Sheet,
    console: &Console,
) -> Exit {
    let systems = systems(loaded, target);
    let cylinders = cylinders(loaded, target, &systems);
    let text = match sheet {
        Sheet::Json => format!("{:#}\n", to_json(loaded, &systems, &cylinders)),
        Sheet::Csv => {
            let (heads, rows) = one_table(
                loaded,
                &systems,
                &cylinders,
                table.unwrap_or(AccountTable::Movement),
            );
            let Some(text) = comma_table(&heads, &rows) else {
                return Exit::OurFault;
            };
            text
        }
        Sheet::People => for_people(loaded, &systems, &cylinders, table),
    };
    console.out(&text);
    if loaded.diagnostics_of(target).errors() == 0 {
        Exit::Fine
    } else {
        console.err(
            "the notes have errors: what could not be read is in no sum; see `rimebook check`\n",
        );
        Exit::Errors
    }
}

/// The systems of a target; of a visit, its system up to and with it.
fn systems<'a>(loaded: &'a Loaded, target: &Target) -> Vec<SystemAccount<'a>> {
    let mut last: BTreeMap<&str, (&Site, &System, usize)> = BTreeMap::new();
    for (site, system, number) in loaded.visits_of(target) {
        last.insert(&system.path, (site, system, number));
    }
    last.into_values()
        .map(|(site, system, number)| {
            let of_circuit = |circuit: usize| {
                let account = account_of(system, circuit, number);
                let balances = balances(&loaded.book, system, circuit, &account);
                (system.circuit_name(circuit), account, balances)
            };
            SystemAccount {
                site,
                system,
                circuits: (0..system.circuits.len()).map(of_circuit).collect(),
            }
        })
        .collect()
}

/// The cylinders that moved refrigerant there, each over the whole book; of a whole book, all.
fn cylinders<'a>(
    loaded: &'a Loaded,
    target: &Target,
    systems: &[SystemAccount<'_>],
) -> Vec<CylinderBalance<'a>> {
    let entries = systems
        .iter()
        .flat_map(|s| &s.circuits)
        .flat_map(|(_, account, _)| &account.entries);
    let used: BTreeSet<_> = entries.filter_map(|e| e.cylinder.as_ref()).collect();
    let mut all = cylinder_balances(&loaded.book);
    all.retain(|cylinder| target.path.is_empty() || used.contains(cylinder.id));
    all
}

fn named(gas: Option<&'static Refrigerant>) -> String {
    gas.map_or_else(|| "not known".to_owned(), |gas| gas.designation.to_owned())
}

fn place(place: &Place, circuit: &str) -> String {
    match place {
        Place::Circuit => circuit.to_owned(),
        Place::Cylinder(id) => format!("cylinder {id}"),
        Place::UnnamedCylinder => "cylinder not named".to_owned(),
        Place::LetOut(kind) => kind.word().to_owned(),
        Place::Destroyed => "purged, destroyed".to_owned(),
        Place::Leaked => "leaked".to_owned(),
    }
}

fn known(balance: &Balance) -> &'static str {
    match balance.known {
        Known::Filled => "filled last; less what leaked since",
        Known::AtMost => "at most",
        Known::Emptied => "taken out",
        Known::Unknown => "no full charge noted",
    }
}

fn heads(names: &[&str]) -> Vec<String> {
    names.iter().map(|name| (*name).to_owned()).collect()
}

fn circuit_rows(of: &SystemAccount<'_>, unit: Unit) -> Vec<Vec<String>> {
    let mut rows = Vec::new();
    for (name, _, balances) in &of.circuits {
        for balance in balances {
            let sums = Sums::of(&balance.transfers);
            rows.push(vec![
                name.clone(),
                named(balance.refrigerant),
                unit.maybe(balance.before_kg),
                unit.print(sums.charged),
                unit.print(sums.recovered),
                unit.print(sums.let_out),
                unit.print(sums.leaked),
                unit.maybe(balance.now_kg),
                unit.print(sums.variance.sqrt()),
                known(balance).to_owned(),
            ]);
        }
    }
    rows
}

const CIRCUIT: [&str; 10] = [
    "Circuit",
    "Refrigerant",
    "|Before",
    "|Charged",
    "|Recovered",
    "|Let out",
    "|Leaked",
    "|Now",
    "|±",
    "How that is known",
];

fn years(transfers: &[Transfer]) -> BTreeMap<i16, Sums> {
    let years: BTreeSet<i16> = transfers.iter().map(|t| t.at.date().year()).collect();
    let of_year = |year: i16| Sums::of(transfers.iter().filter(|t| t.at.date().year() == year));
    years
        .into_iter()
        .map(|year| (year, of_year(year)))
        .collect()
}

fn year_rows(of: &SystemAccount<'_>, unit: Unit) -> Vec<Vec<String>> {
    let mut rows = Vec::new();
    for (name, _, balances) in &of.circuits {
        for balance in balances {
            for (year, sums) in years(&balance.transfers) {
                rows.push(vec![
                    name.clone(),
                    named(balance.refrigerant),
                    year.to_string(),
                    unit.print(sums.charged),
                    unit.print(sums.recovered),
                    unit.print(sums.let_out),
                    unit.print(sums.leaked),
                ]);
            }
        }
    }
    rows
}

const YEAR: [&str; 7] = [
    "Circuit",
    "Refrigerant",
    "Year",
    "|Charged",
    "|Recovered",
    "|Let out",
    "|Leaked",
];

fn movement_rows(of: &SystemAccount<'_>, unit: Unit, sources: &Sources) -> Vec<Vec<String>> {
    let at = |span: Option<Span>| span.map_or_else(String::new, |span| sources.place(span));
    let mut rows = Vec::new();
    for (name, _, balances) in &of.circuits {
        for balance in balances {
            for transfer in &balance.transfers {
                rows.push(vec![
                    name.clone(),
                    named(balance.refrigerant),
                    transfer.at.civil.strftime("%Y-%m-%d %H:%M").to_string(),
                    place(&transfer.from, name),
                    place(&transfer.to, name),
                    transfer
                        .why
                        .map_or_else(String::new, |why| why.word().to_owned()),
                    unit.print(transfer.kg),
                    transfer
                        .uncertainty_kg
                        .map_or_else(String::new, |half| unit.print(half)),
                    at(transfer.span),
                ]);
            }
        }
    }
    rows
}

const MOVEMENT: [&str; 9] = [
    "Circuit",
    "Refrigerant",
    "When",
    "From",
    "To",
    "Why",
    "|Mass",
    "|±",
    "Place",
];

fn earlier(account: &Account) -> impl Iterator<Item = &Entry> {
    account.entries.iter().filter(|entry| entry.visit.is_none())
}

fn earlier_rows(of: &SystemAccount<'_>, unit: Unit, sources: &Sources) -> Vec<Vec<String>> {
    let mut rows = Vec::new();
    for (name, account, _) in &of.circuits {
        for entry in earlier(account) {
            let span = entry.spans.first();
            rows.push(vec![
                name.clone(),
                entry.at.value.civil.strftime("%Y-%m-%d").to_string(),
                entry.kind.word().to_owned(),
                unit.print(entry.kg),
                span.map_or_else(String::new, |span| sources.place(*span)),
            ]);
        }
    }
    rows
}

fn cylinder_row(cylinder: &CylinderBalance<'_>, unit: Unit) -> Vec<String> {
    let gas = cylinder.note.refrigerant.as_ref();
    let different: f64 = cylinder.differences.iter().map(|d| d.kg).sum();
    vec![
        cylinder.id.0.clone(),
        gas.map_or_else(String::new, |gas| gas.value.0.clone()),
        unit.print(cylinder.before_kg),
        unit.print(cylinder.filled_kg),
        unit.print(cylinder.recovered_kg),
        unit.print(cylinder.charged_kg),
        unit.print(cylinder.let_out_kg),
        unit.print(cylinder.given_back_kg),
        unit.print(different),
        cylinder
            .left_kg
            .map_or_else(|| "given back".to_owned(), |kg| unit.print(kg)),
        unit.symbol.to_owned(),
    ]
}

const CYLINDER: [&str; 11] = [
    "Cylinder",
    "Refrigerant",
    "|Before",
    "|Filled",
    "|Recovered",
    "|Charged",
    "|Let out",
    "|Given back",
    "|Not noted",
    "|Left",
    "Unit",
];

/// What makes the rows of a system.
type Rows<'r> = &'r dyn Fn(&SystemAccount<'_>) -> Vec<Vec<String>>;

/// One table over all systems, masses in kg, each row with the path of its system.
fn one_table(
    loaded: &Loaded,
    systems: &[SystemAccount<'_>],
    cylinders: &[CylinderBalance<'_>],
    table: AccountTable,
) -> (Vec<String>, Vec<Vec<String>>) {
    let unit = Unit::PLAIN;
    let (names, rows_of): (&[&str], Rows<'_>) = match table {
        AccountTable::Cylinder => {
            let rows = cylinders.iter().map(|c| cylinder_row(c, unit)).collect();
            return (in_unit(&CYLINDER, unit), rows);
        }
        AccountTable::Circuit => (&CIRCUIT, &|of| circuit_rows(of, unit)),
        AccountTable::Year => (&YEAR, &|of| year_rows(of, unit)),
        AccountTable::Movement => (&MOVEMENT, &|of| movement_rows(of, unit, &loaded.sources)),
    };
    let mut rows = Vec::new();
    for of in systems {
        for mut row in rows_of(of) {
            row.insert(0, of.system.path.clone());
            rows.push(row);
        }
    }
    let mut heads = in_unit(names, unit);
    heads.insert(0, "System".to_owned());
    (heads, rows)
}

/// Headings with the unit behind those of numbers.
fn in_unit(names: &[&str], unit: Unit) -> Vec<String> {
    let with = |name: &str| match name.strip_prefix('|') {
        Some(_) => format!("{name}, {}", unit.symbol),
        None => name.to_owned(),
    };
    names.iter().map(|name| with(name)).collect()
}

fn for_people(
    loaded: &Loaded,
    systems: &[SystemAccount<'_>],
    cylinders: &[CylinderBalance<'_>],
    table: Option<AccountTable>,
) -> String {
    let wanted = |one: AccountTable| table.is_none_or(|table| table == one);
    let mut out = String::new();
    for of in systems {
        let unit = Unit::of(of.site.units);
        let mut part = |title: &str, names: &[&str], rows: Vec<Vec<String>>| {
            if !rows.is_empty() {
                out += &format!(
                    "\n{title}, {}\n{}",
                    unit.symbol,
                    plain_table(&heads(names), &rows)
                );
            }
        };
        let of_system = |what: &str| format!("{}: {what}", of.system.path);
        if wanted(AccountTable::Circuit) {
            part(&of_system("by circuit"), &CIRCUIT, circuit_rows(of, unit));
        }
        if wanted(AccountTable::Year) {
            part(&of_system("by year"), &YEAR, year_rows(of, unit));
        }
        if wanted(AccountTable::Movement) {
            let rows = movement_rows(of, unit, &loaded.sources);
            part(&of_system("every movement"), &MOVEMENT, rows);
            let names = ["Circuit", "When", "What", "|Mass", "Place"];
            let rows = earlier_rows(of, unit, &loaded.sources);
            part(&of_system("earlier records, in no sum"), &names, rows);
        }
        if wanted(AccountTable::Circuit) {
            out += &remarks(of);
        }
    }
    if wanted(AccountTable::Cylinder) && !cylinders.is_empty() {
        out += &cylinders_for_people(loaded, cylinders);
    }
    if out.is_empty() {
        out.push_str("no refrigerant was moved\n");
    }
    out.trim_start_matches('\n').to_owned()
}

fn remarks(of: &SystemAccount<'_>) -> String {
    let since = of
        .circuits
        .iter()
        .filter_map(|(_, a, _)| a.complete_since)
        .min();
    let since = since.map_or_else(String::new, |since| {
        format!("Complete only since {}. ", since.date())
    });
    format!(
        "\n  {since}Before is nothing where the circuit was first charged in this book, else taken as the\n  full charge in force. Before + charged - recovered - let out - leaked = now. Leaked is what was\n  missing when the circuit was next filled or emptied; what has leaked since is not yet in it.\n"
    )
}

fn cylinders_for_people(loaded: &Loaded, cylinders: &[CylinderBalance<'_>]) -> String {
    let rows: Vec<_> = cylinders
        .iter()
        .map(|c| cylinder_row(c, Unit::of_cylinder(c)))
        .collect();
    let mut out = format!(
        "\nby cylinder, over the whole book\n{}",
        plain_table(&heads(&CYLINDER), &rows)
    );
    for cylinder in cylinders {
        let unit = Unit::of_cylinder(cylinder);
        for difference in &cylinder.differences {
            out += &format!(
                "  cylinder {} weighed {} {} {} on {} than it was left, and no note says why ({})\n",
                cylinder.id,
                unit.print(difference.kg.abs()),
                unit.symbol,
                if difference.kg > 0.0 { "more" } else { "less" },
                difference.on,
                loaded.sources.place(difference.span)
            );
        }
        if cylinder.note.tare.is_none() {
            out += &format!(
                "  cylinder {}: no tare is noted, so that before and left are cylinder and gas together\n",
                cylinder.id
            );
        }
    }
    out + "\n  Before + filled + recovered - charged - let out - given back + not noted = left.\n"
}

/// A mass in kg to a milligram.
fn kg(mass: f64) -> f64 {
    (mass * 1e6).round() / 1e6 + 0.0
}

fn sums_json(sums: &Sums) -> Value {
    json!({
        "charged": kg(sums.charged), "recovered": kg(sums.recovered),
        "let-out": kg(sums.let_out), "leaked": kg(sums.leaked),
        "uncertainty": kg(sums.variance.sqrt()),
    })
}

fn to_json(
    loaded: &Loaded,
    systems: &[SystemAccount<'_>],
    cylinders: &[CylinderBalance<'_>],
) -> Value {
    json!({
        "version": 1, "command": "account", "unit": "kg",
        "systems": systems.iter().map(|of| system_json(loaded, of)).collect::<Vec<_>>(),
        "cylinders": cylinders.iter().map(|c| cylinder_json(loaded, c)).collect::<Vec<_>>(),
    })
}

fn system_json(loaded: &Loaded, of: &SystemAccount<'_>) -> Value {
    let place_of = |span: Option<Span>| span.map(|span| loaded.sources.place(span));
    let balance_json = |name: &str, balance: &Balance| {
        let transfer = |t: &Transfer| {
            json!({
                "at": t.at.civil.to_string(), "from": place(&t.from, name), "to": place(&t.to, name),
                "why": t.why.map(Word::word), "mass": kg(t.kg),
                "uncertainty": t.uncertainty_kg.map(kg), "place": place_of(t.span),
            })
        };
        let year = |(year, sums): (i16, Sums)| json!({ "year": year, "sums": sums_json(&sums) });
        json!({
            "refrigerant": balance.refrigerant.map(|gas| gas.designation),
            "before": balance.before_kg.map(kg),
            "sums": sums_json(&Sums::of(&balance.transfers)),
            "now": balance.now_kg.map(kg), "now-known": known(balance),
            "years": years(&balance.transfers).into_iter().map(year).collect::<Vec<_>>(),
            "movements": balance.transfers.iter().map(transfer).collect::<Vec<_>>(),
        })
    };
    let circuit_json = |(name, account, balances): &(String, Account, Vec<Balance>)| {
        let record = |entry: &Entry| {
            json!({
                "at": entry.at.value.date().to_string(), "what": entry.kind.word(),
                "mass": kg(entry.kg), "place": place_of(entry.spans.first().copied()),
            })
        };
        json!({
            "circuit": name,
            "complete-since": account.complete_since.map(|since| since.civil.to_string()),
            "refrigerants": balances.iter().map(|b| balance_json(name, b)).collect::<Vec<_>>(),
            "earlier": earlier(account).map(record).collect::<Vec<_>>(),
        })
    };
    json!({
        "system": of.system.path,
        "circuits": of.circuits.iter().map(circuit_json).collect::<Vec<_>>(),
    })
}

fn cylinder_json(loaded: &Loaded, cylinder: &CylinderBalance<'_>) -> Value {
    let difference = |d: &crate::working::cylinder_balance::Difference| json!({ "on": d.on.to_string(), "mass": kg(d.kg), "place": loaded.sources.place(d.span) });
    json!({
        "cylinder": cylinder.id.0,
        "refrigerant": cylinder.note.refrigerant.as_ref().map(|gas| &gas.value.0),
        "tare": cylinder.note.tare.map(|tare| kg(tare.value.value.si())),
        "before": kg(cylinder.before_kg), "filled": kg(cylinder.filled_kg),
        "recovered": kg(cylinder.recovered_kg), "charged": kg(cylinder.charged_kg),
        "let-out": kg(cylinder.let_out_kg), "given-back": kg(cylinder.given_back_kg),
        "not-noted": cylinder.differences.iter().map(difference).collect::<Vec<_>>(),
        "left": cylinder.left_kg.map(kg),
    })
}
