"""A small production whose writes can be told apart in its trail, and what its trail must be whatever happened to
the server: every write once, every leaf where it was. Shared by the proofs of durability."""

import base64
import collections
import hashlib
import json
import pathlib
import re
import sqlite3
import subprocess

import rfc8785

from client import PROGRAM, Client, Phone, new_id, now, set_up

ID = re.compile(r"[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}")


def node(left, right):
    """RFC 6962, section 2.1."""
    return hashlib.sha256(b"\1" + left + right).digest()


class Tree:
    """The trail as it was seen: leaf hashes, folded into the roots of complete subtrees as RFC 6962 has them."""

    def __init__(self):
        self.size, self.peaks = 0, []

    def add(self, leaf):
        found, level = hashlib.sha256(b"\0" + leaf).digest(), 0
        while self.peaks and self.peaks[-1][0] == level:
            found, level = node(self.peaks.pop()[1], found), level + 1
        self.peaks.append((level, found))
        self.size += 1

    def root(self):
        found = None
        for _, peak in reversed(self.peaks):
            found = peak if found is None else node(peak, found)
        return found


def grew(old, new, old_root, new_root, path):
    """Whether a consistency proof holds (RFC 9162, section 2.1.4.2)."""
    if old == new:
        return old_root == new_root
    path = list(path) if old & (old - 1) else [old_root, *path]
    place, last = old - 1, new - 1
    while place & 1:
        place, last = place >> 1, last >> 1
    first = second = path[0]
    for step in path[1:]:
        if last == 0:
            return False
        if place & 1 or place == last:
            first, second = node(step, first), node(step, second)
            while not place & 1 and place:
                place, last = place >> 1, last >> 1
        else:
            second = node(second, step)
        place, last = place >> 1, last >> 1
    return last == 0 and (first, second) == (old_root, new_root)


class Write:
    """One write, and the leaf by which it is known in the trail: its kind, and an id that only it has there."""

    def __init__(self, path, body, kind, known_by, after=None):
        self.path, self.body, self.after = path, body, after
        self.leaf, self.key, self.answer = (kind, known_by), new_id(), None

    def send(self, client):
        status, headers, body = self.try_to_send(client)
        assert status == 201, (self.path, self.body, status, body)
        return headers.get("idempotency-replayed") == "true", body

    def try_to_send(self, client):
        return client.ask("POST", self.path, self.body, key=self.key)


class Production:
    """A small production made by its coordinator, and what they may write in it."""

    def __init__(self, server):
        self.owner = set_up(server)
        self.path = f"/productions/{self.owner.production}"
        self.phone, self.gags = Phone(self.owner), []
        for number in range(12):
            gag = new_id()
            self.owner.post(f"{self.path}/gags", {
                "id": gag, "code": f"G{number:02}", "title": "She falls from the silo", "technique": "high-fall"})
            digest = self.owner.get(f"/gags/{gag}")["clearance"]["plan_digest"]
            draft = self.owner.get(f"/gags/{gag}/signoff-draft?role=coordinator")
            self.gags.append((gag, digest, draft["statement"]))

    def writes(self, dice):
        """Writes without end, some of which build on the one before."""
        while True:
            gag, digest, draft = dice.choice(self.gags)
            at, one, day = f"/gags/{gag}", new_id(), now()[:10]
            kind = dice.randrange(8)
            if kind == 0:
                first = Write(f"{self.path}/holds", {"id": one, "gag": gag, "reason": "Wait"}, "hold.raised", one)
                yield first
                yield Write(f"/holds/{one}/agreements", {"role": "coordinator", "cause": "The way is clear"},
                            "hold.agreed", one, first)
            elif kind == 1:
                jws, one = self.phone.sign(draft)
                yield Write(f"{at}/signoffs", {"jws": jws}, "signoff.made", one)
            elif kind == 2:
                yield Write(f"{at}/readings", {"id": one, "kind": "wind", "value": dice.randrange(12),
                                               "at": now()}, "reading.logged", one)
            elif kind == 3:
                first = Write(f"{at}/takes", {"id": one, "number": 1 + dice.randrange(9), "at": now(), "revision": 1,
                                              "plan_digest": digest, "day": day, "place": "Silo yard"},
                              "go.called", one)
                yield first
                yield Write(f"{at}/takes/{one}/outcome", {"result": "good", "note": "", "at": now()},
                            "take.ended", one, first)
            elif kind == 4:
                yield Write(f"{at}/runs", {"id": one, "rung": "bag", "good": True, "revision": 1, "at": now()},
                            "run.logged", one)
            elif kind == 5:
                yield Write(f"{at}/briefings", {"id": one, "day": day, "place": "Silo yard", "revision": 1,
                                                "at": now(), "attended": [], "points": "the abort word"},
                            "briefing.held", one)
            elif kind == 6:
                yield Write(f"{self.path}/equipment", {"id": one, "serial": one[-12:], "name": "harness"},
                            "equipment.put", one)
            elif kind == 7:
                yield Write(f"{at}/test-shots", {"id": one, "technique": "high-fall", "load": "bag", "note": "",
                                                 "inputs": {"drop_height": {"value": 6.1}},
                                                 "measured": {"impact_speed": 10.7}, "shot_at": now()},
                            "test_shot.logged", one)


class Proof:
    """What was seen of one database, and what it must still be."""

    def __init__(self, server, production, file):
        self.server, self.path, self.file = server, production.path, file
        self.reader = Client(server, production.owner.token)
        self.tree, self.leaves, self.writes = Tree(), collections.Counter(), []
        self.look()
        self.before = self.tree.size

    def look(self):
        """Takes in the leaves that are new, and holds the whole tree against the server's root."""
        old, old_root = self.tree.size, self.tree.root()
        export = self.reader.text(f"{self.path}/trail/export")
        entries = [line for line in map(json.loads, export.splitlines()) if "entry" in line]
        for line in entries[old:]:
            leaf = rfc8785.dumps(line["entry"])
            self.tree.add(leaf)
            self.leaves.update((line["entry"]["kind"], one) for one in set(ID.findall(leaf.decode())))
        _, size, root = self.reader.text(f"{self.path}/trail/checkpoint").splitlines()[:3]
        assert int(size) == len(entries) == self.tree.size, "leaves were lost"
        assert base64.b64decode(root) == self.tree.root(), "a leaf is not what it was"
        if old:
            path = self.reader.get(f"{self.path}/trail/consistency?from={old}&to={size}")["path"]
            path = [bytes.fromhex(step) for step in path]
            assert grew(old, int(size), old_root, self.tree.root(), path), "the trail did more than grow"
        return export

    def kept(self, write):
        return self.leaves[write.leaf]

    def hold_against(self, sent, dice):
        """Sends again what was not answered, and counts: answered, sent again, kept of those, lost, doubled."""
        self.look()
        self.writes += sent
        answered = [write for write in sent if write.answer is not None]
        unheard = [write for write in sent if write.answer is None]
        lost = [write for write in self.writes if write not in unheard and self.kept(write) == 0]
        had_been_kept = 0
        for write in unheard:
            before = self.kept(write)
            replayed, write.answer = write.send(self.reader)
            assert replayed >= before, "a key forgot what was done under it"
            had_been_kept += before
        for write in dice.sample(answered, min(len(answered), 5)):
            assert write.send(self.reader) == (True, write.answer), "an answer is not what it was"
        export = self.look()
        doubled = [write for write in self.writes if self.kept(write) > 1]
        assert self.tree.size - self.before == len(self.writes) - len(lost), "a write left no leaf, or two"
        self.verify(export)
        return len(answered), len(unheard), had_been_kept, len(lost), len(doubled)

    def verify(self, export):
        file = pathlib.Path(self.server.folder) / "trail.jsonl"
        file.write_text(export)
        ran = subprocess.run([PROGRAM, "verify", file], capture_output=True, text=True)
        assert ran.returncode == 0, ran.stdout + ran.stderr
        if self.file:
            base = sqlite3.connect(f"file:{self.file}?mode=ro", uri=True)
            for check in ("integrity_check", "foreign_key_check"):
                found = base.execute(f"PRAGMA {check}").fetchall()
                assert found in ([("ok",)], []), found
            base.close()
