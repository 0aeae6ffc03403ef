#!/usr/bin/env python3
"""Fills the disk under a working server, and holds that it says so, loses nothing and goes on.

    sudo GAGWRIGHT_BIN=target/release/gagwright tests/bench/full_disk.py [--rounds 5] [--seed 1]

The database lies on a file system of a few megabytes of its own, which takes root to make; without, give
--folder, a folder on a small file system that may be filled. In each round a filler takes all the room there is
while eight callers send writes. Then it holds that

- every write that is not done is answered 507 `storage_full`, or 503 `unavailable` where the disk failed the
  database in another way, with a sentence that says that nothing was stored;
- reading goes on: pages, the trail, an export, which verifies; and no refused write left a leaf;
- once the filler is gone the same server, not started again, does every refused write once, under its key.
"""

import argparse
import collections
import json
import os
import pathlib
import random
import shutil
import subprocess
import tempfile
import threading
import time

from client import Client, Server, machine
from production import Production, Proof

CALLERS = 8
MEGABYTES = 16
REFUSALS = ((507, "storage_full"), (503, "unavailable"))
REFUSED_BY_EACH = 12  # how often a caller is refused before it gives up


def fill(folder):
    """Takes the last byte."""
    filler, step = folder / "filler", 1 << 20
    with open(filler, "ab", buffering=0) as file:
        while step:
            try:
                if file.write(bytes(step)) < step:
                    step //= 2
            except OSError:
                step //= 2
    return filler


def work(server, token, writes, sent, answers):
    client, refused = Client(server, token), 0
    for write in writes:
        if write.after and write.after.answer is None:
            continue  # it builds on one that was refused
        started = time.perf_counter()
        status, _, body = write.try_to_send(client)
        answers.append((status, body, time.perf_counter() - started))
        sent.append(write)
        if status == 201:
            write.answer = body
        else:
            refused += 1
            if refused == REFUSED_BY_EACH:
                break
    client.close()


def one_round(server, production, proof, folder, dice):
    filler = fill(folder)
    sent, answers = [[] for _ in range(CALLERS)], []
    threads = [threading.Thread(target=work, args=(
        server, production.owner.token, production.writes(random.Random(dice.random())), mine, answers))
        for mine in sent]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    for status, body, _ in answers:
        if status != 201:
            told = json.loads(body)
            assert (status, told["code"]) in REFUSALS, (status, told)
            assert "nothing was stored" in told["detail"], told
    # Reading goes on, and what was refused is not there.
    reader = Client(server, production.owner.token)
    for gag, _, _ in production.gags:
        reader.get(f"/gags/{gag}")
    reader.get(f"{production.path}/holds")
    before = proof.tree.size
    export = proof.look()
    sent = [write for mine in sent for write in mine]
    done = [write for write in sent if write.answer is not None]
    assert proof.tree.size == before + len(done), "a refused write left a leaf, or an answered one did not"
    proof.verify(export)
    filler.unlink()
    counts = proof.hold_against(sent, dice)
    slowest = max(taken for status, _, taken in answers if status != 201)
    return counts, collections.Counter(status for status, _, _ in answers), slowest


def main():
    asked = argparse.ArgumentParser()
    asked.add_argument("--rounds", type=int, default=5)
    asked.add_argument("--seed", type=int, default=1)
    asked.add_argument("--folder", type=pathlib.Path, help="a folder on a small file system that may be filled")
    asked = asked.parse_args()
    dice, mounted = random.Random(asked.seed), asked.folder is None
    disk = pathlib.Path(tempfile.mkdtemp(dir=asked.folder))
    if mounted:
        if os.geteuid() != 0:
            raise SystemExit("making a small file system takes root; or give --folder, on one that may be filled")
        subprocess.run(["mount", "-t", "tmpfs", "-o", f"size={MEGABYTES}m", "tmpfs", disk], check=True)
    print(f"{machine()}\n{'a tmpfs of ' + str(MEGABYTES) + ' MB' if mounted else disk}, {CALLERS} callers")
    server, totals, statuses, slowest = None, [0] * 5, collections.Counter(), 0
    with tempfile.TemporaryDirectory() as folder:
        try:
            server = Server(folder, f"sqlite:{disk / 'kept.db'}")
            server.start()
            production = Production(server)
            proof = Proof(server, production, disk / "kept.db")
            for _ in range(asked.rounds):
                counts, answers, late = one_round(server, production, proof, disk, dice)
                totals = [total + one for total, one in zip(totals, counts)]
                statuses, slowest = statuses + answers, max(slowest, late)
                assert server.process.poll() is None, "the server stopped"
        finally:
            if server:
                server.stop()
            if mounted:
                subprocess.run(["umount", disk], check=True)
            shutil.rmtree(disk)
    answered, again, kept, lost, doubled = totals
    print(f"rounds={asked.rounds} acknowledged={answered} refused_507={statuses[507]} refused_503={statuses[503]} done_once_there_was_room={again} "
          f"of_which_had_been_kept={kept} lost={lost} doubled={doubled}")
    print(f"slowest refusal {slowest * 1000:.0f} ms; never started again")
    assert (kept, lost, doubled) == (0, 0, 0)


if __name__ == "__main__":
    main()
