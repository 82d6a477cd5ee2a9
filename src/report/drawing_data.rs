//! Charts and the drawn circuit as plain data: positions scaled to 0 and 1, every word as text.

use schemars::JsonSchema;
use serde::Serialize;

/// A chart in scaled positions: 0 is left or bottom, 1 is right or top.
#[derive(Debug, Clone, Default, PartialEq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub struct Chart {
    /// What the chart shows, for whoever cannot see it.
    pub alt: String,
    /// Caption; empty for none.
    pub caption: String,
    /// Horizontal axis.
    pub across: Axis,
    /// Vertical axis.
    pub up: Axis,
    /// Curves, the first the heaviest.
    pub series: Vec<Series>,
    /// Horizontal limits, drawn and named.
    pub limits: Vec<Limit>,
    /// Bars that stand on the lowest tick.
    pub bars: Vec<Bar>,
}

/// A bar of a chart.
#[derive(Debug, Clone, Default, PartialEq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub struct Bar {
    /// Left and right edge, 0 to 1.
    pub across: [f64; 2],
    /// Height, 0 to 1.
    pub up: f64,
    /// How it is drawn, so that it is told apart without colour.
    pub fill: BarFill,
    /// Its number, above it.
    pub label: String,
}

/// How a bar is drawn.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum BarFill {
    /// Filled.
    #[default]
    Full,
    /// Filled with stripes.
    Striped,
    /// An outline.
    Outline,
    /// A dashed outline.
    Dashed,
}

/// An axis of a chart.
#[derive(Debug, Clone, Default, PartialEq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub struct Axis {
    /// Title with its unit: "Time since isolation, min".
    pub title: String,
    /// Ticks with printed labels.
    pub ticks: Vec<Tick>,
}

/// A tick of an axis.
#[derive(Debug, Clone, Default, PartialEq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub struct Tick {
    /// Position, 0 to 1.
    pub at: f64,
    /// Printed label; empty for a bare tick.
    pub label: String,
}

/// A curve of a chart.
#[derive(Debug, Clone, Default, PartialEq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub struct Series {
    /// Name, set at the end of the curve.
    pub label: String,
    /// How it is drawn.
    pub stroke: SeriesStroke,
    /// Points, across and up, each 0 to 1.
    pub points: Vec<[f64; 2]>,
}

/// How a curve is drawn.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum SeriesStroke {
    /// A full line.
    #[default]
    Full,
    /// A dashed line.
    Dashed,
    /// A dotted line.
    Dotted,
    /// Marks without a line.
    Marks,
}

/// A horizontal limit of a chart.
#[derive(Debug, Clone, Default, PartialEq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub struct Limit {
    /// Height, 0 to 1.
    pub at: f64,
    /// Name and value: "maker's limit, 500 micron".
    pub label: String,
}

/// The circuit as a drawing, in scaled positions: 0, 0 is left and top, 1, 1 right and bottom.
#[derive(Debug, Clone, Default, PartialEq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub struct Schematic {
    /// What the drawing shows, for whoever cannot see it.
    pub alt: String,
    /// Caption; empty for none.
    pub caption: String,
    /// Height over width of the drawing, 0.2 to 1.2.
    pub aspect: f64,
    /// The parts, as boxes with names.
    pub vessels: Vec<Vessel>,
    /// The lines between them.
    pub pipes: Vec<Pipe>,
    /// The points of the report.
    pub marks: Vec<SchematicMark>,
}

/// A part of the schematic: its symbol and its name.
#[derive(Debug, Clone, Default, PartialEq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub struct Vessel {
    /// Middle, from the left, 0 to 1.
    pub x: f64,
    /// Middle, from the top, 0 to 1.
    pub y: f64,
    /// Which symbol.
    pub symbol: Symbol,
    /// Name beside it; empty for none.
    pub name: String,
    /// On which side of the symbol the name stands.
    pub beside: Side,
}

/// Symbols of the schematic, plain shapes in the manner of ISO 14617.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Symbol {
    /// A circle with lines that close in on the outlet.
    Compressor,
    /// A heat exchanger: a box with a zigzag.
    HeatExchanger,
    /// A vessel: a box with round ends.
    Receiver,
    /// A filter: a box with a broken line across.
    Drier,
    /// A circle in a circle.
    SightGlass,
    /// Two triangles tip to tip, with a box on a stem.
    SolenoidValve,
    /// Two triangles tip to tip, one of them filled.
    ExpansionDevice,
    /// A short thick stroke on a line.
    #[default]
    Fitting,
}

/// A side.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Side {
    /// Above.
    Above,
    /// Below.
    #[default]
    Below,
    /// To the right.
    Right,
}

/// A line of the schematic.
#[derive(Debug, Clone, Default, PartialEq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub struct Pipe {
    /// Corners, across and down, each 0 to 1.
    pub corners: Vec<[f64; 2]>,
    /// How it is drawn.
    pub stroke: SeriesStroke,
    /// Name beside its middle; empty for none.
    pub name: String,
}

/// A point of the report on the schematic.
#[derive(Debug, Clone, Default, PartialEq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub struct SchematicMark {
    /// From the left, 0 to 1.
    pub x: f64,
    /// From the top, 0 to 1.
    pub y: f64,
    /// The place it stands at, 0 to 1: a thin line leads there.
    pub leads_to: [f64; 2],
    /// Number of the point.
    pub number: String,
    /// Its state.
    pub state: PointState,
}

/// The state of a point; each has a shape of its own, so that none is told by colour alone.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum PointState {
    /// Repaired and proved: an open ring.
    RepairedProved,
    /// Repaired, proof missing: a half-filled ring.
    RepairedNotProved,
    /// A temporary repair: a half-filled square.
    Temporary,
    /// Isolated: an open square.
    Isolated,
    /// Leaking and left: a filled triangle.
    Open,
    /// Suspected: a filled diamond.
    Suspect,
    /// Suspicion cleared: an open diamond.
    SuspectCleared,
    /// An earlier repair that holds: a filled disc.
    Holding,
    /// A defect that is not a leak: a filled square.
    Defect,
    /// Not looked at, or not reached: a dash.
    #[default]
    NotReached,
}
