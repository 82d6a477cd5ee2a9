//! The circuit as a drawing: the loop of its parts, and the numbered points at their places.
//!
//! Laid out in millimetres of a sheet 166 mm wide, scaled at the end. Compressor at the left, the warm
//! side above, the cold side below: refrigerant goes round clockwise.

use crate::notes::PointNote;
use crate::report::compose::scene::Scene;
use crate::report::data::{
    Pipe, PointRow, Points, Schematic, SchematicMark, SeriesStroke, Side, Symbol, Vessel,
};
use crate::text::{Message, capital};
use crate::vocabulary::Identifier;
use crate::vocabulary::circuit_part::CircuitPart;

const WIDTH: f64 = 166.0;
/// Where the compressor stands.
const LEFT: f64 = 24.0;
/// Where the liquid comes down.
const RIGHT: f64 = 156.0;
/// Where the liquid expands.
const EXPANSION: f64 = 119.0;
/// From the warm line to the first cold line.
const DEPTH: f64 = 34.0;
/// A mark, and the room it takes beside another.
const MARK_WIDTH: f64 = 11.0;
const MARK_HEIGHT: f64 = 6.4;
/// A name of two lines.
const NAME_HEIGHT: f64 = 8.0;
/// More points than these are not drawn at one place.
const MOST_MARKS: usize = 12;
/// More evaporators than these are not drawn.
const MOST_ROWS: usize = 4;

/// A registered point that has a number in this report.
struct Numbered<'a> {
    id: &'a Identifier,
    note: &'a PointNote,
    row: &'a PointRow,
}

/// A place on the loop.
struct Station<'a> {
    part: CircuitPart,
    name: String,
    points: Vec<&'a Numbered<'a>>,
}

/// One drawing for each circuit that has a numbered point.
pub fn schematics(scene: &Scene<'_>, points: &Points) -> Vec<Schematic> {
    // Two points may have the same words in the register.
    let mut rows: Vec<&PointRow> = points.rows.iter().collect();
    let numbered: Vec<Numbered<'_>> = scene
        .system
        .points
        .iter()
        .filter_map(|(id, note)| {
            let name = scene.system.point_name(id);
            let place = rows.iter().position(|row| row.place == name)?;
            let row = rows.remove(place);
            Some(Numbered { id, note, row })
        })
        .collect();
    let mut drawings: Vec<Schematic> = (0..scene.system.circuits.len())
        .filter_map(|circuit| drawn(scene, circuit, &numbered))
        .collect();
    let left_out = |number: &&str| {
        let mut marks = drawings.iter().flat_map(|drawing| &drawing.marks);
        !marks.any(|mark| mark.number == *number)
    };
    let numbers = points.rows.iter().map(|row| row.number.as_str());
    let missing: Vec<&str> = numbers.filter(left_out).collect();
    if let Some(last) = drawings.last_mut().filter(|_| !missing.is_empty()) {
        let message = Message::of("schematic-points-not-drawn")
            .with("count", missing.len())
            .with("numbers", missing);
        last.caption += &format!(" {}", scene.say(&message));
    }
    drawings
}

fn on_circuit(scene: &Scene<'_>, note: &PointNote, circuit: usize) -> bool {
    note.circuit
        .as_ref()
        .and_then(|id| scene.system.circuit(&id.value))
        .unwrap_or(0)
        == circuit
}

/// What part of the circuit a point belongs to, by the words of the register.
fn part_of(id: &Identifier, note: &PointNote) -> CircuitPart {
    let own =
        id.0.rsplit('/')
            .next()
            .unwrap_or_default()
            .replace('-', " ");
    let text = |value: &Option<crate::text::Noted<String>>| {
        value
            .as_ref()
            .map(|noted| noted.value.clone())
            .unwrap_or_default()
    };
    let part = text(&note.part);
    // A condensing unit holds several parts: its name decides only where the point's own does not.
    let order = if part.contains("unit") {
        [own, part, text(&note.place)]
    } else {
        [part, own, text(&note.place)]
    };
    order
        .iter()
        .find_map(|words| CircuitPart::named_in(words))
        .unwrap_or(CircuitPart::LiquidLine)
}

fn area_of(id: &Identifier) -> String {
    id.0.split_once('/')
        .map_or_else(String::new, |(area, _)| area.to_owned())
}

fn drawn(scene: &Scene<'_>, circuit: usize, numbered: &[Numbered<'_>]) -> Option<Schematic> {
    let marked: Vec<&Numbered<'_>> = numbered
        .iter()
        .filter(|point| on_circuit(scene, point.note, circuit))
        .collect();
    if marked.is_empty() {
        return None;
    }
    let (warm, cold, left_out) = stations(scene, circuit, &marked);
    let mut drawing = Drawing::default();
    let stacked = |station: &Station<'_>| station.points.len().div_ceil(2).max(1) as f64;
    let head = 6.0 + MARK_HEIGHT * warm.iter().map(stacked).fold(1.0, f64::max);
    let top = head + 4.0;
    warm_line(&mut drawing, &warm, top);
    let liquid_line = scene.word(usual_name(CircuitPart::LiquidLine));
    let rows = cold_rows(&mut drawing, &cold, top + DEPTH, &liquid_line);
    let first = rows.first().copied().unwrap_or(top + DEPTH);
    compressor(&mut drawing, &warm, (top, first));
    let last = rows.last().copied().unwrap_or(first);
    let deepest = cold
        .iter()
        .filter(|row| row.line + 1 == rows.len())
        .map(|row| stacked(&row.station))
        .fold(1.0, f64::max);
    let height = last + 10.0 + MARK_HEIGHT * deepest;
    Some(drawing.scaled(
        height,
        alt(scene, circuit, &warm, &cold),
        caption(scene, circuit, left_out),
    ))
}

/// A station of the cold side, on one of its lines.
struct Cold<'a> {
    line: usize,
    station: Station<'a>,
}

type Stations<'a> = (Vec<Station<'a>>, Vec<Cold<'a>>, usize);

/// The stations of a circuit: those every circuit has, and those that the register names.
fn stations<'a>(scene: &Scene<'_>, circuit: usize, marked: &[&'a Numbered<'a>]) -> Stations<'a> {
    let registered: Vec<(&Identifier, &PointNote, CircuitPart)> = scene
        .system
        .points
        .iter()
        .filter(|(_, note)| on_circuit(scene, note, circuit))
        .map(|(id, note)| (id, note, part_of(id, note)))
        .collect();
    let mut areas: Vec<String> = Vec::new();
    for (id, _, part) in &registered {
        let area = area_of(id);
        if *part == CircuitPart::Evaporator && !areas.contains(&area) {
            areas.push(area);
        }
    }
    areas.sort_by_key(|area| !marked.iter().any(|point| area_of(point.id) == *area));
    let left_out = areas.len().saturating_sub(MOST_ROWS);
    areas.truncate(MOST_ROWS);
    areas.sort();
    if areas.is_empty() {
        areas.push(String::new());
    }
    let line_of = |id: &Identifier| areas.iter().position(|area| *area == area_of(id));
    let here = |part: CircuitPart, line: Option<usize>| -> Vec<&'a Numbered<'a>> {
        marked
            .iter()
            .copied()
            .filter(|point| part_of(point.id, point.note) == part)
            .filter(|point| line.is_none_or(|line| line_of(point.id).unwrap_or(0) == line))
            .take(MOST_MARKS)
            .collect()
    };
    let named = |part: CircuitPart, line: Option<usize>| {
        registered
            .iter()
            .filter(|(_, _, known)| *known == part)
            .filter(|(id, ..)| line.is_none_or(|line| line_of(id).unwrap_or(0) == line))
            .find_map(|(_, note, _)| {
                let name = &note.part.as_ref()?.value;
                (CircuitPart::named_in(name) == Some(part)).then(|| name.clone())
            })
    };
    let known = |part: CircuitPart| registered.iter().any(|(_, _, known)| *known == part);
    let mut warm = Vec::new();
    for part in [
        CircuitPart::Compressor,
        CircuitPart::Discharge,
        CircuitPart::Condenser,
        CircuitPart::Receiver,
        CircuitPart::Drier,
        CircuitPart::SightGlass,
        CircuitPart::LiquidLine,
    ] {
        let always = matches!(part, CircuitPart::Compressor | CircuitPart::Condenser);
        if always || known(part) {
            warm.push(Station {
                part,
                name: named(part, None).unwrap_or_else(|| scene.word(usual_name(part))),
                points: here(part, None),
            });
        }
    }
    let mut cold = Vec::new();
    for line in 0..areas.len() {
        for part in [
            CircuitPart::SolenoidValve,
            CircuitPart::ExpansionDevice,
            CircuitPart::Evaporator,
            CircuitPart::SuctionLine,
        ] {
            let points = here(part, Some(line));
            let always = matches!(part, CircuitPart::ExpansionDevice | CircuitPart::Evaporator);
            let registered_here = registered
                .iter()
                .any(|(id, _, known)| *known == part && line_of(id).unwrap_or(0) == line);
            if always || registered_here {
                cold.push(Cold {
                    line,
                    station: Station {
                        part,
                        name: named(part, Some(line))
                            .unwrap_or_else(|| scene.word(usual_name(part))),
                        points,
                    },
                });
            }
        }
    }
    (warm, cold, left_out)
}

/// The message of a part that the register does not name.
fn usual_name(part: CircuitPart) -> &'static str {
    match part {
        CircuitPart::Compressor => "part-compressor",
        CircuitPart::Discharge => "part-discharge-line",
        CircuitPart::Condenser => "part-condenser",
        CircuitPart::Receiver => "part-receiver",
        CircuitPart::Drier => "part-drier",
        CircuitPart::SightGlass => "part-sight-glass",
        CircuitPart::SolenoidValve => "part-solenoid-valve",
        CircuitPart::LiquidLine => "part-liquid-line",
        CircuitPart::ExpansionDevice => "part-expansion-device",
        CircuitPart::Evaporator => "part-evaporator",
        CircuitPart::SuctionLine => "part-suction-line",
    }
}

fn symbol(part: CircuitPart) -> Symbol {
    match part {
        CircuitPart::Compressor => Symbol::Compressor,
        CircuitPart::Condenser | CircuitPart::Evaporator => Symbol::HeatExchanger,
        CircuitPart::Receiver => Symbol::Receiver,
        CircuitPart::Drier => Symbol::Drier,
        CircuitPart::SightGlass => Symbol::SightGlass,
        CircuitPart::SolenoidValve => Symbol::SolenoidValve,
        CircuitPart::ExpansionDevice => Symbol::ExpansionDevice,
        CircuitPart::Discharge | CircuitPart::LiquidLine | CircuitPart::SuctionLine => {
            Symbol::Fitting
        }
    }
}

/// A drawing in millimetres.
#[derive(Default)]
struct Drawing {
    vessels: Vec<Vessel>,
    pipes: Vec<Pipe>,
    marks: Vec<SchematicMark>,
}

/// Which way the marks of a station lie.
#[derive(Clone, Copy)]
enum Away {
    Above,
    Below,
    Left,
}

impl Drawing {
    fn vessel(&mut self, station: &Station<'_>, at: [f64; 2], beside: Side, away: Away) {
        self.vessels.push(Vessel {
            x: at[0],
            y: at[1],
            symbol: symbol(station.part),
            name: capital(&station.name),
            beside,
        });
        self.points(&station.points, at, away);
    }

    /// Marks in rows of two, away from the symbol.
    fn points(&mut self, points: &[&Numbered<'_>], at: [f64; 2], away: Away) {
        for (index, point) in points.iter().enumerate() {
            let (row, column) = ((index / 2) as f64, (index % 2) as f64);
            let in_row = points.len() - index / 2 * 2;
            let across = if in_row > 1 { column - 0.5 } else { 0.0 } * MARK_WIDTH;
            let (x, y) = match away {
                Away::Above => (at[0] + across, at[1] - 9.5 - row * MARK_HEIGHT),
                Away::Below => (at[0] + across, at[1] + 9.5 + row * MARK_HEIGHT),
                Away::Left => (at[0] - 15.0, at[1] + (index as f64) * MARK_HEIGHT),
            };
            self.marks.push(SchematicMark {
                x,
                y,
                leads_to: at,
                number: point.row.number.clone(),
                state: point.row.state,
            });
        }
    }

    fn pipe(&mut self, corners: &[[f64; 2]], stroke: SeriesStroke, name: &str) {
        self.pipes.push(Pipe {
            corners: corners.to_vec(),
            stroke,
            name: capital(name),
        });
    }

    /// Where the drawing begins: the upper edge of the highest mark, name or symbol.
    fn top(&self) -> f64 {
        let vessels = self.vessels.iter().map(|vessel| match vessel.beside {
            Side::Above => vessel.y - 5.4 - NAME_HEIGHT,
            Side::Below | Side::Right => vessel.y - 5.4,
        });
        let marks = self.marks.iter().map(|mark| mark.y - MARK_HEIGHT / 2.0);
        vessels.chain(marks).fold(f64::INFINITY, f64::min)
    }

    /// As a part of the report, in fractions of its width and height.
    fn scaled(mut self, height: f64, alt: String, caption: String) -> Schematic {
        let top = self.top().min(height);
        let height = height - top;
        let scale = |[x, y]: [f64; 2]| [x / WIDTH, (y - top) / height];
        for vessel in &mut self.vessels {
            [vessel.x, vessel.y] = scale([vessel.x, vessel.y]);
        }
        for pipe in &mut self.pipes {
            for corner in &mut pipe.corners {
                *corner = scale(*corner);
            }
        }
        for mark in &mut self.marks {
            [mark.x, mark.y] = scale([mark.x, mark.y]);
            mark.leads_to = scale(mark.leads_to);
        }
        Schematic {
            alt,
            caption,
            aspect: height / WIDTH,
            vessels: self.vessels,
            pipes: self.pipes,
            marks: self.marks,
        }
    }
}

/// The upper line, from the compressor's corner to where the liquid comes down.
fn warm_line(drawing: &mut Drawing, warm: &[Station<'_>], top: f64) {
    let along: Vec<&Station<'_>> = warm
        .iter()
        .filter(|station| station.part != CircuitPart::Compressor)
        .collect();
    let step = (RIGHT - LEFT) / (along.len() as f64 + 0.6);
    drawing.pipe(&[[LEFT, top], [RIGHT, top]], SeriesStroke::Full, "");
    for (index, station) in along.iter().enumerate() {
        let x = LEFT + step * (index as f64 + 0.8);
        drawing.vessel(station, [x, top], Side::Below, Away::Above);
    }
}

/// The lower lines, one for each evaporator; gives their heights.
fn cold_rows(drawing: &mut Drawing, cold: &[Cold<'_>], top: f64, liquid_line: &str) -> Vec<f64> {
    let lines = cold.iter().map(|row| row.line + 1).max().unwrap_or(1);
    let suction = cold
        .iter()
        .any(|row| row.station.part == CircuitPart::SuctionLine);
    let header = if lines == 1 { LEFT } else { 40.0 };
    let mut heights = Vec::new();
    let mut y = top;
    for line in 0..lines {
        heights.push(y);
        let stations: Vec<&Station<'_>> = cold
            .iter()
            .filter(|row| row.line == line)
            .map(|row| &row.station)
            .collect();
        let evaporator = if suction { 92.0 } else { 78.0 };
        // Behind the expansion device the pressure is low.
        drawing.pipe(&[[RIGHT, y], [EXPANSION, y]], SeriesStroke::Full, "");
        drawing.pipe(&[[EXPANSION, y], [header, y]], SeriesStroke::Dashed, "");
        let mut deepest = 0;
        for station in stations {
            let x = match station.part {
                CircuitPart::SolenoidValve => 141.0,
                CircuitPart::ExpansionDevice => EXPANSION,
                CircuitPart::SuctionLine => 62.0,
                _ => evaporator,
            };
            deepest = deepest.max(station.points.len().div_ceil(2));
            drawing.vessel(station, [x, y], Side::Above, Away::Below);
        }
        y += 26.0 + MARK_HEIGHT * deepest.saturating_sub(1) as f64;
    }
    let first = heights.first().copied().unwrap_or(top);
    let last = heights.last().copied().unwrap_or(top);
    if lines > 1 {
        drawing.pipe(&[[header, first], [header, last]], SeriesStroke::Dashed, "");
        drawing.pipe(&[[header, first], [LEFT, first]], SeriesStroke::Dashed, "");
    }
    drawing.pipe(
        &[[RIGHT, top - DEPTH], [RIGHT, last]],
        SeriesStroke::Full,
        liquid_line,
    );
    heights
}

fn compressor(drawing: &mut Drawing, warm: &[Station<'_>], (top, first): (f64, f64)) {
    let middle = f64::midpoint(top, first);
    drawing.pipe(&[[LEFT, first], [LEFT, middle]], SeriesStroke::Dashed, "");
    drawing.pipe(&[[LEFT, middle], [LEFT, top]], SeriesStroke::Full, "");
    for station in warm
        .iter()
        .filter(|station| station.part == CircuitPart::Compressor)
    {
        drawing.vessel(station, [LEFT, middle], Side::Right, Away::Left);
    }
}

fn caption(scene: &Scene<'_>, circuit: usize, left_out: usize) -> String {
    let circuit = scene.system.circuit_choice(circuit);
    let mut caption = scene.say(&Message::of("schematic-caption").with("circuit", circuit));
    if left_out > 0 {
        caption.push(' ');
        caption += &scene.say(&Message::of("schematic-not-drawn").with("evaporators", left_out));
    }
    caption
}

fn alt(scene: &Scene<'_>, circuit: usize, warm: &[Station<'_>], cold: &[Cold<'_>]) -> String {
    let all: Vec<&Station<'_>> = warm
        .iter()
        .chain(cold.iter().map(|row| &row.station))
        .collect();
    let parts: Vec<String> = all.iter().map(|station| station.name.clone()).collect();
    let message = Message::of("schematic-loop")
        .with("circuit", scene.system.circuit_choice(circuit))
        .with("parts", parts);
    let mut alt = vec![scene.say(&message)];
    for station in all {
        for point in &station.points {
            let message = Message::of("schematic-point")
                .with("number", point.row.number.as_str())
                .with("part", station.name.as_str())
                .with("state", point.row.state_words.as_str());
            alt.push(scene.say(&message));
        }
    }
    alt.join(" ")
}
