"""Random hose lays for the two solvers, and a lay as a network of EPANET's.

The head at the pump is a reservoir, segments are pipes, nozzles are emitters with exponent 0.5.
"""

from __future__ import annotations

import math
import os
from collections.abc import Mapping, Sequence
from typing import Any

import numpy as np
from epanet import toolkit as en

GRAVITY = 9.80665
DENSITY = 999.1026  # kg/m3 at 15 degC and 1 atm, IAPWS-95
#: EPANET 2.2 manual, table 3.1: h = 4.727 C^-1.852 d^-4.871 L q^1.852 in ft and ft3/s.
FACTOR, POWER, BORE_POWER = 4.727, 1.852, 4.871
#: Kinematic viscosity of which EPANET's option is a multiple: 1.1e-5 ft2/s.
BASE_VISCOSITY = 1.1e-5 * 0.3048**2


def random_lay(rng: np.random.Generator, branches: int, law: str) -> dict[str, Any]:
    """A tree with as many ends as branches, each with an open nozzle, at ample pressure."""
    segments: list[dict[str, Any]] = []
    nozzles: list[dict[str, Any]] = []

    def add(parent: str, bore: float, length: float) -> str:
        name = f"s{len(segments)}"
        friction = ({"c": float(rng.uniform(100, 150)), "form": "si_10_67_4_8704"} if law == "H-W"
                    else {"roughness": f"{rng.uniform(0.002, 0.2)!r} mm"})  # fmt: skip
        segments.append({"name": name, "from": parent, "bore": f"{bore!r} m",
                         "length": f"{length!r} m", "rise": f"{rng.uniform(-2, 2)!r} m",
                         "minor_loss": float(rng.uniform(0, 3)), **friction})  # fmt: skip
        return name

    trunks = ["pump"]
    for i in range(branches):
        if i % 4 == 0:
            parent = trunks[int(rng.integers(max(0, len(trunks) - 3), len(trunks)))]
            bore = float(rng.uniform(0.025, 0.04)) * math.sqrt(branches - i)
            trunks.append(add(parent, bore, float(rng.uniform(1, 5))))
        end = add(trunks[-1], float(rng.uniform(0.015, 0.03)), float(rng.uniform(5, 40)))
        nozzles.append({"name": f"n{i}", "at": end, "bore": f"{rng.uniform(0.003, 0.01)!r} m",
                        "discharge_coefficient": float(rng.uniform(0.7, 1.0))})  # fmt: skip
    pressure = f"{rng.uniform(6e5, 1.2e6)!r} Pa"
    return {"name": f"{branches} branches", "water": "15 degC",
            "pump": {"kind": "pressure", "pressure": pressure},
            "segments": segments, "nozzles": nozzles}  # fmt: skip


def number(text: str) -> float:
    return float(text.split()[0])


def with_epanet_constant(lay: Mapping[str, Any]) -> dict[str, Any]:
    """The lay with each C changed so that our form of Hazen-Williams has EPANET's constants."""
    foot = 0.3048
    segments = []
    for s in lay["segments"]:
        bore = number(s["bore"])
        # both give head per length at C = 1 and 1 m3/s
        theirs = FACTOR * (1 / foot**3) ** POWER / (bore / foot) ** BORE_POWER
        ours = 10.67 / bore**4.8704
        segments.append({**s, "c": s["c"] * (ours / theirs) ** (1 / POWER)})
    return {**lay, "segments": segments}


class Network:
    """A lay as EPANET sees it."""

    def __init__(self, lay: Mapping[str, Any], law: str, viscosity: float) -> None:
        self.project = en.createproject()
        en.init(self.project, os.devnull, "", en.LPS, en.HW if law == "H-W" else en.DW)
        self._set_options(viscosity)
        self.nodes = {"pump": self._node("pump", en.RESERVOIR)}
        head = number(lay["pump"]["pressure"]) / (DENSITY * GRAVITY)
        en.setnodevalue(self.project, self.nodes["pump"], en.ELEVATION, head)
        elevation = {"pump": 0.0}
        self.links = {}
        for s in lay["segments"]:
            elevation[s["name"]] = elevation[s["from"]] + number(s["rise"])
            node = self.nodes[s["name"]] = self._node(s["name"], en.JUNCTION)
            en.setnodevalue(self.project, node, en.ELEVATION, elevation[s["name"]])
            self.links[s["name"]] = self._pipe(s)
        for nozzle in lay["nozzles"]:
            area = math.pi / 4 * number(nozzle["bore"]) ** 2
            per_root = nozzle["discharge_coefficient"] * area * math.sqrt(2 * GRAVITY) * 1e3
            en.setnodevalue(self.project, self.nodes[nozzle["at"]], en.EMITTER, per_root)
        self.ends = [self.nodes[nozzle["at"]] for nozzle in lay["nozzles"]]
        en.openH(self.project)

    def _set_options(self, viscosity: float) -> None:
        for option, value in ((en.TRIALS, 500), (en.ACCURACY, 1e-8), (en.EMITEXPON, 0.5),
                              (en.HEADERROR, 1e-6), (en.FLOWCHANGE, 1e-6),
                              (en.EMITBACKFLOW, 0), (en.SP_GRAVITY, 1.0),
                              (en.SP_VISCOS, viscosity / BASE_VISCOSITY)):  # fmt: skip
            en.setoption(self.project, option, value)

    def _node(self, name: str, kind: int) -> int:
        return int(en.addnode(self.project, name, kind))

    def _pipe(self, s: Mapping[str, Any]) -> int:
        link = int(en.addlink(self.project, s["name"], en.PIPE, s["from"], s["name"]))
        rough = s["c"] if "c" in s else number(s["roughness"])
        en.setpipedata(self.project, link, number(s["length"]), number(s["bore"]) * 1e3, rough,
                       s["minor_loss"])  # fmt: skip
        return link

    def solve(self) -> None:
        en.initH(self.project, en.INITFLOW)
        en.runH(self.project)

    def nozzle_flows(self) -> np.ndarray[Any, np.dtype[np.float64]]:
        """In m3/s."""
        flows = [en.getnodevalue(self.project, node, en.EMITTERFLOW) for node in self.ends]
        return np.array(flows) * 1e-3

    def pressures(self, names: Sequence[str]) -> np.ndarray[Any, np.dtype[np.float64]]:
        """In Pa."""
        heads = [en.getnodevalue(self.project, self.nodes[name], en.HEAD)
                 - en.getnodevalue(self.project, self.nodes[name], en.ELEVATION)
                 for name in names]  # fmt: skip
        return np.array(heads) * DENSITY * GRAVITY

    def close(self) -> None:
        en.closeH(self.project)
        en.deleteproject(self.project)
