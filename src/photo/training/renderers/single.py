"""What the renderers that draw one picture at a time on a processor share: their pictures in the form of pool.as_bytes."""
import io

import numpy as np
from PIL import Image

FINDINGS = ["coloured-specks", "smears", "white-specks", "translucent-veins", "crackle-network", "powdery-film",
            "dark-centre-ring", "orange-spots", "pinholes", "crack", "brown-outside-in", "colour-bled", "drag-lines",
            "layer-gap", "wrinkled-top", "mould-dimples"]
PARTS = 4


def as_file(image, quality):
    """A picture [H,W,3] of bytes as a file of that quality holds it."""
    kept = io.BytesIO()
    Image.fromarray(image).save(kept, "JPEG", quality=int(quality))
    return np.asarray(Image.open(kept).convert("RGB"))


def halved(mask):
    """A mask [H,W], 0 to 1, as bytes at half the size."""
    h, w = mask.shape
    return (mask.reshape(h // 2, 2, w // 2, 2).mean((1, 3)) * 255 + 0.5).astype(np.uint8)


def packed(image, bar, maps, present, nothing=False):
    """
    One picture for a store: `image` [H,W,3] bytes, `bar` [H,W] 0 to 1, `maps` a mask for each finding's name, `present` the names
    of those that can be seen. A picture that is higher than wide is laid on its side.
    """
    lay = (lambda x: np.rot90(x)) if image.shape[0] > image.shape[1] else (lambda x: x)
    image, bar = lay(image), lay(bar)
    parts = np.zeros((PARTS, bar.shape[0] // 2, bar.shape[1] // 2), np.uint8)
    # Findings that are not there fill the places left: a place each.
    names = [*maps, *(name for name in FINDINGS if name not in maps)][:PARTS]
    for i, name in enumerate(names):
        if name in maps:
            parts[i] = halved(lay(maps[name]))
    labels = [int(name in present) for name in FINDINGS] + [int(nothing)]
    return {"image": np.ascontiguousarray(image.transpose(2, 0, 1)), "bar": halved(bar)[None], "parts": parts,
            "which": np.array([FINDINGS.index(name) for name in names], np.uint8), "labels": np.array(labels, np.uint8)}


def together(pictures):
    return {key: np.stack([picture[key] for picture in pictures]) for key in pictures[0]}
