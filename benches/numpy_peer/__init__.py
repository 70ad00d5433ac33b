"""The peer of `evaluate_table`: the best vectorised NumPy script of the same models that we could write.

A room of the core is a module or two here: `circuit` (with temperatures), `oil`, `entry` (capacity, losses, place of
oiling), `methods`, `coverage`, `fill`, `walk` and `words`, `film`, `friction`, `settle` (the fixed point), `wear` and
`life`, `drive`, `economics`; `chain` has the order. No Python loop runs over rows: branches are masks, Newton and
bisection go column by column and drop the rows that have settled, chunks stay in the cache.

It takes NumPy arrays and gives the results that `evaluate_table` shows by default, agreeing to 1e-9. It leaves out what
the core does beside that, so that it is the faster for it: ranges and consistency of what is given, statuses, messages
and the codes of warnings (and so breakaway, safety, polygon force, the nameplate's mismatch), risk of locking, window
of viscosities, residue, wear of sprocket flanks and under rollers, what a current log could show, supply line,
reservoir and cable. It knows loops of two sprockets only, oils by grade and index, no flash point, no measured no-load
or empty current; and of two lines compared, neither payback nor saving.
"""

from .chain import CHUNK, ON_THE_WAY, OUTPUTS, evaluate

__all__ = ["CHUNK", "ON_THE_WAY", "OUTPUTS", "evaluate"]
