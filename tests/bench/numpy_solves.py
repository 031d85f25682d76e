"""The iterative solves of the price over vectors of draws, for bench_numpy.py."""

from __future__ import annotations

import numpy as np

SLOPE = 2.0 / np.log(10.0)
GRAVITY = 9.80665
LAMINAR, TURBULENT = 2000.0, 4000.0


def colebrook(re, k):
    """1 / sqrt(f) by Newton."""
    a, b = k / 3.7, 2.51 / re
    x = -SLOPE * np.log(a + b * 7.0)
    for _ in range(6):
        inside = a + b * x
        step = (x + SLOPE * np.log(inside)) / (1.0 + SLOPE * b / inside)
        x = x - step
        if np.all(np.abs(step) <= 1e-8 * x):
            break
    return x


def friction_factor(re, k):
    re, k = np.broadcast_arrays(re, k)
    factor = colebrook(np.maximum(re, TURBULENT), k) ** -2.0
    if np.all(re >= TURBULENT):
        return factor
    share = np.clip((re - LAMINAR) / (TURBULENT - LAMINAR), 0.0, 1.0)
    below = 64.0 / np.minimum(re, LAMINAR)
    return below + share * (factor - below)


def loss_of(hose, flow, density, viscosity):
    """Friction and fittings of the hose, and how they grow with the square of the flow."""
    loss, slope = 0.0, 0.0
    for bore, length, minor, rough in hose:
        area = np.pi / 4.0 * bore**2
        speed = flow / area
        re, k = speed * bore / viscosity, rough / bore
        pressure = density * speed**2 / 2.0
        factor = friction_factor(re, k)
        friction = factor * length / bore * pressure
        w = SLOPE * 2.51 / re / (k / 3.7 + 2.51 / re / np.sqrt(factor))
        loss = loss + friction + minor * pressure
        slope = slope + (friction / (1.0 + w) + minor * pressure) / flow**2
    return loss, slope


def line_flow(pressure, rise, density, viscosity, bore, coefficient, *rest):
    """The flow at which losses and tip take the pressure, by Newton over its square."""
    limit = rest[0] if len(rest) % 4 == 1 else np.inf
    hose = [rest[i : i + 4] for i in range(len(rest) % 4, len(rest), 4)]
    left = pressure - density * GRAVITY * rise
    tip = density / (2.0 * (coefficient * np.pi / 4.0 * bore**2) ** 2)
    if np.all(limit < np.sqrt(left / tip)):
        loss, _ = loss_of(hose, limit, density, viscosity)
        if np.all(tip * limit**2 + loss < left):
            return limit
    square = left / tip
    loss, _ = loss_of(hose, np.sqrt(square), density, viscosity)
    square = square * left / (left + loss)
    for _ in range(20):
        loss, slope = loss_of(hose, np.sqrt(square), density, viscosity)
        step = (tip * square + loss - left) / (tip + slope)
        square = square - step
        if np.all(np.abs(step) <= 1e-12 * square):
            break
    return np.minimum(np.sqrt(square), limit)
