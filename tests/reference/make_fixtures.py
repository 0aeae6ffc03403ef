"""Makes server/mechanics/tests/fixtures/*.json: the same physics, solved by SciPy.

Every case states a problem in plain numbers (SI) and the answer of a general-purpose solver:
scipy.integrate.solve_ivp with tight tolerances, and for skin a method-of-lines grid many times finer
than the one under test. The Rust test server/mechanics/tests/mechanics/scipy.rs holds our models against them.

    python tests/reference/make_fixtures.py            writes the files
    python tests/reference/make_fixtures.py --check    fails when a file is not what SciPy gives
"""

import json
import math
import pathlib
import sys

import numpy as np
from scipy.integrate import solve_ivp

from fixtures import air_ram, car_balance, gimbal, glass, long_line, sun, tether, vehicles, water_entry, weather
from fixtures import exertion, muzzle_sweep, running, stairs, stand_off, tumble

G = 9.80665
TIGHT = dict(rtol=1e-11, atol=1e-12)


def trajectory(speed, angle, height, mass, drag_area, density, wind):
    k = 0.5 * density * drag_area / mass

    def rate(_, y):
        u, w = y[2] - wind, y[3]
        s = math.hypot(u, w)
        return [y[2], y[3], -k * s * u, -G - k * s * w]

    def lands(_, y):
        return y[1] if y[3] < 0 else 1.0

    lands.terminal = True

    def top(_, y):
        return y[3]

    top.direction = -1
    start = [0.0, height, speed * math.cos(angle), speed * math.sin(angle)]
    found = solve_ivp(rate, [0, 60], start, events=[lands, top], method="DOP853", **TIGHT)
    x, _, u, w = found.y_events[0][0]
    apex = max([height] + [y[1] for y in found.y_events[1]])
    return dict(distance=x, time=found.t_events[0][0], along=u, down=-w, apex=apex)


def stop(mass, speed, stiffness, damping_share, steady_force):
    c = 2 * damping_share * math.sqrt(stiffness * mass)

    def tension(y):
        return max(0.0, stiffness * y[0] + c * y[1])

    def rate(_, y):
        return [y[1], (steady_force - tension(y)) / mass]

    def still(_, y):
        return y[1]

    still.terminal, still.direction = True, -1
    step = math.sqrt(mass / stiffness) / 2000
    found = solve_ivp(rate, [0, 60], [0.0, speed], events=still, max_step=step, **TIGHT)
    return dict(
        peak_tension=max(tension(y) for y in found.y.T),
        stretch=found.y_events[0][0][0],
        time=found.t_events[0][0],
    )


def response(frequency, damping, peak, duration, shape):
    def a(t):
        if t > duration:
            return 0.0
        return peak * math.sin(math.pi * t / duration) if shape == "half_sine" else peak

    def rate(t, y):
        return [y[1], a(t) - 2 * damping * frequency * y[1] - frequency**2 * y[0]]

    # Up to the end of the pulse and after it apart, so that no step crosses the corner.
    first = solve_ivp(rate, [0, duration], [0, 0], max_step=duration / 4000, **TIGHT)
    after = solve_ivp(lambda _, y: [y[1], -2 * damping * frequency * y[1] - frequency**2 * y[0]],
                      [duration, duration + 0.4], first.y[:, -1], max_step=1e-4, **TIGHT)
    highest = max(np.abs(first.y[0]).max(), np.abs(after.y[0]).max())
    return dict(dynamic_response=highest * frequency**2 / G)


LAYERS = [(75e-6, 0.6280, 4.40e6), (1125e-6, 0.5902, 4.186e6), (3885e-6, 0.2930, 2.60e6)]


def damage_rate(kelvin):
    if kelvin <= 317.15:
        return 0.0
    if kelvin <= 323.15:
        return 2.185e124 * math.exp(-93534.9 / kelvin)
    return 1.823e51 * math.exp(-39109.8 / kelvin)


def skin(flux, cloth=None):
    """Seconds of steady absorbed flux until the second-degree integral is 1.

    `cloth` is (thickness, conductivity, heat capacity by volume), dry, in perfect contact, at 32.5 C.
    """
    stack = []
    if cloth:
        n = 60
        stack += [(cloth[0] / n, cloth[1], cloth[2])] * n
    first_skin = len(stack)
    for (thickness, k, c), n in zip(LAYERS, (30, 120, 120)):
        stack += [(thickness / n, k, c)] * n
    dx = np.array([s[0] for s in stack])
    k = np.array([s[1] for s in stack])
    c = np.array([s[2] for s in stack])
    half = 0.5 * dx / k
    link = 1 / (half[:-1] + half[1:])
    depth = np.cumsum(dx) - 0.5 * dx
    skin_depth = depth - dx[:first_skin].sum()
    whole = dx[first_skin:].sum()
    start = 305.65 + np.clip(skin_depth / whole, 0, 1)
    base = first_skin + 29  # last cell of the epidermis

    def face(t):
        a, b = half[base], half[base + 1]
        return (t[base] / a + t[base + 1] / b) / (1 / a + 1 / b)

    def rate(_, y):
        t = y[:-1]
        q = np.empty(len(t) + 1)
        q[0] = flux
        q[1:-1] = link * (t[:-1] - t[1:])
        q[-1] = (t[-1] - 306.65) / half[-1]
        return np.append((q[:-1] - q[1:]) / (c * dx), damage_rate(face(t)))

    def injured(_, y):
        return y[-1] - 1

    injured.terminal = True
    n = len(stack) + 1
    band = np.zeros((n, n))
    for i in range(n - 1):
        for j in (i - 1, i, i + 1):
            if 0 <= j < n - 1:
                band[i, j] = 1
    band[n - 1, base:base + 2] = 1
    found = solve_ivp(rate, [0, 400], np.append(start, 0.0), method="BDF", events=injured,
                      rtol=1e-7, atol=1e-9, jac_sparsity=band)
    return dict(second_degree=found.t_events[0][0])


def pendulum(length, release_angle, mass, drag_area, density, duration):
    k = 0.5 * density * drag_area * length / mass

    def rate(_, y):
        return [y[1], -G / length * math.sin(y[0]) - k * y[1] * abs(y[1])]

    found = solve_ivp(rate, [0, duration], [release_angle, 0], max_step=duration / 4000, **TIGHT)
    felt = G * np.cos(found.y[0]) + found.y[1] ** 2 * length
    return dict(fastest=float(np.abs(found.y[1]).max() * length), most_felt=float(felt.max()))


CASES = {
    "trajectory": (trajectory, [
        dict(speed=3.0, angle=0.0, height=30.0, mass=80.0, drag_area=0.5, density=1.225, wind=0.0),
        dict(speed=3.0, angle=0.0, height=30.0, mass=62.0, drag_area=0.7, density=1.225, wind=6.0),
        dict(speed=2.0, angle=0.6, height=12.0, mass=95.0, drag_area=0.7, density=1.1, wind=-5.0),
        dict(speed=28.0, angle=0.35, height=0.0, mass=250.0, drag_area=0.7, density=1.225, wind=0.0),
        dict(speed=9.0, angle=0.9, height=1.1, mass=70.0, drag_area=0.6, density=1.2, wind=2.0),
    ]),
    "stop": (stop, [
        dict(mass=80.0, speed=6.0, stiffness=2200.0, damping_share=0.0, steady_force=0.0),
        dict(mass=80.0, speed=6.0, stiffness=2200.0, damping_share=0.1, steady_force=80.0 * G),
        dict(mass=100.0, speed=4.2, stiffness=19600.0, damping_share=0.3, steady_force=0.0),
        dict(mass=62.0, speed=9.0, stiffness=5400.0, damping_share=0.05, steady_force=62.0 * G),
    ]),
    "response": (response, [
        dict(frequency=52.9, damping=0.224, peak=20 * G, duration=0.05, shape="half_sine"),
        dict(frequency=52.9, damping=0.224, peak=10 * G, duration=0.05, shape="square"),
        dict(frequency=62.8, damping=0.2, peak=12 * G, duration=0.2, shape="half_sine"),
        dict(frequency=60.8, damping=0.04, peak=6 * G, duration=0.12, shape="half_sine"),
    ]),
    "skin": (skin, [
        dict(flux=3935.0), dict(flux=7870.0), dict(flux=15740.0), dict(flux=31479.0), dict(flux=70827.0),
        dict(flux=20000.0, cloth=[0.0008, 0.09, 4.0e5]),
        dict(flux=60000.0, cloth=[0.002, 0.06, 3.0e5]),
    ]),
    "pendulum": (pendulum, [
        dict(length=9.0, release_angle=1.0, mass=80.0, drag_area=0.6, density=1.225, duration=8.0),
        dict(length=4.5, release_angle=0.5, mass=62.0, drag_area=0.0, density=1.2, duration=5.0),
    ]),
}


# One file a subject.
FILES = {
    "scipy": CASES,
    "air_ram": air_ram.CASES,
    "exertion": exertion.CASES,
    "gimbal": gimbal.CASES,
    "long_line": long_line.CASES,
    "running": running.CASES,
    "water_entry": water_entry.CASES,
    "stairs": stairs.CASES,
    "sun": sun.CASES,
    "tether": tether.CASES,
    "tumble": tumble.CASES,
    "vehicles": vehicles.CASES,
    "car_balance": car_balance.CASES,
    "weather": weather.CASES,
    "glass": glass.CASES,
    "stand_off": stand_off.CASES,
    "muzzle_sweep": muzzle_sweep.CASES,
}


def main():
    for file, cases in FILES.items():
        make(file, cases)


def make(file, tables):
    path = pathlib.Path(__file__).parents[2] / f"server/mechanics/tests/fixtures/{file}.json"
    made = {
        name: [dict(given=case, found={k: float(v) for k, v in solve(**case).items()}) for case in cases]
        for name, (solve, cases) in tables.items()
    }
    if "--check" not in sys.argv:
        path.write_text(json.dumps(made, indent=1) + "\n")
        return
    kept = json.loads(path.read_text())
    assert kept.keys() == made.keys(), f"{file}: the fixture's tables differ"
    for name, cases in made.items():
        assert len(cases) == len(kept[name]), f"{file} {name}: number of cases differs"
        for new, old in zip(cases, kept[name]):
            assert new["given"] == old["given"], f"{file} {name}: another problem is kept"
            for key, value in new["found"].items():
                assert math.isclose(value, old["found"][key], rel_tol=1e-5), (name, key, value, old)


if __name__ == "__main__":
    main()
