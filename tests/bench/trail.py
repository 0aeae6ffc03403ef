#!/usr/bin/env python3
"""Sets the root of a log of entries beside pymerkle's, as a ratio. Both must give the same root.

    tests/bench/trail.py

Needs cargo and what tests/reference needs. Run it on a quiet machine.
"""

import json
import pathlib
import platform
import statistics
import subprocess
import time

import pymerkle

ROOT = pathlib.Path(__file__).parents[2]
SIZE = 400  # bytes of an entry: about what one of the trail has


def theirs(count):
    entries = [(number.to_bytes(8, "big") * (SIZE // 8))[:SIZE] for number in range(count)]
    times = []
    for _ in range(3):
        start = time.perf_counter_ns()
        tree = pymerkle.InmemoryTree(algorithm="sha256")
        for entry in entries:
            tree.append_entry(entry)
        root = tree.get_state()
        times.append(time.perf_counter_ns() - start)
    return statistics.median(times), root.hex()


def main():
    print(f"{platform.machine()}, {platform.python_implementation()} {platform.python_version()}, "
          f"pymerkle {pymerkle.__version__}")
    print("\n   entries        ours    pymerkle   times as fast, aim at least 50")
    for count in (1_000, 10_000, 100_000):
        ran = subprocess.run(
            ["cargo", "run", "--quiet", "--release", "-p", "gagwright-trail", "--example", "speed", "--",
             str(count), str(SIZE)], cwd=ROOT, check=True, capture_output=True, text=True)
        ours = json.loads(ran.stdout)
        nanoseconds, root = theirs(count)
        assert ours["root"] == root, "the roots differ"
        print(f"{count:10} {ours['nanoseconds'] / 1e6:8.2f} ms {nanoseconds / 1e6:8.0f} ms "
              f"{nanoseconds / ours['nanoseconds']:15.0f}")


if __name__ == "__main__":
    main()
