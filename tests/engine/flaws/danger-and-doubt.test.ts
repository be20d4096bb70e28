import { describe, expect, test } from 'vitest';
import { CAUSE_IDS } from '../../../src/engine/flaws/cause.ts';
import { consider } from '../../../src/engine/flaws/consider.ts';
import {
  areUntestedSpecks,
  freeLye,
  guarded,
  HANDS_OFF,
  hurt,
  mayHoldLye,
  testedFirst,
} from '../../../src/engine/flaws/danger.ts';
import { diagnose } from '../../../src/engine/flaws/diagnose.ts';
import type { Evidence } from '../../../src/engine/flaws/diagnosis.ts';
import type { FindingId } from '../../../src/engine/flaws/findings.ts';
import { chanceOfAny, chanceOfBoth, hedged, infer, weigh } from '../../../src/engine/flaws/inference.ts';
import { answered, tellingFindings, worthAsking } from '../../../src/engine/flaws/questions.ts';

const saw = (finding: FindingId, probability = 0.95): Evidence => ({
  finding,
  probability,
  via: 'answer',
  from: 'answer',
});

// First aid for caustic soda: eyes and skin are rinsed before anything is asked (NIOSH Pocket Guide).
describe('somebody hurts', () => {
  test.each([
    ['my soap burned my hand', 'skin'],
    ['raw soap in my eye', 'eye'],
    ['me entró en los ojos', 'eye'],
    ['lye splashed on my hand', 'skin'],
    ['la sosa me cayó en la mano', 'skin'],
    ['batter got on my fingers', 'skin'],
    ['water splashed on my hand', undefined],
    ['the batter is on my mind', undefined],
    ['an eye on the soap', undefined],
  ] as const)('%s: %s', (text, where) => {
    expect(hurt(consider(text).evidence, text)).toBe(where);
    expect(diagnose(text).firstAid).toBe(where);
  });
  test('a burn beside an eye is the eye’s', () => {
    expect(hurt([saw('burns-skin')], 'it burns, my eye too')).toBe('eye');
    expect(hurt([saw('burns-skin')], 'it burns')).toBe('skin');
    expect(hurt([saw('burns-skin', 0.5)], 'it burns')).toBeUndefined();
  });
  test('and nobody is told to use, cut or mend the soap', () => {
    for (const { thisBatch } of diagnose('the batter split and it burned my skin').causes) {
      expect(thisBatch.slice(0, 3)).toEqual(HANDS_OFF);
      expect(thisBatch).not.toContain('hot-process-now');
    }
    const [split] = diagnose('the batter split').causes;
    expect(split!.thisBatch).toContain('hot-process-now');
  });
});

describe('soap that may hold free lye', () => {
  const lyeIn = (evidence: readonly Evidence[], warned = false) =>
    mayHoldLye(evidence, infer(evidence), { warned });
  test.each(['zaps', 'zaps-in-spots', 'high-ph', 'burns-skin'] as const)('does where it %s', finding => {
    expect(lyeIn([saw(finding, 0.6)])).toBe(true);
    expect(lyeIn([saw('orange-spots'), saw(finding, 0.1)])).toBe(false);
  });
  test('does where such a cause is likely enough, and once warned until a test has told', () => {
    const evidence = [saw('white-specks', 0.7)];
    const free = freeLye(infer(evidence));
    expect(free).toBeGreaterThan(0.04);
    expect(lyeIn(evidence)).toBe(free >= 0.15);
    expect(lyeIn(evidence, true)).toBe(true);
    const tested = [...evidence, saw('zaps', 0.1)];
    expect(lyeIn(tested, true)).toBe(freeLye(infer(tested)) >= 0.15);
    expect(lyeIn([], true)).toBe(false);
  });
  test('white dots are tested first', () => {
    expect(areUntestedSpecks([saw('white-specks')])).toBe(true);
    expect(areUntestedSpecks([saw('white-specks', 0.5)])).toBe(false);
    for (const test of ['zaps-in-spots', 'zaps', 'high-ph'] as const)
      expect(areUntestedSpecks([saw('white-specks'), saw(test, 0.1)])).toBe(false);
    expect(testedFirst(['use-as-it-is', 'only-looks', 'keep-dry-and-airy'])).toEqual([
      'test-white-specks',
      'keep-dry-and-airy',
    ]);
  });
  test('of what may still be done only what has no hands on it is left', () => {
    const advice = ['use-as-it-is', 'discard-safely', 'stick-blend-back-together', 'cool-loaf-now'] as const;
    expect(guarded(advice, { split: false })).toEqual([...HANDS_OFF, 'discard-safely', 'cool-loaf-now']);
    expect(guarded(advice, { split: true })).toEqual([
      ...HANDS_OFF,
      'discard-safely',
      'stick-blend-back-together',
      'cool-loaf-now',
    ]);
  });
});

describe('what is in doubt', () => {
  test.each([
    ['hello', 'nothing-known'],
    ['no orange spots', 'nothing-known'],
    ['I forced gel', 'too-little'],
    ['it is soft', 'too-little'],
    ['orange spots on old bars and a rancid smell', undefined],
  ] as const)('%s: %s', (text, doubt) => {
    expect(diagnose(text).cantTell).toBe(doubt);
  });
  test('a zap alone is lye that is left, and the bar is not used', () => {
    const { doNotUse, causes } = diagnose('it zaps');
    expect([doNotUse, causes[0]?.id]).toEqual([true, 'lye-excess']);
  });
  test('causes are ranked, and those below two in a hundred are left out', () => {
    const { causes } = diagnose('white spots');
    const chances = causes.map(({ probability }) => probability);
    expect(chances).toEqual(chances.toSorted((a, b) => b - a));
    expect(Math.min(...chances)).toBeGreaterThanOrEqual(0.02);
    expect(causes.length).toBeLessThan(CAUSE_IDS.length);
  });
  test('what spoke for a cause and what against it stand apart, the strongest first', () => {
    const [first] = diagnose('orange spots on old bars, no rancid smell').causes;
    expect(first?.id).toBe('rancidity');
    const because = first!.because.map(({ weight }) => weight);
    expect(because).toEqual(because.toSorted((a, b) => b - a));
    expect(Math.min(...because)).toBeGreaterThanOrEqual(0.15);
    for (const { weight } of first!.against) expect(weight).toBeLessThanOrEqual(-0.15);
    expect(first!.against.map(({ finding }) => finding)).toContain('stale-smell');
  });
  test('two causes at work together are told as a pair', () => {
    const both = diagnose('white powder on top that wipes off and orange spots with a stale smell').together;
    expect(both?.causes.toSorted()).toEqual(['rancidity', 'soda-ash']);
    expect(both!.probability).toBeGreaterThan(0.9);
    expect(diagnose('orange spots').together).toBeUndefined();
  });
  test('a description of a thousand words is cut', () => {
    expect(diagnose('ash '.repeat(1300)).cut).toBe(true);
    expect(diagnose('ash').cut).toBeUndefined();
  });
  test('one word alone is believed less than the same in a sentence', () => {
    const of = (words: string) => consider(words).posterior.causes['soda-ash'];
    expect(of('ash')).toBeLessThan(of('ash, it is ash on all the bars'));
    const photo = consider('ash', { evidence: [{ ...saw('powdery-film'), via: 'photo' }] });
    expect(photo.posterior.causes['soda-ash']).toBeGreaterThan(of('ash'));
  });
  test('what the member takes back is out, with all that was read from the same words', () => {
    const finding = 'orange-spots';
    expect(consider('orange spots').evidence.map(one => one.finding)).toContain(finding);
    expect(consider('orange spots', { withdrawn: [finding] }).evidence).toEqual([]);
    expect(
      [...consider('orange spots', { withdrawn: [finding] }).wording].every(log => Math.abs(log) === 0),
    ).toBe(true);
    expect(consider('', { evidence: [saw(finding)], withdrawn: [finding] }).evidence).toEqual([]);
  });
});

describe('Bayes over one and two causes', () => {
  test('what may have been misunderstood is mixed with what was believed before', () => {
    const before = infer([]).causes;
    const told = infer([saw('orange-spots')]);
    const half = hedged(told, 0.5);
    for (const id of CAUSE_IDS) expect(half.causes[id]).toBeCloseTo((told.causes[id] + before[id]) / 2, 9);
    expect(hedged(told, 1).causes.rancidity).toBeCloseTo(told.causes.rancidity, 12);
    expect(half.hypotheses.reduce((sum, p) => sum + p, 0)).toBeCloseTo(1, 9);
  });
  test('any of two is one, or the other, less both', () => {
    const posterior = infer([saw('powdery-film'), saw('orange-spots')]);
    const both = chanceOfBoth(posterior, 'soda-ash', 'rancidity');
    expect(chanceOfBoth(posterior, 'rancidity', 'soda-ash')).toBe(both);
    const { 'soda-ash': ash, rancidity } = posterior.causes;
    expect(chanceOfAny(posterior, ['soda-ash', 'rancidity'])).toBeCloseTo(ash + rancidity - both, 9);
    expect(chanceOfAny(posterior, [])).toBe(0);
    // One story under two names is never told as two.
    expect(chanceOfBoth(posterior, 'white-pigment-crackle', 'glycerin-rivers')).toBe(0);
  });
  test('what speaks for a cause weighs more than nothing, a denial less', () => {
    expect(weigh(saw('orange-spots'), 'rancidity').weight).toBeGreaterThan(1);
    expect(weigh(saw('orange-spots', 0.05), 'rancidity').weight).toBeLessThan(-1);
    expect(weigh(saw('orange-spots', 0.5), 'rancidity').weight).toBeCloseTo(0, 9);
  });
  test('a wording that leans to a cause raises it', () => {
    const wording = new Float64Array(CAUSE_IDS.length);
    wording[CAUSE_IDS.indexOf('wire-drag')] = 2;
    const plain = infer([]);
    const led = infer([], { wording });
    expect(led.causes['wire-drag']).toBeGreaterThan(plain.causes['wire-drag'] * 3);
    expect(led.causes.rancidity).toBeLessThan(plain.causes.rancidity);
  });
  test('questions are ranked by what they tell, without what is settled', () => {
    const posterior = infer([saw('white-specks')]);
    const telling = tellingFindings(posterior, new Set<FindingId>(['waxy-bits']));
    expect(telling.map(({ finding }) => finding)).not.toContain('waxy-bits');
    const bits = telling.map(one => one.bits);
    expect(bits).toEqual(bits.toSorted((a, b) => b - a));
    expect(worthAsking(posterior, telling)).toBe(telling[0]!.finding);
    expect(answered('waxy-bits', true).probability + answered('waxy-bits', false).probability).toBe(1);
  });
});
