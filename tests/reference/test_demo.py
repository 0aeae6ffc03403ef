"""What the demo wrote, read by libraries that know nothing of Gagwright.

GAGWRIGHT_DEMO names the folder that `gagwright demo --out` filled. Peers: PyJWT and cryptography for
the sign-offs (RFC 7515, RFC 7518 ES256), rfc8785 for canonical JSON, pymerkle for the tree (RFC 9162),
cryptography for the checkpoint's Ed25519 note (C2SP signed-note) and for what a witness cosigned (C2SP
tlog-cosignature v1.0.0).
"""

import base64
import datetime
import hashlib
import json
import os
import pathlib
import sqlite3
import subprocess

import jwt
import pytest
import rfc8785
from cryptography.exceptions import InvalidSignature
from cryptography.hazmat.primitives.asymmetric.ed25519 import Ed25519PublicKey
from pymerkle import InmemoryTree

DEMO = pathlib.Path(os.environ["GAGWRIGHT_DEMO"])


@pytest.fixture(scope="module")
def export():
    lines = (DEMO / "trail.jsonl").read_text(encoding="utf-8").splitlines()
    header, checkpoint = json.loads(lines[0]), json.loads(lines[-1])
    leaves = [json.loads(line) for line in lines[1:-1]]
    assert leaves, "the trail is empty"
    return header, leaves, checkpoint


def signoffs(leaves):
    return [leaf["entry"]["facts"]["jws"] for leaf in leaves if "jws" in leaf["entry"]["facts"]]


def keys(leaves):
    return {
        leaf["entry"]["facts"]["device"]: leaf["entry"]["facts"]["key"]
        for leaf in leaves
        if "key" in leaf["entry"]["facts"]
    }


def unpad(text):
    return base64.urlsafe_b64decode(text + "=" * (-len(text) % 4))


def test_every_signoff_verifies_with_pyjwt(export):
    _, leaves, _ = export
    devices, found = keys(leaves), signoffs(leaves)
    assert len(found) >= 10
    for jws in found:
        header = jwt.get_unverified_header(jws)
        key = jwt.PyJWK(devices[header["kid"]], algorithm="ES256")
        payload = jwt.PyJWS().decode(jws, key.key, algorithms=["ES256"])
        statement = json.loads(payload)
        assert statement["device"] == header["kid"]
        # The payload is its own canonical form, as an independent RFC 8785 library writes it.
        assert rfc8785.dumps(statement) == payload


def test_an_altered_signoff_does_not_verify(export):
    _, leaves, _ = export
    jws = signoffs(leaves)[0]
    header, payload, signature = jws.split(".")
    statement = json.loads(unpad(payload))
    statement["revision"] += 1
    forged = base64.urlsafe_b64encode(rfc8785.dumps(statement)).decode().rstrip("=")
    key = jwt.PyJWK(keys(leaves)[jwt.get_unverified_header(jws)["kid"]], algorithm="ES256")
    with pytest.raises(jwt.InvalidSignatureError):
        jwt.PyJWS().decode(f"{header}.{forged}.{signature}", key.key, algorithms=["ES256"])


def test_the_tree_has_pymerkles_root(export):
    _, leaves, checkpoint = export
    tree = InmemoryTree(algorithm="sha256")
    for index, leaf in enumerate(leaves):
        assert leaf["entry"]["index"] == index
        tree.append_entry(rfc8785.dumps(leaf["entry"]))
    size, root = note(checkpoint)[:2]
    assert size == len(leaves)
    assert tree.get_state() == root


def note(checkpoint):
    """(size, root, signed text, name, key id and signature) of a checkpoint in signed-note form."""
    text = checkpoint["checkpoint"] if isinstance(checkpoint, dict) else checkpoint
    body, signatures = text.split("\n\n", 1)
    _, size, root = body.split("\n")[:3]
    # The log's own line is the first; those of witnesses come after it.
    _, name, blob = signatures.split("\n")[0].split(" ")
    return int(size), base64.b64decode(root), (body + "\n").encode(), name, base64.b64decode(blob)


def test_the_checkpoint_is_signed_by_the_logs_key(export):
    header, _, checkpoint = export
    _, _, text, name, blob = note(checkpoint)
    log_name, key_hash, key = header["log_key"].split("+", 2)
    key = base64.b64decode(key)
    assert name == log_name and key[0] == 1
    # C2SP signed-note: the key id is the first four bytes of SHA-256(name, newline, algorithm, key).
    expected = hashlib.sha256(name.encode() + b"\n" + key).digest()[:4]
    assert expected.hex() == key_hash and blob[:4] == expected
    public = Ed25519PublicKey.from_public_bytes(key[1:])
    public.verify(blob[4:], text)
    with pytest.raises(InvalidSignature):
        public.verify(blob[4:], text.replace(b"\n", b"\n1", 1))


def test_what_a_witness_cosigned_verifies_over_the_message_of_the_specification(export):
    header, leaves, closing = export
    [key] = {one["entry"]["facts"]["witness_key"] for one in leaves if "witness_key" in one["entry"]["facts"]}
    name, key_hash, key = key.split("+", 2)
    key = base64.b64decode(key)
    # C2SP tlog-cosignature, "Format": a key's identifier byte is 0x04, and its id is that of C2SP signed-note.
    assert key[0] == 4
    expected = hashlib.sha256(name.encode() + b"\n" + key).digest()[:4]
    assert expected.hex() == key_hash
    public = Ed25519PublicKey.from_public_bytes(key[1:])
    notes = [*closing["cosigned"], closing["checkpoint"]]
    sizes = []
    for text in notes:
        body, signatures = text.split("\n\n", 1)
        [blob] = [base64.b64decode(line.split(" ")[2]) for line in signatures.splitlines() if line.split(" ")[1] == name]
        # keyID || big-endian 64 bits of seconds || 64 bytes of signature.
        assert len(blob) == 4 + 8 + 64 and blob[:4] == expected
        seconds = int.from_bytes(blob[4:12], "big")
        # The message: the version, the time, and the note's text with its own line end.
        message = f"cosignature/v1\ntime {seconds}\n{body}\n".encode()
        public.verify(blob[12:], message)
        with pytest.raises(InvalidSignature):
            public.verify(blob[12:], message.replace(f"time {seconds}".encode(), f"time {seconds + 1}".encode()))
        origin, size, root = body.split("\n")[:3]
        assert origin == header["origin"]
        # What was seen is the first so many leaves of this very file.
        tree = InmemoryTree(algorithm="sha256")
        for leaf in leaves[: int(size)]:
            tree.append_entry(rfc8785.dumps(leaf["entry"]))
        assert tree.get_state() == base64.b64decode(root)
        sizes.append(int(size))
        at = datetime.datetime.fromtimestamp(seconds, datetime.UTC)
        last = datetime.datetime.fromisoformat(leaves[int(size) - 1]["entry"]["at"])
        assert datetime.timedelta() <= at - last < datetime.timedelta(minutes=5)
    assert len(sizes) == 2 and sizes == sorted(set(sizes)) and sizes[-1] == len(leaves)


def test_personal_data_is_committed_to_and_not_in_the_leaf(export):
    _, leaves, _ = export
    commitments = {leaf["entry"]["index"]: leaf["entry"].get("commitments", {}) for leaf in leaves}
    text = (DEMO / "trail.jsonl").read_text(encoding="utf-8")
    with sqlite3.connect(DEMO / "story.db") as kept:
        rows = kept.execute("SELECT position, name, salt, said FROM trail_parts").fetchall()
        openings = [one for row in kept.execute("SELECT document FROM signoff_openings") for one in json.loads(row[0])]
        names = [json.loads(row[0])["name"] for row in kept.execute("SELECT document FROM people")]
    assert rows and names
    for index, name, salt, said in rows:
        made = hashlib.sha256(salt + rfc8785.dumps(json.loads(said))).hexdigest()
        assert made == commitments[index].pop(name)
    assert not any(commitments.values()), "a part that was committed to is not kept"
    # What signers wrote is not in what they signed, which has a commitment to each text.
    statements = [json.loads(unpad(jws.split(".")[1])) for jws in signoffs(leaves)]
    signed = {hash for one in statements for hash in [*one.get("conditions", []), *filter(None, [one.get("reason")])]}
    made = {hashlib.sha256(bytes.fromhex(one["salt"]) + one["text"].encode()).hexdigest() for one in openings}
    assert made == signed
    for one in openings:
        assert one["text"] not in text
    for name in names:
        assert name not in text


def test_packets_are_sound_and_their_words_come_out(export):
    packets = sorted(DEMO.glob("*.pdf"))
    assert len(packets) >= 2, "the demo prints A4 and Letter"
    for packet in packets:
        subprocess.run(["qpdf", "--check", packet], check=True, capture_output=True)
        text = subprocess.run(["pdftotext", "-layout", packet, "-"], check=True, capture_output=True, text=True).stdout
        assert "Salt Meridian" in text and "G01" in text
        fonts = subprocess.run(["pdffonts", packet], check=True, capture_output=True, text=True).stdout
        rows = [row for row in fonts.splitlines()[2:] if row.strip()]
        assert rows
        # pdffonts prints "emb sub uni" as three columns: everything is embedded and subset.
        assert all(" yes yes " in row for row in rows), fonts
