"""
The compiled core of scupper. Import `scupper` instead.
"""
from __future__ import annotations
import collections.abc
import numpy
import numpy.typing
import typing
__all__: list[str] = ['Alternatives', 'Bid', 'BidReview', 'BidSet', 'ClosurePlan', 'DailyCost', 'Derivation', 'DrawnTotal', 'ElementJoin', 'ElementRecords', 'Estimate', 'FormDoubt', 'FormMapping', 'HoseLay', 'Inventory', 'InventoryFile', 'ItemList', 'Job', 'JobLog', 'LaySolution', 'Learned', 'NOT_ASKED', 'OutingPlan', 'PayItems', 'Plan', 'Programme', 'Purchase', 'RateBook', 'RoadUsers', 'SavedEstimate', 'Schedule', 'Sensitivity', 'SheetRead', 'Simulation', 'SplitProblem', 'Structure', 'SurveyList', 'Swings', 'TrafficQueue', 'Year', 'advance_warning_may_be_omitted', 'advantage', 'advantage_at', 'affinity_flow', 'affinity_head', 'affinity_power', 'air_density', 'air_viscosity', 'annual_cost', 'available_time', 'average_investment', 'axle_group_limit', 'balanced_density', 'bar_flow', 'bar_pressure', 'basis_names', 'bid_with_time', 'blocks_shoulder', 'box_volume', 'break_even_time', 'bridge_formula', 'bucket_reaction', 'buffer_length', 'build_up_depth', 'build_ups', 'built_up_rate', 'capacity_before_queue', 'capital_recovery_factor', 'capped_tax', 'capped_tax_share', 'cash_flow', 'cash_flow_of_outings', 'chance_of', 'changed_figures', 'changed_inputs', 'clear_shoulder', 'closure_effort', 'closure_plan', 'closure_queue', 'closure_severity', 'closure_window', 'coil_critical_reynolds', 'coil_friction_factor', 'coil_loss', 'compare_ways', 'compound_amount_factor', 'conversion_differential', 'crossings', 'daily_cost', 'day_length', 'decanted', 'declining_balance', 'delay_cost', 'delivery_case', 'delivery_inputs', 'delivery_units', 'detour_cost', 'device_count', 'dirt_densities', 'discount_rate', 'discount_rates', 'disposal_by_load', 'disposal_by_mass', 'distributed', 'doubt_columns', 'drain_volume', 'drawn_advantages', 'economic_life', 'equipment_hour', 'equipment_times', 'equivalent_bore', 'error_message', 'escalated', 'estimate', 'estimate_accuracy', 'estimate_all', 'explain_ways', 'factor_loss', 'fan_width', 'first_round', 'fittings', 'format_quantity', 'friction_factor', 'friction_loss', 'from_si', 'fuel', 'girder_sections', 'gradient_present_worth_factor', 'gradient_series_factor', 'greatest_suction_lift', 'guess_mean', 'hard_to_hold', 'hash_text', 'hauled_water', 'hazen_williams_forms', 'hazen_williams_loss', 'head', 'heavy_vehicle_factor', 'hire', 'hose_coefficient_loss', 'hoses', 'hourly', 'hourly_demand', 'hourly_shares', 'hours_table', 'hydrant_water', 'hydraulic_power', 'implied_inflation', 'indices_of', 'inventory_notes', 'inventory_of', 'inventory_slice', 'jet_force', 'jet_velocity', 'job_keys', 'job_schema', 'join_bid_sheets', 'join_elements', 'kept_levels', 'key_listing', 'kind_by_record', 'known_columns', 'labour_hour', 'lay_unit', 'learn', 'leave_factor', 'legal_gross', 'linear_break_even', 'load_factor', 'log_columns', 'longest_window', 'loose_volume', 'measured', 'minor_loss', 'mobilization', 'nearest_name', 'net_present_value', 'nominal_rate', 'nozzle_flow', 'nozzle_pressure', 'nozzle_reaction', 'nozzle_wear', 'npsh_available', 'one_lane_capacity', 'one_lane_cycle', 'one_lane_speed', 'one_person_reaction', 'one_way_distance', 'optimal_green', 'overtime_base', 'overtime_premium', 'ownership_by_investment', 'ownership_by_recovery', 'ownership_names', 'parse_as', 'parse_quantity', 'passenger_car_demand', 'pay_items', 'pay_units', 'payload', 'permitted_hours', 'pick_up_velocity', 'pipe_velocity', 'plan_outings', 'present_worth', 'present_worth_factor', 'published_coefficients', 'published_densities', 'quantity_variation', 'queue_discharge', 'queue_length', 'rank_correlation', 'rate_book_of', 'rate_for_term', 'rate_parts', 'rated_nozzle_flow', 'read_bid_sheet', 'read_elements', 'read_inventory', 'read_structure_table', 'real_rate', 'repair', 'replicates_for', 'retainage', 'retained', 'reynolds', 'road_users', 'roll_ahead', 'round_pit_volume', 'rules', 'saltation_velocity', 'schedule', 'sensitivity', 'series_amount_factor', 'series_present_worth_factor', 'shaft_power', 'shift_plan', 'shortfalls', 'show_up_time', 'shown_unit', 'sign_spacing', 'simulate', 'sinking_fund_factor', 'slowing_delay', 'smooth_bore_reaction', 'stagnation_pressure', 'standard_atmosphere', 'standby', 'static_pressure', 'straight_line', 'street_loads', 'strip_mass', 'strip_volume', 'structure_columns', 'structure_headers', 'structures_form', 'structures_schema', 'sum_of_years', 'surroundings', 'survey_header', 'survey_list', 'swell_voids', 'swings', 'take_off', 'take_off_columns', 'tangent_device_spacing', 'tank_fill', 'taper_device_spacing', 'taper_length', 'terminal_velocity', 'time_value', 'to_si', 'too_strong', 'traffic_queue', 'transport_velocities', 'trip_time', 'truck_equivalent', 'truck_loads', 'turn_delay', 'two_part', 'tyres', 'unit_cost', 'unit_costs', 'unit_table', 'unpriced_surroundings', 'updated_fuel', 'usual_weights', 'vacuum_air_flow', 'vacuum_pick_up', 'varied_payment', 'velocity_pressure', 'verdict_names', 'washed_widths', 'water_by_area', 'water_density', 'water_kinematic_viscosity', 'water_vapour_pressure', 'water_viscosity', 'way_flip', 'way_sensitivity', 'week_pay', 'weight_governs', 'wet_density', 'windrow', 'work_zone_capacity', 'work_zone_speed', 'workbook', 'workbook_figures', 'worn_bore', 'write_estimate', 'write_structures', 'year_of']
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
class TrafficQueue:
    """
    A queue from its beginning on.
    """
    def steps(self) -> dict[str, typing.Any]:
        """
        What one stretch of time leaves.
        """
    @property
    def arrived(self) -> float:
        """
        [each] vehicles that came
        """
    @property
    def cleared(self) -> float | None:
        """
        [s] when the last queue was gone; none where some are left
        """
    @property
    def delay(self) -> float:
        """
        [each s] lost by all
        """
    @property
    def delayed(self) -> float:
        """
        [each] of them that had to wait
        """
    @property
    def left(self) -> float:
        """
        [each] still waiting at the end
        """
    @property
    def longest(self) -> float:
        """
        [each] greatest number waiting
        """
    @property
    def longest_at(self) -> float:
        """
        [s] when
        """
    @property
    def longest_delay(self) -> float:
        """
        [s] of one vehicle; of those left, until the end
        """
class ClosurePlan:
    """
    What a closure consists of.
    """
    def elements(self) -> dict[str, typing.Any]:
        """
        in the order in which a driver meets them
        """
    def places(self) -> dict[str, typing.Any]:
        """
        Where every sign, device, board, vehicle and flagger stands.
        
        Parameters
        ----------
        plan : [-]
            a lay-out
        
        Returns
        -------
        [m]
            places, devices as many as the plan counts
        
        Range
        -----
        any plan.
        
        Errors
        ------
        none.
        
        Source
        ------
        as `plan`
        
        Verified by
        -----------
        tests/cpp/closure/test_placing.cpp
        """
    def placing(self) -> dict[str, typing.Any]:
        """
        The order in which a closure goes up: the first sign that a driver meets first, of both
        directions; flaggers or the shadow vehicle; the arrow board, lit; then devices with the traffic.
        
        Parameters
        ----------
        plan : [-]
            a lay-out
        
        Returns
        -------
        [m, each]
            one entry a step
        
        Range
        -----
        any plan.
        
        Errors
        ------
        none.
        
        Source
        ------
        common practice; Manual on Uniform Traffic Control Devices, 2009 edition, 6G (from
        memory)
        
        Verified by
        -----------
        tests/cpp/closure/test_placing.cpp
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
    def taking(self) -> dict[str, typing.Any]:
        """
        The order in which a closure comes down: that of going up, reversed.
        
        Parameters
        ----------
        plan : [-]
            a lay-out
        
        Returns
        -------
        [m, each]
            one entry a step
        
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
        tests/cpp/closure/test_placing.cpp
        """
    @property
    def advance_signs(self) -> int:
        """
        [-] three an approach, on both sides if divided; off the road one
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
    def lane_width(self) -> float:
        """
        [m] > 0
        """
    @property
    def lanes_shown(self) -> int:
        """
        How many lanes a picture of the road shows.
        
        Parameters
        ----------
        plan : [-]
            a lay-out
        
        Returns
        -------
        [-]
            lanes
        
        Formula
        -------
        those of the record, but at least the closed ones and one more
        
        Range
        -----
        any plan.
        
        Errors
        ------
        none.
        
        Source
        ------
        own convention
        
        Verified by
        -----------
        tests/cpp/closure/test_placing.cpp
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
    def shoulder_width(self) -> float:
        """
        [m] paved shoulder on the closed side, >= 0
        """
    @property
    def taper(self) -> float:
        """
        [m] tapers before the work space, together
        """
class RateBook:
    """
    A dated, sourced collection of operations and values.
    """
    @staticmethod
    def read(text: str, name: str) -> RateBook:
        """
        Reads a rate book.
        
        Parameters
        ----------
        text : [text]
            a JSON document with `scupper_rates`, `operations`, `inputs`
        name : [text]
            what to call the document in errors
        beneath : [-]
            the book it will be laid over, whose operations it may give values for
        
        Returns
        -------
        [-]
            the rate book itself; its values are checked when a job with it is prepared
        
        Range
        -----
        UTF-8.
        
        Errors
        ------
        FileError `json.text` where it is no JSON; UnknownNameError `json.key` with the nearest
        key; InputError `json.type`, `json.version`; UnitError of the unit part.
        
        Source
        ------
        own convention
        
        Verified by
        -----------
        tests/cpp/json/test_documents.cpp
        """
    @staticmethod
    def shipped() -> RateBook:
        """
        The rate book that ships with the library [-].
        """
    def columns(self, units: str) -> dict[str, typing.Any]:
        """
        Columns of every value, parts of built-up rates too.
        """
    def merged(self, over: RateBook) -> RateBook:
        """
        One rate book over another: what the second says stands, what it does not say is the first's.
        
        Parameters
        ----------
        base : [-]
            the book beneath
        over : [-]
            the book on top; its name, version, date and source are those of the result
        
        Returns
        -------
        [-]
            the merged book; every value keeps its own origin
        
        Range
        -----
        books of one currency.
        
        Errors
        ------
        InputError `rates.currency` where they have two.
        
        Source
        ------
        own convention
        
        Verified by
        -----------
        tests/cpp/rates/test_rate_book.cpp
        """
    def write(self, units: str) -> str:
        """
        Writes a rate book whole in the trade's units, so that reading it back gives the same book.
        
        Parameters
        ----------
        book : [-]
            a rate book
        beneath : [-]
            the book it lies over, as for `read_rate_book`
        units : [text]
            "us", "metric" or "si"
        
        Returns
        -------
        [text]
            a JSON document
        
        Range
        -----
        any rate book.
        
        Errors
        ------
        UnknownNameError `unit.system`.
        
        Source
        ------
        own convention
        
        Verified by
        -----------
        tests/cpp/json/test_rate_book.cpp
        """
    @property
    def beneath(self) -> list[str]:
        """
        [text, n] titles of the books it was laid over
        """
    @property
    def currency(self) -> str:
        """
        [text] three-letter code of every amount
        """
    @property
    def date(self) -> str:
        """
        ISO 8601
        """
    @property
    def name(self) -> str:
        """
        [text] what people call the book
        """
    @property
    def note(self) -> str:
        """
        [text] free text
        """
    @property
    def source(self) -> str:
        """
        [text] where its values come from unless they say so
        """
    @property
    def title(self) -> str:
        """
        What a rate book is cited as.
        
        Parameters
        ----------
        book : [-]
            the book
        
        Returns
        -------
        [text]
            "county rates, version 3, 2027-01"
        
        Range
        -----
        any.
        
        Errors
        ------
        none.
        
        Source
        ------
        own convention
        
        Verified by
        -----------
        tests/cpp/rates/test_rate_book.cpp
        """
    @property
    def version(self) -> str:
        """
        [text] edition of the book; may be empty
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
    @staticmethod
    def read_on(text: str, name: str, book: RateBook) -> Job:
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
    def with_means(self) -> Job:
        """
        A job with what its ways and its closure need besides: machines, people, charges and their prices
        of those of its alternatives that choose nothing but ways and closure, and choose as it does.
        
        Parameters
        ----------
        job : [-]
            the job
        
        Returns
        -------
        [-]
            the job with what was missing; what it has stays as it is
        
        Range
        -----
        any.
        
        Errors
        ------
        none.
        
        Source
        ------
        own convention
        
        Verified by
        -----------
        tests/cpp/job/test_alternatives.cpp
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
    def with_rates(self, book: RateBook) -> Job:
        """
        A job with the values of a rate book in place of its own.
        
        Parameters
        ----------
        job : [-]
            a job
        book : [-]
            a rate book; what it says of people and equipment that the job does not have is
            left out
        
        Returns
        -------
        [-]
            the changed job; it names the book among those it rests on
        
        Range
        -----
        a book in the currency of the job.
        
        Errors
        ------
        InputError `rates.currency` where they have two.
        
        Source
        ------
        own convention
        
        Verified by
        -----------
        tests/python/test_rates.py
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
        any keys of the job's inputs; empty cells and those not asked change nothing.
        
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
    def frequency(self) -> dict[str, float]:
        """
        component to times a year; one not named: once
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
    def rate_books(self) -> list[str]:
        """
        [text, n] name, version and date of what it rests on
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
    def html(self, depth: typing.SupportsInt | typing.SupportsIndex | None = None) -> str:
        """
        The explanation as nested HTML lists, both arms of a choice shown, the taken one marked. All
        of it is there, a step once; what lies deeper than a depth is closed until it is clicked.
        
        Parameters
        ----------
        write : [text]
            turns SI values into text for people
        depth : [-]
            levels below the figure that are open
        
        Returns
        -------
        [text]
            an HTML fragment; every name is escaped
        
        Range
        -----
        any derivation.
        
        Errors
        ------
        none.
        
        Source
        ------
        own convention
        
        Verified by
        -----------
        tests/cpp/traced/test_derivation.cpp
        """
    def text(self, depth: typing.SupportsInt | typing.SupportsIndex | None = None) -> str:
        """
        The explanation as indented text. A step stands once: where it is fewest levels below the
        figure. The last line says how many steps lie deeper than what is shown.
        
        Parameters
        ----------
        write : [text]
            turns SI values into text for people
        depth : [-]
            levels below the figure
        
        Returns
        -------
        [text]
            one line a step
        
        Range
        -----
        any derivation.
        
        Errors
        ------
        none.
        
        Source
        ------
        own convention
        
        Verified by
        -----------
        tests/cpp/traced/test_derivation.cpp
        """
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
    def closure_plans(self) -> list[tuple[str, ClosurePlan]]:
        """
        The lay-outs of all stages that have a closure, as `closure_plan` gives that of the first.
        
        Parameters
        ----------
        estimate : [-]
            an estimate
        
        Returns
        -------
        [-, n]
            in the order of the stages
        
        Range
        -----
        any estimate; none without a closure.
        
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
    def explain(self, key: str, depth: typing.SupportsInt | typing.SupportsIndex | None = None) -> Derivation:
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
class Alternatives:
    """
    An alternative made ready, or why it has no price whatever the structure.
    """
    def __init__(self, job: Job) -> None:
        """
        Makes every alternative of a job ready.
        
        Parameters
        ----------
        job : [-]
            the job
        
        Returns
        -------
        [-, n]
            in the order of the job; one that cannot be priced says why
        
        Range
        -----
        a job that can be made ready itself.
        
        Errors
        ------
        those of `make_plan` for the job as it stands.
        
        Source
        ------
        own convention
        
        Verified by
        -----------
        tests/cpp/estimate/test_alternatives.cpp
        """
    def compare(self, structure: Structure, weights: collections.abc.Mapping[str, typing.SupportsFloat | typing.SupportsIndex]) -> list[tuple[str, str, typing.Any]]:
        """
        All alternatives at one structure. None is left out: one that cannot be done, or has no price,
        says why.
        
        Parameters
        ----------
        structure : [-]
            the record
        alternatives : [-, n]
            made ready
        weights : [-]
            by criterion, each at least 0, one above
        
        Returns
        -------
        [-, n]
            one row for each, in the same order
        
        Formula
        -------
        score = sum over criteria of weight / sum of weights x amount / mean of the amounts of
        the feasible ones with a price and the same question; the least is recommended, of equal ones the
        first. A criterion of which nobody has any, or that cannot be figured for one of them, counts
        nothing.
        
        Range
        -----
        any structure. Whether it can be done rests on the record; the site governs.
        
        Errors
        ------
        InputError `alternatives.weights` where a weight is below 0, no number, or all are 0;
        those of `resolve`.
        
        Source
        ------
        own convention; each alternative names its own
        
        Verified by
        -----------
        tests/cpp/estimate/test_alternatives.cpp
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
class RoadUsers:
    """
    The traffic past the closures of one structure. With several stages the figures of one closure are
    those of the first that has one, and the total is the sum over all of them.
    """
    def hours(self) -> dict[str, typing.Any]:
        """
        Columns of demand and permitted hours, from midnight.
        """
    @property
    def cautions(self) -> list[str]:
        """
        [text] what it rests on
        """
    @property
    def closed(self) -> float:
        """
        [s] that one closure stands
        """
    @property
    def closures(self) -> float:
        """
        [each] of the visit
        """
    @property
    def hourly_cost(self) -> float:
        """
        [currency/s] while it stands, on average
        """
    @property
    def kind(self) -> str:
        """
        [-] how the road is closed
        """
    @property
    def known(self) -> bool:
        """
        [-] whether anybody tells how many vehicles pass
        """
    @property
    def not_figured(self) -> list[str]:
        """
        [text] what no record or job tells; it is warned of
        """
    @property
    def open(self) -> float:
        """
        [each/s] what passes while nothing is closed
        """
    @property
    def past_closure(self) -> float:
        """
        [each/s] what passes the closure
        """
    @property
    def per_closure(self) -> float:
        """
        [currency] of one closure
        """
    @property
    def queue(self) -> TrafficQueue:
        """
        [each, s] of one closure, busier direction
        """
    @property
    def queue_delay(self) -> float:
        """
        [each s] of one closure, all directions it holds up
        """
    @property
    def queue_length(self) -> float:
        """
        [m] of the longest queue
        """
    @property
    def slow_delay(self) -> float:
        """
        [each s] lost by slower driving and by taking turns
        """
    @property
    def sources(self) -> list[str]:
        """
        [text] values of time and of a detour, and whose
        """
    @property
    def stage(self) -> str:
        """
        [text] name of the stage; empty where there is one
        """
    @property
    def stages(self) -> list[RoadUsers]:
        """
        [-, n] each stage with a closure, with its own total
        """
    @property
    def start(self) -> int:
        """
        [-] hour at which a closure begins
        """
    @property
    def time_value(self) -> float:
        """
        [currency/s] of one vehicle; NaN where none is given
        """
    @property
    def total(self) -> float:
        """
        [currency] of all closures of the visit
        """
    @property
    def window(self) -> tuple[int, int]:
        """
        [-] longest permitted in the part of day that is worked
        """
class DailyCost:
    """
    Road-user cost of a day on which a road is closed, and what it rests on.
    """
    @property
    def amount(self) -> str:
        """
        [currency per day] to the minor unit
        """
    @property
    def cautions(self) -> list[str]:
        """
        [text] what the figures rest on
        """
    @property
    def closed_hours(self) -> float:
        """
        [s] that a closure stands, on average
        """
    @property
    def closures(self) -> float:
        """
        [each] of all of them
        """
    @property
    def days(self) -> float:
        """
        [day] of work that they are spread over
        """
    @property
    def earliest(self) -> int:
        """
        [-] hour at which the earliest closure begins
        """
    @property
    def latest(self) -> int:
        """
        [-] hour at which the latest closure begins
        """
    @property
    def sources(self) -> list[str]:
        """
        [text] values of time and of a detour, and whose
        """
    @property
    def structures(self) -> int:
        """
        [-] with a closure
        """
    @property
    def total(self) -> float:
        """
        [currency] of all closures
        """
class Programme:
    """
    A whole list priced. Every structure is in exactly one of `priced` and `unpriced`.
    """
    @staticmethod
    def joined(parts: collections.abc.Sequence[Programme]) -> Programme:
        """
        Puts the results of the parts of a list together, in their order.
        
        Parameters
        ----------
        parts : [-, n]
            programmes of parts that follow on one another, under one job
        
        Returns
        -------
        [-]
            the programme of the whole list: the bits of one run
        
        Range
        -----
        at least one part.
        
        Errors
        ------
        InputError `estimate.merge` without a part, or where parts have other columns.
        
        Source
        ------
        own convention
        
        Verified by
        -----------
        tests/cpp/estimate/test_programme.cpp
        """
    @staticmethod
    def of_state(plan: Plan, state: tuple[typing.Any, ...]) -> Programme:
        """
        The programme that a state belongs to.
        """
    def closures(self) -> list[str]:
        """
        How the road is closed at each priced structure: a word of the closure kinds.
        """
    def columns(self, units: str) -> list[tuple[str, str]]:
        """
        Key and unit of every column: us, metric or si.
        """
    def guesses(self, inventory: Inventory, threads: typing.SupportsInt | typing.SupportsIndex, progress: typing.Any) -> dict[str, typing.Any]:
        """
        Every guess of a programme by what it moves the total, the dearest first: one input alone, from
        its low to its high at all structures at once.
        
        Parameters
        ----------
        programme : [-]
            a programme
        structures : [-, n]
            the records it was priced from, in the same order
        threads : [-]
            how many; 0 for as many as the machine has
        progress : [-]
            told how far the run is; may be empty
        
        Returns
        -------
        [currency, n]
            the guesses; totals are NaN where a limit leaves a structure without a price
        
        Formula
        -------
        worth = |sum over structures of total at high - sum of total at low|
        
        Range
        -----
        any programme. The same bits for any number of threads.
        
        Errors
        ------
        Interrupted `estimate.stopped` where progress says so.
        
        Source
        ------
        own convention
        
        Verified by
        -----------
        tests/cpp/estimate/test_programme_guesses.cpp
        """
    def priced(self) -> numpy.typing.NDArray[numpy.uint64]:
        """
        [-, n] positions among the structures
        """
    def ranges(self, inventory: Inventory, draws: typing.SupportsInt | typing.SupportsIndex, seed: typing.SupportsInt | typing.SupportsIndex, threads: typing.SupportsInt | typing.SupportsIndex, quantiles: collections.abc.Sequence[typing.SupportsFloat | typing.SupportsIndex], progress: typing.Any) -> dict[str, typing.Any]:
        """
        The totals of all columns of a programme, sorted, for quantiles.
        
        Parameters
        ----------
        programme : [-]
            a programme
        structures : [-, n]
            the records it was priced from, in the same order
        settings : [-]
            as of `total_draws`
        threads : [-]
            how many; 0 for as many as the machine has
        progress : [-]
            told structures done and all; may be empty
        
        Returns
        -------
        [SI unit of each figure, m x draws]
            by column, ascending; empty where a draw leaves a
            structure without a number: a range of the other draws would hide what stops the work in these
        
        Range
        -----
        as of `total_draws`.
        
        Errors
        ------
        those of `total_draws`.
        
        Source
        ------
        own convention
        
        Verified by
        -----------
        tests/cpp/simulate/test_total_draws.cpp
        """
    def state(self) -> tuple[typing.Any, ...]:
        """
        Everything but the job, to carry to another process.
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
class OutingPlan:
    """
    A list of structures as outings of one crew.
    """
    def alone(self) -> dict[str, float]:
        """
        [currency] had every structure shifts of its own
        """
    def cost(self) -> dict[str, float]:
        """
        What people and equipment of an outing, or of all of them, cost.
        """
    def lost_days(self) -> dict[str, typing.Any]:
        """
        [-, n] days before them without a shift, each with why
        """
    def outings(self) -> dict[str, typing.Any]:
        """
        Structures served together, with their shifts.
        """
    def segments(self) -> dict[str, typing.Any]:
        """
        A stretch of a party's shift.
        """
    def shifts(self) -> dict[str, typing.Any]:
        """
        Columns of every shift: outing, date, stops, paid hours.
        """
    @property
    def price(self) -> float:
        """
        [currency] all of it with the job's margins
        """
    @property
    def price_alone(self) -> float:
        """
        [currency] had every structure shifts of its own
        """
    @property
    def price_shared(self) -> float:
        """
        [currency] as each is estimated, by the job's sharing
        """
    @property
    def unpriced(self) -> list[tuple[int, str]]:
        """
        [-, n] positions and reasons
        """
    @property
    def visits(self) -> float:
        """
        [currency] water, disposal, dump runs, charges, hauling
        """
class Year:
    """
    A year of a programme.
    """
    def load(self, job: Job, first: str, last: str, crews: typing.SupportsFloat | typing.SupportsIndex, lost: typing.SupportsFloat | typing.SupportsIndex) -> dict[str, float]:
        """
        Sets a year's work against the crews of a season.
        
        Parameters
        ----------
        year : [-]
            the year
        calendar : [-]
            the days of work
        first : [-]
            the first day of the season
        last : [-]
            its last day
        crews : [each]
            how many, > 0
        lost : [-]
            share of days that weather takes, 0 to below 1
        shift : [s]
            paid length of a shift
        
        Returns
        -------
        [-]
            days, crew-shifts, crew-hours, and which share of them is needed
        
        Formula
        -------
        there = crews x days less those that bad weather takes
        
        Range
        -----
        one shift a day for each crew.
        
        Errors
        ------
        InputError `season.crews`, `season.lost`, `season.days` where there is no day of work;
        those of `days_of_work`.
        
        Source
        ------
        definition
        
        Verified by
        -----------
        tests/cpp/estimate/test_season.cpp
        """
    def rounds(self) -> list[tuple[float, list[str], float, int]]:
        """
        The rounds of a year: what is cleaned seldom is cleaned along with what is cleaned often.
        
        Parameters
        ----------
        job : [-]
            the job; components that its service leaves out are in no round
        frequency : [-]
            times a year by component, > 0; 0.5 is every other year
        
        Returns
        -------
        [-, m]
            rounds without a programme, the one with fewest components first
        
        Formula
        -------
        of components cleaned f1 > f2 > ... > fm times a year, f1 - f2 visits clean the first
        alone, f2 - f3 the first two, ..., fm all of them
        
        Range
        -----
        any frequencies; the visits of a year are f1.
        
        Errors
        ------
        UnknownNameError `season.component`; InputError `season.frequency` where it is not above
        0 and finite
        
        Source
        ------
        definition; seldom work along with frequent work is common practice
        
        Verified by
        -----------
        tests/cpp/estimate/test_season.cpp
        """
    def table(self, job: Job) -> list[tuple[str, str, numpy.typing.NDArray[numpy.float64]]]:
        """
        What a year of cleaning takes, structure by structure.
        
        Parameters
        ----------
        structures : [-, n]
            the records
        job : [-]
            the job
        frequency : [-]
            times a year by component
        threads : [-]
            how many; 0 for as many as the machine has
        progress : [-]
            told how far each round is; may be empty
        
        Returns
        -------
        [-]
            rounds and the sums of a year; the same bits for any number of threads
        
        Formula
        -------
        sum over rounds of visits a year times the figures of a visit
        
        Range
        -----
        structures without a price in one of the rounds are in no sum; each round's programme
        names its own.
        
        Errors
        ------
        those of `rounds_of`, `make_plan` and `estimate_all`.
        
        Source
        ------
        definition
        
        Verified by
        -----------
        tests/cpp/estimate/test_season.cpp
        """
    @property
    def priced(self) -> list[int]:
        """
        [-, n] positions that have a price in every round
        """
class Swings:
    """
    The swings of a list.
    """
    def columns(self) -> dict[str, typing.Any]:
        """
        How far a figure's total moves with one input, all others at the values that are priced.
        """
    @property
    def estimated(self) -> float:
        """
        [SI unit of the figure] of the priced structures
        """
    @property
    def unit(self) -> str:
        """
        The unit of the figure.
        """
class Sensitivity:
    """
    What matters to a figure of a list.
    """
    def columns(self) -> dict[str, typing.Any]:
        """
        One factor: an input at all structures, or several that are taken together.
        """
    def left_out(self) -> numpy.typing.NDArray[numpy.uint64]:
        """
        [-, n] positions: some draw leaves them without a figure
        """
    @property
    def mean(self) -> float:
        """
        [SI unit of the figure] over both samples
        """
    @property
    def sd(self) -> float:
        """
        [SI unit of the figure] over both samples
        """
    @property
    def unit(self) -> str:
        """
        The unit of the figure.
        """
class DrawnTotal:
    """
    The draws of one figure's total.
    """
    def chance_above(self, limit: typing.SupportsFloat | typing.SupportsIndex) -> tuple[float, float]:
        """
        The chance that the total is above a limit: a budget, the hours of a season.
        
        Parameters
        ----------
        limit : [SI unit of the figure]
            the limit
        
        Returns
        -------
        [-]
            share of draws above it, with its standard error
        
        Range
        -----
        any finite limit.
        
        Errors
        ------
        InputError `simulate.limit` where the limit is NaN.
        
        Source
        ------
        definition
        
        Verified by
        -----------
        tests/cpp/simulate/test_totals.cpp
        """
    def contingency(self, level: typing.SupportsFloat | typing.SupportsIndex) -> tuple[float, float]:
        """
        What has to be set aside beyond the estimate for a chosen confidence.
        
        Parameters
        ----------
        level : [-]
            confidence that the total is not exceeded, 0 to 1
        
        Returns
        -------
        [SI unit of the figure]
            with its standard error; negative where the estimate is
            already safer than that
        
        Formula
        -------
        quantile(level) - estimate
        
        Range
        -----
        as `quantile`.
        
        Errors
        ------
        those of `quantile`.
        
        Source
        ------
        common practice
        
        Verified by
        -----------
        tests/cpp/simulate/test_totals.cpp
        """
    def draws(self) -> numpy.typing.NDArray[numpy.float64]:
        """
        The totals in the order of the draws [SI unit of the figure, n].
        replicate after replicate
        all of them
        each replicate in itself
        """
    def half_width(self, found: tuple[typing.SupportsFloat | typing.SupportsIndex, typing.SupportsFloat | typing.SupportsIndex], confidence: typing.SupportsFloat | typing.SupportsIndex) -> float:
        """
        How far to either side of an estimated value its true value may lie.
        
        A standard error from r replicates is itself uncertain: two of them cover 95 % only where r
        is large, of ten replicates 92 %.
        
        Parameters
        ----------
        found : [unit of the figure]
            what one of the functions above gave
        confidence : [-]
            that the interval covers the true value, at least 0 and below 1
        
        Returns
        -------
        [unit of the figure]
            half the width of the interval; NaN of a single replicate
        
        Formula
        -------
        t se, t of Student's distribution with r - 1 degrees of freedom
        
        Range
        -----
        up to 340 replicates; of more, t is that of 340.
        
        Errors
        ------
        InputError `simulate.confidence` where the confidence is not at least 0 and below 1.
        
        Source
        ------
        NIST/SEMATECH e-Handbook of Statistical Methods 1.3.5.2
        
        Verified by
        -----------
        tests/cpp/simulate/test_totals.cpp
        """
    def mean(self) -> tuple[float, float]:
        """
        The mean over the draws.
        
        Returns
        -------
        [SI unit of the figure]
            with its standard error
        
        Formula
        -------
        sum / n; standard error: sd of the replicates' means / sqrt(r)
        
        Range
        -----
        at least one draw.
        
        Errors
        ------
        none.
        
        Source
        ------
        McKay, Beckman, Conover, Technometrics 21 (1979) 239-245; replicates: A. B. Owen,
        Journal of the Royal Statistical Society B 54 (1992) 541-551 (from memory)
        
        Verified by
        -----------
        tests/cpp/simulate/test_totals.cpp
        """
    def quantile(self, level: typing.SupportsFloat | typing.SupportsIndex) -> tuple[float, float]:
        """
        The total below which a share of the draws lies.
        
        Parameters
        ----------
        level : [-]
            probability, 0 to 1
        
        Returns
        -------
        [SI unit of the figure]
            with its standard error
        
        Range
        -----
        at least one draw.
        
        Errors
        ------
        InputError `simulate.level` where the level is outside [0, 1] or NaN.
        
        Source
        ------
        R. J. Hyndman, Y. Fan, The American Statistician 50 (1996) 361, definition 5
        
        Verified by
        -----------
        tests/cpp/simulate/test_totals.cpp
        """
    def sd(self) -> tuple[float, float]:
        """
        The standard deviation over the draws.
        
        Returns
        -------
        [SI unit of the figure]
            with its standard error
        
        Formula
        -------
        sqrt(sum (x - mean)^2 / (n - 1)); standard error as of the mean
        
        Range
        -----
        at least one draw; NaN of a single one.
        
        Errors
        ------
        none.
        
        Source
        ------
        definition
        
        Verified by
        -----------
        tests/cpp/simulate/test_totals.cpp
        """
    @property
    def estimated(self) -> float:
        """
        The total as estimated [SI unit of the figure].
        """
class Simulation:
    """
    The result of a run over a list or over a part of one. Parts put together are the whole, bit for
    bit: quantiles belong to structures, totals of a draw are sums in fixed point.
    """
    @staticmethod
    def of_state(plan: Plan, state: tuple[typing.Any, ...]) -> Simulation:
        """
        The simulation that a state belongs to.
        """
    def append(self, part: Simulation) -> None:
        """
        Puts the result of the next part of a list behind those before it.
        
        Parameters
        ----------
        whole : [-]
            the parts before; empty to begin with
        part : [-]
            the next part; its positions follow on those before
        
        Range
        -----
        parts that were run under the same job and settings; the bits are those of one run.
        
        Errors
        ------
        InputError `simulate.merge` where settings differ.
        
        Source
        ------
        own convention
        
        Verified by
        -----------
        tests/cpp/simulate/test_simulation.cpp
        """
    def figures(self, units: str) -> list[typing.Annotated[list[str], "FixedSize(3)"]]:
        """
        Figures that a simulation follows, and what a caller calls them.
        """
    def left_out(self) -> dict[str, typing.Any]:
        """
        [-, n] without one in some draw: in no total
        """
    def next_round(self, draws: typing.SupportsInt | typing.SupportsIndex, replicates: typing.SupportsInt | typing.SupportsIndex, relative_error: typing.SupportsFloat | typing.SupportsIndex) -> tuple[int, int]:
        """
        With how many draws a run goes on whose mean total cost is not known well enough.
        
        Parameters
        ----------
        found : [-]
            the run over the whole list so far
        most : [-]
            the run as it would be without a limit
        relative_error : [-]
            limit, > 0
        
        Returns
        -------
        [-]
            settings of the next round; those of `found` where it is known well enough or has all
            the draws there may be
        
        Formula
        -------
        r' = ceil(r (e / limit)^2), at least r + 1, at most those of `most`; e as of
        `simulate_until`
        
        Range
        -----
        rounds of one run. Replicates that both rounds have are the same to the bit.
        
        Errors
        ------
        InputError `simulate.relative_error` where the limit is not above 0.
        
        Source
        ------
        errors of a mean fall with the root of the number of replicates
        
        Verified by
        -----------
        tests/cpp/simulate/test_simulation.cpp
        """
    def ranges(self) -> numpy.typing.NDArray[numpy.float64]:
        """
        What the draws of one structure give of one figure.
        """
    def simulated(self) -> numpy.typing.NDArray[numpy.uint64]:
        """
        [-] position among the structures
        """
    def state(self) -> tuple[typing.Any, ...]:
        """
        Everything but the job, to carry to another process.
        """
    def total(self, figure: typing.SupportsInt | typing.SupportsIndex) -> DrawnTotal:
        """
        The draws of one figure's total.
        """
    def unpriced(self) -> dict[str, typing.Any]:
        """
        [-, n] without a price at all
        """
    @property
    def draws(self) -> int:
        """
        [-] how many in all
        """
    @property
    def replicates(self) -> int:
        """
        [-] independent samples that make up the
        draws: what standard errors rest on
        """
    @property
    def seed(self) -> int:
        """
        [-] same seed, same draws
        """
    @property
    def structures(self) -> int:
        """
        [-] length of the list
        """
class SurveyList:
    """
    A survey list.
    """
    def left_out(self) -> numpy.typing.NDArray[numpy.uint64]:
        """
        [-, n] positions: a draw leaves them without a price
        """
    def measurements(self) -> dict[str, typing.Any]:
        """
        One thing to count or measure at a structure.
        """
    def visits(self) -> dict[str, typing.Any]:
        """
        Everything worth measuring in one visit to a structure.
        """
    @property
    def high(self) -> float:
        """
        95 % of the draws lie below [currency].
        """
    @property
    def low(self) -> float:
        """
        [currency] 5 % and 95 % of the draws lie below
        """
    @property
    def mean(self) -> float:
        """
        [currency] of the programme's cost over the draws
        """
    @property
    def middle_range(self) -> float:
        """
        [currency] from 10 % to 90 % of the draws
        """
class JobLog:
    """
    A log as it was read: every row is in `rows` or has a fault without a column.
    """
    @staticmethod
    def of_table(name: str, headers: collections.abc.Sequence[str], rows: collections.abc.Sequence[tuple[typing.SupportsInt | typing.SupportsIndex, collections.abc.Sequence[str]]]) -> JobLog:
        """
        Reads a log of finished jobs.
        
        Parameters
        ----------
        name : [text]
            what to call the log in errors
        headers : [text, n]
            some of `log_columns`, with a unit in brackets where one is due
        rows : [-, m]
            by header
        
        Returns
        -------
        [-]
            the log; a cell that cannot be read is a fault with line and column, a row that has too
            many or too few cells a fault with its line
        
        Range
        -----
        UTF-8; numbers as `parse_quantity` takes them. A bound ("> 4") is no amount.
        
        Errors
        ------
        FileError `log.header` for a column that is unknown, stands twice or has the wrong unit,
        and where there are neither structures nor operations, or no amounts.
        
        Source
        ------
        own convention
        
        Verified by
        -----------
        tests/python/test_learning.py
        """
    @staticmethod
    def read(text: str, name: str) -> JobLog:
        """
        Reads a log of finished jobs from CSV text with a header row.
        
        Parameters
        ----------
        text : [text]
            as RFC 4180 has it
        name : [text]
            what to call the log in errors
        
        Returns
        -------
        [-]
            as `read_job_log`; blank lines are passed over
        
        Range
        -----
        UTF-8.
        
        Errors
        ------
        as `read_job_log`; FileError `structures.csv` for a quote that is never closed.
        
        Source
        ------
        own convention; RFC 4180 (2005)
        
        Verified by
        -----------
        tests/python/test_learning.py
        """
class Learned:
    """
    What a log taught.
    """
    def book(self) -> RateBook:
        """
        What was learned as a rate book to lay over the job.
        
        Parameters
        ----------
        learned : [-]
            what a log taught
        
        Returns
        -------
        [-]
            the values that were learned, each with the jobs it rests on as its source; a common
            factor changes every value it stands for
        
        Range
        -----
        any; a book without values where nothing was learned.
        
        Errors
        ------
        none.
        
        Source
        ------
        own convention
        
        Verified by
        -----------
        tests/cpp/simulate/test_learning.cpp
        """
    def faults(self) -> dict[str, typing.Any]:
        """
        Something of a log that is not used, and why.
        """
    def jobs(self) -> dict[str, typing.Any]:
        """
        The observation of one job.
        """
    def rates(self) -> dict[str, typing.Any]:
        """
        What was learned of one input, or of what several have in common.
        """
    @property
    def first(self) -> str:
        """
        Earliest date of the log [text].
        """
    @property
    def last(self) -> str:
        """
        Latest date of the log [text].
        """
    @property
    def lines(self) -> int:
        """
        [-] rows of the log
        """
    @property
    def name(self) -> str:
        """
        [text] of the log
        """
    @property
    def used(self) -> int:
        """
        [-] rows that say something
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
class Purchase:
    """
    Equipment as a buyer looks at it.
    """
    def __init__(self, price: typing.SupportsFloat | typing.SupportsIndex, loses: typing.SupportsFloat | typing.SupportsIndex, operating: typing.SupportsFloat | typing.SupportsIndex, growth: typing.SupportsFloat | typing.SupportsIndex, interest: typing.SupportsFloat | typing.SupportsIndex) -> None:
        ...
class SplitProblem:
    """
    What a split has to keep to.
    """
    def __init__(self, on_top: typing.Annotated[collections.abc.Sequence[typing.SupportsFloat | typing.SupportsIndex], "FixedSize(3)"], names: collections.abc.Sequence[str], regions: collections.abc.Sequence[str], direct: collections.abc.Sequence[typing.SupportsFloat | typing.SupportsIndex], wages: collections.abc.Sequence[typing.SupportsFloat | typing.SupportsIndex], price: collections.abc.Sequence[typing.SupportsFloat | typing.SupportsIndex], times: collections.abc.Sequence[tuple[str, collections.abc.Sequence[typing.SupportsFloat | typing.SupportsIndex]]], size: collections.abc.Sequence[typing.SupportsFloat | typing.SupportsIndex]) -> None:
        ...
    def fault(self, to: collections.abc.Sequence[typing.SupportsInt | typing.SupportsIndex]) -> str:
        """
        Why a split is not allowed.
        
        Parameters
        ----------
        items : [-, n]
            the structures
        rules : [-]
            what a split keeps to
        to : [-, n]
            0: own people, else the contract's number
        
        Returns
        -------
        [text]
            the first rule that it breaks; empty where it keeps to all
        
        Range
        -----
        limits are met within 1e-6 of their size.
        
        Errors
        ------
        none.
        
        Source
        ------
        definition
        
        Verified by
        -----------
        tests/python/test_delivery_split.py
        """
    def model(self) -> dict[str, typing.Any]:
        """
        The split as a programme of binary unknowns.
        
        Unknowns: x[u, k] unit u goes to k, with k = 0 own people and k >= 1 the contracts; then y, whether
        the crew is kept; then z[k], whether a contract is let; then, where a least saving may reach its
        most, for each contract or for all w, whether it does, and r, by how much the share exceeds it.
        
        Parameters
        ----------
        items : [-, n]
            the structures
        rules : [-]
            what a split keeps to
        
        Returns
        -------
        [-]
            the programme
        
        Formula
        -------
        least of sum of (costs + share of personnel cost where it goes out) x + kept y + per
        contract z - sum of r; each unit goes somewhere; sum of times x[u, 0] <= hours there, for each
        resource; least z <= sum of sizes x <= most z; contracts of a region are let in order; r <= share
        of personnel x - w most / years; r <= w (its greatest value)
        
        Range
        -----
        n >= 1; costs and sizes finite, or NaN costs.
        
        Errors
        ------
        InputError `delivery.items` where there is none, a number cannot be used, or a structure
        can be done neither way; `delivery.rules` where a rule cannot be used.
        
        Source
        ------
        generalized assignment with fixed charges, operations research; least saving: see
        `least_saving`
        
        Verified by
        -----------
        tests/cpp/delivery/test_split.cpp, tests/python/test_delivery_split.py
        """
    def priced(self, to: collections.abc.Sequence[typing.SupportsInt | typing.SupportsIndex]) -> dict[str, typing.Any]:
        """
        What a split costs.
        
        Parameters
        ----------
        items : [-, n]
            the structures
        rules : [-]
            what a split keeps to
        to : [-, n]
            0: own people, else the contract's number
        
        Returns
        -------
        [currency]
            its parts and sum
        
        Formula
        -------
        compared = cost + sum over contracts, or once over all of them, of `least_saving`
        
        Range
        -----
        any split; whether the rules allow it is for `split_fault` to say.
        
        Errors
        ------
        InputError `delivery.items` where the lists differ.
        
        Source
        ------
        definition
        
        Verified by
        -----------
        tests/python/test_delivery_split.py
        """
    def split(self, unknowns: collections.abc.Sequence[typing.SupportsFloat | typing.SupportsIndex]) -> dict[str, typing.Any]:
        """
        The split that the unknowns of a solver stand for.
        
        Parameters
        ----------
        items : [-, n]
            the structures
        rules : [-]
            what a split keeps to
        unknowns : [-, m]
            of `split_model`, each nearly 0 or 1
        
        Returns
        -------
        [-]
            the split and its cost
        
        Range
        -----
        unknowns of the model of the same items and rules.
        
        Errors
        ------
        InputError `delivery.unknowns` where their number differs; those of `split_model`.
        
        Source
        ------
        definition
        
        Verified by
        -----------
        tests/python/test_delivery_split.py
        """
    def under(self, there: collections.abc.Sequence[typing.SupportsFloat | typing.SupportsIndex], kept: typing.SupportsFloat | typing.SupportsIndex, per_contract: typing.SupportsFloat | typing.SupportsIndex, contracts: typing.SupportsInt | typing.SupportsIndex, least: typing.SupportsFloat | typing.SupportsIndex, most: typing.SupportsFloat | typing.SupportsIndex, within_regions: bool, together: bool, nothing_in_house: bool, saving: str, law: typing.Annotated[collections.abc.Sequence[typing.SupportsFloat | typing.SupportsIndex], "FixedSize(3)"]) -> SplitProblem:
        """
        What a split has to keep to.
        """
    @property
    def resources(self) -> list[str]:
        """
        [text] "crew", "bucket_truck"
        """
class BidReview:
    """
    Bids checked by a rule and beside each other.
    """
    def __init__(self, currency: str, items: collections.abc.Sequence[typing.Annotated[collections.abc.Sequence[str], "FixedSize(8)"]], bids: collections.abc.Sequence[tuple[str, collections.abc.Sequence[tuple[str, str | None, str | None, str | None, str, str | None, str, str, typing.SupportsInt | typing.SupportsIndex]], str | None, str | None]], engineer: tuple[str, collections.abc.Sequence[tuple[str, str | None, str | None, str | None, str, str | None, str, str, typing.SupportsInt | typing.SupportsIndex]], str | None, str | None] | None, governs: str, outlier: typing.SupportsFloat | typing.SupportsIndex, fewest: typing.SupportsInt | typing.SupportsIndex) -> None:
        """
        Bids with their arithmetic done again under a rule.
        
        The quantity is the form's, whatever a bidder wrote. A price that only the extension tells is
        the extension by the quantity. Nothing that is missing becomes zero: such a bid has no corrected
        total.
        
        Parameters
        ----------
        set : [-]
            bids as they were read
        governs : [-]
            what holds where figures contradict each other
        
        Returns
        -------
        [-, n]
            by bid, in their order
        
        Formula
        -------
        extension = round(price x quantity); corrected total = sum over base items
        
        Range
        -----
        any number of bids and items.
        
        Errors
        ------
        InputError `bid.code` where two items of the form have one code; MoneyError
        `money.overflow`
        
        Source
        ------
        unit price governs: City of Tukwila bid award memo, 13 May 2016; words and extension:
        common practice of instructions to bidders
        
        Verified by
        -----------
        tests/cpp/bid/test_checking.cpp
        """
    def crossovers(self) -> dict[str, typing.Any]:
        """
        Every quantity of one item at which a bid stops being low against one other.
        
        Parameters
        ----------
        table : [-]
            prices of bids
        low : [-]
            index of the bid that is low
        
        Returns
        -------
        [-, n]
            by other bid, then item; quantities below zero are left out
        
        Formula
        -------
        x = q + (other total - low total) / (low price - other price), totals unrounded
        
        Range
        -----
        base items with a low and a high that enclose the quantity, or both equal.
        
        Errors
        ------
        InputError `bid.range` where low and high do not enclose the quantity, `bid.price` where
        the low bid lacks a price; MoneyError `money.overflow`
        
        Source
        ------
        definition of the tie
        
        Verified by
        -----------
        tests/cpp/bid/test_crossover.cpp
        """
    def draw_quantities(self, draws: typing.SupportsInt | typing.SupportsIndex, seed: typing.SupportsInt | typing.SupportsIndex, shared: typing.SupportsFloat | typing.SupportsIndex) -> numpy.typing.NDArray[numpy.float64]:
        """
        Quantities drawn from the ranges of the form.
        
        Parameters
        ----------
        form : [-]
            items with their ranges; equal low and high mean a certain quantity
        draws : [-]
            number, draws x items up to 100,000,000
        seed : [-]
            of the draws
        shared : [-]
            s, 0 to 1: share of the spread that all items have in common
        
        Returns
        -------
        [unit, draws x items]
        
        Formula
        -------
        PERT from low, quantity, high at u = Phi(sqrt(s) z + sqrt(1 - s) z_item)
        
        Range
        -----
        low <= quantity <= high.
        
        Errors
        ------
        InputError `bid.draws`, `bid.shared`; `random.order` where a range does not enclose the
        quantity
        
        Source
        ------
        PERT as `ThreePoint`; one common factor: common practice
        
        Verified by
        -----------
        tests/cpp/bid/test_reversal.cpp
        """
    def early_payment(self, bid: typing.SupportsInt | typing.SupportsIndex, reference: str, shares: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], interest: typing.SupportsFloat | typing.SupportsIndex, limit: typing.SupportsFloat | typing.SupportsIndex) -> dict[str, typing.Any]:
        """
        What a bid gains by being paid earlier than a balanced one.
        
        Parameters
        ----------
        table : [-]
            prices of bids
        bid : [-]
            index
        reference : [currency per unit, items]
            the engineer's prices, or medians
        schedule : [-]
            when the items are paid
        limits : [-]
            from which share it is flagged
        
        Returns
        -------
        [-]
            payments are at the end of periods
        
        Formula
        -------
        present worth = sum over items and periods of amount x share (1 + i)^-period; balanced:
        the bid's total spread over the items as the reference is
        
        Range
        -----
        base items, each priced and with a reference.
        
        Errors
        ------
        InputError `bid.schedule` where it does not fit or an item's shares do not sum to one,
        `bid.reference`, `bid.price` where a price or the total is missing, `bid.limits`;
        `cost.interest`
        
        Source
        ------
        definition; factors as `cost::present_worth_factor`
        
        Verified by
        -----------
        tests/cpp/bid/test_unbalanced.cpp
        """
    def findings(self) -> dict[str, typing.Any]:
        """
        Something found in a bid.
        """
    def flags(self, reference: str, above: typing.SupportsFloat | typing.SupportsIndex, below: typing.SupportsFloat | typing.SupportsIndex, token: typing.SupportsFloat | typing.SupportsIndex, weight: typing.SupportsFloat | typing.SupportsIndex) -> dict[str, typing.Any]:
        """
        Items whose price does not follow the rest of its bid.
        
        A bid that is dear or cheap throughout is not unbalanced: an item's ratio is held against the
        bid's own level, so that no flag changes where every price changes by one factor.
        
        Parameters
        ----------
        table : [-]
            prices of bids
        reference : [currency per unit, items]
            the engineer's prices, or medians
        limits : [-]
            from where a price is flagged
        
        Returns
        -------
        [-, n]
            by bid, then item; items without a reference above zero are passed over
        
        Formula
        -------
        ratio = price / reference; level = sum of price x quantity / sum of reference x
        quantity, over base items; relative = ratio / level
        
        Range
        -----
        base items.
        
        Errors
        ------
        InputError `bid.limits` where limits are not above zero in the order token, below, 1,
        above; `bid.reference` where the reference has not one value an item
        
        Source
        ------
        23 CFR 635.102: items that do not carry actual cost plus a proportionate share of profit
        and overhead; limits: common practice
        
        Verified by
        -----------
        tests/cpp/bid/test_unbalanced.cpp
        """
    def items(self) -> dict[str, typing.Any]:
        """
        How far the prices of one item lie apart.
        """
    def joint_changes(self) -> dict[str, typing.Any]:
        """
        What all quantities moving together within their ranges can do.
        
        Parameters
        ----------
        table : [-]
            prices of bids
        low : [-]
            index of the bid that is low
        
        Returns
        -------
        [-, n]
            by other bid
        
        Formula
        -------
        least gap = sum over base items of the lesser of (other price - low price) x low and x
        high; share = gap / (gap - least gap), all quantities going the same share of their way
        
        Range
        -----
        as `crossovers`.
        
        Errors
        ------
        as `crossovers`
        
        Source
        ------
        definition
        
        Verified by
        -----------
        tests/cpp/bid/test_crossover.cpp
        """
    def outliers(self) -> dict[str, typing.Any]:
        """
        A price far from the others of its item.
        """
    def prices(self, bid: typing.SupportsInt | typing.SupportsIndex) -> dict[str, typing.Any]:
        """
        One item of one bid.
        """
    def reversal(self, quantities: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> dict[str, typing.Any]:
        """
        The chance that the as-bid low is not the low at the end.
        
        Parameters
        ----------
        table : [-]
            prices of bids
        quantities : [unit, draws x items]
            drawn here, or by a simulation of the work
        
        Returns
        -------
        [-]
            a tie leaves the low bid low
        
        Formula
        -------
        chance p = draws with another total below the low bid's, over draws; error
        sqrt(p (1 - p) / n); totals in double precision over base items
        
        Range
        -----
        at least one complete bid; independent draws for the error.
        
        Errors
        ------
        InputError `bid.price` without a complete bid, `bid.draws` where the draws do not fit or
        are not finite
        
        Source
        ------
        definition; standard error of a binomial share
        
        Verified by
        -----------
        tests/cpp/bid/test_reversal.cpp
        """
    def spread(self) -> dict[str, typing.Any]:
        """
        How far totals lie apart. What needs two of them is not there with one.
        """
    def stages(self) -> dict[str, typing.Any]:
        """
        Who is low as the owner takes up alternates in the order stated, and with each optional item.
        
        Parameters
        ----------
        table : [-]
            prices of bids; the order of the form's alternates is the owner's
        
        Returns
        -------
        [-, n]
            base first, alternates cumulated, then optional items one by one
        
        Formula
        -------
        total = base + alternates so far; base + one optional item
        
        Range
        -----
        any number of items.
        
        Errors
        ------
        MoneyError `money.overflow`
        
        Source
        ------
        common practice of alternates in a stated order
        
        Verified by
        -----------
        tests/cpp/bid/test_award.cpp
        """
    def summary(self) -> dict[str, typing.Any]:
        """
        A bid with its arithmetic done again.
        """
    def totals_at(self, quantities: collections.abc.Sequence[str]) -> list[typing.Any]:
        """
        What bids come to at other quantities, unrounded.
        
        Parameters
        ----------
        table : [-]
            prices of bids
        quantities : [unit, items]
        
        Returns
        -------
        [currency, bids]
            nothing where a base item has no price
        
        Formula
        -------
        sum over base items of price x quantity
        
        Range
        -----
        any quantities.
        
        Errors
        ------
        InputError `bid.quantities` where there is not one an item; MoneyError `money.overflow`
        
        Source
        ------
        definition
        
        Verified by
        -----------
        tests/cpp/bid/test_crossover.cpp
        """
    def with_time(self, daily_cost: str) -> dict[str, typing.Any]:
        """
        What bids are compared by when the days are counted (A + B).
        
        Parameters
        ----------
        form : [-]
            whose currency it is
        totals : [currency, bids]
        days : [day, bids]
            time bid
        daily_cost : [currency per day]
            road-user cost
        
        Returns
        -------
        [currency, bids]
            nothing where a total or the days are not known
        
        Formula
        -------
        as `closure::bid_with_time`, rounded to the minor unit; what is paid stays the bid
        
        Range
        -----
        daily cost of 0 and above.
        
        Errors
        ------
        InputError `bid.days` where days are below 0, `bid.daily_cost` where the cost is
        
        Source
        ------
        cost-plus-time bidding, common practice
        
        Verified by
        -----------
        tests/cpp/bid/test_award.cpp
        """
class ItemList:
    """
    An item list with its mapping.
    """
    @staticmethod
    def read(text: str, name: str) -> ItemList:
        """
        Reads an item list with its mapping, and checks it.
        
        Parameters
        ----------
        text : [text]
            a JSON document with `scupper_items` and the keys of `item_list_keys`
        name : [text]
            what to call the document in errors
        
        Returns
        -------
        [-]
            the list
        
        Range
        -----
        UTF-8.
        
        Errors
        ------
        FileError `json.text` where it is no JSON; UnknownNameError `json.key`, `json.word`
        with the nearest; InputError `json.type`, `json.version`; those of `bid::check`. Where the
        document has lines, the path says the line.
        
        Source
        ------
        own convention
        
        Verified by
        -----------
        tests/cpp/bid/test_pay_items.cpp
        """
    @staticmethod
    def shipped() -> str:
        """
        The document of the item list that ships with the library [text]; its items are invented.
        """
    @property
    def choices(self) -> list[tuple[str, list[str]]]:
        """
        [-, n] ways to pay that it knows
        """
    @property
    def name(self) -> str:
        """
        [text] what to call it
        """
    @property
    def note(self) -> str:
        """
        [text] where it comes from
        """
class PayItems:
    """
    The items of a contract. Every cost line of the estimates is in exactly one item or spread.
    """
    def draws(self, inventory: Inventory, simulation: Simulation, threads: typing.SupportsInt | typing.SupportsIndex, progress: typing.Any) -> numpy.typing.NDArray[numpy.float64]:
        """
        The quantity of every item in every draw of a simulation.
        
        The draws are those of the simulation: where a deck turns out dirtier, the tons that are hauled
        and the hours of the price rise in one draw. A lump sum is 1 in all of them.
        
        Parameters
        ----------
        items : [-]
            priced items
        structures : [-, n]
            the records that the items and the simulation were made of
        simulation : [-]
            under the job of the items
        threads : [-]
            how many; 0 for as many as the machine has
        progress : [-]
            told structures done and all; may be empty
        
        Returns
        -------
        [unit, draws x items]
            before they are rounded as a form states them
        
        Formula
        -------
        sum of the item's figure over the structures, in the item's unit
        
        Range
        -----
        as `simulate::figure_draws`. A structure that the simulation left out is not counted.
        
        Errors
        ------
        InputError `bid.simulation` where the totals of the draws are not those of the
        simulation, that is, of other structures or another job; those of `simulate::figure_draws`
        
        Source
        ------
        definition
        
        Verified by
        -----------
        tests/cpp/bid/test_reversal.cpp
        """
    def lines(self, item: typing.SupportsInt | typing.SupportsIndex) -> dict[str, typing.Any]:
        """
        [currency, n] the cost lines, all structures
        """
    def quantities(self, item: typing.SupportsInt | typing.SupportsIndex) -> numpy.typing.NDArray[numpy.float64]:
        """
        [unit, n] by priced structure; empty: lump sum
        """
    def spread(self) -> dict[str, typing.Any]:
        """
        [currency, n] the lines that were spread
        """
    def table(self) -> dict[str, typing.Any]:
        """
        Columns of the items; exact decimals as text.
        """
    @property
    def currency(self) -> str:
        """
        [text] of every amount
        """
    @property
    def estimated(self) -> str:
        """
        [currency] price of the estimates, to the cent
        """
    @property
    def residue(self) -> str:
        """
        [currency] total less estimated
        """
    @property
    def rounding(self) -> str:
        """
        [text] item that took what rounding leaves
        """
    @property
    def total(self) -> str:
        """
        [currency] sum of the extensions
        """
    @property
    def unused(self) -> list[str]:
        """
        [text, n] codes of the list with no work
        """
class Bid:
    """
    A bid as read. Lines stand in the order of the file; an item may be missing or stand twice.
    """
    def lines(self) -> dict[str, typing.Any]:
        """
        [-, n] by item
        """
    @property
    def bidder(self) -> str:
        """
        [text] who bids
        """
    @property
    def days(self) -> str | None:
        """
        [day] time bid, for cost plus time
        """
    @property
    def notes(self) -> list[str]:
        """
        [text, n] whatever else the bidder wrote
        """
    @property
    def total(self) -> str | None:
        """
        [currency] total as written; none where the form has none
        """
class BidSet:
    """
    Bids for one contract.
    """
    def items(self) -> dict[str, typing.Any]:
        """
        [-, n] no two codes alike
        """
    @property
    def bids(self) -> list[Bid]:
        """
        [-, n] one a bidder
        """
    @property
    def currency(self) -> str:
        """
        [text] of every price
        """
    @property
    def engineer(self) -> Bid | None:
        """
        [-] the engineer's estimate in the same form
        """
class FormMapping:
    """
    How forms of one kind are to be read; what is left out is guessed.
    """
    @staticmethod
    def read(text: str, name: str) -> FormMapping:
        """
        Reads how bid forms are to be read.
        
        Parameters
        ----------
        text : [text]
            a JSON document with `scupper_form`; `columns` names headings or letters by
            role, `bidders` those of each bidder of a tabulation
        name : [text]
            what to call the document in errors
        
        Returns
        -------
        [-]
            the mapping
        
        Range
        -----
        UTF-8; what is left out is guessed.
        
        Errors
        ------
        FileError `json.text` where it is no JSON; UnknownNameError `json.key` with the nearest;
        InputError `json.type`, `json.version`. Where the document has lines, the path says the line.
        
        Source
        ------
        own convention
        
        Verified by
        -----------
        tests/cpp/bid/test_read_form.cpp
        """
    def __init__(self) -> None:
        ...
class FormDoubt:
    """
    A cell that may have been misread, and what was taken.
    """
class SheetRead:
    """
    One sheet as it was understood.
    """
    def columns(self) -> list[tuple[str, str, str, str]]:
        """
        Letter, heading, role and bidder of every column.
        """
    def items(self) -> dict[str, typing.Any]:
        """
        [-, n] items of the form
        """
    def others(self) -> dict[str, typing.Any]:
        """
        [-, n] rows that are no item; blank ones left out
        """
    @property
    def bids(self) -> list[Bid]:
        """
        [-, n] one a bidder
        """
    @property
    def doubts(self) -> list[FormDoubt]:
        """
        [-, n] what may be misread
        """
    @property
    def file(self) -> str:
        """
        [text] name of the file
        """
    @property
    def header_row(self) -> int:
        """
        [-] from 1, the first of its headings
        """
    @property
    def header_rows(self) -> int:
        """
        [-] rows that the headings stand over
        """
    @property
    def sheet(self) -> str:
        """
        [text] name of the sheet
        """
    @property
    def total_row(self) -> int:
        """
        [-] from 1 of what was taken as total; 0 for none
        """
def advance_warning_may_be_omitted(set_back: typing.SupportsFloat | typing.SupportsIndex, at_curb: bool) -> bool:
    """
    Whether work off the road needs no advance warning.
    
    Parameters
    ----------
    set_back : [m]
        road's edge, or face of the curb, to the work, >= 0
    at_curb : [-]
        whether it is measured from a curb
    
    Returns
    -------
    [-]
        true where the signs may be left out
    
    Formula
    -------
    more than 2 ft behind a curb, or 15 ft and more from the edge of the road
    
    Range
    -----
    work that neither vehicles nor people of the crew leave towards the road.
    
    Errors
    ------
    InputError `closure.set_back` where negative
    
    Source
    ------
    California edition 2026 of the Manual on Uniform Traffic Control Devices, 6B.04; the
    15 ft: notes for figure 6H-1 (2009; from memory)
    
    Verified by
    -----------
    tests/cpp/closure/test_plan.cpp
    """
def advantage(values: collections.abc.Sequence[typing.SupportsFloat | typing.SupportsIndex], basis: str) -> float:
    """
    By how much own people are cheaper in a year; below 0 where a contract is.
    
    Parameters
    ----------
    ways : [currency]
        a year both ways
    basis : [-]
        avoidable or full cost
    
    Returns
    -------
    [currency]
        advantage of own people
    
    Formula
    -------
    contract + differential - in-house cost on the basis
    
    Range
    -----
    any.
    
    Errors
    ------
    none.
    
    Source
    ------
    definition
    
    Verified by
    -----------
    tests/cpp/delivery/test_ways.cpp
    """
def advantage_at(values: collections.abc.Sequence[typing.SupportsFloat | typing.SupportsIndex], basis: str, totals: tuple[typing.SupportsFloat | typing.SupportsIndex, typing.SupportsFloat | typing.SupportsIndex], estimated: tuple[typing.SupportsFloat | typing.SupportsIndex, typing.SupportsFloat | typing.SupportsIndex]) -> float:
    """
    The advantage of own people where the totals of a list are other than estimated.
    
    Parameters
    ----------
    given : [SI unit of each input]
        the case
    basis : [-]
        avoidable or full cost
    direct : [currency]
        total of the in-house job
    direct_estimated : [currency]
        the same as estimated, > 0
    price : [currency]
        total of the contract job
    price_estimated : [currency]
        the same as estimated, > 0
    
    Returns
    -------
    [currency]
        advantage; NaN where a total is
    
    Formula
    -------
    advantage of the case times direct / estimate and price / estimate, crew time held
    
    Range
    -----
    any totals >= 0.
    
    Errors
    ------
    those of `check`; InputError `delivery.estimated` where an estimate is not above 0.
    
    Source
    ------
    definition
    
    Verified by
    -----------
    tests/cpp/delivery/test_break_even.cpp
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
def annual_cost(purchase: Purchase, years: typing.SupportsFloat | typing.SupportsIndex) -> float:
    """
    The even yearly cost of buying equipment, running it and selling it.
    
    Parameters
    ----------
    purchase : [-]
        price, loss of value, operating cost and its growth, interest
    years : [-]
        whole number of years it is kept, 1 to 10,000
    
    Returns
    -------
    [currency]
        equivalent annual cost
    
    Formula
    -------
    P (A/P) - S (A/F) + c + g (A/G)
    
    Range
    -----
    any.
    
    Errors
    ------
    those of `salvage` and of the interest factors.
    
    Source
    ------
    engineering economy; interest factor tables
    
    Verified by
    -----------
    tests/cpp/delivery/test_equipment.cpp
    """
def available_time(number: typing.SupportsFloat | typing.SupportsIndex, days: typing.SupportsFloat | typing.SupportsIndex, shifts: typing.SupportsFloat | typing.SupportsIndex, shift: typing.SupportsFloat | typing.SupportsIndex, leave: typing.SupportsFloat | typing.SupportsIndex, lost: typing.SupportsFloat | typing.SupportsIndex) -> float:
    """
    Time that crews or equipment have in a season.
    
    Parameters
    ----------
    number : [each]
        n, crews or pieces, >= 0
    days : [each]
        d, days of work, >= 0
    shifts : [-]
        s, a day, >= 0
    shift : [s]
        t, length of a shift, >= 0
    leave : [-]
        share of leave and training; of equipment in repair, 0 to 1
    lost : [-]
        share of days that weather takes, 0 to 1
    
    Returns
    -------
    [s]
        time of all of them
    
    Formula
    -------
    n d s t (1 - leave) (1 - lost)
    
    Range
    -----
    any.
    
    Errors
    ------
    InputError `delivery.number`, `.days`, `.shifts`, `.shift`, `.leave`, `.lost`
    
    Source
    ------
    definition
    
    Verified by
    -----------
    tests/cpp/delivery/test_equipment.cpp
    """
def average_investment(price: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], salvage: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], years: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    What is tied up in equipment on the average over its life, counted at the years' beginnings.
    
    Parameters
    ----------
    price : [currency]
        P, bought for, >= 0
    salvage : [currency]
        S, sold for at the end, >= 0
    years : [-]
        N, years of service, > 0
    
    Returns
    -------
    [currency]
        average annual investment
    
    Formula
    -------
    (P (N + 1) + S (N - 1)) / (2 N)
    
    Range
    -----
    any.
    
    Errors
    ------
    as `straight_line`
    
    Source
    ------
    construction equipment textbooks, from memory
    
    Verified by
    -----------
    tests/cpp/cost/test_published.cpp
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
def bid_with_time(bid: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], time: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], daily_cost: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    What an owner compares bids by who counts the days that the road is closed.
    
    Parameters
    ----------
    bid : [currency]
        price of the work
    time : [s]
        that the bidder asks for
    daily_cost : [currency/s]
        road-user cost
    
    Returns
    -------
    [currency]
        the sum that is compared; not what is paid
    
    Formula
    -------
    A + B = bid + days x road-user cost of a day
    
    Range
    -----
    any.
    
    Errors
    ------
    none.
    
    Source
    ------
    cost-plus-time bidding, common practice
    
    Verified by
    -----------
    tests/cpp/closure/test_road_user.cpp
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
def break_even_time(fixed: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], own_rate: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], hire_rate: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    The hours a year at which owning costs as much as hiring.
    
    Parameters
    ----------
    fixed : [currency]
        F, ownership of a year, >= 0
    own_rate : [currency/s]
        v, running the own equipment an hour, >= 0
    hire_rate : [currency/s]
        r, hire of an hour; > v
    
    Returns
    -------
    [s]
        hours a year; with more of them owning is cheaper
    
    Formula
    -------
    F / (r - v)
    
    Range
    -----
    any.
    
    Errors
    ------
    InputError `cost.fixed`, `cost.own_rate`, `cost.hire_rate` where out of range
    
    Source
    ------
    definition
    
    Verified by
    -----------
    tests/cpp/cost/test_published.cpp
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
def built_up_rate(kind: str, parts: collections.abc.Mapping[str, typing.SupportsFloat | typing.SupportsIndex]) -> float:
    """
    The rate that parts in SI come to, per second.
    """
def capacity_before_queue(discharge: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], drop: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    What a lane of a work zone carries before its traffic breaks down.
    
    Parameters
    ----------
    discharge : [each/s]
        from the queue, >= 0
    drop : [-]
        by which the discharge falls short of it, 0 <= drop < 1
    
    Returns
    -------
    [each/s]
        capacity
    
    Formula
    -------
    c = QDR / (1 - drop)
    
    Range
    -----
    a drop of 0.134 is the default of work zones, 0.07 elsewhere.
    
    Errors
    ------
    InputError `closure.discharge`, `closure.drop` where out of range
    
    Source
    ------
    Highway Capacity Manual, 7th edition, equation 10-9
    
    Verified by
    -----------
    tests/cpp/closure/test_work_zone.cpp
    """
def capital_recovery_factor(interest: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], periods: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    What pays one unit of money back at every period's end (A/P).
    
    Parameters
    ----------
    interest : [-]
        i, rate a period; may be 0 or below
    periods : [-]
        n, number of periods, > 0
    
    Returns
    -------
    [-]
        amount of a period over the present amount
    
    Formula
    -------
    i (1 + i)^n / ((1 + i)^n - 1)
    
    Range
    -----
    i above -1.
    
    Errors
    ------
    as `series_amount_factor`
    
    Source
    ------
    engineering economy factor tables
    
    Verified by
    -----------
    tests/cpp/cost/test_published.cpp
    """
def capped_tax(tax_rate: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], earned: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], pay: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], cap: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    The tax on the next pay of somebody who has earned so much in the year.
    
    Parameters
    ----------
    tax_rate : [-]
        t, of the pay below the cap, >= 0
    earned : [currency]
        E, cash pay of the year so far, >= 0
    pay : [currency]
        p, the next pay, >= 0
    cap : [currency]
        C, pay up to which it is taxed, >= 0
    
    Returns
    -------
    [currency]
        tax; 0 once the cap is reached, so that the burden falls during the year
    
    Formula
    -------
    t max(0, min(E + p, C) - min(E, C))
    
    Range
    -----
    any.
    
    Errors
    ------
    InputError `cost.tax_rate`, `cost.earned`, `cost.pay`, `cost.cap` where below 0
    
    Source
    ------
    definition of a wage base
    
    Verified by
    -----------
    tests/cpp/cost/test_wage.cpp
    """
def capped_tax_share(tax_rate: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], year_pay: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], cap: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    The part of a year's pay that a payroll tax takes, over all of it.
    
    Parameters
    ----------
    tax_rate : [-]
        t, of the pay below the cap, >= 0
    year_pay : [currency]
        E, cash pay of a person in a year, > 0
    cap : [currency]
        C, pay up to which it is taxed, >= 0
    
    Returns
    -------
    [-]
        tax over the year's pay; it falls as the pay grows beyond the cap
    
    Formula
    -------
    t min(E, C) / E
    
    Range
    -----
    any.
    
    Errors
    ------
    InputError `cost.tax_rate`, `cost.year_pay`, `cost.cap` where out of range
    
    Source
    ------
    definition of a wage base
    
    Verified by
    -----------
    tests/cpp/cost/test_published.cpp
    """
def cash_flow(estimate: Estimate) -> tuple[str, float, dict[str, typing.Any], float]:
    """
    The payments for one structure: its price earned evenly over its days of work.
    
    Parameters
    ----------
    estimate : [-]
        an estimate
    
    Returns
    -------
    [currency, n]
        by period; the cost of the money held is `flow.waiting_cost`
    
    Formula
    -------
    earned on a day = total / shifts; retainage by the job's terms, its release the first
    period after `retainage_release`; interest of a period = (1 + i)^(period / year) - 1
    
    Range
    -----
    any estimate. Beside the price: nothing of it is in any figure. Without a day of asking
    the shifts follow each other, as many a week as the calendar has days of work.
    
    Errors
    ------
    those of `schedule` and `cost::retainage`; InputError `estimate.periods` for more than
    10,000 periods
    
    Source
    ------
    definition; payment by the month is common practice
    
    Verified by
    -----------
    tests/cpp/estimate/test_contract_money.cpp
    """
def cash_flow_of_outings(outings: OutingPlan) -> tuple[str, float, dict[str, typing.Any], float]:
    """
    The payments for a list of structures: the price earned with the paid hours of its shifts.
    
    Parameters
    ----------
    plan : [-]
        the outings
    
    Returns
    -------
    [currency, n]
        by period
    
    Formula
    -------
    earned in a shift = price x its paid hours / all paid hours; the rest as above
    
    Range
    -----
    at least one outing.
    
    Errors
    ------
    those of `cost::retainage`; InputError `estimate.periods`
    
    Source
    ------
    definition
    
    Verified by
    -----------
    tests/cpp/estimate/test_contract_money.cpp
    """
def chance_of(advantages: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], replicates: typing.SupportsInt | typing.SupportsIndex) -> dict[str, typing.Any]:
    """
    Chance, regret and worth of knowing.
    
    Parameters
    ----------
    advantages : [currency, draws]
        of own people
    replicates : [-]
        r, independent samples that the draws are made of; one: NaN errors
    
    Returns
    -------
    [-]
        each with its standard error
    
    Formula
    -------
    regret of own people = mean of max(0, -a), of a contract = mean of max(0, a); what is
    worth knowing = the lesser; standard error = sd over replicates / sqrt(r)
    
    Range
    -----
    at least one draw.
    
    Errors
    ------
    InputError `delivery.draws` where there is none, or no whole multiple of replicates.
    
    Source
    ------
    expected value of perfect information, decision analysis
    
    Verified by
    -----------
    tests/cpp/delivery/test_break_even.cpp
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
def closure_effort(estimate: Estimate) -> dict[str, typing.Any]:
    """
    What setting up, changing sides and removing the closures takes, by people.
    
    Parameters
    ----------
    estimate : [-]
        an estimate
    
    Returns
    -------
    [each, s, n]
        a row for each step and kind of people
    
    Formula
    -------
    labour = number x time
    
    Range
    -----
    any estimate; none without a closure.
    
    Errors
    ------
    none.
    
    Source
    ------
    as `price`
    
    Verified by
    -----------
    tests/cpp/estimate/test_road_users.cpp
    """
def closure_plan(speed: typing.SupportsFloat | typing.SupportsIndex, kind: str, road: str, lane_width: typing.SupportsFloat | typing.SupportsIndex, shoulder_width: typing.SupportsFloat | typing.SupportsIndex, work_length: typing.SupportsFloat | typing.SupportsIndex, lanes_closed: typing.SupportsInt | typing.SupportsIndex, edition: str, divided: bool, downgrade: typing.SupportsFloat | typing.SupportsIndex, lanes: typing.SupportsInt | typing.SupportsIndex, set_back: typing.SupportsFloat | typing.SupportsIndex, at_curb: bool) -> ClosurePlan:
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
    closure the short one, a full closure none; work off the road has one sign, or none where
    `advance_warning_may_be_omitted`
    
    Range
    -----
    stationary daytime work on a straight road, without ramps, crossings, footways. Not
    counted: end-of-work and speed limit signs, barricades, detours, lights, message signs.
    
    Errors
    ------
    InputError `closure.speed`, `closure.lane_width`, `closure.shoulder_width`,
    `closure.work_length`, `closure.lanes_closed`, `closure.lanes`, `closure.set_back`,
    `closure.downgrade` where out of range
    
    Source
    ------
    Manual on Uniform Traffic Control Devices, 2009 edition, chapters 6C, 6F and 6H; 11th,
    6B, 6K and 6P; the 2 L between merging tapers from memory of figure 6H-37
    
    Verified by
    -----------
    tests/cpp/closure/test_plan.cpp
    """
def closure_queue(demand: collections.abc.Sequence[typing.SupportsFloat | typing.SupportsIndex], open: typing.SupportsFloat | typing.SupportsIndex, closed: typing.SupportsFloat | typing.SupportsIndex, first: typing.SupportsInt | typing.SupportsIndex, time: typing.SupportsFloat | typing.SupportsIndex) -> TrafficQueue:
    """
    The queue that a closure leaves, until the same hour of the next day.
    
    Parameters
    ----------
    day : [each/s]
        demand and capacities
    first : [-]
        hour at which the closure begins, 0 to 23
    closed : [s]
        how long, 0 to 24 h
    
    Returns
    -------
    [each, s]
        the queue, its time counted from the beginning
    
    Range
    -----
    nobody waits before the first hour.
    
    Errors
    ------
    those of `closure_periods` and `queue`
    
    Source
    ------
    as `queue`
    
    Verified by
    -----------
    tests/cpp/closure/test_windows.cpp
    """
def closure_severity(lanes: typing.SupportsInt | typing.SupportsIndex, open: typing.SupportsInt | typing.SupportsIndex) -> float:
    """
    How severe a lane closure is: the fewer lanes stay open, the more.
    
    Parameters
    ----------
    lanes : [-]
        of the direction, before, >= 1
    open : [-]
        of the direction, during, 1 to lanes
    
    Returns
    -------
    [-]
        lane closure severity index
    
    Formula
    -------
    LCSI = 1 / (open / lanes x open)
    
    Range
    -----
    any whole numbers.
    
    Errors
    ------
    InputError `closure.lanes`, `closure.open` where out of range
    
    Source
    ------
    Highway Capacity Manual, 7th edition, equation 10-7
    
    Verified by
    -----------
    tests/cpp/closure/test_work_zone.cpp
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
def compare_ways(values: collections.abc.Sequence[typing.SupportsFloat | typing.SupportsIndex]) -> tuple[dict[str, typing.Any], dict[str, typing.Any]]:
    """
    What a year costs with own people and by contract, line by line.
    
    Parameters
    ----------
    given : [SI unit of each input]
        the case, checked
    
    Returns
    -------
    [currency]
        every line and the sums
    
    Formula
    -------
    direct = n c + A c'; displaced = v max(0, H - spare); idle = O max(0, 1 - (H + other)
    / R); supervision and overhead = shares of wages; contract = P + k p + (a + i) P + C (A/P);
    differential = `least_saving` of all of it, with L wages and their supervision
    
    Range
    -----
    cases that `check` passes.
    
    Errors
    ------
    as `capital_recovery_factor`
    
    Source
    ------
    avoidable and full cost: common practice of make-or-buy comparisons; differential: 10
    U.S.C. 2461(a)(1)(F)
    
    Verified by
    -----------
    tests/cpp/delivery/test_ways.cpp
    """
def compound_amount_factor(interest: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], periods: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    What one unit of money grows to (F/P).
    
    Parameters
    ----------
    interest : [-]
        i, rate a period; may be below 0
    periods : [-]
        n, number of periods, >= 0
    
    Returns
    -------
    [-]
        future amount over present amount
    
    Formula
    -------
    (1 + i)^n
    
    Range
    -----
    i above -1.
    
    Errors
    ------
    InputError `cost.interest`, `cost.periods` where out of range
    
    Source
    ------
    engineering economy factor tables
    
    Verified by
    -----------
    tests/cpp/cost/test_published.cpp
    """
def conversion_differential(personnel_cost: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], share: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], most: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    By how much a contract has to be cheaper before work leaves an agency's own people.
    
    Parameters
    ----------
    personnel_cost : [currency]
        C, personnel-related cost in-house, all periods, >= 0
    share : [-]
        s, >= 0; 10 % in 10 U.S.C. 2461
    most : [currency]
        M, >= 0; 10 million dollars in 10 U.S.C. 2461
    
    Returns
    -------
    [currency]
        least difference
    
    Formula
    -------
    min(s C, M)
    
    Range
    -----
    any.
    
    Errors
    ------
    InputError `cost.personnel_cost`, `cost.share`, `cost.most` where below 0
    
    Source
    ------
    10 U.S.C. 2461(a)(1)(F)
    
    Verified by
    -----------
    tests/cpp/cost/test_published.cpp
    """
def crossings(f: collections.abc.Callable[[float], typing.SupportsFloat | typing.SupportsIndex], low: typing.SupportsFloat | typing.SupportsIndex, high: typing.SupportsFloat | typing.SupportsIndex, parts: typing.SupportsInt | typing.SupportsIndex, tolerance: typing.SupportsFloat | typing.SupportsIndex) -> list[float]:
    """
    Every place between two limits where a function changes its sign.
    
    Parameters
    ----------
    f : [any unit]
        the function; a part where it is no number is passed over
    low : [any unit]
        lower limit
    high : [any unit]
        upper limit
    parts : [-]
        n, in how many parts to look, >= 1
    tolerance : [-]
        how narrow a bracket becomes, over the whole width
    
    Returns
    -------
    [unit of the limits]
        ascending; two changes within one part go unseen
    
    Formula
    -------
    regula falsi and halving in turn in every one of n equal parts whose ends differ in sign
    
    Range
    -----
    low <= high, both finite.
    
    Errors
    ------
    InputError `delivery.limits`, `delivery.parts` where out of range.
    
    Source
    ------
    definition
    
    Verified by
    -----------
    tests/cpp/delivery/test_break_even.cpp
    """
def daily_cost(users: collections.abc.Sequence[RoadUsers], currency: str, days: typing.SupportsFloat | typing.SupportsIndex | None) -> DailyCost:
    """
    The road-user cost of a day of closures.
    
    At one structure a closure stands once a day. A crew that goes from structure to structure may
    close two in a day: then the days are those of its work.
    
    Parameters
    ----------
    users : [-, n]
        the traffic past the closures of each structure
    currency : [text]
        of the amount
    days : [day]
        of work under all closures; nothing for one a closure
    
    Returns
    -------
    [currency per day]
        with what it rests on
    
    Formula
    -------
    amount = round(sum of total / days)
    
    Range
    -----
    structures without a closure count nothing.
    
    Errors
    ------
    InputError `bid.daily_cost` where there is no closure, or where a total cannot be
    figured, naming what is missing, or where the days are not above 0; MoneyError `money.overflow`
    
    Source
    ------
    road-user cost of the estimates; definition of a mean
    
    Verified by
    -----------
    tests/cpp/bid/test_award.cpp
    """
def day_length(latitude: typing.SupportsFloat | typing.SupportsIndex, day: str) -> float:
    """
    How long the sun's upper edge is above the horizon on a day.
    
    Parameters
    ----------
    latitude : [rad]
        north positive, -pi / 2 to pi / 2
    day : [-]
        the day
    
    Returns
    -------
    [s]
        0 where the sun does not rise, 24 h where it does not set
    
    Formula
    -------
    N = (24 h / pi) acos((sin(-0.833 deg) - sin(lat) sin(d)) / (cos(lat) cos(d))),
    d = 23.45 deg sin(360 deg (284 + n) / 365), n the day of the year
    
    Range
    -----
    level horizon; within some 10 minutes up to 60 degrees of latitude.
    
    Errors
    ------
    InputError `calendar.latitude` beyond the poles
    
    Source
    ------
    declination of P. I. Cooper, Solar Energy 12 (1969) 333; sunrise at 50 arc minutes below
    the horizon as almanacs count it (both from memory)
    
    Verified by
    -----------
    tests/cpp/work/test_daylight.cpp
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
def declining_balance(price: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], salvage: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], share: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], year: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    Depreciation of one year as a share of what the equipment was worth at its beginning.
    
    Parameters
    ----------
    price : [currency]
        P, bought for, >= 0
    salvage : [currency]
        S, below which it is not depreciated, >= 0
    share : [-]
        d, of the value at the year's beginning, 0 to 1; 2 / N is called double
    year : [-]
        k, the year, >= 1
    
    Returns
    -------
    [currency]
        depreciation of that year
    
    Formula
    -------
    min(P (1 - d)^(k-1) d, P (1 - d)^(k-1) - S), not below 0
    
    Range
    -----
    any.
    
    Errors
    ------
    InputError `cost.price`, `cost.salvage`, `cost.share`, `cost.year` where out of range
    
    Source
    ------
    definition
    
    Verified by
    -----------
    tests/cpp/cost/test_ownership.cpp
    """
def delay_cost(delay: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], value: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    What lost time costs.
    
    Parameters
    ----------
    delay : [each s]
        vehicles times the time each loses
    value : [currency/s]
        of one vehicle
    
    Returns
    -------
    [currency]
        cost
    
    Formula
    -------
    cost = vehicle-hours x value
    
    Range
    -----
    any.
    
    Errors
    ------
    none.
    
    Source
    ------
    definition
    
    Verified by
    -----------
    tests/cpp/closure/test_road_user.cpp
    """
def delivery_case(terms: collections.abc.Sequence[typing.SupportsFloat | typing.SupportsIndex], areas: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], direct: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], wages: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], crew_time: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], price: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> list[float]:
    """
    A case with the work of a list that was priced either way.
    
    Parameters
    ----------
    given : [SI unit of each input]
        the terms; what follows from prices is replaced
    list : [-]
        the list, both ways
    
    Returns
    -------
    [SI unit of each input]
        the case, checked
    
    Formula
    -------
    costs, crew time and price in two parts; labour share = sum of wages / sum of direct
    
    Range
    -----
    n >= 1.
    
    Errors
    ------
    those of `two_part` and `check`.
    
    Source
    ------
    definition
    
    Verified by
    -----------
    tests/cpp/delivery/test_ways.cpp
    """
def delivery_inputs() -> dict[str, typing.Any]:
    """
    One input: what it is called, what it may be, why it stands there.
    """
def delivery_units(plan: Plan) -> list[str]:
    """
    One input: what it is called, what it may be, why it stands there.
    """
def detour_cost(vehicles: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], detour: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], speed: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], value: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], running: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    What it costs to drive round a closed road.
    
    Parameters
    ----------
    vehicles : [each]
        that would have passed
    detour : [m]
        how much longer the way is, >= 0
    speed : [m/s]
        on it, > 0
    value : [currency/s]
        of a vehicle's time
    running : [currency/m]
        of a vehicle
    
    Returns
    -------
    [currency]
        cost
    
    Formula
    -------
    cost = vehicles x detour x (value / speed + running cost)
    
    Range
    -----
    every vehicle takes the detour; the congestion of other roads is not seen.
    
    Errors
    ------
    InputError `closure.vehicles`, `closure.detour`, `closure.speed` where out of range
    
    Source
    ------
    definition
    
    Verified by
    -----------
    tests/cpp/closure/test_road_user.cpp
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
def discount_rate(edition: typing.SupportsInt | typing.SupportsIndex, kind: str, years: typing.SupportsFloat | typing.SupportsIndex) -> float:
    """
    The published rate of a project by its length.
    
    Parameters
    ----------
    edition : [-]
        calendar year of the table
    prices : [-]
        constant for a real rate, current for a nominal one
    years : [-]
        length of the project, > 0
    
    Returns
    -------
    [-]
        rate a year; real rates may be below 0
    
    Formula
    -------
    straight line between the two terms around it; under the shortest term its rate, beyond
    30 years the rate of 30
    
    Range
    -----
    beyond the longest term only where that is 30 years.
    
    Errors
    ------
    InputError `delivery.edition`, `delivery.years` where no rate was published.
    
    Source
    ------
    OMB Circular A-94, appendix C; rule between terms and beyond 30 years: the same
    
    Verified by
    -----------
    tests/cpp/delivery/test_equipment.cpp
    """
def discount_rates() -> dict[str, typing.Any]:
    """
    A published rate.
    """
def disposal_by_load(loads: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], charge: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    Disposal by the load.
    
    Parameters
    ----------
    loads : [each]
        n, >= 0
    charge : [currency]
        c, for each load, >= 0
    
    Returns
    -------
    [currency]
        amount
    
    Formula
    -------
    count_up(n) c
    
    Range
    -----
    any; a load begun is a load.
    
    Errors
    ------
    InputError `cost.loads`, `cost.charge` where below 0
    
    Source
    ------
    common practice
    
    Verified by
    -----------
    tests/cpp/cost/test_materials.cpp
    """
def disposal_by_mass(mass: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], price: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], least: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    Disposal by mass with a least charge, as a landfill weighs it.
    
    Parameters
    ----------
    mass : [kg]
        m, dumped, >= 0
    price : [currency/kg]
        p, >= 0
    least : [currency]
        minimum charge, >= 0; none for nothing dumped
    
    Returns
    -------
    [currency]
        amount
    
    Formula
    -------
    max(m p, least)
    
    Range
    -----
    any.
    
    Errors
    ------
    InputError `cost.mass`, `cost.price`, `cost.least` where below 0
    
    Source
    ------
    common practice
    
    Verified by
    -----------
    tests/cpp/cost/test_materials.cpp
    """
def distributed(indirect: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], direct: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], all: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    The part of an indirect cost that a direct cost bears, in proportion.
    
    Parameters
    ----------
    indirect : [currency]
        I, to be shared out
    direct : [currency]
        D, of the component, >= 0
    all : [currency]
        sum of D over all that bear it, > 0
    
    Returns
    -------
    [currency]
        the component's part
    
    Formula
    -------
    I D / sum of D
    
    Range
    -----
    any.
    
    Errors
    ------
    InputError `cost.direct`, `cost.all` where out of range
    
    Source
    ------
    common practice
    
    Verified by
    -----------
    tests/cpp/cost/test_contract.cpp
    """
def doubt_columns(doubts: collections.abc.Sequence[FormDoubt]) -> dict[str, typing.Any]:
    """
    Columns of doubtful cells.
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
def drawn_advantages(values: collections.abc.Sequence[typing.SupportsFloat | typing.SupportsIndex], basis: str, direct: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], crew_time: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], price: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], estimated: typing.Annotated[collections.abc.Sequence[typing.SupportsFloat | typing.SupportsIndex], "FixedSize(3)"], replicates: typing.SupportsInt | typing.SupportsIndex, seed: typing.SupportsInt | typing.SupportsIndex, ranges: collections.abc.Sequence[tuple[str, typing.SupportsFloat | typing.SupportsIndex, typing.SupportsFloat | typing.SupportsIndex, typing.SupportsFloat | typing.SupportsIndex]]) -> list[float]:
    """
    The advantage of own people in every draw.
    
    Parameters
    ----------
    given : [SI unit of each input]
        the case
    basis : [-]
        avoidable or full cost
    totals : [-]
        of the list, both ways in the same draws
    inputs : [-, n]
        inputs that are drawn
    
    Returns
    -------
    [currency, draws]
        the advantage
    
    Formula
    -------
    the case with its costs, crew time and price times what the draw has of the estimate,
    and uncertain inputs of the choice drawn
    
    Range
    -----
    wages keep their share of the direct cost.
    
    Errors
    ------
    those of `check`; InputError `delivery.draws` where lists differ, are empty, or no whole
    multiple of the replicates; `delivery.estimated` where an estimate is not above 0.
    
    Source
    ------
    common random numbers, common practice of simulation
    
    Verified by
    -----------
    tests/cpp/delivery/test_break_even.cpp
    """
def economic_life(purchase: Purchase, most: typing.SupportsInt | typing.SupportsIndex) -> tuple[float, float, list[float], bool]:
    """
    The age at which replacing equipment by its like costs least a year.
    
    Parameters
    ----------
    purchase : [-]
        as of `annual_cost`
    most : [-]
        whole number of years looked at, 1 to 100
    
    Returns
    -------
    [-]
        the age; the younger one of two that cost the same
    
    Formula
    -------
    least over n of P (A/P) - S (A/F) + c + g (A/G)
    
    Range
    -----
    equipment that is replaced by its like for ever.
    
    Errors
    ------
    those of `annual_cost`; InputError `delivery.most`.
    
    Source
    ------
    engineering economy, economic service life
    
    Verified by
    -----------
    tests/cpp/delivery/test_equipment.cpp
    """
def equipment_hour(ownership: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], operating: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], utilisation: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    What an hour of equipment costs that works only a part of the hours it is charged.
    
    Parameters
    ----------
    ownership : [currency/s]
        O, for every hour charged, >= 0
    operating : [currency/s]
        R, for every hour it works, >= 0
    utilisation : [-]
        u, working hours over charged hours, 0 to 1
    
    Returns
    -------
    [currency/s]
        rate of a charged hour
    
    Formula
    -------
    O + u R
    
    Range
    -----
    any.
    
    Errors
    ------
    InputError `cost.ownership`, `cost.operating`, `cost.utilisation` where out of range
    
    Source
    ------
    definition
    
    Verified by
    -----------
    tests/cpp/cost/test_operating.cpp
    """
def equipment_times(inventory: Inventory, plan: Plan, threads: typing.SupportsInt | typing.SupportsIndex) -> list[tuple[str, list[float]]]:
    """
    The hours that each structure of a list takes of every kind of equipment, all pieces together.
    
    Parameters
    ----------
    structures : [-, n]
        the records
    plan : [-]
        the job made ready
    threads : [-]
        how many; 0 for as many as the machine has
    
    Returns
    -------
    [s, kinds x n]
        by row of the job's equipment, then by structure; NaN where it has no price
    
    Formula
    -------
    number x paid time of the crew that has it, as hire is paid; 0 where it is not needed
    
    Range
    -----
    any list; dump runs after the shift are beside it.
    
    Errors
    ------
    those of `estimate::resolve`.
    
    Source
    ------
    definition
    
    Verified by
    -----------
    tests/python/test_delivery_split.py
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
def escalated(amount: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], inflation: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], start: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], length: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    A price of its day brought to the midpoint of the work.
    
    Parameters
    ----------
    amount : [currency]
        A, at prices of the day of the estimate
    inflation : [-]
        f, of prices a year; may be below 0
    start : [s]
        s, from the day of the prices to the first day of work, >= 0
    length : [s]
        w, from the first day of work to the last, >= 0
    
    Returns
    -------
    [currency]
        amount at prices of the midpoint
    
    Formula
    -------
    A (1 + f)^(s + w / 2)
    
    Range
    -----
    a year is 365 days.
    
    Errors
    ------
    InputError `cost.inflation`, `cost.start`, `cost.length` where out of range
    
    Source
    ------
    common practice: escalation to the midpoint of construction
    
    Verified by
    -----------
    tests/cpp/cost/test_materials.cpp
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
def estimate_accuracy(projects: collections.abc.Sequence[tuple[str, str]]) -> tuple[int, int, bool]:
    """
    Whether estimates are near enough to low bids often enough.
    
    Parameters
    ----------
    projects : [currency, n]
        estimate and low bid
    
    Returns
    -------
    [-]
        counts; not met without projects
    
    Formula
    -------
    near where |estimate - low| <= 0.10 low; met where near >= half the projects
    
    Range
    -----
    low bids above zero are counted.
    
    Errors
    ------
    none.
    
    Source
    ------
    FHWA criterion as stated in KTC-91-6 (1991), row bids-001
    
    Verified by
    -----------
    tests/cpp/bid/test_award.cpp
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
def explain_ways(values: collections.abc.Sequence[typing.SupportsFloat | typing.SupportsIndex], basis: str, sources: collections.abc.Sequence[str], plan: Plan, depth: typing.SupportsInt | typing.SupportsIndex) -> Derivation:
    """
    How the advantage of own people comes about, down to the inputs.
    
    Parameters
    ----------
    given : [SI unit of each input]
        the case
    basis : [-]
        avoidable or full cost
    sources : [text, n]
        where each input comes from; empty: what the table says
    
    Returns
    -------
    [-]
        the derivation
    
    Range
    -----
    cases that `check` passes.
    
    Errors
    ------
    those of `check`.
    
    Source
    ------
    own convention
    
    Verified by
    -----------
    tests/cpp/delivery/test_ways.cpp
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
def first_round(draws: typing.SupportsInt | typing.SupportsIndex, replicates: typing.SupportsInt | typing.SupportsIndex) -> tuple[int, int]:
    """
    With how many draws a run begins that is to stop once it knows enough.
    
    Parameters
    ----------
    most : [-]
        the run as it would be without a limit
    
    Returns
    -------
    [-]
        the same with the replicates of the first round
    
    Formula
    -------
    at least 4 replicates, of as many draws each as `most` has
    
    Range
    -----
    any settings that `simulate` takes.
    
    Errors
    ------
    InputError `simulate.draws` where draws are no whole multiple of replicates or none.
    
    Source
    ------
    own convention
    
    Verified by
    -----------
    tests/cpp/simulate/test_simulation.cpp
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
def fuel(power: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], fuel_use: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], load: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], price: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    Fuel of an hour.
    
    Parameters
    ----------
    power : [W]
        W, rated power of the engine, >= 0
    fuel_use : [m3/J]
        u, fuel for an energy at full load, >= 0; 0.04 gal/hp/h of diesel
    load : [-]
        l, share of the full load on the average, 0 to 1
    price : [currency/m3]
        p, price of the fuel, >= 0
    
    Returns
    -------
    [currency/s]
        fuel
    
    Formula
    -------
    W u l p
    
    Range
    -----
    any.
    
    Errors
    ------
    InputError `cost.power`, `cost.fuel_use`, `cost.load`, `cost.fuel_price`
    
    Source
    ------
    construction equipment textbooks, from memory
    
    Verified by
    -----------
    tests/cpp/cost/test_published.cpp
    """
def girder_sections(units: str) -> list[tuple[str, str, typing.Any]]:
    """
    A standard section.
    """
def gradient_present_worth_factor(interest: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], periods: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    What amounts are worth now that grow by one unit of money a period, from 0 at the end of the
    first (P/G).
    
    Parameters
    ----------
    interest : [-]
        i, rate a period; may be 0 or below
    periods : [-]
        n, whole number of periods, 1 to 10,000
    
    Returns
    -------
    [-]
        present amount over the growth of a period
    
    Formula
    -------
    sum over k = 2 ... n of (k - 1) (1 + i)^-k
    
    Range
    -----
    i above -1.
    
    Errors
    ------
    InputError `cost.interest`, `cost.periods` where out of range or not whole
    
    Source
    ------
    engineering economy factor tables
    
    Verified by
    -----------
    tests/cpp/cost/test_published.cpp
    """
def gradient_series_factor(interest: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], periods: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    The even amount a period that growing amounts come to (A/G).
    
    Parameters
    ----------
    interest : [-]
        i, rate a period; may be 0 or below
    periods : [-]
        n, whole number of periods, 1 to 10,000
    
    Returns
    -------
    [-]
        even amount over the growth of a period
    
    Formula
    -------
    (P/G) (A/P)
    
    Range
    -----
    i above -1.
    
    Errors
    ------
    as `gradient_present_worth_factor`
    
    Source
    ------
    engineering economy factor tables
    
    Verified by
    -----------
    tests/cpp/cost/test_published.cpp
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
def guess_mean(low: typing.SupportsFloat | typing.SupportsIndex, likely: typing.SupportsFloat | typing.SupportsIndex, high: typing.SupportsFloat | typing.SupportsIndex) -> float:
    """
    The mean; of an input without width its value, to the bit.
    
    Returns
    -------
    [unit of the input]
    
    Formula
    -------
    triangular (a + m + b) / 3; PERT (a + 4 m + b) / 6; lognormal exp(mu + sigma^2 / 2)
    
    Range
    -----
    a guess that passes check().
    
    Errors
    ------
    none.
    
    Source
    ------
    NIST/SEMATECH e-Handbook of Statistical Methods 1.3.6.6; Malcolm et al. 1959
    
    Verified by
    -----------
    tests/cpp/random/test_three_point.cpp
    """
def hard_to_hold(estimate: Estimate) -> list[dict[str, typing.Any]]:
    """
    The hand-held methods at work whose jet one person cannot hold, or cannot from a bucket; that
    limit counts for methods that wash something reached from below.
    
    Parameters
    ----------
    estimate : [-]
        an estimate
    
    Returns
    -------
    [-, n]
        at most one for each method, the ground's limit before the bucket's
    
    Formula
    -------
    reaction > limit
    
    Range
    -----
    any estimate.
    
    Errors
    ------
    none.
    
    Source
    ------
    one_person_reaction, bucket_reaction (common practice)
    
    Verified by
    -----------
    tests/cpp/estimate/test_remedies.cpp
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
def hauled_water(volume: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], price: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], tank: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], trip: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], rate: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    Water that is hauled: whole truckloads, each with its trip, and the volume.
    
    Parameters
    ----------
    volume : [m3]
        V, used, >= 0
    price : [currency/m3]
        p, >= 0
    tank : [m3]
        B, what a truck brings, > 0
    trip : [s]
        t, of a truck there and back with filling, >= 0
    rate : [currency/s]
        r, truck with driver, >= 0
    
    Returns
    -------
    [currency]
        amount
    
    Formula
    -------
    V p + count_up(V / B) t r
    
    Range
    -----
    any.
    
    Errors
    ------
    InputError `cost.volume`, `cost.price`, `cost.tank`, `cost.trip`, `cost.rate`
    
    Source
    ------
    common practice
    
    Verified by
    -----------
    tests/cpp/cost/test_materials.cpp
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
def heavy_vehicle_factor(share: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], equivalent: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    The share by which trucks thin a flow of passenger cars.
    
    Parameters
    ----------
    share : [-]
        P, share of trucks, 0 to 1
    equivalent : [-]
        E, passenger cars that a truck stands for, >= 1
    
    Returns
    -------
    [-]
        vehicles for each passenger car
    
    Formula
    -------
    f_HV = 1 / (1 + P (E - 1))
    
    Range
    -----
    any.
    
    Errors
    ------
    InputError `closure.truck_share`, `closure.truck_equivalent` where out of range
    
    Source
    ------
    Highway Capacity Manual (all editions)
    
    Verified by
    -----------
    tests/cpp/closure/test_work_zone.cpp
    """
def hire(time: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], pieces: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], rate: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    What people or equipment cost for a time.
    
    Parameters
    ----------
    time : [s]
        paid time of each
    pieces : [each]
        how many
    rate : [currency/s]
        cost of one for a time
    
    Returns
    -------
    [currency]
        amount, unrounded
    
    Formula
    -------
    amount = n rate t
    
    Range
    -----
    any.
    
    Errors
    ------
    none.
    
    Source
    ------
    definition
    
    Verified by
    -----------
    tests/cpp/cost/test_hire.cpp
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
def hourly(annual: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], hours: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    A yearly cost spread over the hours of the year.
    
    Parameters
    ----------
    annual : [currency]
        A, cost of a year
    hours : [s]
        h, hours used or charged in a year, > 0
    
    Returns
    -------
    [currency/s]
        cost of an hour
    
    Formula
    -------
    A / h
    
    Range
    -----
    any.
    
    Errors
    ------
    InputError `cost.hours` where not above 0
    
    Source
    ------
    definition
    
    Verified by
    -----------
    tests/cpp/cost/test_published.cpp
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
def hourly_shares(pattern: str) -> numpy.typing.NDArray[numpy.float64]:
    """
    A usual distribution of a day's traffic; a count of the road takes its place.
    
    Parameters
    ----------
    pattern : [-]
        rural or urban
    
    Returns
    -------
    [-, 24]
        shares that add up to 1
    
    Range
    -----
    working days, both directions together.
    
    Errors
    ------
    none.
    
    Source
    ------
    FHWA-SA-98-079 (1998), default hourly distributions (from memory)
    
    Verified by
    -----------
    tests/cpp/closure/test_hours.cpp
    """
def hours_table(estimate: Estimate) -> dict[str, typing.Any]:
    """
    The hours of every crew: of each party, and of a stage or everyone where people belong to it.
    
    Parameters
    ----------
    estimate : [-]
        an estimate
    
    Returns
    -------
    [s, n]
        in the order of the stages, everyone first
    
    Range
    -----
    any estimate; people on a dump run after the shift are paid beside it and not in it.
    
    Errors
    ------
    none.
    
    Source
    ------
    definition
    
    Verified by
    -----------
    tests/cpp/estimate/test_hours_table.cpp
    """
def hydrant_water(volume: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], price: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], fee: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    Water from a main or hydrant: a permit or meter fee, and the volume.
    
    Parameters
    ----------
    volume : [m3]
        V, drawn, >= 0
    price : [currency/m3]
        p, >= 0
    fee : [currency]
        F, permit, meter, backflow preventer for the work, >= 0
    
    Returns
    -------
    [currency]
        amount
    
    Formula
    -------
    F + V p
    
    Range
    -----
    any; without a fee it is water bought.
    
    Errors
    ------
    InputError `cost.volume`, `cost.price`, `cost.fee` where below 0
    
    Source
    ------
    common practice
    
    Verified by
    -----------
    tests/cpp/cost/test_materials.cpp
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
def implied_inflation(nominal: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], real: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    The inflation that a nominal and a real rate imply.
    
    Parameters
    ----------
    nominal : [-]
        i, rate with inflation
    real : [-]
        r, rate over inflation
    
    Returns
    -------
    [-]
        inflation
    
    Formula
    -------
    (1 + i) / (1 + r) - 1
    
    Range
    -----
    both above -1.
    
    Errors
    ------
    InputError `cost.nominal`, `cost.real` where out of range
    
    Source
    ------
    definition (Fisher)
    
    Verified by
    -----------
    tests/cpp/cost/test_published.cpp
    """
def indices_of(first: collections.abc.Sequence[typing.SupportsFloat | typing.SupportsIndex], second: collections.abc.Sequence[typing.SupportsFloat | typing.SupportsIndex], exchanged: collections.abc.Sequence[collections.abc.Sequence[typing.SupportsFloat | typing.SupportsIndex]], replicates: typing.SupportsInt | typing.SupportsIndex) -> dict[str, typing.Any]:
    """
    Both indices of every factor, with standard errors.
    
    Parameters
    ----------
    runs : [any unit]
        replicate after replicate
    replicates : [-]
        r, independent samples that the draws are made of
    
    Returns
    -------
    [-, factors]
        in the order of the factors
    
    Formula
    -------
    indices over all draws; standard error: sd of the replicates' indices / sqrt(r)
    
    Range
    -----
    draws that are a whole multiple of replicates.
    
    Errors
    ------
    InputError `simulate.runs` where lengths differ, are 0 or no multiple of replicates.
    
    Source
    ------
    as of the indices
    
    Verified by
    -----------
    tests/cpp/simulate/test_indices.cpp
    """
def inventory_notes(inventory: Inventory) -> dict[str, typing.Any]:
    """
    Files, rows, rejected records and doubts of an inventory, as plain values.
    """
def inventory_of(columns: dict[str, typing.Any], notes: dict[str, typing.Any]) -> Inventory:
    """
    The records that columns hold.
    
    Parameters
    ----------
    columns : [SI, m]
        as `structure_columns` gives them, in any order; a field that is left out
        is not recorded
    
    Returns
    -------
    [-, n]
        the records, to the bit
    
    Range
    -----
    a column `structure_id`; columns of one length.
    
    Errors
    ------
    UnknownNameError `structures.column` for a name that is none; InputError
    `structures.column` for a column of another kind, of another length, twice, or none of the
    numbers; `structures.cell` for a value that cannot be; those of `read_structures`.
    
    Source
    ------
    own convention
    
    Verified by
    -----------
    tests/cpp/json/test_structure_columns.cpp
    """
def inventory_slice(inventory: Inventory, first: typing.SupportsInt | typing.SupportsIndex, count: typing.SupportsInt | typing.SupportsIndex) -> Inventory:
    """
    Some structures of an inventory that follow on one another.
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
def join_bid_sheets(sheets: collections.abc.Sequence[SheetRead], mapping: FormMapping) -> tuple[BidSet, list[FormDoubt]]:
    """
    Sheets for one contract together: the items of the first, then what others add; where units or
    quantities differ from the first it is a doubt. A bidder who is the engineer goes to `engineer`.
    
    Parameters
    ----------
    sheets : [-, n]
        sheets that were read
    mapping : [-]
        as they were read with
    doubts : [-, n]
        what is found is added
    
    Returns
    -------
    [-]
        the bids
    
    Range
    -----
    at least one sheet.
    
    Errors
    ------
    InputError `bid.bidder` for two bids of one name, `bid.no_item`; MoneyError
    `money.currency`.
    
    Source
    ------
    common practice
    
    Verified by
    -----------
    tests/cpp/bid/test_read_form.cpp
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
def kept_levels() -> typing.Annotated[list[float], "FixedSize(9)"]:
    """
    Probabilities whose quantiles are kept of every structure.
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
def labour_hour(cash: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], fringe: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], burden: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], leave: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], allowance: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    What a plain hour costs the employer.
    
    Parameters
    ----------
    cash : [currency/s]
        paid in cash
    fringe : [currency/s]
        paid into plans for every hour worked; no tax on it
    burden : [-]
        b, payroll taxes and insurance over cash pay, >= 0
    leave : [-]
        L, paid hours for every hour worked, > 0
    allowance : [currency/s]
        a, per diem over the hours of a day
    
    Returns
    -------
    [currency/s]
        cost of an hour worked
    
    Formula
    -------
    cash L (1 + b) + fringe + a
    
    Range
    -----
    any.
    
    Errors
    ------
    InputError `cost.cash`, `cost.fringe`, `cost.burden`, `cost.leave`, `cost.allowance`
    
    Source
    ------
    common practice; construction accounting: total annual cost over hours worked
    
    Verified by
    -----------
    tests/cpp/cost/test_wage.cpp
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
def learn(log: JobLog, plan: Plan, inventory: Inventory, crew: str, agency: str, least_jobs: typing.SupportsInt | typing.SupportsIndex, least_gain: typing.SupportsFloat | typing.SupportsIndex, leave_out_outliers: bool) -> Learned:
    """
    Learns the rates of a job from a log.
    
    Each value is log-normal from job to job. What the job says is believed beforehand; the log is
    pooled from crew over agency. A value keeps its old range where whom it is asked for did fewer
    than `least_jobs`, or where the log is worth less than `least_gain` jobs for its level.
    
    Parameters
    ----------
    log : [-]
        finished jobs
    plan : [-]
        the job made ready
    inventory : [-]
        the structures the log names
    settings : [-]
        for whom, and what is enough
    
    Returns
    -------
    [-]
        a row for every input of which the log says anything
    
    Formula
    -------
    `observe`, then `pooled`, then `restated`
    
    Range
    -----
    any log.
    
    Errors
    ------
    InputError `learning.settings` for settings that are out of range; those of `observe`.
    
    Source
    ------
    the parts it calls
    
    Verified by
    -----------
    tests/cpp/simulate/test_learning.cpp
    """
def leave_factor(paid: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], worked: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    Paid hours for every hour worked: leave and holidays are paid too.
    
    Parameters
    ----------
    paid : [s]
        in a year
    worked : [s]
        in a year, > 0
    
    Returns
    -------
    [-]
        >= 1 in practice
    
    Formula
    -------
    paid / worked
    
    Range
    -----
    any.
    
    Errors
    ------
    InputError `cost.paid`, `cost.worked` where out of range
    
    Source
    ------
    construction accounting: annual cost over hours worked, leave excluded
    
    Verified by
    -----------
    tests/cpp/cost/test_published.cpp
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
def linear_break_even(fixed: typing.SupportsFloat | typing.SupportsIndex, unit: typing.SupportsFloat | typing.SupportsIndex, other_fixed: typing.SupportsFloat | typing.SupportsIndex, other_unit: typing.SupportsFloat | typing.SupportsIndex) -> float | None:
    """
    The amount of work at which two ways cost the same, each a fixed cost and a cost by the unit.
    
    Parameters
    ----------
    fixed : [currency]
        F, of the first way, whatever the work
    unit : [currency]
        c, of the first way for a unit of work
    other_fixed : [currency]
        G, of the second way
    other_unit : [currency]
        d, of the second way
    
    Returns
    -------
    [units of work]
        the amount; empty where the two never cost the same at 0 or above
    
    Formula
    -------
    (F - G) / (d - c)
    
    Range
    -----
    any finite numbers.
    
    Errors
    ------
    none.
    
    Source
    ------
    definition
    
    Verified by
    -----------
    tests/cpp/delivery/test_break_even.cpp
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
def log_columns() -> list[str]:
    """
    Columns of a log of finished jobs.
    """
def longest_window(permitted: collections.abc.Sequence[typing.SupportsInt | typing.SupportsIndex], first: typing.SupportsInt | typing.SupportsIndex, hours: typing.SupportsInt | typing.SupportsIndex) -> tuple[int, int]:
    """
    The longest run of permitted hours within a part of the day, the earliest of equal ones.
    
    Parameters
    ----------
    permitted : [-, 24]
        as `permitted_hours` gives them
    within : [-]
        the part of the day
    
    Returns
    -------
    [-]
        first hour and how many; no hours where none is permitted
    
    Range
    -----
    a part that is permitted throughout is returned whole.
    
    Errors
    ------
    none.
    
    Source
    ------
    common practice
    
    Verified by
    -----------
    tests/cpp/closure/test_windows.cpp
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
def mobilization(pieces: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], distance: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], price: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], fixed: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    Bringing equipment and taking it back.
    
    Parameters
    ----------
    pieces : [each]
        n, that have to be hauled, >= 0
    distance : [m]
        d, one way, >= 0
    price : [currency/m]
        k, of hauling for a distance, >= 0
    fixed : [currency]
        F, loading, permit, set-up of each, >= 0
    
    Returns
    -------
    [currency]
        amount for coming and going
    
    Formula
    -------
    n (2 d k + F)
    
    Range
    -----
    any.
    
    Errors
    ------
    InputError `cost.pieces`, `cost.distance`, `cost.price`, `cost.fixed` where below 0
    
    Source
    ------
    common practice
    
    Verified by
    -----------
    tests/cpp/cost/test_materials.cpp
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
def net_present_value(flows: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], prices: str, rate: typing.SupportsFloat | typing.SupportsIndex, rate_of: str, inflation: typing.SupportsFloat | typing.SupportsIndex | None) -> float:
    """
    What flows of money are worth now.
    
    Parameters
    ----------
    flows : [currency, n]
        at the end of years 0, 1, 2, ...
    prices : [-]
        what the flows are stated in
    rate : [-]
        a year; may be below 0
    rate_of : [-]
        constant for a real rate, current for a nominal one
    inflation : [-]
        a year, where the two are of two kinds
    
    Returns
    -------
    [currency]
        net present value
    
    Formula
    -------
    sum over k of A_k (1 + i)^-k; where prices and rate are of two kinds, the rate is
    carried over by inflation f: 1 + nominal = (1 + real) (1 + f)
    
    Range
    -----
    n >= 1.
    
    Errors
    ------
    InputError `delivery.rate_of` where prices and rate are of two kinds and no inflation is
    given; `delivery.flows` where there is none or no number; those of the interest factors.
    
    Source
    ------
    OMB Circular A-94: real rates on constant prices, nominal rates on current ones
    
    Verified by
    -----------
    tests/cpp/delivery/test_equipment.cpp
    """
def nominal_rate(real: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], inflation: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    The rate at which money of every year's own prices is discounted.
    
    Parameters
    ----------
    real : [-]
        r, rate over inflation; may be below 0
    inflation : [-]
        f, of prices; may be below 0
    
    Returns
    -------
    [-]
        nominal rate
    
    Formula
    -------
    (1 + r) (1 + f) - 1
    
    Range
    -----
    both above -1.
    
    Errors
    ------
    InputError `cost.real`, `cost.inflation` where out of range
    
    Source
    ------
    definition (Fisher)
    
    Verified by
    -----------
    tests/cpp/cost/test_published.cpp
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
def one_lane_speed(limit: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    The speed at which vehicles pass the shared lane, where nothing else holds them back.
    
    Parameters
    ----------
    limit : [m/s]
        posted in the work zone, > 0
    
    Returns
    -------
    [m/s]
        speed
    
    Formula
    -------
    the limit less 2.4 mph, not below 5 mph
    
    Range
    -----
    two-lane roads; lane beside the work. Flaggers who lead traffic by a pilot car set it.
    
    Errors
    ------
    InputError `closure.limit` where out of range
    
    Source
    ------
    Highway Capacity Manual, 7th edition, chapter 26, appendix B, step 2; the floor: own
    convention
    
    Verified by
    -----------
    tests/cpp/closure/test_flagging.cpp
    """
def one_way_distance(travel: typing.SupportsFloat | typing.SupportsIndex, speed: typing.SupportsFloat | typing.SupportsIndex) -> float:
    """
    How far the yard lies from the work, by the time that crews travel.
    
    Parameters
    ----------
    travel : [s]
        t, there and back
    speed : [m/s]
        v, > 0
    
    Returns
    -------
    [m]
        one way
    
    Formula
    -------
    v t / 2
    
    Range
    -----
    any.
    
    Errors
    ------
    InputError `delivery.travel`, `delivery.speed` where out of range.
    
    Source
    ------
    definition
    
    Verified by
    -----------
    tests/cpp/delivery/test_break_even.cpp
    """
def optimal_green(length: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    The green of each direction that delays traffic least.
    
    Parameters
    ----------
    length : [m]
        between the two places where traffic waits, >= 0
    
    Returns
    -------
    [s]
        green
    
    Formula
    -------
    0.0375 s for each ft of the lane that is shared, not below 20 s and not above 60 s
    
    Range
    -----
    any length; outside 530 to 1,600 ft the limits hold.
    
    Errors
    ------
    InputError `closure.length` where negative
    
    Source
    ------
    Highway Capacity Manual, 7th edition, chapter 26, appendix B, example
    
    Verified by
    -----------
    tests/cpp/closure/test_flagging.cpp
    """
def overtime_base(cash: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], basic: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    The rate on which an overtime premium is reckoned.
    
    Parameters
    ----------
    cash : [currency/s]
        paid in cash
    basic : [currency/s]
        basic rate of the wage determination, without fringe
    
    Returns
    -------
    [currency/s]
        the higher one
    
    Formula
    -------
    max(cash, basic)
    
    Range
    -----
    any.
    
    Errors
    ------
    InputError `cost.cash`, `cost.basic` where below 0
    
    Source
    ------
    US DOL prevailing wage resource book; 29 CFR 5.32: the fringe is never paid at a premium
    
    Verified by
    -----------
    tests/cpp/cost/test_published.cpp
    """
def overtime_premium(cash: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], basic: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], factor: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], burden: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    What an overtime hour costs beyond a plain one.
    
    Parameters
    ----------
    cash : [currency/s]
        paid in cash
    basic : [currency/s]
        basic rate of the wage determination
    factor : [-]
        pay of an overtime hour to a plain one, >= 1
    burden : [-]
        b, what the premium bears: taxes below their caps, and insurance where the
        insurer rates overtime in full, >= 0
    
    Returns
    -------
    [currency/s]
        premium
    
    Formula
    -------
    max(cash, basic) (factor - 1) (1 + b)
    
    Range
    -----
    any.
    
    Errors
    ------
    InputError `cost.factor`, `cost.burden` and as `overtime_base`
    
    Source
    ------
    US DOL prevailing wage resource book; 29 CFR 5.32
    
    Verified by
    -----------
    tests/cpp/cost/test_published.cpp
    """
def ownership_by_investment(price: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], salvage: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], years: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], interest: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], keeping: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    What owning costs a year by average annual investment.
    
    Parameters
    ----------
    price : [currency]
        P, bought for, >= 0
    salvage : [currency]
        S, sold for at the end, >= 0
    years : [-]
        N, years of service, > 0
    interest : [-]
        i, a year; may be below 0
    keeping : [-]
        k, insurance, taxes and storage a year over the investment, >= 0
    
    Returns
    -------
    [currency]
        ownership a year
    
    Formula
    -------
    (P - S) / N + (i + k) AAI
    
    Range
    -----
    any.
    
    Errors
    ------
    InputError `cost.interest`, `cost.keeping` and as `straight_line`
    
    Source
    ------
    construction equipment textbooks, from memory
    
    Verified by
    -----------
    tests/cpp/cost/test_published.cpp
    """
def ownership_by_recovery(price: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], salvage: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], years: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], interest: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], keeping: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    What owning costs a year by capital recovery.
    
    Parameters
    ----------
    price : [currency]
        P, bought for, >= 0
    salvage : [currency]
        S, sold for at the end, >= 0
    years : [-]
        N, years of service, > 0
    interest : [-]
        i, a year; may be below 0
    keeping : [-]
        k, insurance, taxes and storage a year over the average investment, >= 0
    
    Returns
    -------
    [currency]
        ownership a year
    
    Formula
    -------
    P (A/P) - S (A/F) + k AAI
    
    Range
    -----
    any.
    
    Errors
    ------
    InputError `cost.interest`, `cost.keeping` and as `straight_line`
    
    Source
    ------
    engineering economy; definition
    
    Verified by
    -----------
    tests/cpp/cost/test_ownership.cpp
    """
def ownership_names() -> list[str]:
    """
    How ownership may be reckoned, in the order of the values of that part.
    """
def parse_as(text: str, like: str, path: str) -> float:
    """
    The SI value of a text, of the dimension that `like` is a unit of.
    """
def parse_quantity(text: str, path: str) -> tuple[float, str, str]:
    """
    SI value, SI unit and currency of a text.
    """
def passenger_car_demand(demand: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], peak_factor: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], grade_factor: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], heavy_factor: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    The demand that a lane has to serve, in passenger cars and at the peak of the hour.
    
    Parameters
    ----------
    demand : [each/s]
        V, vehicles of the hour, >= 0
    peak_factor : [-]
        PHF, mean flow to that of the peak quarter, > 0, <= 1
    grade_factor : [-]
        f_g, > 0
    heavy_factor : [-]
        f_HV of `heavy_vehicle_factor`, > 0, <= 1
    
    Returns
    -------
    [each/s]
        passenger cars
    
    Formula
    -------
    v = V / (PHF f_g f_HV)
    
    Range
    -----
    two-lane roads.
    
    Errors
    ------
    InputError `closure.demand`, `closure.peak_factor`, `closure.grade_factor`,
    `closure.heavy_factor` where out of range
    
    Source
    ------
    Highway Capacity Manual, 7th edition, chapter 26, appendix B, step 1
    
    Verified by
    -----------
    tests/cpp/closure/test_flagging.cpp
    """
def pay_items(programme: Programme, inventory: Inventory, items: ItemList, contract: str, options: collections.abc.Mapping[str, str], price_decimals: typing.SupportsInt | typing.SupportsIndex, draws: typing.SupportsInt | typing.SupportsIndex, seed: typing.SupportsInt | typing.SupportsIndex, threads: typing.SupportsInt | typing.SupportsIndex) -> PayItems:
    """
    The pay items of a programme.
    
    A line of the cost belongs to the item whose cover names it most closely; what is spread goes
    to the items in proportion to their own lines. Amounts are rounded once, by largest remainder,
    so that they add up to the estimate; a unit price is the amount over the quantity as stated,
    rounded; what that leaves goes into the list's `rounding` item where that is a lump sum and
    stays positive, and is shown as `residue` otherwise. Low and high of a quantity are the
    5 % and 95 % quantiles of draws of all structures at once.
    
    Parameters
    ----------
    programme : [-]
        the structures priced
    structures : [-, n]
        the records it was priced from, in the same order
    scheme : [-]
        the item list, checked
    settings : [-]
        kind of contract, options, decimals, draws
    
    Returns
    -------
    [currency]
        the items
    
    Formula
    -------
    price = round(amount / quantity); extension = round(price x quantity)
    
    Range
    -----
    at least one priced structure.
    
    Errors
    ------
    InputError `bid.left_over` naming the cost lines that no item takes, `bid.twice` naming
    lines that two items take, `bid.no_quantity` where an item has cost and no quantity,
    `bid.no_item`, `bid.dimension` where a driver is not counted in the item's unit, `bid.decimals`;
    UnknownNameError `bid.option`, `schema.key` of a driver; Interrupted.
    
    Source
    ------
    common practice: indirect cost in proportion to direct cost
    
    Verified by
    -----------
    tests/cpp/bid/test_pay_items.cpp
    """
def pay_units() -> list[tuple[str, str]]:
    """
    Codes of the units that items are paid by, and what each is.
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
def permitted_hours(demand: collections.abc.Sequence[typing.SupportsFloat | typing.SupportsIndex], open: typing.SupportsFloat | typing.SupportsIndex, closed: typing.SupportsFloat | typing.SupportsIndex, waiting: typing.SupportsFloat | typing.SupportsIndex, delay: typing.SupportsFloat | typing.SupportsIndex) -> list[int]:
    """
    How many hours the road may be closed from each hour of the day on.
    
    Parameters
    ----------
    day : [each/s]
        demand and capacities
    limits : [each, s]
        what traffic may suffer
    
    Returns
    -------
    [-, 24]
        hours by the hour from which on, 0 to 24
    
    Formula
    -------
    the most hours whose queue and delay stay within the limits; both only grow with the
    hours closed, so that halving finds it
    
    Range
    -----
    whole hours.
    
    Errors
    ------
    those of `queue`; InputError `closure.queue_limit`, `closure.delay_limit` where negative
    
    Source
    ------
    common practice
    
    Verified by
    -----------
    tests/cpp/closure/test_windows.cpp
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
def plan_outings(inventory: Inventory, plan: Plan, groups: collections.abc.Sequence[tuple[str, collections.abc.Sequence[str], bool]], si: collections.abc.Mapping[str, typing.SupportsFloat | typing.SupportsIndex], first: str, daylight: bool, air: collections.abc.Sequence[tuple[str, typing.SupportsFloat | typing.SupportsIndex, bool]]) -> OutingPlan:
    """
    Puts structures together and lays out the shifts of one crew that serves them one outing after
    the other.
    
    Groups come first, as they are listed, then twins: two structures over the same thing, near each
    other, of which the records call one the right and one the left of a pair. Of the rest, in the order of their numbers, each takes the
    nearest of its neighbours as long as all of them fit into one shift. People and equipment are
    paid for whole shifts; those that only some structures need, as flaggers, for the shifts that
    serve one of them.
    
    Parameters
    ----------
    structures : [-, n]
        the records
    plan : [-]
        the job made ready
    rules : [-]
        how structures are put together
    
    Returns
    -------
    [-]
        the outings with hours and cost
    
    Range
    -----
    lists of a season: the search for neighbours takes time with the square of their number.
    No outing begins before the notices of its structures allow, counted from the day of asking.
    
    Errors
    ------
    UnknownNameError `outing.structure` for a number that is not on the list; InputError
    `outing.twice`, `outing.rules`, `calendar.closed`; those of `lay_out_shifts`.
    
    Source
    ------
    common practice
    
    Verified by
    -----------
    tests/cpp/estimate/test_outings.cpp
    """
def present_worth(annual: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], interest: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], years: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    Present worth of an even yearly cost.
    
    Parameters
    ----------
    annual : [currency]
        A, at every year's end
    interest : [-]
        i, a year, real for costs in prices of today; may be below 0
    years : [-]
        n, > 0
    
    Returns
    -------
    [currency]
        present worth
    
    Formula
    -------
    A (P/A)
    
    Range
    -----
    any.
    
    Errors
    ------
    as `series_present_worth_factor`
    
    Source
    ------
    OMB Circular A-94: real rates on real costs, nominal on nominal ones
    
    Verified by
    -----------
    tests/cpp/cost/test_published.cpp
    """
def present_worth_factor(interest: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], periods: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    What one unit of money of later is worth now (P/F).
    
    Parameters
    ----------
    interest : [-]
        i, rate a period; may be below 0
    periods : [-]
        n, number of periods, >= 0
    
    Returns
    -------
    [-]
        present amount over future amount
    
    Formula
    -------
    (1 + i)^-n
    
    Range
    -----
    i above -1.
    
    Errors
    ------
    as `compound_amount_factor`
    
    Source
    ------
    engineering economy factor tables
    
    Verified by
    -----------
    tests/cpp/cost/test_interest.cpp
    """
def published_coefficients(units: str) -> list[tuple[str, str, typing.Any]]:
    """
    A hose coefficient as somebody printed or implied it.
    """
def published_densities(units: str) -> list[tuple[str, str, typing.Any]]:
    """
    A figure as somebody printed it: a bulk density, or dirt by length of curb.
    """
def quantity_variation(estimate: Estimate, shares: collections.abc.Sequence[typing.SupportsFloat | typing.SupportsIndex]) -> dict[str, typing.Any]:
    """
    The price where one component's quantity comes out as a share of the planned one, for each.
    
    Parameters
    ----------
    estimate : [-]
        an estimate
    shares : [-, m]
        quantities over the planned ones, each >= 0
    
    Returns
    -------
    [currency, n x m]
        component by component
    
    Formula
    -------
    `cost::varied_payment` with the unit price of `unit_costs`, the limit of the job's terms,
    and price_over and price_under times the unit price beyond it; without a limit, in proportion
    
    Range
    -----
    components with a quantity and a unit price. Beside the price: nothing of it is in any
    figure.
    
    Errors
    ------
    InputError `cost.quantity` where a share is below 0
    
    Source
    ------
    23 CFR 635.109(a)(3) (from memory)
    
    Verified by
    -----------
    tests/cpp/estimate/test_contract_money.cpp
    """
def queue_discharge(lanes: typing.SupportsInt | typing.SupportsIndex, open: typing.SupportsInt | typing.SupportsIndex, barrier: bool, rural: bool, night: bool, clearance: typing.SupportsFloat | typing.SupportsIndex) -> float:
    """
    What a lane discharges from the queue of a freeway work zone, in passenger cars.
    
    Parameters
    ----------
    closure : [-]
        lanes, barrier, area, clearance, light
    
    Returns
    -------
    [each/s]
        passenger cars, each open lane
    
    Formula
    -------
    QDR = 2,093 - 154 LCSI - 194 f_Br - 179 f_AT + 9 f_LAT - 59 f_DN, each lane and hour;
    f_Br 1 without concrete barrier, f_AT 1 in rural areas, f_LAT in ft, f_DN 1 by night
    
    Range
    -----
    freeways; 0 to 12 ft of lateral clearance.
    
    Errors
    ------
    those of `closure_severity`; InputError `closure.clearance` where out of range
    
    Source
    ------
    Highway Capacity Manual, 7th edition, equation 10-8
    
    Verified by
    -----------
    tests/cpp/closure/test_work_zone.cpp
    """
def queue_length(waiting: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], spacing: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], lanes: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    How far a queue reaches back.
    
    Parameters
    ----------
    waiting : [each]
        vehicles
    spacing : [m/each]
        road that a waiting vehicle takes, its gap in it, > 0
    lanes : [-]
        in which they wait side by side, >= 1
    
    Returns
    -------
    [m]
        length along the road
    
    Formula
    -------
    length = waiting x spacing / lanes
    
    Range
    -----
    any number.
    
    Errors
    ------
    InputError `closure.waiting`, `closure.spacing`, `closure.lanes` where out of range
    
    Source
    ------
    definition
    
    Verified by
    -----------
    tests/cpp/closure/test_queue.cpp
    """
def rank_correlation(x: collections.abc.Sequence[typing.SupportsFloat | typing.SupportsIndex], y: collections.abc.Sequence[typing.SupportsFloat | typing.SupportsIndex]) -> float:
    """
    Spearman's rank correlation of two samples.
    
    Parameters
    ----------
    x : [any unit, n]
        one sample
    y : [any unit, n]
        the other
    
    Returns
    -------
    [-]
        -1 to 1; 0 where one of them does not vary
    
    Formula
    -------
    Pearson's correlation of the ranks; equal values have the mean of their ranks
    
    Range
    -----
    samples of one length without NaN.
    
    Errors
    ------
    InputError `simulate.runs` where lengths differ or are 0.
    
    Source
    ------
    M. G. Kendall, Rank Correlation Methods (1970), ch. 1 to 3 (from memory)
    
    Verified by
    -----------
    tests/cpp/simulate/test_indices.cpp
    """
def rate_book_of(job: Job) -> RateBook:
    """
    The values of a job as a rate book: people, equipment, prices and rates.
    
    Parameters
    ----------
    job : [-]
        a job
    
    Returns
    -------
    [-]
        its values, with the job's name
    
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
    tests/python/test_rates.py
    """
def rate_for_term(term: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], shorter: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], shorter_rate: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], longer: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], longer_rate: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    A rate between two terms for which one is published.
    
    Parameters
    ----------
    term : [s]
        length of the project, > 0
    shorter : [s]
        term of the first rate, > 0
    shorter_rate : [-]
        rate of the first
    longer : [s]
        term of the second rate, > the first
    longer_rate : [-]
        rate of the second
    
    Returns
    -------
    [-]
        rate of the project
    
    Formula
    -------
    straight line between the two; beyond them the nearer one's rate
    
    Range
    -----
    any rates.
    
    Errors
    ------
    InputError `cost.term`, `cost.longer` where out of range
    
    Source
    ------
    OMB Circular A-94, appendix C: 4-year term between the 3- and 5-year rates
    
    Verified by
    -----------
    tests/cpp/cost/test_published.cpp
    """
def rate_parts(kind: str) -> list[tuple[str, str, str, bool, str]]:
    """
    Rows of name, label, SI unit, whether it is required, and what it needs besides.
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
def read_bid_sheet(file: str, name: str, rows: collections.abc.Sequence[collections.abc.Sequence[str]], mapping: FormMapping) -> SheetRead:
    """
    Reads a sheet: one bidder's form, or a tabulation with columns for each.
    
    The headings are the row, or the two or three rows read downwards ("Unit" over "Price"), that
    name most columns of a form. Names of bidders stand in cells above their columns, beneath a merged
    heading, in the heading itself ("A unit price"), or beside a word such as "bidder". Every row that is not blank is an item or among `others`.
    
    Parameters
    ----------
    sheet : [-]
        the sheet
    mapping : [-]
        what is known of it
    
    Returns
    -------
    [-]
        what was understood
    
    Range
    -----
    any text.
    
    Errors
    ------
    InputError `bid.header` where no row names quantity and price, `bid.column` where the
    mapping names a column that is not there, `bid.no_item` where there is no item; MoneyError
    `money.currency`.
    
    Source
    ------
    common practice
    
    Verified by
    -----------
    tests/cpp/bid/test_read_form.cpp
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
def real_rate(nominal: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], inflation: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    The rate at which money of today's prices is discounted.
    
    Parameters
    ----------
    nominal : [-]
        i, rate with inflation
    inflation : [-]
        f, of prices; may be below 0
    
    Returns
    -------
    [-]
        real rate; below 0 where prices grow faster than money
    
    Formula
    -------
    (1 + i) / (1 + f) - 1
    
    Range
    -----
    both above -1.
    
    Errors
    ------
    InputError `cost.nominal`, `cost.inflation` where out of range
    
    Source
    ------
    definition (Fisher)
    
    Verified by
    -----------
    tests/cpp/cost/test_interest.cpp
    """
def repair(depreciation: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], repair: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    Repair of an hour as a share of straight-line depreciation.
    
    Parameters
    ----------
    depreciation : [currency/s]
        D, straight-line depreciation of an hour, >= 0
    repair : [-]
        r, repair over depreciation, >= 0
    
    Returns
    -------
    [currency/s]
        repair
    
    Formula
    -------
    r D
    
    Range
    -----
    any.
    
    Errors
    ------
    InputError `cost.depreciation`, `cost.repair` where below 0
    
    Source
    ------
    construction equipment textbooks, from memory
    
    Verified by
    -----------
    tests/cpp/cost/test_published.cpp
    """
def replicates_for(draws: typing.SupportsInt | typing.SupportsIndex) -> int:
    """
    The most replicates of at most ten that divide a number of draws.
    
    Parameters
    ----------
    draws : [-]
        how many in all
    
    Returns
    -------
    [-]
        10 where it divides them, else the next smaller number that does, at least 1
    
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
    tests/cpp/simulate/test_simulation.cpp
    """
def retainage(earned: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], share: typing.SupportsFloat | typing.SupportsIndex, limit_share: typing.SupportsFloat | typing.SupportsIndex, release_after: typing.SupportsInt | typing.SupportsIndex, interest: typing.SupportsFloat | typing.SupportsIndex) -> tuple[dict[str, typing.Any], float]:
    """
    The payments of a contract with retainage, and what waiting costs.
    
    Parameters
    ----------
    earned : [currency, n]
        worth of the work, period by period, each >= 0
    share : [-]
        kept back of every payment, 0 to 1
    limit_share : [-]
        most that is kept back, over the contract, 0 to 1
    release_after : [each]
        periods from the last of the work to the release, >= 0
    interest : [-]
        i, rate a period; may be below 0
    
    Returns
    -------
    [currency, n]
        n + release_after periods
    
    Formula
    -------
    waiting = sum of (earned - paid) (1 + i)^-k over the periods k
    
    Range
    -----
    n >= 1.
    
    Errors
    ------
    InputError `cost.periods`, `cost.earned`, `cost.share`, `cost.limit_share`,
    `cost.interest`
    
    Source
    ------
    definition
    
    Verified by
    -----------
    tests/cpp/cost/test_contract.cpp
    """
def retained(earned: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], share: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], kept: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], limit: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    What is kept back of a payment.
    
    Parameters
    ----------
    earned : [currency]
        A, of the period, >= 0
    share : [-]
        r, 0 to 1; 5 % is usual
    kept : [currency]
        kept back so far, >= 0
    limit : [currency]
        most that is kept back, >= 0
    
    Returns
    -------
    [currency]
        kept back of this payment
    
    Formula
    -------
    r A, until the sum kept back is the limit
    
    Range
    -----
    any.
    
    Errors
    ------
    InputError `cost.earned`, `cost.share`, `cost.kept`, `cost.limit` where out of range
    
    Source
    ------
    common practice
    
    Verified by
    -----------
    tests/cpp/cost/test_contract.cpp
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
def road_users(estimate: Estimate) -> RoadUsers:
    """
    What the closure of an estimate does to traffic, at the values that are priced.
    
    Parameters
    ----------
    estimate : [-]
        an estimate
    
    Returns
    -------
    [each, s, currency]
        windows, queue, delay and cost
    
    Formula
    -------
    demand by `closure::hourly_demand`, capacity by the job's method or by flaggers, queue
    by `closure::queue`, slower driving along tapers, buffer and work space, a detour where the road
    is closed in full; cost = lost time x its value + running cost of a detour
    
    Range
    -----
    one closure after the other, those of a stage all alike. The direction that is closed
    counts as the busier one all day. A total is NaN where one stage's cannot be figured.
    
    Errors
    ------
    those of `closure::work_zone_capacity`
    
    Source
    ------
    the formulas it calls
    
    Verified by
    -----------
    tests/cpp/estimate/test_road_users.cpp
    """
def roll_ahead(speed: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    The room that a shadow vehicle which is hit rolls ahead, kept empty before it.
    
    Parameters
    ----------
    speed : [m/s]
        of the traffic, > 0
    
    Returns
    -------
    [m]
        length along the road
    
    Formula
    -------
    75 ft up to 45 mph, 100 ft up to 55 mph, 150 ft above
    
    Range
    -----
    stationary vehicles of about 22,000 lb; the agency's table takes precedence.
    
    Errors
    ------
    InputError `closure.speed` where out of range
    
    Source
    ------
    AASHTO, Roadside Design Guide (from memory)
    
    Verified by
    -----------
    tests/cpp/closure/test_placing.cpp
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
    they and lost days are dates, not hours: they change no cost. Where the job's calendar asks for
    daylight, days are lost on which the sun is up for less than the longest shift is on site.
    
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
def sensitivity(inventory: Inventory, plan: Plan, figure: str, draws: typing.SupportsInt | typing.SupportsIndex, replicates: typing.SupportsInt | typing.SupportsIndex, seed: typing.SupportsInt | typing.SupportsIndex, sampling: str, top: typing.SupportsInt | typing.SupportsIndex, together: collections.abc.Sequence[collections.abc.Sequence[str]], threads: typing.SupportsInt | typing.SupportsIndex, progress: typing.Any) -> Sensitivity:
    """
    First-order and total indices of a figure's total by uncertain input.
    
    What structures share of an input and what is each one's own are one factor, at all structures.
    The first sample is that of `simulate` with the same settings. Inputs that cannot move the figure
    are in no factor; those beyond the widest swings are one together, so that nothing is lost.
    Inputs that vary together have no indices of their own and belong in one factor.
    
    Parameters
    ----------
    structures : [-, n]
        the records
    plan : [-]
        the job made ready
    settings : [-]
        figure, draws, factors
    threads : [-]
        how many; 0 for as many as the machine has
    progress : [-]
        told structures done and all; may be empty
    
    Returns
    -------
    [-]
        one row a factor; the same bits for any number of threads and order of structures
    
    Range
    -----
    any list. Each structure is priced draws x (2 + factors) times; memory grows with draws x
    factors, not with structures.
    
    Errors
    ------
    InputError `simulate.draws` where draws are no whole multiple of replicates or none;
    UnknownNameError `schema.key` for a key in `together` that the job has not, InputError
    `simulate.together` where it stands there twice; Interrupted `estimate.stopped` where progress says so; those of `resolve`.
    
    Source
    ------
    as of the indices; grouped: A. Saltelli et al., Global Sensitivity Analysis (2008), ch. 4
    (from memory)
    
    Verified by
    -----------
    tests/cpp/simulate/test_sensitivity.cpp
    """
def series_amount_factor(interest: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], periods: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    What one unit of money at every period's end grows to (F/A).
    
    Parameters
    ----------
    interest : [-]
        i, rate a period; may be 0 or below
    periods : [-]
        n, number of periods, > 0
    
    Returns
    -------
    [-]
        future amount over the amount of a period
    
    Formula
    -------
    ((1 + i)^n - 1) / i; n + i n (n - 1) / 2 where i is nearly 0
    
    Range
    -----
    i above -1.
    
    Errors
    ------
    InputError `cost.interest`, `cost.periods` where out of range
    
    Source
    ------
    engineering economy factor tables
    
    Verified by
    -----------
    tests/cpp/cost/test_published.cpp
    """
def series_present_worth_factor(interest: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], periods: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    What one unit of money at every period's end is worth now (P/A).
    
    Parameters
    ----------
    interest : [-]
        i, rate a period; may be 0 or below
    periods : [-]
        n, number of periods, > 0
    
    Returns
    -------
    [-]
        present amount over the amount of a period
    
    Formula
    -------
    ((1 + i)^n - 1) / (i (1 + i)^n)
    
    Range
    -----
    i above -1.
    
    Errors
    ------
    as `series_amount_factor`
    
    Source
    ------
    engineering economy factor tables
    
    Verified by
    -----------
    tests/cpp/cost/test_published.cpp
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
def shift_plan(estimate: Estimate) -> list[tuple[str, dict[str, typing.Any]]]:
    """
    The shifts of one structure, stage after stage, as if it shared them with no other. With shifts
    of its own these are the shifts that are priced; where shifts are shared, their idle rest is what
    is left for other structures.
    
    Parameters
    ----------
    estimate : [-]
        an estimate
    
    Returns
    -------
    [-, n]
        by stage
    
    Range
    -----
    any estimate.
    
    Errors
    ------
    those of `lay_out_shifts`.
    
    Source
    ------
    common practice
    
    Verified by
    -----------
    tests/cpp/estimate/test_shift_plan.cpp
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
def show_up_time(worked: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], least: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    Paid time of somebody who is sent for: at least the show-up time.
    
    Parameters
    ----------
    worked : [s]
        time worked, >= 0
    least : [s]
        minimum show-up time, >= 0
    
    Returns
    -------
    [s]
        time paid
    
    Formula
    -------
    max(worked, least)
    
    Range
    -----
    any.
    
    Errors
    ------
    InputError `cost.worked`, `cost.least` where below 0
    
    Source
    ------
    common practice: two to four hours
    
    Verified by
    -----------
    tests/cpp/cost/test_contract.cpp
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
def simulate(inventory: Inventory, plan: Plan, draws: typing.SupportsInt | typing.SupportsIndex, replicates: typing.SupportsInt | typing.SupportsIndex, seed: typing.SupportsInt | typing.SupportsIndex, sampling: str, relative_error: typing.SupportsFloat | typing.SupportsIndex, threads: typing.SupportsInt | typing.SupportsIndex, progress: typing.Any) -> Simulation:
    """
    Prices every structure in every draw.
    
    The draws of an input follow from seed, structure, input and number of the draw. What structures
    share of an input is drawn once a draw; the rest is each one's own. An input without spread
    keeps its value, so that without any spread every draw is the estimate, to the bit.
    
    Parameters
    ----------
    structures : [-, n]
        the records
    plan : [-]
        the job made ready
    settings : [-]
        seed, draws, replicates, kind of sampling
    threads : [-]
        how many; 0 for as many as the machine has
    progress : [-]
        told structures done and all; may be empty
    
    Returns
    -------
    [-]
        ranges by structure, totals by draw; the same bits for any number of threads
    
    Range
    -----
    any list. Memory grows with structures and with draws, not with their product.
    By Sobol' points what structures share is drawn from one scrambled sequence, a dimension an input
    by its place in the job; inputs beyond `sobol_dimensions` and what is each structure's own are
    drawn by strata. Of one structure alone (`sobol_single`) its own parts are drawn from the same
    sequence too. Inputs that vary together keep their strata: the order of their draws is changed.
    
    Errors
    ------
    InputError `simulate.draws` where draws are no whole multiple of replicates or none, or
    replicates of Sobol' points are no power of two; `simulate.sampling` where several structures are
    drawn as if alone; Interrupted `estimate.stopped` where progress says so; those of `resolve`.
    
    Source
    ------
    own convention
    
    Verified by
    -----------
    tests/cpp/simulate/test_simulation.cpp
    """
def sinking_fund_factor(interest: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], periods: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    What has to be laid aside at every period's end for one unit of money (A/F).
    
    Parameters
    ----------
    interest : [-]
        i, rate a period; may be 0 or below
    periods : [-]
        n, number of periods, > 0
    
    Returns
    -------
    [-]
        amount of a period over the future amount
    
    Formula
    -------
    i / ((1 + i)^n - 1)
    
    Range
    -----
    i above -1.
    
    Errors
    ------
    as `series_amount_factor`
    
    Source
    ------
    engineering economy factor tables
    
    Verified by
    -----------
    tests/cpp/cost/test_published.cpp
    """
def slowing_delay(vehicles: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], length: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], usual: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], slow: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    The time lost by driving slower past a closure, besides any queue.
    
    Parameters
    ----------
    vehicles : [each]
        that pass
    length : [m]
        of the stretch, >= 0
    usual : [m/s]
        speed without closure, > 0
    slow : [m/s]
        speed past it, > 0
    
    Returns
    -------
    [each s]
        lost by all
    
    Formula
    -------
    delay = vehicles x length x (1 / slow - 1 / usual), not below 0
    
    Range
    -----
    any.
    
    Errors
    ------
    InputError `closure.vehicles`, `closure.length`, `closure.usual`, `closure.slow` where
    out of range
    
    Source
    ------
    definition
    
    Verified by
    -----------
    tests/cpp/closure/test_road_user.cpp
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
def standby(ownership: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], share: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    What equipment costs an hour in which it waits on site.
    
    Parameters
    ----------
    ownership : [currency/s]
        O, of an hour, >= 0
    share : [-]
        s, of it that is paid, 0 to 1; owners' contracts allow about half
    
    Returns
    -------
    [currency/s]
        standby rate
    
    Formula
    -------
    s O
    
    Range
    -----
    any.
    
    Errors
    ------
    InputError `cost.ownership`, `cost.share` where out of range
    
    Source
    ------
    common practice; federal disaster schedules pay no standby
    
    Verified by
    -----------
    tests/cpp/cost/test_operating.cpp
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
def straight_line(price: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], salvage: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], years: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    Depreciation of a year in equal parts.
    
    Parameters
    ----------
    price : [currency]
        P, bought for, >= 0
    salvage : [currency]
        S, sold for at the end, >= 0
    years : [-]
        N, years of service, > 0
    
    Returns
    -------
    [currency]
        depreciation a year
    
    Formula
    -------
    (P - S) / N
    
    Range
    -----
    any.
    
    Errors
    ------
    InputError `cost.price`, `cost.salvage`, `cost.years` where out of range
    
    Source
    ------
    definition; open course lecture on equipment cost
    
    Verified by
    -----------
    tests/cpp/cost/test_published.cpp
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
def structure_columns(inventory: Inventory) -> dict[str, typing.Any]:
    """
    Every field of some records as columns; what was measured beyond a record is a document of its
    own in the last, `given`.
    
    Parameters
    ----------
    structures : [-, n]
        records
    
    Returns
    -------
    [SI, m]
        a column a field, also without records
    
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
    tests/cpp/json/test_structure_columns.cpp
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
def sum_of_years(price: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], salvage: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], years: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], year: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    Depreciation of one year by the sum of the years' digits.
    
    Parameters
    ----------
    price : [currency]
        P, bought for, >= 0
    salvage : [currency]
        S, sold for at the end, >= 0
    years : [-]
        N, years of service, >= 1
    year : [-]
        k, the year; beyond N there is none
    
    Returns
    -------
    [currency]
        depreciation of that year
    
    Formula
    -------
    (P - S) (N - k + 1) / (N (N + 1) / 2)
    
    Range
    -----
    any.
    
    Errors
    ------
    InputError `cost.price`, `cost.salvage`, `cost.years`, `cost.year` where out of range
    
    Source
    ------
    definition
    
    Verified by
    -----------
    tests/cpp/cost/test_ownership.cpp
    """
def surroundings(estimate: Estimate) -> dict[str, typing.Any]:
    """
    What lies below and around a bridge and costs money: each is in the price or named as not priced.
    
    Parameters
    ----------
    estimate : [-]
        an estimate
    
    Returns
    -------
    [-, n]
        those whose condition holds, in the order of the job
    
    Range
    -----
    any estimate. The record tells water, railway and road below; the rest a person must say.
    
    Errors
    ------
    none.
    
    Source
    ------
    each names its own
    
    Verified by
    -----------
    tests/cpp/estimate/test_surroundings.cpp
    """
def survey_header(job: Job, key: str) -> str:
    """
    The column of a survey sheet for one input.
    
    Parameters
    ----------
    job : [-]
        the job whose units stand in the header
    key : [text]
        key of the input schema, or the short name of a quantity
    
    Returns
    -------
    [text]
        key, header and label
    
    Range
    -----
    any input of the job.
    
    Errors
    ------
    UnknownNameError `schema.key` naming the nearest key.
    
    Source
    ------
    own convention
    
    Verified by
    -----------
    tests/cpp/json/test_forms.cpp
    """
def survey_list(inventory: Inventory, plan: Plan, visits: typing.SupportsInt | typing.SupportsIndex, least_share: typing.SupportsFloat | typing.SupportsIndex, draws: typing.SupportsInt | typing.SupportsIndex, seed: typing.SupportsInt | typing.SupportsIndex, threads: typing.SupportsInt | typing.SupportsIndex, progress: typing.Any) -> SurveyList:
    """
    The few visits that would narrow the cost of a programme most.
    
    A visit makes certain what it measures at its own structure and nothing elsewhere: other
    structures keep what they share of an input's spread. So it takes away the variance of its
    structure's cost and what that cost varies together with the others. Visits are picked one by
    one, each the best after those before it. Beside that each has the width of P10 to P90 to be
    expected by draws, which takes no shape for granted: for 16 outcomes of its measurements all
    structures are drawn with them certain, and the widths averaged. What the job correlates with a
    measured input moves with it at its own structure and keeps what spread is then left; elsewhere
    it stays as drawn. The standard error of that is found from what 8 batches of the draws differ by.
    
    Parameters
    ----------
    structures : [-, n]
        the records
    plan : [-]
        the job made ready
    settings : [-]
        length of the list, draws
    threads : [-]
        how many; 0 for as many as the machine has
    progress : [-]
        told how far the run is; may be empty
    
    Returns
    -------
    [-]
        the list; the same bits for any number of threads and the same visits for any order
        of structures
    
    Formula
    -------
    v = Var(E[c | x]) + 2 sum over shared inputs of Cov(E[c | w], sum over the others of
    E[c' | w]); range after k visits = R sqrt(1 - (v1 + ... + vk) / V);
    by draws E[P90 - P10 of the total given x]
    
    Range
    -----
    any list; structures without a price are not on it.
    
    Errors
    ------
    InputError `survey.draws` for less than 16 draws; Interrupted `estimate.stopped` where
    progress says so; those of `resolve`.
    
    Source
    ------
    law of total variance; what is shared is taken input by input, without correlations
    
    Verified by
    -----------
    tests/cpp/simulate/test_survey_list.cpp
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
def swings(inventory: Inventory, plan: Plan, figure: str, level: typing.SupportsFloat | typing.SupportsIndex, threads: typing.SupportsInt | typing.SupportsIndex, progress: typing.Any) -> Swings:
    """
    Moves one uncertain input after the other from low to high, at all structures at once.
    
    Moving an input everywhere at once is what happens to the shared part of its spread; what is each
    structure's own partly cancels over a list, which a simulation counts and a swing does not.
    
    Parameters
    ----------
    structures : [-, n]
        the records
    plan : [-]
        the job made ready
    level : [-]
        probability of the low values, between 0 and 1/2
    threads : [-]
        how many; 0 for as many as the machine has
    progress : [-]
        told how far the run is; may be empty
    figure : [-]
        place in simulated_figures
    
    Returns
    -------
    [SI unit of the figure]
        one row an input that moves it; NaN where a structure then has
        none
    
    Formula
    -------
    sum over structures of f(x_i at its quantile of level, 1 - level; others as priced)
    
    Range
    -----
    any list; structures without a price do not count.
    
    Errors
    ------
    InputError `simulate.level` where the level is not between 0 and 1/2; Interrupted
    `estimate.stopped` where progress says so; those of `resolve`.
    
    Source
    ------
    common practice
    
    Verified by
    -----------
    tests/cpp/simulate/test_swings.cpp
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
def time_value(car: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], truck: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], truck_share: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    The value of an hour of a vehicle of mixed traffic.
    
    Parameters
    ----------
    car : [currency/s]
        of a car with its people
    truck : [currency/s]
        of a truck with its driver and load
    truck_share : [-]
        share of trucks, 0 to 1
    
    Returns
    -------
    [currency/s]
        of one vehicle
    
    Formula
    -------
    value = (1 - trucks) car + trucks truck
    
    Range
    -----
    any.
    
    Errors
    ------
    InputError `closure.truck_share` where out of range
    
    Source
    ------
    definition
    
    Verified by
    -----------
    tests/cpp/closure/test_road_user.cpp
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
def traffic_queue(lengths: collections.abc.Sequence[typing.SupportsFloat | typing.SupportsIndex], demand: collections.abc.Sequence[typing.SupportsFloat | typing.SupportsIndex], capacity: collections.abc.Sequence[typing.SupportsFloat | typing.SupportsIndex]) -> TrafficQueue:
    """
    Runs a queue through periods of demand and capacity.
    
    Parameters
    ----------
    periods : [s, each/s]
        one after the other
    
    Returns
    -------
    [each, s]
        the queue
    
    Formula
    -------
    A(t) vehicles that came, D(t) that passed, D' = capacity while A > D, else the lesser
    of demand and capacity; waiting = A - D; delay = area between A and D; the delay of a vehicle =
    the time between them at its number
    
    Range
    -----
    any number of periods; nobody waits before the first.
    
    Errors
    ------
    InputError `closure.period` where a length is not above 0, `closure.demand`,
    `closure.capacity` where negative or no number
    
    Source
    ------
    definition of the deterministic (D/D/1) queue
    
    Verified by
    -----------
    tests/cpp/closure/test_queue.cpp
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
def truck_equivalent(flow: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], terrain: str) -> numpy.typing.NDArray[numpy.float64]:
    """
    How many passenger cars a truck stands for on a two-lane road.
    
    Parameters
    ----------
    flow : [each/s]
        vehicles of the direction, >= 0
    terrain : [-]
        level or rolling
    
    Returns
    -------
    [-]
        passenger cars
    
    Formula
    -------
    by table from 100 to 900 vehicles an hour, linear in between
    
    Range
    -----
    any flow; the ends of the table hold beyond it.
    
    Errors
    ------
    InputError `closure.flow` where negative
    
    Source
    ------
    Highway Capacity Manual, 7th edition, exhibit 26-B4; 700 and 800 from memory
    
    Verified by
    -----------
    tests/cpp/closure/test_flagging.cpp
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
def turn_delay(vehicles: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], cycle: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], green: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    The time lost by those who wait for their turn in a lane that both directions share.
    
    Parameters
    ----------
    vehicles : [each]
        of both directions
    cycle : [s]
        from a direction's green to its next, > 0
    green : [s]
        of a direction, > 0, <= cycle
    
    Returns
    -------
    [each s]
        lost by all
    
    Formula
    -------
    delay = vehicles x (cycle - green)^2 / (2 cycle): who comes in green passes, who comes
    in red waits for half of it on average
    
    Range
    -----
    demand well below capacity: the time a line takes to start is not counted.
    
    Errors
    ------
    InputError `closure.vehicles`, `closure.cycle`, `closure.green` where out of range
    
    Source
    ------
    uniform delay at a fixed signal, common practice
    
    Verified by
    -----------
    tests/cpp/closure/test_road_user.cpp
    """
def two_part(costs: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], areas: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> typing.Annotated[list[float], "FixedSize(3)"]:
    """
    Splits costs, or hours, into a part for every structure and a part for its area.
    
    Parameters
    ----------
    costs : [any unit, n]
        of every structure, >= 0
    areas : [m2, n]
        of every structure, >= 0
    
    Returns
    -------
    [unit of the costs]
        both parts
    
    Formula
    -------
    least squares of c = each + by_area A; the line through the origin and the means, or a
    mean alone, where one of the two would be below 0. each n + by_area sum of A = sum of c
    
    Range
    -----
    n >= 1. The sum is met exactly; single structures are not.
    
    Errors
    ------
    InputError `delivery.costs` where a number is below 0 or none, or the lists differ.
    
    Source
    ------
    definition of least squares
    
    Verified by
    -----------
    tests/cpp/delivery/test_ways.cpp
    """
def tyres(set: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], life: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], repair: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    Tyres of an hour: wear and repair.
    
    Parameters
    ----------
    set : [currency]
        C, price of a set, >= 0
    life : [s]
        L, hours that a set lasts, > 0
    repair : [-]
        r, repair over wear, >= 0
    
    Returns
    -------
    [currency/s]
        tyres
    
    Formula
    -------
    C (1 + r) / L
    
    Range
    -----
    any.
    
    Errors
    ------
    InputError `cost.set`, `cost.life`, `cost.repair` where out of range
    
    Source
    ------
    construction equipment textbooks, from memory
    
    Verified by
    -----------
    tests/cpp/cost/test_published.cpp
    """
def unit_cost(amount: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], quantity: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    What one unit of a quantity costs.
    
    Parameters
    ----------
    amount : [currency]
        A
    quantity : [unit of the quantity]
        q, > 0
    
    Returns
    -------
    [currency]
        for one unit
    
    Formula
    -------
    A / q
    
    Range
    -----
    any.
    
    Errors
    ------
    InputError `cost.quantity` where not above 0
    
    Source
    ------
    definition
    
    Verified by
    -----------
    tests/cpp/cost/test_published.cpp
    """
def unit_costs(estimate: Estimate) -> dict[str, typing.Any]:
    """
    The cost of every component with its unit cost; the structure as a whole stands last, by the
    area of its deck.
    
    Parameters
    ----------
    estimate : [-]
        an estimate
    
    Returns
    -------
    [currency, n]
        in the order of component_names; the components' totals add up to the
        structure's
    
    Formula
    -------
    distributed = indirect x direct / sum of direct; per unit = total / quantity
    
    Range
    -----
    any estimate; without any direct cost all of it stands in the structure's row.
    
    Errors
    ------
    none.
    
    Source
    ------
    common practice: indirect costs in proportion to direct ones
    
    Verified by
    -----------
    tests/cpp/estimate/test_unit_costs.cpp
    """
def unit_table() -> list[tuple[str, str, str, float, float, str]]:
    """
    Rows of name, aliases, SI unit, factor, offset and name in pint of every unit.
    """
def unpriced_surroundings(estimate: Estimate) -> list[str]:
    """
    The surroundings that apply and are not priced, as sentences.
    
    Parameters
    ----------
    estimate : [-]
        an estimate
    
    Returns
    -------
    [text, n]
        "not priced: railway flagger (usually 900 USD to 2,000 USD a shift; common
        practice)"
    
    Range
    -----
    any estimate.
    
    Errors
    ------
    none.
    
    Source
    ------
    each names its own
    
    Verified by
    -----------
    tests/cpp/estimate/test_surroundings.cpp
    """
def updated_fuel(fuel: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], price: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], base: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    A fuel cost brought to another price of fuel.
    
    Parameters
    ----------
    fuel : [currency/s]
        F, fuel of an hour at the old price; lubricants go with it
    price : [currency/m3]
        p_new, price of the fuel now, >= 0
    base : [currency/m3]
        p_base, price on which the fuel cost rests, > 0
    
    Returns
    -------
    [currency/s]
        fuel at the new price
    
    Formula
    -------
    F p_new / p_base
    
    Range
    -----
    any.
    
    Errors
    ------
    InputError `cost.fuel_price`, `cost.base` where out of range
    
    Source
    ------
    USACE EP 1110-1-8, paragraph 3-9
    
    Verified by
    -----------
    tests/cpp/cost/test_operating.cpp
    """
def usual_weights() -> dict[str, float]:
    """
    How much each criterion counts where nobody says, by its name.
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
def varied_payment(quantity: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], planned: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], price: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], limit: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], price_over: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], price_under: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    What is paid of an item whose quantity came out otherwise than planned.
    
    Parameters
    ----------
    quantity : [unit of the item]
        q, as built, >= 0
    planned : [unit of the item]
        Q, in the contract, > 0
    price : [currency]
        p, unit price of the contract, >= 0
    limit : [-]
        v, variation that changes no price, >= 0; 0.25 in federal-aid contracts
    price_over : [currency]
        p_over, agreed for what is above the limit, >= 0
    price_under : [currency]
        p_under, agreed for all where the quantity is below, >= 0
    
    Returns
    -------
    [currency]
        amount paid
    
    Formula
    -------
    inside the limits q p; above, (1 + v) Q p + (q - (1 + v) Q) p_over; below, q p_under
    
    Range
    -----
    any.
    
    Errors
    ------
    InputError `cost.quantity`, `cost.planned`, `cost.price`, `cost.limit`
    
    Source
    ------
    23 CFR 635.109(a)(3): only what is above 125 %; below 75 % the actual work (from memory)
    
    Verified by
    -----------
    tests/cpp/cost/test_contract.cpp
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
def washed_widths(roadway: typing.SupportsFloat | typing.SupportsIndex, open: collections.abc.Sequence[typing.SupportsFloat | typing.SupportsIndex]) -> list[float]:
    """
    How much of a roadway is washed in each phase: what a phase has open, less what the phases
    before have washed. Where phases overlap, the overlap is washed once.
    
    Parameters
    ----------
    roadway : [m]
        width, curb to curb, >= 0
    open : [m, n]
        width closed to traffic in each phase, from one side and then the other
    
    Returns
    -------
    [m, n]
        width washed in each phase; they add up to the roadway
    
    Formula
    -------
    washed[k] = min(open[k], roadway - washed[1] - ... - washed[k - 1])
    
    Range
    -----
    phases that together reach from curb to curb.
    
    Errors
    ------
    InputError `work.phases` where a width is negative or the phases leave a strip unwashed
    
    Source
    ------
    definition
    
    Verified by
    -----------
    tests/cpp/work/test_phases.cpp
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
def way_flip(values: collections.abc.Sequence[typing.SupportsFloat | typing.SupportsIndex], key: str, basis: str) -> tuple[float, list[float], float, float]:
    """
    The values of one input at which both ways cost the same, all others held.
    
    Parameters
    ----------
    given : [SI unit of each input]
        the case
    input : [-]
        the input
    basis : [-]
        avoidable or full cost
    
    Returns
    -------
    [SI unit of the input]
        every crossing from its least value to ten times its value, or
        ten times what the work costs or takes where it is 0; of shares up to their bound
    
    Range
    -----
    cases that `check` passes. With a contract's `years` the interest is held.
    
    Errors
    ------
    those of `check`.
    
    Source
    ------
    definition
    
    Verified by
    -----------
    tests/cpp/delivery/test_break_even.cpp
    """
def way_sensitivity(values: collections.abc.Sequence[typing.SupportsFloat | typing.SupportsIndex], basis: str, ranges: collections.abc.Sequence[tuple[str, typing.SupportsFloat | typing.SupportsIndex, typing.SupportsFloat | typing.SupportsIndex, typing.SupportsFloat | typing.SupportsIndex]]) -> dict[str, typing.Any]:
    """
    Every input by how far it moves the choice, the farthest first.
    
    Parameters
    ----------
    given : [SI unit of each input]
        the case
    basis : [-]
        avoidable or full cost
    ranges : [-, n]
        limits that somebody gave
    
    Returns
    -------
    [-]
        every input that moves the advantage or turns the choice somewhere
    
    Formula
    -------
    advantage with one input at its low and at its high, the others held; where nobody gave
    limits 20 % below and above the value, within its bounds
    
    Range
    -----
    cases that `check` passes.
    
    Errors
    ------
    those of `check`; InputError `delivery.range` where the value is not within its limits.
    
    Source
    ------
    common practice
    
    Verified by
    -----------
    tests/cpp/delivery/test_break_even.cpp
    """
def week_pay(hours: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], cash: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], fringe: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], basic: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], limit: typing.Annotated[numpy.typing.ArrayLike, numpy.float64], factor: typing.Annotated[numpy.typing.ArrayLike, numpy.float64]) -> numpy.typing.NDArray[numpy.float64]:
    """
    The pay of a week under a wage determination, fringe included.
    
    Parameters
    ----------
    hours : [s]
        worked in the week, >= 0
    cash : [currency/s]
        paid in cash
    fringe : [currency/s]
        paid into plans
    basic : [currency/s]
        basic rate of the determination
    limit : [s]
        hours of a week without premium
    factor : [-]
        pay of an overtime hour to a plain one, >= 1
    
    Returns
    -------
    [currency]
        pay of the week
    
    Formula
    -------
    (cash + fringe) h + (factor - 1) max(cash, basic) max(0, h - limit)
    
    Range
    -----
    any.
    
    Errors
    ------
    InputError `cost.hours`, `cost.limit`, `cost.factor` and as `overtime_base`
    
    Source
    ------
    US DOL prevailing wage resource book, overtime examples; 29 CFR 5.32
    
    Verified by
    -----------
    tests/cpp/cost/test_published.cpp
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
def work_zone_capacity(method: str, lanes: typing.SupportsInt | typing.SupportsIndex, open: typing.SupportsInt | typing.SupportsIndex, barrier: bool, rural: bool, night: bool, clearance: typing.SupportsFloat | typing.SupportsIndex, truck_share: typing.SupportsFloat | typing.SupportsIndex, truck_equivalent: typing.SupportsFloat | typing.SupportsIndex, intensity: typing.SupportsFloat | typing.SupportsIndex) -> float:
    """
    What all open lanes of a closure carry together, by a named method.
    
    Parameters
    ----------
    closure : [-]
        lanes, trucks, area, light
    method : [-]
        whose figures
    
    Returns
    -------
    [each/s]
        vehicles, all open lanes
    
    Formula
    -------
    hcm_2000 (1,600 + intensity) f_HV; hcm_2010 by lanes before and during: 2 to 1 1,400,
    3 to 1 and 3 to 2 1,450, 4 to 1 1,350, 4 to 2 1,450, 4 to 3 1,500 vehicles; hcm_7 f_HV times the
    queue discharge; missouri_2011 1,199 f_HV; north_carolina_1996 1,200 vehicles rural, 1,500
    urban: each open lane and hour
    
    Range
    -----
    freeways; more than four lanes count as four in hcm_2010. On other roads a starting point.
    
    Errors
    ------
    those of `closure_severity`; InputError `closure.open` where no lane is closed and the
    method knows closures alone
    
    Source
    ------
    Highway Capacity Manual 2000, as quoted in TPF-5(081); 2010, exhibit 10-14 (4 to 1, 2 and
    3 from memory); 7th edition, equation 10-8; Missouri Work Zone Capacity, TPF-5(081), 2011;
    Transportation Research Record 1529 (1996)
    
    Verified by
    -----------
    tests/cpp/closure/test_work_zone.cpp
    """
def work_zone_speed(lanes: typing.SupportsInt | typing.SupportsIndex, open: typing.SupportsInt | typing.SupportsIndex, barrier: bool, night: bool, limit: typing.SupportsFloat | typing.SupportsIndex, zone_limit: typing.SupportsFloat | typing.SupportsIndex, ramps: typing.SupportsFloat | typing.SupportsIndex) -> float:
    """
    The speed of free traffic past a freeway work zone.
    
    Parameters
    ----------
    closure : [-]
        lanes, barrier, light
    limit : [m/s]
        posted before the zone, > 0
    zone_limit : [m/s]
        posted in the zone, > 0
    ramps : [each/m]
        ramps along the road within three miles each way, >= 0
    
    Returns
    -------
    [m/s]
        speed, not above the limit before the zone
    
    Formula
    -------
    FFS = 9.95 + 33.49 f_Sr + 0.53 SL - 5.60 LCSI - 3.84 f_Br - 1.71 f_DN - 8.7 TRD in mph,
    f_Sr the limit before over the limit in the zone, SL the latter, TRD ramps a mile
    
    Range
    -----
    freeways; f_Sr from 1 to 1.2, and held there.
    
    Errors
    ------
    those of `closure_severity`; InputError `closure.limit`, `closure.zone_limit`,
    `closure.ramps` where out of range
    
    Source
    ------
    Highway Capacity Manual, 7th edition, equation 10-10
    
    Verified by
    -----------
    tests/cpp/closure/test_work_zone.cpp
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
def year_of(inventory: Inventory, job: Job, frequency: collections.abc.Mapping[str, typing.SupportsFloat | typing.SupportsIndex], threads: typing.SupportsInt | typing.SupportsIndex, progress: typing.Any) -> Year:
    """
    What a year of cleaning takes, structure by structure.
    
    Parameters
    ----------
    structures : [-, n]
        the records
    job : [-]
        the job
    frequency : [-]
        times a year by component
    threads : [-]
        how many; 0 for as many as the machine has
    progress : [-]
        told how far each round is; may be empty
    
    Returns
    -------
    [-]
        rounds and the sums of a year; the same bits for any number of threads
    
    Formula
    -------
    sum over rounds of visits a year times the figures of a visit
    
    Range
    -----
    structures without a price in one of the rounds are in no sum; each round's programme
    names its own.
    
    Errors
    ------
    those of `rounds_of`, `make_plan` and `estimate_all`.
    
    Source
    ------
    definition
    
    Verified by
    -----------
    tests/cpp/estimate/test_season.cpp
    """
NOT_ASKED: str = 'not asked'
__version__: str = '0.1.0'
bucket_reaction: float = 111.20554038151249
one_person_reaction: float = 266.89329691563
