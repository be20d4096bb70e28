"""How fast a learner learns as time goes on, and when it ends."""
import math


def rate_at(progress, highest):
    """Rises for a fiftieth of the time, then falls to nought along half a cosine."""
    return highest * min(1.0, progress * 50 + 0.02) * 0.5 * (1 + math.cos(math.pi * min(1.0, progress)))


def ending(path, end):
    """When to end, seconds since 1970, where a file says so: a borrowed machine goes back earlier or later than planned."""
    try:
        with open(path) as file:
            return float(file.read())
    except (OSError, ValueError):
        return end
