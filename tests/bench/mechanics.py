#!/usr/bin/env python3
"""Sets our models beside SciPy, and the WebAssembly build beside the native one, as ratios.

    tests/bench/mechanics.py

Needs cargo, node and what tests/reference needs. SciPy solves the same problems as the fixtures do, with
the tolerances the fixtures ask for loosened to those of our own solver where the method allows it. An assessment is
taken from text to text on both sides, in WebAssembly once the engine has compiled it for good. Spread
is 10,000 draws over each technique's declared tolerances at its plausible inputs. Run it on a quiet machine.
"""

import json
import pathlib
import platform
import statistics
import subprocess
import sys
import time

ROOT = pathlib.Path(__file__).parents[2]
sys.path.insert(0, str(ROOT / "tests/reference"))
import make_fixtures  # noqa: E402


def scipy_nanoseconds():
    # Our solvers' own relative tolerance is 1e-9 and more; SciPy's is set no tighter than that.
    make_fixtures.TIGHT.update(rtol=1e-9, atol=1e-10)
    found = {}
    for name, (solve, cases) in make_fixtures.CASES.items():
        times = []
        for _ in range(5):
            start = time.perf_counter_ns()
            solve(**cases[0])
            times.append(time.perf_counter_ns() - start)
        found[name] = statistics.median(times)
    return found


def wasm_nanoseconds(names):
    script = r"""
      import { readFileSync } from 'node:fs';
      const at = (path) => new URL(path, 'file://' + process.cwd() + '/');
      const core = await import(at('web/techniques/pkg/gagwright_techniques.js'));
      core.initSync({ module: readFileSync(at('web/techniques/pkg/gagwright_techniques_bg.wasm')) });
      const inputs = JSON.parse(readFileSync(0, 'utf8'));
      const found = {};
      for (const [name, text] of Object.entries(inputs)) {
        // Until the engine has compiled it for good, then the median.
        const times = [];
        const begun = performance.now();
        while (times.length < 30 || (times.length < 2000 && performance.now() - begun < 400)) {
          const start = process.hrtime.bigint();
          core.assess(name, text);
          times.push(Number(process.hrtime.bigint() - start));
        }
        const late = times.slice(times.length >> 1).sort((a, b) => a - b);
        found[name] = late[late.length >> 1];
      }
      console.log(JSON.stringify(found));
    """
    inputs = {}
    answers = subprocess.run(
        ["cargo", "run", "--quiet", "--release", "-p", "gagwright-mechanics", "--example", "plausible"],
        cwd=ROOT, check=True, capture_output=True, text=True).stdout
    for name, given in json.loads(answers).items():
        if name in names:
            inputs[name] = json.dumps(given)
    ran = subprocess.run(["node", "--input-type=module", "-e", script], cwd=ROOT, check=True,
                         input=json.dumps(inputs), capture_output=True, text=True)
    return json.loads(ran.stdout)


def main():
    ours = json.loads(subprocess.run(
        ["cargo", "run", "--quiet", "--release", "-p", "gagwright-mechanics", "--example", "speed"],
        cwd=ROOT, check=True, capture_output=True, text=True).stdout)
    print(f"{platform.machine()}, {platform.python_implementation()} {platform.python_version()}")
    print("\nmodel           ours    SciPy   times as fast")
    for name, theirs in scipy_nanoseconds().items():
        if name in ours["models"]:
            mine = ours["models"][name]
            print(f"{name:12} {mine / 1e3:7.1f} us {theirs / 1e6:7.1f} ms {theirs / mine:9.0f}")
    wasm = wasm_nanoseconds(ours["assess"])
    print("\ntechnique             assess      WebAssembly  ratio   10,000 draws")
    for name, mine in ours["assess"].items():
        print(f"{name:20} {mine / 1e6:7.2f} ms {wasm[name] / 1e6:12.2f} ms {wasm[name] / mine:6.2f}"
              f" {ours['spread'][name] / 1e6:11.0f} ms")


if __name__ == "__main__":
    main()
