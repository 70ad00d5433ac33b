"""
The compiled core of pinfilm. Import from `pinfilm`, not from here.
"""

from collections.abc import Mapping, Sequence
from os import PathLike
from pinfilm.typing import Scalar
from typing import Any, final

__all__ = ["Caution", "Chain", "Circuit", "Comparison", "Cost", "Costs", "Drip", "Drive", "DriveState", "Duty", "Evaluation", "Event", "Explanation", "Fill", "FillState", "Friction", "Joint", "JointState", "Kinematics", "Line", "LossParts", "Manual", "Oil", "RollerContact", "Savings", "Spray", "Straight", "Supply", "SupplyState", "Surface", "Synchronised", "Tension", "Timer", "Turn", "TwoSprocket", "Warning", "Wear", "WearState", "compare", "evaluate", "register", "standards", "version"]

@final
class Caution:
    """
    A caution for people who will stand at the machine.
    """
    def __copy__(self, /) -> Caution: ...
    def __deepcopy__(self, /, _memo: Any) -> Caution: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, code: str | None, message: str | None) -> Caution: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def code(self, /) -> str:
        """
        stable word of the hazard
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> Caution:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> Caution:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> Caution:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def message(self, /) -> str:
        """
        what to mind, and whose rules decide
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> Caution:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """

@final
class Chain:
    """
    One strand of chain: the dimensions and materials of its joints.
    """
    def __copy__(self, /) -> Chain: ...
    def __deepcopy__(self, /, _memo: Any) -> Chain: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, designation: str | None = None, pitch_mm: Scalar | None, pin_diameter_mm: Scalar | None, bush_bore_mm: Scalar | None, bush_diameter_mm: Scalar | None, joint_length_mm: Scalar | None, roller_diameter_mm: Scalar | None = None, roller_bore_mm: Scalar | None = None, inner_width_mm: Scalar | None = None, rollers_per_pitch: Scalar | None = None, plate_gap_mm: Scalar | None, plate_depth_mm: Scalar | None, mass_kg_per_m: Scalar | None, tensile_strength_kn: Scalar | None = None, elongation_limit_pct: Scalar | None = None, pin_wear_limit_pct: Scalar | None = None, case_hardness_mpa: Scalar | None = None, core_hardness_mpa: Scalar | None = None, case_depth_mm: Scalar | None = None, core_factor: Scalar | None = None) -> Chain: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def bush_bore_mm(self, /) -> float:
        """
        bore of the bush
        """
    @property
    def bush_diameter_mm(self, /) -> float:
        """
        outside diameter of the bush
        """
    @property
    def case_depth_mm(self, /) -> float | None:
        """
        depth of the hardened case; 0 for through-hardened or stainless; not given: 0.06 of the pin diameter
        """
    @property
    def case_hardness_mpa(self, /) -> float:
        """
        hardness of the case of pin and bush at 20 °C
        """
    @property
    def core_factor(self, /) -> float:
        """
        wear coefficient below the case over that of the case
        """
    @property
    def core_hardness_mpa(self, /) -> float:
        """
        hardness below the case at 20 °C
        """
    @property
    def designation(self, /) -> str | None:
        """
        standard and number of the chain, where it is a standard one
        """
    @property
    def elongation_limit_pct(self, /) -> float:
        """
        elongation at which the chain is replaced
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> Chain:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> Chain:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> Chain:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def inner_width_mm(self, /) -> float | None:
        """
        width between the inner plates, which the roller fills
        """
    @property
    def joint_length_mm(self, /) -> float:
        """
        length of the bush, which carries the pin
        """
    @property
    def mass_kg_per_m(self, /) -> float:
        """
        mass of one strand with its attachments
        """
    @property
    def pin_diameter_mm(self, /) -> float:
        """
        diameter of the pin
        """
    @property
    def pin_wear_limit_pct(self, /) -> float:
        """
        wear of the pin, in shares of its diameter, at which the chain is replaced
        """
    @property
    def pitch_mm(self, /) -> float:
        """
        pitch, joint to joint
        """
    @property
    def plate_depth_mm(self, /) -> float:
        """
        depth of the side plates
        """
    @property
    def plate_gap_mm(self, /) -> float:
        """
        gap between inner and outer plate, through which oil enters the joint
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> Chain:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def roller_bore_mm(self, /) -> float | None:
        """
        bore of the roller
        """
    @property
    def roller_diameter_mm(self, /) -> float | None:
        """
        diameter of the roller; none for a bush chain
        """
    @property
    def rollers_per_pitch(self, /) -> float:
        """
        rollers of one strand in one pitch
        """
    @staticmethod
    def standard(standard: str, designation: str, /, **given: "object") -> Chain:
        """
        A chain of a standard's table; what the standard leaves open, or what differs, is given by name.

        Parameters
        ----------
        standard, designation : str
            Such as ``"ISO 606", "16B-2"`` or ``"ISO 1977", "M112"``; see `pinfilm.standards`.
        **given
            Public names of `Chain`. Tensile strength and mass are per strand.

        Raises
        ------
        InputError
            For an unknown standard or designation (naming the nearest), or a value that is still missing.

        Examples
        --------
        >>> import pinfilm
        >>> pinfilm.Chain.standard("ISO 606", "16B", bush_diameter_mm=11.0, mass_kg_per_m=2.7).pin_diameter_mm
        8.28
        """
    @property
    def tensile_strength_kn(self, /) -> float | None:
        """
        least tensile strength of one strand
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """

@final
class Circuit:
    """
    The closed loop of chain, its take-up and its attachments.
    """
    def __copy__(self, /) -> Circuit: ...
    def __deepcopy__(self, /, _memo: Any) -> Circuit: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, sections: Sequence[Straight | Turn] | None, strands: int | None = None, joints: int | None = None, take_up_n: Scalar | None, take_up_at: int | None = None, least_tension_n: Scalar | None = None, strand_share_factor: Scalar | None = None, surface_factor: Scalar | None = None, start_time_s: Scalar | None = None, attachment_every: int | None = None, attachment_blocks: Sequence[int] | None = None) -> Circuit: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def attachment_blocks(self, /) -> tuple[int, ...]:
        """
        joints of that pattern, counted from 0, whose gap the attachments hide from the applicator
        """
    @property
    def attachment_every(self, /) -> int | None:
        """
        joints from one attachment to the next
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> Circuit:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> Circuit:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> Circuit:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def joints(self, /) -> int | None:
        """
        joints of one strand, counted; not given: the even number nearest to length over pitch
        """
    @property
    def least_tension_n(self, /) -> float | None:
        """
        least tension that keeps the chain in line; not given: 2 % sag on one metre
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> Circuit:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def sections(self, /) -> tuple[Straight | Turn, ...]:
        """
        straights and turns in travel order
        """
    @property
    def start_time_s(self, /) -> float:
        """
        time in which the drive runs up
        """
    @property
    def strand_share_factor(self, /) -> float | None:
        """
        tension of the heaviest strand over the mean; not given: 1, 1.2, 1.3 for 1, 2, more strands
        """
    @property
    def strands(self, /) -> int:
        """
        parallel strands of chain
        """
    @property
    def surface_factor(self, /) -> float:
        """
        cooled surface over that of an equal round bar
        """
    @property
    def take_up_at(self, /) -> int | None:
        """
        section number of the turn that carries a weight or spring take-up
        """
    @property
    def take_up_n(self, /) -> float:
        """
        running tension of all strands at the drive exit, or the force on the frame of the take-up turn
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """
    @staticmethod
    def two_sprocket(**given: "object") -> Circuit:
        """
        The everyday loop of two sprockets, from the keywords of `TwoSprocket`.

        Examples
        --------
        >>> import pinfilm
        >>> loop = pinfilm.Circuit.two_sprocket(
        ...     pitch_mm=100, centre_distance_m=20, teeth_drive=12, teeth_tail=12, carried_kg_per_m=60, take_up_n=1500
        ... )
        >>> len(loop.sections)
        4
        """

@final
class Comparison:
    """
    Now against proposed: what the change saves, and whether and when it pays back.
    """
    def __copy__(self, /) -> Comparison: ...
    def __deepcopy__(self, /, _memo: Any) -> Comparison: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, now: Evaluation | None, proposed: Evaluation | None, saving_items: Savings | None, saving_per_year: Scalar | None, saving_without_chain_per_year: Scalar | None, invest: Scalar | None, payback_status: str | None, payback_days: Scalar | None, payback_status_without_chain: str | None, payback_days_without_chain: Scalar | None, payback_status_downtime_halved: str | None, payback_days_downtime_halved: Scalar | None, discounted_payback_status: str | None, discounted_payback_years: Scalar | None, npv: Scalar | None, npv_without_chain: Scalar | None, irr: Scalar | None, irr_status: str | None, irr_roots: Sequence[Scalar] | None, discount_rate: Scalar | None, horizon_years: int | None, cash_flow: Sequence[Scalar] | None) -> Comparison: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def cash_flow(self, /) -> tuple[float, ...]:
        """
        capital now, saving at each year end
        """
    @property
    def discount_rate(self, /) -> float:
        """
        discount rate of a year
        """
    @property
    def discounted_payback_status(self, /) -> str:
        """
        status of the discounted payback
        """
    @property
    def discounted_payback_years(self, /) -> float | None:
        """
        years until the discounted flows have returned the capital
        """
    def explain(self, /, path: str) -> Explanation:
        """
        Explain a number as `Evaluation.explain` does; the two lines stand under `now.` and `proposed.`.
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> Comparison:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> Comparison:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> Comparison:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def horizon_years(self, /) -> int:
        """
        years over which the change is judged
        """
    @property
    def invest(self, /) -> float:
        """
        capital that the change needs now
        """
    @property
    def irr(self, /) -> float | None:
        """
        internal rate of return of a year; with several, the one nearest zero, which decides nothing
        """
    @property
    def irr_roots(self, /) -> tuple[float, ...]:
        """
        all internal rates of return
        """
    @property
    def irr_status(self, /) -> str:
        """
        none, unique, several or out_of_range
        """
    @property
    def now(self, /) -> Evaluation:
        """
        the line as it is
        """
    @property
    def npv(self, /) -> float:
        """
        net present value over the horizon
        """
    @property
    def npv_without_chain(self, /) -> float:
        """
        the same without chain and sprockets
        """
    @property
    def payback_days(self, /) -> float | None:
        """
        days until the saving has returned the capital
        """
    @property
    def payback_days_downtime_halved(self, /) -> float | None:
        """
        days if standstill costs only half
        """
    @property
    def payback_days_without_chain(self, /) -> float | None:
        """
        days without counting chain and sprockets
        """
    @property
    def payback_status(self, /) -> str:
        """
        pays_back, immediate, never or loses_after
        """
    @property
    def payback_status_downtime_halved(self, /) -> str:
        """
        the same status at half the downtime cost
        """
    @property
    def payback_status_without_chain(self, /) -> str:
        """
        the same status without chain and sprockets
        """
    @property
    def proposed(self, /) -> Evaluation:
        """
        the line as proposed
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> Comparison:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def saving_items(self, /) -> Savings:
        """
        saving of a year, item by item
        """
    @property
    def saving_per_year(self, /) -> float:
        """
        saving of a year
        """
    @property
    def saving_without_chain_per_year(self, /) -> float:
        """
        the same without chain and sprockets, which rest on an estimated wear life
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """

@final
class Cost:
    """
    Cost of a year, item by item. Safety is not put into money.
    """
    def __copy__(self, /) -> Cost: ...
    def __deepcopy__(self, /, _memo: Any) -> Cost: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, oil: Scalar | None, application_labour: Scalar | None, energy: Scalar | None, cleaning: Scalar | None, downtime: Scalar | None, chain: Scalar | None, sprockets: Scalar | None, waste: Scalar | None, upkeep: Scalar | None, total_per_year: Scalar | None) -> Cost: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def application_labour(self, /) -> float:
        """
        work of oiling, refills and checks
        """
    @property
    def chain(self, /) -> float:
        """
        new chain
        """
    @property
    def cleaning(self, /) -> float:
        """
        cleaning
        """
    @property
    def downtime(self, /) -> float:
        """
        standstill
        """
    @property
    def energy(self, /) -> float:
        """
        electrical energy
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> Cost:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> Cost:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> Cost:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def oil(self, /) -> float:
        """
        oil
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> Cost:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def sprockets(self, /) -> float:
        """
        new sprockets
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """
    @property
    def total_per_year(self, /) -> float:
        """
        all items
        """
    @property
    def upkeep(self, /) -> float:
        """
        upkeep of the oiling equipment
        """
    @property
    def waste(self, /) -> float:
        """
        disposal of oil
        """

@final
class Costs:
    """
    Prices, yearly work and stops, and what a change costs. Money is in one currency, all real or all nominal.
    """
    def __copy__(self, /) -> Costs: ...
    def __deepcopy__(self, /, _memo: Any) -> Costs: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, currency: str | None = None, energy_price_per_kwh: Scalar | None, labour_rate_per_h: Scalar | None, downtime_cost_per_h: Scalar | None = None, applications_per_year: Scalar | None = None, hours_per_application: Scalar | None = None, cleanings_per_year: Scalar | None = None, cleaning_h: Scalar | None = None, cleaning_material: Scalar | None = None, breakdowns_per_year: Scalar | None = None, breakdown_h: Scalar | None = None, planned_stop_h: Scalar | None = None, chain_price_per_m: Scalar | None = None, fit_h: Scalar | None = None, fit_downtime_h: Scalar | None = None, sprocket_set_price: Scalar | None = None, chains_per_sprocket: Scalar | None = None, other_life_years: Scalar | None = None, waste_price_per_l: Scalar | None = None, upkeep_per_year: Scalar | None = None, invest: Scalar | None = None, discount_rate: Scalar | None = None, horizon_years: int | None = None, year_days: Scalar | None = None) -> Costs: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def applications_per_year(self, /) -> float | None:
        """
        oilings, or refills and checks, in a year; not given: from the interval of a manual round
        """
    @property
    def breakdown_h(self, /) -> float:
        """
        standstill of one breakdown
        """
    @property
    def breakdowns_per_year(self, /) -> float:
        """
        breakdowns of the chain in a year
        """
    @property
    def chain_price_per_m(self, /) -> float:
        """
        price of one metre of one strand
        """
    @property
    def chains_per_sprocket(self, /) -> float:
        """
        chains that one set of sprockets outlasts
        """
    @property
    def cleaning_h(self, /) -> float:
        """
        work of one cleaning
        """
    @property
    def cleaning_material(self, /) -> float:
        """
        material of one cleaning
        """
    @property
    def cleanings_per_year(self, /) -> float:
        """
        cleanings in a year
        """
    @property
    def currency(self, /) -> str:
        """
        label of the currency
        """
    @property
    def discount_rate(self, /) -> float:
        """
        discount rate of a year
        """
    @property
    def downtime_cost_per_h(self, /) -> float:
        """
        cost of one hour of standstill
        """
    @property
    def energy_price_per_kwh(self, /) -> float:
        """
        price of electrical energy
        """
    @property
    def fit_downtime_h(self, /) -> float:
        """
        standstill to fit a new chain
        """
    @property
    def fit_h(self, /) -> float:
        """
        work to fit a new chain
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> Costs:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> Costs:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> Costs:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def horizon_years(self, /) -> int:
        """
        years over which the change is judged
        """
    @property
    def hours_per_application(self, /) -> float:
        """
        work of one oiling, refill or check
        """
    @property
    def invest(self, /) -> float:
        """
        capital that this method needs now
        """
    @property
    def labour_rate_per_h(self, /) -> float:
        """
        cost of one working hour
        """
    @property
    def other_life_years(self, /) -> float:
        """
        mean life of the chain if it did not wear: corrosion, damage, change of product
        """
    @property
    def planned_stop_h(self, /) -> float:
        """
        planned standstill for the chain in a year
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> Costs:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def sprocket_set_price(self, /) -> float:
        """
        price of a set of sprockets, fitted
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """
    @property
    def upkeep_per_year(self, /) -> float:
        """
        upkeep of the oiling equipment
        """
    @property
    def waste_price_per_l(self, /) -> float:
        """
        cost of disposing of oil
        """
    @property
    def year_days(self, /) -> float:
        """
        days in the year of a payback: 365 calendar days, or the working days
        """

@final
class Drip:
    """
    A dripper that never stops.
    """
    def __copy__(self, /) -> Drip: ...
    def __deepcopy__(self, /, _memo: Any) -> Drip: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, flow_ml_per_min: Scalar | None, drop_ul: Scalar | None = None, capture: Scalar | None = None, points: int | None = None, application_section: int | None = None, application_position: Scalar | None = None, application_side: str | None = None, time_available_s: Scalar | None = None) -> Drip: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def application_position(self, /) -> float:
        """
        place in that section, as a share of its length
        """
    @property
    def application_section(self, /) -> int | None:
        """
        number of the section where oil is applied, from 0; not given: the best point
        """
    @property
    def application_side(self, /) -> str:
        """
        side from which oil is applied: top, side or bottom
        """
    @property
    def capture(self, /) -> float:
        """
        share of the oil that lands in the gaps
        """
    @property
    def drop_ul(self, /) -> float:
        """
        volume of one drop
        """
    @property
    def flow_ml_per_min(self, /) -> float:
        """
        flow at each point
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> Drip:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> Drip:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> Drip:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def points(self, /) -> int:
        """
        gaps of one joint served, per strand: 1 or 2
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> Drip:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def time_available_s(self, /) -> float | None:
        """
        time the oil has to enter; not given: from the circuit
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """

@final
class Drive:
    """
    A three-phase cage induction motor by its nameplate, its gear, and how the current is measured.
    """
    def __copy__(self, /) -> Drive: ...
    def __deepcopy__(self, /, _memo: Any) -> Drive: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, rated_power_kw: Scalar | None, rated_voltage_v: Scalar | None, rated_current_a: Scalar | None, rated_speed_rpm: Scalar | None, rated_efficiency: Scalar | None, rated_power_factor: Scalar | None, rated_frequency_hz: Scalar | None = None, gear_efficiency: Scalar | None, gear_fixed_share: Scalar | None = None, gear_rated_power_kw: Scalar | None = None, gear_extra_efficiency: Scalar | None = None, no_load_current_a: Scalar | None = None, empty_current_a: Scalar | None = None, locked_rotor_torque_ratio: Scalar | None = None, supply_voltage_v: Scalar | None = None, frequency_hz: Scalar | None = None, converter: bool | None = None, current_measured_at: str | None = None, converter_efficiency: Scalar | None = None, line_power_factor: Scalar | None = None, leakage_pu: Scalar | None = None, core_share: Scalar | None = None, friction_windage_share: Scalar | None = None, stray_factor: Scalar | None = None, measured_current_a: Scalar | None = None, measured_power_kw: Scalar | None = None) -> Drive: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def converter(self, /) -> bool:
        """
        whether a frequency converter feeds the motor
        """
    @property
    def converter_efficiency(self, /) -> float:
        """
        efficiency of the converter
        """
    @property
    def core_share(self, /) -> float:
        """
        share of core loss in the constant losses
        """
    @property
    def current_measured_at(self, /) -> str:
        """
        where the clamp sits: motor or before_converter
        """
    @property
    def empty_current_a(self, /) -> float | None:
        """
        measured current of the running line without product
        """
    @property
    def frequency_hz(self, /) -> float | None:
        """
        actual frequency; not given: rated
        """
    @property
    def friction_windage_share(self, /) -> float:
        """
        share of friction and windage in the losses
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> Drive:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> Drive:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> Drive:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def gear_efficiency(self, /) -> float:
        """
        efficiency of the gear at its rated load
        """
    @property
    def gear_extra_efficiency(self, /) -> float:
        """
        efficiency of a further belt or chain between gear and sprocket
        """
    @property
    def gear_fixed_share(self, /) -> float:
        """
        share of the gear's loss that does not depend on load
        """
    @property
    def gear_rated_power_kw(self, /) -> float | None:
        """
        rated power of the gear; not given: that of the motor
        """
    @property
    def leakage_pu(self, /) -> float:
        """
        leakage reactance over base impedance, where no no-load current was measured
        """
    @property
    def line_power_factor(self, /) -> float:
        """
        true power factor before the converter: 0.90 with a choke, 0.60 to 0.70 without
        """
    @property
    def locked_rotor_torque_ratio(self, /) -> float | None:
        """
        starting torque over rated torque, from the motor's data
        """
    @property
    def measured_current_a(self, /) -> float | None:
        """
        current read on the running line, if known
        """
    @property
    def measured_power_kw(self, /) -> float | None:
        """
        electrical power read on the running line, if known
        """
    @property
    def no_load_current_a(self, /) -> float | None:
        """
        measured current of the uncoupled motor
        """
    @property
    def rated_current_a(self, /) -> float:
        """
        rated line current of the connection in use
        """
    @property
    def rated_efficiency(self, /) -> float:
        """
        rated efficiency of the motor
        """
    @property
    def rated_frequency_hz(self, /) -> float:
        """
        rated frequency
        """
    @property
    def rated_power_factor(self, /) -> float:
        """
        rated power factor
        """
    @property
    def rated_power_kw(self, /) -> float:
        """
        rated shaft power
        """
    @property
    def rated_speed_rpm(self, /) -> float:
        """
        rated speed
        """
    @property
    def rated_voltage_v(self, /) -> float:
        """
        rated line voltage of the connection in use
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> Drive:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def stray_factor(self, /) -> float:
        """
        stray load loss over its assigned value
        """
    @property
    def supply_voltage_v(self, /) -> float | None:
        """
        actual line voltage; not given: rated
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """

@final
class DriveState:
    """
    Power, current and energy.
    """
    def __copy__(self, /) -> DriveState: ...
    def __deepcopy__(self, /, _memo: Any) -> DriveState: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, chain_power_w: Scalar | None, shaft_power_w: Scalar | None, load: Scalar | None, current_a: Scalar | None, input_power_w: Scalar | None, power_factor: Scalar | None, slip: Scalar | None, no_load_current_a: Scalar | None, current_per_pull_a_per_n: Scalar | None, energy_kwh_per_year: Scalar | None, pull_detectable_n: Scalar | None, current_drop_joint_a: Scalar | None, current_drop_all_a: Scalar | None) -> DriveState: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def chain_power_w(self, /) -> float:
        """
        power at the drive sprocket
        """
    @property
    def current_a(self, /) -> float | None:
        """
        current where the clamp sits
        """
    @property
    def current_drop_all_a(self, /) -> float | None:
        """
        fall of current if pin/bush, bush/roller and plate/track friction were all halved
        """
    @property
    def current_drop_joint_a(self, /) -> float | None:
        """
        fall of current if pin/bush friction alone were halved
        """
    @property
    def current_per_pull_a_per_n(self, /) -> float | None:
        """
        change of current with pull
        """
    @property
    def energy_kwh_per_year(self, /) -> float:
        """
        electrical energy of a year
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> DriveState:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> DriveState:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> DriveState:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def input_power_w(self, /) -> float | None:
        """
        electrical power
        """
    @property
    def load(self, /) -> float:
        """
        shaft power over rated power
        """
    @property
    def no_load_current_a(self, /) -> float:
        """
        current of the uncoupled motor
        """
    @property
    def power_factor(self, /) -> float | None:
        """
        power factor
        """
    @property
    def pull_detectable_n(self, /) -> float | None:
        """
        least change of pull that a month of logged current could show on each side
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> DriveState:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def shaft_power_w(self, /) -> float:
        """
        power at the motor's shaft
        """
    @property
    def slip(self, /) -> float | None:
        """
        slip
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """

@final
class Duty:
    """
    What the line does all year, and what it works in.
    """
    def __copy__(self, /) -> Duty: ...
    def __deepcopy__(self, /, _memo: Any) -> Duty: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, speed_m_per_min: Scalar | None, hours_per_day: Scalar | None, days_per_year: Scalar | None, ambient_c: Scalar | None, surroundings: str | None = None, food_contact: bool | None = None, dust_factor: Scalar | None = None, water_factor: Scalar | None = None, dust_loss_per_s: Scalar | None = None, wash_interval_h: Scalar | None = None, wash_removed_share: Scalar | None = None) -> Duty: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def ambient_c(self, /) -> float:
        """
        temperature of the room
        """
    @property
    def days_per_year(self, /) -> float:
        """
        working days in a year
        """
    @property
    def dust_factor(self, /) -> float:
        """
        wear over that of a clean line: clean 1, light dust 2, dusty 5, abrasive 15
        """
    @property
    def dust_loss_per_s(self, /) -> float:
        """
        oil taken up by dust: clean 0, dusty 1e-6, very dusty 5e-6
        """
    @property
    def food_contact(self, /) -> bool:
        """
        whether open food is near the chain
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> Duty:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> Duty:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> Duty:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def hours_per_day(self, /) -> float:
        """
        running hours in a working day
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> Duty:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def speed_m_per_min(self, /) -> float:
        """
        chain speed
        """
    @property
    def surroundings(self, /) -> str:
        """
        what the chain works in: dry, dusty, wash_down, oven or freezer
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """
    @property
    def wash_interval_h(self, /) -> float | None:
        """
        calendar time between washes
        """
    @property
    def wash_removed_share(self, /) -> float:
        """
        share of the oil in a joint that a wash removes
        """
    @property
    def water_factor(self, /) -> float:
        """
        wear over that of a dry line: dry 1, damp 1.5, wash-down 3, caustic 5
        """

@final
class Evaluation:
    """
    A line, evaluated: what its joints go through, what oil does in them, what that costs.
    """
    def __copy__(self, /) -> Evaluation: ...
    def __deepcopy__(self, /, _memo: Any) -> Evaluation: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, line: Line | None, kinematics: Kinematics | None, tension: Tension | None, joint: JointState | None, fill: FillState | None, wear: WearState | None, drive: DriveState | None, supply: SupplyState | None, cost: Cost | None, warnings: Sequence[Warning] | None, cautions: Sequence[Caution] | None) -> Evaluation: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def cautions(self, /) -> tuple[Caution, ...]:
        """
        what can hurt people
        """
    @property
    def cost(self, /) -> Cost:
        """
        cost of a year
        """
    @property
    def drive(self, /) -> DriveState:
        """
        power, current, energy
        """
    def explain(self, /, path: str) -> Explanation:
        """
        Explain a number: formula, numbers put in with their units, where each came from, source and its class.

        `path` is dotted: a result (`"joint.events.2.friction"`; `"joint.pressure_mpa"` for the event with the greatest), or
        an input by its survey key (`"chain.pitch_mm"`). Raises InputError for a path that is none, naming the nearest.
        """
    @property
    def fill(self, /) -> FillState:
        """
        oil in the joints
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> Evaluation:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> Evaluation:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> Evaluation:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def joint(self, /) -> JointState:
        """
        what the joints go through
        """
    @property
    def kinematics(self, /) -> Kinematics:
        """
        lengths, times and temperatures
        """
    @property
    def line(self, /) -> Line:
        """
        the survey
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> Evaluation:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def supply(self, /) -> SupplyState:
        """
        oil used and its supply
        """
    @property
    def tension(self, /) -> Tension:
        """
        pull and tension
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """
    @property
    def warnings(self, /) -> tuple[Warning, ...]:
        """
        what to read with care
        """
    @property
    def wear(self, /) -> WearState:
        """
        wear and life
        """

@final
class Event:
    """
    One articulation of a joint on its way round the loop.
    """
    def __copy__(self, /) -> Event: ...
    def __deepcopy__(self, /, _memo: Any) -> Event: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, section: int | None, kind: str | None, count: Scalar | None, time_s: Scalar | None, tension_n: Scalar | None, angle_deg: Scalar | None, temperature_c: Scalar | None, rest_s: Scalar | None, rest_tension_n: Scalar | None, viscosity_mpa_s: Scalar | None, pressure_mpa: Scalar | None, contact_pressure_mpa: Scalar | None, film_um: Scalar | None, lambda_ratio: Scalar | None, lambda_fill_1: Scalar | None, regime: str | None, asperity_share: Scalar | None, friction_reached: Scalar | None, friction: Scalar | None, flash_temperature_k: Scalar | None, wear_coefficient_reached: Scalar | None) -> Event: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def angle_deg(self, /) -> float:
        """
        angle of articulation
        """
    @property
    def asperity_share(self, /) -> float:
        """
        share of the load on asperities
        """
    @property
    def contact_pressure_mpa(self, /) -> float:
        """
        mean pressure in the strip that carries the load
        """
    @property
    def count(self, /) -> float:
        """
        articulations in one circuit
        """
    @property
    def film_um(self, /) -> float:
        """
        oil film at the effective fill
        """
    @property
    def flash_temperature_k(self, /) -> float:
        """
        greatest flash temperature rise
        """
    @property
    def friction(self, /) -> float:
        """
        friction coefficient, mean over all joints
        """
    @property
    def friction_reached(self, /) -> float:
        """
        friction coefficient of a joint that gets oil
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> Event:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> Event:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> Event:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def kind(self, /) -> str:
        """
        entry or exit of a turn, or idler
        """
    @property
    def lambda_fill_1(self, /) -> float:
        """
        film over roughness if the joint were full
        """
    @property
    def lambda_ratio(self, /) -> float:
        """
        film over roughness
        """
    @property
    def pressure_mpa(self, /) -> float:
        """
        nominal bearing pressure of the pin in its bush
        """
    @property
    def regime(self, /) -> str:
        """
        boundary, mixed or full film
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> Event:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def rest_s(self, /) -> float:
        """
        time at rest before it
        """
    @property
    def rest_tension_n(self, /) -> float:
        """
        mean tension during that rest
        """
    @property
    def section(self, /) -> int:
        """
        section of the survey, from 0
        """
    @property
    def temperature_c(self, /) -> float:
        """
        chain temperature
        """
    @property
    def tension_n(self, /) -> float:
        """
        tension of the heaviest strand
        """
    @property
    def time_s(self, /) -> float:
        """
        time in the circuit, from the drive exit
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """
    @property
    def viscosity_mpa_s(self, /) -> float:
        """
        dynamic viscosity at this temperature
        """
    @property
    def wear_coefficient_reached(self, /) -> float:
        """
        wear coefficient of a joint that gets oil, mean over its waits
        """

@final
class Explanation:
    """
    One number, explained: formula, numbers put in, where each came from, source and its class.
    """
    def __repr__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def filled(self, /) -> str:
        """
        Formula with numbers.
        """
    @property
    def formula(self, /) -> str:
        """
        Formula with names; empty for an input.
        """
    @property
    def inputs(self, /) -> list[tuple[str, str, str]]:
        """
        The numbers put in: path, value with unit, where it came from.
        """
    @property
    def means(self, /) -> str:
        """
        What it means.
        """
    @property
    def origin(self, /) -> str:
        """
        Where the number itself came from.
        """
    @property
    def path(self, /) -> str:
        """
        Path of the quantity, with the number of the list item.
        """
    @property
    def source(self, /) -> str:
        """
        Source of the relation or default.
        """
    @property
    def source_class(self, /) -> str:
        """
        How well the source is founded.
        """
    @property
    def spread(self, /) -> str:
        """
        Low and high of a default or closure; empty where none is stated.
        """
    @property
    def value(self, /) -> str:
        """
        Value with its unit, as people read it.
        """

@final
class Fill:
    """
    What oil does once it is in a joint: the closures of loss and capacity, and the floors that a set-up must keep.
    """
    def __copy__(self, /) -> Fill: ...
    def __deepcopy__(self, /, _memo: Any) -> Fill: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, articulation_loss: Scalar | None = None, articulation_loss_exponent: Scalar | None = None, articulation_loss_reference_pa_s: Scalar | None = None, air_factor: Scalar | None = None, noack_mass_per_area_kg_per_m2: Scalar | None = None, floor: Scalar | None = None, ring_share: Scalar | None = None, film_min_um: Scalar | None = None, keep: Scalar | None = None, hot_oil_confirmed: bool | None = None) -> Fill: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def air_factor(self, /) -> float:
        """
        evaporation over that of the test cup: 0.3 in still air, 1 in moving hot air
        """
    @property
    def articulation_loss(self, /) -> float:
        """
        share of the pumped oil that an articulation loses
        """
    @property
    def articulation_loss_exponent(self, /) -> float:
        """
        exponent with which thicker oil is lost less
        """
    @property
    def articulation_loss_reference_pa_s(self, /) -> float:
        """
        viscosity at which the articulation loss holds
        """
    @property
    def film_min_um(self, /) -> float:
        """
        thickness of the film that must stay on the plates
        """
    @property
    def floor(self, /) -> float:
        """
        lowest fill that a set-up may let a joint fall to
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> Fill:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> Fill:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> Fill:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def hot_oil_confirmed(self, /) -> bool:
        """
        whether a competent person has confirmed oil within 20 K of its flash point
        """
    @property
    def keep(self, /) -> float:
        """
        share of its oil that a joint must keep between shots
        """
    @property
    def noack_mass_per_area_kg_per_m2(self, /) -> float:
        """
        oil per open area in the cup of the evaporation test
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> Fill:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def ring_share(self, /) -> float:
        """
        share of the plate-gap ring that stays wet
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """

@final
class FillState:
    """
    Which joints are reached and when; what enters, stays and drips.
    """
    def __copy__(self, /) -> FillState: ...
    def __deepcopy__(self, /, _memo: Any) -> FillState: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, never_reached: Scalar | None, never_reached_if_miscounted: Scalar | None, wait_s: Sequence[Scalar] | None, wait_weight: Sequence[Scalar] | None, wait_circuits: Sequence[int] | None, wait_h: Sequence[Scalar] | None, share_of_joints: Sequence[Scalar] | None, mean_interval_h: Scalar | None, worst_wait_h: Scalar | None, visits_per_year: Scalar | None, pass_chance: Scalar | None, always_full: bool | None, lock_risk: Scalar | None, application_section: int | None, application_position: Scalar | None, application_side: str | None, application_score: Scalar | None, application_c: Scalar | None, viscosity_application_mpa_s: Scalar | None, time_available_s: Scalar | None, entry_plate_gap_s: Scalar | None, entry_joint_s: Scalar | None, entered_share: Scalar | None, viscosity_most_mpa_s: Scalar | None, viscosity_least_mpa_s: Scalar | None, capacity_ul: Scalar | None, retained_width_mm: Scalar | None, dose_in_joint_ul: Scalar | None, loss_rate_per_h: Scalar | None, loss_parts_per_h: LossParts | None, half_life_h: Scalar | None, fill_after_shot: Scalar | None, mean_fill: Scalar | None, mean_fill_reached: Scalar | None, lowest_fill_reached: Scalar | None, after_wash_fill: Scalar | None, effective_fill: Scalar | None, demand_ul_per_joint_h: Scalar | None, residue_years: Scalar | None) -> FillState: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def after_wash_fill(self, /) -> float | None:
        """
        mean fill of reached joints right after a wash
        """
    @property
    def always_full(self, /) -> bool | None:
        """
        whether every shot fills the joint
        """
    @property
    def application_c(self, /) -> float:
        """
        chain temperature where oil is applied
        """
    @property
    def application_position(self, /) -> float | None:
        """
        place in that section
        """
    @property
    def application_score(self, /) -> float | None:
        """
        score of that place, 1 at best
        """
    @property
    def application_section(self, /) -> int | None:
        """
        section where oil is applied
        """
    @property
    def application_side(self, /) -> str | None:
        """
        side from which it is applied
        """
    @property
    def capacity_ul(self, /) -> float:
        """
        oil that a full joint holds
        """
    @property
    def demand_ul_per_joint_h(self, /) -> float:
        """
        oil that keeps a joint half full
        """
    @property
    def dose_in_joint_ul(self, /) -> float:
        """
        oil that one visit brings into a joint
        """
    @property
    def effective_fill(self, /) -> float:
        """
        fill that gives the mean boundary friction
        """
    @property
    def entered_share(self, /) -> float:
        """
        share of the captured oil that enters in time
        """
    @property
    def entry_joint_s(self, /) -> float:
        """
        further time to fill the annulus
        """
    @property
    def entry_plate_gap_s(self, /) -> float:
        """
        time to pass the plate gap
        """
    @property
    def fill_after_shot(self, /) -> float:
        """
        age-law fill right after a visit
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> FillState:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> FillState:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> FillState:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def half_life_h(self, /) -> float:
        """
        running time in which half is lost
        """
    @property
    def lock_risk(self, /) -> float | None:
        """
        share of possible speed errors at which some stretch waits too long
        """
    @property
    def loss_parts_per_h(self, /) -> LossParts:
        """
        the same by cause
        """
    @property
    def loss_rate_per_h(self, /) -> float:
        """
        share of its oil that a joint loses in a running hour
        """
    @property
    def lowest_fill_reached(self, /) -> float:
        """
        lowest fill of the joints that are reached
        """
    @property
    def mean_fill(self, /) -> float:
        """
        mean fill of all joints
        """
    @property
    def mean_fill_reached(self, /) -> float:
        """
        mean fill of the joints that are reached
        """
    @property
    def mean_interval_h(self, /) -> float | None:
        """
        mean running time between two visits of a manual round
        """
    @property
    def never_reached(self, /) -> float:
        """
        share of joints that never get oil
        """
    @property
    def never_reached_if_miscounted(self, /) -> float | None:
        """
        the worst of the same if the number of joints is up to 4 off, where it was computed
        """
    @property
    def pass_chance(self, /) -> float | None:
        """
        chance that a passing joint catches a drop
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> FillState:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def residue_years(self, /) -> float | None:
        """
        time in which residue blocks half the clearance
        """
    @property
    def retained_width_mm(self, /) -> float:
        """
        width of the oil ring that stays in the plate gap on the sharpest turn
        """
    @property
    def share_of_joints(self, /) -> tuple[float, ...] | None:
        """
        share of joints standing in each wait
        """
    @property
    def time_available_s(self, /) -> float:
        """
        time the oil has to enter
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """
    @property
    def viscosity_application_mpa_s(self, /) -> float:
        """
        dynamic viscosity there
        """
    @property
    def viscosity_least_mpa_s(self, /) -> float:
        """
        viscosity below which a joint keeps less than its share between shots
        """
    @property
    def viscosity_most_mpa_s(self, /) -> float:
        """
        viscosity above which oil does not enter in time
        """
    @property
    def visits_per_year(self, /) -> float | None:
        """
        manual rounds in a year
        """
    @property
    def wait_circuits(self, /) -> tuple[int, ...] | None:
        """
        the same in circuits
        """
    @property
    def wait_h(self, /) -> tuple[float, ...] | None:
        """
        the same in running hours, for manual rounds
        """
    @property
    def wait_s(self, /) -> tuple[float, ...]:
        """
        waits between shots at one joint, in running time
        """
    @property
    def wait_weight(self, /) -> tuple[float, ...]:
        """
        share of time spent in each of these waits
        """
    @property
    def worst_wait_h(self, /) -> float:
        """
        longest wait, in running time; for manual rounds that of 95 in 100
        """

@final
class Friction:
    """
    Friction of each pair; `joint` and `bush_roller` are computed from the joint model where they are not given.
    """
    def __copy__(self, /) -> Friction: ...
    def __deepcopy__(self, /, _memo: Any) -> Friction: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, joint: Scalar | None = None, bush_roller: Scalar | None = None, plate_track: Scalar | None = None, plate_track_oiled: Scalar | None = None, track_oiled: bool | None = None, rolling_arm_mm: Scalar | None = None, track_factor: Scalar | None = None, trolley_coefficient: Scalar | None = None, idler_coefficient: Scalar | None = None, turn_roller_coefficient: Scalar | None = None, load_bed: Scalar | None = None, wheel_bearing: Scalar | None = None, breakaway_factor: Scalar | None = None) -> Friction: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def breakaway_factor(self, /) -> float:
        """
        friction at breakaway over running friction
        """
    @property
    def bush_roller(self, /) -> float | None:
        """
        friction coefficient of bush in roller; not given: computed
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> Friction:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> Friction:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> Friction:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def idler_coefficient(self, /) -> float:
        """
        resistance of idlers over their load
        """
    @property
    def joint(self, /) -> float | None:
        """
        friction coefficient of pin in bush; not given: computed
        """
    @property
    def load_bed(self, /) -> float:
        """
        friction coefficient of the load on its bed, or of the chain under a standing load
        """
    @property
    def plate_track(self, /) -> float:
        """
        friction coefficient of side plates on their track
        """
    @property
    def plate_track_oiled(self, /) -> float:
        """
        the same where oil reaches the track
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> Friction:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def rolling_arm_mm(self, /) -> float:
        """
        lever arm of rolling friction of a roller on its track
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """
    @property
    def track_factor(self, /) -> float:
        """
        factor for flange rub, dirt and rail joints
        """
    @property
    def track_oiled(self, /) -> bool:
        """
        whether oil from the joints also reaches the track
        """
    @property
    def trolley_coefficient(self, /) -> float:
        """
        resistance of trolleys over their load
        """
    @property
    def turn_roller_coefficient(self, /) -> float:
        """
        resistance of a roller turn over its load
        """
    @property
    def wheel_bearing(self, /) -> float:
        """
        friction coefficient of the wheels' bearings at the shaft radius
        """

@final
class Joint:
    """
    How oil wets the gap of a joint.
    """
    def __copy__(self, /) -> Joint: ...
    def __deepcopy__(self, /, _memo: Any) -> Joint: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, contact_angle_deg: Scalar | None = None, eccentricity_ratio: Scalar | None = None) -> Joint: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def contact_angle_deg(self, /) -> float:
        """
        angle at which the oil meets the steel
        """
    @property
    def eccentricity_ratio(self, /) -> float:
        """
        eccentricity of the resting pin over the clearance
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> Joint:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> Joint:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> Joint:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> Joint:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """

@final
class JointState:
    """
    What the joints go through, event by event, and the friction that comes of it.
    """
    def __copy__(self, /) -> JointState: ...
    def __deepcopy__(self, /, _memo: Any) -> JointState: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, events: Sequence[Event] | None, mu_joint: Sequence[Sequence[Scalar]] | None, mu_joint_drive: Scalar | None, roller: Sequence[RollerContact] | None, plate_track: Scalar | None, rounds: int | None) -> JointState: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def events(self, /) -> tuple[Event, ...]:
        """
        articulations of one joint in one circuit
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> JointState:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> JointState:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> JointState:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def mu_joint(self, /) -> tuple[tuple[int, float], ...]:
        """
        friction coefficient of pin in bush by section
        """
    @property
    def mu_joint_drive(self, /) -> float:
        """
        friction coefficient of pin in bush at the drive
        """
    @property
    def plate_track(self, /) -> float:
        """
        friction coefficient of side plates on their track
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> JointState:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def roller(self, /) -> tuple[RollerContact, ...]:
        """
        rollers of each straight that runs on them
        """
    @property
    def rounds(self, /) -> int:
        """
        rounds of friction and pull until they agreed
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """

@final
class Kinematics:
    """
    Lengths, times and temperatures round the loop.
    """
    def __copy__(self, /) -> Kinematics: ...
    def __deepcopy__(self, /, _memo: Any) -> Kinematics: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, joints: int | None, joints_counted: bool | None, survey_length_m: Scalar | None, length_m: Scalar | None, circuit_time_s: Scalar | None, joint_time_s: Scalar | None, speed_ripple: Scalar | None, running_h_per_year: Scalar | None, section_c: Sequence[Sequence[Scalar]] | None, mean_c: Scalar | None) -> Kinematics: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def circuit_time_s(self, /) -> float:
        """
        time of one revolution of the chain
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> Kinematics:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> Kinematics:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> Kinematics:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def joint_time_s(self, /) -> float:
        """
        time between two joints passing one place
        """
    @property
    def joints(self, /) -> int:
        """
        joints of one strand
        """
    @property
    def joints_counted(self, /) -> bool:
        """
        whether the joints were counted, not computed
        """
    @property
    def length_m(self, /) -> float:
        """
        length of one strand
        """
    @property
    def mean_c(self, /) -> float:
        """
        time mean of the chain temperature
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> Kinematics:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def running_h_per_year(self, /) -> float:
        """
        running hours in a year
        """
    @property
    def section_c(self, /) -> tuple[tuple[float, float, float], ...]:
        """
        chain temperature of each section: entry, exit, mean
        """
    @property
    def speed_ripple(self, /) -> float:
        """
        greatest less least over mean chain speed at the drive
        """
    @property
    def survey_length_m(self, /) -> float:
        """
        sum of the section lengths along the chain
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """

@final
class Line:
    """
    One conveyor line as it was surveyed: the input of `evaluate`.
    """
    def __copy__(self, /) -> Line: ...
    def __deepcopy__(self, /, _memo: Any) -> Line: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, name: str | None, chain: Chain | None, circuit: Circuit | None, duty: Duty | None, oil: Oil | None, lubrication: Manual | Drip | Spray | Synchronised | None, drive: Drive | None, costs: Costs | None, supply: Supply | None = None, friction: Friction | None, surface: Surface | None, joint: Joint | None, fill: Fill | None, wear: Wear | None) -> Line: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def chain(self, /) -> Chain:
        """
        the chain
        """
    @property
    def circuit(self, /) -> Circuit:
        """
        the loop
        """
    @property
    def costs(self, /) -> Costs:
        """
        prices and yearly work
        """
    @property
    def drive(self, /) -> Drive:
        """
        motor and gear
        """
    @property
    def duty(self, /) -> Duty:
        """
        what it does all year
        """
    @property
    def fill(self, /) -> Fill:
        """
        what oil does in a joint
        """
    @property
    def friction(self, /) -> Friction:
        """
        friction of each pair
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> Line:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> Line:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> Line:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def joint(self, /) -> Joint:
        """
        wetting of the joints
        """
    @property
    def lubrication(self, /) -> Manual | Drip | Spray | Synchronised:
        """
        how joints get their oil
        """
    @property
    def name(self, /) -> str:
        """
        name of the line
        """
    @property
    def oil(self, /) -> Oil:
        """
        the oil
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> Line:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def supply(self, /) -> Supply | None:
        """
        reservoir, pump, line, cable
        """
    @property
    def surface(self, /) -> Surface:
        """
        surfaces of the joints
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """
    @property
    def wear(self, /) -> Wear:
        """
        wear coefficients
        """

@final
class LossParts:
    """
    What a joint loses, by cause, per running hour.
    """
    def __copy__(self, /) -> LossParts: ...
    def __deepcopy__(self, /, _memo: Any) -> LossParts: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, evaporation: Scalar | None, oxidation: Scalar | None, articulation: Scalar | None, wash: Scalar | None, dust: Scalar | None, standing: Scalar | None) -> LossParts: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def articulation(self, /) -> float:
        """
        pumping by articulation
        """
    @property
    def dust(self, /) -> float:
        """
        uptake by dust
        """
    @property
    def evaporation(self, /) -> float:
        """
        evaporation
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> LossParts:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> LossParts:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> LossParts:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def oxidation(self, /) -> float:
        """
        oxidation
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> LossParts:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def standing(self, /) -> float:
        """
        evaporation and oxidation while standing
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """
    @property
    def wash(self, /) -> float:
        """
        washing
        """

@final
class Manual:
    """
    A person with a brush or can.
    """
    def __copy__(self, /) -> Manual: ...
    def __deepcopy__(self, /, _memo: Any) -> Manual: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, interval_h: Scalar | None, dose_ul: Scalar | None, interval_cv: Scalar | None = None, miss_share: Scalar | None = None, unreached_share: Scalar | None = None, capture: Scalar | None = None, points: int | None = None, application_section: int | None = None, application_position: Scalar | None = None, application_side: str | None = None, time_available_s: Scalar | None = None) -> Manual: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def application_position(self, /) -> float:
        """
        place in that section, as a share of its length
        """
    @property
    def application_section(self, /) -> int | None:
        """
        number of the section where oil is applied, from 0; not given: the best point
        """
    @property
    def application_side(self, /) -> str:
        """
        side from which oil is applied: top, side or bottom
        """
    @property
    def capture(self, /) -> float:
        """
        share of the oil that lands in the gaps
        """
    @property
    def dose_ul(self, /) -> float:
        """
        oil given to one joint in a round
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> Manual:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> Manual:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> Manual:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def interval_cv(self, /) -> float:
        """
        scatter of the interval: standard deviation over mean
        """
    @property
    def interval_h(self, /) -> float:
        """
        calendar time between rounds
        """
    @property
    def miss_share(self, /) -> float:
        """
        share of joints that a round misses by chance
        """
    @property
    def points(self, /) -> int:
        """
        gaps of one joint served, per strand: 1 or 2
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> Manual:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def time_available_s(self, /) -> float | None:
        """
        time the oil has to enter; not given: from the circuit
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """
    @property
    def unreached_share(self, /) -> float:
        """
        share of joints that no round reaches: guards, tunnels
        """

@final
class Oil:
    """
    An oil: its viscosity by grade and index or by two measurements, and what heat, water and time do to it.
    """
    def __copy__(self, /) -> Oil: ...
    def __deepcopy__(self, /, _memo: Any) -> Oil: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, name: str | None = None, iso_vg: int | None = None, viscosity_index: Scalar | None = None, t1_c: Scalar | None = None, v1_mm2_s: Scalar | None = None, t2_c: Scalar | None = None, v2_mm2_s: Scalar | None = None, density_15_kg_per_m3: Scalar | None = None, pressure_viscosity_factor: Scalar | None = None, surface_tension_mn_per_m: Scalar | None = None, noack_pct: Scalar | None = None, vaporisation_kj_per_mol: Scalar | None = None, oxidation_half_life_h: Scalar | None = None, oxidation_reference_c: Scalar | None = None, boundary_friction: Scalar | None = None, limiting_friction: Scalar | None = None, boundary_transition_c: Scalar | None = None, residue_evaporation_share: Scalar | None = None, residue_oxidation_share: Scalar | None = None, flash_point_c: Scalar | None = None, pour_point_c: Scalar | None = None, food_grade: bool | None = None, price_per_l: Scalar | None) -> Oil: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def boundary_friction(self, /) -> float:
        """
        friction coefficient of oiled steel in boundary lubrication
        """
    @property
    def boundary_transition_c(self, /) -> float:
        """
        temperature above which the boundary layer fails
        """
    @property
    def density_15_kg_per_m3(self, /) -> float:
        """
        density at 15 °C
        """
    @property
    def flash_point_c(self, /) -> float | None:
        """
        flash point
        """
    @property
    def food_grade(self, /) -> bool:
        """
        whether the oil may touch food by accident
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> Oil:
        """
        From a dictionary as `to_dict` gives it.
        """
    @staticmethod
    def from_grade(iso_vg: int, viscosity_index: Scalar | None = None, /, **given: "object") -> Oil:
        """
        An oil by its ISO viscosity grade and viscosity index; everything else by name.

        Examples
        --------
        >>> import pinfilm
        >>> pinfilm.Oil.from_grade(220, 95, price_per_l=9.0).iso_vg
        220
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> Oil:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> Oil:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def iso_vg(self, /) -> int | None:
        """
        viscosity grade of ISO 3448
        """
    @property
    def limiting_friction(self, /) -> float:
        """
        greatest friction coefficient of a sheared oil film
        """
    @property
    def name(self, /) -> str | None:
        """
        what the plant calls it
        """
    @property
    def noack_pct(self, /) -> float:
        """
        share lost in the one-hour evaporation test at 250 °C
        """
    @property
    def oxidation_half_life_h(self, /) -> float:
        """
        time in which half of the oil is oxidised at the reference temperature
        """
    @property
    def oxidation_reference_c(self, /) -> float:
        """
        temperature of that half life
        """
    @property
    def pour_point_c(self, /) -> float | None:
        """
        pour point
        """
    @property
    def pressure_viscosity_factor(self, /) -> float:
        """
        factor on the pressure-viscosity coefficient
        """
    @property
    def price_per_l(self, /) -> float:
        """
        price of the oil
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> Oil:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def residue_evaporation_share(self, /) -> float:
        """
        share of the evaporated oil that stays as residue
        """
    @property
    def residue_oxidation_share(self, /) -> float:
        """
        share of the oxidised oil that stays as residue
        """
    @property
    def surface_tension_mn_per_m(self, /) -> float:
        """
        surface tension
        """
    @property
    def t1_c(self, /) -> float:
        """
        temperature of the first measured viscosity
        """
    @property
    def t2_c(self, /) -> float:
        """
        temperature of the second measured viscosity
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """
    @property
    def v1_mm2_s(self, /) -> float | None:
        """
        first measured kinematic viscosity
        """
    @property
    def v2_mm2_s(self, /) -> float | None:
        """
        second measured kinematic viscosity
        """
    @property
    def vaporisation_kj_per_mol(self, /) -> float:
        """
        heat of vaporisation
        """
    @property
    def viscosity_index(self, /) -> float:
        """
        viscosity index
        """

@final
class RollerContact:
    """
    The rollers of one straight on their bushes.
    """
    def __copy__(self, /) -> RollerContact: ...
    def __deepcopy__(self, /, _memo: Any) -> RollerContact: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, section: int | None, load_n: Scalar | None, contact_pressure_mpa: Scalar | None, lambda_ratio: Scalar | None, friction_reached: Scalar | None, friction: Scalar | None) -> RollerContact: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def contact_pressure_mpa(self, /) -> float:
        """
        mean pressure in the strip that carries the load
        """
    @property
    def friction(self, /) -> float:
        """
        friction coefficient, mean over all rollers
        """
    @property
    def friction_reached(self, /) -> float:
        """
        friction coefficient of a roller that gets oil
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> RollerContact:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> RollerContact:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> RollerContact:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def lambda_ratio(self, /) -> float:
        """
        film over roughness
        """
    @property
    def load_n(self, /) -> float:
        """
        load on one roller
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> RollerContact:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def section(self, /) -> int:
        """
        section of the survey, from 0
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """

@final
class Savings:
    """
    Saving of a year, item by item; negative where the proposal costs more.
    """
    def __copy__(self, /) -> Savings: ...
    def __deepcopy__(self, /, _memo: Any) -> Savings: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, oil: Scalar | None, application_labour: Scalar | None, energy: Scalar | None, cleaning: Scalar | None, downtime: Scalar | None, chain: Scalar | None, sprockets: Scalar | None, waste: Scalar | None, upkeep: Scalar | None) -> Savings: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def application_labour(self, /) -> float:
        """
        work of oiling, refills and checks
        """
    @property
    def chain(self, /) -> float:
        """
        new chain
        """
    @property
    def cleaning(self, /) -> float:
        """
        cleaning
        """
    @property
    def downtime(self, /) -> float:
        """
        standstill
        """
    @property
    def energy(self, /) -> float:
        """
        electrical energy
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> Savings:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> Savings:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> Savings:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def oil(self, /) -> float:
        """
        oil
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> Savings:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def sprockets(self, /) -> float:
        """
        new sprockets
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """
    @property
    def upkeep(self, /) -> float:
        """
        upkeep of the oiling equipment
        """
    @property
    def waste(self, /) -> float:
        """
        disposal of oil
        """

@final
class Spray:
    """
    A nozzle that sprays all joints that pass while a timer runs.
    """
    def __copy__(self, /) -> Spray: ...
    def __deepcopy__(self, /, _memo: Any) -> Spray: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, flow_ml_per_min: Scalar | None, timer: Timer | None, zone_length_mm: Scalar | None = None, speed_tolerance_pct: Scalar | None = None, capture: Scalar | None = None, points: int | None = None, application_section: int | None = None, application_position: Scalar | None = None, application_side: str | None = None, time_available_s: Scalar | None = None) -> Spray: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def application_position(self, /) -> float:
        """
        place in that section, as a share of its length
        """
    @property
    def application_section(self, /) -> int | None:
        """
        number of the section where oil is applied, from 0; not given: the best point
        """
    @property
    def application_side(self, /) -> str:
        """
        side from which oil is applied: top, side or bottom
        """
    @property
    def capture(self, /) -> float:
        """
        share of the oil that lands in the gaps
        """
    @property
    def flow_ml_per_min(self, /) -> float:
        """
        flow at each point while it sprays
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> Spray:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> Spray:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> Spray:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def points(self, /) -> int:
        """
        gaps of one joint served, per strand: 1 or 2
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> Spray:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def speed_tolerance_pct(self, /) -> float:
        """
        how far circuit time and timer may drift apart
        """
    @property
    def time_available_s(self, /) -> float | None:
        """
        time the oil has to enter; not given: from the circuit
        """
    @property
    def timer(self, /) -> Timer:
        """
        run and dwell of the spray
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """
    @property
    def zone_length_mm(self, /) -> float:
        """
        length of chain that the spray covers
        """

@final
class Straight:
    """
    A straight piece of the circuit.
    """
    def __copy__(self, /) -> Straight: ...
    def __deepcopy__(self, /, _memo: Any) -> Straight: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, length_m: Scalar | None, rise_m: Scalar | None = None, load_kg_per_m: Scalar | None = None, support: str | None, load_on: str | None = None, loads: bool | None = None, feed_speed_m_per_min: Scalar | None = None, idler_spacing_m: Scalar | None = None, extra_pull_n: Scalar | None = None, temperature_c: Scalar | None = None, heat_transfer_w_per_m2_k: Scalar | None = None, wash: bool | None = None, access: str | None = None, reachable_sides: Sequence[str] | None = None, gap_open_share: Scalar | None = None, above_product: bool | None = None, ignition_source: bool | None = None) -> Straight: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def above_product(self, /) -> bool:
        """
        whether open product passes below
        """
    @property
    def access(self, /) -> str:
        """
        how a person gets at it: open, guarded or climb
        """
    @property
    def extra_pull_n(self, /) -> float:
        """
        pull of brushes, scrapers and seals
        """
    @property
    def feed_speed_m_per_min(self, /) -> float:
        """
        speed of the product along the line as it is placed
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> Straight:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> Straight:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> Straight:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def gap_open_share(self, /) -> float:
        """
        share of the plate gap that an applicator sees
        """
    @property
    def heat_transfer_w_per_m2_k(self, /) -> float:
        """
        heat transfer between chain and air
        """
    @property
    def idler_spacing_m(self, /) -> float | None:
        """
        distance between idlers, or free span
        """
    @property
    def ignition_source(self, /) -> bool:
        """
        whether flames, glowing or very hot surfaces are near
        """
    @property
    def length_m(self, /) -> float:
        """
        length along the chain
        """
    @property
    def load_kg_per_m(self, /) -> float:
        """
        all that rides with the chain, all strands together: slats, hangers, product
        """
    @property
    def load_on(self, /) -> str:
        """
        what carries the load: chain, bed or accumulating
        """
    @property
    def loads(self, /) -> bool:
        """
        whether product is placed at the start of this section
        """
    @property
    def reachable_sides(self, /) -> tuple[str, ...]:
        """
        sides from which an applicator can reach the chain
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> Straight:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def rise_m(self, /) -> float:
        """
        rise in travel direction; negative downwards
        """
    @property
    def support(self, /) -> str:
        """
        what carries the chain: rollers, slide, trolleys, idlers or free
        """
    @property
    def temperature_c(self, /) -> float | None:
        """
        temperature around the chain; not given: ambient
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """
    @property
    def wash(self, /) -> bool:
        """
        whether this section is washed
        """

@final
class Supply:
    """
    Reservoir, pump, line and 24 V cable. What is not given is not computed.
    """
    def __copy__(self, /) -> Supply: ...
    def __deepcopy__(self, /, _memo: Any) -> Supply: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, line_length_m: Scalar | None = None, line_bore_mm: Scalar | None = None, delivery_s: Scalar | None = None, coldest_c: Scalar | None = None, pump_ratio: Scalar | None = None, air_pressure_kpa: Scalar | None = None, pump_efficiency: Scalar | None = None, opening_pressure_kpa: Scalar | None = None, reset_pressure_kpa: Scalar | None = None, bulk_modulus_gpa: Scalar | None = None, hose_compliance_per_gpa: Scalar | None = None, reservoir_l: Scalar | None = None, refill_share: Scalar | None = None, cable_length_m: Scalar | None = None, cable_mm2: Scalar | None = None, conductor_class: int | None = None, cable_temperature_c: Scalar | None = None, device_power_w: Scalar | None = None, inrush_factor: Scalar | None = None, inrush: str | None = None, supply_voltage_v: Scalar | None = None, least_voltage_v: Scalar | None = None) -> Supply: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def air_pressure_kpa(self, /) -> float | None:
        """
        air pressure at the pump
        """
    @property
    def bulk_modulus_gpa(self, /) -> float:
        """
        bulk modulus of the oil
        """
    @property
    def cable_length_m(self, /) -> float | None:
        """
        length of the 24 V cable, one way
        """
    @property
    def cable_mm2(self, /) -> float | None:
        """
        cross-section of one conductor
        """
    @property
    def cable_temperature_c(self, /) -> float:
        """
        temperature of the cable
        """
    @property
    def coldest_c(self, /) -> float | None:
        """
        lowest temperature of the line
        """
    @property
    def conductor_class(self, /) -> int:
        """
        conductor class: 1 or 2 solid and stranded, 5 or 6 flexible
        """
    @property
    def delivery_s(self, /) -> float | None:
        """
        time in which a shot is delivered
        """
    @property
    def device_power_w(self, /) -> float | None:
        """
        power of the 24 V device while it runs
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> Supply:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> Supply:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> Supply:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def hose_compliance_per_gpa(self, /) -> float:
        """
        relative swelling of the line
        """
    @property
    def inrush(self, /) -> str:
        """
        what it looks like while it switches on: resistive or constant_power
        """
    @property
    def inrush_factor(self, /) -> float:
        """
        power while it switches on over running power
        """
    @property
    def least_voltage_v(self, /) -> float:
        """
        least voltage at the device
        """
    @property
    def line_bore_mm(self, /) -> float | None:
        """
        bore of the oil line
        """
    @property
    def line_length_m(self, /) -> float | None:
        """
        length of the oil line
        """
    @property
    def opening_pressure_kpa(self, /) -> float:
        """
        pressure that opens the injector or nozzle
        """
    @property
    def pump_efficiency(self, /) -> float:
        """
        share of the ratio that the pump reaches
        """
    @property
    def pump_ratio(self, /) -> float | None:
        """
        oil pressure over air pressure of the pump
        """
    @property
    def refill_share(self, /) -> float:
        """
        share of the volume at which it is refilled
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> Supply:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def reservoir_l(self, /) -> float | None:
        """
        volume of the reservoir
        """
    @property
    def reset_pressure_kpa(self, /) -> float | None:
        """
        pressure to which the line must fall before the next shot
        """
    @property
    def supply_voltage_v(self, /) -> float:
        """
        voltage at the feeding end
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """

@final
class SupplyState:
    """
    Oil used, and whether line, pump, reservoir and cable carry it.
    """
    def __copy__(self, /) -> SupplyState: ...
    def __deepcopy__(self, /, _memo: Any) -> SupplyState: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, applied_l_per_year: Scalar | None, in_joints_l_per_year: Scalar | None, dripped_share: Scalar | None, reservoir_days: Scalar | None, line_drop_kpa: Scalar | None, reynolds: Scalar | None, outlet_use: Scalar | None, vent_s: Scalar | None, injector_s: Scalar | None, time_between_shots_s: Scalar | None, cable_v: Scalar | None, cable_inrush_v: Scalar | None) -> SupplyState: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def applied_l_per_year(self, /) -> float:
        """
        oil that leaves the applicator
        """
    @property
    def cable_inrush_v(self, /) -> float | None:
        """
        voltage at the device while it switches on
        """
    @property
    def cable_v(self, /) -> float | None:
        """
        voltage at the device while it runs
        """
    @property
    def dripped_share(self, /) -> float:
        """
        share of the applied oil that drips
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> SupplyState:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> SupplyState:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> SupplyState:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def in_joints_l_per_year(self, /) -> float:
        """
        oil that the joints take up and lose
        """
    @property
    def injector_s(self, /) -> float | None:
        """
        time that an injector needs for one shot
        """
    @property
    def line_drop_kpa(self, /) -> float | None:
        """
        pressure drop of the line while oil flows, at its coldest
        """
    @property
    def outlet_use(self, /) -> float | None:
        """
        pressure needed over pump outlet pressure
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> SupplyState:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def reservoir_days(self, /) -> float | None:
        """
        days until the reservoir wants oil
        """
    @property
    def reynolds(self, /) -> float | None:
        """
        Reynolds number in the line
        """
    @property
    def time_between_shots_s(self, /) -> float | None:
        """
        time from one shot to the next
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """
    @property
    def vent_s(self, /) -> float | None:
        """
        time for the line to relax after a shot
        """

@final
class Surface:
    """
    The surfaces of pin, bush and roller: roughness, dry friction and the closures of mixed friction.
    """
    def __copy__(self, /) -> Surface: ...
    def __deepcopy__(self, /, _memo: Any) -> Surface: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, roughness_um: Scalar | None = None, dry_friction: Scalar | None = None, boundary_fill: Scalar | None = None, starvation_exponent: Scalar | None = None, conformity: Scalar | None = None, roller_edge_share: Scalar | None = None, asperity_stiffness_mpa: Scalar | None = None, film_factor: Scalar | None = None, modulus_gpa: Scalar | None = None, poisson_ratio: Scalar | None = None) -> Surface: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def asperity_stiffness_mpa(self, /) -> float:
        """
        stiffness of the asperities
        """
    @property
    def boundary_fill(self, /) -> float:
        """
        fill at which most of the boundary layer has formed
        """
    @property
    def conformity(self, /) -> float:
        """
        clearance over the local clearance of the run-in bush
        """
    @property
    def dry_friction(self, /) -> float:
        """
        friction coefficient of the dry pair
        """
    @property
    def film_factor(self, /) -> float:
        """
        factor on the film thickness: carries the error of all film models
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> Surface:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> Surface:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> Surface:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def modulus_gpa(self, /) -> float:
        """
        modulus of elasticity of pin and bush
        """
    @property
    def poisson_ratio(self, /) -> float:
        """
        Poisson's ratio of pin and bush
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> Surface:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def roller_edge_share(self, /) -> float:
        """
        share of a roller's load on its edges and faces
        """
    @property
    def roughness_um(self, /) -> float:
        """
        combined root-mean-square roughness of both surfaces
        """
    @property
    def starvation_exponent(self, /) -> float:
        """
        exponent with which the film thins as fill falls
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """

@final
class Synchronised:
    """
    An applicator driven by the chain: each shot lands in the plate gap of a joint.
    """
    def __copy__(self, /) -> Synchronised: ...
    def __deepcopy__(self, /, _memo: Any) -> Synchronised: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, shot_ul: Scalar | None, every_nth: int | None = None, timer: Timer | None = None, speed_tolerance_pct: Scalar | None = None, capture: Scalar | None = None, points: int | None = None, application_section: int | None = None, application_position: Scalar | None = None, application_side: str | None = None, time_available_s: Scalar | None = None) -> Synchronised: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def application_position(self, /) -> float:
        """
        place in that section, as a share of its length
        """
    @property
    def application_section(self, /) -> int | None:
        """
        number of the section where oil is applied, from 0; not given: the best point
        """
    @property
    def application_side(self, /) -> str:
        """
        side from which oil is applied: top, side or bottom
        """
    @property
    def capture(self, /) -> float:
        """
        share of the oil that lands in the gaps
        """
    @property
    def every_nth(self, /) -> int:
        """
        one joint in how many gets the shot while the timer runs
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> Synchronised:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> Synchronised:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> Synchronised:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def points(self, /) -> int:
        """
        gaps of one joint served, per strand: 1 or 2
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> Synchronised:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def shot_ul(self, /) -> float:
        """
        oil of one shot at one point
        """
    @property
    def speed_tolerance_pct(self, /) -> float:
        """
        how far circuit time and timer may drift apart
        """
    @property
    def time_available_s(self, /) -> float | None:
        """
        time the oil has to enter; not given: from the circuit
        """
    @property
    def timer(self, /) -> Timer | None:
        """
        run and dwell of the applicator; not given: it never pauses
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """

@final
class Tension:
    """
    Pull and tension of all strands together.
    """
    def __copy__(self, /) -> Tension: ...
    def __deepcopy__(self, /, _memo: Any) -> Tension: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, pull_n: Scalar | None, tight_n: Scalar | None, slack_n: Scalar | None, least_n: Scalar | None, required_take_up_n: Scalar | None, take_up_sensitivity: Scalar | None, heaviest_strand_n: Scalar | None, breakaway_pull_n: Scalar | None, shares: Mapping[str, float] | None, profile_n: Sequence[Sequence[Scalar]] | None) -> Tension: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def breakaway_pull_n(self, /) -> float:
        """
        pull when the line starts after a stop
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> Tension:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> Tension:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> Tension:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def heaviest_strand_n(self, /) -> float:
        """
        greatest tension in one strand, with its centrifugal part
        """
    @property
    def least_n(self, /) -> float:
        """
        least effective tension anywhere
        """
    @property
    def profile_n(self, /) -> tuple[tuple[float, float], ...]:
        """
        effective tension at the ends of each section
        """
    @property
    def pull_n(self, /) -> float:
        """
        effective pull at the drive
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> Tension:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def required_take_up_n(self, /) -> float:
        """
        slack-side tension at which no section hangs loose
        """
    @property
    def shares(self, /) -> dict[str, float]:
        """
        share of the pull by cause
        """
    @property
    def slack_n(self, /) -> float:
        """
        effective tension on the slack side of the drive
        """
    @property
    def take_up_sensitivity(self, /) -> float:
        """
        pull gained by one newton more of take-up
        """
    @property
    def tight_n(self, /) -> float:
        """
        effective tension on the tight side of the drive
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """

@final
class Timer:
    """
    A timer: run, dwell, run, dwell.
    """
    def __copy__(self, /) -> Timer: ...
    def __deepcopy__(self, /, _memo: Any) -> Timer: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, run_min: Scalar | None, dwell_min: Scalar | None = None, clock: str | None = None, interlocked: bool | None = None) -> Timer: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def clock(self, /) -> str:
        """
        clock of the timer: wall or machine
        """
    @property
    def dwell_min(self, /) -> float:
        """
        pause until the next run
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> Timer:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> Timer:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> Timer:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def interlocked(self, /) -> bool:
        """
        whether oil stops while the line stands
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> Timer:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def run_min(self, /) -> float:
        """
        time for which oil is given
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """

@final
class Turn:
    """
    A turn: a wheel, a roller turn, a curve or a corner.
    """
    def __copy__(self, /) -> Turn: ...
    def __deepcopy__(self, /, _memo: Any) -> Turn: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, kind: str | None, teeth: int | None = None, radius_mm: Scalar | None = None, wrap_deg: Scalar | None, rise_m: Scalar | None = None, load_kg_per_m: Scalar | None = None, contact: str | None = None, support: str | None = None, side: int | None = None, plane: str | None = None, shaft_diameter_mm: Scalar | None = None, extra_pull_n: Scalar | None = None, temperature_c: Scalar | None = None, heat_transfer_w_per_m2_k: Scalar | None = None, drive: bool | None = None) -> Turn: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def contact(self, /) -> str:
        """
        what touches the wall of a curve or corner: slide, rollers or trolleys
        """
    @property
    def drive(self, /) -> bool:
        """
        whether this is the drive sprocket
        """
    @property
    def extra_pull_n(self, /) -> float:
        """
        pull of brushes, scrapers and seals
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> Turn:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> Turn:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> Turn:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def heat_transfer_w_per_m2_k(self, /) -> float:
        """
        heat transfer between chain and air
        """
    @property
    def kind(self, /) -> str:
        """
        what turns the chain: wheel, roller_turn, curve or corner
        """
    @property
    def load_kg_per_m(self, /) -> float:
        """
        all that rides with the chain, all strands together
        """
    @property
    def plane(self, /) -> str:
        """
        plane of the turn: main (about the pins) or cross
        """
    @property
    def radius_mm(self, /) -> float | None:
        """
        radius of the joints' path on a smooth turn
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> Turn:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def rise_m(self, /) -> float:
        """
        rise in travel direction; negative downwards
        """
    @property
    def shaft_diameter_mm(self, /) -> float | None:
        """
        diameter of the wheel's shaft; not given: 0.15 of the wheel
        """
    @property
    def side(self, /) -> int:
        """
        1 where the inside of the loop bends inwards, -1 for a reverse bend
        """
    @property
    def support(self, /) -> str:
        """
        what carries the weight on the floor of a corner
        """
    @property
    def teeth(self, /) -> int | None:
        """
        teeth of the sprocket
        """
    @property
    def temperature_c(self, /) -> float | None:
        """
        temperature around the chain; not given: ambient
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """
    @property
    def wrap_deg(self, /) -> float:
        """
        angle of wrap
        """

@final
class TwoSprocket:
    """
    The everyday loop by a few numbers: it fits one row of a table.
    """
    def __copy__(self, /) -> TwoSprocket: ...
    def __deepcopy__(self, /, _memo: Any) -> TwoSprocket: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, pitch_mm: Scalar | None, centre_distance_m: Scalar | None, teeth_drive: int | None, teeth_tail: int | None, lift_m: Scalar | None = None, support: str | None = None, return_support: str | None = None, carried_kg_per_m: Scalar | None = None, returning_kg_per_m: Scalar | None = None, loads: bool | None = None, strands: int | None = None, joints: int | None = None, take_up_n: Scalar | None, carry_temperature_c: Scalar | None = None, return_temperature_c: Scalar | None = None, extra_pull_n: Scalar | None = None) -> TwoSprocket: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def carried_kg_per_m(self, /) -> float:
        """
        slats, carriers and product on the carrying strand, all strands together
        """
    @property
    def carry_temperature_c(self, /) -> float | None:
        """
        temperature around the carrying strand; not given: ambient
        """
    @property
    def centre_distance_m(self, /) -> float:
        """
        distance between the shafts
        """
    @property
    def extra_pull_n(self, /) -> float:
        """
        pull of brushes, scrapers and seals on the carrying strand
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> TwoSprocket:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> TwoSprocket:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> TwoSprocket:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def joints(self, /) -> int | None:
        """
        joints of one strand, counted
        """
    @property
    def lift_m(self, /) -> float:
        """
        height of the drive shaft over the tail shaft
        """
    @property
    def loads(self, /) -> bool:
        """
        whether product is placed at the tail
        """
    @property
    def pitch_mm(self, /) -> float:
        """
        pitch of the chain
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> TwoSprocket:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def return_support(self, /) -> str:
        """
        what carries the return strand
        """
    @property
    def return_temperature_c(self, /) -> float | None:
        """
        temperature around the return strand; not given: ambient
        """
    @property
    def returning_kg_per_m(self, /) -> float:
        """
        slats and carriers on the return strand and the wheels, all strands together
        """
    @property
    def strands(self, /) -> int:
        """
        parallel strands of chain
        """
    @property
    def support(self, /) -> str:
        """
        what carries the carrying strand
        """
    @property
    def take_up_n(self, /) -> float:
        """
        running tension of all strands at the drive exit
        """
    @property
    def teeth_drive(self, /) -> int:
        """
        teeth of the drive sprocket
        """
    @property
    def teeth_tail(self, /) -> int:
        """
        teeth of the tail sprocket
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """

@final
class Warning:
    """
    A warning: the number stands, but outside what the model was made for, or it means trouble on the line.
    """
    def __copy__(self, /) -> Warning: ...
    def __deepcopy__(self, /, _memo: Any) -> Warning: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, code: str | None, field: str | None, value: Scalar | None = None, unit: str | None, limit: str | None, message: str | None) -> Warning: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def code(self, /) -> str:
        """
        stable word for programs
        """
    @property
    def field(self, /) -> str:
        """
        path of the quantity it is about
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> Warning:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> Warning:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> Warning:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def limit(self, /) -> str:
        """
        what would have been usual
        """
    @property
    def message(self, /) -> str:
        """
        the whole sentence
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> Warning:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """
    @property
    def unit(self, /) -> str:
        """
        that unit
        """
    @property
    def value(self, /) -> float | None:
        """
        its value, in the unit of its name
        """

@final
class Wear:
    """
    Wear coefficients (volume = K load distance / (3 hardness)) and running-in.
    """
    def __copy__(self, /) -> Wear: ...
    def __deepcopy__(self, /, _memo: Any) -> Wear: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, wear_coefficient_dry: Scalar | None = None, wear_coefficient_boundary: Scalar | None = None, wear_coefficient_mixed: Scalar | None = None, wear_coefficient_full: Scalar | None = None, fill_half: Scalar | None = None, sprocket_hardness_mpa: Scalar | None = None, run_in_factor: Scalar | None = None, run_in_distance_m: Scalar | None = None) -> Wear: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def fill_half(self, /) -> float:
        """
        fill at which oil does half of its work against wear
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> Wear:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> Wear:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> Wear:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> Wear:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def run_in_distance_m(self, /) -> float:
        """
        sliding distance over which joints run in
        """
    @property
    def run_in_factor(self, /) -> float:
        """
        wear of new joints over steady wear
        """
    @property
    def sprocket_hardness_mpa(self, /) -> float:
        """
        hardness of the sprocket's flanks
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """
    @property
    def wear_coefficient_boundary(self, /) -> float:
        """
        wear coefficient in boundary lubrication
        """
    @property
    def wear_coefficient_dry(self, /) -> float:
        """
        wear coefficient of the dry joint
        """
    @property
    def wear_coefficient_full(self, /) -> float:
        """
        wear coefficient under a full film (starts and stops)
        """
    @property
    def wear_coefficient_mixed(self, /) -> float | None:
        """
        wear coefficient in mixed lubrication; not given: a fifth of boundary
        """

@final
class WearState:
    """
    Wear, elongation and life.
    """
    def __copy__(self, /) -> WearState: ...
    def __deepcopy__(self, /, _memo: Any) -> WearState: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, coefficient_reached: Scalar | None, coefficient_never: Scalar | None, temperature_c: Scalar | None, hardness_factor: Scalar | None, limit_pct: Scalar | None, sliding_m_per_h: Scalar | None, elongation_1_year_pct: Scalar | None, life_years: Scalar | None, life_mean_years: Scalar | None, life_local_years: Scalar | None, life_pin_years: Scalar | None, life_bush_years: Scalar | None, case_through_years: Scalar | None, governs: str | None, service_life_years: Scalar | None, sprocket_flank_um_per_year: Scalar | None, roller_bush_um_per_year: Scalar | None) -> WearState: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def case_through_years(self, /) -> float:
        """
        time until the worst pin is worn through its case
        """
    @property
    def coefficient_never(self, /) -> float | None:
        """
        wear coefficient of joints that never get oil
        """
    @property
    def coefficient_reached(self, /) -> float:
        """
        wear coefficient of joints that get oil, mean over events
        """
    @property
    def elongation_1_year_pct(self, /) -> float:
        """
        elongation after one year of this duty
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> WearState:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> WearState:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> WearState:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def governs(self, /) -> str:
        """
        what ends the wear life: mean, local, pin or bush
        """
    @property
    def hardness_factor(self, /) -> float:
        """
        hardness there over that at 20 °C
        """
    @property
    def life_bush_years(self, /) -> float | None:
        """
        time until the worst bush is worn by half its wall
        """
    @property
    def life_local_years(self, /) -> float:
        """
        time until the worst stretch meets that limit
        """
    @property
    def life_mean_years(self, /) -> float:
        """
        time until the mean elongation meets its limit
        """
    @property
    def life_pin_years(self, /) -> float:
        """
        time until the worst pin is worn by its limit
        """
    @property
    def life_years(self, /) -> float:
        """
        wear life: time to the first limit
        """
    @property
    def limit_pct(self, /) -> float:
        """
        elongation at which the chain is replaced
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> WearState:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def roller_bush_um_per_year(self, /) -> float | None:
        """
        wear of the bush under its roller, indicative
        """
    @property
    def service_life_years(self, /) -> float:
        """
        mean life with wear and other causes
        """
    @property
    def sliding_m_per_h(self, /) -> float:
        """
        sliding distance of pin in bush
        """
    @property
    def sprocket_flank_um_per_year(self, /) -> float | None:
        """
        wear of the drive sprocket's flanks, indicative
        """
    @property
    def temperature_c(self, /) -> float:
        """
        mean temperature of the wear
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """

def compare(now: Line, proposed: Line) -> Comparison:
    """
    Compare a line as it is with the same line as proposed: savings item by item, payback, net present value.

    Parameters
    ----------
    now, proposed : Line
        The two surveys. Capital, discount rate, horizon and days of a year are those of the proposed one.

    Returns
    -------
    Comparison
        Savings, payback in days with its status word, discounted payback, NPV and IRR with all roots.

    Raises
    ------
    InputError
        If one of the two cannot be evaluated, or their currencies differ.

    Examples
    --------
    >>> import pinfilm
    >>> change = pinfilm.compare(*pinfilm.examples.pair("oven"))
    >>> change.payback_status
    'pays_back'
    """

def evaluate(line: Line) -> Evaluation:
    """
    Evaluate a line: kinematics, tension, joints, fill, wear, drive, supply and cost of a year.

    Parameters
    ----------
    line : Line
        The survey.

    Returns
    -------
    Evaluation
        Groups of results, with `warnings` and `cautions`.

    Raises
    ------
    InputError
        For a survey that cannot be computed; it names field, value, unit and limit.
    ConvergenceError
        If friction and pull do not settle.

    Warns
    -----
    PinfilmRangeWarning
        For every value outside its usual range; also listed in `warnings`.

    Examples
    --------
    >>> import pinfilm
    >>> result = pinfilm.evaluate(pinfilm.examples.load("oven_now"))
    >>> result.fill.never_reached > 0
    True
    """

def register() -> list[dict[str, str]]:
    """
    Where every public quantity is described: path, symbol, unit, meaning, ranges, default, formula, source, class.
    """

def standards() -> dict[str, list[str]]:
    """
    Standards in the tables, with the designations of each.
    """

def version() -> str:
    """
    The version of the compiled core.
    """
