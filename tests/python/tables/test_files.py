"""Files larger than memory: whole or not there, taken up where they were cut off, clear about what is wrong."""

from __future__ import annotations

import contextlib
import errno
import json
import os
import signal
import subprocess
import sys
import time
from pathlib import Path

import pyarrow as pa
import pyarrow.parquet as pq
import pytest
from many import columns

import pinfilm
from pinfilm import files

OUTPUTS = ["tension.pull_n", "drive.current_a", "wear.governs"]


@pytest.fixture(scope="module")
def source(tmp_path_factory: pytest.TempPathFactory) -> Path:
    path = tmp_path_factory.mktemp("lines") / "lines.parquet"
    base = pa.table(columns(100))
    pq.write_table(pa.concat_tables([base] * 20), path, row_group_size=700)
    return path


def run(source: Path, target: Path, **asked: object) -> files.FileRun:
    return files.evaluate_file(source, target, outputs=OUTPUTS, part_rows=150, progress=False, **asked)


def test_the_same_rows_as_in_memory(source: Path, tmp_path: Path) -> None:
    told = []
    done = files.evaluate_file(
        source, tmp_path / "out.parquet", outputs=OUTPUTS, part_rows=333, progress=lambda *rows: told.append(rows)
    )
    wanted = pa.table(pinfilm.evaluate_table(pq.read_table(source), OUTPUTS))
    found = pq.read_table(tmp_path / "out.parquet")
    assert found.combine_chunks().equals(wanted.combine_chunks()) and found.schema.equals(
        wanted.schema, check_metadata=True
    )
    assert (done.rows, done.taken_up) == (2000, 0) and told[-1] == (2000, 2000)
    assert sum(done.status_counts.values()) == 2000 and done.metadata["kept"] == ["asset", "hall"]
    assert not list(tmp_path.glob("*.parts")) and not list(tmp_path.glob("*.tmp"))


KILLED = """
import sys, warnings, pathlib
from pinfilm import files
source, target, outputs = sys.argv[1], sys.argv[2], sys.argv[3].split(",")
files.evaluate_file(source, target, outputs=outputs, part_rows=150, threads=1, progress=False)
"""


def test_a_killed_run_is_taken_up_with_the_same_bytes(source: Path, tmp_path: Path) -> None:
    calm, disturbed = tmp_path / "calm.parquet", tmp_path / "disturbed.parquet"
    run(source, calm)
    parts = disturbed.with_name("disturbed.parquet.parts")
    for wanted in (2, 5):
        command = [sys.executable, "-c", KILLED, str(source), str(disturbed), ",".join(OUTPUTS)]
        with subprocess.Popen(command) as process:
            while process.poll() is None and len(list(parts.glob("*.parquet"))) < wanted:
                time.sleep(0.002)
            process.send_signal(signal.SIGKILL)
        assert process.returncode == -signal.SIGKILL
        assert not disturbed.exists() and len(list(parts.glob("*.parquet"))) >= wanted
    done = run(source, disturbed)
    assert done.taken_up >= 5 * 150 and done.rows == 2000
    assert disturbed.read_bytes() == calm.read_bytes()


def test_one_run_at_a_time(source: Path, tmp_path: Path) -> None:
    target = tmp_path / "out.parquet"
    lock, parts = target.with_name("out.parquet.lock"), target.with_name("out.parquet.parts")

    def beside(*_: int) -> None:
        with pytest.raises(pinfilm.TableError, match=rf"another run \(process {os.getpid()}\)") as caught:
            run(source, target, resume=False)
        assert caught.value.code == "file" and parts.exists()

    files.evaluate_file(source, target, outputs=OUTPUTS, part_rows=1000, progress=beside)
    assert target.exists() and not lock.exists()
    # a run that was killed leaves its lock: the next one takes it over
    command = [sys.executable, "-c", KILLED, str(source), str(target), ",".join(OUTPUTS)]
    with subprocess.Popen(command) as process:
        while process.poll() is None and not list(parts.glob("*.parquet")):
            time.sleep(0.002)
        with pytest.raises(pinfilm.TableError, match=f"process {process.pid}"):
            run(source, target)
        process.send_signal(signal.SIGKILL)
    assert lock.read_text() == str(process.pid)
    assert run(source, target).taken_up >= 150 and not lock.exists()


BAR = """
import sys, time
from pinfilm import _bar
with _bar.Bar("a rather long name of a file.parquet", 2) as bar:
    for done in range(3, 6):
        time.sleep(0.11)
        bar(done * 10**6, 20 * 10**6)
    if sys.argv[1] == "stop":
        raise KeyboardInterrupt
    bar(20 * 10**6, 20 * 10**6)
"""


@pytest.mark.skipif(sys.platform == "win32", reason="terminals of another kind")
@pytest.mark.parametrize(("columns", "encoding"), [(120, "utf-8"), (60, "utf-8"), (25, "ascii")])
@pytest.mark.parametrize("ending", ["whole", "stop"])
def test_the_bar_is_one_line_of_a_terminal(columns: int, encoding: str, ending: str) -> None:
    import fcntl
    import pty
    import struct
    import termios

    master, slave = pty.openpty()
    fcntl.ioctl(slave, termios.TIOCSWINSZ, struct.pack("HHHH", 24, columns, 0, 0))
    # the width is that of the terminal on standard output
    surroundings = {name: value for name, value in os.environ.items() if name not in {"COLUMNS", "LINES"}}
    process = subprocess.Popen(
        [sys.executable, "-c", BAR, ending],
        stdout=slave,
        stderr=slave,
        env={**surroundings, "PYTHONIOENCODING": encoding},
    )
    os.close(slave)
    shown = b""
    with contextlib.suppress(OSError):  # the other end is closed
        while piece := os.read(master, 4096):
            shown += piece
    os.close(master)
    process.wait()
    first, _, rest = shown.decode(encoding).partition("\n")
    drawn = [line.rstrip("\r") for line in first.split("\r")]
    assert all(len(line) < columns for line in drawn) and len(drawn) >= 5
    if ending == "whole":
        assert "100% 20,000,0" in drawn[-2] and not rest
    else:
        assert "25% 5,000,000" in drawn[-2] and rest.startswith("Traceback")


def test_the_bar_is_one_output_of_a_notebook(source: Path, tmp_path: Path) -> None:
    import nbclient
    import nbformat

    given = f"{str(source)!r}, {str(tmp_path / 'out.parquet')!r}, part_rows=900"
    text = f"import pinfilm\n_ = pinfilm.evaluate_file({given})"
    book = nbformat.v4.new_notebook(cells=[nbformat.v4.new_code_cell(text)])
    nbclient.NotebookClient(book, timeout=120).execute()
    (output,) = book.cells[0].outputs
    assert "100% 2,000 of 2,000 rows" in output["data"]["text/plain"]


def test_csv_keeps_its_text(tmp_path: Path) -> None:
    oven = pinfilm.examples.load("oven_now")
    source = tmp_path / "lines.csv"
    source.write_text(
        "asset,duty.speed_m_per_min,duty.food_contact\n007,3.0,\n008,fast,true\n009,,TRUE\n", encoding="utf-8"
    )
    done = files.evaluate_file(source, tmp_path / "out.parquet", defaults=oven, outputs=OUTPUTS, progress=False)
    found = pq.read_table(tmp_path / "out.parquet").to_pydict()
    assert found["asset"] == ["007", "008", "009"] and found["duty.speed_m_per_min"] == ["3.0", "fast", None]
    assert found["code"][1] == "wrong_type" and "default_used" in found["code"][2]
    assert done.metadata["numbers_from_text"] == ["duty.speed_m_per_min"]
    assert done.status_counts["error"] == 1


@pytest.mark.parametrize(
    ("name", "content"),
    [
        ("cut.parquet", None),
        ("foreign.parquet", b"PK\x03\x04 this is another format"),
        ("empty.parquet", b""),
        ("ragged.csv", b"a,b\n1,2\n1,2,3\n"),
        ("latin.csv", "a\nK\xe4lte\n".encode("latin-1")),
        ("empty.csv", b""),
        ("lines.xlsx", b""),
        ("not there.parquet", ...),
    ],
)
def test_what_cannot_be_read_says_so(source: Path, tmp_path: Path, name: str, content: bytes | None) -> None:
    path = tmp_path / name
    if content is None:
        path.write_bytes(source.read_bytes()[:-4000])
    elif content is not ...:
        path.write_bytes(content)
    with pytest.raises(pinfilm.TableError) as caught:
        run(path, tmp_path / "out.parquet", defaults=pinfilm.examples.load("oven_now"))
    assert caught.value.code == "file" and name in str(caught.value)
    assert not (tmp_path / "out.parquet").exists()


def test_a_full_disk_keeps_what_is_finished(source: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    calm, target = tmp_path / "calm.parquet", tmp_path / "out.parquet"
    run(source, calm)
    write, calls = pq.write_table, []

    def full(*given: object, **options: object) -> None:
        calls.append(1)
        if len(calls) > 3:
            raise OSError(errno.ENOSPC, os.strerror(errno.ENOSPC))
        write(*given, **options)

    with monkeypatch.context() as patched:
        patched.setattr(pq, "write_table", full)
        with pytest.raises(pinfilm.TableError, match="disk is full"):
            run(source, target)
    done = run(source, target)
    assert done.taken_up == 450 and target.read_bytes() == calm.read_bytes()


def test_another_run_is_not_mixed_in(source: Path, tmp_path: Path) -> None:
    target = tmp_path / "out.parquet"

    def stop(done: int, _: int) -> None:
        if done > 300:
            raise KeyboardInterrupt

    with pytest.raises(KeyboardInterrupt):
        files.evaluate_file(source, target, outputs=OUTPUTS, part_rows=150, progress=stop)
    with pytest.raises(pinfilm.TableError, match="another run"):
        run(source, target, defaults={"oil.viscosity_index": 120.0})
    assert run(source, target, resume=False, defaults={"oil.viscosity_index": 120.0}).taken_up == 0


def test_the_command(source: Path, tmp_path: Path) -> None:
    target = tmp_path / "out.parquet"
    command = [sys.executable, "-m", "pinfilm", "table", str(source), str(target), "--outputs", "tension.pull_n"]
    done = subprocess.run(command, check=True, capture_output=True, text=True)
    assert "2000 rows" in done.stdout and "kept as they are: asset, hall" in done.stdout
    assert pq.read_metadata(target).num_rows == 2000
    wrong = subprocess.run([*command[:4], "no.parquet", str(target)], capture_output=True, text=True, check=False)
    assert wrong.returncode == 1 and "no.parquet" in wrong.stderr and "Traceback" not in wrong.stderr
    with contextlib.suppress(FileNotFoundError):
        json.loads((tmp_path / "out.parquet.parts" / "run.json").read_text())
