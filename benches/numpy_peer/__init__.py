"""The peer of `evaluate_table`: the best vectorised NumPy script of the same models that we could write."""

from .chain import CHUNK, ON_THE_WAY, OUTPUTS, evaluate

__all__ = ["CHUNK", "ON_THE_WAY", "OUTPUTS", "evaluate"]
