"""Measures the console as a person meets it: at a pseudo-terminal, from the start to the first answers.

python3 core/console/src/bench/first_answer.py [RUNS [IDLE_SECONDS]]

Prints one line a run: milliseconds from the start to the prompt; from Enter to the answer of `1 + 1`, typed after
the prompt had been idle; of a second line; the processor time of the whole run; the load of the machine at its start.
"""

import fcntl
import os
import pty
import re
import resource
import select
import struct
import sys
import tempfile
import termios
import time

LAUNCHER = "core/console/target/reseat/bin/reseat"


class Screen:
    def __init__(self):
        self.home = tempfile.mkdtemp(prefix="reseat-bench")
        self.start = time.monotonic()
        self.pid, self.fd = pty.fork()
        if self.pid == 0:
            os.environ.update(TERM="xterm", LANG="C.UTF-8", RESEAT_HOME=self.home)
            os.execvp(LAUNCHER, [LAUNCHER, "console"])
        fcntl.ioctl(self.fd, termios.TIOCSWINSZ, struct.pack("HHHH", 40, 100, 0, 0))
        self.seen = b""

    def await_(self, pattern):
        while not re.search(pattern, self.seen):
            if select.select([self.fd], [], [], 60)[0]:
                self.seen += os.read(self.fd, 65536)
            else:
                raise SystemExit("no answer: " + repr(self.seen[-300:]))
        return time.monotonic()

    def answer(self, code, pattern):
        self.seen = b""
        typed = time.monotonic()
        os.write(self.fd, code + b"\r")
        return (self.await_(pattern) - typed) * 1000


def run(idle):
    load = os.getloadavg()[0]
    before = resource.getrusage(resource.RUSAGE_CHILDREN)
    screen = Screen()
    prompt = (screen.await_("┆".encode()) - screen.start) * 1000
    time.sleep(idle)
    first = screen.answer(b"1 + 1", rb"r1.*= .*2\r")
    second = screen.answer(b"[1, 2, 3].map(x => x * 2).length", rb"r2.*= .*3\r")
    os.write(screen.fd, b"leave\r")
    os.waitpid(screen.pid, 0)
    after = resource.getrusage(resource.RUSAGE_CHILDREN)
    cpu = after.ru_utime + after.ru_stime - before.ru_utime - before.ru_stime
    print(
        f"prompt {prompt:6.0f} ms   first {first:5.0f} ms   second {second:5.0f} ms"
        f"   processor {cpu:5.1f} s   load {load:4.1f}",
        flush=True,
    )


if __name__ == "__main__":
    for _ in range(int(sys.argv[1]) if len(sys.argv) > 1 else 5):
        run(float(sys.argv[2]) if len(sys.argv) > 2 else 2)
