import { describe, expect, test } from 'vitest';
import { openLately } from '../../../src/conversation/lately/lately.ts';
import { understoodIn } from '../../../src/conversation/lately/understood-in.ts';
import type { Ran } from '../../../src/engine/questions/leaning/before.ts';

const START = Date.UTC(2026, 10, 29, 12);
const MINUTE = 60_000;
const place = (id: string, { who = 'Ana', at = 0, channel = 'pots' } = {}) => ({
  id,
  at: START + at * MINUTE,
  group: 'club',
  channel,
  asker: { id: who, name: who, manages: false, roles: [] },
});
const dose = (colourant: string): Ran => ({
  kind: 'command',
  job: 'dose',
  command: 'dose',
  given: { colourant },
});

describe('what was asked last', () => {
  test('is remembered for half an hour and not a second longer', () => {
    const lately = openLately();
    lately.keep(place('1'), dose('mica'));
    expect(lately.before(place('2', { at: 30 }))?.last).toEqual(dose('mica'));
    expect(lately.before(place('2', { at: 30 + 1 / 60 }))).toBeUndefined();
    expect(lately.of('Ana', START + 31 * MINUTE)).toEqual([]);
  });

  test('is not what an earlier question knew', () => {
    const lately = openLately();
    lately.keep(place('2', { at: 5 }), dose('mica'));
    expect(lately.before(place('1', { at: 4 }))).toBeUndefined();
    // An answer that took long does not take the place of a later one.
    lately.keep(place('1', { at: 4 }), dose('charcoal'));
    expect(lately.before(place('3', { at: 6 }))?.last).toEqual(dose('mica'));
  });

  test('delivered twice leans on the same both times', () => {
    const lately = openLately();
    lately.keep(place('1'), dose('mica'));
    lately.keep(place('2'), dose('charcoal'));
    expect(lately.before(place('2'))?.last).toEqual(dose('mica'));
    lately.keep(place('2'), dose('charcoal'));
    expect(lately.before(place('2'))?.last).toEqual(dose('mica'));
  });

  test('of thousands the oldest talks are forgotten first', () => {
    const lately = openLately();
    for (let at = 0; at < 5_001; at += 1) lately.keep(place(`q${at}`, { who: `member ${at}` }), dose('mica'));
    expect(lately.of('member 0', START)).toEqual([]);
    expect(lately.of('member 1', START)).toHaveLength(1);
    expect(lately.of('member 5000', START)).toHaveLength(1);
  });

  test('is forgotten in every place at once where its member wants it gone', () => {
    const lately = openLately();
    lately.keep(place('1'), dose('mica'));
    lately.keep(place('2', { channel: 'jars' }), dose('mica'));
    lately.keep(place('3', { who: 'Bea' }), dose('mica'));
    expect(lately.forget('Ana')).toBe(2);
    expect([lately.of('Ana', START), lately.of('Bea', START).length]).toEqual([[], 1]);
  });
});

describe('what an answer was understood as', () => {
  const asked = {
    ...place('1'),
    language: 'en' as const,
    kind: 'command' as const,
    path: ['ask'],
    given: {},
  };
  const understood = (data: object) => understoodIn(asked, data);

  test('is its command and options, its matter, its emergency', () => {
    expect(
      understood({ understood: { job: 'dose', command: 'dose', given: { colourant: 'mica' } } }),
    ).toMatchObject(dose('mica'));
    expect(understood({ understood: { technique: 'layers-how', command: 'help', given: {} } })).toEqual({
      kind: 'technique',
      id: 'layers-how',
    });
    expect(understood({ understood: { technique: 'natural-colours', named: 'natural-pink' } })).toEqual({
      kind: 'technique',
      id: 'natural-colours',
      named: 'natural-pink',
    });
    // A technique that is answered from near lye leans on what was said there.
    expect(understood({ understood: { technique: 'goggles-gloves', lye: 'glass-jug' } })).toEqual({
      kind: 'matter',
      id: 'glass-jug',
    });
    expect(understood({ understood: { lye: 'glass-jug' } })).toEqual({ kind: 'matter', id: 'glass-jug' });
    expect(understood({ emergency: { id: 'lye-eye', also: ['lye-skin'] } })).toEqual({
      kind: 'emergency',
      ids: ['lye-eye', 'lye-skin'],
    });
  });

  test.each([
    { understood: { lye: 'unsure' } },
    { understood: { outside: 'other' } },
    { understood: { job: 'preview', command: 'preview', given: {} } },
    {
      problem: 'colourant-unknown',
      understood: { job: 'dose', command: 'dose', given: { colourant: 'sky' } },
    },
    { understood: { job: 'help', command: 'help', given: {} } },
  ])('is nothing where nothing can be gone on from: %o', data => {
    expect(understood(data)).toBeUndefined();
  });
});
