#!/usr/bin/env python3
"""How long the judge takes over a gag that twelve roles must sign, on its day.

    tests/bench/clearance.py

Needs cargo. With every signature verified before, as a server that shows a gag again has them, and with all 22 to
verify. Run it on a quiet machine.
"""

import os
import pathlib
import re
import subprocess

from client import machine

ROOT = pathlib.Path(__file__).parents[2]
MICROSECONDS = {"ns": 1e-3, "µs": 1, "ms": 1e3, "s": 1e6}


def main():
    print(machine())
    ran = subprocess.run(
        ["cargo", "bench", "--quiet", "-p", "gagwright-clearance", "--bench", "judge"], cwd=ROOT, check=True,
        capture_output=True, text=True, env={**os.environ, "CARGO_TERM_COLOR": "never"}).stdout
    for name, times in re.findall(r"judge_12_roles/(.+?)\s+time:\s+\[(.*?)\]", ran):
        found = times.split()
        low, middle, high = (float(found[at]) * MICROSECONDS[found[at + 1]] for at in (0, 2, 4))
        aim = "   aim under 100" if name == "signatures verified before" else ""
        print(f"{name:30} {middle:8.1f} us   95 % of {low:.1f} to {high:.1f}{aim}")


if __name__ == "__main__":
    main()
