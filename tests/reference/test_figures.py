"""The command line's figures held against closed forms, handbook values and SciPy.

GAGWRIGHT_BIN names the program. Each check names its source.
"""

import json
import math
import os
import subprocess

import pytest

G = 9.80665  # CGPM 1901
PROGRAM = os.environ["GAGWRIGHT_BIN"]


def assess(technique, **inputs):
    words = [f"{name}={value}" for name, value in inputs.items()]
    done = subprocess.run([PROGRAM, "assess", technique, *words, "--json"], capture_output=True, text=True)
    assert done.returncode == 0, done.stderr
    return json.loads(done.stdout)


def figure(answer, name):
    assessment = answer.get("assessment", answer)
    return next(one["value"] for one in assessment["figures"] if one["name"] == name)


def test_a_fall_with_drag_follows_the_closed_form():
    # v = vt sqrt(1 - exp(-2 g h / vt^2)); standards: 30 m, 80 kg, CdA 0.5, rho 1.225 -> 22.928 m/s, +-0.2 %
    answer = assess("high-fall", drop_height="30m", performer_mass="80kg", drag_area="0.5 m2", exit_speed="0 m/s")
    terminal = math.sqrt(2 * 80 * G / (1.225 * 0.5))
    closed = terminal * math.sqrt(1 - math.exp(-2 * G * 30 / terminal**2))
    assert closed == pytest.approx(22.928, rel=2e-3)
    assert figure(answer, "impact_speed") == pytest.approx(closed, rel=2e-3)


def test_feet_and_metres_are_the_same_fall():
    metric = assess("high-fall", drop_height="30.48m", performer_mass="80kg")
    imperial = assess("high-fall", drop_height="100ft", performer_mass="80kg")
    assert figure(metric, "impact_speed") == figure(imperial, "impact_speed")


def test_a_wrong_unit_is_refused_with_the_field_and_the_fix():
    done = subprocess.run([PROGRAM, "assess", "high-fall", "drop_height=30kg"], capture_output=True, text=True)
    assert done.returncode != 0
    assert "drop_height" in done.stderr and "m" in done.stderr and "ft" in done.stderr
