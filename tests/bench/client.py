"""What the proofs and measurements of a running server share: a server of the release build on a port of its
own, a client that sends writes under keys, and a phone that signs. Knows HTTP and JOSE; no rule of the trade.

Needs what tests/reference needs, for the signatures.
"""

import base64
import http.client
import json
import os
import pathlib
import platform
import signal
import socket
import subprocess
import time
import uuid

from cryptography.hazmat.primitives import hashes
from cryptography.hazmat.primitives.asymmetric import ec
from cryptography.hazmat.primitives.asymmetric.utils import decode_dss_signature

ROOT = pathlib.Path(__file__).parents[2]
PROGRAM = pathlib.Path(os.environ.get("GAGWRIGHT_BIN", ROOT / "target/release/gagwright")).resolve()


def machine():
    """What was measured on, in one line."""
    model = platform.processor() or platform.machine()
    told = pathlib.Path("/proc/cpuinfo")
    if told.exists():
        names = [line.split(":")[1].strip() for line in told.read_text().splitlines() if line.startswith("model name")]
        model = names[0] if names else model
    load = os.getloadavg()[0]
    return f"{model}, {os.cpu_count()} processors, {platform.system()} {platform.release()}, load {load:.1f}"


class Lost(Exception):
    """No whole answer came: whether the write was done, nobody knows."""


class Server:
    """The release build, on a database and a port that stays its own from start to start."""

    def __init__(self, folder, database=None, arguments=("serve",), before=()):
        self.folder, self.arguments, self.before = folder, arguments, before
        self.log = pathlib.Path(folder) / "server.log"
        with socket.socket() as one:
            one.bind(("127.0.0.1", 0))
            self.port = one.getsockname()[1]
        self.settings = {"GAGWRIGHT_LISTEN": f"127.0.0.1:{self.port}", "RUST_LOG": "error"}
        if database:
            self.settings["GAGWRIGHT_DATABASE"] = database
        self.process = None

    def launch(self):
        """Starts it and does not wait."""
        with open(self.log, "ab") as log:
            self.process = subprocess.Popen(
                [*self.before, str(PROGRAM), *self.arguments], cwd=self.folder, stdout=log, stderr=log,
                env={**os.environ, **self.settings})

    def start(self):
        """Starts it and waits until it answers; gives the seconds."""
        started = time.perf_counter()
        self.launch()
        while True:
            try:
                Client(self).get("/status")
                return time.perf_counter() - started
            except Lost:
                if self.process.poll() is not None:
                    raise SystemExit(f"the server stopped by itself:\n{self.log.read_text()[-2000:]}") from None
                time.sleep(0.002)

    def processor_seconds(self):
        """Processor time it has used, all threads."""
        fields = pathlib.Path(f"/proc/{self.process.pid}/stat").read_text().rsplit(")", 1)[1].split()
        return (int(fields[11]) + int(fields[12])) / os.sysconf("SC_CLK_TCK")

    def kill(self):
        """SIGKILL: no handler runs, nothing is flushed."""
        self.process.send_signal(signal.SIGKILL)
        self.process.wait()

    def stop(self):
        self.process.terminate()
        self.process.wait()


class Client:
    """One connection that stays open, as one caller."""

    def __init__(self, server, token=None):
        self.server, self.token, self.connection = server, token, None

    def ask(self, method, path, body=None, key=None, headers=()):
        """Status, headers and body."""
        sent = {"Accept-Encoding": "identity", **dict(headers)}
        if self.token:
            sent["Authorization"] = f"Bearer {self.token}"
        if method != "GET":
            sent["Idempotency-Key"] = key or new_id()
        if body is not None:
            sent["Content-Type"] = "application/json"
            body = json.dumps(body)
        try:
            if self.connection is None:
                self.connection = http.client.HTTPConnection("127.0.0.1", self.server.port, timeout=30)
            self.connection.request(method, f"/api/v1{path}", body, sent)
            answer = self.connection.getresponse()
            return answer.status, dict((name.lower(), value) for name, value in answer.getheaders()), answer.read()
        except (OSError, http.client.HTTPException) as error:
            self.close()
            raise Lost(str(error)) from error

    def close(self):
        if self.connection is not None:
            self.connection.close()
            self.connection = None

    def get(self, path):
        status, _, body = self.ask("GET", path)
        assert status == 200, (path, status, body)
        return json.loads(body)

    def text(self, path):
        status, _, body = self.ask("GET", path)
        assert status == 200, (path, status, body)
        return body.decode()

    def post(self, path, body, **more):
        status, _, answer = self.ask("POST", path, body, **more)
        assert status in (200, 201), (path, body, status, answer)
        return json.loads(answer)


def sign_in(server, email, password="salt-meridian"):
    """A caller of the demo, with the production they are on."""
    session = Client(server).post("/sessions", {"email": f"{email}@salt-meridian.example", "password": password})
    caller = Client(server, session["access_token"])
    caller.production = session["memberships"][0]["production"]["id"]
    return caller


def set_up(server):
    """The first account of an empty server, by its printed link: the coordinator of a production."""
    link = server.log.read_text().split("/setup#")[1].split()[0]
    session = Client(server).post("/setup", {
        "token": link, "name": "Thandeka Mbeki", "email": "thandeka@salt-meridian.example",
        "password": "salt flats at dawn", "production_name": "Salt Meridian", "time_zone": "Africa/Windhoek"})
    caller = Client(server, session["access_token"])
    caller.production = session["memberships"][0]["production"]["id"]
    return caller


def new_id():
    """A UUIDv7 (RFC 9562, section 5.7)."""
    random = int.from_bytes(os.urandom(10), "big")
    value = (time.time_ns() // 1_000_000) << 80 | random & ~(0xf << 76 | 0x3 << 62) | 7 << 76 | 2 << 62
    return str(uuid.UUID(int=value))


def now():
    return time.strftime("%Y-%m-%dT%H:%M:%SZ", time.gmtime())


def base64url(data):
    return base64.urlsafe_b64encode(data).rstrip(b"=").decode()


class Phone:
    """A device with its key, registered by its owner."""

    def __init__(self, owner):
        self.key, self.id = ec.generate_private_key(ec.SECP256R1()), new_id()
        point = self.key.public_key().public_numbers()
        x, y = (base64url(number.to_bytes(32, "big")) for number in (point.x, point.y))
        owner.post(f"/productions/{owner.production}/devices", {
            "id": self.id, "name": "phone", "key": {"kty": "EC", "crv": "P-256", "x": x, "y": y}})

    def sign(self, statement):
        """A drafted statement as the compact JWS of a new sign-off, and its id. What is in one is text and whole
        numbers, whose RFC 8785 form is JSON with sorted keys."""
        statement = {**statement, "id": new_id(), "device": self.id, "signed_at": now()}
        header = {"alg": "ES256", "kid": self.id, "typ": "gagwright-signoff+jws"}
        forms = [json.dumps(part, sort_keys=True, separators=(",", ":"), ensure_ascii=False)
                 for part in (header, statement)]
        signed = ".".join(base64url(form.encode()) for form in forms)
        r, s = decode_dss_signature(self.key.sign(signed.encode(), ec.ECDSA(hashes.SHA256())))
        return f"{signed}.{base64url(r.to_bytes(32, 'big') + s.to_bytes(32, 'big'))}", statement["id"]
