import { describe, expect, test } from 'vitest';
import {
  evidenceForDose,
  evidenceLines,
  identityName,
  nobodyReported,
  processBlock,
  reportRow,
  weigh,
  weighedBlock,
} from '../../src/presenting/evidence.ts';
import type { ReportView } from '../../src/records/evidence/index.ts';
import { wordsIn } from '../../src/words/index.ts';

/* What a group saw of a colour, as counts and as a share of bars that held: our own rules. */

const say = wordsIn('en');
const none = { held: 0, shifted: 0, faded: 0, bled: 0 };
const report = (more: Partial<ReportView> = {}): ReportView =>
  ({
    id: 'r',
    at: new Date(0),
    result: 'held',
    process: 'ambient',
    photo: false,
    mine: false,
    ...more,
  }) as ReportView;
const reports = (held: number, bled: number): readonly ReportView[] => [
  ...Array.from({ length: held }, () => report()),
  ...Array.from({ length: bled }, () => report({ result: 'bled' })),
];
const seen = (held: number, bled: number, elsewhere = none) =>
  weigh('ultramarine-blue', { here: reports(held, bled), elsewhere });

describe('what was seen', () => {
  test('is nothing where nobody reported, here or elsewhere', () => {
    expect(nobodyReported({ here: [], elsewhere: none })).toBe(true);
    expect(nobodyReported({ here: [report()], elsewhere: none })).toBe(false);
    expect(nobodyReported({ here: [], elsewhere: { ...none, bled: 1 } })).toBe(false);
    expect(evidenceLines('Blue', seen(0, 0), say)).toEqual([]);
    expect(evidenceForDose('Blue', seen(0, 0), say)).toEqual({});
  });

  test('is told of this group and of others, each by how many of how many held', () => {
    const lines = evidenceLines('Blue', seen(3, 1, { held: 5, shifted: 1, faded: 1, bled: 0 }), say);
    expect(lines).toHaveLength(2);
    expect(lines[0]).toMatch(/3.*4/u);
    expect(lines[1]).toMatch(/5.*7/u);
  });

  test('weighs reports of other groups as its own', () => {
    const [here, there] = [seen(0, 6), seen(0, 0, { ...none, bled: 6 })];
    expect(there.posterior.mean).toBeCloseTo(here.posterior.mean, 10);
    expect(seen(6, 0).posterior.mean).toBeGreaterThan(here.posterior.mean);
  });

  test('is an aside beside a dose where most bars hold, a caution where they mostly fail', () => {
    expect(evidenceForDose('Blue', seen(9, 1), say)).toMatchObject({ aside: expect.any(String) });
    expect(evidenceForDose('Blue', seen(0, 20), say)).toMatchObject({ caution: { id: 'seen-here' } });
  });

  test('stands as a share with its interval and how many it rests on', () => {
    const weighed = seen(8, 2);
    const block = weighedBlock(weighed, say);
    const { mean, low, high } = weighed.posterior;
    const [measure] = block.kind === 'measures' ? block.measures : [];
    expect(measure?.value).toContain(String(Math.round(100 * mean)));
    for (const end of [low, high]) expect(measure?.note).toContain(String(Math.round(100 * end)));
    expect(low).toBeLessThan(mean);
    expect(mean).toBeLessThan(high);
  });
});

test('ways of making it stand apart only where there are two', () => {
  expect(processBlock(reports(3, 0), say)).toEqual([]);
  const [block] = processBlock([...reports(3, 1), report({ process: 'gel' })], say);
  expect(block?.kind === 'rows' && block.rows).toHaveLength(2);
});

test('a report is one row, of what was told in it', () => {
  expect(reportRow(report(), say)).toBe(`${say.evidence.results.held}; ${say.evidence.processes.ambient}`);
  const row = reportRow(report({ weeks: 6, note: 'near a window', mine: true }), say, 'Blue');
  expect(row.startsWith('Blue: ')).toBe(true);
  expect(row).toContain('6');
  expect(row).toContain('near a window');
  expect(row).toContain(say.evidence.mine);
});

test('a colour is called as the catalogue calls it', () => {
  expect(identityName('ultramarine-blue', say).toLowerCase()).toBe('ultramarine blue');
});
