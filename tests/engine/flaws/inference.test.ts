import { describe, expect, test } from 'vitest';
import { CAUSE_IDS, type CauseId } from '../../../src/engine/flaws/cause.ts';
import { prior } from '../../../src/engine/flaws/causes.ts';
import type { Evidence } from '../../../src/engine/flaws/diagnosis.ts';
import { FINDING_IDS, FINDINGS, type FindingId } from '../../../src/engine/flaws/findings.ts';
import { infer, informationGain, weigh } from '../../../src/engine/flaws/inference.ts';
import { LEVEL, type Level } from '../../../src/engine/flaws/levels.ts';
import { LIKELIHOODS } from '../../../src/engine/flaws/likelihoods.ts';

const saw = (finding: FindingId, probability = 0.95): Evidence => ({
  finding,
  probability,
  via: 'answer',
  from: 'answer',
});

/** The chance a cause alone gives a finding, straight from the table. */
function strength(cause: CauseId, finding: FindingId): number {
  const levels = Object.entries(LIKELIHOODS[cause]) as [Level, readonly FindingId[]][];
  return LEVEL[levels.find(([, findings]) => findings.includes(finding))?.[0] as Level] ?? 0;
}

/** Told of white and of other bars: one story, so never both at once. */
const STORY: ReadonlySet<CauseId> = new Set(['white-pigment-crackle', 'glycerin-rivers']);

/** Bayes' rule written out a second time, by enumeration of none, one and two causes. */
function byHand(evidence: readonly Evidence[], unknown: number): Record<CauseId, number> {
  const sums = Object.fromEntries(CAUSE_IDS.map(id => [id, 0])) as Record<CauseId, number>;
  let total = 0;
  const sets: CauseId[][] = [[], ...CAUSE_IDS.map(id => [id])];
  CAUSE_IDS.forEach((a, i) => {
    for (const b of CAUSE_IDS.slice(i + 1)) if (!(STORY.has(a) && STORY.has(b))) sets.push([a, b]);
  });
  for (const set of sets) {
    let weight = set.length === 0 ? unknown : 1;
    for (const id of set) weight *= prior(id) / (1 - prior(id));
    for (const { finding, probability } of evidence) {
      let absent = 1 - LEVEL[FINDINGS[finding].leak];
      for (const id of set) absent *= 1 - strength(id, finding);
      weight *= probability * (1 - absent) + (1 - probability) * absent;
    }
    total += weight;
    for (const id of set) sums[id] += weight;
  }
  for (const id of CAUSE_IDS) sums[id] /= total;
  return sums;
}

describe('inference over one and two causes', () => {
  test('agrees with an enumeration of every single cause and pair', () => {
    const evidence = [saw('powdery-film'), saw('coloured-specks'), saw('wipes-off', 0.8), saw('zaps', 0.1)];
    const expected = byHand(evidence, 0.1);
    const { causes } = infer(evidence);
    for (const id of CAUSE_IDS) expect(causes[id]).toBeCloseTo(expected[id], 10);
  });

  test('finds two causes at once: undispersed pigment under soda ash', () => {
    const { causes } = infer([
      saw('powdery-film'),
      saw('wipes-off'),
      saw('coloured-specks'),
      saw('clumps-of-pigment'),
      saw('dry-pigment'),
    ]);
    expect(causes['soda-ash']).toBeGreaterThan(0.6);
    expect(causes['undispersed-pigment']).toBeGreaterThan(0.6);
  });

  test('the hypotheses are a distribution', () => {
    const { hypotheses } = infer([saw('orange-spots'), saw('stale-smell')]);
    const { length: n } = CAUSE_IDS;
    // None, each, each pair but one.
    expect(hypotheses.length).toBe(1 + n + (n * (n - 1)) / 2 - 1);
    expect(hypotheses.reduce((sum, p) => sum + p, 0)).toBeCloseTo(1, 10);
  });

  test('a witness who is at a loss changes nothing', () => {
    const before = infer([saw('orange-spots')]);
    const after = infer([saw('orange-spots'), saw('zaps', 0.5)]);
    for (const id of CAUSE_IDS) expect(after.causes[id]).toBeCloseTo(before.causes[id], 10);
  });

  test('the order of the evidence does not matter', () => {
    const evidence = [saw('orange-spots'), saw('greasy'), saw('after-months'), saw('zaps', 0.1)];
    const forth = infer(evidence);
    const back = infer([...evidence].reverse());
    for (const id of CAUSE_IDS) expect(back.causes[id]).toBeCloseTo(forth.causes[id], 10);
  });

  test('"no zap" speaks weakly against lye pockets, strongly against lye all through', () => {
    const denied = saw('zaps', FINDINGS.zaps.denied);
    const pockets = weigh(denied, 'lye-pockets').weight;
    const excess = weigh(denied, 'lye-excess').weight;
    expect(pockets).toBeLessThan(0);
    expect(pockets).toBeGreaterThan(-0.6);
    expect(excess).toBeLessThan(-0.6);
  });

  test('what it turned out to be raises a prior, and no crowd of reports raises it without bound', () => {
    const plain = infer([]).causes['wire-drag'];
    const some = infer([], { turnedOut: { 'wire-drag': 10 } }).causes['wire-drag'];
    const many = infer([], { turnedOut: { 'wire-drag': 20 } }).causes['wire-drag'];
    const flood = infer([], { turnedOut: { 'wire-drag': 1e9 } }).causes['wire-drag'];
    expect(some).toBeGreaterThan(plain * 1.5);
    expect(flood).toBeCloseTo(many, 10);
    expect(flood).toBeLessThan(0.5);
  });

  test('what a question is expected to tell is entropy before less entropy after, on average', () => {
    const posterior = infer([saw('white-specks')]);
    const entropy = (all: Float64Array) => all.reduce((sum, p) => sum - (p > 0 ? p * Math.log2(p) : 0), 0);
    const certain = (there: boolean) => infer([saw('white-specks'), saw('waxy-bits', there ? 1 : 0)]);
    const [yes, no] = [certain(true).hypotheses, certain(false).hypotheses];
    // The chance of a yes is what mixes both answers back to what was believed before.
    const at = yes.findIndex((p, h) => Math.abs(p - no[h]!) > 0.05);
    const chance = (posterior.hypotheses[at]! - no[at]!) / (yes[at]! - no[at]!);
    const left = chance * entropy(yes) + (1 - chance) * entropy(no);
    expect(informationGain(posterior, 'waxy-bits')).toBeCloseTo(entropy(posterior.hypotheses) - left, 6);
  });

  test('no finding is expected to tell less than nothing', () => {
    const posterior = infer([saw('white-specks')]);
    for (const id of FINDING_IDS) expect(informationGain(posterior, id)).toBeGreaterThan(-1e-9);
  });
});

describe('the table of causes and findings', () => {
  test('names each finding at most once a cause', () => {
    for (const id of CAUSE_IDS) {
      const all = Object.values(LIKELIHOODS[id]).flat();
      expect(new Set(all).size).toBe(all.length);
    }
  });

  test('gives every cause a finding that nearly always comes with it, and every finding a cause', () => {
    for (const id of CAUSE_IDS) expect(LIKELIHOODS[id]['nearly always']?.length ?? 0).toBeGreaterThan(0);
    const used = new Set(CAUSE_IDS.flatMap(id => Object.values(LIKELIHOODS[id]).flat()));
    expect(FINDING_IDS.filter(id => !used.has(id))).toEqual([]);
  });
});
