#!/usr/bin/env python3
"""Sets the root of a log of entries beside pymerkle's, and beside plain SHA-256 of as many bytes by the same crate,
as ratios. Ours and pymerkle's must give the same root.

    tests/bench/trail.py

Needs cargo and what tests/reference needs. Run it on a quiet machine. SHA-256 works in blocks of 64 bytes: an entry
of 760 bytes takes 13, and the 65 bytes of a node two, so no tree over such entries reaches more than 0.86 of the
rate of one long piece; with entries of 400 bytes it is 0.81. On the other side, the longer an entry, the more of
pymerkle's time is SHA-256 too, in a library as fast as ours: what the tree itself costs is seen with short ones.
"""

import json
import pathlib
import statistics
import subprocess
import time

import pymerkle

from client import machine

ROOT = pathlib.Path(__file__).parents[2]
SIZES = (760, 64)  # bytes of an entry: the median of the demo's trail is 762, its mean 1,115; and a short one


def ours(count, size):
    ran = subprocess.run(
        ["cargo", "run", "--quiet", "--release", "-p", "gagwright-trail", "--example", "speed", "--",
         str(count), str(size)], cwd=ROOT, check=True, capture_output=True, text=True)
    return json.loads(ran.stdout)


def theirs(count, size):
    entries = [(number.to_bytes(8, "big") * (size // 8))[:size] for number in range(count)]
    times = []
    for _ in range(3 if count < 1_000_000 else 1):
        start = time.perf_counter_ns()
        tree = pymerkle.InmemoryTree(algorithm="sha256")
        for entry in entries:
            tree.append_entry(entry)
        root = tree.get_state()
        times.append(time.perf_counter_ns() - start)
    return statistics.median(times), root.hex()


def main():
    print(f"{machine()}, pymerkle {pymerkle.__version__}")
    for size in SIZES:
        print(f"\n  entries of {size} bytes"
              "\n                ours   plain SHA-256   of its rate    pymerkle   times as fast"
              "\n                                     aim 0.7 or more             aim 50 or more")
        for count in (1_000, 10_000, 100_000, 1_000_000):
            found = ours(count, size)
            mine, plain = found["nanoseconds"], found["plain_nanoseconds"]
            nanoseconds, root = theirs(count, size)
            assert found["root"] == root, "the roots differ"
            print(f"{count:9} {mine / 1e6:7.1f} ms {plain / 1e6:9.1f} ms {plain / mine:13.2f} "
                  f"{nanoseconds / 1e6:11.0f} ms {nanoseconds / mine:11.0f}")


if __name__ == "__main__":
    main()
