"""Which engine function answers which published quantity, and why a printed figure may differ.

Data only: the formulas stand in the core. Each file of published figures has its checks in their
order; the first whose quantity and inputs fit a row is taken.
"""

from __future__ import annotations

from scupper._check_forms import Check
from scupper._checks.friction import DARCY, FRICTION_FACTOR
from scupper._checks.hose import COIL, HAZEN, HOSE, HOSE_COEFFICIENTS
from scupper._checks.jets import JETS
from scupper._checks.lays import DUTY, LINE, PARALLEL
from scupper._checks.nozzles import NOZZLES, RATED, REACTIONS
from scupper._checks.pumps import PUMPS
from scupper._checks.vacuum import GRAINS, VACUUM
from scupper._checks.water import ATMOSPHERE, WATER_IAPWS, WATER_PROPERTIES

#: The checks of each file, in the order of the table.
CHECKS: dict[str, tuple[Check, ...]] = {
    "nozzle_discharge": NOZZLES,
    "nozzle_reaction": REACTIONS,
    "rated_nozzle": RATED,
    "jet_impact": JETS,
    "friction_factor": FRICTION_FACTOR,
    "darcy_minor": DARCY,
    "hazen_williams": HAZEN,
    "hose_friction": HOSE,
    "hose_coefficients": HOSE_COEFFICIENTS,
    "coil": COIL,
    "water_iapws": WATER_IAPWS,
    "water_properties": WATER_PROPERTIES,
    "pump": (*PUMPS, *DUTY),
    "line": LINE,
    "parallel_series": PARALLEL,
    "atmosphere": ATMOSPHERE,
    "vacuum": VACUUM,
    "air": GRAINS,
}

_LOOP = "a loop: a lay is a tree"
_LENGTHS = "one length for another: a ratio of losses"
#: Rows that no call answers, and why.
NOT_ANSWERED = {
    "HF-007": "4 1/2 in hose is not in the library",
    "PU-034": "a field rule by fitting",
    "PU-053": "specific speed does not enter",
    "PU-056": "by heads at two flows: no one law serves",
    "PU-060": "its curve is given as a formula; the tests in C++ check it",
    "PS-006": _LENGTHS,
    "PS-012": _LOOP,
    "PS-014": _LOOP,
    "PS-015": _LOOP,
    "PS-016": _LOOP,
    "PS-018": _LENGTHS,
}

#: Units of the printed column as units of the answer: a scale and a unit of the core.
UNITS = {
    "-": "",
    "gpm (US)": "gpm",
    "size no.": "gpm",
    "Pa(gauge)": "Pa",
    "psi(gauge)": "psi",
    "ft/100 ft": "ft",
    "psi/100 ft": "psi",
    "g/cm3": "1000 x kg/m3",
    "mPa s": "1e-3 x Pa*s",
    "Pa s": "Pa*s",
    "1e-6 Pa s": "1e-6 x Pa*s",
    "centistoke": "1e-6 x m2/s",
    "1e-6 m2/s": "1e-6 x m2/s",
    "1e-5 ft2/s": "1e-5 x ft2/s",
    "1e-5 lbf s/ft2": "1e-5 x lbf*s/ft2",
    "kN": "1000 x N",
    "cfs": "ft3/s",
}
