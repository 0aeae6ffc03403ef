#!/usr/bin/env python3
"""Kills a working server, again and again, and holds what is kept against what was answered.

    GAGWRIGHT_BIN=target/release/gagwright tests/bench/killed.py [--cycles 300] [--seed 1] [--postgres]

Each cycle starts the server on the database the last one left behind, lets eight callers send writes of ten
kinds, each under a key of its own, sends SIGKILL at a moment drawn from the seed (now and then while it is still
starting), and starts it again. Then it holds that

- the database opens and, with SQLite, its own integrity check finds nothing;
- every write that was answered has its one leaf in the trail, and the answer comes again under its key;
- every write whose answer never came, sent again under its key, is done once, whether the server had kept it;
- the trail has as many leaves as there were writes, and every leaf is where it was: the root over all leaves,
  worked out here, is the server's, and a consistency proof leads to it from the last root seen;
- an export verifies with `gagwright verify`.

A fresh database is taken now and then, so that the production stays as large as one is. With --postgres
the database is a throwaway cluster, which stays up: there, what is tried is a server that dies in the middle of a
transaction. `server/store/tests/durability.rs` is the short form that every test run has, and crashes
PostgreSQL as well. Needs what tests/reference needs.
"""

import argparse
import pathlib
import random
import shutil
import tempfile
import threading
import time

from client import Client, Lost, Server, machine
from cluster import Cluster
from production import Production, Proof

CALLERS = 8
FRESH_EVERY = 20  # cycles on one database

def work(server, token, writes, sent, stop):
    """One caller: each write when the last was answered, until an answer fails to come. What is refused is sent
    again with what went unanswered, and refused there for all to see."""
    client = Client(server, token)
    for write in writes:
        if stop.is_set():
            break
        sent.append(write)
        try:
            write.answer = write.send(client)[1]
        except (Lost, AssertionError):
            break
    client.close()


def main():
    asked = argparse.ArgumentParser()
    asked.add_argument("--cycles", type=int, default=300)
    asked.add_argument("--seed", type=int, default=1)
    asked.add_argument("--postgres", action="store_true")
    asked.add_argument("--folder", help="where to keep the databases; a folder of the disk to be tried")
    asked = asked.parse_args()
    dice, began = random.Random(asked.seed), time.perf_counter()
    kind = "PostgreSQL (the cluster stays up)" if asked.postgres else "SQLite"
    print(f"{machine()}\n{kind}, seed {asked.seed}, {CALLERS} callers")
    cluster = Cluster() if asked.postgres else None
    totals, starts, while_starting, server = [0] * 5, [], 0, None
    try:
        for cycle in range(asked.cycles):
            if cycle % FRESH_EVERY == 0:
                if server:
                    server.stop()
                    shutil.rmtree(server.folder)
                folder = pathlib.Path(tempfile.mkdtemp(prefix="killed-", dir=asked.folder))
                file = None if cluster else folder / "kept.db"
                server = Server(folder, cluster.create(f"kept_{cycle}") if cluster else f"sqlite:{file}")
                server.start()
                production = Production(server)
                proof = Proof(server, production, file)
            stop, sent = threading.Event(), [[] for _ in range(CALLERS)]
            threads = [threading.Thread(target=work, args=(
                server, production.owner.token, production.writes(random.Random(dice.random())), mine, stop))
                for mine in sent]
            for thread in threads:
                thread.start()
            time.sleep(dice.uniform(0.02, 1.0))
            server.kill()
            stop.set()
            for thread in threads:
                thread.join()
            while dice.random() < 0.2:
                server.launch()
                time.sleep(dice.uniform(0, 0.2))
                server.kill()
                while_starting += 1
            starts.append(server.start())
            proof.reader.close()
            found = proof.hold_against([write for mine in sent for write in mine], dice)
            totals = [total + one for total, one in zip(totals, found)]
            assert totals[3:] == [0, 0], f"cycle {cycle}: lost={totals[3]} doubled={totals[4]}"
    finally:
        if server:
            server.stop()
            shutil.rmtree(server.folder)
        if cluster:
            cluster.stop()
    answered, retried, kept, lost, doubled = totals
    print(f"cycles={asked.cycles} kills_while_starting={while_starting} acknowledged={answered} retried={retried} "
          f"of_which_had_been_kept={kept} lost={lost} doubled={doubled}")
    print(f"ready again after {sorted(starts)[len(starts) // 2] * 1000:.0f} ms, at most {max(starts) * 1000:.0f} ms; "
          f"{time.perf_counter() - began:.0f} s in all")


if __name__ == "__main__":
    main()
