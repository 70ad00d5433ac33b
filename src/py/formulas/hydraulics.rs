//! `pinfilm.hydraulics`: oil in the line, and on its way into the joint.

use super::declare::{Floats, Formula, Outcome, Own, answered, formulas, own_row, results_of, row};
use super::given::{Argument, Given};
use super::outcomes::classes::ViscosityWindow;
use super::spread::spread;
use crate::chain::Chain;
use crate::joint::Joint;
use crate::lubrication::Fill;
use crate::lubrication::entry::{self, JointEntry, Slot};
use crate::oil::Oil;
use crate::quantity::Noun;
use crate::supply::{self, Segment, Supply};
use pyo3::prelude::*;

formulas! { "hydraulics"
    /// Pressure lost in a round oil line.
    ///
    /// Parameters
    /// ----------
    /// flow_ml_per_min : array_like
    ///     Flow during delivery; @R.
    /// viscosity_mpa_s : array_like
    ///     Dynamic viscosity of the coldest stretch; @R.
    /// bore_mm : array_like
    ///     Bore of the line; @R.
    /// length_m : array_like
    ///     Length of the line; @R.
    /// density_kg_per_m3 : array_like, optional
    ///     Density, for the check that the flow is laminar; @R; 890 kg/m³ if not given.
    ///
    /// Returns
    /// -------
    /// float or ndarray
    ///     Pressure drop in kPa, without fittings and height.
    ///
    /// @E A flow with a Reynolds number above 2040 is an error (`turbulent`).
    ///
    /// Notes
    /// -----
    /// Δp = 128 η L Q/(π d⁴). Laminar, Newtonian, developed flow.
    ///
    /// References
    /// ----------
    /// Hagen 1839; Poiseuille 1840; onset of turbulence: Avila et al. 2011, Science 333, 192.
    ///
    /// Examples
    /// --------
    /// >>> from pinfilm import hydraulics
    /// >>> round(hydraulics.pressure_drop_kpa(12, 1000, 4, 20), 3)
    /// @O
    fn pressure_drop_kpa(flow_ml_per_min: Own, viscosity_mpa_s: Own, bore_mm: Own, length_m: Own; density_kg_per_m3: Own)
        -> Floats = |flow, viscosity, bore, length, density| {
            supply::line_drop(&[Segment { length, bore, flow }], viscosity, density).map(|drop| drop.pressure)
        };

    /// Time in which capillarity and gravity draw oil into a slot.
    ///
    /// Parameters
    /// ----------
    /// depth_mm : array_like
    ///     Depth to fill; @R.
    /// gap_um : array_like
    ///     Full width of the slot; @R.
    /// viscosity_mpa_s : array_like
    ///     Dynamic viscosity; @R.
    /// surface_tension_mn_per_m : array_like
    ///     Surface tension; @R.
    /// contact_angle_deg : array_like
    ///     Angle at which the oil meets the steel; @R.
    /// angle_to_vertical_deg : array_like, optional
    ///     Way of the oil, 0 straight down, 90 level, 180 straight up; @R; level if not given.
    /// density_kg_per_m3 : array_like, optional
    ///     Density; @R; 890 kg/m³ if not given.
    ///
    /// Returns
    /// -------
    /// float or ndarray
    ///     Time in s; infinite where the oil does not wet the steel or gravity holds it back before that depth.
    ///
    /// @E
    ///
    /// Notes
    /// -----
    /// t = (a/b²)(u − ln(1 + u)), u = b x/a, with a = h² p/(12 η), p = 2 γ cos θ/h and b = h² ρ g cos β/(12 η); level:
    /// t = 3 η x²/(γ h cos θ). Newtonian oil in plenty at the edge, air free to leave. Real times spread by a factor of 2.
    ///
    /// References
    /// ----------
    /// Lucas 1918; Washburn 1921, Phys. Rev. 17, 273.
    ///
    /// Examples
    /// --------
    /// >>> from pinfilm import hydraulics
    /// >>> round(hydraulics.penetration_time_s(10, 50, 100, 30, 0, 90), 6)
    /// @O
    fn penetration_time_s(
        depth_mm: Own, gap_um: Own, viscosity_mpa_s: Own, surface_tension_mn_per_m: Oil, contact_angle_deg: Own;
        angle_to_vertical_deg: Own, density_kg_per_m3: Own
    ) -> Floats = |depth, gap, viscosity, surface_tension, contact_angle, angle, density| {
        let drive = entry::gravity_along(density, angle);
        Slot { gap, viscosity, surface_tension, contact_angle, drive, eccentricity: 0.0 }.entry_time(depth)
    };

    /// Time until oil from the edge of the side plate has filled a joint.
    ///
    /// Parameters
    /// ----------
    /// viscosity_mpa_s : array_like
    ///     Dynamic viscosity at the application point; @R.
    /// plate_gap_mm : array_like
    ///     Gap between inner and outer plate; @R.
    /// plate_path_mm : array_like
    ///     Way from the plate edge to the bush; @R.
    /// pin_diameter_mm : array_like
    ///     Diameter of the pin; @R.
    /// joint_clearance_um : array_like
    ///     Radial clearance of pin and bush; @R. It grows with wear.
    /// joint_depth_mm : array_like
    ///     Length of joint to fill from one gap, half of it if oiled from both sides; @R.
    /// surface_tension_mn_per_m : array_like, optional
    ///     Surface tension; @R; 30 mN/m if not given.
    /// contact_angle_deg : array_like, optional
    ///     Angle at which the oil meets the steel; @R; 20° if not given.
    /// density_kg_per_m3 : array_like, optional
    ///     Density; @R; 890 kg/m³ if not given.
    /// pin_eccentricity : array_like, optional
    ///     Offset of the resting pin over the clearance; @R; 1 if not given.
    ///
    /// Returns
    /// -------
    /// float or ndarray
    ///     Time in s, in proportion to the viscosity; infinite where the oil does not wet.
    ///
    /// @E
    ///
    /// Notes
    /// -----
    /// First down the plate gap by capillarity and gravity, then along the annulus round the pin, fed through the filled
    /// plate gap. Real times spread by a factor of 2.
    ///
    /// References
    /// ----------
    /// Washburn 1921; annulus with an eccentric pin: Piercy, Hooper and Winny 1933; in series with a fixed resistance: derived.
    ///
    /// Examples
    /// --------
    /// >>> from pinfilm import hydraulics
    /// >>> round(hydraulics.joint_entry_time_s(80, 0.6, 10, 14, 150, 20), 3)
    /// @O
    fn joint_entry_time_s(
        viscosity_mpa_s: Own, plate_gap_mm: Chain, plate_path_mm: Own, pin_diameter_mm: Chain, joint_clearance_um: Own,
        joint_depth_mm: Own;
        surface_tension_mn_per_m: Oil, contact_angle_deg: Joint, density_kg_per_m3: Own, pin_eccentricity: Own
    ) -> Floats = |viscosity, plate_gap, plate_path, pin_diameter, clearance, depth, surface_tension, contact_angle, density, eccentricity| {
        JointEntry { plate_gap, plate_path, pin_diameter, clearance, eccentricity, depth, surface_tension, contact_angle, density }
            .time(viscosity)
    };

    /// Viscosities that get into a joint at the application point and stay there while it runs.
    ///
    /// Parameters
    /// ----------
    /// time_available_s : array_like
    ///     Time the oil has to enter; @R.
    /// articulations : array_like
    ///     Articulations of a joint between two shots; @R.
    /// angle_deg : array_like
    ///     Angle of one articulation; @R.
    /// film_time_h : array_like
    ///     Time for which a film must stay on the plates; @R.
    /// plate_gap_mm : array_like
    ///     Gap between inner and outer plate; @R.
    /// plate_path_mm : array_like
    ///     Way from the plate edge to the bush; @R.
    /// pin_diameter_mm : array_like
    ///     Diameter of the pin; @R.
    /// joint_clearance_um : array_like
    ///     Radial clearance of pin and bush; @R.
    /// joint_depth_mm : array_like
    ///     Length of joint to fill from one gap; @R.
    /// keep : array_like, optional
    ///     Share of its oil that a joint must keep between shots; @R; 0.5 if not given.
    /// film_min_um : array_like, optional
    ///     Mean film that must stay on the plates; @R; 0.3 µm if not given.
    /// surface_tension_mn_per_m : array_like, optional
    ///     Surface tension; @R; 30 mN/m if not given.
    /// contact_angle_deg : array_like, optional
    ///     Angle at which the oil meets the steel; @R; 20° if not given.
    /// density_kg_per_m3 : array_like, optional
    ///     Density; @R; 890 kg/m³ if not given.
    /// pin_eccentricity : array_like, optional
    ///     Offset of the pin over the clearance; @R; 1 if not given.
    /// articulation_loss : array_like, optional
    ///     Share of the pumped oil that an articulation loses; @R; 0.0005 if not given.
    /// articulation_loss_exponent : array_like, optional
    ///     Exponent with which thicker oil is lost less; @R; 0.5 if not given.
    /// articulation_loss_reference_pa_s : array_like, optional
    ///     Viscosity at which that loss holds; @R; 0.1 Pa s if not given.
    ///
    /// Returns
    /// -------
    /// ViscosityWindow
    ///     Greatest viscosity at the application point and least while running, with what sets it; floats or arrays. A
    ///     least above the greatest is no contradiction: the two hold at different temperatures.
    ///
    /// @E
    ///
    /// Notes
    /// -----
    /// Greatest: the joint fills in the time available. Least: the larger of what articulation pumps out too fast (a closure
    /// of our own, spread a factor of 10) and of what drains off an upright plate.
    ///
    /// References
    /// ----------
    /// Washburn 1921; Jeffreys 1930, Proc. Camb. Phil. Soc. 26, 204.
    ///
    /// Examples
    /// --------
    /// >>> from pinfilm import hydraulics
    /// >>> window = hydraulics.viscosity_window_mpa_s(600, 20000, 17, 24, 0.25, 5, 5.72, 60, 7.7, film_min_um=1.0)
    /// >>> round(window.least_mpa_s, 1), round(window.most_mpa_s)
    /// @O
    fn viscosity_window_mpa_s(
        time_available_s: Own, articulations: Own, angle_deg: Own, film_time_h: Own, plate_gap_mm: Chain, plate_path_mm: Own,
        pin_diameter_mm: Chain, joint_clearance_um: Own, joint_depth_mm: Own;
        keep: Fill, film_min_um: Fill, surface_tension_mn_per_m: Oil, contact_angle_deg: Joint, density_kg_per_m3: Own,
        pin_eccentricity: Own, articulation_loss: Fill, articulation_loss_exponent: Fill,
        articulation_loss_reference_pa_s: Fill
    ) -> ViscosityWindow = |available, articulations, angle, film_time, plate_gap, plate_path, pin_diameter, clearance, depth,
                            keep, film, surface_tension, contact_angle, density, eccentricity, loss, exponent, reference| {
        let entry = JointEntry {
            plate_gap, plate_path, pin_diameter, clearance, eccentricity, depth, surface_tension, contact_angle, density,
        };
        let pumping = entry::pumping_viscosity(keep, articulations, angle, eccentricity, loss, exponent, reference);
        let film = entry::film_viscosity(film, film_time, plate_path, density);
        [pumping.max(film), entry::most_viscous(available, entry.time(1.0)), pumping, film]
    };

    /// Time in which the pressure of a line, closed at its far end, falls so far that the injectors reset.
    ///
    /// Parameters
    /// ----------
    /// length_m : array_like
    ///     Length of the line; @R.
    /// bore_mm : array_like
    ///     Bore of the line; @R.
    /// viscosity_mpa_s : array_like
    ///     Dynamic viscosity of the coldest stretch; @R.
    /// pressure_kpa : array_like
    ///     Pressure at delivery; @R.
    /// reset_pressure_kpa : array_like
    ///     Pressure to which it must fall; @R.
    /// bulk_modulus_gpa : array_like, optional
    ///     Bulk modulus of the oil; @R; 1.4 GPa if not given.
    /// hose_compliance_per_gpa : array_like, optional
    ///     Relative swelling of the line over pressure; @R; 0.2 1/GPa if not given.
    ///
    /// Returns
    /// -------
    /// float or ndarray
    ///     Time in s; 0 where nothing has to vent.
    ///
    /// @E
    ///
    /// Notes
    /// -----
    /// The slowest mode of the diffusion of pressure along the line: good for a reset pressure below 0.4 of the pressure.
    /// No air in the line.
    ///
    /// References
    /// ----------
    /// Diffusion equation of a compressible line with laminar friction, first term of its series.
    ///
    /// Examples
    /// --------
    /// >>> from pinfilm import hydraulics
    /// >>> round(hydraulics.vent_time_s(30, 6, 2000, 6000, 1000), 3)
    /// @O
    fn vent_time_s(
        length_m: Own, bore_mm: Own, viscosity_mpa_s: Own, pressure_kpa: Own, reset_pressure_kpa: Own;
        bulk_modulus_gpa: Supply, hose_compliance_per_gpa: Supply
    ) -> Floats = |length, bore, viscosity, pressure, reset, modulus, compliance| {
        supply::vent_time(length, bore, viscosity, modulus, compliance, pressure, reset)
    };
}
