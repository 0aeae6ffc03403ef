"""A throwaway PostgreSQL cluster, reachable by a socket in its folder alone. Knows nothing of what is kept in it."""

import os
import pathlib
import pwd
import shutil
import subprocess
import tempfile


class Cluster:
    def __init__(self):
        # Debian keeps them out of the way.
        found = sorted(pathlib.Path("/usr/lib/postgresql").glob("*/bin/initdb"))
        program = found[-1] if found else shutil.which("initdb")
        assert program, "PostgreSQL is not installed: apt-get install postgresql"
        self.programs = pathlib.Path(program).parent
        # A socket's path is short; PostgreSQL refuses to run as root.
        self.folder = pathlib.Path(tempfile.mkdtemp(prefix="pg-", dir="/tmp"))
        self.user = []
        if os.geteuid() == 0:
            name = "postgres" if "postgres" in {one.pw_name for one in pwd.getpwall()} else "nobody"
            shutil.chown(self.folder, name)
            self.user = ["runuser", "-u", name, "--"]
        self.run("initdb", "--no-locale", "--encoding=UTF8", "--auth=trust", "--username=postgres",
                 "--pgdata", self.folder / "data")
        self.run("pg_ctl", "--wait", "--silent", "start", "--pgdata", self.folder / "data", "--log",
                 self.folder / "log", "--options", f"-c listen_addresses= -c unix_socket_directories={self.folder}")

    def run(self, program, *arguments):
        subprocess.run([*self.user, self.programs / program, *arguments], cwd=self.folder, check=True,
                       stdout=subprocess.DEVNULL)

    def create(self, name):
        """Makes a database and gives its address."""
        self.run("createdb", "--username=postgres", "--host", self.folder, name)
        return f"postgres://postgres@{str(self.folder).replace('/', '%2F')}/{name}"

    def stop(self):
        self.run("pg_ctl", "--mode=immediate", "--wait", "stop", "--pgdata", self.folder / "data")
        shutil.rmtree(self.folder)
