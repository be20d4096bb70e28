import { describe, expect, test } from 'vitest';
import type { Emergency, EmergencyId } from '../../../../src/engine/hazards/emergencies/emergency.ts';
import {
  accountsOf,
  scoreOf,
  type Weights,
  weighAll,
} from '../../../../src/engine/hazards/emergencies/evidence/weigh.ts';
import { joined } from '../../../../src/engine/hazards/emergencies/join.ts';
import { scenesIn } from '../../../../src/engine/hazards/emergencies/scenes.ts';

const told = (id: EmergencyId, inDoubt = false): Emergency => ({ id, from: id, inDoubt });
const TEXT = { words: 9, from: 'whole text', isOver: false };
/** What was learned: odds of any emergency, and the scores of some; all others lie far below. */
const learned = (odds: number, scores: Partial<Record<EmergencyId, number>>) => ({
  odds,
  likeliest: (
    [
      'lye-swallowed',
      'lye-eye',
      'fire',
      'fumes-inhaled',
      'lye-eruption',
      'lye-skin',
      'animal-exposed',
      'skin-reaction',
      'hydrogen-from-metal',
    ] as const
  )
    .map(id => ({ id, score: scores[id] ?? -50 }))
    .toSorted((a, b) => b.score - a.score),
});
const ids = (all: readonly Emergency[]) => all.map(({ id, inDoubt }) => (inDoubt ? `${id}?` : id));

// In doubt first aid is shown, and what may cost a life or an eye is never pushed behind (common first aid).
describe('what the lexicon read and what was learned', () => {
  const SURE = 3;
  test('where neither says enough, nothing is told', () => {
    expect(joined([], learned(-1.26, { 'lye-eye': 0 }), TEXT)).toEqual([]);
    expect(joined([told('lye-eye', true)], learned(-1.8, { 'lye-eye': 0 }), TEXT)).toEqual([]);
    expect(joined([told('lye-eye')], learned(-2.8, { 'lye-eye': 0 }), TEXT)).toEqual([]);
  });
  test('a little more is enough: patterns weigh more than a sum of evidence, that more than nothing', () => {
    expect(ids(joined([], learned(-1.24, { 'lye-eye': 0 }), TEXT))).toEqual(['lye-eye?']);
    expect(ids(joined([told('lye-eye', true)], learned(-1.7, { 'lye-eye': 0 }), TEXT))).toEqual(['lye-eye?']);
    expect(ids(joined([told('lye-eye')], learned(-2.7, { 'lye-eye': 0 }), TEXT))).toEqual(['lye-eye']);
  });
  test('three words are too few to be told from other texts, but not for the lexicon', () => {
    const words = { ...TEXT, words: 3 };
    expect(joined([], learned(SURE, { 'lye-eye': 0 }), words)).toEqual([]);
    expect(ids(joined([], learned(SURE, { 'lye-eye': 0 }), { ...TEXT, words: 4 }))).toEqual(['lye-eye?']);
    expect(ids(joined([told('lye-eye')], learned(SURE, { 'lye-eye': 0 }), words))).toEqual(['lye-eye']);
  });
  test('two that lie near one another are both shown where nothing else is told', () => {
    expect(ids(joined([], learned(SURE, { 'lye-eye': 0, 'lye-skin': -2.4 }), TEXT))).toEqual([
      'lye-eye?',
      'lye-skin?',
    ]);
    expect(ids(joined([], learned(SURE, { 'lye-eye': 0, 'lye-skin': -2.6 }), TEXT))).toEqual(['lye-eye?']);
    expect(joined([], learned(SURE, { 'lye-eye': 0 }), TEXT)[0]?.from).toBe('whole text');
  });
  test('metal that left its marks on a cured bar is no danger', () => {
    const metal = learned(SURE, { 'hydrogen-from-metal': 0 });
    expect(joined([], metal, { ...TEXT, isOver: true })).toEqual([]);
    expect(ids(joined([], metal, TEXT))).toEqual(['hydrogen-from-metal?']);
    expect(
      ids(
        joined([told('lye-skin')], learned(SURE, { 'hydrogen-from-metal': 3, 'lye-skin': 0 }), {
          ...TEXT,
          isOver: true,
        }),
      ),
    ).toEqual(['hydrogen-from-metal?', 'lye-skin']);
  });
  test('what is clearly likelier comes first, what is a little so stands beside', () => {
    const beside = learned(SURE, { 'lye-eye': 0.4, 'lye-skin': 0 });
    expect(ids(joined([told('lye-skin')], beside, TEXT))).toEqual(['lye-skin', 'lye-eye?']);
    const first = learned(SURE, { 'lye-eye': 0.6, 'lye-skin': 0 });
    expect(ids(joined([told('lye-skin')], first, TEXT))).toEqual(['lye-eye?', 'lye-skin']);
    expect(ids(joined([told('lye-skin'), told('skin-reaction')], beside, TEXT))).toEqual([
      'lye-skin',
      'lye-eye?',
      'skin-reaction',
    ]);
    // Of what was in doubt too half of that lead is enough.
    expect(
      ids(joined([told('lye-skin', true)], learned(SURE, { 'lye-eye': 0.3, 'lye-skin': 0 }), TEXT)),
    ).toEqual(['lye-eye?', 'lye-skin?']);
  });
  test('what patterns told stands by urgency unless another of them is far likelier', () => {
    const both = [told('lye-eye'), told('lye-skin')];
    expect(ids(joined(both, learned(SURE, { 'lye-skin': 2.4, 'lye-eye': 0 }), TEXT))).toEqual([
      'lye-eye',
      'lye-skin',
    ]);
    expect(ids(joined(both, learned(SURE, { 'lye-skin': 2.6, 'lye-eye': 0 }), TEXT))).toEqual([
      'lye-skin',
      'lye-eye',
    ]);
  });
  test('a closing airway, an animal’s own and an eye before a jug stay first', () => {
    const skin = learned(SURE, { 'lye-skin': 9, 'skin-reaction': 0, 'animal-exposed': 0 });
    expect(ids(joined([{ ...told('skin-reaction'), airway: true }], skin, TEXT))).toEqual(['skin-reaction']);
    expect(ids(joined([told('animal-exposed')], skin, TEXT))).toEqual(['animal-exposed']);
    expect(ids(joined([told('animal-exposed', true)], skin, TEXT))).toEqual(['lye-skin?', 'animal-exposed?']);
    const jug = learned(SURE, { 'lye-eruption': 9, 'lye-eye': 0 });
    expect(ids(joined([told('lye-eye')], jug, TEXT))).toEqual(['lye-eye']);
    expect(ids(joined([told('lye-eye', true)], jug, TEXT))).toEqual(['lye-eruption?', 'lye-eye?']);
  });
  test('what both read alike is told as it was read', () => {
    const read = [told('lye-eye'), told('lye-skin')];
    expect(joined(read, learned(SURE, { 'lye-eye': 9 }), TEXT)).toBe(read);
  });
});

describe('what stands around a word of harm', () => {
  const accounts = (text: string, tells: readonly { id: 'lye-eye'; from: number }[] = []) => {
    const { mentions, reading } = scenesIn(text);
    return accountsOf(mentions, reading, tells);
  };
  const names = (text: string, id: 'lye-eye' | 'lye-skin' | 'lye-swallowed') =>
    (accounts(text).get(id) ?? []).map(account => [...account.names].toSorted());
  test('is one account, within reach of it', () => {
    expect(names('lye in my eye', 'lye-eye')).toHaveLength(1);
    expect(names('lye in my eye', 'lye-eye')[0]).toEqual(expect.arrayContaining(['caustic', 'eye']));
    expect(names('lye on my hand', 'lye-eye')).toEqual([]);
    const far = `lye stood there. ${'we talked on and on about bars. '.repeat(6)} my eye`;
    expect(names(far, 'lye-eye')[0]).not.toContain('caustic');
  });
  test('denied it speaks against, and is no core of one', () => {
    expect(names('no lye in my eye', 'lye-eye')).toEqual([]);
    expect(names('lye on my hand, nothing in my eye', 'lye-skin').flat()).toContain('denied');
  });
  test('alike accounts are one, and one that a pattern told is marked', () => {
    expect(names('my eye, my eye, my eye', 'lye-eye')).toHaveLength(1);
    const marked = accounts('lye in my eye', [{ id: 'lye-eye', from: 3 }]).get('lye-eye')!;
    expect([...marked[0]!.names]).toContain('told');
    expect([...accounts('lye in my eye').get('lye-eye')![0]!.names]).not.toContain('told');
  });
  test('a score is the start and what each idea adds; the likeliest account of each is first', () => {
    const weights = { start: -2, eye: 1, caustic: 3 };
    expect(scoreOf({ names: new Set(['eye', 'caustic', 'unheard']), at: 0 }, weights)).toBe(2);
    expect(scoreOf({ names: new Set<string>(), at: 0 }, { eye: 1 })).toBe(0);
    const all = new Map([
      [
        'lye-eye',
        [
          { names: new Set(['eye']), at: 1 },
          { names: new Set(['eye', 'caustic']), at: 2 },
        ],
      ],
      ['lye-skin', [{ names: new Set(['eye', 'caustic']), at: 3 }]],
      ['animal-exposed', []],
    ]) as unknown as ReturnType<typeof accountsOf>;
    const table = {
      'lye-eye': weights,
      'lye-skin': { start: 9 },
      'animal-exposed': {},
    } as unknown as Weights;
    expect(weighAll(all, table).map(({ id, score, at }) => [id, score, at])).toEqual([
      ['lye-skin', 9, 3],
      ['lye-eye', 2, 2],
    ]);
  });
});
