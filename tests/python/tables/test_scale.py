"""Dask with a real scheduler and worker processes: the same rows as one process, also when a worker dies."""

from __future__ import annotations

import os
import signal
import warnings
from collections.abc import Iterator

import pandas as pd
import pyarrow as pa
import pytest
from many import columns

import pinfilm
from pinfilm import scale

distributed = pytest.importorskip("distributed")
dask = pytest.importorskip("dask")
OUTPUTS = ["tension.pull_n", "wear.governs"]

pytestmark = [
    pytest.mark.timeout(600),
    pytest.mark.filterwarnings("ignore::DeprecationWarning"),
    pytest.mark.filterwarnings("ignore::ResourceWarning"),
    pytest.mark.filterwarnings("ignore::pytest.PytestUnraisableExceptionWarning"),
]


@pytest.fixture(scope="module")
def client() -> Iterator[object]:
    with (
        warnings.catch_warnings(),
        distributed.LocalCluster(
            n_workers=2, threads_per_worker=1, processes=True, dashboard_address=None, silence_logs=50
        ) as cluster,
        distributed.Client(cluster) as client,
    ):
        warnings.simplefilter("ignore")
        yield client


def pieces(count: int, rows: int) -> list[pa.Table]:
    table = pa.table(columns(rows))
    return [table.append_column("piece", pa.array([number] * rows)) for number in range(count)]


def test_batches_one_by_one() -> None:
    table = pa.table(columns(30))
    wanted = pa.table(pinfilm.evaluate_table(table, OUTPUTS))
    found = pa.Table.from_batches(scale.evaluate_batches(table.to_batches(max_chunksize=4), outputs=OUTPUTS))
    assert found.combine_chunks().equals(wanted.combine_chunks())
    assert scale.result_schema(table.schema, outputs=OUTPUTS).equals(wanted.schema, check_metadata=True)


def test_a_dataframe(client: object) -> None:
    import dask.dataframe as dd

    frame = pd.DataFrame(columns(60))
    found = scale.evaluate_dask(dd.from_pandas(frame, npartitions=4), outputs=OUTPUTS).compute()
    wanted = pd.DataFrame.from_arrow(pinfilm.evaluate_table(frame, OUTPUTS))
    assert list(found["tension.pull_n"].to_numpy(float, na_value=-1.0)) == list(wanted["tension.pull_n"].fillna(-1.0))
    assert list(found["asset"]) == list(frame["asset"]) and list(found.index) == list(frame.index)


def dies_once(piece: pa.Table, marker: str, **asked: object) -> pa.Table:
    """Evaluate a piece; the first worker that gets the third one is killed in the middle of it."""
    if piece["piece"][0].as_py() == 3:
        try:
            os.close(os.open(marker, os.O_CREAT | os.O_EXCL))
        except FileExistsError:
            pass
        else:
            os.kill(os.getpid(), signal.SIGKILL)
    return scale.evaluate_arrow(piece, **asked)


def test_a_killed_worker_loses_nothing(client: object, tmp_path: object) -> None:
    import dask.bag

    given = pieces(8, 50)
    bag = dask.bag.from_sequence(given, npartitions=8)
    found = bag.map(dies_once, marker=str(tmp_path / "died"), outputs=OUTPUTS).compute()
    assert (tmp_path / "died").exists()
    wanted = pa.table(pinfilm.evaluate_table(pa.concat_tables(given), OUTPUTS))
    assert pa.concat_tables(found).combine_chunks().equals(wanted.combine_chunks())
