"""
Reads what the model said of pictures that it was not trained on (tests/photo/measure.ts) and writes how its answers are
to be read:
    python3 calibrate.py ../model/calibration.json left-out.json MEASURED.json MEASURED-TRICKY.json MEASURED-POOR.json MEASURED-ELSEWHERE.json ...
The calibration is set on all of them. What it is worth is counted with LEFT-OUT: for each source (the tests' own
renderer, then each hand) the calibration that the other sources alone give.
"""
import json
import sys

import numpy as np

TAUGHT = ["coloured-specks", "smears", "white-specks", "translucent-veins", "crackle-network", "powdery-film",
          "dark-centre-ring", "orange-spots", "pinholes", "crack", "brown-outside-in", "colour-bled", "drag-lines",
          "layer-gap", "wrinkled-top", "mould-dimples"]
# "Seen" is said of a finding only where that is at least so much oftener right than wrong, by intervals. Chosen.
WORTH = 4
# Chance from which a finding is called possible, chosen; seen is said from 0.5 at the least, a logit of 0.
POSSIBLY = 0.15
# So many of the clean bars may be called flawed at most (plain ones, those with something that deceives) on the mean of
# sources left out.
ALLOWED = np.array([0.05, 0.1])
# "Seen" is said from those thresholds that find most on the mean while on the sources that set them it comes to so many
# times that, where every logit may be off by about SPREAD, as it is between pictures of different hands. Of these parts
# the largest is taken with which the sources left out keep to ALLOWED.
PARTS = (2.0, 1.75, 1.5, 1.25, 1.0, 0.8, 0.6, 0.45, 0.3)
SPREAD = 0.5
STEPS = np.append(np.arange(0, 6.01, 0.25), np.inf)
PRICES = np.geomspace(0.5, 20, 12)
# How strongly a finding's own offset is held to the offset of all: there are few pictures of each.
HOLD = 0.05
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


def gathered(measured, tricky, poor, *elsewhere):
    """All pictures as one list: answers, what is there, what is known, kind, deceives, source."""
    rows = []
    for row in json.load(open(measured)):
        # A centre drawn lighter than its rim is nothing that was taught, and nothing that must not be answered either.
        rows.append({**row, "there": {row["drawn"]} - {"clean"}, "unknown": row["drawn"] == "light-centre-ring", "kind": "bar",
                     "deceives": False})
    for row in json.load(open(tricky)):
        rows.append({**row, "there": set(), "unknown": False, "kind": "bar", "deceives": True})
    for row in json.load(open(poor)):
        rows.append({**row, "there": set(), "unknown": True, "kind": "poor", "deceives": False})
    for hand, row in ((i, row) for i, file in enumerate(elsewhere) for row in json.load(open(file))):
        rows.append({**row, "source": hand + 1, "there": set(row["present"]), "small": set(row["present"]) - set(row["large"]), "unknown": False,
                     "deceives": row["tricky"] and not row["present"]})
    return [{"source": 0, **row} for row in rows if row.get("answers")]


def evenly(which, source):
    """Weights with which each source that has any of `which` counts alike; they sum to 1."""
    weight = np.zeros(len(which))
    for one in np.unique(source[which]):
        part = which & (source == one)
        weight[part] = 1 / part.sum()
    return weight / max(weight.sum(), 1e-9)


def thresholds(z, there, plain, deceiving, source, alarms):
    """
    Logits (`z`, calibrated) from which each finding is seen. At each of a row of prices for a false alarm the thresholds
    are improved one by one until none can be; of the prices that keep within `alarms` the one that finds most is taken.
    """
    beyond = 1 / (1 + np.exp(np.clip((STEPS - z[:, :, None]) / SPREAD, -50, 50)))
    found = np.stack([evenly(there[:, k], source) @ beyond[:, k] for k in range(z.shape[1])])
    clean = [evenly(kind, source) for kind in (plain, deceiving)]
    best, kept = -1.0, np.full(z.shape[1], len(STEPS) - 1)
    every = np.arange(z.shape[1])
    for price in PRICES:
        at = np.full(z.shape[1], len(STEPS) - 1)
        for _ in range(8):
            before = at.copy()
            for k in every:
                silent = np.prod(1 - beyond[:, every, at][:, every != k], 1)
                alarm = 1 - silent[:, None] * (1 - beyond[:, k])
                at[k] = np.argmax(found[k] - price * sum(weight @ alarm / most for weight, most in zip(clean, alarms)) / 2)
            if (at == before).all():
                break
        alarm = 1 - np.prod(1 - beyond[:, every, at], 1)
        if all(weight @ alarm <= most for weight, most in zip(clean, alarms)) and found[every, at].mean() > best:
            best, kept = found[every, at].mean(), at
    return STEPS[kept]


def said_from(good, bad):
    """
    An offset: half a chance is where at most LOST of the good ones lie beyond, or half way to nine in ten of the bad ones where
    those lie apart. Of what is no soap there may be none in which a bar was outlined.
    """
    least = np.quantile(good, 1 - LOST)
    at = (least + max(least, np.quantile(bad, 0.1))) / 2 if len(bad) else least
    return {"slope": 1.0, "offset": round(-float(at) - 1e-3, 2), "from": 0.5}


def worth(called, there, absent, answer):
    """How much oftener an answer is given where the finding is than where it is not, at the least: few pictures, so by their 95 % intervals."""
    least = wilson((called[there] == answer).sum(), there.sum())[0]
    return least / max(1e-3, wilson((called[absent] == answer).sum(), absent.sum())[1])


def findings_of(rows, alarms):
    z = np.array([row["answers"] for row in rows])
    y = np.array([[float(id in row["there"]) for id in TAUGHT] for row in rows])
    known = np.array([[float(id not in row.get("small", ())) for id in TAUGHT] for row in rows])
    source = np.array([row["source"] for row in rows])
    deceiving = np.array([row["deceives"] for row in rows])
    plain = (y.sum(1) == 0) & ~deceiving
    large = (y == 1) & (known == 1)
    slope, common, own = fitted(z, y, known)
    offset = common + own
    logit = slope * z + offset
    chance = 1 / (1 + np.exp(-logit))
    sayable = np.ones(len(TAUGHT), bool)
    while True:
        # Worth little by its intervals: possible at most, and its share of the false alarms is the others'.
        at = np.full(len(TAUGHT), np.inf)
        at[sayable] = thresholds(logit[:, sayable], large[:, sayable], plain, deceiving, source, alarms)
        seen = np.minimum(1, np.ceil(1000 / (1 + np.exp(-at))) / 1000)
        called = np.where((chance >= seen) & (seen < 1), 2, np.where(chance >= POSSIBLY, 1, 0))
        ratios = [[worth(called[:, k], large[:, k], y[:, k] == 0, answer) for answer in (1, 2)] for k in range(len(TAUGHT))]
        dropped = sayable & np.array([surely < WORTH for _, surely in ratios])
        if not dropped.any():
            break
        # The least worth first: what it leaves may do for another.
        sayable[min(np.flatnonzero(dropped), key=lambda k: ratios[k][1])] = False
    findings = {}
    for k, id in enumerate(TAUGHT):
        possibly, surely = ratios[k]
        findings[id] = {"slope": round(float(slope), 4), "offset": round(float(offset[k]), 4), "possibly": POSSIBLY, "seen": float(seen[k]),
                        "ratios": {"possibly": round(float(max(1, possibly)), 2), "seen": round(float(max(1, surely)), 2)}}
    return findings


def calibration(rows, alarms):
    bars = [row for row in rows if row["kind"] == "bar"]
    of = lambda key, some: np.array([row[key] for row in some])
    others = {name: said_from(of(name, bars), of(name, [row for row in rows if row["kind"] == kind]))
              for name, kind in (("noSoap", "nothing"), ("poor", "poor"))}
    return {**others, "findings": findings_of([row for row in bars if not row["unknown"]], alarms)}


def called_flawed(rows, findings):
    """Shares of the clean bars of which anything is called seen: plain ones, those with something that deceives."""
    clean = [row for row in rows if row["kind"] == "bar" and not row["unknown"] and not row["there"]]
    shares = []
    for deceives in (False, True):
        z = np.array([row["answers"] for row in clean if row["deceives"] == deceives])
        slope, offset, seen = (np.array([findings[id][key] for id in TAUGHT]) for key in ("slope", "offset", "seen"))
        called = (1 / (1 + np.exp(-(slope * z + offset))) >= seen) & (seen < 1)
        shares.append(called.any(1).mean())
    return shares


def main(target, left_out, *files):
    rows = gathered(*files)
    sources = sorted({row["source"] for row in rows})
    for part in PARTS:
        alarms = part * ALLOWED
        without = [calibration([row for row in rows if row["source"] != one], alarms) for one in sources]
        shares = np.mean([called_flawed([row for row in rows if row["source"] == one], kept["findings"]) for one, kept in zip(sources, without)], 0)
        print("part", part, "of sources left out called flawed:", shares.round(3), flush=True)
        if (shares <= ALLOWED).all():
            break
    json.dump(calibration(rows, alarms), open(target, "w"), indent=2)
    json.dump(without, open(left_out, "w"), indent=2)


if __name__ == "__main__":
    main(*sys.argv[1:])
