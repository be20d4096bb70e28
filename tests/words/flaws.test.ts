import { describe, expect, test } from 'vitest';
import { CAUSE_IDS } from '../../src/engine/flaws/cause.ts';
import { CAUSES } from '../../src/engine/flaws/causes.ts';
import { FINDING_IDS, FINDINGS } from '../../src/engine/flaws/findings.ts';
import { REMEDY_IDS } from '../../src/engine/flaws/remedies.ts';
import { flaws as en } from '../../src/words/en/flaws/flaws.ts';
import { flaws as es } from '../../src/words/es/flaws/flaws.ts';

describe.each([
  ['English', en],
  ['Spanish', es],
] as const)('flaws in %s', (_, words) => {
  test('every finding that may be asked about has a question, and no other has', () => {
    const askable = FINDING_IDS.filter(id => FINDINGS[id].ask);
    expect(Object.keys(words.questions).sort()).toEqual([...askable].sort());
    for (const id of askable) expect(words.questions[id]).toMatch(/\?$/);
  });

  test('no question, remedy or caution has anybody taste soap or put vinegar on skin', () => {
    const all = [...Object.values(words.questions), ...Object.values(words.remedies)].join(' ');
    expect(all).not.toMatch(/\b(tongue|taste|lick|lengua|boca|vinegar|vinagre)\b/i);
    expect(words.firstAid.skin).toMatch(/No vinegar|Nada de vinagre/);
    expect(words.firstAid.eye).toMatch(/30/);
  });

  test('the trade words are shown', () => {
    expect(words.causes.rancidity.name).toMatch(/DOS|naranjas/);
    expect(words.causes['soda-ash'].name).toMatch(/soda ash/);
    expect(words.causes['humidity-dew'].name).toMatch(/sweating|suda/);
  });
});

test('every remedy belongs to a cause, and every cause has one for now and one for next time', () => {
  // White specks are tested first, whatever the cause.
  const used = new Set<string>(['test-white-specks']);
  for (const id of CAUSE_IDS)
    for (const one of [...CAUSES[id].thisBatch, ...CAUSES[id].nextBatch]) used.add(one);
  expect(REMEDY_IDS.filter(id => !used.has(id))).toEqual([]);
  for (const id of CAUSE_IDS) {
    expect(CAUSES[id].thisBatch.length).toBeGreaterThan(0);
    expect(CAUSES[id].nextBatch.length).toBeGreaterThan(0);
  }
});

test('soap that may hold free lye is never called fit for use', () => {
  for (const id of CAUSE_IDS.filter(cause => CAUSES[cause].doNotUse)) {
    expect(CAUSES[id].thisBatch[0]).toBe('do-not-use');
    expect(CAUSES[id].thisBatch).not.toContain('use-as-it-is');
    expect(CAUSES[id].thisBatch).toContain('keep-gloves-on');
  }
});
