"""A C program beside a renderer, compiled once for the machine it runs on."""
import ctypes
import os
import subprocess
import tempfile

FLAGS = ["-O3", "-march=native", "-ffast-math", "-fno-finite-math-only", "-shared", "-fPIC"]


def built(folder, name):
    """The library compiled from `folder`/`name`, kept in the temporary folder under its time of change."""
    source = os.path.join(folder, name)
    kept = os.path.join(tempfile.gettempdir(), f"{os.path.basename(folder)}-{name}-{os.stat(source).st_mtime_ns}.so")
    if not os.path.exists(kept):
        fresh = f"{kept}.{os.getpid()}"
        subprocess.run(["cc", *FLAGS, source, "-o", fresh, "-lm"], check=True)
        os.replace(fresh, kept)
    return ctypes.CDLL(kept)
