import { describe, expect, test } from 'vitest';
import { findColourant } from '../../../src/engine/colourants/asked/find-colourant.ts';
import { colourants } from '../../../src/engine/colourants/catalogue.ts';
import { completeColourants } from '../../../src/engine/colourants/complete.ts';
import {
  colourantsByNumber,
  colourantsMeant,
  nearestColourants,
} from '../../../src/engine/colourants/find.ts';
import { bleeds, holderOf } from '../../../src/engine/colourants/holding-hues.ts';
import { refused } from '../quantities/refused.ts';

const idsOf = (all: readonly { readonly id: string }[]) => all.map(({ id }) => id);
const menu = (typed: string, language: 'en' | 'es' = 'en') =>
  completeColourants(typed, language).map(({ value }) => value);

describe('a menu', () => {
  test('begins with names that go on from what is typed, before those that hold it elsewhere', () => {
    expect(menu('blue').slice(0, 2)).toEqual(['ultramarine-blue-mica', 'iron-blue-mica']);
    const names = completeColourants('red', 'en').map(({ name }) => name.toLowerCase());
    const starts = names.map(name => name.startsWith('red'));
    expect(starts[0]).toBe(true);
    // Once a name does not begin so, none behind it does.
    expect(starts.lastIndexOf(true)).toBe(starts.filter(Boolean).length - 1);
  });
  test('goes on from a word within a name, from synonyms and from numbers', () => {
    expect(menu('violet', 'en')).toContain('ultramarine-violet');
    expect(menu('mars red')).toContain('red-iron-oxide');
    expect(menu('azul', 'en')[0]).toBe('ultramarine-blue');
    expect(menu('ci 7728')).toEqual([
      'chromium-oxide-green',
      'chromium-hydroxide-green',
      ...menu('ci 7728').slice(2),
    ]);
    expect(menu('7728')).toEqual(menu('ci 7728'));
    // The end of a number is no beginning of it, and the end of a name no beginning either.
    expect(menu('7288')).not.toContain('chromium-oxide-green');
    expect(menu('rine-blue')).not.toEqual(['ultramarine-blue']);
  });
  test('takes words in any order, each begun', () => {
    expect(menu('ox red')[0]).toBe('red-iron-oxide');
    expect(menu('red ox')).toContain('red-iron-oxide');
    expect(menu('ox red')).not.toContain('green-iron-oxide');
    expect(
      menu('red ox').every(id => id.includes('red') || id.includes('violet') || id.includes('brown')),
    ).toBe(true);
  });
  test('of nothing that is known shows the nearest names', () => {
    expect(menu('utramarin')).toHaveLength(3);
    expect(menu('kaoln')[0]).toBe('kaolin');
  });
  test('is as long as was asked, and no longer than the platform’s', () => {
    expect(completeColourants('', 'en', 4)).toHaveLength(4);
    expect(completeColourants('', 'en', 99)).toHaveLength(25);
    expect(completeColourants('', 'en', -1)).toHaveLength(0);
  });
});

describe('a Colour Index number', () => {
  // Annex IV of Regulation (EC) No 1223/2009: CI 77007 ultramarines, 77491 iron oxides, 77891 titanium dioxide.
  test.each([
    ['77891', ['titanium-dioxide']],
    ['CI 77891', ['titanium-dioxide']],
    ['C.I. 77891', ['titanium-dioxide']],
    ['colour index 77891', ['titanium-dioxide']],
    ['CI77288', ['chromium-oxide-green']],
    ['77491', ['red-iron-oxide']],
    ['7789', []],
    ['778911', []],
    ['12345', []],
    ['77891 mica', []],
  ])('%s', (text, ids) => {
    expect(idsOf(colourantsByNumber(text))).toEqual(ids);
  });
  test('that several have is all of theirs', () => {
    const ids = idsOf(colourantsByNumber('77007'));
    expect(ids).toContain('ultramarine-blue');
    expect(ids).toContain('ultramarine-violet');
    for (const colourant of colourantsByNumber('77007')) expect(colourant.gradeOf).toBeUndefined();
  });
});

describe('what a text may mean', () => {
  test.each([
    ['mars red', ['red-iron-oxide']],
    ['oxide, red', ['red-iron-oxide']],
    ['titanium', ['titanium-dioxide']],
    ['pink mica', ['ultramarine-pink-mica', 'carmine-mica', 'red-27-lake-mica']],
    // What lakes are laid on is no colour, and saffron is not the turmeric that is called after it.
    ['talc', []],
    ['barium lake', []],
    ['aluminium', []],
    ['saffron', []],
    ['azafrán', []],
    ['', []],
    ['xyzzy', []],
  ])('%s', (text, ids) => {
    expect(idsOf(colourantsMeant(text))).toEqual(ids);
  });
  test.each([
    ['xyzzy', 'colourant-unknown'],
    ['pink mica', 'colourant-ambiguous'],
    ['wine', 'no-colour'],
    ['wine red mica', 'answered'],
    ['', 'colourant-unknown'],
  ])('%s: %s', (text, id) => {
    expect(refused(() => findColourant(text))).toBe(id);
  });
  test.each([
    ['utramarine blue', 'ultramarine-blue'],
    ['ltramarine', 'ultramarine-blue'],
    ['kaoln', 'kaolin'],
    ['turmerc', 'turmeric'],
    ['gold micca', 'gold-mica'],
    ['nettel', 'nettle'],
    ['blue ultramarin', 'ultramarine-blue'],
    ['xanthan kaolin', 'kaolin'],
  ])('%s is nearest to %s', (text, id) => {
    expect(idsOf(nearestColourants(text, 3))[0]).toBe(id);
  });
  test('as many near ones as were asked, each once', () => {
    const near = idsOf(nearestColourants('red', 5));
    expect(near).toHaveLength(5);
    expect(new Set(near).size).toBe(5);
    expect(nearestColourants('red', 0)).toEqual([]);
  });
});

// Pigments that hold in lye and light: common practice.
describe('the colourant of a hue that holds', () => {
  test.each([
    ['green', 'chromium-oxide-green'],
    ['teal', 'chromium-hydroxide-green'],
    ['azul', 'ultramarine-blue'],
    ['morado', 'ultramarine-violet'],
    ['pink', 'ultramarine-pink'],
    ['rojo', 'red-30-lake'],
    ['brick', 'red-iron-oxide'],
    ['orange', 'orange-iron-oxide'],
    ['mustard', 'yellow-iron-oxide'],
    ['MARRÓN', 'brown-iron-oxide'],
    ['grey', 'activated-charcoal'],
    ['blanca', 'titanium-dioxide'],
    ['greenish', undefined],
    ['', undefined],
  ])('%s: %s', (hue, id) => {
    expect(holderOf(hue)?.id).toBe(id);
  });
  test('none of them bleeds, and dyes and most lakes do', () => {
    for (const hue of ['green', 'teal', 'blue', 'purple', 'pink', 'red', 'brick', 'orange', 'black', 'white'])
      expect(bleeds(holderOf(hue)!)).toBe(false);
    const wander = new Set(idsOf(colourants.filter(bleeds)));
    for (const id of ['red-40-dye', 'green-3-dye', 'yellow-5-lake', 'blue-1-lake-mica'])
      expect(wander).toContain(id);
    for (const id of ['gold-mica', 'kaolin', 'turmeric']) expect(wander).not.toContain(id);
    expect(bleeds({ hints: [], alkali: { behaviour: 'bleeds' } })).toBe(true);
    expect(bleeds({ hints: [], alkali: { behaviour: 'stable' } })).toBe(false);
  });
});
