#!/usr/bin/env python3
"""Sign-offs committed each second, sent by 64 callers at once, beside single-statement SQLite commits of the same
bytes on the same disk with the same durability (WAL, synchronous=FULL), as a ratio.

    GAGWRIGHT_BIN=target/release/gagwright tests/bench/signoffs.py [--callers 64] [--gags 600] [--slower-disk 5]

Needs what tests/reference needs. Each sign-off is whole work: its signature is verified, the gag is judged before
and after, and it is answered once its leaf is on disk. SQLite's own share is measured before and after, and the
mean counts. Run it on a quiet machine: the callers run on it too.

How much is gained by committing together depends on how long the disk takes to say that it has kept something: a
server's with a battery a tenth of a millisecond, a laptop's a few, a turning one ten. `--slower-disk` lets every such
wait take so many milliseconds longer, for the server and for plain SQLite alike; it needs a C compiler.
"""

import argparse
import asyncio
import json
import os
import pathlib
import sqlite3
import statistics
import subprocess
import sys
import tempfile
import time

from client import Phone, Server, machine, new_id, sign_in

SIGNERS = ["coordinator", "rigging", "medic", "first_ad"]


def requests(server, gags):
    """Gags of one real plan, and every sign-off on them as the bytes of its request."""
    coordinator = sign_in(server, "coordinator")
    production = f"/productions/{coordinator.production}"
    first = coordinator.get(f"{production}/gags")["items"][0]
    plan = coordinator.get(f"/gags/{first['id']}")["plan"]
    signers = {role: sign_in(server, role.replace("_", ".")) for role in SIGNERS}
    phones = {role: Phone(caller) for role, caller in signers.items()}
    found = []
    for number in range(gags):
        gag = new_id()
        coordinator.post(f"{production}/gags", {
            "id": gag, "code": f"B{number:04}", "title": "A fall", "technique": plan["technique"],
            "facets": plan["facets"]})
        for role, caller in signers.items():
            draft = caller.get(f"/gags/{gag}/signoff-draft?role={role}")
            jws, _ = phones[role].sign(draft["statement"])
            body = json.dumps({"jws": jws})
            head = (f"POST /api/v1/gags/{gag}/signoffs HTTP/1.1\r\nHost: 127.0.0.1\r\n"
                    f"Authorization: Bearer {caller.token}\r\nIdempotency-Key: {new_id()}\r\n"
                    f"Content-Type: application/json\r\nContent-Length: {len(body)}\r\n\r\n")
            found.append((head + body).encode())
    return found


# Waits a while before each of the two calls that wait for the disk.
SLOWER = r"""
#define _GNU_SOURCE
#include <dlfcn.h>
#include <stdlib.h>
#include <time.h>
static void wait_first(void) {
    double wait = atof(getenv("SLOWER_DISK_MS")) / 1000.0;
    struct timespec span = {(time_t)wait, (long)((wait - (time_t)wait) * 1e9)};
    nanosleep(&span, NULL);
}
int fsync(int fd) {
    wait_first();
    return ((int (*)(int))dlsym(RTLD_NEXT, "fsync"))(fd);
}
int fdatasync(int fd) {
    wait_first();
    return ((int (*)(int))dlsym(RTLD_NEXT, "fdatasync"))(fd);
}
"""


def on_a_slower_disk(milliseconds):
    """Begins anew with the calls that wait for the disk made longer, here and in the server."""
    before = os.environ.get("LD_PRELOAD", "")
    if "slower.so" in before:
        return
    with tempfile.TemporaryDirectory() as folder:
        source, library = pathlib.Path(folder) / "slower.c", pathlib.Path(folder) / "slower.so"
        source.write_text(SLOWER)
        subprocess.run(["cc", "-O1", "-shared", "-fPIC", "-o", library, source, "-ldl"], check=True)
        again = subprocess.run(
            [sys.executable, *sys.argv],
            env={**os.environ, "LD_PRELOAD": f"{library} {before}".strip(), "SLOWER_DISK_MS": str(milliseconds)})
    raise SystemExit(again.returncode)


async def send_all(port, waiting, callers):
    """Each caller sends its next as soon as the last was answered; gives seconds and latencies."""
    waiting, latencies = iter(waiting), []

    async def caller():
        reader, writer = await asyncio.open_connection("127.0.0.1", port)
        for request in waiting:
            sent = time.perf_counter()
            writer.write(request)
            head = await reader.readuntil(b"\r\n\r\n")
            length = int(head.lower().split(b"content-length:")[1].split(b"\r\n")[0])
            body = await reader.readexactly(length)
            assert head.startswith(b"HTTP/1.1 201"), head + body
            latencies.append((time.perf_counter() - sent) * 1000)
        writer.close()

    started = time.perf_counter()
    await asyncio.gather(*(caller() for _ in range(callers)))
    return time.perf_counter() - started, sorted(latencies)


def plain_commits(folder, bodies):
    """One INSERT, one commit, each waiting for the disk: commits a second."""
    with tempfile.TemporaryDirectory(dir=folder) as inside:
        base = sqlite3.connect(pathlib.Path(inside) / "plain.db", isolation_level=None)
        base.execute("PRAGMA journal_mode = WAL")
        base.execute("PRAGMA synchronous = FULL")
        base.execute("CREATE TABLE kept (id INTEGER PRIMARY KEY, bytes BLOB NOT NULL)")
        times = []
        for body in bodies:
            started = time.perf_counter()
            base.execute("INSERT INTO kept (bytes) VALUES (?)", (body,))
            times.append(time.perf_counter() - started)
        base.close()
    return len(times) / sum(times)


def main():
    asked = argparse.ArgumentParser()
    asked.add_argument("--callers", type=int, default=64)
    asked.add_argument("--gags", type=int, default=600)
    asked.add_argument("--folder", help="where to keep the databases; a folder of the disk to be measured")
    asked.add_argument("--slower-disk", type=float, default=0.0, metavar="MS")
    asked = asked.parse_args()
    if asked.slower_disk:
        on_a_slower_disk(asked.slower_disk)
    print(machine() + (f", a disk {asked.slower_disk:g} ms slower" if asked.slower_disk else ""))
    with tempfile.TemporaryDirectory(dir=asked.folder) as folder:
        server = Server(folder, arguments=())
        server.start()
        waiting = requests(server, asked.gags)
        bodies = [one.split(b"\r\n\r\n", 1)[1] for one in waiting[:1000]]
        before = plain_commits(folder, bodies)
        cpu = server.processor_seconds()
        seconds, latencies = asyncio.run(send_all(server.port, waiting, asked.callers))
        cpu = server.processor_seconds() - cpu
        after = plain_commits(folder, bodies)
        server.stop()
    ours, plain = len(waiting) / seconds, statistics.mean((before, after))
    print(f"sign-offs, {asked.callers} callers        {ours:8.0f} a second   "
          f"p50 {statistics.median(latencies):.1f} ms, p99 {latencies[int(len(latencies) * 0.99)]:.1f} ms")
    print(f"the server's work on one     {cpu / len(waiting) * 1000:8.2f} ms of a processor")
    print(f"SQLite, one INSERT a commit  {plain:8.0f} a second   {before:.0f} before, {after:.0f} after")
    print(f"as many times                {ours / plain:8.2f}            aim at least 4")


if __name__ == "__main__":
    main()
