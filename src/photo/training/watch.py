"""
Reads labelled sets of pictures as the product does, on the way: to see whether learning still travels, and how many looks
at the bar are best. Each folder in the one given is a set, packed by `python3 watch.py FOLDER TARGET` from one that
`npm run score-photos` takes. Nothing is learned from them.
"""
import json
import os
import sys

import numpy as np
import torch

from examine import auc, read

SIDE = 640
# Ways to look at the bar: the square's side in pixels, and whether it is looked at mirrored as well.
LOOKS = {"384": (384, False), "384 and mirrored": (384, True), "448": (448, False), "512": (512, False), "512 and mirrored": (512, True)}
IDS = ["coloured-specks", "smears", "white-specks", "translucent-veins", "crackle-network", "powdery-film",
       "dark-centre-ring", "orange-spots", "pinholes", "crack", "brown-outside-in", "colour-bled", "drag-lines",
       "layer-gap", "wrinkled-top", "mould-dimples"]


class Watched:
    def __init__(self, folder, device):
        self.device, self.sets = device, {}
        for name in sorted(os.listdir(folder)):
            self.sets[name] = opened(f"{folder}/{name}")

    @torch.no_grad()
    def answers(self, model, name, look):
        """Answers [n,18]: findings and "too poor" of the close look, "no soap" of the first."""
        model.eval()
        labels, groups = self.sets[name]
        out = np.zeros((len(labels), 18), np.float32)
        for where, pictures in groups:
            for at in range(0, len(where), 48):
                image = pictures[at : at + 48].to(self.device).float() / 255
                out[where[at : at + 48]] = read(model, image, *LOOKS[look])[0].float().cpu().numpy()
        return out

    def figures(self, model, looks=("384", "512")):
        return {f"{name}, {look}": counted(self.sets[name][0], self.answers(model, name, look)) for name in self.sets for look in looks}

    def write(self, model, out):
        """All answers of all looks, for choosing among them."""
        for name in self.sets:
            said = {look: self.answers(model, name, look).round(3).tolist() for look in LOOKS}
            with open(f"{out}/answers-{name}.json", "w") as file:
                json.dump({"files": [label["file"] for label in self.sets[name][0]], **said}, file)


def opened(folder):
    from PIL import Image
    labels, groups = json.load(open(f"{folder}/labels.json")), {}
    for i, label in enumerate(labels):
        picture = np.asarray(Image.open(f"{folder}/{label['file']}").convert("RGB"))
        groups.setdefault(picture.shape, []).append((i, picture))
    return labels, [([i for i, _ in those], torch.from_numpy(np.stack([p for _, p in those])).permute(0, 3, 1, 2).contiguous()) for those in groups.values()]


def counted(labels, said):
    """Mean AUC, and the share of the flaws beyond what one clean bar in fifty reaches; the same for the two refusals."""
    soap = np.array([x.get("soap", True) and not x.get("poor", False) for x in labels])
    there = np.array([[float(id in x["present"]) for id in IDS] for x in labels])
    seen, caught = [], []
    clean = soap & (there.sum(1) == 0)
    for k in range(16):
        big = np.array([x.get("share", {}).get(IDS[k], 1) >= 0.003 for x in labels]) & (there[:, k] > 0)
        sure = soap & ((there[:, k] == 0) | big)
        seen.append(auc(said[sure, k], there[sure, k]))
        caught.append(float((said[soap & big, k] > np.quantile(said[clean, k], 0.98)).mean()) if clean.any() and (soap & big).any() else np.nan)
    nothing = np.array([not x.get("soap", True) for x in labels])
    poor = np.array([bool(x.get("poor", False)) for x in labels])
    return {"mean_auc": round(float(np.nanmean(seen)), 4), "caught": round(float(np.nanmean(caught)), 3),
            "no_soap": round(auc(said[~poor, 16], nothing[~poor].astype(float)), 4),
            "poor": round(auc(said[~nothing, 17], poor[~nothing].astype(float)), 4),
            "auc": [round(a, 2) for a in seen], "caught_by": [round(c, 2) for c in caught]}


def pack(folder, target):
    from PIL import Image
    os.makedirs(target, exist_ok=True)
    labels = json.load(open(f"{folder}/labels.json"))
    for label in labels:
        picture = Image.open(f"{folder}/{label['file']}").convert("RGB")
        scale = min(1, SIDE / max(picture.size))
        picture.resize((round(picture.width * scale), round(picture.height * scale)), Image.LANCZOS).save(f"{target}/{label['file']}", "WEBP", quality=84)
    json.dump(labels, open(f"{target}/labels.json", "w"))


if __name__ == "__main__":
    pack(*sys.argv[1:3])
