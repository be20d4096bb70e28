"""
Reads what the model said of pictures that it was not trained on (tests/photo/measure.ts) and writes how its answers
are to be read:  python3 calibrate.py MEASURED.json MEASURED-TRICKY.json ../model/calibration.json
The second file holds clean bars with something that deceives. Every second picture is used; the others are left for the
test that prints the reliability table.
"""
import json
import sys

import numpy as np

TAUGHT = ["coloured-specks", "smears", "white-specks", "translucent-veins", "crackle-network", "powdery-film",
          "dark-centre-ring", "orange-spots", "pinholes", "crack", "brown-outside-in", "colour-bled", "drag-lines",
          "layer-gap", "wrinkled-top", "mould-dimples"]
# Chances from which a finding is called possible and seen. Chosen: seen is likelier than not, and likelier than on any
# clean bar that was used, in steps of 0.05. Where that leaves nothing, or nothing that is worth anything by its intervals,
# it is possible at most.
POSSIBLY, SEEN, STEP, MOST = 0.15, 0.5, 0.05, 0.95
# How strongly a finding's own offset is held to the offset of all: there are few pictures of each.
HOLD = 0.15
# Four kinds of what deceives come by turns: each half has as many of each.
KINDS = 4
# Half a logit above the highest of all pictures with soap.
NO_SOAP_MARGIN = 0.5


def fitted(z, y, known, rounds=4000):
    """A slope for all findings and an offset for each, by gradient descent on log loss; parts not `known` are left out."""
    slope, common, own = 1.0, 0.0, np.zeros(z.shape[1])
    for _ in range(rounds):
        p = 1 / (1 + np.exp(-(slope * z + common + own)))
        error = (p - y) * known
        count = known.sum()
        slope -= 0.05 * (error * z).sum() / count
        common -= 2.0 * error.sum() / count
        own -= 2.0 * (error.sum(0) / count + HOLD * own / len(own) / 16)
    return max(slope, 0.05), common, own


def wilson(hits, of):
    if of == 0:
        return [0.0, 1.0]
    p, z = hits / of, 1.96
    middle = (p + z * z / (2 * of)) / (1 + z * z / of)
    half = z * np.sqrt(p * (1 - p) / of + z * z / (4 * of * of)) / (1 + z * z / of)
    return [round(float(middle - half), 3), round(float(middle + half), 3)]


def main(source, deceiving, target):
    tricky = [row for row in json.load(open(deceiving)) if row.get("answers")]
    rows = [row for row in json.load(open(source)) if row.get("answers")]
    plain = len(rows)
    rows += tricky
    z = np.array([row["answers"] for row in rows])
    y = np.array([[1.0 if row["drawn"] == id else 0.0 for id in TAUGHT] for row in rows])
    # A centre drawn lighter than its rim is nothing that was taught, and nothing that must not be answered either.
    known = np.array([[0.0 if row["drawn"] == "light-centre-ring" else 1.0] * len(TAUGHT) for row in rows])
    drawn = y.sum(0) > 0
    known[:, ~drawn] = 0
    use = np.concatenate([np.arange(plain), np.arange(len(tricky)) // KINDS]) % 2 == 0
    deceives = np.arange(len(rows)) >= plain
    clean = np.array([row["drawn"] == "clean" for row in rows])
    slope, common, own = fitted(z[use], y[use], known[use])
    findings = {}
    for k, id in enumerate(TAUGHT):
        chance = 1 / (1 + np.exp(-(slope * z[:, k] + common + own[k])))
        there, not_there = y[use, k] == 1, (y[use, k] == 0) & (known[use, 0 if not drawn[k] else k] == 1)
        highest = chance[use & (clean | deceives)].max()
        seen = max(SEEN, float(np.ceil((highest + 1e-9) / STEP) * STEP))
        seen = 1.0 if seen > MOST else round(seen, 2)
        # Few pictures: the least that recall, and the most that false answers may be, by their 95 % intervals.
        called = lambda: np.where(chance[use] >= seen, 2, np.where(chance[use] >= POSSIBLY, 1, 0))
        ratio = lambda answer: (wilson((called()[there] == answer).sum(), there.sum())[0]
                                / max(1e-3, wilson((called()[not_there] == answer).sum(), not_there.sum())[1]))
        if ratio(2) <= 1:
            seen = 1.0
        if drawn[k]:
            findings[id] = {"slope": round(slope, 4), "offset": round(float(common + own[k]), 4), "possibly": POSSIBLY, "seen": seen,
                            "ratios": {"possibly": round(float(max(1, ratio(1))), 2), "seen": round(float(max(1, ratio(2))), 2)}}
        else:
            # Never drawn by a hand the model did not know: possible at most, and weighs nothing.
            findings[id] = {"slope": round(slope, 4), "offset": round(float(common), 4), "possibly": SEEN, "seen": 1.0,
                            "ratios": {"possibly": 1.0, "seen": 1.0}}
        for name, part in (("fitted", use), ("left", ~use)):
            t = y[part, k] == 1
            c = chance[part]
            hits, false = int((c[t] >= seen).sum()), int((c[~t] >= seen).sum())
            print(f"{id:18s} {name:7s} seen {hits}/{int(t.sum())} {wilson(hits, int(t.sum()))} possibly or seen {int((c[t] >= POSSIBLY).sum())} "
                  f"false {false}/{int((~t).sum())}, possibly or seen {int((c[~t] >= POSSIBLY).sum())}")
    chances = 1 / (1 + np.exp(-(slope * z + common + own)))
    at = np.array([findings[id]["seen"] for id in TAUGHT])
    alarm = (chances[:, drawn] >= at[drawn]).any(1)
    for name, which in (("clean", clean), ("deceiving", deceives)):
        for half, part in (("fitted", use), ("left", ~use)):
            print(f"{name}, {half}: a false alarm on {int(alarm[which & part].sum())} of {int((which & part).sum())}")
    no_soap = round(-(max(row["noSoap"] for row in rows) + NO_SOAP_MARGIN), 2)
    print("slope", slope, "offsets", np.round(common + own, 2).tolist())
    json.dump({"noSoap": {"slope": 1.0, "offset": no_soap, "from": 0.5}, "findings": findings}, open(target, "w"), indent=2)


if __name__ == "__main__":
    main(*sys.argv[1:4])
