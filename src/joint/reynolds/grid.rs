//! The finite-volume grid of half a bearing: fine where the film is thin, and near the open end.

use std::f64::consts::{PI, TAU};

/// How strongly the cells crowd at the narrow gap: the Sommerfeld substitution of this share of the eccentricity.
const CLUSTERING: f64 = 0.8;

/// Cells round the bearing (first index) and from its middle to its open end (second index).
///
/// Angles run from the widest gap; axial places are shares of the half length. All conductances already hold the cube
/// of the film thickness, so the equation of a cell is a plain balance of flows.
#[derive(Debug, Clone)]
pub(super) struct Grid {
    /// Cells round the bearing.
    pub around: usize,
    /// Cells from the middle to the open end.
    pub along: usize,
    /// Angle at each face, from 0 to 2π (rad); one more than there are cells.
    pub angle: Vec<f64>,
    /// Film thickness over clearance at each face.
    pub thickness: Vec<f64>,
    /// Width of each axial row, shares of the half length; they add up to 1.
    pub width: Vec<f64>,
    /// Flow round the bearing per unit of axial width and pressure difference, through each face.
    pub circumferential: Vec<f64>,
    /// Axial flow per unit of pressure difference over axial distance, for each angular cell.
    pub axial: Vec<f64>,
    /// One over the distance that the pressure falls over at each inner axial face; the last is the open end.
    pub axial_steepness: Vec<f64>,
}

impl Grid {
    /// Lays out `around` × `along` cells for an eccentricity ratio and a ratio of length to diameter (may be infinite).
    pub fn new(eccentricity_ratio: f64, length_to_diameter: f64, around: usize, along: usize) -> Grid {
        let e = eccentricity_ratio;
        let angle: Vec<f64> = (0..=around).map(|i| crowded(CLUSTERING * e, TAU * i as f64 / around as f64)).collect();
        let centre: Vec<f64> = angle.windows(2).map(|face| 0.5 * (face[0] + face[1])).collect();
        let gap = |angle: f64| 1.0 + e * angle.cos();
        let thickness: Vec<f64> = angle.iter().map(|&a| gap(a)).collect();
        // Walls are half a cell away, the other faces lie between two centres.
        let distance = |i: usize| match i {
            0 => centre[0],
            i if i == around => TAU - centre[around - 1],
            i => centre[i] - centre[i - 1],
        };
        let circumferential = (0..=around).map(|i| thickness[i].powi(3) / distance(i)).collect();
        let slenderness = (1.0 / length_to_diameter).powi(2);
        let axial = (0..around).map(|i| slenderness * gap(centre[i]).powi(3) * (angle[i + 1] - angle[i])).collect();

        let face: Vec<f64> = (0..=along).map(|j| (0.5 * PI * j as f64 / along as f64).sin()).collect();
        let middle: Vec<f64> = face.windows(2).map(|f| 0.5 * (f[0] + f[1])).collect();
        let width = face.windows(2).map(|f| f[1] - f[0]).collect();
        let axial_steepness =
            (0..along).map(|j| 1.0 / (middle.get(j + 1).copied().unwrap_or(1.0) - middle[j])).collect();
        Grid { around, along, angle, thickness, width, circumferential, axial, axial_steepness }
    }

    /// Pressure source of an angular cell per unit of axial width: oil wedged in by the turning pin.
    pub fn wedge(&self, i: usize) -> f64 {
        6.0 * (self.thickness[i] - self.thickness[i + 1])
    }
}

/// Angle at the uniform parameter `g` (both 0 to 2π): tan(θ/2) = sqrt((1+e)/(1−e)) tan(g/2).
fn crowded(e: f64, g: f64) -> f64 {
    let stretch = ((1.0 + e) / (1.0 - e)).sqrt();
    2.0 * (stretch * (0.5 * g).sin()).atan2((0.5 * g).cos())
}
