//! What the limit of a test means in service: the same opening, with refrigerant at its pressure behind it.
//!
//! Through a narrow channel gas flows in one of two manners, or between them, and a test cannot tell which: the result is a
//! bracket of two figures. Vapour only: a leak below the level of the liquid lets out more, and that is not worked out.

use crate::job::{Atmosphere, Circuit, PressureTest, VacuumTest, Visit};
use crate::quantity::{Flavour, Measured, Pressure};
use crate::refrigerant::{Gas, Refrigerant, gas};
use crate::text::{Message, Noted, Text};
use crate::vocabulary::Identifier;
use crate::vocabulary::readings_file::{PressureTestPurpose, TestGas};
use crate::working::leak_size::mass_rate;
use crate::working::working::{Figure, Method, Origin, Value, Working};

/// Pressure that stands behind the opening in service.
pub static PRESSURE: Method = Method {
    id: "service-pressure",
    name: "Pressure in service",
    formula: "p_s = bubble pressure at T, or the highest that was read, where that is more; at most the plate's",
    mathematics: "p_s = cases(p_\"read\" & quad p_\"read\" > p_\"bubble\", min(p_\"bubble\" (T), p_\"plate\") & quad p_\"read\" <= p_\"bubble\")",
    source: "saturation from tables made with CoolProp 8.0.0",
};

/// Mass rate in service, if the channel is wide enough for viscous flow.
pub static VISCOUS: Method = Method {
    id: "in-service-viscous",
    name: "Leak in service, viscous flow",
    formula: "ṁ = Q × (η_t ÷ η_s) × (p_s² − p_b²) ÷ (p_t² − p_c²) × M ÷ (R × T)",
    mathematics: "dot(m) = Q dot eta_t / eta_s dot (p_s^2 - p_b^2) / (p_t^2 - p_c^2) dot M / (R T)",
    source: "laminar flow of an ideal gas through an unchanged channel (Poiseuille); η at 20 °C and 101 325 Pa",
};

/// Mass rate in service, if the channel is so fine that the flow is molecular.
pub static MOLECULAR: Method = Method {
    id: "in-service-molecular",
    name: "Leak in service, molecular flow",
    formula: "ṁ = Q × √(M_t ÷ M) × (p_s − p_b) ÷ (p_t − p_c) × M ÷ (R × T)",
    mathematics: "dot(m) = Q dot sqrt(M_t / M) dot (p_s - p_b) / (p_t - p_c) dot M / (R T)",
    source: "free molecular flow through an unchanged channel (Knudsen)",
};

/// Condensing temperature that stands for service on the high side, and why.
pub const HIGH_SIDE: (f64, &str) = (
    313.15,
    "condensing at 40 °C on a warm day stands for service on the high side; no reading of this visit was higher",
);
/// Temperature at standstill that stands for service on the low side, and why.
pub const LOW_SIDE: (f64, &str) = (
    293.15,
    "standing still at 20 °C, when the low side sees more than in operation; no reading of this visit was higher",
);

/// A gas that flows out of one pressure into another.
#[derive(Clone, Copy, Debug)]
pub struct Flow {
    /// The gas.
    pub gas: Gas,
    /// Absolute pressure that it comes from, Pa.
    pub from_pa: f64,
    /// Absolute pressure that it goes to, Pa.
    pub to_pa: f64,
}

/// The same opening under other circumstances, as throughputs, Pa m³/s.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Bracket {
    /// If the flow is viscous; `None` where the viscosity of one gas is not held.
    pub viscous_pa_m3_s: Option<f64>,
    /// If the flow is molecular.
    pub molecular_pa_m3_s: f64,
}

/// Throughput in service of an opening that let `test` through at `throughput` (Pa m³/s), at the same temperature.
///
/// `None` where gas does not flow outwards in one of the two.
pub fn in_service(throughput: f64, test: &Flow, service: &Flow) -> Option<Bracket> {
    let flows = |flow: &Flow| flow.from_pa > flow.to_pa && flow.to_pa >= 0.0;
    if !flows(test) || !flows(service) {
        return None;
    }
    let viscosity = |flow: &Flow| Some(flow.gas.viscosity_pa_s?.value);
    let squares = |flow: &Flow| flow.from_pa.powi(2) - flow.to_pa.powi(2);
    let difference = |flow: &Flow| flow.from_pa - flow.to_pa;
    let lightness = test.gas.molar_mass_kg_per_kmol / service.gas.molar_mass_kg_per_kmol;
    Some(Bracket {
        viscous_pa_m3_s: viscosity(test)
            .zip(viscosity(service))
            .map(|(tested, serving)| {
                throughput * tested / serving * squares(service) / squares(test)
            }),
        molecular_pa_m3_s: throughput * lightness.sqrt() * difference(service) / difference(test),
    })
}

/// What the limit of a test means in service, as figures.
#[derive(Clone, Debug)]
pub struct InService {
    /// Designation of the refrigerant.
    pub refrigerant: &'static str,
    /// Pressure in service.
    pub pressure: Figure,
    /// If the flow is viscous.
    pub viscous: Option<Figure>,
    /// If the flow is molecular.
    pub molecular: Option<Figure>,
}

impl InService {
    /// All figures, in order.
    pub fn figures(&self) -> impl Iterator<Item = &Figure> {
        std::iter::once(&self.pressure)
            .chain(&self.viscous)
            .chain(&self.molecular)
    }
}

/// Where the limit was found, and with what.
struct Tested<'a> {
    limit: &'a Figure,
    /// Beginning of the ids, such as `pressure-test/p1`.
    id: String,
    gas: &'static str,
    /// Pressure that the test gas came from and went to; the air where none is noted.
    from: Option<&'a Noted<Measured<Pressure>>>,
    into: Option<(f64, Origin)>,
    temperature: Option<Noted<Measured<crate::quantity::Temperature>>>,
}

/// The limit of a pressure test with nitrogen in service; `None` for a strength test or another gas.
pub fn of_pressure_test(
    test: &PressureTest,
    limit: Option<&Figure>,
    circuit: &Circuit,
    refrigerant: &Refrigerant,
    visit: &Visit,
) -> Option<InService> {
    let gas = test.note.gas?.value;
    let nitrogen = matches!(gas, TestGas::Nitrogen | TestGas::FormingGas);
    let strength =
        test.note.purpose.map(|purpose| purpose.value) == Some(PressureTestPurpose::Strength);
    let tested = Tested {
        limit: limit.filter(|_| nitrogen && !strength)?,
        id: format!("pressure-test/{}", test.id),
        gas: "nitrogen",
        from: Some(&test.start.pressure),
        into: None,
        temperature: test.start.temperature,
    };
    serving(
        &tested,
        (circuit, test.circuit, test.section()),
        refrigerant,
        visit,
    )
}

/// The limit of a vacuum test in service: air that came in, from the atmosphere into the vacuum.
pub fn of_vacuum_test(
    test: &VacuumTest,
    limit: Option<&Figure>,
    circuit: &Circuit,
    refrigerant: &Refrigerant,
    visit: &Visit,
) -> Option<InService> {
    let end = &test.end.pressure;
    let tested = Tested {
        limit: limit?,
        id: format!("vacuum-test/{}", test.id),
        gas: "air",
        from: None,
        into: Some((
            crate::quantity::Quantity::si(end.value.value),
            Origin::Note(end.span),
        )),
        temperature: test.note.warmest_pipe,
    };
    serving(
        &tested,
        (circuit, test.circuit, test.section()),
        refrigerant,
        visit,
    )
}

fn serving(
    tested: &Tested<'_>,
    (circuit, number, section): (&Circuit, usize, Option<&Identifier>),
    refrigerant: &Refrigerant,
    visit: &Visit,
) -> Option<InService> {
    let id = |part: &str| format!("{}/in-service/{part}", tested.id);
    let part = (circuit, number, section);
    let pressure = service_pressure(part, refrigerant, visit, &id("pressure"))?;
    let figure = |method, id| {
        leak(
            tested,
            method,
            &pressure,
            refrigerant,
            &visit.atmosphere,
            id,
        )
    };
    let inwards = pressure.value.number() <= visit.atmosphere.pressure().si();
    Some(InService {
        refrigerant: refrigerant.designation,
        viscous: figure(&VISCOUS, id("viscous")).filter(|_| !inwards),
        molecular: figure(&MOLECULAR, id("molecular")).filter(|_| !inwards),
        pressure,
    })
}

fn absolute(noted: &Noted<Measured<Pressure>>, atmosphere: &Atmosphere) -> f64 {
    noted.value.value.absolute(atmosphere.pressure()).si()
}

/// Highest plate of the part: the section's, or the highest of the circuit.
fn plate<'a>(
    circuit: &'a Circuit,
    section: Option<&Identifier>,
    atmosphere: &Atmosphere,
) -> Option<&'a Noted<Measured<Pressure>>> {
    match section {
        Some(_) => circuit.most(section),
        None => circuit
            .sections
            .iter()
            .filter_map(|(_, section)| section.most.as_ref())
            .chain(circuit.note.as_ref().and_then(|note| note.most.as_ref()))
            .max_by(|a, b| absolute(a, atmosphere).total_cmp(&absolute(b, atmosphere))),
    }
}

/// Whether the part is on the low side: its plate is below the highest of the circuit.
fn is_low_side(circuit: &Circuit, section: Option<&Identifier>, air: &Atmosphere) -> bool {
    let plates = plate(circuit, section, air).zip(plate(circuit, None, air));
    plates.is_some_and(|(part, highest)| absolute(part, air) < absolute(highest, air))
}

/// Highest pressure that the visit read on that side of a circuit.
fn highest_read(
    visit: &Visit,
    circuit: usize,
    low_side: bool,
) -> Option<&Noted<Measured<Pressure>>> {
    let readings = visit
        .operating
        .iter()
        .filter(|reading| reading.circuit == circuit);
    readings
        .flat_map(|reading| {
            let note = &reading.note;
            if low_side {
                [note.suction_pressure.as_ref(), None]
            } else {
                [
                    note.discharge_pressure.as_ref(),
                    note.liquid_pressure.as_ref(),
                ]
            }
        })
        .flatten()
        .max_by(|a, b| absolute(a, &visit.atmosphere).total_cmp(&absolute(b, &visit.atmosphere)))
}

fn service_pressure(
    (circuit, number, section): (&Circuit, usize, Option<&Identifier>),
    refrigerant: &Refrigerant,
    visit: &Visit,
    id: &str,
) -> Option<Figure> {
    let air = &visit.atmosphere;
    let name = refrigerant.designation;
    let low_side = is_low_side(circuit, section, air);
    let (kelvin, reason) = if low_side { LOW_SIDE } else { HIGH_SIDE };
    // In whole pascals: the last bits differ between machines.
    let saturated = refrigerant.bubble_pressure_pa(kelvin).map(f64::round);
    let read = highest_read(visit, number, low_side)
        .filter(|read| saturated.is_none_or(|saturated| absolute(read, air) > saturated));
    let plate = plate(circuit, section, air);
    let title = Message::of("service-pressure-title").with("refrigerant", name);
    let mut working = Working::of(&PRESSURE, id, title);
    let pa = if let Some(read) = read {
        working.take("p_read", read);
        absolute(read, air)
    } else if let Some(saturated) = saturated {
        let temperature = computed(Flavour::Temperature, kelvin);
        working.input("T", temperature, Origin::Assumed(reason));
        let bubble = computed(Flavour::AbsolutePressure, saturated);
        let table = Message::of("service-saturation").with("refrigerant", name);
        working.input("p_bubble", bubble, Origin::Table(table.into()));
        let lower = plate.filter(|plate| absolute(plate, air) < saturated);
        lower.map_or(saturated, |plate| {
            working.take("p_plate", plate);
            absolute(plate, air)
        })
    } else {
        let plate = plate?;
        working.take("p_plate", plate);
        working.note(Message::of("service-note-no-saturation"));
        absolute(plate, air)
    };
    if pa <= air.pressure().si() {
        working.note(Message::of("service-note-inwards"));
    }
    Some(working.finish(computed(Flavour::AbsolutePressure, pa)))
}

fn computed(flavour: Flavour, si: f64) -> Value {
    Value::Computed {
        flavour,
        si,
        uncertainty: None,
    }
}

fn leak(
    tested: &Tested<'_>,
    method: &'static Method,
    pressure: &Figure,
    refrigerant: &Refrigerant,
    atmosphere: &Atmosphere,
    id: String,
) -> Option<Figure> {
    let viscous = method == &VISCOUS;
    let title = Message::of(if viscous {
        "service-viscous-title"
    } else {
        "service-molecular-title"
    })
    .with("refrigerant", refrigerant.designation);
    let mut working = Working::of(method, id, title);
    let throughput = working.take_figure("Q", tested.limit);
    let (test_gas, service_gas) = (gas(tested.gas)?, refrigerant.gas());
    if viscous {
        take_viscosity(&mut working, "η_t", test_gas)?;
        take_viscosity(&mut working, "η_s", service_gas)?;
    } else {
        take_molar_mass(&mut working, "M_t", test_gas);
    }
    take_molar_mass(&mut working, "M", service_gas);
    let test = tested.flow(&mut working, test_gas, atmosphere);
    let service = Flow {
        gas: service_gas,
        from_pa: working.take_figure("p_s", pressure),
        to_pa: take_air(&mut working, "p_b", atmosphere),
    };
    let kelvin = match &tested.temperature {
        Some(noted) => working.take("T", noted),
        None => working.input(
            "T",
            computed(Flavour::Temperature, 293.15),
            Origin::Assumed("20 °C, for want of a reading"),
        ),
    };
    let bracket = in_service(throughput, &test, &service)?;
    let found = if viscous {
        bracket.viscous_pa_m3_s?
    } else {
        bracket.molecular_pa_m3_s
    };
    working.note(Message::of(if bracket.viscous_pa_m3_s.is_some() {
        "service-note-between"
    } else {
        "service-note-molecular-only"
    }));
    working.note(Message::of("service-note-vapour"));
    working.note(Message::of("service-note-year"));
    let rate = mass_rate(found, service_gas.molar_mass_kg_per_kmol, kelvin);
    Some(working.finish(computed(Flavour::MassRate, rate)))
}

impl Tested<'_> {
    /// How the test gas flowed, taken into a working.
    fn flow(&self, working: &mut Working, gas: Gas, atmosphere: &Atmosphere) -> Flow {
        let from_pa = match self.from {
            Some(noted) => {
                working.take("p_t", noted);
                absolute(noted, atmosphere)
            }
            None => take_air(working, "p_t", atmosphere),
        };
        let to_pa = match &self.into {
            Some((pa, origin)) => {
                let value = computed(Flavour::VacuumPressure, *pa);
                working.input("p_c", value, origin.clone())
            }
            None => take_air(working, "p_c", atmosphere),
        };
        Flow {
            gas,
            from_pa,
            to_pa,
        }
    }
}

/// Takes the pressure of the air outside.
fn take_air(working: &mut Working, symbol: &'static str, atmosphere: &Atmosphere) -> f64 {
    let origin = match atmosphere {
        Atmosphere::Barometer(noted) => Origin::Note(noted.span),
        Atmosphere::Altitude(noted) => Origin::Note(noted.span),
        Atmosphere::Standard => {
            Origin::Assumed("standard atmosphere, for want of a barometer or an altitude")
        }
    };
    let air = atmosphere.pressure().si();
    working.input(symbol, computed(Flavour::AbsolutePressure, air), origin)
}

/// Takes a viscosity, with its source.
fn take_viscosity(working: &mut Working, symbol: &'static str, gas: Gas) -> Option<()> {
    let held = gas.viscosity_pa_s?;
    let micro = crate::working::rounded(held.value * 1e6, 2);
    let value = Message::of("viscosity-of")
        .figure("viscosity", format!("{micro}\u{a0}µPa s"))
        .phrase("gas", gas.name);
    let origin = Origin::Table(Text::Phrase(held.source.citation));
    working.input(symbol, Value::Words(value.into()), origin);
    Some(())
}

/// Takes a molar mass, with its source.
fn take_molar_mass(working: &mut Working, symbol: &'static str, gas: Gas) {
    let molar = crate::working::rounded(gas.molar_mass_kg_per_kmol, 2);
    let value = Message::of("molar-mass-of")
        .figure("mass", format!("{molar}\u{a0}g/mol"))
        .phrase("gas", gas.name);
    let origin = Origin::Table("CoolProp 8.0.0".into());
    working.input(symbol, Value::Words(value.into()), origin);
}
