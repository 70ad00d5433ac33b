"""What can go wrong, as exceptions that say which field, which value, which limit.

Every error is a :class:`PinfilmError`; the subclasses also derive from the builtin that a caller would expect.
"""

from __future__ import annotations

__all__ = [
    "ConvergenceError",
    "InputError",
    "PinfilmError",
    "PinfilmRangeWarning",
    "PinfilmTableWarning",
    "TableError",
    "UnitError",
]


class PinfilmError(Exception):
    """Base of all errors of this library.

    Attributes
    ----------
    code : str
        Stable word for programs, such as ``"out_of_range"``.
    field : str
        Dotted path of the field, such as ``"chain.pitch_mm"``.
    value : float, str or None
        What was refused.
    unit : str
        Unit of the value; empty if it has none.
    limit : str
        What would have been accepted, in words.
    line : int or None
        Line of the survey file, where one was read.
    """

    def __init__(
        self,
        message: str,
        code: str = "",
        field: str = "",
        number: float | None = None,
        text: str | None = None,
        unit: str = "",
        limit: str = "",
        line: int | None = None,
    ) -> None:
        """Keep everything in ``args``, so that the exception pickles."""
        super().__init__(message, code, field, number, text, unit, limit, line)
        self.code = code
        self.field = field
        self.value: float | str | None = number if number is not None else text
        self.unit = unit
        self.limit = limit
        self.line = line

    def __str__(self) -> str:
        """Return the message alone."""
        return str(self.args[0])


class InputError(PinfilmError, ValueError):
    """A value, or a combination of values, that cannot be computed."""


class UnitError(PinfilmError, ValueError):
    """A quantity of another dimension than its name says."""


class TableError(PinfilmError, ValueError):
    """A table that is not one: columns missing, types wrong."""


class ConvergenceError(PinfilmError, RuntimeError):
    """An iteration that did not settle; the message carries its residual."""


class PinfilmRangeWarning(UserWarning):
    """A number outside the usual range, or a result outside what a model was made for."""


class PinfilmTableWarning(UserWarning):
    """A column of a table that looks as if it was meant to be read, and was not."""
