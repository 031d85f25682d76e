"""
The compiled core of scupper. Import `scupper` instead.
"""
from __future__ import annotations
import collections.abc
import numpy
import numpy.typing
import typing
__all__: list[str] = ['ClosurePlan', 'Derivation', 'ElementJoin', 'ElementRecords', 'Estimate', 'HoseLay', 'Inventory', 'InventoryFile', 'Job', 'LaySolution', 'Plan', 'Programme', 'SavedEstimate', 'Schedule', 'Structure', 'affinity_flow', 'affinity_head', 'affinity_power', 'air_density', 'air_viscosity', 'axle_group_limit', 'balanced_density', 'bar_flow', 'bar_pressure', 'basis_names', 'blocks_shoulder', 'box_volume', 'bridge_formula', 'bucket_reaction', 'buffer_length', 'build_up_depth', 'build_ups', 'changed_figures', 'changed_inputs', 'clear_shoulder', 'closure_plan', 'closure_window', 'coil_critical_reynolds', 'coil_friction_factor', 'coil_loss', 'decanted', 'device_count', 'dirt_densities', 'drain_volume', 'equivalent_bore', 'error_message', 'estimate', 'estimate_all', 'factor_loss', 'fan_width', 'fittings', 'format_quantity', 'friction_factor', 'friction_loss', 'from_si', 'girder_sections', 'greatest_suction_lift', 'hash_text', 'hazen_williams_forms', 'hazen_williams_loss', 'head', 'hose_coefficient_loss', 'hoses', 'hourly_demand', 'hydraulic_power', 'jet_force', 'jet_velocity', 'job_keys', 'job_schema', 'join_elements', 'key_listing', 'kind_by_record', 'known_columns', 'lay_unit', 'legal_gross', 'load_factor', 'loose_volume', 'measured', 'minor_loss', 'nearest_name', 'nozzle_flow', 'nozzle_pressure', 'nozzle_reaction', 'nozzle_wear', 'npsh_available', 'one_lane_capacity', 'one_lane_cycle', 'one_person_reaction', 'parse_as', 'parse_quantity', 'payload', 'pick_up_velocity', 'pipe_velocity', 'published_coefficients', 'published_densities', 'rated_nozzle_flow', 'read_elements', 'read_inventory', 'read_structure_table', 'reynolds', 'round_pit_volume', 'rules', 'saltation_velocity', 'schedule', 'shaft_power', 'shortfalls', 'shown_unit', 'sign_spacing', 'smooth_bore_reaction', 'stagnation_pressure', 'standard_atmosphere', 'static_pressure', 'street_loads', 'strip_mass', 'strip_volume', 'structure_headers', 'structures_form', 'structures_schema', 'swell_voids', 'take_off', 'take_off_columns', 'tangent_device_spacing', 'tank_fill', 'taper_device_spacing', 'taper_length', 'terminal_velocity', 'to_si', 'too_strong', 'transport_velocities', 'trip_time', 'truck_loads', 'unit_table', 'vacuum_air_flow', 'vacuum_pick_up', 'velocity_pressure', 'verdict_names', 'water_by_area', 'water_density', 'water_kinematic_viscosity', 'water_vapour_pressure', 'water_viscosity', 'weight_governs', 'wet_density', 'windrow', 'workbook', 'workbook_figures', 'worn_bore', 'write_estimate', 'write_structures']
class LaySolution:
    """
    Where a lay settles. Segments and nozzles stand in the order of the lay.
    """
    def limits(self, units: str) -> dict[str, typing.Any]:
        """
        One limit of the pump, and how much of it the lay takes.
        """
    def nodes(self) -> dict[str, typing.Any]:
        """
        Every segment's end: its wye or nozzle, in SI units.
        """
    def nozzles(self) -> dict[str, typing.Any]:
        """
        What leaves one nozzle.
        """
    def pump(self) -> dict[str, typing.Any]:
        """
        What the pump does.
        """
    def segments(self) -> dict[str, typing.Any]:
        """
        What runs through one segment.
        """
    def warnings(self, units: str) -> dict[str, typing.Any]:
        """
        One thing to mind.
        """
    @property
    def energy_residual(self) -> float:
        """
        [-] worst imbalance of a nozzle's pressure, over the
        greatest pressure of the lay without flow
        """
    @property
    def iterations(self) -> int:
        """
        [-] Newton steps
        """
    @property
    def mass_residual(self) -> float:
        """
        [-] imbalance of flows over the pump's flow
        """
    @property
    def time_to_empty(self) -> float | None:
        """
        [s] the full tank; none without tank or flow
        """
class HoseLay:
    """
    A tree of hose with its pump, water and nozzles. Values are checked where it is solved.
    """
    @staticmethod
    def read(document: str, name: str) -> HoseLay:
        """
        Reads a hose lay.
        
        Segments start at the pump or where another ends (`from`), nozzles end one (`at`). Friction goes
        by `roughness`, by `c` and `form`, or by `coefficient`: one of them. A nozzle has `bore` and
        `discharge_coefficient` (1 where left out), or `rated_flow` and `rated_pressure`. `wear` is the
        share by which a bore has grown: 0.05 or "5 %". Points of a pump's `curve` are pairs of flow and
        head, a length or a pressure.
        
        Parameters
        ----------
        text : [text]
            a JSON document with the keys of `hose_lay_keys`
        name : [text]
            what to call the document in errors: "lay" gives "lay.segments[2].bore"
        
        Returns
        -------
        [-]
            the lay, checked
        
        Range
        -----
        UTF-8.
        
        Errors
        ------
        FileError `json.text` where it is no JSON; UnknownNameError `json.key`, `json.word`,
        `hydraulics.segment` with the nearest name; InputError `json.type`, `json.missing`,
        `json.one_of`, `hydraulics.pump` for more than one; UnitError of the unit part; those of
        `hydraulics::check_lay`.
        
        Source
        ------
        own convention
        
        Verified by
        -----------
        tests/cpp/json/test_hose_lay.cpp
        """
    def greatest_lift(self, segment: str, nozzle: str, pressure: typing.SupportsFloat | typing.SupportsIndex) -> float:
        """
        How far a segment may rise for a nozzle to keep its pressure.
        
        Parameters
        ----------
        lay : [-]
            the lay
        segment : [-]
            index of a segment between pump and nozzle; its length stays
        nozzle : [-]
            index of the nozzle
        wanted : [Pa]
            gauge, before the tip, > 0
        
        Returns
        -------
        [m]
            greatest rise of the segment; negative where it has to fall
        
        Formula
        -------
        pressure(rise) = wanted, by a bracketed search over solve
        
        Range
        -----
        100 km up or down.
        
        Errors
        ------
        as longest_hose
        
        Source
        ------
        solve
        
        Verified by
        -----------
        tests/cpp/hydraulics/test_lay_inverse.cpp
        """
    def longest_hose(self, segment: str, nozzle: str, pressure: typing.SupportsFloat | typing.SupportsIndex) -> float:
        """
        How long a segment may be for a nozzle to keep its pressure.
        
        Parameters
        ----------
        lay : [-]
            the lay
        segment : [-]
            index of a segment between pump and nozzle; its rise stays
        nozzle : [-]
            index of the nozzle
        wanted : [Pa]
            gauge, before the tip, > 0
        
        Returns
        -------
        [m]
            greatest length
        
        Formula
        -------
        pressure(length) = wanted, by a bracketed search over solve
        
        Range
        -----
        up to 100 km.
        
        Errors
        ------
        those of check_lay; InputError `hydraulics.pressure`, `hydraulics.segment` for one that
        the nozzle's water does not pass; SolveError `hydraulics.no_answer` where no length
        suffices or any does
        
        Source
        ------
        solve
        
        Verified by
        -----------
        tests/cpp/hydraulics/test_lay_inverse.cpp
        """
    def nozzle_bore_for(self, nozzle: str, flow: typing.SupportsFloat | typing.SupportsIndex) -> float:
        """
        Which bore gives a nozzle its flow.
        
        Parameters
        ----------
        lay : [-]
            the lay; the nozzle counts as open and new
        nozzle : [-]
            index of the nozzle
        wanted : [m3/s]
            flow, > 0
        
        Returns
        -------
        [m]
            inside diameter of the tip, at the nozzle's discharge coefficient
        
        Formula
        -------
        flow(bore) = wanted, by a bracketed search over solve
        
        Range
        -----
        up to the bore of the hose that it ends (0.3 m at the pump's outlet).
        
        Errors
        ------
        those of check_lay; InputError `hydraulics.flow` where wanted <= 0; SolveError
        `hydraulics.no_answer` where the open hose gives less
        
        Source
        ------
        solve
        
        Verified by
        -----------
        tests/cpp/hydraulics/test_lay_inverse.cpp
        """
    def nozzle_count(self, nozzle: str, leg: str, pressure: typing.SupportsFloat | typing.SupportsIndex) -> int:
        """
        How many equal nozzles keep their pressure.
        
        Parameters
        ----------
        lay : [-]
            the lay
        nozzle : [-]
            index of the nozzle
        leg : [-]
            index of a segment between pump and nozzle: it is repeated from its start, with
            all that hangs on it; at_pump: the nozzle alone is repeated where it is
        wanted : [Pa]
            gauge, before each tip, > 0
        
        Returns
        -------
        [-]
            how many, counting the one there is
        
        Formula
        -------
        greatest n with pressure(n) >= wanted, by doubling and halving
        
        Range
        -----
        up to 10,000.
        
        Errors
        ------
        as longest_hose; SolveError `hydraulics.no_answer` where one is too many, or 10,000 are
        not
        
        Source
        ------
        solve
        
        Verified by
        -----------
        tests/cpp/hydraulics/test_lay_inverse.cpp
        """
    def pump_pressure_for(self, nozzle: str, pressure: typing.SupportsFloat | typing.SupportsIndex) -> float:
        """
        Which pump pressure gives a nozzle its pressure.
        
        Parameters
        ----------
        lay : [-]
            the lay; its pump counts as one that holds whatever pressure is asked
        nozzle : [-]
            index of the nozzle
        wanted : [Pa]
            gauge, before the tip, > 0
        
        Returns
        -------
        [Pa]
            gauge, at the pump's outlet
        
        Formula
        -------
        pressure(pump pressure) = wanted, by a bracketed search over solve
        
        Range
        -----
        up to 1 GPa; flow limit, power and unloader of the pump are set aside: solve the lay with
        the answer to see whether the pump can.
        
        Errors
        ------
        those of check_lay; InputError `hydraulics.pressure` where wanted <= 0; SolveError
        `hydraulics.no_answer` where the fall of the lay alone gives more
        
        Source
        ------
        solve
        
        Verified by
        -----------
        tests/cpp/hydraulics/test_lay_inverse.cpp
        """
    def smallest_bore(self, segment: str, nozzle: str, pressure: typing.SupportsFloat | typing.SupportsIndex, bores: collections.abc.Sequence[typing.SupportsFloat | typing.SupportsIndex] | None) -> float:
        """
        Which bore a segment needs at least for a nozzle to have its pressure.
        
        Parameters
        ----------
        lay : [-]
            the lay
        segment : [-]
            index of a segment between pump and nozzle; roughness or C and K stay
        nozzle : [-]
            index of the nozzle
        wanted : [Pa]
            gauge, before the tip, > 0
        
        Returns
        -------
        [m]
            smallest inside diameter
        
        Formula
        -------
        pressure(bore) = wanted, by a bracketed search over solve
        
        Range
        -----
        1 mm, or 20 times the roughness, to 1 m.
        
        Errors
        ------
        as longest_hose; InputError `hydraulics.law` for a segment with a hose coefficient, which
        holds for one bore only; SolveError `hydraulics.no_answer` where 1 m is too little
        
        Source
        ------
        solve
        
        Verified by
        -----------
        tests/cpp/hydraulics/test_lay_inverse.cpp
        """
    def solve(self) -> LaySolution:
        """
        Flow, pressure and velocity everywhere in a hose lay.
        
        Parameters
        ----------
        lay : [-]
            pump, segments, nozzles
        
        Returns
        -------
        [-]
            the solution, in SI units
        
        Formula
        -------
        for each segment: pressure at its start = pressure at its end + rho g rise + friction
        + K rho V^2 / 2; at each end: flow in = flows out; nozzle and pump by their formulas
        
        Range
        -----
        any lay that check_lay accepts has one answer, and it is found. Losses and tip pressures
        grow with the flow and the pump's pressure never does, so that the flows are the one
        minimum of a strictly convex function (the sum of their integrals). Newton's direction on
        it goes down, a search along it never passes the minimum by more than it has gained, and
        so the steps converge from anywhere; in a tree each costs time in proportion to the
        segments. Nozzles that would draw in air are shut, like a check valve, and the rest is
        solved again: shutting one only lowers pressures, so that none has to be opened again.
        A flow above the pump's greatest is held there and the pump's pressure follows. Mass
        balances by construction, to rounding; the energy residual is below 1e-10.
        With no nozzle open the shut-off pressure stands everywhere and nothing flows.
        Velocity pressure at the nodes is neglected, as in the tables of hose lays.
        
        Errors
        ------
        those of check_lay; SolveError `hydraulics.not_converged`, which no valid lay gives
        
        Source
        ------
        G. Birkhoff, J. B. Diaz, Q. Appl. Math. 13 (1956) 431 on the variational principle (from
        memory); Newton's method with line search, common practice
        
        Verified by
        -----------
        tests/cpp/hydraulics/test_lay.cpp, tests/python/test_hose_lay_epanet.py
        """
    def solve_many(self, pressures: collections.abc.Sequence[typing.SupportsFloat | typing.SupportsIndex]) -> dict[str, typing.Any]:
        """
        What a lay gives at each of many pump pressures.
        
        Parameters
        ----------
        lay : [-]
            the lay; its pump holds a pressure or has an unloader
        pressures : [Pa, n]
            gauge, each > 0
        
        Returns
        -------
        [-]
            flows and pressures, nozzle by nozzle in each row
        
        Formula
        -------
        as solve
        
        Range
        -----
        as solve.
        
        Errors
        ------
        as solve; InputError `hydraulics.pressure` for a pressure that is not above zero or a
        pump with a curve
        
        Source
        ------
        as solve
        
        Verified by
        -----------
        tests/python/test_hose_lay.py
        """
    def write(self) -> str:
        """
        Writes a hose lay whole, in SI units with all digits, so that reading it back gives the same.
        
        Parameters
        ----------
        lay : [-]
            a lay
        
        Returns
        -------
        [text]
            a JSON document
        
        Range
        -----
        any lay. Rated nozzles are written as the bore they are likened to, fittings as the sum
        of their K.
        
        Errors
        ------
        none.
        
        Source
        ------
        own convention
        
        Verified by
        -----------
        tests/cpp/json/test_hose_lay.cpp
        """
    @property
    def name(self) -> str:
        """
        [text] what people call it
        """
    @property
    def nozzles(self) -> list[str]:
        """
        [text] what people call it; no two alike
        """
    @property
    def segments(self) -> list[str]:
        """
        [text] what people call it; no two alike
        """
class Structure:
    """
    One structure: who it is, what its record says, what somebody measured.
    """
    def __getstate__(self) -> str:
        ...
    def __repr__(self) -> str:
        ...
    def __setstate__(self, arg0: str) -> None:
        ...
    def to_dict(self) -> dict[str, typing.Any]:
        """
        Everything the record says, units in the names; None where it says nothing.
        """
    @property
    def carries(self) -> str:
        """
        item 7, facility carried
        """
    @property
    def crosses(self) -> str:
        """
        item 6A, features intersected
        """
    @property
    def id(self) -> str:
        """
        structure number without padding; unique only within its state
        """
    @property
    def key(self) -> str:
        """
        The stable key of a structure for draws, joins and errors; a number alone is not unique.
        
        Parameters
        ----------
        structure : [-]
            the record
        
        Returns
        -------
        [text]
            "state:id"
        
        Formula
        -------
        state code, colon, structure number
        
        Range
        -----
        any structure.
        
        Errors
        ------
        none.
        
        Source
        ------
        own convention
        
        Verified by
        -----------
        tests/cpp/structure/test_codes.cpp
        """
    @property
    def line(self) -> int:
        """
        [-] line or record of the file it was read from, from 1
        """
    @property
    def location(self) -> str:
        """
        item 9
        """
    @property
    def state(self) -> str:
        """
        two-digit FIPS state code
        """
class Inventory:
    """
    The structures of one or several files. Every row is accounted for:
    rows = structures + rejected + routes_under.
    """
    @staticmethod
    def of(structures: collections.abc.Sequence[Structure]) -> Inventory:
        """
        Structures gathered from anywhere.
        """
    def __len__(self) -> int:
        ...
    def at(self, position: typing.SupportsInt | typing.SupportsIndex) -> Structure:
        """
        The structure at a position from 0.
        """
    def doubts(self) -> dict[str, typing.Any]:
        """
        fields in doubt, in that order
        """
    def find(self, id: str) -> Structure:
        """
        The structure of that number.
        
        Parameters
        ----------
        id : [text]
            structure number, padding ignored; "state:number" where several states
            use the number
        
        Returns
        -------
        [-]
            the structure, or null where there is none
        
        Range
        -----
        any text.
        
        Errors
        ------
        InputError `inventory.ambiguous` naming the candidates where states share the
        number.
        
        Source
        ------
        definition
        
        Verified by
        -----------
        tests/cpp/inventory/test_find.cpp
        """
    def hash(self) -> int:
        """
        A hash of everything that the records say, in their order.
        """
    def near_misses(self, id: str, most: typing.SupportsInt | typing.SupportsIndex) -> list[str]:
        """
        The numbers that were probably meant by one that is not found.
        
        Parameters
        ----------
        id : [text]
            the wrong number
        most : [-]
            how many to give at most
        
        Returns
        -------
        [text, n]
            keys "state:number", the nearest first; empty where none is near
        
        Formula
        -------
        equal without blanks, signs and leading zeros first, then by least edit distance
        
        Range
        -----
        any text.
        
        Errors
        ------
        none.
        
        Source
        ------
        common practice
        
        Verified by
        -----------
        tests/cpp/inventory/test_find.cpp
        """
    def part(self, structures: collections.abc.Sequence[Structure]) -> Inventory:
        """
        Some of its structures, with the doubts about them.
        """
    def recorded(self, names: collections.abc.Set[str] = set()) -> dict[str, typing.Any]:
        """
        Columns of the recorded fields, or of some by name.
        """
    def rejected(self) -> dict[str, typing.Any]:
        """
        records that are no structure, in that order
        """
    @property
    def absent_columns(self) -> list[str]:
        """
        columns the reader knows and the header lacks
        """
    @property
    def files(self) -> list[str]:
        """
        names of the files read
        """
    @property
    def routes_under(self) -> int:
        """
        [-] records of routes under a structure (5A is not 1)
        """
    @property
    def rows(self) -> int:
        """
        [-] records read, header and blank lines apart
        """
class InventoryFile:
    """
    Reads an inventory file in pieces.
    """
    def __init__(self, path: str, most: typing.SupportsInt | typing.SupportsIndex) -> None:
        ...
    def next(self, progress: typing.Any) -> Inventory | None:
        """
        Reads the next piece.
        
        Parameters
        ----------
        progress : [-]
            told how far the reading is; may be empty
        
        Returns
        -------
        [-]
            the next piece; nothing after the last
        
        Range
        -----
        as `read_inventory`; a file without records is one piece without structures.
        
        Errors
        ------
        as `read_inventory`.
        
        Source
        ------
        as `read_inventory`
        
        Verified by
        -----------
        tests/cpp/inventory/test_stream.cpp
        """
class ElementRecords:
    """
    What an element file holds, and what could not be used of it.
    """
    def __len__(self) -> int:
        ...
    def records(self) -> dict[str, typing.Any]:
        """
        One record of an element.
        """
    def rejected(self) -> dict[str, typing.Any]:
        """
        [-, n] records that cannot be read, with line and reason
        """
class ElementJoin:
    """
    What a join found.
    """
    def unmatched(self) -> dict[str, typing.Any]:
        """
        [-, n] element records whose structure is not
        """
    @property
    def matched(self) -> int:
        """
        [-] element records whose structure is there
        """
    @property
    def structures(self) -> int:
        """
        [-] that have element records
        """
    @property
    def used(self) -> int:
        """
        [-] of those matched, records that say something wanted
        """
class ClosurePlan:
    """
    What a closure consists of.
    """
    def elements(self) -> dict[str, typing.Any]:
        """
        in the order in which a driver meets them
        """
    def removal_order(self) -> dict[str, typing.Any]:
        """
        The order in which a closure is taken away: against the traffic, the first sign last.
        
        Parameters
        ----------
        plan : [-]
            a lay-out
        
        Returns
        -------
        [m, each]
            its elements, last one first
        
        Formula
        -------
        the elements reversed
        
        Range
        -----
        any plan.
        
        Errors
        ------
        none.
        
        Source
        ------
        common practice
        
        Verified by
        -----------
        tests/cpp/closure/test_plan.cpp
        """
    @property
    def advance_signs(self) -> int:
        """
        [-] three an approach, on both sides if divided
        """
    @property
    def arrow_boards(self) -> int:
        """
        [-]
        """
    @property
    def buffer(self) -> float:
        """
        [m] between the last of them and the work space
        """
    @property
    def cautions(self) -> list[str]:
        """
        `plan_caution`, then what this plan leaves open
        """
    @property
    def devices(self) -> int:
        """
        [each] sum over the elements
        """
    @property
    def flaggers(self) -> int:
        """
        [-] on duty at a time
        """
    @property
    def kind(self) -> str:
        """
        [-] how the road is narrowed or closed
        """
    @property
    def length(self) -> float:
        """
        [m] first advance sign to end of downstream taper
        """
    @property
    def opposite_approach(self) -> float:
        """
        [m] advance warning for the other direction, or 0
        """
    @property
    def shadow_vehicles(self) -> int:
        """
        [-] with truck-mounted attenuator
        """
    @property
    def taper(self) -> float:
        """
        [m] tapers before the work space, together
        """
class Plan:
    """
    A job made ready.
    """
    def inputs(self) -> dict[str, typing.Any]:
        """
        Columns of every input of the job, in the job's units.
        """
class Job:
    """
    A job. Values are settings by schema key: those of the rate book first, then the job's own.
    """
    @staticmethod
    def demo() -> Job:
        """
        The job of the demo, on the shipped rates; its prices and equipment are invented [-].
        """
    @staticmethod
    def read(text: str, name: str) -> Job:
        """
        Reads a job on top of a rate book: the job's own values win.
        
        Parameters
        ----------
        text : [text]
            a JSON document with the keys of `job_keys`
        name : [text]
            what to call the document in errors
        book : [-]
            operations and values that the job builds on
        
        Returns
        -------
        [-]
            the job
        
        Range
        -----
        UTF-8.
        
        Errors
        ------
        as `read_rate_book`.
        
        Source
        ------
        own convention
        
        Verified by
        -----------
        tests/cpp/json/test_documents.cpp
        """
    def __getstate__(self) -> str:
        ...
    def __setstate__(self, arg0: str) -> None:
        ...
    def form(self) -> str:
        """
        Writes a job as a form to fill in: every value as low, likely and high in the units of the job
        as the trade writes them, with source and note, in the order of the schema.
        
        Parameters
        ----------
        job : [-]
            a job
        
        Returns
        -------
        [text]
            a JSON document that `read_job` reads as it is; the shortest text of each value
            that reads back to a few units in the last place (1e-15), SI units where there is none
        
        Range
        -----
        any job.
        
        Errors
        ------
        none.
        
        Source
        ------
        own convention
        
        Verified by
        -----------
        tests/cpp/json/test_forms.cpp
        """
    def plan(self) -> Plan:
        """
        Makes a job ready: checks words, keys, bounds and that every value is there.
        
        Parameters
        ----------
        job : [-]
            the job
        
        Returns
        -------
        [-]
            the plan; it keeps its own copy of the job
        
        Range
        -----
        any job.
        
        Errors
        ------
        UnknownNameError `schema.key` or `job.word`; InputError `job.missing` naming a value
        that no rate book or job gives, `job.bounds`, `job.scope`, those of a three-point guess.
        
        Source
        ------
        own convention
        """
    def survey_headers(self) -> list[str]:
        """
        The columns of a survey sheet: what is counted or measured because no record tells it.
        
        Parameters
        ----------
        job : [-]
            the job whose units stand in the headers
        
        Returns
        -------
        [text, n]
            counts first
        
        Range
        -----
        any job.
        
        Errors
        ------
        none.
        
        Source
        ------
        own convention
        
        Verified by
        -----------
        tests/cpp/json/test_forms.cpp
        """
    def with_input(self, key: str, value: str) -> Job:
        """
        A job with one value replaced, for every structure.
        
        Parameters
        ----------
        job : [-]
            the job
        key : [text]
            key of the input schema, or a short name such as "drains"
        value : [text]
            a JSON value: text with unit, a number, a list of three, or an object
        
        Returns
        -------
        [-]
            the changed job
        
        Range
        -----
        any key the job's layout knows.
        
        Errors
        ------
        as `read_job`; UnknownNameError `schema.key` naming the nearest known key.
        
        Source
        ------
        own convention
        
        Verified by
        -----------
        tests/cpp/json/test_documents.cpp
        """
    def with_override(self, structure: str, key: str, value: str) -> Job:
        """
        A job with one value replaced for one structure.
        
        Parameters
        ----------
        job : [-]
            the job
        structure : [text]
            structure number, or "state:number"
        key : [text]
            as for `with_input`
        value : [text]
            as for `with_input`
        
        Returns
        -------
        [-]
            the changed job
        
        Range
        -----
        any key the job's layout knows.
        
        Errors
        ------
        as `with_input`.
        
        Source
        ------
        own convention
        
        Verified by
        -----------
        tests/cpp/json/test_documents.cpp
        """
    def with_survey(self, place: str, headers: collections.abc.Sequence[str], rows: collections.abc.Sequence[tuple[str, str, collections.abc.Sequence[str]]]) -> Job:
        """
        A job with what a survey measured or counted, structure by structure.
        
        Parameters
        ----------
        job : [-]
            the job
        place : [text]
            file and line of the headers, for errors
        headers : [text, n]
            keys or short names, each with its unit: "column.height [ft]"
        rows : [-, m]
            a number in the unit of its header, or text with a unit of its own
        
        Returns
        -------
        [-]
            the changed job; basis measured, source file and line
        
        Range
        -----
        any keys of the job's inputs; empty cells change nothing.
        
        Errors
        ------
        UnknownNameError `schema.key` for a header, with the nearest key; UnitError of the unit
        part; InputError `survey.twice` for a key, a structure or a line of columns given twice,
        `survey.cells`, `survey.bounds`, `survey.count` for a count that is no whole number,
        `survey.drains` for drains by condition that do not add up. The path names file, line, column.
        
        Source
        ------
        own convention
        
        Verified by
        -----------
        tests/cpp/json/test_forms.cpp
        """
    def without_build_up_values(self) -> Job:
        """
        Takes away what `fill_build_up_values` gave, so that another word can be named.
        
        Parameters
        ----------
        job : [-]
            the job to change; a value that is not the table's stays
        table : [-]
            what is known of dirt
        
        Range
        -----
        any job.
        
        Errors
        ------
        as `fill_build_up_values`.
        
        Source
        ------
        own convention
        
        Verified by
        -----------
        tests/cpp/job/test_build_up.cpp
        """
    def without_hose_values(self) -> Job:
        """
        Takes away what `fill_hose_values` gave, so that other hoses can be named.
        
        Parameters
        ----------
        job : [-]
            the job to change; a value that is not the library's stays
        library : [-]
            hoses and fittings
        
        Range
        -----
        any job whose hoses are in the library.
        
        Errors
        ------
        as `fill_hose_values`.
        
        Source
        ------
        own convention
        
        Verified by
        -----------
        tests/cpp/job/test_hoses.cpp
        """
    def write(self) -> str:
        """
        Writes a job whole, every value in SI units with all its digits, so that reading it back gives
        the same job.
        
        Parameters
        ----------
        job : [-]
            a job
        
        Returns
        -------
        [text]
            a JSON document
        
        Range
        -----
        any job.
        
        Errors
        ------
        none.
        
        Source
        ------
        own convention
        
        Verified by
        -----------
        tests/cpp/json/test_documents.cpp
        """
    @property
    def currency(self) -> str:
        """
        Three-letter code of every amount.
        """
    @property
    def name(self) -> str:
        """
        What people call the job.
        """
    @property
    def price_at(self) -> str:
        """
        At which value of every input the estimate prices.
        """
    @property
    def units(self) -> str:
        """
        "us", "metric" or "si": how results are shown
        """
class Derivation:
    """
    The explanation of one figure: a list of steps, each once, the figure first.
    """
    def __repr__(self) -> str:
        ...
    def __str__(self) -> str:
        ...
    def _repr_html_(self) -> str:
        ...
    def to_dict(self) -> dict[str, typing.Any]:
        """
        The steps, the figure first; parts are positions in the list of steps.
        """
class Estimate:
    """
    One structure priced under one job.
    """
    def assumptions(self) -> dict[str, typing.Any]:
        """
        The uncertain inputs by what they are worth: the total at low and at high, one at a time.
        
        Parameters
        ----------
        estimate : [-]
            an estimate
        
        Returns
        -------
        [currency, n]
            the dearest first; inputs that move nothing are left out
        
        Range
        -----
        any estimate.
        
        Errors
        ------
        none.
        
        Source
        ------
        own convention
        
        Verified by
        -----------
        tests/cpp/estimate/test_estimate.cpp
        """
    def cautions(self) -> list[dict[str, str]]:
        """
        What the crew must mind at this structure, by what its closure and its surroundings trigger.
        
        Parameters
        ----------
        estimate : [-]
            an estimate
        
        Returns
        -------
        [-, n]
            the cautions that apply, in the order of the job
        
        Range
        -----
        any estimate. They are the usual ones, not a safety plan: local codes and licensed
        practice govern.
        
        Errors
        ------
        none.
        
        Source
        ------
        each caution names its own
        
        Verified by
        -----------
        tests/cpp/estimate/test_cautions.cpp
        """
    def closure_plan(self) -> ClosurePlan:
        """
        The lay-out of the closure: what stands on the road, and what it rests on as cautions.
        
        Parameters
        ----------
        estimate : [-]
            an estimate
        
        Returns
        -------
        [m, each, -]
            as `closure::plan`; what was assumed of the road is among the cautions
        
        Range
        -----
        any estimate; of kind none it is empty. Its devices are not priced one by one.
        
        Errors
        ------
        those of `closure::plan`, as where a shoulder closure finds no shoulder.
        
        Source
        ------
        `closure::plan`
        
        Verified by
        -----------
        tests/cpp/estimate/test_site_closure.cpp
        """
    def cost_lines(self) -> dict[str, typing.Any]:
        """
        The cost lines that are not zero; they add up to the total.
        
        Parameters
        ----------
        estimate : [-]
            an estimate
        
        Returns
        -------
        [currency, n]
            component, operation, resource, amount
        
        Range
        -----
        any estimate.
        
        Errors
        ------
        none.
        
        Source
        ------
        own convention
        
        Verified by
        -----------
        tests/cpp/estimate/test_estimate.cpp
        """
    def explain(self, key: str) -> Derivation:
        """
        How a figure came about, down to the inputs, by pricing the structure again with a recording.
        
        Parameters
        ----------
        estimate : [-]
            an estimate
        key : [text]
            as for `figure_place_of`
        
        Returns
        -------
        [-]
            the derivation; its value is the figure, to the bit
        
        Range
        -----
        any figure.
        
        Errors
        ------
        UnknownNameError `schema.key` naming the nearest known key.
        
        Source
        ------
        own convention
        
        Verified by
        -----------
        tests/cpp/estimate/test_explain.cpp
        """
    def figure(self, key: str) -> tuple[float, str]:
        """
        One figure.
        
        Parameters
        ----------
        key : [text]
            "cost.total", "operation[deck_hand_line].time", "drain_count", "water"
        
        Returns
        -------
        [SI unit of the figure]
            its value
        
        Range
        -----
        keys that `figure_place_of` knows.
        
        Errors
        ------
        UnknownNameError `schema.key` naming the nearest known key.
        
        Source
        ------
        own convention
        """
    def figures(self) -> dict[str, typing.Any]:
        """
        Columns of every figure, in the job's units.
        """
    def is_hand_held(self, method: str) -> bool:
        """
        Whether somebody holds the nozzle of a method, and so feels its reaction.
        
        Parameters
        ----------
        method : [-]
            a way to bring water to bear
        
        Returns
        -------
        [-]
            false for the bar of a flusher and for a nozzle without hose: a truck carries them
        
        Range
        -----
        any method.
        
        Errors
        ------
        none.
        
        Source
        ------
        common practice
        
        Verified by
        -----------
        tests/cpp/job/test_hoses.cpp
        """
    def methods(self) -> list[str]:
        """
        Methods whose nozzle runs at this structure.
        """
    def posting_warnings(self) -> list[str]:
        """
        What the weight posting of this structure does to the work, in numbers.
        
        Parameters
        ----------
        estimate : [-]
            an estimate
        
        Returns
        -------
        [text, n]
            one sentence for each; none where the bridge has no weight limit
        
        Range
        -----
        any estimate. The sign on the bridge governs.
        
        Errors
        ------
        none.
        
        Source
        ------
        FHWA-PD-96-001 (1995), item 41; the limit names its own
        
        Verified by
        -----------
        tests/cpp/estimate/test_posting.cpp
        """
    def ranges(self, draws: typing.SupportsInt | typing.SupportsIndex, seed: typing.SupportsInt | typing.SupportsIndex) -> dict[str, typing.Any]:
        """
        The ranges of the main figures, from draws of all uncertain inputs.
        
        Parameters
        ----------
        estimate : [-]
            an estimate
        settings : [-]
            seed, number of draws, kind of sampling
        
        Returns
        -------
        [SI unit of each figure, n]
            5 %, 50 % and 95 % beside the value
        
        Range
        -----
        at least one draw.
        
        Errors
        ------
        none.
        
        Source
        ------
        own convention
        
        Verified by
        -----------
        tests/cpp/estimate/test_draws.cpp
        """
    def refused(self) -> list[str]:
        """
        The operations that would be part of the work and are not, because no wash water may run.
        
        Parameters
        ----------
        estimate : [-]
            an estimate
        
        Returns
        -------
        [text, n]
            their names in the order of the job; empty unless the job's wash water is
            "none"
        
        Range
        -----
        any estimate.
        
        Errors
        ------
        none.
        
        Source
        ------
        own convention
        
        Verified by
        -----------
        tests/cpp/estimate/test_wash_water.cpp
        """
    def text(self, key: str) -> str:
        """
        A figure as text in the job's units.
        """
    def untold(self) -> list[tuple[str, float, float, str, float]]:
        """
        The quantities no record can tell, with the range of draws and how the price moves over it.
        
        Parameters
        ----------
        estimate : [-]
            an estimate
        
        Returns
        -------
        [-, n]
            in the order of the slots; quantities that move no money are left out
        
        Range
        -----
        any estimate.
        
        Errors
        ------
        none.
        
        Source
        ------
        own convention
        """
    @property
    def closure(self) -> str:
        """
        How the road is closed, as the job or else the record has it; of several stages the first that has a closure.
        """
    @property
    def closures(self) -> list[tuple[str, str]]:
        """
        Name of every stage and how the road is closed meanwhile.
        """
    @property
    def structure(self) -> Structure:
        """
        The record that was priced.
        """
class Schedule:
    """
    When the work of one structure can be done.
    """
    def days(self) -> dict[str, typing.Any]:
        """
        A day and what becomes of it.
        """
    def notices(self) -> dict[str, typing.Any]:
        """
        A notice that a structure needs, and the first day it allows.
        """
    @property
    def earliest(self) -> str | None:
        """
        the first day that all notices allow, as usual
        """
    @property
    def shifts(self) -> int:
        """
        [each] days of work
        """
class Programme:
    """
    A whole list priced. Every structure is in exactly one of `priced` and `unpriced`.
    """
    def closures(self) -> list[str]:
        """
        How the road is closed at each priced structure: a word of the closure kinds.
        """
    def columns(self, units: str) -> list[tuple[str, str]]:
        """
        Key and unit of every column: us, metric or si.
        """
    def priced(self) -> numpy.typing.NDArray[numpy.uint64]:
        """
        [-, n] positions among the structures
        """
    def ranges(self, inventory: Inventory, draws: typing.SupportsInt | typing.SupportsIndex, seed: typing.SupportsInt | typing.SupportsIndex, threads: typing.SupportsInt | typing.SupportsIndex, progress: typing.Any) -> dict[str, typing.Any]:
        """
        The ranges of the totals, from draws of all uncertain inputs of all priced structures at once.
        
        In every draw the shared share of an input, such as a wage, is the same for all structures and
        the rest is each one's own: the total spreads less than its structures, and more than if none
        of it were shared.
        
        Parameters
        ----------
        programme : [-]
            a programme
        structures : [-, n]
            the records it was priced from, in the same order
        settings : [-]
            seed, number of draws, kind of sampling
        threads : [-]
            how many; 0 for as many as the machine has
        progress : [-]
            told how far the run is; may be empty
        
        Returns
        -------
        [SI unit of each figure, n]
            by column: 5 %, 50 % and 95 % beside the total; NaN where a
            draw leaves a structure without a number
        
        Formula
        -------
        quantiles over draws of the sum over structures
        
        Range
        -----
        at least one draw. The same bits for any number of threads.
        
        Errors
        ------
        Interrupted `estimate.stopped` where progress says so.
        
        Source
        ------
        own convention
        
        Verified by
        -----------
        tests/cpp/estimate/test_programme_ranges.cpp
        """
    def table(self) -> numpy.typing.NDArray[numpy.float64]:
        """
        [SI unit of each figure, n x keys] row by row
        """
    def totals(self) -> numpy.typing.NDArray[numpy.float64]:
        """
        [SI unit of each figure] sums; NaN where a sum is no sense
        """
    def unpriced(self) -> dict[str, typing.Any]:
        """
        A structure that has no price, and why.
        """
class SavedEstimate:
    """
    An estimate as somebody saved it: enough to price it again and to see what has moved.
    """
    @staticmethod
    def read(text: str, name: str) -> SavedEstimate:
        """
        Reads an estimate that was saved. Its job stands alone: no rate book changes it.
        
        Parameters
        ----------
        text : [text]
            a JSON document as `write_estimate` gives it
        name : [text]
            what to call the document in errors
        
        Returns
        -------
        [-]
            record, job, stamp and figures
        
        Range
        -----
        UTF-8.
        
        Errors
        ------
        as `read_job` and `read_structure`; InputError `json.missing` for a part left out.
        
        Source
        ------
        own convention
        
        Verified by
        -----------
        tests/cpp/json/test_estimate_document.cpp
        """
    def moved(self, now: Estimate, tolerance: typing.SupportsFloat | typing.SupportsIndex) -> dict[str, typing.Any]:
        """
        The figures on which two lists differ.
        
        Parameters
        ----------
        here : [SI unit of each, n]
            one list
        there : [SI unit of each, m]
            the other list
        tolerance : [-]
            relative, >= 0
        
        Returns
        -------
        [SI unit of each]
            in the order of `here`, then what only `there` has
        
        Formula
        -------
        |here - there| > tolerance max(|here|, |there|)
        
        Range
        -----
        keys differ within a list; two values that are no numbers agree.
        
        Errors
        ------
        none.
        
        Source
        ------
        definition
        
        Verified by
        -----------
        tests/cpp/json/test_estimate_document.cpp
        """
    @property
    def job(self) -> Job:
        """
        [-] the whole job
        """
    @property
    def stamp(self) -> dict[str, str]:
        """
        [text] what the figures rested on
        """
    @property
    def structure(self) -> Structure:
        """
        [-] the record
        """
def affinity_flow(flow: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], speed_ratio: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], diameter_ratio: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    What flow becomes with speed and impeller diameter.
    
    Parameters
    ----------
    flow : [m3/s]
        at the first speed and diameter
    speed_ratio : [-]
        s, second speed over first, > 0
    diameter_ratio : [-]
        d of pumps of like shape, > 0; a trimmed impeller follows it roughly
    
    Returns
    -------
    [m3/s]
        at the second
    
    Formula
    -------
    Q2 = Q1 s d^3
    
    Range
    -----
    pumps of like shape at like points of their curves; losses of the hose do not follow.
    
    Errors
    ------
    InputError `hydraulics.speed_ratio`, `hydraulics.diameter_ratio` where not > 0
    
    Source
    ------
    affinity laws, e.g. Crane TP-410, example 7-33
    
    Verified by
    -----------
    tests/cpp/hydraulics/test_pump.cpp
    """
def affinity_head(head: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], speed_ratio: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], diameter_ratio: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    What head becomes with speed and impeller diameter.
    
    Parameters
    ----------
    head : [m]
        at the first speed and diameter
    speed_ratio : [-]
        s, second speed over first, > 0
    diameter_ratio : [-]
        d of pumps of like shape, > 0
    
    Returns
    -------
    [m]
        at the second
    
    Formula
    -------
    H2 = H1 s^2 d^2
    
    Range
    -----
    as affinity_flow.
    
    Errors
    ------
    as affinity_flow
    
    Source
    ------
    affinity laws, e.g. Crane TP-410, example 7-33
    
    Verified by
    -----------
    tests/cpp/hydraulics/test_pump.cpp
    """
def affinity_power(power: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], speed_ratio: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], diameter_ratio: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    What power becomes with speed and impeller diameter.
    
    Parameters
    ----------
    power : [W]
        at the first speed and diameter
    speed_ratio : [-]
        s, second speed over first, > 0
    diameter_ratio : [-]
        d of pumps of like shape, > 0
    
    Returns
    -------
    [W]
        at the second
    
    Formula
    -------
    P2 = P1 s^3 d^5
    
    Range
    -----
    as affinity_flow, at the same efficiency.
    
    Errors
    ------
    as affinity_flow
    
    Source
    ------
    affinity laws, e.g. Crane TP-410, example 7-33
    
    Verified by
    -----------
    tests/cpp/hydraulics/test_pump.cpp
    """
def air_density(pressure: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], temperature: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    How heavy dry air is.
    
    Parameters
    ----------
    pressure : [Pa]
        absolute, > 0
    temperature : [K]
        > 0
    
    Returns
    -------
    [kg/m3]
        density
    
    Formula
    -------
    rho = p / (R T), R = 287.05287 J/(kg K)
    
    Range
    -----
    air as an ideal gas, near atmospheric pressure and below.
    
    Errors
    ------
    InputError `hydraulics.air_pressure`, `hydraulics.air_temperature` where out of range
    
    Source
    ------
    ideal gas; R of the U.S. Standard Atmosphere, 1976
    
    Verified by
    -----------
    tests/cpp/hydraulics/test_conveying.cpp
    """
def air_viscosity(temperature: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    How viscous air is.
    
    Parameters
    ----------
    temperature : [K]
        > 0
    
    Returns
    -------
    [Pa s]
        dynamic viscosity
    
    Formula
    -------
    mu = 1.458e-6 T^1.5 / (T + 110.4)
    
    Range
    -----
    100 to 1,900 K.
    
    Errors
    ------
    InputError `hydraulics.air_temperature` where out of range
    
    Source
    ------
    Sutherland's law, U.S. Standard Atmosphere, 1976, equation 51
    
    Verified by
    -----------
    tests/cpp/hydraulics/test_conveying.cpp
    """
def axle_group_limit(span: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], axles: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    The weight that federal law allows a group of consecutive axles: as a single axle up to 40 in
    from first to last, as a tandem up to 96 in, beyond that by the bridge formula; in no case more
    than 20,000 lb an axle, nor than 80,000 lb.
    
    Parameters
    ----------
    span : [m]
        between the outer axles of the group, >= 0
    axles : [-]
        axles of the group, 1 to 20
    
    Returns
    -------
    [kg]
        legal weight
    
    Formula
    -------
    20,000 lb, 34,000 lb, or min(`bridge_formula`, N 20,000 lb, 80,000 lb)
    
    Range
    -----
    as `bridge_formula`. The exception for two tandems 36 ft apart is made by `legal_gross`.
    
    Errors
    ------
    InputError `debris.span` where below 0, or above 0 for one axle; `debris.axles`
    
    Source
    ------
    23 USC 127(a)(2); 23 CFR 658.17(b) to (e); 23 CFR 658.5 for single and tandem axles
    
    Verified by
    -----------
    tests/cpp/debris/test_axle_groups.cpp
    """
def balanced_density(room: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], payload: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    The density above which a truck is at its legal weight before its tank is full.
    
    Parameters
    ----------
    truck : [m3, kg]
        room of the tank, and what the truck may carry
    
    Returns
    -------
    [kg/m3]
        density at which both are reached together
    
    Formula
    -------
    rho = payload / room
    
    Range
    -----
    any.
    
    Errors
    ------
    InputError `debris.room`, `debris.payload` where not above 0
    
    Source
    ------
    definition
    
    Verified by
    -----------
    tests/cpp/debris/test_tank.cpp
    """
def bar_flow(bores: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], coefficients: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], pressure: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], density: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    How much all nozzles of a bar let through.
    
    Parameters
    ----------
    nozzles : [-, n]
        bore [m] > 0 and discharge coefficient > 0 of each
    pressure : [Pa]
        gauge pressure in the bar, >= 0
    density : [kg/m3]
        of the liquid, > 0
    
    Returns
    -------
    [m3/s]
        volume flow of the bar
    
    Formula
    -------
    Q = sum c_i (pi / 4) D_i^2 sqrt(2 p / rho)
    
    Range
    -----
    as bar_as_nozzle.
    
    Errors
    ------
    as bar_as_nozzle; InputError `hydraulics.pressure`, `hydraulics.density`
    
    Source
    ------
    nozzle_flow summed
    
    Verified by
    -----------
    tests/cpp/hydraulics/test_nozzle_bar.cpp
    """
def bar_pressure(bores: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], coefficients: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], flow: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], density: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    Which pressure drives a flow through a bar.
    
    Parameters
    ----------
    nozzles : [-, n]
        bore [m] > 0 and discharge coefficient > 0 of each
    flow : [m3/s]
        volume flow of the bar, >= 0
    density : [kg/m3]
        of the liquid, > 0
    
    Returns
    -------
    [Pa]
        gauge pressure in the bar
    
    Formula
    -------
    p = (rho / 2) (Q / sum c_i (pi / 4) D_i^2)^2
    
    Range
    -----
    as bar_as_nozzle.
    
    Errors
    ------
    as bar_as_nozzle; InputError `hydraulics.flow`, `hydraulics.density`
    
    Source
    ------
    bar_flow, solved for the pressure
    
    Verified by
    -----------
    tests/cpp/hydraulics/test_nozzle_bar.cpp
    """
def basis_names() -> list[str]:
    """
    The words for how a value is known, the surest first.
    """
def blocks_shoulder(shoulder: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], width: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    Whether a windrow leaves nothing of a shoulder.
    
    Parameters
    ----------
    shoulder : [m]
        its width, >= 0
    width : [m]
        of the windrow, >= 0
    
    Returns
    -------
    [-]
        true where nothing is left, or the windrow reaches into the lane
    
    Formula
    -------
    clear_shoulder <= 0
    
    Range
    -----
    any.
    
    Errors
    ------
    as `clear_shoulder`
    
    Source
    ------
    definition
    
    Verified by
    -----------
    tests/cpp/debris/test_windrow.cpp
    """
def box_volume(length: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], width: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], depth: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    The volume of dirt in a drain box.
    
    Parameters
    ----------
    length : [m]
        L, inside, >= 0
    width : [m]
        w, inside, >= 0
    depth : [m]
        d, of the dirt, >= 0
    
    Returns
    -------
    [m3]
        volume
    
    Formula
    -------
    V = L w d
    
    Range
    -----
    upright walls.
    
    Errors
    ------
    InputError `debris.length`, `debris.width`, `debris.depth` where below 0 or not a number
    
    Source
    ------
    geometry
    
    Verified by
    -----------
    tests/cpp/debris/test_tank.cpp
    """
def bridge_formula(span: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], axles: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    The weight that the bridge formula allows a group of axles, to the nearest 500 lb.
    
    Parameters
    ----------
    span : [m]
        L, between the outer axles of the group, > 0
    axles : [-]
        N, axles of the group, 2 to 20
    
    Returns
    -------
    [kg]
        the formula alone; neither tandem nor gross limits are in it
    
    Formula
    -------
    W = 500 (L N / (N - 1) + 12 N + 36), W in pounds, L in feet; a tie is rounded down
    
    Range
    -----
    any span; L as measured, where enforcement takes whole feet. State tables round ties
    either way: 3 axles over 9 ft are 42,500 lb in one and 43,000 lb in another.
    
    Errors
    ------
    InputError `debris.span` where not above 0, `debris.axles` where out of range
    
    Source
    ------
    23 USC 127(a)(2); 23 CFR 658.17(e)
    
    Verified by
    -----------
    tests/cpp/debris/test_axle_groups.cpp
    """
def buffer_length(speed: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], downgrade: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    The length of the longitudinal buffer space that the manual suggests.
    
    Parameters
    ----------
    speed : [m/s]
        of the traffic, > 0
    downgrade : [-]
        fall over run in the direction of travel; uphill counts as level
    
    Returns
    -------
    [m]
        length along the road
    
    Formula
    -------
    the level stopping distance rounded up to 5 ft; downhill, where that is longer, the
    distance on the grade rounded up to 1 ft
    
    Range
    -----
    -0.3 < downgrade < 0.3. Level figures are those of the table; on downgrades the printed
    figures are not rounded uniformly and this one is within 1 ft of them.
    
    Errors
    ------
    InputError `closure.speed`, `closure.downgrade` where out of range
    
    Source
    ------
    Manual on Uniform Traffic Control Devices, 2009 edition, table 6C-2; 11th, 6B-2;
    downgrades: California edition 2026, table 6B-2(CA)
    
    Verified by
    -----------
    tests/cpp/closure/test_buffer.cpp
    """
def build_up_depth(line_mass: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], width: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], density: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    How deep dirt lies whose mass for each unit of length is known.
    
    Parameters
    ----------
    line_mass : [kg/m]
        dirt for each unit of length, >= 0
    width : [m]
        mean width of the build-up, > 0
    density : [kg/m3]
        bulk density, > 0
    
    Returns
    -------
    [m]
        mean depth
    
    Formula
    -------
    d = m' / (w rho)
    
    Range
    -----
    any.
    
    Errors
    ------
    InputError `debris.line_mass`, `debris.width`, `debris.density` where out of range
    
    Source
    ------
    definition
    
    Verified by
    -----------
    tests/cpp/debris/test_published.cpp
    """
def build_ups(units: str) -> list[tuple[str, str, typing.Any]]:
    """
    How much dirt lies where the last cleaning was so long ago.
    """
def changed_figures(here: Estimate, there: Estimate) -> dict[str, typing.Any]:
    """
    The figures on which two lists differ.
    
    Parameters
    ----------
    here : [SI unit of each, n]
        one list
    there : [SI unit of each, m]
        the other list
    tolerance : [-]
        relative, >= 0
    
    Returns
    -------
    [SI unit of each]
        in the order of `here`, then what only `there` has
    
    Formula
    -------
    |here - there| > tolerance max(|here|, |there|)
    
    Range
    -----
    keys differ within a list; two values that are no numbers agree.
    
    Errors
    ------
    none.
    
    Source
    ------
    definition
    
    Verified by
    -----------
    tests/cpp/json/test_estimate_document.cpp
    """
def changed_inputs(here: Estimate, there: Estimate) -> dict[str, typing.Any]:
    """
    The inputs on which two estimates differ: their value, range or distribution.
    
    Parameters
    ----------
    here : [-]
        one estimate
    there : [-]
        the other
    
    Returns
    -------
    [SI unit of each]
        in the order of `here`, then what only `there` has
    
    Range
    -----
    any two; the origins of the values live as long as the estimates.
    
    Errors
    ------
    none.
    
    Source
    ------
    definition
    
    Verified by
    -----------
    tests/cpp/json/test_estimate_document.cpp
    """
def clear_shoulder(shoulder: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], width: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    How much of a shoulder a windrow leaves clear.
    
    Parameters
    ----------
    shoulder : [m]
        s, its width, >= 0
    width : [m]
        b, of the windrow, >= 0
    
    Returns
    -------
    [m]
        clear width; at or below 0 the shoulder is blocked, below 0 by that much of the lane
    
    Formula
    -------
    c = s - b
    
    Range
    -----
    any.
    
    Errors
    ------
    InputError `debris.shoulder`, `debris.width` where below 0 or not a number
    
    Source
    ------
    definition
    
    Verified by
    -----------
    tests/cpp/debris/test_windrow.cpp
    """
def closure_plan(speed: typing.SupportsFloat | typing.SupportsIndex, kind: str, road: str, lane_width: typing.SupportsFloat | typing.SupportsIndex, shoulder_width: typing.SupportsFloat | typing.SupportsIndex, work_length: typing.SupportsFloat | typing.SupportsIndex, lanes_closed: typing.SupportsInt | typing.SupportsIndex, edition: str, divided: bool, downgrade: typing.SupportsFloat | typing.SupportsIndex) -> ClosurePlan:
    """
    Lays out a closure in its usual order and counts what stands on the road.
    
    Parameters
    ----------
    site : [m, m/s, -]
        where, and how
    
    Returns
    -------
    [m, each, -]
        elements, counts and cautions; a closure of kind none is empty
    
    Formula
    -------
    advance warning C, B, A; where lanes are left by merging, a shoulder taper if the paved
    shoulder is 8 ft wide or more, then a merging taper for each lane with 2 L between two of them;
    buffer; work space; downstream taper. A shoulder closure has its taper only, a one-lane two-way
    closure the short one, a full closure none
    
    Range
    -----
    stationary daytime work on a straight road, without ramps, crossings, footways. Not
    counted: end-of-work and speed limit signs, barricades, detours, lights, message signs.
    
    Errors
    ------
    InputError `closure.speed`, `closure.lane_width`, `closure.shoulder_width`,
    `closure.work_length`, `closure.lanes_closed`, `closure.downgrade` where out of range
    
    Source
    ------
    Manual on Uniform Traffic Control Devices, 2009 edition, chapters 6C, 6F and 6H; 11th,
    6B, 6K and 6P; the 2 L between merging tapers from memory of figure 6H-37
    
    Verified by
    -----------
    tests/cpp/closure/test_plan.cpp
    """
def closure_window(demand: collections.abc.Sequence[typing.SupportsFloat | typing.SupportsIndex], capacity: typing.SupportsFloat | typing.SupportsIndex) -> tuple[int, int]:
    """
    The longest run of hours in which the traffic fits through what a closure leaves open.
    
    Parameters
    ----------
    demand : [each/s, n]
        vehicles that want to pass, hour by hour
    capacity : [each/s]
        what the open lanes carry together, >= 0
    
    Returns
    -------
    [-]
        first hour and how many
    
    Formula
    -------
    hours whose demand <= capacity, side by side; the earliest of equal runs. Twenty-four
    hours are a whole day, in which the last hour is followed by the first
    
    Range
    -----
    any number of hours. Queues left by an hour before are not seen.
    
    Errors
    ------
    InputError `closure.demand`, `closure.capacity` where negative or no number
    
    Source
    ------
    common practice
    
    Verified by
    -----------
    tests/cpp/closure/test_capacity.cpp
    """
def coil_critical_reynolds(curvature: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    Up to which Reynolds number the flow in a coil stays laminar.
    
    Parameters
    ----------
    curvature : [-]
        d / D, bore over diameter of the coil, 0 to 0.2
    
    Returns
    -------
    [-]
        critical Reynolds number
    
    Formula
    -------
    Re = 2300 (1 + 8.6 (d / D)^0.45)
    
    Range
    -----
    d / D below 0.14; 0 is a straight hose.
    
    Errors
    ------
    InputError `hydraulics.curvature` where out of range
    
    Source
    ------
    E. F. Schmidt, Chem. Ing. Tech. 39 (1967) 781, as printed in the documentation of the
    fluids library
    
    Verified by
    -----------
    tests/cpp/hydraulics/test_coil.cpp
    """
def coil_friction_factor(reynolds_number: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], curvature: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], relative_roughness: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    The Darcy friction factor of a coil.
    
    Parameters
    ----------
    reynolds_number : [-]
        Re, > 0
    curvature : [-]
        x, bore over diameter of the coil from centre to centre, 0 to 0.2
    relative_roughness : [-]
        roughness over bore, 0 to 0.05
    
    Returns
    -------
    [-]
        Darcy friction factor
    
    Formula
    -------
    laminar, to the critical Re: f = (64 / Re) (1 + 0.14 x^0.97 Re^(1 - 0.644 x^0.312)),
    x = d / D;
    turbulent, from 1.2 times that: f = fs max(1 + 28800 x^0.62 / Re,
    1 + 0.0823 (1 + x) x^0.53 Re^0.25), fs of friction_factor;
    between them a straight line in Re
    
    Range
    -----
    Re 100 to 150,000; beyond it the formula goes on. Schmidt changes formula at Re 22,000
    with a step of about 1 %; the greater of the two has none. Rough coils were hardly
    measured.
    
    Errors
    ------
    InputError `hydraulics.reynolds_number`, `hydraulics.curvature`,
    `hydraulics.relative_roughness` where out of range
    
    Source
    ------
    as coil_critical_reynolds; the bridge is own convention
    
    Verified by
    -----------
    tests/cpp/hydraulics/test_coil.cpp
    """
def coil_loss(flow: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], bore: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], length: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], coil_diameter: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], roughness: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], density: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], kinematic_viscosity: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    What hose on a reel costs in pressure.
    
    Parameters
    ----------
    flow : [m3/s]
        volume flow, >= 0
    bore : [m]
        inside diameter, > 0
    length : [m]
        of the hose that lies in coils, >= 0
    coil_diameter : [m]
        mean diameter of the coils from centre to centre, >= 5 bores
    roughness : [m]
        equivalent sand roughness of the wall, >= 0
    fluid : [-]
        density [kg/m3] and kinematic viscosity [m2/s]
    
    Returns
    -------
    [Pa]
        pressure loss
    
    Formula
    -------
    p = f (L / d) rho V^2 / 2, f of coil_friction_factor
    
    Range
    -----
    round hose; one that is flattened by its reel loses more.
    
    Errors
    ------
    as coil_friction_factor; InputError `hydraulics.flow`, `hydraulics.bore`,
    `hydraulics.length`, `hydraulics.density` where out of range
    
    Source
    ------
    Darcy-Weisbach equation
    
    Verified by
    -----------
    tests/cpp/hydraulics/test_coil.cpp
    """
def decanted(volume: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], mass: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], free_share: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], water_density: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> tuple[numpy.typing.NDArray[numpy.float64], numpy.typing.NDArray[numpy.float64]]:
    """
    What is left of a wet load once its free liquid has run off, for a landfill takes no free liquid.
    
    Parameters
    ----------
    load : [m3, kg]
        the wet load
    free_share : [-]
        f, free liquid over the volume of the load, 0 to 1
    water_density : [kg/m3]
        rho, of the liquid, > 0
    
    Returns
    -------
    [m3, kg]
        the drained load
    
    Formula
    -------
    V' = V (1 - f), m' = m - f V rho
    
    Range
    -----
    liquid that stands free; what the pores hold stays.
    
    Errors
    ------
    InputError `debris.volume`, `debris.mass` where below 0, `debris.free_share` where not
    from 0 to 1 or the liquid would weigh more than the load, `debris.density`
    
    Source
    ------
    definition; 40 CFR 258.28 (no bulk liquids in a municipal landfill), from memory
    
    Verified by
    -----------
    tests/cpp/debris/test_tank.cpp
    """
def device_count(length: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], spacing: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    How many devices a line of a given length takes, one at either end.
    
    Parameters
    ----------
    length : [m]
        of the line, >= 0
    spacing : [m]
        greatest distance between two devices, > 0
    
    Returns
    -------
    [each]
        devices; a line that continues another shares one with it
    
    Formula
    -------
    N = count_up(length / spacing) + 1
    
    Range
    -----
    any length.
    
    Errors
    ------
    InputError `closure.length`, `closure.spacing` where out of range
    
    Source
    ------
    common practice; a field handbook of 2002 prints L / spacing + 1
    
    Verified by
    -----------
    tests/cpp/closure/test_devices.cpp
    """
def dirt_densities(units: str) -> list[tuple[str, str, typing.Any]]:
    """
    Dirt of one material and moisture.
    """
def drain_volume(drains: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], volume_each: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    The volume of dirt in drains of one condition.
    
    Parameters
    ----------
    drains : [each]
        number of drains, >= 0
    volume_each : [m3/each]
        dirt in one of them, >= 0
    
    Returns
    -------
    [m3]
        volume
    
    Formula
    -------
    V = n v
    
    Range
    -----
    any.
    
    Errors
    ------
    InputError `debris.drains`, `debris.volume_each` where below 0 or not a number
    
    Source
    ------
    definition
    
    Verified by
    -----------
    tests/cpp/debris/test_build_up.cpp
    """
def equivalent_bore(rated_flow: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], rated_pressure: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], discharge_coefficient: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], density: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    Which smooth bore lets through what a rated nozzle does, so that it can end a line.
    
    Parameters
    ----------
    rated_flow : [m3/s]
        flow at the rating pressure, > 0
    rated_pressure : [Pa]
        rating pressure, > 0
    discharge_coefficient : [-]
        c of the bore it is likened to, > 0
    density : [kg/m3]
        of the liquid, > 0
    
    Returns
    -------
    [m]
        inside diameter
    
    Formula
    -------
    D = sqrt(Qr / (c (pi / 4) sqrt(2 pr / rho)))
    
    Range
    -----
    fixed orifices.
    
    Errors
    ------
    InputError `hydraulics.flow`, `hydraulics.rated_pressure`,
    `hydraulics.discharge_coefficient`, `hydraulics.density` where out of range
    
    Source
    ------
    nozzle_flow, solved for the bore
    
    Verified by
    -----------
    tests/cpp/hydraulics/test_nozzle.cpp
    """
def error_message(id: str, path: str, found: str, allowed: str) -> str:
    """
    The message of an error from its facts.
    """
def estimate(structure: Structure, plan: Plan) -> Estimate:
    """
    Prices one structure, in an outing of its own group.
    
    Parameters
    ----------
    structure : [-]
        the record
    plan : [-]
        the job made ready
    
    Returns
    -------
    [-]
        the estimate
    
    Range
    -----
    any structure.
    
    Errors
    ------
    InputError `estimate.unpriced` with the reason where it cannot be priced; those of
    `resolve`.
    
    Source
    ------
    the parts it calls
    
    Verified by
    -----------
    tests/cpp/estimate/test_estimate.cpp
    """
def estimate_all(inventory: Inventory, plan: Plan, threads: typing.SupportsInt | typing.SupportsIndex, progress: typing.Any) -> Programme:
    """
    Prices a list of structures on several threads.
    
    Parameters
    ----------
    structures : [-, n]
        the records
    plan : [-]
        the job made ready
    threads : [-]
        how many; 0 for as many as the machine has
    progress : [-]
        told how far the run is; may be empty
    
    Returns
    -------
    [-]
        the programme; the same bits for any number of threads and order of work
    
    Range
    -----
    any list.
    
    Errors
    ------
    Interrupted `estimate.stopped` where progress says so; those of `resolve`.
    
    Source
    ------
    own convention
    
    Verified by
    -----------
    tests/cpp/estimate/test_programme.cpp
    """
def factor_loss(factor: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], velocity: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], bore: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], length: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], density: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    What a length of hose or pipe costs in pressure at a friction factor known otherwise, as from a
    chart.
    
    Parameters
    ----------
    factor : [-]
        f, Darcy's (four times Fanning's), >= 0
    velocity : [m/s]
        V, >= 0
    bore : [m]
        D, inside diameter, > 0
    length : [m]
        L, of the hose, >= 0
    density : [kg/m3]
        of the liquid, > 0
    
    Returns
    -------
    [Pa]
        pressure loss
    
    Formula
    -------
    p = f (L / D) rho V^2 / 2
    
    Range
    -----
    full round pipes.
    
    Errors
    ------
    InputError `hydraulics.factor`, `hydraulics.velocity`, `hydraulics.bore`,
    `hydraulics.length`, `hydraulics.density` where out of range
    
    Source
    ------
    Darcy-Weisbach equation
    
    Verified by
    -----------
    tests/cpp/hydraulics/test_friction.cpp
    """
def fan_width(stand_off: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], spray_angle: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    How wide a strip a fan tip covers.
    
    Parameters
    ----------
    stand_off : [m]
        s, from the tip to the surface, >= 0
    spray_angle : [rad]
        a, between the edges of the fan, 0 to pi
    
    Returns
    -------
    [m]
        width of the strip
    
    Formula
    -------
    w = 2 s tan(a / 2)
    
    Range
    -----
    near the tip; farther away gravity and air narrow the fan. The angle is that of the tip
    at its pressure, which grows a little with the pressure.
    
    Errors
    ------
    InputError `hydraulics.stand_off`, `hydraulics.spray_angle` where out of range
    
    Source
    ------
    geometry
    
    Verified by
    -----------
    tests/cpp/hydraulics/test_jet.cpp
    """
def fittings() -> list[tuple[str, str, typing.Any]]:
    """
    A fitting of a hose line.
    """
def format_quantity(si: typing.SupportsFloat | typing.SupportsIndex, unit: str, digits: typing.SupportsInt | typing.SupportsIndex) -> str:
    """
    An SI value as text in a unit.
    """
def friction_factor(reynolds_number: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], relative_roughness: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    The Darcy friction factor of a round pipe.
    
    Parameters
    ----------
    reynolds_number : [-]
        Re, >= 0; at 0 the factor is infinite
    relative_roughness : [-]
        k, roughness over bore, 0 to 0.05
    
    Returns
    -------
    [-]
        Darcy friction factor (four times Fanning's)
    
    Formula
    -------
    f = 64 / Re up to Re 2,000; from 4,000
    1 / sqrt(f) = -2 log10(k / 3.7 + 2.51 / (Re sqrt(f))), solved to machine precision;
    between them a straight line in Re, so that f and the loss are continuous and the
    loss always grows with the flow
    
    Range
    -----
    between Re 2,000 and 4,000 a flow may be either kind: the straight line is a bridge,
    uncertain by up to half its value. Newton's steps on the concave Colebrook equation
    cannot overshoot twice; six at most are taken, three suffice.
    
    Errors
    ------
    InputError `hydraulics.reynolds_number`, `hydraulics.relative_roughness`
    where out of range
    
    Source
    ------
    C. F. Colebrook, J. Inst. Civ. Eng. 11 (1939) 133; Hagen-Poiseuille; the bridge is own
    convention
    
    Verified by
    -----------
    tests/cpp/hydraulics/test_friction.cpp
    """
def friction_loss(flow: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], bore: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], length: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], roughness: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], density: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], kinematic_viscosity: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    What a length of hose or pipe costs in pressure.
    
    Parameters
    ----------
    flow : [m3/s]
        volume flow, >= 0
    bore : [m]
        inside diameter, > 0
    length : [m]
        of the hose, >= 0
    roughness : [m]
        equivalent sand roughness of the wall, >= 0
    fluid : [-]
        density [kg/m3] and kinematic viscosity [m2/s]
    
    Returns
    -------
    [Pa]
        pressure loss
    
    Formula
    -------
    p = f (L / D) rho V^2 / 2
    
    Range
    -----
    full round pipes at their true bore under pressure; see friction_factor.
    
    Errors
    ------
    InputError as reynolds and friction_factor; `hydraulics.length`,
    `hydraulics.density` where out of range
    
    Source
    ------
    Darcy-Weisbach equation
    
    Verified by
    -----------
    tests/cpp/hydraulics/test_friction.cpp
    """
def from_si(si: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], unit: str) -> numpy.typing.NDArray[numpy.float64]:
    """
    SI numbers in a unit.
    """
def girder_sections(units: str) -> list[tuple[str, str, typing.Any]]:
    """
    A standard section.
    """
def greatest_suction_lift(surface_pressure: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], vapour_pressure: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], suction_loss: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], npsh_required: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], density: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    How far above the water a pump may stand.
    
    Parameters
    ----------
    surface_pressure : [Pa]
        absolute, on the water drawn from
    vapour_pressure : [Pa]
        absolute, of the water at its temperature
    suction_loss : [m]
        head lost in strainer and suction hose, >= 0
    npsh_required : [m]
        by the pump's maker, at the flow, >= 0
    density : [kg/m3]
        of the liquid, > 0
    
    Returns
    -------
    [m]
        greatest lift; negative where the pump has to stand below the water
    
    Formula
    -------
    lift = (p - pv) / (rho g) - loss - NPSHr
    
    Range
    -----
    any.
    
    Errors
    ------
    InputError `hydraulics.suction_loss`, `hydraulics.npsh_required`,
    `hydraulics.density` where out of range
    
    Source
    ------
    npsh_available, solved for the lift
    
    Verified by
    -----------
    tests/cpp/hydraulics/test_pump.cpp
    """
def hash_text(text: str) -> int:
    """
    The stable hash of a text that keys draws: state and structure number, name of an input.
    
    Parameters
    ----------
    text : [text]
        any bytes
    
    Returns
    -------
    [-]
        64 bits
    
    Formula
    -------
    mix64(fnv1a_64(text)). The mixer repairs the weak high bits of short texts.
    
    Range
    -----
    all.
    
    Errors
    ------
    none.
    
    Source
    ------
    definition
    
    Verified by
    -----------
    tests/cpp/random/test_hash.cpp
    """
def hazen_williams_forms() -> list[str]:
    """
    The names of the Hazen-Williams forms [text, n].
    """
def hazen_williams_loss(form: str, flow: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], bore: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], length: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], coefficient: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], density: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    What a length of pipe costs in pressure by Hazen-Williams.
    
    Parameters
    ----------
    form : [-]
        which published form
    flow : [m3/s]
        volume flow, >= 0
    bore : [m]
        inside diameter, > 0
    length : [m]
        of the pipe, >= 0
    coefficient : [-]
        C, > 0; 100 for old steel, 150 for plastic
    density : [kg/m3]
        of the liquid, > 0; the two psi forms have water's built in
    
    Returns
    -------
    [Pa]
        pressure loss
    
    Formula
    -------
    by form; heads become pressures with rho g h
    
    Range
    -----
    water near 60 degF, turbulent, bores from about 2 in; small hoses leave it.
    
    Errors
    ------
    InputError `hydraulics.flow`, `hydraulics.bore`, `hydraulics.length`,
    `hydraulics.coefficient`, `hydraulics.density` where out of range
    
    Source
    ------
    G. S. Williams, A. Hazen, Hydraulic Tables (1905); the factors as reprinted in
    pipe-makers' and sprinkler tables, see tests/reference/hydraulics/hazen_williams.csv
    
    Verified by
    -----------
    tests/cpp/hydraulics/test_trade_friction.cpp
    """
def head(pressure: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], density: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    How high a pressure lifts water.
    
    Parameters
    ----------
    pressure : [Pa]
        gauge pressure or pressure loss
    density : [kg/m3]
        of the liquid, > 0
    
    Returns
    -------
    [m]
        head
    
    Formula
    -------
    z = p / (rho g), g = 9.80665 m/s2
    
    Range
    -----
    any.
    
    Errors
    ------
    InputError `hydraulics.density` where density <= 0
    
    Source
    ------
    hydrostatics; g of the 3rd CGPM (1901)
    
    Verified by
    -----------
    tests/cpp/hydraulics/test_friction.cpp
    """
def hose_coefficient_loss(flow: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], length: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], coefficient: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    What a length of hose costs in pressure by its hose coefficient.
    
    Parameters
    ----------
    flow : [m3/s]
        volume flow, >= 0
    length : [m]
        of the hose, >= 0
    coefficient : [-]
        C in psi per 100 ft at (100 gpm)^2, >= 0
    
    Returns
    -------
    [Pa]
        pressure loss
    
    Formula
    -------
    p = C (Q / 100 gpm)^2 (L / 100 ft) psi
    
    Range
    -----
    near the flow at which the coefficient was measured: real hoses follow a power of
    about 1.8, so that the formula is too low well below it and too high well above.
    
    Errors
    ------
    InputError `hydraulics.flow`, `hydraulics.length`, `hydraulics.coefficient`
    where out of range
    
    Source
    ------
    common practice of the fire service
    
    Verified by
    -----------
    tests/cpp/hydraulics/test_trade_friction.cpp
    """
def hoses(units: str) -> list[tuple[str, str, typing.Any]]:
    """
    A hose of one construction and nominal bore.
    """
def hourly_demand(daily: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], hourly_share: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], directional_share: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    How much traffic wants to pass in one direction in a given hour of the day.
    
    Parameters
    ----------
    daily : [each]
        vehicles a day; item 29 counts all directions that the structure carries
    hourly_share : [-]
        share of the day's traffic in the hour, 0 to 1
    directional_share : [-]
        share of the direction, 0 to 1; 1 on a one-way structure
    
    Returns
    -------
    [each/s]
        vehicles that want to pass
    
    Formula
    -------
    demand = daily x hourly share x directional share, by the hour
    
    Range
    -----
    the mean of the hour; peaks within it are not seen.
    
    Errors
    ------
    InputError `closure.daily`, `closure.hourly_share`, `closure.directional_share` where
    out of range
    
    Source
    ------
    definition
    
    Verified by
    -----------
    tests/cpp/closure/test_capacity.cpp
    """
def hydraulic_power(pressure: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], flow: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    What a pump does to the water.
    
    Parameters
    ----------
    pressure : [Pa]
        gained between inlet and outlet
    flow : [m3/s]
        volume flow
    
    Returns
    -------
    [W]
        hydraulic power
    
    Formula
    -------
    P = p Q
    
    Range
    -----
    any; velocities at inlet and outlet alike.
    
    Errors
    ------
    none
    
    Source
    ------
    definition
    
    Verified by
    -----------
    tests/cpp/hydraulics/test_pump.cpp
    """
def jet_force(bore: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], velocity: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], surface_speed: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], angle: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], density: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    How hard a whole jet pushes on a flat surface.
    
    Parameters
    ----------
    bore : [m]
        diameter of the jet, > 0
    velocity : [m/s]
        of the jet, >= 0
    surface_speed : [m/s]
        u, of the surface away from the nozzle, not above v
    angle : [rad]
        between the jet and the normal of the surface, 0 to pi / 2
    density : [kg/m3]
        of the liquid, > 0
    
    Returns
    -------
    [N]
        force normal to the surface
    
    Formula
    -------
    F = rho (pi / 4) D^2 (v - u)^2 cos a
    
    Range
    -----
    jets that do not splash back.
    
    Errors
    ------
    InputError `hydraulics.bore`, `hydraulics.velocity`, `hydraulics.surface_speed`,
    `hydraulics.angle`, `hydraulics.density` where out of range
    
    Source
    ------
    momentum balance
    
    Verified by
    -----------
    tests/cpp/hydraulics/test_jet.cpp
    """
def jet_velocity(pressure: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], density: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    How fast the jet leaves the tip.
    
    Parameters
    ----------
    pressure : [Pa]
        gauge pressure at the tip, >= 0
    density : [kg/m3]
        of the liquid, > 0
    
    Returns
    -------
    [m/s]
        speed of the jet where it has contracted
    
    Formula
    -------
    v = sqrt(2 p / rho)
    
    Range
    -----
    no loss inside the tip (velocity coefficient 1).
    
    Errors
    ------
    InputError `hydraulics.pressure`, `hydraulics.density` where out of range
    
    Source
    ------
    Torricelli's law
    
    Verified by
    -----------
    tests/cpp/hydraulics/test_nozzle.cpp
    """
def job_keys() -> list[str]:
    """
    Keys of a job document [text, n].
    """
def job_schema() -> str:
    """
    The JSON Schema of a job document, built from the tables of keys and words that the reader uses.
    
    Returns
    -------
    [text]
        a JSON Schema, draft 2020-12
    
    Range
    -----
    it checks keys, words and the shape of values; units and bounds are checked where a job
    is read.
    
    Errors
    ------
    none.
    
    Source
    ------
    JSON Schema, draft 2020-12, json-schema.org/draft/2020-12
    
    Verified by
    -----------
    tests/cpp/json/test_job_schema.cpp, tests/python/test_job_schema.py
    """
def join_elements(inventory: Inventory, elements: ElementRecords) -> ElementJoin:
    """
    Gives structures what their element records say, in place of what would be inferred: joint
    length, bearings, columns, girder lines, parapets, rails, coated girder surface. Joined by state
    and structure number, padding ignored. A quantity that the structure's own length, width and
    spans make impossible is not used and reported.
    
    Parameters
    ----------
    inventory : [-]
        structures to complete; its doubts grow
    elements : [-]
        what an element file holds
    
    Returns
    -------
    [-]
        matched, unmatched and doubtful records
    
    Formula
    -------
    girder lines = sum of girder lengths / structure length, within a tenth of a whole number
    
    Range
    -----
    any. The traps that occur: no unit field; a coating quantity that is a rail's length.
    
    Errors
    ------
    none.
    
    Source
    ------
    own convention; bounds of plausibility common practice
    
    Verified by
    -----------
    tests/cpp/inventory/test_join_elements.cpp
    """
def key_listing() -> str:
    """
    Every name that documents, tables and programs may rely on, one a line, with its dimension.
    
    Returns
    -------
    [text]
        sections of lines "section<tab>key<tab>dimension"
    
    Range
    -----
    none.
    
    Errors
    ------
    none.
    
    Source
    ------
    own convention
    
    Verified by
    -----------
    tests/cpp/schema/test_keys.cpp
    """
def kind_by_record(structure: Structure) -> str:
    """
    The closure that common practice would set up for deck work on a road.
    
    Parameters
    ----------
    road : [-]
        what the record tells
    
    Returns
    -------
    [-]
        the kind of closure; one_lane_two_way where the record does not tell the lanes
    
    Formula
    -------
    no lanes: none; one lane for both ways, or a ramp of one lane: full closure; up to two lanes two way: one
    lane two way by flaggers; more lanes: one lane closed, of the freeway kind on freeways
    
    Range
    -----
    any codes.
    
    Errors
    ------
    none.
    
    Source
    ------
    common practice
    
    Verified by
    -----------
    tests/cpp/closure/test_kind.cpp
    """
def known_columns() -> list[str]:
    """
    The columns of the national inventory that are read.
    
    Returns
    -------
    [text, n]
        their names as the published header rows spell them, in the order of the items
    
    Range
    -----
    always the same.
    
    Errors
    ------
    none.
    
    Source
    ------
    header rows of the published files of 2013 and 2019
    
    Verified by
    -----------
    tests/cpp/inventory/test_fields.cpp
    """
def lay_unit(like: str, units: str) -> str:
    """
    The unit in which a figure of a hose lay is shown.
    
    Parameters
    ----------
    dimension : [-]
        of the figure
    units : [-]
        how quantities are shown
    
    Returns
    -------
    [-]
        the usual unit of the dimension; for speeds ft/s or m/s, since nobody gauges a hose
        in miles an hour
    
    Range
    -----
    any.
    
    Errors
    ------
    none
    
    Source
    ------
    common practice
    
    Verified by
    -----------
    tests/cpp/hydraulics/test_lay_warnings.cpp
    """
def legal_gross(spacings: collections.abc.Sequence[typing.SupportsFloat | typing.SupportsIndex]) -> tuple[float, list[tuple[int, int, float]]]:
    """
    The greatest weight a truck may have, loaded so that every group of its axles is legal.
    
    Parameters
    ----------
    spacings : [m, n]
        from each axle to the next, front to back
    
    Returns
    -------
    [kg, -]
        weight, and the groups that limit it
    
    Formula
    -------
    the greatest sum of axle weights of which no group of consecutive axles exceeds
    `axle_group_limit`; two consecutive tandems may carry 34,000 lb each where their outer axles are
    36 ft or more apart
    
    Range
    -----
    a load that can be placed as the axles would have it; tires, maker's ratings and the
    state's own law may allow less, a permit more.
    
    Errors
    ------
    InputError `debris.spacing` where not above 0, `debris.axles` for more than 20
    
    Source
    ------
    23 USC 127(a)(2); 23 CFR 658.17
    
    Verified by
    -----------
    tests/cpp/debris/test_axle_groups.cpp
    """
def load_factor(swell: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    The volume loosened dirt had as it lay, over its loose volume; so too the density of loose dirt
    over that of dirt in place.
    
    Parameters
    ----------
    swell : [-]
        s, growth over the volume as it lay, >= 0
    
    Returns
    -------
    [-]
        load factor
    
    Formula
    -------
    1 / (1 + s)
    
    Range
    -----
    any.
    
    Errors
    ------
    InputError `debris.swell` where below 0 or not a number
    
    Source
    ------
    equipment handbook table of swell, voids and load factor
    
    Verified by
    -----------
    tests/cpp/debris/test_published.cpp
    """
def loose_volume(volume: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], swell: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    The volume of dirt once it is loosened.
    
    Parameters
    ----------
    volume : [m3]
        as it lay, >= 0
    swell : [-]
        s, growth over the volume as it lay, >= 0
    
    Returns
    -------
    [m3]
        loose
    
    Formula
    -------
    V_loose = V (1 + s)
    
    Range
    -----
    any.
    
    Errors
    ------
    InputError `debris.volume`, `debris.swell` where below 0 or not a number
    
    Source
    ------
    definition; published examples: 10 yd3 and 30 % make 13 yd3
    
    Verified by
    -----------
    tests/cpp/debris/test_published.cpp
    """
def measured(inventory: Inventory) -> dict[str, typing.Any]:
    """
    Columns of what was measured beyond the records, the likely values in SI units.
    """
def minor_loss(flow: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], bore: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], loss_coefficient: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], density: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    What fittings cost in pressure.
    
    Parameters
    ----------
    flow : [m3/s]
        volume flow
    bore : [m]
        inside diameter to which K refers, > 0
    loss_coefficient : [-]
        K, sum over the fittings, >= 0
    density : [kg/m3]
        of the liquid, > 0
    
    Returns
    -------
    [Pa]
        pressure loss
    
    Formula
    -------
    p = K rho V^2 / 2
    
    Range
    -----
    full round pipes.
    
    Errors
    ------
    InputError `hydraulics.loss_coefficient`, `hydraulics.bore`, `hydraulics.density`
    where out of range
    
    Source
    ------
    definition of K
    
    Verified by
    -----------
    tests/cpp/hydraulics/test_friction.cpp
    """
def nearest_name(wrong: str, known: collections.abc.Sequence[str]) -> str:
    """
    The known name nearest to a wrong one, or empty text where none is near.
    
    Parameters
    ----------
    wrong : [text]
        what was given
    known : [text, n]
        the names that would be right
    
    Returns
    -------
    [text]
        one of `known`, or empty
    
    Formula
    -------
    least edit distance, first of equals, at most a third of the longer word
    
    Range
    -----
    any text.
    
    Errors
    ------
    none.
    
    Source
    ------
    common practice
    """
def nozzle_flow(bore: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], pressure: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], discharge_coefficient: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], density: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    How much water a nozzle lets through.
    
    Parameters
    ----------
    bore : [m]
        inside diameter of the tip, > 0
    pressure : [Pa]
        gauge pressure at the tip, >= 0
    discharge_coefficient : [-]
        c, > 0; about 0.95 to 1 for a smooth bore
    density : [kg/m3]
        of the liquid, > 0
    
    Returns
    -------
    [m3/s]
        volume flow
    
    Formula
    -------
    Q = c (pi / 4) D^2 sqrt(2 p / rho)
    
    Range
    -----
    turbulent jets in air.
    
    Errors
    ------
    InputError `hydraulics.bore`, `hydraulics.pressure`,
    `hydraulics.discharge_coefficient`, `hydraulics.density` where out of range
    
    Source
    ------
    Torricelli's law with a discharge coefficient; definition
    
    Verified by
    -----------
    tests/cpp/hydraulics/test_nozzle.cpp
    """
def nozzle_pressure(bore: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], flow: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], discharge_coefficient: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], density: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    Which pressure drives a flow through a nozzle.
    
    Parameters
    ----------
    bore : [m]
        inside diameter of the tip, > 0
    flow : [m3/s]
        volume flow, >= 0
    discharge_coefficient : [-]
        c, > 0
    density : [kg/m3]
        of the liquid, > 0
    
    Returns
    -------
    [Pa]
        gauge pressure at the tip
    
    Formula
    -------
    p = (rho / 2) (Q / (c (pi / 4) D^2))^2
    
    Range
    -----
    turbulent jets in air.
    
    Errors
    ------
    InputError `hydraulics.bore`, `hydraulics.flow`, `hydraulics.discharge_coefficient`,
    `hydraulics.density` where out of range
    
    Source
    ------
    nozzle_flow, solved for the pressure
    
    Verified by
    -----------
    tests/cpp/hydraulics/test_nozzle.cpp
    """
def nozzle_reaction(flow: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], pressure: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], density: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    How hard a jet of known flow pushes back on whoever holds the nozzle.
    
    Parameters
    ----------
    flow : [m3/s]
        volume flow, >= 0
    pressure : [Pa]
        gauge pressure at the tip, >= 0
    density : [kg/m3]
        of the liquid, > 0
    
    Returns
    -------
    [N]
        reaction along the jet; the force that parts a coupling is another, larger one
    
    Formula
    -------
    F = rho Q v, v = sqrt(2 p / rho)
    
    Range
    -----
    jets along the axis; wide sprays push less. Published hold limits and the employer's
    rules decide how many people hold a line, not this figure.
    
    Errors
    ------
    InputError `hydraulics.flow`, `hydraulics.pressure`, `hydraulics.density`
    where out of range
    
    Source
    ------
    momentum balance
    
    Verified by
    -----------
    tests/cpp/hydraulics/test_nozzle.cpp
    """
def nozzle_wear(flow: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], new_flow: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    How far a nozzle has worn, from what it lets through.
    
    Parameters
    ----------
    flow : [m3/s]
        Q, measured, > 0
    new_flow : [m3/s]
        Q0, of a new nozzle at the same pressure, > 0
    
    Returns
    -------
    [-]
        share by which the bore has grown; negative: partly plugged
    
    Formula
    -------
    w = sqrt(Q / Q0) - 1
    
    Range
    -----
    flows at one pressure.
    
    Errors
    ------
    InputError `hydraulics.flow` where one of them is not above 0
    
    Source
    ------
    nozzle_flow at one pressure
    
    Verified by
    -----------
    tests/cpp/hydraulics/test_nozzle_bar.cpp
    """
def npsh_available(surface_pressure: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], vapour_pressure: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], suction_lift: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], suction_loss: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], density: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    How much head is left at a pump's inlet before the water boils there.
    
    Parameters
    ----------
    surface_pressure : [Pa]
        absolute, on the water drawn from
    vapour_pressure : [Pa]
        absolute, of the water at its temperature
    suction_lift : [m]
        pump inlet above the water, negative below
    suction_loss : [m]
        head lost in strainer and suction hose, >= 0
    density : [kg/m3]
        of the liquid, > 0
    
    Returns
    -------
    [m]
        net positive suction head available; below zero no water arrives
    
    Formula
    -------
    NPSHa = (p - pv) / (rho g) - lift - loss
    
    Range
    -----
    any. The velocity head at the inlet is part of the pressure there and not subtracted.
    
    Errors
    ------
    InputError `hydraulics.suction_loss`, `hydraulics.density` where out of range
    
    Source
    ------
    definition, as in Crane TP-410, example 7-32
    
    Verified by
    -----------
    tests/cpp/hydraulics/test_pump.cpp
    """
def one_lane_capacity(length: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], speed: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], green: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], saturation: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    How much traffic of one direction gets through where both take turns in one lane.
    
    Parameters
    ----------
    length : [m]
        between the two places where traffic waits, >= 0
    speed : [m/s]
        at which vehicles pass, > 0
    green : [s]
        that each direction gets, > 0
    saturation : [each/s]
        vehicles that leave a waiting line while it has green, > 0
    
    Returns
    -------
    [each/s]
        vehicles a direction
    
    Formula
    -------
    capacity = saturation x green / cycle
    
    Range
    -----
    as `one_lane_cycle`; a demand close to it already queues.
    
    Errors
    ------
    those of `one_lane_cycle`; InputError `closure.saturation` where out of range
    
    Source
    ------
    common practice
    
    Verified by
    -----------
    tests/cpp/closure/test_capacity.cpp
    """
def one_lane_cycle(length: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], speed: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], green: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    How long one round lasts where both directions take turns in one lane.
    
    Parameters
    ----------
    length : [m]
        between the two places where traffic waits, >= 0
    speed : [m/s]
        at which vehicles pass, > 0
    green : [s]
        that each direction gets, > 0
    
    Returns
    -------
    [s]
        from a direction's green to its next
    
    Formula
    -------
    cycle = 2 (green + length / speed): each direction's green, then the lane runs empty
    
    Range
    -----
    flaggers or signals with the same green both ways; start-up losses are not counted.
    
    Errors
    ------
    InputError `closure.length`, `closure.speed`, `closure.green` where out of range
    
    Source
    ------
    common practice
    
    Verified by
    -----------
    tests/cpp/closure/test_capacity.cpp
    """
def parse_as(text: str, like: str, path: str) -> float:
    """
    The SI value of a text, of the dimension that `like` is a unit of.
    """
def parse_quantity(text: str, path: str) -> tuple[float, str, str]:
    """
    SI value, SI unit and currency of a text.
    """
def payload(gross_limit: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], empty_mass: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], water_aboard: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], water_density: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    How much debris a truck may carry: fresh water left aboard shares its legal weight.
    
    Parameters
    ----------
    gross_limit : [kg]
        legal weight, loaded
    empty_mass : [kg]
        weight, empty
    water_aboard : [m3]
        fresh water left aboard when dumping
    water_density : [kg/m3]
        of that water
    
    Returns
    -------
    [kg]
        payload; not positive where the truck may carry nothing
    
    Formula
    -------
    m = gross limit - empty mass - V density
    
    Range
    -----
    any.
    
    Errors
    ------
    none; the estimate refuses a payload that is not positive.
    
    Source
    ------
    common practice (62,000 lb gross, 42,000 lb empty, 5,000 lb of water: 15,000 lb)
    
    Verified by
    -----------
    tests/cpp/debris/test_loads.cpp
    """
def pick_up_velocity(size: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], grain_density: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], density: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], viscosity: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], bore: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    Which air speed lifts grains from a resting layer.
    
    Parameters
    ----------
    size : [m]
        d, diameter of the grains, > 0
    grain_density : [kg/m3]
        rho_s, of the solid itself, > 0
    density : [kg/m3]
        rho, of the air, > 0
    viscosity : [Pa s]
        mu, of the air, > 0
    bore : [m]
        D, inside diameter of the hose, > 0
    
    Returns
    -------
    [m/s]
        pick-up velocity
    
    Formula
    -------
    U / sqrt(g d) = 0.0428 Re^0.175 (D / d)^0.25 (rho_s / rho)^0.75, Re = rho U d / mu,
    solved for U
    
    Range
    -----
    coarse dry grains, Re about 25 to 5,000; wet dirt sticks and takes more.
    
    Errors
    ------
    InputError `hydraulics.size`, `hydraulics.grain_density`, `hydraulics.density`,
    `hydraulics.viscosity`, `hydraulics.bore` where out of range
    
    Source
    ------
    F. J. Cabrejos, G. E. Klinzing, Powder Technology 79 (1994) 173; constants from memory
    
    Verified by
    -----------
    tests/cpp/hydraulics/test_conveying.cpp
    """
def pipe_velocity(flow: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], bore: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    How fast water runs in a full pipe.
    
    Parameters
    ----------
    flow : [m3/s]
        volume flow
    bore : [m]
        inside diameter, > 0
    
    Returns
    -------
    [m/s]
        mean velocity
    
    Formula
    -------
    V = Q / ((pi / 4) D^2)
    
    Range
    -----
    full round pipes.
    
    Errors
    ------
    InputError `hydraulics.bore` where bore <= 0
    
    Source
    ------
    definition
    
    Verified by
    -----------
    tests/cpp/hydraulics/test_friction.cpp
    """
def published_coefficients(units: str) -> list[tuple[str, str, typing.Any]]:
    """
    A hose coefficient as somebody printed or implied it.
    """
def published_densities(units: str) -> list[tuple[str, str, typing.Any]]:
    """
    A figure as somebody printed it: a bulk density, or dirt by length of curb.
    """
def rated_nozzle_flow(rated_flow: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], rated_pressure: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], pressure: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    How much a nozzle lets through that is known by its flow at a rating pressure.
    
    Parameters
    ----------
    rated_flow : [m3/s]
        flow at the rating pressure, > 0
    rated_pressure : [Pa]
        rating pressure, > 0
    pressure : [Pa]
        gauge pressure at the nozzle, >= 0
    
    Returns
    -------
    [m3/s]
        volume flow
    
    Formula
    -------
    Q = Qr sqrt(p / pr)
    
    Range
    -----
    fixed orifices; not for nozzles that hold their pressure or their flow.
    
    Errors
    ------
    InputError `hydraulics.flow`, `hydraulics.rated_pressure`, `hydraulics.pressure`
    where out of range
    
    Source
    ------
    nozzle_flow at two pressures; nozzle size numbers at 4,000 psi are common practice
    
    Verified by
    -----------
    tests/cpp/hydraulics/test_nozzle.cpp
    """
def read_elements(path: str) -> ElementRecords:
    """
    Reads an element file.
    
    Parameters
    ----------
    path : [text]
        the file
    
    Returns
    -------
    [-]
        records, rejected records and doubts
    
    Range
    -----
    as for text in memory.
    
    Errors
    ------
    as for text in memory; FileError `inventory.open` where it cannot be read.
    
    Source
    ------
    as for text in memory
    
    Verified by
    -----------
    tests/cpp/inventory/test_elements.cpp
    """
def read_inventory(path: str, progress: typing.Any) -> Inventory:
    """
    Reads an inventory in whatever form its first bytes show: a list of structures (JSON), a table
    of structures (a header with `structure_id`), or the national inventory, old or of 2022 (JSON).
    
    Parameters
    ----------
    path : [text]
        the file
    progress : [-]
        told how far the reading of a national inventory is; may be empty
    
    Returns
    -------
    [-]
        structures, rejected records and doubts
    
    Range
    -----
    as of each form.
    
    Errors
    ------
    as of each form; FileError `inventory.open` where the file cannot be read.
    
    Source
    ------
    own convention
    
    Verified by
    -----------
    tests/cpp/json/test_structure_table.cpp
    """
def read_structure_table(name: str, headers: collections.abc.Sequence[str], rows: collections.abc.Sequence[tuple[typing.SupportsInt | typing.SupportsIndex, collections.abc.Sequence[str]]]) -> Inventory:
    """
    Reads a table of structures.
    
    Parameters
    ----------
    name : [text]
        what to call the table in errors
    headers : [text, n]
        `structure_id`, `state` and any field of a record, with its unit:
        `length_m`, `length_ft` or `length [ft]`; and any key or short name of an input:
        `column.height [ft]`, `drain_count`
    rows : [-, m]
        numbers in the unit of the header, or text with a unit of its own
    
    Returns
    -------
    [-]
        the structures; rows that are none are rejected, cells that cannot be used are
        doubts, both with line and reason
    
    Range
    -----
    UTF-8; numbers as `parse_quantity` takes them.
    
    Errors
    ------
    FileError `structures.header` without a column `structure_id`, or with one twice;
    UnknownNameError `schema.key` for a header, with the nearest key; UnitError of the unit part.
    
    Source
    ------
    own convention
    
    Verified by
    -----------
    tests/cpp/json/test_structure_table.cpp
    """
def reynolds(flow: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], bore: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], kinematic_viscosity: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    How inertia and viscosity compare in a pipe.
    
    Parameters
    ----------
    flow : [m3/s]
        volume flow, >= 0
    bore : [m]
        inside diameter, > 0
    kinematic_viscosity : [m2/s]
        of the liquid, > 0
    
    Returns
    -------
    [-]
        Reynolds number
    
    Formula
    -------
    Re = V D / nu
    
    Range
    -----
    full round pipes.
    
    Errors
    ------
    InputError `hydraulics.flow`, `hydraulics.bore`, `hydraulics.kinematic_viscosity`
    where out of range
    
    Source
    ------
    definition
    
    Verified by
    -----------
    tests/cpp/hydraulics/test_friction.cpp
    """
def round_pit_volume(diameter: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], depth: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    The volume of dirt in a round pit or a length of downspout.
    
    Parameters
    ----------
    diameter : [m]
        D, inside, >= 0
    depth : [m]
        d, of the dirt, >= 0
    
    Returns
    -------
    [m3]
        volume
    
    Formula
    -------
    V = pi / 4 D^2 d
    
    Range
    -----
    upright walls.
    
    Errors
    ------
    InputError `debris.diameter`, `debris.depth` where below 0 or not a number
    
    Source
    ------
    geometry
    
    Verified by
    -----------
    tests/cpp/debris/test_tank.cpp
    """
def rules() -> dict[str, typing.Any]:
    """
    Every rule, in the order of the input schema, the quantities, then the site [-, n].
    """
def saltation_velocity(solids: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], size: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], density: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], bore: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    Below which air speed solids settle in a level hose.
    
    Parameters
    ----------
    solids : [kg/s]
        M, mass of solids carried, > 0
    size : [m]
        d, diameter of the grains, > 0
    density : [kg/m3]
        rho, of the air, > 0
    bore : [m]
        D, inside diameter of the hose, > 0
    
    Returns
    -------
    [m/s]
        saltation velocity
    
    Formula
    -------
    V = (4 M 10^a g^(b / 2) D^(b / 2 - 2) / (pi rho))^(1 / (b + 1)),
    a = 1440 d + 1.96, b = 1100 d + 2.5, d in m
    
    Range
    -----
    grains to a few millimetres; the exponents run away above.
    
    Errors
    ------
    InputError `hydraulics.solids`, `hydraulics.size`, `hydraulics.density`,
    `hydraulics.bore` where out of range
    
    Source
    ------
    F. Rizk (1973), as printed in the documentation of the fluids library after M. Rhodes,
    Introduction to Particle Technology
    
    Verified by
    -----------
    tests/cpp/hydraulics/test_conveying.cpp
    """
def schedule(estimate: Estimate, air: collections.abc.Sequence[tuple[str, typing.SupportsFloat | typing.SupportsIndex, bool]]) -> Schedule:
    """
    When the work of one structure can be done. Notices run side by side from the day of asking;
    they and lost days are dates, not hours: they change no cost.
    
    Parameters
    ----------
    estimate : [-]
        an estimate
    air : [K]
        of the days on which it is known
    
    Returns
    -------
    [-]
        notices, shifts, days; no days where the job has no day of asking
    
    Formula
    -------
    earliest = the day of asking + the longest usual time of the notices that apply
    
    Range
    -----
    one shift a day, the parts of shifts that an outing shares rounded up.
    
    Errors
    ------
    InputError `calendar.closed` where three years do not hold the shifts.
    
    Source
    ------
    common practice; each notice names its own
    
    Verified by
    -----------
    tests/cpp/estimate/test_schedule.cpp
    """
def shaft_power(pressure: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], flow: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], efficiency: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    What a drive has to give for it.
    
    Parameters
    ----------
    pressure : [Pa]
        gained between inlet and outlet
    flow : [m3/s]
        volume flow
    efficiency : [-]
        hydraulic power over shaft power, > 0
    
    Returns
    -------
    [W]
        shaft power
    
    Formula
    -------
    P = p Q / efficiency
    
    Range
    -----
    efficiency above 0, at most 1.
    
    Errors
    ------
    InputError `hydraulics.efficiency` where it is not above 0
    
    Source
    ------
    definition
    
    Verified by
    -----------
    tests/cpp/hydraulics/test_pump.cpp
    """
def shortfalls(estimate: Estimate) -> list[dict[str, typing.Any]]:
    """
    The methods at work whose nozzle has less flow or pressure than cleans, with what mends it: a
    larger hose, a shorter lay, another tip, a higher pump pressure, the truck on the deck. Every
    remedy is one change alone, priced with the rest as it is.
    
    Parameters
    ----------
    estimate : [-]
        an estimate
    
    Returns
    -------
    [-, n]
        none where every method at work has enough
    
    Range
    -----
    methods with a need in the job; hoses of the trade's bores up to 3 in; half, a quarter and
    three quarters of the lay; pump pressures up to twice the one given.
    
    Errors
    ------
    none.
    
    Source
    ------
    each need names its own; own convention
    
    Verified by
    -----------
    tests/cpp/estimate/test_remedies.cpp
    """
def shown_unit(like: str, units: str) -> str:
    """
    The unit in which a dimension is shown: us, metric or si.
    """
def sign_spacing(road: str, edition: str) -> tuple[float, float, float]:
    """
    How far apart the advance warning signs stand at least.
    
    Parameters
    ----------
    road : [-]
        road class
    edition : [-]
        of the manual
    
    Returns
    -------
    [m]
        A, B and C
    
    Formula
    -------
    by table. A class that the edition does not know takes the spacing that its fastest
    traffic has there: "urban over 40 mph" of 2009 is 350 ft in 2023, "urban 30 mph" of 2023 is the
    250 ft of "over 25 to 40 mph" in 2009
    
    Range
    -----
    guidance, to be adjusted to the site. The national figures are the same in both editions.
    
    Errors
    ------
    none.
    
    Source
    ------
    Manual on Uniform Traffic Control Devices, 2009 edition, table 6C-1, and 11th edition,
    table 6B-1 (from memory; they agree with the state tables); state classes: California
    2014, table 6H-3, and 2026, table 6B-1
    
    Verified by
    -----------
    tests/cpp/closure/test_signs.cpp
    """
def smooth_bore_reaction(bore: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], pressure: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], discharge_coefficient: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    How hard a smooth bore pushes back, from its bore alone.
    
    Parameters
    ----------
    bore : [m]
        inside diameter of the tip, > 0
    pressure : [Pa]
        gauge pressure at the tip, >= 0
    discharge_coefficient : [-]
        c, > 0; 1 gives the usual table value
    
    Returns
    -------
    [N]
        reaction along the jet
    
    Formula
    -------
    F = 2 c (pi / 4) D^2 p
    
    Range
    -----
    as nozzle_reaction, of which this is the flow of the bore; the density cancels.
    
    Errors
    ------
    InputError `hydraulics.bore`, `hydraulics.pressure`,
    `hydraulics.discharge_coefficient` where out of range
    
    Source
    ------
    momentum balance
    
    Verified by
    -----------
    tests/cpp/hydraulics/test_nozzle.cpp
    """
def stagnation_pressure(velocity: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], density: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    How hard a jet presses where it is stopped.
    
    Parameters
    ----------
    velocity : [m/s]
        of the jet, >= 0
    density : [kg/m3]
        of the liquid, > 0
    
    Returns
    -------
    [Pa]
        stagnation pressure at the middle of the jet, that of the tip at no stand-off
    
    Formula
    -------
    p = rho v^2 / 2
    
    Range
    -----
    a whole jet that meets the surface squarely; drops of spray hit harder for microseconds.
    
    Errors
    ------
    InputError `hydraulics.velocity`, `hydraulics.density` where out of range
    
    Source
    ------
    Bernoulli's equation
    
    Verified by
    -----------
    tests/cpp/hydraulics/test_jet.cpp
    """
def standard_atmosphere(altitude: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    How hard the air presses at an altitude.
    
    Parameters
    ----------
    altitude : [m]
        above sea level (geopotential; 0.1 % less than geometric at 5 km)
    
    Returns
    -------
    [Pa]
        absolute pressure of the standard atmosphere; weather moves it by 3 %
    
    Formula
    -------
    p = 101325 Pa (1 - L h / T0)^(g M / (R L)), T0 = 288.15 K, L = 6.5 K/km,
    M = 28.9644 kg/kmol, R = 8314.32 J/(kmol K)
    
    Range
    -----
    -500 to 11,000 m.
    
    Errors
    ------
    InputError `hydraulics.altitude` outside
    
    Source
    ------
    U.S. Standard Atmosphere, 1976 (NOAA-S/T 76-1562), equation 33a, table 4
    
    Verified by
    -----------
    tests/cpp/hydraulics/test_pump.cpp
    """
def static_pressure(rise: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], density: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    What a height costs in pressure.
    
    Parameters
    ----------
    rise : [m]
        height gained, negative going down
    density : [kg/m3]
        of the liquid, > 0
    
    Returns
    -------
    [Pa]
        pressure, negative going down
    
    Formula
    -------
    p = rho g z, g = 9.80665 m/s2
    
    Range
    -----
    any.
    
    Errors
    ------
    InputError `hydraulics.density` where density <= 0
    
    Source
    ------
    hydrostatics; g of the 3rd CGPM (1901)
    
    Verified by
    -----------
    tests/cpp/hydraulics/test_friction.cpp
    """
def street_loads(units: str) -> list[tuple[str, str, typing.Any]]:
    """
    Street dirt as it was measured.
    """
def strip_mass(length: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], line_mass: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    The mass of dirt along a gutter or another strip, from its mass for each unit of length.
    
    Parameters
    ----------
    length : [m]
        length of the strip, >= 0
    line_mass : [kg/m]
        dirt for each unit of length, >= 0
    
    Returns
    -------
    [kg]
        mass
    
    Formula
    -------
    m = L m'
    
    Range
    -----
    any.
    
    Errors
    ------
    InputError `debris.length`, `debris.line_mass` where below 0 or not a number
    
    Source
    ------
    definition
    
    Verified by
    -----------
    tests/cpp/debris/test_published.cpp
    """
def strip_volume(length: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], width: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], depth: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    The volume of dirt along a gutter or another strip.
    
    Parameters
    ----------
    length : [m]
        length of the strip, >= 0
    width : [m]
        mean width of the build-up, >= 0
    depth : [m]
        mean depth of the build-up, >= 0
    
    Returns
    -------
    [m3]
        volume as it lies
    
    Formula
    -------
    V = L w d
    
    Range
    -----
    any.
    
    Errors
    ------
    InputError `debris.length`, `debris.width`, `debris.depth` where below 0 or not a number
    
    Source
    ------
    definition; worked against 1.5 ft x 0.25 in x 120 ft = 3.750 ft3 (common practice)
    
    Verified by
    -----------
    tests/cpp/debris/test_build_up.cpp
    """
def structure_headers(units: str) -> list[str]:
    """
    The headers of a table to fill in: who a structure is, its dimensions and codes, and what no
    record tells.
    
    Parameters
    ----------
    units : [-]
        the units that stand in the headers
    
    Returns
    -------
    [text, n]
        headers that `read_structure_table` reads
    
    Range
    -----
    every system.
    
    Errors
    ------
    none.
    
    Source
    ------
    own convention
    
    Verified by
    -----------
    tests/cpp/json/test_structure_table.cpp
    """
def structures_form() -> str:
    """
    A document of one structure to fill in: every key with null.
    
    Returns
    -------
    [text]
        a JSON document that `read_structures` reads once the number is filled in
    
    Range
    -----
    the values state their unit.
    
    Errors
    ------
    none.
    
    Source
    ------
    own convention
    
    Verified by
    -----------
    tests/cpp/json/test_structures.cpp
    """
def structures_schema() -> str:
    """
    The JSON Schema of a list of structures, built from the tables of keys that the reader uses.
    
    Returns
    -------
    [text]
        a JSON Schema, draft 2020-12
    
    Range
    -----
    it checks keys, words and the shape of values; units and bounds are checked where a
    document is read.
    
    Errors
    ------
    none.
    
    Source
    ------
    JSON Schema, draft 2020-12, json-schema.org/draft/2020-12
    
    Verified by
    -----------
    tests/cpp/json/test_structures.cpp, tests/python/test_structures.py
    """
def swell_voids(swell: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    The share of loosened dirt that is new voids.
    
    Parameters
    ----------
    swell : [-]
        s, growth over the volume as it lay, >= 0
    
    Returns
    -------
    [-]
        voids over loose volume
    
    Formula
    -------
    s / (1 + s)
    
    Range
    -----
    any.
    
    Errors
    ------
    InputError `debris.swell` where below 0 or not a number
    
    Source
    ------
    equipment handbook table of swell, voids and load factor
    
    Verified by
    -----------
    tests/cpp/debris/test_published.cpp
    """
def take_off(inventory: Inventory, threads: typing.SupportsInt | typing.SupportsIndex, progress: typing.Any, ranges: bool, units: str) -> dict[str, typing.Any]:
    """
    Takes off a list of structures. A structure that is no bridge holds nothing to wash; only its
    deck area is told.
    
    Parameters
    ----------
    structures : [-, n]
        the records
    threads : [-]
        how many; 0 for as many as the machine has
    progress : [-]
        told how far the run is; may be empty
    ranges : [-]
        none for the values alone, some twenty times as fast
    
    Returns
    -------
    [SI, columns x n]
        the table
    
    Range
    -----
    any list. The range comes from 64 seeded draws of the uncertain dimensions.
    
    Errors
    ------
    UnknownNameError `schema.key` where a measured value has an unknown key; Interrupted
    `estimate.stopped`.
    
    Source
    ------
    the rules of the take-off
    
    Verified by
    -----------
    tests/cpp/estimate/test_take_off_table.cpp
    """
def take_off_columns(units: str) -> list[tuple[str, str]]:
    """
    Quantity and unit of every column, in the order of the table.
    """
def tangent_device_spacing(speed: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    How far apart channelizing devices stand at most along the buffer and the work space.
    
    Parameters
    ----------
    speed : [m/s]
        of the traffic, > 0
    
    Returns
    -------
    [m]
        spacing
    
    Formula
    -------
    2 ft for each mph
    
    Range
    -----
    tabulated from 20 to 75 mph.
    
    Errors
    ------
    InputError `closure.speed` where out of range
    
    Source
    ------
    Manual on Uniform Traffic Control Devices, 2009 edition, 6F.63; 11th, 6K.01
    
    Verified by
    -----------
    tests/cpp/closure/test_devices.cpp
    """
def tank_fill(room: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], payload: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], density: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> tuple[numpy.typing.NDArray[numpy.float64], numpy.typing.NDArray[numpy.float64]]:
    """
    What goes into a tank before it is full, or the truck at its legal weight.
    
    Parameters
    ----------
    truck : [m3, kg]
        room of the tank, and what the truck may carry
    density : [kg/m3]
        rho, of what is loaded, > 0
    
    Returns
    -------
    [m3, kg]
        one load
    
    Formula
    -------
    V = min(room, payload / rho), m = V rho
    
    Range
    -----
    any.
    
    Errors
    ------
    InputError `debris.room`, `debris.payload`, `debris.density` where not above 0
    
    Source
    ------
    definition; common practice: ten cubic yards of wet sand are too heavy for most trucks
    
    Verified by
    -----------
    tests/cpp/debris/test_tank.cpp
    """
def taper_device_spacing(speed: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], kind: str) -> numpy.typing.NDArray[numpy.float64]:
    """
    How far apart channelizing devices stand at most in a taper.
    
    Parameters
    ----------
    speed : [m/s]
        of the traffic, > 0
    kind : [-]
        what the taper asks of a driver
    
    Returns
    -------
    [m]
        spacing
    
    Formula
    -------
    1 ft for each mph; 20 ft in one-lane two-way and downstream tapers
    
    Range
    -----
    tabulated from 20 to 75 mph; curves, ramps and pedestrians ask for less.
    
    Errors
    ------
    InputError `closure.speed` where out of range
    
    Source
    ------
    Manual on Uniform Traffic Control Devices, 2009 edition, 6F.63 and 6C.08; 11th, 6K.01
    and 6B.08
    
    Verified by
    -----------
    tests/cpp/closure/test_devices.cpp
    """
def taper_length(speed: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], offset: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], kind: str) -> numpy.typing.NDArray[numpy.float64]:
    """
    The least length of a taper that moves traffic sideways by an offset.
    
    Parameters
    ----------
    speed : [m/s]
        of the traffic, > 0
    offset : [m]
        W, width taken from the traffic: a lane, or the shoulder, >= 0
    kind : [-]
        what the taper asks of a driver
    
    Returns
    -------
    [m]
        length along the road, not rounded
    
    Formula
    -------
    L = W S^2 / 60 up to 40 mph, L = W S above (S in mph; L and W in the same unit);
    merging L, shifting L / 2, shoulder L / 3; one-lane two-way and downstream 100 ft, the longest
    of the 50 to 100 ft allowed, whatever speed and offset
    
    Range
    -----
    tabulated from 20 to 75 mph. Between 40 and 45 mph no formula is published; the longer
    of the two, W S, is used as the safe reading. At 40 mph the length jumps by a half.
    
    Errors
    ------
    InputError `closure.speed`, `closure.offset` where out of range
    
    Source
    ------
    Manual on Uniform Traffic Control Devices, 2009 edition, tables 6C-3 and 6C-4; 11th,
    6B-3 and 6B-4. The shoulder taper is L / 3 in the text and 0.33 L in the table.
    
    Verified by
    -----------
    tests/cpp/closure/test_taper.cpp
    """
def terminal_velocity(size: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], grain_density: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], density: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], viscosity: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    How fast a grain falls in still air, which rising air must exceed to carry it.
    
    Parameters
    ----------
    size : [m]
        d, diameter of the grain, > 0
    grain_density : [kg/m3]
        rho_s, of the solid itself, above the air's
    density : [kg/m3]
        rho, of the air, > 0
    viscosity : [Pa s]
        of the air, > 0
    
    Returns
    -------
    [m/s]
        terminal velocity
    
    Formula
    -------
    (pi / 6) d^3 (rho_s - rho) g = Cd (pi / 8) d^2 rho v^2,
    Cd = 24 / Re (1 + 0.1806 Re^0.6459) + 0.4251 / (1 + 6880.95 / Re)
    
    Range
    -----
    spheres, Re below 260,000; leaves and flakes fall more slowly. The weight grows with the
    drag without a gap, so that there is one answer, found by halving a bracket.
    
    Errors
    ------
    InputError `hydraulics.size`, `hydraulics.grain_density`, `hydraulics.density`,
    `hydraulics.viscosity` where out of range
    
    Source
    ------
    A. Haider, O. Levenspiel, Powder Technology 58 (1989) 63, for spheres, as printed in the
    documentation of the fluids library
    
    Verified by
    -----------
    tests/cpp/hydraulics/test_conveying.cpp, tests/python/test_vacuum.py
    """
def to_si(numbers: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], unit: str, like: str, path: str) -> numpy.typing.NDArray[numpy.float64]:
    """
    Numbers of a unit in SI, of the dimension that `like` is a unit of.
    """
def too_strong(estimate: Estimate) -> list[dict[str, typing.Any]]:
    """
    The methods at work whose tip pressure passes what a surface they wash bears.
    
    Parameters
    ----------
    estimate : [-]
        an estimate
    
    Returns
    -------
    [-, n]
        one for each method and surface; none where all are within the limits
    
    Range
    -----
    pressures at the tip; what reaches the surface falls with the stand-off, by no law that
    could be found.
    
    Errors
    ------
    none.
    
    Source
    ------
    each limit names its own
    
    Verified by
    -----------
    tests/cpp/estimate/test_remedies.cpp
    """
def transport_velocities() -> dict[str, typing.Any]:
    """
    Air speeds that are published as least for carrying a kind of dust through a duct.
    """
def trip_time(distance: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], speed: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], stop: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    The time of one trip there and back with a stop.
    
    Parameters
    ----------
    distance : [m]
        one way
    speed : [m/s]
        mean speed, > 0
    stop : [s]
        time at the far end
    
    Returns
    -------
    [s]
        time of a trip
    
    Formula
    -------
    t = 2 d / v + t_stop
    
    Range
    -----
    distance >= 0.
    
    Errors
    ------
    none; a speed of 0 gives infinity.
    
    Source
    ------
    definition
    
    Verified by
    -----------
    tests/cpp/work/test_operation_time.cpp
    """
def truck_loads(volume: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], mass: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], room: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], payload: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], shared: bool) -> numpy.typing.NDArray[numpy.float64]:
    """
    How many loads a truck makes of debris; one that may carry nothing is refused.
    
    Parameters
    ----------
    debris : [m3, kg]
        what is hauled, >= 0
    truck : [m3, kg]
        what the truck holds and may carry, > 0
    shared : [-]
        whether a load is filled up elsewhere, so that parts of one count
    
    Returns
    -------
    [each]
        loads, whole unless shared
    
    Formula
    -------
    as `loads`
    
    Range
    -----
    any.
    
    Errors
    ------
    InputError `debris.volume`, `debris.mass` where below 0, `debris.room`,
    `debris.payload` where not above 0
    
    Source
    ------
    definition
    
    Verified by
    -----------
    tests/cpp/debris/test_tank.cpp
    """
def unit_table() -> list[tuple[str, str, str, float, float, str]]:
    """
    Rows of name, aliases, SI unit, factor, offset and name in pint of every unit.
    """
def vacuum_air_flow(arguments: collections.abc.Sequence[typing.Annotated[numpy.typing.ArrayLike, numpy.float64]]) -> dict[str, typing.Any]:
    """
    How much air a blower draws through a hose.
    
    Parameters
    ----------
    blower : [-]
        volume flow [m3/s] and relief vacuum [Pa]
    hose : [-]
        bore, length, lift, roughness [m] and K
    ambient : [-]
        pressure [Pa] and temperature [K] of the air around
    
    Returns
    -------
    [-]
        vacuum at the blower, air speeds and free flow
    
    Formula
    -------
    pa^2 - p^2 = (f L / D + K + 1 + 2 ln(pa / p)) G^2 R T, the 1 for its acceleration,
    G = (Q / A) p / (R T);
    with the relief valve open p is known and G is sought
    
    Range
    -----
    isothermal flow of an ideal gas below half the speed of sound; the weight of the air in
    the lift does not count. The left side falls and the right side grows with p (and with
    G), so that there is one answer, kept in a bracket.
    
    Errors
    ------
    InputError `hydraulics.<field>` for a value out of range
    
    Source
    ------
    isothermal flow in a pipe, e.g. textbooks of gas dynamics (from memory)
    
    Verified by
    -----------
    tests/cpp/hydraulics/test_vacuum.cpp
    """
def vacuum_pick_up(arguments: collections.abc.Sequence[typing.Annotated[numpy.typing.ArrayLike, numpy.float64]]) -> dict[str, typing.Any]:
    """
    Whether dirt comes through a vacuum hose.
    
    Parameters
    ----------
    blower : [-]
        volume flow [m3/s] and relief vacuum [Pa]
    hose : [-]
        bore, length, lift, roughness [m] and K
    ambient : [-]
        pressure [Pa] and temperature [K] of the air around
    dirt : [-]
        size [m], grain density [kg/m3], rate [kg/s], least transport speed [m/s]
    
    Returns
    -------
    [-]
        speeds needed and there, and what keeps the dirt from coming
    
    Formula
    -------
    vacuum of the dirt p = M v / A + M g z / (A v), v air speed at the end
    
    Range
    -----
    thin suspensions: the dirt moves as fast as the air and does not slow it. Water in the
    dirt is not counted but as its mass. The rate that a crew reaches is common practice.
    
    Errors
    ------
    as vacuum_air_flow, terminal_velocity, saltation_velocity, pick_up_velocity
    
    Source
    ------
    momentum and weight of the solids as in textbooks of pneumatic conveying (from memory);
    rising air at twice the terminal velocity: common practice
    
    Verified by
    -----------
    tests/cpp/hydraulics/test_vacuum.cpp
    """
def velocity_pressure(flow: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], bore: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], density: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    Which pressure the velocity in a pipe is worth.
    
    Parameters
    ----------
    flow : [m3/s]
        volume flow
    bore : [m]
        inside diameter, > 0
    density : [kg/m3]
        of the liquid, > 0
    
    Returns
    -------
    [Pa]
        velocity pressure
    
    Formula
    -------
    p = rho V^2 / 2
    
    Range
    -----
    full round pipes.
    
    Errors
    ------
    InputError `hydraulics.bore`, `hydraulics.density` where out of range
    
    Source
    ------
    Bernoulli's equation
    
    Verified by
    -----------
    tests/cpp/hydraulics/test_nozzle.cpp
    """
def verdict_names() -> list[str]:
    """
    The words for whether a structure is washed as a bridge, in the order of their codes.
    """
def water_by_area(flow: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], width: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], travel_speed: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    How much water falls on an area when a nozzle passes over it once.
    
    Parameters
    ----------
    flow : [m3/s]
        volume flow, >= 0
    width : [m]
        w, of the strip, > 0
    travel_speed : [m/s]
        u, of the nozzle along the surface, > 0
    
    Returns
    -------
    [m]
        volume by area, m3/m2: 1 mm is 1 L/m2
    
    Formula
    -------
    h = Q / (w u)
    
    Range
    -----
    one pass without overlap.
    
    Errors
    ------
    InputError `hydraulics.flow`, `hydraulics.width`, `hydraulics.travel_speed`
    where out of range
    
    Source
    ------
    definition
    
    Verified by
    -----------
    tests/cpp/hydraulics/test_jet.cpp
    """
def water_density(temperature: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    How heavy water is.
    
    Parameters
    ----------
    temperature : [K]
        of the water
    
    Returns
    -------
    [kg/m3]
        density
    
    Formula
    -------
    rho = (999.83952 + 16.945176 t - 7.9870401e-3 t^2 - 46.170461e-6 t^3
    + 105.56302e-9 t^4 - 280.54253e-12 t^5) / (1 + 16.87985e-3 t), t in degC
    
    Range
    -----
    0 to 50 degC, 1 atm; air-free water. Within 0.01 % of IAPWS-95.
    
    Errors
    ------
    InputError `hydraulics.temperature` outside 0 to 50 degC
    
    Source
    ------
    G. S. Kell, J. Chem. Eng. Data 20 (1975) 97-105, equation for air-free water at 1 atm
    
    Verified by
    -----------
    tests/cpp/hydraulics/test_water.cpp
    """
def water_kinematic_viscosity(temperature: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    How fast momentum spreads in water.
    
    Parameters
    ----------
    temperature : [K]
        of the water
    
    Returns
    -------
    [m2/s]
        kinematic viscosity
    
    Formula
    -------
    nu = mu / rho
    
    Range
    -----
    0 to 50 degC, atmospheric pressure.
    
    Errors
    ------
    InputError `hydraulics.temperature` outside 0 to 50 degC
    
    Source
    ------
    definition
    
    Verified by
    -----------
    tests/cpp/hydraulics/test_water.cpp
    """
def water_vapour_pressure(temperature: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    The pressure at which water boils, which limits how high a pump can lift by suction.
    
    Parameters
    ----------
    temperature : [K]
        of the water
    
    Returns
    -------
    [Pa]
        absolute saturation pressure
    
    Formula
    -------
    ln(p / pc) = Tc / T (a1 x + a2 x^1.5 + a3 x^3 + a4 x^3.5 + a5 x^4 + a6 x^7.5),
    x = 1 - T / Tc
    
    Range
    -----
    0 to 50 degC. Within 0.01 % of IAPWS-95.
    
    Errors
    ------
    InputError `hydraulics.temperature` outside 0 to 50 degC
    
    Source
    ------
    W. Wagner, A. Pruss, J. Phys. Chem. Ref. Data 22 (1993) 783 (IAPWS SR1-86(1992))
    
    Verified by
    -----------
    tests/cpp/hydraulics/test_water.cpp
    """
def water_viscosity(temperature: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    How viscous water is.
    
    Parameters
    ----------
    temperature : [K]
        of the water
    
    Returns
    -------
    [Pa s]
        dynamic viscosity
    
    Formula
    -------
    mu = 1e-6 sum a_i (T / 300 K)^b_i
    
    Range
    -----
    0 to 50 degC, 0.1 MPa. Within 0.01 % of the IAPWS 2008 viscosity.
    
    Errors
    ------
    InputError `hydraulics.temperature` outside 0 to 50 degC
    
    Source
    ------
    IAPWS SR6-08 (2011), Properties of Liquid Water at 0.1 MPa, equation 7
    
    Verified by
    -----------
    tests/cpp/hydraulics/test_water.cpp
    """
def weight_governs(room: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], payload: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], density: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    Whether a truck is at its legal weight before its tank is full.
    
    Parameters
    ----------
    truck : [m3, kg]
        room of the tank, and what the truck may carry
    density : [kg/m3]
        rho, of what is loaded, > 0
    
    Returns
    -------
    [-]
        true where weight governs, false where volume does
    
    Formula
    -------
    rho room > payload
    
    Range
    -----
    any.
    
    Errors
    ------
    as `tank_fill`
    
    Source
    ------
    definition
    
    Verified by
    -----------
    tests/cpp/debris/test_tank.cpp
    """
def wet_density(dry: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], gain: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    The density of dirt that has taken up water without taking more room.
    
    Parameters
    ----------
    dry : [kg/m3]
        rho, bulk density dry, > 0
    gain : [-]
        g, mass of the water over that of the dry dirt, >= 0
    
    Returns
    -------
    [kg/m3]
        bulk density wet
    
    Formula
    -------
    rho (1 + g)
    
    Range
    -----
    gains of 0.2 (gravel) to 0.3 (sand) are published for a soaked load.
    
    Errors
    ------
    InputError `debris.density`, `debris.gain` where out of range
    
    Source
    ------
    definition
    
    Verified by
    -----------
    tests/cpp/debris/test_published.cpp
    """
def windrow(volume: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], length: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], repose: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], against_parapet: bool) -> tuple[numpy.typing.NDArray[numpy.float64], numpy.typing.NDArray[numpy.float64], numpy.typing.NDArray[numpy.float64]]:
    """
    How wide and high a windrow lies.
    
    Parameters
    ----------
    volume : [m3]
        dirt in it, loose, >= 0
    length : [m]
        of the windrow, > 0
    repose : [rad]
        angle of repose, > 0 and < pi / 2
    lean : [-]
        against a parapet or in the open
    
    Returns
    -------
    [m2, m, m]
        cross-section, width, height
    
    Formula
    -------
    A = V / L; against a parapet A = b h / 2 with h = b tan(phi): b = sqrt(2 A / tan(phi));
    in the open A = b h / 2 with h = b tan(phi) / 2: b = 2 sqrt(A / tan(phi))
    
    Range
    -----
    a straight windrow of even section; flowing mud has no angle of repose.
    
    Errors
    ------
    InputError `debris.volume`, `debris.length`, `debris.repose` where out of range
    
    Source
    ------
    geometry of a triangle
    
    Verified by
    -----------
    tests/cpp/debris/test_windrow.cpp
    """
def workbook(estimate: Estimate, keys: collections.abc.Sequence[str]) -> dict[str, typing.Any]:
    """
    Cells with live formulas for figures and cost lines, by pricing the structure with a recording.
    
    Categories stay as they are: which operations run, the closure, the shape. A change of what
    iterative solves or rules of inference rest on raises a check instead of a wrong figure.
    
    Parameters
    ----------
    estimate : [-]
        an estimate
    keys : [text, n]
        as for `figure_place_of`
    
    Returns
    -------
    [-]
        what the workbook is written from
    
    Range
    -----
    any estimate.
    
    Errors
    ------
    UnknownNameError `schema.key` naming the nearest known key.
    
    Source
    ------
    own convention
    
    Verified by
    -----------
    tests/cpp/estimate/test_workbook.cpp, tests/python/test_workbook.py
    """
def workbook_figures(estimate: Estimate) -> list[str]:
    """
    The figures that lead a workbook: quantities of work, water, dirt, hours, money, nozzles.
    
    Parameters
    ----------
    estimate : [-]
        an estimate
    
    Returns
    -------
    [text, n]
        keys of the figure schema
    
    Range
    -----
    any estimate.
    
    Errors
    ------
    none.
    
    Source
    ------
    own convention
    """
def worn_bore(bore: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], wear: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    The bore of a nozzle that has worn.
    
    Parameters
    ----------
    bore : [m]
        D0, when it was new, > 0
    wear : [-]
        w, share by which the bore has grown, >= 0: 0.05 lets 10 % more water through at
        the same pressure
    
    Returns
    -------
    [m]
        inside diameter
    
    Formula
    -------
    D = D0 (1 + w)
    
    Range
    -----
    wear that keeps the discharge coefficient; a ragged edge changes it.
    
    Errors
    ------
    InputError `hydraulics.bore`, `hydraulics.wear` where out of range
    
    Source
    ------
    definition
    
    Verified by
    -----------
    tests/cpp/hydraulics/test_nozzle_bar.cpp
    """
def write_estimate(estimate: Estimate, job: Job, stamp: collections.abc.Mapping[str, str]) -> str:
    """
    Writes an estimate whole.
    
    Parameters
    ----------
    estimate : [-]
        an estimate
    job : [-]
        the job it was priced under
    stamp : [text]
        version, date, hashes: what the figures rest on
    
    Returns
    -------
    [text]
        a JSON document; figures that are no numbers are null
    
    Range
    -----
    any estimate of a structure that `write_structure` accepts.
    
    Errors
    ------
    as `write_structure`.
    
    Source
    ------
    own convention
    
    Verified by
    -----------
    tests/cpp/json/test_estimate_document.cpp
    """
def write_structures(inventory: Inventory) -> str:
    """
    Writes a list of structures whole.
    
    Parameters
    ----------
    structures : [-, n]
        records
    
    Returns
    -------
    [text]
        a JSON document that `read_structures` reads back to the bit
    
    Range
    -----
    records that `write_structure` accepts.
    
    Errors
    ------
    as `write_structure`.
    
    Source
    ------
    own convention
    
    Verified by
    -----------
    tests/cpp/json/test_structures.cpp
    """
__version__: str = '0.1.0'
bucket_reaction: float = 111.20554038151249
one_person_reaction: float = 266.89329691563
