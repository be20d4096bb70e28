import { describe, expect, test } from 'vitest';
import { challengeAt } from '../../../src/engine/challenges/challenge.ts';
import { checkTerms } from '../../../src/engine/challenges/opening.ts';
import { type Bid, violations } from '../../../src/engine/challenges/rules.ts';
import type { Terms } from '../../../src/engine/challenges/terms.ts';
import { labOfHex } from '../../../src/engine/colour/spectra/cielab.ts';
import { day, entered, entriesEnd, opened, opens, terms, votesEnd, withdrawn } from './challenge-book.ts';

const bid: Bid = { by: 'ana', at: opens + day, colourants: ['blue ultramarine'], notOnShelf: [], wins: 0 };
const broken = (more: Partial<Terms>, asked: Partial<Bid> = {}) =>
  violations(challengeAt([opened(more)], opens + day), { ...bid, ...asked });

describe('an entry', () => {
  test('that keeps to the terms breaks nothing', () => {
    expect(broken({})).toEqual([]);
  });

  test('is one too many when the maker has as many as allowed, unless it takes the place of one', () => {
    const events = [opened(), entered('a', 'ana'), entered('b', 'bea')];
    const at = opens + 2 * day;
    expect(violations(challengeAt(events, at), bid)).toEqual([{ id: 'entries-most', most: 1 }]);
    expect(violations(challengeAt(events, at), { ...bid, replaces: 'a' })).toEqual([]);
    expect(violations(challengeAt([...events, withdrawn('a', 'ana', at)], at), bid)).toEqual([]);
  });

  test('may use only so many colourants, the same one counted once', () => {
    const two = { mostColourants: 2 };
    expect(broken(two, { colourants: ['a', 'b', 'b'] })).toEqual([]);
    expect(broken(two, { colourants: ['a', 'b', 'c'] })).toEqual([
      { id: 'colourants-most', most: 2, used: 3 },
    ]);
  });

  test('of one pigment names exactly one', () => {
    const one = { constraint: 'one-pigment' } as const;
    expect(broken(one)).toEqual([]);
    expect(broken(one, { colourants: ['a', 'b'] })).toEqual([{ id: 'one-pigment', used: 2 }]);
    expect(broken(one, { colourants: [] })).toEqual([{ id: 'one-pigment', used: 0 }]);
  });

  test('from the own shelf uses nothing else', () => {
    expect(broken({ constraint: 'own-shelf' }, { notOnShelf: ['neon pink'] })).toEqual([
      { id: 'own-shelf', missing: ['neon pink'] },
    ]);
    expect(broken({}, { notOnShelf: ['neon pink'] })).toEqual([]);
  });

  test('cures its days, counted in the zone of the challenge', () => {
    const cured = { leastCureDays: 28 };
    // 23:30 UTC on 1 November is 2 November in Madrid.
    const at = Date.UTC(2026, 10, 1, 23, 30);
    expect(broken(cured, { at, madeOn: '2026-10-05' })).toEqual([]);
    expect(broken(cured, { at, madeOn: '2026-10-06' })).toEqual([
      { id: 'cure-short', days: 27, least: 28, missing: 1 },
    ]);
    expect(broken(cured)).toEqual([{ id: 'made-on-missing' }]);
    expect(broken(cured, { at, madeOn: '2026-11-03' })).toEqual([
      { id: 'made-on-future', madeOn: '2026-11-03' },
    ]);
  });

  test('is made on the first day allowed or later', () => {
    const young = { madeFrom: '2026-10-20' };
    expect(broken(young, { madeOn: '2026-10-20' })).toEqual([]);
    expect(broken(young, { madeOn: '2026-10-19' })).toEqual([
      { id: 'made-too-early', madeOn: '2026-10-19', from: '2026-10-20' },
    ]);
  });

  test('among beginners comes from one who has not won; among techniques it names one', () => {
    expect(broken({ class: 'beginner' }, { wins: 1 })).toEqual([{ id: 'not-beginner', wins: 1 }]);
    expect(broken({ class: 'technique' }, { technique: ' ' })).toEqual([{ id: 'technique-missing' }]);
    expect(broken({ class: 'technique' }, { technique: 'hanger swirl' })).toEqual([]);
  });

  test('is told everything it breaks at once', () => {
    const strict = { mostColourants: 1, constraint: 'one-pigment', leastCureDays: 28 } as const;
    const found = broken(strict, { colourants: ['a', 'b'], madeOn: '2026-11-01' });
    expect(found.map(({ id }) => id)).toEqual(['colourants-most', 'one-pigment', 'cure-short']);
  });
});

describe('terms', () => {
  const target = { hex: '#1f7a78', lab: labOfHex('#1f7a78') };
  const refused: readonly (readonly [string, Partial<Terms>, string])[] = [
    ['without a title', { title: '  ' }, 'challenge-title-unfit'],
    ['whose colour decides without a palette', { decides: 'both' }, 'challenge-palette-unfit'],
    ['with seven colours', { palette: new Array(7).fill(target) }, 'challenge-palette-unfit'],
    ['that end entries before they open', { entriesUntil: opens }, 'challenge-times-order'],
    ['that end the vote with the entries', { votesUntil: entriesEnd }, 'challenge-times-order'],
    ['that run for years', { votesUntil: votesEnd + 400 * day }, 'challenge-times-far'],
    ['with no entry a member', { entriesPerMember: 0 }, 'challenge-number-unfit'],
    ['with half a day of cure', { leastCureDays: 0.5 }, 'challenge-number-unfit'],
    ['with a quorum of nobody', { quorum: 0 }, 'challenge-number-unfit'],
  ];
  test.each(refused)('%s are refused', (_, more, id) => {
    expect(() => checkTerms({ ...terms, ...more })).toThrow(expect.objectContaining({ id }));
  });

  test('that can be kept pass', () => {
    expect(() => checkTerms(terms)).not.toThrow();
    expect(() =>
      checkTerms({ ...terms, decides: 'colour', palette: [target], votesUntil: entriesEnd }),
    ).not.toThrow();
  });
});
