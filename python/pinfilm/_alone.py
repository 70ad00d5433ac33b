"""One run at a time for a file that is written."""

from __future__ import annotations

import errno
import os
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from .errors import TableError

__all__ = ["alone"]

HELD = frozenset({errno.EACCES, errno.EAGAIN, errno.EDEADLK})
"""What the system says where another one holds the lock."""


@contextmanager
def alone(target: Path) -> Iterator[None]:
    """Hold `target` for this run; an error says who else does.

    The system lets the lock go when its process ends, however it ends: a run that was killed holds nothing, and the
    file that it leaves behind is taken over.
    """
    path = target.with_name(target.name + ".lock")
    file = _locked(path, target)
    try:
        os.ftruncate(file, 0)
        os.write(file, str(os.getpid()).encode())  # for the words of the one that comes second
        yield
    finally:
        if sys.platform != "win32":  # Windows keeps the name of an open file
            path.unlink(missing_ok=True)
        os.close(file)


def _locked(path: Path, target: Path) -> int:
    while True:
        file = os.open(path, os.O_RDWR | os.O_CREAT, 0o666)
        try:
            _lock(file)
        except OSError as error:
            who = os.read(file, 20).decode("ascii", "replace").strip() if sys.platform != "win32" else ""
            os.close(file)
            if error.errno not in HELD:
                raise
            who = f" (process {who})" if who else ""
            text = f"{target} is being written by another run{who}: wait for it, end it, or give another target"
            raise TableError(text, "file", "target", text=str(target)) from error
        except BaseException:
            os.close(file)
            raise
        # the run that held it may have taken the name away in between: then this is the lock of nobody
        try:
            if os.path.samestat(os.fstat(file), path.stat()):
                return file
        except FileNotFoundError:
            pass
        os.close(file)


def _lock(file: int) -> None:
    if sys.platform == "win32":
        import msvcrt

        msvcrt.locking(file, msvcrt.LK_NBLCK, 1)
    else:
        import fcntl

        try:
            fcntl.flock(file, fcntl.LOCK_EX | fcntl.LOCK_NB)
        except OSError as error:
            if error.errno not in {errno.ENOLCK, errno.ENOTSUP, errno.EOPNOTSUPP, errno.ENOSYS}:
                raise
            # a file system without locks: two runs at once are then the caller's care
