//! Every oil at every place by every method: the stations of a search.

use super::choices::Choices;
use super::station::{Spot, Station};
use crate::circuit::Section;
use crate::error::Result;
use crate::line::Line;
use crate::lubrication::Lubrication;
use crate::quantity::Side;
use crate::study::progress::{Progress, in_parallel};

/// Every oil at every place by every method.
pub(super) fn stations(line: &Line, choices: &Choices, progress: &mut Progress<'_>) -> Result<Vec<Station>> {
    let own_oil = [line.oil.clone()];
    let oils = choices.oils.as_deref().unwrap_or(&own_oil);
    let methods = match &choices.methods {
        Some(methods) => methods.clone(),
        None => vec![usual_method(line)],
    };
    let mut looks = Vec::new();
    for oil in oils.iter().enumerate() {
        for method in &methods {
            for points in choices.points.clone().unwrap_or_else(|| vec![points_of(method)]) {
                for (template, spot) in spots(line, choices, method) {
                    looks.push((oil, template, points, spot));
                }
            }
        }
    }
    let looked = in_parallel(
        looks.len(),
        &mut |_, all| progress(0, all),
        || (),
        |(), number| {
            let (oil, method, points, spot) = &looks[number];
            Station::look(line, choices, *oil, method, *points, *spot).map_err(Box::new)
        },
    )?;
    let mut stations: Vec<Station> = Vec::with_capacity(looked.len());
    for station in looked {
        let station = station.map_err(|error| *error)?;
        // the best point may be one that was named too
        if !stations.iter().any(|known| known.line.lubrication == station.line.lubrication && known.oil == station.oil)
        {
            stations.push(station);
        }
    }
    Ok(stations)
}

/// The survey's method if it has a timer, else a synchronised applicator with the register's defaults.
fn usual_method(line: &Line) -> Lubrication {
    match &line.lubrication {
        timed @ (Lubrication::Spray(_) | Lubrication::Synchronised(_)) => timed.clone(),
        own => Lubrication::blank("synchronised").unwrap_or_else(|| own.clone()),
    }
}

fn points_of(method: &Lubrication) -> i64 {
    match method {
        Lubrication::Manual(m) => m.points,
        Lubrication::Drip(m) => m.points,
        Lubrication::Spray(m) => m.points,
        Lubrication::Synchronised(m) => m.points,
    }
}

/// The places to try, with the method as it looks for them: named ones, or that of the survey and the best point.
fn spots(line: &Line, choices: &Choices, method: &Lubrication) -> Vec<(Lubrication, Option<Spot>)> {
    let mut free = method.clone();
    let (own, position, side) = match &mut free {
        Lubrication::Manual(m) => (&mut m.application_section, m.application_position, m.application_side),
        Lubrication::Drip(m) => (&mut m.application_section, m.application_position, m.application_side),
        Lubrication::Spray(m) => (&mut m.application_section, m.application_position, m.application_side),
        Lubrication::Synchronised(m) => (&mut m.application_section, m.application_position, m.application_side),
    };
    let surveyed: Option<Spot> = own.take().map(|section| (section, position, side));
    if choices.application_sections.is_none() && choices.sides.is_none() && choices.application_positions.is_none() {
        let named = surveyed.map(|spot| (method.clone(), Some(spot)));
        return named.into_iter().chain([(free, None)]).collect();
    }
    let straights = (0..line.circuit.sections.len() as i64)
        .filter(|section| matches!(line.circuit.sections[*section as usize], Section::Straight(_)));
    let sections = choices.application_sections.clone().unwrap_or_else(|| straights.collect());
    let positions = choices.application_positions.clone().unwrap_or_else(|| vec![0.0, 0.5, 1.0]);
    let mut spots = Vec::new();
    for section in sections {
        let sides = choices.sides.clone().unwrap_or_else(|| match &line.circuit.sections[section as usize] {
            Section::Straight(straight) => straight.reachable_sides.clone(),
            Section::Turn(_) => vec![Side::Top],
        });
        for &position in &positions {
            spots.extend(sides.iter().map(|&side| (free.clone(), Some((section, position, side)))));
        }
    }
    spots
}
