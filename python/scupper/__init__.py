"""Plans and prices the routine cleaning of highway bridges.

A structure's public record goes in; a priced, explained estimate comes out::

    import scupper as sc

    inv = sc.read_inventory(sc.demo_records())
    est = sc.estimate(inv[0], sc.Job.demo())
    print(est)
    print(est.explain("water"))
"""

from scupper import bids, closure, cluster, cost, debris, delivery, hydraulics, rates, units, work
from scupper._core import Derivation, Structure, __version__
from scupper._risk_charts import tornado
from scupper.bid_forms import ReadBids, read_bids
from scupper.choosing import Alternatives, alternatives
from scupper.comparing import scenarios
from scupper.cost import Cost
from scupper.demo import demo_bids, demo_log, demo_records
from scupper.errors import (
    Error,
    FileError,
    InputError,
    Interrupted,
    MoneyError,
    MovedWarning,
    SolveError,
    UnitError,
    UnknownNameError,
)
from scupper.estimating import Estimate, estimate, explain
from scupper.forms import job_schema, write_job_form, write_survey_sheet
from scupper.inventory import Inventory, Selection, iter_inventory, read_inventory
from scupper.job import Job
from scupper.learning import Learned, learn, write_log_form
from scupper.outings import OutingPlan, outings
from scupper.pay_items import PayItems
from scupper.programme import Programme, estimate_all
from scupper.proposing import Proposal, proposal
from scupper.seasons import Year, year
from scupper.simulating import Simulation, sensitivity, simulate, swings
from scupper.structures import structures_schema, write_structure_form, write_structures
from scupper.surveying import SurveyList, survey_list
from scupper.taking_off import keys, rules, sections, take_off
from scupper.verifying import verification, verification_counts, write_verification

__all__ = [
    "Alternatives",
    "Cost",
    "Derivation",
    "Error",
    "Estimate",
    "FileError",
    "InputError",
    "Interrupted",
    "Inventory",
    "Job",
    "Learned",
    "MoneyError",
    "MovedWarning",
    "OutingPlan",
    "PayItems",
    "Programme",
    "Proposal",
    "ReadBids",
    "Selection",
    "Simulation",
    "SolveError",
    "Structure",
    "SurveyList",
    "UnitError",
    "UnknownNameError",
    "Year",
    "__version__",
    "alternatives",
    "bids",
    "closure",
    "cluster",
    "cost",
    "debris",
    "delivery",
    "demo_log",
    "demo_bids",
    "demo_records",
    "estimate",
    "estimate_all",
    "explain",
    "hydraulics",
    "iter_inventory",
    "job_schema",
    "keys",
    "learn",
    "outings",
    "proposal",
    "rates",
    "read_bids",
    "read_inventory",
    "rules",
    "scenarios",
    "sections",
    "sensitivity",
    "simulate",
    "structures_schema",
    "survey_list",
    "swings",
    "take_off",
    "tornado",
    "units",
    "work",
    "verification",
    "verification_counts",
    "write_job_form",
    "write_log_form",
    "write_structure_form",
    "write_structures",
    "write_survey_sheet",
    "write_verification",
    "year",
]
