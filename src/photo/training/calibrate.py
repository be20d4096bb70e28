"""
Reads what the model said of pictures that it was not trained on (tests/photo/measure.ts) and writes how its answers are
to be read:
    python3 calibrate.py MEASURED.json MEASURED-TRICKY.json MEASURED-POOR.json MEASURED-ELSEWHERE.json ../model/calibration.json
Half of each kind of picture is used; the others are left for the test that counts.
"""
import json
import sys

import numpy as np

TAUGHT = ["coloured-specks", "smears", "white-specks", "translucent-veins", "crackle-network", "powdery-film",
          "dark-centre-ring", "orange-spots", "pinholes", "crack", "brown-outside-in", "colour-bled", "drag-lines",
          "layer-gap", "wrinkled-top", "mould-dimples"]
# Chances from which a finding is called possible, and seen at the least: likelier than not. Chosen.
POSSIBLY, SEEN = 0.15, 0.5
# "Seen" is said from so far beyond every clean bar that was used, in logits: the least of these steps that keeps false
# alarms, on clean bars that had no part in it, within these shares (of plain ones, of those with something that deceives).
MARGINS = np.arange(-1.5, 2.01, 0.125)
ALARMS = (0.04, 0.08)
FOLDS = 6
# How strongly a finding's own offset is held to the offset of all: there are few pictures of each.
HOLD = 0.05
# Four kinds of what deceives come by turns: each half has as many of each.
KINDS = 4
# Of bars at most so many may be taken for no soap, and of good pictures for poor ones.
LOST = 0.01


def fitted(z, y, known, rounds=6000):
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


def gathered(measured, tricky, poor, elsewhere):
    """All pictures as one list: answers, what is there, what is known, kind, deceives, used."""
    rows = []
    for i, row in enumerate(json.load(open(measured))):
        # A centre drawn lighter than its rim is nothing that was taught, and nothing that must not be answered either.
        rows.append({**row, "there": {row["drawn"]} - {"clean"}, "unknown": row["drawn"] == "light-centre-ring", "kind": "bar",
                     "deceives": False, "used": i % 2 == 0})
    for i, row in enumerate(json.load(open(tricky))):
        rows.append({**row, "there": set(), "unknown": False, "kind": "bar", "deceives": True, "used": i // KINDS % 2 == 0})
    for i, row in enumerate(json.load(open(poor))):
        rows.append({**row, "there": set(), "unknown": True, "kind": "poor", "deceives": False, "used": i // 2 % 2 == 0})
    for row in json.load(open(elsewhere)):
        rows.append({**row, "there": set(row["present"]), "small": set(row["present"]) - set(row["large"]), "unknown": False,
                     "deceives": row["tricky"] and not row["present"], "used": row["half"] == "fitted"})
    return [row for row in rows if row.get("answers")]


def thresholds(z, clean, floor, margin):
    """Logits from which each finding is seen: beyond every clean bar by the margin, and never under the floor."""
    return np.maximum(z[clean].max(0) + margin, floor)


def margin_that_holds(z, plain, deceiving, floor):
    """The least margin that keeps false alarms within bounds on clean bars left out of setting it, each in its turn."""
    fold = np.arange(len(z)) % FOLDS
    for margin in MARGINS:
        alarms = np.zeros(len(z), bool)
        for k in range(FOLDS):
            at = thresholds(z, (plain | deceiving) & (fold != k), floor, margin)
            alarms[fold == k] = (z[fold == k] >= at).any(1)
        if alarms[plain].mean() <= ALARMS[0] and alarms[deceiving].mean() <= ALARMS[1]:
            break
    return margin


def said_from(good, bad):
    """An offset: half a chance is where at most LOST of the good ones lie beyond, or half way where the two lie apart."""
    at = np.quantile(good, 1 - LOST) if bad.min() <= good.max() else (good.max() + bad.min()) / 2
    return {"slope": 1.0, "offset": round(-float(at) - 1e-3, 2), "from": 0.5}


def main(measured, tricky, poor, elsewhere, target):
    everything = gathered(measured, tricky, poor, elsewhere)
    rows = [row for row in everything if row["kind"] == "bar" and not row["unknown"]]
    z = np.array([row["answers"] for row in rows])
    y = np.array([[float(id in row["there"]) for id in TAUGHT] for row in rows])
    known = np.array([[float(id not in row.get("small", ())) for id in TAUGHT] for row in rows])
    use = np.array([row["used"] for row in rows])
    deceiving = np.array([row["deceives"] for row in rows])
    plain = (y.sum(1) == 0) & ~deceiving
    slope, common, own = fitted(z[use], y[use], known[use])
    offset = common + own
    logit = slope * z + offset
    chance = 1 / (1 + np.exp(-logit))
    floor = np.log(SEEN / (1 - SEEN))
    # In a fixed mixed order, so that every fold has some of each kind.
    order = np.random.default_rng(1).permutation(np.flatnonzero(use))
    margin = margin_that_holds(logit[order], plain[order], deceiving[order], floor)
    from_ = thresholds(logit, use & (plain | deceiving), floor, margin)
    findings = {}
    for k, id in enumerate(TAUGHT):
        seen = min(1.0, float(np.ceil(1000 / (1 + np.exp(-from_[k]))) / 1000))
        there, not_there = (y[:, k] == 1) & (known[:, k] == 1), y[:, k] == 0
        called = np.where(chance[:, k] >= seen, 2, np.where(chance[:, k] >= POSSIBLY, 1, 0))
        # Few pictures: the least that recall, and the most that false answers may be, by their 95 % intervals.
        ratio = lambda answer: (wilson((called[there & use] == answer).sum(), (there & use).sum())[0]
                                / max(1e-3, wilson((called[not_there & use] == answer).sum(), (not_there & use).sum())[1]))
        ratios = {"possibly": round(float(max(1, ratio(1))), 2), "seen": round(float(max(1, ratio(2))), 2)}
        if ratio(2) <= 1:
            # Nothing that is worth anything by its intervals: possible at most.
            seen = 1.0
            ratios["seen"] = 1.0
        findings[id] = {"slope": round(float(slope), 4), "offset": round(float(offset[k]), 4), "possibly": POSSIBLY, "seen": seen, "ratios": ratios}
        for name, part in (("fitted", use), ("left", ~use)):
            hits, of = int((chance[part & there, k] >= seen).sum()), int((part & there).sum())
            false = int((chance[part & not_there, k] >= seen).sum())
            print(f"{id:18s} {name:7s} from {seen:.3f} seen {hits}/{of} {wilson(hits, of)} or possibly {int((chance[part & there, k] >= POSSIBLY).sum())} "
                  f"falsely seen {false}/{int((part & not_there).sum())}")
    at = np.array([findings[id]["seen"] for id in TAUGHT])
    alarm = ((chance >= at) & (at < 1)).any(1)
    print("margin", margin, "slope", round(float(slope), 3), "offsets", np.round(offset, 2).tolist())
    for name, which in (("plain", plain), ("deceiving", deceiving)):
        for half, part in (("fitted", use), ("left", ~use)):
            print(f"{name}, {half}: a false alarm on {int(alarm[which & part].sum())} of {int((which & part).sum())}")
    other = {}
    for name, key, bad_kind, against in (("noSoap", "noSoap", "nothing", ("bar",)), ("poor", "poor", "poor", ("bar",))):
        value = np.array([row[key] for row in everything])
        used = np.array([row["used"] for row in everything])
        bad = np.array([row["kind"] == bad_kind for row in everything])
        good = np.array([row["kind"] in against for row in everything])
        other[name] = said_from(value[good & used], value[bad & used])
        said = value + other[name]["offset"] >= 0
        for half, part in (("fitted", used), ("left", ~used)):
            print(f"{name}, {half}: said of {int(said[bad & part].sum())} of {int((bad & part).sum())}, falsely of {int(said[good & part].sum())} of {int((good & part).sum())}")
    json.dump({**other, "findings": findings}, open(target, "w"), indent=2)


if __name__ == "__main__":
    main(*sys.argv[1:6])
