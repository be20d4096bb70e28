"""The sixteen flaws in the order of FINDINGS."""
from . import flaws_a, flaws_b
from .scene import FINDINGS

FUNCS = [getattr(flaws_a, n, None) or getattr(flaws_b, n) for n in (f.replace("-", "_") for f in FINDINGS)]
