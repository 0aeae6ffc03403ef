"""The story's ladder of test shots, fitted again by SciPy.

GAGWRIGHT_DEMO names the folder that `gagwright demo --out` filled, GAGWRIGHT_BIN the program. The model is
asked of the program, one state at a time, by its command line; everything that is learned from it, the
fit, the standard error and the intervals, is worked out here.
"""

import functools
import json
import math
import os
import pathlib
import subprocess

import numpy as np
import pytest
from scipy.optimize import least_squares
from scipy.stats import t as student_t

DEMO = pathlib.Path(os.environ["GAGWRIGHT_DEMO"])
PROGRAM = os.environ["GAGWRIGHT_BIN"]
SI = {
    "length": "m",
    "mass": "kg",
    "force": "N",
    "pressure": "Pa",
    "volume": "m3",
    "conductance": "m3/(s Pa)",
    "ratio": "",
    "count": "",
    "angle": "rad",
    "time": "s",
    "temperature": "K",
    "acceleration": "m/s2",
}


def run(*words):
    done = subprocess.run([PROGRAM, "assess", *words, "--json"], capture_output=True, text=True)
    assert done.returncode == 0, done.stderr
    return json.loads(done.stdout)


@functools.cache
def units(technique):
    described = run(technique, "--describe")["parameters"]
    return {one["name"]: SI.get(one["kind"].get("quantity")) for one in described}


@functools.cache
def figures(technique, words):
    return {one["name"]: one["value"] for one in run(technique, *words)["figures"]}


def assess(technique, inputs):
    unit = units(technique)
    words = []
    for name, given in inputs.items():
        words.append(f"{name}={given}" if isinstance(given, str) else f"{name}={given['value']!r} {unit[name]}".strip())
    return figures(technique, tuple(words))


def test_the_ladder_is_fitted_as_scipy_fits_it():
    # The next shot's interval: D. M. Bates and D. G. Watts, Nonlinear Regression Analysis (1988), sec. 2.3.
    told = json.loads((DEMO / "ladder.json").read_text(encoding="utf-8"))
    request, answer = told["request"], told["answer"]
    (coefficient,) = answer["coefficients"]
    names = sorted({name for shot in request["shots"] for name in shot["measured"]})
    measured = {name: np.array([shot["measured"][name] for shot in request["shots"]]) for name in names}

    def model(inputs, guess):
        given = {**inputs, coefficient["name"]: {"value": float(guess)}}
        figures = assess(told["technique"], given)
        return [figures[name] for name in names]

    def all_shots(guess):
        rows = np.array([model(shot["inputs"], guess) for shot in request["shots"]])
        return dict(zip(names, rows.T))

    def off(guess, stray):
        given = all_shots(guess[0])
        return np.concatenate([(given[name] - measured[name]) / stray[name] for name in names])

    shots = len(request["shots"])
    size = {name: max(abs(measured[name])) for name in names}

    def digits(name):
        return next(n for n in range(7) if n == 6 or np.allclose(np.round(measured[name], n), measured[name], atol=1e-9))

    # No reading is trusted closer than half a per cent, or than a value rounded to its last digit.
    floor = {name: max(0.005 * size[name], 10.0 ** -digits(name) / math.sqrt(12)) for name in names}

    def moves(value):
        step = 0.02 * value
        above, below = all_shots(value + step), all_shots(value - step)
        return {name: np.sqrt(np.mean(((above[name] - below[name]) / (2 * step)) ** 2)) for name in names}

    # Every figure has its share of the one degree of freedom that the coefficient takes, and leans on the
    # stray of all figures together, relative to how far they move with the coefficient, as if that had been
    # seen four times; but it never strays less than it was seen to by itself.
    def strays(value):
        given, moved = all_shots(value), moves(value)
        seen = {name: len(measured[name]) * (1 - 1 / shots) for name in names}
        own = {
            name: max(
                sum(((given[name] - measured[name]) / moved[name]) ** 2) / seen[name],
                (floor[name] / moved[name]) ** 2,
            )
            for name in names
        }
        readings = sum(len(one) for one in measured.values())
        together = sum(own[name] * len(measured[name]) for name in names) / readings
        leaned = {name: (4 * together + seen[name] * own[name]) / (4 + seen[name]) for name in names}
        return {name: moved[name] * math.sqrt(max(own[name], leaned[name])) for name in names}

    stray, value = dict(size), coefficient["stated"]
    for _ in range(4):
        value = least_squares(off, [value], args=(stray,), diff_step=0.02, x_scale=[100.0]).x[0]
        stray = strays(value)
    step = 0.02 * value
    above, below = off([value + step], stray), off([value - step], stray)
    slope = (above - below) / (2 * step)
    # A shot's readings may all stray together, so that a shot counts once: as if each of its readings
    # strayed by the root of their number more.
    assert all(sorted(shot["measured"]) == names for shot in request["shots"])
    error = math.sqrt(len(names) / (slope @ slope))
    t = student_t.ppf((1 + request["confidence"]) / 2, shots - 1)
    assert coefficient["value"] == pytest.approx(value, rel=0.01)
    assert coefficient["error"] == pytest.approx(error, rel=0.05)
    assert coefficient["high"] - coefficient["low"] == pytest.approx(2 * t * error, rel=0.05)
    for one in answer["prediction"]:
        at = names.index(one["figure"])
        high, low = model(request["inputs"], value + step)[at], model(request["inputs"], value - step)[at]
        width = t * math.hypot((high - low) / (2 * step) * error, stray[one["figure"]])
        assert one["value"] == pytest.approx(model(request["inputs"], value)[at], rel=0.005)
        assert one["high"] - one["low"] == pytest.approx(2 * width, rel=0.05)


def test_the_packet_prints_each_shot_beside_the_model(tmp_path):
    packet = tmp_path / "g03.pdf"
    place = ["--database", f"sqlite:{DEMO / 'story.db'}", "--out", str(packet)]
    subprocess.run([PROGRAM, "packet", "G03", *place], check=True, capture_output=True)
    text = subprocess.run(["pdftotext", "-layout", packet, "-"], check=True, capture_output=True, text=True).stdout
    printed = text[text.index("Test shots") :]
    told = json.loads((DEMO / "ladder.json").read_text(encoding="utf-8"))
    for shot in told["request"]["shots"]:
        distance = shot["measured"]["total_distance"]
        model = assess(told["technique"], shot["inputs"])["total_distance"]
        assert f"Distance: {distance:.3g} m, model {model:.3g} m" in printed
        pressure = shot["inputs"]["reservoir_pressure"]["value"] / 1e5
        # What is as the plan says is not told again.
        assert pressure == 5 or f"{pressure:.3g} bar" in printed
