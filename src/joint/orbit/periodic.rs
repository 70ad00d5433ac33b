//! The path that repeats itself: where a pin must begin a circuit of rests and turns to be there again at its end.

use super::{PinPlace, Segment, SegmentFilm, follow, travel};
use crate::error::{Code, Error, Result};

/// The orbit is periodic when a circuit moves its start by less than this share.
const PERIODIC: f64 = 1e-7;
/// Circuits that simply follow each other before a Newton step is worth its two extra circuits.
const PATIENCE: usize = 6;
/// Start of the search, e/(1−e): nearer to contact than most joints, for films build up faster than they thin.
const SQUEEZED: f64 = 1e3;
/// Circuits before the search for a periodic orbit is given up.
const MOST_CIRCUITS: usize = 400;

/// A path that repeats itself circuit after circuit.
#[derive(Debug, Clone, PartialEq)]
pub struct Orbit {
    /// The film of each rest and turn, in order.
    pub segments: Vec<SegmentFilm>,
    /// Circuits it took to settle.
    pub circuits: usize,
}

/// The orbit that a joint settles on when `segments` repeat for ever; arguments as for [`travel`].
///
/// Circuit after circuit, from a squeezed film: a loaded joint forgets its start within a few, and a circuit that comes
/// upon the path of the one before is not followed any further. Where each circuit only brings it a little nearer (light
/// loads, thick oil), Newton steps find the start that comes back to itself. Each time step is within 1e-9 of its film,
/// and the path repeats within 1e-7.
///
/// ```
/// use pinfilm::joint::orbit::{Segment, periodic_orbit, squeeze_time};
/// let squeeze_time = squeeze_time(0.05, 2.225e-3, 11.3e-3, 500.0, 25e-6);
/// let rest = Segment { squeeze_time, angular_speed: 0.0, duration: 2.0 };
/// let turn = Segment { squeeze_time, angular_speed: 39.0, duration: 0.0085 };
/// let film = periodic_orbit(&[rest, turn], Some(2.54))?.segments[1];
/// assert!(film.start.film_ratio() < film.mean_film_ratio && film.mean_film_ratio < film.end.film_ratio());
/// # Ok::<(), pinfilm::Error>(())
/// ```
pub fn periodic_orbit(segments: &[Segment], length_to_diameter: Option<f64>) -> Result<Orbit> {
    // A circuit that begins with its longest squeeze forgets where the search began by the end of its first turn.
    let squeezed = |segment: &Segment| segment.duration / segment.squeeze_time;
    let longest = (0..segments.len()).max_by(|&a, &b| squeezed(&segments[a]).total_cmp(&squeezed(&segments[b])));
    let first = longest.unwrap_or(0);
    let circuit = [&segments[first..], &segments[..first]].concat();
    let mut orbit = settled(&circuit, length_to_diameter)?;
    orbit.segments.rotate_right(first);
    Ok(orbit)
}

/// The orbit through `segments` in their order.
fn settled(segments: &[Segment], length_to_diameter: Option<f64>) -> Result<Orbit> {
    let mut start = PinPlace { x: SQUEEZED, y: 0.0 };
    let (mut circuits, mut patience) = (0, PATIENCE);
    let mut leap: Option<Leap> = None;
    let mut films = Vec::new();
    while circuits < MOST_CIRCUITS {
        films = follow(start, segments, &films, length_to_diameter)?;
        circuits += 1;
        let end = films.last().map_or(start, |film| film.end);
        let change = (end.x - start.x).hypot(end.y - start.y) / (1.0 + end.radius());
        if change < PERIODIC {
            return Ok(Orbit { segments: films, circuits });
        }
        match leap.take() {
            // A leap that does not gain is undone; the plain circuits go on from where it began.
            Some(from) if change.is_nan() || change > from.change => (start, patience) = (from.end, PATIENCE),
            _ if patience > 0 => (start, patience) = (end, patience - 1),
            _ => {
                start = returning(start, end, segments, length_to_diameter)?;
                circuits += 2;
                leap = Some(Leap { end, change });
            }
        }
    }
    Err(Error::new(
        Code::NotConverged,
        "pin motion",
        format!("the pin does not settle on a repeating path within {MOST_CIRCUITS} circuits: the load is too light to squeeze out the film"),
    )
    .limit(format!("at most {MOST_CIRCUITS} circuits")))
}

/// Where a Newton step began: the end of the circuit before it, and the change over that circuit.
struct Leap {
    end: PinPlace,
    change: f64,
}

/// Newton's estimate of the place that a circuit brings back to itself, from `start` and where its circuit ends.
fn returning(
    start: PinPlace,
    end: PinPlace,
    segments: &[Segment],
    length_to_diameter: Option<f64>,
) -> Result<PinPlace> {
    // Small against the path, large against the error of its end.
    let nudge = 1e-5 * (1.0 + start.radius());
    let moved = |x: f64, y: f64| -> Result<[f64; 2]> {
        let films = travel(PinPlace { x: start.x + x, y: start.y + y }, segments, length_to_diameter)?;
        let other = films.last().map_or(start, |film| film.end);
        Ok([(other.x - end.x) / nudge, (other.y - end.y) / nudge])
    };
    let ([xx, yx], [xy, yy]) = (moved(nudge, 0.0)?, moved(0.0, nudge)?);
    let (a, d) = (1.0 - xx, 1.0 - yy);
    let determinant = a * d - xy * yx;
    let (dx, dy) = (end.x - start.x, end.y - start.y);
    let guess =
        PinPlace { x: start.x + (d * dx + xy * dy) / determinant, y: start.y + (yx * dx + a * dy) / determinant };
    // Where circuits hardly differ the estimate may lie anywhere; a film thinned a thousandfold is no estimate.
    Ok(if guess.radius() < 1e3 * (1.0 + start.radius()) { guess } else { end })
}
