"""Words: eight blocks of a walk in a row, composed by doubling, so that burning in takes an eighth of the steps.

Blocks start in three short intervals only, which a block maps onto themselves. Eight of them are one of about forty
words, by where the first starts; each makes min(top, kept × V + added) of a fill V.
"""

from __future__ import annotations

from types import SimpleNamespace as Rows

import numpy as np

DOUBLINGS = 3
BLOCKS = 2**DOUBLINGS


def eight_blocks(walk: Rows) -> Rows:
    """Where each word starts (cuts × rows), and what it does, flat: row × words + word."""
    (_, first), (second_from, second), (third_from, third) = walk.begins
    cuts = np.sort(np.concatenate([walk.limits, third_from[None].astype(walk.whole)]), axis=0)
    row = np.arange(walk.rows)
    starts = with_zero(cuts)
    kind = sum((starts >= limit).astype(np.intp) for limit in walk.limits)
    place = row * 5 + kind
    by, kept, added = walk.by.take(place), walk.kept.take(place), walk.added.take(place)
    top = np.broadcast_to(walk.capacity, kept.shape)
    for _ in range(DOUBLINGS):
        ends = np.concatenate([starts[1:], np.full((1, walk.rows), np.iinfo(walk.whole).max, walk.whole)])
        # a cut of the second half is met from where the first half moves it to; of all words only one begins in time
        before = cuts[:, None] - by[None]
        inside = (before >= starts) & (before < ends)
        inside &= (
            (before < first)
            | ((before >= second_from) & (before < second_from + second))
            | ((before >= third_from) & (before < third_from + third))
        )
        which = inside.argmax(axis=1)[:, None]
        found = np.take_along_axis(before, which, axis=1)[:, 0]
        found = np.where(inside.any(axis=1), found, cuts)
        old, cuts = cuts, np.sort(np.concatenate([cuts, found]), axis=0)
        starts = with_zero(cuts)
        here = number(old, starts)
        then = number(old, starts + np.take_along_axis(by, here, axis=0))
        of = lambda value, word: np.take_along_axis(value, word, axis=0)  # noqa: E731
        kept_then, added_then = of(kept, then), of(added, then)
        top = np.minimum(kept_then * of(top, here) + added_then, of(top, then))
        added, kept = kept_then * of(added, here) + added_then, of(kept, here) * kept_then
        by = of(by, here) + of(by, then)
    flat = {"by": by, "kept": kept, "added": added, "top": top}
    return Rows(cuts=cuts, words=len(starts), **{name: one.T.ravel() for name, one in flat.items()})


def with_zero(cuts: np.ndarray) -> np.ndarray:
    return np.concatenate([np.zeros((1, cuts.shape[1]), cuts.dtype), cuts])


def number(cuts: np.ndarray, phase: np.ndarray) -> np.ndarray:
    """How many cuts are not above a phase: the number of the word that starts there."""
    word = np.zeros(phase.shape, np.int8)
    above = np.empty(phase.shape, bool)
    for cut in cuts:
        np.greater_equal(phase, cut, out=above)
        word += above.view(np.int8)
    return word.astype(np.intp)
