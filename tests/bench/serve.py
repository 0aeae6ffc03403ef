#!/usr/bin/env python3
"""Measures a release build as a user meets it, and says what machine it was.

    GAGWRIGHT_BIN=target/release/gagwright tests/bench/serve.py

Ready time and memory are of the server on an existing demo database; a gag's page and a packet are
timed at the client over loopback, so the server's own share is smaller. Where a general-purpose peer
does comparable work it runs beside ours and the ratio is given: ReportLab typesets a table of as many
pages as the packet has, when it is installed.
"""

import gzip
import json
import os
import pathlib
import platform
import shutil
import socket
import statistics
import subprocess
import tempfile
import time
import urllib.request

PROGRAM = pathlib.Path(os.environ.get("GAGWRIGHT_BIN", "target/release/gagwright")).resolve()
ROOT = pathlib.Path(__file__).parents[2]


def free_port():
    with socket.socket() as one:
        one.bind(("127.0.0.1", 0))
        return one.getsockname()[1]


class Server:
    def __init__(self, folder):
        self.port = free_port()
        self.address = f"http://127.0.0.1:{self.port}"
        started = time.perf_counter()
        self.process = subprocess.Popen(
            [PROGRAM], cwd=folder, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL,
            env={**os.environ, "GAGWRIGHT_LISTEN": f"127.0.0.1:{self.port}"},
        )
        while True:
            try:
                with socket.create_connection(("127.0.0.1", self.port), timeout=1):
                    break
            except OSError:
                assert self.process.poll() is None, "the server stopped"
                time.sleep(0.002)
        self.ask("/api/v1/status")
        self.ready = time.perf_counter() - started

    def ask(self, path, token=None, body=None):
        request = urllib.request.Request(self.address + path, method="POST" if body else "GET")
        if token:
            request.add_header("Authorization", f"Bearer {token}")
        if body:
            request.add_header("Content-Type", "application/json")
        with urllib.request.urlopen(request, json.dumps(body).encode() if body else None) as answer:
            return answer.read()

    def resident(self):
        status = pathlib.Path(f"/proc/{self.process.pid}/status").read_text()
        return int(next(line for line in status.splitlines() if line.startswith("VmRSS")).split()[1]) / 1024

    def stop(self):
        self.process.terminate()
        self.process.wait()


def timed(work, times):
    taken = []
    for _ in range(times):
        start = time.perf_counter()
        work()
        taken.append((time.perf_counter() - start) * 1000)
    taken.sort()
    return statistics.median(taken), taken[int(len(taken) * 0.99)]


def peer_packet(pages):
    try:
        from reportlab.lib.pagesizes import A4
        from reportlab.platypus import SimpleDocTemplate, Table
    except ImportError:
        return None
    rows = [["Drop against the catcher's ceiling", "21.3 m", "at most 36.6 m", "Within", "Published"]] * (34 * pages)
    return timed(lambda: SimpleDocTemplate(os.devnull, pagesize=A4).build([Table(rows)]), 5)[0]


def first_load():
    """Compressed bytes a phone fetches before the core: what the service worker lists, less the wasm."""
    total = 0
    for file in (ROOT / "web/dist").rglob("*"):
        if file.suffix in (".br", ".gz", ".wasm", ".map") or not file.is_file():
            continue
        compressed = file.with_name(file.name + ".br")
        total += compressed.stat().st_size if compressed.exists() else len(gzip.compress(file.read_bytes()))
    return total / 1000


def main():
    print(f"{platform.machine()}, {os.cpu_count()} processors, {platform.system()} {platform.release()}")
    folder = tempfile.mkdtemp()
    try:
        first = Server(folder)
        print(f"first start, seeding the demo         {first.ready * 1000:8.0f} ms")
        first.stop()
        ready = []
        for _ in range(5):
            server = Server(folder)
            ready.append(server.ready * 1000)
            time.sleep(0.5)
            resident = server.resident()
            server.stop()
        print(f"ready on an existing database         {statistics.median(ready):8.0f} ms   aim under 500")
        print(f"resident when idle                    {resident:8.1f} MB   aim under 40")
        server = Server(folder)
        sign_in = json.loads(server.ask("/api/v1/status"))["demo_sign_ins"][0]
        session = json.loads(server.ask("/api/v1/sessions", body={k: sign_in[k] for k in ("email", "password")}))
        token = session["access_token"]
        production = session["memberships"][0]["production"]["id"]
        gags = json.loads(server.ask(f"/api/v1/productions/{production}/gags", token))["items"]
        for what, path, aim in [
            ("a gag's page", "/api/v1/gags/{}", 10),
            ("a packet", "/api/v1/gags/{}/packet?paper=a4", 100),
        ]:
            worst = max((timed(lambda g=g: server.ask(path.format(g["id"]), token), 30), g["code"]) for g in gags)
            (median, late), code = worst
            print(f"{what + ', slowest gag (' + code + ')':38}{median:8.1f} ms   p99 {late:.1f}, aim under {aim}")
        median, late = timed(lambda: server.ask(f"/api/v1/productions/{production}/gags", token), 30)
        print(f"{'list of all ' + str(len(gags)) + ' gags, each judged':38}{median:8.1f} ms   p99 {late:.1f}")
        packet = server.ask(f"/api/v1/gags/{gags[0]['id']}/packet?paper=a4", token)
        pages = packet.count(b"/Type /Page\n") + packet.count(b"/Type /Page/") + packet.count(b"/Type/Page/")
        print(f"that packet                           {len(packet) / 1000:8.0f} kB")
        peer = peer_packet(pages or 10)
        if peer:
            ours = timed(lambda: server.ask(f"/api/v1/gags/{gags[0]['id']}/packet?paper=a4", token), 10)[0]
            print(f"ReportLab, as many pages of one table {peer:8.1f} ms   {peer / ours:.1f} times ours")
        print(f"first load of the app, compressed     {first_load():8.0f} kB   aim under 250, without the core")
        server.stop()
    finally:
        shutil.rmtree(folder)


if __name__ == "__main__":
    main()
