//! `pinfilm.hydraulics`: oil in the line, and on its way into the joint.

use super::outcomes::classes::ViscosityWindow;
use super::prelude::*;
use crate::chain::Chain;
use crate::joint::Joint;
use crate::lubrication::Fill;
use crate::lubrication::entry::{self, JointEntry, Slot};
use crate::oil::Oil;
use crate::supply::{self, Segment, Supply};

formulas! { "hydraulics"
    /// Pressure lost in a round oil line.
    ///
    /// Parameters
    /// ----------
    /// flow_ml_per_min : array_like
    ///     Flow during delivery; 0 to 1000000 mL/min.
    /// viscosity_mpa_s : array_like
    ///     Dynamic viscosity of the coldest stretch; 0.01 to 1000000000 mPa s.
    /// bore_mm : array_like
    ///     Bore of the line; 0.1 to 1000 mm.
    /// length_m : array_like
    ///     Length of the line; 0 to 100000 m.
    /// density_kg_per_m3 : array_like, optional
    ///     Density, for the check that the flow is laminar; 500 to 2000 kg/m³; 890 kg/m³ if not given.
    ///
    /// Returns
    /// -------
    /// float or ndarray
    ///     Pressure drop in kPa, without fittings and height.
    ///
    /// Raises
    /// ------
    /// InputError
    ///     A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN. A
    ///     flow with a Reynolds number above 2040 is an error (`turbulent`).
    /// UnitError
    ///     A quantity of another dimension than the name says.
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
    /// 636.62
    fn pressure_drop_kpa(
        flow_ml_per_min: Own, viscosity_mpa_s: Own, bore_mm: Own, length_m: Own; density_kg_per_m3: Own
    ) -> Floats = |flow, viscosity, bore, length, density| {
            supply::line_drop(&[Segment { length, bore, flow }], viscosity, density).map(|drop| drop.pressure)
        };

    /// Time in which capillarity and gravity draw oil into a slot.
    ///
    /// Parameters
    /// ----------
    /// depth_mm : array_like
    ///     Depth to fill; 0 to 10000 mm.
    /// gap_um : array_like
    ///     Full width of the slot; above 0 and at most 10000 µm.
    /// viscosity_mpa_s : array_like
    ///     Dynamic viscosity; 0.01 to 1000000000 mPa s.
    /// surface_tension_mn_per_m : array_like
    ///     Surface tension; 5 to 80 mN/m.
    /// contact_angle_deg : array_like
    ///     Angle at which the oil meets the steel; 0 to 180 °.
    /// angle_to_vertical_deg : array_like, optional
    ///     Way of the oil, 0 straight down, 90 level, 180 straight up; 0 to 180 °; level if not given.
    /// density_kg_per_m3 : array_like, optional
    ///     Density; 500 to 2000 kg/m³; 890 kg/m³ if not given.
    ///
    /// Returns
    /// -------
    /// float or ndarray
    ///     Time in s; infinite where the oil does not wet the steel or gravity holds it back before that depth.
    ///
    /// Raises
    /// ------
    /// InputError
    ///     A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN.
    /// UnitError
    ///     A quantity of another dimension than the name says.
    ///
    /// Notes
    /// -----
    /// t = (a/b²)(u − ln(1 + u)), u = b x/a, with a = h² p/(12 η), p = 2 γ cos θ/h and b = h² ρ g cos β/(12 η); level:
    /// t = 3 η x²/(γ h cos θ). Newtonian oil in plenty at the edge, air free to leave. Real times spread by a factor of
    /// 2.
    ///
    /// References
    /// ----------
    /// Lucas 1918; Washburn 1921, Phys. Rev. 17, 273.
    ///
    /// Examples
    /// --------
    /// >>> from pinfilm import hydraulics
    /// >>> round(hydraulics.penetration_time_s(10, 50, 100, 30, 0, 90), 6)
    /// 20.0
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
    ///     Dynamic viscosity at the application point; 0.01 to 1000000000 mPa s.
    /// plate_gap_mm : array_like
    ///     Gap between inner and outer plate; 0.001 to 5 mm.
    /// plate_path_mm : array_like
    ///     Way from the plate edge to the bush; above 0 and at most 500 mm.
    /// pin_diameter_mm : array_like
    ///     Diameter of the pin; 0.5 to 200 mm.
    /// joint_clearance_um : array_like
    ///     Radial clearance of pin and bush; above 0 and at most 10000 µm. It grows with wear.
    /// joint_depth_mm : array_like
    ///     Length of joint to fill from one gap, half of it if oiled from both sides; above 0 and at most 1000 mm.
    /// surface_tension_mn_per_m : array_like, optional
    ///     Surface tension; 5 to 80 mN/m; 30 mN/m if not given.
    /// contact_angle_deg : array_like, optional
    ///     Angle at which the oil meets the steel; 0 to 180 °; 20° if not given.
    /// density_kg_per_m3 : array_like, optional
    ///     Density; 500 to 2000 kg/m³; 890 kg/m³ if not given.
    /// pin_eccentricity : array_like, optional
    ///     Offset of the resting pin over the clearance; 0 to 1; 1 if not given.
    ///
    /// Returns
    /// -------
    /// float or ndarray
    ///     Time in s, in proportion to the viscosity; infinite where the oil does not wet.
    ///
    /// Raises
    /// ------
    /// InputError
    ///     A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN.
    /// UnitError
    ///     A quantity of another dimension than the name says.
    ///
    /// Notes
    /// -----
    /// First down the plate gap by capillarity and gravity, then along the annulus round the pin, fed through the
    /// filled plate gap. Real times spread by a factor of 2.
    ///
    /// References
    /// ----------
    /// Washburn 1921; annulus with an eccentric pin: Piercy, Hooper and Winny 1933; in series with a fixed resistance:
    /// derived.
    ///
    /// Examples
    /// --------
    /// >>> from pinfilm import hydraulics
    /// >>> round(hydraulics.joint_entry_time_s(80, 0.6, 10, 14, 150, 20), 3)
    /// 10.685
    fn joint_entry_time_s(
        viscosity_mpa_s: Own, plate_gap_mm: Chain, plate_path_mm: Own, pin_diameter_mm: Chain, joint_clearance_um: Own,
        joint_depth_mm: Own;
        surface_tension_mn_per_m: Oil, contact_angle_deg: Joint, density_kg_per_m3: Own, pin_eccentricity: Own
    ) -> Floats = |
        viscosity, plate_gap, plate_path, pin_diameter, clearance, depth, surface_tension, contact_angle, density,
        eccentricity
    | {
        let entry = JointEntry {
            plate_gap, plate_path, pin_diameter, clearance, eccentricity, depth, surface_tension, contact_angle,
            density,
        };
        entry.time(viscosity)
    };

    /// Viscosities that get into a joint at the application point and stay there while it runs.
    ///
    /// Parameters
    /// ----------
    /// time_available_s : array_like
    ///     Time the oil has to enter; above 0 and at most 1000000000 s.
    /// articulations : array_like
    ///     Articulations of a joint between two shots; above 0 and at most 1000000000.
    /// angle_deg : array_like
    ///     Angle of one articulation; above 0 and at most 360 °.
    /// film_time_h : array_like
    ///     Time for which a film must stay on the plates; above 0 and at most 1000000 h.
    /// plate_gap_mm : array_like
    ///     Gap between inner and outer plate; 0.001 to 5 mm.
    /// plate_path_mm : array_like
    ///     Way from the plate edge to the bush; above 0 and at most 500 mm.
    /// pin_diameter_mm : array_like
    ///     Diameter of the pin; 0.5 to 200 mm.
    /// joint_clearance_um : array_like
    ///     Radial clearance of pin and bush; above 0 and at most 10000 µm.
    /// joint_depth_mm : array_like
    ///     Length of joint to fill from one gap; above 0 and at most 1000 mm.
    /// keep : array_like, optional
    ///     Share of its oil that a joint must keep between shots; 0.01 to 0.99; 0.5 if not given.
    /// film_min_um : array_like, optional
    ///     Mean film that must stay on the plates; above 0 and at most 100 µm; 0.3 µm if not given.
    /// surface_tension_mn_per_m : array_like, optional
    ///     Surface tension; 5 to 80 mN/m; 30 mN/m if not given.
    /// contact_angle_deg : array_like, optional
    ///     Angle at which the oil meets the steel; 0 to 180 °; 20° if not given.
    /// density_kg_per_m3 : array_like, optional
    ///     Density; 500 to 2000 kg/m³; 890 kg/m³ if not given.
    /// pin_eccentricity : array_like, optional
    ///     Offset of the pin over the clearance; 0 to 1; 1 if not given.
    /// articulation_loss : array_like, optional
    ///     Share of the pumped oil that an articulation loses; 0 to 1; 0.0005 if not given.
    /// articulation_loss_exponent : array_like, optional
    ///     Exponent with which thicker oil is lost less; 0 to 3; 0.5 if not given.
    /// articulation_loss_reference_pa_s : array_like, optional
    ///     Viscosity at which that loss holds; 0.0001 to 1000 Pa s; 0.1 Pa s if not given.
    ///
    /// Returns
    /// -------
    /// ViscosityWindow
    ///     Greatest viscosity at the application point and least while running, with what sets it; floats or arrays. A
    ///     least above the greatest is no contradiction: the two hold at different temperatures.
    ///
    /// Raises
    /// ------
    /// InputError
    ///     A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN.
    /// UnitError
    ///     A quantity of another dimension than the name says.
    ///
    /// Notes
    /// -----
    /// Greatest: the joint fills in the time available. Least: the larger of what articulation pumps out too fast (a
    /// closure of our own, spread a factor of 10) and of what drains off an upright plate.
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
    /// (339.3, 10854)
    fn viscosity_window_mpa_s(
        time_available_s: Own, articulations: Own, angle_deg: Own, film_time_h: Own, plate_gap_mm: Chain,
        plate_path_mm: Own, pin_diameter_mm: Chain, joint_clearance_um: Own, joint_depth_mm: Own;
        keep: Fill, film_min_um: Fill, surface_tension_mn_per_m: Oil, contact_angle_deg: Joint, density_kg_per_m3: Own,
        pin_eccentricity: Own, articulation_loss: Fill, articulation_loss_exponent: Fill,
        articulation_loss_reference_pa_s: Fill
    ) -> ViscosityWindow = |
        available, articulations, angle, film_time, plate_gap, plate_path, pin_diameter, clearance, depth, keep, film,
        surface_tension, contact_angle, density, eccentricity, loss, exponent, reference
    | {
        let entry = JointEntry {
            plate_gap, plate_path, pin_diameter, clearance, eccentricity, depth, surface_tension, contact_angle,
            density,
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
    ///     Length of the line; 0 to 100000 m.
    /// bore_mm : array_like
    ///     Bore of the line; 0.1 to 1000 mm.
    /// viscosity_mpa_s : array_like
    ///     Dynamic viscosity of the coldest stretch; 0.01 to 1000000000 mPa s.
    /// pressure_kpa : array_like
    ///     Pressure at delivery; above 0 and at most 100000 kPa.
    /// reset_pressure_kpa : array_like
    ///     Pressure to which it must fall; above 0 and at most 100000 kPa.
    /// bulk_modulus_gpa : array_like, optional
    ///     Bulk modulus of the oil; 0.1 to 5 GPa; 1.4 GPa if not given.
    /// hose_compliance_per_gpa : array_like, optional
    ///     Relative swelling of the line over pressure; 0 to 100 1/GPa; 0.2 1/GPa if not given.
    ///
    /// Returns
    /// -------
    /// float or ndarray
    ///     Time in s; 0 where nothing has to vent.
    ///
    /// Raises
    /// ------
    /// InputError
    ///     A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN.
    /// UnitError
    ///     A quantity of another dimension than the name says.
    ///
    /// Notes
    /// -----
    /// The slowest mode of the diffusion of pressure along the line: good for a reset pressure below 0.4 of the
    /// pressure. No air in the line.
    ///
    /// References
    /// ----------
    /// Diffusion equation of a compressible line with laminar friction, first term of its series.
    ///
    /// Examples
    /// --------
    /// >>> from pinfilm import hydraulics
    /// >>> round(hydraulics.vent_time_s(30, 6, 2000, 6000, 1000), 3)
    /// 1.206
    fn vent_time_s(
        length_m: Own, bore_mm: Own, viscosity_mpa_s: Own, pressure_kpa: Own, reset_pressure_kpa: Own;
        bulk_modulus_gpa: Supply, hose_compliance_per_gpa: Supply
    ) -> Floats = |length, bore, viscosity, pressure, reset, modulus, compliance| {
        supply::vent_time(length, bore, viscosity, modulus, compliance, pressure, reset)
    };
}
