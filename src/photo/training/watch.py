"""
Reads a labelled set of pictures as the product does, on the way: to see whether learning still travels. The folder is
packed by `python3 watch.py FOLDER TARGET` from the one that `npm run score-photos` takes. Nothing is learned from it.
"""
import json
import os
import sys

import numpy as np
import torch
import torch.nn.functional as F

from examine import auc, read

SIDE = 512


class Watched:
    def __init__(self, folder, device):
        from PIL import Image
        self.device = device
        self.labels = json.load(open(f"{folder}/labels.json"))
        groups = {}
        for i, label in enumerate(self.labels):
            picture = np.asarray(Image.open(f"{folder}/{label['file']}").convert("RGB"))
            groups.setdefault(picture.shape, []).append((i, picture))
        self.groups = [([i for i, _ in those], torch.from_numpy(np.stack([p for _, p in those])).permute(0, 3, 1, 2).contiguous()) for those in groups.values()]

    @torch.no_grad()
    def answers(self, model):
        """Answers [n,18]: findings and "too poor" of the close look, "no soap" of the first."""
        model.eval()
        out = np.zeros((len(self.labels), 18), np.float32)
        for where, pictures in self.groups:
            for at in range(0, len(where), 48):
                image = pictures[at : at + 48].to(self.device).float() / 255
                out[where[at : at + 48]] = read(model, image)[0].float().cpu().numpy()
        return out

    def figures(self, model):
        said = self.answers(model)
        soap = np.array([x.get("soap", True) and not x.get("poor", False) for x in self.labels])
        there = np.array([[float(id in x["present"]) for id in IDS] for x in self.labels])
        seen, caught = [], []
        plain = soap & (there.sum(1) == 0)
        for k in range(16):
            big = np.array([x.get("share", {}).get(IDS[k], 1) >= 0.003 for x in self.labels]) & (there[:, k] > 0)
            sure = soap & ((there[:, k] == 0) | big)
            seen.append(auc(said[sure, k], there[sure, k]))
            # Of those there, how many beyond what one clean bar in fifty reaches.
            caught.append(float((said[soap & big, k] > np.quantile(said[plain, k], 0.98)).mean()))
        nothing = np.array([not x.get("soap", True) for x in self.labels])
        poor = np.array([bool(x.get("poor", False)) for x in self.labels])
        keep = ~poor
        return {"mean_auc": round(float(np.nanmean(seen)), 4), "caught": round(float(np.nanmean(caught)), 3),
                "no_soap": round(auc(said[keep, 16], nothing[keep].astype(float)), 4),
                "poor": round(auc(said[~nothing, 17], poor[~nothing].astype(float)), 4),
                "auc": dict(zip(IDS, [round(a, 3) for a in seen])), "caught_by": [round(c, 2) for c in caught]}


IDS = ["coloured-specks", "smears", "white-specks", "translucent-veins", "crackle-network", "powdery-film",
       "dark-centre-ring", "orange-spots", "pinholes", "crack", "brown-outside-in", "colour-bled", "drag-lines",
       "layer-gap", "wrinkled-top", "mould-dimples"]


def pack(folder, target):
    from PIL import Image
    os.makedirs(target, exist_ok=True)
    labels = json.load(open(f"{folder}/labels.json"))
    for label in labels:
        picture = Image.open(f"{folder}/{label['file']}").convert("RGB")
        scale = SIDE / max(picture.size)
        picture.resize((round(picture.width * scale), round(picture.height * scale)), Image.LANCZOS).save(f"{target}/{label['file']}", quality=95)
    json.dump(labels, open(f"{target}/labels.json", "w"))


if __name__ == "__main__":
    pack(*sys.argv[1:3])
